import numpy as np
import pytest

from linter.model.places import Place, PlaceColumn
from linter.model.stations import Problem, Stations, stations_from_rows

ROWS = [
    {"machine": "fan", "bore_diameter": 4, "shaft_seat_diameter": [4, "k5"], "lubrication": "grease", "speed_max": 9e3},
    {"machine": "fan", "bore_diameter": 5, "shaft_seat_diameter": [5, -0.004, 0.001]},
    {"machine": "mill", "bore_diameter": 8, "shaft_seat_diameter": 8, "axial_role": "floating", "axial_load": 3.5},
]  # fmt: skip


def problem(row, parameter, read="x"):
    return Problem("unreadable", row, parameter, Place("t.csv", None, "B2"), read, "a number", "t.csv B2: x.", "odd")


@pytest.fixture
def stations():
    made = stations_from_rows(ROWS)
    places = {"bore_diameter": PlaceColumn("t.csv", sheet=np.zeros(3, np.int32), row=np.array([2, 3, 0], np.int32),
                                           column=np.array([2, 2, 0], np.int32))}  # fmt: skip
    problems = (problem(None, None), problem(0, "speed_max"), problem(1, "bore_diameter"), problem(2, "bore_diameter"))
    return Stations(made.machines, made.machine_row, made.numbers, made.toleranced, made.choices, made.texts,
                    places, made.assumed, problems)  # fmt: skip


def test_a_part_keeps_its_problems_with_their_new_rows(stations):
    told = [(p.row, p.parameter) for p in stations.take(np.array([2])).problems]
    assert told == [(None, None), (0, "bore_diameter")]
    # the machine-level value of the first row belongs to the second as well
    told = [(p.row, p.parameter) for p in stations.take(slice(1, 3)).problems]
    assert told == [(None, None), (0, "speed_max"), (0, "bore_diameter"), (1, "bore_diameter")]
    turned = stations.take(np.array([2, 1, 0]))
    assert turned.machines == ("mill", "fan") and turned.machine_row.tolist() == [0, 1, 1]
    assert [p.row for p in turned.problems] == [None, 2, 1, 0]
    assert turned.place("bore_diameter", 2) == Place("t.csv", None, "B2") and turned.place("bore_diameter", 0) is None


def test_rows_of_one_machine_do_not_come_apart(stations):
    with pytest.raises(ValueError, match="together"):
        stations.take(np.array([0, 2, 1]))


def test_tables_are_joined_with_places_and_problems(stations):
    other = stations_from_rows([{"machine": "fan", "outside_diameter": 13, "required_reliability": 95}])
    joined = Stations.concat([stations, other, Stations.concat([other, stations])])
    assert joined.machines == ("fan", "mill", "fan", "fan", "fan", "mill") and len(joined) == 8
    assert joined.machine_row.tolist() == [0, 0, 1, 2, 3, 4, 4, 5]
    assert np.flatnonzero(joined.known("outside_diameter")).tolist() == [3, 4]
    assert [str(joined.place("bore_diameter", row)) for row in (1, 6)] == ["t.csv B3", "t.csv B3"]
    assert joined.place("bore_diameter", 3) is None
    assert [p.row for p in joined.problems] == [0, 2, 0, 1, 2, 5, 7, 5, 6, 7]
    assert joined.assumed["required_reliability"].rows.tolist() == [True, True, True, False, False, True, True, True]
    back = joined.take(slice(0, 3))
    assert back.machines == stations.machines and back.problems[2:] == stations.problems[1:]
    assert [back.place("bore_diameter", row) for row in range(3)] == [
        stations.place("bore_diameter", r) for r in range(3)
    ]


def test_a_frame_says_what_the_stations_state(stations):
    frame = stations.to_frame()
    assert list(frame["machine"]) == ["fan", "fan", "mill"] and "required_reliability" not in frame
    assert frame["shaft_seat_diameter_class"].fillna("").tolist() == ["k5", "", ""]
    back = Stations.from_frame(frame)
    assert back.machines == stations.machines
    for kind in ("numbers", "toleranced", "choices", "texts"):
        assert set(getattr(back, kind)) <= set(getattr(stations, kind)), kind
    for name, column in stations.numbers.items():
        np.testing.assert_array_equal(back.number(name), column, err_msg=name)
    size, was = back.size("shaft_seat_diameter"), stations.size("shaft_seat_diameter")
    for part in ("nominal", "lower", "upper", "tolerance_class"):
        np.testing.assert_array_equal(getattr(size, part), getattr(was, part))
    assert back.choice("lubrication").texts().tolist() == ["grease", "", ""]
    assert back.assumed.keys() == stations.assumed.keys()


def test_a_frame_brings_rows_of_a_machine_together_and_knows_classes():
    import pandas as pd

    frame = pd.DataFrame(
        {"machine": ["b", "a", "b"], "station": ["1", "1", "2"], "housing_seat_diameter": [13, 22, 13.0],
         "housing_seat_diameter_class": ["H6", None, None]}
    )  # fmt: skip
    made = Stations.from_frame(frame)
    assert made.machines == ("b", "a") and made.text("station").tolist() == ["1", "2", "1"]
    assert made.size("housing_seat_diameter").upper[0] == pytest.approx(0.011)  # ISO 286-2: 13 H6
    assert np.isnan(made.size("housing_seat_diameter").upper[1:]).all()


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (lambda f: f.assign(bore_diametr=1), "bore_diametr"),
        (lambda f: f.drop(columns="station"), "station"),
        (lambda f: f.assign(bore_diameter="four"), "column bore_diameter"),
        (lambda f: f.assign(lubrication="butter"), "column lubrication, row 0: read 'butter'"),
        (lambda f: f.assign(station="A"), "same station"),
        (lambda f: f.iloc[:0], "at least one row"),
    ],
)
def test_a_frame_that_cannot_be_used_says_why(stations, change, told):
    with pytest.raises(ValueError, match=told):
        Stations.from_frame(change(stations.to_frame()))
