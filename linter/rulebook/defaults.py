"""The documented defaults of a rulebook: those of its base, each replaced by one of the layer above."""

from collections.abc import Mapping
from typing import Any

from linter.model.vocabulary import parameter, vocabulary
from linter.rulebook.gates import wrong_condition
from linter.rulebook.model import Default, Rulebook, RulebookError


def defaults_of(base: Rulebook | None, head: Mapping[str, Any]) -> tuple[Default, ...]:
    """The defaults of a rulebook.

    Parameters
    ----------
    base : Rulebook or None
        What it extends.
    head : mapping
        Its ``rulebook.toml``.

    Returns
    -------
    tuple of Default
        One for each parameter.

    Raises
    ------
    RulebookError
        For a word that its parameter does not have, or a condition that is none.
    """
    found = {default.parameter: default for default in (base.defaults if base else ())}
    for raw in head.get("defaults", ()):
        name = raw["parameter"]
        if name not in vocabulary() or raw["value"] not in parameter(name).choices:
            raise RulebookError("rulebook.toml", None, f"default of {name}: {raw['value']!r} is no word of it")
        if raw.get("unless", "machine") not in vocabulary():
            raise RulebookError("rulebook.toml", None, f"default of {name}: {raw['unless']!r} is no parameter")
        for condition in (raw.get("when", {}), *raw.get("not_when", ())):
            if wrong := wrong_condition(condition):
                raise RulebookError("rulebook.toml", None, f"default of {name}: {wrong}")
        found[name] = default_from(raw)
    return tuple(found.values())


def default_from(raw: Mapping[str, Any]) -> Default:
    """A default from its plain data."""
    return Default(**{**raw, "not_when": tuple(raw.get("not_when", ()))})
