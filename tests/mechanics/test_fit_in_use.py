"""Losses of interference and clearance in use."""

import numpy as np
import pytest

from linter.mechanics import fit_in_use as fu


def test_smoothing_forms():
    assert fu.smoothing_factor([50.0, 50.0], ["ground", "turned"]) == pytest.approx([50 / 52, 50 / 53])
    assert fu.smoothing_roughness_loss(2.5, 1.5) == pytest.approx(3.2e-3)
    with pytest.raises(ValueError, match="'milled'"):
        fu.smoothing_factor(50.0, ["ground", "milled"])
    with pytest.raises(ValueError, match="diameter must be greater than 0"):
        fu.smoothing_factor(0.0, "ground")


def test_load_loosening_is_the_larger_form_and_rises_with_load():
    f = np.linspace(0.0, 60000.0, 200)
    both = fu.load_loosening(50.0, 27.0, f)
    assert np.all(both >= fu.load_loosening_light(50.0, 27.0, f))
    assert np.all(both >= fu.load_loosening_heavy(27.0, f))
    assert np.all(np.diff(both) > 0)
    assert both[-1] == fu.load_loosening_heavy(27.0, 60000.0)  # above 16 d B the heavy form leads
    with pytest.raises(ValueError, match="radial_load must not be negative, got -1"):
        fu.load_loosening(50.0, 27.0, -1.0)


def test_heat_loosening_reads_the_printed_coefficient():
    assert fu.heat_loosening(50.0, 40.0, 0.15, 12.5e-6) == pytest.approx(
        1.25 * fu.heat_loosening(50.0, 40.0, 0.12, 12.5e-6)
    )
    with pytest.raises(ValueError, match=r"share = 1\.5"):
        fu.heat_loosening(50.0, 40.0, 1.5, 12.5e-6)


def test_required_interference_survives_its_losses():
    need = fu.required_interference(30.0, 0.004, 0.002, "ground")
    assert need * fu.smoothing_factor(30.0, "ground") - 0.006 == pytest.approx(0.0, abs=1e-15)


def test_raceway_rules_mirror_each_other_and_differ_by_5_percent():
    d, big_d = 8.0, 22.0
    plain, groove = fu.mean_raceway_diameters(d, big_d, "plain"), fu.mean_raceway_diameters(d, big_d, "groove")
    assert sum(plain) == pytest.approx(d + big_d)
    assert groove[0] / plain[0] == pytest.approx(1.05)
    assert groove[1] / plain[1] == pytest.approx(0.95)
    assert d < plain[0] < groove[0] < groove[1] < plain[1] < big_d
    with pytest.raises(ValueError, match="rule = 'other'"):
        fu.mean_raceway_diameters(d, big_d, "other")
    with pytest.raises(ValueError, match="expected more than the bore"):
        fu.mean_raceway_diameters(d, 8.0, "plain")


def test_statistical_fit_lies_inside_the_limits():
    low, high = fu.fit_interval(2.0, 13.0, -12.0, 0.0)
    mean, half = fu.fit_statistical(2.0, 13.0, -12.0, 0.0)
    assert (low, high) == (2.0, 25.0)
    assert mean == 13.5
    assert half == pytest.approx(np.hypot(11.0, 12.0) / 2)
    assert low < mean - half < mean + half < high
    # 99 % band printed for 40 k5 by SKF is 5 to 22
    assert half == pytest.approx((22.0 - 5.0) / 2, abs=0.5)
    with pytest.raises(ValueError, match="lower <= upper"):
        fu.fit_interval(3.0, 2.0, 0.0, 1.0)


def test_hollow_shaft_factor_limits():
    assert fu.hollow_shaft_factor(0.0, 40.0, 52.0) == 1.0
    assert np.all(np.diff(fu.hollow_shaft_factor(np.linspace(0.0, 38.0, 50), 40.0, 52.0)) > 0)
    with pytest.raises(ValueError, match="shaft_bore < bore_diameter"):
        fu.hollow_shaft_factor(40.0, 40.0, 52.0)


@pytest.mark.parametrize("outer_mean", [-0.012, -0.002, 0.0, 0.003, 0.02])
def test_statistical_clearance_against_simulation(outer_mean):
    """One ring always tight, the other loose in a part of the batch: moments against 400 000 drawn assemblies."""
    start, inner, outer = (0.0145, 0.0085), (0.0115, 0.008), (outer_mean, 0.009)
    mean, half = fu.clearance_statistical(start, inner, 0.81, outer, 0.9, 0.002)
    z = np.random.default_rng(5).standard_normal((3, 400_000)) / 3
    drawn = fu.clearance_in_use(
        start[0] + start[1] * z[0], inner[0] + inner[1] * z[1], 0.81, outer[0] + outer[1] * z[2], 0.9, 0.002
    )
    assert mean == pytest.approx(drawn.mean(), abs=2e-5)
    assert half == pytest.approx(3 * drawn.std(), rel=5e-3)


def test_statistical_clearance_is_root_sum_square_when_both_rings_are_tight():
    mean, half = fu.clearance_statistical((0.0145, 0.0085), (0.05, 0.008), 0.81, (0.06, 0.009), 0.9, 0.002)
    assert mean == pytest.approx(0.0145 - 0.81 * 0.05 - 0.9 * 0.06 - 0.002)
    assert half == pytest.approx(np.sqrt(0.0085**2 + (0.81 * 0.008) ** 2 + (0.9 * 0.009) ** 2))
    tight, loose = fu.clearance_interval((0.006, 0.023), (0.042, 0.058), 0.81, (0.051, 0.069), 0.9, 0.002)
    assert tight < mean - half < mean + half < loose


def test_fixed_parts_have_no_spread():
    mean, half = fu.clearance_statistical((0.01, 0.0), (0.005, 0.0), 0.8, (-0.005, 0.0), 0.8, 0.0)
    assert (mean, half) == (pytest.approx(0.006), 0.0)


def test_heat_loss_forms_agree_for_equal_rises():
    """JTEKT's form with the balls as warm as the inner ring is NSK's with D_e = D_i + 2 D_w."""
    fine = fu.clearance_heat_loss_by_part(30.0, 50.0, 10.0, 12.5e-6, 12.5e-6, 15.0, 10.0, 15.0)
    assert fine == pytest.approx(fu.clearance_heat_loss(12.5e-6, 5.0, 50.0))
    ceramic = fu.clearance_heat_loss_by_part(30.0, 50.0, 10.0, 12.5e-6, 3.2e-6, 15.0, 10.0, 15.0)
    assert ceramic < fine


def test_mounting_temperature_opens_the_gap():
    t = fu.mounting_temperature(0.025, 0.05, 50.0, 12.5e-6, 20.0)
    assert 50.0 * 12.5e-6 * (t - 20.0) == pytest.approx(0.075)
    assert fu.mounting_temperature(-0.1, 0.05, 50.0, 12.5e-6, 20.0) == 20.0
    assert np.isnan(fu.mounting_temperature(np.nan, 0.05, 50.0, 12.5e-6, 20.0))
