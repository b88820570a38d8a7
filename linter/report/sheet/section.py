"""The half section of a seat with its sizes, tolerances and signs, to scale, for one page of the specification."""

from collections.abc import Mapping, Sequence
from typing import Any

from attrs import frozen
from markupsafe import Markup

from linter.model.wording import number_text
from linter.report.drawings.half_section import FEATURES, spots
from linter.report.drawings.seat_parts import (
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
from linter.report.sheet.characteristics import Characteristic
from linter.report.sheet.symbols import DIAMETER, ENVELOPE, control_frame, datum_box, roughness_sign

WIDTH, LEFT, RIGHT, LABELS, STEP = 740.0, 46.0, 372.0, 424.0, 21.0
#: Features from the outside to the axis, each with the datum that it carries.
ORDER = (
    "housing wall", "housing seat", "housing shoulder", "housing fillet", "shaft seat", "shaft shoulder",
    "shaft fillet", "shaft bore",
)  # fmt: skip


def feature_of(name: str) -> str:
    """The feature that a characteristic belongs to, empty for one of the whole machine."""
    if name in FEATURES and FEATURES[name].name in ORDER:
        return FEATURES[name].name
    side, _, rest = name.partition("_")
    return f"{side} fillet" if rest.startswith("undercut") else ""


@frozen
class _Block:
    """The lines of one feature: number on the list, and the characteristic."""

    feature: str
    lines: tuple[tuple[int, Characteristic], ...]

    @property
    def height(self) -> float:
        return STEP * len(self.lines) + 5


def seat_drawing(
    values: Mapping[str, Any], numbered: Sequence[tuple[int, Characteristic]], datums: tuple[str, str]
) -> Markup | None:
    """The drawing of one position.

    Parameters
    ----------
    values : mapping
        As in :class:`linter.model.findings.StationRecord` (mm).
    numbered : sequence of (int, Characteristic)
        The characteristics of the position with their numbers on the inspection list.
    datums : (str, str)
        Letters of its shaft seat and of its bore.

    Returns
    -------
    Markup or None
        None where bore and outside diameter are not known. A start value is drawn in a dashed frame.
    """
    s = shape_of(values)
    if s is None:
        return None
    blocks = []
    for feature in ORDER:
        lines = tuple((n, c) for n, c in numbered if feature_of(c.parameter) == feature)
        if lines:
            blocks.append(_Block(feature, lines))
    height = max(300.0, sum(block.height + 4 for block in blocks))
    sheet = Sheet(s, min(height - 34, 330.0), LEFT, RIGHT)
    parts = [*shaft_part(s, sheet), *housing_part(s, sheet), *inner_ring_part(s, sheet), *outer_ring_part(s, sheet)]
    parts += [*ball_part(s, sheet, 0.0), *spring_part(s, sheet)]
    for name, radius in (("bore_diameter", s.bore), ("outside_diameter", s.outside)):
        y = sheet.y(radius)
        parts.append(line(40, y, sheet.x(sheet.x_low) + 3, y, "thin"))
        parts.append(words(0, y + 3.6, f"{DIAMETER}{number_text(plain(values, name) or 0.0, 'mm')}", "t quiet"))
    height = max(height, sheet.bottom + 14)
    places = spots(s, sheet)
    blocks.sort(key=lambda b: (-places[b.feature][1], ORDER.index(b.feature)))
    wanted = [sheet.y(places[b.feature][1]) for b in blocks]
    centres = spread(wanted, [b.height for b in blocks], 2, height - 2, 4)
    letters = {"shaft seat": datums[0], "housing seat": datums[1]}
    for block, centre in zip(blocks, centres, strict=True):
        top = centre - block.height / 2
        x, y = sheet.x(places[block.feature][0]), sheet.y(places[block.feature][1])
        parts.append(path(["M", x, y, "L", LABELS - 26, top + 11, "L", LABELS - 4, top + 11], "leader"))
        parts.append(circle(x, y, 1.8, "dot"))
        parts += _lines(block, top, letters.get(block.feature, ""))
    says = "; ".join(f"{number}: {item.name} {item.drawn}" for number, item in numbered)
    title = f"Half section of the seats at {numbered[0][1].station}, to scale" if numbered else "Half section"
    return drawing("seat", WIDTH, height, title, says or "no characteristic is stated", parts)


def _lines(block: _Block, top: float, letter: str) -> list[str]:
    """The lines of a block: balloon with the number, then frame, sign or size; the datum behind the first one."""
    parts = []
    for k, (number, item) in enumerate(block.lines):
        y = top + 2 + STEP * k
        parts.append(circle(LABELS + 8, y + 9, 8.2, "balloon"))
        parts.append(words(LABELS + 8, y + 12.4, str(number), "t number", "middle"))
        x = LABELS + 24
        if item.kind in ("cylindricity", "total run-out", "axial run-out"):
            value = number_text(item.most if item.most is not None else 0.0, "mm")
            made, end = control_frame(item.kind, value, item.datums, x, y)
        elif item.kind == "roughness":
            made, end = roughness_sign(item.drawn, x, y + 17)
        else:
            shown = item.drawn if item.kind != "undercut" else f"{item.name.split(' ', 1)[1]} {item.drawn}"
            bare = shown.removesuffix(f" {ENVELOPE}")
            made, end = [words(x, y + 13, bare, "t strong")], x + text_width(bare, 12.5)
            if bare != shown:
                made += [circle(end + 8, y + 9, 7, "frame"), words(end + 8, y + 13, "E", "t", "middle")]
                end += 17
        if k == 0 and letter:
            box, end = datum_box(letter, end + 4, y + 9)
            made += box
        if item.proposed:
            made += [
                rect(x - 3, y - 1, end - x + 6, STEP - 1, "proposed"),
                words(end + 8, y + 13, "proposed", "t quiet"),
            ]
        parts += made
    return parts
