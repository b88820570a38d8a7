"""Blocks of parts side by side, each with the same positions above its own columns."""

import pytest

from linter.reading import read_table

#: Positions, words for shaft, housing and bearing, names of their values.
WORDS = [
    ("vorn;hinten", "Läuferwelle", "Lagerschild", "Lagerdaten", "Lagersitz Ø in mm;Oberfläche Ra in µm;Lager"),
    ("DE;NDE", "Shaft", "Housing", "Bearing", "Seat Ø mm;Ra µm;Designation"),
    ("A;B", "Welle", "Gehäuse", "Wälzlager", "Sitz-Ø mm;Ra µm;Bezeichnung"),
    ("avant;arrière", "Arbre", "Logement", "Roulement", "Ø portée mm;Ra µm;Désignation"),
    ("lato A;lato B", "Albero", "Alloggiamento", "Cuscinetto", "Ø sede mm;Ra µm;Sigla"),
    ("Apoyo 1;Apoyo 2", "Eje", "Alojamiento", "Rodamiento", "Ø asiento mm;Ra µm;Designación"),
    ("負荷側;反負荷側", "軸", "ハウジング", "軸受", "はめあい径 mm;Ra µm;型番"),
    ("驱动端;非驱动端", "轴", "轴承座", "轴承", "配合直径 mm;Ra µm;型号"),
]
VALUES = {"shaft": [("20 k6", "10 k5"), ("0.8", "0.4")], "housing": [("42 H7", "26 H6"), ("1.6", "1.2")],
          "bearing": [("6004", "6000"), ("", "")]}  # fmt: skip


@pytest.mark.parametrize("words", WORDS)
@pytest.mark.parametrize("order", ["shaft housing bearing", "bearing housing shaft", "housing shaft"])
@pytest.mark.parametrize("apart", ["", ";"])
def test_each_part_states_its_own_positions(tmp_path, words, order, apart):
    places, shaft, housing, bearing, names = words
    size, roughness, kind = names.split(";")
    part_words = {"shaft": shaft, "housing": housing, "bearing": bearing}
    parts = order.split()
    lines = [f";{apart}".join(f"{part_words[part]};{places}" for part in parts)]
    for k in (0, 1):
        named = {"bearing": kind if k == 0 else "", "shaft": (size, roughness)[k], "housing": (size, roughness)[k]}
        lines.append(f";{apart}".join(";".join((named[part], *VALUES[part][k])) for part in parts))
    path = tmp_path / "t.csv"
    path.write_text("Machine;M 1\n;\n" + "\n".join(lines) + "\n", encoding="utf-8")
    stations = read_table(path).stations
    rows = sorted(
        zip(
            stations.size("shaft_seat_diameter").nominal.tolist(),
            stations.size("housing_seat_diameter").nominal.tolist(),
            stations.number("shaft_seat_roughness").tolist(),
            stations.number("housing_seat_roughness").tolist(),
            stations.text("bearing_designation").tolist(),
            strict=True,
        ),
        reverse=True,
    )
    own = ["6004", "6000"] if "bearing" in parts else ["", ""]
    assert rows == [(20, 42, 0.8, 1.6, own[0]), (10, 26, 0.4, 1.2, own[1])]
