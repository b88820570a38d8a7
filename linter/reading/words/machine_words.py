"""Words that head the name of a machine only where a table shows it: its sort, its size, its model.

``Model``, ``Frame size``, ``Pump type``, ``Ventilatorbaugröße``, ``Тип насоса``: a bearing has a model and a type too,
so that no list of names holds them. Words in the trade's languages: common practice.
"""

import re
from functools import lru_cache

from linter.reading.cells.signs import EASTERN
from linter.reading.cells.units import known_unit, split_quantity
from linter.reading.words.designations import designation_strength
from linter.reading.words.dictionary import MOST_REMEMBERED, word_key
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said, is_bearing

_LONGEST, _LONGEST_NAME = 40, 60
#: What is told of a machine: its model, sort, size, number.
_KINDS = (
    "model", "models", "type", "types", "size", "sizes", "series", "variant", "variants", "version", "frame",
    "frame size", "name", "designation", "code", "no", "number", "id", "tag", "unit", "mark", "model no", "model name",
    "model code", "model number", "type code", "type no", "tag no", "item no", "size code", "product code", "sku",
    "typ", "typen", "baugröße", "baugrösse", "größe", "grösse", "baureihe", "reihe", "ausführung", "variante", "modell",
    "bezeichnung", "nummer", "nr", "kennung", "bauart", "baugruppe", "typenbezeichnung", "modellbezeichnung",
    "modèle", "taille", "série", "variante", "désignation", "repère", "référence", "numéro", "gamme", "calibre",
    "modelo", "tamaño", "serie", "tipo", "versión", "designación", "número", "referencia", "talla", "carcasa",
    "modello", "grandezza", "taglia", "versione", "denominazione", "sigla", "numero", "esecuzione",
    "модель", "тип", "типоразмер", "исполнение", "габарит", "серия", "размер", "марка", "обозначение", "номер",
    "наименование", "модификация", "вариант",
    "型式", "型番", "機種", "モデル", "サイズ", "シリーズ", "形式", "品種", "枠番", "型号", "型號", "规格", "規格",
    "系列", "机座号", "机型", "型号规格", "规格型号", "编号", "名称", "尺寸", "番号",
)  # fmt: skip
#: Kinds that by themselves may tell anything: they need the machine beside them.
_OPEN = (
    "name", "designation", "code", "no", "number", "id", "mark", "bezeichnung", "nummer", "nr", "désignation",
    "référence", "repère", "numéro", "designación", "número", "referencia", "denominazione", "sigla", "numero",
    "обозначение", "номер", "наименование", "编号", "名称", "番号", "尺寸", "размер", "unit", "tag", "kennung",
    "baugruppe", "形式", "benennung", "denominación", "品名", "名称", "title", "titel", "titre", "título", "titolo",
    "название",
    "unit name", "name of unit", "item name", "assembly name", "assembly", "ensemble", "désignation de l'ensemble",
    "nom", "nombre", "nome", "conjunto", "gruppo", "название узла", "наименование узла", "装配名称", "アセンブリ名",
    "part", "item", "teil", "bauteil", "pièce", "pieza", "pezzo", "деталь", "изделие", "部品", "品目", "零件", "部件",
    "objekt", "gegenstand", "object", "objet", "objeto", "oggetto", "объект", "対象", "对象", "対象品", "对象名称",
    "denominacion", "artikel", "article", "articolo", "artículo", "articulo", "erzeugnis", "製品名", "产品名称",
    "описание", "description", "description of unit", "descripción", "descrizione", "libellé", "intitulé",
)  # fmt: skip
#: Machines with rolling bearings.
_MACHINES = (
    "machine", "motor", "pump", "fan", "blower", "spindle", "gearbox", "gear unit", "gear reducer", "reducer",
    "compressor", "turbine", "generator", "centrifuge", "mixer", "agitator", "mill", "crusher", "screen", "conveyor",
    "separator", "decanter", "turbocharger", "expander", "alternator", "starter", "drive", "winch", "cutter", "grinder",
    "saw", "drill", "lathe", "roller", "roll", "pulley", "wheel", "hub", "propeller", "gimbal", "actuator", "servo",
    "product", "equipment", "shredder", "granulator", "extruder", "chipper", "router", "exhauster", "impeller",
    "extractor", "stirrer", "vibrator", "winder",
    "maschine", "maschinen", "motoren", "pumpe", "pumpen", "ventilator", "ventilatoren", "lüfter", "gebläse", "spindel",
    "spindeln", "getriebe", "verdichter", "kompressor", "turbinen", "zentrifuge", "zentrifugen", "mischer", "mühle",
    "mühlen", "brecher", "rührwerk", "walze", "walzen", "lader", "antrieb", "antriebs", "produkt", "geräte", "gerät",
    "anlage", "anlagen", "separator", "rührer", "rüttler", "absauger",
    "moteur", "pompe", "ventilateur", "broche", "réducteur", "compresseur", "alternateur", "centrifugeuse", "broyeur",
    "mélangeur", "agitateur", "treuil", "soufflante", "produit", "appareil", "turbine",
    "extracteur", "vibreur",
    "bomba", "ventilador", "husillo", "reductor", "compresor", "turbina", "generador", "centrífuga", "molino",
    "mezclador", "agitador", "trituradora", "soplante", "máquina", "producto", "equipo",
    "extractor", "vibrador",
    "motore", "pompa", "ventilatore", "mandrino", "elettromandrino", "riduttore", "compressore", "generatore",
    "centrifuga", "mulino", "miscelatore", "agitatore", "soffiante", "macchina", "prodotto",
    "aspiratore", "aspiratrucioli", "vibratore",
    "двигателя", "двигатель", "электродвигателя", "насоса", "насос", "вентилятора", "вентилятор", "шпинделя",
    "шпиндель", "воздуходувка", "воздуходувки", "электрошпиндель",
    "редуктора", "редуктор", "компрессора", "компрессор", "турбины", "турбина", "генератора", "генератор", "мельницы",
    "дробилки", "центрифуги", "сепаратора", "машины", "машина", "станка", "изделия", "агрегата", "электрошпинделя",
    "モータ", "モーター", "ポンプ", "ファン", "送風機", "主軸", "スピンドル", "減速機", "圧縮機", "コンプレッサ",
    "発電機",
    "タービン", "遠心機", "機械", "製品", "装置", "ブロワ", "ユニット",
    "电机", "電機", "马达", "泵", "水泵", "风机", "電主軸", "电主轴", "主轴", "减速机", "减速器", "压缩机", "发电机",
    "汽轮机",
    "离心机", "机器", "产品", "设备", "机床", "鼓风机", "磨机", "破碎机", "电动机", "機組", "机组",
)  # fmt: skip
#: What is a part of a machine and none itself.
PARTS = frozenset(("shaft", "housing", "bearing", "seat", "shoulder", "sleeve", "nut", "seal", "closure"))
#: Words that are made for a machine by their ending (``levigatrice``, ``amoladora``, ``ponceuse``, ``搅拌机``).
_MADE = re.compile(r".{3,}(?:trice|trici|dora|doras|euse|euses)|.+[机機]")
_JOINTS = re.compile(r"[ _./:,()\[\]–—-]+|の")
_ARTICLES = frozenset(("of", "de", "du", "des", "del", "della", "di", "la", "le", "l", "d", "der", "des", "the"))


def _keys(words: tuple[str, ...]) -> frozenset[str]:
    return frozenset(map(word_key, words))


KIND_KEYS, _OPEN_KEYS, MACHINE_KEYS = _keys(_KINDS), _keys(_OPEN), _keys(_MACHINES)


@lru_cache(maxsize=MOST_REMEMBERED)
def names_machine(label: str) -> str:
    """How a heading can head names of machines, where its table shows that it does.

    ``both`` where it says a machine and its sort (``Pump type``), ``kind`` where it says a sort or size alone
    (``Model``), ``machine`` where it says a machine alone (``Pump``); or empty.
    """
    key = " ".join(piece for piece in _JOINTS.split(word_key(label)) if piece) if len(label) <= _LONGEST else ""
    if not key:
        return ""
    if key in KIND_KEYS:
        return "" if key in _OPEN_KEYS else "kind"
    if key in MACHINE_KEYS:
        return "machine"
    if " " not in key:
        return "both" if _is_compound(key) else ""
    pieces = [piece for piece in key.split(" ") if piece not in _ARTICLES]
    ways = ((" ".join(pieces[:k]), " ".join(pieces[k:])) for k in range(1, len(pieces)))
    said = any({one, two} & MACHINE_KEYS and {one, two} & KIND_KEYS for one, two in ways)
    return "both" if said else ""


def _is_compound(key: str) -> bool:
    """Whether a word is a machine and its kind in one (``Pumpentyp``, ``电机型号``)."""
    shortest = 1 if EASTERN.search(key) else 3
    ends = range(shortest, len(key) - 1)
    return any(key[:end].removesuffix("s") in MACHINE_KEYS and key[end:] in KIND_KEYS for end in ends)


def can_name_machine(label: str, value: str, words: Words, whole: str = "") -> bool:
    """Whether a value is the name of a machine by the word beside it, which no list of names holds.

    Where the row says to be of the machine (``whole``: *Machine*), the word need only be one together with that.

    Beside a word for a sort alone it is no bearing's, and beside a machine alone a name with letters and figures. What
    can be the name of anything (``Benennung``) is that of a machine where the value says one (``Motorspindel SP-34``).
    """
    said = names_machine(label) or ("open" if word_key(label.strip(" :.")) in _OPEN_KEYS and _is_machine(value) else "")
    if whole and words.says_machine(whole) and (joined := words.heading(f"{whole} {label}")) is not None:
        said = "kind" if joined.parameter == "machine" else said
    if not said or not value or len(value) > _LONGEST_NAME or words.group(value) or words.heading(value) is not None:
        return False
    letters, figures = any(map(str.isalpha, value)), any(map(str.isdigit, value))
    if said == "both":
        return letters or figures
    strength = designation_strength(value)
    if not letters or strength == "certain" or any(map(is_bearing, re.split(r"[\s\W]+", value))):
        return False
    return said in ("kind", "open") or (figures and known_unit(split_quantity(value)[1]) is None)


def says_machine(text: str) -> bool:
    """Whether one of the words of a text is one for a machine (``Blower SB-4``, ``Wuchtspindel``)."""
    keys = [machine for machine in MACHINE_KEYS if len(machine) > 1]
    pieces = (piece for piece in _JOINTS.split(word_key(text)) if piece)
    return any(_MADE.fullmatch(piece) or any(map(piece.endswith, keys)) for piece in pieces)


def _is_machine(value: str) -> bool:
    """Whether a name says a machine and its sort or number (``Lab centrifuge MH-87``), and no part of one."""
    pieces = [piece for piece in _JOINTS.split(word_key(value)) if piece]
    keys = [machine for machine in MACHINE_KEYS if len(machine) > 1]
    machines = [p for p in pieces if _MADE.fullmatch(p) or any(map(p.endswith, keys))]
    others = [p for p in pieces if p not in machines]
    return bool(machines and others) and any(map(str.isdigit, value)) and not concepts_said(" ".join(others)) & PARTS
