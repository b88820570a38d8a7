"""What a heading names together: boundary dimensions of a bearing (``10x26x8``), the fits of both seats (``k6/H7``).

The symbols of the dimensions and their order are those of ISO 15 (from memory): bore, outside diameter, width.
"""

import re

from linter.reading.words.dictionary import dictionary, word_key
from linter.reading.words.parts import is_bearing_size

#: Parameters of the three dimensions, in the order in which they are written.
DIMENSIONS = ("bore_diameter", "outside_diameter", "ring_width")

_TIMES = r"\s*[xX×✕*хХ]\s*"
_HEADING = re.compile(
    rf"(?P<words>.*?)[\s(\[:,]*(?:(?P<d>[dD]){_TIMES}(?P<D>[dD]){_TIMES}[BbWw]|ID{_TIMES}OD{_TIMES}[BW])[\s)\]]*"
)
#: Between the words of the three dimensions (``内径×外径×幅``); a letter for the sign stands apart.
_BETWEEN_WORDS = re.compile(r"\s+[xX×✕*хХ]\s+|\s*[×✕*]\s*|(?<=[\u3400-\u9fff])[xX](?=[\u3400-\u9fff])")
_NUMBER = r"(\d+(?:[.,]\d+)?|[.,]\d+)"
_CELL = re.compile(
    rf"\s*[Ø⌀øφΦϕ∅Ф]?\s*{_NUMBER}{_TIMES}[Ø⌀øφΦϕ∅Ф]?\s*{_NUMBER}{_TIMES}{_NUMBER}\s*(mm|мм|in|inch|\"|″)?\s*"
)


def names_dimensions(text: str) -> bool:
    """Whether a heading without its unit says bore, outside diameter and width of a bearing, in this order."""
    pieces = [word_key(piece).strip() for piece in _BETWEEN_WORDS.split(text)] if len(text) <= 80 else []
    if len(pieces) == 3 and _are_dimensions(pieces):
        return True
    match = _HEADING.fullmatch(text) if len(text) <= 80 else None
    if match is None or (match["d"] == "D" and match["D"] == "d"):
        return False
    words = word_key(match["words"]).strip(" :.")
    return not words or is_bearing_size(words)


def _are_dimensions(pieces: list[str]) -> bool:
    """Whether three words say bore, outside diameter and width, the first maybe behind the word for a bearing."""
    known = dictionary().words
    return all(known.get(piece) == (name,) for piece, name in zip(pieces, DIMENSIONS, strict=True))


def dimensions_of(text: str) -> tuple[str, str, str] | None:
    """The three dimensions that a cell states, each with the unit behind them; None where it states no such three.

    The bore must be smaller than the outside diameter: in another order it is not known which number is which.
    """
    match = _CELL.fullmatch(text)
    if match is None:
        return None
    bore, outside, width = match[1], match[2], match[3]
    if not float(bore.replace(",", ".")) < float(outside.replace(",", ".")):
        return None
    unit = f" {match[4]}" if match[4] else ""
    return f"{bore}{unit}", f"{outside}{unit}", f"{width}{unit}"


_FITS = re.compile(r"(?P<one>[A-Za-z]{1,2}\d{1,2})\s*[/|;,–-]\s*(?P<two>[A-Za-z]{1,2}\d{1,2})")


def fits_of(text: str) -> tuple[str, str] | None:
    """The classes of shaft and housing that a cell states in any order; None where it does not state one of each.

    The class of a shaft has small letters and that of a hole capitals (ISO 286-1).
    """
    match = _FITS.fullmatch(text.strip())
    if match is None:
        return None
    shaft, hole = sorted((match["one"], match["two"]), key=str.isupper)
    return (shaft, hole) if shaft[0].islower() and hole[0].isupper() else None
