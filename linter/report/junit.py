"""The result as JUnit XML, for build servers: one suite per machine, one case per finding and per gap.

What is met and not applicable is one case of each suite that counts it, unless a case of its own is asked for each.

There is no standard for this format; the common core that build servers read is written: ``testsuites``,
``testsuite``, ``testcase`` with at most one of ``failure``, ``error`` and ``skipped``, ``system-out``, ``properties``.
A closed or undecided gate always shows as at least one failure or error, an open one as none; so does an undecided one
that the caller lets pass.
"""

from collections.abc import Iterable, Mapping
from xml.etree import ElementTree as ET

from linter.model.findings import Assessment, MachineRecord, Quantity, ReviewResult, at_least
from linter.model.visible import visible
from linter.model.wording import quantity_text
from linter.report.cells import cells_to_change, sentence, what_to_change


def junit_text(result: ReviewResult, *, passes: bool = False) -> str:
    """The result as JUnit XML.

    Parameters
    ----------
    result : ReviewResult
        As reviewed. A finding at or above its gate severity is a failure, one below it stands in ``system-out``; what
        could not be assessed is skipped with the reason, or an error where it must be judged or a complete review was
        asked for; a clause that failed to run is always an error, and so is a review in which nothing could be
        assessed.
    passes : bool
        Whether each clause that is met or not applicable is a case of its own; else one case for each machine counts
        them, so that a suite never stands empty.

    Returns
    -------
    str
        XML 1.0, the same for the same result; it can be encoded as UTF-8. Characters that XML forbids are shown.
    """
    top = ET.Element("testsuites", {"name": visible(f"{result.tool}: {result.input.file}")})
    by_machine: dict[str, list[Assessment]] = {record.machine: [] for record in result.machines}
    for item in result.assessments:
        by_machine.setdefault(item.machine, []).append(item)
    records = {record.machine: record for record in result.machines}
    facts = _facts(result)
    suites = [
        _suite(result, machine, {**facts, **_drawing(records.get(machine))}, items, passes)
        for machine, items in by_machine.items()
    ]
    suites += _whole(result)
    top.extend(suites)
    for key in ("tests", "failures", "errors", "skipped"):
        top.set(key, str(sum(int(suite.get(key, "0")) for suite in suites)))
    ET.indent(top, " ")
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + ET.tostring(top, encoding="unicode") + "\n"


def _whole(result: ReviewResult) -> list[ET.Element]:
    """A suite about the review as a whole, where something keeps the gate closed that no assessment shows."""
    shown = {item.clause for item in result.to_act_on if item.outcome == "not assessed"}
    reasons = [failure.text for failure in result.failures if failure.clause not in shown]
    if result.nothing_assessed:
        reasons.append("nothing could be assessed, so the gate is closed")
    cases = []
    for number, reason in enumerate(reasons, 1):
        case = ET.Element("testcase", {"classname": "review", "name": f"the review as a whole, {number}"})
        ET.SubElement(case, "error", {"type": "review", "message": visible(reason)}).text = visible(reason)
        cases.append(case)
    return [_counted(ET.Element("testsuite", {"name": "review"}), cases)] if cases else []


def _facts(result: ReviewResult) -> dict[str, str]:
    """What every suite says of the review; the drawing is that of each machine."""
    return {
        "file": result.input.file,
        "sha256": result.input.sha256,
        **_drawing(None),
        "rulebook": f"{result.rulebook.name} {result.rulebook.version}",
        "rulebook_sha256": result.rulebook.sha256,
        "tool": f"{result.tool} {result.tool_version}",
        "gate": result.gate,
        "gate_severity": result.gate_severity,
        "undecided_passes": "yes" if result.undecided_passes else "no",
        "values_wanted": str(len(result.needed)),
        "assumed_values": str(result.carried),
        "loosened": str(len(result.rulebook.loosened)),
    }


def _drawing(record: MachineRecord | None) -> dict[str, str]:
    return {
        "drawing_number": (record.drawing_number if record else None) or "not stated",
        "drawing_revision": (record.drawing_revision if record else None) or "not stated",
    }


def _suite(
    result: ReviewResult, machine: str, facts: Mapping[str, str], items: list[Assessment], passes: bool
) -> ET.Element:
    suite = ET.Element("testsuite", {"name": visible(machine)})
    properties = ET.SubElement(suite, "properties")
    for name, value in facts.items():
        ET.SubElement(properties, "property", {"name": name, "value": visible(value)})
    shown = [item for item in items if passes or item.outcome not in ("met", "not applicable")]
    cases = [_case(result, item) for item in shown]
    if len(shown) < len(items):
        counts = {outcome: sum(item.outcome == outcome for item in items) for outcome in ("met", "not applicable")}
        name = ", ".join(f"{count} {outcome}" for outcome, count in counts.items() if count)
        cases.append(ET.Element("testcase", {"classname": visible(machine), "name": f"clauses: {name}"}))
    suite = _counted(suite, cases)
    lines = [visible(f"concession {note.number}, {note.state}: {note.text}") for note in result.concessions]
    lines += [visible(f"note: {note}") for note in result.notes]
    if lines:
        ET.SubElement(suite, "system-out").text = "\n".join(lines)
    return suite


def _counted(suite: ET.Element, cases: Iterable[ET.Element]) -> ET.Element:
    suite.extend(cases)
    for key, tag in (("failures", "failure"), ("errors", "error"), ("skipped", "skipped")):
        suite.set(key, str(len(suite.findall(f"testcase/{tag}"))))
    suite.set("tests", str(len(suite.findall("testcase"))))
    return suite


def _is_error(result: ReviewResult, item: Assessment) -> bool:
    """Whether something not assessed keeps the gate from opening."""
    if result.complete_wanted or any(item.clause == failure.clause for failure in result.failures):
        return True
    return item.must and not result.undecided_passes


def _case(result: ReviewResult, item: Assessment) -> ET.Element:
    where = visible(item.machine) if item.station is None else f"{visible(item.machine)}.{visible(item.station)}"
    case = ET.Element("testcase", {"classname": where, "name": f"{visible(item.clause)}: {visible(item.title)}"})
    message = visible(item.message)
    if item.outcome == "finding" and at_least(item.severity, result.gate_severity):
        failure = ET.SubElement(case, "failure", {"type": str(item.severity), "message": message})
        failure.text = _details(item)
    elif item.outcome == "not assessed":
        if _is_error(result, item):
            error = ET.SubElement(case, "error", {"type": "not assessed", "message": message})
            error.text = _details(item)
        else:
            ET.SubElement(case, "skipped", {"message": _reason("not assessed", message)})
    elif item.outcome == "not applicable":
        ET.SubElement(case, "skipped", {"message": _reason("not applicable", message)})
    elif item.outcome == "finding":
        ET.SubElement(case, "system-out").text = f"{item.severity}, below the gate: {_details(item)}"
    elif item.outcome == "conceded":
        number = visible(str(item.concession))
        ET.SubElement(case, "system-out").text = f"{item.severity}, conceded by {number}: {_details(item)}"
    return case


def _reason(outcome: str, message: str) -> str:
    """The reason with the outcome before it, once."""
    return f"{outcome}: {message[len(outcome) + 2 :] if message.lower().startswith(f'{outcome}: ') else message}"


def _details(item: Assessment) -> str:
    lines = [sentence(item.message), what_to_change(item)]
    limits = [
        f"{word} {quantity_text(quantity.value, quantity.unit)}"
        for word, quantity in (("observed", item.observed), ("at least", item.lower), ("at most", item.upper))
        if isinstance(quantity, Quantity)
    ]
    lines.append(", ".join(limits))
    change = cells_to_change(item)
    lines += [f"change {used.place}: {used.parameter}, now {used.text}" for used in change]
    others = [f"{used.place.short()} {used.parameter} {used.text}" for used in item.places if used not in change]
    lines.append(f"rests also on {'; '.join(others)}" if others else "")
    return "\n".join(visible(line) for line in lines if line)
