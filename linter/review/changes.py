"""Changes that clear a finding: found by running the whole rulebook over candidates, as rows of one table.

For each finding the nearest change of one parameter that clears it without making anything else worse; where no single
change does, a pair. Every change offered was verified by the run that found it.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import combinations
from typing import Any

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.mechanics.limits import deviations_or_nan
from linter.model.findings import SEVERITIES, Assessment, Change, ReviewResult
from linter.model.stations import Assumption, Choice, Stations, Toleranced
from linter.model.vocabulary import parameter
from linter.model.wording import value_text
from linter.review.assess import assess
from linter.rulebook.model import Rulebook

#: Rounded preferred numbers, series R''10 (from memory of ISO 497:1973).
SERIES = (1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0)
#: Steps of a diameter or length that are tried, in mm.
SIZE_STEPS = (0.1, 0.2, 0.3, 0.4, 0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0)
SHAFT_LETTERS = ("f", "g", "h", "js", "j", "k", "m", "n", "p", "r")
HOLE_LETTERS = ("F", "G", "H", "JS", "J", "K", "M", "N", "P", "R")
GRADES = (4, 5, 6, 7)
#: Rows assessed at once, and at most for one table.
CHUNK_ROWS = 20_000
MOST_ROWS = 100_000
PAIR_CANDIDATES = 6
MOST_PAIRS = 300

#: Said in the result where a table has more candidates than are tried.
STOPPED = f"changes that clear a finding were looked for among the first {MOST_ROWS} candidate rows only"


@frozen(eq=False)
class Candidate:
    """One change of one parameter in one row of the stations.

    ``distance`` orders candidates of one parameter: how far the value moves, in a scale of its own kind.
    """

    name: str
    row: int
    value: Any
    distance: float


@frozen(eq=False)
class Effect:
    """What a trial does: findings gone, as (clause, row), and clauses that get a remark they did not have."""

    cleared: set[tuple[int, int]]
    remarks: tuple[int, ...]

    def only_clears(self, aim: set[tuple[int, int]]) -> bool:
        """Whether all of these findings are gone and no remark is new."""
        return aim <= self.cleared and not self.remarks


Effects = Mapping[tuple[Candidate, ...], Effect]


def with_changes(result: ReviewResult, stations: Stations, rulebook: Rulebook) -> ReviewResult:
    """The same result with ``clears_with`` filled for its findings.

    Parameters
    ----------
    result : ReviewResult
        From :func:`linter.review.records.review_reading`.
    stations : Stations
        What was reviewed.
    rulebook : Rulebook
        What it was reviewed under.

    Returns
    -------
    ReviewResult
        A new one; the given one is left as it is.
    """
    if not result.outcomes["finding"]:
        return result
    search = _Search(stations, rulebook, result)
    found = search.run()
    return evolve(
        result,
        notes=(*result.notes, STOPPED) if search.stopped else result.notes,
        assessments=tuple(evolve(a, clears_with=found[id(a)]) if id(a) in found else a for a in result.assessments),
    )


class _Search:
    def __init__(self, stations: Stations, rulebook: Rulebook, result: ReviewResult) -> None:
        self.stations, self.rulebook = stations, rulebook
        self.findings = [a for a in result.assessments if a.outcome == "finding"]
        self.index = {c.id: k for k, c in enumerate(c for c in rulebook.clauses.values() if c.off is None)}
        self.machine_of = {name: index for index, name in enumerate(stations.machines)}
        self.rows_of = [np.flatnonzero(stations.machine_row == m) for m in range(len(stations.machines))]
        names = stations.text("station")
        self.named = {
            (machine, str(name)): rows[[str(names[r]) == str(name) for r in rows]]
            for machine, rows in zip(stations.machines, self.rows_of, strict=True)
            for name in names[rows]
        }
        self.before = self.grades_of(result.assessments)
        self.spent = 0
        self.stopped = False

    def grades_of(self, assessments: Iterable[Assessment]) -> NDArray[np.int8]:
        """Grades by clause and row as :meth:`linter.review.assess.Assessed.grades` gives them, read off the records."""
        grades = np.zeros((len(self.index), len(self.stations)), dtype=np.int8)
        for record in assessments:
            grade = {"not assessed": -1, "not applicable": -2}.get(record.outcome, 0)
            if record.severity is not None:
                grade = len(SEVERITIES) - SEVERITIES.index(record.severity)
            grades[self.index[record.clause], self.rows(record)] = grade
        return grades

    def rows(self, record: Assessment) -> NDArray[np.intp]:
        """Rows that a record is about: its station's, or all of its machine."""
        rows = self.rows_of[self.machine_of[record.machine]]
        if record.station is None:
            return rows
        return self.named[(record.machine, record.station)]

    def run(self) -> dict[int, tuple[Change, ...]]:
        """Changes by the identity of the finding that they clear."""
        singles: dict[tuple[str, int], list[Candidate]] = {}
        wanted: list[list[list[Candidate]]] = []
        for finding in self.findings:
            keys = list(self.parameters(finding))
            for key in keys:
                if key not in singles:
                    singles[key] = list(candidates(self.stations, *key))
            wanted.append([singles[key] for key in keys])
        singly = self.try_out([(c,) for group in singles.values() for c in group])
        found: dict[int, tuple[Change, ...]] = {}
        left = []
        for finding, groups in zip(self.findings, wanted, strict=True):
            changes = self.alone(finding, singly, groups)
            if changes:
                found[id(finding)] = changes
            elif finding.severity != "remark":
                left.append((finding, groups))
        wanted_pairs = [self.pairs(groups) for _, groups in left]
        paired = self.try_out(list(dict.fromkeys(pair for pairs in wanted_pairs for pair in pairs)))
        for (finding, groups), pairs in zip(left, wanted_pairs, strict=True):
            changes = self.together(finding, paired, pairs)
            found[id(finding)] = changes or tuple(self.at_the_cost(finding, singly, groups))
        return found

    def alone(self, finding: Assessment, singly: Effects, groups: Sequence[Sequence[Candidate]]) -> tuple[Change, ...]:
        """For each parameter the nearest change that clears a finding and does nothing else."""
        aim = self.rows_to_clear(finding)
        changes = []
        for group in groups:
            clean = [c for c in group if (c,) in singly and singly[(c,)].only_clears(aim)]
            if clean:
                changes.append(self.change(finding, min(clean, key=lambda c: c.distance)))
        return tuple(changes)

    def together(
        self, finding: Assessment, paired: Effects, pairs: Sequence[tuple[Candidate, ...]]
    ) -> tuple[Change, ...]:
        """The nearest pair of changes that clears a finding and does nothing else."""
        aim = self.rows_to_clear(finding)
        good = [pair for pair in pairs if pair in paired and paired[pair].only_clears(aim)]
        if not good:
            return ()
        return tuple(
            self.change(finding, c, together=1) for c in min(good, key=lambda pair: sum(c.distance for c in pair))
        )

    def at_the_cost(
        self,
        finding: Assessment,
        singly: Effects,
        groups: Sequence[Sequence[Candidate]],
    ) -> Iterator[Change]:
        """For each parameter the nearest change that clears a finding and leaves remarks on other clauses."""
        aim = self.rows_to_clear(finding)
        titles = [self.rulebook.clauses[name].title for name in self.index]
        for group in groups:
            good = [c for c in group if (c,) in singly and aim <= singly[(c,)].cleared]
            if good:
                best = min(good, key=lambda c: (len(singly[(c,)].remarks), c.distance))
                costs = ", ".join(titles[k] for k in singly[(best,)].remarks)
                change = self.change(finding, best)
                yield evolve(change, verified=False, text=f"{change.text}, which leaves a remark on: {costs}")

    def parameters(self, finding: Assessment) -> Iterator[tuple[str, int]]:
        """Parameters that may be changed for a finding, each with the row to change."""
        clause = self.rulebook.clauses[finding.clause]
        rows = self.rows(finding)
        for name in dict.fromkeys((*clause.needs, *clause.uses)):
            entry = parameter(name)
            if entry.change:
                yield from ((name, int(r)) for r in (rows[:1] if entry.level == "machine" else rows))

    def try_out(self, trials: Sequence[tuple[Candidate, ...]]) -> dict[tuple[Candidate, ...], Effect]:
        """What each trial does, of those that make nothing worse beyond a remark; none is tried beyond the cap."""
        effects: dict[tuple[Candidate, ...], Effect] = {}
        batch: list[tuple[Candidate, ...]] = []
        rows = 0
        for trial in trials:
            size = len(self.rows_of[int(self.stations.machine_row[trial[0].row])])
            if self.spent + rows + size > MOST_ROWS:
                self.stopped = True
                break
            batch.append(trial)
            rows += size
            if rows >= CHUNK_ROWS:
                effects.update(self.assess_batch(batch))
                self.spent += rows
                batch, rows = [], 0
        if batch:
            effects.update(self.assess_batch(batch))
            self.spent += rows
        return effects

    def assess_batch(self, batch: Sequence[tuple[Candidate, ...]]) -> Iterator[tuple[tuple[Candidate, ...], Effect]]:
        blocks = [self.rows_of[int(self.stations.machine_row[trial[0].row])] for trial in batch]
        copies = replicate(self.stations, blocks)
        starts = np.concatenate(([0], np.cumsum([len(b) for b in blocks])))
        for start, block, trial in zip(starts, blocks, batch, strict=False):
            for candidate in trial:
                level = parameter(candidate.name).level
                at = (
                    slice(start, start + len(block))
                    if level == "machine"
                    else start + int(np.searchsorted(block, candidate.row))
                )
                put(copies, candidate.name, at, candidate.value)
        after = assess(copies, self.rulebook, keep="verdicts").grades()
        before = self.before[:, np.concatenate(blocks)]
        lost = (after == -1) & (before >= 0)
        graver = after > np.maximum(before, 0)
        forbidden = (lost | (graver & (after > 1))).any(axis=0)
        gone = (before > 0) & ((after == 0) | (after == -2))
        for trial, block, start in zip(batch, blocks, starts, strict=False):
            columns = slice(start, start + len(block))
            if not forbidden[columns].any():
                clauses, rows = np.nonzero(gone[:, columns])
                yield (
                    trial,
                    Effect(
                        cleared={(int(c), int(block[r])) for c, r in zip(clauses, rows, strict=True)},
                        remarks=tuple(np.flatnonzero(graver[:, columns].any(axis=1)).tolist()),
                    ),
                )

    def rows_to_clear(self, finding: Assessment) -> set[tuple[int, int]]:
        """Clause and rows of a finding."""
        clause = self.index[finding.clause]
        return {(clause, int(row)) for row in self.rows(finding)}

    def pairs(self, groups: Sequence[Sequence[Candidate]]) -> Sequence[tuple[Candidate, ...]]:
        """Pairs of the nearest candidates of two parameters, for one finding."""
        near = [sorted(g, key=lambda c: c.distance)[:PAIR_CANDIDATES] for g in groups if g]
        return [(a, b) for first, second in combinations(near, 2) for a in first for b in second][:MOST_PAIRS]

    def change(self, finding: Assessment, candidate: Candidate, together: int = 0) -> Change:
        entry = parameter(candidate.name)
        before = value_text(self.stations, candidate.name, candidate.row)
        single = replicate(self.stations, [np.array([candidate.row])])
        put(single, candidate.name, 0, candidate.value)
        after = value_text(single, candidate.name, 0)
        elsewhere = finding.station is None and entry.level == "station"
        station = f" at {self.stations.text('station')[candidate.row]}" if elsewhere else ""
        value = candidate.value
        if entry.kind == "choice":
            value = entry.choices[value]
        elif isinstance(value, tuple):
            value = value[3] or value[0]
        return Change(
            parameter=candidate.name,
            value=float(value) if isinstance(value, (int, float)) else value,
            unit=entry.unit,
            text=f"{before} \u2192 {after}{station}",
            verified=True,
            together=together,
        )


def candidates(stations: Stations, name: str, row: int) -> Iterator[Candidate]:
    """Values that a designer could put in place of the present one."""
    entry = parameter(name)
    if entry.change == "words":
        choice = stations.choice(name)
        current = int(choice.codes[row])
        for code, _ in enumerate(entry.choices):
            if code != current:
                yield Candidate(name, row, code, abs(code - current))
    elif entry.change == "class":
        yield from _classes(stations, name, row)
    elif entry.change == "size":
        size = stations.size(name)
        now, lower, upper = (float(v[row]) for v in (size.nominal, size.lower, size.upper))
        if not np.isnan(now):
            for step in SIZE_STEPS:
                for value in (now - step, now + step):
                    if value > 0 and step < 0.5 * now:
                        yield Candidate(name, row, (round(value, 4), lower, upper, ""), step)
    else:
        yield from _series(stations, name, row)


def _classes(stations: Stations, name: str, row: int) -> Iterator[Candidate]:
    size = stations.size(name)
    nominal, lower, upper = (float(v[row]) for v in (size.nominal, size.lower, size.upper))
    if np.isnan(nominal):
        return
    letters = HOLE_LETTERS if name.startswith("housing") else SHAFT_LETTERS
    classes = [f"{letter}{grade}" for letter in letters for grade in GRADES]
    low, high = deviations_or_nan(np.array(classes), nominal)
    middle, width = (0.0, 0.0) if np.isnan(lower) else (0.5 * (lower + upper), upper - lower)
    for tolerance_class, a, b in zip(classes, low / 1000.0, high / 1000.0, strict=True):
        if not np.isnan(a) and tolerance_class != size.tolerance_class[row]:
            distance = abs(0.5 * (a + b) - middle) + 0.5 * abs((b - a) - width)
            yield Candidate(name, row, (nominal, float(a), float(b), tolerance_class), distance * 1000.0)


def _series(stations: Stations, name: str, row: int) -> Iterator[Candidate]:
    entry = parameter(name)
    if entry.kind == "toleranced":
        size = stations.size(name)
        now, lower, upper = (float(v[row]) for v in (size.nominal, size.lower, size.upper))
    else:
        now, lower, upper = float(stations.number(name)[row]), np.nan, np.nan
    known = now > 0
    decades = range(int(np.floor(np.log10(now))) - 1, int(np.floor(np.log10(now))) + 2) if known else range(-4, 1)
    for decade in decades:
        for number in SERIES:
            value = float(f"{number * 10.0**decade:.3g}")
            if value == now or (known and not 0.2 <= value / now <= 5.0):
                continue
            # Where nothing is stated yet the coarsest value that clears is the nearest.
            distance = abs(np.log(value / now)) if known else -np.log(value)
            if entry.kind == "number":
                yield Candidate(name, row, value, distance)
            elif known:
                scale = value / now
                yield Candidate(name, row, (value, lower * scale, upper * scale, ""), distance)


def replicate(stations: Stations, blocks: Sequence[NDArray[np.intp]]) -> Stations:
    """Copies of rows, each block a machine of its own; problems and places are left behind."""
    rows = np.concatenate(blocks)
    return Stations(
        machines=tuple(str(k) for k in range(len(blocks))),
        machine_row=np.repeat(np.arange(len(blocks)), [len(b) for b in blocks]).astype(np.intp),
        numbers={k: v[rows] for k, v in stations.numbers.items()},
        toleranced={k: v.take(rows) for k, v in stations.toleranced.items()},
        choices={k: Choice(v.words, v.codes[rows]) for k, v in stations.choices.items()},
        texts={k: v[rows] for k, v in stations.texts.items()},
        assumed={k: Assumption(v.rows[rows], v.reason) for k, v in stations.assumed.items()},
        derived={k: v.take(rows) for k, v in stations.derived.items()},
        problems=(),
    )


def put(stations: Stations, name: str, at: int | slice, value: Any) -> None:
    """Set one value in copies made by :func:`replicate`."""
    kind = parameter(name).kind
    if kind == "number":
        stations.numbers.setdefault(name, np.full(len(stations), np.nan))[at] = value
    elif kind == "choice":
        if name not in stations.choices:
            stations.choices[name] = stations.choice(name)
        stations.choices[name].codes[at] = value
    else:
        if name not in stations.toleranced:
            count = len(stations)
            stations.toleranced[name] = Toleranced(
                np.full(count, np.nan), np.full(count, np.nan), np.full(count, np.nan), np.full(count, "", dtype=object)
            )
        size = stations.toleranced[name]
        size.nominal[at], size.lower[at], size.upper[at], size.tolerance_class[at] = value
