"""Questionnaires: questions and answers with running numbers, blocks below words for each bearing."""

import pytest

from linter.reading import Reading, read_table

FORMS = [
    (
        "#|Question|Answer|Rev",
        ("DRIVE BEARING", "TAIL BEARING"),
        ("Bearing number", "Shaft seat diameter [mm]", "Housing bore diameter [mm]", "Shaft shoulder diameter [mm]"),
    ),
    (
        "Nr.|Frage|Antwort|Bemerkung",
        ("Ventilatorlager", "Kollektorlager"),
        ("Lagerbezeichnung", "Wellensitz Ø [mm]", "Gehäusebohrung Ø [mm]", "Wellenschulter Ø [mm]"),
    ),
    (
        "Item|Description|Bidder's data|Remark",
        ("Wheel bearing", "Coupling bearing"),
        ("Bearing", "Shaft diameter and fit", "Housing diameter and fit", "Shaft shoulder diameter [mm]"),
    ),
    (
        "N°|Question|Réponse|Remarque",
        ("Palier roue", "Palier accouplement"),
        ("Roulement", "Portée d'arbre [mm]", "Alésage logement [mm]", "Épaulement arbre Ø [mm]"),
    ),
]


def read(tmp_path, lines: list[str]) -> Reading:
    path = tmp_path / "form.tsv"
    path.write_text("\n".join(lines).replace("|", "\t"), encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize(("head", "places", "names"), FORMS)
def test_running_numbers_beside_answers_are_no_positions(tmp_path, head, places, names):
    values = (("6208-2RS", "40 k5", "80 H6", "49"), ("6207-2RS", "35 k5", "72 J6", "44"))
    lines, number = [head], 0
    for place, own in zip(places, values, strict=True):
        lines.append(f"|{place}||")
        for name, value in zip(names, own, strict=True):
            number += 1
            lines.append(f"{number}|{name}|{value}|")
    stations = read(tmp_path, lines).stations
    assert list(stations.text("station")) == list(places)
    assert sorted(stations.text("bearing_designation")) == ["6207-2RS", "6208-2RS"]
    assert sorted(stations.size("shaft_seat_diameter").nominal) == [35, 40]
    assert sorted(stations.size("shaft_shoulder_diameter").nominal) == [44, 49]


def test_a_lone_heading_that_ends_in_a_bearing_is_one_of_no_positions(tmp_path):
    lines = ["Question|Answer", "Thrust bearing|", "Bearing number|6208", "Shaft seat diameter [mm]|40 k5"]
    stations = read(tmp_path, lines).stations
    assert len(stations.text("station")) == 1 and "Thrust bearing" not in set(stations.text("station"))


@pytest.mark.parametrize(
    ("head", "names"),
    [
        ("item|old value|new value", ("front bearing", "front shaft seat diameter [mm]", "max. speed [rpm]")),
        ("Merkmal|Wert alt|Wert neu|Grund", ("Lager vorn", "Wellensitz vorn [mm]", "Höchstdrehzahl [1/min]")),
        ("項目|変更前|変更後|理由", ("前側軸受", "前側軸はめあい径 [mm]", "最高回転数 [min-1]")),
        ("repère|ancienne valeur|nouvelle valeur", ("palier avant", "portée arbre avant [mm]", "régime maxi [rpm]")),
    ],
)  # fmt: skip
def test_of_values_before_and_after_a_change_the_new_ones_are_read(tmp_path, head, names):
    rows = (("7006 C P4", "7007 C P4"), ("30 k4", "35 k4"), ("24000", "22000"))
    lines = [f"{name}|{old}|{new}|" for name, (old, new) in zip(names, rows, strict=True)]
    stations = read(tmp_path, [head, *lines]).stations
    assert list(stations.text("bearing_designation")) == ["7007 C P4"]
    assert list(stations.size("shaft_seat_diameter").nominal) == [35]
    assert list(stations.number("speed_max")) == [22000]


@pytest.mark.parametrize("same", ["no change", "Unchanged", "unverändert", "inchangé", "変更なし", "不变"])
def test_where_nothing_changes_the_old_value_stands(tmp_path, same):
    lines = ["item|old value|new value", "front bearing|606|607", f"front shaft seat diameter [mm]|30 k4|{same}"]
    stations = read(tmp_path, [*lines, "front shaft shoulder diameter [mm]|36|41"]).stations
    assert list(stations.size("shaft_seat_diameter").nominal) == [30]
    assert list(stations.size("shaft_shoulder_diameter").nominal) == [41]


def test_a_new_value_that_is_not_understood_leaves_the_old_one_unread(tmp_path):
    lines = ["item|old value|new value", "front bearing|606|607", "front shaft seat diameter [mm]|30 k4|see sketch"]
    stations = read(tmp_path, [*lines, "front shaft shoulder diameter [mm]|36|41"]).stations
    assert not stations.known("shaft_seat_diameter").any()


@pytest.mark.parametrize(
    ("head", "places", "whole", "names"),
    [
        (
            "Узел|Параметр|Значение|Ед. изм.",
            ("опора колеса", "опора муфты"),
            "насос",
            ("Диаметр вала|мм", "Диаметр заплечика вала|мм", "Радиальная нагрузка|Н", "Масса ротора|кг"),
        ),
        (
            "Machine|Parameter|Value|Unit",
            ("Front bearing", "Rear bearing"),
            "Blower",
            ("Shaft seat diameter|mm", "Shaft shoulder diameter|mm", "Radial load|N", "Rotor mass|kg"),
        ),
        (
            "Maschine|Merkmal|Wert|Einheit",
            ("Lager vorn", "Lager hinten"),
            "Gebläse",
            ("Wellensitz Durchmesser|mm", "Wellenschulter Durchmesser|mm", "Radialkraft|N", "Rotormasse|kg"),
        ),
    ],
)
def test_positions_in_a_column_of_machines_beside_the_machine_itself(tmp_path, head, places, whole, names):
    values = (("30", "25"), ("38", "33"), ("480", "310"))
    lines = [head]
    for row, pair in zip(names, values, strict=False):
        name, unit = row.split("|")
        lines += [f"{place}|{name}|{value}|{unit}" for place, value in zip(places, pair, strict=True)]
    name, unit = names[3].split("|")
    stations = read(tmp_path, [*lines, f"{whole}|{name}|8.7|{unit}"]).stations
    assert len(stations.machines) == 1 and len(stations.text("station")) == 2
    assert list(stations.number("radial_load")) == [480, 310]
    assert list(stations.size("shaft_seat_diameter").nominal) == [30, 25]
    assert set(stations.number("rotor_mass")) == {8.7}


def test_machines_with_letters_stay_machines(tmp_path):
    rows = [f"Pump {k}|{n}|{v}|{u}" for k in "AB" for n, v, u in (("Rotor mass", 8, "kg"), ("Max. speed", 3000, "rpm"))]
    rows += [f"Pump {k}|Shaft seat diameter|25|mm" for k in "AB"]
    stations = read(tmp_path, ["Machine|Parameter|Value|Units", *rows]).stations
    assert sorted(stations.machines) == ["Pump A", "Pump B"]
