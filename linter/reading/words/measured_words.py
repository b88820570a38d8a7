"""Words of lists of measured values, folded and without case."""

from linter.reading.cells.signs import caseless

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
    "фактически", "фактическое", "実測", "実測値", "測定", "測定値", "实测", "实测值", "测量", "测量值",
)  # fmt: skip
DESIGNED = (
    "as designed", "as-designed", "designed", "design", "nominal", "specified", "spec", "spec.", "required", "req.",
    "requirement", "target", "per drawing", "drawing", "soll", "soll-wert", "sollwert", "sollmaß", "gefordert",
    "vorgabe", "nennwert", "zeichnung", "konstruktion", "nominale", "théorique", "plan", "prévu", "demandé", "demandée",
    "exigé", "exigée", "requis", "requise", "consigne", "spécifié", "teórico", "plano", "requerido", "requerida",
    "exigido", "especificado", "pedido", "teorico", "disegno", "richiesto", "richiesta", "prescritto", "previsto",
    "чертёж", "по чертежу", "номинал", "требуется", "требование", "требуемое", "задано", "設計", "設計値", "図面",
    "図面値", "要求", "要求値", "規格", "規格値", "設定", "设计", "设计值", "图纸", "图纸值", "要求值", "规定",
    "规定值",
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
