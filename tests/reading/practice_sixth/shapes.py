"""Sixty tables: what each is, and how it is made."""

import json
import re
from random import Random
from typing import Any

from practice.grammar import Table

from practice_sixth import lists, wide
from practice_sixth.fill import Filler, cell_text, vague_column
from practice_sixth.pen import Book, Column, Style, choose_units, columns_of, save
from practice_sixth.trade import group_of, mean
from practice_sixth.words_values import GROUPS, MACHINES, PLACES

#: How often firms use each layout: numbers of sixty.
SHARES = (
    ("wide", 24), ("transposed", 7), ("long", 3), ("attributes", 3), ("design", 6), ("rows", 3), ("sections", 3),
    ("part sheets", 3), ("position sheets", 2), ("json records", 2), ("json nested", 2), ("inspection", 2),
)  # fmt: skip
LANGUAGE_SHARES = (("en", 12), ("de", 10), ("ja", 8), ("zh", 8), ("fr", 6), ("it", 5), ("es", 5), ("ru", 6))
INCH_TABLES = 4
TOLERANCE_SHARES = (
    ("class in cell", 12), ("class column", 11), ("deviations in cell", 6), ("deviation columns mm", 6),
    ("deviation columns µm", 6), ("limit columns", 6), ("plus-minus", 3), ("class plus deviations", 5),
    ("limits in cell", 2), ("fit pair", 3),
)  # fmt: skip
#: Layouts in which a fit pair, deviation columns or a units row cannot stand.
ONE_CELL = ("class in cell", "deviations in cell", "class plus deviations")
LEGACY = {
    "en": ("cp1252", "utf-8"), "de": ("cp1252", "cp1252", "utf-8-sig"), "fr": ("cp1252", "utf-8-sig"),
    "it": ("cp1252", "utf-8-sig"), "es": ("cp1252", "utf-8"), "ja": ("shift_jis", "shift_jis", "utf-8-sig"),
    "zh": ("gb18030", "gb18030", "utf-8-sig"), "ru": ("cp1251", "cp1251", "utf-8-sig"),
}  # fmt: skip


def _deal(shares: tuple[tuple[str, int], ...], seed: str) -> list[str]:
    dealt = [name for name, count in shares for _ in range(count)]
    Random(seed).shuffle(dealt)
    return dealt


LAYOUTS = _deal(SHARES, "sixth-layouts")
TONGUES = _deal(LANGUAGE_SHARES, "sixth-languages")
FORMS = _deal(TOLERANCE_SHARES, "sixth-tolerances")


def _inch_numbers() -> tuple[int, ...]:
    fit = [
        k
        for k in range(60)
        if TONGUES[k] == "en" and LAYOUTS[k] in ("wide", "transposed", "design", "long", "sections")
    ]
    return tuple(fit[:INCH_TABLES])


INCH = _inch_numbers()


def _style(rng: Random, index: int) -> Style:
    layout, language = LAYOUTS[index], TONGUES[index]
    inch = index in INCH
    tolerance = FORMS[index]
    if inch:
        tolerance = ("limit columns", "deviations in cell", "plus-minus", "limits in cell")[INCH.index(index)]
    if layout == "inspection":
        tolerance = rng.choice(ONE_CELL)
    if tolerance == "fit pair" and layout in (
        "rows",
        "part sheets",
        "json nested",
        "json records",
        "sections",
        "attributes",
        "position sheets",
    ):
        tolerance = "class column"
    comma = language in ("de", "fr", "it", "es", "ru") and rng.random() < 0.85
    places = ["heading"] * 9 + ["row"] * 5 + ["title"] * 3 + ["cell"] * 2 + ["foot"] * 2 + ["none"]
    place = rng.choice(places)
    suffix, encoding = ".csv", rng.choice(LEGACY[language])
    if "sheets" in layout or rng.random() < 0.36:
        suffix, encoding = ".xlsx", "xlsx"
        if place == "heading" and rng.random() < 0.2 and "sheets" not in layout:
            place = "number format"
    elif rng.random() < 0.14:
        suffix, encoding = rng.choice((".txt", ".csv")), "utf-16"
    if layout.startswith("json"):
        suffix, encoding, place, comma = ".json", "utf-8", "heading", False
    if layout in ("attributes", "position sheets", "inspection"):
        place = "row"
    if (layout == "part sheets" and place == "cell") or (inch and place == "none"):
        place = "heading"
    brackets = [" [{}]", " ({})", " [{}]"]
    brackets += {
        "ru": [", {}", ", {}"],
        "zh": ["/{}", "({})"],
        "ja": ["({})", "[{}]"],
        "en": [", {}"],
        "de": [" in {}"],
    }.get(language, [])
    thousands = (
        rng.choice(("", "", "", ".", " ")) if comma else rng.choice(("", "", "", ",")) if language == "en" else ""
    )
    if layout.startswith("json"):
        thousands = ""
    style = Style(
        rng, language, inch, encoding, suffix, "," if comma else ".", thousands, place, tolerance,
        rng.random() < 0.45, rng.randrange(6), rng.choice(brackets), padded=rng.random() < 0.3,
    )  # fmt: skip
    choose_units(style)
    if layout.startswith("json"):
        style.units["speed"] = ("rpm", 1.0)
    return style


def _places(style: Style, layout: str) -> tuple[str, ...]:
    pairs = PLACES[style.language]
    if layout in ("design", "long"):
        pairs = tuple(
            p
            for p in pairs
            if all(len(name) <= (3 if layout == "design" and style.language == "ru" else 6) for name in p)
        )
    return tuple(style.fits(name) for name in style.rng.choice(pairs))


def make(number: int) -> Table:
    """The table of a number from 1 to 60.

    Parameters
    ----------
    number : int
        Which of the sixty; the same number always makes the same table.

    Returns
    -------
    Table
        The file and what it means.
    """
    rng = Random(f"sixth-{number}")
    index = number - 1
    layout = LAYOUTS[index]
    style = _style(rng, index)
    bearing = rng.choices(("designation", "sizes", "both", "size text"), (40, 18, 30, 12))[0]
    names = tuple(style.fits(name) for name in MACHINES[style.language])
    while True:
        meaning = mean(rng, names, _places(style, layout), style.inch, bearing, style.tolerance)
        rows = sum(len(s) for s in meaning.stations)
        one = "sheets" in layout or layout == "inspection"
        if one and (len(meaning.machines) > 1 or len(meaning.stations[0]) < 2):
            continue
        if len(meaning.columns) * rows + len(meaning.general) * len(meaning.machines) <= 44:
            break
    book = Book(style, meaning)
    vague = rng.random() < 0.65
    if layout.startswith("json"):
        content, kind = _json(book, layout == "json nested", vague)
    else:
        writer: dict[str, Any] = {
            "wide": wide.wide, "transposed": wide.transposed, "design": wide.design_table, "long": lists.long_list,
            "attributes": lists.attributes, "rows": lists.part_rows, "sections": lists.part_sections,
            "part sheets": lists.part_sheets, "position sheets": lists.position_sheets, "inspection": lists.inspection,
        }  # fmt: skip
        kind = writer[layout](book, vague)
        content = save(book)
    kinds = {
        "layout": kind, "language": style.language, "tolerance": style.tolerance, "units": style.unit_place,
        "length unit": style.units["length"][0] if style.inch else "mm", "bearing": bearing, "encoding": style.encoding,
    }  # fmt: skip
    expected = sorted(book.expected, key=lambda e: (e.machine, e.station, e.parameter))
    return Table(
        number, style.suffix, content, meaning.machines, meaning.stations, tuple(expected), meaning.implied, kinds
    )


def _key(text: str, camel: bool) -> str:
    plain = lists.ascii_name(text)
    if len(plain) <= 3:
        return plain
    if not camel or not plain.isascii():
        return plain.lower() if plain.isascii() else plain
    first, *rest = plain.split("_")
    return first.lower() + "".join(word[:1].upper() + word[1:] for word in rest)


def _escape(key: str) -> str:
    return key.replace("~", "~0").replace("/", "~1")


def _leaf(book: Book, m: int, s: int, column: Column) -> Any:
    text = cell_text(book.style, book.meaning, m, s, column)
    if column.parameter == "bearing_designation":
        return text
    if re.fullmatch(r"[+-]?\d+(\.\d+)?", text):
        return float(text) if "." in text else int(text)
    return text


def _json(book: Book, nested: bool, vague: bool) -> tuple[bytes, str]:
    """Records, one a position, or machines that hold positions that hold parts."""
    style, meaning, rng = book.style, book.meaning, book.style.rng
    filler = Filler(book)
    columns = columns_of(style, meaning, meaning.columns)
    if vague and (extra := vague_column(style, meaning, rng)):
        columns.append(extra)
    general = columns_of(style, meaning, meaning.general)
    camel = rng.random() < 0.5 and nested
    objects = nested and rng.random() < 0.5
    word_machine, word_place = (_key(style.words(name)[0], camel) for name in ("machine", "station"))

    def put(into: dict[str, Any], at: str, m: int, s: int, column: Column, sub: bool) -> None:
        word = column.sub if sub else column.full
        value = _leaf(book, m, s, column)
        key = _key(word, camel)
        if objects and column.unit:
            assert key not in into, key
            into[key] = {"value": value, "unit": column.unit}
            where = f"{at}/{_escape(key)}"
            filler.note(m, s, column.parameter, [f"{where}/value"], [where, f"{where}/unit"], [key])
            return
        unit = lists.ascii_name(column.unit).replace("μ", "u")
        key = f"{key}_{unit}" if column.unit and column.unit not in ("°", "%") else key
        assert key not in into, key
        into[key] = value
        filler.note(m, s, column.parameter, [f"{at}/{_escape(key)}"], [], [key, word])

    records: list[dict[str, Any]] = []
    machines: list[dict[str, Any]] = []
    for m, places in enumerate(meaning.stations):
        machine: dict[str, Any] = {word_machine: meaning.machines[m]}
        many = f"/{m}" if len(meaning.machines) > 1 else ""
        if nested:
            book.state((m, -1, "machine"), meaning.machines[m], "name", [f"{many}/{_escape(word_machine)}"], [], [])
            for column in general:
                put(machine, many, m, -1, column, False)
        stations = []
        list_key = {"en": "positions", "de": "lagerstellen", "zh": "轴承位置列表"}.get(style.language, word_place)
        list_key = list_key if list_key != word_machine else "list"
        for s, place in enumerate(places):
            station: dict[str, Any] = {word_place: place}
            at = f"{many}/{_escape(list_key)}/{s}" if nested else f"/{len(records)}"
            if not nested:
                station = {word_machine: meaning.machines[m], **station}
                for column in general:
                    put(station, at, m, -1, column, False)
            book.state((m, s, "station"), place, "name", [f"{at}/{_escape(word_place)}"], [], [])
            for column in columns:
                part = group_of(column.parameter)
                if nested and part in ("bearing", "shaft", "housing"):
                    group = _key(GROUPS[style.language][part], camel)
                    put(station.setdefault(group, {}), f"{at}/{_escape(group)}", m, s, column, True)
                else:
                    put(station, at, m, s, column, False)
            stations.append(station)
            records.append(station)
        machine[list_key] = stations
        machines.append(machine)
    filler.finish()
    whole: Any = records if not nested else machines if len(machines) > 1 else machines[0]
    text = json.dumps(whole, ensure_ascii=False, indent=1 if rng.random() < 0.7 else None)
    return text.encode(), "json, nested" if nested else "json, records"
