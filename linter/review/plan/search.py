"""The search for a plan of one machine: single moves, their joins, then a beam over what is left to do.

A search is a generator: it asks for trials and is sent what the rulebook says of them, so that the searches of many
machines share their batches. Its budget counts rounds and trials, never time; ties fall by the order of parameters.
"""

from collections.abc import Generator, Iterable, Mapping, Sequence
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.review.plan.cells import Cell, Movable
from linter.review.plan.domains import Option, domain, nearer
from linter.review.plan.standing import Baseline, Judged
from linter.review.plan.trials import Grades, Trial, value_at
from linter.rulebook.model import Rulebook

#: Rounds of the beam, states kept, and values of one cell tried on top of a state.
ROUNDS, WIDTH, VALUES = 7, 6, 14
#: Joins of single moves tried, and moves looked at for each finding in them.
JOINS, MOVES = 160, 6
#: Trials of one round at most.
MOST_TRIALS = 4000
#: Rounds in which a plan is made smaller.
POLISH = 8

State = Mapping[Cell, Option]
Asked = Generator[Sequence[Trial], Judged, Any]


@frozen(eq=False)
class Found:
    """What a search came to.

    Attributes
    ----------
    state : dict of Cell to Option
        The plan; empty where nothing helps.
    score : float
        What is left, as :class:`linter.review.plan.standing.Judged` counts it; 0 where the gate opens.
    without : dict of Cell to int8 array
        Grades without one of the changes, shape (clauses, rows), where there is more than one.
    grade : int8 array, shape (clauses, rows)
        Grades with all of them.
    bad : bool array, the same shape
        What is left.
    tried : tuple of (trial, bad)
        What clears some of what is left and makes something else bad: evidence of a conflict.
    """

    state: State
    score: float
    grade: NDArray[np.int8]
    bad: NDArray[np.bool_]
    without: Mapping[Cell, NDArray[np.int8]] = field(factory=dict)
    tried: tuple[tuple[State, NDArray[np.bool_]], ...] = ()


def trial_of(state: State) -> dict[Cell, Any]:
    """The values of a state."""
    return {cell: option.value for cell, option in state.items()}


def cost_of(state: State) -> tuple[int, float]:
    """Cells changed first, then what is dear, then distance."""
    return len(state), round(sum(option.cost for option in state.values()), 9)


class Search:
    """The search for one machine.

    Parameters
    ----------
    stations : Stations
        The table.
    block : int array
        Rows of the machine.
    rulebook : Rulebook
        What it is reviewed under.
    base : Baseline
        As it stands.
    movable : Movable
        What may move.
    """

    def __init__(
        self, stations: Stations, block: NDArray[np.intp], rulebook: Rulebook, base: Baseline, movable: Movable
    ) -> None:
        self.stations, self.block, self.rulebook, self.base, self.movable = stations, block, rulebook, base, movable
        self.domains: dict[Cell, tuple[Option, ...]] = {}
        self.order: dict[Cell, int] = {}
        self.evidence: list[tuple[State, NDArray[np.bool_]]] = []
        own = base.judge([{}], Grades(base.grade[None], base.measure[None]))
        #: The best state that makes nothing worse, with what it leaves.
        self.clean: tuple[float, State] = (float(own.score[0]), {})
        self.base_score = self.clean[0]

    def options(self, cell: Cell) -> tuple[Option, ...]:
        """The domain of a cell, made once."""
        if cell not in self.domains:
            self.domains[cell] = domain(self.stations, self.block, cell, self.rulebook)
            self.order[cell] = len(self.order)
        return self.domains[cell]

    def cells(self, bad: NDArray[np.bool_]) -> list[Cell]:
        """Cells that may be moved for what is left, in the order of the clauses and of their repairs."""
        found: dict[Cell, None] = {}
        for k in np.flatnonzero(bad.any(axis=1)):
            clause = self.base.clauses[k]
            rows = range(len(self.block)) if clause.level == "machine" else np.flatnonzero(bad[k]).tolist()
            found |= dict.fromkeys(self.movable.cells(clause, rows))
        return list(found)

    def run(self) -> Asked:
        """The plan: yields trials, is sent what they come to, returns :class:`Found`."""
        closing = self.base.closing
        none: State = {}
        cells = self.cells(closing)
        singles: list[State] = [{c: option} for c in cells for option in self.options(c)]
        del singles[MOST_TRIALS:]
        if not singles:
            return Found(none, np.inf, self.base.grade, closing)
        judged = yield [trial_of(state) for state in singles]
        self.remember(singles, judged)
        best = self.best(singles, judged)
        if best is not None and self.is_nearest(best):
            n = singles.index(best)
            return Found(best, 0.0, judged.grade[n], judged.bad[n])
        if best is None:
            start = yield from self.joined(singles, judged)
            best = yield from self.beam(start)
        return (yield from self.polished(best))

    def is_nearest(self, state: State) -> bool:
        """Whether no value nearer than that of a single change is left to try."""
        ((cell, option),) = state.items()
        return not nearer(self.stations, self.block, cell, option.value)

    def best(self, states: Sequence[State], judged: Judged) -> State | None:
        """The cheapest state that leaves nothing to do."""
        done = [states[k] for k in np.flatnonzero(judged.score == 0).tolist()]
        return min(done, key=self.rank) if done else None

    def rank(self, state: State) -> tuple[Any, ...]:
        """Cost, then the order in which the cells are tried."""
        return (*cost_of(state), tuple((self.order.get(c, 0), str(o.value)) for c, o in state.items()))

    def remember(self, states: Sequence[State], judged: Judged) -> None:
        """Keep the best state that makes nothing worse, and what clears a finding at the cost of another one."""
        closing = self.base.closing
        cleared = (closing & ~judged.bad).any(axis=(1, 2))
        worse = (judged.bad & ~closing).any(axis=(1, 2)) | (
            (judged.grade > self.base.grade) & closing & self.base.once
        ).any(axis=(1, 2))
        for k in np.flatnonzero(cleared & worse)[:400].tolist():
            self.evidence.append((states[k], judged.bad[k]))
        for k in np.flatnonzero(~worse & (judged.score <= self.clean[0])).tolist():
            score = float(judged.score[k])
            if score < self.clean[0] - 1e-9 or self.rank(states[k]) < self.rank(self.clean[1]):
                self.clean = (score, states[k])

    # --- joins of single moves ---------------------------------------------------------------------------------------

    def joined(self, singles: Sequence[State], judged: Judged) -> Generator[Sequence[Trial], Judged, list[Any]]:
        """States to begin the beam with: joins of moves that each do something for a finding and harm nothing."""
        closing = self.base.closing
        items = [tuple(map(int, at)) for at in np.argwhere(closing)]
        extra = np.asarray((judged.bad & ~closing).any(axis=(1, 2))).tolist()
        helps: dict[tuple[int, ...], list[int]] = {}
        for k, i in items:
            solved = np.flatnonzero(~judged.bad[:, k, i]).tolist()
            ranked = sorted(solved, key=lambda n: (extra[n], judged.score[n], self.rank(singles[n])))
            cheap = sorted(solved, key=lambda n: (extra[n], self.rank(singles[n])))
            helps[(k, i)] = list(dict.fromkeys([*cheap[:MOVES], *ranked[:MOVES]]))
        combos: list[tuple[dict[Cell, Option], frozenset[tuple[int, ...]]]] = [({}, frozenset(items))]
        for item in sorted(items, key=lambda at: (len(helps[at]), at)):
            following = []
            for state, left in combos:
                if item not in left or not helps[item]:
                    following.append((state, left))
                    continue
                for n in helps[item]:
                    ((cell, option),) = singles[n].items()
                    if cell not in state:
                        gone = {at for at in left if not judged.bad[n][at]}
                        following.append(({**state, cell: option}, left - gone))
            following.sort(key=lambda entry: (len(entry[1]), self.rank(entry[0])))
            combos = following[:JOINS] or combos
        states = [state for state, _ in combos if len(state) > 1] + self.filled(closing)
        ranked = sorted(range(len(singles)), key=lambda n: (judged.score[n], self.rank(singles[n])))
        begun: list[Any] = [(float(judged.score[n]), singles[n], judged.bad[n]) for n in ranked[:WIDTH]]
        begun.append((self.base_score, {}, closing))
        if states:
            result = yield [trial_of(state) for state in states]
            self.remember(states, result)
            begun += [(float(result.score[n]), states[n], result.bad[n]) for n in range(len(states))]
        return begun

    def filled(self, bad: NDArray[np.bool_]) -> list[State]:
        """What is left undone by blank cells, each of them filled with its first value: by finding, and all at once."""
        states: list[dict[Cell, Option]] = []
        for k, i in np.argwhere(bad):
            one = np.zeros_like(bad)
            one[k, i] = True
            blank = [cell for cell in self.cells(one) if self.is_blank(cell) and self.options(cell)]
            if blank:
                states.append({cell: self.options(cell)[0] for cell in blank})
        merged = {cell: option for state in states for cell, option in state.items()}
        return [*states, merged] if len(states) > 1 else list(states)

    def is_blank(self, cell: Cell) -> bool:
        """Whether the table states nothing there."""
        value = value_at(self.stations, cell.name, int(self.block[cell.row]))
        first = value[0] if isinstance(value, tuple) else value
        return first != first or first == -1

    # --- beam --------------------------------------------------------------------------------------------------------

    def beam(self, begun: list[Any]) -> Generator[Sequence[Trial], Judged, State]:
        """The best state within the rounds: one that leaves nothing where there is one."""
        pool = self.narrowed(begun)
        seen = {self.key(state) for _, state, _ in pool}
        stale = 0
        for _ in range(ROUNDS):
            if pool[0][0] == 0 or stale > 1:
                break
            states: list[State] = []
            for _, state, bad in pool:
                for new in self.expanded(state, bad):
                    key = self.key(new)
                    if key not in seen:
                        seen.add(key)
                        states.append(new)
            states = states[:MOST_TRIALS]
            if not states:
                break
            judged = yield [trial_of(state) for state in states]
            self.remember(states, judged)
            found = [(float(judged.score[n]), states[n], judged.bad[n]) for n in range(len(states))]
            before = pool[0][0]
            pool = self.narrowed([*pool, *found])
            stale = 0 if pool[0][0] < before - 1e-9 else stale + 1
        best: State = pool[0][1] if pool[0][0] == 0 else self.clean[1]
        return best

    def key(self, state: State) -> tuple[Any, ...]:
        """A state by its values."""
        return tuple(sorted((cell, str(option.value)) for cell, option in state.items()))

    def narrowed(self, entries: list[Any]) -> list[Any]:
        """The best states, not more than two that leave the same to do."""
        entries.sort(key=lambda entry: (round(entry[0], 6), self.rank(entry[1])))
        kept: list[Any] = []
        alike: dict[bytes, int] = {}
        for entry in entries:
            mark = np.packbits(entry[2]).tobytes()
            if alike.get(mark, 0) < 2:
                alike[mark] = alike.get(mark, 0) + 1
                kept.append(entry)
            if len(kept) == WIDTH:
                break
        return kept

    def expanded(self, state: State, bad: NDArray[np.bool_]) -> Iterable[State]:
        """States one move further: a cell that serves what is left takes a value, or goes back to its own."""
        for cell in self.cells(bad):
            for option in self.thinned(cell):
                yield {**state, cell: option}
        for cell in list(state):
            yield {c: o for c, o in state.items() if c != cell}
        force = self.following_force(state)
        if force is not None:
            yield force

    def thinned(self, cell: Cell) -> Sequence[Option]:
        """Some values of a cell: the nearest ones and a spread of the others."""
        options = self.options(cell)
        if len(options) <= 2 * VALUES or parameter(cell.name).change == "class":
            return options
        near = VALUES // 2
        spread = np.unique(np.linspace(near, len(options) - 1, 2 * VALUES - near).astype(int))
        return [*options[:near], *(options[k] for k in spread)]

    def following_force(self, state: State) -> State | None:
        """The state with the stated preload that its spring gives, where both are stated and the spring moves."""
        names = ("spring_rate", "spring_free_length", "spring_installed_length")
        force = Cell("preload_force", 0)
        if not any(cell.name in names for cell in state) or not self.movable.allows(force.name):
            return None
        row = int(self.block[0])
        now = value_at(self.stations, force.name, row)
        sizes = [
            state[Cell(name, 0)].value if Cell(name, 0) in state else value_at(self.stations, name, row)
            for name in names
        ]
        value = sizes[0][0] * (sizes[1][0] - sizes[2][0])
        if not (np.isfinite(now[0]) and now[0] > 0 and np.isfinite(value) and value > 0):
            return None
        value = float(f"{value:.2g}")
        scale = value / now[0]
        option = Option((value, now[1] * scale, now[2] * scale, ""), min(abs(np.log(scale)) / 12.0, 0.999))
        return {**state, force: option}

    # --- making it small ---------------------------------------------------------------------------------------------

    def polished(self, state: State) -> Generator[Sequence[Trial], Judged, Found]:
        """The state without what it does not need, each value the nearest that serves."""
        bold: State | None = None
        score = np.inf
        for _ in range(POLISH):
            tried = state if bold is None else bold
            states = [tried, state, *self.smaller(tried)]
            judged = yield [trial_of(entry) for entry in states]
            score = min(score, self.rounded(judged, 1))
            if bold is not None and self.rounded(judged, 0) > score:
                bold = None
                continue
            state, bold = tried, None
            good = [n for n in range(2, len(states)) if self.serves(judged, n, score)]
            if not good:
                without = {cell: judged.grade[2 + n] for n, cell in enumerate(state) if len(state) > 1}
                return Found(state, score, judged.grade[0], judged.bad[0], without, self.conflicts(score))
            each: dict[Cell, State] = {}
            for n in good:
                (cell,) = [c for c in tried if c not in states[n] or states[n][c] is not tried[c]]
                if cell not in each or self.rank(states[n]) < self.rank(each[cell]):
                    each[cell] = states[n]
            bold = {c: each[c][c] if c in each else o for c, o in tried.items() if c not in each or c in each[c]}
            state = min(each.values(), key=self.rank)
        judged = yield [trial_of(state)]
        return Found(state, score, judged.grade[0], judged.bad[0], {}, self.conflicts(score))

    def rounded(self, judged: Judged, n: int) -> float:
        """What a trial leaves to do, without the last bits."""
        return round(float(judged.score[n]), 6)

    def serves(self, judged: Judged, n: int, score: float) -> bool:
        """Whether a smaller plan does as much, and makes nothing worse."""
        worse = (judged.bad[n] & ~self.base.closing).any()
        return self.rounded(judged, n) <= score and not worse

    def conflicts(self, score: float) -> tuple[tuple[State, NDArray[np.bool_]], ...]:
        """What was tried for what is left; nothing where the gate opens."""
        return tuple(self.evidence) if score else ()

    def smaller(self, state: State) -> list[State]:
        """States with one change less, or with one value nearer; the changes taken away stand first, in their order."""
        found: list[State] = [{c: o for c, o in state.items() if c != cell} for cell in state]
        for cell, option in state.items():
            between = nearer(self.stations, self.block, cell, option.value)
            nearest = (o for o in (*self.options(cell), *between) if o.cost < option.cost - 1e-12)
            found.extend({**state, cell: other} for other in nearest)
        return found[:MOST_TRIALS]
