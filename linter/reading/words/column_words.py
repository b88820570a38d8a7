"""Headings that say too little by themselves, by what they may say; the cells below them decide.

Meanings in the trade's languages: common practice.
"""

from linter.reading.words.dictionary import word_key

_KEYS: dict[str, tuple[str, ...]] = {
    "bearing": (
        "bearing", "bearings", "brg", "lager", "wälzlager", "waelzlager", "kugellager", "roulement", "roulements",
        "cuscinetto", "rodamiento", "軸受", "ベアリング", "轴承", "подшипник", "ball bearing", "rolling bearing",
        "rillenkugellager", "deep groove ball bearing", "roulement à billes", "rodamiento de bolas",
        "cuscinetto a sfere", "玉軸受", "深溝玉軸受", "転がり軸受", "球轴承", "深沟球轴承", "滚动轴承",
        "шарикоподшипник", "подшипник качения",
    ),
    "designation": (
        "designation", "type", "typ", "p/n", "pn", "part no", "part number", "part", "model", "ref", "reference",
        "lager nr", "lagernr", "lagernummer", "lagertyp", "bezeichnung", "référence", "désignation", "denominación",
        "referencia", "sigla", "denominazione", "riferimento", "型番", "品番", "型式", "呼び番号", "型号", "代号",
        "呼び", "軸受呼び", "規格", "规格", "牌号", "品名", "品番号", "型式番号", "料号",
        "designazione", "designación", "kurzzeichen", "lagerkurzzeichen", "kurzbezeichnung",

        "обозначение", "тип", "bearing type", "brg type", "bearing no", "brg no", "bearing p/n", "brg p/n", "name",
        "item", "code", "artikel", "bearing part number", "bearing model", "type de roulement", "tipo", "modello",
        "тип подшипника", "модель подшипника", "марка подшипника", "tipo de rodamiento", "tipo rodamiento",
        "modelo de rodamiento", "tipo di cuscinetto", "tipo cuscinetto", "type roulement", "wälzlagertyp",
        "kugellagertyp", "軸受型式", "軸受の型式", "轴承类型", "轴承型式",
    ),
    "place": (
        "pos", "position", "location", "loc", "ref", "stelle", "ort", "emplacement", "repère", "ubicación", "pos no",
        "rif", "場所", "部位", "позиция", "where", "side", "seite", "côté", "lado", "lato", "положение", "поз", "место",
        "место установки", "расположение", "сторона", "einbauort", "lagerort", "lieu", "lugar", "ubicazione", "punto",
        "取付位置", "取付部位", "安装位置", "安装部位", "侧", "posiz", "posic", "poz", "posit", "empl", "ubic",
        "einbaustelle", "расп", "местоположение", "設置場所", "箇所",
    ),
    "clearance": (
        "clearance", "luft", "lagerspiel", "spiel", "jeu", "juego", "gioco", "すきま", "隙間", "内部すきま", "游隙",
        "зазор", "play", "internal clearance", "radial clearance", "jeu interne", "jeu radial", "juego interno",
        "juego radial", "gioco interno", "gioco radiale", "lagerluft", "radialluft", "ラジアル内部すきま", "径向游隙",
        "радиальный зазор",
    ),
    "precision": (
        "precision", "accuracy", "genauigkeit", "präzision", "précision", "precisión", "precisione", "精度", "精度等級",
        "精度等级", "точность", "class", "klasse", "classe", "clase", "tolerance class", "abec",
    ),
    "function": (
        "function", "bearing function", "role", "arrangement", "bearing arrangement", "bearing type", "type", "support",
        "funktion", "lagerfunktion", "lagerart", "lagerung", "anordnung", "fonction", "fonction du palier", "montage",
        "función", "funcion", "tipo de apoyo", "apoyo", "funzione", "tipo di supporto", "vincolo", "supporto",
        "機能", "役割", "支持", "支持方式", "支持形式", "功能", "作用", "支承", "支承方式", "支承形式", "固定方式",
        "исполнение опоры", "назначение опоры", "назначение", "функция", "роль", "тип опоры", "исполнение", "опора",
        "aufgabe", "rolle", "rôle", "rôle du palier", "papel", "cometido", "ruolo", "compito", "задача", "任务", "役目",
    ),
    "number": ("id", "no", "nr", "num", "number", "item", "#", "lfd nr", "№", "番号", "序号", "n°", "index"),
    "width": ("width", "breite", "largeur", "ancho", "anchura", "larghezza", "幅", "宽度", "ширина", "b"),
    "hole": ("穴径", "孔径", "轴承孔径", "軸承孔徑", "孔徑"),
    "seat": ("軸受座径", "轴承座径", "軸承座徑"),
    "bore": (
        "bore", "bohrung", "alésage", "foro", "agujero", "穴", "穴径", "内径", "孔", "孔径", "отверстие", "ø bore",
        "bore diameter", "bohrungsdurchmesser", "bore dia", "bore ø", "diamètre d'alésage", "alesaggio",
    ),
}  # fmt: skip
#: The words of each meaning as keys for comparing.
KEYS = {meaning: frozenset(map(word_key, words)) for meaning, words in _KEYS.items()}
