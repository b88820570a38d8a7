"""The twenty-second set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_twentysecond import written


class TestTheTwentysecondSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "b508200b02335c20df0eb9dd56bf8cac0c3fbb33a463fc1a81c8a928ee937f47"
    books = True
    first = 22001
    languages = "en 12, de 10, fr 6, it 6, es 6, ja 8, zh 6, ru 6"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 26, ".json": 8, ".txt": 4, ".xlsx": 22}

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2357

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
