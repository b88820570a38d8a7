"""Domains of arguments: each function gives the values as floats, or says what was outside and what was expected.

NaN passes everywhere: what is not known stays not known.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]


def _refuse(name: str, values: Array, outside: NDArray[np.bool_], wish: str) -> None:
    if outside.any():
        raise ValueError(f"{name} {wish}, got {float(np.atleast_1d(values)[np.atleast_1d(outside)][0])!r}")


def positive(name: str, value: ArrayLike, zero_allowed: bool = False) -> Array:
    """Values above zero (or from zero on), any shape; ValueError names the first other one."""
    x = np.asarray(value, dtype=np.float64)
    if zero_allowed:
        _refuse(name, x, x < 0.0, "must not be negative")
    else:
        _refuse(name, x, x <= 0.0, "must be greater than 0")
    return x


def not_negative(name: str, value: ArrayLike) -> Array:
    """Values from zero on, any shape; ValueError names the first other one."""
    return positive(name, value, zero_allowed=True)


def within(name: str, value: ArrayLike, low: float, high: float) -> Array:
    """Values from ``low`` to ``high``, any shape; ValueError names the first other one."""
    x = np.asarray(value, dtype=np.float64)
    _refuse(name, x, (x < low) | (x > high), f"must lie from {low:g} to {high:g}")
    return x


def ball_count(value: ArrayLike) -> Array:
    """Numbers of balls that can be summed over: whole, 2 to 200; ValueError names the first other one."""
    z = np.asarray(value, dtype=np.float64)
    broken = (z != np.floor(z)) & ~np.isnan(z)
    _refuse("number of balls", z, (z < 2) | (z > 200) | broken, "must be a whole number from 2 to 200")
    return z


def contact_angle(value: ArrayLike) -> Array:
    """Contact angles from 0 to 90 deg; ValueError names the first other one."""
    x = np.asarray(value, dtype=np.float64)
    _refuse("contact angle", x, (x < 0.0) | (x > 90.0), "must lie between 0 and 90 deg")
    return x


def contact_sine(contact_angle: ArrayLike) -> Array:
    """Sine of contact angles above 0 and below 90 deg; ValueError names the first other one."""
    x = np.asarray(contact_angle, dtype=np.float64)
    _refuse("contact_angle", x, (x <= 0.0) | (x >= 90.0), "must lie between 0 and 90 deg, ends excluded")
    return np.sin(np.radians(x))
