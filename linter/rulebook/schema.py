"""Checks rulebook files against ``schemas/rulebook.schema.json`` before anything else looks at them."""

import json
from functools import cache
from typing import Any

from jsonschema import Draft202012Validator
from jsonschema.exceptions import best_match

from linter.model.packaged import data_folder
from linter.rulebook.model import Rulebook, RulebookError


@cache
def _validator(kind: str) -> Draft202012Validator:
    schema = json.loads((data_folder("schemas") / "rulebook.schema.json").read_text(encoding="utf-8"))
    return Draft202012Validator({**schema, "$ref": f"#/$defs/{kind}"})


def _refuse(file: str, kind: str, clause: str | None, content: Any) -> None:
    error = best_match(_validator(kind).iter_errors(content))
    if error is not None:
        where = ".".join(str(part) for part in error.absolute_path)
        raise RulebookError(file, clause, f"{where + ': ' if where else ''}{error.message}")


def validate(file: str, kind: str, content: dict[str, Any]) -> None:
    """Check one rulebook file.

    Parameters
    ----------
    file : str
        File name for the message.
    kind : {"rulebook", "sources"}
        Which part of the schema it has to follow.
    content : dict
        The file as read.

    Raises
    ------
    RulebookError
        With file and reason of the most telling error.
    """
    _refuse(file, kind, None, content)


def validate_clauses(file: str, content: dict[str, Any], base: Rulebook | None) -> None:
    """Check a file of clauses: each a clause, or a change of one that what it extends has.

    Parameters
    ----------
    file : str
        File name for the message.
    content : dict
        The file as read.
    base : Rulebook or None
        What the rulebook extends.

    Raises
    ------
    RulebookError
        With file, clause and reason of the most telling error.
    """
    entries = content.get("clauses")
    if set(content) != {"clauses"} or not isinstance(entries, list) or not entries:
        raise RulebookError(
            file, None, f"expected [[clauses]] and nothing else; read was {', '.join(content) or 'nothing'}"
        )
    for number, entry in enumerate(entries, 1):
        name = entry.get("id") if isinstance(entry, dict) else None
        is_change = base is not None and (name in base.clauses or "check" not in entry)
        _refuse(file, "change" if is_change else "clause", name or f"number {number}", entry)
