"""ringseat: reviews parameter tables of rolling-bearing seats against a versioned rulebook.

The names below are the public door; nothing else is promised. Each is loaded when it is asked for.

``review_table``
    One table or pandas frame to a :class:`Review`: its verdict, findings and assessments.
``read_table``, ``Stations``, ``load_rulebook``, ``assess``
    The steps by themselves: a file to its stations, stations to and from a frame, a rulebook by name, and the rulebook
    over many stations at once as columns.
``InputError``, ``RulebookError``
    What is raised for a table or a rulebook that cannot be used.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

from linter.model.version import __version__

if TYPE_CHECKING:
    from linter.model.stations import Stations
    from linter.reading import InputError, read_table
    from linter.report.door import Review, review_table
    from linter.review.assess import assess
    from linter.rulebook.load import load as load_rulebook
    from linter.rulebook.model import RulebookError

__all__ = [
    "InputError",
    "Review",
    "RulebookError",
    "Stations",
    "__version__",
    "assess",
    "load_rulebook",
    "read_table",
    "review_table",
]

_HOME = {
    "InputError": ("reading", "InputError"),
    "Review": ("report.door", "Review"),
    "RulebookError": ("rulebook.model", "RulebookError"),
    "Stations": ("model.stations", "Stations"),
    "assess": ("review.assess", "assess"),
    "load_rulebook": ("rulebook.load", "load"),
    "read_table": ("reading", "read_table"),
    "review_table": ("report.door", "review_table"),
}


def __getattr__(name: str) -> Any:
    if name not in _HOME:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    module, attribute = _HOME[name]
    found = getattr(import_module(f"{__name__}.{module}"), attribute)
    globals()[name] = found
    return found


def __dir__() -> list[str]:
    return sorted(__all__)
