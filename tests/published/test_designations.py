"""Designations as parts lists write them, against the readings that the makers' printed tables and rules give.

``designations.csv`` are examples of practice; ``designations_further.csv`` were written from another maker's tables
(Koyo CAT. NO. 203E-1) and the numbering rules before the first run, so that nothing is fitted to the first list alone.
"""

import csv
from pathlib import Path

import pytest

from linter.reading.words.designations import read_designation

_SIZES = {"bearing_type": "type", "bore_diameter": "d", "outside_diameter": "D", "ring_width": "B"}
_SIGNS = {
    "closure": "closure", "clearance_class": "clearance", "tolerance_class": "tolerance_class", "cage": "cage",
    "contact_angle": "contact_angle",
}  # fmt: skip


def published(name):
    with (Path(__file__).parent / "data" / f"{name}.csv").open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def wanted(row, columns):
    texts = {name: row[column] for name, column in columns.items() if row[column] != ""}
    return {name: float(text) if text.replace(".", "").isdigit() else text for name, text in texts.items()}


def derived(found, columns):
    return {name: found.derived[name].value for name in columns if name in found.derived}


@pytest.mark.parametrize(("name", "count", "refused"), [("designations", 150, 24), ("designations_further", 94, 17)])
def test_every_designation_is_read_as_printed(name, count, refused):
    rows = published(name)
    assert len(rows) == count and sum(row["refuse"] == "true" for row in rows) == refused
    for row in rows:
        found = read_designation(row["written"])
        assert row["source"]
        if row["refuse"] == "true":
            assert found.refusal and len(found.refusal) > 15, row
            read = derived(found, _SIZES)
            assert {key: value for key, value in read.items() if key != "bearing_type"} == {
                key: value for key, value in wanted(row, _SIZES).items() if key != "bearing_type"
            }, row
        else:
            assert derived(found, _SIZES) == pytest.approx(wanted(row, _SIZES)), row
        if found.basic is not None:
            signs = wanted(row, _SIGNS)
            if row["type"] != "angular contact ball":
                signs["contact_angle"] = 0.0
            assert derived(found, _SIGNS) == signs, row
            assert found.arrangement == (row["arrangement"] or None), row


def test_what_is_not_read_is_said():
    for row in published("designations"):
        found = read_designation(row["written"])
        if "report" in row["note"] or "not read" in row["note"]:
            assert found.reported, row
        if "ask" in row["note"] and row["type"] != "angular contact ball":
            assert found.refusal or found.reported, row
