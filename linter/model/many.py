"""What a result holds of a table too large to hold every assessment of it."""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from typing import Generic, TypeVar

from attrs import frozen

from linter.model.assessments import Assessment, Assumed

T = TypeVar("T")
Placed = tuple[str, str | None, str, str, str | None, str, bool]
#: Rows of a table whose records are all held.
HELD_ROWS = 200
#: Rows of a larger table whose results are held at once while records are made of them.
RECORD_ROWS = 2000


@frozen(eq=False)
class Anew(Generic[T]):
    """Records that are made each time they are gone through; ``make`` takes the machines wanted, None for all.

    ``placed``: of cells that were used machine, station, parameter, file, sheet, cell or JSON Pointer, and whether it
    is a JSON Pointer.
    """

    make: Callable[[Collection[str] | None], Iterator[T]]
    placed: Callable[[], Iterator[Placed]] | None = None

    def __iter__(self) -> Iterator[T]:
        return self.make(None)

    def of_machines(self, names: Collection[str]) -> Iterator[T]:
        """The records of these machines."""
        return self.make(names)


@frozen
class AssumedAt:
    """An assumed value where a clause used it; ``carries`` where one that must be judged rests on it."""

    assumed: Assumed
    machine: str
    station: str | None
    carries: bool


@frozen(eq=False)
class ClauseColumns:
    """One clause over the rows of a part of a large table, with what is said where it is met or does not apply.

    Attributes
    ----------
    clause, title, unit : str
        Its name and title, and the unit of its figures.
    sources : tuple of str
        Keys into the bibliography.
    parameters : tuple of str
        Values that it looked at in these rows and that have a cell.
    outcome : sequence of int
        By row the index into :data:`linter.model.assessments.OUTCOMES`.
    message : sequence of str
        By row; empty where somebody acts on it.
    figures : dict of str to sequence of float
        ``observed``, ``lower`` and ``upper`` by row, NaN where there is none; a name that no row has is absent.
    assumed : dict of int to tuple of Assumed
        By row, where anything was.
    """

    clause: str
    title: str
    unit: str
    sources: tuple[str, ...]
    parameters: tuple[str, ...]
    outcome: Sequence[int]
    message: Sequence[str]
    figures: Mapping[str, Sequence[float]]
    assumed: Mapping[int, tuple[Assumed, ...]]


@frozen(eq=False)
class Part:
    """Some machines of a large table: of each its name, its row and the names and rows of its stations, in order."""

    machines: Sequence[tuple[str, int, Sequence[tuple[str, int]]]]
    of_machine: Sequence[ClauseColumns]
    of_station: Sequence[ClauseColumns]


@frozen(eq=False)
class ManyAssessments:
    """Every assessment of a large table, in order: those somebody acts on are held, the others made when gone through.

    Attributes
    ----------
    to_act_on : tuple of Assessment
        Findings, concessions and what is not assessed.
    passed : dict of (machine, station or None) to (int, int)
        How many are met, and how many do not apply, by position.
    judged : bool
        Whether a clause is met that is not about the table itself.
    assumed : tuple of AssumedAt
        What was assumed where a clause is met or does not apply.
    sources : frozenset of str
        Keys into the bibliography.
    make : callable
        Makes the assessments of some machines (of all for None) in order; takes those held from the iterator.
    parts : callable or None
        Makes what is met or does not apply column by column, in the same order; None where it has its working too.
    """

    to_act_on: tuple[Assessment, ...]
    passed: Mapping[tuple[str, str | None], tuple[int, int]]
    judged: bool
    assumed: tuple[AssumedAt, ...]
    sources: frozenset[str]
    make: Callable[[Iterator[Assessment], Collection[str] | None], Iterator[Assessment]]
    parts: Callable[[], Iterator[Part]] | None = None

    def __iter__(self) -> Iterator[Assessment]:
        return self.make(iter(self.to_act_on), None)

    def of_machines(self, names: Collection[str]) -> Iterator[Assessment]:
        """The assessments of these machines."""
        return self.make((item for item in self.to_act_on if item.machine in names), names)
