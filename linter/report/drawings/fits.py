"""Fits: tolerance zones of ring and seat on one micrometre axis, and clearance from delivered to running."""

from markupsafe import Markup

from linter.model.digits import short_number, short_text
from linter.report.drawings.axis import Axis, linear
from linter.report.drawings.svg import drawing, fitted, line, rect, words
from linter.report.language import say, told

WIDTH = 340.0
_MARGIN = 46.0


def _um(value: float) -> str:
    return short_number(value, "um")


def _band(
    scale: Axis, y: float, low: float, high: float, name: str, kind: str, middle: float | None = None
) -> list[str]:
    """A named range with its ends in figures, and a tick at its middle."""
    left, right = scale.x(low), scale.x(high)
    parts = [
        words(6, y, fitted(name, WIDTH - 4, 10.0)),
        rect(left, y + 5, max(right - left, 1.5), 11, kind),
        words(left - 4, y + 14.5, _um(low), "t strong", "end"),
        words(max(right, left + 1.5) + 4, y + 14.5, _um(high), "t strong"),
    ]
    if middle is not None:
        parts.append(line(scale.x(middle), y + 3, scale.x(middle), y + 18, "limit"))
    return parts


def fit_diagram(
    seat: tuple[float, float],
    ring: tuple[float, float],
    fit: tuple[float, float, float],
    in_use: tuple[float, float] | None = None,
    *,
    seat_name: str = "seat",
    ring_name: str = "bearing ring",
) -> Markup:
    """Tolerance zones and the fit they give.

    Parameters
    ----------
    seat, ring : (float, float)
        Lower and upper deviation from the nominal [um].
    fit : (float, float, float)
        Smallest, probable and largest fit, interference positive [um].
    in_use : (float, float), optional
        Smallest and largest fit in use, after temperature, speed and smoothing [um].
    seat_name, ring_name : str
        What to call them.

    Returns
    -------
    Markup
        The drawing as SVG.
    """
    low, middle, high = fit
    seat_name, ring_name = told(seat_name), told(ring_name)
    scale = linear([0.0, *seat, *ring, low, high, *(in_use or ())], _MARGIN, WIDTH - _MARGIN)
    zero = scale.x(0.0)
    rows: list[tuple[tuple[float, float], str, str, float | None]] = []
    rows.append((ring, say("{part}: deviation from the nominal", part=ring_name), "zone", None))
    rows.append((seat, say("{part}: deviation from the nominal", part=seat_name), "zone strongzone", None))
    rows.append(((low, high), say("fit: smallest, probable, largest"), "zone2", middle))
    if in_use:
        rows.append((in_use, say("fit in use"), "zone2 strongzone2", None))
    y, parts = 12.0, []
    bottom = y + 36 * len(rows)
    parts.append(line(zero, 4, zero, bottom, "zero"))
    for (start, end), name, kind, tick in rows:
        parts += _band(scale, y, start, end, name, kind, tick)
        y += 36
    parts += scale.drawn(bottom, "um")
    parts.append(words(6, bottom + 30, f"\u2190 {say('clearance')}", "t quiet"))
    parts.append(words(WIDTH - 4, bottom + 30, f"{say('interference')} \u2192", "t quiet", "end"))
    says = say(
        "{ring} {ring_low} to {ring_high} µm, {seat} {seat_low} to {seat_high} µm from the nominal. "
        "Fit, interference positive: smallest {smallest}, probable {probable}, largest {largest}.",
        ring=ring_name, ring_low=_um(ring[0]), ring_high=_um(ring[1]), seat=seat_name, seat_low=_um(seat[0]),
        seat_high=_um(seat[1]), smallest=short_text(low, "um"), probable=short_text(middle, "um"),
        largest=short_text(high, "um"),
    )  # fmt: skip
    if in_use:
        says += f" {say('In use {low} to {high}.', low=short_text(in_use[0], 'um'), high=short_text(in_use[1], 'um'))}"
    title = say("Tolerance zones of {ring} and {seat}, and their fit", ring=ring_name, seat=seat_name)
    return drawing("fit", WIDTH, bottom + 36, title, says, parts)


def clearance_walk(
    delivered: tuple[float, float],
    inner: tuple[float, float],
    outer: tuple[float, float],
    temperature: float,
    running: tuple[float, float],
) -> Markup:
    """Radial clearance from delivered to running.

    Parameters
    ----------
    delivered : (float, float)
        Smallest and largest clearance before mounting [um].
    inner, outer : (float, float)
        Smallest and largest loss by the fit of the inner and of the outer ring [um].
    temperature : float
        Loss by the temperature difference of the rings; negative for a gain [um].
    running : (float, float)
        Smallest and largest clearance in use [um].

    Returns
    -------
    Markup
        The drawing as SVG.
    """
    steps = [(say("as delivered"), delivered)]
    low, high = delivered
    for name, (least, most) in (
        ("less {amount} from the inner ring's fit", inner),
        ("less {amount} from the outer ring's fit", outer),
    ):
        low, high = low - most, high - least
        amount = _um(most) if least == most else f"{_um(least)} {say('to')} {_um(most)}"
        steps.append((say(name, amount=amount), (low, high)))
    low, high = low - temperature, high - temperature
    word = "less {amount} from temperature" if temperature >= 0 else "plus {amount} from temperature"
    steps.append((say(word, amount=_um(abs(temperature))), (low, high)))
    steps.append((say("running"), running))
    scale = linear([0.0, *(v for _, ends in steps for v in ends)], _MARGIN, WIDTH - _MARGIN)
    zero, bottom = scale.x(0.0), 12.0 + 36 * len(steps)
    parts = [line(zero, 4, zero, bottom, "zero")]
    for number, (name, (start, end)) in enumerate(steps):
        y = 12.0 + 36 * number
        last = number == len(steps) - 1
        kind = ("zone2 strongzone2" if start >= 0 else "zonebad") if last else "zone"
        parts += _band(scale, y, start, end, name, kind)
        if not last:
            following = steps[number + 1][1]
            for here, there in zip((start, end), following, strict=True):
                parts.append(line(scale.x(here), y + 16, scale.x(there), y + 41, "thin"))
    parts += scale.drawn(bottom, "um")
    says = "; ".join(f"{name}: {_um(s)} {say('to')} {_um(e)} µm" for name, (s, e) in steps)
    return drawing("walk", WIDTH, bottom + 20, say("Radial clearance from delivered to running"), f"{says}.", parts)
