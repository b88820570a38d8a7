"""Units as tables spell them, and the factor from any of them to a canonical unit.

The usual spellings come from a table of our own; everything else goes through pint, which is loaded only then and asked
once per distinct text. Case is meaning (``mm`` and ``Mm``); the one exception is a short list of capitals that drawing
offices write (``MM``, ``RPM``), which no SI prefix can mean here. Factors: SI Brochure 9th ed. and ISO 80000; inch,
pound-force and kilogram-force by their exact definitions (0.0254 m; 0.45359237 kg; 9.80665 m/s2).
"""

import math
import re
from functools import cache, lru_cache
from typing import Any

from attrs import frozen

from linter.reading.cells.signs import LONGEST_TEXT, ReadError, fold, shown

#: Unit texts whose meaning is remembered.
MOST_REMEMBERED = 4096

_G = 9.80665
_LB = 0.45359237
_DEGREE = math.pi / 180

# dimension -> (unit, factor to the first unit, spellings). Temperatures have offsets of their own below.
_TABLE: dict[str, tuple[tuple[str, float, str], ...]] = {
    "length": (
        ("mm", 1.0, "mm MM mm. мм millimeter millimeters millimetre millimetres Millimeter millimètre millimètres "
         "milímetro milímetros millimetro millimetri миллиметр миллиметры ミリ 毫米"),
        ("um", 1e-3, "um µm UM µ mu µm. micron microns micrometer micrometers micrometre micrometres Mikrometer мкм "
         "微米 ミクロン"),
        ("nm", 1e-6, "nm"),
        ("cm", 10.0, "cm CM см"),
        ("dm", 100.0, "dm"),
        ("m", 1000.0, "m м meter metre"),
        ("in", 25.4, 'in in. IN inch inches Inch INCH INCHES Zoll pouce pouces pulgada pulgadas pollice pollici дюйм '
         '" \'\' インチ 英寸'),
        ("thou", 0.0254, "thou mil mils"),
        ("uin", 25.4e-6, "uin µin µin. microinch microinches"),
        ("ft", 304.8, "ft ft. foot feet '"),
    ),
    "force": (
        ("N", 1.0, "N Newton newton newtons Н 牛 ニュートン"),
        ("mN", 1e-3, "mN"),
        ("kN", 1e3, "kN кН"),
        ("kgf", _G, "kgf kp кгс"),
        ("gf", _G / 1000, "gf"),
        ("lbf", _LB * _G, "lbf lbforce lbs.f"),
        ("ozf", _LB * _G / 16, "ozf"),
    ),
    "rotational speed": (
        ("r/min", 1.0, "r/min R/min R/MIN rpm RPM Rpm r.p.m. rpm. rev/min revs/min 1/min min-1 1.min-1 /min "
         "U/min U/Min Umdr/min Umdr./min tr/min tr/mn giri/min об/мин "
         "мин-1 1/мин 转/分 转/分钟 r/分 rev/分 回転/分 1/分 min^(-1) r.min-1 rad.r/min"),
        ("kr/min", 1e3, "krpm kr/min kmin-1"),
        ("r/s", 60.0, "r/s rev/s rps 1/s s-1 Hz об/с с-1"),
        ("kHz", 60e3, "kHz"),
        ("rad/s", 30 / math.pi, "rad/s rad.s-1 рад/с"),
        ("deg/s", 1 / 6, "deg/s °/s"),
    ),
    "pressure": (
        ("MPa", 1.0, "MPa N/mm2 N.mm-2 МПа Н/мм2 MN/m2"),
        ("Pa", 1e-6, "Pa N/m2"),
        ("kPa", 1e-3, "kPa"),
        ("GPa", 1e3, "GPa kN/mm2 ГПа"),
        ("bar", 0.1, "bar"),
        ("kgf/mm2", _G, "kgf/mm2 kp/mm2"),
        ("kgf/cm2", _G / 100, "kgf/cm2 kp/cm2"),
        ("psi", _LB * _G / 25.4**2, "psi lbf/in2"),
        ("ksi", _LB * _G / 25.4**2 * 1000, "ksi"),
    ),
    "kinematic viscosity": (
        ("mm2/s", 1.0, "mm2/s mm2.s-1 cSt cst CST мм2/с сСт"),
        ("m2/s", 1e6, "m2/s"),
        ("cm2/s", 100.0, "cm2/s St"),
    ),
    "angle": (
        ("deg", 1.0, "deg DEG deg. degree degrees ° Grad degré degrés grado grados gradi градус градусы град 度"),
        ("rad", 1 / _DEGREE, "rad radian radians рад"),
        ("mrad", 1e-3 / _DEGREE, "mrad"),
        ("arcmin", 1 / 60, "arcmin"),
        ("arcsec", 1 / 3600, "arcsec"),
        ("gon", 0.9, "gon grad"),
    ),
    "mass": (
        ("kg", 1.0, "kg KG Kg кг 千克 公斤 キログラム"),
        ("g", 1e-3, "g г 克"),
        ("mg", 1e-6, "mg"),
        ("t", 1e3, "t"),
        ("lb", _LB, "lb lbs lb. lbm"),
        ("oz", _LB / 16, "oz"),
    ),
    "unbalance": (
        ("g.mm", 1.0, "g.mm gmm g-mm mm.g г.мм"),
        ("kg.mm", 1e3, "kg.mm kgmm kg-mm g.m"),
        ("mg.mm", 1e-3, "mg.mm mgmm"),
        ("g.cm", 10.0, "g.cm gcm g-cm"),
        ("oz.in", _LB / 16 * 1e3 * 25.4, "oz.in oz-in ozin"),
    ),
    "time": (
        ("h", 1.0, "h hr hrs hour hours Std Std. Stunden Stunde "
         "heure heures hora horas ora ore ч час часов 時間 小时"),
        ("min", 1 / 60, "min"),
        ("s", 1 / 3600, "s sec"),
        ("d", 24.0, "d day days"),
    ),
    "velocity": (
        ("mm/s", 1.0, "mm/s mm.s-1 мм/с"),
        ("m/s", 1e3, "m/s"),
        ("in/s", 25.4, "in/s ips"),
    ),
    "stiffness": (
        ("N/mm", 1.0, "N/mm N.mm-1 Н/мм kN/m"),
        ("N/um", 1e3, "N/um N/µm kN/mm"),
        ("N/m", 1e-3, "N/m"),
        ("kgf/mm", _G, "kgf/mm kp/mm"),
        ("lbf/in", _LB * _G / 25.4, "lbf/in lb/in lbs/in"),
    ),
    "ratio": (
        ("1", 1.0, "1 - -- --- ul unitless none dimensionless ohne sans"),
        ("%", 0.01, "% percent pct Prozent процент"),
    ),
}  # fmt: skip

# degrees Celsius = value * factor + offset
_TEMPERATURES: tuple[tuple[str, float, float, str], ...] = (
    ("degC", 1.0, 0.0, "°C degC deg.C ° degreeC degreesC celsius Celsius C Cel градC"),
    ("K", 1.0, -273.15, "K kelvin Kelvin degK"),
    ("degF", 5 / 9, -160 / 9, "°F degF deg.F fahrenheit Fahrenheit F"),
)
_ANGLE_SIGNS = {"'": ("arcmin", 1 / 60), "''": ("arcsec", 1 / 3600), '"': ("arcsec", 1 / 3600)}

_CANONICAL: dict[str, tuple[str, float, str]] = {
    # canonical unit: dimension, factor of that unit to the dimension's first unit, the same for pint
    "mm": ("length", 1.0, "millimeter"),
    "um": ("length", 1e-3, "micrometer"),
    "N": ("force", 1.0, "newton"),
    "r/min": ("rotational speed", 1.0, "revolution / minute"),
    "MPa": ("pressure", 1.0, "megapascal"),
    "degC": ("temperature", 1.0, "degree_Celsius"),
    "mm2/s": ("kinematic viscosity", 1.0, "millimeter ** 2 / second"),
    "deg": ("angle", 1.0, "degree"),
    "kg": ("mass", 1.0, "kilogram"),
    "g.mm": ("unbalance", 1.0, "gram * millimeter"),
    "h": ("time", 1.0, "hour"),
    "mm/s": ("velocity", 1.0, "millimeter / second"),
    "N/mm": ("stiffness", 1.0, "newton / millimeter"),
    "1": ("ratio", 1.0, "dimensionless"),
    "%": ("ratio", 0.01, "dimensionless"),
}

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
    for dimension, units in _TABLE.items():
        for name, factor, spellings in units:
            for spelling in spellings.split():
                table[_spell(spelling)] = (name, dimension, factor, 0.0)
    for name, factor, offset, spellings in _TEMPERATURES:
        for spelling in spellings.split():
            table.setdefault(_spell(spelling), (name, "temperature", factor, offset))
    return table


_KNOWN = _table()


def _look_up(text: str) -> tuple[str, str, float, float] | None:
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
    if canonical not in _CANONICAL:
        raise ValueError(f"{canonical!r} is not a canonical unit; those are {', '.join(_CANONICAL)}")
    return _CANONICAL[canonical][0]


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
    _, scale, pint_name = _CANONICAL[canonical]
    spelled = _spell(text) if len(text) <= 40 else text
    if dimension == "angle" and spelled in _ANGLE_SIGNS:
        return _ANGLE_SIGNS[spelled][1], 0.0
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
