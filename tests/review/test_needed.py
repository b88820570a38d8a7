"""Which values would decide a gate, and where the table would state them."""

import json

import numpy as np
import pytest

from linter.model.findings import Assessment
from linter.model.vocabulary import parameter, vocabulary
from linter.reading import read_table
from linter.review.needed import Cells, needed

NAMES = ("machine", "station", "bore_diameter", "outside_diameter", "cage", "speed_max", "ring_width")
ROWS = {
    ("M1", "A"): {"bore_diameter": "8", "outside_diameter": "22", "cage": "peek", "speed_max": "9000"},
    ("M1", "B"): {"bore_diameter": "8", "outside_diameter": "22", "speed_max": "9000", "ring_width": "7"},
    ("M2", "A"): {"bore_diameter": "10", "outside_diameter": "26", "cage": "peek"},
    ("M2", "B"): {"bore_diameter": "10", "outside_diameter": "26", "cage": "peek"},
}


def wide(tmp_path):
    lines = [",".join(NAMES)]
    lines += [",".join([*key, *(row.get(n, "") for n in NAMES[2:])]) for key, row in ROWS.items()]
    path = tmp_path / "t.csv"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return read_table(path, shown_as="t.csv").stations


def nested(tmp_path):
    tree = {}
    for (machine, station), row in ROWS.items():
        tree.setdefault(machine, []).append(
            {"station": station, **{k: float(v) if k != "cage" else v for k, v in row.items()}}
        )
    path = tmp_path / "t.json"
    tables = [{"machine": machine, "units": {"length": "mm"}, "stations": rows} for machine, rows in tree.items()]
    path.write_text(json.dumps(tables), encoding="utf-8")
    return read_table(path, shown_as="t.json").stations


def wants(machine, station, *missing, must=True, outcome="not assessed", clause="speed.cage"):
    return Assessment(
        clause, clause.partition(".")[0], machine, station, outcome, None, None, None, None, "", missing=missing,
        must=must,
    )  # fmt: skip


def told(stations, *items):
    return [(n.parameter, n.machine, n.station, n.place and (n.place.cell or n.place.pointer), n.near, n.clauses)
            for n in needed(stations, items)]  # fmt: skip


def test_a_value_is_told_with_the_cell_that_the_other_rows_show(tmp_path):
    assert told(wide(tmp_path), wants("M1", "B", "cage")) == [("cage", "M1", "B", "E3", "", ("speed.cage",))]
    assert told(nested(tmp_path), wants("M1", "B", "cage")) == [
        ("cage", "M1", "B", "/0/stations/1/cage", "", ("speed.cage",))
    ]


def test_a_value_of_the_machine_is_told_once(tmp_path):
    found = told(wide(tmp_path), wants("M2", None, "speed_max"), wants("M2", "B", "speed_max", clause="life.rating"))
    assert found == [("speed_max", "M2", None, None, "row 4", ("speed.cage", "life.rating"))]


def test_a_value_that_no_row_states_is_told_by_its_row(tmp_path):
    assert told(wide(tmp_path), wants("M1", "A", "ring_chamfer")) == [
        ("ring_chamfer", "M1", "A", None, "row 2", ("speed.cage",))
    ]
    assert Cells(wide(tmp_path)).near(3) == "row 5"
    assert Cells(nested(tmp_path)).near(0) == ""


def test_a_clause_of_the_machine_asks_the_stations_that_lack_the_value(tmp_path):
    found = told(wide(tmp_path), wants("M1", None, "ring_width", "cage"))
    assert [item[:4] for item in found] == [("cage", "M1", "B", "E3"), ("ring_width", "M1", "A", "G2")] or [
        item[:3] for item in found
    ] == [("ring_width", "M1", "A"), ("cage", "M1", "B")]


def test_only_what_must_be_judged_and_was_not_asks(tmp_path):
    stations = wide(tmp_path)
    assert needed(stations, [wants("M1", "B", "cage", must=False)]) == ()
    assert needed(stations, [wants("M1", "B", "cage", outcome="met")]) == ()
    assert needed(stations, [wants("M1", "B")]) == ()


def test_values_come_by_machine_station_and_vocabulary(tmp_path):
    early, late = sorted(("ring_width", "cage"), key=list(vocabulary()).index)
    items = [wants("M2", "B", late, early), wants("M1", "B", early), wants("M1", "A", late), wants("M1", None, "duty")]
    found = told(wide(tmp_path), *items)
    places = [(machine, station, name) for name, machine, station, *_ in found]
    duty = (
        [("M1", "A", "duty"), ("M1", "B", "duty")] if parameter("duty").level == "station" else [("M1", None, "duty")]
    )
    wanted = [*duty, ("M1", "A", late), ("M1", "B", early), ("M2", "B", early), ("M2", "B", late)]
    order = list(vocabulary()).index
    assert places == sorted(wanted, key=lambda item: (item[0], item[1] or "", order(item[2])))
    assert places.index(("M1", "A", late)) < places.index(("M1", "B", early))


def test_rows_that_are_no_further_apart_than_their_values_show_the_way(tmp_path):
    cells = Cells(wide(tmp_path))
    assert cells.like("cage", 1)[0] == 0  # the other station of the machine goes before the nearer row
    assert cells.like("speed_max", 2) == [1, 0] and cells.like("ring_chamfer", 0) == []
    assert cells.like("speed_max", 0) == []  # the value of one machine says nothing of its own cell
    for row in range(4):
        assert cells.to_fill("cage", row).cell == f"E{row + 2}"
        assert cells.stated(row)["bore_diameter"].cell == f"C{row + 2}"


@pytest.mark.parametrize("most", [0, 1])
def test_beyond_many_values_the_row_is_told(tmp_path, monkeypatch, most):
    monkeypatch.setattr("linter.review.needed.MOST_CELLS", most)
    found = needed(wide(tmp_path), [wants("M1", "B", "cage"), wants("M1", "A", "ring_width")])
    assert [item.place is not None for item in found] == list(np.arange(2) < most)
    assert all(item.place is not None or item.near.startswith("row ") for item in found)
