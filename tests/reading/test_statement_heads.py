"""Headings of two rows: sizes or positions above, what is required and what was measured below them."""

import openpyxl
import pytest

from linter.reading import read_table

#: The upper row of a table of positions, the words of the lower row, and the names of a list.
WORDS = [
    ("Position;Bearing;Shaft seat;;Housing bore;", "required;actual", "Bearing;Shaft seat mm;Housing bore mm"),
    ("Position;Bearing;Shaft seat;;Housing bore;", "drawing;measured", "Bearing;Shaft seat mm;Housing bore mm"),
    ("Position;Bearing;Shaft;;Housing;", "nominal mm;measured mm", "Bearing;Shaft seat mm;Housing bore mm"),
    ("Lagerstelle;Lager;Wellensitz;;Gehäusebohrung;", "Soll;Ist", "Lager;Wellensitz mm;Gehäusebohrung mm"),
    ("Position;Roulement;Portée d'arbre;;Alésage logement;", "requis;mesuré",
     "Roulement;Portée d'arbre mm;Alésage logement mm"),
    ("Posición;Rodamiento;Asiento del eje;;Alojamiento;", "requerido;medido",
     "Rodamiento;Asiento del eje mm;Alojamiento mm"),
    ("Posizione;Cuscinetto;Sede albero;;Sede alloggiamento;", "richiesto;misurato",
     "Cuscinetto;Sede albero mm;Sede alloggiamento mm"),
    ("Опора;Подшипник;Шейка вала;;Отверстие корпуса;", "задано;факт",
     "Подшипник;Шейка вала мм;Отверстие корпуса мм"),
    ("位置;軸受;軸;;ハウジング;", "図面;実測", "軸受;軸はめあい径 mm;ハウジング穴径 mm"),
    ("位置;轴承;轴颈;;轴承座孔;", "要求;实测", "轴承;轴颈直径 mm;轴承座孔直径 mm"),
]  # fmt: skip
SEATS = [("35 k6", "35.009", "72 H7", "72.018"), ("30 k6", "30.011", "62 J7", "62.004")]


def are_right(path):
    reading = read_table(path)
    stations = reading.stations
    assert stations.text("station").tolist() == ["DE", "NDE"]
    for name, sizes, classes in (
        ("shaft_seat_diameter", [35, 30], ["k6", "k6"]), ("housing_seat_diameter", [72, 62], ["H7", "J7"])
    ):  # fmt: skip
        size = stations.size(name)
        assert (size.nominal.tolist(), size.tolerance_class.tolist()) == (sizes, classes)
    return reading


def rows_of(upper, lower, turned):
    words, seats = lower.split(";"), SEATS
    if turned:
        words, seats = words[::-1], [(b, a, d, c) for a, b, c, d in SEATS]
    rows = [upper.split(";"), ["", "", *words, *words]]
    return rows + [[place, kind, *own] for place, kind, own in zip(("DE", "NDE"), ("6207", "6206"), seats, strict=True)]


@pytest.mark.parametrize(("upper", "lower", "names"), WORDS)
@pytest.mark.parametrize("turned", [False, True])
def test_the_required_size_counts(tmp_path, upper, lower, names, turned):
    path = tmp_path / "t.csv"
    path.write_text("\n".join(map(";".join, rows_of(upper, lower, turned))) + "\n", encoding="utf-8")
    reading = are_right(path)
    measured = lower.split(";")[1].removesuffix(" mm")
    assert sum(measured in unused.name for unused in reading.unused) == 2


@pytest.mark.parametrize(("upper", "lower", "names"), WORDS)
@pytest.mark.parametrize("turned", [False, True])
def test_merged_headings_of_a_workbook(tmp_path, upper, lower, names, turned):
    book = openpyxl.Workbook()
    sheet = book.active
    for row in rows_of(upper, lower, turned):
        sheet.append([cell or None for cell in row])
    for span in ("A1:A2", "B1:B2", "C1:D1", "E1:F1"):
        sheet.merge_cells(span)
    path = tmp_path / "t.xlsx"
    book.save(path)
    are_right(path)


@pytest.mark.parametrize(("upper", "lower", "names"), WORDS)
@pytest.mark.parametrize("turned", [False, True])
def test_positions_above(tmp_path, upper, lower, names, turned):
    words = lower.split(";")[:: -1 if turned else 1]
    (a, b, c, d), (e, f, g, h) = SEATS
    rows = [("", "DE", "", "NDE", ""), ("", *words, *words)]
    for name, own in zip(names.split(";"), (("6207", "", "6206", ""), (a, b, e, f), (c, d, g, h)), strict=True):
        rows.append((name, *((own[1], own[0], own[3], own[2]) if turned else own)))
    path = tmp_path / "t.csv"
    path.write_text("\n".join(map(";".join, rows)) + "\n", encoding="utf-8")
    are_right(path)


def test_measured_sizes_behind_a_stroke_are_no_fault(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Posición;Rodamiento;Asiento del eje / requerido;Asiento del eje / medido;Alojamiento / requerido\n"
        "DE;6207;35 k6;35.009;72 H7\nNDE;6206;30 k6;30.011;62 J7\n",
        encoding="utf-8",
    )
    nominal = read_table(path).stations.size("shaft_seat_diameter").nominal.tolist()
    assert not {35.009, 30.011} & {*nominal}
