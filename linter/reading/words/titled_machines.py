"""Names of machines in titles without a label: ``Bearing sheet: Lab centrifuge LC-4``, ``离心泵CQG-25轴承配合表``.

A title names a machine where one of its parts is, without the words for the sheet and its matter around it, a machine
and its model, in the order of the language, and nothing else. Words in the trade's languages: common practice.
"""

import re

from linter.reading.cells.signs import EASTERN
from linter.reading.cells.units import known_unit, split_quantity
from linter.reading.words.designations import read_designation
from linter.reading.words.dictionary import word_key
from linter.reading.words.machine_words import KIND_KEYS, MACHINE_KEYS, PARTS
from linter.reading.words.parts import concepts_said

_LONGEST, _MOST_BEFORE, _MOST_BETWEEN = 100, 3, 3
_PARTS_OF_TITLE = re.compile(r"\s+[–—-]+\s+|\s*(?:[:：|，、;；()（）]|,(?!\d))\s*|\s*[/／]\s+|\s{2,}|\t")
#: A model: letters and figures, at most three pieces, no date and no year.
_MODEL = re.compile(r"(?=[^\d]*\d)[A-ZÄÖÜА-Я]{0,6}[ -]?\d[\w.,/-]*(?: [A-ZА-Я0-9][\w./-]{0,5})?(?: k[WV]A?)?")
_NO_MODEL = re.compile(
    r"(?:ISO|DIN|IEC|EN|VDI|API|ANSI|ASME|AMCA|NEMA|JIS|GB|ГОСТ|UNI|NF|BS|VDE)\b.*|(?:19|20)\d\d|\d{1,4}[./-]\d{1,2}[./-]\d{1,4}"
)
#: Units of drives that no value of a seat has.
_OF_DRIVES = ("V", "A", "VA", "kVA", "В", "А", "kV", "кВ", "PS", "HP", "hp", "л.с.")
#: Machines that by themselves may be anything.
_OPEN = frozenset(
    ("drive", "drives", "screen", "roll", "roller", "wheel", "hub", "product", "equipment", "unit", "router",
     "impeller", "propeller", "starter", "conveyor", "pulley", "antrieb", "antriebs", "produkt", "anlage", "anlagen",
     "walze", "walzen", "produit", "producto", "prodotto", "изделия", "製品", "装置", "ユニット", "产品", "设备")
)  # fmt: skip
#: Machines whose adjectives stand behind them (``pompa centrifuga CP-3``).
_BEFORE_THEIR_SORT = re.compile(
    r"moteur|pompe|ventilateur|broche|réducteur|compresseur|alternateur|centrifugeuse|broyeur|soufflante|bomba"
    r"|ventilador|husillo|reductor|compresor|turbina|molino|soplante|máquina|motore|pompa|ventilatore|mandrino|riduttore"
    r"|compressore|centrifuga|mulino|soffiante|macchina|[а-яё]+"
)
#: Words for the sheet, and for what a sheet of bearings and seats is about.
_MATTER = frozenset(
    word_key(word)
    for words in (
        "sheet list table data datasheet overview schedule record report summary bearing bearings fit fits seat seats",
        "arrangement parameters parameter design review drawing technical specification spec shaft and of for the to",
        "dimensions tolerances form rolling rotor with parts",
        "datenblatt liste tabelle übersicht blatt lagerung lagerungen lager lagersitze sitze passungen passung",
        "mit stückliste lagersitzen prüfmerkmale merkmale auslegungsdaten",
        "lagerpassungen wälzlager parameter lagerliste konstruktion für der die das des vom von zu zur zum und einer",
        "fiche liste tableau relevé feuille palier paliers roulement roulements portées portée ajustements ajustement",
        "plan de du des la le les l d pour et technique données",
        "distinta elenco scheda tabella foglio sede sedi cuscinetto cuscinetti accoppiamenti tolleranze dati tecnica",
        "di del della dei delle dello per e",
        "listado parámetros",
        "hoja ficha lista tabla rodamiento rodamientos asiento asientos ajuste ajustes cojinete cojinetes datos",
        "el los las para y",
        "таблица лист ведомость список карта посадок посадки посадка подшипник подшипников подшипники опор опоры узел",
        "подшипниковых подшипниковый узлов параметры параметров для и на",
    )
    for word in words.split()
)
_SHEETS = ("blatt", "liste", "tabelle", "übersicht", "sheet", "list", "passungen", "sitze", "lagerung")
_EASTERN_MATTER = re.compile(
    r"(?:の|用)?(?:轴承|軸受|滚动轴承|轴系|配合|嵌め合い|はめあい|はめ合い|公差|参数|设计|設計|数据|データ|座|部|尺寸|寸法|仕様|诸元|諸元)*"
    r"(?:一览表|一覧表|清单|明细表|汇总表|参数表|配合表|表|一覧|リスト|シート|書|单)|(?:的|の)?(?:轴承|軸受|配合|はめあい|参数)+"
)


def machine_in_title(text: str) -> str:
    """The name of the machine that a title without a label says; empty where it says none, or several.

    Returns
    -------
    str
        The machine and its model, as they stand in the title.
    """
    if len(text) > _LONGEST or not any(map(str.isdigit, text)):
        return ""
    found = {name for part in _PARTS_OF_TITLE.split(text) if (name := _machine_and_model(part or ""))}
    return found.pop() if len(found) == 1 else ""


def _machine_and_model(part: str) -> str:
    """A part of a title without the words around the machine it names; empty where it is no machine with its model."""
    if EASTERN.search(part):
        return _eastern(part)
    pieces = part.split()
    while pieces and _is_matter(pieces[0]):
        pieces = pieces[1:]
    while pieces and _is_matter(pieces[-1]):
        pieces = pieces[:-1]
    at = next((k for k, piece in enumerate(pieces) if _is_machine(piece)), None)
    if at is None or concepts_said(" ".join(p for k, p in enumerate(pieces) if k != at)) & PARTS:
        return ""
    before, behind = pieces[:at], pieces[at + 1 :]
    named = _is_model_before(before) if not behind else _is_sort_before(before) and _is_model_behind(pieces[at], behind)
    return " ".join(pieces) if named else ""


def _is_sort_before(before: list[str]) -> bool:
    return len(before) <= _MOST_BEFORE and all(map(_is_word, before))


def _is_model_before(before: list[str]) -> bool:
    """Whether words before a machine are its model and then its sort (``WG 8 side channel blower``)."""
    figures = [k for k, piece in enumerate(before) if any(map(str.isdigit, piece))]
    others = before[figures[-1] + 1 :] if figures else []
    return bool(figures) and _is_model(" ".join(before[: figures[-1] + 1])) and _is_sort_before(others)


def _is_model_behind(machine: str, behind: list[str]) -> bool:
    """Whether words behind a machine are its model, maybe with the word for one or its sort before that."""
    sorts = _BEFORE_THEIR_SORT.fullmatch(machine.casefold()) is not None
    for start in range(len(behind)):
        if _is_model(" ".join(behind[start:])):
            return True
        word = behind[start]
        if word_key(word) not in KIND_KEYS and not (sorts and start < _MOST_BETWEEN and _is_sort(word)):
            return False
    return False


def _eastern(part: str) -> str:
    """The same in signs: the machine's word stands beside its model, without a blank or with one."""
    text = part.strip()
    for piece in (text, *text.split()):
        core = _EASTERN_MATTER.sub("", piece) if _EASTERN_MATTER.search(piece) else piece
        named = re.fullmatch(
            r"(?P<first>[^\d\sA-Za-z]*)\s*(?P<model>[A-Za-z0-9][\w./-]*)\s*(?P<last>[^\d\sA-Za-z]*)", core.strip()
        )
        if named is None or bool(named["first"]) == bool(named["last"]) or not _is_model(named["model"]):
            continue
        machine = named["first"] or named["last"]
        if any(machine.endswith(word) for word in MACHINE_KEYS - _OPEN if EASTERN.search(word)):
            return core.strip()
    return ""


def is_matter(text: str) -> bool:
    """Whether a text says only that a sheet follows and what it is about (``Datenblatt Lagerung``)."""
    return EASTERN.search(text) is None and all(map(_is_matter, text.split()))


def _is_matter(word: str) -> bool:
    key = word_key(word.strip(".'’"))
    return key in _MATTER or (key.endswith(_SHEETS) and not _is_machine(word))


def _is_machine(word: str) -> bool:
    """Whether a word is a machine, alone or behind its sort (``Wirbelgebläse``)."""
    key = word_key(word)
    if key in _OPEN or len(key) < 3:
        return False
    return key in MACHINE_KEYS or any(key.endswith(machine) for machine in MACHINE_KEYS - _OPEN if len(machine) > 4)


def _is_word(piece: str) -> bool:
    return piece.replace("-", "").isalpha() and not _is_matter(piece)


def _is_sort(piece: str) -> bool:
    """Whether a word can say the sort of the machine before it; the small words between them can be any."""
    small = piece.casefold() in ("de", "à", "a", "di", "del", "da", "per", "en", "с", "для")
    return small or (_is_word(piece) and not piece.isupper())


def _is_model(text: str) -> bool:
    """Whether a text is the model of a machine: no quantity, date, year, and no bearing."""
    if not _MODEL.fullmatch(text) or _NO_MODEL.fullmatch(text) or read_designation(text).bore_diameter:
        return False
    unit = split_quantity(text)[1]
    return not (text[0].isdigit() and unit and (known_unit(unit) is not None or unit in _OF_DRIVES))
