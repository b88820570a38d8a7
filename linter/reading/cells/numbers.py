"""Numbers as tables spell them: point or comma, grouped or not, fractions; an ambiguous one is never guessed.

The spellings are common practice of exports and spreadsheets. One mark followed by exactly three digits after one to
three digits (``1.234``, ``1,234``) can be a decimal mark or a grouping mark: such a text is an error unless the caller
says which mark is the decimal one in this file.
"""

import re
from collections.abc import Iterable, Sequence
from typing import Literal

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.reading.cells.signs import LONGEST_TEXT, ReadError, fold, missing_state, shown

Decimal = Literal[".", ","]

_EXPECTED = "a number such as 7.5, 7,5, 1 234.56 or 3/8"

_VULGAR = {
    "½": 1 / 2, "⅓": 1 / 3, "⅔": 2 / 3, "¼": 1 / 4, "¾": 3 / 4, "⅕": 1 / 5, "⅖": 2 / 5, "⅗": 3 / 5, "⅘": 4 / 5,
    "⅙": 1 / 6, "⅚": 5 / 6, "⅐": 1 / 7, "⅛": 1 / 8, "⅜": 3 / 8, "⅝": 5 / 8, "⅞": 7 / 8, "⅑": 1 / 9, "⅒": 1 / 10,
}  # fmt: skip

_NUMBER = re.compile(
    r"([+-]?) ?(\d[\d ]*(?:[.,'][\d ]*\d)*[.,]?|[.,]\d+)"
    r"(?:(?:(?<! )[eEdD]| ?x ?10 ?\^ ?| ?\* ?10 ?\^ ?)([+-]?\d{1,3}))?",
    re.ASCII,
)
_FRACTION = re.compile(r"([+-]?) ?(?:(\d{1,6})[ -])?(\d{1,4})/(2|4|8|16|32|64|128)", re.ASCII)
_VULGAR_FRACTION = re.compile(rf"([+-]?) ?(\d{{0,6}}) ?([{''.join(_VULGAR)}])", re.ASCII)
_GROUPED = re.compile(r"[1-9]\d{0,2}(?:([ '.,])\d{3})(?:\1\d{3})*", re.ASCII)

_TOKEN = re.compile(r"(?<![\d.,'A-Za-z])\d*(?:[.,']\d+)+", re.ASCII)
_TWICE = re.compile(r"([.,])\d+\1", re.ASCII)
_PLAIN = re.compile(r"[+-]?\d+(?:\.\d+)?", re.ASCII)
_PLAIN_LINES = re.compile(r"(?:[+-]?\d{1,17}(?:\.\d{1,17})?\n)+", re.ASCII)
_PLAIN_COMMA_LINES = re.compile(r"(?:[+-]?\d{1,17}(?:,\d{1,17})?\n)+", re.ASCII)
_OPEN_LINE = re.compile(r"^[+-]?[1-9]\d{0,2}[.,]\d{3}$", re.MULTILINE | re.ASCII)


@frozen
class Number:
    """A number as read.

    Attributes
    ----------
    value : float
        The number.
    decimals : int
        Digits after the decimal mark, trailing zeros included; 0 for a fraction.
    settled : bool
        True where the text alone is ambiguous and the decimal mark of the file settled it.
    """

    value: float
    decimals: int = 0
    settled: bool = False


@frozen
class _Mantissa:
    """Digits with a point, the decimals behind it, and whether the file's mark settled it."""

    digits: str
    decimals: int = 0
    settled: bool = False


def _mantissa(text: str, decimal: Decimal | None, exponent: bool, grouped: bool = True) -> _Mantissa | str:
    """The mantissa of a number, or the code of the trouble."""
    marks = [sign for sign in text if sign in ".,"]
    if " " in text or "'" in text:
        return _grouped_by_gaps(text, marks, decimal)
    if not marks:
        return _Mantissa(text)
    if len(set(marks)) == 2:
        return _two_marks(text, marks, decimal)
    if len(marks) > 1:
        if not _GROUPED.fullmatch(text):
            return "not-a-number"
        return "contradictory-number" if marks[0] == decimal else _Mantissa(text.replace(marks[0], ""))
    whole, _, rest = text.partition(marks[0])
    if not _GROUPED.fullmatch(text) or exponent:
        return _Mantissa(f"{whole or '0'}.{rest or '0'}", len(rest))
    if decimal is None:
        return "ambiguous-number"
    if marks[0] == decimal:
        return _Mantissa(f"{whole}.{rest}", len(rest), settled=True)
    return _Mantissa(whole + rest, settled=True) if grouped else "other-mark"


def _grouped_by_gaps(text: str, marks: list[str], decimal: Decimal | None) -> _Mantissa | str:
    """A mantissa with thousands grouped by blanks or apostrophes."""
    mark = marks[0] if marks else ""
    whole, _, rest = text.partition(mark) if mark else (text, "", "")
    if len(marks) > 1 or not _GROUPED.fullmatch(whole) or (rest and not rest.isdigit()):
        return "not-a-number"
    if mark and decimal and mark != decimal:
        return "contradictory-number"
    return _Mantissa(whole.replace(" ", "").replace("'", "") + "." + (rest or "0"), len(rest))


def _two_marks(text: str, marks: list[str], decimal: Decimal | None) -> _Mantissa | str:
    """A mantissa with thousands grouped by the one mark and decimals behind the other."""
    mark = marks[-1]
    whole, _, rest = text.rpartition(mark)
    if marks.count(mark) > 1 or not _GROUPED.fullmatch(whole):
        return "not-a-number"
    if decimal and mark != decimal:
        return "contradictory-number"
    return _Mantissa(re.sub("[.,]", "", whole) + "." + (rest or "0"), len(rest))


def _error(code: str, text: str, decimal: Decimal | None) -> ReadError:
    said = shown(text)
    sentence = {
        "ambiguous-number": f"“{said}” can be a decimal number or one with grouped thousands; the file does not say",
        "contradictory-number": f"“{said}” groups thousands with {decimal}, which is the decimal mark of this file",
        "number-out-of-range": f"“{said}” is beyond the range of numbers",
        "too-long": f"the text has {len(text)} signs, more than the {LONGEST_TEXT} that are read as a value",
        "empty": "nothing stands there",
    }.get(code, f"“{said}” is not a number")
    expected = {
        "ambiguous-number": "a clear decimal mark, or the decimal mark of the file stated in the name mapping",
        "contradictory-number": f"a number with the decimal mark {decimal}",
    }.get(code, _EXPECTED)
    return ReadError(code, text, expected, sentence)


def read_number(text: str, decimal: Decimal | None = None, *, grouped: bool = True) -> Number | ReadError:
    """A number in any usual spelling.

    Parameters
    ----------
    text : str
        Raw text: point or comma, thousands grouped by blank, apostrophe, point or comma, sign (with a blank after it,
        or U+2212), exponent with e or d, common fractions with a power of two below (``3/8``, ``1 1/4``, ``1-1/4``,
        ``1½``), full-width digits.
    decimal : {".", ","}, optional
        Decimal mark of the file. It settles only texts that are ambiguous in themselves: ``7,5`` is 7.5 in every file.
    grouped : bool
        False where thousands are not written with a mark, as in small lengths: then ``1,234`` among points is an error
        (``ambiguous-number``) instead of 1234, the typical slip of three decades.

    Returns
    -------
    Number or ReadError
        Codes: ``ambiguous-number``, ``contradictory-number``, ``not-a-number``, ``number-out-of-range``, ``too-long``,
        ``empty``, and ``not-applicable``, ``not-known``, ``see-above`` for a word that says the value is missing.
    """
    if len(text) > LONGEST_TEXT:
        return _error("too-long", text, decimal)
    folded = fold(text)
    if match := _NUMBER.fullmatch(folded):
        sign, body, exponent = match.groups()
        body = body.rstrip()
        mantissa = _mantissa(body, decimal, exponent is not None, grouped)
        if mantissa == "other-mark":
            sentence = f"“{shown(text)}” has another decimal mark than the file ({decimal}), or grouped thousands"
            return ReadError("ambiguous-number", text, f"a number with the decimal mark {decimal}", sentence)
        if isinstance(mantissa, str):
            return _error(mantissa, text, decimal)
        value = float(f"{sign}{mantissa.digits}e{exponent or 0}")
        if not np.isfinite(value):
            return _error("number-out-of-range", text, decimal)
        return Number(value, mantissa.decimals, mantissa.settled)
    if match := _FRACTION.fullmatch(folded):
        sign, whole, above, below = match.groups()
        if whole is not None and int(above) >= int(below):
            return _error("not-a-number", text, decimal)
        value = int(whole or 0) + int(above) / int(below)
        return Number(-value if sign == "-" else value)
    if match := _VULGAR_FRACTION.fullmatch(folded):
        sign, whole, part = match.groups()
        value = int(whole or 0) + _VULGAR[part]
        return Number(-value if sign == "-" else value)
    state = missing_state(text)
    return _error(state.replace(" ", "-") if state else "not-a-number", text, decimal)


def decimal_evidence(text: str) -> set[Decimal]:
    """Decimal marks that the numbers inside one text prove; both where they contradict each other."""
    proved: set[Decimal] = set()
    for token in _TOKEN.findall(fold(text[:LONGEST_TEXT])):
        marks = [sign for sign in token if sign in ".,"]
        if not marks:
            continue
        mantissa = _mantissa(token, None, False)
        if isinstance(mantissa, str):
            continue
        last: Decimal = marks[-1]
        other: Decimal = "," if last == "." else "."
        grouping_only = len(marks) > 1 and len(set(marks)) == 1
        proved.add(other if grouping_only else last)
    return proved


def vote_decimal(texts: Iterable[str]) -> Decimal | None:
    """The decimal mark that the texts of a file or column prove, or None.

    Parameters
    ----------
    texts : iterable of str
        Raw texts of cells that hold values; sizes with tolerances count too. Texts that prove nothing do not vote.

    Returns
    -------
    "." or "," or None
        None where nothing is proved or where both marks are: a vote must be unanimous.
    """
    proved: set[Decimal] = set()
    distinct = set(texts)
    lines = "\n".join(distinct)
    if lines.isascii() and ("." in lines) != ("," in lines) and not _TWICE.search(lines):
        mark: Decimal = "." if "." in lines else ","
        return mark if any(decimal_evidence(token[0]) for token in _TOKEN.finditer(lines)) else None
    for text in distinct:
        if "." in text or "," in text or not text.isascii():
            proved |= decimal_evidence(text)
            if len(proved) == 2:
                return None
    return proved.pop() if proved else None


def read_numbers(
    texts: Sequence[str], decimal: Decimal | None = None, *, grouped: bool = True
) -> tuple[NDArray[np.float64], dict[int, ReadError]]:
    """A column of numbers; each distinct text is read once, and plain decimals without a look at each.

    Parameters
    ----------
    texts : sequence of str
        Raw texts.
    decimal, grouped
        As in :func:`read_number`.

    Returns
    -------
    values : float array, shape (len(texts),)
        NaN where nothing stands and where a text could not be read.
    errors : dict of int to ReadError
        By index; a blank text is no error.
    """
    distinct = list(dict.fromkeys(texts))
    troubles: dict[str, ReadError] = {}
    table = _plain_values(distinct, decimal)
    if table is None:
        table = {}
        for text in distinct:
            number = _one_of_many(text, decimal, grouped)
            if isinstance(number, ReadError):
                table[text] = np.nan
                if number.code != "empty":
                    troubles[text] = number
            else:
                table[text] = number
    if len(distinct) == len(texts):
        column = np.fromiter(table.values(), dtype=float, count=len(texts))
    else:
        column = np.fromiter(map(table.__getitem__, texts), dtype=float, count=len(texts))
    errors = {index: troubles[text] for index, text in enumerate(texts) if text in troubles} if troubles else {}
    return column, errors


def _plain_values(distinct: list[str], decimal: Decimal | None) -> dict[str, float] | None:
    """Values of texts that are plain decimals all, without a look at each; None where one is not."""
    lines = "\n".join(distinct) + "\n"
    if lines.count("\n") != len(distinct):
        return None
    if _PLAIN_LINES.fullmatch(lines):
        if decimal != "." and "." in lines and _OPEN_LINE.search(lines):
            return None
        return dict(zip(distinct, map(float, distinct), strict=True))
    if decimal == "," and "," in lines and "." not in lines and _PLAIN_COMMA_LINES.fullmatch(lines):
        return dict(zip(distinct, map(float, lines.replace(",", ".").split("\n")[:-1]), strict=True))
    return None


def _one_of_many(text: str, decimal: Decimal | None, grouped: bool) -> float | ReadError:
    """The value of one text of a column; NaN for an empty one."""
    if not text:
        return np.nan
    if _PLAIN.fullmatch(text) and len(text) < 30 and (decimal == "." or not _OPEN_LINE.match(text)):
        return float(text)
    number = read_number(text, decimal, grouped=grouped)
    return number if isinstance(number, ReadError) else number.value
