"""What one step of each parameter moves: bars from the margin of a limit now to those after the step."""

from markupsafe import Markup

from linter.model.digits import short_number
from linter.model.matters import Matter, Matters, NearLimit
from linter.report.drawings.axis import Axis
from linter.report.drawings.svg import drawing, fitted, line, rect, words
from linter.report.language import in_words, say, told

WIDTH, LEFT, ROW = 720.0, 330.0, 34.0
#: Margins that the scale shows; a bar beyond them ends at its edge, its figure tells how far.
LEAST, MOST = -1.5, 1.5


def percent(margin: float) -> str:
    """A margin as a share of the limit."""
    return f"{short_number(100.0 * margin, '%')} %"


def limit_name(limit: NearLimit) -> str:
    """A limit by the title of its clause and its position."""
    title = told(limit.title)
    return title if limit.station is None else f"{title}, {limit.station}"


def after_text(matter: Matter) -> str:
    """The margins after a step down and up, in words."""
    margins = [(matter.less, "{margin} a step down"), (matter.more, "{margin} a step up")]
    return ", ".join(say(text, margin=percent(margin)) for margin, text in margins if margin is not None)


def step_bars(matters: Matters, most: int = 12) -> Markup | None:
    """The parameters that matter most as bars, the first of them at the top.

    Parameters
    ----------
    matters : Matters
        Of one machine.
    most : int
        Parameters shown.

    Returns
    -------
    Markup or None
        The drawing as SVG; None where no step moves anything.
    """
    shown = matters.matters[:most]
    if not shown:
        return None
    values = [v for m in shown for v in (m.limit.margin, m.less, m.more, 0.0) if v is not None]
    low, high = max(min(values), LEAST), min(max(values), MOST)
    room = max(high - low, 0.1)
    scale = Axis(low - 0.05 * room, high + 0.05 * room, LEFT, WIDTH - 20)
    bottom = 20.0 + ROW * len(shown)
    zero = scale.x(0.0)
    parts = [rect(scale.left, 14, zero - scale.left, bottom - 14, "zone2")] if zero > scale.left else []
    parts += [line(zero, 10, zero, bottom, "limit"), words(zero, 8, say("limit"), "t quiet", "middle")]
    texts, y = [], 20.0
    for matter in shown:
        now = scale.x(matter.limit.margin)
        ends = [(scale.x(m), m < -1e-9) for m in (matter.less, matter.more) if m is not None]
        for end, beyond in ends:
            parts.append(rect(now, y + 5, end - now, 11, "seen bad" if beyond else "okay"))
        parts.append(line(now, y + 1, now, y + 20, "thin"))
        name, step = in_words(matter.parameter), say("step {size}", size=told(matter.step))
        parts.append(words(4, y + 11, name, "t strong"))
        parts.append(words(4, y + 25, fitted(f"{step}: {limit_name(matter.limit)}", LEFT - 12), "t quiet"))
        after = f" {say('or')} ".join(percent(margin) for margin in (matter.less, matter.more) if margin is not None)
        texts.append(
            say(
                "{name}: {limit}, {now} to {after}",
                name=name, limit=limit_name(matter.limit), now=percent(matter.limit.margin), after=after,
            )
        )  # fmt: skip
        y += ROW
    parts += [line(scale.left, bottom, scale.right, bottom, "axis")]
    for tick in scale.ticks():
        parts.append(words(scale.x(tick), bottom + 14, percent(tick), "t quiet", "middle"))
    says = say("{steps}. Margins are shares of the limit; below 0 is beyond it.", steps="; ".join(texts))
    return drawing("whole", WIDTH, bottom + 20, say("What one step of each parameter moves"), says, parts)
