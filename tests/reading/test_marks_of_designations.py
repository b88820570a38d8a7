"""Quotes, footnotes, numbers of pieces and numbers of requirements are no part of a designation; two are none."""

import pytest

from linter.reading import read_table
from linter.reading.words.bearing_tables import without_marks
from linter.reading.words.bearings_in_cell import several_bearings


def stations(tmp_path, text):
    path = tmp_path / "t.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize(
    "text",
    ['"6206-2RS"', "“6206-2RS”", "'6206-2RS'", "«6206-2RS»", "6206-2RS*", "6206-2RS **", "6206-2RS¹⁾", "6206-2RS 1)",
     "6206-2RS (1)", "6206-2RS †", "6206-2RS (2 off)", "6206-2RS (2 Stk.)", "6206-2RS (2 pcs)", "6206-2RS, 2 off",
     "6206-2RS (2x)", "6206-2RS (1 шт.)", "6206-2RS (2個)", '"6206-2RS (2 off)*"'],
)  # fmt: skip
def test_marks_around_a_designation(tmp_path, text):
    assert without_marks(text) == "6206-2RS"
    quoted = text.replace('"', '""')
    read = stations(tmp_path, f'Item;DE;NDE\nBearing;"{quoted}";6205-2Z\nShaft seat mm;30 k6;25 k6\n')
    assert read.text("bearing_designation").tolist() == ["6206-2RS", "6205-2Z"]


@pytest.mark.parametrize(
    "text", ["6206-2RS", "7006 C P4", "6205-2RS1", "7206 CD/HCP4A", "6203 (ABEC 5)", "608", "6206 C3"]
)
def test_signs_of_a_designation_stay(text):
    assert without_marks(text) == text
    assert several_bearings(text) == ()
    assert several_bearings(f"{text}; {text}") == ()
    assert several_bearings(f"{text}; 6003") == (text, "6003")


@pytest.mark.parametrize(
    ("text", "both"),
    [("6305-2RS / 6304-2RS", 2), ("6310 / 6309", 2), ("6305-2Z und 6304-2Z", 2), ("6305/6304", 2),
     ("7006 C / 6006", 2), ("6305 / 6305", 0), ("6001-2Z/C3P5", 0), ("7206 CD/HCP4A", 0), ("608-2Z/C3", 0),
     ("6203/C3", 0), ("6203 and more", 0)],
)  # fmt: skip
def test_two_bearings_in_one_cell(tmp_path, text, both):
    assert len(several_bearings(text)) == both
    read = stations(tmp_path, f"Item;Value;Unit\nBearing;{text}\nShaft seat;25 k6;mm\nMax. speed;3000;rpm\n")
    told = [p.code for p in read.problems if p.parameter == "bearing_designation"]
    assert ("several-bearings" in told) is bool(both)
    assert [bool(t) for t in read.text("bearing_designation").tolist()] == [not both]


@pytest.mark.parametrize("code", ["BR-0{}", "REQ {}", "R{}", "SYS-{}"])
@pytest.mark.parametrize("head", ["Requirement", "Anforderung", "Exigence"])
def test_numbers_of_requirements_are_no_values(tmp_path, code, head):
    rows = [("Bearing", "-", "6001-2Z", "6000-2Z"), ("Shaft seat", "mm", "12 j5", "10 j5"),
            ("Shaft seat Ra", "µm", "0.4", "0.4"), ("Housing seat", "mm", "28 H6", "26 H6")]  # fmt: skip
    text = "".join(f"{code.format(k)},{','.join(row)}\n" for k, row in enumerate(rows, 1))
    read = stations(tmp_path, f"{head},Property,Unit,DE,NDE\n{text}")
    assert dict(zip(read.text("station"), read.text("bearing_designation"), strict=True)) == {
        "DE": "6001-2Z", "NDE": "6000-2Z"
    }  # fmt: skip
    assert sorted(read.size("shaft_seat_diameter").nominal.tolist()) == [10.0, 12.0]


@pytest.mark.parametrize("remark", ["hybrid", "Hybrid", "hybride", "ibrido", "ハイブリッド", "hybrid bearing"])
def test_hybrid_beside_a_designation(tmp_path, remark):
    read = stations(tmp_path, f"Item;Value;Unit;Remark\nBearing;7206 CD;;{remark}\nShaft seat;30 k4;mm;\n")
    assert read.choice("ball_material").texts().tolist() == ["silicon nitride"]
