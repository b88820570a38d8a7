"""Tables told apart by what stands above them: captions, positions over headings, lines that name a position."""

import pytest

from linter.reading import read_table


@pytest.fixture
def read(tmp_path):
    def reader(text):
        path = tmp_path / "t.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


def keys(reading):
    stations = reading.stations
    machines = [stations.machines[k] for k in stations.machine_row.tolist()]
    return list(zip(machines, stations.text("station").tolist(), strict=True))


def codes(reading):
    return sorted(p.code for p in reading.stations.problems)


_HEAD = "Position;Bearing;Shaft seat [mm];Fr [N]\n"
_ONE, _TWO = "A;608-2Z;8 h5;12\nB;608-2Z;8 h5;9\n", "A;6001-2Z;12 h5;31\nB;6000-2Z;10 h5;22\n"


@pytest.mark.parametrize("gap", [";;;\n", ""])
def test_stacked_tables_are_of_the_machines_that_stand_alone_above_them(read, gap):
    reading = read(f"Blower BL-40;;;\n{_HEAD}{_ONE}{gap}Blower BL-65;;;\n{_HEAD}{_TWO}")
    assert keys(reading) == [("Blower BL-40", s) for s in "AB"] + [("Blower BL-65", s) for s in "AB"]
    assert reading.stations.number("radial_load").tolist() == [12, 9, 31, 22]
    assert codes(reading) == ["caption", "caption"]


def test_tables_side_by_side_are_of_the_machines_above_them(read):
    text = "Mill M1;;;;Mill M2;;\nFeature;L;R;;Feature;L;R\n"
    text += "Shaft seat [mm];8 h5;10 h5;;Shaft seat [mm];12 h5;15 h5\n"
    reading = read(text + "Radial load [N];5;6;;Radial load [N];7;8\n")
    assert sorted(keys(reading)) == [("Mill M1", "L"), ("Mill M1", "R"), ("Mill M2", "L"), ("Mill M2", "R")]
    assert dict(zip(keys(reading), reading.stations.number("radial_load").tolist(), strict=True)) == {
        ("Mill M1", "L"): 5, ("Mill M1", "R"): 6, ("Mill M2", "L"): 7, ("Mill M2", "R"): 8,
    }  # fmt: skip


def test_tables_that_state_different_things_are_of_one_machine(read):
    reading = read("Seats;;;\nPosition;Shaft seat [mm]\nA;8 h5\nB;8 h5\n;\nLoads;\nPosition;Fr [N]\nA;5\nB;6\n")
    assert [station for _, station in keys(reading)] == ["A", "B"]
    assert reading.stations.number("radial_load").tolist() == [5, 6]
    assert "caption" not in codes(reading)


def test_one_caption_twice_names_nothing_and_the_two_values_are_told(read):
    reading = read(f"Blower;;;\n{_HEAD}{_ONE};;;\nBlower;;;\n{_HEAD}{_TWO}")
    assert "caption" not in codes(reading)
    assert [p.kind for p in reading.stations.problems].count("disagreement") > 0


def test_positions_over_headings_that_come_again_are_the_stations(read):
    text = "Unit;Drive side;;;Far side;;\n;Bearing;Shaft Ø [mm];Ra shaft [µm];Bearing;Shaft Ø [mm];Ra shaft [µm]\n"
    reading = read(text + "S-10;6001;12 k5;0.4;6000;10 k5;0.8\nS-15;6003;17 k5;0.4;6002;15 k5;0.8\n")
    assert keys(reading) == [(m, s) for m in ("S-10", "S-15") for s in ("Drive side", "Far side")]
    assert reading.stations.text("bearing_designation").tolist() == ["6001", "6000", "6003", "6002"]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8, 0.4, 0.8]


def test_lines_that_name_a_position_head_the_rows_below_them(read):
    text = "Feature;nominal;tolerance;unit\n"
    for name, size in (("Impeller end", 17), ("Motor end", 20)):
        text += f"Position {name};;;\nShaft;;;\nDiameter;{size};k5;mm\nHousing;;;\nDiameter;{size + 23};H6;mm\n"
    reading = read(text)
    assert [station for _, station in keys(reading)] == ["Impeller end", "Motor end"]
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [17, 20]
    assert reading.stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6", "H6"]


def test_a_lone_line_with_a_word_for_a_position_names_none(read):
    reading = read("Name;Value;Unit\nPosition overview;;\nbore_diameter;8;mm\noutside_diameter;22;mm\n")
    assert [station for _, station in keys(reading)] == ["1"]


@pytest.mark.parametrize("parts", ["upper,lower", "Max [mm],Min [mm]"])
def test_one_size_beside_a_place_and_the_parts_of_its_tolerance_heads_a_table(read, parts):
    numbers = "+0.009,+0.001" if "upper" in parts else "8.009,8.001"
    reading = read(f"Pos,Shaft seat [mm],{parts}\nA,8,{numbers}\nB,8,{numbers}\n")
    assert [station for _, station in keys(reading)] == ["A", "B"]
    assert reading.stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.009, 0.009])
    assert codes(reading) == []


def test_a_line_about_units_right_above_the_heading_is_no_part_of_it(read):
    reading = read("All dimensions in mm,,\nPos,Shaft seat,Ra shaft\nA,8 h5,0.4\nB,8 h5,0.4\n")
    assert [station for _, station in keys(reading)] == ["A", "B"]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]


def test_a_line_of_a_drawing_frame_below_a_table_is_no_station(read):
    reading = read("Pos,Shaft seat [mm],Bearing\nA,17 k5,6203\nB,15 k5,6202\nReleased by K. M.,,\n")
    assert [station for _, station in keys(reading)] == ["A", "B"]


def test_a_number_cut_by_its_decimal_comma_is_asked_about_and_its_row_not_used(read):
    reading = read("Station,Housing seat [mm],Fr [N],Fa [N]\nA,31,5 H6,5,6\nB,31 H6,5,6\n")
    assert [station for _, station in keys(reading)] == ["B"]
    assert codes(reading) == ["row-too-long"]
    assert "31,5 H6" in reading.stations.problems[0].message
