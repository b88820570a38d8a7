"""Heat of a bearing: friction power, what it gives off, the temperature it comes to, thermal speeds, time.

Diameters, widths in mm, areas in mm², speeds in r/min, torques in N mm, powers in W, temperatures in degC, conductances
in W/K, heat capacities in J/K, times in s. All functions broadcast; NaN passes.
"""

from collections.abc import Callable, Sequence
from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import boundary, domain, friction, tables
from linter.mechanics.roots import falling_root

Array = NDArray[np.float64]

#: Reference conditions of ISO 15312: bearing and surroundings [degC], share of C_0r as load, oil at 70 degC [mm²/s].
REFERENCE_BEARING, REFERENCE_AMBIENT, REFERENCE_LOAD_SHARE, REFERENCE_VISCOSITY = 70.0, 20.0, 0.05, 12.0
REFERENCE_DIFFERENCE = REFERENCE_BEARING - REFERENCE_AMBIENT
#: Heat that one l/min of oil carries off per K of its rise [W] (from memory of DIN 732:2010; 1.7 kJ/(l K)).
OIL_HEAT = 28.6


def friction_power(torque: ArrayLike, speed: ArrayLike) -> Array:
    """Power P = M ω [W]; torque in N mm and speed in r/min >= 0 (ValueError).

    Catalogues print 1.05·10⁻⁴ M n, which is 0.27 % high.
    """
    return np.asarray(1e-3 * domain.not_negative("torque", torque) * domain.not_negative("speed", speed) * np.pi / 30.0)


def reference_area(bore_diameter: ArrayLike, outside_diameter: ArrayLike, ring_width: ArrayLike) -> Array:
    """Heat-emitting reference area A_r = π B (d + D) of a radial bearing [mm²]; sizes > 0 (ValueError).

    Source: from memory of ISO 15312:2018.
    """
    return np.asarray(
        np.pi
        * domain.positive("ring width", ring_width)
        * (domain.positive("bore diameter", bore_diameter) + domain.positive("outside diameter", outside_diameter))
    )


def reference_flow(area: ArrayLike) -> Array:
    """Reference heat flow density q_r of a radial bearing [W/mm²] at 50 K; area in mm² > 0 (ValueError).

    0.016 up to 50 000 mm², 0.016 (A_r/50 000)^−0.34 above. Source: from memory of ISO 15312:2018.
    """
    a = domain.positive("area", area)
    return np.asarray(0.016 * np.maximum(a / 50_000.0, 1.0) ** -0.34)


def seat_conductance(bore_diameter: ArrayLike, outside_diameter: ArrayLike, ring_width: ArrayLike) -> Array:
    """Heat per kelvin that leaves a bearing through its seats at the reference flow, q_r A_r/50 K [W/K].

    Arguments as `reference_area`. Source: from memory of ISO 15312:2018 (derived: the flow is taken in proportion to
    the difference of temperature).
    """
    area = reference_area(bore_diameter, outside_diameter, ring_width)
    return np.asarray(reference_flow(area) * area / REFERENCE_DIFFERENCE)


@cache
def _reference_table() -> dict[tuple[str, str], tuple[float, float]]:
    return {
        (row["bearing_type"], series): (float(row["f0r"]), float(row["f1r"]))
        for row in tables.rows("thermal_reference")
        for series in row["series"].split()
    }


def diameter_series(bore_diameter: ArrayLike, outside_diameter: ArrayLike, ring_width: ArrayLike) -> tables.Coded:
    """Dimension series as the thermal coefficients want it: that of ISO 15 where the size is in its table, else ``62``.

    Sizes in mm; empty where one is not known. Series 62 for an unlisted size is the middle of those that the
    coefficients know (own choice; f_0r then lies within 15 % of the others).
    """
    sizes = [np.asarray(size, np.float64) for size in (bore_diameter, outside_diameter, ring_width)]
    known = ~np.isnan(sizes[0] + sizes[1] + sizes[2])
    series = boundary.coded_series(bore_diameter, outside_diameter, ring_width)
    listed = np.array([any(name == one for _, one in _reference_table()) for name in series.known])[series.code]
    names = (*series.known[:-1], "62", "")
    return tables.Coded(names, np.where(listed, series.code, np.where(known, len(names) - 2, -1)))


def reference_coefficients(
    bearing_type: ArrayLike | tables.Coded, series: ArrayLike | tables.Coded
) -> tuple[Array, Array]:
    """Coefficients (f_0r, f_1r) of the thermal reference speed; NaN where none are published.

    Kind of bearing in words of the vocabulary, series such as ``62``. Source: ``data/thermal_reference.csv``.
    """
    kind, of = tables.coded(bearing_type), tables.coded(series)
    found = np.moveaxis(_reference_grid(kind.known, of.known)[kind.code, of.code], -1, 0)
    return found[0], found[1]


@cache
def _reference_grid(kinds: tuple[str, ...], series: tuple[str, ...]) -> Array:
    none = (np.nan, np.nan)
    factors = [[_reference_table().get((word, one), none) for one in series] for word in kinds]
    return np.array(factors).reshape(len(kinds), len(series), 2)


def reference_speed(
    bore_diameter: ArrayLike,
    outside_diameter: ArrayLike,
    ring_width: ArrayLike,
    static_rating: ArrayLike,
    lubricant_factor: ArrayLike,
    load_factor: ArrayLike,
    viscosity: ArrayLike = REFERENCE_VISCOSITY,
) -> Array:
    """Thermal reference speed n_θr of a radial bearing [r/min].

    The speed at which friction under 0.05 C_0r, with oil of 12 mm²/s at 70 degC, is the reference heat flow of its
    seats at 50 K: π n/30·10³ [10⁻⁷ f_0r (ν_r n)^(2/3) d_m³ + f_1r P_1r d_m] = q_r A_r.

    Parameters
    ----------
    bore_diameter, outside_diameter, ring_width
        mm, > 0.
    static_rating
        C_0r, N, > 0.
    lubricant_factor, load_factor
        f_0r and f_1r, > 0 (`reference_coefficients`).
    viscosity
        mm²/s, > 0.

    Returns
    -------
    ndarray
        r/min, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    Source: ISO 15312:2018 (balance read in public source text; reference conditions read at SKF, reference speeds;
    area, flow and coefficients from memory).

    """
    area = reference_area(bore_diameter, outside_diameter, ring_width)
    given = reference_flow(area) * area
    d_m = 0.5 * (np.asarray(bore_diameter, np.float64) + np.asarray(outside_diameter, np.float64))
    load = REFERENCE_LOAD_SHARE * domain.positive("static rating", static_rating)
    f_0, f_1 = domain.positive("lubricant factor", lubricant_factor), domain.positive("load factor", load_factor)
    nu = domain.positive("viscosity", viscosity)

    def left(x: Array, given: Array, factor: Array, nu: Array, cube: Array, by_load: Array) -> Array:
        n = np.exp(x)
        return given - 1e-3 * n * np.pi / 30.0 * (factor * np.cbrt(nu * n) ** 2 * cube + by_load)

    arrays = np.broadcast_arrays(given, 1e-7 * f_0, nu, d_m**3, f_1 * load * d_m)
    start = np.zeros(arrays[0].size)
    found = falling_root(left, start, start + np.log(1e8), [part.ravel() for part in arrays])
    return np.exp(found).reshape(arrays[0].shape)


class PermissibleSpeed(NamedTuple):
    """Thermally permissible speed, arrays of one shape.

    Attributes
    ----------
    heat : ndarray
        Heat that can flow off [W].
    lubricant_share, load_share : ndarray
        K_L and K_P: friction powers at the reference speed over that heat.
    ratio : ndarray
        f_n.
    speed : ndarray
        n_ref f_n [r/min].
    """

    heat: Array
    lubricant_share: Array
    load_share: Array
    ratio: Array
    speed: Array


def permissible_speed(
    reference_speed: ArrayLike,
    mean_diameter: ArrayLike,
    conductance: ArrayLike,
    temperature_difference: ArrayLike,
    lubricant_factor: ArrayLike,
    viscosity: ArrayLike,
    load_factor: ArrayLike,
    friction_load: ArrayLike,
    oil_flow: ArrayLike = 0.0,
    oil_rise: ArrayLike = 0.0,
) -> PermissibleSpeed:
    """Thermally permissible speed for the real load, lubricant, cooling and temperatures.

    n = n_ref f_n with K_L f_n^(5/3) + K_P f_n = 1, K_L and K_P the two friction powers at n_ref over the heat that can
    flow off: conductance times difference, and 28.6 W per l/min and K of oil.

    Parameters
    ----------
    reference_speed
        r/min, > 0; it only scales, the answer does not depend on it.
    mean_diameter
        d_m, mm, > 0.
    conductance
        W/K, > 0 (`seat_conductance`, `cooling.surface_conductance`).
    temperature_difference
        Between bearing and surroundings, K, > 0.
    lubricant_factor, viscosity
        f_0 and ν at the temperature of the bearing [mm²/s], > 0.
    load_factor, friction_load
        f_1 and P_1 [N], >= 0.
    oil_flow, oil_rise
        l/min and K, >= 0.

    Returns
    -------
    PermissibleSpeed
        Of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    Source: from memory of DIN 732:2010.

    """
    n = domain.positive("reference speed", reference_speed)
    d_m = domain.positive("mean diameter", mean_diameter)
    seats = domain.positive("conductance", conductance) * domain.positive("difference", temperature_difference)
    heat = seats + OIL_HEAT * domain.not_negative("oil flow", oil_flow) * domain.not_negative("oil rise", oil_rise)
    drag = 1e-7 * domain.positive("lubricant factor", lubricant_factor) * d_m**3
    drag = drag * np.cbrt(domain.positive("viscosity", viscosity) * n) ** 2
    k_l = friction_power(drag, n) / heat
    k_p = friction_power(friction.load_torque(load_factor, friction_load, d_m), n) / heat
    arrays = np.broadcast_arrays(k_l, k_p)
    end = np.full(arrays[0].size, 25.0)
    found = falling_root(_friction_left, -end, end, [part.ravel() for part in arrays])
    ratio = np.exp(found).reshape(arrays[0].shape)
    return PermissibleSpeed(np.asarray(heat), np.asarray(k_l), np.asarray(k_p), ratio, n * ratio)


def _friction_left(x: Array, k_l: Array, k_p: Array) -> Array:
    return 1.0 - k_l * np.exp(5.0 * x / 3.0) - k_p * np.exp(x)


def temperature_rise(power: ArrayLike, conductance: ArrayLike) -> Array:
    """Steady rise over the surroundings, P/W_s [K]; power >= 0 and conductance > 0 (ValueError).

    Source: SKF, power loss and bearing temperature.
    """
    return np.asarray(domain.not_negative("power", power) / domain.positive("conductance", conductance))


def balance_temperature(
    power_at: Callable[..., Array],
    given_off_at: Callable[..., Array],
    ambient: ArrayLike,
    most: float = 400.0,
    given: Sequence[ArrayLike] = (),
) -> Array:
    """Temperature at which a bearing gives off what its friction makes [degC].

    Parameters
    ----------
    power_at, given_off_at : function
        From a temperature in degC, shape (rows,), and the arrays given to the friction power and to the heat given off
        [W]; the first may fall with temperature, the second must rise, so that there is one root.
    ambient
        degC.
    most : float
        Hottest temperature that is looked for.
    given : sequence of array_like
        What the functions take besides, of the shape of ``ambient``: they are called for the rows still sought alone,
        so that whatever differs from row to row comes this way.

    Returns
    -------
    ndarray
        degC, of the shape of ``ambient``; NaN where one of the functions is, infinite where even ``most`` is too cold.
    """
    cold = np.asarray(ambient, np.float64)
    rows = [np.broadcast_to(part, cold.shape).ravel() for part in given]

    def left(temperature: Array, *of: Array) -> Array:
        return np.asarray(power_at(temperature, *of) - given_off_at(temperature, *of))

    top = np.full(cold.size, most)
    return falling_root(left, cold.ravel(), top, rows).reshape(cold.shape)


class Cycle(NamedTuple):
    """Temperatures of a periodic duty, arrays of one shape: time constant [s], then degC, and s to 95 % of the rise."""

    time_constant: Array
    steady: Array
    peak: Array
    low: Array
    mean: Array
    nearly_steady: Array


def cycle(
    power: ArrayLike,
    conductance: ArrayLike,
    capacity: ArrayLike,
    on_time: ArrayLike,
    off_time: ArrayLike,
    ambient: ArrayLike,
) -> Cycle:
    """Temperatures of one mass that is heated for a time and left to cool for another, again and again.

    C dT/dt = P − W_s (T − T_a), in closed form; W_s is the same running and standing (a running machine often cools
    better).

    Parameters
    ----------
    power
        While it runs, W, >= 0.
    conductance, capacity
        W_s in W/K and C in J/K, > 0.
    on_time, off_time
        s, > 0 and >= 0.
    ambient
        degC.

    Returns
    -------
    Cycle
        Of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    Peak rise: P/W_s (1 − e^(−t_on/τ))/(1 − e^(−(t_on + t_off)/τ)), τ = C/W_s (derived).

    """
    w, c = domain.positive("conductance", conductance), domain.positive("capacity", capacity)
    on, off = domain.positive("on time", on_time), domain.not_negative("off time", off_time)
    cold = np.asarray(ambient, np.float64)
    tau, steady = c / w, temperature_rise(power, w)
    peak = steady * np.expm1(-on / tau) / np.expm1(-(on + off) / tau)
    low = peak * np.exp(-off / tau)
    mean = steady * on / (on + off)
    shape = np.broadcast(steady, tau, peak).shape
    return Cycle(*(np.broadcast_to(x, shape) for x in
                   (tau, cold + steady, cold + peak, cold + low, cold + mean, tau * np.log(20.0))))  # fmt: skip


def time_to(temperature: ArrayLike, start: ArrayLike, end: ArrayLike, time_constant: ArrayLike) -> Array:
    """Time in which one mass goes from a start to a temperature on its way to an end, τ ln((T_0 − T_e)/(T − T_e)) [s].

    Time constant > 0 (ValueError); NaN where the temperature does not lie between start and end.
    """
    now, first, last = (np.asarray(t, np.float64) for t in (temperature, start, end))
    share = np.divide(first - last, now - last, out=np.full(np.broadcast(now, first, last).shape, np.nan),
                      where=now != last)  # fmt: skip
    return np.where(
        share >= 1.0, domain.positive("time constant", time_constant) * np.log(np.maximum(share, 1.0)), np.nan
    )
