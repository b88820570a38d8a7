"""The seventeenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_seventeenth import written


class TestTheSeventeenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "06ff66ab7a2eabc4989e043f45711ef5642ed8a5ba88d083f048176c1c2c4b1f"
    books = True
    first = 17001
    languages = "en 16, de 10, fr 6, it 6, es 5, ru 5, zh 6, ja 6"

    def test_files_of_each_kind(self) -> None:
        assert Counter(t.suffix for t in self.tables) == {".csv": 31, ".xlsx": 21, ".json": 8}
