"""What each key of a JSON document means where it stands: with the keys around it, by its cells, by its document."""

import re
from typing import Any

from attrs import define, evolve, field

from linter.reading.cells.fit_classes import HOLE
from linter.reading.files.grids import cell_text
from linter.reading.layouts.below_parts import JOINABLE
from linter.reading.layouts.beside import bearing_of_station, of_named_station
from linter.reading.layouts.json_columns import Columns
from linter.reading.layouts.json_keys import Path, local
from linter.reading.layouts.json_records import Here, aspect_of, is_nominal, says_size
from linter.reading.layouts.json_things import is_of_other, is_of_rotor, part_said
from linter.reading.layouts.sides import Side, innermost, side_of, within
from linter.reading.words.columns import heading_of
from linter.reading.words.designations import designation_strength, read_designation
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said, is_bearing, part_alone, tells_feature

#: Units at the end of a key without capitals, as they are written (``spring_rate_n_mm``, ``temp_c``).
_SMALL_UNITS = {
    "kn": "kN", "n": "N", "n_mm": "N/mm", "n_um": "N/µm", "nm": "N.m", "c": "°C", "degc": "°C", "k": "K", "mpa": "MPa",
    "gpa": "GPa", "min_1": "1/min", "1_min": "1/min", "u_min": "1/min", "r_min": "1/min", "tr_min": "1/min",
    "giri_min": "1/min", "ob_min": "1/min", "об_мин": "об/мин", "mm2_s": "mm2/s", "mm_s": "mm/s", "w": "W", "h": "h",
}  # fmt: skip
_SMALL_UNIT = re.compile(r"(.+?)_(" + "|".join(_SMALL_UNITS) + ")")
#: Codes that say what they are (ISO 5753-1, ISO 492), whatever they stand under.
_CODES = {"clearance_class": re.compile(r"C[2-5]|CN"), "tolerance_class": re.compile(r"P[2456]")}
#: Begins like a size.
_SIZE = re.compile(r"[Ø⌀ø]? ?\d+(?:[.,]\d+)?(?![\d-])")
#: Cells of a value that are looked at.
_MOST_LISTED = 5


def _names(key: str, trail: tuple[str, ...]) -> list[str]:
    """The names of a value: its key with the keys around it, and without the outer ones that say no part."""
    parts = (k for k, word in enumerate(trail) if concepts_said(word) & {"shaft", "housing"})
    return [" ".join((*trail[first:], key)) for first in range(next(parts, len(trail)) + 1)]


def _is_of_seat(trail: tuple[str, ...]) -> bool:
    """Whether the key around a value says a part or its seat, and no shoulder, fillet or ring on that part."""
    said = concepts_said(trail[-1]) if trail else frozenset()
    of_seat = bool(said & {"seat", "bore", "shaft", "housing"}) and not said & {"shoulder", "fillet"}
    side = side_of(trail[-1]) if trail else None
    of_ring = side is not None and side.side == "bearing"
    return of_seat or (side is not None and not (of_ring and any(map(_is_of_part, trail[:-1]))))


def _is_of_part(word: str) -> bool:
    side = side_of(word)
    return side is not None and side.side in ("shaft", "housing")


def plain_cells(value: Any) -> tuple[str, ...]:
    """The texts of a value, or of the parts of an object of a size."""
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else (value,)
    return tuple(text for part in inner if not isinstance(part, (dict, list)) and (text := cell_text(part)))[
        :_MOST_LISTED
    ]


def _says_fit(word: str) -> bool:
    """Whether a key around a value says only that fits or tolerances stand in it."""
    said = concepts_said(word)
    return bool(said) and said <= {"fit", "tolerance"}


def says_more(name: str, words: Words) -> bool:
    """Whether the position in a name is news: what it means by itself has none."""
    return (heading := words.heading(name)) is None or (heading.entry.level == "station" and not heading.station)


@define(eq=False)
class Meanings:
    """What the keys of one document mean.

    Attributes
    ----------
    words : Words
        The names that are understood.
    size : (path, Heading or None)
        The size that was met last, and the object that it stands in.
    judged : dict of path to columns
        What keys mean together with those of like objects.
    names : dict of str to tuple of str
        Names of values below no position, each with what stands under it.
    """

    words: Words
    size: tuple[Path, Heading | None] = field(default=((), None))
    judged: dict[Path, Columns] = field(factory=dict)
    names: dict[str, tuple[str, ...]] = field(factory=dict)

    def heading(self, key: str, here: Here, cells: tuple[str, ...] = ()) -> Heading | None:
        """What a key names, with the keys of the objects around it before it, or by itself.

        ``cells`` is what stands under it; below no position all its names are noted, whose positions may be told later.
        """
        for name in _names(key, here.trail) if cells and not here.station else ():
            self.names.setdefault(name, cells)
        if self.words.groups(key) and self.words.heading(key) is None:
            return self._of_layout_word(key, here, cells)
        if (told := self._of_position(key, here, cells)) is not None:
            return told
        trail = self._trail(key, here)
        at, side = next(((i, s) for i, word in enumerate(trail) if (s := side_of(word))), (-1, None))
        alone = self.words.heading(key)
        own = alone if alone is not None and alone.entry.level == "machine" and alone.parameter != "machine" else None
        for first in range(len(trail)):
            heading = self._joined(trail[first:], key, side if first > at else None, first <= at)
            if heading is not None and not (own and heading.entry.level == "station"):
                return heading  # shaft: {n_max} is no size of the shaft
        between = tuple(word for word in trail[at + 1 :] if not self.words.names.station(word))
        return own or self._of_part(key, side, between, here.station != "")

    def _trail(self, key: str, here: Here) -> tuple[str, ...]:
        """The keys around a key that say what it is of."""
        around = innermost((*here.trail, key))[:-1] if _is_of_part(key) else innermost(here.trail)
        trail = tuple(word for word in around if side_of(word) or not self.says_place(word))
        if says_size(local(key)) or is_nominal(key):
            return tuple(word for word in trail if not _says_fit(word))  # Посадки: [{Диаметр, Посадка}]
        return trail

    def _of_layout_word(self, key: str, here: Here, cells: tuple[str, ...]) -> Heading | None:
        """What a word of a layout (type, designation) names with the key around it: a choice, or the bearing's."""
        joined = self._joined(here.trail[-1:], key, None, True) if here.trail else None
        if joined is not None and (joined.entry.kind == "choice" or joined.parameter == "bearing_designation"):
            return joined  # preload: {type}
        if joined is not None and joined.parameter == "rotor_mass" and is_of_rotor(here.trail[-1]):
            return joined  # mass: a size in German
        return None if aspect_of(key)[0] else self._of_position(key, here, cells)

    def _of_part(self, key: str, side: Side | None, between: tuple[str, ...], placed: bool) -> Heading | None:
        """What a key names of the part around it; ``between`` are the keys between them."""
        if side is not None and any(is_of_other(word, placed) for word in between):
            return None  # the diameter of an impeller's seat is no size of a bearing's
        return within(self.words, side, key) or self._with_small_unit(key, side)

    def _of_position(self, key: str, here: Here, cells: tuple[str, ...]) -> Heading | None:
        """What a key names with the keys around it, where the names of the document show a position in them."""
        for name in _names(key, here.trail) if not here.station else ():
            if (told := self.words.told_of(name)) is None:
                continue
            heading = self.words.heading(name)
            if heading is not None and heading.station and heading.parameter not in ("machine", "station"):
                return heading
            if heading is None and (of_part := self._of_told(key, told.rest, cells)) is not None:
                return evolve(of_part, station=told.station)
        return None

    def inside(self, key: str, here: Here) -> Here:
        """The place below a key; at the position that the names of the document show in it and the keys around it."""
        word = part_said(key)
        for first in range(len(here.trail) + 1) if word and not here.station else ():
            before = " ".join(here.trail[first:])
            told = self.words.told_of(f"{before} {word}".strip())
            if told is None:
                continue
            if before and told.rest.startswith(f"{before} "):
                rest = told.rest.removeprefix(f"{before} ")
                of_part = is_bearing(rest) and any(map(_is_of_part, here.trail))
                return evolve(here.below("" if of_part else rest), station=told.station)
            part, _, rest = told.rest.partition(" ")
            words = (part, rest) if rest and side_of(part) else (told.rest,)
            return evolve(here, station=told.station, trail=(*here.trail[:first], *words))
        return here.below(word)

    def _of_told(self, key: str, rest: str, cells: tuple[str, ...]) -> Heading | None:
        """What is left of a name says: a part alone its size, else what the key names of the part at its beginning."""
        if (part := part_alone(rest)) and any(map(_SIZE.match, cells)):
            return Heading(f"{part}_seat_diameter")  # quillNoseJournal
        before = [word for word in re.split(r"[\W_]+", rest.removesuffix(key)) if word]
        side = side_of(before[0]) if before and rest.endswith(key) else None
        if side is None or not all(map(tells_feature, before[1:])):
            return None
        heading = within(self.words, side, key)
        return heading if heading is not None and heading.entry.level == "station" and not heading.station else None

    def _joined(self, trail: tuple[str, ...], key: str, side: Side | None, as_it_stands: bool) -> Heading | None:
        """What a key names with the keys around it before it, where these say of what it is in full."""
        joined = " ".join((*trail, key))
        heading = self.words.heading(joined) if as_it_stands else within(self.words, side, joined)
        if heading is not None and not heading.station:
            path = self.words.heading("/".join((*trail, key)))
            heading = path if path is not None and path.parameter == heading.parameter else heading
        match = self.words.names.find(joined)
        whole = match is None or not match.feature
        return heading if heading is not None and whole and heading.parameter not in ("machine", "station") else None

    def says_place(self, word: str) -> bool:
        """Whether a key around a value says only that positions stand in it (``Lagerung``)."""
        return self.words.heading(word) == Heading("station")

    def _with_small_unit(self, key: str, side: Side | None) -> Heading | None:
        """What a key without capitals names, whose unit is written without them too."""
        found = _SMALL_UNIT.fullmatch(key) if key == key.lower() else None
        heading = within(self.words, side, f"{found[1]} [{_SMALL_UNITS[found[2]]}]") if found else None
        return heading if heading is not None and heading.unit else None

    def plain(self, key: str, here: Here, trail: tuple[str, ...] = ()) -> Heading | None:
        """What a key names by itself below the keys around it."""
        below = evolve(here, trail=(*here.trail, *filter(None, map(part_said, trail))))
        return of_named_station(self.words, key, self.heading(key, below))

    def meaning(self, key: str, value: Any, here: Here, at: Path) -> Heading | None:
        """What a key names, where it holds a scalar also by that."""
        heading = self.heading(key, here, plain_cells(value))
        if here.station:
            in_part = self.words.with_letter_of_unit(" ".join((*here.trail[-1:], key))) if heading is None else None
            heading = in_part or of_named_station(self.words, key, heading)
        if isinstance(value, (dict, list)):
            return heading
        text = cell_text(value)
        sized = heading is not None and heading.entry.kind == "toleranced" and is_bearing(key)
        if sized and designation_strength(text) == "certain":
            return Heading("bearing_designation")  # 轴承位: [{"轴承": "6205-2Z"}]
        if heading is None and (nominal := self._nominal(key, here)) is not None:
            return self.of_size_before(key, nominal, at[:-1])
        heading = self.of_size_before(key, heading, at[:-1], text)
        small = key[:2] in ("ra", "RA") and self.words.names.split_unit(key)[0] in ("ra", "RA")
        if small and not _is_of_seat(here.trail):
            heading = None  # r_a of a fillet or Ra, where small letters stand for both
        judged = self.judged.get(at[:-1], {}).get(key, heading)
        if judged is not heading and (judged is not None or self.plain(key, here) is not None):
            heading = judged
        else:
            heading = heading_of(key, heading, (text,), self.words)
        heading = heading or self._coded(key, value, here)
        return bearing_of_station(self.words, key, heading, text) if here.station else heading

    def _nominal(self, key: str, here: Here) -> Heading | None:
        """The seat of a part at a position, where a key right below both says the nominal size alone."""
        side = side_of(here.trail[-1]) if here.trail and here.station and is_nominal(key) else None
        placed = side is not None and side.side in ("shaft", "housing")
        return Heading(f"{side.side}_seat_diameter", unit=aspect_of(key)[1]) if side is not None and placed else None

    def _coded(self, key: str, value: Any, here: Here) -> Heading | None:
        """What a text says by itself in an object of the bearing: clearance (``C3``), precision, designation."""
        if not isinstance(value, str) or not any(is_bearing(word) for word in here.trail) or self.words.groups(key):
            return None
        name = next((name for name, code in _CODES.items() if code.fullmatch(value.strip())), "")
        if not name and any(map(str.isdigit, value)) and read_designation(value).derived:
            name = "bearing_designation"
        return Heading(name) if name else None

    def of_size_before(self, label: str, heading: Heading | None, where: Path, text: str = "") -> Heading | None:
        """A key or record that says a part of a size only (``es``, ``Fit``) is of the size right before it.

        The class of a hole behind a bore is the housing's.
        """
        before, size = self.size
        aspect, unit = JOINABLE.get(self.words.group(label), ""), self.words.unit_of(label)
        if not aspect and (said := aspect_of(label))[0] in ("upper", "lower", "tolerance"):
            aspect, unit = said
        fits = size is None or size.entry.kind == "toleranced" or (aspect == "tolerance" and HOLE.fullmatch(text))
        if heading is None and size is not None and before == where and aspect not in ("", "unit") and fits:
            size = size if size.entry.kind == "toleranced" else evolve(size, parameter="housing_seat_diameter")
            return evolve(size, aspect=aspect, unit=unit or size.unit, own_unit=False)
        sized = heading is not None and (heading.entry.kind == "toleranced" or heading.parameter == "bore_diameter")
        toleranced = sized and heading is not None and heading.aspect == "value"
        self.size = (where, heading if toleranced else None)
        return heading
