"""Press fits and turning rings against printed figures; the source of each case stands with it in cases.json."""

import json
from pathlib import Path

import numpy as np
import pytest

from linter.mechanics import press_fit as pf

CASES = {c["id"]: c for c in json.loads((Path(__file__).parent / "data" / "cases.json").read_text(encoding="utf-8"))}


def inputs(case_id):
    return {name: entry["value"] for name, entry in CASES[case_id]["inputs"].items()}


def agree(case_id, computed):
    """Every figure of the case, inside the tolerance stated with it."""
    expected = CASES[case_id]["expected"]
    assert computed.keys() == expected.keys()
    for name, figure in expected.items():
        assert computed[name] == pytest.approx(figure["value"], rel=figure["rel_tol"], abs=0.0), (case_id, name)


@pytest.mark.parametrize("case_id", ["A6-SH-3-64", "A6-SH-3-66"])
def test_hub_on_solid_shaft(case_id):
    """Shigley, Mechanical Engineering Design, 8th ed., solutions to Prob. 3-64 and 3-66; hub diameter inferred."""
    x = inputs(case_id)
    p = pf.contact_pressure(
        2 * np.array([x["delta_max"], x["delta_min"]]), 2 * x["R"], 0.0, 2 * x["ro"], x["E"], 0.292, x["E"], 0.292
    )
    agree(case_id, {"p_max": p[0], "p_min": p[1]})


@pytest.mark.parametrize("case_id", ["A6-SH-3-68", "A6-SH-3-69", "A6-SH-5-35"])
def test_unlike_materials_and_hollow_inner_body(case_id):
    """Shigley, Mechanical Engineering Design, 8th ed., solutions to Prob. 3-68, 3-69 (psi and in) and 5-35."""
    x = inputs(case_id)
    fit = pf.press_fit(2 * x["delta_r"], 2 * x["R"], 2 * x["ri"], 2 * x["ro"], x["Ei"], x["nui"], x["Eo"], x["nuo"])
    p = fit.pressure
    figures = {"p": p, "sigma_t_o": fit.outer_body_interface_hoop, "sigma_t_i": fit.inner_body_interface_hoop}
    if case_id == "A6-SH-5-35":
        figures["vm_o"] = pf.equivalent_stress(fit.outer_body_interface_hoop, -p)
        figures["vm_i"] = pf.equivalent_stress(fit.inner_body_interface_hoop, -p)
    agree(case_id, figures)


def test_disc_that_loses_its_shaft():
    """Ugural and Fenster, flat steel disc 0.5/0.1 m on a steel shaft, loose at 6900 r/min; density inferred.

    The printed shrink is on the radius, less the growth of the shaft itself.
    """
    x = inputs("A6-DISC-6900")
    a, b, e = 2e3 * x["a"], 2e3 * x["b"], x["E"] / 1e6
    loss = pf.rotation_interference_loss(a, 0.0, b, x["n"], x["rho"], e, x["nu"], x["rho"], e, x["nu"])
    static = pf.press_fit(loss, a, 0.0, b, e, x["nu"], e, x["nu"])
    turning, _ = pf.stress_by_rotation(a, a, b, x["n"], x["rho"], x["nu"])
    agree(
        "A6-DISC-6900",
        {
            "delta_r": loss / 2e3,
            "sigma_static": static.outer_body_interface_hoop * 1e6,
            "sigma_rotating": turning * 1e6,
        },
    )
    speed = pf.speed_at_loss(loss, a, 0.0, b, x["rho"], e, x["nu"], x["rho"], e, x["nu"])
    assert speed == pytest.approx(x["n"], rel=1e-12)


@pytest.mark.parametrize("case_id", ["A6-GROWTH-SOLID", "A6-GROWTH-HOLLOW"])
def test_raceway_growth(case_id):
    """Lamé, own reference values (regression only)."""
    x = inputs(case_id)
    fit = pf.press_fit(x["I"], x["d"], x["d_bore"], x["D1"], x["Es"], x["nus"], x["Er"], x["nur"])
    figures = {
        "p": fit.pressure,
        "growth_D1": fit.outer_body_outside_change,
        "sigma_t_ring": fit.outer_body_interface_hoop,
    }
    if case_id == "A6-GROWTH-HOLLOW":
        figures["shrink_bore"] = fit.inner_body_bore_change
    agree(case_id, figures)
