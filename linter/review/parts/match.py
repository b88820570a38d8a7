"""Which shafts, bearings and housings go together so that every fit lies in its window: pairs, and sets of three."""

from collections.abc import Mapping, Sequence

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.model.columns import Floats, Toleranced
from linter.model.findings import SEVERITIES
from linter.model.stations import Stations
from linter.review.assess import FINDING, assess
from linter.review.parts.drawing import Judged
from linter.review.spread.dimensions import assemblies
from linter.review.spread.shares import ABOUT_THE_DRAWING
from linter.rulebook.model import Rulebook

#: Interference that is tried for the window, um: from, to, step.
TRIED = (-80.0, 80.0, 0.25)
SEATS = {"shaft": ("shaft_seat_diameter", "ring_bore", "bore_diameter"),
         "housing": ("housing_seat_diameter", "ring_outside", "outside_diameter")}  # fmt: skip


@frozen
class Window:
    """Interference [um] at which no clause of the fit is at the gate; both NaN where there is none."""

    low: float
    high: float

    @property
    def empty(self) -> bool:
        """Whether no interference suits."""
        return not self.low <= self.high


@frozen
class Set:
    """Parts that go together, by their names; an empty name for a kind that is not matched."""

    shaft: str
    bearing: str
    housing: str
    shaft_interference: float | None
    housing_interference: float | None


@frozen
class Matching:
    """The sets of one position.

    ``most`` is the largest number of sets there can be (the smallest count of parts bounds it as well); ``left`` the
    parts that find no place, by kind.
    """

    machine: str
    station: str
    windows: dict[str, Window]
    sets: tuple[Set, ...]
    most: int
    left: dict[str, tuple[str, ...]]
    note: str = ""


def window(machine: Stations, row: int, side: str, rulebook: Rulebook, gate: str = "major") -> Window:
    """The interference of one seat at which the rulebook finds nothing at the gate, all else as drawn.

    Parameters
    ----------
    machine : Stations
        The rows of one machine.
    row : int
        The position.
    side : {"shaft", "housing"}
        Which seat.
    rulebook : Rulebook
        What judges it.
    gate : str
        Lowest severity that does not suit.

    Returns
    -------
    Window
        The longest run of values without a gap. What closes the gate at every value is left out of account: it has
        another cause than the fit.
    """
    seat, ring, diameter = SEATS[side]
    tried = np.arange(TRIED[0], TRIED[1] + TRIED[2] / 2, TRIED[2])
    copies = assemblies(machine, (), np.zeros((0, len(tried))))
    at = np.arange(row, len(copies), len(machine))
    size = copies.toleranced.get(seat)
    if size is None:
        absent = np.full(len(copies), np.nan)
        size = Toleranced(absent.copy(), absent.copy(), absent.copy(), np.full(len(copies), "", dtype=object))
        copies.toleranced[seat] = size
    nominal = float(machine.number(diameter)[row])
    deviation = tried if side == "shaft" else -tried
    size.nominal[at] = nominal
    size.lower[at] = size.upper[at] = deviation / 1000.0
    band = np.full(len(copies), np.nan)
    band[at] = 0.0
    copies.measured[ring] = (band, band)
    bad = np.zeros(len(tried), dtype=bool)
    worst = SEVERITIES.index(gate)
    for review in assess(copies, rulebook, keep="verdicts").reviews.values():
        if review.clause.id.startswith(ABOUT_THE_DRAWING) or seat not in (*review.clause.needs, *review.clause.uses):
            continue
        found = (review.outcome == FINDING) & (review.severity <= worst)
        per_trial = found if review.clause.level == "machine" else found[row :: len(machine)]
        if not per_trial.all():
            bad |= per_trial
    return _longest(tried, ~bad)


def _longest(tried: Floats, good: NDArray[np.bool_]) -> Window:
    edges = np.flatnonzero(np.diff(np.concatenate([[False], good, [False]]).astype(np.int8)))
    starts, ends = edges[::2], edges[1::2] - 1
    if not len(starts):
        return Window(float("nan"), float("nan"))
    best = int(np.argmax(tried[ends] - tried[starts]))
    return Window(float(tried[starts[best]]), float(tried[ends[best]]))


def match(
    shafts: Floats | None, bores: Floats, outsides: Floats, housings: Floats | None, of_shaft: Window,
    of_housing: Window,
) -> tuple[NDArray[np.intp], NDArray[np.intp], NDArray[np.intp]]:  # fmt: skip
    """As many sets as there can be, each fit inside its window, and near its middle where there is a choice.

    Parameters
    ----------
    shafts, housings : float array or None
        Deviations of the seats from the nominal diameter of the bearing [um]; None where that side is not matched.
    bores, outsides : float array, shape (bearings,)
        Deviations of the rings [um].
    of_shaft, of_housing : Window
        Interference [um] that each fit may have.

    Returns
    -------
    bearing, shaft, housing : int array, shape (sets,)
        Indices; -1 for a side that is not matched.

    Notes
    -----
    The largest number is a maximum flow from shafts through bearings to housings, each used once; the bearings it uses
    are then given their seats by two assignment problems (scipy.sparse.csgraph and scipy.optimize).
    """
    inner = None if shafts is None else _allowed(shafts[:, None] - bores[None, :], of_shaft)
    outer = None if housings is None else _allowed(outsides[None, :] - housings[:, None], of_housing)
    used = _bearings(inner, outer, len(bores))
    none = np.full(len(used), -1, dtype=np.intp)
    shaft, housing = none, none
    if shafts is not None and inner is not None:
        shaft = _assign(shafts[:, None] - bores[None, used], inner[:, used], of_shaft)
    if housings is not None and outer is not None:
        housing = _assign(outsides[None, used] - housings[:, None], outer[:, used], of_housing)
    return used, shaft, housing


def _allowed(interference: Floats, of_fit: Window) -> NDArray[np.bool_]:
    tiny = 1e-6
    return np.asarray((interference >= of_fit.low - tiny) & (interference <= of_fit.high + tiny))


def _bearings(inner: NDArray[np.bool_] | None, outer: NDArray[np.bool_] | None, bearings: int) -> NDArray[np.intp]:
    """Bearings of a largest number of sets."""
    from scipy.sparse import csr_array
    from scipy.sparse.csgraph import maximum_flow

    shafts = bearings if inner is None else inner.shape[0]
    housings = bearings if outer is None else outer.shape[0]
    on_shaft = np.eye(bearings, dtype=bool) if inner is None else inner
    in_housing = np.eye(bearings, dtype=bool) if outer is None else outer
    # source, shafts, bearings as they come, bearings as they go, housings, sink
    first, come, go = 1, 1 + shafts, 1 + shafts + bearings
    last = go + bearings
    sink = last + housings
    s, b = np.nonzero(on_shaft)
    h, g = np.nonzero(in_housing)
    tails = np.concatenate(
        [np.zeros(shafts, dtype=int), first + s, come + np.arange(bearings), go + g, last + np.arange(housings)]
    )
    heads = np.concatenate(
        [first + np.arange(shafts), come + b, go + np.arange(bearings), last + h, np.full(housings, sink)]
    )
    graph = csr_array((np.ones(len(tails), dtype=np.int32), (tails, heads)), shape=(sink + 1, sink + 1))
    flow = maximum_flow(graph, 0, sink).flow
    through = np.asarray(flow[come + np.arange(bearings), go + np.arange(bearings)]).ravel()
    return np.flatnonzero(through > 0)


def _assign(interference: Floats, allowed: NDArray[np.bool_], of_fit: Window) -> NDArray[np.intp]:
    """A seat for each bearing, all allowed, with the least sum of distances from the middle of the window."""
    from scipy.optimize import linear_sum_assignment

    middle = 0.5 * (of_fit.low + of_fit.high)
    far = np.abs(interference - middle)
    cost = np.where(allowed, far, 1e3 * (1.0 + far[allowed].max(initial=1.0)) * len(far))
    seats, bearings = linear_sum_assignment(cost)
    found = np.full(interference.shape[1], -1, dtype=np.intp)
    found[bearings] = seats
    return found


def matched(design: Stations, judged: Sequence[Judged], rulebook: Rulebook, gate: str = "major") -> list[Matching]:
    """The matching of every position of which several parts of two kinds were measured.

    Parameters
    ----------
    design : Stations
        The table as read.
    judged : sequence of Judged
        Every measured value with its place in the design.
    rulebook, gate
        What judges the fits.

    Returns
    -------
    list of Matching
        In the order of the table; a bearing that one position takes is not offered to the next.
    """
    found = []
    taken: set[str] = set()
    for index, name in enumerate(design.machines):
        machine = design.take(np.flatnonzero(design.machine_row == index))
        for row, station in enumerate(str(text) for text in machine.text("station")):
            here = [j for j in judged if j.machine == name and j.station == station]
            one = _of_position(machine, row, name, station, here, taken, rulebook, gate)
            if one is not None:
                found.append(one)
                taken |= {entry.bearing for entry in one.sets}
    return found


def _deviations(here: Sequence[Judged], name: str, nominal: float) -> dict[str, float]:
    return {j.measured.part: 1000.0 * (j.measured.value - nominal) for j in here if j.measured.parameter == name}


def _of_position(
    machine: Stations, row: int, name: str, station: str, here: Sequence[Judged], taken: set[str], rulebook: Rulebook,
    gate: str,
) -> Matching | None:  # fmt: skip
    values, bearings = _measured(machine, row, here, taken)
    sides = [side for side, (_, ring, _) in SEATS.items() if values[side] and values[ring]]
    if not sides or max(len(bearings), *(len(values[side]) for side in sides)) < 2:
        return None
    windows = {side: window(machine, row, side, rulebook, gate) for side in sides}
    left = {side: tuple(values[side]) for side in sides} | {"bearing": tuple(bearings)}
    if empty := [side for side in sides if windows[side].empty]:
        note = f"no interference of the {' and the '.join(empty)} seat suits the rulebook: nothing is matched"
        return Matching(name, station, windows, (), 0, left, note)

    chosen = _chosen(values, bearings, windows)
    sets = [
        _set(values, bearings[bearing], shaft, housing)
        for bearing, shaft, housing in zip(*(indices.tolist() for indices in chosen), strict=True)
    ]
    used = {
        "shaft": {s.shaft for s in sets},
        "housing": {s.housing for s in sets},
        "bearing": {s.bearing for s in sets},
    }
    left = {kind: tuple(part for part in parts if part not in used[kind]) for kind, parts in left.items()}
    return Matching(name, station, windows, tuple(sets), len(sets), left)


def _measured(
    machine: Stations, row: int, here: Sequence[Judged], taken: set[str]
) -> tuple[dict[str, dict[str, float]], list[str]]:
    """Deviations of the parts of one position by seat and ring, and the bearings that are free for it."""
    values: dict[str, dict[str, float]] = {}
    for side, (seat, ring, diameter) in SEATS.items():
        nominal = float(machine.number(diameter)[row])
        values[side], values[ring] = _deviations(here, seat, nominal), _deviations(here, ring, nominal)
    rings = [values[ring] for side, (_, ring, _) in SEATS.items() if values[side] and values[ring]]
    free = [part for part in (rings[0] if rings else {}) if part not in taken and all(part in r for r in rings)]
    return values, free


def _chosen(
    values: Mapping[str, Mapping[str, float]], bearings: Sequence[str], windows: Mapping[str, Window]
) -> tuple[NDArray[np.intp], NDArray[np.intp], NDArray[np.intp]]:
    seats = {side: np.array(list(values[side].values())) if side in windows else None for side in SEATS}
    rings = {ring: np.array([values[ring].get(part, np.nan) for part in bearings]) for _, ring, _ in SEATS.values()}
    free = Window(-np.inf, np.inf)
    return match(
        seats["shaft"], rings["ring_bore"], rings["ring_outside"], seats["housing"], windows.get("shaft", free),
        windows.get("housing", free),
    )  # fmt: skip


def _set(values: Mapping[str, Mapping[str, float]], bearing: str, shaft: int, housing: int) -> Set:
    """One set with the interference of its fits."""
    names, fits = [], []
    for side, index, sign in (("shaft", shaft, 1.0), ("housing", housing, -1.0)):
        name = list(values[side])[index] if index >= 0 else ""
        names.append(name)
        fits.append(sign * (values[side][name] - values[SEATS[side][1]][bearing]) if name else None)
    return Set(names[0], bearing, names[1], fits[0], fits[1])
