import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.model.vocabulary import vocabulary
from linter.reading.cells import units
from linter.reading.cells.signs import ReadError
from linter.reading.cells.unit_table import CANONICAL, TABLE
from linter.reading.cells.units import Unit, dimension_of, factor_to, read_unit, split_heading_unit, split_quantity

REGISTRY = pint.UnitRegistry(cache_folder=None)

# The same unit in pint's words, for every unit of our own table: factors are checked against an independent source.
IN_PINT = {
    "mm": "millimeter", "um": "micrometer", "nm": "nanometer", "cm": "centimeter", "dm": "decimeter", "m": "meter",
    "in": "inch", "thou": "thou", "uin": "microinch", "ft": "foot",
    "N": "newton", "mN": "millinewton", "kN": "kilonewton", "kgf": "kilogram_force", "gf": "gram_force",
    "lbf": "pound_force", "ozf": "ounce_force",
    "r/min": "revolution / minute", "kr/min": "kilorevolution / minute", "r/s": "revolution / second",
    "kHz": "kilorevolution / second", "rad/s": "radian / second", "deg/s": "degree / second",
    "daN": "decanewton", "dN": "decinewton", "cN": "centinewton", "MN": "meganewton",
    "MPa": "megapascal", "Pa": "pascal", "kPa": "kilopascal", "GPa": "gigapascal", "bar": "bar",
    "kgf/mm2": "kilogram_force / millimeter ** 2", "kgf/cm2": "kilogram_force / centimeter ** 2",
    "psi": "pound_force / inch ** 2", "ksi": "kip / inch ** 2",
    "mm2/s": "millimeter ** 2 / second", "m2/s": "meter ** 2 / second", "cm2/s": "stokes",
    "deg": "degree", "rad": "radian", "mrad": "milliradian", "arcmin": "arcminute", "arcsec": "arcsecond",
    "gon": "gradian",
    "kg": "kilogram", "g": "gram", "mg": "milligram", "t": "metric_ton", "lb": "pound", "oz": "ounce",
    "g.mm": "gram * millimeter", "kg.mm": "kilogram * millimeter", "mg.mm": "milligram * millimeter",
    "g.cm": "gram * centimeter", "oz.in": "ounce * inch",
    "h": "hour", "min": "minute", "s": "second", "d": "day",
    "mm/s": "millimeter / second", "m/s": "meter / second", "in/s": "inch / second",
    "N/mm": "newton / millimeter", "N/um": "newton / micrometer", "N/m": "newton / meter",
    "kgf/mm": "kilogram_force / millimeter", "lbf/in": "pound_force / inch",
    "mm2": "millimeter ** 2", "cm2": "centimeter ** 2", "dm2": "decimeter ** 2", "m2": "meter ** 2", "in2": "inch ** 2",
    "N.m": "newton * meter", "N.mm": "newton * millimeter", "N.cm": "newton * centimeter",
    "daN/mm": "decanewton / millimeter", "daN.m": "decanewton * meter", "kgf.m": "kilogram_force * meter",
    "lbf.in": "pound_force * inch", "lbf.ft": "pound_force * foot",
    "W": "watt", "mW": "milliwatt", "kW": "kilowatt", "W/K": "watt / kelvin", "mW/K": "milliwatt / kelvin",
    "J/K": "joule / kelvin", "kJ/K": "kilojoule / kelvin",
    "1": "dimensionless", "%": "percent",
}  # fmt: skip
FIRST = {dimension: entries[0][0] for dimension, entries in TABLE.items()}


@pytest.mark.parametrize(
    ("dimension", "name", "factor"),
    [(dimension, name, factor) for dimension, entries in TABLE.items() for name, factor, _ in entries],
)
def test_every_factor_agrees_with_an_independent_library(dimension: str, name: str, factor: float) -> None:
    target = REGISTRY.Quantity(1, IN_PINT[FIRST[dimension]])
    assert (REGISTRY.Quantity(1, IN_PINT[name]) / target).to("dimensionless").magnitude == pytest.approx(
        factor, rel=1e-14
    )


@pytest.mark.parametrize("value", [-40.0, 0.0, 20.0, 100.0])
@pytest.mark.parametrize(("text", "name"), [("°C", "degC"), ("K", "kelvin"), ("°F", "degF"), ("degR", "degR")])
def test_temperatures_keep_their_offset(value: float, text: str, name: str) -> None:
    found = factor_to("degC", text)
    assert not isinstance(found, ReadError)
    factor, offset = found
    assert value * factor + offset == pytest.approx(REGISTRY.Quantity(value, name).to("degC").magnitude, abs=1e-10)


def test_no_spelling_stands_for_two_units() -> None:
    seen: dict[str, str] = {}
    for entries in TABLE.values():
        for name, _, spellings in entries:
            for spelling in spellings.split():
                assert seen.setdefault(units._spell(spelling), name) == name, spelling


def test_every_unit_of_the_vocabulary_is_canonical() -> None:
    for entry in vocabulary().values():
        if entry.unit:
            assert factor_to(entry.unit, entry.unit) == (1.0, 0.0)
    with pytest.raises(ValueError, match="canonical"):
        dimension_of("furlong")


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("mm", "mm"), ("MM", "mm"), ("cm", "cm"), ("m", "m"), ("in", "in"), ("in.", "in"), ("inch", "in"),
        ('"', "in"),
        ("″", "in"), ("mil", "thou"), ("thou", "thou"), ("ft", "ft"), ("'", "ft"), ("\u00b5m", "um"),
        ("\u03bcm", "um"),
        ("um", "um"), ("micron", "um"), ("mu", "um"), ("deg", "deg"), ("°", "deg"), ("º", "deg"), ("rad", "rad"),
        ("grad", "gon"), ("N", "N"), ("kN", "kN"), ("kgf", "kgf"), ("kp", "kgf"), ("lbf", "lbf"), ("lbforce", "lbf"),
        ("MPa", "MPa"), ("N/mm²", "MPa"), ("N/mm2", "MPa"), ("N / mm^2", "MPa"), ("bar", "bar"), ("kPa", "kPa"),
        ("rpm", "r/min"), ("RPM", "r/min"), ("1/min", "r/min"), ("min-1", "r/min"), ("min⁻¹", "r/min"),
        ("r/min", "r/min"), ("U/min", "r/min"), ("об/мин", "r/min"), ("转/分", "r/min"), ("/min", "r/min"),
        ("rad/s", "rad/s"), ("Hz", "r/s"), ("1/s", "r/s"), ("°C", "degC"), ("ºC", "degC"), ("℃", "degC"),
        ("degC", "degC"),
        ("K", "K"), ("°F", "degF"), ("kg", "kg"), ("g", "g"), ("%", "%"), ("cSt", "mm2/s"), ("mm²/s", "mm2/s"),
        ("g.mm", "g.mm"), ("gmm", "g.mm"), ("g·mm", "g.mm"), ("g*mm", "g.mm"), ("g mm", "g.mm"), ("kg·mm", "kg.mm"),
        ("N/mm", "N/mm"), ("mm/s", "mm/s"), ("h", "h"), ("ｍｍ", "mm"), ("㎜", "mm"), ("[mm]", "mm"), ("(mm)", "mm"),
        ("мм", "mm"), ("мкм", "um"), ("unitless", "1"), ("ul", "1"), ("-", "1"),
    ],
)  # fmt: skip
def test_usual_spellings(text: str, name: str) -> None:
    unit = read_unit(text)
    assert isinstance(unit, Unit)
    assert unit.name == name and unit.read == text


def test_case_is_meaning() -> None:
    assert factor_to("mm", "Mm") == (1e9, 0.0)
    assert factor_to("N", "MN") == (1e6, 0.0)
    assert factor_to("N", "mN") == (1e-3, 0.0)


@pytest.mark.parametrize(
    ("canonical", "text", "factor"),
    [
        ("um", "mm", 1000.0), ("um", "thou", 25.4), ("mm", "in", 25.4), ("r/min", "Hz", 60.0),
        ("N", "kip", 4448.2216152605),
        ("mm/s", "ft/s", 304.8), ("deg", '"', 1 / 3600), ("mm", '"', 25.4), ("deg", "'", 1 / 60), ("%", "1", 100.0),
        ("kg", "slug", 14.593902937206364), ("N/mm", "kN/m", 1.0), ("1", "%", 0.01),
    ],
)  # fmt: skip
def test_factors_to_canonical_units(canonical: str, text: str, factor: float) -> None:
    found = factor_to(canonical, text)
    assert not isinstance(found, ReadError)
    assert found == (pytest.approx(factor, rel=1e-12), 0.0)


@pytest.mark.parametrize(
    ("canonical", "text", "code"),
    [
        ("mm", "N", "wrong-unit"), ("N", "C", "wrong-unit"), ("r/min", "rad", "wrong-unit"),
        ("mm", "kip", "wrong-unit"),
        ("mm", "ID", "unknown-unit"), ("mm", "", "unknown-unit"), ("mm", "9**9**9", "unknown-unit"),
        ("mm", "m" * 500, "unknown-unit"), ("mm", "-", "unknown-unit"), ("N", "N.m", "wrong-unit"),
        ("mm", "__import__('os')", "unknown-unit"), ("deg", "turn", "wrong-unit"),
    ],
)  # fmt: skip
def test_what_does_not_fit_is_an_error(canonical: str, text: str, code: str) -> None:
    found = factor_to(canonical, text)
    assert isinstance(found, ReadError)
    assert found.code == code and found.read == text


@given(st.text(max_size=60), st.sampled_from(sorted(CANONICAL)))
def test_any_text_gives_a_factor_or_an_error(text: str, canonical: str) -> None:
    assert isinstance(read_unit(text), (Unit, ReadError))
    assert isinstance(factor_to(canonical, text), (tuple, ReadError))
    split_heading_unit(text)
    split_quantity(text)


@pytest.mark.parametrize(
    ("heading", "name", "unit"),
    [
        ("Bore [mm]", "Bore", "mm"), ("Length (mm)", "Length", "mm"), ("Bore/mm", "Bore", "mm"),
        ("Bore / mm", "Bore", "mm"),
        ("Bore in mm", "Bore", "mm"), ("Bore, mm", "Bore", "mm"), ("shaft_dia_mm", "shaft_dia", "mm"),
        ("speed_rpm", "speed", "rpm"), ("p_kPa", "p", "kPa"), ("内径（mm）", "内径", "mm"),
        ("n [min⁻¹]", "n", "min⁻¹"),
        ("spring_rate_N_mm", "spring_rate", "N/mm"), ("Inner Diameter (ID)", "Inner Diameter (ID)", ""),
        ("x_min", "x_min", ""), ("Length", "Length", ""), ("N", "N", ""), ("mm", "mm", ""), ("", "", ""),
        ("speed (1/min)", "speed", "1/min"), ("Teeth (-)", "Teeth (-)", ""),
    ],
)  # fmt: skip
def test_units_in_headings(heading: str, name: str, unit: str) -> None:
    assert split_heading_unit(heading) == (name, unit)


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("2.9mm", "2.9", "mm"), ("12000 1/min", "12000", "1/min"), ("12 000 об/мин", "12 000", "об/мин"),
        ("3/8 in", "3/8", "in"),
        ('1 1/4"', "1 1/4", '"'), ("1e3 N", "1e3", "N"), ("7,5 µm", "7,5", "µm"), ("50%", "50", "%"),
        ("-5 °C", "-5", "°C"),
        ("7.5", "7.5", ""), ("7.5 h5", "7.5 h5", ""), ("abc", "abc", ""), ("30 ft/s", "30", "ft/s"),
        ("1½ in", "1½", "in"),
    ],
)  # fmt: skip
def test_units_behind_numbers(text: str, number: str, unit: str) -> None:
    assert split_quantity(text) == (number, unit)


def test_the_units_library_is_loaded_only_for_a_text_that_is_not_known() -> None:
    import subprocess
    import sys

    program = (
        "import sys; from linter.reading.cells.units import factor_to, read_unit;"
        "factor_to('mm', 'in'); factor_to('r/min', 'U/min'); read_unit('N/mm²'); first = 'pint' in sys.modules;"
        "factor_to('N', 'kip'); print(first, 'pint' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["False", "True"]
