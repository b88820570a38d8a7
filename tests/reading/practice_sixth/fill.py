"""What goes into the cells, and the note of what they state; shared by all layouts."""

from collections.abc import Iterable
from random import Random

from practice.grammar import Size, Value

from practice_sixth.pen import Book, Column, Sheet, Style, number_cell, size_texts, written
from practice_sixth.trade import QUANTITIES, SEATS, Meaning
from practice_sixth.words_values import CHOICES, LABELS, LANGUAGES, SAME_UNIT_NOTES, TITLES, UNIT_NOTES, VAGUE

#: What a vague heading may mean, and the parameters that must not stand in the table beside it.
VAGUE_MEANS = {
    "load": ("radial_load|axial_load", "load", ("radial_load", "axial_load")),
    "runout": (
        "shaft_seat_runout|shaft_shoulder_runout|housing_seat_runout|housing_shoulder_runout", "form",
        ("shaft_seat_runout", "shaft_shoulder_runout", "housing_seat_runout", "housing_shoulder_runout"),
    ),
    "roughness": (
        "shaft_seat_roughness|housing_seat_roughness", "ra", ("shaft_seat_roughness", "housing_seat_roughness"),
    ),
    "radius": (
        "shaft_fillet_radius|housing_fillet_radius", "length", ("shaft_fillet_radius", "housing_fillet_radius"),
    ),
    "temperature": (
        "operating_temperature", "temperature",
        ("operating_temperature", "shaft_temperature", "housing_temperature", "temperature_max", "ambient_temperature",
         "temperature_min"),
    ),
}  # fmt: skip


def vague_column(style: Style, meaning: Meaning, rng: Random, kinds: Iterable[str] = VAGUE_MEANS) -> Column | None:
    """A column that can only be asked about (or a temperature, which may be), with its values in the meaning."""
    stated = {*meaning.columns, *meaning.general}
    free = [kind for kind in kinds if not stated & set(VAGUE_MEANS[kind][2])]
    if not free:
        return None
    kind = rng.choice(free)
    _, quantity, _ = VAGUE_MEANS[kind]
    key = f"vague {kind}"
    for m, places in enumerate(meaning.stations):
        for s in range(len(places)):
            values: dict[str, tuple[float, ...]] = {
                "load": (80.0, 120.0, 250.0, 400.0), "runout": (0.004, 0.006, 0.008), "roughness": (0.4, 0.8),
                "radius": (0.2, 0.3, 0.4), "temperature": (55.0, 60.0, 70.0),
            }  # fmt: skip
            if meaning.inch:
                values |= {"roughness": (0.4064, 0.8128), "runout": (0.00508, 0.00762), "radius": (0.381, 0.508)}
            meaning.values[m, s, key] = rng.choice(values[kind])
    QUANTITIES[key] = quantity
    head = style.fits(VAGUE[kind][LANGUAGES.index(style.language)])
    return Column(key, "value", head, style.group("machine"), head, style.units[quantity][0], quantity)


def shown(style: Style, column: Column) -> str:
    """The unit that stands in the heading of a column, if any."""
    if not column.unit:
        return ""
    if style.unit_place in ("cell", "row", "number format"):
        return ""
    if style.unit_place in ("title", "foot", "none") and column.quantity in ("length", "form"):
        return ""
    return column.unit


def cell_text(style: Style, meaning: Meaning, m: int, s: int, column: Column) -> str:
    """What stands in the cell of a column for a position (-1: the machine)."""
    name = column.parameter
    in_cell = style.unit_place == "cell"
    tail = f" {column.unit}" if in_cell and column.unit else ""
    if name == "fit_pair":
        shaft, housing = (meaning.values[m, s, seat] for seat in SEATS)
        assert isinstance(shaft, Size) and isinstance(housing, Size)
        return f"{shaft.tolerance_class}{' / ' if style.variant % 2 else '/'}{housing.tolerance_class}"
    if name == "size_text":
        mark = style.fits("×") if style.variant % 2 else "x"
        sizes = (meaning.values[m, s, part] for part in ("bore_diameter", "outside_diameter", "ring_width"))
        return mark.join(written(style, "bore_diameter", float(x))[0] for x in sizes) + tail  # type: ignore[arg-type]
    value = meaning.values[m, s, name]
    if isinstance(value, Size):
        text = size_texts(style, name, value)[0][column.aspect]
        if tail and style.tolerance == "class in cell":
            return text.replace(value.tolerance_class, "").strip() + tail + " " + value.tolerance_class
        return text + tail
    if isinstance(value, float | int):
        text = written(style, name, float(value))[0]
        if name == "balance_grade" and style.variant % 2:
            return f"G{text}" if style.language != "ru" else f"G {text}"
        return text + tail
    if name in CHOICES or name == "tolerance_class":
        return style.choice(name, value)
    return style.fits(value)


class Filler:
    """Writes cells and gathers what they state."""

    def __init__(self, book: Book) -> None:
        self.book = book
        self.notes: dict[tuple[int, int, str], list[tuple[list[str], list[str], list[str]]]] = {}

    def put(
        self, sheet: Sheet, row: int, col: int, m: int, s: int, column: Column, heads: list[str], words: list[str]
    ) -> str:  # fmt: skip
        """Write one cell of a value; its address."""
        style = self.book.style
        text = cell_text(style, self.book.meaning, m, s, column)
        number_format = ""
        content: str | float = text
        if style.unit_place == "number format" and column.unit:
            content = number_cell(style, text)
            places = len(text.replace(style.decimal, ".").partition(".")[2])
            number_format = (
                f'0{"." if places else ""}{"0" * places}" {column.unit}"' if not isinstance(content, str) else ""
            )
            if isinstance(content, str):
                content = f"{text} {column.unit}"
        address = sheet.put(row, col, content, number_format)
        self.note(m, s, column.parameter, [address], heads, words)
        return address

    def note(self, m: int, s: int, parameter: str, own: list[str], heads: list[str], words: list[str]) -> None:
        """Note that cells belong to a value."""
        self.notes.setdefault((m, s, parameter), []).append((own, heads, words))

    def finish(self) -> None:
        """State everything that was written."""
        book, style = self.book, self.book.style
        pairs = {key: parts for key, parts in self.notes.items() if key[2] == "fit_pair"}
        for (m, s, name), parts in self.notes.items():
            if name == "fit_pair":
                continue
            parts = parts + (pairs.get((m, s, "fit_pair"), []) if name in SEATS else [])
            own, heads, words = ([x for part in parts for x in part[k]] for k in range(3))
            if name.startswith("vague "):
                kind = name.removeprefix("vague ")
                number = written(style, name, float(book.meaning.values[m, s, name]))[1]  # type: ignore[arg-type]
                verdict = "either" if kind == "temperature" else "ask"
                book.state((m, s, VAGUE_MEANS[kind][0]), number, "vague heading", own, heads, words, verdict)
                continue
            if name == "size_text":
                for part in ("bore_diameter", "outside_diameter", "ring_width"):
                    value = written(style, part, float(book.meaning.values[m, s, part]))[1]  # type: ignore[arg-type]
                    book.state((m, s, part), value, "d x D x B in one cell", own, heads, words)
                continue
            book.state((m, s, name), *_stated(style, name, book.meaning.values[m, s, name]), own, heads, words)
        for (m, s, _), parts in pairs.items():
            for seat in SEATS:
                if (m, s, seat) not in self.notes:
                    own, heads, words = ([x for part in parts for x in part[k]] for k in range(3))
                    book.state((m, s, seat), *_stated(style, seat, book.meaning.values[m, s, seat]), own, heads, words)


def _stated(style: Style, name: str, value: Value) -> tuple[Value, str]:
    if isinstance(value, Size):
        form = "fit pair column" if style.tolerance == "fit pair" else style.tolerance
        return size_texts(style, name, value)[1], form
    if isinstance(value, float | int):
        return written(style, name, float(value))[1], "number"
    if name in CHOICES or name == "tolerance_class":
        return value, "choice"
    return style.fits(value), "text"


def heading(style: Style, column: Column, grouped: bool) -> tuple[str, list[str]]:
    """The heading of a column as written, and the words by which it may be named."""
    text = column.sub if grouped else column.full
    unit = shown(style, column)
    return style.headed(text, unit), [style.headed(text, unit), text]


def unit_note(style: Style) -> str:
    """The sentence that states the units of lengths."""
    mm, um = style.units["length"][0], style.units["form"][0]
    mm, um = ("inches" if unit == "in" else unit for unit in (mm, um))
    notes = SAME_UNIT_NOTES if mm == um else UNIT_NOTES
    return style.fits(notes[style.language].format(mm=mm, um=um))


def label(style: Style, which: int) -> str:
    """A word of a title block or a foot."""
    return style.fits(LABELS[style.language][which])


def title_block(filler: Filler, sheet: Sheet, general: list[Column], as_text: bool = False) -> int:
    """Title, drawing, machine-wide values and notes above a table; the first free row (one is left empty)."""
    book, style = filler.book, filler.book.style
    rng = style.rng
    title = style.fits(rng.choice(TITLES[style.language]))
    single = len(book.meaning.machines) == 1
    row = 1
    if single:
        sheet.put(row, 1, title)
        row += 1
        word = style.words("machine")[0]
        head = sheet.put(row, 1, word)
        own = sheet.put(row, 2, book.meaning.machines[0])
        book.state((0, -1, "machine"), book.meaning.machines[0], "title block", [own], [head], [word])
        row += 1
        for name, text in (
            (
                "drawing_number",
                f"{rng.choice(('TK', 'LZ', 'GM', 'RS'))}-{rng.randint(10200, 98700)}-{rng.randint(10, 40)}",
            ),
            ("drawing_revision", rng.choice("ABCDE")),
        ):
            if name == "drawing_revision" and rng.random() < 0.4:
                continue
            word = style.words(name)[0]
            head, own = sheet.put(row, 1, word), sheet.put(row, 2, text)
            book.state((0, -1, name), text, "title block", [own], [head], [word])
            row += 1
        for column in general:
            text, words = heading(style, column, False)
            head = ""
            if as_text:
                unit = f" {column.unit}" if column.unit and style.unit_place != "cell" else ""
                written_text = f"{column.full}: {cell_text(style, book.meaning, 0, -1, column)}{unit}"
                filler.note(0, -1, column.parameter, [sheet.put(row, 1, style.fits(written_text))], [], words)
            else:
                own_unit = column.unit if style.unit_place == "row" else ""
                head = sheet.put(row, 1, text)
                filler.put(sheet, row, 2, 0, -1, column, [head], words)
                if own_unit:
                    sheet.put(row, 3, own_unit)
            row += 1
    else:
        sheet.put(row, 1, title)
        row += 1
    if rng.random() < 0.6:
        sheet.put(row, 1, label(style, 0))
        sheet.put(row, 2, rng.choice(("mk", "TS", "L. W.", "ro")))
        row += 1
        sheet.put(row, 1, label(style, 1))
        sheet.put(row, 2, f"2026-0{rng.randint(1, 9)}-{rng.randint(10, 28)}")
        row += 1
    if style.unit_place == "title":
        sheet.put(row, 1, unit_note(style))
        row += 1
    return row + 1


def foot(filler: Filler, sheet: Sheet, row: int) -> None:
    """Notes below a table."""
    style = filler.book.style
    if style.unit_place == "foot":
        sheet.put(row + 1, 1, unit_note(style))
        row += 1
    if style.rng.random() < 0.5:
        sheet.put(row + 1, 1, f"{label(style, 2)}: {label(style, 3)}")


def sheet_name(style: Style) -> str:
    """What a spreadsheet of this language calls its first sheet, or an export its only one."""
    first = {"de": "Tabelle1", "fr": "Feuil1", "it": "Foglio1", "es": "Hoja1", "ru": "Лист1"}.get(
        style.language, "Sheet1"
    )
    return style.rng.choice((first, first, "Export"))
