"""The twelfth set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.grammar import Table
from practice.of_a_set import OfASet, every_nominal_stands_in_its_cell

from practice_twelfth import trade, written


class TestTheTwelfthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "029095062cad851fc4d70f313c101a6f180ea033a90ca4200a46a6d776a203b3"
    first = 12001
    languages = "en 14, de 12, zh 6, ja 6, fr 6, it 6, es 5, ru 5"

    def test_every_nominal_stands_in_its_cell(self, table: Table) -> None:
        every_nominal_stands_in_its_cell(table)

    def test_no_two_tables_have_the_same_headings(self) -> None:
        assert len({tuple(w for e in t.expected for w in e.words) for t in self.tables}) == 60


def test_deviations_are_those_of_the_standard() -> None:
    """The table from memory against figures of ISO 286-2 that everybody knows."""
    assert trade.deviations("k5", 25) == (2, 11) and trade.deviations("H7", 52) == (0, 30)
    assert trade.deviations("J7", 62) == (-12, 18) and trade.deviations("js5", 20) == (-4.5, 4.5)
