"""The check functions by name, as the rulebook names them."""

from collections.abc import Callable
from functools import cache
from importlib import import_module

from linter.checks.shared.base import Limits, Result, View


@cache
def check_function(name: str) -> Callable[[View, Limits], Result]:
    """The check of that name (``module.function`` of ``linter.checks``).

    Raises
    ------
    KeyError
        If there is none.
    """
    module, _, function = name.partition(".")
    try:
        found: Callable[[View, Limits], Result] = getattr(import_module(f"linter.checks.{module}"), function)
    except (ImportError, AttributeError):
        raise KeyError(f"there is no check {name!r}") from None
    return found
