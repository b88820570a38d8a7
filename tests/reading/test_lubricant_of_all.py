"""A lubricant in a row of data of the machine is that of all its positions, and makes none of its own."""

import pytest

from linter.reading import read_table

ACROSS = {
    "en": ("Machine;Drawing no.;Max. speed [rpm];Lubricant;Rotor mass [kg]", "Spindle unit SU-22;K-12;9000;Grease;5.8",
           "Position;Bearing designation;Shaft seat diameter [mm]"),
    "de": ("Maschine;Zeichnungsnummer;Max. Drehzahl [1/min];Schmierstoff;Rotormasse [kg]",
           "Umwälzpumpe UP-7;K-12;9000;Fett;5,8", "Lagerstelle;Lagerbezeichnung;Durchmesser Wellensitz [mm]"),
    "zh": ("机器;图号;最高转速 [r/min];润滑剂;转子质量 [kg]", "循环泵 CP-7;K-12;9000;润滑脂;5.8",
           "轴承位置;轴承型号;轴颈直径 [mm]"),
}  # fmt: skip
OF_ALL = {
    "all": "Position;Parameter;Value;Unit\n{0};Machine;Blower SB-4;\n{0};Max. speed;9000;rpm\n{0};Lubricant;Grease;\n"
    "A;Bearing designation;6204;\nA;Shaft seat diameter;20 k5;mm\nB;Bearing designation;6205;\n"
    "B;Shaft seat diameter;25 k5;mm\n",
    "все": "Позиция;Параметр;Значение;Единица\n{0};Машина;Насос НЦ-7;\n{0};Макс. частота вращения;9000;об/мин\n"
    "{0};Смазочный материал;пластичная смазка;\nA;Обозначение подшипника;6204;\nA;Диаметр шейки вала;20 k5;мм\n"
    "B;Обозначение подшипника;6205;\nB;Диаметр шейки вала;25 k5;мм\n",
    "tutti": "Supporto;Parametro;Valore;Unità\n{0};Macchina;Soffiante SF-4;\n{0};Velocità max.;9000;giri/min\n"
    "{0};Lubrificante;grasso;\nA;Sigla cuscinetto;6204;\nA;Diametro sede albero;20 k5;mm\nB;Sigla cuscinetto;6205;\n"
    "B;Diametro sede albero;25 k5;mm\n",
}


def read(tmp_path, text):
    path = tmp_path / "sheet.csv"
    path.write_text(text, "utf-8")
    return read_table(path).stations


@pytest.mark.parametrize("language", [*ACROSS])
def test_a_row_of_the_machine_above_its_table_is_no_position(tmp_path, language):
    head, values, table = ACROSS[language]
    stations = read(tmp_path, f"{head}\n{values}\n;;\n{table}\nA;6204;20 k5\nB;6205-2Z;25 k5\n")
    assert stations.text("station").tolist() == ["A", "B"]
    assert [*stations.choice("lubrication").texts()] == ["grease", "grease"]
    assert stations.number("speed_max").tolist() == [9000, 9000]


@pytest.mark.parametrize("word", [*OF_ALL])
def test_a_word_for_all_in_the_column_of_positions_is_none(tmp_path, word):
    stations = read(tmp_path, OF_ALL[word].format(word))
    assert stations.text("station").tolist() == ["A", "B"]
    assert [*stations.choice("lubrication").texts()] == ["grease", "grease"]
    assert stations.number("speed_max").tolist() == [9000, 9000]


def test_rows_of_one_machine_that_state_different_lubricants_stay_apart(tmp_path):
    stations = read(tmp_path, "Machine;Lubrication\nPump CP-7;grease\nPump CP-7;oil mist\n")
    assert len(stations.text("station")) == 2
