"""The empty table: a workbook to fill in, an empty JSON table, and the JSON Schema of the input.

All three follow from the vocabulary. The same bytes come out on every run.
"""

import json
from datetime import datetime
from io import BytesIO
from typing import Any

from linter.model.vocabulary import Parameter, vocabulary
from linter.report.office import fit_page, row_height

#: Positions that the workbook has a column for; two of them are named beforehand.
POSITIONS = 4
#: Width of the column of meanings, in characters.
MEANING_WIDTH = 100

#: Units as a drawing office writes them; the others stand in the workbook as the vocabulary has them.
_PRETTY = {"um": "µm", "degC": "°C", "mm2/s": "mm²/s", "mm2": "mm²", "deg": "°", "g.mm": "g·mm", "1": "-"}


def example(entry: Parameter) -> str | float:
    """A value in the form that the parameter takes; empty where the invented machine states none.

    It stands in the vocabulary and is no recommendation.
    """
    if entry.kind in ("number", "toleranced"):
        try:
            return float(entry.example)
        except ValueError:
            pass
    return entry.example


def meaning(entry: Parameter) -> str:
    """What a parameter states, with the form of its value and what stands in for it."""
    text = entry.meaning
    if entry.kind == "toleranced":
        text += "; nominal with class, deviations or limits"
    if entry.choices:
        text += f"; one of: {', '.join(entry.choices)}"
    return text


def workbook() -> bytes:
    """An empty workbook: a sheet for the machine, a sheet for its positions; reads back without a name mapping.

    Each line names a parameter, its unit, and what it means with an example; choices have a drop-down list. The second
    sheet has a column for each position.

    Returns
    -------
    bytes
        The xlsx file.
    """
    import xlsxwriter

    stream = BytesIO()
    book = xlsxwriter.Workbook(stream, {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False})
    book.set_properties({"title": "Bearing seats, table to fill in", "created": datetime(2026, 1, 1)})
    entries = list(vocabulary().values())
    _sheet(book, "machine", [entry for entry in entries if entry.level == "machine"], ["Value"], {})
    columns = [f"bearing {number}" for number in range(1, POSITIONS + 1)]
    _sheet(book, "station", [entry for entry in entries if entry.level == "station"], columns, {"station": ["A", "B"]})
    book.close()
    return stream.getvalue()


def _sheet(book: Any, name: str, entries: list[Parameter], columns: list[str], given: dict[str, list[str]]) -> None:
    """One sheet: a line for each parameter, ``columns`` to fill in, ``given`` written beforehand."""
    head = book.add_format({"bold": True, "bottom": 1, "bg_color": "#E6ECF2", "text_wrap": True, "valign": "top"})
    plain = book.add_format({"valign": "top"})
    wrapped = book.add_format({"valign": "top", "text_wrap": True})
    field = book.add_format({"valign": "top", "border": 1, "border_color": "#9AA7B4", "bg_color": "#FFFDF0"})
    text_field = book.add_format(
        {"valign": "top", "border": 1, "border_color": "#9AA7B4", "bg_color": "#FFFDF0", "num_format": "@"}
    )
    sheet = book.add_worksheet(name)
    first = 1
    labels = ["Parameter", *columns, "Unit", "Meaning"]
    for column, label in enumerate(labels):
        sheet.write_string(0, column, label, head)
    unit_at = first + len(columns)
    for row, entry in enumerate(entries, start=1):
        sheet.write_string(row, 0, entry.name, plain)
        for column in range(first, unit_at):
            given_here = given.get(entry.name, [])
            cell = text_field if entry.kind == "text" else field
            if column - first < len(given_here):
                sheet.write_string(row, column, given_here[column - first], cell)
            else:
                sheet.write_blank(row, column, None, cell)
        if entry.unit:
            sheet.write_string(row, unit_at, _PRETTY.get(entry.unit, entry.unit), plain)
        # the example stands with the meaning: in a column of its own the examples would look like a station
        told = f"{meaning(entry)}; for example {entry.example}" if entry.example else meaning(entry)
        sheet.write_string(row, unit_at + 1, told, wrapped)
        sheet.set_row(row, row_height([(told, MEANING_WIDTH)]))
        rule: dict[str, Any] = {
            "validate": "any", "input_title": entry.name[:32], "input_message": entry.meaning[:255],
        }  # fmt: skip
        if entry.choices:
            rule |= {
                "validate": "list", "source": list(entry.choices), "error_title": "Not one of the choices",
                "error_message": f"Choose one of the words of the list for {entry.name}."[:255],
            }  # fmt: skip
        sheet.data_validation(row, first, row, unit_at - 1, rule)
    sheet.set_column(0, 0, 30)
    sheet.set_column(first, unit_at - 1, 22)
    sheet.set_column(unit_at, unit_at, 8)
    sheet.set_column(unit_at + 1, unit_at + 1, MEANING_WIDTH)
    sheet.freeze_panes(1, 1)
    fit_page(sheet, 0)


def empty_json() -> str:
    """An empty JSON table: one machine with two positions, every parameter null."""
    entries = list(vocabulary().values())
    machine: dict[str, Any] = {entry.name: None for entry in entries if entry.level == "machine"}
    station: dict[str, Any] = {entry.name: None for entry in entries if entry.level == "station"}
    machine["machine"] = "M1"
    machine["stations"] = [{**station, "station": name} for name in ("A", "B")]
    return json.dumps({"machines": [machine]}, ensure_ascii=False, indent=2) + "\n"


def _value_schema(entry: Parameter) -> dict[str, Any]:
    """Schema of the value of one parameter."""
    description = entry.meaning
    if entry.unit and entry.unit != "1":
        description += f" [{entry.unit}]"
    if entry.default:
        description += f"; where absent: {entry.default}"
    if entry.kind == "choice":
        return {"description": description, "enum": [*entry.choices, None]}
    if entry.kind == "text":
        return {"description": description, "type": ["string", "null"]}
    return {"description": description, "$ref": f"#/$defs/{entry.kind}"}


def input_schema() -> dict[str, Any]:
    """JSON Schema (2020-12) of the nested input table: machines, each with its stations.

    It states the canonical form. The reader takes more: other names, other layouts, units behind the numbers.
    """
    entries = list(vocabulary().values())
    machine = {entry.name: _value_schema(entry) for entry in entries if entry.level == "machine"}
    station = {entry.name: _value_schema(entry) for entry in entries if entry.level == "station"}
    for properties, key in ((machine, "machine"), (station, "station")):
        properties[key] = {"description": vocabulary()[key].meaning, "type": "string", "minLength": 1}
    number = {"type": "number"}
    quantity = {
        "unit": {"description": "unit of the numbers beside it; the canonical unit where absent", "type": "string"}
    }
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": "urn:ringseat:schema:input-table",
        "title": "Input table",
        "description": "Bearing arrangements with their positions, in the parameters and units of the vocabulary.",
        "type": "object",
        "required": ["machines"],
        "additionalProperties": False,
        "properties": {
            "$schema": {"type": "string"},
            "machines": {"type": "array", "minItems": 1, "items": {"$ref": "#/$defs/machine"}},
        },
        "$defs": {
            "machine": {
                "type": "object",
                "required": ["machine", "stations"],
                "additionalProperties": False,
                "properties": {
                    **machine,
                    "stations": {"type": "array", "minItems": 1, "items": {"$ref": "#/$defs/station"}},
                },
            },
            "station": {
                "type": "object",
                "required": ["station"],
                "additionalProperties": False,
                "properties": station,
            },
            "number": {
                "description": "a number in the canonical unit, a text such as “0.3 in”, or a value with its unit",
                "anyOf": [
                    number,
                    {"type": "string", "minLength": 1},
                    {
                        "type": "object",
                        "required": ["value"],
                        "additionalProperties": False,
                        "properties": {"value": number, **quantity},
                    },
                    {"type": "null"},
                ],
            },
            "toleranced": {
                "description": "a nominal size, a text such as “4 k5” or “4 +0.006/+0.001”, or its parts",
                "anyOf": [
                    number,
                    {"type": "string", "minLength": 1},
                    {
                        "type": "object",
                        "additionalProperties": False,
                        "minProperties": 1,
                        "properties": {
                            "nominal": number,
                            "upper": {"description": "upper deviation", **number},
                            "lower": {"description": "lower deviation", **number},
                            "max": {"description": "upper limit of size", **number},
                            "min": {"description": "lower limit of size", **number},
                            "class": {"description": "ISO 286 class", "type": "string"},
                            **quantity,
                        },
                    },
                    {"type": "null"},
                ],
            },
        },
    }


def input_schema_text() -> str:
    """The schema as the text of ``schemas/input-table.schema.json``."""
    return json.dumps(input_schema(), ensure_ascii=False, indent=2) + "\n"
