import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import internal_clearance as clearance
from linter.mechanics import tables

GROUPS = np.array(clearance.GROUPS)
TYPES = ("deep groove ball", "cylindrical roller")
ENDS = ((TYPES[0], 500), (TYPES[1], 250))


def test_ranges_have_no_gap_and_no_overlap():
    ends = {}
    for row in tables.rows("internal_clearance"):
        key = row["bearing_type"], row["group"]
        if key in ends:
            assert float(row["over_mm"]) == ends[key], row
        ends[key] = float(row["incl_mm"])


@pytest.mark.parametrize(("kind", "end"), ENDS)
def test_groups_follow_each_other_at_each_bore(kind, end):
    grid = np.arange(6.5, end, 0.5)
    low, high = clearance.radial_clearance(GROUPS[:, None], grid, kind)
    assert (low < high).all()
    assert (np.diff(low, axis=0) > 0).all() and (np.diff(high, axis=0) > 0).all()
    # Neighbouring groups touch or overlap; above 65 mm C5 of cylindrical roller bearings stands clear of C4.
    last = -1 if kind == "cylindrical roller" else None
    assert (low[1:last] <= high[: -2 if last else -1]).all()


@pytest.mark.parametrize(("kind", "end"), ENDS)
def test_clearance_grows_with_bore(kind, end):
    low, high = clearance.radial_clearance(GROUPS[:, None], np.arange(10.5, end, 0.5), kind)
    assert (np.diff(low, axis=1) >= 0).all() and (np.diff(high, axis=1) >= 0).all()


@given(st.lists(st.tuples(st.sampled_from([*GROUPS, "C9"]), st.floats(0.1, 600)), min_size=1, max_size=20))
def test_arrays_give_what_scalars_give(pairs):
    groups, bores = zip(*pairs, strict=True)
    together = np.array(clearance.radial_clearance_or_nan(groups, bores)).T
    np.testing.assert_array_equal(together, [clearance.radial_clearance_or_nan(g, d) for g, d in pairs])


@pytest.mark.parametrize(
    ("group", "bore", "kind"),
    [
        ("C4", 5, TYPES[0]),
        ("C6", 20, TYPES[0]),
        ("CN", 501, TYPES[0]),
        ("CN", 260, TYPES[1]),
        ("CN", 20, "needle roller"),
        ("CN", 0, TYPES[0]),
    ],
)
def test_refuses_what_is_not_in_the_table(group, bore, kind):
    with pytest.raises(ValueError, match="expected C2, CN"):
        clearance.radial_clearance(["CN", group], [20, bore], ["deep groove ball", kind])
    assert np.isnan(clearance.radial_clearance_or_nan(group, bore, kind)).all()


def test_missing_stays_missing():
    low, high = clearance.radial_clearance(np.array([None, "CN"], object), [20, np.nan])
    assert np.isnan(low).all() and np.isnan(high).all()
