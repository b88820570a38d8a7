"""Chapter life: fatigue, static safety, film and grease against what is required."""

from typing import Any

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.contacts import contact, under_load
from linter.checks.shared.lubrication import thinner, unusable, viscosity, viscosity_ratio, viscosity_wants
from linter.checks.shared.preload_band import station_band
from linter.checks.shared.quantities import (
    ball_diameter,
    computed_assumed,
    dynamic_rating,
    is_ball,
    mean_diameter,
    pitch_diameter,
    static_load_rating,
)
from linter.checks.shared.rated_life import ceramic, dynamic_load, fatigue_limit, life_factor, loads, radial_roller
from linter.checks.shared.two_sides import sinking
from linter.mechanics import hertz, lubricant, materials, rating_life, static_rating
from linter.model.stations import Bools, Floats

#: Ends of the ranges of the grease life formulas (see :mod:`linter.mechanics.lubricant`): degC, and n·d_m.
GREASE_BY_LIMIT_UP_TO = {"general": 110.0, "wide range": 130.0}
GREASE_BY_FACTOR_UP_TO = 500_000.0


def _load_wants(view: View) -> dict[str, Bools]:
    s = view.stations
    kind = s.choice("bearing_type")
    ball = is_ball(view) | ~kind.known
    preload = station_band(view).missing
    return {
        "bearing_type": ~kind.known,
        "radial_load": np.isnan(s.number("radial_load")),
        "axial_load": np.isnan(s.number("axial_load")) & ~radial_roller(view),
        **{name: rows & ball for name, rows in preload.items()},
        "contact_angle": is_ball(view) & np.isnan(contact(view).free_angle),
        "static_rating": is_ball(view) & np.isnan(static_load_rating(view).value),
    }


def rating(view: View, limits: Limits) -> Result:
    """Modified rating life (basic life where the lubricant is not known) against the required life."""
    s = view.stations
    radial, axial = loads(view)
    load = dynamic_load(view)
    capacity = dynamic_rating(view).value
    speed = within(s.number("speed_operating"))
    exponent = np.where(is_ball(view), 3.0, 10.0 / 3.0)
    basic = np.where(load > 0, (capacity / np.where(load > 0, load, np.nan)) ** exponent, np.inf)
    basic = np.where(np.isnan(load + capacity), np.nan, basic)
    hours = rating_life.life_hours(basic, speed)
    reliability = within(s.number("required_reliability"), 0.0, 99.95)
    a_1 = rating_life.reliability_factor(np.maximum(reliability, 90.0))
    clean, a_iso, a_far = life_factor(view, limits)
    modified = ~np.isnan(a_iso)
    life, far = (a_1 * np.where(modified, factor, 1.0) * hours for factor in (a_iso, a_far))
    required = within(s.number("required_life"))
    ratio = np.where(np.isinf(life), 0.0, required / life)
    needed = load * (required / life * basic) ** (1.0 / exponent)
    longest, ranged = limits.get("longest", np.inf), far > life * (1 + 1e-9)
    spread = ranged & (required <= far)
    ratio = np.where(spread, np.minimum(ratio, limits.get("range_most", np.inf)), ratio)
    capped = (life > longest) & ~np.isinf(life)
    life, far = (np.where(np.isinf(x), x, np.minimum(x, longest)) for x in (life, far))
    spoilt = np.logical_or.reduce(list(unusable(view).values()))
    spoilt &= (s.number("speed_operating") > 0.0) & ~thinner(view)
    words = np.select(
        [np.isinf(life), capped, ranged & modified, modified], ["unloaded", "capped", "range", ""], "basic"
    )
    return Result(
        measure=np.where(thinner(view), np.fmax(ratio, limits.get("thin_measure", 0.0)), ratio),
        unit="h",
        observed=life,
        lower=required,
        missing={
            **_load_wants(view),
            "dynamic_rating": np.isnan(capacity),
            **{name: rows & spoilt for name, rows in unusable(view).items()},
        },
        variant=lambda: words.astype(object),
        facts=lambda: {
            "rating_needed": (needed, "N"),
            "basic_hours": (a_1 * hours, "h"),
            "far_life": (far, "h"),
            "not_assessed": np.where(
                spoilt, "the viscosities and the temperature that are stated give no viscosity in use", ""
            ).astype(object),
            "unknown": _unknown(view),
        },
        assumed=lambda: [
            *(a for a in (*station_band(view).assumed, *contact(view).assumed) if a.parameter == "preload_force"),
            Assumes(
                "cleanliness",
                np.full(view.count, "a_ISO = 1", dtype=object),
                "",
                "not stated; the basic rating life is judged, which no dirt shortens",
                ~modified & ~s.choice("cleanliness").known,
            ),
            Assumes(
                "fatigue_load_limit",
                np.full(view.count, "a_ISO = 1", dtype=object),
                "",
                "not stated; the basic rating life is judged, which has no fatigue limit",
                ~modified & s.choice("cleanliness").known & np.isnan(fatigue_limit(view, limits)),
            ),
            *computed_assumed(view, "dynamic_rating", "static_rating", "fatigue_load_limit"),
        ],
        working=lambda: [
            Working("radial", "F_r", "radial load", radial, "N"),
            Working("axial", "F_a", "axial load with preload", axial, "N", "F_a + F_p"),
            Working("load", "P", "equivalent load", load, "N", "X F_r + Y F_a, X and Y by f_0 F_a/C_0"),
            Working("rating", "C", "dynamic rating", capacity, "N"),
            Working("speed", "n", "speed that the life refers to", speed, "r/min"),
            Working("basic", "L_10", "basic rating life", basic, "1e6 revolutions", "(C/P)^p"),
            Working("hours", "L_10h", "basic rating life", hours, "h", "L_10 · 10⁶/(60 n)"),
            Working("a_1", "a_1", "factor for the reliability", a_1),
            Working("viscosity", "ν", "viscosity in use", viscosity(view), "mm2/s", "ASTM D341"),
            Working("kappa", "κ", "viscosity ratio", viscosity_ratio(view), "1", "ν/ν_1"),
            Working("fatigue_limit", "C_u", "fatigue load limit", fatigue_limit(view, limits), "N"),
            Working("clean", "e_C", "contamination factor", clean),
            Working("a_iso", "a_ISO", "life modification factor", a_iso, "1", "ISO 281, from κ and e_C C_u/P"),
            Working("life", "L_nmh", "life with all known factors", life, "h", "a_1 · a_ISO · L_10h"),
        ],
    )  # fmt: skip


def _unknown(view: View) -> NDArray[Any]:
    """What the modified life still wants, in words."""
    s = view.stations
    wants = {
        "lubrication": ~s.choice("lubrication").known,
        "cleanliness": ~s.choice("cleanliness").known,
        "viscosity": np.isnan(viscosity(view)),
    }
    told = np.full(view.count, "", dtype=object)
    for name, rows in wants.items():
        told = np.where(rows, np.where(told == "", name, told + ", " + name), told)
    return np.where(told == "", "fatigue load limit", told).astype(object)


def static(view: View, limits: Limits) -> Result:
    """Static safety factor S_0 = C_0/P_0 with the preload as axial load."""
    radial, axial = loads(view)
    capacity = static_load_rating(view).value
    capacity = capacity * ceramic(view, static_load_rating(view).computed, limits)
    angle = contact(view).free_angle
    nominal = np.where(view.stations.choice("bearing_type").is_in("deep groove ball"), 0.0, angle)
    x_0, y_0 = static_rating.load_factors(within(nominal, 0.0, 45.0, closed=True))
    load = np.where(is_ball(view), static_rating.equivalent_load(radial, axial, x_0, y_0), np.nan)
    load = np.where(radial_roller(view) & (axial == 0.0), radial, load)
    safety = np.where(load > 0, capacity / np.where(load > 0, load, np.nan), np.inf)
    safety = np.where(np.isnan(load + capacity), np.nan, safety)
    roller = radial_roller(view)
    marks = [np.where(roller, *limits[name][::-1]) for name in ("quiet", "normal", "undemanding")]
    unloaded = np.isinf(safety)
    told = limits.get("hybrid_share") is not None  # quiet running is told, no longer asked
    measure = np.where(unloaded, 0.0, sinking(np.where(unloaded, 1.0, safety), *(marks[1:] if told else marks)))
    leads = np.where((measure > 2.0) | told, marks[1], marks[0])
    return Result(
        measure=measure,
        observed=safety,
        lower=leads,
        missing={**_load_wants(view), "static_rating": np.isnan(capacity)},
        variant=lambda: np.where(
            unloaded, "unloaded", np.where((measure <= 2.0) & (not told), "remark", "")
        ).astype(object),
        facts=lambda: {"rating_needed": (leads * load, "N"), "quiet": (marks[0], "1")},
        assumed=lambda: [*station_band(view).assumed, *computed_assumed(view, "static_rating")],
        working=lambda: [
            Working("radial", "F_r", "radial load", radial, "N"),
            Working("axial", "F_a", "axial load with preload", axial, "N", "F_a + F_p"),
            Working("x_0", "X_0", "radial factor", x_0),
            Working("y_0", "Y_0", "axial factor", y_0),
            Working("load", "P_0", "static equivalent load", load, "N", "max(X_0 F_r + Y_0 F_a, F_r)"),
            Working("rating", "C_0", "static rating", capacity, "N"),
            Working("safety", "S_0", "static safety", safety, "1", "C_0/P_0"),
        ],
    )  # fmt: skip


def film(view: View, limits: Limits) -> Result:
    """Viscosity ratio of the film, with the film thickness of preloaded ball bearings as working."""
    s = view.stations
    kappa = viscosity_ratio(view)
    low, extreme, boundary = (np.full(view.count, float(limits[n])) for n in ("full", "additives", "boundary"))
    high = float(limits["thick"])
    # the viscosity line gives back its own points up to the last bits only
    kappa = np.where(np.abs(kappa - low) <= 1e-9 * low, low, kappa)
    kappa = np.where(thinner(view) & (s.number("speed_operating") > 0.0), 0.0, kappa)
    needed = viscosity(view) / np.where(kappa > 0, kappa, np.nan)
    thin = sinking(kappa, low, extreme, boundary)
    with_ep = s.choice("ep_additives").is_in("yes") & (kappa >= boundary) & (kappa < extreme)
    thin = np.where(with_ep, np.minimum(thin, limits.get("ep_most", np.inf)), thin)
    measure = np.where(kappa < low, thin + 0.5, np.where(kappa > high, 1.5 - 0.5 * high / kappa, thin))
    solid = s.choice("lubrication").is_in("solid film")
    thickness, parameter, load = _film_thickness(view, limits)
    return Result(
        measure=measure,
        observed=kappa,
        lower=np.where(kappa > high, np.nan, low),
        upper=np.where(kappa > high, high, np.nan),
        applies=~solid,
        reason="a solid film needs no oil film",
        missing={**viscosity_wants(view), "speed_operating": np.isnan(s.number("speed_operating"))},
        variant=lambda: np.select(
            [kappa > high, kappa < boundary, with_ep & (limits.get("ep_most") is not None), kappa < extreme],
            ["thick", "boundary", "ep", "additives"],
            "",
        ).astype(object),
        facts=lambda: {
            "viscosity_needed": (needed, "mm2/s"),
            "additives_from": (extreme, "1"),
        },
        working=lambda: [
            Working("speed", "n", "speed in operation", s.number("speed_operating"), "r/min"),
            Working("temperature", "ϑ", "temperature of the bearing", s.number("operating_temperature"), "degC"),
            Working("viscosity", "ν", "viscosity in use", viscosity(view), "mm2/s", "ASTM D341"),
            Working("reference", "ν_1", "viscosity for adequate film", needed, "mm2/s",
                    "4500 n^-½ D_pw^-½ from 1000 r/min"),
            Working("kappa", "κ", "viscosity ratio", kappa, "1", "ν/ν_1"),
            Working("ball_load", "Q", "load of one ball", load, "N"),
            Working("film", "h_min", "smallest film at the inner race", thickness, "um", "Hamrock and Dowson"),
            Working("lambda", "λ", "film over combined roughness", parameter, "1", "h_min/√(R_q1² + R_q2²)"),
        ],
    )  # fmt: skip


def _film_thickness(view: View, limits: Limits) -> tuple[Floats, Floats, Floats]:
    """Smallest film at the inner race [um], film parameter, and load of a ball [N] under axial load and preload."""
    s = view.stations
    _, axial = loads(view)
    found = np.full((3, view.count), np.nan)
    state = under_load(view, within(axial))
    nu, speed = viscosity(view), within(s.number("speed_operating"))
    rows = ~np.isnan(state.ball_load + nu + speed)
    if not rows.any():
        return found[0], found[1], found[2]
    d_w, d_pw, angle = ball_diameter(view)[rows], pitch_diameter(view)[rows], state.contact_angle[rows]
    words = s.choice("ball_material").texts()[rows]
    words = np.where(words == "", "steel", words)
    steel = materials.elastic_modulus("bearing steel"), materials.poisson_ratio("bearing steel")
    modulus = hertz.effective_modulus(
        materials.elastic_modulus(words, ball=True), materials.poisson_ratio(words, ball=True), *steel
    )
    rolling, across = hertz.race_curvatures(d_w, d_pw, angle, s.number("inner_groove_ratio")[rows], "inner")
    thickness = lubricant.film_thickness(
        lubricant.entrainment_speed(speed[rows], d_w, d_pw, angle), 1.0 / rolling, modulus,
        1e-6 * nu[rows] * limits["oil_density"], limits["pressure_viscosity"], state.ball_load[rows],
        (rolling / across) ** (2.0 / np.pi),
    )  # fmt: skip
    found[0, rows] = thickness
    found[1, rows] = lubricant.film_parameter(thickness, limits["race_roughness"], limits["ball_roughness"])
    found[2, rows] = state.ball_load[rows]
    return found[0], found[1], found[2]


def grease(view: View, limits: Limits) -> Result:
    """Grease life by published formulas against the required life."""
    s = view.stations
    lubrication = s.choice("lubrication")
    greased = lubrication.is_in("grease", "grease for high speed")
    wide = lubrication.is_in("grease for high speed")
    temperature, speed = s.number("operating_temperature"), s.number("speed_operating")
    ratio = within(speed / s.number("limiting_speed"))
    held = np.minimum(ratio, 1.0)
    general, special = (
        lubricant.grease_life_by_limit(held, np.clip(temperature, -60.0, hottest), name)
        * hotter(temperature, hottest, limits["halving"])
        for name, hottest in GREASE_BY_LIMIT_UP_TO.items()
    )
    factor = within(speed * mean_diameter(view))
    share = np.nan_to_num(dynamic_load(view) / dynamic_rating(view).value)
    loaded = np.interp(share, limits["load_shares"], limits["load_factors"])
    by_limit = np.where(wide, special, general) * loaded
    by_factor = lubricant.grease_life_by_speed_factor(
        np.minimum(factor, GREASE_BY_FACTOR_UP_TO), np.clip(share, 0.0, 0.16), np.clip(temperature, -60.0, 120.0)
    ) * hotter(temperature, 120.0, limits["halving"])
    by_factor = np.where(wide, np.nan, by_factor)
    covered = (ratio <= 1.0) | (~wide & (factor <= GREASE_BY_FACTOR_UP_TO))
    by_limit, by_factor = (np.where(covered, x, np.nan) for x in (by_limit, by_factor))
    upright = np.where(s.choice("shaft_orientation").is_in("vertical"), limits["vertical_factor"], 1.0)
    turned = np.where(s.choice("rotating_ring").is_in("outer"), limits["outer_ring_factor"], 1.0)
    dirty = s.choice("cleanliness").map(
        {
            "slight contamination": limits["contaminated_slight"],
            "typical contamination": limits["contaminated_slight"],
            "severe contamination": limits["contaminated_severe"],
            "very severe contamination": limits["contaminated_very_severe"],
        },
        default=1.0,
    )
    base = np.fmin(by_limit, by_factor)
    far = np.fmax(by_limit, by_factor)
    common = upright * turned * dirty
    life = np.minimum(base * common, limits["longest"])
    far_life = np.minimum(far * common, limits["longest"])
    required = within(s.number("required_life"))
    limiting = np.isnan(s.number("limiting_speed"))
    hottest = np.where(wide, float(limits["hottest_special"]), float(limits["hottest"]))
    hot = temperature > hottest
    by_life = ladder(required, life, far_life, 2.0 * far_life, 4.0 * far_life)
    measure = np.where(hot, np.fmax(by_life, limits["hot_measure"]), by_life)
    unknown = np.isnan(life) & ~hot
    return Result(
        measure=measure,
        unit="h",
        observed=np.where(hot, np.nan, far_life),
        lower=np.where(hot, np.nan, required),
        applies=greased | ~lubrication.known,
        reason="no grease has to last",
        missing={
            "limiting_speed": unknown & limiting & ~np.isnan(temperature + speed),
            "operating_temperature": np.isnan(temperature),
        },
        variant=lambda: np.select([hot, life == far_life], ["hot", "one"], "").astype(object),
        facts=lambda: {
            "near_life": (life, "h"),
            "cooler": (temperature - limits["halving"], "degC"),
            "hottest": (hottest, "degC"),
            "not_assessed": np.where(
                ~covered & ~np.isnan(ratio + factor), "the speed lies beyond the range of every published formula", ""
            ).astype(object),
        },
        working=lambda: [
            Working("speed", "n", "speed in operation", speed, "r/min"),
            Working("temperature", "ϑ", "temperature of the bearing", temperature, "degC"),
            Working("ratio", "n/n_lim", "share of the limiting speed", ratio),
            Working("speed_factor", "n·d_m", "speed factor", factor, "mm.r/min"),
            Working("load_share", "P/C", "load over dynamic rating", share),
            Working("by_limit", "", "life by the limiting speed", by_limit, "h", "first maker's formula · load factor"),
            Working("by_factor", "", "life by the speed factor", by_factor, "h", "second maker's formula"),
            Working("upright", "", "factor for a vertical shaft", upright),
            Working("turned", "", "factor for a rotating outer ring", turned),
            Working("dirty", "", "factor for contamination", dirty),
            Working("life", "", "grease life, near end", life, "h", "smaller of the two · factors"),
            Working("far_life", "", "grease life, far end", far_life, "h", "larger of the two · factors"),
        ],
    )  # fmt: skip


def hotter(temperature: Floats, hottest: float, halving: float) -> Floats:
    """Factor on a grease life beyond the range of its formula: halved for every so many kelvin more."""
    return 2.0 ** (-np.maximum(temperature - hottest, 0.0) / halving)
