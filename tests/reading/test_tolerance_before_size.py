"""Rows of seats whose tolerance stands before its size, and an arrangement that says how bearings are located."""

import pytest

from linter.reading import read_table


def read(tmp_path, text):
    path = tmp_path / "sheet.csv"
    path.write_text(text, "utf-8")
    return read_table(path).stations


SEATS = {
    "en": ("Bearing type;Axial function;Location;Seat;Tolerance;Seat diameter [mm];Roughness Ra [µm]", "Journal",
           "Housing bore"),
    "de": ("Lagertyp;Axiale Funktion;Lagerstelle;Sitz;Tol.;Durchmesser [mm];Rauheit Ra [µm]", "Welle",
           "Gehäuse"),
    "fr": ("Type de roulement;Fonction axiale;Palier;Portée;Tolérance;Diamètre de portée [mm];Rugosité Ra [µm]",
           "Arbre",
           "Logement"),
    "ja": ("軸受形式;軸方向の機能;軸受位置;はめあい部;公差;直径 [mm];粗さ Ra [µm]", "軸", "ハウジング"),
}  # fmt: skip


@pytest.mark.parametrize("language", [*SEATS])
@pytest.mark.parametrize("named_again", [False, True])
def test_a_tolerance_before_its_size_is_of_that_size(tmp_path, language, named_again):
    head, shaft, housing = SEATS[language]
    before = ["6205/C3;locating;A;", "6204/C3;floating;B;"]
    below = before if named_again else [";;A;", ";;B;"]
    rows = (
        f"{before[0]}{shaft};j5;25;0.4", f"{below[0]}{housing};H7;52;1.6",
        f"{before[1]}{shaft};k5;20;0.8", f"{below[1]}{housing};H6;47;0.8",
    )  # fmt: skip
    stations = read(tmp_path, "\n".join([head, *rows]) + "\n")
    size = stations.size("shaft_seat_diameter")
    assert (size.nominal.tolist(), size.tolerance_class.tolist()) == ([25, 20], ["j5", "k5"])
    size = stations.size("housing_seat_diameter")
    assert (size.nominal.tolist(), size.tolerance_class.tolist()) == ([52, 47], ["H7", "H6"])


@pytest.mark.parametrize("kind", ["parts", "columns", "rows"])
def test_an_arrangement_that_says_how_bearings_are_located_names_no_machine(tmp_path, kind):
    tables = {
        "parts": "Line;Qty;Feature;Bearing type;Position;Seat size [mm];Roughness Ra [µm];Arrangement\n"
        "1;1;Ball bearing;6205/C3;front;;;locating\n2;1;Journal;;front;25 k5;0.8;\n3;1;Housing seat;;front;52 H6;1.6;\n"
        "4;1;Ball bearing;6204-2Z;rear;;;floating\n5;1;Journal;;rear;20 k5;0.8;\n6;1;Housing seat;;rear;47 H6;0.8;\n",
        "columns": "Position;Bearing type;Arrangement;Shaft seat [mm]\n"
        "front;6205/C3;locating;25 k5\nrear;6204-2Z;floating;20 k5\n",
        "rows": "Parameter;front;rear\nBearing type;6205/C3;6204-2Z\nArrangement;locating;floating\n"
        "Shaft seat diameter [mm];25 k5;20 k5\n",
    }
    stations = read(tmp_path, tables[kind])
    assert [*stations.choice("axial_role").texts()] == ["locating", "floating"]
    assert stations.machines == ("sheet",)
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]


def test_an_arrangement_that_names_machines_still_does(tmp_path):
    stations = read(tmp_path, "Arrangement;Position;Shaft seat [mm]\nBlower SB-4;A;25 k5\nPump CP-7;A;20 k5\n")
    assert sorted(stations.machines) == ["Blower SB-4", "Pump CP-7"]
