"""Curves: the speed of machines among published speed factors, preload over temperature, a fit over speed."""

import math
from collections.abc import Mapping, Sequence

from attrs import frozen
from markupsafe import Markup

from linter.model.digits import fit_text, short_number, short_text
from linter.model.wording import number_text, quantity_text
from linter.report.drawings.axis import Axis, linear
from linter.report.drawings.bars import SpeedLimit
from linter.report.drawings.svg import circle, drawing, line, path, rect, spread, text_width, words
from linter.report.language import choice_of, say, told

WIDTH, HEIGHT = 340.0, 236.0
LEFT, RIGHT, TOP, BOTTOM = 64.0, 330.0, 12.0, 200.0
#: Width of the map's field, and of the room between it and the names of the lines.
FIELD, ROOM = 112.0, 16.0


@frozen
class Point:
    """A bearing position: its name, mean diameter [mm] and highest speed [r/min]."""

    name: str
    mean_diameter: float
    speed: float


def speed_map(points: Sequence[Point], published: Sequence[SpeedLimit]) -> Markup | None:
    """Mean diameter against speed, both logarithmic, with the published limits as lines of one speed factor.

    Parameters
    ----------
    points : sequence of Point
        Positions of one machine.
    published : sequence of SpeedLimit
        Limits of the rulebook by lubrication, before any factor.

    Returns
    -------
    Markup or None
        None without points or limits.
    """
    if not points or not published:
        return None
    diameters, speeds = [p.mean_diameter for p in points], [p.speed for p in points]
    edge = LEFT + FIELD
    x = Axis(min(diameters) / 3, max(diameters) * 3, LEFT, edge, logarithmic=True)
    factor = max(max(limit.high for limit in published), *(p.mean_diameter * p.speed for p in points))
    middle = math.sqrt(min(diameters) * max(diameters))
    y = Axis(min(min(speeds), min(limit.low for limit in published) / middle) / 2.5, factor / middle * 2.5, BOTTOM, TOP,
             logarithmic=True)  # fmt: skip
    parts = [line(LEFT, BOTTOM, edge, BOTTOM, "axis"), line(LEFT, TOP, LEFT, BOTTOM, "axis")]
    ends = []
    for limit in sorted(published, key=lambda entry: entry.high):
        shown = _factor_line(limit.high, x, y)
        if shown is not None:
            parts.append(path(shown, "thin"))
            ends.append((y.x(min(max(limit.high / x.high, y.low), y.high)), limit))
    width = WIDTH
    for (end, limit), at in zip(ends, _apart([a for a, _ in ends]), strict=True):
        name = f"{choice_of(limit.lubrication)} {short_number(limit.high, 'mm.r/min')}"
        parts.append(path(["M", edge, end, "L", edge + ROOM - 4, at - 4], "axis"))
        parts.append(words(edge + ROOM, at, name, "t quiet"))
        width = max(width, edge + ROOM + text_width(name))
    for tick in x.ticks():
        parts.append(line(x.x(tick), BOTTOM, x.x(tick), BOTTOM + 4, "axis"))
        parts.append(words(x.x(tick), BOTTOM + 15, number_text(tick), "t quiet", "middle"))
    parts.append(words(edge + ROOM, BOTTOM + 15, say("mean diameter, mm"), "t quiet"))
    width = max(width, edge + ROOM + text_width(say("mean diameter, mm")))
    for tick in y.ticks():
        parts.append(line(LEFT - 4, y.x(tick), LEFT, y.x(tick), "axis"))
        parts.append(words(LEFT - 6, y.x(tick) + 4, number_text(tick), "t quiet", "end"))
    parts.append(words(6, BOTTOM + 30, say("speed, r/min"), "t quiet"))
    parts += [circle(x.x(p.mean_diameter), y.x(p.speed), 4.5, "here dot") for p in points]
    places = "; ".join(
        say(
            "{name}: {diameter} at {speed}, speed factor {factor}",
            name=p.name, diameter=short_text(p.mean_diameter, "mm"), speed=quantity_text(p.speed, "r/min"),
            factor=short_text(p.mean_diameter * p.speed, "mm.r/min"),
        )
        for p in points
    )  # fmt: skip
    limits = "; ".join(
        say("{lubrication} up to {limit}", lubrication=choice_of(e.lubrication), limit=short_number(e.high, "mm.r/min"))
        for e in published
    )
    return drawing("map", width, HEIGHT, say("Speed against mean diameter among published limits"),
                   say("{places}. Published limits before correction factors: {limits}.", places=places, limits=limits),
                   parts)  # fmt: skip


def _factor_line(factor: float, x: Axis, y: Axis) -> list[str | float] | None:
    """The part of n = factor/d_m inside the frame; None where it does not cross it."""
    low, high = max(x.low, factor / y.high), min(x.high, factor / y.low)
    if low >= high:
        return None
    return ["M", x.x(low), y.x(factor / low), "L", x.x(high), y.x(factor / high)]


def _apart(wanted: Sequence[float]) -> list[float]:
    """Heights of labels near the wanted ones, 13 units apart, in their order from the bottom up."""
    order = sorted(range(len(wanted)), key=lambda k: wanted[k])
    placed = spread([wanted[k] for k in order], [12.0] * len(order), TOP + 4, BOTTOM - 2, 1.0)
    found = [0.0] * len(order)
    for k, at in zip(order, placed, strict=True):
        found[k] = at + 3
    return found


def preload_over_temperature(
    forces: Mapping[str, float], window: tuple[float | None, float | None] = (None, None)
) -> Markup | None:
    """The preload in each state of temperature, in what is allowed of it.

    Parameters
    ----------
    forces : mapping of str to float
        State (at assembly first, then cold, running, soaked) to preload [N].
    window : (float or None, float or None)
        Least and greatest preload [N].

    Returns
    -------
    Markup or None
        None for fewer than two states.
    """
    if len(forces) < 2:
        return None
    limits = [v for v in window if v is not None]
    scale = linear([0.0, *forces.values(), *limits], BOTTOM, TOP + 18, 0.1)
    step = (RIGHT - LEFT) / len(forces)
    places = [LEFT + step * (k + 0.5) for k in range(len(forces))]
    parts = []
    if limits:
        low = scale.x(window[0]) if window[0] is not None else BOTTOM
        high = scale.x(window[1]) if window[1] is not None else TOP
        if high < low:
            parts.append(rect(LEFT, high, RIGHT - LEFT, low - high, "window"))
    parts += [line(LEFT, BOTTOM, RIGHT, BOTTOM, "axis"), line(LEFT, TOP, LEFT, BOTTOM, "axis")]
    for tick in scale.ticks():
        parts.append(line(LEFT - 4, scale.x(tick), LEFT, scale.x(tick), "axis"))
        parts.append(words(LEFT - 6, scale.x(tick) + 4, number_text(tick), "t quiet", "end"))
    steps: list[str | float] = []
    for (state, force), x in zip(forces.items(), places, strict=True):
        y = scale.x(force)
        steps += ["L" if steps else "M", x, y]
        outside = any(v is not None and sign * (force - v) > 0 for v, sign in zip(window, (-1, 1), strict=True))
        parts.append(circle(x, y, 4, "seen bad" if outside else "seen"))
        parts.append(words(x, y - 8, short_text(force, "N"), "t strong", "middle"))
        parts.append(words(x, BOTTOM + 15, told(state), "t quiet", "middle"))
    parts.append(path(steps, "thin"))
    says = "; ".join(f"{told(state)} {short_text(force, 'N')}" for state, force in forces.items())
    if limits:
        named = zip(("at least {limit}", "at most {limit}"), window, strict=True)
        ends = [say(word, limit=short_text(v, "N")) for word, v in named if v is not None]
        both = f" {say('and')} ".join(ends)
        says += f"; {say('allowed {limits}', limits=both)}"
        parts.append(words(6, BOTTOM + 32, say("shaded: {limits}", limits=both), "t quiet"))
    return drawing("temperature", WIDTH, HEIGHT + 2, say("Preload over temperature"), f"{says}.", parts)


def fit_over_speed(
    as_drawn: tuple[float, float], warm: tuple[float, float], speed_loss: float, speed: float, slow_loss: float = 0.0
) -> Markup | None:
    """The band of an interference from standstill to the highest speed, warm; the loss grows with its square.

    Parameters
    ----------
    as_drawn : (float, float)
        Smallest and largest interference at 20 degC [um].
    warm : (float, float)
        The same in use at the highest speed [um].
    speed_loss : float
        What the highest speed takes [um].
    speed : float
        The highest speed [r/min].
    slow_loss : float
        What load, heat and unlike expansion take at standstill [um], for the text.

    Returns
    -------
    Markup or None
        None for no speed.
    """
    if not speed > 0 or not all(map(math.isfinite, (*as_drawn, *warm, speed_loss, speed))):
        return None
    x = Axis(0.0, speed, LEFT + 52, RIGHT - 8)
    still = (warm[0] + speed_loss, warm[1] + speed_loss)
    y = linear([0.0, *as_drawn, *warm, *still], BOTTOM, TOP + 6, 0.06)
    shares = [k / 12 for k in range(13)]
    low = [(x.x(s * speed), y.x(still[0] - speed_loss * s * s)) for s in shares]
    high = [(x.x(s * speed), y.x(still[1] - speed_loss * s * s)) for s in shares]
    steps: list[str | float] = []
    for px, py in (*low, *reversed(high)):
        steps += ["L" if steps else "M", px, py]
    parts = [path([*steps, "Z"], "zone2"), line(LEFT, y.x(0.0), RIGHT, y.x(0.0), "zero")]
    parts.append(rect(LEFT + 16, y.x(as_drawn[1]), 14, y.x(as_drawn[0]) - y.x(as_drawn[1]), "zone strongzone"))
    parts.append(line(LEFT, TOP, LEFT, BOTTOM, "axis"))
    for tick in y.ticks():
        parts.append(line(LEFT - 4, y.x(tick), LEFT, y.x(tick), "axis"))
        parts.append(words(LEFT - 6, y.x(tick) + 4, number_text(tick), "t quiet", "end"))
    parts.append(line(LEFT, BOTTOM, RIGHT, BOTTOM, "axis"))
    parts.append(words(LEFT + 23, BOTTOM + 15, say("drawn"), "t quiet", "middle"))
    parts.append(words(LEFT + 62, BOTTOM + 15, say("warm: 0"), "t quiet"))
    parts.append(words(RIGHT, BOTTOM + 15, quantity_text(speed, "r/min"), "t quiet", "end"))
    parts.append(words(6, BOTTOM + 32, say("µm of interference; below 0: clearance"), "t quiet"))
    says = say(
        "As drawn {drawn}; warm at standstill {still}; at {speed} {fast}. Lost to speed: {loss}",
        drawn=told(fit_text(*as_drawn, "um")), still=told(fit_text(*still, "um")), speed=quantity_text(speed, "r/min"),
        fast=told(fit_text(*warm, "um")), loss=short_text(speed_loss, "um"),
    )  # fmt: skip
    if slow_loss:
        says += say(", to load and heat: {loss}", loss=short_text(slow_loss, "um"))
    return drawing("speedfit", WIDTH, HEIGHT + 2, say("Interference over speed"), f"{says}.", parts)
