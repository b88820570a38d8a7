"""A table with its plan applied: the cells changed in the file itself, or in the layout of the template where not."""

import re
from collections.abc import Callable, Iterator, Sequence
from typing import Any

import numpy as np
from attrs import frozen

from linter.model.findings import ReviewResult
from linter.model.places import Place
from linter.model.plan import PlanLine, SizeValue
from linter.model.stations import Stations
from linter.model.vocabulary import parameter, vocabulary
from linter.report.repaired.files import Edit, NotWritten, edited
from linter.report.repaired.texts import plain, signed, variants

#: Reads the content of a file as the table was read; None where it is not taken.
Reads = Callable[[bytes], "Stations | None"]
#: Ways of writing one line that are tried.
MOST_WAYS = 8


@frozen(eq=False)
class Repaired:
    """The table with its plan applied.

    Attributes
    ----------
    content : bytes
        The file.
    edits : tuple of Edit
        The cells that were changed.
    template : bool
        Whether it is written in the layout of the template.
    reasons : tuple of str
        Why it could not be written in its own layout; empty otherwise.
    """

    content: bytes
    edits: tuple[Edit, ...]
    template: bool
    reasons: tuple[str, ...]


def repaired_table(
    content: bytes, stations: Stations, understood: Sequence[Any], result: ReviewResult, read: Reads
) -> Repaired:
    """Apply a plan to the table that it was made for.

    Parameters
    ----------
    content : bytes
        The file.
    stations : Stations
        As read from it.
    understood : sequence of linter.model.stations.Understood
        Its cells as read.
    result : ReviewResult
        With its plan.
    read : callable
        Reads such a file again: every way of writing a line is tried, and only one that is read as planned is taken.

    Returns
    -------
    Repaired
    """
    lines, reasons = line_edits(content, stations, understood, result, read)
    if reasons:
        return Repaired(template_text(stations, result).encode(), (), True, reasons)
    taken = tuple(edit for edits in lines.values() for edit in edits)
    return Repaired(edited(content, taken), taken, False, ())


def line_edits(
    content: bytes,
    stations: Stations,
    understood: Sequence[Any],
    result: ReviewResult,
    read: Reads,
    most: int | None = None,
) -> tuple[dict[int, tuple[Edit, ...]], tuple[str, ...]]:
    """The cells that each line of a plan changes, as the file writes them.

    Parameters
    ----------
    content, stations, understood, result, read
        As for :func:`repaired_table`.
    most : int, optional
        How often the file is read again at most; lines that are not tried by then have no edits.

    Returns
    -------
    dict of int to tuple of Edit
        By number of the line, where a way of writing it is read back as planned.
    tuple of str
        Why a line has none.
    """
    cells: dict[tuple[str, int], list[Any]] = {}
    for cell in understood:
        cells.setdefault((cell.parameter, cell.row), []).append(cell)
    comma = sum(re.fullmatch(r"\d+,\d+", c.read) is not None for c in understood) > sum(
        re.fullmatch(r"\d+\.\d+", c.read) is not None for c in understood
    )
    found: dict[int, tuple[Edit, ...]] = {}
    reasons: list[str] = []
    tries = 0
    for line in result.plan:
        row = row_of(stations, line)
        reason = f"{line.parameter} {line.after}: the table has no cell for it that is read back as planned"
        for ways in _ways(line, row, stations, cells, comma):
            if most is not None and tries >= most:
                break
            tries += 1
            taken = [edit for edits in found.values() for edit in edits]
            try:
                again = read(edited(content, [*taken, *ways]))
            except NotWritten as error:
                reason = str(error)
                continue
            if again is not None and len(again) == len(stations) and says(again, line, row):
                found[line.line] = tuple(ways)
                break
        if line.line not in found:
            reasons.append(reason)
    return found, tuple(reasons)


def row_of(stations: Stations, line: PlanLine) -> int:
    """Row of the stations that a line changes; the first of the machine for a value of the machine."""
    start = int(stations.first_rows[stations.machines.index(line.machine)])
    if line.station is None:
        return start
    names = stations.text("station")
    return next(row for row in range(start, len(stations)) if str(names[row]) == line.station)


def says(stations: Stations, line: PlanLine, row: int) -> bool:
    """Whether a table states what a line plans."""
    value = line.value
    entry = parameter(line.parameter)
    if isinstance(value, str):
        return bool(stations.choice(line.parameter).texts()[row] == value)
    if not isinstance(value, SizeValue):
        return bool(np.isclose(stations.number(line.parameter)[row], value, rtol=1e-6, atol=1e-9))
    size = stations.size(line.parameter)
    wanted = [value.nominal, *(np.nan if v is None else v for v in (value.lower, value.upper))]
    found = [float(v[row]) for v in (size.nominal, size.lower, size.upper)]
    word = str(size.tolerance_class[row])
    same_class = not word or not value.tolerance_class or word == value.tolerance_class or entry.unit != "mm"
    return same_class and bool(np.allclose(found, wanted, rtol=1e-6, atol=2e-6, equal_nan=True))


def stated(stations: Stations, name: str, row: int) -> float | str | SizeValue | None:
    """The present value of a parameter; None where nothing is stated."""
    if not stations.known(name)[row]:
        return None
    kind = parameter(name).kind
    if kind == "number":
        return float(stations.number(name)[row])
    if kind == "choice":
        return str(stations.choice(name).texts()[row])
    if kind == "text":
        return str(stations.text(name)[row])
    size = stations.size(name)
    lower, upper = (None if np.isnan(v[row]) else float(v[row]) for v in (size.lower, size.upper))
    return SizeValue(float(size.nominal[row]), lower, upper, str(size.tolerance_class[row]))


def _ways(
    line: PlanLine, row: int, stations: Stations, cells: dict[tuple[str, int], list[Any]], comma: bool
) -> Iterator[list[Edit]]:
    """Ways of writing one line into the file."""
    own = cells.get((line.parameter, row), [])
    old = stated(stations, line.parameter, row)
    if own and old is not None:
        each = [list(dict.fromkeys(variants(cell.read, old, line.value, comma)))[:MOST_WAYS] for cell in own]
        for k in range(max(map(len, each))):
            yield [
                _edit(cell.place, cell.read, texts[min(k, len(texts) - 1)], line)
                for cell, texts in zip(own, each, strict=True)
            ]
        if len(own) > 1 and isinstance(line.value, SizeValue):
            yield from _parts(own, old, line, comma)
    elif line.place is not None:
        for other in range(len(stations)):
            beside, like = cells.get((line.parameter, other), []), stated(stations, line.parameter, other)
            if len(beside) == 1 and like is not None:
                for text in list(variants(beside[0].read, like, line.value, comma))[:MOST_WAYS]:
                    yield [_edit(line.place, "", text, line)]
                break
        for text in variants("", 0.0, line.value, comma):
            yield [_edit(line.place, "", text, line)]


def _parts(own: Sequence[Any], old: Any, line: PlanLine, comma: bool) -> Iterator[list[Edit]]:
    """A size that stands in several cells: nominal, class, deviations each changed where it stands."""
    edits = []
    for cell in own:
        texts = [t for t in variants(cell.read, old, line.value, comma) if t != cell.read]
        if re.fullmatch(r"[A-Za-z]{1,2}\d{1,2}", cell.read.strip()) and isinstance(line.value, SizeValue):
            edits.append(_edit(cell.place, cell.read, line.value.tolerance_class, line))
        elif texts:
            edits.append(_edit(cell.place, cell.read, texts[0], line))
    yield edits


def _edit(place: Place, before: str, after: str, line: PlanLine) -> Edit:
    was = before or "nothing"
    return Edit(place, before, after, f"Line {line.line} of the plan: was {was}; {line.reason}.")


# --- the layout of the template ---------------------------------------------------------------------------------------


def template_text(stations: Stations, result: ReviewResult) -> str:
    """Every stated value with the plan applied, one row per position, headings as the template names them.

    Values that were assumed are left out: they are assumed again.
    """
    lines = {(row_of(stations, line), line.parameter): line.value for line in result.plan}
    names = [name for name in vocabulary() if name != "machine"]
    rows: list[dict[str, str]] = []
    for row in range(len(stations)):
        first = int(stations.first_rows[int(stations.machine_row[row])])
        cells = {"machine": stations.machines[int(stations.machine_row[row])]}
        for name in names:
            at = first if parameter(name).level == "machine" else row
            value = lines.get((at, name), stated(stations, name, row))
            assumed = stations.assumed.get(name)
            if value is not None and ((at, name) in lines or assumed is None or not assumed.rows[row]):
                cells[name] = _cell_text(value)
        rows.append(cells)
    used = ["machine", *(name for name in names if any(name in cells for cells in rows))]
    heads = [f"{n} [{parameter(n).unit}]" if parameter(n).unit not in ("", "1") else n for n in used]
    table = [heads, *([cells.get(name, "") for name in used] for cells in rows)]
    return "".join(",".join(map(_quoted, cells)) + "\n" for cells in table)


def _cell_text(value: float | str | SizeValue) -> str:
    if isinstance(value, str):
        return value
    if not isinstance(value, SizeValue):
        return plain(value)
    text = plain(value.nominal) + (f" {value.tolerance_class}" if value.tolerance_class else "")
    if value.lower is None or value.upper is None:
        return text
    bounds = f"{signed(value.upper)}/{signed(value.lower)}"
    return f"{text} ({bounds})" if value.tolerance_class else f"{text} {bounds}"


def _quoted(text: str) -> str:
    return '"' + text.replace('"', '""') + '"' if re.search(r'[",\n]', text) else text
