"""What is said of one clause at one row, and what to do about it: one small function an outcome."""

from collections.abc import Callable, Mapping, Sequence
from functools import cache

import numpy as np

from linter.model.digits import bound_with_digits, fit_text, one_side_text, with_digits
from linter.model.stations import Bools
from linter.model.wording import quantity_text, words_of
from linter.review.assess import FIGURES, FINDING, MET, NOT_APPLICABLE, NOT_ASSESSED, Assessed, ClauseReview
from linter.rulebook.model import PLACEHOLDER


class Teller:
    """Fills the messages of one clause, one row after the other (:meth:`at`)."""

    def __init__(
        self,
        assessed: Assessed,
        review: ClauseReview,
        must: Bools | None,
        text: Callable[[int], Mapping[str, str]],
    ) -> None:
        self.assessed, self.review, self.result, self.text = assessed, review, review.result, text
        self.musts = must
        self.row = self.station_row = 0
        lines = () if self.result is None else self.result.working
        self.lines = {line.key: line for line in reversed(lines)}

    def at(self, row: int, station_row: int) -> "Teller":
        """The same at another row; ``station_row`` is (the first of) its rows of the stations."""
        self.row, self.station_row = row, station_row
        return self

    @property
    def must(self) -> bool:
        """Whether the gate does not open while the row is not assessed."""
        return self.musts is not None and bool(self.musts[self.row])

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

    @property
    def quantity(self) -> str:
        """What the observed value is, in words; empty where the rulebook has no name for it."""
        messages, result = self.review.clause.messages, self.result
        variant = "" if result is None or result.variant is None else str(result.variant[self.row])
        return messages.get(f"quantity_{variant}", messages.get("quantity", ""))

    def word(self, name: str) -> str:
        """What stands for a word in braces: a figure or fact of the check, a line of its working, or a value."""
        result, row = self.result, self.row
        assert result is not None
        figure = self.figure(name)
        if figure is not None:
            return quantity_text(*figure)
        if name in result.facts:
            fact = result.facts[name]
            return str(fact(row) if callable(fact) else fact[row])
        if name in self.lines:
            return str(self.lines[name].values[row])
        if name == "machine":
            return self.assessed.stations.machines[int(self.assessed.stations.machine_row[self.station_row])]
        return self.text(self.station_row)[name]

    def figure(self, name: str) -> tuple[float, str] | None:
        """The number and unit behind a word in braces; None where it stands for something else."""
        result, row = self.result, self.row
        assert result is not None
        if name in FIGURES:
            values = getattr(result, name)
            return float("nan") if values is None else float(values[row]), result.unit
        if name in result.facts:
            fact = result.facts[name]
            return (float(fact[0][row]), fact[1]) if isinstance(fact, tuple) else None
        if name in self.lines:
            value = self.lines[name].values[row]
            return None if isinstance(value, str) else (float(value), self.lines[name].unit)
        return None

    def _filled(self, name: str, other: str, word: str) -> str:
        """What stands for one placeholder of a template (:data:`linter.rulebook.model.PLACEHOLDER`)."""
        if not other and not word:
            return self.word(name)
        figure, end = self.figure(name), self.figure(other) if other else None
        if other and figure and end:
            ends = (-end[0], -figure[0]) if word == "clearance" else (figure[0], end[0])
            return fit_text(*ends, figure[1])
        if word and figure:
            return one_side_text(*figure, word)
        return f"{self.word(name)} to {self.word(other)}" if other else self.word(name)

    def _fill(self, template: str) -> str:
        first, *pieces = _pieces(template)
        for k in range(0, len(pieces), 4):
            first += self._filled(*pieces[k : k + 3]) + pieces[k + 3]
        return first[:1].upper() + first[1:]

    def message(self, outcome: str) -> str:
        """What is said of the row."""
        text, digits = self._fill(self.template(outcome)), self.assessed.rulebook.digits
        return text if digits is None else with_digits(text, digits, self._stated)

    def remedy(self) -> str:
        """What to do about it."""
        text, digits = self._fill(self.template("remedy")), self.assessed.rulebook.digits
        return text if digits is None else bound_with_digits(text, digits, self._stated)

    def _stated(self) -> list[str]:
        """The values that the clause looks at, as reports show them."""
        clause, stations = self.review.clause, self.assessed.stations
        rows = [self.station_row]
        if clause.level == "machine":
            rows = [int(k) for k in np.flatnonzero(stations.machine_row == stations.machine_row[self.station_row])]
        names = (*clause.needs, *clause.uses)
        if len(rows) > 1:
            return [self.text(row)[name] for name in names for row in rows]
        texts = self.text(rows[0])
        return [texts[name] for name in names]


@cache
def _pieces(template: str) -> tuple[str, ...]:
    """A template cut at its placeholders: text, then by fours name, other end, word and the text behind."""
    return tuple(piece or "" for piece in PLACEHOLDER.split(template))


def _told_met(teller: Teller) -> tuple[str, str]:
    return teller.message("met"), ""


def _told_finding(teller: Teller) -> tuple[str, str]:
    return teller.message("finding"), teller.remedy()


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
        kind = teller.text(teller.station_row)["bearing_type"]
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
