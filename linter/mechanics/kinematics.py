"""Speeds and inertia forces in a ball bearing, and how they part the inner and outer contact angles.

Lengths in mm, speeds in r/min, masses in kg, densities in kg/m³, forces in N, moments in N·mm, angles in degrees. All
functions broadcast. Rolling without slip; γ = D_w cos α / D_pw.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain


class Speeds(NamedTuple):
    """Speeds in r/min: cage, ball about its own axis, balls passing a point of the outer and of the inner ring."""

    cage: NDArray[np.float64]
    ball_spin: NDArray[np.float64]
    outer_pass: NDArray[np.float64]
    inner_pass: NDArray[np.float64]


class SplitAngles(NamedTuple):
    """Contact angles [deg], ball loads [N] at inner and outer race, axial displacement from the free position [mm]."""

    inner_angle: NDArray[np.float64]
    outer_angle: NDArray[np.float64]
    inner_load: NDArray[np.float64]
    outer_load: NDArray[np.float64]
    axial_deflection: NDArray[np.float64]


def diameter_ratio(
    ball_diameter: ArrayLike, pitch_diameter: ArrayLike, contact_angle: ArrayLike = 0.0
) -> NDArray[np.float64]:
    """Ratio γ = D_w cos α / D_pw.

    Raises ValueError unless both diameters are positive and the ratio lies below 1.
    """
    d_w, d_pw = domain.positive("ball diameter", ball_diameter), domain.positive("pitch diameter", pitch_diameter)
    gamma = d_w * np.cos(np.deg2rad(contact_angle)) / d_pw
    if np.any(gamma >= 1.0):
        raise ValueError("ball diameter x cos(contact angle) must be smaller than the pitch diameter")
    return np.asarray(gamma)


def speeds(
    inner_speed: ArrayLike,
    ball_count: ArrayLike,
    ball_diameter: ArrayLike,
    pitch_diameter: ArrayLike,
    contact_angle: ArrayLike = 0.0,
    outer_speed: ArrayLike = 0.0,
) -> Speeds:
    """Cage speed, ball spin and ball pass rates.

    Parameters
    ----------
    inner_speed, outer_speed
        Speeds of the rings, r/min, with sign.
    ball_count
        Number of balls, > 0.
    ball_diameter, pitch_diameter, contact_angle
        mm, mm, deg; γ < 1.

    Returns
    -------
    Speeds
        r/min (the pass rates in balls per minute); the spin and the pass rates without sign. A defect on a ball meets a
        race twice per turn of the ball.

    Raises
    ------
    ValueError
        A size out of range.

    Notes
    -----
    n_m = n_i (1 − γ)/2 + n_o (1 + γ)/2; n_b = D_pw/(2 D_w) (1 − γ²)|n_i − n_o| with γ² of the angle.
    Source: Harris, Rolling Bearing Analysis (from memory).

    """
    gamma, z = (
        diameter_ratio(ball_diameter, pitch_diameter, contact_angle),
        domain.positive("number of balls", ball_count),
    )
    n_i, n_o = np.asarray(inner_speed, dtype=np.float64), np.asarray(outer_speed, dtype=np.float64)
    ratio = np.asarray(pitch_diameter, dtype=np.float64) / np.asarray(ball_diameter, dtype=np.float64)
    cage = 0.5 * n_i * (1.0 - gamma) + 0.5 * n_o * (1.0 + gamma)
    spin = 0.5 * ratio * (1.0 - gamma**2) * np.abs(n_i - n_o)
    return Speeds(
        np.asarray(cage), np.asarray(spin), np.asarray(z * np.abs(n_o - cage)), np.asarray(z * np.abs(n_i - cage))
    )


def ball_mass(ball_diameter: ArrayLike, density: ArrayLike) -> NDArray[np.float64]:
    """Mass of a ball, π/6 ρ D_w³ [kg]; D_w in mm, ρ in kg/m³, both > 0 (ValueError)."""
    d_w, rho = domain.positive("ball diameter", ball_diameter), domain.positive("density", density)
    return np.asarray(np.pi / 6.0 * rho * d_w**3 * 1e-9)


def centrifugal_force(
    ball_diameter: ArrayLike, pitch_diameter: ArrayLike, cage_speed: ArrayLike, density: ArrayLike
) -> NDArray[np.float64]:
    """Centrifugal force of one ball, m (D_pw/2) ω_m² [N].

    Diameters in mm (> 0), cage speed in r/min, density in kg/m³ (> 0); ValueError otherwise.
    """
    omega = np.asarray(cage_speed, dtype=np.float64) * np.pi / 30.0
    radius = 0.5e-3 * domain.positive("pitch diameter", pitch_diameter)
    return np.asarray(ball_mass(ball_diameter, density) * radius * omega**2)


def pitch_angle(
    ball_diameter: ArrayLike, pitch_diameter: ArrayLike, outer_contact_angle: ArrayLike
) -> NDArray[np.float64]:
    """Angle between the ball's own axis and the bearing axis when the outer race controls the ball [deg].

    tan β = sin α_o / (cos α_o + D_w/D_pw). Source: Harris, Rolling Bearing Analysis, outer raceway control (from
    memory). Diameters in mm, > 0 (ValueError); angle in deg.
    """
    ratio = domain.positive("ball diameter", ball_diameter) / domain.positive("pitch diameter", pitch_diameter)
    alpha = np.deg2rad(outer_contact_angle)
    return np.asarray(np.rad2deg(np.arctan2(np.sin(alpha), np.cos(alpha) + ratio)))


def gyroscopic_moment(
    ball_diameter: ArrayLike,
    ball_spin: ArrayLike,
    cage_speed: ArrayLike,
    axis_angle: ArrayLike,
    density: ArrayLike,
) -> NDArray[np.float64]:
    """Gyroscopic moment of one ball, J ω_b ω_m sin β with J = m D_w²/10 [N·mm].

    Parameters
    ----------
    ball_diameter
        mm, > 0.
    ball_spin, cage_speed
        r/min (`speeds`).
    axis_angle
        β, deg: `pitch_angle`, or the contact angle as the common upper estimate.
    density
        kg/m³, > 0.

    Returns
    -------
    ndarray
        N·mm, of the broadcast shape.

    Raises
    ------
    ValueError
        Diameter or density not positive.

    Notes
    -----
    Source: Harris, Rolling Bearing Analysis (from memory).

    """
    omega_b, omega_m = np.asarray(ball_spin, np.float64) * np.pi / 30.0, np.asarray(cage_speed, np.float64) * np.pi / 30
    inertia = ball_mass(ball_diameter, density) * (1e-3 * np.asarray(ball_diameter, dtype=np.float64)) ** 2 / 10.0
    return np.asarray(1e3 * inertia * omega_b * omega_m * np.sin(np.deg2rad(axis_angle)))


def gyroscopic_slip_ratio(
    moment: ArrayLike, ball_load: ArrayLike, ball_diameter: ArrayLike, friction: ArrayLike
) -> NDArray[np.float64]:
    """Gyroscopic moment over what friction can hold, M_g/(μ Q D_w); the ball slips above 1.

    Moment in N·mm (>= 0), ball load in N, diameter in mm and friction coefficient all > 0 (ValueError). Friction
    0.02 (Palmgren) to 0.05 are in use and decide the answer (from memory of Harris, Rolling Bearing Analysis).
    """
    hold = domain.positive("friction coefficient", friction) * domain.positive("ball load", ball_load)
    return np.asarray(
        domain.not_negative("gyroscopic moment", moment) / (hold * domain.positive("ball diameter", ball_diameter))
    )


def preload_against_gyroscopic_slip(
    moment: ArrayLike,
    ball_count: ArrayLike,
    ball_diameter: ArrayLike,
    contact_angle: ArrayLike,
    friction: ArrayLike,
) -> NDArray[np.float64]:
    """Smallest axial load at which friction holds the gyroscopic moment, Z sin α M_g/(μ D_w) [N].

    Units and errors as `gyroscopic_slip_ratio`; the ball count must be positive.
    """
    q = domain.not_negative("gyroscopic moment", moment) / (
        domain.positive("friction coefficient", friction) * domain.positive("ball diameter", ball_diameter)
    )
    return np.asarray(domain.positive("number of balls", ball_count) * q * np.sin(np.deg2rad(contact_angle)))


def preload_against_skidding(
    centrifugal_force: ArrayLike, ball_count: ArrayLike, contact_angle: ArrayLike
) -> NDArray[np.float64]:
    """Smallest axial load that presses the balls on the inner race with their centrifugal force, Z F_c sin α [N].

    Force in N (>= 0), ball count > 0, angle in deg; ValueError otherwise. A physical guide (common practice).
    """
    f_c = domain.not_negative("centrifugal force", centrifugal_force)
    return np.asarray(domain.positive("number of balls", ball_count) * f_c * np.sin(np.deg2rad(contact_angle)))


def split_contact_angles(
    axial_load: ArrayLike,
    centrifugal_force: ArrayLike,
    ball_count: ArrayLike,
    ball_diameter: ArrayLike,
    inner_groove_ratio: ArrayLike,
    outer_groove_ratio: ArrayLike,
    free_contact_angle: ArrayLike,
    inner_constant: ArrayLike,
    outer_constant: ArrayLike,
) -> SplitAngles:
    """Inner and outer contact angle of an axially loaded bearing whose balls are thrown outwards.

    Parameters
    ----------
    axial_load
        N, > 0, shared evenly by the balls.
    centrifugal_force
        Of one ball, N, >= 0.
    ball_count
        > 0.
    ball_diameter
        mm, > 0.
    inner_groove_ratio, outer_groove_ratio
        Groove radius over ball diameter, > 0.5.
    free_contact_angle
        deg, 0 <= α0 < 90.
    inner_constant, outer_constant
        Load-deflection constants of the two contacts, N/mm^1.5, > 0 (`hertz.contact_constant`).

    Returns
    -------
    SplitAngles
        All of the broadcast shape; the inner angle is the larger one, and the axial displacement turns negative where
        the balls push the rings apart.

    Raises
    ------
    ValueError
        An argument out of range, or a centrifugal force so large that the outer contact alone fills the bearing.

    Notes
    -----
    Balance of a ball: Q_i sin α_i = Q_o sin α_o = F_a/Z and Q_o cos α_o = Q_i cos α_i + F_c, so that
    cot α_o = cot α_i + Z F_c/F_a; the radial distances of the groove centres add up to A cos α0. What remains is one
    decreasing function of α_i, solved by Newton steps inside a bracket. The friction that holds the gyroscopic moment
    is left out; it is at most μ Q. Source: Harris, Rolling Bearing Analysis, high-speed ball bearings (from memory).

    """
    f_a, f_c = domain.positive("axial load", axial_load), domain.not_negative("centrifugal force", centrifugal_force)
    z, d_w = domain.positive("number of balls", ball_count), domain.positive("ball diameter", ball_diameter)
    r_i = np.asarray(inner_groove_ratio, dtype=np.float64) - 0.5
    r_o = np.asarray(outer_groove_ratio, dtype=np.float64) - 0.5
    if np.any(r_i <= 0.0) or np.any(r_o <= 0.0):
        raise ValueError("groove radius over ball diameter must be greater than 0.5")
    angle = np.asarray(free_contact_angle, dtype=np.float64)
    if np.any((angle < 0.0) | (angle >= 90.0)):
        raise ValueError("free contact angle must lie from 0 to below 90 deg")
    k_i, k_o = (
        domain.positive("inner load-deflection constant", inner_constant),
        domain.positive("outer constant", outer_constant),
    )
    q, cot_c, l_i, l_o, k_i, k_o, alpha_0 = np.broadcast_arrays(
        f_a / z, f_c * z / f_a, r_i * d_w, r_o * d_w, k_i, k_o, np.deg2rad(angle)
    )
    a = l_i + l_o

    def lengths(
        cot: NDArray[np.float64], free: NDArray[np.float64], k: NDArray[np.float64]
    ) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
        """Radial and axial distance of ball centre and groove centre, and the slope of the radial one over cot."""
        secant = np.sqrt(1.0 + cot**2)
        squeeze = (q * secant / k) ** (2.0 / 3.0)
        length = free + squeeze
        slope = length / secant**3 + 2.0 / 3.0 * squeeze * (cot / secant) ** 2 / secant
        return length * cot / secant, length / secant, slope

    goal = a * np.cos(alpha_0)
    if np.any(lengths(cot_c, l_o, k_o)[0] > goal):
        raise ValueError(
            "centrifugal force too large: the outer contact alone takes up the radial distance of the grooves"
        )
    # The radial distance grows with cot α_i: double the upper end until it is long enough.
    low, high = np.zeros_like(q), np.full_like(q, 1.0)
    for _ in range(200):
        short = lengths(high, l_i, k_i)[0] + lengths(high + cot_c, l_o, k_o)[0] < goal
        if not np.any(short):
            break
        high = np.where(short, 2.0 * high, high)
    x = 0.5 * high
    for _ in range(200):
        inner, outer = lengths(x, l_i, k_i), lengths(x + cot_c, l_o, k_o)
        residual = inner[0] + outer[0] - goal
        low, high = np.where(residual <= 0.0, x, low), np.where(residual >= 0.0, x, high)
        new = x - residual / (inner[2] + outer[2])
        new = np.where((new < low) | (new > high), 0.5 * (low + high), new)
        step, x = new - x, new
        if not np.any(np.abs(step) > 1e-13 * (1.0 + x)):
            break
    cot_o = x + cot_c
    alpha_i, alpha_o = np.arctan2(1.0, x), np.arctan2(1.0, cot_o)
    reach = lengths(x, l_i, k_i)[1] + lengths(cot_o, l_o, k_o)[1]
    return SplitAngles(
        np.rad2deg(alpha_i),
        np.rad2deg(alpha_o),
        q * np.sqrt(1.0 + x**2),
        q * np.sqrt(1.0 + cot_o**2),
        reach - a * np.sin(alpha_0),
    )
