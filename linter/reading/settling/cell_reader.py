"""One text of a number or size parameter to what it says: a record, which the strip's columns are filled from."""

import re

import numpy as np
from attrs import evolve, frozen

from linter.model.vocabulary import Parameter
from linter.reading.cells.numbers import read_numbers
from linter.reading.cells.requirements import (
    EXPECTED,
    Requirement,
    assumed,
    parameter_of,
    read_requirement,
    roughness_of_grade,
)
from linter.reading.cells.signs import ReadError, shown
from linter.reading.cells.size import Size
from linter.reading.cells.tolerance import read_deviation_pair, read_size
from linter.reading.cells.units import dimension_of, factor_to, split_quantity
from linter.reading.cells.words_around import without_words
from linter.reading.layouts.strips import Strip
from linter.reading.settling.measure import DIFFERENCES, Measure
from linter.reading.settling.values import MISSING, Terms, Trouble, trouble_of
from linter.reading.words.limits import IS_LARGEST

_NAN = float("nan")
#: The sign in the heading of a column whose numbers are half the tolerance band.
_HALF = "±"
#: A balance quality grade as it is written (ISO 21940-11; Q in VDI 2060, from memory): ``G 2.5``, ``Klasse G6,3``.
_GRADE = re.compile(
    r"(?:[^\W\d_]+\.?[ -]){0,2}[GQ][ -]?(?P<grade>\d{1,4}(?:[.,]\d{1,2})?)(?: ?mm/s)?(?: ?[级級])?"
    r"(?:[ ,;(]+(?:[^\W\d_]+\.? ){0,2}(?:ISO|DIN|VDI|JIS|ГОСТ|GB)[\w /.:-]*\)?)?"
)
#: Parameters of which a limit below is the value, and those of which one above is: no rating, force of a preload or
#: viscosity, of which a smaller value is the worse one.
_REQUIRED = "required_"
_LARGEST = (
    *IS_LARGEST, "_flatness", "_parallelism", "speed_max", "speed_operating", "temperature_max", "shaft_temperature",
    "housing_temperature", "ambient_temperature", "operating_temperature", "radial_load", "axial_load", "rotor_mass",
    "balance_grade", "residual_unbalance", "power_loss", "added_heat",
)  # fmt: skip
_SIZE = "a size such as 7.5 h5, 7.5 +0.012/+0.004, 7.5 ±0.01 or 7.495…7.500"


#: A length in inches and the same in millimetres behind it in brackets, or the other way round.
_UNIT = r"(?:mm|in\.?|\"|″)?"
_DUAL = re.compile(
    rf"[Ø⌀]?\s*(?P<one>\d*[.,]?\d+)\s*(?P<first>{_UNIT})\s*[(\[]\s*(?P<two>\d*[.,]?\d+)\s*(?P<second>{_UNIT})\s*[)\]]"
)
_MM_PER_INCH, _SAME = 25.4, 0.01
#: A value and in brackets behind it the same in another unit; how much they may differ: sizes in mm, others in parts.
_TWICE, _LETTERS = re.compile(r"(?P<one>[^()\[\]]+?)\s*[(\[](?P<two>[^()\[\]]+)[)\]]"), re.compile(r"[^\W\d_]+|[\"″]")
_SAME_SIZE, _SAME_OTHER = 0.002, 0.03


@frozen
class Cell:
    """One text as understood, in the canonical unit.

    Attributes
    ----------
    number : float
        Number or nominal; NaN where none stands there.
    lower, upper : float
        Deviations that stand in the text; NaN without.
    word : str
        Tolerance class that stands in the text.
    limits : bool
        True where two limits and no nominal stand there; ``number`` is their middle.
    own_unit : bool
        True where the text carries its unit, so that the table need not state one.
    trouble : Trouble or None
        What is wrong with it or was taken for granted.
    """

    number: float = _NAN
    lower: float = _NAN
    upper: float = _NAN
    word: str = ""
    limits: bool = False
    own_unit: bool = False
    trouble: Trouble | None = None


def without_unit(text: str, entry: Parameter) -> Trouble:
    """The trouble of a length that nothing gives a unit."""
    expected = f"a length with its unit (canonical: {entry.unit})"
    said = f"“{text}” is a length without a unit, and the table states none"
    return Trouble(-1, "unreadable", "unit-missing", text, expected, said)


def tidy(value: float) -> float:
    """A float without the last-digit noise of a decimal conversion."""
    return float(f"{value:.12g}")


def _is_same(mm: float, mm_text: str, inches: float, inch_text: str) -> bool:
    """Whether millimetres and inches are the same length as far as their decimals tell, which must be far enough."""
    last_mm, last_inch = (0.5 * 10.0 ** -len(re.sub(r"^\d*[.,]?", "", text)) for text in (mm_text, inch_text))
    within = last_mm + _MM_PER_INCH * last_inch
    return within <= _SAME * mm and abs(mm - _MM_PER_INCH * inches) <= within


@frozen
class CellReader:
    """Reads the texts of one strip that are no plain numbers."""

    strip: Strip
    entry: Parameter
    terms: Terms
    measure: Measure

    @property
    def grouped(self) -> bool:
        """Whether grouped thousands are believed: not in a length, where ``1,234`` is rather a slip of the mark."""
        return dimension_of(self.entry.unit) != "length"

    @property
    def is_size(self) -> bool:
        """Whether the cells may state a size with its tolerance, or a tolerance."""
        return self.entry.kind == "toleranced" and self.strip.aspect in ("value", "tolerance")

    def read(self, text: str, error: ReadError) -> Cell:
        """A text; ``error`` is what reading it as a plain number gave."""
        if error.code in ("too-long", "ambiguous-unit", *MISSING):
            return Cell(trouble=trouble_of(error))
        if self.entry.name == "balance_grade" and (grade := _GRADE.fullmatch(text.strip())) is not None:
            return Cell(float(grade["grade"].replace(",", ".")), own_unit=True)
        if self.entry.name.endswith("_roughness") and (ra := roughness_of_grade(text)) is not None:
            said = f"“{shown(text)}” is taken for Ra {ra:g} µm, as ISO 1302 had it"
            return Cell(ra, own_unit=True, trouble=Trouble(-1, "assumption", "roughness-grade", text, EXPECTED, said))
        if bare := self._without_mark(text):
            if not np.isnan(number := self._number(bare)):
                return Cell(tidy(number * self.measure.factor + self.measure.offset))
            text = bare
        if self.strip.aspect == "value" and (dual := self._in_two_units(text) or self._said_twice(text)) is not None:
            return dual
        if self.is_size:
            return self._tolerance(text)
        if (cell := self._in_words(text, error)) is not None:
            return cell
        if isinstance(stated := read_requirement(text), Requirement):
            return self._requirement(stated, text)
        if (cell := self._quantity(text)) is not None:
            return cell
        cell = self._tolerance(text)
        if cell.trouble is not None and cell.trouble.code == "not-a-size":
            return Cell(own_unit=cell.own_unit, trouble=trouble_of(error))
        return cell

    def _in_two_units(self, text: str) -> Cell | None:
        """A length that stands in inches and in millimetres, which its two numbers prove; the first one counts."""
        found = _DUAL.fullmatch(text.strip()) if self.entry.unit == "mm" and text.rstrip()[-1:] in (")", "]") else None
        if found is None:
            return None
        one, two = self._number(found["one"]), self._number(found["two"])
        if _is_same(two, found["two"], one, found["one"]) and found["first"] != "mm" and found["second"] in ("", "mm"):
            return Cell(tidy(one * _MM_PER_INCH), own_unit=True)
        if _is_same(one, found["one"], two, found["two"]) and found["second"] != "mm" and found["first"] in ("", "mm"):
            return Cell(tidy(one), own_unit=True)
        return None

    def _said_twice(self, text: str) -> Cell | None:
        """A value with its unit and behind it in brackets the same in another unit, if they agree; the first counts."""
        found = _TWICE.fullmatch(text.strip()) if text.rstrip()[-1:] in (")", "]") else None
        units = [set(_LETTERS.findall(found[k])) for k in ("one", "two")] if found is not None else []
        if found is None or not all(units) or units[0] & units[1]:
            return None
        one, two = (self._tolerance(found[k]) if self.is_size else self._quantity(found[k]) for k in ("one", "two"))
        if one is None or two is None or one.trouble or two.trouble:
            return None
        near = _SAME_SIZE if self.is_size else _SAME_OTHER * abs(one.number)
        first, second = ([cell.number, cell.lower, cell.upper] for cell in (one, two))
        alike = np.isclose(first, second, rtol=0, atol=near, equal_nan=True)
        return one if bool(alike.all()) and one.word == two.word and one.limits == two.limits else None

    def _in_words(self, text: str, error: ReadError) -> Cell | None:
        """A number beside words for about, at most or at least; None for any other text, or a limit of another sort."""
        rest, said = without_words(text) if self.strip.aspect == "value" else ("", "")
        limits = {"least": self.entry.name.startswith(_REQUIRED), "most": self.entry.name.endswith(_LARGEST)}
        if not rest or not limits.get(said, True):
            return None
        if not np.isnan(number := self._number(rest)):
            cell = Cell(tidy(number * self.measure.factor + self.measure.offset))
        else:
            cell = self.read(rest, error)
        if said != "about" or cell.trouble is not None:
            return cell
        taken = f"“{shown(text)}” states about how much; the number is taken"
        return evolve(cell, trouble=Trouble(-1, "assumption", "about", text, f"one number in {self.entry.unit}", taken))

    def _number(self, text: str) -> float:
        """A plain number as it stands, NaN for any other text."""
        return float(read_numbers([text], self.terms.decimal, grouped=self.grouped)[0][0])

    def _without_mark(self, text: str) -> str:
        """A text without the apostrophe that marks a number kept as text, or without its own symbol (``Ra 0.4``)."""
        bare = text.strip()
        if bare[:1] == "'" and bare[1:2].isdigit():
            return bare[1:]
        symbol = self.entry.symbol
        if len(symbol) > 1 and bare.startswith(symbol) and not bare[len(symbol) :][:1].isalpha():
            return bare[len(symbol) :].lstrip(" =:")
        return ""

    def _quantity(self, text: str) -> Cell | None:
        """A number with its unit; None for any other text."""
        number, unit = split_quantity(text)
        unit = self.terms.mapping.unit(unit)
        if not unit:
            return None
        if unit == "m" and dimension_of(self.entry.unit) == "length" and self.measure.unit != "m":
            said = f"the m in “{shown(text)}” can be metre or the general tolerance m"
            error = ReadError("ambiguous-unit", text, f"a size in {self.entry.unit}", said)
            return Cell(own_unit=True, trouble=trouble_of(error))
        if np.isnan(value := self._number(number)):
            return None
        found = factor_to(self.entry.unit, unit)
        if isinstance(found, ReadError):
            return Cell(own_unit=True, trouble=self._wrong_unit(found, text))
        return Cell(value * found[0] + (0.0 if self.strip.aspect in DIFFERENCES else found[1]), own_unit=True)

    def _requirement(self, stated: Requirement, text: str) -> Cell:
        """A feature control frame or a roughness that stands in the cell of its parameter."""
        name = self.entry.name
        values, wrong = read_numbers([stated.number], self.terms.decimal)
        if parameter_of(name, stated.characteristic)[0] != name or wrong:
            said = f"“{shown(text)}” states {stated.characteristic}, which {name} is not"
            return Cell(own_unit=True, trouble=Trouble(-1, "unreadable", "not-a-requirement", text, EXPECTED, said))
        factor = self.measure.factor
        if stated.unit:
            found = factor_to(self.entry.unit, stated.unit)
            if isinstance(found, ReadError):
                return Cell(own_unit=True, trouble=self._wrong_unit(found, text))
            factor = found[0]
        trouble = None
        if said := assumed(name, stated, name):
            trouble = Trouble(-1, "assumption", "characteristic", text, EXPECTED, f"“{shown(text)}”: {said}")
        return Cell(tidy(values[0] * factor), own_unit=bool(stated.unit), trouble=trouble)

    def _may_be_wide(self) -> bool:
        """Whether two numbers may be the ends of a wide range: of a clearance, a force, a rate or a float."""
        entry = self.entry
        return entry.unit in ("um", "N", "N/mm") or entry.name == "axial_float" or self.strip.aspect != "value"

    def _tolerance(self, text: str) -> Cell:
        """A size with its tolerance, or the content of a tolerance column."""
        entry, measure = self.entry, self.measure
        unit = measure.unit or (entry.unit if self.strip.own_unit else "")
        if self.strip.aspect == "tolerance":
            half_width = self.terms.mapping.half_width or _HALF in self.strip.label
            size = read_deviation_pair(text, unit, self.terms.decimal, half_width=half_width)
        else:
            size = read_size(text, unit, self.terms.decimal, ranges=self._may_be_wide())
        if isinstance(size, ReadError):
            return Cell(trouble=trouble_of(size))
        factor, offset = measure.factor, measure.offset
        if size.unit and size.unit != measure.unit:
            found = factor_to(entry.unit, size.unit)
            if isinstance(found, ReadError):
                return Cell(trouble=self._wrong_unit(found, text))
            factor, offset = found
        # an ISO 286 class speaks of millimetres
        own_unit = bool(size.unit and size.unit != unit) or bool(
            size.tolerance_class and entry.unit == "mm" and self.terms.class_in_mm
        )
        if measure.missing and not own_unit:
            return Cell(trouble=without_unit(text, entry))
        if size.kind in ("thread", "chamfer") or (
            size.kind in ("radius", "square") and entry.name.endswith(("diameter", "shaft_bore"))
        ):
            said = f"“{shown(text)}” is a {size.kind}, not the size that is wanted"
            return Cell(own_unit=own_unit, trouble=Trouble(-1, "unreadable", "wrong-feature", text, _SIZE, said))
        make = self._of_size if self.is_size else self._of_number
        return make(size, text, factor, offset, own_unit)

    def _of_size(self, size: Size, text: str, factor: float, offset: float, own_unit: bool) -> Cell:
        """The cell of a size parameter."""
        number = _NAN if size.nominal is None else tidy(size.nominal * factor + offset)
        if "one-sided" in size.notes and not size.tolerance_class:
            said = f"“{shown(text)}” states only one of two limits; its tolerance is not used"
            one_sided = Trouble(-1, "partly", "one-sided", text, _SIZE, said)
            return Cell(number, own_unit=own_unit, trouble=one_sided)
        lower = upper = _NAN
        if size.lower is not None and size.upper is not None:
            middle = 0.5 * (size.lower + size.upper) if size.limits else 0.0
            if size.limits:
                number = tidy(middle * factor + offset)
            lower, upper = tidy((size.lower - middle) * factor), tidy((size.upper - middle) * factor)
        trouble = None
        if size.reversed:
            said = f"the deviations in “{shown(text)}” stand in reversed order; the larger is taken as the upper one"
            trouble = Trouble(-1, "assumption", "reversed-deviations", text, _SIZE, said)
        elif "general tolerance" in size.notes:
            said = f"“{shown(text)}” refers to a general tolerance; the size is used without a tolerance"
            trouble = Trouble(-1, "assumption", "general-tolerance", text, _SIZE, said)
        limits = size.limits and not np.isnan(lower)
        return Cell(number, lower, upper, size.tolerance_class, limits, own_unit, trouble)

    def _of_number(self, size: Size, text: str, factor: float, offset: float, own_unit: bool) -> Cell:
        """A number out of a text with a prefix or with more than a number."""
        expected = f"one number in {self.entry.unit}"
        if size.nominal is None:
            if "one-sided" in size.notes and size.limits and size.upper is not None:
                return Cell(tidy(size.upper * factor + offset), own_unit=own_unit)  # "max 0.005" of a run-out
            said = f"“{shown(text)}” is not one number"
            return Cell(own_unit=own_unit, trouble=Trouble(-1, "unreadable", "not-a-number", text, expected, said))
        trouble = None
        if size.tolerance_class or size.lower is not None or size.upper is not None:
            said = f"“{shown(text)}” states a tolerance, of which {self.entry.name} has none; the nominal is taken"
            trouble = Trouble(-1, "assumption", "tolerance-dropped", text, expected, said)
        return Cell(tidy(size.nominal * factor + offset), own_unit=own_unit, trouble=trouble)

    @staticmethod
    def _wrong_unit(error: ReadError, text: str) -> Trouble:
        return trouble_of(ReadError(error.code, text, error.expected, error.sentence))
