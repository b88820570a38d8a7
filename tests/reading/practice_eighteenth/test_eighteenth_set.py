"""The eighteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_eighteenth import written


class TestTheEighteenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = ""
    books = True
    first = 18001
    languages = ""

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {}

    def test_an_office_has_even_or_odd_numbers(self) -> None:
        sides: dict[str, set[int]] = {}
        for table in self.tables:
            sides.setdefault(table.kinds["office"], set()).add(table.seed % 2)
        assert len(sides) == 24
        assert all(len(side) == 1 for side in sides.values())
