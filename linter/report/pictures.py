"""Which drawing goes with which assessment, and which features of a seat a finding is about."""

import math
import re
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import numpy as np
from markupsafe import Markup

from linter.model.findings import Assessment
from linter.report.drawings.bars import SpeedLimit, limit_bar, speed_scale
from linter.report.drawings.curves import Point, fit_over_speed, preload_over_temperature, speed_map
from linter.report.drawings.fits import clearance_walk, fit_diagram
from linter.report.drawings.half_section import FEATURES
from linter.report.drawings.machine_sheet import Position, machine_sheet
from linter.report.drawings.seat_parts import plain
from linter.report.drawings.stack import spring_stack
from linter.report.drawings.window import Criterion, preload_window
from linter.rulebook.model import Clause, Rulebook


def counts_faults(item: Assessment) -> bool:
    """Whether what was observed is only how many faults there are: the message says which."""
    return item.observed is not None and item.observed.unit == "1" and item.upper is not None and item.upper.value == 0


def picture(item: Assessment, rulebook: Rulebook) -> Markup | None:
    """The drawing that the clause asks for; the plain bar where its figures are not in the working."""
    clause = rulebook.clauses.get(item.clause)
    drawn = None
    if clause is not None and clause.picture in _DRAWN:
        figures = {w.key: w.value for w in item.working}
        drawn = _DRAWN[clause.picture](figures, item, clause)
    return drawn or (None if counts_faults(item) else limit_bar(item.observed, item.lower, item.upper))


Figures = Mapping[str, Any]


def _numbers(figures: Figures, *keys: str) -> list[float] | None:
    """The figures of these keys; None where one is missing or not a number."""
    values = [figures.get(key) for key in keys]
    return [float(v) for v in values] if all(isinstance(v, (int, float)) for v in values) else None  # type: ignore[arg-type]


def _fit(figures: Figures, item: Assessment, clause: Clause) -> Markup | None:
    zones = _numbers(figures, "seat_lower", "seat_upper", "ring_lower", "ring_upper")
    fit = _numbers(figures, "fit_smallest", "fit_mean", "fit_largest")
    if zones is None or fit is None:
        return None
    use = _numbers(figures, "fit_in_use_smallest", "fit_in_use_largest")
    names = _fit_names(item)
    return fit_diagram(
        (zones[0], zones[1]),
        (zones[2], zones[3]),
        (fit[0], fit[1], fit[2]),
        (use[0], use[1]) if use else None,
        seat_name=names[0],
        ring_name=names[1],
    )


def _fit_names(item: Assessment) -> tuple[str, str]:
    """What to call seat and ring: as the working names them, else by the cells used."""
    meanings = {w.key: w.meaning for w in item.working}
    seat = meanings["seat_lower"].removeprefix("lower deviation of ").removeprefix("the ")
    ring = meanings["ring_lower"].removeprefix("lower deviation of ").removeprefix("the ").removeprefix("its ")
    used = {u.parameter for u in item.places}
    sides = [side for side in ("shaft", "housing") if f"{side}_seat_diameter" in used]
    if seat == "seat" and len(sides) == 1:
        seat = f"{sides[0]} seat"
    if ring == "ring" and ("shaft" in seat) != ("housing" in seat):
        ring = "bore of the inner ring" if "shaft" in seat else "outer ring"
    return seat, ring


def _window(figures: Figures, item: Assessment, clause: Clause) -> Markup | None:
    force = _numbers(figures, "force_smallest", "force_nominal", "force_largest")
    if force is None:
        return None
    found: dict[str, list[Criterion]] = {"min_": [], "max_": []}
    for line in item.working:
        if line.key[:4] in found and line.unit == "N" and isinstance(line.value, (int, float)):
            found[line.key[:4]].append(Criterion(line.meaning, float(line.value)))
    if not found["min_"] and not found["max_"]:
        return None
    return preload_window(found["min_"], found["max_"], (force[0], force[1], force[2]))


def _speed(figures: Figures, item: Assessment, clause: Clause) -> Markup | None:
    values = _numbers(figures, "speed_factor", "limit_low", "limit_high")
    if values is None or min(values) <= 0:
        return None
    remark = _numbers(figures, "remark_from")
    words = {u.parameter: u.text for u in item.places}
    lubrication = str(figures.get("lubrication") or words.get("lubrication", ""))
    kind = str(figures.get("family") or words.get("bearing_type", ""))
    published = _published(clause, kind, _leading_number(words.get("bore_diameter", "")))
    return speed_scale(values[0], values[1], values[2], remark[0] if remark else None, lubrication, published)


def _leading_number(text: str) -> float:
    """The number that a value begins with; NaN without one."""
    found = re.match(r"[\d\u00a0]+(?:\.\d+)?", text)
    return float(found[0].replace("\u00a0", "")) if found else math.nan


def _published(clause: Clause, kind: str, bore: float) -> Sequence[SpeedLimit]:
    """Speed factors that a clause has for a kind of bearing by lubrication; in proportion between bores."""
    table = clause.tables.get("limits")
    if table is None or not {"lubrication", "low", "high"} <= set(table.columns):
        return []
    rows = [dict(zip(table.columns, row, strict=True)) for row in table.rows]
    family = "roller" if "roller" in kind else "ball"
    if "family" not in table.columns:
        mine = [
            r
            for r in rows
            if (kind or "deep groove ball") in r["bearing_type"].split("; ") and not r["tolerance_class"]
        ]
        found = []
        for lubrication in dict.fromkeys(row["lubrication"] for row in mine):
            group = sorted(
                (float(r["bore"] or 0), float(r["low"]), float(r["high"]))
                for r in mine
                if r["lubrication"] == lubrication
            )
            bores, lows, highs = zip(*group, strict=True)
            at = bores[0] if math.isnan(bore) else bore
            low, high = (float(np.interp(at, bores, ends)) for ends in (lows, highs))
            found.append(SpeedLimit(lubrication, None, low, high))
        return found
    return [
        SpeedLimit(
            row["lubrication"],
            float(row["remark_from"]) if row["remark_from"] else None,
            float(row["low"]),
            float(row["high"]),
        )
        for row in rows
        if row["family"] == family
    ]


def _walk(figures: Figures, item: Assessment, clause: Clause) -> Markup | None:
    ends = _numbers(
        figures,
        "clearance_delivered_min",
        "clearance_delivered_max",
        "loss_inner_min",
        "loss_inner_max",
        "loss_outer_min",
        "loss_outer_max",
        "clearance_running_min",
        "clearance_running_max",
    )
    temperature = _numbers(figures, "loss_temperature")
    if ends is None:
        return None
    pairs = [(ends[k], ends[k + 1]) for k in range(0, 8, 2)]
    return clearance_walk(pairs[0], pairs[1], pairs[2], temperature[0] if temperature else 0.0, pairs[3])


def _temperature(figures: Figures, item: Assessment, clause: Clause) -> Markup | None:
    """Preload at assembly and in each state; of a rigid pair only in the state that decides."""
    start, rate = _numbers(figures, "force_nominal"), _numbers(figures, "rate")
    if start is None:
        return None
    forces = {"assembled": start[0]}
    if rate is not None:
        names = sorted((key for key in figures if key.startswith("growth_")), key=lambda key: key != "growth_cold")
        for key in names:
            growth = _numbers(figures, key)
            if growth is not None:
                forces[key.removeprefix("growth_")] = start[0] - rate[0] * growth[0]
    else:
        after = _numbers(figures, "after")
        if after is None:
            return None
        forces[str(figures.get("state", "then"))] = after[0]
    share = item.upper.value / 100.0 if item.upper is not None and item.upper.unit == "%" else None
    window = (None, None) if share is None else (max(start[0] * (1 - share), 0.0), start[0] * (1 + share))
    return preload_over_temperature(forces, window)


def _fit_speed(figures: Figures, item: Assessment, clause: Clause) -> Markup | None:
    fit = _numbers(figures, "fit_smallest", "fit_largest", "fit_in_use_smallest", "fit_in_use_largest", "speed_loss")
    speed = _leading_number({u.parameter: u.text for u in item.places}.get("speed_max", ""))
    if fit is None or math.isnan(speed):
        return None
    slow = [v for key in ("load_loss", "heat_loss") for v in _numbers(figures, key) or ()]
    return fit_over_speed((fit[0], fit[1]), (fit[2], fit[3]), fit[4], speed, sum(slow))


def machine_pictures(positions: Sequence[Position], whole: Sequence[int], rulebook: Rulebook) -> dict[str, Markup]:
    """The pictures of a machine by name: its sheet, its place among published speed factors, the chain of its spring.

    Parameters
    ----------
    positions : sequence of Position
        As :func:`linter.report.drawings.machine_sheet.machine_sheet` takes them.
    whole : sequence of int
        Numbers of the findings about the machine as a whole.
    rulebook : Rulebook
        Whose published speed factors are shown.

    Returns
    -------
    dict of str to Markup
        Those whose values are stated.
    """
    if not positions:
        return {}
    values = positions[0].values
    found: dict[str, Markup | None] = {"sheet": machine_sheet(positions, whole)}
    points = []
    for position in positions:
        d, outside, n = (plain(position.values, name) for name in ("bore_diameter", "outside_diameter", "speed_max"))
        if d and outside and n and min(d, outside, n) > 0.0:  # a table may state what no machine has
            points.append(Point(position.name, 0.5 * (d + outside), n))
    kind, bore = str(values.get("bearing_type", "")), plain(values, "bore_diameter") or math.nan
    scales = (_published(c, kind, bore) for c in rulebook.clauses.values() if c.picture == "speed-scale")
    found["map"] = speed_map(points, next(filter(None, scales), ()))
    found["stack"] = spring_stack(str(values.get("spacer_stack", "")))
    return {name: drawn for name, drawn in found.items() if drawn is not None}


_DRAWN = {
    "preload-temperature": _temperature,
    "fit-over-speed": _fit_speed,
    "fit-diagram": _fit,
    "preload-window": _window,
    "speed-scale": _speed,
    "clearance-walk": _walk,
}

_ABOUT = {
    "fit": ("seat_diameter",),
    "alignment": ("cylindricity", "runout", "roughness"),
    "shoulder": ("shoulder_diameter", "fillet"),
    "preload": ("spring", "preload_force"),
}


def marked(findings: Iterable[tuple[int, Assessment]]) -> dict[str, tuple[int, ...]]:
    """The features that findings are about, with the numbers of their entries.

    Those that the message or the remedy names, that clear the finding or that are missing; where there are none, those
    that the finding rests on and that its clause is about.
    """
    found: dict[str, list[int]] = {}
    for number, item in findings:
        chapter, _, topic = item.clause.partition(".")
        texts = f"{item.message} {item.remedy}"
        names = [c.parameter for c in item.clears_with] + list(item.missing)
        names += [n for n in FEATURES if re.search(rf"\b{n}\b", texts)]
        if not any(name in FEATURES for name in names):
            kinds = _ABOUT.get(chapter, ())
            other = {"shaft": "housing_", "housing": "shaft_"}.get(topic.split("-")[0], "-")
            names += [
                u.parameter
                for u in item.places
                if any(kind in u.parameter for kind in kinds) and not u.parameter.startswith(other)
            ]
        for name in dict.fromkeys(names):
            if name in FEATURES:
                found.setdefault(name, []).append(number)
    return {name: tuple(dict.fromkeys(numbers)) for name, numbers in found.items()}
