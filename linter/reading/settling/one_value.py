"""One value per parameter and row from all the cells that state it; cells that differ settle nothing."""

import math
import re
from collections.abc import Callable
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.model.vocabulary import Parameter
from linter.reading.files.grids import cell_text
from linter.reading.layouts.strips import Strip
from linter.reading.settling.values import Values

_DECIMALS = re.compile(r"[.,](\d+)")
_NUMBER = re.compile(r"\d[\d.,]*")

Ints = NDArray[np.intp]


@frozen(eq=False)
class Stated:
    """The cells of one strip with the station row (or machine) each one speaks for.

    ``group`` counts stations for a station parameter and machines for a machine parameter; a cell that speaks for
    several stations stands there once for each. ``cell`` is the index into the strip.
    """

    strip: Strip
    values: Values
    group: Ints
    cell: Ints


def settle_numbers(
    entry: Parameter, stated: list[Stated], count: int, disagree: Callable[..., None], pick: str = "number"
) -> tuple[NDArray[np.float64], Ints]:
    """One number per group; a group with two different numbers keeps none.

    Parameters
    ----------
    entry : Parameter
        The parameter, for messages.
    stated : list of Stated
        The cells.
    count : int
        Number of groups.
    disagree : callable
        Told of each group whose cells differ.
    pick : {"number", "lower", "upper"}
        Which column of the values.

    Returns
    -------
    numbers : float array, shape (count,)
        NaN where nothing is stated or cells disagree.
    source : int array, shape (count,)
        Position, over all cells of all strips, of the first cell that states the value; -1 where none does.
    """
    if not stated:
        return np.full(count, np.nan), np.full(count, -1, dtype=np.intp)
    columns = [getattr(one.values, pick) for one in stated]
    parts = [np.full(len(s.cell), np.nan) if c is None else c[s.cell] for s, c in zip(stated, columns, strict=True)]
    numbers = parts[0] if len(parts) == 1 else np.concatenate(parts)
    group = stated[0].group if len(stated) == 1 else np.concatenate([s.group for s in stated])
    absent = np.isnan(numbers)
    if len(group) == count and np.array_equal(group, np.arange(count)):
        return numbers, np.where(absent, -1, np.arange(count))
    have = np.flatnonzero(~absent)
    group, kept = group[have], numbers[have]
    result = np.full(count, np.nan)
    source = np.full(count, -1, dtype=np.intp)
    result[group[::-1]] = kept[::-1]
    source[group[::-1]] = have[::-1]
    differs = np.abs(kept - result[group]) > 1e-9 * np.maximum(np.abs(kept), np.abs(result[group]))
    if differs.any():
        starts = np.cumsum([0, *(len(s.cell) for s in stated)])

        def cell_at(position: int) -> tuple[Stated, int]:
            strip = int(np.searchsorted(starts, position, side="right")) - 1
            return stated[strip], position - int(starts[strip])

        told: set[int] = set()
        for index in np.flatnonzero(differs).tolist():
            g = int(group[index])
            one, other = cell_at(int(source[g])), cell_at(int(have[index]))
            if g in told:
                continue
            if _same_within_rounding(one, other, float(result[g]), float(kept[index])):
                if _digits(other) < _digits(one):  # 20 mm beside 0.7874 in: the other is worked out of it
                    result[g], source[g] = kept[index], have[index]
                continue
            told.add(g)
            disagree(entry, g, one, other)
        for g in told:
            result[g] = np.nan
    return result, source


def _same_within_rounding(one: tuple[Stated, int], other: tuple[Stated, int], a: float, b: float) -> bool:
    """Whether two statements in different units differ only by the rounding of the coarser one."""
    (first, i), (second, j) = one, other
    if first.values.factor == second.values.factor:
        return False

    def step(stated: Stated, position: int) -> float:
        text = cell_text(stated.strip.cells[int(stated.cell[position])])
        decimals = _DECIMALS.search(text)
        return 0.5 * 10.0 ** -(len(decimals[1]) if decimals else 0) * stated.values.factor

    return abs(a - b) <= max(step(first, i), step(second, j)) * (1 + 1e-9)


def _digits(at: tuple[Stated, int]) -> tuple[int, bool]:
    """Number of digits that a cell states its number with, without zeros at its ends; whether in no metric unit."""
    stated, position = at
    found = _NUMBER.search(cell_text(stated.strip.cells[int(stated.cell[position])]))
    count = len(re.sub(r"[.,]", "", found[0]).strip("0")) if found else 0
    return count, not math.isclose(power := math.log10(stated.values.factor), round(power), abs_tol=1e-9)


def settle_words(
    entry: Parameter, stated: list[Stated], count: int, disagree: Callable[..., None]
) -> tuple[NDArray[Any], Ints]:
    """One text per group, as :func:`settle_numbers` does for numbers; empty where nothing is stated."""
    table: dict[str, int] = {"": 0}
    coded = []
    for one in stated:
        words = one.values.words
        if words is None:
            words = np.full(len(one.strip.cells), "", dtype=object)
        plain = words.tolist()
        for word in dict.fromkeys(plain):
            table.setdefault(word, len(table))
        codes = np.fromiter(map(table.__getitem__, plain), np.float64, len(plain))
        codes[codes == 0] = np.nan
        coded.append(Stated(one.strip, Values(codes), one.group, one.cell))
    numbers, source = settle_numbers(entry, coded, count, disagree)
    names = np.array(list(table), dtype=object)
    return names[np.where(np.isnan(numbers), 0, numbers).astype(np.intp)], source
