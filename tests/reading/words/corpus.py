"""What single headings and cells of tables in practice are taken for: words written down apart from the program's.

``corpus_<language>.csv`` holds for each parameter the headings, group headings, cells and names of positions that
engineers of different firms print. Each is put into the smallest table in which a careful reader can decide it, and the
table is read: **right** where its cell is used as meant, **asked** where it is not used, **wrong** where it is used
otherwise. Every second word is open, the others are closed: looked at in sum only.

PYTHONPATH=. python tests/reading/words/corpus.py              # figures by language
... --losses            # every open word that is not right
... --languages en,de   # these only
... --parameters        # figures by parameter, both halves
"""

import argparse
import re
import sys
import tempfile
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import numpy as np

from linter.model.vocabulary import vocabulary
from linter.reading import InputError, Reading, read_table

HERE = Path(__file__).resolve().parent
#: Headings that every table has around the one that is tried.
_AROUND = {
    "en": ("Position", "Bearing", "d (mm)", "D (mm)", "B (mm)"),
    "de": ("Lagerstelle", "Lager", "d (mm)", "D (mm)", "B (mm)"),
    "fr": ("Palier", "Roulement", "d (mm)", "D (mm)", "B (mm)"),
    "zh": ("轴承位置", "轴承型号", "d (mm)", "D (mm)", "B (mm)"),
    "ja": ("軸受位置", "軸受型番", "d (mm)", "D (mm)", "B (mm)"),
}
_IN_LIST = {
    "en": ("Bearing", "Bore", "Outside diameter", "Width"),
    "de": ("Lager", "Bohrung", "Außendurchmesser", "Breite"),
    "fr": ("Roulement", "Alésage", "Diamètre extérieur", "Largeur"),
    "zh": ("轴承型号", "内径", "外径", "宽度"),
    "ja": ("軸受型番", "内径", "外径", "幅"),
}
_STATED = ("station", "bearing_designation", "bore_diameter", "outside_diameter", "ring_width")
_LIST_HEAD = {
    "en": "Parameter;Value;Unit", "de": "Parameter;Wert;Einheit", "fr": "Paramètre;Valeur;Unité",
    "zh": "参数;数值;单位", "ja": "項目;値;単位",
}  # fmt: skip
_BLOCKS = {
    "en": ("Bearing A", "Bearing B"), "de": ("Lager A", "Lager B"), "fr": ("Roulement A", "Roulement B"),
    "zh": ("轴承A", "轴承B"), "ja": ("軸受A", "軸受B"),
}  # fmt: skip
#: Beside a heading below a group stands this one (or that of the roughness, where it is the size that is tried).
_DIAMETER = {
    "en": "Seat diameter",
    "de": "Sitzdurchmesser",
    "fr": "Diamètre de portée",
    "zh": "配合直径",
    "ja": "はめあい径",
}
#: Values that go with the bearing at each of the two positions, a 624 and a 625; others are the vocabulary's examples.
_VALUES = {
    "station": ("A", "B"), "bearing_designation": ("624", "625"), "bore_diameter": ("4", "5"),
    "outside_diameter": ("13", "16"), "ring_width": ("5", "5"), "shaft_seat_diameter": ("4 h5", "5 h5"),
    "housing_seat_diameter": ("13 H5", "16 H5"), "shaft_shoulder_diameter": ("6", "7"),
    "housing_shoulder_diameter": ("11", "14"), "housing_outer_diameter": ("20", "24"),
    "inner_ring_shoulder_diameter": ("6.1", "7.5"), "outer_ring_shoulder_diameter": ("10.9", "13.5"),
    "pitch_diameter": ("8.5", "10.5"), "radial_clearance": ("8-13", "8-13"), "machine": ("RB-12", "RB-12"),
    "shaft_groove_diameter": ("3.8", "4.8"), "housing_groove_diameter": ("13.6", "16.8"),
    "seal_ring_inside_diameter": ("13", "16"), "washer_inside_diameter": ("11.2", "14"),
    "washer_outside_diameter": ("12.8", "15.8"), "balance_grade": ("G 2.5", "G 2.5"),
}  # fmt: skip
#: Class, deviations [mm] and limits of both seats (ISO 286-2, h5 and H5).
_FITS = {
    "shaft_seat_diameter": (("h5", "h5"), (0.0, -0.005), ("4", "5")),
    "housing_seat_diameter": (("H5", "H5"), (0.008, 0.0), ("13", "16")),
}
_UNIT = re.compile(r"[\s_]*[\[(,]\s*([^\[\](),]+?)\s*[\])]?$|_(mm|um|N|g|kg|rpm|h|C|deg|MM|UM)$")
#: Unit texts of the headings: the vocabulary's unit that they belong to, and how many of them make one of it.
_UNITS = {
    "mm": ("mm", 1.0), "MM": ("mm", 1.0), "in": ("mm", 1 / 25.4), "µm": ("mm", 1000.0), "μm": ("mm", 1000.0),
    "um": ("mm", 1000.0),
    "UM": ("mm", 1000.0), "kN": ("N", 0.001), "N": ("N", 1.0), "g": ("kg", 1000.0), "kg": ("kg", 1.0),
    "N/µm": ("N/mm", 0.001), "h": ("h", 1.0),
}  # fmt: skip
_PRINTED = {
    "degC": "°C",
    "1": "",
    "r/min": "rpm",
    "deg": "°",
    "g.mm": "g·mm",
    "N.m": "N·m",
    "mm2": "mm²",
    "mm2/s": "mm²/s",
}


@dataclass(frozen=True)
class Case:
    """One word of the corpus: what it means, the group heading above it, and whether it is of the open half."""

    language: str
    target: str
    group: str
    word: str
    is_open: bool

    @property
    def parameter(self) -> str:
        """The parameter, or the kind of word (``@positions``)."""
        return re.split("[:=]", self.target)[0]


@dataclass(frozen=True)
class Tried:
    """A case, the table made for it, and what became of it."""

    case: Case
    outcome: str
    got: str
    table: str


@cache
def cases(language: str) -> tuple[Case, ...]:
    """All words of a language."""
    found: list[Case] = []
    for line in (HERE / f"corpus_{language}.csv").read_text(encoding="utf-8").splitlines()[1:]:
        target, group, words = line.split(";", 2)
        for word in words.split(" | "):
            found.append(Case(language, target, group, word.strip(), len(found) % 2 == 0))
    return tuple(found)


@cache
def _choice_text(language: str, name: str) -> str:
    """How the corpus itself writes the example of a choice."""
    wanted = f"{name}={vocabulary()[name].example}"
    return next((c.word for c in cases(language) if c.target == wanted), vocabulary()[name].example)


def _printed(case: Case, name: str, heading: str, value: str, place: int) -> str:
    """A value as it stands below a heading, with its unit where the heading states none."""
    entry = vocabulary()[name]
    if entry.kind in ("choice", "text") or entry.unit in ("", "1") or name == "balance_grade":
        return value
    found = _UNIT.search(heading)
    stated = (found[1] or found[2]) if found else ""
    own, factor = _UNITS.get(stated, (entry.unit, 1.0))
    if own == "mm" and entry.unit == "um":
        factor /= 1000
    if factor != 1.0 and (number := re.match(r"[\d.]+", value)):
        return f"{float(number[0]) * factor:.6g}{value[number.end() :] if factor == 1 else ''}"
    if stated or "h5" in value.lower() or re.search(r"\bRPM|rpm\b|°C\b|hours\b|cSt|tr/m", heading):
        return value
    return f"{value} {_PRINTED.get(entry.unit, entry.unit)}"


def _values(case: Case, name: str, heading: str) -> tuple[str, str]:
    entry = vocabulary()[name]
    example = (
        _choice_text(case.language, name) if entry.kind == "choice" else entry.example.split(" ±")[0].split(" 0/")[0]
    )
    values = _VALUES.get(name, (example, example))
    first, second = (_printed(case, name, heading, value, place) for place, value in enumerate(values))
    return first, second


def _columns(case: Case) -> tuple[str, list[tuple[str, str, str]]]:
    """The parameter tried, and its columns: heading and both values; of deviations and limits two."""
    name, _, aspect = case.target.partition(":")
    if "=" in name:
        return name.split("=")[0], [(name.split("=")[0], case.word, case.word)]
    if not aspect:
        return name, [(case.word, *_values(case, name, case.word))]
    classes, deviations, sizes = _FITS[name]
    if aspect == "class":
        return name, [(case.word, *classes)]
    columns = []
    for heading, deviation in zip(case.word.split(" ~ "), deviations, strict=True):
        micron = 1000 if re.search("[µμ]m", heading) else 1
        unit = "" if _UNIT.search(heading) else " mm"
        sized = [deviation * micron if aspect == "deviations" else float(size) + deviation for size in sizes]
        shown = [f"{value:.3f}{unit}" for value in sized]
        columns.append((heading, shown[0], shown[1]))
    return name, columns


def _wide(case: Case) -> str:
    """A table with a row for each of two positions."""
    name, columns = _columns(case)
    aspect = case.target.partition(":")[2]
    around = [
        (heading, *_VALUES[stated])
        for stated, heading in zip(_STATED, _AROUND[case.language], strict=True)
        if stated != name
    ]
    beside: list[tuple[str, str, str]] = []
    if aspect in ("class", "deviations"):
        heading = _DIAMETER[case.language] if case.group else name
        beside = [(heading, *(f"{size} mm" for size in _FITS[name][2]))]
    elif case.group and name.endswith("seat_diameter"):
        beside = [("Ra", "0.4", "0.4")]
    elif case.group and not name.startswith(("bore", "outside", "ring")):
        seat = "shaft_seat_diameter" if "shaft" in name else "housing_seat_diameter"
        beside = [(_DIAMETER[case.language], *_VALUES[seat])]
    rows = [list(cells) for cells in zip(*around, *beside, *columns, strict=True)]
    if case.group:
        above = [""] * len(around) + [case.group] * (len(beside) + len(columns))
        rows.insert(0, above)
    return "\n".join(";".join(row) for row in rows)


def _list_rows(language: str, place: int) -> list[str]:
    """The rows of one position in a long list."""
    bearing, *sizes = _IN_LIST[language]
    shown = [_VALUES[name][place] for name in _STATED[2:]]
    return [f"{bearing};{('624', '625')[place]};"] + [
        f"{heading};{value};mm" for heading, value in zip(sizes, shown, strict=True)
    ]


def _long(case: Case) -> str:
    """A long list: the machine's own parameter above the blocks of two positions."""
    _, columns = _columns(case)
    lines = [_LIST_HEAD[case.language], *(f"{heading};{first};" for heading, first, _ in columns)]
    for place, block in enumerate(_BLOCKS[case.language]):
        lines += [f"{block};;", *_list_rows(case.language, place)]
    return "\n".join(lines)


def _of_positions(case: Case) -> Iterator[str]:
    """Tables that name two positions: as blocks of a list, over columns, in a column, and before every heading."""
    names = case.word.split(" ~ ")
    head = _LIST_HEAD[case.language]
    lines = [head]
    for place, name in enumerate(names):
        lines += [f"{name};;", *_list_rows(case.language, place)]
    yield "\n".join(lines)
    label, _, unit = head.split(";")
    both = [_list_rows(case.language, place) for place in (0, 1)]
    rows = [(*first.split(";"), second.split(";")[1]) for first, second in zip(*both, strict=True)]
    yield "\n".join([f"{label};{names[0]};{names[1]};{unit}", *(f"{a};{b};{d};{c}" for a, b, c, d in rows)])
    values = [[name, *(_VALUES[stated][place] for stated in _STATED[1:])] for place, name in enumerate(names)]
    yield "\n".join([";".join(_AROUND[case.language]), *(";".join(row) for row in values)])
    lines = [f"{head}"]
    for place, name in enumerate(names):
        lines += [f"{name} {row}" for row in _list_rows(case.language, place)]
    yield "\n".join(lines)


def _of_list(case: Case) -> str:
    """A long list with the words of a case over its columns."""
    if case.target == "@list":
        lines = [";".join(case.word.split(" ~ "))]
        for place, block in enumerate(_BLOCKS[case.language]):
            lines += [f"{block};;", *_list_rows(case.language, place)]
        return "\n".join(lines)
    label, _, unit = _LIST_HEAD[case.language].split(";")
    lines = [";".join([label, *case.word.split(" ~ "), unit])]
    for place, block in enumerate(_BLOCKS[case.language]):
        (_, shaft, sizes), housing = _FITS["shaft_seat_diameter"], _FITS["housing_seat_diameter"]
        lines += [f"{block};;;;"]
        lines += [
            f"{name};{value};;;{u}" for name, value, u in (row.split(";") for row in _list_rows(case.language, place))
        ]
        lines += [f"shaft_seat_diameter;{sizes[place]};{shaft[0]:g};{shaft[1]:g};mm"]
        lines += [f"housing_seat_diameter;{housing[2][place]};{housing[1][0]:g};{housing[1][1]:g};mm"]
    return "\n".join(lines)


def _of_title(case: Case) -> str:
    """A table under a line that names its machine."""
    table = [";".join(_AROUND[case.language])]
    table += [";".join(_VALUES[stated][place] for stated in _STATED) for place in (0, 1)]
    return "\n".join([f"{case.word}: RB-12;;;;", ";;;;", *table])


def _read(text: str, folder: Path) -> Reading | None:
    path = folder / "table.csv"
    path.write_text(text + "\n", encoding="utf-8")
    try:
        return read_table(path)
    except InputError:
        return None


def _sizes_right(reading: Reading) -> bool:
    stations = reading.stations
    return len(stations) == 2 and all(
        np.array_equal(stations.number(name), [float(v) for v in _VALUES[name]]) for name in _STATED[2:]
    )


def _judged_sizes(reading: Reading | None) -> str:
    if reading is None or _sizes_right(reading):
        return "right" if reading is not None else "asked"
    stated = {name: {float(v) for v in _VALUES[name]} for name in _STATED[2:]}
    for name, values in stated.items():
        got = reading.stations.number(name)
        if not set(got[~np.isnan(got)].tolist()) <= values:
            return "wrong"
        if (
            len(reading.stations) > 1
            and {float(v) for v in got if not np.isnan(v)} < values
            and not np.isnan(got).any()
        ):
            return "wrong"  # one position's figure at both
    return "asked"


def _expected(case: Case, reading: Reading, name: str) -> bool:
    """Whether the first position states what was meant."""
    entry, stations = vocabulary()[name], reading.stations
    if "=" in case.target:
        return stations.choice(name).texts()[0] == case.target.split("=")[1]
    if ":" in case.target:
        size, (_, deviations, sizes) = stations.size(name), _FITS[name]
        limits = size.nominal[0] + size.lower[0], size.nominal[0] + size.upper[0]
        return bool(np.allclose(limits, [float(sizes[0]) + deviations[1], float(sizes[0]) + deviations[0]], atol=5e-5))
    example = _VALUES.get(name, (entry.example,))[0]
    if entry.kind == "choice":
        return stations.choice(name).texts()[0] == entry.example
    if entry.kind == "text":
        got = stations.machines[0] if name == "machine" else stations.text(name)[0]
        return bool(got == example)
    got = stations.size(name).nominal[0] if entry.kind == "toleranced" else stations.number(name)[0]
    number = re.search(r"-?[\d.]+", example)
    wanted = 10.5 if example == "8-13" else float(number[0]) if number else np.nan
    return bool(np.isclose(got, wanted, rtol=1e-4))


def _judged(case: Case, text: str, reading: Reading | None) -> tuple[str, str]:
    """What became of the columns of a case, and what they were taken for."""
    if reading is None:
        return "asked", "refused"
    name, columns = _columns(case)
    headings = {heading for heading, *_ in columns}
    values = {value for _, *both in columns for value in both}
    lines = [line.split(";") for line in text.split("\n")]
    is_list, places = text.startswith(_LIST_HEAD[case.language]), set()
    for r, line in enumerate(lines):
        for c, cell in enumerate(line):
            head = lines[1 if case.group else 0][c] if c < len(lines[0]) else ""
            if cell in values and (head in headings or (is_list and line[0] in headings)):
                places.add(f"{chr(65 + c)}{r + 1}")
    taken = {u.parameter for u in reading.cells() if u.place.cell in places}
    others = {name.replace("_form", f"_{size}") for size in ("radius", "depth")}  # of an undercut: F 0,6x0,3
    others |= {"preload_method"} if name == "preload_force" else set()  # the force of a spring
    if taken - {name} - (others if name in taken else set()):
        return "wrong", " ".join(sorted(taken - {name}))
    if not taken:
        return "asked", ""
    if _expected(case, reading, name):
        return "right", ""
    told = any(p.row == 0 and p.kind in ("unreadable", "conflict") for p in reading.stations.problems)
    return ("asked", "value asked") if told or not reading.stations.known(name)[0] else ("wrong", "value")


def tried(case: Case, folder: Path) -> list[Tried]:
    """The outcomes of a case, one for each table made for it."""
    if case.target == "@positions":
        tables = list(_of_positions(case))
        return [Tried(case, _judged_sizes(_read(t, folder)), f"form {n}", t) for n, t in enumerate(tables, 1)]
    if case.target.startswith("@list"):
        table = _of_list(case)
        reading = _read(table, folder)
        outcome = _judged_sizes(reading)
        if case.target != "@list" and outcome == "right" and reading is not None:
            size = reading.stations.size("shaft_seat_diameter")
            outcome = "right" if np.allclose(size.lower, -0.005) and np.allclose(size.upper, 0) else "asked"
            if outcome == "asked" and not np.isnan(size.lower).any():
                outcome = "wrong"
        return [Tried(case, outcome, "", table)]
    if case.target == "@title":
        table = _of_title(case)
        reading = _read(table, folder)
        named = reading is not None and reading.stations.machines == ("RB-12",)
        return [Tried(case, "right" if named else "asked", "", table)]
    machine = vocabulary()[case.parameter].level == "machine" and case.parameter != "machine"
    table = _long(case) if machine and "=" not in case.target and not case.group else _wide(case)
    return [Tried(case, *_judged(case, table, _read(table, folder)), table)]


def run(wanted: Iterable[Case]) -> Iterator[Tried]:
    """Read the tables of these cases."""
    with tempfile.TemporaryDirectory() as scratch:
        for case in wanted:
            yield from tried(case, Path(scratch))


def main() -> None:
    parser = argparse.ArgumentParser(description="What single words of tables are taken for.")
    parser.add_argument("--languages", default=",".join(_AROUND))
    parser.add_argument("--losses", action="store_true", help="every open word that is not right")
    parser.add_argument("--closed", action="store_true", help="with --losses, the closed half too")
    parser.add_argument("--tables", default="", help="print the tables of words of this target")
    parser.add_argument("--parameters", action="store_true", help="figures by parameter")
    options = parser.parse_args()
    for language in options.languages.split(","):
        done = list(run(cases(language)))
        for half in (True, False):
            count = Counter(t.outcome for t in done if t.case.is_open is half)
            total = sum(count.values())
            told = "  ".join(f"{name} {count[name]}" for name in ("right", "asked", "wrong"))
            print(
                f"{language} {'open' if half else 'closed'}: {told} of {total} ({100 * count['right'] / total:.1f} %)"
            )
        if options.parameters:
            each = {t.case.target: Counter(o.outcome for o in done if o.case.target == t.case.target) for t in done}
            for target, count in sorted(each.items(), key=lambda item: -item[1]["asked"]):
                print(f"  {target}: right {count['right']} asked {count['asked']} wrong {count['wrong']}")
        for t in done:
            if options.losses and t.outcome != "right" and (t.case.is_open or options.closed):
                group = f" [{t.case.group}]" if t.case.group else ""
                print(f"  {t.outcome}: {t.case.target}{group}: {t.case.word}  {t.got}")
            if options.tables and t.case.target == options.tables:
                print(t.outcome, t.got, t.table, sep="\n", end="\n\n")


if __name__ == "__main__":
    sys.exit(main())
