"""The parts of the half section: sizes from the values of the table, and each part as strokes of the drawing."""

from collections.abc import Mapping
from math import cos, radians, sin, sqrt
from typing import Any

from attrs import frozen

from linter.report.drawings.svg import circle, line, path

LEFT, RIGHT = 46.0, 262.0


def plain(values: Mapping[str, Any], name: str) -> float | None:
    """The value of one parameter, of a size its nominal; None where it is no number."""
    value = values.get(name)
    if isinstance(value, Mapping):
        value = value.get("nominal")
    return float(value) if isinstance(value, (int, float)) else None


@frozen
class Shape:
    """Sizes the drawing is made from [mm], radii not diameters, and which of them are not stated."""

    bore: float
    outside: float
    width: float
    pitch: float
    ball: float
    land_inner: float
    land_outer: float
    chamfer: float
    shaft_shoulder: float
    housing_shoulder: float
    housing: float
    hollow: float
    shaft_fillet: float
    housing_fillet: float
    gap_left: float
    gap_right: float
    spring: str
    guessed: frozenset[str]


def shape_of(values: Mapping[str, Any]) -> Shape | None:
    """The sizes to draw; None where bore and outside diameter are not stated."""
    d, outside = plain(values, "bore_diameter"), plain(values, "outside_diameter")
    if d is None or outside is None or not 0 < d < outside:
        return None
    section = outside - d
    guessed = set()

    def size(name: str, habit: float, low: float, high: float) -> float:
        """The stated size where it can be drawn, else the habit."""
        value = plain(values, name)
        if value is None or not low <= value <= high:
            guessed.add(name)
            return habit
        return value

    pitch = size("pitch_diameter", (d + outside) / 2, d, outside)
    ball = size("ball_diameter", 0.3 * section, 0.05 * section, 0.49 * section)
    width = size("ring_width", 0.5 * section, 0.05 * section, 6 * section)
    hollow = size("shaft_bore", 0.0, 0.0, 0.97 * d) if "shaft_bore" in values else 0.0
    role, ring = values.get("axial_role"), values.get("free_ring") or "outer"
    gap = 0.0
    if role == "spring-loaded":
        gap = max(0.55 * width, 0.3 * section)
    elif role == "floating":
        gap = 0.14 * width
    return Shape(
        bore=d / 2,
        outside=outside / 2,
        width=width,
        pitch=pitch / 2,
        ball=ball / 2,
        land_inner=size("inner_ring_shoulder_diameter", pitch - 0.6 * ball, d, pitch) / 2,
        land_outer=size("outer_ring_shoulder_diameter", pitch + 0.6 * ball, pitch, outside) / 2,
        chamfer=size("ring_chamfer", 0.03 * section, 0.0, min(0.45 * width, 0.2 * section)),
        shaft_shoulder=size("shaft_shoulder_diameter", d + 0.26 * section, d, 2 * outside) / 2,
        housing_shoulder=size("housing_shoulder_diameter", outside - 0.26 * section, 0.0, outside) / 2,
        housing=size("housing_outer_diameter", outside + 0.8 * section, outside, 1e9) / 2,
        hollow=hollow / 2,
        shaft_fillet=size("shaft_fillet_radius", 0.0, 0.0, 0.3 * section),
        housing_fillet=size("housing_fillet_radius", 0.0, 0.0, 0.3 * section),
        gap_left=gap if ring == "inner" else 0.0,
        gap_right=gap if ring == "outer" else 0.0,
        spring=str(ring) if role == "spring-loaded" else "",
        guessed=frozenset(guessed),
    )


class Sheet:
    """Millimetres of the seat to units of the view box."""

    def __init__(self, shape: Shape, height: float, left: float = LEFT, right: float = RIGHT) -> None:
        section = shape.outside - shape.bore
        self.low = 0.0 if shape.bore <= 1.5 * section else max(shape.bore - 0.9 * section, shape.hollow * 0.97)
        self.high = min(shape.housing, shape.outside + 0.75 * section)
        arm = max(0.75 * shape.width, 0.5 * section)
        self.x_low = -arm - shape.gap_left
        self.x_high = shape.width + shape.gap_right + arm
        self.scale = min((right - left) / (self.x_high - self.x_low), height / (self.high - self.low))
        self.top = 16.0
        self.bottom = self.top + (self.high - self.low) * self.scale
        self.middle = (left + right - self.scale * (self.x_high - self.x_low)) / 2

    def x(self, axial: float) -> float:
        """Across the sheet, from an axial place in mm."""
        return self.middle + (axial - self.x_low) * self.scale

    def y(self, radius: float) -> float:
        """Down the sheet, from a radius in mm."""
        return self.bottom - (radius - self.low) * self.scale


def inner_ring_part(s: Shape, sheet: Sheet) -> list[str]:
    """The inner ring in section."""
    x, y, c = sheet.x, sheet.y, s.chamfer
    half = sqrt(max(s.ball**2 - (s.pitch - s.land_inner) ** 2, 0.0))
    middle, radius = s.width / 2, s.ball * sheet.scale
    steps: list[str | float] = ["M", x(c), y(s.bore), "L", x(s.width - c), y(s.bore)]
    steps += ["Q", x(s.width), y(s.bore), x(s.width), y(s.bore + c), "L", x(s.width), y(s.land_inner)]
    steps += ["L", x(middle + half), y(s.land_inner), "A", radius, radius, "0 0 1", x(middle - half), y(s.land_inner)]
    steps += ["L", x(0), y(s.land_inner), "L", x(0), y(s.bore + c), "Q", x(0), y(s.bore), x(c), y(s.bore), "Z"]
    return [path(steps, "steel"), path(steps, "part", "hb")]


def outer_ring_part(s: Shape, sheet: Sheet) -> list[str]:
    """The outer ring in section."""
    x, y, c = sheet.x, sheet.y, s.chamfer
    half = sqrt(max(s.ball**2 - (s.land_outer - s.pitch) ** 2, 0.0))
    middle, radius = s.width / 2, s.ball * sheet.scale
    steps: list[str | float] = ["M", x(c), y(s.outside), "L", x(s.width - c), y(s.outside)]
    steps += ["Q", x(s.width), y(s.outside), x(s.width), y(s.outside - c), "L", x(s.width), y(s.land_outer)]
    steps += ["L", x(middle + half), y(s.land_outer), "A", radius, radius, "0 0 0", x(middle - half), y(s.land_outer)]
    steps += ["L", x(0), y(s.land_outer), "L", x(0), y(s.outside - c), "Q", x(0), y(s.outside), x(c), y(s.outside), "Z"]
    return [path(steps, "steel"), path(steps, "part", "hb")]


def _wave(x1: float, y1: float, x2: float, y2: float) -> str:
    """A break line."""
    dx, dy = (x2 - x1) / 3, (y2 - y1) / 3
    across = 2.5
    sx, sy = (0.0, across) if abs(dx) > abs(dy) else (across, 0.0)
    return path(["M", x1, y1, "C", x1 + dx + sx, y1 + dy + sy, x2 - dx - sx, y2 - dy - sy, x2, y2], "thin")


def shaft_part(s: Shape, sheet: Sheet) -> list[str]:
    """The shaft with its shoulder and fillet, broken where it goes on."""
    x, y = sheet.x, sheet.y
    left, right, face = sheet.x_low, sheet.x_high, -s.gap_left
    low, f = max(sheet.low, s.hollow), s.shaft_fillet
    shoulder = min(s.shaft_shoulder, sheet.high)
    f = min(f, max(shoulder - s.bore, 0.0))
    r = f * sheet.scale
    outline: list[str | float] = ["M", x(left), y(shoulder), "L", x(face), y(shoulder), "L", x(face), y(s.bore + f)]
    if f > 0:
        outline += ["A", r, r, "0 0 0", x(face + f), y(s.bore)]
    outline += ["L", x(right), y(s.bore)]
    guess = " guess" if "shaft_shoulder_diameter" in s.guessed else ""
    parts = [path([*outline, "L", x(right), y(low), "L", x(left), y(low), "Z"], "steel")]
    if s.hollow > 0:
        parts.append(path([*outline, "L", x(right), y(low), "L", x(left), y(low), "Z"], "bare", "hc"))
        parts.append(line(x(left), y(low), x(right), y(low), "edge"))
    if guess:
        parts.append(path(outline[: outline.index("L", 7) + 3] if f == 0 else outline[:-3], "edge guess"))
        parts.append(path(["M", x(face + f), y(s.bore), "L", x(right), y(s.bore)], "edge"))
    else:
        parts.append(path(outline, "edge"))
    parts.append(_wave(x(left), y(low), x(left), y(shoulder)))
    parts.append(_wave(x(right), y(low), x(right), y(s.bore)))
    if sheet.low > 0 and s.hollow <= sheet.low:
        parts.append(_wave(x(left), y(sheet.low), x(right), y(sheet.low)))
    if sheet.low == 0:
        parts.append(line(x(left) - 8, y(0), x(right) + 8, y(0), "centre"))
    return parts


def housing_part(s: Shape, sheet: Sheet) -> list[str]:
    """The housing with its shoulder and fillet, broken where it goes on."""
    x, y = sheet.x, sheet.y
    left, right, face = sheet.x_low, sheet.x_high, s.width + s.gap_right
    shoulder = max(s.housing_shoulder, sheet.low)
    f = min(s.housing_fillet, max(s.outside - shoulder, 0.0))
    r = f * sheet.scale
    seat: list[str | float] = ["M", x(left), y(s.outside), "L", x(face - f), y(s.outside)]
    step: list[str | float] = []
    if f > 0:
        step += ["A", r, r, "0 0 1", x(face), y(s.outside - f)]
    step += ["L", x(face), y(shoulder), "L", x(right), y(shoulder)]
    whole = [*seat, *step, "L", x(right), y(sheet.high), "L", x(left), y(sheet.high), "Z"]
    parts = [path(whole, "steel"), path(whole, "bare", "ha"), path(seat, "edge")]
    guess = " guess" if "housing_shoulder_diameter" in s.guessed else ""
    parts.append(path(["M", x(face - f), y(s.outside), *step], f"edge{guess}"))
    if s.housing <= sheet.high:
        name = "edge guess" if "housing_outer_diameter" in s.guessed else "edge"
        parts.append(line(x(left), y(sheet.high), x(right), y(sheet.high), name))
    else:
        parts.append(_wave(x(left), y(sheet.high), x(right), y(sheet.high)))
    parts.append(_wave(x(left), y(s.outside), x(left), y(sheet.high)))
    parts.append(_wave(x(right), y(shoulder), x(right), y(sheet.high)))
    return parts


def spring_part(s: Shape, sheet: Sheet) -> list[str]:
    """The spring behind the ring that it presses; nothing where there is none."""
    if not s.spring:
        return []
    if s.spring == "outer":
        start, end = s.width, s.width + s.gap_right
        low, high = max(s.land_outer, s.housing_shoulder), s.outside
    else:
        start, end = -s.gap_left, 0.0
        low, high = s.bore, min(s.land_inner, s.shaft_shoulder)
    inset = 0.15 * (high - low)
    low, high = low + inset, high - inset
    steps: list[str | float] = ["M", sheet.x(start), sheet.y(low)]
    turns = 6
    for k in range(1, turns + 1):
        steps += ["L", sheet.x(start + (end - start) * k / turns), sheet.y(high if k % 2 else low)]
    return [path(steps, "spring")]


def ball_part(s: Shape, sheet: Sheet, angle: float) -> list[str]:
    """The ball, and its contact line where the contact angle [deg] is above zero, inside the sheet."""
    x, y = sheet.x(s.width / 2), sheet.y(s.pitch)
    radius = s.ball * sheet.scale
    name = "ball guess" if "ball_diameter" in s.guessed else "ball"
    parts = [circle(x, y, radius, name), line(x - 4, y, x + 4, y, "thin"), line(x, y - 4, x, y + 4, "thin")]
    if angle > 0:
        across, up = sin(radians(angle)), cos(radians(angle))
        sideways, upwards = min(x - LEFT, RIGHT - x), min(y, sheet.bottom + 8 - y)
        room = min(upwards / up, sideways / across) if across > 1e-6 else upwards / up
        dx, dy = min(1.25 * radius, room) * across, min(1.25 * radius, room) * up
        parts.append(line(x - dx, y + dy, x + dx, y - dy, "centre"))
    return parts
