"""What stands above tables: a machine by the word for its sort, a revision in one cell, positions."""

import pytest

from linter.reading import Reading, read_table
from linter.reading.layouts.title import pair_in_cell
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

_TABLE = [
    "Position|Bearing|Shaft seat|Housing seat|Lubrication",
    "DE|6208|40 k5|80 J6|Grease",
    "NDE|6206|30 k5|62 H6|Grease",
]


def read(tmp_path, rows: list[str]) -> Reading:
    path = tmp_path / "table.tsv"
    path.write_text("\n".join(row.replace("|", "\t") for row in rows), encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize(
    ("rows", "machine"),
    [
        (["Model|SCB-55||Drg. No.|3-22|Rev.|2", "Speed (rpm)|3540||Rotor wt. (kg)|11.8||Cooling|air stream"], "SCB-55"),
        (["Dwg|AX-1|Rev 1", "Fan model|DF 630 direct"], "DF 630 direct"), (["Pumpentyp|KSP 40"], "KSP 40"),
        (["Чертёж|АБВ.001|Изм. 2", "Тип насоса|НЦ-40"], "НЦ-40"), (["图号 ZD-40|版本 A|型号|XS-40"], "XS-40"),
        (["Motor|7.5 kW", "Modèle|VX 12"], "VX 12"), (["Machine|M 1", "Model|VX 12"], "M 1"),
        (["Motor|7.5 kW"], ""), (["Model|6208-2Z"], ""),
    ],
)  # fmt: skip
def test_the_word_for_a_sort_names_the_machine_above_its_table(tmp_path, rows, machine):
    reading = read(tmp_path, [*rows, "", *_TABLE])
    assert set(reading.stations.text("machine")) == {machine or "table"}
    assert list(reading.stations.size("shaft_seat_diameter").nominal) == [40, 30]
    assert set(reading.stations.text("drawing_number")) <= {"", "3-22", "AX-1", "АБВ.001", "ZD-40"}


@pytest.mark.parametrize("label", ["Pump type", "Model", "Getriebetyp", "型式"])
@pytest.mark.parametrize("head", ["Parameter|Value", "Item|DE|NDE"])
def test_a_row_of_one_value_names_the_machine_by_its_sort(tmp_path, label, head):
    rows = ["Bearing|6208|6206", "Shaft seat dia [mm]|40 k5|30 k5", "Speed max [rpm]|3000|"]
    if head == "Parameter|Value":
        rows = ["DE bearing|6208", "DE shaft seat dia [mm]|40 k5", "NDE bearing|6206", "NDE shaft seat dia [mm]|30 k5"]
    reading = read(tmp_path, [head, f"{label}|TP 80/4", *rows])
    assert set(reading.stations.text("machine")) == {"TP 80/4"}


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("DRIVE END BEARING", "NON DRIVE END BEARING"), ("Bearing no. 1 (fan side)", "Bearing no. 2 (motor side)"),
        ("Lager Pumpenseite", "Lager Antriebsseite"), ("Подшипник №1", "Подшипник №2"),
        ("Inboard brg.", "Outboard brg."),
        ("Front guide bearing of cage", "Rear guide bearing of cage"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("words", ["Feature|Size|Class", "Merkmal|Maß|Toleranz", "Параметр|Размер|Допуск"])
def test_tables_below_texts_that_say_a_bearing_are_of_positions(tmp_path, one, other, words):
    rows = [("6312/C3", "60", "130"), ("NU 310", "50", "110")]
    table = [["Bearing|{}|", "Shaft seat dia|{}|k6", "Housing bore dia|{}|J7"]] * 2
    blocks = [[words, *(r.format(v) for r, v in zip(t, vs, strict=True))] for t, vs in zip(table, rows, strict=True)]
    reading = read(tmp_path, ["Fan model|DF 630", one, *blocks[0], "", other, *blocks[1]])
    assert set(reading.stations.text("machine")) == {"DF 630"}
    assert list(reading.stations.size("shaft_seat_diameter").nominal) == [60, 50]
    assert list(reading.stations.text("bearing_designation")) == ["6312/C3", "NU 310"]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Rev 1", "1"),
        ("Ausgabe C", "C"),
        ("图号 ZD-40", "ZD-40"),
        ("Чертёж №", ""),
        ("Drawing of shaft", ""),
        ("Speed: 3", "3"),
    ],
)
def test_a_number_of_a_drawing_stands_behind_its_word(text, value):
    assert pair_in_cell(text, Words(Names.built_in()))[1] == value


def test_a_note_beside_a_bearing_says_how_it_is_held(tmp_path):
    rows = [
        "Name|Value|Note",
        "DE bearing|6312|locating",
        "DE shaft seat dia [mm]|60 k6|fixed",
        "NDE bearing|NU 310|floating",
    ]
    reading = read(tmp_path, rows)
    assert reading.stations.choice("axial_role").is_in("locating").tolist() == [True, False]
    assert reading.stations.choice("axial_role").known.all()
