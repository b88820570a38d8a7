"""Two values at once: a map of severities, the highest speed and the largest bearing by balls and lubrication."""

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.model.findings import SEVERITIES
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.reading.words.bearing_tables import size_table
from linter.review.room.domains import Cell, between, classes_of, kind_of
from linter.review.room.judged import Changes, Judge
from linter.review.room.room import Room, searched
from linter.rulebook.model import Rulebook

#: Grades of the map, from the least: what it says of a place.
WORDS = ("met", *reversed(SEVERITIES))
UNJUDGED = -1
#: Places of a number on a map, and how far from the present value they go.
PLACES, REACH = 15, 3.0
#: Grades of a seat's class on a map: that of the present class and its neighbours.
NEIGHBOURS = 1


@frozen
class Axis:
    """One side of a map: the cell, its values in words, the changes that put them, and the place of the present one."""

    cell: Cell
    words: tuple[str, ...]
    values: tuple[object, ...] = field(repr=False)
    present: int | None = None


@frozen(eq=False)
class Map:
    """The gravest finding by two values; ``grades`` counts as :data:`WORDS`, -1 where something goes unjudged."""

    across: Axis
    down: Axis
    grades: NDArray[np.int8]
    clauses: tuple[tuple[str, ...], ...]


def axis_of(judge: Judge, cell: Cell) -> Axis:
    """The values of one side of a map.

    Raises
    ------
    ValueError
        Where the parameter has no values to choose from: a text, or a seat whose size is not known.
    """
    stations, row = judge.stations, int(judge.block[cell.row])
    entry, kind = parameter(cell.name), kind_of(cell)
    if kind == "choice":
        code = int(stations.choice(cell.name).codes[row])
        return Axis(cell, entry.choices, tuple(range(len(entry.choices))), code if code >= 0 else None)
    if kind == "class":
        classes = classes_of(stations, cell.name, row)
        now = str(stations.size(cell.name).tolerance_class[row])
        digits = "".join(c for c in now if c.isdigit())
        grades = {str(int(digits or 6) + k) for k in range(-NEIGHBOURS, NEIGHBOURS + 1)}
        words = tuple(w for w in classes if "".join(c for c in w if c.isdigit()) in grades)
        if not words:
            raise ValueError(f"{cell.name}: no classes to choose from, the size of the seat is not known")
        return Axis(cell, words, tuple(classes[w] for w in words), words.index(now) if now in words else None)
    if not kind:
        raise ValueError(f"{cell.name}: is a text; a map is made of numbers, sizes, classes and choices")
    return _numbers(judge, cell, row)


def _numbers(judge: Judge, cell: Cell, row: int) -> Axis:
    """Values about the present one of a number or size."""
    stations, entry = judge.stations, parameter(cell.name)
    sized = entry.kind == "toleranced"
    now_at = float(stations.size(cell.name).nominal[row] if sized else stations.number(cell.name)[row])
    if np.isnan(now_at):
        raise ValueError(f"{cell.name}: is not stated; a map of a number lies about its present value")
    spread = between(now_at / REACH, now_at * REACH, np.linspace(0, 1, PLACES))
    if now_at == 0 or entry.unit == "degC":
        spread = now_at + np.linspace(-1, 1, PLACES) * (50.0 if entry.unit == "degC" else 1.0)
    shown = sorted({now_at, *(float(f"{v:.3g}") for v in spread)})
    shown = [v for v in shown if entry.least <= v < entry.most]
    size = stations.size(cell.name) if sized else None
    values = shown if size is None else [(v, float(size.lower[row]), float(size.upper[row]), "") for v in shown]
    return Axis(cell, tuple(f"{v:g}" for v in shown), tuple(values), shown.index(now_at) if now_at in shown else None)


def map_of(stations: Stations, machine: int, rulebook: Rulebook, first: Cell, second: Cell) -> Map:
    """The map of two values of one machine, all else fixed.

    Parameters
    ----------
    stations : Stations
        The table, with the defaults of the rulebook.
    machine : int
        Index of the machine.
    rulebook : Rulebook
        All of its clauses are run at every place.
    first, second : Cell
        What goes down and what goes across.

    Returns
    -------
    Map
        With the clauses of the gravest finding at each place, row by row.

    Raises
    ------
    ValueError
        As :func:`axis_of`; and where both are one cell.
    """
    if first == second:
        raise ValueError(f"{first.name}: a map needs two different values")
    judge = Judge(stations, np.flatnonzero(stations.machine_row == machine), rulebook, "remark")
    down, across = axis_of(judge, first), axis_of(judge, second)
    trials: list[Changes] = [{first: a, second: b} for a in down.values for b in across.values]
    found = np.concatenate([judge.grades(trials[k : k + 4000]) for k in range(0, len(trials), 4000)])
    lost = ((found == -1) & (judge.base >= 0) & judge.must).any(axis=(1, 2))
    worst = np.maximum(found.max(axis=(1, 2)), 0).astype(np.int8)
    clauses = []
    for k, grade in enumerate(worst):
        wanted = (found[k] == grade).any(axis=1) & (grade > 0)
        clauses.append(tuple(judge.clauses[c] for c in np.flatnonzero(wanted)))
    grades = np.where(lost & (worst < len(WORDS) - 2), UNJUDGED, worst).astype(np.int8)
    return Map(across, down, grades.reshape(len(down.words), len(across.words)), tuple(clauses))


@frozen
class Reach:
    """How fast and how large for one kind of balls and one lubrication.

    Attributes
    ----------
    balls, lubrication : str
        Material of the rolling elements, and lubrication, at every position.
    present : bool
        Whether they are those of the table.
    speed : Room
        Room of the highest speed.
    largest : str
        The largest printed size that the chapter of speed lets run at the present speed, as d x D x B in mm; empty
        where there is none.
    """

    balls: str
    lubrication: str
    present: bool
    speed: Room
    largest: str


def reaches(stations: Stations, machine: int, rulebook: Rulebook, severity: str = "minor") -> list[Reach]:
    """Highest speed of the bearings, and largest bearing at the present speed, by balls and lubrication.

    Parameters
    ----------
    stations, machine, rulebook, severity
        As for :func:`linter.review.room.room.rooms`.

    Returns
    -------
    list of Reach
        The speed is judged by the whole rulebook with all else as it is. The size is judged by the clauses of chapter
        ``speed`` alone: seats and abutments of another bearing are not drawn yet.
    """
    block = np.flatnonzero(stations.machine_row == machine)
    judge = Judge(stations, block, rulebook, severity)
    balls, oils = parameter("ball_material").choices, parameter("lubrication").choices
    now = [tuple(int(stations.choice(n).codes[r]) for r in block) for n in ("ball_material", "lubrication")]
    beside: list[Changes] = [
        {
            Cell(name, row): code
            for row in range(len(block))
            for name, code in (("ball_material", b), ("lubrication", o))
        }
        for b in range(len(balls))
        for o in range(len(oils))
    ]
    found = searched(judge, [(Cell("speed_max", 0), changes) for changes in beside])
    sizes = sorted({(s.bore, s.outside, s.width) for s in size_table().values()}, key=lambda s: (s[0] + s[1], s))
    largest = _largest(judge, beside, sizes)
    pairs = [(b, o) for b in range(len(balls)) for o in range(len(oils))]
    return [
        Reach(
            balls[b], oils[o], set(now[0]) == {b} and set(now[1]) == {o}, room,
            "" if at is None else " \u00d7 ".join(f"{v:g}" for v in sizes[at]),
        )
        for (b, o), room, at in zip(pairs, found, largest, strict=True)
    ]  # fmt: skip


def _largest(judge: Judge, beside: list[Changes], sizes: list[tuple[float, float, float]]) -> list[int | None]:
    """Index of the largest size that the chapter of speed allows beside each of some changes."""
    own = np.array([clause.startswith("speed.") for clause in judge.clauses])
    rows = range(len(judge.block))
    blank = {Cell(name, r): np.nan for r in rows for name in ("pitch_diameter", "limiting_speed", "reference_speed")}
    trials: list[Changes] = []
    for changes in beside:
        for size in sizes:
            named = zip(("bore_diameter", "outside_diameter", "ring_width"), size, strict=True)
            trials.append({**changes, **blank, **{Cell(n, r): v for n, v in named for r in rows}})
    grades = [judge.grades(trials[k : k + 4000]) for k in range(0, len(trials), 4000)]
    worst = np.concatenate([part[:, own].max(axis=(1, 2)) for part in grades])
    allowed = (worst <= judge.allowed).reshape(len(beside), len(sizes))
    return [int(np.flatnonzero(row)[-1]) if row.any() else None for row in allowed]
