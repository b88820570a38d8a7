"""One parameter for all rows as arrays: sizes with their tolerance, choices as codes, assumptions."""

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.mechanics.limits import deviations

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]
#: A choice of rows: their indices, or a slice.
Rows = NDArray[np.intp] | slice


@frozen(eq=False)
class Toleranced:
    """A toleranced column: nominal, deviations and class, each of shape (rows,).

    Attributes
    ----------
    nominal : float array
        Nominal size in the canonical unit of its parameter; NaN where absent.
    lower, upper : float array
        Deviations from the nominal in the same unit; NaN where no tolerance is stated.
    tolerance_class : object array of str
        ISO 286 class such as ``k5`` as stated, empty where none is.
    """

    nominal: Floats
    lower: Floats
    upper: Floats
    tolerance_class: NDArray[Any]

    @property
    def smallest(self) -> Floats:
        """Lower limit of size; NaN where no tolerance is stated."""
        return self.nominal + self.lower

    @property
    def largest(self) -> Floats:
        """Upper limit of size; NaN where no tolerance is stated."""
        return self.nominal + self.upper

    def take(self, rows: Rows) -> "Toleranced":
        """The same for a choice of rows."""
        return Toleranced(self.nominal[rows], self.lower[rows], self.upper[rows], self.tolerance_class[rows])

    @classmethod
    def concat(cls, columns: "Sequence[Toleranced]") -> "Toleranced":
        """Several columns one after the other."""
        return cls(
            np.concatenate([c.nominal for c in columns]),
            np.concatenate([c.lower for c in columns]),
            np.concatenate([c.upper for c in columns]),
            np.concatenate([c.tolerance_class for c in columns]),
        )


@frozen(eq=False)
class Choice:
    """A choice column as codes into its words; -1 where absent."""

    words: tuple[str, ...]
    codes: NDArray[np.int8]

    @property
    def known(self) -> Bools:
        """Rows that state a word."""
        return self.codes >= 0

    def is_in(self, *words: str) -> Bools:
        """Rows whose word is one of these; every word must exist in the vocabulary."""
        found = np.zeros(self.codes.shape, dtype=bool)
        for word in words:
            found |= self.codes == self.words.index(word)
        return found

    def map(self, values: Mapping[str, float], default: float = np.nan) -> Floats:
        """A number per row from a number per word; ``default`` where the word is absent or has no number."""
        table = np.full(len(self.words) + 1, default, dtype=float)
        for word, value in values.items():
            table[self.words.index(word)] = value
        table[-1] = default
        return table[self.codes]

    def texts(self) -> NDArray[Any]:
        """The word of each row as an object array, empty where absent."""
        return np.array([*self.words, ""], dtype=object)[self.codes]


@frozen(eq=False)
class Derivation:
    """Where a value comes from that the table does not state itself: its designation, or a list of bearings.

    Attributes
    ----------
    rows : bool array, shape (rows,)
        Rows whose value is derived.
    basis : object array of str, shape (rows,)
        What it is derived from, with its source; empty elsewhere.
    """

    rows: Bools
    basis: NDArray[Any]

    def take(self, rows: "Rows") -> "Derivation":
        """The same for a choice of rows."""
        return Derivation(self.rows[rows], self.basis[rows])

    @classmethod
    def concat(cls, columns: "Sequence[Derivation | None]", counts: Sequence[int]) -> "Derivation":
        """Those of several tables one after the other; None for a table of so many rows that has none."""
        empty = [(np.zeros(n, dtype=bool), np.full(n, "", dtype=object)) for n in counts]
        parts = [e if c is None else (c.rows, c.basis) for c, e in zip(columns, empty, strict=True)]
        return cls(np.concatenate([rows for rows, _ in parts]), np.concatenate([basis for _, basis in parts]))


@frozen(eq=False)
class Assumption:
    """A documented default that stands in for an absent value."""

    rows: Bools
    reason: str

    @classmethod
    def concat(cls, columns: "Sequence[Assumption | None]", counts: Sequence[int]) -> "Assumption":
        """Those of several tables one after the other; None for a table of so many rows that has none."""
        rows = [np.zeros(n, dtype=bool) if c is None else c.rows for c, n in zip(columns, counts, strict=True)]
        return cls(np.concatenate(rows), "; or ".join(dict.fromkeys(c.reason for c in columns if c is not None)))


def size_parts(value: Any) -> tuple[float, float, float, str]:
    """Nominal, deviations and class of a size as a worked case states it."""
    if value is None:
        return np.nan, np.nan, np.nan, ""
    if isinstance(value, (int, float)):
        return float(value), np.nan, np.nan, ""
    if isinstance(value, str) or len(value) < 2:
        raise ValueError(f'{value!r} is not a size as a case states it: write 8, [8, "k5"] or [8, -0.005, 0.0] (mm)')
    if isinstance(value[1], str):
        lower, upper = deviations(value[1], value[0])
        return float(value[0]), float(lower) / 1000, float(upper) / 1000, value[1]
    return float(value[0]), float(value[1]), float(value[2]), str(value[3]) if len(value) > 3 else ""
