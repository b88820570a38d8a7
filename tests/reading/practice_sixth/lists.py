"""Long lists, attribute exports, rows and sections by part, sheets by part or position, inspection lists."""

import re
import unicodedata

from practice_sixth.fill import (
    Filler,
    cell_text,
    foot,
    heading,
    label,
    sheet_name,
    shown,
    title_block,
    unit_note,
    vague_column,
)
from practice_sixth.pen import Book, Column, Sheet, columns_of
from practice_sixth.trade import FEATURES, SIDES, group_of
from practice_sixth.words_values import LIST_HEADS

#: What a list of characteristics states of the bearing itself.
INSPECTED = ("bearing_designation", "bore_diameter", "outside_diameter", "ring_width")


def _lists(book: Book, vague: bool) -> tuple[list[Column], list[Column]]:
    columns = columns_of(book.style, book.meaning, book.meaning.columns)
    if vague and (extra := vague_column(book.style, book.meaning, book.style.rng)):
        columns.append(extra)
    return columns, columns_of(book.style, book.meaning, book.meaning.general)


def _heads(book: Book) -> list[str]:
    return [book.style.fits(word) for word in LIST_HEADS[book.style.language]]


def long_list(book: Book, vague: bool) -> str:
    """A row a value: machine, position, name, value, unit; or the position in the name; or in a line of its own."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler, sheet = Filler(book), Sheet(sheet_name(style))
    book.sheets.append(sheet)
    columns, general = _lists(book, vague)
    kind = rng.choice(("columns", "in the name", "lines")) if len(meaning.machines) == 1 else "columns"
    names = _heads(book)
    row = title_block(filler, sheet, [], False) if style.unit_place == "title" or kind != "columns" else 1
    units = style.unit_place == "row"
    lead = ["machine", "station"] if kind == "columns" else []
    at = len(lead) + 1
    for k, name in enumerate(lead):
        sheet.put(row, k + 1, style.words(name)[0])
    sheet.put(row, at, names[0])
    sheet.put(row, at + 1, names[1])
    if units:
        sheet.put(row, at + 2, names[2])
    row += 1
    for m, places in enumerate(meaning.stations):
        for s in range(-1, len(places)):
            own = general if s < 0 else columns
            if kind == "lines" and s >= 0:
                word = style.words("station")[0]
                head = sheet.put(row, 1, f"{word} {places[s]}")
                row += 1
            for k, column in enumerate(own):
                text, words = heading(style, column, False)
                if kind == "in the name" and s >= 0:
                    marked = f"{column.full} ({places[s]})" if style.variant % 2 else f"{column.full} {places[s]}"
                    unit = shown(style, column)
                    words, text = [style.headed(marked, unit), marked, *words], style.headed(marked, unit)
                heads = [sheet.put(row, at, text)]
                if kind == "lines" and s >= 0:
                    heads.append(head)
                if kind == "columns":
                    machine = sheet.put(row, 1, meaning.machines[m])
                    if k == 0 and s == (-1 if general else 0):
                        book.state((m, -1, "machine"), meaning.machines[m], "name", [machine], [], [])
                    if s >= 0:
                        place = sheet.put(row, 2, places[s])
                        if k == 0:
                            book.state((m, s, "station"), places[s], "name", [place], [], [])
                if units:
                    heads.append(sheet.put(row, at + 2, column.unit or "-"))
                filler.put(sheet, row, at + 1, m, s, column, heads, words)
                row += 1
    foot(filler, sheet, row)
    filler.finish()
    return f"long list, position {kind}"


def _code(column: Column) -> str:
    """Internal name of an attribute."""
    short = "".join(part[:4] for part in column.parameter.split("_")).upper()
    return f"{short}_{column.aspect[:3].upper()}" if column.aspect != "value" else short


def attributes(book: Book, vague: bool) -> str:
    """An attribute export: object, attribute, value, unit, with columns of the system around them."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler, sheet = Filler(book), Sheet("Attributes")
    book.sheets.append(sheet)
    columns, general = _lists(book, vague)
    names = _heads(book)
    with_code = rng.random() < 0.5
    titles = [style.words("machine")[0], style.words("station")[0], names[3]]
    titles += [*([names[4]] if with_code else []), names[1], names[2]]
    for k, title in enumerate(titles):
        sheet.put(1, k + 1, title)
    value_at = 5 if with_code else 4
    row = 2
    for m, places in enumerate(meaning.stations):
        for s in range(-1, len(places)):
            for k, column in enumerate(general if s < 0 else columns):
                sheet.put(row, 1, meaning.machines[m])
                if s >= 0:
                    place = sheet.put(row, 2, places[s])
                    if k == 0:
                        book.state((m, s, "station"), places[s], "name", [place], [], [])
                heads = [sheet.put(row, 3, column.full)]
                if with_code:
                    sheet.put(row, 4, _code(column))
                heads.append(sheet.put(row, value_at + 1, column.unit))
                filler.put(sheet, row, value_at, m, s, column, heads, [column.full])
                row += 1
    filler.finish()
    return "attribute export"


def _bare(columns: list[Column], side: str) -> list[Column]:
    return [c for c in columns if c.parameter != "fit_pair" and group_of(c.parameter) == side]


def part_rows(book: Book, vague: bool) -> str:
    """One row a part: shaft, housing and bearing of each position share the columns of seat and shoulder."""
    style, meaning = book.style, book.meaning
    filler, sheet = Filler(book), Sheet(sheet_name(style))
    book.sheets.append(sheet)
    columns, general = _lists(book, False)
    row = title_block(filler, sheet, general if len(meaning.machines) == 1 else [], False)
    single = len(meaning.machines) == 1
    lead = ([] if single else ["machine"]) + ["station", "part"]
    cols: dict[tuple[str, str], int] = {}
    head_at: dict[int, tuple[str, list[str]]] = {}
    for k, name in enumerate(lead):
        sheet.put(row, k + 1, style.words(name)[0])
    units_row = row + 1 if style.unit_place == "row" else 0
    others = [c for c in columns if group_of(c.parameter) in ("bearing", "service")]
    shared: list[Column] = []
    for name in ("seat_diameter", *FEATURES):
        by_side = [[c for c in columns if c.parameter == f"{side}_{name}"] for side in SIDES]
        shared += by_side[0] or by_side[1]
    if not single:
        others += general
    for at, c in enumerate([*others, *shared], len(lead) + 1):
        key = c.parameter if c in others else re.sub("^(shaft|housing)_", "", c.parameter)
        cols[key, c.aspect] = at
        text, words = heading(style, c, group_of(c.parameter) in ("shaft", "housing", "bearing"))
        head_at[at] = (sheet.put(row, at, text), words)
        if units_row:
            sheet.put(units_row, at, c.unit or "-")
    row += 2 if units_row else 1
    for m, places in enumerate(meaning.stations):
        for s, place in enumerate(places):
            for part in ("bearing", "shaft", "housing"):
                for k, text in enumerate(([] if single else [meaning.machines[m]]) + [place, style.group(part)]):
                    own = sheet.put(row, k + 1, text)
                    if k == len(lead) - 2 and part == "bearing":
                        book.state((m, s, "station"), place, "name", [own], [], [])
                group = others if part == "bearing" else _bare(columns, part)
                for c in group:
                    if c in general and s:
                        continue
                    key = c.parameter if part == "bearing" else c.parameter.removeprefix(part + "_")
                    at = cols[key, c.aspect]
                    head, words = head_at[at]
                    filler.put(sheet, row, at, m, -1 if c in general else s, c, [head], words)
                row += 1
    foot(filler, sheet, row)
    filler.finish()
    return "a row a part"


def part_sections(book: Book, vague: bool) -> str:
    """Sections of bearing, shaft, housing below one another, each a small table with a row a position."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler, sheet = Filler(book), Sheet("Sections")
    book.sheets.append(sheet)
    columns, general = _lists(book, vague)
    single = len(meaning.machines) == 1
    row = title_block(filler, sheet, general if single else [], False)
    lead = ([] if single else ["machine"]) + ["station"]
    for part in rng.choice((("bearing", "shaft", "housing", "service"), ("shaft", "housing", "bearing", "service"))):
        own = [c for c in columns if (group_of(c.parameter) if c.parameter != "fit_pair" else "housing") == part]
        if part == "service":
            own += [c for c in columns if c.parameter.startswith("vague")] + ([] if single else general)
        if not own:
            continue
        section = sheet.put(row, 1, style.group(part))
        row += 1
        heads: dict[int, tuple[list[str], list[str]]] = {}
        for k, name in enumerate(lead):
            sheet.put(row, k + 1, style.words(name)[0])
        for at, c in enumerate(own, len(lead) + 1):
            text, words = heading(style, c, c not in general)
            heads[at] = ([sheet.put(row, at, text), section], words)
        row += 1
        if style.unit_place == "row":
            for at, c in enumerate(own, len(lead) + 1):
                sheet.put(row, at, c.unit or "-")
            row += 1
        for m, places in enumerate(meaning.stations):
            for s, place in enumerate(places):
                for k, text in enumerate(([] if single else [meaning.machines[m]]) + [place]):
                    sheet.put(row, k + 1, text)
                for at, c in enumerate(own, len(lead) + 1):
                    if c in general and s:
                        continue
                    filler.put(sheet, row, at, m, -1 if c in general else s, c, *heads[at])
                row += 1
        row += 1
    foot(filler, sheet, row - 1)
    filler.finish()
    return "sections by part"


def part_sheets(book: Book, vague: bool) -> str:
    """A sheet a part, a column a position; each office fills other columns before them."""
    style, meaning = book.style, book.meaning
    filler = Filler(book)
    columns, general = _lists(book, vague)
    names = _heads(book)
    for number, part in enumerate(("shaft", "housing", "bearing")):
        sheet = Sheet(style.group(part))
        book.sheets.append(sheet)
        row = title_block(filler, sheet, general, False) if number == 0 else 1
        if number and style.unit_place in ("title", "foot"):
            sheet.put(row, 1, unit_note(style))
            row += 1
        own = [c for c in columns if group_of(c.parameter) == part and c.parameter != "fit_pair"]
        if part == "bearing":
            own += [c for c in columns if group_of(c.parameter) == "service" or c.parameter.startswith("vague")]
        name_at, first = (1, 2) if number == 0 else (2, 4) if number == 1 else (3, 6)
        if number:
            sheet.put(row, 1, label(style, 5))
        if number == 2:
            sheet.put(row, 2, label(style, 2))
        sheet.put(row, name_at, names[0])
        if style.unit_place == "row" and number:
            sheet.put(row, name_at + 1, names[2])
        for s, place in enumerate(meaning.stations[0]):
            address = sheet.put(row, first + s, place)
            if number == 0:
                book.state((0, s, "station"), place, "name", [address], [], [])
        for c in own:
            row += 1
            text, words = heading(style, c, True)
            if number:
                sheet.put(row, 1, str(row))
            if number == 2:
                sheet.put(row, 2, label(style, 7))
            if style.unit_place == "row":
                if number:
                    sheet.put(row, name_at + 1, c.unit or "-")
                else:
                    text = style.headed(text, c.unit)
            heads = [sheet.put(row, name_at, text)]
            for s in range(len(meaning.stations[0])):
                filler.put(sheet, row, first + s, 0, s, c, heads, words)
        if number == 0 and style.unit_place == "foot":
            foot(filler, sheet, row + 1)
    filler.finish()
    return "a sheet a part"


def position_sheets(book: Book, vague: bool) -> str:
    """A sheet a position with name, value, unit; one more for the machine."""
    style, meaning = book.style, book.meaning
    filler = Filler(book)
    columns, general = _lists(book, vague)
    names = _heads(book)
    sheet = Sheet(style.group("machine"))
    book.sheets.append(sheet)
    word = style.words("machine")[0]
    head, own = sheet.put(1, 3, word), sheet.put(1, 5, meaning.machines[0])
    book.state((0, -1, "machine"), meaning.machines[0], "title block", [own], [head], [word])
    for k, name in enumerate((label(style, 5), label(style, 2), names[0], names[2], names[1])):
        sheet.put(3, k + 1, name)
    for k, c in enumerate(general):
        row = 4 + k
        sheet.put(row, 1, str(k + 1))
        sheet.put(row, 2, label(style, 7))
        heads = [sheet.put(row, 3, c.full), sheet.put(row, 4, c.unit or "-")]
        filler.put(sheet, row, 5, 0, -1, c, heads, [c.full])
    for s, place in enumerate(meaning.stations[0]):
        sheet = Sheet(f"{style.words('station')[0]} {place}"[:31])
        book.sheets.append(sheet)
        for k, name in enumerate((names[0], names[1], names[2])):
            sheet.put(1, k + 1, name)
        for k, c in enumerate(columns):
            heads = [sheet.put(2 + k, 1, c.full), sheet.put(2 + k, 3, c.unit or "-")]
            filler.put(sheet, 2 + k, 2, 0, s, c, heads, [c.full])
    filler.finish()
    return "a sheet a position"


def inspection(book: Book, vague: bool) -> str:
    """A list of characteristics of a first article: feature, kind, requirement, measured value, result."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler, sheet = Filler(book), Sheet("FAI")
    book.sheets.append(sheet)
    columns, general = _lists(book, False)
    names = _heads(book)
    row = title_block(filler, sheet, general, False)
    feature = {"en": "Feature", "de": "Element", "fr": "Élément", "it": "Elemento", "es": "Elemento", "ja": "部位",
               "zh": "部位", "ru": "Элемент"}[style.language]  # fmt: skip
    titles = (label(style, 5), style.fits(feature), names[0], names[5], names[2], names[6], names[7])
    for k, text in enumerate(titles):
        sheet.put(row, k + 1, text)
    number = 1
    for s, place in enumerate(meaning.stations[0]):
        for c in columns:
            part = group_of(c.parameter)
            if part not in ("shaft", "housing") and c.parameter not in INSPECTED:
                continue
            row += 1
            sheet.put(row, 1, str(number))
            heads = [sheet.put(row, 2, f"{style.group(part)} {place}"), sheet.put(row, 3, c.sub)]
            heads.append(sheet.put(row, 5, c.unit or "-"))
            filler.put(sheet, row, 4, 0, s, c, heads, [c.sub, f"{style.group(part)} {place}"])
            sheet.put(row, 6, _measured(book, s, c, rng.random()))
            sheet.put(row, 7, "OK")
            number += 1
    filler.finish()
    return "inspection list"


def _measured(book: Book, s: int, column: Column, chance: float) -> str:
    """A plausible measured value of a characteristic."""
    value = book.meaning.values.get((0, s, column.parameter))
    if isinstance(value, str) or value is None:
        return cell_text(book.style, book.meaning, 0, s, column)
    if isinstance(value, float | int) and column.quantity == "length":
        return book.style.number(round(float(value) - 0.006 * chance, 3))
    if isinstance(value, float | int):
        factor = book.style.units.get(column.quantity, ("", 1.0))[1]
        return book.style.number(
            round(float(value) / factor * (0.4 + 0.4 * chance), 4 if factor > 0.01 and column.quantity != "ra" else 2)
        )
    low, high = value.lower or 0.0, value.upper or 0.0
    return book.style.number(round(value.nominal + low + (high - low) * chance, 4))


def ascii_name(text: str) -> str:
    """A name as an identifier: without accents, words joined."""
    plain = unicodedata.normalize("NFKD", text.replace("ß", "ss").replace("Ø", "diam "))
    plain = "".join(sign for sign in plain if not unicodedata.combining(sign))
    return re.sub(r"[^\w]+", "_", plain).strip("_")
