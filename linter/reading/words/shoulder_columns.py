"""Columns headed by a shoulder of no part (``Shldr dia``, ``挡肩``): whose it is, by the sizes beside them.

Both stand between bore and outside diameter of the bearing in their row, the shaft's nearer to the bore. Where one row
speaks for the other part, or nothing is known of the bearing, the column is not read.
"""

import re
from collections.abc import Callable, Sequence

from linter.reading.cells.signs import fold
from linter.reading.words.cuts import station_cuts
from linter.reading.words.designations import read_designation
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said, tells_feature

Column = Heading | None

_NUMBER = re.compile(r"[Ø⌀øφ]? ?(\d{0,4}[.,]?\d+)(?![\d:])")
_PIECE = re.compile(r"[^\W\d_⌀Øø]+")
_SHOULDER = frozenset(("shoulder", "abutment", "diameter"))
_INNER, _OUTER = ("bore_diameter", "shaft_seat_diameter"), ("outside_diameter", "housing_seat_diameter")
_INCH = 25.4
#: A shoulder in the middle between both may be of either: share of the height of the bearing's section.
_MIDDLE = 0.1


def shoulders_by_size(
    labels: Sequence[str], result: list[Column], cells: Callable[[int], Sequence[str]], words: Words
) -> None:
    """Give a part to columns of shoulders that say none, where every row shows the same one."""
    for c, label in enumerate(labels):
        if result[c] is not None or not label:
            continue
        station, unit, fits = _shoulder(label, words)
        sizes = [_number(cell) for cell in cells(c)] if fits else []
        if not sizes or not all(sizes):
            continue
        rings = _rings(station, result, cells, len(sizes))
        if len(rings) != len(sizes):
            continue
        parts = {_part(size, *ring) for size, ring in zip(sizes, rings, strict=True) if size is not None}
        part = parts.pop() if len(parts) == 1 else ""
        name = f"{part}_shoulder_diameter"
        taken = any(h is not None and (h.parameter, h.station) == (name, station) for h in result)
        if part and not taken:
            result[c] = Heading(name, station, unit)


def _shoulder(label: str, words: Words) -> tuple[str, str, bool]:
    """The position and the unit of a heading, and whether it says a shoulder and no part."""
    told = words.told_of(label)
    core, unit = words.names.split_unit(fold(told.rest if told is not None else label))
    if _says_shoulder(core):
        return told.station if told is not None else "", unit, True
    for rest, piece, _ in station_cuts(core) if told is None else ():
        if _says_shoulder(rest) and (said := words.names.station(piece)):
            return said, unit, True
    return "", "", False


def _says_shoulder(name: str) -> bool:
    said = concepts_said(name)
    return "shoulder" in said and said <= _SHOULDER and all(map(tells_feature, _PIECE.findall(name)))


def _rings(
    station: str, result: Sequence[Column], cells: Callable[[int], Sequence[str]], count: int
) -> list[tuple[float, float, bool]]:
    """Inner and outer size of the bearing in each row, by its designation (in mm), its rings or its seats; or none."""
    own = {
        h.parameter: c for c, h in enumerate(result) if h is not None and h.station == station and h.aspect == "value"
    }
    if (at := own.get("bearing_designation")) is not None:
        said = [read_designation(cell).derived for cell in cells(at)]
        if len(said) == count and all("bore_diameter" in one and "outside_diameter" in one for one in said):
            return [(float(o["bore_diameter"].value), float(o["outside_diameter"].value), True) for o in said]
    inner = next((own[name] for name in _INNER if name in own), None)
    outer = next((own[name] for name in _OUTER if name in own), None)
    if inner is None or outer is None:
        return []
    pairs = [[_number(cell) or 0.0 for cell in cells(column)] for column in (inner, outer)]
    if {len(numbers) for numbers in pairs} != {count}:
        return []
    return [(a, b, False) for a, b in zip(*pairs, strict=True)]


def _part(size: float, inner: float, outer: float, in_mm: bool) -> str:
    """The part that a shoulder between the two sizes of a bearing is of; or empty."""
    for unit in (1.0, _INCH) if in_mm else (1.0,):
        if 0 < inner < size * unit < outer:
            share = (size * unit - inner) / (outer - inner)
            return "" if abs(share - 0.5) < _MIDDLE else "shaft" if share < 0.5 else "housing"
    return ""


def _number(cell: str) -> float | None:
    found = _NUMBER.match(fold(cell))
    return float(found[1].replace(",", ".")) if found else None
