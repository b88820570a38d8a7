"""Shaft against finite beam elements and closed forms, and the laws it obeys."""

import numpy as np
import pytest
import scipy.linalg
import skfem
from hypothesis import given, settings
from hypothesis import strategies as st
from skfem.helpers import dd, ddot

from linter.mechanics import critical_speed
from linter.mechanics import shaft as sh
from linter.mechanics.balance import STANDARD_GRAVITY

E, G, RHO = 206000.0, 79200.0, 7850.0
LENGTH = np.array([20.0, 35.0, 60.0, 15.0, 30.0])
DIAMETER = np.array([8.0, 12.0, 16.0, 10.0, 8.0])
BORE = np.array([0.0, 4.0, 4.0, 0.0, 0.0])
A, B = 25.0, 125.0
LOADS = (np.array([5.0, 80.0, 150.0]), np.array([40.0, -25.0, 60.0]))


def beam(pieces=160, stiffness_a=1e12, stiffness_b=1e12):
    """Stiffness and mass (t) of the stepped shaft by Hermite elements, rows by place."""
    nodes = np.unique(np.round(np.concatenate([np.linspace(0, 160, pieces + 1), np.cumsum(LENGTH)]), 9))
    basis = skfem.Basis(skfem.MeshLine(nodes), skfem.ElementLineHermite(), intorder=6)
    ends = np.cumsum(LENGTH)

    def section(x):
        return np.minimum(np.searchsorted(ends, x), len(ends) - 1)

    @skfem.BilinearForm
    def bending(u, v, w):
        k = section(w.x[0])
        return E * np.pi / 64 * (DIAMETER[k] ** 4 - BORE[k] ** 4) * ddot(dd(u), dd(v))

    @skfem.BilinearForm
    def inertia(u, v, w):
        k = section(w.x[0])
        return RHO * 1e-12 * np.pi / 4 * (DIAMETER[k] ** 2 - BORE[k] ** 2) * u * v

    order = np.argsort(basis.mesh.p[0])
    places = basis.mesh.p[0][order]

    def dof(x, slope=False):
        return basis.nodal_dofs[int(slope), order[np.argmin(np.abs(places - x))]]

    stiff, mass = bending.assemble(basis).toarray(), inertia.assemble(basis).toarray()
    stiff[dof(A), dof(A)] += stiffness_a
    stiff[dof(B), dof(B)] += stiffness_b
    return stiff, mass, dof


def stepped(**changes):
    return sh.shaft(LENGTH, DIAMETER, A, B, E, BORE, **changes)


@pytest.mark.parametrize("soft", [False, True])
def test_stepped_shaft_with_overhangs_against_finite_elements(soft):
    springs = (8e3, 5e3) if soft else (np.inf, np.inf)
    k, _, dof = beam(stiffness_a=min(springs[0], 1e10), stiffness_b=min(springs[1], 1e10))
    f = np.zeros(len(k))
    for x, load in zip(*LOADS, strict=True):
        f[dof(x)] += load
    u = np.linalg.solve(k, f)
    state = sh.loaded_shaft(stepped(stiffness_a=springs[0], stiffness_b=springs[1]), *LOADS)
    assert state.deflection == pytest.approx([u[dof(x)] for x in LOADS[0]], rel=1e-4)
    assert state.slope_a == pytest.approx(u[dof(A, True)], rel=1e-4)
    assert state.slope_b == pytest.approx(u[dof(B, True)], rel=1e-4)
    assert state.reaction_a + state.reaction_b == pytest.approx(LOADS[1].sum())
    if soft:
        assert u[dof(A)] == pytest.approx(state.reaction_a / springs[0], rel=1e-6)


def test_influence_of_couples_against_finite_elements():
    k, _, dof = beam(stiffness_a=1e10, stiffness_b=1e10)
    c = sh.influence(stepped(), [150.0, 150.0, 80.0], [False, True, True])
    inverse = np.linalg.inv(k)
    rows = [dof(150.0), dof(150.0, True), dof(80.0, True)]
    assert c == pytest.approx(inverse[np.ix_(rows, rows)], rel=1e-4)
    assert c == pytest.approx(c.T)


@pytest.mark.parametrize("soft", [False, True])
def test_rotor_critical_speed_against_finite_elements(soft):
    stiffness = (8e3, 5e3) if soft else (1e9, 1e9)
    k, m, dof = beam(160, *stiffness)
    discs = (np.array([5.0, 80.0, 150.0]), np.array([0.05, 0.12, 0.08]))
    for x, kg in zip(*discs, strict=True):
        m[dof(x), dof(x)] += kg / 1000
    omega = np.sqrt(scipy.linalg.eigh(k, m, eigvals_only=True, subset_by_index=[0, 0])[0])
    one = stepped(stiffness_a=stiffness[0], stiffness_b=stiffness[1])
    assert critical_speed.rotor_critical_speed(one, RHO, *discs) * np.pi / 30 == pytest.approx(omega, rel=1e-4)


@pytest.mark.parametrize("place", [80.0, 150.0])
@pytest.mark.parametrize("difference", [-30.0, 0.0, 45.0])
def test_disc_with_gyroscopic_effect_against_finite_elements(place, difference):
    """Synchronous forward whirl: the tilt of the disc enters the mass matrix as -(I_p - I_t)."""
    k, _, dof = beam(160, 1e9, 1e9)
    m = np.zeros_like(k)
    m[dof(place), dof(place)] = 0.3 / 1000
    m[dof(place, True), dof(place, True)] = -difference / 1000
    inverse = scipy.linalg.eigvals(np.linalg.solve(k, m))
    omega = 1 / np.sqrt(inverse.real.max())
    n = critical_speed.disc_critical_speed(stepped(), place, 0.3, difference)
    assert n * np.pi / 30 == pytest.approx(omega, rel=1e-4)


def test_closed_forms_of_a_uniform_shaft():
    span, d, c = 100.0, 10.0, 30.0
    ei = E * np.pi * d**4 / 64
    one = sh.uniform_shaft(span, d, E, overhang_b=c)
    flex = np.diag(sh.influence(one, [40.0, span + c]))
    assert flex[0] == pytest.approx(40.0**2 * 60.0**2 / (3 * ei * span))
    assert flex[1] == pytest.approx(c**2 * (span + c) / (3 * ei))
    state = sh.loaded_shaft(one, [50.0], [20.0])
    assert state.slope_a == pytest.approx(20.0 * span**2 / (16 * ei))
    assert state.slope_b == pytest.approx(-state.slope_a)
    sheared = sh.influence(sh.uniform_shaft(span, d, E, shear_modulus=G), [50.0])[0, 0]
    bending = span**3 / (48 * ei)
    shear = span / (4 * sh.SHEAR_COEFFICIENT_ROUND * G * np.pi * d**2 / 4)
    assert sheared == pytest.approx(bending + shear)


def test_bearing_stiffness_acts_in_series():
    span, x, k_a, k_b = 100.0, 130.0, 2e4, 3e4
    rigid = sh.influence(sh.uniform_shaft(span, 10.0, E, overhang_b=30.0), [x])[0, 0]
    soft = sh.influence(sh.uniform_shaft(span, 10.0, E, overhang_b=30.0, stiffness_a=k_a, stiffness_b=k_b), [x])[0, 0]
    assert soft - rigid == pytest.approx(0.3**2 / k_a + 1.3**2 / k_b)


def test_uniform_shaft_three_ways():
    """Closed form, gathered masses, and Dunkerley as a lower bound with a disc."""
    closed = critical_speed.uniform_shaft_critical_speed(300.0, 12.0, E, RHO)
    one = sh.uniform_shaft(300.0, 12.0, E)
    assert critical_speed.rotor_critical_speed(one, RHO, [150.0], [0.0]) == pytest.approx(closed, rel=3e-4)
    assert critical_speed.rotor_critical_speed(one, RHO, [150.0], [0.0], points=16) == pytest.approx(closed, rel=1e-5)
    slender = np.pi**2 * np.sqrt(E * 1e12 * 12.0**2 / 16 / RHO) / 300.0**2 * 30 / np.pi
    assert closed == pytest.approx(slender)
    disc = critical_speed.disc_critical_speed(one, 100.0, 0.4)
    both = critical_speed.rotor_critical_speed(one, RHO, [100.0], [0.4])
    low = critical_speed.dunkerley_critical_speed([closed, disc])
    assert low <= both <= min(closed, disc)
    assert both == pytest.approx(low, rel=0.02)
    thick = critical_speed.uniform_shaft_critical_speed(300.0, 12.0, E, RHO, shear_modulus=G, rotary_inertia=True)
    assert 0.98 * closed < thick < closed
    tube = critical_speed.uniform_shaft_critical_speed(300.0, 12.0, E, RHO, bore=6.0)
    assert tube == pytest.approx(closed * np.sqrt(1 + 0.25))


def test_rayleigh_is_an_upper_bound():
    one = stepped()
    x, m = np.array([5.0, 80.0, 150.0]), np.array([0.05, 0.12, 0.08])
    exact = critical_speed.rotor_critical_speed(one, 0.0, x, m)
    w = m * STANDARD_GRAVITY * np.array([-1.0, 1.0, -1.0])  # overhung weights turned to follow the mode
    y = sh.loaded_shaft(one, x, w).deflection
    estimate = critical_speed.rayleigh_critical_speed(np.abs(w), y)
    assert exact <= estimate * (1 + 1e-9)
    assert estimate == pytest.approx(exact, rel=0.05)


@settings(max_examples=40)
@given(st.floats(20.0, 400.0), st.floats(3.0, 40.0), st.floats(0.05, 0.95), st.floats(0.01, 5.0))
def test_scale_laws(span, d, share, mass):
    one = sh.uniform_shaft(span, d, E)
    n = critical_speed.disc_critical_speed(one, share * span, mass)
    assert np.isfinite(n)
    assert critical_speed.disc_critical_speed(sh.uniform_shaft(span, 2 * d, E), share * span, mass) == pytest.approx(
        4 * n
    )
    assert critical_speed.disc_critical_speed(one, share * span, 4 * mass) == pytest.approx(n / 2)
    assert critical_speed.disc_critical_speed(one, (1 - share) * span, mass) == pytest.approx(n, rel=1e-6)
    soft = sh.uniform_shaft(span, d, E, stiffness_a=1e4, stiffness_b=1e4)
    assert critical_speed.disc_critical_speed(soft, share * span, mass) < n
    plain = critical_speed.disc_critical_speed(one, share * span, mass, [0.0, 10.0, -10.0])
    assert plain[1] >= plain[0] * (1 - 1e-9)
    assert plain[2] <= plain[0] * (1 + 1e-9)


def test_rows_do_not_touch_each_other():
    """A batch larger than a block, padded sections, gives the figures of each row alone."""
    rows = 5000
    rng = np.random.default_rng(1)
    length = np.column_stack([rng.uniform(10, 50, (rows, 3)), np.zeros(rows)])
    diameter = rng.uniform(5, 20, (rows, 4))
    b = length.sum(axis=1)
    x, m = rng.uniform(0.2, 0.8, (rows, 2)) * b[:, np.newaxis], rng.uniform(0.01, 1, (rows, 2))
    many = sh.shaft(length, diameter, 2.0, b, E)
    n = critical_speed.rotor_critical_speed(many, RHO, x, m)
    slope = sh.loaded_shaft(many, x, m).slope_a
    for i in (0, 2047, 2048, 4999):
        one = sh.shaft(length[i, :3], diameter[i, :3], 2.0, b[i], E)
        assert critical_speed.rotor_critical_speed(one, RHO, x[i], m[i]) == pytest.approx(n[i])
        assert sh.loaded_shaft(one, x[i], m[i]).slope_a == pytest.approx(slope[i])


def test_disc_over_a_rigid_bearing_never_whirls():
    one = sh.uniform_shaft(100.0, 10.0, E)
    assert critical_speed.disc_critical_speed(one, 0.0, 1.0) == np.inf
    assert critical_speed.rotor_critical_speed(one, 0.0, [0.0], [1.0]) == np.inf


def test_missing_and_bad_values():
    one = sh.uniform_shaft([100.0, np.nan], 10.0, E)
    assert np.isnan(sh.influence(one, [[50.0], [50.0]])[:, 0, 0]).tolist() == [False, True]
    assert np.isnan(critical_speed.disc_critical_speed(one, 50.0, [1.0, 1.0])).tolist() == [False, True]
    assert np.isnan(critical_speed.rotor_critical_speed(one, RHO, [[50.0], [50.0]], 1.0)).tolist() == [False, True]
    good = sh.uniform_shaft(100.0, 10.0, E)
    with pytest.raises(ValueError, match="position on the shaft"):
        sh.influence(good, [101.0])
    with pytest.raises(ValueError, match="bearing positions"):
        sh.shaft([100.0], [10.0], 60.0, 40.0, E)
    with pytest.raises(ValueError, match="section_bore = 10"):
        sh.shaft([100.0], [10.0], 0.0, 100.0, E, [10.0])
    with pytest.raises(ValueError, match="mass must be greater than 0"):
        critical_speed.disc_critical_speed(good, 50.0, 0.0)
    with pytest.raises(ValueError, match="rotor without mass"):
        critical_speed.rotor_critical_speed(good, 0.0, [50.0], [0.0])
    with pytest.raises(ValueError, match="points = 0"):
        critical_speed.rotor_critical_speed(good, RHO, [50.0], [1.0], points=0)
    with pytest.raises(ValueError, match="bore: expected less"):
        critical_speed.uniform_shaft_critical_speed(100.0, 10.0, E, RHO, bore=10.0)
    with pytest.raises(ValueError, match="partial_speed must be greater than 0"):
        critical_speed.dunkerley_critical_speed([0.0, 100.0])
