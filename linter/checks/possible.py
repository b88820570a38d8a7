"""Chapter table: values that no machine has, that contradict each other, or that speak of a position not there."""

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Limits, Result, View, Working
from linter.checks.shared.quantities import is_ball
from linter.model.places import Place
from linter.model.possible import IMPOSSIBLE
from linter.model.stations import Bools, Floats, Problem
from linter.model.wording import value_text, words_of

WITNESSES = ("limiting_speed", "reference_speed", "first_critical_speed", "speed_operating")
"""What a stated speed is held against."""


@frozen(eq=False)
class Contradiction:
    """Stated values of which one must be wrong: ``gravity`` above 1 minor, above 2 major; NaN where not known."""

    gravity: Floats
    names: tuple[str, ...]
    sentence: str


def contradictions(view: View, limits: Limits) -> list[Contradiction]:
    """What cannot be true together although each value can be."""
    return [*_speeds(view, limits), *_lands(view, limits)]


def _speeds(view: View, limits: Limits) -> list[Contradiction]:
    """The highest speed against every other speed that is stated."""
    s = view.stations
    speed, far = s.number("speed_max"), float(limits["speeds_apart"])
    found, below = [], np.zeros(view.count)
    for name in WITNESSES:
        other = s.number(name)
        if name in s.assumed:
            other = np.where(s.assumed[name].rows, np.nan, other)
        below += speed * far <= other
        found.append(
            Contradiction(
                np.where(speed >= far * other, 3.0, 0.0),
                ("speed_max", name),
                f"the highest speed is {far:.0f} times the {words_of(name)} or more",
            )
        )
        # a slow machine on bearings for a fast one is rare; one slip of three decimals, or two witnesses, is not that
        gravity = np.where(speed * far * 10.0 <= other, 3.0, np.where(speed * far <= other, 1.5, 0.0))
        found.append(
            Contradiction(
                gravity, ("speed_max", name), f"the highest speed is a {far:.0f}th of the {words_of(name)} or less"
            )
        )
    several = Contradiction(
        np.where(below >= 2, 3.0, 0.0),
        ("speed_max",),
        f"the highest speed is a {far:.0f}th of two other stated speeds or less",
    )
    return [*found, several]


def _lands(view: View, limits: Limits) -> list[Contradiction]:
    """The lands beside the raceways of a ball bearing against the bottom of their grooves and the pitch circle."""
    s = view.stations
    pitch, ball = s.number("pitch_diameter"), s.number("ball_diameter")
    guessed = s.assumed["pitch_diameter"].rows if "pitch_diameter" in s.assumed else np.zeros(view.count, bool)
    slack = np.where(guessed, limits["pitch_slack"], 0.0) * pitch
    inner, outer = s.number("inner_ring_shoulder_diameter"), s.number("outer_ring_shoulder_diameter")
    balls = is_ball(view)

    deepest = limits.get("groove_depth")

    def where(rows: Bools) -> Floats:
        return np.where(rows & balls, 3.0, 0.0)

    def beyond(height: Floats) -> Floats:
        if deepest is None:
            return np.zeros(view.count)
        return where(height > (2.0 * float(deepest) * ball + slack) * (1 + 1e-9))

    return [
        Contradiction(
            where(inner < pitch - ball - slack),
            ("inner_ring_shoulder_diameter", "pitch_diameter", "ball_diameter"),
            "the land of the inner ring lies below the bottom of its groove (D_pw - D_w)",
        ),
        Contradiction(
            where(outer > pitch + ball + slack),
            ("outer_ring_shoulder_diameter", "pitch_diameter", "ball_diameter"),
            "the land of the outer ring lies beyond the bottom of its groove (D_pw + D_w)",
        ),
        Contradiction(
            beyond(inner - (pitch - ball)),
            ("inner_ring_shoulder_diameter", "pitch_diameter", "ball_diameter"),
            "the land of the inner ring lies beyond the centres of the balls, which could not be put in",
        ),
        Contradiction(
            beyond(pitch + ball - outer),
            ("outer_ring_shoulder_diameter", "pitch_diameter", "ball_diameter"),
            "the land of the outer ring lies inside the centres of the balls, which could not be put in",
        ),
    ]


PAIRED = (
    "bearing_span", "coaxiality_of_bores", "coaxiality_of_shaft_seats", "preload_force", "spring_rate",
    "spring_free_length", "spring_installed_length", "spacer_stack", "rigid_preload_class", "rigid_preload_offset",
    "axial_float",
)  # fmt: skip
"""What only a machine of two positions states."""
ROLES = ("floating", "spring-loaded", "cross-located")
"""Roles of a position that another one has to complete."""


def positions(view: View, limits: Limits) -> Result:
    """Whether a machine with one position speaks of another."""
    s = view.stations
    said = {name: view.to_machines(s.known(name), "any") for name in PAIRED}
    said["preload_method"] = view.to_machines(s.choice("preload_method").is_in("spring", "rigid"), "any")
    said["axial_role"] = view.to_machines(s.choice("axial_role").is_in(*ROLES), "any")
    alone = view.station_count == 1
    count = np.sum(list(said.values()), axis=0).astype(float) * alone

    def cells(machine: int) -> str:
        return ", ".join(name for name, rows in said.items() if rows[machine])

    def tell(machine: int) -> str:
        row = int(view.starts[machine])
        return ", ".join(f"{words_of(n)} {value_text(s, n, row)}" for n, rows in said.items() if rows[machine])

    return Result(
        measure=count,
        observed=view.station_count.astype(float),
        facts=lambda: {"told": tell, "cells": cells},
        working=lambda: [Working("count", "", "values that speak of a second position", count)],
    )


def possible(view: View, limits: Limits) -> Result:
    """Values outside the range of their parameter, as the assessment set them aside, and contradicting values."""
    s = view.stations
    set_aside: dict[int, list[Problem]] = {}
    for problem in s.problems:
        if problem.kind == IMPOSSIBLE and problem.row is not None:
            set_aside.setdefault(problem.row, []).append(problem)
    count = np.zeros(view.count)
    for row, problems in set_aside.items():
        count[row] = len(problems)
    pairs = contradictions(view, limits)
    gravity = np.max([np.nan_to_num(pair.gravity) for pair in pairs], axis=0)

    def of_row(row: int) -> list[Contradiction]:
        return [pair for pair in pairs if pair.gravity[row] > 1.0]

    def tell(row: int) -> str:
        texts = []
        for problem in set_aside.get(row, ()):
            text = problem.message
            if problem.place is not None:
                text = f"{problem.place.short()}: {text.removeprefix(str(problem.place)).lstrip(': ')}"
            texts.append(text.rstrip("."))
        for pair in of_row(row):
            values = ", ".join(f"{name} {value_text(s, name, row)}" for name in pair.names)
            texts.append(f"{pair.sentence} ({values})")
        return "; ".join(texts)

    def cells(row: int) -> str:
        names = [problem.parameter or "" for problem in set_aside.get(row, ())]
        return ", ".join(dict.fromkeys([*names, *(name for pair in of_row(row) for name in pair.names)]))

    def named(row: int) -> list[tuple[str, Place, str]]:
        found = [(p.parameter or "", p.place, p.read) for p in set_aside.get(row, ()) if p.place is not None]
        names = dict.fromkeys(name for pair in of_row(row) for name in pair.names)
        places = [(name, s.place(name, row)) for name in names]
        return found + [(name, place, value_text(s, name, row)) for name, place in places if place is not None]

    concerned = count + np.sum([pair.gravity > 1.0 for pair in pairs], axis=0)
    return Result(
        measure=np.where(count > 0, 3.0, gravity),
        observed=concerned,
        upper=np.zeros(view.count),
        variant=lambda: np.where(count > 0, "", "contradiction").astype(object),
        facts=lambda: {"told": tell, "cells": cells},
        working=lambda: [
            Working("set_aside", "", "values outside the range of their parameter", count),
            Working("contradictions", "", "values that contradict each other", concerned - count),
        ],
        cells=named,
    )
