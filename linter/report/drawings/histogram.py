"""How often which value occurs in random assemblies, with the limits drawn in."""

from collections.abc import Sequence

from markupsafe import Markup

from linter.model.wording import quantity_text
from linter.report.drawings.axis import Axis
from linter.report.drawings.svg import drawing, line, rect, spread, text_width, words

WIDTH, HEIGHT, FLOOR = 340.0, 150.0, 104.0


def histogram(
    title: str, unit: str, counts: Sequence[int], edges: tuple[float, float], lower: float | None, upper: float | None
) -> Markup:
    """Bars of equal width, those beyond a limit hatched, with the limits as lines.

    Parameters
    ----------
    title, unit : str
        What is drawn, and its unit.
    counts : sequence of int
        Draws in each bin.
    edges : tuple of float
        Lower edge of the first bin and upper edge of the last.
    lower, upper : float or None
        Limits in the same unit.

    Returns
    -------
    Markup
        An ``svg`` element.
    """
    low, high = edges
    limits = [(value, word) for value, word in ((lower, "at least"), (upper, "at most")) if value is not None]
    room = (high - low) or max(abs(high), 1.0)
    near = [value for value, _ in limits if low - 2 * room <= value <= high + 2 * room]
    axis = Axis(min([low, *near]) - 0.03 * room, max([high, *near]) + 0.03 * room, 6.0, WIDTH - 6.0)
    step = (high - low) / len(counts)
    tallest = max(counts) or 1
    parts = [line(axis.left, FLOOR, axis.right, FLOOR, "axis")]
    for k, count in enumerate(counts):
        start, end = axis.x(low + k * step), axis.x(low + (k + 1) * step)
        middle = low + (k + 0.5) * step
        beyond = (lower is not None and middle < lower) or (upper is not None and middle > upper)
        tall = 84.0 * count / tallest
        if count:
            parts.append(rect(start, FLOOR - tall, max(end - start, 0.5), tall, "zonebad" if beyond else "zone2"))
    marks = []
    for value, word in sorted(limits):
        text = f"{word} {quantity_text(float(f'{value:.3g}'), unit)}"
        far = "" if value in near else (" (left of the picture)" if value < low else " (right of the picture)")
        if not far:
            parts.append(line(axis.x(value), 14, axis.x(value), FLOOR + 5, "limit"))
        marks.append((axis.x(value), text + far))
    ends = [(axis.x(v), quantity_text(float(f"{v:.3g}"), unit)) for v in (low, high)]
    for y, texts in ((FLOOR + 17, ends), (FLOOR + 34, marks)):
        widths = [text_width(text) for _, text in texts]
        for centre, (_, text) in zip(
            spread([at for at, _ in texts], widths, 0, WIDTH), texts, strict=True
        ):  # the labels keep their order
            parts.append(words(centre, y, text, "t quiet" if texts is ends else "t", "middle"))
    said = ", ".join(text for _, text in marks) or "no limit"
    return drawing(
        "histogram", WIDTH, HEIGHT, title, f"{title}: from {ends[0][1]} to {ends[1][1]} in the draws; {said}.", parts
    )
