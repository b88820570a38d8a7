"""Scales: an observed value against its limits, and the speed factor among the limits by lubrication."""

from markupsafe import Markup

from linter.findings import Quantity
from linter.report.drawings.svg import drawing, line, polygon, rect, spread, text_width, words
from linter.wording import quantity_text

WIDTH = 300.0


def limit_bar(observed: Quantity | None, lower: Quantity | None, upper: Quantity | None) -> Markup | None:
    """The observed value on a line whose allowed part is drawn strong.

    Parameters
    ----------
    observed, lower, upper : Quantity or None
        In one unit.

    Returns
    -------
    Markup or None
        None where there is nothing to compare.
    """
    limits = [q for q in (lower, upper) if q is not None]
    if observed is None or not limits:
        return None
    unit = observed.unit
    values = [observed.value, *(q.value for q in limits)]
    low, high = min(values), max(values)
    room = high - low or max(abs(high), 1.0)
    left = 0.0 if min(values) >= 0 and len(limits) == 1 and lower is None else low - 0.35 * room
    right = high + 0.35 * room

    def x(value: float) -> float:
        return 6 + (WIDTH - 12) * (value - left) / (right - left)

    start = x(lower.value) if lower else 6.0
    end = x(upper.value) if upper else WIDTH - 6
    outside = (lower is not None and observed.value < lower.value) or (
        upper is not None and observed.value > upper.value
    )
    parts = [line(6, 24, WIDTH - 6, 24, "axis")]
    if end >= start:
        parts.append(rect(start, 21, end - start, 6, "okay"))
    marks = []
    for limit, name in ((lower, "at least"), (upper, "at most")):
        if limit is not None:
            parts.append(line(x(limit.value), 17, x(limit.value), 31, "limit"))
            marks.append((x(limit.value), f"{name} {quantity_text(limit.value, unit)}"))
    widths = [text_width(text) for _, text in marks]
    for centre, (_, text) in zip(spread([m[0] for m in marks], widths, 0, WIDTH), marks, strict=True):
        parts.append(words(centre, 43, text, "t", "middle"))
    at, text = x(observed.value), quantity_text(observed.value, unit)
    parts.append(polygon([(at, 24), (at - 5, 15), (at + 5, 15)], "seen bad" if outside else "seen"))
    width = text_width(text)
    parts.append(words(min(max(at, width / 2), WIDTH - width / 2), 11, text, "t strong", "middle"))
    wanted = " and ".join(text for _, text in marks)
    where = "outside" if outside else "inside"
    return drawing("bar", WIDTH, 48, "Observed value against its limits", f"{text}; wanted {wanted}; {where}.", parts)
