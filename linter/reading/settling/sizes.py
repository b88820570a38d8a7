"""Toleranced sizes from all the cells that state a part of them: nominal, deviations, limits, class."""

import re
from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from linter.mechanics.limits import deviations_or_nan
from linter.model.stations import Toleranced
from linter.model.vocabulary import Parameter
from linter.reading.cells.signs import fold
from linter.reading.cells.size import LEAST_DOUBTED, are_of_class, too_wide
from linter.reading.cells.size_items import WIDEST_LIMITS
from linter.reading.files.grids import cell_text, is_blank
from linter.reading.settling.limits_beside import of_their_nominal
from linter.reading.settling.one_value import Ints, Stated, settle_numbers, settle_words

Floats = NDArray[np.float64]

#: Deviations of a seat beyond this part of its size are no seat's (those of c11 at 250 mm are half of it).
WIDEST_SEAT = 0.004
#: Two numbers from here on (mm) that lie near each other are sizes and no deviations.
_LEAST_SIZE = 1.0
#: Two statements of the same deviation that differ by less are equal within rounding (um or mm alike, relative to the
#: canonical unit's usual last place: 0.05 um).
_EQUAL = {"mm": 5e-5, "um": 5e-2}


def settle_sizes(
    entry: Parameter,
    stated: list[Stated],
    count: int,
    disagree: Callable[..., None],
    problem_at: Callable[..., None],
    basic: Floats | None = None,
) -> tuple[Toleranced, Ints, NDArray[np.bool_]]:
    """One toleranced size per group.

    Parameters
    ----------
    entry : Parameter
        The parameter.
    stated : list of Stated
        All cells that state it or a part of it.
    count : int
        Number of groups.
    disagree, problem_at : callable
        Told of cells that differ and of parts that do not make a tolerance.
    basic : float array, shape (count,), optional
        Nominal that a tolerance belongs to where none is stated beside it: of a seat the diameter of its bearing.

    Returns
    -------
    Toleranced
        Columns of shape (count,).
    source : int array, shape (count,)
        Position over all cells of the one the size is shown by; -1 where nothing is stated.
    middle : bool array, shape (count,)
        Where no nominal is stated and the middle of two limits stands in.
    """
    if all(s.strip.aspect == "value" and s.values.words is None for s in stated):
        nominal, source = settle_numbers(entry, stated, count, disagree)
        absent = np.full(count, np.nan)
        return (
            Toleranced(nominal, absent, absent.copy(), np.full(count, "", dtype=object)),
            source,
            np.zeros(count, dtype=bool),
        )
    return _Parts(entry, of_their_nominal(stated), count, disagree, problem_at, basic).settle()


class _Parts:
    """The parts of one toleranced parameter, by group."""

    def __init__(
        self,
        entry: Parameter,
        stated: list[Stated],
        count: int,
        disagree: Callable[..., None],
        problem_at: Callable[..., None],
        basic: Floats | None,
    ) -> None:
        self.basic = basic
        self.entry, self.stated, self.count = entry, stated, count
        self.disagree, self.problem_at = disagree, problem_at
        self.wide = entry.unit in ("um", "N", "N/mm") or entry.name == "axial_float"
        self.starts = np.cumsum([0, *(len(s.cell) for s in stated)])

    def _pick(self, *aspects: str) -> tuple[list[Stated], Ints]:
        """Strips of some aspects, and the position over all cells of each of theirs."""
        chosen = [i for i, s in enumerate(self.stated) if s.strip.aspect in aspects]
        spans = [np.arange(self.starts[i], self.starts[i + 1]) for i in chosen]
        return [self.stated[i] for i in chosen], np.concatenate(spans) if spans else np.zeros(0, np.intp)

    def _numbers(self, pick: str, *aspects: str) -> tuple[Floats, Ints]:
        chosen, spans = self._pick(*aspects)
        if not chosen:
            return np.full(self.count, np.nan), np.full(self.count, -1, dtype=np.intp)
        numbers, source = settle_numbers(self.entry, chosen, self.count, self.disagree, pick)
        return numbers, _over_all(spans, source)

    def _tell(self, kind: str, group: int, position: int, code: str, expected: str, sentence: str) -> None:
        strip = int(np.searchsorted(self.starts, position, side="right")) - 1
        at = position - int(self.starts[strip])
        self.problem_at(kind, self.entry, group, self.stated[strip], at, code, expected, sentence)

    def _read_at(self, position: int) -> str:
        """Text of a cell by its position over all cells."""
        strip = int(np.searchsorted(self.starts, position, side="right")) - 1
        stated = self.stated[strip]
        return fold(cell_text(stated.strip.cells[stated.cell[position - int(self.starts[strip])]]))

    def settle(self) -> tuple[Toleranced, Ints, NDArray[np.bool_]]:
        """All parts joined."""
        nominal, at_nominal = self._numbers("number", "value")
        lower, at_inline = self._numbers("lower", "value", "tolerance")
        upper, _ = self._numbers("upper", "value", "tolerance")
        middle = self._middle_only()
        self._half(lower, upper)
        words, at_words = self._classes()
        column_upper, at_upper = self._numbers("number", "upper")
        column_lower, at_lower = self._numbers("number", "lower")
        largest, at_largest = self._numbers("number", "max")
        smallest, at_smallest = self._numbers("number", "min")
        if not self.wide:
            self._sizes_as_deviations(nominal, (column_lower, smallest), (column_upper, largest), at_upper, at_largest)

        self._one_alone(column_lower, column_upper, at_lower, at_upper, "deviation")
        self._one_alone(smallest, largest, at_smallest, at_largest, "limit")
        self._reversed(column_lower, column_upper, at_upper, "deviations")
        self._reversed(smallest, largest, at_largest, "limits")
        without_limits = np.isnan(largest) & np.isnan(smallest)
        nominal = self._of_bearing(nominal, without_limits, at_words, at_inline, at_upper)
        self._far_limits(nominal, smallest, largest, at_largest)
        self._too_wide(nominal, column_lower, column_upper, words, at_upper)
        self._too_wide(nominal, lower, upper, words, at_inline)
        lower, upper = self._join(lower, upper, column_lower, column_upper, at_upper)
        from_limits = np.isnan(nominal) & ~np.isnan(largest)
        nominal = np.where(from_limits, 0.5 * (smallest + largest), nominal)
        middle |= from_limits
        lower, upper = self._join(lower, upper, smallest - nominal, largest - nominal, at_largest)
        lower, upper = self._from_class(nominal, lower, upper, words, at_words)
        self._without_nominal(nominal, lower, upper, words, at_inline, at_words, at_upper)
        source = at_nominal.copy()
        for other in (at_largest, at_inline, at_words, at_upper):
            source = np.where(source < 0, other, source)
        keep = ~np.isnan(nominal)
        nan = np.where(keep, 0.0, np.nan)
        size = Toleranced(nominal, lower + nan, upper + nan, np.where(keep, words, "").astype(object))
        return size, source, middle & keep

    def _of_bearing(self, nominal: Floats, without_limits: NDArray[np.bool_], *positions: Ints) -> Floats:
        """The bearing's diameter as the nominal of a seat that states only its class or deviations; that is said."""
        if self.basic is None:
            return nominal
        unstated = np.isnan(nominal) & ~np.isnan(self.basic) & without_limits
        if not unstated.any():
            return nominal
        for one in self.stated:
            if one.strip.aspect == "value":
                filled = [
                    not is_blank(one.strip.cells[c]) and not one.values.has_tolerance(c) for c in one.cell.tolist()
                ]
                unstated[one.group[np.array(filled, dtype=bool)]] = False
        nominal = nominal.copy()
        for group in np.flatnonzero(unstated).tolist():
            position = next((int(p[group]) for p in positions if p[group] >= 0), -1)
            if position >= 0:
                nominal[group] = self.basic[group]
                said = f"no nominal stands with the tolerance; that of the bearing, {self.basic[group]:g} mm, is taken"
                self._tell("assumption", group, position, "nominal-of-bearing", "the nominal of the seat", said)
        return nominal

    def _middle_only(self) -> NDArray[np.bool_]:
        """Groups whose nominal is only the middle of two limits."""
        middle = np.zeros(self.count, dtype=bool)
        for one in self.stated:
            if one.values.limits is not None:
                middle[one.group[one.values.limits[one.cell]]] = True
        return middle

    @staticmethod
    def _half(lower: Floats, upper: Floats) -> None:
        """A deviation whose partner disagreed is of no use alone."""
        half = np.isnan(lower) != np.isnan(upper)
        lower[half] = upper[half] = np.nan

    def _classes(self) -> tuple[NDArray[np.object_], Ints]:
        """Tolerance class per group; of a fit pair the half that belongs to this part."""
        chosen, spans = self._pick("value", "tolerance")
        words, source = settle_words(self.entry, chosen, self.count, self.disagree)
        position = _over_all(spans, source)
        several = [word for word in set(words.tolist()) if " " in word or "/" in word]
        for group in np.flatnonzero(np.isin(words, several)).tolist() if several else ():
            halves = [half.strip() for half in words[group].replace(" ", "").split("/")]
            hole = self.entry.name.startswith("housing")
            fitting = [half for half in halves if half[:1].isupper() == hole]
            if len(halves) == 2 and len(fitting) == 1 and self.entry.name.startswith(("housing", "shaft")):
                words[group] = fitting[0]
            elif len(halves) == 1:
                words[group] = halves[0]
            else:
                said = f"“{words[group]}” does not name one class of this part"
                self._tell("partly", group, int(position[group]), "unknown-class", "one class such as k5 or H6", said)
                words[group] = ""
        return words, position

    def _one_alone(self, low: Floats, high: Floats, at_low: Ints, at_high: Ints, what: str) -> None:
        """One of two columns filled: nothing stands in for the other."""
        for group in np.flatnonzero(np.isnan(low) != np.isnan(high)).tolist():
            missing = "lower" if np.isnan(low[group]) else "upper"
            position = int(at_high[group] if missing == "lower" else at_low[group])
            if position >= 0:
                said = f"the {missing} {what} is missing beside the other one; the tolerance is not used"
                self._tell("partly", group, position, "one-sided", f"both {what}s", said)
            low[group] = high[group] = np.nan

    def _sizes_as_deviations(
        self,
        nominal: Floats,
        lows: tuple[Floats, Floats],
        highs: tuple[Floats, Floats],
        at_upper: Ints,
        at_largest: Ints,
    ) -> None:
        """Limits of size below words for a low and a high value: both lie as near the size as limits do.

        ``lows`` and ``highs`` are the deviations and the limits that the columns state. No deviation of a seat is as
        large as its size; that the two are taken for limits is said.
        """
        (lower, smallest), (upper, largest) = lows, highs
        size = nominal if self.basic is None else np.where(np.isnan(nominal), self.basic, nominal)
        with np.errstate(invalid="ignore"):
            near = WIDEST_SEAT * upper
            limits = (lower >= _LEAST_SIZE) & (upper > lower) & (upper - lower <= near)
            limits &= np.isnan(size) | (np.maximum(np.abs(upper - size), np.abs(lower - size)) <= near)
            limits &= np.isnan(smallest) & np.isnan(largest)
        for group in np.flatnonzero(limits).tolist():
            said = f"{lower[group]:.6g} and {upper[group]:.6g} {self.entry.unit} are limits of the size, no deviations"
            self._tell("assumption", group, int(at_upper[group]), "limits-of-size", "least and largest size", said)
        smallest[limits], largest[limits] = lower[limits], upper[limits]
        at_largest[limits] = at_upper[limits]
        lower[limits] = upper[limits] = np.nan

    def _reversed(self, low: Floats, high: Floats, at_high: Ints, what: str) -> None:
        with np.errstate(invalid="ignore"):
            turned = np.flatnonzero(low > high)
            same = np.flatnonzero((low == high) & (low > 0) & (what == "deviations"))
        for group in (group for group in same.tolist() if not self._read_at(int(at_high[group])).startswith("+")):
            said = f"both deviations are {high[group]:g} without a sign, of which one may be missing; they are not used"
            self._tell("partly", group, int(at_high[group]), "unsigned-deviations", "deviations with signs", said)
            low[group] = high[group] = np.nan
        for group in turned.tolist():
            said = (
                f"the upper of the two {what} ({high[group]:g}) is smaller than the lower ({low[group]:g}); "
                "the tolerance is not used"
            )
            self._tell("partly", group, int(at_high[group]), f"reversed-{what}", "upper above lower", said)
            low[group] = high[group] = np.nan

    def _far_limits(self, nominal: Floats, low: Floats, high: Floats, at_high: Ints) -> None:
        """Columns of limits that hold no limits of this size: deviations, or the sizes of something else."""
        if self.wide:
            return
        with np.errstate(invalid="ignore"):
            apart = high - low > WIDEST_LIMITS * np.abs(high)
            widest = np.maximum(np.abs(low - nominal), np.abs(high - nominal))
            suspect = np.where(np.isnan(nominal), apart, widest > LEAST_DOUBTED)
        for group in np.flatnonzero(suspect & ~np.isnan(low) & ~np.isnan(high)).tolist():
            size = float(nominal[group])
            far = bool(apart[group]) if np.isnan(size) else self._is_doubtful(float(widest[group]), size, True)
            if not far:
                continue
            beside = "" if np.isnan(size) else f" of {size:g} {self.entry.unit}"
            said = (
                f"{high[group]:g} and {low[group]:g} {self.entry.unit} are not the limits of one size{beside}; "
                "they may be deviations or of another unit, and are not used"
            )
            self._tell("partly", group, int(at_high[group]), "range-of-sizes", "the two limits of the size", said)
            low[group] = high[group] = np.nan

    def _too_wide(self, nominal: Floats, low: Floats, high: Floats, words: NDArray[np.object_], at_high: Ints) -> None:
        """Deviations too large for their size are asked about, whichever way they stand beside it; a class settles it.

        Whole numbers under a heading in mm are rather micrometres; where a class is stated with them and they are its
        deviations in micrometres, it is taken at its word.
        """
        if self.wide:
            return
        widest = np.fmax(np.abs(low), np.abs(high))
        with np.errstate(invalid="ignore"):
            suspect = (widest > LEAST_DOUBTED) & ~np.isnan(nominal)
        for group in np.flatnonzero(suspect).tolist():
            position, size = int(at_high[group]), float(nominal[group])
            wide = float(widest[group])
            if not self._is_doubtful(wide, size, False):  # decimals only lessen the doubt, and are asked for last
                continue
            if not self._is_doubtful(wide, size, self._has_decimals(position)):
                continue
            pair = f"{high[group]:+g}/{low[group]:+g} {self.entry.unit}"
            if self._of_class(words[group], size, float(low[group]), float(high[group])):
                said = f"the deviations are read as micrometres, which are those of {words[group]} at {size:g} mm"
                self._tell("assumption", group, position, "deviations-of-class", "deviations with their unit", said)
                low[group], high[group] = low[group] / 1000, high[group] / 1000
                continue
            said = f"the deviations {pair} are too large for a size of {size:g} {self.entry.unit}; they are not used"
            self._tell("partly", group, position, "unlikely-deviations", "deviations with their unit", said)
            low[group] = high[group] = np.nan

    def _is_doubtful(self, widest: float, nominal: float, decimals: bool) -> bool:
        if self.entry.name.endswith("_seat_diameter"):
            if not decimals and widest >= 1:
                return True
            return widest > max(LEAST_DOUBTED, WIDEST_SEAT * abs(nominal)) + 1e-9
        return too_wide(widest, nominal, decimals)

    def _has_decimals(self, position: int) -> bool:
        """Whether a cell writes decimals; a number of another unit than the canonical one counts as written so."""
        strip = int(np.searchsorted(self.starts, position, side="right")) - 1
        return self.stated[strip].values.factor != 1.0 or re.search(r"[.,]\d", self._read_at(position)) is not None

    def _of_class(self, word: str, nominal: float, low: float, high: float) -> bool:
        """Whether two numbers are the deviations of a class in micrometres."""
        return self.entry.unit == "mm" and bool(word) and are_of_class(word, nominal, low, high)

    def _join(
        self, lower: Floats, upper: Floats, other_lower: Floats, other_upper: Floats, at_other: Ints
    ) -> tuple[Floats, Floats]:
        """Deviations from two sources; where both speak and differ, neither is used."""
        close = _EQUAL.get(self.entry.unit, 1e-9)
        with np.errstate(invalid="ignore"):
            differ = (np.abs(lower - other_lower) > close) | (np.abs(upper - other_upper) > close)
        for group in np.flatnonzero(differ).tolist():
            said = (
                f"the tolerance is {other_upper[group]:+.6g}/{other_lower[group]:+.6g} {self.entry.unit} here and "
                f"{upper[group]:+.6g}/{lower[group]:+.6g} {self.entry.unit} in another cell; no tolerance is used"
            )
            self._tell("disagreement-partly", group, int(at_other[group]), "stated-twice", "one tolerance", said)
        joined_lower = np.where(np.isnan(lower), other_lower, lower)
        joined_upper = np.where(np.isnan(upper), other_upper, upper)
        joined_lower[differ] = joined_upper[differ] = np.nan
        return joined_lower, joined_upper

    def _from_class(
        self, nominal: Floats, lower: Floats, upper: Floats, words: NDArray[np.object_], at_words: Ints
    ) -> tuple[Floats, Floats]:
        """Deviations of a class where none are stated; a class that does not exist is told and dropped."""
        named = np.flatnonzero((words != "") & ~np.isnan(nominal))
        if not len(named):
            return lower, upper
        if self.entry.unit != "mm":
            low = np.full(len(named), np.nan)
            high = low
        else:
            stated = words[named]
            low, high = np.full(len(named), np.nan), np.full(len(named), np.nan)
            for word in dict.fromkeys(stated.tolist()):
                same = stated == word
                low[same], high[same] = deviations_or_nan(word, nominal[named][same])
        for index in np.flatnonzero(np.isnan(low)).tolist():
            group = int(named[index])
            size = f"{nominal[group]:g} {self.entry.unit}"
            said = f"“{words[group]}” is not a tolerance class of ISO 286-1 at {size}; it is not used"
            self._tell("partly", group, int(at_words[group]), "unknown-class", "a class such as k5 or H6", said)
            words[group] = ""
        own = np.isnan(lower[named]) & np.isnan(upper[named]) & ~np.isnan(low)
        lower[named[own]] = low[own] / 1000
        upper[named[own]] = high[own] / 1000
        return lower, upper

    def _without_nominal(
        self, nominal: Floats, lower: Floats, upper: Floats, words: NDArray[np.object_], *positions: Ints
    ) -> None:
        """A tolerance whose size is not stated cannot be used."""
        orphan = np.isnan(nominal) & (~np.isnan(lower) | ~np.isnan(upper) | (words != ""))
        for group in np.flatnonzero(orphan).tolist():
            position = next((int(p[group]) for p in positions if p[group] >= 0), -1)
            if position >= 0:
                said = "a tolerance stands here, but no nominal size belongs to it"
                self._tell("unreadable", group, position, "no-nominal", "a nominal size", said)


def _over_all(spans: Ints, source: Ints) -> Ints:
    """Positions over all cells from positions over the chosen ones; a strip may speak for no row, so that none is."""
    return np.where(source >= 0, spans[source], -1) if len(spans) else np.full(len(source), -1, dtype=np.intp)
