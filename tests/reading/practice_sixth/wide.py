"""Wide tables with a row a position, transposed ones, and design tables with a row a machine."""

from practice_sixth.fill import Filler, foot, heading, label, sheet_name, title_block, unit_note, vague_column
from practice_sixth.pen import Book, Column, Sheet, columns_of

#: Values that an office leaves open at one position or another.
MAY_LACK = ("shaft_fillet_radius", "housing_fillet_radius", "axial_load", "limiting_speed", "housing_seat_runout")


def _columns(book: Book, vague: bool) -> tuple[list[Column], list[Column]]:
    columns = columns_of(book.style, book.meaning, book.meaning.columns)
    if vague and (extra := vague_column(book.style, book.meaning, book.style.rng)):
        columns.append(extra)
    return columns, columns_of(book.style, book.meaning, book.meaning.general)


def wide(book: Book, vague: bool) -> str:
    """One row a position; what kind of heading it has."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler, sheet = Filler(book), Sheet(sheet_name(style))
    book.sheets.append(sheet)
    columns, general = _columns(book, vague)
    single = len(meaning.machines) == 1
    grouped = style.short
    block = style.unit_place == "title" or rng.random() < (0.75 if single else 0.4)
    row = title_block(filler, sheet, general if single else [], rng.random() < 0.15) if block else 1
    in_rows = [] if block and single else general
    lead: list[str] = []
    if not (block and single):
        lead.append("machine")
    lead.append("station")
    numbered = rng.random() < 0.35
    lead_cells: dict[str, tuple[int, str, str]] = {}
    top = row
    last = top + (1 if grouped else 0)
    col = 1
    if numbered:
        sheet.put(last, col, label(style, 5))
        col += 1
    for name in lead:
        word = style.words(name)[0]
        lead_cells[name] = (col, sheet.put(last, col, word), word)
        col += 1
    placed: list[tuple[int, Column, list[str], list[str]]] = []
    previous, start, group_at = "", col, ""
    for column in [*in_rows, *columns]:
        text, words = heading(style, column, grouped)
        heads = [sheet.put(last, col, text)]
        if grouped:
            if column.group != previous:
                sheet.merge(top, start, col - 1) if previous else None
                previous, start = column.group, col
                group_at = sheet.put(top, col, column.group)
            heads.append(group_at)
        placed.append((col, column, heads, words))
        col += 1
    if grouped and previous:
        sheet.merge(top, start, col - 1)
    remark = rng.random() < 0.4
    if remark:
        sheet.put(last, col, label(style, 4))
    row = last + 1
    if style.unit_place == "row":
        for at, column, heads, _ in placed:
            heads.append(
                sheet.put(row, at, f"[{column.unit}]" if style.variant % 2 and column.unit else column.unit or "-")
            )
        row += 1
    repeat = rng.random() < 0.6
    count = 0
    for m, places in enumerate(meaning.stations):
        first = row
        for s, place in enumerate(places):
            count += 1
            if numbered:
                sheet.put(row, 1, str(count))
            if "machine" in lead_cells and (repeat or row == first):
                at, head, word = lead_cells["machine"]
                own = sheet.put(row, at, meaning.machines[m])
                if row == first:
                    book.state((m, -1, "machine"), meaning.machines[m], "name", [own], [head], [word])
            at, head, word = lead_cells["station"]
            book.state((m, s, "station"), place, "name", [sheet.put(row, at, place)], [head], [word])
            for at, column, heads, words in placed:
                if column in in_rows:
                    if repeat or row == first:
                        filler.put(sheet, row, at, m, -1, column, heads, words)
                    continue
                if column.parameter in MAY_LACK and rng.random() < 0.05:
                    sheet.put(row, at, "-")
                    continue
                filler.put(sheet, row, at, m, s, column, heads, words)
            if remark and rng.random() < 0.4:
                sheet.put(row, col, label(style, 6))
            row += 1
        if not repeat and len(places) > 1 and "machine" in lead_cells:
            for at in [lead_cells["machine"][0], *(a for a, c, _, _ in placed if c in in_rows)]:
                sheet.merged.append((first, at, row - 1, at))
    foot(filler, sheet, row)
    filler.finish()
    return "wide, two heading rows" if grouped else "wide"


def transposed(book: Book, vague: bool) -> str:
    """A column a position, a row a parameter."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler, sheet = Filler(book), Sheet(sheet_name(style))
    book.sheets.append(sheet)
    columns, general = _columns(book, vague)
    single = len(meaning.machines) == 1
    block = style.unit_place == "title" or rng.random() < 0.5
    row = title_block(filler, sheet, general if single and style.variant % 2 else [], False) if block else 1
    rest = [] if block and single and style.variant % 2 else general
    units = style.unit_place == "row"
    first = 3 if units else 2
    if not single or not block:
        word = style.words("machine")[0]
        head = sheet.put(row, 1, word)
        col = first
        for m, places in enumerate(meaning.stations):
            own = sheet.put(row, col, meaning.machines[m])
            book.state((m, -1, "machine"), meaning.machines[m], "name", [own], [head], [word])
            sheet.merge(row, col, col + len(places) - 1)
            col += len(places)
        row += 1
    word = style.words("station")[0]
    head = sheet.put(row, 1, word)
    if units:
        sheet.put(row, 2, {"de": "Einheit", "en": "Unit", "fr": "Unité", "it": "Unità", "es": "Unidad", "ja": "単位",
                           "zh": "单位", "ru": "Ед. изм."}[style.language])  # fmt: skip
    col = first
    for m, places in enumerate(meaning.stations):
        for s, place in enumerate(places):
            book.state((m, s, "station"), place, "name", [sheet.put(row, col, place)], [head], [word])
            col += 1
    row += 1
    grouped = style.short
    previous = ""
    for column in [*rest, *columns]:
        if grouped and column.group != previous:
            previous = column.group
            group_at = sheet.put(row, 1, column.group)
            row += 1
        text, words = heading(style, column, grouped)
        heads = [sheet.put(row, 1, text), *([group_at] if grouped else [])]
        if units:
            heads.append(sheet.put(row, 2, column.unit or "-"))
        col = first
        for m, places in enumerate(meaning.stations):
            for s in range(len(places)):
                if column in rest:
                    if s == 0:
                        filler.put(sheet, row, col, m, -1, column, heads, words)
                        sheet.merge(row, col, col + len(places) - 1)
                else:
                    filler.put(sheet, row, col, m, s, column, heads, words)
                col += 1
        row += 1
    foot(filler, sheet, row)
    filler.finish()
    return "transposed, sections" if grouped else "transposed"


def design_table(book: Book, vague: bool) -> str:
    """One row a machine; the names of the columns carry the position before or after."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler, sheet = Filler(book), Sheet("DesignTable")
    book.sheets.append(sheet)
    columns, general = _columns(book, vague)
    before = style.variant % 2 == 0
    join = rng.choice(("_", "_", ".", " "))
    row = 1
    if style.unit_place == "title":
        sheet.put(row, 1, unit_note(style))
        row += 2
    word = style.words("machine")[0]
    head = sheet.put(row, 1, word)
    body = row + (2 if style.unit_place == "row" else 1)
    for m, name in enumerate(meaning.machines):
        book.state((m, -1, "machine"), name, "name", [sheet.put(body + m, 1, name)], [head], [word])
    col = 2
    places = meaning.stations[0]
    for s, column in [*((-1, c) for c in general), *((s, c) for s in range(len(places)) for c in columns)]:
        plain = column.full
        if join in "_.":
            plain = plain.replace(" ", "_")
        mark = places[s].replace(" ", "_") if join in "_." else places[s]
        name = plain if s < 0 else (f"{mark}{join}{plain}" if before else f"{plain}{join}{mark}")
        from_style, words = heading(style, column, False)
        unit = from_style[len(column.full) :] if from_style != column.full else ""
        heads = [sheet.put(row, col, style.fits(name + unit))]
        if style.unit_place == "row":
            heads.append(sheet.put(row + 1, col, column.unit or "-"))
        for m in range(len(meaning.machines)):
            filler.put(sheet, body + m, col, m, s, column, heads, [name + unit, name, *words])
        col += 1
    foot(filler, sheet, body + len(meaning.machines))
    filler.finish()
    return "design table, prefixes" if before else "design table, suffixes"
