"""Units as tables spell them, and the factor from any of them to a canonical unit.

The usual spellings come from a table of our own (:mod:`linter.reading.cells.unit_table`); everything else goes through
pint, which is loaded only then and asked once per distinct text. Case is meaning (``mm`` and ``Mm``); the one exception
is a short list of capitals that drawing offices write (``MM``, ``RPM``), which no SI prefix can mean here.
"""

import re
from functools import cache, lru_cache
from typing import Any

from attrs import frozen

from linter.reading.cells.signs import LONGEST_TEXT, ReadError, fold, shown
from linter.reading.cells.unit_table import ANGLE_SIGNS, CANONICAL, TABLE, TEMPERATURES

#: Unit texts whose meaning is remembered.
MOST_REMEMBERED = 4096

_SUPERSCRIPTS = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺", "0123456789-+")
_AROUND = re.compile(r" ?([/.·*()]) ?")
_POWER = re.compile(r"\^|\*\*")
_WIDER = re.compile(r"(?:1 ?/ ?)?[^\W\d_]+(?:-?[1-4])?(?:[/*. ][^\W\d_]+(?:-?[1-4])?){0,5}")


@frozen
class Unit:
    """A unit as understood.

    Attributes
    ----------
    name : str
        One spelling for the report, for example ``um`` for ``µm``.
    dimension : str
        What it measures, for example ``length``; ``other`` for a unit known to pint only.
    read : str
        The raw text.
    """

    name: str
    dimension: str
    read: str


def _spell(text: str) -> str:
    """A unit text with exponents, products and blanks in one form."""
    folded = fold(text.translate(_SUPERSCRIPTS)).strip("[]")
    if folded.startswith("(") and folded.endswith(")"):
        folded = folded[1:-1].strip()
    folded = _AROUND.sub(r"\1", _POWER.sub("", folded))
    return folded.replace("·", ".").replace("*", ".").replace("° ", "°")


def _table() -> dict[str, tuple[str, str, float, float]]:
    """Spelling to name, dimension, factor and offset; an offset for temperatures only."""
    table: dict[str, tuple[str, str, float, float]] = {}
    for dimension, units in TABLE.items():
        for name, factor, spellings in units:
            for spelling in spellings.split():
                table[_spell(spelling)] = (name, dimension, factor, 0.0)
    for name, factor, offset, spellings in TEMPERATURES:
        for spelling in spellings.split():
            table.setdefault(_spell(spelling), (name, "temperature", factor, offset))
    return table


_KNOWN = _table()


#: A unit of length with what is measured in it beside it: the sign of the roughness (``μmRa``), the travel
#: of an indicator (``in FIM``, ``mm TIR``), a diameter.
_OF_LENGTH = re.compile(
    r"(?P<unit>[µμu]m|[µμu]in\.?|[µμ]|mm|in\.?|inch|мкм|мм|微米|毫米)"
    r"(?: ?\(?(?:R[aA]|F\.?I\.?[MR]\.?|T\.?I\.?R\.?|dia\.?|diam\.?)\)?)?"
)


@lru_cache(maxsize=MOST_REMEMBERED)
def _look_up(text: str) -> tuple[str, str, float, float] | None:
    if (found := _OF_LENGTH.fullmatch(text.strip())) and found["unit"] != text:
        return _look_up(found["unit"])
    spelled = _spell(text)
    return _KNOWN.get(spelled) or _KNOWN.get(spelled.replace(" ", "")) or _KNOWN.get(spelled.replace(" ", "."))


def known_unit(text: str) -> Unit | None:
    """The unit if the text is a usual spelling of one in the table of this module, else None; pint is not asked."""
    if len(text) > 40:
        return None
    found = _look_up(text)
    return Unit(found[0], found[1], text) if found else None


@cache
def _registry() -> Any:
    import pint

    return pint.UnitRegistry(cache_folder=None)


@lru_cache(maxsize=MOST_REMEMBERED)
def _asked(spelled: str) -> Any:
    """What pint makes of a unit text, or None; only products of plain unit words with small exponents are passed on."""
    if len(spelled) > 40 or not _WIDER.fullmatch(spelled):
        return None
    expression = re.sub(r"(?<=[^\W\d_])(-?[1-4])(?![\d])", r"**\1", spelled.replace(".", "*").replace(" ", "*"))
    try:
        return _registry().parse_units(expression)
    except Exception:
        # pint raises several unrelated kinds (undefined unit, tokenizer, value); all mean the same here.
        return None


def _unknown(text: str, expected: str) -> ReadError:
    return ReadError("unknown-unit", text, expected, f"“{shown(text)}” is not a unit that is known")


@lru_cache(maxsize=MOST_REMEMBERED)
def read_unit(text: str) -> Unit | ReadError:
    """The unit a text names.

    Returns
    -------
    Unit or ReadError
        Code ``unknown-unit``. An empty text is an error: whether a default unit stands in is for the caller to decide.
    """
    if known := known_unit(text):
        return known
    asked = _asked(_spell(text))
    if asked is None:
        return _unknown(text, "a unit such as mm, µm, in, N, r/min, °C, MPa, mm²/s")
    return Unit(f"{asked:~}", "other", text)


def dimension_of(canonical: str) -> str:
    """What a canonical unit measures.

    Raises
    ------
    ValueError
        If the project has no such canonical unit.
    """
    if canonical not in CANONICAL:
        raise ValueError(f"{canonical!r} is not a canonical unit; those are {', '.join(CANONICAL)}")
    return CANONICAL[canonical][0]


@lru_cache(maxsize=MOST_REMEMBERED)
def factor_to(canonical: str, text: str) -> tuple[float, float] | ReadError:
    """Factor and offset from a unit text to a canonical unit: canonical value = value * factor + offset.

    Parameters
    ----------
    canonical : str
        A canonical unit of the vocabulary, for example ``mm``.
    text : str
        Unit as spelled in the table.

    Returns
    -------
    (float, float) or ReadError
        Codes ``unknown-unit`` and ``wrong-unit`` (another dimension). ``'`` and ``"`` are minutes and seconds of arc
        for an angle, foot and inch for a length. ``K`` and ``°F`` are read as temperatures, not as differences.

    Raises
    ------
    ValueError
        If ``canonical`` is not a canonical unit.
    """
    dimension = dimension_of(canonical)
    _, scale, pint_name = CANONICAL[canonical]
    spelled = _spell(text) if len(text) <= 40 else text
    if dimension == "angle" and spelled in ANGLE_SIGNS:
        return ANGLE_SIGNS[spelled][1], 0.0
    if dimension == "temperature" and spelled == "°":
        return 1.0, 0.0
    expected = f"a unit of {dimension} such as {canonical}"
    found = _look_up(text) if len(text) <= 40 else None
    if found:
        name, stated, factor, offset = found
        if stated == dimension:
            # the scale divides: 0.02 mm in a parameter kept in um is 0.02 / 0.001
            return (factor, offset) if dimension == "temperature" else (_ratio(factor, scale), 0.0)
        if spelled in {"-", "--", "---"}:
            return _unknown(text, expected)
        return ReadError(
            "wrong-unit", text, expected, f"“{shown(text)}” is a unit of {stated} ({name}), and a {dimension} is wanted"
        )
    asked = _asked(spelled)
    if asked is None:
        return _unknown(text, expected)
    registry = _registry()
    wanted = registry.parse_units(pint_name)
    if asked.dimensionality != wanted.dimensionality or (dimension in {"angle", "ratio", "rotational speed"}):
        return ReadError(
            "wrong-unit", text, expected, f"“{shown(text)}” does not measure a {dimension}, which is wanted"
        )
    offset = float(registry.Quantity(0.0, asked).to(wanted).magnitude)
    return _ratio(float(registry.Quantity(1.0, asked).to(wanted).magnitude) - offset, 1.0), offset


def conversion(source: str, target: str) -> float | None:
    """Factor between two units of this module's table that measure the same, or None; not for temperatures."""
    first, second = (_look_up(text) if len(text) <= 40 else None for text in (source, target))
    if first is None or second is None or first[1] != second[1] or first[1] == "temperature":
        return None
    return _ratio(first[2], second[2])


def _ratio(factor: float, scale: float) -> float:
    """``factor / scale`` without the last-digit noise of decimal fractions such as 0.0254 / 0.001."""
    return float(f"{factor / scale:.15g}")


_UNIT_SIGN = re.compile(r"[^\d.,' +\-]")
_PER = re.compile(r"1 ?/ ?[a-zмс分]")
_NUMERIC = re.compile(r"[+-]? ?[\d., '/\-½¼¾⅛⅜⅝⅞⅓⅔]*(?:[eEdD][+-]?\d{1,3})?", re.ASCII)
_BRACKET = re.compile(r"(.*\S)[ _]*(\[[^\[\]]*\]|\([^()]*\))")
_NOT_A_SUFFIX = {"min", "1", "-", "--", "d", "t", "C", "F", "H", "K", "°"}


@lru_cache(maxsize=MOST_REMEMBERED)
def split_heading_unit(heading: str) -> tuple[str, str]:
    """A heading and the unit it carries: ``Bore [mm]`` gives ``("Bore", "mm")``.

    Understood behind the name: ``[mm]``, ``(mm)``, ``/mm``, ``, mm``, ``in mm`` and ``_mm``. Only spellings of the
    table of this module count, so that ``Inner Diameter (ID)`` keeps its bracket; ``_min`` is a limit, never minutes.
    A single letter can be a name (``N``, number of teeth): check that the unit fits the parameter before it is used.

    Returns
    -------
    (str, str)
        The heading without its unit, raw, and the unit text, empty where there is none.
    """
    text = heading.strip()
    if len(text) > LONGEST_TEXT:
        return heading, ""
    folded = fold(text)
    if len(folded) != len(text):
        text = folded
    if match := _BRACKET.fullmatch(folded):
        inside = match[2][1:-1].strip()
        if inside and inside not in {"-", "--"} and known_unit(inside):
            return text[: match.end(1)], inside
        return heading, ""
    for start, sign in enumerate(folded):
        if start == 0 or sign not in "/,_ ":
            continue
        rest = folded[start + 1 :].strip()
        before = text[:start].rstrip(" ,")
        if not rest or not before:
            continue
        if sign == " " and rest.startswith("/"):
            continue
        if sign == " ":
            if not rest.startswith("in ") or rest == "in":
                continue
            rest = rest[3:].strip()
        if rest in _NOT_A_SUFFIX or (sign == "," and len(rest) < 2):
            continue
        if (unit := known_unit(rest)) or (
            sign == "_" and (unit := known_unit(rest.replace("_per_", "/").replace("_", "/")))
        ):
            return before, text[len(text) - len(rest) :] if unit.read == rest else unit.read
    return heading, ""


def split_quantity(text: str) -> tuple[str, str]:
    """A number and the unit glued to it or behind it: ``2.9mm`` gives ``("2.9", "mm")``.

    Returns
    -------
    (str, str)
        Number text and unit text; the unit is empty where the text does not end in one.
    """
    if len(text) > LONGEST_TEXT:
        return text, ""
    folded = fold(text)
    if not _UNIT_SIGN.search(folded):
        return text, ""
    raw = text.strip() if len(text.strip()) == len(folded) else folded
    for known_only in (True, False):
        for start in range(1, len(folded)):
            before, rest = folded[:start].rstrip(), folded[start:].lstrip()
            if not _NUMERIC.fullmatch(before):
                continue
            if rest[0].isdigit() and not _PER.match(rest):
                continue
            if known_only:
                found = known_unit(rest) is not None
            else:
                found = rest[0].isalpha() and not isinstance(read_unit(rest), ReadError)
            if found:
                return before, raw[len(raw) - len(rest) :]
    return text, ""
