"""A table of an office: whose it is, what its file is like, and its content together with its meaning.

For sets whose offices are others under even and under odd numbers, two tables and more of each.
"""

from collections.abc import Mapping, Sequence
from typing import Any, TypeVar

from practice.grammar import Expected, Table

Office = TypeVar("Office")


def office_of(number: int, odd: Sequence[Office], even: Sequence[Office]) -> tuple[Office, int]:
    """The office of a number and which of its tables that is, from nought."""
    offices = odd if number % 2 else even
    edition, index = divmod((number - 1) // 2, len(offices))
    return offices[index], edition


def file_of(said: str) -> tuple[str, str, str]:
    """Ending, separator and encoding of a file (``csv ; cp1252``, ``xlsx``); UTF-8 where none is said."""
    kind, *rest = said.split(" ")
    separator, encoding = rest if len(rest) == 2 else ("", rest[0] if rest else "utf-8")
    return kind, {"tab": "\t"}.get(separator, separator), encoding


def table_of(
    seed: int,
    kind: str,
    content: bytes,
    rotors: Sequence[Any],
    expected: tuple[Expected, ...],
    kinds: Mapping[str, str],
) -> Table:
    """The table with its meaning: ``rotors`` hold the values of each machine, its positions and what they imply."""
    return Table(
        seed=seed,
        suffix="." + kind,
        content=content,
        machines=tuple(str(one.values["machine", -1]) for one in rotors),
        stations=tuple(one.positions for one in rotors),
        expected=expected,
        implied={(m, s, name): value for m, one in enumerate(rotors) for (s, name), value in one.implied.items()},
        kinds=dict(kinds),
    )
