"""Rows and columns of other things that were read as machines or positions: sums of rows, load cases, old and new."""

from collections.abc import Sequence
from string import ascii_uppercase

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.model.places import Place
from linter.model.stations import Problem, Unused
from linter.reading.cells.signs import is_figure
from linter.reading.files.grids import cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.words.headings import Words
from linter.reading.words.no_names import are_changes, is_spare, is_state, is_sum

_SUM = "a figure worked out of other rows, and no bearing position"
_STATE = "it holds for one of several states of running, and nothing says which is reviewed"
_CHANGE = "it stands under a word for a change, and nothing says whose it is"
_SPARE = "of a spare part, and of no bearing position"
_HEAD = "it stands under a heading of the table, and nothing says whose it is"
_WORD = "a word of the table, and no designation"
_MOST_NAMES = 500
#: Sizes that no spare part has, and what no sum or state has one of.
_SEATS, _BEARING = frozenset(("shaft_seat_diameter", "housing_seat_diameter")), "bearing_designation"
_HEADS = frozenset(("NAME", "UNIT", "NOTE"))


def leave_no_positions(found: Found, file: str, words: Words) -> None:
    """List what stands in rows named by a sum, a state of running or a change as unused; no station is made of them."""
    machines = {machine for block in found.blocks for machine in block.machines if machine}
    stations = {station for block in found.blocks for station in block.stations if station}
    if len(machines) > _MOST_NAMES and len(stations) > _MOST_NAMES:
        return
    reasons = {name: reason for name in (*machines, *stations) if (reason := _reason(name))}
    reasons |= dict.fromkeys(are_changes(stations), _CHANGE)
    if len(stations) > 1:
        reasons |= {name: _HEAD for name in stations if not _HEADS.isdisjoint(words.groups(name))}
    for block in found.blocks:
        _leave_words(block, found, file, words)
    for block in found.blocks if reasons else ():
        left = [reasons.get(s) or reasons.get(m, "") for m, s in zip(block.machines, block.stations, strict=True)]
        if any(left):
            _leave(block, left, found, file)


def _leave_words(block: Block, found: Found, file: str, words: Words) -> None:
    """Designations that are words for a designation themselves: a name of the table was read as a value."""
    for index, strip in enumerate(block.strips):
        if strip.parameter != "bearing_designation" or len(strip.rows) > _MOST_NAMES:
            continue
        texts = [cell_text(cell).strip() for cell in strip.cells.tolist()]
        keep = np.array([not _is_word(text, words) for text in texts], dtype=np.bool_)
        for cell in np.flatnonzero(~keep).tolist():
            found.leave(Unused(strip.label, visible(texts[cell]), strip.place(file, cell), _WORD))
        if not keep.all():
            block.strips[index] = _kept(strip, keep, np.arange(len(block.stations)))


def _is_word(text: str, words: Words) -> bool:
    heading = None if not text or any(map(str.isdigit, text)) else words.heading(text)
    return heading is not None and heading.parameter == "bearing_designation"


def _reason(name: str) -> str:
    return _SUM if is_sum(name) else _STATE if is_state(name) else _SPARE if is_spare(name) else ""


def _leave(block: Block, left: list[str], found: Found, file: str) -> None:
    """Take rows out of a block, their cells with the reason why; the rows behind them move up."""
    keep = np.array([not reason for reason in left], dtype=np.bool_)
    moved = np.cumsum(keep) - 1
    _tell_seats(block, left, found, file)
    for index, strip in enumerate(block.strips):
        for cell in np.flatnonzero(~keep[strip.rows]).tolist():
            if not is_blank(strip.cells[cell]):
                text, reason = visible(cell_text(strip.cells[cell])), left[strip.rows[cell]]
                found.leave(Unused(strip.label, text, strip.place(file, cell), reason))
        block.strips[index] = _kept(strip, keep[strip.rows], moved)
    block.strips[:] = [strip for strip in block.strips if len(strip.rows)]
    block.machines[:] = [name for name, reason in zip(block.machines, left, strict=True) if not reason]
    block.stations[:] = [name for name, reason in zip(block.stations, left, strict=True) if not reason]


def _tell_seats(block: Block, left: Sequence[str], found: Found, file: str) -> None:
    """Findings about rows that state a seat or a bearing as no position does: they have to be judged."""
    told = set[int]()
    known = {_line(problem.place) for problem in found.problems if problem.code == "values-not-read"}
    bearings = [strip for strip in block.strips if strip.parameter == _BEARING]
    for strip in [*(strip for strip in block.strips if strip.parameter in _SEATS), *bearings]:
        texts = [cell_text(cell).strip() for cell in strip.cells.tolist()]
        own = {text for text, row in zip(texts, strip.rows.tolist(), strict=True) if not left[row]}
        for cell, row in enumerate(strip.rows.tolist()):
            new = left[row] and row not in told and _line(strip.place(file, cell)) not in known
            if new and texts[cell] not in own and _may_be_judged(strip.parameter, texts[cell], left[row]):
                told.add(row)
                name = visible(block.stations[row] or block.machines[row])
                found.problems.append(_told(strip.place(file, cell), name, texts[cell], left[row]))


def _told(place: Place, name: str, text: str, reason: str) -> Problem:
    """The finding about a cell that no position states and that may be of one."""
    expected = "the name of a bearing position in its row, or nothing of a bearing there"
    message = (
        f"{place}: {visible(text, 120)} stands in a row called “{name}” ({reason}); no position states it, "
        f"so it is not judged; expected {expected}."
    )
    return Problem("unreadable", None, "station", place, visible(text), expected, message, "values-not-read")


def _may_be_judged(name: str, text: str, reason: str) -> bool:
    """Whether a cell of such a row may be of a position: a mean is a plain number, a spare bearing has no seat."""
    if name == _BEARING:
        return bool(text) and reason != _SPARE
    return bool(text) and (reason != _SUM or not is_figure(text))


def _line(place: Place | None) -> tuple[str | None, str]:
    """Sheet and line of a place in a table, or the pointer of one in a document."""
    if place is None or place.cell is None:
        return None, "" if place is None else place.pointer or ""
    return place.sheet, place.cell.lstrip(ascii_uppercase)


def _kept(strip: Strip, keep: NDArray[np.bool_], moved: NDArray[np.intp]) -> Strip:
    at = np.flatnonzero(keep).tolist()
    return evolve(
        strip,
        cells=strip.cells[keep],
        rows=moved[strip.rows[keep]].astype(np.intp),
        lines=None if strip.lines is None else strip.lines[keep],
        columns=None if strip.columns is None else strip.columns[keep],
        pointers=None if strip.pointers is None else [strip.pointers[k] for k in at],
        whole={new: strip.whole[k] for new, k in enumerate(at) if k in strip.whole},
    )
