import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import abutment

STANDARD = np.array([0.05, 0.08, 0.1, 0.15, 0.2, 0.3, 0.6, 1, 1.1, 1.5, 2, 2.1, 2.5, 3, 4, 5, 6, 7.5, 9.5, 12, 15, 19])
TYPES = ("deep groove ball", "angular contact ball", "cylindrical roller", "tapered roller", "spherical roller")


def test_largest_chamfer_is_larger_than_the_smallest():
    small = STANDARD[STANDARD <= 7.5]
    for bore in (4.0, 45.0, 100.0, 300.0):
        radial, axial = abutment.chamfer_max(small, bore)
        assert (radial > small).all() and (axial > radial).all()
        assert (np.diff(radial) >= -0.5).all()  # r_s min 1.1, 2.1 and 2.5 cross in the standard


def test_chamfer_grows_with_bore():
    bores = np.array([1, 40, 40.1, 50, 50.1, 80, 80.1, 120, 120.1, 220, 280, 280.1, 500])
    radial, axial = abutment.chamfer_max(STANDARD[STANDARD <= 7.5][:, None], bores)
    assert (np.diff(radial, axis=1) >= 0).all() and (np.diff(axial, axis=1) >= 0).all()


def test_fillet_never_exceeds_the_chamfer():
    strict, loose = abutment.fillet_range(STANDARD)
    usual = abutment.fillet_max(STANDARD)
    assert (usual <= STANDARD).all() and (strict <= usual).all() and (usual <= loose).all()
    assert (np.diff(usual) >= 0).all()
    assert abutment.fillet_range(0.15) == (0.1, 0.15)


def test_shoulder_covers_the_fillet_and_grows():
    for column in abutment.SHOULDER_COLUMNS:
        heights = abutment.shoulder_height_min(STANDARD, column)
        known = np.isfinite(heights)
        assert (heights[known] > abutment.fillet_max(STANDARD)[known]).all()
        assert (np.diff(heights[known]) >= 0).all()


def test_ends_of_the_shoulder_height():
    strict, loose = abutment.shoulder_height_range(STANDARD, np.array(TYPES)[:, None])
    assert (strict >= loose).all()
    assert abutment.shoulder_height_range(0.3, "deep groove ball") == (1.25, 1.0)
    assert abutment.shoulder_height_range(0.6, "angular contact ball") == (2.5, 2.25)
    assert abutment.shoulder_height_range(2.5, "deep groove ball") == (6.0, 6.0)


def test_chamfers_between_the_standard_ones_are_read_on_the_safe_side():
    assert abutment.fillet_max(0.4) == 0.3
    assert abutment.shoulder_height_min(0.4) == 2.25
    assert abutment.chamfer_max(0.4, 10.0) == (1.0, 2.0)
    assert abutment.undercut(1.3).width == 2.4
    assert abutment.fillet_max(0.1 + 0.2) == 0.3


@given(st.floats(0.05, 19))
def test_safe_side_lies_between_its_neighbours(rs):
    below, above = STANDARD[rs + 1e-9 >= STANDARD].max(), STANDARD[rs - 1e-9 <= STANDARD].min()
    assert abutment.fillet_max(rs) == abutment.fillet_max(below)
    assert abutment.shoulder_height_min(rs) == abutment.shoulder_height_min(above)


def test_outside_the_tables_and_missing_are_nan():
    for rs in (np.nan, 0.04, 20.0, -1.0):
        assert np.isnan(abutment.fillet_max(rs)) and np.isnan(abutment.shoulder_height_min(rs))
        assert np.isnan(abutment.chamfer_max(rs, 10.0)).all() and np.isnan(abutment.undercut(rs)).all()
        assert np.isnan(abutment.shoulder_height_range(rs, "deep groove ball")).all()
    assert np.isnan(abutment.chamfer_max(0.3, np.nan)).all()
    assert np.isnan(abutment.undercut(0.6).width)
    assert np.isnan(abutment.shoulder_height_range(0.3, "")).all()
    assert np.isnan(abutment.roughness_max(10.0, "", "shaft"))


def test_refuses_unknown_words():
    with pytest.raises(ValueError, match="column"):
        abutment.shoulder_height_min(0.3, "thrust")
    with pytest.raises(ValueError, match="type of bearing"):
        abutment.shoulder_height_range(0.3, ["deep groove ball", "plain"])
    with pytest.raises(ValueError, match="shaft or housing"):
        abutment.roughness_max(10.0, "P5", "sleeve")


def test_roughness_by_size_class_and_element():
    names = np.array(["Normal", "P6", "P5", "P4", "P2"])[:, None]
    sizes = np.array([4.0, 80.0, 80.1, 500.0, 501.0])
    shaft = abutment.roughness_max(sizes, names, "shaft")
    housing = abutment.roughness_max(sizes, names, "housing")
    for table in (shaft, housing):
        assert (np.diff(table, axis=1) >= 0).all() and (np.diff(table, axis=0) <= 0).all()
    assert (housing >= shaft).all()
    strict, loose = abutment.roughness_range(sizes, names, "housing")
    np.testing.assert_array_equal(loose, 2 * strict)
    np.testing.assert_array_equal(*abutment.roughness_range(sizes, names, "shaft"))


def test_undercut_takes_the_smaller_radius_where_sources_differ():
    assert abutment.undercut(5.0) == (7.4, 0.6, 4.0)
    assert (abutment.undercut(STANDARD[7:18]).width > abutment.undercut(STANDARD[7:18]).radius).all()


@given(st.floats(0.1, 6.0), st.floats(0.0, 0.3), st.floats(0.0, 0.3))
def test_ring_of_the_chamfer_cleared_touches_the_corner_and_a_smaller_one_cuts_it(radius, h, t):
    """Points of the ring corner against the free space of the undercut: the second road to the closed form."""
    h, t = h * radius, t * radius
    corner = float(abutment.chamfer_cleared(radius, h, t))

    def depth_in_the_corner(chamfer):
        angle = np.linspace(np.pi, 1.5 * np.pi, 20001)
        x, y = chamfer * (1.0 + np.cos(angle)), chamfer * (1.0 + np.sin(angle))
        beyond = np.hypot(x - (radius - t), y - (radius - h)) - radius
        return np.where((x < radius - t) & (y < radius - h), beyond, -np.inf).max()

    assert depth_in_the_corner(corner) <= 1e-6 * radius
    if corner > 0.05 * radius:
        assert depth_in_the_corner(0.98 * corner) > 0.0


def test_chamfer_cleared_by_an_undercut():
    assert abutment.chamfer_cleared(0.4, 0.0) == 0.4
    assert abutment.chamfer_cleared(0.4, 0.2) == pytest.approx(0.2)
    assert abutment.chamfer_cleared(1.0, 0.2, 0.1) == pytest.approx(0.5)
    assert abutment.chamfer_cleared(0.1, 0.5, 0.5) == 0.0
    assert np.isnan(abutment.chamfer_cleared([np.nan, 1.0], [0.1, np.nan])).all()
    with pytest.raises(ValueError, match="undercut depth must not be negative"):
        abutment.chamfer_cleared(1.0, -0.1)
