"""A workbook with the reviewed values, the cells of findings marked, and lists of findings and of what is missing.

It is a new workbook made from values: no formula, macro, link, name or document property of the input gets into it, and
the input is only read.
"""

import datetime
from collections.abc import Sequence
from io import BytesIO
from pathlib import Path
from typing import Any

import xlsxwriter
from attrs import field, frozen
from xlsxwriter.format import Format
from xlsxwriter.workbook import Workbook
from xlsxwriter.worksheet import Worksheet

from linter.model.findings import SEVERITIES, Assessment, ReviewResult
from linter.model.places import Place
from linter.model.visible import LONGEST, visible
from linter.reading.files.grids import Bad, Grid
from linter.reading.files.intake import InputError, Source, load
from linter.reading.files.xlsx import read_grids
from linter.report.cells import cells_to_change, sentence, what_to_change
from linter.report.office import fit_page, row_height
from linter.report.pages import prose
from linter.report.verdict import rests_on
from linter.report.writing import WriteRefused

#: A fixed date stands in the document properties, so that the same inputs give the same bytes.
CREATED = datetime.datetime(2000, 1, 1)
#: Most characters of a cell and most links of a sheet (from memory of the limits of the Office Open XML programs).
LONGEST_CELL = 32_767
MOST_LINKS = 65_000
MOST_IN_COMMENT = 12
#: A text that begins like this could be taken for a formula once it is saved as delimited text.
FORMULA_SIGNS = ("=", "+", "-", "@", "\t", "\r")

FILLS = {
    "critical": ("#F3C6CF", "#6E0A21"),
    "major": ("#F6D3B3", "#6B2C00"),
    "minor": ("#F1E6AE", "#453A00"),
    "remark": ("#CFE0F0", "#1D3F60"),
    "conceded": ("#DDDDD8", "#3A3A36"),
}
GRAVITY = (*SEVERITIES, "conceded")


@frozen(eq=False)
class _Book:
    """The workbook being written, with its formats and the place of every copied cell."""

    book: Workbook
    formats: dict[str, Format]
    sheets: dict[str | None, Worksheet] = field(factory=dict)
    cells: dict[Place, tuple[str, str]] = field(factory=dict)

    def text(self, sheet: Worksheet, row: int, column: int, value: str, look: str = "plain") -> None:
        """Write a text as a text, whatever it begins with."""
        shown = _text(value)
        name = f"{look}-quoted" if shown.startswith(FORMULA_SIGNS) and f"{look}-quoted" in self.formats else look
        sheet.write_string(row, column, shown, self.formats[name])

    def cell(self, sheet: Worksheet, row: int, column: int, value: Any, look: str = "plain") -> None:
        """Write a value as what it is: number, truth value or text."""
        if isinstance(value, bool):
            sheet.write_boolean(row, column, value, self.formats[look])
        elif isinstance(value, (int, float)):
            sheet.write_number(row, column, value, self.formats[look])
        else:
            self.text(sheet, row, column, value.read if isinstance(value, Bad) else str(value), look)


def grade(item: Assessment) -> str:
    """Severity of a finding, or ``conceded``."""
    return "conceded" if item.outcome == "conceded" else str(item.severity)


def marked_workbook(result: ReviewResult, table: Path) -> bytes:
    """The marked workbook of one reviewed table.

    Parameters
    ----------
    result : ReviewResult
        As reviewed.
    table : Path
        The table that was reviewed; it is read again, never written.

    Returns
    -------
    bytes
        An xlsx file, the same bytes for the same inputs. For a workbook it holds a copy of the values of every sheet;
        for other tables the sheet "Cells used" with each value as read and as understood.

    Raises
    ------
    WriteRefused
        If the table is no longer the one that was reviewed, or can no longer be read.
    """
    try:
        source = load(table, result.input.file)
        grids = read_grids(source)[0] if source.kind == "workbook" else []
    except InputError as error:
        raise WriteRefused(f"the marked workbook is not written: {error}") from None
    if source.sha256 != result.input.sha256:
        raise WriteRefused(
            f"{source.file}: the table changed while it was reviewed; the marked workbook is not written"
        )
    stream = BytesIO()
    options = {
        "in_memory": True,
        "strings_to_formulas": False,
        "strings_to_urls": False,
        "strings_to_numbers": False,
        "nan_inf_to_errors": True,
    }
    with xlsxwriter.Workbook(stream, options) as book:
        book.set_properties({"title": "ringseat findings", "author": "ringseat", "created": CREATED})
        made = _Book(book, _formats(book))
        findings = book.add_worksheet("Findings")
        missing = book.add_worksheet("Not assessed")
        placed = _placed(result)
        marks: dict[Place, list[Assessment]] = {}
        for item, places in placed:
            for place in places:
                marks.setdefault(place, []).append(item)
        if grids:
            names = _sheet_names([grid.sheet or "Table" for grid in grids])
            for grid, name in zip(grids, names, strict=True):
                _copy(made, grid, name, marks)
        else:
            _cells_used(made, result, source, marks)
        _findings(made, findings, result, placed)
        _not_assessed(made, missing, result)
    return stream.getvalue()


def _text(value: str) -> str:
    """A text with hidden characters shown, cut to what a cell holds."""
    value = value.replace("\r\n", "\n")
    shown = "\n".join(
        "".join(visible(line[k : k + LONGEST]) for k in range(0, len(line), LONGEST)) for line in value.split("\n")
    )
    return shown if len(shown) <= LONGEST_CELL else f"{shown[: LONGEST_CELL - 60]}… (cut here; {len(shown)} characters)"


def _formats(book: Workbook) -> dict[str, Format]:
    looks: dict[str, dict[str, Any]] = {
        "plain": {},
        "wrap": {"text_wrap": True, "valign": "top"},
        "head": {"bold": True, "bottom": 2, "text_wrap": True, "valign": "bottom"},
        "title": {"bold": True, "font_size": 14},
        "link": {"font_color": "#0B556D", "underline": 1, "valign": "top"},
    }
    for name, (fill, ink) in FILLS.items():
        looks[name] = {"bg_color": fill, "font_color": ink, "bold": True, "border": 2, "border_color": ink}
        looks[f"{name}-word"] = {"bg_color": fill, "font_color": ink, "bold": True, "valign": "top"}
    formats = {}
    for name, look in looks.items():
        formats[name] = book.add_format(look)
        formats[f"{name}-quoted"] = book.add_format({**look, "quote_prefix": True})
    return formats


def _found(result: ReviewResult) -> list[Assessment]:
    """Findings and concessions, gravest first, else in the order of the review."""
    found = [item for item in result.to_act_on if item.outcome in ("finding", "conceded")]
    return sorted(found, key=lambda item: GRAVITY.index(grade(item)))


def _placed(result: ReviewResult) -> list[tuple[Assessment, tuple[Place, ...]]]:
    """Findings with the cells that are marked for them, gravest first.

    They are the cells to change; where the table does not state what is to be changed, the cell that names the station
    or the machine.
    """
    names: dict[tuple[str, str | None], Place] = {}
    for cell in result.understood:
        if cell.parameter == "station":
            names.setdefault((cell.machine, cell.station), cell.place)
        elif cell.parameter == "machine":
            names.setdefault((cell.machine, None), cell.place)
    placed = []
    for item in _found(result):
        places = tuple(dict.fromkeys(used.place for used in cells_to_change(item)))
        if not places:
            named = names.get((item.machine, item.station), names.get((item.machine, None)))
            places = (named,) if named is not None else tuple(used.place for used in item.places[:1])
        placed.append((item, places))
    return placed


def _comment(items: Sequence[Assessment]) -> str:
    lines = []
    for item in items[:MOST_IN_COMMENT]:
        where = item.machine if item.station is None else f"{item.machine} {item.station}"
        word = f"Conceded ({item.severity})" if item.outcome == "conceded" else grade(item).capitalize()
        lines.append(f"{word}, {visible(where)}: {visible(sentence(item.message))}")
        lines.append(visible(what_to_change(item)))
    if len(items) > MOST_IN_COMMENT:
        lines.append(f"and {len(items) - MOST_IN_COMMENT} more: see the sheet Findings")
    return "\n".join(line for line in lines if line)[:LONGEST_CELL]


def _mark(sheet: Worksheet, row: int, column: int, marks: Sequence[Assessment]) -> None:
    text = _comment(marks)
    height = min(400, 20 + 17 * sum(1 + len(line) // 46 for line in text.split("\n")))
    sheet.write_comment(row, column, text, {"author": "ringseat", "width": 300, "height": height})


def _sheet_names(wanted: Sequence[str]) -> list[str]:
    """Sheet names that are allowed and not taken: by our own sheets or, but for case, by another."""
    taken = {"findings", "not assessed", "history"}
    names = []
    for name in wanted:
        plain = "".join("_" if c in "[]:*?/\\" else c for c in visible(name)).strip("'")[:31] or "Sheet"
        chosen, number = plain, 1
        while chosen.casefold() in taken:
            number += 1
            chosen = f"{plain[: 31 - len(str(number)) - 3]} ({number})"
        taken.add(chosen.casefold())
        names.append(chosen)
    return names


def _copy(made: _Book, grid: Grid, name: str, marks: dict[Place, list[Assessment]]) -> None:
    sheet = made.book.add_worksheet(name)
    width = 0
    for column in range(grid.width):
        widest = 0
        for row in range(grid.height):
            value = grid.columns[column][row]
            place = grid.place(row, column)
            found = marks.get(place)
            if found:
                made.cells[place] = (name, str(place.cell))
            if value is None and not found:
                continue
            at = (int(grid.lines[row]) - 1, grid.first_column + column - 1)
            made.cell(sheet, *at, "" if value is None else value, grade(found[0]) if found else "plain")
            widest = max(widest, len(str(value)))
            if found:
                _mark(sheet, *at, found)
        wide = min(60, max(9, widest + 2))
        width += wide
        sheet.set_column(grid.first_column + column - 1, grid.first_column + column - 1, wide)
    fit_page(sheet, width=width)


def _cells_used(made: _Book, result: ReviewResult, source: Source, marks: dict[Place, list[Assessment]]) -> None:
    """The cells of a table that is no workbook: place, whose value, as read and as understood."""
    name = "Cells used"
    sheet = made.book.add_worksheet(name)
    heads = ("Place", "Machine", "Station", "Parameter", "As read", "As understood")
    for column, (head, width) in enumerate(zip(heads, (22, 22, 14, 30, 26, 30), strict=True)):
        sheet.set_column(column, column, width)
        made.text(sheet, 0, column, head, "head")
    sheet.freeze_panes(1, 0)
    fit_page(sheet, 0)
    rows: dict[Place, list[tuple[str, ...]]] = {}
    for cell in result.understood:
        read = (cell.machine, cell.station or "", cell.parameter, cell.read, cell.value)
        rows.setdefault(cell.place, []).append(read)
    for place, found in marks.items():
        if place not in rows:
            uses = [(item, used) for item in found for used in item.places if used.place == place]
            rows[place] = [(i.machine, i.station or "", used.parameter, "", used.text) for i, used in uses[:1]]
    number = 0
    for place, entries in rows.items():
        here = marks.get(place)
        for entry in entries:
            number += 1
            values = (place.short() or source.file, *entry)
            for column, value in enumerate(values):
                made.text(sheet, number, column, value, grade(here[0]) if here and column >= 4 else "plain")
            if here and place not in made.cells:
                made.cells[place] = (name, f"E{number + 1}")
                _mark(sheet, number, 4, here)


def _head(made: _Book, sheet: Worksheet, result: ReviewResult, heads: Sequence[tuple[str, int]]) -> int:
    """Title lines and column heads; the row after them."""
    counts = ", ".join(f"{number} {word}" for word, number in result.severities.items())
    outcomes = result.outcomes
    lines = (
        f"The gate is {result.gate} (it closes on {result.gate_severity} and above)",
        f"{result.input.file}, SHA-256 {result.input.sha256}",
        f"{result.rulebook.name} {result.rulebook.version}, {result.tool} {result.tool_version}",
        f"Findings: {counts}; {outcomes['conceded']} conceded, {outcomes['not assessed']} not assessed, "
        f"{outcomes['met']} met, {outcomes['not applicable']} not applicable",
        *(f"{piece[:1].upper()}{piece[1:]}" for piece in rests_on(result)),
        *(f"Could not be run: {failure.text}" for failure in result.failures),
        *(f"Concession {note.number}, {note.state}: {note.text}" for note in result.concessions),
    )
    for row, line in enumerate(lines):
        made.text(sheet, row, 0, line, "title" if row == 0 else "plain")
    row = len(lines) + 1
    for column, (head, width) in enumerate(heads):
        sheet.set_column(column, column, width)
        made.text(sheet, row, column, head, "head")
    sheet.freeze_panes(row + 1, 0)
    return row + 1


def _findings(
    made: _Book, sheet: Worksheet, result: ReviewResult, placed: Sequence[tuple[Assessment, tuple[Place, ...]]]
) -> None:
    heads = (
        ("Severity", 12), ("Cell", 16), ("What to change", 60), ("Message", 64), ("Station", 14), ("Machine", 20),
        ("Clause", 26),
    )  # fmt: skip
    first = row = _head(made, sheet, result, heads)
    fit_page(sheet, row - 1)
    for item, places in placed:
        word = f"conceded ({item.severity})" if item.outcome == "conceded" else str(item.severity)
        made.text(sheet, row, 0, word, f"{grade(item)}-word")
        message = prose(sentence(item.message))
        if item.concession is not None:
            message += f" Concession {item.concession}."
        change = prose(what_to_change(item))
        for column, value in enumerate((change, message, item.station or "", item.machine, item.clause), 2):
            made.text(sheet, row, column, value, "wrap")
        sheet.set_row(row, row_height([(change, 60), (message, 64), (item.machine, 20), (item.clause, 26)]))
        if places:
            place = places[0]
            label = _text(place.short() or place.file)
            if place in made.cells and row - first < MOST_LINKS:
                name, cell = made.cells[place]
                quoted = name.replace("'", "''")
                sheet.write_url(row, 1, f"internal:'{quoted}'!{cell}", made.formats["link"], label[:250])
            else:
                made.text(sheet, row, 1, label, "wrap")
        row += 1
    if row == first:
        made.text(sheet, row, 0, "None.")
    else:
        sheet.autofilter(first - 1, 0, row - 1, len(heads) - 1)


def _not_assessed(made: _Book, sheet: Worksheet, result: ReviewResult) -> None:
    heads = (("Clause", 26), ("Machine", 20), ("Station", 14), ("State these parameters", 44), ("Message", 80))
    first = row = _head(made, sheet, result, heads)
    fit_page(sheet, row - 1)
    for item in result.assessments:
        if item.outcome == "not assessed":
            cells = (item.clause, item.machine, item.station or "", ", ".join(item.missing), item.message)
            for column, value in enumerate(cells):
                made.text(sheet, row, column, value, "wrap")
            sheet.set_row(row, row_height((cell, width) for cell, (_, width) in zip(cells, heads, strict=True)))
            row += 1
    if row == first:
        made.text(sheet, row, 0, "None: every clause that applies was assessed.")
    else:
        sheet.autofilter(first - 1, 0, row - 1, len(heads) - 1)
