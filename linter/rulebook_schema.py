"""Checks rulebook files against ``schemas/rulebook.schema.json`` before anything else looks at them."""

import json
from functools import cache
from typing import Any

from jsonschema import Draft202012Validator
from jsonschema.exceptions import best_match

from linter.packaged import data_folder
from linter.rulebook import RulebookError


@cache
def _validator(kind: str) -> Draft202012Validator:
    schema = json.loads((data_folder("schemas") / "rulebook.schema.json").read_text(encoding="utf-8"))
    return Draft202012Validator({**schema, "$ref": f"#/$defs/{kind}"})


def validate(file: str, kind: str, content: dict[str, Any]) -> None:
    """Check one rulebook file.

    Parameters
    ----------
    file : str
        File name for the message.
    kind : {"rulebook", "clauses", "layer"}
        Which part of the schema it has to follow.
    content : dict
        The file as read.

    Raises
    ------
    RulebookError
        With file, clause and reason of the most telling error.
    """
    error = best_match(_validator(kind).iter_errors(content))
    if error is None:
        return
    path = list(error.absolute_path)
    clause = None
    if len(path) >= 2 and path[0] == "clauses":
        clause = content["clauses"][path[1]].get("id", f"number {int(path[1]) + 1}")
        path = path[2:]
    where = ".".join(str(part) for part in path)
    raise RulebookError(file, clause, f"{where + ': ' if where else ''}{error.message}")
