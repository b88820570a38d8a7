"""The half section of a seat, to scale from the values of the table, with the features of findings marked."""

from collections.abc import Mapping, Sequence
from math import cos, radians, sin, sqrt
from typing import Any

from attrs import frozen
from markupsafe import Markup

from linter.report.drawings.svg import circle, drawing, line, path, spread, text_width, words
from linter.wording import number_text, quantity_text, unit_text

WIDTH = 400.0
LEFT, RIGHT = 46.0, 262.0
LABELS = 284.0
ROW = 30.0

FEATURES = {
    "shaft_seat_diameter": "shaft seat",
    "shaft_seat_cylindricity": "cylindricity",
    "shaft_seat_runout": "run-out",
    "shaft_seat_roughness": "roughness",
    "shaft_shoulder_diameter": "shaft shoulder",
    "shaft_shoulder_runout": "shoulder run-out",
    "shaft_fillet_radius": "shaft fillet",
    "shaft_bore": "shaft bore",
    "housing_seat_diameter": "housing seat",
    "housing_seat_cylindricity": "cylindricity",
    "housing_seat_runout": "run-out",
    "housing_seat_roughness": "roughness",
    "housing_shoulder_diameter": "housing shoulder",
    "housing_shoulder_runout": "shoulder run-out",
    "housing_fillet_radius": "housing fillet",
    "housing_outer_diameter": "housing wall",
    "ring_chamfer": "ring chamfer",
    "ring_width": "ring width",
    "bore_diameter": "bore",
    "outside_diameter": "outside diameter",
    "inner_ring_shoulder_diameter": "inner ring land",
    "outer_ring_shoulder_diameter": "outer ring land",
    "ball_diameter": "ball",
    "ball_material": "ball material",
    "contact_angle": "contact angle",
    "clearance_class": "clearance group",
    "radial_clearance": "clearance",
    "spring_rate": "spring rate",
    "spring_free_length": "spring, free",
    "spring_installed_length": "spring, installed",
    "spring_solid_length": "spring, solid",
    "preload_force": "preload",
    "axial_float": "axial float",
}
_DIAMETERS = {name for name in FEATURES if name.endswith("diameter") or name == "shaft_bore"} - {"ball_diameter"}
_UNITS = {
    "shaft_seat_roughness": "um",
    "housing_seat_roughness": "um",
    "contact_angle": "deg",
    "radial_clearance": "um",
    "spring_rate": "N/mm",
    "preload_force": "N",
}


def _plain(values: Mapping[str, Any], name: str) -> float | None:
    value = values.get(name)
    if isinstance(value, Mapping):
        value = value.get("nominal")
    return float(value) if isinstance(value, (int, float)) else None


@frozen
class _Shape:
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


def _shape(values: Mapping[str, Any]) -> _Shape | None:
    d, outside = _plain(values, "bore_diameter"), _plain(values, "outside_diameter")
    if d is None or outside is None or not 0 < d < outside:
        return None
    section = outside - d
    guessed = set()

    def size(name: str, habit: float, low: float, high: float) -> float:
        """The stated size where it can be drawn, else the habit."""
        value = _plain(values, name)
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
    return _Shape(
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


def not_stated(values: Mapping[str, Any]) -> tuple[str, ...]:
    """Parameters shown by habit: the table does not state them, or states what cannot be drawn."""
    shape = _shape(values)
    if shape is None:
        return ()
    return tuple(name for name in (*FEATURES, "pitch_diameter") if name in shape.guessed)


class _Sheet:
    """Millimetres of the seat to units of the view box."""

    def __init__(self, shape: _Shape, height: float) -> None:
        section = shape.outside - shape.bore
        self.low = 0.0 if shape.bore <= 1.5 * section else max(shape.bore - 0.9 * section, shape.hollow * 0.97)
        self.high = min(shape.housing, shape.outside + 0.75 * section)
        arm = max(0.75 * shape.width, 0.5 * section)
        self.x_low = -arm - shape.gap_left
        self.x_high = shape.width + shape.gap_right + arm
        self.scale = min((RIGHT - LEFT) / (self.x_high - self.x_low), height / (self.high - self.low))
        self.top = 16.0
        self.bottom = self.top + (self.high - self.low) * self.scale
        self.middle = (LEFT + RIGHT - self.scale * (self.x_high - self.x_low)) / 2

    def x(self, axial: float) -> float:
        return self.middle + (axial - self.x_low) * self.scale

    def y(self, radius: float) -> float:
        return self.bottom - (radius - self.low) * self.scale


def _ring_inner(s: _Shape, sheet: _Sheet) -> list[str]:
    x, y, c = sheet.x, sheet.y, s.chamfer
    half = sqrt(max(s.ball**2 - (s.pitch - s.land_inner) ** 2, 0.0))
    middle, radius = s.width / 2, s.ball * sheet.scale
    steps: list[str | float] = ["M", x(c), y(s.bore), "L", x(s.width - c), y(s.bore)]
    steps += ["Q", x(s.width), y(s.bore), x(s.width), y(s.bore + c), "L", x(s.width), y(s.land_inner)]
    steps += ["L", x(middle + half), y(s.land_inner), "A", radius, radius, "0 0 1", x(middle - half), y(s.land_inner)]
    steps += ["L", x(0), y(s.land_inner), "L", x(0), y(s.bore + c), "Q", x(0), y(s.bore), x(c), y(s.bore), "Z"]
    return [path(steps, "steel"), path(steps, "part", "hb")]


def _ring_outer(s: _Shape, sheet: _Sheet) -> list[str]:
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


def _shaft(s: _Shape, sheet: _Sheet) -> list[str]:
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


def _housing(s: _Shape, sheet: _Sheet) -> list[str]:
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


def _spring(s: _Shape, sheet: _Sheet) -> list[str]:
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


def _ball(s: _Shape, sheet: _Sheet, angle: float) -> list[str]:
    x, y = sheet.x(s.width / 2), sheet.y(s.pitch)
    radius = s.ball * sheet.scale
    name = "ball guess" if "ball_diameter" in s.guessed else "ball"
    parts = [circle(x, y, radius, name), line(x - 4, y, x + 4, y, "thin"), line(x, y - 4, x, y + 4, "thin")]
    if angle > 0:
        reach = 1.25 * radius
        dx, dy = reach * sin(radians(angle)), reach * cos(radians(angle))
        parts.append(line(x - dx, y + dy, x + dx, y - dy, "centre"))
    return parts


def _spots(s: _Shape, sheet: _Sheet) -> dict[str, tuple[float, float]]:
    """Where the leader of each feature starts [mm, mm]."""
    face, wall = -s.gap_left, s.width + s.gap_right
    w, shaft, bore = s.width, min(s.shaft_shoulder, sheet.high), s.bore
    home = max(s.housing_shoulder, sheet.low)
    spring = (s.width + s.gap_right / 2, (s.land_outer + s.outside) / 2)
    if s.spring == "inner":
        spring = (-s.gap_left / 2, (s.bore + s.land_inner) / 2)
    elif not s.spring:
        spring = (s.width / 2, s.pitch)
    spots = {
        "shaft_shoulder_diameter": (face - 0.25 * w, shaft),
        "shaft_shoulder_runout": (face, (shaft + bore) / 2),
        "shaft_fillet_radius": (face + 0.3 * s.shaft_fillet, bore + 0.3 * s.shaft_fillet),
        "shaft_bore": (w, max(s.hollow, sheet.low)),
        "housing_shoulder_diameter": (wall + 0.25 * w, home),
        "housing_shoulder_runout": (wall, (home + s.outside) / 2),
        "housing_fillet_radius": (wall - 0.3 * s.housing_fillet, s.outside - 0.3 * s.housing_fillet),
        "housing_outer_diameter": (w / 2, sheet.high),
        "ring_chamfer": (w - 0.3 * s.chamfer, bore + 0.3 * s.chamfer),
        "ring_width": (w, (s.outside + s.land_outer) / 2),
        "bore_diameter": (0.5 * w, bore),
        "outside_diameter": (0.5 * w, s.outside),
        "inner_ring_shoulder_diameter": (0.9 * w, s.land_inner),
        "outer_ring_shoulder_diameter": (0.9 * w, s.land_outer),
        "ball_diameter": (w / 2 + 0.7 * s.ball, s.pitch + 0.7 * s.ball),
        "ball_material": (w / 2 + 0.3 * s.ball, s.pitch + 0.3 * s.ball),
        "contact_angle": (w / 2 + 0.2 * s.ball, s.pitch - 0.4 * s.ball),
        "clearance_class": (w / 2, s.pitch + s.ball),
        "radial_clearance": (w / 2, s.pitch + s.ball),
        "axial_float": (wall, s.outside - s.chamfer),
    }
    seats = ("diameter", "cylindricity", "runout", "roughness")
    spots |= {f"shaft_seat_{k}": ((0.85 - 0.15 * n) * w, bore) for n, k in enumerate(seats)}
    spots |= {f"housing_seat_{k}": ((0.85 - 0.15 * n) * w, s.outside) for n, k in enumerate(seats)}
    spring_names = ("spring_rate", "spring_free_length", "spring_installed_length", "spring_solid_length")
    return spots | dict.fromkeys((*spring_names, "preload_force"), spring)


def _strokes(s: _Shape, sheet: _Sheet, names: set[str]) -> list[str]:
    """The marked features themselves, drawn strong."""
    x, y = sheet.x, sheet.y
    face, wall = -s.gap_left, s.width + s.gap_right
    parts = []
    if any(n.startswith("shaft_seat") for n in names):
        parts.append(line(x(0), y(s.bore), x(s.width), y(s.bore), "mark"))
    if any(n.startswith("housing_seat") for n in names):
        parts.append(line(x(0), y(s.outside), x(s.width), y(s.outside), "mark"))
    if names & {"shaft_shoulder_diameter", "shaft_shoulder_runout"}:
        parts.append(line(x(face), y(s.bore + s.shaft_fillet), x(face), y(min(s.shaft_shoulder, sheet.high)), "mark"))
    if names & {"housing_shoulder_diameter", "housing_shoulder_runout"}:
        low = max(s.housing_shoulder, sheet.low)
        parts.append(line(x(wall), y(s.outside - s.housing_fillet), x(wall), y(low), "mark"))
    if "shaft_fillet_radius" in names:
        parts.append(circle(x(face), y(s.bore), 8, "mark"))
    if "housing_fillet_radius" in names:
        parts.append(circle(x(wall), y(s.outside), 8, "mark"))
    if "ring_chamfer" in names:
        parts.append(circle(x(s.width), y(s.bore), 7, "mark"))
    if "housing_outer_diameter" in names:
        parts.append(line(x(0), y(sheet.high), x(s.width), y(sheet.high), "mark"))
    if names & {"ball_diameter", "ball_material"}:
        parts.append(circle(x(s.width / 2), y(s.pitch), s.ball * sheet.scale, "mark"))
    return parts


def value_label(values: Mapping[str, Any], name: str) -> str:
    """A value as the drawing writes it: ⌀4 h5, 11.2 ±0.05, or "not stated"."""
    value = values.get(name)
    unit = _UNITS.get(name, "mm")
    lead = "⌀" if name in _DIAMETERS else "R" if name.endswith("fillet_radius") else ""
    if isinstance(value, Mapping):
        text = lead + number_text(value["nominal"], unit)
        lower, upper = value.get("lower"), value.get("upper")
        if value.get("class"):
            text += f" {value['class']}"
        elif lower is not None and upper is not None:
            if upper == -lower:
                text += f" ±{number_text(upper, unit)}"
            else:
                text += f" {'+' if upper > 0 else ''}{number_text(upper, unit)}/{number_text(lower, unit)}"
        return text if unit == "mm" else f"{text} {unit_text(unit)}"
    if isinstance(value, (int, float)):
        return lead + (number_text(float(value), unit) if unit == "mm" else quantity_text(float(value), unit))
    return str(value) if value else "not stated"


def _labels(values: Mapping[str, Any], marks: Mapping[str, Sequence[int]], s: _Shape, sheet: _Sheet) -> list[str]:
    spots = _spots(s, sheet)
    shown = sorted((n for n in marks if n in spots), key=lambda n: (-spots[n][1], spots[n][0], n))
    if not shown:
        return []
    wanted = [sheet.y(spots[n][1]) for n in shown]
    bottom = max(sheet.bottom + 8, 10 + ROW * len(shown))
    rows = spread(wanted, [ROW - 2] * len(shown), 6, bottom, 2)
    parts = _strokes(s, sheet, set(shown))
    for name, y in zip(shown, rows, strict=True):
        fx, fy = sheet.x(spots[name][0]), sheet.y(spots[name][1])
        parts.append(path(["M", fx, fy, "L", LABELS - 14, y, "L", LABELS - 3, y], "leader"))
        parts.append(circle(fx, fy, 2, "dot"))
        number = ", ".join(str(n) for n in marks[name][:2]) + ("…" if len(marks[name]) > 2 else "")
        width = max(text_width(number, 10) + 8, 16)
        parts.append(
            f'<rect class="balloon" x="{LABELS - 3:.0f}" y="{y - 8:.1f}" width="{width:.1f}" height="16" rx="8"/>'
        )
        parts.append(words(LABELS - 3 + width / 2, y + 3.6, number, "t number", "middle"))
        parts.append(words(LABELS + width + 2, y - 0.5, value_label(values, name), "t strong"))
        parts.append(words(LABELS + width + 2, y + 11.5, FEATURES[name], "t quiet"))
    return parts


def half_section(values: Mapping[str, Any], marks: Mapping[str, Sequence[int]]) -> Markup | None:
    """The half section of one station.

    Parameters
    ----------
    values : mapping
        As in :class:`linter.findings.StationRecord` (mm).
    marks : mapping of str to sequence of int
        Parameters to mark, with the numbers of the findings about them; unknown names are left out.

    Returns
    -------
    Markup or None
        None where bore and outside diameter are not stated. The side on which the shoulders stand is not in the table:
        the shaft's is drawn left, the housing's right.
    """
    s = _shape(values)
    if s is None:
        return None
    sheet = _Sheet(s, 236.0)
    parts = [*_shaft(s, sheet), *_housing(s, sheet), *_ring_inner(s, sheet), *_ring_outer(s, sheet)]
    parts += [*_ball(s, sheet, min(_plain(values, "contact_angle") or 0.0, 60.0)), *_spring(s, sheet)]
    for name, radius in (("bore_diameter", s.bore), ("outside_diameter", s.outside)):
        y = sheet.y(radius)
        parts.append(line(40, y, sheet.x(sheet.x_low) + 3, y, "thin"))
        parts.append(words(2, y + 3.6, f"⌀{number_text(_plain(values, name) or 0.0, 'mm')}", "t quiet"))
    parts += _labels(values, marks, s, sheet)
    named = [f"{FEATURES[n]} {value_label(values, n)}" for n in sorted(marks) if n in FEATURES]
    height = max(sheet.bottom + 18, 22 + ROW * sum(n in FEATURES for n in marks))
    says = (
        f"Shaft, inner ring, ball, outer ring and housing above the axis, bore {number_text(2 * s.bore, 'mm')} mm, "
        f"outside diameter {number_text(2 * s.outside, 'mm')} mm."
    )
    if s.spring:
        says += f" The spring presses on the {s.spring} ring."
    if named:
        says += f" Marked: {'; '.join(named)}."
    return drawing("half", WIDTH, height, "Half section of the seat, to scale", says, parts)
