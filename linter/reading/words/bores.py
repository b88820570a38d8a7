"""Columns that say bore and nothing else: of the ring, or of the housing, as what stands beside them tells."""

import re
from collections.abc import Callable, Sequence

from attrs import evolve

from linter.reading.cells.signs import fold
from linter.reading.words.column_words import KEYS
from linter.reading.words.headings import Heading, Words
from linter.reading.words.part_columns import SHAFT
from linter.reading.words.parts import concepts_said

Column = Heading | None


_NUMBER = re.compile(r"[^\d+\-−.,]{0,4}(\d*[.,]?\d+)")
_OF_BORE = frozenset(("bore", "diameter", "dimensions", "inside"))
_LIMITS = re.compile(r"[Ø⌀]? ?(\d*[.,]?\d+) ?(?:-|–|/|\.{2,3}|…|to|bis) ?[Ø⌀]? ?(\d*[.,]?\d+)")
#: Limits of one size differ by less than this share of it.
_LIKE_LIMITS = 0.01
#: A ring has the size of the shaft that it sits on: a bore larger than that by more is another one.
_LARGER = 1.15


def says_bore(name: str, key: str) -> bool:
    """Whether a heading without its unit says a bore and not whose; ``key`` is it for comparing."""
    said = concepts_said(name)
    return key in KEYS["bore"] or ("bore" in said and said <= _OF_BORE)


def are_limits(cell: str) -> bool:
    """Whether a cell holds the two limits of one size (``2.1655-2.1660``)."""
    if (found := _LIMITS.fullmatch(cell)) is None:
        return False
    low, high = sorted(float(text.replace(",", ".")) for text in found.groups())
    return low > 0 and high - low < _LIKE_LIMITS * low


def bore_beside_its_tolerance(
    labels: Sequence[str],
    result: list[Column],
    cells: Callable[[int], Sequence[str]],
    words: Words,
    bores: Sequence[bool],
) -> None:
    """A bore with a column of hole classes or of deviations behind it is the bore of the housing."""
    for c, heading in enumerate(result[:-1]):
        if heading is None or heading.parameter != "bore_diameter" or not bores[c]:
            continue
        behind = []
        for k in range(c + 1, len(result)):
            aspect = {"CLASS": "tolerance", "UPPER": "upper", "LOWER": "lower"}.get(words.group(labels[k]), "")
            own = result[k]
            if own is not None and own.parameter == "housing_seat_diameter" and own.aspect != "value":
                aspect = own.aspect  # Bore tol: H6
            elif own is not None or not aspect:
                break
            behind.append((k, aspect))
        classes = [cell for k, aspect in behind if aspect == "tolerance" for cell in map(fold, cells(k))]
        if not behind or any(SHAFT.fullmatch(cell) for cell in classes):
            if behind:
                result[c] = None
            continue
        seat = evolve(heading, parameter="housing_seat_diameter", own_unit=False)
        result[c] = seat
        for k, aspect in behind:
            result[k] = evolve(seat, aspect=aspect, unit=words.unit_of(labels[k]) or seat.unit)


def bore_larger_than_the_shaft(
    result: list[Column], cells: Callable[[int], Sequence[str]], bores: Sequence[bool]
) -> None:
    """A bore that is larger in every row than the shaft seat beside it is the housing's."""
    for c, heading in enumerate(result):
        if heading is None or not bores[c] or heading.own_unit:
            continue
        if (heading.parameter, heading.aspect) != ("bore_diameter", "value"):
            continue
        own = {h.parameter: k for k, h in enumerate(result) if h is not None and _alike(h, heading)}
        shaft = own.get("shaft_seat_diameter")
        if shaft is None or "housing_seat_diameter" in own:
            continue
        pairs = [_number(cell) for cell in cells(c)], [_number(cell) for cell in cells(shaft)]
        sizes = list(zip(*pairs, strict=False))
        if sizes and len(pairs[0]) == len(pairs[1]) and all(s and b and b > _LARGER * s for b, s in sizes):
            result[c] = evolve(heading, parameter="housing_seat_diameter")


def _alike(one: Heading, other: Heading) -> bool:
    return one.station == other.station and one.aspect == "value"


def _number(cell: str) -> float | None:
    found = _NUMBER.match(fold(cell))
    return float(found[1].replace(",", ".")) if found else None
