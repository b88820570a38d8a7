"""Reading of the tables in ``mechanics/data`` and the look-ups that all of them share.

Every table is a CSV file with a ``source`` column. Its entries are keys of ``data/sources.csv``, or say in words where
a value comes from (``from memory of ...``, ``derived``, ``common practice``). Ranges are "over / up to and including".

One rule holds in all functions built on these tables: a missing argument (NaN, None or an empty word) gives NaN; an
argument outside the table raises ``ValueError``, or gives NaN in the function whose name ends in ``_or_nan``.
"""

import csv
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

_DATA = Path(__file__).resolve().parent / "data"


@cache
def rows(table: str) -> tuple[dict[str, str], ...]:
    """Rows of one data table, read once.

    Parameters
    ----------
    table : str
        Name of the table without extension, for example ``standard_tolerances``.

    Returns
    -------
    tuple of dict
        One dictionary of texts per row, keyed by the heading; not to be changed.
    """
    with (_DATA / f"{table}.csv").open(newline="", encoding="utf-8") as file:
        heading, *cells = csv.reader(file)
    return tuple(dict(zip(heading, row, strict=True)) for row in cells)


@cache
def sources() -> dict[str, str]:
    """Documents behind the keys of the ``source`` columns."""
    return {row["key"]: row["document"] for row in rows("sources")}


def number(text: str, blank: float = np.nan) -> float:
    """Cell of a table as a number; an empty cell is ``blank``."""
    return float(text) if text else blank


def words(values: ArrayLike) -> NDArray[np.str_]:
    """Words as a numpy text array, any shape; None and NaN become the empty word."""
    array = np.asarray(values)
    if array.dtype.kind == "U":
        return array
    if array.dtype.kind == "f" and np.isnan(array).all():
        return np.full(array.shape, "")
    array = array.astype(object)
    missing = (array == None) | (array != array)  # noqa: E711 - element by element; NaN differs from itself
    return np.where(missing, "", array).astype(np.str_)


class Coded(NamedTuple):
    """Words of many rows: the different ones, and the index of the word of each row (-1 is the last)."""

    known: tuple[str, ...]
    code: NDArray[Any]

    def is_word(self, word: str) -> NDArray[np.bool_]:
        """Where the word stands."""
        return np.array([one == word for one in self.known])[self.code]

    def texts(self) -> NDArray[np.str_]:
        """The words as a numpy text array."""
        return np.array(self.known)[self.code]


def coded(values: ArrayLike | Coded) -> Coded:
    """Words by their code, any shape; None and NaN become the empty word."""
    if isinstance(values, Coded):
        return values
    if isinstance(values, str):
        return Coded((values,), np.zeros((), np.intp))
    array = np.asarray(values)
    rows = array.ravel().tolist()  # a dictionary is faster here than sorting, and np.unique loads numpy.ma
    known = [*dict.fromkeys(rows)]
    place = dict(zip(known, range(len(known)), strict=True))
    code = np.fromiter(map(place.__getitem__, rows), np.intp, len(rows)).reshape(array.shape)
    return Coded(tuple(words(known).tolist()), code)


def in_ranges(over: ArrayLike, incl: ArrayLike, values: ArrayLike, size: NDArray[np.float64]) -> NDArray[np.float64]:
    """Value of the range that each size lies in.

    Parameters
    ----------
    over, incl, values : array_like, shape (n,)
        Lower bound (excluded), upper bound (included) and value of each range, in rising order; of shape (k, n) for
        several values at once.
    size : ndarray
        Sizes, in the unit of the bounds.

    Returns
    -------
    ndarray
        Values in the shape of ``size``, (k, ...) of several; NaN in a gap, beyond either end and where the size is NaN.
    """
    lower, upper, value = (np.asarray(a, dtype=np.float64) for a in (over, incl, values))
    at = np.minimum(np.searchsorted(upper, size, side="left"), upper.size - 1)
    inside = (size > lower[at]) & (size <= upper[at])
    return np.where(inside, value[..., at], np.nan)


def refuse(undefined: NDArray[np.bool_], message: str, **given: ArrayLike) -> None:
    """Raise ``ValueError`` for the first element that is undefined.

    Parameters
    ----------
    undefined : ndarray of bool
        True where the table has no value although nothing is missing.
    message : str
        What was expected.
    **given : array_like
        Arguments that broadcast with ``undefined``, named for the message.

    Raises
    ------
    ValueError
        With the first values that have no place in the table.
    """
    if not undefined.any():
        return
    first = int(np.flatnonzero(undefined)[0])
    shown = ", ".join(
        f"{name.replace('_', ' ')} {np.broadcast_to(np.asarray(value, dtype=object), undefined.shape).flat[first]!s}"
        for name, value in given.items()
    )
    raise ValueError(f"no value for {shown}: {message}")
