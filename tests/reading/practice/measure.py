"""How much of tables in practice is read: the figures and how they are made.

Run from the root of the tree that is to be measured::

    PYTHONPATH=. python tests/reading/practice/measure.py              # the set: seeds 1 to 60
    PYTHONPATH=. python tests/reading/practice/measure.py 1001-1060    # others, for development
    ... --losses          # every value that is not right, with its heading
    ... --keep FOLDER     # leave tables, meanings and result files there
    ... --command 'ringseat'   # another way to start the program than the entry point of pyproject.toml

The tables of :mod:`grammar` are written to a folder, ``review FOLDER --write json`` is run once over it, and the result
files are held against what was meant. Only the result file is looked at (``stations``, ``unrecognised``, ``notes``, the
findings of the chapter ``table``, the places of every assessment), never a module of the program.

Each value that a table states gets one of

- **right**: stated by the result as it was meant (limits within 0.05 µm, numbers within a millionth), or, where the
  cell can only be asked about, asked about; where it may be asked about, either of both;
- **asked**: not used (or a size used without its tolerance), but a finding, an entry of ``unrecognised`` or a note
  names its cell or its heading;
- **refused**: the whole table was refused with a message;
- **lost**: not used, and nothing names it;
- **wrong**: another value is used, its cell is used for a parameter that it does not state, or a cell that had to be
  asked about is used without a word.

**invented** counts values of the result that the table does not state: no expectation, no consequence of the bearing's
designation, no default of the vocabulary and no value that an assessment marks as assumed. A document without any seat
has to be refused or to state nothing.

Positions are matched by name, those left over by most values in common. A name is right with or without the word for
the bearing or its place (``Bearing 1`` and ``1``, ``前側軸受`` and ``前側``): both tell the position apart, and
nothing is lost. How many names are right only so is told in a line of its own.
"""

import argparse
import json
import math
import re
import subprocess
import sys
import tempfile
import tomllib
import unicodedata
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

if __package__:
    from . import grammar
    from .grammar import Expected, Size, Table, Value
else:
    sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
    from practice import grammar
    from practice.grammar import Expected, Size, Table, Value

OUTCOMES = ("right", "asked", "refused", "lost", "wrong")
#: Parameters with a default in the vocabulary, and the default.
DEFAULTS = {
    "required_reliability": 90.0,
    "inner_groove_ratio": 0.52,
    "outer_groove_ratio": 0.53,
    "speed_operating": "speed_max",
    "pitch_diameter": ("bore_diameter", "outside_diameter"),
    "operating_temperature": ("shaft_temperature", "housing_temperature"),
}
#: Clauses whose places are cells that are named, not used.
NOT_USED = ("table.read", "table.agreement", "table.unused")


@dataclass(frozen=True)
class Judged:
    """One expected value and what became of it."""

    table: Table
    expected: Expected
    outcome: str
    got: Any = None


@dataclass
class Outcome:
    """One table: its values judged, and what the result states beyond them."""

    table: Table
    judged: list[Judged]
    invented: list[tuple[str, str, Any]]


def _plain(text: object) -> str:
    return re.sub(r"\s+", " ", unicodedata.normalize("NFKC", str(text))).strip().casefold()


#: Words for the bearing and for its place, in the languages of the sets.
_OF_BEARING = re.compile(
    r"\b(?:bearings?|brg|position|pos|location|seat|lager(?:stelle|ung|sitz)?|lagers|stelle|sitz|palier|roulement|portée"
    r"|supporto|cuscinetto|sede|apoyo|rodamiento|cojinete|asiento|опор[аы]|подшипник(?:а|овая|овый)?)\b"
    r"|lager$|^lager|軸受部?|ベアリング|轴承位?|支承|[\W_]+"
)

#: Cyrillic letters that look like Latin ones, and the letter that is meant by them in a name of one letter.
_LOOKS_LATIN = str.maketrans("авсенкмортх", "abcehkmoptx")


def _apart(name: object) -> str:
    """What is left of a position's name without the word for the bearing; the name itself where nothing is."""
    plain = _plain(name)
    return (_OF_BEARING.sub("", plain) or plain).translate(_LOOKS_LATIN)


def _same(expected: Value, got: Any) -> bool:
    if isinstance(expected, Size):
        if not isinstance(got, dict):
            return False
        nominal, lower, upper = (got.get(k) for k in ("nominal", "lower", "upper"))
        if nominal is None:
            return False
        if expected.lower is not None:
            if lower is None or upper is None:
                return False
            limits = (
                (expected.nominal + expected.lower, nominal + lower),
                (expected.nominal + (expected.upper or 0), nominal + upper),
            )
            if any(abs(a - b) > 5e-5 for a, b in limits):
                return False
        if not expected.bare and abs(nominal - expected.nominal) > 1e-5:
            return False
        return not expected.tolerance_class or got.get("class") == expected.tolerance_class
    if isinstance(got, dict):
        got = got.get("nominal")
    if isinstance(expected, str):
        return _plain(got) == _plain(expected)
    return isinstance(got, int | float) and math.isclose(got, expected, rel_tol=1e-6, abs_tol=1e-9)


def _part_of(expected: Value, got: Any) -> bool:
    """Whether a size is used with its nominal right and without a tolerance, or with half of what is stated."""
    if not isinstance(expected, Size) or not isinstance(got, dict) or got.get("nominal") is None or expected.bare:
        return False
    if abs(got["nominal"] - expected.nominal) > 1e-5:
        return False
    if got.get("class") and expected.tolerance_class and got["class"] != expected.tolerance_class:
        return False
    if got.get("lower") is None:
        return True
    return bool(expected.lower is not None and expected.tolerance_class and _same(
        Size(expected.nominal, expected.lower, expected.upper), got
    )) or bool(got.get("class") and got["class"] == expected.tolerance_class)  # fmt: skip


class Result:
    """What a result file says, looked up by cell."""

    def __init__(self, result: dict[str, Any]) -> None:
        self.stations: list[dict[str, Any]] = result["stations"]
        self.named: set[str] = set()
        self.words: set[str] = set()
        self.used: dict[str, set[str]] = {}
        self.marked: set[str] = set()
        self.assumed: set[tuple[str, str | None, str]] = set()
        for entry in result["unrecognised"]:
            self.named.add(self._address(entry["place"]))
            self.words.add(_plain(entry["name"]))
        texts = list(result["notes"])
        disagreements = []
        for assessment in result["assessments"]:
            clause = assessment["clause"]
            self.assumed |= {
                (assessment["machine"], assessment["station"], a["parameter"]) for a in assessment.get("assumed", ())
            }
            of_reading = clause.startswith("table.") and assessment["outcome"] == "finding"
            for place in assessment.get("places", ()):
                address = self._address(place)
                if clause in NOT_USED:
                    self.named.add(address)
                    continue
                self.used.setdefault(address, set()).add(place["parameter"])
                if clause == "table.interpretation":
                    self.marked.add(address)
            if of_reading and clause in (*NOT_USED, "table.interpretation"):
                texts.append(assessment["message"])
                if clause == "table.agreement":
                    disagreements.append(assessment["message"])
        looked_at = {name for clause in result.get("clauses", ()) for name in clause["parameters"]}
        parts = (*result.get("machines", ()), *result["stations"])
        for group in (group for part in parts for group in part.get("places", ())):
            for name, cells in (group.get("cells") or group["pointers"]).items():
                for cell in cells if name in looked_at else ():
                    self.used.setdefault(str(cell or ""), set()).add(name)
        self.text = _plain(" ".join(texts))
        self.disagreement = _plain(" ".join(disagreements))

    @staticmethod
    def _address(place: dict[str, Any] | None) -> str:
        return "" if place is None else str(place.get("cell") or place.get("pointer") or "")

    def names(self, expected: Expected) -> bool:
        """Whether anything says of a cell or its heading that it was not used."""
        for address in expected.cells:
            if address in self.named or any(
                n and (n.startswith(address + "/") or address.startswith(n + "/")) for n in self.named if "/" in n
            ):
                return True
            # the other cell of a disagreement is named in the message only
            if re.search(rf"\bat (?:[^,;:]{{1,40}} )?{re.escape(_plain(address))}(?![\w/])", self.disagreement):
                return True
        words = [_plain(word) for word in expected.words if word]
        if any(word in self.words for word in words):
            return True
        return any(len(word) > 3 and f"“{word}”" in self.text for word in words)


def _rows(table: Table, seen: "Result") -> dict[tuple[int, int], dict[str, Any]]:
    """The station of the result for each meant position: by name, those left over by most values in common."""
    single = len(table.machines) == 1

    def likeness(m: int, s: int, row: dict[str, Any]) -> float:
        machine = _plain(row["machine"]) == _plain(table.machines[m])
        station = _apart(row["station"]) == _apart(table.stations[m][s])
        own = [e for e in table.expected if e.machine == m and e.station in (s, -1)]
        alike = sum(_same(e.value, row["values"].get(e.parameter)) for e in own if e.parameter in row["values"])
        return 1000 * (station and (machine or single)) + 10 * alike + station + machine

    pairs = [
        (-likeness(m, s, row), m, s, index)
        for m, names in enumerate(table.stations)
        for s in range(len(names))
        for index, row in enumerate(seen.stations)
    ]
    found: dict[tuple[int, int], dict[str, Any]] = {}
    taken: set[int] = set()
    for _, m, s, index in sorted(pairs):
        if (m, s) not in found and index not in taken:
            found[m, s] = seen.stations[index]
            taken.add(index)
    return found


def judge(table: Table, result: dict[str, Any] | None) -> Outcome:
    """Hold a result file against what a table means; None for a table that was refused.

    Parameters
    ----------
    table : Table
        As made.
    result : dict or None
        The parsed result file.

    Returns
    -------
    Outcome
        Each expected value with its outcome, and what was invented.
    """
    if result is None:
        return Outcome(table, [Judged(table, e, "refused") for e in table.expected], [])
    seen = Result(result)
    rows = _rows(table, seen)
    stated: dict[str, set[str]] = {}
    for e in table.expected:
        for address in e.own:
            stated.setdefault(address, set()).update(e.parameter.split("|"))
    judged = [
        Judged(table, e, *_judge_one(e, seen, rows, len(table.stations[e.machine]), stated)) for e in table.expected
    ]
    matched = [id(row) for row in rows.values()]
    invented = []
    meant = {
        (e.machine, s, name)
        for e in table.expected
        for name in e.parameter.split("|")
        for s in (range(len(table.stations[e.machine])) if e.station < 0 else [e.station])
    }
    for row in seen.stations:
        where = next((key for key, own in rows.items() if own is row), None)
        for name, value in row["values"].items():
            if where and (*where, name) in meant:
                continue
            if where and (*where, name) in table.implied and _same(table.implied[*where, name], value):
                continue
            if name == "spring_kind" and row["values"].get("preload_method") == "spring":
                continue  # the word of a spring says its kind too
            marked = {(row["machine"], row["station"], name), (row["machine"], None, name)}
            if marked & seen.assumed or _is_default(name, value, row["values"]):
                continue
            if not where and id(row) not in matched and _stated_anywhere(table, name, value):
                continue
            invented.append((f"{row['machine']}/{row['station']}", name, value))
    return Outcome(table, judged, invented)


def _stated_anywhere(table: Table, name: str, value: Any) -> bool:
    """Whether a position that is not meant repeats a value of the whole machine."""
    return any(e.parameter == name and e.station < 0 and _same(e.value, value) for e in table.expected)


def _is_default(name: str, value: Any, values: dict[str, Any]) -> bool:
    default: Any = DEFAULTS.get(name)
    if isinstance(default, str):
        default = values.get(default)
    elif isinstance(default, tuple):
        parts = [values[part] for part in default if part in values]
        default = sum(parts) / len(parts) if len(parts) == len(default) else None
    return default is not None and isinstance(value, int | float) and math.isclose(value, default, rel_tol=1e-6)


def _judge_one(
    expected: Expected,
    seen: Result,
    rows: dict[tuple[int, int], dict[str, Any]],
    stations: int,
    stated: dict[str, set[str]],
) -> tuple[str, Any]:
    """What became of a value; ``stated`` is what each cell states: one use of it is no misuse for another value."""
    where = [(expected.machine, s) for s in (range(stations) if expected.station < 0 else [expected.station])]
    own = [rows.get(key) for key in where]
    names = expected.parameter.split("|")
    if names in (["machine"], ["station"]):
        got: list[Any] = [None if row is None else row[names[0]] for row in own]
    else:
        got = [
            value for row in own for value in ([None] if row is None else [row["values"].get(name) for name in names])
        ]
    asked = seen.names(expected)
    if names == ["machine"]:
        got = [value for value in got if value is not None] or [None]
    if expected.verdict == "ask":
        # a use that is marked as an interpretation asks as well
        # a parameter without a value uses no cell, whatever names the cell as the place where it is missing
        used = [value for value in got if value is not None] or [
            p for a in expected.own for p in seen.used.get(a, ()) if p not in names
        ]
        if not used:
            return ("right" if asked else "lost"), None
        return ("right" if any(a in seen.marked for a in expected.own) else "wrong"), used
    if all(value is not None and _same(expected.value, value) for value in got):
        return "right", got[0]
    if names == ["station"] and all(value is not None and _apart(value) == _apart(expected.value) for value in got):
        return "right", got[0]
    fine = "right" if expected.verdict == "either" else "asked"
    if names[0] in ("machine", "station"):
        return (fine if asked else "lost"), got[0]
    other = [value for value in got if value is not None and not _same(expected.value, value)]
    if other:
        if all(_part_of(expected.value, value) for value in other):
            return (fine if asked else "lost"), other[0]
        return "wrong", other[0]
    in_use = {name for row in rows.values() for name in row["values"]}
    misused = {p for a in expected.own for p in seen.used.get(a, ()) if p not in stated[a]} - _companions(expected)
    if misused := misused & in_use:
        return "wrong", f"used as {', '.join(sorted(misused))}"
    return (fine if asked else "lost"), None


def _companions(expected: Expected) -> set[str]:
    """Parameters that may stand in the same cell."""
    if expected.form == "d x D x B in one cell":
        return {"bore_diameter", "outside_diameter", "ring_width"}
    if expected.parameter == "bearing_designation":
        return {
            "bore_diameter",
            "outside_diameter",
            "ring_width",
            "ring_chamfer",
            "bearing_type",
            "closure",
            "clearance_class",
            "contact_angle",
        }
    if expected.form == "fit pair column":
        return {"shaft_seat_diameter", "housing_seat_diameter"}
    return set()


def entry_point(root: Path) -> list[str]:
    """How the program of a source tree is started: the entry point of its ``pyproject.toml``."""
    scripts = tomllib.loads((root / "pyproject.toml").read_text(encoding="utf-8"))["project"]["scripts"]
    module, function = next(iter(scripts.values())).split(":")
    return [sys.executable, "-c", f"from {module} import {function}; {function}()"]


def run(tables: list[Table], folder: Path, command: list[str]) -> Iterator[Outcome]:
    """Write the tables, review the folder once, judge each result.

    Parameters
    ----------
    tables : list of Table
        As made.
    folder : Path
        An empty folder.
    command : list of str
        What starts the program.

    Yields
    ------
    Outcome
        One per table, in order.

    Raises
    ------
    RuntimeError
        If the program could not be run.
    """
    source, out = folder / "tables", folder / "results"
    source.mkdir(parents=True, exist_ok=True)
    for table in tables:
        (source / (table.name + table.suffix)).write_bytes(table.content)
    done = subprocess.run(
        [*command, "review", str(source), "--out", str(out), "--write", "json"],
        capture_output=True,
        text=True,
        check=False,
    )
    (folder / "messages.txt").write_text(done.stdout + done.stderr, encoding="utf-8")
    if done.returncode not in (0, 1, 2, 3) or not out.is_dir():
        raise RuntimeError(f"{' '.join(command)} ended with {done.returncode}: {done.stderr[-2000:]}")
    for table in tables:
        path = out / f"{table.name}.result.json"
        yield judge(table, json.loads(path.read_text(encoding="utf-8")) if path.exists() else None)


def report(outcomes: list[Outcome], losses: bool) -> str:
    """The figures as text: overall, by each choice of the grammar, by form and parameter."""
    lines = []
    judged = [j for o in outcomes for j in o.judged]
    count = Counter(j.outcome for j in judged)
    tables = [o for o in outcomes if o.table.is_table]
    foreign = [o for o in outcomes if not o.table.is_table]
    total = max(1, len(judged))
    lines.append(f"tables {len(outcomes)}, values stated {len(judged)}")
    lines.append("  ".join(f"{k} {count[k]} ({count[k] / total:.1%})" for k in OUTCOMES))
    lines.append(f"invented {sum(len(o.invented) for o in tables)}")
    other = [j for j in judged if j.outcome == "right" and j.expected.parameter == "station" and j.got is not None]
    other = [j for j in other if not _same(j.expected.value, j.got)]
    lines.append(f"names of positions that are right but for the word for the bearing {len(other)}")
    refused = sum(all(j.outcome == "refused" for j in o.judged) for o in tables)
    whole = sum(all(j.outcome == "right" for j in o.judged) and not o.invented for o in tables)
    lines.append(f"tables read whole {whole} of {len(tables)}, refused {refused}")
    lines.append(
        f"documents without seats {len(foreign)}, of which values were read {sum(bool(o.invented) for o in foreign)}"
    )
    kinds = ("layout", "language", "tolerance", "units", "length unit", "bearing", "encoding")
    groups: dict[str, dict[str, Counter[str]]] = {}
    for j in judged:
        labels = {kind: j.table.kinds.get(kind, "") for kind in kinds}
        labels |= {
            "form of the value": j.expected.form,
            "parameter": j.expected.parameter,
            "expectation": j.expected.verdict,
        }
        for kind, label in labels.items():
            groups.setdefault(kind, {}).setdefault(label, Counter())[j.outcome] += 1
    for kind, by_label in groups.items():
        lines += ["", f"{kind:34}" + "".join(f"{k:>9}" for k in (*OUTCOMES, "right %"))]
        for label, c in sorted(by_label.items(), key=lambda item: item[1]["right"] / item[1].total()):
            lines.append(
                f"  {label[:31]:32}" + "".join(f"{c[k]:9}" for k in OUTCOMES) + f"{c['right'] / c.total():9.0%}"
            )
    if losses:
        lines.append("")
        for o in outcomes:
            for j in o.judged:
                if j.outcome != "right":
                    e = j.expected
                    where = f"{' '.join(e.own[:3])} {' | '.join(e.words)}"
                    what = f"{e.machine}/{e.station} {e.parameter} = {e.value} [{e.form}]"
                    lines.append(f"{o.table.name} {j.outcome}: {what} {where}; got {j.got}")
            lines += [f"{o.table.name} invented: {where} {name} = {value}" for where, name, value in o.invented]
    return "\n".join(lines) + "\n"


def seeds(text: str) -> list[int]:
    """Seeds of ``1-60`` or ``3,7,1001-1010``."""
    found: list[int] = []
    for part in text.split(","):
        first, _, last = part.partition("-")
        found += range(int(first), int(last or first) + 1)
    return found


def main() -> None:
    parser = argparse.ArgumentParser(description="How much of tables in practice is read.")
    parser.add_argument("seeds", nargs="?", default="1-60")
    parser.add_argument("--losses", action="store_true", help="list every value that is not right")
    parser.add_argument("--keep", type=Path, help="leave tables and result files in this folder")
    parser.add_argument("--command", help="what starts the program; the entry point of ./pyproject.toml where absent")
    options = parser.parse_args()
    command = options.command.split() if options.command else entry_point(Path.cwd())
    tables = [grammar.make(seed) for seed in seeds(options.seeds)]
    with tempfile.TemporaryDirectory() as scratch:
        folder = options.keep or Path(scratch)
        outcomes = list(run(tables, folder, command))
        print(report(outcomes, options.losses), end="")


if __name__ == "__main__":
    main()
