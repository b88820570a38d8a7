"""The twenty-sixth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_twentysixth import written


class TestTheTwentysixthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "fcfb272238002a9667e4696c054ff500305cb92b3432ed52f06725d05f9f2715"
    books = True
    first = 26001
    languages = "en 12, de 10, fr 8, it 6, es 6, ja 6, zh 6, ru 6"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 28, ".json": 12, ".txt": 2, ".xlsx": 18}

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2272

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
