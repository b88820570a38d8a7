"""Names of two values in one cell: ``Ra shaft / bore``, ``Fr/Fa``, ``Temperature min/max``, a stroke between them."""

import re
from collections.abc import Callable, Iterator
from typing import Protocol

from linter.model.vocabulary import Parameter, parameter
from linter.reading.words.measured_words import is_statement
from linter.reading.words.parts import concepts_said

#: What the aspect of the first of two values begins with; the parameter of the second follows.
PAIR = "with "
_STROKE = re.compile(r"\s*[/／]\s*")
_LONGEST = 60
_PARTS = ("shaft", "housing")


class _Named(Protocol):
    """What a half of a name has to say of itself."""

    @property
    def parameter(self) -> str: ...
    @property
    def station(self) -> str: ...
    @property
    def aspect(self) -> str: ...


def pair_said(core: str, find: Callable[[str], _Named | None]) -> tuple[str, str] | None:
    """The two parameters that the halves of a name say, or None.

    Parameters
    ----------
    core : str
        A name without its unit.
    find : callable
        What a name means.

    Returns
    -------
    tuple of str or None
        The parameter of each half, in the order of the name.
    """
    halves = _STROKE.split(core) if len(core) <= _LONGEST else []
    if len(halves) != 2 or not all(halves) or any(map(is_statement, halves)):
        return None  # Wellensitz / Soll
    for one, two in _ways(*halves):
        first, second = find(one), find(two)
        alike = bool(set(one.casefold().split()) & set(two.casefold().split()))  # Ra seat, Ra bore
        if not alike and (first is None or second is None):
            continue
        if first is None and second is not None:
            first = _of_other_part(one, second.parameter, find)
        elif second is None and first is not None:
            second = _of_other_part(two, first.parameter, find)
        if first is not None and second is not None and _go_together(first, second):
            return first.parameter, second.parameter
    return None


def _ways(one: str, two: str) -> Iterator[tuple[str, str]]:
    """The halves as they stand, and with the words of the other half that hold for both."""
    first, second = one.split(), two.split()
    if len(first) > 1:
        yield one, " ".join((*first[:-1], two))
    if len(second) > 1:
        yield " ".join((one, *second[1:])), two
    yield one, two


def _of_other_part(half: str, other: str, find: Callable[[str], _Named | None]) -> _Named | None:
    """A half that says no part, where the other half is of one (``Ra seat / Ra bore``)."""
    part = next((part for part in _PARTS if other.startswith(f"{part}_")), "") if "seat" in concepts_said(half) else ""
    found = find(f"{_PARTS[part == _PARTS[0]]} {half}") if part else None
    return found if found is not None and found.parameter == other.replace(part, _PARTS[part == _PARTS[0]]) else None


def _go_together(one: _Named, two: _Named) -> bool:
    """Whether two values can share a cell and a unit."""
    entries: list[Parameter] = [parameter(one.parameter), parameter(two.parameter)]
    first, second = entries
    numbers = {"number", "toleranced"}
    return (
        one.parameter != two.parameter
        and {first.kind, second.kind} <= numbers
        and (first.unit, first.level) == (second.unit, second.level)
        and {one.aspect, two.aspect} == {"value"}
        and not (one.station or two.station)
    )


_VALUE = r"[−-]?[Ø⌀ø]?\s*\d[^/]*?"
_TWO = re.compile(rf"\s*(?P<one>{_VALUE}|[-–—])\s*/\s*(?P<two>{_VALUE}|[-–—])\s*")
_UNIT_BEHIND = re.compile(r"\d\s*(?P<unit>[^\d\s.,()±+-][^\d()±+-]*)")


def two_values(text: str) -> tuple[str, str] | None:
    """The two values of a cell, each with the unit that stands behind both; or None."""
    found = _TWO.fullmatch(text)
    if found is None:
        return None
    one, two = found["one"], found["two"]
    unit = _UNIT_BEHIND.search(two)
    bare = one.replace(".", "").replace(",", "").strip("Ø⌀ø ").isdigit()
    return f"{one} {unit['unit']}" if unit is not None and bare else one, two
