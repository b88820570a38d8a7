"""Shares outside, decision rule and sensitivities against print and closed forms.

Not compared, for want of a function: C_pk and its lower bound of confidence (Bissell 1990), quantile indices of ISO
22514-2 for a run-out, quantiles of the normal distribution. Where only a sampled answer exists, the interval of
confidence of the sample has to hold the given figure.
"""

import numpy as np
import pytest
from scipy.stats import qmc

from linter.mechanics.normal import normal_cdf
from linter.mechanics.tolerance_chain import chain, normal_share_outside, root_sum_square
from linter.model.stations import stations_from_rows
from linter.review.parts.conformity import CONFORMS, DOES_NOT_CONFORM, NOT_PROVEN, conformity
from linter.review.spread.dimensions import Dimension, dimensions, draw
from linter.review.spread.shares import share_of
from linter.review.spread.sobol import indices


class Even:
    """Stands in for a random generator, exactly: two-point normal values, even values in every pairing of two."""

    def __init__(self, count):
        self.count, self.calls = count, 0

    def normal(self, mean, sigma, size):
        return mean + sigma * np.where(np.arange(size) % 2, 1.0, -1.0)

    def uniform(self, low, high, size):
        values = low + (high - low) * (np.arange(self.count) + 0.5) / self.count
        self.calls += 1
        return np.repeat(values, self.count) if self.calls == 1 else np.tile(values, self.count)


def of_sigma(sign, mean, sigma):
    """Chain of normal members: three standard deviations are half a tolerance."""
    half = 3.0 * np.asarray(sigma)
    return chain(sign, mean, -half, half)


@pytest.mark.parametrize("guard", ["guard_2017", "guard_2013"])
def test_decision_about_a_seat_10k5(case, guard):
    """ISO 14253-1, from memory. The guard band is given, as U; 1.645 u of 2017 and 2 u of 2013 decide alike here.

    The probability of conformity has no function of its own; it is formed here from the normal distribution's.
    """
    c = case("A17-SEAT-10K5")
    low, high, u = c["lower"], c["upper"], c["u"]
    value = np.array(c["measured"])
    word = {CONFORMS: 1, NOT_PROVEN: 0, DOES_NOT_CONFORM: -1}
    verdicts = [word[int(v)] for v in conformity(value, low, high, c.printed(guard))]
    inside = normal_cdf((high - value) / u) - normal_cdf((low - value) / u)
    c.agree(
        ("guard_2017", "guard_2013", "accept_low", "accept_high"),
        **{f"p_conform_{i + 1}": p for i, p in enumerate(inside)},
        **{f"verdict_{i + 1}": v for i, v in enumerate(verdicts)},
    )
    if guard == "guard_2017":
        edge, inwards = np.array([c.printed("accept_low"), c.printed("accept_high")]), np.array([1e-6, -1e-6])
        assert conformity(edge + inwards, low, high, c.printed(guard)).tolist() == [CONFORMS] * 2
        assert conformity(edge - inwards, low, high, c.printed(guard)).tolist() == [NOT_PROVEN] * 2


def test_capability_of_a_rod(case):
    """C_p of the exercise is what its spread is drawn with. C_pk has no function."""
    c = case("A17-CPK-ROD")
    middle = 0.5 * (c["LSL"] + c["USL"])
    rod = Dimension("rod", None, "", middle, c["LSL"] - middle, c["USL"] - middle, "in", "stated")
    sigma = draw([rod], 2, Even(2), "normal", 1.0)[0].std()
    c.agree(("Cpk",), Cp=sigma / c["s"])
    assert draw([rod], 2, Even(2), "normal", c.printed("Cp"))[0].std() == pytest.approx(c["s"], rel=5e-4)


def test_printed_share_of_bearings_outside(case):
    """Exercise on bearing diameters, printed answer 0.1600."""
    c = case("A17-FRACTION-BEARING")
    c.agree(outside=normal_share_outside(of_sigma(1, c["mean"], c["s"]), c["LSL"], c["USL"]))


def test_clearance_of_a_shaft_in_its_bearing(case):
    """Montgomery, Introduction to Statistical Quality Control, from memory."""
    c = case("A17-CLEARANCE-SHAFT")
    play = of_sigma([1, -1], [c["bearing_mean"], c["shaft_mean"]], [c["bearing_s"], c["shaft_s"]])
    c.agree(
        ("clearance_1_in_100",),
        s_clearance=root_sum_square(play)[1] / 3.0,
        p_interference=normal_share_outside(play, 0.0, np.inf),
    )
    assert normal_share_outside(play, c.printed("clearance_1_in_100"), np.inf) == pytest.approx(0.01, rel=1e-4)


def test_interference_of_a_seat_8k5_in_a_ring_of_class_5(case):
    """Trapezoid of two even tolerances, and two normal ones that six standard deviations fill."""
    c = case("A17-FIT-8K5-P5")
    seat = [8, c["shaft_low"] / 1e3, c["shaft_high"] / 1e3]
    row = {"bearing_type": "deep groove ball", "bore_diameter": 8, "outside_diameter": 22, "tolerance_class": "P5",
           "shaft_seat_diameter": seat}  # fmt: skip
    found = {d.name: d for d in dimensions(stations_from_rows([row]))}
    both = [found["shaft_seat_diameter"], found["ring_bore"]]
    assert (both[1].lower, both[1].upper) == (c["bore_low"], c["bore_high"])

    def interference(drawn):
        return 1e3 * drawn[0] - drawn[1]

    grid = 1200
    even = interference(draw(both, grid**2, Even(grid), "rectangular"))
    normal = chain([1, -1], 0, [c["shaft_low"], c["bore_low"]], [c["shaft_high"], c["bore_high"]])
    mean, half = root_sum_square(normal)
    figures = {"mean": mean, "s_uniform": even.std(), "s_normal_6s": half / 3.0}
    for i, limit in enumerate(c["interference_limits"], start=1):
        figures[f"p_below_{i}_uniform"] = np.mean(even < limit - 1e-9) + 0.5 * np.mean(np.abs(even - limit) < 1e-9)
        figures[f"p_below_{i}_normal"] = normal_share_outside(normal, limit, np.inf)
    c.agree(**figures)
    rng = np.random.default_rng(5)
    for shape in ("rectangular", "normal"):
        drawn = interference(draw(both, 100_000, rng, shape, 1.0))
        for i, limit in enumerate(c["interference_limits"], start=1):
            share = share_of(int((drawn < limit).sum()), 100_000)
            assert share.low <= c.printed(f"p_below_{i}_{shape.replace('rectangular', 'uniform')}") <= share.high


def test_risks_of_a_decision_without_a_guard_band(case):
    """JCGM 106:2012, double integrals; sampled, since no function gives the risks."""
    c = case("A17-RISK-SIMPLE")
    low, high, count = c["lower"], c["upper"], 400_000
    rng = np.random.default_rng(3)
    part = Dimension("part", None, "", c["mean"], low - c["mean"], high - c["mean"], "um", "stated")
    true = c["mean"] + draw([part], count, rng, "normal", (high - low) / (6 * c["s"]))[0]
    accepted = conformity(true + rng.normal(0, c["u"], count), low, high, c["guard"]) == CONFORMS
    good = conformity(true, low, high) == CONFORMS
    for name, wrong in (("consumer_risk", accepted & ~good), ("producer_risk", ~accepted & good)):
        share = share_of(int(wrong.sum()), count)
        assert share.low <= c.printed(name) <= share.high


def test_indices_of_the_ishigami_function(case):
    """Ishigami and Homma, 1990; 2^14 points of a Sobol sequence, within 0.01."""
    c = case("A17-ISHIGAMI")
    points = np.pi * (2 * qmc.Sobol(6, seed=1).random(2**14).T - 1)
    one, two = points[:3], points[3:]

    def f(x):
        return np.sin(x[0]) + c["a"] * np.sin(x[1]) ** 2 + c["b"] * x[2] ** 4 * np.sin(x[0])

    mixed = [f([two[k] if k == i else one[k] for k in range(3)]) for i in range(3)]
    first, total = indices(f(one), f(two), mixed)
    assert first == pytest.approx([c.printed(f"S{k}") for k in (1, 2, 3)], abs=0.01)
    assert total == pytest.approx([c.printed(f"ST{k}") for k in (1, 2, 3)], abs=0.01)
    assert np.concatenate([f(one), f(two)]).var() == pytest.approx(c.printed("variance"), rel=0.01)


def test_indices_of_a_clearance(case):
    """Linear: (a s)^2 over the sum, first order and total alike; every pairing of two-point inputs once."""
    c = case("A17-SENS-CLEARANCE")
    a, s = np.array(c["coefficient"]), np.array(c["s"])
    corners = np.array(np.meshgrid(*[[-1, 1]] * 6)).reshape(6, -1)
    one, two = s[:, np.newaxis] * corners[:3], s[:, np.newaxis] * corners[3:]
    mixed = [a @ np.where(np.arange(3)[:, np.newaxis] == i, two, one) for i in range(3)]
    first, total = indices(a @ one, a @ two, mixed)
    names = ("S_clearance", "S_inner_fit", "S_outer_fit")
    band = root_sum_square(of_sigma(np.sign(a), 0, np.abs(a) * s))[1]
    c.agree(s_total=band / 3.0, **dict(zip(names, first, strict=True)))
    assert total == pytest.approx(first, rel=1e-12)


def test_combined_uncertainty_of_an_end_gauge(case):
    """JCGM 100:2008, Annex H.1, from memory: 32 nm, of which the four given members make 31.7."""
    c = case("A17-GUM-H1")
    c.agree(u_c=root_sum_square(of_sigma(1, 0, list(c.inputs.values())))[1] / 3.0)
