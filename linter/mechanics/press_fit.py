"""Elastic press fits: thick-walled rings under pressure, rotation and temperature.

Plane stress, linear elasticity. All functions broadcast; NaN in, NaN out. An infinite outer diameter stands for an
unbounded housing, a bore of zero for a solid shaft. Lengths in mm, stresses and moduli in MPa, density in kg/m3,
speed in r/min, temperature in degC. Interferences are differences of diameters in mm, positive when tight.

Sources: thick-ring theory of Lamé as in Shigley, Mechanical Engineering Design, 8th ed., sections 3-14 to 3-16
(eq 3-49, 3-50, 3-55 to 3-57); displacements derived from the same stresses with Hooke's law.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]

REFERENCE_TEMPERATURE = 20.0
"""Temperature at which drawn dimensions hold, degC (ISO 1:2022)."""


def _checked(name: str, value: ArrayLike, low: float, high: float, open_ends: bool = False) -> Array:
    """Value as floats; ValueError where an element lies outside ``low..high`` (NaN passes)."""
    array = np.asarray(value, dtype=np.float64)
    bad = (array <= low) | (array >= high) if open_ends else (array < low) | (array > high)
    if np.any(bad):
        sign = "between" if open_ends else "from"
        raise ValueError(f"{name} = {array[bad].flat[0]:g}: expected {sign} {low:g} to {high:g}")
    return array


def _ring(inner_diameter: ArrayLike, outer_diameter: ArrayLike, unbounded: bool) -> tuple[Array, Array]:
    a = _checked("inner_diameter", inner_diameter, 0.0, np.finfo(np.float64).max)
    b = np.asarray(outer_diameter, dtype=np.float64)
    if not unbounded and np.any(np.isinf(b)):
        raise ValueError("outer_diameter = inf: a rotating ring needs a finite outer diameter")
    a, b = np.broadcast_arrays(a, b)
    if np.any(b <= a):
        where = b <= a
        raise ValueError(
            f"outer_diameter = {b[where].flat[0]:g}: expected more than the inner diameter {a[where].flat[0]:g}"
        )
    return a, b


def _elastic(modulus: ArrayLike, poisson: ArrayLike, name: str = "") -> tuple[Array, Array]:
    e = _checked(f"{name}elastic_modulus", modulus, 0.0, np.inf, open_ends=True)
    nu = _checked(f"{name}poisson_ratio", poisson, 0.0, 0.5)
    return e, nu


def _inside(at_diameter: ArrayLike, a: Array, b: Array) -> Array:
    r = np.asarray(at_diameter, dtype=np.float64)
    slack = 1.0 + 1e-12
    if np.any((r * slack < a) | (r > b * slack)):
        raise ValueError("at_diameter: expected from the inner to the outer diameter of the ring")
    return r


def _ratio_squared(x: Array, y: Array) -> Array:
    """(x/y)^2 with 0 where x is 0 (centre of a solid body)."""
    return np.where(np.isnan(y), np.nan, x / np.where(x == 0.0, 1.0, y)) ** 2


def stress_by_pressure(
    at_diameter: ArrayLike,
    inner_diameter: ArrayLike,
    outer_diameter: ArrayLike,
    inner_pressure: ArrayLike = 0.0,
    outer_pressure: ArrayLike = 0.0,
) -> tuple[Array, Array]:
    """Hoop and radial stress in a ring under pressure on its bore and its outside.

    Parameters
    ----------
    at_diameter : array_like
        Where the stress is wanted, mm, from the inner to the outer diameter.
    inner_diameter, outer_diameter : array_like
        Ring, mm; inner 0 for a solid body, outer infinite for an unbounded one.
    inner_pressure, outer_pressure : array_like
        Pressures, MPa.

    Returns
    -------
    hoop, radial : ndarray
        Stresses, MPa, tension positive.

    Raises
    ------
    ValueError
        If the outer diameter is not larger than the inner one, or the place lies outside the ring.

    Notes
    -----
    Shigley 8th ed. eq 3-49 (Lamé).
    """
    a, b = _ring(inner_diameter, outer_diameter, unbounded=True)
    r = _inside(at_diameter, a, b)
    p_i, p_o = np.asarray(inner_pressure, dtype=np.float64), np.asarray(outer_pressure, dtype=np.float64)
    k = (a / b) ** 2
    uniform = (p_i * k - p_o) / (1.0 - k)
    a, r = np.broadcast_arrays(a, r)
    varying = (p_i - p_o) / (1.0 - k) * _ratio_squared(a, r)
    return uniform + varying, uniform - varying


def diameter_change_by_pressure(
    at_diameter: ArrayLike,
    inner_diameter: ArrayLike,
    outer_diameter: ArrayLike,
    inner_pressure: ArrayLike,
    outer_pressure: ArrayLike,
    elastic_modulus: ArrayLike,
    poisson_ratio: ArrayLike,
) -> Array:
    """Growth of any diameter of a ring under pressure, mm (see ``stress_by_pressure``; Hooke's law, plane stress)."""
    hoop, radial = stress_by_pressure(at_diameter, inner_diameter, outer_diameter, inner_pressure, outer_pressure)
    e, nu = _elastic(elastic_modulus, poisson_ratio)
    return np.asarray(at_diameter, dtype=np.float64) * (hoop - nu * radial) / e


def stress_by_rotation(
    at_diameter: ArrayLike,
    inner_diameter: ArrayLike,
    outer_diameter: ArrayLike,
    speed: ArrayLike,
    density: ArrayLike,
    poisson_ratio: ArrayLike,
) -> tuple[Array, Array]:
    """Hoop and radial stress in a ring or solid disc turning free of pressure.

    Parameters
    ----------
    at_diameter, inner_diameter, outer_diameter : array_like
        Place and ring, mm; inner 0 for a solid body; the outer diameter is finite.
    speed : array_like
        r/min; the sign does not matter.
    density : array_like
        kg/m3.
    poisson_ratio : array_like
        0 to 0.5.

    Returns
    -------
    hoop, radial : ndarray
        Stresses, MPa.

    Raises
    ------
    ValueError
        Outside the ranges above.

    Notes
    -----
    Shigley 8th ed. eq 3-55 (rotating rings).
    """
    a, b = _ring(inner_diameter, outer_diameter, unbounded=False)
    r = _inside(at_diameter, a, b)
    rho = _checked("density", density, 0.0, np.inf)
    nu = _checked("poisson_ratio", poisson_ratio, 0.0, 0.5)
    omega = np.asarray(speed, dtype=np.float64) * (np.pi / 30.0)
    # kg/m3 * mm2/s2 = 1e-6 N/m2 = 1e-12 MPa; diameters squared are four radii squared
    c = 1e-12 * rho * omega**2 * (3.0 + nu) / 32.0
    a, r = np.broadcast_arrays(a, r)
    cross = b**2 * _ratio_squared(a, r)
    hoop = c * (a**2 + b**2 + cross - (1.0 + 3.0 * nu) / (3.0 + nu) * r**2)
    radial = c * (a**2 + b**2 - cross - r**2)
    return hoop, radial


def diameter_change_by_rotation(
    at_diameter: ArrayLike,
    inner_diameter: ArrayLike,
    outer_diameter: ArrayLike,
    speed: ArrayLike,
    density: ArrayLike,
    elastic_modulus: ArrayLike,
    poisson_ratio: ArrayLike,
) -> Array:
    """Growth of any diameter of a turning ring or solid disc, mm (see ``stress_by_rotation``; plane stress)."""
    hoop, radial = stress_by_rotation(at_diameter, inner_diameter, outer_diameter, speed, density, poisson_ratio)
    e, nu = _elastic(elastic_modulus, poisson_ratio)
    return np.asarray(at_diameter, dtype=np.float64) * (hoop - nu * radial) / e


class PressFit(NamedTuple):
    """State of a press fit; stresses in MPa, tension positive, diameter changes in mm, growth positive."""

    pressure: Array
    inner_body_bore_hoop: Array
    inner_body_interface_hoop: Array
    outer_body_interface_hoop: Array
    outer_body_outside_hoop: Array
    inner_body_bore_change: Array
    outer_body_outside_change: Array


def contact_pressure(
    interference: ArrayLike,
    interface_diameter: ArrayLike,
    inner_body_bore: ArrayLike,
    outer_body_diameter: ArrayLike,
    inner_elastic_modulus: ArrayLike,
    inner_poisson_ratio: ArrayLike,
    outer_elastic_modulus: ArrayLike,
    outer_poisson_ratio: ArrayLike,
) -> Array:
    """Pressure between two rings, or a ring and a shaft, fitted with interference.

    Parameters
    ----------
    interference : array_like
        Effective difference of diameters, mm; zero or negative gives no pressure.
    interface_diameter : array_like
        Common diameter, mm: the bearing bore on a shaft, the bearing outside diameter in a housing.
    inner_body_bore : array_like
        Bore of the inner body, mm: of a hollow shaft (0 solid), or the raceway diameter of an outer ring.
    outer_body_diameter : array_like
        Outside of the outer body, mm: the raceway diameter of an inner ring, or of the housing (may be infinite).
    inner_elastic_modulus, outer_elastic_modulus : array_like
        MPa, each body its own.
    inner_poisson_ratio, outer_poisson_ratio : array_like
        0 to 0.5.

    Returns
    -------
    ndarray
        Pressure, MPa.

    Raises
    ------
    ValueError
        If a body has no wall, or a modulus or Poisson ratio is out of range.

    Notes
    -----
    Shigley 8th ed. eq 3-56, written with the diametral interference.
    """
    i = np.asarray(interference, dtype=np.float64)
    d = np.asarray(interface_diameter, dtype=np.float64)
    inner = diameter_change_by_pressure(d, inner_body_bore, d, 0.0, 1.0, inner_elastic_modulus, inner_poisson_ratio)
    outer = diameter_change_by_pressure(d, d, outer_body_diameter, 1.0, 0.0, outer_elastic_modulus, outer_poisson_ratio)
    return np.maximum(i, 0.0) / (outer - inner)


def press_fit(
    interference: ArrayLike,
    interface_diameter: ArrayLike,
    inner_body_bore: ArrayLike,
    outer_body_diameter: ArrayLike,
    inner_elastic_modulus: ArrayLike,
    inner_poisson_ratio: ArrayLike,
    outer_elastic_modulus: ArrayLike,
    outer_poisson_ratio: ArrayLike,
) -> PressFit:
    """Pressure, hoop stresses and raceway change of a press fit (parameters and errors: ``contact_pressure``).

    Returns
    -------
    PressFit
        ``outer_body_outside_change`` is the raceway growth of an inner ring on its shaft, ``inner_body_bore_change``
        the raceway shrink (negative) of an outer ring in its housing, or that of the bore of a hollow shaft. In a
        solid shaft the stress is the same everywhere, so its "bore" carries minus the pressure. An infinite outer
        body has no stress and no change at its outside.
    """
    d = np.asarray(interface_diameter, dtype=np.float64)
    a = np.asarray(inner_body_bore, dtype=np.float64)
    b = np.asarray(outer_body_diameter, dtype=np.float64)
    e_i, nu_i, e_o, nu_o = inner_elastic_modulus, inner_poisson_ratio, outer_elastic_modulus, outer_poisson_ratio
    p = contact_pressure(interference, d, a, b, e_i, nu_i, e_o, nu_o)
    at_bore, _ = stress_by_pressure(a, a, d, 0.0, p)
    at_seat, _ = stress_by_pressure(d, a, d, 0.0, p)
    hub, _ = stress_by_pressure(d, d, b, p, 0.0)
    k = (d / b) ** 2
    rim = 2.0 * p * k / (1.0 - k)
    finite = np.where(np.isinf(b), 0.0, b)
    growth = finite * rim / np.asarray(e_o, dtype=np.float64)
    shrink = a * at_bore / np.asarray(e_i, dtype=np.float64)
    return PressFit(*np.broadcast_arrays(p, at_bore, at_seat, hub, rim, shrink, growth))


def equivalent_stress(hoop: ArrayLike, radial: ArrayLike) -> Array:
    """Distortion-energy stress of hoop and radial stress, MPa (axial stress zero; Shigley 8th ed. eq 5-15)."""
    h, r = np.asarray(hoop, dtype=np.float64), np.asarray(radial, dtype=np.float64)
    return np.sqrt(h * h - h * r + r * r)


def pressing_force(
    pressure: ArrayLike, interface_diameter: ArrayLike, contact_width: ArrayLike, friction: ArrayLike
) -> Array:
    """Axial force to push a fitted ring along its seat, N: friction times pressure times area (Coulomb).

    Pressure in MPa (>= 0), diameter and width in mm (> 0), friction coefficient 0 to 1.
    """
    p = _checked("pressure", pressure, 0.0, np.inf)
    d = _checked("interface_diameter", interface_diameter, 0.0, np.inf, open_ends=True)
    b = _checked("contact_width", contact_width, 0.0, np.inf)
    return _checked("friction", friction, 0.0, 1.0) * np.pi * d * b * p


def thermal_interference_change(
    diameter: ArrayLike,
    inner_expansion: ArrayLike,
    inner_temperature: ArrayLike,
    outer_expansion: ArrayLike,
    outer_temperature: ArrayLike,
    reference_temperature: ArrayLike = REFERENCE_TEMPERATURE,
) -> Array:
    """Change of interference between drawing temperature and use, mm; positive is tighter.

    Parameters
    ----------
    diameter : array_like
        Common diameter, mm.
    inner_expansion, outer_expansion : array_like
        Coefficients of linear expansion of the inner and the outer body, 1/K.
    inner_temperature, outer_temperature, reference_temperature : array_like
        degC.

    Returns
    -------
    ndarray
        mm. On a shaft the inner body is the shaft; in a housing it is the outer ring.
    """
    d = _checked("diameter", diameter, 0.0, np.inf, open_ends=True)
    t_0 = np.asarray(reference_temperature, dtype=np.float64)
    rise_i = np.asarray(inner_temperature, dtype=np.float64) - t_0
    rise_o = np.asarray(outer_temperature, dtype=np.float64) - t_0
    return d * (
        np.asarray(inner_expansion, dtype=np.float64) * rise_i - np.asarray(outer_expansion, dtype=np.float64) * rise_o
    )


def rotation_interference_loss(
    interface_diameter: ArrayLike,
    inner_body_bore: ArrayLike,
    outer_body_diameter: ArrayLike,
    speed: ArrayLike,
    inner_density: ArrayLike,
    inner_elastic_modulus: ArrayLike,
    inner_poisson_ratio: ArrayLike,
    outer_density: ArrayLike,
    outer_elastic_modulus: ArrayLike,
    outer_poisson_ratio: ArrayLike,
) -> Array:
    """Interference lost because the outer body grows more than the inner one when both turn, mm.

    Parameters as in ``contact_pressure`` with densities in kg/m3 and the speed in r/min. A ring on its shaft: both
    bodies turn. Negative (tighter) where a light or stiff ring sits on a heavy, soft shaft. Growth of each body at
    the interface as a free rotating annulus (Shigley 8th ed. eq 3-55 with Hooke's law).
    """
    d = np.asarray(interface_diameter, dtype=np.float64)
    outer = diameter_change_by_rotation(
        d, d, outer_body_diameter, speed, outer_density, outer_elastic_modulus, outer_poisson_ratio
    )
    inner = diameter_change_by_rotation(
        d, inner_body_bore, d, speed, inner_density, inner_elastic_modulus, inner_poisson_ratio
    )
    return outer - inner


def speed_at_loss(
    interference: ArrayLike,
    interface_diameter: ArrayLike,
    inner_body_bore: ArrayLike,
    outer_body_diameter: ArrayLike,
    inner_density: ArrayLike,
    inner_elastic_modulus: ArrayLike,
    inner_poisson_ratio: ArrayLike,
    outer_density: ArrayLike,
    outer_elastic_modulus: ArrayLike,
    outer_poisson_ratio: ArrayLike,
) -> Array:
    """Speed at which a rotating fit has no interference left, r/min.

    Parameters as in ``rotation_interference_loss``; the interference (mm) is the one present at standstill with
    temperature and smoothing already taken off. Zero where it is not positive to begin with, infinite where rotation
    does not loosen the fit. The loss grows with the square of speed, so the inversion is exact.
    """
    unit = 1000.0
    loss = rotation_interference_loss(
        interface_diameter,
        inner_body_bore,
        outer_body_diameter,
        unit,
        inner_density,
        inner_elastic_modulus,
        inner_poisson_ratio,
        outer_density,
        outer_elastic_modulus,
        outer_poisson_ratio,
    )
    i = np.maximum(np.asarray(interference, dtype=np.float64), 0.0)
    i, loss = np.broadcast_arrays(i, loss)
    never = np.where(i > 0.0, np.inf, np.where(np.isnan(i), np.nan, 0.0))
    share = np.divide(i, loss, out=never.copy(), where=~(loss <= 0.0))
    return unit * np.sqrt(share)
