import numpy as np

from linter.mechanics import boundary, tables


def columns():
    names = ("bore_mm", "outside_diameter_mm", "width_mm", "rs_min_mm")
    return (np.array([float(row[name]) for row in tables.rows("boundary_dimensions")]) for name in names)


def test_every_row_is_found():
    bore, outside, width, chamfer = columns()
    assert boundary.boundary_match(bore, outside, width).all()
    found = boundary.boundary_chamfer(bore, outside, width)
    assert (found <= chamfer).all() and (found == chamfer).mean() > 0.97
    assert (boundary.dimension_series(bore, outside, width) != "").all()


def test_rows_are_rings():
    bore, outside, width, chamfer = columns()
    assert (outside > bore).all() and (2 * chamfer < (outside - bore) / 2).all() and (2 * chamfer < width).all()


def test_one_series_grows_with_bore():
    by_series = {}
    for row in tables.rows("boundary_dimensions"):
        sizes = [float(row[name]) for name in ("bore_mm", "outside_diameter_mm", "width_mm")]
        by_series.setdefault(row["series"], []).append(sizes)
    for name, sizes in by_series.items():
        steps = np.diff(np.array(sorted(sizes)), axis=0)
        assert (steps >= 0).all(), name
        assert (steps[steps[:, 0] > 0][:, 1] > 0).all(), name


def test_other_sizes_are_not_found():
    hit = boundary.boundary_match(25.0, [52.0, 52.1, np.nan, 47.0, -52.0], [15.0, 15.0, 15.0, 15.0, 15.0])
    assert hit.tolist() == [True, False, False, False, False]
    assert np.isnan(boundary.boundary_chamfer(2.7, 7.5, 3.0))
    assert boundary.dimension_series([25, 25, 5000], [52, 47, 6000], [15, 12, 1]).tolist() == ["62", "60", ""]
