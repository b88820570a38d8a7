import re
import xml.etree.ElementTree as ET
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from markupsafe import Markup

from linter.model.findings import Quantity
from linter.model.vocabulary import vocabulary
from linter.report.drawings.axis import Axis, fitting, linear
from linter.report.drawings.bars import SpeedLimit, limit_bar, speed_scale
from linter.report.drawings.fits import clearance_walk, fit_diagram
from linter.report.drawings.half_section import FEATURES, half_section, not_stated
from linter.report.drawings.svg import num, spread
from linter.report.drawings.window import Criterion, preload_window

SEAT = {
    "bore_diameter": 4.0,
    "outside_diameter": 13.0,
    "ring_width": 5.0,
    "shaft_seat_diameter": {"nominal": 4.0, "lower": -0.005, "upper": 0.0, "class": "h5"},
    "shaft_fillet_radius": 0.3,
    "axial_role": "spring-loaded",
}


def drawn(svg: Markup | None) -> ET.Element:
    """Parse one drawing and check what holds for all of them."""
    assert isinstance(svg, Markup)
    root = ET.fromstring(str(svg))
    assert root.tag == "svg" and root.get("role") == "img"
    assert (root.findtext("title") or "").strip() and (root.findtext("desc") or "").strip()
    assert len(svg.encode()) < 8_000
    width, height = (float(v) for v in root.get("viewBox").split()[2:])
    for element in root.iter():
        assert "style" not in element.attrib and not any(a.startswith("on") for a in element.attrib)
        for name, value in element.attrib.items():
            if name in ("x", "y", "x1", "x2", "y1", "y2", "cx", "cy", "r", "width", "height", "d", "points"):
                assert "nan" not in value and "inf" not in value
                assert not re.search(r"\d\.\d\d", value), f"{name}={value} is not rounded"
        for name, limit in (
            ("x1", width),
            ("x2", width),
            ("cx", width),
            ("y1", height),
            ("y2", height),
            ("cy", height),
        ):
            if name in element.attrib:
                assert -0.1 <= float(element.attrib[name]) <= limit + 0.1
        for name in ("width", "height", "r"):
            assert float(element.attrib.get(name, 0)) >= 0
    return root


def texts(root: ET.Element) -> list[str]:
    return [element.text or "" for element in root.iter("text")]


def test_limit_bar_marks_a_value_outside():
    root = drawn(limit_bar(Quantity(0.3, "mm"), None, Quantity(0.2, "mm")))
    assert root.find("polygon").get("class") == "seen bad"
    assert {"0.3\u00a0mm", "at most 0.2\u00a0mm"} <= set(texts(root))
    inside = drawn(limit_bar(Quantity(5.0, "N"), Quantity(2.0, "N"), Quantity(9.0, "N")))
    assert inside.find("polygon").get("class") == "seen"
    assert "inside" in inside.findtext("desc")


def test_limit_bar_needs_something_to_compare():
    assert limit_bar(None, Quantity(1.0, "N"), None) is None
    assert limit_bar(Quantity(1.0, "N"), None, None) is None
    assert limit_bar(Quantity(1.0, "N"), None, Quantity(1.0, "mm")) is None


@given(*(st.floats(-1e7, 1e7),) * 3)
@settings(max_examples=60)
def test_limit_bar_of_any_figures(observed, lower, upper):
    drawn(limit_bar(Quantity(observed, "N"), Quantity(lower, "N"), Quantity(upper, "N")))


def test_speed_scale_shows_every_lubrication_and_the_limit_that_holds():
    rows = [SpeedLimit("grease", 150e3, 500e3, 577.5e3), SpeedLimit("under-race oil", None, 2.5e6, 3e6)]
    root = drawn(speed_scale(561e3, 500e3, 577.5e3, 150e3, "grease", rows))
    assert {"grease", "under-race oil", "the limit that applies here"} <= set(texts(root))
    assert any(line.get("class") == "here bad" for line in root.iter("line"))
    met = drawn(speed_scale(300e3, 500e3, 577.5e3, None, "", []))
    assert any(line.get("class") == "here good" for line in met.iter("line"))


def test_fit_diagram_of_25_k5_and_a_normal_bore():
    # ISO 286-1: 25 k5 is +11/+2 um; ISO 492 Normal: bore 0/-10 um
    root = drawn(fit_diagram((2, 11), (-10, 0), (2, 11.5, 21), None, seat_name="shaft seat", ring_name="bore"))
    for figure in ("2", "11", "−10", "0", "21"):
        assert figure in texts(root)
    assert "smallest 2\u00a0µm" in root.findtext("desc")
    rects = list(root.iter("rect"))
    assert len(rects) == 3
    seat, ring = float(rects[1].get("width")), float(rects[0].get("width"))
    assert seat / ring == pytest.approx(0.9, abs=0.01)
    assert len(list(drawn(fit_diagram((2, 11), (-10, 0), (2, 11, 21), (0, 18))).iter("rect"))) == 4


def test_clearance_walk_goes_down_by_the_losses():
    root = drawn(clearance_walk((5, 20), (0, 6.4), (0, 0), 3.1, (-4.5, 16.9)))
    assert "less 0 to 6.4 from the inner ring's fit: −1.4 to 20 µm" in root.findtext("desc")
    assert root.findall("rect")[-1].get("class") == "zonebad"
    gained = drawn(clearance_walk((5, 20), (0, 0), (0, 0), -2, (7, 22)))
    assert "plus 2 from temperature: 7 to 22 µm" in gained.findtext("desc")
    assert gained.findall("rect")[-1].get("class") != "zonebad"


def test_preload_window_says_where_the_force_lies():
    low, high = [Criterion("skidding", 9.0)], [Criterion("contact stress", 48.0)]
    outside = drawn(preload_window(low, high, (7.1, 12.0, 17.4)))
    assert "outside the window" in outside.findtext("desc")
    inside = drawn(preload_window(low, high, (10.0, 12.0, 17.4)))
    assert "inside the window" in inside.findtext("desc")
    empty = drawn(preload_window(low, [Criterion("heat", 4.0)], (5.0, 6.0, 7.0)))
    assert "the window is empty" in empty.findtext("desc")
    assert not [r for r in empty.iter("rect") if r.get("class") == "window"]
    drawn(preload_window(low, [Criterion("static", 90_000.0)], (0.0, 12.0, 17.4)))


def test_a_long_criterion_is_broken_into_lines():
    name = "factor times the larger of axial pull and unbalance force of the rotor"
    root = drawn(preload_window([Criterion(name, 3.58)], [], (45.0, 60.0, 75.0)))
    assert name not in texts(root) and " ".join(texts(root)[1:4]) == name
    assert name in root.findtext("desc")


def test_half_section_marks_and_dimensions_the_feature():
    root = drawn(half_section(SEAT, {"shaft_seat_diameter": (3, 7), "shaft_fillet_radius": (4,)}))
    assert {"⌀4 h5", "R0.3", "3, 7", "4", "shaft seat", "shaft fillet"} <= set(texts(root))
    assert [e for e in root.iter() if "mark" in e.get("class", "").split()]
    assert [e for e in root.iter("path") if e.get("class") == "spring"]
    plain = drawn(half_section({**SEAT, "axial_role": "locating"}, {}))
    assert not [e for e in plain.iter() if e.get("class") in ("mark", "spring")]


def test_half_section_is_to_scale():
    root = drawn(half_section({**SEAT, "ball_diameter": 2.0}, {}))
    ball = next(c for c in root.iter("circle") if c.get("class") == "ball")
    heights = {t.text: float(t.get("y")) for t in root.iter("text")}
    section = (heights["⌀4"] - heights["⌀13"]) / 4.5
    assert float(ball.get("r")) == pytest.approx(section, abs=0.1)


def test_half_section_says_what_it_shows_by_habit():
    assert "ball_diameter" in not_stated(SEAT) and "shaft_fillet_radius" not in not_stated(SEAT)
    assert "housing_shoulder_diameter" in not_stated(SEAT)
    assert half_section({"bore_diameter": 4.0}, {}) is None and not_stated({}) == ()
    assert half_section({"bore_diameter": 9.0, "outside_diameter": 4.0}, {}) is None


def test_every_feature_is_a_parameter_and_can_be_marked():
    assert set(FEATURES) <= set(vocabulary())
    for role, ring in (("locating", "outer"), ("spring-loaded", "inner"), ("floating", "outer")):
        values = {**SEAT, "axial_role": role, "free_ring": ring}
        for name in FEATURES:
            assert FEATURES[name].name in texts(drawn(half_section(values, {name: (1,)})))


SIZES = st.fixed_dictionaries(
    {"bore_diameter": st.floats(0.5, 500), "outside_diameter": st.floats(1, 900)},
    optional={
        name: st.floats(-10, 1000)
        for name in (
            "ring_width",
            "ball_diameter",
            "pitch_diameter",
            "inner_ring_shoulder_diameter",
            "outer_ring_shoulder_diameter",
            "ring_chamfer",
            "shaft_shoulder_diameter",
            "housing_shoulder_diameter",
            "housing_outer_diameter",
            "shaft_bore",
            "shaft_fillet_radius",
            "housing_fillet_radius",
            "contact_angle",
        )
    }
    | {
        "axial_role": st.sampled_from(("locating", "floating", "spring-loaded", "cross-located")),
        "free_ring": st.sampled_from(("inner", "outer")),
    },
)


@given(SIZES)
@settings(max_examples=300)
def test_half_section_of_any_values(values):
    svg = half_section(values, {"shaft_seat_diameter": (1,), "housing_shoulder_diameter": (2,), "shaft_bore": (3,)})
    assert svg is None or drawn(svg) is not None


def test_the_contact_line_stays_on_its_sheet_where_the_ball_lies_on_the_axis():
    tiny = {
        "bore_diameter": 0.5,
        "outside_diameter": 5.0,
        "ring_width": 1.0,
        "pitch_diameter": 1.0,
        "contact_angle": 1.0,
    }
    drawn(half_section({**tiny, "free_ring": "inner"}, {"shaft_seat_diameter": (1,)}))


def test_scales():
    assert Axis(0, 10, 0, 100).x(5) == 50 and Axis(0, 10, 0, 100).x(99) == 100
    assert Axis(1, 100, 0, 100, True).x(10) == pytest.approx(50)
    assert fitting([1, 1000], 0, 1).logarithmic and not fitting([1, 30], 0, 1).logarithmic
    assert linear([0.0, 0.0], 0, 1).high > 0
    for scale in (Axis(0, 7, 0, 1), Axis(-3, 2, 0, 1), Axis(0.3, 4000, 0, 1, True), Axis(2, 90, 0, 1, True)):
        ticks = scale.ticks()
        assert 2 <= len(ticks) <= 8 and ticks == sorted(ticks)
        assert all(scale.low <= t <= scale.high for t in ticks)


def test_numbers_are_rounded_the_same_way_everywhere():
    assert [num(v) for v in (-0.04, 1.0, 1.26, -2.5)] == ["0", "1", "1.3", "-2.5"]


@given(st.lists(st.floats(0, 100), min_size=1, max_size=6))
def test_labels_are_spread_apart(wanted):
    wanted.sort()
    centres = spread(wanted, [10.0] * len(wanted), 0, 100)
    for before, after in pairwise(centres):
        assert after - before >= 10 - 1e-9
    assert centres[-1] <= 95 + 1e-9


@pytest.mark.parametrize("angle", [5e-324, 1e-300, 1e-9, 0.01, 40.0])
def test_a_contact_angle_however_small_is_drawn(angle):
    values = {"bore_diameter": 1.0, "outside_diameter": 2.0, "contact_angle": angle}
    root = drawn(half_section(values, {}))
    assert len([e for e in root.iter("line") if e.get("class") == "centre"]) == 2  # the axis and the contact line
