"""Labels of a drawing's frame above a table: beside their values, over them, before a letter alone, and soft words."""

import pytest

from linter.reading import read_table

#: Machine, drawing and revision as offices label them, the machine's name, and the heads of a table of positions.
LANGUAGES = {
    "en": (("Object", "Dwg no.", "Ed."), "Gear spindle GS 280",
           ("Position", "Bearing", "Shaft seat diameter [mm]", "Housing bore diameter [mm]"), ("DE", "NDE")),
    "de": (("Gegenstand", "Zeichnung", "Stand"), "Getriebespindel GS 280",
           ("Lagerstelle", "Lager", "Wellensitz Ø [mm]", "Gehäusebohrung Ø [mm]"), ("AS", "BS")),
    "fr": (("Objet", "N° plan", "Édition"), "Broche d'avance BA 280",
           ("Palier", "Roulement", "Ø portée arbre [mm]", "Ø alésage logement [mm]"), ("A", "B")),
    "es": (("denominacion", "Plano", "Ed."), "Soplante de lóbulos SL 100",
           ("Apoyo", "Rodamiento", "Ø asiento del eje [mm]", "Ø asiento del alojamiento [mm]"), ("A", "B")),
    "it": (("Oggetto", "Codice disegno", "Edizione"), "Ventilatore assiale VA 31",
           ("Supporto", "Cuscinetto", "Diametro sede albero [mm]", "Diametro sede alloggiamento [mm]"), ("A", "B")),
    "ja": (("対象", "図番", "訂番"), "ルーツブロワ RB-50", ("位置", "軸受型番", "軸径 [mm]", "ハウジング内径 [mm]"),
           ("駆動側", "反駆動側")),
    "zh": (("对象", "图号", "版次"), "伺服电机 SM-80", ("位置", "轴承型号", "轴颈直径 [mm]", "座孔直径 [mm]"),
           ("驱动端", "非驱动端")),
    "ru": (("Объект", "Чертёж", "Издание"), "Насос-дозатор НД-10",
           ("Опора", "Подшипник", "Диаметр шейки вала [мм]", "Диаметр отверстия корпуса [мм]"), ("А", "Б")),
}  # fmt: skip
SHAPES = {
    "pairs": lambda m, d, r, name: [(m, name), (d, "MX 27.893-5", r, "B")],
    "one row": lambda m, d, r, name: [(f"{m}:", name, f"{d}:", "MX 27.893-5", f"{r}:", "B")],
    "over": lambda m, d, r, name: [(m, d, r), (name, "MX 27.893-5", "B")],
    "letter alone": lambda m, d, r, name: [(m, name), (d, "MX 27.893-5", "B")],
}


@pytest.fixture
def read(tmp_path):
    def reader(rows):
        path = tmp_path / "table.csv"
        path.write_text("\n".join(";".join(row) for row in rows) + "\n", encoding="utf-8")
        return read_table(path)

    return reader


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("across", [False, True], ids=["rows", "columns"])
def test_machine_drawing_and_revision_of_a_frame(read, language, shape, across):
    labels, name, heads, positions = LANGUAGES[language]
    table = [heads, (positions[0], "6205", "25 k5", "52 H6"), (positions[1], "6204", "20 k5", "47 H7")]
    stations = read([*SHAPES[shape](*labels, name), (), *(zip(*table, strict=True) if across else table)]).stations
    assert set(stations.text("machine").tolist()) == {name}
    assert set(stations.text("drawing_number").tolist()) == {"MX 27.893-5"}
    assert set(stations.text("drawing_revision").tolist()) == {"B"}
    assert len(stations.text("station")) == 2
    assert stations.known("shaft_seat_diameter").all()


_TABLE = [("Position", "Bearing", "Shaft seat diameter [mm]"), ("DE", "6205", "25 k5"), ("NDE", "6204", "20 k5")]


@pytest.mark.parametrize(
    "title",
    [
        [("Drawing", "MX 27.893-5", "Stand", "12.03.2025")],
        [("Stand", "B")],
        [("Version", "2"), (), ("Drawing", "MX 27.893-5")],
        [("Drawing", "MX 27.893-5", "mm")],
        [("Drawing", "MX 27.893-5", "A4")],
    ],
)
def test_what_is_no_revision_is_none(read, title):
    assert not read([*title, (), *_TABLE]).stations.known("drawing_revision").any()


def test_a_word_behind_a_label_is_no_drawing(read):
    stations = read([("Drawing", "Sheet size", "Scale"), ("MX 27.893-5", "A3", "1:2"), (), *_TABLE]).stations
    assert set(stations.text("drawing_number").tolist()) <= {"", "MX 27.893-5"}


def test_a_revision_that_is_named_goes_before_a_letter_and_a_soft_word(read):
    stations = read([("Drawing", "MX 27.893-5", "Ed.", "A"), ("Revision", "C"), (), *_TABLE]).stations
    assert set(stations.text("drawing_revision").tolist()) == {"C"}


def test_rows_of_several_machines_stay_a_table(read):
    rows = [("Machine", "Drawing", "Revision"), ("Pump P 10", "MX-1", "A"), ("Pump P 20", "MX-2", "B"), ()]
    heads, *table = _TABLE
    table = [("Pump P 10", *table[0]), ("Pump P 20", *table[1])]
    stations = read([*rows, ("Machine", *heads), *table]).stations
    assert stations.text("drawing_number").tolist() == ["MX-1", "MX-2"]
    assert stations.text("drawing_revision").tolist() == ["A", "B"]
