"""The corpora of words in five languages: figures that are reached stay reached, and none is wrong."""

from collections import Counter
from itertools import islice

import pytest

from . import corpus

#: Every so many words are tried here; ``corpus.py`` tries all of them.
_STEP = {"en": 9, "de": 9, "fr": 9, "zh": 25, "ja": 25}
#: Right of these, in the open and in the closed half, in hundredths.
_FLOORS = {"en": (70, 70), "de": (64, 64), "fr": (64, 64), "zh": (86, 86), "ja": (86, 86)}


@pytest.mark.parametrize("language", sorted(_FLOORS))
def test_words_are_understood_and_none_is_taken_for_another(language: str) -> None:
    done = list(corpus.run(islice(corpus.cases(language), 0, None, _STEP[language])))
    assert [f"{t.case.target}: {t.case.word} taken for {t.got}" for t in done if t.outcome == "wrong"] == []
    for is_open, floor in zip((True, False), _FLOORS[language], strict=True):
        count = Counter(t.outcome for t in done if t.case.is_open is is_open)
        assert 100 * count["right"] >= floor * sum(count.values()), count
