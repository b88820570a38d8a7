"""Shared quantities of the contacts: clearance and contact angle in use, contact constants, bearing under axial load.

Lengths in mm, forces in N, angles in degrees, pressures in MPa; arrays of shape (rows,), NaN where not known.
"""

from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, View, shared, within
from linter.checks.shared.clearance import delivered_clearance
from linter.checks.shared.quantities import (
    ball_count,
    ball_diameter,
    contact_angle,
    is_ball,
    pitch_diameter,
    static_load_rating,
)
from linter.checks.shared.seat_fits import housing_fit, of_material, shaft_fit
from linter.mechanics import ball_bearing, fit_in_use, hertz, materials, preload_bounds
from linter.model.stations import Bools, Floats

#: Free contact angle [deg] that stands in for a deep groove bearing whose clearance or geometry is not known: the usual
#: range for group CN is 10 to 15 (common practice; 12.9 for a 608 with 0.010 mm).
USUAL_ANGLE = 12.0


@frozen(eq=False)
class Contact:
    """Contact of the balls before any load.

    Attributes
    ----------
    clearance : float array
        Radial clearance in use of a deep groove bearing [mm]: before mounting, less fits and temperature.
    free_angle : float array
        Contact angle without load [deg].
    distance : float array
        Distance of the groove centres A [mm].
    constant : float array
        K_n of inner and outer contact together [N/mm^1.5].
    pressure : float array
        Mean pressure of the inner contact at 1 N [MPa]; it rises with the cube root of the load.
    exact : bool array
        Rows whose internal geometry is known.
    assumed : tuple of Assumes
        What stood in for unstated values.
    """

    clearance: Floats
    free_angle: Floats
    distance: Floats
    constant: Floats
    pressure: Floats
    exact: Bools
    assumed: tuple[Assumes, ...]


@frozen(eq=False)
class Losses:
    """Radial clearance that fits and a hotter inner ring take away on the mean [mm]; NaN where not known."""

    fits: Floats
    heat: Floats


@shared
def clearance_losses(view: View) -> Losses:
    """Mean loss of radial clearance by fits and temperature.

    A raceway follows an interference U as d/F on a solid shaft and E/D in a thick housing of the ring's own modulus
    (Lamé, F and E the raceway diameters); a loose ring leaves the clearance alone.
    """
    s = view.stations
    bore, outside = within(s.number("bore_diameter")), within(s.number("outside_diameter"))
    outside = np.where(outside > bore, outside, np.nan)
    inner_race, outer_race = fit_in_use.mean_raceway_diameters(bore, outside, "plain")
    fits = np.maximum(shaft_fit(view).mean, 0.0) * bore / inner_race
    fits = fits + np.maximum(housing_fit(view).mean, 0.0) * outer_race / outside
    ring = of_material(s.choice("ring_material"), materials.expansion, unstated="bearing steel")
    hotter = s.number("shaft_temperature") - s.number("housing_temperature")
    heat = fit_in_use.clearance_heat_loss(ring, hotter, outer_race)
    return Losses(fits / 1000.0, heat)


@shared
def contact_modulus(view: View) -> Floats:
    """Effective modulus E' of balls on rings [MPa]; steel balls and bearing steel rings where nothing is stated."""
    balls, rings = view.stations.choice("ball_material"), view.stations.choice("ring_material")
    return hertz.effective_modulus(
        of_material(balls, materials.elastic_modulus, ball=True, unstated="steel"),
        of_material(balls, materials.poisson_ratio, ball=True, unstated="steel"),
        of_material(rings, materials.elastic_modulus, unstated="bearing steel"),
        of_material(rings, materials.poisson_ratio, unstated="bearing steel"),
    )


@shared
def contact(view: View) -> Contact:
    """Free contact angle and Hertz constants of ball bearings.

    The free angle is the nominal one of an angular contact bearing; of a deep groove bearing it follows from the
    clearance in use, cos α_0 = 1 - G_r/(2 A). Contact constants by exact Hertz at that angle.
    """
    s = view.stations
    d_w, d_pw, z = ball_diameter(view), pitch_diameter(view), ball_count(view)
    z = np.where(z == np.floor(z), within(z, 2.0, 200.0, closed=True), np.nan)
    inner, outer = (within(s.number(f"{race}_groove_ratio"), 0.5) for race in ("inner", "outer"))
    deep = s.choice("bearing_type").is_in("deep groove ball")
    low, high = delivered_clearance(view)
    losses = clearance_losses(view)
    before = within(0.5 * (low + high) / 1000.0, closed=True)
    running = before - np.nan_to_num(losses.fits) - np.nan_to_num(losses.heat)
    running = np.where(deep, np.maximum(running, 0.0), np.nan)
    distance = ball_bearing.groove_distance(d_w, inner, outer)
    by_clearance = ball_bearing.free_contact_angle(np.where(running <= 2.0 * distance, running, np.nan), distance)
    stands_in = deep & np.isnan(by_clearance)
    free = np.where(deep, np.where(stands_in, USUAL_ANGLE, by_clearance), contact_angle(view))
    balls = np.array([*s.choice("ball_material").words, "steel"], dtype=object)[s.choice("ball_material").codes]
    ready = ~np.isnan(d_w + d_pw + z + inner + outer + free) & is_ball(view)
    constant, pressure = (np.full(view.count, np.nan) for _ in range(2))
    if ready.any():
        modulus = contact_modulus(view)[ready]
        sides = [
            hertz.point_contact(
                1.0, *hertz.race_curvatures(d_w[ready], d_pw[ready], free[ready], groove[ready], race), modulus
            )
            for race, groove in (("inner", inner), ("outer", outer))
        ]
        constant[ready] = (sides[0].approach + sides[1].approach) ** -1.5
        pressure[ready] = np.maximum(sides[0].mean_pressure, sides[1].mean_pressure)
    ball = is_ball(view)
    return Contact(
        running, free, distance, constant, pressure, ready,
        assumed=(
            Assumes(
                "contact_angle", free, "deg",
                "clearance or internal geometry not stated; the usual angle of a deep groove bearing stands in",
                stands_in,
            ),
            Assumes(
                "radial_clearance", 1000.0 * running, "um",
                "seats or tolerance class not stated; the clearance before mounting stands in for the one in use",
                deep & ~stands_in & np.isnan(losses.fits),
            ),
            Assumes("ball_material", balls, "", "not stated; steel stands in", ball & ~s.choice("ball_material").known),
            *(
                Assumes(
                    name, np.full(view.count, "by static_rating", dtype=object), "",
                    "not stated; load and stress of the contacts are estimated from the static rating",
                    ball & ~s.known(name),
                )
                for name in ("ball_count", "ball_diameter")
            ),
        ),
    )  # fmt: skip


def stress_wants(view: View) -> dict[str, Bools]:
    """Parameters wanted for the contact stress of ball bearings.

    Without a contact angle there is no estimate from C_0, and the number of balls is wanted.
    """
    at, known = contact(view), view.stations.known("ball_count")
    return {
        "contact_angle": is_ball(view) & np.isnan(at.free_angle),
        "ball_count": is_ball(view) & (at.free_angle == 0.0) & ~at.exact & ~known,
    }


def under_load(view: View, force: Floats, rows: Bools | None = None) -> ball_bearing.AxialState:
    """Bearing under a pure axial load [N]: angle, deflection, ball load and stiffness, NaN where geometry is unknown.

    Parameters
    ----------
    view : View
        The stations.
    force : float array, shape (rows,)
        Axial load.
    rows : bool array, optional
        Rows to solve; all where absent.

    Returns
    -------
    AxialState
        Arrays of shape (rows,); NaN in rows that are not solved.
    """
    at = contact(view)
    ready = at.exact & (force >= 0.0)
    if rows is not None:
        ready &= rows
    found = np.full((4, view.count), np.nan)
    if ready.any():
        bearing = bearing_of(view, ready)
        found[:, ready] = ball_bearing.axial_load(force[ready], bearing)
    return ball_bearing.AxialState(*found)


def bearing_of(view: View, rows: NDArray[Any]) -> ball_bearing.AxialBearing:
    """What the axial solution needs of some rows."""
    at = contact(view)
    return ball_bearing.AxialBearing(ball_count(view)[rows], at.distance[rows], at.free_angle[rows], at.constant[rows])


def force_at_stress(view: View, mean_pressure: float) -> Floats:
    """Axial force [N] that brings the mean contact pressure to a value [MPa].

    Exact Hertz with the angle under that load where the geometry is known; else from C_0 by the definition of the
    static rating, corrected for the modulus of the balls.
    """
    at = contact(view)
    ball_load = (mean_pressure / at.pressure) ** 3
    stretch = (ball_load / at.constant) ** (2.0 / 3.0)
    cosine = at.distance * np.cos(np.deg2rad(at.free_angle)) / (at.distance + stretch)
    exact = ball_count(view) * ball_load * np.sqrt(1.0 - cosine**2)
    estimate = preload_bounds.maximum_by_contact_stress(
        mean_pressure / stiffer(view), static_load_rating(view).value, within(at.free_angle, 0.0, 89.0)
    )
    return np.where(at.exact, exact, np.where(is_ball(view), estimate, np.nan))


@shared
def stiffer(view: View) -> Floats:
    """Pressure of a contact with these balls over that with steel balls under one load, (E'/E'_steel)^(2/3)."""
    balls = view.stations.choice("ball_material")
    steel = materials.elastic_modulus("bearing steel"), materials.poisson_ratio("bearing steel")
    both = hertz.effective_modulus(
        of_material(balls, materials.elastic_modulus, ball=True, unstated="steel"),
        of_material(balls, materials.poisson_ratio, ball=True, unstated="steel"),
        *steel,
    )
    return (both / hertz.effective_modulus(*steel, *steel)) ** (2.0 / 3.0)


def stress_at(view: View, force: Floats, state: ball_bearing.AxialState) -> Floats:
    """Mean contact pressure [MPa] under an axial force: exact Hertz, else the estimate from C_0."""
    at = contact(view)
    angle = within(at.free_angle, 0.0, 89.0)
    estimate = preload_bounds.contact_stress_estimate(within(force, closed=True), static_load_rating(view).value, angle)
    estimate = np.where(is_ball(view), estimate * stiffer(view), np.nan)
    return np.where(at.exact, at.pressure * np.cbrt(state.ball_load), estimate)
