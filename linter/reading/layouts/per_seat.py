"""Tables with one row per seat: a column says shaft, housing or bearing, and the other columns serve all three."""

import re
from collections.abc import Sequence

from attrs import define, evolve, field

from linter.model.stations import Unused
from linter.reading.cells.units import conversion, known_unit
from linter.reading.files.grids import LONGEST_MIXED, Bad, Grid, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.candidate import Candidate, Outside
from linter.reading.layouts.header_roles import header_roles
from linter.reading.layouts.names_down import Pieces
from linter.reading.layouts.sides import Side, part_column, parts_below, says_parts, side_of, why, within
from linter.reading.layouts.station_columns import judge_numbers
from linter.reading.layouts.strips import Block, Found, filled_down, unreadable_key
from linter.reading.layouts.title import is_title_row, units_said
from linter.reading.layouts.units_row import is_units_row, unit_below
from linter.reading.layouts.wide_heading import JOINABLE
from linter.reading.words.boundary import DIMENSIONS
from linter.reading.words.columns import heading_of
from linter.reading.words.headings import Heading, Words

#: Headings of columns that number or describe the rows.
_NO_VALUES = ("CHAR-ID", "NOTE", "RESULT")
_PLAIN = re.compile(r"[Ø⌀øφΦϕ∅Ф]? ?(\d+(?:[.,]\d+)?)")
_NEAR = 0.01  # limits of a seat differ by less of its size
#: A short code for a station: a letter or a few, and a number.
_CODE = re.compile(r"[^\W\d_]{1,4}[ .\-]?\d{1,2}")
#: A running number of a seat, and no class of one (``S1``, ``H2``).
_NUMBERED = re.compile(r"[A-Z]{1,2}[ .\-]?(?:[12]|\d{2,3})|[^\W\d_]{1,2}[12]")
#: Blank rows that may end a table of seats.
_MOST_BLANK = 3
_OTHER_PART = "every other place has shaft and housing, and this one a shaft alone: it may be no seat of a bearing"


@define(eq=False)
class _Seats:
    """A heading row above a column of parts."""

    grid: Grid
    header: int
    part: int
    parts: dict[int, Side]
    headings: dict[tuple[str, int], Heading]
    keys: dict[str, int]
    first: int
    unit: int | None = None

    @property
    def score(self) -> int:
        """Number of names that are recognised."""
        return len({(h.parameter, h.aspect) for h in self.headings.values()})


def find(grid: Grid, words: Words) -> Candidate | None:
    """The best reading of a grid with one row per seat, or None."""
    if grid.height > LONGEST_MIXED or not any(says_parts(grid, column) for column in range(grid.width)):
        return None
    found = (table for row in range(min(grid.height - 1, 50)) if (table := _headed(grid, row, words)) is not None)
    best = max(found, key=lambda table: table.score, default=None)
    if best is None or best.score < 2:
        return None

    def read(found: Found, outside: Outside) -> Block:
        return _Reader(best, words, found, outside).read()

    return Candidate(
        score=best.score,
        where="in a heading over one row per seat",
        start=best.header,
        heading=range(best.header, best.header + 1),
        headed=False,
        alone=True,
        words=[text for column in range(grid.width) if (text := grid.text(best.header, column))],
        layout_of=lambda block: "one row per seat",
        read=read,
        one_station="STATION" not in best.keys,
    )


def end_of_seats(grid: Grid, words: Words) -> int:
    """The blank row below a table of seats where other rows follow that are none of it; 0 where there is none."""
    if grid.height > LONGEST_MIXED or not any(says_parts(grid, column) for column in range(grid.width)):
        return 0
    blank = [row for row in range(2, grid.height - 1) if all(map(is_blank, grid.row(row)))][:_MOST_BLANK]
    ends = [row for row in blank if find(grid.cut(slice(0, row)), words) is not None]
    return ends[0] if ends and find(grid, words) is None else 0


def headed_seats(grid: Grid, candidates: Sequence[Candidate], words: Words) -> Candidate | None:
    """The table of a shaft and a housing below names and values of its station, however many those are."""
    return next((c for c in candidates if c.one_station and heads_seats(grid, c.start, words)), None)


def heads_seats(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row can head a table whose rows are a shaft and a housing: two features of the part below it."""
    if row + 1 >= grid.height or sum(1 for cell in grid.row(row) if not is_blank(cell)) < 3:
        return False
    sides = [side for c in range(grid.width) if (side := side_of(grid.text(row + 1, c))) is not None]
    if len(sides) != 1 or sides[0].side == "bearing":
        return False
    labels = [label for c in range(grid.width) if (label := grid.text(row, c))]
    named = {h.parameter for label in labels if (h := within(words, sides[0], label)) is not None}
    return sum(name.startswith(sides[0].side) for name in named) >= 2


def _headed(grid: Grid, row: int, words: Words) -> _Seats | None:
    """The table below a row of headings, where one column below it says shaft, housing or bearing throughout."""
    cells = [cell for cell in grid.row(row) if not is_blank(cell)]
    if len(cells) < 3 or any(type(cell) is not str for cell in cells) or is_title_row(grid, row, words):
        return None
    roles = header_roles(grid, row, words)
    if (part := part_column(grid, row + 1)) is None:
        return None
    if {"NAME", "VALUE"} <= {role for column, role in roles.items() if column != part}:
        return None
    judge_numbers(grid, roles, row + 1)
    units = row + 1 if row + 1 < grid.height and is_units_row(grid, row + 1) else -1
    parts = parts_below(grid, part, row + 1)
    keys = _keys(grid, row, part, parts, roles, words)
    sides = [side.side for side in parts.values()]
    if "STATION" not in keys and len(sides) != len(set(sides)):
        return None  # it is not said which shaft and which housing belong together
    headings: dict[tuple[str, int], Heading] = {}
    of_rings = _of_rings(grid, row, parts, keys.get("STATION"), words)
    for side in {side.side: side for side in parts.values()}.values():
        of_side = _headings(grid, row, units, side, [part, *keys.values()], words) | of_rings
        below = [r for r, s in parts.items() if s.side == side.side]
        headings |= {
            (side.side, column): judged
            for column, heading in of_side.items()
            if (judged := _judged(grid, row, column, heading, below, words)) is not None
        }
    unit = next((c for c in range(grid.width) if words.group(grid.text(row, c)) == "UNIT"), None)
    return _Seats(grid, row, part, parts, headings, keys, max(row, units) + 1, unit)


def _of_rings(
    grid: Grid, row: int, parts: dict[int, Side], station: int | None, words: Words
) -> dict[int, Heading | None]:
    """Columns of the bearing's own sizes: the same number stands in the rows of shaft and housing of one position."""
    found: dict[int, Heading | None] = {}
    named = _filled_down(grid, station, parts) if station is not None else dict.fromkeys(parts, "")
    for column in range(grid.width):
        heading = words.heading(grid.text(row, column)) if grid.text(row, column) else None
        if heading is None or heading.parameter not in DIMENSIONS or heading.aspect != "value":
            continue
        stated: dict[str, list[str]] = {}
        for r in parts:
            stated.setdefault(named[r], []).append(grid.text(r, column))
        if all(len(texts) > 1 and len(set(texts)) == 1 and texts[0] for texts in stated.values()):
            found[column] = heading
    return found


def _keys(
    grid: Grid, row: int, part: int, parts: dict[int, Side], roles: dict[int, str], words: Words
) -> dict[str, int]:
    """The columns that name machines and stations."""
    keys: dict[str, int] = {}
    for column, role in roles.items():
        if role == "STATION" and (label := grid.text(row, column)) and words.heading(label) is not None:
            judged = _judged_key(grid, row, column, parts, words)
            if judged is None or judged.parameter != "station":
                continue  # a column of designations headed “Bearing”
        if role in ("STATION", "MACHINE") and column != part:
            keys.setdefault(role, column)
    if "STATION" not in keys and (named := _column_of_stations(grid, row, part, parts, words)) is not None:
        keys["STATION"] = named
    return keys


def _judged_key(grid: Grid, row: int, column: int, parts: dict[int, Side], words: Words) -> Heading | None:
    label = grid.text(row, column)
    cells = [text for r in parts if (text := grid.text(r, column))]
    return heading_of(label, words.heading(label), cells, words)


def _column_of_stations(grid: Grid, row: int, part: int, parts: dict[int, Side], words: Words) -> int | None:
    """The column whose words name the stations under a heading that is not known: one seat of each for every part.

    Every part must come with the same words, each once, and each must be one for a station or a short code (``S1``).
    """
    for column in range(grid.width):
        label = grid.text(row, column)
        if column == part or words.heading(label) is not None or set(words.groups(label)) - {"CHAR-ID"}:
            continue  # a column whose heading says what it is
        filled = _filled_down(grid, column, parts)
        keys = [(side.side, filled[r]) for r, side in parts.items()]
        texts = {text for _, text in keys}
        of_sides = [{text for side, text in keys if side == one} for one in {side for side, _ in keys}]
        alike = len(of_sides) > 1 and all(named == texts for named in of_sides) and len(keys) == len(set(keys))
        if alike and len(texts) > 1 and all(words.names.station(text) or _CODE.fullmatch(text) for text in texts):
            return column
    return None


def _filled_down(grid: Grid, column: int, parts: dict[int, Side], *, once: bool = True) -> dict[int, str]:
    """The text of each row of a column; a blank one is of the text above it, while no part comes twice (``once``)."""
    result: dict[int, str] = {}
    current, seen = "", set[str]()
    for row, side in parts.items():
        if text := grid.merged_text(row, column):
            current, seen = text, set()
        elif once and side.side in seen:
            current = ""
        seen.add(side.side)
        result[row] = current
    return result


def _headings(
    grid: Grid, row: int, units: int, side: Side, but: Sequence[int], words: Words
) -> dict[int, Heading | None]:
    """What each column states of one part; a column of deviations or classes belongs to the size on its left."""
    result: dict[int, Heading | None] = {}
    size: Heading | None = None
    for column in range(grid.width):
        label = grid.text(row, column)
        if column in but or not label or words.group(label) in _NO_VALUES:
            continue
        heading = within(words, side, label) or _own_size(grid, row, column, side, words)
        if (
            heading is None
            and size is not None
            and (aspect := JOINABLE.get(words.group(label), "")) not in ("", "unit")
        ):
            heading = evolve(size, unit=words.unit_of(label) or size.unit, aspect=aspect)
        elif heading is not None:
            size = heading if heading.entry.kind == "toleranced" and heading.aspect == "value" else None
        unit = unit_below(grid, units, column, heading) if units >= 0 else ""
        if heading is not None and not heading.unit and unit:
            heading = evolve(heading, unit=unit)
        result[column] = heading
    return result


def _own_size(grid: Grid, row: int, column: int, side: Side, words: Words) -> Heading | None:
    """The seat of a part where its size is headed by no name (``Nominal``, ``Max``) and its tolerance stands beside."""
    label = grid.text(row, column)
    if side.side == "bearing" or not label:
        return None
    groups = [words.group(grid.text(row, c)) if 0 <= c < grid.width else "" for c in range(column - 2, column + 2)]
    seat = Heading(f"{side.side}_seat_diameter", unit=words.unit_of(label))
    if groups[2] == "VALUE":
        return seat if groups[3] in ("UPPER", "LOWER", "CLASS", "MAX", "MIN") else None
    for before, first in ((groups[1], column), (groups[0], column - 1)):
        limits = {words.group(grid.text(row, c)) for c in (first, first + 1) if 0 <= c < grid.width}
        if limits == {"MAX", "MIN"} and before != "VALUE" and _are_limits(grid, row, first):
            return evolve(seat, aspect=JOINABLE[groups[2]])
    return None


def _are_limits(grid: Grid, row: int, column: int) -> bool:
    """Whether two columns hold pairs of sizes that are as near as the limits of a seat are."""
    pairs = 0
    for r in range(row + 1, grid.height):
        numbers = [_PLAIN.fullmatch(grid.text(r, c)) for c in (column, column + 1)]
        one, two = (float(n[1].replace(",", ".")) if n is not None else 0.0 for n in numbers)
        if one > 1 and two > 1:
            if abs(one - two) > _NEAR * two:
                return False
            pairs += 1
    return pairs > 0


def _judged(
    grid: Grid, row: int, column: int, heading: Heading | None, below: Sequence[int], words: Words
) -> Heading | None:
    """What a column states of one part, by its cells too: a bearing's designation under any heading."""
    cells = [text for r in below if (text := grid.text(r, column))]
    if heading is not None and heading.entry.kind == "toleranced" and cells and all(map(_NUMBERED.fullmatch, cells)):
        return None  # Seat: S1, S2, H1, H2
    heading = heading_of(grid.text(row, column), heading, cells, words) if cells else heading
    return None if heading is not None and heading.parameter in ("machine", "station") else heading


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
            named = _filled_down(grid, column, table.parts, once=level == "STATION")
            blank = [row for row, text in named.items() if text and not grid.merged_text(row, column)]
            if blank:
                self.found.problems.append(filled_down(grid.place(blank[0], column), len(blank), "row", level.lower()))
            if level == "STATION":
                self.stations = named
            else:
                self.machines = named
        lone = self._lone_shafts()
        for row in range(table.first, grid.height):
            side = table.parts.get(row)
            bad = [c for c in (*table.keys.values(), table.part) if isinstance(grid.columns[c][row], Bad)]
            if bad:
                self.found.problems.append(unreadable_key(grid, row, bad[0]))
            if side is None or bad or row in lone:
                other = _OTHER_PART if row in lone else "the row names no part"
                self._leave(row, "" if bad else other)
            else:
                self._row(row, side)
        return self.pieces.block(self.length_unit)

    def _lone_shafts(self) -> set[int]:
        """Rows of a place where a shaft stands alone, where every other one has shaft and housing and is of no bearing.

        A list of seats may hold that of a wheel or a coupling too.
        """
        sides: dict[str, set[str]] = {}
        for row, side in self.table.parts.items():
            sides.setdefault(self.stations.get(row, ""), set()).add(side.side)
        alone = [station for station, said in sides.items() if said == {"shaft"}]
        both = [station for station, said in sides.items() if {"shaft", "housing"} <= said]
        if len(alone) != 1 or len(both) < 2 or len(both) + 1 < len(sides) or self.words.names.station(alone[0]):
            return set()
        return {row for row in self.table.parts if self.stations.get(row, "") == alone[0]}

    def _row(self, row: int, side: Side) -> None:
        """The values of one seat."""
        table, grid = self.table, self.table.grid
        named = table.keys.get("STATION")
        station = self.words.station(self.stations[row]) if named is not None else self.outside.station
        machine = self.machines.get(row, "") or self.outside.machine
        for column in range(grid.width):
            if column in (table.part, *table.keys.values()) or is_blank(grid.columns[column][row]):
                continue
            label = grid.text(table.header, column)
            heading = table.headings.get((side.side, column))
            of_station = heading is not None and heading.entry.level == "station"
            if column == table.unit:
                continue
            if heading is None or (of_station and not station and named is not None):
                reason = why(self.words, side, label) if heading is None else "the row names no station"
                if self.words.group(label) not in _NO_VALUES:
                    self._unused(row, column, label, reason)
            else:
                heading = self._with_unit(row, heading)
                self.pieces.add(heading, f"{side.word} {label}", row, column, machine, station if of_station else "")

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
