"""What every row of a list says of its machine, what objects of a document call it, and what its rotor weighs."""

import json

import pytest

from linter.reading import read_table

#: Number, name, position, name of a value, value, tolerance and unit; what is of all; the machine; names of values.
LISTS = {
    "ja": (("品番", "品名", "部位", "属性名", "属性値", "公差", "単位"), "全体", "サーボモータ SV-200",
           ("負荷側", "反負荷側"), ("軸受型番", "軸の直径", "ハウジングの内径", "ロータ", "質量")),
    "zh": (("图号", "品名", "部位", "参数", "数值", "公差", "单位"), "整机", "伺服电机 SM-80", ("前端", "后端"),
           ("轴承型号", "轴颈直径", "座孔直径", "转子", "质量")),
    "en": (("Drawing no.", "Article", "Position", "Parameter", "Value", "Tolerance", "Unit"), "general",
           "Servo motor SM-80", ("DE", "NDE"),
           ("Bearing", "Shaft seat diameter", "Housing bore diameter", "Rotor", "weight")),
    "de": (("Zeichnungs-Nr.", "Artikel", "Lagerstelle", "Merkmal", "Wert", "Toleranz", "Einheit"), "allgemein",
           "Servomotor SM-80", ("AS", "BS"),
           ("Lagerbezeichnung", "Wellensitz Durchmesser", "Gehäusebohrung Durchmesser", "Läufer", "Masse")),
    "it": (("Codice disegno", "Oggetto", "Supporto", "Grandezza", "Valore", "Tolleranza", "U.M."), "generale",
           "Ventilatore assiale VA 31", ("lato comando", "lato opposto"),
           ("Cuscinetto", "Diametro sede albero", "Diametro sede alloggiamento", "Rotore", "Massa")),
}  # fmt: skip


@pytest.fixture
def read(tmp_path):
    def reader(content):
        path = tmp_path / ("table.csv" if isinstance(content, list) else "table.json")
        if isinstance(content, list):
            path.write_text("\n".join(";".join(row) for row in content) + "\n", encoding="utf-8")
        else:
            path.write_text(json.dumps(content, ensure_ascii=False), encoding="utf-8")
        return read_table(path)

    return reader


def _rows(language):
    heads, whole, machine, positions, names = LISTS[language]
    speed = {
        "ja": "最高回転速度",
        "zh": "最高转速",
        "en": "Max. speed",
        "de": "Höchstdrehzahl",
        "it": "Velocità massima",
    }
    rows = [(whole, speed[language], "1500", "", "1/min")]
    for position, bearing, shaft, bore in zip(positions, ("6202", "6201"), ("15", "12"), ("35", "32"), strict=True):
        rows += [(position, names[0], bearing, "", ""), (position, names[1], shaft, "h6", "mm"),
                 (position, names[2], bore, "N6", "mm")]  # fmt: skip
    return heads, machine, rows


@pytest.mark.parametrize("language", LISTS)
def test_columns_that_say_the_same_in_every_row_are_of_the_machine(read, language):
    heads, machine, rows = _rows(language)
    stations = read([heads, *(("SV99-18", machine, *row) for row in rows)]).stations
    assert set(stations.text("machine").tolist()) == {machine}
    assert set(stations.text("drawing_number").tolist()) == {"SV99-18"}
    assert len(stations.text("station")) == 2


def test_columns_that_differ_are_of_no_machine(read):
    heads, machine, rows = _rows("ja")
    reading = read([heads, *((f"SV99-{k}", machine, *row) for k, row in enumerate(rows))])
    assert not reading.stations.known("drawing_number").any()


@pytest.mark.parametrize(("head", "value"), [("Typ", "offen"), ("Artikel", "Fett"), ("Objekt", "Welle 12")])
def test_a_column_of_another_thing_names_no_machine(read, head, value):
    table = [("Lagerstelle", "Lager", head, "Wellensitz Ø [mm]"), *(
        (position, "6205", value, "25 k5") for position in ("A", "B", "C"))]  # fmt: skip
    assert value not in read(table).stations.text("machine").tolist()


@pytest.mark.parametrize("language", LISTS)
def test_the_mass_beside_the_rotor_is_its_own(read, language):
    heads, _, _, positions, names = LISTS[language]
    part = {"ja": "部品", "zh": "零件", "en": "Part", "de": "Bauteil", "it": "Componente"}[language]
    rows = [("", names[3], names[4], "0.18", "", "kg")]
    for position in positions:
        rows += [(position, "", names[0], "6202", "", ""), (position, "", names[1], "15", "h6", "mm"),
                 (position, "", names[2], "35", "N6", "mm")]  # fmt: skip
    stations = read([(heads[2], part, *heads[3:]), *rows]).stations
    assert set(stations.number("rotor_mass").tolist()) == {0.18}


_POSITIONS = {
    "bearings": [
        {"position": "DE", "bearing": "6205", "shaft_seat_diameter": "25 k5"},
        {"position": "NDE", "bearing": "6204", "shaft_seat_diameter": "20 k5"},
    ]
}


@pytest.mark.parametrize(
    ("top", "machine"),
    [
        ({"Artikel": "Membrandosierpumpe MD 4", "Zeichnungsnummer": "MD-1"}, "Membrandosierpumpe MD 4"),
        ({"export": {"date": "2025-03-22"}, "article": "Pompe doseuse PD 4"}, "Pompe doseuse PD 4"),
        ({"articulo": "Bomba dosificadora BD 4"}, "Bomba dosificadora BD 4"),
        ({"oggetto": "Motore SM-80"}, "Motore SM-80"),
        ({"对象": "伺服电机 SM-80", "图号": "SM33.16"}, "伺服电机 SM-80"),
        ({"対象": "サーボモータ SV-200"}, "サーボモータ SV-200"),
        ({"объект": "Насос-дозатор НД-10"}, "Насос-дозатор НД-10"),
        ({"maquina": {"denominacion": "Soplante de lóbulos SL 100"}}, "Soplante de lóbulos SL 100"),
        ({"Artikel": "4711-22"}, "table"),
        ({"object": "Bearing seats 2"}, "table"),
        ({"Objekt": "Welle 12"}, "table"),
    ],
)
def test_the_machine_that_a_document_calls_by_an_open_word(read, top, machine):
    assert set(read({**top, **_POSITIONS}).stations.text("machine").tolist()) == {machine}
