"""Parts lists whose rows are bearings and the seats of the parts, with nominal, class, limits and form beside each."""

import numpy as np
import pytest

from linter.reading import read_table

#: Nominal, class, upper and lower deviation in mm, roughness, cylindricity in µm, shoulder.
SEATS = {
    ("A", "shaft"): (30, "k5", 0.011, 0.002, 0.4, 3, 36),
    ("A", "housing"): (62, "H6", 0.019, 0, 0.8, 4, 56),
    ("B", "shaft"): (25, "k5", 0.011, 0.002, 0.8, 5, 31),
    ("B", "housing"): (52, "JS7", 0.015, -0.015, 1.6, 6, 46),
}
BEARINGS = {"A": "6206-2Z/C3", "B": "6205-2Z/C3"}


def _cells(place: str, part: str, kinds: str) -> list[str]:
    """The cells of a seat: n nominal, c class, x and i limits, u and l deviations in µm, r Ra, y form, s shoulder."""
    nominal, sort, upper, lower, roughness, form, shoulder = SEATS[place, part]
    said = {
        "n": nominal, "c": sort, "x": f"{nominal + upper:.3f}", "i": f"{nominal + lower:.3f}", "r": roughness,
        "u": f"{1000 * upper:+.0f}", "l": f"{1000 * lower:+.0f}", "y": form, "m": f"{form / 1000:g}", "s": shoulder,
        "-": "",
    }  # fmt: skip
    return [str(said[kind]) for kind in kinds]


#: Heading; cells of a seat behind item, part and position (``-`` for what only bearings have); words for shaft, housing
#: and bearing; the two positions; rows of other items before and behind; whether the position stands before the part.
LISTS = {
    "limits beside nominal and class": (
        "Item;Part;Mounted;Designation / material;Fit dia. [mm];ISO tol.;Max. [mm];Min. [mm];Ra [µm];Cylindricity [µm];"
        "Shoulder Ø [mm]", "-ncxirys", ("Shaft seat", "Housing seat", "Rolling bearing"), ("front", "rear"),
        ("1;Spindle shaft;;16MnCr5;;;;;;;",), ("98;Shaft seal;;NBR 72;;;;;;;",), False,
    ),
    "the same in French": (
        "Rep.;Pièce;Montage;Référence / matière;Ø ajustement [mm];Tol. ISO;Max. [mm];Min. [mm];Ra [µm];"
        "Cylindricité [µm];Ø épaulement [mm]", "-ncxirys", ("Portée d'arbre", "Logement", "Roulement"),
        ("avant", "arrière"), ("1;Arbre de broche;;42CrMo4;;;;;;;",), (), False,
    ),
    "the same in Spanish, under a word that is not known": (
        "Pos.;Pieza;Montaje;Designación / material;Ø ajustado [mm];Tol. ISO;Máx. [mm];Mín. [mm];Ra [µm];"
        "Cilindricidad [µm];Ø resalte [mm]", "-ncxirys", ("Asiento de eje", "Asiento de alojamiento", "Rodamiento"),
        ("delantero", "trasero"), ("1;Eje del husillo;;42CrMo4;;;;;;;",), (), False,
    ),
    "Japanese, numbers of items under a word for parts": (
        "品番;名称;取付位置;型番・材質;はめあい寸法 mm;公差記号;上の許容差 µm;下の許容差 µm;Ra µm;円筒度 µm;肩直径 mm",
        "-nculrys", ("軸 (軸受はめあい部)", "軸受ハウジング (軸受はめあい部)", "転がり軸受"), ("駆動側", "ギヤ側"),
        (), ("8;タイミングギヤ;;SCM415;;;;;;;",), False,
    ),
    "Japanese, part and seat joined by a dot": (
        "番号;部品名;取付位置;型番;寸法 mm;公差域;最大寸法 mm;最小寸法 mm;粗さ Ra µm;円筒度 mm;肩径 mm",
        "-ncxirms", ("シャフト・軸受嵌合部", "ハウジング・軸受嵌合部", "軸受"), ("モータ側", "ポンプ側"), (), (), False,
    ),
    "Chinese": (
        "序号;零件;安装位置;型号/材料;配合直径 mm;公差带;最大尺寸 mm;最小尺寸 mm;Ra μm;圆柱度 μm;挡肩直径 mm",
        "-ncxirys", ("轴（轴承位）", "轴承座（轴承位）", "深沟球轴承"), ("驱动端", "风扇端"), (), (), False,
    ),
    "code or nominal in one column, Italian": (
        "Rif.;Posizione;Descrizione;Codice / Ø nominale (mm);Classe di tolleranza;Scost. sup. (µm);Scost. inf. (µm);"
        "Rugosità Ra (µm);Cilindricità (mm);Ø spallamento (mm)", "nculrms",
        ("Albero - sede cuscinetto", "Supporto - sede cuscinetto", "Cuscinetto a sfere"),
        ("lato girante", "lato comando"), (), ("90;;Tenuta meccanica;Ø 33;;;;;;",), True,
    ),
    "code or nominal in one column, Spanish": (
        "Ref.;Descripción;Posición;Código / Ø nominal (mm);Clase de tolerancia;Desv. sup. (µm);Desv. inf. (µm);"
        "Rugosidad Ra (µm);Cilindricidad (mm);Ø hombro (mm)", "nculrms",
        ("Eje - asiento de rodamiento", "Soporte - asiento de rodamiento", "Rodamiento de bolas"),
        ("lado rodete", "lado accionamiento"), (), (), False,
    ),
}  # fmt: skip


def _listed(name: str) -> str:
    heads, kinds, words, positions, before, behind, turned = LISTS[name]
    rows = [heads, *before]
    for place, position in zip("AB", positions, strict=True):
        for part, word in zip(("bearing", "shaft", "housing"), (words[2], *words[:2]), strict=True):
            lead = [str(len(rows)), *((position, word) if turned else (word, position))]
            cells = [BEARINGS[place]] if part == "bearing" else _cells(place, part, kinds)
            rows.append(";".join([*lead, *cells]))
    return "\n".join([*rows, *behind])


@pytest.mark.parametrize("name", LISTS)
def test_seats_of_a_list_keep_nominal_class_and_limits(tmp_path, name):
    path = tmp_path / "list.csv"
    path.write_text(_listed(name), encoding="utf-8")
    stations = read_table(path).stations
    order = np.argsort(-stations.number("bore_diameter"))
    assert [stations.text("bearing_designation")[k] for k in order] == [BEARINGS["A"], BEARINGS["B"]]
    for part in ("shaft", "housing"):
        expected = [SEATS[place, part] for place in "AB"]
        size = stations.size(f"{part}_seat_diameter")
        assert size.nominal[order].tolist() == [seat[0] for seat in expected]
        assert [str(size.tolerance_class[k]) for k in order] == [seat[1] for seat in expected]
        assert size.upper[order] == pytest.approx([seat[2] for seat in expected])
        assert size.lower[order] == pytest.approx([seat[3] for seat in expected])
        assert stations.number(f"{part}_seat_roughness")[order].tolist() == [seat[4] for seat in expected]
        assert stations.number(f"{part}_seat_cylindricity")[order] * 1000 == pytest.approx([s[5] for s in expected])
        assert stations.size(f"{part}_shoulder_diameter").nominal[order].tolist() == [seat[6] for seat in expected]


def test_the_material_of_a_part_stands_where_bearings_have_their_designation(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text(_listed("limits beside nominal and class"), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.choice("shaft_material").is_in("steel").all()


#: Lists with the parts as items among their seats, and positions under a word for a place in words of the firm.
ITEMS = {
    "German, items among seats, sides in free words": (
        "Pos;Menge;Bauteil;Werkstoff / Typ;Nennmaß;Feld;GoG;GuG;Ra;Seite\n"
        "1;1;Antriebswelle;42CrMo4;;;;;;\n2;1;Sitz Innenring;;30;k5;30,011;30,002;0,4;Antrieb\n"
        "3;1;Sitz Innenring;;25;k5;25,011;25,002;0,8;Lüfter\n4;1;Lagergehäuse;EN-GJL-250;;;;;;\n"
        "5;1;Sitz Außenring;;62;H6;62,019;62,000;0,8;Antrieb\n6;1;Sitz Außenring;;52;JS7;52,015;51,985;1,6;Lüfter\n"
        "7;1;Rillenkugellager;6206-2Z/C3;;;;;;Antrieb\n8;1;Rillenkugellager;6205-2Z/C3;;;;;;Lüfter\n"
    ),
    "French, designation or nominal": (
        "Rep;Qté;Désignation;Côté;Réf. / Ø nom.;Tolérance;Cote maxi;Cote mini;Ra\n10;1;Arbre;;42CrMo4;;;;\n"
        "11;;Portée de roulement arbre;moteur;30;k5;30.011;30.002;0.4\n"
        "12;;Portée de roulement arbre;turbine;25;k5;25.011;25.002;0.8\n20;1;Carter;;EN-GJL-250;;;;\n"
        "21;;Alésage carter;moteur;62;H6;62.019;62.000;0.8\n22;;Alésage carter;turbine;52;JS7;52.015;51.985;1.6\n"
        "30;1;Roulement;moteur;6206-2Z/C3;;;;\n31;1;Roulement;turbine;6205-2Z/C3;;;;\n"
    ),
    "English, where and part number": (
        "Item;Part;Where;Part no. / size (mm);Fit;Upper (µm);Lower (µm);Finish Ra (µm);Qty\n"
        "1;Ball bearing;coupling side;6206-2Z/C3;;;;;1\n2;Journal;coupling side;30;k5;+11;+2;0.4;\n"
        "3;Bore in housing;coupling side;62;H6;+19;0;0.8;\n4;Ball bearing;opposite side;6205-2Z/C3;;;;;1\n"
        "5;Journal;opposite side;25;k5;+11;+2;0.8;\n6;Bore in housing;opposite side;52;JS7;+15;-15;1.6;\n"
        "7;Lip seal;coupling side;30x47x7;;;;;1\n"
    ),
    "Russian, place in free words": (
        "№;Наименование;Место;Обозначение / номинал (мм);Посадка;Наиб. (мм);Наим. (мм);Ra (мкм)\n"
        "1;Подшипник шариковый;привод;6206-2Z/C3;;;;\n2;Вал (посадочное место);привод;30;k5;30,011;30,002;0,4\n"
        "3;Корпус (посадочное место);привод;62;H6;62,019;62,000;0,8\n"
        "4;Подшипник шариковый;вентилятор;6205-2Z/C3;;;;\n"
        "5;Вал (посадочное место);вентилятор;25;k5;25,011;25,002;0,8\n"
        "6;Корпус (посадочное место);вентилятор;52;JS7;52,015;51,985;1,6\n"
    ),
    "one row a position, limits behind nominal and class": (
        "Position;Bearing;Shaft fit dia. [mm];ISO tol.;Max. [mm];Min. [mm];Housing fit dia. [mm];ISO tol.;Max. [mm];"
        "Min. [mm];Ra shaft [µm];Ra housing [µm]\n"
        "front;6206-2Z/C3;30;k5;30.011;30.002;62;H6;62.019;62.000;0.4;0.8\n"
        "rear;6205-2Z/C3;25;k5;25.011;25.002;52;JS7;52.015;51.985;0.8;1.6\n"
    ),
}


@pytest.mark.parametrize("text", ITEMS.values(), ids=ITEMS)
def test_items_among_seats_are_of_no_position(tmp_path, text):
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    assert len(stations) == 2
    order = np.argsort(-stations.number("bore_diameter"))
    assert [stations.text("bearing_designation")[k] for k in order] == [BEARINGS["A"], BEARINGS["B"]]
    for part in ("shaft", "housing"):
        expected = [SEATS[place, part] for place in "AB"]
        size = stations.size(f"{part}_seat_diameter")
        assert size.nominal[order].tolist() == [seat[0] for seat in expected]
        assert size.upper[order] == pytest.approx([seat[2] for seat in expected])
        assert size.lower[order] == pytest.approx([seat[3] for seat in expected])
        assert stations.number(f"{part}_seat_roughness")[order].tolist() == [seat[4] for seat in expected]


def test_a_seat_with_fewer_figures_is_no_item(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text(
        "Part;Side;Nominal [mm];Class;Max [mm];Min [mm];Ra [µm]\n"
        "Shaft;DE;30;k5;30.011;30.002;0.4\nHousing;DE;62;H6;62.019;62.000;0.8\n"
        "Shaft;NDE;25;k5;25.011;25.002;0.8\nHousing;NDE;52;H6;52.019;52.000;0.8\n"
        "Shaft;middle;28;k5;;;\nHousing;middle;58;H6;;;\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert sorted(stations.size("shaft_seat_diameter").nominal.tolist()) == [25, 28, 30]
    assert sorted(stations.size("housing_seat_diameter").nominal.tolist()) == [52, 58, 62]
