"""A firm's own list of bearings: what its catalogue says of each designation, for tables that state no more than that.

The list is a table like any other (workbook, CSV or JSON) with the designation in one column and the names and units
of the vocabulary in the others. Values of a reviewed table go before it; it goes before what a designation means and
before printed geometry.
"""

import re
from collections.abc import Iterator, Mapping
from typing import Any

from attrs import frozen

from linter.model.places import Place
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.reading.cells.signs import fold
from linter.reading.files.intake import InputError, visible

#: What a list may say of a bearing.
OF_BEARING = (
    "bearing_type", "contact_angle", "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer",
    "inner_ring_shoulder_diameter", "outer_ring_shoulder_diameter", "tolerance_class", "clearance_class", "ball_count",
    "ball_diameter", "pitch_diameter", "ball_material", "ring_material", "inner_groove_ratio", "outer_groove_ratio",
    "cage", "closure", "dynamic_rating", "static_rating", "fatigue_load_limit", "limiting_speed", "reference_speed",
    "seal_lip_diameter",
)  # fmt: skip
_JOINTS = re.compile(r"[\s\-_/.]+")
_EXPECTED = "one row for each bearing, with bearing_designation and the values of the vocabulary"


@frozen
class Listed:
    """One bearing of a list: its values and where they stand."""

    values: Mapping[str, float | str]
    places: Mapping[str, Place | None]

    def basis(self, name: str) -> str:
        """Where a value stands, in words."""
        place = self.places.get(name)
        return f"list of bearings {place}" if place is not None else "list of bearings"


@frozen
class BearingList:
    """Bearings by their designation."""

    file: str
    bearings: Mapping[str, Listed]

    def find(self, designation: str) -> Listed | None:
        """The bearing of a designation; case, blanks and joints carry no meaning."""
        return self.bearings.get(key_of(designation))


def key_of(designation: str) -> str:
    """A designation for comparing."""
    return _JOINTS.sub("", fold(designation)).casefold()


def bearings_of(file: str, stations: Stations) -> BearingList:
    """The list that a table states, one bearing in each row.

    Parameters
    ----------
    file : str
        The list, for messages.
    stations : Stations
        Its rows as read, without defaults and without what their designations say.

    Returns
    -------
    BearingList

    Raises
    ------
    InputError
        Where a cell of it was not understood or states about how much, a row names no bearing, or a bearing is listed
        twice with other values.
    """
    kinds = ("unreadable", "disagreement", "unused")
    wrong = [problem for problem in stations.problems if problem.kind in kinds or problem.code == "about"]
    if wrong:
        raise InputError("bearing-list", file, visible(wrong[0].message, 300), _EXPECTED)
    found: dict[str, Listed] = {}
    for row, text in enumerate(stations.text("bearing_designation").tolist()):
        if not text:
            raise InputError("bearing-list", file, f"row {row + 1} names no bearing", _EXPECTED)
        listed = Listed(dict(_values(stations, row)), {name: stations.place(name, row) for name in OF_BEARING})
        before = found.setdefault(key_of(text), listed)
        if before.values != listed.values:
            raise InputError(
                "bearing-list", file, f"{visible(text, 60)} stands there twice with other values", _EXPECTED
            )
    if not found:
        raise InputError("bearing-list", file, "no bearing", _EXPECTED)
    return BearingList(file, found)


def numbered(document: Any) -> Any:
    """A JSON list of bearings with a position for each, so that every object is a row of its own."""
    if isinstance(document, dict):
        lists = [value for value in document.values() if isinstance(value, list)]
        document = lists[0] if len(lists) == 1 else document
    if not isinstance(document, list):
        return document
    rows = enumerate(document, 1)
    return [{"station": f"bearing {k}", **row} if isinstance(row, dict) else row for k, row in rows]


def _values(stations: Stations, row: int) -> Iterator[tuple[str, float | str]]:
    for name in OF_BEARING:
        if not bool(stations.known(name)[row]):
            continue
        if parameter(name).kind == "number":
            yield name, float(stations.number(name)[row])
        else:
            yield name, str(stations.choice(name).texts()[row])
