"""Speeds and ball forces against printed figures. "memory" means a remembered figure of the named source."""

import pytest

from linter.mechanics import kinematics


def test_pass_rates(case):
    """Seeded-fault bearing data centre, bearing information table of a 6205 (memory)."""
    c = case("A5-CWRU-6205")
    s = kinematics.speeds(1.0, c["Z"], c["Bd"], c["Pd"], c["alpha"])
    c.agree(BPFI=s.inner_pass, BPFO=s.outer_pass, FTF=s.cage, BSFx2=2 * s.ball_spin)


@pytest.mark.parametrize("case_id", ["A5-TIMKEN-9104", "A5-TIMKEN-204K"])
def test_frequency_coefficients(case, case_id):
    """Timken housed-unit catalogue p. A-13; γ from the outer pass rate, Z inferred as the sum of the pass rates."""
    c = case(case_id)
    gamma = 1 - 2 * c["BPFO"] / c["Z"]
    inner = kinematics.speeds(1.0, c["Z"], gamma, 1.0)
    outer = kinematics.speeds(0.0, c["Z"], gamma, 1.0, 0.0, 1.0)
    figures = {"FTF": inner.cage, "BPFI": inner.inner_pass, "BSF": inner.ball_spin, "OR_FTF": outer.cage}
    if "cage_Hz" in c.names:
        figures["cage_Hz"] = kinematics.speeds(c["n"], c["Z"], gamma, 1.0).cage / 60
    c.agree(**figures)
    assert inner.outer_pass == pytest.approx(c["BPFO"])


def test_centrifugal_coefficient(case):
    """Harris, Rolling Bearing Analysis: F_c = 2.26e-11 D³ n_m² d_m for steel balls (memory)."""
    c = case("A5-CENTRI-COEF")
    cage = kinematics.speeds(c["n"], 1, c["D"], c["dm"], c["alpha"]).cage
    force = kinematics.centrifugal_force(c["D"], c["dm"], cage, c["rho"])
    c.agree(coef=force / (c["D"] ** 3 * cage**2 * c["dm"]))


@pytest.mark.parametrize("case_id", ["A5-CENTRI-218", "A5-CENTRI-7014-SI3N4"])
def test_centrifugal_force(case, case_id):
    """First principles; a regression reference for steel and silicon nitride."""
    c = case(case_id)
    s = kinematics.speeds(c["n"], 1, c["D"], c["dm"], c["alpha"])
    c.agree(
        nm=s.cage,
        m=kinematics.ball_mass(c["D"], c["rho"]),
        Fc=kinematics.centrifugal_force(c["D"], c["dm"], s.cage, c["rho"]),
        n_ball=s.ball_spin,
    )
