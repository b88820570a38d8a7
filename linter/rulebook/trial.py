"""Runs the clauses of a company's rulebook once over an empty table, so that what cannot run is refused on loading."""

from collections.abc import Mapping

import numpy as np

from linter.checks.lookup import check_function
from linter.checks.shared.base import Result, View
from linter.model.stations import stations_from_rows
from linter.model.vocabulary import vocabulary
from linter.rulebook.model import PLACEHOLDER, Clause, Limits, Rulebook, RulebookError

ALWAYS = frozenset({"observed", "lower", "upper", "machine"})


def try_clauses(book: Rulebook, files: Mapping[str, str]) -> None:
    """Refuse clauses whose check is not there, does not run with their limits, or whose texts cannot be filled.

    Parameters
    ----------
    book : Rulebook
        The whole rulebook.
    files : dict
        The clauses to try, each with the file it stands in.

    Raises
    ------
    RulebookError
        With file, clause and reason.
    """
    view = View(stations_from_rows([{"station": "A"}, {"station": "B"}]))
    for name, file in files.items():
        clause = book.clauses[name]
        try:
            with np.errstate(all="ignore"):
                result = check_function(clause.check)(view, Limits(clause))
        except Exception as error:
            reason = str(error.args[0]) if isinstance(error, KeyError) else f"{type(error).__name__}: {error}"
            raise RulebookError(file, name, f"its check cannot run: {reason}") from None
        if not isinstance(result, Result):
            raise RulebookError(file, name, f"{clause.check} is not a check")
        if result.measure.shape != (view.machine_count if clause.level == "machine" else view.count,):
            raise RulebookError(file, name, f"{clause.check} does not look at each {clause.level}")
        for text in unknown_words(clause, result):
            raise RulebookError(file, name, text)


def unknown_words(clause: Clause, result: Result) -> list[str]:
    """Names in braces that the texts of a clause use and nothing fills.

    Parameters
    ----------
    clause : Clause
        Whose messages and remedy are looked at.
    result : Result
        Of its check, for any rows.

    Returns
    -------
    list of str
        In the order of the texts.
    """
    known = {*ALWAYS, *vocabulary(), *result.facts, *(line.key for line in result.working)}
    texts = {**clause.messages, "remedy": clause.remedy}
    return [
        f"{key} names {{{word}}}, which neither the vocabulary nor the working of {clause.check} has"
        for key, text in texts.items()
        for first, second, _ in PLACEHOLDER.findall(text)
        for word in (first, second)
        if word and word not in known
    ]
