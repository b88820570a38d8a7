"""Sheets with addresses, the truth that is gathered while they are filled, and their bytes."""

import csv
import io
import re
import zipfile
from collections.abc import Sequence
from datetime import datetime

import openpyxl
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Table, Value

from .firm import Column, Field, Firm
from .style import Cell, Num, Owner

DIVIDERS = {"csv,": ",", "csv;": ";", "tab": "\t"}
SUFFIXES = {"csv,": ".csv", "csv;": ".csv", "tab": ".tsv", "xlsx": ".xlsx", "json": ".json"}


class Truth:
    """What has been written where."""

    def __init__(self) -> None:
        self.own: dict[tuple[int, int, str], list[str]] = {}
        self.heads: dict[tuple[int, int, str], list[tuple[str, str]]] = {}
        self.meaning: dict[tuple[int, int, str], tuple[Value, str, str]] = {}

    def add(self, field: Field, owner: Owner, own: str, heads: Sequence[tuple[str, str]]) -> None:
        """A cell of a field; ``heads`` are addresses and words of its headings."""
        if owner not in field.values:
            owner = (owner[0], -1)
        if owner not in field.values:
            return
        key = (*owner, field.parameter)
        verdict = field.verdicts.get(owner, "read")
        self.meaning[key] = (field.values[owner], verdict, field.form)
        if own not in self.own.setdefault(key, []):
            self.own[key].append(own)
        self.heads.setdefault(key, []).extend(h for h in heads if h not in self.heads[key])

    def expected(self) -> tuple[Expected, ...]:
        found = []
        for (m, s, parameter), (value, verdict, form) in self.meaning.items():
            own, heads = self.own[m, s, parameter], self.heads[m, s, parameter]
            cells = tuple(dict.fromkeys((*own, *(a for a, _ in heads))))
            words = tuple(dict.fromkeys(w for _, w in heads))
            found.append(Expected(m, s, parameter, value, verdict, form, cells, words, tuple(own)))
        return tuple(found)


class Grid:
    """One sheet."""

    def __init__(self, name: str = "") -> None:
        self.name = name
        self.cells: dict[tuple[int, int], Cell] = {}
        self.merged: list[tuple[int, int, int, int]] = []

    @property
    def rows(self) -> int:
        return 1 + max((r for r, _ in self.cells), default=-1)

    def put(self, row: int, column: int, cell: Cell) -> str:
        if cell != "":
            self.cells[row, column] = cell
        return f"{get_column_letter(column + 1)}{row + 1}"

    def line(self, *cells: Cell) -> int:
        """A line at the end."""
        row = self.rows
        for c, cell in enumerate(cells):
            self.put(row, c, cell)
        return row

    def skip(self) -> None:
        self.cells[self.rows, 0] = ""


class Pen:
    """Fills sheets in the manner of a firm."""

    def __init__(self, firm: Firm) -> None:
        self.firm, self.truth = firm, Truth()
        self.grids = [Grid()]
        self.machine_named = False

    @property
    def grid(self) -> Grid:
        return self.grids[-1]

    def obvious(self, column: Column) -> bool:
        """Whether a unit goes without saying (or is said once for the table)."""
        if column.quantity in ("length", "size", "rough"):
            return column.quantity != "rough" or not self.firm.inch
        return column.quantity in ("form", "deviation") and column.unit in ("mm", "мм", "in")

    def heading(self, column: Column, short: bool = False, place: str = "") -> str:
        """The words of a heading, with its unit where the firm has it there."""
        place, word = place or self.firm.plan.place, column.short if short else column.word
        if not column.unit or place in ("row", "cell") or (place in ("title", "none") and self.obvious(column)):
            return word
        return self.firm.unit_style.format(word, column.unit)

    def cell(self, column: Column, owner: Owner, place: str = "") -> Cell:
        """A cell as written; with its unit where units stand in cells."""
        cell = column.cell(*owner)
        if isinstance(cell, Num) and (place or self.firm.plan.place) == "cell" and column.unit:
            gap = "" if column.unit == "°" else " "
            return f"{self.firm.show(cell)}{gap}{column.unit}"
        if isinstance(cell, str) and column.quantity in ("force",) and (place or self.firm.plan.place) == "cell":
            return f"{cell} {column.unit}"
        return cell

    def pairs(self, fields: Sequence[Field], machine: int, place: str = "cell", across: int = 0) -> None:
        """Key and value in lines, as in a title block."""
        for field in fields:
            for column in field.columns:
                owner = next(o for o in ((machine, -1), (machine, 0)) if o in column.cells)
                row = self.grid.rows
                head = self.heading(column, place=place)
                where = self.grid.put(row, across, head)
                own = self.grid.put(row, across + 1, self.cell(column, owner, place))
                owners = [owner] if owner[1] < 0 else [(machine, 0), (machine, 1)]
                for o in owners:
                    self.truth.add(field, o, own, [(where, head)])

    def head(self, fields: Sequence[Field]) -> None:
        """Title and title block; lines that firms have over their tables."""
        firm, grid = self.firm, self.grid
        if firm.rng.random() < 0.7:
            title = firm.word("t_title")
            grid.line(title)
        self.pairs(fields, 0)
        if firm.plan.place == "title":
            grid.line(firm.word("t_in" if firm.inch else "t_mm"))
        if grid.rows and firm.rng.random() < 0.6:
            grid.skip()

    def foot(self) -> None:
        firm = self.firm
        if firm.rng.random() < 0.6:
            self.grid.skip() if firm.rng.random() < 0.5 else None
            for text in firm.rng.sample(firm.choices("t_foot"), firm.rng.choice((1, 1, 2))):
                self.grid.line(text)
            if firm.rng.random() < 0.5:
                self.grid.line(*firm.rng.sample(firm.choices("t_sign"), 2))

    def table(self, content: bytes | None = None) -> Table:
        firm, plan = self.firm, self.firm.plan
        suffix = SUFFIXES[plan.file]
        if content is None:
            content = self.workbook() if suffix == ".xlsx" else self.text()
        kinds = {
            "layout": plan.layout,
            "language": plan.language,
            "tolerance": plan.tolerance,
            "units": plan.place,
            "length unit": "in" if firm.inch else "mm",
            "bearing": "designation" if firm.listed("des") else "sizes",
            "encoding": plan.encoding if suffix != ".xlsx" else "xlsx",
        }
        implied = firm.implied() if firm.listed("des") else {}
        stations = tuple(tuple(firm.labels) for _ in firm.names)
        expected = self.truth.expected()
        return Table(firm.number, suffix, content, tuple(firm.names), stations, expected, implied, kinds)

    def text(self) -> bytes:
        grid, firm = self.grid, self.firm
        width = 1 + max(c for _, c in grid.cells)
        out = io.StringIO()
        writer = csv.writer(out, delimiter=DIVIDERS[firm.plan.file], lineterminator="\r\n")
        for r in range(grid.rows):
            row = [firm.show(grid.cells.get((r, c), "")) for c in range(width)]
            writer.writerow(row if "ragged" not in firm.plan.notes else row[: 1 + max(
                (c for c in range(width) if row[c]), default=0)])  # fmt: skip
        return out.getvalue().encode(firm.plan.encoding)

    def workbook(self) -> bytes:
        book = openpyxl.Workbook()
        book.remove(book.active)
        for k, grid in enumerate(self.grids):
            sheet = book.create_sheet(grid.name or ("Sheet1", "Export", "Data")[(self.firm.number + k) % 3])
            for (r, c), cell in grid.cells.items():
                if cell == "":
                    continue
                made = sheet.cell(r + 1, c + 1)
                made.value = cell.value if isinstance(cell, Num) else cell
                if isinstance(cell, str):
                    made.data_type = "s"
                elif cell.quantity == "deviation":
                    made.number_format = "+0.0###;-0.0###;0"
            for r0, c0, r1, c1 in grid.merged:
                sheet.merge_cells(start_row=r0 + 1, start_column=c0 + 1, end_row=r1 + 1, end_column=c1 + 1)
        made_at = datetime(2024, 5, 17)
        book.properties.created = book.properties.modified = made_at
        first = io.BytesIO()
        book.save(first)
        # the same bytes each time: no time of writing
        out = io.BytesIO()
        with zipfile.ZipFile(first) as source, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as target:
            for name in source.namelist():
                data = source.read(name)
                if name == "docProps/core.xml":
                    data = re.sub(rb"(<dcterms:modified[^>]*>)[^<]*", rb"\g<1>2024-05-17T00:00:00Z", data)
                target.writestr(zipfile.ZipInfo(name, (2024, 5, 17, 0, 0, 0)), data)
        return out.getvalue()
