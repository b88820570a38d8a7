"""Lists of seats whose part has a word that no list holds: sizes like those of the rings tell which part it is."""

import openpyxl
import pytest

from linter.reading import read_table

SIZES = {"6206": ("30", "62", "36", "56"), "6205": ("25", "52", "31", "46")}


def seats(head, shaft, other, places, bearings, order="by part"):
    """Rows of seats with their bearing: number, part, place, bearing, nominal, class, support, roughness."""
    rows = [
        (part, place, bearing, SIZES[bearing][k], ("k5", "H6")[k], SIZES[bearing][2 + k], "0.8")
        for k, part in enumerate((shaft, other))
        for place, bearing in zip(places, bearings, strict=True)
    ]
    if order == "by place":
        rows.sort(key=lambda row: places.index(row[1]))
    return [head, *((str(n), *row) for n, row in enumerate(rows, 1))]


def write(tmp_path, rows, kind="csv"):
    path = tmp_path / f"seats.{kind}"
    if kind == "csv":
        path.write_text("".join(";".join(row) + "\n" for row in rows), encoding="utf-8")
    else:
        book = openpyxl.Workbook()
        for row in rows:
            book.active.append([float(c) if c.replace(".", "").isdigit() and len(c) < 4 else c or None for c in row])
        book.save(path)
    return read_table(path)


LISTS = [
    ("N.º;Pieza;Asiento;Rodamiento;Diámetro nominal (mm);Clase;Diámetro de apoyo (mm);Ra (µm)",
     "Eje", "Tapa", ("delantero", "trasero")),
    ("序号;零件;轴承位置;配合轴承;基本尺寸(mm);公差带;挡肩直径(mm);Ra(μm)", "轴", "墙板", ("前端", "后端")),
    ("Nr.;Teil;Lagerstelle;Lager;Nennmaß [mm];Klasse;Schulterdurchmesser [mm];Ra [µm]",
     "Welle", "Deckel", ("links", "rechts")),
    ("No.;Part;Position;Bearing;Nominal diameter [mm];Class;Shoulder diameter [mm];Ra [µm]",
     "Shaft", "End plate", ("front", "rear")),
    ("N°;Pièce;Position;Roulement;Diamètre nominal (mm);Classe;Diamètre d'épaulement (mm);Ra (µm)",
     "Arbre", "Flasque", ("avant", "arrière")),
]  # fmt: skip


@pytest.mark.parametrize(("head", "shaft", "other", "places"), LISTS)
@pytest.mark.parametrize(("order", "kind"), [("by part", "csv"), ("by place", "xlsx")])
def test_what_is_as_large_as_the_outside_diameters_is_the_housing(tmp_path, head, shaft, other, places, order, kind):
    reading = write(tmp_path, seats(head.split(";"), shaft, other, places, ("6206", "6205"), order), kind)
    stations = reading.stations
    assert stations.text("station").tolist() == list(places)
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [56, 46]
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]
    assert [p.read for p in stations.problems if p.code == "part-told"] == [other]


def test_what_turns_is_the_shaft_where_its_sizes_are_the_bores(tmp_path):
    head, _, _, places = LISTS[3]
    rows = seats(head.split(";"), "Rotor", "Housing", places, ("6206", "6205"))
    assert write(tmp_path, rows).stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]


def test_sizes_of_another_thing_tell_no_part(tmp_path):
    head, shaft, other, places = LISTS[3]
    rows = [[cell.replace("62", "63").replace("52", "53") if k == 4 else cell for k, cell in enumerate(row)]
            for row in seats(head.split(";"), shaft, other, places, ("6206", "6205"))]  # fmt: skip
    stations = write(tmp_path, rows).stations
    assert not stations.known("housing_seat_diameter").any()


def test_a_support_that_is_no_larger_than_its_seat_is_no_shoulder(tmp_path):
    head, shaft, _, places = LISTS[0]
    rows = seats(head.split(";"), shaft, "Alojamiento", places, ("6206", "6205"))
    rows = [[row[4] if k == 6 and row[1] == shaft else cell for k, cell in enumerate(row)] for row in rows]
    assert not write(tmp_path, rows).stations.known("shaft_shoulder_diameter").any()


@pytest.mark.parametrize("gap", [("", ""), ("",), ()])
def test_labels_and_values_side_by_side_below_a_list_of_seats_are_all_read(tmp_path, gap):
    head, shaft, _, places = LISTS[0]
    rows = seats(head.split(";"), shaft, "Alojamiento", places, ("6206", "6205"))
    for name, values in (("radial", ("900", "700")), ("axial", ("90", "70"))):
        pairs = [(f"Carga {name} {place} (N)", value) for place, value in zip(places, values, strict=True)]
        rows += [[""] * 8] if name == "radial" else []
        rows.append([*pairs[0], *gap, *pairs[1], *[""] * (4 - len(gap))])
    stations = write(tmp_path, rows).stations
    assert stations.number("radial_load").tolist() == [900, 700]
    assert stations.number("axial_load").tolist() == [90, 70]


@pytest.mark.parametrize(
    ("head", "bearing", "shaft", "other", "names", "places"),
    [
        ("Posición;Pieza;Característica;Valor;Unidad;Tolerancia", "Rodamiento;Designación", "Eje", "Tapa",
         ("Diámetro", "Rugosidad Ra"), ("delantero", "trasero")),
        ("Lagerstelle;Teil;Merkmal;Wert;Einheit;Toleranz", "Lager;Bezeichnung", "Welle", "Deckel",
         ("Durchmesser", "Rauheit Ra"), ("links", "rechts")),
        ("位置;零件;参数;数值;单位;公差", "轴承;型号", "轴", "墙板", ("直径", "粗糙度Ra"), ("前端", "后端")),
    ],
)  # fmt: skip
def test_sizes_of_one_name_in_a_list_tell_the_part_too(tmp_path, head, bearing, shaft, other, names, places):
    rows = [head]
    for place, number in zip(places, ("6206", "6205"), strict=True):
        rows.append(f"{place};{bearing};{number};;")
        for part, size, of_fit in zip((shaft, other), SIZES[number][:2], ("k5", "H6"), strict=True):
            rows += [f"{place};{part};{names[0]};{size};mm;{of_fit}", f"{place};{part};{names[1]};0.8;µm;"]
    stations = write(tmp_path, [row.split(";") for row in rows]).stations
    assert stations.text("station").tolist() == list(places)
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]
