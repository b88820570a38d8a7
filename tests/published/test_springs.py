"""Springs against printed figures; the source of each case stands with it in cases.json or in the test."""

import json
from pathlib import Path

import numpy as np
import pytest

from linter.mechanics import preload, preload_bounds, springs
from linter.mechanics.tolerance_chain import parse_chain, root_sum_square, worst_case

CASES = {c["id"]: c for c in json.loads((Path(__file__).parent / "data" / "cases.json").read_text(encoding="utf-8"))}


def inputs(case_id):
    return {name: entry["value"] for name, entry in CASES[case_id]["inputs"].items()}


def agree(case_id, computed):
    """Every figure of the case, inside the tolerance stated with it."""
    expected = CASES[case_id]["expected"]
    assert computed.keys() == expected.keys()
    for name, figure in expected.items():
        assert computed[name] == pytest.approx(figure["value"], rel=figure["rel_tol"], abs=0.0), (case_id, name)


def test_disc_force_of_the_series_tables():
    """DIN 2093 tables, series A and B, force at 0.75 h_0 (from memory of the tables)."""
    sizes = inputs("A9-DIN2093-A1")
    d_e, d_i, t, h = np.array(list(sizes.values())).T
    force = springs.disc_force(0.75 * h, d_e, d_i, t, h, 206000.0, 0.3)
    agree("A9-DIN2093-A1", {f"F_{name}": f for name, f in zip(sizes, force, strict=True)})


def test_disc_stress_of_the_series_tables():
    """DIN 2093 tables, stresses (from memory of the tables); sigma_OM is tabulated flat-pressed."""
    sizes = inputs("A9-DIN2093-STRESS")

    def at(name, share):
        d_e, d_i, t, h = sizes[name]
        return springs.disc_stress(share * h, d_e, d_i, t, h, 206000.0, 0.3)

    agree(
        "A9-DIN2093-STRESS",
        {
            "sII_A20": at("A20", 0.75).at_ii,
            "sII_A50": at("A50", 0.75).at_ii,
            "sIII_B50": at("B50", 0.75).at_iii,
            "sOM_A50": at("A50", 0.75).at_om,
        },
    )


def test_disc_of_the_handbook():
    """Machinery's Handbook 31st ed. p. 362; the outer load line there is 77.78 mm on an 80 mm disc."""
    x = inputs("A9-MH-DISC")
    s = np.array([x["s_min"], x["s_max"]])
    f = springs.disc_force(s, x["De"], x["Di"], x["t"], x["h"], x["E"], x["mu"], loaded_diameter=x["Da"])
    # K1 from the force law itself: with s = h_0 the bracket is 1
    flat = springs.disc_force(x["h"], x["De"], x["Di"], x["t"], x["h"], x["E"], x["mu"])
    k_1 = 4 * x["E"] / (1 - x["mu"] ** 2) * x["t"] ** 3 * x["h"] / (flat * x["De"] ** 2)
    agree("A9-MH-DISC", {"delta": x["De"] / x["Di"], "K1": k_1, "F_min": f[0], "F_max": f[1]})


def test_coil_of_the_textbook():
    """Shigley 10th and 11th ed., solution to Prob. 10-3 (plain ground ends, set not removed: 0.45 of the strength)."""
    x = inputs("A9-COIL-SH-10-3")
    d = x["d"]
    mean = x["OD"] - d
    k = springs.helical_rate(d, mean, x["Nt"] - 1, x["G"])
    solid = springs.helical_solid_length(d, x["Nt"])
    strength = springs.wire_strength(d, x["A"], x["m"])
    k_b = springs.bergstraesser_factor(mean, d)
    f_s = springs.helical_force_at_stress(0.45 * strength, d, mean, k_b)
    agree(
        "A9-COIL-SH-10-3",
        {
            "D": mean,
            "C": mean / d,
            "k": k,
            "Ls": solid,
            "Sut": strength,
            "KB": k_b,
            "Fs": f_s,
            "L0": solid + f_s / k,
            "L0cr": springs.helical_buckling_length(mean, 0.5),
        },
    )


def test_coil_spring_guide():
    """ShopMath spring-rate guide: 0.072 in wire, 0.625 in mean coil, 8 coils, 11.5e6 psi; 19.8 lb/in printed."""
    rate = springs.helical_rate(0.072, 0.625, 8, 11.5e6)
    assert rate == pytest.approx(19.78, abs=0.005)
    assert rate == pytest.approx(19.8, abs=0.05)
    assert rate * 4.4482216 / 25.4 == pytest.approx(3.464, abs=5e-4)


def test_metric_coil():
    """Worked figures for d 0.8, D 10, n 4, G 81 500 MPa (derived from the rate formula of the McAllister guide)."""
    rate = springs.helical_rate(0.8, 10.0, 4, 81500.0)
    assert rate == pytest.approx(1.043, abs=5e-4)
    assert springs.helical_solid_length(0.8, 6) == pytest.approx(4.8)
    assert preload.linear_spring_force(8.0, rate, 14.0) == pytest.approx(6.26, abs=5e-3)


def test_disc_spring_of_25_mm():
    """25 x 12.2 x 0.7, h_0 0.9: DIN 2093 table value 601 N remembered at 0.675 mm; the rest derived."""
    f = springs.disc_force([0.225, 0.45, 0.675, 0.9], 25.0, 12.2, 0.7, 0.9, 206000.0, 0.3)
    assert f == pytest.approx([331.0, 515.0, 599.7, 635.0], abs=0.5)
    assert f[2] == pytest.approx(601.0, rel=0.0025)


def test_wave_spring():
    """Single-turn wave spring, symbols and K of wavesprings.vip; the digits derived."""
    rate = springs.wave_rate(21.5, 16.5, 0.25, 3, 206000.0)
    assert springs.wave_factor(3) == 3.88
    assert rate * np.array([0.9, 0.7, 1.1]) == pytest.approx([28.7, 22.3, 35.1], abs=0.05)
    assert springs.wave_stress(rate * 0.9, 21.5, 16.5, 0.25, 3) == pytest.approx(914.0, abs=0.5)


def test_spring_window_over_the_chain():
    """Worked window: coil above at 8.00 mm, four toleranced parts, force tolerance 10 % (springs3d.com); derived."""
    members = parse_chain("+20±0.05 -9±0.06 -2±0.05 -1±0.03")
    rate = springs.helical_rate(0.8, 10.0, 4, 81500.0)

    def force(length):
        return preload.linear_spring_force(length, rate, 14.0)

    low, high = worst_case(members)
    mean, half = root_sum_square(members)
    assert (high - low) / 2 == pytest.approx(0.19)
    assert half == pytest.approx(0.097, abs=5e-4)
    assert preload.force_band(force, low, high, 0.1, 0.1) == pytest.approx((5.45, 7.10), abs=5e-3)
    assert preload.force_band(force, mean - half, mean + half, 0.1, 0.1) == pytest.approx((5.54, 7.00), abs=6e-3)
    assert low - springs.helical_solid_length(0.8, 6) == pytest.approx(3.0, abs=0.05)
    share = preload.spring_share_outside(rate, 14.0, members, 0.1, 5.0, 7.5, 20_000, 1)
    assert share == 0.0


def test_thermal_change_of_spring_and_rigid_pair():
    """Worked change: aluminium housing 23.5e-6, steel shaft 11.5e-6, 60 mm, 60 K (derived)."""
    growth = preload.relative_growth(60.0, 23.5e-6, 60.0, 11.5e-6, 60.0)
    assert growth == pytest.approx(0.0432)
    rate = springs.helical_rate(0.8, 10.0, 4, 81500.0)
    assert rate * growth == pytest.approx(0.045, abs=5e-4)
    assert rate * growth / preload.linear_spring_force(8.0, rate, 14.0) == pytest.approx(0.007, abs=5e-4)
    # 8090 N/mm each at 40 N on F = K delta^1.5: slope 1.5 K^(2/3) F^(1/3)
    k = (8090.0 / (1.5 * 40.0 ** (1 / 3))) ** 1.5
    pair = preload.pair_stiffness(40.0, k, k)
    assert pair / 1000 == pytest.approx(4.05, abs=0.006)
    assert pair * growth == pytest.approx(175.0, abs=0.5)
    # the stiffening curve gives more than the straight line
    assert preload.rigid_preload_after_growth(40.0, k, k, growth) - 40.0 > pair * growth


def test_spring_rule_and_contact_stress_of_motor_sizes():
    """SKF spring rule 5 to 10 N per mm of bore and mean stress from C_0 (ISO 76); worked figures derived.

    The table rounds the angle to 0.01 degrees and its stress to 1 MPa.
    """
    assert preload_bounds.minimum_by_bore(8.0, [5.0, 10.0, 20.0]) == pytest.approx([40.0, 80.0, 160.0])
    assert preload_bounds.minimum_by_bore(17.0, [5.0, 10.0, 20.0]) == pytest.approx([85.0, 170.0, 340.0])
    assert preload_bounds.minimum_by_rating(9550.0, 0.01) == pytest.approx(95.5)
    loads, angles = [10.0, 20.0, 40.0, 80.0, 160.0], [13.98, 14.55, 15.35, 16.46, 17.96]
    peak = 1.5 * preload_bounds.contact_stress_estimate(loads, 1370.0, angles)
    assert peak == pytest.approx([765.0, 951.0, 1178.0, 1451.0, 1777.0], abs=1.0)
    mean = preload_bounds.contact_stress_estimate([85.0, 170.0, 340.0], 4800.0, 13.0)
    assert mean == pytest.approx([702.0, 884.0, 1114.0], abs=1.0)


def test_share_of_static_rating_by_mean_stress():
    """F_a for 800, 1000, 1500 MPa as a share of C_0 at 15 and 13 degrees (derived from ISO 76)."""
    cap = preload_bounds.maximum_by_contact_stress([800.0, 1000.0, 1500.0], 1.0, [[15.0], [13.0]])
    assert cap == pytest.approx(np.array([[0.0302, 0.0590, 0.199], [0.0262, 0.0512, 0.173]]), rel=3e-3)


def test_least_radial_load():
    """SKF Rolling bearings catalogue p. 254, k_r 0.025 from memory: 6203 at 12 000 r/min and 8.5 mm2/s; 44.3 N."""
    assert preload_bounds.minimum_radial_load(0.025, 8.5, 12000.0, 28.5) == pytest.approx(44.3, abs=0.05)


def test_axial_play():
    """Worked play of a 608 from its radial clearance, A 0.19845 mm (play formula of the bearing handbooks, derived)."""
    gr = np.array([0.010, 0.005, 0.013])
    play = preload.axial_play(gr, 0.19845)
    assert play[0] == pytest.approx(0.0885, abs=5e-5)
    assert play[1:] / gr[1:] == pytest.approx([12.6, 7.7], abs=0.06)
