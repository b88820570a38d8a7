"""Cells that keep the quotation marks of the program that wrote them: ``"6206-2Z"``, ``'30 k5'``, ``="0042"``.

A program that writes a text parameter with its quotation marks, or guards a text from being taken for a number, means
what stands inside. A mark before the text alone (``'6206``) is the sign of a spreadsheet for a text. An inch sign
stands behind a number and never before it.
"""

import re
from collections.abc import Sequence
from typing import Any

import numpy as np
from attrs import evolve

from linter.reading.files.grids import Column, Grid, TextColumn

_PAIRS = r"\"(?P<a>[^\"]+)\"|'(?P<b>[^']+)'|[“„”](?P<c>[^“”„]+)[”“]|‘(?P<d>[^‘’]+)’|«(?P<e>[^«»]+)»"
_QUOTED = re.compile(rf"\s*=?\s*(?:{_PAIRS})\s*|'(?P<f>[^'\s][^']*)")
_FIRST = ('"', "'", "“", "„", "”", "‘", "«", "=", " ", "\t")
_PLAIN = (ord('"'), ord("'"))


def unquoted(text: str) -> str:
    """A text without the quotation marks around the whole of it.

    Returns
    -------
    str
        The text itself where it carries none.

    Examples
    --------
    >>> unquoted('"608-2Z/C3"'), unquoted('="0042"'), unquoted("'C45"), unquoted('1/2"'), unquoted('"A" and "B"')
    ('608-2Z/C3', '0042', 'C45', '1/2"', '"A" and "B"')
    """
    found = _QUOTED.fullmatch(text) if text.startswith(_FIRST) else None
    return text if found is None else next(said for said in found.groups() if said is not None)


def without_quotes(grid: Grid) -> Grid:
    """A grid whose texts stand without the quotation marks around the whole of them.

    Returns
    -------
    Grid
        The grid itself where no text carries any.
    """
    columns = [_column(column) for column in grid.columns]
    alike = all(a is b for a, b in zip(columns, grid.columns, strict=True))
    return grid if alike else evolve(grid, columns=columns)


def _column(column: Column) -> Column:
    if isinstance(column, TextColumn):
        first, last = column.signs[column.starts], column.signs[np.maximum(column.ends - 1, 0)]
        quoted = (column.ends - column.starts > 1) & (first == last) & np.isin(first, _PLAIN)
        if not quoted.any():
            return column
        return TextColumn(column.signs, column.starts + quoted.astype(np.int32), column.ends - quoted.astype(np.int32))
    plain = [(row, said) for row, cell in enumerate(column.tolist()) if (said := _unquoted(cell)) is not cell]
    if not plain:
        return column
    column = column.copy()
    for row, said in plain:
        column[row] = said
    return column


def _unquoted(value: Any) -> Any:
    return unquoted(value) if type(value) is str else value


def values_without_quotes(document: Any) -> Any:
    """A document whose texts stand without the quotation marks around the whole of them; its keys are left.

    Returns
    -------
    object
        The same document: its objects and lists are changed in place.
    """
    level: Sequence[Any] = [document]
    while level:
        below = []
        for node in level:
            pairs = node.items() if isinstance(node, dict) else enumerate(node) if isinstance(node, list) else ()
            for key, value in list(pairs):
                if type(value) is str:
                    node[key] = unquoted(value)
                elif isinstance(value, (dict, list)):
                    below.append(value)
        level = below
    return unquoted(document) if type(document) is str else document
