"""A random arrangement, written in any layout, spelling and encoding, reads back to the same canonical values."""

import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from writers import (
    CHOICES,
    GRIDS,
    NUMBERS,
    SIZES,
    TEXTS,
    Arrangement,
    Size,
    Spelling,
    delimited,
    nested_json,
    record_json,
    workbook,
)

from linter.mechanics.limits import deviations
from linter.reading import Reading, read_table

_word = st.text(alphabet="ABCDEFGHKLMPQRSTUVWXYZabcdefg0123456789-äéñ軸", min_size=4, max_size=8).map(lambda t: "x" + t)
_hundredths = st.integers(1, 40_000).map(lambda n: n / 100)
_deviation = st.integers(-60, 60).map(lambda n: n / 1000)


@st.composite
def _size(draw, hole):
    nominal = draw(st.integers(30, 4000)) / 10
    if draw(st.booleans()):
        return Size(
            nominal, tolerance_class=draw(st.sampled_from(("H6", "JS7", "K6") if hole else ("h5", "k5", "js6", "m5")))
        )
    low, high = sorted((draw(_deviation), draw(_deviation)))
    return Size(nominal, low, high)


@st.composite
def arrangements(draw):
    machines = {}
    for machine in draw(st.lists(_word, min_size=1, max_size=3, unique=True)):
        own = {name: draw(_hundredths) for name, (level, _) in NUMBERS.items() if level == "machine"}
        own["drawing_number"] = draw(_word)
        stations = {}
        for station in draw(st.sampled_from((["A"], ["A", "B"], ["DE", "NDE"], ["1", "2", "3"]))):
            values = {name: draw(st.none() | _hundredths) for name, (level, _) in NUMBERS.items() if level == "station"}
            values["bore_diameter"] = draw(_hundredths)
            values |= {name: draw(_size(name.startswith("housing"))) for name in SIZES}
            values |= {name: draw(st.sampled_from(words)) for name, words in CHOICES.items()}
            values["bearing_designation"] = draw(_word)
            stations[station] = values
        machines[machine] = (own, stations)
    return Arrangement(machines)


@st.composite
def spellings(draw):
    decimal = draw(st.sampled_from(".,"))
    return Spelling(
        decimal=decimal,
        grouped=draw(st.booleans()),
        units={name: draw(st.sampled_from(list(units))) for name, (_, units) in NUMBERS.items()},
        tolerance=draw(st.sampled_from(("deviations", "bracket", "limits"))),
        encoding=draw(st.sampled_from(("utf-8", "utf-8-sig", "utf-16"))),
        line_end=draw(st.sampled_from(("\n", "\r\n", "\r\r\n"))),
        delimiter=draw(st.sampled_from((";", "\t", "|") if decimal == "," else (",", ";", "\t", "|"))),
        language=draw(st.integers(0, 2)),
    )


def check(reading: Reading, arrangement: Arrangement) -> None:
    stations = reading.stations
    assert [p.message for p in stations.problems] == []
    assert stations.machines == tuple(arrangement.machines)
    rows = [(m, s) for m, (_, own) in arrangement.machines.items() for s in own]
    assert list(zip(stations.text("machine"), stations.text("station"), strict=True)) == rows
    for row, (machine, station) in enumerate(rows):
        own, others = arrangement.machines[machine]
        for name, value in {**own, **others[station]}.items():
            if value is None:
                assert not stations.known(name)[row] or name in stations.assumed
            elif name in TEXTS:
                assert stations.text(name)[row] == value
            elif name in CHOICES:
                assert stations.choice(name).texts()[row] == value
            elif name in SIZES:
                size = stations.size(name)
                low, high = value.lower, value.upper
                if value.tolerance_class:
                    low, high = (float(v) / 1000 for v in deviations(value.tolerance_class, value.nominal))
                    assert size.tolerance_class[row] == value.tolerance_class
                    assert size.nominal[row] == pytest.approx(value.nominal)
                assert size.smallest[row] == pytest.approx(value.nominal + low, abs=1e-9)
                assert size.largest[row] == pytest.approx(value.nominal + high, abs=1e-9)
            else:
                assert math.isclose(stations.number(name)[row], value, rel_tol=1e-8)
                assert stations.place(name, row) is not None


_settings = settings(
    max_examples=15, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture], derandomize=True
)


@pytest.mark.parametrize("layout", GRIDS)
@_settings
@given(arrangement=arrangements(), spelling=spellings())
def test_delimited_text(tmp_path, layout, arrangement, spelling):
    path = tmp_path / "t.csv"
    path.write_bytes(delimited(GRIDS[layout](arrangement, spelling), spelling))
    check(read_table(path), arrangement)


@pytest.mark.parametrize("layout", GRIDS)
@settings(_settings, max_examples=5)
@given(arrangement=arrangements(), spelling=spellings())
def test_workbook(tmp_path, layout, arrangement, spelling):
    path = tmp_path / "t.xlsx"
    path.write_bytes(workbook(GRIDS[layout](arrangement, spelling), spelling))
    check(read_table(path), arrangement)


@pytest.mark.parametrize("writer", [nested_json, record_json])
@_settings
@given(arrangement=arrangements(), spelling=spellings())
def test_json(tmp_path, writer, arrangement, spelling):
    path = tmp_path / "t.json"
    path.write_bytes(writer(arrangement, spelling))
    check(read_table(path), arrangement)
