"""Raw cells: what a sheet or text table holds, before anything is understood.

A :class:`Grid` keeps columns, not rows. A column is a numpy object array, or a :class:`TextColumn` in a long text
table. A cell is a text, a number, a truth value, a :class:`Bad` cell, or blank (``None`` or an empty text).
"""

from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property
from typing import Any, overload

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from linter.model.places import Place, column_letters
from linter.reading.files.decimals import plain_decimals

#: Sheets longer than this are taken as one table (stacked tables and blocks side by side are looked for below it).
LONGEST_MIXED = 20_000
#: Longest cell that is read, in characters.
LONGEST_CELL = 32_767
#: Ends each cell of a column's bytes; no text that is read holds it.
CELL_END = 0
#: Signs that stand behind the last cell of a text.
MARGIN = 64
#: Cells of rows whose texts are kept at most.
_MOST_KEPT = 200_000
#: Cells at the head of a column among which some of a kind are looked for first.
_HEAD = 1000
#: Cells of so many signs at most are told apart by whole numbers of eight signs each.
_SHORT = 32
#: What of such a number is kept where only its first signs are of the cell, by their count.
_KEPT = np.array([2 ** (8 * count) - 1 for count in range(9)], dtype=np.uint64)
#: An odd number that spreads the bits of what it multiplies (2^64 by the golden ratio).
_SPREADING = np.uint64(0x9E3779B97F4A7C15)


@frozen(eq=False)
class TextColumn:
    """A long column of text cells, kept as the bytes of the file: a cell becomes a text when it is asked for.

    Attributes
    ----------
    signs : uint8 array
        The whole text in UTF-8, without a NUL, and ``MARGIN`` signs more.
    starts, ends : int32 array, shape (rows,)
        Where each cell begins in ``signs`` and where the next sign after it stands.
    """

    signs: NDArray[np.uint8] = field(repr=False)
    starts: NDArray[np.int32] = field(repr=False)
    ends: NDArray[np.int32] = field(repr=False)
    _decimals: dict[str, NDArray[np.float64] | None] = field(factory=dict, init=False, repr=False)

    def __len__(self) -> int:
        """Number of cells."""
        return len(self.starts)

    @overload
    def __getitem__(self, rows: int) -> str: ...
    @overload
    def __getitem__(self, rows: slice | NDArray[Any]) -> "TextColumn": ...
    def __getitem__(self, rows: Any) -> "str | TextColumn":
        """The text of one cell, or a column of some."""
        starts, ends = self.starts[rows], self.ends[rows]
        if isinstance(rows, slice | np.ndarray):
            return TextColumn(self.signs, starts, ends)
        return self.signs[starts:ends].tobytes().decode("utf-8")

    @cached_property
    def joined(self) -> NDArray[np.uint8]:
        """All cells one after the other, each ended by ``CELL_END``."""
        length = self.ends - self.starts
        longest = int(length.max(initial=0))
        if longest < MARGIN:
            # a window of one width from the start of each cell, of which its own part is kept
            dtype, count = f"V{longest + 1}", len(self.signs) - longest
            windows = np.ndarray((count,), dtype, self.signs, strides=(1,))[self.starts]
            window = windows.view(np.uint8).reshape(-1, longest + 1)
            window[np.arange(len(length)), length] = CELL_END
            return window[np.arange(longest + 1, dtype=np.uint8) <= length.astype(np.uint8)[:, None]]
        view, end = self.signs.data, bytes([CELL_END])
        cells = [view[start:stop] for start, stop in zip(self.starts.tolist(), self.ends.tolist(), strict=True)]
        return np.frombuffer(end.join([*cells, b""]), dtype=np.uint8)

    def tolist(self) -> list[str]:
        """Every cell as a text."""
        return self.joined.tobytes().decode("utf-8").split(chr(CELL_END))[:-1]

    def distinct(self) -> tuple[list[str], NDArray[np.intp]]:
        """Distinct texts in the order in which they come, and the index of each cell into them."""
        if (found := self._alike()) is not None:
            firsts, kinds = found
            return [self[row] for row in firsts.tolist()], kinds
        cells = self.tolist()
        numbers = {text: index for index, text in enumerate(dict.fromkeys(cells))}
        return list(numbers), np.fromiter(map(numbers.__getitem__, cells), dtype=np.intp, count=len(cells))

    def _alike(self) -> tuple[NDArray[np.intp], NDArray[np.intp]] | None:
        """The first cell of each kind and the kind of each cell; None where cells are long or nearly all differ."""
        length = self.ends - self.starts
        longest = int(length.max(initial=0))
        if not 0 < longest <= _SHORT:
            return None
        windows = np.ndarray((len(self.signs) - 7,), "V8", self.signs, strides=(1,))
        words = []
        key = np.zeros(len(length), np.uint64)
        for at in range(0, longest, 8):
            word = windows[self.starts + np.int32(at)].view("<u8") & _KEPT[np.clip(length - at, 0, 8)]
            key = (key ^ (key >> np.uint64(29)) ^ word) * _SPREADING
            words.append(word)
        ordered = np.sort(key)
        keys = ordered[np.append(True, ordered[1:] != ordered[:-1])]
        if len(keys) > len(key) // 8:
            return None
        kinds = np.searchsorted(keys, key)
        firsts = np.empty(len(keys), np.intp)
        firsts[kinds[::-1]] = np.arange(len(key) - 1, -1, -1)
        if any((word != word[firsts][kinds]).any() for word in words):
            return None  # two kinds with one key
        order = np.argsort(firsts)
        rank = np.empty(len(order), np.intp)
        rank[order] = np.arange(len(order))
        return firsts[order], rank[kinds]

    def beginning(self, signs: Iterable[str]) -> NDArray[np.intp]:
        """Cells that are blank or begin with one of these signs, and maybe some that begin with one much like it."""
        first = np.zeros(256, dtype=bool)
        first[[sign.encode("utf-8")[0] for sign in signs]] = True
        return np.flatnonzero(first[self.signs[self.starts]] | (self.starts == self.ends))

    def equal(self, text: str) -> NDArray[np.intp]:
        """Cells that hold just this text."""
        wanted = text.encode("utf-8")
        found = np.flatnonzero(self.ends - self.starts == len(wanted))
        for index, sign in enumerate(wanted):
            found = found[self.signs[self.starts[found] + index] == sign]
        return found

    def decimals(self, mark: str) -> NDArray[np.float64] | None:
        """The numbers of a column of plain decimals, see :func:`plain_decimals`; worked out once for each mark."""
        if mark not in self._decimals:
            self._decimals[mark] = plain_decimals(self.signs, self.starts, self.ends, mark)
        return self._decimals[mark]

    def holding(self, sign: str, most: int) -> NDArray[np.intp]:
        """Cells that hold one of the first ``most`` places of an ASCII sign, each once."""
        if len(self) > _HEAD and len(found := self[:_HEAD].holding(sign, most)) == most:
            return found
        at = np.flatnonzero(self.joined == ord(sign))[:most]
        ends = np.flatnonzero(self.joined[: at[-1]] == CELL_END) if len(at) else at
        cells = np.searchsorted(ends, at)
        return cells[np.diff(cells, prepend=-1) > 0]


Column = NDArray[Any] | TextColumn


def object_column(cells: Sequence[Any]) -> NDArray[Any]:
    """An object array of plain cells."""
    column = np.empty(len(cells), dtype=object)
    column[:] = cells
    return column


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
    columns : list of object array or TextColumn, each of shape (rows,)
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
    unended : int
        Cells of the last row of a text that does not end with a line end, else 0.
    packed : bool
        Whether cells may hold whole lines of a table: quoted blocks with the table's own delimiter in them.
    whole_lines : bool
        Whether the columns are parts of lines that are one cell each: the place of every part is that of its line.
    shifts : int32 array, shape (rows,), or None
        Columns by which the cells of each row stood further right, where the rows of a form were taken apart.
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
    unended: int = 0
    packed: bool = False
    whole_lines: bool = False
    shifts: NDArray[np.int32] | None = None
    _texts: dict[int, dict[int, str]] = field(factory=dict, init=False, repr=False)

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
        shift = 0 if self.shifts is None else int(self.shifts[row])
        at = self.first_column + (0 if self.whole_lines else column + shift)
        return Place(self.file, self.sheet, f"{column_letters(at)}{int(self.lines[row])}")

    def text(self, row: int, column: int) -> str:
        """Text of a cell, stripped of blanks around it; empty for a blank cell."""
        if (known := self._texts.get(row)) is not None:
            return known.get(column, "")
        return cell_text(self.columns[column][row])

    def texts(self, row: int) -> Mapping[int, str]:
        """Texts of the cells of a row that hold something, by columns; kept for the last rows that were asked for."""
        if (known := self._texts.get(row)) is None:
            if len(self._texts) * self.width > _MOST_KEPT:
                self._texts.clear()
            cells = (cell_text(column[row]) for column in self.columns)
            known = self._texts[row] = {column: text for column, text in enumerate(cells) if text}
        return known

    def stated(self, row: int) -> list[Any]:
        """The cells of a row that hold something."""
        return [self.columns[column][row] for column in self.texts(row)]

    def with_cells(self, cells: Mapping[tuple[int, int], Any]) -> "Grid":
        """A grid with other cells in the places of some, by row and column."""
        columns = [*self.columns]
        for column in {column for _, column in cells}:
            own = columns[column].tolist()
            for (row, at), cell in cells.items():
                if at == column:
                    own[row] = cell
            columns[column] = object_column(own)
        return evolve(self, columns=columns)

    def put(self, row: int, column: int, cell: Any) -> None:
        """Put another cell in the place of one, in this grid alone."""
        cells = object_column(self.columns[column].tolist())
        cells[row] = cell
        self.columns[column] = cells
        self._texts.pop(row, None)

    def merged_text(self, row: int, column: int) -> str:
        """Text of a cell, or of the merged cell that it is part of."""
        for top, left, bottom, right in self.merged:
            if top <= row <= bottom and left <= column <= right:
                return self.text(max(top, 0), max(left, 0))
        return self.text(row, column)

    def row(self, row: int) -> list[Any]:
        """The cells of one row."""
        return [column[row] for column in self.columns]

    @cached_property
    def filled(self) -> list[int]:
        """How many cells of each row hold something."""
        counts = np.zeros(self.height, np.int64)
        for column in self.columns:
            counts += np.fromiter((not is_blank(cell) for cell in column.tolist()), bool, self.height)
        return counts.tolist()

    def cut(self, rows: slice, columns: slice = slice(None)) -> "Grid":
        """A rectangle of the grid as a grid of its own, with its true places."""
        top, bottom, _ = rows.indices(self.height)
        left, right, _ = columns.indices(self.width)
        return Grid(
            self.file,
            self.sheet,
            [column[top:bottom] for column in self.columns[left:right]],
            self.lines[top:bottom],
            self.first_column + left * (not self.whole_lines),
            tuple(
                (t - top, c - left, min(b, bottom - 1) - top, min(r, right - 1) - left)
                for t, c, b, r in self.merged
                if top <= t < bottom and left <= c < right
            ),
            {(r - top, c - left): f for (r, c), f in self.formats.items() if top <= r < bottom and left <= c < right},
            frozenset(r - top for r in self.hidden_rows if top <= r < bottom),
            frozenset(c - left for c in self.hidden_columns if left <= c < right),
            min(max(self.unended - left, 0), right - left) if bottom == self.height else 0,
            self.packed,
            self.whole_lines,
            None if self.shifts is None else self.shifts[top:bottom],
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


def bounded(text: str) -> "str | Bad":
    """A cell's text, or why it is not read."""
    if len(text) <= LONGEST_CELL:
        return text
    return Bad("too-long", f"{text[:40]}… ({len(text)} characters)", f"at most {LONGEST_CELL} characters")


def is_blank(cell: Any) -> bool:
    """Whether a cell holds nothing."""
    return cell is None or (type(cell) is str and not cell.strip())
