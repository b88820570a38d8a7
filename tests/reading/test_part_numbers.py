"""Numbers that differ from position to position are of the parts there, and no drawing of the machine."""

import pytest

from linter.reading import read_table

WORDS = [
    ("Drawing no.", "Part number", "Position;Bearing;Shaft seat mm;Housing bore mm"),
    ("Drawing no.", "Drawing number", "Position;Bearing;Shaft seat mm;Housing bore mm"),
    ("Zeichnungsnummer", "Sachnummer", "Lagerstelle;Lager;Wellensitz mm;Gehäusebohrung mm"),
    ("N° de plan", "Réf. plan", "Position;Roulement;Portée d'arbre mm;Alésage logement mm"),
    ("Número de plano", "Plano n.º", "Posición;Rodamiento;Asiento del eje mm;Alojamiento mm"),
    ("Numero di disegno", "Codice disegno", "Posizione;Cuscinetto;Sede albero mm;Sede alloggiamento mm"),
    ("図番", "部品図番", "位置;軸受;軸はめあい径 mm;ハウジング穴径 mm"),
    ("图号", "零件图号", "位置;轴承;轴颈直径 mm;轴承座孔直径 mm"),
]


@pytest.mark.parametrize(("drawing", "part", "heads"), WORDS)
@pytest.mark.parametrize("across", [False, True])
@pytest.mark.parametrize("stated", [False, True])
def test_numbers_of_parts(tmp_path, drawing, part, heads, across, stated):
    place, *others = heads.split(";")
    rows = [[place, *others[:1], part, *others[1:]], ["DE", "6207-2Z", "900-1143", "35 k6", "72 H7"],
            ["NDE", "6206-2Z", "900-1139", "30 k6", "62 J7"]]  # fmt: skip
    rows = [list(row) for row in zip(*rows, strict=True)] if across else rows
    path = tmp_path / "t.csv"
    title = f"{drawing};B-40771\n;;\n" if stated else ""
    path.write_text(title + "\n".join(map(";".join, rows)) + "\n", encoding="utf-8")
    reading = read_table(path)
    assert reading.stations.text("drawing_number").tolist() == ["B-40771" if stated else ""] * 2
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [35, 30]
    assert [u.value for u in reading.unused if u.name == part] == ["900-1143", "900-1139"]
    assert not any("stated twice" in p.message.lower() for p in reading.stations.problems)


def test_a_drawing_that_all_positions_state_is_that_of_the_machine(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Machine;Position;Drawing;Shaft seat mm;Housing bore mm\nM1;DE;B-1;35 k6;72 H7\nM1;NDE;B-1;30 k6;62 J7\n"
        "M2;DE;B-2;35 k6;72 H7\nM2;NDE;B-2;30 k6;62 J7\n",
        encoding="utf-8",
    )
    assert read_table(path).stations.text("drawing_number").tolist() == ["B-1", "B-1", "B-2", "B-2"]
