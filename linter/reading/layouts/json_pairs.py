"""Values of a JSON document for two positions at once (``"Bearings (DE/NDE)": "6305/6304"``): one for each position.

A key says the two positions, or the name of a record does, or the position of the object itself is both of them.
"""

from typing import Any

from linter.reading.layouts.json_keys import INNER, Path, key_text
from linter.reading.words.bearing_words import names_bearing
from linter.reading.words.headings import Words
from linter.reading.words.pairs import PAIR
from linter.reading.words.parts import concepts_said
from linter.reading.words.sides_said import Sides, sides_said, two_parts

#: Keys under which the positions come to stand.
_STATIONS, _STATION = f"{INNER}stations", "station"


def pairs_apart(node: Any, at: Path, words: Words, origin: dict[Path, Path]) -> Any:
    """A document with the values of two positions apart.

    Parameters
    ----------
    node : object
        The node of the document.
    at : path
        Its place.
    words : Words
        The names that are understood.
    origin : dict of path to path
        Gets the path in the file of what is moved.

    Returns
    -------
    object
        The node itself where nothing in it is a pair.
    """
    if isinstance(node, list):
        return _records(node, at, words, origin)
    return _object(node, at, words, origin) if isinstance(node, dict) else node


def _object(node: dict[str, Any], at: Path, words: Words, origin: dict[Path, Path]) -> dict[str, Any]:
    """An object with its pairs in a list of the positions; itself where it has none and nothing in it has."""
    whole = _of_both(node, words)
    moved = {} if _STATIONS in node else {key: own for key in node if (own := _moved(node, key, whole, words))}
    rest = {key: value for key, value in node.items() if key not in moved and not (moved and whole and key == whole[0])}
    result = {key: pairs_apart(value, (*at, key), words, origin) for key, value in rest.items()}
    if not moved:
        return result if any(result[key] is not value for key, value in node.items()) else node
    stations: dict[str, dict[str, Any]] = {}
    for key, (name, pair, sides) in moved.items():
        for side, value in zip(sides.both, pair, strict=True):
            stations.setdefault(side, {_STATION: side})[name] = value
            place = (*at, _STATIONS, [*stations].index(side))
            origin[(*place, name)] = (*at, key)
            origin.setdefault((*place, _STATION), (*at, whole[0] if whole else key))
    return {**result, _STATIONS: [*stations.values()]}


def _moved(
    node: dict[str, Any], key: str, whole: tuple[str, Sides] | None, words: Words
) -> tuple[str, tuple[Any, Any], Sides] | None:
    """The name, the values of both positions and these where a key states two of them; else None."""
    own = sides_said(key, words)
    sides = own or (whole[1] if whole else None)
    name = (own.rest or "bearing") if own is not None else key
    if sides is None or not _is_of_position(key, name, sides, words):
        return None
    pair = _pair(node[key], name, words)
    return None if pair is None else (name, pair, sides)


def _records(nodes: list[Any], at: Path, words: Words, origin: dict[Path, Path]) -> list[Any]:
    """A list with a record for each position of its pairs, that of the second behind all others."""
    result = [pairs_apart(node, (*at, k), words, origin) for k, node in enumerate(nodes)]
    for k, node in enumerate(nodes):
        apart = _record(node, words) if isinstance(node, dict) else None
        if apart is None:
            continue
        name, (first, second) = apart
        origin[(*at, len(result))] = (*at, k)
        origin |= {(*at, place, _STATION): (*at, k, name) for place in (k, len(result))}
        result[k] = first
        result.append(second)
    return result if any(new is not old for new, old in zip(result, nodes, strict=False)) else nodes


def _record(node: dict[str, Any], words: Words) -> tuple[str, tuple[dict[str, Any], dict[str, Any]]] | None:
    """The key of the name of a record of two positions, and the record of each; None for another."""
    said = {
        key: sides
        for key, text in node.items()
        if isinstance(text, str) and not text[:1].isdigit() and (sides := sides_said(text.strip(), words)) is not None
    }
    if len(said) != 1 or key_text(node, "station", words)[1]:
        return None
    name, sides = next(iter(said.items()))
    rest = sides.rest or "bearing"
    if not _is_of_position(node[name].strip(), rest, sides, words):
        return None
    values = {key: pair for key, value in node.items() if key != name and (pair := _pair(value, rest, words))}
    if not values:
        return None
    one, two = (
        {**node, name: rest, _STATION: side, **{key: pair[k] for key, pair in values.items()}}
        for k, side in enumerate(sides.both)
    )
    return name, (one, two)


def _of_both(node: dict[str, Any], words: Words) -> tuple[str, Sides] | None:
    """The key of the position of an object that is two (``"position": "DE / NDE"``), and these; or None."""
    key, text = key_text(node, "station", words)
    sides = sides_said(text, words) if text else None
    return (key, sides) if sides is not None and not sides.rest and not sides.parts else None


def _is_of_position(name: str, rest: str, sides: Sides, words: Words) -> bool:
    """Whether a name says two positions and otherwise what a position has."""
    own, heading = words.heading(name), words.heading(rest)
    if sides.parts or (own is not None and own.aspect.startswith(PAIR)):
        return False
    if not sides.rest and rest == "bearing":
        return all("bearing" in concepts_said(side) for side in sides.both)
    known = heading is not None and heading.entry.level == "station" and heading.parameter != "station"
    return names_bearing(rest) or known


def _pair(value: Any, name: str, words: Words) -> tuple[Any, Any] | None:
    """The values of both positions: the parts of a text, or of the text in an object with its unit; or None."""
    if isinstance(value, dict):
        inner = {key: pair for key, text in value.items() if (pair := _pair(text, name, words)) is not None}
        plain = not any(isinstance(part, (dict, list)) for part in value.values())
        both = [{**value, **{key: pair[k] for key, pair in inner.items()}} for k in (0, 1)]
        return (both[0], both[1]) if plain and inner else None
    if not isinstance(value, str):
        return None
    heading = words.heading(name)
    in_words = heading is not None and heading.entry.kind in ("text", "choice")
    return two_parts(value) or (two_parts(value, in_words=True) if in_words else None)
