"""The small table of steel against ceramic balls."""

import pytest
from attrs import evolve

from linter.mechanics import kinematics
from linter.report.balls import ball_tables
from linter.rulebook.load import load

BOOK = load("current")
VALUES = {
    "ball_diameter": 3.969, "pitch_diameter": 18.0, "contact_angle": 15.0, "speed_max": 60000.0,
    "ball_material": "steel", "operating_temperature": 70.0, "bearing_type": "angular contact ball",
    "rotating_ring": "inner",
}  # fmt: skip


def test_figures_of_one_station():
    (table,) = ball_tables([("A", VALUES)], BOOK)
    rows = {row.quantity: (row.steel, row.ceramic) for row in table.rows}
    assert table.stations == ("A",) and table.now == "steel"
    assert rows["centrifugal force of a ball at the highest speed"][0].split()[0] == "14"
    cage = kinematics.speeds(60000.0, 7, 3.969, 18.0, 15.0, 0.0).cage
    ceramic = float(kinematics.centrifugal_force(3.969, 18.0, cage, 3240.0))
    assert float(rows["centrifugal force of a ball at the highest speed"][1].split()[0]) == pytest.approx(
        ceramic, rel=0.005
    )
    assert float(rows["contact stress under the same load"][1]) == pytest.approx(1.12, abs=0.01)
    assert float(rows["static load rating at the same stress"][1]) == pytest.approx(0.71, abs=0.01)
    growth = rows["growth of a ball from 20 to 70\u00a0°C"]
    assert float(growth[0].split()[0]) == pytest.approx(3969 * 12.5e-6 * 50, rel=0.005)
    gained = rows["radial clearance gained by it, rings as warm as balls"]
    assert gained[0].split()[0] == "0" and float(gained[1].split()[0]) == pytest.approx(
        2 * 3969 * (12.5e-6 - 3.3e-6) * 50, rel=0.005
    )
    assert rows["general speed limits"][1].startswith("1.25")


def test_stations_that_are_alike_share_a_table_and_what_is_unknown_has_none():
    other = {**VALUES, "speed_max": 30000.0}
    roller = {**VALUES, "bearing_type": "cylindrical roller"}
    tables = ball_tables([("A", VALUES), ("B", VALUES), ("C", other), ("D", roller), ("E", {})], BOOK)
    assert [table.stations for table in tables] == [("A", "B"), ("C",)]


def test_a_rulebook_without_heat_has_no_table():
    clauses = {name: clause for name, clause in BOOK.clauses.items() if not name.startswith("heat.")}
    assert ball_tables([("A", VALUES)], evolve(BOOK, clauses=clauses)) == ()


@pytest.mark.parametrize("name", ["ball_diameter", "pitch_diameter", "speed_max"])
@pytest.mark.parametrize("value", [1e-320, 0.0, -1.0, 1e30])
def test_a_value_that_cannot_be_has_no_table(name, value):
    assert ball_tables([("A", VALUES | {name: value})], BOOK) == ()
