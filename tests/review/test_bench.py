"""What a trial comes to on the bench is what a review of the whole rulebook comes to, whatever was tried before."""

import numpy as np

from linter.model.stations import stations_from_rows
from linter.model.vocabulary import parameter, vocabulary
from linter.review.plan.bench import Bench
from linter.review.plan.cells import Cell
from linter.review.plan.domains import domain
from linter.review.plan.trials import Trial, machine_block, try_out
from linter.rulebook.load import load
from tests.designs.faulty import faulty_machines

BOOK = load()


def trials_of(stations, block, draw: np.random.Generator, count: int) -> list[Trial]:
    """Random changes of one to four cells, words and facts among them."""
    cells = [
        Cell(entry.name, row)
        for entry in vocabulary().values()
        if entry.kind != "text"
        for row in range(1 if entry.level == "machine" else len(block))
    ]
    found = []
    for _ in range(count):
        trial = {}
        for k in draw.choice(len(cells), draw.integers(1, 5), replace=False):
            cell = cells[k]
            options = domain(stations, block, cell, BOOK)[:6]
            if options:
                trial[cell] = options[draw.integers(len(options))].value
            elif parameter(cell.name).kind == "number":
                trial[cell] = float(draw.choice([1e-3, 0.5, 10.0, 70.0, 1e9]))
        found.append(trial)
    return found


def test_a_trial_comes_to_what_the_whole_rulebook_says():
    draw = np.random.default_rng(1)
    designs = list(faulty_machines(3, 1, BOOK, drawing=False))
    stations = stations_from_rows([row for design in designs for row in design.rows])
    blocks = [machine_block(stations, k) for k in range(3)]
    bench = Bench(stations, blocks, BOOK)
    known: list[list[Trial]] = [[{}], [{}], [{}]]
    for _ in range(3):
        wanted = {}
        for k, block in enumerate(blocks):
            new = trials_of(stations, block, draw, 12)
            # cells of trials made before come back together, alone and twice
            old = [known[k][n] for n in draw.integers(len(known[k]), size=8)]
            joined = [{**a, **b} for a, b in zip(old[:4], new[:4], strict=True)]
            wanted[k] = [*new, *old, *joined, *[{c: v} for c, v in joined[0].items()], new[0]]
            known[k] += new
        for k, found in bench.try_out(wanted).items():
            whole = try_out(stations, blocks[k], wanted[k], BOOK)
            np.testing.assert_array_equal(found.grade, whole.grade)
            np.testing.assert_array_equal(found.measure, whole.measure)


def test_a_table_that_states_what_cannot_be_is_reviewed_whole():
    (design,) = faulty_machines(1, 3, BOOK, drawing=True)
    rows = [dict(row) for row in design.rows]
    rows[0]["bore_diameter"] = -3.0
    stations = stations_from_rows(rows)
    block = machine_block(stations, 0)
    trials = [{}, *trials_of(stations, block, np.random.default_rng(3), 5)]
    found = Bench(stations, [block], BOOK).try_out({0: trials})[0]
    whole = try_out(stations, block, trials, BOOK)
    np.testing.assert_array_equal(found.grade, whole.grade)
    np.testing.assert_array_equal(found.measure, whole.measure)
