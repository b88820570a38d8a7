"""What the outside of a housing gives off to the air: free and forced convection, radiation.

Diameters in mm, areas in mm², temperatures in degC, speeds of the air in m/s, conductances in W/K. All functions
broadcast; NaN passes.
"""

from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain, tables

Array = NDArray[np.float64]

_KELVIN = 273.15
_STEFAN_BOLTZMANN = 5.670374e-8  # W/(m² K⁴), CODATA 2018
_GRAVITY = 9.80665  # m/s²


class Air(NamedTuple):
    """Air at 1 bar: viscosity and diffusivity [m²/s], conductivity [W/(m K)], Prandtl number."""

    viscosity: Array
    conductivity: Array
    diffusivity: Array
    prandtl: Array


def air(temperature: ArrayLike) -> Air:
    """Properties of air at 1 bar, linear between tabulated temperatures and held at their ends.

    Temperature in degC. Source: ``data/air.csv``.
    """
    at, values, slopes = _air_table()
    kelvin = np.clip(np.asarray(temperature, np.float64) + _KELVIN, at[0], at[-1])
    row = np.searchsorted(at, kelvin, side="right") - 1
    past = kelvin - at[row]
    nu, k, alpha, prandtl = (slope[row] * past + value[row] for value, slope in zip(values, slopes, strict=True))
    return Air(1e-6 * nu, k, 1e-6 * alpha, prandtl)


@cache
def _air_table() -> tuple[Array, Array, Array]:
    """Temperatures [K], properties of air there and their slopes up to the next row, 0 at the last."""
    names = ("viscosity_mm2_s", "conductivity_W_mK", "diffusivity_mm2_s", "prandtl")
    at = np.array([float(row["temperature_K"]) for row in tables.rows("air")])
    values = np.array([[float(row[name]) for row in tables.rows("air")] for name in names])
    return at, values, np.append(np.diff(values) / np.diff(at), np.zeros((len(names), 1)), axis=1)


def still_air_transfer(diameter: ArrayLike, surface: ArrayLike, ambient: ArrayLike) -> Array:
    """Heat transfer of a horizontal cylinder in still air by free convection [W/(m² K)].

    Diameter in mm > 0 (ValueError), temperatures in degC. Nu = {0.60 + 0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27)}²
    (Churchill and Chu, Ra up to 10¹²). Source: from memory of Incropera and DeWitt, eq. 9.34.
    """
    hot, cold = np.asarray(surface, np.float64), np.asarray(ambient, np.float64)
    middle = 0.5 * (hot + cold)
    return _still(1e-3 * domain.positive("diameter", diameter), hot, cold, middle, air(middle))


def _still(d: Array, hot: Array, cold: Array, middle: Array, film: Air) -> Array:
    """`still_air_transfer` at a diameter in m with the air of the film."""
    expansion = 1.0 / (middle + _KELVIN)
    rayleigh = _GRAVITY * expansion * np.abs(hot - cold) * d**3 / (film.viscosity * film.diffusivity)
    bracket = (1.0 + (0.559 / film.prandtl) ** (9.0 / 16.0)) ** (8.0 / 27.0)
    return np.asarray((0.60 + 0.387 * rayleigh ** (1.0 / 6.0) / bracket) ** 2 * film.conductivity / d)


def air_stream_transfer(diameter: ArrayLike, air_speed: ArrayLike, film_temperature: ArrayLike) -> Array:
    """Heat transfer of a cylinder across an air stream [W/(m² K)].

    Diameter in mm > 0, speed of the air in m/s >= 0 (ValueError), temperature of the film in degC. Nu = 0.3 + 0.62 √Re
    Pr^(1/3)/[1 + (0.4/Pr)^(2/3)]^(1/4) [1 + (Re/282 000)^(5/8)]^(4/5) (Churchill and Bernstein, Re Pr from 0.2).
    Source: from memory of Incropera and DeWitt, eq. 7.57.
    """
    speed = domain.not_negative("air speed", air_speed)
    return _stream(1e-3 * domain.positive("diameter", diameter), speed, air(film_temperature))


def _stream(d: Array, speed: Array, film: Air) -> Array:
    """`air_stream_transfer` at a diameter in m with the air of the film."""
    reynolds = speed * d / film.viscosity
    nusselt = 0.3 + 0.62 * np.sqrt(reynolds) * np.cbrt(film.prandtl) / (
        1.0 + (0.4 / film.prandtl) ** (2.0 / 3.0)
    ) ** 0.25 * (1.0 + (reynolds / 282_000.0) ** (5.0 / 8.0)) ** (4.0 / 5.0)
    return np.asarray(nusselt * film.conductivity / d)


def radiation_transfer(surface: ArrayLike, ambient: ArrayLike, emissivity: ArrayLike) -> Array:
    """Heat transfer by radiation to surroundings of the temperature of the air, ε σ (T² + T_a²)(T + T_a) [W/(m² K)].

    Temperatures in degC, emissivity 0..1 (ValueError).
    """
    hot, cold = (np.asarray(t, np.float64) + _KELVIN for t in (surface, ambient))
    return np.asarray(
        domain.within("emissivity", emissivity, 0.0, 1.0) * _STEFAN_BOLTZMANN * (hot**2 + cold**2) * (hot + cold)
    )


def surface_conductance(
    area: ArrayLike,
    diameter: ArrayLike,
    surface: ArrayLike,
    ambient: ArrayLike,
    air_speed: ArrayLike = 0.0,
    emissivity: ArrayLike = 0.0,
) -> Array:
    """Heat per kelvin that the outside of a housing gives off to the air [W/K].

    The larger of free and forced convection about a cylinder, and radiation.

    Parameters
    ----------
    area, diameter
        Of the outside of the housing, mm² and mm, > 0.
    surface, ambient
        Temperatures of the surface and of the air, degC.
    air_speed
        Of a stream across the housing, m/s, >= 0; 0 in still air.
    emissivity
        0 to 1; bright metal 0.1, painted or anodised 0.8 to 0.9.

    Returns
    -------
    ndarray
        W/K, of the broadcast shape.

    Raises
    ------
    ValueError
        An argument out of range.

    Notes
    -----
    Source: `still_air_transfer`, `air_stream_transfer`, `radiation_transfer`.

    """
    d, speed, hot, cold = np.broadcast_arrays(
        1e-3 * domain.positive("diameter", diameter), domain.not_negative("air speed", air_speed),
        np.asarray(surface, np.float64), np.asarray(ambient, np.float64),
    )  # fmt: skip
    middle = 0.5 * (hot + cold)
    film = air(middle)
    convection = _still(d, hot, cold, middle, film)
    blown = ~(speed <= 0.0)  # without a stream the still air takes more: Nu is 0.36 and above against 0.3
    if blown.any():
        stream = _stream(d[blown], speed[blown], Air(*(part[blown] for part in film)))
        convection[blown] = np.maximum(convection[blown], stream)
    both = convection + radiation_transfer(surface, ambient, emissivity)
    return np.asarray(1e-6 * domain.positive("area", area) * both)
