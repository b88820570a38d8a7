"""Columns of a seat, a shoulder or a bore whose heading does not say all of it: the part, by what stands beside them.

``Front shaft``, ``DE housing [in]``: what a shaft or a housing is measured by, the heading does not say; the bearing
beside it does (its bore, its outside diameter), or a class of its own sort, in the cell or in a column behind it.
``Bore`` is that of the ring, or of the housing where a class of holes stands behind it or it is larger than the shaft.
A seat or a shoulder of no part (``Shldr dia``) is asked as names are (``told_parts.py``), row by row. What sizes and
neighbours tell and no name says is marked as assumed.
"""

import re
from collections.abc import Callable, Sequence
from itertools import takewhile

from attrs import evolve, frozen

from linter.reading.cells.fit_classes import CLASS_ONLY, SHAFT, SIZE_AND_CLASS
from linter.reading.cells.signs import LONGEST_TEXT, fold
from linter.reading.words.column_words import KEYS
from linter.reading.words.cuts import aspect_cuts, station_cuts, unit_trouble
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.mapping import Aspect
from linter.reading.words.part_evidence import FITS, PARTS, numbers_of, rings_of, same_sizes
from linter.reading.words.parts import concepts_said, is_tolerance_of_bore, part_alone, tells_feature
from linter.reading.words.told_parts import Rest, may_be_of_part, of_parts

Column = Heading | None

_ASPECTS = {"CLASS": "tolerance", "UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min"}
_BEHIND = {
    "上": "upper",
    "下": "lower",
    "Верх": "upper",
    "Низ": "lower",
    "Верхн": "upper",
    "Нижн": "lower",
    "up": "upper",
    "lo": "lower",
}
_PIECE = re.compile(r"[^\W\d_⌀Øø]+")
_OF_SYMBOL = re.compile(r"(?:\W*)(?P<word>[^\W\d_]+\.?)(?P<joint>[ _./]*)[Ø⌀øφΦ]?(?P<symbol>[dD])\W*")
_FIGURES = re.compile(r"[0-9 .,+/-]*")
_LIMITS = re.compile(r"[Ø⌀]? ?(\d*[.,]?\d+) ?(?:-|–|/|\.{2,3}|…|to|bis) ?[Ø⌀]? ?(\d*[.,]?\d+)")
#: The two limits of a size, and its two deviations.
_ENDS: tuple[tuple[Aspect, Aspect], ...] = (("max", "min"), ("upper", "lower"))
#: Limits of one size differ by less than this share of it.
_LIKE_LIMITS = 0.01
#: A ring has the size of the shaft that it sits on: a bore larger than that by more is another one.
_LARGER = 1.15
_OF_BORE = frozenset(("bore", "diameter", "dimensions", "inside"))
_OF_BEARING_BORE = _OF_BORE | {"bearing", "seat", "housing"}


def side_behind(label: str) -> str:
    """The deviation that a word right behind a size says which names a position elsewhere (``軸径 | 上 | 下``)."""
    return _BEHIND.get(label.strip(" ."), "")


def says_bore(name: str, key: str) -> bool:
    """Whether a heading without its unit says a bore and not whose; ``key`` is it for comparing."""
    said = concepts_said(name)
    return key in KEYS["bore"] or ("bore" in said and said <= _OF_BORE)


def are_limits(cell: str) -> bool:
    """Whether a cell holds the two limits of one size (``2.1655-2.1660``)."""
    if (found := _LIMITS.fullmatch(cell)) is None:
        return False
    low, high = sorted(float(text.replace(",", ".")) for text in found.groups())
    return low > 0 and high - low < _LIKE_LIMITS * low


def may_say_seat(name: str, part: str) -> bool:
    """Whether a name may say the seat of a part, below which sizes with a class of its sort stand.

    The part itself, a seat of none, and for the housing the bore of a bearing (``Lagerbohrung``, ``alésage palier``):
    a ring has no class of holes.
    """
    if (said := part_alone(name)) or not all(map(tells_feature, _PIECE.findall(name))):
        return said == part
    concepts = concepts_said(name)
    of_bore = part == "housing" and {"bore", "bearing"} <= concepts <= _OF_BEARING_BORE
    return of_bore or ("seat" in concepts and concepts <= {"seat", "bearing", "diameter"})


def _placed(label: str, fits: Callable[[str], bool], words: Words) -> tuple[str, str, str]:
    """A heading without its position and its unit, these two; ``fits`` says of a rest that it is looked for."""
    told = words.told_of(label)
    core, unit = words.names.split_unit(fold(told.rest if told is not None else label))
    if told is not None and told.station:
        return core, told.station, unit
    for rest, piece, _ in station_cuts(core):
        if fits(rest) and (said := words.names.station(piece)):
            return rest, said, unit  # albero A, where ``a`` may be a small word too
    return core, "", unit


def _seat(part: str, station: str, unit: str) -> Column:
    fits = part and not (unit and unit_trouble(f"{part}_seat_diameter", unit))
    return Heading(f"{part}_seat_diameter", station, unit) if fits else None


def _of_part_alone(label: str, words: Words) -> Column:
    """The seat of the part that a heading says alone, or with a position; None where it says more or less."""
    core, station, unit = _placed(label, lambda rest: bool(part_alone(rest)), words)
    return _seat(part_alone(core) or ("housing" if word_key(core) in KEYS["hole"] else ""), station, unit)


def seat_by_cells(label: str, cells: Sequence[str], words: Words) -> Column:
    """What cells with classes of one sort tell of a heading: a seat or its tolerance.

    The word for a part or seat over sizes with a class (``Shaft motor side``: ``17 k5``); ``Tol d`` over classes of
    shafts, ``Tol D`` over those of holes; a tolerance of a bore over classes of holes, which no ring has.
    """
    part = next((part for part in PARTS if all(map(FITS[part].fullmatch, cells))), "")
    sizes, classes = (all(map(sort.fullmatch, cells)) for sort in (SIZE_AND_CLASS, CLASS_ONLY))
    if not part or not (sizes or classes):
        return None
    match = _OF_SYMBOL.fullmatch(label)
    symbol = match["symbol"] if match is not None and words.group(match["word"]) == "CLASS" else ""
    of_bore = part == "housing" and is_tolerance_of_bore(label)
    if classes or of_bore:
        told = of_bore or symbol == ("d" if part == "shaft" else "D")
        return Heading(f"{part}_seat_diameter", aspect="tolerance" if classes else "value") if told else None
    if (seat := _of_part_alone(label, words)) is None:
        core, station, unit = _placed(label, lambda rest: may_say_seat(rest, part), words)
        seat = _seat(part, station, unit) if station or may_say_seat(core, part) else None
    return seat if seat is not None and seat.parameter.startswith(part) else None


def parts_of_columns(
    labels: Sequence[str],
    keys: Sequence[str],
    result: list[Column],
    cells: Callable[[int], Sequence[str]],
    fixed: Sequence[bool],
    words: Words,
) -> None:
    """Enter whose seats, shoulders and bores columns are of which headings and cells alone do not tell it.

    Parameters
    ----------
    labels, keys : sequence of str
        Headings of columns beside each other, and these without their units, for comparing.
    result : list of Heading or None
        What each is known to be; what more is told is entered here.
    cells : callable
        Some of the filled cells of a column, by its index.
    fixed : sequence of bool
        Columns that the name mapping names.
    words : Words
        The names that are understood.
    """
    _Columns(labels, keys, result, cells, fixed, words).tell_parts()


@frozen
class _Columns:
    labels: Sequence[str]
    keys: Sequence[str]
    result: list[Column]
    cells: Callable[[int], Sequence[str]]
    fixed: Sequence[bool]
    words: Words

    def tell_parts(self) -> None:
        """Holes and bores first: what they are helps to tell the others."""
        self._holes()
        bores = [
            c for c, label in enumerate(self.labels)
            if says_bore(self.words.names.split_unit(label)[0], self.keys[c]) and self._is(c, "bore_diameter")
        ]  # fmt: skip
        for c in bores:
            self._bore_beside_its_tolerance(c)
        for c in bores:
            self._bore_larger_than_the_shaft(c)
        for c, label in enumerate(self.labels):
            if label and self.result[c] is None:
                self._size_of_part(c)
        self._parts_of_no_name()

    def _is(self, column: int, name: str) -> bool:
        heading = self.result[column]
        return heading is not None and heading.parameter == name

    def _at(self, name: str, station: str, aspect: str = "value") -> int | None:
        """The column of an aspect of a parameter of a position, or None."""
        said = ((c, h) for c, h in enumerate(self.result) if h is not None)
        return next((c for c, h in said if (h.parameter, h.station, h.aspect) == (name, station, aspect)), None)

    def _holes(self) -> None:
        """The diameter of a hole (``孔径``): the housing's beside shaft or bore, a bearing's beside its others."""
        stated = {h.parameter for h in self.result if h is not None}
        name = "housing_seat_diameter" if stated & {"shaft_seat_diameter", "bore_diameter"} else ""
        name = name or ("bore_diameter" if {"outside_diameter", "ring_width"} <= stated else "")
        for c, (label, key) in enumerate(zip(self.labels, self.keys, strict=True)):
            if not name or name in stated or self.result[c] is not None:
                continue
            if key in KEYS["hole"] or (key in KEYS["seat"] and "shaft_seat_diameter" in stated):
                self.result[c] = Heading(name, unit=self.words.unit_of(label), assumed=name.startswith(PARTS))

    def _behind(self, column: int, part: str) -> list[tuple[int, str]]:
        """Columns right behind a size that say only which part of its tolerance they hold."""
        found: list[tuple[int, str]] = []
        for k in range(column + 1, len(self.labels)):
            label = self.labels[k]
            own, aspect = self.result[k], _ASPECTS.get(self.words.group(label), "")
            aspect = aspect or side_behind(self.words.names.split_unit(label)[0])
            if own is not None:  # Bore tol: H6
                aspect = own.aspect if own.parameter == f"{part}_seat_diameter" and own.aspect != "value" else ""
            if not aspect or aspect in (known for _, known in found):
                break
            found.append((k, aspect))
        return found

    def _seat_with(self, column: int, seat: Heading, behind: Sequence[tuple[int, str]]) -> None:
        """Enter a seat and what stands of its tolerance behind it."""
        self.result[column] = seat
        for k, aspect in behind:
            self.result[k] = evolve(seat, aspect=aspect, unit=self.words.unit_of(self.labels[k]) or seat.unit)

    def _classes(self, behind: Sequence[tuple[int, str]]) -> list[str]:
        return [fold(cell) for k, aspect in behind if aspect == "tolerance" for cell in self.cells(k)]

    def _bore_beside_its_tolerance(self, column: int) -> None:
        """A bore with hole classes or deviations behind it is the housing's; with classes of shafts it is not read."""
        heading, behind = self.result[column], self._behind(column, "housing")
        limits = ("max", "min")  # that no heading tells to be the seat's may be the ring's
        behind = list(takewhile(lambda at: at[1] not in limits or self.result[at[0]] is not None, behind))
        if heading is None or not behind:
            return
        if any(map(SHAFT.fullmatch, self._classes(behind))):
            self.result[column] = None
            return
        self._seat_with(column, evolve(heading, parameter="housing_seat_diameter", own_unit=False), behind)

    def _bore_larger_than_the_shaft(self, column: int) -> None:
        """A bore that is larger in every row than the shaft seat beside it is the housing's."""
        heading = self.result[column]
        if heading is None or heading.own_unit or self.fixed[column] or heading.aspect != "value":
            return
        shaft = self._at("shaft_seat_diameter", heading.station)
        if shaft is None or not self._is(column, "bore_diameter"):
            return
        if self._at("housing_seat_diameter", heading.station) is not None:
            return
        bores, shafts = (numbers_of(self.cells(c)) for c in (column, shaft))
        if bores and len(bores) == len(shafts) and all(b > _LARGER * s for b, s in zip(bores, shafts, strict=True)):
            self.result[column] = evolve(heading, parameter="housing_seat_diameter", assumed=True)

    def _size_of_part(self, column: int) -> None:
        """A size below a part alone that is its bearing's, or that carries a class of its sort behind it."""
        seat = _of_part_alone(self.labels[column], self.words)
        numbers = numbers_of(self.cells(column)) if seat is not None else []
        if seat is None or not numbers or self._at(seat.parameter, seat.station) is not None:
            return
        part = seat.parameter.split("_")[0]
        behind = self._tolerance_behind(column, part)
        fits = self._fit_bearing(part, seat.station, numbers)
        tolerated = (
            any(aspect == "tolerance" for _, aspect in behind)
            or self._at(seat.parameter, seat.station, "tolerance") is not None
        )
        if fits or (fits is None and tolerated):
            self._seat_with(column, seat, behind)

    def _tolerance_behind(self, column: int, part: str) -> list[tuple[int, str]]:
        """What stands behind a size and nothing else has told; classes only where they are of the part's sort."""
        behind = [(k, aspect) for k, aspect in self._behind(column, part) if self.result[k] is None]
        classes = self._classes(behind)
        fits = bool(classes) and all(map(FITS[part].fullmatch, classes))
        return [at for at in behind if fits or at[1] != "tolerance"]

    def _fit_bearing(self, part: str, station: str, numbers: Sequence[float]) -> bool | None:
        """Whether sizes are those of the bearings in the same rows; None where no bearing is known."""
        stated = [c for c, h in enumerate(self.result) if h is not None and h.station == station]
        stated = [c for c in stated if self._is(c, "bearing_designation")]
        rings = [rings_of(cell, named=True) for cell in self.cells(stated[0])] if len(stated) == 1 else []
        if len(rings) != len(numbers) or not any(rings):
            return None
        pairs = [(number, ring[PARTS.index(part)]) for number, ring in zip(numbers, rings, strict=True) if ring]
        return same_sizes([number for number, _ in pairs], [ring for _, ring in pairs])

    def _parts_of_no_name(self) -> None:
        """Seats and shoulders whose heading says no part, told as that of a name is."""
        places: dict[str, tuple[int, str, str]] = {}
        unknown: list[Rest] = []
        for c, label in enumerate(self.labels):
            if label and self.result[c] is None and len(label) <= LONGEST_TEXT:
                core, station, unit = _placed(label, lambda rest: self._may_be_of_part(rest), self.words)
                if self._may_be_of_part(core):
                    unknown.append(Rest(str(c), station, (core,), tuple(self.cells(c)), column=True))
                    places[str(c)] = c, station, unit
        if not unknown:
            return
        known = [
            (Rest(self.labels[c], h.station, (self.labels[c],), tuple(self.cells(c)), column=True), h)
            for c, h in enumerate(self.result) if h is not None
        ]  # fmt: skip
        for name, text in of_parts(unknown, known, self.words).items():
            (c, station, unit), heading = places[name], self.words.heading(text)
            if heading is not None and self._at(heading.parameter, station, heading.aspect) is None:
                told = evolve(heading, station=station, unit=heading.unit or unit, assumed=True)
                sized = told.entry.kind == "toleranced" and told.aspect == "value"
                self._seat_with(c, told, self._tolerance_behind(c, told.parameter.split("_")[0]) if sized else ())

    def _may_be_of_part(self, name: str) -> bool:
        return may_be_of_part(Rest("", "", (name,)), self.words)


def limits_of_parts(labels: Sequence[str], headings: Sequence[Column], words: Words) -> list[Column]:
    """Headings with those of the two limits of a seat (``Shaft max``, ``Shaft min``; ``Bore max``, ``Bore min``).

    A bore that has two limits is that of the housing where the same table states limits of the shaft: those of a
    bearing are its class. Beside the size of a seat two deviations may say its part only (``shaft_up``, ``shaft_lo``).
    """
    result, said = list(headings), _ends_said(labels, headings, words)
    for station, found in said.items():
        stated = {h.parameter for h in headings if h is not None and h.aspect == "value" and h.station == station}
        of_shaft = ("shaft", "max") in found or any(
            h is not None and h.parameter == "shaft_seat_diameter" for h in headings
        )
        for part, name in (("shaft", "shaft"), ("housing", "housing"), ("bore", "housing" if of_shaft else "")):
            for ends in _ENDS:
                pair = [(end, found[part, end]) for end in ends if (part, end) in found]
                limits = ends == _ENDS[0] or (part != "bore" and f"{part}_seat_diameter" in stated)
                for end, c in pair if len(pair) == 2 and name and limits else ():
                    unit = words.unit_of(labels[c])
                    unit = "" if unit == "min" else unit
                    result[c] = Heading(f"{name}_seat_diameter", station, unit, end, assumed=part == "bore")
    return result


def _ends_said(
    labels: Sequence[str], headings: Sequence[Column], words: Words
) -> dict[str, dict[tuple[str, str], int]]:
    """Columns that no name explains by position and by the part and the limit or deviation that their headings say."""
    found: dict[str, dict[tuple[str, str], int]] = {}
    for c, label in enumerate(labels):
        if headings[c] is not None or len(label) > LONGEST_TEXT or _FIGURES.fullmatch(label):
            continue
        told = words.told_of(label)
        station = told.station if told is not None else ""
        core, unit = words.names.split_unit(told.rest if told is not None and station else label)
        core = f"{core} min" if unit == "min" else core  # no size is stated in minutes
        before, _, last = core.replace("_", " ").rpartition(" ")
        for rest, aspect in (*aspect_cuts(core), (before, side_behind(last))):
            part = part_alone(rest) or ("bore" if says_bore(rest, word_key(rest)) else "")
            if part and aspect in ("max", "min", "upper", "lower"):
                found.setdefault(station, {}).setdefault((part, aspect), c)
    return found
