"""Headings built from parts, and columns judged by their cells."""

import itertools
import math
from pathlib import Path

import pytest

from linter.model.stations import Problem
from linter.reading import Reading, read_table
from linter.reading.words.names import Match, Names

NAMES = Names.built_in()

# What a designer of each language would say of a feature, in the words of the trade: shaft and seat, housing and bore,
# and what is stated of them. Orders and units are put together below.
LANGUAGES = {
    "en": (
        ("shaft", "shaft seat"), ("housing", "housing bore"), "fit", "tolerance", "roughness", "cylindricity", "fillet",
    ),
    "de": (
        ("Welle", "Wellensitz"), ("Gehäuse", "Gehäusebohrung"), "Passung", "Toleranz", "Rauheit", "Zylinderform",
        "Ausrundung",
    ),
    "fr": (
        ("arbre", "portée d'arbre"), ("logement", "alésage du logement"), "ajustement", "tolérance", "rugosité",
        "cylindricité", "congé",
    ),
    "es": (
        ("eje", "asiento del eje"), ("alojamiento", "agujero del alojamiento"), "ajuste", "tolerancia", "rugosidad",
        "cilindricidad", "acuerdo",
    ),
    "it": (
        ("albero", "sede dell'albero"), ("alloggiamento", "foro dell'alloggiamento"), "accoppiamento", "tolleranza",
        "rugosità", "cilindricità", "raccordo",
    ),
    "ja": (("軸", "軸の取付部"), ("ハウジング", "ハウジング穴"), "はめあい", "公差", "表面粗さ", "円筒度", "隅"),
    "zh": (("轴", "轴颈"), ("轴承座", "轴承座孔"), "配合", "公差", "粗糙度", "圆柱度", "圆角"),
    "ru": (
        ("вал", "шейка вала"), ("корпус", "отверстие корпуса"), "посадка", "допуск", "шероховатость", "цилиндричность",
        "галтель",
    ),
}  # fmt: skip
MEANT = (
    ("_seat_diameter", "class"), ("_seat_diameter", "class"), ("_seat_roughness", "value"),
    ("_seat_cylindricity", "value"), ("_fillet_radius", "value"),
)  # fmt: skip
UNITS = {"_seat_roughness": ("", " [µm]", " (µm)", " µm"), "_seat_diameter": ("",)}


def generated():
    for language, (shaft, housing, *said) in LANGUAGES.items():
        for side, words in (("shaft", shaft), ("housing", housing)):
            for (suffix, aspect), quality in zip(MEANT, said, strict=True):
                for part in words[:1] if suffix == "_fillet_radius" else words:
                    units = UNITS.get(suffix, ("", " [mm]", " mm"))
                    for order, unit in itertools.product(((part, quality), (quality, part)), units):
                        for joint in ("",) if language in ("ja", "zh") else (" ", "_", ", "):
                            yield f"{joint.join(order)}{unit}", side + suffix, aspect


@pytest.mark.parametrize("word", sorted({row[0] for row in generated()}))
def test_heading_of_parts_names_one_parameter(word):
    expected = {(parameter, aspect) for text, parameter, aspect in generated() if text == word}
    match = NAMES.find(word)
    assert match is not None, word
    assert {(match.parameter, match.aspect)} == expected


@pytest.mark.parametrize(
    "word",
    [
        "shaft", "housing colour", "fit", "tolerance", "shaft housing fit", "roughness", "shaft width", "fillet R max",
        "housing material cost", "shaft seat length", "shaft bearing bore fit", "ring tolerance",
        "Welle Gehäuse Passung", "shaft fit supplier", "shoulder", "shaft chamfer",
    ],
)  # fmt: skip
def test_heading_with_a_part_missing_or_strange_names_nothing(word):
    assert NAMES.find(word) is None


def test_station_and_unit_stand_around_the_parts():
    match = NAMES.find("Rauheit Gehäusebohrung B [µm]")
    assert match is not None
    assert (match.parameter, match.station, match.unit) == ("housing_seat_roughness", "B", "µm")
    assert NAMES.find("Rauheit Gehäusebohrung [kg]") is None


def read(tmp_path: Path, text: str) -> Reading:
    path = tmp_path / "t.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path)


def told(reading: Reading, *codes: str) -> list[Problem]:
    return [problem for problem in reading.stations.problems if problem.code in codes]


@pytest.mark.parametrize(
    "word",
    ["Bearing", "Lager", "Roulement", "Cuscinetto", "Rodamiento", "軸受", "轴承", "Подшипник", "Designation", "Brg",
     "P/N", "Type", "Lager-Nr.", "型番", "型号", "Référence", "Zzx"],
)  # fmt: skip
def test_column_of_designations_is_the_designation_whatever_its_heading(tmp_path, word):
    reading = read(tmp_path, f"machine,{word},speed_max,shaft seat [mm]\nM,608-2Z,1000,8 h5\nM,608-2Z,,8 k5\n")
    s = reading.stations
    assert s.text("bearing_designation").tolist() == ["608-2Z", "608-2Z"]
    assert s.text("station").tolist() == ["row 2", "row 3"]
    assert s.number("bore_diameter").tolist() == [8, 8]


@pytest.mark.parametrize("word", ["Bearing", "Lager", "軸受"])
def test_bearing_heading_over_names_of_positions_stays_the_station(tmp_path, word):
    s = read(tmp_path, f"machine,{word},bore_diameter,speed_max\nM,DE,8,1000\nM,NDE,8,\n").stations
    assert s.text("station").tolist() == ["DE", "NDE"]


@pytest.mark.parametrize("word", ["Pos.", "Location", "Ref"])
def test_place_names_the_stations_where_nothing_else_does(tmp_path, word):
    s = read(tmp_path, f"machine,{word},Bearing,speed_max\nM,DE,6203,1000\nM,NDE,6203,\n").stations
    assert s.text("station").tolist() == ["DE", "NDE"]
    assert s.text("bearing_designation").tolist() == ["6203", "6203"]


@pytest.mark.parametrize("word", ["ID", "id", "No.", "#", "Item"])
def test_running_number_is_never_a_bore(tmp_path, word):
    s = read(tmp_path, f"machine,station,{word},OD [mm],ring_width\nM,A,1,22,7\nM,B,2,22,7\n").stations
    assert not s.known("bore_diameter").any()


def test_id_beside_the_outside_diameter_is_the_bore(tmp_path):
    s = read(tmp_path, "machine,station,ID [mm],OD [mm]\nM,A,8,22\nM,B,8,22\n").stations
    assert s.number("bore_diameter").tolist() == [8, 8]


def test_lone_letter_is_no_symbol(tmp_path):
    assert (
        not read(tmp_path, "machine,station,speed_max,D [mm]\nM,A,1,8\nM,B,,9\n")
        .stations.known("outside_diameter")
        .any()
    )
    s = read(tmp_path, "machine,station,d [mm],D [mm],B [mm]\nM,A,8,22,7\nM,B,8,22,7\n").stations
    assert s.number("outside_diameter").tolist() == [22, 22]


@pytest.mark.parametrize(
    ("head", "cells"), [("Bore [mm]", "22 H7"), ("Bohrung [mm],Toleranz", "22,K6"), ("Alésage [mm]", "22 +0.021/0")]
)
def test_bore_with_a_hole_class_or_deviations_is_a_housing_seat(tmp_path, head, cells):
    s = read(tmp_path, f"machine,station,ring_width,{head}\nM,A,7,{cells}\nM,B,7,{cells}\n").stations
    assert not s.known("bore_diameter").any()
    assert s.size("housing_seat_diameter").nominal.tolist() == [22, 22]
    assert (s.size("housing_seat_diameter").upper > 0).all()


def test_width_behind_a_seat_is_not_the_rings(tmp_path):
    reading = read(tmp_path, "machine,station,shaft_seat_diameter,Width [mm]\nM,A,8 h5,12\nM,B,8 h5,12\n")
    assert not reading.stations.known("ring_width").any()
    assert [p.kind for p in told(reading, "unused-data")] == ["unreadable"]
    s = read(tmp_path, "machine,station,bore_diameter,Width [mm]\nM,A,8,7\nM,B,8,7\n").stations
    assert s.number("ring_width").tolist() == [7, 7]


@pytest.mark.parametrize(
    ("head", "cells", "classes"),
    [
        ("Tol d,Tol D", "k5,H6", ("k5", "H6")),
        ("Passung d,Passung D", "k5,H6", ("k5", "H6")),
        ("shaft fit,housing fit", "k5,H6", ("k5", "H6")),
        ("軸公差,ハウジング公差", "k5,H6", ("k5", "H6")),
        ("Tol d,Tol D", "H6,k5", ("", "")),
    ],
)
def test_class_columns_take_the_diameter_of_the_bearing(tmp_path, head, cells, classes):
    reading = read(tmp_path, f"machine,station,Bearing,{head}\nM,A,608,{cells}\nM,B,608,{cells}\n")
    s = reading.stations
    found = tuple(s.size(f"{side}_seat_diameter").tolerance_class[0] for side in ("shaft", "housing"))
    assert found == classes
    if classes[0]:
        assert s.size("shaft_seat_diameter").nominal.tolist() == [8, 8]
        assert s.size("housing_seat_diameter").nominal.tolist() == [22, 22]
        assert len(told(reading, "nominal-of-bearing")) == 4


def test_nominal_that_cannot_be_used_is_not_replaced(tmp_path):
    reading = read(
        tmp_path, "machine,station,Bearing,shaft seat [mm],shaft seat class\nM,A,608,about 8,k5\nM,B,608,8,k5\n"
    )
    assert reading.stations.known("shaft_seat_diameter").tolist() == [False, True]


def test_clearance_and_precision_are_told_by_their_cells(tmp_path):
    s = read(tmp_path, "machine,station,bore_diameter,Clearance,Precision\nM,A,8,C3,P5\nM,B,8,CN,P5\n").stations
    assert s.choice("clearance_class").texts().tolist() == ["C3", "CN"]
    assert s.choice("tolerance_class").texts().tolist() == ["P5", "P5"]
    assert (
        not read(tmp_path, "machine,station,bore_diameter,Clearance\nM,A,8,0.5\n")
        .stations.known("clearance_class")
        .any()
    )


def test_strange_word_joined_to_a_number_is_no_designation(tmp_path):
    reading = read(tmp_path, "machine,station,bearing_designation,speed_max\nM,A,xPg603H4,1000\n")
    assert not reading.stations.known("bore_diameter").any()
    assert [p.kind for p in told(reading, "designation-not-read")] == ["unreadable"]


@pytest.mark.parametrize(
    ("heading", "parameter", "aspect"),
    [
        ("Basic dynamic load rating C", "dynamic_rating", "value"),
        ("statische Tragzahl C0 [N]", "static_rating", "value"),
        ("Charge radiale Fr", "radial_load", "value"), ("径向载荷Fr (N)", "radial_load", "value"),
        ("Largest shaft seat diameter", "shaft_seat_diameter", "max"), ("轴上偏差", "shaft_seat_diameter", "upper"),
        ("Верх. откл. отверстия корпуса", "housing_seat_diameter", "upper"),
        ("Planlauf Wellenschulter", "shaft_shoulder_runout", "value"), ("Entraxe des paliers", "bearing_span", "value"),
        ("Lager D [mm]", "outside_diameter", "value"), ("Lager d [mm]", "bore_diameter", "value"),
        ("Классе", None, None), ("Bearing B", None, None), ("Bearing C", None, None), ("load rating", None, None),
        ("Lager", None, None), ("inner ring", None, None), ("shaft load", None, None), ("clearance shaft", None, None),
    ],
)  # fmt: skip
def test_more_of_the_trade_s_words(heading, parameter, aspect):
    found = NAMES.find(heading)
    assert (found and found.parameter, found and found.aspect) == (parameter, aspect)


def test_a_letter_behind_a_dimension_is_its_symbol():
    assert NAMES.find("Outside diameter D") == Match("outside_diameter")
    assert NAMES.find("Bore diameter A") == Match("bore_diameter", station="A")
    assert NAMES.find("Ring width B") == Match("ring_width")


@pytest.mark.parametrize(("rating", "used"), [("5.1", False), ("5.1 kN", True), ("5100", True), ("5100 N", True)])
def test_a_rating_far_too_small_is_asked_about(tmp_path, rating, used):
    path = tmp_path / "table.csv"
    path.write_text(f"machine;station;bore_diameter [mm];dynamic_rating\nM;A;10;{rating}\n", encoding="utf-8")
    stations = read_table(path).stations
    assert stations.known("dynamic_rating").tolist() == [used]
    assert [p.code for p in stations.problems if p.parameter == "dynamic_rating"] == ([] if used else ["rating-unit"])


@pytest.mark.parametrize(
    ("heading", "cell"),
    [
        ("Bearing size d x D x B", "10 x 26 x 8 mm"),
        ("d×D×B [mm]", "10×26×8"),
        ("Lagerabmessungen d x D x B (mm)", "10x26x8"),
        ("轴承尺寸 d×D×B, mm", "10*26*8"),
        ("ID x OD x W (mm)", "10.0 X 26.0 X 8.0"),
    ],
)
def test_dimensions_stated_together_are_bore_outside_diameter_and_width(tmp_path, heading, cell):
    path = tmp_path / "t.csv"
    path.write_text(f"Station;{heading};Shaft seat\nA;{cell};10 k5 mm\n", encoding="utf-8")
    stations = read_table(path).stations
    sizes = [stations.number(name).tolist() for name in ("bore_diameter", "outside_diameter", "ring_width")]
    assert sizes == [[10], [26], [8]]
    assert [p.kind for p in stations.problems if p.kind == "unreadable"] == []


@pytest.mark.parametrize("cell", ["26x10x8", "10x26", "10x26x8x3", "10 x 26 x ?", "608"])
def test_dimensions_in_another_order_or_number_are_asked_about(tmp_path, cell):
    path = tmp_path / "t.csv"
    path.write_text(f"Station;d x D x B [mm];Shaft seat [mm]\nA;{cell};10 k5\n", encoding="utf-8")
    stations = read_table(path).stations
    assert all(math.isnan(stations.number(name)[0]) for name in ("bore_diameter", "outside_diameter", "ring_width"))
    assert [p.code for p in stations.problems if p.kind == "unreadable"] == ["not-three-dimensions"]


@pytest.mark.parametrize("heading", ["Bush d x D x B", "Buchse d×D×B", "D x d x B", "Seal size d x D x B", "d x D"])
def test_dimensions_of_other_parts_are_not_those_of_the_bearing(heading):
    assert NAMES.find(heading) is None


def _read_text(tmp_path, text):
    path = tmp_path / "t.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


@pytest.mark.parametrize(
    "heading",
    [
        "Fit shaft / housing",
        "Passung Welle/Gehäuse",
        "はめあい 軸/ハウジング",
        "配合 轴/座孔",
        "Ajustes eje / alojamiento",
    ],
)
@pytest.mark.parametrize("cell", ["k6 / H7", "H7/k6", "k6/G7", "m5 / M6"])
def test_fits_of_both_seats_in_one_column_go_to_the_seat_of_their_letters(tmp_path, heading, cell):
    text = f"Station;Shaft seat [mm];Housing seat [mm];{heading};Bore [mm]\nA;10;26;{cell};10\n"
    stations = _read_text(tmp_path, text)
    shaft, hole = sorted((part.strip() for part in cell.split("/")), key=str.isupper)
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == [shaft]
    assert stations.size("housing_seat_diameter").tolerance_class.tolist() == [hole]


@pytest.mark.parametrize("cell", ["k6", "k6/h5", "H7/G6", "k6/H7/x"])
def test_fits_that_are_not_one_of_each_seat_are_asked_about(tmp_path, cell):
    text = f"Station;Shaft seat [mm];Housing seat [mm];Fit shaft / housing;Bore [mm]\nA;10;26;{cell};10\n"
    stations = _read_text(tmp_path, text)
    assert [p.code for p in stations.problems if p.kind == "unreadable"] == ["not-two-fits"]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == [""]


@pytest.mark.parametrize("heading", ["± [mm]", "Shaft tolerance ± [mm]"])
def test_a_number_below_the_sign_of_half_the_band_is_half_the_band(tmp_path, heading):
    stations = _read_text(tmp_path, f"Station;Shaft seat [mm];{heading};Bore [mm]\nA;10;0.004;10\n")
    size = stations.size("shaft_seat_diameter")
    assert (size.lower.tolist(), size.upper.tolist()) == ([-0.004], [0.004])


@pytest.mark.parametrize("name", ["G6", "G7", "M6"])
def test_a_class_of_holes_in_a_column_of_tolerances_is_no_thread(tmp_path, name):
    stations = _read_text(tmp_path, f"Station;Housing seat [mm];Fit;Bore [mm]\nA;26;{name};10\n")
    assert stations.size("housing_seat_diameter").tolerance_class.tolist() == [name]


def test_a_unit_of_one_letter_behind_a_comma_is_no_station():
    assert NAMES.find("Radial load, N") == Match("radial_load", unit="N")
    assert NAMES.find("Статическая грузоподъёмность C0, Н").station is None


def test_a_symbol_behind_a_dimension_of_the_bearing_is_no_station():
    assert NAMES.find("Diamètre extérieur roulement D") == Match("outside_diameter")
    assert (match := NAMES.find("Largeur roulement B")) is None or match.station is None


@pytest.mark.parametrize(
    ("heading", "meant"),
    [
        ("Largh. cuscinetto (mm)", Match("ring_width", unit="mm")),
        ("Наруж. диаметр подшипника, мм", Match("outside_diameter", unit="mm")),
        ("rugos_sede_albero", Match("shaft_seat_roughness")),
        ("Front_axial_function", Match("axial_role", station="Front")),  # no short word for frontal
        ("dopusk_vala", Match("shaft_seat_diameter", aspect="class")),
        ("zhestkost_pruzhiny", Match("spring_rate")),
        ("T albero (°C)", Match("shaft_temperature", unit="°C")),
        ("Tmax, °C", Match("temperature_max", unit="°C")),
        ("C0, Н", Match("static_rating", unit="H")),
        ("Precarico N", Match("preload_force", unit="N")),
        ("Classe gioco radiale", Match("clearance_class")),
        ("Clase precarga", Match("rigid_preload_class")),
    ],
)
def test_short_words_letters_and_other_alphabets(heading, meant):
    assert NAMES.find(heading) == meant


@pytest.mark.parametrize("heading", ["T albero", "Inter. albero", "Rug.", "val_max", "Опорный"])
def test_what_short_words_and_letters_do_not_settle_is_not_understood(heading):
    assert NAMES.find(heading) is None


@pytest.mark.parametrize(
    ("heading", "parameter"),
    [
        ("Betriebsdrehz. (min-1)", "speed_operating"), ("betriebsdrehz_rpm", "speed_operating"),
        ("Lagerabst", "bearing_span"), ("jrnl dia", "shaft_seat_diameter"), ("Shft seat diam", "shaft_seat_diameter"),
        ("shldr dia shft", "shaft_shoulder_diameter"), ("brng wdth", "ring_width"),
        ("Rugos. arbre", "shaft_seat_roughness"),
    ],
)  # fmt: skip
def test_words_cut_short_or_without_their_vowels(heading, parameter):
    match = NAMES.find(heading)
    assert match is not None and match.parameter == parameter


@pytest.mark.parametrize("heading", ["Wellenende", "Lagerdeckel", "shaft end", "shaft len", "Gehäuseteil", "std"])
def test_words_of_other_things_are_no_words_cut_short(heading):
    assert NAMES.find(heading) is None


@pytest.mark.parametrize(
    ("heading", "parameter"),
    [
        ("Fan speed [rpm]", "speed_max"), ("Max. Trommeldrehzahl", "speed_max"), ("fan_speed_max", "speed_max"),
        ("vitesse de rotation de la turbine (tr/min)", "speed_max"), ("velocidad máxima del husillo", "speed_max"),
        ("叶轮转速(r/min)", "speed_max"), ("主軸最高回転数 [min-1]", "speed_max"),
        ("Частота вращения вала [об/мин]", "speed_max"), ("Operating speed of the impeller", "speed_operating"),
    ],
)  # fmt: skip
def test_what_turns_on_the_shaft_turns_as_fast_as_it(heading, parameter):
    match = NAMES.find(heading)
    assert match is not None and match.parameter == parameter


@pytest.mark.parametrize("heading", ["Motor speed [rpm]", "belt speed", "Fan speed", "Cutter speed [m/s]", "Drum mass"])
def test_what_may_turn_otherwise_names_no_speed(heading):
    assert NAMES.find(heading) is None


@pytest.mark.parametrize(("cells", "read"), [(("3000", "3000"), True), (("3.5", "3.5"), False), (("50", "50"), False)])
def test_a_speed_without_a_unit_is_told_by_figures_usual_in_r_min(tmp_path, cells, read):
    path = tmp_path / "t.csv"
    path.write_text(f"Position,Bearing,Speed\nDE,6205,{cells[0]}\nNDE,6204,{cells[1]}\n", encoding="utf-8")
    stations = read_table(path, NAMES).stations
    assert ("speed_max" in stations.numbers and not math.isnan(stations.number("speed_max")[0])) == read


@pytest.mark.parametrize(
    ("heading", "meant"),
    [
        ("Batt. radial arbre", Match("shaft_seat_runout")),
        ("Oscill. tot. albero (mm)", Match("shaft_seat_runout", unit="mm")),
        ("Rug. asiento eje (µm)", Match("shaft_seat_roughness", unit="µm")),
        ("Couple de serrage écrou", Match("nut_torque")),
        ("T° carter (°C)", Match("housing_temperature", unit="°C")),
        ("D ext.", Match("outside_diameter")),
        ("C din. (kN)", Match("dynamic_rating", unit="kN")),
        ("B roulement (mm)", Match("ring_width", unit="mm")),
        ("Albero Ø min", Match("shaft_seat_diameter", aspect="min")),
        ("precarico_n", Match("preload_force", unit="N")),
        ("преднатяг_Н", Match("preload_force", unit="H")),
        ("Durée de vie min. h", Match("required_life", unit="h")),
        ("Entraxe des roulements L", Match("bearing_span")),
        ("M rotor", Match("rotor_mass")),
        ("Oscilación frontal alojamiento", Match("housing_shoulder_runout")),
        ("Диаметр заплечика под внутреннее кольцо", Match("shaft_shoulder_diameter")),
        ("Расточка корпуса", Match("housing_seat_diameter")),
    ],
)
def test_abbreviations_symbols_and_units_beside_words(heading, meant):
    assert NAMES.find(heading) == meant


@pytest.mark.parametrize("heading", ["Batt. Ø albero", "Ø trou", "D шайбы", "Radial", "Static", "Inside"])
def test_what_can_be_of_another_part_or_feature_is_not_understood(heading):
    assert NAMES.find(heading) is None
