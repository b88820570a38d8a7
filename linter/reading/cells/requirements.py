"""Requirements of characteristic lists: geometrical tolerances and roughness in one cell, and what they speak of.

A feature control frame comes as text in many spellings: with symbols or words, with bars, brackets or blanks between
its parts (``[↗|0.005|A-B]``, ``POS DIA 0.01 (M) A B-C(L)``). Words and symbols are data (``data/characteristics.csv``):
terms of ISO 1101, ISO 21920-1 and ASME Y14.5 from memory, and trade usage. Which parameter a requirement speaks of
follows from the feature that its row names; a requirement that no parameter stands for is never bent into another.
"""

import re
from functools import cache, lru_cache
from pathlib import Path

from attrs import frozen

from linter.model.packaged import columns_of
from linter.reading.cells.signs import LONGEST_TEXT, ReadError, caseless, fold, shown
from linter.reading.cells.units import known_unit

_DATA = Path(__file__).resolve().parent / "data" / "characteristics.csv"
_GRADES = _DATA.with_name("roughness_grades.csv")

#: Characteristics that are sizes: their cells are read as sizes, not as geometrical tolerances.
SIZES = ("diameter", "radius", "chamfer", "length", "angle", "thread")
EXPECTED = "a requirement such as ⌭ 0.002, ↗ 0.005 A-B, total run-out 0.005 A-B or Ra 0.4"

_PARTS = str.maketrans("[]|", "   ")
_HEADED = re.compile(r"(?P<head>[^\d.,]*(?:[.,](?!\d)[^\d.,]*)*)(?P<number>\d+(?:[.,]\d+)?|[.,]\d+)(?P<tail>.*)")
_DIAMETRAL = re.compile(r"[ .:=]*(?:S?Ø|(?<![^\W_])(?:DIA|DIAM|dia|diam)\.?)[ ]*$")
_BOUND = re.compile(r"(?:[ .:=≤<]|(?<![^\W\d_])(?:max|maxi|MAX|t)\.?(?= |$))+$")
_MODIFIER = re.compile(r"\([A-Z]\)|[Ⓐ-Ⓩ]|(?<![^\W\d_])(?:CZ|SZ|UZ|CF|ACS|ALS)(?![^\W\d_])")
# fold() writes Cyrillic letters that look like Latin ones as Latin, so what is compared with folded text is folded too
_TOWARDS = re.compile(
    r"(?i:wrt|with respect to|relative to|rel\.? to|to|datums?|zu|zur|zum|bezogen auf|Bezug|par rapport à|respecto a"
    rf"|rispetto a|{fold('относительно')}|基準|基准|对|データム)[ :.]+|(?:à|a|{fold('к')}) "
)
_LETTERS = r"[^\W\d_]{1,2}(?: ?- ?[^\W\d_]{1,2})*"
_AXES = "|".join(
    map(fold, ("axis", "axes", "Achse", "axe", "eje", "asse", "оси", "ось", "軸線", "軸心", "轴线", "轴心"))
)
_DATUMS = re.compile(rf"{_LETTERS}(?:[ ,]+{_LETTERS}){{0,2}}|(?:[^\W\d_]+[ ']){{0,3}}[^\W\d_]{{0,6}}(?:{_AXES})")
_READING = re.compile(r"(?:^| )(?:max|maxi|MAX|TIR|FIM)\.?$")
_RA_BEHIND = re.compile(r"(.*?)[\s_.,:(（]*(?<![A-Za-z])Ra[)）]?")  # roughness Ra
_FONT_LETTER = re.compile(r"[abce-qs-z](?: ?n)?")  # n is Ø there

_RADIAL = ("circular run-out", "radial run-out", "total run-out", "total radial run-out")
_AXIAL = ("circular run-out", "axial run-out", "total run-out", "total axial run-out", "perpendicularity")
_ON_SEAT = {"cylindricity": "_cylindricity", "roughness Ra": "_roughness", **dict.fromkeys(_RADIAL, "_runout")}
_ON_SHOULDER = dict.fromkeys(_AXIAL, "_runout")
_OF_PAIR = {"shaft_seat": "coaxiality_of_shaft_seats", "housing_seat": "coaxiality_of_bores"}
_BETWEEN = ("coaxiality", "position")


@frozen
class Requirement:
    """A geometrical tolerance or a roughness out of one cell.

    Attributes
    ----------
    characteristic : str
        What is limited, a word of ``data/characteristics.csv``.
    number : str
        The limit as written.
    unit : str
        Unit text behind it, empty for none.
    diametral : bool
        True where Ø stands before the limit.
    modifiers : tuple of str
        ``(M)``, ``CZ`` and the like.
    datums : str
        What it refers to, as written; empty for none.
    """

    characteristic: str
    number: str
    unit: str = ""
    diametral: bool = False
    modifiers: tuple[str, ...] = ()
    datums: str = ""


@cache
def _words() -> dict[str, str]:
    return {_key(word): characteristic for word, characteristic in columns_of(_DATA, "word", "characteristic")}


def _key(text: str) -> str:
    return re.sub(r"[\s_.\-]+", " ", caseless(text)).strip()


def characteristic_of(text: str) -> str:
    """The characteristic that a word or a symbol names, with its symbol behind it or not; empty for none."""
    return _characteristic_of(text) if 0 < len(text) <= 60 else ""


@lru_cache(maxsize=4096)
def _characteristic_of(text: str) -> str:
    if (found := _words().get(_key(text), "")) or (with_symbol := _RA_BEHIND.fullmatch(text.strip())) is None:
        return found
    return found if (found := _words().get(_key(with_symbol[1]), "")) == "roughness Ra" else ""


@cache
def _grades() -> dict[str, float]:
    return {grade: float(ra) for grade, ra in columns_of(_GRADES, "grade", "ra")}


def roughness_of_grade(text: str) -> float | None:
    """Ra in µm of a grade of roughness (``N5``: former ISO 1302, from memory), or None."""
    return _grades().get(text.strip().replace(" ", "").upper()) if len(text) < 8 else None


def read_requirement(text: str) -> Requirement | ReadError | None:
    """A geometrical tolerance or a roughness as text.

    Parameters
    ----------
    text : str
        Raw text of a cell.

    Returns
    -------
    Requirement, ReadError or None
        None where the text names no such characteristic: then it may be a size. Codes ``not-a-requirement`` (one is
        named, and the rest is not understood) and ``symbol-font`` (a letter that only a symbol font makes a symbol).
    """
    if not 0 < len(text) <= LONGEST_TEXT:
        return None
    plain = " ".join(fold(text).translate(_PARTS).split())
    match = _HEADED.fullmatch(plain)
    if match is None:
        return None
    head, number, tail = match["head"], match["number"], match["tail"]
    diametral = bool(found := _DIAMETRAL.search(head))
    head = _BOUND.sub("", head[: found.start()] if found else head)
    characteristic = characteristic_of(head)
    if not head:
        unit, tail = _unit(tail)
        word, _, rest = tail.strip().partition(" ")
        characteristic = characteristic_of(word)
        if not characteristic or characteristic in SIZES:
            return None
        tail = f" {rest}"
    elif not characteristic:
        if _FONT_LETTER.fullmatch(head) and re.search(r"[.,]", number):
            return ReadError("symbol-font", text, EXPECTED, f"the {head} of “{shown(text)}” is a symbol in some fonts")
        return None
    elif characteristic in SIZES:
        return None
    else:
        unit, tail = _unit(tail)
    modifiers = tuple(_MODIFIER.findall(tail))
    rest = " ".join(_MODIFIER.sub(" ", tail).strip(" .,;:").split())
    rest = _READING.sub("", rest)
    rest = rest[found.end() :] if (found := _TOWARDS.match(rest)) else rest
    if rest and not _DATUMS.fullmatch(rest):
        sentence = f"“{shown(rest)}” behind the limit of “{shown(text)}” is not understood"
        return ReadError("not-a-requirement", text, EXPECTED, sentence)
    return Requirement(characteristic, number, unit, diametral, modifiers, rest)


def _unit(tail: str) -> tuple[str, str]:
    """The unit right behind a number, and what follows it; a single letter is rather a datum."""
    match = re.match(r" ?(\"|[^\W\d_]{2,6})(?![^\W\d_])", tail)
    unit = known_unit(match[1]) if match else None
    if match is None or unit is None or unit.dimension != "length":
        return "", tail
    return match[1], tail[match.end() :]


def _feature(name: str) -> str:
    """The feature that a parameter belongs to: a seat or a shoulder, empty for any other."""
    for feature in ("shaft_seat", "housing_seat", "shaft_shoulder", "housing_shoulder"):
        if name.startswith(feature + "_"):
            return feature
    return ""


def parameter_of(named: str, characteristic: str) -> tuple[str, str]:
    """The parameter that a characteristic of a named feature is.

    Parameters
    ----------
    named : str
        Parameter that the row names: a size names its feature (``shaft_seat_diameter``), another one itself.
    characteristic : str
        What is stated, a word of ``data/characteristics.csv``.

    Returns
    -------
    parameter, reason : str
        One of the two is empty; the reason is half a sentence that says why there is no parameter.
    """
    feature = _feature(named)
    if characteristic in SIZES:
        return (named, "") if _is_size(named, characteristic) else ("", f"a {characteristic}, which {named} is not")
    if named.startswith("coaxiality_of"):
        fits = characteristic in _BETWEEN or (named == _OF_PAIR["shaft_seat"] and characteristic in _RADIAL)
        return (named, "") if fits else ("", f"{named} is named, and {characteristic} stands here")
    meant = ""
    if feature.endswith("_seat") and characteristic in _BETWEEN:
        meant = _OF_PAIR[feature]
    elif feature:
        suffix = (_ON_SEAT if feature.endswith("_seat") else _ON_SHOULDER).get(characteristic, "")
        meant = feature + suffix if suffix else ""
    if meant and (named.endswith("_diameter") or meant == named):
        return meant, ""
    if meant or (feature and not named.endswith("_diameter")):
        return "", f"{named} is named, and {characteristic} stands here"
    return "", f"{characteristic} of {feature.replace('_', ' ') or named} is no parameter of a review"


def _is_size(name: str, kind: str) -> bool:
    """Whether a parameter can be a size of a kind."""
    if kind == "diameter":
        return name.endswith("diameter") or name == "shaft_bore"
    if kind in ("radius", "chamfer"):
        return name.endswith("_radius") or name == "ring_chamfer"
    if kind == "angle":
        return name == "contact_angle"
    return kind == "length" and not name.endswith(("diameter", "_radius", "_bore", "_angle"))


def assumed(parameter: str, stated: Requirement, named: str) -> str:
    """What is taken for granted when a requirement is used, as half a sentence; empty for nothing."""
    said = []
    if parameter.endswith("_seat_runout") and not stated.characteristic.startswith("total"):
        said.append(f"a {stated.characteristic} is taken for the total run-out")
    if parameter.startswith("coaxiality_of") and named != parameter:
        datum = f"datum {stated.datums}" if stated.datums else "the datum, which is not stated,"
        said.append(f"{datum} is taken for the other seat")
    if parameter.startswith("coaxiality_of") and stated.characteristic == "position" and not stated.diametral:
        said.append("a cylindrical zone is taken, though no Ø is stated")
    if any(modifier in ("(M)", "(L)", "Ⓜ", "Ⓛ") for modifier in stated.modifiers):
        said.append("what the material condition adds is not counted")
    return "; ".join(said)
