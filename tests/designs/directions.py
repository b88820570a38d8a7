"""The signed directions of ``schemas/worsening.csv``: which way a parameter makes which clauses worse, except when."""

import csv
import random
from dataclasses import dataclass
from functools import cache
from typing import Any

from linter.model.packaged import data_folder
from linter.model.vocabulary import parameter
from tests.designs.complete import Design, Row


@dataclass(frozen=True)
class Worsening:
    """One row of the table.

    ``direction`` is ``higher``, ``lower`` or ``toward`` another parameter. ``exceptions`` are conditions on the row of
    a station, each ``parameter=word|word`` or ``parameter>number`` or ``parameter`` alone (stated); where one holds the
    direction is not promised. ``eases`` are clauses that the same move makes milder, so that a gate that only they
    closed may open. ``passes`` are clauses that take a finding over: a drop is explained where the same move makes one
    of them graver.
    """

    parameter: str
    direction: str
    clauses: tuple[str, ...]
    exceptions: tuple[str, ...]
    eases: tuple[str, ...]
    passes: tuple[str, ...]
    reason: str

    def holds_for(self, design: Design) -> bool:
        """Whether the direction is promised for a design."""
        return not any(_condition(condition, row) for condition in self.exceptions for row in design.rows)


def _condition(text: str, row: Row) -> bool:
    if "=" in text:
        name, _, words = text.partition("=")
        return row.get(name) in words.split("|")
    if ">" in text:
        name, _, limit = text.partition(">")
        return name in row and _nominal(row[name]) > float(limit)
    return text in row


def _nominal(value: Any) -> float:
    return float(value[0] if isinstance(value, (list, tuple)) else value)


@cache
def worsenings() -> tuple[Worsening, ...]:
    """Every row of the table."""
    with (data_folder("schemas") / "worsening.csv").open(encoding="utf-8", newline="") as stream:
        return tuple(
            Worsening(
                row["parameter"],
                row["direction"],
                tuple(row["clauses"].split()),
                tuple(filter(None, (part.strip() for part in row["except"].split(";")))),
                tuple(row["eases"].split()),
                tuple(row["passes"].split()),
                row["reason"],
            )
            for row in csv.DictReader(stream)
        )


def worsened(design: Design, entry: Worsening, rng: random.Random) -> tuple[list[Row], str] | None:
    """Rows with the value moved for the worse by a drawn step, and what was done; None where it cannot be."""
    name = entry.parameter
    if not entry.holds_for(design) or not any(name in row for row in design.rows):
        return None
    rows = [dict(row) for row in design.rows]
    own = rows if parameter(name).level == "machine" else [rng.choice([row for row in rows if name in row])]
    step = rng.randrange(4)
    what = ""
    for row in own:
        if name in row:
            value = row[name]
            nominal = _worse(_nominal(value), entry.direction, step, row, parameter(name).unit == "degC")
            row[name] = [nominal, *value[1:]] if isinstance(value, list) else nominal
            what = f"{name} {value} -> {row[name]}"
    return rows, what


def _worse(value: float, direction: str, step: int, row: Row, temperature: bool) -> float:
    """A value moved by the step of that number."""
    if direction.startswith("toward "):
        goal = _nominal(row[direction.removeprefix("toward ")])
        return goal + (value - goal) * (0.9, 0.5, 0.2, 0.05)[step]
    sign = 1 if direction == "higher" else -1
    return value + sign * (5.0, 20.0, 40.0, 60.0)[step] if temperature else value * (1.1, 1.5, 3.0, 10.0)[step] ** sign
