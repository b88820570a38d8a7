"""Layouts whose headings stand above the values: rows per position, rows per machine, transposed, stacked, sheets."""

from .sheets import Draft, Sheet
from .shown import Item


def _columns(d: Draft, s: int, parameters: list[str]) -> list[list[Item]]:
    """Items of a position for each machine, or of each machine (s = -1)."""
    return [[i for p in parameters for i in d.items(m, s, p)] for m in range(len(d.machines))]


def _units_row(d: Draft, r: int, first: int, columns: list[list[Item]]) -> None:
    framed = bool(d.office.gap)
    for c, items in enumerate(columns):
        unit = items[0].unit
        d.sheet.put(r, first + c, f"[{unit}]" if unit and framed else unit or "-", *items, head=True)


def _head_row(d: Draft, r: int, first: int, columns: list[list[Item]], position: str = "") -> None:
    bare = d.office.rng.random() < 0.5
    for c, items in enumerate(columns):
        item, before = items[0], columns[c - 1][0]
        follows = bare and item.aspect not in ("value", "nominal") and c > 0 and before.parameter == item.parameter
        d.sheet.put(r, first + c, d.head(item, position, follows, d.office.place == "heading"), *items, head=True)


def _feature(d: Draft, item: Item, units: bool) -> str:
    """The heading of a column whose part is told above it."""
    key = item.parameter if item.parameter.count("_") > 1 else item.parameter + "_diameter"
    unit = "" if not units else item.unit if d.office.place != "title" else d.office.title_unit(item.unit)
    name = d.office.finish(d.words("feature." + key.split("_", 1)[1]), item.aspect, "")
    return d.office.unit_form.format(n=name, u=unit) if unit else name


def _grouped(d: Draft, r: int, columns: list[list[Item]]) -> None:
    """Two rows of headings: the part, merged over its columns, and the feature."""
    first = 0
    parts = ["" if i[0].s < 0 or ":" in i[0].parameter else i[0].parameter.split("_")[0] for i in columns]
    parts = [
        p if p in ("shaft", "housing", "") else "bearing" if columns[c][0].parameter != "station" else ""
        for c, p in enumerate(parts)
    ]
    for c, items in enumerate(columns):
        part = parts[c]
        if c and part != parts[c - 1]:
            first = c
        if part:
            d.sheet.put(r, first, d.words(f"part.{part}"), *items, head=True)
            if c + 1 == len(columns) or parts[c + 1] != part:
                d.sheet.merged += [(r, first, c)] if c > first else []
        seat = part in ("shaft", "housing")
        text = (
            _feature(d, items[0], d.office.place == "heading")
            if seat
            else d.head(items[0], units=d.office.place == "heading")
        )
        d.sheet.put(r + 1, c, text, *items, head=True)


def wide(d: Draft, machine_above: bool = False, grouped: bool = False) -> None:
    """One row per bearing position, values of the machine above or in columns, repeated or in the first row only."""
    sheet = d.sheet
    several = len(d.machines) > 1
    if machine_above:
        pairs(d, d.whole)
    start = sheet.row
    units = d.office.place == "row"
    everywhere = several or d.office.rng.random() < 0.6
    of_positions = d.with_noise(d.parts)
    if grouped:
        found = _features(d)
        of_positions = [p for part in ("bearing", "shaft", "housing") for p in found[part]] + [f"noise:{d.noise[0][0]}"]
        start += 1
    columns: list[list[Item]] = []
    r = start + 1 + units
    for m in range(len(d.machines)):
        name = d.items(m, -1, "machine") if several else []
        machine = [] if machine_above else [i for p in d.whole for i in d.items(m, -1, p)]
        for s in range(len(d.stations)):
            row = [*name, *d.items(m, s, "station"), *machine, *(i for p in of_positions for i in d.items(m, s, p))]
            columns = columns or [[] for _ in row]
            for c, item in enumerate(row):
                if item.s >= 0 or s == 0 or everywhere:
                    sheet.put(r, c, item.text, item)
                if item not in columns[c]:
                    columns[c].append(item)
            r += 1
    if grouped:
        _grouped(d, start - 1, columns)
    else:
        _head_row(d, start, 0, columns)
    if units:
        _units_row(d, start + 1, 0, columns)
    sheet.row = r


def pairs(d: Draft, parameters: list[str]) -> None:
    """Values of the machine as pairs of label and value, one below the other, then a blank row."""
    for p in parameters:
        for item in d.items(0, -1, p):
            d.sheet.put(d.sheet.row, 0, d.head(item, units=d.office.place != "row"), item, head=True)
            if d.office.place == "row" and item.unit:
                d.sheet.put(d.sheet.row, 2, item.unit, item, head=True)
            d.sheet.put(d.sheet.row, 1, item.text, item)
            d.sheet.row += 1
    d.sheet.row += 1


def machine_rows(d: Draft, grouped: bool = False) -> None:
    """One row per machine with both positions side by side; ``grouped``: positions in a merged row above."""
    sheet = d.sheet
    start = sheet.row
    units = d.office.place == "row"
    noise = [f"noise:{name}" for name, _ in d.noise[:1]]
    groups = [_columns(d, -1, ["machine", *d.whole, *noise])]
    groups += [_columns(d, s, d.parts) for s in range(len(d.stations))]
    at = 0
    for g, group in enumerate(groups):
        position = d.stations[g - 1] if g else ""
        columns = [list(column) for column in zip(*group, strict=True)]
        if grouped and position:
            sheet.put(start, at, position, *(item for items in group for item in items), head=True)
            sheet.merged.append((start, at, at + len(columns) - 1))
        _head_row(d, start + grouped, at, columns, "" if grouped else position)
        if units:
            _units_row(d, start + grouped + 1, at, columns)
        for m, items in enumerate(group):
            for c, item in enumerate(items):
                sheet.put(start + grouped + units + 1 + m, at + c, item.text, item)
        at += len(columns)
    sheet.row = start + grouped + units + 1 + len(d.machines)


def transposed(d: Draft, machine_above: bool = False) -> None:
    """Parameters down, positions across; a unit column where units have one."""
    sheet, words = d.sheet, d.words
    if machine_above:
        unit, d.office.place = d.office.place, "row" if d.office.place == "column" else d.office.place
        pairs(d, d.whole)
        d.office.place = unit
    column = d.office.place == "column"
    unit_at = (1 if d.office.rng.random() < 0.7 else 1 + len(d.stations)) if column else -1
    at = 2 if unit_at == 1 else 1
    heading = sheet.row
    sheet.put(heading, 0, words("col.name"))
    if column:
        sheet.put(heading, unit_at, words("col.unit"))
    for s, name in enumerate(d.stations):
        sheet.put(heading, at + s, name)
    sheet.row += 1
    both = d.office.rng.random() < 0.5
    rows = [] if machine_above else [(p, -1) for p in d.whole]
    rows += [(p, 0) for p in d.with_noise(d.parts)]
    for p, first in rows:
        found = [d.items(0, s, p) for s in ([-1] if first else range(len(d.stations)))]
        for across in zip(*found, strict=True):
            lead = across[0]
            sheet.put(sheet.row, 0, d.head(lead, units=not column), *across, head=True)
            if column:
                sheet.put(sheet.row, unit_at, lead.unit or "-", *across, head=True)
            for s in range(len(d.stations) if first == 0 or both else 1):
                item = lead if first else across[s]
                sheet.put(sheet.row, at + s, item.text, item)
                if first == 0:
                    item.heads.append(f"{chr(65 + at + s)}{heading + 1}")
            sheet.row += 1


def _features(d: Draft) -> dict[str, list[str]]:
    """The parameters of positions by what they are of."""
    found: dict[str, list[str]] = {"bearing": [], "shaft": [], "housing": []}
    for p in d.parts:
        part = p.split("_")[0]
        found[part if part in ("shaft", "housing") else "bearing"].append(p)
    return found


def _part_table(d: Draft, sheet: Sheet, part: str, parameters: list[str]) -> None:
    """Positions down, features of one part across."""
    units = d.office.place == "row"
    start = sheet.row
    whole, d.sheet = d.sheet, sheet
    sheet.put(start, 0, d.words("col.position"))
    rows = [[i for p in parameters for i in d.items(0, s, p)] for s in range(len(d.stations))]
    for s, row in enumerate(rows):
        sheet.put(start + 1 + units + s, 0, d.stations[s])
        for c, item in enumerate(row):
            sheet.put(start + 1 + units + s, 1 + c, item.text, item)
    columns = [list(column) for column in zip(*rows, strict=True)]
    for c, items in enumerate(columns):
        item = items[0]
        if item.parameter.split("_")[0] == part and part != "bearing":
            text = _feature(d, item, not units)
        else:
            text = d.head(item, units=not units)
        sheet.put(start, 1 + c, text, *items, head=True)
    if units:
        _units_row(d, start + 1, 1, columns)
    sheet.row = start + 1 + units + len(d.stations)
    d.sheet = whole


def stacked(d: Draft) -> None:
    """The machine, then bearings, shaft and housing as tables one below the other, each under its own title."""
    pairs(d, d.whole)
    for part, parameters in _features(d).items():
        d.sheet.next(d.words(f"part.{part}"))
        _part_table(d, d.sheet, part, parameters)
        d.sheet.row += 1


def sheets(d: Draft) -> list[tuple[str, Sheet]]:
    """The same with a sheet for each part; the first one holds the machine and the bearings."""
    found = _features(d)
    pairs(d, d.whole)
    _part_table(d, d.sheet, "bearing", found["bearing"])
    made = [(d.words("part.bearing"), d.sheet)]
    for part in ("shaft", "housing"):
        sheet = Sheet()
        _part_table(d, sheet, part, found[part])
        made.append((d.words(f"part.{part}"), sheet))
    return made
