"""A rulebook as records: clauses, limits, tables, steps, sources. The model knows nothing of loading."""

import hashlib
import json
import re
from collections.abc import Mapping
from functools import cached_property
from typing import Any

import numpy as np
from attrs import field, fields, frozen, has
from numpy.typing import NDArray

from linter.model.findings import Layer, Loosened, RulebookRecord

#: What releases before 2026.4 are held to, which say nothing of it; common practice.
UNSTATED_CONCESSION_FACTOR = 2.0
#: Columns of a limit table that say where a row comes from.
ORIGIN = ("source", "provenance", "note")
#: A word in braces of a message: ``{name}``; ``{smallest to largest}``, a fit by its loose and its tight end
#: (``as clearance`` where the figures are clearances); ``{name as clearance}`` and ``{name as interference}``, by the
#: other name where it is negative.
PLACEHOLDER = re.compile(r"\{([A-Za-z_0-9]+)(?: to ([A-Za-z_0-9]+))?(?: as (clearance|interference))?\}")
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

    @cached_property
    def arrays(self) -> Mapping[str, NDArray[Any]]:
        """Column name to array: float where every filled cell is a number (blank is NaN), else object text."""
        arrays: dict[str, NDArray[Any]] = {}
        for index, name in enumerate(self.columns):
            cells = [row[index] for row in self.rows]
            try:
                arrays[name] = np.array([float(cell) if cell else np.nan for cell in cells])
            except ValueError:
                arrays[name] = np.array(cells, dtype=object)
            arrays[name].flags.writeable = False
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

    def __getitem__(self, name: str) -> Any:
        """The value of a limit; KeyError names the clause where the rulebook lacks it."""
        try:
            return self._clause.limits[name].value
        except KeyError:
            raise KeyError(f"clause {self._clause.id} has no limit {name!r}") from None

    def get(self, name: str, default: Any = None) -> Any:
        """The value of a limit that older rulebooks lack; the default without it."""
        return self[name] if name in self._clause.limits else default

    def has_table(self, name: str) -> bool:
        """Whether the rulebook has a limit table that older ones lack."""
        return name in self._clause.tables

    def table(self, name: str) -> Mapping[str, NDArray[Any]]:
        """A limit table as arrays by column; KeyError names the clause where the rulebook lacks it."""
        try:
            table = self._clause.tables[name]
        except KeyError:
            raise KeyError(f"clause {self._clause.id} has no table {name!r}") from None
        return table.arrays


@frozen(eq=False)
class Clause:
    """One clause of the rulebook.

    ``level`` is ``station`` or ``machine``; ``check`` names a function as ``module.function`` of ``linter.checks``;
    ``needs`` are the parameters without which it is not assessed, ``uses`` those it also looks at. ``measure`` says in
    words what the severity steps are compared with. ``gate`` and ``must_when`` say whether it must be judged before the
    gate may open, where that does not follow from what it can come to (:mod:`linter.rulebook.gates`). ``follows`` names
    clauses whose finding explains one of this clause at the same position, the first cause first. ``repairs`` names the
    parameters that repair it in the order they are tried, ``tighter`` or ``looser`` before a seat that helps one way
    only (:mod:`linter.rulebook.repairs`).
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
    gate: str = ""
    must_when: tuple[Mapping[str, Any], ...] = ()
    follows: tuple[str, ...] = ()
    repairs: tuple[str, ...] = ()

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


@frozen
class Default:
    """A word that stands in for a choice that a table does not state; every use of it is shown as an assumption.

    Attributes
    ----------
    parameter, value : str
        A choice parameter and the word.
    why : str
        Why this word: what of it is on the safe side, or how far it is usual.
    unless : str
        A parameter that says the same in another way: where it is stated nothing is assumed. Empty for none.
    by_size : bool
        True where it holds only for a bearing whose size is printed for that word alone.
    when : mapping
        Conditions as those of a clause's ``must_when``, all of which must hold; at every position, where the parameter
        is one of the machine.
    not_when : tuple of mapping
        Conditions likewise; where one of them holds at any position of the machine nothing is assumed, and neither
        beside a designation that is a pair.
    by_designation : bool
        True where it holds only behind a designation of which every sign is read.
    """

    parameter: str
    value: str
    why: str
    unless: str = ""
    by_size: bool = False
    when: Mapping[str, Any] = field(factory=dict)
    not_when: tuple[Mapping[str, Any], ...] = ()
    by_designation: bool | None = None  # left out of the hash of releases that do not have it


@frozen(eq=False)
class Rulebook:
    """A rulebook with every layer applied.

    ``reasons`` says for each clause that a layer or newer version changed or added why; ``reason`` why the outermost
    layer or version is there at all; ``concession_factor`` how many times the limit of a clause a concession reaches;
    ``digits`` how many significant digits its messages give a computed quantity (as many as there are where absent).
    """

    name: str
    version: str
    title: str
    chapters: tuple[Chapter, ...]
    clauses: Mapping[str, Clause]
    sources: Mapping[str, Source]
    layers: tuple[Layer, ...]
    loosened: tuple[Loosened, ...]
    reasons: Mapping[str, str]
    reason: str = ""
    concession_factor: float | None = None
    defaults: tuple[Default, ...] = ()
    digits: int | None = None

    @property
    def concessions_up_to(self) -> float:
        """How many times the limit of a clause a concession reaches at most; releases that do not say: twice."""
        return UNSTATED_CONCESSION_FACTOR if self.concession_factor is None else self.concession_factor

    @cached_property
    def sha256(self) -> str:
        """SHA-256 over everything in it, every layer applied."""
        return hashlib.sha256(canonical_json(self).encode()).hexdigest()

    def record(self) -> RulebookRecord:
        """What the result file says of it."""
        return RulebookRecord(self.name, self.version, self.sha256, self.layers, self.loosened)

    def by_chapter(self) -> list[tuple[Chapter, list[Clause]]]:
        """Chapters with their clauses, in the order of the rulebook."""
        return [(c, [k for k in self.clauses.values() if k.chapter == c.key]) for c in self.chapters]


def content_of(book: Rulebook) -> dict[str, Any]:
    """Everything in a rulebook as plain data, in its own order.

    What is empty is left out, so that a field that later programs add does not change the hash of an old version.
    """
    found: dict[str, Any] = _plain(book)
    return found


def _plain(value: Any) -> Any:
    """Records as dictionaries without what is empty, at any depth; rows of plain values as they are."""
    if isinstance(value, Mapping):
        return {key: _plain(entry) for key, entry in value.items()}
    if isinstance(value, tuple | list) and value and (has(type(value[0])) or isinstance(value[0], Mapping)):
        return [_plain(entry) for entry in value]
    if has(type(value)):
        stated = ((attribute.name, getattr(value, attribute.name)) for attribute in fields(type(value)))
        return {name: _plain(entry) for name, entry in stated if entry not in _EMPTY}
    return value


def canonical_json(book: Rulebook) -> str:
    """Everything in a rulebook, with sorted keys and no spaces: what the hash is taken over."""
    return json.dumps(content_of(book), sort_keys=True, separators=(",", ":"), ensure_ascii=False)


_EMPTY: tuple[Any, ...] = (None, "", (), [], {})
