"""Shaft, rings and housing of a seat as bodies of a press fit, with what stands in for what the table leaves out."""

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Assumes, Limits, View, shared, within
from linter.checks.shared.seat_fits import (
    of_material,
)
from linter.mechanics import fit_in_use, materials, press_fit
from linter.model.stations import Floats

RING_MATERIAL = "bearing steel"


LARGEST = 1e5
"""mm; a diameter beyond it is no diameter."""


@frozen(eq=False)
class Body:
    """Elastic and thermal constants of one part, arrays of shape (rows,): 1/K, MPa, 1, kg/m3."""

    expansion: Floats
    modulus: Floats
    poisson: Floats
    density: Floats


@shared
def ring_body(view: View) -> Body:
    """The bearing rings; bearing steel where no ring material is stated (see :func:`ring_assumed`)."""
    kind = view.stations.choice("ring_material")
    constants = []
    for constant in (materials.expansion, materials.elastic_modulus, materials.poisson_ratio, materials.density):
        values = of_material(kind, constant)
        constants.append(np.where(kind.known, values, float(constant(RING_MATERIAL))))
    return Body(*constants)


def ring_assumed(view: View) -> Assumes:
    """The assumption behind :func:`ring_body`."""
    return Assumes(
        "ring_material",
        np.full(view.count, RING_MATERIAL, dtype=object),
        "",
        f"not stated; {RING_MATERIAL} stands in",
        ~view.stations.choice("ring_material").known,
    )


@shared
def shaft_body(view: View) -> Body:
    """The shaft at the seats; NaN where its material is not stated."""
    kind = view.stations.choice("shaft_material")
    return Body(
        of_material(kind, materials.expansion),
        of_material(kind, materials.elastic_modulus),
        of_material(kind, materials.poisson_ratio),
        of_material(kind, materials.density),
    )


@shared
def housing_body(view: View) -> Body:
    """The housing at the seats; NaN where its material is not stated."""
    kind = view.stations.choice("housing_material")
    return Body(
        of_material(kind, materials.expansion),
        of_material(kind, materials.elastic_modulus),
        of_material(kind, materials.poisson_ratio),
        of_material(kind, materials.density),
    )


@shared
def diameters(view: View) -> tuple[Floats, Floats]:
    """Bore and outside diameter [mm] where 0 < d < D, else NaN."""
    s = view.stations
    bore, outside = (within(s.number(name), high=LARGEST) for name in ("bore_diameter", "outside_diameter"))
    fits = outside > bore
    return np.where(fits, bore, np.nan), np.where(fits, outside, np.nan)


@shared
def shaft_hole(view: View) -> Floats:
    """Bore of a hollow shaft [mm] where it leaves a wall; 0 (solid) where none is stated."""
    hole = view.stations.number("shaft_bore")
    sound = (hole >= 0) & (hole < view.stations.number("bore_diameter"))
    return np.where(np.isnan(hole), 0.0, np.where(sound, hole, np.nan))


def hole_assumed(view: View) -> Assumes:
    """The assumption behind :func:`shaft_hole`."""
    return Assumes(
        "shaft_bore",
        np.zeros(view.count),
        "mm",
        "not stated; a solid shaft stands in",
        np.isnan(view.stations.number("shaft_bore")),
    )


@shared
def shaft_heat(view: View) -> Floats:
    """Steady temperature of shaft and inner ring [degC]; that of the bearing where it is not stated."""
    s = view.stations
    own = s.number("shaft_temperature")
    return np.where(np.isnan(own), s.number("operating_temperature"), own)


@shared
def ring_speed(view: View) -> Floats:
    """Highest speed of an inner ring that is stated to turn [r/min]; 0 where it is not."""
    turns = view.stations.choice("rotating_ring").is_in("inner")
    return np.where(turns, within(view.stations.number("speed_max"), closed=True, high=1e7), 0.0)


@shared
def rotation_loss(view: View) -> Floats:
    """Interference that the inner ring loses by turning at the highest speed [um]; 0 where it stands still."""
    s = view.stations
    bore, outside = diameters(view)
    raceway, _ = fit_in_use.mean_raceway_diameters(bore, outside, "groove")
    shaft, ring = shaft_body(view), ring_body(view)
    loss = 1000.0 * press_fit.rotation_interference_loss(
        bore, shaft_hole(view), raceway, within(s.number("speed_max"), closed=True, high=1e7),
        shaft.density, shaft.modulus, shaft.poisson, ring.density, ring.modulus, ring.poisson,
    )  # fmt: skip
    return np.where(s.choice("rotating_ring").is_in("outer"), 0.0, loss)


@shared
def shaft_thermal(view: View) -> Floats:
    """Change of the inner ring's interference at running temperature [um]: shaft and ring expand differently."""
    heat = shaft_heat(view)
    bore, _ = diameters(view)
    return 1000.0 * press_fit.thermal_interference_change(
        bore, shaft_body(view).expansion, heat, ring_body(view).expansion, heat
    )


def smoothing(view: View, limits: Limits, unknown: str) -> Floats:
    """Share of the inner ring's interference left after smoothing; ``unknown`` finish where no Ra is stated."""
    bore, _ = diameters(view)
    rough = view.stations.number("shaft_seat_roughness")
    turned = np.where(np.isnan(rough), unknown == "turned", rough > limits["ground_up_to"])
    return fit_in_use.smoothing_factor(bore, np.where(turned, "turned", "ground"))


def roughness_assumed(view: View, unknown: str) -> Assumes:
    """The assumption behind :func:`smoothing`."""
    return Assumes(
        "shaft_seat_roughness",
        np.full(view.count, unknown, dtype=object),
        "",
        f"not stated; a {unknown} seat stands in",
        np.isnan(view.stations.number("shaft_seat_roughness")),
    )


def smoothed(interference: Floats, share: Floats) -> Floats:
    """Interference after smoothing; a clearance stays as it is."""
    return np.where(interference > 0, share * interference, interference)
