"""The sixteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.of_a_set import OfASet

from practice_sixteenth import written


class TestTheSixteenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "dcf9a338247feadf88201b99c00a0bf72b86f91e28367ea595e32afcc387b472"
    books = True
    first = 16001
    languages = "en 15, de 11, fr 6, it 6, es 5, ja 6, zh 6, ru 5"

    def test_about_two_thousand_values_are_stated(self) -> None:
        assert sum(len(t.expected) for t in self.tables) == 2056
