"""The rulebook: clauses and limits as data, in versions and layers.

A rulebook is a folder with ``rulebook.toml`` (name, version, chapters, what it extends), ``sources.toml`` (the
bibliography), ``clauses/*.toml`` and ``tables/*.csv``. A version or a company layer states ``extends`` and only what
differs. The program holds no limit of its own.
"""

import csv
import hashlib
import json
import tomllib
from collections.abc import Mapping
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.findings import SEVERITIES, Layer, Loosened, RulebookRecord
from linter.packaged import data_folder
from linter.vocabulary import vocabulary

PROVENANCES = ("read", "from memory", "common practice", "derived")


class RulebookError(ValueError):
    """A rulebook that cannot be used; the text names file, clause and reason."""

    def __init__(self, file: str, clause: str | None, reason: str) -> None:
        self.file, self.clause, self.reason = file, clause, reason
        super().__init__(f"{file}: {f'clause {clause}: ' if clause else ''}{reason}")


@frozen
class Limit:
    """One limit of a clause, with where it comes from.

    Attributes
    ----------
    value : float, str or list
        The limit.
    unit : str
        Its unit; ``"1"`` for a pure number.
    source : str
        Key into the bibliography, or ``common practice``.
    provenance : str
        ``read``, ``from memory``, ``common practice`` or ``derived``.
    note : str
        What it is, in words.
    looser : str
        Which way it lets more pass: ``higher``, ``lower`` or ``either`` (any change counts as loosening).
    """

    value: Any
    unit: str
    source: str
    provenance: str
    note: str
    looser: str


@frozen(eq=False)
class Table:
    """A limit table of a clause, as text cells with a header, each row with its source."""

    file: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    looser: Mapping[str, str]

    def arrays(self) -> dict[str, NDArray[Any]]:
        """Column name to array: float where every filled cell is a number (blank is NaN), else object text."""
        arrays: dict[str, NDArray[Any]] = {}
        for index, name in enumerate(self.columns):
            cells = [row[index] for row in self.rows]
            try:
                arrays[name] = np.array([float(cell) if cell else np.nan for cell in cells])
            except ValueError:
                arrays[name] = np.array(cells, dtype=object)
        return arrays


@frozen
class Step:
    """From this measure on (exclusive) the finding has this severity."""

    above: float
    severity: str


class Limits:
    """The limits of one clause as its check sees them."""

    def __init__(self, clause: "Clause") -> None:
        self._clause = clause
        self._arrays: dict[str, dict[str, NDArray[Any]]] = {}

    def __getitem__(self, name: str) -> Any:
        """The value of a limit; KeyError names the clause where the rulebook lacks it."""
        try:
            return self._clause.limits[name].value
        except KeyError:
            raise KeyError(f"clause {self._clause.id} has no limit {name!r}") from None

    def table(self, name: str) -> dict[str, NDArray[Any]]:
        """A limit table as arrays by column."""
        if name not in self._arrays:
            try:
                self._arrays[name] = self._clause.tables[name].arrays()
            except KeyError:
                raise KeyError(f"clause {self._clause.id} has no table {name!r}") from None
        return self._arrays[name]


@frozen(eq=False)
class Clause:
    """One clause of the rulebook.

    ``level`` is ``station`` or ``machine``; ``check`` names a function as ``module.function`` of ``linter.checks``;
    ``needs`` are the parameters without which it is not assessed, ``uses`` those it also looks at. ``measure`` says in
    words what the severity steps are compared with.
    """

    id: str
    title: str
    level: str
    check: str
    question: str
    arithmetic: str
    measure: str
    needs: tuple[str, ...]
    uses: tuple[str, ...]
    limits: Mapping[str, Limit]
    tables: Mapping[str, Table]
    steps: tuple[Step, ...]
    messages: Mapping[str, str]
    consequence: str
    remedy: str
    sources: tuple[str, ...]
    picture: str
    off: str | None = None

    @property
    def chapter(self) -> str:
        """First part of the id."""
        return self.id.split(".")[0]

    def severity_of(self, measure: float) -> str | None:
        """Severity of one measure, or None where it is met."""
        found = None
        for step in self.steps:
            if measure > step.above:
                found = step.severity
        return found


@frozen
class Chapter:
    """A chapter: key (first part of its clause ids), title, and what it is about."""

    key: str
    title: str
    purpose: str


@frozen
class Source:
    """One entry of the bibliography."""

    key: str
    title: str
    edition: str
    note: str


@frozen(eq=False)
class Rulebook:
    """A rulebook with every layer applied."""

    name: str
    version: str
    title: str
    chapters: tuple[Chapter, ...]
    clauses: Mapping[str, Clause]
    sources: Mapping[str, Source]
    layers: tuple[Layer, ...]
    loosened: tuple[Loosened, ...]
    reasons: Mapping[str, str]
    sha256: str

    def record(self) -> RulebookRecord:
        """What the result file says of it."""
        return RulebookRecord(self.name, self.version, self.sha256, self.layers, self.loosened)

    def by_chapter(self) -> list[tuple[Chapter, list[Clause]]]:
        """Chapters with their clauses, in the order of the rulebook."""
        return [(c, [k for k in self.clauses.values() if k.chapter == c.key]) for c in self.chapters]


def released_versions() -> list[str]:
    """Versions that ship with the program, oldest first."""
    folders = (p for p in data_folder("ruleset").iterdir() if (p / "rulebook.toml").is_file())
    return sorted((p.name for p in folders), key=lambda v: tuple(int(part) for part in v.split(".")))


def load(name_or_path: str | None = None) -> Rulebook:
    """Load a rulebook with everything it extends.

    Parameters
    ----------
    name_or_path : str, optional
        A released version (``"2026.1"``), or the path of a rulebook folder or of its ``rulebook.toml``; the newest
        released version where absent.

    Raises
    ------
    RulebookError
        If it is not there or cannot be used; the text names file, clause and reason.
    """
    versions = released_versions()
    if name_or_path is None:
        return _released(versions[-1])
    if name_or_path in versions:
        return _released(name_or_path)
    path = Path(name_or_path)
    folder = path.parent if path.is_file() else path
    if not (folder / "rulebook.toml").is_file():
        raise RulebookError(
            name_or_path, None, f"neither a released version ({', '.join(versions)}) nor a folder with a rulebook.toml"
        )
    return _load_folder(folder, path.name if path.is_file() else "rulebook.toml", seen=())


@cache
def _released(version: str) -> Rulebook:
    return _load_folder(data_folder("ruleset") / version, "rulebook.toml", seen=())


def folder_hash(folder: Path) -> str:
    """SHA-256 over the names and bytes of every file of a rulebook folder, line ends normalised."""
    digest = hashlib.sha256()
    for path in sorted(p for p in folder.rglob("*") if p.is_file()):
        digest.update(path.relative_to(folder).as_posix().encode() + b"\0")
        digest.update(path.read_bytes().replace(b"\r\n", b"\n") + b"\0")
    return digest.hexdigest()


def recorded_hashes() -> dict[str, str]:
    """The recorded hash of each released version (``ruleset/released.toml``)."""
    path = data_folder("ruleset") / "released.toml"
    return {k: str(v) for k, v in _toml(path).get("sha256", {}).items()} if path.is_file() else {}


def _toml(path: Path) -> dict[str, Any]:
    try:
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise RulebookError(path.name, None, f"cannot be read as TOML: {error}") from None


def _load_folder(folder: Path, entry: str, seen: tuple[Path, ...]) -> Rulebook:
    folder = folder.resolve()
    if folder in seen:
        raise RulebookError(entry, None, f"extends itself by way of {folder.name}")
    head = _toml(folder / entry)
    files: dict[str, dict[str, Any]] = {}
    inline = {k: head.pop(k) for k in ("clauses",) if k in head}
    if inline:
        files[entry] = inline
    for path in sorted((folder / "clauses").glob("*.toml")):
        files[path.name] = _toml(path)
    trusted = folder.parent == data_folder("ruleset").resolve() and recorded_hashes().get(folder.name) == folder_hash(
        folder
    )
    if not trusted:
        from linter.rulebook_schema import validate

        validate(entry, "rulebook", head)
        for name, content in files.items():
            validate(name, "layer" if "extends" in head else "clauses", content)
    base = None
    if "extends" in head:
        base = _base(str(head["extends"]), folder, entry, (*seen, folder))
    return _Builder(folder, entry, head, base).build(files)


def _base(name: str, folder: Path, entry: str, seen: tuple[Path, ...]) -> Rulebook:
    if name in released_versions():
        return _released(name)
    target = folder / name
    if not (target / "rulebook.toml").is_file():
        raise RulebookError(
            entry,
            None,
            f"extends {name!r}, which is neither a released version ({', '.join(released_versions())}) "
            "nor a folder beside it with a rulebook.toml",
        )
    return _load_folder(target, "rulebook.toml", seen)


class _Builder:
    """Puts one folder on top of what it extends."""

    def __init__(self, folder: Path, entry: str, head: dict[str, Any], base: Rulebook | None) -> None:
        self.folder, self.entry, self.head, self.base = folder, entry, head, base
        self.clauses: dict[str, Clause] = dict(base.clauses) if base else {}
        self.sources: dict[str, Source] = dict(base.sources) if base else {}
        self.loosened: list[Loosened] = list(base.loosened) if base else []
        self.reasons: dict[str, str] = dict(base.reasons) if base else {}

    def build(self, files: Mapping[str, Mapping[str, Any]]) -> Rulebook:
        if (self.folder / "sources.toml").is_file():
            for key, value in _toml(self.folder / "sources.toml").items():
                self.sources[key] = Source(key, value["title"], value.get("edition", ""), value.get("note", ""))
        for file, content in files.items():
            here: set[str] = set()
            for raw in content.get("clauses", ()):
                name = raw.get("id")
                if name in here:
                    raise RulebookError(file, name, "stands twice in this file")
                here.add(name)
                if self.base is not None and name in self.base.clauses:
                    self.change(file, raw)
                elif name in self.clauses:
                    raise RulebookError(file, name, "the id is already taken; ids are unique")
                else:
                    self.clauses[name] = self.fresh(file, raw)
        chapters = tuple(Chapter(c["key"], c["title"], c["purpose"]) for c in self.head.get("chapters", ())) or (
            self.base.chapters if self.base else ()
        )
        keys = [c.key for c in chapters]
        for clause in self.clauses.values():
            if clause.chapter not in keys:
                raise RulebookError(self.entry, clause.id, f"its chapter is not one of {', '.join(keys)}")
            self.check_sources(clause)
        ordered = sorted(self.clauses.values(), key=lambda c: keys.index(c.chapter))
        layer = Layer(self.head["name"], str(self.head["version"]))
        book = Rulebook(
            name=self.head["name"],
            version=str(self.head["version"]),
            title=self.head["title"],
            chapters=chapters,
            clauses={c.id: c for c in ordered},
            sources=self.sources,
            layers=(layer, *(self.base.layers if self.base else ())),
            loosened=tuple(self.loosened),
            reasons=self.reasons,
            sha256="",
        )
        return evolve(book, sha256=hashlib.sha256(canonical_json(book).encode()).hexdigest())

    def check_sources(self, clause: Clause) -> None:
        used = [*clause.sources, *(limit.source for limit in clause.limits.values())]
        for table in clause.tables.values():
            if "source" not in table.columns or "provenance" not in table.columns:
                raise RulebookError(table.file, clause.id, "the table needs the columns source and provenance")
            used += [row[table.columns.index("source")] for row in table.rows]
        for source in dict.fromkeys(used):
            for key in source.split("; "):
                if key != "common practice" and key not in self.sources:
                    raise RulebookError(self.entry, clause.id, f"source {key!r} is not in the bibliography")

    def fresh(self, file: str, raw: Mapping[str, Any]) -> Clause:
        name = raw["id"]
        for parameter in (*raw.get("needs", ()), *raw.get("uses", ())):
            if parameter not in vocabulary():
                raise RulebookError(file, name, f"{parameter!r} is not a parameter of the vocabulary")
        clause = Clause(
            id=name,
            title=raw["title"],
            level=raw["level"],
            check=raw["check"],
            question=raw["question"],
            arithmetic=raw["arithmetic"],
            measure=raw["measure"],
            needs=tuple(raw.get("needs", ())),
            uses=tuple(raw.get("uses", ())),
            limits={key: self.limit(file, name, key, value) for key, value in raw.get("limits", {}).items()},
            tables={key: self.table(file, name, value) for key, value in raw.get("tables", {}).items()},
            steps=self.steps(file, name, raw["steps"]),
            messages=dict(raw["messages"]),
            consequence=raw["consequence"],
            remedy=raw["remedy"],
            sources=tuple(raw.get("sources", ())),
            picture=raw.get("picture", ""),
        )
        if self.base is not None and self.head.get("kind") == "layer":
            self.reasons[name] = raw.get("reason", "added by this layer")
        return clause

    def limit(self, file: str, clause: str, key: str, raw: Mapping[str, Any]) -> Limit:
        if raw["provenance"] not in PROVENANCES:
            raise RulebookError(file, clause, f"limit {key}: provenance is none of {', '.join(PROVENANCES)}")
        return Limit(
            raw["value"],
            raw.get("unit", "1"),
            raw["source"],
            raw["provenance"],
            raw.get("note", ""),
            raw.get("looser", "either"),
        )

    def table(self, file: str, clause: str, raw: Mapping[str, Any]) -> Table:
        path = (self.folder / "tables" / raw["file"]).resolve()
        if path.parent != (self.folder / "tables").resolve() or not path.is_file():
            raise RulebookError(file, clause, f"table {raw['file']!r} is not a file of the folder tables")
        with path.open(encoding="utf-8", newline="") as stream:
            rows = [tuple(cell.strip() for cell in row) for row in csv.reader(stream) if row]
        for number, row in enumerate(rows[1:], 2):
            if len(row) != len(rows[0]):
                raise RulebookError(path.name, clause, f"row {number} has {len(row)} cells, the header {len(rows[0])}")
        return Table(path.name, rows[0], tuple(rows[1:]), dict(raw.get("looser", {})))

    def steps(self, file: str, clause: str, raw: list[Mapping[str, Any]]) -> tuple[Step, ...]:
        steps = tuple(Step(float(s["above"]), s["severity"]) for s in raw)
        for before, after in pairwise(steps):
            graver = SEVERITIES.index(after.severity) < SEVERITIES.index(before.severity)
            if after.above <= before.above or not graver:
                raise RulebookError(file, clause, "the steps must rise, each graver than the one before")
        return steps

    def change(self, file: str, raw: Mapping[str, Any]) -> None:
        """Apply a layer's or a newer version's change to a clause that is already there."""
        old = self.clauses[raw["id"]]
        reason = raw.get("reason", "")
        if not reason:
            raise RulebookError(file, old.id, "a change needs a reason")
        new = old
        loosened: list[str] = []
        if raw.get("off"):
            new = evolve(new, off=reason)
            loosened.append("switched off")
        for key, value in raw.get("limits", {}).items():
            if key not in old.limits:
                if "check" not in raw:
                    raise RulebookError(file, old.id, f"it has no limit {key!r}; it has {', '.join(old.limits)}")
                continue
            before = old.limits[key]
            after = evolve(
                before,
                value=value["value"],
                source=value.get("source", before.source),
                provenance=value.get("provenance", before.provenance),
                note=value.get("note", before.note),
            )
            if type(after.value) is not type(before.value) and not (
                isinstance(after.value, (int, float)) and isinstance(before.value, (int, float))
            ):
                raise RulebookError(file, old.id, f"limit {key}: {after.value!r} is not like {before.value!r}")
            new = evolve(new, limits={**new.limits, key: after})
            if _is_looser(before.looser, before.value, after.value):
                loosened.append(f"{key} {before.value} -> {after.value} {before.unit}".rstrip(" 1"))
        for key, value in raw.get("tables", {}).items():
            new, lines = self.change_table(file, new, key, value)
            loosened += lines
        if "steps" in raw:
            steps = self.steps(file, old.id, raw["steps"])
            new = evolve(new, steps=steps)
            if _steps_looser(old.steps, steps):
                loosened.append("severity steps made milder")
        for key in ("title", "question", "consequence", "remedy"):
            if key in raw:
                new = evolve(new, **{key: raw[key]})
        if "messages" in raw:
            new = evolve(new, messages={**new.messages, **raw["messages"]})
        if "sources" in raw:
            new = evolve(new, sources=tuple(raw["sources"]))
        self.clauses[old.id] = new
        self.reasons[old.id] = reason
        if self.head.get("kind") == "layer":
            for what in loosened:
                self.loosened.append(Loosened(old.id, self.head["name"], what, reason))

    def change_table(self, file: str, clause: Clause, key: str, raw: Mapping[str, Any]) -> tuple[Clause, list[str]]:
        if key not in clause.tables:
            raise RulebookError(file, clause.id, f"it has no table {key!r}; it has {', '.join(clause.tables)}")
        table = clause.tables[key]
        rows = [dict(zip(table.columns, row, strict=True)) for row in table.rows]
        lines: list[str] = []
        for change in raw["rows"]:
            where = {k: str(v) for k, v in change["where"].items()}
            found = [row for row in rows if all(row.get(k) == v for k, v in where.items())]
            words = ", ".join(f"{k} {v}" for k, v in where.items())
            if len(found) != 1:
                raise RulebookError(file, clause.id, f"table {key}: {len(found)} rows where {words}; one is expected")
            for column, value in change["set"].items():
                if column not in table.columns:
                    raise RulebookError(file, clause.id, f"table {key} has no column {column!r}")
                before = found[0][column]
                found[0][column] = str(value)
                if column in ("source", "provenance", "note"):
                    continue
                looser = table.looser.get(column, "either")
                if _is_looser(looser, _number_or_text(before), _number_or_text(str(value))):
                    lines.append(f"{column} where {words}: {before} -> {value}")
        changed = Table(
            table.file, table.columns, tuple(tuple(r[c] for c in table.columns) for r in rows), table.looser
        )
        return evolve(clause, tables={**clause.tables, key: changed}), lines


def _number_or_text(cell: str) -> float | str:
    try:
        return float(cell)
    except ValueError:
        return cell


def _is_looser(looser: str, before: Any, after: Any) -> bool:
    if before == after:
        return False
    if looser == "either" or not (isinstance(before, (int, float)) and isinstance(after, (int, float))):
        return True
    return after > before if looser == "higher" else after < before


def _gravity(steps: tuple[Step, ...], measure: float) -> int:
    return max((len(SEVERITIES) - SEVERITIES.index(s.severity) for s in steps if measure > s.above), default=0)


def _steps_looser(before: tuple[Step, ...], after: tuple[Step, ...]) -> bool:
    points = {s.above for s in (*before, *after)}
    probes = [*points, *(np.nextafter(p, np.inf) for p in points)]
    return any(_gravity(after, p) < _gravity(before, p) for p in probes)


def content(book: Rulebook) -> dict[str, Any]:
    """Everything that decides a verdict or a text, as plain data: what the hash is taken over and compare looks at."""
    return {
        "name": book.name,
        "version": book.version,
        "clauses": {
            c.id: {
                "title": c.title,
                "level": c.level,
                "check": c.check,
                "question": c.question,
                "arithmetic": c.arithmetic,
                "measure": c.measure,
                "needs": c.needs,
                "uses": c.uses,
                "limits": {
                    k: {
                        "value": v.value,
                        "unit": v.unit,
                        "source": v.source,
                        "provenance": v.provenance,
                        "note": v.note,
                    }
                    for k, v in c.limits.items()
                },
                "tables": {k: {"columns": t.columns, "rows": t.rows} for k, t in c.tables.items()},
                "steps": [[s.above, s.severity] for s in c.steps],
                "messages": dict(c.messages),
                "consequence": c.consequence,
                "remedy": c.remedy,
                "sources": c.sources,
                "off": c.off,
            }
            for c in book.clauses.values()
        },
        "sources": {s.key: [s.title, s.edition, s.note] for s in book.sources.values()},
    }


def canonical_json(book: Rulebook) -> str:
    """The content with sorted keys and no spaces."""
    return json.dumps(content(book), sort_keys=True, separators=(",", ":"), ensure_ascii=False)
