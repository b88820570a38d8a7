"""Start values for the blanks of a machine: one after the other, then each again until none would be another."""

from collections.abc import Iterator, Sequence
from typing import Any

import numpy as np
from attrs import evolve, field, frozen
from numpy.typing import NDArray

from linter.model.findings import SEVERITIES
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.review.plan.trials import put, replicate
from linter.review.propose.kinds import KINDS, Kind, is_blank, wanted
from linter.review.propose.known import Known
from linter.review.propose.offers import Bench, Offer, printed_classes, split_class
from linter.review.room.domains import Cell
from linter.review.room.judged import anew
from linter.rulebook.model import Rulebook

#: Rounds in which every proposed value is looked at again.
MOST_ROUNDS = 24
#: What is compared: criticals, majors, what must be judged and is not, minors, remarks.
Score = tuple[int, ...]


@frozen
class Proposed:
    """One start value.

    Attributes
    ----------
    cell : Cell
        Where it goes; the row counts the positions of the machine.
    value : float, int or tuple
        As :func:`linter.review.plan.trials.put` takes it.
    text : str
        The value as it is written.
    clause : str
        The clause that it is drawn up for.
    reason : str
        Why this value.
    bounded_by : tuple of str
        Clauses that judge the next value worse, where one is.
    others : tuple of str
        The next choices in their order.
    """

    cell: Cell
    value: Any = field(repr=False)
    text: str
    clause: str
    reason: str
    bounded_by: tuple[str, ...] = ()
    others: tuple[str, ...] = ()

    @property
    def shown(self) -> str:
        """The value as a drawing writes it, a seat with its nominal."""
        return f"{self.value[0]:g} {self.text}" if self.cell.name.endswith("seat_diameter") else self.text


def propose(stations: Stations, machine: int, rulebook: Rulebook) -> tuple[Proposed, ...]:
    """Start values for what one machine leaves blank.

    Parameters
    ----------
    stations : Stations
        The table, with the defaults of the rulebook.
    machine : int
        Index of the machine.
    rulebook : Rulebook
        Judges every value that is tried, whole.

    Returns
    -------
    tuple of Proposed
        In the order in which a designer works; empty where nothing is blank. What is stated is never touched. Each
        value is the one that would be chosen if it alone were blank, so that the order leaves no trace.
    """
    block = np.flatnonzero(stations.machine_row == machine)
    now = replicate(stations, [block])
    found: dict[Cell, tuple[Kind, _Choice]] = {}
    blanks = {Cell(k.name, r) for k in KINDS for r in range(len(block)) if is_blank(now, k.name, r)}
    for kind in KINDS:
        if kind.finest:
            for cell in sorted(c for c in blanks if c.name == kind.name and not (c.whole and c.row)):
                bench = Bench(now, rulebook)
                if wanted(bench, kind, cell):
                    now = with_value(now, rulebook, cell, kind.offers(bench, cell)[-1][0])
    known = Known(now, rulebook)
    for kind in KINDS:
        whole = parameter(kind.name).level == "machine"
        for row in (0,) if whole else range(len(block)):
            cell = Cell(kind.name, row)
            if cell in blanks and wanted(Bench(known.stations, rulebook), kind, cell):
                (choice,) = _choices(known, [(kind, cell)])
                if choice is not None:
                    found[cell] = (kind, choice)
                    known.change({cell: choice.value})
    for _ in range(MOST_ROUNDS):
        chosen = _choices(known, [(kind, cell) for cell, (kind, _) in found.items()])
        moved = False
        for (cell, (kind, before)), choice in zip(list(found.items()), chosen, strict=True):
            if choice is None:
                continue
            found[cell] = (kind, choice)
            if choice.text != before.text:
                known.change({cell: choice.value})
                moved = True
                break
        if not moved:
            break
    now = known.stations
    return tuple(
        Proposed(cell, c.value, c.text, kind.clause, kind.reason, c.bounded_by, _others(now, rulebook, cell, c))
        for cell, (kind, c) in found.items()
    )


def with_value(stations: Stations, rulebook: Rulebook, cell: Cell, value: Any) -> Stations:
    """One machine with a value put in and what follows from it assumed anew."""
    made = replicate(stations, [np.arange(len(stations))])
    at: int | slice = slice(0, len(made)) if cell.whole else cell.row
    put(made, cell.name, at, value)
    return anew(made, rulebook, [cell.name])


def with_proposals(stations: Stations, rulebook: Rulebook, found: Sequence[tuple[int, Sequence[Proposed]]]) -> Stations:
    """The whole table with the start values of its machines put in.

    Parameters
    ----------
    stations : Stations
        The table.
    rulebook : Rulebook
        Its defaults are applied anew.
    found : sequence of (int, sequence of Proposed)
        Index of a machine with its start values.

    Returns
    -------
    Stations
        With the machines, places and problems of the table.
    """
    blocks = [np.flatnonzero(stations.machine_row == m) for m in range(len(stations.machines))]
    made = replicate(stations, blocks)
    names = set()
    for machine, proposals in found:
        block = blocks[machine]
        for item in proposals:
            at = slice(int(block[0]), int(block[-1]) + 1) if item.cell.whole else int(block[item.cell.row])
            put(made, item.cell.name, at, item.value)
            names.add(item.cell.name)
    made = anew(made, rulebook, names)
    return evolve(made, machines=stations.machines, places=stations.places, problems=stations.problems)


@frozen
class _Choice:
    value: Any
    text: str
    bounded_by: tuple[str, ...]
    others: tuple[str, ...]
    serves: tuple[str, ...]


def _choices(known: Known, cells: Sequence[tuple[Kind, Cell]]) -> list["_Choice | None"]:
    """What would be chosen for each cell if it alone were blank; all trials in one batch."""
    now, rulebook = known.stations, known.rulebook
    offered = [list(kind.offers(Bench(_blanked(now, rulebook, cell), rulebook), cell)) for kind, cell in cells]
    trials = [{cell: value} for (_, cell), offers in zip(cells, offered, strict=True) for value, _ in offers]
    grades = [known.grades(trials[k : k + 6000]) for k in range(0, len(trials), 6000)]
    tried = np.concatenate(grades) if grades else np.zeros((0, len(known.clauses), len(now)), np.int8)
    must = known.must()
    found, start = [], 0
    for (kind, _), offers in zip(cells, offered, strict=True):
        own = tried[start : start + len(offers)]
        start += len(offers)
        found.append(_choice(kind, offers, own, must, known.clauses) if offers else None)
    return found


def _blanked(now: Stations, rulebook: Rulebook, cell: Cell) -> Stations:
    """The machine with one cell blank, so that what is offered does not depend on what stands there now."""
    kind = parameter(cell.name).kind
    row = cell.row
    if kind == "choice":
        blank: Any = -1
    elif kind == "number":
        blank = np.nan
    elif cell.name.endswith("seat_diameter"):
        blank = (float(now.size(cell.name).nominal[row]), np.nan, np.nan, "")
    else:
        blank = (np.nan, np.nan, np.nan, "")
    return with_value(now, rulebook, cell, blank)


def scores(grades: NDArray[np.int8], must: NDArray[np.bool_]) -> list[Score]:
    """Criticals, majors, what must be judged and is not, minors, remarks of each trial."""
    worst = grades.max(axis=2)
    unjudged = ((grades == -1) & must).any(axis=2).sum(axis=1)
    counts = [(worst == len(SEVERITIES) - k).sum(axis=1) for k in range(len(SEVERITIES))]
    columns = np.stack([counts[0], counts[1], unjudged, counts[2], counts[3]], axis=1)
    return [tuple(int(v) for v in row) for row in columns]


def _choice(
    kind: Kind, offers: Sequence[Offer], grades: NDArray[np.int8], must: NDArray[np.bool_], clauses: tuple[str, ...]
) -> "_Choice":
    found = scores(grades, must)
    if kind.grave:
        found = [score[:2] for score in found]
    best = min(found)
    serving = [k for k, score in enumerate(found) if score == best]
    at = _middle(serving) if kind.middle else serving[0]
    order = sorted(range(len(offers)), key=lambda k: (found[k], k))
    beyond = _next(at, found, kind)
    bounded = tuple(_worse(grades[at], grades[beyond], clauses)) if beyond is not None else ()
    others = tuple(offers[k][1] for k in order if k != at)[:2]
    serves = tuple(text for (_, text), score in zip(offers, found, strict=True) if score[:2] == best[:2])
    return _Choice(offers[at][0], offers[at][1], bounded, others, serves)


def _others(now: Stations, rulebook: Rulebook, cell: Cell, choice: "_Choice") -> tuple[str, ...]:
    """The next two choices.

    For a seat the same letter in another grade where tables print it, and the letter that most tables print next, at
    the coarser of these grades where it serves there (for a precision bearing at the grade of the first choice).
    """
    if not cell.name.endswith("seat_diameter"):
        return choice.others
    printed = [w for w in printed_classes(Bench(_blanked(now, rulebook, cell), rulebook), cell) if w in choice.serves]
    letter, grade = split_class(choice.text)
    precise = Bench(now, rulebook).word("tolerance_class", cell.row) in ("P5", "P4", "P2")
    near = [f"{letter}{grade + 1}", f"{letter}{grade - 1}"]
    same = [w for w in (reversed(near) if precise else near) if w in printed][:1]
    coarser = grade if precise else max([grade, *(split_class(w)[1] for w in same)])
    following = [w for w in (*printed, *choice.serves) if split_class(w)[0] != letter][:1]
    other = [w for w in (f"{split_class(w)[0]}{coarser}" for w in following) if w in choice.serves] or following
    rest = [w for w in (*printed, *choice.serves) if w != choice.text]
    return tuple(dict.fromkeys([*same, *other, *rest]))[:2]


def _middle(serving: Sequence[int]) -> int:
    """The middle of the longest run of neighbours that serve."""
    runs: list[list[int]] = []
    for k in serving:
        if runs and k == runs[-1][-1] + 1:
            runs[-1].append(k)
        else:
            runs.append([k])
    longest = max(runs, key=len)
    return longest[len(longest) // 2]


def _next(at: int, found: Sequence[Score], kind: Kind) -> int | None:
    """The neighbour that is judged worse: the one before it in the order of preference, else the one after."""
    for k in (at - 1, at + 1):
        if 0 <= k < len(found) and found[k] > found[at]:
            return k
    return None


def _worse(chosen: NDArray[np.int8], other: NDArray[np.int8], clauses: tuple[str, ...]) -> Iterator[str]:
    """Clauses that another value brings to a graver finding."""
    for k in np.flatnonzero((np.maximum(other, 0) > np.maximum(chosen, 0)).any(axis=1)):
        yield clauses[k]
