"""Writers of a comparison of two reviews: text for the terminal, JSON, HTML."""

import json

from attrs import asdict

from linter.model.comparison import KINDS, Comparison, Difference
from linter.model.visible import visible
from linter.model.wording import quantity_text
from linter.report.html import environment

COMPARISON_VERSION = 1

MEANINGS = {
    "appeared": "Findings that were not there before.",
    "changed": "Findings in both, with a different severity, value, limit or concession.",
    "newly not assessed": "What was assessed before and no longer can be. It is not cleared.",
    "no longer reviewed": "Findings and clauses not assessed whose clause or position is gone. They are not cleared.",
    "cleared": "Findings that are met now, or no longer apply.",
    "no longer not assessed": "What can be assessed now, without a finding.",
}
CAUSES = {
    "table": "The table",
    "rulebook": "The rulebook",
    "table and rulebook": "The table and the rulebook",
    "concession": "A concession",
    "program": "The program",
    "not told": "Not evident from the two files",
}


def change_text(difference: Difference) -> str:
    """Outcome or severity before and after, in a few words."""
    words = []
    for state in (difference.old, difference.new):
        if state is None:
            words.append("not reviewed")
        elif state.outcome == "conceded":
            words.append(f"{state.severity}, conceded by {state.concession}")
        else:
            words.append(state.severity or state.outcome)
    return words[0] if words[0] == words[1] else f"{words[0]} -> {words[1]}"


def value_change_text(difference: Difference) -> str:
    """Observed value and limits before and after, where both sides have them and they differ."""
    old, new = difference.old, difference.new
    if old is None or new is None:
        return ""
    parts = []
    for name, word in (("observed", "observed"), ("lower", "at least"), ("upper", "at most")):
        before, after = getattr(old, name), getattr(new, name)
        if before is not None and after is not None and before != after:
            was, now = (quantity_text(q["value"], q["unit"]) for q in (before, after))
            parts.append(f"{word} {was} -> {now}")
    return ", ".join(parts)


def comparison_text(comparison: Comparison) -> str:
    """The comparison for the terminal; hidden and control characters are shown."""
    old, new = comparison.old, comparison.new
    lines = [
        f"old: {old.file}: {old.table}, {old.rulebook}, gate {old.gate}",
        f"new: {new.file}: {new.table}, {new.rulebook}, gate {new.gate}",
        *comparison.notes,
        ", ".join(f"{number} {kind}" for kind, number in comparison.counts.items())
        + f", {comparison.unchanged} findings unchanged",
    ]
    for kind in KINDS:
        found = comparison.of(kind)
        if found:
            lines += ["", f"{kind.capitalize()}:"]
        for entry in found:
            lines.append(f"  {entry.where}: {entry.clause}: {change_text(entry)} [{entry.cause}]")
            state = entry.old if kind in ("cleared", "no longer reviewed") else entry.new
            details = [value_change_text(entry), state.message if state is not None else "", *entry.because]
            lines += [f"      {line}" for line in details if line]
    if not comparison.differences:
        lines += ["", "No difference in findings or in what is not assessed."]
    return "".join(visible(line) + "\n" for line in lines)


def comparison_json(comparison: Comparison) -> str:
    """The comparison as JSON with sorted keys; see ``schemas/comparison.schema.json``."""
    content = {
        "format": "ringseat-comparison",
        "format_version": COMPARISON_VERSION,
        "old": asdict(comparison.old),
        "new": asdict(comparison.new),
        "summary": {**comparison.counts, "unchanged": comparison.unchanged},
        "differences": [asdict(difference) for difference in comparison.differences],
        "values": [asdict(change) for change in comparison.values],
        "notes": list(comparison.notes),
    }
    text = json.dumps(content, sort_keys=True, ensure_ascii=False, indent=1, allow_nan=False)
    return "".join(f"\\u{ord(c):04x}" if "\ud800" <= c <= "\udfff" else c for c in text) + "\n"


def comparison_html(comparison: Comparison) -> str:
    """The comparison as one HTML page in the style, and under the policy, of the findings report."""
    template = environment().get_template("comparison.html.j2")
    return template.render(
        comparison=comparison,
        kinds=KINDS,
        meanings=MEANINGS,
        causes=CAUSES,
        change_text=change_text,
        value_change_text=value_change_text,
    )
