"""The half section of a seat, to scale from the values of the table, with the features of findings marked."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from typing import Any

from attrs import frozen
from markupsafe import Markup

from linter.model.wording import number_text, quantity_text, unit_text
from linter.report.drawings.seat_parts import (
    Shape,
    Sheet,
    ball_part,
    housing_part,
    inner_ring_part,
    outer_ring_part,
    plain,
    shaft_part,
    shape_of,
    spring_part,
)
from linter.report.drawings.svg import circle, drawing, line, path, rect, spread, text_width, words
from linter.report.language import choice_of, say, told

WIDTH = 440.0
LABELS = 284.0
LEADERS_END = LABELS - 14
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
#: Features that are not missing where another parameter is stated that gives them.
_ELSEWHERE = {"preload": "spring_rate", "clearance": "clearance_class"}
_DIAMETERS = {name for name in FEATURES if name.endswith("diameter") or name == "shaft_bore"} - {"ball_diameter"}
_UNITS = {
    "shaft_seat_roughness": "um",
    "housing_seat_roughness": "um",
    "contact_angle": "deg",
    "radial_clearance": "um",
    "spring_rate": "N/mm",
    "preload_force": "N",
}


def not_stated(values: Mapping[str, Any]) -> tuple[str, ...]:
    """Parameters shown by habit: the table does not state them, or states what cannot be drawn."""
    shape = shape_of(values)
    if shape is None:
        return ()
    return tuple(name for name in (*FEATURES, "pitch_diameter") if name in shape.guessed)


def spots(s: Shape, sheet: Sheet) -> dict[str, tuple[float, float]]:
    """Where the leader of each feature starts: axial place and radius [mm]."""
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


def _strokes(s: Shape, sheet: Sheet, names: Collection[str]) -> list[str]:
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
    return choice_of(str(value)) if value else say("not stated")


def _state(feature: Feature) -> str:
    """What a parameter states of its feature; a word may have a meaning of its own there, as the solid spring."""
    whole = f"{feature.name} {feature.states}"
    known = choice_of(whole)
    return told(feature.states) if known == whole else known


def marked_features(marks: Mapping[str, Sequence[int]]) -> dict[str, tuple[int, ...]]:
    """The marked features by name, each with the numbers of all findings about it."""
    found: dict[str, set[int]] = {}
    for name, feature in FEATURES.items():
        if name in marks:
            found.setdefault(feature.name, set()).update(marks[name])
    return {feature: tuple(sorted(numbers)) for feature, numbers in found.items()}


@frozen
class _Label:
    """A balloon with its lines; the first one is strong, and one of them is ``name``, what the feature is called."""

    feature: str
    name: str
    numbers: tuple[int, ...]
    lines: tuple[str, ...]

    @property
    def height(self) -> float:
        return STEP * len(self.lines) + 10


def _labels(values: Mapping[str, Any], marks: Mapping[str, Sequence[int]]) -> list[_Label]:
    """One label per marked feature: its size, its name, and the properties that findings are about."""
    labels = []
    for feature, numbers in marked_features(marks).items():
        if _ELSEWHERE.get(feature, "") in values and _WHOLE[feature] not in values:
            continue
        names = [name for name in FEATURES if FEATURES[name].name == feature and name in marks]
        whole = _WHOLE.get(feature)
        lines = [told(feature)]
        if whole and (whole in values or whole in names):
            lines.insert(0, value_label(values, whole))
        lines += [
            f"{states} {value_label(values, name)}" if name in values else say("no {what} stated", what=states)
            for name in names
            if (states := _state(FEATURES[name]))
        ]
        labels.append(_Label(feature, told(feature), numbers, tuple(lines)))
    return labels


def listed_features(values: Mapping[str, Any], marks: Mapping[str, Sequence[int]]) -> list[tuple[str, tuple[int, ...]]]:
    """What the balloons of :func:`half_section` say, one line a feature, with the numbers of its findings."""
    found = []
    for label in _labels(values, marks):
        rest = [text for text in label.lines if text != label.name]
        found.append((f"{label.name}: {', '.join(rest)}" if rest else label.name, label.numbers))
    return found


def _without_crossings(
    labels: Sequence[_Label], starts: Mapping[str, tuple[float, float]], bottom: float
) -> list[tuple[_Label, float]]:
    """The labels from the top down, each with the height of its balloon, in an order in which no two leaders cross.

    From the order of the features downwards two neighbours change places as long as their leaders cross.
    """
    shown = sorted(labels, key=lambda a: (starts[a.feature][1], starts[a.feature][0], a.feature))
    placed: list[tuple[_Label, float]] = []
    for _ in range(len(shown) ** 2 + 1):
        heights = [label.height for label in shown]
        wanted = [starts[label.feature][1] + label.height / 2 - 9 for label in shown]
        centres = spread(wanted, heights, 4, bottom, 0)
        placed = [(a, centre - a.height / 2 + 9) for a, centre in zip(shown, centres, strict=True)]
        crossing = next((pair for pair in _pairs(placed) if _cross(*pair, starts)), None)
        if crossing is None:
            break
        one, other = (shown.index(label) for label, _ in crossing)
        shown[one], shown[other] = shown[other], shown[one]
    return placed


def _pairs(placed: Sequence[tuple[_Label, float]]) -> Iterator[tuple[tuple[_Label, float], tuple[_Label, float]]]:
    """Two of them at a time, neighbours first."""
    for apart in range(1, len(placed)):
        for k in range(len(placed) - apart):
            yield placed[k], placed[k + apart]


def _cross(upper: tuple[_Label, float], lower: tuple[_Label, float], starts: Mapping[str, tuple[float, float]]) -> bool:
    """Whether the leaders of two labels cross, both ending at :data:`LEADERS_END`."""
    (x1, y1), (x2, y2) = starts[upper[0].feature], starts[lower[0].feature]
    at = max(x1, x2)  # both leaders are there from here on

    def height(x: float, y: float, end: float) -> float:
        return y + (end - y) * (at - x) / (LEADERS_END - x)

    before = height(x1, y1, upper[1]) - height(x2, y2, lower[1])
    return before > 0.01 and upper[1] < lower[1]


def _drawn_labels(labels: Sequence[_Label], s: Shape, sheet: Sheet) -> list[str]:
    places = spots(s, sheet)
    starts = {label.feature: (sheet.x(places[label.feature][0]), sheet.y(places[label.feature][1])) for label in labels}
    bottom = max(sheet.bottom + 14, 6 + sum(label.height for label in labels))
    parts = _strokes(s, sheet, {label.feature for label in labels})
    for label, y in _without_crossings(labels, starts, bottom):
        fx, fy = starts[label.feature]
        parts.append(path(["M", fx, fy, "L", LEADERS_END, y, "L", LABELS - 3, y], "leader"))
        parts.append(circle(fx, fy, 2, "dot"))
        number = ", ".join(str(n) for n in label.numbers[:3]) + ("…" if len(label.numbers) > 3 else "")
        width = max(text_width(number, 10) + 8, 16)
        parts.append(rect(LABELS - 3, y - 8, width, 16, "balloon", 8))
        parts.append(words(LABELS - 3 + width / 2, y + 3.6, number, "t number", "middle"))
        parts.append(words(LABELS + width + 2, y + 3.8, label.lines[0], "t strong lab"))
        for k, text in enumerate(label.lines[1:], 1):
            parts.append(words(LABELS + 15, y + 7 + STEP * k, text, "t quiet lab"))
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
    s = shape_of(values)
    if s is None:
        return None
    sheet = Sheet(s, 236.0)
    parts = [*shaft_part(s, sheet), *housing_part(s, sheet), *inner_ring_part(s, sheet), *outer_ring_part(s, sheet)]
    parts += [*ball_part(s, sheet, min(plain(values, "contact_angle") or 0.0, 60.0)), *spring_part(s, sheet)]
    for name, radius in (("bore_diameter", s.bore), ("outside_diameter", s.outside)):
        y = sheet.y(radius)
        parts.append(line(40, y, sheet.x(sheet.x_low) + 3, y, "thin"))
        parts.append(words(2, y + 3.6, f"⌀{number_text(plain(values, name) or 0.0, 'mm')}", "t quiet"))
    labels = _labels(values, marks)
    parts += _drawn_labels(labels, s, sheet)
    height = max(sheet.bottom + 18, 10 + sum(label.height for label in labels))
    says = say(
        "Shaft, inner ring, ball, outer ring and housing above the axis, "
        "bore {bore} mm, outside diameter {outside} mm.",
        bore=number_text(2 * s.bore, "mm"), outside=number_text(2 * s.outside, "mm"),
    )  # fmt: skip
    if s.spring:
        says += f" {told(f'The spring presses on the {s.spring} ring.')}"
    if labels:
        marked = "; ".join(", ".join(reversed(label.lines)) for label in labels)
        says += f" {say('Marked: {features}.', features=marked)}"
    return drawing("half", WIDTH, height, say("Half section of the seat, to scale"), says, parts)
