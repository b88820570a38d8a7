"""Press fits against a numeric solution of the elasticity equations, and the laws they obey."""

import numpy as np
import pytest
import skfem
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_bvp

from linter.mechanics import press_fit as pf

STEEL = (208000.0, 0.30)
PLASTIC = (9500.0, 0.38)
ALUMINIUM = (70000.0, 0.33)


def two_bodies_by_ode(interference, d, d_0, d_out, inner, outer, speed=0.0, rho_i=0.0, rho_o=0.0):
    """Interface pressure and radial displacements (bore, outside) of two turning hollow bodies, by collocation."""
    a, r, b = d_0 / 2, d / 2, d_out / 2
    omega2 = (speed * np.pi / 30) ** 2 * 1e-12

    def stress(material, u, du, at):
        e, nu = material
        return e / (1 - nu**2) * (du + nu * u / at)

    def slope(x, y):
        out = []
        for k, (lo, hi, (e, nu), rho) in enumerate(((a, r, inner, rho_i), (r, b, outer, rho_o))):
            at = lo + (hi - lo) * x
            u, du = y[2 * k], y[2 * k + 1]
            out += [(hi - lo) * du, (hi - lo) * (-du / at + u / at**2 - (1 - nu**2) * rho * omega2 * at / e)]
        return np.array(out)

    def ends(left, right):
        s_i = stress(inner, right[0], right[1], r)
        return np.array(
            [
                stress(inner, left[0], left[1], a),
                stress(outer, right[2], right[3], b),
                (s_i - stress(outer, left[2], left[3], r)) / 1e4,
                left[2] - right[0] - interference / 2,
            ]
        )

    solution = solve_bvp(slope, ends, np.linspace(0, 1, 60), np.zeros((4, 60)), tol=1e-10, max_nodes=20000)
    assert solution.success
    y = solution.y
    return -stress(inner, y[0, -1], y[1, -1], r), y[0, 0], y[2, -1]


CASES = [
    (0.02, 40.0, 24.0, 48.0, STEEL, STEEL),
    (0.015, 22.0, 18.0, 40.0, STEEL, PLASTIC),
    (0.03, 52.0, 46.0, 70.0, STEEL, ALUMINIUM),
    (0.004, 4.0, 1.0, 5.4, STEEL, (310000.0, 0.27)),
]


@pytest.mark.parametrize("case", CASES)
def test_pressure_and_raceway_change_against_collocation(case):
    i, d, d_0, d_out, inner, outer = case
    p, u_bore, u_out = two_bodies_by_ode(*case)
    fit = pf.press_fit(i, d, d_0, d_out, *inner, *outer)
    assert fit.pressure == pytest.approx(p, rel=1e-6)
    assert fit.inner_body_bore_change == pytest.approx(2 * u_bore, rel=1e-6)
    assert fit.outer_body_outside_change == pytest.approx(2 * u_out, rel=1e-6)


@pytest.mark.parametrize("speed", [20000.0, 90000.0])
def test_turning_fit_against_collocation(speed):
    """Superposition: pressure of the reduced interference, free growth added to the raceway."""
    i, d, d_0, d_out = 0.006, 12.0, 4.0, 15.5
    inner, outer, rho_i, rho_o = (110000.0, 0.31), STEEL, 4430.0, 7800.0
    p, _, u_out = two_bodies_by_ode(i, d, d_0, d_out, inner, outer, speed, rho_i, rho_o)
    loss = pf.rotation_interference_loss(d, d_0, d_out, speed, rho_i, *inner, rho_o, *outer)
    fit = pf.press_fit(i - loss, d, d_0, d_out, *inner, *outer)
    free = pf.diameter_change_by_rotation(d_out, d, d_out, speed, rho_o, *outer)
    assert fit.pressure == pytest.approx(p, rel=1e-6)
    assert fit.outer_body_outside_change + free == pytest.approx(2 * u_out, rel=1e-6)


def test_no_pressure_at_the_speed_of_loss():
    args = (12.0, 4.0, 15.5)
    rest = (7800.0, *STEEL, 7800.0, *STEEL)
    n = pf.speed_at_loss(0.002, *args, *rest)
    assert pf.rotation_interference_loss(*args, n, *rest) == pytest.approx(0.002, rel=1e-12)
    p, _, _ = two_bodies_by_ode(0.002, *args, STEEL, STEEL, float(n), 7800.0, 7800.0)
    assert p == pytest.approx(0.0, abs=1e-4)
    # a ceramic ring on a plastic shaft tightens with speed: never loose
    assert pf.speed_at_loss(0.002, 12.0, 0.0, 14.0, 1500.0, *PLASTIC, 3230.0, 310000.0, 0.27) == np.inf
    assert pf.speed_at_loss([-0.001, 0.0], *args, *rest) == pytest.approx([0.0, 0.0])


def solid_disc_by_elements(radius, material, pressure, omega2_rho):
    """Radial displacements of a solid disc under outer pressure and rotation, quadratic elements."""
    e, nu = material
    basis = skfem.Basis(skfem.MeshLine(np.linspace(0, radius, 81)), skfem.ElementLineP2(), intorder=6)

    @skfem.BilinearForm
    def stiffness(u, v, w):
        r = w.x[0]
        return e / (1 - nu**2) * (u.grad[0] * v.grad[0] + u * v / r**2 + nu * (u.grad[0] * v + u * v.grad[0]) / r) * r

    @skfem.LinearForm
    def load(v, w):
        return omega2_rho * w.x[0] ** 2 * v

    f = load.assemble(basis)
    rim = basis.get_dofs(lambda x: np.isclose(x[0], radius)).all()
    f[rim] -= pressure * radius
    u = skfem.solve(*skfem.condense(stiffness.assemble(basis), f, D=basis.get_dofs(lambda x: np.isclose(x[0], 0.0))))
    return basis, u


def test_solid_shaft_against_finite_elements():
    d, p, n, rho = 30.0, 42.0, 60000.0, 7850.0
    omega2_rho = (n * np.pi / 30) ** 2 * rho * 1e-12
    basis, u = solid_disc_by_elements(d / 2, STEEL, p, omega2_rho)
    at = basis.doflocs[0]
    inside = at > 0
    ours = pf.diameter_change_by_pressure(2 * at, 0.0, d, 0.0, p, *STEEL)
    ours = ours + pf.diameter_change_by_rotation(2 * at, 0.0, d, n, rho, *STEEL)
    assert ours[inside] / 2 == pytest.approx(u[inside], rel=2e-4, abs=1e-7)
    assert ours[~inside] == pytest.approx(0.0)


def test_equilibrium_inside_a_turning_ring():
    """d(r s_r)/dr - s_h + rho w^2 r^2 = 0 by differences."""
    r = np.linspace(10.0, 20.0, 4001)
    hoop, radial = pf.stress_by_rotation(r, 10.0, 20.0, 30000.0, 7800.0, 0.3)
    x = r / 2
    body = 7800e-12 * (30000.0 * np.pi / 30) ** 2 * x**2
    assert np.gradient(x * radial, x)[1:-1] == pytest.approx((hoop - body)[1:-1], rel=1e-4)
    assert radial[[0, -1]] == pytest.approx([0.0, 0.0], abs=1e-9)


wall = st.floats(1.02, 3.0)
modulus = st.floats(2000.0, 320000.0)
poisson = st.floats(0.2, 0.45)


@settings(max_examples=60)
@given(st.floats(2.0, 200.0), st.floats(0.0, 0.9), wall, modulus, modulus, poisson, poisson)
def test_laws(d, share, ratio, e_i, e_o, nu_i, nu_o):
    fit = pf.press_fit([1e-3, 2e-3], d, share * d, ratio * d, e_i, nu_i, e_o, nu_o)
    assert np.all(np.isfinite(np.array(fit)))
    assert fit.pressure[1] == pytest.approx(2 * fit.pressure[0])  # linear in interference
    assert fit.outer_body_interface_hoop[0] > fit.outer_body_outside_hoop[0] > 0
    assert fit.inner_body_interface_hoop[0] < 0
    assert 0 < fit.outer_body_outside_change[0] < 1e-3
    # a bore shrinks by at most 1/sqrt(1 - nu^2) of what the seat does (derived: largest of 2 x/(1 - nu + (1 + nu) x^2))
    assert -1e-3 / np.sqrt(1 - nu_i**2) <= fit.inner_body_bore_change[0] <= 0
    # stiffer wall, more pressure; wider shaft bore, less
    more = pf.contact_pressure(1e-3, d, share * d, 1.1 * ratio * d, e_i, nu_i, e_o, nu_o)
    assert more > fit.pressure[0]
    assert pf.contact_pressure(1e-3, d, (share + 0.05) * d, ratio * d, e_i, nu_i, e_o, nu_o) < fit.pressure[0]


def test_thin_ring_and_unbounded_housing():
    d, t, i = 50.0, 0.005, 0.01
    thin = pf.press_fit(i, d, 0.0, d + 2 * t, 1e12, 0.3, *STEEL)
    assert thin.outer_body_interface_hoop == pytest.approx(STEEL[0] * i / d, rel=1e-3)
    assert thin.pressure == pytest.approx(STEEL[0] * i / d * 2 * t / d, rel=1e-3)
    unbounded = pf.press_fit(i, d, 45.0, np.inf, *STEEL, *STEEL)
    wide = pf.press_fit(i, d, 45.0, 1e6, *STEEL, *STEEL)
    assert unbounded.pressure == pytest.approx(wide.pressure, rel=1e-8)
    assert unbounded.outer_body_interface_hoop == pytest.approx(unbounded.pressure)
    assert unbounded.outer_body_outside_change == 0.0
    # NTN Table 17.4.1, housing of the same modulus: shrink of the raceway D_o/D of the interference in a thick housing
    assert -unbounded.inner_body_bore_change == pytest.approx(i * 45.0 / d, rel=1e-12)


def test_solid_shaft_is_the_limit_of_a_fine_bore():
    solid = pf.contact_pressure(0.01, 20.0, 0.0, 26.0, *STEEL, *STEEL)
    assert pf.contact_pressure(0.01, 20.0, 1e-4, 26.0, *STEEL, *STEEL) == pytest.approx(solid, rel=1e-9)
    growth = pf.diameter_change_by_rotation(20.0, [0.0, 1e-4], 20.0, 5e4, 7800.0, *STEEL)
    assert growth[0] == pytest.approx(growth[1], rel=1e-6)


def test_equal_bodies_warmed_together_keep_their_fit():
    assert pf.thermal_interference_change(40.0, 12e-6, 80.0, 12e-6, 80.0) == 0.0
    loose = pf.thermal_interference_change(40.0, 12e-6, 20.0, 12e-6, 120.0)
    assert loose == pytest.approx(-40.0 * 12e-6 * 100.0)


def test_missing_values_pass_and_bad_values_are_named():
    assert np.isnan(pf.contact_pressure(np.nan, 20.0, 0.0, 26.0, *STEEL, *STEEL))
    assert np.isnan(pf.contact_pressure(0.01, 20.0, 0.0, np.nan, *STEEL, *STEEL))
    assert np.isnan(pf.speed_at_loss(0.01, 20.0, np.nan, 26.0, 7800.0, *STEEL, 7800.0, *STEEL))
    assert pf.contact_pressure([-0.01, 0.0], 20.0, 0.0, 26.0, *STEEL, *STEEL) == pytest.approx([0.0, 0.0])
    with pytest.raises(ValueError, match="outer_diameter = 19"):
        pf.contact_pressure(0.01, 20.0, 0.0, 19.0, *STEEL, *STEEL)
    with pytest.raises(ValueError, match=r"poisson_ratio = 0\.6"):
        pf.contact_pressure(0.01, 20.0, 0.0, 26.0, 208000.0, 0.6, *STEEL)
    with pytest.raises(ValueError, match="elastic_modulus = 0"):
        pf.contact_pressure(0.01, 20.0, 0.0, 26.0, 0.0, 0.3, *STEEL)
    with pytest.raises(ValueError, match="finite outer diameter"):
        pf.stress_by_rotation(20.0, 20.0, np.inf, 1000.0, 7800.0, 0.3)
    with pytest.raises(ValueError, match="at_diameter"):
        pf.stress_by_pressure(30.0, 20.0, 26.0, 1.0, 0.0)
    with pytest.raises(ValueError, match="friction = 2"):
        pf.pressing_force(10.0, 20.0, 5.0, 2.0)
