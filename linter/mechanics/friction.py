"""Friction torque of rolling bearings: lubricant, load and seals apart; three published ways.

Diameters in mm, loads in N, speeds in r/min, kinematic viscosities in mm²/s at the temperature of the bearing (of the
base oil where it runs in grease), torques in N mm. All functions broadcast; NaN passes. Tables with a source per row
stand in ``data/friction_*.csv``.
"""

from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain, tables

Array = NDArray[np.float64]

#: Product of viscosity and speed [mm²/s r/min] at which the lubricant term begins to rise.
RISES_FROM = 2000.0
#: Lubrications that put as much oil into the bearing as another one that the tables name (common practice).
_ALIKE = {"grease for high speed": "grease", "oil-air": "oil mist", "under-race oil": "oil jet"}


def lubricant_torque(
    lubricant_factor: ArrayLike, viscosity: ArrayLike, speed: ArrayLike, mean_diameter: ArrayLike
) -> Array:
    """Speed-dependent friction torque M_0 of the two-term method [N mm].

    10⁻⁷ f_0 (ν n)^(2/3) d_m³ from ν n = 2000 on, 160·10⁻⁷ f_0 d_m³ below; the branches differ by 0.8 % at the joint.
    Arguments >= 0 (ValueError). Source: Palmgren; form as in ISO/TR 14179-2.
    """
    f_0 = domain.not_negative("lubricant factor", lubricant_factor)
    product = domain.not_negative("viscosity", viscosity) * domain.not_negative("speed", speed)
    d_m = domain.not_negative("mean diameter", mean_diameter)
    rising = np.where(product >= RISES_FROM, np.cbrt(product) ** 2, 160.0)
    return np.asarray(1e-7 * f_0 * np.where(np.isnan(product), np.nan, rising) * d_m**3)


def load_factor(coefficient: ArrayLike, exponent: ArrayLike, static_load: ArrayLike, static_rating: ArrayLike) -> Array:
    """Factor f_1 = z (P_0/C_0)^y of the load-dependent torque; rating > 0, others >= 0 (ValueError).

    Source: Palmgren; z and y in ``data/friction_load.csv``.
    """
    share = domain.not_negative("static load", static_load) / domain.positive("static rating", static_rating)
    return np.asarray(domain.not_negative("coefficient", coefficient) * share ** np.asarray(exponent, np.float64))


def load_torque(load_factor: ArrayLike, friction_load: ArrayLike, mean_diameter: ArrayLike) -> Array:
    """Load-dependent friction torque M_1 = f_1 P_1 d_m [N mm]; arguments >= 0 (ValueError). Source: Palmgren."""
    return np.asarray(
        domain.not_negative("load factor", load_factor)
        * domain.not_negative("friction load", friction_load)
        * domain.not_negative("mean diameter", mean_diameter)
    )


@cache
def _lubricant_table() -> dict[tuple[str, str], tuple[float, float]]:
    return {
        (row["bearing_type"], row["lubrication"]): (float(row["f0_low"]), float(row["f0_high"]))
        for row in tables.rows("friction_lubricant")
    }


def lubricant_factor(
    bearing_type: ArrayLike | tables.Coded, lubrication: ArrayLike | tables.Coded
) -> tuple[Array, Array]:
    """Least and largest factor f_0 of a kind of bearing in a lubrication; NaN where none is published.

    Parameters
    ----------
    bearing_type, lubrication : array_like of str
        Words of the vocabulary. Oil-air is taken as oil mist, oil under the race as an oil jet, any grease as grease;
        dry films have no such factor.

    Returns
    -------
    low, high : ndarray
        Light series and little lubricant; heavy series and much.

    Notes
    -----
    Source: ``data/friction_lubricant.csv``.
    """
    kind, way = tables.coded(bearing_type), tables.coded(lubrication)
    low, high = _lubricant_grid(kind.known, way.known)
    return low[kind.code, way.code], high[kind.code, way.code]


@cache
def _lubricant_grid(kinds: tuple[str, ...], ways: tuple[str, ...]) -> Array:
    """Least and largest f_0 by end, kind of bearing and lubrication, NaN where none is published."""
    none = (np.nan, np.nan)
    ends = [[_lubricant_table().get((one, _ALIKE.get(other, other)), none) for other in ways] for one in kinds]
    return np.moveaxis(np.array(ends).reshape(len(kinds), len(ways), 2), -1, 0)


class LoadTerm(NamedTuple):
    """What the load-dependent torque rests on, arrays of one shape.

    Attributes
    ----------
    friction_load : ndarray
        P_1 [N].
    static_load : ndarray
        P_0 [N].
    factor : ndarray
        f_1.
    """

    friction_load: Array
    static_load: Array
    factor: Array


@cache
def _load_table(bearing_type: str) -> NDArray[np.float64]:
    """Rows of contact angle, z, y, axial factor, X_0, Y_0 of a kind of bearing, by rising angle."""
    names = ("contact_angle", "coefficient", "exponent", "axial_factor", "static_radial", "static_axial")
    found = [[float(r[n]) for n in names] for r in tables.rows("friction_load") if r["bearing_type"] == bearing_type]
    return np.array(sorted(found)).reshape(-1, len(names))


def load_term(
    bearing_type: ArrayLike | tables.Coded,
    contact_angle: ArrayLike,
    radial_load: ArrayLike,
    axial_load: ArrayLike,
    static_rating: ArrayLike,
) -> LoadTerm:
    """Loads and factor of the load-dependent torque by the kind of bearing.

    P_1 = max(a F_a − 0.1 F_r, F_r), P_0 = max(X_0 F_r + Y_0 F_a, F_r), f_1 = z (P_0/C_0)^y; between tabulated contact
    angles linear, beyond them the nearest (own choice).

    Parameters
    ----------
    bearing_type : array_like of str
        Words of the vocabulary.
    contact_angle
        Nominal, deg; 0 for deep groove and roller bearings.
    radial_load, axial_load
        N, >= 0; the preload counts as axial load.
    static_rating
        C_0, N, > 0.

    Returns
    -------
    LoadTerm
        NaN where no factors are published for the kind.

    Raises
    ------
    ValueError
        A load or rating out of range.

    Notes
    -----
    Source: ``data/friction_load.csv``.
    """
    radial, axial = domain.not_negative("radial load", radial_load), domain.not_negative("axial load", axial_load)
    kind = tables.coded(bearing_type)
    code, angle, radial, axial, rating = np.broadcast_arrays(
        kind.code, np.asarray(contact_angle, np.float64), radial, axial, domain.positive("static rating", static_rating)
    )
    factors = np.full((5, *code.shape), np.nan)
    for index, word in enumerate(kind.known):
        rows, here = _load_table(word), code == index
        if len(rows) and here.any():
            factors[:, here] = [np.interp(angle[here], rows[:, 0], rows[:, k]) for k in range(1, 6)]
    z, y, a, x_0, y_0 = factors
    friction_load = np.maximum(a * axial - 0.1 * radial, radial)
    static_load = np.maximum(x_0 * radial + y_0 * axial, radial)
    return LoadTerm(friction_load, static_load, load_factor(z, y, static_load, rating))


@cache
def _seal_table() -> Array:
    """Ranges of the outside diameter, exponent and both constants of contact seals, shape (5, ranges)."""
    names = ("outside_over", "outside_incl", "exponent", "K_S1", "K_S2")
    return np.array([[float(row[name]) for row in tables.rows("friction_seal")] for name in names])


def seal_torque(outside_diameter: ArrayLike, seal_lip_diameter: ArrayLike) -> Array:
    """Friction torque of a pair of contact seals, K_S1 d_s^2.25 + K_S2 [N mm].

    Outside diameter of the bearing to 400 mm (NaN beyond), lip diameter >= 0 (ValueError). It is an upper estimate for
    small bearings, whose lips are lighter. Source: ``data/friction_seal.csv``.
    """
    lip = domain.not_negative("seal lip diameter", seal_lip_diameter)
    outside, lip = np.broadcast_arrays(domain.positive("outside diameter", outside_diameter), lip)
    over, incl, *constants = _seal_table()
    beta, k_1, k_2 = tables.in_ranges(over, incl, constants, outside)
    return np.asarray(k_1 * lip**beta + k_2)


def coefficient_torque(coefficient: ArrayLike, load: ArrayLike, bore_diameter: ArrayLike) -> Array:
    """Friction torque M = μ P d/2 by one coefficient [N mm]; arguments >= 0 (ValueError).

    It knows neither speed nor lubricant and is far too low where the lubricant rules. Source: JTEKT, bearing knowledge,
    8; coefficients in ``data/friction_coefficient.csv``.
    """
    return np.asarray(
        0.5
        * domain.not_negative("coefficient", coefficient)
        * domain.not_negative("load", load)
        * domain.not_negative("bore diameter", bore_diameter)
    )


class MakerTorque(NamedTuple):
    """Friction torque by the maker's method of rolling and sliding, arrays of one shape, torques in N mm."""

    rolling_variable: Array
    sliding_variable: Array
    inlet_factor: Array
    starvation_factor: Array
    mixed_share: Array
    sliding_coefficient: Array
    rolling: Array
    sliding: Array
    total: Array


def maker_constants(series: str) -> tuple[float, float, float, float]:
    """Constants (R_1, R_2, S_1, S_2) of a series of deep groove ball bearings.

    Parameters
    ----------
    series : str
        ``60``, ``62``, ``619`` and so on; ValueError for one that the table lacks.

    Returns
    -------
    tuple of float
        For :func:`maker_torque`.

    Raises
    ------
    ValueError
        If the series is not in ``data/friction_maker.csv``, where the source is.
    """
    for row in tables.rows("friction_maker"):
        if series in row["series"].split():
            return float(row["R1"]), float(row["R2"]), float(row["S1"]), float(row["S2"])
    raise ValueError(f"no constants for series {series!r}: expected a series of deep groove ball bearings such as 62")


def maker_torque(
    bore_diameter: ArrayLike,
    outside_diameter: ArrayLike,
    static_rating: ArrayLike,
    radial_load: ArrayLike,
    axial_load: ArrayLike,
    viscosity: ArrayLike,
    speed: ArrayLike,
    constants: tuple[float, float, float, float],
    starvation: float = 6e-8,
    geometry: float = 3.1,
    boundary_coefficient: float = 0.12,
    film_coefficient: float = 0.05,
) -> MakerTorque:
    """Friction torque of a deep groove ball bearing by rolling and sliding, without drag and seals.

    Parameters
    ----------
    bore_diameter, outside_diameter
        mm, > 0.
    static_rating
        C_0, N, > 0.
    radial_load, axial_load
        N, >= 0.
    viscosity, speed
        mm²/s and r/min, > 0.
    constants
        (R_1, R_2, S_1, S_2) of the series, :func:`maker_constants`.
    starvation
        K_rs: 3e-8 for a low oil level or an oil jet, 6e-8 for grease and oil-air.
    geometry
        K_Z, 3.1 for deep groove ball bearings.
    boundary_coefficient, film_coefficient
        Sliding friction without a film (0.12), and in a full film (0.05 mineral oil, 0.04 synthetic).

    Returns
    -------
    MakerTorque
        Torques with the factors they are made of.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    Source: SKF, General catalogue 6000 EN, 2006, chapter Friction (constants read, formulas from memory).

    """
    d, outside = domain.positive("bore diameter", bore_diameter), domain.positive("outside diameter", outside_diameter)
    f_r, f_a = domain.not_negative("radial load", radial_load), domain.not_negative("axial load", axial_load)
    nu, n = domain.positive("viscosity", viscosity), domain.positive("speed", speed)
    r_1, r_2, s_1, s_2 = constants
    d_m = 0.5 * (d + outside)
    pure = f_a == 0.0
    angle = 24.6 * (np.where(pure, 1.0, f_a) / domain.positive("C_0", static_rating)) ** 0.24
    sine = np.sin(np.deg2rad(np.minimum(angle, 90.0)))
    g_rr = r_1 * d_m**1.96 * (f_r + np.where(pure, 0.0, r_2 / sine * f_a)) ** 0.54
    g_sl = np.where(
        pure,
        s_1 * d_m**-0.26 * f_r ** (5.0 / 3.0),
        s_1 * d_m**-0.145 * np.cbrt(f_r**5 + s_2 * d_m**1.5 / sine * f_a**4),
    )
    inlet = 1.0 / (1.0 + 1.84e-9 * (n * d_m) ** 1.28 * nu**0.64)
    starved = np.exp(-starvation * nu * n * (d + outside) * np.sqrt(geometry / (2.0 * (outside - d))))
    mixed = np.exp(-2.6e-8 * (n * nu) ** 1.4 * d_m)
    mu = mixed * boundary_coefficient + (1.0 - mixed) * film_coefficient
    rolling, sliding = inlet * starved * g_rr * (nu * n) ** 0.6, g_sl * mu
    return MakerTorque(g_rr, np.asarray(g_sl), inlet, starved, mixed, mu, rolling, sliding, rolling + sliding)
