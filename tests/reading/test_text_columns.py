"""Cells found by their ends are those the csv module reads, and long columns answer as lists of texts do."""

import csv
import io

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from linter.reading.files import csv_text, grids
from linter.reading.files.grids import MARGIN, Bad, TextColumn
from linter.reading.files.intake import Source

_settings = settings(max_examples=400, deadline=None, derandomize=True)
_pieces = st.sampled_from(
    ["", "4", "4.5", ";", '"', '""', "\n", "a b", "Ø4 k5", "送風機", "*", " ", '"a"', '"a;b"', '"a""b"']
)
_short = st.text(alphabet='ab";\n4.Ø', max_size=5)
_texts = st.lists(_pieces, max_size=25).map("".join)


def _source() -> Source:
    return Source("t.csv", b"", "", "text")


def _both(text: str):
    data = text.encode()
    return csv_text._cut(_source(), data, ";"), csv_text._by_the_book(_source(), data, ";")


@_settings
@given(_texts.filter(lambda text: text.strip("\n")), st.sampled_from([0, 1000]))
def test_cells_found_by_their_ends_are_those_of_the_csv_module(text, longest_mixed):
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(csv_text, "LONGEST_MIXED", longest_mixed)
        cut = csv_text._cut(_source(), text.encode(), ";")
    if cut is None:
        assert '"' in text
        return
    book = csv_text._by_the_book(_source(), text.encode(), ";")
    assert [column.tolist() for column in cut.columns] == [column.tolist() for column in book.columns]
    assert cut.lines.tolist() == book.lines.tolist()


@_settings
@given(
    rows=st.lists(st.lists(st.text(alphabet='ab";\n4.Ø', max_size=5), min_size=1, max_size=4), min_size=1, max_size=8)
)
@pytest.mark.parametrize("quoting", [csv.QUOTE_MINIMAL, csv.QUOTE_ALL])
def test_text_that_a_csv_writer_wrote_is_always_cut(rows, quoting):
    stream = io.StringIO(newline="")
    csv.writer(stream, delimiter=";", quoting=quoting, lineterminator="\n").writerows(rows)
    cut, book = _both(stream.getvalue())
    assert cut is not None
    width = max(map(len, rows))
    wanted = [[*row, *[""] * (width - len(row))] for row in rows]
    assert [list(row) for row in zip(*(c.tolist() for c in cut.columns), strict=True)] == wanted
    assert cut.lines.tolist() == book.lines.tolist()


@pytest.mark.parametrize("text", ['4;5"\n', '"4"5;6\n', 'a;"b\n', ' "4";5\n', '3/8";1/2"\n', '"a"b"\n', '"\n'])
def test_quotation_marks_in_odd_places_are_left_to_the_csv_module(text):
    assert csv_text._cut(_source(), text.encode(), ";") is None


def test_a_long_cell_is_bounded_also_where_its_marks_are_doubled():
    long = "x" * 40_000
    (column,) = csv_text._cut(_source(), f'"{long}"\n"a""b"\n{long[:32_767]}\n'.encode(), ";").columns
    bad, doubled, whole = column.tolist()
    assert isinstance(bad, Bad) and bad.code == "too-long"
    assert (doubled, len(whole)) == ('a"b', 32_767)


def _column(cells):
    parts = [cell.encode() for cell in cells]
    ends = np.cumsum([len(part) + 1 for part in parts]) - 1
    starts = ends - [len(part) for part in parts]
    signs = np.frombuffer(b";".join([*parts, bytes(MARGIN)]), dtype=np.uint8)
    return TextColumn(signs, starts.astype(np.int32), ends.astype(np.int32))


@_settings
@given(st.lists(st.text(alphabet="ab*.,Ø送4", max_size=6) | st.just("y" * 90), min_size=1, max_size=20), st.data())
def test_a_column_of_texts_answers_as_a_list_does(cells, data):
    column = _column(cells)
    assert len(column) == len(cells) and column.tolist() == cells
    assert [column[i] for i in range(len(cells))] == cells
    some = np.array(data.draw(st.lists(st.integers(0, len(cells) - 1), max_size=8)), dtype=np.intp)
    assert column[some].tolist() == [cells[i] for i in some]
    assert column[1:].tolist() == cells[1:]
    wanted = data.draw(st.sampled_from([*cells, "*", ""]))
    assert column.equal(wanted).tolist() == [i for i, cell in enumerate(cells) if cell == wanted]
    assert column.holding(".", 1000).tolist() == [i for i, cell in enumerate(cells) if "." in cell]
    assert column.holding(".", 1).tolist() == [i for i, cell in enumerate(cells) if "." in cell][:1]


@_settings
@given(
    kinds=st.lists(st.text(alphabet="ab*.,Ø送4 ", max_size=12) | st.just("y" * 40), min_size=1, max_size=6),
    picks=st.lists(st.integers(0, 5), min_size=1, max_size=60),
)
def test_distinct_texts_of_a_column_are_those_of_a_list(kinds, picks):
    cells = [kinds[pick % len(kinds)] for pick in picks]
    distinct, numbers = _column(cells).distinct()
    assert distinct == list(dict.fromkeys(cells))
    assert [distinct[number] for number in numbers] == cells


def test_texts_are_told_apart_by_every_sign():
    kinds = ["", "a", "ab", "ba", "abcdefgh", "abcdefghi", "abcdefghj", "x" * 31, "x" * 32, "送風機"]
    cells = kinds * 20 + kinds[::-1] * 20
    column = _column(cells)
    assert column._alike() is not None
    distinct, numbers = column.distinct()
    assert distinct == kinds and [distinct[number] for number in numbers] == cells


def test_two_kinds_with_one_key_are_told_apart_as_texts(monkeypatch):
    monkeypatch.setattr(grids, "_SPREADING", np.uint64(0))
    column = _column(["a", "b"] * 20)
    assert column._alike() is None
    assert column.distinct()[0] == ["a", "b"]


@_settings
@given(st.lists(st.text(alphabet="#;a\xa0Ø ", max_size=3), min_size=1, max_size=20))
def test_cells_that_begin_with_a_sign_are_among_those_found(cells):
    found = _column(cells).beginning("#\xa0").tolist()
    assert {row for row, cell in enumerate(cells) if cell[:1] in ("", "#", "\xa0")} <= set(found)
    assert not {row for row, cell in enumerate(cells) if cell[:1] in (";", "a")} & set(found)


@_settings
@given(
    st.lists(st.from_regex(r"[+-]?[0-9]{1,8}(\.[0-9]{0,7})?|[+-]?\.[0-9]{1,9}|", fullmatch=True), min_size=1),
    st.sampled_from(".,"),
)
def test_decimals_converted_as_a_whole_are_those_read_alone(texts, mark):
    numbers = _column(["name of the column", *(text.replace(".", mark) for text in texts)])[1:].decimals(mark)
    assert numbers is not None
    assert np.array_equal(numbers, [float(text or "nan") for text in texts], equal_nan=True)


@pytest.mark.parametrize("text", ["1+2", "1.2.3", "-", ".", "+.", "+-1", "1-", "1,2", "1234567890123456", "12 3", "٤"])
def test_what_is_no_plain_decimal_is_left_to_the_reader_of_single_numbers(text):
    column = _column(["name of the column", "4.5", text, "", "12.25"])[1:]
    assert column.decimals(".") is None
    assert column[:1].decimals(".").tolist() == [4.5]


def test_signs_beside_a_cell_are_none_of_its_own():
    cells = ["name of the column", "1", "", "22", "-3", "", "+444.5", "0"]
    numbers = _column(cells)[1:].decimals(".")
    assert np.array_equal(numbers, [1, np.nan, 22, -3, np.nan, 444.5, 0], equal_nan=True)
    assert np.isnan(_column(["name of the column", "", ""])[1:].decimals(".")).all()


@pytest.mark.parametrize("first", ["1", "1" * 12])
def test_a_long_column_holds_the_marks_of_its_head_or_of_all_of_it(first):
    cells = [first] * 1500 + ["4.5", "1.2.3", "6.5"]
    column = _column(cells)
    assert column.holding(".", 2).tolist() == [1500, 1501]
    assert column.holding(".", 50).tolist() == [1500, 1501, 1502]
    assert _column(["4.5"] * 1500).holding(".", 3).tolist() == [0, 1, 2]
