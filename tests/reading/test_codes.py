"""Codes of parameter lists: deviations by names of their own, and what comments tell of them."""

import pytest

from linter.reading import read_table
from linter.reading.words.deviation_names import deviation_names


def _named(upper: str, lower: str) -> dict[str, tuple[str, ...]]:
    return {"d_A": ("30", "mm"), upper: ("0.002", "mm"), lower: ("-0.004", "mm")}


@pytest.mark.parametrize(
    ("upper", "lower"),
    [("d_A_up", "d_A_lo"), ("d_A_o", "d_A_u"), ("d_o_A", "d_u_A"), ("d_A_es", "d_A_ei"), ("es_d_A", "ei_d_A"),
     ("d_A_sup", "d_A_inf"), ("d_A_tol_p", "d_A_tol_m"), ("d_A_hi_mm", "d_A_lo_mm"), ("d_A_plus", "d_A_minus")],
)  # fmt: skip
def test_two_names_with_a_piece_more_state_the_deviations(upper, lower):
    found = deviation_names(_named(upper, lower))
    assert {name: (said.size, said.aspect) for name, said in found.items()} == {
        upper: ("d_A", "upper"),
        lower: ("d_A", "lower"),
    }


@pytest.mark.parametrize(
    "cells",
    [
        {"d_A": ("30", "mm"), "d_A_up": ("0.002", "mm")},  # one alone
        {"d_A": ("30", "mm"), "d_A_o": ("47", "mm"), "d_A_u": ("25", "mm")},  # sizes
        {"d_A": ("30", "mm"), "d_A_up": ("-0.004", "mm"), "d_A_lo": ("0.002", "mm")},  # the wrong way round
        {"d_B": ("30", "mm"), "d_A_up": ("0.002", "mm"), "d_A_lo": ("-0.004", "mm")},  # of no name there
    ],
)
def test_names_that_state_no_deviations(cells):
    assert deviation_names(cells) == {}


@pytest.fixture
def read(tmp_path):
    def reader(text: str):
        path = tmp_path / "list.csv"
        path.write_text(text, encoding="utf-8")
        return read_table(path)

    return reader


_HEADS = ["Name,Value,Unit,Comment", "Parameter,Wert,Einheit,Beschreibung", "Nome,Valore,Unità,Commento"]
_ITALIAN = (
    "LA_d_alb,25,mm,sede albero lato anteriore\nLA_d_alb_sup,0.004,mm,\nLA_d_alb_inf,-0.005,mm,\n"
    "LA_D_all,47,mm,sede alloggiamento lato anteriore\nLA_sigla,7005 C,,cuscinetto\n"
    "LP_d_alb,20,mm,sede albero lato posteriore\nLP_d_alb_sup,0.004,mm,\nLP_d_alb_inf,-0.005,mm,\n"
    "LP_D_all,42,mm,sede alloggiamento lato posteriore\nLP_sigla,7004 C,,cuscinetto\n"
)
_GERMAN = (
    "La_v_Bez,7005 C,,\nLa_v_DW,25,mm,Welle Lagersitz vorn\nLa_v_DW_o,4,µm,\nLa_v_DW_u,-5,µm,\n"
    "La_v_DG,47,mm,Gehäuse Lagersitz vorn\nLa_h_Bez,7004 C,,\nLa_h_DW,20,mm,Welle Lagersitz hinten (Schiebesitz)\n"
    "La_h_DW_o,4,µm,\nLa_h_DW_u,-5,µm,\nLa_h_DG,42,mm,Gehäuse Lagersitz hinten\n"
)


@pytest.mark.parametrize("head", _HEADS)
@pytest.mark.parametrize("rows", [_ITALIAN, _GERMAN])
def test_comments_tell_what_codes_mean_and_where(read, head, rows):
    stations = read(f"{head}\n{rows}").stations
    assert len(stations.text("station")) == 2
    assert sorted(stations.text("bearing_designation")) == ["7004 C", "7005 C"]
    seat = stations.size("shaft_seat_diameter")
    assert sorted(seat.nominal.tolist()) == [20, 25]
    assert (seat.upper.tolist(), seat.lower.tolist()) == ([0.004, 0.004], [-0.005, -0.005])
    assert sorted(stations.size("housing_seat_diameter").nominal.tolist()) == [42, 47]


def test_the_letters_that_tell_the_parts_apart_tell_them_in_other_codes(read):
    rows = f"{_GERMAN}La_v_Zyl_W,1.5,µm,\nLa_h_Zyl_G,2,µm,\nLa_v_Schulter_W,32,mm,\n"
    stations = read(f"{_HEADS[1]}\n{rows}").stations
    at = stations.text("station").tolist().index("vorn")
    assert stations.number("shaft_seat_cylindricity")[at] == 0.0015
    assert stations.size("shaft_shoulder_diameter").nominal[at] == 32
    assert stations.number("housing_seat_cylindricity")[1 - at] == 0.002


_EXPRESSIONS = (
    "Parameter,Expression,Comment\nd_shaft_DE,20 mm,bearing seat on shaft\ntol_shaft_DE,k5,class of shaft seat\n"
    "d_sh_DE,25.5 mm,shaft shoulder diameter\nbrg_DE,6204-2Z,bearing designation\n"
    "d_shaft_NDE,17 mm,bearing seat on shaft\ntol_shaft_NDE,j5,class of shaft seat\n"
    "d_sh_NDE,22 mm,shaft shoulder diameter\nbrg_NDE,6203-2Z,bearing designation\n"
    "L_ctr,95 mm,distance between bearing centres\n{}"
)


def test_expressions_with_comments_that_are_names_are_one_list(read):
    stations = read(_EXPRESSIONS.format("")).stations
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert stations.text("bearing_designation").tolist() == ["6204-2Z", "6203-2Z"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 17]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [25.5, 22]
    assert stations.size("bearing_span").nominal.tolist() == [95, 95]


def test_the_length_of_a_seat_is_no_diameter_though_its_comment_says_the_seat(read):
    row = "l_bs_DE,16 mm,bearing seat in housing\n"
    reading = read(_EXPRESSIONS.format(row))
    assert not reading.stations.known("housing_seat_diameter").any()
    assert "l_bs_DE" in {unused.name for unused in reading.unused}
