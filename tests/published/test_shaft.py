"""Shaft deflection and critical speeds against printed figures; sources stand in cases.json."""

import json
from pathlib import Path

import numpy as np
import pytest

from linter.mechanics import critical_speed
from linter.mechanics import shaft as sh

CASES = {c["id"]: c for c in json.loads((Path(__file__).parent / "data" / "cases.json").read_text(encoding="utf-8"))}


def inputs(case_id):
    return {name: entry["value"] for name, entry in CASES[case_id]["inputs"].items()}


def agree(case_id, computed):
    """Every figure of the case, inside the tolerance stated with it."""
    expected = CASES[case_id]["expected"]
    assert computed.keys() == expected.keys()
    for name, figure in expected.items():
        assert computed[name] == pytest.approx(figure["value"], rel=figure["rel_tol"], abs=0.0), (case_id, name)


RAD_S = np.pi / 30


def test_two_discs_on_a_uniform_shaft():
    """Shigley 9th ed. Example 7-5, p. 386-388; inch and pound-force data."""
    x = inputs("A10-SH-EX7-5")
    one = sh.uniform_shaft(x["L"], x["d"], x["E"])
    c = sh.influence(one, [x["x1"], x["x2"], x["L"] / 2])
    w = np.array([x["w1"], x["w2"]])
    d = np.diag(c)
    single = [
        critical_speed.rayleigh_critical_speed([weight], [weight * f * 25.4])
        for weight, f in zip(w, d[:2], strict=True)
    ]
    e, rho = x["E"] * 0.006894757, x["gam"] * 0.45359237 / 0.0254**3
    alone = critical_speed.uniform_shaft_critical_speed(x["L"] * 25.4, x["d"] * 25.4, e, rho)
    agree(
        "A10-SH-EX7-5",
        {
            "delta11": d[0],
            "delta22": d[1],
            "deltacc": d[2],
            "w1c": w[0] * d[0] / d[2],
            "w2c": w[1] * d[1] / d[2],
            "omega_dunkerley": critical_speed.dunkerley_critical_speed(single) * RAD_S,
            "omega_shaft": alone * RAD_S,
            "omega_dunkerley_shaft": critical_speed.dunkerley_critical_speed([*single, alone]) * RAD_S,
        },
    )
    # Rayleigh 124.8 and exact two-mass 124.7 rad/s, computed beside the case
    y = (c[:2, :2] * w).sum(axis=-1) * 25.4
    assert critical_speed.rayleigh_critical_speed(w, y) * RAD_S == pytest.approx(124.8, abs=0.05)
    metric = sh.uniform_shaft(x["L"] * 25.4, x["d"] * 25.4, e)
    exact = critical_speed.rotor_critical_speed(metric, 0.0, np.array([x["x1"], x["x2"]]) * 25.4, w * 0.45359237)
    assert exact * RAD_S == pytest.approx(124.7, abs=0.06)


def test_disc_at_midspan():
    """Rotor of 10 kg at midspan of a 30 mm shaft, 500 mm span (byjus.com statement, 90 Hz from memory)."""
    x = inputs("A10-JEFFCOTT-10KG")
    one = sh.uniform_shaft(1e3 * x["L"], 1e3 * x["d"], x["E"] / 1e6)
    n = critical_speed.disc_critical_speed(one, 500 * x["L"], x["m"])
    agree("A10-JEFFCOTT-10KG", {"f": n / 60})
    stiffness = x["coef"] * x["E"] / 1e6 * np.pi * (1e3 * x["d"]) ** 4 / 64 / (1e3 * x["L"]) ** 3
    assert critical_speed.rigid_disc_speed(stiffness, x["m"]) == pytest.approx(n, rel=1e-9)


def test_thick_beam():
    """Pinned uniform Timoshenko beam, root of the modal determinant computed with 30 digits."""
    x = inputs("A10-TIMO-40x500")
    args = (1e3 * x["L"], 1e3 * x["d"], x["E"] / 1e6, x["rho"])
    assert x["kappa"] == sh.SHEAR_COEFFICIENT_ROUND
    thin = critical_speed.uniform_shaft_critical_speed(*args) * RAD_S
    thick = critical_speed.uniform_shaft_critical_speed(*args, shear_modulus=x["G"] / 1e6, rotary_inertia=True) * RAD_S
    agree("A10-TIMO-40x500", {"omega_EB": thin, "omega_T": thick, "f_T": thick / (2 * np.pi)})


def test_disc_off_the_middle():
    """Massless shaft, k = 3 E I L/(a^2 b^2); own reference value (regression only)."""
    x = inputs("A10-OFFSET")
    one = sh.uniform_shaft(1e3 * x["L"], 1e3 * x["d"], x["E"] / 1e6)
    k = 1 / sh.influence(one, [1e3 * x["a"]])[0, 0]
    n = critical_speed.disc_critical_speed(one, 1e3 * x["a"], x["m"])
    agree("A10-OFFSET", {"k": 1e3 * k, "omega": n * RAD_S, "n": n})
