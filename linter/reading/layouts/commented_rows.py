"""Rows of a list of names and values whose comments are names too: they head no table of their own."""

from collections.abc import Mapping, Sequence

from linter.reading.files.grids import Grid
from linter.reading.layouts.header_roles import header_roles
from linter.reading.words.headings import Words

_STATES = {"VALUE", "EXPR"}


def without_commented(grid: Grid, kinds: Sequence[str], words: Words) -> list[str]:
    """What the rows of a grid head, but for those that are names and values with a comment that is a name.

    ``brg_A | 6204-2Z | bearing designation`` stands below ``Name | Expression | Comment``.
    """
    result = [*kinds]
    roles: dict[int, str] = {}
    for row, kind in enumerate(kinds):
        texts = grid.texts(row)
        if not texts:
            roles = {}
            continue
        if roles and kind == "wide" and _is_commented(texts, roles, words):
            result[row] = ""
            continue
        said = header_roles(grid, row, words) if kind == "long" or (not roles and len(texts) > 2) else {}
        if "NAME" in said.values() and _STATES & {*said.values()} and "NOTE" in said.values():
            roles = said
    return result


def _is_commented(texts: Mapping[int, str], roles: dict[int, str], words: Words) -> bool:
    """Whether the names of a row are those of its name and its comment alone, with a value beside them."""
    named = {column for column, text in texts.items() if words.heading(text) is not None}
    values = {column for column in texts if roles.get(column) in _STATES}
    return bool(values - named) and all(roles.get(column) in ("NAME", "NOTE") for column in named)
