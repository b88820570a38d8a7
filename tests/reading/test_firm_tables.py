"""Tables as firms export them: titles of any kind, block headings, units and marks that stand elsewhere."""

import json
import math

import pytest

from linter.reading import InputError, read_table
from linter.reading.layouts.title import units_said
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names


@pytest.fixture
def read(tmp_path):
    def reader(content, names: Names | None = None):
        path = tmp_path / ("t.csv" if isinstance(content, str) else "t.json")
        path.write_text(content if isinstance(content, str) else json.dumps(content), encoding="utf-8")
        return read_table(path, names)

    return reader


def codes(reading):
    return sorted(p.code for p in reading.stations.problems)


def numbers(reading, name):
    return reading.stations.number(name).tolist()


_BELOW = "Bore [mm];10;12\nOutside diameter [mm];26;28\nRing width [mm];8;8\nShaft seat [mm];10 k5;12 k5\n"


@pytest.mark.parametrize(
    "title",
    [
        "Parameter;A;B\n",
        ";A;B\n",
        "Merkmal;Lagerstelle A;Lagerstelle B\n",
        "Bearing position;A;B\n",
        "Spindle unit 4711;;\n\nParameter;A;B\n",
        "Drawing number;ZX-17;\nRevision;C;\n\nParameter;A;B\n",
        "Machine;Rotor 5;Drawing number;ZX-17\nRevision;C;Author;KM\nUnits: mm;;;\n;;;\n;A;B;\n",
        "Machine;Rotor 5;\nMax speed;12000;r/min\n\n\nParameter;A;B\n",
        "Rev;Date;By;Change\n1;2024-01-01;KM;first\n2;2024-02-01;KM;second\n\nParameter;A;B\n",
        "Title;Revision;C;Date;2024-05-01\nScale;1:1;;\nParameter;A;B\n",
        "All dimensions in mm;;\nDrawing number: ZX-17;;\nParameter;A;B\n",
    ],
)
def test_a_transposed_table_keeps_both_stations_below_any_title(read, title):
    reading = read(title + _BELOW)
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "bore_diameter") == [10, 12]
    assert numbers(reading, "ring_width") == [8, 8]
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "k5"]
    assert codes(reading) == []


def test_a_title_states_machine_speed_and_revision(read):
    reading = read("Machine;Rotor 5;\nMax speed;12000;r/min\nRevision;C;Date;2024-05-01\n\nParameter;A;B\n" + _BELOW)
    assert reading.stations.machines == ("Rotor 5",)
    assert numbers(reading, "speed_max") == [12000, 12000]
    assert reading.stations.text("drawing_revision").tolist() == ["C", "C"]


def test_sections_say_shaft_and_housing(read):
    reading = read(
        "Name;Value;Unit\nStation;A;\n-- Bearing --;;\nBore;10;mm\nOutside diameter;26;mm\n-- Shaft --;;\n"
        "Seat diameter;10 k5;mm\nRoughness Ra;0.4;µm\nWidth;20;mm\nHousing;;\nBore;26 H6;mm\nRoughness;0.8;µm\n"
    )
    stations = reading.stations
    assert numbers(reading, "bore_diameter") == [10]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5"]
    assert stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6"]
    assert numbers(reading, "shaft_seat_roughness") == [0.4]
    assert numbers(reading, "housing_seat_roughness") == [0.8]
    assert not stations.known("ring_width").any()  # the width of a shaft's seat is no width of the ring
    assert "Width" in reading.unused_columns


def test_block_headings_over_columns_say_shaft_and_housing(read):
    reading = read(
        ";;Bearing;;;Shaft;;Housing;\nmachine;station;Bore [mm];Outside diameter [mm];Width [mm];Seat [mm];Ra [µm];"
        "Bore [mm];Ra [µm]\nM;A;10;26;8;10 k5;0.4;26 H6;0.8\nM;B;12;28;8;12 k5;0.4;28 H6;0.8\n"
    )
    assert numbers(reading, "bore_diameter") == [10, 12]
    assert numbers(reading, "ring_width") == [8, 8]
    assert numbers(reading, "shaft_seat_roughness") == [0.4, 0.4]
    assert numbers(reading, "housing_seat_roughness") == [0.8, 0.8]
    assert reading.stations.size("housing_seat_diameter").nominal.tolist() == [26, 28]


def test_stacked_tables_each_below_its_title(read):
    reading = read(
        "Machine;P1\nUnits: mm\nstation;Bore;Outside diameter\nA;10;26\nB;12;28\n\nMachine;P2\nUnits: inch\n"
        "station;Bore;Outside diameter\nA;0.5;1.0\nB;0.6;1.1\nApproved by;KM\n"
    )
    assert list(zip(reading.stations.text("machine"), reading.stations.text("station"), strict=True)) == [
        ("P1", "A"), ("P1", "B"), ("P2", "A"), ("P2", "B"),
    ]  # fmt: skip
    assert numbers(reading, "bore_diameter") == pytest.approx([10, 12, 12.7, 15.24])
    assert codes(reading) == []


def test_two_stations_side_by_side(read):
    reading = read(
        "Bearing A;;;Bearing B;\nBore [mm];10;;Bore [mm];12\nOutside diameter [mm];26;;Outside diameter [mm];28\n"
        "Shaft seat [mm];10 k5;;Shaft seat [mm];12 k5\n"
    )
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "outside_diameter") == [26, 28]


def test_long_tables_below_the_name_of_their_station(read):
    one = "Supporto {};\nVoce;Valore\nDiametro interno [mm];{}\nDiametro esterno [mm];40\n"
    reading = read(one.format("A", 17) + "\n" + one.format("B", 15))
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "bore_diameter") == [17, 15]
    side = "Supporto A;;;Supporto B;\nVoce;Valore;;Voce;Valore\nDiametro interno [mm];17;;Diametro interno [mm];15\n"
    reading = read(side + "Diametro esterno [mm];40;;Diametro esterno [mm];35\n")
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "outside_diameter") == [40, 35]


def test_tables_of_shaft_and_housing_seats_below_each_other(read):
    head = "station;Diameter [mm];Fit;Ra [µm]\n"
    shaft = f"SHAFT SEATS;;;\n{head}A;17;k5;0.4\nB;15;k5;0.4\n"
    housing = f"Housing seats;;;\n{head}A;40;H6;0.8\nB;35;H6;0.8\n"
    reading = read(shaft + "\n" + housing)
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [17, 15]
    assert reading.stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6", "H6"]
    assert numbers(reading, "shaft_seat_roughness") == [0.4, 0.4]
    assert numbers(reading, "housing_seat_roughness") == [0.8, 0.8]


def test_a_title_that_says_shaft_does_not_take_the_sizes_of_the_bearing(read):
    reading = read("Shaft;;;\nstation;Bore [mm];Outside diameter [mm];Width [mm]\nA;17;40;12\nB;15;35;11\n")
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "ring_width") == [12, 11]


@pytest.mark.parametrize(
    "foot",
    ["Erstellt;KM;Datum;01.02.2024", "* values after coating;;;", "See drawing 4711 for details;;;", "Sum;2;;",
     "Checked by: KM;;;", ";* after coating;;", "Note: as built;see change 4;;", "Page 1 of 1;;;"],
)  # fmt: skip
def test_a_foot_is_no_station(read, foot):
    reading = read("machine;station;Bore [mm];Outside diameter [mm]\nM;A;17;40\nM;B;15;35\n" + foot + "\n")
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert codes(reading) == []


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("UNITS: INCH", "INCH"), ("(misure in mm)", "mm"), ("All dimensions in mm", "mm"), ("Alle Maße in mm.", "mm"),
        ("Unless otherwise specified, all dimensions are in millimeters", "millimeters"), ("Cotes en mm", "mm"),
        ("Dimensiones en mm", "mm"), ("单位：mm", "mm"), ("寸法単位: mm", "mm"), ("Размеры в мм", "мм"),
        ("Units: mm, N, °C", "mm"), ("Seat table (dimensions in mm)", "mm"),
        ("Note: all dimensions in inches", "inches"),
        ("Alle Maße in mm, Rauheit in µm", "mm"),
        ("Units: mm / inch", ""), ("Units: N", ""), ("checked in mm", ""), ("Unit 5", ""), ("dimensions in spec", ""),
    ],
)  # fmt: skip
def test_sentences_that_state_the_unit_of_lengths(text, unit):
    assert units_said(text) == unit


def test_units_at_the_foot_hold_for_the_table_and_the_foot_is_no_station(read):
    reading = read("machine;station;Bore;Outside diameter\nM;A;0.3937;1.0236\nM;B;0.4724;1.1024\nUNITS: INCH;;;\n")
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "bore_diameter") == pytest.approx([9.99998, 11.99896])
    long = read("name;value\nstation;A\nBore;0.5\nUnits: inch;\n")
    assert numbers(long, "bore_diameter") == [12.7]


def test_two_units_of_one_table_are_asked_for(read):
    reading = read("All dimensions in mm;;;\nmachine;station;Bore;Width\nM;A;10;8\nM;B;12;8\nUNITS: INCH;;;\n")
    assert "two-units" in codes(reading)
    assert not reading.stations.known("bore_diameter").any()


def test_roughness_below_a_title_in_mm_is_in_micrometres_by_custom(read):
    text = "machine;station;Bore;Shaft seat roughness Ra\nM;A;10;0.4\nM;B;12;0.8\n"
    reading = read("All dimensions in mm;;;\n" + text)
    assert numbers(reading, "shaft_seat_roughness") == [0.4, 0.8]
    assert codes(reading) == ["roughness-unit"]
    assert {p.kind for p in reading.stations.problems} == {"assumption"}
    for title in ("All dimensions in inches;;;\n", ""):  # 16 may be µin there
        assert not read(title + text.replace("0.4", "16")).stations.known("shaft_seat_roughness").any()


@pytest.mark.parametrize(("mark", "size"), [(",", 20.011), (".", 20.011)])
def test_a_decimal_mark_is_settled_by_the_ring_beside_it(read, mark, size):
    head = "machine;station;Bore [mm];Shaft seat min [mm];Shaft seat max [mm]\n"
    text = head + "M;A;20;20,002;20,011\nM;B;25;25,002;25,011\n"
    reading = read(text.replace(",", mark))
    assert reading.stations.size("shaft_seat_diameter").largest[0] == pytest.approx(size)
    assert codes(reading) == []


def test_a_decimal_mark_is_not_settled_by_sizes_that_disagree(read):
    reading = read("machine;station;Bore [mm];Shaft seat min [mm]\nM;A;20;20,002\nM;B;25002;25,002\n")
    assert "ambiguous-number" in codes(reading)


def test_numbers_of_json_use_the_point(read):
    document = {"machine": "M", "stations": {"A": {"bore_diameter": "10 mm", "ball_diameter": "1.588 mm"}}}
    assert numbers(read(document), "ball_diameter") == [1.588]
    document["stations"]["A"]["ring_width"] = "3,967 mm"  # now both marks are used
    assert "ambiguous-number" in codes(read(document))


@pytest.mark.parametrize("prefix", ["", "geo:", "urn:x:"])
def test_names_behind_a_namespace(read, prefix):
    document = {f"{prefix}machine": "M", f"{prefix}stations": {"A": {f"{prefix}bore_diameter": 10}}}
    assert numbers(read(document), "bore_diameter") == [10]
    table = f"name,value,unit\n{prefix}machine,M,\n{prefix}station,A,\n{prefix}bore_diameter,10,mm\n"
    assert numbers(read(table), "bore_diameter") == [10]


def test_nested_objects_of_seats(read):
    reading = read(
        {
            "machine": "M",
            "bearings": [
                {
                    "position": "A",
                    "bearing": {"bore": {"value": 10, "unit": "mm"}, "outside diameter": {"value": 26, "unit": "mm"}},
                    "shaft": {
                        "seat diameter": {"nominal": 10, "fit": "k5", "unit": "mm"},
                        "roughness": {"value": 0.4, "unit": "µm"},
                        "width": {"value": 20, "unit": "mm"},
                    },
                    "housing": {"bore": {"nominal": 26, "fit": "H6", "unit": "mm"}},
                },
                {"position": "B", "shaft": {"seat": {"diameter": "12 k5", "unit": "mm"}}},
            ],
        }
    )
    stations = reading.stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("bore_diameter")[0] == 10
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [10, 12]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "k5"]
    assert stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6", ""]
    assert stations.number("shaft_seat_roughness")[0] == 0.4
    assert not stations.known("ring_width").any()


@pytest.mark.parametrize(
    "keys",
    [("attrName", "attrValue", "attrUom"), ("k", "v", "u"), ("feld", "inhalt", "einheit"), ("p1", "p2", "p3")],
)
def test_attribute_arrays_under_any_keys(read, keys):
    name, value, unit = keys
    rows = [
        ("machine", "M", None),
        ("Bore [A]", "10", "mm"),
        ("Outside diameter [A]", "26.5", "mm"),
        ("Shaft seat [A]", "10 k5", "mm"),
    ]
    attributes = [{name: n, value: v, **({unit: u} if u else {}), "rev": "C"} for n, v, u in rows]
    reading = read({"item": "P-1", "attributes": attributes})
    assert reading.stations.machines == ("M",)
    assert numbers(reading, "outside_diameter") == [26.5]
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5"]


def test_attribute_arrays_of_stations_told_apart_by_a_key(read):
    def props(bore):
        return [{"k": "Bore", "v": bore, "u": "mm"}, {"k": "Outside diameter", "v": "26", "u": "mm"}]

    reading = read({"parts": [{"code": "A", "props": props("10")}, {"code": "B", "props": props("12")[:1]}]})
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "bore_diameter") == [10, 12]
    assert codes(reading) == ["station-key", "station-key"]


def test_records_with_two_keys_that_could_be_the_value_are_not_read(read):
    records = [{"k": n, "a": "10", "b": "11", "u": "mm"} for n in ("Bore [A]", "Outside diameter [A]")]
    with pytest.raises(InputError):
        read({"attributes": records})


_ROBOT = "".join(
    f'"{name}"= {size}mm\n'
    for name, size in (
        ("Arm length", 400), ("Base plate", 120), ("Outside diameter", 80), ("Wall", 5), ("Tool offset", 12),
        ("Joint gap", 2), ("Cable hole", 14), ("Flange pitch circle", 60), ("Reach", 700), ("Stroke", 30), ("Rib", 4),
    )
)  # fmt: skip


def test_a_file_with_one_known_word_is_no_bearing_table(read):
    with pytest.raises(InputError) as caught:
        read(_ROBOT)
    assert caught.value.code == "not-a-bearing-table"
    assert "Outside diameter" in str(caught.value) and "Arm length" in str(caught.value)


def test_a_name_mapping_says_that_it_is_one(read):
    from linter.reading.words.mapping import Mapped

    names = Names(Mapping(names={"Arm length": Mapped("bearing_span")}))
    assert numbers(read(_ROBOT, names), "outside_diameter") == [80]


def test_words_of_a_seat_make_it_one(read):
    reading = read(_ROBOT + '"Shaft seat diameter"= 12mm\n')
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [12]


@pytest.mark.parametrize(
    "text",
    [
        "Thread;D;P;Minor dia;Tap drill;Go;No go\nM3;3;0.5;2.459;2.5;2.675;2.775\nM4;4;0.7;3.242;3.3;3.545;3.663\n",
        "Tag;X loc;Y loc;Size;B;D\nA1;10;20;5 THRU;3;8\nA2;30;20;5 THRU;3;8\nB1;40;25;8 H7;3;8\n",
        "Part;Qty;OD;Length;Mass;Colour;Price;Stock;Bin\nP1;2;10;30;4;red;3;2;1\nP2;2;12;30;4;red;3;2;1\n",
    ],
)
def test_lists_of_other_things_are_refused(read, text):
    with pytest.raises(InputError):
        read(text)


def test_unused_cells_by_their_words(read):
    reading = read("machine;station;bore_diameter;Wobble;Colour\nM;A;10;7;red\nM;B;12;8;blue\n")
    assert list(reading.unused_columns) == ["Wobble", "Colour"]


def test_blocks_below_the_word_of_their_part_keep_their_part_and_both_stations(read):
    head = "Assembly;Rotor 5;\nDrawing no.;ZX-17;\nParameter;A;B\nBearing span [mm];42;\nShaft material;steel;steel\n"
    text = (
        f"{head};;\nShaft;;\nSeat Ø [mm];10;12\nes [mm];0.010;0.012\nei [mm];0.001;0.001\nRoughness Ra [µm];0.4;0.8\n"
        ";;\nHousing;;\nSeat Ø [mm];26;28\nES [mm];0.021;0.021\nEI [mm];0;0\nRoughness Ra [µm];0.8;1.6\n"
        ";;\nBearing;;\nBrg bore [mm];10;12\nD [mm];26;28\nWidth B [mm];8;8\n"
    )
    stations = read(text).stations
    assert [p for p in stations.problems if p.kind != "assumption"] == []
    assert numbers(read(text), "bore_diameter") == [10, 12]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert shaft.upper.tolist() == [0.010, 0.012] and shaft.lower.tolist() == [0.001, 0.001]
    assert housing.nominal.tolist() == [26, 28] and housing.upper.tolist() == [0.021, 0.021]


def test_a_row_that_says_a_part_of_a_size_belongs_to_the_size_above_it_only(read):
    stations = read(
        "Parameter;A;B\nShaft seat [mm];10;12\nShaft roughness Ra [µm];0.4;0.4\nUpper dev. [mm];0.010;0.012\n"
        "Bore [mm];10;12\nOutside diameter [mm];26;28\n"
    ).stations
    assert all(math.isnan(upper) for upper in stations.size("shaft_seat_diameter").upper)


@pytest.mark.parametrize("word", ["pos", "No.", "Nr."])
def test_a_column_of_words_that_come_again_names_the_stations_and_one_that_counts_does_not(read, word):
    rows = [("Bore [mm]", 10, 12), ("Outside diameter [mm]", 26, 28), ("Ring width [mm]", 8, 9)]
    named = "".join(f"{s},{n},{v[k]}\n" for k, s in enumerate(("front", "rear")) for n, *v in rows)
    stations = read(f"{word},Parameter,Value\n{named}").stations
    assert stations.text("station").tolist() == ["front", "rear"]
    assert stations.number("ring_width").tolist() == [8, 9]
    counted = "".join(f"{k + 1},{n},{v}\n" for k, (n, v, _) in enumerate(rows))
    for heading in (word, "Position"):
        stations = read(f"{heading},Parameter,Value\n{counted}").stations
        assert stations.number("ring_width").tolist() == [8]


@pytest.mark.parametrize("blank", [False, True])
def test_a_column_of_parts_is_joined_with_the_name_beside_it(read, blank):
    rows = [
        ("Shaft", "Seat Ø", "A", "10", "+0.010", "+0.001", "mm"),
        ("Shaft", "Roughness Ra", "A", "0.4", "", "", "µm"),
        ("Housing", "Seat Ø", "A", "26", "+0.021", "0", "mm"),
        ("Housing", "Roughness Ra", "A", "0.8", "", "", "µm"),
        ("Bearing", "Designation", "A", "6000", "", "", ""),
        ("Bearing", "Width B", "A", "8", "", "", "mm"),
    ]
    if blank:
        rows = [("" if k % 2 else part, *others) for k, (part, *others) in enumerate(rows)]
    lines = "".join(f"{k + 1};{';'.join(row)}\n" for k, row in enumerate(rows))
    stations = read(f"No.;Part;Parameter;Position;Nom.;Upper dev. [mm];Lower dev. [mm];Unit\n{lines}").stations
    assert [p.code for p in stations.problems if p.kind != "assumption"] == []
    assert stations.text("station").tolist() == ["A"]
    assert stations.size("shaft_seat_diameter").upper.tolist() == [0.010]
    assert stations.size("housing_seat_diameter").upper.tolist() == [0.021]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4]
    assert stations.number("housing_seat_roughness").tolist() == [0.8]
    assert stations.number("ring_width").tolist() == [8]


def test_one_row_per_seat_gives_each_station_its_shaft_housing_and_bearing(read):
    text = (
        "Drawing no.;ZX-17\n\nNo.;Part;Position;Seat Ø [mm];Fit;Roughness Ra [µm];Designation\n"
        "1;Shaft;A;10;k5;0.4;\n2;Housing;A;26;H6;0.8;\n3;Bearing;A;;;;6000\n"
        "4;Shaft;B;12;k5;0.4;\n5;Housing;B;28;H6;1.6;\n6;Bearing;B;;;;6001\nAll dimensions in mm;;;;;;\n"
    )
    stations = read(text).stations
    assert [p.code for p in stations.problems if p.kind != "assumption"] == []
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [10, 12]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [26, 28]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]
    assert stations.text("bearing_designation").tolist() == ["6000", "6001"]


def test_seats_of_no_named_station_are_not_paired_by_guess(read):
    text = (
        "Part;Seat Ø [mm];Roughness Ra [µm];Bore [mm]\nShaft;10;0.4;\nHousing;26;0.8;\nShaft;12;0.4;\nHousing;28;0.8;\n"
    )
    try:
        stations = read(text).stations
    except InputError:
        return
    assert all(math.isnan(x) for x in stations.size("shaft_seat_diameter").nominal)


@pytest.mark.parametrize("file", ["C;5.1\nC0;2.39\n", "C;5.1\nC0;2.39\nBore [mm];10\n"])
def test_ratings_far_too_small_are_asked_about_with_and_without_a_bore(read, file):
    stations = read(f"Parameter;Value\n{file}Ring width [mm];8\nClearance class;CN\n").stations
    assert [p.parameter for p in stations.problems if p.code == "rating-unit"] == ["dynamic_rating", "static_rating"]
    assert math.isnan(stations.number("dynamic_rating")[0])


def test_records_whose_position_is_a_word_that_comes_again_belong_to_that_station(read):
    rows = [("A", "Bore", "10 mm"), ("A", "Outside diameter", "26 mm"), ("A", "Ring width", "8 mm")]
    rows += [("B", "Bore", "12 mm"), ("B", "Outside diameter", "28 mm"), ("B", "Ring width", "9 mm")]
    reading = read([{"pos": pos, "param": name, "val": value} for pos, name, value in rows])
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert numbers(reading, "ring_width") == [8, 9]


def test_a_capital_behind_an_underscore_is_the_station(read):
    names = Names.built_in()
    for name in ("HSG_BORE_DIA", "HSG_CYLINDRICITY", "SHAFT_TOTAL_RUNOUT", "SHAFT_FILLET_R"):
        for station in "ABC":
            assert (match := names.find(f"{name}_{station}")) is not None and match.station == station, name
