"""What the report shows and in which order: the result object grouped for its readers, without any markup."""

import re
from collections.abc import Collection, Iterable, Mapping
from functools import cache
from typing import TypeVar

from attrs import field, frozen

from linter.model.findings import SEVERITIES, Assessment, MachineRecord, ReadCell, ReviewResult
from linter.model.many import Anew
from linter.model.vocabulary import vocabulary
from linter.model.wording import quantity_text
from linter.report.entries import Entry, entries_of
from linter.report.language import counted, in_words, say
from linter.report.unknown import SHOWN_PLACES, AssumedOnce, Wanted, assumed, place_name, unsolved, wanted
from linter.report.verdict import gate_reasons, rests_on
from linter.rulebook.model import Rulebook

DETAILS = {"full": 250, "lean": 1200, "gravest": None}
LARGEST = 4_900_000
#: Positions beyond which a table has the gravest findings in full and the others in a table.
POSITIONS = 200
#: Of such a table: findings in full, findings in the table, and lines of every other list.
IN_FULL, IN_TABLE, IN_LIST = 50, 2000, 200
#: Cells that a line of the index names before its remedy.
MOST_NAMED = 4
T = TypeVar("T")

MEANING = {
    "critical": "the bearing or its seat fails, or cannot be mounted as drawn",
    "major": "function or life is likely to suffer",
    "minor": "short of the rule, but likely to function",
    "remark": "worth a look",
}


@frozen
class Section:
    """One station, or a machine as a whole (``station`` None); ``entries`` are those with a finding here."""

    anchor: str
    machine: str
    station: str | None
    entries: tuple[Entry, ...]
    met: tuple[Assessment, ...]
    not_assessed: tuple[Assessment, ...]
    not_applicable: tuple[Assessment, ...]
    values: Mapping[str, object] | None

    def count(self, severity: str) -> int:
        """Findings of one severity, concessions left out."""
        return sum(i.severity == severity and i.outcome == "finding" for _, i in self.here)

    @property
    def conceded(self) -> int:
        """Findings that a concession covers."""
        return sum(i.outcome == "conceded" for _, i in self.here)

    @property
    def here(self) -> tuple[tuple[int, Assessment], ...]:
        """Findings and concessions of this position, each with the number of its entry."""
        return tuple((e.number, i) for e in self.entries for i in e.everything if i.station == self.station)


@frozen
class MachinePart:
    """A machine with its entries by gravity and its sections: itself first, then its stations."""

    anchor: str
    record: MachineRecord
    entries: tuple[Entry, ...]
    sections: tuple[Section, ...]


def same_text(cell: ReadCell) -> bool:
    """Whether a cell was understood just as it reads, its unit apart."""
    return cell.value.replace("\u00a0", " ").startswith(cell.read.replace("\u00a0", " "))


@frozen
class ReadRow:
    """One parameter as read and as understood at several stations of a machine."""

    parameter: str
    cells: tuple[ReadCell | None, ...]


@frozen
class ReadTable:
    """The values of one machine: ``heads`` are its stations, or the machine as a whole."""

    machine: str
    heads: tuple[str, ...]
    rows: tuple[ReadRow, ...]


@frozen
class NamedCell:
    """A parameter that a remedy names, and what the table says of it (``text`` empty where it says nothing)."""

    parameter: str
    cell: str
    text: str


@frozen
class Report:
    """Everything the templates ask for.

    ``detail`` is a key of :data:`DETAILS`: ``full``; ``lean``, with drawings and working for critical and major
    findings only and the reasons of a clause once at the end; ``gravest``, with the machines of the :data:`IN_FULL`
    gravest findings as in ``lean`` and the :data:`IN_TABLE` next findings as a table (``others``). A table with more
    findings than the figure there, or a report above :data:`LARGEST` bytes, takes the next one; one of more than
    :data:`POSITIONS` positions the last. ``linked`` is the number of the last entry that the page has.
    """

    detail: str
    machines: tuple[MachinePart, ...]
    entries: tuple[Entry, ...]
    wanted: tuple[Wanted, ...]
    unsolved: tuple[tuple[str, str], ...]
    assumed: tuple[AssumedOnce, ...]
    understood: tuple[ReadTable, ...]
    clauses: Mapping[str, str]
    sources: Mapping[str, str]
    gate: tuple[str, ...]
    rests: tuple[str, ...]
    cells: Mapping[tuple[str, str | None, str], ReadCell]
    by_severity: Mapping[str, tuple[Entry, ...]] = field(factory=dict)
    others: tuple[Entry, ...] = ()
    linked: int = 0
    alone: bool = False
    most: int | None = None

    def where(self, item: Assessment) -> str:
        """A position in words: the machine only where there are several."""
        if self.alone:
            return item.station or say("whole machine")
        return place_name(item.machine, item.station)

    def places(self, entry: Entry) -> str:
        """The positions of an entry in words."""
        if len(entry.items) == 1 or entry.item.station is None:
            return self.where(entry.item)
        names = [item.station or "" for item in entry.items]
        if len(names) > SHOWN_PLACES:
            names = [*names[: SHOWN_PLACES - 1], say("{count} more", count=len(names) - SHOWN_PLACES + 1)]
        text = f"{', '.join(names[:-1])} {say('and')} {names[-1]}"
        return text if self.alone else place_name(entry.item.machine, text)

    @property
    def counted(self) -> str:
        """How many findings there are, how many of them follow from others, and how many assessments that is."""
        entries = [entry for entry in self.entries if entry.item.outcome == "finding"]
        following = sum(len(entry.following) for entry in entries)
        found = sum(len(entry.everything) for entry in entries)
        number = len(entries) + following
        if not found:
            return ""
        text = say("{count} finding" if number == 1 else "{count} findings", count=number)
        if found > number:
            text += f" ({say('{count} with each position counted', count=found)})"
        if following:
            one, many = "of which {count} follows from others", "of which {count} follow from others"
            text += f", {counted(following, one, many)}"
        return say("{text}.", text=text)

    def by_clause(self, severity: str) -> list[tuple[str, list[Entry]]]:
        """Entries of one severity by the title of their clause, the commonest first."""
        groups: dict[str, list[Entry]] = {}
        for entry in self.by_severity[severity]:
            groups.setdefault(entry.item.title, []).append(entry)
        return sorted(groups.items(), key=lambda group: (-len(group[1]), group[0]))


def report_of(result: ReviewResult, rulebook: Rulebook, detail: str) -> Report:
    """Group a result for the report.

    Parameters
    ----------
    result : ReviewResult
        As reviewed.
    rulebook : Rulebook
        The one it was reviewed with.
    detail : str
        A key of :data:`DETAILS`.

    Returns
    -------
    Report
        What the templates show.
    """
    entries = entries_of(i for i in result.to_act_on if i.outcome in ("finding", "conceded"))
    shown, linked = None, len(entries)
    others: tuple[Entry, ...] = ()
    if detail == "gravest":
        shown = {entry.item.machine for entry in entries[:IN_FULL]}
        others, linked = entries[IN_FULL:IN_TABLE], min(len(entries), IN_TABLE)
    machines = _machines(result, entries if shown is None else entries[:IN_FULL], shown)
    clauses, sources = _cited(result, rulebook, entries[:linked])
    cells = [c for c in _of(result.understood, shown) if shown is None or c.machine in shown]
    return Report(
        detail=detail,
        machines=machines,
        entries=entries,
        wanted=wanted(result),
        unsolved=unsolved(result),
        assumed=assumed(result),
        understood=_understood(cells),
        clauses=clauses,
        sources=sources,
        gate=gate_reasons(result),
        rests=rests_on(result),
        cells={(c.machine, c.station, c.parameter): c for c in cells},
        by_severity={
            s: tuple(e for e in entries if e.item.severity == s and e.item.outcome == "finding") for s in SEVERITIES
        },
        others=others,
        linked=linked,
        alone=len(result.machines) == 1,
        most=IN_LIST if detail == "gravest" else None,
    )


def _cited(result: ReviewResult, rulebook: Rulebook, entries: Iterable[Entry]) -> tuple[dict[str, str], dict[str, str]]:
    """Anchors of the clauses behind some entries, and of all sources, both in the order of the rulebook."""
    used = dict.fromkeys(item.clause for entry in entries for item in entry.everything)
    clauses = [c for c in rulebook.clauses if c in used] + [c for c in used if c not in rulebook.clauses]
    keys = dict.fromkeys(s for c in clauses if c in rulebook.clauses for s in _sources(rulebook, c))
    keys.update(dict.fromkeys(result.sources))
    ordered = [k for k in rulebook.sources if k in keys]
    return {clause: f"c{n}" for n, clause in enumerate(clauses, 1)}, {key: f"q{n}" for n, key in enumerate(ordered, 1)}


def _sources(rulebook: Rulebook, clause: str) -> list[str]:
    entry = rulebook.clauses[clause]
    named = [*entry.sources, *(limit.source for limit in entry.limits.values())]
    return [key for source in named for key in source.split("; ")]


def _of(records: "tuple[T, ...] | Anew[T]", machines: Collection[str] | None) -> Iterable[T]:
    """The records of some machines at least; all for None."""
    return records.of_machines(machines) if machines is not None and isinstance(records, Anew) else records


def _machines(result: ReviewResult, entries: Iterable[Entry], shown: Collection[str] | None) -> tuple[MachinePart, ...]:
    """The machines with these entries, all of them or those that are shown."""
    at: dict[tuple[str, str | None], list[Assessment]] = {}
    for item in result.assessments if shown is None else result.of_machines(shown):
        at.setdefault((item.machine, item.station), []).append(item)
    values = {(s.machine, s.station): s.values for s in _of(result.stations, shown)}
    by_machine: dict[str, list[Entry]] = {}
    for entry in entries:
        by_machine.setdefault(entry.item.machine, []).append(entry)
    parts = []
    for m, record in enumerate(result.machines, 1):
        if shown is not None and record.machine not in shown:
            continue
        own = tuple(by_machine.get(record.machine, ()))
        sections = []
        for s, station in enumerate((None, *dict.fromkeys(record.stations))):
            items = at.get((record.machine, station), [])
            sections.append(
                Section(
                    anchor=f"m{m}s{s}",
                    machine=record.machine,
                    station=station,
                    entries=tuple(e for e in own if any(i.station == station for i in e.everything)),
                    met=_having(items, "met"),
                    not_assessed=_having(items, "not assessed"),
                    not_applicable=_having(items, "not applicable"),
                    values=values.get((record.machine, station)) if station is not None else None,
                )
            )
        parts.append(MachinePart(f"m{m}", record, own, tuple(sections)))
    return tuple(parts)


def _having(items: Iterable[Assessment], outcome: str) -> tuple[Assessment, ...]:
    return tuple(i for i in items if i.outcome == outcome)


def _understood(cells: Iterable[ReadCell]) -> tuple[ReadTable, ...]:
    order = {name: k for k, name in enumerate(vocabulary())}
    groups: dict[str, dict[str | None, dict[str, ReadCell]]] = {}
    for cell in cells:
        groups.setdefault(cell.machine, {}).setdefault(cell.station, {})[cell.parameter] = cell
    tables = []
    for machine in sorted(groups):
        stations = groups[machine]
        whole = stations.pop(None, {})
        names = sorted(whole, key=lambda n: (order.get(n, len(order)), n))
        if names:
            tables.append(ReadTable(machine, (say("whole machine"),), tuple(ReadRow(n, (whole[n],)) for n in names)))
        heads = sorted(s for s in stations if s is not None)
        for start in range(0, len(heads), 4):
            chunk = heads[start : start + 4]
            names = sorted({n for h in chunk for n in stations[h]}, key=lambda n: (order.get(n, len(order)), n))
            rows = tuple(ReadRow(n, tuple(stations[h].get(n) for h in chunk)) for n in names)
            tables.append(ReadTable(machine, tuple(chunk), rows))
    return tuple(tables)


def value_of(value: float | str | None, unit: str) -> str:
    """A number with its unit, or a word."""
    if value is None:
        return say("not known")
    return value if isinstance(value, str) else quantity_text(value, unit)


@cache
def _names() -> re.Pattern[str]:
    names = sorted((n for n in vocabulary() if n not in ("machine", "station")), key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, names))})\b")


def prose(text: str) -> str:
    """The text with parameter names in words: ``shaft_fillet_radius`` is "shaft fillet radius"."""
    return _names().sub(lambda found: in_words(found[0]), text)


def named_places(items: Iterable[Assessment], report: Report) -> tuple[str, ...]:
    """The cells of what the remedy of some findings names, each once; none where they are too many to help."""
    found = dict.fromkeys(cell.cell for item in items for cell in named_cells(item, report) if cell.cell)
    return tuple(found) if len(found) <= MOST_NAMED else ()


def named_cells(item: Assessment, report: Report) -> tuple[NamedCell, ...]:
    """What the table says of the parameters that the remedy of a finding names.

    A parameter that a change names is told there. A name of one word (``cage``) counts only where the finding rests on
    that parameter: it may be plain speech.
    """
    used = {u.parameter for u in item.places}
    told = {change.parameter for change in item.clears_with}
    found = []
    for name in dict.fromkeys(_names().findall(item.remedy)):
        if name in told:
            continue
        if "_" not in name and name not in used:
            continue
        here = [u for u in item.places if u.parameter == name]
        cell = report.cells.get((item.machine, item.station, name)) or report.cells.get((item.machine, None, name))
        if here:
            found += [NamedCell(name, u.place.short(), u.text) for u in here]
        elif cell is not None:
            found.append(NamedCell(name, cell.place.short(), cell.value))
        elif item.station is not None or vocabulary()[name].level == "machine":
            found.append(NamedCell(name, "", ""))
    return tuple(found)
