"""Positions that a workbook holds as numbers over columns, and a column of sources beside positions."""

import pytest
from openpyxl import Workbook

from linter.reading import read_table

HEADS = {
    "en": ("Characteristic", "Unit", ("Nominal", "Tol."), "Bearing designation", "Shaft seat", "Seat diameter",
           "Cylindricity"),
    "es": ("Característica", "Unidad", ("Nominal", "Tol."), "Designación del rodamiento", "Asiento del eje", "Diámetro",
           "Cilindricidad"),
    "de": ("Merkmal", "Einheit", ("Nennmaß", "Toleranz"), "Lagerbezeichnung", "Wellensitz", "Durchmesser",
           "Zylinderform"),
    "zh": ("项目", "单位", ("公称尺寸", "公差"), "轴承型号", "轴颈", "配合直径", "圆柱度"),
}  # fmt: skip


@pytest.mark.parametrize("language", [*HEADS])
@pytest.mark.parametrize("numbers", [(1, 2), (1.0, 2.0), ("1", "2")])
def test_numbers_over_columns_are_positions(tmp_path, language, numbers):
    name, unit, below, bearing, part, diameter, form = HEADS[language]
    book = Workbook()
    page = book.active
    page.append([name, numbers[0], None, numbers[1], None, unit])
    page.append([None, *below, *below, None])
    page.append([bearing, "6206-2RS", None, "6004-2RS", None, None])
    page.append([part])
    page.append([diameter, 30, "j5", 20, "k5", "mm"])
    page.append([form, 5, None, 4, None, "µm"])
    for area in ("A1:A2", "B1:C1", "D1:E1", "F1:F2"):
        page.merge_cells(area)
    book.save(tmp_path / "sheet.xlsx")
    stations = read_table(tmp_path / "sheet.xlsx").stations
    assert stations.text("station").tolist() == ["1", "2"]
    assert stations.text("bearing_designation").tolist() == ["6206-2RS", "6004-2RS"]
    size = stations.size("shaft_seat_diameter")
    assert (size.nominal.tolist(), size.tolerance_class.tolist()) == ([30, 20], ["j5", "k5"])
    assert stations.number("shaft_seat_cylindricity").tolist() == [0.005, 0.004]


def test_counts_of_a_row_of_values_are_no_positions(tmp_path):
    book = Workbook()
    page = book.active
    for row in (["Characteristic", "A", "B"], ["Shaft seat diameter [mm]", 20, 25], ["Number of spacers", 1, 2]):
        page.append(row)
    book.save(tmp_path / "sheet.xlsx")
    stations = read_table(tmp_path / "sheet.xlsx").stations
    assert stations.text("station").tolist() == ["A", "B"]


@pytest.mark.parametrize(
    ("source", "head"),
    [
        ("Основание", "Элемент;Характеристика;Единица;{};Опора А;Опора Б"),
        ("Ref. doc.", "Part;Feature;Units;{};Brg A;Brg B"),
    ],
)
def test_a_column_of_sources_beside_positions_is_none(tmp_path, source, head):
    path = tmp_path / "sheet.csv"
    text = f"{head.format(source)}\nBearing;Bearing designation;;list;6206-2RS;6306/C3\n"
    text += ";Axial role;;calc.;locating;floating\n"
    path.write_text(text + "Shaft;Diameter;mm;drawing;30 j5;30 k5\n", "utf-8")
    stations = read_table(path).stations
    assert len(stations.text("station")) == 2
    assert stations.text("bearing_designation").tolist() == ["6206-2RS", "6306/C3"]
