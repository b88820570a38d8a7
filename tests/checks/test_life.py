"""Chapter life: severities rise as values get worse, rows do not depend on each other, limits decide verdicts."""

import numpy as np
import pytest

from linter.checks.shared.base import View
from linter.checks.shared.rated_life import life_factor
from linter.mechanics import rating_life
from linter.model.stations import stations_from_rows
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load
from linter.rulebook.model import Limits
from tests.checks.support import VERSION, never_milder, only, ranks, review, same_alone, with_limit

BEARING = {
    "bearing_type": "deep groove ball", "bore_diameter": 17, "outside_diameter": 40, "dynamic_rating": 9550,
    "static_rating": 4800, "radial_load": 200, "axial_load": 0, "preload_method": "spring",
    "preload_force": [85, -9, 9], "speed_max": 12000, "limiting_speed": 17000, "required_life": 5000,
    "base_oil_viscosity_40": 32, "base_oil_viscosity_100": 5.4, "operating_temperature": 80, "lubrication": "grease",
    "cleanliness": "normal",
}  # fmt: skip
MINIATURE = {
    **BEARING, "bore_diameter": 8, "outside_diameter": 22, "ball_count": 7, "ball_diameter": 3.969,
    "pitch_diameter": 15, "radial_clearance": [10, 0, 0], "ball_material": "steel", "preload_force": [40, -4, 4],
    "radial_load": 5, "speed_max": 40000, "lubrication": "grease for high speed", "limiting_speed": 60000,
}  # fmt: skip
ROLLER = {
    "bearing_type": "cylindrical roller", "bore_diameter": 17, "outside_diameter": 40, "dynamic_rating": 20000,
    "static_rating": 15000, "radial_load": 2000, "speed_max": 12000, "required_life": 1000,
}  # fmt: skip
BARE = {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000}
LIMITS = Limits(load(VERSION).clauses["life.rating"])
ALL = [c for c in load(VERSION).clauses if c.startswith("life.")]

SWEEPS = {
    "life by radial load": ("life.rating", "radial_load", np.geomspace(20, 20000, 40)),
    "life by preload": ("life.rating", "preload_force", np.geomspace(5, 3000, 40)),
    "life by required life": ("life.rating", "required_life", np.geomspace(100, 1e8, 40)),
    "life by speed": ("life.rating", "speed_operating", np.geomspace(1e4, 1e9, 40)),
    "static by radial load": ("life.static", "radial_load", np.geomspace(10, 50000, 60)),
    "static by preload": ("life.static", "preload_force", np.geomspace(10, 50000, 60)),
    "film by temperature": ("life.film", "operating_temperature", np.linspace(60, 180, 40)),
    "film by thickness above the range": ("life.film", "operating_temperature", np.linspace(75, 0, 20)),
    "grease by required life": ("life.grease", "required_life", np.geomspace(100, 1e5, 60)),
    "grease by temperature": ("life.grease", "operating_temperature", np.linspace(50, 160, 60)),
    "grease by speed": ("life.grease", "speed_max", np.linspace(5000, 16900, 40)),
}


@pytest.mark.parametrize(("clause", "name", "values"), SWEEPS.values(), ids=SWEEPS)
def test_severity_never_drops_as_the_value_gets_worse(clause, name, values):
    found = never_milder(clause, [{**BEARING, name: float(x)} for x in values])
    assert 0 <= found[0] < found[-1]


@pytest.mark.parametrize("clause", ALL)
def test_a_row_does_not_depend_on_the_rows_beside_it(clause):
    same_alone(clause, [BEARING, MINIATURE, ROLLER, BARE, {**BEARING, "lubrication": "oil bath"}])


@pytest.mark.parametrize("clause", ALL)
def test_a_bare_row_says_what_it_wants(clause):
    found = review(clause, [BARE])
    assert found.failure is None
    assert found.outcome[0] == 2
    assert any(rows[0] for rows in found.missing.values())


def test_life_is_modified_only_where_lubricant_and_cleanliness_are_known():
    def message(**changed):
        row = {k: v for k, v in {**BEARING, **changed}.items() if v is not None}
        return assessments(assess(stations_from_rows([row]), only("life.rating")))[0].message

    assert "modified rating life" in message()
    assert "not modified for lack of cleanliness)" in message(cleanliness=None)
    assert "not modified for lack of lubrication, cleanliness, viscosity)" in message(
        cleanliness=None, lubrication=None, base_oil_viscosity_100=None
    )


def test_cleaner_and_thicker_is_never_shorter():
    words = ["extreme", "high", "normal", "slight contamination", "severe contamination", "very severe contamination"]
    view = View(stations_from_rows([{**BEARING, "machine": w, "cleanliness": w} for w in words]))
    factors = life_factor(view, LIMITS)[1]
    assert (np.diff(factors) <= 1e-12).all()
    view = View(
        stations_from_rows([{**BEARING, "machine": str(t), "operating_temperature": t} for t in range(40, 120, 5)])
    )
    assert (np.diff(life_factor(view, LIMITS)[1]) <= 1e-12).all()


def test_life_of_rows_with_balls_and_rollers():
    """Exponent 3 for balls and 10/3 for rollers, a_1 = 0.25 at 99 % (ISO 281, from memory)."""
    rows = [{**BEARING, "machine": "1", "preload_method": "none", "preload_force": None, "cleanliness": None},
            {**ROLLER, "machine": "2", "required_reliability": 99}]  # fmt: skip
    rows = [{k: v for k, v in row.items() if v is not None} for row in rows]
    found = review("life.rating", rows).result
    expected = [
        float(rating_life.life_hours((9550 / 200) ** 3, 12000)),
        0.25 * float(rating_life.life_hours(10 ** (10 / 3), 12000)),
    ]
    assert found.observed == pytest.approx(expected)


def test_film_thickness_stands_in_the_working_of_a_preloaded_bearing():
    (found,) = assessments(assess(stations_from_rows([MINIATURE]), only("life.film")))
    value = {w.key: w.value for w in found.working}
    assert 0.05 < value["film"] < 1.0
    assert value["lambda"] == pytest.approx(value["film"] / np.hypot(0.03, 0.01))


@pytest.mark.parametrize(
    ("clause", "limit", "value", "row"),
    [
        ("life.static", "normal", [30.0, 40.0], BEARING),
        ("life.film", "full", 3.0, BEARING),
        ("life.grease", "vertical_factor", 0.1,
         {**BEARING, "required_life": 600, "shaft_orientation": "vertical"}),
        ("life.grease", "longest", 1000, {**BEARING, "required_life": 1500}),
    ],
)  # fmt: skip
def test_a_changed_limit_changes_the_verdict(clause, limit, value, row):
    assert ranks(clause, [row])[0] != ranks(clause, [row], with_limit(clause, limit, value))[0]


SMALL = {
    **BEARING, "bore_diameter": 3, "outside_diameter": 8, "dynamic_rating": 560, "static_rating": 180,
    "radial_load": 20, "preload_method": "none", "preload_force": None, "operating_temperature": 60,
}  # fmt: skip


def small(**changes):
    return {k: v for k, v in {**SMALL, **changes}.items() if v is not None}


def test_a_small_bearing_is_judged_by_the_smallest_curve_of_e_c():
    """e_C of ISO 281 falls to nothing below its curves, which begin at 25 mm; a 3 x 8 bearing keeps an a_ISO."""
    rows = [small(machine=str(d), pitch_diameter=d, cleanliness="slight contamination") for d in (5.5, 24.9, 25, 40)]
    clean, a_iso, far = life_factor(View(stations_from_rows(rows)), LIMITS)
    assert clean[0] > 0.03
    assert a_iso[0] > 0.3
    assert (far[:2] > a_iso[:2]).all()
    assert (far[2:] == a_iso[2:]).all()
    old = Limits(load("2026.3").clauses["life.rating"])
    assert life_factor(View(stations_from_rows(rows)), old)[1][0] < 0.15


def test_additives_never_shorten_a_life_and_do_nothing_above_kappa_1():
    for viscosity in (8, 15, 30, 60, 120):
        oil = {"base_oil_viscosity_40": viscosity, "base_oil_viscosity_100": viscosity / 6, "cleanliness": "high"}
        rows = [{**BEARING, **oil, "machine": word, "ep_additives": word} for word in ("yes", "no")]
        found = review("life.rating", rows).result
        life = found.observed
        kappa = next(line.values for line in found.working if line.key == "kappa")
        assert life[0] >= life[1]
        assert (kappa[0] < 1) or life[0] == life[1]


def test_ceramic_balls_dent_a_computed_rating_sooner():
    row = {
        "bearing_type": "angular contact ball", "contact_angle": 15, "bore_diameter": 20, "outside_diameter": 42,
        "ball_count": 13, "ball_diameter": 6.35, "pitch_diameter": 31, "radial_load": 1000, "axial_load": 0,
        "preload_method": "none",
    }  # fmt: skip
    steel, ceramic = (
        review("life.static", [{**row, "ball_material": word}]).result.observed[0]
        for word in ("steel", "silicon nitride")
    )
    assert ceramic / steel == pytest.approx(0.71)
    stated = [{**row, "static_rating": 5000, "ball_material": word} for word in ("steel", "silicon nitride")]
    assert len({review("life.static", [r]).result.observed[0] for r in stated}) == 1


@pytest.mark.parametrize(
    "spoilt", [{"base_oil_viscosity_40": -32}, {"base_oil_viscosity_100": 64}, {"base_oil_viscosity_40": 0}]
)
def test_a_viscosity_that_cannot_be_used_is_not_passed_over(spoilt):
    assert review("life.rating", [{**BEARING, **spoilt}]).outcome[0] not in (0, 1)


def test_hotter_oil_is_never_milder_beyond_the_viscosity_line():
    rows = [{**BEARING, "operating_temperature": t} for t in (60, 120, 200, 300, 399, 450, 900)]
    assert never_milder("life.film", rows)[-1] == 4
    thin = [{**BEARING, "base_oil_viscosity_40": v, "base_oil_viscosity_100": 0.9 * v} for v in (5, 1, 0.4, 0.2, 0.01)]
    assert never_milder("life.film", thin)[-1] == 4


def test_grease_at_the_ends_of_its_formulas():
    fast = [{**BEARING, "required_life": 500, "speed_max": n} for n in (5000, 12000, 17000, 18000, 40000, 200000)]
    assert never_milder("life.grease", fast)[-1] >= 3
    cold = {**BEARING, "operating_temperature": 30, "required_life": 1e6}
    assert ranks("life.grease", [cold])[0] == 2
    short = {**BEARING, "required_life": 20000}
    assert ranks("life.grease", [short, {**short, "regreasing_interval": 500}]).tolist() == [4, 0]
    assert ranks("life.grease", [{**short, "required_life": 400, "regreasing_interval": 90000}])[0] == 0


def test_the_remedy_for_a_grease_works_and_proposes_nothing_that_is_there():
    row = {**BEARING, "operating_temperature": 95, "required_life": 2500}
    found = review("life.grease", [row]).result
    cooler = float(next(line.values[0] for line in found.working if line.key == "cooler"))
    assert 70 <= cooler < 95
    life = review("life.grease", [{**row, "operating_temperature": cooler}]).result
    assert float(next(line.values[0] for line in life.working if line.key == "life")) == pytest.approx(2500, rel=1e-6)
    wide = review("life.grease", [{**row, "lubrication": "grease for high speed"}]).result
    assert "grease for high speed" in found.facts["ways"](0)
    assert "grease for high speed" not in wide.facts["ways"](0)
