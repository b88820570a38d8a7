"""Chapter table: whether the bearing can exist as stated, and whether values lie where such values lie."""

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Limits, Result, View, Working
from linter.checks.shared.quantities import (
    ball_count,
    ball_diameter,
    contact_angle,
    is_ball,
    mean_diameter,
    pitch_diameter,
    speed_factor,
)
from linter.checks.shared.two_sides import SIDES
from linter.mechanics import rating_life, static_rating
from linter.model.stations import Bools, Floats
from linter.model.vocabulary import parameter
from linter.model.wording import quantity_text, value_text

ABOVE_ZERO = (
    "speed_max", "bore_diameter", "outside_diameter", "ring_width", "ball_diameter", "dynamic_rating", "static_rating",
)  # fmt: skip
NOT_NEGATIVE = (
    *(f"{side}_{part}" for side in SIDES for part in ("seat_cylindricity", "seat_runout", "seat_roughness")),
    *(f"{side}_{part}" for side in SIDES for part in ("shoulder_runout", "fillet_radius")),
    "ring_chamfer", "radial_load", "rotor_mass", "residual_unbalance", "shaft_bore",
)  # fmt: skip
ORDERED = (
    ("bore_diameter", "outside_diameter"),
    ("bore_diameter", "inner_ring_shoulder_diameter"),
    ("inner_ring_shoulder_diameter", "outer_ring_shoulder_diameter"),
    ("outer_ring_shoulder_diameter", "outside_diameter"),
    ("shaft_bore", "bore_diameter"),
    ("outside_diameter", "housing_outer_diameter"),
    ("base_oil_viscosity_100", "base_oil_viscosity_40"),
    ("fatigue_load_limit", "static_rating"),
    ("spring_solid_length", "spring_free_length"),
)
"""Pairs of which the first must lie below the second."""
NOT_ABOVE = (
    ("temperature_min", "temperature_max"),
    ("speed_operating", "speed_max"),
    ("spring_installed_length", "spring_free_length"),
)
"""Pairs of which the first must not lie above the second."""


@frozen(eq=False)
class Doubt:
    """Something that cannot be, or hardly can.

    Attributes
    ----------
    rows : bool array
        Where it is so.
    names : tuple of str
        The parameters concerned.
    sentence : str
        What is the matter, without the values.
    """

    rows: Bools
    names: tuple[str, ...]
    sentence: str


def _value(view: View, name: str) -> Floats:
    s = view.stations
    return s.number(name) if parameter(name).kind == "number" else s.size(name).nominal


def impossible(view: View) -> list[Doubt]:
    """Relations that no bearing and no machine can break."""
    s = view.stations
    bore, outside = s.number("bore_diameter"), s.number("outside_diameter")
    ball, pitch, count = s.number("ball_diameter"), s.number("pitch_diameter"), s.number("ball_count")
    section, chamfer = 0.5 * (outside - bore), s.number("ring_chamfer")
    room = np.pi / np.arcsin(np.clip(ball / pitch, 0.0, 1.0))
    found = [
        Doubt(ball >= section, ("ball_diameter",), "the balls are larger than the section of the bearing"),
        Doubt(
            (pitch - ball <= bore) | (pitch + ball >= outside), ("ball_diameter", "pitch_diameter"),
            "the balls on their pitch circle cut through a ring",
        ),
        Doubt(
            count > room * (1 + 1e-9), ("ball_count", "ball_diameter", "pitch_diameter"),
            "so many balls do not fit on the pitch circle",
        ),
        Doubt((count != np.round(count)) & ~np.isnan(count), ("ball_count",), "the number of balls is not whole"),
        Doubt(count < 2, ("ball_count",), "one ball makes no bearing"),
        Doubt(
            chamfer >= 0.5 * s.number("ring_width"), ("ring_chamfer", "ring_width"),
            "two chamfers take the whole width of the ring",
        ),
        Doubt(chamfer >= 0.5 * section, ("ring_chamfer",), "the chamfer takes the whole section of the ring"),
    ]  # fmt: skip
    for race in ("inner", "outer"):
        name = f"{race}_groove_ratio"
        found.append(Doubt(s.number(name) <= 0.5, (name,), "the groove is tighter than the ball (0.5)"))
    for low, high in ORDERED:
        found.append(Doubt(_value(view, low) >= _value(view, high), (low, high), f"{low} must lie below {high}"))
    for low, high in NOT_ABOVE:
        rows = _value(view, low) > _value(view, high) * (1 + 1e-9 * np.sign(_value(view, high)))
        found.append(Doubt(rows, (low, high), f"{low} must not lie above {high}"))
    for name, column in s.toleranced.items():
        found.append(Doubt(column.lower > column.upper, (name,), "the lower deviation lies above the upper one"))
    found += [Doubt(s.number(name) <= 0, (name,), f"{name} must lie above zero") for name in ABOVE_ZERO]
    found += [Doubt(s.number(name) < 0, (name,), f"{name} must not lie below zero") for name in NOT_NEGATIVE]
    return found


def doubtful(view: View, limits: Limits) -> list[Doubt]:
    """Values outside what occurs: mostly a unit or a decimal point that slipped."""
    s = view.stations
    found = []
    table = limits.table("ranges")
    for index, name in enumerate(table["parameter"]):
        if name not in s.toleranced and name not in s.numbers:
            continue
        low, high, unit = table["low"][index], table["high"][index], str(table["unit"][index])
        value = _value(view, name)
        rows = (value < low) | (value > high)
        if name in s.assumed:
            rows &= ~s.assumed[name].rows
        span = f"{quantity_text(low, unit)} to {quantity_text(high, unit)}"
        found.append(Doubt(rows, (name,), f"{name} lies outside {span}"))
    pitch, mean = s.number("pitch_diameter"), mean_diameter(view)
    far = np.abs(pitch - mean) > limits["pitch_share"] * mean
    found.append(Doubt(far, ("pitch_diameter",), "the pitch circle lies far from the middle of the section"))
    fast = speed_factor(view) > limits["speed_factor_most"]
    found.append(Doubt(fast, ("speed_max",), "no rolling bearing has run at such a speed factor"))
    geometry = (ball_count(view), ball_diameter(view), pitch_diameter(view), contact_angle(view))
    for name, computed in (
        ("dynamic_rating", rating_life.dynamic_rating(*geometry)),
        ("static_rating", static_rating.static_rating(*geometry)),
    ):
        ratio = np.where(is_ball(view), s.number(name) / computed, np.nan)
        rows = (ratio > limits["rating_ratio"]) | (ratio < 1.0 / limits["rating_ratio"])
        found.append(Doubt(rows, (name, "ball_count", "ball_diameter"), f"{name} does not go with the balls"))
    operating = s.number("operating_temperature")
    for name, rows in (
        ("temperature_max", operating > s.number("temperature_max")),
        ("temperature_min", operating < s.number("temperature_min")),
    ):
        found.append(Doubt(rows, ("operating_temperature", name), f"operating_temperature lies beyond {name}"))
    return found


def plausible(view: View, limits: Limits) -> Result:
    """Whether the bearing can exist, and whether the values lie where such values lie."""
    s = view.stations
    never, hardly = impossible(view), doubtful(view, limits)
    hard = np.sum([doubt.rows for doubt in never], axis=0).astype(float)
    soft = np.sum([doubt.rows for doubt in hardly], axis=0).astype(float)

    def of_row(row: int) -> list[Doubt]:
        return [doubt for doubt in (never if hard[row] else hardly) if doubt.rows[row]]

    def tell(row: int) -> str:
        texts = []
        for doubt in of_row(row):
            values = ", ".join(f"{name} {value_text(s, name, row)}" for name in doubt.names)
            texts.append(f"{doubt.sentence} ({values})")
        return "; ".join(texts)

    def cells(row: int) -> str:
        return ", ".join(dict.fromkeys(name for doubt in of_row(row) for name in doubt.names))

    return Result(
        measure=np.where(hard > 0, 2.0 + hard, np.where(soft > 0, 2.0 - 1.0 / (1.0 + soft), 0.0)),
        observed=hard + soft,
        upper=np.zeros(view.count),
        variant=lambda: np.where(hard > 0, "", "doubtful").astype(object),
        facts=lambda: {"told": tell, "cells": cells},
        working=lambda: [
            Working("impossible", "", "values that exclude each other", hard),
            Working("doubtful", "", "values outside what occurs", soft),
        ],
    )
