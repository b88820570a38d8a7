"""A random arrangement, written in any layout, language, spelling and encoding, reads back to the same values.

What a layout cannot state is left out by the layout's own narrowing function; what it states must come back whole.
"""

import math

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from layout_writers import FILES, GRIDS, aligned, delimited, workbook
from writers import (
    CHOICES,
    CODE_PAGES,
    LANGUAGES,
    NUMBERS,
    SIZES,
    TEXTS,
    Arrangement,
    Size,
    Spelling,
)

from linter.mechanics.limits import deviations
from linter.reading import Reading, read_table
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names

_word = st.text(alphabet="ABCDEFGHKLMPQRSTUVWXYZabcdefg0123456789-äéñ軸Ж", min_size=4, max_size=8).map(
    lambda t: "x" + t
)
_hundredths = st.integers(1, 40_000).map(lambda n: n / 100)
_deviation = st.integers(-60, 60).map(lambda n: n / 1000)
_numbers = {
    "speed_max": st.integers(60, 900_000).map(lambda n: n / 10),
    "radial_load": st.integers(1, 400_000).map(lambda n: n / 100),
    "temperature_min": st.integers(-40, 30).map(float),
}


@st.composite
def _size(draw, hole):
    nominal = draw(st.integers(30, 4000)) / 10
    if draw(st.booleans()):
        return Size(
            nominal, tolerance_class=draw(st.sampled_from(("H6", "JS7", "K6") if hole else ("h5", "k5", "js6", "m5")))
        )
    low, high = sorted((draw(_deviation), draw(_deviation)))
    return draw(st.sampled_from((Size(nominal, low, high), Size(nominal, -abs(high), abs(high)))))


@st.composite
def arrangements(draw):
    machines = {}
    for machine in draw(st.lists(_word, min_size=1, max_size=3, unique=True)):
        own = {n: draw(_numbers.get(n, _hundredths)) for n, (level, _) in NUMBERS.items() if level == "machine"}
        own["drawing_number"] = draw(_word)
        stations = {}
        for station in draw(st.sampled_from((["A"], ["A", "B"], ["DE", "NDE"], ["1", "2", "3"]))):
            values = {
                n: draw(st.none() | _numbers.get(n, _hundredths))
                for n, (level, _) in NUMBERS.items()
                if level == "station"
            }
            values |= {name: draw(_hundredths) for name in ("bore_diameter", "outside_diameter")}
            values |= {name: draw(_size(name.startswith("housing"))) for name in SIZES}
            values |= {name: draw(st.sampled_from(words)) for name, words in CHOICES.items()}
            values["bearing_designation"] = draw(_word)
            stations[station] = values
        machines[machine] = (own, stations)
    return Arrangement(machines)


@st.composite
def spellings(draw):
    decimal = draw(st.sampled_from(".,"))
    declared = draw(st.sampled_from((None, None, *CODE_PAGES)))
    encoding = declared or draw(st.sampled_from(("utf-8", "utf-8-sig", "utf-16-le", "utf-16-be")))
    language = draw(st.sampled_from(CODE_PAGES[declared] if declared else LANGUAGES))
    bare = Spelling(encoding=encoding)

    def some(*texts: str) -> str:
        return draw(st.sampled_from([text for text in texts if bare.writable(text)]))

    return Spelling(
        decimal=decimal,
        thousands=some("", " ", "\u00a0", "\u202f", "'", "," if decimal == "." else "."),
        minus=some("-", "−"),
        units={name: some(*units) for name, (_, units) in NUMBERS.items()},
        tolerance=draw(st.sampled_from(("slash", "bracket", "limits", "range", "symmetric", "spaced"))),
        encoding=encoding,
        declared=declared is not None,
        line_end=draw(st.sampled_from(("\n", "\r\n", "\r", "\r\r\n"))),
        delimiter=draw(st.sampled_from((",", ";", "\t", "|"))),
        language=language,
        draws=tuple(draw(st.lists(st.integers(0, 30), min_size=3, max_size=5))),
    )


def names_of(spelling: Spelling) -> Names:
    """The name mapping that declares the code page, or none."""
    return Names(Mapping(encoding=spelling.encoding)) if spelling.declared else Names.built_in()


def marked(data: bytes, spelling: Spelling) -> bytes:
    """Text with the byte order mark that UTF-16 needs."""
    return {"utf-16-le": b"\xff\xfe", "utf-16-be": b"\xfe\xff"}.get(spelling.encoding, b"") + data


def check(reading: Reading, arrangement: Arrangement) -> None:
    stations = reading.stations
    assert [p.message for p in stations.problems if p.code not in ("inherited", "designation-not-read")] == []
    assert stations.machines == tuple(arrangement.machines)
    rows = arrangement.rows()
    found = list(zip(stations.text("machine"), stations.text("station"), strict=True))
    assert sorted(found) == sorted((m, s) for m, s, _, _ in rows)
    for machine, station, values, own in rows:
        row = found.index((machine, station))
        for name, value in {**values, **own}.items():
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
                assert math.isclose(stations.number(name)[row], value, rel_tol=1e-8, abs_tol=1e-9)
                assert stations.place(name, row) is not None


_settings = settings(
    max_examples=12,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
    derandomize=True,
    phases=[Phase.explicit, Phase.generate],  # a found case is kept as it is: shrinking such tables takes minutes
)


@pytest.mark.parametrize("layout", GRIDS)
@_settings
@given(arrangement=arrangements(), spelling=spellings())
def test_delimited_text(tmp_path, layout, arrangement, spelling):
    narrow, write = GRIDS[layout]
    stated = narrow(spelling.rounded(arrangement))
    path = tmp_path / "t.csv"
    path.write_bytes(marked(delimited(write(stated, spelling), spelling), spelling))
    check(read_table(path, names_of(spelling)), stated)


@pytest.mark.parametrize("layout", GRIDS)
@settings(_settings, max_examples=4)
@given(arrangement=arrangements(), spelling=spellings())
def test_workbook(tmp_path, layout, arrangement, spelling):
    narrow, write = GRIDS[layout]
    stated = narrow(spelling.rounded(arrangement))
    path = tmp_path / "t.xlsx"
    path.write_bytes(workbook(write(stated, spelling), spelling, merge_headings=layout == "two-row heading"))
    check(read_table(path), stated)


@pytest.mark.parametrize("layout", FILES)
@_settings
@given(arrangement=arrangements(), spelling=spellings())
def test_files_of_their_own(tmp_path, layout, arrangement, spelling):
    narrow, write = FILES[layout]
    stated = narrow(spelling.rounded(arrangement))
    data = write(stated, spelling)
    path = tmp_path / "t"
    path.write_bytes(data if layout == "QIF" else marked(data, spelling))
    check(read_table(path, names_of(spelling)), stated)


@pytest.mark.parametrize("layout", ["wide", "long", "first article"])
@_settings
@given(arrangement=arrangements(), spelling=spellings())
def test_column_aligned_text(tmp_path, layout, arrangement, spelling):
    narrow, write = GRIDS[layout]
    stated = narrow(spelling.rounded(arrangement))
    path = tmp_path / "t.txt"
    path.write_bytes(marked(aligned(write(stated, spelling), spelling), spelling))
    check(read_table(path, names_of(spelling)), stated)
