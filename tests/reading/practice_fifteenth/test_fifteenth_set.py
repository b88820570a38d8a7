"""The fifteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from collections import Counter

from practice.of_a_set import OfASet

from practice_fifteenth import written


class TestTheFifteenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "fa10f973fd6eefcff6f69353403a5c24f9b395f997c2ce67b92e0f852e9f64c2"
    books = True
    first = 15001
    languages = "en 18, de 12, fr 5, it 5, es 4, ru 4, zh 6, ja 6"

    def test_eight_tables_are_json(self) -> None:
        assert Counter(t.suffix for t in self.tables)[".json"] == 8
