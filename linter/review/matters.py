"""What matters most: how far one step of each parameter moves the nearest limit of a machine.

Every parameter that the table states is moved one step of its kind up and down, at all positions that state it, and all
copies of a machine are judged by the whole rulebook at once. The margin of a clause is the distance from what was
observed to its limit, as a share of the limit (of the band between two limits); below zero it is a finding.
"""

from collections.abc import Sequence
from string import ascii_letters
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.model.columns import Floats
from linter.model.findings import TABLE_CHAPTER
from linter.model.matters import Matter, Matters, NearLimit
from linter.model.stations import Stations
from linter.model.vocabulary import Parameter, vocabulary
from linter.model.wording import quantity_text, rounded
from linter.review.assess import FIGURES, FINDING, Assessed, assess
from linter.review.plan.trials import put, replicate, value_at
from linter.review.room.domains import classes_of, states
from linter.review.room.judged import anew
from linter.rulebook.gates import must_rows
from linter.rulebook.model import Rulebook

#: What comes with the bearing as it is bought: no step of its own.
BOUGHT = frozenset(
    (
        "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "ball_count", "ball_diameter",
        "pitch_diameter", "inner_groove_ratio", "outer_groove_ratio", "inner_ring_shoulder_diameter",
        "outer_ring_shoulder_diameter", "blade_count",
    )
)  # fmt: skip
#: Words that follow one another, or stand for one another, so that the neighbour is a step.
ORDERED = ("tolerance_class", "clearance_class", "ball_material")
#: Steps by unit where a tolerance or a class gives none; a length below ``SMALL`` moves by 1 um.
KELVIN, MICROMETRE, SHARE, SMALL = 10.0, 0.001, 0.1, 0.05
#: Margins nearer than this are the same.
SAME = 1e-3


@frozen
class _Trial:
    """One parameter moved one step one way: the rows of the machine and what stands there then."""

    parameter: str
    text: str
    up: bool
    values: tuple[tuple[int, Any], ...]


def what_matters(stations: Stations, rulebook: Rulebook, gate: str = "major") -> tuple[Matters, ...]:
    """What matters most of each machine, by name; see :func:`of_machine`. Machines without a limit are left out."""
    found = [of_machine(stations, k, rulebook, gate) for k in range(len(stations.machines))]
    return tuple(sorted((matters for matters in found if matters is not None), key=lambda matters: matters.machine))


def of_machine(stations: Stations, machine: int, rulebook: Rulebook, gate: str = "major") -> Matters | None:
    """The parameters of one machine ranked by how far a step of theirs moves its nearest limit.

    Parameters
    ----------
    stations : Stations
        The table, with the defaults of the rulebook.
    machine : int
        Index of the machine.
    rulebook : Rulebook
        All of its clauses are run; those that must be judged or have a finding count, those about the table do not.
    gate : str
        Lowest severity that closes the gate.

    Returns
    -------
    Matters or None
        None where no clause has a figure and a limit. Parameters that move no margin are left out.
    """
    block = np.flatnonzero(stations.machine_row == machine)
    trials = _trials(stations, block)
    copies = replicate(stations, [block] * (1 + len(trials)))
    for k, trial in enumerate(trials, 1):
        for row, value in trial.values:
            put(copies, trial.parameter, k * len(block) + row, value)
    copies = anew(copies, rulebook, {trial.parameter for trial in trials})
    found = _Margins(assess(copies, rulebook, keep="figures"), len(block), gate)
    if not len(found.keys):
        return None
    by_parameter: dict[str, list[int]] = {}
    for k, trial in enumerate(trials, 1):
        by_parameter.setdefault(trial.parameter, []).append(k)
    told = [found.matter([(k, trials[k - 1]) for k in ks]) for ks in by_parameter.values()]
    matters = [matter for matter in told if matter is not None]
    matters.sort(key=lambda m: (-round(abs(m.moves), 6), round(m.worst, 6)))
    return Matters(stations.machines[machine], found.limit(int(np.argmin(found.now))), tuple(matters))


class _Margins:
    """Margins of the limits that count, of the machine as it is and of each trial."""

    def __init__(self, assessed: Assessed, size: int, gate: str) -> None:
        names = [str(name) for name in assessed.stations.text("station")[:size]]
        self.keys: list[tuple[str, str, str | None, str]] = []
        self.figures: list[tuple[float, float, float]] = []
        columns = []
        for review in assessed.reviews.values():
            clause = review.clause
            if clause.chapter == TABLE_CHAPTER or not {"lower", "upper"} & review.figures.keys():
                continue
            whole = clause.level == "machine"
            shape = (-1, 1 if whole else size)
            absent = np.full(len(review.outcome), np.nan)
            seen, low, high = (review.figures.get(name, absent).reshape(shape) for name in FIGURES)
            margin = margins(seen, low, high)
            counts = must_rows(clause, assessed.view, gate).reshape(shape)[0] | (
                review.outcome.reshape(shape)[0] == FINDING
            )
            for row in np.flatnonzero(counts & ~np.isnan(margin[0])):
                columns.append(margin[:, row])
                self.keys.append((clause.id, clause.title, None if whole else names[row], review.unit))
                self.figures.append((float(seen[0, row]), float(low[0, row]), float(high[0, row])))
        every = np.array(columns, dtype=float).reshape(len(columns), -1).T
        self.then: Floats = every
        self.now: Floats = every[0] if len(columns) else np.zeros(0)

    def limit(self, key: int) -> NearLimit:
        """One limit as it stands now."""
        clause, title, station, unit = self.keys[key]
        seen, low, high = self.figures[key]
        lower, upper = (None if np.isnan(end) else rounded(end) for end in (low, high))
        margin = rounded(float(self.now[key]))
        return NearLimit(clause, title, station, margin, rounded(seen), lower, upper, unit)

    def matter(self, steps: Sequence[tuple[int, _Trial]]) -> Matter | None:
        """What the steps of one parameter do; None where they move nothing that is judged before and after."""
        then = self.then[[k for k, _ in steps]]
        moved = np.abs(then - self.now) > SAME
        if not moved.any():
            return None
        key = int(np.unravel_index(np.argmin(np.where(moved, then, np.inf)), then.shape)[1])
        changes = np.nanmin(then, axis=1) - self.now.min()
        after: list[float | None] = [None, None]
        for (_, trial), margin in zip(steps, then[:, key], strict=True):
            after[trial.up] = None if np.isnan(margin) else rounded(float(margin))
        moves = float(changes[np.argmax(np.abs(changes))])
        moves = moves if abs(moves) > SAME else 0.0
        first = steps[0][1]
        return Matter(first.parameter, first.text, rounded(moves), self.limit(key), *after)


def margins(observed: Floats, lower: Floats, upper: Floats) -> Floats:
    """Distance from an observed value to the nearer of its limits, as a share of the limit or of the band between two.

    Parameters
    ----------
    observed, lower, upper : float array
        Of one shape; NaN where there is none.

    Returns
    -------
    float array
        Negative beyond a limit; NaN where there is no limit, or none that is not 0.
    """
    band = upper - lower
    both = band > 0.0
    scales = [np.where(both, band, np.abs(end)) for end in (lower, upper)]
    below, above = (np.where(scale > 0.0, scale, np.nan) for scale in scales)
    return np.fmin((observed - lower) / below, (upper - observed) / above)


def _trials(stations: Stations, block: NDArray[np.intp]) -> list[_Trial]:
    """Every step of every parameter that the machine states."""
    found = []
    for entry in vocabulary().values():
        if entry.kind == "text" or entry.name in BOUGHT or (entry.kind == "choice" and entry.name not in ORDERED):
            continue
        stated = [row for row in range(len(block)) if states(stations, entry.name, int(block[row]))]
        if not stated:
            continue
        steps = [_step(stations, entry, int(block[row])) for row in stated]
        text = "; ".join(dict.fromkeys(step[0] for step in steps))
        for up in (False, True):
            values = tuple(
                (row, step[1][up]) for row, step in zip(stated, steps, strict=True) if step[1][up] is not None
            )
            if values:
                found.append(_Trial(entry.name, text, up, values))
    return found


def _step(stations: Stations, entry: Parameter, row: int) -> tuple[str, tuple[Any, Any]]:
    """One step of a stated value in words, and the values a step down and a step up of it, None for one that is not."""
    value = value_at(stations, entry.name, row)
    if entry.kind == "choice":
        return _word_step(entry, value)
    if entry.kind == "number":
        text, width = _width(entry, value)
        return text, (_possible(entry, value - width), _possible(entry, value + width))
    nominal, lower, upper, word = value
    if word and entry.change == "class":
        return _class_step(stations, entry.name, row, word)
    tolerance = upper - lower
    if entry.unit in ("mm", "um") and tolerance > 0.0:
        text, width = f"{quantity_text(rounded(tolerance), entry.unit)} (its tolerance)", tolerance
    else:
        text, width = _width(entry, nominal)
    if entry.change == "class":  # the zone moves, the size of the bearing stays
        return text, ((nominal, lower - width, upper - width, ""), (nominal, lower + width, upper + width, ""))
    ends = [_possible(entry, nominal - width), _possible(entry, nominal + width)]
    down, up = (None if end is None else (end, lower, upper, "") for end in ends)
    return text, (down, up)


def _width(entry: Parameter, value: float) -> tuple[str, float]:
    """How far a number moves, in words and in its unit."""
    if entry.unit == "degC":
        return f"{KELVIN:.0f} K", KELVIN
    if entry.unit == "mm" and abs(value) < SMALL:
        return quantity_text(1000.0 * MICROMETRE, "um"), MICROMETRE
    return f"{100.0 * SHARE:.0f} %", SHARE * abs(value)


def _possible(entry: Parameter, value: float) -> float | None:
    inside = entry.least <= value < entry.most and (value > 0.0 or entry.sign != "positive")
    return value if inside else None


def _word_step(entry: Parameter, code: int) -> tuple[str, tuple[int | None, int | None]]:
    ends = [k if 0 <= k < len(entry.choices) else None for k in (code - 1, code + 1)]
    words = [entry.choices[k] for k in ends if k is not None]
    return f"{entry.choices[code]} to {' or '.join(words)}", (ends[0], ends[1])


def _class_step(stations: Stations, name: str, row: int, word: str) -> tuple[str, tuple[Any, Any]]:
    """The neighbouring classes of the same grade."""
    ladder = {w: v for w, v in classes_of(stations, name, row).items() if _grade(w) == _grade(word)}
    words = list(ladder)
    if word not in words:
        return word, (None, None)
    at = words.index(word)
    ends = [words[k] if 0 <= k < len(words) else None for k in (at - 1, at + 1)]
    down, up = (None if w is None else ladder[w] for w in ends)
    return f"{word} to {' or '.join(w for w in ends if w is not None)}", (down, up)


def _grade(word: str) -> str:
    return word.lstrip(ascii_letters)
