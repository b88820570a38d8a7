"""Whether a seat, shoulder or fillet whose name says no part is the shaft's or the housing's: its table tells.

``Bearing seat A - diameter, Bearing seat A - shoulder diameter``: a shoulder larger than its seat is a shaft's, a
smaller one a housing's. A seat about as large as the bore of the bearing at its position is the shaft's, one like the
outside diameter the housing's; a shoulder nearer to the bore is the shaft's. A class of a hole is the housing's. What
one part states already at a position, another name states of the other part. A word for a seat that the table uses of
one part alone is that part's. What nothing of this tells, or what it tells in two ways, is not read. Names down a
column, along a row and headings of columns are asked in the same way.
"""

import re
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence

from attrs import field, frozen

from linter.reading.cells.signs import EASTERN
from linter.reading.words.cuts import aspect_cuts
from linter.reading.words.headings import Heading, Told, Words
from linter.reading.words.part_evidence import (
    PARTS,
    RINGS,
    number_of,
    numbers_of,
    part_of_class,
    part_of_shoulder,
    rings_of,
    same_sizes,
)
from linter.reading.words.parts import concepts_said, part_alone, words_of_signs

_WORD = re.compile(r"[^\W\d_]{2,}")
#: What a name has to say to be of a seat or shoulder of some part, and what it may not say.
_OF_SEATS = frozenset(("seat", "shoulder"))
_OTHERS = frozenset(
    ("shaft", "housing", "bore", "ring", "fillet", "undercut", "cage", "seal", "spring", "rotor", "hub", "impeller")
)
_LONGEST = 80
Sizes = dict[str, dict[str, tuple[float, ...]]]


@frozen
class Rest:
    """What is left of a name: the position that was in it, the ways to write the rest, the cells of its row."""

    name: str
    station: str
    rests: tuple[str, ...]
    cells: tuple[str, ...] = ()
    #: The part that it is of; empty where the table has to tell it.
    part: str = ""
    #: Whether the cells are those of a column, one a row, and are compared with others row by row.
    column: bool = False
    #: Its sizes: the first number of a name's cells, or one a row.
    sizes: tuple[float, ...] = field(init=False, eq=False)

    @sizes.default
    def _sizes(self) -> tuple[float, ...]:
        if self.column:
            return tuple(numbers_of(self.cells))
        return tuple(filter(None, (number_of(cell) for cell in self.cells)))[:1]


def with_part(rest: Rest, part: str, words: Words) -> str:
    """The rest of a name together with the word for a part, where that names a parameter of it; or empty."""
    for behind in reversed(rest.rests):
        for text in (f"{part} {behind}", f"{part} seat {behind}"):
            heading = words.heading(text)
            if heading is not None and not heading.station and heading.parameter.startswith(part):
                return text
    return ""


def limit_of_part(rest: Rest, words: Words) -> str:
    """The rest of a name that says a part and a limit and nothing else (``JNL_MIN``), with the word for its size."""
    for text in rest.rests:
        for core, aspect in aspect_cuts(text):
            part = part_alone(core) if aspect in ("max", "min") else ""
            if (
                part
                and (heading := words.heading(f"{part} seat diameter {aspect}")) is not None
                and heading.aspect == aspect
            ):
                return f"{part} seat diameter {aspect}"
    return ""


def parts_of_names(
    names: Iterable[str], words: Words, cells: Mapping[str, tuple[str, ...]], told: Mapping[str, Told]
) -> dict[str, Told]:
    """The names of one table, in which no positions stand, that mean something only with the part that it tells.

    ``Rugosité Ra portée`` beside ``Rugosité Ra alésage``, ``Spallamento sede`` beside ``Spallamento albero``.

    Parameters
    ----------
    names : iterable of str
        Names down a column or along a heading.
    words : Words
        The names that are understood.
    cells : mapping of str to tuple of str
        What stands beside or below each name.
    told : mapping of str to Told
        Names in which a position was found; they are left alone.

    Returns
    -------
    dict of str to Told
        By name; what nothing tells is not among them.
    """
    order = [name for name in names if name not in told and 2 < len(name) <= _LONGEST]
    all_of = {name: Rest(name, "", (name,), cells.get(name, ())) for name in order}
    headings = {name: words.heading(name) for name in order}
    known = [(all_of[name], h) for name, h in headings.items() if h is not None and not h.station]
    unknown = [one for name, one in all_of.items() if headings[name] is None and may_be_of_part(one, words)]
    if not unknown or not any(heading.parameter.startswith(PARTS) for _, heading in known):
        return {}
    return {name: Told(rest, "") for name, rest in of_parts(unknown, known, words).items()}


def may_be_of_part(one: Rest, words: Words) -> bool:
    """Whether a name speaks of a seat or shoulder, says no part, and means something of either."""
    said = concepts_said(one.rests[0])
    if not said & _OF_SEATS or said & _OTHERS or part_alone(one.rests[0]):
        return False
    return all(with_part(one, part, words) for part in PARTS)


def of_parts(unknown: Sequence[Rest], known: Sequence[tuple[Rest, Heading]], words: Words) -> dict[str, str]:
    """The rests of names together with the part that the table tells, by name.

    Parameters
    ----------
    unknown : sequence of Rest
        Names without their positions that mean nothing by themselves.
    known : sequence of (Rest, Heading)
        Those that mean something.
    words : Words
        The names that are understood.

    Returns
    -------
    dict of str to str
        Names that stay open are not among them.
    """
    options = {
        one: {part: text for part in PARTS if one.part in ("", part) and (text := with_part(one, part, words))}
        for one in unknown
    }
    limits = {one: text for one in unknown if (text := limit_of_part(one, words))}
    known = [*known, *((one, heading) for one, text in limits.items() if (heading := words.heading(text)))]
    sizes = _sizes(unknown, known)
    stated = {(one.station, heading.parameter) for one, heading in known if heading.aspect == "value"}
    votes: dict[str, set[str]] = defaultdict(set)
    for one, ways in options.items():
        said = set(ways) if one.part else _said_beside(one)
        if not said:
            said = _other_part(one, ways, stated, words) | set(_votes(one, ways, options, sizes[one.station], words))
        votes[one.rests[0]] |= said
    _by_words(votes, [*options], known)
    _by_told_seats(votes, options, sizes, words)
    of_family: dict[str, set[str]] = defaultdict(set)
    for one, ways in options.items():
        family = _family(ways, words)
        if len(ways) == len(PARTS) or family == "shoulder":  # a shoulder with an outside diameter has one way only
            of_family[family] |= votes.get(one.rests[0], set())
    result = {one.name: text for one, text in limits.items()}
    for one, ways in options.items():
        family = _family(ways, words)
        own = votes.get(one.rests[0]) or of_family[family]
        if not own and family in ("shoulder", "fillet"):  # a shoulder and its fillet are of the part of the seat beside
            own = of_family["shoulder"] or of_family["seat"]
        if len(own) == 1 and (way := ways.get(next(iter(own)))):
            result[one.name] = way
    return result


def _said_beside(one: Rest) -> set[str]:
    """The part that the words beside a name say (``spallamento albero``); none where they say several."""
    texts = (cell for cell in one.cells if number_of(cell) is None) if not one.column else ()
    said = frozenset().union(*map(concepts_said, texts)) & {*PARTS}
    return set(said) if len(said) == 1 else set()


def _by_told_seats(
    votes: dict[str, set[str]],
    options: Mapping[Rest, Mapping[str, str]],
    sizes: Sizes,
    words: Words,
) -> None:
    """Add what seats whose part is told say of the names of their positions of which nothing else tells it."""
    for one, ways in options.items():
        parts = votes[one.rests[0]]
        heading = words.heading(ways.get(next(iter(parts)), "")) if len(parts) == 1 else None
        if heading is not None and heading.parameter.endswith("_seat_diameter") and one.sizes:
            sizes[one.station].setdefault(heading.parameter, one.sizes)
    for one, ways in options.items():
        if not votes[one.rests[0]]:
            votes[one.rests[0]] = _votes(one, ways, options, sizes[one.station], words)


def _words_of(one: Rest) -> set[str]:
    """The words of what is left of a name."""
    apart = (piece.casefold() for piece in _WORD.findall(one.rests[0]))
    return {word for piece in apart for word in (words_of_signs(piece) if EASTERN.search(piece) else (piece,))}


def _by_words(votes: dict[str, set[str]], open_: Sequence[Rest], known: Sequence[tuple[Rest, Heading]]) -> None:
    """Add the parts that the words for a seat tell of names of which nothing else does."""
    told = [(one, parts) for one in open_ if len(parts := votes[one.rests[0]]) == 1]
    tied = _words_of_one_part([*((one, heading.parameter) for one, heading in known), *_as_seats(told)])
    for one in open_:
        if not votes[one.rests[0]]:
            votes[one.rests[0]] |= {tied[word] for word in _words_of(one) & tied.keys()}


def _as_seats(told: Sequence[tuple[Rest, set[str]]]) -> list[tuple[Rest, str]]:
    """Names whose part the table has told, with the seat of that part."""
    return [(one, f"{part}_seat_diameter") for one, parts in told for part in parts]


def _words_of_one_part(known: Sequence[tuple[Rest, str]]) -> dict[str, str]:
    """Words for a seat that the table uses of one part alone, though it speaks of both (``portée``, ``alésage``)."""
    said: dict[str, set[str]] = {part: set() for part in PARTS}
    for one, name in known:
        for part in PARTS:
            said[part] |= _words_of(one) if name.startswith(f"{part}_seat_") else set()
    if not all(said.values()):
        return {}
    apart = {part: said[part] - said[other] for part, other in (PARTS, PARTS[::-1])}
    return {word: part for part, several in apart.items() for word in several if "seat" in concepts_said(word)}


def _family(ways: Mapping[str, str], words: Words) -> str:
    """What of a part a name is about: seat, shoulder, fillet."""
    heading = words.heading(next(iter(ways.values()))) if ways else None
    return heading.parameter.split("_")[1] if heading is not None else ""


def _sizes(unknown: Sequence[Rest], known: Sequence[tuple[Rest, Heading]]) -> Sizes:
    """Sizes that are known of each position, by parameter; a bearing that its cells designate has those of its row."""
    found: Sizes = defaultdict(dict)
    bearings = [(rest, heading.parameter == "bearing_designation") for rest, heading in known]
    for rest, named in (*((rest, False) for rest in unknown), *bearings):
        rings = [ring for cell in rest.cells if (ring := rings_of(cell, named and rest.column)) is not None]
        if rings and (not rest.column or len(rings) == len(rest.cells)):
            for name, sizes in zip(RINGS.values(), zip(*rings, strict=True), strict=True):
                found[rest.station].setdefault(name, sizes if rest.column else sizes[:1])
    for rest, heading in known:
        if rest.sizes and heading.aspect in ("value", "max", "min"):
            found[rest.station].setdefault(heading.parameter, rest.sizes)
    return found


def _other_part(one: Rest, ways: Mapping[str, str], stated: set[tuple[str, str]], words: Words) -> set[str]:
    """The other part where one states the same of itself already (``Lagersitz A Ra`` beside ``Lagerbohrung A Ra``)."""
    headings = {part: words.heading(text) for part, text in ways.items()} if len(ways) == len(PARTS) else {}
    taken = {part for part, h in headings.items() if h is not None and (one.station, h.parameter) in stated}
    return set(PARTS) - taken if len(taken) == 1 else set()


def _votes(
    one: Rest, ways: Mapping[str, str], others: Mapping[Rest, Mapping[str, str]],
    sizes: Mapping[str, tuple[float, ...]], words: Words,
) -> set[str]:  # fmt: skip
    """The parts that the cells of a name and the sizes beside it speak for."""
    heading = words.heading(next(iter(ways.values()))) if ways else None
    if heading is None or not heading.parameter.endswith("_diameter"):
        return set()
    if len(ways) == 1 and heading.parameter.endswith("_shoulder_diameter"):
        return set(ways)  # shoulder OD
    found = {part for cell in one.cells if (part := part_of_class(cell))}
    if one.sizes and heading.aspect in ("value", "max", "min"):
        rings = [sizes.get(RINGS[part]) or sizes.get(f"{part}_seat_diameter") or () for part in PARTS]
        if heading.parameter.endswith("_seat_diameter"):
            found |= _of_seat(one.sizes, rings, _shoulders(one.station, others, words))
        elif heading.parameter.endswith("_shoulder_diameter"):
            found |= _of_shoulder(one.sizes, rings)
    return found


def _of_seat(
    sizes: Sequence[float], rings: Sequence[Sequence[float]], shoulders: Sequence[Sequence[float]]
) -> set[str]:
    """The parts of which seats as large as rings are, or smaller or larger than their shoulders."""
    alike = {part for part, ring in zip(PARTS, rings, strict=True) if same_sizes(sizes, ring)}
    pairs = [pair for others in shoulders if len(others) == len(sizes) for pair in zip(sizes, others, strict=True)]
    return alike | {"shaft" if shoulder > size else "housing" for size, shoulder in pairs}


def _of_shoulder(sizes: Sequence[float], rings: Sequence[Sequence[float]]) -> set[str]:
    """The parts of which shoulders between two rings are; none where one may be of either."""
    if {len(ring) for ring in rings} != {len(sizes)}:
        return set()
    told = {part_of_shoulder(*of_row) for of_row in zip(sizes, *rings, strict=True)}
    return told if "" not in told else set()


def _shoulders(station: str, others: Mapping[Rest, Mapping[str, str]], words: Words) -> list[tuple[float, ...]]:
    """Diameters of the shoulders of a position of which nothing says the part."""
    found = []
    for other, ways in others.items():
        heading = words.heading(next(iter(ways.values()))) if ways and other.station == station else None
        if heading is not None and heading.parameter.endswith("_shoulder_diameter") and other.sizes:
            found.append(other.sizes)
    return found
