"""Which keys of records and objects of a JSON document hold name, value, unit, position and part."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

from attrs import frozen

from linter.model.vocabulary import Parameter
from linter.reading.cells.units import conversion, known_unit
from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_keys import INNER, bare, local, part_key
from linter.reading.layouts.json_records import aspect_of, has_tolerance, is_aspect, says_size
from linter.reading.layouts.json_things import is_other_thing
from linter.reading.layouts.json_units import says_unit
from linter.reading.layouts.lost import is_value
from linter.reading.layouts.sides import side_of, within
from linter.reading.words.column_words import KEYS
from linter.reading.words.dictionary import plain_spellings, word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

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
#: Words for the name of a record that are words for which bearing it is elsewhere.
_DESIGNATIONS = frozenset(
    map(word_key, ("designation", "désignation", "denominación", "denominazione", "обозначение", "名称"))
)
_NAMES, _DESIGNATIONS = (
    names | {spelling for name in names for spelling in plain_spellings(name)}  # caracteristica
    for names in (_NAMES, _DESIGNATIONS)
)
#: Keys of what a value is worked out from, in dumps of models (common practice).
_EXPRESSIONS = frozenset(
    ("expr", "expression", "formula", "equation", "ausdruck", "formel", "espressione", "expresión", "выражение",
     "формула", "表达式", "公式", "式")
)  # fmt: skip
_NONE = ("", "-", "–")


#: A number with its unit or without one, which is no name (``31 mm``).
_AMOUNT = re.compile(r"[-+]?\d+(?:[.,]\d+)?\s*\D{0,6}")
_LOOKED_AT = 60
#: What a text says of a part at a position, or of a thing beside it.
_OF_A_PART = frozenset(("shaft", "housing", "seat", "bore", "shoulder", "fillet", "spring", "nut", "closure"))
_MOST_IN_PAIR = 8  # keys of an object that holds one value


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
        if key == self.name:
            return "", ""  # nom
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
    first = next((node for node in flat if _states_part(node)), {})
    if name := _name_of(first, flat, words):
        several = sum(name in node and _states_part(node) for node in flat)
        value = "" if any(aspect_of(key)[0] == "value" for node in flat for key in node) else _size_key(flat)
        shape = Shape(name, value, part=part_key(flat), station=_place_key(flat, name, words))
        return shape if 2 * several > len(flat) else None
    return _by_content(flat, words) if 1 < len(flat) == len(records) else None


def _states_part(record: Mapping[str, Any]) -> bool:
    """Whether a key of a record states a part of a value; ``nom`` over a text is a name in French."""
    named = {key for key, text in record.items() if local(key) == "nom" and not any(map(str.isdigit, cell_text(text)))}
    return any(key not in named and (is_aspect(key) or local(key) in _EXPRESSIONS) for key in record)


def _name_of(record: dict[str, Any], records: Sequence[dict[str, Any]], words: Words) -> str:
    """The key of records whose word says that it holds the name of what the record is about; or empty.

    Of several the one that holds most names that are known (``id: "D1", feature: "shaft", attribute: "diameter"``).
    """
    called = [*dict.fromkeys(filter(None, _called(record)))]
    if len(called) < 2:
        return next(iter(called), "")
    part = part_key(records)
    alike = [r for r in records[:_LOOKED_AT] if all(isinstance(r.get(key), str) for key in called)]
    known = {key: len({*_named(alike, key, part, words)} - {None}) for key in called if key != part}
    return max(known, key=lambda key: known[key])


def _called(record: dict[str, Any]) -> list[str]:
    """The keys of a record whose word says that they hold the name of what the record is about, the surest first."""
    named = {local(key): key for key in record}
    texts = {key for key, text in record.items() if isinstance(text, str) and any(map(str.isalpha, text))}
    found = [named[word] for word in NAME_KEYS if named.get(word) in texts]
    found += [key for key in record if key in texts and word_key(bare(key)) in _NAMES]
    if found:
        return found
    designations = (key for key in record if key in texts and word_key(bare(key)) in _DESIGNATIONS)
    return [key for key in designations if not any(map(str.isdigit, record[key]))][:1]


def _size_key(records: Sequence[dict[str, Any]]) -> str:
    """The key of records that holds sizes by its word, or expressions, where none says value; or empty."""
    keys = [key for node in records for key in node]
    return next((key for key in keys if says_size(local(key)) or local(key) in _EXPRESSIONS), "")


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


def states_parts(value: dict[str, Any]) -> bool:
    """Whether an object states parts of one value; a list of objects is none, whatever its key says."""
    return any(
        has_tolerance(part) or (aspect_of(key)[0] != "" and not _are_objects(part)) for key, part in value.items()
    )


def _are_objects(value: Any) -> bool:
    return isinstance(value, list) and any(isinstance(item, dict) for item in value)


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
    values = [key for record in records[:1] for key in record if key != name and aspect_of(key)[0] == "value"]
    keys = [key for key in keys if [key] != values]
    places = [key for key in keys if _are_stations(records, key, name, words)]
    return places[0] if len(places) == 1 else ""


def _named(records: Sequence[dict[str, Any]], key: str, part: str, words: Words) -> list[Heading | None]:
    """What the texts under a key name, each below the part that its record says it is of."""
    sides = [side_of(cell_text(record.get(part))) if part else None for record in records]
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
    keys = [key for key in keys if not all(map(_AMOUNT.fullmatch, texts[key]))]
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


def _is_station(text: str, words: Words) -> bool:
    """Whether a text is a position, and no part at one (``Shaft A``) or name of a value (``width B``)."""
    if words.names.station(text):
        return True
    heading = words.heading(text)
    named = heading is not None and heading.parameter != "station"
    return bool(words.station_said(text)) and not named and not concepts_said(text) & _OF_A_PART


def _is_thing(text: str, words: Words) -> bool:
    """Whether a text is a thing beside the positions, and no name of a value."""
    return words.heading(text) is None and not words.groups(text) and is_other_thing(text, words)


def _state_machine(records: Sequence[dict[str, Any]], key: str, name: str, others: set[str], words: Words) -> bool:
    """Whether all that records of some objects name and that is known is of the whole machine, and something is."""
    named = (words.heading(cell_text(record[name])) for record in records if cell_text(record[key]) in others)
    levels = {heading.entry.level for heading in named if heading is not None}
    return levels == {"machine"}


def _are_stations(records: Sequence[dict[str, Any]], key: str, name: str, words: Words) -> bool:
    """Whether a key holds positions: words that come again and again below a word for position, no running number.

    Below any word they are known positions, two at least, and words for the machine (``group: DE``), what states values
    of the machine alone (``object: Winder``, its speed), or another thing (``Impeller``).
    """
    texts = [text for record in records if (text := cell_text(record[key]))]
    if "CHAR-ID" not in words.groups(key) and word_key(key) not in KEYS["place"]:
        known = {text for text in texts if _is_station(text, words)}
        others = {text for text in {*texts} - known if not (words.says_machine(text) or _is_thing(text, words))}
        whole = len(known) > 1 and len(texts) == len(records) > len(known)
        return whole and (not others or _state_machine(records, key, name, others, words))
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
