"""Values that a cell states in two units, the second in brackets."""

from pathlib import Path

import pytest

from linter.reading import Reading, read_table


def read(tmp_path: Path, *rows: str) -> Reading:
    path = tmp_path / "table.csv"
    head = "Parameter;Value\nMachine;Exciter WT-9\nBearing number;6208\n"
    path.write_text(head + "".join(f"{row}\n" for row in rows), encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize(
    ("name", "cell", "parameter", "value"),
    [
        ("Rotor mass", "22.0 lb (9.98 kg)", "rotor_mass", 9.979),
        ("Rotormasse", "9,98 kg [22,0 lb]", "rotor_mass", 9.98),
        ("Charge radiale", "100 lbf (445 N)", "radial_load", 444.82),
        ("Rugosità sede albero Ra", "16 µin (0.4 µm)", "shaft_seat_roughness", 0.4064),
        ("環境温度", "68 °F (20 °C)", "ambient_temperature", 20.0),
    ],
)
def test_a_value_said_again_in_another_unit_is_read_as_it_stands_first(tmp_path, name, cell, parameter, value):
    reading = read(tmp_path, f"{name};{cell}")
    assert reading.stations.number(parameter).tolist() == pytest.approx([value], rel=1e-4)
    assert not reading.stations.problems


@pytest.mark.parametrize(
    ("cell", "lower", "upper"),
    [
        ("1.5750/1.5753 in (40.005/40.013 mm)", 40.005, 40.01262),
        ("40.005/40.013 mm [1.5750/1.5753 in]", 40.005, 40.013),
        ("1.5748 +0.0005/+0.0001 in (40.000 +0.013/+0.003 mm)", 40.00246, 40.01262),
    ],
)
@pytest.mark.parametrize("name", ["Shaft seat diameter", "Durchmesser Wellensitz", "轴颈直径"])
def test_limits_said_again_in_another_unit_are_read_as_they_stand_first(tmp_path, name, cell, lower, upper):
    size = read(tmp_path, f"{name};{cell}").stations.size("shaft_seat_diameter")
    assert (size.nominal + size.lower).tolist() == pytest.approx([lower], abs=1e-4)
    assert (size.nominal + size.upper).tolist() == pytest.approx([upper], abs=1e-4)


@pytest.mark.parametrize(
    ("name", "cell"),
    [
        ("Shaft seat diameter", "1.5750/1.5753 in (40.105/40.113 mm)"), ("Rotor mass", "22.0 lb (12 kg)"),
        ("Shaft seat roughness Ra", "16 µin (0.8 µm)"), ("Radial load", "100 N (50 N)"),
    ],
)  # fmt: skip
def test_two_values_that_differ_are_not_read(tmp_path, name, cell):
    reading = read(tmp_path, f"{name};{cell}")
    assert [p.code for p in reading.stations.problems if p.kind == "unreadable"] in (
        ["wrong-unit"],
        ["unsigned-deviations"],
    )


@pytest.mark.parametrize("inches_first", [True, False])
@pytest.mark.parametrize(
    ("name", "metric", "other"),
    [
        ("Shaft seat diameter", ("mm", "20 k5", "30 k5"), ("in", "0.7874", "1.1811")),
        ("Ø portée arbre", ("mm", "20 k5", "30 k5"), ("in", "0.7874", "1.1811")),
        ("Radial load", ("N", "340", "850"), ("lbf", "76.4", "191.1")),
        ("Rauheit Ra Gehäusesitz", ("µm", "0.8", "1.6"), ("µin", "31", "63")),
        ("ハウジング粗さ Ra", ("µm", "0.8", "1.6"), ("µin", "31", "63")),
    ],
)
def test_of_two_columns_the_one_that_was_not_worked_out_is_read(tmp_path, name, metric, other, inches_first):
    units = (other, metric) if inches_first else (metric, other)
    path = tmp_path / "t.csv"
    heads = ";".join(f"{name} [{unit[0]}]" for unit in units)
    rows = "\n".join(f"{'AB'[k]};{'6205' if k else '6204'};{units[0][k + 1]};{units[1][k + 1]}" for k in (0, 1))
    path.write_text(f"Position;Bearing designation;{heads}\n{rows}\n", encoding="utf-8")
    stations = read_table(path).stations
    wanted = [float(text.split()[0]) for text in metric[1:]]
    found = next(
        values
        for parameter in ("shaft_seat_diameter", "radial_load", "housing_seat_roughness")
        if stations.known(parameter).any()
        for values in [
            stations.size(parameter).nominal.tolist()
            if parameter.endswith("diameter")
            else stations.number(parameter).tolist()
        ]
    )
    assert found == wanted
