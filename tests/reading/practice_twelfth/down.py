"""Layouts whose names stand beside the values: long lists, blocks, side by side, melted frames."""

from collections.abc import Iterator

from .sheets import Draft
from .shown import Item


def _entries(d: Draft, parameters: list[str] | None = None) -> Iterator[tuple[int, list[Item]]]:
    """Position (-1: the machine) and the cells of each parameter, in the order of a list."""
    for p in d.whole:
        yield -1, d.items(0, -1, p)
    by_position = d.office.rng.random() < 0.6
    inner = d.with_noise(parameters or d.parts)
    places = range(len(d.stations))
    pairs = [(s, p) for s in places for p in inner] if by_position else [(s, p) for p in inner for s in places]
    for s, p in pairs:
        yield s, d.items(0, s, p)


def _name(d: Draft, item: Item, s: int, dotted: bool) -> str:
    """The name in a list: free, or a path with the position in front."""
    position = d.stations[s] if s >= 0 else ""
    if not dotted:
        return d.office.prefix + d.head(item, position, units=d.office.place == "heading")
    name = d.head(item, units=d.office.place == "heading")
    root = (
        d.office.cased(d.words("part.bearing") + " " + position)
        if position
        else d.office.cased(d.words("part.machine"))
    )
    return f"{root}.{name}"


def listed(d: Draft, note: bool = False, dotted: bool = False, index: bool = False, unit_first: bool = False) -> None:
    """Name, value, unit, one below the other; ``note``: a column of remarks."""
    sheet, words, rng = d.sheet, d.words, d.office.rng
    column = d.office.place == "column"
    o = int(index)
    value_at, unit_at = (2 + o, 1 + o) if column and unit_first else (1 + o, 2 + o)
    running = 0
    if index:
        sheet.put(sheet.row, 0, words("col.index"))
    sheet.put(sheet.row, o, words("col.name"))
    sheet.put(sheet.row, value_at, words("col.value"))
    if column:
        sheet.put(sheet.row, unit_at, words("col.unit"))
    if note:
        sheet.put(sheet.row, 2 + column + o, words("col.note"))
    sheet.row += 1
    for s, items in _entries(d):
        for item in items:
            running += 1
            if index:
                sheet.put(sheet.row, 0, str(running))
            sheet.put(sheet.row, o, _name(d, item, s, dotted), item, head=True)
            sheet.put(sheet.row, value_at, item.text, item)
            if column:
                sheet.put(sheet.row, unit_at, item.unit, item, head=True)
            if note and rng.random() < 0.25:
                sheet.put(sheet.row, 2 + column + o, words.any("notes"))
            sheet.row += 1


def toleranced(d: Draft) -> None:
    """A list with columns for class and deviations, or for the limits, beside the nominal value."""
    sheet, words = d.sheet, d.words
    column = d.office.place == "column"
    aspects = {
        "class column": ["class"],
        "dev columns": ["upper", "lower"],
        "um columns": ["upper", "lower"],
        "um cell": ["dev"],
        "class+dev columns": ["class", "upper", "lower"],
        "limit columns": ["min", "max"],
    }[d.office.seat]
    sheet.put(sheet.row, 0, words("col.name"))
    sheet.put(sheet.row, 1, words("aspect.nominal") if d.office.rng.random() < 0.5 else words("col.value"))
    if column:
        sheet.put(sheet.row, 2, words("col.unit"))
    heads = {}
    micro = d.office.unit("seat_roughness")[1]
    for c, aspect in enumerate(aspects, 2 + column):
        text = words(f"aspect.{aspect}")
        if d.office.seat in ("um columns", "um cell"):
            text = d.office.unit_form.format(n=text, u=micro)
        sheet.put(sheet.row, c, text)
        heads[aspect] = (sheet.row, c)
    sheet.row += 1
    for s, items in _entries(d):
        lead = items[0]
        name = d.office.name(lead.parameter, "value", d.stations[s] if s >= 0 else "")
        unit = d.office.title_unit(lead.unit) if d.office.place == "title" else lead.unit
        if d.office.place in ("heading", "title") and unit:
            name = d.office.unit_form.format(n=name, u=unit)
        sheet.put(sheet.row, 0, name, *items, head=True)
        if column:
            sheet.put(sheet.row, 2, lead.unit, *items, head=True)
        for item in items:
            c = heads[item.aspect][1] if item.aspect in heads else 1
            sheet.put(sheet.row, c, item.text, item)
            if item.aspect in heads:
                sheet.put(*heads[item.aspect], sheet.cells[heads[item.aspect]], item, head=True)
        sheet.row += 1


def part_feature(d: Draft, position_column: bool = False) -> None:
    """Part, feature, value, unit; the position in a column of its own or with the part."""
    sheet, words = d.sheet, d.words
    column = d.office.place == "column"
    heads = [words("col.position")] if position_column else []
    heads += [words("col.part"), words("col.feature"), words("col.value"), *([words("col.unit")] if column else [])]
    sheet.next(*heads)
    join = d.office.rng.choice(["{a} {p}", "{a} ({p})", "{a}, {p}", "{p} / {a}"])
    for s, items in _entries(d):
        position = d.stations[s] if s >= 0 else ""
        for item in items:
            root = item.parameter.split("_")[0]
            noise = item.parameter.startswith("noise:")
            seat = root in ("shaft", "housing") and s >= 0
            part = words(f"part.{root if seat else 'bearing' if s >= 0 and not noise else 'machine'}")
            if seat:
                key = item.parameter if item.parameter.count("_") > 1 else item.parameter + "_diameter"
                feature = d.office.finish(words("feature." + key.split("_", 1)[1]), item.aspect, "")
            else:
                feature = d.office.name(item.parameter, item.aspect)
            if d.office.place == "title":
                unit = d.office.title_unit(item.unit)
                feature = d.office.unit_form.format(n=feature, u=unit) if unit else feature
            else:
                feature = d.office.with_unit(feature, item.unit)
            at = 0
            if position_column:
                sheet.put(sheet.row, 0, position or "-", item, head=True)
                at = 1
            elif position:
                part = join.format(a=part, p=position)
            sheet.put(sheet.row, at, part, item, head=True)
            sheet.put(sheet.row, at + 1, feature, item, head=True)
            sheet.put(sheet.row, at + 2, item.text, item)
            if column:
                sheet.put(sheet.row, at + 3, item.unit, item, head=True)
            sheet.row += 1


def blocks(d: Draft) -> None:
    """Under a sub-heading the values of the machine, then under one each those of the positions."""
    sheet, words = d.sheet, d.words
    column = d.office.place == "column"
    template = d.office.rng.choice(["{b} {p}", "{p}", "{b}: {p}", "{c} {p}", "*** {b} {p} ***", "[{b} {p}]"])
    inner = d.with_noise(d.parts, 2)
    for s in (-1, *range(len(d.stations))):
        title = words("part.machine")
        if s >= 0:
            title = template.format(b=words("part.bearing"), p=d.stations[s], c=words("col.position"))
            if d.stations[s].startswith(words("part.bearing")) or " " in d.stations[s]:
                title = d.stations[s]
        heading = (sheet.row, 0)
        sheet.next(title)
        for p in d.whole if s < 0 else inner:
            for item in d.items(0, s, p):
                sheet.put(sheet.row, 0, d.head(item, units=not column), item, head=True)
                sheet.put(sheet.row, 1, item.text, item)
                if column:
                    sheet.put(sheet.row, 2, item.unit, item, head=True)
                if s >= 0:
                    sheet.put(*heading, title, item, head=True)
                sheet.row += 1
        sheet.row += 1


def side_by_side(d: Draft) -> None:
    """The positions as two lists beside each other under their names; the machine above."""
    sheet = d.sheet
    column = d.office.place == "column"
    for p in d.whole:
        for item in d.items(0, -1, p):
            sheet.put(sheet.row, 0, d.head(item, units=not column), item, head=True)
            sheet.put(sheet.row, 1, item.text, item)
            if column:
                sheet.put(sheet.row, 2, item.unit, item, head=True)
            sheet.row += 1
    sheet.row += 1
    start = sheet.row
    inner = d.with_noise(d.parts, 1)
    wide = 3 + column
    for s, station in enumerate(d.stations):
        at = s * wide
        r = start + 1
        for p in inner:
            for item in d.items(0, s, p):
                sheet.put(start, at, station, item, head=True)
                sheet.put(r, at, d.head(item, units=not column), item, head=True)
                sheet.put(r, at + 1, item.text, item)
                if column:
                    sheet.put(r, at + 2, item.unit, item, head=True)
                r += 1
        sheet.row = r


def melted(d: Draft, shuffled: bool = False) -> None:
    """Machine, position, parameter, value, unit: a frame that was melted."""
    sheet, words, rng = d.sheet, d.words, d.office.rng
    column = d.office.place == "column"
    sheet.next(
        words("machine"),
        words("col.position"),
        words("col.name"),
        words("col.value"),
        *([words("col.unit")] if column else []),
    )
    rows: list[tuple[int, int, Item]] = []
    names = {}
    for m in range(len(d.machines)):
        names[m] = d.items(m, -1, "machine")[0]
        rows += [(m, -1, i) for p in d.whole for i in d.items(m, -1, p)]
        for s in range(len(d.stations)):
            rows += [(m, s, i) for p in d.parts for i in d.items(m, s, p)]
    if shuffled:
        rng.shuffle(rows)
        rows.sort(key=lambda row: (row[0], row[1] >= 0 and row[1]))
    everything = rng.choice(["", "-", "*"])
    for m, s, item in rows:
        sheet.put(sheet.row, 0, names[m].text, names[m])
        sheet.put(sheet.row, 1, d.stations[s] if s >= 0 else everything, item, head=True)
        sheet.put(sheet.row, 2, d.head(item, units=not column), item, head=True)
        sheet.put(sheet.row, 3, item.text, item)
        if column:
            sheet.put(sheet.row, 4, item.unit, item, head=True)
        sheet.row += 1
