"""What a sheet says by the words above, beside and over its values, whatever its layout."""

from pathlib import Path

import numpy as np
import pytest

from linter.model.places import Place
from linter.model.stations import Problem
from linter.reading import read_table
from linter.reading.files.grids import Grid, object_column
from linter.reading.layouts import by_context
from linter.reading.layouts.context_rows import Region, Rows
from linter.reading.layouts.context_tree import tree_of
from linter.reading.layouts.strips import Found
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())


def grid_of(text, delimiter=";"):
    rows = [line.split(delimiter) for line in text.splitlines()]
    width = max(map(len, rows))
    columns = [object_column([(row + [""] * width)[c] for row in rows]) for c in range(width)]
    return Grid("seats.csv", None, columns, np.arange(1, len(rows) + 1, dtype=np.int32))


LISTED = (
    "Assembly;Component;Characteristic;Nominal;Tolerance;Unit;Source\n"
    "Side channel blower SB-4;Rotor;Maximum speed;9000;;1/min;spec\n"
    "Side channel blower SB-4;Front bearing;Bearing designation;6204;;;list\n"
    "Side channel blower SB-4;Front bearing;Shaft seat diameter;20;k5;mm;model\n"
    "Side channel blower SB-4;Front bearing;Housing bore cylindricity;4;;µm;model\n"
    "Side channel blower SB-4;Rear bearing;Bearing designation;6203;;;list\n"
    "Side channel blower SB-4;Rear bearing;Shaft seat diameter;17;j5;mm;model\n"
    "Side channel blower SB-4;Rear bearing;Housing bore cylindricity;3;;µm;model\n"
)
BLOCKS = (
    "Supporto A;valore;u.m.\nSigla cuscinetto;6204;\nDiametro sede albero;20 k5;mm\nCilindricità sede albero;4;µm\n"
    ";;\n"
    "Supporto B;valore;u.m.\nSigla cuscinetto;6203;\nDiametro sede albero;17 j5;mm\nCilindricità sede albero;3;µm\n"
)
CROSSED = (
    "Datenblatt;;;\nDrehzahl max. [1/min];9000;;\n;;;\n"
    ";;Lager links;Lager rechts\nWälzlager;;;\nKurzzeichen;;6204;6203\nWellensitz;;;\nDurchmesser;mm;20 k5;17 j5\n"
    "Zylinderform;µm;4;3\n"
)


def leaves(text):
    tree = tree_of(grid_of(text), WORDS)
    return {pointer.removesuffix("/value"): where for pointer, where in tree.where.items()}


def test_a_value_stands_below_its_position_its_part_and_its_name():
    found = leaves(LISTED)
    assert found["/machines/Side channel blower SB-4/stations/Front/Shaft seat diameter/Nominal [mm]"] == (3, 3)
    assert found["/machines/Side channel blower SB-4/stations/Rear/Shaft seat diameter/Tolerance"] == (6, 4)
    assert not any("Source" in pointer or "list" in pointer for pointer in found)


def test_a_word_over_the_names_of_a_block_is_their_position():
    found = leaves(BLOCKS)
    assert found["/stations/A/Diametro sede albero"] == (2, 1)
    assert found["/stations/B/Diametro sede albero"] == (7, 1)


def test_parts_over_rows_and_positions_over_columns_cross():
    found = leaves(CROSSED)
    assert found["/stations/links/Wellensitz/Durchmesser"] == (7, 2)
    assert found["/stations/rechts/Wellensitz/Zylinderform"] == (8, 3)
    assert found["/Drehzahl max. [1~1min]"] == (1, 1)


def test_what_words_do_not_tell_apart_is_none_of_both():
    found = leaves("Name;Value\nShaft seat diameter;20 k5\nHousing seat diameter;47 H6\nShaft seat diameter;17 j5\n")
    assert [*found] == ["/Housing seat diameter"]


@pytest.mark.parametrize(
    ("row", "kind"),
    [
        ("Wellensitz;;", "section"),
        ("Wellensitz;;Wellensitz", "section"),
        ("Lager;Welle;Gehäuse", "head"),
        ("mm;µm;mm", "units"),
        ("Zeichnung;W 41-9;", "values"),
        ("Rotating ring;inner ring;", "values"),
        ("A;20 k5;47 H6", "values"),
    ],
)
def test_rows_are_told_by_what_stands_in_them(row, kind):
    regions = Rows(grid_of(f"{row}\nA;1;2\nB;3;4\n"), WORDS)
    cells = [c for column in range(3) if (c := regions._cell(0, column)) is not None]
    assert regions._kind_of_row(0, cells, Region(), "") == kind


def stated(path):
    reading = read_table(path)
    return {
        (u.parameter, u.place.cell): (reading.stations.texts["station"][u.row], u.value) for u in reading.understood
    }


@pytest.mark.parametrize("text", [LISTED, BLOCKS, CROSSED])
def test_both_positions_are_read(tmp_path, text):
    path = tmp_path / "seats.csv"
    path.write_text(text, "utf-8")
    seats = [value for (name, _), (_, value) in stated(path).items() if name == "shaft_seat_cylindricity"]
    own = [value for (name, _), (_, value) in stated(path).items() if name == "shaft_seat_diameter"]
    assert len(own) >= 2
    assert text == LISTED or len(seats) == 2


@pytest.mark.parametrize("name", ["coolant-pump.csv", "grinding-spindle.csv", "respirator-blower.xlsx"])
def test_what_the_layouts_read_stays_as_it_is(monkeypatch, name):
    path = Path("sample_exports") / name
    both = stated(path)
    monkeypatch.setattr("linter.reading.layouts.sheet.complete_by_context", lambda *_: None)
    assert stated(path) == both


def test_readings_that_disagree_add_nothing():
    before = {"B2": [("shaft_seat_diameter", ("M", "A"))], "B3": [("bearing_designation", ("M", "A"))]}
    assert by_context._names_agreed(before, {"B2": [("shaft_seat_diameter", ("M", "DE"))]}) == ({"DE": "A"}, {"M": "M"})
    assert by_context._names_agreed(before, {"B2": [("housing_seat_diameter", ("M", "A"))]}) is None
    assert by_context._names_agreed(before, {"B2": [("shaft_seat_diameter", ("M", ""))]}) is None
    two = {"B2": [("shaft_seat_diameter", ("M", "A"))], "B3": [("bearing_designation", ("M", "B"))]}
    assert by_context._names_agreed(before, two) is None


def test_what_is_told_as_measured_is_not_taken(tmp_path):
    path = tmp_path / "seats.csv"
    path.write_text(LISTED.replace("Source", "Measured").replace("model", "4.5"), "utf-8")
    assert not any(value.startswith("4.5") for _, value in stated(path).values())


def test_no_position_is_added_to_two_that_are_named(tmp_path):
    text = "Characteristic;Unit;DE;NDE;Seite\nBearing designation;;6204;6203;3\nBore d;mm;20;17;3\n"
    text += "Shaft seat diameter;mm;20 k5;17 j5;4\nHousing seat diameter;mm;47 H6;40 J7;4\nRa shaft seat;µm;0.4;0.4;4\n"
    path = tmp_path / "seats.csv"
    path.write_text(text, "utf-8")
    assert [*read_table(path).stations.texts["station"]] == ["DE", "NDE"]


def test_a_number_before_a_heading_of_rows_names_no_position():
    found = leaves("1. Machine;\nSpeed;9000 rpm\n2. Bearing;\nDesignation;6204\n3. Shaft;\nSeat diameter;20 k5\n")
    assert not any("stations" in pointer for pointer in found)


def test_what_is_of_the_whole_machine_stays_its_own(tmp_path):
    path = tmp_path / "seats.csv"
    path.write_text(
        "Item;Position;Attribute;Value;UoM\nBlower 7;(all);Drawing;P-22;\nBlower 7;(all);Speed, maximum;9000;1/min\n"
        + "".join(
            f"Blower 7;{p}-side;{name};{value};{unit}\n"
            for p, d in (("A", "20"), ("B", "17"))
            for name, value, unit in (
                ("Shaft seat", f"{d} k5", "mm"),
                ("Shaft seat roughness Ra", "0.4", "µm"),
                ("Housing seat", "47 H6", "mm"),
            )
        ),
        "utf-8",
    )
    stations = read_table(path).stations
    assert stations.number("speed_max").tolist() == [9000, 9000]
    assert [*stations.texts["drawing_number"]] == ["P-22", "P-22"]


def test_reasons_for_want_of_words_are_those_of_the_layouts():
    rooms = [path for path in Path("linter/reading/layouts").glob("*.py") if path.name != "by_context.py"]
    texts = " ".join(path.read_text("utf-8") for path in rooms)
    assert [reason for reason in by_context._FOR_WANT_OF_WORDS if f'"{reason}"' not in texts] == []


def test_what_the_tree_leaves_in_doubt_is_not_taken(tmp_path):
    path = tmp_path / "seats.csv"
    path.write_text(LISTED.replace(";4;;µm", ";4 or 5;;µm"), "utf-8")
    assert not any(name == "housing_seat_cylindricity" and "4" in v for (name, _), (_, v) in stated(path).items())


def finding(row, column):
    place = Place("seats.csv", None, f"{'ABC'[column]}{row + 1}")
    return Problem("unreadable", None, None, place, "", "", "values are not read", "values-not-read")


def test_a_finding_goes_where_all_figures_of_its_row_and_column_are_read_and_no_sooner():
    grid = grid_of("Name;DE;NDE\nShaft seat;20 k5;17 j5\nHousing seat;47 H6;40 J7\n")
    found = Found(problems=[finding(1, 1)])
    by_context._take_back(grid, found, {"B2"}, {"B2", "B3"})
    assert len(found.problems) == 1  # C2 in its row is not read
    by_context._take_back(grid, found, {"B2", "C2"}, {"B2", "C2"})
    assert len(found.problems) == 1  # B3 in its column is not read
    by_context._take_back(grid, found, {"B2"}, {"B2", "C2", "B3"})
    assert found.problems == []
