"""The eleventh set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.grammar import Table
from practice.of_a_set import OfASet, every_nominal_stands_in_its_cell

from practice_eleventh import written


class TestTheEleventhSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "4c66067c98f3dc2d7be225d1f43cb5ec5ce6fca9f47df9d4d24c41b7f1e4ab51"
    first = 11001
    languages = "en 10, de 6, zh 4, ja 3, fr 2, it 2, es 2, ru 1"
    suffixes = ".csv 14, .txt 2, .xlsx 8, .json 6"

    def test_every_nominal_stands_in_its_cell(self, table: Table) -> None:
        every_nominal_stands_in_its_cell(table)

    def test_no_table_is_long(self, table: Table) -> None:
        assert len(table.expected) <= 30
