"""Units of loads and masses that a sentence states for the table, and loads without a unit beside inches."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.unit_sentences import kind_units

LBF = 4.4482216152605


@pytest.mark.parametrize(
    ("text", "units"),
    [
        ("Sizes in inch, surface finish in µin, loads in lbf", {"size": "inch", "rough": "µin", "load": "lbf"}),
        ("ALL DIMENSIONS IN INCHES, SURFACE FINISH IN MICROINCHES RA", {"size": "INCHES", "rough": "MICROINCHES"}),
        ("DIMS IN INCHES, FINISH IN UIN RA, LOADS IN LBF", {"size": "INCHES", "rough": "UIN", "load": "LBF"}),
        ("NOTES: FORCES IN LBF; WEIGHTS IN LBS", {"load": "LBF", "mass": "LBS"}),
        ("Maße in mm, Kräfte in kN, Massen in g", {"size": "mm", "load": "kN", "mass": "g"}),
        ("Cotes en mm ; efforts en daN", {"size": "mm", "load": "daN"}),
        ("寸法はmm、荷重はkN", {"size": "mm", "load": "kN"}),
        ("尺寸单位mm,力单位kN", {"size": "mm", "load": "kN"}),
        ("размеры в мм, нагрузки в кН", {"size": "мм", "load": "кН"}),
        ("Ra, form in µm", {"rough": "µm", "form": "µm"}),
        ("Dimensions, loads in kN", {"load": "kN"}),
    ],
)  # fmt: skip
def test_a_sentence_states_units_by_kinds(text, units):
    assert kind_units(text) == units


def _table(tmp_path, note, load="Radial load", value="140"):
    path = tmp_path / "table.csv"
    path.write_text(
        f"{note},,,,\n,,,,\nBearing,Designation,{load},Shaft seat,Shaft finish\n"
        f"DE,6303,{value},.6692,16\nNDE,6002,{value},.5906,16\n",
        encoding="utf-8",
    )
    return read_table(path).stations


def test_a_note_gives_loads_their_unit(tmp_path):
    stations = _table(tmp_path, '"Sizes in inch, finish in µin, loads in lbf"')
    assert stations.number("radial_load").tolist() == pytest.approx([140 * LBF] * 2)
    assert stations.number("shaft_seat_roughness").tolist() == pytest.approx([16 * 0.0254] * 2)


@pytest.mark.parametrize("load", ["RADIAL LOAD (LBF)", "Radial load [lbf]"])
def test_a_unit_in_capitals_is_one(tmp_path, load):
    stations = _table(tmp_path, "all dimensions in inches", load)
    assert stations.number("radial_load").tolist() == pytest.approx([140 * LBF] * 2)


def test_a_load_without_a_unit_beside_inches_is_asked_for(tmp_path):
    stations = _table(tmp_path, "all dimensions in inches")
    assert all(value != value for value in stations.number("radial_load").tolist())
    problems = [p for p in stations.problems if p.parameter == "radial_load"]
    assert {p.code for p in problems} == {"unit-doubtful"} and "lbf" in problems[0].message
    stated = _table(tmp_path, "all dimensions in mm")
    assert stated.number("radial_load").tolist() == [140.0] * 2


def test_roughness_that_no_seat_has_is_asked_for(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Bearing,Designation,Shaft seat Ra [mm],n\nDE,6303,1.6,9000\nNDE,6002,0.0008,9000\n", encoding="utf-8"
    )
    stations = read_table(path).stations
    rough = stations.number("shaft_seat_roughness").tolist()
    assert rough[0] != rough[0] and rough[1] == pytest.approx(0.8)
    assert [(p.code, p.read) for p in stations.problems if p.parameter == "shaft_seat_roughness"] == [
        ("roughness-unit", "1600")
    ]


@pytest.mark.parametrize(
    ("head", "value", "code"), [("C [N]", "5.1", "rating-unit"), ("Shaft seat Ra [mm]", "1.6", "roughness-unit")]
)
def test_of_very_many_cells_alike_a_count_is_told(tmp_path, head, value, code):
    path = tmp_path / "table.csv"
    rows = "".join(f"M{k};A;25;{value}\n" for k in range(80))
    path.write_text(f"machine;station;bore_diameter [mm];{head}\n{rows}", encoding="utf-8")
    stations = read_table(path).stations
    told = [p for p in stations.problems if p.code == code]
    assert len(told) == 51 and [p.read for p in told if p.row is None] == ["30 more cells"]
    name = told[0].parameter
    assert not stations.known(name).any()
