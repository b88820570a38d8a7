"""Deviations are checked for size, however they stand beside their nominal; a class settles what they leave open."""

import json
from pathlib import Path

import numpy as np
import openpyxl
import pytest

from linter.reading import Reading, read_table
from linter.reading.cells.numbers import Number, read_number
from linter.reading.cells.signs import ReadError
from linter.reading.cells.tolerance import Size, read_size

HEAD = "machine,station,shaft seat [{0}],shaft seat upper [{0}],shaft seat lower [{0}]"


def wide(folder: Path, nominal: str, upper: str, lower: str, unit: str) -> Reading:
    path = folder / "t.csv"
    path.write_text(f"{HEAD.format(unit)}\nM,A,{nominal},{upper},{lower}\n", encoding="utf-8")
    return read_table(path)


def long(folder: Path, nominal: str, upper: str, lower: str, unit: str) -> Reading:
    path = folder / "t.csv"
    rows = f"Name,Value,Unit,Upper,Lower,Station,Machine\nshaft_seat_diameter,{nominal},{unit},{upper},{lower},A,M\n"
    path.write_text(rows, encoding="utf-8")
    return read_table(path)


def as_json(folder: Path, nominal: str, upper: str, lower: str, unit: str) -> Reading:
    path = folder / "t.json"
    seat = {"value": float(nominal), "upper": float(upper), "lower": float(lower), "unit": unit}
    stations = [{"station": "A", "shaft_seat_diameter": seat}]
    path.write_text(json.dumps({"machine": "M", "stations": stations}), encoding="utf-8")
    return read_table(path)


def workbook(folder: Path, nominal: str, upper: str, lower: str, unit: str) -> Reading:
    book = openpyxl.Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(HEAD.format(unit).split(","))
    sheet.append(["M", "A", float(nominal), float(upper), float(lower)])
    book.save(folder / "t.xlsx")
    return read_table(folder / "t.xlsx")


LAYOUTS = [wide, long, as_json, workbook]


@pytest.mark.parametrize("layout", LAYOUTS)
@pytest.mark.parametrize(
    ("nominal", "upper", "lower", "unit"),
    [
        ("8", "+6", "+1", "mm"),
        ("22", "0", "-9", "mm"),
        ("100", "+2", "-1", "mm"),
        ("8", "0.6", "0.1", "mm"),
        ("0.315", "+2", "-1", "in"),
        ("0.315", "0.02", "0.01", "in"),
    ],
)
def test_deviations_too_large_for_the_seat_are_a_question(tmp_path, layout, nominal, upper, lower, unit):
    reading = layout(tmp_path, nominal, upper, lower, unit)
    size = reading.stations.size("shaft_seat_diameter")
    assert size.nominal[0] == pytest.approx(float(nominal) * (25.4 if unit == "in" else 1))
    assert np.isnan(size.upper[0])
    assert [p.code for p in reading.stations.problems if p.kind == "unreadable"] == ["unlikely-deviations"]


@pytest.mark.parametrize("layout", LAYOUTS)
def test_deviations_of_a_seat_are_read(tmp_path, layout):
    size = layout(tmp_path, "8", "+0.006", "-0.001", "mm").stations.size("shaft_seat_diameter")
    assert (size.upper[0], size.lower[0]) == pytest.approx((0.006, -0.001))
    size = layout(tmp_path, "0.3150", "+0.0002", "-0.0001", "in").stations.size("shaft_seat_diameter")
    assert (size.upper[0], size.lower[0]) == pytest.approx((0.00508, -0.00254))


@pytest.mark.parametrize(("low", "high"), [("0.001", "0.006"), ("0", "13"), ("7.2", "9.1"), ("6", "7")])
@pytest.mark.parametrize("nominal", ["8", ""])
def test_limit_columns_that_hold_no_limits_of_the_size_are_a_question(tmp_path, low, high, nominal):
    path = tmp_path / "t.csv"
    head = "machine,station,cage,shaft seat [mm],shaft seat max [mm],shaft seat min [mm]"
    path.write_text(f"{head}\nM,A,peek,{nominal},{high},{low}\n", encoding="utf-8")
    reading = read_table(path)
    assert np.isnan(reading.stations.size("shaft_seat_diameter").upper[0])
    assert "range-of-sizes" in {p.code for p in reading.stations.problems if p.kind == "unreadable"}


def test_limits_near_the_nominal_are_read(tmp_path):
    path = tmp_path / "t.csv"
    head = "machine,station,shaft seat [mm],shaft seat max [mm],shaft seat min [mm]"
    path.write_text(f"{head}\nM,A,8.0,8.006,8.001\n", encoding="utf-8")
    size = read_table(path).stations.size("shaft_seat_diameter")
    assert (size.upper[0], size.lower[0]) == pytest.approx((0.006, 0.001))


@pytest.mark.parametrize(
    ("cell", "deviations"), [("h5 (0/-8)", (0, -0.008)), ("k5 (+9/+1)", (0.009, 0.001)), ("h5 (0/-0.008)", (0, -0.008))]
)
def test_class_settles_deviations_without_a_unit(tmp_path, cell, deviations):
    path = tmp_path / "t.csv"
    path.write_text(f"machine,station,shaft seat [mm],shaft seat class\nM,A,15,{cell}\n", encoding="utf-8")
    stations = read_table(path).stations
    size = stations.size("shaft_seat_diameter")
    assert (size.upper[0], size.lower[0]) == pytest.approx(deviations)
    assert [p for p in stations.problems if p.kind != "assumption"] == []
    one_cell = read_size(f"15 {cell}", "mm")
    assert isinstance(one_cell, Size)
    assert (one_cell.upper, one_cell.lower) == pytest.approx(deviations)


def test_class_that_its_deviations_contradict_does_not_make_them_micrometres(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text("machine,station,shaft seat [mm],shaft seat class\nM,A,15,h5 (0/-9)\n", encoding="utf-8")
    problems = read_table(path).stations.problems
    assert [p.code for p in problems if p.kind == "unreadable"] == ["unlikely-deviations"]
    assert isinstance(read_size("15 h5 (0/-9)", "mm"), ReadError)


@pytest.mark.parametrize("cell", ["26 E8", "26E8", "26e8", "26 d9", "26D9"])
def test_size_with_its_class_is_no_exponent(tmp_path, cell):
    path = tmp_path / "t.csv"
    path.write_text(f"machine,station,housing_seat_diameter,cage\nM,A,{cell},peek\n", encoding="utf-8")
    size = read_table(path).stations.size("housing_seat_diameter")
    assert size.nominal[0] == 26
    assert size.tolerance_class[0] == cell.replace(" ", "")[2:]


def test_exponents_of_plain_numbers_stay():
    assert read_number("2.6e3") == Number(2600.0, 1)
    assert read_number("1.5 x 10^3") == Number(1500.0, 1)
    assert isinstance(read_number("26 E8"), ReadError)


@pytest.mark.parametrize("zero", ["0", "0.0"])
def test_zero_without_a_unit_is_no_nominal(tmp_path, zero):
    path = tmp_path / "t.csv"
    path.write_text(f"machine,station,cage,shaft seat\nM,A,peek,{zero}\n", encoding="utf-8")
    stations = read_table(path).stations
    assert not stations.known("shaft_seat_diameter")[0]
    assert [p.code for p in stations.problems if p.kind == "unreadable"] == ["unit-missing"]


@pytest.mark.parametrize("text", ["31,0", "Ø31,0", "31,0 H6", "31,0 mm", "31,0 ±0,01", "31,0; 31,0"])
@pytest.mark.parametrize("decimal", [None, ",", "."])
def test_decimal_comma_of_one_zero_is_never_cut(text, decimal):
    size = read_size(text, "mm", decimal)
    assert isinstance(size, ReadError) or 31.0 in (size.nominal, size.lower, size.upper)
