"""The half section is to scale, and each leader starts on the feature that it names: measured back from the drawing."""

import re
import xml.etree.ElementTree as ET

import numpy as np
import pytest

from linter.report.drawings.half_section import half_section

VALUES = {
    "bore_diameter": 40.0, "outside_diameter": 90.0, "ring_width": 23.0, "ring_chamfer": 1.5, "pitch_diameter": 65.0,
    "ball_diameter": 15.0, "inner_ring_shoulder_diameter": 56.0, "outer_ring_shoulder_diameter": 75.0,
    "shaft_shoulder_diameter": 50.0, "housing_shoulder_diameter": 80.0, "shaft_fillet_radius": 1.0,
    "housing_fillet_radius": 1.2, "axial_role": "locating",
}  # fmt: skip
NUMBER = r"-?\d+(?:\.\d+)?"


class Measured:
    """A drawing and the way back to millimetres: across from the left face of the ring, up from the axis."""

    def __init__(self, marked: str) -> None:
        self.root = ET.fromstring(str(half_section(VALUES, {marked: (1,)})))
        bore, outside = (float(e.get("y1")) for e in self.root.iter("line") if e.get("x1") == "40")
        self.scale = (bore - outside) / 25.0
        self.axis = bore + 20.0 * self.scale
        rings = [e.get("d") for e in self.root.iter("path") if e.get("class") == "part"]
        self.rings = [
            [(float(x), float(y)) for x, y in re.findall(rf"({NUMBER}) ({NUMBER})(?= [A-Z]|$)", d)] for d in rings
        ]
        self.left = min(x for x, _ in self.rings[0])

    def radii(self, ring: int) -> set[float]:
        """Radii at the corners of a ring [mm], to a tenth."""
        return {round((self.axis - y) / self.scale, 1) for _, y in self.rings[ring]}

    def dot(self) -> tuple[float, float]:
        """Where the leader starts [mm]."""
        (dot,) = (e for e in self.root.iter("circle") if e.get("class") == "dot")
        return (float(dot.get("cx")) - self.left) / self.scale, (self.axis - float(dot.get("cy"))) / self.scale


def test_rings_are_drawn_at_their_sizes():
    drawn = Measured("ring_width")
    assert max(x for x, _ in drawn.rings[0]) - drawn.left == pytest.approx(23.0 * drawn.scale, abs=0.2)
    assert {20.0, 28.0} <= drawn.radii(0) and max(drawn.radii(0)) == 28.0  # bore and land of the inner ring
    assert {45.0, 37.5} <= drawn.radii(1) and min(drawn.radii(1)) == 37.5


@pytest.mark.parametrize(
    ("name", "corner", "inwards", "radius"),
    [("shaft_fillet_radius", (0.0, 20.0), (1, 1), 1.0), ("housing_fillet_radius", (23.0, 45.0), (-1, -1), 1.2)],
)
def test_the_leader_of_a_fillet_starts_on_its_arc(name, corner, inwards, radius):
    centre = np.array(corner) + radius * np.array(inwards)
    off = np.array(Measured(name).dot()) - centre
    assert np.hypot(*off) == pytest.approx(radius, abs=0.1)
    assert np.all(off * np.array(inwards) < 0)  # on the side of the corner


@pytest.mark.parametrize(
    ("name", "radius"),
    [
        ("inner_ring_shoulder_diameter", 28.0), ("outer_ring_shoulder_diameter", 37.5), ("bore_diameter", 20.0),
        ("outside_diameter", 45.0), ("shaft_seat_diameter", 20.0), ("housing_seat_diameter", 45.0),
    ],
)  # fmt: skip
def test_the_leader_of_a_diameter_starts_on_it(name, radius):
    across, up = Measured(name).dot()
    assert up == pytest.approx(radius, abs=0.05)
    assert 0.0 <= across <= 23.0


@pytest.mark.parametrize(
    ("name", "face", "low", "high"),
    [("shaft_shoulder_diameter", 0.0, 20.0, 25.0), ("housing_shoulder_diameter", 23.0, 40.0, 45.0)],
)
def test_the_leader_of_a_shoulder_starts_on_its_face(name, face, low, high):
    across, up = Measured(name).dot()
    assert across == pytest.approx(face, abs=0.05)
    assert low < up < high
