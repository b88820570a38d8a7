"""A column of nominal sizes beside the limits of a seat, under a heading that is not known (``軸 図示サイズ``)."""

import re
from collections.abc import Callable, Sequence

from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

_PLAIN = re.compile(r"[Ø⌀øφΦϕ∅Ф]?\s*(\d+)(?:[.,](\d+))?")
#: A nominal size is written with one decimal at most (common practice), its limits with more; how near they are.
_DECIMALS, _NEAR = 1, 0.01


def nominal_beside_limits(
    labels: Sequence[str], result: list[Heading | None], cells: Callable[[int], Sequence[str]], words: Words
) -> None:
    """Give such a column the size whose limits stand beside it, where no other column states its nominal."""
    stated = {(h.parameter, h.station) for h in result if h is not None and h.aspect == "value"}
    for column, label in enumerate(labels):
        if result[column] is not None or not label or words.mapped(label):
            continue
        after, before = _but_classes(result, column, 1), _but_classes(result, column, -1)
        for one, other in (after, before[::-1], (before[0], after[0])):
            size = _of_limits(result, one, other)
            if size is None or (size.parameter, size.station) in stated:
                continue
            if are_nominals(cells(column), cells(one), cells(other)):
                assumed = size.parameter.partition("_")[0] not in concepts_said(label)
                result[column] = Heading(size.parameter, size.station, unit=size.unit, assumed=assumed)
                break


def _but_classes(result: Sequence[Heading | None], column: int, step: int) -> tuple[int, int]:
    """The two columns on one side of a column, without one of classes of a size (``Ø | ISO tol. | Max | Min``)."""
    beside = column + step
    said = result[beside] if 0 <= beside < len(result) else None
    first = beside + step if said is not None and said.aspect in ("class", "tolerance") else beside
    return first, first + step


def _of_limits(result: Sequence[Heading | None], one: int, other: int) -> Heading | None:
    """The size of which two columns state the limits, or None."""
    if not (0 <= one < len(result) and 0 <= other < len(result)):
        return None
    first, second = result[one], result[other]
    if first is None or second is None or {first.aspect, second.aspect} != {"min", "max"}:
        return None
    same = (first.parameter, first.station) == (second.parameter, second.station)
    return first if same and first.entry.kind == "toleranced" else None


def are_nominals(sizes: Sequence[str], lower: Sequence[str], upper: Sequence[str]) -> bool:
    """Whether sizes are as near to their two limits and as rounded as nominal ones are."""
    if not 0 < len(sizes) == len(lower) == len(upper):
        return False
    rows = [[_PLAIN.fullmatch(text.strip()) for text in row] for row in zip(sizes, lower, upper, strict=True)]
    if any(None in row for row in rows):
        return False
    numbers = [[(float(f"{n[1]}.{n[2] or 0}"), len(n[2] or "")) for n in row if n is not None] for row in rows]
    near = all(abs(limit - row[0][0]) <= _NEAR * row[0][0] for row in numbers for limit, _ in row[1:])
    rounded = all(row[0][1] <= _DECIMALS for row in numbers)
    return near and rounded and any(digits > _DECIMALS for row in numbers for _, digits in row[1:])
