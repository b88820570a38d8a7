"""Whether a seat, shoulder or fillet whose name says no part is the shaft's or the housing's: its table tells.

``Bearing seat A - diameter, Bearing seat A - shoulder diameter``: a shoulder larger than its seat is a shaft's, a
smaller one a housing's. A seat about as large as the bore of the bearing at its position is the shaft's, one like the
outside diameter the housing's; a shoulder nearer to the bore is the shaft's. A class of a hole is the housing's. What
one part states already at a position, another name states of the other part. A word for a seat that the table uses of
one part alone is that part's. What nothing of this tells, or what it
tells in two ways, is not read.
"""

import re
from collections import defaultdict
from collections.abc import Mapping, Sequence

from attrs import frozen

from linter.reading.words.cuts import aspect_cuts
from linter.reading.words.designations import read_designation
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said, part_alone, words_of_signs

PARTS = ("shaft", "housing")
_NUMBER = re.compile(r"[^\d+\-−.,]{0,4}(\d*[.,]?\d+)")
_CLASSED = re.compile(r"(?:[Ø⌀øφΦ]? ?\d[\d.,]* ?)?(?P<letter>JS|js|[D-HJKMNPRd-hjkmnpr])(?:[3-9]|1[0-2])(?: ?\(.*\))?")
_WORD = re.compile(r"[^\W\d_]{2,}")
_SIGN = re.compile("[\u3040-\u30ff\u3400-\u9fff]")
#: Seats differ from the ring they carry by less (seats of bearings, g to p in grades 5 to 7: from memory of ISO 286-2).
_ALIKE = 0.005


@frozen
class Rest:
    """What is left of a name: the position that was in it, the ways to write the rest, the cells of its row."""

    name: str
    station: str
    rests: tuple[str, ...]
    cells: tuple[str, ...] = ()
    #: The part that it is of; empty where the table has to tell it.
    part: str = ""

    @property
    def number(self) -> float | None:
        """The first number of its cells."""
        found = next((match for cell in self.cells if (match := _NUMBER.match(cell))), None)
        return float(found[1].replace(",", ".")) if found else None


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
        if one.part:
            votes[one.rests[0]] |= set(ways)
            continue
        votes[one.rests[0]] |= _other_part(one, ways, stated, words)
        for part in _votes(one, ways, options, sizes.get(one.station, {}), words):
            votes[one.rests[0]].add(part)
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


def _by_told_seats(
    votes: dict[str, set[str]],
    options: Mapping[Rest, Mapping[str, str]],
    sizes: dict[str, dict[str, float]],
    words: Words,
) -> None:
    """Add what seats whose part is told say of the names of their positions of which nothing else tells it."""
    for one, ways in options.items():
        parts = votes[one.rests[0]]
        heading = words.heading(ways.get(next(iter(parts)), "")) if len(parts) == 1 else None
        if heading is not None and heading.parameter.endswith("_seat_diameter") and (number := one.number):
            sizes[one.station].setdefault(heading.parameter, number)
    for one, ways in options.items():
        if not votes[one.rests[0]]:
            votes[one.rests[0]] = _votes(one, ways, options, sizes.get(one.station, {}), words)


def _words_of(one: Rest) -> set[str]:
    """The words of what is left of a name."""
    apart = (piece.casefold() for piece in _WORD.findall(one.rests[0]))
    return {word for piece in apart for word in (words_of_signs(piece) if _SIGN.search(piece) else (piece,))}


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


def _sizes(unknown: Sequence[Rest], known: Sequence[tuple[Rest, Heading]]) -> dict[str, dict[str, float]]:
    """Sizes that are known of each position, by parameter; a bearing that its cells designate has those of its row."""
    found: dict[str, dict[str, float]] = defaultdict(dict)
    for rest in (*unknown, *(rest for rest, _ in known)):
        for cell in rest.cells:
            read = read_designation(cell) if any(map(str.isdigit, cell)) and not _NUMBER.fullmatch(cell) else None
            if read is not None and read.strength == "certain" and read.bore_diameter and read.outside_diameter:
                found[rest.station].setdefault("bore_diameter", read.bore_diameter)
                found[rest.station].setdefault("outside_diameter", read.outside_diameter)
    for rest, heading in known:
        number = rest.number
        if number and heading.aspect in ("value", "max", "min"):
            found[rest.station].setdefault(heading.parameter, number)
    return found


def _other_part(one: Rest, ways: Mapping[str, str], stated: set[tuple[str, str]], words: Words) -> set[str]:
    """The other part where one states the same of itself already (``Lagersitz A Ra`` beside ``Lagerbohrung A Ra``)."""
    headings = {part: words.heading(text) for part, text in ways.items()} if len(ways) == len(PARTS) else {}
    taken = {part for part, h in headings.items() if h is not None and (one.station, h.parameter) in stated}
    return set(PARTS) - taken if len(taken) == 1 else set()


def _votes(
    one: Rest, ways: Mapping[str, str], others: Mapping[Rest, Mapping[str, str]], sizes: Mapping[str, float],
    words: Words,
) -> set[str]:  # fmt: skip
    """The parts that the cells of a name and the sizes beside it speak for."""
    heading = words.heading(next(iter(ways.values()))) if ways else None
    if heading is None or not heading.parameter.endswith("_diameter"):
        return set()
    if len(ways) == 1 and heading.parameter.endswith("_shoulder_diameter"):
        return set(ways)  # shoulder OD
    found = {"housing" if m["letter"][0].isupper() else "shaft" for c in one.cells if (m := _CLASSED.fullmatch(c))}
    number = one.number if heading.aspect in ("value", "max", "min") else None
    if not number:
        return found
    inner = sizes.get("bore_diameter") or sizes.get("shaft_seat_diameter") or 0.0
    outer = sizes.get("outside_diameter") or sizes.get("housing_seat_diameter") or 0.0
    if heading.parameter.endswith("_seat_diameter"):
        alike = {part for part, size in zip(PARTS, (inner, outer), strict=True) if abs(number - size) <= _ALIKE * size}
        shoulders = _shoulders(one.station, others, words)
        return found | alike | {"shaft" if size > number else "housing" for size in shoulders}
    if heading.parameter.endswith("_shoulder_diameter") and 0 < inner < number < outer:
        found.add("shaft" if number - inner < outer - number else "housing")
    return found


def _shoulders(station: str, others: Mapping[Rest, Mapping[str, str]], words: Words) -> list[float]:
    """Diameters of the shoulders of a position of which nothing says the part."""
    found = []
    for other, ways in others.items():
        heading = words.heading(next(iter(ways.values()))) if ways and other.station == station else None
        if heading is not None and heading.parameter.endswith("_shoulder_diameter") and (size := other.number):
            found.append(size)
    return found
