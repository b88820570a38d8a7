"""The unit at the end of a name holds wherever the name stands: in columns, rows, keys of machines and positions."""

import json

import pytest

from linter.model.vocabulary import parameter
from linter.reading import read_table
from linter.reading.cells.units import conversion

#: Names of positions: parameter, name, unit, values at DE and at NDE.
NAMES = [
    ("operating_temperature", "bearing_temperature_K", "K", (353.15, 343.15)),
    ("operating_temperature", "operating_temperature_K", "K", (353.15, 343.15)),
    ("operating_temperature", "Lagertemperatur_K", "K", (353.15, 343.15)),
    ("shaft_seat_diameter", "shaft_seat_in", "in", (0.9843, 0.7874)),
    ("shaft_shoulder_diameter", "shaft_shoulder_in", "in", (1.25, 1.0)),
    ("shaft_seat_roughness", "shaft_Ra_uin", "uin", (16, 32)),
    ("shaft_shoulder_runout", "shaft_shoulder_runout_mil", "mil", (0.2, 0.4)),
    ("radial_load", "radial_load_kN", "kN", (1.2, 0.8)),
    ("radial_load", "radial_load_lbf", "lbf", (100, 80)),
]
#: The same of the machine.
OF_MACHINES = [
    ("speed_max", "max_speed_krpm", "krpm", 3),
    ("rotor_mass", "rotor_mass_lb", "lb", 12),
    ("shaft_temperature", "shaft_temperature_F", "degF", 158),
    ("shaft_temperature", "shaft_temperature_K", "K", 343.15),
    ("bearing_span", "bearing_span_in", "in", 4),
]


def wide(name, values):
    return "csv", f"machine,station,bearing,{name}\nM,DE,6205,{values[0]}\nM,NDE,6204,{values[1]}\n"


def listed(name, values):
    return "csv", f"Parameter,DE,NDE\nbearing,6205,6204\n{name},{values[0]},{values[1]}\nshaft_seat_fit,k6,k6\n"


def blocks(name, values):
    return "csv", "Machine,M\n" + "".join(
        f"Position,{place}\nbearing,{bearing}\n{name},{value}\n"
        for place, bearing, value in zip(("DE", "NDE"), ("6205", "6204"), values, strict=True)
    )


def in_names(name, values):
    rows = (f"{place}_{name},{value}\n" for place, value in zip(("DE", "NDE"), values, strict=True))
    return "csv", "Name,Value\nDE_bearing,6205\nNDE_bearing,6204\n" + "".join(rows)


def flat(name, values):
    return "json", json.dumps(
        {"DE_bearing": "6205", "NDE_bearing": "6204", f"DE_{name}": values[0], f"NDE_{name}": values[1]}
    )


def records(name, values):
    both = zip(("DE", "NDE"), ("6205", "6204"), values, strict=True)
    return "json", json.dumps({"positions": [{"position": p, "bearing": b, name: v} for p, b, v in both]})


def nested(name, values):
    both = zip(("DE", "NDE"), ("6205", "6204"), values, strict=True)
    return "json", json.dumps({"machine": "M", "positions": {p: {"bearing": b, name: v} for p, b, v in both}})


def column(tmp_path, layout, name, values):
    kind, text = layout(name, values)
    path = tmp_path / f"t.{kind}"
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


def figures(stations, name):
    shown = stations.size(name).nominal if parameter(name).kind == "toleranced" else stations.number(name)
    return dict(zip(stations.text("station").tolist(), shown.tolist(), strict=True))


def canonical(name, value, unit):
    to = conversion(unit, parameter(name).unit)
    return value * to if unit not in ("K", "degF") else {"K": value - 273.15, "degF": (value - 32) / 1.8}[unit]


@pytest.mark.parametrize("layout", [wide, listed, blocks, in_names, flat, records, nested])
@pytest.mark.parametrize(("entry", "name", "unit", "values"), NAMES)
def test_unit_in_the_name_of_a_position(tmp_path, layout, entry, name, unit, values):
    found = figures(column(tmp_path, layout, name, values), entry)
    wanted = [canonical(entry, value, unit) for value in values]
    assert [found["DE"], found["NDE"]] == pytest.approx(wanted)


@pytest.mark.parametrize("layout", [wide, listed, blocks, records, nested])
@pytest.mark.parametrize(("entry", "name", "unit", "value"), OF_MACHINES)
def test_unit_in_the_name_of_a_machine(tmp_path, layout, entry, name, unit, value):
    found = figures(column(tmp_path, layout, name, (value, value)), entry)
    assert [found["DE"], found["NDE"]] == pytest.approx([canonical(entry, value, unit)] * 2)


@pytest.mark.parametrize("layout", [wide, listed, blocks, in_names, flat, records, nested])
@pytest.mark.parametrize("letter", ["F", "C", "K"])
def test_letter_behind_a_temperature_is_its_unit_or_asked(tmp_path, layout, letter):
    """Low figures may be of another unit: what is read is that of the letter, and what is not is told."""
    stations = column(tmp_path, layout, f"bearing_temperature_{letter}", (158, 149))
    found = figures(stations, "operating_temperature")
    wanted = {"F": 70.0, "C": 158.0, "K": -115.15}[letter]
    assert found["DE"] == pytest.approx(wanted, nan_ok=True) or (found["DE"] != found["DE"] and stations.problems)


@pytest.mark.parametrize("layout", [wide, records, nested])
def test_letter_behind_a_temperature_of_a_named_position_is_its_unit(tmp_path, layout):
    found = figures(column(tmp_path, layout, "operating_temperature_F", (158, 149)), "operating_temperature")
    assert [found["DE"], found["NDE"]] == pytest.approx([70.0, 65.0])


def test_letters_that_name_positions_are_no_units(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Name,Value\nbearing_A,6205\nbearing_K,6204\nbearing_temperature_A,80\nbearing_temperature_K,70\n"
        "shaft_seat_A,25 k6\nshaft_seat_K,20 k6\n",
        encoding="utf-8",
    )
    assert figures(read_table(path).stations, "operating_temperature") == {"A": 80.0, "K": 70.0}


def test_temperature_of_a_part_below_a_position(tmp_path):
    both = {
        place: {"bearing": {"designation": number, "temperature_K": kelvins}}
        for place, number, kelvins in (("DE", "6205", 353.15), ("NDE", "6204", 343.15))
    }
    path = tmp_path / "t.json"
    path.write_text(json.dumps({"machine": "M", "positions": both}), encoding="utf-8")
    found = figures(read_table(path).stations, "operating_temperature")
    assert [found["DE"], found["NDE"]] == pytest.approx([80.0, 70.0])
