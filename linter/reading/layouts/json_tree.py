"""JSON documents: nested machines with stations, lists of parameter records, flat keys."""

from collections.abc import Callable
from typing import Any

import numpy as np
from attrs import define, evolve, field

from linter.model.places import Place
from linter.model.stations import Unused
from linter.model.vocabulary import parameter
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text, object_column
from linter.reading.files.intake import Source, visible
from linter.reading.files.json_text import pointer
from linter.reading.layouts import json_keys
from linter.reading.layouts.beside import bearing_of_station, feature_beside, is_bearing_number, of_named_station
from linter.reading.layouts.json_flat import unflattened
from linter.reading.layouts.json_keys import INNER, local
from linter.reading.layouts.json_lost import tell_again, tell_bare, tell_results
from linter.reading.layouts.json_records import (
    CALLED,
    CONTEXT,
    DIAMETERS,
    UNIT_KEYS,
    Here,
    Pile,
    Shape,
    all_shapes,
    aspect_of,
    file_unit,
    is_aspect,
    is_record,
    names_unit_of_lengths,
    opened,
    record_shape,
    unit_pairs,
    version_of,
    with_unit,
)
from linter.reading.layouts.sides import innermost, side_of, within
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.layouts.wide_heading import JOINABLE
from linter.reading.words.columns import heading_of
from linter.reading.words.headings import Heading, Words

Path = tuple[str | int, ...]

_WITH_STATIONS = "JSON, machines with stations"
_RESULTS = {"results", "result", "output", "outputs", "findings", "summary", "assessments"}
_MACHINES = {"machines", "machine_list", "arrangements", "assemblies", "rotors"}
_STATIONS = {"stations", "station_list", "positions", "bearings", "seats", "bearing_positions"}
_PARAMETERS = {"parameters", "values", "machine", "data", "dimensions", "variables", "properties"}


def lay_out_json(source: Source, document: Any, words: Words, found: Found) -> None:
    """Add the cells of a JSON document to what was found."""
    _Walk(source, words, found).run(document)


@define(eq=False)
class _Walk:
    source: Source
    words: Words
    found: Found
    piles: dict[tuple[Heading, str], Pile] = field(factory=dict)
    rows: dict[tuple[str, str], int] = field(factory=dict)
    length_unit: str = ""
    named: Here = field(factory=Here)
    stated: dict[tuple[Heading, int], tuple[Any, Path]] = field(factory=dict)
    again: dict[int, list[Path]] = field(factory=dict)
    results: list[tuple[Any, Path]] = field(factory=list)
    shapes: dict[frozenset[str], Shape] = field(factory=dict)
    pairs: dict[frozenset[str], Shape] = field(factory=dict)
    size: tuple[Path, Heading | None] = field(default=((), None))
    origin: Callable[[Path], Path] = field(default=lambda path: path)

    def run(self, document: Any) -> None:
        """Walk the whole document and close the block."""
        if isinstance(document, dict) and (unit := file_unit(document)):
            self.length_unit = unit
            self.found.say(f"lengths are stated in {unit}")
        if isinstance(document, (dict, list)):
            self.shapes, self.pairs = all_shapes(document, self.words), unit_pairs(document)
        flat = unflattened(document, self.words)
        self.origin = flat.path
        self._node(flat.document, (), Here())
        self._tell_lost()
        block = Block([m for m, _ in self.rows], [s for _, s in self.rows], [], self.length_unit)
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
        self.found.blocks.append(block)
        if _WITH_STATIONS in self.found.layouts:
            self.found.layouts[:] = [_WITH_STATIONS]

    def _tell_lost(self) -> None:
        """Stations stated twice, and stations that stand among results alone."""
        keys = list(self.rows)
        tell_again({keys[row]: paths for row, paths in self.again.items()}, self._place, self.found)
        tell_results(self.results, {station for _, station in keys}, self._place, self.words, self.found)

    def _place(self, path: Path) -> Place:
        """A place of the document."""
        return Place(self.source.file, pointer=self._pointer(path))

    def _pointer(self, path: Path) -> str:
        """JSON Pointer of a place in the file."""
        return pointer(self.origin(path))

    def _layout(self, text: str) -> None:
        if text not in self.found.layouts:
            self.found.layouts.append(text)

    def _cell(self, heading: Heading, label: str, value: Any, path: Path, here: Here) -> None:
        """Keep one scalar."""
        station = heading.station or here.station
        key = (here.machine, station)
        row = self.rows.setdefault(key, len(self.rows))
        pile = self.piles.setdefault((heading, label), Pile(heading, label))
        pile.cells.append(value)
        pile.rows.append(row)
        pile.pointers.append(self._pointer(path))
        if self.stated.setdefault((heading, row), (value, path)) == (value, path):
            return
        if self.stated[heading, row][0] == value and station and heading.parameter not in ("machine", "station"):
            self.again.setdefault(row, []).append(path)

    def _unused(self, name: str, value: Any, path: Path, reason: str) -> None:
        text = cell_text(value) if not isinstance(value, (dict, list)) else f"{len(value)} entries"
        if value is None or text == "":
            return
        if len(self.found.seen) < 100:
            self.found.seen.append(name)
        self.found.leave(Unused(name, visible(text, 120), self._place(path), reason))

    def _node(self, node: Any, path: Path, here: Here) -> None:
        if isinstance(node, dict):
            self._dict(node, path, here)
        elif isinstance(node, list):
            self._list(node, path, here)
        else:
            self._unused(str(path[-1]) if path else "", node, path, "a value without a name that is recognised")

    def _list(self, nodes: list[Any], path: Path, here: Here) -> None:
        if nodes and not any(isinstance(node, (dict, list)) for node in nodes):
            self._unused(str(path[-1]) if path else "", nodes, path, "a list of values without names")
            return
        shape = record_shape(nodes, self.words) or self._known_shape(nodes)
        if shape is None and (inside := opened(nodes)) != nodes:
            shape = record_shape(inside, self.words) or self._known_shape(inside)
            nodes = inside if shape else nodes
        key_of_station = "" if shape else json_keys.station_key(nodes, self.words)
        part = "" if shape else json_keys.part_key(nodes)
        name, stations = ("", ()) if shape else json_keys.values_by_station(nodes, self.words)
        for index, node in enumerate(nodes):
            at = (*path, index)
            if shape and is_record(node, shape):
                self._record(node, shape, at, here)
            elif stations:
                for key in stations:
                    record = {other: value for other, value in node.items() if other == key or other not in stations}
                    self._record(record, Shape(name, key), at, here.at(here.machine, self.words.station(key)))
            elif part:
                said = evolve(here, trail=(*here.trail, cell_text(node[part])))
                self._dict({key: value for key, value in node.items() if key != part}, at, said, key_of_station)
            elif key_of_station:
                self._dict(node, at, here, key_of_station)
            else:
                self._node(node, at, here)

    def _known_shape(self, nodes: list[Any]) -> Shape | None:
        """The shape of a list of one record, where the document has others like it."""
        return self.shapes.get(frozenset(nodes[0])) if len(nodes) == 1 and isinstance(nodes[0], dict) else None

    def _dict(self, node: dict[str, Any], path: Path, here: Here, station_key: str = "") -> None:
        """One object; ``station_key`` is the key of its station where its siblings tell that."""
        shape = record_shape([node], self.words)
        if shape:
            self._record(node, shape, path, here)
            return
        machine_key, machine = json_keys.key_text(node, "machine", self.words)
        if station_key:
            station = cell_text(node[station_key])
            place = self._place((*path, station_key))
            self.found.problems.append(json_keys.assumed_station(place, station_key, station))
        else:
            station_key, station = json_keys.key_text(node, "station", self.words)
            if here.station and is_bearing_number(self.words, station_key, station):
                station_key = station = ""
        unit = next((text for key in node if local(key) in UNIT_KEYS and known_unit(text := cell_text(node[key]))), "")
        here = evolve(here, machine=machine or here.machine, station=station or here.station, unit=unit or here.unit)
        members, level = self._keyed(node, path, here)
        letters = () if members else json_keys.letters_of_stations(node)
        for key, value in node.items():
            at = (*path, key)
            if key == machine_key:
                self._cell(Heading("machine"), key, value, at, here.at(here.machine, ""))
            elif key == station_key:
                self._cell(Heading("station"), key, value, at, here)
            elif key in members and level == "machine":
                self._dict(value, at, evolve(here, machine=key, station="", trail=()))
            elif key in members:
                trail = tuple(word for word in here.trail if side_of(word)) if level else here.trail
                self._dict(value, at, evolve(here, station=self.words.station(key), trail=trail))
            elif key in letters and not ((h := self._heading(key, here)) and h.station):
                self._unused(key, value, at, "a letter beside A may be a station or a symbol")
            else:
                self._entry(key, value, at, here, path)

    def _keyed(self, node: dict[str, Any], path: Path, here: Here) -> tuple[tuple[str, ...], str]:
        """Keys of an object that name stations, or machines, each with what is stated of it."""
        members = () if here.station else json_keys.stations_among(node, self.words, is_aspect)
        if members or here.station or not path:
            return members, ""
        members, level = json_keys.alike(node, self.words, is_aspect)
        self.found.problems += [json_keys.assumed_level(self._place((*path, key)), key, level) for key in members]
        return members, level

    def _heading(self, key: str, here: Here) -> Heading | None:
        """What a key names, with the keys of the objects around it before it, or by itself."""
        if self.words.groups(key) and self.words.heading(key) is None:
            return None
        trail = innermost(here.trail)
        at, side = next(((i, s) for i, word in enumerate(trail) if (s := side_of(word))), (-1, None))
        for first in range(len(trail)):
            joined = " ".join((*trail[first:], key))
            heading = self.words.heading(joined) if first <= at else within(self.words, side, joined)
            if heading is not None and not heading.station:
                path = self.words.heading("/".join((*trail[first:], key)))
                heading = path if path is not None and path.parameter == heading.parameter else heading
            match = self.words.names.find(joined)
            whole = match is None or not match.feature  # the keys around it say of what it is, in full
            if heading is not None and whole and heading.parameter not in ("machine", "station"):
                return heading
        return within(self.words, side, key)

    def _meaning(self, key: str, value: Any, here: Here, at: Path) -> Heading | None:
        """What a key names, where it holds a scalar also by that."""
        heading = self._heading(key, here)
        heading = of_named_station(self.words, key, heading) if here.station else heading
        if isinstance(value, (dict, list)):
            return heading
        heading = self._of_size_before(key, heading, at[:-1])
        heading = heading_of(key, heading, (cell_text(value),), self.words)
        return bearing_of_station(self.words, key, heading, cell_text(value)) if here.station else heading

    def _of_size_before(self, label: str, heading: Heading | None, where: Path) -> Heading | None:
        """A key or record that says a part of a size only (``es``, ``Fit``) is of the size right before it."""
        before, size = self.size
        aspect = JOINABLE.get(self.words.group(label), "")
        if heading is None and size is not None and before == where and aspect not in ("", "unit"):
            return evolve(size, aspect=aspect, unit=self.words.unit_of(label) or size.unit, own_unit=False)
        toleranced = heading is not None and heading.entry.kind == "toleranced" and heading.aspect == "value"
        self.size = (where, heading if toleranced else None)
        return heading

    def _entry(self, key: str, value: Any, at: Path, here: Here, path: Path) -> None:
        """One key of an object that is no record."""
        word = local(key)
        if word in UNIT_KEYS and (path == () or known_unit(cell_text(value))):
            return
        if path == () and self.length_unit and names_unit_of_lengths(key):
            return
        if word in _RESULTS:
            self._unused(key, value, at, "results of a calculation are no input")
            self.results.append((value, at))
        elif word in _MACHINES or (word in _STATIONS and not here.station):
            self._members(value, at, here, "machine" if word in _MACHINES else "station")
        elif (heading := self._meaning(key, value, here, at)) is not None and not isinstance(value, list):
            if isinstance(value, dict):
                pair = self.pairs.get(frozenset(value))
                stated = pair is not None or any(aspect_of(part)[0] for part in value)
                if heading.parameter in ("machine", "station") or not stated:
                    self._node(value, at, evolve(here, trail=(*here.trail, key)))  # a group, such as of the bearing
                    return
                self._layout("JSON, value and unit")
                self._parts(heading, key, value, at, here, pair)
            else:
                self._layout("JSON, nested" if len(at) > 1 else "JSON, one object")
                self._cell(with_unit(heading, here.unit), key, value, at, here)
        elif isinstance(value, (dict, list)):
            trail = here.trail if word in _PARAMETERS else (*here.trail, key)
            self._node(value, at, evolve(here, trail=trail))
        else:
            self._unused(key, value, at, self.words.why(key) or "the name is not recognised")

    def _members(self, value: Any, at: Path, here: Here, level: str) -> None:
        """The machines of a document or the stations of a machine, as a list or by name."""
        self._layout(_WITH_STATIONS)
        if isinstance(value, dict):
            items: list[tuple[str | int, Any, str]] = [(key, child, key) for key, child in value.items()]
        elif isinstance(value, list):
            items = [(index, child, str(index + 1)) for index, child in enumerate(value)]
        else:
            self._unused(str(at[-1]), value, at, f"not a list of {level}s")
            return
        for step, child, name in items:
            if not isinstance(child, dict):
                self._unused(str(step), child, (*at, step), f"not an object that describes a {level}")
                tell_bare(child, self._place((*at, step)), level, self.found)
                continue
            own = json_keys.key_text(child, level, self.words)[1]
            called = next((key for word in CALLED for key in child if local(key) == word), "")
            if not own and isinstance(child.get(called), str):
                own = child[called].strip()
                self._cell(
                    Heading(level),
                    called,
                    child[called],
                    (*at, step, called),
                    here.at(own, "") if level == "machine" else here.at(here.machine, own),
                )
                child = {key: value for key, value in child.items() if key != called}
            if not own and isinstance(value, list):
                self.found.say(f"{self._pointer((*at, step))} names no {level}; its position {name} stands in")
            if level == "machine":
                self._dict(child, (*at, step), evolve(here, machine=own or name, station="", trail=()))
            else:
                self._dict(child, (*at, step), evolve(here, station=own or name, trail=()))
                self.rows.setdefault(
                    (json_keys.key_text(child, "machine", self.words)[1] or here.machine, own or name), len(self.rows)
                )

    def _record(self, node: dict[str, Any], shape: Shape, path: Path, here: Here) -> None:
        """One record: name, value, unit, perhaps machine, station and deviations."""
        self._layout("JSON, one record per parameter")
        label = cell_text(node.get(shape.name))
        machine, station = (
            json_keys.key_text(node, "machine", self.words)[1],
            json_keys.key_text(node, "station", self.words)[1],
        )
        station = station or self.words.station(cell_text(node.get(shape.station)))
        here = here.at(machine or here.machine or self.named.machine, station or here.station)
        stated = [key for key in node if shape.aspect_of(key)[0]]
        said = evolve(here, trail=(*here.trail, cell_text(node[shape.part]))) if shape.part else here
        heading = self._of_size_before(label, self._heading(label, said), (*path[:-1], station))
        if len(stated) == 1:
            heading = heading_of(label, heading, (cell_text(node[stated[0]]),), self.words)
        if heading is None:
            self._unused(label, node[stated[0]] if stated else None, path, self.words.why(label))
            return
        if heading.parameter in ("machine", "station"):
            # a record that names the machine or station holds for the records behind it
            text = cell_text(node[stated[0]]) if stated else ""
            if heading.parameter == "machine":
                self.named = here = here.at(text, "")
            else:
                self.named = here = here.at(here.machine, self.words.station(text))
        elif not here.station and heading.entry.level == "station":
            here = here.at(here.machine, self.named.station)
        self._parts(heading, label, node, path, here, shape)

    def _parts(
        self, heading: Heading, label: str, node: dict[str, Any], path: Path, here: Here, shape: Shape | None = None
    ) -> None:
        """A value with its unit and deviations, as an object."""
        shape = shape or Shape()
        unit = heading.unit
        for key in node:
            if shape.is_unit(key) and isinstance(node[key], str):
                unit = node[key].strip() or unit
        for key, value in node.items():
            word = local(key)
            if key in (shape.name, shape.station, shape.part) or shape.is_unit(key) or word in CONTEXT:
                continue
            aspect, own = shape.aspect_of(key)
            if not aspect and word in DIAMETERS and heading.parameter.endswith("_diameter"):
                aspect = "value"
            if aspect and not isinstance(value, (dict, list)):
                if aspect == "tolerance" and parameter(heading.parameter).kind != "toleranced":
                    aspect = "value"
                aspect = heading.aspect if aspect == "value" else aspect
                version = version_of(key) or heading.version
                traits = Heading(heading.parameter, heading.station, own or unit, aspect, heading.own_unit, version)
                at = (*path, *key.split(INNER))
                self._cell(traits, f"{label} {at[-1]}" if "minus" in word else label, value, at, here)
                continue
            at = (*path, *key.split(INNER))
            beside = None if isinstance(value, (dict, list)) else self._beside(label, key, heading, here)
            if beside is not None:
                self._cell(evolve(beside, station=heading.station), f"{label} {at[-1]}", value, at, here)
            else:
                self._unused(f"{label} {at[-1]}", value, at, "not a part of a value that is recognised")

    def _beside(self, label: str, key: str, heading: Heading, here: Here) -> Heading | None:
        """Another feature of what an object names, that one of its keys states."""
        if (beside := feature_beside(self.words, label, local(key))) is not None:
            return beside
        inner = self._heading(local(key), evolve(here, trail=(*here.trail, label)))
        other = inner is not None and inner.entry.level == "station" and inner.parameter != heading.parameter
        return inner if other else None
