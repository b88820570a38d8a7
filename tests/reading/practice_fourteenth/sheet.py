"""A grid or a tree of cells that remembers which cell holds what, and its bytes."""

import csv
import io
import json
import re
from typing import Any

import xlsxwriter
from practice.grammar import Expected

from practice_fourteenth.meaning import Entry


def address(row: int, column: int) -> str:
    letters = chr(65 + column) if column < 26 else chr(64 + column // 26) + chr(65 + column % 26)
    return f"{letters}{row + 1}"


class Truth:
    """The values stated so far; the first cells that state one are its own, later ones are added to its cells."""

    def __init__(self) -> None:
        self.stated: dict[tuple[int, int, str], Expected] = {}
        self.words: dict[str, str] = {}

    def state(self, machine: int, entry: Entry, own: list[str], heads: list[str]) -> None:
        own = [a for a in own if a]
        heads = list(dict.fromkeys(a for a in heads if a))
        for parameter, value, verdict in entry.says:
            key = (machine, entry.station, parameter)
            words = tuple(self.words[a] for a in heads if a in self.words)
            cells = tuple(own + heads)
            form = (
                "text" if isinstance(value, str) and entry.form == "text" and parameter != "axial_role" else entry.form
            )
            form = "choice" if parameter == "axial_role" else form
            if not own:
                continue
            if key in self.stated:
                old = self.stated[key]
                cells = tuple(dict.fromkeys(old.cells + cells))
                self.stated[key] = Expected(
                    machine, entry.station, parameter, old.value, old.verdict, old.form, cells, old.words, old.own
                )
            else:
                self.stated[key] = Expected(
                    machine, entry.station, parameter, value, verdict, form, cells, words, tuple(own)
                )


class Sheet(Truth):
    """Rows and columns, counted from 0."""

    def __init__(self) -> None:
        super().__init__()
        self.grid: dict[tuple[int, int], str | float] = {}
        self.row = 0

    def put(self, row: int, column: int, text: str, number: bool = False) -> str:
        """Write a cell; its address, or nothing for an empty one."""
        if not text:
            return ""
        self.grid[row, column] = text
        if number and re.fullmatch(r"[+-]?\d+([.,]\d+)?", text):
            self.grid[row, column] = Number(text)
        self.words[address(row, column)] = text
        return address(row, column)

    def line(self, *texts: str) -> None:
        """A row that states nothing."""
        for k, text in enumerate(texts):
            self.put(self.row, k, text)
        self.row += 1

    def delimited(self, separator: str, pad: bool) -> str:
        width = max(c for _, c in self.grid) + 1
        if width > 26:
            raise ValueError(f"{width} columns are too many for a text file of this set")
        buffer = io.StringIO()
        writer = csv.writer(buffer, delimiter=separator, lineterminator="\r\n")
        for r in range(max(r for r, _ in self.grid) + 1):
            cells = [str(self.grid.get((r, c), "")) for c in range(width)]
            while cells and not cells[-1] and not pad:
                cells.pop()
            writer.writerow(cells)
        return buffer.getvalue()

    def workbook(self) -> bytes:
        buffer = io.BytesIO()
        with xlsxwriter.Workbook(buffer, {"in_memory": True}) as book:
            page = book.add_worksheet()
            for (r, c), cell in sorted(self.grid.items()):
                if isinstance(cell, Number):
                    page.write_number(r, c, float(cell.replace(",", ".")))
                else:
                    page.write_string(r, c, cell)
        return buffer.getvalue()


class Number(str):
    """A cell that a workbook holds as a number."""


class Tree(Truth):
    """A JSON document."""

    def __init__(self, root: Any) -> None:
        super().__init__()
        self.root = root

    def bytes(self, encoding: str) -> bytes:
        return json.dumps(self.root, ensure_ascii=False, indent=1).encode(encoding)
