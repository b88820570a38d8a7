"""An arrangement written in any layout, number spelling, unit and encoding: the other half of the round trip."""

import io
import json
from typing import Any

from attrs import field, frozen

#: Parameters of the written arrangements: level, kind, and the units they may be written in with their factors.
NUMBERS = {
    "speed_max": ("machine", {"r/min": 1.0, "1/s": 60.0}),
    "rotor_mass": ("machine", {"kg": 1.0, "g": 0.001}),
    "bore_diameter": ("station", {"mm": 1.0, "cm": 10.0, "in": 25.4}),
    "outside_diameter": ("station", {"mm": 1.0, "cm": 10.0, "in": 25.4}),
    "shaft_seat_roughness": ("station", {"µm": 1.0, "mm": 1000.0}),
    "radial_load": ("station", {"N": 1.0, "kN": 1000.0}),
}
SIZES = ("shaft_seat_diameter", "housing_seat_diameter")
CHOICES = {"lubrication": ("grease", "oil bath", "oil jet"), "cage": ("polyamide", "phenolic", "peek")}
TEXTS = {"drawing_number": "machine", "bearing_designation": "station"}
#: Headings of languages for some of the names.
TRANSLATED = {
    "bore_diameter": ("bore_diameter", "Bore diameter", "Bohrungsdurchmesser"),
    "outside_diameter": ("outside_diameter", "Outside diameter", "Außendurchmesser"),
    "machine": ("machine", "Machine", "Maschine"),
    "station": ("station", "Station", "Lagerstelle"),
}


@frozen
class Size:
    """A nominal size in mm with its tolerance: deviations in mm, or a class."""

    nominal: float
    lower: float = 0.0
    upper: float = 0.0
    tolerance_class: str = ""


@frozen
class Arrangement:
    """Machines by name: values of the machine, and stations by name with theirs."""

    machines: dict[str, tuple[dict[str, Any], dict[str, dict[str, Any]]]]


@frozen
class Spelling:
    """How values are written."""

    decimal: str = "."
    grouped: bool = False
    units: dict[str, str] = field(factory=dict)
    tolerance: str = "deviations"
    encoding: str = "utf-8"
    line_end: str = "\n"
    delimiter: str = ";"
    language: int = 0

    def number(self, value: float, name: str = "") -> str:
        """A number in the file's spelling; ``name`` converts it to the unit the file uses for that parameter."""
        if name in NUMBERS:
            value = value / NUMBERS[name][1][self.unit(name)]
        text = f"{value:.10g}"
        if "e" in text:
            text = f"{value:.12f}".rstrip("0").rstrip(".")
        whole, _, rest = text.partition(".")
        if self.grouped and len(whole.lstrip("-")) > 3:
            whole = f"{int(whole):,}".replace(",", " " if self.decimal == "," else ",")
        # a last zero keeps the mark from standing before exactly three digits, where no file could settle it
        rest = rest + "0" if len(rest) == 3 else rest
        return whole + (self.decimal + rest if rest else "")

    def unit(self, name: str) -> str:
        """Unit of a parameter in the file."""
        if name in SIZES:
            return "mm"
        return self.units.get(name, next(iter(NUMBERS[name][1])) if name in NUMBERS else "")

    def size(self, size: Size) -> str:
        """A toleranced size in one text."""
        nominal = self.number(size.nominal)
        if size.tolerance_class:
            return f"{nominal} {size.tolerance_class}"
        low, high = (("+" if v > 0 else "") + self.number(v) for v in (size.lower, size.upper))
        if self.tolerance == "limits":
            return f"max {self.number(size.nominal + size.upper)} min {self.number(size.nominal + size.lower)}"
        if self.tolerance == "bracket":
            return f"{nominal} ({high}; {low})"
        return f"{nominal} {high}/{low}"

    def cell(self, name: str, value: Any) -> str:
        """Any value as a text."""
        if value is None:
            return ""
        if isinstance(value, Size):
            return self.size(value)
        return self.number(value, name) if isinstance(value, float) else value

    def heading(self, name: str) -> str:
        """Word for a parameter."""
        return TRANSLATED.get(name, (name,) * 3)[self.language]


def names_of(arrangement: Arrangement, level: str) -> list[str]:
    """Names stated at a level, in order."""
    found: dict[str, None] = {}
    for values, stations in arrangement.machines.values():
        for name in values if level == "machine" else [n for s in stations.values() for n in s]:
            found[name] = None
    return list(found)


def _with_unit(spelling: Spelling, name: str) -> str:
    unit = spelling.unit(name)
    return f"{spelling.heading(name)} [{unit}]" if unit else spelling.heading(name)


def wide(arrangement: Arrangement, spelling: Spelling, units_row: bool = False) -> list[list[str]]:
    """One row per station; machine values in its first row only."""
    names = names_of(arrangement, "machine") + names_of(arrangement, "station")
    label = spelling.heading if units_row else (lambda name: _with_unit(spelling, name))
    rows = [[spelling.heading("machine"), spelling.heading("station"), *map(label, names)]]
    if units_row:
        rows.append(["", "", *map(spelling.unit, names)])
    for machine, (values, stations) in arrangement.machines.items():
        for index, (station, own) in enumerate(stations.items()):
            stated = {**(values if index == 0 else {}), **own}
            rows.append([machine, station, *(spelling.cell(name, stated.get(name)) for name in names)])
    return rows


def wide_with_columns(arrangement: Arrangement, spelling: Spelling) -> list[list[str]]:
    """One row per station, deviations in columns of their own."""
    rows = wide(arrangement, spelling)
    for name in [n for n in names_of(arrangement, "station") if n in SIZES]:
        column = rows[0].index(_with_unit(spelling, name))
        parts = [[f"{name} {part} [mm]" for part in ("upper", "lower")] + [f"{name} class"]]
        index = 1
        for _, stations in arrangement.machines.values():
            for own in stations.values():
                size = own.get(name)
                if size is None:
                    parts.append(["", "", ""])
                elif size.tolerance_class:
                    parts.append(["", "", size.tolerance_class])
                    rows[index][column] = spelling.number(size.nominal)
                else:
                    parts.append([spelling.number(size.upper), spelling.number(size.lower), ""])
                    rows[index][column] = spelling.number(size.nominal)
                index += 1
        for row, more in zip(rows, parts, strict=True):
            row[column + 1 : column + 1] = more
    return rows


def long(arrangement: Arrangement, spelling: Spelling, station_in_name: bool = False) -> list[list[str]]:
    """One row per parameter."""
    rows = [["Parameter", "Value", "Unit", *([] if station_in_name else ["Station"]), "Machine"]]

    def add(machine: str, station: str, name: str, value: Any) -> None:
        if value is None:
            return
        label = spelling.heading(name)
        if station_in_name:
            head = [f"{label} [{station}]" if station else label]
            rows.append([*head, spelling.cell(name, value), spelling.unit(name), machine])
        else:
            rows.append([label, spelling.cell(name, value), spelling.unit(name), station, machine])

    for machine, (values, stations) in arrangement.machines.items():
        for name, value in values.items():
            add(machine, "", name, value)
        for station, own in stations.items():
            for name, value in own.items():
                add(machine, station, name, value)
    return rows


def transposed(arrangement: Arrangement, spelling: Spelling) -> list[list[str]]:
    """One column per station."""
    return [list(column) for column in zip(*wide(arrangement, spelling), strict=True)]


def two_tables(arrangement: Arrangement, spelling: Spelling) -> list[list[str]]:
    """A table of machines above a table of stations."""
    names = names_of(arrangement, "machine")
    rows = [[spelling.heading("machine"), *(_with_unit(spelling, name) for name in names)]]
    rows += [
        [machine, *(spelling.cell(name, values.get(name)) for name in names)]
        for machine, (values, _) in arrangement.machines.items()
    ]
    stations = Arrangement({machine: ({}, own) for machine, (_, own) in arrangement.machines.items()})
    return [*rows, [], *wide(stations, spelling)]


def nested_json(arrangement: Arrangement, spelling: Spelling) -> bytes:
    """Machines with lists of stations, numbers as JSON numbers in canonical units."""

    def plain(values: dict[str, Any]) -> dict[str, Any]:
        result: dict[str, Any] = {}
        for name, value in values.items():
            if isinstance(value, Size):
                if value.tolerance_class:
                    result[name] = {"nominal": value.nominal, "class": value.tolerance_class, "unit": "mm"}
                else:
                    result[name] = {"nominal": value.nominal, "upper": value.upper, "lower": value.lower, "unit": "mm"}
            elif value is not None:
                result[name] = value
        return result

    document = {
        "machines": [
            {
                "machine": machine,
                **plain(values),
                "stations": [{"station": s, **plain(own)} for s, own in stations.items()],
            }
            for machine, (values, stations) in arrangement.machines.items()
        ]
    }
    return json.dumps(document, ensure_ascii=False).encode(spelling.encoding)


def record_json(arrangement: Arrangement, spelling: Spelling) -> bytes:
    """A list of records, one per parameter."""
    head, *rows = long(arrangement, spelling)
    keys = {"Parameter": "name", "Value": "value", "Unit": "unit", "Station": "station", "Machine": "machine"}
    records = [{keys[k]: v for k, v in zip(head, row, strict=True) if v} for row in rows]
    return json.dumps(records, ensure_ascii=False).encode(spelling.encoding)


def delimited(rows: list[list[str]], spelling: Spelling) -> bytes:
    """Rows as delimited text in the encoding of the spelling."""
    lines = []
    for row in rows:
        cells = [f'"{c}"' if spelling.delimiter in c or '"' in c else c for c in row]
        lines.append(spelling.delimiter.join(cells))
    return (spelling.line_end.join(lines) + spelling.line_end).encode(spelling.encoding)


def workbook(rows: list[list[str]], spelling: Spelling) -> bytes:
    """Rows as a workbook, plain numbers as number cells."""
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    for row in rows:
        cells: list[Any] = []
        for cell in row:
            try:
                # "1,000" alone would be ambiguous; a number cell of a workbook never is
                plain = cell.replace(",", "") if spelling.grouped else cell
                cells.append(float(plain) if spelling.decimal == "." and not cell.startswith("+") else cell or None)
            except ValueError:
                cells.append(cell or None)
        sheet.append(cells)
    stream = io.BytesIO()
    book.save(stream)
    return stream.getvalue()


GRIDS = {
    "wide": wide,
    "wide with units row": lambda a, s: wide(a, s, units_row=True),
    "wide with deviation columns": wide_with_columns,
    "long": long,
    "long, station in the name": lambda a, s: long(a, s, station_in_name=True),
    "transposed": transposed,
    "two tables": two_tables,
}
