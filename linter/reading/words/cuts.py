"""Ways to cut a name of a table into a core and what stands around it: an aspect, a station, a feature."""

import re

from linter.reading.words.dictionary import CAMEL, JOINT, Version, dictionary, group_key, word_key
from linter.reading.words.mapping import Aspect

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
_INNER_STATION = re.compile(r"(?<=[^\W\d_])[ _.\-]([A-ZА-Я])[ _.\-](?=[^\W\d_])")


def joint_cuts(text: str, most: int) -> list[tuple[int, int]]:
    """Places of the outer joints of a name: the first few and the last few."""
    joints = [(found.start(), found.end()) for found in JOINT.finditer(text)]
    joints += [(found.start(), found.start()) for found in CAMEL.finditer(text)]
    joints = sorted({joint for joint in joints if joint[0] > 0 and joint[1] < len(text)})
    return joints if len(joints) <= 2 * most else joints[:most] + joints[-most:]


_SIGN_SUFFIX = re.compile(
    r"(.*[^\s_+-])[ _]*((?:tol(?:erance)?\.?[ _]*)?[+-](?:[ _]*tol(?:erance)?\.?)?)", re.IGNORECASE
)


def aspect_cuts(text: str) -> list[tuple[str, Aspect]]:
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
    return [(rest, aspect) for rest, aspect in found if rest]


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
    inner = _INNER_STATION.search(text)  # Shaft seat A cylindricity
    return [*found, (f"{text[: inner.start()]} {text[inner.end() :]}", inner[1], False)] if inner else found
