"""Residual unbalance of a rigid rotor, its force on the bearings, and how the load turns relative to the rings.

Mass in kg, unbalance in g.mm, eccentricity in um, force in N, speed in r/min, lengths in mm. Every function
broadcasts; NaN in, NaN out.

Source: ISO 21940-11:2016, definition of the balance quality grade G = e_per Omega (mm/s).
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain

Array = NDArray[np.float64]

STANDARD_GRAVITY = 9.80665
"""m/s2 (ISO 80000-3)."""


def _omega(speed: ArrayLike) -> Array:
    return domain.positive("speed", speed) * (np.pi / 30.0)


def permissible_eccentricity(grade: ArrayLike, speed: ArrayLike) -> Array:
    """Permissible residual eccentricity e_per, um (g.mm/kg): 1000 G/Omega, G in mm/s (> 0), speed in r/min (> 0).

    Examples
    --------
    G 6.3 at 3000 r/min, about 20 um in the diagram of ISO 21940-11:

    >>> round(float(permissible_eccentricity(6.3, 3000.0)), 1)
    20.1
    """
    return 1000.0 * domain.positive("grade", grade) / _omega(speed)


def permissible_unbalance(grade: ArrayLike, mass: ArrayLike, speed: ArrayLike) -> Array:
    """Permissible residual unbalance U_per, g.mm: e_per times the rotor mass (kg)."""
    return permissible_eccentricity(grade, speed) * domain.positive("mass", mass)


def unbalance_force(unbalance: ArrayLike, speed: ArrayLike) -> Array:
    """Rotating force of an unbalance, N: U Omega^2; unbalance in g.mm, speed in r/min (either may be zero)."""
    omega = domain.positive("speed", speed, zero_allowed=True) * (np.pi / 30.0)
    return 1e-6 * domain.positive("unbalance", unbalance, zero_allowed=True) * omega**2


def share_to_bearings(action: ArrayLike, distance_from_a: ArrayLike, bearing_span: ArrayLike) -> tuple[Array, Array]:
    """Shares of a force or an unbalance on bearings A and B by moment balance.

    Parameters
    ----------
    action : array_like
        Force (N) or unbalance (g.mm) at one place along the shaft.
    distance_from_a : array_like
        Its distance from bearing A towards B, mm; negative or beyond the span for an overhung rotor.
    bearing_span : array_like
        mm, > 0.

    Returns
    -------
    at_a, at_b : ndarray
        They add up to the action; one is negative when the rotor overhangs (opposite direction, larger magnitude on
        the other side). U_A = U L_B/L of ISO 21940-11.
    """
    u, x = np.asarray(action, dtype=np.float64), np.asarray(distance_from_a, dtype=np.float64)
    at_b = u * x / domain.positive("bearing_span", bearing_span)
    return u - at_b, at_b


def unbalance_to_weight(grade: ArrayLike, speed: ArrayLike) -> Array:
    """Ratio of the unbalance force to the weight of a rotor balanced to a grade: G Omega/g."""
    return 1e-3 * domain.positive("grade", grade) * _omega(speed) / STANDARD_GRAVITY


def speed_of_equal_weight(grade: ArrayLike) -> Array:
    """Speed at which the unbalance force of a grade equals the weight, r/min: g/G."""
    return STANDARD_GRAVITY / (1e-3 * domain.positive("grade", grade)) * (30.0 / np.pi)


class LoadRotation(NamedTuple):
    """Behaviour of the radial load.

    ``ratio`` rotating to fixed part; ``swing`` largest angle from its mean direction, degrees (180 when it turns
    fully); ``inner`` and ``outer`` one of "stationary", "rotating", "indeterminate", relative to each ring.
    """

    ratio: Array
    swing: Array
    inner: NDArray[np.str_]
    outer: NDArray[np.str_]


def load_rotation(
    fixed_force: ArrayLike,
    rotating_force: ArrayLike,
    inner_ring_turns: ArrayLike,
    lower_ratio: ArrayLike,
    upper_ratio: ArrayLike,
) -> LoadRotation:
    """How a radial load with a part fixed in space and a part turning with the rotor acts on the two rings.

    Parameters
    ----------
    fixed_force : array_like
        Weight, belt or gear force at the bearing, N, >= 0.
    rotating_force : array_like
        Unbalance force at the bearing, N, >= 0.
    inner_ring_turns : array_like of bool
        True where the inner ring turns with the rotor, False where the outer ring does.
    lower_ratio, upper_ratio : array_like
        Ratio rotating/fixed up to which the fixed part decides, and from which the rotating part does; between the
        two the load is indeterminate. 0 < lower <= upper.

    Returns
    -------
    LoadRotation
        With neither force both rings are "indeterminate" and the ratio is NaN. Relative to a ring the load turns when
        the mean direction of its vector sum and the ring turn differently: below 1 the sum swings by asin(ratio)
        about the fixed direction, above it makes full turns with the rotor (vector addition, derived).

    Raises
    ------
    ValueError
        If a force is negative or the ratios are not in order.
    """
    fixed = domain.positive("fixed_force", fixed_force, zero_allowed=True)
    turning = domain.positive("rotating_force", rotating_force, zero_allowed=True)
    low, high = domain.positive("lower_ratio", lower_ratio), domain.positive("upper_ratio", upper_ratio)
    if np.any(low > high):
        raise ValueError("lower_ratio: expected at most the upper ratio")
    inner_turns = np.asarray(inner_ring_turns, dtype=bool)
    fixed, turning, low, high, inner_turns = np.broadcast_arrays(fixed, turning, low, high, inner_turns)
    free = np.where((turning > 0.0) & ~np.isnan(fixed), np.inf, np.nan)
    ratio = np.divide(turning, fixed, out=free, where=fixed > 0.0)
    swing = np.where(ratio < 1.0, np.degrees(np.arcsin(np.clip(ratio, 0.0, 1.0))), 180.0)
    swing = np.where(np.isnan(ratio), np.nan, swing)
    with_rotor, fixed_in_space = ratio >= high, ratio <= low
    # relative to the ring that turns with the rotor a fixed load rotates; relative to the other ring it stands still
    turning_ring = np.select([fixed_in_space, with_rotor], ["rotating", "stationary"], "indeterminate")
    resting_ring = np.select([fixed_in_space, with_rotor], ["stationary", "rotating"], "indeterminate")
    return LoadRotation(
        ratio,
        swing,
        np.where(inner_turns, turning_ring, resting_ring),
        np.where(inner_turns, resting_ring, turning_ring),
    )
