"""What stands outside a plan: decisions taken otherwise, each reviewed, and conflicts where the gate stays closed."""

from collections.abc import Generator, Mapping, Sequence
from itertools import combinations
from typing import Any

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.review.plan.cells import Cell, Movable, is_decision
from linter.review.plan.domains import impossible
from linter.review.plan.search import Search
from linter.review.plan.standing import Baseline, Judged, guards_of
from linter.review.plan.states import Found, State, values_of
from linter.review.plan.trials import Grades, Once, Trial, value_at, with_values
from linter.rulebook.model import Rulebook

#: Alternatives told of one machine; decisions from which a plan is looked for, and how much they may leave to it;
#: single ones that make pairs.
MOST, DEEP, LEFT, PAIRED = 6, 1, 3, 8
#: Shares of a fact that are tried to see whether it is what forbids more; temperatures move by degrees instead.
SHARES, DEGREES = (0.1, 0.4, 0.8, 1.25, 2.5, 10.0), (-60.0, -30.0, 30.0, 60.0)

Asks = Generator[Sequence[Trial], Grades, Any]


@frozen(eq=False)
class Other:
    """A decision taken otherwise: its words by cell, whether the plan is applied too, what else is moved, grades."""

    words: Mapping[Cell, int]
    with_plan: bool
    further: State
    grade: NDArray[np.int8]
    measure: NDArray[np.float32]
    closing: NDArray[np.bool_]


@frozen(eq=False)
class Clash:
    """Clauses (by index) that cannot be met together at some stations, and the cells whose other values would help."""

    clauses: tuple[int, ...]
    rows: tuple[int, ...]
    cells: tuple[Cell, ...]


@frozen(eq=False)
class Outside:
    """What stands outside the plan of one machine."""

    others: tuple[Other, ...]
    clashes: tuple[Clash, ...]


class Looking:
    """Looks for what stands outside the plan of one machine."""

    def __init__(
        self, stations: Stations, block: NDArray[np.intp], rulebook: Rulebook, base: Baseline, movable: Movable
    ) -> None:
        self.stations, self.block, self.rulebook, self.base, self.movable = stations, block, rulebook, base, movable

    def run(self, found: Found) -> Asks:
        """Yields trials, is sent what they come to, returns :class:`Outside`."""
        closed = found.score > 0
        todo = self.closing(found.grade) if closed else self.base.closing
        plan = values_of(found.state) if closed else {}
        words = self.decisions(todo)
        facts = self.facts(todo) if closed else []
        if not words and not facts:
            return Outside((), self.clashes(found, todo, [], []))
        trials: list[Trial] = [*({**plan, **w} for w in words), *({**plan, cell: value} for cell, value in facts)]
        asked = Once(trials, np.flatnonzero(todo.any(axis=1)).tolist())
        gone = [todo & ~self.closing(grade) for grade in (yield from self.judged(asked)).grade]
        relaxing = [(cell, some) for (cell, _), some in zip(facts, gone[len(words) :], strict=True) if some.any()]
        words = [word for word, some in zip(words, gone[: len(words)], strict=True) if some.any()]
        others: list[Other] = []
        if words:
            judged = yield from self.judged(Once({**plan, **word} for word in words))
            others = [self.other(word, closed and bool(plan), judged, n) for n, word in enumerate(words)]
            others = [other for other in others if self.weight(other.closing) < self.weight(todo)]
        others.sort(key=self.order)
        if closed and not any(self.opens(o) for o in others):
            others = yield from self.deeper(others, plan)
        clashes = self.clashes(found, todo, others, relaxing) if closed else ()
        return Outside(tuple(self.chosen(others)), clashes)

    def judged(self, trials: Sequence[Trial]) -> Generator[Sequence[Trial], Grades, Judged]:
        """How some trials stand."""
        return self.base.judge(trials, (yield trials))

    def closing(self, grade: NDArray[np.int8]) -> NDArray[np.bool_]:
        """What closes the gate, a clause about the machine once."""
        return (grade >= self.base.closes) & ~self.base.excused & self.base.once

    def weight(self, closing: NDArray[np.bool_]) -> int:
        """How many findings close the gate."""
        return int(closing.sum())

    def other(self, words: Mapping[Cell, int], with_plan: bool, judged: Judged, n: int) -> Other:
        """An alternative as it was judged."""
        grade = judged.grade[n]
        return Other(words, with_plan, {}, grade, judged.measure[n], self.closing(grade))

    def opens(self, other: Other) -> bool:
        """Whether nothing closes the gate any more."""
        return not other.closing.any()

    def order(self, other: Other) -> tuple[Any, ...]:
        """What leaves least comes first, then what makes least worse, then the order of the vocabulary."""
        worse = int(((other.grade > np.maximum(self.base.grade, 0)) & self.base.once).sum())
        return (
            self.weight(other.closing),
            worse,
            len(other.words),
            [(c.name, c.row, v) for c, v in other.words.items()],
        )

    def chosen(self, others: Sequence[Other]) -> list[Other]:
        """The best alternatives, at most two words of one decision."""
        kept: list[Other] = []
        count: dict[tuple[str, ...], int] = {}
        for other in sorted(others, key=self.order):
            names = tuple(sorted({cell.name for cell in other.words}))
            if count.get(names, 0) < 2 and len(kept) < MOST:
                count[names] = count.get(names, 0) + 1
                kept.append(other)
        return kept

    def decisions(self, todo: NDArray[np.bool_]) -> list[dict[Cell, int]]:
        """Every other word of the decisions that the clauses look at, at the stations where they have a finding."""
        rows: dict[str, set[int]] = {}
        for k, i in np.argwhere(todo):
            clause = self.base.clauses[k]
            for name in self.movable.decisions(clause):
                whole = parameter(name).level == "machine"
                every = range(len(self.block)) if clause.level == "machine" else (int(i),)
                rows.setdefault(name, set()).update((0,) if whole else every)
        made: list[dict[Cell, int]] = []
        for name, at in rows.items():
            spread = [sorted(at), *([[row] for row in sorted(at)] if len(at) > 1 else [])]
            for code in range(len(parameter(name).choices)):
                for some in spread:
                    moved = {Cell(name, r): code for r in some if self.now(Cell(name, r)) not in (code, -1)}
                    if moved and moved not in made:
                        made.append(moved)
        return made

    def now(self, cell: Cell) -> Any:
        """The present value of a cell."""
        return value_at(self.stations, cell.name, int(self.block[cell.row]))

    def facts(self, todo: NDArray[np.bool_]) -> list[tuple[Cell, float]]:
        """Other values of the numbers that the clauses look at and that no plan moves."""
        cells: dict[Cell, None] = {}
        for k, i in np.argwhere(todo):
            clause = self.base.clauses[k]
            moved = {repair.name for repair in self.movable.repairs(clause)}
            for name in dict.fromkeys((*clause.needs, *clause.uses)):
                entry = parameter(name)
                if entry.kind == "number" and name not in moved:
                    every = range(len(self.block)) if clause.level == "machine" else (int(i),)
                    cells |= dict.fromkeys(Cell(name, r) for r in ((0,) if entry.level == "machine" else every))
        made = []
        for cell in cells:
            now = self.now(cell)
            if np.isfinite(now):
                others = (
                    [now + d for d in DEGREES] if parameter(cell.name).unit == "degC" else [now * s for s in SHARES]
                )
                cannot = impossible(cell.name, others)
                made += [(cell, value) for value, no in zip(others, cannot, strict=True) if value != now and not no]
        return made

    def deeper(self, others: list[Other], plan: Trial) -> Generator[Sequence[Trial], Grades, list[Other]]:
        """Plans on top of the most helpful decisions, and pairs of decisions where none of them opens the gate."""
        for n, other in enumerate(others[:DEEP]):
            if self.weight(other.closing) > LEFT:
                continue
            found = yield from self.plan_after({**plan, **other.words}, other.grade, other.measure)
            if found is not None:
                closing = self.closing(found.grade)
                if self.weight(closing) < self.weight(other.closing):
                    others[n] = evolve(other, further=found.state, grade=found.grade, closing=closing)
        if any(self.opens(o) for o in others):
            return others
        pairs = [
            {**a.words, **b.words}
            for a, b in combinations(others[:PAIRED], 2)
            if {c.name for c in a.words}.isdisjoint(c.name for c in b.words)
        ]
        if not pairs:
            return others
        judged = yield from self.judged([{**plan, **pair} for pair in pairs])
        made = [self.other(pair, bool(plan), judged, n) for n, pair in enumerate(pairs)]
        return others + [o for o in made if self.opens(o)]

    def plan_after(
        self, changes: Trial, grade: NDArray[np.int8], measure: NDArray[np.float32]
    ) -> Generator[Sequence[Trial], Grades, Found | None]:
        """The plan of the machine as it is with some changes made, which have been judged."""
        own = self.stations.take(self.block)
        every = np.arange(len(own), dtype=np.intp)
        moved = with_values(own, ((c.name, slice(None) if c.whole else c.row, v) for c, v in changes.items()))
        guards = guards_of(moved, every, self.base.clauses, np.where(self.base.held, 0, grade))
        base = evolve(self.base, grade=grade, measure=measure, guards=guards)
        if not base.closing.any():
            return None
        search = Search(moved, every, self.rulebook, base, self.movable).run()
        grades: Any = None
        while True:
            try:
                asked = search.send(grades)
            except StopIteration as end:
                found: Found = end.value
                return found
            grades = yield [{**changes, **trial} for trial in asked]

    # --- conflicts ---------------------------------------------------------------------------------------------------

    def clashes(
        self,
        found: Found,
        todo: NDArray[np.bool_],
        others: Sequence[Other],
        relaxing: Sequence[tuple[Cell, NDArray[np.bool_]]],
    ) -> tuple[Clash, ...]:
        """For each clause that is left the smallest set that cannot be met with it, and what forbids that."""
        made: list[Clash] = []
        tried: NDArray[np.bool_] = np.array(found.tried, dtype=bool).reshape(-1, *todo.shape)
        left: NDArray[np.bool_] = np.asarray(tried.any(axis=2))
        again: NDArray[np.bool_] = np.asarray(np.logical_and(tried, todo).any(axis=2))
        for k in np.flatnonzero(todo.any(axis=1)).tolist():
            rows = tuple(np.flatnonzero(todo[k]).tolist())
            cleared = np.flatnonzero(~tried[:, k, list(rows)].any(axis=1))
            others_bad = np.take(left, cleared, axis=0)
            others_bad[:, k] = False
            new = others_bad & ~np.take(again, cleared, axis=0)
            rivals = np.where(new.any(axis=1, keepdims=True), new, others_bad)
            fewest = rivals[rivals.sum(axis=1) == rivals.sum(axis=1).min(initial=len(todo))]
            rival = min((np.flatnonzero(some).tolist() for some in fewest), default=[])
            helps = [cell for o in others if not o.closing[k].any() for cell in o.words]
            helps += [cell for cell, gone in relaxing if gone[k].any()]
            made.append(Clash((k, *rival), rows, tuple(dict.fromkeys(helps)) or self.looked_at(k, rows)))
        return tuple(made)

    def looked_at(self, k: int, rows: Sequence[int]) -> tuple[Cell, ...]:
        """What a clause looks at that no plan moves: where nothing tried helps, all of it forbids more."""
        clause = self.base.clauses[k]
        moved = {repair.name for repair in self.movable.repairs(clause)}
        return tuple(
            Cell(name, row)
            for name in dict.fromkeys((*clause.needs, *clause.uses))
            if name not in moved and (is_decision(name) or not parameter(name).change)
            for row in ((0,) if parameter(name).level == "machine" else rows)
            if self.stations.known(name)[int(self.block[row])]
        )
