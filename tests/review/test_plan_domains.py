"""The values that a plan may try for a cell, whatever stands in it now."""

import numpy as np
import pytest

from linter.model.stations import Stations
from linter.model.vocabulary import vocabulary
from linter.review.plan.cells import Cell
from linter.review.plan.domains import domain
from linter.review.plan.trials import machine_block, with_values
from linter.rulebook.load import load
from tests.designs.complete import complete_design

BOOK = load()
MOVABLE = [entry.name for entry in vocabulary().values() if entry.kind in ("number", "toleranced")]


@pytest.fixture(scope="module")
def machine() -> Stations:
    return complete_design(7).stations()


@pytest.mark.parametrize("value", [0.0, -1.0, np.nan, 1e-9])
def test_a_value_that_cannot_be_has_a_domain_all_the_same(machine, value):
    """What cannot be stays as it was read: a zero, a minus, a wrong unit. The values to try are possible ones."""
    block = machine_block(machine, 0)
    for name in MOVABLE:
        stated = (value, -0.01, 0.01, "") if vocabulary()[name].kind == "toleranced" else value
        stations = with_values(machine, [(name, int(block[0]), stated)])
        for option in domain(stations, block, Cell(name, 0), BOOK):
            assert np.isfinite(option.cost), name
            nominal = option.value[0] if isinstance(option.value, tuple) else option.value
            assert np.isfinite(nominal), name
