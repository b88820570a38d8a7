"""Chapter heat: the temperature that the friction comes to, thermal speeds, the cycle of the duty, the grease fill."""

from collections.abc import Callable, Sequence

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Limits, Result, View, Working, ladder, within
from linter.checks.shared.heat_balance import (
    GREASES,
    HOTTEST,
    Surroundings,
    assumptions,
    balance,
    friction_of,
    power_at,
    power_by_maker,
    surroundings,
    viscosity_at,
    wants,
)
from linter.checks.shared.quantities import mean_diameter, speed_factor, static_load_rating
from linter.checks.shared.seat_fits import row_words
from linter.mechanics import heat
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text

DUTIES = ("continuous", "intermittent", "short-time")
_DRY = "the friction of dry films is not published by such factors"
_WAYS = {
    "stated": "with the cooling_factor stated",
    "air": "from the housing to the air",
    "seats": "through the seats as under the conditions of ISO 15312",
}


def _steady(view: View) -> Bools:
    """Rows that may be taken to run until the temperature is steady."""
    duty = view.stations.choice("duty")
    return ~duty.is_in("intermittent", "short-time")


def _wet(view: View) -> Bools:
    """Rows whose friction the two-term method knows: a dry film has no viscosity."""
    return ~view.stations.choice("lubrication").is_in("solid film")


def _stated(view: View) -> Floats:
    """Temperature of the bearing that the table states [degC], not one that stands in for it."""
    s = view.stations
    found = s.number("operating_temperature")
    taken = s.assumed.get("operating_temperature")
    both = s.known("shaft_temperature") & s.known("housing_temperature")
    return np.where(taken.rows & ~both, np.nan, found) if taken is not None else found


def balanced(view: View, limits: Limits) -> Result:
    """Stated temperature of the bearing against the one at which it gives off what its friction makes."""
    s = view.stations
    speed = within(s.number("speed_operating"))
    found, around = friction_of(view, limits), surroundings(view, limits)
    coolest, hottest = balance(view, limits, speed, found, around)
    stated = _stated(view)
    below = np.maximum(np.where(np.isinf(coolest), np.nan, coolest) - stated, 0.0)
    measure = ladder(below, limits["near"], limits["far"])
    measure = np.where(np.isinf(coolest) & ~np.isnan(stated), limits["endless_measure"], measure)
    known = ~np.isnan(coolest + hottest)
    measure = np.where(known & np.isnan(stated), 0.0, measure)
    guess = around.way == "seats"
    measure = np.where(guess | ~_steady(view), np.minimum(measure, 1.0), measure)
    power = tuple(power_at(view, found, speed, np.where(known & np.isfinite(t), t, np.nan), end)
                  for end, t in enumerate((coolest, hottest)))  # fmt: skip
    return Result(
        measure=measure,
        unit="degC",
        observed=np.where(np.isnan(stated), hottest, stated),
        lower=np.where(np.isinf(coolest), np.nan, coolest),
        applies=_wet(view),
        reason=_DRY,
        missing={"speed_operating": np.isnan(speed), **wants(view, found, around)},
        variant=lambda: np.select(
            [
                np.isnan(stated),
                ~_steady(view) & (stated < coolest),
                guess & (stated < coolest),
                np.isinf(coolest),
                stated > hottest + limits["near"],
            ],
            ["open", "rests", "guess", "endless", "warmer"],
            "",
        ).astype(object),
        facts=lambda: {
            "coolest": (coolest, "degC"),
            "range": _range(coolest, hottest, "degC"),
            "powers": _powers(power),
            "way": _way(around),
            "ambient": (around.ambient, "degC"),
        },
        assumed=lambda: assumptions(view, limits, found, around),
        working=lambda: [
            Working("speed", "n", "speed in operation", speed, "r/min"),
            Working("f0_low", "f_0", "lubricant factor, least", found.lubricant[0], "1", "table by kind, lubrication"),
            Working("f0_high", "f_0", "lubricant factor, largest", found.lubricant[1], "1", "the same table"),
            Working("load_torque", "M_1", "torque by the load", found.load, "N.mm", "f_1 P_1 d_m"),
            Working("seal_torque", "M_s", "torque of contact seals", found.seal, "N.mm", "K_S1 d_s^2.25 + K_S2"),
            Working("added", "", "heat of other parts for this position", around.added, "W"),
            Working("ambient", "", "surroundings", around.ambient, "degC"),
            Working("cool_viscosity", "ν", "viscosity at the coolest", viscosity_at(found, coolest),
                    "mm2/s", "ASTM D341"),
            Working("cool_power", "P_f", "friction power at the coolest", power[0], "W", "(M_0 + M_1 + M_s) ω"),
            Working("coolest", "", "coolest steady temperature", coolest, "degC", "friction power = heat given off"),
            Working("hot_viscosity", "ν", "viscosity at the hottest", viscosity_at(found, hottest),
                    "mm2/s", "ASTM D341"),
            Working("hot_power", "P_f", "friction power at the hottest", power[1], "W", "(M_0 + M_1 + M_s) ω"),
            Working("maker_power", "", "friction power at the hottest by the maker's method, for comparison",
                    power_by_maker(view, found, speed, np.where(np.isfinite(hottest), hottest, np.nan)), "W",
                    "(M_rr + M_sl + M_s) ω"),
            Working("hottest", "", "hottest steady temperature", hottest, "degC", "friction power = heat given off"),
            Working("stated", "", "temperature of the bearing as stated", stated, "degC"),
        ],
    )  # fmt: skip


def _way(around: Surroundings) -> Callable[[int], str]:
    return lambda row: _WAYS[str(around.way[row])]


def _range(low: Floats, high: Floats, unit: str) -> Callable[[int], str]:
    """Both ends in words by row; one figure where they show as the same."""

    def text(value: float) -> str:
        return quantity_text(value, unit) if np.isfinite(value) else f"beyond {quantity_text(HOTTEST, unit)}"

    def make(row: int) -> str:
        return " to ".join(dict.fromkeys(text(float(end[row])) for end in (low, high)))

    return make


def _powers(ends: Sequence[Floats]) -> Callable[[int], str]:
    """Friction power from its least to its largest in words; one figure where both are the same."""

    def make(row: int) -> str:
        known = sorted(float(end[row]) for end in ends if not np.isnan(end[row]))
        return " to ".join(dict.fromkeys(quantity_text(value, "W") for value in known)) or "more than is given off"

    return make


def thermal_speed(view: View, limits: Limits) -> Result:
    """Highest speed against the thermal reference speed (ISO 15312) and its adjusted form for what is stated (DIN 732).

    Only a stated cooling decides: the reference conditions are those of no machine.
    """
    s = view.stations
    speed = within(s.number("speed_max"))
    kind = row_words(s.choice("bearing_type"))
    bore, outside, width = (within(s.number(n)) for n in ("bore_diameter", "outside_diameter", "ring_width"))
    area = heat.reference_area(bore, outside, width)
    rating = within(static_load_rating(view).value)
    f_0r, f_1r = heat.reference_coefficients(kind, heat.diameter_series(bore, outside, width))
    reference = heat.reference_speed(bore, outside, width, rating, f_0r, f_1r)
    found, around = friction_of(view, limits), surroundings(view, limits)
    warmest = np.full(view.count, float(limits["warmest"]))
    difference = within(warmest - around.ambient)
    nu = viscosity_at(found, warmest)
    at = np.where(np.isnan(difference), np.nan, warmest)
    left = np.array([around.given_off(at, end) - around.added for end in (1, 0)])  # the least, the largest
    share, drag = (np.array(ends)[::-1] for ends in (found.share, found.lubricant))
    diameter = within(mean_diameter(view))
    adjusted = heat.permissible_speed(
        np.where(np.isnan(reference), within(speed), reference), diameter, within(left) / difference, difference,
        within(share * drag), nu, np.ones(view.count), (share * found.load + found.seal) / diameter,
    ).speed  # fmt: skip
    near, far = np.where(left <= 0.0, 0.0, adjusted)
    decides = around.way != "seats"
    measure = np.where(decides, ladder(speed, near, far, limits["major_to"] * far), 0.0 * speed * reference)
    measure = np.where(decides & ~_steady(view), np.minimum(measure, 1.0), measure)
    lacking = {name: decides & rows for name, rows in wants(view, found, around, computed=True).items()}
    lacking["ring_width"] = lacking["ring_width"] | (~decides & np.isnan(width))
    lacking["static_rating"] = np.isnan(rating)
    lacking["bearing_type"] = lacking["bearing_type"] | (~decides & np.isnan(f_0r) & ~np.isnan(area))
    lacking |= {"bore_diameter": np.isnan(bore), "outside_diameter": np.isnan(outside)}
    return Result(
        measure=measure,
        unit="r/min",
        observed=speed,
        upper=np.where(decides, near, np.nan),
        applies=_wet(view),
        reason=_DRY,
        missing=lacking,
        variant=lambda: np.select(
            [~decides & (speed > reference), ~decides, ~_steady(view) & (speed > near)],
            ["above_reference", "reference", "rests"],
            "",
        ).astype(object),
        facts=lambda: {
            "reference": (reference, "r/min"),
            "range": _range(near, far, "r/min"),
            "times": _times(speed / reference),
            "warmest": (warmest, "degC"),
            "way": _way(around),
            "known_reference": _reference_told(reference),
        },
        assumed=lambda: assumptions(view, limits, found, around),
        working=lambda: [
            Working("speed", "n", "highest speed", speed, "r/min"),
            Working("area", "A_r", "heat-emitting reference area", area, "mm2", "π B (d + D)"),
            Working("reference_heat", "", "reference heat flow", heat.reference_flow(area) * area, "W", "q_r A_r"),
            Working("f0r", "f_0r", "reference coefficient of the lubricant", f_0r, "1", "table by series"),
            Working("f1r", "f_1r", "reference coefficient of the load", f_1r, "1", "table by series"),
            Working("reference", "n_θr", "thermal reference speed", reference, "r/min", "ISO 15312"),
            Working("maker", "n_ref", "reference speed stated by the maker", s.number("reference_speed"), "r/min"),
            Working("viscosity", "ν", "viscosity at the warmest", nu, "mm2/s", "ASTM D341"),
            Working("near", "n_θ", "thermally permissible speed, least", near, "r/min", "DIN 732, as cooled"),
            Working("far", "n_θ", "thermally permissible speed, largest", far, "r/min", "DIN 732, as cooled"),
        ],
    )  # fmt: skip


def _times(ratio: Floats) -> Callable[[int], str]:
    return lambda row: quantity_text(float(ratio[row]), "1")


def _reference_told(reference: Floats) -> Callable[[int], str]:
    def make(row: int) -> str:
        if np.isnan(reference[row]):
            return "no reference speed is published for this kind of bearing"
        return f"reference speed of ISO 15312: {quantity_text(float(reference[row]), 'r/min')}"

    return make


@frozen(eq=False)
class _Cycle:
    """A cycle of the duty, one value per machine; ``derived`` is an index of :data:`DUTIES`, -1 where not known."""

    on: Floats
    off: Floats
    capacity: Floats
    conductance: Floats
    constant: Floats
    share: Floats
    rest: Floats
    derived: NDArray[np.int64]


def _cycle(view: View, limits: Limits, around: Surroundings) -> _Cycle:
    s = view.stations
    on, off = within(view.to_machines(s.number("on_time"))), within(view.to_machines(s.number("off_time")), closed=True)
    capacity = within(view.to_machines(s.number("heat_capacity")))
    conductance = within(view.to_machines(_conductance(around, limits), "sum"))
    found = heat.cycle(conductance, conductance, capacity, on, off, 0.0)
    share, rest = found.peak / found.steady, found.low / within(found.peak)
    derived = np.select([np.isnan(share), share >= limits["steady_share"], rest <= limits["cold_share"]], [-1, 0, 2], 1)
    return _Cycle(on, off, capacity, conductance, found.time_constant, share, rest, derived)


def duty_of_cycle(view: View, limits: Limits) -> NDArray[np.int64]:
    """Index in :data:`DUTIES` of the word that the stated cycle of each machine is, -1 where it is not known."""
    return _cycle(view, limits, surroundings(view, limits)).derived


def cycle(view: View, limits: Limits) -> Result:
    """The word for the duty against what the stated cycle heats up to: share of the steady rise at its peak."""
    s = view.stations
    around = surroundings(view, limits)
    found = _cycle(view, limits, around)
    duty = s.choice("duty")
    words, other = duty.codes[view.starts], np.zeros(view.machine_count, bool)
    for marked in (s.assumed.get("duty"), s.derived.get("duty")):
        other |= False if marked is None else marked.rows[view.starts]
    order = np.array([DUTIES.index(word) for word in duty.words])
    stated = np.where((words >= 0) & ~other, order[words], -1)
    milder = np.where((stated >= 0) & (found.derived >= 0), stated - found.derived, 0)
    names = np.array([*DUTIES, ""], dtype=object)
    cycles = ~np.isnan(view.to_machines(s.number("on_time"))) | ~np.isnan(view.to_machines(s.number("off_time")))
    whole = ~np.isnan(found.on + found.off + found.capacity)
    return Result(
        measure=np.where(found.derived < 0, np.nan, np.maximum(milder, 0).astype(float)),
        unit="%",
        observed=100.0 * found.share,
        upper=np.full(view.machine_count, 100.0 * limits["steady_share"]),
        applies=cycles,
        reason="the table states no cycle of on_time and off_time",
        missing={
            "on_time": cycles & np.isnan(found.on),
            "off_time": cycles & np.isnan(found.off),
            "heat_capacity": cycles & np.isnan(found.capacity),
            **{name: cycles & view.to_machines(rows, "any") for name, rows in around.missing.items()},
            "cooling": cycles & np.isnan(found.conductance) & whole,
        },
        variant=lambda: np.select([milder > 0, stated < 0, milder < 0], ["", "derived", "stricter"], "").astype(object),
        facts=lambda: {
            "derived": names[found.derived],
            "stated": names[stated],
            "constant": (found.constant, "s"),
            "rest": (100.0 * found.rest, "%"),
        },
        working=lambda: [
            Working("on", "t_on", "running time of a cycle", found.on, "s"),
            Working("off", "t_off", "pause of a cycle", found.off, "s"),
            Working("capacity", "C_th", "heat capacity of what warms up", found.capacity, "J/K"),
            Working("conductance", "W_s", "heat given off per kelvin, all positions", found.conductance, "W/K"),
            Working("constant", "τ", "time constant", found.constant, "s", "C_th/W_s"),
            Working("peak", "", "peak over the steady rise", 100.0 * found.share, "%",
                    "(1 - e^(-t_on/τ))/(1 - e^(-(t_on + t_off)/τ))"),
            Working("rest", "", "rise left at the end of a pause over the peak", 100.0 * found.rest, "%",
                    "e^(-t_off/τ)"),
        ],
    )  # fmt: skip


def _conductance(around: Surroundings, limits: Limits) -> Floats:
    """Heat given off per kelvin at the reference difference of temperature, with the better cooling [W/K]."""
    rise = float(limits["rise"])
    return around.given_off(around.ambient + rise, 0) / rise


def grease_fill(view: View, limits: Limits) -> Result:
    """Filling with grease against what is published for the speed factor."""
    s = view.stations
    table = limits.table("fill")
    factor, fill = speed_factor(view), within(s.number("grease_fill"))
    low, high = (np.full(view.count, np.nan) for _ in range(2))
    for index, above in enumerate(table["above"]):
        rows = factor > above
        low[rows], high[rows] = table["low"][index], table["high"][index]
    measure = np.maximum(
        ladder(np.maximum(fill - high, 0.0), limits["over"] * high),
        np.minimum(ladder(np.maximum(low - fill, 0.0), limits["under"] * low), 1.0),
    )
    measure = np.where((fill > high) | (fill < low), np.maximum(measure, limits["outside_measure"]), measure)
    return Result(
        measure=measure,
        unit="%",
        observed=fill,
        lower=low,
        upper=high,
        applies=s.choice("lubrication").is_in(*GREASES) & s.known("grease_fill"),
        reason="no filling of grease is stated",
        missing={
            "speed_max": np.isnan(s.number("speed_max")),
            "bore_diameter": np.isnan(s.number("bore_diameter")),
            "outside_diameter": np.isnan(s.number("outside_diameter")),
        },
        variant=lambda: np.where(fill < low, "scant", "").astype(object),
        facts=lambda: {"factor": (factor, "mm.r/min")},
        working=lambda: [
            Working("factor", "n·d_m", "speed factor", factor, "mm.r/min", "n (d + D)/2"),
            Working("fill", "", "share of the free space filled", fill, "%"),
            Working("low", "", "least published", low, "%", "table by speed factor"),
            Working("high", "", "largest published", high, "%", "table by speed factor"),
        ],
    )
