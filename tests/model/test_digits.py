"""How many digits a sentence gives, and which figures it leaves as they are."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from linter.model.digits import bound_with_digits, fit_text, one_side_text, with_digits
from linter.model.wording import number_text, quantity_text


def said(text: str) -> str:
    return text.replace("\u00a0", " ")


def fill(*quantities: tuple[float, str]) -> str:
    return "between " + " and ".join(quantity_text(*q) for q in quantities) + ", as found"


@pytest.mark.parametrize(
    ("value", "unit", "shown"),
    [
        (94.44, "%", "94 %"),
        (5.047, "%", "5 %"),
        (697123.4, "mm.r/min", "697 000 mm·r/min"),
        (1860.5, "h", "1860 h"),
        (0.000174, "um", "0 µm"),
        (-14.83, "um", "−14.8 µm"),
        (1.25, "um", "1.25 µm"),
        (98.72, "degC", "99 °C"),
        (12.874, "deg", "12.9°"),
        (1573.2, "MPa", "1570 MPa"),
        (4.0035, "mm", "4.0035 mm"),
    ],
)
def test_three_digits(value, unit, shown):
    assert said(with_digits(f"It is {quantity_text(value, unit)}.", 3)) == f"It is {shown}."


def test_two_figures_that_differ_still_differ():
    text = fill((3529.0, "h"), (3528.0, "h"), (12.34, "N"))
    assert said(with_digits(text, 3)) == "between 3529 h and 3528 h and 12.3 N, as found"


def test_what_the_table_states_stays_as_stated():
    text = fill((23450.0, "r/min"), (23461.0, "r/min"))
    assert said(with_digits(text, 3, lambda: ["23\u00a0450\u00a0r/min"])) == (
        "between 23 450 r/min and 23 500 r/min, as found"
    )


def test_names_cells_and_plain_numbers_are_left_alone():
    text = "Bearing 61804 in cell BM1234 of DE-210.4567, class 4 k5 (+0.0065/+0.0015)\u00a0mm: 12345 of 23456"
    assert with_digits(text, 3) == text


def test_ratios_behind_their_symbol():
    assert with_digits("κ is 0.01381 (a_ISO = 10.034)", 3) == "κ is 0.0138 (a_ISO = 10)"


def test_a_bound_is_rounded_to_the_side_that_keeps_it():
    high, low = quantity_text(60478.0, "r/min"), quantity_text(0.1236, "N")
    assert said(bound_with_digits(f"Keep it below {high}.", 3)) == "Keep it below 60 400 r/min."
    assert said(bound_with_digits(f"Set it to {high} or less.", 3)) == "Set it to 60 400 r/min or less."
    assert said(bound_with_digits(f"Raise it to at least {low}.", 3)) == "Raise it to at least 0.124 N."
    assert bound_with_digits(f"Change it to {low}.", 3) == f"Change it to {low}."


@settings(derandomize=True)
@given(st.floats(1e-3, 1e7), st.sampled_from(["N", "h", "r/min", "MPa", "W"]), st.sampled_from([2, 3, 4]))
def test_rounding_stays_within_half_of_the_last_digit(value, unit, digits):
    shown = said(with_digits(f"x {quantity_text(value, unit)}", digits)).removeprefix("x ")
    number = float("".join(shown.split()[:-1]))
    before = float(number_text(value, unit).replace("\u00a0", ""))
    assert abs(number - before) <= 0.5000001 * 10 ** (1 - digits) * max(before, number)


def test_fits_by_their_names():
    assert said(fit_text(-17, 1, "um")) == "17 µm clearance to 1 µm interference"
    assert said(fit_text(2, 21, "um")) == "interference 2 µm to 21 µm"
    assert said(fit_text(-43, 0, "um")) == "clearance 0 µm to 43 µm"
    assert said(fit_text(0, 19, "um")) == "interference 0 µm to 19 µm"
    assert said(fit_text(-5, -5, "um")) == "clearance 5 µm"
    assert said(one_side_text(-19.5, "um", "clearance")) == "19.5 µm interference"
    assert said(one_side_text(3, "um", "clearance")) == "3 µm clearance"
