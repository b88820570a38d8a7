"""Ball bearing under axial load: free contact angle, deflection, stiffness, and the rigidly preloaded pair.

Lengths in mm, loads in N, angles in degrees, stiffness in N/mm, load-deflection constants in N/mm^1.5. Rigid rings;
steady loads; all functions broadcast over stations and solve by Newton's method over whole arrays.

The bearing is described by the distance A between the centres of curvature of the two grooves, its clearance (radial
internal clearance P_d, measured on the diameter) or free contact angle, its number of balls and the constant K_n of
the two contacts of one ball in series. Harris, Rolling Bearing Analysis, is the source of the model (from memory).
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain, hertz


class AxialBearing(NamedTuple):
    """What the axial solution needs of a bearing; every field is an array or a number, and they broadcast."""

    ball_count: ArrayLike
    groove_distance: ArrayLike
    free_contact_angle: ArrayLike
    stiffness_constant: ArrayLike


class AxialState(NamedTuple):
    """Bearing under pure axial load: angle [deg], deflection [mm], load of each ball [N], tangent stiffness [N/mm]."""

    contact_angle: NDArray[np.float64]
    deflection: NDArray[np.float64]
    ball_load: NDArray[np.float64]
    stiffness: NDArray[np.float64]


class PairState(NamedTuple):
    """Rigidly preloaded pair under an external axial load: shift [mm], loads of both bearings and the limit [N]."""

    preload_deflection: NDArray[np.float64]
    shift: NDArray[np.float64]
    loaded_force: NDArray[np.float64]
    unloaded_force: NDArray[np.float64]
    unloading_limit: NDArray[np.float64]


def groove_distance(
    ball_diameter: ArrayLike, inner_groove_ratio: ArrayLike, outer_groove_ratio: ArrayLike
) -> NDArray[np.float64]:
    """Distance between the centres of the groove radii with the ball touching both, A = (f_i + f_o − 1) D_w [mm].

    Raises ValueError unless ball_diameter > 0 [mm] and both groove ratios (radius over D_w) exceed 0.5.
    """
    d_w = domain.positive("ball diameter", ball_diameter)
    f_i, f_o = np.asarray(inner_groove_ratio, np.float64), np.asarray(outer_groove_ratio, np.float64)
    if np.any(f_i <= 0.5) or np.any(f_o <= 0.5):
        raise ValueError("groove radius over ball diameter must be greater than 0.5")
    return np.asarray((f_i + f_o - 1.0) * d_w)


def free_contact_angle(radial_clearance: ArrayLike, groove_distance: ArrayLike) -> NDArray[np.float64]:
    """Contact angle of the unloaded bearing from its clearance, cos α0 = 1 − P_d/(2A) [deg].

    Raises ValueError unless 0 <= radial_clearance <= 2·groove_distance (both mm): an interference has no free angle.
    """
    p_d, a = (
        np.asarray(radial_clearance, np.float64),
        domain.positive("distance of the groove centres", groove_distance),
    )
    if np.any((p_d < 0.0) | (p_d > 2.0 * a)):
        raise ValueError("radial clearance must lie between 0 and twice the distance of the groove centres")
    return np.asarray(np.rad2deg(2.0 * np.arcsin(np.sqrt(p_d / (4.0 * a)))))


def clearance_of_angle(contact_angle: ArrayLike, groove_distance: ArrayLike) -> NDArray[np.float64]:
    """Radial clearance that gives a free contact angle, P_d = 2A (1 − cos α0) [mm]; angle 0..90 deg, A in mm."""
    half = np.deg2rad(domain.contact_angle(contact_angle)) / 2.0
    return np.asarray(4.0 * domain.positive("distance of the groove centres", groove_distance) * np.sin(half) ** 2)


def free_endplay(contact_angle: ArrayLike, groove_distance: ArrayLike) -> NDArray[np.float64]:
    """Axial play from stop to stop of the unloaded bearing, 2A sin α0 [mm]; angle 0..90 deg, A in mm."""
    a = domain.positive("distance of the groove centres", groove_distance)
    return np.asarray(2.0 * a * np.sin(np.deg2rad(domain.contact_angle(contact_angle))))


def stiffness_constant(
    ball_diameter: ArrayLike,
    pitch_diameter: ArrayLike,
    contact_angle: ArrayLike,
    inner_groove_ratio: ArrayLike,
    outer_groove_ratio: ArrayLike,
    ball_modulus: ArrayLike,
    ball_poisson: ArrayLike,
    ring_modulus: ArrayLike,
    ring_poisson: ArrayLike,
) -> NDArray[np.float64]:
    """Constant K_n of Q = K_n δ^1.5 for the inner and outer contact of one ball together [N/mm^1.5].

    K_n = (K_i^(−2/3) + K_o^(−2/3))^(−3/2) with the exact Hertz constants at ``contact_angle``. Sizes in mm, moduli in
    MPa. Errors as `hertz.race_curvatures` and `hertz.effective_modulus`.
    """
    e_prime = hertz.effective_modulus(ball_modulus, ball_poisson, ring_modulus, ring_poisson)
    inner = hertz.race_curvatures(ball_diameter, pitch_diameter, contact_angle, inner_groove_ratio, "inner")
    outer = hertz.race_curvatures(ball_diameter, pitch_diameter, contact_angle, outer_groove_ratio, "outer")
    approach = hertz.point_contact(1.0, *inner, e_prime).approach + hertz.point_contact(1.0, *outer, e_prime).approach
    return np.asarray(approach**-1.5)


def catalogue_stiffness_constant(ball_diameter: ArrayLike, coefficient: float = 0.00044) -> NDArray[np.float64]:
    """K_n from the catalogue law δ = c (Q²/D_w)^(1/3) for both contacts of a steel ball [N/mm^1.5].

    ``coefficient`` c = 0.00044 in N and mm is the value of NSK, Rolling Bearings CAT. E1102m, 15.1.
    """
    return np.asarray(np.sqrt(domain.positive("ball diameter", ball_diameter)) / coefficient**1.5)


def axial_force(deflection: ArrayLike, bearing: AxialBearing) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Axial force [N] and tangent stiffness [N/mm] at an axial deflection [mm] from the free position.

    A deflection of 0 or less gives no force. Shapes broadcast. Errors as `axial_load`.
    """
    z, a = (
        domain.ball_count(bearing.ball_count),
        domain.positive("distance of the groove centres", bearing.groove_distance),
    )
    k_n = domain.positive("load-deflection constant", bearing.stiffness_constant)
    sin_0 = np.sin(np.deg2rad(domain.contact_angle(bearing.free_contact_angle)))
    delta = np.maximum(np.asarray(deflection, dtype=np.float64), 0.0)
    s, length = _stretch(delta, a, sin_0)
    sine = (a * sin_0 + delta) / length
    root = np.sqrt(s)
    force = z * k_n * s * root * sine
    return force, z * k_n * root * (1.5 * sine**2 + s / length * (1.0 - sine**2))


def _stretch(
    delta: NDArray[np.float64], a: NDArray[np.float64], sin_0: NDArray[np.float64]
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Growth of the distance of the groove centres by an axial deflection, and the new distance."""
    growth = delta * (delta + 2.0 * a * sin_0)
    length = np.sqrt(a**2 + growth)
    return growth / (length + a), length


def axial_load(load: ArrayLike, bearing: AxialBearing) -> AxialState:
    """Contact angle, deflection, ball load and stiffness under a centric axial load.

    Solves F_a = Z K_n s^1.5 sin α with s = A (cos α0/cos α − 1), written in the axial deflection so that a free angle
    of zero is no special case.

    Parameters
    ----------
    load
        Axial load, N, >= 0.
    bearing
        Ball count 2..200, groove distance A [mm] > 0, free contact angle 0..90 deg (below 90), K_n [N/mm^1.5] > 0;
        shapes broadcast with the load.

    Returns
    -------
    AxialState
        Contact angle [deg], deflection [mm], ball load [N] and stiffness [N/mm] of the broadcast shape.

    Raises
    ------
    ValueError
        An argument outside its range.

    """
    f, z = domain.not_negative("axial load", load), domain.ball_count(bearing.ball_count)
    a = domain.positive("distance of the groove centres", bearing.groove_distance)
    k_n = domain.positive("load-deflection constant", bearing.stiffness_constant)
    alpha_0 = np.deg2rad(domain.contact_angle(bearing.free_contact_angle))
    f, z, a, k_n, alpha_0 = np.broadcast_arrays(f, z, a, k_n, alpha_0)
    sin_0 = np.sin(alpha_0)
    target = np.where(f > 0.0, f, 1.0)
    # A start above the root: the larger of the small- and the large-deflection laws.
    approach = (target / (z * k_n * np.maximum(sin_0, 0.1))) ** (2.0 / 3.0)
    x = np.log(approach / np.maximum(sin_0, 0.1))
    for _ in range(60):
        force, stiffness = axial_force(np.exp(x), AxialBearing(z, a, np.rad2deg(alpha_0), k_n))
        step = np.log(force / target) * force / (stiffness * np.exp(x))
        x = x - step
        if not np.any(np.abs(step) > 1e-13):
            break
    delta = np.where(np.isnan(f), np.nan, np.where(f > 0.0, np.exp(x), 0.0))
    _, stiffness = axial_force(delta, AxialBearing(z, a, np.rad2deg(alpha_0), k_n))
    s, _ = _stretch(delta, a, sin_0)
    alpha = np.arctan2(a * sin_0 + delta, a * np.cos(alpha_0))
    return AxialState(np.rad2deg(alpha), delta, k_n * s**1.5, stiffness)


def preloaded_pair(
    preload: ArrayLike, external_load: ArrayLike, loaded: AxialBearing, unloaded: AxialBearing
) -> PairState:
    """Rigidly preloaded pair of bearings under an external axial load.

    Parameters
    ----------
    preload
        Axial preload of the pair, N, > 0.
    external_load
        External axial load, N, >= 0, pointing so that it adds to the load of the bearing ``loaded``.
    loaded, unloaded
        The two bearings (`AxialBearing`); they may differ.

    Returns
    -------
    PairState
        Deflection of the loaded bearing by the preload alone; shift by the external load; the two bearing loads; and
        the external load at which the second bearing loses contact. Above that limit the first bearing carries it all.

    Raises
    ------
    ValueError
        An argument outside its range.

    Notes
    -----
    F1(δ1 + x) − F2(δ2 − x) = F_ext, by Newton steps kept inside the bracket 0 <= x <= δ2.

    """
    f_p, f_x = domain.positive("preload", preload), domain.not_negative("external axial load", external_load)
    d_1, d_2 = axial_load(f_p, loaded).deflection, axial_load(f_p, unloaded).deflection
    limit = axial_force(d_1 + d_2, loaded)[0]
    f_x, d_1, d_2, limit = np.broadcast_arrays(f_x, d_1, d_2, limit)
    lifted = f_x >= limit
    low, high = np.zeros_like(d_2), d_2.copy()
    x = d_2 * np.minimum(f_x / limit, 1.0)
    for _ in range(80):
        f_1, k_1 = axial_force(d_1 + x, loaded)
        f_2, k_2 = axial_force(d_2 - x, unloaded)
        residual = f_1 - f_2 - f_x
        low, high = np.where(residual <= 0.0, x, low), np.where(residual >= 0.0, x, high)
        new = x - residual / (k_1 + k_2)
        new = np.where((new < low) | (new > high), 0.5 * (low + high), new)
        step, x = new - x, new
        if not np.any((np.abs(step) > 1e-14 * d_2) & ~lifted):
            break
    alone = axial_load(np.where(lifted, f_x, 0.0), loaded)
    x = np.where(lifted, alone.deflection - d_1, x)
    first = np.where(lifted, f_x, axial_force(d_1 + x, loaded)[0])
    second = np.where(lifted, 0.0, axial_force(d_2 - x, unloaded)[0])
    return PairState(d_1, x, first, second, limit)


def chord_stiffness(
    load_1: ArrayLike, load_2: ArrayLike, deflection_1: ArrayLike, deflection_2: ArrayLike
) -> NDArray[np.float64]:
    """Stiffness between two points of a load-deflection curve, (F2 − F1)/(δ2 − δ1) [N/mm for N and mm].

    Raises ValueError if the two deflections are equal.
    """
    change = np.asarray(deflection_2, np.float64) - np.asarray(deflection_1, np.float64)
    if np.any(change == 0.0):
        raise ValueError("the two points of a chord must have different deflections")
    return np.asarray((np.asarray(load_2, np.float64) - np.asarray(load_1, np.float64)) / change)
