"""Static load rating after ISO 76.

Lengths in mm, loads in N, pressures in MPa, angles in degrees. All functions broadcast. The tables are those of
ISO 76, read in GOST 18854-94; f_0 is checked against the Hertz load at 4200 MPa.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain, hertz

#: Peak contact stress that defines the static rating of ball bearings [MPa]; Koyo, Ball and roller bearings, technical
#: data, static load rating (after ISO 76).
STATIC_PRESSURE = 4200.0
#: Modulus [MPa] and Poisson's ratio behind the standard's f_0 table, whatever steel a ring is made of (from memory of
#: ISO 76:2006 with ISO/TR 10657).
STANDARD_STEEL = (207_000.0, 0.3)

# f_0 for γ = 0.00 .. 0.40 (ISO 76 Table 1, read in GOST 18854-94).
_F0 = np.array([
    14.7, 14.9, 15.1, 15.3, 15.5, 15.7, 15.9, 16.1, 16.3, 16.5, 16.4, 16.1, 15.9, 15.6, 15.4, 15.2, 14.9, 14.7, 14.4,
    14.2, 14.0, 13.7, 13.5, 13.2, 13.0, 12.8, 12.5, 12.3, 12.1, 11.8, 11.6, 11.4, 11.2, 10.9, 10.7, 10.5, 10.3, 10.0,
    9.8, 9.6, 9.4,
])  # fmt: skip
_F0_GAMMA = np.arange(41) / 100.0

# X_0, Y_0 for deep groove (0 deg) and angular contact 5 .. 45 deg, one row (ISO 76 Table 2, read in GOST 18854-94; 15,
# 25 and 40 deg also in LYC, bearing basic knowledge, equivalent static load).
_ANGLES = np.array([0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0])
_X0 = np.array([0.6, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5])
_Y0 = np.array([0.50, 0.52, 0.50, 0.46, 0.42, 0.38, 0.33, 0.29, 0.26, 0.22])
# Two rows: X_0 is 1 and Y_0 twice the single-row value, except for deep groove bearings.
_X0_DOUBLE = np.array([0.6, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0])
_Y0_DOUBLE = np.array([0.50, 1.04, 1.00, 0.92, 0.84, 0.76, 0.66, 0.58, 0.52, 0.44])


def geometry_factor(
    diameter_ratio: ArrayLike,
    inner_groove_ratio: ArrayLike = 0.52,
    outer_groove_ratio: ArrayLike = 0.53,
    modulus: ArrayLike = STANDARD_STEEL[0],
    poisson: ArrayLike = STANDARD_STEEL[1],
) -> NDArray[np.float64]:
    """Factor f_0 of the static rating from the Hertz load at 4200 MPa [MPa].

    Parameters
    ----------
    diameter_ratio
        γ = D_w cos α/D_pw, 0 <= γ < 1.
    inner_groove_ratio, outer_groove_ratio
        Groove radius over D_w, > 0.5; the table holds for 0.52 and 0.53.
    modulus, poisson
        Of balls and rings; ISO 76 is met with 207 000 MPa and 0.3.

    Returns
    -------
    ndarray
        f_0, MPa, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    The load of the heaviest ball is 5 F_r/(Z cos α); f_0 = Q(4200 MPa)/(5 D_w²), the smaller of the two races.
    Source: ISO 76:2006 with ISO/TR 10657 (from memory).

    """
    gamma = np.asarray(diameter_ratio, dtype=np.float64)
    if np.any((gamma < 0.0) | (gamma >= 1.0)):
        raise ValueError("ball diameter x cos(contact angle) over pitch diameter must lie from 0 to below 1")
    e_prime = hertz.effective_modulus(modulus, poisson, modulus, poisson)
    # A ball of unit diameter in a bearing of pitch diameter 1/γ; at γ = 0 the rings are straight.
    pitch = 1.0 / np.maximum(gamma, 1e-12)
    inner = hertz.race_curvatures(1.0, pitch, 0.0, inner_groove_ratio, "inner")
    outer = hertz.race_curvatures(1.0, pitch, 0.0, outer_groove_ratio, "outer")
    return np.asarray(
        np.minimum(
            hertz.contact_load(STATIC_PRESSURE, *inner, e_prime), hertz.contact_load(STATIC_PRESSURE, *outer, e_prime)
        )
        / 5.0
    )


def tabulated_geometry_factor(diameter_ratio: ArrayLike) -> NDArray[np.float64]:
    """Factor f_0 by linear interpolation in ISO 76:2006 Table 1; γ from 0 to 0.40, else ValueError."""
    gamma = domain.within("ball diameter x cos(contact angle) over pitch diameter", diameter_ratio, 0.0, 0.40)
    return np.asarray(np.interp(gamma, _F0_GAMMA, _F0))


def static_rating(
    ball_count: ArrayLike,
    ball_diameter: ArrayLike,
    pitch_diameter: ArrayLike,
    contact_angle: ArrayLike = 0.0,
    rows: ArrayLike = 1,
) -> NDArray[np.float64]:
    """Basic static radial load rating C_0r = f_0 i Z D_w² cos α of a radial ball bearing [N].

    Balls per row and rows > 0, diameters in mm > 0, contact angle 0..45 deg, γ up to 0.40; ValueError otherwise. f_0
    comes from the table. Source: ISO 76:2006, 5.1.
    """
    z, d_w = domain.positive("number of balls", ball_count), domain.positive("ball diameter", ball_diameter)
    cos_a = np.cos(np.deg2rad(domain.within("contact angle", contact_angle, 0.0, 45.0)))
    f_0 = tabulated_geometry_factor(d_w * cos_a / domain.positive("pitch diameter", pitch_diameter))
    return np.asarray(f_0 * domain.positive("number of rows", rows) * z * d_w**2 * cos_a)


def load_factors(contact_angle: ArrayLike, rows: int = 1) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Factors (X_0, Y_0) of deep groove (0 deg) and angular contact ball bearings.

    ``contact_angle`` 0..45 deg, linear between the tabulated angles (own choice); ``rows`` 1, or 2 for double-row
    bearings and pairs in O or X arrangement. Raises ValueError outside. Source: ISO 76:2006 Table 2.
    """
    angle = domain.within("contact angle", contact_angle, 0.0, 45.0)
    if rows not in (1, 2):
        raise ValueError(f"number of rows must be 1 or 2, got {rows!r}")
    x, y = (_X0, _Y0) if rows == 1 else (_X0_DOUBLE, _Y0_DOUBLE)
    return np.asarray(np.interp(angle, _ANGLES, x)), np.asarray(np.interp(angle, _ANGLES, y))


def equivalent_load(
    radial_load: ArrayLike, axial_load: ArrayLike, radial_factor: ArrayLike, axial_factor: ArrayLike
) -> NDArray[np.float64]:
    """Static equivalent radial load P_0r, the larger of X_0 F_r + Y_0 F_a and F_r.

    Loads >= 0 in one unit (ValueError). Source: ISO 76:2006, 5.2.
    """
    f_r, f_a = np.asarray(radial_load, dtype=np.float64), np.asarray(axial_load, dtype=np.float64)
    if np.any(f_r < 0.0) or np.any(f_a < 0.0):
        raise ValueError("radial and axial load must not be negative")
    return np.asarray(np.maximum(np.asarray(radial_factor) * f_r + np.asarray(axial_factor) * f_a, f_r))


def safety_factor(static_rating: ArrayLike, equivalent_load: ArrayLike) -> NDArray[np.float64]:
    """Static safety factor S_0 = C_0/P_0; both > 0 in one unit (ValueError). Source: ISO 76:2006 (from memory)."""
    return np.asarray(
        domain.positive("static load rating", static_rating) / domain.positive("equivalent load", equivalent_load)
    )


def peak_pressure_estimate(
    axial_load: ArrayLike, static_rating: ArrayLike, contact_angle: ArrayLike
) -> NDArray[np.float64]:
    """Peak Hertz pressure at the inner race from catalogue data alone, 4200 [F_a/(5 C_0 sin α)]^(1/3) [MPa].

    For pure axial load on steel balls (derived from the definition of C_0r: C_0r/(Z cos α) x 5 brings the heaviest ball
    to 4200 MPa; cos α is taken as 1). ``axial_load`` >= 0 and ``static_rating`` > 0 in one unit, angle in service above
    0 and up to 90 deg; ValueError otherwise.
    """
    f_a, alpha = np.asarray(axial_load, dtype=np.float64), np.asarray(contact_angle, dtype=np.float64)
    if np.any(f_a < 0.0):
        raise ValueError(f"axial load must not be negative, got {float(np.nanmin(f_a))!r}")
    if np.any((alpha <= 0.0) | (alpha > 90.0)):
        raise ValueError(f"contact angle must lie above 0 and up to 90 deg, got {alpha.tolist()!r}"[:200])
    share = 5.0 * domain.positive("static load rating", static_rating) * np.sin(np.deg2rad(alpha))
    return np.asarray(STATIC_PRESSURE * np.cbrt(f_a / share))
