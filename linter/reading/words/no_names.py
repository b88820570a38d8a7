"""Words that name no machine and no bearing position where they stand as one: sums of rows, running states, changes."""

import re
from collections.abc import Iterable, Sequence
from typing import cast

from linter.reading.cells.signs import caseless
from linter.reading.words.dictionary import Version, dictionary, word_key

#: What a row or column of figures worked out of the others is named (common practice).
_SUMS = frozenset(
    caseless(word)
    for word in (
        "total", "totals", "subtotal", "sum", "mean", "average", "avg", "avg.", "median", "range", "std dev",
        "standard deviation", "mean value", "average value", "summe", "gesamtsumme", "zwischensumme", "mittel",
        "mittelwert", "durchschnitt", "spannweite", "standardabweichung", "somme", "total général", "moyenne",
        "étendue", "écart type", "écart-type", "suma", "totales", "promedio", "media", "valor medio",
        "desviación típica",
        "totale", "somma", "valore medio", "scarto tipo", "итого", "всего", "сумма", "среднее", "среднее значение",
        "合計", "小計", "平均", "平均値", "標準偏差", "合计", "小计", "总计", "平均值", "标准差", "標準差",
    )
)  # fmt: skip
#: How a machine runs: what is stated of it there holds for one of several states.
_STATES = frozenset(
    caseless(word)
    for word in (
        "maximum", "minimum", "max", "max.", "min", "min.", "rated", "nominal", "rated load", "rated duty", "start",
        "start-up", "startup", "starting", "test", "test run", "trial run", "overload", "idle", "idling", "part load",
        "full load", "no load", "emergency", "normal", "normal operation", "maximal", "minimal", "nennbetrieb",
        "nennlast", "nennpunkt", "anlauf", "anfahren", "probelauf", "prüflauf", "überlast", "leerlauf", "teillast",
        "volllast", "normalbetrieb", "notbetrieb", "maxi", "mini", "nominale", "service nominal", "démarrage", "essai",
        "surcharge", "ralenti", "marche à vide", "pleine charge", "charge partielle", "máximo", "mínimo", "arranque",
        "ensayo", "prueba", "sobrecarga", "ralentí", "en vacío", "plena carga", "massimo", "minimo", "avviamento",
        "prova", "sovraccarico", "a vuoto", "pieno carico", "carico parziale", "максимум", "минимум", "макс.", "мин.",
        "номинальный", "номинальный режим", "пуск", "испытание", "испытания", "перегрузка", "холостой ход",
        "最大", "最小",
        "最高", "最低", "定格", "定格運転", "起動", "始動", "試運転", "過負荷", "無負荷", "アイドル", "全負荷", "额定",
        "额定工况",
        "启动", "起动", "试运行", "试车", "过载", "空载", "满载", "怠速",
    )
)  # fmt: skip
_CASE = re.compile(
    r"(?:load case|duty point|lastfall|betriebspunkt|cas de charge|caso de carga|caso di carico|工况)[ _]*\w{0,3}"
)
#: What holds before and after a change, by words that alone may say another thing (``avant``: in front).
_BEFORE = frozenset(
    caseless(word)
    for word in (
        "before", "current", "vorher", "bisher", "avant", "actuel", "antes", "anterior", "prima", "attuale", "до",
        "старое", "改前", "変更前",
    )
)  # fmt: skip
_AFTER = frozenset(
    caseless(word) for word in ("after", "nachher", "künftig", "après", "después", "dopo", "после", "改后", "変更後")
)
_REVISION = re.compile(
    r"(?:rev|rev\.|revision|révision|revisión|revisione|indice|ind\.|index|stand|issue|ред\.|рев\.|版本|改訂|版)"
    r"[ .:_-]*([a-z]|\d{1,2})"
)
_SPARES = frozenset(
    caseless(word)
    for word in (
        "spare", "spares", "spare part", "spare bearing", "ersatz", "ersatzteil", "ersatzlager", "reserve", "rechange",
        "pièce de rechange", "roulement de rechange", "repuesto", "recambio", "ricambio", "cuscinetto di ricambio",
        "запасной", "запасной подшипник", "запчасть", "резерв", "予備", "予備品", "予備軸受", "备件", "备用",
        "备用轴承",
    )
)  # fmt: skip


def is_sum(text: str) -> bool:
    """Whether a text names a sum, a mean or another figure of the rows or columns beside it."""
    return caseless(text).strip(" :.") in _SUMS


def is_state(text: str) -> bool:
    """Whether a text names how a machine runs, or one of several cases of its loads."""
    key = caseless(text).strip(" :")
    return key in _STATES or _CASE.fullmatch(key) is not None


def is_spare(text: str) -> bool:
    """Whether a text names a spare part."""
    return caseless(text).strip(" :.") in _SPARES


def versions_said(texts: Sequence[str]) -> list[Version]:
    """Which texts name what held before a change and which what holds after it: by words, in pairs, by revisions."""
    keys = [caseless(text).strip(" :") for text in texts]
    said: list[Version] = [dictionary().versions.get(word_key(text), "") for text in texts]
    before, after = [{k for k, key in enumerate(keys) if key in words} for words in (_BEFORE, _AFTER)]
    known = {k for k, version in enumerate(said) if version}
    for of_word, others, version in ((before, after | known, "older"), (after, before | known, "newer")):
        for k in of_word if len(of_word) == 1 and others - of_word else ():
            said[k] = cast(Version, version)
    revisions = [(found[1].zfill(2), k) for k, key in enumerate(keys) if (found := _REVISION.fullmatch(key))]
    if len({mark for mark, _ in revisions}) == len(revisions) > 1 and len({m.isdigit() for m, _ in revisions}) == 1:
        for _, k in revisions:
            said[k] = "older"
        said[max(revisions)[1]] = "newer"
    return said


def are_changes(names: Iterable[str]) -> frozenset[str]:
    """Names that say what held before a change or holds after it, where two of them stand among the names."""
    names = list(dict.fromkeys(names))
    changes = [name for name, version in zip(names, versions_said(names), strict=True) if version]
    return frozenset(changes if len(changes) > 1 else ())
