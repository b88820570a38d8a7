"""Texts that say a part and its bearing position together: ``Welle links``, ``Housing (NDE)``, ``A - Shaft``."""

import re
from collections.abc import Iterable, Sequence

from attrs import frozen

from linter.reading.files.grids import Grid
from linter.reading.layouts.sides import THING, Side, is_use, side_of
from linter.reading.words.bearing_words import designation_behind, names_bearing
from linter.reading.words.cuts import station_cuts
from linter.reading.words.eastern import positions_before
from linter.reading.words.headings import Words
from linter.reading.words.machine_words import names_machine
from linter.reading.words.parts import concepts_said, is_bearing, part_alone
from linter.reading.words.remembered import remembered

_LONGEST, _LONGEST_EASTERN = 60, 14
_EASTERN_BEARING = re.compile("^(?:軸受|轴承)|(?:軸受|轴承)$")
_LETTERED_END = re.compile("(?<=[\u3040-\u30ff\u3400-\u9fff])[A-Z]{1,3}[端侧側]$|^[A-Z]{1,3}[端侧側]")  # 轴颈D端
_EASTERN = re.compile("[\u3040-\u30ff\u3400-\u9fff]")


@frozen
class Placed:
    """A part and the station that a text says together."""

    side: Side
    station: str


@remembered
def _cuts(text: str, words: Words) -> list[tuple[Side, str]]:
    """Ways to cut a text into a word for a part alone and the rest; the word that stands first comes first."""
    found: list[tuple[Side, str]] = []
    cuts = [(rest, piece) for rest, piece, _ in station_cuts(text)] if 2 < len(text) <= _LONGEST else []
    for rest, piece in cuts or _without_blank(text, words):
        side, behind = side_of(rest), piece.strip(" :.-–—()[]")
        if side is not None and behind and side_of(behind) is None and not _goes_on(rest, side, words):
            found.append((side, behind))
    return found


def _without_blank(text: str, words: Words) -> list[tuple[str, str]]:
    """The cut between a part and a known place of Chinese or Japanese names: ``軸受負荷側``, ``驱动端轴承``."""
    if not 1 < len(text) <= _LONGEST_EASTERN or not _EASTERN.search(text):
        return []
    if (end := _LETTERED_END.search(text)) is not None and side_of(rest := text.replace(end[0], "", 1)) is not None:
        return [(rest, end[0])]
    for at in range(len(text) - 1, 0, -1):
        if side_of(text[:at]) is not None and (len(text) - at == 1 or words.station_said(text[at:])):
            return [(text[:at], text[at:])] if text[at:].isalnum() and not _EASTERN.fullmatch(text[at:]) else []
    return [(rest, place) for place, rest in positions_before(text) if side_of(rest) is not None][:1]


def _goes_on(rest: str, side: Side, words: Words) -> bool:
    """Whether words for a part hold a station themselves (``Shaft A``): the cut goes through the station's name."""
    inner = [side_of(core) for core, piece, _ in station_cuts(rest) if words.station_said(piece)]
    return any(one is not None and one.side == side.side and part_alone(one.word) for one in inner) and " " in side.word


@remembered
def placed(text: str, words: Words) -> Placed | None:
    """The part and the known station that a text says, or None; a word for part and place (``supporto A``) is open.

    Of several ways to cut it the one counts that leaves no word for a seat to the station (``Housing seat Brg 1``).
    """
    for side, behind in sorted(_cuts(text, words), key=lambda cut: _holds_part(cut[1])):
        if (station := words.station_said(behind)) and (side.side == "bearing" or not _says_place(text, side, words)):
            return Placed(side, station)
    return None


def _holds_part(behind: str) -> tuple[bool, bool]:
    """Whether what a cut leaves to the station holds a word for a seat or begins with one for a bearing."""
    return "seat" in concepts_said(behind), is_bearing(behind.partition(" ")[0])


def _says_place(text: str, side: Side, words: Words) -> bool:
    """Whether a text may be a station with the word for a part as that for a place in it."""
    heading = words.heading(side.word)
    of_place = heading is not None and heading.parameter == "station"
    return bool(words.station_said(text)) and (of_place or text.startswith(side.word))


def bearing_named(text: str, words: Words) -> str | None:
    """The position of the bearing that a text names, empty where it names none; None for another text."""
    heading = words.heading(text)
    if heading is not None and heading.parameter == "bearing_designation" and heading.aspect == "value":
        return None if "designation" in concepts_said(text) else heading.station
    if heading is None and (both := placed(text, words)) is not None and both.side.side == "bearing":
        return both.station
    return "" if names_bearing(text) or designation_behind(text) else None


def side_placed(text: str, words: Words) -> Side | None:
    """The part that a text says together with a known station, or None."""
    found = placed(text, words)
    return None if found is None or found.side.side == "bearing" else found.side


def part_said(text: str, words: Words) -> Placed | None:
    """The part that a text says, with its known station where it says one too; or None."""
    both = placed(text, words)
    side = side_of(text) if both is None else None
    return both if side is None else Placed(side, "")


def placed_apart(texts: Iterable[str], words: Words) -> dict[str, Placed]:
    """Part and station of each text, where every text says both: known ones, or words that come with several parts.

    ``Welle Bandseite, Gehäuse Bandseite, Welle Rückseite, ...``: no list holds the words of every firm, but two or more
    that each stand behind two parts tell positions apart.
    """
    distinct = list(dict.fromkeys(texts))
    if not all(_cuts(text, words) for text in distinct):
        return {}  # ends at the first that cannot say both
    known = {text: found for text in distinct if (found := placed(text, words)) is not None}
    if len(known) == len(distinct):
        return known
    cut = {text: sorted(_cuts(text, words), key=lambda cut: _holds_part(cut[1])) for text in distinct}
    sides: dict[str, set[str]] = {}
    for ways in cut.values():
        for side, behind in ways:
            sides.setdefault(behind, set()).add(side.side)
    several = {behind for behind, of in sides.items() if len(of) > 1}
    told = {
        text: Placed(side, behind) for text, ways in cut.items() for side, behind in reversed(ways) if behind in several
    }
    return told if len(told) == len(distinct) and len({p.station for p in told.values()}) > 1 else {}


def _says_whole(text: str, words: Words) -> bool:
    """Whether a text says the machine as a whole, alone or with one of its sides (``Assembly drive side``)."""
    if "rotor" in concepts_said(text):
        return False  # Rotor assembly
    return words.of_whole(text) or is_use(text) or any(words.of_whole(rest) for rest, _, _ in station_cuts(text))


def _is_machine(grid: Grid, column: int, things: dict[int, str], words: Words) -> bool:
    """Whether rows of one thing are of the machine: a word for a sort of machines, and two names of what is of one."""
    if [names_machine(text) for text in {*things.values()}] != ["machine"]:
        return False
    texts = (grid.text(row, c) for row in things for c in range(grid.width) if c != column)
    headings = [heading for text in texts if (heading := words.heading(text)) is not None]
    return len({h.parameter for h in headings if h.entry.level == "machine"}) > 1


def _bearings_placed(texts: set[str], stations: set[str], words: Words) -> dict[str, Placed]:
    """Texts that say a position alone among those that say a part of it: ``Lagerstelle A`` beside ``Welle A``."""
    ways = ((text, place) for text in texts for place in (words.station_said(text), _EASTERN_BEARING.sub("", text)))
    return {text: Placed(Side("bearing", "bearing"), place) for text, place in ways if place in stations}


def placed_column(grid: Grid, columns: Sequence[int], start: int, words: Words) -> tuple[int, dict[int, Placed]] | None:
    """The column whose cells say part and station of their rows, and what each row's cell says; or None.

    Rows whose cell says the machine as a whole (``Assembly``) or its use are of neither; things that are no part of a
    position may stand in fewer rows than parts do (``Rotor``, ``Impeller``).
    """
    rows = [r for r in range(start, grid.height) if grid.filled[r] > 1]
    placed_in = ((column, _placed_rows(grid, column, rows, words)) for column in columns)
    return next(((column, found) for column, found in placed_in if found), None)


def _placed_rows(grid: Grid, column: int, rows: Sequence[int], words: Words) -> dict[int, Placed]:
    """Part and station of the rows by the cells of a column; empty for another column."""
    texts = {row: text for row in rows if (text := grid.merged_text(row, column))}
    if 2 * len(texts) < max(len(rows), 4) or not all(any(map(str.isalpha, t)) for t in texts.values()):
        return {}
    texts = {row: text for row, text in texts.items() if not _says_whole(text, words)}
    things = {row: text for row, text in texts.items() if not _cuts(text, words)}
    found = placed_apart((text for row, text in texts.items() if row not in things), words)
    bearings = _bearings_placed({*things.values()}, {p.station for p in found.values()}, words)
    things = {row: text for row, text in things.items() if text not in bearings}
    found |= bearings
    if _is_machine(grid, column, things, words):
        texts, things = {row: text for row, text in texts.items() if row not in things}, {}
    alone = any(map(side_of, things.values()))  # a part without its position
    if alone or 2 * len(things) >= len(texts) or len({p.side.side for p in found.values()}) < 2:
        return {}
    return {row: found.get(text) or Placed(Side(THING, text), "") for row, text in texts.items()}
