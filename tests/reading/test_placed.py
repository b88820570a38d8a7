"""Lists and groups whose words say part and position together, and sections that hold one in another."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.placed import placed, placed_apart
from linter.reading.layouts.unit_sentences import kind_units
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())


@pytest.fixture
def read(tmp_path):
    def reader(content):
        path = tmp_path / "t.csv"
        path.write_text(content, encoding="utf-8")
        return read_table(path)

    return reader


def sizes(reading, name):
    size = reading.stations.size(name)
    return list(zip(reading.stations.text("station").tolist(), size.nominal.tolist(), strict=True))


@pytest.mark.parametrize(
    ("text", "side", "station"),
    [
        ("Welle links", "shaft", "links"), ("Arbre côté accouplement", "shaft", "côté accouplement"),
        ("Housing (NDE)", "housing", "NDE"), ("A - Shaft", "shaft", "A"), ("Lager links", "bearing", "links"),
        ("Shaft seat", "", ""), ("supporto A", "", ""), ("Shaft", "", ""),
        ("Вал ротора сторона привода", "shaft", "сторона привода"), ("Rotorwelle rechts", "shaft", "rechts"),
        ("Корпус подшипника сторона привода", "housing", "сторона привода"),
        ("Housing seat Brg 1", "housing", "1"), ("Shaft seat Brg 2", "shaft", "2"),
        ("Brg 1 housing seat", "housing", "1"),
        ("Apoyo A caja", "housing", "A"), ("ハウジング内径 前側", "housing", "前側"),
        ("Lager 1 Gehäuse", "housing", "1"),
    ],
)  # fmt: skip
def test_a_part_and_its_position_in_one_text(text, side, station):
    found = placed(text, WORDS)
    assert (found.side.side, found.station) == (side, station) if side else found is None


def test_unknown_positions_are_told_by_standing_behind_two_parts():
    found = placed_apart(["Welle Bandlauf", "Gehäuse Bandlauf", "Welle Rücklauf", "Gehäuse Rücklauf"], WORDS)
    assert [said.station for said in found.values()] == ["Bandlauf", "Bandlauf", "Rücklauf", "Rücklauf"]
    assert placed_apart(["Shaft seat", "Housing seat"], WORDS) == {}


@pytest.mark.parametrize(
    ("text", "units"),
    [
        ("Dimensions and geometrical tolerances in mm", {"size": "mm", "form": "mm"}),
        ("尺寸及形位公差单位:mm", {"size": "mm", "form": "mm"}),
        ("All dimensions in mm, Ra in µm", {"size": "mm", "rough": "µm"}),
        ("Размеры и допуски формы и расположения в мм", {"size": "мм", "form": "мм"}),
        ("Dimensions and prices in mm", {}),
        ("寸法単位 mm、許容差・幾何公差の単位 µm", {"size": "mm", "deviation": "µm", "form": "µm"}),
        ("粗さ・振れの単位：µm、寸法の単位：mm", {"size": "mm", "rough": "µm", "form": "µm"}),
        ("寸法・許容差 mm、幾何公差・面粗度 µm", {"size": "mm", "deviation": "mm", "form": "µm", "rough": "µm"}),
    ],
)
def test_sentences_that_state_one_unit_for_several_kinds(text, units):
    assert kind_units(text) == units


def test_an_inspection_list_whose_rows_say_part_and_position(read):
    reading = read(
        "Pos.;Element;Merkmal;Sollwert;Einheit;Istwert\n1;Lager links;Bezeichnung;608-2Z;-;\n"
        "2;Welle links;Sitzdurchmesser;8 k5;mm;\n3;Welle links;Ra;0,4;µm;\n4;Gehäuse links;Sitzdurchmesser;22 H6;mm;\n"
        "5;Lager rechts;Bezeichnung;626;-;\n6;Welle rechts;Sitzdurchmesser;6 k5;mm;\n"
        "7;Welle rechts;Ra;0,8;µm;\n8;Gehäuse rechts;Sitzdurchmesser;19 H6;mm;\n"
    )
    assert sizes(reading, "shaft_seat_diameter") == [("links", 8), ("rechts", 6)]
    assert sizes(reading, "housing_seat_diameter") == [("links", 22), ("rechts", 19)]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert reading.stations.text("bearing_designation").tolist() == ["608-2Z", "626"]


def test_groups_of_headings_that_say_part_and_position(read):
    reading = read(
        "Machine;Shaft A;;Housing A;Shaft B;;Housing B\n;Seat diameter [mm];Ra [µm];Seat diameter [mm];"
        "Seat diameter [mm];Ra [µm];Seat diameter [mm]\nP-1;8 k5;0.4;22 H6;6 k5;0.8;19 H6\n"
    )
    assert sizes(reading, "shaft_seat_diameter") == [("A", 8), ("B", 6)]
    assert sizes(reading, "housing_seat_diameter") == [("A", 22), ("B", 19)]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]


def test_a_group_of_the_whole_machine_beside_those_of_parts(read):
    reading = read(
        "Position;General;Shaft;Housing\n;Max. speed [1/min];Seat diameter [mm];Seat diameter [mm]\n"
        "A;9000;8 k5;22 H6\nB;9000;8 k5;22 H6\n"
    )
    assert reading.stations.number("speed_max").tolist() == [9000, 9000]


def test_numbered_sections_over_positions_side_by_side(read):
    reading = read(
        "Parameter;Unit;A;B\n1. Bearing\nDesignation;;6000;626\n2. Shaft\nSeat diameter;mm;10 k5;6 k5\nRa;µm;0.4;0.8\n"
        "3. Housing\nSeat diameter;mm;26 H6;19 H6\nRa;µm;0.8;1.6\n"
    )
    assert sizes(reading, "shaft_seat_diameter") == [("A", 10), ("B", 6)]
    assert reading.stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]


def test_parts_within_sections_of_positions_without_a_heading(read):
    one = "Position {}\nBearing\nDesignation;{}\nd;{};mm\nShaft\nSeat diameter;{};mm\nTolerance class;k5\nRa;0.4;µm\n"
    two = "Housing\nSeat diameter;{};mm\nTolerance class;H6\n"
    reading = read((one + two).format("A", "6000", 10, 10, 26) + "\n" + (one + two).format("B", "626", 6, 6, 19))
    assert sizes(reading, "shaft_seat_diameter") == [("A", 10), ("B", 6)]
    assert sizes(reading, "housing_seat_diameter") == [("A", 26), ("B", 19)]
    assert reading.stations.text("bearing_designation").tolist() == ["6000", "626"]


def test_a_dash_in_the_row_of_units_is_no_unit_of_a_class(read):
    reading = read(
        "Location;Part;Seat dia.;Tolerance;Fillet radius\n;;mm;-;mm\nA;Shaft;9;js5;0.2\nA;Housing;24;M7;0.3\n"
        "B;Shaft;7;js5;0.2\nB;Housing;19;M7;0.2\n"
    )
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["js5", "js5"]


def test_nominal_and_tolerance_below_each_position(read):
    reading = read(
        "Parameter;Position A;;Position B;;Unit\n;Nominal;Tolerance;Nominal;Tolerance;\n"
        "Bearing designation;6000;;626;;\n"
        "Shaft seat diameter;10;k5;6;js5;mm\nHousing bore;26;H6;19;H7;mm\nShaft seat Ra;0.4;;0.8;;µm\n"
    )
    assert sizes(reading, "shaft_seat_diameter") == [("A", 10), ("B", 6)]
    assert reading.stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6", "H7"]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]


def test_seats_headed_by_nominal_and_limits_alone(read):
    reading = read(
        "Pos.;Part;Nominal;Upper dev.;Lower dev.;Ra\n;;mm;mm;mm;µm\nA;Shaft;10;0;-0.009;0.4\n;Housing;26;+0.013;0;1.6\n"
        "B;Shaft;12;0;-0.011;0.4\n;Housing;28;+0.013;0;0.8\n"
    )
    assert sizes(reading, "shaft_seat_diameter") == [("A", 10), ("B", 12)]
    assert reading.stations.number("housing_seat_roughness").tolist() == [1.6, 0.8]
    assert [p.code for p in reading.stations.problems if p.code == "filled-down"] == ["filled-down"]
    limits = read("Pos;Part;Max [mm];Min [mm];Ra [µm]\nA;Shaft;10.006;10.001;0.4\nA;Housing;26.013;26.000;0.8\n")
    seat = limits.stations.size("shaft_seat_diameter")
    assert (seat.nominal + seat.lower).tolist() == pytest.approx([10.001])
    assert (seat.nominal + seat.upper).tolist() == pytest.approx([10.006])
    other = read("Pos;Part;Max [mm];Min [mm];Ra [µm];Fillet radius [mm]\nA;Shaft;10;5;0.4;1\nA;Housing;26;9;0.8;1\n")
    assert not other.stations.known("shaft_seat_diameter").any()  # a length that varies, no limits of a seat


def test_parts_and_positions_at_the_head_of_their_rows_alone(read):
    reading = read(
        "Position;Part;Characteristic;Nominal;Unit\nA;Shaft;Seat diameter;10 k5;mm\n;;Ra;0.4;µm\n"
        ";Housing;Seat diameter;26 H6;mm\n;;Ra;0.8;µm\nB;Shaft;Seat diameter;6 k5;mm\n;;Ra;0.4;µm\n"
        ";Housing;Seat diameter;19 H6;mm\n;;Ra;1.6;µm\n"
    )
    assert sizes(reading, "housing_seat_diameter") == [("A", 26), ("B", 19)]
    assert reading.stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]


def test_names_in_two_languages(read):
    assert WORDS.heading("Shaft seat / Wellensitz [mm]") == WORDS.heading("Wellensitz [mm]")
    assert WORDS.heading("Shaft seat / Gehäusebohrung").aspect != "value"  # two values


@pytest.mark.parametrize(
    ("column", "whole", "parts"),
    [
        ("Baugruppe", "Gesamt", ("Lager {}", "Rotorwelle {}", "Lagergehäuse {}", "links", "rechts")),
        ("Узел", "Сборка", ("Подшипник {}", "Вал ротора {}", "Корпус подшипника {}", "слева", "справа")),
        ("Assembly", "Assembly", ("Bearing {}", "Rotor shaft {}", "Bearing housing {}", "front", "rear")),
        ("部品", "組立", ("軸受 {}", "軸 {}", "ハウジング {}", "前側", "後側")),
    ],
)
def test_parts_with_their_position_beside_rows_of_the_whole_machine(read, column, whole, parts):
    rows = [f"{column};feature;value;unit", f"{whole};speed max;12000;1/min"]
    for at, bearing, shaft, bore in ((parts[3], "6204", 20, 47), (parts[4], "6203", 17, 40)):
        rows += [f"{parts[0].format(at)};type;{bearing};", f"{parts[1].format(at)};seat diameter;{shaft} j5;mm"]
        rows += [f"{parts[2].format(at)};seat diameter;{bore} H5;mm", f"{whole} {at};stator;96;mm"]
    reading = read("\n".join(rows) + "\n")
    assert sizes(reading, "shaft_seat_diameter") == [(parts[3], 20.0), (parts[4], 17.0)]
    assert sizes(reading, "housing_seat_diameter") == [(parts[3], 47.0), (parts[4], 40.0)]
    assert reading.stations.numbers["speed_max"].tolist() == [12000.0, 12000.0]


@pytest.mark.parametrize(
    ("shaft", "housing", "features"),
    [
        ("Eje", "Carcasa", "Ajuste;Rugosidad Ra;Cilindricidad mm;Oscilación total mm"),
        ("Welle", "Gehäuse", "Passung;Rauheit Ra;Zylinderform mm;Gesamtrundlauf mm"),
        ("轴", "轴承座", "公差带;表面粗糙度Ra;圆柱度 mm;全跳动 mm"),
    ],
)
def test_parts_that_state_the_same_are_no_positions(read, shaft, housing, features):
    blanks = ";" * features.count(";")
    head = f";{shaft};{blanks};{housing};{blanks}\nPos.;Ø mm;{features};Ø mm;{features}\n"
    rows = "A;20;k5;0,8;0,003;0,005;47;H6;1,6;0,004;0,006\nB;17;j5;0,4;0,003;0,005;40;J6;0,8;0,004;0,006\n"
    reading = read(head + rows)
    assert sizes(reading, "shaft_seat_diameter") == [("A", 20.0), ("B", 17.0)]
    assert sizes(reading, "housing_seat_diameter") == [("A", 47.0), ("B", 40.0)]
    assert reading.stations.numbers["shaft_seat_cylindricity"].tolist() == [0.003, 0.003]


@pytest.mark.parametrize(
    ("head", "parts", "places", "names", "others"),
    [
        (
            "Teil;Merkmal;Nennmaß;Einheit;Toleranz", ("Welle", "Gehäuse", "Lager"), ("A", "B"),
            ("Durchmesser Lagersitz", "Bohrung", "Bezeichnung"),
            ["Laufrad;Drehzahl max.;12000;1/min;", "Rotor;Masse;2,4;kg;", "Rotor;Drehzahl max.;9000;1/min;"],
        ),
        (
            "Part;Characteristic;Nominal;Unit;Tolerance", ("Shaft", "Housing", "Bearing"), ("A", "B"),
            ("Seat diameter", "Bore", "Designation"),
            ["Lip seal;Type;25x35x7;;", "Impeller;Diameter;120;mm;h9", "Rotor assembly;Mass;2.4;kg;",
             "Rotor assembly;Max. speed;9000;rpm;"],
        ),
        (
            "部位;項目;値;単位;公差", ("軸", "ハウジング", "軸受"), ("駆動側", "反駆動側"),
            ("はめあい径", "内径", "型番"), ["ロータ;質量;2.4;kg;", "ロータ;最高回転数;9000;min-1;"],
        ),
        (
            "Деталь;Параметр;Значение;Ед.;Поле допуска", ("Вал", "Корпус", "Подшипник"), ("левый", "правый"),
            ("Диаметр шейки", "Диаметр отверстия", "Обозначение"),
            ["Ротор;Масса;2,4;кг;", "Ротор;Макс. частота вращения;9000;об/мин;", "Муфта;Момент;12;Нм;"],
        ),
    ],
)  # fmt: skip
def test_things_of_no_position_among_parts_with_theirs(read, head, parts, places, names, others):
    """What turns is the machine's, what is of an impeller, seal or coupling is told and not used."""
    values = (("25;mm;k5", "20;mm;k5"), ("52;mm;H6", "47;mm;J6"), ("6205-2RS;;", "6204-2RS;;"))
    rows = [f"{part} {place};{name};{value}" for part, name, of in zip(parts, names, values, strict=True)
            for place, value in zip(places, of, strict=True)]  # fmt: skip
    reading = read("\n".join([head, *rows, *others, ""]))
    bearings = reading.stations.text("bearing_designation").tolist()
    seats = [[size for _, size in sizes(reading, f"{part}_seat_diameter")] for part in ("shaft", "housing")]
    assert sorted(zip(bearings, *seats, strict=True)) == [("6204-2RS", 20.0, 47.0), ("6205-2RS", 25.0, 52.0)]
    assert reading.stations.number("rotor_mass").tolist() == [2.4, 2.4]
    assert reading.stations.number("speed_max").tolist() == [9000.0, 9000.0]
    assert reading.stations.text("machine").tolist() == ["t", "t"]


@pytest.mark.parametrize(
    ("names", "places"),
    [
        (("Tipo cuscinetto", "Diametro interno d", "Sede albero"), ("Lato comando", "Lato opposto")),
        (("Lagertyp", "Lagerinnendurchmesser d", "Wellensitz"), ("Lager A", "Lager B")),
        (("軸受形式", "軸受内径 d", "軸はめあい部径"), ("前側", "後側")),
        (("Tipo de rodamiento", "Diámetro interior d", "Asiento del eje"), ("Lado accionamiento", "Lado opuesto")),
    ],
)
def test_a_number_below_a_word_for_a_type_of_bearing_designates_it(read, names, places):
    values = (("6201", "6304"), ("12", "20"), ("12 k5", "20 k5"))
    rows = [
        f"{name} - {place};{value};{'' if name == names[0] else 'mm'}"
        for name, said in zip(names, values, strict=True)
        for place, value in zip(places, said, strict=True)
    ]
    stations = read("\n".join(["Name;Wert;Einheit", *rows]) + "\n").stations
    assert stations.text("bearing_designation").tolist() == ["6201", "6304"]
    assert [p for p in stations.problems if p.parameter == "bearing_type"] == []
