"""Deviations that a list states by names of their own: the name of a size with one more piece (``d_shaft_A_lo``).

``FB_shaft_d, FB_shaft_d_up, FB_shaft_d_lo``; ``Welle_A, Welle_A_o, Welle_A_u``: the piece may be cut short so far that
it says nothing alone. It counts where both names of a pair stand beside the name that both are made from, and where the
numbers beside them are those of deviations.
"""

import re
from collections.abc import Mapping

from linter.reading.cells.units import conversion, known_unit
from linter.reading.words.headings import Deviation
from linter.reading.words.left_out import joined

#: Pieces for the upper and the lower deviation (ISO 286-1 and common practice).
_PAIRS = (
    ("up", "lo"), ("upper", "lower"), ("up", "low"), ("upr", "lwr"), ("upp", "low"), ("ut", "lt"), ("hi", "lo"),
    ("high", "low"), ("u", "l"), ("es", "ei"), ("o", "u"), ("ob", "un"), ("ob", "unt"), ("oben", "unten"),
    ("obere", "untere"), ("oa", "ua"), ("ao", "au"), ("sup", "inf"), ("s", "i"), ("plus", "minus"), ("pos", "neg"),
    ("p", "m"), ("p", "n"), ("tp", "tm"), ("上", "下"), ("в", "н"), ("верх", "ниж"), ("верх", "низ"),
)  # fmt: skip
#: Pieces of the name of the size itself that its deviations do not have, and pieces that a deviation may have beside.
_OF_SIZE = frozenset(("nom", "nominal", "nenn", "nennmaß", "nennmass"))
_OF_TOLERANCE = frozenset(("tol", "dev", "abm", "abw", "abmass", "abmaß", "ecart", "desv", "scost", "toll", "откл"))
_NUMBER = re.compile(r"[+\-−]?\s*\d*[.,]?\d+")
#: Deviations are smaller than this share of their size.
_SMALL = 0.1
_MOST_NAMES, _LONGEST = 1000, 60

_Key = tuple[str, ...]


def deviation_names(cells: Mapping[str, tuple[str, ...]]) -> dict[str, Deviation]:
    """The names of a list that state deviations of another name's size.

    Parameters
    ----------
    cells : mapping of str to tuple of str
        The cells beside each name.

    Returns
    -------
    dict of str to Deviation
        By name; empty where none does.
    """
    listed = [name for name in list(cells)[:_MOST_NAMES] if len(name) <= _LONGEST and any(map(str.isalpha, name))]
    pieces = {name: _key(name) for name in listed}
    sizes: dict[_Key, str] = {}
    for name, key in pieces.items():
        sizes.setdefault(tuple(piece for piece in key if piece not in _OF_SIZE), name)
    by_rest: dict[tuple[_Key, int], dict[str, str]] = {}
    for name, key in pieces.items():
        for at, piece in enumerate(key):
            rest = (*key[:at], *key[at + 1 :])
            plain = tuple(one for one in rest if one not in _OF_TOLERANCE)
            if plain in sizes and sizes[plain] != name:
                by_rest.setdefault((plain, at), {})[piece] = name
    found: dict[str, Deviation] = {}
    for (key, _), named in by_rest.items():
        for upper, lower in _PAIRS:
            if upper in named and lower in named and _are_deviations(cells, sizes[key], named[upper], named[lower]):
                above = (_number(cells[named[upper]]) or 0.0) > 0
                found[named[upper]] = Deviation(sizes[key], "upper", above)
                found[named[lower]] = Deviation(sizes[key], "lower", above)
    return found


def _key(name: str) -> _Key:
    """The pieces of a name, without its unit."""
    pieces = [piece for piece, _ in joined(name)]
    if len(pieces) > 1 and len(pieces[-1]) > 1 and (unit := known_unit(pieces[-1])) and unit.dimension == "length":
        pieces.pop()
    return tuple(piece.casefold() if len(piece) > 1 else piece for piece in pieces)


def _are_deviations(cells: Mapping[str, tuple[str, ...]], size: str, upper: str, lower: str) -> bool:
    """Whether the numbers beside three names are a size and its two deviations."""
    numbers = [_number(cells[name]) for name in (size, upper, lower)]
    units = [_unit(cells[name]) for name in (size, upper, lower)]
    if None in numbers:
        return False
    nominal, high, low = (number for number in numbers if number is not None)
    factor = conversion(units[1], units[0]) if units[0] and units[1] else None
    least = abs(nominal) * _SMALL / (factor or 1.0)
    return units[1] == units[2] and low <= high and max(abs(low), abs(high)) < least


def _number(cells: tuple[str, ...]) -> float | None:
    found = next((match[0] for cell in cells if (match := _NUMBER.match(cell.strip()))), None)
    return float(found.replace(",", ".").replace("−", "-").replace(" ", "")) if found else None


def _unit(cells: tuple[str, ...]) -> str:
    return next((cell for cell in cells if (unit := known_unit(cell)) is not None and unit.dimension == "length"), "")
