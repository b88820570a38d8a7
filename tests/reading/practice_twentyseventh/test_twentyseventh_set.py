"""The twenty-seventh set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_twentyseventh import written


class TestTheTwentySeventhSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "dc19838d884b8cbb1f701a02c6cdea8346d2f5b79856cf93bfbe8da33605b71e"
    books = True
    first = 27001
    languages = "en 10, de 8, fr 9, it 8, es 4, ja 9, zh 6, ru 6"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 24, ".json": 11, ".xlsx": 25}

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2263

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
