"""The sixty tables of the set: which office exports which layout, and what the table means.

A line of :data:`PLAN` holds language, layout, file, encoding, separator (or - ), form of the seats, place of the units
and further habits; what a machine is, the words and the order are drawn with the number of the table as seed.
"""

import random
from collections.abc import Callable
from typing import Any

from practice.bearings import follows
from practice.grammar import Expected, Key, Table, Value

from . import across, down, nested
from .sheets import Draft, Sheet, foot, title_block, workbook
from .shown import Office
from .trade import machines
from .words import Words

FIRST, LAST = 1, 60
PLAN = """
en | wide | csv | utf-8 | , | class column | heading | t0
de | list_index | csv | cp1252 | ; | class | column | comma t2
en | attr0 | json | utf-8 | - | class | column | t0
zh | wide_grouped | xlsx | - | - | class column | heading | t1
fr | transposed | csv | utf-8-sig | ; | class | column | comma t1
en | rows | csv | utf-8 | , | limit columns | heading | inch three
ja | list | csv | cp932 | , | class | column | t1
de | wide | xlsx | - | - | dev columns | row | comma t2 dev
it | blocks | csv | cp1252 | ; | class | column | comma t2
ru | part_feature | csv | cp1251 | ; | class | column | comma t1
en | toleranced | xlsx | - | - | dev columns | column | t1
es | wide_grouped | csv | cp1252 | ; | class column | heading | comma two
de | attr2 | json | utf-8 | - | class+dev cell | column | strings comma
en | list_dotted | csv | utf-8 | , | class | column | snake t0
zh | transposed | csv | gb18030 | , | class+dev cell | column | t2
fr | objects0 | json | utf-8 | - | class column | heading | snake
de | transposed_above | csv | utf-8 | ; | dev cell | heading | comma t3 micro
ja | wide | xlsx | - | - | um columns | heading | t1 micro
en | side_by_side | xlsx | - | - | class | cell | t2
it | list | txt | utf-8 | tab | class column | column | snake comma t0 kilo
de | stacked | csv | cp1252 | ; | class column | heading | comma t1
en | blocks | txt | utf-8 | tab | limit cell | title | t2 inch
es | melted | csv | utf-8-sig | ; | class | column | comma two
ru | wide_above | xlsx | - | - | class | heading | t1 micro
en | objects1 | json | utf-8 | - | dev columns | heading | snake
zh | attr1 | json | utf-8 | - | class | column | strings
de | rows_grouped | xlsx | - | - | class column | row | two
fr | list_note | csv | cp1252 | ; | class | column | comma t2 vague
ja | part_feature_position | csv | utf-8-sig | , | class+dev columns | column | t1
en | wide_grouped | csv | utf-16 | tab | class+dev columns | row | two kilo
it | transposed | xlsx | - | - | class | title | comma t2 dev
fr | list | csv | utf-8 | ; | limit columns | heading | comma t1 joined
en | tree | json | utf-8 | - | class | heading | camel
ru | list_index | csv | utf-8 | ; | class+dev cell | column | comma t4 micro
de | part_feature | xlsx | - | - | class column | column | t3
es | transposed_above | csv | utf-8 | ; | dev columns | column | comma t1 vague
zh | melted | csv | utf-8 | , | class column | column | two micro
en | list_note | csv | cp1252 | , | class+dev cell | column | camel t1 kilo
de | melted_shuffled | csv | utf-16 | tab | class | column | comma two kilo
fr | wide_grouped_above | xlsx | - | - | class+dev columns | row | t1
ja | objects2 | json | utf-8 | - | class | heading | t0
de | sheets | xlsx | - | - | class column | heading | t4 micro
en | stacked | csv | utf-8-sig | , | class | heading | t4 pm
it | rows_grouped | xlsx | - | - | class | heading | two joined vague
ru | toleranced | csv | cp1251 | ; | class+dev columns | column | comma t1
de | blocks | txt | cp1252 | pipe | pm | cell | comma t2
en | sheets | xlsx | - | - | limit columns | row | inch t1
es | attr1 | json | utf-8 | - | dev columns | column | t0
zh | side_by_side | xlsx | - | - | dev cell | column | t2 vague
de | records | json | utf-8 | - | class column | heading | camel
fr | part_feature_position | csv | utf-8 | tab | class | column | comma t1 micro
en | records_melted | json | utf-8 | - | class column | column | t0
ja | transposed | csv | cp932 | , | dev columns | none | t4 pm
de | toleranced | csv | utf-8-sig | ; | um columns | column | comma t2
it | objects0 | json | utf-8 | - | um columns | heading | micro
ru | rows | xlsx | - | - | class | heading | three
zh | list_index | csv | gb18030 | , | limit cell | column | t4
it | transposed | csv | utf-8 | pipe | um cell | column | comma t1 micro
es | blocks | xlsx | - | - | class | cell | comma t2 dev
ja | stacked | xlsx | - | - | class+dev cell | heading | t1 joined
"""
SEPARATORS = {"tab": "\t", "pipe": "|"}
GRIDS: dict[str, Callable[[Draft], Any]] = {
    "wide": across.wide,
    "wide_above": lambda d: across.wide(d, True),
    "wide_grouped": lambda d: across.wide(d, False, True),
    "wide_grouped_above": lambda d: across.wide(d, True, True),
    "rows": across.machine_rows,
    "rows_grouped": lambda d: across.machine_rows(d, True),
    "transposed": across.transposed,
    "transposed_above": lambda d: across.transposed(d, True),
    "stacked": across.stacked,
    "list": down.listed,
    "list_index": lambda d: down.listed(d, index=True),
    "list_note": lambda d: down.listed(d, note=True, unit_first=True),
    "list_dotted": lambda d: down.listed(d, dotted=True),
    "toleranced": down.toleranced,
    "part_feature": down.part_feature,
    "part_feature_position": lambda d: down.part_feature(d, True),
    "blocks": down.blocks,
    "side_by_side": down.side_by_side,
    "melted": down.melted,
    "melted_shuffled": lambda d: down.melted(d, True),
}
TREES: dict[str, Callable[[Draft], nested.Tree]] = {
    "attr0": lambda d: nested.attributes(d, 0),
    "attr1": lambda d: nested.attributes(d, 1),
    "attr2": lambda d: nested.attributes(d, 2),
    "objects0": lambda d: nested.objects(d, 0),
    "objects1": lambda d: nested.objects(d, 1),
    "objects2": lambda d: nested.objects(d, 2),
    "tree": nested.item_tree,
    "records": lambda d: nested.records(d, False),
    "records_melted": lambda d: nested.records(d, True),
}


def _draft(number: int) -> tuple[Draft, dict[str, str], set[str]]:
    """What the table states and how its office writes, before a cell is placed."""
    line = PLAN.strip().splitlines()[number - 1]
    language, layout, file, encoding, separator, seat, place, habits = (part.strip() for part in line.split(" | "))
    rng = random.Random(12000 + number)
    known = set(habits.split())
    words = Words(language, rng)
    office = Office(
        rng,
        words,
        file,
        seat,
        place,
        "comma" in known,
        "inch" in known,
        "joined" in known,
        next((c for c in ("snake", "camel") if c in known), "free"),
        "micro" in known,
        "kilo" in known,
        file in ("xlsx", "json") and "strings" not in known,
        next((s for s in ("dev", "pm") if s in known), "plain"),
    )
    count = 3 if "three" in known else 2 if "two" in known else 1
    positions = words.known["positions"][number % len(words.known["positions"])].split("/")
    names = rng.sample(words.known["machines"], count)
    values, order = machines(rng, count, [*positions, *names], number)
    bar = order.index("|")
    if not any((m, -1, "spring_rate") in values for m in range(count)):
        plain = ("spring", "feder", "ressort", "molla", "muelle", "пружин", "弹簧", "ばね")
        words.drawn["preload_force"] = next(
            w for w in words.known["preload_force"] if not any(p in w.lower() for p in plain)
        )
    whole, parts = order[:bar], order[bar + 1 :]
    if office.inch:
        parts = [p for p in parts if p not in ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer")]
    if "vague" in known:
        parts = [p for p in parts if p not in ("shaft_seat_roughness", "housing_seat_roughness")] + ["seat_roughness"]
    if "lubrication" in parts and count == 1 and number % 5 < 2:
        parts.remove("lubrication")
        whole.append("lubrication")
        values[0, -1, "lubrication"] = values[0, 0, "lubrication"]
    noise = []
    for text in rng.sample(words.known["noise"], 3):
        name, shown = text.split(" = ")
        noise.append((name, shown.split(" / ")))
    draft = Draft(office, values, [str(values[m, -1, "machine"]) for m in range(count)], positions, whole, parts, noise)
    kinds = {
        "layout": layout,
        "language": language,
        "tolerance": seat,
        "units": place,
        "encoding": encoding,
        "separator": SEPARATORS.get(separator, separator),
    }
    return draft, kinds, known


def _extra(d: Draft) -> Sheet:
    """A sheet of things to buy, which means nothing here."""
    sheet = Sheet()
    for name, texts in d.noise:
        sheet.next(name, texts[0])
    return sheet


def make(number: int) -> Table:
    """The table of this number, 1 to 60.

    Parameters
    ----------
    number : int
        Number of the line of the plan.

    Returns
    -------
    Table
        The file's bytes and what they mean.
    """
    d, kinds, habits = _draft(number)
    layout, encoding = kinds["layout"], kinds["encoding"]
    suffix, text, book = "." + d.office.suffix, "", list[tuple[str, Sheet]]()
    if layout in TREES:
        text = nested.written(TREES[layout](d), d.office.rng.choice([2, 2, None]))
    else:
        title = next((int(h[1]) for h in habits if h[0] == "t" and h[1:].isdigit()), 0)
        if len(d.machines) == 1:
            title_block(d, title, layout not in ("melted", "melted_shuffled", "rows", "rows_grouped"))
        elif d.office.rng.random() < 0.5:
            d.sheet.next(d.words("title"))
        book = [(d.words("part.machine"), d.sheet)]
        if layout == "sheets":
            book = across.sheets(d)
        else:
            GRIDS[layout](d)
        foot(d)
    if suffix == ".xlsx":
        content = workbook([*book, ("BOM", _extra(d))] if number % 2 else book)
        kinds["encoding"] = "utf-8"
    else:
        text = text or d.sheet.text(kinds["separator"], d.office.rng.random() < 0.5)
        content = text.encode(encoding)
    expected = [fact.expected() for fact in d.facts]
    return Table(
        12000 + number,
        suffix,
        content,
        tuple(d.machines),
        tuple(tuple(d.stations) for _ in d.machines),
        tuple(_once(expected)),
        _implied(expected),
        kinds,
    )


def _once(expected: list[Expected]) -> list[Expected]:
    """Each value once: where the kind of preload stands in its own cell, the force's heading need not tell it."""
    stated = {(e.machine, e.station, e.parameter) for e in expected if e.verdict == "read"}
    kept = [e for e in expected if e.verdict == "read" or (e.machine, e.station, e.parameter) not in stated]
    assert len({(e.machine, e.station, e.parameter) for e in kept}) == len(kept)
    return kept


def _implied(expected: list[Expected]) -> dict[Key, Value]:
    """What follows from the designations, and that a machine with a spring of given rate is preloaded by it."""
    spring = {(e.machine, -1, "preload_method"): "spring" for e in expected if e.parameter.startswith("spring_")}
    return spring | {
        (e.machine, e.station, name): value
        for e in expected
        if e.parameter == "bearing_designation"
        for name, value in follows(str(e.value)).items()
    }
