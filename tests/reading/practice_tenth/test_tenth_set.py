"""The tenth set itself: each stated value stands in its cell, the truth agrees with itself."""

import hashlib
from collections import Counter

import pytest
from practice.grammar import Table
from practice_ninth import test_ninth_set as checks

from practice_tenth import written

#: SHA-256 over the tables (workbooks by what they mean: their bytes hold the day they were written) and their meaning.
SET = ""
TABLES = [written.make(number) for number in sorted(written.texts())]
CHECKS = (checks.test_every_value_stands_in_its_cell, checks.test_the_truth_agrees_with_itself)
each_table = pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)


@each_table
def test_every_value_stands_in_its_cell(table: Table) -> None:
    checks.test_every_value_stands_in_its_cell(table)


@each_table
def test_the_truth_agrees_with_itself(table: Table) -> None:
    checks.test_the_truth_agrees_with_itself(table)
