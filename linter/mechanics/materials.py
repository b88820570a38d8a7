"""Material constants by the words of the vocabulary for shafts, housings, balls and rings.

The table is ``data/materials.csv``: a value and the two ends that a drawing's word leaves open, with a source per
value. All functions take an array of words and give an array of the same shape, NaN for an empty word and where the
material has no such property. In balls, ``"steel"`` means bearing steel: pass ``ball=True``.
"""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import tables

_PER = {"expansion": 1e6}  # the table holds expansion in 1e-6/K


@cache
def _constants(name: str) -> dict[str, tuple[float, float, float]]:
    """Value, low and high end of a property by material."""
    per = _PER.get(name, 1.0)
    return {
        row["material"]: (
            tables.number(row["value"]) / per,
            tables.number(row["low"]) / per,
            tables.number(row["high"]) / per,
        )
        for row in tables.rows("materials")
        if row["property"] == name
    }


@cache
def names() -> tuple[str, ...]:
    """Materials in the table."""
    return tuple(dict.fromkeys(row["material"] for row in tables.rows("materials")))


def _look_up(name: str, material: ArrayLike, ball: bool) -> NDArray[np.float64]:
    """Value, low and high end along a new last axis."""
    words, code = tables.coded(material)
    missing = (np.nan, np.nan, np.nan)
    found = []
    for word in words:
        if word and word not in names():
            raise ValueError(f"{word!r} is not a known material: expected one of {', '.join(names())}")
        found.append(_constants(name).get("bearing steel" if ball and word == "steel" else word, missing))
    return np.array(found).reshape(-1, 3)[code]


def expansion(material: ArrayLike, ball: bool = False) -> NDArray[np.float64]:
    """Coefficient of linear expansion near room temperature.

    Parameters
    ----------
    material : array_like of str
        Words such as ``"steel"``, ``"aluminium"``, ``"silicon nitride"``, ``"bearing steel"``.
    ball : bool, optional
        Whether the words name rolling elements, so that ``"steel"`` is bearing steel.

    Returns
    -------
    ndarray
        Coefficient in 1/K, in the shape of ``material``.

    Raises
    ------
    ValueError
        If a word is not in ``data/materials.csv``, where the sources are.
    """
    return _look_up("expansion", material, ball)[..., 0]


def expansion_range(material: ArrayLike, ball: bool = False) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Lowest and highest coefficient of expansion that the word covers, 1/K; arguments as :func:`expansion`."""
    ends = _look_up("expansion", material, ball)
    return ends[..., 1], ends[..., 2]


def elastic_modulus(material: ArrayLike, ball: bool = False) -> NDArray[np.float64]:
    """Modulus of elasticity in MPa; arguments and errors as :func:`expansion`."""
    return _look_up("elastic_modulus", material, ball)[..., 0]


def poisson_ratio(material: ArrayLike, ball: bool = False) -> NDArray[np.float64]:
    """Poisson's ratio; arguments and errors as :func:`expansion`."""
    return _look_up("poisson_ratio", material, ball)[..., 0]


def density(material: ArrayLike, ball: bool = False) -> NDArray[np.float64]:
    """Density in kg/m3; arguments and errors as :func:`expansion`."""
    return _look_up("density", material, ball)[..., 0]


def yield_strength(material: ArrayLike) -> NDArray[np.float64]:
    """Yield or proof stress in MPa of the weaker usual grade; NaN for ceramics, plastics and hardened ring steels.

    Arguments and errors as :func:`expansion`.
    """
    return _look_up("yield_strength", material, False)[..., 0]


def hoop_stress_limit(material: ArrayLike) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Largest hoop stress at the bore of a shrunk inner ring in MPa, (strict, loose); NaN for other than ring steels.

    Arguments and errors as :func:`expansion`.
    """
    ends = _look_up("hoop_stress_limit", material, False)
    return ends[..., 1], ends[..., 2]
