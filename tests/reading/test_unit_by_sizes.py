"""Lengths without a unit: the bearings beside them, and deviations beside their classes, tell it."""

import math

import pytest

from linter.reading import read_table
from linter.reading.words.names import Names

NAMES = Names.built_in()
HEAD = "Merkmal;Stelle;Nennmaß;oberes Abmaß;unteres Abmaß;Passung\n"


def read(tmp_path, rows):
    path = tmp_path / "t.csv"
    path.write_text(HEAD + rows, encoding="utf-8")
    return read_table(path, NAMES).stations


def test_deviations_of_their_class_tell_mm(tmp_path):
    """k5 of 30 mm is +11/+2 µm, H7 of 62 mm +30/0 µm (ISO 286-2)."""
    stations = read(
        tmp_path, "Wellensitz;A;30;+0,011;+0,002;k5\nLagerbohrung;A;62;+0,030;0;H7\nWellenschulter;A;37;0;-0,1;\n"
    )
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [37.0]
    told = [p for p in stations.problems if p.code == "length-unit"]
    assert len(told) == 1 and "deviations are those of their classes" in told[0].message


@pytest.mark.parametrize("upper", ["+0,013", "+11"])
def test_deviations_that_are_not_those_of_their_class_tell_nothing(tmp_path, upper):
    stations = read(tmp_path, f"Wellensitz;A;30;{upper};+0,002;k5\nWellenschulter;A;37;0;-0,1;\n")
    assert not any(p.code == "length-unit" for p in stations.problems)
    assert math.isnan(stations.size("shaft_shoulder_diameter").nominal[0])


@pytest.mark.parametrize(("name", "read_as"), [("Lagerbohrung", 62.0), ("Innenring Bohrung", math.nan)])
def test_a_bore_with_the_class_of_a_hole_is_the_housings_in_a_list_too(tmp_path, name, read_as):
    stations = read(tmp_path, f"Wellensitz;A;30;+0,011;+0,002;k5\n{name};A;62;+0,030;0;H7\n")
    assert stations.size("housing_seat_diameter").nominal.tolist() == pytest.approx([read_as], nan_ok=True)


@pytest.mark.parametrize(
    ("seat", "most", "least"),
    [
        ("Shaft seat", "Shaft seat max", "Shaft seat min"),
        ("Sitzdurchmesser Welle", "Sitzdurchmesser Welle Größtmaß", "Sitzdurchmesser Welle Kleinstmaß"),
        ("Portée d'arbre", "Portée d'arbre max", "Portée d'arbre min"),
        ("Sede albero", "Sede albero max", "Sede albero min"),
        ("轴颈直径", "轴颈直径最大", "轴颈直径最小"),
    ],
)
@pytest.mark.parametrize("unit", ["mm", "in"])
@pytest.mark.parametrize("wide", [False, True])
def test_nominal_without_a_unit_is_stated_as_its_limits(tmp_path, seat, most, least, unit, wide):
    one = 1.0 if unit == "mm" else 1 / 25.4
    rows = [("Name", "DE", "NDE"), (seat, 20, 17), (f"{most} ({unit})", 20.011, 17.009),
            (f"{least} ({unit})", 20.002, 17.001), ("Ra (µm)", 0.8, 0.8)]  # fmt: skip
    rows = [row if k in (0, 4) else (row[0], *(f"{size * one:.6g}" for size in row[1:])) for k, row in enumerate(rows)]
    rows = [("Position", *rows[0][1:]), *rows[1:]] if wide else rows
    lines = zip(*rows, strict=True) if wide else rows
    path = tmp_path / "t.csv"
    path.write_text("\n".join(";".join(map(str, line)) for line in lines) + "\n", encoding="utf-8")
    size = read_table(path).stations.size("shaft_seat_diameter")
    assert size.nominal.tolist() == pytest.approx([20, 17], abs=1e-3)
    assert [size.nominal[0] + size.lower[0], size.nominal[0] + size.upper[0]] == pytest.approx(
        [20.002, 20.011], abs=1e-3
    )


def test_nominal_far_from_its_limits_gets_no_unit(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Name;DE;NDE\nShaft seat;25;22\nShaft seat max (mm);20.011;17.009\nShaft seat min (mm);20.002;17.001\n",
        encoding="utf-8",
    )
    assert any("“25” is a length without a unit" in p.message for p in read_table(path).stations.problems)
