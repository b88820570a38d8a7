"""The text forms of shaft sections and of discs."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics.rotor_text import parse_discs, parse_sections


def test_sections():
    for text in ("12 x 8 + 60.5 x 12/4", "12x8 60.5×⌀12/ø4", " 12*8; 60.5 X 12 / 4 ", "12 x 8 + 60,5 x 12/4"):
        assert np.array(parse_sections(text)).tolist() == [[12, 60.5], [8, 12], [0, 4]]


def test_discs():
    found = parse_discs(
        "wheel 12 g @ -4 (8 x 30/6) + 0,010 kg @ 40 (Ip 0,4 It 0,6); magnet 3 g @ 20,5".replace(",", ".")
    )
    assert found.position.tolist() == [-4, 40, 20.5]
    assert found.mass == pytest.approx([0.012, 0.010, 0.003])
    assert found.polar[:2] == pytest.approx([0.012 * (30**2 + 6**2) / 8, 0.4])
    assert found.transverse[:2] == pytest.approx([0.702 + 0.012 * 64 / 12, 0.6])
    assert np.isnan(found.polar[2]) and np.isnan(found.transverse[2])


@pytest.mark.parametrize(
    ("parse", "text", "said"),
    [
        (parse_sections, "", "position 1"),
        (parse_sections, "12 x 8 +", "ends with '\\+'"),
        (parse_sections, "12 x 8 + sixty", "position 10: 'sixty' read, expected a section"),
        (parse_sections, "12 x 8/9", "the inside one below it"),
        (parse_sections, "0 x 8", "from 0.01 to 20000 mm"),
        (parse_sections, "+".join(["1 x 1"] * 201), "more than 200"),
        (parse_discs, "0 g @ 4", "mass above 0"),
        (parse_discs, "3 g @ 40000", "within 20000 mm"),
        (parse_sections, "12,5 x 8.5", "decimal comma and decimal point"),
        (parse_sections, "12 x 8-4", "position 7"),
        (parse_discs, "12 @ 4", "mass in g or kg"),
        (parse_discs, "12 g", "position 1"),
        (parse_discs, "12 g @ 4 (3 x", "position 10"),
        (parse_discs, "12 g @ 4 (Ip 3 It 1)", "polar moment"),
    ],
)
def test_refused(parse, text, said):
    with pytest.raises(ValueError, match=said):
        parse(text)


@given(st.lists(st.tuples(st.integers(1, 999), st.integers(2, 99), st.integers(0, 1)), min_size=1, max_size=9))
def test_what_is_written_is_read(rows):
    text = " + ".join(f"{a / 10:g} x {b}" + (f"/{b - 1}" if hollow else "") for a, b, hollow in rows)
    found = parse_sections(text)
    assert found.length == pytest.approx([a / 10 for a, _, _ in rows])
    assert found.inside.tolist() == [b - 1 if hollow else 0 for _, b, hollow in rows]
