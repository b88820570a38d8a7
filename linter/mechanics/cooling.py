"""What the outside of a housing gives off to the air: free and forced convection, radiation.

Diameters in mm, areas in mm², temperatures in degC, speeds of the air in m/s, conductances in W/K. All functions
broadcast; NaN passes.
"""

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
    kelvin = np.asarray(temperature, np.float64) + _KELVIN
    rows = tables.rows("air")
    at = [float(row["temperature_K"]) for row in rows]
    nu, k, alpha, prandtl = (
        np.interp(kelvin, at, [float(row[name]) for row in rows])
        for name in ("viscosity_mm2_s", "conductivity_W_mK", "diffusivity_mm2_s", "prandtl")
    )
    return Air(1e-6 * nu, k, 1e-6 * alpha, prandtl)


def still_air_transfer(diameter: ArrayLike, surface: ArrayLike, ambient: ArrayLike) -> Array:
    """Heat transfer of a horizontal cylinder in still air by free convection [W/(m² K)].

    Diameter in mm > 0 (ValueError), temperatures in degC. Nu = {0.60 + 0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27)}²
    (Churchill and Chu, Ra up to 10¹²). Source: from memory of Incropera and DeWitt, eq. 9.34.
    """
    d = 1e-3 * domain.positive("diameter", diameter)
    hot, cold = np.asarray(surface, np.float64), np.asarray(ambient, np.float64)
    film = air(0.5 * (hot + cold))
    expansion = 1.0 / (0.5 * (hot + cold) + _KELVIN)
    rayleigh = _GRAVITY * expansion * np.abs(hot - cold) * d**3 / (film.viscosity * film.diffusivity)
    bracket = (1.0 + (0.559 / film.prandtl) ** (9.0 / 16.0)) ** (8.0 / 27.0)
    return np.asarray((0.60 + 0.387 * rayleigh ** (1.0 / 6.0) / bracket) ** 2 * film.conductivity / d)


def air_stream_transfer(diameter: ArrayLike, air_speed: ArrayLike, film_temperature: ArrayLike) -> Array:
    """Heat transfer of a cylinder across an air stream [W/(m² K)].

    Diameter in mm > 0, speed of the air in m/s >= 0 (ValueError), temperature of the film in degC. Nu = 0.3 + 0.62 √Re
    Pr^(1/3)/[1 + (0.4/Pr)^(2/3)]^(1/4) [1 + (Re/282 000)^(5/8)]^(4/5) (Churchill and Bernstein, Re Pr from 0.2).
    Source: from memory of Incropera and DeWitt, eq. 7.57.
    """
    d = 1e-3 * domain.positive("diameter", diameter)
    film = air(film_temperature)
    reynolds = domain.not_negative("air speed", air_speed) * d / film.viscosity
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
    film = 0.5 * (np.asarray(surface, np.float64) + np.asarray(ambient, np.float64))
    convection = np.maximum(
        still_air_transfer(diameter, surface, ambient), air_stream_transfer(diameter, air_speed, film)
    )
    both = convection + radiation_transfer(surface, ambient, emissivity)
    return np.asarray(1e-6 * domain.positive("area", area) * both)
