"""The unit of a strip: what its heading, its table or the name mapping states, and the way to the canonical one."""

import re
from collections.abc import Iterable

from attrs import frozen

from linter.model.vocabulary import Parameter
from linter.reading.cells.fit_classes import ANY_CLASS
from linter.reading.cells.signs import ReadError
from linter.reading.cells.units import dimension_of, factor_to
from linter.reading.files.grids import cell_text
from linter.reading.layouts.strips import Strip
from linter.reading.settling.values import Terms

#: Aspects whose numbers are differences, so that no offset of a temperature scale belongs to them.
DIFFERENCES = ("upper", "lower", "tolerance")


@frozen
class Measure:
    """Unit of the cells of a strip that carry none themselves.

    Attributes
    ----------
    unit : str
        Unit text; empty where the canonical unit is taken or none is known.
    factor, offset : float
        Canonical value = value * factor + offset.
    missing : bool
        True where a length needs a unit and the table states none.
    """

    unit: str = ""
    factor: float = 1.0
    offset: float = 0.0
    missing: bool = False


_LOOKED_AT = 20
_MOST_CLASSES = 2000
_BEHIND = re.compile(r"\d\s*(mm|inch(?:es)?|in\.?|[\"″])\s*$", re.IGNORECASE)


def settle_measure(strip: Strip, entry: Parameter, terms: Terms) -> Measure | ReadError:
    """The unit of a strip; an error where the table states one that does not fit ``entry``."""
    if unit := terms.mapping.unit(strip.unit.strip()):
        found = factor_to(entry.unit, unit)
        if isinstance(found, ReadError):
            return found
        return Measure(unit, found[0], 0.0 if strip.aspect in DIFFERENCES else found[1])
    if entry.unit == "1" or strip.own_unit or dimension_of(entry.unit) != "length":
        return Measure()
    if not terms.length_unit:
        return Measure(missing=True)
    found = factor_to(entry.unit, terms.length_unit)
    if isinstance(found, ReadError):
        return found
    if entry.unit == "um":
        # a title block that says "mm" speaks of sizes, not of roughness or clearance
        return Measure(missing=True)
    return Measure(terms.length_unit, *found)


def stated_in_inches(strips: Iterable[Strip]) -> bool:
    """Whether cells of a table state lengths in inches, and none in mm: the first cells of each strip are looked at."""
    inches = False
    for strip in strips:
        for index in range(min(_LOOKED_AT, len(strip.cells))):
            found = _BEHIND.search(cell_text(strip.cells[index]))
            if found and found[1].casefold() == "mm":
                return False
            inches |= found is not None
    return inches


def classes_beside(strips: Iterable[Strip]) -> bool:
    """Whether cells of their own state an ISO 286 class for each size of a parameter: a class speaks of millimetres."""
    sizes = classes = 0
    for strip in strips:
        texts = [text for cell in strip.cells[:_MOST_CLASSES].tolist() if (text := cell_text(cell))]
        if strip.aspect == "tolerance":
            if all(ANY_CLASS.fullmatch(text) for text in texts):
                classes += len(texts)
            elif not strip.unit:  # deviations beside the classes have a unit of their own
                return False
        elif strip.aspect == "value":
            sizes += len(texts)
    return 0 < sizes <= classes


def unit_of_size(entry: Parameter, strips: Iterable[Strip]) -> str:
    """The one unit that the values of a size are headed by, for its deviations and limits; empty for none."""
    if entry.kind != "toleranced":
        return ""
    values = [strip for strip in strips if strip.aspect == "value"]
    units = {strip.unit.strip() or (entry.unit if strip.own_unit else "") for strip in values}
    return units.pop() if len(units) == 1 else ""
