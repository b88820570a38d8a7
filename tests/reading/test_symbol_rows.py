"""A row of symbols below the words of a heading, with a row of units below it or none."""

import numpy as np
import pytest
from openpyxl import Workbook

from linter.reading import read_table
from linter.reading.files.grids import Grid, object_column
from linter.reading.layouts.symbol_rows import without_symbols
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())

HEADS = {
    "en": (";Bearing;;Shaft seat;;;;Housing seat;;;",
           "Position;Bearing designation;Radial load;{0};{1};{2};{3};{0};{1};{2};{3}",
           ("Seat diameter", "Roughness Ra", "Cylindricity", "Fillet radius max.")),
    "de": (";Wälzlager;;Wellensitz;;;;Gehäusesitz;;;",
           "Lagerstelle;Kurzzeichen Lager;Radiallast;{0};{1};{2};{3};{0};{1};{2};{3}",
           ("Durchmesser", "Rauheit Ra", "Zylinderform", "Hohlkehlradius max.")),
    "es": (";Rodamiento;;Eje;;;;Alojamiento;;;",
           "Posición;Referencia del rodamiento;Carga radial;{0};{1};{2};{3};{0};{1};{2};{3}",
           ("Diámetro nominal", "Rugosidad Ra", "Cilindricidad", "Radio de acuerdo máx.")),
    "ja": (";軸受;;軸;;;;ハウジング;;;",
           "軸受位置;呼び番号;ラジアル荷重;{0};{1};{2};{3};{0};{1};{2};{3}",
           ("直径", "粗さ Ra", "円筒度", "隅R 最大")),
}  # fmt: skip
SYMBOLS = ";;Fr;d;Ra;t1;ra max;D;Ra;t1;rb max"
UNITS = ";;N;mm;µm;µm;mm;mm;µm;µm;mm"
ROWS = "A;6205-2Z;340;25 k5;0.8;4;0.6;52 H7;1.6;7;1\nB;6207/C3;410;35 k5;0.4;5;1;72 H7;0.8;6;0.6\n"


def read(tmp_path, *lines):
    path = tmp_path / "sheet.csv"
    path.write_text("\n".join(lines), "utf-8")
    return read_table(path).stations


@pytest.mark.parametrize("language", [*HEADS])
@pytest.mark.parametrize("below", [(SYMBOLS, UNITS), (SYMBOLS.replace(";;Fr", "–;–;Fr"), UNITS)])
def test_symbols_below_words_say_nothing_more(tmp_path, language, below):
    over, head, names = HEADS[language]
    stations = read(tmp_path, over, head.format(*names), *below, ROWS)
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.text("bearing_designation").tolist() == ["6205-2Z", "6207/C3"]
    assert stations.number("radial_load").tolist() == [340, 410]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 35]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.4]
    assert stations.number("shaft_fillet_radius").tolist() == [0.6, 1]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [52, 72]
    assert stations.number("housing_seat_cylindricity").tolist() == [0.007, 0.006]
    assert stations.number("housing_fillet_radius").tolist() == [1, 0.6]


@pytest.mark.parametrize(
    "text",
    [
        "Position;Type;Diameter;Diameter;Abutment;Abutment\n;;d;D;da;Da\nA;6204;20;47;25.6;41.4\n",
        "Position;Front;Rear;Left;Right\n;Fr;Fa;d;D\nA;10;20;47;25.6\n",
        "Name;Front;Rear;Left;Right\n;mm;N;µm;kg\nA;10;20;47;25.6\n",
    ],
)
def test_symbols_that_tell_equal_words_apart_or_head_positions_stay(text):
    rows = [line.split(";") for line in text.splitlines()]
    grid = Grid("t.csv", None, [object_column([row[c] for row in rows]) for c in range(len(rows[0]))], np.arange(1, 4))
    assert without_symbols(grid, WORDS) is grid


def test_merged_cells_over_symbols_end_above_them(tmp_path):
    book = Workbook()
    page = book.active
    over, head, names = HEADS["en"]
    for line in (over, head.format(*names), SYMBOLS, UNITS, *ROWS.splitlines()):
        page.append([cell or None for cell in line.split(";")])
    page["A1"], page["A2"] = "Position", None
    page.merge_cells("A1:A3")
    page.merge_cells("D1:G1")
    page.merge_cells("H1:K1")
    book.save(tmp_path / "sheet.xlsx")
    stations = read_table(tmp_path / "sheet.xlsx").stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("housing_fillet_radius").tolist() == [1, 0.6]
