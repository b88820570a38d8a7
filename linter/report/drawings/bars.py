"""Scales: an observed value against its limits, and the speed factor among the limits by lubrication."""

from collections.abc import Sequence

from attrs import frozen
from markupsafe import Markup

from linter.model.digits import short_number, short_text
from linter.model.findings import Quantity
from linter.model.wording import number_text
from linter.report.drawings.axis import fitting
from linter.report.drawings.svg import drawing, fitted, line, polygon, rect, spread, text_width, words
from linter.report.language import choice_of, say

WIDTH = 340.0


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
    if observed is None or not limits or any(q.unit != observed.unit for q in limits):
        return None
    unit = observed.unit
    values = [observed.value, *(q.value for q in limits)]
    low, high = min(values), max(values)
    room = high - low or max(abs(high), 1.0)
    left = 0.0 if low >= 0 and lower is None else low - 0.35 * room
    right = high + 0.35 * room

    def x(value: float) -> float:
        return 6 + (WIDTH - 12) * (value - left) / (right - left)

    start = x(lower.value) if lower else 6.0
    end = x(upper.value) if upper else WIDTH - 6
    below = lower is not None and observed.value < lower.value
    outside = below or (upper is not None and observed.value > upper.value)
    parts = [line(6, 24, WIDTH - 6, 24, "axis")]
    if end >= start:
        parts.append(rect(start, 21.5, end - start, 5, "okay"))
    marks = []
    for limit, name in ((lower, "at least {limit}"), (upper, "at most {limit}")):
        if limit is not None:
            parts.append(line(x(limit.value), 17, x(limit.value), 31, "limit"))
            marks.append((x(limit.value), say(name, limit=short_text(limit.value, unit))))
    widths = [text_width(text) for _, text in marks]
    marks.sort()
    for centre, (_, text) in zip(spread([m[0] for m in marks], widths, 0, WIDTH), marks, strict=True):
        parts.append(words(centre, 43, text, "t quiet", "middle"))
    at, text = x(observed.value), short_text(observed.value, unit)
    parts.append(polygon([(at, 23), (at - 5, 14.5), (at + 5, 14.5)], "seen bad" if outside else "seen"))
    width = text_width(text) + 6
    parts.append(words(min(max(at, width / 2), WIDTH - width / 2), 10.5, text, "t strong", "middle"))
    wanted = f" {say('and')} ".join(text for _, text in marks)
    says = say("{value}; required {limits}; outside." if outside else "{value}; required {limits}; inside.",
               value=text, limits=wanted)  # fmt: skip
    return drawing("bar", WIDTH, 48, say("Observed value against its limits"), says, parts)


@frozen
class SpeedLimit:
    """Published limits of the speed factor for one lubrication, mm·r/min; None where there is none."""

    lubrication: str
    remark_from: float | None
    low: float
    high: float


def speed_scale(
    speed_factor: float,
    limit_low: float,
    limit_high: float,
    remark_from: float | None,
    lubrication: str,
    published: Sequence[SpeedLimit],
) -> Markup:
    """The speed factor on a scale of limits by lubrication.

    Parameters
    ----------
    speed_factor : float
        n·d_m of the position [mm·r/min].
    limit_low, limit_high, remark_from : float
        The limits that hold here, every factor applied (two ends where sources differ) [mm·r/min].
    lubrication : str
        The lubrication of the position, empty where it is not known.
    published : sequence of SpeedLimit
        Limits of the rulebook before any factor, for steel balls.

    Returns
    -------
    Markup
        The drawing as SVG.
    """
    here = SpeedLimit(say("the limit that applies here"), remark_from, limit_low, limit_high)
    rows = [here, *sorted(published, key=lambda row: row.low)]
    scale = fitting([speed_factor, *(v for row in rows for v in (row.low, row.high))], 6, WIDTH - 20)
    top, pitch = 24.0, 25.0
    bottom = top + pitch * len(rows) + (8 if published else 0)
    bad = "bad" if speed_factor > limit_low else "good"
    parts = []
    y = top
    for number, row in enumerate(rows):
        if number == 1:
            parts.append(line(6, y + 2, WIDTH - 6, y + 2, "thin"))
            y += 8
        mine = number == 0 or row.lubrication == lubrication
        parts.append(rect(scale.left, y + 14, scale.x(row.low) - scale.left, 6, "zone strongzone" if mine else "zone"))
        parts.append(rect(scale.x(row.low), y + 14, scale.x(row.high) - scale.x(row.low), 6, "zone2"))
        if row.remark_from is not None:
            parts.append(line(scale.x(row.remark_from), y + 11, scale.x(row.remark_from), y + 23, "thin"))
        end = "" if row.high == row.low else f" {say('to')} {short_number(row.high, 'mm.r/min')}"
        limits = f"{short_number(row.low, 'mm.r/min')}{end}"
        name = fitted(choice_of(row.lubrication), WIDTH - 16 - text_width(limits, 10.0), 10.0)
        parts.append(words(6, y + 11, name, "t strong" if mine else "t"))
        parts.append(words(WIDTH - 4, y + 11, limits, "t quiet", "end"))
        y += pitch
    at = scale.x(speed_factor)
    text = say("speed factor {factor}", factor=short_text(speed_factor, "mm.r/min"))
    width = text_width(text)
    parts.append(line(at, 15, at, bottom, f"here {bad}"))
    parts.append(words(min(max(at, width / 2), WIDTH - width / 2), 11, text, "t strong", "middle"))
    parts += scale.drawn(bottom, "mm.r/min")
    ends = (
        f"{number_text(limit_low)} {say('to')} {number_text(limit_high)}"
        if limit_high != limit_low
        else number_text(limit_low)
    )
    others = " ".join(
        f"{choice_of(row.lubrication)}: {number_text(row.low)} {say('to')} {number_text(row.high)}." for row in rows[1:]
    )
    says = say(
        "{factor}; the limit that applies here is {limits}. Published limits before correction factors: {others}",
        factor=text, limits=ends, others=others or say("none shown."),
    )  # fmt: skip
    return drawing("speed", WIDTH, bottom + 20, say("Speed factor on a scale of limits by lubrication"), says, parts)
