"""What the rows of a table with one row per seat are of: a part, what of it, and the bearing position."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType

from attrs import evolve, frozen

from linter.reading.files.grids import Grid
from linter.reading.layouts.placed import placed, placed_apart
from linter.reading.layouts.sides import Side, side_of
from linter.reading.words.bearing_words import names_bearing
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Words
from linter.reading.words.part_columns import says_bore
from linter.reading.words.part_evidence import PARTS
from linter.reading.words.parts import concepts_said
from linter.reading.words.remembered import remembered

#: What a row may state of a part, by the parameter that its words name with a diameter or a radius.
_FEATURES = {
    f"{part}_{feature}_{size}": (part, feature)
    for part in ("shaft", "housing")
    for feature, size in (("seat", "diameter"), ("shoulder", "diameter"), ("fillet", "radius"))
}
_LONGEST = 60
#: What a row of an item is of, and columns of figures that it lacks at least.
ITEM, _FIGURES = "item", 2
#: Words of a name of one value, which no row of a seat has.
_SIZES = frozenset(("diameter", "roughness", "runout", "cylindricity", "width", "radius", "upper", "lower", "largest"))
_NONE: Mapping[int, str] = MappingProxyType({})


@frozen
class SeatRow:
    """What a row is of.

    Attributes
    ----------
    side : Side
        Shaft, housing or bearing.
    feature : str
        ``seat``, or ``shoulder`` or ``fillet`` where the row is of that alone, or ``item`` for the part as a whole.
    station : str
        The bearing position that stands with the part; empty where another column or row names it.
    """

    side: Side
    feature: str = "seat"
    station: str = ""

    @property
    def key(self) -> tuple[str, str]:
        """Part and feature, which tell what its columns state."""
        return self.side.side, self.feature


@remembered
def row_said(text: str, words: Words) -> SeatRow | None:
    """What a text says that a row is of, or None."""
    if not 0 < len(text) <= _LONGEST or not any(map(str.isalpha, text)) or concepts_said(text) & _SIZES:
        return None
    heading = words.heading(text)
    part, feature = _FEATURES.get(heading.parameter, ("", "")) if heading is not None else ("", "")
    if heading is not None and feature in ("shoulder", "fillet") and heading.aspect == "value":
        return SeatRow(Side(part, part), feature, heading.station)
    if (both := placed(text, words)) is not None:
        return SeatRow(both.side, "seat", both.station)
    if (side := side_of(text)) is not None:
        return SeatRow(side)
    if heading is not None and part and heading.aspect == "value" and not heading.unit:
        return SeatRow(Side(part, part), "seat", heading.station)
    return None


def rows_said(texts: Iterable[str], words: Words) -> dict[str, SeatRow]:
    """What texts say that their rows are of; a word that stands with several parts is a position.

    A bore beside the shaft (``arbre``, ``alésage``) is the housing's where no other word says that; beside both parts a
    type of bearings (``Cuscinetto a sfere``) is the bearing.
    """
    distinct = list(dict.fromkeys(texts))
    found = {text: said for text in distinct if (said := row_said(text, words)) is not None}
    if len(found) < len(distinct) and (apart := placed_apart(distinct, words)):
        return {text: SeatRow(said.side, "seat", said.station) for text, said in apart.items()}
    if {row.side.side for row in found.values()} == {"shaft"}:
        bores = [text for text in distinct if text not in found and says_bore(text, word_key(text))]
        found |= {text: SeatRow(Side("housing", text)) for text in bores}
    if {"shaft", "housing"} <= {row.side.side for row in found.values()}:
        others = [text for text in distinct if text not in found and names_bearing(text)]
        found |= {text: SeatRow(Side("bearing", text)) for text in others}
    return found


def in_column(grid: Grid, column: int, start: int, words: Words) -> dict[int, SeatRow]:
    """What each row is of by the words of one column; empty where that does not say shaft and housing of most rows."""
    rows = [r for r in range(start, grid.height) if grid.filled[r] > 1]
    texts = {r: text for r in rows if (text := grid.merged_text(r, column))}
    if len(texts) < 2 or 2 * len(texts) < len(rows) or len(set(texts.values())) < 2:
        return {}
    said = rows_said(texts.values(), words)
    found = {r: said[text] for r, text in texts.items() if text in said}
    if 2 * len(found) <= len(texts) or not {"shaft", "housing"} <= {row.side.side for row in found.values()}:
        return {}
    return found


def in_groups(grid: Grid, start: int, words: Words) -> dict[int, SeatRow]:
    """What each row is of by lines above it that hold one text: a part above positions, or a position above parts.

    The other of both is the first text of each row. Words that stand below several parts are positions.
    """
    found: dict[int, SeatRow] = {}
    open_: list[tuple[int, SeatRow, str]] = []
    current: SeatRow | None = None
    station = ""
    for row in range(start, grid.height):
        texts = [*grid.texts(row).values()]
        if len(texts) == 1:
            said = row_said(texts[0], words)
            place = words.station_said(texts[0])
            if said is not None and (said.side.side != "bearing" or not place):
                current, station = said, said.station
            elif place:
                current, station = None, place
        elif len(texts) > 1 and current is not None:
            if place := words.station_said(texts[0]) or station:
                found[row] = evolve(current, station=place)
            else:
                open_.append((row, current, texts[0]))
        elif len(texts) > 1 and station and (said := row_said(texts[0], words)) is not None:
            found[row] = evolve(said, station=said.station or station)
    again = _come_again([(said, text) for _, said, text in open_], words)
    if len(again) > 1 or found:
        found |= {row: evolve(said, station=text) for row, said, text in open_ if text in again}
    sides = {row.side.side for row in found.values()}
    return dict(sorted(found.items())) if {"shaft", "housing"} <= sides else {}


def _come_again(said: Sequence[tuple[SeatRow, str]], words: Words) -> set[str]:
    """First texts of rows that stand below the shaft as well as below the housing and name nothing themselves."""
    below: dict[str, set[str]] = {}
    for part, text in said:
        below.setdefault(text, set()).add(part.side.side)
    return {text for text, sides in below.items() if {"shaft", "housing"} <= sides and words.heading(text) is None}


def with_items(grid: Grid, rows: dict[int, SeatRow]) -> dict[int, SeatRow]:
    """The rows, those of items marked: a part under a word of its own, without the figures that all its seats have.

    What stands in every row (numbers, counts) is no figure of a seat.
    """
    seats = {r: said for r, said in rows.items() if said.side.side in PARTS and said.feature == "seat"}
    words = Counter(said.side.word for said in seats.values())
    alone = [r for r, said in seats.items() if words[said.side.word] == 1 and not said.station]
    if not alone or len(alone) > len(PARTS):
        return rows
    found = {row: {c for c in range(grid.width) if any(map(str.isdigit, grid.text(row, c)))} for row in rows}
    everywhere = set.intersection(*found.values())
    result = dict(rows)
    for row in alone:
        others = [found[r] for r in seats if r != row and seats[r].side.side == seats[row].side.side]
        stated = set.intersection(*others) - everywhere if len(others) > 1 else set()
        if len(stated) >= _FIGURES and not stated & found[row]:
            result[row] = evolve(seats[row], feature=ITEM)
    return result


def filled_below(grid: Grid, column: int, rows: dict[int, SeatRow], *, once: bool = True) -> dict[int, str]:
    """The text of each row of a column; a blank one is of the text above it, while no part comes twice (``once``).

    A row of an item (``Shaft | 42CrMo4``) is of no position that it does not say itself.
    """
    result: dict[int, str] = {}
    current, seen = "", set[tuple[str, str]]()
    for row, said in rows.items():
        text = grid.merged_text(row, column)
        if said.feature == ITEM:
            result[row] = text
            continue
        if text:
            current, seen = text, set()
        elif once and said.key in seen:
            current = ""
        seen.add(said.key)
        result[row] = current
    return result


def once_each(
    rows: Mapping[int, SeatRow], stations: Mapping[int, str] = _NONE, machines: Mapping[int, str] = _NONE
) -> bool:
    """Whether each seat, shoulder and fillet of each position has one row only."""
    keys = [(machines.get(r, ""), said.station or stations.get(r, ""), *said.key) for r, said in rows.items()]
    return len(keys) == len(set(keys))


def of_feature(words: Words, said: SeatRow, label: str, seat: Heading | None) -> Heading | None:
    """What a heading means of a row that is of a shoulder or a fillet alone; ``seat`` is what it means of the seat."""
    part, feature = said.key
    if seat is not None and seat.parameter == f"{part}_seat_diameter":
        own = evolve(seat, parameter=f"{part}_{feature}_{'radius' if feature == 'fillet' else 'diameter'}")
        return own if own.entry.kind == "toleranced" or own.aspect == "value" else None
    found = words.heading(f"{part} {feature} {label}") if label and not words.groups(label) else None
    return found if found is not None and found.parameter.startswith(f"{part}_{feature}_") else None


def own_fillet(words: Words, side: Side, label: str) -> Heading | None:
    """The fillet of a part under a word for a radius alone (``Raggio``): a seat has no other one."""
    said = concepts_said(label)
    if side.side not in ("shaft", "housing") or "radius" not in said or not said <= {"radius", "largest"}:
        return None
    return Heading(f"{side.side}_fillet_radius", unit=words.unit_of(label))
