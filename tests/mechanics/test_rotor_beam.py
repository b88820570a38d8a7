"""Beam elements with gyroscopic effect against an independent finite element library, and their laws."""

import itertools

import numpy as np
import pytest
import skfem
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics.critical_speed import disc_critical_speed
from linter.mechanics.rotor_beam import critical_speeds, rotor_mass, shear_coefficient
from linter.mechanics.rotor_text import Discs, parse_discs
from linter.mechanics.shaft import shaft

LENGTHS, OUTSIDE, INSIDE = [12, 10, 30, 30, 10, 18], [8, 10, 12, 12, 10, 7], [0, 0, 4, 0, 0, 3]
WHEELS = Discs(*np.array([[0, 0.06, 10, 6], [110, 0.045, 7.5, 4.5]]).T)


def turbo(stiffness):
    """Shaft with two overhung wheels; stiffness in N/mm."""
    return shaft(LENGTHS, OUTSIDE, 22, 82, 206e3, INSIDE, stiffness, stiffness, 79.2e3)


def by_library(stiffness, spin, count):
    """Critical speeds of the same rotor [r/min] by quadratic elements of scikit-fem, deflection and slope apart."""
    ends = np.concatenate([[0], np.cumsum(LENGTHS)])
    mesh = skfem.MeshLine(np.unique(np.concatenate([np.linspace(a, b, 13) for a, b in itertools.pairwise(ends)])))
    element = skfem.ElementLineP2() * skfem.ElementLineP2()
    basis = skfem.Basis(mesh, element, intorder=6)

    def per(values):
        return lambda x: np.asarray(values, float)[np.clip(np.searchsorted(ends, x, side="right") - 1, 0, 5)]

    d, d_0 = per(OUTSIDE), per(INSIDE)

    @skfem.BilinearForm
    def stiff(y, t, v, f, w):
        a, b = d(w.x[0]), d_0(w.x[0])
        area, moment = np.pi / 4 * (a**2 - b**2), np.pi / 64 * (a**4 - b**4)
        shear = shear_coefficient(b / a, 206 / (2 * 79.2) - 1) * 79.2e3 * area
        return 206e3 * moment * t.grad[0] * f.grad[0] + shear * (y.grad[0] - t) * (v.grad[0] - f)

    @skfem.BilinearForm
    def heavy(y, t, v, f, w):
        a, b = d(w.x[0]), d_0(w.x[0])
        area, moment = np.pi / 4 * (a**2 - b**2), np.pi / 64 * (a**4 - b**4)
        return 7850e-12 * (area * y * v + (1 - 2 * spin) * moment * t * f)

    k, m = stiff.assemble(basis).toarray(), heavy.assemble(basis).toarray()

    def at(x, which):
        (found,) = basis.get_dofs(nodes=np.flatnonzero(np.isclose(mesh.p[0], x))).nodal[which]
        return found

    names = basis.get_dofs().obj.element.dofnames
    for x in (22, 82):
        k[at(x, names[0]), at(x, names[0])] += stiffness
    for x, mass, polar, transverse in zip(*WHEELS, strict=True):
        m[at(x, names[0]), at(x, names[0])] += mass / 1e3
        m[at(x, names[1]), at(x, names[1])] += (transverse - spin * polar) / 1e3
    pliant = np.sort(np.linalg.eigvals(np.linalg.solve(k, m)).real)[::-1][:count]
    return 30 / np.pi / np.sqrt(pliant)


@pytest.mark.parametrize("stiffness", [10e3, 50e3])
@pytest.mark.parametrize("spin", [-1, 0, 1])
def test_same_as_an_independent_library(stiffness, spin):
    found = critical_speeds(turbo(stiffness), 7850, WHEELS, spin)
    assert found == pytest.approx(by_library(stiffness, spin, 2), rel=5e-4)


def test_overhung_thin_disc_on_a_massless_shaft():
    # closed form of two degrees of freedom; the other road solves the same rotor by influence coefficients
    discs = Discs(*np.array([[30, 0.09, 27, 14]]).T)
    s = shaft([30], 8, 0, 15, 206e3, 0, 1e7, 1e7)
    assert critical_speeds(s, 0, discs)[0] == pytest.approx(disc_critical_speed(s, 30, 0.09, 13), rel=1e-6)
    assert np.isinf(critical_speeds(s, 0, discs)[1])


def test_a_body_off_the_shaft_is_joined_rigidly():
    stub = shaft([40, 5], [8, 100], 0, 30, 206e3, 0, 2e4, 2e4)
    whole, off = Discs(*np.array([[45, 0.05, 4, 3]]).T), Discs(*np.array([[45, 0.05, 4, 3]]).T)
    short = shaft([40], 8, 0, 30, 206e3, 0, 2e4, 2e4)
    assert critical_speeds(short, 0, off, 1) == pytest.approx(critical_speeds(stub, 0, whole, 1), rel=1e-4)


def test_rows_do_not_touch_one_another_and_unknown_ones_stay_unknown():
    one = turbo(2e4)
    many = shaft([LENGTHS] * 3, OUTSIDE, 22, 82, [206e3, np.nan, 110e3], INSIDE, 2e4, 2e4, 79.2e3)
    found = critical_speeds(many, 7850, WHEELS)
    assert found.shape == (3, 2)
    assert found[0] == pytest.approx(critical_speeds(one, 7850, WHEELS), rel=1e-10)
    assert np.isnan(found[1]).all()
    assert (found[2] < found[0]).all()


def test_a_stiffness_too_uneven_to_tell_stays_unknown_alone():
    s = shaft([[40, 5], [40, 5]], [[20e3, 0.01], [8, 8]], 0, 30, 206e3, 0, [[1e-9], [2e4]][0] * 2, 2e4)
    found = critical_speeds(s, 7850, Discs(*np.array([[45, 0.05, 4, 3]]).T))
    assert np.isfinite(found[1, 0])
    assert not np.isnan(found[1]).any()


def test_refused():
    with pytest.raises(ValueError, match="finite"):
        critical_speeds(shaft([30], 8, 0, 15, 206e3), 7850, WHEELS)


def test_mass_of_the_rotor():
    s = shaft([100], 10, 10, 90, 206e3, 6, 1e4, 1e4)
    assert rotor_mass(s, 8000, parse_discs("12 g @ 4")) == pytest.approx(0.012 + 8e-6 * np.pi / 4 * (100 - 36) * 100)


@given(st.floats(1e3, 1e6), st.floats(1.1, 4), st.floats(0.01, 0.3), st.floats(0.5, 1.9), st.floats(-20, 130))
def test_stiffer_bearings_raise_and_spin_parts_the_critical_speeds(stiffness, times, mass, ratio, place):
    discs = Discs(*np.array([[place, mass, 100 * mass * ratio, 100 * mass]]).T)
    soft, hard = (critical_speeds(turbo(k), 7850, discs) for k in (stiffness, times * stiffness))
    assert (hard >= soft * (1 - 1e-9)).all()
    back, still, forward = (critical_speeds(turbo(stiffness), 7850, discs, spin)[0] for spin in (-1, 0, 1))
    assert back <= still * (1 + 1e-9)
    assert still <= forward * (1 + 1e-9)
