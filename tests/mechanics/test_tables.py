import csv

import numpy as np
import pytest

from linter.mechanics import tables

TABLES = sorted(path.stem for path in tables._DATA.glob("*.csv") if "source" in path.read_text().splitlines()[0])
IN_WORDS = ("from memory of ", "derived", "common practice")


@pytest.mark.parametrize("name", [name for name in TABLES if name not in ("sources",)])
def test_every_row_is_complete_and_names_its_source(name):
    rows = tables.rows(name)
    assert rows
    for row in rows:
        assert None not in row and None not in row.values(), row
        assert row.get("source"), row


@pytest.mark.parametrize(
    "name",
    [
        *("standard_tolerances", "fundamental_deviations", "hole_delta", "ring_tolerances", "internal_clearance"),
        *("chamfer_limits", "fillet_limits", "shoulder_heights", "undercuts", "seat_roughness"),
        "boundary_dimensions",
    ],
)
def test_every_source_is_a_known_document_or_says_what_it_is(name):
    for row in tables.rows(name):
        for key in row["source"].split("; "):
            assert key in tables.sources() or key.startswith(IN_WORDS), row


def test_every_document_is_used():
    used = set()
    for path in tables._DATA.glob("*.csv"):
        with path.open() as file:
            for row in csv.DictReader(file):
                used |= set((row.get("source") or "").split("; "))
    assert set(tables.sources()) <= used


def test_words_of_missing_values_are_empty():
    assert tables.words(["k5", None, np.nan, ""]).tolist() == ["k5", "", "", ""]
    assert tables.words(np.full(3, np.nan)).tolist() == ["", "", ""]
    assert tables.words("H7").shape == ()
    assert tables.words([5, 6]).tolist() == ["5", "6"]


def test_ranges_exclude_the_lower_and_include_the_upper_bound():
    found = tables.in_ranges(
        [0, 3, 10], [3, 6, 20], [1, 2, 3], np.array([0.0, 3.0, 3.001, 6.0, 8.0, 20.0, 20.1, np.nan])
    )
    np.testing.assert_array_equal(found, [np.nan, 1, 2, 2, np.nan, 3, np.nan, np.nan])
