"""Measured parts: the decision rule, lists as inspectors write them, function, and which parts go together."""

import json
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linear_sum_assignment

from linter import load_rulebook, read_table
from linter.command.cli import main
from linter.reading.measured import read_measured
from linter.review.parts.conformity import CONFORMS, DOES_NOT_CONFORM, NOT_PROVEN, conformity
from linter.review.parts.judge import judge
from linter.review.parts.match import Window, match, window

SAMPLES = Path(__file__).parents[2] / "sample_exports"
PUMP = SAMPLES / "coolant-pump.csv"

# Lower limit, upper limit, measured value, verdict with U = 0: at the limit and beyond, sizes of each kind of a seat.
WORKED = [
    (low, high, value, wanted)
    for low, high, step in (
        (8.001, 8.006, 0.001), (9.998, 10.004, 0.0005), (26.0, 26.013, 0.001), (13.4, 13.5, 0.01), (47.95, 48.05, 0.01),
    )
    for value, wanted in (
        (low, CONFORMS), (high, CONFORMS), (0.5 * (low + high), CONFORMS), (low - step, DOES_NOT_CONFORM),
        (high + step, DOES_NOT_CONFORM), (low + step, CONFORMS), (high - step, CONFORMS),
        (high + 10 * step, DOES_NOT_CONFORM),
    )
]  # fmt: skip


@pytest.mark.parametrize(("low", "high", "value", "wanted"), WORKED)
def test_without_uncertainty_the_limits_decide(low: float, high: float, value: float, wanted: int) -> None:
    assert conformity(value, low, high, 0.0) == wanted


@pytest.mark.parametrize(
    ("value", "wanted"),
    [
        (8.0025, CONFORMS), (8.002, CONFORMS), (8.0015, NOT_PROVEN), (8.001, NOT_PROVEN), (8.0005, NOT_PROVEN),
        (7.9995, DOES_NOT_CONFORM), (8.005, CONFORMS), (8.0055, NOT_PROVEN), (8.0068, NOT_PROVEN),
        (8.0075, DOES_NOT_CONFORM),
    ],
)  # fmt: skip
def test_the_uncertainty_guards_both_sides_of_each_limit(value: float, wanted: int) -> None:
    assert conformity(value, 8.001, 8.006, 0.001) == wanted


def test_one_limit_and_none() -> None:
    assert conformity([0.002, 0.0021, 0.0019], np.nan, 0.002, [0, 0, 0.0002]).tolist() == [0, 2, 1]
    assert conformity([1.0, np.nan], [np.nan, 0.0], [np.nan, 2.0]).tolist() == [-1, -1]
    with pytest.raises(ValueError, match="0 or more"):
        conformity(1.0, 0.0, 2.0, -0.1)


@given(st.floats(-5, 5), st.floats(0, 3), st.floats(0, 2), st.floats(0, 2))
@settings(derandomize=True)
def test_more_uncertainty_never_proves_more(value: float, width: float, less: float, more: float) -> None:
    small, large = sorted((less, more))
    first, second = conformity(value, 0.0, width, [small, large])
    assert second in (first, NOT_PROVEN)


def plain(text: str) -> str:
    return text.replace("\u00a0", " ").replace("\u202f", " ")


def csv(tmp_path: Path, *lines: str, name: str = "list.csv") -> Path:
    path = tmp_path / name
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


HEAD = "Characteristic;Station;Nominal;Upper deviation;Lower deviation;Unit;Measured"


def test_8_009_on_8_plus_0_006_plus_0_001_is_reported(tmp_path) -> None:
    table = csv(
        tmp_path, "machine;station;bearing_type;bore_diameter;outside_diameter;tolerance_class;shaft_seat_diameter",
        "Fan;A;deep groove ball;8;22;P5;8 +0.006/+0.001", name="fan.csv",
    )  # fmt: skip
    listed = csv(tmp_path, HEAD, "shaft seat diameter;A;8;0.006;0.001;mm;8.009")
    done = CliRunner().invoke(main, ["parts", str(table), str(listed), "--out", str(tmp_path / "out")])
    assert done.exit_code == 1, done.output
    assert "list.csv G2: shaft seat diameter at A: does not conform: measured 8.009 mm" in plain(done.output)
    content = json.loads((tmp_path / "out" / "fan.parts.json").read_text(encoding="utf-8"))
    (value,) = content["values"]
    assert (value["measured"], value["lower"], value["upper"], value["verdict"]) == (
        8.009,
        8.001,
        8.006,
        "does not conform",
    )
    assert "no uncertainty is stated" in value["note"]


@pytest.mark.parametrize(
    "lines",
    [
        ("Characteristic,Station,Nominal,Tol +,Tol -,Unit,Actual", "Shaft seat diameter,A,10,+0.004,-0.002,mm,10.0035"),
        ("Merkmal;Nennmaß;Oberes Abmaß;Unteres Abmaß;Einheit;Istmaß", "Wellensitz A;10;+0,004;-0,002;mm;10,0035"),
        ("Characteristic;Station;Measured value;Unit", "shaft_seat_diameter;A;10003.5;µm"),
        ("No.;Characteristic;Station;Unit;Measured 1;Measured 2", "1;shaft seat diameter;A;mm;10.0035;10.0035"),
        ("項目;公差;単位;実測値", "軸径 A;10 +0.004/-0.002;mm;10.0035"),
    ],
)
def test_lists_as_they_come(tmp_path, lines) -> None:
    found = read_measured(csv(tmp_path, *lines))
    assert found.values, (found.problems, found.unknown)
    for value in found.values:
        assert (value.parameter, value.station) == ("shaft_seat_diameter", "A")
        assert value.value == pytest.approx(10.0035)
        assert value.place is not None


def test_rings_springs_and_uncertainties(tmp_path) -> None:
    found = read_measured(
        csv(
            tmp_path, "Serial no.;Characteristic;Station;Unit;Actual;U",
            "K1;bore of the inner ring;A;mm;9.997;0.001", "K1;ring outside diameter;A;µm;25997;1",
            "F1;spring force;;N;61.5;2", "K2;radial clearance;A;µm;12;1",
        )
    )  # fmt: skip
    values = {v.parameter: (v.part, v.station, v.value, v.uncertainty) for v in found.values}
    assert values == {
        "ring_bore": ("K1", "A", 9.997, 0.001),
        "ring_outside": ("K1", "A", pytest.approx(25.997), pytest.approx(0.001)),
        "spring_force": ("F1", "", 61.5, 2.0),
        "radial_clearance": ("K2", "A", 12.0, 1.0),
    }


def test_an_inspection_list_filled_in_conforms(tmp_path) -> None:
    import openpyxl

    assert CliRunner().invoke(main, ["sheet", str(PUMP), "--out", str(tmp_path)]).exit_code == 0
    path = tmp_path / "coolant-pump.inspection.xlsx"
    book = openpyxl.load_workbook(path)
    sheet = book["Inspection"]
    heads = [cell.value for cell in sheet[1]]
    low, high, nominal, unit, measured = (heads.index(n) for n in ("Min", "Max", "Nominal", "Unit", "Measured"))
    count = 0
    for row in sheet.iter_rows(min_row=2):
        least, most = row[low].value, row[high].value
        row[measured].value = (
            0.5 * (least + most)
            if least is not None and most is not None
            else row[nominal].value
            if most is None
            else 0.5 * most
        )
        count += row[unit].value is not None
    book.save(path)
    done = CliRunner().invoke(main, ["parts", str(PUMP), str(path)])
    assert done.exit_code == 0, done.output
    assert f"{count - 2} conforms" in done.output and "gate open with the measured values" in done.output


def test_outside_the_drawing_and_inside_function_is_a_request(tmp_path) -> None:
    listed = csv(
        tmp_path,
        HEAD,
        "shaft seat diameter;A;10;0.004;-0.002;mm;10.0055",
        "shaft seat diameter;B;10;0.004;-0.002;mm;10.03",
    )
    done = CliRunner().invoke(main, ["parts", str(PUMP), str(listed), "--out", str(tmp_path)])
    assert done.exit_code == 1
    content = json.loads((tmp_path / "coolant-pump.parts.json").read_text(encoding="utf-8"))
    functions = {v["station"]: v["function"] for v in content["values"]}
    assert functions == {"A": "inside", "B": "outside"}
    request = plain(*content["requests"])
    assert "10.0055 mm" in request and "1.5 µm beyond" in request and "RS-2040" in request
    assert "fit.inner-stress" in json.dumps(content["values"])


def test_a_measured_value_never_enters_a_design_review() -> None:
    reading = read_table(PUMP)
    assert reading.stations.measured == {}
    book = load_rulebook("2026.4")
    before = {k: v.copy() for k, v in reading.stations.numbers.items()}
    judge(reading.stations, book, _list_of())
    assert all(np.array_equal(before[k], reading.stations.numbers[k], equal_nan=True) for k in before)
    assert reading.stations.measured == {}


def _list_of():
    from linter.reading.measured import Measured, MeasuredList

    value = Measured("ring_bore", "", "A", "", 9.99, None, None, "9.99")
    return MeasuredList("list", "", (value,), "", "", (), ())


@pytest.mark.parametrize(
    ("lines", "status", "told"),
    [
        (
            ("Drawing number;RS-9", HEAD, "shaft seat diameter;A;10;;;mm;10"),
            2,
            "drawing number 'RS-9', expected 'RS-2040'",
        ),
        (("Revision;Z", HEAD, "shaft seat diameter;A;10;;;mm;10"), 2, "drawing revision 'Z', expected 'B'"),
        ((HEAD, "shaft seat diameter;C;10;;;mm;10"), 3, "read the station 'C', the table has 'A', 'B'"),
        ((HEAD, "colour of the box;A;10;;;mm;10", "shaft seat diameter;A;10;;;mm;10"), 3, "'colour of the box'"),
        ((HEAD, "shaft seat diameter;A;10;;;mm;ten"), 3, "ten"),
        (("a;b", "1;2"), 2, "no column of measured values"),
    ],
)
def test_bad_lists_are_told(tmp_path, lines, status: int, told: str) -> None:
    done = CliRunner().invoke(main, ["parts", str(PUMP), str(csv(tmp_path, *lines))])
    assert done.exit_code == status, done.output
    assert told in done.output


def test_an_uncertainty_larger_than_the_tolerance_is_told(tmp_path) -> None:
    listed = csv(tmp_path, HEAD, "shaft seat diameter;A;10;0.004;-0.002;mm;10.001")
    done = CliRunner().invoke(main, ["parts", str(PUMP), str(listed), "--uncertainty", "0.004"])
    assert done.exit_code == 3
    assert "larger than half the tolerance" in done.output


def test_a_most_sets_match_and_every_fit_is_in_its_window() -> None:
    rng = np.random.default_rng(5)
    shafts, bores, outsides, housings = (rng.normal(m, s, 60) for m, s in ((1, 2), (-2.5, 1), (-3, 1), (6, 2)))
    inner, outer = Window(1.0, 6.0), Window(-12.0, -6.0)
    bearing, shaft, housing = match(shafts, bores, outsides, housings, inner, outer)
    assert len(set(bearing)) == len(set(shaft)) == len(set(housing)) == len(bearing) > 20
    first, second = shafts[shaft] - bores[bearing], outsides[bearing] - housings[housing]
    assert ((first >= 1.0) & (first <= 6.0) & (second >= -12.0) & (second <= -6.0)).all()


def test_pairs_are_as_many_as_an_assignment_finds() -> None:
    rng = np.random.default_rng(9)
    for _ in range(20):
        shafts, bores = rng.normal(0, 3, 25), rng.normal(-3, 2, 20)
        bearing, shaft, _ = match(shafts, bores, np.zeros(20), None, Window(1.0, 4.0), Window(-np.inf, np.inf))
        fits = shafts[:, None] - bores[None, :]
        allowed = (fits >= 1.0) & (fits <= 4.0)
        seats, rings = linear_sum_assignment(~allowed)
        assert len(bearing) == allowed[seats, rings].sum()
        assert allowed[shaft, bearing].all()


def test_three_kinds_are_as_many_as_a_search_finds() -> None:
    rng = np.random.default_rng(11)
    for _ in range(30):
        shafts, bores, outsides, housings = rng.normal(0, 2, (4, 4))
        one, two = Window(-1.0, 1.0), Window(-1.0, 1.0)
        inner = np.abs(shafts[:, None] - bores) <= 1.0
        outer = np.abs(outsides - housings[:, None]) <= 1.0

        def best(b: int, s: frozenset[int], h: frozenset[int], inner=inner, outer=outer) -> int:
            if b == 4:
                return 0
            found = best(b + 1, s, h)
            for i in range(4):
                for j in range(4):
                    if i not in s and j not in h and inner[i, b] and outer[j, b]:
                        found = max(found, 1 + best(b + 1, s | {i}, h | {j}))
            return found

        assert len(match(shafts, bores, outsides, housings, one, two)[0]) == best(0, frozenset(), frozenset())


def test_five_hundred_parts_match() -> None:
    rng = np.random.default_rng(3)
    shafts, bores = rng.normal(1, 1, 500), rng.normal(-2.5, 0.8, 500)
    outsides, housings = rng.normal(-3, 1, 500), rng.normal(6.5, 2, 500)
    inner, outer = Window(2.0, 5.0), Window(-13.0, -6.0)
    bearing, shaft, housing = match(shafts, bores, outsides, housings, inner, outer)
    fits = shafts[shaft] - bores[bearing]
    assert len(bearing) > 400 and ((fits >= 2.0) & (fits <= 5.0)).all()
    assert (np.abs(outsides[bearing] - housings[housing] + 9.5) <= 3.5).all()


def test_the_window_is_where_the_rulebook_finds_nothing() -> None:
    book = load_rulebook("2026.4")
    pump = read_table(PUMP).stations
    found = window(pump, 0, "shaft", book)
    assert -20 < found.low < 2 < found.high < 40
    assert window(pump, 0, "housing", book).high < 2


def test_matching_by_the_command(tmp_path) -> None:
    lines = ["Serial no.;Characteristic;Station;Unit;Actual"]
    for k in range(4):
        lines += [
            f"W{k};shaft seat diameter;A;mm;{10 + 0.001 * k}", f"L{k};ring bore;A;mm;{9.998 - 0.001 * k}",
            f"L{k};ring outside diameter;A;mm;{25.998 - 0.001 * k}",
            f"G{k};housing seat diameter;A;mm;{26.002 + 0.003 * k}",
        ]  # fmt: skip
    done = CliRunner().invoke(main, ["parts", str(PUMP), str(csv(tmp_path, *lines)), "--match", "--out", str(tmp_path)])
    assert done.exit_code == 0, done.output
    (matching,) = json.loads((tmp_path / "coolant-pump.parts.json").read_text(encoding="utf-8"))["matchings"]
    assert matching["most"] == 4 and {entry["bearing"] for entry in matching["sets"]} == {"L0", "L1", "L2", "L3"}
    assert all(matching["windows"]["shaft"]["low"] <= s["shaft_interference"] <= matching["windows"]["shaft"]["high"]
               for s in matching["sets"])  # fmt: skip


def test_results_of_a_qif_document(tmp_path) -> None:
    def measurement(number: int, item: int, value: str) -> str:
        return (
            f"<DiameterCharacteristicMeasurement id='{number}'><CharacteristicItemId>{item}</CharacteristicItemId>"
            f"{value}</DiameterCharacteristicMeasurement>"
        )

    units = (
        "<FileUnits><PrimaryUnits><LinearUnit><SIUnitName>meter</SIUnitName><UnitName>mm</UnitName><UnitConversion>"
        "<Factor>0.001</Factor></UnitConversion></LinearUnit></PrimaryUnits></FileUnits>"
    )
    items = "".join(
        f"<{kind}CharacteristicItem id='{number}'><Name>{name}</Name></{kind}CharacteristicItem>"
        for kind, number, name in (
            ("Diameter", 103, "Shaft seat A"), ("Cylindricity", 106, "Shaft seat A"), ("Diameter", 109, "Ring bore A"),
        )
    )  # fmt: skip
    values = (
        measurement(8, 103, "<Value combinedUncertainty='0.0005'>10.0055</Value>")
        + measurement(9, 106, "<Value>0.0009</Value>") + measurement(10, 109, "<Value>9.998</Value>")
    )  # fmt: skip
    text = (
        f"<QIFDocument xmlns='http://qifstandards.org/xsd/qif3' versionQIF='3.0.0'>{units}<Characteristics>"
        f"<CharacteristicItems>{items}</CharacteristicItems></Characteristics><Results><MeasurementResultsSet>"
        "<MeasurementResults id='1'><MeasuredCharacteristics><CharacteristicMeasurements>"
        f"{values}</CharacteristicMeasurements></MeasuredCharacteristics></MeasurementResults></MeasurementResultsSet>"
        "</Results></QIFDocument>"
    )
    path = tmp_path / "results.qif"
    path.write_text(text, encoding="utf-8")
    found = read_measured(path)
    assert {(v.parameter, v.station): (v.value, v.uncertainty) for v in found.values} == {
        ("shaft_seat_diameter", "A"): (10.0055, 0.001),
        ("shaft_seat_cylindricity", "A"): (0.0009, None),
        ("ring_bore", "A"): (9.998, None),
    }
    assert {str(v.place).removeprefix(str(path)).strip() for v in found.values} == {
        "/Results/1/8/Value", "/Results/1/9/Value", "/Results/1/10/Value"
    }  # fmt: skip
    done = CliRunner().invoke(main, ["parts", str(PUMP), str(path)])
    assert done.exit_code == 1 and "request: Coolant pump P2" in done.output
