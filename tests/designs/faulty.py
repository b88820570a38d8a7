"""Machines with one to four planted faults, made from a seed, each from a design whose gate is open.

``drawing=True`` plants only faults that stand in what a designer may move by itself (sizes, tolerances, form,
springs), so that the design without them is a way out; otherwise any fault, facts of the machine and choices of the
bearing among them. No two faults of one machine touch the same value.
"""

import random
from collections.abc import Iterator
from functools import cache

from linter.model.vocabulary import parameter
from linter.rulebook.model import Rulebook
from tests.designs.complete import Design, complete_design
from tests.designs.faults import Fault, faults_for
from tests.designs.sweep import batched

Cells = set[tuple[int, str]]
MOST_FAULTS = 4
#: Designs looked at together for an open gate.
STEP = 40


def touched(before: Design, after: Design) -> Cells:
    """Values that differ, as (station, parameter)."""
    return {
        (k, name)
        for k, (old, new) in enumerate(zip(before.rows, after.rows, strict=True))
        for name in {*old, *new}
        if old.get(name) != new.get(name)
    }


@cache
def moves(name: str) -> bool:
    """Whether a designer moves a value by itself; words are choices but for the form of an undercut."""
    change = parameter(name).change
    return bool(change) and (change != "words" or name.endswith("undercut_form"))


def planted(design: Design, count: int, rng: random.Random, *, drawing: bool) -> Design | None:
    """The design with so many faults; None where it does not take them."""
    found, cells = design, set()
    kinds: list[Fault] = list(faults_for(design))
    rng.shuffle(kinds)
    for fault in kinds:
        if len(found.faults) == count:
            break
        try:
            new = fault.plant(found, rng)
        except KeyError:  # an earlier fault took away what this one spoils
            continue
        own = touched(found, new)
        names = {(k if parameter(n).level == "station" else 0, n) for k, n in own}
        if own and not names & cells and (not drawing or all(moves(name) for _, name in own)):
            found, cells = new, cells | names
    return found if len(found.faults) == count else None


def faulty_machines(count: int, seed: int, book: Rulebook, *, drawing: bool) -> Iterator[Design]:
    """So many machines whose gate is closed, with one, two, three and four faults in turn; the same for a seed."""
    number, given = seed * 1_000_000, 0
    while given < count:
        designs = [complete_design(n) for n in range(number, number + STEP)]
        number += STEP
        good = [design for design, v, k in batched([(d, d.rows) for d in designs], book) if v.gates[k] == "open"]
        trials = []
        for design in good:
            rng = random.Random(f"faulty {seed} {design.seed}")
            faulty = planted(design, 1 + len(trials) % MOST_FAULTS, rng, drawing=drawing)
            if faulty is not None:
                trials.append((faulty, faulty.rows))
        for design, v, k in batched(trials, book):
            if v.gates[k] == "closed" and given < count:
                given += 1
                yield design
