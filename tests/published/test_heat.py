"""Friction, power loss, thermal speeds, temperatures and grease fill against print. "memory" means remembered."""

import numpy as np
import pytest

from linter.checks.lookup import check_function
from linter.checks.shared.base import View
from linter.mechanics import cooling, friction, heat, hertz, kinematics, lubricant, tables
from linter.model.stations import stations_from_rows
from linter.rulebook.load import load
from linter.rulebook.model import Limits


def test_printed_power_of_a_bearing_by_one_coefficient(case):
    """Jindal, Machine Design, Example 18-1: 53.08 W."""
    c = case("A11-JINDAL-18-1")
    torque = friction.coefficient_torque(c["mu"], c["P"], c["d"])
    c.agree(M=torque, power=heat.friction_power(torque, c["n"]))


def test_printed_constant_of_the_power(case):
    """SKF, power loss and bearing temperature: the constant is rounded."""
    c = case("A11-POWER-CONST")
    power = heat.friction_power(c["M"], c["n"])
    c.agree(
        power_rounded_constant=1.05e-4 * c["M"] * c["n"], power_exact=power, rise=heat.temperature_rise(power, c["Ws"])
    )
    assert 1.05e-4 * c["M"] * c["n"] == pytest.approx(power, rel=0.003)


def test_ends_of_the_coefficient(case):
    """JTEKT, bearing knowledge, Table 8-1."""
    c = case("A11-MU-DG")
    low, high = (friction.coefficient_torque(c[f"mu_{end}"], c["P"], c["d"]) for end in ("low", "high"))
    c.agree(
        M_low=low,
        M_high=high,
        power_low=heat.friction_power(low, c["n"]),
        power_high=heat.friction_power(high, c["n"]),
    )


@pytest.mark.parametrize(
    ("bearing_type", "printed"),
    [("deep groove ball", [0.0013, 0.0015]), ("angular contact ball", [0.0015, 0.0020]),
     ("cylindrical roller", [0.0011]), ("needle roller", [0.0020]), ("tapered roller", [0.0018]),
     ("spherical roller", [0.0018])],
)  # fmt: skip
def test_coefficients_of_two_further_makers_lie_between_the_ends(bearing_type, printed):
    """EZO, friction torque (0.0013, 0.0015); SKF, Rolling bearings, p. 100, Table 1 (the others). Both read."""
    row = next(r for r in tables.rows("friction_coefficient") if r["bearing_type"] == bearing_type)
    assert all(float(row["low"]) <= value <= float(row["high"]) for value in printed)


@pytest.mark.parametrize("name", ["A11-PALM-6000", "A11-PALM-7002-15", "A11-PALM-6205-SLOW"])
def test_two_term_method(case, name):
    """Palmgren; factors from memory of Harris, SKF 1994 and FAG WL 41 520."""
    c = case(name)
    kind, angle = {"dg": ("deep groove ball", 0.0), "ac15": ("angular contact ball", 15.0)}[c["kind"]]
    d_m = 0.5 * (c["d"] + c["D"])
    term = friction.load_term(kind, angle, c["Fr"], c["Fa"], c["C0"])
    m_0 = friction.lubricant_torque(c["f0"], c["nu"], c["n"], d_m)
    m_1 = friction.load_torque(term.factor, term.friction_load, d_m)
    c.agree(
        dm=d_m, P0=term.static_load, P1=term.friction_load, f1=term.factor, M0=m_0, M1=m_1, M=m_0 + m_1,
        power=heat.friction_power(m_0 + m_1, c["n"]),
    )  # fmt: skip


def test_the_two_branches_do_not_meet(case):
    """The constant branch lies 0.79 % above the rising one where they change over."""
    c = case("A11-BRANCH-STEP")
    below = friction.lubricant_torque(1.0, 1.0, np.nextafter(c["nu_n"], 0.0), 10.0)
    c.agree(ratio_constant_to_power_branch=below / friction.lubricant_torque(1.0, 1.0, c["nu_n"], 10.0))


@pytest.mark.parametrize("name", ["A11-FOUR-6205-RADIAL", "A11-FOUR-6000-AXIAL"])
def test_method_of_rolling_and_sliding(case, name):
    """SKF catalogue 6000 EN, chapter Friction: constants read, formulas from memory."""
    c = case(name)
    constants = friction.maker_constants(c["series"])
    assert constants == (c["R1"], c["R2"], c["S1"], c["S2"])
    found = friction.maker_torque(
        c["d"],
        c["D"],
        c["C0"],
        c["Fr"],
        c["Fa"],
        c["nu"],
        c["n"],
        constants,
        c["Krs"],
        c["Kz"],
        c["mu_bl"],
        c["mu_ehl"],
    )
    c.agree(
        Grr=found.rolling_variable, Gsl=found.sliding_variable, phi_ish=found.inlet_factor,
        phi_rs=found.starvation_factor, phi_bl=found.mixed_share, mu_sl=found.sliding_coefficient,
        Mrr=found.rolling, Msl=found.sliding, M=found.total, power=heat.friction_power(found.total, c["n"]),
    )  # fmt: skip


@pytest.mark.parametrize("name", ["A12-REF-6205", "A12-REF-6000", "A12-REF-7208-40"])
def test_thermal_reference_speed(case, name):
    """ISO 15312:2018; coefficients and area from memory."""
    c = case(name)
    area = heat.reference_area(c["d"], c["D"], c["B"])
    flow = heat.reference_flow(area)
    c.agree(
        A_r=area,
        q_r=flow,
        P1r=heat.REFERENCE_LOAD_SHARE * c["C0r"],
        power=area * flow,
        n_theta_r=heat.reference_speed(c["d"], c["D"], c["B"], c["C0r"], c["f0r"], c["f1r"], c["nu_r"]),
    )


@pytest.mark.parametrize("name", ["A12-PERM-6205", "A12-PERM-OIL"])
def test_thermally_permissible_speed(case, name):
    """DIN 732:2010 from memory; the reference speed only scales the answer."""
    c = case(name)
    seats = heat.seat_conductance(c["d"], c["D"], c["B"])

    def at(reference):
        return heat.permissible_speed(
            reference, 0.5 * (c["d"] + c["D"]), seats, c["dT"], c["f0"], c["nu"], c["f1"], c["P1"], c["oil_flow"],
            c["oil_rise"],
        )  # fmt: skip

    found = at(c["n_ref"])
    c.agree(
        heat=found.heat, K_L=found.lubricant_share, K_P=found.load_share, f_n=found.ratio, n_permissible=found.speed
    )
    assert at(3.0 * c["n_ref"]).speed == pytest.approx(found.speed, rel=1e-9)


def test_thermocouple_bead(case):
    """Incropera and DeWitt, Example 5.1 (memory): 0.706 mm, 5.2 s."""
    c = case("A13-INCROPERA-5-1")
    diameter = 6.0 * c["h"] * c["tau"] / (c["rho"] * c["c"])
    c.agree(D=diameter, t=heat.time_to(c["T_end"], c["T_i"], c["T_env"], c["tau"]))


@pytest.mark.parametrize("name", ["A13-DUTY-A", "A13-DUTY-SHORT"])
def test_periodic_duty(case, name):
    """One mass, on and off, in closed form."""
    c = case(name)
    found = heat.cycle(c["power_on"], c["Ws"], c["capacity"], c["t_on"], c["t_off"], c["T_env"])
    c.agree(
        tau=found.time_constant, T_steady=found.steady, T_peak=found.peak, T_low=found.low, T_mean=found.mean,
        t_to_95_percent=found.nearly_steady,
    )  # fmt: skip


@pytest.mark.parametrize("name", ["A13-BALANCE-6000", "A13-BALANCE-7005"])
def test_balance_of_friction_and_cooling(case, name):
    """The viscosity, and with it the friction, belongs to the temperature that is looked for."""
    c = case(name)
    d_m = 0.5 * (c["d"] + c["D"])

    def viscosity(temperature):
        return lubricant.viscosity_at(temperature, c["nu40"], 40.0, c["nu100"], 100.0)

    def power(temperature):
        drag = friction.lubricant_torque(c["f0"], viscosity(temperature), c["n"], d_m)
        return heat.friction_power(drag + c["M1"], c["n"])

    found = heat.balance_temperature(power, lambda t: c["Ws"] * (t - c["T_env"]), np.array(c["T_env"]))
    c.agree(T=found, nu=viscosity(found), power=power(found))


def test_largest_grease_fill_by_speed(case):
    """Klueber, tips for rolling bearings: 90 and 67 % of the free space are the largest published."""
    c = case("A13-FILL-BANDS")
    row = {"lubrication": "grease", "bore_diameter": 8, "outside_diameter": 12}
    rows = [{**row, "machine": str(n), "speed_max": n / 10, "grease_fill": 50} for n in c["ka_n_dm"]]
    clause = load("current").clauses["heat.grease-fill"]
    upper = check_function(clause.check)(View(stations_from_rows(rows)), Limits(clause)).upper
    c.agree(**{f"fill_{k + 1}": value for k, value in enumerate(upper)})


def test_cylinder_across_an_air_stream():
    """Incropera and DeWitt, Example 7.4 (memory): 12.7 mm in 10 m/s, film at 350 K, 96 W/(m2 K) by this correlation."""
    assert cooling.air_stream_transfer(12.7, 10.0, 350.0 - 273.15) == pytest.approx(96.0, rel=0.005)


def test_hot_pipe_in_still_air():
    """Incropera and DeWitt, Example 9.4 (memory): 0.1 m at 165 degC in air of 23 degC, 7.29 W/(m2 K)."""
    assert cooling.still_air_transfer(100.0, 165.0, 23.0) == pytest.approx(7.29, rel=0.01)


def test_radiation_of_the_same_pipe():
    """The same example (memory): emissivity 0.85, 441 W/m by radiation."""
    per_metre = cooling.radiation_transfer(165.0, 23.0, 0.85) * np.pi * 0.1 * (165.0 - 23.0)
    assert per_metre == pytest.approx(441.0, rel=0.01)


def test_static_rating_with_ceramic_balls(case):
    """ISO 20056-2:2017 allows a slightly higher stress (read); 4600 MPa from memory."""
    c = case("A15-HYBRID-C0")
    steel = hertz.effective_modulus(*(1e3 * c["E_steel"], c["nu_steel"]) * 2)
    mixed = hertz.effective_modulus(1e3 * c["E_ceramic"], c["nu_ceramic"], 1e3 * c["E_steel"], c["nu_steel"])
    ratio = mixed / steel
    c.agree(
        E_star_ratio=ratio,
        C0_ratio_same_stress=ratio**-2,
        C0_ratio_4600=(c["p_hybrid"] / c["p_steel"]) ** 3 / ratio**2,
        stress_ratio_same_load=ratio ** (2 / 3),
    )


def test_centrifugal_force_of_ceramic_balls(case):
    """First principles; the force falls with the density."""
    c = case("A15-HYBRID-BALL")
    speeds = kinematics.speeds(c["n"], 9, c["Dw"], c["dm"], c["alpha"], 0.0)
    figures = {}
    for kind in ("steel", "ceramic"):
        figures[f"mass_{kind}"] = 1e3 * c[f"rho_{kind}"] * np.pi / 6.0 * (1e-3 * c["Dw"]) ** 3
        figures[f"Fc_{kind}"] = kinematics.centrifugal_force(c["Dw"], c["dm"], speeds.cage, c[f"rho_{kind}"])
    c.agree(**figures)
