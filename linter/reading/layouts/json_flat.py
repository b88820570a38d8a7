"""JSON objects whose keys are paths (``shaft.seat_A.diameter``, ``bearings[0]/bore``) as the trees that they name."""

import re
from typing import Any

from attrs import define, field

from linter.reading.cells.units import known_unit
from linter.reading.layouts.json_keys import Path
from linter.reading.layouts.json_records import deviations_in, is_aspect
from linter.reading.layouts.json_units import says_unit
from linter.reading.layouts.lost import is_value
from linter.reading.words.headings import Words
from linter.reading.words.own_stations import is_no_position

#: Between the steps of a path; the number of an entry may stand in brackets.
_BETWEEN = re.compile(r"\s*(?:\.|/|::|->|\[(?=\d{1,4}\]))\s*")
_NUMBER = re.compile(r"(\d{1,4})\]?")
#: Keys that are paths, and their share of all keys of an object.
_LEAST, _SHARE = 4, 0.5
#: How often a part of a document is moved at most.
_MOST_MOVES = 4


@define(eq=False)
class Unflattened:
    """A document whose flat objects are made trees.

    Attributes
    ----------
    document : object
        The document.
    origin : dict of path to path
        The path in the file of what was moved.
    left : dict of path to str
        Why what stands at a place of the document is not read.
    """

    document: Any
    origin: dict[Path, Path] = field(factory=dict)
    left: dict[Path, str] = field(factory=dict)

    def path(self, path: Path) -> Path:
        """The path in the file of a place in the document."""
        for _ in range(_MOST_MOVES if self.origin else 0):
            end = next((end for end in range(len(path), 0, -1) if path[:end] in self.origin), 0)
            if not end or self.origin[path[:end]] == path[:end]:
                break
            path = (*self.origin[path[:end]], *path[end:])
        return path


def unflattened(document: Any, words: Words) -> Unflattened:
    """The document, its top object or the objects of a list made trees where their keys are paths, not known names."""
    result = _unflattened(document, words)
    result.document = _with_deviations(result.document, (), result.origin)
    return result


def _with_deviations(node: Any, at: Path, origin: dict[Path, Path]) -> Any:
    """A document whose keys of two deviations beside their size say so (``{"d": 40, "above": 0, "below": -0.016}``)."""
    if isinstance(node, list):
        items = [_with_deviations(child, (*at, k), origin) for k, child in enumerate(node)]
        return items if any(new is not child for new, child in zip(items, node, strict=True)) else node
    if not isinstance(node, dict):
        return node
    said = deviations_in(node)
    origin.update({(*at, word): (*at, key) for key, word in said.items()})
    inner = {said.get(key, key): _with_deviations(value, (*at, key), origin) for key, value in node.items()}
    return inner if said or any(inner[key] is not value for key, value in node.items()) else node


def _unflattened(document: Any, words: Words) -> Unflattened:
    """The document with its flat objects as trees and its tables as lists of objects."""
    result = Unflattened(document)
    if (rows := _rows_of(document, (), result.origin, words)) is not None:
        result.document = rows
        return result
    if (inner := _inner_tables(document, (), words, result.origin, 0)) is not document:
        result.document = inner
    elif isinstance(document, dict):
        result.document = _tree(document, (), words, result.origin)
    elif isinstance(document, list):
        result.document = [
            _tree(node, (index,), words, result.origin) if isinstance(node, dict) else node
            for index, node in enumerate(document)
        ]
    return result


def _tree(node: dict[str, Any], at: Path, words: Words, origin: dict[Path, Path]) -> dict[str, Any]:
    """An object with paths for keys as a tree, or as it stands."""
    paths = {key: _steps(key, words) for key in node}
    deep = {key: steps for key, steps in paths.items() if len(steps) > 1}
    known = all(words.heading(key) is not None and not any(step.isdigit() for step in deep[key]) for key in deep)
    if len(deep) < max(_LEAST, _SHARE * len(node)) or len({steps[0] for steps in deep.values()}) == len(deep) or known:
        return node
    tree: dict[str, Any] = {}
    for key, value in node.items():
        steps = paths[key]
        inner = tree
        for step in steps[:-1]:
            below = inner.setdefault(step, {})
            if not isinstance(below, dict):
                return node  # a value and a group of the same name
            inner = below
        if steps[-1] in inner:
            return node
        inner[steps[-1]] = value
    moved: dict[Path, Path] = {(*at, *paths[key]): (*at, key) for key in node}
    lists: dict[Path, Path] = {}
    result = _with_lists(tree, at, at, lists)
    for path, before in lists.items():
        if before in moved:
            origin[path] = moved[before]
    return result if isinstance(result, dict) else node


def _steps(key: str, words: Words) -> tuple[str, ...]:
    """The steps of a path; a key that is none has one. A unit behind it (``n, 1/min``, ``d.mm``) is no step."""
    if not _BETWEEN.search(key):
        return (key,)
    rest, unit = words.names.split_unit(key.strip())
    behind = key.strip()[len(rest) :] if "/" in unit and key.strip().startswith(rest) else ""
    steps = _BETWEEN.split(rest if behind else key.strip())
    if not all(steps) or any(not step.strip() for step in steps):
        return (key,)
    steps[-1] += behind
    if len(steps) > 2 and _is_unit(steps[-1]) and not _is_unit(steps[-2]):
        steps[-2:] = [f"{steps[-2]} [{steps[-1]}]"]
    return tuple(number[1] if (number := _NUMBER.fullmatch(step)) else step for step in steps)


def _is_unit(step: str) -> bool:
    """Whether the last step of a path is a unit and no symbol (``shaft.front.seat.diameter.mm``)."""
    return (len(step) > 1 or step == "N") and known_unit(step) is not None


def _with_lists(node: Any, path: Path, before: Path, places: dict[Path, Path]) -> Any:
    """The tree with objects whose keys count (``0``, ``1``) as lists; ``places`` gets each place and the one before."""
    places[path] = before
    if not isinstance(node, dict):
        return node
    counted = [key for key in node if key.isdigit()]
    if counted and len(counted) == len(node):
        first = int(counted[0])
        if first in (0, 1) and [int(key) for key in counted] == list(range(first, first + len(counted))):
            return [_with_lists(node[key], (*path, k), (*before, key), places) for k, key in enumerate(counted)]
    return {key: _with_lists(value, (*path, key), (*before, key), places) for key, value in node.items()}


#: Key of rows that a document states by their numbers.
_NUMBERED = "rows"
#: Keys of a list of stations beside lists of their values, and how many of those there are at least.
_STATIONS = ("stations", "positions", "bearings", "station", "position", "locations", "seats", "places")
_FEWEST_COLUMNS = 2
#: Keys of the headings and of the rows of a table that stands as lists.
_DEEPEST_TABLE = 3
_HEADS, _ROWS = ("columns", "header", "headers", "headings", "fields"), ("rows", "data", "values", "records")


def _is_headed(rows: list[list[Any]], words: Words) -> bool:
    """Whether the first of some rows heads them, and none names the parameters down a column instead."""

    def known(texts: list[Any]) -> int:
        return sum(isinstance(t, str) and (words.heading(t) is not None or bool(words.groups(t))) for t in texts)

    return known(rows[0]) >= max(known([row[0] for row in rows[1:]]), 1) or not known([row[0] for row in rows])


def crossed(node: dict[str, Any], at: Path, words: Words, origin: dict[Path, Path]) -> dict[str, Any]:
    """An object of parameters over positions or numbers of rows with these outside (``{bore: {left: 8, right: 7}}``).

    Two parameters that are known and the same keys below each of them are needed; keys that say a part of a value, a
    unit or a parameter are none of positions. As it stands otherwise.
    """
    objects = {key: value for key, value in node.items() if isinstance(value, dict) and len(value) > 1}
    if len(objects) < 2:
        return node
    inner = next(iter(objects.values()))
    outer = [key for key, value in objects.items() if value.keys() == inner.keys()]
    if any(_says_something(key, words) for key in inner) or not _are_parameters(objects, outer, words):
        return node
    origin.update({(*at, key, name): (*at, name, key) for key in inner for name in outer})
    turned = {key: {name: node[name][key] for name in outer} for key in inner}
    rest = {key: value for key, value in node.items() if key not in outer}
    if all(key.isdigit() for key in inner):
        origin.update({(*at, _NUMBERED, k, name): (*at, name, key) for k, key in enumerate(inner) for name in outer})
        return {**rest, _NUMBERED: list(turned.values())}
    return node if rest.keys() & turned.keys() else {**rest, **turned}


def _are_parameters(objects: dict[str, dict[str, Any]], outer: list[str], words: Words) -> bool:
    """Whether two objects of some or more hold nothing but values of the parameter that their key names."""
    known = set()
    for key in outer:
        heading = words.heading(key)
        if any(isinstance(cell, list) for cell in objects[key].values()):
            return False
        if heading is not None and heading.entry.level == "station":
            if (
                heading.aspect == "value"
                and heading.entry.kind in ("number", "toleranced")
                and not all(
                    any(map(is_aspect, cell)) if isinstance(cell, dict) else is_value(cell, heading.entry)
                    for cell in objects[key].values()
                )
            ):
                return False
            known.add(heading.parameter)
    return len(known) > 1


def _says_something(key: str, words: Words) -> bool:
    """Whether a key says a part of a value, a unit or a parameter."""
    heading = words.heading(key)
    named = heading is not None and heading.parameter != "station"
    return is_aspect(key) or says_unit(key) or named or (is_no_position(key) and not words.names.station(key))


def _rows_of(node: Any, at: Path, origin: dict[Path, Path], words: Words) -> Any:
    """A table that stands as lists (headings and rows, rows alone, or a list for each column) as a list of objects."""
    if isinstance(node, list):
        return (
            _objects(node[0], node[1:], (*at, 1), at, origin) if _is_table(node) and _is_headed(node, words) else None
        )
    if not isinstance(node, dict):
        return None
    heads = next((key for key in node if key.casefold() in _HEADS), None)
    rows = next((key for key in node if key.casefold() in _ROWS), None)
    if (
        heads is not None
        and rows is not None
        and isinstance(node[rows], list)
        and _is_table([node[heads], *node[rows]])
    ):
        units = next((key for key in node if says_unit(key) and _are_units(node[key], len(node[heads]))), None)
        names = _with_units(node[heads], node[units]) if units else node[heads]
        rest = {key: value for key, value in node.items() if key not in (heads, rows, units)}
        found = _objects(names, node[rows], (*at, rows, 0), (*at, rows) if rest else at, origin)
        return {**rest, rows: found} if rest else found
    return _of_columns(node, at, origin) or _of_stations(node, at, origin)


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


def _inner_tables(node: Any, at: Path, words: Words, origin: dict[Path, Path], depth: int) -> Any:
    """A document with the tables below its top that stand as lists of headings and rows, as lists of objects."""
    if not isinstance(node, dict) or depth > _DEEPEST_TABLE:
        return node
    result = {}
    for key, value in node.items():
        inside = (*at, key)
        heads = isinstance(value, dict) and {key.casefold() for key in value} & {*_HEADS}
        rows = _rows_of(value, inside, origin, words) if heads else None
        result[key] = rows if rows is not None else _inner_tables(value, inside, words, origin, depth + 1)
    return result if any(result[key] is not node[key] for key in node) else node


def _of_stations(node: dict[str, Any], at: Path, origin: dict[Path, Path]) -> dict[str, Any] | None:
    """An object with a list of stations and lists of a value for each of them beside it, or None."""
    named = next((key for key, value in node.items() if key.casefold() in _STATIONS and _are_names(value)), None)
    if named is None:
        return None
    count = len(node[named])
    beside = [key for key, value in node.items() if isinstance(value, list) and len(value) == count and key != named]
    beside = [key for key in beside if not any(isinstance(cell, (dict, list)) for cell in node[key])]
    if len(beside) < _FEWEST_COLUMNS:
        return None
    columns = {"station": named} | {key: key for key in beside}
    origin.update({(*at, named, k, key): (*at, own, k) for k in range(count) for key, own in columns.items()})
    rows = [{key: node[own][k] for key, own in columns.items()} for k in range(count)]
    return {key: rows if key == named else value for key, value in node.items() if key not in beside}


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
