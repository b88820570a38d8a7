"""Words of measured values and of what the design says beside them, folded and without case."""

import re
from collections.abc import Iterable

from linter.reading.cells.signs import EASTERN, caseless
from linter.reading.words.dictionary import CAMEL

#: Headings of a column of measured values (folded); those of verdicts are among the reader's words and are none.
MEASURED = frozenset(
    caseless(word)
    for word in (
        "measured", "measured value", "measurement", "actual", "actual value", "actual measurement", "meas.", "reading",
        "result", "results", "ist", "istwert", "istmaß", "istmass", "messwert", "messergebnis", "gemessen", "mesure",
        "mesuré", "valeur mesurée", "cote mesurée", "relevé", "medido", "valor medido", "medición", "misurato",
        "valore misurato", "misura rilevata", "измеренное значение", "измерено", "фактическое значение",
        "фактический размер", "факт", "実測値", "測定値", "実測", "測定結果", "实测值", "测量值", "实测", "测量结果",
    )
)  # fmt: skip
#: Headings of what the drawing states, beside a column of what was measured (common practice).
DRAWN = frozenset(
    caseless(word)
    for word in (
        "drawing", "per drawing", "as drawn", "drawing value", "drawing size", "print", "zeichnung", "laut zeichnung",
        "zeichnungsmaß", "zeichnungswert", "dessin", "plan", "cote plan", "valeur plan", "disegno", "a disegno",
        "quota disegno", "plano", "según plano", "cota plano", "чертёж", "чертеж", "по чертежу", "図面", "図面値",
        "図面寸法", "图纸", "图纸值", "图样", "图纸尺寸", "图纸要求",
    )
)  # fmt: skip
#: Words before or behind a position that say its values were found on a part, or are those of the design.
FOUND = (
    "as found", "as-found", "found", "as measured", "measured", "meas.", "actual", "actual value", "after", "before",
    "as received", "as built", "as-built", "ist", "ist-wert", "gemessen", "istwert", "istmaß", "befund", "vorgefunden",
    "messwert", "mesuré", "mesurée", "relevé", "relevée", "constaté", "réel", "réelle", "medido", "medida",
    "encontrado", "real", "misurato", "misurata", "rilevato", "rilevata", "effettivo", "измерено", "факт",
    "фактически", "фактическое", "фактический", "фактическая", "фактич.", "измеренный", "измеренная",
    "действительный", "действительная",
    "実測", "実測値", "測定", "測定値", "実寸", "実寸法", "实测", "实测值", "测量", "测量值",
)  # fmt: skip
DESIGNED = (
    "as designed", "as-designed", "designed", "design", "nominal", "specified", "spec", "spec.", "required", "req.",
    "requirement", "target", "per drawing", "drawing", "soll", "soll-wert", "sollwert", "sollmaß", "gefordert",
    "vorgabe", "nennwert", "zeichnung", "konstruktion", "nominale", "théorique", "plan", "prévu", "demandé", "demandée",
    "exigé", "exigée", "requis", "requise", "consigne", "spécifié", "teórico", "plano", "requerido", "requerida",
    "exigido", "especificado", "pedido", "teorico", "disegno", "richiesto", "richiesta", "prescritto", "previsto",
    "чертёж", "по чертежу", "номинал", "требуется", "требование", "требуемое", "задано", "設計", "設計値", "図面",
    "図面値", "要求", "要求値", "規格", "規格値", "指示値", "設定", "设计", "设计值", "图纸", "图纸值", "要求值",
    "规定", "规定值",
)  # fmt: skip
#: Words of the two that say something else in names of sizes: a time, the drawing, a size (``Medida asiento``).
_NOT_IN_NAMES = frozenset(
    ("after", "before", "found", "medida", "drawing", "design", "zeichnung", "konstruktion", "plan", "plano", "disegno",
     "чертёж", "図面", "图纸", "設計", "设计")
)  # fmt: skip
#: The same of values at which a part is worn out.
LIMITS = (
    "limit", "limits", "wear limit", "limit value", "reject limit", "scrap limit", "grenze", "grenzwert",
    "verschleißgrenze", "verschleissgrenze", "limite", "limite d'usure", "limite d’usure", "límite",
    "límite de desgaste", "limite di usura", "limite d'uso", "предел", "предел износа", "предельное", "限界",
    "摩耗限界", "限度", "磨损极限", "极限", "极限值", "报废极限",
)  # fmt: skip
#: Headings of the expanded uncertainty of each value.
UNCERTAINTY = frozenset(
    caseless(word)
    for word in (
        "uncertainty", "expanded uncertainty", "measurement uncertainty", "u", "u (k=2)", "u k=2", "messunsicherheit",
        "erweiterte messunsicherheit", "unsicherheit", "incertitude", "incertezza", "incertidumbre", "неопределенность",
        "不確かさ", "拡張不確かさ", "测量不确定度", "不确定度",
    )
)  # fmt: skip
#: Headings that tell one part from another.
PART = frozenset(
    caseless(word)
    for word in (
        "part", "part no.", "serial", "serial no.", "serial number", "s/n", "sn", "sample", "piece", "teil", "teil nr.",
        "seriennummer", "muster", "stück", "pièce", "échantillon", "muestra", "pieza", "pezzo", "campione", "образец",
        "サンプル", "試料", "製造番号", "样件", "序列号",
    )
)  # fmt: skip
#: What is measured on a bearing and a spring and is no parameter of a design, by the words of lists.
OF_PARTS = {
    "ring_bore": ("ring_bore", "ring bore", "bore of the inner ring", "inner ring bore", "bearing bore",
                  "bohrung innenring", "innenringbohrung", "lagerbohrung", "alésage bague intérieure", "内輪内径",
                  "内圈内径"),
    "ring_outside": ("ring_outside", "ring outside diameter", "outside diameter of the outer ring",
                     "outer ring outside diameter", "bearing outside diameter", "außendurchmesser außenring",
                     "lageraußendurchmesser", "diamètre extérieur bague extérieure", "外輪外径", "外圈外径"),
    "spring_force": ("spring_force", "spring force", "force of the spring", "federkraft", "force du ressort",
                     "ばね荷重", "弹簧力"),
}  # fmt: skip
BY_WORD = {caseless(word): name for name, words in OF_PARTS.items() for word in words}
UNITS = {"ring_bore": "mm", "ring_outside": "mm", "spring_force": "N"}
#: What a part was found to have states nothing of its design.
FOUND_REASON = "measured values; the design states what is reviewed"
_AROUND = " -–—_:,()[]/"

#: What stands in place of a new value where the old one remains (common practice).
UNCHANGED = frozenset(
    caseless(word)
    for word in (
        "no change", "unchanged", "not changed", "as before", "as is", "unverändert", "keine Änderung", "wie bisher",
        "bleibt", "inchangé", "inchangée", "sans changement", "sin cambio", "sin cambios", "sin modificar", "invariato",
        "nessuna modifica", "変更なし", "不变", "无变更", "无变化", "без изменений", "не меняется",
    )
)  # fmt: skip


def keys_of(words: Iterable[str]) -> tuple[str, ...]:
    """Words as :func:`without` wants them: without case, the longest first."""
    return tuple(sorted({caseless(word) for word in words}, key=lambda word: (-len(word), word)))


IN_NAMES = {
    "designed": keys_of(word for word in DESIGNED if word not in _NOT_IN_NAMES),
    "drawn": keys_of(word for word in DESIGNED if word in _NOT_IN_NAMES),
}


def _pattern(words: Iterable[str]) -> str:
    return "|".join(re.sub(r"\\?[ -]", r"[\\s_-]?", re.escape(word)) for word in sorted(words, key=len)[::-1])


_STATEMENTS = frozenset(keys_of((*FOUND, *DESIGNED)))
_FOUND_ALONE = frozenset(keys_of(FOUND))
_FOUND_SAID = re.compile(
    rf"(?<![^\W\d_])(?:{_pattern(w for w in FOUND if w not in _NOT_IN_NAMES and not EASTERN.match(w))}"
    rf"|(?<=[\s(_-])medida(?! nominal))(?![^\W\d_])|{_pattern(w for w in FOUND if EASTERN.match(w))}",
    re.IGNORECASE,
)


def is_statement(text: str) -> bool:
    """Whether a text is no more than a word for what was found or for what the design says."""
    return caseless(text).strip(_AROUND) in _STATEMENTS


def is_found(text: str) -> bool:
    """Whether a text is no more than a word for what was found on a part."""
    return caseless(text).strip(_AROUND) in _FOUND_ALONE


def without_found(text: str) -> str:
    """A name without the word that says its values were found on a part; empty where none stands in it."""
    text = CAMEL.sub(" ", text)
    rest, count = _FOUND_SAID.subn(" ", text)
    return re.sub(r"\(\s*\)|\[\s*\]|（\s*）|\s+", " ", rest).strip(_AROUND) if count == 1 else ""


def without(text: str, words: tuple[str, ...]) -> str:
    """A text without one of some words at its beginning or end; empty where none stands there, or nothing else."""
    text = text.strip(_AROUND)
    key = caseless(text)
    for word in words if len(key) == len(text) else ():
        if key.startswith(word) and (rest := text[len(word) :]).strip(_AROUND) and _is_apart(word, rest[0]):
            return rest.strip(_AROUND)
        if key.endswith(word) and (rest := text[: -len(word)]).strip(_AROUND) and _is_apart(word, rest[-1]):
            return rest.strip(_AROUND)
    return ""


def _is_apart(word: str, sign: str) -> bool:
    """Whether a word and the sign beside it are two words; Chinese and Japanese set no blanks."""
    return EASTERN.match(word) is not None or not sign.isalnum()
