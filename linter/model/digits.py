"""Figures of a sentence with as many digits as they are worth, and fits as clearance or interference."""

import math
import re
from collections.abc import Callable, Collection
from functools import lru_cache

from linter.model.wording import NARROW_SPACE, number_text, quantity_text

#: A number with its unit as :func:`linter.model.wording.quantity_text` writes it, or a ratio by itself. Lengths in mm
#: are those of a drawing and keep what they have; a plain number may be a name. It begins with the characters that such
#: a number can begin with, so that the search passes over all others.
_QUANTITY = re.compile(
    "([\u2212\\d](?:(?<=\u2212)\\d)?(?<=\\d)"
    "(?:(?:\\d{0,2}(?:\u00a0\\d{3})+(?:\\.\\d+)?|\\d*(?:\\.\\d+)?)"
    "((?:\u00a0(?!mm\\b(?![²·/]))(?:µm|mm|N|MPa|GPa|°C|K|r/min|m/s|h|arcmin|kg|g|W|%)[^\\s,;:().]*)|°)"
    "|(?:(?<== \\d)|(?<= is \\d)|(?<=, \\d))\\d*\\.\\d+(?= |[,;).]|$)(?!\u00a0)))"
)
#: Decimals beyond which a quantity is not told: nobody measures them.
_DECIMALS = {"µm": 2, "°C": 0, "arcmin": 1}
_FLOOR_BEFORE = re.compile(r"(?:at most|no more than|less than|below|under|up to) $")
_FLOOR_AFTER = re.compile(r" or (?:less|lower|finer|smoother)\b")
_CEILING_BEFORE = re.compile(r"(?:at least|more than|above|over|from) $")
_CEILING_AFTER = re.compile(r" or (?:more|higher|longer)\b")


def with_digits(text: str, digits: int, keep: Callable[[], Collection[str]] = tuple) -> str:
    """The quantities of a sentence with that many significant digits.

    Parameters
    ----------
    text : str
        A message or remedy.
    digits : int
        Significant digits of a computed quantity.
    keep : callable
        Gives quantities as they are stated in the table; they stay as they are. Called only where something would
        change.

    Returns
    -------
    str
        Two quantities of one unit that differ still differ. Lengths in mm and numbers without a unit are left alone.
    """
    parts = [_short(*found, digits) for found in _QUANTITY.findall(text)]
    if all(number == after for number, _, after in parts):
        return text
    stated = " ".join(keep())
    told: dict[tuple[str, str], int] = {}
    for _, unit, after in dict.fromkeys(parts):
        told[after, unit] = told.get((after, unit), 0) + 1
    pieces, end = [], 0
    for match, (number, unit, after) in zip(_QUANTITY.finditer(text), parts, strict=True):
        pieces.append(text[end : match.start()])
        stays = (told[after, unit] > 1 and after != "0") or _stands_in(number, stated)
        pieces.append(match[0] if stays else after + unit)
        end = match.end()
    return "".join(pieces) + text[end:]


def _stands_in(number: str, text: str) -> bool:
    """Whether a text has the number, and not as a part of a longer one."""
    start = text.find(number)
    while start >= 0:
        ends = text[start - 1 : start] + text[start + len(number) : start + len(number) + 1]
        if not any(end == "." or end.isdecimal() for end in ends):
            return True
        start = text.find(number, start + 1)
    return False


def bound_with_digits(text: str, digits: int, keep: Callable[[], Collection[str]] = tuple) -> str:
    """The bounds that a remedy names with that many digits, rounded to the side that keeps them; the rest as it is."""

    def shorter(match: re.Match[str]) -> str:
        before, after = text[: match.start()], text[match.end() :]
        number, unit = _parts(match[0], match[2])
        down = _FLOOR_BEFORE.search(before) or _FLOOR_AFTER.match(after)
        up = _CEILING_BEFORE.search(before) or _CEILING_AFTER.match(after)
        if bool(down) == bool(up) or number in " ".join(keep()):
            return match[0]
        return _rounded(number, unit, digits, math.floor if down else math.ceil) + unit

    return _QUANTITY.sub(shorter, text)


def _parts(quantity: str, unit: str | None) -> tuple[str, str]:
    """The number of a quantity with its sign, and its unit."""
    return quantity.removesuffix(unit or ""), unit or ""


@lru_cache(maxsize=4096)
def _short(quantity: str, unit: str, digits: int) -> tuple[str, str, str]:
    """The number of a quantity, its unit, and the number with that many digits."""
    number, unit = _parts(quantity, unit)
    return number, unit, _rounded(number, unit, digits, round)


@lru_cache(maxsize=4096)
def _rounded(number: str, unit: str, digits: int, way: Callable[[float], int]) -> str:
    """A number as it is written, with fewer digits; the same text where it has no more."""
    value = float(number.replace(NARROW_SPACE, "").replace("\u2212", "-"))
    if value == 0:
        return number
    power = digits - 1 - math.floor(math.log10(abs(value)))
    name = unit.strip(NARROW_SPACE)
    power = min(power, (0 if abs(value) >= 10 else 1) if name == "%" else _DECIMALS.get(name, power))
    scaled = value * 10.0**power
    if abs(scaled - round(scaled)) < 1e-6:
        return number
    return number_text(round(way(scaled) * 10.0**-power, max(power, 0)))


def short_text(value: float, unit: str, digits: int = 3) -> str:
    """A quantity as :func:`linter.model.wording.quantity_text` writes it, with fewer digits."""
    return with_digits(quantity_text(value, unit), digits)


def short_number(value: float, unit: str, digits: int = 3) -> str:
    """The number of :func:`short_text` without its unit, for a drawing that says the unit once."""
    return short_text(value, unit, digits).removesuffix(quantity_text(0.0, unit)[1:])


def fit_text(smallest: float, largest: float, unit: str) -> str:
    """A fit from its loose to its tight end, interference positive: ``17 µm clearance to 1 µm interference``."""
    if math.isnan(smallest) or math.isnan(largest):
        return "whatever its fit"
    if smallest < 0 < largest:
        return f"{quantity_text(-smallest, unit)} clearance to {quantity_text(largest, unit)} interference"
    word, ends = ("interference", (smallest, largest)) if smallest >= 0 else ("clearance", (-largest, -smallest))
    texts = list(dict.fromkeys(quantity_text(abs(end), unit) for end in ends))
    return f"{word} {' to '.join(texts)}"


def one_side_text(value: float, unit: str, word: str) -> str:
    """A clearance or an interference, by its own name where it is negative: ``19.5 µm interference``."""
    other = {"clearance": "interference", "interference": "clearance"}[word]
    return f"{quantity_text(abs(value), unit)} {word if value >= 0 or math.isnan(value) else other}"
