"""Where a value stood in its file: kept from the first step of a review to the last."""

from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray


@cache
def column_letters(column: int) -> str:
    """Spreadsheet letters of a column counted from 1 (1 is ``A``, 28 is ``AB``)."""
    letters = ""
    while column > 0:
        column, rest = divmod(column - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters


def shown(path: Path) -> str:
    """A file as reports name it: as given, but only its name where an absolute path was given."""
    return path.name if path.is_absolute() else path.as_posix()


@frozen(order=True)
class Place:
    """One cell of a sheet or text table, or one node of a JSON document.

    Attributes
    ----------
    file : str
        File as the user named it.
    sheet : str or None
        Sheet of a workbook; None for a text table or JSON.
    cell : str or None
        Cell such as ``C14``; in a text table the column letter and the line number of the file.
    pointer : str or None
        JSON Pointer (RFC 6901), for JSON.
    """

    file: str
    sheet: str | None = None
    cell: str | None = None
    pointer: str | None = None

    def __str__(self) -> str:
        """The place in words: file, sheet and cell, or file and pointer."""
        return " ".join(filter(None, (self.file, self.sheet, self.cell or self.pointer)))

    def short(self) -> str:
        """The place inside its file, for a report that names the file once."""
        if self.pointer is not None:
            return self.pointer or "/"
        return " ".join(part for part in (self.sheet, self.cell) if part)

    def as_dict(self) -> dict[str, Any]:
        """The keys of the result file."""
        if self.pointer is not None:
            return {"file": self.file, "pointer": self.pointer}
        return {"file": self.file, "sheet": self.sheet, "cell": self.cell}


@frozen(eq=False)
class PlaceColumn:
    """The places of one parameter for all rows, held as arrays.

    Attributes
    ----------
    file : str
        File as the user named it.
    sheets : tuple of str or None
        Sheets that ``sheet`` counts into; ``(None,)`` for a text table.
    sheet, row, column : int32 array, shape (rows,)
        Sheet index, row and column counted from 1; row 0 where the table states nothing.
    pointers : list of str or None
        JSON Pointers instead, one per row (None where nothing is stated).
    """

    file: str
    sheets: tuple[str | None, ...] = (None,)
    sheet: NDArray[np.int32] = field(factory=lambda: np.zeros(0, np.int32))
    row: NDArray[np.int32] = field(factory=lambda: np.zeros(0, np.int32))
    column: NDArray[np.int32] = field(factory=lambda: np.zeros(0, np.int32))
    pointers: list[str | None] | None = None

    def at(self, index: int) -> Place | None:
        """The place of one row, or None where the table states nothing."""
        if self.pointers is not None:
            pointer = self.pointers[index]
            return None if pointer is None else Place(self.file, pointer=pointer)
        row = int(self.row[index])
        if row == 0:
            return None
        return Place(self.file, self.sheets[int(self.sheet[index])], f"{column_letters(int(self.column[index]))}{row}")

    @property
    def stated(self) -> NDArray[np.bool_]:
        """Rows that have a place."""
        if self.pointers is not None:
            return np.array([pointer is not None for pointer in self.pointers], dtype=bool)
        return self.row != 0

    def every(self, rows: NDArray[np.intp]) -> list[Place | None]:
        """The places of many rows, in their order."""
        if self.pointers is not None or not self.row[rows].all():
            return [self.at(row) for row in rows.tolist()]
        letters = {column: column_letters(column) for column in np.unique(self.column[rows]).tolist()}
        cells = zip(*(of[rows].tolist() for of in (self.sheet, self.column, self.row)), strict=True)
        file, sheets = self.file, self.sheets
        return [Place(file, sheets[sheet], f"{letters[column]}{row}") for sheet, column, row in cells]

    def take(self, rows: NDArray[np.intp] | slice) -> "PlaceColumn":
        """The same for a choice of rows, in their order."""
        if self.pointers is not None:
            kept = self.pointers[rows] if isinstance(rows, slice) else [self.pointers[i] for i in rows]
            return PlaceColumn(self.file, pointers=kept)
        return PlaceColumn(self.file, self.sheets, self.sheet[rows], self.row[rows], self.column[rows])


@frozen(eq=False)
class JoinedPlaces:
    """The places of one parameter where the rows come from several tables.

    Attributes
    ----------
    parts : tuple of PlaceColumn
        The places of the tables that state the parameter.
    part, row : int32 array, shape (rows,)
        Which of the parts a row belongs to (-1 where its table does not state the parameter), and its row there.
    """

    parts: tuple[PlaceColumn, ...]
    part: NDArray[np.int32]
    row: NDArray[np.int32]

    @classmethod
    def of(cls, columns: "Sequence[PlaceColumn | JoinedPlaces | None]", counts: Sequence[int]) -> "JoinedPlaces":
        """The columns of several tables with ``counts`` rows; None for a table that does not state the parameter."""
        parts: list[PlaceColumn] = []
        part: list[NDArray[Any]] = []
        row: list[NDArray[Any]] = []
        for column, count in zip(columns, counts, strict=True):
            if isinstance(column, JoinedPlaces):
                part.append(np.where(column.part >= 0, column.part + len(parts), -1))
                row.append(column.row)
                parts.extend(column.parts)
                continue
            part.append(np.full(count, -1 if column is None else len(parts)))
            row.append(np.arange(count))
            if column is not None:
                parts.append(column)
        return cls(tuple(parts), np.concatenate(part).astype(np.int32), np.concatenate(row).astype(np.int32))

    def at(self, index: int) -> Place | None:
        """The place of one row, or None where its table states nothing."""
        part = int(self.part[index])
        return None if part < 0 else self.parts[part].at(int(self.row[index]))

    @property
    def stated(self) -> NDArray[np.bool_]:
        """Rows that have a place."""
        found = np.zeros(len(self.part), dtype=bool)
        for number, column in enumerate(self.parts):
            of_part = self.part == number
            found[of_part] = column.stated[self.row[of_part]]
        return found

    def take(self, rows: NDArray[np.intp] | slice) -> "JoinedPlaces":
        """The same for a choice of rows, in their order."""
        return JoinedPlaces(self.parts, self.part[rows], self.row[rows])
