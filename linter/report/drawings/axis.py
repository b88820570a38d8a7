"""A scale with round ticks, linear or logarithmic, shared by the diagrams."""

import math
from collections.abc import Iterable

from attrs import frozen

from linter.model.wording import number_text, unit_text
from linter.report.drawings.svg import line, text_width, words


@frozen
class Axis:
    """Values from ``low`` to ``high`` laid out from ``left`` to ``right``."""

    low: float
    high: float
    left: float
    right: float
    logarithmic: bool = False

    def x(self, value: float) -> float:
        """Place of a value; one outside the scale stands at its end."""
        value = min(max(value, self.low), self.high)
        if self.logarithmic:
            share = math.log(value / self.low) / math.log(self.high / self.low)
        else:
            share = (value - self.low) / (self.high - self.low)
        return self.left + share * (self.right - self.left)

    def ticks(self) -> list[float]:
        """Round values, few enough to be read."""
        if self.logarithmic:
            powers = range(math.ceil(math.log10(self.low) - 1e-9), math.floor(math.log10(self.high) + 1e-9) + 1)
            marks = [10.0**p for p in powers]
            if len(marks) < 3:
                marks = [m * 10.0**p for p in range(powers.start - 1, powers.stop + 1) for m in (1, 2, 5)]
            return [m for m in marks if self.low * (1 - 1e-9) <= m <= self.high * (1 + 1e-9)]
        raw = (self.high - self.low) / 4
        power = 10.0 ** math.floor(math.log10(raw))
        step = next(m * power for m in (1, 2, 2.5, 5, 10) if m * power >= raw * (1 - 1e-9))
        first, last = math.ceil(self.low / step - 1e-9), math.floor(self.high / step + 1e-9)
        return [k * step for k in range(first, last + 1)]

    def drawn(self, y: float, unit: str) -> list[str]:
        """The axis line with ticks and figures below it, the unit at its end."""
        parts = [line(self.left, y, self.right, y, "axis")]
        end = self.left - 100.0
        name = unit_text(unit)
        room = self.right + 16 - text_width(name) - 6
        for tick in self.ticks():
            text, at = number_text(tick), self.x(tick)
            parts.append(line(at, y, at, y + 4, "axis"))
            half = text_width(text) / 2
            if at - half > end + 4 and at + half < room:
                parts.append(words(at, y + 15, text, "t quiet", "middle"))
                end = at + half
        parts.append(words(self.right + 16, y + 15, name, "t quiet", "end"))
        return parts


def linear(values: Iterable[float], left: float, right: float, room: float = 0.08) -> Axis:
    """A linear scale over the values with some room at both ends (none below zero where nothing is negative)."""
    seen = list(values)
    low, high = min(seen), max(seen)
    width = (high - low) or max(abs(high), 1.0)
    return Axis(low - room * width if low < 0 else low, high + room * width, left, right)


def fitting(values: Iterable[float], left: float, right: float) -> Axis:
    """A scale from zero, or a logarithmic one where the values lie more than a factor of 40 apart."""
    seen = [v for v in values if v > 0] or [1.0]
    low, high = min(seen), max(seen)
    if high / low > 40:
        return Axis(low / 1.6, high * 1.6, left, right, logarithmic=True)
    return Axis(0.0, high * 1.12, left, right)
