"""Tables that stand in a JSON document as lists: headings and rows, rows alone, or a list for each column."""

from typing import Any

from linter.reading.cells.units import known_unit
from linter.reading.layouts.json_keys import Path, local
from linter.reading.layouts.json_units import says_unit
from linter.reading.words.headings import Words

#: Keys of a list of stations beside lists of their values, and how many of those there are at least.
_STATIONS = ("stations", "positions", "bearings", "station", "position", "locations", "seats", "places")
_FEWEST_COLUMNS = 2
_DEEPEST_TABLE = 4
#: Columns that a list of names and values has.
_OF_LISTS = ("NAME", "VALUE", "UNIT")
#: Keys of the headings and of the rows of a table that stands as lists, in eight languages (common practice).
_HEADS = frozenset((
    "columns", "cols", "header", "headers", "head", "headings", "fields", "column_names", "colnames", "spalten",
    "spaltennamen", "kopf", "kopfzeile", "felder", "colonnes", "en-tête", "en-têtes", "entête", "entetes", "champs",
    "columnas", "encabezado", "encabezados", "cabecera", "campos", "colonne", "intestazione", "intestazioni", "campi",
    "столбцы", "колонки", "заголовки", "заголовок", "шапка", "поля", "列", "列名", "表头", "字段", "見出し", "項目",
))  # fmt: skip
_ROWS = frozenset((
    "rows", "data", "values", "records", "body", "lines", "zeilen", "daten", "werte", "datensätze", "lignes", "données",
    "donnees", "valeurs", "filas", "datos", "valores", "registros", "righe", "dati", "valori", "строки", "данные",
    "значения", "записи", "行", "数据", "数值", "记录", "データ", "値",
))  # fmt: skip
#: Keys of the heading of a column that is an object, the surest first.
_TITLES = (
    ("title", "label", "header", "headername", "header_name", "caption", "display_name", "displayname", "heading",
     "titel", "überschrift", "bezeichnung", "intitulé", "libellé", "título", "etiqueta", "titolo", "etichetta",
     "заголовок", "标题", "見出し"),
    ("name", "nom", "nombre", "nome", "имя", "название", "наименование", "名称", "名前"),
    ("field", "key", "id", "accessor", "column", "col", "spalte", "feld", "colonne", "columna", "colonna", "字段"),
)  # fmt: skip


def _is_headed(rows: list[list[Any]], words: Words) -> bool:
    """Whether the first of some rows heads them, and none names the parameters down a column instead."""
    if len({group for text in rows[0] for group in words.groups(f"{text}") if group in _OF_LISTS}) > 1:
        return True  # Part | Name | Unit | DE | NDE
    return _known(rows[0], words) >= max(_known([row[0] for row in rows[1:]], words), 1) or not _known(
        [row[0] for row in rows], words
    )


def _known(texts: list[Any], words: Words) -> int:
    return sum(isinstance(t, str) and (words.heading(t) is not None or bool(words.groups(t))) for t in texts)


def rows_of(node: Any, at: Path, origin: dict[Path, Path], words: Words) -> Any:
    """A table that stands as lists (headings and rows, rows alone, or a list for each column) as a list of objects.

    Parameters
    ----------
    node : object
        The node of the document that may be one.
    at : path
        Its place.
    origin : dict of path to path
        Gets the path in the file of what is moved.
    words : Words
        The names that are understood.

    Returns
    -------
    object or None
        The list, or the object with it in place of the rows where more stands there; None where it is no table.
    """
    if isinstance(node, list):
        return (
            _objects(node[0], node[1:], (*at, 1), at, origin) if _is_table(node) and _is_headed(node, words) else None
        )
    if not isinstance(node, dict):
        return None
    heads = next((key for key in node if local(key) in _HEADS and isinstance(node[key], list)), "")
    names = _titles(node[heads]) if heads else []
    found = _below_heads(node, heads, names, at, origin) if names else None
    found = _of_column_objects(node, heads, names, at, origin) if names and found is None else found
    return found or _of_columns(node, at, origin) or _of_stations(node, at, origin, words)


def _below_heads(node: dict[str, Any], heads: str, names: list[str], at: Path, origin: dict[Path, Path]) -> Any:
    """The rows of an object that has their headings too, or None."""
    rows = next((key for key in node if key != heads and local(key) in _ROWS and isinstance(node[key], list)), None)
    cells = _cells(node[rows], node[heads], len(names)) if rows is not None else []
    if rows is None or not cells:
        return None
    units = next((key for key in node if says_unit(key) and _are_units(node[key], len(names))), None)
    names = _with_units(names, node[units]) if units else names
    rest = {key: value for key, value in node.items() if key not in (heads, rows, units)}
    place = (*at, rows) if rest else at
    stated = [[(n, *cell) for n, cell in zip(names, row, strict=True) if cell[1]] for row in cells]
    for k, row in enumerate(stated):
        origin.update({(*place, k, name): (*at, rows, k, *step) for name, _, step in row})
    found = [{name: value for name, value, _ in row} for row in stated]
    return {**rest, rows: found} if rest else found


def _titles(heads: list[Any]) -> list[str]:
    """The different headings that a list of texts, or of objects with a text each, holds; none for another list."""
    found = heads
    if all(isinstance(head, dict) for head in heads):
        found = []
        for words in _TITLES:
            keys = [key for key in (heads[0] if heads else ()) if local(key) in words]
            texts = [head.get(keys[0]) if keys else None for head in heads]
            if keys and all(isinstance(text, str) and text.strip() for text in texts):
                found = _with_units([f"{text}" for text in texts], [_unit(head) for head in heads])
                break
    different = all(isinstance(head, str) and head for head in found) and len(set(found)) == len(found) > 1
    return [f"{head}" for head in found] if different else []


def _unit(head: dict[str, Any]) -> str:
    unit = next((value for key, value in head.items() if says_unit(key)), None)
    return unit if isinstance(unit, str) and known_unit(unit) is not None else ""


def _cells(rows: list[Any], heads: list[Any], count: int) -> list[list[tuple[Any, Path]]]:
    """The cells of each row with their steps from it, one of each heading; none for rows of another form.

    A row is a list, an object with a list of them beside its number, or an object by the names of the columns. A cell
    may be an object that holds one value. A cell that does not stand has no steps.
    """
    found = []
    for row in rows:
        inner: Any = row
        steps: Path = ()
        if isinstance(row, dict):
            held = [key for key, value in row.items() if isinstance(value, list)]
            if len(held) == 1:
                inner, steps = row[held[0]], (held[0],)
        if isinstance(inner, list) and len(inner) == count:
            cells = [_cell(cell, (*steps, k)) for k, cell in enumerate(inner)]
        elif isinstance(row, dict) and (keys := _keys(rows, heads)):
            cells = [_cell(row[key], (key,)) if key in row else (None, ()) for key in keys]
        else:
            return []
        if any(isinstance(cell, (dict, list)) for cell, _ in cells):
            return []
        found.append(cells)
    return found


def _cell(cell: Any, at: Path) -> tuple[Any, Path]:
    if isinstance(cell, dict) and len(cell) == 1:
        key = next(iter(cell))
        return cell[key], (*at, key)
    return cell, at


def _keys(rows: list[Any], heads: list[Any]) -> list[str]:
    """The key of each column in rows that are objects, as the objects of the columns say; none for others."""
    used = {key for row in rows if isinstance(row, dict) for key in row}
    for key in heads[0] if heads and isinstance(heads[0], dict) else ():
        texts = [head.get(key) for head in heads if isinstance(head, dict)]
        if all(isinstance(text, str) for text in texts) and len({*texts}) == len(heads) and used <= {*texts}:
            return [f"{text}" for text in texts]
    return []


def _of_column_objects(node: dict[str, Any], heads: str, names: list[str], at: Path, origin: dict[Path, Path]) -> Any:
    """The rows of a table whose columns are objects of a name and a list of values, or None."""
    columns = node[heads]
    if not all(isinstance(column, dict) for column in columns):
        return None
    held = [[key for key, value in column.items() if isinstance(value, list)] for column in columns]
    if any(len(keys) != 1 for keys in held):
        return None
    lists = [column[keys[0]] for column, keys in zip(columns, held, strict=True)]
    count = len(lists[0])
    if count == 0 or any(len(values) != count for values in lists):
        return None
    if any(isinstance(value, (dict, list)) for values in lists for value in values):
        return None
    rest = {key: value for key, value in node.items() if key != heads}
    place = (*at, heads) if rest else at
    origin.update({
        (*place, k, name): (*at, heads, c, held[c][0], k) for k in range(count) for c, name in enumerate(names)
    })  # fmt: skip
    found = [{name: values[k] for name, values in zip(names, lists, strict=True)} for k in range(count)]
    return {**rest, heads: found} if rest else found


def _are_units(value: Any, count: int) -> bool:
    """Whether a list holds a unit or nothing for each of some columns."""
    return (
        isinstance(value, list)
        and len(value) == count
        and all(
            text is None or (isinstance(text, str) and (not text.strip("- ") or known_unit(text))) for text in value
        )
    )


def _with_units(heads: list[str], units: list[str | None]) -> list[str]:
    return [f"{head} [{unit}]" if unit and unit.strip("- ") else head for head, unit in zip(heads, units, strict=True)]


def inner_tables(node: Any, at: Path, words: Words, origin: dict[Path, Path], depth: int = 0) -> Any:
    """A document with the tables below its top that stand as lists of headings and rows, as lists of objects.

    Parameters
    ----------
    node, at, words, origin
        As for :func:`rows_of`.
    depth : int
        How deep the node lies.

    Returns
    -------
    object
        The document; the node itself where no table is in it.
    """
    if not isinstance(node, (dict, list)) or depth > _DEEPEST_TABLE:
        return node
    if isinstance(node, list):
        if not any(isinstance(child, dict) and _may_hold_table(child, words) for child in node):
            return node
        return [_inner(child, (*at, k), words, origin, depth) for k, child in enumerate(node)]
    result = {key: _inner(value, (*at, key), words, origin, depth) for key, value in node.items()}
    return result if any(result[key] is not node[key] for key in node) else node


def _inner(value: Any, at: Path, words: Words, origin: dict[Path, Path], depth: int) -> Any:
    heads = isinstance(value, dict) and _may_hold_table(value, words)
    listed = isinstance(value, list) and len(value) > 1 and all(isinstance(row, list) for row in value)
    headed = listed and _is_table(value) and _known(value[0], words) > 1
    rows = rows_of(value, at, origin, words) if heads or headed else None
    return rows if rows is not None else inner_tables(value, at, words, origin, depth + 1)


def _may_hold_table(node: dict[str, Any], words: Words) -> bool:
    """Whether an object has headings of columns, or a list of positions among lists of values."""
    return bool({*map(local, node)} & _HEADS) or _names_of_places(node, words) != ""


def _names_of_places(node: dict[str, Any], words: Words) -> str:
    """The key of a list of positions: by a word for them, or by that for one (``Lagerstelle: ["AS", "BS"]``)."""
    for key, value in node.items():
        if _are_names(value):
            heading = words.heading(key)
            said = heading is not None and heading.parameter == "station" and not heading.station
            if key.casefold() in _STATIONS or said or all(map(words.names.station, value)):
                return key
    return ""


def _of_stations(node: dict[str, Any], at: Path, origin: dict[Path, Path], words: Words) -> dict[str, Any] | None:
    """An object with a list of stations and lists of a value for each of them beside it, or None."""
    named = _names_of_places(node, words)
    if not named:
        return None
    count = len(node[named])
    beside = [key for key, value in node.items() if isinstance(value, list) and len(value) == count and key != named]
    beside = [key for key in beside if not any(isinstance(cell, (dict, list)) for cell in node[key])]
    if len(beside) < _FEWEST_COLUMNS:
        return None
    columns = {"station": named} | {key: key for key in beside}
    place = named if named.casefold() in _STATIONS or "stations" in node else "stations"
    origin.update({(*at, place, k, key): (*at, own, k) for k in range(count) for key, own in columns.items()})
    rows = [{key: node[own][k] for key, own in columns.items()} for k in range(count)]
    return {
        (place if key == named else key): rows if key == named else value
        for key, value in node.items()
        if key not in beside
    }


def _are_names(value: Any) -> bool:
    """Whether a list holds two different texts or more and nothing else."""
    texts = isinstance(value, list) and len(value) > 1 and all(isinstance(text, str) and text for text in value)
    return texts and len(set(value)) == len(value)


def _of_columns(node: dict[str, Any], at: Path, origin: dict[Path, Path]) -> list[dict[str, Any]] | None:
    """The objects of a table that stands as one list for each of its columns, and nothing else beside them."""
    columns = [key for key, value in node.items() if isinstance(value, list)]
    lengths = {len(node[key]) for key in columns}
    plain = all(not isinstance(cell, (dict, list)) for key in columns for cell in node[key])
    if len(columns) < 3 or len(columns) < len(node) or len(lengths) != 1 or lengths == {0} or not plain:
        return None
    count = lengths.pop()
    origin.update({(*at, k, key): (*at, key, k) for k in range(count) for key in columns})
    return [{key: node[key][k] for key in columns} for k in range(count)]


def _is_table(rows: list[Any]) -> bool:
    """Whether lists of plain values of one length stand below a list of different texts."""
    if len(rows) < 2 or not all(isinstance(row, list) and len(row) == len(rows[0]) for row in rows):
        return False
    texts = all(isinstance(cell, str) and cell for cell in rows[0]) and len(set(rows[0])) == len(rows[0]) > 1
    return texts and not any(isinstance(cell, (dict, list)) for row in rows for cell in row)


def _objects(
    heads: list[str], rows: list[list[Any]], first: Path, at: Path, origin: dict[Path, Path]
) -> list[dict[str, Any]]:
    """Rows below headings as objects; ``first`` is the place of the first row, ``at`` that of the list they come to."""
    shift = first[-1] if isinstance(first[-1], int) else 0
    for k, row in enumerate(rows):
        origin.update({(*at, k, key): (*first[:-1], k + shift, c) for c, key in enumerate(heads[: len(row)])})
    return [dict(zip(heads, row, strict=True)) for row in rows]
