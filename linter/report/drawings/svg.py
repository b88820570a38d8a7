"""The few SVG elements that the drawings are made of: rounded numbers, escaped text, classes instead of styles."""

import re
import unicodedata
from collections.abc import Iterable

from markupsafe import Markup, escape

from linter.model.visible import visible

#: Where a line may break: after a space, and beside a sign of a script that has none, but not before its stops.
_BREAKS = re.compile(
    "(?<= )(?! )|(?<=[\u3040-\u30ff\u3400-\u9fff、。，）])(?![、。，）ー])|(?<=[^ （])(?=[\u3400-\u9fff])"
)


def num(value: float) -> str:
    """A coordinate with one decimal at most, never ``-0``."""
    text = f"{value:.1f}".removesuffix(".0")
    return "0" if text == "-0" else text


def drawing(kind: str, width: float, height: float, title: str, description: str, parts: Iterable[str]) -> Markup:
    """A whole drawing with its text alternatives.

    Parameters
    ----------
    kind : str
        Class of the drawing, for the style sheet.
    width, height : float
        Size of the view box in user units; text is 11 units high.
    title, description : str
        Text alternatives: what it is, and what it shows with figures.
    parts : iterable of str
        Elements, already escaped; text is laid over the rest.

    Returns
    -------
    Markup
        An ``svg`` element.
    """
    ordered = sorted(parts, key=lambda part: part.startswith("<text"))
    return Markup('<svg class="d {}" viewBox="0 0 {} {}" role="img"><title>{}</title><desc>{}</desc>{}</svg>').format(
        kind, num(width), num(height), visible(title), visible(description), Markup("").join(map(Markup, ordered))
    )


def line(x1: float, y1: float, x2: float, y2: float, name: str) -> str:
    """A straight line."""
    return f'<line class="{name}" x1="{num(x1)}" y1="{num(y1)}" x2="{num(x2)}" y2="{num(y2)}"/>'


def rect(x: float, y: float, width: float, height: float, name: str, radius: float = 0.0) -> str:
    """A rectangle; a negative width is drawn to the left."""
    if width < 0:
        x, width = x + width, -width
    corner = f' rx="{num(radius)}"' if radius else ""
    size = f'width="{num(width)}" height="{num(max(height, 0.0))}"'
    return f'<rect class="{name}" x="{num(x)}" y="{num(y)}" {size}{corner}/>'


def circle(x: float, y: float, radius: float, name: str) -> str:
    """A circle."""
    return f'<circle class="{name}" cx="{num(x)}" cy="{num(y)}" r="{num(radius)}"/>'


def path(steps: Iterable[str | float], name: str, fill: str = "") -> str:
    """A path from commands and numbers; ``fill`` is the id of a hatching."""
    data = " ".join(step if isinstance(step, str) else num(step) for step in steps)
    hatching = f' fill="url(#{fill})"' if fill else ""
    return f'<path class="{name}" d="{data}"{hatching}/>'


def polygon(points: Iterable[tuple[float, float]], name: str) -> str:
    """A closed polygon."""
    return f'<polygon class="{name}" points="{" ".join(f"{num(x)},{num(y)}" for x, y in points)}"/>'


def words(x: float, y: float, text: str, name: str = "t", anchor: str = "start") -> str:
    """One line of text."""
    place = "" if anchor == "start" else f' text-anchor="{anchor}"'
    return f'<text class="{name}" x="{num(x)}" y="{num(y)}"{place}>{escape(visible(text))}</text>'


_NARROW, _WIDER = 0.56, 0.46
"""Width of a sign as a share of the size of the letters, and what a full-width one has more."""


def text_width(text: str, size: float = 12.0) -> float:
    """A safe estimate of how wide a line of text is, in user units (system fonts differ)."""
    wide = 0 if text.isascii() else sum(unicodedata.east_asian_width(sign) in "WF" for sign in text)
    return size * (_NARROW * len(text) + _WIDER * wide)


def fitted(text: str, width: float, size: float = 12.0) -> str:
    """A line of text that fits into a width, its end cut off where it does not."""
    most = max(1, int(width / (_NARROW * size)) + 2)
    if len(text) > most:  # a text of any length is cut at once to what may fit
        text = f"{text[:most]}…"
    while text_width(text, size) > width and len(text) > 1:
        text = f"{text[:-2].rstrip(' ,:')}…"
    return text


def wrapped(text: str, width: float, size: float = 12.0) -> list[str]:
    """The text in lines no wider than that, broken at spaces, and between the signs of a script without them."""
    lines: list[str] = []
    for word in _BREAKS.split(text):
        if lines and text_width(f"{lines[-1]}{word}".rstrip(), size) <= width:
            lines[-1] += word
        else:
            lines.append(word)
    return [line.strip() for line in lines]


def spread(wanted: list[float], widths: list[float], lowest: float, highest: float, gap: float = 5.0) -> list[float]:
    """Centres for labels near their wanted places so that none overlaps its neighbour, in the given order.

    Parameters
    ----------
    wanted : list of float
        Ascending centres.
    widths : list of float
        Width of each label.
    lowest, highest : float
        Room for all of them.
    gap : float
        Smallest room between neighbours.

    Returns
    -------
    list of float
        Ascending, one per label.
    """
    centres: list[float] = []
    edge = lowest
    for want, width in zip(wanted, widths, strict=True):
        centre = max(want, edge + width / 2)
        centres.append(centre)
        edge = centre + width / 2 + gap
    edge = highest
    for index in range(len(centres) - 1, -1, -1):
        centres[index] = min(centres[index], edge - widths[index] / 2)
        edge = centres[index] - widths[index] / 2 - gap
    return centres
