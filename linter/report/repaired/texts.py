"""How a cell says a new value in the way that it said the old one: unit, decimal mark, form of the tolerance."""

import re
from collections.abc import Iterator

import numpy as np
from attrs import frozen

from linter.model.plan import SizeValue

#: A number as a cell writes it; a minus sign may be the mathematical one.
_NUMBER = re.compile(r"(?:(?<![\d.,])[-+\u2212]\s?)?\d+(?:[.,]\d+)?")
_CLASS = re.compile(r"(?<![A-Za-z])[A-Za-z]{1,2}\d{1,2}(?![\d.])")
#: Units that a cell may be written in, over the canonical one.
SCALES = (1.0, 1000.0, 0.001, 1 / 25.4, 1000 / 25.4, 0.1)


@frozen
class Old:
    """A value as it stands: a number, a word, or a size with its deviations."""

    value: float | str | SizeValue

    @property
    def numbers(self) -> dict[str, float]:
        """The numbers that cells may state of it, by what they are."""
        return _numbers(self.value)


def _numbers(value: float | str | SizeValue) -> dict[str, float]:
    if isinstance(value, str):
        return {}
    if not isinstance(value, SizeValue):
        return {"value": value}
    found = {"value": value.nominal}
    if value.upper is not None and value.lower is not None:
        found |= {"upper": value.upper, "lower": value.lower}
        found |= {"largest": value.nominal + value.upper, "smallest": value.nominal + value.lower}
        found["half"] = 0.5 * (value.upper - value.lower)
    return found


def plain(value: float, comma: bool = False) -> str:
    """A number with every digit that it has, without exponent."""
    text = str(np.format_float_positional(float(f"{value:.9g}"), trim="-"))
    return text.replace(".", ",") if comma else text


def signed(value: float, comma: bool = False) -> str:
    """A deviation with its sign."""
    return "0" if value == 0 else ("+" if value > 0 else "") + plain(value, comma)


def variants(text: str, old: float | str | SizeValue, new: float | str | SizeValue, comma: bool) -> Iterator[str]:
    """Texts that may say the new value where a text said the old one, the nearest to its form first.

    Parameters
    ----------
    text : str
        As it stands; for a cell that is blank, that of another cell of the same kind with its value as ``old``.
    old, new : float, str or SizeValue
        In canonical units.
    comma : bool
        Whether the table writes decimal commas.

    Yields
    ------
    str
    """
    if isinstance(new, str):
        yield new
        return
    own = ("," in text and "." not in text) or (comma and "." not in text)
    for scale in SCALES:
        swapped = _swapped(text, _numbers(old), _numbers(new), scale, own)
        if swapped is not None:
            if isinstance(old, SizeValue) and isinstance(new, SizeValue):
                yield from _with_class(swapped, old, new)
            else:
                yield swapped
    if isinstance(new, SizeValue):
        nominal = plain(new.nominal, own)
        if new.tolerance_class:
            yield f"{nominal} {new.tolerance_class}"
        if new.lower is not None and new.upper is not None:
            if new.lower == -new.upper:
                yield f"{nominal} \u00b1{plain(new.upper, own)}"
            yield f"{nominal} {signed(new.upper, own)}/{signed(new.lower, own)}"
        else:
            yield nominal
    else:
        yield plain(new, own)


def _with_class(text: str, old: SizeValue, new: SizeValue) -> Iterator[str]:
    """A text with its class changed, or without one where the new value has none."""
    match = _CLASS.search(text)
    if match is None or not old.tolerance_class:
        yield text
    elif new.tolerance_class:
        yield text[: match.start()] + new.tolerance_class + text[match.end() :]
    else:
        yield (text[: match.start()] + text[match.end() :]).replace("  ", " ").strip()


def _swapped(text: str, old: dict[str, float], new: dict[str, float], scale: float, comma: bool) -> str | None:
    """The text with its numbers changed, where all of them are numbers of the old value at this scale."""
    pieces, end, used = [], 0, False
    class_at = _CLASS.search(text)
    for match in _NUMBER.finditer(text):
        if class_at is not None and class_at.start() <= match.start() < class_at.end():
            continue
        word = match.group().replace("\u2212", "-").replace(" ", "").replace(",", ".")
        half = text[: match.start()].rstrip()[-1:] == "\u00b1"
        roles = ("half",) if half else tuple(old)
        role = next((r for r in roles if r in old and abs(float(word) - old[r] * scale) <= 1e-6 * max(1, scale)), None)
        if role is None or role not in new:
            return None
        if half and abs(new["upper"] + new["lower"]) > 1e-9:
            return None
        sign = role in ("upper", "lower") or word.startswith("+")
        value = new[role] * scale
        pieces += [text[end : match.start()], signed(value, comma) if sign else plain(value, comma)]
        end, used = match.end(), True
    return "".join([*pieces, text[end:]]) if used else (text if class_at is not None else None)
