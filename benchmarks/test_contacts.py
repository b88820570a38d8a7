"""Vectorised solvers of contact, load distribution and life at 1, 1000 and 100 000 stations.

Run with ``pytest benchmarks``; the tests here only measure, what the solvers return is checked in tests/.
"""

import numpy as np
import pytest

from linter.mechanics import ball_bearing as bb
from linter.mechanics import hertz, kinematics, load_distribution, lubricant, modified_life, rating_life, static_rating


@pytest.fixture(params=[1, 1_000, 100_000])
def stations(request):
    """Invented deep groove and angular contact bearings with 6 to 20 balls."""
    rng = np.random.default_rng(20240229)
    n = request.param
    d_w = rng.uniform(2.0, 20.0, n)
    z = rng.integers(6, 21, n).astype(float)
    f_i, f_o = rng.uniform(0.515, 0.525, n), rng.uniform(0.525, 0.54, n)
    d_pw = np.maximum(d_w * z / np.pi * 1.15, 3.2 * d_w)
    c = rating_life.dynamic_rating(z, d_w, d_pw)
    return {
        "d_w": d_w, "z": z, "f_i": f_i, "f_o": f_o, "d_pw": d_pw, "c": c,
        "a": bb.groove_distance(d_w, f_i, f_o), "clearance": d_w * rng.uniform(-2e-4, 4e-3, n),
        "angle": rng.uniform(5.0, 40.0, n), "k_n": 3.6e4 * np.sqrt(d_w),
        "radial": c * 10 ** rng.uniform(-3, -0.7, n), "axial": c * 10 ** rng.uniform(-3, -0.7, n),
    }  # fmt: skip


def test_elliptic_contact(benchmark, stations):
    s = stations
    inner = hertz.race_curvatures(s["d_w"], s["d_pw"], s["angle"], s["f_i"], "inner")
    benchmark(hertz.point_contact, s["radial"], *inner, 227_000.0)


def test_axial_load(benchmark, stations):
    s = stations
    benchmark(bb.axial_load, s["axial"], bb.AxialBearing(s["z"], s["a"], s["angle"], s["k_n"]))


def test_preloaded_pair(benchmark, stations):
    s = stations
    bearing = bb.AxialBearing(s["z"], s["a"], s["angle"], s["k_n"])
    benchmark(bb.preloaded_pair, s["axial"], s["radial"], bearing, bearing)


def test_radial_load(benchmark, stations):
    s = stations
    benchmark(load_distribution.radial_load, s["radial"], s["z"], s["k_n"], s["clearance"])


def test_combined_load(benchmark, stations):
    s = stations
    benchmark(load_distribution.combined_load, s["radial"], s["axial"], s["z"], s["a"], s["clearance"], s["k_n"])


def test_split_contact_angles(benchmark, stations):
    s = stations
    k = 2.8 * s["k_n"]
    force = 0.5 * s["axial"] / s["z"]
    benchmark(
        kinematics.split_contact_angles,
        s["axial"], force, s["z"], s["d_w"], s["f_i"], s["f_o"], s["angle"], k, k,
    )  # fmt: skip


def test_rating_and_modified_life(benchmark, stations):
    s = stations
    words = np.resize(["high", "normal", "severe contamination"], s["z"].shape)

    def chain():
        c_0 = static_rating.static_rating(s["z"], s["d_w"], s["d_pw"])
        f_0 = static_rating.tabulated_geometry_factor(s["d_w"] / s["d_pw"])
        p = rating_life.equivalent_load(s["radial"], s["axial"], rating_life.load_factors(0.0, f_0 * s["axial"] / c_0))
        kappa = lubricant.viscosity_ratio(20.0, 3000.0, s["d_pw"])
        e_c = modified_life.contamination_factor(words, kappa, s["d_pw"])
        a_iso = modified_life.life_modification_factor(kappa, e_c, modified_life.fatigue_load_limit(c_0, s["d_pw"]), p)
        return modified_life.modified_life(rating_life.basic_life(s["c"], p), 1.0, a_iso)

    benchmark(chain)
