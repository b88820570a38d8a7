"""Writers of the spread of a table's assemblies: text for the terminal, JSON, HTML."""

import json
from collections.abc import Sequence
from typing import Any

from attrs import asdict, frozen

from linter.model.version import __version__
from linter.model.visible import visible
from linter.model.wording import quantity_text, rounded
from linter.report.drawings.histogram import histogram
from linter.report.html import environment
from linter.review.spread.shares import CONFIDENCE, Lever, Line, Settings, Share, Spread
from linter.rulebook.model import Rulebook

SPREAD_VERSION = 1
#: Pictures on a machine's page: those beyond a limit first.
PICTURES = 16
#: What one should know before a share is believed.
CAUTIONS = (
    "The draws are independent of one another, and each follows its tolerance: a lathe that runs at one limit, a "
    "lot of bearings from one end of its class, or parts that were sorted give another share.",
    "Form, run-out, loads, temperatures and materials have their stated values in every draw.",
    "A share is no release: the gate of the review holds the worst case, and the bearing maker and a licensed "
    "engineer decide whether a share may be accepted.",
)


@frozen
class SpreadReport:
    """What the writers need: the draws of every machine, how they were drawn, of what, and by which rulebook."""

    file: str
    sha256: str
    settings: Settings
    machines: Sequence[Spread]
    rulebook: Rulebook


def percent(share: float) -> str:
    """A share in percent with two significant digits; none and all are said in full."""
    if share in (0.0, 1.0):
        return "0 %" if share == 0.0 else "100 %"
    if share > 0.99:
        return f"{100 - float(f'{100 * (1 - share):.2g}'):g} %"
    return f"{float(f'{100 * share:.2g}'):g} %"


def share_text(share: Share) -> str:
    """A share with its interval."""
    return f"{percent(share.value)} ({percent(share.low)} to {percent(share.high)})"


def how(settings: Settings) -> str:
    """How was drawn, in words."""
    shape = (
        f"normal about the middle of each tolerance with C_p {settings.cp:.3g}"
        if settings.shape == "normal"
        else "evenly within each tolerance"
    )
    measured = f", {len(settings.samples)} from measured values" if settings.samples else ""
    return f"{settings.draws} draws, seed {settings.seed}, {shape}{measured}"


def lever_text(lever: Lever, which: str) -> str:
    """What another tolerance does, in words."""
    dim = lever.dimension
    width = quantity_text(float(f"{dim.upper - dim.lower:.4g}"), dim.unit)
    after = lever.half if which == "half" else lever.double
    return f"{dim.words}: {which} of its tolerance of {width}: {percent(lever.now)} -> {percent(after)}"


def spread_text(report: SpreadReport) -> str:
    """The spread for the terminal; hidden and control characters are shown."""
    lines = [f"{report.file}: {how(report.settings)}, rulebook {report.rulebook.version}"]
    for machine in report.machines:
        lines.append(
            f"{machine.machine}: beyond a limit ({report.settings.gate} or more severe) in "
            f"{share_text(machine.any_limit)} of the assemblies; {100 * CONFIDENCE:g} % interval in brackets"
        )
        for line in sorted((x for x in machine.lines if x.share.beyond), key=lambda x: -x.share.beyond):
            where = f" at {line.station}" if line.station else ""
            most = f"; most from {line.influence[0][0].replace('@', ' at ')}" if line.influence else ""
            lines.append(f"  {line.clause}{where}: {share_text(line.share)}, in the review {line.reviewed}{most}")
        lines += [f"  tighten: {lever_text(lever, 'half')}" for lever in machine.tighten]
        lines += [f"  relax: {lever_text(lever, 'double')}" for lever in machine.relax]
        lines += [f"  {note}" for note in machine.notes]
    return "".join(visible(line) + "\n" for line in lines)


def _plain(value: Any) -> Any:
    if isinstance(value, float):
        return rounded(value)
    if isinstance(value, dict):
        return {key: _plain(item) for key, item in value.items()}
    return [_plain(item) for item in value] if isinstance(value, (list, tuple)) else value


def spread_json(report: SpreadReport) -> str:
    """The spread as JSON with sorted keys; the same bytes for the same table, rulebook and settings."""
    machines = []
    for machine in report.machines:
        content = {key: value for key, value in asdict(machine).items() if key != "levers"}
        content["tighten"] = [asdict(lever) for lever in machine.tighten]
        content["relax"] = [asdict(lever) for lever in machine.relax]
        for line in content["lines"]:
            line["influence"] = [{"dimension": k, "first": f, "total": t} for k, f, t in line["influence"]]
        machines.append(content)
    settings = report.settings
    content = {
        "format": "ringseat-spread",
        "format_version": SPREAD_VERSION,
        "tool": {"name": "ringseat", "version": __version__},
        "rulebook": {
            "name": report.rulebook.name,
            "version": report.rulebook.version,
            "sha256": report.rulebook.sha256,
        },
        "input": {"file": report.file, "sha256": report.sha256},
        "settings": {
            "draws": settings.draws,
            "seed": settings.seed,
            "shape": settings.shape,
            "cp": settings.cp,
            "gate": settings.gate,
            "confidence": CONFIDENCE,
            "measured": {key: len(values) for key, values in sorted(settings.samples.items())},
        },
        "machines": machines,
        "cautions": list(CAUTIONS),
    }
    text = json.dumps(_plain(content), sort_keys=True, ensure_ascii=False, indent=1, allow_nan=False)
    return "".join(f"\\u{ord(c):04x}" if "\ud800" <= c <= "\udfff" else c for c in text) + "\n"


def pictured(machine: Spread) -> list[Line]:
    """The lines that get a picture: those beyond a limit, then fits, clearance and preload, in the rulebook's order."""
    chosen = [line for line in machine.lines if line.share.beyond or line.clause.startswith(("fit.", "preload."))]
    order = sorted(chosen, key=lambda line: -line.share.beyond)[:PICTURES]
    return [line for line in machine.lines if line in order]


def spread_html(report: SpreadReport) -> str:
    """The spread as one HTML page in the style, and under the policy, of the findings report."""
    return (
        environment()
        .get_template("spread.html.j2")
        .render(
            report=report,
            how=how(report.settings),
            share_text=share_text,
            percent=percent,
            lever_text=lever_text,
            histogram=histogram,
            pictured=pictured,
            three=lambda value: float(f"{value:.3g}"),
            cautions=CAUTIONS,
            confidence=f"{100 * CONFIDENCE:g} %",
        )
    )
