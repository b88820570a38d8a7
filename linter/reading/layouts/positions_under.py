"""Two rows of headings: parameters, and under each the same positions (``Bore | | Load |``, ``A | B | A | B``)."""

from attrs import evolve

from linter.reading.cells.several import without_role
from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.title import names_value
from linter.reading.words.headings import Heading, Words
from linter.reading.words.own_stations import is_no_position
from linter.reading.words.parts import concepts_said

#: Parameters that have the same positions under them.
_ENOUGH = 2
#: What a word for a position may say beside its side; any other word of the trade says what is meant of a seat.
_OF_PLACES = frozenset(("bearing", "side", "place", "support", "locating", "floating", "free", "rotor", "other"))


def positions_under(grid: Grid, words: Words, row: int) -> tuple[list[str], list[Heading | None], int] | None:
    """Labels, headings and how many of them differ, of a row of parameters over the same positions each; or None."""
    if row + 1 >= grid.height or any(
        type(cell) is not str for r in (row, row + 1) for cell in grid.row(r) if not is_blank(cell)
    ):
        return None
    spans = _spans(grid, row)
    stated = [tuple(grid.text(row + 1, column) for column in range(a, b)) for a, b in spans]
    several = [texts for texts in stated if len(texts) > 1]
    positions = max(dict.fromkeys(several), key=several.count, default=())
    if several.count(positions) < _ENOUGH or not _are_positions(positions, words):
        return None
    return _headings(grid, words, row, spans, positions)


def _headings(
    grid: Grid, words: Words, row: int, spans: list[tuple[int, int]], positions: tuple[str, ...]
) -> tuple[list[str], list[Heading | None], int] | None:
    """What the columns name: each parameter with the position below it; or None where too few are known."""
    labels = [grid.text(row, column) or grid.text(row + 1, column) for column in range(grid.width)]
    headings: list[Heading | None] = [words.heading(label) if names_value(words, label) else None for label in labels]
    known = 0
    for a, b in spans:
        upper, below = grid.text(row, a), tuple(grid.text(row + 1, column) for column in range(a, b))
        heading = words.heading(upper)
        placed = below == positions and heading is not None and heading.entry.level == "station"
        known += placed
        for column, text in zip(range(a, b), below, strict=True):
            if placed and heading is not None:
                station = words.station_said(without_role(text)) or text
                headings[column], labels[column] = evolve(heading, station=station), f"{upper} {station}"
            elif text:
                headings[column], labels[column] = words.heading(f"{upper} {text}"), f"{upper} {text}"
    named = {(h.parameter, h.aspect, h.station) for h in headings if h is not None}
    return (labels, headings, len(named)) if known >= _ENOUGH else None


def _spans(grid: Grid, row: int) -> list[tuple[int, int]]:
    """First column and column behind the last of each text of a row: those behind it that only the row below fills."""
    spans = []
    for start in (column for column in range(grid.width) if grid.text(row, column)):
        end = start + 1
        while end < grid.width and not grid.text(row, end) and grid.text(row + 1, end):
            end += 1
        spans.append((start, end))
    return spans


def _are_positions(texts: tuple[str, ...], words: Words) -> bool:
    """Whether different texts are positions: none of them names a value, a part of a size or a statement."""
    if len(set(texts)) < len(texts) or not all(texts):
        return False
    headings = [words.heading(text) for text in texts]
    symbols = all(len(text) == 1 for text in texts)  # B is a width elsewhere
    plain = symbols or all(h is None or (h.parameter == "station" and h.station) for h in headings)
    return plain and not any(words.groups(text) or is_no_position(text) or _says_feature(text) for text in texts)


def _says_feature(text: str) -> bool:
    """Whether a text says what of a seat is meant, below the word for a part (``Seat size``, ``Roughness``)."""
    return bool(concepts_said(text) - _OF_PLACES)
