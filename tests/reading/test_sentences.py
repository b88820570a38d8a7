"""Sentences beside a table: what they state of its machine, and what they leave open."""

import openpyxl
import pytest

from linter.reading import read_table

_TABLE = (
    "Position,Bearing,Shaft seat diameter [mm],Housing bore diameter [mm]\nDE,6205,25 k5,52 H6\nNDE,6204,20 k5,47 H7\n"
)
_LIST = (
    "Parameter,Value,Unit\nDE bearing,6205,\nDE shaft seat diameter,25 k5,mm\nDE housing bore diameter,52 H6,mm\n"
    "NDE bearing,6204,\nNDE shaft seat diameter,20 k5,mm\nNDE housing bore diameter,47 H7,mm\n"
)
#: Grade 2.5, operating speed 2900, attitude and life, each office in its own words and order.
SENTENCES = {
    "en": ("Shafts to be balanced to G 2.5, operating speed 2900 rpm, shaft mounted horizontal.",
           "Note: required life L10h at least 20 000 h; operating speed is 2900 rpm and rotor balanced to G2.5."),
    "de": ("Wellen auswuchten nach G 2,5, Betriebsdrehzahl 2900 1/min, Welle waagerecht",
           "Hinweis: Rotor gewuchtet nach ISO 21940-11 G 2,5; Betriebsdrehzahl 2900 1/min. Lebensdauer L10h 20000 h"),
    "fr": ("Arbre équilibré selon G 2,5, vitesse de service 2900 tr/min, arbre horizontal",
           "Durée de vie L10h demandée 20 000 h ; vitesse de service : 2900 tr/min ; équilibrage du rotor G 2,5"),
    "es": ("Rotor equilibrado a G 2,5, velocidad de servicio 2900 rpm, eje horizontal",
           "Vida requerida L10h 20 000 h; equilibrado del rotor según ISO 21940 G 2,5; velocidad de servicio 2900 rpm"),
    "it": ("Alberi da equilibrare a G 2,5, velocità di esercizio 2900 giri/min, albero orizzontale",
           "Durata richiesta 20000 h; velocità di esercizio 2900 giri/min; equilibratura del rotore G 2,5"),
    "ja": ("ロータの釣合い等級はG2.5、常用回転速度は2900 min-1、横軸",
           "要求寿命L10h 20000 h以上、常用回転速度2900 min-1、釣合い良さ G2.5"),
    "zh": ("转子动平衡等级G2.5，工作转速2900 r/min，卧式", "要求寿命 20000 h，转子动平衡 G2.5，工作转速2900r/min"),
    "ru": ("Ротор балансировать по классу G 2,5, рабочая частота вращения 2900 об/мин, вал горизонтальный",
           "Требуемый ресурс 20000 ч; рабочая частота вращения 2900 об/мин; балансировка ротора G 2,5"),
}  # fmt: skip


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "table.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


def _quoted(text: str) -> str:
    return f'"{text}"\n'


def _numbers(stations, name: str) -> list[float]:
    return stations.number(name).tolist() if stations.known(name).any() else []


@pytest.mark.parametrize("language", SENTENCES)
@pytest.mark.parametrize("table", [_TABLE, _LIST], ids=["wide", "list"])
@pytest.mark.parametrize("above", [True, False], ids=["above", "below"])
def test_a_sentence_states_values_of_the_machine(read, language, table, above):
    first, second = SENTENCES[language]
    for sentence, name, expected in ((first, "shaft_orientation", None), (second, "required_life", 20000)):
        line = _quoted(sentence)
        stations = read(f"Machine,Blower 7\n{line}\n{table}" if above else f"{table}\n{line}").stations
        assert set(_numbers(stations, "balance_grade")) == {2.5}
        assert set(_numbers(stations, "speed_operating")) == {2900}
        if expected is None:
            assert set(stations.choice(name).texts().tolist()) == {"horizontal"}
        else:
            assert set(_numbers(stations, name)) == {expected}


def test_a_sentence_of_a_workbook_keeps_its_cell(tmp_path):
    book = openpyxl.Workbook()
    for row in [line.split(",") for line in _TABLE.splitlines()]:
        book.active.append(row)
    book.active["A6"], book.active["B6"] = "Note 1", "Rotor mass 3.4 kg, max. speed 12000 rpm"
    book.save(tmp_path / "table.xlsx")
    reading = read_table(tmp_path / "table.xlsx")
    assert set(_numbers(reading.stations, "rotor_mass")) == {3.4}
    assert set(_numbers(reading.stations, "speed_max")) == {12000}
    assert {one.place.cell for one in reading.understood if one.parameter == "rotor_mass"} == {"B6"}


@pytest.mark.parametrize(
    "sentence",
    [
        "For size 2, operating speed 3600 rpm",
        "Motor type 4 kW, operating speed 1450 rpm",
        "Driven by belt, operating speed 2900 rpm",
        "Impeller balanced to G 6.3, operating speed 2900 rpm",
        "Operating speed was 2900 rpm before",
        "Betriebsdrehzahl 2900 1/min oder Betriebsdrehzahl 3500 1/min",
        "Бывшая рабочая частота вращения не 2900 об/мин",
        "試験時、常用回転速度2900 min-1",
    ],
)
def test_a_sentence_that_may_be_of_something_else_is_told(read, sentence):
    reading = read(f"{_TABLE}\n{_quoted(sentence)}")
    assert not reading.stations.known("speed_operating").any()
    assert not reading.stations.known("balance_grade").any()
    assert any(one.place.cell == "A5" for one in reading.unused)


def test_a_lowest_speed_is_none_to_run_at(read):
    stations = read(f"{_TABLE}\n{_quoted('min. Drehzahl 2000 1/min, Welle horizontal')}").stations
    assert not stations.known("speed_max").any()
    assert not stations.known("speed_operating").any()


def test_what_the_table_states_goes_before_a_sentence(read):
    sentence = "Rotor balanced to G 6.3, max. speed 9000 rpm"
    reading = read(f"Max. speed,12000 rpm,,\n\n{_TABLE}\n{_quoted(sentence)}")
    assert set(_numbers(reading.stations, "speed_max")) == {12000}
    assert set(_numbers(reading.stations, "balance_grade")) == {6.3}
    assert "max. speed 9000 rpm" in {one.value for one in reading.unused}


def test_two_sentences_that_differ_state_nothing(read):
    reading = read(f"{_TABLE}\n{_quoted('Max. speed 9000 rpm, horizontal')}{_quoted('Note: max. speed 8000 rpm')}")
    assert not reading.stations.known("speed_max").any()
    assert {"Max. speed 9000 rpm", "Note: max. speed 8000 rpm"} <= {one.value for one in reading.unused}


def test_a_sentence_below_several_machines_is_of_none(read):
    rows = "".join(f"Reel {k},{line}\n" for k, line in enumerate(_TABLE.splitlines()[1:]))
    reading = read(f"Machine,{_TABLE.splitlines()[0]}\n{rows}\n{_quoted('Rotors balanced to G 2.5, horizontal')}")
    assert not reading.stations.known("balance_grade").any()
    assert "Rotors balanced to G 2.5" in {one.value for one in reading.unused}
