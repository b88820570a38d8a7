"""The preload window: minimum criteria, maximum criteria, and the spread of the force."""

from collections.abc import Sequence

from attrs import frozen
from markupsafe import Markup

from linter.report.drawings.axis import fitting
from linter.report.drawings.svg import drawing, line, rect, words
from linter.wording import quantity_text

WIDTH = 340.0


@frozen
class Criterion:
    """One criterion in words with its force [N]."""

    name: str
    force: float


def preload_window(
    minimum: Sequence[Criterion], maximum: Sequence[Criterion], force: tuple[float, float, float]
) -> Markup:
    """What the preload must exceed, what it must stay below, and where it lies.

    Parameters
    ----------
    minimum, maximum : sequence of Criterion
        At least one of both together [N].
    force : (float, float, float)
        Smallest, nominal and largest preload [N].
    """
    lows = sorted(minimum, key=lambda c: (c.force, c.name))
    highs = sorted(maximum, key=lambda c: (c.force, c.name))
    floor = lows[-1].force if lows else None
    ceiling = highs[0].force if highs else None
    scale = fitting([*(c.force for c in (*lows, *highs)), *force], 6, WIDTH - 20)
    rows = [(c, "at least") for c in lows] + [(c, "at most") for c in highs]
    bottom = 30.0 * (len(rows) + 1) + 4
    left = scale.left if floor is None else scale.x(floor)
    right = scale.right if ceiling is None else scale.x(ceiling)
    parts = []
    if right > left:
        parts.append(rect(left, 2, right - left, bottom - 2, "window"))
    y = 2.0
    for criterion, word in rows:
        at = scale.x(criterion.force)
        parts.append(words(6, y + 11, criterion.name))
        parts.append(words(WIDTH - 4, y + 11, f"{word} {quantity_text(criterion.force, 'N')}", "t quiet", "end"))
        start, end = (at, scale.right) if word == "at least" else (scale.left, at)
        parts.append(line(scale.left, y + 20, scale.right, y + 20, "axis"))
        parts.append(rect(start, y + 18, end - start, 4, "okay"))
        parts.append(line(at, y + 15, at, y + 25, "limit"))
        y += 30
    smallest, nominal, largest = force
    inside = (floor is None or smallest >= floor) and (ceiling is None or largest <= ceiling)
    parts.append(words(6, y + 11, "preload: smallest, nominal, largest", "t strong"))
    figures = " / ".join(quantity_text(value, "1") for value in force) + " N"
    parts.append(words(WIDTH - 4, y + 11, figures, "t strong", "end"))
    width = max(scale.x(largest) - scale.x(smallest), 2.0)
    parts.append(rect(scale.x(smallest), y + 15, width, 11, "zone2 strongzone2" if inside else "zonebad"))
    parts.append(line(scale.x(nominal), y + 13, scale.x(nominal), y + 28, "limit"))
    parts += scale.drawn(bottom, "N")
    says = "; ".join(f"{c.name}: {word} {quantity_text(c.force, 'N')}" for c, word in rows)
    says += f"; preload {figures}, {'inside' if inside else 'outside'} the window"
    if floor is not None and ceiling is not None and floor > ceiling:
        says += "; the window is empty"
    return drawing("win", WIDTH, bottom + 20, "Preload and the window it must lie in", f"{says}.", parts)
