"""Raw cells of one parameter to values: numbers, sizes, choices and texts, each distinct text read once.

A text that cannot be read leaves a gap and a :class:`Trouble`; the rest is still read.
"""

import re
from collections.abc import Callable, Iterable
from typing import Any

import numpy as np
from attrs import define, field, frozen
from numpy.typing import NDArray

from linter.model.vocabulary import Parameter
from linter.reading.cells.choices import read_choice
from linter.reading.cells.numbers import Decimal, plain_decimals, read_numbers
from linter.reading.cells.requirements import EXPECTED, Requirement, assumed, parameter_of, read_requirement
from linter.reading.cells.signs import ReadError, fold, missing_state, shown
from linter.reading.cells.tolerance import Size, read_deviation_pair, read_size
from linter.reading.cells.units import conversion, dimension_of, factor_to, split_quantity
from linter.reading.files.grids import CELL_END, Bad, Column, TextColumn, cell_text, object_column
from linter.reading.layouts.strips import Strip
from linter.reading.words.mapping import Mapping

Floats = NDArray[np.float64]

_MISSING = {
    "not-applicable": "says that there is none",
    "not-known": "says that it is not known yet",
    "see-above": "refers to another row, which is not followed",
}


_MINUS = re.compile(r"-[ _]*tol|tol\w*[. _]*-|[^\w]-$|-$|\bminus|_minus|(?:^|[ _])- ", re.IGNORECASE)
_FRACTION = re.compile(r"\d/\d|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]")
_LATER = ReadError("tolerance", "", "", "")


@frozen
class Trouble:
    """A cell that could not be used as it stands.

    ``kind`` is one of :class:`linter.model.stations.Problem`, or ``partly`` (unreadable, but its nominal is used), or
    ``unused`` (the cell says itself that there is no value).
    """

    index: int
    kind: str
    code: str
    read: str
    expected: str
    sentence: str


@define(eq=False)
class Values:
    """Cells of one strip as understood, each column of shape (cells,).

    Attributes
    ----------
    number : float array
        Number, nominal, deviation or limit in the canonical unit, by the strip's aspect; code of a choice.
    lower, upper : float array or None
        Deviations that stood in the cell, canonical unit.
    words : object array or None
        Text, or tolerance class that stood in the cell.
    limits : bool array or None
        Cells that state two limits of size and no nominal; the number is then their middle.
    troubles : list of Trouble
        Cells not used as they stand.
    factor : float
        From the unit of the table to the canonical one, for judging rounding.
    """

    number: Floats
    lower: Floats | None = None
    upper: Floats | None = None
    words: NDArray[Any] | None = None
    limits: NDArray[np.bool_] | None = None
    troubles: list[Trouble] = field(factory=list)
    factor: float = 1.0


def _distinct(cells: Column) -> tuple[list[str], NDArray[np.intp], list[tuple[int, Any]]]:
    """Distinct texts, the index of each cell into them (-1: not a text), and the cells that are no texts."""
    plain = cells.tolist()
    kinds = set(map(type, plain))
    others: list[tuple[int, Any]] = []
    if kinds != {str}:
        others = [(i, cell) for i, cell in enumerate(plain) if type(cell) is not str and cell is not None]
        plain = [cell if type(cell) is str else "" for cell in plain]
    distinct = {text: index for index, text in enumerate(dict.fromkeys(plain))}
    codes = np.fromiter(map(distinct.__getitem__, plain), dtype=np.intp, count=len(plain))
    return list(distinct), codes, others


def _spread(
    codes: NDArray[np.intp], wrong: dict[int, Trouble], make: Callable[[Trouble, int], Trouble]
) -> Iterable[Trouble]:
    """A trouble per cell from a trouble per distinct text."""
    if not wrong:
        return
    flag = np.zeros(int(codes.max()) + 1, dtype=bool)
    flag[list(wrong)] = True
    for index in np.flatnonzero(flag[codes]):
        yield make(wrong[int(codes[index])], int(index))


def _at(trouble: Trouble, index: int) -> Trouble:
    return Trouble(index, trouble.kind, trouble.code, trouble.read, trouble.expected, trouble.sentence)


def _trouble(error: ReadError) -> Trouble:
    if error.code in _MISSING:
        return Trouble(-1, "unused", error.code, error.read, error.expected, _MISSING[error.code])
    return Trouble(-1, "unreadable", error.code, error.read, error.expected, error.sentence)


def _bad(index: int, bad: Bad) -> Trouble:
    return Trouble(index, "unreadable", bad.code, bad.read, bad.expected, f"the cell holds {bad.read}")


@frozen
class Terms:
    """What holds for all cells of a table.

    Attributes
    ----------
    decimal : {".", ","} or None
        Decimal mark, where it is settled.
    length_unit : str
        Unit that the table states for all its lengths; empty for none.
    mapping : Mapping
        What the name mapping says about units, choices and tolerances.
    """

    decimal: Decimal | None
    length_unit: str
    mapping: Mapping


def read_values(strip: Strip, entry: Parameter, terms: Terms) -> Values:
    """Read the cells of a strip; ``entry`` is their parameter."""
    if entry.kind == "text":
        return _read_texts(strip)
    if entry.kind == "choice":
        return _read_choices(strip, entry, terms.mapping.choices.get(entry.name))
    return _Quantities(strip, entry, terms.decimal, terms).read()


def _says_nothing(text: str) -> bool:
    """Whether a text may say that there is none: signs alone, or an abbreviation that is no name (``None`` may be)."""
    return len(text) < 5 and (not any(map(str.isalnum, text)) or text.casefold() in ("n/a", "n.a.", "tbd", "tbc"))


def _read_texts(strip: Strip) -> Values:
    distinct, codes, others = _distinct(strip.cells)
    plain = [text.strip() for text in distinct]
    wrong: dict[int, Trouble] = {}
    for index, text in enumerate(plain if strip.parameter not in ("machine", "station") else ()):
        if _says_nothing(text) and (state := missing_state(text)) and state != "empty":
            said = _MISSING[state.replace(" ", "-")]
            wrong[index] = Trouble(-1, "unused", state.replace(" ", "-"), text, "a text", said)
            plain[index] = ""
    words = np.array([*plain, ""], dtype=object)[codes]
    result = Values(np.zeros(0), words=words)
    result.troubles.extend(_spread(codes, wrong, _at))
    for index, cell in others:
        if isinstance(cell, Bad):
            result.troubles.append(_bad(index, cell))
        else:
            words[index] = cell_text(cell)
    return result


def _read_choices(strip: Strip, entry: Parameter, more: dict[str, str] | None) -> Values:
    distinct, codes, others = _distinct(strip.cells)
    table = np.full(len(distinct), np.nan)
    wrong: dict[int, Trouble] = {}
    for index, text in enumerate(distinct):
        word = read_choice(entry.name, text, more)
        if isinstance(word, ReadError):
            if word.code != "empty":
                wrong[index] = _trouble(word)
        else:
            table[index] = entry.choices.index(word)
    result = Values(table[codes])
    result.troubles.extend(_spread(codes, wrong, _at))
    for index, cell in others:
        if isinstance(cell, Bad):
            result.troubles.append(_bad(index, cell))
            continue
        text = ("yes" if cell else "no") if isinstance(cell, bool) else cell_text(cell)
        word = read_choice(entry.name, text, more)
        if isinstance(word, ReadError):
            result.troubles.append(_at(_trouble(word), index))
        else:
            result.number[index] = entry.choices.index(word)
    return result


@define(eq=False)
class _Quantities:
    """Numbers and toleranced sizes of one strip."""

    strip: Strip
    entry: Parameter
    decimal: Decimal | None
    terms: Terms
    unit: str = ""
    factor: float = 1.0
    offset: float = 0.0
    unit_missing: bool = False
    limits_only: set[int] = field(factory=set)

    def read(self) -> Values:
        """The values of the strip."""
        strip = self.strip
        if (plain := self._plain_column()) is not None:
            return plain
        distinct, codes, others = _distinct(strip.cells)
        size = len(strip.cells)
        result = Values(np.full(size, np.nan))
        if (error := self._settle_unit()) is not None:
            for index in range(size):
                if (read := cell_text(strip.cells[index])) and not isinstance(strip.cells[index], Bad):
                    said = f"“{read}” stands under the unit “{self.unit}”: {error.sentence}"
                    result.troubles.append(Trouble(index, "unreadable", error.code, read, error.expected, said))
            result.troubles.extend(_bad(index, cell) for index, cell in others if isinstance(cell, Bad))
            return result
        result.factor = self.factor
        if strip.aspect == "tolerance":
            # a lone number here is half or the whole band; only the tolerance reader may say
            others = [(i, cell) for i, cell in others if isinstance(cell, Bad)]
            texts = [cell_text(cell) if not isinstance(cell, Bad) else "" for cell in strip.cells.tolist()]
            distinct, codes, _ = _distinct(object_column(texts))
            numbers = np.full(len(distinct), np.nan)
            errors = {i: _LATER for i, text in enumerate(distinct) if text}
        else:
            numbers, errors = read_numbers(distinct, self.decimal, grouped=self._grouped())
            errors.update(self._fractions(distinct, numbers))
        table = self._convert(numbers)
        lower, upper = np.full(len(distinct), np.nan), np.full(len(distinct), np.nan)
        words = np.full(len(distinct), "", dtype=object)
        wrong: dict[int, Trouble] = {}
        carried = np.zeros(len(distinct), dtype=bool)
        for index, error in errors.items():
            carried[index], trouble = self._read_text(distinct[index], error, index, table, lower, upper, words)
            if trouble is not None:
                wrong[index] = trouble
        if self.unit_missing:
            for index, text in enumerate(distinct):
                if not np.isnan(table[index]) and not carried[index] and table[index] != 0:
                    table[index] = lower[index] = upper[index] = np.nan
                    words[index] = ""
                    wrong[index] = self._without_unit(text)
        result.number = table[codes]
        if len(errors):
            result.lower, result.upper, result.words = lower[codes], upper[codes], words[codes]
            if self.limits_only:
                result.limits = np.isin(codes, list(self.limits_only))
        result.troubles.extend(_spread(codes, wrong, _at))
        for index, cell in others:
            if isinstance(cell, Bad):
                result.troubles.append(_bad(index, cell))
            elif isinstance(cell, bool):
                said = f"“{cell_text(cell)}” is a truth value"
                result.troubles.append(Trouble(index, "unreadable", "not-a-number", cell_text(cell), "a number", said))
            elif self.unit_missing and cell != 0:
                result.troubles.append(_at(self._without_unit(cell_text(cell)), index))
            else:
                try:
                    result.number[index] = (
                        tidy(float(cell) * self.factor + self.offset)
                        if self.factor != 1 or self.offset
                        else float(cell)
                    )
                except OverflowError:
                    said = f"“{cell_text(cell)[:40]}” is beyond the range of numbers"
                    result.troubles.append(
                        Trouble(index, "unreadable", "number-out-of-range", cell_text(cell)[:40], "a number", said)
                    )
        self._below_minus(result)
        self._say_assumed_unit(result)
        return result

    def _below_minus(self, result: Values) -> None:
        """A number without a sign in a column that is headed by a minus sign may be below the size or above it."""
        if self.strip.aspect != "lower" or not _MINUS.search(fold(self.strip.label)):
            return
        with np.errstate(invalid="ignore"):
            above = np.flatnonzero(result.number > 0)
        for index in above.tolist():
            read = cell_text(self.strip.cells[index])
            if fold(read).startswith("+"):
                continue
            said = f"“{read}” has no sign below the minus of “{shown(self.strip.label)}”: -{read} or +{read}"
            result.troubles.append(
                Trouble(index, "unreadable", "unsigned-deviation", read, "a deviation with its sign", said)
            )
            result.number[index] = np.nan

    def _fractions(self, distinct: list[str], numbers: Floats) -> dict[int, ReadError]:
        """Common fractions where no inch is stated: of a length they are hardly meant in millimetres."""
        if dimension_of(self.entry.unit) != "length" or conversion(self.unit or self.entry.unit, "in") == 1:
            return {}
        troubles = {}
        for index, text in enumerate(distinct):
            if (not text.isascii() or "/" in text) and not np.isnan(numbers[index]) and _FRACTION.search(fold(text)):
                said = f"“{shown(text)}” is a common fraction, as of inches, and no inch is stated"
                troubles[index] = ReadError("ambiguous-unit", text, "a decimal number, or a fraction of inches", said)
                numbers[index] = np.nan
        return troubles

    def _grouped(self) -> bool:
        """Whether grouped thousands are believed: not in a length, where ``1,234`` is rather a slip of the mark."""
        return dimension_of(self.entry.unit) != "length"

    def _plain_column(self) -> Values | None:
        """A long column of plain decimals with a settled unit, converted as a whole; None for any other."""
        cells = self.strip.cells
        if not isinstance(cells, TextColumn) or self.strip.aspect == "tolerance" or self.decimal is None:
            return None
        if self._settle_unit() is not None or self.unit_missing:
            return None
        numbers = plain_decimals(cells.joined, ord(self.decimal), CELL_END)
        if numbers is None:
            return None
        if self.strip.aspect == "lower" and _MINUS.search(fold(self.strip.label)) and (numbers > 0).any():
            return None  # looked at one by one
        result = Values(self._convert(numbers), factor=self.factor)
        self._say_assumed_unit(result)
        return result

    def _convert(self, numbers: Floats) -> Floats:
        """Numbers of the strip's unit in the canonical one, without the last-digit noise of the conversion."""
        if self.factor == 1.0 and self.offset == 0.0:
            return numbers
        raw = numbers * self.factor + self.offset
        with np.errstate(divide="ignore", invalid="ignore"):
            scale = 10.0 ** (12 - np.ceil(np.log10(np.abs(raw))))
            rounded = np.round(raw * scale) / scale
        return np.where(np.isfinite(rounded), rounded, raw)

    def _settle_unit(self) -> ReadError | None:
        """Choose the unit of the strip; an error where the table states one that does not fit."""
        entry = self.entry
        self.unit = self.terms.mapping.unit(self.strip.unit.strip())
        deviation = self.strip.aspect in ("upper", "lower", "tolerance")
        if self.unit:
            found = factor_to(entry.unit, self.unit)
            if isinstance(found, ReadError):
                return found
            self.factor, self.offset = found
            if deviation:
                self.offset = 0.0
            return None
        if entry.unit == "1" or self.strip.own_unit:
            return None
        if dimension_of(entry.unit) == "length":
            if not self.terms.length_unit:
                self.unit_missing = True
                return None
            found = factor_to(entry.unit, self.terms.length_unit)
            if isinstance(found, ReadError):
                return found
            if entry.unit == "um":
                # a title block that says "mm" speaks of sizes, not of roughness or clearance
                self.unit_missing = True
                return None
            self.unit = self.terms.length_unit
            self.factor, self.offset = found
        return None

    def _without_unit(self, text: str) -> Trouble:
        expected = f"a length with its unit (canonical: {self.entry.unit})"
        return Trouble(
            -1,
            "unreadable",
            "unit-missing",
            text,
            expected,
            f"“{text}” is a length without a unit, and the table states none",
        )

    def _say_assumed_unit(self, result: Values) -> None:
        """Show once that a unit was taken for granted."""
        entry = self.entry
        if self.unit or self.unit_missing or self.strip.own_unit or entry.unit == "1" or not len(result.number):
            return
        stated = np.flatnonzero(~np.isnan(result.number))
        if len(stated):
            index = int(stated[0])
            read = cell_text(self.strip.cells[index])
            if split_quantity(read)[1]:
                return
            result.troubles.append(
                Trouble(
                    index,
                    "assumption",
                    "unit-assumed",
                    read,
                    f"a value with its unit (canonical: {entry.unit})",
                    f"“{read}” stands without a unit; {entry.unit} is taken"
                    + (f" here and in {len(stated) - 1} more cells" if len(stated) > 1 else ""),
                )
            )

    def _read_text(
        self, text: str, error: ReadError, index: int, table: Floats, lower: Floats, upper: Floats, words: NDArray[Any]
    ) -> tuple[bool, Trouble | None]:
        """Read a text that is no plain number; returns whether it carried its own unit, and what was wrong."""
        if error.code in ("too-long", "ambiguous-unit", *_MISSING):
            return False, _trouble(error)
        if bare := self._without_mark(text):
            values, wrong = read_numbers([bare], self.decimal, grouped=self._grouped())
            if not wrong:
                table[index] = self._convert(values)[0]
                return False, None
            text = bare
        if not self._is_size() and isinstance(stated := read_requirement(text), Requirement):
            return self._read_requirement(stated, text, index, table)
        number, unit = ("", "") if self._is_size() else split_quantity(text)
        unit = self.terms.mapping.unit(unit)
        if unit == "m" and dimension_of(self.entry.unit) == "length" and self.unit != "m":
            said = f"the m in “{shown(text)}” can be metre or the general tolerance m"
            return True, _trouble(ReadError("ambiguous-unit", text, f"a size in {self.entry.unit}", said))
        if unit:
            values, wrong = read_numbers([number], self.decimal, grouped=self._grouped())
            if not wrong and not np.isnan(values[0]):
                found = factor_to(self.entry.unit, unit)
                if isinstance(found, ReadError):
                    return True, _trouble(ReadError(found.code, text, found.expected, found.sentence))
                table[index] = values[0] * found[0] + (
                    0.0 if self.strip.aspect in ("upper", "lower", "tolerance") else found[1]
                )
                return True, None
        carried, trouble = self._read_tolerance(text, index, table, lower, upper, words)
        if trouble is not None and trouble.code == "not-a-size" and not self._is_size():
            trouble = _trouble(error)
        return carried, trouble

    def _read_requirement(
        self, stated: Requirement, text: str, index: int, table: Floats
    ) -> tuple[bool, Trouble | None]:
        """Read a feature control frame or a roughness that stands in the cell of its parameter."""
        name = self.entry.name
        values, wrong = read_numbers([stated.number], self.decimal)
        if parameter_of(name, stated.characteristic)[0] != name or wrong:
            said = f"“{shown(text)}” states {stated.characteristic}, which {name} is not"
            return True, Trouble(-1, "unreadable", "not-a-requirement", text, EXPECTED, said)
        found = factor_to(self.entry.unit, stated.unit) if stated.unit else (self.factor, self.offset)
        if isinstance(found, ReadError):
            return True, _trouble(ReadError(found.code, text, found.expected, found.sentence))
        table[index] = tidy(values[0] * found[0])
        if said := assumed(name, stated, name):
            return bool(stated.unit), Trouble(
                -1, "assumption", "characteristic", text, EXPECTED, f"“{shown(text)}”: {said}"
            )
        return bool(stated.unit), None

    def _without_mark(self, text: str) -> str:
        """A text without the apostrophe that marks a number kept as text, or without its own symbol (``Ra 0.4``)."""
        bare = text.strip()
        if bare[:1] == "'" and bare[1:2].isdigit():
            return bare[1:]
        symbol = self.entry.symbol
        if len(symbol) > 1 and bare.startswith(symbol) and not bare[len(symbol) :][:1].isalpha():
            return bare[len(symbol) :].lstrip(" =:")
        return ""

    def _may_be_wide(self) -> bool:
        """Whether two numbers may be the ends of a wide range: of a clearance, a force, a rate or a float."""
        entry = self.entry
        return entry.unit in ("um", "N", "N/mm") or entry.name == "axial_float" or self.strip.aspect != "value"

    def _is_size(self) -> bool:
        """Whether the cells may state a size with its tolerance, or a tolerance."""
        return self.entry.kind == "toleranced" and self.strip.aspect in ("value", "tolerance")

    def _read_tolerance(
        self, text: str, index: int, table: Floats, lower: Floats, upper: Floats, words: NDArray[Any]
    ) -> tuple[bool, Trouble | None]:
        """Read a size with its tolerance, or the content of a tolerance column."""
        entry, aspect = self.entry, self.strip.aspect
        unit = self.unit or (entry.unit if self.strip.own_unit else "")
        if aspect == "tolerance":
            size = read_deviation_pair(text, unit, self.decimal, half_width=self.terms.mapping.half_width)
        else:
            size = read_size(text, unit, self.decimal, ranges=self._may_be_wide())
        if isinstance(size, ReadError):
            return False, _trouble(size)
        factor, offset = self.factor, self.offset
        if size.unit and size.unit != self.unit:
            found = factor_to(entry.unit, size.unit)
            if isinstance(found, ReadError):
                return False, _trouble(ReadError(found.code, text, found.expected, found.sentence))
            factor, offset = found
        carried = bool(size.unit) and size.unit != unit
        carried |= bool(size.tolerance_class) and entry.unit == "mm"  # an ISO 286 class speaks of millimetres
        if self.unit_missing and not carried:
            return False, self._without_unit(text)
        expected = "a size such as 7.5 h5, 7.5 +0.012/+0.004, 7.5 ±0.01 or 7.495…7.500"
        if size.kind in ("thread", "chamfer") or (
            size.kind in ("radius", "square") and entry.name.endswith(("diameter", "shaft_bore"))
        ):
            said = f"“{shown(text)}” is a {size.kind}, not the size that is wanted"
            return carried, Trouble(-1, "unreadable", "wrong-feature", text, expected, said)
        if not self._is_size():
            return carried, self._plain_number(size, text, index, table, factor, offset)
        if size.nominal is not None:
            table[index] = tidy(size.nominal * factor + offset)
        words[index] = size.tolerance_class
        low, high = size.lower, size.upper
        if "one-sided" in size.notes and not size.tolerance_class:
            said = f"“{shown(text)}” states only one of two limits; its tolerance is not used"
            return carried, Trouble(-1, "partly", "one-sided", text, expected, said)
        if low is not None and high is not None:
            if size.limits:
                middle = 0.5 * (low + high)
                table[index] = tidy(middle * factor + offset)
                low, high = low - middle, high - middle
                self.limits_only.add(index)
            lower[index], upper[index] = tidy(low * factor), tidy(high * factor)
        if size.reversed:
            said = f"the deviations in “{shown(text)}” stand in reversed order; the larger is taken as the upper one"
            return carried, Trouble(-1, "assumption", "reversed-deviations", text, expected, said)
        if "general tolerance" in size.notes:
            said = f"“{shown(text)}” refers to a general tolerance; the size is used without a tolerance"
            return carried, Trouble(-1, "assumption", "general-tolerance", text, expected, said)
        return carried, None

    def _plain_number(
        self, size: Size, text: str, index: int, table: Floats, factor: float, offset: float
    ) -> Trouble | None:
        """A number out of a text with a prefix or with more than a number."""
        expected = f"one number in {self.entry.unit}"
        if size.nominal is None:
            if "one-sided" in size.notes and size.limits and size.upper is not None:
                table[index] = tidy(size.upper * factor + offset)  # "max 0.005" of a geometrical tolerance
                return None
            return Trouble(-1, "unreadable", "not-a-number", text, expected, f"“{shown(text)}” is not one number")
        table[index] = tidy(size.nominal * factor + offset)
        if size.tolerance_class or size.lower is not None or size.upper is not None:
            said = f"“{shown(text)}” states a tolerance, of which {self.entry.name} has none; the nominal is taken"
            return Trouble(-1, "assumption", "tolerance-dropped", text, expected, said)
        return None


def tidy(value: float) -> float:
    """A float without the last-digit noise of a decimal conversion."""
    return float(f"{value:.12g}")
