"""The vocabulary: every parameter a table can state, read from ``schemas/vocabulary.csv``.

That file is the one source of truth. The JSON Schema of the input, the template workbook and the documentation follow
from it.
"""

import csv
from functools import cache
from typing import Literal, get_args

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
    """Every parameter by name, in the order of the file.

    Raises
    ------
    ValueError
        If a row of the file is not whole; the text names the file, the parameter and the column.
    """
    found: dict[str, Parameter] = {}
    with (data_folder("schemas") / "vocabulary.csv").open(encoding="utf-8", newline="") as stream:
        for row in csv.DictReader(stream):
            entry = _entry(row)
            if entry.name in found:
                raise ValueError(f"schemas/vocabulary.csv: {entry.name}: the name stands twice")
            found[entry.name] = entry
    return found


def _entry(row: dict[str, str]) -> Parameter:
    """One row, refused where it says what no parameter can be."""
    name, choices = row.get("name", ""), tuple(row["choices"].split("|")) if row.get("choices") else ()
    kinds, levels, signs = get_args(Kind), get_args(Level), get_args(Sign)
    wrong = {
        "a cell for each column is expected, no more and no fewer": None in row or None in row.values(),
        f"level: one of {', '.join(levels)} is expected; read was {row['level']!r}": row["level"] not in levels,
        f"kind: one of {', '.join(kinds)} is expected; read was {row['kind']!r}": row["kind"] not in kinds,
        f"sign: one of {', '.join(filter(None, signs))} or nothing is expected; read was {row['sign']!r}": row["sign"]
        not in signs,
        "choices: words are expected for a choice, and for nothing else": bool(choices) != (row["kind"] == "choice"),
        "unit: expected for a number or a size, and for nothing else": bool(row["unit"])
        != (row["kind"] in ("number", "toleranced")),
        "meaning: it must be told": not row["meaning"],
    }
    for reason, is_wrong in wrong.items():
        if is_wrong:
            raise ValueError(f"schemas/vocabulary.csv: {name}: {reason}")
    try:
        least, most = float(row["least"] or "-inf"), float(row["most"] or "inf")
    except ValueError:
        raise ValueError(
            f"schemas/vocabulary.csv: {name}: least and most: numbers are expected; "
            f"read were {row['least']!r} and {row['most']!r}"
        ) from None
    return Parameter(**{**row, "choices": choices, "least": least, "most": most})  # type: ignore[arg-type]


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
