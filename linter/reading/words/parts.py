"""Headings built from parts: what part, which feature of it, what is stated of that feature, in any order.

``shaft fit``, ``Toleranz Gehäusebohrung``, ``rugosité de la portée d'arbre``, ``軸公差``: the words of the trade
(``data/parts.csv``: terms of ISO 286-1, ISO 1101, ISO 5593 and ISO 21920-1 in eight languages, from memory, and common
practice) are cut out of a heading one after the other, and what they name together is looked up
(``data/part_meanings.csv``). A heading with one word that is not known names nothing, and so does one that could name
two parameters.
"""

import re
from bisect import bisect_left
from collections.abc import Iterator
from functools import cache, lru_cache
from itertools import islice, product, takewhile
from pathlib import Path

from attrs import frozen

from linter.model.packaged import columns_of
from linter.model.vocabulary import parameter
from linter.reading.cells.signs import EASTERN
from linter.reading.words.dictionary import dictionary, latin_spellings, plain_spellings, without_links, word_key
from linter.reading.words.limits import IS_LARGEST
from linter.reading.words.mapping import Aspect

_DATA = Path(__file__).resolve().parent / "data"
PARTS = _DATA / "parts.csv"
_LONGEST = 80
_APART = re.compile(r"[ /,:;+&'’`´=|()\[\]<>*·]+")
#: Where the script changes a word ends (``表面粗さRa``, ``C値``).
_SCRIPTS = re.compile(
    r"(?<=[\u3040-\u30ff\u3400-\u9fff])(?=[A-Za-z0-9ø±])|(?<=[A-Za-z0-9ø±])(?=[\u3040-\u30ff\u3400-\u9fff])"
)
#: German compounds are cut inside a word, and so are the languages that set no blanks; no piece of one letter is cut.
_SHORTEST_PIECE, _LONGEST_OF_SIGNS = 3, 8
#: Ends of German plurals, behind a word that is long enough not to be another one with them.
_PLURALS, _LONG_ENOUGH = ("e", "en", "er", "es"), 5
#: Words of one term at most, and ways to understand a heading that are tried.
_MOST_WORDS, _MOST_READINGS = 4, 64
#: Words that say which of several figures of a size it is.
_MODIFIERS: dict[str, Aspect] = {"upper": "upper", "lower": "lower", "largest": "max", "smallest": "min"}
#: Parts that a symbol beside them says more of (``d albero``, ``L0 пружины``); alone they name nothing.
_SAYS_NOTHING = {
    frozenset(said.split())
    for said in (
        "bearing", "shaft", "housing", "spring", "required", "operating", "largest", "limiting", "reference", "rotor",
        "dynamic", "static", "rating", "ambient", "shaft largest", "housing largest", "inside", "outside", "radial",
        "axial", "width", "balance", "smallest",
    )
}  # fmt: skip

#: A word written without its vowels (``jrnl``, ``shldr``).
_CONSONANTS = re.compile(r"[bcdfghjklmnpqrstvwxyz]{3,}")
#: Words that begin what is said of a thing, and no name of it (``with EP additives``).
_SAID_OF_IT = frozenset(("with", "without", "mit", "ohne", "avec", "sans", "con", "sin", "senza", "с", "без"))
_BOTH = re.compile(r"[/&+]")  # between two parts that are both meant

Concepts = frozenset[str]


@frozen
class Named:
    """What a heading names: a parameter and the aspect of it."""

    parameter: str
    aspect: Aspect = "value"


@frozen
class _Meaning:
    named: Named
    required: Concepts
    optional: Concepts
    symbols: Concepts


@cache
def _lexicon() -> dict[str, tuple[Concepts, ...]]:
    """Word key to the concepts that it can name; an empty set for a word that only joins others."""
    table: dict[str, tuple[Concepts, ...]] = {}
    latin: dict[str, str] = {}
    for word, said, language in columns_of(PARTS, "word", "concepts", "language"):
        key, concepts = " ".join(_APART.split(word_key(word))), frozenset(said.split())
        known = table.get(key, ())
        if concepts not in known:
            table[key] = (*known, concepts)
        latin |= {spelling: key for spelling in latin_spellings(word) if language == "ru"}
    for spelling, key in latin.items():
        table.setdefault(spelling, table[key])
    for key, several in list(table.items()):
        for plain in (*plain_spellings(key), *without_links(key)):
            table.setdefault(plain, several)
    return table


@cache
def _meanings() -> tuple[_Meaning, ...]:
    rows = columns_of(_DATA / "part_meanings.csv", "parameter", "aspect", "required", "optional", "symbols")
    return tuple(
        _Meaning(Named(name, aspect), *(frozenset(words.split()) for words in concepts))  # type: ignore[arg-type]
        for name, aspect, *concepts in rows
    )


@cache
def _mixed() -> re.Pattern[str]:
    """The words of the lexicon that are written in two scripts (``o形圈``, ``隅r``), the longest first."""
    mixed = sorted((key for key in _lexicon() if " " not in key and _SCRIPTS.search(key)), key=len, reverse=True)
    return re.compile(rf"(?<![a-z0-9])({'|'.join(map(re.escape, mixed))})(?![a-z0-9])")


def _words(text: str) -> tuple[str, ...]:
    """The words of a text, apart at blanks, signs and where the script changes."""
    pieces = _mixed().split(word_key(text)) if EASTERN.search(text) else [word_key(text)]
    apart = [(piece,) if i % 2 else _APART.split(_SCRIPTS.sub(" ", piece)) for i, piece in enumerate(pieces)]
    return tuple(word for words in apart for word in words if word)


def named_by_parts(text: str) -> Named | None:
    """What a heading without its unit and station names by its parts, or None."""
    return _named(text) if 1 < len(text) <= _LONGEST else None


def is_bearing(text: str) -> bool:
    """Whether a word says bearing and nothing else."""
    return frozenset({"bearing"}) in _of_word(word_key(text)) if 0 < len(text) <= _LONGEST else False


def tells_feature(text: str) -> bool:
    """Whether a word is one of the trade for a part or a feature; a machine is none."""
    said = _of_word(word_key(text)) if len(text) <= _LONGEST and len(text) != 1 and not text.isdigit() else ()
    return any(concepts - {"machine"} for concepts in said)


@lru_cache(maxsize=2**14)
def concepts_said(text: str) -> Concepts:
    """Everything that words of the trade in a text may say, whatever else stands there."""
    said: set[str] = set()
    for word in _words(text) if len(text) <= _LONGEST else ():
        found = _of_word(word)
        if not found and EASTERN.search(word):
            pieces = {word[i:j] for i in range(len(word)) for j in range(i + 2, len(word) + 1)}
            found = tuple(c for piece in pieces for c in _lexicon().get(piece, ()))
        said.update(*found)
    return frozenset(said)


def names_place(text: str) -> bool:
    """Whether a word says a bearing, a shaft, a housing or a seat and nothing else."""
    said = {"bearing", "shaft", "housing", "seat"}
    return 0 < len(text) <= _LONGEST and any(c and c <= said for c in _of_word(word_key(text)))


def is_bearing_seat(text: str) -> bool:
    """Whether words say the seat of a bearing, or its place, and not whether it is on the shaft or in the housing."""
    words = _words(text)
    return 0 < len(words) <= _MOST_WORDS and any(
        "seat" in concepts and concepts <= {"bearing", "seat"} and not unknown
        for concepts, unknown in islice(_readings(words), _MOST_READINGS)
    )


def words_of_signs(text: str) -> list[str]:
    """The words of a text in Chinese or Japanese, the longest that are known first; other signs one by one."""
    lexicon, found, start = _lexicon(), [], 0
    while start < len(text):
        ends = range(min(start + _LONGEST_OF_SIGNS, len(text)), start + 1, -1)
        end = next((end for end in ends if text[start:end] in lexicon), start + 1)
        found.append(text[start:end])
        start = end
    return found


def is_bearing_size(text: str) -> bool:
    """Whether words say dimensions of a bearing, or bearing alone, and nothing else."""
    words = _words(text)
    said = {"bearing", "dimensions"}
    return 0 < len(words) <= 12 and all(any(c <= said for c in _of_word(word)) for word in words)


def is_tolerance_of_bore(text: str) -> bool:
    """Whether words say the tolerance, class or fit of a bore and nothing else."""
    words = _words(text)
    fits = frozenset({"fit", "tolerance", "class"})
    return 1 <= len(words) <= _MOST_WORDS and any(
        not unknown and "bore" in concepts and concepts & fits and concepts <= fits | {"bore", "diameter"}
        for concepts, unknown in islice(_readings(words), _MOST_READINGS)
    )


@cache
def part_of_size(text: str) -> str:
    """``UPPER`` or ``LOWER`` where words say that of a deviation and nothing else (``desv. superior``), or empty."""
    words = _words(text)
    if not (2 if text.isascii() else 1) <= len(words) <= _MOST_WORDS:
        return ""
    read = [said for said, unknown in islice(_readings(words), _MOST_READINGS) if not unknown]
    said = {group for group, word in (("UPPER", "upper"), ("LOWER", "lower")) if {word, "tolerance"} in read}
    return said.pop() if len(said) == 1 else ""


def part_alone(text: str) -> str:
    """``shaft`` or ``housing`` where words say that part (and maybe its seat) and nothing else, or empty."""
    words = _words(text)
    if not 1 <= len(words) <= _MOST_WORDS:
        return ""
    if len(words) == 1 and not (_of_word(words[0]) or _CONSONANTS.fullmatch(words[0]) or text.rstrip().endswith(".")):
        return ""  # ends: a word of its own more likely than one cut short
    read = (concepts for concepts, unknown in islice(_readings(words), _MOST_READINGS) if not unknown)
    said = {concepts - {"seat"} for concepts in read if concepts != {"seat"} and not concepts >= {"shaft", "housing"}}
    return next((part for part in ("shaft", "housing") if said == {frozenset({part})}), "")


def is_pair_of_fits(text: str) -> bool:
    """Whether words say the fits of shaft and housing together."""
    words = _words(text)
    if not 2 < len(words) <= 12 or not _BOTH.search(text):
        return False
    both, fits = frozenset({"shaft", "housing"}), frozenset({"fit", "tolerance", "class"})
    may = both | fits | {"seat", "bearing", "diameter", "bore"}
    return any(
        not unknown and both <= concepts <= may and concepts & fits
        for concepts, unknown in islice(_readings(words), _MOST_READINGS)
    )


@cache
def _named(text: str) -> Named | None:
    words = _words(text)
    if not words or len(words) > 12 or words[0] in _SAID_OF_IT:
        return None
    found: set[Named] = set()
    for concepts, unknown in islice(_readings(words), _MOST_READINGS):
        found |= _of_concepts(_mating(concepts, words[-1]), unknown)
    if not found and len(words) == 1 and EASTERN.search(words[0]):
        for concepts in _cut_anywhere(words[0], _MOST_READINGS):
            found |= _of_concepts(_mating(concepts, words[0]), frozenset())
    return found.pop() if len(found) == 1 else None


def _mating(concepts: Concepts, last: str) -> Concepts:
    """Concepts with a seat for a fit where a word of another thing ends the name (``配合轴径``, not ``轴径配合``)."""
    if "wall" in concepts and not concepts.isdisjoint(("bore", "seat", "bearing", "material")):
        concepts = concepts - {"wall"} | {"housing"}  # 墙板孔, Schildbohrung
    if "fit" not in concepts or not EASTERN.search(last):
        return concepts
    deviation = not concepts.isdisjoint(("upper", "lower"))
    says_more = not concepts <= {"fit", "seat", "shaft", "housing", "bore", "bearing", "tolerance", "class"}
    return concepts - {"fit"} | {"seat"} if deviation or (says_more and not _ends_in_fit(last)) else concepts


@cache
def _ends_in_fit(word: str) -> bool:
    """Whether a Chinese or Japanese word says a fit or a tolerance by its end."""
    fits = {"fit", "tolerance", "class", "kind"}
    lexicon = _lexicon()
    last = next((lexicon[word[start:]] for start in range(len(word)) if word[start:] in lexicon), ())
    return any(not fits.isdisjoint(concepts) for concepts in last)


@cache
def _cut_anywhere(word: str, most: int) -> tuple[Concepts, ...]:
    """What a Chinese or Japanese word may say however it is cut into words of the trade, the longest words first."""
    if not word:
        return (frozenset(),)
    lexicon, found = _lexicon(), dict[Concepts, None]()
    longer = False
    for end in range(len(word), 0, -1):
        heads = lexicon.get(word[:end], ())
        if end == 1 and longer:
            heads = tuple(head for head in heads if not head)  # no word of two signs is cut into them
        longer |= bool(heads)
        rest = _cut_anywhere(word[end:], most) if heads else ()
        found |= dict.fromkeys(a | b for a, b in product(heads, rest))
        if len(found) >= most:
            break
    return tuple(islice(found, most))


def _of_concepts(concepts: Concepts, unknown: Concepts) -> set[Named]:
    """Every parameter that these concepts name, with words left that can only be its symbol."""
    plain = {
        m.named
        for m in _meanings()
        if unknown <= m.symbols and _fits(m, concepts) and (unknown or not _says_nothing(m))
    }
    said = [word for word in _MODIFIERS if word in concepts]
    if plain or len(said) != 1:
        return plain
    rest = concepts - {said[0]}
    aspect = _MODIFIERS[said[0]]
    if aspect in ("upper", "lower"):
        rest -= {"tolerance"}
        if rest in ({"shaft"}, {"housing"}) and "tolerance" in concepts:
            rest |= {"seat"}
    found = set()
    for meaning in _meanings():
        named = meaning.named
        if named.aspect != "value" or not unknown <= meaning.symbols or not _fits(meaning, rest):
            continue
        if not unknown and _says_nothing(meaning):
            continue
        if parameter(named.parameter).kind == "toleranced":
            found.add(Named(named.parameter, aspect))
        elif aspect == "max" and named.parameter.endswith(IS_LARGEST):
            found.add(named)
    return found


def _says_nothing(meaning: _Meaning) -> bool:
    """Whether a meaning holds with its symbol only."""
    return meaning.required in _SAYS_NOTHING


def _fits(meaning: _Meaning, concepts: Concepts) -> bool:
    """Whether the concepts are those of a meaning; the symbol is looked at elsewhere."""
    return meaning.required <= concepts and concepts - meaning.required <= meaning.optional


@cache
def _of_shortened(word: str) -> tuple[Concepts, ...]:
    """What a word cut short or without its vowels says, if it is no station (``front``).

    It is what all the words that it may stand for have in common; a compound (``Turbinenwelle``) is no longer turbine.
    """
    if len(word) < _SHORTEST_PIECE or not word.isalpha() or EASTERN.search(word) or word in dictionary().stations:
        return ()
    longer: list[set[Concepts]] = []
    if len(word) > _SHORTEST_PIECE:
        keys = _single_words()
        begin_so = takewhile(lambda key: key.startswith(word), islice(keys, bisect_left(keys, word), None))
        behind = ((key, [key[len(word) + n :] for n in range(3)]) for key in begin_so)
        longer = [set(_lexicon()[k]) for k, ends in behind if not any(len(e) > 3 and e in _lexicon() for e in ends)]
    if not longer and _CONSONANTS.fullmatch(word):
        longer = [set(said) for said in _without_vowels().get(word, ())]
    return tuple(sorted(set.intersection(*longer), key=sorted)) if longer else ()


@cache
def _single_words() -> tuple[str, ...]:
    return tuple(sorted(key for key in _lexicon() if " " not in key))


@cache
def _without_vowels() -> dict[str, list[tuple[Concepts, ...]]]:
    """Consonants of a word to what the words that have them say."""
    found: dict[str, list[tuple[Concepts, ...]]] = {}
    for key, said in _lexicon().items():
        if key.isascii() and key.isalpha() and key[0] not in "aeiou":
            found.setdefault(re.sub("[aeiou]", "", key), []).append(said)
    return found


def _readings(words: tuple[str, ...]) -> Iterator[tuple[Concepts, Concepts]]:
    """Ways to understand the words: concepts, and words left that may be a symbol (the last one, or one letter)."""
    if not words:
        yield frozenset(), frozenset()
        return
    lexicon = _lexicon()
    for count in range(min(len(words), _MOST_WORDS), 0, -1):
        term = " ".join(words[:count])
        choices = lexicon.get(term) if count > 1 else _of_word(term)
        if not choices and count == 1:
            choices = _of_shortened(term)
        if not choices:
            continue
        after = list(islice(_readings(words[count:]), _MOST_READINGS))
        for chosen, (concepts, unknown) in product(choices, after):
            yield chosen | concepts, unknown
        if count > 1:
            return
    if len(words[0]) <= 4 and words[0].isascii():
        if words[0] == "d" and len(words) == 1:
            yield frozenset({"diameter"}), frozenset()  # Outside D
        for concepts, unknown in islice(_readings(words[1:]), _MOST_READINGS):
            if not unknown:
                yield concepts, frozenset({words[0]})


@cache
def _of_word(word: str) -> tuple[Concepts, ...]:
    """Concepts of one word, cut into pieces where it is a compound; nothing where a piece of it is not known."""
    lexicon = _lexicon()
    if word in lexicon:
        return lexicon[word]
    shortest = 1 if EASTERN.search(word) else _SHORTEST_PIECE
    for end in range(len(word) - 1, shortest - 1, -1):
        head, tail = word[:end], word[end:]
        if head not in lexicon:
            continue
        if shortest > 1 and (tail in ("s", "n") or (tail in _PLURALS and end >= _LONG_ENOUGH)):
            return lexicon[head]
        rest = _of_word(tail) if len(tail) >= shortest else ()
        if not rest and tail[:1] in "sn" and len(tail) > shortest:
            rest = _of_word(tail[1:])
        if not rest and shortest > 1 and len(tail) > _SHORTEST_PIECE:
            rest = _of_shortened(tail) or (_of_shortened(tail[1:]) if tail[0] in "sn" else ())
        if rest:
            return tuple(dict.fromkeys(a | b for a, b in product(lexicon[head], rest)))
    return ()
