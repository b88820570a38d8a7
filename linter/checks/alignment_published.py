"""Chapter alignment, met up to the loosest published value; the tightest one is told."""

from linter.checks.alignment import coaxiality_of, form, roughness_of, tilt_of
from linter.checks.shared.base import Limits, Result, View


def cylindricity(view: View, limits: Limits) -> Result:
    """Cylindricity of the seats, met up to the loosest published value for the tolerance class."""
    return form(view, limits, "cylindricity", published=True)


def seat_runout(view: View, limits: Limits) -> Result:
    """Total radial run-out of the seats, met up to the loosest published value for the tolerance class."""
    return form(view, limits, "runout", published=True)


def shoulder_runout(view: View, limits: Limits) -> Result:
    """Axial run-out of the abutments that a ring bears on, met up to the loosest published value for the class."""
    return form(view, limits, "shoulder_runout", published=True)


def coaxiality(view: View, limits: Limits) -> Result:
    """Coaxiality of the shaft seats and of the bores, met up to the loosest published value for the class."""
    return coaxiality_of(view, limits, published=True)


def tilt(view: View, limits: Limits) -> Result:
    """Angle between the axes of the two rings, met up to the far end of what is printed for the type."""
    return tilt_of(view, limits, published=True)


def tilt_at_abutments(view: View, limits: Limits) -> Result:
    """The same; a face that no ring bears on tilts none."""
    return tilt_of(view, limits, published=True, every_face=False)


def tilt_with_line(view: View, limits: Limits) -> Result:
    """The same; a described rotor tilts the rings by the slope of its own shaft."""
    return tilt_of(view, limits, published=True, every_face=False, by_line=True)


def roughness(view: View, limits: Limits) -> Result:
    """Roughness Ra of the seats, met up to the roughest published value for size and class."""
    return roughness_of(view, limits, published=True)
