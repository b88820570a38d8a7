"""What the outer objects of a JSON document say of the whole: machine, drawing number, revision.

``{"document": {"number": "...", "rev": "..."}, "item": "..."}``: words that say nothing by themselves do in a header.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from attrs import field, frozen

from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_keys import OF_DOCUMENT, Path, bare
from linter.reading.words.designations import designation_strength
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import can_name_machine
from linter.reading.words.parts import concepts_said

# Words of a header in eight languages (common practice).
_OBJECTS = frozenset((
    "document", "doc", "drawing", "item", "object", "part", "product", "article", "assembly", "revision",
    "project", "header", "head", "title", "metadata", "identity", "identification", "dokument", "zeichnung",
    "artikel", "teil", "erzeugnis", "produkt", "objekt", "baugruppe", "stammdaten", "projekt", "plan", "produit",
    "pièce", "ensemble", "entête", "en-tête", "projet", "documento", "disegno", "articolo", "prodotto", "oggetto",
    "assieme", "progetto", "intestazione", "plano", "dibujo", "artículo", "producto", "pieza", "conjunto",
    "encabezado", "proyecto", "чертёж", "чертеж", "документ", "изделие", "проект", "шапка", "产品", "图纸", "文件",
    "machine", "maschine", "maquina", "máquina", "macchina", "машина", "機械", "机器", "设备", "equipo", "gerät",
    "项目", "表头", "图面", "図面", "製品", "文書", "品目", "案件",
))  # fmt: skip
_OF_ITEMS = "document|doc|drawing|dwg|item|part|product|article|artikel|teile?|sach|material|objekt|dokument|produkt"
_NUMBER = re.compile(
    rf"(?:(?:{_OF_ITEMS})[ ]?(?:id|number|no|num|nr|nummer|code))"
    r"|(?:num[eé]ro|n[o°]|code|r[eé]f[eé]rence)(?: d)? (?:article|document|pièce|plan)"
    r"|codice(?: (?:articolo|disegno|documento|prodotto))?|c[oó]digo(?: (?:de )?(?:art[ií]culo|plano|pieza|producto))?"
    r"|обозначение(?: (?:изделия|документа))?|шифр|код изделия|物料编码|物料号|料号|编号|代号|品番|部品番号|図面番号"
    r"|品目コード"
)
_NUMBER_IN_OBJECT = re.compile(
    r"id|number|no|num|nr|nummer|code|num[eé]ro|codice|c[oó]digo|обозначение|номер|шифр|编号|号|代号|番号"
)
_REVISION = re.compile(
    rf"(?:(?:{_OF_ITEMS}) )?(?:rev(?:ision)?|issue|index|version|indice)(?: (?:id|no|nr|number|code))?"
)
#: Keys of the machine's name, the surest first.
_CALLED = tuple(
    frozenset(words.split("|"))
    for words in (
        "assy|assembly|item|model|product|baugruppe|erzeugnis|modell|gerät|ensemble|modèle|produit|appareil|assieme|"
        "modello|prodotto|apparecchio|ensamble|ensamblaje|ensamblado|modelo|producto|equipo|сборка|узел|модель|агрегат|"
        "产品|机型|装配|总成|機種|機名|製品|組立品",
        "name|title|bezeichnung|benennung|titel|nom|désignation|designation|intitulé|nome|denominazione|nombre|"
        "denominación|denominacion|имя|наименование|название|名称|品名|产品名|名前|製品名",
        "description|beschreibung|descrizione|descripción|описание|描述|説明",
    )
)
_ITEMS = frozenset(("item", "product", "produit", "prodotto", "producto", "产品", "製品"))
#: A shaft that is the whole machine (``Spindle S12``), common practice.
_SPINDLE = re.compile(
    r"\b(?:\w*spind(?:le|el)s?|electrobroche|broche|(?:elettro)?mandrino|husillo|(?:электро)?шпиндель)\b"
    r"|(?:电?主轴|スピンドル|主軸)",
    re.IGNORECASE,
)
_DEEPEST, _LONGEST = 3, 80


@frozen
class Header:
    """What the outer objects of a document say.

    Attributes
    ----------
    fields : dict of path to Heading
        Places of values that words in a header name.
    machines : dict of path to str
        The machine that an object states by them.
    """

    fields: dict[Path, Heading] = field(factory=dict)
    machines: dict[Path, str] = field(factory=dict)

    def records(self, node: dict[str, Any], path: Path) -> list[dict[str, Any]]:
        """An object as one that may be a record; none where a key of it says machine, drawing or revision."""
        return [] if any((*path, key) in self.fields for key in node) else [node]


def header_of(document: Any, words: Words) -> Header:
    """The fields of the outer objects of a document whose words say machine, drawing or revision there only."""
    outer = [*_outer(document, (), "")]
    texts = [
        ((*path, key), key, of, value) for path, of, node in outer for key, value in node.items() if _is_text(value)
    ]
    named = {at: words.heading(key) for at, key, _, _ in texts}
    stated = {heading.parameter for heading in named.values() if heading is not None}
    found: dict[Path, Heading] = {}
    for at, key, of, value in texts:
        said = _plain(key)
        known = named[at] is not None and said != "id"
        if not known and _is_number(said, of, cell_text(value)) and "drawing_number" not in stated:
            found[at] = Heading("drawing_number")
            stated.add("drawing_number")
        elif not known and _REVISION.fullmatch(said) and "drawing_revision" not in stated:
            found[at] = Heading("drawing_revision")
            stated.add("drawing_revision")
    if "machine" in stated or _names_machine(document, words, 0):
        return Header(found)
    if (called := _called([text for text in texts if text[0] not in found], words)) is not None:
        at, value = called
        return Header({**found, at: Heading("machine")}, {(): cell_text(value).strip()})
    return Header(found)


def _called(texts: Sequence[tuple[Path, str, str, Any]], words: Words) -> tuple[Path, Any] | None:
    """Place and name of the machine among texts of a header: behind a word that calls one, or may where it is one."""
    for called in _CALLED:
        for at, key, _, value in texts:
            if (said := _plain(key)) in called and _is_name(value, said in _ITEMS):
                return at, value
    able = [
        (at, value)
        for at, key, _, value in texts
        if words.heading(key) is None and can_name_machine(key, cell_text(value), words)
    ]
    return able[0] if len(able) == 1 else None


def _outer(node: Any, path: Path, of: str) -> Iterator[tuple[Path, str, Mapping[str, Any]]]:
    """The outermost object and those in it for a document or an item; a list of one is passed."""
    while isinstance(node, list) and len(node) == 1:
        node, path = node[0], (*path, 0)
    if not isinstance(node, dict) or len(path) > _DEEPEST:
        return
    yield path, of, node
    for key, value in node.items():
        said = _plain(key)
        if said in _OBJECTS or said in OF_DOCUMENT or said == "value" or _REVISION.fullmatch(said):
            yield from _outer(value, (*path, key), said if said in _OBJECTS else of)


def _plain(key: str) -> str:
    """A key in small letters with blanks between its words; one in Latin letters is cut at its capitals too."""
    return word_key(bare(key)) if key.isascii() else re.sub(r"[_\s-]+", " ", bare(key)).casefold()


def _is_text(value: Any) -> bool:
    return isinstance(value, (str, int)) and not isinstance(value, bool) and cell_text(value).strip() != ""


def is_item_number(label: str, text: str) -> bool:
    """Whether a label is a word for the number of a drawing or an item, and a text may be one."""
    return _is_number(_plain(label), "", text)


def _is_number(said: str, of: str, text: str) -> bool:
    """Whether a key is a word for the number of a drawing or item, by itself or in an object for it."""
    fits = any(map(str.isdigit, text)) and len(text) <= _LONGEST
    return fits and (
        _NUMBER.fullmatch(said) is not None or (of != "" and _NUMBER_IN_OBJECT.fullmatch(said) is not None)
    )


def _is_name(value: Any, of_item: bool) -> bool:
    """Whether a text may name a machine, no part of one and no bearing; a code alone is the number of an item."""
    text = value.strip() if isinstance(value, str) else ""
    if of_item and any(map(str.isdigit, text)) and not re.search(r"[^\W\d_]{2} |[^\W\d_][^\W\d_A-Z]", text):
        return False
    of_part = concepts_said(_SPINDLE.sub("", text)) & {"shaft", "housing", "seat", "bearing", "bore"}
    return (
        1 < len(text) <= _LONGEST
        and any(map(str.isalpha, text))
        and not of_part
        and designation_strength(text) != "certain"
    )


def _names_machine(node: Any, words: Words, depth: int) -> bool:
    """Whether something in the upper part of a document names the machine by a word of its own."""
    if depth > _DEEPEST:
        return False
    if isinstance(node, list):
        return any(_names_machine(child, words, depth + 1) for child in node[:200] if isinstance(child, (dict, list)))
    for key, value in node.items() if isinstance(node, dict) else ():
        texts = [key, *([value] if isinstance(value, str) and len(value) <= _LONGEST else [])]
        if not isinstance(value, (dict, list)) and any(_is_machine(text, words) for text in texts):
            return True
    inner = (value for value in node.values() if isinstance(value, (dict, list))) if isinstance(node, dict) else ()
    return any(_names_machine(value, words, depth + 1) for value in inner)


def _is_machine(text: str, words: Words) -> bool:
    heading = words.heading(text)
    return heading is not None and heading.parameter == "machine"
