"""Whose a value is, told by what stands around it: marks of a program, remarks, deviations, other positions."""

import json

import numpy as np
import pytest

from linter.reading import read_table


def read(folder, text, name="t.csv"):
    (folder / name).write_text(text, encoding="utf-8")
    return read_table(folder / name)


def names(stations):
    return stations.text("station").tolist()


# --- quotation marks of the program that wrote a text


@pytest.mark.parametrize("marks", ['"{}"', "'{}'", '="{}"', "“{}”", "„{}“", "”{}”", "«{}»", "'{}"])
def test_a_text_stands_without_the_marks_around_the_whole_of_it(tmp_path, marks):
    rows = (("Bearing DE", "6206-2Z/C3"), ("Shaft seat DE [mm]", "30 k5"), ("Housing material", "EN AW-6082"))
    lines = [f'{name};"{marks.format(value).replace(chr(34), 2 * chr(34))}"' for name, value in rows]
    s = read(tmp_path, "Parameter;Value\n" + "\n".join(lines) + "\n").stations
    assert s.text("bearing_designation").tolist() == ["6206-2Z/C3"]
    assert (s.size("shaft_seat_diameter").nominal[0], s.size("shaft_seat_diameter").tolerance_class[0]) == (30, "k5")
    assert s.choice("housing_material").texts().tolist() == ["aluminium"]


def test_marks_in_a_document_and_in_a_long_table(tmp_path):
    record = {"station": "DE", "bearing_designation": '"6206-2Z"', "shaft_seat_diameter": '"30 k5"'}
    s = read(tmp_path, json.dumps([record]), "t.json").stations
    assert s.text("bearing_designation").tolist() == ["6206-2Z"]
    assert s.size("shaft_seat_diameter").nominal.tolist() == [30]
    lines = [f"m{k},A,'6206',30" for k in range(20_001)]
    s = read(tmp_path, "machine,station,bearing_designation,bore_diameter\n" + "\n".join(lines) + "\n").stations
    assert set(s.text("bearing_designation").tolist()) == {"6206"}


def test_marks_in_a_file_of_equations(tmp_path):
    lines = ('"Bearing DE" = “6206-2Z”', '"Shaft seat DE" = ”30 k5”', '"Housing seat DE" = 62mm')
    s = read(tmp_path, "\n".join(lines) + "\n", "t.txt").stations
    assert s.text("bearing_designation").tolist() == ["6206-2Z"]
    assert s.size("shaft_seat_diameter").nominal.tolist() == [30]


@pytest.mark.parametrize("text", ['1.1811"', '1 3/16"', '30 mm "ground"', '"ground" 30 mm "k5"'])
def test_other_marks_are_of_the_text(tmp_path, text):
    quoted = text.replace('"', '""')
    reading = read(tmp_path, f'Parameter;Value\nBearing DE;6206\nShaft seat DE;"{quoted}"\nHousing seat DE;62 mm\n')
    size = reading.stations.size("shaft_seat_diameter").nominal if reading.stations.known("shaft_seat_diameter") else []
    assert all(np.isnan(one) or 29 < one < 31 for one in size)


# --- a speed whose remark says that it is the highest


@pytest.mark.parametrize(
    ("name", "remark"),
    [("n_design", "max continuous speed"), ("Drehzahl", "max."), ("Betriebsdrehzahl", "Höchstdrehzahl"),
     ("Vitesse", "vitesse maximale"), ("转速", "最高转速")],
)  # fmt: skip
def test_a_remark_says_the_highest_speed(tmp_path, name, remark):
    rows = "Bearing A;6206;;\nShaft seat A;30;mm;"
    down = read(tmp_path, f"Parameter;Value;Unit;Comment\n{rows}\n{name};9000;1/min;{remark}\n").stations
    assert down.number("speed_max").tolist() == [9000]
    assert not down.known("speed_operating").any() or down.number("speed_operating").tolist() == [9000]
    side = f"Parameter;DE;NDE;Unit;Comment\nBearing;6206;6205;;\nShaft seat;30;25;mm;\n{name};9000;;1/min;{remark}\n"
    assert read(tmp_path, side).stations.number("speed_max").tolist() == [9000, 9000]


@pytest.mark.parametrize(("name", "remark"), [("Operating speed", "max. 9000"), ("Operating speed", "max"),
                                              ("speed_operating", "maximum speed")])  # fmt: skip
def test_other_remarks_leave_the_speed_as_named(tmp_path, name, remark):
    s = read(tmp_path, f"Parameter;Value;Unit;Comment\nBearing A;6206;;\n{name};8000;1/min;{remark}\n").stations
    assert "speed_max" not in s.numbers or np.isnan(s.number("speed_max")).all()
    assert s.number("speed_operating").tolist() == [8000]


# --- a bore of the housing


BORES = {
    "deviations in columns": "Item;Value;Unit;Upper dev.;Lower dev.\nShaft seat DE;20;mm;0.011;0.002\n"
    "Bearing bore DE;47;mm;0.016;0\n",
    "limits in columns": "Item;Nominal;Min;Max;Unit\nBearing bore DE;47;47.002;47.018;mm\n"
    "Shaft seat DE;20;20;20.01;mm\n",
    "deviations below": "Item;Value;Unit\nShaft seat DE;20;mm\nbore DE;47;mm\nupper deviation;0.016;mm\n"
    "lower deviation;0;mm\n",
    "larger than the shaft": "what;DE;NDE;units\njournal OD;20;17;mm\nbore ID;47;40;mm\nbearing;6204;6203;\n",
    "german": "Merkmal;Wert;Einheit;ob. Abm.;unt. Abm.\n"
    "Lagersitz Welle DE;20;mm;0,011;0,002\nBohrung DE;47;mm;0,016;0\n",
    "french": "Élément;Valeur;Unité\ndiamètre arbre DE;20;mm\nalésage DE;47;mm\nécart supérieur;0,016;mm\n"
    "écart inférieur;0;mm\n",
}


@pytest.mark.parametrize("layout", BORES)
def test_a_bore_that_no_ring_has_is_the_housings(tmp_path, layout):
    s = read(tmp_path, BORES[layout]).stations
    at = names(s).index("DE")
    assert s.size("housing_seat_diameter").nominal[at] == 47
    assert s.size("shaft_seat_diameter").nominal[at] == 20
    assert s.place("bore_diameter", at) is None


def test_a_bore_of_the_ring_stays_one(tmp_path):
    lines = ("Parameter;DE;NDE;Unit", "Bearing bore;20;17;mm", "Bearing OD;47;40;mm", "Bearing width;14;12;mm",
             "Shaft diameter;20;17;mm", " upper;0.011;0.011;mm", " lower;0.002;0.002;mm")  # fmt: skip
    s = read(tmp_path, "\n".join(lines) + "\n").stations
    assert s.number("bore_diameter").tolist() == [20, 17]
    assert s.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.011, 0.011])


def test_a_stated_bore_as_large_as_the_outer_ring_is_not_the_rings(tmp_path):
    reading = read(tmp_path, "station;bearing_designation;bore_diameter\nA;6207;72.004\n")
    assert reading.stations.number("bore_diameter").tolist() == [35]
    assert any(p.parameter == "bore_diameter" or "bore_diameter" in p.message for p in reading.stations.problems)


# --- positions


def test_a_bearing_in_a_table_that_names_its_positions_is_none(tmp_path):
    lines = (
        "Bearing position;Check;Required;Unit", "Drive side;Bearing;22212 EK C3;-", "Drive side;Shaft seat;60 k5;mm",
        "Opposite side;Bearing;NU 2210;-", "Opposite side;Shaft seat;50 k5;mm",
        "Both;Lubrication;Oil bath ISO VG 100;-",
        "Machine;Speed max;1480;rpm",
    )  # fmt: skip
    s = read(tmp_path, "\n".join(lines) + "\n").stations
    assert names(s) == ["Drive side", "Opposite side"]
    assert s.text("bearing_designation").tolist() == ["22212 EK C3", "NU 2210"]
    assert s.number("base_oil_viscosity_40").tolist() == [100, 100]
    assert s.choice("lubrication").texts().tolist() == ["oil bath", "oil bath"]


@pytest.mark.parametrize("both", ["both", "beide", "les deux", "ambos", "entrambi", "оба", "両方", "两端"])
def test_a_word_for_both_positions_is_none(tmp_path, both):
    lines = ("station;name;value;unit", "A;shaft_seat_diameter;30 k5;mm", "B;shaft_seat_diameter;25 k5;mm",
             f"{both};lubrication;grease;")  # fmt: skip
    s = read(tmp_path, "\n".join(lines) + "\n").stations
    assert names(s) == ["A", "B"]
    assert s.choice("lubrication").texts().tolist() == ["grease", "grease"]


@pytest.mark.parametrize(
    ("unit", "bearing", "front", "rear"),
    [("Узел", "Подшипник", "передний", "задний"), ("Einbauort im Gerät", "Lager", "vorne", "hinten"),
     ("Where", "Bearing", "front", "rear")],
)  # fmt: skip
def test_numbers_below_the_word_for_a_bearing_name_no_positions_beside_such(tmp_path, unit, bearing, front, rear):
    text = (
        f"{unit};{bearing};Shaft seat [mm];Housing seat [mm]\n{front};4-36106;30 k5;55 H6\n{rear};4-36105;25 k5;47 H6\n"
    )
    s = read(tmp_path, text).stations
    assert set(names(s)) == {front, rear}
    assert sorted(s.text("bearing_designation").tolist()) == ["4-36105", "4-36106"]


# --- oils and greases below their word


@pytest.mark.parametrize(
    ("line", "lubrication", "viscosity"),
    [("Oil;VG 46 oil bath;", "oil bath", 46), ("Öl;Ölbad, ISO VG 46;", "oil bath", 46),
     ("olio;bianco, VG 46;bagno", "oil bath", 46),
     ("Huile;ISO VG 46;bain", "oil bath", 46), ("Oil;ISO VG 46;see sheet 2", "", 46),
     ("Graisse;lithium complexe;", "grease", None),
     ("Fett;KP2K-30;", "grease", None), ("Grease;none;", "", None), ("Grease;12 g;", "", None)],
)  # fmt: skip
def test_what_lubricates_below_the_word_for_it(tmp_path, line, lubrication, viscosity):
    s = read(
        tmp_path, f"Parameter;Value;Notes\nBearing A;6206;\nShaft seat A;30 k5;\n{line}\nMax speed;9000 rpm;\n"
    ).stations
    stated = s.choice("lubrication").texts().tolist() if s.place("lubrication", 0) is not None else [""]
    assert stated == [lubrication]
    assert (s.number("base_oil_viscosity_40").tolist() == [viscosity]) == (viscosity is not None)


# --- a drawing and its revision in one cell


@pytest.mark.parametrize(
    ("line", "revision"),
    [("Zeichnung / Stand;LZ24-0100 / Stand 7", "7"), ("Drawing no. / Rev.;LZ24-0100 / C", "C"),
     ("Drawing;LZ24-0100 / Rev. C", "C"),
     ("Plan / indice;LZ24-0100 / B", "B")],
)  # fmt: skip
def test_a_drawing_and_its_revision_in_one_cell(tmp_path, line, revision):
    s = read(tmp_path, f"Parameter;Value\n{line}\nBearing A;6204\nShaft seat A;20 k5 mm\n").stations
    assert s.text("drawing_number").tolist() == ["LZ24-0100"]
    assert s.text("drawing_revision").tolist() == [revision]
