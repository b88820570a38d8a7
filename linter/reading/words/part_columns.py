"""Columns headed by a part of a position and no more (``Front shaft``, ``DE housing [in]``): sizes of seats, if shown.

What a shaft or a housing is measured by, its heading does not say: a bearing beside it does (its bore, its outside
diameter), or a class of its own sort, in the cell or in a column behind it.
"""

import re
from collections.abc import Callable, Sequence

from attrs import evolve

from linter.reading.cells.signs import fold
from linter.reading.words.column_words import KEYS
from linter.reading.words.cuts import station_cuts, unit_trouble
from linter.reading.words.designations import read_designation
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said, part_alone, tells_feature

Column = Heading | None

HOLE = re.compile(r"(?:[Ø⌀øφΦ]? ?[\d.,]+ ?)?(?:JS|Js|[D-HJKMNPR])(?:[3-9]|1[0-2])(?!\d).*")
SHAFT = re.compile(r"(?:[Ø⌀øφΦ]? ?[\d.,]+ ?)?(?:js|[d-hjkmnpr])(?:[3-9]|1[0-2])(?!\d).*")
SIZE_AND_CLASS = re.compile(
    r"[Ø⌀øφΦ]? ?\d[\d.,]* ?(?:mm )?(?:JS|js|Js|[D-Hd-hJKMNPRjkmnpr])(?:[3-9]|1[0-2])(?: ?\(.*\))?"
)
CLASS_ONLY = re.compile(r"(?:JS|js|Js|[D-Hd-hJKMNPRjkmnpr])(?:[3-9]|1[0-2])(?: ?\(.*\))?")
_FIRST_NUMBER = re.compile(r"[Ø⌀øφ]? ?(\d{0,4}[.,]?\d+)(?![\d:])")
_SIDES = {"shaft": SHAFT, "housing": HOLE}
_RINGS = {"shaft": "bore_diameter", "housing": "outside_diameter"}
_ASPECTS = {"CLASS": "tolerance", "UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min"}
#: A seat is within this share of its ring (common practice: far more than any fit).
_SAME = 0.01
_INCH = 25.4
_PIECE = re.compile(r"[^\W\d_⌀Øø]+")
_OF_BEARING_BORE = frozenset(("bore", "diameter", "dimensions", "inside", "bearing", "seat", "housing"))


def may_say_seat(name: str, part: str) -> bool:
    """Whether a name may say the seat of a part, below which sizes with a class of its sort stand.

    The part itself, a seat of none, and for the housing the bore of a bearing (``Lagerbohrung``, ``alésage palier``):
    a ring has no class of holes.
    """
    if (said := part_alone(name)) or not all(map(tells_feature, _PIECE.findall(name))):
        return said == part
    concepts = concepts_said(name)
    of_bore = part == "housing" and {"bore", "bearing"} <= concepts <= _OF_BEARING_BORE
    return of_bore or ("seat" in concepts and concepts <= {"seat", "bearing", "diameter"})


def part_and_place(label: str, words: Words) -> tuple[str, str, str]:
    """The part that a heading says alone, the position beside it, its unit; no part where it says more or less."""
    told = words.told_of(label)
    core, unit = words.names.split_unit(fold(told.rest if told is not None else label))
    part, station = "", told.station if told is not None else ""
    for rest, piece, _ in () if station else station_cuts(core):
        if (found := part_alone(rest)) and (said := words.names.station(piece)):
            part, station = found, said  # albero A, where ``a`` may be a small word too
            break
    part = part or part_alone(core)
    if not part and word_key(core) in KEYS["hole"]:
        part = "housing"
    fits = part and not (unit and unit_trouble(f"{part}_seat_diameter", unit))
    return (part, station, unit) if fits else ("", "", "")


def seat_by_cells(label: str, cells: Sequence[str], words: Words) -> Column:
    """The word for a part or seat over sizes with a class of its sort (``Shaft``, ``Shaft motor side``: ``17 k5``)."""
    shown = next((part for part, side in _SIDES.items() if all(map(side.fullmatch, cells))), "")
    if not shown or not all(map(SIZE_AND_CLASS.fullmatch, cells)):
        return None
    part, station, unit = part_and_place(label, words)
    if not part:
        core, unit = words.names.split_unit(fold(label))
        cuts = ((rest, said) for rest, piece, _ in station_cuts(core) if (said := words.names.station(piece)))
        station = next((said for rest, said in cuts if may_say_seat(rest, shown)), "")
        part = shown if station or may_say_seat(core, shown) else ""
    fits = part == shown and not (unit and unit_trouble(f"{part}_seat_diameter", unit))
    return Heading(f"{part}_seat_diameter", station, unit) if fits else None


def seats_of_parts(
    labels: Sequence[str], result: list[Column], cells: Callable[[int], Sequence[str]], words: Words
) -> None:
    """Sizes below a part of a position that are those of its bearing, or that carry a class of its sort behind them."""
    for c, label in enumerate(labels):
        part, station, unit = part_and_place(label, words) if label and result[c] is None else ("", "", "")
        sizes = [_FIRST_NUMBER.match(fold(cell)) for cell in cells(c)] if part else []
        if not sizes or not all(sizes):
            continue
        seat = Heading(f"{part}_seat_diameter", station, unit)
        if any(h is not None and h.parameter == seat.parameter and h.station == station and h.aspect == "value"
               for h in result):  # fmt: skip
            continue
        behind = _behind(labels, result, c, part, cells, words)
        numbers = [float(size[1].replace(",", ".")) for size in sizes if size is not None]
        fits = _fits_bearing(part, station, numbers, result, cells)
        classed = any(aspect == "tolerance" for _, aspect in behind)
        if fits or (fits is None and (classed or _tolerated(seat, result))):
            result[c] = seat
            for k, aspect in behind:
                result[k] = evolve(seat, aspect=aspect, unit=words.unit_of(labels[k]) or unit)


def _behind(
    labels: Sequence[str], result: Sequence[Column], c: int, part: str, cells: Callable[[int], Sequence[str]],
    words: Words,
) -> list[tuple[int, str]]:  # fmt: skip
    """Columns right behind a size that say no more than which part of a tolerance they hold."""
    found: list[tuple[int, str]] = []
    for k in range(c + 1, len(labels)):
        aspect = _ASPECTS.get(words.group(labels[k]), "") if result[k] is None else ""
        if not aspect or aspect in (known for _, known in found):
            break
        texts = [fold(cell) for cell in cells(k)]
        if aspect == "tolerance" and not (texts and all(_SIDES[part].fullmatch(text) for text in texts)):
            break
        found.append((k, aspect))
    return found


def _tolerated(seat: Heading, result: Sequence[Column]) -> bool:
    """Whether another column states the tolerance of the same seat (``Front shaft fit`` beside ``Front shaft``)."""
    same = (seat.parameter, seat.station)
    return any(h is not None and (h.parameter, h.station) == same and h.aspect == "tolerance" for h in result)


def _fits_bearing(
    part: str, station: str, numbers: Sequence[float], result: Sequence[Column], cells: Callable[[int], Sequence[str]]
) -> bool | None:
    """Whether sizes are those of the bearings in the same rows, in mm or in inches; None where no bearing is known."""
    stated = [
        c for c, h in enumerate(result)
        if h is not None and h.parameter == "bearing_designation" and h.station == station
    ]  # fmt: skip
    if len(stated) != 1:
        return None
    read = [read_designation(cell).derived.get(_RINGS[part]) for cell in cells(stated[0])]
    if len(read) != len(numbers) or not any(read):
        return None
    pairs = [(number, float(ring.value)) for number, ring in zip(numbers, read, strict=True) if ring is not None]
    return any(all(abs(number * one - ring) <= _SAME * ring for number, ring in pairs) for one in (1.0, _INCH))
