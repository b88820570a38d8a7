"""Proposals for a name mapping: which parameter a word of a table may mean, with confidence and reason.

Likeness is measured by rapidfuzz on folded words of every language. A proposal is for a person to look at: it is
written as a file to check and save, and nothing is ever applied from it silently.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from functools import cache, lru_cache

from attrs import evolve, frozen

from linter.model.vocabulary import parameter, vocabulary
from linter.reading.cells.signs import fold, shown
from linter.reading.cells.units import LONGEST_TEXT, dimension_of, known_unit, split_heading_unit
from linter.reading.words.cuts import aspect_cuts, station_cuts
from linter.reading.words.dictionary import NO_PARAMETER, heading_words, word_key
from linter.reading.words.mapping import Aspect
from linter.reading.words.names import Names

#: Most candidates shown for one word.
MOST_CANDIDATES = 3
#: Likeness (0 to 100) below which a candidate is not worth a look.
LOWEST = 60.0
#: Confidence from which a proposal is written in force, and the lead it needs over the next candidate.
WRITTEN, NEARLY = 0.9, 0.03
#: Likeness (0 to 100) that each word of a name and of the known one needs to a word of the other, and all together.
SAME_WORD, ONE_WORD = 75.0, 95.0
#: Most ways to cut one word that are looked at.
MOST_CORES = 12

# Short forms that drawing offices use inside names (common practice), spelled out before words are compared.
_SHORT = {
    "dia": "diameter", "diam": "diameter", "ø": "diameter", "brg": "bearing", "hsg": "housing", "hous": "housing",
    "temp": "temperature", "rad": "radius", "len": "length", "lg": "length", "tol": "tolerance", "cyl": "cylindricity",
    "rough": "roughness", "ro": "runout", "vel": "speed", "spd": "speed", "mat": "material", "matl": "material",
    "lub": "lubrication", "shldr": "shoulder", "sh": "shoulder", "sft": "shaft", "shft": "shaft", "qty": "count",
    "wellen": "welle", "ax": "axial", "no": "number", "dwg": "drawing", "visc": "viscosity", "freq": "speed",
    "brng": "bearing", "bor": "bore", "wdth": "width", "ld": "load", "prld": "preload", "lubr": "lubrication",
    "drehz": "drehzahl", "bohr": "bohrung", "geh": "gehäuse",
    "lagerst": "lagerstelle", "baugrp": "baugruppe", "schmierg": "schmierung", "temper": "temperatur",
    "ales": "alésage", "alés": "alésage", "roult": "roulement", "logemt": "logement", "vit": "vitesse",
    "rot": "rotation", "lubrif": "lubrification", "diám": "diámetro", "aloj": "alojamiento", "máx": "máxima",
    "alb": "albero", "allogg": "alloggiamento", "cusc": "cuscinetto", "диам": "диаметр", "макс": "максимальная",
    "подш": "подшипника", "отв": "отверстия", "нар": "наружный", "внутр": "внутренний",
}  # fmt: skip
_LOADS = {"load", "ld", "last", "kraft", "force", "charge", "effort", "carga", "carico"}
_JOINS = frozenset(
    ("of", "the", "for", "de", "du", "des", "la", "le", "del", "di", "da", "della", "dell", "der", "die", "das", "dem",
     "von", "для", "под", "на")
)  # fmt: skip
_WORD = re.compile(r"[^\W_]+")


@frozen
class Candidate:
    """One parameter that a word may mean.

    Attributes
    ----------
    parameter : str
        Parameter of the vocabulary.
    confidence : float
        0 to 1: likeness of the words, less where the unit does not fit or another parameter is as near.
    reason : str
        Half a sentence for the person who checks.
    aspect : str
        What of the parameter the word names, as in :class:`linter.reading.words.names.Match`.
    station : str or None
        Station that the word carries.
    unit : str or None
        Unit text that the word carries.
    """

    parameter: str
    confidence: float
    reason: str
    aspect: Aspect = "value"
    station: str | None = None
    unit: str | None = None


@frozen
class Proposal:
    """A word of the table and what it may mean, best candidate first; no candidates where nothing comes near."""

    word: str
    candidates: tuple[Candidate, ...]


@cache
def _pool() -> tuple[tuple[str, ...], tuple[tuple[str, str], ...]]:
    """Keys of every known word, and (parameter, word) of each."""
    pool: dict[str, tuple[str, str]] = {}
    for name in vocabulary():
        pool.setdefault(word_key(name), (name, name))
    for target, word, language in heading_words():
        if target in ("STATION", "MACHINE"):
            pool.setdefault(word_key(word), (target.lower(), word))
        elif target not in NO_PARAMETER and language != "symbol":
            pool.setdefault(word_key(word), (target, word))
    return tuple(pool), tuple(pool.values())


def _plain(text: str) -> str:
    """A word for comparing by likeness: joints made one, short forms spelled out."""
    words = _WORD.findall(word_key(text))
    short = _SHORT | {"rad": "radial"} if _LOADS.intersection(words) else _SHORT
    return " ".join(short.get(word, word) for word in words)


@frozen
class _Core:
    """One way to read a word: its core, the aspect and the station around it."""

    text: str
    aspect: Aspect = "value"
    station: str | None = None


def _cores(word: str, names: Names) -> list[_Core]:
    """Ways to read a word as a core with an aspect and a station around it; the whole word first."""
    cores = [_Core(word), *(_Core(rest, aspect) for rest, aspect in aspect_cuts(word))]
    for core in tuple(cores):
        for rest, piece, _strict in station_cuts(core.text):
            station = names.station(piece)
            if station is not None and len(rest) >= 3:
                cores.append(_Core(rest, core.aspect, station))
    return cores[:MOST_CORES]


def _core_and_unit(word: str) -> tuple[str, str]:
    """A word without its unit, and the unit; here a blank before it is enough (``Spd RPM``)."""
    core, unit = split_heading_unit(word)
    before, _, last = core.rpartition(" ")
    return (before, last) if not unit and before and len(last) > 1 and known_unit(last) else (core, unit)


def _candidates(word: str, names: Names) -> tuple[Candidate, ...]:
    core, unit = _core_and_unit(word)
    best: dict[str, tuple[float, Candidate]] = {}
    for piece in _cores(core, names):
        for name, known, likeness in _alike(piece):
            score, candidate = _scored(name, known, likeness, piece, unit)
            if score >= LOWEST and score > best.get(name, (0.0, None))[0]:
                best[name] = (score, candidate)
    order = list(vocabulary())  # of two alike the one that most tables state
    found = [candidate for _, candidate in best.values()]
    found.sort(key=lambda each: (-each.confidence, order.index(each.parameter)))
    return tuple(_doubted(found)[:MOST_CANDIDATES])


def _alike(piece: _Core) -> Iterator[tuple[str, str, float]]:
    """Parameters whose words are like a core, with the word and its likeness."""
    for name, known, likeness in _like(_plain(piece.text)):
        if piece.aspect in ("value", "unit") or parameter(name).kind == "toleranced":
            yield name, known, likeness


@lru_cache(maxsize=4096)
def _like(wanted: str) -> tuple[tuple[str, str, float], ...]:
    from rapidfuzz import fuzz, process

    if len(wanted) < 2:
        return ()
    keys, targets = _pool()
    found: list[tuple[str, str, float]] = []
    for scorer, weight in ((fuzz.ratio, 1.0), (fuzz.token_sort_ratio, 0.98), (fuzz.token_set_ratio, 0.85)):
        for _, likeness, index in process.extract(wanted, keys, scorer=scorer, limit=12, score_cutoff=LOWEST / weight):
            name, known = targets[index]
            if name in ("machine", "station") and scorer is fuzz.token_set_ratio:
                continue  # the bearing is part of many names
            found.append((name, known, likeness * weight))
    return tuple(found)


def _word_by_word(text: str, known: str) -> bool:
    """Whether each word of both has its like in the other: ``rotor shoulder`` is no ``outer shoulder``."""
    from rapidfuzz import fuzz

    one, other = ([word for word in _plain(t).split() if word not in _JOINS] for t in (text, known))
    if len(one) != len(other):
        return fuzz.ratio("".join(one), "".join(other)) > ONE_WORD  # Pre-load force
    return all(
        max(fuzz.ratio(a, b) for b in there) > SAME_WORD and a[:1] in {b[:1] for b in there}
        for here, there in ((one, other), (other, one))
        for a in here
    )


def _scored(name: str, known: str, score: float, piece: _Core, unit: str) -> tuple[float, Candidate]:
    """A candidate with its score: more where the unit fits, less where it does not."""
    wanted = parameter(name).unit
    dimension = dimension_of(wanted) if wanted else None
    stated = known_unit(unit) if unit else None
    place, fits, reason = piece.station, None, f"like “{known}”"
    if stated and stated.dimension == dimension:
        score, reason, fits = min(100.0, score + 3), f"{reason}; the unit {unit} fits", unit
    elif stated:
        score, reason = score - 30, f"{reason}; the unit {unit} does not fit"
    if (name in ("machine", "station") and piece.station) or not _word_by_word(piece.text, known):
        score = min(score, 100 * WRITTEN - 1)
    letter = known_unit(place) if place and not unit else None
    if letter and letter.dimension == dimension:  # Prld N
        reason = f"{reason}; {place} can be a unit or a station"
        place, fits, score = None, place, min(score, 100 * WRITTEN - 1)
    return score, Candidate(name, round(score / 100, 2), reason, piece.aspect, place, fits)


def _doubted(found: list[Candidate]) -> list[Candidate]:
    """Candidates, best first; where the second is nearly as near, none is sure enough to be in force."""
    near = [each for each in found[1:] if found[0].confidence - each.confidence < NEARLY]
    if not near:
        return found
    lowered = round(min(found[0].confidence, WRITTEN - 0.01), 2)
    reason = f"{found[0].reason}; {near[0].parameter} is nearly as near"
    first = evolve(found[0], confidence=lowered, reason=reason)
    return [first, *(evolve(each, confidence=min(each.confidence, lowered)) for each in found[1:])]


def propose(table_words: Iterable[str], names: Names) -> list[Proposal]:
    """Candidates for every word of a table that is not understood.

    Parameters
    ----------
    table_words : iterable of str
        Names as they stand in the table; those that ``names`` understands or that belong to the layout are left out.
    names : Names
        The names that are understood already.

    Returns
    -------
    list of Proposal
        In the order of the table, each word once.
    """
    proposals = []
    for word in dict.fromkeys(table_words):
        if not fold(word) or len(word) > LONGEST_TEXT or names.find(word) or names.groups(word):
            continue
        if not any(sign.isalpha() for sign in word):
            continue
        proposals.append(Proposal(word, _candidates(word, names)))
    return proposals


def open_positions(proposals: Iterable[Proposal]) -> Iterator[Proposal]:
    """The proposals with none for a position or a machine in force: for a table whose positions are read already."""
    for proposal in proposals:
        yield evolve(
            proposal,
            candidates=tuple(
                evolve(c, confidence=min(c.confidence, WRITTEN - 0.01)) if c.parameter in ("station", "machine") else c
                for c in proposal.candidates
            ),
        )


def quoted(text: str) -> str:
    """A TOML basic string."""
    escaped = "".join(
        f"\\{sign}" if sign in '"\\' else sign if sign.isprintable() else f"\\u{ord(sign):04X}"
        if ord(sign) < 0x10000 else f"\\U{ord(sign):08X}"
        for sign in text
    )  # fmt: skip
    return f'"{escaped}"'


def _entry(candidate: Candidate) -> str:
    """The right side of a line of the mapping."""
    parts = {"parameter": candidate.parameter}
    if candidate.station:
        parts["station"] = candidate.station
    if candidate.unit:
        parts["unit"] = candidate.unit
    if candidate.aspect != "value":
        parts["aspect"] = candidate.aspect
    if len(parts) == 1:
        return quoted(candidate.parameter)
    return "{" + ", ".join(f"{key} = {quoted(value)}" for key, value in parts.items()) + "}"


def proposal_toml(proposals: Sequence[Proposal], table: str = "", written: float = WRITTEN) -> str:
    """A name mapping to check and save.

    Parameters
    ----------
    proposals : sequence of Proposal
        From :func:`propose`.
    table : str
        Name of the table, for the first line.
    written : float
        Confidence from which a line is in force; every other candidate stands in a comment.

    Returns
    -------
    str
        TOML text that the name mapping reader accepts. Words that are repeated after folding are in force once.
    """
    lines = [
        f"# Proposed names{' for ' + shown(table) if table else ''}.",
        "# Check every line; a line behind # is not in force.",
        "",
        "[names]",
    ]
    taken: set[str] = set()
    for proposal in proposals:
        key = fold(proposal.word)
        best = proposal.candidates[0] if proposal.candidates else None
        in_force = best is not None and best.confidence >= written and key not in taken
        lines.append("")
        if best is None:
            lines.append("# nothing comes near; name a parameter, or leave the quotes empty to leave the name out")
            lines.append(f'# {quoted(proposal.word)} = ""')
        for candidate in proposal.candidates:
            head = "" if in_force and candidate is best else "# "
            lines.append(
                f"{head}{quoted(proposal.word)} = {_entry(candidate)}  "
                f"# {round(100 * candidate.confidence)} %, {shown(candidate.reason, 200)}"
            )
        if in_force:
            taken.add(key)
    return "\n".join(lines) + "\n"
