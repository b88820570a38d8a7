"""Labels and values below a table with a heading row: what they state of its machine, and what they do not."""

import pytest

from linter.reading import read_table

_GERMAN = (
    "Lagerstelle;Lager;d [mm];D [mm];B [mm];Passung Welle;Passung Gehäuse\n"
    "links;6205;25;52;15;k5;H6\nrechts;6204;20;47;14;k5;H7\n"
)
_ENGLISH = (
    "Pos,Designation,ID mm,OD mm,Width mm,Shaft fit,Housing fit\nDE,6205,25,52,15,k5,H6\nNDE,6204,20,47,14,k5,H7\n"
)


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


@pytest.mark.parametrize(
    "text",
    [
        _GERMAN
        + ";;;;;;\nDrehzahl;3000;1/min;;;;\nSchmierung;Fett;;;;;\nZeichnungsnummer;K-47;;;;;\nKunde;offen;;;;;\n",
        _GERMAN + "Drehzahl: 3000 1/min;;;;;;\nSchmierung: Fett;;;;;;\nZeichnungsnummer: K-47;;;;;;\n",
        _ENGLISH + ",,,,,,\n,General,,,,,\n,Speed,3000 rpm,Lubrication,grease,,\n,Drawing no.,K-47,Customer,open,,\n",
    ],
)
def test_labels_and_values_below_a_table_are_of_its_machine(read, text):
    stations = read(text).stations
    assert len(stations.text("station")) == 2
    assert stations.number("speed_max").tolist() == [3000, 3000]
    assert stations.choice("lubrication").texts().tolist() == ["grease", "grease"]
    assert stations.text("drawing_number").tolist() == ["K-47", "K-47"]


def test_what_the_foot_does_not_say_is_listed_under_its_label(read):
    reading = read(_ENGLISH + ",,,,,,\nSpeed,3000 rpm,,,,,\nOil mass,4 kg,,,,,\n")
    assert ("Oil mass", "4 kg") in [(one.name, one.value) for one in reading.unused]


def test_a_foot_below_several_machines_is_of_none(read):
    rows = "".join(f"Reel {k},{line}\n" for k, line in enumerate(_ENGLISH.splitlines()[1:]))
    reading = read(f"Machine,{_ENGLISH.splitlines()[0]}\n{rows},,,,,,,\nSpeed,3000 rpm,,,,,,\n")
    assert not reading.stations.known("speed_max").any()
    assert "Speed" in {one.name for one in reading.unused}


def test_a_value_that_the_table_states_of_each_station_stays_its_own(read):
    head, *rows = _ENGLISH.splitlines()
    table = "\n".join([f"{head},Lubrication", f"{rows[0]},oil bath", f"{rows[1]},grease"])
    stations = read(f"{table}\n,,,,,,,\nSpeed,3000 rpm,,,,,,\nLubrication,oil mist,,,,,,\n").stations
    assert stations.choice("lubrication").texts().tolist() == ["oil bath", "grease"]


def test_a_station_with_few_cells_below_a_blank_row_is_a_station(read):
    stations = read(f"{_ENGLISH},,,,,,\nmiddle,6203,,,,,\n").stations
    assert stations.text("station").tolist() == ["DE", "NDE", "middle"]


@pytest.mark.parametrize("word", ["额定转速", "定格回転数"])
def test_a_rated_speed_alone_may_be_the_highest_one_and_is_not_taken_for_that_of_operation(read, word):
    reading = read(f"{_ENGLISH},,,,,,\n{word},3000 rpm,,,,,\nDrawing no.,K-47,,,,,\n")
    assert not reading.stations.known("speed_operating").any()
    assert (word, "3000 rpm") in [(one.name, one.value) for one in reading.unused]
    beside = read(f"{_ENGLISH},,,,,,\n{word},3000 rpm,,,,,\nMax. speed,3600 rpm,,,,,\n").stations
    assert beside.number("speed_operating").tolist() == [3000, 3000]


@pytest.mark.parametrize("text", ["G 2,5", "Klasse G2.5", "G 2.5 (ISO 1940)", "G2.5級", "Q 2,5", "2.5 mm/s"])
def test_a_balance_grade_as_it_is_written(read, text):
    stations = read(f'{_ENGLISH},,,,,,\nBalance grade,"{text}",,,,,\n').stations
    assert stations.number("balance_grade").tolist() == [2.5, 2.5]


@pytest.mark.parametrize(
    "foot",
    [
        ',,,,,,\nTool interface,ISO 30 taper,,,,,\nCoolant,"1.5 gpm, 68 °F",,,,,\n',
        "Dimensions in mm,,,,,,\n冷却水,3,L/min,,,,\n砥石軸径,6,h5,,,,\n",
        ",,,,,,\nWerkzeugaufnahme,SK 30,,,,,\n",
    ],
)
def test_rows_of_other_things_below_a_table_are_no_stations(read, foot):
    reading = read(_ENGLISH + foot)
    assert reading.stations.text("station").tolist() == ["DE", "NDE"]
    assert reading.stations.text("bearing_designation").tolist() == ["6205", "6204"]


@pytest.mark.parametrize(
    ("heads", "seats", "note"),
    [
        (
            "Item;Description;Position;Nominal (mm);Deviation (mm)",
            ("Shaft seat", "Housing seat"),
            "Spring preload 140 N",
        ),
        (
            "Item;Description;Position;Nominal (mm);Deviation (mm)",
            ("Shaft seat", "Housing seat"),
            "Preload force;140;N",
        ),
        ("Pos.;Benennung;Lagerstelle;Nennmaß (mm);Abmaße (mm)", ("Wellensitz", "Gehäusesitz"), "Vorspannkraft: 140 N"),
    ],
)
def test_a_note_apart_below_a_list_of_seats_is_of_its_machine(tmp_path, heads, seats, note):
    ends = (("Front", "20", "47"), ("Rear", "17", "40"))
    rows = [
        f"{k};{seat};{end};{size};+0.01 / 0"
        for k, (end, *sizes) in enumerate(ends)
        for seat, size in zip(seats, sizes, strict=True)
    ]
    path = tmp_path / "table.csv"
    path.write_text("\n".join([heads, *rows, ";;;;", note]), "utf-8")
    stations = read_table(path).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 17]
    assert stations.size("preload_force").nominal.tolist() == [140, 140]
