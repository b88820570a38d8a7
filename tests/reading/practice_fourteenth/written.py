"""The fourteenth set: forty offices, each with its layout, language, units, form of tolerances, title block, encoding.

``make(number)`` draws the machines of an office with a fixed seed and writes them as the office does. Everything is
from knowledge of the trade; no firm, product or person is a real one.
"""

import io
import random
from dataclasses import dataclass, field
from typing import Any

from practice.grammar import Table

from practice_fourteenth import layouts, trees
from practice_fourteenth.meaning import Style, machine
from practice_fourteenth.sheet import Sheet, Tree

FIRST, LAST = 1, 40


@dataclass(frozen=True)
class Office:
    """How an office exports: ``more`` goes to the layout, ``style`` to :class:`Style`."""

    language: str
    layout: str
    form: str
    units: str = "heading"
    title: str = "head"
    file: str = "csv , utf-8"
    pair: int = 0
    machines: int = 1
    more: dict[str, Any] = field(default_factory=dict)
    style: dict[str, Any] = field(default_factory=dict)


UM = {"fine": "µm"}
BOTH = {"fine": "µm", "small": "µm"}
OFFICES = (
    Office("en", "row_station", "class", machines=2, pair=0, more={"once": True}),
    Office(
        "en", "row_station", "class and deviation columns", "row", "all", "xlsx", 1, more={"groups": True}, style=BOTH
    ),
    Office("en", "row_machine", "limits", "heading", "none", "xlsx", 2, 3, style={"inch": True}),
    Office("en", "transposed", "deviations", "column", "head", "csv ; cp1252", 3, style=UM | {"groups": ","}),
    Office("en", "long_list", "class column", "column", "none", "csv , utf-8-sig", 1, more={"names": "snake"}),
    Office(
        "en",
        "long_list",
        "limits",
        "column",
        "all",
        "csv tab utf-16",
        2,
        more={"names": "camel"},
        style={"inch": True, "groups": ","},
    ),
    Office("en", "parts", "class and deviations", "column", "joined", "csv , utf-8", 5, style=UM),
    Office(
        "en",
        "parts",
        "class column",
        "column",
        "none",
        "csv , utf-8",
        4,
        2,
        more={"melted": True},
        style={"small": "µm"},
    ),
    Office("en", "attributes", "class", "column", "none", "json utf-8", 0, 2, more={"names": "camel"}),
    Office(
        "en",
        "transposed",
        "limits",
        "heading",
        "head",
        "xlsx",
        6,
        more={"groups": True, "twice": True},
        style={"inch": True},
    ),
    Office("de", "row_station", "class column", "heading", "all", "csv ; cp1252", 0),
    Office("de", "transposed", "fit only", "column", "all", "csv ; utf-8-sig", 3),
    Office(
        "de",
        "long_list",
        "class and deviation columns",
        "column",
        "head",
        "csv ; cp1252",
        1,
        more={"wide": True},
        style=UM,
    ),
    Office("de", "blocks", "class and deviations", "cell", "head", "csv ; utf-8", 2, style=UM | {"groups": "."}),
    Office("de", "stacked", "deviation columns", "heading", "all", "csv ; cp1252", 7, style=BOTH),
    Office("de", "row_machine", "class", "heading", "none", "xlsx", 0, 3, more={"groups": False}),
    Office("de", "nested", "class", "column", "none", "json utf-8", 4, more={"names": "camel"}),
    Office("de", "parts", "deviations bare", "heading", "joined", "csv ; cp1252", 6, style=UM),
    Office("fr", "row_station", "class", "title", "head", "csv ; cp1252", 0),
    Office("fr", "transposed", "class and deviations", "column", "all", "xlsx", 2, more={"groups": True}, style=UM),
    Office(
        "fr",
        "long_list",
        "class column",
        "column",
        "head",
        "csv ; utf-8-sig",
        1,
        more={"names": "behind"},
        style={"groups": " "},
    ),
    Office("fr", "blocks", "limits", "column", "joined", "csv tab utf-16", 3),
    Office(
        "it",
        "row_station",
        "deviation columns",
        "row",
        "head",
        "xlsx",
        0,
        more={"groups": True, "once": True},
        style=BOTH,
    ),
    Office("it", "long_list", "class", "cell", "none", "csv ; cp1252", 1, more={"names": "dotted"}),
    Office("it", "parts", "class", "column", "none", "csv ; utf-8", 2, 2, more={"melted": True}),
    Office("it", "transposed", "plus-minus", "heading", "all", "csv tab utf-8", 3),
    Office("es", "row_station", "fit pair", "heading", "head", "csv ; utf-8-sig", 0),
    Office("es", "stacked", "class column", "heading", "head", "xlsx", 1),
    Office("es", "attributes", "class and deviation columns", "column", "none", "json utf-8", 2, style=UM),
    Office("es", "transposed", "class", "title", "all", "csv ; cp1252", 3, more={"groups": True}),
    Office("ru", "row_station", "class", "heading", "head", "csv ; cp1251", 0, style={"groups": " "}),
    Office(
        "ru", "long_list", "deviations", "column", "all", "csv ; utf-8-sig", 1, more={"names": "brackets"}, style=UM
    ),
    Office("ru", "parts", "class and deviation columns", "column", "head", "xlsx", 2, style=UM),
    Office("zh", "row_station", "class and deviations", "heading", "head", "csv , gb18030", 0, 2, style=UM),
    Office("zh", "transposed", "limits", "title", "all", "xlsx", 1, more={"groups": True}),
    Office("zh", "long_list", "class", "column", "head", "csv , utf-8-sig", 2, more={"names": "brackets"}),
    Office("zh", "nested", "deviation columns", "column", "none", "json utf-8", 3, 2, style=UM),
    Office("ja", "row_station", "class column", "row", "all", "xlsx", 0, more={"groups": True}),
    Office("ja", "parts", "class", "column", "joined", "csv , cp932", 1, style={"small": "µm"}),
    Office("ja", "transposed", "deviations", "heading", "head", "csv tab utf-8-sig", 2, more={"twice": True}, style=UM),
)
#: How many of a hundred offices state a thing; features of both sides alike.
OFTEN = {
    "n": 85, "life": 45, "span": 60, "mass": 50, "bal": 60, "tmax": 40, "tmin": 25, "tamb": 30, "coax": 45, "shm": 45,
    "hom": 55, "orient": 30, "prel": 45, "prel force": 50, "pf": 50, "sizes": 35, "role": 70, "spring role": 30,
    "Fr": 60, "Fa": 45, "lub": 60, "top": 25, "temp": 60,
}  # fmt: skip
FEATURES = {".ra": 85, ".cyl": 60, ".run": 50, ".sh": 75, ".shr": 40, ".fil": 55}
#: A sheet of one row for each position in a text file has room for fewer columns.
SPARE = {".cyl": 35, ".run": 30, ".shr": 25, ".fil": 35, "sizes": 15, "top": 10}


def make(number: int) -> Table:
    """The table of an office.

    Parameters
    ----------
    number : int
        1 to 40.
    """
    office, rng = OFFICES[number - 1], random.Random(f"fourteenth {number}")
    style = Style(office.language, office.form, office.units, rng, **office.style)
    narrow = office.layout == "row_station" and office.file != "xlsx"
    chance = OFTEN | FEATURES | (SPARE if narrow else {})
    plan = {name: rng.random() * 100 < often for name, often in chance.items()}
    if narrow:
        plan |= dict.fromkeys(("tmin", "tamb", "temp", "orient"), False)
    if narrow and office.machines > 1:
        plan |= dict.fromkeys(("life", "tmin", "tamb", "shm", "orient", "tmax"), False)
    if style.inch:
        plan["sizes"] = False
    plan |= {side + name: plan[name] for name in FEATURES for side in ("shaft", "housing")}
    names = tuple(style.ways["#"][office.pair % len(style.ways["#"])].split(","))
    machines = [machine(style, names, number + k, plan) for k in range(office.machines)]
    if office.machines > 1 and len({m.name for m in machines}) < len(machines):
        raise ValueError(f"two machines of one name in {number}")
    sheet: Sheet | Tree = getattr(trees if office.layout in ("attributes", "nested") else layouts, office.layout)(
        style, machines, office.title, **office.more
    )
    if isinstance(sheet, Sheet) and rng.random() < 0.35:
        sheet.row = max(r for r, _ in sheet.grid) + 2
        sheet.line(style.way("foot"))
    kind, *rest = office.file.split()
    encoding = rest[-1] if rest else "utf-8"
    if isinstance(sheet, Tree):
        content = sheet.bytes(encoding)
    elif kind == "xlsx":
        content = sheet.workbook()
    else:
        separator = {"tab": "\t"}.get(rest[0], rest[0])
        told = io.StringIO(sheet.delimited(separator, pad=rng.random() < 0.5 or office.title == "joined"), newline="")
        content = told.read().replace("µ", "μ" if encoding == "cp932" else "µ").encode(encoding)
    return Table(
        seed=14000 + number,
        suffix="." + kind,
        content=content,
        machines=tuple(m.name for m in machines),
        stations=tuple(m.stations for m in machines),
        expected=tuple(sheet.stated.values()),
        implied={
            (k, s, name): value
            for k, m in enumerate(machines)
            for s, known in enumerate(m.implied)
            for name, value in known.items()
        },
        kinds={
            "persona": f"{number} {office.language} {office.layout}",
            "language": office.language, "layout": office.layout,
            "form": office.form, "units": office.units, "title": office.title, "encoding": encoding,
            "inch": str(style.inch),
        },
    )  # fmt: skip
