"""Rows of characteristic lists: what a row states of the feature that its name names."""

from attrs import define, evolve, field, frozen

from linter.model.stations import Problem
from linter.reading.cells.requirements import (
    SIZES,
    Requirement,
    assumed,
    characteristic_of,
    parameter_of,
    read_requirement,
)
from linter.reading.cells.signs import ReadError
from linter.reading.cells.units import conversion
from linter.reading.files.grids import Grid
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found
from linter.reading.words.headings import Heading
from linter.reading.words.parts import concepts_said

#: A unit this many micrometres or more is one of sizes, not of roughness.
_UNIT_OF_SIZES = 100.0
#: What words say that name a kind of characteristic which is no size.
_NO_SIZES = frozenset(("roughness", "cylindricity", "runout", "form", "flatness", "parallelism", "coaxiality"))


@frozen
class Meant:
    """What a row states.

    Attributes
    ----------
    heading : Heading or None
        The parameter with its unit; None where the row states none.
    part : str
        The part of the cell that states the value; empty for the whole cell.
    reason : str
        Why there is no parameter, as half a sentence.
    told : bool
        True where the cell is among the problems already.
    """

    heading: Heading | None
    part: str = ""
    reason: str = ""
    told: bool = False


@define(eq=False)
class Characteristics:
    """Geometrical tolerances and roughness in the rows of one table.

    Attributes
    ----------
    grid : Grid
        The table.
    found : Found
        Told of assumptions and of what cannot be understood.
    length_unit : str
        Unit of lengths that the table states, empty for none.
    kinds : int or None
        Column that says what kind of characteristic each row is.
    """

    grid: Grid
    found: Found
    length_unit: str
    kinds: int | None = field(default=None)

    def look_for_kinds(self, column: int | None) -> None:
        """Take a column of kinds if it is one of characteristics; a type of data (length, angle, text) is none."""
        grid = self.grid
        kinds = (
            {characteristic_of(grid.text(row, column)) for row in range(grid.height)} if column is not None else set()
        )
        self.kinds = column if kinds - {"", "length", "angle"} else None

    def meant(self, row: int, column: int, heading: Heading) -> Meant:
        """What the cell of a row states of the feature that ``heading`` names, with the unit of its row or column."""
        text = self.grid.text(row, column)
        stated = read_requirement(text)
        if isinstance(stated, ReadError):
            self._tell("unreadable", stated.code, heading, row, column, stated.expected, stated.sentence)
            return Meant(None, reason="what the row states is not understood", told=True)
        part = stated.number if stated is not None else ""
        if stated is None:
            said = self.grid.text(row, self.kinds) if self.kinds is not None else ""
            kind = characteristic_of(said)
            if not kind and not concepts_said(said).isdisjoint(_NO_SIZES):
                return Meant(None, reason=f"it is not clear what {visible(said, 40)} limits")
            if not kind:
                return Meant(heading)
            stated = Requirement(kind, "")
        name, reason = parameter_of(heading.parameter, stated.characteristic)
        if not name:
            return Meant(None, reason=reason)
        meant = heading if name == heading.parameter else evolve(heading, parameter=name, own_unit=False)
        told = [assumed(name, stated, heading.parameter)] if stated.characteristic not in SIZES else []
        unit = stated.unit or heading.unit
        if stated.characteristic == "roughness Ra" and not stated.unit:
            if (conversion(unit, "um") or 0.0) >= _UNIT_OF_SIZES:
                sentence = f"“{visible(text, 60)}” is a roughness, and the unit {unit} beside it is one of sizes"
                self._tell("unreadable", "ambiguous-unit", meant, row, column, "a roughness in µm or µin", sentence)
                return Meant(None, reason="its unit is not clear", told=True)
            if not unit and not meant.own_unit and conversion(self.length_unit or "mm", "in") != 1:
                unit = "µm"
                told.append("Ra stands without a unit; µm is taken")
        if sentence := "; ".join(filter(None, told)):
            self._tell("assumption", "characteristic", meant, row, column, "the requirement in full", sentence)
        return Meant(evolve(meant, unit=unit) if unit else meant, part)

    def _tell(
        self, kind: str, code: str, heading: Heading, row: int, column: int, expected: str, sentence: str
    ) -> None:
        place, read = self.grid.place(row, column), self.grid.text(row, column)
        end = "." if kind == "assumption" else "; the value is not used."
        message = f"{place}: {visible(sentence, 300)}; expected {expected}{end}"
        self.found.problems.append(
            Problem(kind, None, heading.parameter, place, visible(read), expected, message, code)  # type: ignore[arg-type]
        )
