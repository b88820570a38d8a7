"""Remarks and other tables among the rows of a list: beside the line for a part, between its rows, beside it."""

import pytest

from linter.reading import read_table

PARTS = {
    "en": ("Characteristic;Units;A;B;Remarks", "Bearing designation", "Shaft seat", "Housing seat",
           ("Seat diameter;mm", "Surface finish Ra;µm", "Fillet radius;mm"), "fine bored", "Gauge;Serial no."),
    "de": ("Merkmal;Einheit;A;B;Bemerkung", "Lagerbezeichnung", "Welle", "Gehäuse",
           ("Durchmesser;mm", "Rauheit Ra;µm", "Hohlkehlradius max.;mm"), "feingebohrt", "Messmittel;Serien-Nr."),
    "ja": ("項目;単位;A;B;備考", "呼び番号", "軸", "ハウジング", ("直径;mm", "粗さ Ra;µm", "隅R 最大;mm"), "仕上げ加工",
           "測定器;管理番号"),
}  # fmt: skip
SHAFT, HOUSING = ("20 j5;25 j5", "0.4;0.8", "0.6;0.6"), ("47 H6;52 H6", "0.8;1.6", "0.6;0.6")


def read(tmp_path, text):
    path = tmp_path / "sheet.csv"
    path.write_text(text, "utf-8")
    return read_table(path)


def listed(language, remark="", beside=("", "", "")):
    head, bearing, shaft, housing, names, _, _ = PARTS[language]
    rows = [head, f"{bearing};;6204;6205;", f"{shaft};;;;"]
    rows += [f"{name};{values};" for name, values in zip(names, SHAFT, strict=True)]
    rows += [f"{housing};;;;{remark}{beside[0]}"]
    rows += [f"{name};{values};{more}" for name, values, more in zip(names, HOUSING, (*beside[1:], ""), strict=True)]
    return "\n".join(rows) + "\n"


def check(stations):
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 25]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [47, 52]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]
    assert stations.number("shaft_fillet_radius").tolist() == [0.6, 0.6]
    assert stations.number("housing_fillet_radius").tolist() == [0.6, 0.6]


@pytest.mark.parametrize("language", [*PARTS])
@pytest.mark.parametrize("remark", ["", "own", "K-123-02"])
def test_a_remark_behind_the_line_for_a_part_hides_no_part(tmp_path, language, remark):
    reading = read(tmp_path, listed(language, PARTS[language][5] if remark == "own" else remark))
    check(reading.stations)
    if remark:
        assert any(PARTS[language][5] in u.value or "K-123" in u.value for u in reading.unused)


@pytest.mark.parametrize("language", [*PARTS])
def test_another_table_beside_the_line_for_a_part_hides_no_part(tmp_path, language):
    beside = (f";{PARTS[language][6]}", ";MX-46;S2040", ";MX-69;S4574")
    text = listed(language, "", beside)
    head, *rows = text.splitlines()
    check(read(tmp_path, "\n".join([head.rpartition(";")[0], *rows]) + "\n").stations)


@pytest.mark.parametrize(
    "note", ["Notes: seats ground after hardening", "see drawing for edge details", "nach Zeichnung"]
)
def test_a_line_of_remarks_in_the_column_of_positions_begins_none(tmp_path, note):
    text = "Position;Feature group;Description;Value;Units\n"
    for side, size, load in (("front", "35 j5", 340), ("rear", "30 j5", 410)):
        text += f"{side};Rolling bearing;Bearing designation;6207;\n;;Axial load Fa;60;N\n"
        text += (f"{note};;;;\n" if side == "rear" else "") + f";;Radial load;{load};N\n"
        text += f"{side};Shaft seat;Diameter;{size};mm\n;;Cylindricity;5;µm\n"
    stations = read(tmp_path, text).stations
    assert stations.text("station").tolist() == ["front", "rear"]
    assert stations.number("radial_load").tolist() == [340, 410]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [35, 30]
