"""One row for each machine, its positions in the headings: what a bearing, a shaft, a housing alone say there."""

import pytest

from linter.reading import Reading, read_table
from linter.reading.words.machine_words import names_machine

_SIZES = ("6205|25 k5|52 H6|6204|20 k5|47 H6", "6206|30 k5|62 H6|6205|25 k5|52 H6")


def read(tmp_path, rows: list[str]) -> Reading:
    path = tmp_path / "table.tsv"
    path.write_text("\n".join(row.replace("|", "\t") for row in rows), encoding="utf-8")
    return read_table(path)


def keys(reading: Reading) -> list[tuple[str, str]]:
    return list(zip(reading.stations.text("machine"), reading.stations.text("station"), strict=True))


@pytest.mark.parametrize(
    "heads",
    [
        "Model|Front bearing|Front shaft (mm)|Front housing (mm)|Rear bearing|Rear shaft (mm)|Rear housing (mm)",
        "Frame size|Brg (DE)|Shaft (DE)|Housing (DE)|Brg (NDE)|Shaft (NDE)|Housing (NDE)",
        "Baugröße|Lager vorn|Welle vorn [mm]|Gehäuse vorn [mm]|Lager hinten|Welle hinten [mm]|Gehäuse hinten [mm]",
        "Modèle|Roulement avant|Arbre avant|Logement avant|Roulement arrière|Arbre arrière|Logement arrière",
        "Tamaño|Rodamiento LA|Eje LA|Alojamiento LA|Rodamiento LOA|Eje LOA|Alojamiento LOA",
        "Taglia|Cuscinetto ant.|Albero ant.|Sede ant.|Cuscinetto post.|Albero post.|Sede post.",
        "Модель|Подшипник перед.|Вал перед., мм|Корпус перед., мм|Подшипник задн.|Вал задн., мм|Корпус задн., мм",
        "型式|前側軸受|前側軸(mm)|前側ハウジング(mm)|後側軸受|後側軸(mm)|後側ハウジング(mm)",
        "规格|前轴承|前轴径(mm)|前座孔(mm)|后轴承|后轴径(mm)|后座孔(mm)",
    ],
)
@pytest.mark.parametrize("names", [("FX 1", "FX 2"), ("80", "90")])
def test_parts_of_positions_are_the_seats_and_each_row_is_a_machine(tmp_path, heads, names):
    reading = read(tmp_path, [heads, *(f"{name}|{sizes}" for name, sizes in zip(names, _SIZES, strict=True))])
    assert [machine for machine, _ in keys(reading)] == [names[0], names[0], names[1], names[1]]
    assert list(reading.stations.text("bearing_designation")) == ["6205", "6204", "6206", "6205"]
    assert list(reading.stations.size("shaft_seat_diameter").nominal) == [25, 20, 30, 25]
    assert list(reading.stations.size("housing_seat_diameter").nominal) == [52, 47, 62, 52]


@pytest.mark.parametrize(
    ("shaft", "fit", "known"),
    [("25.01", "", True), ("25", "k5", True), ("0.9846 in", "", True), ("28", "", False), ("28", "j6", False)],
)
def test_a_size_below_a_part_alone_is_the_seat_where_the_bearing_has_it(tmp_path, shaft, fit, known):
    heads = "Model|DE bearing|DE shaft|Fit|DE housing bore dia [mm]|NDE bearing|NDE housing bore dia [mm]"
    reading = read(
        tmp_path, [heads, f"M1|6205|{shaft}|{fit}|52 H6|6204|47 H6", f"M2|6205|{shaft}|{fit}|52 H6|6204|47 H6"]
    )
    assert reading.stations.known("shaft_seat_diameter").tolist() == [known, False] * 2


def test_without_the_bearing_a_class_of_its_sort_tells_a_seat(tmp_path):
    heads = (
        "Model|Front shaft|Fit|Front housing|Fit|Front shaft seat Ra|Rear shaft|Fit|Rear housing|Fit|Rear shaft seat Ra"
    )
    reading = read(tmp_path, [heads, "M1|25|k5|52|H6|0.8|20|H7|47|H6|0.8", "M2|30|k5|62|H6|0.8|25|H7|52|H6|0.8"])
    assert reading.stations.known("shaft_seat_diameter").tolist() == [True, False] * 2
    assert reading.stations.known("housing_seat_diameter").all()


@pytest.mark.parametrize(
    ("label", "said"),
    [
        ("Model", "kind"), ("Pump size", "both"), ("Ventilatorbaugröße", "both"), ("Тип насоса", "both"),
        ("Modèle de pompe", "both"), ("电机型号", "both"), ("Spindle", "machine"), ("Bearing type", ""), ("Name", ""),
    ],
)  # fmt: skip
def test_words_for_the_sort_of_a_machine(label, said):
    assert names_machine(label) == said


@pytest.mark.parametrize("head", ["Shldr Dia", "挡肩直径", "Schulter-Ø", "Ø épaulement", "Диаметр заплечика"])
@pytest.mark.parametrize(("sizes", "part"), [((42, 37), "shaft"), ((65, 65), "housing"), ((1.65, 1.46), "shaft")])
def test_a_shoulder_told_by_the_bearing_in_its_row_is_marked_as_assumed(tmp_path, head, sizes, part):
    unit = "in" if sizes[0] < 2 else "mm"
    reading = read(tmp_path, [f"Position|Bearing|{head} [{unit}]", f"A|6207|{sizes[0]}", f"B|6306|{sizes[1]}"])
    assert reading.stations.known(f"{part}_shoulder_diameter").all()
    told = [p for p in reading.stations.problems if p.code == "part-told"]
    assert [(p.kind, p.parameter, p.place.cell) for p in told] == [("assumption", f"{part}_shoulder_diameter", "C1")]


@pytest.mark.parametrize(
    ("head", "assumed"),
    [
        ("Position|Shaft seat|Bore", True), ("Stelle|Wellensitz|Bohrung", True), ("位置|轴径|孔径", True),
        ("Position|Shaft seat|Housing bore", False), ("Stelle|Wellensitz|Gehäusebohrung", False),
    ],
)  # fmt: skip
def test_a_bore_larger_than_the_shaft_is_the_housing_s_by_assumption(tmp_path, head, assumed):
    reading = read(tmp_path, [f"{head} [mm]".replace("|", " [mm]|").replace(" [mm]", "", 1), "A|25|52", "B|20|47"])
    assert list(reading.stations.size("housing_seat_diameter").nominal) == [52, 47]
    assert [p.parameter for p in reading.stations.problems if p.code == "part-told"] == [
        "housing_seat_diameter"
    ] * assumed


def test_a_class_of_holes_tells_a_bore_without_an_assumption(tmp_path):
    reading = read(tmp_path, ["Position|Shaft seat [mm]|Tol|Bore [mm]|Tol", "A|25|k5|52|H6", "B|20|k5|47|H6"])
    assert list(reading.stations.size("housing_seat_diameter").tolerance_class) == ["H6", "H6"]
    assert not [p for p in reading.stations.problems if p.code == "part-told"]


def test_a_shoulder_of_no_part_in_a_list_of_objects_is_marked_as_assumed(tmp_path):
    path = tmp_path / "table.json"
    rows = ", ".join(
        f'{{"position": "{p}", "bearing": "{b}", "shoulder dia [mm]": {s}}}'
        for p, b, s in (("A", "6207", 42), ("B", "6306", 37))
    )
    path.write_text(f"[{rows}]", encoding="utf-8")
    stations = read_table(path).stations
    assert list(stations.size("shaft_shoulder_diameter").nominal) == [42, 37]
    assert [p.parameter for p in stations.problems if p.code == "part-told"] == ["shaft_shoulder_diameter"]


def test_a_word_over_headings_that_say_their_part_is_none_of_a_part(tmp_path):
    heads = ["||Bearing||Abutments|", "Position|Kind|P/N|Bore [in]|Shaft shldr [in]|Hsg shldr [in]"]
    rows = ["A|fixed|6204|0.7874|0.98|1.66", "B|free|6203|0.6693|0.85|1.4"]
    reading = read(tmp_path, [*heads, *rows])
    assert reading.stations.known("shaft_shoulder_diameter").all()
    assert reading.stations.known("housing_shoulder_diameter").all()
    assert not [p for p in reading.stations.problems if p.code == "part-told"]


@pytest.mark.parametrize(
    ("heads", "assumed"),
    [
        ("Shaft max|Shaft min|Bore max|Bore min", ["housing_seat_diameter"]),
        ("Welle max.|Welle min.|Bohrung max.|Bohrung min.", ["housing_seat_diameter"]),
        ("Shaft max|Shaft min|Housing max|Housing min", []),
    ],
)
def test_limits_of_a_bore_beside_those_of_the_shaft_are_the_housing_s_by_assumption(tmp_path, heads, assumed):
    heads = "|".join(f"{head} [mm]" for head in heads.split("|"))
    reading = read(tmp_path, [f"Position|{heads}", "A|25.011|25.002|52.019|52.0", "B|20.011|20.002|47.016|47.0"])
    assert reading.stations.known("housing_seat_diameter").all()
    assert [p.parameter for p in reading.stations.problems if p.code == "part-told"] == assumed


@pytest.mark.parametrize("sign", ["Ø", "⌀ ", "φ", ""])
def test_a_diameter_sign_before_a_size_hides_it_from_no_one(tmp_path, sign):
    rows = [f"A|6207|{sign}42|{sign}35|{sign}72", f"B|6306|{sign}37|{sign}30|{sign}72"]
    reading = read(tmp_path, ["Position|Bearing|Shldr Dia [mm]|Shaft seat [mm]|Bore [mm]", *rows])
    assert list(reading.stations.size("shaft_shoulder_diameter").nominal) == [42, 37]
    assert list(reading.stations.size("housing_seat_diameter").nominal) == [72, 72]


@pytest.mark.parametrize(
    "head",
    [
        "Position|Bearing|Seat Ø [mm]|Tolerance|Housing bore [mm]|Fit|Shoulder [mm]",
        "Stelle|Lager|Sitz Ø [mm]|Toleranz|Gehäusebohrung [mm]|Passung|Bund [mm]",
        "Posizione|Cuscinetto|Sede [mm]|Tolleranza|Foro alloggiamento [mm]|Tolleranza|Spallamento [mm]",
    ],
)
def test_a_seat_of_no_part_has_the_tolerance_behind_it(tmp_path, head):
    reading = read(tmp_path, [head, "A|6205|25|k5|52|H6|31", "B|6204|20|k5|47|H6|26"])
    shaft = reading.stations.size("shaft_seat_diameter")
    assert list(shaft.nominal) == [25, 20] and list(shaft.tolerance_class) == ["k5", "k5"]
    assert list(reading.stations.size("housing_seat_diameter").tolerance_class) == ["H6", "H6"]
    assert list(reading.stations.size("shaft_shoulder_diameter").nominal) == [31, 26]
    assert "part-told" in {p.code for p in reading.stations.problems}


def test_a_bore_before_its_limits_is_the_housing_s(tmp_path):
    heads = "Repère|Alésage [mm]|Alésage max [mm]|Alésage min [mm]|Arbre max [mm]|Arbre min [mm]"
    reading = read(tmp_path, [heads, "A|52|52.019|52.0|25.011|25.002", "B|47|47.016|47.0|20.011|20.002"])
    assert list(reading.stations.size("housing_seat_diameter").nominal) == [52, 47]


@pytest.mark.parametrize(
    "heads",
    [
        "Position|Bearing|shaft_d [mm]|shaft_up [µm]|shaft_lo [µm]|hsg_D [mm]|hsg_up [µm]|hsg_lo [µm]",
        "Stelle|Lager|Welle Ø [mm]|Welle oben [µm]|Welle unten [µm]|Geh. Ø [mm]|Geh. oben [µm]|Geh. unten [µm]",
        "Posición|Rodamiento|Ø eje [mm]|T. sup. [µm]|T. inf. [µm]|Ø alojamiento [mm]|T. sup. [µm]|T. inf. [µm]",
        "位置|軸受型番|軸径 (mm)|上 (μm)|下 (μm)|ハウジング径 (mm)|上 (μm)|下 (μm)",
        "Позиция|Подшипник|Вал Ø, мм|Верх., мкм|Ниж. откл., мкм|Корпус Ø, мм|Верх., мкм|Ниж. откл., мкм",
    ],
)
def test_deviations_behind_a_size_may_say_their_part_or_their_side_only(tmp_path, heads):
    reading = read(tmp_path, [heads, "A|6202|15|+2|-4|35|+5|-4", "B|6201|12|+2|-5|32|+14|+6"])
    shaft, housing = (reading.stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    assert list(shaft.nominal) == [15, 12] and list(housing.nominal) == [35, 32]
    assert list(shaft.lower) == pytest.approx([-0.004, -0.005]) and list(shaft.upper) == pytest.approx([0.002, 0.002])
    assert list(housing.lower) == pytest.approx([-0.004, 0.006])


def test_upper_and_lower_beside_no_size_are_no_deviations(tmp_path):
    heads = "Machine|Bearing upper|Bearing lower|Shaft upper|Shaft lower"
    reading = read(tmp_path, [heads, "M1|6202|6201|15 k5|12 k5", "M2|6203|6202|17 k5|15 k5"])
    assert list(reading.stations.size("shaft_seat_diameter").nominal) == [15, 12, 17, 15]


@pytest.mark.parametrize(
    ("shaft", "housing"),
    [
        ("Shaft diameter and fit", "Housing diameter and fit"),
        ("Wellendurchmesser und Passung", "Gehäusebohrung mit Passung"),
        ("Diamètre arbre et ajustement", "Alésage logement et ajustement"),
        ("Diámetro eje y ajuste", "Diámetro alojamiento y ajuste"),
        ("軸径とはめあい", "ハウジング内径とはめあい"),
    ],
)
def test_a_size_with_its_fit_is_named_as_the_size(tmp_path, shaft, housing):
    reading = read(tmp_path, [f"Position|Bearing|{shaft}|{housing}", "A|6205|25 k5|52 H6", "B|6204|20 k5|47 H6"])
    assert list(reading.stations.size("shaft_seat_diameter").nominal) == [25, 20]
    assert list(reading.stations.size("housing_seat_diameter").tolerance_class) == ["H6", "H6"]


@pytest.mark.parametrize(
    ("above", "heads"),
    [
        ("Type|Drawing|DE bearing||||NDE bearing||||Rotor||Speed|", "No.|shaft|housing|shoulder|mass kg|max rpm|IC"),
        ("Typ|Zeichnung|Lager AS||||Lager BS||||Rotor||Drehzahl|", "Nr.|Welle|Gehäuse|Schulter|Masse kg|max. 1/min|IC"),
        ("Modèle|Plan|Palier avant||||Palier arrière||||Rotor||Vitesse|",
         "Réf.|arbre|logement|épaulement|masse kg|maxi tr/min|IC"),
    ],
)  # fmt: skip
def test_parts_alone_below_positions_of_each_machine(tmp_path, above, heads):
    number, shaft, housing, shoulder, mass, speed, other = heads.split("|")
    position = "|".join((number, shaft, housing, shoulder))
    rows = [
        above,
        f"||{position}|{position}|{mass}|G|{speed}|{other}",
        "SM-56|SM56-01|6004-2Z|20 k5|42 J6|24|6003-2Z|17 k5|35 H6|20.5|1.2|2.5|9000|a",
        "SM-71|SM71-01|6205-2Z|25 k5|52 J6|31|6204-2Z|20 k5|47 H6|26|2.9|2.5|8000|b",
        "Prepared",
    ]
    reading = read(tmp_path, rows)
    assert [machine for machine, _ in keys(reading)] == ["SM-56", "SM-56", "SM-71", "SM-71"]
    assert list(reading.stations.size("shaft_seat_diameter").nominal) == [20, 17, 25, 20]
    assert list(reading.stations.size("housing_seat_diameter").tolerance_class) == ["J6", "H6", "J6", "H6"]
    assert list(reading.stations.number("rotor_mass")) == [1.2, 1.2, 2.9, 2.9]
    assert list(reading.stations.number("speed_max")) == [9000, 9000, 8000, 8000]


@pytest.mark.parametrize(
    ("item", "above", "below", "names"),
    [
        ("项目", "上", "下", ("轴承档直径 最大(mm)", "轴承档直径 最小(mm)", "轴肩直径(mm)")),
        ("項目", "上", "下", ("軸はめあい径 最大(mm)", "軸はめあい径 最小(mm)", "軸肩径(mm)")),
        ("Параметр", "Верх.", "Низ.", ("Вал наибольший, мм", "Вал наименьший, мм", "Диаметр заплечика вала, мм")),
        ("Item", "up", "lo", ("Shaft seat max [mm]", "Shaft seat min [mm]", "Shaft shoulder diameter [mm]")),
    ],
)
def test_upper_and_lower_over_columns_of_values_are_positions(tmp_path, item, above, below, names):
    rows = [f"{names[0]}|15.009|12.009", f"{names[1]}|15.001|12.001", f"{names[2]}|19|16"]
    stations = read(tmp_path, [f"{item}|{above}|{below}", *rows]).stations
    assert len(stations.text("station")) == 2
    assert sorted(stations.size("shaft_shoulder_diameter").nominal) == [16, 19]
