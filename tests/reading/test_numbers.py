import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.reading.cells.numbers import Number, read_number, read_numbers, vote_decimal
from linter.reading.cells.signs import ReadError


def value(text: str, decimal: str | None = None) -> float:
    number = read_number(text, decimal)  # type: ignore[arg-type]
    assert isinstance(number, Number), number
    return number.value


def code(text: str, decimal: str | None = None) -> str:
    number = read_number(text, decimal)  # type: ignore[arg-type]
    assert isinstance(number, ReadError), number
    assert number.read == text and number.expected and number.sentence
    return number.code


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("7.5", 7.5), ("7,5", 7.5), ("1.234,56", 1234.56), ("1,234.56", 1234.56), ("1 234.56", 1234.56),
        ("1 234,56", 1234.56), ("1\u00a0234,56", 1234.56), ("1\u202f234,56", 1234.56), ("1'234.5", 1234.5),
        ("1’234.5", 1234.5), (".69", 0.69), (",69", 0.69), ("7.", 7.0), ("+0.012", 0.012), ("- 100", -100.0),
        ("−0.5", -0.5), ("1e-3", 0.001), ("1E+07", 1e7), ("3.1D-2", 0.031), ("3/8", 0.375), ("1 1/4", 1.25),
        ("1-1/4", 1.25), ("1½", 1.5), ("½", 0.5), ("７．５", 7.5), ("-149.99999999999994", -149.99999999999994),
        ("2.00", 2.0), ("1.234.567", 1234567.0), ("1,234,567", 1234567.0), ("1.234.567,8", 1234567.8),
        ("12 500", 12500.0), ("0.234", 0.234), ("0,012", 0.012), ("1234.567", 1234.567), ("12.3456", 12.3456),
        ("-3/8", -0.375), ("1.2×10^3", 1200.0), (" 7 ", 7.0), ("110000", 110000.0), ("1.234e0", 1.234),
    ],
)  # fmt: skip
def test_every_spelling(text: str, expected: float) -> None:
    assert value(text) == pytest.approx(expected, rel=1e-15)


def test_trailing_zeros_keep_their_meaning() -> None:
    number = read_number("2.00")
    assert isinstance(number, Number)
    assert number.decimals == 2


@pytest.mark.parametrize("text", ["1.234", "1,234", "12.345", "-1,234", "123.456"])
def test_a_number_that_may_be_grouped_is_never_guessed(text: str) -> None:
    assert code(text) == "ambiguous-number"
    as_point, as_comma = value(text, "."), value(text, ",")
    assert sorted([abs(as_point), abs(as_comma)])[1] == pytest.approx(1000 * sorted([abs(as_point), abs(as_comma)])[0])
    number = read_number(text, ".")
    assert isinstance(number, Number) and number.settled


def test_a_file_mark_never_overrules_a_clear_number() -> None:
    assert value("7,5", ".") == 7.5
    assert value("7.5", ",") == 7.5
    assert code("1.234.567", ".") == "contradictory-number"
    assert code("1.234,56", ".") == "contradictory-number"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("", "empty"), ("-", "not-applicable"), ("TBD", "not-known"), ("*", "see-above"), ("abc", "not-a-number"),
        ("12.03.2024", "not-a-number"), ("1 23", "not-a-number"), ("1,5,6", "not-a-number"),
        ("60/22", "not-a-number"),
        ("1/0", "not-a-number"), ("1e400", "number-out-of-range"), ("nan", "not-known"), ("inf", "not-a-number"),
        ("1_000", "not-a-number"), ("7.5²", "not-a-number"), ("9" * 201, "too-long"), ("0x10", "not-a-number"),
        ("1 5/4", "not-a-number"), ("=1+1", "not-a-number"), ("٣", "not-a-number"),
    ],
)  # fmt: skip
def test_what_is_refused(text: str, expected: str) -> None:
    assert code(text) == expected


def test_where_nothing_is_grouped_the_other_mark_is_an_error() -> None:
    found = read_number("1,234", ".", grouped=False)
    assert isinstance(found, ReadError) and found.code == "ambiguous-number"
    assert read_number("1.234", ".", grouped=False) == read_number("1.234", ".")
    column, errors = read_numbers(["1,234", "7.5"], ".", grouped=False)
    assert np.isnan(column[0]) and column[1] == 7.5 and errors[0].code == "ambiguous-number"


def group(digits: str, sign: str) -> str:
    head = len(digits) % 3 or 3
    return sign.join([digits[:head], *(digits[i : i + 3] for i in range(head, len(digits), 3))])


@given(
    st.integers(0, 10**9), st.integers(0, 10**6), st.integers(1, 6), st.sampled_from(".,"),
    st.sampled_from(["", " ", "'", "\u00a0", "other"]),
    st.sampled_from(["", "-", "+", "− ", "- "]),
)  # fmt: skip
def test_what_is_written_is_read(whole: int, rest: int, places: int, mark: str, grouping: str, sign: str) -> None:
    fraction = f"{rest % 10**places:0{places}d}"
    between = {"other": "." if mark == "," else ","}.get(grouping, grouping)
    text = f"{sign}{group(str(whole), between)}{mark}{fraction}"
    expected = float(f"{'-' if sign.strip() in ('-', '−') else ''}{whole}.{fraction}")
    assert value(text, mark) == expected
    fullwidth = text.translate({code: code + 0xFEE0 for code in map(ord, "0123456789")})
    assert value(fullwidth, mark) == expected


@given(st.floats(allow_nan=False, allow_infinity=False))
def test_what_python_writes_is_read(number: float) -> None:
    assert value(repr(number), ".") == number


@given(st.text(), st.sampled_from([None, ".", ","]))
def test_any_text_gives_a_number_or_an_error(text: str, decimal: str | None) -> None:
    number = read_number(text, decimal)  # type: ignore[arg-type]
    assert isinstance(number, (Number, ReadError))
    if isinstance(number, Number):
        assert math.isfinite(number.value)


@given(st.text(alphabet="0123456789.,' +-/eEdDx^½\u00a0−", max_size=30), st.sampled_from([None, ".", ","]))
def test_number_like_texts_give_a_number_or_an_error(text: str, decimal: str | None) -> None:
    assert isinstance(read_number(text, decimal), (Number, ReadError))  # type: ignore[arg-type]
    vote_decimal([text])


@pytest.mark.parametrize(
    ("texts", "mark"),
    [
        (["1.234", "7.5"], "."), (["1,234", "7,5"], ","), (["1.234", "8"], None), (["7.5", "7,5"], None),
        (["1.234.567"], ","), (["1,234.5"], "."), (["0.012", "1.234"], "."), (["Ø7,5 h5 (0/-0,006)"], ","),
        (["2,9mm"], ","), ([], None), (["7.500-7.495", "4 +0.006/+0.001"], "."), (["７，５"], ","),
        (["1 234,5"], ","),
    ],
)  # fmt: skip
def test_the_vote_is_unanimous(texts: list[str], mark: str | None) -> None:
    assert vote_decimal(texts) == mark


SPELLINGS = st.sampled_from(
    ["7.5", "7,5", "1.234", "1,234", "", " ", "-", "abc", "3/8", "12", "-4.25", "1e-3", "1 234,5", "TBD"]
)


@given(st.lists(SPELLINGS | st.text(max_size=8), max_size=30), st.sampled_from([None, ".", ","]))
def test_a_column_reads_as_its_cells_do(texts: list[str], decimal: str | None) -> None:
    column, errors = read_numbers(texts, decimal)  # type: ignore[arg-type]
    assert column.shape == (len(texts),)
    for index, text in enumerate(texts):
        number = read_number(text, decimal)  # type: ignore[arg-type]
        if isinstance(number, Number):
            assert column[index] == number.value and index not in errors
        else:
            assert np.isnan(column[index])
            assert errors.get(index) == (None if number.code == "empty" else number)


@given(
    st.lists(st.integers(-(10**9), 10**9).map(str) | st.floats(-1e6, 1e6).map(lambda v: f"{v:.5f}"), min_size=1),
    st.sampled_from(".,"),
)
def test_plain_columns_take_the_short_way_to_the_same_values(texts: list[str], decimal: str) -> None:
    spelled = [text.replace(".", decimal) for text in texts]
    column, errors = read_numbers(spelled, decimal)  # type: ignore[arg-type]
    assert not errors
    assert column.tolist() == [float(text) for text in texts]
