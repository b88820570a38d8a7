"""Cells that state the boundary dimensions of a bearing together (``10x26x8``) as three strips."""

from collections.abc import Iterator

import numpy as np
from attrs import evolve

from linter.model.stations import Problem
from linter.reading.cells.signs import missing_state
from linter.reading.files.grids import Bad, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found, Strip
from linter.reading.words.boundary import DIMENSIONS, dimensions_of

_EXPECTED = "bore x outside diameter x width of the bearing, such as 10x26x8"


def take_apart(found: Found, file: str) -> None:
    """Replace every strip of dimensions stated together by one strip for each of them."""
    for block in found.blocks:
        block.strips[:] = [one for strip in block.strips for one in _apart(strip, found, file)]


def _apart(strip: Strip, found: Found, file: str) -> Iterator[Strip]:
    """The strips of the three dimensions; a cell that does not state three is told."""
    if strip.aspect != "dimensions":
        yield strip
        return
    texts: list[tuple[int, str, tuple[str, str, str]]] = []
    for index, cell in enumerate(strip.cells.tolist()):
        if is_blank(cell) or (type(cell) is str and missing_state(cell) is not None):
            continue
        text = cell_text(cell)
        if isinstance(cell, Bad) or (parts := dimensions_of(text)) is None:
            place, read = strip.place(file, index), visible(text, 60)
            message = f"{place}: {visible(strip.label, 60)} is {read}; expected {_EXPECTED}; the value is not used."
            found.problems.append(
                Problem("unreadable", None, "bore_diameter", place, read, _EXPECTED, message, "not-three-dimensions")
            )
            continue
        texts.append((index, text, parts))
    at = np.array([index for index, _, _ in texts], dtype=np.intp)
    for k, name in enumerate(DIMENSIONS):
        yield evolve(
            strip,
            parameter=name,
            aspect="value",
            cells=object_column([parts[k] for _, _, parts in texts]),
            rows=strip.rows[at],
            lines=None if strip.lines is None else strip.lines[at],
            columns=None if strip.columns is None else strip.columns[at],
            pointers=None if strip.pointers is None else [strip.pointers[index] for index in at.tolist()],
            whole={index: text for index, (_, text, _) in enumerate(texts)},
        )
