"""How a machine is put together: which ring is pressed, by what force, and in which order."""

from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner

from linter.command.cli import main
from linter.mechanics import fit_in_use, press_fit
from linter.model.stations import stations_from_rows
from linter.review.assembly import assemblies
from linter.rulebook.load import load

BOOK = load("current")
SAMPLES = Path(__file__).parents[2] / "sample_exports"
PART = {
    "machine": "M", "bearing_type": "deep groove ball", "bore_diameter": 20, "outside_diameter": 47, "ring_width": 14,
    "static_rating": 6600, "tolerance_class": "Normal", "shaft_material": "steel", "housing_material": "steel",
    "ring_material": "bearing steel", "shaft_seat_diameter": [20, 0.002, 0.011], "preload_method": "spring",
    "housing_seat_diameter": [47, 0.0, 0.025],
}  # fmt: skip


def _one(*rows):
    (found,) = assemblies(stations_from_rows([{"station": chr(65 + k), **row} for k, row in enumerate(rows)]), BOOK)
    return found


def test_force_at_both_ends_of_the_fit_by_hand():
    ring = _one(PART).stations[0].inner
    assert (ring.smallest, ring.largest) == pytest.approx((2.0, 21.0))  # k5 with a bore of 0 to -10 um
    raceway, _ = fit_in_use.mean_raceway_diameters(20.0, 47.0, "groove")
    limits = BOOK.clauses["fit.mounting"].limits
    for interference, force in ((2.0, ring.least_force), (21.0, ring.most_force)):
        # a ring on a solid shaft of nearly its own modulus: p = U E/(2 d) (1 - (d/D_r)^2)
        rough = interference * 1e-3 * 209_000 / 40.0 * (1.0 - (20.0 / float(raceway)) ** 2)
        by_hand = float(limits["friction"].value) * np.pi * 20.0 * 14.0 * rough
        assert force == pytest.approx(by_hand, rel=0.01)
    assert np.isnan(ring.warm)  # it would take more than an open bearing bears
    lighter = _one({**PART, "shaft_seat_diameter": [20, 0.002, 0.006]}).stations[0].inner
    assert 20.0 + 0.016 / (12.5e-6 * 20.0) < lighter.warm <= limits["open_limit"].value


def test_a_ring_with_clearance_slips_on():
    outer = _one(PART).stations[0].outer
    assert not outer.tight and outer.most_force == 0.0 and np.isnan(outer.warm)
    assert "slips on by hand" in outer.text()


def test_the_second_ring_is_held_against_what_the_balls_bear():
    tight = {**PART, "housing_seat_diameter": [47, -0.025, -0.009]}
    steps = " ".join(_one(tight).steps)
    assert "push on both rings at once, never through the balls" in steps
    strong = {**tight, "static_rating": 60_000}
    assert "stay below the" in " ".join(_one(strong).steps)


def test_order_follows_the_ring_that_is_tight():
    on_shaft = _one(PART, {**PART, "axial_role": "spring-loaded", "washer_inside_diameter": 40.0}).steps
    assert "onto the shaft" in on_shaft[1] and "the washer and then the spring" in on_shaft[3]
    loose = {**PART, "shaft_seat_diameter": [20, -0.033, -0.02], "housing_seat_diameter": [47, -0.025, -0.009]}
    in_housing = _one(loose, loose).steps
    assert "into the housing" in in_housing[1] and "Push the shaft through" in in_housing[2]


def test_nut_and_balance_have_their_place():
    steps = _one({**PART, "nut_torque": 20, "balancing_method": "as assembled"}).steps
    nut = next(k for k, step in enumerate(steps) if "tighten the nut" in step)
    balance = next(k for k, step in enumerate(steps) if "in its own bearings" in step)
    assert nut < balance and "5210" in steps[nut]  # 20 N m over 0.192 and 20 mm


def test_unknown_fits_are_said():
    found = _one({"machine": "M", "bore_diameter": 20, "outside_diameter": 47})
    assert "the fit is not known" in found.stations[0].inner.text()


@pytest.mark.parametrize("table", ["grinding-spindle.csv", "coolant-pump.csv"])
def test_the_sheet_is_written(table, tmp_path):
    called = CliRunner().invoke(main, ["sheet", str(SAMPLES / table), "--assembly", "--out", str(tmp_path)])
    assert called.exit_code == 0, called.output
    name = table.removesuffix(".csv")
    text = (tmp_path / f"{name}.assembly.txt").read_text(encoding="utf-8")
    page = (tmp_path / f"{name}.assembly.html").read_text(encoding="utf-8")
    assert text.startswith("ASSEMBLY: ") and "1. Clean" in text and "bearing maker come first" in text
    assert "<h2>Order</h2>" in page and "<script" not in page
    assert not list(tmp_path.glob("*.assembly.*"))[2:]


def test_pressure_of_the_outer_ring_counts_its_own_wall():
    tight = {**PART, "housing_seat_diameter": [47, -0.025, -0.009], "housing_outer_diameter": 70}
    outer = _one(tight).stations[0].outer
    _, raceway = fit_in_use.mean_raceway_diameters(20.0, 47.0, "groove")
    pressure = press_fit.contact_pressure(1e-3 * outer.largest, 47.0, raceway, 70.0, 208e3, 0.3, 210e3, 0.3)
    friction = float(BOOK.clauses["fit.mounting"].limits["friction"].value)
    assert outer.most_force == pytest.approx(friction * np.pi * 47.0 * 14.0 * float(pressure), rel=1e-6)
