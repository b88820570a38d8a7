"""Measured values of a QIF document, as the list that an inspector would write of them.

Elements and attributes: QIF 3.0, Characteristics.xsd and Results.xsd: a measurement names its characteristic item and
has a value, whose attribute ``combinedUncertainty`` is the combined standard uncertainty (from memory of the schema).
"""

from collections.abc import Iterator
from typing import Any

import numpy as np

from linter.reading.files.grids import Column, Grid, object_column
from linter.reading.files.intake import Source
from linter.reading.layouts.qif import KINDS, parse
from linter.reading.layouts.qif_units import Units, child, tag, text_of

#: Expanded over combined standard uncertainty (ISO 14253-1 and GUM: coverage factor 2).
COVERAGE = 2.0
HEAD = ("Serial no.", "Characteristic", "Type", "Unit", "Measured", "Uncertainty")


def results_grid(source: Source) -> tuple[Grid, dict[int, str]]:
    """The measured characteristics of a document as a list, and by its line the pointer of each.

    Parameters
    ----------
    source : Source
        A QIF document.

    Returns
    -------
    Grid
        Drawing number and revision above, then :data:`HEAD` and a line for each measurement; no line without one.
    dict of int to str
        JSON-like pointer of the measurement by line.

    Raises
    ------
    InputError
        For XML that may not be parsed.
    """
    root = parse(source)
    units = Units.of(root)
    items = {node.get("id", ""): node for node in _children(root, "CharacteristicItems")}
    rows: list[tuple[Any, ...]] = []
    drawing = next((node for node in root.iter() if tag(node) == "PrintedDrawing"), None)
    for label, element in (("Drawing number", "DrawingNumber"), ("Revision", "Version")):
        if drawing is not None and (stated := text_of(drawing, element)):
            rows.append((label, stated, None, None, None, None))
    rows.append(HEAD)
    pointers: dict[int, str] = {}
    for results in (node for node in root.iter() if tag(node) == "MeasurementResults"):
        for measured in _children(results, "CharacteristicMeasurements"):
            item = items.get(text_of(measured, "CharacteristicItemId"))
            value = child(measured, "Value")
            if item is None or value is None:
                continue
            kind = tag(item).partition("Characteristic")[0]
            unit = units.of_value(value, "length")
            combined = value.get("combinedUncertainty", "")
            rows.append(
                (
                    results.get("id") if _many(root) else None, text_of(item, "Name") or text_of(item, "Description"),
                    KINDS.get(kind, kind), unit or None, (value.text or "").strip(), _expanded(combined),
                )
            )  # fmt: skip
            pointers[len(rows)] = f"/Results/{results.get('id', '')}/{measured.get('id', '')}/Value"
    columns: list[Column] = [object_column([row[k] for row in rows]) for k in range(len(HEAD))]
    return Grid(source.file, None, columns, np.arange(1, len(rows) + 1, dtype=np.int32)), pointers


def _many(root: Any) -> bool:
    return sum(tag(node) == "MeasurementResults" for node in root.iter()) > 1


def _expanded(combined: str) -> str | None:
    try:
        return repr(COVERAGE * float(combined)) if combined else None
    except ValueError:
        return combined  # told where it is read


def _children(root: Any, group: str) -> Iterator[Any]:
    for parent in root.iter():
        if tag(parent) == group:
            yield from parent
