"""What is said of one clause at some rows, and what to do about it: one small function an outcome.

Messages are filled column by column: a placeholder of a template stands for a list of texts, one for each row.
"""

from collections.abc import Callable, Collection, Sequence
from functools import cache, cached_property, partial
from typing import Any

import numpy as np

from linter.model.digits import bound_with_digits, fit_text, one_side_text, with_digits
from linter.model.stations import Bools
from linter.model.wording import quantity_text, words_of
from linter.review.assess import FIGURES, FINDING, MET, NOT_APPLICABLE, NOT_ASSESSED, Assessed, ClauseReview
from linter.rulebook.model import PLACEHOLDER

#: Numbers by row, and their unit.
Figures = tuple[list[float], str]


class Teller:
    """Fills the messages of one clause; ``texts`` gives the values of a parameter in every row of the stations."""

    def __init__(
        self,
        assessed: Assessed,
        review: ClauseReview,
        must: Bools | None,
        texts: Callable[[str], Sequence[str]],
    ) -> None:
        self.assessed, self.review, self.result, self.texts = assessed, review, review.result, texts
        self.musts = must
        lines = () if self.result is None else self.result.working
        self.lines = {line.key: line for line in reversed(lines)}
        view = assessed.view
        whole = review.clause.level == "machine"
        #: By row the first of its rows of the stations, and how many they are.
        self.starts = view.starts.tolist() if whole else range(view.count)
        self.counts = view.station_count.tolist() if whole else None

    def must(self, row: int) -> bool:
        """Whether the gate does not open while the row is not assessed."""
        return self.musts is not None and bool(self.musts[row])

    def missing(self, row: int) -> tuple[str, ...]:
        """Parameters that the row wants."""
        return tuple(name for name, rows in self.review.missing.items() if rows[row])

    def quantity(self, row: int) -> str:
        """What the observed value is, in words; empty where the rulebook has no name for it."""
        messages = self.review.clause.messages
        return messages.get(f"quantity_{self.variant(row)}", messages.get("quantity", ""))

    def variant(self, row: int) -> str:
        """Which of the clause's messages the row takes; empty for the plain one."""
        variant = None if self.result is None else self.result.variant
        return "" if variant is None else str(variant[row])

    def words(self, name: str, rows: Sequence[int]) -> list[str]:
        """What stands for a word in braces: a figure or fact of the check, a line of its working, or a value."""
        result = self.result
        assert result is not None
        figures = self.figures(name, rows)
        if figures is not None:
            return [quantity_text(value, figures[1]) for value in figures[0]]
        if name in result.facts:
            fact = result.facts[name]
            return [str(text) for text in (map(fact, rows) if callable(fact) else _of_rows(fact, rows))]
        if name in self.lines:
            told, unit = _of_rows(self.lines[name].values, rows), self.lines[name].unit
            return [value if isinstance(value, str) else quantity_text(float(value), unit) for value in told]
        if name == "machine":
            stations = self.assessed.stations
            return [stations.machines[int(stations.machine_row[self.starts[row]])] for row in rows]
        texts = self.texts(name)
        return [texts[self.starts[row]] for row in rows]

    def figures(self, name: str, rows: Sequence[int]) -> Figures | None:
        """The numbers and unit behind a word in braces; None where it stands for something else."""
        result = self.result
        assert result is not None
        if name in FIGURES:
            values, unit = getattr(result, name), result.unit
            if values is None:
                return [float("nan")] * len(rows), unit
        elif name in result.facts:
            fact = result.facts[name]
            if not isinstance(fact, tuple):
                return None
            values, unit = fact
        elif name in self.lines:
            values, unit = self.lines[name].values, self.lines[name].unit
            if any(isinstance(value, str) for value in _of_rows(values, rows)):
                return None
        else:
            return None
        return [float(value) for value in _of_rows(values, rows)], unit

    def _filled(self, rows: Sequence[int], name: str, other: str, word: str) -> list[str]:
        """What stands for one placeholder of a template (:data:`linter.rulebook.model.PLACEHOLDER`)."""
        if not other and not word:
            return self.words(name, rows)
        figures, ends = self.figures(name, rows), self.figures(other, rows) if other else None
        if other and figures and ends:
            pairs = zip(figures[0], ends[0], strict=True)
            turned = ((-end, -start) for start, end in pairs) if word == "clearance" else pairs
            return [fit_text(*pair, figures[1]) for pair in turned]
        if word and figures:
            return [one_side_text(value, figures[1], word) for value in figures[0]]
        words = self.words(name, rows)
        if not other:
            return words
        return [f"{start} to {end}" for start, end in zip(words, self.words(other, rows), strict=True)]

    def _fill(self, template: str, rows: Sequence[int]) -> list[str]:
        first, *pieces = _pieces(template)
        if not pieces:
            return [first[:1].upper() + first[1:]] * len(rows)
        columns = [self._filled(rows, *pieces[k : k + 3]) for k in range(0, len(pieces), 4)]
        shape = "%s".join(piece.replace("%", "%%") for piece in (first, *pieces[3::4]))
        texts = [shape % words for words in zip(*columns, strict=True)]
        return [text[:1].upper() + text[1:] for text in texts]

    def _told(
        self, key: str, rows: Sequence[int], digits: Callable[[str, int, Callable[[], Collection[str]]], str]
    ) -> list[str]:
        """The texts ``met``, ``finding`` or ``remedy`` of the rows: each that of its variant, else the plain one."""
        clause, result, most = self.review.clause, self.result, self.assessed.rulebook.digits
        assert result is not None
        plain = clause.remedy if key == "remedy" else clause.messages[key]
        variants = [""] * len(rows) if result.variant is None else list(map(str, _of_rows(result.variant, rows)))
        template = {v: (clause.messages.get(f"{key}_{v}") if v else None) or plain for v in dict.fromkeys(variants)}
        told: dict[int, str] = {}
        for text in dict.fromkeys(template.values()):
            at = [row for row, variant in zip(rows, variants, strict=True) if template[variant] == text]
            told.update(zip(at, self._fill(text, at), strict=True))
        if most is None:
            return [told[row] for row in rows]
        return [digits(told[row], most, partial(self._stated, row)) for row in rows]

    def messages(self, outcome: str, rows: Sequence[int]) -> list[str]:
        """What is said of the rows."""
        return self._told(outcome, rows, with_digits)

    def remedies(self, rows: Sequence[int]) -> list[str]:
        """What to do about it."""
        return self._told("remedy", rows, bound_with_digits)

    def _stated(self, row: int) -> Collection[str]:
        """The values that the clause looks at, as reports show them."""
        start = self.starts[row]
        if self.counts is None:
            return [texts[start] for texts in self.looked_at]
        return [text for texts in self.looked_at for text in texts[start : start + self.counts[row]]]

    @cached_property
    def looked_at(self) -> list[Sequence[str]]:
        """What the clause looks at, by row of the stations."""
        return [self.texts(name) for name in (*self.review.clause.needs, *self.review.clause.uses)]


def _of_rows(values: Any, rows: Sequence[int]) -> list[Any]:
    """The values of some rows of an array, or of what gives a text for a row."""
    return values[rows].tolist() if isinstance(values, np.ndarray) else [values[row] for row in rows]


@cache
def _pieces(template: str) -> tuple[str, ...]:
    """A template cut at its placeholders: text, then by fours name, other end, word and the text behind."""
    return tuple(piece or "" for piece in PLACEHOLDER.split(template))


def _told_met(teller: Teller, rows: Sequence[int]) -> tuple[list[str], list[str]]:
    return teller.messages("met", rows), [""] * len(rows)


def _told_finding(teller: Teller, rows: Sequence[int]) -> tuple[list[str], list[str]]:
    return teller.messages("finding", rows), teller.remedies(rows)


def _told_not_applicable(teller: Teller, rows: Sequence[int]) -> tuple[list[str], list[str]]:
    assert teller.result is not None
    reason = teller.result.reason
    reasons = [reason] * len(rows) if isinstance(reason, str) else _of_rows(reason, rows)
    told = {text: f"Not applicable: {text}." for text in set(reasons)}
    return [told[text] for text in reasons], [""] * len(rows)


def _told_not_assessed(teller: Teller, rows: Sequence[int]) -> tuple[list[str], list[str]]:
    whys = [""] * len(rows)
    if teller.result is not None and "not_assessed" in teller.result.facts:
        whys = teller.words("not_assessed", rows)
    told = [_not_assessed(teller, row, why) for row, why in zip(rows, whys, strict=True)]
    return [message for message, _ in told], [remedy for _, remedy in told]


def _not_assessed(teller: Teller, row: int, why: str) -> tuple[str, str]:
    remedy = ""
    if teller.review.failure:
        message = f"Not assessed: {teller.review.failure}. Please report this; it is not a fault of the table."
    elif missing := teller.missing(row):
        message = f"Not assessed: the table does not state {_listed([words_of(name) for name in missing])}."
        remedy = f"State {_listed(missing)}."
    else:
        kind = teller.texts("bearing_type")[teller.starts[row]]
        about = f" (a {kind} bearing)" if kind.endswith("roller") else ""
        message = f"Not assessed: the values given{about} lie outside the tables and formulas of this clause."
    return f"{message[:-1]} ({why})." if why else message, remedy


#: What is said of rows, and what to do about it, by their outcome.
TOLD: dict[int, Callable[[Teller, Sequence[int]], tuple[list[str], list[str]]]] = {
    MET: _told_met,
    FINDING: _told_finding,
    NOT_ASSESSED: _told_not_assessed,
    NOT_APPLICABLE: _told_not_applicable,
}


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else ", ".join(words[:-1]) + " and " + words[-1]
