"""The preload window: minimum criteria, maximum criteria, and the spread of the force."""

from collections.abc import Sequence

from attrs import frozen
from markupsafe import Markup

from linter.model.digits import short_number, short_text
from linter.report.drawings.axis import fitting
from linter.report.drawings.svg import drawing, line, rect, text_width, words, wrapped
from linter.report.language import say, told

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

    Returns
    -------
    Markup
        The drawing as SVG.
    """
    lows = sorted(minimum, key=lambda c: (c.force, c.name))
    highs = sorted(maximum, key=lambda c: (c.force, c.name))
    floor = lows[-1].force if lows else None
    ceiling = highs[0].force if highs else None
    scale = fitting([*(c.force for c in (*lows, *highs)), *force], 6, WIDTH - 20)
    rows = []
    for criterion, least in [(c, True) for c in lows] + [(c, False) for c in highs]:
        figure = say("at least {limit}" if least else "at most {limit}", limit=short_text(criterion.force, "N"))
        rows.append((criterion, least, figure, wrapped(told(criterion.name), WIDTH - 16 - text_width(figure))))
    spread_text = " / ".join(short_number(value, "N") for value in force) + " N"
    head = wrapped(say("preload: smallest, nominal, largest"), WIDTH - 10 - text_width(spread_text, 10.0), 10.0)
    bottom = sum(18 + 12.0 * len(lines) for *_, lines in rows) + 22 + 12.0 * len(head)
    left = scale.left if floor is None else scale.x(floor)
    right = scale.right if ceiling is None else scale.x(ceiling)
    parts = []
    if right > left:
        parts.append(rect(left, 2, right - left, bottom - 2, "window"))
    y = 2.0
    for criterion, least, figure, lines in rows:
        at = scale.x(criterion.force)
        parts.append(words(WIDTH - 4, y + 11, figure, "t quiet", "end"))
        for text in lines:
            parts.append(words(6, y + 11, text))
            y += 12
        start, end = (at, scale.right) if least else (scale.left, at)
        parts.append(line(scale.left, y + 8, scale.right, y + 8, "axis"))
        parts.append(rect(start, y + 6, end - start, 4, "okay"))
        parts.append(line(at, y + 3, at, y + 13, "limit"))
        y += 18
    smallest, nominal, largest = force
    inside = (floor is None or smallest >= floor) and (ceiling is None or largest <= ceiling)
    parts.append(words(WIDTH - 4, y + 11, spread_text, "t strong", "end"))
    parts += [words(6, y + 11 + 12.0 * k, text, "t strong") for k, text in enumerate(head)]
    y += 12.0 * (len(head) - 1)
    width = max(scale.x(largest) - scale.x(smallest), 2.0)
    parts.append(rect(scale.x(smallest), y + 15, width, 11, "zone2 strongzone2" if inside else "zonebad"))
    parts.append(line(scale.x(nominal), y + 13, scale.x(nominal), y + 28, "limit"))
    parts += scale.drawn(bottom, "N")
    says = [f"{told(criterion.name)}: {figure}" for criterion, _, figure, _ in rows]
    says.append(_place(spread_text, inside))
    if floor is not None and ceiling is not None and floor > ceiling:
        says.append(say("the window is empty"))
    title = say("Preload and the window it must lie in")
    return drawing("win", WIDTH, bottom + 20, title, f"{'; '.join(says)}.", parts)


def _place(forces: str, inside: bool) -> str:
    """Where the preload lies, in words."""
    return say(
        "preload {forces}, inside the window" if inside else "preload {forces}, outside the window", forces=forces
    )
