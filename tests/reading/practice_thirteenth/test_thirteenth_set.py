"""The thirteenth set itself: each stated value stands in its cell, the truth agrees with itself."""

from practice.of_a_set import OfASet

from practice_thirteenth import written


class TestTheThirteenthSet(OfASet):
    tables = tuple(written.make(number) for number in range(written.FIRST, written.LAST + 1))
    digest = "482b525504ebeeb790fcdfbcaa3905c8cbd7dfeb92977bff1ad4a4640ae4f8c3"
    first = 13001
    languages = "en 13, de 8, zh 4, ja 4, fr 3, it 3, ru 3, es 2"
    suffixes = ".csv 15, .xlsx 12, .json 8, .txt 5"
