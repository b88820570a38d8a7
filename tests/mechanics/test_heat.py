"""Friction and heat by a second road: integration over time, extreme arguments, what rises with what."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from linter.mechanics import cooling, friction, heat

TIMES = st.floats(5.0, 2000.0)


@settings(derandomize=True, deadline=None, max_examples=30)
@given(st.floats(1.0, 80.0), st.floats(0.1, 3.0), st.floats(20.0, 900.0), TIMES, TIMES, st.floats(-20.0, 60.0))
def test_cycle_agrees_with_integration_over_time(power, conductance, capacity, on, off, ambient):
    found = heat.cycle(power, conductance, capacity, on, off, ambient)

    def slope(heating):
        return lambda _, t: (heating - conductance * (t - ambient)) / capacity

    peaks = []
    temperature = float(found.low)  # the cycle closes: one turn comes back to where it began
    for heating, length in ((power, on), (0.0, off)):
        run = solve_ivp(slope(heating), (0.0, length), [temperature], rtol=1e-9, atol=1e-9)
        temperature = float(run.y[0, -1])
        peaks.append(temperature)
    rise = float(found.peak) - ambient
    assert peaks[0] - ambient == pytest.approx(rise, rel=1e-3)
    assert peaks[1] == pytest.approx(float(found.low), abs=1e-3 * rise)
    assert found.low <= found.mean <= found.peak <= found.steady + 1e-9


def test_cold_start_comes_to_the_cycle_within_a_percent():
    """From the surroundings on, many cycles integrated one after the other."""
    power, conductance, capacity, on, off, ambient = 25.0, 0.6, 420.0, 120.0, 180.0, 25.0
    found = heat.cycle(power, conductance, capacity, on, off, ambient)
    temperature = ambient
    for _ in range(20):
        for heating, length in ((power, on), (0.0, off)):
            run = solve_ivp(
                lambda _, t, p=heating: (p - conductance * (t - ambient)) / capacity, (0.0, length), [temperature],
                rtol=1e-8,
            )  # fmt: skip
            temperature = float(run.y[0, -1])
            if heating:
                peak = temperature
    assert peak - ambient == pytest.approx(float(found.peak) - ambient, rel=0.01)


def test_no_pause_is_the_steady_state():
    found = heat.cycle(30.0, 0.5, 200.0, 60.0, 0.0, 20.0)
    assert found.peak == pytest.approx(found.steady) == pytest.approx(80.0)
    assert found.low == pytest.approx(found.peak)


@settings(derandomize=True, max_examples=40)
@given(st.floats(2.0, 60.0), st.floats(1.3, 3.0), st.floats(1.0, 3.0), st.floats(10.0, 1e5))
def test_reference_speed_balances_friction_and_flow(bore, ratio, f_0, rating):
    outside, width = ratio * bore, 0.4 * bore
    n = float(heat.reference_speed(bore, outside, width, rating, f_0, 1e-4))
    d_m = 0.5 * (bore + outside)
    torque = friction.lubricant_torque(f_0, 12.0, n, d_m) + friction.load_torque(1e-4, 0.05 * rating, d_m)
    area = heat.reference_area(bore, outside, width)
    if 12.0 * n >= friction.RISES_FROM:
        assert heat.friction_power(torque, n) == pytest.approx(heat.reference_flow(area) * area, rel=1e-6)


def test_permissible_speed_against_another_root_finder():
    found = heat.permissible_speed(20000.0, 18.0, 0.29, 60.0, 2.0, 15.0, 9e-5, 180.0)
    root = brentq(lambda f: found.lubricant_share * f ** (5 / 3) + found.load_share * f - 1.0, 1e-6, 10.0, xtol=1e-12)
    assert found.ratio == pytest.approx(root, rel=1e-9)


def test_at_the_reference_conditions_the_permissible_speed_is_the_reference_speed():
    n = heat.reference_speed(25.0, 52.0, 15.0, 7850.0, 2.0, 1e-4)
    seats = heat.seat_conductance(25.0, 52.0, 15.0)
    found = heat.permissible_speed(1000.0, 38.5, seats, 50.0, 2.0, 12.0, 1e-4, 0.05 * 7850.0)
    assert found.speed == pytest.approx(n, rel=1e-9)


def test_balance_is_infinite_where_nothing_hot_enough_is_found_and_unknown_stays_unknown():
    power = np.array([10.0, 1e6, np.nan])
    found = heat.balance_temperature(
        lambda t, power: power + 0 * t, lambda t, power: 0.5 * (t - 20.0), np.array([20.0, 20.0, 20.0]), given=[power]
    )
    assert found[0] == pytest.approx(40.0) and np.isinf(found[1]) and np.isnan(found[2])


def test_load_term_stands_between_the_tabulated_angles():
    at = friction.load_term("angular contact ball", [15.0, 20.0, 25.0, 12.0], 0.0, 100.0, 3000.0)
    assert at.friction_load[1] == pytest.approx(0.5 * (at.friction_load[0] + at.friction_load[2]))
    assert at.friction_load[3] == at.friction_load[0]
    assert np.isnan(friction.load_term("tapered roller", 0.0, 100.0, 0.0, 3000.0).factor)


def test_lubricant_factors_by_word():
    low, high = friction.lubricant_factor(
        "deep groove ball", ["grease", "grease for high speed", "oil-air", "under-race oil", "solid film", ""]
    )
    assert low[0] == low[1] and high[0] == high[1] == 2.0 and high[2] == 1.0 and high[3] == 4.0
    assert np.isnan(low[4:]).all()


def test_seals_rub_more_on_a_larger_lip():
    torque = friction.seal_torque([22.0, 52.0, 500.0], [11.0, 32.0, 300.0])
    assert 0.0 < torque[0] < torque[1] and np.isnan(torque[2])


def test_surface_in_a_stream_gives_off_more():
    still, stream = (cooling.surface_conductance(5000.0, 30.0, 70.0, 20.0, v, 0.8) for v in (0.0, 10.0))
    assert 5.0 < still / 5e-3 < 20.0 < stream / 5e-3  # W/(m2 K): 10 to 15 in still air is the usual figure
    assert cooling.surface_conductance(5000.0, 30.0, 20.0, 20.0) > 0.0


@pytest.mark.parametrize(
    "call",
    [
        lambda: friction.maker_constants("70"),
        lambda: heat.friction_power(-1.0, 10.0),
        lambda: heat.reference_area(10.0, 26.0, 0.0),
        lambda: cooling.radiation_transfer(50.0, 20.0, 1.2),
        lambda: heat.cycle(10.0, 0.0, 100.0, 1.0, 1.0, 20.0),
    ],
)
def test_out_of_range_is_refused(call):
    with pytest.raises(ValueError, match=r"must|no constants"):
        call()


def test_time_to_a_temperature_beyond_the_end_is_unknown():
    assert heat.time_to(63.2, 0.0, 100.0, 10.0) == pytest.approx(10.0, rel=1e-3)
    assert np.isnan(heat.time_to(120.0, 0.0, 100.0, 10.0)) and np.isnan(heat.time_to(100.0, 0.0, 100.0, 10.0))


@given(
    powers=st.lists(st.floats(0.0, 500.0), min_size=1, max_size=8),
    thins=st.lists(st.floats(0.0, 0.02), min_size=8, max_size=8),
)
def test_a_balance_is_the_same_alone_and_among_others(powers, thins):
    """Rows that are found leave the search; what is left must not see another row's figures."""
    power, thin = np.array(powers), np.array(thins[: len(powers)])

    def balance(power, thin):
        return heat.balance_temperature(
            lambda t, power, thin: power * np.exp(-thin * t), lambda t, power, thin: 0.9 * (t - 20.0),
            np.full(len(power), 20.0), given=[power, thin],
        )  # fmt: skip

    together = balance(power, thin)
    for row in range(len(power)):
        assert np.array_equal(together[row : row + 1], balance(power[row : row + 1], thin[row : row + 1]))
    found = np.isfinite(together)
    assert power[found] * np.exp(-thin[found] * together[found]) == pytest.approx(
        0.9 * (together[found] - 20.0), abs=1e-6
    )
