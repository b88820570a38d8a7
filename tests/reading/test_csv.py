"""Delimited text: encodings, line ends, delimiters, quotes, and the true line of every cell."""

import pytest

from linter.reading import InputError, read_table
from linter.reading.files.csv_text import choose_delimiter
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names

_TABLE = (
    "machine,station,bore_diameter,shaft_seat_diameter,drawing_number\nGebläse,A,4,4 k5,Ü-1\nGebläse,B,4,4 h5,Ü-1\n"
)


def read(tmp_path, data, names=None):
    path = tmp_path / "t.csv"
    path.write_bytes(data if isinstance(data, bytes) else data.encode())
    return read_table(path, names)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be"])
@pytest.mark.parametrize("end", ["\n", "\r\n", "\r", "\r\r\n"])
@pytest.mark.parametrize("delimiter", [",", ";", "\t", "|"])
def test_encodings_line_ends_and_delimiters(tmp_path, encoding, end, delimiter):
    mark = "\ufeff" if encoding in ("utf-16-le", "utf-16-be") else ""
    text = mark + _TABLE.replace(",", delimiter).replace("\n", end)
    reading = read(tmp_path, text.encode(encoding))
    assert reading.stations.machines == ("Gebläse",)
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "h5"]
    assert reading.stations.place("shaft_seat_diameter", 1).cell == "D3"
    assert reading.stations.problems == ()


@pytest.mark.parametrize(
    ("page", "machine"), [("cp1252", "Gebläse"), ("shift_jis", "送風機"), ("cp1251", "Насос"), ("gbk", "电机")]
)
def test_declared_code_page(tmp_path, page, machine):
    data = f"machine,station,bore_diameter\n{machine},A,4\n".encode(page)
    try:  # the name of the machine alone may tell its page; else the cell is shown as each page has it
        assert read(tmp_path, data).stations.machines == (machine,)
    except InputError as error:
        assert error.code == "encoding"
        assert "A2" in str(error)
    assert read(tmp_path, data, Names(Mapping(encoding=page))).stations.machines == (machine,)


def test_separator_line_counts_as_a_line(tmp_path):
    reading = read(tmp_path, "sep=;\nmachine;station;bore_diameter\nM;A;7,5\n")
    assert reading.stations.number("bore_diameter").tolist() == [7.5]
    assert reading.stations.place("bore_diameter", 0).cell == "C3"


def test_decimal_comma_does_not_vote_for_the_comma():
    assert choose_delimiter(b"a;b;c\n1,5;2,5;3,5\n1,5;2,5;3,5\n") == ";"
    assert choose_delimiter(b"a,b,c\n1.5,2.5,3.5\n") == ","
    assert choose_delimiter(b'a,b\n"1;2;3","4;5;6"\n') == ","
    assert choose_delimiter(b"only\none\ncolumn\n") == ","


def test_quotes_and_lines_inside_cells(tmp_path):
    text = (
        "machine,station,bearing_designation,bore_diameter\n"
        '"M, the ""first""",A,"two\nlines",4\n"M, the ""first""",B,x,5\n'
    )
    reading = read(tmp_path, text)
    assert reading.stations.machines == ('M, the "first"',)
    assert reading.stations.text("bearing_designation").tolist() == ["two\nlines", "x"]
    assert [reading.stations.place("bore_diameter", r).cell for r in (0, 1)] == ["D2", "D4"]


def test_quote_that_is_never_closed(tmp_path):
    with pytest.raises(InputError, match="open-quote"):
        read(tmp_path, 'machine,station,bore_diameter\nM,A,4\nM,"B,4\nM,C,4\n')


def test_ragged_rows_blank_lines_and_no_final_line_end(tmp_path):
    reading = read(tmp_path, "\n\nmachine,station,bore_diameter,,\nM,A,4,,\n\nM,B,5")
    assert reading.stations.number("bore_diameter").tolist() == [4.0, 5.0]
    assert reading.stations.place("bore_diameter", 1).cell == "C6"


def test_nothing_is_coerced(tmp_path):
    text = "machine,station,bearing_designation,bore_diameter\nNA,001,None,4\nNA,002,nan,5\n"
    stations = read(tmp_path, text).stations
    assert stations.machines == ("NA",)
    assert stations.text("station").tolist() == ["001", "002"]
    assert stations.text("bearing_designation").tolist() == ["None", "nan"]


def test_missing_value_words_are_told_and_not_used(tmp_path):
    reading = read(tmp_path, "machine,station,bore_diameter,outside_diameter\nM,A,-,TBD\nM,B,4,11\n")
    told = {(p.place.cell, p.read, p.code) for p in reading.stations.problems if p.kind == "unreadable"}
    assert told == {("C2", "-", "not-applicable"), ("D2", "TBD", "not-known")}


def test_large_and_small_files_are_read_alike(tmp_path):
    row = "M{0:05d},{1},{2}.5,4 k5,D\n"
    head = "machine,station,bore_diameter,shaft_seat_diameter,drawing_number\n"
    lines = [row.format(i // 2, "AB"[i % 2], i % 90 + 1) for i in range(60_000)]
    large = read(tmp_path, head + "".join(lines))
    quoted = read(tmp_path, head + "".join(lines).replace("4 k5", '"4 k5"'))
    assert (large.stations.number("bore_diameter") == quoted.stations.number("bore_diameter")).all()
    assert (
        large.stations.place("bore_diameter", 59_999).cell
        == quoted.stations.place("bore_diameter", 59_999).cell
        == "C60001"
    )
    assert large.stations.machines == quoted.stations.machines
    ragged = read(tmp_path, head + "".join(lines) + "M99999,A,4.5\n")
    assert len(ragged.stations) == 60_001


def test_comma_decimals_in_a_long_column(tmp_path):
    head = "machine;station;bore_diameter;outside_diameter\n"
    lines = [f"M{i};A;{i % 50},25;{i % 50 + 1},{i % 1000:03d}\n" for i in range(3000)]
    stations = read(tmp_path, head + "".join(lines)).stations
    assert stations.number("bore_diameter")[7] == 7.25
    assert stations.number("outside_diameter")[7] == pytest.approx(8.007)
    assert stations.problems == ()


def test_columns_set_apart_by_blanks(tmp_path):
    path = tmp_path / "t.txt"
    path.write_text(
        "Seats of the small spindle\n\n"
        "machine  station  bore_diameter  shaft_seat_diameter  lubrication\n"
        "M 1      A        4              4 +0.006/+0.001      grease\n"
        "         B        5                                   oil jet\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert reading.stations.machines == ("M 1",)
    assert reading.stations.number("bore_diameter").tolist() == [4, 5]
    assert reading.stations.choice("lubrication").texts().tolist() == ["grease", "oil jet"]
    assert reading.stations.size("shaft_seat_diameter").upper[0] == pytest.approx(0.006)
    assert reading.stations.place("bore_diameter", 1).cell == "C5"
    assert [u.value for u in reading.unused] == ["Seats of the small spindle"]


def test_table_drawn_with_vertical_bars(tmp_path):
    path = tmp_path / "t.md"
    path.write_text(
        "| machine | station | bore_diameter |\n|---------|---------|---------------|\n| M | A | 4 |\n| M | B | 5 |\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert reading.stations.number("bore_diameter").tolist() == [4, 5]
    assert reading.stations.problems == ()
