"""Positions that the names of one table show by themselves: what is left of the names comes again with each of them.

``frontBrgOD, frontSeatRa, rearBrgOD, rearSeatRa``; ``rod_sup_ancho, rod_sup_modelo, rod_inf_ancho, rod_inf_modelo``;
``轴承位1直径, 轴承位1圆柱度, 轴承位2直径, 轴承位2圆柱度``. Names are cut into pieces at blanks, signs, capitals
and changes of script. A run of pieces that can be left out of several names, so that other names stand there with
another run in the same place, is a position; which words those are does not matter. A word for a part, a feature, a
limit, a state or a unit is none, and what is left has to name several parameters of a seat or bearing.
"""

import re
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence

from attrs import evolve

from linter.model.vocabulary import parameter
from linter.reading.cells.han import simplified
from linter.reading.cells.signs import EASTERN
from linter.reading.cells.units import known_unit
from linter.reading.words.bearing_words import names_bearing
from linter.reading.words.headings import Heading, Told, Words
from linter.reading.words.left_out import APART, SIDES, Cut, Frame, cuts_of, joined
from linter.reading.words.objects import objects_of
from linter.reading.words.own_stations import is_no_position
from linter.reading.words.part_columns import may_say_seat
from linter.reading.words.part_evidence import PARTS
from linter.reading.words.parts import (
    concepts_said,
    is_bearing,
    names_place,
    part_alone,
    tells_feature,
)
from linter.reading.words.places import ENDS, is_no_place
from linter.reading.words.run_sorts import sort_of_run
from linter.reading.words.told_parts import Rest, of_parts, with_part

#: Names that are looked at, signs of a name, positions of a table.
_MOST_NAMES, _LONGEST_NAME, _MOST_POSITIONS = 1000, 120, 6
#: Different parameters that come again with positions of a known sort, and with any two words.
_ENOUGH, _ENOUGH_OF_ANY = 2, 3
#: Parameters whose words are used of other parts of machines too: one or two of them make no table of seats.
COMMON = frozenset(
    ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "speed_max", "radial_load", "axial_load",
     "temperature_min", "temperature_max", "rotor_mass", "bearing_span", "contact_angle")
)  # fmt: skip
_TWO_CAPITALS = re.compile("[A-ZА-ЯЁ]{2}")
_ARTICLES = frozenset(
    ("of", "the", "at", "to", "for", "and", "or", "in", "on", "de", "la", "le", "les", "du", "des", "el", "los", "del",
     "y", "et", "e", "di", "da", "il", "lo", "der", "die", "das", "am", "im", "an", "auf", "für", "und", "zu", "bei",
     "mit", "von", "в", "на", "и", "для", "по", "от", "к", "с", "の", "的", "和", "与", "及", "と")
)  # fmt: skip
#: What words of the trade say that lend their name to a place of a machine as well (impeller, free, fixed).
_LENT = frozenset(("rotor", "free", "floating", "locating", "retention"))
#: Parts and features that are no place, not even with a word for a side beside them.
_OF_PARTS = frozenset(
    ("bearing", "shaft", "housing", "seat", "bore", "ring", "inside", "outside", "shoulder", "fillet", "chamfer",
     "closure", "tolerance", "fit", "class", "groove", "sleeve", "nut", "washer")
)  # fmt: skip
#: What says a seat or a shoulder and leaves its part open (``Bearing shoulder``), and what it may say beside that.
_OF_NO_PART = frozenset(("seat", "shoulder"))
_MAY_SAY = _OF_NO_PART | {"bearing", "diameter", "abutment"}
#: The drive end, which is an article elsewhere, and its other end.
_DRIVE, _OTHER_END = "de", ("nde", "ode")


def positions_inside(
    names: Iterable[str], words: Words, cells: Mapping[str, tuple[str, ...]] | None = None
) -> dict[str, Told]:
    """What is left of each name and the position in it, for names that several positions share.

    Parameters
    ----------
    names : iterable of str
        The names of one table.
    words : Words
        The names that are understood.
    cells : mapping of str to tuple of str, optional
        What stands beside each name.

    Returns
    -------
    dict of str to Told
        By name; empty where the names show no positions.
    """
    shortest = {True: 3, False: 4}
    listed = [n for n in dict.fromkeys(names) if shortest[EASTERN.search(n) is not None] <= len(n) <= _LONGEST_NAME]
    listed = [name for name in listed if any(map(str.isalpha, name))]
    listed = listed[:_MOST_NAMES]
    frames: dict[Frame, dict[str, Cut]] = defaultdict(dict)
    objects = objects_of([joined(name) for name in listed])
    spelled: dict[str, str] = {}
    for name in listed:
        for frame, cut in cuts_of(name, objects):
            run = _spelled(cut.run, spelled)
            frames[frame].setdefault(run, evolve(cut, run=run))
    shared = {frame: cuts for frame, cuts in frames.items() if 2 <= len(cuts) <= 3 * _MOST_POSITIONS}
    found = _positions(shared, words)
    found += tuple(plain for run in found if (plain := _without_bearing(run)) not in found)
    by_name: dict[str, list[Cut]] = {}
    for name in listed if found else ():
        cuts = ((cut, _spelled(cut.run, spelled)) for _, cut in cuts_of(name, objects))
        if own := [evolve(cut, run=run) for cut, run in cuts if run in found]:
            stems = {plain for cut in own if (plain := _without_bearing(cut.run)) != cut.run}
            by_name[name] = [cut for cut in own if cut.run not in stems]
    return _told(by_name, words, cells or {})


def _without_bearing(run: str) -> str:
    """A position without the word for the bearing behind it (``inner end bearing``): it may stand so in other names."""
    before, _, last = run.rpartition(" ")
    return before if before and is_bearing(last) else run


def _spelled(run: str, spelled: dict[str, str]) -> str:
    """A run as its table spells it first (``Outboard``, ``outboard``); a letter or two may mean more."""
    return spelled.setdefault(run.casefold(), run) if len(run) > 2 else run


def _told(cuts: Mapping[str, Sequence[Cut]], words: Words, cells: Mapping[str, tuple[str, ...]]) -> dict[str, Told]:
    """What is left of each name: what is known of it, by itself or as of the part that the table tells."""
    told: dict[str, Told] = {}
    known: list[tuple[Rest, Heading]] = []
    unknown: list[Rest] = []
    for name, of_name in cuts.items():
        cut, rest = next(
            (
                (cut, rest)
                for cut in of_name
                for rest in cut.rests
                if (heading := words.heading(rest)) is not None and _is_of_part(cut, rest, heading.parameter)
            ),
            (of_name[0], next(rest for rest in reversed(of_name[0].rests) if rest != of_name[0].apart)),
        )
        told[name] = Told(rest, _stated(cut.run, words))
        one = Rest(name, told[name].station, cut.rests, cells.get(name, ()), cut.part.strip("?") if cut.apart else "")
        if (heading := words.heading(rest)) is not None:
            known.append((one, heading))
        elif not any(map(names_bearing, cut.rests)):
            unknown.append(one)
    parts = of_parts(unknown, known, words) if unknown else {}
    return told | {name: Told(rest, told[name].station) for name, rest in parts.items()}


def _is_of_part(cut: Cut, rest: str, name: str) -> bool:
    """Whether what a rest without the part before it says is of that part (``主軸 前側軸受部 外径`` is no ring's)."""
    if not cut.part or rest != cut.apart:
        return True
    return name.startswith(("shaft_", "housing_") if cut.part == "?" else f"{cut.part}_")


def _stated(run: str, words: Words) -> str:
    return words.station_said(run) or run


def _lent(run: str, pieces: Sequence[str]) -> str | None:
    """The sort of position that words of the trade are which lend their name to a place (``libre``, ``lado_carga``).

    Empty where a part stands beside the word for a side, None where nothing of this stands there.
    """
    if is_no_position(run):
        return None
    if ENDS.fullmatch(run.removesuffix(" bearing")):
        return "known"
    said = frozenset().union(*map(concepts_said, pieces)) if all(map(tells_feature, pieces)) else frozenset()
    if said and said <= {"upper", "lower"}:
        return "limit"
    whole = concepts_said(run)
    if (said and said <= _LENT) or ("side" in whole and len(pieces) == 1 and whole - {"side"} <= _LENT):
        return "words"
    beside = [piece for piece in pieces if piece.casefold() not in SIDES]
    if 0 < len(beside) < len(pieces):
        of_part = frozenset().union(*map(concepts_said, beside)) & _OF_PARTS
        inner = any(piece.casefold() in _ARTICLES for piece in (pieces[0], pieces[-1]))
        return "" if of_part or inner or any(map(is_no_position, beside)) else "words"
    return "end" if run.casefold() == _DRIVE else None


def _may_be(run: str, words: Words, inside: bool = True) -> str:
    """The sort of position that a run of pieces is where it says nothing else that is known; or empty.

    A small word that only ever ends names, with a capital (``diamEjeDel``), is none: it is one cut short.
    """
    if (sort := sort_of_run(run)) != "words":
        return sort
    groups = words.groups(run)
    if groups:
        return "limit" if {"UPPER", "LOWER"}.issuperset(groups) else ""
    run = simplified(run) or run
    pieces = APART.split(run)
    if (lent := _lent(run, pieces)) is not None:
        return lent
    if _is_known(run, pieces, words):
        return "known"
    at_end = not inside and len(pieces) == 1 and run.casefold() in _ARTICLES and run[0].isupper()
    if at_end:
        return "words"
    cut_short = _TWO_CAPITALS.fullmatch(run) is not None  # that some language cuts a word of the trade to
    if not cut_short and any(piece.casefold() in _ARTICLES for piece in (pieces[0], pieces[-1])):
        return ""
    if known_unit(run) is not None or is_no_position(run) or part_alone(run) or names_place(run):
        return ""
    if not cut_short and any(is_no_place(p) or names_place(p) or is_no_position(p) for p in (run, *pieces)):
        return ""
    return "" if words.heading(run) is not None else "words"


def _is_known(run: str, pieces: Sequence[str], words: Words) -> bool:
    """Whether a run is a known position, maybe with a word for a place (``левая опора``), and no part beside one."""
    if len(pieces) > 1 and any(map(part_alone, pieces)):
        return False
    if words.names.station(run):
        return True
    heading = words.heading(run) if len(pieces) > 1 and not any(map(is_bearing, pieces)) else None
    return heading is not None and heading.parameter == "station" and heading.station != ""


def _alike(one: str, other: str) -> bool:
    """Whether two sorts of positions can stand for each other in a name."""
    return (one == other and one != "end") or {one, other} <= {"known", "words"} or {one, other} <= {"roman", "letter"}


def _are_ends(one: str, other: str) -> bool:
    """Whether two runs are the drive end and its other end."""
    ends = {one.casefold(), other.casefold()}
    return _DRIVE in ends and bool(ends & {*_OTHER_END})


def _ends_in_side(run: str) -> bool:
    """Whether a word for a side stands at an end of a run (``drive side``)."""
    pieces = APART.split(run.casefold())
    return len(pieces) > 1 and (pieces[0] in SIDES or pieces[-1] in SIDES)


def _pairs(
    frames: dict[Frame, dict[str, Cut]], words: Words
) -> tuple[dict[str, str], dict[tuple[str, str], list[Frame]]]:
    """The sort of each run, and the names that pairs of runs of one sort share."""
    sorts: dict[str, str] = {}
    inside = {run for frame, cuts in frames.items() if frame[1] for run in cuts}
    together: dict[tuple[str, str], list[Frame]] = defaultdict(list)
    for frame, cuts in frames.items():
        codes = {run for run in cuts if not frame[0] and len(run) == 2 and run.isalpha()}
        for run in cuts:
            as_code = any(run != code and run[0] == code[0] for code in codes) if run in codes else False
            sorts[run] = sorts.get(run) or _may_be(run, words, run in inside) or ("words" if as_code else "")
        runs = sorted(run for run in cuts if sorts[run])
        if len(runs) > _MOST_POSITIONS:
            continue
        for k, one in enumerate(runs):
            for other in runs[k + 1 :]:
                if _alike(sorts[one], sorts[other]) or _are_ends(one, other):
                    together[one, other].append(frame)
    return sorts, together


def _positions(frames: dict[Frame, dict[str, Cut]], words: Words) -> tuple[str, ...]:
    """The runs that come again with the same rests of names: those that explain most; or none."""
    sorts, together = _pairs(frames, words)
    known: dict[Frame, str] = {}
    best: tuple[int, int, bool, int, tuple[str, ...]] = (0, 0, False, 0, ())
    for (one, other), shared in sorted(together.items()):
        if len(shared) < _ENOUGH:
            continue
        for frame in shared:
            if frame not in known:
                known[frame] = _parameter(frames[frame][one], words)
        said = {known[frame] for frame in shared} - {""}
        if _are_enough(said, sorts[one], sorts[other]):
            with_sides = _ends_in_side(one) and _ends_in_side(other)
            best = max(best, (len(said), len(shared), with_sides, -len(one) - len(other), (one, other)))
    if not best[4]:
        return ()
    group = [*best[4]]
    counts = dict.fromkeys(sorts, 0)
    for (one, other), shared in together.items():
        for a, b in ((one, other), (other, one)):
            if a in best[4] and b not in group:
                counts[b] = max(counts[b], len(shared))
    group += [run for run, count in sorted(counts.items()) if count >= max(_ENOUGH, 0.5 * best[1])]
    return tuple(group) if len(group) <= _MOST_POSITIONS else ()


def _are_enough(said: set[str], one: str, other: str) -> bool:
    """Whether what comes again shows positions of bearings: more of it where the words themselves say nothing."""
    if "limit" in (one, other):
        of_bearing = "bearing_designation" in said and len(said) >= _ENOUGH  # which has no deviations
        return of_bearing or sum(parameter(name).kind != "toleranced" for name in said) >= _ENOUGH
    if "words" in (one, other):
        return len(said) >= _ENOUGH_OF_ANY and bool(said - COMMON)
    return len(said) >= _ENOUGH


def _parameter(cut: Cut, words: Words) -> str:
    """The parameter of a station that the rest of a name says, without a station of its own; or empty."""
    for rest in cut.rests:
        heading = words.heading(rest)
        if heading is not None and not _is_of_part(cut, rest, heading.parameter):
            continue
        if heading is not None and heading.entry.level == "station" and not heading.station:
            return "bearing_designation" if is_bearing(rest) else heading.parameter
        if heading is None and names_bearing(rest):
            return "bearing_designation"
        if heading is None and (part := part_alone(words.names.split_unit(rest)[0])):
            return f"{part}_seat_diameter"  # Eje LB: Ø17 k6
        if heading is None and not cut.seat and may_say_seat(rest, PARTS[1]):
            return "housing_seat_diameter"  # Alésage palier avant: 52 H6
    of_no_part = any(_OF_NO_PART & (said := concepts_said(rest)) and said <= _MAY_SAY for rest in cut.rests)
    of_seat = (cut.seat or of_no_part) and with_part(Rest(cut.run, "", cut.rests), PARTS[0], words)
    heading = words.heading(of_seat) if of_seat else None
    return heading.parameter if heading is not None else ""
