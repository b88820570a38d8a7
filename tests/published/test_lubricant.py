"""Viscosity and film thickness against printed figures. "memory" means a remembered figure of the named source."""

import numpy as np
import pytest

from linter.mechanics import hertz, lubricant


def test_viscosity_of_a_gear_oil(case):
    """ASTM D341, example 1 (olezol.com, viscosity-temperature extrapolation)."""
    c = case("A7-D341-SAE140")
    assert c["T_offset"] == 273.15
    c.agree(v3=lubricant.viscosity_at(c["t3"], c["v1"], c["t1"], c["v2"], c["t2"]))


def test_viscosity_worksheet(case):
    """ASTM D341 worksheet with T = t + 273 (scribd 361017004)."""
    c = case("A7-D341-VG32")
    line = (c["v1"], c["t1"], c["v2"], c["t2"], c["T_offset"])
    a, b = lubricant.viscosity_line(*line)
    c.agree(v3=lubricant.viscosity_at(c["t3"], *line), A=a, B=b)


def test_radial_ball_bearing_film(case):
    """Hamrock, Fundamentals of Fluid Film Lubrication (NASA RP-1255), inputs; results recomputed with its formulas.

    The race roughness of 0.175 um is from memory of the book.
    """
    c = case("A7-HAMROCK-INNER")
    e_prime = hertz.effective_modulus(c["E"] / 1e6, c["nu"], c["E"] / 1e6, c["nu"])
    d_e = (c["di"] + c["do"]) / 2
    curvature_x, curvature_y = 2e-3 / c["d"] + 2e-3 / c["di"], 2e-3 / c["d"] - 1e-3 / c["r"]
    ratio = curvature_x / curvature_y
    load = 5 * c["Fr"] / c["n"]
    ellipse = hertz.contact_ellipse(ratio, "power")
    contact = hertz.point_contact(load, curvature_x, curvature_y, e_prime, "power")
    speed = lubricant.entrainment_speed(c["omega"] * 30 / np.pi, 1e3 * c["d"], 1e3 * d_e)
    film = lubricant.film_thickness(speed, 1 / curvature_x, e_prime, c["eta0"], c["xi"], load, ellipse.ellipticity)
    r_x = 1e-3 / curvature_x
    c.agree(
        de=d_e,
        cd=c["do"] - c["di"] - 2 * c["d"],
        Rx=r_x,
        Ry=1e-3 / curvature_y,
        alpha_r=ratio,
        k=ellipse.ellipticity,
        ellip_E=ellipse.second_integral,
        ellip_F=ellipse.first_integral,
        Eprime=1e6 * e_prime,
        W=load,
        pmax=1e6 * contact.peak_pressure,
        delta=1e-3 * contact.approach,
        u=speed,
        U=c["eta0"] * speed / (1e6 * e_prime * r_x),
        G=c["xi"] * 1e6 * e_prime,
        Wdim=load / (1e6 * e_prime * r_x**2),
        Hmin=1e-6 * film / r_x,
        hmin=1e-6 * film,
        **{"lambda": lubricant.film_parameter(film, 1e6 * c["Rq_ball"], 1e6 * c["Rq_race"])},
    )


def test_ball_rolling_down_a_plate(case):
    """Steel ball on a 45 deg oiled plate (tutorbin.com), answers 0.059 and 0.281 um; entrainment v/2, R' = d/4."""
    c = case("A7-ROLLING-BALL")
    mass = np.pi / 6 * c["rho"] * c["d"] ** 3
    e_prime = hertz.effective_modulus(c["E"] / 1e6, c["nu"], c["E"] / 1e6, c["nu"])
    travel = np.array([0.01, 1.0])
    velocity = np.sqrt(2 * 5 / 7 * 9.81 * np.sin(np.pi / 4) * travel)  # rolling sphere: a = 5/7 g sin
    film = lubricant.film_thickness(
        velocity / 2, 1e3 * c["d"] / 4, e_prime, c["eta0"], c["xi"], mass * 9.81 * np.cos(np.pi / 4), 1.0339
    )
    c.agree(h_1cm=1e-6 * film[0], h_1m=1e-6 * film[1])


def test_grease_life_figures():
    """NSK Rolling Bearings catalogue E1102, JTEKT lubrication chapter, Booser: worked figures (coefficients memory)."""
    t = [70, 85, 100]
    assert lubricant.grease_life_by_limit(0.5, t) == pytest.approx([8130, 4220, 2190], rel=0.003)
    wide = lubricant.grease_life_by_limit(0.5, [*t, 120], "wide range")
    assert wide == pytest.approx([23440, 13960, 8320, 4170], rel=0.001)
    assert lubricant.grease_life_by_speed_factor(2e5, 0.05, t) == pytest.approx([10050, 5510, 3020], rel=0.002)
    mean = lubricant.grease_life_by_halving([*t, 120], 0.0, "L50")
    assert mean == pytest.approx([69600, 35000, 18600, 8590], rel=0.003)
