"""Which values would decide an undecided gate, and which cells of the table they belong in."""

import re
from collections.abc import Iterable

import numpy as np

from linter.model.findings import Assessment, Needed
from linter.model.places import Place, column_letters
from linter.model.stations import Stations
from linter.model.vocabulary import parameter, vocabulary

#: Rows and parameters that are looked at to learn how a table is laid out.
_LIKE, _WITNESSES = 6, 12
#: Values whose cell is told; beyond that their row is.
MOST_CELLS = 2000


def needed(stations: Stations, assessments: Iterable[Assessment]) -> tuple[Needed, ...]:
    """Values that assessments want which must be judged and were not.

    Parameters
    ----------
    stations : Stations
        What was reviewed.
    assessments : iterable of Assessment
        Of these stations; those that are not assessed and must be are looked at.

    Returns
    -------
    tuple of Needed
        Each value once, by machine, station and the order of the vocabulary. The cell is told where other stations show
        where the table keeps such values.
    """
    rows_of = {name: np.flatnonzero(stations.machine_row == k) for k, name in enumerate(stations.machines)}
    names = stations.text("station")
    clauses: dict[tuple[str, str | None, str], dict[str, None]] = {}
    row_of: dict[tuple[str, str | None, str], int] = {}
    for item in assessments:
        if not item.must or item.outcome != "not assessed":
            continue
        for name in item.missing:
            for row in rows_of[item.machine]:
                if item.station is None and stations.known(name)[row]:
                    continue
                if item.station is not None and str(names[row]) != item.station:
                    continue
                station = None if parameter(name).level == "machine" else str(names[row])
                key = (item.machine, station, name)
                clauses.setdefault(key, {})[item.clause] = None
                row_of.setdefault(key, int(row))
    order = {name: k for k, name in enumerate(vocabulary())}
    cells = Cells(stations)
    taken = {place for row in set(row_of.values()) for place in cells.stated(row).values()}
    found: list[Needed] = []
    for key in sorted(clauses, key=lambda k: (k[0], k[1] or "", order[k[2]])):
        machine, station, name = key
        place = cells.to_fill(name, row_of[key]) if len(found) < MOST_CELLS else None
        place = None if place in taken else place
        near = "" if place is not None else cells.near(row_of[key])
        found.append(Needed(name, machine, station, place, near, tuple(clauses[key])))
    return tuple(found)


class Cells:
    """Where the table keeps the values of its stations, as those that are stated show it."""

    def __init__(self, stations: Stations) -> None:
        self.stations = stations
        self.found: dict[int, dict[str, Place]] = {}

    def stated(self, row: int) -> dict[str, Place]:
        """Places of a row's own values."""
        if row not in self.found:
            places = {name: self.stations.place(name, row) for name in self.stations.places}
            self.found[row] = {name: place for name, place in places.items() if place is not None}
        return self.found[row]

    def near(self, row: int) -> str:
        """The row or column that all values of a station share, in words."""
        places = [p for name, p in self.stated(row).items() if parameter(name).level == "station"]
        cells = [cell for place in places if (cell := _cell(place)) is not None]
        if len(cells) < 2:
            return ""
        if len({line for line, _ in cells}) == 1:
            return f"row {cells[0][0]}"
        return f"column {column_letters(cells[0][1])}" if len({column for _, column in cells}) == 1 else ""

    def to_fill(self, name: str, row: int) -> Place | None:
        """The cell where the table would state a parameter of a row.

        Another row that states the parameter lies as far from this one as their other values do: where two of those or
        more agree on the way, the parameter's own cell is that far too. None where the table is not that regular.
        """
        own = {n: p for n, p in self.stated(row).items() if parameter(n).level == parameter(name).level}
        for other in self.like(name, row):
            theirs = self.stated(other)
            shared = [n for n in own if n in theirs and n not in ("machine", "station")]
            moved = {_moved(theirs[name], own[n], theirs[n]) for n in shared[:_WITNESSES]}
            if len(shared) >= 2 and len(moved) == 1:
                return moved.pop()
        return None

    def like(self, name: str, row: int) -> list[int]:
        """Rows that state a parameter, those of the same machine first, then the nearest."""
        s = self.stations
        if name not in s.places:
            return []
        whole = parameter(name).level == "machine"
        known = np.flatnonzero(s.known(name))
        near = known[np.argsort(np.abs(known - row), kind="stable")][: 4 * _LIKE].tolist()
        near = [r for r in near if name in self.stated(r)]
        same = [r for r in near if s.machine_row[r] == s.machine_row[row] and not whole]
        return [*same, *(r for r in near if s.machine_row[r] != s.machine_row[row])][:_LIKE]


def _cell(place: Place) -> tuple[int, int] | None:
    """Row and column of a cell counted from 1."""
    found = re.fullmatch(r"([A-Z]+)([0-9]+)", place.cell or "")
    if found is None:
        return None
    column = 0
    for letter in found[1]:
        column = column * 26 + ord(letter) - ord("A") + 1
    return int(found[2]), column


def _moved(place: Place, mine: Place, its: Place) -> Place | None:
    """A place moved by the way from one value of another row to the same value of this row."""
    if mine.file != its.file or mine.sheet != its.sheet or mine.sheet != place.sheet:
        return None
    if place.pointer is not None and mine.pointer is not None and its.pointer is not None:
        here, there, away = (p.split("/") for p in (mine.pointer, its.pointer, place.pointer))
        if len(here) != len(there):
            return None
        ways = {k: here[k] for k in range(len(here)) if here[k] != there[k]}
        if any(k >= len(away) or away[k] != there[k] for k in ways):
            return None
        return Place(place.file, pointer="/".join(ways.get(k, part) for k, part in enumerate(away)))
    cells = [_cell(p) for p in (place, mine, its)]
    if any(cell is None for cell in cells):
        return None
    (r, c), (r1, c1), (r2, c2) = (cell for cell in cells if cell is not None)
    if r + r1 - r2 < 1 or c + c1 - c2 < 1:
        return None
    return Place(place.file, place.sheet, f"{column_letters(c + c1 - c2)}{r + r1 - r2}")
