"""What an axial preload must exceed and what it must stay below.

Forces in N, stresses in MPa, load ratings in N, speeds in r/min, lengths in mm, angles in degrees. Every function
broadcasts; NaN in, NaN out. Limit numbers (shares, N per mm, factors) are arguments: they belong to the rulebook.

Sources
-------
[SKF254] SKF Rolling bearings catalogue p. 254 (deep groove: minimum load, axial load caps). [SKF398] the same p. 398,
399 (angular contact, four-point contact). [SKF-SPRING] SKF, preloading with springs. [SKF-MIN] SKF, requisite minimum
load. [ISO 76] ISO 76:2006, 4200 MPa and Q_max = 5 F_r/(Z cos alpha).
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import domain

Array = NDArray[np.float64]


STATIC_CONTACT_STRESS = 4200.0
"""Largest Hertz pressure at the basic static load rating of a radial ball bearing, MPa [ISO 76]."""


def minimum_by_rating(dynamic_rating: ArrayLike, share: ArrayLike) -> Array:
    """Least load as a share of C, N (0.01 C for ball bearings) [SKF-MIN]."""
    return domain.positive("share", share) * domain.positive("dynamic_rating", dynamic_rating)


def minimum_by_bore(bore_diameter: ArrayLike, force_per_bore: ArrayLike) -> Array:
    """Spring preload of small motors k d, N; k in N per mm of bore (5 to 10; 20 at standstill) [SKF-SPRING]."""
    return domain.positive("force_per_bore", force_per_bore) * domain.positive("bore_diameter", bore_diameter)


def minimum_radial_load(
    load_factor: ArrayLike, viscosity: ArrayLike, speed: ArrayLike, mean_diameter: ArrayLike
) -> Array:
    """Least radial load of deep groove bearings and angular contact pairs, N [SKF254, SKF398].

    1000 k_r (nu n/1000)^(2/3) (d_m/100)^2 with k_r from the product table, nu in mm2/s at working temperature, n in
    r/min, d_m = (d + D)/2 in mm.
    """
    flow = domain.positive("viscosity", viscosity, True) * domain.positive("speed", speed, True) / 1000.0
    k_r = domain.positive("load_factor", load_factor, True)
    return 1000.0 * k_r * flow ** (2.0 / 3.0) * (domain.positive("mean_diameter", mean_diameter) / 100.0) ** 2


def minimum_axial_load(load_factor: ArrayLike, speed: ArrayLike) -> Array:
    """Least axial load of single angular contact, four-point and thrust ball bearings, N: 1000 A (n/1000)^2 [SKF398].

    A (kN) from the product table, n in r/min.
    """
    return (
        1000.0 * domain.positive("load_factor", load_factor, True) * (np.asarray(speed, dtype=np.float64) / 1000.0) ** 2
    )


def minimum_axial_load_by_rating(
    load_factor: ArrayLike, static_rating: ArrayLike, speed: ArrayLike, mean_diameter: ArrayLike
) -> Array:
    """Older form of the least axial load, N: k_a (C_0/1000) (n d_m/100 000)^2, taken in kN with C_0 in N.

    From memory of the SKF General Catalogue: k_a 0.9 to 1.9 for angular contact series.
    """
    c_0 = domain.positive("static_rating", static_rating) / 1000.0
    n_dm = np.asarray(speed, dtype=np.float64) * domain.positive("mean_diameter", mean_diameter)
    return 1000.0 * domain.positive("load_factor", load_factor, True) * (c_0 / 1000.0) * (n_dm / 1e5) ** 2


def minimum_against_lift_off(axial_force: ArrayLike, unbalance_force: ArrayLike, factor: ArrayLike) -> Array:
    """Preload that keeps a spring-loaded ring in touch, N: factor times the larger disturbing force.

    ``axial_force`` pulling the ring off its spring (external force, rotor weight on a vertical shaft) and
    ``unbalance_force`` at the bearing, N, both as magnitudes; factor 1.5 is common practice.
    """
    axial = np.abs(np.asarray(axial_force, dtype=np.float64))
    unbalance = np.abs(np.asarray(unbalance_force, dtype=np.float64))
    return domain.positive("factor", factor) * np.maximum(axial, unbalance)


def minimum_for_full_contact(radial_load: ArrayLike, contact_angle: ArrayLike) -> Array:
    """Axial load at which all balls of a bearing just carry under a radial load, N: 5/3 F_r tan(alpha).

    From the load integrals at a load zone of the full circumference, J_r/J_a = 0.6 exactly for F = K delta^1.5
    (derived; Sjövall's integrals). ``contact_angle`` between 0 and 90 degrees.
    """
    s = domain.contact_sine(contact_angle)
    return domain.positive("radial_load", radial_load, True) * s / np.sqrt(1.0 - s * s) / 0.6


def maximum_by_static_rating(static_rating: ArrayLike, share: ArrayLike) -> Array:
    """Axial load cap as a share of C_0, N (0.5, or 0.25 for small bores and light series) [SKF254]."""
    return domain.positive("share", share) * domain.positive("static_rating", static_rating)


def contact_stress_estimate(axial_load: ArrayLike, static_rating: ArrayLike, contact_angle: ArrayLike) -> Array:
    """Mean contact stress at the inner ring under pure axial load, from catalogue values only, MPa.

    2/3 of 4200 (F_a/(5 C_0 sin alpha))^(1/3) (derived from [ISO 76]; within 1 % of the full Hertz solution for grooves
    as ISO 76 assumes them, low for wider grooves and for ceramic balls). Loads in N, angle between 0 and 90 degrees.
    """
    ratio = domain.positive("axial_load", axial_load, True) / (
        5.0 * domain.positive("static_rating", static_rating) * domain.contact_sine(contact_angle)
    )
    return STATIC_CONTACT_STRESS / 1.5 * np.cbrt(ratio)


def maximum_by_contact_stress(mean_stress: ArrayLike, static_rating: ArrayLike, contact_angle: ArrayLike) -> Array:
    """Axial load that brings the mean contact stress to a limit, N (inverse of ``contact_stress_estimate``)."""
    share = (1.5 * domain.positive("mean_stress", mean_stress, True) / STATIC_CONTACT_STRESS) ** 3
    return 5.0 * domain.positive("static_rating", static_rating) * domain.contact_sine(contact_angle) * share
