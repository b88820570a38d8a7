"""The fifteenth set: sixty offices, each with its layout, language, units, form of tolerances, title block, encoding.

``make(number)`` draws the machines of an office with a fixed seed and writes them as the office does. Everything is
from knowledge of the trade; no firm, product or person is a real one.
"""

import random
import re
from collections.abc import Callable
from dataclasses import replace

from practice.grammar import Key, Table, Value

from practice_fifteenth import long, offices_en, offices_other, offices_roman, parts, trees, wide
from practice_fifteenth.lexicon import NAMES
from practice_fifteenth.meaning import Machine, machine
from practice_fifteenth.office import Office
from practice_fifteenth.pieces import Plan
from practice_fifteenth.sheet import Sheet, Tree
from practice_fifteenth.style import Style
from practice_fifteenth.trade import MACHINES, POSITIONS

FIRST, LAST = 1, 60
OFFICES = (*offices_en.OFFICES, *offices_roman.OFFICES, *offices_other.OFFICES)
LAYOUTS: dict[str, Callable[..., Sheet | Tree]] = {
    f.__name__: f
    for f in (
        wide.row_station, wide.transposed, wide.row_machine, wide.spread, long.long_list, long.cad, parts.blocks,
        parts.station_blocks, parts.two_tables, parts.seat_rows, parts.bill, trees.nested, trees.attributes,
        trees.parents, trees.records, trees.keyed,
    )
}  # fmt: skip
SCOPES = {"b": "bearing", "s": "shaft", "h": "housing", "m": "machine"}


def _plan(text: str) -> Plan:
    found = {SCOPES[scope]: keys.strip() for scope, keys in re.findall(r"\b([bshm]):((?:(?! [bshm]:).)*)", text)}
    if found.get("housing") == "=":
        found["housing"] = found["shaft"]
    return found


def _style(office: Office, rng: random.Random) -> Style:
    comma = office.language in ("de", "fr", "it", "es", "ru") and office.layout != "cad"
    comma = comma and not office.file.startswith("json")
    style = Style(office.language, office.form, rng, office.voice, office.units, comma=comma)
    return replace(style, workbook=office.file.startswith("xlsx"), **office.style)


def _second(sheet: Sheet, what: str) -> None:
    """The other sheet of a workbook: a history of changes, or what abbreviations mean."""
    words = NAMES[sheet.style.language]
    if what == "log":
        sheet.second_name = words["log"][2]
        sheet.second = [words["log"][k : k + 3] for k in range(0, 9, 3)]
    elif what == "legend":
        sheet.second_name = "Legend"
        sheet.second = [["DE", "drive end"], ["NDE", "non-drive end"], ["Ra", "arithmetical mean roughness"]]


def make(number: int) -> Table:
    """The table of an office.

    Parameters
    ----------
    number : int
        1 to 60.
    """
    office, rng = OFFICES[number - 1], random.Random(f"fifteenth {number}")
    style = _style(office, rng)
    pairs = POSITIONS[office.language].split("|")
    positions = tuple((office.positions or pairs[office.pair % len(pairs)]).split(","))
    names = rng.sample(MACHINES[office.language].split("|"), office.machines)
    machines = [machine(style, name, positions, office.kind, office.suffix) for name in names]
    for scope, key, s, text in (hole.split() for hole in office.holes.split(";") if hole):
        machines[0].words[scope, key, int(s)] = text
    sheet = LAYOUTS[office.layout](style, machines, _plan(office.plan), **office.more)
    kind, *rest = office.file.split()
    encoding, separator = "utf-8", ""
    if isinstance(sheet, Tree):
        content = sheet.bytes(encoding)
    elif kind == "xlsx":
        _second(sheet, office.second)
        content = sheet.workbook("merge" in rest)
    else:
        encoding, separator = rest[-1], {"tab": "\t"}.get(rest[0], rest[0])
        content = sheet.delimited(separator, encoding, pad=rng.random() < 0.5)
    return Table(
        seed=15000 + number,
        suffix="." + kind,
        content=content,
        machines=tuple(m.name for m in machines),
        stations=tuple(m.positions for m in machines),
        expected=sheet.truth.expected(style, machines),
        implied=_implied(machines),
        kinds={
            "persona": f"{number} {office.language} {office.layout}", "language": office.language,
            "layout": office.layout, "tolerance": office.form, "units": office.units, "encoding": encoding,
            "separator": separator, "length unit": "in" if style.inch else "mm",
        },
    )  # fmt: skip


def _implied(machines: list[Machine]) -> dict[Key, Value]:
    return {(m, s, name): value for m, one in enumerate(machines) for (s, name), value in one.implied.items()}
