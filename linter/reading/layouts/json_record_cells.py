"""Records of a JSON document, one a parameter: name, value, unit, perhaps machine, station, part and deviations."""

from typing import Any

from attrs import define, field

from linter.reading.cells.fit_classes import HOLE
from linter.reading.files.grids import cell_text
from linter.reading.layouts import json_keys
from linter.reading.layouts.json_cells import Cells
from linter.reading.layouts.json_items import unwrapped
from linter.reading.layouts.json_keys import Path
from linter.reading.layouts.json_records import Here
from linter.reading.layouts.json_shapes import Shape, is_record, opened, record_shape
from linter.reading.layouts.json_things import is_other_thing, part_said
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import heading_of
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading
from linter.reading.words.machine_words import names_machine


def of_hole(heading: Heading | None, label: str) -> bool:
    """Whether a name says a hole and not of which part it is: with the class of a hole it is the housing's."""
    if heading is not None:
        return heading.parameter == "bore_diameter" and heading.aspect == "value" and not heading.own_unit
    return word_key(label) in KEYS["bore"] | KEYS["hole"]


@define(eq=False)
class RecordCells(Cells):
    """Cells of a document and those of its records.

    Attributes
    ----------
    shapes : dict of keys to Shape
        The shapes of the lists of records of the document.
    named : Here
        The machine and station that a record named for those behind it.
    """

    shapes: dict[frozenset[str], Shape] = field(factory=dict)
    named: Here = field(factory=Here)

    def by_stations(self, nodes: list[Any], path: Path, inside: tuple[str, ...], here: Here) -> bool:
        """Read a list of records that have a key for each station; false for another."""
        for records in (nodes, opened(nodes)):
            name, part, stations = json_keys.values_by_station(records, here.trail, self.words)
            for index, node in enumerate(records if stations else ()):
                for key in stations:
                    record = {other: value for other, value in node.items() if other == key or other not in stations}
                    station = self.words.station(json_keys.bare(key))
                    at = (*path, index, *inside)
                    self.record(record, Shape(name, key, part=part), at, here.at(here.machine, station))
            if stations:
                return True
        return False

    def leave_marks(self, nodes: list[Any], inside: tuple[str, ...], path: Path) -> None:
        """Tell what stands beside the object that each item of a list holds."""
        for index, node in enumerate(nodes):
            for key in [key for key in node if key not in inside]:
                self.unused(key, node[key], (*path, index, key), "a number or mark of the item")

    def shape_of(self, nodes: list[Any]) -> tuple[Shape | None, list[Any], tuple[str, ...]]:
        """The shape of records; the items, with what stands in an object of each made part of it; its key, if alone."""
        if all(isinstance(node, list) for node in nodes):
            nodes = [{str(k): value for k, value in enumerate(node)} for node in nodes]  # name, value, unit
        shape = record_shape(nodes, self.words) or self._known_shape(nodes)
        if shape is None and (inside := opened(nodes)) != nodes:
            shape = record_shape(inside, self.words) or self._known_shape(inside)
            nodes = inside if shape else nodes
        elif shape is not None and not all(is_record(node, shape) for node in nodes):
            inside = opened(nodes)  # a tolerance as an object, where there is one
            if (whole := record_shape(inside, self.words)) and all(is_record(node, whole) for node in inside):
                shape, nodes = whole, inside
        return (shape, nodes, ()) if shape else (None, *unwrapped(nodes))

    def _known_shape(self, nodes: list[Any]) -> Shape | None:
        """The shape of a list whose records have the same keys, where the document has others like it."""
        keys = frozenset(nodes[0]) if nodes and isinstance(nodes[0], dict) else frozenset()
        alike = keys and all(isinstance(node, dict) and node.keys() == keys for node in nodes)
        return self.shapes.get(keys) if alike else None

    def _machine_named(self, label: str, placed: str, node: dict[str, Any], stated: list[str]) -> Heading | None:
        """The machine, where a record states the name of what it is of (``Machine | Name | Winder W-2``)."""
        of_machine = self.words.says_machine(placed) or names_machine(placed) == "machine"
        value = node[stated[0]] if len(stated) == 1 else None
        named = isinstance(value, str) and any(map(str.isalpha, value))
        return Heading("machine") if named and of_machine and json_keys.local(label) in json_keys.CALLED else None

    def _is_of_other(self, heading: Heading, node: dict[str, Any], shape: Shape, placed: str) -> bool:
        """Whether a record is of a thing beside the positions, under a key that says no position by its word."""
        if heading.entry.level != "station":
            return False
        of_places = word_key(shape.station) in KEYS["place"] or json_keys.key_text(node, "station", self.words)[0]
        return bool(placed and not of_places and not self.words.station_said(placed)) and is_other_thing(
            placed, self.words
        )

    def record(self, node: dict[str, Any], shape: Shape, path: Path, here: Here) -> None:
        """One record: name, value, unit, perhaps machine, station and deviations."""
        self.layout("JSON, one record per parameter")
        label = cell_text(node.get(shape.name))
        machine = json_keys.key_text(node, "machine", self.words)[1]
        own, placed = json_keys.key_text(node, "station", self.words)[1], cell_text(node.get(shape.station))
        station = own or self.words.station_said(placed) or self.words.station(placed)
        station = "" if self.words.says_machine(own or placed) else station
        here = here.at(machine or here.machine or self.named.machine, station or here.station)
        stated = [key for key in node if shape.aspect_of(key)[0]]
        said = here.below(part_said(cell_text(node.get(shape.part)))) if shape.part else here
        cells = tuple(cell_text(node[key]) for key in stated)
        heading = self.of_size_before(label, self.heading(label, said, cells), (*path[:-1], station))
        if len(stated) == 1:
            heading = heading_of(label, heading, (cell_text(node[stated[0]]),), self.words)
        if of_hole(heading, label) and any(HOLE.fullmatch(cell_text(value)) for value in node.values()):
            heading = Heading(
                "housing_seat_diameter", heading.station if heading else "", heading.unit if heading else ""
            )
        heading = heading or self._machine_named(label, own or placed, node, stated)
        if heading is None or self._is_of_other(heading, node, shape, placed):
            reason = self.words.why(label) if heading is None else "it is of another part"
            self.unused(label, node[stated[0]] if stated else None, path, reason)
            return
        text = cell_text(node[stated[0]]) if stated else ""
        self.parts(heading, label, node, path, self._whose(heading, text, here, station != ""), shape)

    def _whose(self, heading: Heading, text: str, here: Here, placed: bool) -> Here:
        """Whose a record is; the machine or station that it names holds for the records behind it."""
        if heading.parameter == "machine":
            self.named = here.at(text, "")
            return self.named
        if heading.parameter == "station":
            self.named = here.at(here.machine, self.words.station(text))
            return self.named
        if heading.entry.level == "machine":
            return here.at(here.machine, "" if placed else here.station)  # Rotor: its speed
        return here if here.station else here.at(here.machine, self.named.station)
