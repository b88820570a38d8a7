"""Words for a position by their form, whatever the machine beside it is: ``lato giunto``, ``出力側``, ``Walzenseite``.

Every language has a word for a side or an end, and a machine lends it its name; no list holds every machine. A part of
the bearing arrangement (shaft, housing, ring, shoulder), a limit or a state beside that word names no position.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from linter.reading.cells.signs import caseless
from linter.reading.words.dictionary import MOST_REMEMBERED, dictionary, group_key, word_key
from linter.reading.words.parts import tells_feature

_SIGNS = r"\u3040-\u30ff\u3400-\u9fff"
#: The word for a side before what lies there, behind it, and glued to it (common practice).
_BEFORE = re.compile(
    rf"(?:{'|'.join(map(caseless, ('lato', 'lado', 'côté', 'coté', 'сторона', 'со стороны', 'extremo', 'estremità')))}"
    r"|extrémité)[ _-]+(?P<of>.+)|(?:seite|side|end)[ _-]+(?P<letter>[a-z])"
)
_BEHIND = re.compile(r"(?P<of>[^\W_]{2,20})(?:(?:[ _-]?(?:seite|seitig))|[ _-](?:side|end))", re.IGNORECASE)
#: Ends of a shaft in a machine: ``inner side`` may be that of a ring, ``inner end`` is none of its.
ENDS = re.compile(
    r"(?:inner|outer|inboard|outboard|upper|lower|left|right|free|fixed|(?:non[ -]?)?drive|driven) end", re.IGNORECASE
)
_GLUED = re.compile(rf"(?P<of>[{_SIGNS}]{{1,8}}|[A-Z0-9]{{1,2}})(?:側|侧|端)")
#: Words for shaft and hole before a word for a side that name the part and no place (``軸側`` beside ``ハウジング側``).
_PARTS_OF_SIDES = ("軸", "轴", "穴", "孔", "シャフト")
_SIDEWARD = re.compile(r"[ _-]?seitig$", re.IGNORECASE)
#: What is said beside a side and is no place of a machine.
_NO_PLACE = frozenset(
    word_key(word)
    for word in (
        "one", "each", "both", "either", "any", "same", "low", "high", "wide", "narrow", "thick", "thin", "large",
        "small", "long", "short", "open", "closed", "other", "dead", "week", "inner", "outer", "inside", "outside",
        "beide", "beid", "jede", "eine", "ein", "beider", "innen", "außen", "aussen", "schmal", "breit", "interno",
        "esterno", "interior", "exterior", "interna", "externa", "intérieur", "extérieur", "intérieure", "extérieure",
        "ambos", "entrambi", "ogni", "cada", "deux", "chaque", "un", "uno", "una", "une", "внутренняя", "наружная",
        "обе", "каждая", "両", "片", "各", "内", "外", "一", "二", "两", "双", "单", "每", "大", "小", "高", "低", "正",
        "反",
        "de", "del", "di", "du",
    )
)  # fmt: skip
#: Parts of a machine that lend their name to a side of it, and shafts that are named by what they drive.
_ALSO_PLACES = frozenset(["端盖", "泵体", "泵壳", "机身", "机架", "缸体", "箱盖", "フレーム", "エンドカバー", "主軸台"])
_SHAFT_OF = re.compile("(?P<machine>泵|.{2,6})[轴軸]")
_LONGEST = 40
_MOST_WORDS = 4

_OF_MACHINE = re.compile(
    rf"(?P<place>(?:[{_SIGNS}]{{1,8}}?|[A-Z0-9]{{1,2}})(?:側|侧|端))の?[ _]?(?P<rest>(?![面部子盖蓋盤]).*)"
)
_BEARING_FIRST = re.compile(
    r"(?P<place>[前后後左右上下]|[A-Z1-9](?=[轴軸])|[1-9][号番])(?P<bearing>轴承|軸受)の?(?P<rest>(?![間间]).*)"
)
#: An adjective of place with the word for a bearing, as cases and prepositions change them, to how it is stated.
_STEMS = {
    caseless(stem): said
    for stem, said in (
        ("передн", "передний"), ("задн", "задний"), ("лев", "левый"), ("прав", "правый"), ("верхн", "верхний"),
        ("нижн", "нижний"), ("vorder", "vorderes Lager"), ("hinter", "hinteres Lager"), ("link", "linkes Lager"),
        ("recht", "rechtes Lager"), ("ober", "oberes Lager"), ("unter", "unteres Lager"),
    )
}  # fmt: skip
_CASES = "ий ый его ого ему ому ей ой юю ую яя ая ем ом им ым e er es en em"
_BEARINGS = (
    "подшипник подшипника подшипнику подшипником подшипнике опора опоры опору опоре опорой lager lagers lagern "
    "wälzlager wälzlagers kugellager kugellagers lagerung lagerstelle"
)
_BESIDE = "под у для на в am auf für beim bei im zum des der das dem"
#: A side inside a name, with the one word that says what lies there (``Resalte lado bomba diámetro``).
_INSIDE = re.compile(
    r"(?P<before>[^,;:]+?)[ ,]+(?P<place>(?:lato|lado|côté|coté) [^ ,]+|[^\W_]{2,20}seite)[ ,]+(?P<behind>[^ ,].*)",
    re.IGNORECASE,
)


def _any_of(words: str) -> str:
    return "|".join(re.escape(caseless(word)) for word in words.split())


_INFLECTED = re.compile(
    rf"[ ,]*(?:\b(?:{_any_of(_BESIDE)}) ){{0,2}}\b(?P<stem>{'|'.join(_STEMS)})(?:{_any_of(_CASES)}) "
    rf"(?:{_any_of(_BEARINGS)})\b"
)


#: Adjectives of place with their endings by gender and case, and the ending that they are told with.
_GENDERS = tuple(
    (re.compile(pattern, re.IGNORECASE), ending)
    for pattern, ending in (
        (r"(передн|задн|верхн|нижн)(?:ий|яя|ее|его|ей|юю|ем|им|ему)", "ий"),
        (r"(лев|прав)(?:ый|ая|ое|ого|ой|ую|ом|ым|ому)", "ый"),
        (r"(izquierd|derech|delanter|traser|sinistr|destr)[oa]", "o"),
        (r"((?:sup|inf|ant|post)[eé]rieur|droit)e?", ""),
        (r"(vorder|hinter|link|recht|ober|unter)e[rsnm]?", "e"),
    )
)


@lru_cache(maxsize=MOST_REMEMBERED)
def uninflected(word: str) -> str:
    """A word, an adjective of place in one form whatever its gender and case (``левая``, ``левое``: ``левый``)."""
    for pattern, ending in _GENDERS:
        if found := pattern.fullmatch(word):
            return f"{found[1]}{ending}"
    return word


@lru_cache(maxsize=MOST_REMEMBERED)
def place_said(text: str) -> str:
    """The position that a text says by its form, as it is stated; or empty."""
    text = text.strip()
    if not 2 <= len(text) <= _LONGEST:
        return ""
    if found := _GLUED.fullmatch(text):
        return "" if is_no_place(found["of"]) or found["of"] in _PARTS_OF_SIDES else text
    if ENDS.fullmatch(text):
        return text
    before, _, last = text.rpartition(" ")
    if last.casefold() in ("bearing", "brg") and (word_key(before) in dictionary().stations or place_said(before)):
        return text  # inner end bearing
    if found := _BEHIND.fullmatch(text):
        stated = _SIDEWARD.sub("seite", text)
        return "" if is_no_place(found["of"]) else stated[:1].upper() + stated[1:] if stated != text else text
    if found := _BEFORE.fullmatch(caseless(text)):
        if found["letter"]:
            return text if text[-1].isupper() else ""
        words = re.split(r"[ _'’-]+", found["of"])
        plain = all(word.isalpha() or len(word) == 1 for word in words) and len(words) <= _MOST_WORDS
        plain = plain and words[-1] not in ("ø", "φ", "⌀")  # of the size, not of the place
        return text if plain and not any(map(is_no_place, words[:1])) and not any(map(_is_part, words)) else ""
    return ""


def place_cuts(text: str) -> Iterator[tuple[str, str]]:
    """Ways to cut a name into a rest and a position that no blank sets apart, or that stands inside the name."""
    if (found := _OF_MACHINE.fullmatch(text)) and found["rest"] and place_said(found["place"]):
        yield found["rest"], found["place"]
    if (found := _BEARING_FIRST.fullmatch(text)) and found["rest"]:
        place = found["place"]
        said = place + found["bearing"] if place in "前后後左右上下" else place.rstrip("号番")
        yield found["bearing"] + found["rest"], said
        yield found["rest"].lstrip(), said
    before, comma, behind = text.rpartition(",")
    if comma and before.strip() and behind[:1].strip():
        yield before.strip(), behind.strip()
    if (found := _INSIDE.fullmatch(text)) and place_said(found["place"]):
        yield f"{found['before']} {found['behind']}", found["place"]
    plain = caseless(text)
    if len(plain) == len(text) and (found := _INFLECTED.search(plain)):
        said = _STEMS[found["stem"]]
        rest = f"{text[: found.start()]} {text[found.end() :].lstrip(' ,:')}".strip(" ,:")
        if rest:
            yield rest, said


_SIDE = re.compile(rf"(?:lado|lato) .+|.+ {caseless('сторона')}")


def says_side(text: str) -> bool:
    """Whether a text has the word for a side with what lies there, or what that bearing does (``lado libre``)."""
    return _SIDE.fullmatch(caseless(text.strip())) is not None


def is_no_place(word: str) -> bool:
    """Whether a word is said beside a side and names no place, or says a part, a feature or a limit."""
    return word_key(word) in _NO_PLACE or _is_part(word)


def _is_part(word: str) -> bool:
    """Whether a word says a part, a feature or a characteristic, or a limit of it."""
    key = group_key(word)
    if word in _ALSO_PLACES or ((shaft := _SHAFT_OF.fullmatch(word)) and not tells_feature(shaft["machine"])):
        return False
    return tells_feature(word) or key in dictionary().groups or key in dictionary().group_words
