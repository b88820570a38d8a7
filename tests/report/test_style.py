"""Contrast of every colour of the style sheet against every ground it stands on (WCAG 2.2, 1.4.3 and 1.4.11)."""

import re

import pytest

from linter.report.html import style

TEXT = ("ink", "soft", "link", "critical", "major", "minor", "remark", "met", "none")
SHAPES = ("line", "focus", "critical", "met")


def palettes() -> dict[str, dict[str, str]]:
    blocks = re.findall(r":root\{([^}]*)\}", str(style()))
    assert len(blocks) == 3
    light, dark, paper = (dict(re.findall(r"--([a-z0-9]+):(#[0-9a-f]{3,6})", block)) for block in blocks)
    return {"light": light, "dark": {**light, **dark}, "print": {**light, **paper}}


def luminance(colour: str) -> float:
    digits = colour[1:] if len(colour) == 7 else "".join(2 * c for c in colour[1:])
    channels = [int(digits[k : k + 2], 16) / 255 for k in (0, 2, 4)]
    # WCAG 2.2, definition of relative luminance
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_the_measure_itself():
    assert contrast("#000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#767676", "#fff") == pytest.approx(4.54, abs=0.01)


@pytest.mark.parametrize("medium", ["light", "dark", "print"])
def test_text_and_shapes_stand_out(medium):
    colours = palettes()[medium]
    for name in TEXT:
        for ground in ("paper", "panel"):
            assert contrast(colours[name], colours[ground]) >= 4.5, f"{name} on {ground}"
    for name in SHAPES:
        assert contrast(colours[name], colours["paper"]) >= 3.0, name
    for ground in ("steel", "ball", "zone", "zone2"):
        assert contrast(colours["ink"], colours[ground]) >= 4.5, ground
    assert contrast(colours["critical"], colours["steel"]) >= 3.0


def test_nothing_is_fetched_and_paper_and_motion_are_thought_of():
    text = str(style())
    assert "@import" not in text and "url(" not in text and "<" not in text.replace("<=", "")
    for query in (
        "prefers-color-scheme:dark",
        "prefers-reduced-motion",
        "@media print",
        "@page{size:A4",
        "max-width:44rem",
    ):
        assert query in text
