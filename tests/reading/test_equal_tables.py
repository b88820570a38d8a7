"""Equal tables of shaft and housing that say their part alone above them, one of them only as a bore."""

import pytest

from linter.reading import read_table

#: Positions, the heading of each table, words for the shaft and words for the bore of the housing.
WORDS = [
    ("Palier 1;Palier 2", "Position;Ø portée (mm);Ajustement;Ra (µm);Cylindricité (µm)",
     "Portée d'arbre;Arbre", "Alésage;Alésages"),
    ("DE;NDE", "Position;Seat Ø (mm);Fit;Ra (µm);Cylindricity (µm)", "Shaft seat;Journal", "Bore;Bores"),
    ("A;B", "Lagerstelle;Sitz-Ø (mm);Passung;Ra (µm);Zylindrizität (µm)", "Wellensitz;Welle", "Bohrung;Bohrungen"),
    ("Lato A;Lato B", "Posizione;Ø sede (mm);Accoppiamento;Ra (µm);Cilindricità (µm)", "Sede albero;Albero", "Foro"),
    ("Lado A;Lado B", "Posición;Ø asiento (mm);Ajuste;Ra (µm);Cilindricidad (µm)", "Asiento del eje;Eje",
     "Agujero;Alojamiento del rodamiento"),
    ("負荷側;反負荷側", "位置;はめあい径 (mm);はめあい;Ra (µm);円筒度 (µm)", "軸;シャフト", "穴;ハウジング穴"),
    ("驱动端;非驱动端", "位置;配合直径 (mm);公差带;Ra (µm);圆柱度 (µm)", "轴;轴颈", "孔;轴承座孔"),
]  # fmt: skip
CASES = [(p, h, s, b) for p, h, shafts, bores in WORDS for s in shafts.split(";") for b in bores.split(";")]
ROWS = {"shaft": (("25", "g6", "0.8", "2"), ("20", "g6", "0.4", "3")),
        "bore": (("47", "H6", "1.6", "5"), ("42", "H6", "1.6", "6"))}  # fmt: skip


def read(path):
    stations = read_table(path).stations
    sizes = [stations.size(name) for name in ("shaft_seat_diameter", "housing_seat_diameter")]
    names = ("shaft_seat_roughness", "housing_seat_roughness", "shaft_seat_cylindricity", "housing_seat_cylindricity")
    numbers = [[round(float(v), 4) for v in stations.number(name).tolist()] for name in names]
    return [size.nominal.tolist() for size in sizes] + numbers


WANTED = [[25, 20], [47, 42], [0.8, 0.4], [1.6, 1.6], [0.002, 0.003], [0.005, 0.006]]


@pytest.mark.parametrize(("positions", "heading", "shaft", "bore"), CASES)
@pytest.mark.parametrize("bore_first", [False, True])
@pytest.mark.parametrize("down", [False, True])
def test_bore_beside_an_equal_table_of_the_shaft(tmp_path, positions, heading, shaft, bore, bore_first, down):
    first, second = positions.split(";")
    place, *names = heading.split(";")
    lines = [f"{place};{first};{second}"] if down else []
    for part, word in sorted((("shaft", shaft), ("bore", bore)), reverse=not bore_first):
        lines.append(word)
        if down:
            lines += map(";".join, zip(names, *ROWS[part], strict=True))
        else:
            lines += [heading, *(";".join((p, *row)) for p, row in zip((first, second), ROWS[part], strict=True)), ""]
    path = tmp_path / "t.csv"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    assert read(path) == WANTED


def test_bore_alone_is_of_no_part(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Bearing;;\nPosition;Bearing;Radial load (kN)\nDE;6005;0.6\nNDE;6004;0.5\n;;\n"
        "Bore;;\nPosition;Seat Ø (mm);Fit;Ra (µm)\nDE;47;H6;1.6\nNDE;42;H6;1.6\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert not any(n == n for n in reading.stations.size("shaft_seat_diameter").nominal.tolist())


def test_positions_beside_the_parts_stay(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Name;Value;Unit\nShaft DE\nDiameter;25;mm\nRa;0.8;µm\nBore DE\nDiameter;47;mm\nRa;1.6;µm\n"
        "Shaft NDE\nDiameter;20;mm\nRa;0.4;µm\nBore NDE\nDiameter;42;mm\nRa;1.6;µm\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]
