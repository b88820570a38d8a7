"""Ball bearings under load against printed figures. "memory" means a remembered figure of the named source."""

import pytest

from linter.mechanics import ball_bearing as bb

KGF = 9.80665


def test_free_contact_angle(case):
    """Harris, Rolling Bearing Analysis, 209 example: free angle 9 deg 52 min, endplay 0.174 mm (memory)."""
    c = case("A4-HARRIS-209-ANGLE")
    clearance = c["do"] - c["di"] - 2 * c["D"]
    a = bb.groove_distance(c["D"], c["fi"], c["fo"])
    alpha = bb.free_contact_angle(clearance, a)
    c.agree(Pd=clearance, A=a, alpha0=alpha, Pe=bb.free_endplay(alpha, a))
    assert bb.clearance_of_angle(alpha, a) == pytest.approx(clearance, rel=1e-12)


def test_thrust_load_with_chart_constant(case):
    """Harris, Rolling Bearing Analysis, 218 under 17 800 N (memory); K = 896.7 MPa is the chart value of the book."""
    c = case("A4-HARRIS-218-THRUST")
    a = bb.groove_distance(c["D"], c["fi"], c["fo"])
    bearing = bb.AxialBearing(c["Z"], a, c["alpha0"], c["K"] * c["D"] ** 2 / a**1.5)
    state = bb.axial_load(c["Fa"], bearing)
    c.agree(t=c["Fa"] / (c["Z"] * c["D"] ** 2 * c["K"]), alpha=state.contact_angle, delta_a=state.deflection)


def exact_bearing(c):
    a = bb.groove_distance(c["D"], c["fi"], c["fo"])
    k_n = bb.stiffness_constant(c["D"], c["dm"], c["alpha0"], c["fi"], c["fo"], c["E"], c["nu"], c["E"], c["nu"])
    return a, bb.AxialBearing(c["Z"], a, c["alpha0"], k_n)


@pytest.mark.parametrize("case_id", ["A4-218-EXACT", "A4-7014-15DEG"])
def test_thrust_load_with_exact_constant(case, case_id):
    """Exact Hertz stiffness at the unloaded angle, 30 digits (second implementation)."""
    c = case(case_id)
    a, bearing = exact_bearing(c)
    state = bb.axial_load(c["Fa"], bearing)
    k = bearing.stiffness_constant * a**1.5 / c["D"] ** 2
    c.agree(
        Kn=bearing.stiffness_constant,
        K=k,
        t=c["Fa"] / (c["Z"] * c["D"] ** 2 * k),
        alpha=state.contact_angle,
        delta_a=state.deflection,
        Q=state.ball_load,
        k_axial=state.stiffness,
    )


def test_preloaded_pair(case):
    """Rigidly preloaded pair, 30 digits (second implementation)."""
    c = case("A4-PAIR-7014-15")
    _, bearing = exact_bearing(c)
    pair = bb.preloaded_pair(c["Fp"], c["Fext"], bearing, bearing)
    c.agree(
        delta_p=pair.preload_deflection,
        delta_shift=pair.shift,
        F_loaded=pair.loaded_force,
        F_unloaded=pair.unloaded_force,
        F_unload_limit=pair.unloading_limit,
    )
    assert pair.unloading_limit == pytest.approx(2.83 * c["Fp"], rel=0.2)  # rule of thumb for a fixed angle: 2^1.5


def test_chord_stiffness(case):
    """Axial stiffness example of a miniature bearing at 0.45 kgf (gobearings.com/stiffness.htm)."""
    c = case("A4-SLOPE-R168")
    k = bb.chord_stiffness(c["F1"] * KGF, c["F2"] * KGF, c["d1"] / 1000, c["d2"] / 1000)
    c.agree(k=1000 * k)
