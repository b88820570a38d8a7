"""The eighth set itself: each value stands in its cell of the bytes, and the values of a table go together."""

from practice.of_a_set import OfASet

from practice_eighth import measure
from practice_eighth.bearings import SIZES, follows


class TestTheEighthSet(OfASet):
    tables = tuple(measure.tables())
    first = 8001
    languages = "en 15, de 10, zh 6, ja 5, fr 4, it 4, es 3, ru 3"
    suffixes = ".csv 29, .xlsx 8, .txt 7, .json 6"
    least = 11

    def test_there_are_a_thousand_values(self) -> None:
        assert sum(len(t.expected) for t in self.tables) >= 1000


def test_designations_say_what_catalogues_say() -> None:
    assert follows("7004C P4") | {"closure": "open"} == follows("7004C P4")
    assert follows("6205-2Z/C3")["closure"] == "shield" and follows("6205-2Z/C3")["clearance_class"] == "C3"
    assert all(d < outside and width < outside - d + 20 for d, outside, width, _ in SIZES.values())
