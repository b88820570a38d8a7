"""Workbooks with one sheet for each position, or for each machine: the names of the sheets tell them apart."""

import openpyxl
import pytest

from linter.reading import read_table

POSITION = [["Feature", "Value", "Unit"], ["Bore d", 20, "mm"], ["Outside diameter D", 42, "mm"], ["Width B", 12, "mm"]]
COVER = [["Machine", "Reel 4"], ["Maximum speed", "9000 rpm"], ["Bearing span", "85 mm"]]
TWO = [["Parameter", "A", "B"], ["Bore d, mm", 20, 25], ["Outside diameter D, mm", 42, 52]]


def read(tmp_path, sheets):
    book = openpyxl.Workbook()
    book.remove(book.active)
    for name, rows in sheets:
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append(row)
    book.save(tmp_path / "book.xlsx")
    return read_table(tmp_path / "book.xlsx").stations


def keys(stations):
    return list(zip(stations.text("machine"), stations.text("station"), strict=True))


def assumed(stations):
    return {p.parameter for p in stations.problems if p.code == "sheet-name"}


@pytest.mark.parametrize(
    ("names", "stations"),
    [
        (("A", "B"), ("A", "B")),
        (("Stelle Antriebsseite", "Stelle Lüfterseite"), ("Antriebsseite", "Lüfterseite")),
        (("驱动端", "非驱动端"), ("驱动端", "非驱动端")),
        (("Lager 1", "Lager 2"), ("1", "2")),
        (("Impeller", "Coupling"), ("Impeller", "Coupling")),
    ],
)
def test_a_sheet_for_each_position(tmp_path, names, stations):
    found = read(tmp_path, [("Cover", COVER), *((name, POSITION) for name in names)])
    assert keys(found) == [("Reel 4", station) for station in stations]
    assert list(found.number("ring_width")) == [12, 12]
    assert assumed(found) == {"station"}


def test_a_sheet_for_each_machine(tmp_path):
    found = read(tmp_path, [("Pump P1", TWO), ("Pump P2", TWO)])
    assert keys(found) == [("Pump P1", "A"), ("Pump P1", "B"), ("Pump P2", "A"), ("Pump P2", "B")]
    assert assumed(found) == {"machine"}


@pytest.mark.parametrize(
    "names", [("Sheet1", "Sheet2"), ("A", "A (2)"), ("Impeller", "Coupling"), ("Shaft", "Housing")]
)
def test_names_that_say_nothing_name_no_position(tmp_path, names):
    assert not assumed(read(tmp_path, [(name, POSITION) for name in names]))
