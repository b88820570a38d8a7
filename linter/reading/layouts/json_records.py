"""What stands at one place of a JSON document, and which keys of its records hold the name, the value and the unit."""

import re
from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import Any

from attrs import define, evolve, field, frozen

from linter.model.vocabulary import Parameter
from linter.reading.cells.signs import caseless
from linter.reading.cells.units import conversion, known_unit
from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_keys import INNER, bare, local, part_key
from linter.reading.layouts.json_units import says_unit
from linter.reading.layouts.lost import is_value
from linter.reading.layouts.sides import side_of, within
from linter.reading.words.column_words import KEYS
from linter.reading.words.cuts import unit_behind
from linter.reading.words.dictionary import MOST_REMEMBERED, Version, dictionary, group_key, word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.measured_words import MEASURED

NAME_KEYS = ("name", "parameter", "key", "id", "symbol", "variable", "characteristic", "label")
#: Words for what a record is about, in its other languages too (common practice).
_NAMES = frozenset(map(word_key, (
    "attribute", "attr", "attribute name", "attr name", "param", "parameter name", "param name", "feature", "property",
    "prop", "field", "field name", "quantity", "what", "caption", "title", "term", "char", "merkmal", "merkmalname",
    "merkmalsname", "merkmalsbezeichnung", "eigenschaft", "kennwert", "größe", "kenngröße", "attribut", "feld",
    "bezeichnung", "benennung", "caractéristique", "libellé", "paramètre", "propriété", "grandeur", "champ", "intitulé",
    "nom", "attributo", "caratteristica", "parametro", "proprietà", "grandezza", "campo", "voce", "nome", "descrizione",
    "atributo", "característica", "parámetro", "propiedad", "magnitud", "concepto", "nombre", "descripción",
    "показатель", "параметр", "характеристика", "наименование", "признак", "свойство", "атрибут", "название", "имя",
    "参数名", "参数名称", "参数", "名称", "项目", "属性", "属性名", "特性", "特征", "字段", "特性名", "項目", "項目名",
    "特性値名", "パラメータ", "パラメータ名", "名前",
)))  # fmt: skip
CONTEXT = frozenset(
    ("machine", "station", "level", "place", "comment", "comments", "note", "notes", "description", "source", "type",
     "id", "no", "nr", "uid", "uuid", "guid", "index")
)  # fmt: skip
_ASPECTS = {
    "value": "value", "nominal": "value", "size": "value", "nominal_value": "value",
    "upper": "upper", "upper_deviation": "upper", "es": "upper", "plus": "upper", "upper_tol": "upper",
    "tol_plus": "upper", "tol_minus": "lower",
    "lower": "lower", "lower_deviation": "lower", "ei": "lower", "minus": "lower", "lower_tol": "lower",
    "up": "upper", "lo": "lower",
    "max": "max", "maximum": "max", "upper_limit": "max",
    "min": "min", "minimum": "min", "lower_limit": "min",
    "deviation_upper": "upper", "deviation_lower": "lower", "upper_tolerance": "upper", "lower_tolerance": "lower",
    "tolerance_upper": "upper", "tolerance_lower": "lower", "plus_tolerance": "upper", "minus_tolerance": "lower",
    "upper_dev": "upper", "lower_dev": "lower", "tol_upper": "upper", "tol_lower": "lower", "dev_upper": "upper",
    "dev_lower": "lower", "nominal_size": "value", "nominal_diameter": "value", "nom": "value", "max_limit": "max",
    "min_limit": "min", "max_size": "max", "min_size": "min", "iso_class": "tolerance", "iso_fit": "tolerance",
    "fit_class": "tolerance", "tol_class": "tolerance", "wert": "value", "nennmass": "value", "oberes_abmass": "upper",
    "unteres_abmass": "lower", "toleranzklasse": "tolerance", "passung": "tolerance", "toleranz": "tolerance",
    "val": "value", "valeur": "value", "valore": "value", "valor": "value", "値": "value", "数值": "value",
    "значение": "value",
    "class": "tolerance", "tolerance_class": "tolerance", "fit": "tolerance",
    "tolerance": "tolerance", "tol": "tolerance",
}  # fmt: skip


#: Keys of half the width of a tolerance (common practice).
_HALF = re.compile(r"±|\+/?-|\+-|plus[ _]?(?:/|or)?[ _]?minus|(?:tol[a-z]*[ _])?(?:sym[a-z]*|half[ _]width)")
#: Words for the nominal size (ISO 286-1 and its translations, from memory).
_NOMINAL = re.compile(r"nom|nenn|size|diam|基本|公称|呼び|номин")
#: What the words of a layout for a part of a value say of it.
_OF_GROUPS = {"VALUE": "value", "UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "tolerance"}


def is_aspect(key: str) -> bool:
    """Whether a key states a part of a value."""
    return bool(aspect_of(key)[0])


def aspect_of(key: str) -> tuple[str, str]:
    """What of a value a key states, and the unit that it carries (``nominal_mm``); empty where it states no part."""
    word = key.rpartition(INNER)[2].rpartition(":")[2].strip()
    if aspect := _ASPECTS.get(word.casefold(), "") or _ASPECTS.get(word_key(word).replace(" ", "_"), ""):
        return aspect, ""
    if version_of(key):
        return "value", ""
    if aspect := "half" if _HALF.fullmatch(word.casefold()) else _said(word):
        return aspect, ""
    rest, unit = unit_behind(word)
    return (_ASPECTS.get(word_key(rest).replace(" ", "_"), "") or _said(rest), unit) if unit else ("", "")


def is_nominal(key: str) -> bool:
    """Whether a key says the nominal size, and not only that a value stands there."""
    return aspect_of(key)[0] == "value" and _NOMINAL.match(word_key(bare(key))) is not None


def has_tolerance(node: Any) -> bool:
    """Whether an object holds the two deviations, the two limits or the class of a size, and nothing else."""
    said = {
        key: aspect_of(key)[0]
        for key in (node if isinstance(node, dict) else ())
        if local(key) not in CONTEXT and not says_unit(key)
    }
    whole = [{"upper", "lower"}, {"max", "min"}, {"tolerance"}, {"tolerance", "upper", "lower"}, {"half"}]
    return 0 < len(said) < 4 and set(said.values()) in whole


@lru_cache(maxsize=MOST_REMEMBERED)
def _said(word: str) -> str:
    """What of a value a word of a layout in any of the languages states (``scostamento superiore``, ``公差``)."""
    if caseless(word) in MEASURED:
        return ""
    groups = dictionary().group_words.get(group_key(word), ()) or dictionary().group_words.get(word_key(word), ())
    said = {_OF_GROUPS[group] for group in groups if group in _OF_GROUPS}
    return said.pop() if len(said) == 1 and "RESULT" not in groups else ""


_NONE = ("", "-", "–")
_MOST_IN_PAIR = 8  # keys of an object that holds one value
#: Keys that hold the size of a seat inside an object for it.
DIAMETERS = ("diameter", "dia", "d", "ø", "durchmesser", "diamètre", "diámetro", "diametro", "直径", "径")
#: Keys that hold the name of an object of a list where no key says machine or station.
CALLED = ("name", "label", "title", "caption", "id")


def opened(nodes: Sequence[Any]) -> list[Any]:
    """Records whose one object of plain values (``"content": {"amount": 4, "unit": "mm"}``) is made part of them."""
    return [_opened(node) if isinstance(node, dict) else node for node in nodes]


def _opened(record: dict[str, Any]) -> dict[str, Any]:
    inner = [key for key, value in record.items() if isinstance(value, (dict, list))]
    held = record[inner[0]] if len(inner) == 1 else None
    if not isinstance(held, dict) or any(isinstance(value, (dict, list)) for value in held.values()):
        return record
    outer = {key: value for key, value in record.items() if key != inner[0]}
    return outer | {f"{inner[0]}{INNER}{key}": value for key, value in held.items()}


@define(eq=False)
class Pile:
    """Cells of one parameter, aspect and unit, as they are met."""

    heading: Heading
    label: str
    cells: list[Any] = field(factory=list)
    rows: list[int] = field(factory=list)
    pointers: list[str] = field(factory=list)


@define(frozen=True)
class Here:
    """What is known at a node: its machine and station, the keys of the objects around it, the unit they state."""

    machine: str = ""
    station: str = ""
    trail: tuple[str, ...] = ()
    unit: str = ""

    def at(self, machine: str, station: str) -> "Here":
        """Another machine or station at the same place of the document."""
        return evolve(self, machine=machine, station=station)

    def below(self, word: str) -> "Here":
        """The same below a key, or below one that says nothing."""
        return evolve(self, trail=(*self.trail, word)) if word else self


def version_of(key: str) -> Version:
    """Which of several statements a key of an object says its value is: an ``override`` beside the ``value``."""
    return dictionary().versions.get(word_key(key), "")


@frozen
class Shape:
    """Keys of the records of a list.

    Attributes
    ----------
    name, value, unit, station, part : str
        Keys of name, value, unit, station and part (shaft, housing, bearing) where the words of the keys do not say it;
        ``name`` always where there is one.
    """

    name: str = ""
    value: str = ""
    unit: str = ""
    station: str = ""
    part: str = ""

    def aspect_of(self, key: str) -> tuple[str, str]:
        """What of a value a key states, and the unit that it carries."""
        return ("value", "") if key == self.value and key else aspect_of(key)

    def is_unit(self, key: str) -> bool:
        """Whether a key holds the unit."""
        return (key == self.unit and key != "") or says_unit(key)


def record_shape(nodes: Sequence[Any], words: Words) -> Shape | None:
    """Keys of name, value and unit of records, by their words or else by what stands there; None for no records.

    By what stands there, a list of two objects at least is needed: the names are known words, the values look like
    values, and no other key could be either.
    """
    records = [node for node in nodes if isinstance(node, dict)]
    if not records or len(records) < len(nodes):
        return None
    flat = [node for node in records if not any(isinstance(value, (dict, list)) for value in node.values())]
    first = next((node for node in flat if any(map(is_aspect, node))), {})
    if name := _called(first):
        several = sum(name in node and any(map(is_aspect, node)) for node in flat)
        shape = Shape(name, part=part_key(flat), station=_place_key(flat, name, words))
        return shape if 2 * several > len(flat) else None
    return _by_content(flat, words) if 1 < len(flat) == len(records) else None


def _called(record: dict[str, Any]) -> str:
    """The key of a record whose word says that it holds the name of what the record is about; or empty."""
    named = {local(key): key for key in record}
    name = next((named[word] for word in NAME_KEYS if word in named and isinstance(record[named[word]], str)), "")
    return name or next((k for k in record if word_key(bare(k)) in _NAMES and isinstance(record[k], str)), "")


def unit_pairs(document: Any) -> dict[frozenset[str], Shape]:
    """Keys of value and unit of the objects that hold both (``{"q": 12, "eu": "mm"}``), by all the keys of each.

    The keys are told by what stands there: two objects at least have them, every text under one key is a unit, numbers
    stand under one other, and no other key could hold the value.
    """
    alike: dict[frozenset[str], list[dict[str, Any]]] = {}
    level = [document]
    while level:
        inner = [c for node in level for c in (node.values() if isinstance(node, dict) else node)]
        level = [child for child in inner if isinstance(child, (dict, list))]
        for node in level:
            if isinstance(node, dict) and 1 < len(node) <= _MOST_IN_PAIR:
                alike.setdefault(frozenset(node), []).append(node)
    found = {keys: _pair(keys, nodes) for keys, nodes in alike.items() if len(nodes) > 1}
    return {keys: shape for keys, shape in found.items() if shape is not None}


def _pair(keys: frozenset[str], nodes: Sequence[dict[str, Any]]) -> Shape | None:
    """The keys of value and unit of objects with the same keys, or None."""
    if any(isinstance(part, (dict, list)) for node in nodes for part in node.values()):
        return None
    texts = {key: [text for node in nodes if (text := cell_text(node[key])) not in _NONE] for key in sorted(keys)}
    units = [key for key in texts if len(texts[key]) > 1 and all(known_unit(text) is not None for text in texts[key])]
    values = [
        key for key in texts
        if key not in units and 2 * sum(any(map(str.isdigit, text)) for text in texts[key]) >= len(nodes)
    ]  # fmt: skip
    stated = [key for key in values if aspect_of(key)[0] == "value"] or [key for key in values if not aspect_of(key)[0]]
    one = len(units) == 1 and len(stated) == 1
    return Shape(value=stated[0], unit=units[0]) if one else None


def pair_of(value: dict[str, Any], pairs: Mapping[frozenset[str], Shape]) -> Shape | None:
    """Keys of value and unit of an object, as others like it show; the unit may be left out."""
    keys = frozenset(value)
    if keys in pairs or not keys:
        return pairs.get(keys)
    return next((pair for pair in pairs.values() if pair.value and keys == {pair.value}), None)


def value_key(value: dict[str, Any], pairs: Mapping[frozenset[str], Shape]) -> str:
    """The key of an object that holds its value, empty where none or several may."""
    if (pair := pair_of(value, pairs)) is not None:
        return pair.value
    keys = [key for key in value if aspect_of(key)[0] == "value"]
    return keys[0] if len(keys) == 1 else ""


def all_shapes(document: Any, words: Words) -> dict[frozenset[str], Shape]:
    """Shapes of all lists of records of a document by their keys, so that a list of one record is known by its like."""
    shapes: dict[frozenset[str], Shape] = {}
    level = [document]
    while level:
        for node in level:
            if isinstance(node, list) and len(node) > 1:
                for nodes in (node, opened(node)):
                    if shape := record_shape(nodes, words):
                        shapes.update((frozenset(record), shape) for record in nodes)
        level = [
            child
            for node in level
            for child in (node.values() if isinstance(node, dict) else node)
            if isinstance(child, (dict, list))
        ]
    return shapes


_LONGEST_NAME = 100


def names_in(document: Any) -> list[str]:
    """Texts and keys of a document that may be names of parameters."""
    names: dict[str, None] = {}
    level = [document]
    while level:
        for node in level:
            rows = node if isinstance(node, list) else [node]
            for row in rows:
                texts = row.values() if isinstance(row, dict) else row if isinstance(row, list) else ()
                names.update((t, None) for t in texts if isinstance(t, str) and 3 < len(t) <= _LONGEST_NAME)
                if isinstance(row, dict):
                    names.update((key, None) for key, v in row.items() if not isinstance(v, list))
        inner = [c for node in level for c in (node.values() if isinstance(node, dict) else node)]
        level = [child for child in inner if isinstance(child, (dict, list))]
    return list(names)


def _by_content(records: Sequence[dict[str, Any]], words: Words) -> Shape | None:
    """The shape of records whose keys say nothing that is known."""
    every = list(dict.fromkeys(key for record in records for key in record))
    keys = [key for key in every if all(key in record for record in records)]
    if any((h := words.heading(key)) and h.entry.level == "station" and h.parameter != "station" for key in keys):
        return None  # objects of parameters, not records
    name = _name_key(records, keys, words)
    if not name:
        return None
    part = part_key(records)
    entries = [h.entry if h is not None else None for h in _named(records, name, part, words)]
    units = [key for key in every if key != name and _are_units(records, key, entries)]
    value = _value_key(records, [key for key in keys if key not in (name, part, *units)], entries)
    if not value:
        return None
    place = _place_key(records, name, words, (value, part, *units))
    return Shape(name, value, units[0] if len(units) == 1 else "", place, part)


def _place_key(records: Sequence[dict[str, Any]], name: str, words: Words, other: Sequence[str] = ()) -> str:
    """The only key that holds positions by its word and its texts; empty where none or several do."""
    keys = [key for key in records[0] if key not in (name, *other) and all(key in record for record in records)]
    places = [key for key in keys if _are_stations(records, key, words)]
    return places[0] if len(places) == 1 else ""


def _named(records: Sequence[dict[str, Any]], key: str, part: str, words: Words) -> list[Heading | None]:
    """What the texts under a key name, each below the part that its record says it is of."""
    sides = [side_of(cell_text(record[part])) if part else None for record in records]
    return [within(words, side, cell_text(record[key])) for side, record in zip(sides, records, strict=True)]


def _value_key(records: Sequence[dict[str, Any]], keys: Sequence[str], entries: Sequence[Parameter | None]) -> str:
    """The only key that holds values, or the only one of them whose word says so; empty where that is not clear."""
    values = [k for k in keys if aspect_of(k)[0] in ("", "value") and _are_values(records, k, entries)]
    said = [key for key in values if aspect_of(key)[0] == "value" or local(key).endswith(("value", "val", "wert"))]
    one = said if len(said) == 1 else values
    return one[0] if len(one) == 1 else ""


def _name_key(records: Sequence[dict[str, Any]], keys: Sequence[str], words: Words) -> str:
    """The key that holds most names that are known: two at least, and not the same in every record."""
    texts = {key: [cell_text(record[key]) for record in records] for key in keys}
    part = part_key(records)
    keys = [key for key in keys if key != part and not all(words.names.station(text) for text in texts[key])]
    known = {key: [h for h in _named(records, key, part, words) if h is not None] for key in keys}
    several = [key for key in keys if len({*known[key]}) > 1 and len({*texts[key]}) > 1]
    return max(several, key=lambda key: len(known[key]), default="")


def _are_units(records: Sequence[dict[str, Any]], key: str, entries: Sequence[Parameter | None]) -> bool:
    """Whether every text that is filled is a unit, and one of what its record names."""
    filled = [(text, e) for r, e in zip(records, entries, strict=True) if (text := cell_text(r.get(key))) not in _NONE]
    return bool(filled) and all(
        known_unit(text) is not None and (e is None or not e.unit or conversion(text, e.unit) is not None)
        for text, e in filled
    )


def _are_stations(records: Sequence[dict[str, Any]], key: str, words: Words) -> bool:
    """Whether a key whose word says position or number holds words that come again and again: no running number."""
    if "CHAR-ID" not in words.groups(key) and word_key(key) not in KEYS["place"]:
        return False
    texts = [text for record in records if (text := cell_text(record[key]))]
    return len(texts) >= 2 * len(set(texts)) > 0 and not any(any(map(str.isdigit, text)) for text in texts)


def _are_values(records: Sequence[dict[str, Any]], key: str, entries: Sequence[Parameter | None]) -> bool:
    """Whether a key holds values of the named parameters: of most of those that are numbers or choices, or of texts."""
    asked = [(record[key], entry) for record, entry in zip(records, entries, strict=True) if entry is not None]
    asked = [(cell, entry) for cell, entry in asked if entry.kind != "text" and cell_text(cell)]
    numbers = [int(text) for record in records if (text := cell_text(record[key])).isdigit()]
    running = len(numbers) == len(records) and numbers == list(range(numbers[0], numbers[0] + len(numbers)))
    return bool(asked) and not running and 2 * sum(is_value(cell, entry) for cell, entry in asked) > len(asked)


def is_record(node: Any, shape: Shape) -> bool:
    """Whether an object of a list is a record of a shape."""
    return (
        isinstance(node, dict)
        and isinstance(node.get(shape.name), str)
        and any(shape.aspect_of(key)[0] for key in node)
        and not any(isinstance(part, (dict, list)) for part in node.values())
    )
