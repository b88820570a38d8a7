"""Where the middle of the tolerances would not close a gate that their ends close."""

import json
from pathlib import Path

import jsonschema
import numpy as np
from attrs import evolve

from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.report.html import html_text
from linter.review.assess import assess
from linter.review.defaults import with_defaults
from linter.review.likely import likely
from linter.review.records import review_reading
from linter.review.spread.dimensions import assemblies, dimensions
from linter.review.spread.shares import ABOUT_THE_DRAWING
from linter.rulebook.load import load

BOOK = load("2026.5")
SAMPLES = Path(__file__).parents[2] / "sample_exports"


def reviewed(name):
    reading = read_table(SAMPLES / name)
    stations = with_defaults(reading.stations, BOOK)
    return review_reading(evolve(reading, stations=stations), BOOK), stations


def test_the_middle_of_a_fit_that_its_ends_close():
    """A seat from loose to tight is judged at its ends; its middle is what most parts meet."""
    result, stations = reviewed("gas-sampling-pump.json")
    (machine,) = likely(result, stations, BOOK)
    dims = dimensions(stations)
    middle = assemblies(stations, dims, np.array([[0.5 * (d.lower + d.upper)] for d in dims]))
    alone = outcomes(middle)
    closing = {(a.clause, a.station) for a in result.closing}
    assert machine.closing == len(result.closing) and machine.milder
    assert set(machine.milder) <= closing
    assert not {key for key in machine.milder if alone[key] in (0, 1)}  # neither critical nor major
    told = evolve(result, likely=(machine,))
    assert "<code>ringseat spread</code>" in html_text(told, BOOK)
    assert "<code>ringseat spread</code>" not in html_text(result, BOOK)
    whole = json.loads((data_folder("schemas") / "result.schema.json").read_text(encoding="utf-8"))
    jsonschema.validate(told.as_dict()["likely"], whole["properties"]["likely"])


def outcomes(stations):
    """Severity by clause and position, -1 for none."""
    names = stations.text("station")
    return {
        (name, None if review.clause.level == "machine" else str(names[row])): severity
        for name, review in assess(stations, BOOK).reviews.items()
        for row, severity in enumerate(review.severity.tolist())
    }


def test_what_the_drawing_itself_says_has_no_middle():
    """A clause about the table or a class is never counted, though it closes the gate."""
    result, stations = reviewed("respirator-blower.xlsx")
    (machine,) = likely(result, stations, BOOK)
    about = {a.clause for a in result.closing if a.clause.startswith(ABOUT_THE_DRAWING)}
    assert about and not about & {clause for clause, _ in machine.milder}


def test_a_gate_that_is_open_has_nothing():
    result, stations = reviewed("coolant-pump.csv")
    assert likely(result, stations, BOOK) == ()
