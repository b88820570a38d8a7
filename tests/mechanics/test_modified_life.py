import itertools

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.mechanics import modified_life as ml


@pytest.mark.parametrize("element", ["ball", "roller"])
@pytest.mark.parametrize(("joint", "gap"), [(0.4, 4e-3), (1.0, 2e-4)])
def test_life_factor_is_continuous_at_its_joints(element, joint, gap):
    x = np.linspace(0.001, 0.3, 50)
    low, high = (ml.life_modification_factor(k, 1.0, x, 1.0, element) for k in (joint - 1e-9, joint))
    assert high == pytest.approx(low, rel=gap)


@given(st.floats(0.1, 4.0), st.floats(0.0, 1.0), st.floats(0.0, 3.0), st.sampled_from(["ball", "roller"]))
def test_life_factor_stays_in_range_and_grows(kappa, e_c, ratio, element):
    a = ml.life_modification_factor(kappa, e_c, ratio, 1.0, element)
    assert 0.1 - 1e-12 <= a <= 50.0
    more = ml.life_modification_factor(kappa, e_c, 1.1 * ratio, 1.0, element)
    assert more >= a * (1 - 1e-12)


def test_life_factor_grows_with_the_viscosity_ratio():
    kappa = np.geomspace(0.1, 4.0, 400)
    a = ml.life_modification_factor(kappa, 0.5, 0.1, 1.0)
    # The joint at 0.4 steps down by 0.03 % in the constants of the standard.
    assert np.all(a[1:] > a[:-1] * (1 - 5e-4)) and a[-1] > 10 * a[0]


def test_viscosity_ratio_is_held_to_the_range_of_the_standard():
    assert ml.limited_viscosity_ratio([0.01, 0.1, 1.0, 4.0, 9.0]) == pytest.approx([0.1, 0.1, 1.0, 4.0, 4.0])
    a = ml.life_modification_factor([0.01, 0.1, 4.0, 40.0], 0.5, 0.1, 1.0)
    assert a[0] == a[1] == pytest.approx(0.1, rel=0.01) and a[2] == a[3]


def test_without_a_fatigue_limit_nothing_but_a_tenth_is_left():
    assert ml.life_modification_factor(2.0, 0.0, 1.0, 1.0) == pytest.approx(0.1)
    assert ml.life_modification_factor(4.0, 1.0, 10.0, 1.0) == pytest.approx(50.0)


@pytest.mark.parametrize("lubrication", ["grease", "oil", "filtered oil"])
def test_dirt_lowers_the_contamination_factor(lubrication):
    kappa, d_pw = np.meshgrid(np.linspace(0.1, 4, 20), np.linspace(5, 600, 30))
    steps = [ml.contamination_factor(word, kappa, d_pw, lubrication) for word in ml.CLEANLINESS]
    for better, worse in itertools.pairwise(steps):
        assert np.all(worse <= better)
    assert np.all(np.asarray(steps) >= 0.0) and np.all(steps[0] == 1.0)


def test_contamination_factor_takes_arrays_of_words():
    words = np.array(["high", "extreme", "typical contamination"])
    e_c = ml.contamination_factor(words, [1.0, 1.0, 4.0], [50.0, 50.0, 800.0], ["grease", "oil", "grease"])
    assert e_c == pytest.approx([0.605879, 1.0, 1 - 1.677 / 800 ** (1 / 3)], rel=1e-5)


def test_fatigue_load_limit():
    assert ml.fatigue_load_limit(2200.0, [50.0, 100.0, 400.0]) == pytest.approx([100.0, 100.0, 50.0])
    assert ml.fatigue_load_limit(820.0, 50.0, "roller") == pytest.approx(100.0)


def test_nan_passes():
    assert np.isnan(ml.life_modification_factor(np.nan, 0.5, 0.1, 1.0))
    assert np.isnan(ml.contamination_factor(["high", "extreme"], [np.nan, np.nan], 50.0)).all()


@pytest.mark.parametrize(
    ("call", "message"),
    [
        (lambda: ml.life_modification_factor(0.0, 0.5, 0.1, 1.0), "viscosity ratio must be greater than 0"),
        (lambda: ml.life_modification_factor(1.0, 1.5, 0.1, 1.0), "from 0 to 1, got 1.5"),
        (lambda: ml.life_modification_factor(1.0, 0.5, -0.1, 1.0), "fatigue load limit must not be negative"),
        (lambda: ml.life_modification_factor(1.0, 0.5, 0.1, 0.0), "equivalent load must be greater than 0"),
        (lambda: ml.life_modification_factor(1.0, 0.5, 0.1, 1.0, "needle"), "'ball' or 'roller', got 'needle'"),
        (lambda: ml.contamination_factor("clean", 1.0, 50.0), "cleanliness must be one of extreme, .*got 'clean'"),
        (lambda: ml.contamination_factor("high", 1.0, 50.0, "water"), "lubrication must be one of .*got 'water'"),
        (lambda: ml.contamination_factor("high", 1.0, 0.0), "pitch diameter must be greater than 0"),
        (lambda: ml.fatigue_load_limit(1.0, 50.0, "needle"), "'ball' or 'roller', got 'needle'"),
        (lambda: ml.modified_life(1.0, 1.0, 0.0), "life modification factor must be greater than 0"),
    ],
)
def test_bad_input_is_refused(call, message):
    with pytest.raises(ValueError, match=message):
        call()
