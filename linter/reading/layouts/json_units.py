"""Units that a JSON document states for all of it: one for its lengths, or one for each quantity."""

import re
from collections.abc import Iterator
from typing import Any

from attrs import evolve, field, frozen

from linter.model.vocabulary import parameter
from linter.reading.cells.units import conversion, dimension_of, known_unit
from linter.reading.layouts.json_keys import bare, local
from linter.reading.words.dictionary import dictionary, group_key, word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import named_by_parts

UNIT_KEYS = ("unit", "units", "uom")
_UNIT_OF_LENGTHS = re.compile(
    r"(?:units?|uom|einheit(?:en)?|unit[ée]s?|unidad(?:es)?|unit[àa]|単位|单位|единицы?)"
    r"(?:[ _.-]?(?:of[ _-]|der[ _-]|de[ _-]|di[ _-])?"
    r"(?:lengths?|dimensions?|dims?|l(?:ä|ae)ngen?|ma(?:ß|ss)e|longueurs?|longitud(?:es)?|lunghezz[ae]|длины))?"
    r"|(?:lengths?|dimensions?|dims?|linear|l(?:ä|ae)ngen?|ma(?:ß|ss)|longueur|長さの?|寸法の?|长度|尺寸)"
    r"[ _.-]?(?:units?|uom|einheit(?:en)?|単位|单位)"
)
#: Words that say unit, alone or at either end of a key (``load_unit``, ``unidad de rugosidad``); common practice.
_SAYS_UNIT = re.compile(
    r"(?:units?|uom|einheit(?:en)?|unit[ée]s?|unidad(?:es)?|unit[àa]|единиц[аы]|ед)"
    r"(?: (?:of|der|de|di|des|du))?(?= |$) ?"
    r"|(?:^|(?<=[^ ])) ?(?:units?|uom|einheit(?:en)?)$|(?:の?単位|单位)"
)
#: Word parts of a roughness (common practice): its unit is not that of the sizes.
_ROUGH = re.compile(r"rough|rauh|rauigk|rugos|шерохов|粗|(?:^| )ra(?:$| )|finish")
#: Word parts of tolerances and deviations, in whose unit no size is.
_OF_TOLERANCES = re.compile(r"tol|dev|abma|écart|ecart|scost|desv|откл|допуск|公差|偏差|許容|runout|form|lauf")
_DEEPEST = 3


def names_unit_of_lengths(key: str) -> bool:
    """Whether a key of a document says the unit of its lengths (``units``, ``length_unit``, ``Einheit_Laenge``)."""
    return _UNIT_OF_LENGTHS.fullmatch(local(key)) is not None


def says_unit(key: str) -> bool:
    """Whether a key is a word for a unit in any of the languages (``unit``, ``einheit``, ``単位``)."""
    spelled = (group_key(local(key).replace("_", " ")), group_key(word_key(bare(key))))  # measuringUnit
    return local(key) in UNIT_KEYS or any("UNIT" in dictionary().group_words.get(word, ()) for word in spelled)


@frozen
class StatedUnits:
    """Units of a whole document.

    Attributes
    ----------
    length : str
        Unit of its lengths, empty where none or several are stated.
    rough : str
        Unit of its roughness values.
    deviation : str
        Unit of deviations and tolerances, where it is another.
    by_name : dict of str to str
        Unit of each parameter whose name stands with it.
    by_dimension : dict of str to str
        Unit of everything that is measured so, by dimension; several, with a bar between them, where they differ.
    """

    length: str = ""
    rough: str = ""
    deviation: str = ""
    by_name: dict[str, str] = field(factory=dict)
    by_dimension: dict[str, str] = field(factory=dict)

    def of(self, heading: Heading) -> Heading:
        """The heading with the unit that the document states for what it names, where it carries none."""
        wanted = heading.entry.unit
        if heading.unit or heading.own_unit or wanted in ("", "1"):
            return heading
        if heading.aspect in ("upper", "lower") and self.deviation:
            return evolve(heading, unit=self.deviation)
        unit = self.by_name.get(heading.parameter, "")
        if not unit and wanted == "um":
            unit = self.rough if heading.parameter.endswith("_roughness") else ""
        elif not unit and dimension_of(wanted) != "length":
            unit = self.by_dimension.get(dimension_of(wanted), "")
        return evolve(heading, unit=unit) if unit else heading


def stated_units(document: Any, words: Words) -> tuple[StatedUnits, frozenset[tuple[str | int, ...]]]:
    """The units that fields of a document state for all of it, and the places of these fields."""
    said: dict[str, dict[str, None]] = {}
    by_name: dict[str, str] = {}
    places = set()
    for key, text, path in _fields(document, (), False):
        unit = known_unit(text)
        if unit is None or (not key and unit.dimension != "length"):
            continue
        places.add(path)
        named = {h.parameter for k in (key, key.replace(" ", "_")) if k and (h := words.heading(k)) is not None}
        by_parts = named_by_parts(key) if key else None
        named |= {by_parts.parameter} if by_parts is not None else set()
        if len(named) == 1 and _fits(entry := next(iter(named)), unit.dimension):
            by_name[entry] = text
            if parameter(entry).unit == "mm":
                said.setdefault("length", {})[text] = None
        elif unit.dimension != "length":
            said.setdefault(unit.dimension, {})[text] = None
        else:
            of = "deviation" if _OF_TOLERANCES.search(key) else "rough" if _ROUGH.search(key) else "length"
            said.setdefault(of, {})[text] = None
    lengths = [*said.pop("length", {})]
    rough = [*said.pop("rough", {})]
    deviations = [*said.pop("deviation", {})]
    dimensions = {dimension: " | ".join(units) for dimension, units in said.items()}
    one = lengths[0] if len({known_unit(text).name for text in lengths}) == 1 else ""  # type: ignore[union-attr]
    alone = rough[0] if len(rough) == 1 else ""
    of_deviations = deviations[0] if len(deviations) == 1 and deviations != lengths else ""
    return StatedUnits(one, alone, of_deviations, by_name, dimensions), frozenset(places if one or not lengths else ())


def _fits(name: str, dimension: str) -> bool:
    return parameter(name).unit not in ("", "1") and dimension_of(parameter(name).unit) == dimension


def _fields(node: Any, path: tuple[str | int, ...], inside: bool) -> Iterator[tuple[str, str, tuple[str | int, ...]]]:
    """What each unit of a document is of, its text and its place: fields of its outer objects that say unit.

    ``inside`` holds below a key that says unit, where every key with a unit counts.
    """
    if not isinstance(node, dict) or len(path) > _DEEPEST:
        return
    for key, value in node.items():
        said = word_key(local(key).replace("ß", "ss")) if not key.isascii() else word_key(local(key))
        of = _SAYS_UNIT.sub("", said, count=1).strip()
        is_word = of != said
        if isinstance(value, str) and value.strip():
            if inside:
                yield said, value.strip(), (*path, key)
            elif is_word and (path == () or of):
                yield "" if names_unit_of_lengths(key) else of, value.strip(), (*path, key)
        elif isinstance(value, dict) and (inside or is_word or len(path) < _DEEPEST - 1) and _plain(value):
            yield from _fields(value, (*path, key), inside or (is_word and not of))


def _plain(node: dict[str, Any]) -> bool:
    """Whether an object holds texts, as metadata does."""
    return any(isinstance(value, (str, dict)) for value in node.values())


def with_unit(heading: Heading, unit: str) -> Heading:
    """The heading with the unit that its object states, where that is one of its kind.

    A unit of sizes beside several values is not that of a roughness or a clearance, which are in µm.
    """
    wanted = heading.entry.unit
    if not unit or heading.unit or heading.own_unit or wanted in ("", "1"):
        return heading
    if wanted == "um" and conversion(unit, "um") != 1:
        return heading
    return evolve(heading, unit=unit) if conversion(unit, wanted) is not None else heading
