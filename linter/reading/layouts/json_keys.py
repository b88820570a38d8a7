"""Whose an object of a JSON document is: the keys that name its machine, its station or its part."""

from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache
from typing import Any

from linter.model.places import Place
from linter.model.stations import Problem
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.layouts.lost import is_value
from linter.reading.layouts.sides import is_use, side_of, within
from linter.reading.words.columns import heading_of
from linter.reading.words.dictionary import MOST_REMEMBERED
from linter.reading.words.headings import Words
from linter.reading.words.parts import concepts_said

#: Where a value stands in a document: keys and indices.
Path = tuple[str | int, ...]
#: Between the key of an object and a key in it, where both stand for the key of one record.
INNER = "\x1f"
#: Keys of the name of an object (common practice).
CALLED = (
    "name", "label", "title", "caption", "bezeichnung", "benennung", "titel", "nom", "libellé", "nombre", "nome",
    "denominazione", "denominación", "имя", "название", "наименование", "名称", "名前", "名",
)  # fmt: skip
#: Keys of what a document is made of, which say nothing of the values below them (common practice).
OF_DOCUMENT = frozenset((
    "parameters", "values", "machine", "data", "dimensions", "variables", "properties", "params", "props", "attributes",
    "attrs", "attr", "spec", "specs", "ends", "sides", "items", "rows", "records", "list", "entries", "elements",
    "components", "comps", "comp", "children", "fields", "details", "info", "main", "meta", "header", "body", "payload",
    "content", "general", "common", "locations", "places", "features", "characteristics", "parts", "pieces", "nodes",
    "node", "edges", "included", "geometry", "attribute", "eigenschaften", "merkmale", "parameter", "daten", "werte",
    "teile", "bauteile", "einzelteile", "komponenten", "kopf", "maße", "abmessungen", "angaben", "elemente",
    "geometrie", "attributs", "caractéristiques", "caracteristiques", "paramètres", "parametres", "données", "donnees",
    "valeurs", "pièces", "composants", "éléments", "cotes", "géométrie", "propriétés", "attributi", "caratteristiche",
    "parametri",
    "dati", "valori", "parti", "pezzi", "componenti", "elementi", "quote", "dimensioni", "geometria", "testata",
    "proprietà", "atributos", "características", "caracteristicas", "parámetros", "parametros", "datos", "valores",
    "piezas", "partes", "componentes", "elementos", "cotas", "dimensiones", "geometría", "propiedades", "feature",
    "атрибуты", "характеристики", "параметры", "данные", "значения", "детали", "части", "компоненты", "элементы",
    "размеры", "свойства", "геометрия", "属性", "特性", "参数", "数据", "数值", "零件", "零部件", "部件", "组件",
    "groups", "group", "sections", "section", "blocks", "block", "sets", "tables", "table", "objects", "gruppen",
    "gruppe", "abschnitte", "tabellen", "tabelle", "objekte", "groupes", "groupe", "tableaux", "tableau", "objets",
    "grupos", "grupo", "secciones", "tablas", "tabla", "objetos", "gruppi", "gruppo", "sezioni", "oggetti",
    "группы", "группа", "разделы", "таблицы", "таблица", "объекты", "分组", "列表", "对象", "グループ",
    "テーブル", "一覧",
    "尺寸", "几何", "パラメータ", "データ", "部品", "構成部品", "寸法", "要素", "仕様", "諸元", "特征", "形状",
))  # fmt: skip


@lru_cache(maxsize=MOST_REMEMBERED)
def bare(key: str) -> str:
    """A key without the namespace before a colon and the object around it."""
    return key.rpartition(INNER)[2].rpartition(":")[2].strip()


@lru_cache(maxsize=MOST_REMEMBERED)
def local(key: str) -> str:
    """A key in small letters, without the namespace before a colon and the object around it."""
    return bare(key).casefold()


#: Keys of the project that a machine belongs to, which names the machine where nothing else does.
_PROJECTS = frozenset(
    ("project", "projekt", "projet", "proyecto", "progetto", "проект", "项目", "プロジェクト", "案件", "order")
)
#: Keys of an assembly: the whole machine, or what holds a bearing in it (``узел: передний щит``).
_ASSEMBLIES = frozenset(
    ("assembly", "assy", "unit", "group", "baugruppe", "gruppe", "ensemble", "groupe", "assieme", "gruppo", "conjunto",
     "grupo", "узел", "сборка", "部件", "组件", "ユニット")
)  # fmt: skip


def _holds_bearing(key: str, text: str) -> bool:
    """Whether a key of an assembly names what holds a bearing or another part, and no machine."""
    of_part = bool(concepts_said(text) & {"housing", "bearing", "seat", "bore"}) or side_of(text) is not None
    return local(key) in _ASSEMBLIES and of_part


def names_place(key: str, words: Words) -> bool:
    """Whether a key is a position: by itself, or with the word for one before it (``Palier avant``); no seat."""
    if words.names.station(key):
        return True
    heading = words.heading(key)
    there = heading is not None and heading.parameter == "station" and heading.station != ""
    return there and not concepts_said(key) & {"seat", "bore", "shoulder", "fillet", "shaft"}


def part_key(nodes: Sequence[Any]) -> str:
    """The key that says of each object of a list of what part it is (shaft, housing, bearing), two of them at least."""
    objects = [node for node in nodes if isinstance(node, dict)]
    if len(objects) < 2 or len(objects) < len(nodes):
        return ""
    for key in dict.fromkeys(key for node in objects for key in node):
        texts = [text for node in objects if isinstance(text := "" if node.get(key) is None else node[key], str)]
        said = {text: side_of(text) for text in texts}
        other = [text for text, side in said.items() if side is None and text.strip()]
        several = len({side.side for side in said.values() if side}) > 1
        if len(texts) == len(objects) and several and all(map(is_use, other)):
            return key
    return ""


def key_text(node: dict[str, Any], wanted: str, words: Words) -> tuple[str, str]:
    """Key and text of the machine or station that an object names itself."""
    project = ("", "")
    for key, value in node.items():
        if isinstance(value, (str, int)) and not isinstance(value, bool):
            heading = heading_of(key, words.heading(key), (cell_text(value),), words)
            said = heading is not None and heading.parameter == wanted and heading.aspect == "value"
            said = said and not (wanted == "station" and heading is not None and heading.station)
            if said and not (wanted == "machine" and _holds_bearing(key, cell_text(value))):
                if local(key) not in _PROJECTS:
                    return key, cell_text(value)
                project = project if project[0] else (key, cell_text(value))
    return project


def stations_in(
    node: Any, path: tuple[str | int, ...], words: Words
) -> Iterator[tuple[str, list[str], tuple[str | int, ...]]]:
    """Station, names of parameters with a value, and place of every object below a node that names a station."""
    children = node.items() if isinstance(node, dict) else enumerate(node) if isinstance(node, list) else ()
    if isinstance(node, dict) and (station := key_text(node, "station", words)[1]):
        known = {key: words.heading(key) for key in node}
        names = [key for key, h in known.items() if h is not None and is_value(node[key], h.entry)]
        yield words.station(station), names, path
    for step, child in children:
        if isinstance(child, (dict, list)):
            yield from stations_in(child, (*path, step), words)


def stations_among(
    node: dict[str, Any], words: Words, is_quantity: Callable[[dict[str, Any]], bool]
) -> tuple[str, ...]:
    """Keys of an object that name stations (``DE``, ``NDE``) and hold what is stated of each; two at least.

    That is an object, or a list of records.
    """
    found = [
        key for key, value in node.items()
        if names_place(key, words) and ((isinstance(value, dict) and not is_quantity(value)) or _are_records(value))
    ]  # fmt: skip
    return tuple(found) if len(found) > 1 and not set(found) <= {"D", "B", "C"} else ()


def _are_records(value: Any) -> bool:
    """Whether a value is a list of lists of a name and a value at least."""
    rows = value if isinstance(value, list) else []
    return len(rows) > 1 and all(isinstance(row, list) and len(row) > 1 and isinstance(row[0], str) for row in rows)


def assumed_station(place: Place, key: str, station: str) -> Problem:
    """The assumption that a key is the name of the station, since it tells the objects of a list apart."""
    expected = "a key such as station"
    message = (
        f"{place}: {visible(key, 40)} is taken for the name of the station, {visible(station, 40)}, since it tells "
        f"the objects of the list apart; expected {expected}."
    )
    return Problem("assumption", None, "station", place, station, expected, message, "station-key")


def assumed_numbers(place: Place, level: str, count: int) -> Problem:
    """The assumption that the items of a list that nothing names are stations or machines in their order."""
    expected = f"a key such as {level} in each"
    message = (
        f"{place}: nothing names the {count} objects of this list, which state the same; each is taken for a {level}, "
        f"and its number for its name; expected {expected}."
    )
    return Problem("assumption", None, level, place, str(count), expected, message, "station-key")


def values_by_station(nodes: Sequence[Any], trail: Sequence[str], words: Words) -> tuple[str, str, tuple[str, ...]]:
    """Keys of the name and the part of the records of a list, and those that are stations and hold the value of each.

    Nothing where there are none. A record may hold its values in an object (``values: {DE: 25, NDE: 20}``); where no
    key says the part, the keys around the list may (``trail``).
    """
    objects = [node for node in nodes if isinstance(node, dict)]
    if len(objects) < 2 or len(objects) < len(nodes):
        return "", "", ()
    common = [key for key in objects[0] if all(key in node for node in objects)]
    stations = [
        key for key in common if names_place(bare(key), words) and not isinstance(objects[0][key], (dict, list))
    ]
    if len(stations) < 2:
        return "", "", ()
    part = part_key(objects)
    around = next((side for word in reversed(trail) if (side := side_of(word)) is not None), None)
    sides = [side_of(cell_text(node.get(part))) if part else around for node in objects]
    named = {
        key: [
            within(words, side, node[key])
            for node, side in zip(objects, sides, strict=True)
            if isinstance(node[key], str)
        ]
        for key in common
        if key not in (*stations, part)
    }
    known = {key: len({heading for heading in found if heading is not None}) for key, found in named.items()}
    name = max(known, key=lambda key: known[key], default="")
    return (name, part, tuple(stations)) if name and known[name] > 1 else ("", "", ())


def assumed_level(place: Place, key: str, level: str) -> Problem:
    """The assumption that a key is the name of a station or machine, since its siblings hold the same."""
    expected = f"a key such as {level}"
    message = (
        f"{place}: {visible(key, 40)} stands over the same values as the keys beside it; it is taken for the name of a "
        f"{level}; expected {expected}."
    )
    return Problem("assumption", None, level, place, key, expected, message, "station-key")


def letters_of_stations(node: dict[str, Any]) -> frozenset[str]:
    """Keys of one capital letter beside an ``A``: those of stations, and no symbols (``B``, ``D``)."""
    letters = frozenset(key for key in node if len(key) == 1 and key.isupper())
    return letters if "A" in letters and len(letters) > 1 else frozenset()
