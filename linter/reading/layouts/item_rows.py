"""Rows of parts lists that are items: bearings with designation and dimensions, springs, parts with their material."""

from collections.abc import Iterator

from attrs import define, evolve

from linter.reading.cells.choices import read_choice
from linter.reading.layouts.long_rows import ByRow
from linter.reading.layouts.parts_list import states_length
from linter.reading.layouts.placed import bearing_named, part_said
from linter.reading.words.bearing_words import designation_behind
from linter.reading.words.boundary import dimensions_of
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading

_DESIGNATION, _DIMENSIONS = Heading("bearing_designation"), Heading("bore_diameter", aspect="dimensions")


@define(eq=False)
class ByItem(ByRow):
    """Reads a parts list: items and features of parts, one a row."""

    def _named_row(self, row: int, label: str) -> None:
        if not (self._bearing(row, label) or self._spring(row, label) or self._part(row, label)):
            super()._named_row(row, label)

    def _names_machine(self, row: int, label: str, value: str) -> bool:
        return False  # Fan, Ø220: an item

    def _texts(self, row: int) -> Iterator[tuple[int, str]]:
        grid = self.table.grid
        return ((c, text) for c in range(grid.width) if (text := grid.text(row, c)))

    def _bearing(self, row: int, label: str) -> bool:
        """Take a row that names a bearing and its position, with the designation and the dimensions in its cells."""
        places = ((c, bearing_named(text, self.words)) for c, text in self._texts(row))
        at, own = next(((c, place) for c, place in places if place is not None), (-1, ""))
        if at < 0:
            return False
        cells = [(c, text) for c, text in self._texts(row) if c != at and self.table.roles.get(c) != "STATION"]
        designations = [(c, text) for c, text in cells if designation_strength(text) == "certain"]
        designations = designations or [(c, t) for c, t in cells if self._is_number(c, t)]
        dimensions = [(c, text) for c, text in cells if dimensions_of(text) is not None]
        inside = designation_behind(self.table.grid.text(row, at)) if not designations else ""
        if len(designations) != 1 and len(dimensions) != 1 and not inside:
            return False
        station = own or self._stated_station(row, self.one("STATION"), "station") or self.station
        for found, heading in ((designations, _DESIGNATION), (dimensions, _DIMENSIONS)):
            if len(found) == 1:
                shape = self.with_unit(row, found[0][0], evolve(heading, station=station))
                self.pieces.add(shape, label, row, found[0][0], self.machine, station)
        if inside:
            self.pieces.add(evolve(_DESIGNATION, station=station), label, row, at, self.machine, station, inside)
        return True

    def _is_number(self, column: int, text: str) -> bool:
        """Whether a cell is the number of a bearing where its column holds no counts and no sizes."""
        counted = self.table.roles.get(column) in ("CHAR-ID", "VALUE", "UNIT", "MATERIAL")
        return not counted and designation_strength(text) == "possible" and sum(map(str.isdigit, text)) > 2

    def _spring(self, row: int, label: str) -> bool:
        """Take a row that names a spring by its kind."""
        if self.words.heading(label) is not None or not isinstance(read_choice("spring_kind", label), str):
            return False
        self.pieces.add(Heading("spring_kind"), label, row, self.table.name, self.machine, "", label)
        return True

    def _part(self, row: int, label: str) -> bool:
        """Take the material of a row that names the shaft or the housing."""
        item = part_said(label, self.words)
        value = self._value_column(row)
        if item is None or item.side.side not in ("shaft", "housing"):
            return False
        if value is not None:  # L = 410, and no size of a seat
            if not states_length(self.table.grid.text(row, value)):
                return False
            self.leave_cell(label, row, value, self.words.why(label))
        for column in self.columns_of("MATERIAL"):
            if self.table.grid.text(row, column):
                self.pieces.add(Heading(f"{item.side.side}_material"), label, row, column, self.machine, "")
        return True
