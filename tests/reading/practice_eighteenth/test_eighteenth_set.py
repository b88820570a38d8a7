"""The eighteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_eighteenth import written


class TestTheEighteenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "9a11d62dcb124b9ad60b455c62e90d15675e456adc25c38ba3b06227343fd3f7"
    books = True
    first = 18001
    languages = "en 18, de 10, fr 7, it 6, es 5, ru 5, zh 4, ja 5"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 32, ".xlsx": 21, ".json": 7}

    def test_an_office_has_even_or_odd_numbers(self) -> None:
        sides: dict[str, set[int]] = {}
        for table in self.tables:
            sides.setdefault(table.kinds["office"], set()).add(table.seed % 2)
        assert len(sides) == 24
        assert all(len(side) == 1 for side in sides.values())
