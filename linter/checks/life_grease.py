"""Chapter life, grease: how long a filling lasts by published formulas, with the ends of their ranges told."""

from collections.abc import Callable

import numpy as np

from linter.checks.life import GREASE_BY_FACTOR_UP_TO, GREASE_BY_LIMIT_UP_TO, hotter
from linter.checks.shared.base import Limits, Result, View, Working, ladder, within
from linter.checks.shared.quantities import attitude_assumed, computed_assumed, dynamic_rating, mean_diameter
from linter.checks.shared.rated_life import dynamic_load
from linter.mechanics import lubricant
from linter.model.stations import Floats
from linter.model.wording import quantity_text


def _ends(view: View, limits: Limits, temperature: Floats) -> tuple[Floats, Floats]:
    """Grease life by the limiting speed and by the speed factor [h], without the common factors.

    Beyond the limiting speed the first is held there; the second ends at its speed factor, and is held there where no
    limiting speed is stated.
    """
    s = view.stations
    wide = s.choice("lubrication").is_in("grease for high speed")
    speed = within(s.number("speed_operating"))
    ratio, factor = within(speed / s.number("limiting_speed")), within(speed * mean_diameter(view))
    share = np.nan_to_num(dynamic_load(view) / dynamic_rating(view).value)
    general, special = (
        lubricant.grease_life_by_limit(np.minimum(ratio, 1.0), np.clip(temperature, -60.0, hottest), name)
        * hotter(temperature, hottest, limits["halving"])
        for name, hottest in GREASE_BY_LIMIT_UP_TO.items()
    )
    by_limit = np.where(wide, special, general) * np.interp(share, limits["load_shares"], limits["load_factors"])
    hottest = float(limits["hottest"])
    by_factor = lubricant.grease_life_by_speed_factor(
        np.minimum(factor, GREASE_BY_FACTOR_UP_TO), np.clip(share, 0.0, 0.16), np.clip(temperature, -60.0, hottest)
    ) * hotter(temperature, hottest, limits["halving"])
    usable = ~wide & ((factor <= GREASE_BY_FACTOR_UP_TO) | np.isnan(ratio))
    return by_limit, np.where(usable, by_factor, np.nan)


def _common(view: View, limits: Limits) -> dict[str, Floats]:
    """Factors for a vertical shaft, a rotating outer ring and contamination."""
    s = view.stations
    dirty = {
        "slight contamination": limits["contaminated_slight"],
        "typical contamination": limits["contaminated_slight"],
        "severe contamination": limits["contaminated_severe"],
        "very severe contamination": limits["contaminated_very_severe"],
    }
    return {
        "upright": np.where(s.choice("shaft_orientation").is_in("vertical"), limits["vertical_factor"], 1.0),
        "turned": np.where(s.choice("rotating_ring").is_in("outer"), limits["outer_ring_factor"], 1.0),
        "dirty": s.choice("cleanliness").map(dirty, default=1.0),
    }


def lasting(view: View, limits: Limits) -> Result:
    """Grease life by published formulas against the required life, or the regreasing interval where one is stated."""
    s = view.stations
    lubrication = s.choice("lubrication")
    wide = lubrication.is_in("grease for high speed")
    temperature, speed = s.number("operating_temperature"), s.number("speed_operating")
    ratio, factor = within(speed / s.number("limiting_speed")), within(speed * mean_diameter(view))
    by_limit, by_factor = _ends(view, limits, temperature)
    factors = _common(view, limits)
    common = factors["upright"] * factors["turned"] * factors["dirty"]
    life, far_life = (
        np.minimum(end * common, limits["longest"])
        for end in (np.fmin(by_limit, by_factor), np.fmax(by_limit, by_factor))
    )
    required, interval = within(s.number("required_life")), within(s.number("regreasing_interval"))
    target = np.fmin(required, interval)
    hottest = np.where(wide, float(limits["hottest_special"]), float(limits["hottest"]))
    hot = temperature > hottest
    fast = (ratio > 1.0) | (np.isnan(ratio) & ~wide & (factor > GREASE_BY_FACTOR_UP_TO))
    cold = temperature < limits["coolest"]
    by_life = ladder(target, life, far_life, 2.0 * far_life, 4.0 * far_life)
    measure = np.where(cold & ~fast, np.minimum(by_life, limits["cold_most"]), by_life)
    measure = np.where(hot | fast, np.fmax(measure, limits["hot_measure"]), measure)
    one = life == far_life
    cooler = _cooler(view, limits, common, target)
    return Result(
        measure=measure,
        unit="h",
        observed=np.where(hot, np.nan, far_life),
        lower=np.where(hot, np.nan, target),
        applies=lubrication.is_in("grease", "grease for high speed") | ~lubrication.known,
        reason="no grease has to last",
        missing={
            "limiting_speed": np.isnan(life) & ~hot & np.isnan(ratio) & ~np.isnan(temperature + speed),
            "operating_temperature": np.isnan(temperature),
        },
        variant=lambda: np.select(
            [hot, fast, cold & one, cold, one], ["hot", "fast", "cold_one", "cold", "one"], ""
        ).astype(object),
        facts=lambda: {
            "near_life": (life, "h"),
            "asked": np.where(target < required, "regreasing interval", "required life").astype(object),
            "hottest": (hottest, "degC"),
            "coolest": (np.full(view.count, float(limits["coolest"])), "degC"),
            "ways": _ways(cooler, wide, life),
        },
        assumed=lambda: [
            attitude_assumed(view, np.ones(view.count, dtype=bool)),
            *computed_assumed(view, "dynamic_rating", "static_rating"),
        ],
        working=lambda: [
            Working("speed", "n", "speed in operation", speed, "r/min"),
            Working("temperature", "ϑ", "temperature of the bearing", temperature, "degC"),
            Working("ratio", "n/n_lim", "share of the limiting speed", ratio),
            Working("speed_factor", "n·d_m", "speed factor", factor, "mm.r/min"),
            Working("by_limit", "", "life by the limiting speed", by_limit, "h", "first maker's formula · load factor"),
            Working("by_factor", "", "life by the speed factor", by_factor, "h", "second maker's formula"),
            Working("upright", "", "factor for a vertical shaft", factors["upright"]),
            Working("turned", "", "factor for a rotating outer ring", factors["turned"]),
            Working("dirty", "", "factor for contamination", factors["dirty"]),
            Working("interval", "", "regreasing interval", interval, "h"),
            Working("life", "", "grease life, near end", life, "h", "smaller of the two · factors"),
            Working("far_life", "", "grease life, far end", far_life, "h", "larger of the two · factors"),
            Working("cooler", "", "temperature at which the near end is enough", cooler, "degC", "from the formulas"),
        ],
    )  # fmt: skip


def _cooler(view: View, limits: Limits, common: Floats, target: Floats) -> Floats:
    """Temperature [degC] at which the near end reaches the target; NaN where the formulas do not reach so far.

    The logarithm of both formulas falls in a straight line with temperature from the coolest one that they know.
    """
    low = float(limits["coolest"])
    step = float(limits["halving"])
    at_low, above = (_ends(view, limits, np.full(view.count, t)) for t in (low, low + step))
    found = np.full(view.count, np.nan)
    for cool, warm in zip(at_low, above, strict=True):
        fall = np.log(cool / warm) / step
        found = np.fmin(found, low + np.log(cool * common / target) / fall)
    return np.where((found >= low) & (target <= limits["longest"]), found, np.nan)


def _ways(cooler: Floats, wide: np.ndarray, life: Floats) -> Callable[[int], str]:
    """What would make the grease last, in words by row: nothing that is there already."""

    def make(row: int) -> str:
        ways = []
        if not np.isnan(cooler[row]):
            text = quantity_text(float(np.floor(cooler[row])), "degC")
            ways.append(f"bring operating_temperature down to {text}, where the formulas reach it")
        if not wide[row]:
            ways.append("choose a grease for high speed (lubrication)")
        if life[row] > 0.0:
            ways.append(f"renew the grease every {quantity_text(float(life[row]), 'h')} (regreasing_interval)")
        ways.append("choose a bearing with a higher limiting_speed")
        text = ", or ".join(ways)
        return text[0].upper() + text[1:]

    return make
