"""The pictures of a machine: its sheet, speed map, spring chain, preload over temperature, fit over speed."""

import xml.etree.ElementTree as ET

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from markupsafe import Markup

from linter.report.drawings.bars import SpeedLimit
from linter.report.drawings.curves import Point, fit_over_speed, preload_over_temperature, speed_map
from linter.report.drawings.machine_sheet import Position, machine_sheet
from linter.report.drawings.stack import spring_stack

VALUES = {
    "bore_diameter": 4.0, "outside_diameter": 13.0, "axial_role": "spring-loaded", "preload_method": "spring",
    "speed_max": 60000.0, "rotating_ring": "inner", "shaft_material": "steel", "housing_material": "aluminium",
    "shaft_seat_diameter": {"nominal": 4.0, "lower": 0.001, "upper": 0.006, "class": "k5"},
    "bearing_span": {"nominal": 22.0, "lower": -0.05, "upper": 0.05, "class": None},
}  # fmt: skip


def parsed(svg: Markup | None) -> tuple[str, str, str]:
    """Text, title and description of a drawing."""
    assert svg is not None
    root = ET.fromstring(str(svg))
    shown = " ".join(element.text or "" for element in root.iter("text")).replace("\u00a0", " ")
    return shown, root.findtext("title") or "", (root.findtext("desc") or "").replace("\u00a0", " ")


def test_the_sheet_has_roles_fits_span_and_findings():
    marks = {"shaft_seat_diameter": (2, 7), "spring_rate": (3,)}
    shown, title, says = parsed(machine_sheet([Position("A", VALUES, marks), Position("B", VALUES, {})], [5]))
    for text in ("A", "B", "spring-loaded", "⌀4 k5 on steel", "not stated in aluminium", "2, 7", "5"):
        assert text in shown
    assert "span 22 ±0.05 mm · up to 60 000 r/min · inner ring turns" in shown
    assert "not to scale" in title and "findings 2, 7 at the shaft seat" in says and "Whole machine: 5." in says


def test_no_sheet_without_sizes_or_for_a_long_row_of_positions():
    assert machine_sheet([]) is None
    assert machine_sheet([Position("A", {"bore_diameter": 4.0}, {})]) is None
    assert machine_sheet([Position("A", VALUES, {})] * 5) is None


def test_the_map_shows_each_position_and_every_limit():
    limits = [SpeedLimit("grease", None, 480_000.0, 621_000.0), SpeedLimit("oil mist", None, 1e6, 1.5e6)]
    shown, _, says = parsed(speed_map([Point("A", 8.5, 82_000.0)], limits))
    assert "grease 621 000" in shown and "oil mist 1 500 000" in shown
    assert "A: 8.5 mm at 82 000 r/min, speed factor 697 000 mm·r/min" in says
    assert speed_map([], limits) is None and speed_map([Point("A", 8.5, 1.0)], []) is None


@settings(derandomize=True, max_examples=40)
@given(st.floats(0.5, 500), st.floats(1, 1e6), st.floats(1e4, 4e6))
def test_a_map_of_any_machine(diameter, speed, limit):
    parsed(speed_map([Point("A", diameter, speed)], [SpeedLimit("grease", None, limit, limit)]))


def test_the_chain_tells_each_share():
    shown, _, says = parsed(spring_stack("+21.2±0.05 -12±0.02 -4.2±0.03"))
    assert "50 % of the tolerance" in shown and "20 % of the tolerance" in shown and "30 % of the tolerance" in shown
    assert "spring 5 ±0.1 mm" in shown and "5 mm, worst case 0.2 mm in all" in says
    assert spring_stack("") is None and spring_stack("see drawing") is None


def test_a_preload_that_leaves_its_window_is_marked():
    svg = preload_over_temperature({"assembled": 60.0, "running": 209.0}, (30.0, 90.0))
    shown, _, says = parsed(svg)
    assert "209 N" in shown and "assembled 60 N; running 209 N; allowed at least 30 N and at most 90 N" in says
    assert str(svg).count('class="seen bad"') == 1 and str(svg).count('class="seen"') == 1
    assert preload_over_temperature({"assembled": 60.0}) is None


@pytest.mark.parametrize("speed", [0.0, float("nan")])
def test_no_curve_without_speed(speed):
    assert fit_over_speed((2.0, 21.0), (-1.0, 17.0), 2.0, speed) is None


def test_the_loss_by_speed_is_told():
    _, _, says = parsed(fit_over_speed((2.0, 21.0), (-1.0, 17.0), 2.0, 60_000.0, 1.5))
    assert "As drawn interference 2 µm to 21 µm; warm at standstill interference 1 µm to 19 µm" in says
    assert "at 60 000 r/min 1 µm clearance to 17 µm interference" in says and "Lost to speed: 2 µm" in says
