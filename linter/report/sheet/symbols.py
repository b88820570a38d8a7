"""The signs of a seat specification: as characters for text, and as strokes for drawings, so that no font is needed.

Signs and their shapes are those of ISO 1101 (geometrical tolerances), ISO 5459 (datums), ISO 14405-1 (size) and
ISO 21920-1 (roughness), from memory of these standards; the characters are those that Unicode names for them.
"""

from itertools import pairwise

from linter.report.drawings.svg import circle, line, path, polygon, rect, text_width, words

#: Characteristic to the character of its sign (ISO 1101, from memory; names of the characters in the Unicode standard).
SIGNS = {
    "straightness": "\u23e4",
    "flatness": "\u23e5",
    "roundness": "\u25cb",
    "cylindricity": "\u232d",
    "perpendicularity": "\u27c2",
    "coaxiality": "\u25ce",
    "circular run-out": "\u2197",
    "axial run-out": "\u2197",
    "total run-out": "\u2330",
}
ENVELOPE = "\u24ba"
DIAMETER = "\u2300"
#: Side of the square that a sign fills, and height of a frame, in units of the drawing.
SIDE, FRAME = 13.0, 17.0


def sign(kind: str, x: float, y: float) -> list[str]:
    """The sign of a characteristic in the square of :data:`SIDE` whose upper left corner is (x, y).

    Raises
    ------
    KeyError
        For a characteristic that no seat carries.
    """
    right, low, middle = x + SIDE, y + SIDE, y + SIDE / 2
    centre = x + SIDE / 2
    if kind == "cylindricity":
        return [
            circle(centre, middle, 3.6, "frame"),
            line(x + 0.5, low - 1, x + 6.5, y + 1, "frame"),
            line(right - 6.5, low - 1, right - 0.5, y + 1, "frame"),
        ]
    if kind == "coaxiality":
        return [circle(centre, middle, 5.2, "frame"), circle(centre, middle, 2.5, "frame")]
    if kind == "axial run-out":
        return _arrow(x + 3, low - 1, 8.5, 10.5)
    if kind == "total run-out":
        first, second = _arrow(x + 0.5, low - 2, 6, 9), _arrow(x + 6.5, low - 2, 6, 9)
        return [*first, *second, line(x + 0.5, low - 2, x + 6.5, low - 2, "frame")]
    raise KeyError(kind)


def _arrow(x: float, y: float, across: float, up: float) -> list[str]:
    """An arrow from (x, y) to the upper right."""
    tip_x, tip_y = x + across, y - up
    length = (across**2 + up**2) ** 0.5
    ux, uy = across / length, -up / length
    base_x, base_y = tip_x - 4.5 * ux, tip_y - 4.5 * uy
    corners = [(tip_x, tip_y), (base_x - 1.6 * uy, base_y + 1.6 * ux), (base_x + 1.6 * uy, base_y - 1.6 * ux)]
    return [line(x, y, base_x, base_y, "frame"), polygon(corners, "solid")]


def control_frame(
    kind: str, value: str, datums: str, x: float, y: float, name: str = "frame"
) -> tuple[list[str], float]:
    """A feature control frame with its upper left corner at (x, y).

    Parameters
    ----------
    kind : str
        Characteristic.
    value : str
        Its tolerance, with a sign of diameter where the zone is a cylinder.
    datums : str
        What it refers to, empty for nothing.
    x, y : float
        Place, in units of the drawing.
    name : str
        Class of the outline.

    Returns
    -------
    parts : list of str
        Elements of the drawing.
    end : float
        Where the frame ends.
    """
    edges = [x, x + 20.0, x + 20.0 + text_width(value, 12) + 9]
    parts = sign(kind, x + 3.5, y + 2)
    parts.append(words(edges[1] + 4, y + 12.6, value, "t"))
    if datums:
        parts.append(words(edges[2] + 5, y + 12.6, datums, "t"))
        edges.append(edges[2] + text_width(datums, 12) + 9)
    parts += [rect(a, y, b - a, FRAME, name) for a, b in pairwise(edges)]
    return parts, edges[-1]


def datum_box(letter: str, x: float, y: float) -> tuple[list[str], float]:
    """A datum indicator (ISO 5459) whose line begins at (x, y); strokes and where it ends on the right."""
    triangle = [(x, y - 4.5), (x, y + 4.5), (x + 7, y)]
    box = x + 15
    parts = [polygon(triangle, "solid"), line(x + 7, y, box, y, "frame"), rect(box, y - 8.5, 17, 17, "frame")]
    return [*parts, words(box + 8.5, y + 4.2, letter, "t strong", "middle")], box + 17


def roughness_sign(text: str, x: float, y: float) -> tuple[list[str], float]:
    """A surface texture sign, material to be removed, with its text; (x, y) is its foot."""
    end = x + 15 + text_width(text, 12) + 6
    steps: list[str | float] = ["M", x, y - 6, "L", x + 4, y, "L", x + 13, y - 14, "L", end, y - 14]
    bar = line(x, y - 6, x + 8, y - 6, "frame")
    return [path(steps, "frame"), bar, words(x + 15, y - 2.6, text, "t")], end
