"""Lubricant: viscosity at temperature, viscosity ratio, elastohydrodynamic film, grease life.

Viscosities in mm²/s, temperatures in degC, lengths in mm, loads in N, moduli in MPa, speeds in r/min, film thickness
and roughness in um, lives in h. All functions broadcast.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain

_KELVIN = 273.15
_POUND = 4.4482216  # N


def viscosity_line(
    viscosity_1: ArrayLike,
    temperature_1: ArrayLike,
    viscosity_2: ArrayLike,
    temperature_2: ArrayLike,
    zero_celsius: float = _KELVIN,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Constants (A, B) of log10 log10(ν + 0.7) = A − B log10 T through two points.

    Parameters
    ----------
    viscosity_1, viscosity_2
        mm²/s, > 0.3 (the double logarithm ends there; the form is meant for ν > 2).
    temperature_1, temperature_2
        degC, above −273.15 and different.
    zero_celsius
        Kelvin at 0 degC; some worksheets use 273.

    Returns
    -------
    a, b : ndarray
        Without unit, of the broadcast shape.

    Raises
    ------
    ValueError
        A viscosity or temperature out of range.

    Notes
    -----
    Source: ASTM D341.

    """
    w_1, w_2 = _double_log(viscosity_1), _double_log(viscosity_2)
    x_1, x_2 = _log_kelvin(temperature_1, zero_celsius), _log_kelvin(temperature_2, zero_celsius)
    if np.any(x_1 == x_2):
        raise ValueError("the two temperatures of the viscosity line must differ")
    b = (w_1 - w_2) / (x_2 - x_1)
    return np.asarray(w_1 + b * x_1), np.asarray(b)


def _double_log(viscosity: ArrayLike) -> NDArray[np.float64]:
    nu = np.asarray(viscosity, dtype=np.float64)
    if np.any(nu <= 0.3):
        raise ValueError(f"viscosity must be greater than 0.3 mm2/s, got {float(np.nanmin(nu))!r}")
    return np.asarray(np.log10(np.log10(nu + 0.7)))


def _log_kelvin(temperature: ArrayLike, zero_celsius: float) -> NDArray[np.float64]:
    return np.asarray(
        np.log10(domain.positive("absolute temperature", np.asarray(temperature, np.float64) + zero_celsius))
    )


def viscosity_at(
    temperature: ArrayLike,
    viscosity_1: ArrayLike,
    temperature_1: ArrayLike,
    viscosity_2: ArrayLike,
    temperature_2: ArrayLike,
    zero_celsius: float = _KELVIN,
) -> NDArray[np.float64]:
    """Kinematic viscosity at a temperature from two known points [mm²/s].

    Arguments, errors and source as `viscosity_line`; ``temperature`` in degC.
    """
    return viscosity_on(
        viscosity_line(viscosity_1, temperature_1, viscosity_2, temperature_2, zero_celsius), temperature, zero_celsius
    )


def viscosity_on(
    line: tuple[ArrayLike, ArrayLike], temperature: ArrayLike, zero_celsius: float = _KELVIN
) -> NDArray[np.float64]:
    """Kinematic viscosity at a temperature [degC] on a line of `viscosity_line` [mm²/s]; errors and source as there."""
    a, b = (np.asarray(constant, np.float64) for constant in line)
    return np.asarray(10.0**10.0 ** (a - b * _log_kelvin(temperature, zero_celsius)) - 0.7)


def reference_viscosity(speed: ArrayLike, pitch_diameter: ArrayLike) -> NDArray[np.float64]:
    """Reference viscosity ν_1 for adequate lubrication [mm²/s].

    45 000 n^(−0.83) D_pw^(−0.5) below 1000 r/min, 4500 n^(−0.5) D_pw^(−0.5) from there (the two differ by 2.3 % at the
    joint). Speed and pitch diameter (the mean diameter stands in for it) > 0 (ValueError). Source: ISO 281:2007,
    9.3.3.3.
    """
    n, d = domain.positive("speed", speed), domain.positive("pitch diameter", pitch_diameter)
    return np.asarray(np.where(n < 1000.0, 45_000.0 * n**-0.83, 4500.0 * n**-0.5) / np.sqrt(d))


def viscosity_ratio(viscosity: ArrayLike, speed: ArrayLike, pitch_diameter: ArrayLike) -> NDArray[np.float64]:
    """Viscosity ratio κ = ν/ν_1; ν in mm²/s at operating temperature, > 0 (ValueError); see `reference_viscosity`."""
    return np.asarray(domain.positive("viscosity", viscosity) / reference_viscosity(speed, pitch_diameter))


def entrainment_speed(
    relative_speed: ArrayLike, ball_diameter: ArrayLike, pitch_diameter: ArrayLike, contact_angle: ArrayLike = 0.0
) -> NDArray[np.float64]:
    """Mean surface speed at both contacts of a ball, |n_i − n_o| (π/30) D_pw (1 − γ²)/4 [m/s].

    Speed of one ring against the other in r/min, diameters in mm > 0 (ValueError), angle in deg. Source: Hamrock,
    Fundamentals of Fluid Film Lubrication (NASA RP-1255).
    """
    d_w, d_pw = domain.positive("ball diameter", ball_diameter), domain.positive("pitch diameter", pitch_diameter)
    gamma = d_w * np.cos(np.deg2rad(contact_angle)) / d_pw
    omega = np.abs(np.asarray(relative_speed, dtype=np.float64)) * np.pi / 30.0
    return np.asarray(1e-3 * omega * d_pw * (1.0 - gamma**2) / 4.0)


def film_thickness(
    speed: ArrayLike,
    radius: ArrayLike,
    effective_modulus: ArrayLike,
    dynamic_viscosity: ArrayLike,
    pressure_viscosity: ArrayLike,
    load: ArrayLike,
    ellipticity: ArrayLike,
    where: str = "minimum",
) -> NDArray[np.float64]:
    """Film of a fully flooded elliptical contact by Hamrock and Dowson [um].

    Parameters
    ----------
    speed
        Entrainment speed (mean of the two surface speeds), m/s, > 0.
    radius
        Reduced radius R_x in the rolling direction, mm, > 0 (1 over the relative curvature).
    effective_modulus
        E', MPa, > 0 (`hertz.effective_modulus`).
    dynamic_viscosity
        η_0 at the inlet, Pa·s, > 0.
    pressure_viscosity
        α, 1/Pa, > 0.
    load
        Contact load, N, > 0.
    ellipticity
        k = a/b with the long axis across the rolling direction, > 0.
    where
        ``"minimum"`` or ``"central"``.

    Returns
    -------
    ndarray
        µm, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range or an unknown word.

    Notes
    -----
    H_min = 3.63 U^0.68 G^0.49 W^(−0.073) (1 − e^(−0.68k)); H_c = 2.69 U^0.67 G^0.53 W^(−0.067) (1 − 0.61 e^(−0.73k))
    with U = η_0 u/(E' R_x), G = α E', W = F/(E' R_x²). Source: Hamrock & Dowson; Hamrock, NASA RP-1255 (central film
    from memory). Starvation and heating at the inlet are left out.

    """
    r, e_prime = (
        1e-3 * domain.positive("reduced radius", radius),
        1e6 * domain.positive("effective modulus", effective_modulus),
    )
    k = domain.positive("ellipticity", ellipticity)
    u = (
        domain.positive("dynamic viscosity", dynamic_viscosity)
        * domain.positive("entrainment speed", speed)
        / (e_prime * r)
    )
    g = domain.positive("pressure-viscosity coefficient", pressure_viscosity) * e_prime
    w = domain.positive("contact load", load) / (e_prime * r**2)
    if where == "minimum":
        h = 3.63 * u**0.68 * g**0.49 * w**-0.073 * (1.0 - np.exp(-0.68 * k))
    elif where == "central":
        h = 2.69 * u**0.67 * g**0.53 * w**-0.067 * (1.0 - 0.61 * np.exp(-0.73 * k))
    else:
        raise ValueError(f"film must be 'minimum' or 'central', got {where!r}")
    return np.asarray(1e6 * h * r)


def film_parameter(film_thickness: ArrayLike, roughness_1: ArrayLike, roughness_2: ArrayLike) -> NDArray[np.float64]:
    """Film parameter λ = h/√(R_q1² + R_q2²); all in um, film and at least one root mean square roughness > 0."""
    combined = np.hypot(np.asarray(roughness_1, dtype=np.float64), np.asarray(roughness_2, dtype=np.float64))
    return np.asarray(
        domain.positive("film thickness", film_thickness) / domain.positive("combined roughness", combined)
    )


def grease_life_by_limit(
    speed_ratio: ArrayLike, temperature: ArrayLike, grease: str = "general"
) -> NDArray[np.float64]:
    """Mean life of the grease in a sealed single-row deep groove ball bearing, by the limiting speed [h].

    Parameters
    ----------
    speed_ratio
        Speed over the limiting speed for grease, n/N_max, 0 < ratio <= 1; below 0.25 the formula uses 0.25.
    temperature
        Of the outer ring, degC, up to 110 (general) or 130 (wide range); below 70 the formula uses 70.
    grease
        ``"general"``: mineral oil and lithium soap; ``"wide range"``: synthetic oil.

    Returns
    -------
    ndarray
        Hours, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range or an unknown grease.

    Notes
    -----
    Loads up to about C/10. log10 t = 6.54 − 2.6 r − (0.025 − 0.012 r) T and 6.12 − 1.4 r − (0.018 − 0.006 r) T.
    Source: NSK Rolling Bearings catalogue E1102, section 12, eqs (12.1) and (12.2).

    """
    if grease not in ("general", "wide range"):
        raise ValueError(f"grease must be 'general' or 'wide range', got {grease!r}")
    coefficients = {"general": (6.54, 2.6, 0.025, 0.012, 110.0), "wide range": (6.12, 1.4, 0.018, 0.006, 130.0)}
    c_0, c_1, c_2, c_3, hottest = coefficients[grease]
    ratio = np.maximum(
        domain.within("speed over limiting speed", domain.positive("speed ratio", speed_ratio), 0.0, 1.0), 0.25
    )
    t = np.maximum(domain.within("temperature", temperature, -60.0, hottest), 70.0)
    return np.asarray(10.0 ** (c_0 - c_1 * ratio - (c_2 - c_3 * ratio) * t))


def grease_life_by_speed_factor(
    speed_factor: ArrayLike, load_ratio: ArrayLike, temperature: ArrayLike
) -> NDArray[np.float64]:
    """Life of lithium grease in a shielded or sealed deep groove ball bearing, by n·d_m [h].

    Parameters
    ----------
    speed_factor
        n·d_m, mm·r/min, 0 < n·d_m <= 500 000.
    load_ratio
        P_r/C_r, 0..0.16; below 0.05 the formula uses 0.05.
    temperature
        degC, up to 120; below 50 the formula uses 50.

    Returns
    -------
    ndarray
        Hours, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    log10 L = 6.10 − 4.40e-6 d_m n − 2.50 (P/C − 0.05) − (0.021 − 1.80e-8 d_m n) T.
    Source: JTEKT catalogue, lubrication chapter (from memory).

    """
    dmn = domain.within("speed factor", domain.positive("speed factor", speed_factor), 0.0, 500_000.0)
    load = np.maximum(domain.within("load over dynamic rating", load_ratio, 0.0, 0.16), 0.05)
    t = np.maximum(domain.within("temperature", temperature, -60.0, 120.0), 50.0)
    return np.asarray(10.0 ** (6.10 - 4.40e-6 * dmn - 2.50 * (load - 0.05) - (0.021 - 1.80e-8 * dmn) * t))


def grease_life_by_halving(
    temperature: ArrayLike, half_life_subtraction: ArrayLike = 0.0, percentile: str = "L10"
) -> NDArray[np.float64]:
    """Grease life by temperature with half-life subtractions [h].

    Parameters
    ----------
    temperature
        degC, 60..150.
    half_life_subtraction
        S = S_G + S_N + S_W, >= 0: each unit halves the life (`half_life_subtraction`).
    percentile
        ``"L10"`` or ``"L50"`` (geometric mean).

    Returns
    -------
    ndarray
        Hours, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range or an unknown word.

    Notes
    -----
    log10 L = k + 2450/(273 + T) − 0.301 S, k = −2.60 (L10) or −2.30 (L50). Source: Booser (coefficients from memory).

    """
    if percentile not in ("L10", "L50"):
        raise ValueError(f"percentile must be 'L10' or 'L50', got {percentile!r}")
    t, s = domain.within("temperature", temperature, 60.0, 150.0), np.asarray(half_life_subtraction, dtype=np.float64)
    if np.any(s < 0.0):
        raise ValueError(f"half-life subtraction must not be negative, got {float(np.nanmin(s))!r}")
    k = -2.60 if percentile == "L10" else -2.30
    return np.asarray(10.0 ** (k + 2450.0 / (273.0 + t) - 0.301 * s))


def half_life_subtraction(
    bore_speed: ArrayLike,
    limiting_bore_speed: ArrayLike,
    load: ArrayLike,
    dynamic_rating: ArrayLike,
    grease_term: ArrayLike = 0.0,
) -> NDArray[np.float64]:
    """Half-life subtraction S = S_G + S_N + S_W for `grease_life_by_halving`.

    S_N = 0.86 DN/(DN)_L, S_W = 0.61 DN W/C² with D in mm, N in r/min, and W and C in pounds in the source (converted
    here). ``bore_speed`` n·d and its limit in mm·r/min, load >= 0 and rating in N; all else > 0 (ValueError).
    Source: Booser (coefficients from memory).
    """
    dn, w = domain.positive("speed factor n·d", bore_speed), np.asarray(load, dtype=np.float64)
    if np.any(w < 0.0):
        raise ValueError(f"load must not be negative, got {float(np.nanmin(w))!r}")
    speed_term = 0.86 * dn / domain.positive("limiting speed factor n·d", limiting_bore_speed)
    load_term = 0.61 * dn * w * _POUND / domain.positive("dynamic load rating", dynamic_rating) ** 2
    return np.asarray(np.asarray(grease_term, dtype=np.float64) + speed_term + load_term)


def grease_temperature_factor(temperature: ArrayLike) -> NDArray[np.float64]:
    """Factor on a grease life stated for 70 degC: halved per 15 K above, at most doubled below.

    Source: SKF, relubrication interval adjustments. Temperature in degC, −60..250 (ValueError); the grease's
    own upper limit is not known here.
    """
    t = domain.within("temperature", temperature, -60.0, 250.0)
    return np.asarray(np.minimum(2.0 ** ((70.0 - t) / 15.0), 2.0))


def grease_load_factor(load_ratio: ArrayLike) -> NDArray[np.float64]:
    """Factor on the grease life of a capped ball bearing for its load: 1, 0.7, 0.5, 0.2 at 0.05, 0.1, 0.125, 0.25 C.

    Linear between the points (own choice), 1 below; P/C 0..0.25 (ValueError). Source: SKF Rolling bearings
    catalogue p. 246.
    """
    load = domain.within("load over dynamic rating", load_ratio, 0.0, 0.25)
    return np.asarray(np.interp(load, [0.05, 0.1, 0.125, 0.25], [1.0, 0.7, 0.5, 0.2]))
