import io
import json
from pathlib import Path

import numpy as np
import openpyxl
import pytest
from jsonschema import Draft202012Validator

from linter.model.packaged import data_folder
from linter.model.vocabulary import vocabulary
from linter.reading import Reading, read_table
from linter.reading.cells.choices import read_choice
from linter.reading.cells.numbers import Number, read_number
from linter.reading.cells.tolerance import Size, read_size
from linter.report.blank_table import empty_json, example, input_schema, input_schema_text, workbook

ENTRIES = list(vocabulary().values())


def test_the_schema_in_the_folder_follows_from_the_vocabulary() -> None:
    written = (data_folder("schemas") / "input-table.schema.json").read_text(encoding="utf-8")
    assert written == input_schema_text(), (
        "write linter.report.blank_table.input_schema_text() to schemas/input-table.schema.json"
    )
    Draft202012Validator.check_schema(input_schema())


def test_the_same_bytes_come_out_every_time() -> None:
    assert workbook() == workbook()
    assert empty_json() == empty_json()


@pytest.mark.parametrize("entry", ENTRIES, ids=lambda entry: entry.name)
def test_every_example_is_a_value_of_its_parameter(entry) -> None:  # type: ignore[no-untyped-def]
    shown = example(entry)
    assert shown != "", f"give {entry.name} an example in schemas/vocabulary.csv"
    if entry.kind == "choice":
        assert read_choice(entry.name, str(shown)) == shown
    elif entry.kind == "number":
        assert isinstance(read_number(str(shown), "."), Number)
    elif entry.kind == "toleranced":
        size = read_size(str(shown), entry.unit, ".", ranges=entry.unit != "mm")
        assert isinstance(size, Size)
        assert size.tolerance_class or (size.lower is not None and size.upper is not None)


def test_the_workbook_has_a_line_for_every_parameter_with_list_unit_and_meaning() -> None:
    book = openpyxl.load_workbook(io.BytesIO(workbook()))
    assert book.sheetnames == ["machine", "station"]
    lines = {row[0].value: row for sheet in book for row in sheet.iter_rows(min_row=2)}
    assert list(lines) == [entry.name for entry in ENTRIES]
    lists = {
        next(iter(rule.sqref.ranges)).min_row: rule.formula1
        for rule in book["station"].data_validations.dataValidation
        if rule.type == "list"
    }
    for row, entry in enumerate((e for e in ENTRIES if e.level == "station"), start=2):
        assert (row in lists) == (entry.kind == "choice")
        if entry.choices:
            assert lists[row] == f'"{",".join(entry.choices)}"'
    for entry in ENTRIES:
        cells = [cell.value for cell in lines[entry.name]]
        assert cells[-1].startswith(entry.meaning)
        assert bool(cells[-2]) == bool(entry.unit)


def test_every_field_has_a_note_and_every_list_fits_a_spreadsheet() -> None:
    book = openpyxl.load_workbook(io.BytesIO(workbook()))
    for sheet in book:
        assert [cell.value for cell in sheet[1]][-2:] == ["Unit", "Meaning"]
        noted = {}
        for rule in book[sheet.title].data_validations.dataValidation:
            for cells in rule.sqref.ranges:
                noted[cells.min_row] = rule
                assert (cells.min_col, cells.max_col) == (2, sheet.max_column - 2)
        for row in sheet.iter_rows(min_row=2):
            entry, rule = vocabulary()[row[0].value], noted[row[0].row]
            assert rule.promptTitle == entry.name[:32] and rule.prompt == entry.meaning[:255]
            assert f"for example {entry.example}" in row[-1].value
            if rule.type == "list":
                assert len(rule.formula1) <= 257  # 255 signs between the quotes, from memory of spreadsheet limits
                assert rule.errorTitle and not any("," in choice for choice in entry.choices)


def check(reading: Reading, stations: tuple[str, ...]) -> None:
    """Every parameter of the first position states its example."""
    found = reading.stations
    assert [p.message for p in found.problems] == []
    assert tuple(found.text("station")) == stations
    assert found.machines == ("respirator blower",)
    for entry in ENTRIES:
        shown = example(entry)
        if entry.kind == "text":
            assert found.text(entry.name)[0] == shown
        elif entry.kind == "choice":
            assert found.choice(entry.name).texts()[0] == shown
        elif entry.kind == "number":
            assert found.number(entry.name)[0] == shown
        else:
            size = read_size(str(shown), entry.unit, ".", ranges=entry.unit != "mm")
            assert isinstance(size, Size)
            column = found.size(entry.name)
            assert column.tolerance_class[0] == size.tolerance_class
            if size.limits:
                assert (column.smallest[0], column.largest[0]) == (size.lower, size.upper)
            else:
                assert column.nominal[0] == size.nominal
            if size.lower is not None and not size.limits:
                assert np.allclose([column.lower[0], column.upper[0]], [size.lower, size.upper], rtol=0, atol=1e-12)


def test_a_filled_workbook_reads_back_without_a_mapping(tmp_path: Path) -> None:
    book = openpyxl.load_workbook(io.BytesIO(workbook()))
    for sheet in book:
        for row in sheet.iter_rows(min_row=2):
            row[1].value = example(vocabulary()[row[0].value])
    path = tmp_path / "filled.xlsx"
    book.save(path)
    check(read_table(path), ("A", "B"))


def test_an_empty_workbook_names_its_positions_and_states_nothing(tmp_path: Path) -> None:
    path = tmp_path / "empty.xlsx"
    path.write_bytes(workbook())
    reading = read_table(path)
    stations = reading.stations
    assert tuple(stations.text("station")) == ("A", "B")
    assert stations.problems == () and reading.unused == ()
    assert set(stations.numbers) == {"required_reliability", "inner_groove_ratio", "outer_groove_ratio"}
    assert not stations.toleranced and not stations.choices


def test_a_filled_json_table_reads_back_and_meets_the_schema(tmp_path: Path) -> None:
    validator = Draft202012Validator(input_schema())
    document = json.loads(empty_json())
    validator.validate(document)
    machine = document["machines"][0]
    for entry in ENTRIES:
        (machine if entry.level == "machine" else machine["stations"][0])[entry.name] = example(entry)
    validator.validate(document)
    path = tmp_path / "filled.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    check(read_table(path), ("A", "B"))


def test_values_in_parts_meet_the_schema_and_are_read(tmp_path: Path) -> None:
    document = {
        "machines": [
            {
                "machine": "blower",
                "bearing_span": {"nominal": 1.25, "upper": 0.004, "lower": -0.004, "unit": "in"},
                "stations": [
                    {
                        "station": "A",
                        "bore_diameter": {"value": 4},
                        "shaft_seat_roughness": {"value": 0.0004, "unit": "mm"},
                        "shaft_seat_diameter": {"nominal": 4, "class": "h5"},
                        "housing_seat_diameter": {"nominal": 13, "min": 13.0, "max": 13.008},
                    }
                ],
            }
        ]
    }
    Draft202012Validator(input_schema()).validate(document)
    path = tmp_path / "parts.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.number("bore_diameter")[0] == 4
    assert stations.number("shaft_seat_roughness")[0] == pytest.approx(0.4, rel=1e-12)
    assert stations.size("shaft_seat_diameter").tolerance_class[0] == "h5"
    assert stations.size("housing_seat_diameter").largest[0] == pytest.approx(13.008, rel=1e-12)
    assert stations.size("bearing_span").upper[0] == pytest.approx(0.1016, rel=1e-12)


@pytest.mark.parametrize(
    "document",
    [
        {}, {"machines": []}, {"machines": [{"machine": "M"}]}, {"machines": [{"machine": "M", "stations": []}]},
        {"machines": [{"machine": "M", "stations": [{"station": "A", "cage": "wood"}]}]},
        {"machines": [{"machine": "M", "stations": [{"station": "A", "bore": 4}]}]},
        {"machines": [{"machine": "M", "stations": [{"station": "A", "bore_diameter": {"unit": "mm"}}]}]},
        {"machines": [{"machine": "M", "stations": [{"bore_diameter": 4}]}]},
    ],
)  # fmt: skip
def test_the_schema_refuses_what_is_not_in_its_form(document: dict[str, object]) -> None:
    assert not Draft202012Validator(input_schema()).is_valid(document)
