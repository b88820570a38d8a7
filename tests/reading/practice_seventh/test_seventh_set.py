"""The seventh set itself: the same again each time, its truth in its bytes, deviations those of their class."""

import numpy as np
import pytest
from practice.of_a_set import OfASet

from linter.mechanics.limits import deviations_or_nan
from practice_seventh import shapes, trade


class TestTheSeventhSet(OfASet):
    tables = tuple(shapes.make(number) for number in range(1, 61))
    digest = "a003d92fa2f4efd376ac4cfde70b7e0cc37128cd002c7e8a32b987b207610ffc"
    languages = "en 18, de 11, zh 7, ja 6, fr 5, it 5, es 4, ru 4"
    suffixes = ".csv 32, .xlsx 20, .json 6, .tsv 2"

    def test_bytes_are_the_same_again(self) -> None:
        for number in (2, 16, 39, 49):
            assert shapes.make(number).content == self.tables[number - 1].content

    def test_the_set_holds_inches_old_encodings_and_what_has_to_be_asked(self) -> None:
        assert sum(t.kinds["length unit"] == "in" for t in self.tables) >= 6
        assert {"utf-16", "cp1252", "cp1251", "shift_jis", "gb18030"} <= {t.kinds["encoding"] for t in self.tables}
        assert sum(e.verdict == "ask" for t in self.tables for e in t.expected) >= 15


def test_deviations_are_those_of_their_class() -> None:
    for side in range(2):
        for name in trade.CLASSES[side]:
            for nominal in trade.STEPS[side]:
                lower, upper = deviations_or_nan(np.array([name]), np.array([float(nominal)]))
                told = trade.deviations(side, name, nominal)
                assert told == pytest.approx((lower[0] / 1000, upper[0] / 1000), abs=1e-6), (name, nominal)
