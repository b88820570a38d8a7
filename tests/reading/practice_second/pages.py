# ruff: noqa: E501
"""Tables written down cell by cell, each cell with what it means beside it.

A page is a list of rows, a row a list of cells. A cell is plain text, or text that ends with its meaning in guillemets::

    12.000 k6 +12/+1 µm «1.ss=12/+1/+12/k6»

The meaning is ``<machine letter><station number>.<short name>``, with a value behind ``=`` where it is not the number or
the text of the cell itself; several are separated by ``;``. Machine ``a`` may be left out, and a value of the whole
machine has no station number. A size is ``nominal/lower/upper/class`` with deviations in micrometres; ``?`` in place of
a value says that the cell has to be asked about, ``?`` before one that it may be. ``limits`` in place of the class says
that only the two limits are stated, without a nominal.
"""

import csv
import io
import json
import re
from typing import Any

import xlsxwriter
from practice.grammar import Expected, Key, Size, Table, Value

SHORT = {
    "d": "bore_diameter", "D": "outside_diameter", "B": "ring_width", "r": "ring_chamfer", "ss": "shaft_seat_diameter",
    "hs": "housing_seat_diameter", "sR": "shaft_seat_roughness", "hR": "housing_seat_roughness",
    "sC": "shaft_seat_cylindricity", "hC": "housing_seat_cylindricity", "sT": "shaft_seat_runout",
    "hT": "housing_seat_runout", "sS": "shaft_shoulder_diameter", "hS": "housing_shoulder_diameter",
    "sP": "shaft_shoulder_runout", "hP": "housing_shoulder_runout", "sF": "shaft_fillet_radius",
    "hF": "housing_fillet_radius", "bd": "bearing_designation", "n": "speed_max", "no": "speed_operating",
    "L": "required_life", "m": "rotor_mass", "l": "bearing_span", "C": "dynamic_rating", "C0": "static_rating",
    "Fr": "radial_load", "Fa": "axial_load", "tc": "tolerance_class", "cc": "clearance_class", "role": "axial_role",
    "lub": "lubrication", "sM": "shaft_material", "hM": "housing_material", "dn": "drawing_number",
    "dr": "drawing_revision", "st": "station", "ma": "machine", "cage": "cage", "bt": "bearing_type", "Z": "ball_count",
    "Dw": "ball_diameter", "Ts": "shaft_temperature", "Th": "housing_temperature", "Fp": "preload_force",
    "pm": "preload_method", "cl": "closure", "ca": "contact_angle", "Tmin": "temperature_min",
    "Tmax": "temperature_max",
}  # fmt: skip
#: Designation without its suffix: d, D, B in mm and r_s min (ISO 15, ISO 582, from memory of makers' catalogues).
SIZES = {
    "624": (4, 13, 5, 0.2), "625": (5, 16, 5, 0.3), "626": (6, 19, 6, 0.3), "608": (8, 22, 7, 0.3),
    "609": (9, 24, 7, 0.3), "6000": (10, 26, 8, 0.3), "6001": (12, 28, 8, 0.3), "6002": (15, 32, 9, 0.3),
    "6003": (17, 35, 10, 0.3), "6004": (20, 42, 12, 0.6), "6005": (25, 47, 12, 0.6), "6200": (10, 30, 9, 0.6),
    "6201": (12, 32, 10, 0.6), "6202": (15, 35, 11, 0.6), "6203": (17, 40, 12, 0.6), "6204": (20, 47, 14, 1.0),
    "6205": (25, 52, 15, 1.0), "7000": (10, 26, 8, 0.3), "7001": (12, 28, 8, 0.3), "7002": (15, 32, 9, 0.3),
    "61900": (10, 22, 6, 0.3), "61901": (12, 24, 6, 0.3), "61902": (15, 28, 7, 0.3), "61903": (17, 30, 7, 0.3),
    "61904": (20, 37, 9, 0.3), "R8ZZ": (12.7, 28.575, 7.938, 0.4), "R6ZZ": (9.525, 22.225, 7.142, 0.4),
}  # fmt: skip
_NOTE = re.compile(r"\s*«([^»]*)»$")
_KEY = re.compile(r"([a-z]?)(\d?)\.([\w|]+)(?:=(.*))?$")
#: Row, first and last column of merged cells, from 0; a fourth number is the last row.
Merges = tuple[tuple[int, ...], ...]


class Reader:
    """Collects what the cells of a document mean."""

    def __init__(self) -> None:
        self.values: dict[Key, Value] = {}
        self.verdicts: dict[Key, str] = {}
        self.own: dict[Key, list[str]] = {}
        self.cells: dict[Key, list[str]] = {}
        self.words: dict[Key, list[str]] = {}

    def note(self, cell: str, address: str, around: list[tuple[str, str]]) -> str:
        """The text of a cell without its meaning, which is kept with its address and its headings'."""
        found = _NOTE.search(cell)
        if not found:
            return cell
        text = cell[: found.start()]
        for part in found[1].split(";"):
            match = _KEY.fullmatch(part.strip())
            if not match:
                raise ValueError(f"{part!r} in {cell!r}")
            machine, station, name, value = match.groups()
            key = (ord(machine or "a") - ord("a"), int(station) - 1 if station else -1, SHORT.get(name, name))
            self._state(key, text.removeprefix("#") if value is None else value)
            self.own.setdefault(key, []).append(address)
            self.cells.setdefault(key, []).extend([address, *(place for place, _ in around)])
            self.words.setdefault(key, []).extend(word for _, word in around)
        return text

    def _state(self, key: Key, value: str) -> None:
        verdict = "read"
        if value.startswith("?"):
            verdict, value = ("either", value[1:]) if len(value) > 1 else ("ask", "0")
        self.verdicts[key] = max(verdict, self.verdicts.get(key, "read"), key=["read", "either", "ask"].index)
        parts = value.split("/")
        number = re.fullmatch(r"-?\d+(?:[.,]\d+)?", parts[0].strip())
        seat = key[2] in ("shaft_seat_diameter", "housing_seat_diameter")
        stated: Value = value.strip()
        if number and (seat or len(parts) == 4):
            given = [*parts, "", "", ""][:4]
            low, up = (float(text) / 1000 if text else None for text in given[1:3])
            limits = given[3] == "limits"
            stated = Size(float(parts[0].replace(",", ".")), low, up, "" if limits else given[3], bare=limits)
        elif (
            number
            and len(parts) == 1
            and key[2] not in ("bearing_designation", "drawing_number", "drawing_revision", "station")
        ):
            stated = float(value.replace(",", "."))
        if key in self.values and self.values[key] != stated and not isinstance(stated, str):
            raise ValueError(f"{key} twice: {self.values[key]}, {stated}")
        self.values.setdefault(key, stated)


def column_letters(index: int) -> str:
    """The letters of a column, 0 is A."""
    letters = ""
    index += 1
    while index:
        index, rest = divmod(index - 1, 26)
        letters = chr(65 + rest) + letters
    return letters


def _is_word(text: str) -> bool:
    return len(text) > 1 and any(c.isalpha() for c in text)


def _around(rows: list[list[str]], r: int, c: int) -> list[tuple[str, str]]:
    """Headings of a cell: words without a meaning to its left, and above it up to an empty row."""
    found = [(f"{column_letters(k)}{r + 1}", rows[r][k]) for k in range(c) if "«" not in rows[r][k]]
    for above in range(r - 1, -1, -1):
        if not any(rows[above]):
            break
        if c < len(rows[above]) and "«" not in rows[above][c]:
            found.append((f"{column_letters(c)}{above + 1}", rows[above][c]))
    return [(address, text.removeprefix("#").removeprefix("=")) for address, text in found if _is_word(text)]


def grid(text: str) -> list[list[str]]:
    """Rows of a page written with ``|`` between its cells."""
    return [[cell.strip() for cell in line.split("|")] for line in text.strip("\n").split("\n")]


def page(
    number: int,
    rows: list[list[str]],
    stations: tuple[tuple[str, ...], ...],
    machines: tuple[str, ...] = ("",),
    *,
    write: str = ",",
    encoding: str = "utf-8",
    merges: Merges = (),
    shape: str = "",
    language: str = "",
) -> Table:
    """A page as a file: delimited text with the delimiter ``write``, or a workbook where that is ``xlsx``.

    In a workbook a cell that begins with ``#`` is a number.
    """
    reader = Reader()
    plain = _noted(reader, rows)
    if write == "xlsx":
        content, suffix = _workbook([("Data", plain, merges)]), ".xlsx"
    else:
        out = io.StringIO()
        csv.writer(out, delimiter=write, lineterminator="\r\n").writerows(
            [[cell.removeprefix("#") for cell in row] for row in plain]
        )
        content, suffix = out.getvalue().encode(encoding), ".csv" if write in ",;" else ".txt"
    return _table(number, suffix, content, reader, stations, machines, shape, language)


def book(
    number: int,
    sheets: list[tuple[str, list[list[str]], Merges]],
    stations: tuple[tuple[str, ...], ...],
    machines: tuple[str, ...] = ("",),
    *,
    shape: str = "",
    language: str = "",
) -> Table:
    """A workbook of several sheets, each a page. Cells with a meaning must not have the same address on two sheets."""
    reader = Reader()
    content = _workbook([(name, _noted(reader, rows), merges) for name, rows, merges in sheets])
    return _table(number, ".xlsx", content, reader, stations, machines, shape, language)


def _noted(reader: Reader, rows: list[list[str]]) -> list[list[str]]:
    """The rows without their meanings, which the reader keeps."""
    return [
        [reader.note(cell, f"{column_letters(c)}{r + 1}", _around(rows, r, c)) for c, cell in enumerate(row)]
        for r, row in enumerate(rows)
    ]


def document(
    number: int,
    tree: Any,
    stations: tuple[tuple[str, ...], ...],
    machines: tuple[str, ...] = ("",),
    *,
    shape: str = "",
    language: str = "",
) -> Table:
    """A JSON document; leaves carry their meaning as cells of a page do, ``#`` makes a number of the text."""
    reader = Reader()

    def strip(node: Any, path: str, around: list[tuple[str, str]]) -> Any:
        if isinstance(node, dict):
            named = [(f"{path}/{k}", v) for k, v in node.items() if isinstance(v, str) and "«" not in v]
            return {
                k: strip(v, f"{path}/{k.replace('~', '~0').replace('/', '~1')}", [*around[-3:], *named, (path, k)])
                for k, v in node.items()
            }
        if isinstance(node, list):
            return [strip(v, f"{path}/{k}", around) for k, v in enumerate(node)]
        if not isinstance(node, str):
            return node
        kept = [(place, word) for place, word in around if _is_word(word)]
        text = reader.note(node, path, kept)
        return json.loads(text[1:]) if text.startswith("#") else text

    plain = strip(tree, "", [])
    content = json.dumps(plain, ensure_ascii=False, indent=1).encode()
    return _table(number, ".json", content, reader, stations, machines, shape, language)


def _workbook(sheets: list[tuple[str, list[list[str]], Merges]]) -> bytes:
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    for name, rows, merges in sheets:
        sheet = book.add_worksheet(name)
        for r, first, last, *bottom in merges:
            sheet.merge_range(r, first, bottom[0] if bottom else r, last, "")
        for r, row in enumerate(rows):
            for c, cell in enumerate(row):
                if cell.startswith("#"):
                    sheet.write_number(r, c, float(cell[1:].replace(",", ".")))
                elif cell:
                    sheet.write_string(r, c, cell)
    book.close()
    return out.getvalue()


def _table(
    number: int,
    suffix: str,
    content: bytes,
    reader: Reader,
    stations: tuple[tuple[str, ...], ...],
    machines: tuple[str, ...],
    shape: str,
    language: str,
) -> Table:
    expected = [
        Expected(m, s, name, value, reader.verdicts[m, s, name], shape, tuple(reader.cells[m, s, name]),
                 tuple(dict.fromkeys(reader.words[m, s, name])), tuple(reader.own[m, s, name]))
        for (m, s, name), value in reader.values.items()
    ]  # fmt: skip
    implied: dict[Key, Value] = {}
    for (m, s, name), value in reader.values.items():
        if name == "bearing_designation" and isinstance(value, str):
            for where in range(len(stations[m])) if s < 0 else [s]:
                implied |= {(m, where, k): v for k, v in _implied(value).items()}
    kinds = {"layout": shape, "language": language}
    return Table(number, suffix, content, machines, stations, tuple(expected), implied, kinds)


def _implied(designation: str) -> dict[str, Value]:
    """What follows from a designation of the list above."""
    written = designation.upper()
    basic = max((k for k in SIZES if written.startswith(k)), key=len, default="")
    if not basic:
        return {}
    found: dict[str, Value] = {}
    for name, size in zip(
        ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer"), SIZES[basic], strict=False
    ):
        found[name] = float(size)
    found["bearing_type"] = "angular contact ball" if basic.startswith("70") else "deep groove ball"
    found["contact_angle"] = 15.0 if basic.startswith("70") else 0.0
    seals = {"2Z": "shield", "ZZ": "shield", "2RZ": "non-contact seal", "2RS": "contact seal", "LLU": "contact seal"}
    found["closure"] = next((v for k, v in seals.items() if k in written), "open")
    found["clearance_class"] = next((k for k in ("C3", "C4", "C2") if k in written), "CN")
    found["tolerance_class"] = next((k for k in ("P6", "P5", "P4") if k in written), "Normal")
    return found
