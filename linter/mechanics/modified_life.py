"""Modified rating life after ISO 281: lubrication, contamination and the fatigue load limit.

Lengths in mm, loads in N, viscosities in mm²/s. All functions broadcast. The constants are those of ISO 281:2007, read
in GOST 18855-2013 (MOD); those of e_C for oil also stand in the SKF Rolling bearings catalogue, Table 7.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain

# b and c of b/κ^c in the three ranges 0.1..0.4, 0.4..1, 1..4 (ISO 281:2007, 9.3.3).
_VISCOSITY_TERM = {
    "ball": ((2.2649, 0.054381), (1.9987, 0.19087), (1.9987, 0.071739)),
    "roller": ((1.3993, 0.054381), (1.2348, 0.19087), (1.2348, 0.071739)),
}
# First constant, power of the viscosity term, power of the load term, outer power (the same place).
_LIFE_TERM = {"ball": (2.5671, 0.83, 1.0 / 3.0, -9.3), "roller": (1.5859, 1.0, 0.4, -9.185)}
#: Largest a_ISO (ISO 281:2007, 9.3.3.4).
LARGEST_LIFE_FACTOR = 50.0

#: Words of cleanliness, best first (ISO 281:2007 Table 13; "cleanliness" left out of the first three).
CLEANLINESS = (
    "extreme",
    "high",
    "normal",
    "slight contamination",
    "typical contamination",
    "severe contamination",
    "very severe contamination",
)
# c1, c2 of e_C = min(c1 κ^0.68 D_pw^0.55, 1)(1 − c2/D_pw^(1/3)), one pair per word from "high" on.
# Grease: ISO 281:2007 Annex A, Figures A.10 to A.14, which has one row for slight to typical contamination (its second
# constant is 1.677 from D_pw = 500 mm). Oil: rows by ISO 4406 code, SKF catalogue Table 7 and ISO 281 Figures A.1 to
# A.9 as in GOST 18855-2013 (0.6796 of the first row of oil: Figure A.5, p. 35); the standard sets codes, the
# words beside them are common practice. In-line filter -/13/10, -/15/12, -/17/14, -/19/16; the off-line rows end with
# -/21/18, which stands for severe contamination of filtered oil too. Very severely contaminated oil: e_C = 0
# (ISO 281:2007 Table 13).
_SLIGHT_TO_TYPICAL_LARGE = 1.677
_CONTAMINATION = {
    "grease": (
        (0.0864, 0.6796), (0.0432, 1.141), (0.0177, 1.887), (0.0177, 1.887), (0.0115, 2.662), (0.00617, 4.06),
    ),
    "filtered oil": (
        (0.0864, 0.5663), (0.0432, 0.9987), (0.0288, 1.6329), (0.0216, 2.3362), (0.00411, 3.8974), (0.0, 0.0),
    ),
    "oil": (
        (0.0864, 0.6796), (0.0288, 1.141), (0.0133, 1.670), (0.00864, 2.5164), (0.00411, 3.8974), (0.0, 0.0),
    ),
}  # fmt: skip


def limited_viscosity_ratio(viscosity_ratio: ArrayLike) -> NDArray[np.float64]:
    """Viscosity ratio κ held to the range 0.1..4 that ISO 281 covers.

    Above 4 the standard uses 4. Below 0.1 it gives no factor; 0.1, where a_ISO of a ball bearing is 0.1 whatever the
    load, is used as the most favourable value. κ > 0 (ValueError).
    """
    return np.asarray(np.clip(domain.positive("viscosity ratio", viscosity_ratio), 0.1, 4.0))


def life_modification_factor(
    viscosity_ratio: ArrayLike,
    contamination_factor: ArrayLike,
    fatigue_load_limit: ArrayLike,
    equivalent_load: ArrayLike,
    rolling_element: str = "ball",
) -> NDArray[np.float64]:
    """Life modification factor a_ISO of the systems approach, for radial bearings.

    Parameters
    ----------
    viscosity_ratio
        κ, > 0; held to 0.1..4 (`limited_viscosity_ratio`).
    contamination_factor
        e_C, 0..1.
    fatigue_load_limit, equivalent_load
        C_u >= 0 and P > 0, in one unit.
    rolling_element
        ``"ball"`` or ``"roller"``.

    Returns
    -------
    a_ISO, 0.1..50.

    Raises
    ------
    ValueError
        An argument out of range or an unknown word.

    Notes
    -----
    Balls: 0.1 [1 − (2.5671 − b/κ^c)^0.83 (e_C C_u/P)^(1/3)]^(−9.3); rollers: 0.1 [1 − (1.5859 − b/κ^c)
    (e_C C_u/P)^0.4]^(−9.185). Where the bracket falls to nothing the cap of 50 holds. Source: ISO 281:2007 equations
    (31) to (36).

    """
    if rolling_element not in _LIFE_TERM:
        raise ValueError(f"rolling element must be 'ball' or 'roller', got {rolling_element!r}")
    kappa = limited_viscosity_ratio(viscosity_ratio)
    e_c, c_u = np.asarray(contamination_factor, np.float64), np.asarray(fatigue_load_limit, np.float64)
    if np.any((e_c < 0.0) | (e_c > 1.0)):
        raise ValueError(f"contamination factor must lie from 0 to 1, got {e_c.tolist()!r}"[:200])
    if np.any(c_u < 0.0):
        raise ValueError(f"fatigue load limit must not be negative, got {float(np.nanmin(c_u))!r}")
    first, power, load_power, outer = _LIFE_TERM[rolling_element]
    (b_1, c_1), (b_2, c_2), (b_3, c_3) = _VISCOSITY_TERM[rolling_element]
    b = np.where(kappa < 0.4, b_1, np.where(kappa < 1.0, b_2, b_3))
    c = np.where(kappa < 0.4, c_1, np.where(kappa < 1.0, c_2, c_3))
    load_term = (e_c * c_u / domain.positive("equivalent load", equivalent_load)) ** load_power
    bracket = 1.0 - np.maximum(first - b / kappa**c, 0.0) ** power * load_term
    smallest = (LARGEST_LIFE_FACTOR / 0.1) ** (1.0 / outer)
    return np.asarray(np.minimum(0.1 * np.maximum(bracket, smallest) ** outer, LARGEST_LIFE_FACTOR))


def contamination_factor(
    cleanliness: ArrayLike, viscosity_ratio: ArrayLike, pitch_diameter: ArrayLike, lubrication: ArrayLike = "grease"
) -> NDArray[np.float64]:
    """Contamination factor e_C from the cleanliness in words.

    Parameters
    ----------
    cleanliness
        Words of `CLEANLINESS`; an array of words broadcasts with the numbers.
    viscosity_ratio
        κ, > 0; held to 0.1..4.
    pitch_diameter
        D_pw, mm, > 0 (the mean of bore and outside diameter stands in for it).
    lubrication
        ``"grease"``, ``"oil"`` (bath, unfiltered or off-line filter) or ``"filtered oil"`` (in-line filter).

    Returns
    -------
    e_C, 0..1; 1 for extreme cleanliness (``"extreme"``).

    Raises
    ------
    ValueError
        An unknown word or a number out of range.

    Notes
    -----
    e_C = min(c1 κ^0.68 D_pw^0.55, 1) (1 − c2/D_pw^(1/3)), not below 0. Source: ISO 281:2007 Annex A and
    SKF Rolling bearings catalogue Table 7 for oil; see the constants in this module for what the words stand for.

    """
    kappa = limited_viscosity_ratio(viscosity_ratio)
    d_pw = domain.positive("pitch diameter", pitch_diameter)
    word, medium = np.asarray(cleanliness, dtype=np.str_), np.asarray(lubrication, dtype=np.str_)
    for name, given, known in (("cleanliness", word, CLEANLINESS), ("lubrication", medium, tuple(_CONTAMINATION))):
        unknown = sorted(set(given.ravel().tolist()) - set(known))
        if unknown:
            raise ValueError(f"{name} must be one of {', '.join(known)}; got {unknown[0]!r}")
    grade = np.select([word == name for name in CLEANLINESS], range(len(CLEANLINESS)), 0)
    kind = np.select([medium == name for name in _CONTAMINATION], range(len(_CONTAMINATION)), 0)
    table = np.array([((1.0, 0.0), *rows) for rows in _CONTAMINATION.values()])
    c_1, c_2 = table[kind, grade, 0], table[kind, grade, 1]
    large = (medium == "grease") & ((grade == 3) | (grade == 4)) & (d_pw >= 500.0)
    c_2 = np.where(large, _SLIGHT_TO_TYPICAL_LARGE, c_2)
    value = np.minimum(c_1 * kappa**0.68 * d_pw**0.55, 1.0) * np.maximum(1.0 - c_2 / np.cbrt(d_pw), 0.0)
    return np.asarray(np.where(grade == 0, 1.0 + 0.0 * value, value))


def fatigue_load_limit(
    static_rating: ArrayLike, pitch_diameter: ArrayLike, rolling_element: str = "ball"
) -> NDArray[np.float64]:
    """Fatigue load limit C_u by the simplified method, in the unit of the static rating.

    C_0/22 up to D_pw = 100 mm, (C_0/22)(100/D_pw)^0.5 above for balls; C_0/8.2 and the power 0.3 for rollers.
    Arguments > 0, an unknown rolling element raises ValueError. Source: ISO 281:2007 Annex B; makers'
    values by the detailed method lie about 7 % lower.
    """
    if rolling_element not in ("ball", "roller"):
        raise ValueError(f"rolling element must be 'ball' or 'roller', got {rolling_element!r}")
    divisor, power = (22.0, 0.5) if rolling_element == "ball" else (8.2, 0.3)
    size = np.minimum(100.0 / domain.positive("pitch diameter", pitch_diameter), 1.0) ** power
    return np.asarray(domain.positive("static load rating", static_rating) / divisor * size)


def modified_life(
    basic_life: ArrayLike, reliability_factor: ArrayLike, life_modification_factor: ArrayLike
) -> NDArray[np.float64]:
    """Modified rating life L_nm = a_1 a_ISO L_10, in the unit of ``basic_life``; all arguments > 0 (ValueError)."""
    factors = domain.positive("reliability factor", reliability_factor) * domain.positive(
        "life modification factor", life_modification_factor
    )
    return np.asarray(factors * domain.positive("basic rating life", basic_life))
