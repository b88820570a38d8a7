"""Tables for the benchmarks: complete designs, some of them faulty, as one table or as a folder of drawings."""

import csv
import json
import math
import random
from pathlib import Path

from linter.model.vocabulary import Parameter, vocabulary
from tests.designs.complete import complete_design
from tests.designs.faults import FAULTS, faulty_design

DESIGNS = 150
#: Faults of a spoiled workbook; some make more than one finding.
PLANTED = 36
#: Parameters that a wide table leaves out, or states in its two first columns.
_LEFT_OUT = {"machine", "station", "spacer_stack", "drawing_number", "drawing_revision"}


def cell(value: object) -> str:
    """A value of a design as a cell states it."""
    if isinstance(value, list | tuple):
        nominal, *rest = value
        if isinstance(rest[0], str):
            return f"{nominal} {rest[0]}"
        return f"{nominal} {rest[1]:+g}/{rest[0]:+g}"
    return "" if value is None or (isinstance(value, float) and math.isnan(value)) else str(value)


def write_table(path: Path, stations: int, faulty: float = 0.0, designs: int = DESIGNS) -> Path:
    """One CSV table of machines with two positions each, of so many designs that come again and again.

    ``faulty`` is the share of machines with a planted fault.
    """
    made: dict[tuple[bool, int], list[dict[str, object]]] = {}
    rows: list[dict[str, str]] = []
    number = 0
    while len(rows) < stations:
        bad = math.floor((number + 1) * faulty + 1e-9) > math.floor(number * faulty + 1e-9)
        seed = number % designs
        if (bad, seed) not in made:
            made[bad, seed] = list((faulty_design(seed)[0] if bad else complete_design(seed)).rows)
        rows += [
            {**{name: cell(value) for name, value in row.items()}, "machine": f"M{number:06d}"}
            for row in made[bad, seed]
        ]
        number += 1
    names = list(dict.fromkeys(name for row in rows for name in row))
    with path.open("w", encoding="utf-8") as stream:
        stream.write(";".join(names) + "\n")
        stream.writelines(";".join(row.get(name, "") for name in names) + "\n" for row in rows)
    return path


def write_spoiled(path: Path) -> Path:
    """A workbook of one machine with two positions and some forty findings, of faults planted one upon the other."""
    import xlsxwriter

    design = complete_design(0)
    for fault in [fault for fault in FAULTS.values() if fault.needed(design)][:PLANTED]:
        design = fault.plant(design, random.Random(fault.name))
    rows = [{name: cell(value) for name, value in row.items()} for row in design.rows]
    names = list(dict.fromkeys(name for row in rows for name in row))
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet()
        for at, row in enumerate([names, *([row.get(name, "") for name in names] for row in rows)]):
            sheet.write_row(at, 0, row)
    return path


def write_drawings(folder: Path, count: int) -> list[Path]:
    """Tables of two positions with some 40 values each: CSV, xlsx and JSON in turn."""
    import xlsxwriter

    rng = random.Random(7)
    designs = [complete_design(seed).rows for seed in range(200)]
    paths = []
    for number in range(count):
        rows = [{k: cell(v) for k, v in row.items()} for row in designs[number % len(designs)]]
        for row in rows:
            row["machine"] = f"{row.get('machine', 'M')} {number}"
            row["speed_max"] = str(round(float(row["speed_max"]) * rng.uniform(0.8, 1.1), 1))
        names = list(dict.fromkeys(name for row in rows for name in row))
        path = folder / f"{number:06d}.{('csv', 'xlsx', 'json')[number % 3]}"
        if path.suffix == ".csv":
            lines = [";".join(names)] + [";".join(row.get(n, "") for n in names) for row in rows]
            path.write_text("\n".join(lines) + "\n", encoding="utf-8")
        elif path.suffix == ".json":
            path.write_text(json.dumps(rows), encoding="utf-8")
        else:
            with xlsxwriter.Workbook(path) as book:
                sheet = book.add_worksheet()
                sheet.write_row(0, 0, names)
                for at, row in enumerate(rows, 1):
                    sheet.write_row(at, 0, [row.get(n, "") for n in names])
        paths.append(path)
    return paths


def wide_table(rows: int, columns: int = 60) -> list[list[str]]:
    """The heading and the rows of a wide table, one position each, with many distinct numbers."""
    chosen = [p for p in vocabulary().values() if p.name not in _LEFT_OUT]
    chosen = ([p for p in chosen if p.level == "station"] + [p for p in chosen if p.level == "machine"])[: columns - 2]
    random.seed(7)
    lines = [["machine", "station", *(p.name for p in chosen)]]
    machine_values: list[str] = []
    for row in range(rows):
        if row % 2 == 0:
            machine_values = [_value(p) for p in chosen]
        lines.append(
            [
                f"M{row // 2:06d}",
                "AB"[row % 2],
                *(machine_values[i] if p.level == "machine" else _value(p) for i, p in enumerate(chosen)),
            ]
        )
    return lines


def _value(entry: Parameter) -> str:
    """A cell of a wide table."""
    if entry.kind == "choice":
        return random.choice(entry.choices)
    if entry.kind == "text":
        return f"text {random.randrange(500)}"
    if entry.kind == "toleranced" and entry.unit != "mm":
        return f"{random.randrange(3, 60)} ±1"
    if entry.kind == "toleranced":
        return f"{random.randrange(3, 60)} {random.choice(('k5', 'h6', '+0.006/+0.001', '±0.01'))}"
    return f"{random.uniform(0.1, 500):.4f}"


def write_wide_text(path: Path, rows: int) -> Path:
    """A wide table as delimited text."""
    with path.open("w", encoding="utf-8", newline="") as stream:
        csv.writer(stream).writerows(wide_table(rows))
    return path


def write_wide_workbook(path: Path, rows: int) -> Path:
    """A wide table as a workbook, its numbers as numbers."""
    import xlsxwriter

    with xlsxwriter.Workbook(str(path), {"strings_to_numbers": True}) as book:
        sheet = book.add_worksheet("Seats")
        for index, line in enumerate(wide_table(rows)):
            sheet.write_row(index, 0, line)
    return path
