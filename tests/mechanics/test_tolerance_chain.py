"""Chains of dimensions: three ways to close them, and their text form."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import tolerance_chain as tc

EXAMPLE = "+41.2±0.05 -12±0.02 -4 0/-0.12"


def test_members_of_the_example():
    c = tc.parse_chain(EXAMPLE)
    assert c.sign.tolist() == [1.0, -1.0, -1.0]
    assert c.nominal.tolist() == [41.2, 12.0, 4.0]
    assert c.lower.tolist() == [-0.05, -0.02, -0.12]
    assert c.upper.tolist() == [0.05, 0.02, 0.0]
    assert tc.worst_case(c) == (pytest.approx(25.13), pytest.approx(25.39))
    mean, half = tc.root_sum_square(c)
    assert mean == pytest.approx(25.26)
    assert half == pytest.approx(np.sqrt(0.05**2 + 0.02**2 + 0.06**2))


@pytest.mark.parametrize(
    ("text", "lower", "upper"),
    [
        ("+10±0.1-4±0.2", 5.7, 6.3),
        ("10 ± 0.1 - 4 ± 0.2", 5.7, 6.3),
        ("10,0±0,1 −4±0,2", 5.7, 6.3),
        ("+10+/-0.1 -4+-0.2", 5.7, 6.3),
        ("+10 +0.1/-0.1 -4 -0.2/+0.2", 5.7, 6.3),
        ("+10+0.3/+0.1 -4", 6.1, 6.3),
        ("  +10 0/-0.3\n-4  ", 5.7, 6.0),
        ("1,250 -0,5", 0.75, 0.75),
        ("-4", -4.0, -4.0),
        ("+.5", 0.5, 0.5),
    ],
)
def test_spellings(text, lower, upper):
    assert tc.worst_case(tc.parse_chain(text)) == (pytest.approx(lower), pytest.approx(upper))


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("", "position 1: the chain is empty"),
        ("  ", "position 1: the chain is empty"),
        ("+10±0.1 4±0.2", "position 9: '4±0.2' read, expected \\+ or -"),
        ("+10±", "position 4"),
        ("+10±0.1x -4", "position 8: 'x -4' read"),
        ("+10 0.1/-0.2", "position 5: deviation '0.1' has no sign"),
        ("+10 0/0.2", "position 7: deviation '0.2' has no sign"),
        ("+40/-0.12", "position 4: '/-0.12'"),
        ("+1.234,5 -3", "position 2: '1.234,5' is not a number"),
        ("+1,250 -3", "position 2: '1,250' may be a decimal or a thousands comma"),
        ("+1,25 -0.5", "position 8: '0.5' mixes decimal comma and decimal point"),
        ("ten", "position 1: 'ten' read"),
        ("+10±0.1 mm", "position 9: 'mm' read"),
        ("+10±-0.1", "position 4"),
    ],
)
def test_what_cannot_be_read_is_pointed_at(text, message):
    with pytest.raises(ValueError, match=message):
        tc.parse_chain(text)


@given(st.text(alphabet="0123456789+-±/., −4", max_size=24))
def test_any_text_is_read_whole_or_refused_with_a_place(text):
    try:
        c = tc.parse_chain(text)
    except ValueError as error:
        assert str(error).startswith("position ")
    else:
        assert np.all(c.lower <= c.upper)
        digits = sum(ch.isdigit() for ch in text)
        assert digits >= len(c.nominal) > 0


def random_chains(rows, members, seed):
    rng = np.random.default_rng(seed)
    half = rng.uniform(0.0, 0.2, (rows, members))
    shift = rng.uniform(-0.1, 0.1, (rows, members))
    return tc.chain(
        rng.choice([-1.0, 1.0], (rows, members)), rng.uniform(1, 50, (rows, members)), shift - half, shift + half
    )


def test_simulation_agrees_with_root_sum_square():
    chains = random_chains(6, 5, 3)
    lengths = tc.monte_carlo(chains, 200_000, seed=11)
    mean, half = tc.root_sum_square(chains)
    assert lengths.shape == (6, 200_000)
    assert lengths.mean(axis=-1) == pytest.approx(mean, abs=2e-3)
    assert 3 * lengths.std(axis=-1) == pytest.approx(half, rel=1e-2)


def test_share_outside_agrees_with_the_normal_law_and_repeats():
    chains = random_chains(40, 4, 4)
    mean, half = tc.root_sum_square(chains)
    low, high = mean - half * 0.4, mean + half * 0.7
    drawn = tc.share_outside(chains, low, high, 100_000, seed=2)
    assert drawn == pytest.approx(tc.normal_share_outside(chains, low, high), abs=6e-3)
    assert np.array_equal(drawn, tc.share_outside(chains, low, high, 100_000, seed=2))
    assert not np.array_equal(drawn, tc.share_outside(chains, low, high, 100_000, seed=3))
    alone = tc.Chain(*(part[7] for part in chains))
    assert tc.share_outside(alone, low[7], high[7], 100_000, seed=2) == drawn[7]


def test_root_sum_square_never_exceeds_the_worst_case():
    chains = random_chains(200, 6, 9)
    low, high = tc.worst_case(chains)
    mean, half = tc.root_sum_square(chains)
    assert (low + high) / 2 == pytest.approx(mean)
    assert np.all(half <= (high - low) / 2 + 1e-12)


def test_padding_members_change_nothing():
    c = tc.parse_chain(EXAMPLE)
    longer = tc.chain([*c.sign, 1.0], [*c.nominal, 0.0], [*c.lower, 0.0], [*c.upper, 0.0])
    assert tc.worst_case(longer) == tc.worst_case(c)
    assert tc.root_sum_square(longer) == tc.root_sum_square(c)


def test_missing_values_and_bad_members():
    c = tc.chain([1.0, -1.0], [[10.0, 4.0], [np.nan, 4.0]], -0.1, 0.1)
    assert np.isnan(tc.worst_case(c)[0]).tolist() == [False, True]
    assert np.isnan(tc.share_outside(c, 5.9, 6.1, 100, 1)).tolist() == [False, True]
    assert np.isnan(tc.normal_share_outside(c, 5.9, 6.1)).tolist() == [False, True]
    fixed = tc.chain([1.0], [5.0], 0.0, 0.0)
    assert tc.normal_share_outside(fixed, 4.0, [4.5, 6.0]).tolist() == [1.0, 0.0]
    with pytest.raises(ValueError, match="sign = 2"):
        tc.chain([2.0], [1.0], 0.0, 0.0)
    with pytest.raises(ValueError, match="lower <= upper"):
        tc.chain([1.0], [1.0], 0.1, 0.0)
    with pytest.raises(ValueError, match="draws = 0"):
        tc.monte_carlo(fixed, 0, 1)
    with pytest.raises(ValueError, match="lowest <= highest"):
        tc.share_outside(fixed, 6.0, 4.0, 10, 1)
