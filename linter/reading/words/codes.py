"""Codes of a parameter list that the comments beside them tell: ``La_v_DW | 30 | mm | Welle Lagersitz vorn``.

A name that is one word and not known means what a comment beside it names: a diameter only where a letter of the code
says that it is one, for the length of a seat bears the same comment. Where comments say positions, the piece of the
codes that goes with each of them (``v``, ``h``) says it in the codes without a comment too, and so does the letter that
tells the shaft's from the housing's (``DW``, ``DG``).
"""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence

from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading, Told, Words
from linter.reading.words.left_out import joined
from linter.reading.words.parts import concepts_said, is_bearing

_MOST_NAMES, _LONGEST = 1000, 40
_BRACKET = re.compile(r"\s*[(（][^()（）]*[)）]$")
_DIAMETER = re.compile(r"[dDØ⌀φ]|[dD][A-Z\d]{1,2}|[dD](?:ia|iam|urchm|iameter|m|mr)")
#: What designation is cut to in codes (common practice).
_CUT_SHORT = frozenset(("Bez", "Bezeichn", "desig", "Desig", "des", "Des", "sig", "Sig"))
_OF_RING = ("bore_diameter", "outside_diameter")
_KINDS = ("number", "toleranced")

#: Name, what stands beside it, and the comment of its row.
Row = tuple[str, tuple[str, ...], str]
#: A piece of a name and where it stands.
_Piece = tuple[int, str]


def codes_told(rows: Sequence[Row], words: Words) -> dict[str, Told]:
    """What the codes of a list mean by the comments beside them.

    Parameters
    ----------
    rows : sequence of (str, tuple of str, str)
        Each name with the other cells of its row, and the comment there.
    words : Words
        The names that are understood, with what the names themselves show.

    Returns
    -------
    dict of str to Told
        By name; empty where the comments tell nothing.
    """
    rows = [row for row in rows[:_MOST_NAMES] if 1 < len(row[0]) <= _LONGEST and not re.search(r"\s", row[0])]
    rows = [row for row in rows if any(map(str.isalpha, row[0]))]
    meant: dict[str, tuple[Heading, str]] = {}
    for name, _, comment in rows:
        if (named := _commented(name, comment, words)) is not None:
            meant[name] = named
    places = _places({name: heading.station for name, (heading, _) in meant.items()})
    of_name = {name: heading.station or _own_place(name, heading, words) for name, (heading, _) in meant.items()}
    once = Counter((heading.parameter, heading.aspect, of_name[name]) for name, (heading, _) in meant.items())
    told: dict[str, Told] = {}
    parts = _letters(meant, places)
    for name, cells, comment in rows:
        heading = words.heading(name)
        if name in meant and (heading is None or _says_more(heading, meant[name][0])):
            said, text = meant[name]
            if once[said.parameter, said.aspect, of_name[name]] == 1:
                told[name] = Told(text, of_name[name], by_comment=True)
            continue
        place = next((piece for piece in _pieces(name) if piece in places), None)
        if place is not None and (rest := _rest(name, place[1], (*cells, comment), parts, words)):
            told[name] = Told(rest, places[place])
    return told


def _commented(name: str, comment: str, words: Words) -> tuple[Heading, str] | None:
    """What a comment names, where it is a name, and the text that does."""
    if not comment or words.groups(comment):
        return None
    for text in dict.fromkeys((comment, _BRACKET.sub("", comment))):
        if (heading := words.heading(text)) is not None:
            break
    else:
        return None
    designates = heading.parameter == "bearing_designation" and "designation" in concepts_said(text)
    if not designates and heading.entry.kind not in _KINDS:
        return None
    pieces = [piece for piece, _ in joined(name) if len(piece) == 1 or not words.station_said(piece)]
    of_diameter = heading.parameter.endswith("_diameter") and heading.aspect == "value"
    if of_diameter and "diameter" not in concepts_said(text) and not any(map(_DIAMETER.fullmatch, pieces)):
        return None
    return heading, text


def _says_more(own: Heading, commented: Heading) -> bool:
    """Whether a comment says more than a code: the part of a bore (``D_bore_F``: housing bore), which speed it is."""
    of_seat = commented.parameter.endswith("_seat_diameter") and commented.aspect == own.aspect == "value"
    of_speeds = own.parameter.startswith("speed_") and commented.parameter.startswith("speed_")
    return ((own.parameter in _OF_RING and of_seat) or of_speeds) and not own.own_unit


def _own_place(name: str, heading: Heading, words: Words) -> str:
    """The position that the names of the list show in a code, where what it means is a position's."""
    own = words.told.get(name)
    return own.station if own is not None and heading.entry.level == "station" else ""


def _places(stations: Mapping[str, str]) -> dict[_Piece, str]:
    """The position that a piece of codes says: it stands there in all codes of that position and in none of another.

    Where it stands counts from the beginning or from the end: ``R`` behind a name says another thing than before one.
    """
    of_place: dict[str, list[set[_Piece]]] = defaultdict(list)
    for name, station in stations.items():
        if station:
            of_place[station].append({*_pieces(name)})
    if len(of_place) < 2:
        return {}
    found: dict[_Piece, str] = {}
    for station, names in of_place.items():
        others = set().union(*(pieces for other, lists in of_place.items() if other != station for pieces in lists))
        own = set.intersection(*names) - others
        if len({piece for _, piece in own}) != 1:
            return {}
        found |= dict.fromkeys(own, station)
    return found


def _pieces(name: str) -> list[_Piece]:
    """The pieces of a name with where they stand, from its beginning and from its end."""
    pieces = [piece for piece, _ in joined(name)]
    return [*enumerate(pieces), *((k - len(pieces), piece) for k, piece in enumerate(pieces))]


def _letters(meant: Mapping[str, tuple[Heading, str]], places: Mapping[_Piece, str]) -> dict[str, str]:
    """The letter of a code that says the shaft, and the one that says the housing, where one alone tells them apart."""
    found: dict[str, set[str]] = {"shaft": set(), "housing": set()}
    said = {piece for _, piece in places}
    of_part = {
        part: [
            [piece for piece, _ in joined(name) if piece not in said]
            for name, (heading, _) in meant.items()
            if heading.parameter == f"{part}_seat_diameter"
        ]
        for part in found
    }
    for one in of_part["shaft"]:
        for other in of_part["housing"]:
            for a, b in _differ(one, other):
                found["shaft"].add(a)
                found["housing"].add(b)
    told = {letters.pop(): part for part, letters in found.items() if len(letters) == 1}
    return told if len(told) == len(found) else {}


def _differ(one: Sequence[str], other: Sequence[str]) -> Iterator[tuple[str, str]]:
    """The letters that tell two codes apart, where they differ by one letter alone."""
    if len(one) == len(other):
        apart = [(a, b) for a, b in zip(one, other, strict=True) if a != b]
        if len(apart) == 1 and len(apart[0][0]) == len(apart[0][1]):
            letters = [(a, b) for a, b in zip(*apart[0], strict=True) if a != b]
            yield from letters if len(letters) == 1 else ()


def _rest(name: str, place: str, cells: tuple[str, ...], parts: Mapping[str, str], words: Words) -> str:
    """What a code with the piece of a position says without it, where that is known; or empty."""
    own = words.heading(name)
    if own is not None and own.entry.level == "machine":
        return ""
    pieces = [piece for piece, _ in joined(name) if piece != place]
    if _designates(pieces, cells):
        return "bearing designation"
    told = [parts.get(piece, piece) for piece in pieces]
    for text in (" ".join(pieces), *(" ".join(told[k:]) for k in range(len(told)) if told != pieces)):
        said = words.heading(text)
        if said is not None and not said.station and said.entry.level == "station":
            return text
    return ""


def _designates(pieces: Sequence[str], cells: tuple[str, ...]) -> bool:
    """Whether a designation stands beside a code, beyond doubt or beside words for a bearing or for its name."""
    found = [strength for cell in cells if (strength := designation_strength(cell)) != "no"]
    if len(found) != 1:
        return False
    words = [*pieces, *(word for cell in cells for word in cell.split())]
    said = any(is_bearing(word) or "designation" in concepts_said(word) or word in _CUT_SHORT for word in words)
    return found[0] == "certain" or said
