import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import kinematics, lubricant


@given(st.floats(5, 1000), st.floats(0.05, 0.6))
def test_viscosity_line_goes_through_its_points(nu_40, share):
    line = (nu_40, 40.0, max(share * nu_40, 2.0), 100.0)
    t = np.array([40.0, 100.0])
    assert lubricant.viscosity_at(t, *line) == pytest.approx([line[0], line[2]], rel=1e-9)
    nu = lubricant.viscosity_at(np.linspace(-10, 120, 50), *line)
    assert np.all(np.diff(nu) < 0)


def test_reference_viscosity_steps_at_1000():
    low, high = lubricant.reference_viscosity([999.9999, 1000.0], 50.0)
    assert low / high == pytest.approx(1.023, abs=0.0005)
    n = np.geomspace(1, 999, 50)
    assert np.all(np.diff(lubricant.reference_viscosity(n, 50.0)) < 0)


def test_entrainment_speed_is_the_surface_speed_of_the_rolling_ball():
    s = kinematics.speeds(6000.0, 9, 12.7, 65.0)
    surface = s.ball_spin * np.pi / 30 * 12.7 / 2 / 1000
    assert lubricant.entrainment_speed(6000.0, 12.7, 65.0) == pytest.approx(surface)


FILM = {
    "speed": 6.0, "radius": 5.0, "effective_modulus": 2.2e5, "dynamic_viscosity": 0.04, "pressure_viscosity": 2.3e-8,
    "load": 500.0, "ellipticity": 9.0,
}  # fmt: skip


@pytest.mark.parametrize(("where", "power"), [("minimum", (0.68, -0.073)), ("central", (0.67, -0.067))])
def test_film_follows_its_powers(where, power):
    one = lubricant.film_thickness(**FILM, where=where)
    assert lubricant.film_thickness(**(FILM | {"speed": 12.0}), where=where) == pytest.approx(one * 2 ** power[0])
    assert lubricant.film_thickness(**(FILM | {"load": 1000.0}), where=where) == pytest.approx(one * 2 ** power[1])


def test_central_film_is_the_thicker_one():
    k = np.linspace(1, 20, 30)
    central = lubricant.film_thickness(**(FILM | {"ellipticity": k}), where="central")
    ratio = lubricant.film_thickness(**(FILM | {"ellipticity": k})) / central
    assert np.all((ratio > 0.5) & (ratio < 0.85))
    assert lubricant.film_parameter(0.5, 0.3, 0.4) == pytest.approx(1.0)


@pytest.mark.parametrize("grease", ["general", "wide range"])
def test_grease_life_falls_with_heat_and_speed_and_is_held_at_its_lower_ends(grease):
    t, r = np.meshgrid(np.linspace(70, 110, 20), np.linspace(0.25, 1.0, 20), indexing="ij")
    life = lubricant.grease_life_by_limit(r, t, grease)
    assert np.all(np.diff(life, axis=0) < 0) and np.all(np.diff(life, axis=1) < 0)
    assert lubricant.grease_life_by_limit(0.1, 20.0, grease) == lubricant.grease_life_by_limit(0.25, 70.0, grease)


def test_halving_interval_of_the_grease_formulas():
    """Interval that halves the life: 13.7 K at 0.25, 15.8 K at 0.5, 23 K at the limiting speed (derived)."""
    r = np.array([0.25, 0.5, 1.0])
    slope = np.log2(lubricant.grease_life_by_limit(r, 80.0) / lubricant.grease_life_by_limit(r, 90.0)) / 10
    assert 1 / slope == pytest.approx([13.7, 15.8, 23.2], abs=0.06)
    by_factor = lubricant.grease_life_by_speed_factor(1e5, 0.05, np.array([80.0, 90.0]))
    assert 10 / np.log2(by_factor[0] / by_factor[1]) == pytest.approx(15.7, abs=0.06)


def test_grease_life_falls_with_load_from_a_twentieth_of_the_rating():
    life = lubricant.grease_life_by_speed_factor(2e5, [0.0, 0.05, 0.10, 0.15], 80.0)
    assert life / life[0] == pytest.approx([1.0, 1.0, 10**-0.125, 10**-0.25])


def test_half_life_subtraction():
    assert lubricant.half_life_subtraction(1e5, 1e5, 0.0, 1e4) == pytest.approx(0.86)
    # 100 lb on a bearing of 1000 lb at DN = 100 000
    pound = 4.4482216
    term = lubricant.half_life_subtraction(1e5, 1e30, 100 * pound, 1000 * pound)
    assert term == pytest.approx(0.61 * 1e5 * 100 / 1000**2)
    halved = lubricant.grease_life_by_halving(90.0, [0.0, 1.0])
    assert halved[0] / halved[1] == pytest.approx(2.0, rel=1e-3)
    assert lubricant.grease_life_by_halving(90.0, 0.0, "L50") / halved[0] == pytest.approx(10**0.3)


def test_temperature_and_load_factors():
    assert lubricant.grease_temperature_factor([40, 55, 70, 85, 100]) == pytest.approx([2, 2, 1, 0.5, 0.25])
    assert lubricant.grease_load_factor([0.0, 0.05, 0.075, 0.25]) == pytest.approx([1.0, 1.0, 0.85, 0.2])


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: lubricant.viscosity_at(60, 32, 40, 5.4, 40), "two temperatures of the viscosity line must differ"),
        (lambda: lubricant.viscosity_at(60, 0.2, 40, 5.4, 100), "greater than 0.3 mm2/s, got 0.2"),
        (lambda: lubricant.viscosity_at(-300, 32, 40, 5.4, 100), "absolute temperature"),
        (lambda: lubricant.reference_viscosity(0.0, 50), "speed must be greater than 0"),
        (lambda: lubricant.film_thickness(**FILM, where="inlet"), "'minimum' or 'central', got 'inlet'"),
        (lambda: lubricant.film_parameter(1.0, 0.0, 0.0), "combined roughness"),
        (lambda: lubricant.grease_life_by_limit(1.2, 70), "from 0 to 1"),
        (lambda: lubricant.grease_life_by_limit(0.5, 115), "temperature must lie from -60 to 110"),
        (lambda: lubricant.grease_life_by_limit(0.5, 70, "oil"), "'general' or 'wide range', got 'oil'"),
        (lambda: lubricant.grease_life_by_speed_factor(6e5, 0.05, 70), "speed factor must lie from 0 to 500000"),
        (lambda: lubricant.grease_life_by_speed_factor(1e5, 0.2, 70), "from 0 to 0.16"),
        (lambda: lubricant.grease_life_by_halving(50, 0), "from 60 to 150"),
        (lambda: lubricant.grease_life_by_halving(90, -1), "half-life subtraction must not be negative"),
        (lambda: lubricant.grease_load_factor(0.3), "from 0 to 0.25"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()


def test_nan_passes():
    assert np.isnan(lubricant.viscosity_at(np.nan, 32, 40, 5.4, 100))
    assert np.isnan(lubricant.grease_life_by_limit(np.nan, 80.0))
    assert np.isnan(lubricant.grease_life_by_speed_factor(1e5, 0.05, np.nan))
