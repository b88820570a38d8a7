"""JSON documents: nested machines with stations, lists of parameter records, flat keys."""

from typing import Any

from attrs import define, evolve, field

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text
from linter.reading.layouts import json_keys
from linter.reading.layouts.beside import is_bearing_number
from linter.reading.layouts.json_columns import assumed_machine, judged_by_items, machine_key, parts_assumed
from linter.reading.layouts.json_flat import crossed, unflattened
from linter.reading.layouts.json_groups import Group, Groups
from linter.reading.layouts.json_head import Header, header_of
from linter.reading.layouts.json_items import members, why_left
from linter.reading.layouts.json_keys import CALLED, INNER, Path, bare, local
from linter.reading.layouts.json_linked import linked
from linter.reading.layouts.json_lost import tell_again, tell_bare, tell_results
from linter.reading.layouts.json_meaning import says_more
from linter.reading.layouts.json_parts import assumed_part, bores_of_housing, parts_by_size, rings_in
from linter.reading.layouts.json_record_cells import RecordCells
from linter.reading.layouts.json_records import Here, aspect_of, is_quantity, limits_of
from linter.reading.layouts.json_shapes import (
    Shape,
    all_shapes,
    is_record,
    names_in,
    pair_of,
    record_shape,
    states_parts,
    unit_pairs,
    value_key,
)
from linter.reading.layouts.json_things import SHAFTS, as_told, is_other_thing, marks_of, states_both, thing_key
from linter.reading.layouts.json_units import UNIT_KEYS, says_unit, stated_units, with_unit
from linter.reading.layouts.sides import side_of
from linter.reading.layouts.strips import Found, part_taken
from linter.reading.words.headings import Heading, Words
from linter.reading.words.inside import positions_inside
from linter.reading.words.own_stations import with_stations

_WITH_STATIONS = "JSON, machines with stations"
_RESULTS = {"results", "result", "output", "outputs", "findings", "summary", "assessments"}
_MACHINES = {"machines", "machine_list", "arrangements", "assemblies", "rotors"}
_STATIONS = {"stations", "station_list", "positions", "bearings", "seats", "bearing_positions"}
#: Keys of an object that says which thing the others beside it are of (common practice).
_ITEMS = {"item", "object", "part", "product", "component", "article", "artikel", "teil", "objekt", "articolo", "pieza"}


def lay_out_json(file: str, document: Any, words: Words, found: Found) -> None:
    """Add the cells of a JSON document to what was found."""
    words = with_stations(names_in(document), words)
    walk = _Walk(words, file=file, found=Found())
    walk.run(document)
    told = positions_inside(walk.names, words, walk.names)
    if any(says_more(name, words) for name in told):
        walk = _Walk(Words(words.names, told), file=file, found=Found())
        walk.run(document)
    found.take(walk.found)


@define(eq=False)
class _Walk(RecordCells):
    """Walks down a document and keeps what each place of it states."""

    of_units: frozenset[Path] = frozenset()
    results: list[tuple[Any, Path]] = field(factory=list)
    inputs: frozenset[str] = frozenset()
    pairs: dict[frozenset[str], Shape] = field(factory=dict)
    groups: Groups = field(init=False)
    head: Header = field(factory=Header)
    taken: set[Path] = field(factory=set)
    machines: dict[Path, str] = field(factory=dict)

    def __attrs_post_init__(self) -> None:
        self.groups = Groups(self.words)

    def run(self, document: Any) -> None:
        """Walk the whole document and close the block."""
        self.units, self.of_units = stated_units(document, self.words)
        if self.units.length:
            self.found.say(f"lengths are stated in {self.units.length}")
        if isinstance(document, (dict, list)):
            self.shapes, self.pairs = all_shapes(document, self.words), unit_pairs(document)
        self.flat = linked(unflattened(document, self.words), self.words)
        self.groups.find_places(self.flat.document)
        self.inputs = self._inputs(self.flat.document)
        self.head = header_of(self.flat.document, self.words)
        self._node(self.flat.document, (), Here().at(self.head.machines.get((), ""), ""))
        self._tell_lost()
        self.found.blocks.append(self.block())
        if _WITH_STATIONS in self.found.layouts:
            self.found.layouts[:] = [_WITH_STATIONS]

    def _inputs(self, document: Any) -> frozenset[str]:
        """Keys that say results over all that a document states: what stands there is its input all the same."""
        if not isinstance(document, dict):
            return frozenset()
        rest = {key: value for key, value in document.items() if local(key) not in _RESULTS}
        return frozenset() if self.groups.stated(rest) else frozenset(document) - frozenset(rest)

    def _tell_lost(self) -> None:
        """Stations stated twice, and stations that stand among results alone."""
        keys = list(self.rows)
        tell_again({keys[row]: paths for row, paths in self.again.items()}, self.place, self.found)
        tell_results(self.results, {station for _, station in keys}, self.place, self.words, self.found)

    def _node(self, node: Any, path: Path, here: Here) -> None:
        if isinstance(node, dict):
            self._dict(node, path, here)
        elif isinstance(node, list):
            self._list(node, path, here)
        else:
            self.unused(str(path[-1]) if path else "", node, path, "a value without a name that is recognised")

    def _list(self, nodes: list[Any], path: Path, here: Here) -> None:
        if left := why_left(nodes):
            self.unused(str(path[-1]) if path else "", nodes, path, left)
            return
        outer = nodes
        shape, nodes, inside = self.shape_of(nodes)
        self.leave_marks(outer if inside else [], inside, path)
        thing = shape.name if shape else json_keys.part_key(nodes) or self._thing_key(nodes, here)
        group = Group() if thing else self.groups.of_machines(nodes) or self.groups.of_items(nodes)
        if not shape and self.by_stations(nodes, path, inside, here):
            return
        if not thing:
            self._as_rows(nodes, path, inside, here)
        if group.unnamed and not here.station:
            self.found.problems.append(json_keys.assumed_numbers(self.place(path), group.level, len(nodes)))
            self._members(nodes, path, here, group.level)
            return
        for index, node in enumerate(nodes):
            at = (*path, index, *inside)
            if shape and is_record(node, shape):
                self.record(node, shape, at, here)
            elif thing and isinstance(node, dict) and isinstance(node.get(thing), str):
                self._thing(node, thing, at, here)
            elif group.name and isinstance(node, dict):
                self._named(node, at, here, group)
            else:
                self._node(node, at, here)

    def _thing_key(self, nodes: list[Any], here: Here) -> str:
        """The key of the part or feature of each item of a list, as it or the records of the document show."""
        objects = [node for node in nodes if isinstance(node, dict)]
        if any(states_both(node, self.words) for node in objects) or all(map(self.groups.states_seats, objects)):
            return ""  # positions, or machines, which are called after a part
        named = {shape.name for shape in self.shapes.values()}
        return thing_key(nodes, here.trail, self.words, named)

    def _thing(self, node: dict[str, Any], named: str, at: Path, here: Here) -> None:
        """An item of a list of parts or features: what it states is of what it names."""
        said, rest = cell_text(node[named]), {key: value for key, value in node.items() if key != named}
        if is_other_thing(said, self.words):
            self.unused(said, rest, at, "it is of another part")
        else:
            self._dict(rest, at, self.inside(said, here))

    def _as_rows(self, nodes: list[Any], path: Path, inside: tuple[str, ...], here: Here) -> None:
        """Note what the keys of the items of a list mean together, and the machine of each where a key tells it."""
        items = [((*path, k, *inside), node) for k, node in enumerate(nodes) if isinstance(node, dict)]
        if len(items) < 2:
            return
        rings = frozenset().union(*(rings_in(node, self.words, here.trail) for _, node in items))
        judged = judged_by_items(
            items, lambda key, trail: self.plain(key, here if trail or key not in rings else Here(), trail), self.words
        )
        self.judged |= judged
        self.found.problems.extend(part_taken(self.place(at), *said) for at, *said in parts_assumed(judged))
        machine = "" if here.machine else machine_key([node for _, node in items], self.words)
        for at, node in items if machine else ():
            text, where = cell_text(node[machine]).strip(), (*at, machine)
            self.found.problems.append(assumed_machine(self.place(where), machine, text))
            self.cell(Heading("machine"), machine, text, where, here.at(text, ""))
            self.taken.add(where)
            self.machines[at] = text

    def _named(self, node: dict[str, Any], at: Path, here: Here, group: Group) -> None:
        """An item of a list that one of its keys names, as its siblings show."""
        text, where = cell_text(node.get(group.name)), (*at, group.name)
        station = self.words.station(text) if group.level == "station" else here.station
        if group.level == "station":
            self.found.problems.append(json_keys.assumed_station(self.place(where), group.name, text))
        here = here.at(here.machine if group.level == "station" else text, station)
        self.cell(Heading(group.level), group.name, text, where, here)
        self.taken.add(where)
        self._dict(node, at, here)

    def _dict(self, node: dict[str, Any], path: Path, here: Here) -> None:
        """One object."""
        shape = record_shape(self.head.records(node, path), self.words)
        if shape:
            self.record(node, shape, path, here)
            return
        node = crossed(node, path, self.words, self.flat.origin)
        here = self._machine_of(node, path, here.at(self.machines.get(path, here.machine), here.station))
        machine_key, machine = json_keys.key_text(node, "machine", self.words)
        station_key, station = json_keys.key_text(node, "station", self.words)
        if (here.station and is_bearing_number(self.words, station_key, station)) or (*path, station_key) in self.taken:
            station_key = station = ""
        unit = next((text for key in node if local(key) in UNIT_KEYS and known_unit(text := cell_text(node[key]))), "")
        here = evolve(here, machine=machine or here.machine, station=station or here.station, unit=unit or here.unit)
        group = self._keyed(node, path, here)
        letters = () if group.members else json_keys.letters_of_stations(node)
        parts = {} if group.members else parts_by_size(node, self.words)
        bores = bores_of_housing(node, self.words, here.trail)
        marks = marks_of(node, here.trail) | self._numbers(node, here)
        rings, outer = rings_in(node, self.words, here.trail), here
        for key, value in node.items():
            at, here = (*path, key), self.groups.freed(outer, value, of_ring=key in rings)
            if self._is_done(key, value, at):
                continue
            if at in self.head.fields or key == machine_key:
                self.cell(self.head.fields.get(at, Heading("machine")), key, value, at, here.at(here.machine, ""))
            elif key == station_key:
                self.cell(Heading("station"), key, value, at, here)
            elif key in group.members:
                self._node(value, at, self._inside(key, group, here))
            elif key in parts:
                self.found.problems.append(assumed_part(self.place(at), key, parts[key]))
                self._node(value, at, evolve(here, trail=(*here.trail, parts[key])))
            elif key in bores:
                self._housing_bore(key, value, at, here)
            elif key in marks:
                self.unused(key, value, at, "a number or mark of the item")
            elif key in letters and not ((h := self.heading(key, here)) and h.station):
                self.unused(key, value, at, "a letter beside A may be a station or a symbol")
            else:
                self._entry(key, value, at, here, path)

    def _numbers(self, node: dict[str, Any], here: Here) -> frozenset[str]:
        """Keys of the number of an entry that would be a designation of the bearing, which states its own elsewhere."""
        numbers = self.groups.numbers_of(node, here.trail)
        return frozenset(k for k in numbers if (h := self.heading(k, here)) and h.parameter == "bearing_designation")

    def _is_done(self, key: str, value: Any, at: Path) -> bool:
        """Whether a value is read already, or told not to be read."""
        if at in self.flat.left:
            self.unused(bare(key), value, at, self.flat.left[at])
        return at in self.taken or at in self.flat.left

    def _housing_bore(self, key: str, value: Any, at: Path, here: Here) -> None:
        bore = self._meant(key, value, here, at) or Heading("bore_diameter")
        seat = evolve(bore, parameter="housing_seat_diameter", own_unit=False)
        self._known(seat, key, value, at, evolve(here, trail=(*here.trail, "housing")))

    def _inside(self, key: str, group: Group, here: Here) -> Here:
        """The place inside a member of a group; the part around positions stays known."""
        if group.level == "machine":
            return evolve(here, machine=key, station="", trail=())
        station = as_told(self.words.station(key), self.words)
        return evolve(here, station=station, trail=tuple(filter(side_of, here.trail)))

    def _machine_of(self, node: dict[str, Any], path: Path, here: Here) -> Here:
        """The place with the machine that an object over positions names: by its own name, or in an object for it."""
        if here.station or here.machine:
            return here
        called = self.groups.own_name(node, inner=path != ())
        named = [(called, node[called])] if called else []
        for key, value in node.items() if not called else ():
            heading = self.words.heading(key) if isinstance(value, dict) else None
            of_item = (heading is not None and heading.parameter == "machine") or local(key) in _ITEMS
            if isinstance(value, dict) and of_item and not self.groups.stated(value):
                named += [(f"{key}{INNER}{k}", value[k]) for k in value if local(k) in (*CALLED, "id")][:1]
        if len(named) != 1 or not isinstance(named[0][1], str):
            return here
        text, where = named[0][1], (*path, *named[0][0].split(INNER))
        self.taken.add(where)
        self.cell(Heading("machine"), str(where[-1]), text, where, here.at(text, ""))
        return here.at(text, "")

    def _keyed(self, node: dict[str, Any], path: Path, here: Here) -> Group:
        """Keys of an object that name stations, or machines, each with what is stated of it."""
        if here.station:
            return Group()
        if not here.machine and (lone := self.groups.lone_machine(node)):
            group = Group("machine", (lone,), assumed=frozenset((lone,)))
        else:
            group = self.groups.below(node, here.trail)
        if not group.members and (members := json_keys.stations_among(node, self.words, is_quantity)):
            return Group("station", members)
        for key in group.members:
            if key in group.assumed:
                self.found.problems.append(json_keys.assumed_level(self.place((*path, key)), key, group.level))
        return group

    def _entry(self, key: str, value: Any, at: Path, here: Here, path: Path) -> None:
        """One key of an object that is no record."""
        word = local(key)
        if self.flat.path(at) in self.of_units or (word in UNIT_KEYS and (path == () or known_unit(cell_text(value)))):
            return
        if word in _RESULTS and (path or key not in self.inputs):
            self.unused(key, value, at, "results of a calculation are no input")
            self.results.append((value, at))
        elif word in _MACHINES or (self.groups.over_stations(value, word in _STATIONS) and not here.station):
            self._members(value, at, here, "machine" if word in _MACHINES else "station")
        elif (heading := self._meant(key, value, here, at)) is not None and self._known(heading, key, value, at, here):
            return
        elif isinstance(value, (dict, list)) and self.tolerance_of_size(key, value, at, here):
            self.layout("JSON, nested")
        elif isinstance(value, dict) and self._is_quantity(value, key, here):
            self.without_name(key, value, value_key(value, self.pairs), at, here)
        elif isinstance(value, (dict, list)):
            self._node(value, at, here if word in SHAFTS and isinstance(value, list) else self.inside(key, here))
        elif here.trail and (limit := self.limit_of(here.trail[-1], key)) is not None:
            self.cell(with_unit(limit, here.unit), f"{here.trail[-1]} {key}", value, at, here)
        else:
            self.unused(key, value, at, self.words.why(key))

    def _known(self, heading: Heading, key: str, value: Any, at: Path, here: Here) -> bool:
        """Read what stands under a key that is known; false for a list that is none of one value."""
        if not isinstance(value, list):
            self._value(heading, key, value, at, here)
        elif self.listed(heading, key, value, at, here):
            self.layout("JSON, nested")
        else:
            return False
        return True

    def _meant(self, key: str, value: Any, here: Here, at: Path) -> Heading | None:
        """What a key names, by its scalar or by that inside its object of value and unit too."""
        inner = value_key(value, self.pairs) if isinstance(value, dict) else ""
        if inner and not isinstance(value[inner], (dict, list)):
            heading = self.meaning(key, value[inner], here, at)
            said = {aspect_of(k)[0] for k in value if k != inner}
            side = side_of(key) if heading is None and said & {"upper", "lower", "max", "min", "tolerance"} else None
            if side is not None and side.side in ("shaft", "housing"):
                return Heading(f"{side.side}_seat_diameter")  # shaft: {nominal, upper, lower}
            return heading
        meant = self.meaning(key, value, here, at)
        limits = limits_of(value) if meant is None else ()
        side = side_of(key) if limits else None
        if side is not None and side.side in ("shaft", "housing"):
            return Heading(f"{side.side}_seat_diameter")  # вал: {мин, макс}
        return meant

    def _is_quantity(self, value: dict[str, Any], key: str, here: Here) -> bool:
        """Whether an object holds a value, its unit and its tolerance and nothing else, none named with its key."""
        inside = evolve(here, trail=(*here.trail, key))
        plain = not any(isinstance(part, (dict, list)) or self.heading(k, inside) for k, part in value.items())
        pair = pair_of(value, self.pairs) is not None
        return plain and bool(value) and (pair or all(aspect_of(key)[0] or says_unit(key) for key in value))

    def _value(self, heading: Heading, key: str, value: Any, at: Path, here: Here) -> None:
        """What stands under a key that is known: a scalar, the parts of a value, or a group such as of the bearing."""
        if not isinstance(value, dict):
            self.layout("JSON, nested" if len(at) > 1 else "JSON, one object")
            self.cell(with_unit(heading, here.unit), key, value, at, here)
            return
        pair = pair_of(value, self.pairs)
        stated = pair is not None or (states_parts(value) and not self.groups.of_object(value).level)
        if heading.parameter in ("machine", "station") or not stated:
            self._node(value, at, self.inside(key, here))
            return
        self.layout("JSON, value and unit")
        self.parts(heading, key, value, at, here, pair)

    def _members(self, value: Any, at: Path, here: Here, level: str) -> None:
        """The machines of a document or the stations of a machine, as a list or by name."""
        self.layout(_WITH_STATIONS)
        value, at, items, inside = members(value, at)
        if items is None:
            self.unused(str(at[-1]), value, at, f"not a list of {level}s")
            return
        telling = ""
        if isinstance(value, list):
            self.leave_marks(value if inside else [], inside, at)
            self._as_rows([child for _, child, _ in items], at, inside, here)
            telling = self.groups.of_items(value).name
        for step, child, name in items:
            if isinstance(value, dict) and level == "station" and self.designated(name, child, step, here):
                continue
            if isinstance(child, dict):
                self._member(child, step, here, level, telling, name, isinstance(value, list))
            else:
                self.unused(name, child, step, f"not an object that describes a {level}")
                tell_bare(child, self.place(step), level, self.found)

    def _member(
        self, child: dict[str, Any], at: Path, here: Here, level: str, telling: str, name: str, listed: bool
    ) -> None:
        """One machine or station; ``name`` is its key or number, ``telling`` the key that holds the names in a list."""
        own = json_keys.key_text(child, level, self.words)[1]
        called = telling or next((key for word in (*CALLED, "id") for key in child if local(key) == word), "")
        if not own and isinstance(child.get(called), str):
            own = child[called].strip()
            there = here.at(own, "") if level == "machine" else here.at(here.machine, own)
            self.cell(Heading(level), called, child[called], (*at, called), there)
            child = {key: value for key, value in child.items() if key != called}
        if not own and listed:
            self.found.say(f"{self.pointer(at)} names no {level}; its position {name} stands in")
        if level == "machine":
            self._dict(child, at, evolve(here, machine=own or name, station="", trail=()))
        else:
            self._dict(child, at, evolve(here, station=own or name, trail=tuple(filter(side_of, here.trail))))
            machine = json_keys.key_text(child, "machine", self.words)[1] or here.machine
            self.rows.setdefault((machine, own or name), len(self.rows))
