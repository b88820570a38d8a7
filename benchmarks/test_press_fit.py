"""Press fits, shaft and pair unloading on 1, 1000 and 100 000 rows (python -m pytest benchmarks)."""

import numpy as np
import pytest

from linter.mechanics import critical_speed, fit_in_use, preload, press_fit, shaft

ROWS = [1, 1_000, 100_000]


@pytest.fixture(params=ROWS)
def rows(request, sized):
    return np.random.default_rng(0).uniform(size=(8, sized(request.param)))


def test_seat_from_drawing_to_clearance(benchmark, rows):
    d = 4.0 + 40.0 * rows[0]
    big_d = d * (2.0 + rows[1])

    def run():
        d_i, d_e = fit_in_use.mean_raceway_diameters(d, big_d, "groove")
        loss = press_fit.rotation_interference_loss(
            d, 0.0, d_i, 3e4 * rows[2], 7850.0, 206000.0, 0.3, 7800.0, 208000.0, 0.3
        )
        warm = press_fit.thermal_interference_change(d, 12e-6, 60.0 + 40 * rows[3], 12.5e-6, 60.0)
        effective = 0.01 * fit_in_use.smoothing_factor(d, "ground") - loss + warm
        inner = press_fit.press_fit(effective, d, 0.0, d_i, 206000.0, 0.3, 208000.0, 0.3)
        outer = press_fit.press_fit(0.01 * rows[4], big_d, d_e, big_d * 1.4, 208000.0, 0.3, 70000.0, 0.33)
        return fit_in_use.clearance_in_use(
            0.01, inner.outer_body_outside_change, 1.0, -outer.inner_body_bore_change, 1.0, 0.001
        )

    assert np.all(np.isfinite(benchmark(run)))


def test_unloading_of_pairs(benchmark, rows):
    k = 1e5 * (1.0 + 9.0 * rows[:2])
    pair = benchmark(preload.pair_under_axial_force, 10.0 + 90.0 * rows[2], k[0], k[1], 200.0 * rows[3])
    assert np.all(np.isfinite(pair.shift))


def test_stepped_rotor(benchmark, rows):
    one = shaft.shaft(10.0 + 30.0 * rows[:4].T, 6.0 + 10.0 * rows[4:].T, 1.0, 40.0, 206000.0)
    place = np.stack([20.0 + 0.0 * rows[0], one.section_length.sum(axis=-1)], axis=-1)

    def run():
        state = shaft.loaded_shaft(one, place, 10.0)
        return state.slope_a + critical_speed.rotor_critical_speed(one, 7850.0, place, 0.1, points=3)

    benchmark.pedantic(run, rounds=2)
    assert np.all(np.isfinite(run()))
