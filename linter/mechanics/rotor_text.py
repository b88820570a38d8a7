"""The text forms of a rotor: the sections of its shaft, the discs on it, and the forces from outside.

Lengths in mm, masses in kg, moments of inertia in kg.mm2. A section or a body is written ``length x outside / inside``,
the inside only where it is hollow. Decimal point or decimal comma, one of them throughout.
"""

import re
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

_NUMBER = r"\d+(?:[.,]\d+)?"
_BODY = rf"({_NUMBER})\s*[xX×*]\s*[⌀øØ]?\s*({_NUMBER})(?:\s*/\s*[⌀øØ]?\s*({_NUMBER}))?"
_SECTION = re.compile(_BODY)
_DISC = re.compile(
    rf"(?:[^\W\d_][\w-]*\s+)?(?P<mass>{_NUMBER})\s*(?P<unit>kg|g)\s*@\s*(?P<at>[-−–]?\s*{_NUMBER})"
    rf"(?:\s*\(\s*(?:{_BODY}|I_?p\s*(?P<polar>{_NUMBER})\s*,?\s*I_?t\s*(?P<transverse>{_NUMBER}))\s*\))?"
)
_FORCE = re.compile(rf"(?:[^\W\d_][\w-]*\s+)?({_NUMBER})\s*(kN|N)\s*@\s*([-−–]?\s*{_NUMBER})")
_BETWEEN = re.compile(r"\s*[+;]\s*|\s+")
_MASS = {"kg": 1.0, "g": 1e-3}
_FORCES = {"N": 1.0, "kN": 1000.0}
NO_FORCES = "none"
_SMALLEST, _LARGEST = 0.01, 20000.0  # mm; a figure outside is a slip (common practice)
_HEAVIEST, _MOST = 1e6, 200  # kg; members of one text (common practice)


class Sections(NamedTuple):
    """Sections of a shaft from its left end, arrays of shape (sections,): length, outside and inside diameter [mm]."""

    length: Array
    outside: Array
    inside: Array


class Discs(NamedTuple):
    """Bodies on a shaft, arrays of shape (..., discs); polar and transverse moment NaN where they are not stated.

    Position of the centre of mass [mm from the left end], mass [kg], moments of inertia about the axis of the shaft
    and about a diameter through the centre of mass [kg.mm2].
    """

    position: Array
    mass: Array
    polar: Array
    transverse: Array


def _members(text: str, pattern: "re.Pattern[str]", expected: str) -> list["re.Match[str]"]:
    """Matches that follow one another to the end of the text."""
    if "," in re.sub(r"\s,|,\s", " ", text) and "." in text:
        raise ValueError(f"{text[:20]!r}: decimal comma and decimal point in one text; expected one of them")
    at, end = len(text) - len(text.lstrip()), len(text.rstrip())
    found: list[re.Match[str]] = []
    while at < end or not found:
        match = pattern.match(text, at, end)
        if match is None:
            raise ValueError(f"position {at + 1}: {text[at:end][:20]!r} read, expected {expected}")
        found.append(match)
        if len(found) > _MOST:
            raise ValueError(f"position {at + 1}: more than {_MOST} members; expected fewer")
        at = match.end()
        if at < end:
            gap = _BETWEEN.match(text, at, end)
            if gap is None:
                raise ValueError(f"position {at + 1}: {text[at:end][:20]!r} read, expected + or the end")
            at = gap.end()
            if at == end:
                raise ValueError(f"position {end}: the text ends with {text[end - 1]!r}, expected {expected}")
    return found


def _value(text: str | None) -> float:
    """A number with point or comma; 0 for none."""
    return float(re.sub(r"[−–]", "-", text).replace(",", ".").replace(" ", "")) if text else 0.0


def _body(match: "re.Match[str]", first: int) -> tuple[float, float, float]:
    """Length, outside and inside diameter of a body whose groups begin at ``first``."""
    length, outside, inside = (_value(match[first + k]) for k in range(3))
    if not _SMALLEST <= length <= _LARGEST or not _SMALLEST <= outside <= _LARGEST or outside <= inside:
        raise ValueError(
            f"position {match.start(first) + 1}: {match.group()!r} read, expected a length and an outside diameter "
            f"from {_SMALLEST:g} to {_LARGEST:g} mm, the inside one below it"
        )
    return length, outside, inside


def parse_sections(text: str) -> Sections:
    """Sections from text such as ``12 x 8 + 10 x 10 + 60 x 12/4``.

    Parameters
    ----------
    text : str
        ``length x outside / inside`` from the left end of the shaft, mm, divided by ``+``, a semicolon or a blank.

    Returns
    -------
    Sections
        Arrays of shape (sections,).

    Raises
    ------
    ValueError
        With the position (counted from 1), what was read there and what was expected.

    Examples
    --------
    >>> parse_sections("12 x 8 + 60 x 12/4").inside.tolist()
    [0.0, 4.0]
    """
    members = _members(text, _SECTION, "a section as length x outside / inside")
    return Sections(*np.array([_body(match, 1) for match in members]).T)


def parse_discs(text: str) -> Discs:
    """Discs from text such as ``wheel 12 g @ -4 (8 x 30/6) + magnet 10 g @ 40 (Ip 0.4 It 0.6)``.

    Each member is a word (which may be left out), the mass in g or kg, ``@``, the place of its centre of mass [mm from
    the left end of the shaft, off the shaft where it overhangs], and in brackets either the body that it is taken for,
    as length x outside / inside, or its polar and transverse moment of inertia [kg.mm2].

    Parameters
    ----------
    text : str
        Members divided by ``+``, a semicolon or a blank.

    Returns
    -------
    Discs
        Arrays of shape (discs,); of a body I_p = m (D² + d²)/8 and I_t = I_p/2 + m b²/12.

    Raises
    ------
    ValueError
        With the position (counted from 1), what was read there and what was expected.

    Examples
    --------
    >>> parse_discs("wheel 12 g @ -4 (8 x 30)").polar.tolist()
    [1.35]
    """
    rows = []
    for match in _members(text, _DISC, "a disc as mass in g or kg @ place (length x outside / inside)"):
        mass = _value(match["mass"]) * _MASS[match["unit"]]
        if not 0.0 < mass <= _HEAVIEST or abs(_value(match["at"])) > _LARGEST:
            raise ValueError(
                f"position {match.start() + 1}: {match.group()!r} read, expected a mass above 0 and up to "
                f"{_HEAVIEST:g} kg, and a place within {_LARGEST:g} mm"
            )
        polar = transverse = float("nan")
        if match["polar"] is not None:
            polar, transverse = _value(match["polar"]), _value(match["transverse"])
            if polar > 2.0 * transverse * (1.0 + 1e-9):
                raise ValueError(
                    f"position {match.start('polar') + 1}: {match.group()!r} read; no body has a polar moment of more "
                    "than twice the transverse one"
                )
        elif match[4] is not None:
            length, outside, inside = _body(match, 4)
            polar = mass * (outside**2 + inside**2) / 8.0
            transverse = polar / 2.0 + mass * length**2 / 12.0
        rows.append((_value(match["at"]), mass, polar, transverse))
    return Discs(*np.array(rows).T)


class Forces(NamedTuple):
    """Radial forces on a shaft, arrays of shape (forces,): place [mm from the left end] and force [N]."""

    position: Array
    force: Array


def parse_forces(text: str) -> Forces:
    """Forces from text such as ``belt 40 N @ 95``; ``none`` says that there are none.

    Parameters
    ----------
    text : str
        Members divided by ``+``, a semicolon or a blank: a word (which may be left out), the force in N or kN, ``@``,
        and its place [mm from the left end of the shaft, off the shaft where it overhangs].

    Returns
    -------
    Forces
        Arrays of shape (forces,).

    Raises
    ------
    ValueError
        With the position (counted from 1), what was read there and what was expected.

    Examples
    --------
    >>> parse_forces("belt 40 N @ 95").force.tolist()
    [40.0]
    """
    if text.strip().lower() == NO_FORCES:
        return Forces(np.zeros(0), np.zeros(0))
    members = _members(text, _FORCE, "a force in N or kN @ place, or none")
    rows = [(_value(match[3]), _value(match[1]) * _FORCES[match[2]]) for match in members]
    if any(abs(place) > _LARGEST for place, _ in rows):
        raise ValueError(f"{text[:40]!r} read, expected places within {_LARGEST:g} mm")
    return Forces(*np.array(rows).T)
