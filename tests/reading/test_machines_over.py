"""Machines side by side over positions that come again below each, whatever the row of the machines is called."""

import numpy as np
import pytest
from openpyxl import Workbook

from linter.reading import read_table
from linter.reading.files.grids import Grid, object_column
from linter.reading.layouts.machines_over import with_machines_over
from linter.reading.layouts.strips import Found
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())
#: Labels of machines, of positions, of the bearing, the seats and the load, a drawing, positions and machines.
LANGUAGES = {
    "en": (("Spindle", "Type", "Fan", "Project", ""), "Bearing position", "Bearing", "Shaft seat diameter",
           "Housing bore", "Radial load", "Drawing no.", ("DE", "NDE"), ("Blower SB-4", "Fan RV-7")),
    "de": (("Spindel", "Ausführung", "Kunde"), "Lagerstelle", "Lagerbezeichnung", "Wellensitz", "Gehäusebohrung",
           "Radiallast", "Zeichnung", ("A", "B"), ("Wuchtspindel WS 12", "Frässpindel FS 63")),
    "fr": (("Broche", "Modèle"), "Palier", "Roulement", "Portée d'arbre", "Alésage logement", "Charge radiale", "Plan",
           ("avant", "arrière"), ("Ventilateur VC-4", "Pompe PC-7")),
    "it": (("Mandrino", "Tipo"), "Supporto", "Cuscinetto", "Sede albero", "Sede alloggiamento", "Carico radiale",
           "Disegno", ("anteriore", "posteriore"), ("Ventilatore VC-4", "Pompa PC-7")),
    "es": (("Husillo", "Modelo"), "Apoyo", "Rodamiento", "Asiento del eje", "Alojamiento", "Carga radial", "Plano",
           ("lado motor", "lado bomba"), ("Ventilador VC-4", "Bomba PC-7")),
    "ja": (("主軸", "型式"), "位置", "軸受", "軸径", "ハウジング内径", "ラジアル荷重", "図番",
           ("負荷側", "反負荷側"), ("送風機 SB-4", "ポンプ RV-7")),
    "zh": (("主轴", "型号"), "位置", "轴承", "轴颈直径", "座孔直径", "径向载荷", "图号",
           ("驱动端", "非驱动端"), ("风机 SB-4", "水泵 RV-7")),
    "ru": (("Шпиндель", "Модель"), "Опора", "Подшипник", "Посадочный диаметр вала", "Отверстие корпуса",
           "Радиальная нагрузка", "Чертёж", ("передняя", "задняя"), ("Вентилятор ВЦ-4", "Насос НК-7")),
}  # fmt: skip
CASES = [(language, label) for language, words in LANGUAGES.items() for label in words[0]]


def rows_of(language, label, between):
    _, places, bearing, shaft, housing, load, drawing, names, machines = LANGUAGES[language]
    top = [label, "", machines[0], "", machines[1], ""]
    own = [[drawing, "", "D 41.7", "", "D 52.3", ""]]
    head = [places, "", *names, *names]
    below = [
        [bearing, "", "6205", "6204", "6204", "6203"], [shaft, "mm", "25 k5", "20 k5", "20 j5", "17 j5"],
        [housing, "mm", "52 H6", "47 H6", "47 J6", "40 J6"], [load, "N", "590", "740", "310", "260"],
    ]  # fmt: skip
    return [top, *own, head, *below] if between else [top, head, *below, *own]


def judge(path, language):
    stations = read_table(path).stations
    names, machines = LANGUAGES[language][-2:]
    keys = [*zip(stations.text("machine").tolist(), stations.text("station").tolist(), strict=True)]
    order = [keys.index((machine, name)) for machine in machines for name in names]
    assert len(keys) == len(order)
    assert stations.size("shaft_seat_diameter").nominal[order].tolist() == [25, 20, 20, 17]
    assert stations.size("housing_seat_diameter").nominal[order].tolist() == [52, 47, 47, 40]
    assert stations.number("radial_load")[order].tolist() == [590, 740, 310, 260]
    assert stations.text("bearing_designation")[order].tolist() == ["6205", "6204", "6204", "6203"]
    assert stations.text("drawing_number")[order].tolist() == ["D 41.7"] * 2 + ["D 52.3"] * 2
    return stations


def csv_of(tmp_path, rows):
    path = tmp_path / "table.csv"
    path.write_text("\n".join(";".join(row) for row in rows), "utf-8")
    return path


@pytest.mark.parametrize("between", [True, False])
@pytest.mark.parametrize(("language", "label"), CASES)
def test_machines_over_positions_whatever_their_row_is_called(tmp_path, language, label, between):
    judge(csv_of(tmp_path, rows_of(language, label, between)), language)


@pytest.mark.parametrize(("language", "label"), CASES)
def test_merged_cells_of_machines_and_a_unit_behind_the_values(tmp_path, language, label):
    rows, book = rows_of(language, label, True), Workbook()
    for row in rows:
        book.active.append([cell or None for cell in [row[0], *row[2:], row[1]]])
    for row in (1, 2):
        book.active.merge_cells(f"B{row}:C{row}")
        book.active.merge_cells(f"D{row}:E{row}")
    book.save(tmp_path / "table.xlsx")
    judge(tmp_path / "table.xlsx", language)


@pytest.mark.parametrize("joint", [" ", " / ", " - ", ": "])
@pytest.mark.parametrize("language", LANGUAGES)
def test_heads_that_say_machine_and_position_at_once(tmp_path, language, joint):
    rows = rows_of(language, "", False)
    names, machines = LANGUAGES[language][-2:]
    heads = ["", "", *(f"{machine}{joint}{name}" for machine in machines for name in names)]
    judge(csv_of(tmp_path, [heads, *rows[2:]]), language)


def test_a_row_that_no_word_calls_one_of_machines_is_told(tmp_path):
    told = judge(csv_of(tmp_path, rows_of("de", "Kunde", True)), "de").problems
    assert [p.code for p in told if p.parameter == "machine" and p.kind == "assumption"][:1] == ["machine-by-rows"]


def grid_of(*rows):
    columns = [object_column(list(cells)) for cells in zip(*rows, strict=True)]
    return Grid("seats.csv", None, columns, np.arange(1, len(rows) + 1, dtype=np.int32))


@pytest.mark.parametrize(
    "names",
    [("Soll", "Ist"), ("Welle", "Gehäuse"), ("Messung 1", "Messung 2"), ("Option 1", "Option 2"), ("k5", "H6"),
     ("Nennmaß", "Toleranz"),     ("2023", "2024"), ("vorher", "nachher"), ("6204", "6205"), ("SB-4", "SB-4")],
)  # fmt: skip
@pytest.mark.parametrize("label", ["", "Kunde", "Prüfung"])
def test_words_over_positions_that_are_no_machines(names, label):
    two = grid_of([label, names[0], "", names[1], ""], ["Lagerstelle", "A", "B", "A", "B"], ["Wellensitz", *"1234"])
    one = grid_of([label, *(f"{name} {place}" for name in names for place in "AB")], ["Wellensitz", *"1234"])
    for grid in (two, one):
        assert with_machines_over(grid, WORDS, Found()) is grid


def test_the_places_of_cells_stay_theirs():
    grid = grid_of(
        ["Item", *(f"{name} {place}" for name in ("W 12", "F 63") for place in "AB")], ["Wellensitz", *"1234"]
    )
    apart = with_machines_over(grid, WORDS, Found())
    assert [[apart.text(row, 4) for row in range(3)], apart.lines.tolist()] == [["F 63", "B", "4"], [1, 1, 2]]
    assert apart.place(2, 4) == grid.place(1, 4)
