"""What a result holds of a table too large to hold every assessment of it."""

from collections.abc import Callable, Collection, Iterator, Mapping
from typing import Generic, TypeVar

from attrs import frozen

from linter.model.assessments import Assessment, Assumed

T = TypeVar("T")
#: Rows whose results are held at once while records are made of them; a table of no more is held whole.
RECORD_ROWS = 2000


@frozen(eq=False)
class Anew(Generic[T]):
    """Records that are made each time they are gone through; ``make`` takes the machines wanted, None for all."""

    make: Callable[[Collection[str] | None], Iterator[T]]

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
    """

    to_act_on: tuple[Assessment, ...]
    passed: Mapping[tuple[str, str | None], tuple[int, int]]
    judged: bool
    assumed: tuple[AssumedAt, ...]
    sources: frozenset[str]
    make: Callable[[Iterator[Assessment], Collection[str] | None], Iterator[Assessment]]

    def __iter__(self) -> Iterator[Assessment]:
        return self.make(iter(self.to_act_on), None)

    def of_machines(self, names: Collection[str]) -> Iterator[Assessment]:
        """The assessments of these machines."""
        return self.make((item for item in self.to_act_on if item.machine in names), names)
