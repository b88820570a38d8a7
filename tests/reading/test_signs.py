import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.reading.cells.signs import caseless, fold, is_blank, missing_state, shown


@pytest.mark.parametrize(
    ("signs", "folded"),
    [
        ("Ø⌀øφΦ∅Ф", "Ø" * 7),
        ("µμ", "µµ"),
        ("-‐‑–—−－", "-" * 7),
        ("×xх", "xxx"),
        ("°º˚", "°°°"),
        ('″"”', '"""'),
        ("′'’", "'''"),
        ("Ｈ７ ７．５", "H7 7.5"),
        ("АВЕКМНОРСТХ", "ABEKMHOPCTX"),
        ("a\u00a0b\u202fc\u2009d\u3000e", "a b c d e"),
        ("7\u200b.5\ufeff\u00ad", "7.5"),
        ("℃ ㎜ ㎛", "°C mm µm"),
        ("Ma\u0301x", "Máx"),
        ("  a \n b ", "a b"),
    ],
)
def test_look_alikes_are_one_for_matching(signs: str, folded: str) -> None:
    assert fold(signs) == folded


def test_case_is_never_folded() -> None:
    assert fold("H7") != fold("h7")
    assert fold("Н7") == "H7" and fold("н7") != "H7"


def test_capitals_and_small_letters_of_a_cyrillic_word_meet_without_case() -> None:
    word = "Наружный диаметр, Вт"
    assert caseless(word.upper()) == caseless(word.lower()) == caseless(word)


@given(st.text())
def test_folding_is_stable(text: str) -> None:
    assert fold(fold(text)) == fold(text)
    assert is_blank(text) == (fold(text) == "")
    missing_state(text)
    shown(text)


@pytest.mark.parametrize(
    ("text", "state"),
    [
        ("", "empty"), (" \u00a0\u200b", "empty"), ("-", "not applicable"), ("--", "not applicable"),
        ("–", "not applicable"), ("—", "not applicable"), ("N/A", "not applicable"), ("NA", "not applicable"),
        ("n/a", "not applicable"), ("TBD", "not known"), ("tbc", "not known"), ("?", "not known"), ("…", "not known"),
        ("variable", "not known"), ("None", "not known"), ("null", "not known"), ("*", "see above"),
        ("〃", "see above"),
        ("dito", "see above"), ("同上", "see above"),
        ("7.5", None), ("open bearing", None), ("x" * 500, None),
    ],
)  # fmt: skip
def test_missing_words_have_their_state(text: str, state: str | None) -> None:
    assert missing_state(text) == state


def test_control_signs_are_made_visible_in_messages() -> None:
    assert shown("a\x1b[31m\u202eb") == "a\\x1b[31m\\u202eb"
    assert shown("x" * 100).endswith("…")
