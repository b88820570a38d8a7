"""What a JSON document states, gathered cell by cell, and what each of its keys means where it stands."""

from typing import Any

import numpy as np
from attrs import define, evolve, field

from linter.model.places import Place
from linter.model.stations import Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.fit_classes import CLASS
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text, object_column
from linter.reading.files.intake import visible
from linter.reading.files.json_text import pointer
from linter.reading.layouts.beside import feature_beside
from linter.reading.layouts.json_flat import Unflattened
from linter.reading.layouts.json_keys import INNER, Path, bare, local
from linter.reading.layouts.json_limits import beside_size
from linter.reading.layouts.json_meaning import Meanings, plain_cells
from linter.reading.layouts.json_records import (
    CONTEXT,
    REMARKS,
    Here,
    Pile,
    aspect_of,
    has_tolerance,
    is_nominal,
    says_size,
    version_of,
)
from linter.reading.layouts.json_shapes import Shape
from linter.reading.layouts.json_units import StatedUnits, says_unit, with_unit
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading
from linter.reading.words.limits import IS_LARGEST, IS_SMALLEST
from linter.reading.words.parts import concepts_said

#: Numbers that no word of their name says to be a largest one.
_LARGEST = ("limiting_speed", "reference_speed")
#: Entries of a list that may be one value: nominal, two deviations, class and unit.
_MOST_LISTED = 5
#: Limits of a size lie as near to each other, as a share of it, and deviations are as small (common practice: far more
#: than IT 13 of any size).
_NEAR = 0.05


def _aspects_of(numbers: list[float], aspect: str) -> list[str]:
    """What each number of a list states of one size: its aspect, none where that is not clear.

    One number is the value. Of two near each other the larger is the upper limit, and below a word for a tolerance the
    upper deviation. Of three the first is the nominal and the others are deviations.
    """
    if len(numbers) == 1:
        return [""]
    if not aspect or not 2 <= len(numbers) <= 3 or aspect not in ("value", "tolerance"):
        return []
    first, *rest = numbers
    if len(numbers) == 2 and aspect == "tolerance":
        return ["upper", "lower"] if first >= rest[0] else ["lower", "upper"]
    if len(numbers) == 2 and min(numbers) > 0 and 0 < max(numbers) - min(numbers) <= _NEAR * max(numbers):
        return ["max", "min"] if first > rest[0] else ["min", "max"]
    if len(numbers) == 3 and aspect == "value" and first > 0 and max(map(abs, rest)) <= _NEAR * first:
        return ["", "upper", "lower"] if rest[0] >= rest[1] else ["", "lower", "upper"]
    return []


def _says_size_of(heading: Heading, word: str) -> bool:
    """Whether a key in the object of a diameter holds its size; that of a housing's seat is its bore."""
    bore = heading.parameter == "housing_seat_diameter" and concepts_said(word) == {"bore"}
    return bore or says_size(word)


def _is_limit(name: str, aspect: str) -> bool:
    """Whether a parameter is itself a largest or a smallest value."""
    word, always = ("max", IS_LARGEST) if aspect == "max" else ("min", IS_SMALLEST)
    return name.endswith((*always, f"_{word}")) or (aspect == "max" and name in _LARGEST)


@define(eq=False)
class Cells(Meanings):
    """The cells of one document by what they state, with their places."""

    file: str = field(kw_only=True)
    found: Found = field(kw_only=True)
    piles: dict[tuple[Heading, str], Pile] = field(factory=dict)
    rows: dict[tuple[str, str], int] = field(factory=dict)
    units: StatedUnits = field(factory=StatedUnits)
    stated: dict[tuple[Heading, int], tuple[Any, Path]] = field(factory=dict)
    again: dict[int, list[Path]] = field(factory=dict)
    flat: Unflattened = field(factory=lambda: Unflattened(None))

    def block(self) -> Block:
        """All that was kept as one table."""
        block = Block([m for m, _ in self.rows], [s for _, s in self.rows], [], self.units.length)
        for pile in self.piles.values():
            block.strips.append(
                Strip(
                    pile.heading.parameter,
                    object_column(pile.cells),
                    np.array(pile.rows, dtype=np.intp),
                    pointers=pile.pointers,
                    **pile.heading.traits(pile.label),
                )
            )
        return block

    def place(self, path: Path) -> Place:
        """A place of the document."""
        return Place(self.file, pointer=self.pointer(path))

    def pointer(self, path: Path) -> str:
        """JSON Pointer of a place in the file."""
        return pointer(self.flat.path(path))

    def layout(self, text: str) -> None:
        """Say once how the document is laid out."""
        if text not in self.found.layouts:
            self.found.layouts.append(text)

    def cell(self, heading: Heading, label: str, value: Any, path: Path, here: Here) -> None:
        """Keep one scalar."""
        station, heading = heading.station or here.station, self.units.of(heading)
        key = (here.machine, station)
        row = self.rows.setdefault(key, len(self.rows))
        pile = self.piles.setdefault((heading, label), Pile(heading, label))
        pile.cells.append(value)
        pile.rows.append(row)
        pile.pointers.append(self.pointer(path))
        if self.stated.setdefault((heading, row), (value, path)) == (value, path):
            return
        if self.stated[heading, row][0] == value and station and heading.parameter not in ("machine", "station"):
            self.again.setdefault(row, []).append(path)

    def unused(self, name: str, value: Any, path: Path, reason: str) -> None:
        """Tell that a value is not used, and why."""
        text = cell_text(value) if not isinstance(value, (dict, list)) else f"{len(value)} entries"
        if value is None or text == "":
            return
        if len(self.found.seen) < 100:
            self.found.seen.append(name)
        self.found.leave(Unused(name, visible(text, 120), self.place(path), reason))

    def parts(
        self, heading: Heading, label: str, node: dict[str, Any], path: Path, here: Here, shape: Shape | None = None
    ) -> None:
        """A value with its unit and deviations, as an object; objects and lists in it may state parts of it."""
        shape = shape or Shape()
        unit = heading.unit
        for key in node:
            if shape.is_unit(key) and isinstance(node[key], str):
                unit = node[key].strip() or unit
        told = beside_size(node, heading, shape)
        for key, value in node.items():
            word = local(key)
            if word in REMARKS and heading.entry.kind == "toleranced" and CLASS.fullmatch(cell_text(value).strip()):
                self.cell(evolve(heading, aspect="tolerance"), label, value, (*path, *key.split(INNER)), here)
                continue
            if key in (shape.name, shape.station, shape.part) or shape.is_unit(key) or word in CONTEXT:
                continue
            at = (*path, *key.split(INNER))
            aspect, own = self._stated_by(key, shape.aspect_of(key), heading)
            if key in told and (aspect or self.beside(label, key, value, heading, here) is None):
                aspect, own = told[key], self.words.unit_of(bare(key))
            if aspect and not isinstance(value, (dict, list)):
                self._part(heading, (own or unit, aspect), label, value, at, here)
                continue
            beside = None if aspect or isinstance(value, list) else self.beside(label, key, value, heading, here)
            if beside is not None:
                beside = evolve(beside, station=heading.station)
                if isinstance(value, dict):
                    self.parts(beside, f"{label} {at[-1]}", value, at, here)
                else:
                    self.cell(beside, f"{label} {at[-1]}", value, at, here)
            elif not self._inner(evolve(heading, unit=own or unit), label, value, at, here, aspect):
                self.unused(f"{label} {at[-1]}", value, at, "not a part of a value that is recognised")

    def _stated_by(self, key: str, said: tuple[str, str], heading: Heading) -> tuple[str, str]:
        """What of a value a key states and its unit: as its word says, or a diameter as that of its object."""
        if not said[0] and heading.parameter.endswith("_diameter") and _says_size_of(heading, local(key)):
            return "value", self.words.unit_of(bare(key))
        return said

    def _part(self, heading: Heading, said: tuple[str, str], label: str, value: Any, at: Path, here: Here) -> None:
        """One part of a value; ``said`` is its unit and what it states."""
        unit, aspect = said
        key = str(at[-1])
        toleranced = parameter(heading.parameter).kind == "toleranced"
        if aspect == "half":
            label, aspect = f"{label} ±", "tolerance"
        elif aspect == "tolerance" and not toleranced:
            aspect = "value"
        if not toleranced and aspect in ("upper", "lower", "tolerance"):
            self.unused(label, value, at, "no tolerance belongs to it")
            return
        if not toleranced and aspect in ("max", "min") and not _is_limit(heading.parameter, aspect):
            limit = self.limit_of(label, key)
            if limit is None:
                self.unused(f"{label} {key}", value, at, "no limits belong to it")
            else:
                self.cell(evolve(limit, station=heading.station, unit=unit), f"{label} {key}", value, at, here)
            return
        if aspect == "value" and not (heading.aspect == "tolerance" and is_nominal(key)):
            aspect = heading.aspect  # shaftFit: {nominal, upper, lower} holds the whole size
        version = version_of(key) or heading.version
        traits = Heading(heading.parameter, heading.station, unit, aspect, heading.own_unit, version)
        self.cell(traits, f"{label} {key}" if "minus" in local(key) else label, value, at, here)

    def limit_of(self, label: str, key: str) -> Heading | None:
        """What a name and a word for a limit of it name together, where that is a number of its own."""
        if aspect_of(key)[0] not in ("max", "min"):
            return None
        heading = self.words.heading(f"{label} {bare(key)}")
        return heading if heading is not None and heading.entry.kind == "number" and heading.aspect == "value" else None

    def designated(self, name: str, value: Any, at: Path, here: Here) -> bool:
        """Read the designation that stands for a position among bearings (``bearings: {front: "6203"}``)."""
        if not isinstance(value, str) or designation_strength(value) == "no":
            return False
        self.cell(Heading("bearing_designation"), name, value, at, here.at(here.machine, self.words.station(name)))
        return True

    def without_name(self, key: str, value: dict[str, Any], main: str, at: Path, here: Here) -> None:
        """Parts of a value under a key that is not known; a limit with it may name a value (``speed: {max}``)."""
        unit = next((cell_text(cell) for part, cell in value.items() if says_unit(part)), "")
        for part, cell in value.items():
            if says_unit(part):
                continue
            name = key if part == main else f"{key} {part}"
            if (limit := self.limit_of(key, part)) is not None:
                self.cell(with_unit(limit, aspect_of(part)[1] or unit or here.unit), name, cell, (*at, part), here)
            else:
                self.unused(name, cell, (*at, part), self.words.why(key))

    def tolerance_of_size(self, key: str, value: Any, at: Path, here: Here) -> bool:
        """Read the tolerance, as an object or list, of the size right before it in one object; false for another."""
        before, size = self.size
        if size is None or before != at[:-1] or aspect_of(key)[0] != "tolerance":
            return False
        heading = with_unit(evolve(size, aspect="tolerance"), here.unit)
        if isinstance(value, list):
            return self.listed(heading, key, value, at, here)
        if not has_tolerance(value):
            return False
        self.parts(heading, key, value, at, here)
        return True

    def _inner(self, heading: Heading, label: str, value: Any, at: Path, here: Here, aspect: str) -> bool:
        """Read an object or list of parts of a value in another (``tolerance: {upper, lower}``); false for others."""
        if aspect not in ("", "value"):
            heading = evolve(heading, aspect=aspect)
        if isinstance(value, dict):
            if not aspect and not has_tolerance(value):
                return False
            self.parts(heading, label, value, at, here)
            return True
        return isinstance(value, list) and self.listed(heading, label, value, at, here)

    def listed(self, heading: Heading, label: str, values: list[Any], at: Path, here: Here) -> bool:
        """Read a list of the numbers of one value (limits; nominal, deviations) and its unit; false for others."""
        if not 1 < len(values) <= _MOST_LISTED or any(isinstance(value, (dict, list, bool)) for value in values):
            return False
        numbers = [(value, k) for k, value in enumerate(values) if isinstance(value, (int, float))]
        texts = [(text, k) for k, value in enumerate(values) if (text := cell_text(value)) and isinstance(value, str)]
        unit = [text for text, _ in texts if (known := known_unit(text)) and known.dimension != "ratio"]
        classes = [(text, k) for text, k in texts if text not in unit]
        sized = heading.entry.kind == "toleranced"
        aspects = _aspects_of([number for number, _ in numbers], heading.aspect if sized else "")
        if len(unit) > 1 or len(aspects) != len(numbers) or not numbers or len(classes) > sized:
            return False
        heading = evolve(heading, unit=unit[0] if unit else heading.unit)
        for (value, k), aspect in zip(numbers, aspects, strict=True):
            self.cell(evolve(heading, aspect=aspect or heading.aspect), label, value, (*at, k), here)
        for text, k in classes:
            self.cell(evolve(heading, aspect="tolerance"), label, text, (*at, k), here)
        return True

    def beside(self, label: str, key: str, value: Any, heading: Heading, here: Here) -> Heading | None:
        """Another feature of what an object names, that one of its keys states."""
        if (beside := feature_beside(self.words, label, bare(key))) is not None:
            return beside
        inner = self.heading(bare(key), evolve(here, trail=(*here.trail, label)), plain_cells(value))
        other = inner is not None and inner.entry.level == "station" and inner.parameter != heading.parameter
        return inner if other else None
