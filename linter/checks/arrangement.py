"""Chapter fit: what each position does axially, the float it needs, and the outer fit over all temperatures."""

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import Limits, Result, View, Working, ladder, within
from linter.checks.shared.bodies import LARGEST, housing_body, ring_assumed, ring_body, shaft_body
from linter.checks.shared.growth import half_stated, in_use_alone, in_use_alone_by_machine
from linter.checks.shared.retention import clearance_share, retention_cap, unheld_assumed
from linter.checks.shared.seat_classes import advice_facts, is_free, recommended
from linter.checks.shared.seat_fits import (
    Fit,
    deviation_lines,
    held_by_preload,
    housing_fit,
    inner_load_rotation,
    outer_load_rotation,
    rotation_wants,
    shaft_fit,
    unbalance_ratio,
)
from linter.mechanics import limits as iso286
from linter.mechanics import press_fit
from linter.model.stations import Choice, Floats
from linter.model.wording import quantity_text

ROLES = ("locating", "floating", "spring-loaded", "cross-located")


def _lone(view: View) -> Callable[[int], str]:
    return lambda machine: "the table has one position of this machine" if view.station_count[machine] == 1 else ""


def arrangement(view: View, limits: Limits) -> Result:
    """Exactly one position locates the rotor, or two locate it crosswise (clause ``fit.arrangement``)."""
    role = view.stations.choice("axial_role")
    locating, floating, sprung, cross = (view.to_machines(role.is_in(word), "count").astype(float) for word in ROLES)
    known = view.to_machines(role.known, "all")
    movable = floating + sprung
    total = view.station_count
    none = (locating == 0) & (cross == 0)
    two = locating >= 2
    mixed = (locating >= 1) & (cross >= 1)
    half = (locating == 0) & (cross >= 1) & (cross != 2)
    blocked = (locating == 1) & (cross == 0) & (movable != total - 1)
    variant = np.select([two, mixed, half, none], ["two", "mixed", "half", "none"], "")
    wrong = np.select([two, mixed, half, none, blocked], [locating, 2.0, 2.0, 2.0, 2.0], 0.0)
    return Result(
        measure=np.where(known & (total >= 2), wrong, np.nan),
        observed=locating,
        lower=np.where(cross == 2, 0.0, 1.0),
        upper=np.where(cross == 2, 0.0, 1.0),
        variant=lambda: variant.astype(object),
        facts=lambda: {"not_assessed": _lone(view)},
        working=lambda: [
            Working("locating", "", "positions that locate both ways", locating),
            Working("movable", "", "positions that float or carry the spring", movable),
            Working("cross", "", "positions that locate one way each", cross),
            Working("positions", "", "positions of the machine", total.astype(float)),
        ],
    )


class State(NamedTuple):
    """A temperature state: its name, and the change of interference in it [um], shape (rows,)."""

    name: str
    change: Floats


def outer_ring_temperature(view: View) -> Floats:
    """Temperature of the outer ring in use [degC]: midway between the bearing and the housing it sits in."""
    s = view.stations
    return 0.5 * (s.number("operating_temperature") + s.number("housing_temperature"))


def _temperatures(view: View) -> tuple[tuple[str, Floats, Floats, Floats], ...]:
    """Name of each state with the temperatures of shaft, ring and housing [degC]; NaN where not stated."""
    s = view.stations
    cold, hot = s.number("temperature_min"), s.number("temperature_max")
    return (
        ("cold", cold, cold, cold),
        ("soaked at the highest temperature", hot, hot, hot),
        ("running", s.number("shaft_temperature"), outer_ring_temperature(view), s.number("housing_temperature")),
    )


def outer_states(view: View) -> list[State]:
    """Change of the outer ring's interference in each temperature state, at room temperature first."""
    outside = within(view.stations.number("outside_diameter"), high=LARGEST)
    ring, housing = ring_body(view).expansion, housing_body(view).expansion
    return [
        State("room temperature", np.zeros(view.count)),
        *(
            State(name, 1000.0 * press_fit.thermal_interference_change(outside, ring, t_ring, housing, t_housing))
            for name, _, t_ring, t_housing in _temperatures(view)
        ),
    ]


def inner_states(view: View) -> list[State]:
    """Change of the inner ring's interference in each temperature state, at room temperature first."""
    bore = within(view.stations.number("bore_diameter"), high=LARGEST)
    ring, shaft = ring_body(view).expansion, shaft_body(view).expansion
    return [
        State("room temperature", np.zeros(view.count)),
        *(
            State(name, 1000.0 * press_fit.thermal_interference_change(bore, shaft, t_shaft, ring, t_shaft))
            for name, t_shaft, _, _ in _temperatures(view)
        ),
    ]


def _extreme(states: Sequence[State], highest: bool) -> tuple[Floats, NDArray[Any]]:
    """Largest or smallest change over the known states, and the name of the state."""
    changes = np.array([s.change for s in states])
    filled = np.where(np.isnan(changes), -np.inf if highest else np.inf, changes)
    at = filled.argmax(axis=0) if highest else filled.argmin(axis=0)
    names = np.array([s.name for s in states], dtype=object)
    return np.round(filled[at, np.arange(changes.shape[1])], 6), names[at]


def free_ring(view: View, limits: Limits) -> Result:
    """The ring that has to slide is the one with the stationary load (clause ``fit.free-ring``)."""
    s = view.stations
    role, ring = s.choice("axial_role"), s.choice("free_ring")
    moves = role.is_in("floating", "spring-loaded")
    separable = role.is_in("floating") & s.choice("bearing_type").is_in("cylindrical roller", "needle roller")
    inner, outer = inner_load_rotation(view, limits), outer_load_rotation(view, limits)
    codes = np.where(ring.is_in("inner"), inner.codes, outer.codes)
    load = Choice(inner.words, np.where(ring.known, codes, -1).astype(np.int8))
    turns = load.map({"stationary": 0.0, "indeterminate": 1.0, "rotating": 2.0})
    retained = np.where(
        ring.is_in("inner"),
        retention_cap(s.choice("inner_ring_retention"), limits),
        retention_cap(s.choice("outer_ring_retention"), limits),
    )
    wants = {name: rows & moves for name, rows in rotation_wants(view, limits).items()}
    held = retained < turns
    return Result(
        measure=np.minimum(turns, retained),
        applies=(moves & ~separable) | ~role.known,
        reason=lambda: np.where(
            separable, "a roller bearing takes up the growth inside itself", "no ring of this position has to move"
        ).astype(object),
        missing={"axial_role": ~role.known, "free_ring": moves & ~ring.known, **wants},
        variant=lambda: np.select(
            [held, load.is_in("indeterminate"), held_by_preload(view, limits)],
            ["held", "indeterminate", "preloaded"],
            "",
        ).astype(object),
        facts=lambda: {"other": np.where(ring.is_in("inner"), "outer", "inner").astype(object)},
        working=lambda: [
            Working("ring", "", "ring that has to slide", ring.texts()),
            Working("free_sees", "", "load seen by that ring", load.texts()),
            Working("inner_sees", "", "load seen by the inner ring", inner.texts()),
            Working("outer_sees", "", "load seen by the outer ring", outer.texts()),
            Working("ratio", "U/F", "unbalance force over fixed load", unbalance_ratio(view)),
        ],
    )


def outer_slides(view: View, limits: Limits) -> Result:
    """The free ring of a floating or sprung position moves at every temperature (clause ``fit.outer-slides``)."""
    s = view.stations
    role, ring = s.choice("axial_role"), s.choice("free_ring")
    moves = role.is_in("floating", "spring-loaded")
    inner = is_free(view, "inner")
    fits = shaft_fit(view), housing_fit(view)
    fit = Fit(*(np.where(inner, a, b) for a, b in zip(*fits, strict=True)))
    inner_change, inner_name = _extreme(inner_states(view), highest=True)
    outer_change, outer_name = _extreme(outer_states(view), highest=True)
    change, name = np.where(inner, inner_change, outer_change), np.where(inner, inner_name, outer_name)
    tightest = np.round(fit.largest + change, 6)
    band = fit.largest - fit.smallest

    def tight_share(largest: Floats) -> Floats:
        tight = np.maximum(largest, 0.0)
        return np.divide(tight, band, out=np.where(tight > 0, np.inf, tight), where=band > 0)

    advice = [recommended(view, limits, side) for side in ("shaft", "housing")]
    sliding = np.where(inner, fit.seat_upper <= advice[0].upper, fit.seat_lower >= advice[1].lower)
    heat = np.where(sliding, float(limits["published"]), 1.0)
    stuck = np.maximum(tight_share(fit.largest), heat * tight_share(tightest))
    separable = role.is_in("floating") & s.choice("bearing_type").is_in("cylindrical roller", "needle roller")
    bonded = np.where(
        inner,
        s.choice("inner_ring_retention").is_in("adhesive", "clamped"),
        s.choice("outer_ring_retention").is_in("adhesive", "clamped", "pin"),
    )
    measure = np.where(np.isnan(tightest), np.nan, stuck)
    measure = np.where(moves & bonded, np.fmax(measure, limits["bonded"]), measure)
    seat_missing = np.isnan(fit.seat_lower) & ring.known & ~bonded
    housing_unknown = ~inner & ring.known & ~s.known("housing_material") & ~bonded
    shaft_unknown = inner & ~s.known("shaft_material") & ~bonded
    cold_unknown, hot_unknown = ~s.known("temperature_min"), ~s.known("temperature_max")
    inner_load, outer_load = inner_load_rotation(view, limits), outer_load_rotation(view, limits)
    turning = ("rotating", "indeterminate")
    turns = np.where(inner, inner_load.is_in(*turning), outer_load.is_in(*turning))
    blocked = (moves & bonded) & ~(stuck > limits["bonded"])
    return Result(
        measure=measure,
        unit="um",
        observed=0.0 - tightest,
        lower=np.zeros(view.count),
        applies=(moves & ~separable) | ~role.known,
        reason=lambda: np.where(
            separable, "a roller bearing takes up the growth inside itself", "no ring of this position has to move"
        ).astype(object),
        missing={
            "axial_role": ~role.known,
            "free_ring": moves & ~ring.known,
            "shaft_seat_diameter": inner & seat_missing,
            "housing_seat_diameter": ~inner & seat_missing,
            "housing_material": housing_unknown,
            "shaft_material": shaft_unknown,
            "temperature_min": cold_unknown & ~bonded,
            "temperature_max": hot_unknown & ~bonded,
        },
        variant=lambda: np.select(
            [blocked, tightest <= 0, fit.largest <= 0, inner & ~turns, ~inner & ~turns, inner],
            ["bonded", "", np.where(inner, "inner_heat", "outer_heat"), "inner", "outer", "inner_turning"],
            "outer_turning",
        ).astype(object),
        facts=lambda: {
            "state": name,
            "ring": ring.texts(),
            "lift": (np.maximum(tightest, 0.0), "um"),
            "retention": np.where(
                inner, s.choice("inner_ring_retention").texts(), s.choice("outer_ring_retention").texts()
            ),
            **advice_facts(advice[0], "shaft_draw"),
            **advice_facts(advice[1], "housing_draw"),
        },
        assumed=lambda: [ring_assumed(view), *unheld_assumed(view, moves & ~separable, inner)],
        working=lambda: [
            *deviation_lines(fit),
            Working("fit_smallest", "", "smallest interference at 20 °C", fit.smallest, "um"),
            Working("fit_largest", "", "largest interference at 20 °C", fit.largest, "um"),
            Working("state_name", "", "tightest state", name),
            Working(
                "change", "", "change of interference in that state", change, "um", "d (α_in Δt_in - α_out Δt_out)"
            ),
            Working("fit_in_use_smallest", "", "smallest interference in that state", fit.smallest + change, "um"),
            Working("fit_in_use_largest", "", "largest interference in that state", tightest, "um"),
        ],
    )


def _opens(view: View, change: Floats) -> Callable[[int], str]:
    """How much more than the ring the housing opens, in words by row; empty where it does not."""
    material = view.stations.choice("housing_material")

    def make(row: int) -> str:
        if not change[row] < 0.0 or material.codes[row] < 0:
            return ""
        word = material.words[int(material.codes[row])]
        return f"; the {word} housing opens by {quantity_text(-float(change[row]), 'um')} more than the ring"

    return make


def outer_looseness(view: View, limits: Limits) -> Result:
    """An outer ring with a stationary load is not too loose in a warm housing (clause ``fit.outer-looseness``)."""
    s = view.stations
    fit, load = housing_fit(view), outer_load_rotation(view, limits)
    outside = s.number("outside_diameter")
    change, name = _extreme(outer_states(view), highest=False)
    clearance = np.round(0.0 - (fit.smallest + change), 6)
    near_edge = iso286.deviations_or_nan(limits["near_class"], outside)[1] - fit.ring_lower
    far_edge = iso286.deviations_or_nan(limits["far_class"], outside)[1] - fit.ring_lower
    loose = ladder(np.maximum(clearance, 0.0), near_edge, far_edge)
    measure = np.minimum(loose, retention_cap(s.choice("outer_ring_retention"), limits))
    warm = s.known("temperature_max") | s.known("housing_temperature")
    return Result(
        measure=measure,
        unit="um",
        observed=clearance,
        upper=near_edge,
        applies=~load.is_in("rotating"),
        reason="the outer ring sees a rotating load and has to be tight",
        missing={
            **rotation_wants(view, limits),
            "housing_seat_diameter": np.isnan(fit.seat_lower) & s.known("outside_diameter"),
            "temperature_max": ~warm,
        },
        variant=lambda: np.where(
            measure < loose, "held", np.where(is_free(view, "outer"), "free", np.where(change < 0, "warm", ""))
        ).astype(object),
        facts=lambda: {"state": name, "grown": (-change, "um"), "far": (far_edge, "um"), "opens": _opens(view, change)},
        assumed=lambda: [ring_assumed(view), *in_use_alone(view)],
        working=lambda: [
            *deviation_lines(fit, "the housing seat"),
            Working("fit_smallest", "", "smallest interference at 20 °C", fit.smallest, "um"),
            Working("fit_largest", "", "largest interference at 20 °C", fit.largest, "um"),
            Working("state_name", "", "loosest state", name),
            Working("change", "", "change of interference in that state", change, "um", "D (α_ring Δt - α_housing Δt)"),
            Working("fit_in_use_smallest", "", "smallest interference in that state", -clearance, "um"),
            Working("fit_in_use_largest", "", "largest interference in that state", fit.largest + change, "um"),
            Working("near_edge", "", f"largest clearance in a bore {limits['near_class']}", near_edge, "um"),
            Working("far_edge", "", f"largest clearance in a bore {limits['far_class']}", far_edge, "um"),
        ],
    )


def outer_hold(view: View, limits: Limits) -> Result:
    """An outer ring with a rotating load stays held at every temperature (clause ``fit.outer-hold``)."""
    s = view.stations
    fit, load = housing_fit(view), outer_load_rotation(view, limits)
    change, name = _extreme(outer_states(view), highest=False)
    smallest, largest = np.round(fit.smallest + change, 6), np.round(fit.largest + change, 6)
    creep = np.maximum(clearance_share(smallest, largest) - clearance_share(fit.smallest, fit.largest), 0.0)
    measure = np.minimum(creep, retention_cap(s.choice("outer_ring_retention"), limits))
    warm = s.known("temperature_max") | s.known("housing_temperature")
    plastic = s.choice("housing_material").is_in("plastic")
    measure = np.where(plastic, np.fmax(measure, limits["plastic"]), measure)
    return Result(
        measure=measure,
        unit="um",
        observed=smallest,
        lower=np.zeros(view.count),
        applies=~load.is_in("stationary", "indeterminate") & (plastic | ~(fit.largest <= 0)),
        reason=lambda: np.where(
            load.is_in("stationary", "indeterminate"),
            "the outer ring sees no rotating load",
            "the outer ring is loose at 20 °C already, which fit.load-rotation judges",
        ).astype(object),
        missing={
            **rotation_wants(view, limits),
            "housing_seat_diameter": np.isnan(fit.seat_lower) & s.known("outside_diameter"),
            "temperature_max": ~warm,
        },
        variant=lambda: np.where(plastic, "plastic", np.where(measure < creep, "held", "")).astype(object),
        facts=lambda: {"state": name, "lift": (np.maximum(-smallest, 0.0), "um")},
        assumed=lambda: [ring_assumed(view), *in_use_alone(view)],
        working=lambda: [
            *deviation_lines(fit, "the housing seat"),
            Working("fit_smallest", "", "smallest interference at 20 °C", fit.smallest, "um"),
            Working("fit_largest", "", "largest interference at 20 °C", fit.largest, "um"),
            Working("state_name", "", "loosest state", name),
            Working("change", "", "change of interference in that state", change, "um", "D (α_ring Δt - α_housing Δt)"),
            Working("fit_in_use_smallest", "", "smallest interference in that state", smallest, "um"),
            Working("fit_in_use_largest", "", "largest interference in that state", largest, "um"),
        ],
    )


def axial_float(view: View, limits: Limits) -> Result:
    """The float takes up the growth of the shaft in the housing at every temperature (clause ``fit.axial-float``)."""
    s = view.stations
    span = s.size("bearing_span").nominal
    along_shaft, along_housing = shaft_body(view).expansion, housing_body(view).expansion
    cold = press_fit.REFERENCE_TEMPERATURE
    growths = []
    for _, t_shaft, _, t_housing in _temperatures(view):
        growths.append(1000.0 * span * (along_shaft * (t_shaft - cold) - along_housing * (t_housing - cold)))
    known = ~np.isnan(stack := np.array(growths))
    longest = np.maximum(np.where(known, stack, 0.0).max(axis=0), 0.0)
    shortest = np.minimum(np.where(known, stack, 0.0).min(axis=0), 0.0)
    travel = longest - shortest
    size = s.size("axial_float")
    play = 1000.0 * np.where(np.isnan(size.lower), size.nominal, size.smallest)
    role = s.choice("axial_role")
    wanted = view.to_machines(role.is_in("floating", "spring-loaded", "cross-located"), "any")
    roles_known = view.to_machines(role.known, "all")
    travel, play, longest, shortest = (view.to_machines(v) for v in (travel, play, longest, shortest))
    nothing, running, soaked = ~view.to_machines(np.logical_or.reduce(known)), known[2], known[0] & known[1]
    measure = ladder(travel, limits["share"] * np.maximum(play, 0.0), np.maximum(play, 0.0))
    measure = np.where(travel <= 0, np.where(play >= 0, 0.0, np.inf), measure)
    return Result(
        measure=np.where(nothing | (view.station_count == 1), np.nan, measure),
        unit="um",
        observed=play,
        lower=travel,
        applies=wanted | ~roles_known,
        reason="no position of the machine floats, carries a spring or locates crosswise",
        missing={
            "axial_role": ~roles_known,
            "temperature_max": ~view.to_machines(running | soaked) & ~view.to_machines(s.known("temperature_max")),
            "temperature_min": ~view.to_machines(running | soaked) & ~view.to_machines(s.known("temperature_min")),
        },
        withheld=half_stated(view),
        assumed=lambda: in_use_alone_by_machine(view),
        facts=lambda: {"not_assessed": _lone(view), "wanted": (np.ceil(travel / limits["share"] / 10.0) / 100.0, "mm")},
        working=lambda: [
            Working("span", "l", "distance of the bearings", view.to_machines(span), "mm"),
            *(
                Working(f"growth_{i}", "", f"shaft less housing, {state[0]}", view.to_machines(growth), "um",
                        "l (α_shaft Δt_shaft - α_housing Δt_housing)")
                for i, (state, growth) in enumerate(zip(_temperatures(view), growths, strict=True))
            ),
            Working("longest", "", "largest growth", longest, "um"),
            Working("shortest", "", "largest shrinkage", 0.0 - shortest, "um"),
            Working("travel", "", "travel between the two", travel, "um", "growth less shrinkage"),
            Working("play", "", "float, lower limit", play, "um"),
        ],
    )  # fmt: skip
