import itertools
import json

import pytest
from attrs import evolve

from linter.model.comparison import CAUSES, KINDS, Comparison, Difference, Side, State, ValueChange
from linter.report.comparison_writers import CAUSES as CAUSE_WORDS
from linter.report.comparison_writers import (
    MEANINGS,
    change_text,
    comparison_html,
    comparison_json,
    comparison_text,
    value_change_text,
)

COUNTS = {"met": 1, "finding": 1, "not assessed": 0, "not applicable": 0, "conceded": 0}
SIDE = Side(
    "a.result.json", "fan.csv", "0f" * 32, "ringseat 2026.1", "ab" * 32, "ringseat 0.1.0", "closed", "major", COUNTS,
    {"critical": 0, "major": 1, "minor": 0, "remark": 0},
)  # fmt: skip
FOUND = State("finding", "major", {"value": -5.0, "unit": "um"}, {"value": 0.0, "unit": "um"}, None, "Loose.", None)
MET = State("met", None, {"value": 2.0, "unit": "um"}, {"value": 0.0, "unit": "um"}, None, "Tight.", None)


def comparison(word: str = "fan") -> Comparison:
    differences = tuple(
        Difference(
            kind, "fit.shaft-class", word, word, None if k % 2 else word, *states, cause, (f"{word} 1 -> 2",),
            (ValueChange(word, word, "shaft_seat_diameter", word, "k5"),),
        )
        for k, (kind, cause, states) in enumerate(
            itertools.product(KINDS, CAUSES, ((FOUND, MET), (MET, FOUND), (None, FOUND), (FOUND, None)))
        )
    )  # fmt: skip
    side = evolve(SIDE, table=word, file=word)
    return Comparison(side, side, differences, (ValueChange(word, "", "speed_max", word, "2"),), (word,), 3)


def test_every_kind_and_cause_has_its_words():
    assert tuple(MEANINGS) == KINDS and tuple(CAUSE_WORDS) == CAUSES


def test_page_is_sound_html_and_shows_every_difference(strict):
    seen = strict(comparison_html(comparison()))
    assert len(seen.ids) == len(set(seen.ids)) and set(seen.labels) <= set(seen.ids)
    assert all(b - a <= 1 for a, b in itertools.pairwise(seen.headings)) and seen.headings[0] == 1
    text = " ".join(" ".join(seen.text).split())
    for words in (
        *MEANINGS.values(),
        *CAUSE_WORDS.values(),
        "−5 µm → 2 µm",
        "fan 1 → 2",
        "3 findings unchanged",
    ):
        assert words in text
    assert text.count("Before: Loose.") == 2 * len(KINDS) * len(CAUSES)


@pytest.mark.parametrize(
    "word", ["</style><script>alert(1)</script>", '"><svg/onload=alert(1)>', "\u202egnp\x00\ud800"]
)
def test_hostile_words_stay_words(strict, word):
    made = comparison(word)
    page = comparison_html(made)
    seen = strict(page)
    assert "script" not in seen.tags and "onload" not in seen.attributes and "style" not in seen.attributes
    for text in (page, comparison_text(made)):
        assert text.encode("utf-8") and not {"\u202e", "\x00"} & set(text)
    assert json.loads(comparison_json(made).encode("utf-8"))["new"]["table"] == word


def test_before_and_after_in_few_words():
    conceded = evolve(FOUND, outcome="conceded", concession="K-7")

    def words(old: State | None, new: State | None) -> str:
        return change_text(Difference("changed", "a.b", "", "m", None, old, new, "table"))

    assert words(FOUND, evolve(FOUND, severity="minor")) == "major -> minor"
    assert words(FOUND, FOUND) == "major"
    assert words(FOUND, conceded) == "major -> major, conceded by K-7"
    assert words(None, FOUND) == "not reviewed -> major"
    assert value_change_text(Difference("cleared", "a.b", "", "m", None, FOUND, MET, "table")) == (
        "observed −5\u00a0µm -> 2\u00a0µm"
    )
