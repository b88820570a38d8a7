"""Worked cases of the clauses, run under a rulebook."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from attrs import evolve, frozen

from linter.model.findings import Assessment, Used
from linter.model.places import Place
from linter.model.stations import Problem, Stations, stations_from_rows
from linter.model.wording import value_text
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import CURRENT, load, released_versions, stated_cases
from linter.rulebook.model import Rulebook, RulebookError


@frozen
class WorkedCase:
    """A worked case of a clause, and what the rulebook says of it.

    Attributes
    ----------
    title, kind : str
        What it shows; ``clear``, ``limit``, ``beyond``, ``not assessed`` or ``not applicable``.
    stations : tuple of dict
        The stated values as a report shows them, one dict by parameter per position.
    problems : tuple of str
        What stood in the table and could not be used as it stands.
    record : Assessment
        The verdict under the rulebook that the case is shown with; its places hold the stated values.
    """

    title: str
    kind: str
    stations: tuple[Mapping[str, str], ...]
    problems: tuple[str, ...]
    record: Assessment


@cache
def _by_clause(name: str) -> dict[str, list[dict[str, Any]]]:
    found: dict[str, list[dict[str, Any]]] = {}
    for case in stated_cases(name):
        found.setdefault(case["clause"], []).append(case)
    return found


def worked_cases(book: Rulebook, clause: str) -> list[dict[str, Any]]:
    """Worked cases of a clause as they are written: of the release or current rulebook under the layers."""
    versions = released_versions()
    for layer in book.layers:
        if layer.version in versions and load(layer.version).layers[0] == layer:
            return _by_clause(layer.version).get(clause, [])
        if layer.name == load().name and load(CURRENT).layers[0] == layer:
            return _by_clause(CURRENT).get(clause, [])
    return []


def case_stations(case: Mapping[str, Any]) -> Stations:
    """The stations of a worked case, with the cells that it states as not usable (``problems``).

    Raises
    ------
    RulebookError
        For a name outside the vocabulary or a value that is not written as its parameter wants it.
    """
    problems = tuple(
        Problem(
            kind=p["kind"],
            row=p["row"],
            parameter=p["parameter"],
            place=Place(p["file"], None, p["cell"]),
            read=p["read"],
            expected=p["expected"],
            message=p["message"],
            code=p["code"],
        )
        for p in case.get("problems", ())
    )
    try:
        return evolve(stations_from_rows(case["stations"]), problems=problems)
    except (KeyError, TypeError, ValueError) as error:
        said = error.args[0] if error.args else error
        raise RulebookError("cases/*.toml", case["clause"], f"stations of the case {case['title']!r}: {said}") from None


def run_cases(book: Rulebook, clause: str) -> list[WorkedCase]:
    """Worked cases of a clause with the verdicts that this rulebook gives them; none for a clause switched off.

    Parameters
    ----------
    book : Rulebook
        Its own verdicts are shown, so that a layer that changes a limit shows what comes of it.
    clause : str
        Id of the clause.

    Returns
    -------
    list of WorkedCase
        In the order of the case files.
    """
    alone = evolve(book, clauses={clause: book.clauses[clause]})
    found = []
    for case in worked_cases(book, clause) if book.clauses[clause].off is None else ():
        stations = case_stations(case)
        stated = tuple(
            {name: value_text(stations, name, row) for name in values if name not in ("machine", "station")}
            for row, values in enumerate(case["stations"])
        )
        record = next(r for r in assessments(assess(stations, alone)) if r.station in (None, case.get("station", "A")))
        place = Place("worked case", None, None)
        used = tuple(Used(name, place, text) for values in stated for name, text in values.items())
        problems = tuple(problem.message for problem in stations.problems)
        found.append(WorkedCase(case["title"], case["kind"], stated, problems, evolve(record, places=used)))
    return found
