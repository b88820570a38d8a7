"""Tables of a design in the layouts that the reader knows, and ways to lose a value or a station on the way there."""

import csv
import io
import json
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from linter.model.vocabulary import parameter, vocabulary
from tests.designs.complete import Design, Row

LAYOUTS = ("wide", "long", "transposed", "json", "records", "xlsx")


def number(value: float) -> str:
    """A number with every digit that it has, without exponent."""
    return str(np.format_float_positional(float(value), trim="-"))


def _signed(value: float) -> str:
    return "0" if value == 0 else ("+" if value > 0 else "") + number(value)


def cell(name: str, value: Any) -> str:
    """A value as a table states it, without its unit."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    if not isinstance(value, (list, tuple)):
        return number(value)
    nominal, *rest = value
    if isinstance(rest[0], str):
        return f"{number(nominal)} {rest[0]}"
    lower, upper = rest[:2]
    if len(rest) == 3:
        return f"{number(nominal)} {rest[2]} ({_signed(upper)}/{_signed(lower)})"
    if lower == -upper:
        return f"{number(nominal)} ±{number(upper)}"
    return f"{number(nominal)} {_signed(upper)}/{_signed(lower)}"


def heading(name: str) -> str:
    """The canonical name with its unit."""
    unit = parameter(name).unit
    return f"{name} [{unit}]" if unit not in ("", "1") else name


@dataclass
class Sheet:
    """A design as texts: one row of cells per station; ``labels`` are the headings where they are not canonical."""

    rows: list[dict[str, str]]
    labels: dict[str, str] = field(default_factory=dict)
    dropped: set[str] = field(default_factory=set)

    @property
    def names(self) -> list[str]:
        """Columns, in the order of the vocabulary, machine and station first."""
        stated = {name for row in self.rows for name in row} - self.dropped
        return ["machine", "station", *(n for n in vocabulary() if n in stated and n not in ("machine", "station"))]

    def label(self, name: str, unit: bool = True) -> str:
        return self.labels.get(name, heading(name) if unit else name)


def sheet(design: Design) -> Sheet:
    """The cells of a design."""
    return Sheet([{name: cell(name, value) for name, value in row.items()} for row in design.rows])


def grid(given: Sheet) -> list[list[str]]:
    """One row per station under a heading."""
    head = [given.label(name) for name in given.names]
    return [head, *([row.get(name, "") for name in given.names] for row in given.rows)]


def long_grid(given: Sheet) -> list[list[str]]:
    """One row per parameter with value, unit, station and machine; values of the machine once."""
    rows = [["name", "value", "unit", "station", "machine"]]
    for name in given.names[2:]:
        unit = parameter(name).unit
        shown = "" if unit == "1" else unit
        own = given.rows[:1] if parameter(name).level == "machine" else given.rows
        for row in own:
            if name in row:
                station = "" if parameter(name).level == "machine" else row["station"]
                rows.append([given.label(name, unit=False), row[name], shown, station, row["machine"]])
    return rows


def delimited(rows: Sequence[Sequence[str]], delimiter: str = ",", line_end: str = "\n") -> bytes:
    """Rows as delimited text in UTF-8."""
    text = io.StringIO()
    csv.writer(text, delimiter=delimiter, lineterminator=line_end).writerows(rows)
    return text.getvalue().encode()


def workbook(rows: Sequence[Sequence[str]]) -> bytes:
    """Rows as texts of a workbook."""
    from openpyxl import Workbook

    book = Workbook()
    for row in rows:
        book.active.append([text or None for text in row])
    stream = io.BytesIO()
    book.save(stream)
    return stream.getvalue()


def nested(given: Sheet) -> bytes:
    """JSON with one object per machine and a list of stations; every value with its unit in its key's pair."""

    def value(name: str, text: str) -> Any:
        unit = parameter(name).unit
        return {"value": text, "unit": unit} if unit not in ("", "1") else text

    def own(row: dict[str, str], level: str) -> Row:
        names = [n for n in given.names if n in row and parameter(n).level == level and n != "machine"]
        return {given.label(n, unit=False): value(n, row[n]) for n in names}

    machine = {"machine": given.rows[0]["machine"], **own(given.rows[0], "machine")}
    machine["stations"] = [own(row, "station") for row in given.rows]
    return json.dumps({"machines": [machine]}, ensure_ascii=False, indent=1).encode()


def sheet_text(given: Sheet, layout: str = "wide", delimiter: str = ",", line_end: str = "\n") -> tuple[str, bytes]:
    """Suffix and content of a file with these cells; ``layout`` is one of ``LAYOUTS``."""
    if layout == "wide":
        return ".csv", delimited(grid(given), delimiter, line_end)
    if layout == "long":
        return ".csv", delimited(long_grid(given), delimiter, line_end)
    if layout == "transposed":
        return ".csv", delimited(list(zip(*grid(given), strict=True)), delimiter, line_end)
    if layout == "xlsx":
        return ".xlsx", workbook(grid(given))
    if layout == "json":
        return ".json", nested(given)
    if layout == "records":
        head, *rows = long_grid(given)
        records = [{k: v for k, v in zip(head, row, strict=True) if v or k == "value"} for row in rows]
        return ".json", json.dumps(records, ensure_ascii=False, indent=1).encode()
    raise ValueError(f"{layout!r} is not one of {', '.join(LAYOUTS)}")


def table_text(design: Design, layout: str = "wide", **kwargs: Any) -> tuple[str, bytes]:
    """A design as a file (suffix and content) that the reader reads back to the same values."""
    return sheet_text(sheet(design), layout, **kwargs)


# ------------------------------------------------------------------------------------------------ values


def _put(text: str) -> Callable[[Sheet, str, int], None]:
    def spoil(given: Sheet, name: str, row: int) -> None:
        given.rows[row][name] = text

    return spoil


def _unknown_unit(given: Sheet, name: str, row: int) -> None:
    given.rows[row][name] = f"{given.rows[row].get(name, '')} smoots"


def _misspelt(given: Sheet, name: str, row: int) -> None:
    """Letters exchanged and one lost, as a hurried hand does it."""
    word = name.replace("_", "")
    middle = len(word) // 2
    given.labels[name] = "x" + word[:middle][::-1] + word[middle + 2 :]


def _near_miss(given: Sheet, name: str, row: int) -> None:
    """One letter too many in the middle of the heading."""
    middle = len(name) // 2
    given.labels[name] = heading(name).replace(name, name[:middle] + "q" + name[middle:])


def _dropped(given: Sheet, name: str, row: int) -> None:
    given.dropped.add(name)


def _unnamed(given: Sheet, name: str, row: int) -> None:
    given.labels[name] = ""


#: Ways to lose or spoil the value of a parameter; each changes a sheet in place at (parameter, row).
VALUE_WAYS: dict[str, Callable[[Sheet, str, int], None]] = {
    "blank": _put(""),
    "spaces": _put("   "),
    "dash": _put("-"),
    "em dash": _put("—"),
    "tbd": _put("tbd"),
    "TBC": _put("TBC"),
    "n/a": _put("n/a"),
    "NaN": _put("NaN"),
    "None": _put("None"),
    "question mark": _put("?"),
    "spreadsheet error": _put("#REF!"),
    "text": _put("see drawing"),
    "stars": _put("***"),
    "unknown unit": _unknown_unit,
    "heading misspelt": _misspelt,
    "heading nearly right": _near_miss,
    "heading gone": _unnamed,
    "column gone": _dropped,
}
#: Those that take the value from every station at once.
WHOLE_COLUMN = ("heading misspelt", "heading nearly right", "heading gone", "column gone")


def spoiled_value(design: Design, name: str, row: int, way: str) -> Sheet:
    """A sheet of the design with one value spoiled; one of the machine at every station."""
    given = sheet(design)
    rows = range(len(given.rows)) if parameter(name).level == "machine" else (row,)
    for one in rows:
        VALUE_WAYS[way](given, name, one)
    return given


# ------------------------------------------------------------------------------------------------ stations


def _lines(design: Design, delimiter: str) -> list[str]:
    return table_text(design, "wide", delimiter=delimiter)[1].decode().splitlines()


def _file(lines: list[str]) -> tuple[str, bytes]:
    return ".csv", "\n".join([*lines, ""]).encode()


def _commented(sign: str) -> Callable[[Design, int], tuple[str, bytes]]:
    def lose(design: Design, row: int) -> tuple[str, bytes]:
        lines = _lines(design, "\t" if sign == ";" else ",")
        lines[row + 1] = f"{sign}{lines[row + 1]}"
        return _file(lines)

    return lose


def _deleted(design: Design, row: int) -> tuple[str, bytes]:
    lines = _lines(design, ",")
    del lines[row + 1]
    return _file(lines)


def _footer(design: Design, row: int) -> tuple[str, bytes]:
    lines = _lines(design, ",")
    return _file([*lines[: row + 1], *lines[row + 2 :], "", "Notes", lines[row + 1]])


def _below_total(design: Design, row: int) -> tuple[str, bytes]:
    """Below a closing line and without the machine's name, as a remark."""
    lines = _lines(design, ",")
    machine = design.rows[row]["machine"]
    return _file([*lines[: row + 1], *lines[row + 2 :], "End of table", lines[row + 1].replace(machine, "", 1)])


def _quoted(design: Design, row: int) -> tuple[str, bytes]:
    """A quote that opens in the row before and closes after this one: one cell with a line end."""
    lines = _lines(design, ",")
    lines[row + 1] = '"' + lines[row + 1].replace('"', '""') + '"'
    return _file(lines)


def _swallowed(design: Design, row: int) -> tuple[str, bytes]:
    """A quote that opens at the end of the line before and never closes, where the row is the last."""
    lines = _lines(design, ",")
    if row + 2 < len(lines):
        lines[row + 1], lines[-1] = lines[-1], lines[row + 1]
    lines[-2] += ',"'
    return _file(lines)


def _unnamed_column(design: Design, row: int) -> tuple[str, bytes]:
    """Transposed, the column of the station without machine and station."""
    turned = [list(line) for line in zip(*grid(sheet(design)), strict=True)]
    turned[0][row + 1] = turned[1][row + 1] = ""
    return ".csv", delimited(turned)


def _unnamed_row(design: Design, row: int) -> tuple[str, bytes]:
    rows = grid(sheet(design))
    rows[row + 1][0] = rows[row + 1][1] = ""
    return ".csv", delimited(rows)


def _cut_short(design: Design, row: int) -> tuple[str, bytes]:
    """The last line ends in its middle, without a line end, as after a broken transfer."""
    lines = _lines(design, ",")
    lines.append(lines.pop(row + 1))
    lines[-1] = lines[-1][: len(lines[-1]) // 3]
    return ".csv", "\n".join(lines).encode()


def _same_name(design: Design, row: int) -> tuple[str, bytes]:
    """Both stations under one name."""
    rows = [dict(one) for one in design.rows]
    rows[row]["station"] = rows[1 - row]["station"]
    return table_text(design.with_rows(rows))


def _other_machine(design: Design, row: int) -> tuple[str, bytes]:
    """The station stands under a machine name with a slip of the pen."""
    rows = [dict(one) for one in design.rows]
    rows[row]["machine"] += "."
    return table_text(design.with_rows(rows))


def _empty_json(design: Design, row: int) -> tuple[str, bytes]:
    """JSON with nothing but the name left of the station."""
    rows = [dict(one) for one in design.rows]
    rows[row] = {"machine": rows[row]["machine"], "station": rows[row]["station"]}
    return table_text(design.with_rows(rows if row else rows[::-1]), "json")


#: Ways to lose a station of a table; each gives suffix and content of the file that is left.
STATION_WAYS: dict[str, Callable[[Design, int], tuple[str, bytes]]] = {
    "row deleted": _deleted,
    "commented with #": _commented("#"),
    "commented with //": _commented("//"),
    "commented with ;": _commented(";"),
    "commented with '": _commented("'"),
    "commented with --": _commented("--"),
    "below as a footer": _footer,
    "below the end of the table": _below_total,
    "quoted as one cell": _quoted,
    "swallowed by a quote": _swallowed,
    "unnamed column": _unnamed_column,
    "unnamed row": _unnamed_row,
    "last row cut short": _cut_short,
    "both stations of one name": _same_name,
    "machine name misspelt": _other_machine,
    "emptied": _empty_json,
}


def without_station(design: Design, row: int, way: str) -> tuple[str, bytes]:
    """The file of a design after one of its stations was lost that way."""
    return STATION_WAYS[way](design, row)
