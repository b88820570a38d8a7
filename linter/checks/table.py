"""Chapter table: whether the values can be trusted: identity, cells, classes, sizes that belong together."""

import re
from collections.abc import Mapping, Sequence

import numpy as np
from attrs import evolve

from linter.checks.shared.base import Limits, Result, View, Working, ladder, shared
from linter.checks.shared.quantities import is_ball
from linter.checks.shared.two_sides import BASIC, SIDES, two_sides
from linter.mechanics import boundary
from linter.mechanics.limits import LETTERS, deviations_or_nan
from linter.mechanics.tables import coded
from linter.model.places import Place
from linter.model.stations import Problem
from linter.model.wording import value_text, words_of

CLASSED = ("shaft_seat_diameter", "housing_seat_diameter", "shaft_shoulder_diameter", "housing_shoulder_diameter")


def identity(view: View, limits: Limits) -> Result:
    """Drawing number and revision of the machine."""
    s = view.stations
    number, revision = (~view.to_machines(s.known(name)) for name in ("drawing_number", "drawing_revision"))
    absent = number.astype(float) + revision
    variant = np.where(number & revision, "", np.where(number, "number", "revision"))
    return Result(
        measure=absent,
        observed=absent,
        upper=np.zeros(view.machine_count),
        variant=lambda: variant.astype(object),
        working=lambda: [Working("absent", "", "of drawing number and revision not stated", absent)],
    )


@shared
def problems_by_machine(view: View) -> Mapping[str, Mapping[int | None, Sequence[Problem]]]:
    """Problems of the reading by kind and machine; None holds those of the file as a whole."""
    found: dict[str, dict[int | None, list[Problem]]] = {}
    for problem in view.stations.problems:
        machine = None if problem.row is None else int(view.stations.machine_row[problem.row])
        found.setdefault(problem.kind, {}).setdefault(machine, []).append(problem)
    return found


def _told(problem: Problem) -> str:
    """One problem in words, its place without the file name."""
    text = problem.message.rstrip(". ")
    if problem.place is not None:
        text = text.removeprefix(str(problem.place)).lstrip(": ")
        text = f"{problem.place.short()}: {text}"
    return text


def _of_kind(view: View, kind: str) -> Result:
    found = problems_by_machine(view).get(kind, {})
    common = list(found.get(None, ()))
    count = np.full(view.machine_count, float(len(common)))
    for machine, problems in found.items():
        if machine is not None:
            count[machine] += len(problems)

    def tell(machine: int) -> str:
        texts = [_told(problem) for problem in (*found.get(machine, ()), *common)]
        return "; ".join(texts) if len(texts) < 2 else " ".join(f"({k}) {t}." for k, t in enumerate(texts, 1))

    def named(machine: int) -> list[tuple[str, Place, str]]:
        return [
            (p.parameter or "cell", p.place, p.read)
            for p in (*found.get(machine, ()), *common) if p.place is not None
        ]  # fmt: skip

    def cells(machine: int) -> str:
        places = [p.place.short() for p in (*found.get(machine, ()), *common) if p.place is not None]
        return ", ".join(dict.fromkeys(places)) or "the cells named"

    return Result(
        measure=count,
        observed=count,
        upper=np.zeros(view.machine_count),
        variant=lambda: np.where(count == 1, "", "many").astype(object),
        facts=lambda: {"told": tell, "cells": cells},
        working=lambda: [Working("count", "", "cells concerned", count)],
        cells=named,
    )


def agreement(view: View, limits: Limits) -> Result:
    """Parameters that are stated twice with different values."""
    return _of_kind(view, "disagreement")


def read(view: View, limits: Limits) -> Result:
    """Cells that were not understood; a class in letters of the wrong case is asked back."""
    result = _of_kind(view, "unreadable")
    found = problems_by_machine(view).get("unreadable", {})

    def hint(machine: int) -> str:
        asked = [_other_case(view, problem) for problem in (*found.get(machine, ()), *found.get(None, ()))]
        return "".join(dict.fromkeys(f" ({text})" for text in asked if text))

    return evolve(result, facts={**result.facts, "hint": hint})


def _other_case(view: View, problem: Problem) -> str:
    """A class that does not exist asked back with its letter for a shaft or a hole; empty where that is none either."""
    name, match = problem.parameter or "", re.search(r"\b[A-Za-z]{1,2}\d{1,2}\b", problem.read)
    if problem.code != "unknown-class" or problem.row is None or problem.place is None or match is None:
        return ""
    word = match[0].lower() if name.startswith("shaft") else match[0].upper()
    nominal = view.stations.size(name).nominal[problem.row]
    if word == match[0] or np.isnan(deviations_or_nan(word, np.array([nominal]))[0][0]):
        return ""
    return f"{problem.place.short()}: did you mean {word}? Small letters are for shafts, capital ones for holes"


def unused(view: View, limits: Limits) -> Result:
    """Columns, rows and keys that look like data of a seat and are not used."""
    return _of_kind(view, "unused")


def interpretation(view: View, limits: Limits) -> Result:
    """Cells that were used with an interpretation."""
    return _of_kind(view, "assumption")


def class_agrees(view: View, limits: Limits) -> Result:
    """Stated deviations against those of the stated ISO 286 class, and the case of its letter."""
    s = view.stations
    gaps, wrong, texts = [], [], []
    for name in CLASSED:
        size = s.size(name)
        words = coded(size.tolerance_class)
        stated = size.tolerance_class != ""
        lower, upper = deviations_or_nan(words, size.nominal)
        gap = np.fmax(np.abs(size.lower * 1000.0 - lower), np.abs(size.upper * 1000.0 - upper))
        gaps.append(np.where(stated, gap, np.nan))
        letters = LETTERS["shaft" if name.startswith("shaft") else "hole"]
        bad = np.array([word != "" and word.rstrip("0123456789") not in letters for word in words.known])
        wrong.append(bad[words.code])
        texts.append((lower, upper))
    gap_table, wrong_table = np.array(gaps), np.array(wrong)
    miscased = wrong_table.any(axis=0)
    compared = ~np.isnan(gap_table)
    worst = np.where(miscased, np.argmax(wrong_table, axis=0), np.argmax(np.nan_to_num(gap_table, nan=-1.0), axis=0))
    rows = np.arange(view.count)
    observed = gap_table[worst, rows]
    measure = ladder(observed, np.full(view.count, float(limits["rounding"])))
    measure = np.where(miscased, np.fmax(np.nan_to_num(measure), 2.0), measure)
    stated_any = np.logical_or.reduce([s.size(name).tolerance_class != "" for name in CLASSED])
    class_lower, class_upper = (np.array([pair[k] for pair in texts])[worst, rows] for k in (0, 1))
    names = np.array(CLASSED, dtype=object)

    def shown(row: int) -> str:
        return value_text(s, CLASSED[int(worst[row])], row)

    def meant(row: int) -> str:
        return str(s.size(CLASSED[int(worst[row])]).tolerance_class[row]).swapcase()

    return Result(
        measure=measure,
        unit="um",
        observed=np.where(miscased, np.nan, observed),
        upper=np.where(miscased, np.nan, float(limits["rounding"])),
        applies=stated_any & (compared.any(axis=0) | miscased),
        reason="no size is stated with a tolerance class",
        variant=lambda: np.where(miscased, "case", "").astype(object),
        facts=lambda: {
            "name": names[worst],
            "name_words": np.array([words_of(name) for name in CLASSED], dtype=object)[worst],
            "stated": shown,
            "meant": meant,
        },
        working=lambda: [
            Working("class_lower", "", "lower deviation of the class", class_lower, "um", "ISO 286-1"),
            Working("class_upper", "", "upper deviation of the class", class_upper, "um", "ISO 286-1"),
            Working("gap", "", "largest difference", observed, "um", "stated - class"),
        ],
    )  # fmt: skip


def nominals_agree(view: View, limits: Limits) -> Result:
    """Nominals of the seats against bore and outside diameter of the bearing."""
    s = view.stations
    seat = {side: s.size(f"{side}_seat_diameter").nominal for side in SIDES}
    ring = {side: s.number(BASIC[side]) for side in SIDES}
    apart = {side: 1000.0 * np.abs(seat[side] - ring[side]) for side in SIDES}
    shift = {side: 1000.0 * limits["shift_share"] * ring[side] for side in SIDES}
    exact = np.full(view.count, float(limits["exact"]))
    sides = two_sides(
        measure={side: ladder(apart[side], exact, np.fmax(shift[side], exact)) for side in SIDES},
        observed=apart,
        upper=dict.fromkeys(SIDES, exact),
        wanted=dict.fromkeys(SIDES, np.ones(view.count, dtype=bool)),
        needed={
            side: {f"{side}_seat_diameter": ~np.isnan(seat[side]), BASIC[side]: ~np.isnan(ring[side])} for side in SIDES
        },
    )
    small = (sides.measure > 1.0) & (sides.measure <= 2.0)
    return Result(
        measure=sides.measure,
        unit="um",
        observed=sides.observed,
        upper=sides.upper,
        missing=sides.missing,
        withheld=sides.withheld,
        variant=lambda: np.where(small, sides.variant() + "_shifted", sides.variant()),
        working=lambda: [
            Working("bore", "d", "bore of the bearing", ring["shaft"], "mm"),
            Working("shaft_nominal", "", "nominal of the shaft seat", seat["shaft"], "mm"),
            Working("outside", "D", "outside diameter of the bearing", ring["housing"], "mm"),
            Working("housing_nominal", "", "nominal of the housing seat", seat["housing"], "mm"),
        ],
    )  # fmt: skip


def boundary_dimensions(view: View, limits: Limits) -> Result:
    """Bore, outside diameter and width against the sizes of ISO 15, and the chamfer against that of the size."""
    s = view.stations
    bore, outside, width = (s.number(name) for name in ("bore_diameter", "outside_diameter", "ring_width"))
    found = boundary.boundary_match(bore, outside, width)
    series = boundary.dimension_series(bore, outside, width)
    chamfer, standard = s.number("ring_chamfer"), boundary.boundary_chamfer(bore, outside, width)
    if limits.has_table("further"):
        held = limits.table("further")
        keys = boundary.size_key(held["bore"], held["outside"], held["width"])
        same = boundary.size_key(bore, outside, width)[:, np.newaxis] == keys
        more = same.any(axis=1) & ~found
        at = same.argmax(axis=1)
        names = np.array([str(text).removeprefix("series ") for text in held["series"]], dtype=object)
        series = np.where(more, names[at], series.astype(object))
        standard = np.where(more, held["chamfer"][at], standard)
        found |= more
    larger = found & (chamfer > standard * (1 + 1e-9))
    other = s.choice("bearing_type").known & ~is_ball(view)
    beyond = bore > limits["largest_bore"]
    return Result(
        measure=np.where(larger, 2.5, np.where(found, 0.0, 1.5)),
        unit="mm",
        observed=np.where(larger, chamfer, np.nan),
        upper=np.where(larger, standard, np.nan),
        applies=~other & ~beyond,
        reason=lambda: np.where(
            other, "the sizes held are those of radial ball bearings", "the sizes held end below this bore"
        ).astype(object),
        variant=lambda: np.where(larger, "chamfer", "").astype(object),
        facts=lambda: {"series": series.astype(object)},
        working=lambda: [
            Working("bore", "d", "bore", bore, "mm"),
            Working("outside", "D", "outside diameter", outside, "mm"),
            Working("width", "B", "width", width, "mm"),
            Working("series", "", "dimension series", series.astype(object), ""),
            Working("standard", "r_s min", "smallest chamfer of the size", standard, "mm", "ISO 15, ISO 582"),
        ],
    )  # fmt: skip
