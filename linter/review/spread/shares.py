"""Runs the rulebook over random assemblies of one machine and counts what lies beyond each limit."""

import zlib
from collections.abc import Sequence
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.model.columns import Floats
from linter.model.findings import SEVERITIES
from linter.model.stations import Stations
from linter.review.assess import FINDING, NOT_ASSESSED, Assessed, assess
from linter.review.spread.dimensions import Dimension, Shape, assemblies, dimensions, draw
from linter.review.spread.sobol import indices
from linter.rulebook.model import Rulebook

#: Two-sided confidence of the intervals of shares.
CONFIDENCE = 0.99
#: Draws of each of the two base samples of the sensitivity, and of each trial of another tolerance.
SENSITIVITY_DRAWS, TRIAL_DRAWS = 1024, 4000
#: Clauses about what the drawing states, which a part has no part in: they are judged on the table alone.
ABOUT_THE_DRAWING = (
    "table.", "fit.shaft-class", "fit.housing-class", "fit.grade", "alignment.stated", "alignment.form-within-size",
    "alignment.process", "shoulder.stated",
)  # fmt: skip
#: What varies less than this, relative to its size, does not depend on the drawn dimensions.
LEAST_VARIATION = 1e-9
BINS = 40
QUANTILES = (0.00135, 0.5, 0.99865)


@frozen
class Settings:
    """How to draw.

    Attributes
    ----------
    draws : int
        Random assemblies of each machine, 100 to 1 000 000.
    seed : int
        Where the random numbers begin, 0 to 2**32 - 1.
    shape, cp, samples
        As in :func:`linter.review.spread.dimensions.draw`.
    gate : str
        Lowest severity that counts as beyond a limit.
    """

    draws: int = 20_000
    seed: int = 1
    shape: Shape = "normal"
    cp: float = 4.0 / 3.0
    samples: dict[str, Floats] = field(factory=dict)
    gate: str = "major"


@frozen
class Share:
    """A share of the draws with its interval of confidence (Clopper and Pearson, exact)."""

    beyond: int
    draws: int
    low: float
    high: float

    @property
    def value(self) -> float:
        """The share itself."""
        return self.beyond / self.draws


@frozen
class Line:
    """One clause at one position over all draws.

    Attributes
    ----------
    clause, title, station, unit : str
        What is looked at; ``station`` is empty for a clause about the machine.
    reviewed : str
        What ``review`` says of the tolerances as they stand: a severity, ``met``, ``not assessed`` or ``not
        applicable``. Some clauses take the probable limits of a fit there, so that a rare draw may lie beyond one that
        is met.
    share : Share
        Draws whose finding is as grave as the gate or graver.
    not_judged : int
        Draws that the clause could not judge.
    quantiles : tuple of float
        The observed value at 0.135, 50 and 99.865 percent of the draws.
    lower, upper : float or None
        The limits, the middle of the draws' own.
    counts : tuple of int
        Histogram of the observed value.
    edges : tuple of float
        First and last edge of it.
    influence : tuple of (str, float, float)
        Dimensions by their total Sobol index on the observed value, the largest first: key, first, total.
    """

    clause: str
    title: str
    station: str
    unit: str
    reviewed: str
    share: Share
    not_judged: int
    quantiles: tuple[float, float, float]
    lower: float | None
    upper: float | None
    counts: tuple[int, ...]
    edges: tuple[float, float]
    influence: tuple[tuple[str, float, float], ...] = ()


@frozen
class Lever:
    """What another tolerance of one dimension would do, by draws of its own.

    ``half`` and ``double`` are the shares of assemblies beyond any limit with half and twice the tolerance; ``now`` the
    share with the same random numbers and the stated one.
    """

    dimension: Dimension
    now: float
    half: float
    double: float


@frozen
class Spread:
    """What the draws of one machine say."""

    machine: str
    stations: tuple[str, ...]
    dimensions: tuple[Dimension, ...]
    lines: tuple[Line, ...]
    any_limit: Share
    levers: tuple[Lever, ...]
    notes: tuple[str, ...] = ()

    @property
    def tighten(self) -> tuple[Lever, ...]:
        """Up to three dimensions whose half tolerance lowers the share most; none that lowers nothing."""
        helps = [lever for lever in self.levers if lever.half < lever.now]
        return tuple(sorted(helps, key=lambda lever: (lever.half, lever.dimension.key))[:3])

    @property
    def relax(self) -> tuple[Lever, ...]:
        """Up to three dimensions that may have twice their tolerance and raise the share least."""
        stated = [lever for lever in self.levers if lever.dimension.source == "stated"]
        free = [lever for lever in stated if lever.double <= lever.now + 1e-3]
        return tuple(sorted(free, key=lambda lever: (lever.double, lever.dimension.key))[:3])


def share_of(beyond: int, draws: int, confidence: float = CONFIDENCE) -> Share:
    """A share with its two-sided exact interval (Clopper and Pearson, Biometrika 26 (1934) 404-413)."""
    from scipy.special import betaincinv

    tail = 0.5 * (1.0 - confidence)
    low = float(betaincinv(beyond, draws - beyond + 1, tail)) if beyond else 0.0
    high = float(betaincinv(beyond + 1, draws - beyond, 1.0 - tail)) if beyond < draws else 1.0
    return Share(beyond, draws, low, high)


def spread(stations: Stations, rulebook: Rulebook, settings: Settings) -> list[Spread]:
    """Every machine of a table.

    Parameters
    ----------
    stations : Stations
        As reviewed, with the rulebook's defaults.
    rulebook : Rulebook
        What judges the assemblies.
    settings : Settings
        How to draw; the same settings give the same result.

    Returns
    -------
    list of Spread
        In the order of the machines. A machine without a tolerance has no lines and says so.
    """
    return [
        _of_machine(stations.take(np.flatnonzero(stations.machine_row == index)), rulebook, settings)
        for index in range(len(stations.machines))
    ]


def _of_machine(machine: Stations, rulebook: Rulebook, settings: Settings) -> Spread:
    dims = dimensions(machine)
    names = tuple(str(name) for name in machine.text("station"))
    if not dims:
        note = "no dimension has a tolerance and no class gives one: there is nothing to draw"
        return Spread(machine.machines[0], names, (), (), share_of(0, settings.draws), (), (note,))
    rng = np.random.default_rng([settings.seed, zlib.crc32(machine.machines[0].encode("utf-8", "surrogatepass"))])
    run = _Run(machine, rulebook, dims, settings)
    worst = assess(machine, rulebook, keep="figures")
    assessed = run.assess(draw(dims, settings.draws, rng, settings.shape, settings.cp, settings.samples))
    keys = run.varying(assessed)
    influence = run.influence(keys, rng)
    lines = [run.line(key, assessed, worst, influence.get(key, ())) for key in keys]
    lines = [line for line in lines if line.lower is not None or line.upper is not None or line.share.beyond]
    beyond = run.beyond(assessed, keys)
    levers = run.levers(keys, rng) if 0 < beyond.sum() < len(beyond) else ()
    return Spread(
        machine.machines[0], names, tuple(dims), tuple(lines), share_of(int(beyond.sum()), settings.draws), levers,
        run.notes(settings),
    )  # fmt: skip


Key = tuple[str, int | None]


@frozen(eq=False)
class _Run:
    machine: Stations
    rulebook: Rulebook
    dims: list[Dimension]
    settings: Settings

    def assess(self, deviations: Floats) -> Assessed:
        return assess(assemblies(self.machine, self.dims, deviations), self.rulebook, keep="figures")

    def _of(self, values: NDArray[Any], key: Key) -> NDArray[Any]:
        """A column of one clause at one position, shape (draws,)."""
        return values if key[1] is None else values[key[1] :: len(self.machine)]

    def varying(self, assessed: Assessed) -> list[Key]:
        """Clauses and positions that depend on the drawn dimensions, in the order of the rulebook."""
        keys: list[Key] = []
        for name, review in assessed.reviews.items():
            if name.startswith(ABOUT_THE_DRAWING) or "observed" not in review.figures:
                continue
            whole = review.clause.level == "machine"
            for row in [None] if whole else range(len(self.machine)):
                values = self._of(review.figures["observed"], (name, row))
                known = values[np.isfinite(values)]
                found = self._of(review.outcome, (name, row)) == FINDING
                if len(known) and (np.ptp(known) > LEAST_VARIATION * np.abs(known).max() or found.any() != found.all()):
                    keys.append((name, row))
        return keys

    def beyond(self, assessed: Assessed, keys: Sequence[Key]) -> NDArray[np.bool_]:
        """Draws with a finding at the gate or graver among the clauses that vary, shape (draws,)."""
        found = [self._beyond(assessed, key) for key in keys]
        return np.any(found, axis=0) if found else np.zeros(len(assessed.stations.machines), dtype=bool)

    def _beyond(self, assessed: Assessed, key: Key) -> NDArray[np.bool_]:
        review = assessed.reviews[key[0]]
        grave = (review.outcome == FINDING) & (review.severity <= SEVERITIES.index(self.settings.gate))
        return self._of(grave, key)

    def influence(
        self, keys: Sequence[Key], rng: np.random.Generator
    ) -> dict[Key, tuple[tuple[str, float, float], ...]]:
        """Sobol indices of every dimension on every varying observed value."""
        s = self.settings
        first, second = (draw(self.dims, SENSITIVITY_DRAWS, rng, s.shape, s.cp, s.samples) for _ in range(2))
        mixed = []
        for k in range(len(self.dims)):
            one = first.copy()
            one[k] = second[k]
            mixed.append(one)
        assessed = self.assess(np.concatenate([first, second, *mixed], axis=1))
        found = {}
        for key in keys:
            values = self._of(assessed.reviews[key[0]].figures["observed"], key).reshape(-1, SENSITIVITY_DRAWS)
            whole = np.isfinite(values).all(axis=0)  # a draw that one of the runs cannot judge is left out of all
            if whole.sum() < SENSITIVITY_DRAWS // 2:
                continue
            base, other, *rest = values[:, whole]
            ones, totals = indices(base, other, np.array(rest))
            if np.isnan(totals).any():
                continue
            order = sorted(range(len(self.dims)), key=lambda k: (-totals[k], k))
            found[key] = tuple(
                (self.dims[k].key, float(ones[k]), float(totals[k])) for k in order[:5] if totals[k] > 0.005
            )
        return found

    def levers(self, keys: Sequence[Key], rng: np.random.Generator) -> tuple[Lever, ...]:
        """Shares with half and with double the tolerance of each dimension in turn, by the same random numbers."""
        s = self.settings
        stated = draw(self.dims, TRIAL_DRAWS, rng, s.shape, s.cp, s.samples)
        trials = [stated]
        for k, dim in enumerate(self.dims):
            middle = 0.5 * (dim.lower + dim.upper)
            for factor in (0.5, 2.0):
                other = stated.copy()
                other[k] = middle + factor * (stated[k] - middle)
                trials.append(other)
        shares = [float(self.beyond(self.assess(trial), keys).mean()) for trial in trials]
        return tuple(
            Lever(dim, shares[0], shares[1 + 2 * k], shares[2 + 2 * k]) for k, dim in enumerate(self.dims)
        )  # fmt: skip

    def line(
        self, key: Key, assessed: Assessed, worst: Assessed, influence: tuple[tuple[str, float, float], ...]
    ) -> Line:
        """One clause at one position in figures."""
        review, before = assessed.reviews[key[0]], worst.reviews[key[0]]
        at = 0 if key[1] is None else key[1]
        values = self._of(review.figures["observed"], key)
        known = values[np.isfinite(values)]
        low, mid, high = (float(v) for v in np.quantile(known, QUANTILES))
        limits = []
        for name in ("lower", "upper"):
            column = self._of(review.figures[name], key) if name in review.figures else np.zeros(0)
            finite = column[np.isfinite(column)]
            limits.append(float(np.median(finite)) if len(finite) else None)
        counts, edges = np.histogram(known, bins=BINS)
        words = ("met", "finding", "not assessed", "not applicable")
        outcome = words[int(before.outcome[at])]
        return Line(
            clause=key[0],
            title=review.clause.title,
            station="" if key[1] is None else str(self.machine.text("station")[key[1]]),
            unit=review.unit,
            reviewed=SEVERITIES[int(before.severity[at])] if outcome == "finding" else outcome,
            share=share_of(int(self._beyond(assessed, key).sum()), self.settings.draws),
            not_judged=int((self._of(review.outcome, key) == NOT_ASSESSED).sum()),
            quantiles=(low, mid, high),
            lower=limits[0],
            upper=limits[1],
            counts=tuple(int(c) for c in counts),
            edges=(float(edges[0]), float(edges[-1])),
            influence=influence,
        )

    def notes(self, settings: Settings) -> tuple[str, ...]:
        """What a reader has to know of the draws."""
        keys = {dim.key for dim in self.dims}
        return tuple(
            f"measured values of {key}: no dimension of this machine has that name and a tolerance; not used"
            for key in sorted(settings.samples)
            if key not in keys
        )
