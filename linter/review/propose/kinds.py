"""What may be proposed, in which order, and which of the values that serve is taken."""

import math

import numpy as np
from attrs import field, frozen

from linter.model.stations import Stations
from linter.review.propose.offers import (
    FILLETS,
    ROUGHNESS,
    Bench,
    Offers,
    classes,
    floats,
    forces,
    forms,
    free,
    installed,
    listed,
    rates,
    roles,
    shoulders,
    solid,
    words,
)
from linter.review.room.domains import Cell


@frozen
class Kind:
    """A kind of value that is proposed.

    Attributes
    ----------
    name : str
        The parameter.
    clause : str
        The clause that it is drawn up for.
    reason : str
        Why this of the values that serve.
    offers : callable
        The values to try, the preferred one first.
    middle : bool
        Whether the middle of the values that serve is taken instead of the first.
    finest : bool
        Whether the finest value stands in until its turn comes: a clause about two tolerances must not hide that one of
        them is too coarse.
    grave : bool
        Whether only criticals and majors count: how a machine is arranged is not chosen by how much is still blank.
    """

    name: str
    clause: str
    reason: str
    offers: Offers = field(repr=False)
    middle: bool = False
    finest: bool = False
    grave: bool = False


_SERVES = "the first that suffices of"
_COARSEST = "the coarsest of the preferred numbers that suffices"
_ALIGNMENT = {"cylindricity": "alignment.cylindricity", "runout": "alignment.seat-runout"}

#: In the order in which a designer works: arrangement; class and fits; form, run-out, roughness; shoulders and fillets;
#: axial float; spring and preload.
KINDS: tuple[Kind, ...] = (
    Kind(
        "preload_method", "preload.present", "a spring keeps the balls loaded at speed; " + _SERVES + " the methods",
        words("preload_method", ("spring", "none", "rigid")), grave=True,
    ),
    Kind("axial_role", "fit.arrangement", "the rotor is located once, the other position carries the spring", roles,
         grave=True),
    Kind(
        "free_ring", "fit.free-ring", "the ring that slides must see a stationary load",
        words("free_ring", ("outer", "inner")), grave=True,
    ),
    Kind(
        "tolerance_class", "speed.precision", "the coarsest class that suffices at this speed",
        words("tolerance_class", ("Normal", "P6", "P5", "P4", "P2")),
    ),
    Kind(
        "clearance_class", "fit.running-clearance", _SERVES + " the groups, the ordinary one first",
        words("clearance_class", ("CN", "C3", "C2", "C4", "C5")),
    ),
    Kind(
        "shaft_seat_diameter", "fit.shaft-class", "the class that most published tables print for this load and size, "
        "of those that suffice", classes,
    ),
    Kind(
        "housing_seat_diameter", "fit.housing-class", "the class that most published tables print for this load and "
        "size, of those that suffice", classes,
    ),
    *(
        Kind(f"{side}_seat_{what}", clause, _COARSEST, forms, finest=True)
        for what, clause in _ALIGNMENT.items()
        for side in ("shaft", "housing")
    ),
    Kind("coaxiality_of_shaft_seats", "alignment.coaxiality", _COARSEST, forms, finest=True),
    Kind("coaxiality_of_bores", "alignment.coaxiality", _COARSEST, forms, finest=True),
    *(
        Kind(f"{side}_seat_roughness", "alignment.roughness", "the coarsest Ra that suffices", listed(ROUGHNESS),
             finest=True)
        for side in ("shaft", "housing")
    ),
    *(
        Kind(
            f"{side}_shoulder_diameter", f"shoulder.{side}-height", "nearest to the height that tables print for the "
            "ring chamfer, of those that suffice", shoulders,
        )
        for side in ("shaft", "housing")
    ),
    *(
        Kind(f"{side}_shoulder_runout", "alignment.shoulder-runout", _COARSEST, forms, finest=True)
        for side in ("shaft", "housing")
    ),
    *(
        Kind(f"{side}_fillet_radius", "shoulder.fillet", "the largest radius that suffices", listed(FILLETS),
             finest=True)
        for side in ("shaft", "housing")
    ),
    Kind("spring_kind", "preload.spring-travel", _SERVES + " the kinds, the short one first",
         words("spring_kind", ("wave", "helical", "disc")), grave=True),
    Kind("axial_float", "fit.axial-float", "the first usual float that suffices", floats),
    Kind("preload_force", "preload.window", "the middle of the preferred forces that serve", forces, True),
    Kind("spring_rate", "preload.force", "the preferred rate that gives the force over the travel of the spring",
         rates),
    Kind("spring_installed_length", "preload.spring-travel", "the length that rate and force leave, else about the "
         "width of the ring", installed),
    Kind("spring_free_length", "preload.force", "installed length and travel of the spring together", free),
    Kind("spring_solid_length", "preload.spring-travel", "the share of the installed length that leaves travel",
         solid),
)  # fmt: skip
#: Kinds that only a spring asks for.
OF_SPRING = ("spring_kind", "spring_rate", "spring_installed_length", "spring_free_length", "spring_solid_length")


def wanted(bench: Bench, kind: Kind, cell: Cell) -> bool:
    """Whether a machine has use for a kind where it is blank."""
    pair, method = len(bench.stations) == 2, bench.word("preload_method", 0)
    if kind.name in ("preload_method", "axial_role", "coaxiality_of_shaft_seats", "coaxiality_of_bores"):
        return pair
    if kind.name in OF_SPRING:
        return pair and method == "spring"
    if kind.name == "preload_force":
        return pair and method in ("spring", "rigid")
    if kind.name == "axial_float":
        return pair
    if kind.name == "free_ring":
        return bench.word("axial_role", cell.row) in ("floating", "spring-loaded")
    if kind.name == "clearance_class":
        return math.isnan(bench.number("radial_clearance", cell.row))
    if kind.name.endswith("fillet_radius"):
        return not bench.word(f"{kind.name.split('_')[0]}_undercut_form", cell.row)
    return True


def is_blank(stations: Stations, name: str, row: int) -> bool:
    """Whether a start value is wanted: nothing is stated, or a seat without any tolerance."""
    if name in ("shaft_seat_diameter", "housing_seat_diameter"):
        return bool(np.isnan(stations.size(name).lower[row]) or np.isnan(stations.size(name).upper[row]))
    if not stations.known(name)[row]:
        return True
    assumed = stations.assumed.get(name)
    return bool(assumed is not None and assumed.rows[row])
