"""The chain of dimensions that the spring length closes: each member with its share of the tolerance."""

import math

from markupsafe import Markup

from linter.mechanics.tolerance_chain import parse_chain
from linter.model.digits import short_number
from linter.model.wording import number_text
from linter.report.drawings.axis import Axis
from linter.report.drawings.svg import drawing, line, rect, text_width, words
from linter.report.language import say

WIDTH, ROW = 340.0, 30.0


def spring_stack(text: str) -> Markup | None:
    """The members of a chain as bars end to end, the closing dimension last.

    Parameters
    ----------
    text : str
        As ``spacer_stack`` states it: ``+41.2±0.05 -12±0.02 -4 0/-0.12``.

    Returns
    -------
    Markup or None
        None where it cannot be read as a chain.
    """
    try:
        chain = parse_chain(text)
    except ValueError:
        return None
    members = [
        (float(s), float(n), float(lo), float(up))
        for s, n, lo, up in zip(chain.sign, chain.nominal, chain.lower, chain.upper, strict=True)
    ]
    ends, at = [0.0], 0.0
    for sign, nominal, _, _ in members:
        at += sign * nominal
        ends.append(at)
    if not members or not all(map(math.isfinite, ends)) or at <= 0:
        return None
    widths = [upper - lower for _, _, lower, upper in members]
    whole = sum(widths)
    low, high = min(ends), max(ends)
    scale = Axis(low, high if high > low else low + 1.0, 8, WIDTH - 8)
    parts, told = [], []
    y = 4.0
    for k, (sign, nominal, lower, upper) in enumerate(members):
        start, end = scale.x(ends[k]), scale.x(ends[k + 1])
        share = widths[k] / whole if whole > 0 else 0.0
        lead = "+" if sign > 0 else "\u2212"
        size = f"{lead}{number_text(nominal, 'mm')} {_deviations(lower, upper)}".rstrip()
        figure = say("{share} % of the tolerance", share=short_number(100.0 * share, "%"))
        parts.append(words(6, y + 11, size, "t strong"))
        parts.append(words(WIDTH - 4, y + 11, figure, "t quiet", "end"))
        parts.append(rect(min(start, end), y + 15, abs(end - start), 7, "zone" if sign > 0 else "zone2"))
        if k + 1 < len(members):
            parts.append(line(end, y + 15, end, y + ROW + 22, "thin"))
        told.append(f"{size} mm ({figure})")
        y += ROW
    closing = f"{say('spring')} {number_text(ends[-1], 'mm')} \u00b1{number_text(whole / 2, 'mm')} mm"
    room = WIDTH - 8 - text_width(closing)
    parts.append(words(6 if room > 0 else 0, y + 12, closing, "t strong"))
    parts.append(rect(scale.x(0.0), y + 16, scale.x(ends[-1]) - scale.x(0.0), 9, "zone strongzone"))
    says = say(
        "{members}. The chain closes on the spring: {length} mm, worst case {width} mm in all.",
        members="; ".join(told), length=number_text(ends[-1], "mm"), width=number_text(whole, "mm"),
    )  # fmt: skip
    return drawing("stack", WIDTH, y + 30, say("Chain of dimensions that the spring length closes"), says, parts)


def _deviations(lower: float, upper: float) -> str:
    if lower == upper == 0:
        return ""
    if upper == -lower:
        return f"\u00b1{number_text(upper, 'mm')}"
    return f"{'+' if upper > 0 else ''}{number_text(upper, 'mm')}/{number_text(lower, 'mm')}"
