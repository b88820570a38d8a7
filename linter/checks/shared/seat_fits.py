"""Shared quantities of the seats: limits and fits of both rings, the radial load, and which ring it turns about.

Deviations and fits are in um from the nominal bore or outside diameter of the bearing; interference is positive at both
seats, clearance negative. Forces are in N at one position.
"""

from collections.abc import Callable
from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, View, Working, shared, within
from linter.checks.shared.quantities import preload_force
from linter.mechanics import balance, ring_tolerances
from linter.mechanics import limits as iso286
from linter.mechanics.tables import Coded
from linter.model.stations import Bools, Choice, Floats

LOAD_WORDS = ("stationary", "rotating", "indeterminate")
"""How the radial load acts on a ring."""

_FIXED, _TURNING, _INDETERMINATE, _UNKNOWN = 0, 1, 2, -1


class Fit(NamedTuple):
    """Fit of one ring on its seat, arrays of shape (rows,) in um; NaN where a limit is not known.

    ``smallest``, ``mean`` and ``largest`` interference (negative is clearance); ``seat_lower`` to ``ring_upper`` are
    deviations from the nominal diameter of the bearing.
    """

    smallest: Floats
    mean: Floats
    largest: Floats
    seat_lower: Floats
    seat_upper: Floats
    ring_lower: Floats
    ring_upper: Floats


def of_material(
    material: Choice, constant: Callable[..., NDArray[np.float64]], *, ball: bool = False, unstated: str = ""
) -> Floats:
    """A constant of :mod:`linter.mechanics.materials` per row.

    ``unstated`` is the word that stands in where no material is stated; NaN there without one.
    """
    values = _by_word(material.words, constant, ball, unstated)
    return values[material.codes]


@cache
def _by_word(words: tuple[str, ...], constant: Callable[..., NDArray[np.float64]], ball: bool, unstated: str) -> Floats:
    found = constant(np.array([*words, unstated]), **({"ball": True} if ball else {}))
    found.flags.writeable = False
    return found


def row_words(choice: Choice) -> Coded:
    """The word of each row as the engineering takes it, empty where absent."""
    return Coded((*choice.words, ""), choice.codes)


def _seat(view: View, name: str, diameter: Floats) -> tuple[Floats, Floats]:
    """Deviations of a seat from the bearing's nominal diameter: as stated, else those of the stated class."""
    size = view.stations.size(name)
    lower, upper = 1000.0 * size.lower, 1000.0 * size.upper
    by_class = np.isnan(lower) & (size.tolerance_class != "") & ~np.isnan(size.nominal)
    if by_class.any():
        lower, upper = lower.copy(), upper.copy()
        lower[by_class], upper[by_class] = iso286.deviations_or_nan(
            size.tolerance_class[by_class].astype(str), size.nominal[by_class]
        )
    offset = 1000.0 * (size.nominal - diameter)
    lower, upper = np.round(lower + offset, 6), np.round(upper + offset, 6)
    order = upper >= lower
    return np.where(order, lower, np.nan), np.where(order, upper, np.nan)


def _tapered(view: View) -> Bools:
    return view.stations.choice("bearing_type").is_in("tapered roller")


def _of_part(view: View, name: str, by_class: tuple[Floats, Floats]) -> tuple[Floats, Floats]:
    """Deviations of a ring: as measured on the part in hand, else those of its class (none for tapered rollers)."""
    lower, upper = (np.where(_tapered(view), np.nan, side) for side in by_class)
    if name not in view.stations.measured:
        return lower, upper
    low, high = view.stations.measured[name]
    return np.where(np.isnan(low), lower, low), np.where(np.isnan(high), upper, high)


@shared
def shaft_fit(view: View) -> Fit:
    """Fit of the inner ring on the shaft seat.

    Seat limits are the stated deviations, else those of the stated class; ring limits are those of the tolerance class
    (ISO 492; NaN for tapered roller bearings, which have tables of their own).
    """
    s = view.stations
    diameter = s.number("bore_diameter")
    seat = _seat(view, "shaft_seat_diameter", diameter)
    ring = ring_tolerances.bore_deviation_or_nan(row_words(s.choice("tolerance_class")), diameter)
    lower, upper = _of_part(view, "ring_bore", ring)
    fit = iso286.fit(lower, upper, *seat)
    return Fit(*fit, *seat, lower, upper)


@shared
def housing_fit(view: View) -> Fit:
    """Fit of the outer ring in the housing seat, interference positive (see :func:`shaft_fit`)."""
    s = view.stations
    diameter = s.number("outside_diameter")
    seat = _seat(view, "housing_seat_diameter", diameter)
    ring = ring_tolerances.outside_deviation_or_nan(row_words(s.choice("tolerance_class")), diameter)
    lower, upper = _of_part(view, "ring_outside", ring)
    fit = iso286.fit(*seat, lower, upper)
    return Fit(*fit, *seat, lower, upper)


def deviation_lines(fit: Fit, seat: str = "the seat", ring: str = "the ring") -> list[Working]:
    """Lines of the working for the deviations of a seat and of its ring."""
    return [
        Working("seat_lower", "", f"lower deviation of {seat}", fit.seat_lower, "um"),
        Working("seat_upper", "", f"upper deviation of {seat}", fit.seat_upper, "um"),
        Working("ring_lower", "", f"lower deviation of {ring}", fit.ring_lower, "um", "ISO 492"),
        Working("ring_upper", "", f"upper deviation of {ring}", fit.ring_upper, "um", "ISO 492"),
    ]


def probable_half(fit: Fit) -> Floats:
    """Half width of the band that nearly all pairs of a fit lie in: root sum square of the two tolerances [um]."""
    return 0.5 * np.hypot(fit.seat_upper - fit.seat_lower, fit.ring_upper - fit.ring_lower)


@shared
def rotor_unbalance(view: View) -> Floats:
    """Residual unbalance of the whole rotor [g.mm]: as stated, else from balance grade, mass and highest speed."""
    s = view.stations
    by_grade = balance.permissible_unbalance(
        within(s.number("balance_grade")), within(s.number("rotor_mass")), within(s.number("speed_max"))
    )
    stated = within(s.number("residual_unbalance"), closed=True)
    return np.where(np.isnan(stated), by_grade, stated)


@shared
def unbalance_force(view: View) -> Floats:
    """Force of the residual unbalance on one position at the highest speed [N], shared equally by the positions."""
    force = balance.unbalance_force(rotor_unbalance(view), within(view.stations.number("speed_max"), closed=True))
    return force / view.to_stations(view.station_count)


@shared
def rotor_weight(view: View) -> Floats:
    """Share of the rotor's weight on one position [N]; 0 on a vertical shaft, NaN where not known."""
    s = view.stations
    weight = balance.STANDARD_GRAVITY * within(s.number("rotor_mass")) / view.to_stations(view.station_count)
    orientation = s.choice("shaft_orientation")
    return np.where(orientation.is_in("horizontal"), weight, np.where(orientation.is_in("vertical"), 0.0, np.nan))


@shared
def fixed_radial_load(view: View) -> Floats:
    """Radial load of fixed direction on one position [N].

    The stated radial load; else on a horizontal shaft an equal share of the rotor's weight, on a vertical one nothing.
    NaN where neither is known. An axial preload does not count: it gives the radial load no direction.
    """
    stated = within(view.stations.number("radial_load"), closed=True)
    return np.where(np.isnan(stated), rotor_weight(view), stated)


@shared
def unbalance_ratio(view: View) -> Floats:
    """Unbalance force over the fixed radial load; infinite where there is no fixed load.

    A horizontal rotor of which only the balance grade is known, and no radial load, has the ratio G Omega/g whatever
    its mass.
    """
    s = view.stations
    fixed, turning = fixed_radial_load(view), unbalance_force(view)
    free = np.where(turning > 0, np.inf, np.where(np.isnan(turning + fixed), np.nan, 0.0))
    ratio = np.divide(turning, fixed, out=free, where=fixed > 0)
    by_weight = balance.unbalance_to_weight(within(s.number("balance_grade")), within(s.number("speed_max")))
    massless = (
        np.isnan(ratio)
        & s.choice("shaft_orientation").is_in("horizontal")
        & ~s.known("radial_load")
        & ~s.known("residual_unbalance")
    )
    return np.where(massless, by_weight, ratio)


@shared
def turning_load(view: View) -> Floats:
    """Part of the radial load that turns [N]: unbalance, and a radial load whose direction is not stated as fixed."""
    s = view.stations
    stated = within(s.number("radial_load"), closed=True)
    turns = s.choice("load_direction").is_in("rotating", "oscillating", "indeterminate") & ~np.isnan(stated)
    return np.where(turns, np.nan_to_num(unbalance_force(view)) + stated, unbalance_force(view))


@shared
def turning_ratio(view: View) -> Floats:
    """Turning over fixed part of the radial load; a load stated as rotating leaves the rotor's weight as fixed part."""
    s = view.stations
    turns = s.choice("load_direction").is_in("rotating") & s.known("radial_load")
    turning, fixed = turning_load(view), rotor_weight(view)
    free = np.where(turning > 0, np.inf, np.where(np.isnan(turning + fixed), np.nan, 0.0))
    by_weight = np.divide(turning, fixed, out=free, where=fixed > 0)
    return np.where(turns, np.where(np.isnan(fixed), np.nan, by_weight), unbalance_ratio(view))


@shared
def turning_on_preload(view: View) -> Floats:
    """Turning part of the radial load over the preload; infinite without preload, NaN where it is not known."""
    turning, preload = turning_load(view), preload_force(view)
    return np.divide(turning, preload, out=np.where(np.isnan(turning), np.nan, np.inf), where=preload > 0)


def held_by_preload(view: View, limits: Limits) -> Bools:
    """Rows whose resting ring the friction of the preload on its faces keeps from creeping (``held_share``)."""
    share = limits.get("held_share")
    if share is None:
        return np.zeros(view.count, dtype=bool)
    return turning_on_preload(view) <= float(share) * (1 + 1e-9)


def load_turning(view: View, limits: Limits) -> Choice:
    """How the radial load moves in space: ``stationary``, ``rotating`` with the rotor, ``indeterminate``; or not known.

    The ratio of the turning to the fixed part decides: up to ``limits["fixed_up_to"]`` the fixed part, from
    ``limits["turning_from"]`` the turning one, between them neither. Where the ratio is not known a stated direction
    stands; a stated ``oscillating`` or ``indeterminate`` one always does, and to the releases to 2026.3 (which lack
    ``held_share``) a stated ``rotating`` one too, with the unbalance alone as turning part.
    """
    low, high = float(limits["fixed_up_to"]), float(limits["turning_from"])
    by_figures = limits.get("held_share") is not None
    key = ("load turning", low, high, by_figures)
    if key not in view.cache:
        direction = view.stations.choice("load_direction")
        ratio = turning_ratio(view) if by_figures else unbalance_ratio(view)
        codes = np.full(view.count, _INDETERMINATE, dtype=np.int8)
        codes[ratio <= low * (1 + 1e-9)] = _FIXED
        codes[ratio >= high * (1 - 1e-9)] = _TURNING
        codes[np.isnan(ratio)] = _UNKNOWN
        codes[np.isnan(ratio) & direction.is_in("stationary")] = _FIXED
        codes[direction.is_in("rotating") & (np.isnan(ratio) if by_figures else True)] = _TURNING
        codes[direction.is_in("oscillating", "indeterminate")] = _INDETERMINATE
        view.cache[key] = Choice(LOAD_WORDS, codes)
    found: Choice = view.cache[key]
    return found


def direction_assumed(view: View, limits: Limits) -> Assumes:
    """The direction that the loads of the table say, where none is stated."""
    found = load_turning(view, limits)
    reason = "not stated; what the loads of the table and the unbalance say stands in"
    rows = ~view.stations.choice("load_direction").known & found.known
    return Assumes("load_direction", found.texts().astype(object), "", reason, rows)


def _seen_by(view: View, limits: Limits, turning_ring: Bools, resting_ring: Bools) -> Choice:
    load = load_turning(view, limits).codes
    swapped = np.array([_TURNING, _FIXED, _INDETERMINATE, _UNKNOWN], dtype=np.int8)[load]
    at_rest = np.where(held_by_preload(view, limits) & (load != _UNKNOWN), _FIXED, load)
    codes = np.where(turning_ring, swapped, np.where(resting_ring, at_rest, _UNKNOWN))
    return Choice(LOAD_WORDS, codes.astype(np.int8))


def inner_load_rotation(view: View, limits: Limits) -> Choice:
    """How the radial load acts on the inner ring: ``stationary``, ``rotating`` or ``indeterminate``; or not known.

    The limits carry ``fixed_up_to`` and ``turning_from`` (see :func:`load_turning`). A load fixed in space rotates
    relative to the ring that turns; a load that turns with the rotor stands still relative to it. The ring at rest
    counts as under a stationary load where the friction of the preload holds it (:func:`held_by_preload`).
    """
    ring = view.stations.choice("rotating_ring")
    return _seen_by(view, limits, ring.is_in("inner"), ring.is_in("outer"))


def outer_load_rotation(view: View, limits: Limits) -> Choice:
    """How the radial load acts on the outer ring (see :func:`inner_load_rotation`)."""
    ring = view.stations.choice("rotating_ring")
    return _seen_by(view, limits, ring.is_in("outer"), ring.is_in("inner"))


def rotation_wants(view: View, limits: Limits) -> dict[str, Bools]:
    """Parameters wanted where it is not known which ring the load turns about."""
    return {
        "rotating_ring": ~view.stations.choice("rotating_ring").known,
        "load_direction": ~load_turning(view, limits).known,
    }
