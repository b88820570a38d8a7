"""Cells and remarks that say two things: a size and its roughness, a class of both bearings; letters of positions."""

import pytest

from linter.reading import read_table


def _read(tmp_path, text):
    path = tmp_path / "table.csv"
    path.write_text(text, "utf-8")
    return read_table(path)


@pytest.mark.parametrize("behind", [" Ra 0.4", ", Ra 0.4", " (Ra 0.4 µm)", "; Ra=0.4", " / Ra ≤ 0.4"])
def test_the_roughness_behind_a_size_is_that_of_its_seat(tmp_path, behind):
    text = f"Parameter\tA\tB\tUnit\nBearing\t6205\t6204\t\nShaft seat\t25 k5{behind}\t20 k5{behind}\tmm\n"
    stations = _read(tmp_path, text).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25.0, 20.0]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]


def test_a_roughness_beyond_those_of_seats_needs_its_unit(tmp_path):
    text = "Parameter;A;B;Unit\nBearing;6205;6204;\nShaft seat;25 k5 Ra 16;20 k5 Ra 16;mm\n"
    reading = _read(tmp_path, text)
    assert not reading.stations.known("shaft_seat_roughness").any()
    assert any(p.place is not None and p.place.cell == "B3" for p in reading.stations.problems)


BOTH = {
    "rows": "Item;Value;Note\nBearing DE;6205-2RS;both C3\nBearing NDE;6204-2RS;\nShaft seat DE;25 k5 mm;\n",
    "columns": "Merkmal;Lager A;Lager B;Bemerkung\nLagerbezeichnung;6205-2Z;6204-2Z;beide C3\n"
    "Wellensitz [mm];25 k5;20 k5;\n",
    "one row per station": "Position;Bearing;Shaft seat [mm];Remark\nDE;6205;25 k5;both C3\nNDE;6204;20 k5;\n",
    "words for it": "Item;Value;Note\nBearing DE;6205-2RS;both clearance C3\nBearing NDE;6204-2RS;\n"
    "Shaft seat DE;25 k5 mm;\n",
    "pairs": "Fan F-1;;\nBearings (DE/NDE);6205 / 6204;both C3\nShaft seats (DE/NDE);25 k5 / 20 k5;mm\n",
}


@pytest.mark.parametrize("kind", BOTH)
def test_a_class_of_both_bearings_is_read_for_both(tmp_path, kind):
    stations = _read(tmp_path, BOTH[kind]).stations
    assert len(stations) == 2 and stations.choice("clearance_class").is_in("C3").all()


def test_a_class_beside_one_bearing_is_that_of_this_one(tmp_path):
    text = "Item;Value;Note\nBearing DE;6205-2RS;C3\nBearing NDE;6204-2RS;\nShaft seat DE;25 k5 mm;\n"
    stations = _read(tmp_path, text).stations
    assert stations.choice("clearance_class").is_in("C3").tolist() == [
        station == "DE" for station in stations.text("station")
    ]


@pytest.mark.parametrize("heads", ["Item;A;B", "Part;A;B", ";A;B"])
def test_letters_of_positions_are_no_sizes(tmp_path, heads):
    text = f"{heads}\nBearing;6205-2Z;6204-2Z\nShaft seat;25 k5;20 h5\nHousing seat;52 H6;47 H6\n"
    stations = _read(tmp_path, text).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25.0, 20.0]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [52.0, 47.0]


DUAL = {
    "0.9843 (25.000)": 25.00122,
    "25.000 (0.9843)": 25.0,
    "0.9843 in [25.000 mm]": 25.00122,
    "25,00 mm (0,984 in)": 25.0,
}


@pytest.mark.parametrize("cell", DUAL)
def test_a_length_in_two_units_proves_them(tmp_path, cell):
    text = f"Item\tA\tB\nBearing\t6205\t6205\nShaft seat\t{cell}\t{cell}\nShaft seat Ra [µm]\t0.4\t0.4\n"
    path = tmp_path / "table.tsv"
    path.write_text(text.replace(".", ",") if "," in cell else text, "utf-8")
    nominal = read_table(path).stations.size("shaft_seat_diameter").nominal.tolist()
    assert nominal == pytest.approx([DUAL[cell]] * 2, rel=1e-9)


@pytest.mark.parametrize("cell", ["25 (20)", "1 (25)", "0.9843 (25.3)", "0.9843 mm (25.000 in)"])
def test_two_numbers_that_are_not_the_same_length_are_asked(tmp_path, cell):
    text = f"Item\tA\tB\nBearing\t6205\t6205\nShaft seat\t{cell}\t{cell}\nShaft seat Ra [µm]\t0.4\t0.4\n"
    path = tmp_path / "table.tsv"
    path.write_text(text, "utf-8")
    assert not read_table(path).stations.known("shaft_seat_diameter").any()
