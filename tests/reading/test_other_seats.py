"""Rows of a seal's, a coupling's, a wheel's seat among those of bearings are told and not read."""

import pytest

from linter.reading import read_table

SHEETS = (
    ("Position;Part;Feature;Nominal [mm];Fit;Roughness Ra [µm]", "Shaft", "Housing", "Bearing seat",
     ("Sealing seat", "Coupling seat", "Gear seat", "Impeller seat", "Tool bore")),
    ("Lagerstelle;Teil;Merkmal;Nennmaß [mm];Passung;Rauheit Ra [µm]", "Welle", "Gehäuse", "Lagersitz",
     ("Dichtsitz", "Kupplungssitz", "Zahnradsitz", "Laufradsitz")),
    ("Palier;Pièce;Élément;Cote nominale [mm];Ajustement;Rugosité Ra [µm]", "Arbre", "Logement",
     "Portée de roulement", ("Portée du joint", "Portée d'accouplement", "Portée de pignon")),
    ("Apoyo;Pieza;Elemento;Medida nominal [mm];Ajuste;Rugosidad Ra [µm]", "Eje", "Alojamiento",
     "Asiento de rodamiento", ("Asiento de retén", "Asiento de acoplamiento", "Asiento del rodete")),
    ("Supporto;Particolare;Elemento;Quota nominale [mm];Accoppiamento;Rugosità Ra [µm]", "Albero", "Alloggiamento",
     "Sede cuscinetto", ("Sede tenuta", "Sede giunto", "Sede girante")),
    ("Опора;Деталь;Элемент;Номинал [мм];Посадка;Шероховатость Ra [мкм]", "Вал", "Корпус", "Посадка подшипника",
     ("Посадка уплотнения", "Посадка муфты", "Посадка шестерни")),
    ("軸受位置;部品;部位;基準寸法 [mm];公差クラス;表面粗さ Ra [µm]", "軸", "ハウジング", "軸受部",
     ("シール部", "カップリング部", "歯車部")),
    ("轴承位置;零件;部位;公称尺寸 [mm];公差带;粗糙度 Ra [µm]", "轴", "轴承座", "轴承位",
     ("密封位", "联轴器位", "齿轮位")),
)  # fmt: skip
CASES = [(sheet, k) for sheet in range(len(SHEETS)) for k in range(len(SHEETS[sheet][4]))]


@pytest.mark.parametrize(("sheet", "other"), CASES)
@pytest.mark.parametrize("first", [True, False])
def test_seat_of_another_part_is_told_and_not_read(tmp_path, sheet, other, first):
    head, shaft, housing, seat, others = SHEETS[sheet]
    path, rows = tmp_path / "t.csv", []
    for p, d, D in (("A", 30, 62), ("B", 35, 72)):
        strange = f"{p};{shaft};{others[other]};{d - 4};k6;3.2"
        own = [f"{p};{shaft};{seat};{d};k5;0.4", f"{p};{housing};{seat};{D};H7;0.8"]
        rows += [strange, *own] if first else [*own, strange]
    path.write_text("\n".join([head, *rows]), encoding="utf-8")
    reading = read_table(path)
    stations = reading.stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 35]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 72]
    lines = (2, 5) if first else (4, 7)
    assert {f"{c}{line}" for c in "DEF" for line in lines} <= {unused.place.cell for unused in reading.unused}


@pytest.mark.parametrize("sheet", range(len(SHEETS)))
def test_word_for_the_seat_in_every_row_says_nothing_more(tmp_path, sheet):
    head, shaft, housing, seat, _ = SHEETS[sheet]
    path = tmp_path / "t.csv"
    rows = [f"A;{shaft};{seat};30;k5;0.4", f"A;{housing};{seat};62;H7;0.4"]
    rows += [f"B;{shaft};{seat};35;k5;0.4", f"B;{housing};{seat};72;H7;0.4"]
    path.write_text("\n".join([head, *rows]), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 35]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 72]
    assert stations.number("housing_seat_roughness").tolist() == [0.4, 0.4]


@pytest.mark.parametrize(
    "names", [("Coupling side", "Fan side"), ("Kupplungsseite", "Lüfterseite"), ("Pump end", "Gear end")]
)
def test_positions_named_by_other_parts_stay(tmp_path, names):
    path = tmp_path / "t.csv"
    rows = "\n".join(f"{name};620{k};{5 * k} k5;0.4" for k, name in enumerate(names, 5))
    path.write_text(f"Position;Bearing designation;Shaft seat [mm];Ra shaft [µm]\n{rows}\n", encoding="utf-8")
    assert read_table(path).stations.text("station").tolist() == list(names)
