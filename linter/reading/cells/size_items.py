"""The signs of a toleranced size, cut from left to right: numbers with their signs, classes, units, limit words.

The text is gone through once, so time grows with its length only.
"""

import re
from typing import Literal

from attrs import frozen

from linter.reading.cells.numbers import Decimal, decimal_evidence, read_number
from linter.reading.cells.signs import ReadError, shown
from linter.reading.cells.units import known_unit

EXPECTED = "a size such as 7.5 h5, 7.5 +0.012/+0.004, 7.5 ±0.01 or 7.495…7.500"

Kind = Literal["", "diameter", "radius", "sphere", "square", "chamfer", "thread"]

#: A pair of limits further apart than this part of the larger one looks like a range of sizes (common practice: the
#: widest tolerance in use, IT16 at 3 mm, is a fifth of the size; seats and lengths of this project stay far below).
WIDEST_LIMITS = 0.1
_LETTERS = "cd|ef|fg|js|za|zb|zc|CD|EF|FG|JS|ZA|ZB|ZC|[abcdefghjkmnprstuvxyzABCDEFGHJKMNPRSTUVXYZ]"
_CLASS = rf"(?:{_LETTERS}) ?(?:01|1[0-8]|[0-9])(?![0-9A-Za-z]|[.,][0-9])"
_SIGNS = re.compile(
    rf"""
    (?P<blank>\ +)
    |(?P<pm>±|\+\ ?/\ ?-|-\ ?/\ ?\+|\+-|p/m(?=[\ 0-9.,]))
    |(?P<tclass>{_CLASS.replace(" ", "[ ]")})
    |(?P<num>(?:[0-9]+(?:'[0-9]{{3}})*(?:[.,][0-9]+)*(?:\.(?!\.))?(?:[eE][+-][0-9]{{1,2}}(?![0-9]))?|[.,][0-9]+))
    |(?P<bound>[≤≦⩽≥≧⩾])
    |(?P<sep>…|\.{{2,3}}|[;|,/~÷])
    |(?P<sign>[+-])
    |(?P<bracket>[()\[\]{{}}])
    |(?P<word>[^\W\d_](?:[^\W\d_]|[/.²-](?=[^\W_]))*\.?|[°"'%Ⓔ⊕]+[A-Za-z]?|[^ ])
    """,
    re.VERBOSE,
)
_COUNT = re.compile(r"(?:([1-9]\d{0,2}) ?[xX*] ?(?=[ØRSM□\d(dD.,]))|(?:\(([1-9]\d?)(?:x|X)?\) ?(?=[ØRSM□\d.,dD]))")
_PREFIX = re.compile(
    r"(?:(SØ|S ?R(?= ?[\d.,])|Ø ?|□ ?|⊡ ?|R ?(?=[\d.,])"
    r"|(?:diamètre|diameter|Diameter|[Dd]iam|DIAM|[Dd]ia|DIA|Durchm)(?![A-Za-z])"
    r"\.? ?|C ?(?=[\d.,]))"
    r"|([A-Za-z_][A-Za-z_0-9 ]{0,20}? ?[=:] ?))"
)
_KINDS: dict[str, Kind] = {
    "SØ": "sphere",
    "SR": "radius",
    "Ø": "diameter",
    "□": "square",
    "⊡": "square",
    "R": "radius",
    "C": "chamfer",
}
_UPPER_WORDS = {"max", "maxi", "maximum", "größtmaß", "höchstmaß", "máx", "macc", "макс", "наиб", "最大"}
_LOWER_WORDS = {"min", "mini", "minimum", "kleinstmaß", "mindestmaß", "mín", "мин", "наим", "最小"}
_TO_WORDS = {"to", "bis", "à", "a", "до", "and", "und", "et", "от", "von", "from", "de", "から", "至", "到"}
_NOTE_WORDS = {
    "ref": "reference", "reference": "reference", "basic": "basic", "bsc": "basic", "ted": "basic", "theor": "basic",
    "e": "envelope", "ⓔ": "envelope",
}  # fmt: skip


class NotASize(Exception):
    """A text that cannot be read; carries the error that the caller gets."""

    def __init__(self, code: str, text: str, sentence: str, expected: str = EXPECTED) -> None:
        super().__init__(sentence)
        self.error = ReadError(code, text, expected, sentence)


@frozen
class Item:
    """One sign of the text that matters: a number with its sign word, a class, a unit, a word."""

    sort: str
    text: str
    value: float = 0.0
    decimals: int = 0
    settled: bool = False


def cut_items(text: str, raw: str, decimal: Decimal | None, ranges: bool) -> list[Item]:
    """The items of a folded text in order; ``raw`` is the whole text, for messages.

    Raises
    ------
    NotASize
        Where a piece is part of no size, or a number is missing.
    """
    return _Cutter(text, raw, decimal, ranges).cut()


class _Cutter:
    """Goes through a text once, with the sign that waits for its number."""

    def __init__(self, text: str, raw: str, decimal: Decimal | None, ranges: bool) -> None:
        proved = decimal_evidence(text)
        # what the other numbers of the same text prove goes before the file: 13,000 +0,008 is 13 in every file
        self.mark = next(iter(proved)) if len(proved) == 1 else decimal
        self.text, self.raw, self.ranges = text, raw, ranges
        self.items: list[Item] = []
        self.waiting = ""  # +, -, pm, or a dash that can be a minus or stand between two numbers

    def cut(self) -> list[Item]:
        position, blank_before = 0, False
        while position < len(self.text):
            match = _SIGNS.match(self.text, position)
            assert match is not None and match.lastgroup is not None
            position = match.end()
            if match.lastgroup == "blank":
                blank_before = True
                continue
            if self.waiting and match.lastgroup != "num":
                raise NotASize("not-a-size", self.raw, f"a number is missing behind a sign in “{shown(self.raw)}”")
            self._take(match.lastgroup, match.group(), position, blank_before)
            blank_before = False
        if self.waiting:
            raise NotASize("not-a-size", self.raw, f"a number is missing at the end of “{shown(self.raw)}”")
        return self.items

    def _take(self, sort: str, piece: str, end: int, blank_before: bool) -> None:
        if sort == "num":
            self._number(piece)
        elif sort == "pm":
            self.waiting = "pm"
        elif sort == "sign":
            self.waiting = "dash" if piece == "-" and self._is_between(end, blank_before) else piece
        elif sort == "bound":
            self.items.append(Item("max" if piece in "≤≦⩽" else "min", piece))
        elif sort == "tclass":
            self.items.append(Item("class", piece.replace(" ", "")))
        elif sort in ("sep", "bracket"):
            self.items.append(Item(sort, piece))
        else:
            self.items.append(_word(piece, self.raw))

    def _is_between(self, end: int, blank_before: bool) -> bool:
        """Whether a dash can stand between two numbers: behind a size, glued to it or with blanks on both sides."""
        blank_behind = self.text[end : end + 1] == " "
        items = self.items
        after_plain = bool(items) and items[-1].sort == "plain" and not (len(items) > 1 and items[-1].value == 0)
        return after_plain and (blank_behind or not blank_before)

    def _number(self, piece: str) -> None:
        number = read_number(piece, self.mark)
        if isinstance(number, ReadError):
            sentence = f"{number.sentence}, in “{shown(self.raw)}”" if piece != self.raw else number.sentence
            raise NotASize(number.code, self.raw, sentence, number.expected)
        if self.waiting == "dash":
            is_range = self.ranges or number.value > WIDEST_LIMITS * self.items[-1].value
            self.waiting = "" if is_range else "-"
            if is_range:
                self.items.append(Item("sep", "-"))
        minus = self.waiting == "-"
        sort = {"": "plain", "+": "signed", "-": "signed", "pm": "pm"}[self.waiting]
        value = -number.value if minus and number.value else number.value
        self.items.append(Item(sort, f"-{piece}" if minus else piece, value, number.decimals, number.settled))
        self.waiting = ""


def _word(piece: str, raw: str) -> Item:
    """A word of the text: limit word, separator word, note, or unit."""
    lowered = piece.rstrip(".").casefold()
    if lowered in _UPPER_WORDS:
        return Item("max", piece)
    if lowered in _LOWER_WORDS:
        return Item("min", piece)
    if lowered in _TO_WORDS:
        return Item("sep", piece)
    if piece in ("E", "Ⓔ") or (lowered in _NOTE_WORDS and piece != "e"):
        return Item("note", _NOTE_WORDS[lowered])
    if known_unit(piece):
        return Item("unit", piece)
    raise NotASize("not-a-size", raw, f"“{shown(piece)}” in “{shown(raw)}” is not part of a size")


def strip_prefix(text: str) -> tuple[str, Kind, int]:
    """A text without its count and prefix."""
    kind: Kind = ""
    count = 1
    if match := _COUNT.match(text):
        count = int(match[1] or match[2])
        text = text[match.end() :]
    for _ in range(2):
        if match := _PREFIX.match(text):
            if match[1]:
                kind = _KINDS.get(match[1].replace(" ", ""), "diameter")
            text = text[match.end() :].lstrip()
    return text, kind, count
