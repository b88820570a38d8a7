"""What the cells of one strip say: values by column, and what could not be used as it stands."""

from collections.abc import Iterable
from typing import Any

import numpy as np
from attrs import define, evolve, field, frozen
from numpy.typing import NDArray

from linter.reading.cells.numbers import Decimal
from linter.reading.cells.signs import ReadError
from linter.reading.files.grids import Bad, Column, TextColumn
from linter.reading.words.mapping import Mapping

Floats = NDArray[np.float64]

MISSING = {
    "not-applicable": "says that there is none",
    "not-known": "says that it is not known yet",
    "see-above": "refers to another row, which is not followed",
}


@frozen
class Trouble:
    """A cell that could not be used as it stands.

    ``kind`` is one of :class:`linter.model.stations.Problem`, or ``partly`` (unreadable, but its nominal is used), or
    ``missing`` (the cell says itself that there is no value; see :mod:`linter.reading.settling.missing`).
    """

    index: int
    kind: str
    code: str
    read: str
    expected: str
    sentence: str


@define(eq=False)
class Values:
    """Cells of one strip as understood, each column of shape (cells,).

    Attributes
    ----------
    number : float array
        Number, nominal, deviation or limit in the canonical unit, by the strip's aspect; code of a choice.
    lower, upper : float array or None
        Deviations that stood in the cell, canonical unit.
    words : object array or None
        Text, or tolerance class that stood in the cell.
    limits : bool array or None
        Cells that state two limits of size and no nominal; the number is then their middle.
    troubles : list of Trouble
        Cells not used as they stand.
    bare : bool array or None
        Cells whose number stands without any unit, so that the canonical one is taken; None where all state theirs.
    factor : float
        From the unit of the table to the canonical one, for judging rounding.
    """

    number: Floats
    lower: Floats | None = None
    upper: Floats | None = None
    words: NDArray[Any] | None = None
    limits: NDArray[np.bool_] | None = None
    troubles: list[Trouble] = field(factory=list)
    bare: NDArray[np.bool_] | None = None
    factor: float = 1.0

    def has_tolerance(self, cell: int) -> bool:
        """Whether a cell states a tolerance and no number."""
        stated = self.words is not None and bool(self.words[cell])
        stated = stated or (self.upper is not None and not np.isnan(self.upper[cell]))
        return stated and bool(np.isnan(self.number[cell]))


def distinct_texts(cells: Column) -> tuple[list[str], NDArray[np.intp], list[tuple[int, Any]]]:
    """Distinct texts, the index of each cell into them (-1: not a text), and the cells that are no texts."""
    if isinstance(cells, TextColumn):
        return *cells.distinct(), []
    plain = cells.tolist()
    kinds = set(map(type, plain))
    others: list[tuple[int, Any]] = []
    if kinds != {str}:
        others = [(i, cell) for i, cell in enumerate(plain) if type(cell) is not str and cell is not None]
        plain = [cell if type(cell) is str else "" for cell in plain]
    distinct = {text: index for index, text in enumerate(dict.fromkeys(plain))}
    codes = np.fromiter(map(distinct.__getitem__, plain), dtype=np.intp, count=len(plain))
    return list(distinct), codes, others


def spread(codes: NDArray[np.intp], wrong: dict[int, Trouble]) -> Iterable[Trouble]:
    """A trouble per cell from a trouble per distinct text."""
    if not wrong:
        return
    flag = np.zeros(int(codes.max()) + 1, dtype=bool)
    flag[list(wrong)] = True
    for index in np.flatnonzero(flag[codes]):
        yield at(wrong[int(codes[index])], int(index))


def at(trouble: Trouble, index: int) -> Trouble:
    """The same trouble at another cell."""
    return evolve(trouble, index=index)


def trouble_of(error: ReadError) -> Trouble:
    """A trouble from the error of a cell reader, of no cell yet."""
    if error.code in MISSING:
        return Trouble(-1, "missing", error.code, error.read, error.expected, MISSING[error.code])
    return Trouble(-1, "unreadable", error.code, error.read, error.expected, error.sentence)


def bad_cell(index: int, bad: Bad) -> Trouble:
    """A trouble from a cell that holds no value at all."""
    return Trouble(index, "unreadable", bad.code, bad.read, bad.expected, f"the cell holds {bad.read}")


@frozen
class Terms:
    """What holds for all cells of a table.

    Attributes
    ----------
    decimal : {".", ","} or None
        Decimal mark, where it is settled.
    length_unit : str
        Unit that the table states for all its lengths; empty for none.
    mapping : Mapping
        What the name mapping says about units, choices and tolerances.
    class_in_mm : bool
        Whether an ISO 286 class behind a size without a unit says that it is in mm; not in a table whose lengths are
        stated in inches.
    """

    decimal: Decimal | None
    length_unit: str
    mapping: Mapping
    class_in_mm: bool = True
