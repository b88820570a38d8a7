"""Sheets with a column of symbols beside the names, seats across, a title of several labels, and bearings below."""

import pytest
from openpyxl import Workbook

from linter.reading import read_table
from linter.reading.layouts.sides import side_of, within
from linter.reading.layouts.title import pair_in_cell
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())
SHEETS = {
    "en": ("No.;Description;Symbol;Units", "Bearing 1;Bearing 2", "Journal;Housing seat", "1;2",
           ("Seat diameter", "Surface finish Ra", "Cylindricity", "Radial run-out", "Shoulder diameter",
            "Max. fillet radius"),
           "Location;Bearing designation;Radial load [N]", "Drawing no. K-12, Rev. C"),
    "it": ("N.;Caratteristica;Simbolo;U.M.", "Cuscinetto 1;Cuscinetto 2", "Albero;Alloggiamento", "1;2",
           ("Diametro sede", "Rugosità Ra", "Cilindricità", "Oscillazione totale", "Diametro spallamento",
            "Raggio di raccordo max."), "Supporto;Sigla cuscinetto;Carico radiale [N]", "N. disegno K-12, Rev. C"),
    "zh": ("序号;特性;符号;单位", "轴承1;轴承2", "轴颈;座孔", "1;2",
           ("配合直径", "表面粗糙度 Ra", "圆柱度", "径向全跳动", "挡肩直径", "最大圆角半径"),
           "轴承位置;轴承型号;径向载荷 [N]", "图号 K-12, 版次 C"),
    "ja": ("No.;項目;記号;単位", "負荷側軸受;反負荷側軸受", "軸;ハウジング", "負荷側;反負荷側",
           ("直径", "粗さ Ra", "円筒度", "全振れ", "肩径", "隅R 最大"), "軸受位置;呼び番号;ラジアル荷重 [N]",
           "図番 K-12, 版数 C"),
}  # fmt: skip
VALUES = (
    ("d", "mm", "20 j5", "47 H6", "35 j5", "72 H6"), ("Ra", "µm", 0.8, 1.6, 0.4, 0.8), ("t1", "µm", 3, 6, 4, 7),
    ("t3", "µm", 8, 12, 6, 10), ("da", "mm", 25, 42, 42, 65), ("ra max", "mm", 0.6, 0.6, 1, 1),
)  # fmt: skip


def sheet(tmp_path, language):
    head, positions, parts, sides, names, below, title = SHEETS[language]
    book = Workbook()
    page = book.active
    one, two = positions.split(";")
    page.append([title])
    page.append([])
    page.append([*head.split(";"), one, None, two])
    page.append([None] * 4 + 2 * parts.split(";"))
    for number, (name, row) in enumerate(zip(names, VALUES, strict=True), 1):
        page.append([number, name, *row])
    page.append([])
    page.append(below.split(";"))
    for side, number, load in zip(sides.split(";"), ("6204", "6207/C3"), (340, 410), strict=True):
        page.append([int(side) if side.isdigit() else side, number, load])
    for area in ("A3:A4", "B3:B4", "C3:C4", "D3:D4", "E3:F3", "G3:H3"):
        page.merge_cells(area)
    book.save(tmp_path / "sheet.xlsx")
    return read_table(tmp_path / "sheet.xlsx").stations


@pytest.mark.parametrize("language", [*SHEETS])
def test_names_are_read_beside_their_symbols_and_both_tables_speak_of_two_positions(tmp_path, language):
    stations = sheet(tmp_path, language)
    assert len(stations.text("station")) == 2
    assert stations.text("bearing_designation").tolist() == ["6204", "6207/C3"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 35]
    assert stations.number("shaft_seat_cylindricity").tolist() == [0.003, 0.004]
    assert stations.number("housing_seat_runout").tolist() == [0.012, 0.01]
    assert stations.number("housing_seat_roughness").tolist() == [1.6, 0.8]
    assert stations.number("shaft_fillet_radius").tolist() == [0.6, 1]
    assert stations.number("housing_fillet_radius").tolist() == [0.6, 1]


@pytest.mark.parametrize("language", [*SHEETS])
def test_labels_of_a_title_are_taken_apart_above_merged_cells(tmp_path, language):
    stations = sheet(tmp_path, language)
    assert {*stations.text("drawing_number").tolist()} == {"K-12"}
    assert {*stations.text("drawing_revision").tolist()} == {"C"}


@pytest.mark.parametrize("label", ["图号 K-12, 版次", "図番 K-12, 版数", "Drawing no. K-12, Rev."])
def test_a_label_holds_no_number(label):
    assert pair_in_cell(f"{label} C", WORDS) == (f"{label} C", "")


@pytest.mark.parametrize(
    ("part", "text", "parameter"),
    [
        ("Shaft", "ra max", "shaft_fillet_radius"),
        ("Housing", "ra max", "housing_fillet_radius"),
        ("Gehäuse", "rb max", "housing_fillet_radius"),
        ("Shaft", "Ra max", "shaft_seat_roughness"),
        ("Housing", "Ra", "housing_seat_roughness"),
    ],
)
def test_the_letter_of_a_radius_is_no_roughness(part, text, parameter):
    assert within(WORDS, side_of(part), text).parameter == parameter
