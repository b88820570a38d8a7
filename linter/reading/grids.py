"""Raw cells: what a sheet or text table holds, before anything is understood.

A :class:`Grid` keeps columns (numpy object arrays), not rows. A cell is a text, a number, a truth value, a :class:`Bad`
cell, or blank (``None`` or an empty text).
"""

from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.places import Place, column_letters

Column = NDArray[Any]


@frozen
class Bad:
    """A cell that holds something but no usable value.

    Attributes
    ----------
    code : str
        Short stable word: ``error-cell``, ``date-cell``, ``not-calculated``, ``struck-out``, ``too-long``.
    read : str
        What stood in the cell.
    expected : str
        What was expected instead.
    """

    code: str
    read: str
    expected: str


@frozen(eq=False)
class Grid:
    """The cells of one sheet or one text table.

    Attributes
    ----------
    file : str
        File as the user named it.
    sheet : str or None
        Sheet; None for a text table.
    columns : list of object array, each of shape (rows,)
        The cells.
    lines : int32 array, shape (rows,)
        True row or line number of each row, counted from 1.
    first_column : int
        Spreadsheet column of ``columns[0]``, counted from 1.
    merged : tuple of (top, left, bottom, right)
        Merged ranges as grid indices, last ones included. Their cells other than the first are blank in ``columns``.
    formats : dict of (row, column) to str
        Number formats that carry meaning: a percent sign or a unit behind the number.
    hidden_rows, hidden_columns : frozenset of int
        Grid indices of hidden rows and columns.
    """

    file: str
    sheet: str | None
    columns: list[Column] = field(repr=False)
    lines: NDArray[np.int32] = field(repr=False)
    first_column: int = 1
    merged: tuple[tuple[int, int, int, int], ...] = ()
    formats: dict[tuple[int, int], str] = field(factory=dict)
    hidden_rows: frozenset[int] = frozenset()
    hidden_columns: frozenset[int] = frozenset()

    @property
    def height(self) -> int:
        """Number of rows."""
        return len(self.lines)

    @property
    def width(self) -> int:
        """Number of columns."""
        return len(self.columns)

    def place(self, row: int, column: int) -> Place:
        """Place of a cell by its grid indices."""
        return Place(self.file, self.sheet, f"{column_letters(self.first_column + column)}{int(self.lines[row])}")

    def text(self, row: int, column: int) -> str:
        """Text of a cell, stripped of blanks around it; empty for a blank cell."""
        return cell_text(self.columns[column][row])

    def row(self, row: int) -> list[Any]:
        """The cells of one row."""
        return [column[row] for column in self.columns]

    def cut(self, rows: slice, columns: slice = slice(None)) -> "Grid":
        """A rectangle of the grid as a grid of its own, with its true places."""
        top, bottom, _ = rows.indices(self.height)
        left, right, _ = columns.indices(self.width)
        return Grid(
            self.file,
            self.sheet,
            [column[top:bottom] for column in self.columns[left:right]],
            self.lines[top:bottom],
            self.first_column + left,
            tuple(
                (t - top, c - left, min(b, bottom - 1) - top, min(r, right - 1) - left)
                for t, c, b, r in self.merged
                if top <= t < bottom and left <= c < right
            ),
            {(r - top, c - left): f for (r, c), f in self.formats.items() if top <= r < bottom and left <= c < right},
            frozenset(r - top for r in self.hidden_rows if top <= r < bottom),
            frozenset(c - left for c in self.hidden_columns if left <= c < right),
        )


def cell_text(cell: Any) -> str:
    """A cell as text: as written for a text, shortest exact spelling for a number, empty for a blank."""
    if cell is None:
        return ""
    if type(cell) is str:
        return cell.strip()
    if isinstance(cell, Bad):
        return cell.read
    if isinstance(cell, bool):
        return "true" if cell else "false"
    if isinstance(cell, float) and cell.is_integer() and abs(cell) < 1e15:
        return str(int(cell))
    return str(cell)


def is_blank(cell: Any) -> bool:
    """Whether a cell holds nothing."""
    return cell is None or (type(cell) is str and not cell.strip())
