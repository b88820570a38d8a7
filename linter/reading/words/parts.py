"""Headings built from parts: what part, which feature of it, what is stated of that feature, in any order.

``shaft fit``, ``Toleranz Gehäusebohrung``, ``rugosité de la portée d'arbre``, ``軸公差``: the words of the trade
(``data/parts.csv``: terms of ISO 286-1, ISO 1101, ISO 5593 and ISO 21920-1 in eight languages, from memory, and common
practice) are cut out of a heading one after the other, and what they name together is looked up. A heading with one
word that is not known names nothing.
"""

import csv
import re
from functools import cache
from itertools import product
from pathlib import Path

from attrs import frozen

from linter.reading.words.dictionary import word_key
from linter.reading.words.mapping import Aspect

_DATA = Path(__file__).resolve().parent / "data" / "parts.csv"
_LONGEST = 80
_APART = re.compile(r"[ /,:;+&'’`´=|]+")
_ONE_BY_ONE = re.compile(r"[\u3040-\u30ff\u3400-\u9fff]")
#: German compounds are cut inside a word, and so are the languages that set no blanks; no piece of one letter is cut.
_SHORTEST_PIECE = 3
_MAY_BE_SAID = {"fillet": {"largest"}, "chamfer": {"smallest"}}


@frozen
class Named:
    """What a heading names: a parameter and the aspect of it."""

    parameter: str
    aspect: Aspect = "value"


@cache
def _lexicon() -> dict[str, frozenset[str]]:
    """Word key to the concepts that it names; none for a word that only joins others."""
    with _DATA.open(encoding="utf-8", newline="") as stream:
        return {word_key(row["word"]): frozenset(row["concepts"].split()) for row in csv.DictReader(stream)}


@cache
def _meanings() -> dict[frozenset[str], Named]:
    """Sets of concepts to what they name."""
    table: dict[frozenset[str], Named] = {}

    def put(named: Named, *alternatives: tuple[str, ...]) -> None:
        for chosen in product(*alternatives):
            table[frozenset(" ".join(chosen).split())] = named

    for side, hole in (("shaft", ()), ("housing", ("bore", "bore seat", "bore diameter", "bore seat diameter"))):
        beside = ("", "bearing")
        seat = ("seat", "seat diameter", *hole)
        put(Named(f"{side}_seat_diameter"), (side,), (*seat, "diameter"), beside)
        toleranced = ("tolerance", "fit", "tolerance class", "fit class", "class", "tolerance fit")
        put(Named(f"{side}_seat_diameter", "class"), (side,), (*seat, "diameter", ""), toleranced, beside)
        put(Named(f"{side}_shoulder_diameter"), (side,), ("shoulder", "shoulder diameter"))
        put(Named(f"{side}_shoulder_diameter", "class"), (side,), ("shoulder", "shoulder diameter"), toleranced)
        put(Named(f"{side}_shoulder_runout"), (side,), ("shoulder runout", "shoulder axial runout"))
        put(Named(f"{side}_fillet_radius"), (side,), ("fillet", "fillet radius"))
        put(Named(f"{side}_fillet_radius"), (side,), ("shoulder fillet", "shoulder fillet radius"))
        for quality in ("roughness", "cylindricity", "runout"):
            put(Named(f"{side}_seat_{quality}"), (side,), (*seat, "", "diameter"), (quality,), beside)
    for side, ring in (("shaft", "inside"), ("housing", "outside")):
        put(Named(f"{side}_seat_diameter", "class"), (f"{ring} ring",), ("fit", "fit class"))
    put(Named("bore_diameter"), ("bearing",), ("bore", "bore diameter", "inside diameter", "inside"))
    put(Named("bore_diameter"), ("inside diameter", "bore diameter"))
    put(Named("outside_diameter"), ("", "bearing"), ("outside diameter",))
    put(Named("outside_diameter"), ("bearing",), ("outside",))
    put(Named("ring_width"), ("bearing", "ring", "bearing ring"), ("width",))
    put(Named("ring_chamfer"), ("", "bearing", "ring", "bearing ring"), ("chamfer", "chamfer radius"))
    return table


def named_by_parts(text: str) -> Named | None:
    """What a heading without its unit and station names by its parts, or None."""
    if not 1 < len(text) <= _LONGEST:
        return None
    concepts: set[str] = set()
    words = _APART.split(word_key(text))
    for index, word in enumerate(words):
        if not word:
            continue
        if word == "d" and index == len(words) - 1 and index:
            found: frozenset[str] | None = frozenset({"diameter"})  # Outside D
        else:
            found = _of_word(word)
        if found is None:
            return None
        concepts |= found
    for concept, said in _MAY_BE_SAID.items():
        if concept in concepts:
            concepts -= said
    return _meanings().get(frozenset(concepts))


@cache
def _of_word(word: str) -> frozenset[str] | None:
    """Concepts of one word, cut into pieces where it is a compound; None where a piece of it is not known."""
    lexicon = _lexicon()
    if word in lexicon:
        return lexicon[word]
    shortest = 1 if _ONE_BY_ONE.search(word) else _SHORTEST_PIECE
    for end in range(len(word) - 1, shortest - 1, -1):
        head, tail = word[:end], word[end:]
        if head not in lexicon:
            continue
        if tail in ("s", "n") and shortest > 1:
            return lexicon[head]
        rest = _of_word(tail) if len(tail) >= shortest else None
        if rest is None and tail[:1] in "sn" and len(tail) > shortest:
            rest = _of_word(tail[1:])
        if rest is not None:
            return lexicon[head] | rest
    return None
