"""Remarks beside a value that say more of it, and those that do not."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.remarks import class_remarked


@pytest.mark.parametrize(
    "text",
    ["C3", "jeu C3", "mit Lagerluft C3", "radial clearance C3", "juego interno C3", "gioco C3", "зазор C3", "游隙C3",
     "すきまC3", "C3 clearance"],
)  # fmt: skip
def test_a_remark_that_is_a_clearance(text):
    assert class_remarked("clearance_class", text) == "C3"


@pytest.mark.parametrize(
    "text", ["instead of C3", "C3 statt CN", "Lager CC3", "no C3", "pas de jeu C3", "clearance 3", "C3 bestellt 2021"]
)
def test_a_remark_that_speaks_of_a_clearance_is_none(text):
    assert class_remarked("clearance_class", text) == ""


_LISTED = "Teil;Benennung;Wert;Toleranz;Bem.\n;Lagerstelle A;;;\nLager;Bezeichnung;6308-2Z;;{remark}\n"
_ACROSS = "Désignation;Unité;Palier avant;Palier arrière;Remarque\nRoulement;;6308;6307;{remark}\n"


@pytest.mark.parametrize("table", [_LISTED, _ACROSS])
@pytest.mark.parametrize(("remark", "clearance"), [("Spiel C4", "C4"), ("C4 vermeiden", "CN")])
def test_the_clearance_beside_a_designation(tmp_path, table, remark, clearance):
    rest = "Welle;Sitzdurchmesser;40;k6;\nGehäuse;Bohrungsdurchmesser;90;H7;\n" if table is _LISTED else ""
    path = tmp_path / "t.csv"
    path.write_text(table.format(remark=remark) + rest + "Ø arbre;mm;40 k6;35 k6;\n" * (not rest), encoding="utf-8")
    assert set(read_table(path).stations.choice("clearance_class").texts()) == {clearance}


@pytest.mark.parametrize(("remark", "lower"), [("±5", -5.0), ("+3/-5", -5.0), ("about 5", None)])
def test_deviations_beside_a_size(tmp_path, remark, lower):
    path = tmp_path / "t.csv"
    text = "Parameter;Unit;A;B;Remark\nBearing;;6205;6204;\nShaft seat;mm;25 k5;20 k5;\nPreload force;N;60;;{}\n"
    path.write_text(text.format(remark), encoding="utf-8")
    preload = read_table(path).stations.size("preload_force")
    assert preload.nominal[0] == 60
    assert preload.lower[0] == lower or (lower is None and preload.lower[0] != preload.lower[0])
