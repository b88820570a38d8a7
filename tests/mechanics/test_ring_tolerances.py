import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import ring_tolerances as rings
from linter.mechanics import tables

CLASSES = list(rings.TOLERANCE_CLASSES)
BORES = np.array([0.6, 2.5, 10, 18, 30, 50, 80, 120, 150, 180, 250])
OUTSIDES = np.array([2.5, 6, 18, 30, 50, 80, 120, 150, 180, 250])
DEVIATIONS = [
    (rings.bore_deviation, rings.bore_deviation_or_nan, BORES),
    (rings.outside_deviation, rings.outside_deviation_or_nan, OUTSIDES),
    (rings.width_deviation, rings.width_deviation_or_nan, BORES),
]


def span(quantity):
    return OUTSIDES if quantity in ("Kea", "Sea", "SD", "SD before 2014") else BORES


def test_ranges_have_no_gap_and_no_overlap():
    ends = {}
    for row in tables.rows("ring_tolerances"):
        key = row["quantity"], row["tolerance_class"]
        if key in ends:
            assert float(row["over_mm"]) == ends[key], row
        ends[key] = float(row["incl_mm"])


@pytest.mark.parametrize(("function", "twin", "grid"), DEVIATIONS)
def test_deviations_fill_the_grid_below_nominal(function, twin, grid):
    for name in CLASSES:
        inside = grid[grid <= 150] if function is rings.width_deviation and name == "P2" else grid
        lower, upper = function(name, inside)
        assert (upper == 0).all() and (lower < 0).all()
        assert (np.diff(lower) <= 0).all()


@pytest.mark.parametrize(("function", "twin", "grid"), DEVIATIONS)
def test_finer_classes_are_never_wider(function, twin, grid):
    lower = twin(np.array(CLASSES)[:, None], grid[grid <= 150])[0]
    assert (np.diff(lower, axis=0) >= 0).all()


@pytest.mark.parametrize("quantity", rings.RUNNING_ACCURACIES)
def test_running_accuracy_grows_with_size_and_shrinks_with_class(quantity):
    names = CLASSES if quantity in ("Kia", "Kea") else CLASSES[2:]
    values = rings.running_accuracy(quantity, np.array(names)[:, None], span(quantity))
    assert (np.diff(values, axis=1) >= 0).all()
    assert (np.diff(values, axis=0) <= 0).all()
    assert (values > 0).all()


def test_definition_of_2014_halves_the_older_one():
    new = rings.running_accuracy("SD", np.array(CLASSES[2:])[:, None], OUTSIDES)
    old = rings.running_accuracy("SD before 2014", np.array(CLASSES[2:])[:, None], OUTSIDES)
    np.testing.assert_array_equal(old, 2 * new)


@given(st.lists(st.tuples(st.sampled_from([*CLASSES, "", "P7"]), st.floats(0.1, 600)), min_size=1, max_size=20))
def test_arrays_give_what_scalars_give(pairs):
    names, sizes = zip(*pairs, strict=True)
    for _, twin, _ in DEVIATIONS:
        np.testing.assert_array_equal(np.array(twin(names, sizes)).T, [twin(n, d) for n, d in pairs])
    together = rings.running_accuracy_or_nan("Kia", names, sizes)
    np.testing.assert_array_equal(together, [rings.running_accuracy_or_nan("Kia", n, d) for n, d in pairs])


@pytest.mark.parametrize(("function", "twin", "grid"), DEVIATIONS)
@pytest.mark.parametrize(("name", "size"), [("P7", 20), ("normal", 20), ("Normal", 0.5), ("P2", 251), ("P5", -3)])
def test_refuses_what_is_not_in_the_table(function, twin, grid, name, size):
    with pytest.raises(ValueError, match="is held for"):
        function(["Normal", name], [20, size])
    assert np.isnan(twin(name, size)).all()


def test_missing_stays_missing():
    lower, upper = rings.bore_deviation(np.array(["P5", None, ""], object), [np.nan, 4, 4])
    assert np.isnan(lower).all() and np.isnan(upper).all()


def test_running_accuracy_refuses():
    with pytest.raises(ValueError, match="expected one of Kia"):
        rings.running_accuracy("Kxa", "P5", 20)
    with pytest.raises(ValueError, match="Sd is held for P5"):
        rings.running_accuracy("Sd", "Normal", 20)
