"""Tables for the benchmarks: complete designs, some of them faulty, as one table or as a folder of drawings."""

import json
import math
import random
from pathlib import Path

from tests.designs.complete import complete_design
from tests.designs.faults import FAULTS, faulty_design

DESIGNS = 150
#: Faults of a spoiled workbook; some make more than one finding.
PLANTED = 36


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
