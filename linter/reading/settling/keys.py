"""Machines and stations of a file: which row of the stations each row of its blocks is."""

import re
from collections import Counter
from itertools import chain, repeat
from pathlib import PurePath

import numpy as np
from attrs import define, field
from numpy.typing import NDArray

from linter.model.places import Place
from linter.model.stations import Problem, Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.signs import fold
from linter.reading.files.grids import cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found
from linter.reading.layouts.title import ABOVE_THE_TABLE
from linter.reading.words.parts import is_bearing
from linter.reading.words.place_stems import BEARING_BEFORE, stem_of
from linter.reading.words.places import uninflected
from linter.reading.words.titled_machines import is_matter, machine_in_title

Ints = NDArray[np.intp]

#: Troubles of one sort that are told one by one; the rest is only counted.
MOST_ALIKE = 50
#: Machine of a row that speaks for every machine, and of one that belongs to none.
EVERY, NONE = -1, -2
_ONLY_STATION = "1"
#: Names of stations among which two for one position are looked for.
_MOST_NAMES = 200
_LONGEST_NAME = 60
_LINE = re.compile(r"\d+$")
#: A word of Cyrillic letters some of which are Latin look-alikes, and the letters that they stand for.
_MIXED_WORD = re.compile(r"(?=[^\W\d_]*[\u0400-\u04ff])[^\W\d_]+")
_CYRILLIC = str.maketrans("aeopcxyABEKMHOPCTX", "аеорсхуАВЕКМНОРСТХ")
_BETWEEN_WORDS = re.compile(r"[\s_\-./:：]+")
#: A bearing behind a position in a script that does not part words.
_BEARING_AT_END = re.compile(r"(.*(?:[\u3040-\u30ff\u3400-\u9fff]|[A-Z0-9]))の?(?:軸受部?|轴承)$")


@define(eq=False)
class Keys:
    """Machines and stations of all blocks, in the order of the table, rows of one machine together."""

    machines: list[str] = field(factory=list)
    stations: list[str] = field(factory=list)
    machine_row: Ints = field(factory=lambda: np.zeros(0, np.intp))
    first: Ints = field(factory=lambda: np.zeros(0, np.intp))
    size: Ints = field(factory=lambda: np.zeros(0, np.intp))
    block_rows: list[Ints] = field(factory=list)
    block_machines: list[Ints] = field(factory=list)


def name_only_station(found: Found) -> None:
    """A file that names no station at all speaks of one station of each machine."""
    blocks = [block for block in found.blocks if block.machines]
    if any(station for block in blocks for station in block.stations):
        return
    if any(
        parameter(strip.parameter).level == "station" and strip.parameter != "station" and len(strip.rows)
        for block in blocks
        for strip in block.strips
    ):
        for block in blocks:
            block.stations = [_ONLY_STATION] * len(block.stations)
        found.say(
            f"no station is named; what is stated is taken for one station of each machine, named {_ONLY_STATION}"
        )


def _spell_alike(found: Found) -> None:
    """One spelling for stations that differ in look-alike signs alone: a name cut out of a heading has them folded."""
    names = set(chain.from_iterable(block.stations for block in found.blocks))
    if all(map(str.isascii, names)):
        return
    spelled: dict[str, str] = {}
    for name in sorted(names):
        key = fold(name)
        if name != key or key not in spelled:
            short = len(name) <= _LONGEST_NAME
            spelled[key] = _MIXED_WORD.sub(lambda word: word[0].translate(_CYRILLIC), name) if short else name
    if any(key != name for key, name in spelled.items()):
        for block in found.blocks:
            block.stations[:] = [spelled.get(fold(station), station) for station in block.stations]


def _one_name_for_one_position(found: Found) -> None:
    """One name for one position: *Front bearing*, *Front end* and *Front* of one file are the same, the first stands.

    Names that differ in more than the word for the bearing are two where both state the same of their machine.
    """
    names = dict.fromkeys(filter(None, chain.from_iterable(block.stations for block in found.blocks)))
    if not 2 <= len(names) <= _MOST_NAMES:
        return
    said: dict[str, list[str]] = {}
    for name in (name for name in names if len(name) <= _LONGEST_NAME):
        said.setdefault(stem_of(name), []).append(name)
    joined: dict[str, str] = {}
    stated = _stated(found) if any(len(several) > 1 for several in said.values()) else {}
    for several in (several for stem, several in said.items() if stem and len(several) > 1):
        kept, *others = several
        for name in others:
            if _without_bearing(name) == _without_bearing(kept) or not stated[name] & stated[kept]:
                joined[name] = kept
                stated[kept] |= stated[name]
    for block in found.blocks if joined else ():
        block.stations[:] = [joined.get(station, station) for station in block.stations]
    for name, kept in joined.items():
        found.say(f"{visible(name)} and {visible(kept)} are taken for one station, named {visible(kept)}")


def _stated(found: Found) -> dict[str, set[tuple[str, str, str]]]:
    """Machine, parameter and aspect of what is stated of each station."""
    stated: dict[str, set[tuple[str, str, str]]] = {}
    for block in found.blocks:
        for station in block.stations:
            stated.setdefault(station, set())
        for strip in block.strips:
            for row, cell in zip(strip.rows.tolist(), strip.cells.tolist(), strict=True):
                if strip.parameter != "station" and not is_blank(cell):
                    stated[block.stations[row]].add((block.machines[row], strip.parameter, strip.aspect))
    return stated


def _without_bearing(name: str) -> str:
    """What a station's name says beside the word for a bearing, as one spelling."""
    name = BEARING_BEFORE.sub("", fold(name))
    text = _BEARING_AT_END.sub(r"\1", " ".join(map(uninflected, name.casefold().split(" "))))
    return " ".join(word for word in _BETWEEN_WORDS.split(fold(text).casefold()) if word and not is_bearing(word))


def index_keys(file: str, found: Found) -> Keys:
    """Machines and stations of all blocks, in the order of the table."""
    _spell_alike(found)
    _one_name_for_one_position(found)
    fallback = _unnamed_machine(file, found)
    stations: dict[str, dict[str, int]] = {}
    within = [_within_machine(block.machines, block.stations, fallback, stations) for block in found.blocks]
    _drop_halves(file, found, stations)
    keys = Keys(list(stations))
    sizes = [len(names) for names in stations.values()]
    keys.size = np.array(sizes, dtype=np.intp)
    keys.first = np.cumsum([0, *sizes[:-1]]).astype(np.intp) if sizes else np.zeros(0, np.intp)
    keys.machine_row = np.repeat(np.arange(len(sizes)), sizes).astype(np.intp)
    keys.stations = [station for names in stations.values() for station in names]
    number = {machine: index for index, machine in enumerate(stations)}
    first = np.append(keys.first, [0, 0])  # the two last for rows of every machine and of none
    for block, inside in zip(found.blocks, within, strict=True):
        named = [machine or fallback for machine in block.machines]
        owner = np.fromiter(map(number.get, named, repeat(NONE)), np.intp, len(named))
        unnamed = [not machine and not station for machine, station in zip(named, block.stations, strict=True)]
        owner[unnamed] = EVERY
        keys.block_rows.append(np.where((inside >= 0) & (owner >= 0), first[owner] + inside, -1))
        keys.block_machines.append(owner)
    return keys


def _unnamed_machine(file: str, found: Found) -> str:
    """Machine of the rows that name none: the only one of the file, or the file itself; empty among several."""
    only = dict.fromkeys(filter(None, chain.from_iterable(block.machines for block in found.blocks)))
    if len(only) == 1:
        return next(iter(only))
    if only:
        return ""
    name = PurePath(file).stem or "machine"
    if any(station for block in found.blocks for station in block.stations):
        if titled := _titled_machine(found):
            return titled
        found.say(f"no machine is named; the file's name stands in: {visible(name)}")
    return name


def _titled_machine(found: Found) -> str:
    """The machine that the texts above the tables name without a label, where they name one alone."""
    rows: dict[tuple[str | None, str], list[Unused]] = {}
    for one in found.unused:
        if one.name == ABOVE_THE_TABLE and (line := _LINE.search(one.place.cell or "")):
            rows.setdefault((one.place.sheet, line[0]), []).append(one)
    named = [
        (one, name)
        for texts in rows.values()
        for one in texts
        if (name := machine_in_title(one.value)) and all(other is one or is_matter(other.value) for other in texts)
    ]
    if len({name for _, name in named}) != 1:
        return ""
    title, name = named[0]
    found.unused[:] = [one for one in found.unused if all(one is not used for used, _ in named)]
    found.say(f"no label names the machine; the title at {title.place.short()} does: {visible(name)}")
    return name


def _within_machine(
    machines: list[str], names: list[str], fallback: str, stations: dict[str, dict[str, int]]
) -> NDArray[np.intp]:
    """Place of each row among the stations of its machine, -1 for none; new ones are added to ``stations``."""
    places = []
    for machine, station in zip(machines, names, strict=True):
        machine, at = machine or fallback, -1
        if machine or station:
            of_machine = stations.setdefault(machine, {})
            if station:
                at = of_machine.setdefault(station, len(of_machine))
        places.append(at)
    return np.array(places, dtype=np.intp)


def _drop_halves(file: str, found: Found, stations: dict[str, dict[str, int]]) -> None:
    """Stations of no machine and machines without stations among others that have some are told and dropped."""
    told = _Told(file, found)
    for station in stations.pop("", {}):
        told.add(
            "no-machine", "machine", f"station {visible(station)}", "is of no machine, in a table of several",
            "a machine in every row", Place(file),
        )  # fmt: skip
    empty = [machine for machine, names in stations.items() if not names]
    if empty and len(empty) < len(stations):
        places = _places_of_machines(found, file)
        for machine in empty:
            told.add(
                "no-station", "station", f"machine {visible(machine)}", "has no station", "at least one station",
                places.get(machine, Place(file)),
            )  # fmt: skip
    for machine in empty:
        del stations[machine]
    told.close()


def more_alike(model: Problem, file: str, more: int) -> Problem:
    """How many cells beyond those that are told one by one have the trouble of ``model``."""
    message = f"{file}: {more} more cells of {model.parameter} have the same trouble ({model.code})."
    return Problem(model.kind, None, model.parameter, None, f"{more} more cells", model.expected, message, model.code)


class _Told:
    """Troubles of machines and stations; beyond many of one sort they are only counted."""

    def __init__(self, file: str, found: Found) -> None:
        self.file, self.found = file, found
        self.count: Counter[tuple[str, str, str, str]] = Counter()

    def add(self, code: str, name: str, what: str, trouble: str, expected: str, place: Place) -> None:
        sort = (code, name, trouble, expected)
        self.count[sort] += 1
        if self.count[sort] <= MOST_ALIKE:
            message = f"{place}: {what} {trouble}; it is not reviewed; expected {expected}."
            self.found.problems.append(Problem("unreadable", None, name, place, what, expected, message, code))

    def close(self) -> None:
        """Say how many were only counted."""
        for (code, name, trouble, expected), count in self.count.items():
            if (more := count - MOST_ALIKE) > 0:
                message = f"{self.file}: {more} more {trouble}; they are not reviewed; expected {expected}."
                self.found.problems.append(
                    Problem("unreadable", None, name, None, f"{more} more", expected, message, code)
                )


def _places_of_machines(found: Found, file: str) -> dict[str, Place]:
    """First cell that names each machine."""
    places: dict[str, Place] = {}
    for block in found.blocks:
        for strip in block.strips:
            if strip.parameter == "machine":
                for index, cell in enumerate(strip.cells.tolist()):
                    text = cell_text(cell)
                    if text not in places:
                        places[text] = strip.place(file, index)
    return places
