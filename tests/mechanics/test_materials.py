import csv
from pathlib import Path

import numpy as np
import pytest

from linter.mechanics import materials, tables

VOCABULARY = Path(__file__).resolve().parents[2] / "schemas" / "vocabulary.csv"


def choices(name):
    with VOCABULARY.open(newline="", encoding="utf-8") as file:
        return next(row["choices"].split("|") for row in csv.DictReader(file) if row["name"] == name)


@pytest.mark.parametrize("name", ["shaft_material", "housing_material", "ball_material", "ring_material"])
def test_every_choice_of_the_vocabulary_has_its_constants(name):
    words = choices(name)
    ball = name == "ball_material"
    assert ((materials.expansion(words, ball) > 1e-6) & (materials.expansion(words, ball) < 1e-4)).all()
    assert (materials.elastic_modulus(words, ball) > 5e3).all()
    assert ((materials.poisson_ratio(words, ball) > 0.2) & (materials.poisson_ratio(words, ball) < 0.45)).all()
    assert (materials.density(words, ball) > 1e3).all()
    if name == "ring_material":
        strict, loose = materials.hoop_stress_limit(words)
        assert (strict > 0).all() and (strict <= loose).all()


def test_value_lies_between_its_ends():
    for row in tables.rows("materials"):
        if row["value"]:
            assert float(row["low"]) <= float(row["value"]) <= float(row["high"]), row
        else:
            assert not row["low"] and not row["high"] and row["note"], row


def test_word_steel_depends_on_the_part():
    assert materials.expansion("steel") == 12.0e-6
    assert materials.expansion("steel", ball=True) == materials.expansion("bearing steel") == 12.5e-6
    assert materials.expansion("silicon nitride", ball=True) == pytest.approx(3.3e-6)


def test_missing_stays_missing_and_unknown_words_are_refused():
    found = materials.elastic_modulus(np.array([["steel", ""], [None, "zirconia"]], object))
    np.testing.assert_array_equal(found, [[210000, np.nan], [np.nan, 200000]])
    assert np.isnan(materials.yield_strength("silicon nitride"))
    assert np.isnan(materials.hoop_stress_limit("aluminium")).all()
    low, high = materials.expansion_range(["stainless steel", ""])
    assert low[0] == pytest.approx(10.1e-6) and high[0] == pytest.approx(17.3e-6) and np.isnan(low[1])
    with pytest.raises(ValueError, match="'wood' is not a known material"):
        materials.density(["steel", "wood"])
