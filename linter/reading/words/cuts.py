"""Ways to cut a name of a table into a core and what stands around it: an aspect, a station, a feature."""

import re
from functools import lru_cache

from linter.model.vocabulary import parameter
from linter.reading.cells.units import dimension_of, known_unit, split_heading_unit
from linter.reading.words.dictionary import CAMEL, JOINT, MOST_REMEMBERED, Version, dictionary, group_key, word_key
from linter.reading.words.mapping import Aspect
from linter.reading.words.parts import names_place

_ASPECTS: dict[str, Aspect] = {
    "VALUE": "value", "UNIT": "unit", "UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "class",
}  # fmt: skip
BRACKET = re.compile(r"(.*\S)[ _]*[\[({]([^\[\](){}]+)[\])}]")
#: Words that say a size stands with its tolerance, which its cells show anyway.
WITH_TOLERANCE = re.compile(
    r"[ _,]*[(\[]?\b(?:w/|with|incl\.?|including|mit|inkl\.?|avec|con)"
    r"[ _]?(?:its )?tol(?:erance|eranz|érance|leranza|erancia)?s?\b\.?[)\]]?$"
    r"|[(（]?(?:公差付き?|含公差|带公差)[)）]?$",
    re.IGNORECASE,
)
# Units as the last word of a name in camel case (boreDiameterMm); a capital there begins a word and is no SI prefix.
_CAMEL_UNIT = re.compile(r"(.*[a-z0-9])(Mm|Um|Rpm|DegC|Deg|Kg|MPa|Mpa|Gmm|Percent|Hours)")
_CAMEL_UNITS = {
    "Mm": "mm", "Um": "um", "Rpm": "rpm", "DegC": "degC", "Deg": "deg", "Kg": "kg", "MPa": "MPa", "Mpa": "MPa",
    "Gmm": "g.mm", "Percent": "%", "Hours": "h",
}  # fmt: skip
#: Units that may stand behind a name with a blank only (``Bore mm``); none that is a word or a letter of its own.
_UNIT_BEHIND = re.compile(r"(.*[^ ,]) (mm|µm|um|inch|rpm|r/min|1/min|min-1|min\^-1|kg|°C|degC|deg|MPa|kN|мм|мкм)")
#: Units of one letter behind a comma, a newton of Cyrillic letters among them; one that does not fit may be a station.
_LETTER_UNIT = re.compile(r"(.*[^ ,]), ([Nhч])|(.*[\u0400-\u04ff].*[^ ,]), (H)")
LETTER_STATION = re.compile(r"[A-ZА-Я]|[1-9][0-9]?|00?[1-9]")
#: A mark of a footnote behind a name (``Diamètre 1) / mm``).
FOOTNOTE = re.compile(r"(?<=[^\W\d])(?: \d\)| ?[*†‡]{1,3})(?=$|,| ?[/\[(])")
#: A name in a script of its own and then in Latin letters.
TWO_SCRIPTS = re.compile(
    r"((?:[^A-Za-z]|[A-Za-z](?![a-z]))*[\u0400-\u9fff][^A-Za-z]*(?: [A-Za-z]{1,2})?)[ /]+([A-Za-z][A-Za-z].*)"
)
_WORD = re.compile(r"[^\W\d_]{3}|[\u3040-\u30ff\u3400-\u9fff]")
#: A piece between two others that may be a station: a capital, or a word looked up (``shaft/DE/seat``).
_INNER = re.compile(r"(?<=[^\W\d_])[ _.\-/]([^\W\d_]{1,12})(?=[ _.\-/][^\W\d_])")


def joint_cuts(text: str, most: int) -> list[tuple[int, int]]:
    """Places of the outer joints of a name: the first few and the last few."""
    joints = [(found.start(), found.end()) for found in JOINT.finditer(text)]
    joints += [(found.start(), found.start()) for found in CAMEL.finditer(text)]
    joints = sorted({joint for joint in joints if joint[0] > 0 and joint[1] < len(text)})
    return joints if len(joints) <= 2 * most else joints[:most] + joints[-most:]


_SIGN_SUFFIX = re.compile(
    r"(.*[^\s_+-])[ _]*((?:tol(?:erance)?\.?[ _]*)?[+-](?:[ _]*tol(?:erance)?\.?)?)", re.IGNORECASE
)


@lru_cache(maxsize=MOST_REMEMBERED)
def aspect_cuts(text: str) -> tuple[tuple[str, Aspect], ...]:
    """Ways to cut a name into a rest and a word for an aspect of it."""
    found: list[tuple[str, Aspect]] = []
    if match := _SIGN_SUFFIX.fullmatch(text):
        found.append((match[1], "upper" if "+" in match[2] else "lower"))
    if (bracket := BRACKET.fullmatch(text)) and (aspect := _aspect_of(bracket[2])):
        found.append((bracket[1], aspect))
    for start, end in joint_cuts(text, 3):
        for rest, word in ((text[:start], text[end:]), (text[end:], text[:start])):
            if len(word) <= 30 and (aspect := _aspect_of(word)):
                found.append((rest.strip(" ,:"), aspect))
    return tuple((rest, aspect) for rest, aspect in found if rest)


def _aspect_of(word: str) -> Aspect | None:
    headings = dictionary()
    cleaned = word.strip(" ,:_")
    if cleaned.casefold().replace("_", " ") in {"size", "item", "class no"}:
        return None
    groups = headings.groups.get(cleaned) or headings.group_words.get(group_key(cleaned), ())
    wanted = [_ASPECTS[group] for group in groups if group in _ASPECTS]
    return wanted[0] if len(wanted) == 1 else None


def version_cuts(text: str) -> list[tuple[str, Version]]:
    """Ways to cut a name into a rest and a word for one of several statements: ``(new)``, ``old``, ``proposed``."""
    versions = dictionary().versions
    found: list[tuple[str, Version]] = []
    if (bracket := BRACKET.fullmatch(text)) and (version := versions.get(word_key(bracket[2]))):
        found.append((bracket[1], version))
    for start, end in joint_cuts(text, 2):
        for rest, word in ((text[:start], text[end:]), (text[end:], text[:start])):
            if len(word) <= 30 and (version := versions.get(word_key(word.strip(" ,:")))):
                found.append((rest.strip(" ,:"), version))
    return [(rest, version) for rest, version in found if rest]


def station_cuts(text: str) -> list[tuple[str, str, bool]]:
    """Ways to cut a name into a rest and a station or feature; strict where the sign between them is made for that."""
    found: list[tuple[str, str, bool]] = []
    for sign, name_first in (("@", True), ("::", False), (":", False), ("/", False), (".", False)):
        if sign in text:
            before, _, after = text.partition(sign) if name_first else text.rpartition(sign)
            if sign == "." and after.startswith(" "):
                continue  # an abbreviation (“max. housing”), no path
            before, after = before.strip(), after.strip()
            if before and after:
                found.append((before, after, True) if name_first else (after, before, True))
                if not name_first:
                    found.append((before, after, False))
    for start, end in joint_cuts(text, 3):
        before, after = text[:start].strip(" ,"), text[end:].strip(" ,")
        if before and after:
            found.append((before, after, False))
            found.append((after, before, False))
    for inner in _INNER.finditer(text):  # Shaft seat A cylindricity
        capital = len(inner[1]) == 1 and inner[1].isupper()
        if capital or (not text.isupper() and len(inner[1]) > 1 and word_key(inner[1]) in dictionary().stations):
            found.append((f"{text[: inner.start()]} {text[inner.end() + 1 :]}", inner[1], False))
            break
    return found


def station_at_end(feature: str) -> str:
    """The station at the end of a path of names (``assembly.bearings.front``, ``Welle.Lagersitz_A``), or empty."""
    pieces = [piece for piece in JOINT.split(feature) if piece]
    if len(pieces) < 2:
        return ""
    word = word_key(pieces[-1]) in dictionary().stations and len(pieces[-1]) > 2
    letter = LETTER_STATION.fullmatch(pieces[-1]) is not None and names_place(pieces[-2])
    return pieces[-1] if word or letter else ""


def spelled_out(key: str) -> tuple[str, ...]:
    """A word key, and what it says where it writes diameter or bearing in short (``shaft dia``, ``Brg Bore``)."""
    if key.startswith("brg "):
        key = "bearing " + key[4:]
    last = key.rpartition(" ")[2]
    if last not in ("dia", "diam", "ø"):
        return (key,)
    rest = key[: -len(last)].rstrip()
    return key, f"{rest} diameter", f"{rest}durchmesser"


def unit_behind(text: str) -> tuple[str, str]:
    """A heading and the unit behind it, in brackets or in one of the other ways of writing; no unit where none is."""
    if camel := _CAMEL_UNIT.fullmatch(text):
        return camel[1], _CAMEL_UNITS[camel[2]]
    rest, unit = split_heading_unit(text)
    if not unit and (letter := _LETTER_UNIT.fullmatch(text)):
        return (letter[1], letter[2]) if letter[2] else (letter[3], letter[4])
    if not unit and (behind := _UNIT_BEHIND.fullmatch(text)):
        return behind[1], behind[2]
    return rest, unit


def unit_trouble(name: str, unit: str) -> str:
    """Why a unit does not fit a parameter, or nothing."""
    wanted = parameter(name).unit
    stated = known_unit(unit)
    if not wanted:
        return f"{name} has no unit, and the name carries {unit}"
    if stated and stated.dimension != dimension_of(wanted):
        angle_signs = dimension_of(wanted) == "angle" and unit in {"'", '"', "''"}
        if not angle_signs:
            return f"{name} is measured in {wanted}, and the name carries {unit}"
    return ""


def is_short(text: str) -> bool:
    """Whether a piece can be a symbol rather than a word (``OD``, or two Chinese or Japanese signs)."""
    return len(text) < 2 or (len(text) == 2 and word_key(text) not in dictionary().words)


def with_blanks(text: str) -> str:
    """A name of words that underscores join, with blanks in their place; empty for any other."""
    joined = "_" in text and " " not in text and _WORD.search(text) is not None
    return text.replace("_", " ").strip() if joined else ""
