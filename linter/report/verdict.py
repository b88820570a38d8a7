"""The verdict in words: why the gate stands as it does, and what that rests on."""

from linter.model.findings import ReviewResult
from linter.report.language import name_of, say, told

#: Said of a table that states nothing a clause about a seat could be held against.
EMPTY = "the table states too little of any bearing position; is it filled in?"


def gate_reasons(result: ReviewResult) -> tuple[str, ...]:
    """Why the gate stands as it does, one sentence each."""
    outcomes = result.outcomes
    closing = len(result.closing)
    severity = told(result.gate_severity)
    grade = severity if result.gate_severity == "critical" else say("{severity} or more severe", severity=severity)
    reasons = []
    if closing:
        reasons.append(_by("{count} finding is {grade}.", "{count} findings are {grade}.", closing, grade=grade))
    if result.failures:
        reasons.append(
            _by("{count} clause could not be run.", "{count} clauses could not be run.", len(result.failures))
        )
    if result.complete_wanted and outcomes["not assessed"]:
        one = "{count} assessment could not be made, and a complete review was asked for."
        many = "{count} assessments could not be made, and a complete review was asked for."
        reasons.append(_by(one, many, outcomes["not assessed"]))
    if result.nothing_assessed:
        reasons.append(say("Nothing could be assessed: {reason}.", reason=told(EMPTY)))
    if result.left_out:
        one = "Only part of the rulebook was asked for: {count} clause left out."
        many = "Only part of the rulebook was asked for: {count} clauses left out."
        reasons.append(_by(one, many, len(result.left_out)))
    if result.gate == "undecided" and result.unjudged:
        one = "No finding is {grade}, but {count} assessment that must be judged could not be."
        many = "No finding is {grade}, but {count} assessments that must be judged could not be."
        reasons.append(_by(one, many, len(result.unjudged), grade=grade))
        if result.undecided_passes:
            reasons.append(say("By option an undecided gate passes; nobody has judged them."))
    if not reasons:
        reasons.append(say("No finding is {grade}.", grade=grade))
    return tuple(reasons)


def _by(one: str, many: str, count: int, **values: str) -> str:
    """One of two messages by a count."""
    return say(one if count == 1 else many, count=count, **values)


def _cut(text: str, most: int = 110) -> str:
    """The first words of a text for the terminal, which hold the reason; the report has all of it."""
    return text if len(text) <= most else f"{text[: most - 1].rstrip()}…"


def not_used(result: ReviewResult, most: int = 5) -> str:
    """Names of columns that were not used, the first of them and a count; empty where all were."""
    names = list(dict.fromkeys(entry.name for entry in result.unrecognised if entry.name))
    more = f" {say('and {count} more', count=len(names) - most)}" if len(names) > most else ""
    return ", ".join(name_of(name) for name in names[:most]) + more


def rests_on(result: ReviewResult) -> tuple[str, ...]:
    """What else a verdict rests on, piece by piece: values wanted and assumed, clauses loosened, columns not used."""
    pieces = [told(EMPTY)] if result.nothing_assessed else []
    if result.gate == "undecided":
        most_wanted = sorted(result.needed, key=lambda entry: -len(entry.clauses))
        first = ", ".join(told(str(entry)) for entry in most_wanted[:3])
        more = f" {say('and {count} more', count=len(result.needed) - 3)}" if len(result.needed) > 3 else ""
        if result.needed:
            one, many = "{count} value would decide it: {values}", "{count} values would decide it: {values}"
            pieces.append(_by(one, many, len(result.needed), values=f"{first}{more}"))
        beyond = sum(not item.missing for item in result.unjudged)
        if beyond:
            one = "{count} assessment that must be judged beyond the tables of its clause"
            many = "{count} assessments that must be judged beyond the tables of its clause"
            pieces.append(_by(one, many, beyond))
        if result.undecided_passes:
            pieces.append(say("undecided passes, as asked"))
    if result.plan_result is not None:
        one, many = "plan: {count} change, gate {gate} with it", "plan: {count} changes, gate {gate} with them"
        if result.plan_result.gate == "closed":
            one = "plan: {count} change, gate still {gate} with it"
            many = "plan: {count} changes, gate still {gate} with them"
        gate = told(result.plan_result.gate)
        pieces.append(
            _by(one, many, len(result.plan), gate=gate)
            if result.plan
            else say("no change of sizes and tolerances helps")
        )
    if result.left_out:
        pieces.append(
            _by("{count} clause left out as asked", "{count} clauses left out as asked", len(result.left_out))
        )
    if void := [note for note in result.concessions if note.state != "applied"]:
        numbers = [f"{note.number} {told(note.state)} ({_cut(told(note.text))})" for note in void[:3]]
        more = f" {say('and {count} more', count=len(void) - 3)}" if len(void) > 3 else ""
        pieces.append(say("concessions not applied: {numbers}", numbers=", ".join(numbers) + more))
    if result.carried:
        pieces.append(_by("rests on {count} assumed value", "rests on {count} assumed values", result.carried))
    if result.rulebook.loosened:
        one = "{count} limit loosened or switched off by a layer"
        many = "{count} limits loosened or switched off by a layer"
        pieces.append(_by(one, many, len(result.rulebook.loosened)))
    if unused := not_used(result):
        pieces.append(say("not used: {names}", names=unused))
    return tuple(pieces)


def summary_line(result: ReviewResult) -> str:
    """One line for the terminal: verdict, counts of findings, what was not assessed, what the verdict rests on."""
    counts = [f"{number} {severity}" for severity, number in result.severities.items() if number]
    words = ", ".join(counts) if counts else "no findings"
    outcomes = result.outcomes
    extra = "".join(f", {outcomes[o]} {o}" for o in ("conceded", "not assessed") if outcomes[o])
    line = f"{result.input.file}: gate {result.gate} at {result.gate_severity}: {words}, {outcomes['met']} met{extra}"
    return "; ".join((line, *rests_on(result)))
