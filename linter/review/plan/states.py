"""States of a search: the changes made so far, what they leave, what a search came to."""

from collections.abc import Mapping
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from linter.review.plan.cells import Cell
from linter.review.plan.domains import Option

State = Mapping[Cell, Option]
Item = tuple[int, int]


@frozen(eq=False)
class Found:
    """What a search came to.

    Attributes
    ----------
    state : dict of Cell to Option
        The plan; empty where nothing helps.
    score : float
        What is left, as :class:`linter.review.plan.standing.Judged` counts it; 0 where the gate opens.
    without : dict of Cell to int8 array
        Grades without one of the changes, shape (clauses, rows), where there is more than one.
    grade : int8 array, shape (clauses, rows)
        Grades with all of them.
    bad : bool array, the same shape
        What is left.
    tried : tuple of bool array
        What trials left that cleared a finding of the machine and made something else worse: evidence of a conflict.
    """

    state: State
    score: float
    grade: NDArray[np.int8]
    bad: NDArray[np.bool_]
    without: Mapping[Cell, NDArray[np.int8]] = field(factory=dict)
    tried: tuple[NDArray[np.bool_], ...] = ()


@frozen(eq=False)
class Entry:
    """A state that was tried, with what it leaves."""

    score: float
    wanting: int
    cost: tuple[int, float]
    state: State
    bad: NDArray[np.bool_]


def values_of(state: State) -> dict[Cell, Any]:
    """The values of a state, as a trial takes them."""
    return {cell: option.value for cell, option in state.items()}


def cost_of(state: State) -> tuple[int, float]:
    """Cells changed first, then what is dear, then distance."""
    return len(state), round(sum(option.cost for option in state.values()), 9)
