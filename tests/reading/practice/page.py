"""From a table written by hand, with its meaning beside each line, to the bytes and the truth.

The lines of a page are the lines of the file. What follows ``##`` is not part of the file, it says what the line means:

``## shaft_seat_diameter 20 k5 0.002 0.011 | 17 k5``
    the values of the positions in the columns of ``cols``, in canonical units: of a size nominal, class, lower and
    upper deviation in mm, ``=20.002..20.011`` where only limits are stated; ``-`` where nothing stands. One value alone
    belongs to the machine, or to all its positions.
``## 2.radial_load 40``
    a value of the second position; ``[2]`` does so for all lines that follow, ``[0]`` ends it.
``## > station:A bore_diameter:C+D`` and ``## = front ; 20``
    a heading with the columns of its parameters, and a line with the values in that order. Where a line is a whole
    machine, ``machine:A 1.bore_diameter:C 2.bore_diameter:D`` and the names of its positions by ``positions=LV|LM``.

``?`` before a name: has to be asked about; ``~``: may be asked about; ``implied`` before it: need not be read, but
follows (``implied 1.cage phenolic`` at the first position). ``@C`` or ``@C+D`` after a value: its cells (in JSON the
key, else the last of the line), ``C-1`` in the line above, ``X`` the position's column. ``//`` parts two entries. A
number may end with ``in``, ``uin``, ``lbf``, ``lb`` or ``F``. Lines that begin with ``#!`` are orders for the workbook.
"""

import csv
import io
import json
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter

from practice.bearings import follows
from practice.grammar import Expected, Key, Size, Table, Value

ROOT = Path(__file__).resolve().parents[3]
with (ROOT / "schemas" / "vocabulary.csv").open(encoding="utf-8", newline="") as file:
    VOCABULARY = {row["name"]: row for row in csv.DictReader(file)}
UNITS = {"in": 25.4, "uin": 0.0254, "lbf": 4.4482216152605, "lb": 0.45359237, "": 1.0}
NUMBER = re.compile(r"[+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?")
Cells = dict[str, str]


def _number(text: str, unit: str = "") -> float:
    found = re.fullmatch(rf"({NUMBER.pattern})(in|uin|lbf|lb|F)?", text)
    if not found:
        raise ValueError(f"no number: {text}")
    unit = found[2] or unit
    if unit == "F":
        return (float(found[1]) - 32) / 1.8
    value = float(found[1])
    return value if not unit else value * UNITS[unit]


def meaning(parameter: str, text: str) -> Value:
    """The value that a line's truth states; ValueError where it is none of the parameter."""
    row = VOCABULARY[parameter]
    if row["kind"] == "text":
        return text
    if row["kind"] == "choice":
        if text not in row["choices"].split("|"):
            raise ValueError(f"{parameter}: {text}")
        return text
    if text.startswith("="):
        low, high = text[1:].split("..")
        unit = re.sub(r"[\d.+-]", "", high)
        return Size(_number(low, unit), 0.0, _number(high) - _number(low, unit), bare=True)
    nominal, *rest = text.split()
    if row["kind"] == "number" or not rest:
        if rest:
            raise ValueError(f"{parameter}: {text}")
        return _number(nominal)
    name = rest.pop(0) if rest[0][0].isalpha() else ""
    unit = re.sub(r"[\d.+-]", "", nominal)
    if not rest:
        return Size(_number(nominal), tolerance_class=name)
    lower, upper = (_number(part, unit) for part in rest)
    if lower > upper:
        raise ValueError(f"{parameter}: {text}")
    return Size(_number(nominal), lower, upper, name)


def options(how: str) -> dict[str, str]:
    """``csv sep=; cols=B,C`` as a dictionary."""
    kind, *rest = how.split()
    return {"kind": kind, "sep": ",", "enc": "utf-8", "cols": "B,C", "label": "A"} | dict(
        part.split("=", 1) for part in rest
    )


class Page:
    """One table on its way: orders, lines without their truth, the truth of each line."""

    def __init__(self, how: str, text: str) -> None:
        self.option = options(how)
        self.orders: list[str] = []
        self.sheets: list[tuple[str, list[str]]] = [("Sheet1", [])]
        self.truth: list[tuple[int, int, str]] = []
        for line in text.strip("\n").split("\n"):
            if line.startswith("#!"):
                order = line[2:].strip()
                if order.startswith("sheet "):
                    if self.sheets[-1][1]:
                        self.sheets.append((order[6:], []))
                    else:
                        self.sheets[-1] = (order[6:], [])
                else:
                    self.orders.append(f"{len(self.sheets) - 1} {order}")
                continue
            plain, _, said = line.partition("##")
            lines = self.sheets[-1][1]
            lines.append(plain.rstrip(" ") if said else plain)
            if said.strip():
                self.truth.append((len(self.sheets) - 1, len(lines), said.strip()))
        self.cells = [self._cells(lines) for _, lines in self.sheets]

    def _cells(self, lines: list[str]) -> Cells:
        if self.option["kind"] == "json":
            return {}
        if self.option["kind"] == "csv":
            rows = [next(csv.reader([line], delimiter=self.option["sep"]), []) for line in lines]
        else:
            rows = [[cell.strip() for cell in line.split("|")] if line.strip() else [] for line in lines]
        placed = ((r, c, cell) for r, row in enumerate(rows, 1) for c, cell in enumerate(row, 1))
        return {f"{get_column_letter(c)}{r}": cell for r, c, cell in placed if cell}

    def content(self) -> bytes:
        """The bytes of the file."""
        if self.option["kind"] == "xlsx":
            return self._book()
        lines = self.sheets[0][1]
        if self.option["kind"] == "tab":
            lines = ["\t".join(cell.strip() for cell in line.split("|")) for line in lines]
        end = "\n" if self.option["kind"] == "json" else "\r\n"
        return (end.join(lines) + end).encode(self.option["enc"])

    def _book(self) -> bytes:
        book = Workbook()
        for number, (name, _) in enumerate(self.sheets):
            sheet = book.active if number == 0 else book.create_sheet()
            assert sheet is not None
            sheet.title = name
            for address, text in self.cells[number].items():
                sheet[address] = float(text) if re.fullmatch(r"-?\d+\.\d+", text) else _whole(text)
            for order in self.orders:
                where, what, area, *form = order.split(" ", 3)
                if int(where) != number:
                    continue
                if what == "merge":
                    sheet.merge_cells(area)
                else:
                    for row in sheet[area] if ":" in area else ((sheet[area],),):
                        for cell in row:
                            cell.number_format = form[0]
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()

    def pointer(self, line: int, key: str) -> str:
        """The JSON Pointer of a value: of the key on this line, else of its last value."""
        lines = list(self.sheets[0][1])
        scalar = r'(?:"(?:[^"\\]|\\.)*"|\[[^\]\[{]*\]|-?[\d.eE+-]+)'
        pattern = rf'"{re.escape(key)}"\s*:\s*({scalar})' if key else rf":\s*({scalar})"
        found = list(re.finditer(pattern, lines[line - 1]))
        if not found:
            raise ValueError(f"no value on line {line} {key}")
        start, end = found[-1].span(1)
        lines[line - 1] = lines[line - 1][:start] + '"§here"' + lines[line - 1][end:]
        return next(path for path, value in leaves(json.loads("\n".join(lines))) if value == "§here")


def _whole(text: str) -> int | str:
    return int(text) if re.fullmatch(r"-?\d+", text) else text.removeprefix("'")


def leaves(tree: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Every value of a JSON tree, and every list of numbers, with its pointer."""
    if isinstance(tree, dict):
        for key, value in tree.items():
            yield from leaves(value, f"{path}/{key.replace('~', '~0').replace('/', '~1')}")
    elif isinstance(tree, list):
        yield path, tree
        for number, value in enumerate(tree):
            yield from leaves(value, f"{path}/{number}")
    else:
        yield path, tree


class _Truth:
    """The expectations of a page, gathered line by line."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.columns = [group.split("+") for group in page.option["cols"].split(",")]
        self.heading: list[tuple[str, list[str]]] = []
        self.heading_row = 0
        self.positions: list[str] = []
        self.in_row = False
        self.current = 0
        self.machines: list[str] = []
        self.stations: list[list[str]] = []
        self.found: list[Expected] = []
        self.implied: dict[str, Value] = {}

    def add(self, machine: int, station: int, name: str, text: str, sheet: int, row: int, cells: list[str]) -> None:
        """One value of the cells of a row (of JSON: of a key)."""
        verdict = {"?": "ask", "~": "either"}.get(name[0], "read")
        name = name.lstrip("?~")
        value = meaning(name.split("|")[0], text)
        own, head, words = self._places(sheet, row, cells, name)
        if not own:
            raise ValueError(f"row {row}: no cell for {name} in {cells}")
        same = {e.parameter for e in self.found if e.own == own and e.machine == machine}
        form = _form(name, value, text, len(own))
        if {name, *same} & {"bore_diameter"} and {name, *same} & {"outside_diameter"}:
            form = "d x D x B in one cell"
        elif {name, *same} >= {"shaft_seat_diameter", "housing_seat_diameter"}:
            form = "fit pair column"
        if form in ("d x D x B in one cell", "fit pair column"):
            self.found = [_formed(e, form) if e.own == own and e.machine == machine else e for e in self.found]
        self.found.append(Expected(machine, station, name, value, verdict, form, (*own, *head), words, own))

    def _places(self, sheet: int, row: int, cells: list[str], name: str) -> tuple[tuple[str, ...], ...]:
        """The cells of a value, their headings, the headings' words."""
        if self.page.option["kind"] == "json":
            places = [re.fullmatch(r"(.*?)(?:-(\d))?", key) for key in cells]
            own = tuple(self.page.pointer(row - int(p[2] or 0), p[1]) for p in places if p)
            lines = {row - int(p[2] or 0): self.page.sheets[0][1][row - int(p[2] or 0) - 1] for p in places if p}
            named = [name for line in lines.values() for name in re.findall(r'"name": "([^"]*)"', line)]
            return own, (), tuple(named or map(_word, own))
        written = self.page.cells[sheet]
        whole = VOCABULARY[name.split("|")[0]]["level"] == "machine"
        own = tuple(address for address in (_place(column, row) for column in cells) if address in written)
        if self.heading_row and self.in_row:
            head = [f"{column}{self.heading_row}" for column in cells]
        elif name.startswith("drawing_") or (whole and not any(set(cells) & set(group) for group in self.columns)):
            head = [f"{chr(ord(cells[0]) - 1)}{row}"]
        else:
            rows = {re.sub("[A-Z]", "", address): 0 for address in own}
            head = [f"{column}{r}" for r in rows for column in self.page.option["label"].split("+")]
        head = [address for address in head if address in written and address not in own]
        return own, tuple(head), tuple(written[address] for address in head)

    def line(self, sheet: int, row: int, said: str) -> None:
        """The truth of one line."""
        self.in_row = said.startswith("=")
        if said.startswith(">"):
            columns = [part.rsplit(":", 1) for part in said[1:].split() if "=" not in part]
            self.positions = [n for part in said.split() if "=" in part for n in part.split("=")[1].split("|")]
            self.heading = [(name, at.split("+")) for name, at in columns]
            self.heading_row = row
        elif said.startswith("="):
            values, *entries = said[1:].split(" // ")
            self._row(sheet, row, [part.strip() for part in values.split(" ; ")])
            for entry in entries:
                self._entry(sheet, row, entry.strip())
        else:
            for entry in said.split(" // "):
                self._entry(sheet, row, entry.strip())

    def _row(self, sheet: int, row: int, values: list[str]) -> None:
        if len(values) != len(self.heading):
            raise ValueError(f"row {row}: {len(values)} values for {len(self.heading)} headings")
        named = {name.lstrip("?~"): value for (name, _), value in zip(self.heading, values, strict=True)}
        machine = named.get("machine", self.machines[-1] if self.machines else "")
        if machine not in self.machines:
            self.machines.append(machine)
        while len(self.stations) < len(self.machines):
            self.stations.append([])
        m = self.machines.index(machine)
        self.stations[m] += self.positions or [named["station"]]
        for (name, cells), value in zip(self.heading, values, strict=True):
            position, _, name = name.rpartition(".")
            name = position.rstrip("0123456789") + name
            whole = VOCABULARY[name.lstrip("?~").split("|")[0]]["level"] == "machine"
            same = [e for e in self.found if e.machine == m and e.parameter == name.lstrip("?~")]
            if value == "-" or (whole and same):
                continue
            s = int(position.lstrip("?~")) - 1 if position else len(self.stations[m]) - 1
            whole = whole or bool(self.positions and not position)
            self.add(m, -1 if whole else s, name, value, sheet, row, cells)

    def _entry(self, sheet: int, row: int, entry: str) -> None:
        if switch := re.fullmatch(r"\[(\d)\]", entry):
            self.current = int(switch[1])
            return
        entry, _, at = entry.partition(" @")
        name, _, text = entry.partition(" ")
        station, _, name = name.rpartition(".")
        flag = station[:1] if station[:1] in ("?", "~") else ""
        station, name = station.lstrip("?~"), flag + name
        if name == "machine":
            self.machines = [text]
        if name == "implied":
            name, _, text = text.partition(" ")
            self.implied[name] = meaning(name.rpartition(".")[2], text)
            return
        if name == "stations":
            self.stations.append(text.split(" | "))
            return
        values = text.split(" | ")
        whole = VOCABULARY[name.lstrip("?~").split("|")[0]]["level"] == "machine"
        one = int(station or self.current) if not whole else 0
        json_page = self.page.option["kind"] == "json"
        if name == "station" and len(values) > 1:
            self.stations.append(values)
        elif name == "station":
            while len(self.stations) < 1:
                self.stations.append([])
            self.stations[0].append(text)
        for number, value in enumerate(values):
            if value == "-":
                continue
            index = one - 1 if one else (number if len(values) > 1 else -1)
            column = self.columns[min(max(index, 0), len(self.columns) - 1)]
            cells = [part.replace("X", column[0]) for part in at.split("+")] if at else [""] if json_page else column
            self.add(0, index, name, value, sheet, row, cells)


def _word(path: str) -> str:
    """The key that says what a value of JSON is: its own, or that of the object whose value it is."""
    keys = path.split("/")
    own = keys[-2] if keys[-1] in ("Wert", "value", "valore", "значение") else keys[-1]
    return own.replace("~1", "/").replace("~0", "~")


def _place(column: str, row: int) -> str:
    """``C`` of this row, ``C-1`` of the row above."""
    name, _, above = column.partition("-")
    return f"{name}{row - int(above or 0)}"


def _formed(e: Expected, form: str) -> Expected:
    return Expected(e.machine, e.station, e.parameter, e.value, e.verdict, form, e.cells, e.words, e.own)


def _form(name: str, value: Value, text: str, cells: int) -> str:
    if isinstance(value, Size):
        if value.bare:
            return "limits in cell" if cells == 1 else "limit columns"
        what = "class" if value.lower is None else "class and deviations" if value.tolerance_class else "deviations"
        return f"{what} {'in cell' if cells == 1 else 'in columns'}"
    return "text" if isinstance(value, str) else "number"


def _implied(truth: _Truth, follows: Callable[[str], dict[str, Value]]) -> dict[Key, Value]:
    """What need not be read but follows: from the designations, and what the lines say of it."""
    everywhere = [(m, s) for m, names in enumerate(truth.stations) for s in range(len(names))]
    said = {
        (m, s, name.rpartition(".")[2]): value
        for name, value in truth.implied.items()
        for m, s in everywhere
        if name.rpartition(".")[0] in ("", str(s + 1))
    }
    told = [((m, s), value) for (m, s, name), value in said.items() if name == "bearing_designation"]
    for e in truth.found:
        if e.parameter == "bearing_designation":
            where = [(m, s) for m, s in everywhere if m == e.machine and e.station in (-1, s)]
            told += [(place, e.value) for place in where]
    derived = {(*place, name): value for place, text in told for name, value in follows(str(text)).items()}
    return derived | said


def page(text: str, follows: Callable[[str], dict[str, Value]] = follows) -> Table:
    """A table from its written lines.

    Parameters
    ----------
    text : str
        First line: number, language, form (``csv``, ``tab``, ``xlsx``, ``json``), options ``sep= enc= cols= label=``,
        and after `` -- `` who wrote it with what habit. Then lines as in the module's text.
    follows : callable
        What a designation says, in canonical units.

    Returns
    -------
    Table
        Bytes and meaning.
    """
    order, _, text = text.partition("\n")
    order, _, persona = order.partition(" -- ")
    seed, language, how = order.split(" ", 2)
    written = Page(how, text)
    truth = _Truth(written)
    for sheet, row, said in written.truth:
        truth.line(sheet, row, said)
    machines = truth.machines or [""]
    if any(e.parameter.startswith("spring_") for e in truth.found):
        truth.implied["preload_method"] = "spring"
    implied = _implied(truth, follows)
    kind = written.option["kind"]
    suffix = {"csv": ".csv", "tab": ".txt", "xlsx": ".xlsx", "json": ".json"}[kind]
    kinds = {"language": language, "layout": kind, "encoding": written.option["enc"], "persona": persona}
    return Table(
        seed=int(seed),
        suffix=suffix,
        content=written.content(),
        machines=tuple(machines),
        stations=tuple(tuple(names) for names in truth.stations),
        expected=tuple(truth.found),
        implied=implied,
        kinds=kinds,
    )
