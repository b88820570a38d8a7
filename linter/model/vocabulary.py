"""The vocabulary: every parameter a table can state, read from ``schemas/vocabulary.csv``.

That file is the one source of truth. The JSON Schema of the input, the template workbook and the documentation follow
from it.
"""

import csv
from functools import cache
from typing import Literal

from attrs import frozen

from linter.model.packaged import data_folder

Level = Literal["machine", "station"]
Kind = Literal["text", "number", "choice", "toleranced"]
Sign = Literal["", "positive", "not negative", "any"]


@frozen
class Parameter:
    """One parameter of the vocabulary.

    Attributes
    ----------
    name : str
        The name used everywhere in the project.
    level : {"machine", "station"}
        What the value belongs to.
    kind : {"text", "number", "choice", "toleranced"}
        How the value is written; ``toleranced`` is a nominal size with a class, deviations or limits.
    unit : str
        Canonical unit; ``"1"`` for a pure number, empty for text and choices.
    symbol : str
        Symbol of the standards, or empty.
    choices : tuple of str
        The words a choice may take.
    default : str
        What stands in for an absent value: a number, a parameter name, or ``mean(a, b)``; empty for none.
    sign : {"positive", "not negative", "any", ""}
        The sign that a number or size can have; empty for text and choices.
    least, most : float
        The smallest value that a machine can have, and the one that no machine reaches, in the unit; not finite for
        text and choices. Common practice: a value outside is a slip of unit or decimal point.
    change : str
        How a designer changes it to clear a finding: ``class`` (an ISO 286 class), ``size`` (the nominal), ``series``
        (preferred numbers), ``words`` (another choice); empty where it is a requirement or a fact.
    example : str
        A value in the form it takes, of one invented machine; empty for none.
    meaning : str
        What the value states.
    """

    name: str
    level: Level
    kind: Kind
    unit: str
    symbol: str
    choices: tuple[str, ...]
    default: str
    sign: Sign
    least: float
    most: float
    change: str
    example: str
    meaning: str


@cache
def vocabulary() -> dict[str, Parameter]:
    """Every parameter by name, in the order of the file."""
    with (data_folder("schemas") / "vocabulary.csv").open(encoding="utf-8", newline="") as stream:
        return {
            row["name"]: Parameter(
                name=row["name"],
                level=row["level"],  # type: ignore[arg-type]
                kind=row["kind"],  # type: ignore[arg-type]
                unit=row["unit"],
                symbol=row["symbol"],
                choices=tuple(row["choices"].split("|")) if row["choices"] else (),
                default=row["default"],
                sign=row["sign"],  # type: ignore[arg-type]
                least=float(row["least"] or "-inf"),
                most=float(row["most"] or "inf"),
                change=row["change"],
                example=row["example"],
                meaning=row["meaning"],
            )
            for row in csv.DictReader(stream)
        }


def parameter(name: str) -> Parameter:
    """The parameter of that name.

    Raises
    ------
    KeyError
        If the vocabulary has no such name; the text says so.
    """
    try:
        return vocabulary()[name]
    except KeyError:
        raise KeyError(f"{name!r} is not a parameter of the vocabulary (schemas/vocabulary.csv)") from None
