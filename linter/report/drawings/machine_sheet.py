"""One sheet of a machine: shaft, bearings in their housings, spring, roles, fits as labels, findings as balloons."""

from collections.abc import Mapping, Sequence
from typing import Any

from attrs import frozen
from markupsafe import Markup

from linter.model.wording import number_text, quantity_text
from linter.report.drawings.half_section import FEATURES, marked_features, value_label
from linter.report.drawings.seat_parts import plain
from linter.report.drawings.svg import circle, drawing, line, path, rect, text_width, words
from linter.report.language import choice_of, say, told

WIDTH, MIDDLE = 720.0, 150.0
#: Half height of the largest bearing, and of the housing round it.
HALF, WALL = 62.0, 24.0
MOST_POSITIONS = 4

#: Part of the sheet that a feature's balloon stands at.
PARTS = {
    **dict.fromkeys(("housing seat", "housing shoulder", "housing fillet", "housing wall"), "housing"),
    **dict.fromkeys(("shaft seat", "shaft shoulder", "shaft fillet", "shaft bore", "bearing bore"), "shaft"),
    **dict.fromkeys(("spring", "preload", "axial float"), "spring"),
    "outside diameter": "housing",
}


@frozen
class Position:
    """One bearing position: its name, its values as a result has them, and its marked parameters with numbers."""

    name: str
    values: Mapping[str, Any]
    marks: Mapping[str, Sequence[int]]


def machine_sheet(positions: Sequence[Position], whole: Sequence[int] = ()) -> Markup | None:
    """The machine as a sheet, not to scale along its axis.

    Parameters
    ----------
    positions : sequence of Position
        In the order of the report.
    whole : sequence of int
        Numbers of the findings about the machine as a whole.

    Returns
    -------
    Markup or None
        None for no position with sizes, or for more than :data:`MOST_POSITIONS`.
    """
    sizes = [(plain(p.values, "bore_diameter"), plain(p.values, "outside_diameter")) for p in positions]
    if not 0 < len(positions) <= MOST_POSITIONS or any(d is None or o is None or not 0 < d < o for d, o in sizes):
        return None
    scale = HALF / max(outside for _, outside in sizes if outside is not None)
    pitch = WIDTH / len(positions)
    places = [pitch * (k + 0.5) for k in range(len(positions))]
    shoulders = [plain(p.values, "shaft_shoulder_diameter") or 0.0 for p in positions]
    thick = min(max((*shoulders, *(d or 0.0 for d, _ in sizes))) * scale, 0.9 * HALF)
    parts: list[str] = []
    if len(places) > 1:
        parts += _both(places[0] + 14, places[-1] - 14, 0.0, thick, "steel", "edge")
    texts = []
    for k, (position, x, (d, outside)) in enumerate(zip(positions, places, sizes, strict=True)):
        assert d is not None and outside is not None
        stub = (x - (40 if k == 0 else 14), x + (40 if k == len(places) - 1 else 14))
        parts += _bearing(position, x, d * scale, outside * scale, stub)
        parts += _labels(position, x, outside * scale)
        texts.append(_told(position))
    parts.append(line(20, MIDDLE, WIDTH - 20, MIDDLE, "centre"))
    parts += _span(positions, places)
    if whole:
        parts += _balloon(places[0] / 2 + places[-1] / 2, MIDDLE - thick - 26, whole, "machine")
        texts.append(say("Whole machine: {numbers}.", numbers=_numbers(whole)))
    title = say("The machine with its seats, not to scale")
    return drawing("half whole", WIDTH, 2 * MIDDLE + 22, title, " ".join(texts), parts)


def _both(left: float, right: float, low: float, high: float, name: str, edge: str, hatch: str = "") -> list[str]:
    """A part above and below the axis."""
    found = []
    for sign in (-1, 1):
        top = MIDDLE - high if sign < 0 else MIDDLE + low
        found.append(rect(left, top, right - left, high - low, name))
        if hatch:
            steps: list[str | float] = ["M", left, top, "L", right, top, "L", right, top + high - low]
            found.append(path([*steps, "L", left, top + high - low, "Z"], edge, hatch))
        elif edge:
            found.append(line(left, MIDDLE + sign * high, right, MIDDLE + sign * high, edge))
    return found


def _bearing(position: Position, x: float, bore: float, outside: float, stub: tuple[float, float]) -> list[str]:
    wide = max(min(0.55 * (outside - bore), 22.0), 10.0)
    section = outside - bore
    parts = _both(*stub, 0.0, bore, "steel", "edge")
    parts += _both(x - wide - 12, x + wide + 12, outside, HALF + WALL, "steel", "bare", "ha")
    parts += _both(x - wide, x + wide, bore, bore + 0.3 * section, "steel", "part", "hb")
    parts += _both(x - wide, x + wide, outside - 0.3 * section, outside, "steel", "part", "hb")
    for sign in (-1, 1):
        parts.append(circle(x, MIDDLE + sign * (bore + 0.5 * section), 0.3 * section, "ball"))
    if position.values.get("preload_method") == "spring" and position.values.get("axial_role") == "spring-loaded":
        for sign in (-1, 1):
            y = MIDDLE + sign * (outside - 0.15 * section)
            steps: list[str | float] = ["M", x + wide, y]
            for k in range(1, 7):
                steps += ["L", x + wide + 3 * k, y + (4 if k % 2 else -4)]
            parts.append(path(steps, "spring"))
            parts.append(line(x + wide + 19, MIDDLE + sign * (outside - 0.3 * section), x + wide + 19,
                              MIDDLE + sign * outside, "edge"))  # fmt: skip
    return parts


def _labels(position: Position, x: float, outside: float) -> list[str]:
    """Name and role above, the fits on both sides, and the balloons of the findings."""
    values = position.values
    top, bottom = MIDDLE - HALF - WALL, MIDDLE + HALF + WALL
    name = _short(position.name)
    role = _role(values)
    parts = [words(x, top - 38, name, "t strong", "middle"), words(x, top - 24, role, "t quiet", "middle")]
    for y, side, text in (
        (top - 7, "housing", "{size} in {material}"),
        (bottom + 16, "shaft", "{size} on {material}"),
    ):
        size = value_label(values, f"{side}_seat_diameter")
        material = choice_of(str(values.get(f"{side}_material", say(side))))
        parts.append(words(x, y, say(text, size=_short(size), material=_short(material, 16)), "t", "middle"))
    found: dict[str, set[int]] = {}
    for feature, numbers in marked_features(position.marks).items():
        found.setdefault(PARTS.get(feature, "bearing"), set()).update(numbers)
    spots = {"housing": (x - 52, MIDDLE - outside - 8), "bearing": (x - 52, MIDDLE - 16),
             "shaft": (x - 52, MIDDLE + 22), "spring": (x + 62, MIDDLE - outside + 6)}  # fmt: skip
    for part, (at, y) in spots.items():
        if part in found:
            parts += _balloon(at, y, sorted(found[part]), part)
    return parts


def _span(positions: Sequence[Position], places: Sequence[float]) -> list[str]:
    if len(places) < 2:
        return []
    y = 2 * MIDDLE - 8
    parts = [line(places[0], y, places[-1], y, "thin")]
    parts += [line(x, y - 6, x, y + 6, "thin") for x in (places[0], places[-1])]
    span = value_label(positions[0].values, "bearing_span")
    speed = plain(positions[0].values, "speed_max")
    ring = positions[0].values.get("rotating_ring")
    known = plain(positions[0].values, "bearing_span") is not None
    text = say("span {span}", span=f"{span} mm" if known else span)
    if speed is not None:
        text += f" \u00b7 {say('up to {speed}', speed=quantity_text(speed, 'r/min'))}"
    if ring:
        text += f" \u00b7 {told('both rings turn' if ring == 'both' else f'{ring} ring turns')}"
    return [*parts, words((places[0] + places[-1]) / 2, y + 18, text, "t quiet", "middle")]


def _balloon(x: float, y: float, numbers: Sequence[int], part: str) -> list[str]:
    text = _numbers(numbers)
    width = max(text_width(text, 10) + 10, 18)
    return [rect(x - width / 2, y - 8, width, 16, "balloon", 8), words(x, y + 3.6, text, "t number", "middle")]


def _numbers(numbers: Sequence[int]) -> str:
    return ", ".join(map(str, numbers[:4])) + ("\u2026" if len(numbers) > 4 else "")


def _short(text: str, most: int = 22) -> str:
    return text if len(text) <= most else f"{text[: most - 1]}\u2026"


def _role(values: Mapping[str, Any]) -> str:
    role = values.get("axial_role")
    return choice_of(str(role)) if role else say("role not stated")


def _told(position: Position) -> str:
    """A position in words, for the text alternative."""
    values = position.values
    texts = [f"{position.name}: {_role(values)}"]
    for name, word in (("housing_seat_diameter", "housing seat"), ("shaft_seat_diameter", "shaft seat")):
        texts.append(f"{say(word)} {value_label(values, name)}")
    d, outside = plain(values, "bore_diameter"), plain(values, "outside_diameter")
    sizes = {"bore": number_text(d or 0.0, "mm"), "outside": number_text(outside or 0.0, "mm")}
    texts.append(say("bearing {bore} by {outside} mm", **sizes))
    for feature, numbers in marked_features({n: v for n, v in position.marks.items() if n in FEATURES}).items():
        texts.append(say("findings {numbers} at the {feature}", numbers=_numbers(numbers), feature=told(feature)))
    return f"{', '.join(texts)}."
