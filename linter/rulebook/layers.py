"""Builds a rulebook from its files: clauses as they stand, or a company's layer on top of what it extends."""

import csv
from collections.abc import Mapping
from difflib import get_close_matches
from pathlib import Path
from typing import Any

import numpy as np
from attrs import evolve

from linter.model.findings import TABLE_CHAPTER, Layer, Loosened
from linter.model.wording import limit_text
from linter.rulebook.defaults import defaults_of
from linter.rulebook.gates import gate_text, is_milder
from linter.rulebook.looser import are_milder, is_looser, number_or_text
from linter.rulebook.model import (
    ORIGIN,
    PROVENANCES,
    Chapter,
    Clause,
    Rulebook,
    RulebookError,
    Source,
    Table,
)
from linter.rulebook.parts import changed_limit, gate_of, new_limit, parameters_of, steps_of
from linter.rulebook.repairs import repairs_of

TEXTS = ("title", "question", "consequence", "remedy", "picture")
ARITHMETIC = ("check", "arithmetic", "measure", "needs", "uses")


class Builder:
    """Puts the files of one folder on top of what it extends.

    Parameters
    ----------
    folder : Path
        The rulebook folder.
    head : dict
        Its ``rulebook.toml``.
    base : Rulebook or None
        What it extends.
    """

    def __init__(self, folder: Path, head: Mapping[str, Any], base: Rulebook | None) -> None:
        self.folder, self.head, self.base = folder, head, base
        self.layer = base is not None
        self.clauses: dict[str, Clause] = dict(base.clauses) if base else {}
        self.sources: dict[str, Source] = dict(base.sources) if base else {}
        self.loosened: list[Loosened] = list(base.loosened) if base else []
        self.reasons: dict[str, str] = dict(base.reasons) if base else {}
        self.file_of: dict[str, str] = {}

    def build(self, sources: Mapping[str, Any], files: Mapping[str, Mapping[str, Any]]) -> Rulebook:
        """The rulebook.

        Parameters
        ----------
        sources : dict
            The folder's ``sources.toml``.
        files : dict
            Its clause files by name.

        Returns
        -------
        Rulebook
            What it extends with this folder's changes; whether its checks run with them is tried elsewhere.

        Raises
        ------
        RulebookError
            With file and clause, where something cannot be used.
        """
        if self.layer and self.head.get("kind") == "version":
            raise RulebookError("rulebook.toml", None, "only what ships with the program is a version; this is a layer")
        for key, value in sources.items():
            if self.layer and key in self.sources:
                reason = f"source {key!r} is already in the bibliography; name it anew"
                raise RulebookError("sources.toml", None, reason)
            self.sources[key] = Source(key, value["title"], value.get("edition", ""), value.get("note", ""))
        for file, content in files.items():
            for raw in content["clauses"]:
                name = raw["id"]
                if name in self.file_of:
                    where = "in this file" if self.file_of[name] == file else f"in {self.file_of[name]}"
                    raise RulebookError(file, name, f"the id stands already {where}; ids are unique")
                self.file_of[name] = file
                self.clauses[name] = self.changed(file, raw) if name in self.clauses else self.fresh(file, raw)
        by_key = {c.key: c for c in self.base.chapters} if self.base else {}
        by_key |= {c["key"]: Chapter(c["key"], c["title"], c["purpose"]) for c in self.head.get("chapters", ())}
        self.check_whole(list(by_key))
        return Rulebook(
            name=self.head["name"],
            version=self.head["version"],
            title=self.head["title"],
            chapters=tuple(by_key.values()),
            clauses={c.id: c for c in sorted(self.clauses.values(), key=lambda c: list(by_key).index(c.chapter))},
            sources=self.sources,
            layers=(Layer(self.head["name"], self.head["version"]), *(self.base.layers if self.base else ())),
            loosened=tuple(self.loosened),
            reasons=self.reasons,
            reason=self.head.get("reason", ""),
            concession_factor=self.concession_factor(),
            defaults=defaults_of(self.base, self.head),
            digits=self.head.get("digits", self.base.digits if self.base else None),
        )

    def concession_factor(self) -> float | None:
        """How far a concession reaches; a layer may only say that it reaches less far."""
        before = self.base.concession_factor if self.base else None
        stated = self.head.get("concession_factor", before)
        if self.base and stated is not None and stated > self.base.concessions_up_to:
            reason = (
                f"concession_factor is {stated:g}; a layer may lower the {self.base.concessions_up_to:g}, not raise it"
            )
            raise RulebookError("rulebook.toml", None, reason)
        return None if stated is None else float(stated)

    def check_whole(self, chapters: list[str]) -> None:
        """Refuse clauses without a chapter, titles that stand twice and sources that are not in the bibliography."""
        titles: dict[str, str] = {}
        for name, clause in self.clauses.items():
            file = self.file_of.get(name, "rulebook.toml")
            if clause.chapter not in chapters:
                raise RulebookError(file, name, f"its chapter is not one of {', '.join(chapters)}")
            if clause.title in titles:
                raise RulebookError(file, name, f"its title is that of {titles[clause.title]}: {clause.title!r}")
            titles[clause.title] = name
            for cause in clause.follows:
                if cause not in self.clauses or cause == name:
                    raise RulebookError(file, name, f"it follows {cause!r}, which is no other clause of the rulebook")
            if name in self.file_of:
                self.check_origins(file, clause)

    def check_origins(self, file: str, clause: Clause) -> None:
        """Refuse values without provenance and sources that are not in the bibliography."""
        for source in clause.sources:
            self.check_source(file, clause.id, source, "sources")
        for key, limit in clause.limits.items():
            self.check_source(file, clause.id, limit.source, f"limit {key}")
        for table in clause.tables.values():
            for number, row in enumerate(table.rows, 2):
                cells = dict(zip(table.columns, row, strict=True))
                self.check_source(table.file, clause.id, cells["source"], f"row {number}")
                if cells["provenance"] not in PROVENANCES:
                    reason = f"row {number}: provenance {cells['provenance']!r} is none of {', '.join(PROVENANCES)}"
                    raise RulebookError(table.file, clause.id, reason)

    def check_source(self, file: str, clause: str, keys: str, where: str) -> None:
        """Refuse a source that is not in the bibliography."""
        for key in keys.split("; "):
            if key != "common practice" and key not in self.sources:
                raise RulebookError(file, clause, f"{where}: source {key!r} is not in the bibliography (sources.toml)")

    def fresh(self, file: str, raw: Mapping[str, Any]) -> Clause:
        """A clause that was not there before."""
        name = raw["id"]
        if "check" not in raw:
            close = get_close_matches(name, self.clauses, 1)
            hint = f"; is {close[0]} meant?" if close else ""
            raise RulebookError(file, name, f"there is no such clause to change{hint}")
        if self.layer:
            self.reasons[name] = raw.get("reason", "added by this layer")
        return Clause(
            id=name,
            title=raw["title"],
            level=raw["level"],
            check=raw["check"],
            question=raw["question"],
            arithmetic=raw["arithmetic"],
            measure=raw["measure"],
            needs=parameters_of(file, name, raw.get("needs", ())),
            uses=parameters_of(file, name, raw.get("uses", ())),
            limits={key: new_limit(file, name, key, value) for key, value in raw.get("limits", {}).items()},
            tables={key: self.table(file, name, value) for key, value in raw.get("tables", {}).items()},
            steps=steps_of(file, name, raw["steps"]),
            messages=dict(raw["messages"]),
            consequence=raw["consequence"],
            remedy=raw["remedy"],
            sources=tuple(raw["sources"]),
            picture=raw.get("picture", ""),
            **gate_of(file, name, raw),
            follows=tuple(raw.get("follows", ())),
            repairs=repairs_of(file, name, raw.get("repairs", ())),
        )

    def table(self, file: str, clause: str, raw: Mapping[str, Any]) -> Table:
        """A limit table from its CSV file."""
        path = (self.folder / "tables" / raw["file"]).resolve()
        if path.parent != (self.folder / "tables").resolve() or not path.is_file():
            raise RulebookError(file, clause, f"table {raw['file']!r} is not a file of the folder tables")
        try:
            with path.open(encoding="utf-8-sig", newline="") as stream:
                rows = [tuple(cell.strip() for cell in row) for row in csv.reader(stream) if row]
        except (UnicodeDecodeError, csv.Error) as error:
            raise RulebookError(path.name, clause, f"cannot be read as CSV: {error}") from None
        if len(rows) < 2:
            raise RulebookError(path.name, clause, "the table needs a header and at least one row")
        columns = rows[0]
        if len(set(columns)) < len(columns) or not {"source", "provenance"} <= set(columns):
            reason = f"the columns differ and include source and provenance; read were {', '.join(columns)}"
            raise RulebookError(path.name, clause, reason)
        for number, row in enumerate(rows[1:], 2):
            if len(row) != len(columns):
                raise RulebookError(path.name, clause, f"row {number} has {len(row)} cells, the header {len(columns)}")
        looser = dict(raw.get("looser", {}))
        for column in looser:
            if column not in columns:
                raise RulebookError(file, clause, f"looser names {column!r}, which is no column of {path.name}")
        return Table(path.name, columns, tuple(rows[1:]), looser)

    def changed(self, file: str, raw: Mapping[str, Any]) -> Clause:
        """A clause that is already there, with what a layer states of it."""
        old = self.clauses[raw["id"]]
        for key in ARITHMETIC:
            if key in raw:
                reason = f"a layer does not change {key}; switch the clause off and add one of its own"
                raise RulebookError(file, old.id, reason)
        new = evolve(old, **{key: raw[key] for key in TEXTS if key in raw})
        loosened: list[str] = []
        if raw.get("off") and new.chapter == TABLE_CHAPTER:
            reason = (
                "a clause about the table itself cannot be switched off: no verdict is better than the table under it"
            )
            raise RulebookError(file, old.id, reason)
        if raw.get("off"):
            new = evolve(new, off=raw["reason"])
            loosened.append("switched off")
        for key, value in raw.get("limits", {}).items():
            before = self.known(file, old.id, "limit", key, old.limits)
            after = changed_limit(file, old.id, key, before, value)
            new = evolve(new, limits={**new.limits, key: after})
            if is_looser(before.looser, before.value, after.value):
                was, now = limit_text(before.value, before.unit), limit_text(after.value, after.unit)
                loosened.append(f"{key}: {was} -> {now}")
        for key, value in raw.get("tables", {}).items():
            before_table = self.known(file, old.id, "table", key, old.tables)
            table, lines = self.changed_table(file, old.id, key, before_table, value)
            new = evolve(new, tables={**new.tables, key: table})
            loosened += lines
        if "steps" in raw:
            new = evolve(new, steps=steps_of(file, old.id, raw["steps"]))
            if are_milder(old.steps, new.steps):
                loosened.append("severity steps made milder")
        if "messages" in raw:
            new = evolve(new, messages={**new.messages, **raw["messages"]})
        if "sources" in raw:
            new = evolve(new, sources=tuple(raw["sources"]))
        if "repairs" in raw:
            new = evolve(new, repairs=repairs_of(file, old.id, raw["repairs"]))
        new = evolve(new, **gate_of(file, old.id, raw))
        if is_milder(old, new):
            loosened.append(f"must be judged: {gate_text(old)} -> {gate_text(new)}")
        self.reasons[old.id] = raw["reason"]
        self.loosened += [Loosened(old.id, self.head["name"], what, raw["reason"]) for what in loosened]
        return new

    def known(self, file: str, clause: str, kind: str, key: str, there: Mapping[str, Any]) -> Any:
        """The limit or table of that name, or a refusal."""
        if key not in there:
            names = ", ".join(there) or "none"
            raise RulebookError(file, clause, f"it has no {kind} {key!r}; its {kind}s are: {names}")
        return there[key]

    def changed_table(
        self, file: str, clause: str, key: str, old: Table, raw: Mapping[str, Any]
    ) -> tuple[Table, list[str]]:
        """A table with cells changed, rows added, or another file in its place; and what of it loosens."""
        if "file" in raw:
            new = self.table(file, clause, {"file": raw["file"], "looser": old.looser})
            if not set(old.columns) <= set(new.columns):
                reason = f"table {key}: {new.file} lacks the columns {', '.join(set(old.columns) - set(new.columns))}"
                raise RulebookError(file, clause, reason)
            return new, [f"table {key} replaced by {new.file}"]
        rows = [dict(zip(old.columns, row, strict=True)) for row in old.rows]
        lines: list[str] = []
        for change in raw.get("rows", ()):
            where = {k: str(v) for k, v in change["where"].items()}
            words = ", ".join(f"{k} {v}" for k, v in where.items())
            found = [row for row in rows if all(row.get(k) == v for k, v in where.items())]
            if len(found) != 1:
                raise RulebookError(file, clause, f"table {key}: {len(found)} rows where {words}; one is expected")
            (row,) = found
            new_cells = self.cells(file, clause, key, old, change["set"])
            if not set(new_cells) <= set(ORIGIN) and not {"source", "provenance"} <= set(new_cells):
                raise RulebookError(file, clause, f"table {key}: a changed value states its source and provenance")
            for column, value in new_cells.items():
                before, row[column] = row[column], value
                looser = old.looser.get(column, "either")
                if column not in ORIGIN and is_looser(looser, number_or_text(before), number_or_text(value)):
                    lines.append(f"table {key}, {words}: {column} {before or '(blank)'} -> {value or '(blank)'}")
        for added in raw.get("add", ()):
            cells = self.cells(file, clause, key, old, added)
            rows.append({column: cells.get(column, "") for column in old.columns})
            lines.append(
                f"table {key}, row added: {', '.join(f'{k} {v}' for k, v in cells.items() if k not in ORIGIN)}"
            )
        return evolve(old, rows=tuple(tuple(row[c] for c in old.columns) for row in rows)), lines

    def cells(self, file: str, clause: str, key: str, table: Table, raw: Mapping[str, Any]) -> dict[str, str]:
        """Cells of a layer as text, of known columns and of the kind that stands there."""
        arrays = table.arrays
        cells = {column: str(value) for column, value in raw.items()}
        for column, value in cells.items():
            if column not in table.columns:
                reason = f"table {key} has no column {column!r}; its columns are {', '.join(table.columns)}"
                raise RulebookError(file, clause, reason)
            is_number = arrays[column].dtype != object and not np.isnan(arrays[column]).all()
            if is_number and value and not isinstance(number_or_text(value), float):
                raise RulebookError(file, clause, f"table {key}: {column} {value!r} is not a number")
        return cells
