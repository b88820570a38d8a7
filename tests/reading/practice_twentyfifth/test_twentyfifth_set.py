"""The twenty-fifth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_twentyfifth import written


class TestTheTwentyFifthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "e6e8db8f273d682f10bc6ff49ad1b1df3a5f6d48af392d9cb9c9c0c26266d486"
    books = True
    first = 25001
    languages = "en 12, de 12, fr 6, it 6, es 6, ja 8, zh 6, ru 4"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 26, ".json": 10, ".txt": 4, ".xlsx": 20}

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2317

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
