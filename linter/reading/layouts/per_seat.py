"""Tables with one row per seat: a column says shaft, housing or bearing, and the other columns serve all three."""

import re
from collections.abc import Sequence

from attrs import define, evolve, field

from linter.model.stations import Unused
from linter.reading.cells.requirements import SIZES, Requirement, parameter_of, read_requirement
from linter.reading.cells.units import conversion, known_unit
from linter.reading.files.grids import LONGEST_MIXED, Bad, Grid, cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.candidate import Candidate, Outside
from linter.reading.layouts.header_roles import header_roles
from linter.reading.layouts.heading_cells import may_head, states_figures
from linter.reading.layouts.headings_of_seat_rows import NO_VALUES, headings_of, heads_a_list
from linter.reading.layouts.names_down import Pieces
from linter.reading.layouts.seat_rows import (
    SeatRow,
    filled_below,
    in_column,
    in_groups,
    once_each,
    rows_said,
    with_items,
)
from linter.reading.layouts.sides import part_column, parts_below, side_of, why, within
from linter.reading.layouts.station_columns import judge_numbers
from linter.reading.layouts.strips import Block, Found, filled_down, unreadable_key
from linter.reading.layouts.title import units_said
from linter.reading.layouts.title_rows import is_title_row
from linter.reading.layouts.units_row import is_units_row
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import heading_of, key_of
from linter.reading.words.headings import Heading, Words
from linter.reading.words.part_evidence import PARTS

#: Columns among which one may name the parts, and names that settle the layout.
_NAMING, _SETTLED = 12, 4
#: A short code for a station: a letter or a few, and a number.
_CODE = re.compile(r"[^\W\d_]{1,4}[ .\-]?\d{1,2}")
WHERE = "in a heading over one row per seat"
#: Limits of form and run-out in mm (common practice), and blank rows that may end a table of seats.
_MOST_FORM, _MOST_BLANK = 0.2, 3
#: Letters of positions beside each other, and those of sizes, among which B is the width of a ring.
_POSITIONS, _SIZES = {"A", "B"}, {"d", "D"}
_OTHER_PART = "every other place has shaft and housing, and this one a shaft alone: it may be no seat of a bearing"


@define(eq=False)
class _Seats:
    """A heading row above rows that are each of a part."""

    grid: Grid
    header: int
    part: int
    rows: dict[int, SeatRow]
    headings: dict[tuple[str, str, int], Heading]
    keys: dict[str, int]
    first: int
    unit: int | None = None
    settled: bool = False

    @property
    def score(self) -> int:
        """Number of names that are recognised."""
        return len({(h.parameter, h.aspect) for h in self.headings.values()})

    @property
    def placed(self) -> bool:
        """Whether the rows say their bearing positions."""
        return "STATION" in self.keys or all(row.station for row in self.rows.values())


def find(grid: Grid, words: Words) -> Candidate | None:
    """The best reading of a grid with one row per seat, or None."""
    if (best := _best(grid, words)) is None:
        return None

    def read(found: Found, outside: Outside) -> Block:
        return _Reader(best, words, found, outside).read()

    return Candidate(
        score=best.score,
        where=WHERE,
        start=best.header,
        heading=range(best.header, best.header + 1),
        headed=False,
        alone=True,
        words=[*grid.texts(best.header).values()],
        layout_of=lambda block: "one row per seat",
        read=read,
        one_station=not best.placed,
        settled=best.settled,
    )


def _best(grid: Grid, words: Words) -> _Seats | None:
    """The heading that names most over rows of parts, or None."""
    if grid.height > LONGEST_MIXED or not _speaks_of_parts(grid, words):
        return None
    rows = (row for row in range(min(grid.height - 1, 50)) if not _heads_letters(grid, row))
    found = (table for row in rows if (table := _headed(grid, row, words)) is not None)
    best = max(found, key=lambda table: table.score, default=None)
    return None if best is None or best.score < 2 else best


def _heads_letters(grid: Grid, row: int) -> bool:
    """Whether letters of a row are positions (``Item``, ``A``, ``B``), so that the second is no width of a ring."""
    texts = {cell_text(cell) for cell in grid.row(row)}
    return texts >= _POSITIONS and not _SIZES & texts


def _speaks_of_parts(grid: Grid, words: Words) -> bool:
    """Whether cells of one of the first columns say two parts or more."""
    for column in range(min(grid.width, _NAMING)):
        texts = {text for row in range(grid.height) if (text := grid.text(row, column))}
        if len({said.side.side for said in rows_said(texts, words).values()}) > 1:
            return True
    return False


def end_of_seats(grid: Grid, words: Words) -> int:
    """The row below a table of seats where other rows begin that are none of it; 0 where there is none.

    It is blank, or begins with the name of what the machine has.
    """
    if grid.height > LONGEST_MIXED or not _speaks_of_parts(grid, words):
        return 0
    blank = [row for row in range(2, grid.height - 1) if not grid.filled[row]][:_MOST_BLANK]
    if (table := _best(grid, words)) is not None:
        below = max(table.rows) + 1
        label = next((text for text in map(cell_text, grid.row(below)) if text), "") if below < grid.height else ""
        heading = words.heading(label) if label else None
        own = heading is not None and heading.entry.level == "machine" and not heading.station
        return (below if own else next((r for r in blank if r >= below), 0)) if table.settled else 0
    return next((row for row in blank if find(grid.cut(slice(0, row)), words) is not None), 0)


def headed_seats(grid: Grid, candidates: Sequence[Candidate], words: Words) -> Candidate | None:
    """The table of a shaft and a housing below names and values of its station, however many those are."""
    return next((c for c in candidates if c.one_station and heads_seats(grid, c.start, words)), None)


def heads_seats(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row can head a table whose rows are a shaft and a housing: two features of the part below it."""
    if row + 1 >= grid.height or grid.filled[row] < 3:
        return False
    said = {c: side for c in range(grid.width) if (side := side_of(grid.text(row + 1, c))) is not None}
    if len(sides := [*said.values()]) != 1 or sides[0].side == "bearing" or side_of(grid.text(row, *said)) is not None:
        return False
    labels = [*grid.texts(row).values()]
    if states_figures(labels):
        return False
    named = {h.parameter for label in labels if (h := within(words, sides[0], label)) is not None}
    return sum(name.startswith(sides[0].side) for name in named) >= 2


def _headed(grid: Grid, row: int, words: Words) -> _Seats | None:
    """The table below a row of headings, where one column below it says shaft, housing or bearing throughout."""
    cells = grid.stated(row)
    if len(cells) < 3 or not may_head(cells):
        return None
    known = sum(1 for cell in cells if words.heading(cell) is not None or words.groups(cell))
    if 3 * known <= 2 * len(cells) and is_title_row(grid, row, words):
        return None  # labels and values in turn: no more than the labels are known
    roles = header_roles(grid, row, words)
    if (named := _rows(grid, row, words)) is None:
        return None
    part, rows = named[0], with_items(grid, named[1])
    if heads_a_list(grid, row, part, roles):
        return None
    judge_numbers(grid, roles, row + 1)
    units = row + 1 if row + 1 < grid.height and is_units_row(grid, row + 1) else -1
    keys = _keys(grid, row, part, rows, roles, words)
    if "STATION" not in keys and not once_each(rows):
        return None  # it is not said which shaft and which housing belong together
    at = keys.get("STATION")
    keyed = filled_below(grid, at, rows) if at is not None else {}
    places = {r: said.station or keyed.get(r, "") for r, said in rows.items()}
    headings = headings_of(grid, row, units, rows, places, [part, *keys.values()], words)
    unit = next((c for c in range(grid.width) if words.group(grid.text(row, c)) == "UNIT"), None)
    table = _Seats(grid, row, part, rows, headings, keys, max(row, units) + 1, unit)
    table.settled = _settled(table, words)
    return table


def _rows(grid: Grid, header: int, words: Words) -> tuple[int, dict[int, SeatRow]] | None:
    """The column that names the parts of the rows below a heading, and what each row is of."""
    start = header + 1
    found = [(c, said) for c in range(min(grid.width, _NAMING)) if (said := in_column(grid, c, start, words))]
    column, rows = max(found, key=lambda one: len(one[1]), default=(-1, {}))
    if any(said.station or said.feature != "seat" for said in rows.values()):
        return column, rows
    grouped = in_groups(grid, start, words)
    firsts = [next(c for c in range(grid.width) if grid.text(r, c)) for r in grouped]
    if len(grouped) > 1 and len(grouped) >= len(rows) and len(set(firsts)) == 1:
        return firsts[0], grouped
    if (part := part_column(grid, start)) is not None:
        below = {r: SeatRow(side) for r, side in parts_below(grid, part, start).items()}
        return part, (rows if part == column and len(rows) > len(below) else below)
    return (column, rows) if rows else None


def _settled(table: _Seats, words: Words) -> bool:
    """Whether the rows leave no doubt of the layout: none names a parameter, and each seat has one row."""
    grid, stations, machines = table.grid, dict[int, str](), dict[int, str]()
    if not {"shaft", "housing"} <= {said.side.side for said in table.rows.values()} or not table.placed:
        return False
    for row in range(table.first, max(table.rows) + 1):
        text = grid.text(row, table.part)
        if row not in table.rows and text and words.heading(text) is not None:
            return False
    for level, into in (("STATION", stations), ("MACHINE", machines)):
        if (column := table.keys.get(level)) is not None:
            into.update(filled_below(grid, column, table.rows, once=level == "STATION"))
    return once_each(table.rows, stations, machines) and table.score >= _SETTLED


def _keys(
    grid: Grid, row: int, part: int, rows: dict[int, SeatRow], roles: dict[int, str], words: Words
) -> dict[str, int]:
    """The columns that name machines and stations."""
    keys: dict[str, int] = {}
    for column, role in roles.items():
        if role == "STATION" and (label := grid.text(row, column)) and words.heading(label) is not None:
            judged = _judged_key(grid, row, column, rows, words)
            roles_alone = judged is not None and judged.parameter == "axial_role"
            if (judged is None or judged.parameter != "station") and not (
                roles_alone and _name_places(grid, column, rows, words)
            ):
                continue  # a column of designations headed “Bearing”
        if role in ("STATION", "MACHINE") and column != part:
            keys.setdefault(role, column)
    if all(said.station for said in rows.values()):
        keys.pop("STATION", None)
    elif "STATION" not in keys and (named := _column_of_stations(grid, row, part, rows, keys, words)) is not None:
        keys["STATION"] = named
    return keys


def _name_places(grid: Grid, column: int, rows: dict[int, SeatRow], words: Words) -> bool:
    """Whether every cell of a column is a word for a position (``Festlager``)."""
    return all(words.names.station(text) for r in rows if (text := grid.text(r, column)))


def _judged_key(grid: Grid, row: int, column: int, rows: dict[int, SeatRow], words: Words) -> Heading | None:
    label = grid.text(row, column)
    cells = [text for r in rows if (text := grid.text(r, column))]
    return heading_of(label, words.heading(label), cells, words)


def _column_of_stations(
    grid: Grid, row: int, part: int, rows: dict[int, SeatRow], named: dict[str, int], words: Words
) -> int | None:
    """The column whose words name the stations under a heading that is not known: one seat of each for every part.

    Every part must come with the same words, each once, and each must be one for a station or a short code (``S1``).
    """
    machines = filled_below(grid, named["MACHINE"], rows, once=False) if "MACHINE" in named else {}
    for column in range(grid.width):
        label = grid.text(row, column)
        if column == part or words.heading(label) is not None or set(words.groups(label)) - {"CHAR-ID"}:
            continue  # a column whose heading says what it is
        seats = {r: said for r, said in rows.items() if said.feature == "seat"}
        filled = filled_below(grid, column, rows)
        keys = [(machines.get(r, ""), said.side.side, text) for r, said in seats.items() if (text := filled[r])]
        texts = {text for *_, text in keys}
        of_sides = [{text for _, side, text in keys if side == one} for one in {side for _, side, _ in keys}]
        alike = len(of_sides) > 1 and all(one == texts for one in of_sides) and len(keys) == len(set(keys))
        place = key_of(label, words).strip(" .") in KEYS["place"]
        known = all(words.names.station(t) or _CODE.fullmatch(t) or (place and t.isalpha()) for t in texts)
        if alike and len(texts) > 1 and known:
            return column
    return None


def _required(text: str, said: SeatRow, table: _Seats) -> tuple[Heading, str] | None:
    """What a cell limits of the seat or shoulder of its row in words or signs (``cyl. 0,004``), and its number.

    A limit as small as those in millimetres are has the unit of the sizes, as on a drawing (ISO 1101, from memory).
    """
    stated = read_requirement(text) if said.side.side in PARTS and said.feature in ("seat", "shoulder") else None
    if not isinstance(stated, Requirement) or stated.characteristic in SIZES:
        return None
    of_part = f"{said.side.side}_{said.feature}_diameter"
    name, _ = parameter_of(of_part, stated.characteristic)
    if not name or name == of_part or not name.startswith(f"{said.side.side}_{said.feature}_"):
        return None
    sizes = {h.unit for h in table.headings.values() if h.parameter == of_part and h.aspect == "value"}
    usual = float(stated.number.replace(",", ".")) <= _MOST_FORM and stated.characteristic != "roughness Ra"
    unit = stated.unit or ("µm" if stated.characteristic == "roughness Ra" else "")
    return Heading(name, unit=unit or ("mm" if sizes == {"mm"} and usual else "")), stated.number


@define(eq=False)
class _Reader:
    table: _Seats
    words: Words
    found: Found
    outside: Outside
    pieces: Pieces = field(init=False)
    length_unit: str = field(init=False)
    stations: dict[int, str] = field(init=False, factory=dict)
    machines: dict[int, str] = field(init=False, factory=dict)

    def read(self) -> Block:
        """The block."""
        table, grid = self.table, self.table.grid
        self.pieces, self.length_unit = Pieces(grid), self.outside.length_unit
        for level, column in table.keys.items():
            named = filled_below(grid, column, table.rows, once=level == "STATION")
            blank = [row for row, text in named.items() if text and not grid.merged_text(row, column)]
            if blank:
                self.found.problems.append(filled_down(grid.place(blank[0], column), len(blank), "row", level.lower()))
            if level == "STATION":
                self.stations = named
            else:
                self.machines = named
        lone = self._lone_shafts()
        for row in range(table.first, grid.height):
            said = table.rows.get(row)
            bad = [c for c in (*table.keys.values(), table.part) if isinstance(grid.columns[c][row], Bad)]
            if bad:
                self.found.problems.append(unreadable_key(grid, row, bad[0]))
            if said is None or bad or row in lone:
                other = _OTHER_PART if row in lone else "the row names no part"
                self._leave(row, "" if bad else other)
            else:
                self._row(row, said)
        return self.pieces.block(self.length_unit)

    def _lone_shafts(self) -> set[int]:
        """Rows of a place where a shaft stands alone, where every other one has shaft and housing and is of no bearing.

        A list of seats may hold that of a wheel or a coupling too.
        """
        sides: dict[str, set[str]] = {}
        for row, said in self.table.rows.items():
            sides.setdefault(self._place_of(row), set()).add(said.side.side)
        alone = [station for station, parts in sides.items() if station and parts == {"shaft"}]
        both = [station for station, parts in sides.items() if {"shaft", "housing"} <= parts]
        if len(alone) != 1 or len(both) < 2 or len(both) + 1 < len(sides) or self.words.names.station(alone[0]):
            return set()
        return {row for row in self.table.rows if self._place_of(row) == alone[0]}

    def _place_of(self, row: int) -> str:
        """The position of a row as it stands there."""
        return self.table.rows[row].station or self.stations.get(row, "")

    def _row(self, row: int, said: SeatRow) -> None:
        """The values of one seat."""
        table, grid = self.table, self.table.grid
        station = self.words.station(self._place_of(row))
        station = station if table.placed else self.outside.station
        machine = self.machines.get(row, "") or self.outside.machine
        for column in range(grid.width):
            if column in (table.part, *table.keys.values()) or is_blank(grid.columns[column][row]):
                continue
            label = grid.text(table.header, column)
            heading = table.headings.get((*said.key, column))
            of_station = heading is not None and heading.entry.level == "station"
            if column == table.unit:
                continue
            if heading is None and (required := _required(grid.text(row, column), said, table)) is not None:
                self.pieces.add(required[0], label, row, column, machine, station, required[1])
            elif heading is None or (of_station and not station and table.placed):
                reason = why(self.words, said.side, label) if heading is None else "the row names no station"
                if self.words.group(label) not in NO_VALUES:
                    self._unused(row, column, label, reason)
            else:
                heading = self._with_unit(row, heading)
                self.pieces.add(
                    heading, f"{said.side.word} {label}", row, column, machine, station if of_station else ""
                )

    def _with_unit(self, row: int, heading: Heading) -> Heading:
        """The heading with the unit of its row where it fits; a roughness is stated in its own unit."""
        unit = self.table.grid.text(row, self.table.unit).strip("[]() ") if self.table.unit is not None else ""
        wanted = heading.entry.unit
        if heading.unit or not unit or wanted in ("", "1") or heading.parameter.endswith("_roughness"):
            return heading
        return evolve(heading, unit=unit) if known_unit(unit) and conversion(unit, wanted) is not None else heading

    def _leave(self, row: int, reason: str) -> None:
        """A row of no part: a footer or a remark; what it says of units is taken."""
        grid = self.table.grid
        for column in range(grid.width):
            text = grid.text(row, column)
            if unit := units_said(text):
                self.length_unit = self.found.one_length_unit(self.length_unit, unit, grid.place(row, column))
            if text:
                self._unused(row, column, grid.text(self.table.header, column), reason or "its row cannot be read")

    def _unused(self, row: int, column: int, label: str, reason: str) -> None:
        grid = self.table.grid
        self.found.seen.append(label)
        self.found.leave(Unused(label, visible(grid.text(row, column)), grid.place(row, column), reason))
