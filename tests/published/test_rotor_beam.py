"""Beam elements with gyroscopic effect against printed rotors."""

import numpy as np
import pytest

from linter.mechanics.rotor_beam import critical_speeds
from linter.mechanics.rotor_text import Discs
from linter.mechanics.shaft import shaft

# Friswell, Penny, Garvey and Lees, Dynamics of Rotating Machines, Cambridge 2010, Examples 5.9.1 (p. 206), 5.9.2
# (p. 208) and 5.9.9 (p. 218), figures as carried in the tests of the open library ROSS (commit 631a249a): steel,
# E 211 GPa, G 81.2 GPa, 7810 kg/m3, shaft of 50 mm; discs of 70 mm width and 50 mm bore.
FRISWELL = [
    (0, 1e6, [86.66, 86.66, 274.31, 274.31, 716.78]),
    (4000, 1e6, [85.39, 87.80, 251.78, 294.71, 600.18]),
    (0, 0.8e6, [82.65, 254.52, 679.49]),
]
OVERHUNG = [76.19, 103.91, 565.99, 634.23, 647.75, 1174.2]


def friswell_disc(position, outside):
    """Disc of 7810 kg/m3 of the books' examples, m to mm."""
    mass = 7810 * np.pi / 4 * (outside**2 - 0.05**2) * 0.07
    polar = mass * (outside**2 + 0.05**2) / 8
    return position, mass, 1e6 * polar, 1e6 * (polar / 2 + mass * 0.07**2 / 12)


def whirls(s, discs, speed, printed):
    """The computed whirl nearest to the printed one [rad/s], of those that spin at the speed."""
    ratio = speed * np.pi / 30 / printed
    both = [critical_speeds(s, 7810, discs, sign * ratio, 6) for sign in (1, -1)]
    found = np.concatenate(both) * np.pi / 30
    return found[np.argmin(np.abs(found - printed))]


@pytest.mark.parametrize(("speed", "stiffness", "printed"), FRISWELL)
def test_two_discs_between_bearings(speed, stiffness, printed):
    discs = Discs(*np.array([friswell_disc(500, 0.28), friswell_disc(1000, 0.35)]).T)
    s = shaft([500, 500, 500], 50, 0, 1500, 211e3, 0, stiffness / 1e3, stiffness / 1e3, 81.2e3)
    for value in printed:
        assert whirls(s, discs, speed, value) == pytest.approx(value, rel=4e-4)


def test_overhung_disc_at_speed():
    discs = Discs(*np.array([friswell_disc(1500, 0.35)]).T)
    s = shaft([1000, 500], 50, 0, 1000, 211e3, 0, 1e4, 1e4, 81.2e3)
    for value in OVERHUNG:  # the book's mesh is coarser, which raises its last figure
        assert whirls(s, discs, 4000, value) == pytest.approx(value, rel=1e-3)


def test_stepped_rotor_of_nelson_and_mcvaugh():
    # ASME Journal of Engineering for Industry 98 (1976) 593-600; critical speeds from memory of it; without shear
    station = np.array([0, 1.27, 5.08, 7.62, 8.89, 10.16, 10.67, 11.43, 12.7, 13.46, 16.51, 19.05, 22.86, 26.67, 28.7,
                        30.48, 31.5, 34.54, 35.5])  # fmt: skip
    inner = np.array([0, 0, 0, 0, 0, 0, 1.52, 1.78, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1.52])
    outer = np.array([0.51, 1.02, 0.76, 2.03, 2.03, 3.3, 3.3, 2.54, 2.54, 1.27, 1.27, 1.52, 1.52, 1.27, 1.27, 3.81,
                      2.03, 2.03])  # fmt: skip
    s = shaft(10 * np.diff(station), 20 * outer, 165.1, 287.0, 207.8e3, 20 * inner, 43780, 43780)
    discs = Discs(*np.array([[88.9, 1.401, 2030, 1360]]).T)
    assert critical_speeds(s, 7806, discs, 1, 3) == pytest.approx([17159, 49983, 96457], rel=5e-3)
    assert critical_speeds(s, 7806, discs, -1, 3) == pytest.approx([15470, 46612, 64752], rel=5e-3)


def test_no_second_forward_critical_speed_of_a_rigid_body_thinner_than_long():
    # Cavicchi, NASA TN D-4607 (1968): none where the polar moment of inertia reaches the transverse one
    s = shaft([50], 60, 0, 50, 2e9, 0, 25e3, 25e3)
    discs = Discs(*np.array([[20, 0.12, 40, 26]]).T)
    assert critical_speeds(s, 0, discs)[0] == pytest.approx(191_703.6, rel=1e-5)
    assert np.isinf(critical_speeds(s, 0, discs)[1])
    assert critical_speeds(s, 0, discs, -1) == pytest.approx([180_674.4, 224_178.3], rel=1e-5)


def test_rigid_disc_on_two_springs():
    """Four degrees of freedom in closed form, polar inertia larger than transverse: one forward critical speed only."""
    discs = Discs(*np.array([[20.0, 0.12, 40.0, 26.0]]).T)
    s = shaft([50], 60, 0, 50, 206e7, 0, 25e3, 25e3, 79e7)  # as good as rigid, and without mass below
    forward, backward = critical_speeds(s, 1e-6, discs, 1), critical_speeds(s, 1e-6, discs, -1)
    assert forward[0] == pytest.approx(191703.6, rel=1e-5) and np.isinf(forward[1])
    assert backward == pytest.approx([180674.4, 224178.3], rel=1e-5)
