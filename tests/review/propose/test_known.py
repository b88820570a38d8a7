"""A machine whose clauses are known: what they say of a change is what the whole rulebook says of it."""

import numpy as np

from linter.review.defaults import with_defaults
from linter.review.propose.known import Known
from linter.review.room.domains import Cell
from linter.review.room.judged import Judge
from linter.rulebook.load import load
from tests.designs.complete import complete_design

BOOK = load()
#: Cells with a value that changes a verdict, one that assumptions rest on, and one that cannot be.
TRIALS = [
    {Cell("shaft_fillet_radius", 0): 2.5}, {Cell("shaft_seat_runout", 1): 0.2}, {Cell("preload_method", 0): 1},
    {Cell("shaft_temperature", 0): 95.0}, {Cell("speed_max", 0): 9e4}, {},
]  # fmt: skip
CANNOT_BE = {Cell("ring_width", 0): -1.0}


def same_as_whole(known: Known, trials) -> bool:
    judge = Judge(known.stations, np.arange(len(known.stations)), BOOK, "remark")
    return bool((known.grades(trials) == judge.grades(trials)).all() and (known.must() == judge.must).all())


def test_what_a_change_comes_to_is_what_the_whole_rulebook_says():
    known = Known(with_defaults(complete_design(8000).stations(), BOOK), BOOK)
    seen = [known.grades(TRIALS)]
    assert same_as_whole(known, TRIALS)
    assert same_as_whole(known, [*TRIALS, CANNOT_BE])
    for trial in TRIALS[:4]:
        known.change(trial)
        assert same_as_whole(known, TRIALS)
        seen.append(known.grades(TRIALS))
    assert sum((one != seen[0]).any() for one in seen) >= 3
    known.change(CANNOT_BE)
    assert same_as_whole(known, TRIALS)
