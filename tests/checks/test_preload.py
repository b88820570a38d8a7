"""Chapter preload: severities rise as values get worse, rows do not depend on each other, limits decide verdicts."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from linter.checks.shared import contacts, preload_band
from linter.checks.shared.base import View
from linter.checks.shared.preload_criteria import minima
from linter.checks.shared.spring_length import share_outside
from linter.mechanics import tolerance_chain
from linter.model.stations import stations_from_rows
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load
from linter.rulebook.model import Limits
from tests.checks.support import VERSION, never_milder, only, ranks, review, with_limit

BEARING = {
    "bearing_type": "deep groove ball",
    "bore_diameter": 8,
    "outside_diameter": 22,
    "ring_width": 7,
    "ball_count": 7,
    "ball_diameter": 3.969,
    "ball_material": "steel",
    "radial_clearance": [10, 0, 0],
    "dynamic_rating": 3300,
    "static_rating": 1370,
    "speed_max": 40000,
}
SPRING = {
    **BEARING,
    "preload_method": "spring",
    "spring_rate": 10,
    "spring_free_length": 14,
    "spring_installed_length": 8,
    "spring_solid_length": 4,
    "spring_load_tolerance": 10,
    "spacer_stack": "+28±0.05 -14±0.06 -5±0.05 -1±0.03",
    "axial_load": 5,
    "radial_load": 5,
}
DISCS = {
    **BEARING, "preload_method": "spring", "spring_kind": "disc", "spring_free_length": 14, "spring_solid_length": 12,
}  # fmt: skip
RIGID = {**BEARING, "preload_method": "rigid", "preload_force": [40, -4, 4], "axial_load": 5, "radial_load": 5}
WARM = {
    "bearing_span": 60,
    "shaft_material": "steel",
    "housing_material": "aluminium",
    "shaft_temperature": 60,
    "housing_temperature": 60,
}
ALL = [c for c in load(VERSION).clauses if c.startswith("preload.")]


def records(clause, *rows):
    """Records of one clause over the stations of one or many machines, by machine and station."""
    return assessments(assess(stations_from_rows(list(rows)), only(clause)))


SWEEPS = {
    "present": ("preload.present", [{**BEARING, "preload_method": "none", "axial_load": 0, "radial_load": x}
                                    for x in np.linspace(60, 0, 25)]),
    "force": ("preload.force", [{**SPRING, "preload_force": [60, -x, x]} for x in np.linspace(15, 0.5, 30)]),
    "force off centre": ("preload.force", [{**SPRING, "preload_force": [60 + x, -9, 9]}
                                           for x in np.linspace(0, 40, 30)]),
    "minimum": ("preload.minimum", [{**RIGID, "radial_load": 0, "preload_force": [x, 0, 0]}
                                    for x in np.linspace(60, 0, 30)]),
    "minimum, axial pull": ("preload.minimum", [{**SPRING, "axial_load": x} for x in np.linspace(0, 90, 20)]),
    "maximum": ("preload.maximum", [{**RIGID, "preload_force": [x, 0, 0]} for x in np.geomspace(10, 2000, 40)]),
    "maximum, estimate": ("preload.maximum", [
        {"bearing_type": "angular contact ball", "contact_angle": 15, "static_rating": 1370, "ball_material": "steel",
         "preload_method": "rigid", "preload_force": [x, 0, 0]} for x in np.geomspace(10, 2000, 40)]),
    "window": ("preload.window", [{**SPRING, "dynamic_rating": x} for x in np.geomspace(2000, 90000, 30)]),
    "window, unbalance": ("preload.window", [{**SPRING, "residual_unbalance": x} for x in np.geomspace(0.1, 60, 30)]),
    "travel to solid": ("preload.spring-travel", [
        {**SPRING, "spacer_stack": "", "spring_installed_length": [x, -0.1, 0.1]} for x in np.linspace(9, 3.9, 30)]),
    "travel to free": ("preload.spring-travel", [
        {**SPRING, "spacer_stack": "", "spring_installed_length": [x, -0.1, 0.1]} for x in np.linspace(9, 14.2, 30)]),
    "spring solid": ("preload.spring-solid", [{**SPRING, "spring_rate": x} for x in np.linspace(5, 150, 30)]),
    "thermal, rigid": ("preload.thermal", [{**RIGID, **WARM, "bearing_span": x} for x in np.geomspace(0.5, 300, 30)]),
    "thermal, spring": ("preload.thermal", [{**SPRING, **WARM, "bearing_span": x} for x in np.geomspace(5, 9000, 30)]),
    "unload, spring": ("preload.unload", [{**SPRING, "axial_load": x} for x in np.linspace(0, 200, 30)]),
    "unload, rigid": ("preload.unload", [{**RIGID, "axial_load": x} for x in np.linspace(0, 500, 30)]),
    "discs to flat": ("preload.disc-range", [
        {**DISCS, "spring_installed_length": [x, -0.05, 0.05]} for x in np.linspace(13, 12, 30)]),
    "discs to free": ("preload.disc-range", [
        {**DISCS, "spring_installed_length": [x, -0.05, 0.05]} for x in np.linspace(13, 14.1, 30)]),
    "axial play by clearance": ("preload.axial-play", [
        {**SPRING, "spring_installed_length": 13.2, "spacer_stack": "+27.7±0.05 -14.5", "radial_clearance": [x, 0, 0]}
        for x in np.geomspace(0.5, 300, 40)]),
    "axial play by length": ("preload.axial-play", [
        {**SPRING, "spacer_stack": "", "spring_installed_length": [x, -0.05, 0.05]} for x in np.linspace(8, 14, 40)]),
    "axial demand by load": ("preload.axial-demand", [
        {**SPRING, "axial_demand": "reversing load", "axial_load": x} for x in np.linspace(0, 90, 30)]),
    "rigid speed": ("preload.rigid-speed", [{**RIGID, "speed_max": x} for x in np.linspace(1e4, 2e5, 30)]),
    "contact angle": ("preload.contact-angle", [{**SPRING, "radial_clearance": [x, 0, 0]}
                                                for x in np.linspace(12, 0, 30)]),
}  # fmt: skip


@pytest.mark.parametrize(("clause", "rows"), SWEEPS.values(), ids=SWEEPS)
def test_severity_never_drops_as_the_value_gets_worse(clause, rows):
    found = never_milder(clause, rows)
    assert 0 <= found[0] < found[-1]


def test_axial_play_is_that_of_the_geometry_and_shrinks_with_tight_fits():
    """Two 608: a ball touches both grooves when the ring has moved by A sin α_0 from the middle, either way."""
    row = {**SPRING, "spacer_stack": "", "spring_installed_length": [13, -0.1, 0.1]}
    (found,) = records("preload.axial-play", row, {**row, "station": "B"})
    grooves = (0.52 + 0.53 - 1.0) * 3.969
    half = np.sqrt(grooves**2 - (grooves - 0.010 / 2.0) ** 2)  # the centres come apart by G_r/2 at right angles
    assert found.observed.value == pytest.approx(2 * 2 * half, rel=1e-9)
    seats = {"tolerance_class": "P5", "shaft_seat_diameter": [8, "k5"], "housing_seat_diameter": [22, "H6"]}
    (fitted,) = records("preload.axial-play", {**row, **seats}, {**row, **seats, "station": "B"})
    assert fitted.observed.value < found.observed.value
    (alone,) = records("preload.axial-play", row)
    assert alone.observed.value == found.observed.value
    assert "two equal bearings" in [a.value for a in alone.assumed]


def test_growth_of_the_housing_leaves_less_deflection_for_the_play():
    row = {**SPRING, "spacer_stack": "", "spring_installed_length": [13, -0.1, 0.1], "free_ring": "outer"}
    cold, warm = (records("preload.axial-play", {**row, **more})[0] for more in ({}, WARM))
    least = [{w.key: w.value for w in a.working}["deflection"] for a in (cold, warm)]
    assert least == pytest.approx([0.9, 0.9 - 60 * 11e-6 * 40])


def test_disc_springs_are_asked_more_than_other_springs():
    row = {**DISCS, "spring_installed_length": [12.42, -0.02, 0.02]}  # 80 % pressed
    assert (ranks("preload.spring-travel", [row])[0], ranks("preload.disc-range", [row])[0]) == (0, 2)
    assert ranks("preload.disc-range", [{**row, "spring_kind": "helical"}])[0] == -2


@pytest.mark.parametrize("clause", ALL)
def test_a_row_does_not_depend_on_the_rows_beside_it(clause):
    kinds = [
        SPRING,
        RIGID,
        {**BEARING, "preload_method": "none", "axial_load": 0, "radial_load": 5},
        {"bore_diameter": 8},
    ]
    machines = [[{**k, **WARM, "machine": f"{i}", "station": s} for s in "AB"] for i, k in enumerate(kinds)]
    together = records(clause, *(row for machine in machines for row in machine))
    alone = [a for machine in machines for a in records(clause, *machine)]
    assert [(a.machine, a.station, a.outcome, a.severity, a.message) for a in together] == [
        (a.machine, a.station, a.outcome, a.severity, a.message) for a in alone
    ]


@pytest.mark.parametrize("clause", ALL)
def test_rows_that_state_next_to_nothing_want_what_they_need(clause):
    for a in records(clause, *[{"bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000}] * 2):
        assert a.outcome == "not assessed"
        assert a.missing


def test_an_unreadable_chain_is_wanted_with_its_reason():
    for clause in ("preload.force", "preload.spring-travel"):
        (found,) = records(clause, {**SPRING, "spacer_stack": "28±0.05 minus 20"})
        assert found.outcome == "not assessed"
        assert found.missing == ("spacer_stack",)
        (line,) = [w for w in found.working if w.key == "chain_problem"]
        assert "position 9" in line.value
        assert "minus" in line.value


_TEXT = st.lists(
    st.tuples(
        st.sampled_from("+-"),
        st.integers(1, 99999).map(lambda x: f"{x / 1000:g}"),
        st.sampled_from(["", "±0.05", "±0.1", " 0/-0.12", " +0.02/-0.01", "±.5", "+/-0.2"]),
    ),
    min_size=1,
    max_size=6,
).map(lambda parts: " ".join("".join(part) for part in parts))


@given(_TEXT)
@settings(max_examples=300)
def test_a_chain_reads_the_same_by_both_roads(text):
    members = tolerance_chain.parse_chain(text)
    low, high = tolerance_chain.worst_case(members)
    mean, half = tolerance_chain.root_sum_square(members)
    expected = (low, high, mean, half, (members.sign * members.nominal).sum())
    assert preload_band.closing(text) == pytest.approx([float(x) for x in expected], abs=1e-12)


@given(st.text(alphabet="+-±/ 0123456789.,", max_size=12))
@settings(max_examples=300)
def test_what_the_parser_refuses_is_refused(text):
    try:
        tolerance_chain.parse_chain(text)
    except ValueError:
        with pytest.raises(ValueError, match=r"position|deviation|expected"):
            preload_band.closing(text)


def test_simulated_share_repeats_and_agrees_with_the_normal_law():
    """Share outside of one normal dimension against the normal distribution; same seed, same figure."""
    row = {**SPRING, "spacer_stack": "+20±0.3 -12", "spring_load_tolerance": 0, "preload_force": [60, -2, 2]}
    view = View(stations_from_rows([row]))
    low, high = np.array([58.0]), np.array([62.0])
    limits = Limits(load(VERSION).clauses["preload.force"])
    share = share_outside(view, low, high, limits)[0]
    members = tolerance_chain.parse_chain("+20±0.3 -12")
    exact = 100 * float(tolerance_chain.normal_share_outside(members, 14 - 6.2, 14 - 5.8))
    assert share == pytest.approx(exact, abs=0.5)
    assert share_outside(view, low, high, limits)[0] == share


def test_force_at_a_stress_and_stress_at_a_force_are_inverse():
    for row in (RIGID, {**RIGID, "ball_material": "silicon nitride"}, {**RIGID, "ball_count": None}):
        view = View(stations_from_rows([{k: v for k, v in row.items() if v is not None}]))
        force = contacts.force_at_stress(view, 900.0)
        state = contacts.under_load(view, force)
        assert contacts.stress_at(view, force, state) == pytest.approx(900.0, rel=1e-9)


def test_ceramic_balls_stress_the_race_more_and_slip_later():
    """Silicon nitride: about 12 % more stress at one load; density 0.41 of steel, so the gyroscopic minimum falls."""
    steel, ceramic = (View(stations_from_rows([{**RIGID, "ball_material": w}])) for w in ("steel", "silicon nitride"))
    assert contacts.stiffer(ceramic)[0] == pytest.approx(1.12, abs=0.005)
    limits = Limits(load(VERSION).clauses["preload.minimum"])
    slip = [minima(v, limits).advice["min_gyroscopic"][2][0] for v in (steel, ceramic)]
    assert slip[1] / slip[0] == pytest.approx(0.41, abs=0.01)


def test_spring_in_a_growing_housing_gets_longer_and_on_the_shaft_shorter():
    (outer,) = records("preload.spring-travel", {**SPRING, **WARM, "free_ring": "outer"})
    (inner,) = records("preload.spring-travel", {**SPRING, **WARM, "free_ring": "inner"})
    value = {name: {w.key: w.value for w in a.working} for name, a in (("outer", outer), ("inner", inner))}
    growth = 60 * 11e-6 * 40
    assert value["outer"]["longest"] == pytest.approx(8.19 + growth)
    assert value["outer"]["shortest"] == pytest.approx(7.81)
    assert value["inner"]["shortest"] == pytest.approx(7.81 - growth)


def test_preload_of_a_rigid_pair_follows_from_its_offset():
    """Both bearings share the offset: K (offset/2)^1.5 for equal ones."""
    row = {**BEARING, "preload_method": "rigid", "rigid_preload_offset": [20, -2, 2]}
    view = View(stations_from_rows([row, row]))
    first, last = preload_band.axial_constants(view)
    assert first == pytest.approx(last)
    band = preload_band.band(view)
    assert band.nominal == pytest.approx(first * 0.010**1.5)
    assert (band.smallest, band.largest) == (pytest.approx(first * 0.009**1.5), pytest.approx(first * 0.011**1.5))


@pytest.mark.parametrize(
    ("clause", "limit", "value", "row"),
    [
        ("preload.present", "least_share", 0.001,
         {**BEARING, "preload_method": "none", "axial_load": 0, "radial_load": 5}),
        ("preload.force", "usual_tolerance", 0.05, {**SPRING, "preload_force": 60}),
        ("preload.minimum", "least_share", 0.02, RIGID),
        ("preload.maximum", "stress_usual", 780, RIGID),
        ("preload.window", "stress_stiff", 300, SPRING),
        ("preload.spring-travel", "solid_near", 0.5, SPRING),
        ("preload.spring-solid", "near", 0.05, SPRING),
        ("preload.disc-range", "solid_near", 0.4, {**DISCS, "spring_installed_length": [13, -0.05, 0.05]}),
        ("preload.axial-play", "share", 0.01, {**SPRING, "radial_clearance": [40, 0, 0]}),
        ("preload.axial-demand", "stiffness", 0.5, {**SPRING, "axial_demand": "stiffness"}),
        ("preload.axial-demand", "disturbance_factor", 1.5e3, {**SPRING, "axial_demand": "reversing load"}),
        ("preload.thermal", "change_near", 0.001, {**SPRING, **WARM}),
        ("preload.unload", "disturbance_factor", 15, SPRING),
        ("preload.rigid-speed", "near", 500000, RIGID),
        ("preload.contact-angle", "angle_near", 14, SPRING),
    ],
)  # fmt: skip
def test_a_changed_limit_changes_the_verdict(clause, limit, value, row):
    assert ranks(clause, [row])[0] != ranks(clause, [row], with_limit(clause, limit, value))[0]


def test_travel_counts_from_the_longest_free_length_at_the_shortest_place():
    """14 ±0.5 long, solid at 4 ±0.2, at 7.9 to 8.1: (14.5 - 7.9)/(14.5 - 4.2) of the travel is used at most."""
    row = {
        **SPRING, "spacer_stack": "", "spring_installed_length": [8, -0.1, 0.1], "spring_free_length": [14, -0.5, 0.5],
        "spring_solid_length": [4, -0.2, 0.2],
    }  # fmt: skip
    (found,) = records("preload.spring-travel", row)
    lines = {line.key: line.value for line in found.working}
    assert lines["most"] == pytest.approx(100.0 * 6.6 / 10.3)
    assert lines["least"] == pytest.approx(100.0 * (13.5 - 8.1) / (13.5 - 4.2))
    assert found.observed.value == pytest.approx(lines["most"])


def test_the_clauses_of_the_preload_speak_of_one_window():
    rows = [
        {**SPRING, "preload_force": 40}, {**RIGID, "preload_force": 40}, {**SPRING, "axial_load": 500},
        {**SPRING, "axial_load": 20, "bore_diameter": 7},
    ]  # fmt: skip
    for row in rows:
        ends = set()
        for name in ("minimum", "maximum", "window"):
            working = {line.key: line.values for line in review(f"preload.{name}", [row]).result.working}
            ends.add((float(working["window_low"][0]), float(working["window_high"][0])))
        assert len(ends) == 1
        low, high = ends.pop()
        # a preload between the ends is met by both, one outside is found by its own clause alone
        if low < high:
            middle = 0.5 * (low + high)
            for force, least, most in ((middle, 0, 0), (0.4 * low, 2, 0), (1.1 * high, 0, 2)):
                given = {**row, "preload_force": [force, 0, 0]}
                assert (ranks("preload.minimum", [given])[0] >= 2) == (least == 2)
                assert (ranks("preload.maximum", [given])[0] >= 2) == (most == 2)


def test_a_window_that_no_force_fits_is_never_left_unassessed():
    pulled = [{**SPRING, "station": "A", "axial_load": f, "preload_force": None} for f in (0, 50, 200, 1000, 20000)]
    found = [
        ranks("preload.force", [{k: v for k, v in row.items() if v is not None}, {**SPRING, "station": "B"}])[0]
        for row in pulled
    ]
    assert (np.diff(found) >= 0).all()
    assert found[-1] == 4


def test_a_pair_with_one_unknown_clearance_assumes_a_number():
    row = {**SPRING, "radial_clearance": [10, -2, 2]}
    other = {k: v for k, v in row.items() if k not in ("radial_clearance", "clearance_class")}
    found = review("preload.axial-play", [{**row, "station": "A"}, {**other, "station": "B"}]).result
    assert not any(np.isnan(np.asarray(a.values, dtype=float)[a.rows]).any() for a in found.assumed if a.unit == "um")
