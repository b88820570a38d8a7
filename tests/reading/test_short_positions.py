"""Lists of parts and positions: words for positions that no list holds, numbers of items, values or tolerances."""

import pytest

from linter.reading import read_table

MACHINE = "{0};Model;;Motor IM 180L-4\n{0};Drawing number;;A494452\n{0};Maximum speed;r/min;1450\n"
SEATS = (
    "{bearing};Designation;;6207\n{bearing};Radial load;N;{load}\n{shaft};Nominal diameter;mm;35\n"
    "{shaft};Upper deviation;µm;{upper}\n{shaft};Lower deviation;µm;+2\n{shaft};Roughness Ra;µm;0.4\n"
    "{housing};Nominal diameter;mm;72\n{housing};Upper deviation;µm;+15\n{housing};Lower deviation;µm;-15\n"
)


@pytest.mark.parametrize(
    ("machine", "bearing", "shaft", "housing", "positions"),
    [
        ("Motor", "Bearing {}", "Shaft seat {}", "Housing seat {}", ("D-end", "N-end")),
        ("Gearbox", "Bearing {}", "Shaft seat {}", "Housing seat {}", ("P1", "P2")),
        ("Pump", "{} bearing", "{} shaft seat", "{} housing seat", ("D-end", "N-end")),
        ("Ventilator", "Lager {}", "Wellensitz {}", "Gehäusesitz {}", ("Nord", "Süd")),
        ("Pompe", "Roulement {}", "Portée d'arbre {}", "Portée de carter {}", ("P1", "P2")),
        ("Bomba", "Rodamiento {}", "Asiento eje {}", "Asiento alojamiento {}", ("X1", "X2")),
        ("电机", "轴承{}", "轴颈{}", "轴承座孔{}", ("D端", "N端")),
        ("电机", "{}轴承", "{}轴颈", "{}轴承座孔", ("D端", "N端")),
    ],
)
def test_what_stands_behind_the_words_for_seats_is_the_position(tmp_path, machine, bearing, shaft, housing, positions):
    text = "Object;Attribute;Unit;Value\n" + MACHINE.format(machine)
    for position, load, upper in zip(positions, (730, 485), (33, 25), strict=True):
        names = {"bearing": bearing, "shaft": shaft, "housing": housing}
        named = {part: name.format(position) for part, name in names.items()}
        text += SEATS.format(**named, load=load, upper=f"+{upper}")
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == list(positions)
    assert set(stations.machines) == {"Motor IM 180L-4"}
    assert stations.number("radial_load").tolist() == [730, 485]
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.033, 0.025])
    assert stations.size("housing_seat_diameter").nominal.tolist() == [72, 72]
    assert stations.number("speed_max").tolist() == [1450, 1450]


def test_a_thing_of_the_machine_without_values_of_one_names_none(tmp_path):
    text = "Object;Attribute;Unit;Value\nFan;Model;;F-7\nFan;Mass;kg;3\n"
    for position in ("P1", "P2"):
        named = {"bearing": f"Bearing {position}", "shaft": f"Shaft seat {position}"}
        text += SEATS.format(**named, housing=f"Housing seat {position}", load=5, upper="+9")
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    assert set(stations.machines) == {"list"}
    assert not stations.known("rotor_mass").any()


ITEMS = {
    "de": ("Maschine Lager Welle Gehäuse", "Bezeichnung Höchstdrehzahl Kurzzeichen Radiallast Sitzdurchmesser Rauheit"),
    "en": ("Machine Bearing Shaft Housing", "Name Speed Designation Load Diameter Roughness"),
    "fr": ("Machine Roulement Arbre Carter", "Désignation Vitesse_maximale Référence Effort_radial Diamètre Rugosité"),
    "zh": ("整机 轴承 轴 轴承座", "名称 最高转速 型号 径向载荷 直径 粗糙度"),
}


@pytest.mark.parametrize(
    ("head", "language", "codes", "order"),
    [
        ("Repère;Ensemble;Caractéristique;Valeur;Unité;Tolérance", "fr", ("P1", "P2"), (0, 1, 2, 3, 4, 5)),
        ("Pos.;Baugruppe;Merkmal;Wert;Einheit;Toleranz", "de", ("1", "2"), (0, 1, 2, 3, 4, 5)),
        ("Item;Component;Characteristic;Value;Unit;Tolerance", "en", ("B1", "B2"), (1, 0, 2, 3, 5, 4)),
        ("序号;部件;参数;数值;单位;公差", "zh", ("B1", "B2"), (0, 1, 2, 3, 4, 5)),
    ],
)
@pytest.mark.parametrize("machine_first", [True, False])
def test_numbers_of_items_are_the_positions_where_those_of_the_machine_have_none(
    tmp_path, head, language, codes, order, machine_first
):
    whole, bearing, shaft, housing = ITEMS[language][0].split()
    words = [word.replace("_", " ") for word in ITEMS[language][1].split()]
    name, speed, designation, load, diameter, roughness = words
    own = [("", whole, name, "SR 15", "", ""), ("", whole, speed, "2900", "1/min", "")]
    rows = []
    for code, force, classes in zip(codes, ("1780", "1185"), (("h6", "G7"), ("j5", "H7")), strict=True):
        rows += [(code, bearing, designation, "6311", "", ""), (code, bearing, load, force, "N", "")]
        for part, size, of_fit in zip((shaft, housing), ("55", "120"), classes, strict=True):
            rows += [(code, part, diameter, size, "mm", of_fit), (code, part, roughness, "0.8", "µm", "")]
    table = [tuple(head.split(";")), *(own + rows if machine_first else rows + own)]
    path = tmp_path / "list.csv"
    path.write_text("".join(";".join(row[k] for k in order) + "\n" for row in table), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == list(codes)
    assert set(stations.machines) == {"SR 15"}
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [55, 55]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [120, 120]


@pytest.mark.parametrize(
    ("head", "language"),
    [
        ("Lagerstelle;Element;Merkmal;Nennmaß / Toleranz;oberes Abmaß;unteres Abmaß;Einheit;Prüfmittel", "de"),
        ("Lagerstelle;Bauteil;Merkmal;Maß / Grenzwert;oberes Abmaß;unteres Abmaß;Einheit;Prüfmittel", "de"),
        ("Position;Part;Characteristic;Nominal / limit;Upper deviation;Lower deviation;Unit;Gauge", "en"),
        ("位置;部件;特性;公称值/公差;上偏差;下偏差;单位;检具", "zh"),
    ],
)
def test_a_column_of_values_or_their_tolerances_is_one_of_values(tmp_path, head, language):
    words = {
        "de": ("Wälzlager Welle Gehäuse", "Kurzbezeichnung Durchmesser Zylindrizität Ra"),
        "en": ("Bearing Shaft Housing", "Designation Diameter Cylindricity Ra"),
        "zh": ("轴承 轴 轴承座", "型号 直径 圆柱度 Ra"),
    }[language]
    (bearing, *parts), (designation, diameter, form, ra) = words[0].split(), words[1].split()
    rows = [head]
    for place in ("A", "B"):
        rows.append(f"{place};{bearing};{designation};6014;;;;x")
        for part, size in zip(parts, ("70;+0,021;+0,002", "110;+0,035;0"), strict=True):
            rows += [f"{place};{part};{diameter};{size};mm;x", f"{place};{part};{form};0,006;;;mm;x"]
            rows.append(f"{place};{part};{ra};0,8;;;µm;x")
    path = tmp_path / "list.csv"
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("bearing_designation").tolist() == ["6014", "6014"]
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.021, 0.021])
    assert stations.size("housing_seat_diameter").nominal.tolist() == [110, 110]
    assert stations.number("shaft_seat_cylindricity").tolist() == pytest.approx([0.006, 0.006])
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]
