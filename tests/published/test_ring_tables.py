"""Ring tolerances, clearances, chamfers, abutments and boundary sizes against published figures."""

import csv
from pathlib import Path

import numpy as np
import pytest

from linter.mechanics import abutment, boundary, internal_clearance, ring_tolerances


def published(name):
    with (Path(__file__).parent / "data" / f"{name}.csv").open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def test_ring_tolerances_of_a_second_maker():
    deviation = {"Delta_dmp": ring_tolerances.bore_deviation, "Delta_Dmp": ring_tolerances.outside_deviation}
    rows = published("ring_tolerances")
    assert len(rows) > 200
    for row in rows:
        size, name, quantity = float(row["diameter_mm"]), row["tolerance_class"], row["quantity"]
        if quantity in deviation:
            found = deviation[quantity](name, size)
            assert found == (float(row["lower_um"]), float(row["upper_um"])), row
        else:
            assert ring_tolerances.running_accuracy(quantity, name, size) == float(row["upper_um"]), row


def test_radial_clearance_of_two_makers():
    # SKF prints other figures above 200 mm (CN 28 to 82 at 200 to 225 mm); NSK, Koyo and NTN agree there.
    rows = published("radial_clearance")
    assert len(rows) > 100
    for row in rows:
        found = internal_clearance.radial_clearance(row["group"], float(row["bore_mm"]))
        assert found == (float(row["min_um"]), float(row["max_um"])), row


@pytest.mark.parametrize(
    ("name", "bore", "outside", "bore_lower", "outside_lower", "kia", "kea"),
    [
        # SKF General Catalogue, tables 3, 4 and 5 (ISO 492:2002)
        ("Normal", 25, 52, -10, -13, 13, 25),
        ("P6", 25, 52, -8, -11, 8, 13),
        ("P5", 25, 52, -6, -9, 4, 8),
        ("Normal", 4, 13, -8, -8, 10, 15),
        ("P5", 4, 13, -5, -5, 4, 5),
        # SKF P2 table after ISO 492:2014
        ("P2", 40, 80, -2.5, -4, 2.5, 4),
        # NSK Rolling Bearings E1102, Tables 8.2.1 and 8.2.2
        ("P4", 25, 52, -5, -7, 3, 5),
    ],
)
def test_rings(name, bore, outside, bore_lower, outside_lower, kia, kea):
    assert ring_tolerances.bore_deviation(name, bore) == (bore_lower, 0)
    assert ring_tolerances.outside_deviation(name, outside) == (outside_lower, 0)
    assert ring_tolerances.running_accuracy("Kia", name, bore) == kia
    assert ring_tolerances.running_accuracy("Kea", name, outside) == kea


def test_faces():
    # SKF General Catalogue, table 5; SKF P5 table after ISO 492:2014 for SD.
    found = [ring_tolerances.running_accuracy(q, "P5", 25) for q in ("Sd", "Sia")]
    assert found == [8, 8]
    found = [ring_tolerances.running_accuracy(q, "P5", 52) for q in ("SD before 2014", "SD", "Sea")]
    assert found == [8, 4, 10]


@pytest.mark.parametrize(
    ("group", "bore", "limits"),
    [
        # Koyo CAT. 203E-1, table 2-1; NSK E1102 Table 9.9; SKF General Catalogue, table 4, p. 297: they agree
        ("C2", 25, (1, 11)),
        ("CN", 25, (5, 20)),
        ("C3", 25, (13, 28)),
        ("C4", 25, (23, 41)),
        ("C5", 25, (30, 53)),
        ("CN", 50, (6, 23)),
        ("C3", 50, (18, 36)),
        # NTN CAT. 2202-IX/E, table 8.3
        ("CN", 2, (4, 11)),
        ("C3", 4, (8, 23)),
    ],
)
def test_clearance(group, bore, limits):
    assert internal_clearance.radial_clearance(group, bore) == limits


def test_cylindrical_roller_clearance():
    # AHR International, ahrinternational.com/bearing_clearance.htm
    low, high = internal_clearance.radial_clearance(["C2", "CN", "C3", "C4"], 60.0, "cylindrical roller")
    assert low.tolist() == [10, 40, 60, 80] and high.tolist() == [40, 70, 90, 110]


def test_chamfers_and_abutments():
    # TPI CAT 2260/TE, Table 3.6; NSK E1102 Table 8.9.1
    radial, axial = abutment.chamfer_max([0.3, 0.3, 1.0, 2.0], [40.0, 50.0, 60.0, 100.0])
    assert radial.tolist() == [0.6, 0.8, 1.9, 3.5] and axial.tolist() == [1, 1, 3, 5]
    # NTN CAT. 2202-IX/E, Table 14.3
    assert abutment.fillet_max([0.3, 0.6, 1.1, 3.0]).tolist() == [0.3, 0.6, 1.0, 2.5]
    assert abutment.shoulder_height_min([0.3, 0.6, 1.1, 3.0]).tolist() == [1.25, 2.25, 3.5, 7]
    # JIS B 1566 in the MinebeaMitsumi catalogue, p. 59
    assert abutment.shoulder_height_min([0.2, 0.3, 0.6], "small axial load").tolist() == [0.8, 1, 2]
    # NSK E1102 Table 11.2
    assert abutment.shoulder_height_min([0.6, 1.0], "angular contact").tolist() == [2.5, 3]
    # URB General Catalogue v14, Tables 4.5 to 4.7
    assert abutment.roughness_max([25, 100], ["Normal", "P5"], "shaft").tolist() == [0.8, 0.8]


def test_undercuts_clear_the_rings_that_they_are_printed_for():
    # SKF Spherical plain bearings, table 5, p. 77; TPI CAT 2260/TE, tables 3.7 and 3.8
    chamfers = np.array([1, 1.1, 1.5, 2, 2.5, 3, 4, 6, 7.5])
    width, depth, radius = abutment.undercut(chamfers)
    assert width.tolist() == [2, 2.4, 3.2, 4, 4, 4.7, 5.9, 8.6, 10]
    assert depth.tolist() == [0.2, 0.3, 0.4, 0.5, 0.5, 0.5, 0.5, 0.6, 0.6]
    assert radius.tolist() == [1.3, 1.5, 2, 2.5, 2.5, 3, 4, 6, 7]
    # they relieve seat and face alike: with the seat alone the arc of the corner would reach the ring's own
    assert (abutment.chamfer_cleared(radius, depth, depth) < chamfers).all()


def test_boundary_sizes():
    # SKF General Catalogue, p. 302 to 315: 6205, 6001, 608, 61900, 6310
    size = np.array([[25, 52, 15, 1], [12, 28, 8, 0.3], [8, 22, 7, 0.3], [10, 22, 6, 0.3], [50, 110, 27, 2]]).T
    assert boundary.boundary_chamfer(*size[:3]).tolist() == size[3].tolist()
    assert boundary.dimension_series(*size[:3]).tolist() == ["62", "60", "60", "619", "63"]


def test_whole_abutment_tables():
    chamfers = [0.05, 0.08, 0.1, 0.15, 0.2, 0.3, 0.6, 1, 1.1, 1.5, 2, 2.1, 2.5, 3, 4, 5, 6, 7.5, 9.5, 12, 15, 19]
    # NTN CAT. 2202-IX/E, Table 14.3; TPI CAT 2260/TE, Table 3.7
    fillets = [0.05, 0.08, 0.1, 0.15, 0.2, 0.3, 0.6, 1, 1, 1.5, 2, 2, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15]
    general = [0.3, 0.3, 0.4, 0.6, 0.8, 1.25, 2.25, 2.75, 3.5, 4.25, 5, 6, 6, 7, 9, 11, 14, 18, 22, 27, 32, 42]
    assert abutment.fillet_max(chamfers).tolist() == fillets
    assert abutment.shoulder_height_min(chamfers).tolist() == general
    # NTN, column for very small axial load, from r_s min 0.3
    small = [1, 2, 2.5, 3.25, 4, 4.5, 5.5, 5.5, 6.5, 8, 10, 12, 16, 20, 24, 29, 38]
    assert abutment.shoulder_height_min(chamfers[5:], "small axial load").tolist() == small
    # NSK E1102, Table 11.2
    deep = [0.2, 0.3, 0.4, 0.6, 0.8, 1, 2, 2.5, 3.25, 4, 4.5, 5.5, 6.5, 8, 10, 13, 16, 20, 24, 29, 38]
    printed = [rs for rs in chamfers if rs != 2.5]
    assert abutment.shoulder_height_min(printed, "deep groove").tolist() == deep
    angular = [1.25, 2.5, 3, 3.5, 4.5, 5, 6, 6, 7, 9, 11, 14, 18, 22, 27, 32, 42]
    assert abutment.shoulder_height_min(chamfers[5:], "angular contact").tolist() == angular


def test_whole_chamfer_table():
    # SKF General Catalogue, table 13, p. 135 (ISO 582): r_s min, bore, largest radial and axial chamfer
    table = [
        *((0.05, 5, 0.1, 0.2), (0.08, 5, 0.16, 0.3), (0.1, 5, 0.2, 0.4), (0.15, 5, 0.3, 0.6), (0.2, 5, 0.5, 0.8)),
        *((0.3, 40, 0.6, 1), (0.3, 41, 0.8, 1), (0.6, 40, 1, 2), (0.6, 41, 1.3, 2), (1, 50, 1.5, 3), (1, 51, 1.9, 3)),
        *((1.1, 120, 2, 3.5), (1.1, 121, 2.5, 4), (1.5, 120, 2.3, 4), (1.5, 121, 3, 5), (2, 80, 3, 4.5)),
        *((2, 220, 3.5, 5), (2, 221, 3.8, 6), (2.1, 280, 4, 6.5), (2.1, 281, 4.5, 7), (2.5, 100, 3.8, 6)),
        *((2.5, 280, 4.5, 6), (2.5, 281, 5, 7), (3, 280, 5, 8), (3, 281, 5.5, 8), (4, 90, 6.5, 9), (5, 90, 8, 10)),
        *((6, 90, 10, 13), (7.5, 90, 12.5, 17)),
    ]
    chamfer, bore, radial, axial = np.array(table).T
    np.testing.assert_array_equal(abutment.chamfer_max(chamfer, bore), [radial, axial])
