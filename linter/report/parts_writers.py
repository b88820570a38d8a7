"""Writers of a list of measured values judged: text for the terminal, JSON, HTML."""

import json
from collections.abc import Sequence
from typing import Any

from attrs import asdict, frozen

from linter.model.version import __version__
from linter.model.visible import visible
from linter.model.wording import quantity_text, rounded
from linter.reading.words.measured_words import UNITS
from linter.report.html import environment
from linter.review.parts.conformity import VERDICTS
from linter.review.parts.drawing import Judged
from linter.review.parts.judge import PartsReview
from linter.review.parts.match import Matching, Set
from linter.rulebook.model import Rulebook

PARTS_VERSION = 1
CAUTIONS = (
    "A measured value is that of the part in hand and never enters a review of the design.",
    "Inside function is a statement about this rulebook with the measured values put in; the drawing is not met by it, "
    "and a concession is for those who answer for the drawing.",
    "The bearing maker and a licensed engineer have the last word.",
)


@frozen
class PartsReport:
    """What the writers need: the list judged, the sets that go together, of which files, by which rulebook."""

    table: str
    table_sha256: str
    file: str
    sha256: str
    drawing: str
    gate: str
    review: PartsReview
    matchings: Sequence[Matching]
    problems: Sequence[str]
    rulebook: Rulebook


def name_of(item: Judged) -> str:
    """A characteristic with its place, in words."""
    name = item.measured.parameter.replace("_", " ")
    where = f" at {item.station}" if item.station else ""
    part = f", part {item.measured.part}" if item.measured.part else ""
    return f"{name}{where}{part}"


def limits_of(item: Judged) -> str:
    """The limits of the drawing in words."""
    low, high = item.lower, item.upper
    if low is not None and high is not None:
        return f"{quantity_text(low, item.unit)} to {quantity_text(high, item.unit)}"
    if high is not None:
        return f"at most {quantity_text(high, item.unit)}"
    return "none stated" if low is None else f"at least {quantity_text(low, item.unit)}"


def value_of(item: Judged) -> str:
    """The measured value with its uncertainty."""
    value = quantity_text(rounded(item.measured.value), item.unit)
    return f"{value}, U = {quantity_text(item.uncertainty, item.unit)}" if item.uncertainty else value


def beyond(item: Judged) -> str:
    """By how much a value lies beyond its limit, in micrometres for lengths."""
    value = item.measured.value
    over = 0.0
    if item.upper is not None and value > item.upper:
        over = value - item.upper
    elif item.lower is not None and value < item.lower:
        over = item.lower - value
    if not over:
        return "within its limits"
    unit, factor = ("um", 1000.0) if item.unit == "mm" else (item.unit, 1.0)
    return f"{quantity_text(float(f'{factor * over:.4g}'), unit)} beyond"


def request_text(item: Judged, report: PartsReport) -> str:
    """A request for a concession, ready to be sent: what, by how much, and what the rulebook says with it."""
    judged = [t for t in item.touching if t.outcome in ("met", "finding")]
    clauses = "; ".join(
        f"{t.title} ({t.clause}): {t.severity or t.outcome}"
        + (f", {quantity_text(float(f'{t.observed:.4g}'), t.unit)}" if t.observed is not None else "")
        for t in judged
    )
    return (
        f"{item.machine}, {report.drawing}: {name_of(item)}. Drawing: {limits_of(item)}. Measured: {value_of(item)}, "
        f"{beyond(item)}. With this part, rulebook {report.rulebook.version} finds nothing {report.gate} or more "
        f"severe in the clauses that use it: {clauses}. To be decided by those who answer for the drawing."
    )


def set_text(entry: Set) -> str:
    """Parts that go together."""
    names = [
        f"{kind} {name}"
        for kind, name in (("shaft", entry.shaft), ("bearing", entry.bearing), ("housing", entry.housing))
        if name
    ]
    fits = [
        f"{kind} {quantity_text(float(f'{abs(value):.3g}'), 'um')} {'interference' if value >= 0 else 'clearance'}"
        for kind, value in (("shaft seat", entry.shaft_interference), ("housing seat", entry.housing_interference))
        if value is not None
    ]
    return f"{' + '.join(names)}: {', '.join(fits)}"


def window_text(matching: Matching) -> str:
    """The windows of the fits in words; positive is interference."""
    texts = [
        f"{side} seat none" if window.empty else f"{side} seat {window.low:g} to {window.high:g} µm"
        for side, window in matching.windows.items()
    ]
    return f"interference (negative is clearance): {', '.join(texts)}"


def parts_text(report: PartsReport) -> str:
    """The judgement for the terminal; hidden and control characters are shown."""
    review = report.review
    counts = [f"{sum(j.verdict == word for j in review.judged)} {word}" for word in (*VERDICTS, "no limits")]
    lines = [f"{report.file} against {report.table}: {', '.join(counts)}; rulebook {report.rulebook.version}"]
    lines += [
        f"  {item.measured.place}: {name_of(item)}: {item.verdict}: measured {value_of(item)}, "
        f"drawing {limits_of(item)}; {item.function} function{f'; {item.note}' if item.note else ''}"
        for item in review.judged
        if item.verdict in VERDICTS[1:]
    ]
    for part in review.parts:
        label = f"{part.machine}{f', part {part.part}' if part.part else ''}"
        why = "; ".join(f"{t.clause} {t.severity}" for t in part.findings[:5])
        if len(review.parts) <= 20 or part.gate != "open":
            lines.append(f"  {label}: gate {part.gate} with the measured values" + (f": {why}" if why else ""))
    lines += [f"  request: {request_text(item, report)}" for item in review.judged if item.request]
    lines += [f"  not on the drawing: {text}" for text in review.not_on_drawing]
    lines += [f"  not used: {text}" for text in report.problems]
    for matching in report.matchings:
        lines.append(
            f"  {matching.machine} {matching.station}: at most {matching.most} sets; {window_text(matching)}"
            + (f"; {matching.note}" if matching.note else "")
        )
        lines += [f"    {set_text(entry)}" for entry in matching.sets[:20]]
        if len(matching.sets) > 20:
            lines.append(f"    and {len(matching.sets) - 20} more")
    return "".join(visible(line) + "\n" for line in lines)


def _plain(value: Any) -> Any:
    if isinstance(value, float):
        return rounded(value) if value == value and abs(value) != float("inf") else None
    if isinstance(value, dict):
        return {key: _plain(item) for key, item in value.items()}
    return [_plain(item) for item in value] if isinstance(value, (list, tuple)) else value


def parts_json(report: PartsReport) -> str:
    """The judgement as JSON with sorted keys."""
    judged = [
        {
            "parameter": j.measured.parameter,
            "machine": j.machine,
            "station": j.station,
            "part": j.measured.part,
            "place": str(j.measured.place),
            "measured": j.measured.value,
            "uncertainty": j.uncertainty,
            "unit": j.unit,
            "lower": j.lower,
            "upper": j.upper,
            "verdict": j.verdict,
            "function": j.function,
            "note": j.note,
            "clauses": [asdict(t) for t in j.touching if t.outcome == "finding"],
        }
        for j in report.review.judged
    ]
    content = {
        "format": "ringseat-parts",
        "format_version": PARTS_VERSION,
        "tool": {"name": "ringseat", "version": __version__},
        "rulebook": {
            "name": report.rulebook.name,
            "version": report.rulebook.version,
            "sha256": report.rulebook.sha256,
        },
        "input": {"file": report.table, "sha256": report.table_sha256},
        "measured": {"file": report.file, "sha256": report.sha256},
        "status": report.review.status,
        "gate_severity": report.gate,
        "values": judged,
        "parts": [asdict(part) for part in report.review.parts],
        "requests": [request_text(j, report) for j in report.review.judged if j.request],
        "not_on_drawing": list(report.review.not_on_drawing),
        "not_used": list(report.problems),
        "matchings": [asdict(matching) for matching in report.matchings],
        "cautions": list(CAUTIONS),
    }
    text = json.dumps(_plain(content), sort_keys=True, ensure_ascii=False, indent=1, allow_nan=False)
    return "".join(f"\\u{ord(c):04x}" if "\ud800" <= c <= "\udfff" else c for c in text) + "\n"


def parts_html(report: PartsReport) -> str:
    """The judgement as one HTML page in the style, and under the policy, of the findings report."""
    return (
        environment()
        .get_template("measured.html.j2")
        .render(
            report=report,
            review=report.review,
            name_of=name_of,
            limits_of=limits_of,
            value_of_measured=value_of,
            request_text=request_text,
            set_text=set_text,
            window_text=window_text,
            cautions=CAUTIONS,
            verdicts=VERDICTS,
            of_parts=tuple(UNITS),
        )
    )
