"""Makes the plain record of one clause at one row, with the inputs that several clauses share made once."""

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from functools import cache
from typing import Any, TypeVar

import numpy as np

from linter.checks.shared.base import Result
from linter.model.findings import OUTCOMES, SEVERITIES, Assessment, Assumed, Cause, Quantity, Used, WorkingLine
from linter.model.many import ClauseColumns, Part
from linter.model.stations import Bools, Stations
from linter.model.vocabulary import parameter
from linter.model.wording import rounded, value_texts
from linter.review.assess import FINDING, MET, NOT_APPLICABLE, NOT_ASSESSED, Assessed, ClauseReview
from linter.review.messages import TOLD, Teller

T = TypeVar("T")


class Maker:
    """Makes the records of the rows of one part of a table.

    Parameters
    ----------
    assessed : Assessed
        From :func:`linter.review.assess.assess`, with its results kept.
    outcomes : collection of str
        Outcomes wanted.
    full : bool
        Whether what is met has its working too.
    must : dict of str to bool array, optional
        By clause the rows that must be judged before the gate may open.
    """

    def __init__(
        self,
        assessed: Assessed,
        outcomes: Collection[str] = OUTCOMES,
        full: bool = True,
        must: Mapping[str, Bools] | None = None,
    ) -> None:
        self.assessed = assessed
        inputs = self.inputs = _Inputs(assessed.stations)
        self.codes = {OUTCOMES.index(o) for o in outcomes if o in OUTCOMES[:4]}
        clauses = [
            _ClauseMaker(assessed, assessed.reviews[name], inputs, full, (must or {}).get(name))
            for name in sorted(assessed.reviews)
        ]
        self.of_machine = [clause for clause in clauses if clause.review.clause.level == "machine"]
        self.of_station = [clause for clause in clauses if clause.review.clause.level == "station"]

    def machine(self, index: int, held: Iterator[Assessment] | None = None) -> Iterator[Assessment]:
        """The records of one machine: the clauses about it, then those of each station by its name.

        ``held`` gives, in this order, the records that need not be made: those of findings and of what is not assessed.
        """
        stations, view, codes = self.assessed.stations, self.assessed.view, self.codes
        start = int(view.starts[index])
        rows = range(start, start + int(view.station_count[index]))
        name, names = stations.machines[index], stations.text("station")
        self.inputs.forget()
        at: list[tuple[list[_ClauseMaker], int, Sequence[int], str | None]] = [(self.of_machine, index, rows, None)]
        ordered = sorted(rows, key=lambda r: (str(names[r]), r))
        at += [(self.of_station, row, (row,), str(names[row])) for row in ordered]
        for clauses, row, used, station in at:
            for clause in clauses:
                outcome = clause.outcome[row]
                if outcome in codes:
                    if held is not None and outcome in (FINDING, NOT_ASSESSED):
                        yield next(held)
                    else:
                        yield clause.record(row, used, name, station)

    def part(self, machines: Iterable[int]) -> Part:
        """What is met or does not apply, column by column; ``machines`` are all of them, in order."""
        stations, view = self.assessed.stations, self.assessed.view
        names = [str(name) for name in stations.text("station")]
        ends = (view.starts + view.station_count).tolist()
        of_machine = [range(start, end) for start, end in zip(view.starts.tolist(), ends, strict=True)]
        return Part(
            machines=[(stations.machines[k], k, sorted((names[row], row) for row in of_machine[k])) for k in machines],
            of_machine=[clause.columns(of_machine) for clause in self.of_machine],
            of_station=[clause.columns([(row,) for row in range(view.count)]) for clause in self.of_station],
        )


class _ClauseMaker:
    """Makes the records of one clause."""

    def __init__(
        self, assessed: Assessed, review: ClauseReview, inputs: "_Inputs", full: bool, must: Bools | None
    ) -> None:
        self.assessed, self.review, self.inputs, self.full = assessed, review, inputs, full
        self.teller = Teller(assessed, review, must, inputs.text)
        self.told: dict[int, tuple[str, str]] = {}
        self.names = _looked_at(review.clause.needs, review.clause.uses)
        assumed = assessed.stations.assumed
        self.assumed = tuple(name for name in self.names if name in assumed)
        # a list is looked up faster than an array, one row at a time
        self.outcome: list[int] = review.outcome.tolist()
        self.figures = {name: values.tolist() for name, values in review.figures.items()}

    def record(self, row: int, rows: Sequence[int], machine: str, station: str | None) -> Assessment:
        """The record of one row; ``rows`` are its rows of the stations."""
        review, clause, inputs = self.review, self.review.clause, self.inputs
        teller, outcome = self.teller, self.outcome[row]
        if row not in self.told:
            self._tell(outcome)
        message, remedy = self.told.pop(row)
        cause = self.assessed.cause(clause, row, rows[0]) if outcome == FINDING else None
        with_working = outcome in (FINDING, NOT_ASSESSED) or (self.full and outcome == MET)
        return Assessment(
            clause=clause.id,
            title=clause.title,
            machine=machine,
            station=station,
            outcome=OUTCOMES[outcome],
            severity=SEVERITIES[review.severity[row]] if outcome == FINDING else None,
            observed=self._quantity("observed", row),
            lower=self._quantity("lower", row),
            upper=self._quantity("upper", row),
            message=message,
            working=_working(review.result, row) if with_working else (),
            missing=teller.missing(row) if outcome == NOT_ASSESSED else (),
            assumed=check_assumed(review.result, row) + inputs.each(inputs.assumed, self.assumed, rows),
            places=_cells(review.result, row) + inputs.each(inputs.used, self.names, rows),
            sources=clause.sources,
            remedy=remedy,
            follows=None if cause is None else Cause(cause.id, station if cause.level == "station" else None),
            must=teller.must(row),
            quantity=teller.quantity(row) if outcome == FINDING else "",
        )

    def _tell(self, outcome: int) -> None:
        """Message and remedy of every row of an outcome, each of which is asked for in turn."""
        rows = [row for row, found in enumerate(self.outcome) if found == outcome]
        self.told.update(zip(rows, zip(*TOLD[outcome](self.teller, rows), strict=True), strict=True))

    def columns(self, rows_of: Sequence[Sequence[int]]) -> ClauseColumns:
        """What is met or does not apply; ``rows_of`` gives the rows of the stations by row."""
        result, clause = self.review.result, self.review.clause
        messages = [""] * len(self.outcome)
        passed = []
        for outcome in (MET, NOT_APPLICABLE):
            rows = [row for row, found in enumerate(self.outcome) if found == outcome]
            passed += rows
            for row, message in zip(rows, TOLD[outcome](self.teller, rows)[0] if rows else (), strict=True):
                messages[row] = message
        return ClauseColumns(
            clause=clause.id,
            title=clause.title,
            unit=self.review.unit,
            sources=clause.sources,
            parameters=self._stated(passed),
            outcome=self.outcome,
            message=messages,
            figures=self.figures,
            assumed={
                row: assumed
                for row in (passed if self.assumed or (result is not None and result.assumed) else ())
                if (
                    assumed := check_assumed(result, row)
                    + self.inputs.each(self.inputs.assumed, self.assumed, rows_of[row])
                )
            },
        )

    def _stated(self, passed: Sequence[int]) -> tuple[str, ...]:
        """Parameters that it looks at in these rows and that have a cell."""
        stations, result = self.assessed.stations, self.review.result
        of_passed = np.zeros(len(self.outcome), dtype=bool)
        of_passed[list(passed)] = True
        whole = self.review.clause.level == "machine"
        rows = of_passed[stations.machine_row] if whole else of_passed
        first = np.zeros(len(stations), dtype=bool)
        first[stations.first_rows] = True
        found = []
        for name in self.names:
            if name in stations.places:
                seen = rows & first if whole and parameter(name).level == "machine" else rows
                found += [name] if bool((stations.places[name].stated & seen).any()) else []
        if result is not None and result.cells is not None:
            found += [name for row in passed for name, *_ in result.cells(row)]
        return tuple(dict.fromkeys(found))

    def _quantity(self, name: str, row: int) -> Quantity | None:
        values = self.figures.get(name)
        if values is None or (value := values[row]) != value:
            return None
        return Quantity(rounded(value), self.review.unit)


class _Inputs:
    """Inputs of one machine as records and as texts, each made once: clauses that share one share its record."""

    def __init__(self, stations: Stations) -> None:
        self.stations = stations
        self.texts: dict[str, list[str]] = {}
        self.forget()

    def forget(self) -> None:
        """Let go what was made, before the next machine."""
        self.used: _Rows[Used | None] = _Rows(self._used)
        self.assumed: _Rows[Assumed | None] = _Rows(self.assumed_of)

    def text(self, name: str) -> Sequence[str]:
        """The values of a parameter in every row, as a report shows them."""
        if name not in self.texts:
            self.texts[name] = value_texts(self.stations, name)
        return self.texts[name]

    @staticmethod
    def each(made: "_Rows[T | None]", names: Iterable[str], rows: Sequence[int]) -> tuple[T, ...]:
        """Records of the parameters that a clause looks at, in these rows."""
        if len(rows) == 1:
            at = made[rows[0]]
            return tuple([entry for name in names if (entry := at[name]) is not None])
        wanted = ((name, row) for name in names for row in (rows[:1] if parameter(name).level == "machine" else rows))
        return tuple([entry for name, row in wanted if (entry := made[row][name]) is not None])

    def _used(self, name: str, row: int) -> Used | None:
        place = self.stations.place(name, row)
        return None if place is None else Used(name, place, self.text(name)[row])

    def assumed_of(self, name: str, row: int) -> Assumed | None:
        """The documented default that a parameter has in a row."""
        assumption = self.stations.assumed.get(name)
        if assumption is None or not assumption.rows[row]:
            return None
        if parameter(name).kind == "choice":
            return Assumed(name, self.text(name)[row], "", assumption.reason)
        value = rounded(float(self.stations.number(name)[row]))
        return Assumed(name, value, parameter(name).unit, assumption.reason)


class _Row(dict[str, T]):
    """What is made of one row by parameter, each when it is first asked for."""

    def __init__(self, make: Callable[[str, int], T], row: int) -> None:
        super().__init__()
        self.make, self.row = make, row

    def __missing__(self, name: str) -> T:
        made = self[name] = self.make(name, self.row)
        return made


class _Rows(dict[int, _Row[T]]):
    """The same by row."""

    def __init__(self, make: Callable[[str, int], T]) -> None:
        super().__init__()
        self.make = make

    def __missing__(self, row: int) -> _Row[T]:
        made = self[row] = _Row(self.make, row)
        return made


@cache
def _looked_at(needs: tuple[str, ...], uses: tuple[str, ...]) -> tuple[str, ...]:
    """Parameters that a clause looks at, each once."""
    return tuple(dict.fromkeys((*needs, *uses)))


def check_assumed(result: Result | None, row: int) -> tuple[Assumed, ...]:
    """What a check put in the place of absent values in a row."""
    found = []
    for entry in () if result is None else result.assumed:
        value = entry.values[row]
        if entry.rows[row] and (isinstance(value, str) or np.isfinite(value)):
            shown = value if isinstance(value, str) else rounded(value)
            found.append(Assumed(entry.parameter, shown, entry.unit, entry.reason))
    return tuple(found)


def _cells(result: Result | None, row: int) -> tuple[Used, ...]:
    named = () if result is None or result.cells is None else result.cells(row)
    return tuple(Used(name, place, text) for name, place, text in named)


def _working(result: Result | None, row: int) -> tuple[WorkingLine, ...]:
    lines = []
    for line in () if result is None else result.working:
        value: Any = line.values[row]
        if not isinstance(value, str):
            value = rounded(value) if np.isfinite(value) else None
        if value is not None and value != "":
            lines.append(WorkingLine(line.key, line.symbol, line.meaning, value, line.unit, line.formula))
    return tuple(lines)
