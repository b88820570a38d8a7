"""The nineteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_nineteenth import written


class TestTheNineteenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "4bde49928822236070217b2608d130b5e3393291cbeb7b789ebcce91e82e2a53"
    books = True
    first = 19001
    languages = "en 12, de 10, fr 6, it 6, es 6, ja 8, zh 6, ru 6"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 28, ".json": 10, ".txt": 4, ".xlsx": 18}

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2518

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
