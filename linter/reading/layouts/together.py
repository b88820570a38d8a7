"""Cells that state several values together as a strip for each: dimensions (``10x26x8``), fits (``k6/H7``)."""

from collections.abc import Callable, Iterator

import numpy as np
from attrs import evolve, frozen

from linter.model.stations import Problem
from linter.reading.cells.signs import missing_state
from linter.reading.files.grids import Bad, cell_text, is_blank, object_column
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found, Strip
from linter.reading.words.boundary import DIMENSIONS, dimensions_of, fits_of
from linter.reading.words.pairs import PAIR, two_values


@frozen
class _Together:
    names: tuple[str, ...]
    aspect: str
    parts_of: Callable[[str], tuple[str, ...] | None]
    expected: str
    code: str


_TOGETHER = {
    "dimensions": _Together(
        DIMENSIONS, "value", dimensions_of, "bore x outside diameter x width of the bearing, such as 10x26x8",
        "not-three-dimensions",
    ),
    "fits": _Together(
        ("shaft_seat_diameter", "housing_seat_diameter"), "tolerance", fits_of,
        "the tolerance classes of shaft and housing, such as k6/H7", "not-two-fits",
    ),
}  # fmt: skip


def _together(strip: Strip) -> _Together | None:
    """What the cells of a strip state together; None where they state one value."""
    if not strip.aspect.startswith(PAIR):
        return _TOGETHER.get(strip.aspect)
    names = (strip.parameter, strip.aspect.removeprefix(PAIR))
    return _Together(names, "value", two_values, "two values with a stroke between them, such as 0.4 / 0.8", "not-two")


def take_apart(found: Found, file: str) -> None:
    """Replace every strip of values stated together by one strip for each of them."""
    for block in found.blocks:
        block.strips[:] = [one for strip in block.strips for one in _apart(strip, found, file)]


def _apart(strip: Strip, found: Found, file: str) -> Iterator[Strip]:
    """The strips of the single values; a cell that does not state them is told."""
    if (kind := _together(strip)) is None:
        yield strip
        return
    texts: list[tuple[int, str, tuple[str, ...]]] = []
    for index, cell in enumerate(strip.cells.tolist()):
        if is_blank(cell) or (type(cell) is str and missing_state(cell) is not None):
            continue
        text = cell_text(cell)
        if isinstance(cell, Bad) or (parts := kind.parts_of(text)) is None:
            place, read = strip.place(file, index), visible(text, 60)
            message = f"{place}: {visible(strip.label, 60)} is {read}; expected {kind.expected}; the value is not used."
            found.problems.append(
                Problem("unreadable", None, kind.names[0], place, read, kind.expected, message, kind.code)
            )
            continue
        texts.append((index, text, parts))
    at = np.array([index for index, _, _ in texts], dtype=np.intp)
    for k, name in enumerate(kind.names):
        yield evolve(
            strip,
            parameter=name,
            aspect=kind.aspect,
            cells=object_column([parts[k] for _, _, parts in texts]),
            rows=strip.rows[at],
            lines=None if strip.lines is None else strip.lines[at],
            columns=None if strip.columns is None else strip.columns[at],
            pointers=None if strip.pointers is None else [strip.pointers[index] for index in at.tolist()],
            whole={index: text for index, (_, text, _) in enumerate(texts)},
        )
