"""Short words for shaft and housing beside each other; see :mod:`linter.reading.words.short_parts`."""

import pytest

from linter.reading import read_table

TABLES = {
    "behind the symbol": "loc.;brg;d_sh;es;ei;Ra_sh;D_h;ES;EI;Ra_h\n;;mm;µm;µm;µm;mm;µm;µm;µm\n"
    "motor side;6004;20;+11;+2;0.4;42;+10;-6;0.8\nload side;6004;20;+11;+2;0.4;42;+10;-6;0.8\n",
    "before it": "Pos;sh_d;sh_es;sh_ei;sh_Ra;hs_D;hs_ES;hs_EI;hs_Ra\n[text];[mm];[um];[um];[um];[mm];[um];[um];[um]\n"
    "A;20;11;2;0.4;42;10;-6;0.8\nB;20;11;2;0.4;42;10;-6;0.8\n",
    "behind the position": "model;DE_sh_d;DE_sh_es;DE_sh_ei;DE_sh_Ra;DE_hs_D;DE_hs_ES;DE_hs_EI;DE_hs_Ra;NDE_sh_d;"
    "NDE_sh_es;NDE_sh_ei;NDE_sh_Ra;NDE_hs_D;NDE_hs_ES;NDE_hs_EI;NDE_hs_Ra\n"
    "[text];[mm];[um];[um];[um];[mm];[um];[um];[um];[mm];[um];[um];[um];[mm];[um];[um];[um]\n"
    "RF-200;20;11;2;0.4;42;10;-6;0.8;20;11;2;0.4;42;10;-6;0.8\n",
}


@pytest.mark.parametrize("kind", TABLES)
def test_short_words_for_both_parts_say_them(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(TABLES[kind], "utf-8")
    stations = read_table(path).stations
    shaft, housing = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    assert shaft.nominal.tolist() == [20.0, 20.0] and shaft.upper.tolist() == [0.011, 0.011]
    assert housing.nominal.tolist() == [42.0, 42.0] and housing.lower.tolist() == [-0.006, -0.006]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.4]
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 0.8]


def test_one_short_word_alone_says_no_part(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text("Pos;bearing;d_sh [mm];Ra seat shaft [um]\nA;6204;26;0.4\nB;6204;26;0.4\n", "utf-8")
    stations = read_table(path).stations
    assert not stations.known("shaft_seat_diameter").any()


@pytest.mark.parametrize("limits", [" [{0}.002-{0}.013]", " ({0}.002/{0}.013)"])
def test_a_nominal_before_its_limits_tells_the_decimal_mark(tmp_path, limits):
    path = tmp_path / "table.csv"
    cells = [f"{size}{limits.format(size)}" for size in (40, 35)]
    path.write_text(f"Parameter;Units;Brg 1;Brg 2\nBearing;;6308;6207\nShaft seat;mm;{cells[0]};{cells[1]}\n", "utf-8")
    seat = read_table(path).stations.size("shaft_seat_diameter")
    assert seat.nominal.tolist() == [40.0, 35.0] and seat.upper.tolist() == [0.013, 0.013]
