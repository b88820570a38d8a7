"""Characteristic lists: requirements in one cell, lists split into columns, measured values that nobody may take.

Spellings of feature control frames: trade usage; symbols and datum forms from memory of ISO 1101 and ASME Y14.5.
"""

import numpy as np
import openpyxl
import pytest

from linter.model.vocabulary import vocabulary
from linter.reading import InputError, read_table
from linter.reading.cells.requirements import Requirement, characteristic_of, parameter_of, read_requirement
from linter.reading.cells.signs import ReadError
from linter.reading.words.mapping import load_mapping
from linter.reading.words.names import Names


@pytest.fixture(params=["csv", "xlsx"])
def read(tmp_path, request):
    def reader(rows: list[list], names: str = ""):
        path = tmp_path / f"list.{request.param}"
        if request.param == "csv":
            path.write_text("\n".join(";".join(map(str, row)) for row in rows), encoding="utf-8")
        else:
            book = openpyxl.Workbook()
            for row in rows:
                book.active.append([None if cell == "" else cell for cell in row])
            book.save(path)
        if names:
            (tmp_path / "names.toml").write_text(names, encoding="utf-8")
            return read_table(path, Names(load_mapping(tmp_path / "names.toml")))
        return read_table(path)

    return reader


def number(reading, name: str) -> list:
    return reading.stations.number(name).tolist()


def left(reading) -> dict[str, str]:
    return {unused.name: unused.reason for unused in reading.unused}


@pytest.mark.parametrize(
    ("text", "characteristic", "limit", "datums"),
    [
        ("⌭ .002", "cylindricity", ".002", ""), ("[⌭][0.002]", "cylindricity", "0.002", ""),
        ("⊥ .001 A", "perpendicularity", ".001", "A"), ("⟂|0,001|A", "perpendicularity", "0,001", "A"),
        ("squareness: 0.003 [A]", "perpendicularity", "0.003", "A"),
        ("[↗|0.005|A-B]", "circular run-out", "0.005", "A-B"), ("RUN 0.004 [A]", "circular run-out", "0.004", "A"),
        ("runout 0.005 wrt A", "circular run-out", "0.005", "A"), ("0.005 ↗ A", "circular run-out", "0.005", "A"),
        ("Run-out 5 µm to shaft axis", "circular run-out", "5", "shaft axis"),
        ("Rundlauf 0,005 bezogen auf A-B", "radial run-out", "0,005", "A-B"),
        ("0.005 TIR", "radial run-out", "0.005", ""),
        ("Planlauf 0,004 zu A", "axial run-out", "0,004", "A"), ("振れ 0.005 A", "circular run-out", "0.005", "A"),
        ("↗ 0.005 A-B TIR", "circular run-out", "0.005", "A-B"), ("⌰ 0.005 A - B", "total run-out", "0.005", "A - B"),
        ("Total runout 0.005 A-B", "total run-out", "0.005", "A-B"), ("全跳动 0.005 A", "total run-out", "0.005", "A"),
        ("полное радиальное биение 0,005 относительно А", "total radial run-out", "0,005", "A"),
        ("battement total 0,01 par rapport à l'axe", "total run-out", "0,01", "l'axe"),
        ("⌖|Ø0.01|A|B|C", "position", "0.01", "A B C"), ("位置度 Ø0.01 A", "position", "0.01", "A"),
        ("POS DIA 0.01 (M) A B-C(L)", "position", "0.01", "A B-C"), ("TP Ø 0.01 A, B", "position", "0.01", "A, B"),
        ("◎ Ø0.004 A", "coaxiality", "0.004", "A"), ("Koaxialität Ø0,004 zu A", "coaxiality", "0,004", "A"),
        ("○ 0.002", "roundness", "0.002", ""), ("⏤ 0.002", "straightness", "0.002", ""),
        ("⏥0.002", "flatness", "0.002", ""),
        ("∥ 0.01 A", "parallelism", "0.01", "A"), ("// 0.01 A", "parallelism", "0.01", "A"),
        ("∠ 0.01 A", "angularity", "0.01", "A"), ("⌯ 0.01 A", "symmetry", "0.01", "A"),
        ("⌒ 0.01", "line profile", "0.01", ""), ("⌓ 0.01 A", "surface profile", "0.01", "A"),
        ("Ra 0.4", "roughness Ra", "0.4", ""), ("Ra0.4", "roughness Ra", "0.4", ""),
        ("√Ra 0.4", "roughness Ra", "0.4", ""),
        ("Ra ≤ 0.4 µm", "roughness Ra", "0.4", ""), ("0.4 Ra", "roughness Ra", "0.4", ""),
        ("Rz 1.6", "roughness Rz", "1.6", ""),
        ("cylindricity max 0.002", "cylindricity", "0.002", ""),
    ],
)  # fmt: skip
def test_a_requirement_in_any_spelling(text, characteristic, limit, datums):
    read = read_requirement(text)
    assert isinstance(read, Requirement)
    assert (read.characteristic, read.number, read.datums) == (characteristic, limit, datums)


def test_what_stands_around_the_limit():
    read = read_requirement("POS DIA 0.01 mm (M) A B-C(L)")
    assert isinstance(read, Requirement)
    assert (read.unit, read.diametral, read.modifiers) == ("mm", True, ("(M)", "(L)"))


@pytest.mark.parametrize(
    "text",
    ["7.5 h5", "Ø7.500 +.000/-.005", "R0.3 MAX", "7.5", "max 7.5", "M3", "SØ 4", "7.5 H7/g6", "", "x" * 300, "A-B"],
)
def test_sizes_are_left_to_the_reader_of_sizes(text):
    assert read_requirement(text) is None


@pytest.mark.parametrize(
    ("text", "code"),
    [("h .005 A", "symbol-font"), ("j|n0.01|A", "symbol-font"), ("⌭ 0.002 ⊥ 0.003 A", "not-a-requirement"),
     ("⊥ 0.01/100 A", "not-a-requirement"), ("↗ 0.005 see note 3", "not-a-requirement")],
)  # fmt: skip
def test_what_is_not_understood_is_said(text, code):
    read = read_requirement(text)
    assert (read.code if isinstance(read, ReadError) else None) == code


def test_a_characteristic_reaches_the_parameter_of_its_feature_or_none():
    fits = {
        ("shaft_seat_diameter", "total run-out"): "shaft_seat_runout",
        ("shaft_seat_diameter", "cylindricity"): "shaft_seat_cylindricity",
        ("housing_seat_diameter", "roughness Ra"): "housing_seat_roughness",
        ("housing_seat_diameter", "position"): "coaxiality_of_bores",
        ("shaft_seat_diameter", "coaxiality"): "coaxiality_of_shaft_seats",
        ("shaft_shoulder_diameter", "perpendicularity"): "shaft_shoulder_runout",
        ("housing_shoulder_runout", "axial run-out"): "housing_shoulder_runout",
    }
    for (named, characteristic), meant in fits.items():
        assert parameter_of(named, characteristic) == (meant, "")
        assert meant in vocabulary()
    for named, characteristic in (
        ("shaft_seat_diameter", "axial run-out"), ("shaft_seat_diameter", "perpendicularity"),
        ("shaft_seat_diameter", "roundness"), ("shaft_seat_cylindricity", "total run-out"),
        ("shaft_shoulder_diameter", "radial run-out"), ("bore_diameter", "cylindricity"),
        ("shaft_seat_diameter", "roughness Rz"), ("shaft_seat_diameter", "length"), ("bearing_span", "diameter"),
    ):  # fmt: skip
        name, reason = parameter_of(named, characteristic)
        assert not name and reason


ARTICLE = [
    ["Part Number", "RB-0412"],
    ["Char. No.", "Reference Location", "Characteristic", "Requirement", "Units", "Results", "Comments"],
    [1, "Sh 1 B4", "Shaft seat diameter A", "Ø7.500 +.000/-.005", "mm", 7.498, ""],
    [2, "Sh 1 B4", "Shaft seat A cylindricity", "⌭ .002", "mm", 0.0012, ""],
    [3, "Sh 1 B4", "Shaft seat A", "[⌰|0.005|A-B]", "mm", 0.003, ""],
    [4, "Sh 1 B4", "Shaft shoulder A", "⊥ .001 A", "mm", 0.0005, ""],
    [5, "Sh 1 B4", "Shaft seat A", "Ra 0.4", "", 0.31, ""],
    [6, "Sh 1 B4", "Housing seat A", "⌖|Ø0.01|A|B|C", "mm", 0.004, ""],
    [7, "Sh 1 B4", "Shaft seat A", "○ 0.001", "mm", 0.0004, ""],
    [8, "Sh 1 B4", "Shaft seat B", "h .005 A", "mm", 0.0004, ""],
    [9, "Sh 1 B4", "Shaft seat runout B", "RUN 0.004 [A]", "mm", 0.004, ""],
    [10, "Sh 1 B4", "Shaft fillet radius A", "R0.3 MAX", "mm", 0.2, ""],
]


def test_first_article_list_with_free_requirements(read):
    reading = read(ARTICLE)
    size = reading.stations.size("shaft_seat_diameter")
    assert (size.nominal[0], size.lower[0], size.upper[0]) == (7.5, -0.005, 0.0)
    assert number(reading, "shaft_seat_cylindricity")[0] == 0.002
    assert number(reading, "shaft_seat_runout") == [0.005, 0.004]
    assert number(reading, "shaft_shoulder_runout")[0] == 0.001
    assert number(reading, "shaft_seat_roughness")[0] == 0.4
    assert number(reading, "coaxiality_of_bores") == [0.01, 0.01]
    assert number(reading, "shaft_fillet_radius")[0] == 0.3
    assert np.isnan(reading.stations.size("shaft_seat_diameter").nominal[1])
    codes = {(p.code, p.place.cell) for p in reading.stations.problems}
    assert {("symbol-font", "D10"), ("characteristic", "D8"), ("characteristic", "D7")} <= codes
    assert all(p.kind == "assumption" for p in reading.stations.problems if p.code == "characteristic")
    reasons = left(reading)
    assert reasons["Shaft seat A"] == "roundness of shaft seat is no parameter of a review"
    assert reasons["Results"].startswith("measured values")
    whole = {u.place.cell: u.read for u in reading.understood}
    assert whole["D5"] == "[⌰|0.005|A-B]"


def test_list_split_into_columns(read):
    reading = read(
        [
            ["Balloon", "Sheet-Zone", "Feature", "Type", "Nominal", "Upper Tol", "Lower Tol", "USL", "LSL", "Unit",
             "Gage", "Actual 1", "Actual 2", "Pass/Fail"],
            [1, "1-B4", "Shaft seat A", "Diameter", 7.5, 0, -0.005, 7.5, 7.495, "mm", "mic", 7.498, 7.497, "Pass"],
            [2, "1-B4", "Shaft seat A", "Total runout", 0, "", "", 0.005, "", "mm", "mic", 0.003, 0.002, "Pass"],
            [3, "1-B4", "Shaft shoulder A", "Perpendicularity", 0.003, "", "", "", "", "mm", "", 0.003, 0.002, "Pass"],
            [4, "1-B4", "Shaft seat A", "Surface finish", 0.4, "", "", "", "", "µm", "CMM", 0.3, 0.2, "Pass"],
            [5, "1-B4", "Housing seat A", "Diameter", 16, "", "", 16.008, 16, "mm", "CMM", 16.001, 16.002, "Pass"],
            [6, "1-B4", "Housing seat A", "Cylindricity", "", "", "", 0.003, "", "mm", "CMM", 0.003, 0.002, "Pass"],
            [7, "1-B4", "Shaft seat A", "Length", 12, "", "", "", "", "mm", "CMM", 12.003, 12.002, "Pass"],
        ]
    )  # fmt: skip
    assert reading.stations.problems == ()
    shaft, housing = reading.stations.size("shaft_seat_diameter"), reading.stations.size("housing_seat_diameter")
    assert (shaft.nominal[0], shaft.lower[0], shaft.upper[0]) == (7.5, -0.005, 0)
    assert (housing.smallest[0], housing.largest[0]) == pytest.approx((16, 16.008))
    assert number(reading, "shaft_seat_runout") == [0.005]
    assert number(reading, "shaft_shoulder_runout") == [0.003]
    assert number(reading, "shaft_seat_roughness") == [0.4]
    assert number(reading, "housing_seat_cylindricity") == [0.003]
    reasons = left(reading)
    for column in ("Actual 1", "Actual 2", "Pass/Fail"):
        assert reasons[column] == "measured values or verdicts; the design states what is reviewed"
    assert any(u.value == "12" and "length" in u.reason for u in reading.unused)


def test_numbers_of_characteristics_are_names_where_the_mapping_says_so(read):
    reading = read(
        [
            ["Char. No.", "Reference Location", "Characteristic Designator", "Requirement", "Results", "Comments"],
            [1, "Sh 1 B4", "Key", "Ø7.500 +.000/-.005 mm", 7.498, ""],
            [2, "Sh 1 B4", "Key", "⌭ .002 mm", 0.0012, ""],
            [12, "Sh 1 B4", "Key", "⊥ .003 mm A", 0.0012, ""],
            [13, "Sh 1 B4", "", "Ø7.500 +.000/-.005 mm", 7.498, ""],
        ],
        '[names]\n"1" = {parameter = "shaft_seat_diameter", station = "A"}\n'
        '"2" = {parameter = "shaft_seat_diameter", station = "A"}\n'
        '"12" = {parameter = "shaft_shoulder_runout", station = "A"}\n',
    )
    assert reading.stations.problems == ()
    assert reading.stations.size("shaft_seat_diameter").lower.tolist() == [-0.005]
    assert number(reading, "shaft_seat_cylindricity") == [0.002]
    assert number(reading, "shaft_shoulder_runout") == [0.003]
    assert left(reading)["13"] == "no parameter has this name"


def test_measured_values_alone_are_no_table_of_a_design(read):
    with pytest.raises(InputError):
        read([["Char. No.", "Characteristic", "Actual 1", "Actual 2"], [1, "Shaft seat diameter A", 7.498, 7.497]])


def test_a_roughness_in_a_unit_of_sizes_is_asked_about(read):
    reading = read(
        [["Name", "Requirement", "Unit"], ["Shaft seat A", "Ra 0.4", "mm"], ["Shaft seat diameter A", "7.5 h5", "mm"]]
    )
    assert [p.code for p in reading.stations.problems] == ["ambiguous-unit"]
    assert not reading.stations.known("shaft_seat_roughness").any()


def test_a_type_of_data_is_no_kind_of_characteristic(read):
    reading = read([["Name", "Type", "Value", "Unit"], ["Shaft seat diameter A", "Length", "7.5 h5", "mm"]])
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [7.5]


@pytest.mark.parametrize(
    "entry", ["cylindricity", "total run-out", "perpendicularity", "coaxiality", "position", "roughness Ra"]
)
def test_words_of_all_languages_name_a_characteristic(entry):
    words = {"cylindricity": "cylindricity|Zylinderform|cylindricité|cilindricidad|cilindricità"
                             "|цилиндричность|円筒度|圆柱度",
             "total run-out": "total runout|Gesamtlauf|battement total|salto total|oscillazione totale"
                              "|полное биение|全振れ|全跳动",
             "perpendicularity": "squareness|Rechtwinkligkeit|perpendicularité|perpendicularidad|perpendicolarità"
                                 "|перпендикулярность|直角度|垂直度",
             "coaxiality": "concentricity|Koaxialität|coaxialité|coaxialidad|coassialità|соосность|同軸度|同轴度",
             "position": "true position|Position|localisation|posición|localizzazione|позиционный допуск|位置度",
             "roughness Ra": "surface finish|Rauheit|rugosité|rugosidad|rugosità|шероховатость"
                             "|表面粗さ|粗糙度"}  # fmt: skip
    for word in words[entry].split("|"):
        assert characteristic_of(word) == characteristic_of(word.upper()) == entry, word


def test_frames_in_the_cells_of_their_own_parameters(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "machine;station;shaft_seat_runout;Rundlauf Wellensitz [mm];shaft_seat_roughness;housing_shoulder_runout\n"
        "M;A;⌰ 0.005 A-B;;Ra 0.4;⊥ 0.008 A\n"
        "M;B;total run-out 6 µm A-B;;Rz 4;○ 0.002\n"
        "M;C;;[↗|0.004|A-B];Ra 0.8 µm;0.01\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.number("shaft_seat_runout").tolist() == [0.005, 0.006, 0.004]
    assert np.array_equal(stations.number("shaft_seat_roughness"), [0.4, np.nan, 0.8], equal_nan=True)
    assert np.array_equal(stations.number("housing_shoulder_runout"), [0.008, np.nan, 0.01], equal_nan=True)
    said = {problem.place.cell: (problem.kind, problem.message) for problem in stations.problems}
    assert set(said) == {"D4", "E3", "F3"}
    assert said["D4"][0] == "assumption" and "circular run-out is taken for the total" in said["D4"][1]
    assert "states roundness, which housing_shoulder_runout is not" in said["F3"][1]
