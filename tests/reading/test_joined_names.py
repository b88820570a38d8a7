"""Columns of two things, and names that are paths from the machine down."""

import json

import pytest

from linter.reading import read_table

#: Head of the table, the words of its rows, and the sign between decimals.
HEADS = {
    "en": ("Position;Item;Designation / nominal size;Tolerance;Ra", "Bearing", "Shaft seat", "Housing seat"),
    "en or": ("Position;Item;Size or designation;Tolerance;Ra", "Bearing", "Shaft seat", "Housing seat"),
    "de": ("Position;Teil;Kurzzeichen / Nennmaß;Toleranz;Ra", "Lager", "Wellensitz", "Gehäusesitz"),
    "de bzw": ("Position;Teil;Typ bzw. Nennmaß;Toleranz;Ra", "Lager", "Welle", "Gehäuse"),
    "fr": ("Palier;Élément;Désignation ou cote;Tolérance;Ra", "Roulement", "Portée arbre", "Alésage logement"),
    "it": ("Lato;Elemento;Sigla / Ø nominale;Tolleranza;Ra", "Cuscinetto", "Sede albero", "Sede alloggiamento"),
    "es": ("Apoyo;Pieza;Designación / cota;Tolerancia;Ra", "Rodamiento", "Asiento eje", "Asiento alojamiento"),
    "ru": ("Опора;Деталь;Обозначение / номинал;Поле допуска;Ra", "Подшипник", "Вал", "Корпус"),
    "zh": ("位置;零件;型号/公称尺寸;公差带;粗糙度Ra", "轴承", "轴颈", "座孔"),
    "ja": ("位置;部品;型番・寸法;公差;粗さRa", "軸受", "軸", "ハウジング"),
}  # fmt: skip


@pytest.fixture
def read(tmp_path):
    def reader(text: str, suffix: str = "csv"):
        path = tmp_path / f"table.{suffix}"
        path.write_text(text, encoding="utf-8")
        return read_table(path).stations

    return reader


def _seats(stations):
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5", "k5"]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.8]


@pytest.mark.parametrize("language", HEADS)
@pytest.mark.parametrize("by_part", [True, False])
def test_a_column_of_designations_and_sizes(read, language, by_part):
    head, bearing, shaft, housing = HEADS[language]
    rows = [
        f"{position};{item};{value};{tolerance};{roughness}"
        for position, number, inner, outer in (("A", 6206, 30, 62), ("B", 6205, 25, 52))
        for item, value, tolerance, roughness in (
            (bearing, number, "", ""), (shaft, inner, "k5", "0.8"), (housing, outer, "H7", "1.6")
        )
    ]  # fmt: skip
    rows = sorted(rows, key=lambda row: [bearing, shaft, housing].index(row.split(";")[1])) if by_part else rows
    stations = read("\n".join([head, *rows]) + "\n")
    assert stations.text("station").tolist() == ["A", "B"]
    _seats(stations)


def test_a_shoulder_of_the_column_has_its_unit(read):
    stations = read(
        "Position;Item;Size / designation;Upper dev. µm;Lower dev. µm\nA;Bearing;6206;;\nA;Shaft shoulder;36;;\n"
        "A;Shaft seat;30;11;2\nA;Housing seat;62;30;0\nB;Bearing;6205;;\nB;Shaft shoulder;31;;\nB;Shaft seat;25;11;2\n"
        "B;Housing seat;52;30;0\n"
    )
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.011, 0.011])
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]


NAMES = (("bearing", "designation"), ("shaft", "seat diameter"), ("shaft", "seat roughness Ra"), ("housing", "bore"))
VALUES = (("6206", "6205", ""), ("30 k5", "25 k5", "mm"), ("0.8", "0.8", "µm"), ("62 H7", "52 H7", "mm"))


def _paths(sign: str, *, machine: str, part_first: bool = False):
    for k, position in enumerate(("DE", "NDE")):
        for (part, name), values in zip(NAMES, VALUES, strict=True):
            pieces = (part, position, name) if part_first else (position, part, name)
            yield sign.join((machine, *pieces)), values[k], values[2]


@pytest.mark.parametrize("sign", [" / ", "/", " > ", ".", "_", " | ", " - ", "::", "→"])
@pytest.mark.parametrize("machine", ["Pump P-12", "P12", "Wirbelgebläse WG8"])
def test_the_machine_before_the_names(read, sign, machine):
    table = [";".join(row) for row in _paths(sign, machine=machine)]
    stations = read("\n".join(["Parameter;Value;Unit", *table, f"{machine}{sign}max speed;8400;rpm"]) + "\n")
    assert stations.machines == (machine,)
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.number("speed_max").tolist() == [8400, 8400]
    _seats(stations)
    part_first = [";".join(row) for row in _paths(sign, machine=machine, part_first=True)]
    _seats(read("\n".join(["Parameter;Value;Unit", *part_first]) + "\n"))


@pytest.mark.parametrize("sign", [" / ", ".", "_", " | ", " - "])
def test_the_machine_before_the_keys(read, sign):
    document = {name: f"{value} {unit}".strip() for name, value, unit in _paths(sign, machine="P12")}
    stations = read(json.dumps(document), "json")
    assert stations.text("station").tolist() == ["DE", "NDE"]
    _seats(stations)


def test_two_machines_before_the_names(read):
    rows = [";".join(row) for machine in ("P-12", "P-13") for row in _paths(" / ", machine=machine)]
    stations = read("\n".join(["Parameter;Value;Unit", *rows]) + "\n")
    assert stations.machines == ("P-12", "P-13")
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"] * 2


def test_positions_before_the_names_are_no_machines(read):
    rows = [";".join(row).replace("M / DE", "LS1").replace("M / NDE", "LS2") for row in _paths(" / ", machine="M")]
    stations = read("\n".join(["Parameter;Value;Unit", *rows]) + "\n")
    assert stations.text("station").tolist() == ["LS1", "LS2"]
    _seats(stations)


def test_a_column_of_names_beside_values_is_none(read):
    stations = read(
        "Rep.;Pièce;Cote / désignation;Valeur;Tolérance\n;;PALIER CÔTÉ A;;\n1;Roulement;Référence;6308-2Z;\n"
        "2;Arbre;Ø portée de roulement;40;k6\n3;Corps de palier;Ø alésage;90;H7\n;;PALIER CÔTÉ B;;\n"
        "4;Roulement;Référence;6307-2Z;\n5;Arbre;Ø portée de roulement;35;k6\n6;Corps de palier;Ø alésage;80;H7\n"
    )
    assert stations.text("bearing_designation").tolist() == ["6308-2Z", "6307-2Z"]
    assert stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k6", "k6"]
