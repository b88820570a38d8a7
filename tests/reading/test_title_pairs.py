"""Two names of the machine with their values in one row above lists and blocks of positions, each with its place."""

import pytest

from linter.reading import read_table

#: Machine, drawing, speed, revision and span; bearing, seats; unit of the speed, positions, heads of a list.
LANGUAGES = {
    "en": (("Machine", "Drawing no.", "Max. speed", "Revision", "Bearing span"), ("Bearing", "Shaft seat diameter",
           "Housing bore diameter"), "1/min", ("Bearing A", "Bearing B"), ("Parameter", "Value", "Unit")),
    "de": (("Baugruppe", "Zeichnungs-Nr.", "Drehzahl max.", "Änderungsstand", "Lagerabstand"), ("Lagerbezeichnung",
           "Wellensitz Durchmesser", "Gehäusebohrung Durchmesser"), "1/min", ("Lagerstelle A", "Lagerstelle B"),
           ("Merkmal", "Wert", "Einheit")),
    "fr": (("Machine", "N° de plan", "Vitesse max", "Indice", "Entraxe des paliers"), ("Roulement", "Portée d'arbre",
           "Alésage logement"), "tr/min", ("Palier A", "Palier B"), ("Paramètre", "Valeur", "Unité")),
    "it": (("Macchina", "Disegno", "Velocità massima", "Revisione", "Interasse cuscinetti"), ("Cuscinetto",
           "Sede albero", "Sede alloggiamento"), "giri/min", ("Supporto A", "Supporto B"),
           ("Parametro", "Valore", "Unità")),
    "es": (("Husillo", "Plano", "Velocidad máx.", "Revisión", "Distancia entre apoyos"), ("Rodamiento",
           "Asiento del eje, diámetro", "Asiento del alojamiento, diámetro"), "rpm", ("Apoyo A", "Apoyo B"),
           ("Parámetro", "Valor", "Unidad")),
    "ja": (("機種", "図番", "最高回転数", "改訂", "軸受間距離"), ("軸受", "軸径", "ハウジング内径"), "min-1",
           ("A側", "B側"), ("項目", "値", "単位")),
    "zh": (("设备", "图号", "最高转速", "版本", "轴承跨距"), ("轴承", "轴颈直径", "座孔直径"), "r/min", ("A端", "B端"),
           ("参数", "数值", "单位")),
    "ru": (("Машина", "Чертёж", "Частота вращения макс.", "Ревизия", "Расстояние между опорами"), ("Подшипник",
           "Диаметр шейки вала", "Диаметр отверстия корпуса"), "об/мин", ("Опора A", "Опора B"),
           ("Параметр", "Значение", "Ед.")),
}  # fmt: skip


def blocks(names):
    values = (("7206 AC", "30 k5", "62 H6"), ("7207 AC", "35 k5", "72 H6"))
    return [
        [[name, value, unit] for name, value, unit in zip(names, own, ("", "mm", "mm"), strict=True)] for own in values
    ]


def stacked(language):
    title, names, unit, (one, two), _ = LANGUAGES[language]
    first, second = blocks(names)
    pairs = [[title[0], "SP 40", title[1], "HQ 2897"], [title[2], f"4500 {unit}", title[3], "C"], [title[4], "210 mm"]]
    return [*pairs, [""], [one], *first, [""], [two], *second]


def beside(language):
    title, names, unit, (one, two), _ = LANGUAGES[language]
    both = [[*a, "", *b] for a, b in zip(*blocks(names), strict=True)]
    pairs = [[title[0], "SP 40", "", title[1], "HQ 2897"], [title[2], f"4500 {unit}", "", title[4], "210 mm"]]
    return [*pairs, [title[3], "C"], [""], [one, "", "", "", two], *both]


def listed(language):
    title, names, unit, (one, two), heads = LANGUAGES[language]
    both = [[a[0], a[2], a[1], b[1]] for a, b in zip(*blocks(names), strict=True)]
    pairs = [[title[0], "SP 40", title[1], "HQ 2897"], [title[3], "C", title[2], f"4500 {unit}"], [title[4], "210 mm"]]
    return [*pairs, [""], [heads[0], heads[2], one, two], *both]


def with_a_unit(language):
    title, names, unit, (one, two), _ = LANGUAGES[language]
    first, second = blocks(names)
    pairs = [[title[0], "SP 40", title[1], "HQ 2897"], [title[2], "4500", unit], [title[3], "C", title[4], "210 mm"]]
    return [["X 4711"], *pairs, [one], *first, [two], *second]


@pytest.mark.parametrize("rows", [stacked, beside, listed, with_a_unit])
@pytest.mark.parametrize("language", LANGUAGES)
def test_two_pairs_in_a_row_of_the_machine(tmp_path, language, rows):
    table = rows(language)
    path = tmp_path / "table.csv"
    path.write_text("\n".join(";".join([*row, *[""] * (7 - len(row))]) for row in table), "utf-8")
    reading = read_table(path)
    stations = reading.stations
    assert stations.machines == ("SP 40",)
    assert stations.text("drawing_number").tolist() == ["HQ 2897"] * 2
    assert stations.text("drawing_revision").tolist() == ["C"] * 2
    assert (stations.number("speed_max").tolist(), stations.size("bearing_span").nominal.tolist()) == (
        [4500] * 2,
        [210] * 2,
    )
    assert stations.text("bearing_designation").tolist() == ["7206 AC", "7207 AC"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 35]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 72]
    at = next((r, c) for r, row in enumerate(table) for c, text in enumerate(row) if text == "HQ 2897")
    place = next(u.place for u in reading.understood if u.parameter == "drawing_number")
    assert place.cell == f"{'ABCDEFG'[at[1]]}{at[0] + 1}"


@pytest.mark.parametrize("row", ["Wellensitz Ra;0,8;Zeichnung;X 1", "Bearbeiter;Kuhn;Datum;13.02.2025"])
def test_rows_that_say_more_or_nothing_of_the_machine_stay_as_they_are(tmp_path, row):
    rows = ["Baugruppe;SP 40;;", row, ";;;", "Lagerstelle A;;;", "Lagerbezeichnung;7206 AC;;", "Wellensitz;30 k5;mm;"]
    path = tmp_path / "table.csv"
    path.write_text("\n".join(rows), "utf-8")
    stations = read_table(path).stations
    assert stations.machines == ("SP 40",)
    assert not stations.known("drawing_number").any() or row.startswith("Wellensitz")
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30]


def test_pairs_above_a_broad_list_of_parts_are_read_where_they_stand(tmp_path):
    path = tmp_path / "parts.csv"
    path.write_text(
        "PARTS LIST WITH FITS;;;;Dwg no.;AR3-998.21;;;;;;\nSpindle;Gear spindle AR 280;;;Revision;B;;;;;;\n"
        "max. rpm;8700;;;Preload force [N];180;;;;;;\n;;;;;;;;;;;\n"
        "Item;Qty;Part;Mounted;Designation;Fit dia. [mm];ISO tol.;Max. [mm];Min. [mm];Ra [µm];Shoulder Ø [mm];kg\n"
        "1;1;Spindle shaft;;16MnCr5;;;;;;;6.8\n10;1;Rolling bearing;front;71908C/P5;;;;;;;0.4\n"
        "11;-;Shaft seat;front;;40;k5;40.013;40.002;0.8;42.5;\n12;-;Housing seat;front;;62;H6;62.019;62;1.6;59.5;\n"
        "20;1;Rolling bearing;rear;71908C/P5;;;;;;;0.4\n21;-;Shaft seat;rear;;40;k5;40.013;40.002;0.4;42.5;\n"
        "22;-;Housing seat;rear;;62;JS7;62.015;61.985;1.6;59.5;\n98;2;Shaft seal;;NBR 72;;;;;;;0.02\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["front", "rear"]
    assert stations.size("housing_seat_diameter").lower.tolist() == pytest.approx([0, -0.015])
    assert stations.number("speed_max").tolist() == [8700, 8700]
