"""Fits, interference and clearance worked through with printed data; micrometres unless a name says otherwise."""

import numpy as np
import pytest

from linter.mechanics import fit_in_use as fu
from linter.mechanics import preload, press_fit

STEEL = (208000.0, 0.3)  # MPa; NTN Table 17.4.1 (modulus), common practice (Poisson)
MM = 1e-3  # mm in one um
C_0_6310 = 38500.0  # N, from memory of makers' tables


def test_hollow_shaft_of_6208():
    """SKF hollow shafts page: 6208, bore of the shaft 0.8 d; chart factor 1.7 (from memory)."""
    d_e = fu.inner_ring_outside_diameter(40.0, 80.0, 0.3)
    assert d_e == pytest.approx(52.0)
    assert 40.0 / d_e == pytest.approx(0.77, abs=0.005)
    factor = fu.hollow_shaft_factor(32.0, 40.0, d_e)
    assert factor == pytest.approx(1.726, abs=1e-3)
    assert factor == pytest.approx(1.7, rel=0.02)
    assert factor * 13.5 == pytest.approx(23.0, abs=0.5)
    # the factor is the one that keeps the pressure
    solid = press_fit.contact_pressure(13.5 * MM, 40.0, 0.0, d_e, *STEEL, *STEEL)
    hollow = press_fit.contact_pressure(factor * 13.5 * MM, 40.0, 32.0, d_e, *STEEL, *STEEL)
    assert hollow == pytest.approx(solid, rel=1e-12)


def test_miniature_bearing_loses_its_play():
    """NHBB recommended fits: 0.0002 in of play, 0.0003 in of interference, 80 % of it lost."""
    left = fu.clearance_in_use(0.0002 * 25.4, 0.0003 * 25.4, 0.8, 0.0, 0.0, 0.0) / MM
    assert left == pytest.approx(-0.00004 * 25.4 / MM)
    assert left == pytest.approx(-1.02, abs=5e-3)


def test_cup_in_aluminium_housing():
    """Power Transmission Engineering blog, 4 March 2015: 10 um of raceway growth give 27.4 um; angle 20.05 implied."""
    assert preload.axial_play_from_growth(10.0, 20.05) == pytest.approx(27.4, abs=0.05)


def test_interference_needed_by_6310():
    """NSK eq 9.1, 9.4, 9.5; NTN eq 7.1, 7.3, 7.4: d 50, B 27, F_r 5000 N, 40 K."""
    load, heat = fu.load_loosening(50.0, 27.0, 5000.0), fu.heat_loosening(50.0, 40.0, 0.12, 12.5e-6)
    assert load / MM == pytest.approx(7.70, abs=5e-3)
    assert heat / MM == pytest.approx(3.00, abs=5e-3)
    need = fu.required_interference(50.0, load, heat, ["ground", "turned"])
    assert need / MM == pytest.approx([11.13, 11.34], abs=6e-3)
    least, most = fu.smoothing_fixed_loss(["ground", "turned"])
    assert (load + heat + least) / MM == pytest.approx([11.7, 15.7], abs=0.05)
    assert (load + heat + most) / MM == pytest.approx([13.2, 17.7], abs=0.05)


def test_heavy_form_asks_less_near_its_threshold():
    """NSK section 9.1.2 against NTN section 7 at F_r 9000 N; C_0r from memory."""
    assert np.array([0.2, 0.25, 0.3]) * C_0_6310 == pytest.approx([7700.0, 9625.0, 11550.0])
    light, heavy = fu.load_loosening_light(50.0, 27.0, 9000.0), fu.load_loosening_heavy(27.0, 9000.0)
    assert heavy / MM == pytest.approx(6.67, abs=5e-3)
    assert light / MM == pytest.approx(10.33, abs=5e-3)
    assert fu.load_loosening(50.0, 27.0, 9000.0) == light
    crossing = 16.0 * 50.0 * 27.0
    assert crossing == pytest.approx(21600.0)
    assert fu.load_loosening_heavy(27.0, crossing) == pytest.approx(fu.load_loosening_light(50.0, 27.0, crossing))


def test_seat_pressure_of_6310():
    """NTN Table 17.4.1 (pressure and hoop stress; the groove factor from memory of Table 17.4.2), k5 and m6."""
    groove, _ = fu.mean_raceway_diameters(50.0, 110.0, "groove")
    assert groove == pytest.approx(65.1)
    effective = np.array([25.0, 37.0]) * fu.smoothing_factor(50.0, "ground")
    assert effective[0] == pytest.approx(24.04, abs=5e-3)
    fit = press_fit.press_fit(effective * MM, 50.0, 0.0, groove, *STEEL, *STEEL)
    assert fit.pressure == pytest.approx([20.5, 30.3], abs=0.05)
    assert fit.outer_body_interface_hoop == pytest.approx([79.5, 117.7], abs=0.05)


def test_hub_60_on_100():
    """Exercise with shaft 60 +0.030/+0.011, hub +0.019/0, 100 mm outside (askfilo.com); end figures derived."""
    low, high = fu.fit_interval(0.011, 0.030, 0.0, 0.019)
    assert (low, high) == (pytest.approx(-0.008), pytest.approx(0.030))
    fit = press_fit.press_fit([low, high], 60.0, 0.0, 100.0, 210000.0, 0.292, 210000.0, 0.292)
    assert fit.pressure == pytest.approx([0.0, 33.6], abs=0.05)
    assert fit.outer_body_interface_hoop[1] / fit.pressure[1] == pytest.approx(2.125, abs=5e-4)
    assert fit.outer_body_interface_hoop[1] == pytest.approx(71.4, abs=0.05)
    assert press_fit.pressing_force(fit.pressure[1], 60.0, 10.0, 0.3) / 1000 == pytest.approx(19.0, abs=0.05)


def test_clearance_left_in_6310():
    """NSK eq 9.6, clearance of TPI CAT 2202/TE Table 6.1; the raceway rule from memory of NSK. Shaft k5, inner +5 K."""
    d_i, d_e = fu.mean_raceway_diameters(50.0, 110.0, "plain")
    assert (d_i, d_e) == (pytest.approx(62.0), pytest.approx(98.0))
    heat = fu.clearance_heat_loss(12.5e-6, 5.0, d_e)
    assert heat / MM == pytest.approx(6.1, abs=0.05)
    # unit interference on a solid steel shaft gives the growth factor d/D_i
    factor = press_fit.press_fit(1.0, 50.0, 0.0, d_i, *STEEL, *STEEL).outer_body_outside_change
    assert factor == pytest.approx(50.0 / 62.0, rel=1e-12)
    effective = np.array([2.0, 13.5, 25.0]) * MM * fu.smoothing_factor(50.0, "ground")
    clearance = np.array([23.0, 14.5, 6.0]) * MM
    left = fu.clearance_in_use(clearance, effective, factor, 0.0, 0.0, heat) / MM
    assert left == pytest.approx([15.3, -2.1, -19.5], abs=0.05)
    tight, loose = fu.clearance_interval(
        (clearance[2], clearance[0]), (effective[0], effective[2]), factor, (0.0, 0.0), 0.0, heat
    )
    assert (tight / MM, loose / MM) == (pytest.approx(-19.5, abs=0.05), pytest.approx(15.3, abs=0.05))
    assert fu.clearance_in_use(27.0 * MM, effective[1], factor, 0.0, 0.0, heat) / MM == pytest.approx(10.4, abs=0.05)


def test_aluminium_housing_heated_40_kelvin():
    """Expansions of 6061 and 356 against bearing steel, D 80 (standard expansion); N7 housing."""
    change = press_fit.thermal_interference_change(80.0, 12.5e-6, 60.0, [23.6e-6, 21.5e-6], 60.0) / MM
    assert change == pytest.approx([-35.5, -28.8], abs=0.05)
    room = fu.fit_interval(-13.0, 0.0, -39.0, -9.0)
    assert room == (-4.0, 39.0)
    assert np.array(room) + change[0] == pytest.approx([-39.5, 3.5], abs=0.05)
