"""What the columns of a table with one row per seat state of each part."""

import re
from collections.abc import Mapping, Sequence

from attrs import evolve

from linter.reading.files.grids import Grid
from linter.reading.layouts.below_parts import JOINABLE
from linter.reading.layouts.seat_rows import ITEM, SeatRow, of_feature, own_fillet
from linter.reading.layouts.sides import Side, within
from linter.reading.layouts.units_row import unit_below
from linter.reading.words.boundary import DIMENSIONS
from linter.reading.words.columns import heading_of
from linter.reading.words.designations import designation_strength, read_designation
from linter.reading.words.headings import Heading, Words
from linter.reading.words.joined_names import halves_of
from linter.reading.words.nominal_columns import nominal_beside_limits
from linter.reading.words.part_evidence import PARTS, number_of, rings_of
from linter.reading.words.parts import concepts_said

#: Headings of columns that number or describe the rows.
NO_VALUES = ("CHAR-ID", "NOTE", "RESULT")
_PLAIN = re.compile(r"[Ø⌀øφΦϕ∅Ф]? ?(\d+(?:[.,]\d+)?)")
#: A running number of a seat, and no class of one (``S1``, ``H2``).
_NUMBERED = re.compile(r"[A-Z]{1,2}[ .\-]?(?:[12]|\d{2,3})|[^\W\d_]{1,2}[12]")
#: What names of a support that is a shoulder say (``Diámetro de apoyo``, ``Salto axial del apoyo``).
_OF_SUPPORT = frozenset(("support", "diameter", "runout", "axial", "offset"))
_NEAR = 0.01  # limits of a seat differ by less of its size


def headings_of(
    grid: Grid, row: int, units: int, rows: Mapping[int, SeatRow], places: Mapping[int, str], but: Sequence[int],
    words: Words,
) -> dict[tuple[str, str, int], Heading]:  # fmt: skip
    """What each column states of each part and feature.

    Parameters
    ----------
    grid : Grid
        The region.
    row, units : int
        Heading row, and the row of units below it or -1.
    rows : mapping of int to SeatRow
        What each row is of.
    places : mapping of int to str
        The position of each row.
    but : sequence of int
        Columns that name the rows.
    words : Words
        The names that are understood.

    Returns
    -------
    dict of (str, str, int) to Heading
        By part, feature and column.
    """
    found: dict[tuple[str, str, int], Heading] = {}
    of_rings = _of_rings(grid, row, rows, places, words)
    for one in {said.key: said for said in rows.values()}.values():
        of_part = _headings(grid, row, units, one.side, but, words)
        below = [r for r, said in rows.items() if said.key == one.key]
        if one.feature == "seat":
            of_part |= of_rings | _of_support(grid, row, one.side, of_part, below, words)
        elif one.feature == ITEM:
            of_part = {c: h for c, h in of_part.items() if h is not None and h.parameter.endswith("_material")}
        else:
            of_part = {c: of_feature(words, one, grid.text(row, c), seat) for c, seat in of_part.items()}
        _nominals(grid, row, of_part, below, words)
        for column, heading in of_part.items():
            if heading is None and one.side.side == "bearing" and _names_bearings(grid, row, column, below, words):
                heading = Heading("bearing_designation")
            if (judged := _judged(grid, row, column, heading, below, words)) is not None:
                found[*one.key, column] = judged
    return found


def _headings(
    grid: Grid, row: int, units: int, side: Side, but: Sequence[int], words: Words
) -> dict[int, Heading | None]:
    """What each column states of one part; a column of deviations or classes belongs to the size on its left."""
    result: dict[int, Heading | None] = {}
    size: Heading | None = None
    for column in range(grid.width):
        label = grid.text(row, column)
        if column in but or not label or words.group(label) in NO_VALUES:
            continue
        heading = (
            within(words, side, label) or _own_size(grid, row, column, side, words) or own_fillet(words, side, label)
        )
        if heading is None and _or_material(label):
            heading = Heading(f"{side.side}_material" if side.side in PARTS else "bearing_designation")
        aspect = JOINABLE.get(words.group(label), "") if heading is None else ""
        of = size or (_size_behind(grid, row, column, side, words) if aspect not in ("", "unit") else None)
        if of is not None and aspect not in ("", "unit"):
            heading = evolve(of, unit=words.unit_of(label) or of.unit, aspect=aspect)
        elif heading is not None and (size is None or heading.parameter != size.parameter):
            size = heading if heading.entry.kind == "toleranced" and heading.aspect == "value" else None
        unit = unit_below(grid, units, column, heading) if units >= 0 else ""
        if heading is not None and not heading.unit and unit:
            heading = evolve(heading, unit=unit)
        result[column] = heading
    return result


def _or_material(label: str) -> bool:
    """Whether a heading is of designations of bearings and of materials of parts (``Designation / material``)."""
    said = [concepts_said(half) for half in halves_of(label)]
    return {"material"} in said and any("designation" in other for other in said)


def _nominals(grid: Grid, row: int, of_part: dict[int, Heading | None], below: Sequence[int], words: Words) -> None:
    """Add the column of nominal sizes beside the limits of a part, under a heading that is not known."""
    columns = range(grid.width)
    labels, result = [grid.text(row, c) if c in of_part else "" for c in columns], [of_part.get(c) for c in columns]
    nominal_beside_limits(labels, result, lambda c: [text for r in below if (text := grid.text(r, c))], words)
    of_part |= {c: heading for c, heading in enumerate(result) if heading is not None}


def _of_support(
    grid: Grid, row: int, side: Side, of_part: Mapping[int, Heading | None], below: Sequence[int], words: Words
) -> dict[int, Heading | None]:
    """Columns of what supports the ring of a bearing: the shoulder, where it is larger than the shaft's seat there.

    A housing's is smaller than its seat; an axial runout of a support can only be the shoulder's.
    """
    seat = [c for c, h in of_part.items() if h is not None and h.parameter == f"{side.side}_seat_diameter"]
    size = next((c for c in seat if (own := of_part[c]) is not None and own.aspect == "value"), None)
    found: dict[int, Heading | None] = {}
    for column in [c for c, heading in of_part.items() if heading is None and size is not None]:
        said = concepts_said(label := grid.text(row, column))
        if "support" not in said or not said <= _OF_SUPPORT or size is None:
            continue
        name = "runout" if {"runout", "axial"} <= said else "diameter" if "diameter" in said else ""
        pairs = [(number_of(grid.text(r, column)), number_of(grid.text(r, size))) for r in below]
        over = [one > two if side.side == "shaft" else one < two for one, two in pairs if one and two]
        if name == "runout" or (name and over and all(over)):
            found[column] = Heading(f"{side.side}_shoulder_{name}", unit=words.unit_of(label))
    return found


def _size_behind(grid: Grid, row: int, column: int, side: Side, words: Words) -> Heading | None:
    """The size right behind a word for a tolerance, or behind several, that has none behind it itself."""
    labels = [grid.text(row, c) for c in range(column + 1, grid.width)]
    first = next((k for k, text in enumerate(labels) if words.group(text) not in JOINABLE), len(labels))
    found = within(words, side, labels[first]) if first < len(labels) and labels[first] else None
    behind = words.group(labels[first + 1]) if first + 1 < len(labels) else ""
    is_size = found is not None and found.entry.kind == "toleranced" and found.aspect == "value"
    return found if is_size and behind not in JOINABLE else None


def _own_size(grid: Grid, row: int, column: int, side: Side, words: Words) -> Heading | None:
    """The seat of a part where its size is headed by no name (``Nominal``, ``Max``) and its tolerance stands beside."""
    label = grid.text(row, column)
    if side.side == "bearing" or not label:
        return None
    groups = [words.group(grid.text(row, c)) if 0 <= c < grid.width else "" for c in range(column - 2, column + 2)]
    seat = Heading(f"{side.side}_seat_diameter", unit=words.unit_of(label))
    if groups[2] == "VALUE" or (groups[2] == "NAME" and _holds_sizes(grid, row, column)):
        behind = within(words, side, text) if column + 1 < grid.width and (text := grid.text(row, column + 1)) else None
        of_seat = behind is not None and behind.parameter == seat.parameter and behind.aspect != "value"
        return seat if of_seat or groups[3] in ("UPPER", "LOWER", "CLASS", "MAX", "MIN") else None
    for before, first in ((groups[1], column), (groups[0], column - 1)):
        limits = {words.group(grid.text(row, c)) for c in (first, first + 1) if 0 <= c < grid.width}
        if limits == {"MAX", "MIN"} and before != "VALUE" and _are_limits(grid, row, first):
            return evolve(seat, aspect=JOINABLE[groups[2]])
    return None


def heads_a_list(grid: Grid, row: int, part: int, roles: Mapping[int, str]) -> bool:
    """Whether a row heads names and values beside the column of parts; a word for names may head sizes."""
    others = {column: role for column, role in roles.items() if column != part}
    names = any(role == "NAME" and not _holds_sizes(grid, row, column) for column, role in others.items())
    return names and "VALUE" in others.values()


def _holds_sizes(grid: Grid, row: int, column: int) -> bool:
    """Whether a column below a word for a name (``Maß``) holds sizes, maybe with the bearings of other rows."""
    texts = [text for r in range(row + 1, grid.height) if (text := grid.text(r, column))]
    return 2 * sum(1 for text in texts if _PLAIN.fullmatch(text)) > len(texts) > 1


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


def _names_bearings(grid: Grid, row: int, column: int, below: Sequence[int], words: Words) -> bool:
    """Whether rows of bearings hold the numbers of bearings of known sizes below a word for values (``Nennmaß``)."""
    cells = [text for r in below if (text := grid.text(r, column))]
    named = words.group(grid.text(row, column)) == "VALUE" and bool(cells)
    return named and all(len(text) > 2 and read_designation(text).bore_diameter for text in cells)


def _are_numbers(cells: Sequence[str]) -> bool:
    """Whether cells are running numbers, none of them the number of a bearing."""
    return all(text.isdigit() and designation_strength(text) == "no" for text in cells)


def _judged(
    grid: Grid, row: int, column: int, heading: Heading | None, below: Sequence[int], words: Words
) -> Heading | None:
    """What a column states of one part, by its cells too: a bearing's designation under any heading."""
    label, cells = grid.text(row, column), [text for r in below if (text := grid.text(r, column))]
    if heading is not None and heading.entry.kind == "toleranced" and cells and all(map(_NUMBERED.fullmatch, cells)):
        return None  # Seat: S1, S2, H1, H2
    if heading is not None and heading.aspect == "tolerance" and cells and all(map(_PLAIN.fullmatch, cells)):
        of_size = "diameter" in concepts_said(label)
        heading = evolve(heading, aspect="value", unit=words.unit_of(label)) if of_size else heading  # Ø ajuste
    if cells and heading is not None and heading.parameter == "bearing_designation" and _are_numbers(cells):
        return None  # running numbers of the items
    if cells and "bearing" in concepts_said(label) and all(rings_of(cell, named=True) for cell in cells):
        return Heading("bearing_designation")  # mating bearing, which is no fit
    heading = heading_of(label, heading, cells, words) if cells else heading
    return None if heading is not None and heading.parameter in ("machine", "station") else heading


def _of_rings(
    grid: Grid, row: int, rows: Mapping[int, SeatRow], places: Mapping[int, str], words: Words
) -> dict[int, Heading | None]:
    """Columns of the bearing's own sizes: the same number stands in the rows of shaft and housing of one position."""
    found: dict[int, Heading | None] = {}
    seats = {r: said for r, said in rows.items() if said.feature == "seat" and said.side.side != "bearing"}
    for column in range(grid.width):
        heading = words.heading(grid.text(row, column)) if grid.text(row, column) else None
        if heading is None or heading.parameter not in DIMENSIONS or heading.aspect != "value":
            continue
        stated: dict[str, list[str]] = {}
        for r in seats:
            stated.setdefault(places[r], []).append(grid.text(r, column))
        if all(len(texts) > 1 and len(set(texts)) == 1 and texts[0] for texts in stated.values()):
            found[column] = heading
    return found
