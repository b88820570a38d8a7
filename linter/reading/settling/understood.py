"""Every cell that was used, as read and as understood, for the part of a report that shows the reading."""

from collections.abc import Callable, Iterable, Iterator

import numpy as np

from linter.model.stations import Bools, Understood
from linter.model.vocabulary import Parameter
from linter.reading.files.grids import cell_text
from linter.reading.settling.one_value import Stated

#: A cell that was used: its parameter, where it was stated, its index there, the row, and its text.
Used = tuple[Parameter, Stated, int, int, str]
#: Parameter, row, sheet, cell or JSON Pointer, and whether it is a JSON Pointer.
At = tuple[str, int, str | None, str, bool]


def used_cells(
    used: Iterable[tuple[Parameter, list[Stated]]], row_of: Callable[[Parameter, int], int], rows: Bools | None = None
) -> Iterator[Used]:
    """Every cell that was used, each once, in the order of the vocabulary; ``row_of`` gives the row of a group.

    With ``rows`` only the cells of the rows that it is true for.
    """
    for entry, stated in used:
        places: set[tuple[str | None, str]] = set()
        for one in stated:
            strip = one.strip
            told: set[int] = {t.index for t in one.values.troubles if t.kind in ("unreadable", "missing")}
            seen: set[int] = set()
            cells = strip.cells.tolist() if rows is None else strip.cells
            for group, cell in zip(one.group.tolist(), one.cell.tolist(), strict=True):
                row = row_of(entry, group)
                if (rows is not None and not rows[row]) or cell in told or cell in seen:
                    continue
                read = strip.whole.get(cell) or cell_text(cells[cell])
                if not read:
                    continue
                seen.add(cell)
                if (place := (strip.sheet, strip.at(cell))) not in places:
                    places.add(place)
                    yield entry, one, cell, row, read


def understood_cells(file: str, used: Iterable[Used]) -> Iterator[Understood]:
    """The cells of :func:`used_cells` with their places, as read and as understood."""
    for entry, one, cell, row, read in used:
        yield Understood(entry.name, row, one.strip.place(file, cell), read, in_words(entry, one, cell))


def places(used: Iterable[Used]) -> Iterator[At]:
    """Where the cells of :func:`used_cells` stand."""
    for entry, one, cell, row, _ in used:
        yield entry.name, row, one.strip.sheet, one.strip.at(cell), one.strip.pointers is not None


def in_words(entry: Parameter, stated: Stated, cell: int) -> str:
    """The value of one cell as understood, in canonical units."""
    values = stated.values
    unit = "" if entry.unit in ("", "1") else f" {entry.unit}"
    if entry.kind == "choice":
        code = values.number[cell]
        return "" if np.isnan(code) else entry.choices[int(code)]
    if entry.kind == "text":
        return str(values.words[cell]) if values.words is not None else ""
    parts = []
    if not np.isnan(values.number[cell]):
        parts.append(f"{values.number[cell]:.10g}{unit}")
    if values.words is not None and values.words[cell]:
        parts.append(str(values.words[cell]))
    if values.lower is not None and values.upper is not None:
        low, high = values.lower[cell], values.upper[cell]
        if not (np.isnan(low) and np.isnan(high)):
            parts.append(f"deviations {high:+.6g}/{low:+.6g}{unit}")
    if stated.strip.aspect != "value":
        parts.append(f"({stated.strip.aspect})")
    return " ".join(parts)
