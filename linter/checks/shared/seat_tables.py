"""The published table of tolerance classes of a seat, and the votes of its sources for what is asked."""

from collections.abc import Mapping
from functools import lru_cache
from hashlib import sha256
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.mechanics import limits as iso286
from linter.mechanics.tables import Coded, coded
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import number_text

#: Up to so many rows each is asked for by itself.
_FEW = 64


def signed_text(value: float, unit: str = "um") -> str:
    """A deviation with its sign, as it is written on a drawing."""
    return ("+" if value > 0 else "") + number_text(float(value), unit)


class Itself:
    """A table as a key: the same object is the same key."""

    def __init__(self, table: Mapping[str, NDArray[Any]]) -> None:
        self.table = table

    def __hash__(self) -> int:
        return id(self.table)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Itself) and other.table is self.table


@lru_cache
def content_of(of: Itself) -> str:
    """A short text that is the same for two tables that say the same."""
    return sha256(repr([(name, column.tolist()) for name, column in of.table.items()]).encode()).hexdigest()


@frozen(eq=False)
class SeatTable:
    """The published table of a seat made ready: R rows, L classes.

    Attributes
    ----------
    ring_load, family, bearing_classes, load_band, housing, slides : Coded
        Words by row.
    over, incl, weight : float array, shape (R,)
        Range of the diameter [mm], and how many sources print the row (a row without a class counts half).
    labels : tuple of str
        The classes in the order of the table, deviations in their place where it prints none.
    rows : int array, shape (R,)
        The rows by class, those of one class in the order of the table.
    starts : int array, shape (L,)
        Where each class begins in ``rows``.
    named : bool array, shape (L,)
        Classes of ISO 286.
    limits : float array, shape (L, 2, cells)
        Their deviations [um] by size cell.
    ends : float array
        Diameters [mm] up to which the same is printed.
    """

    ring_load: Coded
    family: Coded
    bearing_classes: Coded
    load_band: Coded
    housing: Coded
    slides: Coded
    over: Floats
    incl: Floats
    weight: Floats
    labels: tuple[str, ...]
    rows: NDArray[np.intp]
    starts: NDArray[np.intp]
    named: Bools
    limits: Floats
    ends: Floats


@lru_cache
def seat_table(of: Itself) -> SeatTable:
    """The table of a seat as a rulebook has it, made ready once."""
    table = of.table
    names, count = [str(name) for name in table["tolerance_class"]], len(table["tolerance_class"])
    labels = [
        name or f"{signed_text(upper)}/{signed_text(lower)} µm"
        for name, lower, upper in zip(names, table["lower"], table["upper"], strict=True)
    ]
    known = list(dict.fromkeys(labels))
    of_label = np.array([known.index(label) for label in labels])
    rows = np.argsort(of_label, kind="stable")
    firsts = rows[starts := np.searchsorted(of_label[rows], np.arange(len(known)))]
    cells = len(iso286.class_limits("h6")[0])
    limits = [
        iso286.class_limits(names[i]) if names[i] else np.outer([table["lower"][i], table["upper"][i]], np.ones(cells))
        for i in firsts
    ]
    sources = np.array([1.0 + str(text).count("; ") for text in table["source"]])

    def words(name: str) -> Coded:
        return coded(table[name].astype(str)) if name in table else Coded(("any",), np.zeros(count, np.intp))

    return SeatTable(
        words("ring_load"), words("family"), words("bearing_classes"), words("load_band"),
        words("housing"), words("slides"), table["over"].astype(float), table["incl"].astype(float),
        sources * np.where(np.array(names) != "", 1.0, 0.5), tuple(known), rows, starts,
        np.array([names[i] != "" for i in firsts]), np.array(limits, dtype=float),
        np.array(sorted({*table["over"].tolist(), *table["incl"].tolist(), *iso286.cell_ends().tolist()})),
    )  # fmt: skip


@frozen(eq=False)
class Asked:
    """What the table of a seat is asked for, arrays of shape (rows,)."""

    diameter: Floats
    load: Choice
    bands: Mapping[str, Bools]
    kind: Choice
    accuracy: Choice
    light_alloy: Bools
    free: Bools

    def different(self, table: SeatTable) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
        """Rows that differ in what the table asks for, and for each row the one of these that is like it."""
        count = len(self.diameter)
        if count <= _FEW:
            return np.arange(count), np.arange(count)
        key = np.searchsorted(table.ends, self.diameter, side="left").astype(np.int64)
        for words in (self.load, self.kind, self.accuracy):
            key = key * (len(words.words) + 1) + words.codes + 1
        for mask in (*self.bands.values(), self.light_alloy, self.free):
            key = 2 * key + mask
        _, rows, like = np.unique(key, return_index=True, return_inverse=True)
        return rows, like

    def take(self, rows: NDArray[np.intp]) -> "Asked":
        """The same for a choice of rows."""
        load, kind, accuracy = (Choice(c.words, c.codes[rows]) for c in (self.load, self.kind, self.accuracy))
        bands = {word: mask[rows] for word, mask in self.bands.items()}
        return Asked(self.diameter[rows], load, bands, kind, accuracy, self.light_alloy[rows], self.free[rows])


def _matches(table: SeatTable, asked: Asked, side: str) -> Bools:
    """Which rows of the table are about which of the rows asked for, shape (R, rows)."""
    every, load = np.ones(len(asked.diameter), dtype=bool), asked.load

    def of_load(word: str) -> Bools:  # the published rows for an indeterminate load are those for a rotating one
        turning = side == "shaft" and word == "rotating"
        return load.is_in("rotating", "indeterminate") if turning else load.is_in(word)

    def of_classes(cell: str) -> Bools:
        words = cell.split()
        rows = asked.accuracy.is_in(*(word for word in words if word in asked.accuracy.words))
        return rows | ~asked.accuracy.known if "Normal" in words else rows

    def of_band(cell: str) -> Bools:
        return every if cell == "any" else np.logical_or.reduce([asked.bands[word] for word in cell.split()])

    def of_role(word: str) -> Bools:
        return ~(asked.free & load.is_in("stationary")) if word == "no" else every

    found = (asked.diameter > table.over[:, None]) & (asked.diameter <= table.incl[:, None])
    for column, rows_of in (
        (table.ring_load, of_load),
        (table.family, lambda word: _family(asked.kind, word)),
        (table.bearing_classes, of_classes),
        (table.load_band, of_band),
        (table.housing, lambda word: every if word == "any" else asked.light_alloy),
        (table.slides, of_role),
    ):
        found &= np.array([rows_of(word) for word in column.known])[column.code]
    return found


@frozen(eq=False)
class Tally:
    """Votes of the sources for each class, and what follows; arrays of shape (rows,), by class (L, rows)."""

    lower: Floats
    upper: Floats
    votes: Floats
    place: Floats
    best: NDArray[np.intp]
    first_lower: Floats
    first_upper: Floats


def tally_of(table: SeatTable, asked: Asked, side: str) -> Tally:
    """Every row of the table of a seat counted for what is asked, and the class that most sources print.

    A class made for the role of the ring comes before any other. For a ring with a rotating load, of those classes that
    about as many sources print, the one that holds it best. What one station is told does not depend on the others.
    """
    about = _matches(table, asked, side)
    made_for = np.array([{"yes": asked.free, "no": ~asked.free}.get(word, False & asked.free)
                         for word in table.slides.known])[table.slides.code]  # fmt: skip
    weight = np.where(about, table.weight[:, None] * np.where(made_for, 2.0, 1.0), 0.0)
    votes = np.add.reduceat(weight[table.rows], table.starts, axis=0)
    place = np.where(about, np.arange(len(about))[:, None], np.inf)
    place = np.minimum.reduceat(place[table.rows], table.starts, axis=0)
    cell, inside = iso286.size_cell(asked.diameter)
    low, high = np.moveaxis(np.where(inside | ~table.named[:, None, None], table.limits[:, :, cell], np.nan), 1, 0)
    stationary, chosen = asked.load.is_in("stationary"), votes > 0
    hold = np.where(stationary, 0.0, low if side == "shaft" else -high)
    wins = chosen & (votes >= np.where(stationary, 1.0, 0.5) * votes.max(axis=0)) & ~np.isnan(hold)
    for measure in (hold, votes, -place):
        held = np.where(wins, measure, -np.inf)
        wins &= held == held.max(axis=0)
    best, any_wins, columns = np.argmax(wins, axis=0), wins.any(axis=0), np.arange(len(cell))
    return Tally(
        np.fmin.reduce(np.where(chosen, low, np.inf), axis=0), np.fmax.reduce(np.where(chosen, high, -np.inf), axis=0),
        votes, place, best, np.where(any_wins, low[best, columns], np.nan),
        np.where(any_wins, high[best, columns], np.nan),
    )  # fmt: skip


def _family(kind: Choice, word: str) -> Bools:
    """Rows of a bearing family of the tables; a bearing that states no type counts as a ball bearing."""
    if word == "any":
        return np.ones(kind.codes.shape, dtype=bool)
    if word == "ball":
        return kind.is_in("deep groove ball", "angular contact ball") | ~kind.known
    return kind.is_in(word) if word in kind.words else np.zeros(kind.codes.shape, dtype=bool)
