"""Blocks of names, one for each part: the first one's part over the heading row, positions over each or the first."""

import pytest

from linter.reading import Reading, read_table

#: The words of each language: parts, seat, roughness, fillet, bearing's block, designation, positions.
WORDS = [
    ("Rotor shaft", "End shield", "Fit diameter, mm", "Surface finish Ra, µm", "Fillet R, mm", "Bearing data",
     "Bearing type", "Front", "Rear"),
    ("Fit on shaft", "Fit in housing", "Seat diameter [mm]", "Roughness Ra [µm]", "Fillet radius [mm]", "Bearings",
     "Bearing no.", "A", "B"),
    ("Passung Welle", "Passung Gehäuse", "Sitzdurchmesser [mm]", "Rauheit Ra [µm]", "Hohlkehle R [mm]", "Lager",
     "Wälzlagertyp", "AS", "BS"),
    ("Eje", "Alojamiento", "Diámetro del asiento [mm]", "Rugosidad Ra [µm]", "Radio de acuerdo [mm]", "Rodamiento",
     "Tipo de rodamiento", "LA", "LOA"),
    ("Посадка на вал", "Посадка в корпус", "Диаметр посадки, мм", "Шероховатость Ra, мкм", "Галтель R, мм",
     "Данные подшипника", "Тип подшипника", "передняя", "задняя"),
]  # fmt: skip


@pytest.fixture
def read(tmp_path):
    def reader(text: str) -> Reading:
        path = tmp_path / "t.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


def _is_right(stations, words) -> None:
    assert {*stations.text("station")} == {*words[-2:]}
    order = [list(stations.text("station")).index(name) for name in words[-2:]]
    for name, sizes, roughness, radius in (
        ("shaft", [(30, 0.008, 0.017), (20, 0.002, 0.011)], [0.4, 0.8], [0.8, 0.6]),
        ("housing", [(62, 0, 0.019), (42, 0, 0.016)], [0.8, 1.6], [0.9, 0.5]),
    ):
        size = stations.size(f"{name}_seat_diameter")
        got = [(float(size.nominal[i]), float(size.lower[i]), float(size.upper[i])) for i in order]
        assert got == [pytest.approx(one, abs=1e-6) for one in sizes]
        assert [stations.number(f"{name}_seat_roughness")[i] for i in order] == roughness
        assert [stations.number(f"{name}_fillet_radius")[i] for i in order] == radius
    assert [stations.text("bearing_designation")[i] for i in order] == ["6206", "6004"]


def _blocks(words, *, again: bool = True, turned: bool = False, corner: bool = False) -> str:
    shaft, housing, seat, rough, fillet, bearing, kind, one, two = words

    def block(part, rows, *, first=False, turn=False):
        places = (two, one) if turn else (one, two)
        cells = [f"{name};{b if turn else a};{a if turn else b}" for name, a, b in rows]
        if corner and not first:
            return [f"{part};{places[0]};{places[1]}", *cells, ";;"]
        return [f"{part};;", *([f";{places[0]};{places[1]}"] if first or again else []), *cells, ";;"]

    rows = [
        *block(shaft, [(seat, "30 +0.017/+0.008", "20 +0.011/+0.002"), (rough, 0.4, 0.8), (fillet, 0.8, 0.6)],
               first=True),
        *block(housing, [(seat, "62 +0.019/0", "42 +0.016/0"), (rough, 0.8, 1.6), (fillet, 0.9, 0.5)], turn=turned),
        *block(bearing, [(kind, 6206, 6004)]),
    ]  # fmt: skip
    return "\n".join(["Machine;Blower GB-2;", ";;", *rows])


@pytest.mark.parametrize("words", WORDS)
def test_blocks_that_each_have_their_positions(read, words):
    _is_right(read(_blocks(words)).stations, words)


@pytest.mark.parametrize("words", [WORDS[0], WORDS[3]])
def test_blocks_below_one_row_of_positions(read, words):
    _is_right(read(_blocks(words, again=False)).stations, words)


@pytest.mark.parametrize("words", WORDS)
def test_a_block_may_have_its_positions_in_another_order(read, words):
    _is_right(read(_blocks(words, turned=True)).stations, words)


@pytest.mark.parametrize("words", [WORDS[0], WORDS[3]])
def test_positions_in_another_order_beside_the_part(read, words):
    _is_right(read(_blocks(words, turned=True, corner=True)).stations, words)


def test_a_word_over_a_table_of_all_parts_is_its_title(read):
    rows = ["Rotor shaft;;", ";Front;Rear", "Shaft seat [mm];30 k5;20 k5", "Housing seat [mm];62 H6;42 H6"]
    stations = read("\n".join([*rows, "Bearing type;6206;6004"])).stations
    assert list(stations.size("housing_seat_diameter").nominal) == [62, 42]


@pytest.mark.parametrize(
    ("words", "unit"),
    [
        (("Eje", "Alojamiento", "Diámetro del asiento", "Tolerancia", "Datos de servicio", "Velocidad máxima",
          "Vida requerida L10h", "Masa del rotor", "Lubricación", "grasa"), "Unidad"),
        (("Welle", "Gehäuse", "Sitzdurchmesser", "Toleranz", "Betriebsdaten", "Drehzahl max.",
          "Lebensdauer L10h gefordert", "Rotormasse", "Schmierung", "Fett"), "Einheit"),
        (("Shaft", "Housing", "Seat diameter", "Tolerance", "Service data", "Max. speed", "Required life L10h",
          "Rotor mass", "Lubrication", "grease"), "Unit"),
    ],
)  # fmt: skip
def test_values_of_the_machine_in_the_column_of_units(read, words, unit):
    shaft, housing, seat, fit, service, speed, life, mass, lubrication, grease = words
    rows = [
        f"{shaft};;;", f";{unit};LA;LOA", f"{seat};mm;12;15", f"{fit};;k5;k5", f"{housing};;;", f"{seat};mm;28;35",
        f"{fit};;K7;H7", f"{service};;;", f"{speed};3600;rpm;", f"{life};20000;h;", f"{mass};2.4;kg;",
        f"{lubrication};{grease};;",
    ]  # fmt: skip
    stations = read("\n".join(rows)).stations
    assert list(stations.size("shaft_seat_diameter").tolerance_class) == ["k5", "k5"]
    assert list(stations.size("housing_seat_diameter").tolerance_class) == ["K7", "H7"]
    assert list(stations.number("speed_max")) == [3600, 3600]
    assert list(stations.number("required_life")) == [20000, 20000]
    assert list(stations.number("rotor_mass")) == pytest.approx([2.4, 2.4])
    assert stations.known("lubrication").all()


def test_a_value_in_the_column_of_units_without_a_unit_is_not_read(read):
    rows = ["Shaft;;;", ";Unit;DE;NDE", "Seat diameter;mm;12;15", "Housing;;;", "Seat diameter;mm;28;35"]
    stations = read("\n".join([*rows, "Max. speed;3600;;", "Rotor mass;2.4;3600;"])).stations
    assert not stations.known("speed_max").any()
    assert not stations.known("rotor_mass").any()


@pytest.mark.parametrize(
    ("speed", "read"), [("Max. speed [rpm]", True), ("最大转速 [rpm]", True), ("Max. speed", False)]
)
def test_values_of_the_machine_in_the_column_of_units_are_read_or_asked_about(tmp_path, speed, read):
    path = tmp_path / "t.csv"
    rows = ["Item;Unit;DE;NDE", "Bearing;;6204;6203", "Shaft;;;", "Diameter;mm;20 k5;17 k5", "Machine data;;;"]
    path.write_text("\n".join([*rows, f"{speed};9000;;", ""]), encoding="utf-8")
    reading = read_table(path)
    assert reading.stations.known("speed_max").all() == read
    assert read or "B6" in {unused.place.cell for unused in reading.unused}
