"""Numbers and toleranced sizes of one strip: columns filled from plain numbers and from one record per other text."""

import re

import numpy as np
from attrs import define, field

from linter.model.vocabulary import Parameter
from linter.reading.cells.numbers import read_numbers
from linter.reading.cells.signs import ReadError, fold, shown
from linter.reading.cells.units import conversion, dimension_of, split_quantity
from linter.reading.files.grids import Bad, TextColumn, cell_text, object_column
from linter.reading.layouts.strips import Strip
from linter.reading.settling.cell_reader import Cell, CellReader, tidy, without_unit
from linter.reading.settling.doubted import DOUBTED
from linter.reading.settling.measure import Measure, settle_measure
from linter.reading.settling.values import Floats, Terms, Trouble, Values, at, bad_cell, distinct_texts, spread

_MINUS = re.compile(r"-[ _]*tol|tol\w*[. _]*-|[^\w]-$|-$|\bminus|_minus|(?:^|[ _])- ", re.IGNORECASE)
_FRACTION = re.compile(r"\d/\d|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]")
#: A size with its class (26E8) looks like a number with an exponent; no size has one of three decades and more.
_SIZE_WITH_CLASS = re.compile(r"\d+(?:[.,]\d+)?[eEdD](?:[3-9]|1[0-8])", re.ASCII)
_LATER = ReadError("tolerance", "", "", "")
#: Cylindricity, run-out and the like of a seat are below this, in mm (common practice: IT 13 of the largest sizes).
_GEOMETRICAL = ("_cylindricity", "_runout")
_LARGEST_GEOMETRICAL = 0.5
LARGEST = 1e30
"""No quantity of any parameter comes near this, in its canonical unit; sums and products of it stay finite."""


def _unit_said(text: str) -> str:
    """The unit in a text, behind its number or before a bracket (``22.0 lb (9.98 kg)``); or empty."""
    return split_quantity(text)[1] or split_quantity(text.partition("(")[0].partition("[")[0])[1]


@define(eq=False)
class Quantities:
    """Numbers and toleranced sizes of one strip."""

    strip: Strip
    entry: Parameter
    terms: Terms
    measure: Measure = field(factory=Measure)

    def read(self) -> Values:
        """The values of the strip."""
        measure = settle_measure(self.strip, self.entry, self.terms)
        if isinstance(measure, ReadError):
            return self._under_wrong_unit(measure)
        self.measure = measure
        if (plain := self._plain_column()) is not None:
            return plain
        result = self._texts()
        self._numbers(result)
        self._doubt_the_unit(result)
        self._refuse_the_absurd(result)
        self._below_minus(result)
        self._say_assumed_unit(result)
        return result

    def _under_wrong_unit(self, error: ReadError) -> Values:
        """Nothing is used of a strip whose unit does not fit; every filled cell says so."""
        cells = self.strip.cells.tolist()
        unit = self.terms.mapping.unit(self.strip.unit.strip()) or self.terms.length_unit
        result = Values(np.full(len(cells), np.nan))
        for index, cell in enumerate(cells):
            if isinstance(cell, Bad):
                result.troubles.append(bad_cell(index, cell))
            elif read := cell_text(cell):
                said = f"“{read}” stands under the unit “{unit}”: {error.sentence}"
                result.troubles.append(Trouble(index, "unreadable", error.code, read, error.expected, said))
        return result

    def _texts(self) -> Values:
        """The columns filled from the texts of the strip, each distinct one read once."""
        reader = CellReader(self.strip, self.entry, self.terms, self.measure)
        distinct, codes = self._distinct()
        if self.strip.aspect == "tolerance":
            # a lone number here is half or the whole band; only the tolerance reader may say
            numbers = np.full(len(distinct), np.nan)
            errors = {i: _LATER for i, text in enumerate(distinct) if text}
        else:
            numbers, errors = read_numbers(distinct, self.terms.decimal, grouped=reader.grouped)
            errors.update(self._fractions(distinct, numbers))
            if reader.is_size:
                for index, text in enumerate(distinct):
                    if _SIZE_WITH_CLASS.fullmatch(text.strip()):
                        numbers[index], errors[index] = np.nan, _LATER
        numbers = self._convert(numbers)
        cells = {index: reader.read(distinct[index], error) for index, error in errors.items()}
        wrong = {index: cell.trouble for index, cell in cells.items() if cell.trouble is not None}
        if self.measure.missing:
            for index, text in enumerate(distinct):
                cell = cells.get(index, Cell(numbers[index]))
                if not np.isnan(cell.number) and not cell.own_unit and not self._is_plain_zero(cell.number):
                    numbers[index], cells[index] = np.nan, Cell()
                    wrong[index] = without_unit(text, self.entry)
        result = Values(numbers[codes], factor=self.measure.factor)
        if errors:
            self._fill(result, numbers, cells, codes)
        result.troubles.extend(spread(codes, wrong))
        return result

    @staticmethod
    def _fill(result: Values, numbers: Floats, cells: dict[int, Cell], codes: np.ndarray) -> None:
        """Columns from the records of the texts that are no plain numbers."""
        lower, upper = np.full(len(numbers), np.nan), np.full(len(numbers), np.nan)
        words = np.full(len(numbers), "", dtype=object)
        limits = np.zeros(len(numbers), dtype=bool)
        for index, cell in cells.items():
            numbers[index], lower[index], upper[index] = cell.number, cell.lower, cell.upper
            words[index], limits[index] = cell.word, cell.limits
        result.number, result.lower, result.upper, result.words = (
            numbers[codes],
            lower[codes],
            upper[codes],
            words[codes],
        )
        if limits.any():
            result.limits = limits[codes]

    def _distinct(self) -> tuple[list[str], np.ndarray]:
        """Distinct texts and the index of each cell into them; in a tolerance column numbers count as texts."""
        if self.strip.aspect != "tolerance":
            distinct, codes, _ = distinct_texts(self.strip.cells)
            return distinct, codes
        texts = [cell_text(cell) if not isinstance(cell, Bad) else "" for cell in self.strip.cells.tolist()]
        distinct, codes, _ = distinct_texts(object_column(texts))
        return distinct, codes

    def _numbers(self, result: Values) -> None:
        """The cells that are no texts: numbers of a workbook or of JSON, truth values, and cells without a value."""
        measure = self.measure
        if isinstance(self.strip.cells, TextColumn):
            return
        for index, cell in distinct_texts(self.strip.cells)[2]:
            if isinstance(cell, Bad):
                result.troubles.append(bad_cell(index, cell))
                continue
            if self.strip.aspect == "tolerance":
                continue
            read = cell_text(cell)
            if isinstance(cell, bool):
                said = f"“{read}” is a truth value"
                result.troubles.append(Trouble(index, "unreadable", "not-a-number", read, "a number", said))
            elif measure.missing and not self._is_plain_zero(cell):
                result.troubles.append(at(without_unit(read, self.entry), index))
            else:
                try:
                    value = float(cell)
                except OverflowError:
                    said, read = f"“{read[:40]}” is beyond the range of numbers", read[:40]
                    result.troubles.append(Trouble(index, "unreadable", "number-out-of-range", read, "a number", said))
                    continue
                converted = measure.factor != 1 or measure.offset
                result.number[index] = tidy(value * measure.factor + measure.offset) if converted else value

    def _refuse_the_absurd(self, result: Values) -> None:
        """Nothing is used of a cell whose number is beyond what can be reckoned with, whatever its unit made of it."""
        parts = [part for part in (result.number, result.lower, result.upper) if part is not None]
        absurd = np.logical_or.reduce([np.abs(part) > LARGEST for part in parts])
        if not absurd.any():
            return
        for part in parts:
            part[absurd] = np.nan
        if result.words is not None:
            result.words[absurd] = ""
        if result.limits is not None:
            result.limits[absurd] = False
        result.troubles = [trouble for trouble in result.troubles if not absurd[trouble.index]]
        for index in np.flatnonzero(absurd).tolist():
            read = shown(cell_text(self.strip.cells[index]))
            said, expected = f"“{read}” is beyond the range of numbers", f"a value in {self.entry.unit}"
            result.troubles.append(Trouble(index, "unreadable", "number-out-of-range", read, expected, said))

    def _doubt_the_unit(self, result: Values) -> None:
        """A geometrical tolerance that only the unit of all lengths makes as large as no seat has it is not used."""
        if self.strip.unit or self.strip.own_unit or not self.entry.name.endswith(_GEOMETRICAL):
            return
        with np.errstate(invalid="ignore"):
            large = np.flatnonzero(result.number > _LARGEST_GEOMETRICAL)
        told = {trouble.index for trouble in result.troubles if trouble.kind == "unreadable"}
        for index in large.tolist():
            read = cell_text(self.strip.cells[index])
            if index in told or split_quantity(read)[1]:
                continue
            said = f"“{shown(read)}” would be {result.number[index]:g} mm in the unit of lengths of the table"
            expected = f"a geometrical tolerance with its unit (canonical: {self.entry.unit})"
            result.troubles.append(Trouble(index, "unreadable", "unit-doubtful", read, expected, said))
            result.number[index] = np.nan

    def _is_plain_zero(self, value: float) -> bool:
        """Whether a number is a zero that needs no unit; a size of zero is none."""
        return value == 0 and not (self.entry.kind == "toleranced" and self.strip.aspect in ("value", "max", "min"))

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
        if dimension_of(self.entry.unit) != "length" or conversion(self.measure.unit or self.entry.unit, "in") == 1:
            return {}
        troubles = {}
        for index, text in enumerate(distinct):
            if (not text.isascii() or "/" in text) and not np.isnan(numbers[index]) and _FRACTION.search(fold(text)):
                said = f"“{shown(text)}” is a common fraction, as of inches, and no inch is stated"
                troubles[index] = ReadError("ambiguous-unit", text, "a decimal number, or a fraction of inches", said)
                numbers[index] = np.nan
        return troubles

    def _plain_column(self) -> Values | None:
        """A long column of plain decimals with a settled unit, converted as a whole; None for any other."""
        cells, decimal = self.strip.cells, self.terms.decimal
        if not isinstance(cells, TextColumn) or self.strip.aspect == "tolerance" or decimal is None:
            return None
        if self.measure.missing:
            return None
        numbers = cells.decimals(decimal)
        if numbers is None:
            return None
        if self.entry.name.endswith(_GEOMETRICAL) and not self.strip.unit and not self.strip.own_unit:
            return None  # looked at one by one
        if self.strip.aspect == "lower" and _MINUS.search(fold(self.strip.label)) and (numbers > 0).any():
            return None  # looked at one by one
        result = Values(self._convert(numbers.copy()), factor=self.measure.factor)
        self._say_assumed_unit(result)
        return result

    def _convert(self, numbers: Floats) -> Floats:
        """Numbers of the strip's unit in the canonical one, without the last-digit noise of the conversion."""
        measure = self.measure
        if measure.factor == 1.0 and measure.offset == 0.0:
            return numbers
        with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
            raw = numbers * measure.factor + measure.offset
            scale = 10.0 ** (12 - np.ceil(np.log10(np.abs(raw))))
            rounded = np.round(raw * scale) / scale
        return np.where(np.isfinite(rounded), rounded, raw)

    def _say_assumed_unit(self, result: Values) -> None:
        """Show once that a unit was taken for granted."""
        entry, measure = self.entry, self.measure
        if measure.unit or measure.missing or self.strip.own_unit or entry.unit == "1" or not len(result.number):
            return
        stated = np.flatnonzero(~np.isnan(result.number))
        if not len(stated):
            return
        if entry.name in DOUBTED:
            alone = [not _unit_said(cell_text(cell)) for cell in self.strip.cells.tolist()]
            result.bare = ~np.isnan(result.number) & np.array(alone)
        index = int(stated[0])
        read = cell_text(self.strip.cells[index])
        if _unit_said(read):
            return
        more = f" here and in {len(stated) - 1} more cells" if len(stated) > 1 else ""
        said = f"“{read}” stands without a unit; {entry.unit} is taken{more}"
        expected = f"a value with its unit (canonical: {entry.unit})"
        result.troubles.append(Trouble(index, "assumption", "unit-assumed", read, expected, said))
