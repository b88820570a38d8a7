"""The fourteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.of_a_set import OfASet

from practice_fourteenth import written


class TestTheFourteenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "56cc70ce6505f66e487131238bfc433ac3defa649573e599ce35659bf040a4e9"
    books = True
    first = 14001
    languages = "en 10, de 8, fr 4, it 4, es 4, ru 3, zh 4, ja 3"
    suffixes = ".csv 26, .xlsx 10, .json 4"

    def test_three_tables_are_in_inches(self) -> None:
        assert sum(t.kinds["inch"] == "True" for t in self.tables) == 3
