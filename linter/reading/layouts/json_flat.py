"""JSON objects whose keys are paths (``shaft.seat_A.diameter``, ``bearings[0]/bore``) as the trees that they name."""

import re
from collections.abc import Iterable, Mapping
from itertools import product
from typing import Any

from attrs import define, field

from linter.reading.cells.units import known_unit
from linter.reading.layouts.json_joined import joined
from linter.reading.layouts.json_keys import Path, names_place
from linter.reading.layouts.json_pairs import pairs_apart
from linter.reading.layouts.json_records import deviations_in, is_aspect
from linter.reading.layouts.json_tables import inner_tables, rows_of
from linter.reading.layouts.json_units import says_unit
from linter.reading.layouts.lost import is_value
from linter.reading.layouts.machine_paths import MachinePath, machine_paths
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
    result.document = pairs_apart(result.document, (), words, result.origin)
    result.document = joined(result.document, words, result.origin, result.left)
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
    if (rows := rows_of(document, (), result.origin, words)) is not None:
        result.document = rows
        return result
    if (inner := inner_tables(document, (), words, result.origin)) is not document:
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
    if not deep and len(node) >= _LEAST and (machines := machine_paths(node, words)):
        return _below_machines(node, machines, at, origin)
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


def _below_machines(
    node: dict[str, Any], machines: Mapping[str, MachinePath], at: Path, origin: dict[Path, Path]
) -> dict[str, Any]:
    """An object whose keys begin with a machine (``P12_DE_shaft_seat_diameter``), with an object for each machine."""
    result: dict[str, Any] = {}
    for key, value in node.items():
        if (path := machines.get(key)) is None:
            result[key] = value
            continue
        result.setdefault(path.machine, {})[path.rest] = value
        origin[*at, path.machine, path.rest] = (*at, key)
    return result


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
    if _say_together(outer, inner, words):
        return node
    origin.update({(*at, key, name): (*at, name, key) for key in inner for name in outer})
    turned = {key: {name: node[name][key] for name in outer} for key in inner}
    rest = {key: value for key, value in node.items() if key not in outer}
    if all(key.isdigit() for key in inner):
        origin.update({(*at, _NUMBERED, k, name): (*at, name, key) for k, key in enumerate(inner) for name in outer})
        return {**rest, _NUMBERED: list(turned.values())}
    return node if rest.keys() & turned.keys() else {**rest, **turned}


def _say_together(outer: Iterable[str], inner: Iterable[str], words: Words) -> bool:
    """Whether a key and one inside it name a value together, and no position (``shaft_seat: {cylindricity_mm}``)."""
    both = (words.heading(f"{name} {key}") for name, key in product(outer, inner))
    return any(heading is not None and not heading.station for heading in both)


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
    return is_aspect(key) or says_unit(key) or named or (is_no_position(key) and not names_place(key, words))
