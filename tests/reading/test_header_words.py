"""Every usual heading word of eight languages stands for its part of a table, in both orientations (trade usage)."""

from pathlib import Path

import numpy as np
import pytest

from linter.reading import read_table
from linter.reading.cells.signs import is_figure
from linter.reading.words.dictionary import dictionary
from linter.reading.words.names import Names

# Groups as the tables name them: UPPER and LOWER hold deviations, MAX and MIN limits, ACTUAL measured values.
WORDS = {
    "NAME": "Name|Parameter|Variable|Symbol|Dim|Designation|Item|Feature|Bezeichnung|Benennung|Maß|Merkmal|Nom"
    "|Paramètre"
    "|Désignation|Cote|Nombre|Parámetro|Cota|Nome|Parametro|Quota|Имя|Параметр|Обозначение|Размер|名称|変数名|記号|項目|寸法名"
    "|参数|参数名|符号|尺寸|项目|Parameter_Name",
    "VALUE": "Value|Nominal|Basic|Target|Size|Wert|Nennmaß|Sollwert|Valeur|Cote nominale|Valor|Valore|Nominale|Значение"
    "|Номинал|値|基準寸法|図示サイズ|公称|值|数值|公称尺寸|基本尺寸|名义值|Nominal_Value",
    "ACTUAL": "Actual|Istwert",
    "UNIT": "Unit|Units|UOM|Unit/Type|Einheit|Unité|Unidad|Unità|Ед. изм.|Единица|単位|单位",
    "EXPR": "Expression|Equation|Formula|Ausdruck|Formel|Gleichung|Formule|Équation|Expresión|Fórmula"
    "|Espressione|Выражение"
    "|Формула|式|計算式|表达式|公式|方程式",
    "UPPER": "Upper|Upper Tol|+Tol|ES|es|oberes Abmaß|ob. Abm.|OT|Écart supérieur|Tol. sup.|Scost. superiore"
    "|Верхнее отклонение|上の許容差|上偏差|上公差",
    "LOWER": "Lower|Lower Tol|-Tol|EI|ei|unteres Abmaß|UT|Écart inférieur|Tol. inf.|Scost. inferiore|Нижнее отклонение"
    "|下の許容差|下偏差|下公差",
    "MAX": "USL|Max|Größtmaß|Höchstmaß|Maxi|Máx|上限|最大|Max_Limit",
    "MIN": "LSL|Min|Kleinstmaß|Mindestmaß|Mini|Mín|下限|最小|Min_Limit",
    "CLASS": "Fit|Tol Class|Tolerance|IT|Passung|Toleranzklasse|Toleranzfeld|Ajustement|Classe|Ajuste|Clase"
    "|Accoppiamento"
    "|Посадка|Квалитет|Поле допуска|はめあい|公差域クラス|等級|配合|公差带|公差等级",
    "CHAR-ID": "Char No|Balloon|Bubble|Item|Pos|Pos.|Prüfmerkmal-Nr.|Stempel-Nr.|Repère|N° carac.|N.º|N. car."
    "|№ п/п|Поз.|番号"
    "|風船番号|序号|气泡号|特性编号",
    "DATUM": "Datum|DRF|Ref|Bezug|Référence spécifiée|Referencia|Riferimento|База|データム|基准",
    "NOTE": "Comment|Comments|Notes|Remark|Description|Kommentar|Bemerkung|Beschreibung|Commentaire|Remarque"
    "|Comentario|Nota"
    "|Commento|Примечание|備考|コメント|注記|备注|注释|说明|Favorite|Source|Linked Feature",
}
ALL = [(group, word) for group, words in WORDS.items() for word in words.split("|")]
_GROUP_OF = {"ACTUAL": "VALUE"}


@pytest.fixture
def read(tmp_path: Path):
    def reader(*rows: tuple[str, ...]):
        path = tmp_path / "table.csv"
        path.write_text("\n".join("\t".join(row) for row in rows), encoding="utf-8")
        return read_table(path)

    return reader


@pytest.mark.parametrize(("group", "word"), ALL)
def test_a_word_belongs_to_its_group_however_it_is_written(group: str, word: str) -> None:
    names = Names.built_in()
    for spelled in (word, f" {word}\u00a0", word.upper() if word.lower() not in ("es", "ei") else word):
        if spelled == "MAß":
            continue
        assert _GROUP_OF.get(group, group) in names.groups(spelled), spelled


@pytest.mark.parametrize(("group", "word"), ALL)
def test_a_long_table_with_the_word_in_its_header(read, group: str, word: str) -> None:
    head = {"CHAR-ID": "#", "NAME": "Name", "VALUE": "Value", "UNIT": "Unit"}
    cells = {"CHAR-ID": "1", "NAME": "Shaft seat diameter A", "VALUE": "7.5", "UNIT": "mm"}
    extra = {"EXPR": "d1 * 3", "UPPER": "+0.006", "LOWER": "+0.001", "MAX": "7.506", "MIN": "7.501", "CLASS": "k5",
             "DATUM": "A-B", "NOTE": "ground"}  # fmt: skip
    partner = {
        "UPPER": ("LOWER", "Lower Tol"),
        "LOWER": ("UPPER", "Upper Tol"),
        "MAX": ("MIN", "LSL"),
        "MIN": ("MAX", "USL"),
    }
    if group in extra:
        head[group], cells[group] = word, extra[group]
        if group in partner:
            other, name = partner[group]
            head[other], cells[other] = name, extra[other]
    elif group == "ACTUAL":
        head["VALUE"] = word
    else:
        head[group] = word
    reading = read(tuple(head.values()), tuple(cells[key] for key in head))
    assert [p.message for p in reading.stations.problems] == []
    assert list(reading.stations.text("station")) == ["A"]
    size = reading.stations.size("shaft_seat_diameter")
    assert size.nominal[0] == 7.5
    if group in ("UPPER", "LOWER", "MAX", "MIN"):
        assert (size.lower[0], size.upper[0]) == pytest.approx((0.001, 0.006))
    elif group == "CLASS":
        assert size.tolerance_class[0] == "k5"
    else:
        assert np.isnan(size.upper[0])


@pytest.mark.parametrize(
    ("group", "word"), [(g, w) for g, w in ALL if g in ("UPPER", "LOWER", "MAX", "MIN", "CLASS", "UNIT")]
)
def test_a_wide_table_with_the_word_behind_a_size(read, group: str, word: str) -> None:
    extra = {"UPPER": "+0.006", "LOWER": "+0.001", "MAX": "7.506", "MIN": "7.501", "CLASS": "k5", "UNIT": "mm"}
    partner = {
        "UPPER": ("LOWER", "Lower Tol"),
        "LOWER": ("UPPER", "Upper Tol"),
        "MAX": ("MIN", "LSL"),
        "MIN": ("MAX", "USL"),
    }
    head, cells = ["Machine", "Station", "Shaft seat diameter [mm]"], ["M", "A", "7.5"]
    if group == "UNIT":
        head[2] = "Shaft seat diameter"
    head.append(word)
    cells.append(extra[group])
    if group in partner:
        head.append(partner[group][1])
        cells.append(extra[partner[group][0]])
    reading = read(tuple(head), tuple(cells))
    assert [p.message for p in reading.stations.problems] == []
    size = reading.stations.size("shaft_seat_diameter")
    assert size.nominal[0] == 7.5
    if group in partner:
        assert (size.lower[0], size.upper[0]) == pytest.approx((0.001, 0.006))
    elif group == "CLASS":
        assert size.tolerance_class[0] == "k5"


def test_no_word_of_a_heading_is_a_number_with_a_decimal_sign():
    """Such numbers are not looked up among the words."""
    words = dictionary()
    known = [*words.groups, *("".join(key) for key in words.group_words), *words.versions]
    assert len(known) > 1000 and not any(map(is_figure, known))
    assert all(is_figure(text) for text in ("12.5", "-0,013", "+1.0")) and not any(map(is_figure, ("6204", "12.5 k5")))
