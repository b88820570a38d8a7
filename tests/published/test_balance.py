"""Unbalance against printed figures; the source of each case stands with it in cases.json or in the test."""

import json
from pathlib import Path

import pytest

from linter.mechanics import balance

CASES = {c["id"]: c for c in json.loads((Path(__file__).parent / "data" / "cases.json").read_text(encoding="utf-8"))}


def inputs(case_id):
    return {name: entry["value"] for name, entry in CASES[case_id]["inputs"].items()}


def agree(case_id, computed):
    """Every figure of the case, inside the tolerance stated with it."""
    expected = CASES[case_id]["expected"]
    assert computed.keys() == expected.keys()
    for name, figure in expected.items():
        assert computed[name] == pytest.approx(figure["value"], rel=figure["rel_tol"], abs=0.0), (case_id, name)


POUND = 0.45359237  # kg
OUNCE_INCH = POUND / 16 * 1e3 * 25.4  # g.mm


def test_blower():
    """ISO G 6.3 against the Navy rule 4 W/N, comparison by 1library.net; 19.2 oz in is a graph reading."""
    x = inputs("A8-BLOWER")
    u = balance.permissible_unbalance(x["G"], x["W"] * POUND, x["n"]) / OUNCE_INCH
    agree("A8-BLOWER", {"const": u * x["n"] / (x["G"] * x["W"]), "U_per_ozin": u, "U_navy_ozin": 4 * x["W"] / x["n"]})


def test_turbine():
    """ISO 1940-1:2003 / ISO 21940-11:2016 relation e_per Omega = G (rotor from memory)."""
    x = inputs("A8-TURBINE")
    u = balance.permissible_unbalance(x["G"], x["m"], x["n"])
    at_a, at_b = balance.share_to_bearings(u, x["LA"], x["LA"] + x["LB"])
    e = balance.permissible_eccentricity(x["G"], x["n"])
    agree("A8-TURBINE", {"e_per": e, "U_per": u, "U_A": at_a, "U_B": at_b})


def test_spindle():
    """Own reference value (regression only)."""
    x = inputs("A8-SPINDLE-G1")
    e, u = balance.permissible_eccentricity(x["G"], x["n"]), balance.permissible_unbalance(x["G"], x["m"], x["n"])
    agree("A8-SPINDLE-G1", {"e_per": e, "U_per": u})


def test_small_rotor():
    """Grade table copies of ISO 21940-11 and the Widia tooling catalogue (12 g.mm printed for 2 kg, 10 000, G6.3)."""
    assert balance.permissible_unbalance(6.3, 2.0, 10000.0) == pytest.approx(12.03, abs=5e-3)
    assert balance.permissible_eccentricity(2.5, 60000.0) == pytest.approx(0.398, abs=5e-4)
    u = balance.permissible_unbalance([2.5, 6.3, 1.0], 0.15, 60000.0)
    assert u[0] == pytest.approx(0.0597, abs=5e-5)
    assert balance.unbalance_force(u, 60000.0) == pytest.approx([2.36, 5.94, 0.94], abs=5e-3)


def test_unbalance_against_weight():
    """Worked ratios of unbalance force to weight (derived from ISO 21940-11)."""
    g, n = [2.5, 6.3, 1.0, 0.4], [10000.0, 3000.0, 60000.0, 100000.0]
    assert balance.permissible_eccentricity(g, n) == pytest.approx([2.39, 20.05, 0.159, 0.038], abs=5e-3)
    assert balance.unbalance_to_weight(g, n) == pytest.approx([0.27, 0.20, 0.64, 0.43], abs=5e-3)


def test_speed_where_unbalance_equals_weight():
    """Speeds of equal unbalance force and weight by grade (derived from ISO 21940-11)."""
    speed = balance.speed_of_equal_weight([0.4, 1.0, 2.5, 6.3, 16.0, 40.0])
    assert speed == pytest.approx([234117, 93647, 37459, 14865, 5853, 2341], abs=1.0)
    assert speed[2] == pytest.approx(37400, rel=2e-3)
    assert speed[3] == pytest.approx(14900, rel=3e-3)
