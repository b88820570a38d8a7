"""The twenty-fourth set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.of_a_set import OfASet

from practice_twentyfourth import written


class TestTheTwentyFourthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "b913c7f939dbcf9b62a74063358cc27f01333e16c2bc5222e21dbf3cf90f2c7a"
    books = True
    first = 24001
    languages = "en 8, de 8, fr 8, it 8, es 8, ja 6, zh 8, ru 6"

    def test_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2253

    def test_no_office_has_even_and_odd_numbers(self) -> None:
        assert not {id(o) for o in written.ODD} & {id(o) for o in written.EVEN}
