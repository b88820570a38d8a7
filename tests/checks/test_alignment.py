"""Chapter alignment: verdicts move one way, rows do not see each other, and the numbers of the rulebook decide."""

import numpy as np
import pytest

from linter.mechanics import abutment
from linter.mechanics.limits import it_value
from linter.rulebook.load import load
from tests.checks.support import VERSION, never_milder, ranks, review, same_alone, with_cells, with_limit

SEATS = {
    "bore_diameter": 8, "outside_diameter": 22, "ring_width": 7, "tolerance_class": "Normal", "speed_max": 12000,
    "bearing_type": "deep groove ball", "shaft_seat_diameter": [8, "k5"], "housing_seat_diameter": [22, "H6"],
    "shaft_seat_cylindricity": 0.002, "shaft_seat_runout": 0.002, "shaft_shoulder_runout": 0.0025,
    "shaft_seat_roughness": 0.8, "housing_seat_cylindricity": 0.003, "housing_seat_runout": 0.003,
    "housing_shoulder_runout": 0.006, "housing_seat_roughness": 0.8,
}  # fmt: skip
ALL = [c for c in load(VERSION).clauses if c.startswith("alignment.")]
STATION = [c for c in ALL if load(VERSION).clauses[c].level == "station"]
FORMS = {
    "alignment.cylindricity": "shaft_seat_cylindricity",
    "alignment.seat-runout": "housing_seat_runout",
    "alignment.shoulder-runout": "shaft_shoulder_runout",
    "alignment.form-within-size": "housing_seat_cylindricity",
}


def pair(**changes):
    rows = [{**SEATS, "station": name, "bearing_span": 60, **changes} for name in "AB"]
    return [{k: v for k, v in row.items() if v is not None} for row in rows]


@pytest.mark.parametrize("clause", FORMS)
def test_a_wider_tolerance_is_never_milder(clause):
    found = never_milder(clause, [{**SEATS, FORMS[clause]: t} for t in np.geomspace(0.0005, 0.1, 80)])
    assert (found[0], found[-1]) == (0, 3)


def test_a_rougher_seat_is_never_milder():
    found = never_milder(
        "alignment.roughness", [{**SEATS, "housing_seat_roughness": ra} for ra in np.arange(0.1, 8, 0.1)]
    )
    assert set(found) == {0, 2, 3}


def test_less_coaxial_bores_are_never_milder():
    for clause in ("alignment.coaxiality", "alignment.tilt"):
        found = [
            ranks(clause, pair(coaxiality_of_bores=t, coaxiality_of_shaft_seats=0.003))[0]
            for t in np.geomspace(0.001, 1, 40)
        ]
        assert (np.diff(found) >= 0).all()
        assert found[-1] >= 3


@pytest.mark.parametrize("clause", STATION)
def test_rows_do_not_see_each_other(clause):
    rows = [SEATS, {"bore_diameter": 8, "outside_diameter": 22, "speed_max": 4000}, {**SEATS, "tolerance_class": "P4"}]
    rows += [{**SEATS, "axial_role": "floating", "free_ring": "outer", "housing_shoulder_runout": None}]
    same_alone(clause, rows)


@pytest.mark.parametrize("clause", ALL)
def test_a_bare_row_says_what_it_wants(clause):
    found = review(
        clause, [{"bore_diameter": 8, "outside_diameter": 22, "speed_max": 40000, "station": s} for s in "AB"]
    )
    assert found.failure is None
    assert found.outcome[0] == 1 or any(rows[0] for rows in found.missing.values())


#: Loosest published value by class, side and feature: grade and factor. SKF, geometrical accuracy of seats (2018: IT6
#: for housings of class Normal) and super-precision; NTN table 14.5 (form, Normal and P6, half for P5); GMN (IT1).
LOOSEST = {
    ("Normal", "shaft", "seat_cylindricity"): (5, 0.5), ("Normal", "housing", "seat_cylindricity"): (6, 0.5),
    ("Normal", "shaft", "seat_runout"): (5, 0.5), ("Normal", "housing", "seat_runout"): (6, 0.5),
    ("Normal", "shaft", "shoulder_runout"): (5, 1), ("Normal", "housing", "shoulder_runout"): (6, 1),
    ("P6", "shaft", "seat_cylindricity"): (3, 1), ("P6", "housing", "seat_cylindricity"): (4, 1),
    ("P6", "shaft", "seat_runout"): (4, 0.5), ("P6", "housing", "shoulder_runout"): (4, 1),
    ("P5", "shaft", "seat_cylindricity"): (3, 0.5), ("P5", "housing", "seat_cylindricity"): (4, 0.5),
    ("P5", "housing", "seat_runout"): (3, 0.5), ("P5", "shaft", "shoulder_runout"): (3, 1),
    ("P4", "shaft", "seat_cylindricity"): (1, 1), ("P4", "housing", "seat_runout"): (1, 1),
    ("P4", "shaft", "shoulder_runout"): (1, 1), ("P2", "shaft", "seat_runout"): (1, 0.5),
    ("P2", "housing", "shoulder_runout"): (0, 1),
}  # fmt: skip
CLAUSE_OF = {
    "seat_cylindricity": "alignment.cylindricity", "seat_runout": "alignment.seat-runout",
    "shoulder_runout": "alignment.shoulder-runout",
}  # fmt: skip


@pytest.mark.parametrize("printed", LOOSEST)
@pytest.mark.parametrize("diameter", [4.0, 17.0, 40.0, 110.0])
def test_seats_are_met_up_to_the_loosest_published_value(printed, diameter):
    tolerance_class, side, feature = printed
    grade, factor = LOOSEST[printed]
    limit = float(it_value(grade, diameter)) / 1000 * factor
    other = "housing" if side == "shaft" else "shaft"
    row = {"bore_diameter": diameter, "outside_diameter": diameter, "tolerance_class": tolerance_class}
    rows = [{**row, f"{side}_{feature}": limit * times, f"{other}_{feature}": 1e-5} for times in (1, 1.01, 1.5)]
    assert ranks(CLAUSE_OF[feature], rows).tolist() == [0, 2, 3]


@pytest.mark.parametrize("clause", ["alignment.cylindricity", "alignment.seat-runout", "alignment.shoulder-runout"])
def test_a_finer_class_is_never_allowed_more(clause):
    tables = load(VERSION).clauses[clause].tables["form"].arrays
    for side in ("shaft", "housing"):
        for feature in ("cylindricity", "runout", "shoulder_runout"):
            rows = [
                i
                for i in range(len(tables["element"]))
                if (tables["element"][i], tables["feature"][i]) == (side, feature)
            ]
            for diameter in (4.0, 9.0, 20.0, 45.0, 75.0, 110.0, 170.0):
                allowed = [
                    float(it_value(int(tables["loose_grade"][i]), diameter)) * tables["loose_factor"][i] for i in rows
                ]
                tight = [
                    float(it_value(int(tables["strict_grade"][i]), diameter)) * tables["strict_factor"][i] for i in rows
                ]
                assert sorted(allowed, reverse=True) == allowed
                assert all(a <= b for a, b in zip(tight, allowed, strict=True))


def test_a_value_of_nothing_is_not_judged():
    for name, clause in (
        ("shaft_seat_roughness", "alignment.roughness"), ("coaxiality_of_bores", "alignment.coaxiality"),
    ):  # fmt: skip
        for value in (0, -1):
            found = review(clause, pair(**{"coaxiality_of_shaft_seats": 0.002, name: value}))
            assert found.outcome[0] not in (0, 1)


def test_what_stands_behind_a_spring_is_no_abutment():
    spring = {**SEATS, "axial_role": "spring-loaded", "free_ring": "outer", "housing_shoulder_runout": 0.1}
    assert ranks("alignment.shoulder-runout", [spring, {**spring, "free_ring": "inner"}]).tolist() == [0, 3]


def test_a_face_that_no_ring_bears_on_tilts_none():
    free = {"axial_role": "floating", "free_ring": "outer", "coaxiality_of_shaft_seats": 0.002}
    free |= {"coaxiality_of_bores": 0.002, "ring_width": 7}
    faces = [0.006, 0.5, None]
    found = [review("alignment.tilt", pair(**free, housing_shoulder_runout=face)) for face in faces]
    assert [list(f.outcome) for f in found] == [[0, 0]] * 3
    assert len({float(f.result.observed[0]) for f in found}) == 1
    bears = pair(**{**free, "free_ring": "inner"}, housing_shoulder_runout=0.5)
    assert ranks("alignment.tilt", bears).tolist() == [4, 4]
    assert ranks("alignment.tilt", pair(**{**free, "free_ring": "inner"}, housing_shoulder_runout=None)).max() == -1


def test_run_out_of_a_150_mm_seat():
    """SKF, total radial run-out: a 150 m6 seat gets IT5/2 = 9 um."""
    row = {"bore_diameter": 150, "outside_diameter": 225, "tolerance_class": "Normal", "housing_seat_runout": 0.005}
    assert review("alignment.seat-runout", [{**row, "shaft_seat_runout": 0.009}]).result.upper[0] == pytest.approx(9.0)


def test_a_missing_run_out_is_a_finding_with_the_value_to_put():
    row = {k: v for k, v in SEATS.items() if k != "shaft_seat_runout"}
    found = review("alignment.stated", [row])
    assert found.result.facts["unstated"](0).replace("\u00a0", " ") == "shaft_seat_runout (at most 0.003 mm)"
    slow = {**row, "speed_max": 1000}
    assert ranks("alignment.stated", [slow, row, {**slow, "tolerance_class": "P5"}]).tolist() == [2, 3, 3]


def test_roughness_table_agrees_with_the_makers_table():
    """URB, General catalogue v14, tables 4.5 to 4.7; class Normal also SKF 2018, table 4, and JTEKT, table 14-1."""
    table = load(VERSION).clauses["alignment.roughness"].tables["roughness"].arrays
    rougher = {("housing", 0): 3.2, ("housing", 80): 3.2, ("shaft", 0): 1.6}
    for index, element in enumerate(table["element"]):
        size, kind = table["over"][index] + 1.0, table["tolerance_class"][index]
        strict, loose = abutment.roughness_range(size, kind, element)
        if kind == "Normal":
            loose = rougher.get((element, int(table["over"][index])), loose)
        assert (table["low"][index], table["high"][index]) == (pytest.approx(strict), pytest.approx(loose))


def test_bending_is_the_slope_of_a_simply_supported_shaft():
    """Shigley, Table A-9: slope F l^2/(16 E I) at the supports of a beam loaded at mid-span."""
    bent = review("alignment.tilt", pair(shaft_material="steel", radial_load=20)).result
    slope = 40 * 60**2 / (16 * 210000 * np.pi * 8**4 / 64)
    found = next(line.values[0] for line in bent.working if line.key == "from_bending")
    assert found == pytest.approx(np.rad2deg(slope) * 60, rel=1e-6)


def test_an_estimate_of_bending_raises_a_remark_and_no_more():
    loaded = [
        ranks("alignment.tilt", pair(shaft_material="steel", radial_load=f))[0] for f in np.geomspace(0.1, 1e5, 30)
    ]
    assert set(loaded) == {0, 1}
    fine = {
        "bearing_span": 200, "coaxiality_of_bores": 0, "coaxiality_of_shaft_seats": 0,
        "shaft_seat_cylindricity": 0.0005,
        "housing_seat_cylindricity": 0.0005, "shaft_shoulder_runout": 0.001, "housing_shoulder_runout": 0.001,
    }  # fmt: skip
    loaded = [ranks("alignment.tilt", pair(shaft_material="steel", radial_load=f, **fine))[0] for f in (0.1, 1e5)]
    assert loaded == [0, 1]
    hub = ranks("alignment.tilt", pair(shaft_material="steel", radial_load=1e5, rotating_ring="outer", **fine))
    assert hub[0] == 0


def test_only_the_seat_beyond_the_limit_is_named():
    row = {**SEATS, "shaft_seat_cylindricity": 0.0025, "housing_seat_cylindricity": 0.009}
    assert review("alignment.cylindricity", [row]).result.variant[0] == "housing"
    both = {**SEATS, "shaft_seat_cylindricity": 0.0035, "housing_seat_cylindricity": 0.009}
    assert review("alignment.cylindricity", [both]).result.variant[0] == "both"


def test_run_out_stands_in_for_coaxiality_and_is_reported():
    found = review("alignment.coaxiality", pair()).result
    assert [a.parameter for a in found.assumed if a.rows[0]] == ["coaxiality_of_shaft_seats", "coaxiality_of_bores"]


def test_the_numbers_of_the_rulebook_decide():
    for clause, feature in (("alignment.cylindricity", "cylindricity"), ("alignment.seat-runout", "runout")):
        where = {"tolerance_class": "Normal", "element": "shaft", "feature": feature}
        book = with_cells(clause, "form", "loose_grade", "3", **{**where, "feature": feature})
        assert (ranks(clause, [SEATS])[0], ranks(clause, [SEATS], book)[0]) == (0, 3)
    book = with_cells("alignment.shoulder-runout", "form", "loose_factor", "0.1", feature="shoulder_runout")
    assert ranks("alignment.shoulder-runout", [SEATS], book)[0] == 3
    half = with_limit("alignment.form-within-size", "share_near", 0.2)
    assert ranks("alignment.form-within-size", [SEATS], half)[0] == 2
    assert ranks("alignment.roughness", [SEATS], with_cells("alignment.roughness", "roughness", "high", "0.4"))[0] == 3
    rough = with_cells("alignment.coaxiality", "coaxiality", "loose_grade", "1", tolerance_class="Normal")
    assert ranks("alignment.coaxiality", pair(), rough)[0] >= 2
    tight = with_cells("alignment.tilt", "tilt", "high", "3", bearing_type="deep groove ball")
    assert (ranks("alignment.tilt", pair())[0], ranks("alignment.tilt", pair(), tight)[0]) == (0, 3)
    missing = {k: v for k, v in SEATS.items() if k != "shaft_seat_runout"}
    assert ranks("alignment.stated", [missing], with_limit("alignment.stated", "form_measure", 1.5))[0] == 2


def test_a_moulded_housing_is_told_with_what_the_coarser_class_asks():
    row = {**SEATS, "tolerance_class": "P4", "housing_seat_cylindricity": 0.00125}
    assert ranks("alignment.process", [row, {**row, "housing_material": "plastic"}]).tolist() == [0, 1]
    told = review("alignment.process", [{**row, "housing_material": "plastic"}]).result.facts["coarser"](0)
    assert told.replace("\u00a0", " ") == "; class P5 would ask for a cylindricity of 3 µm"  # IT4/2 of 22 mm


def test_finer_seats_are_never_easier_to_make():
    rows = [{**SEATS, "shaft_seat_cylindricity": t} for t in np.geomspace(0.02, 1e-5, 30)]
    assert set(never_milder("alignment.process", rows)) == {0, 1}
    ways = [review("alignment.process", [row]).result.facts["shaft_ways"](0).count(",") for row in rows]
    assert (np.diff(ways) <= 0).all()
