"""The verdict in words: why the gate stands as it does, and what that rests on."""

from linter.model.findings import ReviewResult, at_least

#: Said of a table that states nothing a clause about a seat could be held against.
EMPTY = "the table states too little of any bearing position; is it filled in?"


def gate_reasons(result: ReviewResult) -> tuple[str, ...]:
    """Why the gate stands as it does, one sentence each."""
    outcomes = result.outcomes
    closing = sum(a.outcome == "finding" and at_least(a.severity, result.gate_severity) for a in result.assessments)
    grade = result.gate_severity if result.gate_severity == "critical" else f"{result.gate_severity} or more severe"
    reasons = []
    if closing:
        reasons.append(f"{closing} {'finding is' if closing == 1 else 'findings are'} {grade}.")
    if result.failures:
        count = len(result.failures)
        reasons.append(f"{count} {'clause' if count == 1 else 'clauses'} could not be run.")
    if result.complete_wanted and outcomes["not assessed"]:
        reasons.append(
            f"{_things(outcomes['not assessed'], 'assessment')} could not be made, and a complete review was asked for."
        )
    if result.nothing_assessed:
        reasons.append(f"Nothing could be assessed: {EMPTY}.")
    if result.left_out:
        count = len(result.left_out)
        reasons.append(f"Only part of the rulebook was asked for: {_things(count, 'clause')} left out.")
    if result.gate == "undecided" and result.unjudged:
        count = len(result.unjudged)
        reasons.append(f"No finding is {grade}, but {_things(count, 'assessment')} that must be judged could not be.")
        if result.undecided_passes:
            reasons.append("By option an undecided gate passes; nobody has judged them.")
    if not reasons:
        reasons.append(f"No finding is {grade}.")
    return tuple(reasons)


def _things(count: int, word: str) -> str:
    return f"{count} {word if count == 1 else word + 's'}"


def not_used(result: ReviewResult, most: int = 5) -> str:
    """Names of columns that were not used, the first of them and a count; empty where all were."""
    names = list(dict.fromkeys(entry.name for entry in result.unrecognised if entry.name))
    more = f" and {len(names) - most} more" if len(names) > most else ""
    return ", ".join(names[:most]) + more


def rests_on(result: ReviewResult) -> tuple[str, ...]:
    """What else a verdict rests on, piece by piece: values wanted and assumed, clauses loosened, columns not used."""
    pieces = [EMPTY] if result.nothing_assessed else []
    if result.gate == "undecided":
        most_wanted = sorted(result.needed, key=lambda entry: -len(entry.clauses))
        first = ", ".join(str(entry) for entry in most_wanted[:3])
        more = f" and {len(result.needed) - 3} more" if len(result.needed) > 3 else ""
        if result.needed:
            pieces.append(f"{_things(len(result.needed), 'value')} would decide it: {first}{more}")
        beyond = sum(not item.missing for item in result.unjudged)
        if beyond:
            pieces.append(f"{_things(beyond, 'assessment')} that must be judged beyond the tables of its clause")
        if result.undecided_passes:
            pieces.append("undecided passes, as asked")
    if result.plan_result is not None:
        count = len(result.plan)
        told = f"{_things(count, 'change')}, gate {result.plan_result.gate} with {'it' if count == 1 else 'them'}"
        pieces.append(f"plan: {told}" if count else "no change of sizes and tolerances helps")
    if result.left_out:
        pieces.append(f"{_things(len(result.left_out), 'clause')} left out as asked")
    if void := [f"{note.number} {note.state}" for note in result.concessions if note.state != "applied"]:
        pieces.append(f"concessions not applied: {', '.join(void)}")
    if result.carried:
        pieces.append(f"rests on {_things(result.carried, 'assumed value')}")
    if result.rulebook.loosened:
        pieces.append(f"{_things(len(result.rulebook.loosened), 'limit')} loosened or switched off by a layer")
    if unused := not_used(result):
        pieces.append(f"not used: {unused}")
    return tuple(pieces)


def summary_line(result: ReviewResult) -> str:
    """One line for the terminal: verdict, counts of findings, what was not assessed, what the verdict rests on."""
    counts = [f"{number} {severity}" for severity, number in result.severities.items() if number]
    words = ", ".join(counts) if counts else "no findings"
    outcomes = result.outcomes
    extra = "".join(f", {outcomes[o]} {o}" for o in ("conceded", "not assessed") if outcomes[o])
    line = f"{result.input.file}: gate {result.gate} at {result.gate_severity}: {words}, {outcomes['met']} met{extra}"
    return "; ".join((line, *rests_on(result)))
