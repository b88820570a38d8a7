"""What title blocks and lists state of a machine: labels over their values, label and value in one cell."""

import pytest

from linter.reading import read_table

_SEATS = "Line;Description;Unit;Inboard bearing;Outboard bearing\n"
_SEATS += "1;Bearing size;;6210-2Z;6209-2Z\n2;Bearing bore d;mm;50;45\n"
_SEATS += "3;Shaft fit;;k5;k5\n4;Shaft seat finish Ra;µm;0.8;0.4\n5;Housing fit;;H6;H6\n"
OVER = {
    "machine first": "Machine;GA drawing;GA rev.;Speed limit (max.) - rpm;Required L10h - h\n"
    "Ozone fan OF-31;RL-25;D;5 200;20 000\nAmbient temp. - °C;Rotating ring;;;\n40;Inner ring;;;\n;;;;\n" + _SEATS,
    "in one row after a title": "Fits of bearings;;;;\nMaschine;Zeichnung;"
    "Index;max. Drehzahl [U/min];Lebensdauer L10h gefordert [h]\n"
    "Ozone fan OF-31;RL-25;D;5200;20000\n;;;;\n"
    "Umgebungstemperatur [°C];Umlaufender Ring;;;\n40;Innenring;;;\n;;;;\n" + _SEATS,
}  # fmt: skip


@pytest.mark.parametrize("kind", OVER)
def test_labels_stand_over_their_values(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(OVER[kind], "utf-8")
    stations = read_table(path).stations
    assert stations.machines == ("Ozone fan OF-31",)
    assert stations.text("drawing_revision").tolist() == ["D", "D"]
    assert stations.number("speed_max").tolist() == [5200.0, 5200.0]
    assert stations.number("required_life").tolist() == [20000.0, 20000.0]
    assert stations.number("ambient_temperature").tolist() == [40.0, 40.0]
    assert stations.text("bearing_designation").tolist() == ["6210-2Z", "6209-2Z"]


def test_pairs_beside_each_other_are_no_labels_over_values(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(f"Machine;Fan F-1;Drawing;RL-25;\nOrder;123;Customer;Works 2;\n;;;;\n{_SEATS}", "utf-8")
    stations = read_table(path).stations
    assert stations.machines == ("Fan F-1",)
    assert stations.text("drawing_number").tolist() == ["RL-25", "RL-25"]


BLOCKS = {
    "en": "Spindle bearing data sheet,\nAuthor: T. Hale,Date: 2025-02-18\nSpindle: Yarn twister YT-60,\nIssue: D,\n"
    "Orientation: Vertical,\nBalance quality: G 1,\n,\nFront support,\nBearing,6210\nSpindle shaft,\n"
    "Seat diameter,50 +0.013 +0.002 mm\nSleeve bore,\nSeat diameter,90 +0.022 0 mm\n,\nRear support,\nBearing,6209\n"
    "Spindle shaft,\nSeat diameter,45 +0.013 +0.002 mm\nSleeve bore,\nSeat diameter,85 +0.022 0 mm\n",
    "de": "Lagerblatt,\nBearbeiter: T. H.,Datum: 18.02.2025\nSpindel: Yarn twister YT-60,\nÄnd.-Stand: D,\n"
    "Einbaulage: vertikal,\nWuchtgüte: G 1,\n,\nVorderes Lager,\nLager,6210\nWelle,\n"
    "Sitzdurchmesser,50 +0.013 +0.002 mm\nGehäuse,\nSitzdurchmesser,90 +0.022 0 mm\n,\nHinteres Lager,\nLager,6209\n"
    "Welle,\nSitzdurchmesser,45 +0.013 +0.002 mm\nGehäuse,\nSitzdurchmesser,85 +0.022 0 mm\n",
}


@pytest.mark.parametrize("language", BLOCKS)
def test_a_label_with_its_value_stands_alone_above_blocks(tmp_path, language):
    path = tmp_path / "table.csv"
    path.write_text(BLOCKS[language], "utf-8")
    stations = read_table(path).stations
    assert stations.machines == ("Yarn twister YT-60",)
    assert stations.text("drawing_revision").tolist() == ["D", "D"]
    assert stations.number("balance_grade").tolist() == [1.0, 1.0]
    assert stations.choice("shaft_orientation").is_in("vertical").all()
    assert stations.size("housing_seat_diameter").nominal.tolist() == [90.0, 85.0]


@pytest.mark.parametrize(
    "title, arbre, cotes, logement",
    [
        ("Paramètre", "Arbre", "Cotes limites du siège", "Logement"),
        ("Merkmal", "Welle", "Grenzmaße des Sitzes", "Gehäuse"),
        ("Property", "Shaft", "Limit dimensions of seat", "Housing"),
        ("Caratteristica", "Albero", "Dimensioni limite della sede", "Alloggiamento"),
        ("Característica", "Eje", "Cotas límite del asiento", "Alojamiento"),
        ("Параметр", "Вал", "Предельные размеры посадочного места", "Корпус"),
        ("项目", "轴", "配合面极限尺寸", "轴承座"),
    ],
)
def test_limits_of_a_seat_stand_in_one_cell_below_a_word_for_them(tmp_path, title, arbre, cotes, logement):
    path = tmp_path / "table.csv"
    rows = f"6006;6006\n{arbre};;\n{cotes};30,0045 / 29,9955;30,015 / 30,002\n{logement};;\n{cotes};55,013 / 54,994;"
    path.write_text(f"{title} [mm];A;B\nBearing designation;{rows}55,013 / 54,994\n", "utf-8")
    stations = read_table(path).stations
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert (shaft.nominal + shaft.lower).round(4).tolist() == [29.9955, 30.002]
    assert (shaft.nominal + shaft.upper).round(4).tolist() == [30.0045, 30.015]
    assert (housing.nominal + housing.upper).round(4).tolist() == [55.013, 55.013]


@pytest.mark.parametrize(
    "least, largest",
    [
        ("Température mini de l'ensemble [°C]", "Température maxi de l'ensemble [°C]"),
        ("Min. temperature of the machine [°C]", "Max. temperature of the machine [°C]"),
        ("Temperatur min. der Baugruppe [°C]", "Temperatur max. der Baugruppe [°C]"),
        ("整机最低温度 [°C]", "整机最高温度 [°C]"),
    ],
)
def test_the_range_of_temperatures_is_of_the_whole_machine(tmp_path, least, largest):
    path = tmp_path / "table.csv"
    rows = "Bearing designation;6210;6209\nShaft seat diameter [mm];50 k5;45 k5\nShaft seat Ra [µm];0,8;0,4\n"
    path.write_text(f"Machine;Fan F-1;\n{least};-10;\n{largest};85;\n;;\nParameter;A;B\n{rows}", "utf-8")
    stations = read_table(path).stations
    assert stations.number("temperature_min").tolist() == [-10.0, -10.0]
    assert stations.number("temperature_max").tolist() == [85.0, 85.0]
