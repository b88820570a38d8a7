"""Any complete machine of one, two or three stations is assessed without a fault, whatever its values."""

import math

import numpy as np
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from linter.model.findings import OUTCOMES, SEVERITIES
from linter.model.stations import stations_from_rows
from linter.model.vocabulary import vocabulary
from linter.review.assess import assess
from linter.review.records import assessments
from linter.rulebook.load import load

#: Ranges of number parameters, from far inside to somewhat beyond what drawings of small fast machines state.
RANGES = {
    "bore_diameter": (1, 100), "outside_diameter": (3, 180), "ring_width": (1, 40), "ring_chamfer": (0.05, 2),
    "speed_max": (10, 400_000), "speed_operating": (10, 400_000), "required_life": (10, 1e5),
    "required_reliability": (90, 99.9), "shaft_temperature": (-40, 150), "housing_temperature": (-40, 150),
    "operating_temperature": (-40, 150), "temperature_min": (-60, 30), "temperature_max": (20, 200),
    "rotor_mass": (0.001, 50), "balance_grade": (0.1, 16), "residual_unbalance": (0, 100),
    "spring_load_tolerance": (0, 40), "coaxiality_of_bores": (0, 0.1), "coaxiality_of_shaft_seats": (0, 0.1),
    "first_critical_speed": (100, 1e6), "contact_angle": (0, 40), "inner_ring_shoulder_diameter": (2, 150),
    "outer_ring_shoulder_diameter": (2, 170), "ball_diameter": (0.3, 30), "pitch_diameter": (2, 140),
    "inner_groove_ratio": (0.505, 0.6), "outer_groove_ratio": (0.505, 0.6), "dynamic_rating": (10, 1e5),
    "static_rating": (5, 1e5), "fatigue_load_limit": (0.1, 5e3), "limiting_speed": (1e3, 5e5),
    "reference_speed": (1e3, 5e5), "seal_lip_diameter": (2, 150), "base_oil_viscosity_40": (2, 500),
    "base_oil_viscosity_100": (1, 50), "radial_load": (0, 2e4), "axial_load": (-5e3, 5e3), "shaft_bore": (0, 90),
    "housing_outer_diameter": (5, 300), "shaft_undercut_width": (0, 12), "housing_undercut_width": (0, 12),
    "shaft_undercut_depth": (0, 1), "housing_undercut_depth": (0, 1),
    "first_bearing_position": (0, 60), "radial_stiffness": (100, 1e6), "blade_count": (1, 40),
}  # fmt: skip
#: Nominal values of toleranced parameters; a seat takes that of its bearing.
NOMINALS = {
    "preload_force": (0, 500), "spring_rate": (0.1, 200), "spring_free_length": (1, 60),
    "spring_installed_length": (1, 60), "spring_solid_length": (0.5, 40), "bearing_span": (3, 400),
    "axial_float": (0.01, 3), "radial_clearance": (0, 60), "rigid_preload_offset": (0, 40),
    "shaft_shoulder_diameter": (2, 150), "housing_shoulder_diameter": (2, 170),
}  # fmt: skip
TEXTS = {
    "spacer_stack": "+41.2±0.05 -12±0.02 -4 0/-0.03", "shaft_sections": "40 x 8 + 300 x 12/4 + 90 x 9",
    "shaft_forces": "belt 30 N @ -10 + 5 N @ 200",
    "rotor_discs": "wheel 12 g @ -4 (8 x 30/6) + 40 g @ 60 (Ip 4 It 3) + 2 g @ 500",
}  # fmt: skip
SHAFT_CLASSES = ["g6", "h5", "h6", "js5", "j5", "k5", "k6", "m6"]
HOUSING_CLASSES = ["G7", "H6", "H7", "J7", "JS6", "K6", "M7", "N7"]


def _value(entry):
    if entry.kind == "choice":
        return st.sampled_from(entry.choices)
    if entry.kind == "text":
        return st.just(TEXTS.get(entry.name, "RB-1"))
    if entry.name == "ball_count":
        return st.integers(3, 40)
    if entry.name in RANGES:
        return st.floats(*RANGES[entry.name], allow_nan=False)
    if entry.name in NOMINALS:
        deviation = st.floats(-0.3, 0.3, allow_nan=False)
        nominal = st.floats(*NOMINALS[entry.name], allow_nan=False)
        return st.one_of(nominal, st.tuples(nominal, deviation, deviation).map(lambda v: [v[0], *sorted(v[1:])]))
    if entry.kind == "toleranced":
        return st.sampled_from(SHAFT_CLASSES if entry.name.startswith("shaft") else HOUSING_CLASSES)
    # form and run-out in mm, roughness in um, fillets in mm
    return st.floats(0, 3 if "roughness" in entry.name or "radius" in entry.name else 0.05, allow_nan=False)


def _some(entries):
    """A table states each of these or not."""
    return st.fixed_dictionaries({}, optional={entry.name: _value(entry) for entry in entries})


ENTRIES = [entry for entry in vocabulary().values() if entry.name not in ("machine", "station")]
MACHINE = [entry for entry in ENTRIES if entry.level == "machine"]
STATION = [entry for entry in ENTRIES if entry.level == "station"]


def _all(entries):
    return st.fixed_dictionaries({entry.name: _value(entry) for entry in entries})


@st.composite
def machines(draw, of_machine, of_station):
    """Rows of one machine of one to three stations; each seat has the nominal size of its bearing."""
    shared = draw(of_machine)
    rows = []
    for k in range(draw(st.integers(1, 3))):
        row = {**shared, **draw(of_station), "station": "ABC"[k]}
        if "bore_diameter" in row and "outside_diameter" in row and row["outside_diameter"] <= row["bore_diameter"]:
            row["outside_diameter"] = 1.2 * row["bore_diameter"] + 1.0
        for seat, size in (("shaft_seat_diameter", "bore_diameter"), ("housing_seat_diameter", "outside_diameter")):
            if seat in row:
                row[seat] = [row[size], row[seat]] if size in row else None
        rows.append(row)
    return rows


def check(rows):
    assessed = assess(stations_from_rows(rows), load("current"))
    for name, review in assessed.reviews.items():
        assert review.failure is None, review.failure
        count = len(rows) if review.clause.level == "station" else 1
        assert review.outcome.shape == review.severity.shape == (count,), name
    records = assessments(assessed)
    assert {record.outcome for record in records} <= set(OUTCOMES)
    for record in records:
        assert (record.severity in SEVERITIES) == (record.outcome == "finding")
        assert "{" not in record.message + record.remedy
        assert not set(record.missing) - set(vocabulary())
        for line in record.working:
            assert isinstance(line.value, str) or math.isfinite(line.value), (record.clause, line)
    grades = assessed.grades()
    assert grades.shape == (len(assessed.reviews), len(rows))
    assert np.isin(grades, (-2, -1, 0, 1, 2, 3, 4)).all()


SLOW = settings(
    max_examples=25,
    phases=[Phase.generate],  # a whole review is too slow to shrink with
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)


@SLOW
@given(machines(_all(MACHINE), _all(STATION)))
def test_a_complete_machine_is_assessed(rows):
    check(rows)


@SLOW
@given(machines(_some(MACHINE), _some(STATION)))
def test_a_machine_with_gaps_is_assessed(rows):
    check(rows)
