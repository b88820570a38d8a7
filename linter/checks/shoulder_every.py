"""Chapter shoulder, of every shoulder that is there: beside a free ring too, where the table states any part of it."""

from linter.checks.shared.base import Limits, Result, View
from linter.checks.shared.two_sides import shoulder_there
from linter.checks.shoulder import fillet_of, other_ring_of


def fillet(view: View, limits: Limits) -> Result:
    """Fillet radii, met up to the largest one that is printed for the ring chamfer; 0 stands for an undercut."""
    return fillet_of(view, limits, published=True, wanted=shoulder_there(view))


def other_ring(view: View, limits: Limits) -> Result:
    """Radial gap between each abutment and the land of the other ring."""
    return other_ring_of(view, limits, shoulder_there(view))
