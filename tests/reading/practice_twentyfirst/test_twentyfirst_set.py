"""The twentyfirst set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_twentyfirst import written


class TestTheTwentyfirstSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "3b8bfa31891927dd5fd290be2e8ba37fecb15ff2c935440b1ba6c93e1feab3bd"
    books = True
    first = 21001
    languages = "en 10, de 10, fr 8, it 6, es 6, ja 8, zh 6, ru 6"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 26, ".json": 10, ".txt": 4, ".xlsx": 20}

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2105

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
