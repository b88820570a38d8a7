"""Random assemblies against closed forms, a test function of the literature, and the same draws again."""

import json
import math

import numpy as np
import pytest
from click.testing import CliRunner
from scipy import stats

from linter import load_rulebook
from linter.command.cli import main
from linter.model.stations import Stations, stations_from_rows
from linter.report.spread_writers import percent
from linter.review.assess import FINDING, assess
from linter.review.spread.dimensions import assemblies, dimensions, draw
from linter.review.spread.shares import Settings, share_of, spread
from linter.review.spread.sobol import indices

BOOK = load_rulebook("2026.4")


def machine(**more: object) -> Stations:
    """A fan of two spring-loaded deep groove ball bearings, 8 x 22 x 7."""
    common = {
        "bearing_type": "deep groove ball",
        "bore_diameter": 8,
        "outside_diameter": 22,
        "tolerance_class": "P5",
        "clearance_class": "C3",
        "rotating_ring": "inner",
        "speed_max": 20000,
        "shaft_seat_diameter": [8, -0.002, 0.004],
        "housing_seat_diameter": [22, 0.0, 0.009],
        "bearing_span": [40, -0.05, 0.05],
        "preload_method": "spring",
        "spring_rate": [10, -0.4, 0.4],
        "spring_free_length": [9, -0.1, 0.1],
        "spring_installed_length": [7, -0.15, 0.15],
        "shaft_temperature": 40,
        "housing_temperature": 40,
        "ball_count": 7,
        "ball_diameter": 3.969,
        "pitch_diameter": 15,
        "dynamic_rating": 3300,
        "static_rating": 1370,
        "radial_load": 10,
        "axial_load": 0,
    }
    return stations_from_rows([{**common, **more}, {**common, **more}])


def test_an_output_that_does_not_vary_has_no_indices() -> None:
    first, total = indices(np.full(9, 3.0), np.full(9, 3.0), np.full((2, 9), 3.0))
    assert np.isnan(first).all() and np.isnan(total).all()


@pytest.mark.parametrize(("beyond", "draws"), [(0, 100), (3, 100), (50, 100), (100, 100), (7, 20_000)])
def test_intervals_are_those_of_clopper_and_pearson(beyond: int, draws: int) -> None:
    wanted = stats.binomtest(beyond, draws).proportion_ci(0.99, method="exact")
    share = share_of(beyond, draws)
    assert (share.low, share.high) == pytest.approx((wanted.low, wanted.high), abs=1e-12)


def test_the_share_without_interference_lies_in_its_interval() -> None:
    # Interference of the inner ring = seat - bore, two normal deviations: a linear chain with a closed form.
    fan = machine()
    dims = dimensions(fan)
    seat = next(d for d in dims if d.key == "shaft_seat_diameter@A")
    ring = next(d for d in dims if d.key == "ring_bore@A")
    mean = 1000 * 0.5 * (seat.lower + seat.upper) - 0.5 * (ring.lower + ring.upper)
    sigma = math.hypot(1000 * (seat.upper - seat.lower), ring.upper - ring.lower) / (6 * 4 / 3)
    limit = mean - 1.5 * sigma
    upper = mean + 1.8 * sigma
    one_sided, two_sided = stats.norm.cdf(-1.5), stats.norm.cdf(-1.5) + stats.norm.sf(1.8)
    inside = [0, 0]
    for seed in range(100):
        copies = assemblies(fan, dims, draw(dims, 2000, np.random.default_rng(seed)))
        low = copies.measured["ring_bore"][0]
        interference = (1000 * copies.size("shaft_seat_diameter").lower - low)[::2]
        for k, (beyond, wanted) in enumerate(
            [
                (interference < limit, one_sided),
                ((interference < limit) | (interference > upper), two_sided),
            ]
        ):
            share = share_of(int(beyond.sum()), 2000)
            inside[k] += share.low <= wanted <= share.high
    assert min(inside) >= 95


def test_a_share_by_the_rulebook_is_that_of_its_limit() -> None:
    # The force of the spring against the least force wanted: rate and lengths are normal, nearly a linear chain.
    fan = machine(spring_rate=[10, -1.5, 1.5], spring_free_length=[10.2, -0.4, 0.4])  # 32 N against 33 N
    found = spread(fan, BOOK, Settings(draws=4000, gate="remark"))[0]
    lines = {(line.clause, line.station): line for line in found.lines}
    force = lines["preload.minimum", "A"]
    sigma = math.hypot(10 * 0.8 / 8, 3.2 * 3.0 / 8, 10 * 0.3 / 8)
    assert force.quantiles[1] == pytest.approx(32.0, abs=0.1)
    assert force.quantiles[2] - force.quantiles[0] == pytest.approx(6 * sigma, rel=0.1)
    assert force.lower is not None
    wanted = stats.norm.cdf((force.lower - 32.0) / sigma)
    assert force.share.low <= wanted <= force.share.high
    names = [key for key, _, _ in force.influence]
    assert set(names[:3]) == {"spring_rate", "spring_free_length", "spring_installed_length"}


def test_an_assembly_at_its_middle_is_that_drawing_without_tolerances() -> None:
    fan = machine()
    dims = dimensions(fan)
    middles = np.array([[0.5 * (d.lower + d.upper)] for d in dims])
    copies = assemblies(fan, dims, middles)
    assert copies.size("spring_installed_length").nominal[0] == pytest.approx(7.0)
    assert copies.size("shaft_seat_diameter").lower[1] == copies.size("shaft_seat_diameter").upper[1]
    assert copies.size("shaft_seat_diameter").lower[1] == pytest.approx(0.001)
    assert copies.measured["ring_bore"][0] == pytest.approx([-2.5, -2.5])
    review = assess(copies, BOOK, keep="figures").reviews["fit.running-clearance"]
    assert (review.outcome != FINDING).all()


def test_the_makers_tolerance_of_the_force_stands_for_rate_and_free_length() -> None:
    fan = machine(spring_load_tolerance=10)
    keys = [d.key for d in dimensions(fan)]
    assert "spring_load_tolerance" in keys and "spring_rate" not in keys and "spring_free_length" not in keys
    dims = dimensions(fan)
    deviations = np.array([[0.0 if d.key != "spring_load_tolerance" else 10.0] for d in dims])
    forced = assess(assemblies(fan, dims, deviations), BOOK, keep="figures")
    assert forced.reviews["preload.minimum"].figures["observed"][0] == pytest.approx(22.0)


def test_members_of_the_chain_are_drawn_each() -> None:
    fan = machine(spacer_stack="+20±0.1 -13±0.05")
    dims = dimensions(fan)
    keys = [d.key for d in dims]
    assert "spacer_stack.1" in keys and "spacer_stack.2" in keys and "spring_installed_length" not in keys
    deviations = np.array([[{"spacer_stack.1": 0.1, "spacer_stack.2": -0.05}.get(d.key, 0.0)] for d in dims])
    copies = assemblies(fan, dims, deviations)
    assert copies.size("spring_installed_length").nominal == pytest.approx([7.15, 7.15])
    assert set(copies.text("spacer_stack")) == {""}


def test_tightening_what_matters_lowers_the_share() -> None:
    fan = machine(housing_seat_diameter=[22, -0.012, 0.001], spring_free_length=[11, -0.1, 0.1])
    found = spread(fan, BOOK, Settings(draws=2000, shape="rectangular"))[0]
    assert 0 < found.any_limit.value < 1
    assert any(lever.dimension.name == "housing_seat_diameter" for lever in found.tighten)
    assert all(lever.half < lever.now for lever in found.tighten)
    assert all(lever.double <= lever.now + 1e-3 for lever in found.relax)


def test_clauses_about_the_drawing_are_not_drawn() -> None:
    lines = spread(machine(), BOOK, Settings(draws=500, gate="remark"))[0].lines
    assert lines and not any(line.clause.startswith(("table.", "fit.shaft-class")) for line in lines)


def test_a_machine_without_a_tolerance_says_so() -> None:
    bare = stations_from_rows([{"bore_diameter": 8, "shaft_seat_diameter": 8}])
    found = spread(bare, BOOK, Settings(draws=100))[0]
    assert found.lines == () and "nothing to draw" in found.notes[0]


@pytest.mark.parametrize(
    ("share", "text"), [(0.0, "0 %"), (1.0, "100 %"), (0.0123, "1.2 %"), (0.9998, "99.98 %"), (0.00005, "0.005 %")]
)
def test_percent(share: float, text: str) -> None:
    assert percent(share) == text


TABLE = """machine;station;bearing_type;bore_diameter;outside_diameter;tolerance_class;clearance_class;\
shaft_seat_diameter;housing_seat_diameter;rotating_ring
Fan;A;deep groove ball;8;22;P5;C3;8 +0.004/-0.002;22 +0.009/0;inner
Fan;B;deep groove ball;8;22;P5;C3;8 +0.004/-0.002;22 +0.009/0;inner
"""


def run(tmp_path, *arguments: str):
    table = tmp_path / "fan.csv"
    table.write_text(TABLE, encoding="utf-8")
    return CliRunner().invoke(main, ["spread", str(table), "--draws", "500", *arguments])


def test_the_command_writes_the_same_bytes_for_a_seed(tmp_path) -> None:
    contents = []
    for name, seed in (("one", "3"), ("two", "3"), ("three", "4")):
        done = run(tmp_path, "--seed", seed, "--out", str(tmp_path / name))
        assert done.exit_code == 0, done.output
        contents.append([(tmp_path / name / f"fan.spread.{kind}").read_bytes() for kind in ("json", "html")])
    assert contents[0] == contents[1] != contents[2]
    content = json.loads(contents[0][0])
    assert content["format"] == "ringseat-spread" and content["settings"]["seed"] == 3
    assert {d["name"] for d in content["machines"][0]["dimensions"]} >= {"ring_bore", "radial_clearance"}
    assert b"A share is no release" in contents[0][1]


def test_measured_values_take_the_place_of_the_shape(tmp_path) -> None:
    measured = tmp_path / "measured.csv"
    lines = "".join(f"shaft_seat_diameter,A,{value}\n" for value in (8.0035, 8.0036, 8.0037, 8.0038, 8.0039))
    measured.write_text("dimension,station,value\n" + lines, encoding="utf-8")
    done = run(tmp_path, "--measured", str(measured), "--out", str(tmp_path / "out"))
    assert done.exit_code == 0, done.output
    content = json.loads((tmp_path / "out" / "fan.spread.json").read_text(encoding="utf-8"))
    assert content["settings"]["measured"] == {"shaft_seat_diameter@A": 5}
    most = {"A": 0.0, "B": 0.0}
    for line in content["machines"][0]["lines"]:
        for entry in line["influence"]:
            name, _, station = entry["dimension"].partition("@")
            if name == "shaft_seat_diameter":
                most[station] = max(most[station], entry["total"])
    assert most["A"] < 0.06 < 0.08 < most["B"]


@pytest.mark.parametrize(
    ("content", "told"),
    [
        ("a,b\n1,2\n", "line 1"),
        ("dimension,station,value\nshaft_seat_diameter,C,8\n", "'shaft_seat_diameter@C'"),
        ("dimension,station,value\nshaft_seat_diameter,A,eight\n", "line 2: read the value 'eight'"),
        ("dimension,station,value\nshaft_seat_diameter,A,80\n", "beyond ten times the tolerance"),
        ("dimension,station,value\nshaft_seat_diameter,A,8.001\n", "expected at least 5"),
    ],
)
def test_a_wrong_list_of_measured_values_is_told(tmp_path, content: str, told: str) -> None:
    measured = tmp_path / "measured.csv"
    measured.write_text(content, encoding="utf-8")
    done = run(tmp_path, "--measured", str(measured))
    assert done.exit_code == 2 and told in done.stderr


@pytest.mark.parametrize("wrong", [("--draws", "10"), ("--seed", "-1"), ("--cp", "0")])
def test_settings_out_of_range_are_refused(tmp_path, wrong: tuple[str, str]) -> None:
    done = run(tmp_path, *wrong)
    assert done.exit_code == 2 and wrong[0] in done.stderr


def test_an_absent_table_is_told(tmp_path) -> None:
    done = CliRunner().invoke(main, ["spread", str(tmp_path / "absent.csv")])
    assert done.exit_code == 2 and "absent.csv" in done.stderr
