"""Objects of a list as the rows of a table: what a key means by all that stands under it, and which key is the machine.

One value says little (``id: 1``, ``type: "6203"``, ``function: "free"``); those of every item under the same key, and
the keys beside it, say more, as the cells of a column do.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import pairwise
from typing import Any

from linter.model.places import Place
from linter.model.stations import Problem
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.layouts.json_keys import Path, bare, key_text
from linter.reading.words.columns import judge_columns
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import names_machine
from linter.reading.words.parts import tells_feature

Columns = dict[str, Heading | None]

_LOOKED_AT, _LONGEST = 40, 80
_DEEPEST = 3


def judged_by_items(
    items: Sequence[tuple[Path, dict[str, Any]]],
    heading: Callable[[str, tuple[str, ...]], Heading | None],
    words: Words,
    trail: tuple[str, ...] = (),
) -> dict[Path, Columns]:
    """What the keys of like objects mean, by the path of each object; those of objects inside them too.

    Parameters
    ----------
    items : sequence of (path, object)
        The items of a list, or what stands under one key of each.
    heading : callable
        What a key means by itself below the keys around it, which is the second argument.
    words : Words
        The names that are understood.
    trail : tuple of str
        The keys around these objects, from the items inwards.

    Returns
    -------
    dict of path to columns
        What each key of an object means, by the path of the object.
    """
    shown = items[:_LOOKED_AT]
    keys = list(dict.fromkeys(key for _, item in shown for key in item))
    plain = [key for key in keys if not any(isinstance(item.get(key), (dict, list)) for _, item in shown)]
    cells = [[text for _, item in shown if (text := cell_text(item.get(key)))] for key in plain]
    plain, cells = [k for k, c in zip(plain, cells, strict=True) if c], [c for c in cells if c]
    judged = judge_columns(plain, [heading(key, trail) for key in plain], lambda c: cells[c], words)
    columns = dict(zip(plain, judged, strict=True))
    found = {path: columns for path, _ in items}
    for key in keys if len(trail) < _DEEPEST else ():
        inner = [((*path, key), item[key]) for path, item in items if isinstance(item.get(key), dict)]
        if len(inner) > 1:
            found |= judged_by_items(inner, heading, words, (*trail, key))
    return found


def parts_assumed(judged: Mapping[Path, Columns]) -> Iterator[tuple[Path, str, str]]:
    """The first path of each key whose part no word says, the key, its parameter."""
    told: set[tuple[int, str]] = set()
    for path, columns in judged.items():
        for key, heading in columns.items():
            if heading is not None and heading.assumed and (id(columns), key) not in told:
                told.add((id(columns), key))
                yield (*path, key), key, heading.parameter


def machine_key(items: Sequence[dict[str, Any]], words: Words) -> str:
    """The key that keeps items of the same position apart, each of its texts in neighbouring items; or empty.

    The items name their positions, which come again, and no machine; the key is not known, and no text under it is a
    designation or a part.
    """
    places = [key_text(item, "station", words)[1] for item in items]
    if "" in places or len(set(places)) == len(places) or any(key_text(item, "machine", words)[1] for item in items):
        return ""
    for key in items[0]:
        kind = names_machine(bare(key)) in ("kind", "both")  # whose names may be numbers (``size: 200``)
        cells = [item.get(key) for item in items]
        texts = [
            cell_text(cell).strip() if isinstance(cell, str) or (kind and _is_whole(cell)) else "" for cell in cells
        ]
        if not all(0 < len(text) <= _LONGEST and (kind or any(map(str.isalpha, text))) for text in texts):
            continue
        if words.heading(key) is not None or all(map(tells_feature, set(texts))):
            continue
        if any(designation_strength(text) == "certain" for text in texts):
            continue
        several = 1 < len(set(texts)) < len(texts)
        runs = 1 + sum(a != b for a, b in pairwise(texts))
        if several and runs == len(set(texts)) and len({*zip(texts, places, strict=True)}) == len(texts):
            return key
    return ""


def _is_whole(cell: Any) -> bool:
    return isinstance(cell, int) and not isinstance(cell, bool)


def assumed_machine(place: Place, key: str, text: str) -> Problem:
    """The assumption that a key names the machines, since it keeps items of the same position apart."""
    expected = "a key such as machine"
    message = (
        f"{place}: the positions come again and {visible(key, 40)} keeps them apart; it is taken for the machine; "
        f"expected {expected}."
    )
    return Problem("assumption", None, "machine", place, visible(text, 40), expected, message, "machine-by-rows")
