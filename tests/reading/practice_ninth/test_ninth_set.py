"""The ninth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections.abc import Callable

from practice import of_a_set
from practice.grammar import Table
from practice.of_a_set import FACTORS as FACTORS
from practice.of_a_set import OfASet
from practice.of_a_set import cells as cells
from practice.of_a_set import numbers as numbers

from practice_ninth import written


class TestTheNinthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "15f40b98436bed9040d7b6d3c0619bff9ea9fbec2f5d28c60be1fb370fb40ced"
    first = 9001
    languages = "en 13, de 8, zh 5, ja 4, fr 3, it 3, es 2, ru 2"
    suffixes = ".csv 22, .xlsx 7, .json 6, .txt 5"


def __getattr__(name: str) -> Callable[[Table], None]:
    """The checks of a table, under the names by which sets still ask for them."""
    checks = (of_a_set.every_value_stands_in_its_cell, of_a_set.the_truth_agrees_with_itself)
    if found := {f"test_{check.__name__}": check for check in checks}.get(name):
        return found
    raise AttributeError(name)
