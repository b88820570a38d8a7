"""The half section of a seat, to scale from the values of the table, with the features of findings marked."""

from collections.abc import Collection, Mapping, Sequence
from math import cos, radians, sin, sqrt
from typing import Any

from attrs import frozen
from markupsafe import Markup

from linter.model.wording import number_text, quantity_text, unit_text
from linter.report.drawings.svg import circle, drawing, line, path, rect, spread, text_width, words

WIDTH = 440.0
LEFT, RIGHT = 46.0, 262.0
LABELS = 284.0
STEP = 12.5


@frozen
class Feature:
    """What a parameter is called on the drawing: the feature it belongs to, and which of its properties it states."""

    name: str
    states: str = ""


FEATURES = {
    "shaft_seat_diameter": Feature("shaft seat"),
    "shaft_seat_cylindricity": Feature("shaft seat", "cylindricity"),
    "shaft_seat_runout": Feature("shaft seat", "run-out"),
    "shaft_seat_roughness": Feature("shaft seat", "Ra"),
    "shaft_shoulder_diameter": Feature("shaft shoulder"),
    "shaft_shoulder_runout": Feature("shaft shoulder", "run-out"),
    "shaft_fillet_radius": Feature("shaft fillet"),
    "shaft_bore": Feature("shaft bore"),
    "housing_seat_diameter": Feature("housing seat"),
    "housing_seat_cylindricity": Feature("housing seat", "cylindricity"),
    "housing_seat_runout": Feature("housing seat", "run-out"),
    "housing_seat_roughness": Feature("housing seat", "Ra"),
    "housing_shoulder_diameter": Feature("housing shoulder"),
    "housing_shoulder_runout": Feature("housing shoulder", "run-out"),
    "housing_fillet_radius": Feature("housing fillet"),
    "housing_outer_diameter": Feature("housing wall"),
    "ring_chamfer": Feature("ring chamfer"),
    "ring_width": Feature("ring width"),
    "bore_diameter": Feature("bearing bore"),
    "outside_diameter": Feature("outside diameter"),
    "inner_ring_shoulder_diameter": Feature("inner ring land"),
    "outer_ring_shoulder_diameter": Feature("outer ring land"),
    "ball_diameter": Feature("ball"),
    "ball_material": Feature("ball", "material"),
    "contact_angle": Feature("contact angle"),
    "clearance_class": Feature("clearance group"),
    "radial_clearance": Feature("clearance"),
    "spring_rate": Feature("spring", "rate"),
    "spring_free_length": Feature("spring", "free"),
    "spring_installed_length": Feature("spring", "installed"),
    "spring_solid_length": Feature("spring", "solid"),
    "preload_force": Feature("preload"),
    "axial_float": Feature("axial float"),
}
_WHOLE = {feature.name: name for name, feature in FEATURES.items() if not feature.states}
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
    return {
        "shaft seat": (0.75 * w, bore),
        "housing seat": (0.75 * w, s.outside),
        "shaft shoulder": (face, (shaft + bore) / 2),
        "shaft fillet": (face + 0.3 * s.shaft_fillet, bore + 0.3 * s.shaft_fillet),
        "shaft bore": (w, max(s.hollow, sheet.low)),
        "housing shoulder": (wall, (home + s.outside) / 2),
        "housing fillet": (wall - 0.3 * s.housing_fillet, s.outside - 0.3 * s.housing_fillet),
        "housing wall": (w / 2, sheet.high),
        "ring chamfer": (w - 0.3 * s.chamfer, bore + 0.3 * s.chamfer),
        "ring width": (w, (s.outside + s.land_outer) / 2),
        "bearing bore": (0.5 * w, bore),
        "outside diameter": (0.5 * w, s.outside),
        "inner ring land": (0.9 * w, s.land_inner),
        "outer ring land": (0.9 * w, s.land_outer),
        "ball": (w / 2 + 0.5 * s.ball, s.pitch + 0.5 * s.ball),
        "contact angle": (w / 2 + 0.2 * s.ball, s.pitch - 0.4 * s.ball),
        "clearance group": (w / 2, s.pitch + s.ball),
        "clearance": (w / 2, s.pitch + s.ball),
        "axial float": (wall, s.outside - s.chamfer),
        "spring": spring,
        "preload": spring,
    }


def _strokes(s: _Shape, sheet: _Sheet, names: Collection[str]) -> list[str]:
    """The marked features themselves, drawn strong."""
    x, y = sheet.x, sheet.y
    face, wall = -s.gap_left, s.width + s.gap_right
    parts = []
    if "shaft seat" in names:
        parts.append(line(x(0), y(s.bore), x(s.width), y(s.bore), "mark"))
    if "housing seat" in names:
        parts.append(line(x(0), y(s.outside), x(s.width), y(s.outside), "mark"))
    if "shaft shoulder" in names:
        parts.append(line(x(face), y(s.bore + s.shaft_fillet), x(face), y(min(s.shaft_shoulder, sheet.high)), "mark"))
    if "housing shoulder" in names:
        low = max(s.housing_shoulder, sheet.low)
        parts.append(line(x(wall), y(s.outside - s.housing_fillet), x(wall), y(low), "mark"))
    if "shaft fillet" in names:
        parts.append(circle(x(face), y(s.bore), 8, "mark"))
    if "housing fillet" in names:
        parts.append(circle(x(wall), y(s.outside), 8, "mark"))
    if "ring chamfer" in names:
        parts.append(circle(x(s.width), y(s.bore), 7, "mark"))
    if "housing wall" in names:
        parts.append(line(x(0), y(sheet.high), x(s.width), y(sheet.high), "mark"))
    if "ball" in names:
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


def marked_features(marks: Mapping[str, Sequence[int]]) -> dict[str, tuple[int, ...]]:
    """The marked features by name, each with the numbers of all findings about it."""
    found: dict[str, set[int]] = {}
    for name, feature in FEATURES.items():
        if name in marks:
            found.setdefault(feature.name, set()).update(marks[name])
    return {feature: tuple(sorted(numbers)) for feature, numbers in found.items()}


@frozen
class _Label:
    """A balloon with its lines; the first one is strong."""

    feature: str
    numbers: tuple[int, ...]
    lines: tuple[str, ...]

    @property
    def height(self) -> float:
        return STEP * len(self.lines) + 10


def _labels(values: Mapping[str, Any], marks: Mapping[str, Sequence[int]]) -> list[_Label]:
    """One label per marked feature: its size, its name, and the properties that findings are about."""
    labels = []
    for feature, numbers in marked_features(marks).items():
        names = [name for name in FEATURES if FEATURES[name].name == feature and name in marks]
        whole = _WHOLE.get(feature)
        lines = [feature]
        if whole and (whole in values or whole in names):
            lines.insert(0, value_label(values, whole))
        lines += [
            f"{states} {value_label(values, name)}" if name in values else f"no {states} stated"
            for name in names
            if (states := FEATURES[name].states)
        ]
        labels.append(_Label(feature, numbers, tuple(lines)))
    return labels


def _drawn_labels(labels: Sequence[_Label], s: _Shape, sheet: _Sheet) -> list[str]:
    spots = _spots(s, sheet)
    shown = sorted(labels, key=lambda a: (-spots[a.feature][1], spots[a.feature][0], a.feature))
    heights = [label.height for label in shown]
    wanted = [sheet.y(spots[label.feature][1]) + label.height / 2 - 9 for label in shown]
    bottom = max(sheet.bottom + 14, 6 + sum(heights))
    parts = _strokes(s, sheet, {label.feature for label in shown})
    for label, centre in zip(shown, spread(wanted, heights, 4, bottom, 0), strict=True):
        y = centre - label.height / 2 + 9
        fx, fy = sheet.x(spots[label.feature][0]), sheet.y(spots[label.feature][1])
        parts.append(path(["M", fx, fy, "L", LABELS - 14, y, "L", LABELS - 3, y], "leader"))
        parts.append(circle(fx, fy, 2, "dot"))
        number = ", ".join(str(n) for n in label.numbers[:3]) + ("…" if len(label.numbers) > 3 else "")
        width = max(text_width(number, 10) + 8, 16)
        parts.append(rect(LABELS - 3, y - 8, width, 16, "balloon", 8))
        parts.append(words(LABELS - 3 + width / 2, y + 3.6, number, "t number", "middle"))
        parts.append(words(LABELS + width + 2, y + 3.8, label.lines[0], "t strong"))
        for k, text in enumerate(label.lines[1:], 1):
            parts.append(words(LABELS + 15, y + 7 + STEP * k, text, "t quiet"))
    return parts


def half_section(values: Mapping[str, Any], marks: Mapping[str, Sequence[int]]) -> Markup | None:
    """The half section of one station.

    Parameters
    ----------
    values : mapping
        As in :class:`linter.model.findings.StationRecord` (mm).
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
    labels = _labels(values, marks)
    parts += _drawn_labels(labels, s, sheet)
    height = max(sheet.bottom + 18, 10 + sum(label.height for label in labels))
    says = (
        f"Shaft, inner ring, ball, outer ring and housing above the axis, bore {number_text(2 * s.bore, 'mm')} mm, "
        f"outside diameter {number_text(2 * s.outside, 'mm')} mm."
    )
    if s.spring:
        says += f" The spring presses on the {s.spring} ring."
    if labels:
        says += f" Marked: {'; '.join(', '.join(reversed(label.lines)) for label in labels)}."
    return drawing("half", WIDTH, height, "Half section of the seat, to scale", says, parts)
