"""The search for a plan of one machine: single moves, their joins, then a beam over what is left to do.

A search is a generator: it asks for trials and is sent what the rulebook says of them, so that the searches of many
machines share their batches. Its budget counts rounds and trials, never time; ties fall by the order of the clauses,
of their repairs and of the domains.

One module because a search is one generator: its steps hand one another the states and what is known of the cells.
"""

from collections.abc import Generator, Iterable, Mapping, Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from linter.model.stations import Stations
from linter.review.plan.cells import Cell, Movable
from linter.review.plan.domains import Option, domain, nearer
from linter.review.plan.standing import Baseline, Judged, way_of
from linter.review.plan.states import Entry, Found, Item, State, cost_of, values_of
from linter.review.plan.trials import Grades, Trial, value_at
from linter.rulebook.model import Rulebook

#: Rounds of the beam, states kept, and values of one cell tried on top of a state.
ROUNDS, WIDTH, VALUES = 6, 5, 12
#: Joins of single moves tried, and moves looked at for each finding in them.
JOINS, MOVES = 60, 5
#: Shares of the largest of several values that all of them are brought down to.
CAPS = (0.63, 0.4, 0.25, 0.16, 0.1, 0.063, 0.04, 0.025, 0.016, 0.01)
#: Shares of the way through their domains at which blank cells are filled together.
FILLS = (0.0, 0.35, 0.5, 0.65, 0.75, 0.82, 0.9)
#: Trials of one round at most.
MOST_TRIALS = 1500
#: Trials of one machine after which the beam goes no further.
BUDGET = 5000
#: Rounds in which a plan is made smaller.
POLISH = 8

Asked = Generator[Sequence[Trial], Grades, Any]


def spread(options: Sequence[Option], most: int) -> Sequence[Option]:
    """So many of some values at most: the nearest ones and a spread of the others."""
    if len(options) <= most:
        return options
    near = most // 2
    others = sorted(set(np.linspace(near, len(options) - 1, most - near).astype(int).tolist()))
    return [*options[:near], *(options[k] for k in others)]


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
        self.evidence: list[NDArray[np.bool_]] = []
        self.spent = 0
        own = base.judge([{}], Grades(base.grade[None], base.measure[None]))
        #: The machine as it is.
        self.start = Entry(float(own.score[0]), int(own.wanting[0]), (0, 0.0), {}, own.bad[0])
        #: The best state that makes nothing worse.
        self.clean = self.start
        #: For a finding of the machine, the values of a cell that do something for it alone, the cheapest first.
        self.helpful: dict[tuple[Item, Cell], list[Option]] = {}
        #: For a finding the cells that serve it, with the values that the beam tries.
        self.moves: dict[Item, Sequence[tuple[Cell, Sequence[Option]]]] = {}
        #: Findings for which nothing that was tried does anything.
        self.hopeless = np.zeros_like(base.closing)

    def judged(self, states: Sequence[State]) -> Generator[Sequence[Trial], Grades, Judged]:
        """How some states stand."""
        trials = [values_of(state) for state in states]
        return self.base.judge(trials, (yield trials))

    def options(self, cell: Cell) -> tuple[Option, ...]:
        """The domain of a cell, made once."""
        if cell not in self.domains:
            self.domains[cell] = domain(self.stations, self.block, cell, self.rulebook)
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
        cells = self.cells(self.base.closing)
        few = sum(len(self.options(c)) for c in cells) <= 2 * MOST_TRIALS
        most = 2 * MOST_TRIALS if few else max(2 * MOST_TRIALS // len(cells), VALUES)
        singles: list[State] = [{c: option} for c in cells for option in spread(self.options(c), most)]
        del singles[2 * MOST_TRIALS :]
        filled = [*self.filled(self.base.closing), *self.capped(self.base.closing)]
        if not singles:
            return Found({}, self.start.score, self.base.grade, self.start.bad)
        judged = yield from self.judged([*singles, *filled])
        entries = self.entries([*singles, *filled], judged)
        best = self.done(entries)
        if best is not None and self.is_nearest(best.state):
            n = entries.index(best)
            return Found(best.state, 0.0, judged.grade[n], judged.bad[n])
        if best is None:
            self.learn(entries, judged, len(singles))
            pool = yield from self.joined(entries, judged)
            best = yield from self.beam(pool)
        found = yield from self.polished(best.state)
        return (yield from self.finished(found))

    def entries(self, states: Sequence[State], judged: Judged) -> list[Entry]:
        """States with what they leave; the best one that makes nothing worse, and evidence of conflicts, are kept."""
        self.spent += len(states)
        closing = self.base.closing
        worse = (judged.bad & ~closing).any(axis=(1, 2)) | (
            (judged.grade > self.base.grade) & closing & self.base.once
        ).any(axis=(1, 2))
        made = [
            Entry(score, wanting, cost_of(state), state, bad)
            for score, wanting, state, bad in zip(
                judged.score.tolist(), judged.wanting.tolist(), states, judged.bad, strict=True
            )
        ]
        clean = [self.clean, *(made[k] for k in np.flatnonzero(~worse).tolist())]
        self.clean = min(clean, key=lambda e: (round(e.score, 6), e.wanting, e.cost))
        cleared = (closing & ~judged.bad).any(axis=(1, 2))
        self.evidence += [judged.bad[k] for k in np.flatnonzero(cleared & worse)[:200].tolist()]
        return made

    def done(self, entries: Sequence[Entry]) -> Entry | None:
        """The cheapest state that leaves nothing to do."""
        return min((e for e in entries if e.score == 0), key=lambda e: (e.wanting, e.cost), default=None)

    def is_nearest(self, state: State) -> bool:
        """Whether no value nearer than that of a single change is left to try."""
        if len(state) > 1:
            return False
        ((cell, option),) = state.items()
        return not nearer(self.stations, self.block, cell, option.value)

    def is_blank(self, cell: Cell) -> bool:
        """Whether the table states nothing there."""
        value = value_at(self.stations, cell.name, int(self.block[cell.row]))
        first = value[0] if isinstance(value, tuple) else value
        return bool(first != first or first == -1)

    def filled(self, bad: NDArray[np.bool_]) -> list[State]:
        """Blank cells of what is left, filled with values of one share of their domains: by finding, then all."""
        states: list[State] = []
        for k, i in np.argwhere(bad):
            one = np.zeros_like(bad)
            one[k, i] = True
            blank = [cell for cell in self.cells(one) if self.is_blank(cell) and self.options(cell)]
            if len(blank) > 1:
                states += [self.at_share(blank, share) for share in FILLS]
        every = {cell: None for state in states for cell in state}
        return [*states, *(self.at_share(every, share) for share in FILLS if len(states) > len(FILLS))]

    def at_share(self, cells: Iterable[Cell], share: float) -> State:
        """The cells at some share of the way through their domains."""
        return {cell: self.options(cell)[round(share * (len(self.options(cell)) - 1))] for cell in cells}

    def capped(self, bad: NDArray[np.bool_]) -> list[State]:
        """For findings that the worst or the sum of several values makes: all of them at most so large, in steps."""
        states: dict[frozenset[tuple[Cell, str]], State] = {}
        for k, i in np.argwhere(bad):
            one = np.zeros_like(bad)
            one[k, i] = True
            rows = {cell: value_at(self.stations, cell.name, int(self.block[cell.row])) for cell in self.cells(one)}
            numbers = {cell: now for cell, now in rows.items() if isinstance(now, float) and now > 0}
            for share in CAPS if len(numbers) > 1 else ():
                limit = share * max(numbers.values())
                state = {
                    cell: max(smaller, key=lambda o: float(o.value))
                    for cell, now in numbers.items()
                    if now > limit and (smaller := [o for o in self.options(cell) if o.value <= limit])
                }
                if len(state) > 1:
                    states[self.key(state)] = state
        return list(states.values())

    # --- joins of single moves ---------------------------------------------------------------------------------------

    def learn(self, entries: Sequence[Entry], judged: Judged, singles: int) -> None:
        """Which values do something for which finding, and for which finding nothing does anything."""
        base = self.base
        for k, i in np.argwhere(base.closing).tolist():
            milder = judged.grade[:, k, i] < base.grade[k, i]
            milder |= judged.measure[:, k, i] < base.measure[k, i] * (1 - 1e-6)
            milder &= ~judged.bad[:, k, i] | (judged.grade[:, k, i] >= base.closes)
            for n in np.flatnonzero(milder[:singles]).tolist():
                ((cell, option),) = entries[n].state.items()
                self.helpful.setdefault(((k, i), cell), []).append(option)
            self.hopeless[k, i] = not milder.any()
        for guard in [*base.guards]:
            own = [n for n in range(singles) if guard.cell in entries[n].state]
            wrong = [n for n in own if way_of(guard, entries[n].state[guard.cell].value) < 0]
            if own and not (judged.handed[wrong, guard.clause, guard.row]).any():
                base.guards.remove(guard)

    def joined(self, entries: Sequence[Entry], judged: Judged) -> Generator[Sequence[Trial], Grades, list[Entry]]:
        """States to begin the beam with: joins of moves that each do something for a finding and harm nothing."""
        closing = self.base.closing & ~self.hopeless
        items = [(int(k), int(i)) for k, i in np.argwhere(closing)]
        extra = np.asarray((judged.bad & ~self.base.closing).any(axis=(1, 2))).tolist()
        helps: dict[Item, list[int]] = {}
        for k, i in items:
            solved = np.flatnonzero(~judged.bad[:, k, i]).tolist()
            cheap = sorted(solved, key=lambda n: (extra[n], entries[n].cost))
            strong = sorted(solved, key=lambda n: (extra[n], entries[n].score, entries[n].cost))
            helps[(k, i)] = list(dict.fromkeys([*cheap[:MOVES], *strong[:MOVES]]))
        combos: list[tuple[int, tuple[int, float], dict[Cell, Option], frozenset[Item]]] = [
            (len(items), (0, 0.0), {}, frozenset(items))
        ]
        for item in sorted(items, key=lambda at: (len(helps[at]), at)):
            following = []
            for combo in combos:
                _, _, state, left = combo
                if item not in left or not helps[item]:
                    following.append(combo)
                    continue
                for n in helps[item]:
                    if entries[n].state.keys().isdisjoint(state):
                        new = {**state, **entries[n].state}
                        rest = frozenset(at for at in left if judged.bad[n][at])
                        following.append((len(rest), cost_of(new), new, rest))
            following.sort(key=lambda entry: entry[:2])
            combos = following[:JOINS] or combos
        pool = [self.start, *sorted(entries, key=lambda e: (round(e.score, 6), e.cost))[:WIDTH]]
        states = [combo[2] for combo in combos if len(combo[2]) > 1]
        if states:
            pool += self.entries(states, (yield from self.judged(states)))
        return pool

    # --- beam --------------------------------------------------------------------------------------------------------

    def left(self, entry: Entry) -> float:
        """What is left of a state where nothing is expected of findings that nothing helps."""
        return 0.0 if not (entry.bad & ~self.hopeless).any() else entry.score

    def beam(self, begun: list[Entry]) -> Generator[Sequence[Trial], Grades, Entry]:
        """The best state within the rounds: one that leaves nothing that can be helped where there is one."""
        pool = self.narrowed(begun)
        seen = {self.key(entry.state) for entry in pool}
        stale = 0
        for _ in range(ROUNDS):
            if self.left(pool[0]) == 0 or stale > (0 if self.hopeless.any() else 1):
                break
            states: list[State] = []
            for entry in (*pool, *(() if self.clean in pool else (self.clean,))):
                for new in self.expanded(entry.state, entry.bad & ~self.hopeless):
                    key = self.key(new)
                    if key not in seen:
                        seen.add(key)
                        states.append(new)
            del states[min(MOST_TRIALS, max(BUDGET - self.spent, 0)) :]
            if not states:
                break
            before = pool[0].score
            pool = self.narrowed([*pool, *self.entries(states, (yield from self.judged(states)))])
            stale = 0 if pool[0].score < before - 1e-9 else stale + 1
        return pool[0] if self.left(pool[0]) == 0 else self.clean

    def key(self, state: State) -> frozenset[tuple[Cell, str]]:
        """A state by its values."""
        return frozenset((cell, option.text) for cell, option in state.items())

    def narrowed(self, entries: list[Entry]) -> list[Entry]:
        """The best states, not more than two that leave the same to do."""
        kept: list[Entry] = []
        alike: dict[bytes, int] = {}
        for entry in sorted(entries, key=lambda e: (self.left(e) > 0, round(e.score, 6), e.wanting, e.cost)):
            mark = np.packbits(entry.bad).tobytes()
            if alike.get(mark, 0) < 2:
                alike[mark] = alike.get(mark, 0) + 1
                kept.append(entry)
            if len(kept) == WIDTH:
                break
        return kept

    def expanded(self, state: State, bad: NDArray[np.bool_]) -> Iterable[State]:
        """States one move further: a cell that serves what is left takes a value, or goes back to its own."""
        for k, i in np.argwhere(bad).tolist():
            for cell, options in self.moves_for((k, i)):
                for option in options:
                    yield {**state, cell: option}
        for cell in list(state):
            yield {c: o for c, o in state.items() if c != cell}
        force = self.following_force(state)
        if force is not None:
            yield force

    def moves_for(self, item: Item) -> Sequence[tuple[Cell, Sequence[Option]]]:
        """The cells that serve a finding, each with some of its values, made once for the beam."""
        if item not in self.moves:
            one = np.zeros_like(self.base.closing)
            one[item] = True
            self.moves[item] = [(cell, self.thinned(item, cell)) for cell in self.cells(one)]
        return self.moves[item]

    def thinned(self, item: Item, cell: Cell) -> Sequence[Option]:
        """Some values of a cell: those that help a finding of the machine; else the nearest and some others."""
        options: Sequence[Option] = self.helpful.get((item, cell), ())
        if not options:
            options = self.options(cell)
        most = VALUES if (item, cell) in self.helpful or not self.base.closing[item] else VALUES // 2
        return spread(options, most)

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

    def polished(self, state: State) -> Generator[Sequence[Trial], Grades, Found]:
        """The state without what it does not need, each value the nearest that serves."""
        bold: State | None = None
        weight = np.inf
        for _ in range(POLISH):
            tried = state if bold is None else bold
            states = [tried, state, *self.smaller(tried)]
            judged = yield from self.judged(states)
            weight = min(weight, float(judged.weight[1]))
            if bold is not None and judged.weight[0] > weight:
                bold = None
                continue
            state, bold = tried, None
            good = [n for n in range(2, len(states)) if self.serves(judged, n, weight)]
            if not good:
                without = {cell: judged.grade[2 + n] for n, cell in enumerate(state) if len(state) > 1}
                return self.found(state, judged, without)
            each: dict[Cell, State] = {}
            for n in good:
                (cell,) = [c for c in tried if c not in states[n] or states[n][c] is not tried[c]]
                if cell not in each or cost_of(states[n]) < cost_of(each[cell]):
                    each[cell] = states[n]
            bold = {c: each[c][c] if c in each else o for c, o in tried.items() if c not in each or c in each[c]}
            state = min(each.values(), key=cost_of)
        judged = yield from self.judged([state])
        return self.found(state, judged, {})

    def finished(self, found: Found) -> Generator[Sequence[Trial], Grades, Found]:
        """The plan with the values that only lower a finding moved on to where it is met, where that costs no more."""
        once = self.base.once
        lowered = (found.grade > 0) & (found.grade < self.base.grade) & once
        further: list[tuple[Cell, Option]] = [
            (cell, option)
            for cell, taken in found.state.items()
            for option in self.options(cell)
            if option.cost > taken.cost and int(option.cost) == int(taken.cost)
        ]
        if not lowered.any() or not further:
            return found
        better = yield from self.nearest_met(found, further, lowered)
        between = [
            (cell, option)
            for cell, chosen in better.items()
            for option in nearer(self.stations, self.block, cell, chosen.value)
            if option.cost > found.state[cell].cost
        ]
        if between:
            better |= yield from self.nearest_met(found, between, lowered)
        if not better:
            return found
        state = {**found.state, **better}
        fewer = [{c: o for c, o in state.items() if c != cell} for cell in state] if len(state) > 1 else []
        judged = yield from self.judged([state, *fewer])
        idle = any(self.serves(judged, n, judged.weight[0]) for n in range(1, len(fewer) + 1))
        if idle or self.worsens(judged, 0, found):
            return found
        return self.found(state, judged, {cell: judged.grade[1 + n] for n, cell in enumerate(state) if fewer})

    def nearest_met(
        self, found: Found, moves: Sequence[tuple[Cell, Option]], lowered: NDArray[np.bool_]
    ) -> Generator[Sequence[Trial], Grades, dict[Cell, Option]]:
        """For each cell the nearest of some values with which one of the findings is met and nothing is worse."""
        judged = yield from self.judged([{**found.state, cell: option} for cell, option in moves])
        better: dict[Cell, Option] = {}
        for n, (cell, option) in enumerate(moves):
            met = (lowered & (judged.grade[n] <= 0) & (judged.grade[n] != -1)).any()
            if met and cell not in better and not self.worsens(judged, n, found):
                better[cell] = option
        return better

    def worsens(self, judged: Judged, n: int, found: Found) -> bool:
        """Whether a trial is worse than a plan anywhere, or leaves more to do."""
        graver = (judged.grade[n] > np.maximum(found.grade, 0)) & self.base.once
        lost = (judged.grade[n] == -1) & (found.grade != -1) & self.base.once
        return bool((graver | lost | (judged.bad[n] & ~found.bad)).any())

    def found(self, state: State, judged: Judged, without: Mapping[Cell, NDArray[np.int8]]) -> Found:
        """The plan, from a batch that begins with it; evidence only where something is left."""
        score = float(judged.score[0])
        return Found(state, score, judged.grade[0], judged.bad[0], without, tuple(self.evidence) if score else ())

    def serves(self, judged: Judged, n: int, weight: float) -> bool:
        """Whether a smaller plan does as much, and makes nothing worse; nearer to a limit is nothing done."""
        if judged.wanting[n] > judged.wanting[0]:
            return False
        return bool(judged.weight[n] <= weight and not (judged.bad[n] & ~self.base.closing).any())

    def smaller(self, state: State) -> list[State]:
        """States with one change less, or with one value nearer; the changes taken away stand first, in their order."""
        found: list[State] = [{c: o for c, o in state.items() if c != cell} for cell in state]
        for cell, option in state.items():
            between = nearer(self.stations, self.block, cell, option.value)
            nearest = (o for o in (*self.options(cell), *between) if o.cost < option.cost - 1e-12)
            found.extend({**state, cell: other} for other in nearest)
        return found[:MOST_TRIALS]
