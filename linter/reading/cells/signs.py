"""Signs as people type them: folding for matching only, kinds of blank, and words that say a value is missing.

Folding is by a table of our own. The compatibility form of Unicode alone would turn the wrong ordinal sign of ``20 ºC``
into a letter and leave the diameter signs and dashes apart. Case is never folded here: ``H7`` and ``h7`` are different
things. A report shows the raw text, never the folded one. All tables on this page are common practice.
"""

import re
import unicodedata
from typing import Literal

from attrs import frozen

#: Longest text that is read as a value; a longer one is refused, so that reading time stays bounded.
LONGEST_TEXT = 200
#: A sign of Chinese or Japanese.
EASTERN = re.compile(r"[\u3040-\u30ff\u3400-\u9fff]")
#: Umlauts as those write them who have none.
UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})

_BLANKS = (
    "\t\n\v\f\r\u0085\u00a0\u1680\u2000\u2001\u2002\u2003"
    "\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u2028\u2029\u202f\u205f\u3000"
)
_INVISIBLE = "\u00ad\u200b\u200c\u200d\u200e\u200f\u2060\ufeff\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"

_SIGNS: dict[str, str] = {
    "Ø": "⌀ø\u03c6\u03a6\u03d5∅Ф",
    "µ": "\u03bc",
    "-": "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe63\ufe58",
    "+": "\ufe62",
    "x": "×✕⨯х",
    "°": "º˚",
    '"': "″“”„‟",
    "'": "′’‘ʹʼ`´",
    "/": "\u2044\u2215",
    "…": "\u22ef",
    "·": "⋅∙•・\u0387\uff65",
    "~": "\u301c\u223c",
    "A": "А",
    "B": "В",
    "E": "Е",
    "K": "К\u212a",
    "M": "М",
    "H": "Н",
    "O": "О",
    "P": "Р",
    "C": "С",
    "T": "Т",
    "X": "Х",
    "a": "а",
    "c": "с",
    "e": "е",
    "k": "к",
    "o": "о",
    "p": "р",
    "m": "м",
    "h": "һ",
    "s": "ѕ",
    "j": "ј",
    "°C": "℃",
    "°F": "℉",
    "mm": "㎜",
    "cm": "㎝",
    "µm": "㎛",
    "km": "㎞",
    "kg": "㎏",
    "mg": "㎎",
    "MPa": "㎫",
    "kPa": "㎪",
    "GPa": "㎬",
    "Hz": "㎐",
    "kHz": "㎑",
}
_TABLE: dict[int, str] = {ord(source): target for target, sources in _SIGNS.items() for source in sources}
_TABLE.update({code: chr(code - 0xFEE0) for code in range(0xFF01, 0xFF5F)})
_TABLE.update({ord(sign): " " for sign in _BLANKS})
_TABLE.update({ord(sign): "" for sign in _INVISIBLE})
_SPACES = re.compile(r" {2,}")
_NARROW_KANA = re.compile("[\uff66-\uff9f]+")


@frozen
class ReadError:
    """Why a text could not be understood; returned, never raised, so that the rest of a table is still read.

    Attributes
    ----------
    code : str
        A short stable word, for example ``ambiguous-number``.
    read : str
        The raw text.
    expected : str
        What would have been understood.
    sentence : str
        What is wrong, in one sentence without the place.
    """

    code: str
    read: str
    expected: str
    sentence: str


def shown(text: str, longest: int = 60) -> str:
    """A raw text for a message: shortened, with control and direction signs made visible."""
    cut = text if len(text) <= longest else text[:longest] + "…"
    return "".join(
        sign
        if sign.isprintable() or sign == "\u00a0"
        else f"\\u{ord(sign):04x}"
        if ord(sign) > 0xFF
        else repr(sign)[1:-1]
        for sign in cut
    )


def fold(text: str) -> str:
    """A text with look-alike signs folded, for matching only.

    Composes accents, makes full-width forms and half-width kana, dashes, primes, diameter and degree signs and
    Cyrillic look-alikes of Latin letters one, drops invisible signs, makes every run of blanks one space and trims.
    Case stays.
    """
    if not text.isascii():
        if _NARROW_KANA.search(text):
            text = _NARROW_KANA.sub(lambda kana: unicodedata.normalize("NFKC", kana[0]), text)
        text = unicodedata.normalize("NFC", text).translate(_TABLE)
    elif not text.isprintable():
        text = text.translate(_TABLE)
    text = text.strip()
    return _SPACES.sub(" ", text) if "  " in text else text


_IS_FIGURE = re.compile(r"[+-]?[0-9]+[.,][0-9]+")


def is_figure(text: str) -> bool:
    """Whether a text is a number with a decimal sign and nothing else: no word of a heading, a part or a version."""
    return _IS_FIGURE.fullmatch(text) is not None


_CASELESS = str.maketrans("нвтф", "hbtø")


def caseless(text: str) -> str:
    """A folded text with its case put aside, for words of a language; never for classes, symbols or units.

    Four small Cyrillic letters look like no Latin sign but their capitals do; they follow their capitals here.
    """
    return fold(text).casefold().translate(_CASELESS)


def is_blank(text: str) -> bool:
    """Whether nothing visible stands in the text."""
    return not text or not fold(text)


Missing = Literal["empty", "not applicable", "not known", "see above"]

_MISSING: dict[Missing, str] = {
    "not applicable": "-|--|---|/|n/a|n.a.|na|#n/a|n. a.|not applicable|entfällt|entf."
    "|nicht zutreffend|sans objet|s.o|no aplica"
    "|n. d. a.|non applicabile|не применимо|не применяется|該当なし|なし|不适用|无",
    "not known": "?|??|???|…|...|tbd|tbc|t.b.d.|t.b.c.|unknown|not known|none|null|nan|variable|open|offen|unbekannt"
    "|à définir"
    "|inconnu|por definir|desconocido|da definire|sconosciuto|не известно|неизвестно|нет данных|未定|不明|待定|未知",
    "see above": "*|\"|''|,,|〃|ditto|do.|idem|id.|dito|s. o.|wie oben|siehe oben"
    "|see above|as above|voir ci-dessus|ver arriba|vedi sopra"
    "|то же|см. выше|同上|上同",
}
_MISSING_WORDS: dict[str, Missing] = {
    caseless(word): state for state, words in _MISSING.items() for word in words.split("|")
}


def missing_state(text: str) -> Missing | None:
    """What a text says about an absent value, or None where it states something.

    ``empty``: nothing stands there. ``not applicable``: a dash, ``N/A`` and the like. ``not known``: ``TBD``, ``?``,
    ``null``, an ellipsis. ``see above``: a ditto mark, or the asterisk of a family table that stands for the generic
    row. The case of these words carries no meaning. ``none`` and ``open`` are also choices of some parameters: match
    choices first.
    """
    if len(text) > 40:
        return "empty" if is_blank(text) else None
    folded = fold(text)
    if not folded:
        return "empty"
    return _MISSING_WORDS.get(caseless(folded))
