"""Cells that may move: one parameter of one position or machine; what is a dimension and what a decision."""

from collections.abc import Iterable
from difflib import get_close_matches
from typing import NamedTuple

from attrs import frozen

from linter.model.vocabulary import parameter, vocabulary
from linter.rulebook.model import Clause
from linter.rulebook.repairs import Repair, repairs


class Cell(NamedTuple):
    """One parameter at one place of a machine; ``row`` counts the stations of the machine, 0 for its own values."""

    name: str
    row: int

    @property
    def whole(self) -> bool:
        """Whether it is a value of the machine, which stands at all of its stations."""
        return parameter(self.name).level == "machine"


def is_decision(name: str) -> bool:
    """Whether a parameter is a decision: a word that says how the machine is built, bought or run.

    Lubrication, class, closure, retention, preload method, rotating ring, materials and their like are never part of a
    plan unless the caller frees them. The form of an undercut is a matter of the drawing.
    """
    return parameter(name).kind == "choice" and not name.endswith("_undercut_form")


@frozen
class Movable:
    """What the caller lets move.

    Attributes
    ----------
    keep : frozenset of str
        Parameters left alone.
    free : frozenset of str
        Decisions, or facts of the machine, that may be part of the plan.
    """

    keep: frozenset[str] = frozenset()
    free: frozenset[str] = frozenset()

    @classmethod
    def of(cls, keep: Iterable[str] = (), free: Iterable[str] = ()) -> "Movable":
        """From the names of a call.

        Raises
        ------
        ValueError
            For a name that is no parameter, a text to free, or one that is both kept and freed; one line that says so.
        """
        kept, freed = frozenset(keep), frozenset(free)
        for option, names in (("--keep", kept), ("--free", freed)):
            for name in sorted(names):
                if name not in vocabulary():
                    close = get_close_matches(name, vocabulary(), 1)
                    hint = f"; is {close[0]} meant?" if close else ""
                    raise ValueError(f"{option} {name}: no parameter of that name{hint}")
        for name in sorted(freed):
            if parameter(name).kind == "text":
                raise ValueError(f"--free {name}: a text, for which no values can be tried")
        for name in sorted(kept & freed):
            raise ValueError(f"--keep {name}: --free names it too")
        return cls(kept, freed)

    def allows(self, name: str) -> bool:
        """Whether a parameter may be part of a plan, where a clause names it as a repair."""
        return name not in self.keep and (name in self.free or not is_decision(name))

    def repairs(self, clause: Clause) -> tuple[Repair, ...]:
        """What may be moved for a clause: its repairs, then what is freed among the parameters that it looks at."""
        own = [repair for repair in repairs(clause) if self.allows(repair.name)]
        named = {repair.name for repair in own}
        looked_at = dict.fromkeys((*clause.needs, *clause.uses))
        own += [Repair(name) for name in looked_at if name in self.free and name not in named]
        return tuple(own)

    def cells(self, clause: Clause, rows: Iterable[int]) -> tuple[Cell, ...]:
        """The cells that may be moved for a finding of a clause at some stations, in the order to try them."""
        stations = tuple(rows)
        return tuple(
            Cell(repair.name, row)
            for repair in self.repairs(clause)
            for row in ((0,) if parameter(repair.name).level == "machine" else stations)
        )

    def decisions(self, clause: Clause) -> tuple[str, ...]:
        """Decisions that a clause looks at and that the caller has neither freed nor kept, in its order."""
        return tuple(
            name
            for name in dict.fromkeys((*clause.needs, *clause.uses))
            if is_decision(name) and parameter(name).change and name not in self.free and name not in self.keep
        )
