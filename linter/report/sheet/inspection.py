"""The inspection list: a workbook with a line for each characteristic of the drawing, and the facts beside it.

Read by ``ringseat review`` it gives the stations that it was written from: what is no characteristic of the drawing
stands on the second sheet.
"""

import datetime
from collections.abc import Collection, Mapping, Sequence
from io import BytesIO
from typing import Any

import numpy as np

from linter.model.stations import Stations
from linter.model.visible import visible
from linter.model.vocabulary import Parameter, vocabulary
from linter.model.wording import rounded, unit_text, words_of
from linter.report.office import fit_page, row_height
from linter.report.sheet.characteristics import Characteristic, stated_rows

#: A fixed date stands in the document properties, so that the same inputs give the same bytes.
CREATED = datetime.datetime(2000, 1, 1)
HEADS = (
    ("No.", 6), ("Machine", 24), ("Station", 12), ("Characteristic", 28), ("Sign", 6), ("Description", 26),
    ("Nominal", 10), ("Class", 8), ("Upper deviation", 12), ("Lower deviation", 12), ("Min", 11), ("Max", 11),
    ("Unit", 8), ("Means", 52), ("Measured", 14), ("Remarks", 20),
)  # fmt: skip
FACTS = (
    ("Machine", 24), ("Station", 12), ("Parameter", 30), ("Value", 26), ("Class", 8), ("Upper deviation", 12),
    ("Lower deviation", 12), ("Unit", 10),
)  # fmt: skip


def inspection_list(stations: Stations, characteristics: Sequence[Characteristic], about: Mapping[str, str]) -> bytes:
    """The workbook.

    Parameters
    ----------
    stations : Stations
        As read, or with start values put in.
    characteristics : sequence of Characteristic
        Every characteristic once, in the order of the list.
    about : mapping of str to str
        Lines for the sheet of origins: rulebook, gate, table, date.

    Returns
    -------
    bytes
        An xlsx file, the same bytes for the same inputs.
    """
    import xlsxwriter

    stream = BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    with xlsxwriter.Workbook(stream, options) as book:
        book.set_properties({"title": "Bearing seats, inspection list", "created": CREATED})
        looks = {
            "head": book.add_format({"bold": True, "bottom": 1, "text_wrap": True, "valign": "top"}),
            "plain": book.add_format({"valign": "top"}),
            "wrap": book.add_format({"valign": "top", "text_wrap": True}),
            "fill": book.add_format({"valign": "top", "border": 1, "border_color": "#9AA7B4", "bg_color": "#FFFDF0"}),
        }
        lines = [_line(number, item) for number, item in enumerate(characteristics, 1)]
        listed = book.add_worksheet("Inspection")
        write_lines(listed, looks, HEADS, lines)
        facts = book.add_worksheet("Facts")
        write_lines(facts, looks, FACTS, _facts(stations, {(c.parameter, c.row) for c in characteristics}))
        origin = book.add_worksheet("Origin")
        origin.set_column(0, 0, 100)
        for row, (name, text) in enumerate(about.items()):
            origin.write_string(row, 0, visible(f"{name}: {text}"), looks["wrap"])
    return stream.getvalue()


def _line(number: int, item: Characteristic) -> list[Any]:
    remark = "proposed, not stated by the table" if item.proposed else None
    drawn = item.drawn if item.least is not None or item.most is not None else f"{item.drawn}, no tolerance stated"
    return [
        number, item.machine, item.station, item.name, item.sign, drawn, item.nominal,
        item.tolerance_class or None, item.upper, item.lower, item.least, item.most, unit_text(item.unit), item.means,
        None, remark,
    ]  # fmt: skip


def write_lines(
    sheet: Any, looks: Mapping[str, Any], heads: Sequence[tuple[str, int]], lines: Sequence[list[Any]]
) -> None:
    """A sheet of lines under their headings; what is to be filled in by hand is a field."""
    fit_page(sheet, 0, sum(width for _, width in heads))
    sheet.freeze_panes(1, 0)
    for column, (head, width) in enumerate(heads):
        sheet.set_column(column, column, width)
        sheet.write_string(0, column, head, looks["head"])
    sheet.set_row(0, row_height((head, width) for head, width in heads))
    for row, line in enumerate(lines, 1):
        texts = (value if isinstance(value, str) else "" for value in line)
        sheet.set_row(row, row_height((text, width) for text, (_, width) in zip(texts, heads, strict=False)))
        for column, value in enumerate(line):
            look = looks["fill" if heads[column][0] == "Measured" else "wrap" if isinstance(value, str) else "plain"]
            if isinstance(value, (int, float)):
                sheet.write_number(row, column, value, look)
            elif value or heads[column][0] == "Measured":
                sheet.write_string(row, column, value, look) if value else sheet.write_blank(row, column, None, look)


def _facts(stations: Stations, listed: Collection[tuple[str, int]]) -> list[list[Any]]:
    """What the table states besides the characteristics."""
    lines = []
    for entry in vocabulary().values():
        if entry.name in ("machine", "station"):
            continue
        rows = np.flatnonzero(stated_rows(stations, entry.name)).tolist()
        told: set[int] = set()
        for row in rows:
            machine = int(stations.machine_row[row])
            if (entry.name, row) in listed or (entry.level == "machine" and machine in told):
                told.add(machine)
                continue
            told.add(machine)
            station = "" if entry.level == "machine" else str(stations.text("station")[row])
            lines.append(
                [stations.machines[machine], station, words_of(entry.name), *value_cells(stations, entry, row)]
            )
    return lines


def value_cells(stations: Stations, entry: Parameter, row: int) -> list[Any]:
    """Value, class, upper and lower deviation, unit."""
    if entry.kind == "number":
        return [rounded(float(stations.number(entry.name)[row])), None, None, None, unit_text(entry.unit)]
    if entry.kind == "toleranced":
        size = stations.size(entry.name)
        upper, lower = (None if np.isnan(v[row]) else rounded(float(v[row])) for v in (size.upper, size.lower))
        shown = str(size.tolerance_class[row]) or None
        return [rounded(float(size.nominal[row])), shown, upper, lower, unit_text(entry.unit)]
    if entry.kind == "choice":
        choice = stations.choice(entry.name)
        return [choice.words[int(choice.codes[row])], None, None, None, ""]
    return [str(stations.text(entry.name)[row]), None, None, None, ""]
