"""Places of values."""

import numpy as np

from linter.model.places import PlaceColumn


def test_the_places_of_many_rows_are_those_of_each():
    stated = np.array([2, 5, 9], np.int32)
    column = PlaceColumn("t.xlsx", ("A", "B"), np.array([0, 1, 1], np.int32), stated, np.array([1, 30, 2], np.int32))
    gap = PlaceColumn("t.csv", (None,), np.zeros(2, np.int32), np.array([4, 0], np.int32), np.array([3, 3], np.int32))
    nodes = PlaceColumn("t.json", pointers=["/0/bore", None])
    for places, rows in ((column, [2, 0, 1]), (gap, [0, 1]), (nodes, [1, 0])):
        assert places.every(np.array(rows)) == [places.at(row) for row in rows]
