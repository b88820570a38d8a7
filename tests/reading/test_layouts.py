"""Every layout of a text table: where its names, values, units, machines and stations stand."""

import numpy as np
import pytest
from attrs import evolve

from linter.reading import InputError, read_names, read_table
from linter.reading.files.equations import cut_line
from linter.reading.files.grids import Grid, object_column
from linter.reading.layouts import sheet, wide
from linter.reading.layouts.names_down import Pieces
from linter.reading.words.headings import Words
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names


@pytest.fixture
def read(tmp_path):
    def reader(text: str, names: Names | None = None):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path, names)

    return reader


def codes(reading):
    return sorted(p.code for p in reading.stations.problems)


def test_long_with_header_station_column_and_title_block(read):
    reading = read(
        "Drawing number;ZX-17;;\nRevision;B\nMaße in mm\n\n"
        "Name;Wert;Einheit;Lagerstelle;Kommentar\n"
        "Maschine;Gebläse;;;\n"
        "Wellensitz;7,5 k5;mm;A;\nshaft_seat_diameter;7,5 +0,012/+0,004;;B;fest\n"
        "bore_diameter;7,5;mm;A;\nbore_diameter;7,5;mm;B;\n"
        "speed_max;110000;1/min;;\nlubrication;Fett;;A;\nunknown thing;77;mm;A;\n"
    )
    stations = reading.stations
    assert reading.layout == "one row per parameter"
    assert stations.machines == ("Gebläse",)
    assert stations.text("drawing_number").tolist() == ["ZX-17", "ZX-17"]
    assert stations.text("drawing_revision").tolist() == ["B", "B"]
    assert stations.number("bore_diameter").tolist() == [7.5, 7.5]
    assert stations.size("shaft_seat_diameter").upper[1] == pytest.approx(0.012)
    assert stations.choice("lubrication").texts().tolist() == ["grease", ""]
    assert stations.place("speed_max", 0).cell == "B11"
    assert {(u.name, u.place.cell) for u in reading.unused} == {("unknown thing", "B13"), ("Kommentar", "E8")} | (
        {("Wellensitz", "B7")} if stations.size("shaft_seat_diameter").nominal[0] != 7.5 else set()
    )


def test_long_without_header_and_station_in_the_name(read):
    reading = read('machine,M7\nbore_diameter [A],4 mm\nbore_diameter [B],4 mm\n"shaft_seat_diameter_A",4 k5\n')
    assert reading.layout == "one row per parameter"
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.number("bore_diameter").tolist() == [4.0, 4.0]
    assert reading.stations.place("bore_diameter", 0).cell == "B2"


def test_long_with_expressions_is_not_evaluated(read):
    reading = read(
        "Name,Unit,Expression,Value\nmachine,,,M\nstation,,,A\nbore_diameter,mm,2*2,4\noutside_diameter,mm,11,\nring_width,mm,4/2+x,\n"
    )
    assert reading.stations.number("bore_diameter").tolist() == [4.0]
    assert reading.stations.number("outside_diameter").tolist() == [11.0]
    assert codes(reading) == ["not-a-number"]
    assert any(u.name == "Expression" for u in reading.unused)


def test_sections_name_stations(read):
    reading = read(
        "Name,Value,Unit\nmachine,M,\n-- Bearing A --,,\nBore diameter,4,mm\n-- Bearing B --,,\nBore diameter,5,mm\n"
    )
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.number("bore_diameter").tolist() == [4.0, 5.0]


def test_transposed(read):
    reading = read(
        "Parameter,Unit,A,B\ndrawing_number,,D-7,D-7\n"
        "Bore,mm,4,4\nOutside diameter,mm,11,11\nshaft_seat_diameter,mm,4 k5,4 h5\n"
        "speed_max,r/min,50000,50000\nunknown,mm,1,2\n"
    )
    assert reading.layout == "one column per station (transposed)"
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "h5"]
    assert reading.stations.place("bore_diameter", 1).cell == "D3"
    assert [u.place.cell for u in reading.unused] == ["C7", "D7"]


def test_transposed_with_machine_and_station_rows(read):
    reading = read("machine,M1,,M2\nstation,A,B,A\nbore_diameter,4,5,6\noutside_diameter,11,12,13\n")
    assert reading.stations.machines == ("M1", "M2")
    assert reading.stations.number("bore_diameter").tolist() == [4, 5, 6]
    assert codes(reading) == ["filled-down"]


def test_units_row_and_heading_units(read):
    reading = read(
        "machine,station,Bore diameter,Outside diameter [in],Shaft seat roughness\n"
        ",,mm,,µm\nM,A,4,0.5,0.4\nM,B,4.5,0.5,0.8\n"
    )
    assert reading.stations.number("bore_diameter").tolist() == [4.0, 4.5]
    assert reading.stations.number("outside_diameter").tolist() == [12.7, 12.7]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert reading.stations.problems == ()


def test_deviation_limit_and_class_columns(read):
    reading = read(
        "machine,station,shaft_seat_diameter,shaft_seat_diameter tol+,shaft_seat_diameter tol-,"
        "housing_seat_diameter min,housing_seat_diameter max,housing_seat_diameter class,outside_diameter\n"
        ",,mm,µm,µm,mm,mm,,mm\n"
        "M,A,4,6,+1,11.00,11.011,H6,11\nM,B,4,6,,11.00,11.0110,H6,11\n"
    )
    shaft, housing = (reading.stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    assert shaft.upper[0] == pytest.approx(0.006)
    assert shaft.lower[0] == pytest.approx(0.001)
    assert shaft.nominal[1] == 4.0
    assert shaft.upper[1] != shaft.upper[1]
    assert codes(reading) == ["one-sided"]
    assert housing.nominal.tolist() == [11.0, 11.0]
    assert housing.upper.tolist() == pytest.approx([0.011, 0.011])
    assert housing.tolerance_class.tolist() == ["H6", "H6"]


def test_tolerance_columns_beside_the_size(read):
    reading = read(
        "machine,station,shaft_seat_diameter,Upper deviation,Lower deviation,bore_diameter\nM,A,4.5,0.0065,0.0015,4.5\n"
    )
    assert reading.stations.size("shaft_seat_diameter").upper[0] == pytest.approx(0.0065)
    assert reading.stations.problems == ()


def test_stacked_tables_and_machines_given_once(read):
    reading = read(
        "Head: none\nmachine,speed_max,drawing_number\n"
        "M1,1000,D1\nM2,2000,D2\n\nmachine,station,bore_diameter\nM1,A,4\n,B,5\nM2,A,6\n"
    )
    stations = reading.stations
    assert stations.machines == ("M1", "M2")
    assert stations.number("speed_max").tolist() == [1000, 1000, 2000]
    assert stations.number("bore_diameter").tolist() == [4, 5, 6]
    assert codes(reading) == ["filled-down"]
    assert [u.value for u in reading.unused] == ["Head: none"]


def test_repeated_heading_begins_a_new_table(read):
    reading = read(
        "machine,station,bore_diameter\nM1,A,4\nM1,B,5\nmachine,station,outside_diameter\nM1,A,11\nM1,B,12\n"
    )
    assert reading.stations.number("bore_diameter").tolist() == [4, 5]
    assert reading.stations.number("outside_diameter").tolist() == [11, 12]


def test_blocks_side_by_side(read):
    reading = read("machine,station,bore_diameter,,machine,station,bore_diameter\nM1,A,4,,M2,A,6\nM1,B,5,,M2,B,7\n")
    assert reading.stations.machines == ("M1", "M2")
    assert reading.stations.number("bore_diameter").tolist() == [4, 5, 6, 7]
    assert reading.stations.place("bore_diameter", 3).cell == "G3"


def test_generic_row_with_inheritance(read):
    reading = read("station,machine,bore_diameter,lubrication\nA,M,4,grease\nB,M,*,*\n")
    assert reading.stations.number("bore_diameter").tolist() == [4, 4]
    assert codes(reading) == ["inherited", "inherited"]


def test_station_in_wide_headings(read):
    reading = read("machine,bore_diameter A,bore_diameter B,speed_max\nM1,4,5,1000\nM2,6,7,2000\n")
    assert reading.stations.text("station").tolist() == ["A", "B", "A", "B"]
    assert reading.stations.number("bore_diameter").tolist() == [4, 5, 6, 7]
    assert reading.stations.number("speed_max").tolist() == [1000, 1000, 2000, 2000]


def test_name_at_feature_headings(read):
    reading = read("machine,bore_diameter@A,bore_diameter@B\nM1,4,5\n")
    assert reading.stations.number("bore_diameter").tolist() == [4, 5]


def test_first_article_list(read):
    reading = read(
        "Char No,Characteristic,Nominal,Upper Tol,Lower Tol,Unit,Actual 1\n"
        "1,Shaft seat diameter A,4.000,+0.006,+0.001,mm,4.003\n2,Shaft seat diameter B,4.000,+0.006,+0.001,mm,4.09\n"
        "3,Housing seat diameter A,11,0.011,0,mm,11.003\n"
    )
    size = reading.stations.size("shaft_seat_diameter")
    assert size.upper.tolist() == pytest.approx([0.006, 0.006])
    assert size.nominal.tolist() == [4.0, 4.0]
    assert reading.stations.size("housing_seat_diameter").lower[0] == 0.0
    assert {u.name for u in reading.unused} == {"Char No", "Actual 1"}


def test_no_station_column_makes_each_row_a_station_and_says_so(read):
    reading = read("machine,bore_diameter,outside_diameter\nM,4,11\nM,5,12\n")
    assert reading.stations.text("station").tolist() == ["row 2", "row 3"]
    assert any("no station is named" in note for note in reading.notes)


def test_comment_section_and_footer_rows(read):
    reading = read(
        "machine,station,bore_diameter\n# exported\nM,A,4\n// checked,,\n-- second --,,\nM,B,5\nEnd of table,,\n"
    )
    assert reading.stations.number("bore_diameter").tolist() == [4, 5]
    assert len(reading.unused) == 4


def test_every_filled_cell_is_accounted_for(read):
    text = "\n".join(
        [
            "Title,here,,,", "machine,station,bore_diameter,odd,shaft_seat_diameter", "M,A,4,x,4 k5",
            "M,B,4 apples,y,-", "M,C,,z,4 q99", "remark,,,,",
        ]
    )  # fmt: skip
    reading = read(text + "\n")
    seen = {u.place.cell for u in reading.understood} | {u.place.cell for u in reading.unused}
    seen |= {p.place.cell for p in reading.stations.problems if p.place}
    headings = {f"{c}2" for c in "ABCDE"}
    column_of_odd = {"D3", "D4", "D5"}  # listed once, at its heading
    filled = {
        f"{'ABCDE'[c]}{r + 1}"
        for r, line in enumerate(text.split("\n"))
        for c, cell in enumerate(line.split(","))
        if cell
    }
    assert filled - headings - column_of_odd <= seen
    assert "D2" in seen


def test_equation_lines():
    assert cut_line('"name"= 4 mm \'comment') == ("name", "4 mm", "comment")
    assert cut_line('"a""b" = "c=d" * 2') == ('a"b', '"c=d" * 2', "")
    assert cut_line('"x"=1\'234.5') == ("x", "1'234.5", "")
    assert cut_line("' only a comment") == ("", "", "' only a comment"[1:].strip()) or cut_line("' c")[0] == ""
    assert cut_line("") == ("", "", "")


def test_equation_file(read):
    reading = read(
        '"machine"= M9 \'the rotor\r\r\n"shaft_seat_diameter A"= 4.00mm\r\r\n"D1@Sketch1"="shaft_seat_diameter A"\r\r\n'
        '"bore_diameter A"= 0.1575in\r\r\n"speed_max"=40000 1/min\r\r\n'
    )
    assert "equations" in reading.layout
    assert reading.stations.machines == ("M9",)
    assert reading.stations.number("bore_diameter").tolist() == pytest.approx([4.0005])
    assert reading.stations.place("speed_max", 0).cell == "B5"
    assert {u.name for u in reading.unused} >= {"D1@Sketch1"}


_QIF = """<?xml version="1.0"?>
<QIFDocument xmlns="http://qifstandards.org/xsd/qif3"><FileUnits><PrimaryUnits><LinearUnit><SIUnitName>meter</SIUnitName>
<UnitName>x</UnitName><UnitConversion><Factor>{factor}</Factor></UnitConversion></LinearUnit></PrimaryUnits></FileUnits>
<Product><PartSet><Part id="1"><Name>Spindle</Name></Part></PartSet></Product>
<Characteristics><CharacteristicDefinitions>
<DiameterCharacteristicDefinition id="1"><Tolerance><MaxValue>{high}</MaxValue><MinValue>{low}</MinValue>
<DefinedAsLimit>{limit}</DefinedAsLimit></Tolerance></DiameterCharacteristicDefinition>
<CylindricityCharacteristicDefinition id="5">
<ToleranceValue>0.002</ToleranceValue></CylindricityCharacteristicDefinition>
</CharacteristicDefinitions><CharacteristicNominals><DiameterCharacteristicNominal id="2">
<CharacteristicDefinitionId>1</CharacteristicDefinitionId><TargetValue>4</TargetValue></DiameterCharacteristicNominal>
<CylindricityCharacteristicNominal id="6"><CharacteristicDefinitionId>5</CharacteristicDefinitionId>
</CylindricityCharacteristicNominal></CharacteristicNominals><CharacteristicItems>
<DiameterCharacteristicItem id="3"><Name>Shaft seat diameter A</Name>
<CharacteristicNominalId>2</CharacteristicNominalId>
</DiameterCharacteristicItem><CylindricityCharacteristicItem id="7"><Name>Shaft seat cylindricity A</Name>
<CharacteristicNominalId>6</CharacteristicNominalId></CylindricityCharacteristicItem>
<DiameterCharacteristicItem id="8"><Name>Hole 12</Name><CharacteristicNominalId>2</CharacteristicNominalId>
</DiameterCharacteristicItem></CharacteristicItems></Characteristics></QIFDocument>"""


def test_qif_with_deviations_and_with_limits(read):
    deviations = read(_QIF.format(factor="0.001", high="0.006", low="0.001", limit="false"))
    limits = read(_QIF.format(factor="0.001", high="4.006", low="4.001", limit="true"))
    for reading in (deviations, limits):
        size = reading.stations.size("shaft_seat_diameter")
        assert reading.stations.machines == ("Spindle",)
        assert (size.nominal[0], size.lower[0], size.upper[0]) == pytest.approx((4, 0.001, 0.006))
        assert reading.stations.number("shaft_seat_cylindricity").tolist() == [0.002]
        assert [u.name for u in reading.unused] == ["Hole 12"]
        assert reading.stations.problems == ()


def test_qif_flag_that_contradicts_its_numbers(read):
    reading = read(_QIF.format(factor="0.001", high="4.2", low="3.8", limit="false"))
    assert codes(reading) == ["limit-flag"]
    assert (
        reading.stations.size("shaft_seat_diameter").upper[0] != reading.stations.size("shaft_seat_diameter").upper[0]
    )


def test_qif_in_inches_and_without_a_known_unit(read):
    inch = read(_QIF.format(factor="0.0254", high="0.006", low="0.001", limit="false"))
    assert inch.stations.size("shaft_seat_diameter").nominal[0] == pytest.approx(101.6)
    unknown = read(_QIF.format(factor="0.0031", high="0.006", low="0.001", limit="false"))
    assert "unit-missing" in codes(unknown)


def test_mapping_of_stations_units_and_defaults(read):
    names = Names(Mapping(stations={"Links": "A"}, default_unit="mm"))
    reading = read("machine,station,Bore\nM,Links,4\nM,B,5\n", names)
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.number("bore_diameter").tolist() == [4, 5]


def test_words_that_are_not_recognised(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text("machine,station,bore_diameter,Wobble,Sitzmaß links oben\nM,A,4,7,8\n", encoding="utf-8")
    words = read_names(path)
    assert [w.text for w in words] == ["Wobble", "Sitzmaß links oben"]
    assert words[0].samples == ("7",)
    assert words[0].place.cell == "D1"


def test_refusal_says_what_was_seen_and_expected(read):
    with pytest.raises(InputError) as caught:
        read("alpha,beta\n1,2\n")
    assert "alpha" in str(caught.value)
    assert "bore_diameter" in str(caught.value)


def test_heading_above_no_cell_is_no_error(read):
    reading = read("machine,station,bore_diameter\nM,A,4\n\nmachine,speed_max\n")
    assert reading.stations.number("bore_diameter").tolist() == [4]


def test_station_named_by_headings_alone_is_none_of_a_machine_without_its_cells(read):
    reading = read("machine,bore_diameter@A,bore_diameter@B\nM1,4,5\nM2,6,\n")
    machines, stations = reading.stations.text("machine"), reading.stations.text("station")
    assert list(zip(machines, stations, strict=True)) == [("M1", "A"), ("M1", "B"), ("M2", "A")]


def test_actual_values_count_where_no_other_value_stands(read):
    reading = read("Benennung;Istwert;Maßeinheit\nMaschine;M;\nBohrung A;4,5;mm\n")
    assert reading.stations.number("bore_diameter").tolist() == [4.5]


def test_heading_that_stands_twice_is_a_disagreement_and_no_row_is_lost(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text("station,bore_diameter,bore_diameter,outside_diameter\nA,4,5,13\nB,4,4,13\n", encoding="utf-8")
    reading = read_table(path)
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert np.isnan(reading.stations.number("bore_diameter")[0])
    assert reading.stations.number("bore_diameter")[1] == 4
    (problem,) = reading.stations.problems
    assert (problem.kind, problem.read) == ("disagreement", "4 and 5")


def test_of_three_layouts_each_tells_what_it_would_explain(read, monkeypatch):
    def third(grid, words):
        return evolve(wide.find(grid, words), score=2, where="in pairs")

    monkeypatch.setattr(sheet, "LAYOUTS", (*sheet.LAYOUTS, third))
    reading = read(
        "Nr;station;bore_diameter;outside_diameter\n1;A;8;22\n2;B;8;22\nspeed_max;3000;;\nspeed_operating;9;;\n"
    )
    assert reading.layout == "one row per station"
    (told,) = [note for note in reading.notes if note.startswith("read as")]
    assert told == "read as one row per station: 3 names stand in one row and 2 in one column and 2 in pairs"


def test_parts_of_one_cell_keep_apart():
    words = Words(Names.built_in())
    grid = Grid("table.csv", None, [object_column(["A: bore = 8 mm; width = 7 mm"])], np.array([1], np.int32))
    pieces = Pieces(grid)
    for name, value in (("bore", "8 mm"), ("width", "7 mm")):
        pieces.add(words.heading(name), name, 0, 0, "", "A", value)
    strips = pieces.block("").strips
    assert [(s.parameter, *s.cells) for s in strips] == [("bore_diameter", "8 mm"), ("ring_width", "7 mm")]
    assert [s.whole[0] for s in strips] == ["A: bore = 8 mm; width = 7 mm"] * 2


def test_positions_of_a_few_rows_each_above_a_table_of_seats(read):
    def position(name: str, runout: str) -> str:
        rows = f"Position;{name};;;\nOrder code;K-{name};;;\nBearing;608-2RS;;;\nOperating temp. [°C];50;;;\n"
        seats = f"Shaft;8;+0,006;+0,001;{runout}\nHousing;22;+0,021;0;0,008\n\n"
        return f"{rows}Part;Diameter;Upper dev.;Lower dev.;Total run-out\n{seats}"

    title = "Machine;M4;;Drawing no.;D-7\nMax. speed;9000 rpm;;Bearing span;80 mm\nAll dimensions in mm;;;;\n\n"
    reading = read(title + position("P1", "0,004") + position("P2", "0,005"))
    stations = reading.stations
    assert stations.text("station").tolist() == ["P1", "P2"]
    assert set(stations.text("drawing_number")) == {"D-7"}
    assert stations.size("bearing_span").nominal.tolist() == [80, 80]
    assert stations.text("bearing_designation").tolist() == ["608-2RS", "608-2RS"]
    assert stations.number("operating_temperature").tolist() == [50, 50]
    assert stations.size("shaft_seat_diameter").lower.tolist() == pytest.approx([0.001, 0.001])
    assert stations.number("shaft_seat_runout").tolist() == pytest.approx([0.004, 0.005])
    assert {u.value for u in reading.unused} >= {"K-P1", "K-P2"}


def test_top_and_bottom_are_positions_above_designations_and_deviations_otherwise(read):
    positions = read("Feature;Unit;oben;unten\nBearing;;608;607\nBore diameter;mm;8;7\nShaft seat;mm;8;7\n").stations
    assert positions.text("station").tolist() == ["oben", "unten"]
    assert positions.number("bore_diameter").tolist() == [8, 7]
    sizes = read("Feature;Unit;oben;unten\nShaft seat A;mm;+0,006;+0,001\nHousing seat A;mm;0,021;0\n").stations
    assert "oben" not in sizes.text("station").tolist()


def test_units_row_with_the_price_among_its_units(read):
    head = "Station;Bore diameter;Outside diameter;Width;Price;Shaft seat\n"
    stations = read(head + ";mm;mm;mm;EUR;mm\nA;8;22;7;4,8;8 k5\nB;7;19;6;4,8;7 k5\n").stations
    assert stations.number("bore_diameter").tolist() == [8, 7]
    assert stations.text("station").tolist() == ["A", "B"]


def test_stations_named_once_above_their_group_beside_rows_of_the_machine(read):
    reading = read(
        "Position;Parameter;Value;Unit\nP1;Hardness;58;HRC\n;Bore diameter;8;mm\n;Ring width;7;mm\n"
        "P2;Hardness;58;HRC\n;Bore diameter;7;mm\n;Ring width;6;mm\n"
        "Overall;Rotor mass;240;g\nOverall;Max. speed;9000;rpm\n;;;\n"
    )
    stations = reading.stations
    assert stations.text("station").tolist() == ["P1", "P2"]
    assert stations.number("bore_diameter").tolist() == [8, 7]
    assert stations.number("rotor_mass").tolist() == pytest.approx([0.24, 0.24])


def test_the_same_name_in_both_blocks_side_by_side_heads_no_table(read):
    rows = ("Support;{};;Support;{}", "Bearing no.;608;;Bearing no.;607", "Ring width [mm];7;;Ring width [mm];6")
    more = ("Bearing precision;P6;;Bearing precision;P6", "Shaft seat [mm];8 k5;;Shaft seat [mm];7 k5")
    stations = read("\n".join([*rows, *more]).format("DE", "NDE") + "\n").stations
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [8, 7]


def test_one_word_more_in_the_column_of_parts_and_a_station_above_its_sections(read):
    by_part = read(
        "No.;Part;Position;Characteristic;Requirement;Unit\n1;Bearing;A;Bearing bore;8;mm\n"
        "2;Bearing;A;Bearing width;7;mm\n"
        "3;Shaft;A;Seat diameter;8 k5;mm\n4;Shaft;A;Cylindricity;0,003;mm\n5;Housing;A;Bore diameter;22 H6;mm\n"
        "6;Housing;A;Cylindricity;0,004;mm\n7;Operation;A;Radial load;90;N\n"
    ).stations
    assert by_part.number("bore_diameter").tolist() == [8]
    assert by_part.size("housing_seat_diameter").nominal.tolist() == [22]
    assert by_part.number("shaft_seat_cylindricity").tolist() == [0.003]
    assert by_part.number("radial_load").tolist() == [90]
    rows = "Position;{};\nBearing;;\nBearing bore;8;mm\nShaft;;\nSeat diameter;8 k5;mm\n"
    rows += "Housing;;\nBore diameter;{} H6;mm\n"
    blocks = read(rows.format("A", 22) + rows.format("B", 24)).stations
    assert blocks.text("station").tolist() == ["A", "B"]
    assert blocks.size("housing_seat_diameter").nominal.tolist() == [22, 24]


def test_a_column_of_many_other_words_is_none_of_parts(read):
    reading = read(
        "Part;Characteristic;Value\n;Ring width;7 mm\n;Max. speed;9000 rpm\n"
        "Shaft;Diameter;8\nHousing;Diameter;22\nKey;Diameter;3\nGear;Diameter;40\n"
    )
    assert not reading.stations.known("shaft_seat_diameter").any()


def test_a_row_of_names_below_a_title_heads_a_table_and_no_stations(read):
    title = (
        "Machine;M4;;;\nDesign life [h];8000;;;\nShaft temperature [°C];60;;;\nRotor mass;2 kg;;;\nRevision;B;;;\n\n"
    )
    reading = read(
        title + "Position;Bearing C0;Bearing ID;Bearing OD;Width\n;kN;mm;mm;mm\nA;1,4;8;22;7\nB;1,4;8;22;7\n"
    )
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.number("bore_diameter").tolist() == [8, 8]
    assert reading.stations.number("required_life").tolist() == [8000, 8000]


def test_cyrillic_stations_keep_their_letters(read):
    stations = read("Параметр;Ед. изм.;Передняя;Задняя\nТипоразмер подшипника;;607;608\nДиаметр вала;мм;7;8\n").stations
    assert stations.text("station").tolist() == ["Передняя", "Задняя"]


def test_a_form_has_two_names_and_values_in_a_row(read):
    head = "Seat data;;;\nMachine;M4;;\nMax. speed;9000 rpm;Rotor mass;2 kg\n\n"
    position = (
        "Position;{};;\nBearing no.;608-2Z;Bearing bore [mm];8\nBearing width [mm];7;Shaft seat [mm];8 k5\n"
        "Shaft fillet [mm];0,2;Housing seat [mm];22\nHousing seat upper [µm];{};Housing seat lower [µm];0\n\n"
    )
    reading = read(head + position.format("A", 13) + position.format("B", 21))
    stations = reading.stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("bore_diameter").tolist() == [8, 8]
    assert stations.size("housing_seat_diameter").upper.tolist() == pytest.approx([0.013, 0.021])
    assert stations.number("rotor_mass").tolist() == [2, 2]
    assert stations.place("bore_diameter", 1).cell == "D12"
    assert stations.place("shaft_fillet_radius", 0).cell == "B8"


def test_a_form_with_shaft_and_housing_side_by_side(read):
    stations = read(
        "Position;A;Bearing;608\nShaft;;Housing;\nSeat diameter [mm];8 k5;Seat diameter [mm];22 H6\n"
        "Cylindricity [µm];3;Cylindricity [µm];4\nFillet radius [mm];0,2;Shoulder diameter [mm];19\n"
    ).stations
    assert stations.text("station").tolist() == ["A"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [8]
    assert stations.number("housing_seat_cylindricity").tolist() == pytest.approx([0.004])
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [19]


def test_blocks_of_stations_side_by_side_are_no_form(read):
    rows = "Position;A;Position;B\nBearing bore [mm];8;Bearing bore [mm];7\nBearing width [mm];7;Bearing width [mm];6\n"
    reading = read(rows)
    assert not {(8.0, "B"), (7.0, "A")} & set(
        zip(reading.stations.number("bore_diameter"), reading.stations.text("station"), strict=True)
    )


def test_machines_below_each_other_each_with_its_own_head(read):
    table = "Position;Bearing bore [mm];Shaft seat [mm]\nA;{0};{0} k5\nB;{0};{0} k5\n\n"
    first = "Drawing no.;D-7;\nMachine;M1;\nPreloading;spring;\nOperating speed;2800 rpm;\nRotor mass;2 kg;\n\n"
    second = "Seat data;;\nMachine;M2;\nPreloading;none;\nOperating speed;4400 rpm;\n\n"
    stations = read(first + table.format(8) + second + table.format(9)).stations
    assert list(zip(stations.text("machine"), stations.text("station"), strict=True)) == [
        ("M1", "A"), ("M1", "B"), ("M2", "A"), ("M2", "B")
    ]  # fmt: skip
    assert stations.number("speed_operating").tolist() == [2800, 2800, 4400, 4400]
    assert stations.number("rotor_mass").tolist()[:2] == [2, 2]
    assert np.isnan(stations.number("rotor_mass")[2:]).all()  # what the first machine states is not the other's
    assert set(stations.text("drawing_number")) == {"D-7"}


def test_what_stands_above_blocks_side_by_side_is_said_of_both(read):
    stations = read(
        "Machine;M4;;;\nMax. speed;9000 rpm;;;\nAll dimensions in mm;;;;\n\nSupport;DE;;Support;NDE\n"
        "Bearing bore;8;;Bearing bore;7\nShaft seat;8 k5;;Shaft seat;7 k5\n"
    ).stations
    assert stations.number("bore_diameter").tolist() == [8, 7]
    assert stations.number("speed_max").tolist() == [9000, 9000]


def test_positions_of_a_parts_list_below_a_heading_that_nobody_knows(read):
    rows = "1;Shaft;A;8 k5;0,003\n2;Shaft;B;7 k5;0,004\n3;Housing;A;22 H6;0,004\n4;Housing;B;19 H6;0,005\n"
    stations = read("No.;Part;Wherever;Seat diameter [mm];Cylindricity [mm]\n" + rows).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [22, 19]


def test_a_transposed_table_of_two_machines_with_a_column_of_units(read):
    stations = read(
        "Machine;;M1;M1;M2;M2\nRevision;;A;A;F;F\nPosition;Unit;front;rear;front;rear\nBearing;;608;607;608;607\n"
        "Bearing bore;mm;8;7;8;7\nShaft seat diameter;mm;8;7;8;7\n"
        "Fit shaft / housing;;h5 / H6;h5 / H7;k5 / H6;k5 / H7\n"
    ).stations
    assert list(zip(stations.text("machine"), stations.text("station"), strict=True)) == [
        ("M1", "front"), ("M1", "rear"), ("M2", "front"), ("M2", "rear")
    ]  # fmt: skip
    assert stations.number("bore_diameter").tolist() == [8, 7, 8, 7]


def test_a_group_of_operation_beside_those_of_bearing_shaft_and_housing(read):
    stations = read(
        "Position;Bearing;;Shaft;Housing;Operation\n;Bore [mm];Width [mm];Seat [mm];Seat [mm];Radial load [N]\n"
        "A;8;7;8 k5;22 H6;90\nB;7;6;7 k5;19 H6;80\n"
    ).stations
    assert stations.number("radial_load").tolist() == [90, 80]
    gear = read(
        "Position;Bearing;;Shaft;Housing;Gear\n;Bore [mm];Width [mm];Seat [mm];Seat [mm];Radial load [N]\n"
        "A;8;7;8 k5;22 H6;90\nB;7;6;7 k5;19 H6;80\n"
    ).stations
    assert not gear.known("radial_load").any()  # the load of something else


def test_a_row_of_unknown_names_above_a_station_is_a_heading(read):
    stations = read(
        "Machine;M4;;\nDesign life [h];8000;;\nRotor mass;2 kg;;\n\nBearing;;;\nPosition;Maker's code;Cage;Sealed by\n"
        "drive end;XX;polyamide;two lips\nnon-drive end;XX;polyamide;two lips\n\nShaft;;;\n"
        "Position;Seat diameter [mm];Cylindricity [µm];\ndrive end;8 k5;3;\nnon-drive end;7 k5;4;\n"
    ).stations
    assert stations.text("station").tolist() == ["drive end", "non-drive end"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [8, 7]


def test_rows_under_numbered_and_other_headings_below_positions_of_two_machines(read):
    reading = read(
        "Seat sheet;;;;;\n;Characteristic;Test rotor R7;;Spindle S2;\n;;Inboard;Outboard;Inboard;Outboard\n"
        "1;Bearing;;;;\n1.1;Bearing no.;608;607;608;607\n2;Shaft;;;;\n2.1;Seat diameter [mm];8 k5;7 k5;8 h5;7 h5\n"
        "2.2;Ra [µm];0.4;0.8;0.4;0.8\n3;Housing;;;;\n3.1;Ra [µm];0.8;1.6;0.8;1.6\n"
        "4;Bench setup;;;;\n4.1;Radial load [N];90;80;70;60\n4.2;Shaft material;steel;;steel;\n4.3;Ra [µm];3;3;3;3\n"
    )
    stations = reading.stations
    assert stations.machines == ("Test rotor R7", "Spindle S2")
    assert stations.text("station").tolist() == ["Inboard", "Outboard"] * 2
    assert stations.text("bearing_designation").tolist() == ["608", "607"] * 2
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8] * 2
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.6] * 2
    assert stations.number("radial_load").tolist() == [90, 80, 70, 60]
    assert stations.choice("shaft_material").texts().tolist() == ["steel"] * 4
    assert [u.place.cell for u in reading.unused if u.name == "Ra [µm]"] == ["C14", "D14", "E14", "F14"]


def test_a_heading_that_names_no_part_does_not_make_ring_sizes(read):
    rows = "Shaft;;\nSeat diameter;8 k5;mm\nBalancing plane;;\nOutside diameter;40;mm\nRadial load;9;N\n"
    reading = read("Parameter;Value;Unit\nBearing no.;608;\n" + rows)
    assert reading.stations.number("outside_diameter").tolist() != [40]
    assert "B6" in {u.place.cell for u in reading.unused}


def test_limits_by_position_above_a_table_of_positions_side_by_side(read):
    reading = read(
        "Service sheet;;;;\nMachine;Winch W2;;;\n\nMax. speed;3600 rpm;;;\n\n"
        "Position;Characteristic;Smallest size / mm;Largest size / mm;Measured\n"
        "DE;Shaft seat diameter;9,990;10,000;\nNDE;Shaft seat diameter;9,991;10,000;9,995\n\n"
        "Position;DE;NDE;;\nBearing no.;6200;6200-2Z;;\nShaft seat Ra;0,4 µm;0,8 µm;;\n"
    )
    stations = reading.stations
    assert stations.text("station").tolist() == ["DE", "NDE"]
    seat = stations.size("shaft_seat_diameter")
    assert (seat.nominal + seat.lower).tolist() == pytest.approx([9.990, 9.991])
    assert stations.text("bearing_designation").tolist() == ["6200", "6200-2Z"]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert stations.number("speed_max").tolist() == [3600, 3600]


HEADS = [("Rolling bearing", "Position"), ("Wälzlager", "Lagerstelle"), ("転がり軸受", "位置")]


@pytest.mark.parametrize(("bearing", "position"), HEADS)
def test_a_broad_table_below_a_long_list_of_the_machine_keeps_its_positions(tmp_path, bearing, position):
    path = tmp_path / "list.csv"
    path.write_text(
        "Machine;Mixer 5\n\nMax speed (rpm);26000\nService speed (rpm);20000\nSpring rate (N/mm);4\n"
        "Bearing span (mm);120\nLubrication;grease\nBalance grade;2.5\nShaft temperature (°C);59\n\n"
        f"{position};{bearing};Bearing bore (mm);Bearing OD (mm);Ring width (mm)\n"
        "upper;6003;17;35;10\nlower;6002;15;32;9\n",
        "utf-8",
    )
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["upper", "lower"]
    assert stations.text("bearing_designation").tolist() == ["6003", "6002"]
    assert stations.number("speed_max").tolist() == [26000, 26000]


def test_a_word_for_names_may_head_the_values_beside_a_word_for_remarks(tmp_path):
    path = tmp_path / "list.csv"
    rows = "Shaft seat diameter;9 k6;mm|Housing seat diameter;24 K6;mm|Shaft shoulder diameter;12;mm|Ring width;7;mm"
    of_both = [f"Fan M1;{place};{row}" for place in "AB" for row in f"Bearing;609 ZZ;|{rows}".split("|")]
    path.write_text("\n".join(["Machine;Position;Description;Dimension;Unit", *of_both]), "utf-8")
    stations = read_table(path).stations
    assert stations.text("bearing_designation").tolist() == ["609 ZZ", "609 ZZ"]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [24, 24]
