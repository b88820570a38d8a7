"""Writers of every layout: an arrangement and a spelling to rows of cells, or to the bytes of a file."""

import io
import json
from collections.abc import Callable
from typing import Any

from attrs import evolve
from writers import NUMBERS, SIZES, Arrangement, Size, Spelling, Values, number_cell

Rows = list[list[str]]


def wide(arrangement: Arrangement, spelling: Spelling, units_row: bool = False, machine_column: bool = True) -> Rows:
    """One row per station; machine values in its first row only."""
    names = arrangement.names("machine") + arrangement.names("station")
    label = spelling.word if units_row else spelling.heading
    rows = [[spelling.word("machine"), spelling.word("station"), *map(label, names)]]
    if units_row:
        rows.append(["", "", *map(spelling.unit, names)])
    for machine, (values, stations) in arrangement.machines.items():
        for index, (station, own) in enumerate(stations.items()):
            stated = {**(values if index == 0 else {}), **own}
            rows.append([machine, station, *(spelling.cell(name, stated.get(name)) for name in names)])
    return rows if machine_column else [row[1:] for row in rows]


def deviation_columns(arrangement: Arrangement, spelling: Spelling, two_rows: bool = False) -> Rows:
    """Nominal, deviations and class in columns of their own, their words beside the size or in a second heading row."""
    names = arrangement.names("machine") + arrangement.names("station")
    parts = [spelling.word("UPPER"), spelling.word("LOWER"), spelling.word("CLASS")]
    head, below = [spelling.word("machine"), spelling.word("station")], ["", ""]
    for name in names:
        if name in SIZES:
            word = spelling.word(name)
            head += [word, "", "", ""] if two_rows else [spelling.heading(name), *parts]
            below += ["[mm]", *(f"{part} [mm]" for part in parts[:2]), parts[2]]
        elif two_rows:
            head.append(spelling.word(name))
            below.append(f"[{unit}]" if (unit := spelling.unit(name)) else "")
        else:
            head.append(spelling.heading(name))
    rows = [head, below] if two_rows else [head]
    for machine, (values, stations) in arrangement.machines.items():
        for index, (station, own) in enumerate(stations.items()):
            stated = {**(values if index == 0 else {}), **own}
            row = [machine, station]
            for name in names:
                size = stated.get(name)
                if not isinstance(size, Size):
                    row += ["", "", "", ""] if name in SIZES else [spelling.cell(name, size)]
                elif size.tolerance_class:
                    row += [spelling.number(size.nominal), "", "", size.tolerance_class]
                else:
                    row += [spelling.number(size.nominal), spelling.signed(size.upper), spelling.signed(size.lower), ""]
            rows.append(row)
    return rows


def limit_columns(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """``x_min`` and ``x_max`` of each size instead of its nominal; sizes with a class keep both columns blank."""
    names = arrangement.names("machine") + arrangement.names("station")
    rows = [[spelling.word("machine"), spelling.word("station")]]
    for name in names:
        rows[0] += [f"{name}_min", f"{name}_max"] if name in SIZES else [spelling.heading(name)]
    for machine, station, values, own in arrangement.rows():
        row = [machine, station]
        for name in names:
            value = {**values, **own}.get(name)
            if isinstance(value, Size):
                row += [spelling.number(value.nominal + value.lower), spelling.number(value.nominal + value.upper)]
            else:
                row.append(spelling.cell(name, value))
        rows.append(row)
    return rows


def side_by_side(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """A table for each machine, one beside the other with a blank column between."""
    blocks = [wide(Arrangement({m: own}), spelling) for m, own in arrangement.machines.items()]
    height = max(map(len, blocks))
    rows: Rows = [[] for _ in range(height)]
    for index, block in enumerate(blocks):
        for row, line in zip(rows, block + [[""] * len(block[0])] * (height - len(block)), strict=True):
            row += [*([""] if index else []), *line]
    return rows


def stacked(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """A table for each machine, one below the other with a blank row between."""
    blocks = [wide(Arrangement({m: own}), spelling) for m, own in arrangement.machines.items()]
    return [row for index, block in enumerate(blocks) for row in (*([[]] if index else []), *block)]


def titled(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """Machine and its values as a title block above a table of stations."""
    (machine, (values, stations)) = next(iter(arrangement.machines.items()))
    rows = [[spelling.word("machine"), machine]]
    rows += [[spelling.heading(name), spelling.cell(name, value)] for name, value in values.items()]
    return [*rows, [], *wide(Arrangement({machine: ({}, stations)}), spelling, machine_column=False)]


def generic_row(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """The first station is the generic one; an asterisk elsewhere means the same value."""
    rows = wide(arrangement, spelling)
    for row in rows[2:]:
        row[2:] = ["*" if cell and cell == first else cell for cell, first in zip(row[2:], rows[1][2:], strict=True)]
    return rows


def name_at_feature(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """One row per machine, ``name@station`` headings, units in a row of their own."""
    stations = list(dict.fromkeys(s for _, s, _, _ in arrangement.rows()))
    machine_names = arrangement.names("machine")
    pairs = [(name, s) for s in stations for name in arrangement.names("station")]
    rows = [
        [spelling.word("machine"), *map(spelling.word, machine_names), *(f"{spelling.word(n)}@{s}" for n, s in pairs)],
        ["", *map(spelling.unit, machine_names), *(spelling.unit(name) for name, _ in pairs)],
    ]
    for machine, (values, own) in arrangement.machines.items():
        cells = [spelling.cell(n, own.get(s, {}).get(n)) for n, s in pairs]
        rows.append([machine, *(spelling.cell(n, values.get(n)) for n in machine_names), *cells])
    return rows


def long(arrangement: Arrangement, spelling: Spelling, station_in_name: bool = False) -> Rows:
    """One row per parameter."""
    head = [spelling.word(word) for word in ("NAME", "VALUE", "UNIT")]
    rows = [[*head, *([] if station_in_name else [spelling.word("station")]), spelling.word("machine")]]

    def add(machine: str, station: str, name: str, value: Any) -> None:
        if value is None:
            return
        label, text, unit = spelling.word(name), spelling.cell(name, value), spelling.unit(name)
        if station_in_name:
            rows.append([f"{label} [{station}]" if station else label, text, unit, machine])
        else:
            rows.append([label, text, unit, station, machine])

    for machine, (values, stations) in arrangement.machines.items():
        for name, value in values.items():
            add(machine, "", name, value)
        for station, own in stations.items():
            for name, value in own.items():
                add(machine, station, name, value)
    return rows


def first_article(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """Numbered characteristics with nominal, deviations, class, unit and a measured value nobody may take."""
    (machine, (values, stations)) = next(iter(arrangement.machines.items()))
    columns = ("CHAR-ID", "NAME", "NOMINAL", "UPPER", "LOWER", "CLASS", "UNIT")
    rows = [[*map(spelling.word, columns), "Actual 1"], ["1", spelling.word("machine"), machine, "", "", "", "", ""]]

    def add(name: str, value: Any, station: str) -> None:
        if value is None:
            return
        label = f"{spelling.word(name)} {station}".strip()
        middle = [spelling.cell(name, value), "", "", ""]
        if isinstance(value, Size):
            middle = [spelling.number(value.nominal), "", "", value.tolerance_class]
            if not value.tolerance_class:
                middle[1:3] = [spelling.signed(value.upper), spelling.signed(value.lower)]
        measured = spelling.number(999.99) if isinstance(value, Size) else ""
        rows.append([str(len(rows)), label, *middle, spelling.unit(name), measured])

    for name, value in values.items():
        add(name, value, "")
    for station, own in stations.items():
        for name, value in own.items():
            add(name, value, f"[{station}]")
    return rows


def transposed(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """One column per station."""
    return [list(column) for column in zip(*wide(arrangement, spelling), strict=True)]


def two_tables(arrangement: Arrangement, spelling: Spelling) -> Rows:
    """A table of machines above a table of stations."""
    names = arrangement.names("machine")
    rows = [[spelling.word("machine"), *map(spelling.heading, names)]]
    rows += [
        [machine, *(spelling.cell(name, values.get(name)) for name in names)]
        for machine, (values, _) in arrangement.machines.items()
    ]
    return [*rows, [], *wide(Arrangement({m: ({}, own) for m, (_, own) in arrangement.machines.items()}), spelling)]


def plain_values(values: Values) -> Values:
    """Values as JSON has them: numbers in canonical units, sizes as objects."""
    result: Values = {}
    for name, value in values.items():
        if isinstance(value, Size):
            result[name] = {"nominal": value.nominal, "unit": "mm"}
            if value.tolerance_class:
                result[name]["class"] = value.tolerance_class
            else:
                result[name] |= {"upper": value.upper, "lower": value.lower}
        elif value is not None:
            result[name] = value
    return result


def _json(document: Any, spelling: Spelling) -> bytes:
    return json.dumps(document, ensure_ascii=False, indent=1).replace("\n", spelling.line_end).encode(spelling.encoding)


def nested_json(arrangement: Arrangement, spelling: Spelling) -> bytes:
    """Machines with lists of stations."""
    machines = [
        {
            "machine": machine,
            **plain_values(values),
            "stations": [{"station": s, **plain_values(own)} for s, own in stations.items()],
        }
        for machine, (values, stations) in arrangement.machines.items()
    ]
    return _json({"machines": machines}, spelling)


def record_json(arrangement: Arrangement, spelling: Spelling) -> bytes:
    """A list of records, one per parameter."""
    keys = ("name", "value", "unit", "station", "machine")
    rows = long(arrangement, spelling)[1:]
    return _json([{k: v for k, v in zip(keys, row, strict=True) if v} for row in rows], spelling)


def flat_json(arrangement: Arrangement, spelling: Spelling) -> bytes:
    """One object of ``name@station`` keys, each a pair of value and unit."""
    (machine, (values, stations)) = next(iter(arrangement.machines.items()))
    document: Values = {"machine": machine}
    for station, own in (("", values), *stations.items()):
        for name, value in own.items():
            if value is not None:
                text, unit = spelling.cell(name, value), spelling.unit(name)
                key = f"{spelling.word(name)}@{station}" if station else spelling.word(name)
                document[key] = {"value": text, "unit": unit} if unit else text
    return _json(document, spelling)


def equations(arrangement: Arrangement, spelling: Spelling) -> bytes:
    """An equation file of one machine: quoted name, equals sign, value with unit, comment."""
    (machine, (values, stations)) = next(iter(arrangement.machines.items()))
    lines = [f'"{spelling.word("machine")}"= {machine}']
    for station, own in (("", values), *stations.items()):
        for name, value in own.items():
            if value is not None:
                label = spelling.word(name) + (f"@{station}" if station else "")
                text = spelling.size(value, "mm") if isinstance(value, Size) else spelling.cell(name, value)
                unit = " " + spelling.unit(name) if name in NUMBERS else ""
                lines.append(f'"{label}"= {text}{unit} \'from the model')
    lines.append('"D1@Sketch1"="' + spelling.word("bore_diameter") + '"')
    return (spelling.line_end.join(lines) + spelling.line_end).encode(spelling.encoding)


def qif(arrangement: Arrangement, spelling: Spelling) -> bytes:
    """Lengths and toleranced sizes of one machine as characteristics."""
    (machine, (_, stations)) = next(iter(arrangement.machines.items()))
    definitions, nominals, items = "", "", ""
    for number, (station, name, value) in enumerate((s, n, v) for s, own in stations.items() for n, v in own.items()):
        if value is None:
            continue
        size = value if isinstance(value, Size) else Size(value)
        ids = (3 * number + 1, 3 * number + 2, 3 * number + 3)
        tolerance = ""
        if isinstance(value, Size):
            limits = spelling.tolerance == "limits" or (size.lower, size.upper) == (0.0, 0.0)
            base = size.nominal if limits else 0.0
            tolerance = f"<Tolerance><MaxValue>{base + size.upper:.6f}</MaxValue><MinValue>{base + size.lower:.6f}"
            tolerance += f"</MinValue><DefinedAsLimit>{str(limits).lower()}</DefinedAsLimit></Tolerance>"
        definitions += f'<DiameterCharacteristicDefinition id="{ids[0]}">{tolerance}</DiameterCharacteristicDefinition>'
        nominals += (
            f'<DiameterCharacteristicNominal id="{ids[1]}"><CharacteristicDefinitionId>{ids[0]}'
            f"</CharacteristicDefinitionId><TargetValue>{size.nominal!r}</TargetValue></DiameterCharacteristicNominal>"
        )
        items += (
            f'<DiameterCharacteristicItem id="{ids[2]}"><Name>{spelling.word(name)} {station}</Name>'
            f"<CharacteristicNominalId>{ids[1]}</CharacteristicNominalId></DiameterCharacteristicItem>"
        )
    text = (
        '<?xml version="1.0" encoding="UTF-8"?>\n<QIFDocument xmlns="http://qifstandards.org/xsd/qif3"><FileUnits>'
        "<PrimaryUnits><LinearUnit><UnitConversion><Factor>0.001</Factor></UnitConversion></LinearUnit></PrimaryUnits>"
        f'</FileUnits><Product><PartSet><Part id="0"><Name>{machine}</Name></Part></PartSet></Product>'
        f"<Characteristics><CharacteristicDefinitions>{definitions}</CharacteristicDefinitions>"
        f"<CharacteristicNominals>{nominals}</CharacteristicNominals><CharacteristicItems>{items}"
        "</CharacteristicItems></Characteristics></QIFDocument>"
    )
    return text.encode("utf-8")


def delimited(rows: Rows, spelling: Spelling) -> bytes:
    """Rows as delimited text in the encoding of the spelling."""
    lines = []
    for row in rows:
        cells = ['"' + c.replace('"', '""') + '"' if spelling.delimiter in c or '"' in c else c for c in row]
        lines.append(spelling.delimiter.join(cells))
    return (spelling.line_end.join(lines) + spelling.line_end).encode(spelling.encoding)


def aligned(rows: Rows, spelling: Spelling) -> bytes:
    """Rows as text whose columns are set apart by blanks, every cell filled."""
    width = max(map(len, rows))
    full = [[cell or "-" for cell in row] + ["-"] * (width - len(row)) for row in rows]
    widths = [max(len(row[column]) for row in full) for column in range(width)]
    lines = ["  ".join(cell.ljust(w) for cell, w in zip(row, widths, strict=True)).rstrip() for row in full]
    return (spelling.line_end.join(lines) + spelling.line_end).encode(spelling.encoding)


def workbook(rows: Rows, spelling: Spelling, merge_headings: bool = False) -> bytes:
    """Rows as a workbook that begins at B2, plain numbers as number cells; blanks of the first row may be merged."""
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    for index, row in enumerate(rows):
        for column, text in enumerate(row):
            sheet.cell(index + 2, column + 2, number_cell(text, spelling))
    if merge_headings:
        for column, text in enumerate(rows[0]):
            span = next((k for k, t in enumerate([*rows[0][column + 1 :], "end"]) if t), 0)
            if text and span:
                sheet.merge_cells(start_row=2, start_column=column + 2, end_row=2, end_column=column + 2 + span)
    stream = io.BytesIO()
    book.save(stream)
    return stream.getvalue()


def everything(arrangement: Arrangement) -> Arrangement:
    """All of it can be written."""
    return arrangement


def one_machine(arrangement: Arrangement) -> Arrangement:
    """The first machine."""
    return arrangement.first()


def half_alike(arrangement: Arrangement) -> Arrangement:
    """One machine whose further stations share every second value with the first."""
    (machine, (values, stations)) = next(iter(arrangement.machines.items()))
    first = next(iter(stations.values()))
    alike = {name: value for index, (name, value) in enumerate(first.items()) if index % 2}
    return Arrangement({machine: (values, {s: {**own, **alike} for s, own in stations.items()})})


def only_deviations(arrangement: Arrangement) -> Arrangement:
    """Sizes with a class get deviations of the same nominal instead."""

    def plain(value: Any) -> Any:
        if isinstance(value, Size) and value.tolerance_class:
            return evolve(value, tolerance_class="", lower=-0.011, upper=0.004)
        return value

    return Arrangement(
        {
            m: (values, {s: {n: plain(v) for n, v in own.items()} for s, own in stations.items()})
            for m, (values, stations) in arrangement.machines.items()
        }
    )


def lengths_alone(arrangement: Arrangement) -> Arrangement:
    """What a QIF document can state: one machine, its lengths in millimetre and sizes with deviations."""
    (machine, (_, stations)) = next(iter(only_deviations(arrangement).machines.items()))
    kept = ("bore_diameter", "outside_diameter", *SIZES)
    return Arrangement({machine: ({}, {s: {n: own[n] for n in kept} for s, own in stations.items()})})


#: Layouts of a grid: which part of an arrangement each can state, and its writer.
GRIDS: dict[str, tuple[Callable[[Arrangement], Arrangement], Callable[[Arrangement, Spelling], Rows]]] = {
    "wide": (everything, wide),
    "wide with units row": (everything, lambda a, s: wide(a, s, units_row=True)),
    "deviation columns": (everything, deviation_columns),
    "two-row heading": (everything, lambda a, s: deviation_columns(a, s, two_rows=True)),
    "limit columns": (lambda a: only_deviations(a), limit_columns),
    "side by side": (everything, side_by_side),
    "stacked": (everything, stacked),
    "title block": (one_machine, titled),
    "generic row": (half_alike, generic_row),
    "name at feature": (everything, name_at_feature),
    "long": (everything, long),
    "long, station in the name": (everything, lambda a, s: long(a, s, station_in_name=True)),
    "first article": (one_machine, first_article),
    "transposed": (everything, transposed),
    "two tables": (everything, two_tables),
}
#: Layouts that are files of their own.
FILES: dict[str, tuple[Callable[[Arrangement], Arrangement], Callable[[Arrangement, Spelling], bytes]]] = {
    "nested JSON": (everything, nested_json),
    "JSON records": (everything, record_json),
    "flat JSON": (one_machine, flat_json),
    "equations": (one_machine, equations),
    "QIF": (lengths_alone, qif),
}
