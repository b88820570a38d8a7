"""Friction power of a position, what it gives off, and the temperatures that follow; both ends of what is published.

Powers in W, temperatures in degC, conductances in W/K; arrays of shape (rows,), NaN where not known.
"""

from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, View, within
from linter.checks.shared.quantities import contact_angle, mean_diameter, static_load_rating
from linter.checks.shared.rated_life import loads
from linter.checks.shared.seat_fits import row_words
from linter.mechanics import boundary, cooling, friction, heat, lubricant
from linter.model.stations import Bools, Floats

Ends = tuple[Floats, Floats]
HOTTEST = 400.0
"""degC; no bearing is looked for beyond it."""
_WARMEST_AIR, _COLDEST_AIR = 200.0, -60.0
_THICKEST = 1e6
GREASES = ("grease", "grease for high speed")
TO_AIR = ("still air", "air stream")


@frozen(eq=False)
class Friction:
    """What the friction of a position is made of.

    Attributes
    ----------
    lubricant : tuple of float array
        Least and largest f_0.
    load : float array
        Load-dependent torque M_1 [N mm].
    seal : float array
        Torque of contact seals [N mm], 0 where none rubs.
    share : tuple of float array
        Factors on both torques of the bearing for its balls: least and largest.
    stated : float array
        Power as stated [W].
    load_assumed : bool array
        Rows whose loads are not known, so that the reference load stands in.
    oil : tuple of float array
        Constants of the line on which the viscosity of the (base) oil lies.
    oil_assumed : bool array
        Rows whose grease is not known, so that the oil of the reference grease stands in.
    """

    lubricant: Ends
    load: Floats
    seal: Floats
    share: Ends
    stated: Floats
    load_assumed: Bools
    oil: Ends
    oil_assumed: Bools


@frozen(eq=False)
class Surroundings:
    """Where the heat goes.

    Attributes
    ----------
    ambient : float array
        Temperature of the surroundings [degC].
    added : float array
        Heat of other parts per position [W].
    way : object array of str
        ``stated`` (cooling factor), ``air`` (surface of the housing) or ``seats`` (reference flow of ISO 15312).
    conductance : tuple of float array
        Of the other ways: by the best cooling and by the worst [W/K].
    to_air : bool array
        Rows whose heat leaves by the surface of the housing.
    air : tuple of float array
        Its area [mm2] and diameter [mm], the speed of the air [m/s], and the positions that share it.
    emissivity : tuple of float
        Of its surface, likewise.
    missing : dict of str to bool array
        What the stated way of cooling wants.
    """

    ambient: Floats
    added: Floats
    way: NDArray[Any]
    conductance: Ends
    to_air: Bools
    air: tuple[Floats, ...]
    emissivity: tuple[float, float]
    missing: dict[str, Bools]

    def given_off(self, temperature: Floats, end: int) -> Floats:
        """Heat given off at a temperature [W], with the best cooling (end 0) or the worst (1)."""
        found = self.conductance[end] * (temperature - self.ambient)
        rows = self.to_air
        if rows.any():
            emissivity = np.full(int(rows.sum()), self.emissivity[end])
            found[rows] = _to_air(temperature[rows], self.ambient[rows], emissivity, *(p[rows] for p in self.air))
        return found


def _to_air(
    temperature: Floats, ambient: Floats, emissivity: Floats,
    area: Floats, diameter: Floats, blown: Floats, positions: Floats,
) -> Floats:  # fmt: skip
    """Heat that a position gives off by the surface of its housing [W]."""
    by_air = cooling.surface_conductance(area, diameter, temperature, ambient, blown, emissivity)
    return by_air / positions * (temperature - ambient)


def _oil_line(view: View, limits: Limits) -> tuple[Ends, Bools]:
    """Constants of the line on which the viscosity of each position's (base) oil lies, and where it is assumed.

    Where nothing is known of a grease whose heat leaves through the seats as under the reference conditions, its oil is
    the thickest of the reference grease.
    """
    s = view.stations
    names = [f"base_oil_viscosity_{t}" for t in (40, 100)]
    warm, hot = (within(s.number(name), 0.3) for name in names)
    assumed = np.zeros(view.count, dtype=bool)
    if (reference := limits.get("grease_viscosity")) is not None:
        assumed = s.choice("lubrication").is_in(*GREASES) & ~s.known(names[0]) & ~s.known(names[1])
        assumed &= ~s.known("power_loss") & ~s.known("cooling_factor") & ~s.choice("cooling").is_in(*TO_AIR)
        warm, hot = np.where(assumed, reference[0], warm), np.where(assumed, reference[1], hot)
    return _line(warm, hot), assumed


def _line(warm: Floats, hot: Floats) -> Ends:
    return lubricant.viscosity_line(warm, 40.0, np.where(hot < warm, hot, np.nan), 100.0)


def _viscosity(temperature: Floats, line: Ends) -> Floats:
    with np.errstate(over="ignore"):
        return within(np.minimum(lubricant.viscosity_on(line, temperature), _THICKEST))


def viscosity_at(found: Friction, temperature: Floats) -> Floats:
    """Viscosity of the (base) oil at a temperature [mm2/s], at most 10^6."""
    return _viscosity(within(temperature, _COLDEST_AIR, HOTTEST), found.oil)


def friction_of(view: View, limits: Limits) -> Friction:
    """Friction of each position by the two-term method with its published ends; a stated power goes before it.

    Computed once for the same limits.
    """
    grease = tuple(limits.get("grease_viscosity", ()))
    key = (friction_of, float(limits["load_share"]), tuple(limits["ceramic_share"]), grease)
    if key not in view.cache:
        view.cache[key] = _friction(view, limits)
    found: Friction = view.cache[key]
    return found


def _friction(view: View, limits: Limits) -> Friction:
    s = view.stations
    kind = row_words(s.choice("bearing_type"))
    low, high = friction.lubricant_factor(kind, row_words(s.choice("lubrication")))
    rating = within(static_load_rating(view).value)
    radial, axial = loads(view)
    unknown = np.isnan(radial + axial)
    radial = np.where(unknown, limits["load_share"] * rating, radial)
    term = friction.load_term(kind, contact_angle(view), radial, np.where(unknown, 0.0, axial), rating)
    load = friction.load_torque(term.factor, term.friction_load, within(mean_diameter(view)))
    lip = s.number("seal_lip_diameter")
    lip = within(np.where(np.isnan(lip), s.number("inner_ring_shoulder_diameter"), lip), closed=True)
    rubs = s.choice("closure").is_in("contact seal")
    seal = np.where(rubs, friction.seal_torque(within(s.number("outside_diameter")), lip), 0.0)
    ceramic = s.choice("ball_material").is_in("silicon nitride")
    shares = (np.where(ceramic, float(end), 1.0) for end in limits["ceramic_share"])
    return Friction(
        (low, high), load, np.nan_to_num(seal), (next(shares), next(shares)),
        within(s.number("power_loss"), closed=True), unknown & ~np.isnan(rating), *_oil_line(view, limits),
    )  # fmt: skip


def power_at(view: View, found: Friction, speed: Floats, temperature: Floats, end: int) -> Floats:
    """Friction power at a speed and temperature [W]; end 0 the least, 1 the largest that is published."""
    inside = within(temperature, _COLDEST_AIR, HOTTEST)
    return _power(inside, *found.oil, speed, within(mean_diameter(view)), *_of_end(found, end))


def _of_end(found: Friction, end: int) -> tuple[Floats, ...]:
    return found.lubricant[end], found.share[end], found.load, found.seal, found.stated


def _power(
    temperature: Floats, a: Floats, b: Floats, speed: Floats, diameter: Floats,
    factor: Floats, share: Floats, load: Floats, seal: Floats, stated: Floats,
) -> Floats:  # fmt: skip
    """Friction power [W] of oil on the line of constants ``a`` and ``b``; the stated one where it is known."""
    drag = friction.lubricant_torque(factor, _viscosity(temperature, (a, b)), speed, diameter)
    computed = heat.friction_power(share * (drag + load) + seal, speed)
    return np.where(np.isnan(stated), computed, stated)


def power_by_maker(view: View, found: Friction, speed: Floats, temperature: Floats) -> Floats:
    """Friction power by the maker's method of rolling and sliding, for comparison [W].

    Deep groove ball bearings of the series that it knows, under loads that are stated; NaN for all others.
    """
    s = view.stations
    bore, outside, width = (within(s.number(name)) for name in ("bore_diameter", "outside_diameter", "ring_width"))
    series = boundary.coded_series(bore, outside, width)
    deep = s.choice("bearing_type").is_in("deep groove ball") & (outside > bore) & ~found.load_assumed
    rating, (radial, axial) = within(static_load_rating(view).value), loads(view)
    nu, turning, torque = within(viscosity_at(found, temperature)), within(speed), np.full(view.count, np.nan)
    for one in series.known:
        r = deep & series.is_word(one)
        try:
            constants = friction.maker_constants(one)
        except ValueError:
            continue
        if not r.any():
            continue
        torque[r] = friction.maker_torque(
            bore[r], outside[r], rating[r], radial[r], axial[r], nu[r], turning[r], constants
        ).total
    return heat.friction_power(torque + found.seal, speed)


def surroundings(view: View, limits: Limits) -> Surroundings:
    """The way that the heat takes: a stated cooling factor, the housing to the air, else the seats.

    Computed once for the same limits.
    """
    key = (surroundings, limits["ambient"], limits["seat_spread"], tuple(limits["emissivity"]))
    if key not in view.cache:
        view.cache[key] = _surroundings(view, limits)
    found: Surroundings = view.cache[key]
    return found


def _surroundings(view: View, limits: Limits) -> Surroundings:
    s = view.stations
    ambient = within(s.number("ambient_temperature"), _COLDEST_AIR, _WARMEST_AIR)
    ambient = np.where(s.known("ambient_temperature"), ambient, limits["ambient"])
    positions = view.to_stations(view.station_count).astype(float)
    added = within(s.number("added_heat"), closed=True)
    added = np.where(s.known("added_heat"), added, 0.0) / positions
    stated = within(s.number("cooling_factor"))
    to_air = s.choice("cooling").is_in(*TO_AIR) & ~s.known("cooling_factor")
    area = within(s.number("cooling_surface"))
    outside = within(view.to_stations(view.to_machines(s.number("housing_outer_diameter"), "max", known=True)))
    diameter = np.where(np.isnan(outside), np.sqrt(area / np.pi), outside)
    stream = s.choice("cooling").is_in("air stream")
    blown = np.where(stream, within(s.number("air_speed"), closed=True), 0.0)
    seats = heat.seat_conductance(
        within(s.number("bore_diameter")), within(s.number("outside_diameter")), within(s.number("ring_width"))
    )
    best, worst = (
        np.where(s.known("cooling_factor"), stated, seats * spread)
        for spread in (limits["seat_spread"], 1.0 / limits["seat_spread"])
    )
    bright, dull = limits["emissivity"]
    way = np.select([s.known("cooling_factor"), to_air], ["stated", "air"], "seats").astype(object)
    return Surroundings(
        ambient, added, way, (best, worst), to_air, (area, diameter, blown, positions), (float(bright), float(dull)),
        {
            "cooling_surface": to_air & np.isnan(area),
            "air_speed": to_air & stream & np.isnan(s.number("air_speed")),
            "ring_width": (way == "seats") & np.isnan(s.number("ring_width")),
        },
    )  # fmt: skip


def balance(view: View, limits: Limits, speed: Floats, found: Friction, around: Surroundings) -> Ends:
    """Coolest and hottest steady temperature of the bearing by what is published [degC]; infinite beyond 400 degC."""
    coolest, hottest = np.full((2, view.count), np.nan)
    rubs = (*found.oil, speed, within(mean_diameter(view)))
    for to_air, given_off in ((False, _conducted), (True, _to_air)):
        rows = np.flatnonzero(around.to_air == to_air)
        ends = []
        for end in (0, 1):
            shines = np.full(view.count, around.emissivity[end])
            cools = (shines, *around.air) if to_air else (around.conductance[end],)
            every = (around.ambient, around.added, *cools, *rubs, *_of_end(found, end))
            ends.append([part[rows] for part in every])
        both, count = [np.concatenate(parts) for parts in zip(*ends, strict=True)], len(cools)
        made = heat.balance_temperature(
            lambda t, ambient, added, *of, n=count: _power(t, *of[n:]) + added,
            lambda t, ambient, added, *of, n=count, by=given_off: by(t, ambient, *of[:n]),
            both[0], HOTTEST, both,
        )  # fmt: skip
        coolest[rows], hottest[rows] = made[: len(rows)], made[len(rows) :]
    return coolest, hottest


def _conducted(temperature: Floats, ambient: Floats, conductance: Floats) -> Floats:
    return conductance * (temperature - ambient)


def wants(view: View, found: Friction, around: Surroundings, computed: bool = False) -> dict[str, Bools]:
    """What is wanted for the balance and not stated, by row; ``computed`` where a stated power does not do."""
    s = view.stations
    rows = np.isnan(found.stated) | computed
    names = ("base_oil_viscosity_40", "base_oil_viscosity_100", "bore_diameter", "outside_diameter")
    oil = {name: rows & ~s.known(name) & ~found.oil_assumed for name in names}
    spoilt = rows & s.known(names[0]) & s.known(names[1]) & np.isnan(viscosity_at(found, np.full(view.count, 40.0)))
    return {
        **oil,
        names[0]: oil[names[0]] | spoilt,
        "lubrication": rows & np.isnan(found.lubricant[0]),
        "static_rating": rows & np.isnan(static_load_rating(view).value),
        "bearing_type": rows & np.isnan(found.load),
        "ambient_temperature": np.isnan(around.ambient),
        "cooling_factor": s.known("cooling_factor") & np.isnan(within(s.number("cooling_factor"))),
        **around.missing,
    }


def assumptions(view: View, limits: Limits, found: Friction, around: Surroundings) -> list[Assumes]:
    """What stood in for values that the table does not state."""
    s = view.stations
    computed = np.isnan(found.stated)
    return [
        Assumes(
            "ambient_temperature", np.full(view.count, float(limits["ambient"])), "degC",
            "not stated; the surroundings of ISO 15312 stand in", ~s.known("ambient_temperature"),
        ),
        Assumes(
            "radial_load", np.where(found.load_assumed, limits["load_share"] * static_load_rating(view).value, np.nan),
            "N", "loads not known; the load of ISO 15312, a share of C_0, stands in for the friction",
            found.load_assumed & computed,
        ),
        Assumes(
            "cooling", np.full(view.count, "conducted", dtype=object), "",
            "not stated; the heat flow of ISO 15312 through the seats stands in",
            (around.way == "seats") & ~s.choice("cooling").known,
        ),
        Assumes(
            "added_heat", np.zeros(view.count), "W", "not stated; the friction alone heats the bearing",
            ~s.known("added_heat"),
        ),
        *(
            Assumes(
                f"base_oil_viscosity_{at}", np.full(view.count, float(value)), "mm2/s",
                "not stated; the thickest oil of the reference grease of ISO 15312 stands in", found.oil_assumed,
            )
            for at, value in zip((40, 100), limits.get("grease_viscosity", ()), strict=False)
        ),
    ]  # fmt: skip
