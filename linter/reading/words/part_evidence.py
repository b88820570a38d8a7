"""What a cell or a size tells of the part that it is of: the class of a fit, a size like that of a ring, a shoulder.

Of which names and columns it is asked stands in ``told_parts.py`` (names), ``part_words.py`` (words that no list holds)
and ``part_columns.py`` (columns).
"""

import re
from collections.abc import Iterable, Sequence

from linter.reading.cells.fit_classes import CLASS_ONLY, HOLE, SHAFT, SIZE_AND_CLASS
from linter.reading.cells.signs import fold
from linter.reading.words.designations import read_designation

PARTS = ("shaft", "housing")
#: What of its bearing each part is as large as.
RINGS = dict(zip(PARTS, ("bore_diameter", "outside_diameter"), strict=True))
RING_OF_SEAT = {f"{part}_seat_diameter": ring for part, ring in RINGS.items()}
#: The fits of each part.
FITS = dict(zip(PARTS, (SHAFT, HOLE), strict=True))
#: A number, behind a sign or a symbol and its blank at most: the grade of a class is none.
_NUMBER = re.compile(r"(?:[^\W\d_]{0,3}[^\w+\-−.,]{1,2}|[Ø⌀øφΦϕ])?(\d{0,4}[.,]?\d+)(?![\d:])")
#: A seat differs from its ring by less of it (seats of bearings, g to p in grades 5 to 7: from memory of ISO 286-2).
_SAME = 0.005
INCH = 25.4
#: A shoulder in the middle between both rings may be of either part: share of the height of the bearing's section.
_MIDDLE = 0.1


def number_of(cell: str) -> float | None:
    """The number that a cell begins with, or None."""
    found = _NUMBER.match(fold(cell))
    return float(found[1].replace(",", ".")) if found else None


def numbers_of(cells: Iterable[str]) -> list[float]:
    """The numbers that cells begin with; none where one of them does not or is nought."""
    found = [number_of(cell) for cell in cells]
    return [number for number in found if number] if all(found) else []


def part_of_class(cell: str) -> str:
    """The part that a class has, alone or behind its size; empty for another cell."""
    fits = CLASS_ONLY.fullmatch(cell) or SIZE_AND_CLASS.fullmatch(cell)
    return next((part for part, side in FITS.items() if side.fullmatch(cell)), "") if fits else ""


def rings_of(cell: str, named: bool = False) -> tuple[float, float] | None:
    """Bore and outside diameter [mm] of the bearing that a cell designates, or None.

    Beyond doubt, or as likely as not where a name beside it says that it is one (``named``).
    """
    read = read_designation(cell) if any(map(str.isdigit, cell)) else None
    if read is None or not (read.strength == "certain" or (named and read.strength == "possible")):
        return None
    bore, outside = (read.derived.get(ring) for ring in RINGS.values())
    return (float(bore.value), float(outside.value)) if bore is not None and outside is not None else None


def same_size(size: float, ring: float) -> bool:
    """Whether a seat may carry a ring of a size in the same unit."""
    return size > 0 and abs(size - ring) <= _SAME * ring


def same_sizes(sizes: Sequence[float], rings: Sequence[float]) -> bool:
    """Whether seats may carry rings, one by one; the rings may be stated in mm and the seats in inches."""
    if not sizes or len(sizes) != len(rings):
        return False
    pairs = list(zip(sizes, rings, strict=True))
    return any(all(same_size(size * unit, ring) for size, ring in pairs) for unit in (1.0, INCH))


def part_of_shoulder(size: float, inner: float, outer: float) -> str:
    """The part that a shoulder between the two sizes of a bearing is of, or empty; these may be in mm, it in inches."""
    for unit in (1.0, INCH):
        if 0 < inner < size * unit < outer:
            share = (size * unit - inner) / (outer - inner)
            return "" if abs(share - 0.5) < _MIDDLE else PARTS[0] if share < 0.5 else PARTS[1]
    return ""
