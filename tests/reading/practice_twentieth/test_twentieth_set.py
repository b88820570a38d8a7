"""The twentieth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_twentieth import written


class TestTheTwentiethSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "9b59e85eba35cc5ec8eec373be3f6f25c078cfda99c6d1f33cc96624273b5482"
    books = True
    first = 20001
    languages = "en 16, de 12, fr 7, it 5, es 5, ru 5, zh 5, ja 5"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 31, ".xlsx": 23, ".json": 6}

    def test_an_office_has_even_or_odd_numbers(self) -> None:
        sides: dict[str, set[int]] = {}
        for table in self.tables:
            sides.setdefault(table.kinds["office"], set()).add(table.seed % 2)
        assert len(sides) == 24
        assert all(len(side) == 1 for side in sides.values())
