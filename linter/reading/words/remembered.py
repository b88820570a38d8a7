"""Functions of a text and the names of a table, asked once for each text as long as the names are in use."""

from collections.abc import Callable
from functools import wraps
from typing import Any, Protocol, TypeVar


class Asked(Protocol):
    """The names of a table, with what was asked of them."""

    asked: dict[Any, Any]


_Words = TypeVar("_Words", bound=Asked)
_Said = TypeVar("_Said")


def remembered(say: Callable[[str, _Words], _Said]) -> Callable[[str, _Words], _Said]:
    """The function with a memory; what it says must follow from the text and the names alone.

    Parameters
    ----------
    say : callable
        A function of a text and the names of a table.

    Returns
    -------
    callable
        The same, but each text is looked at once.
    """

    @wraps(say)
    def asked_once(text: str, words: _Words) -> _Said:
        key = say, text
        if key not in words.asked:
            words.asked[key] = say(text, words)
        said: _Said = words.asked[key]
        return said

    return asked_once
