"""The twenty-third set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.of_a_set import OfASet

from practice_twentythird import written


class TestTheTwentyThirdSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "b83e49e7a7cda785f6485ed9035fcbe74bcb8a8628b8869dcd3190575a6cce8d"
    books = True
    first = 23001
    languages = "en 10, de 10, fr 8, it 6, es 6, ja 8, zh 6, ru 6"
    suffixes = ".csv 26, .json 8, .txt 2, .xlsx 24"

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2200

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
