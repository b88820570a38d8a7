"""What is said of one clause at one row, and what to do about it: one small function an outcome."""

import re
from collections.abc import Callable, Sequence
from typing import Any

from linter.model.stations import Bools
from linter.model.wording import quantity_text, value_text, words_of
from linter.review.assess import FINDING, MET, NOT_APPLICABLE, NOT_ASSESSED, Assessed, ClauseReview

_PLACEHOLDER = re.compile(r"\{([A-Za-z_0-9]+)\}")


class Teller:
    """Fills the message of one clause for one row."""

    def __init__(
        self, assessed: Assessed, review: ClauseReview, row: int, station_row: int, must: Bools | None
    ) -> None:
        self.must = must is not None and bool(must[row])
        self.assessed, self.review, self.row, self.station_row = assessed, review, row, station_row
        self.result = review.result

    @property
    def missing(self) -> tuple[str, ...]:
        """Parameters that the row wants."""
        return tuple(name for name, rows in self.review.missing.items() if rows[self.row])

    def template(self, key: str) -> str:
        """The text of the row's variant (``met``, ``finding``, ``remedy``), the plain one where it has none."""
        clause, result = self.review.clause, self.result
        assert result is not None
        variant = "" if result.variant is None else str(result.variant[self.row])
        plain = clause.remedy if key == "remedy" else clause.messages[key]
        return (clause.messages.get(f"{key}_{variant}") if variant else None) or plain

    def word(self, name: str) -> str:
        """What stands for a word in braces: a figure or fact of the check, a line of its working, or a value."""
        result, row = self.result, self.row
        assert result is not None
        if name in ("observed", "lower", "upper"):
            values = getattr(result, name)
            return quantity_text(float("nan") if values is None else float(values[row]), result.unit)
        if name in result.facts:
            fact = result.facts[name]
            if callable(fact):
                return str(fact(row))
            if isinstance(fact, tuple):
                return quantity_text(float(fact[0][row]), fact[1])
            return str(fact[row])
        for line in result.working:
            if line.key == name:
                return _line_text(line.values[row], line.unit)
        if name == "machine":
            return self.assessed.stations.machines[int(self.assessed.stations.machine_row[self.station_row])]
        return value_text(self.assessed.stations, name, self.station_row)

    def fill(self, template: str) -> str:
        """The template with its words in braces filled."""
        text = _PLACEHOLDER.sub(lambda match: self.word(match[1]), template)
        return text[:1].upper() + text[1:]


def _line_text(value: Any, unit: str) -> str:
    return value if isinstance(value, str) else quantity_text(float(value), unit)


def _told_met(teller: Teller) -> tuple[str, str]:
    return teller.fill(teller.template("met")), ""


def _told_finding(teller: Teller) -> tuple[str, str]:
    return teller.fill(teller.template("finding")), teller.fill(teller.template("remedy"))


def _told_not_applicable(teller: Teller) -> tuple[str, str]:
    assert teller.result is not None
    reason = teller.result.reason
    return f"Not applicable: {reason if isinstance(reason, str) else reason[teller.row]}.", ""


def _told_not_assessed(teller: Teller) -> tuple[str, str]:
    remedy = ""
    if teller.review.failure:
        message = f"Not assessed: {teller.review.failure}. Please report this; it is not a fault of the table."
    elif teller.missing:
        words = _listed([words_of(name) for name in teller.missing])
        message = f"Not assessed: the table does not state {words}."
        remedy = f"State {_listed(teller.missing)}."
    else:
        kind = value_text(teller.assessed.stations, "bearing_type", teller.station_row)
        about = f" (a {kind} bearing)" if kind.endswith("roller") else ""
        message = f"Not assessed: the values given{about} lie outside the tables and formulas of this clause."
    if teller.result is not None and "not_assessed" in teller.result.facts and (why := teller.word("not_assessed")):
        message = f"{message[:-1]} ({why})."
    return message, remedy


#: What is said of a row, and what to do about it, by its outcome.
TOLD: dict[int, Callable[[Teller], tuple[str, str]]] = {
    MET: _told_met,
    FINDING: _told_finding,
    NOT_ASSESSED: _told_not_assessed,
    NOT_APPLICABLE: _told_not_applicable,
}


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else ", ".join(words[:-1]) + " and " + words[-1]
