"""What a preload must exceed and stay below."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from linter.mechanics import preload_bounds


def test_full_contact_from_the_load_integrals():
    """Sjövall's integrals over the full circumference by quadrature."""

    def load(angle):
        return ((1 + np.cos(angle)) / 2) ** 1.5

    radial = quad(lambda a: load(a) * np.cos(a), -np.pi, np.pi)[0]
    axial = quad(load, -np.pi, np.pi)[0]
    assert preload_bounds.minimum_for_full_contact(100.0, 15.0) == pytest.approx(
        100.0 * np.tan(np.radians(15.0)) * axial / radial
    )


def test_minimum_criteria():
    assert preload_bounds.minimum_axial_load(0.002, 12000.0) == pytest.approx(288.0)
    # k_a 1.4, C_0 10 kN, n d_m 600 000: 1.4 * 0.01 * 36 kN
    assert preload_bounds.minimum_axial_load_by_rating(1.4, 10000.0, 12000.0, 50.0) == pytest.approx(504.0)
    assert preload_bounds.minimum_against_lift_off([-3.0, 3.0], [2.0, 8.0], 1.5) == pytest.approx([4.5, 12.0])
    assert preload_bounds.minimum_radial_load(0.025, 0.0, 1000.0, 28.5) == 0.0
    with pytest.raises(ValueError, match="share must"):
        preload_bounds.minimum_by_rating(1000.0, -1.0)


@given(st.floats(10.0, 1e5), st.floats(1.0, 60.0), st.floats(1.0, 4000.0))
def test_stress_limit_and_estimate_are_inverse(c_0, alpha, stress):
    f = preload_bounds.maximum_by_contact_stress(stress, c_0, alpha)
    assert preload_bounds.contact_stress_estimate(f, c_0, alpha) == pytest.approx(stress)


def test_stress_rises_with_the_cube_root():
    assert preload_bounds.contact_stress_estimate(80.0, 1370.0, 15.0) == pytest.approx(
        2 * preload_bounds.contact_stress_estimate(10.0, 1370.0, 15.0)
    )
    for alpha in (0.0, 90.0):
        with pytest.raises(ValueError, match="contact_angle"):
            preload_bounds.contact_stress_estimate(10.0, 1370.0, alpha)
