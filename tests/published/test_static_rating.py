"""Static rating against printed figures. "memory" means a remembered figure of the named source."""

import pytest

from linter.mechanics import static_rating


def test_geometry_factor_table(case):
    """ISO 76:2006 Table 1 (memory); 4200 MPa: Koyo technical data. E = 207 000 MPa was chosen to meet the table."""
    c = case("A2-F0-TABLE")
    gamma = c.numbers("f0_")
    f_0 = static_rating.geometry_factor(list(gamma.values()), c["ri_over_Dw"], c["re_over_Dw"], c["E"], c["nu"])
    assert c["sigma"] == static_rating.STATIC_PRESSURE
    c.agree(**dict(zip(gamma, f_0, strict=True)))
    c.agree(**dict(zip(gamma, static_rating.tabulated_geometry_factor(list(gamma.values())), strict=True)))


@pytest.mark.parametrize(("case_id", "angle"), [("A2-P0-DG1", 0.0), ("A2-P0-AC15", 15.0)])
def test_static_equivalent_load(case, case_id, angle):
    """SKF, deep groove ball bearings, loads; LYC, equivalent static load of angular contact ball bearings."""
    c = case(case_id)
    x_0, y_0 = static_rating.load_factors(angle)
    assert (x_0, y_0) == (pytest.approx(c["X0"]), pytest.approx(c["Y0"]))
    p_0 = static_rating.equivalent_load(c["Fr"], c["Fa"], x_0, y_0)
    c.agree(P0=p_0, s0=static_rating.safety_factor(c["C0"], p_0))


def test_axial_factors_of_catalogues():
    """LYC, bearing basic knowledge: Y_0 = 0.46, 0.38, 0.26 for 15, 25, 40 deg."""
    assert static_rating.load_factors([15, 25, 40])[1] == pytest.approx([0.46, 0.38, 0.26])
