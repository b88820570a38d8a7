"""The items of a list in a JSON document: without what a store of data puts around them."""

import re
from typing import Any

from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_keys import OF_DOCUMENT, bare, local
from linter.reading.words.dictionary import word_key

#: Keys of what a store of data adds to an item (common practice).
_OF_STORE = re.compile(
    r"(?:[a-z]+ )?(?:u?u?id|guid|key|index|row|seq|etag|href|url|link|hash|checksum|created|modified|updated|version)"
    r"(?: at| time| on)?"
)
#: Keys of the kind of an item in a store, which no designation stands under.
_KINDS = ("type", "class", "kind", "object_type", "objecttype")


def unwrapped(nodes: list[Any]) -> tuple[list[Any], tuple[str, ...]]:
    """The items of a list without the one object that each holds under the same key, and that key.

    Beside it an item may have what numbers it in its store (``{"id": 7, "fields": {...}}``).
    """
    keys = {key for node in nodes for key in (_held(node) if isinstance(node, dict) else [""])}
    key = keys.pop() if len(keys) == 1 else ""
    if len(nodes) < 2 or not key or not all(key in node and _is_wrapped(node, key) for node in nodes):
        return nodes, ()
    return [node[key] for node in nodes], (key,)


def members(
    value: Any, at: tuple[str | int, ...]
) -> tuple[Any, tuple[str | int, ...], list[tuple[tuple[str | int, ...], Any, str]] | None, tuple[str, ...]]:
    """The objects of positions or machines below a key that says so: what holds them, its path, and each with its path.

    A frame around them (``{"data": [...]}``) is passed, and so is the object that each item of a list holds alone; its
    key comes last. A text in place of objects gives None.
    """
    while isinstance(value, dict):
        held = _held(value)
        if len(held) != 1 or local(held[0]) not in OF_DOCUMENT:
            return value, at, [((*at, key), child, key) for key, child in value.items()], ()
        value, at = value[held[0]], (*at, held[0])
    if not isinstance(value, list):
        return value, at, None, ()
    nodes, inside = unwrapped(value)
    return value, at, [((*at, k, *inside), child, str(k + 1)) for k, child in enumerate(nodes)], inside


def _held(node: dict[str, Any]) -> list[str]:
    """Keys of an object over objects and lists, but those of a place on a map."""
    return [
        key for key, value in node.items()
        if isinstance(value, (dict, list)) and not (isinstance(value, dict) and "coordinates" in value)
    ]  # fmt: skip


def _is_wrapped(node: dict[str, Any], key: str) -> bool:
    """Whether an item is an object under one key, and numbers or marks of a store beside it."""
    marks = {k: cell_text(value) for k, value in node.items() if k != key and not isinstance(value, dict)}
    return isinstance(node[key], dict) and all(
        not text or _OF_STORE.fullmatch(word_key(bare(k))) or (local(k) in _KINDS and not any(map(str.isdigit, text)))
        for k, text in marks.items()
    )


def why_left(nodes: list[Any]) -> str:
    """Why a whole list is not read, as half a sentence: it holds values without names, or references; or empty."""
    if nodes and not any(isinstance(node, (dict, list)) for node in nodes):
        return "a list of values without names"
    refers = nodes and all(isinstance(node, dict) and _is_reference(node) for node in nodes)
    return "references to other objects" if refers else ""


def _is_reference(node: dict[str, Any]) -> bool:
    """Whether an object holds nothing but the kind and number of another (``{"type": "bearing", "id": "7"}``)."""
    keys = {local(key) for key in node}
    return "id" in keys and len(keys) == 2 and bool(keys & {*_KINDS})
