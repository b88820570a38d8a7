"""The tenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.of_a_set import OfASet

from practice_tenth import written


class TestTheTenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "5228cf7d8929cd87506ef9353702fb5cf9612cdcb49c61755e27e79a2245da96"
    first = 10001
    languages = "en 13, de 8, zh 5, ja 4, fr 3, it 3, es 2, ru 2"
    suffixes = ".csv 18, .xlsx 10, .json 8, .txt 4"
