"""Notes that state units for kinds of value: sizes, deviations, geometrical tolerances, roughness."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.unit_sentences import kind_units, unit_of_all

DEVIATIONS = (
    "Position;Bearing;Shaft seat nominal;Upper deviation;Lower deviation;"
    "Housing bore nominal;Upper deviation;Lower deviation\nA;6206;30;11;2;62;30;0\nB;6205;25;11;2;52;30;0\n"
)
SENTENCES = (
    "偏差单位为μm,其余尺寸单位为mm",
    "尺寸单位mm,公差单位μm",
    "单位:尺寸mm,偏差μm",
    "寸法:mm、許容差:µm",
    "Cotes en mm, défauts de forme et écarts en µm",
    "Maße in mm / Abmaße in µm",
    "Maße mm - Abmaße µm",
    "Dimensions in mm|deviations in microns",
    "Sizes in millimetres and deviations in micrometres",
    "All dimensions in mm, deviations in µm unless otherwise stated",
    "Unless otherwise stated: mm, deviations in µm",
    "Размеры в мм, отклонения в мкм",
    "Cotas en mm y desviaciones en µm",
    "Quote in millimetri, scostamenti in micrometri",
)


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path).stations

    return reader


@pytest.mark.parametrize("sentence", SENTENCES)
@pytest.mark.parametrize("above", [True, False])
def test_a_note_settles_the_unit_of_deviations(read, sentence, above):
    note = sentence.replace("|", ";")
    stations = read(f"{note};;;\n{DEVIATIONS}" if above else f"{DEVIATIONS}\n{note};;;\n")
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.011, 0.011])
    assert stations.size("shaft_seat_diameter").lower.tolist() == pytest.approx([0.002, 0.002])
    assert stations.size("housing_seat_diameter").upper.tolist() == pytest.approx([0.030, 0.030])


def test_the_heading_of_the_names_can_hold_the_note(read):
    stations = read(
        "参数(偏差单位为μm,其余尺寸单位为mm);A;B\n轴承型号;6206;6205\n轴颈公称直径;30;25\n轴颈上偏差;11;11\n轴颈下偏差;2;2\n"
    )
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.011, 0.011])


@pytest.mark.parametrize(
    "note", ["Cotes en mm - défauts de forme en µm", "Cotes en mm, défauts de forme et écarts en µm"]
)
def test_a_note_settles_the_unit_of_geometrical_tolerances(read, note):
    stations = read(
        f"Palier;Roulement;Cylindricité portée arbre;Battement épaulement arbre\nA;6206;4;6\nB;6205;3;5\n\n{note};;;\n"
    )
    assert stations.number("shaft_seat_cylindricity").tolist() == pytest.approx([0.004, 0.003])


@pytest.mark.parametrize(
    "heading",
    ["Rundlauf in µm", "Toleranz µm oben", "Dimensions [mm]", "Preload 20 µm", "Zylinderform [µm], Rundlauf [µm]"],
)
def test_headings_are_no_notes(heading):
    assert kind_units(heading, alone=False) == {}


@pytest.mark.parametrize(
    ("all_else", "deviations"),
    [
        ("Unless otherwise stated: mm", "deviations in µm"), ("Falls nicht anders angegeben: mm", "Abmaße in µm"),
        ("Sauf indication contraire : mm", "écarts en µm"), ("Salvo diversa indicazione: mm", "scostamenti in µm"),
        ("Salvo indicación contraria: mm", "desviaciones en µm"), ("Если не указано иное: мм", "отклонения в мкм"),
        ("除另有说明外:mm", "偏差单位为μm"), ("特に指定のない限り:mm", "許容差はμm"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("gap", [";", ";;"])
def test_the_unit_of_all_else_and_that_of_a_kind_in_two_cells(tmp_path, all_else, deviations, gap):
    path = tmp_path / "t.csv"
    heads = "Position;Bearing;Shaft seat;Upper dev.;Lower dev.;Housing seat;Upper dev.;Lower dev."
    if "мм" in all_else:
        ends = "верхнее отклонение;нижнее отклонение"
        heads = f"Опора;Подшипник;Посадочный диаметр вала;{ends};Отверстие корпуса;{ends}"
    rows = "Front;7205;25;+9;0;52;+13;0\nRear;7204;20;+9;0;47;+13;0"
    path.write_text(f"{all_else}{gap}{deviations};;;;;;\n{heads}\n{rows}\n", "utf-8")
    shaft = read_table(path).stations.size("shaft_seat_diameter")
    assert (shaft.nominal.tolist(), shaft.upper.tolist()) == ([25, 20], [0.009, 0.009])


@pytest.mark.parametrize("text", ["Unless otherwise stated: see drawing", "Shaft seat: mm", "Units: N, °C", "25 mm"])
def test_what_states_no_unit_of_all(text):
    assert unit_of_all(text) == ""
