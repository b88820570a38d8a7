"""Whether a seat or shoulder whose name says no part is the shaft's or the housing's, where names hold no positions.

``Rugosité Ra portée`` beside ``Rugosité Ra alésage``, ``Spallamento sede`` beside ``Spallamento albero``, ``Sede Ø``
over *62 H6*: what the other part states already, a class, or a size like the bearing's tells (see ``told_parts.py``).
"""

from collections.abc import Iterable, Mapping

from linter.reading.words.headings import Told, Words
from linter.reading.words.parts import concepts_said, part_alone
from linter.reading.words.told_parts import PARTS, Rest, of_parts, with_part

#: What a name has to say to be of a seat or shoulder of some part.
_OF_SEATS = frozenset(("seat", "shoulder"))
_OTHERS = frozenset(
    ("shaft", "housing", "bore", "ring", "fillet", "undercut", "cage", "seal", "spring", "rotor", "hub", "impeller")
)
_LONGEST = 80


def parts_of_names(
    names: Iterable[str], words: Words, cells: Mapping[str, tuple[str, ...]], told: Mapping[str, Told]
) -> dict[str, Told]:
    """The names of one table that mean something only with the part that the table tells.

    Parameters
    ----------
    names : iterable of str
        Names down a column or along a heading.
    words : Words
        The names that are understood.
    cells : mapping of str to tuple of str
        What stands beside or below each name.
    told : mapping of str to Told
        Names in which a position was found; they are left alone.

    Returns
    -------
    dict of str to Told
        By name; what nothing tells is not among them.
    """
    order = [name for name in names if name not in told and 2 < len(name) <= _LONGEST]
    all_of = {name: Rest(name, "", (name,), cells.get(name, ())) for name in order}
    headings = {name: words.heading(name) for name in order}
    known = [(all_of[name], h) for name, h in headings.items() if h is not None and not h.station]
    unknown = [one for name, one in all_of.items() if headings[name] is None and _may_be_of_part(one, words)]
    if not unknown or not any(heading.parameter.startswith(PARTS) for _, heading in known):
        return {}
    return {name: Told(rest, "") for name, rest in of_parts(unknown, known, words).items()}


def _may_be_of_part(one: Rest, words: Words) -> bool:
    """Whether a name speaks of a seat or shoulder, says no part, and means something of either."""
    said = concepts_said(one.name)
    if not said & _OF_SEATS or said & _OTHERS or part_alone(one.name):
        return False
    return all(with_part(one, part, words) for part in PARTS)
