"""Words that say another feature of a seat beside its name: a column ``Ra`` behind a row ``Shaft seat``."""

import re

from attrs import evolve

from linter.model.vocabulary import parameter
from linter.reading.cells.choices import read_choice
from linter.reading.layouts.sides import Side, within
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import is_bearing


def feature_beside(words: Words, name: str, label: str, side: Side | None = None) -> Heading | None:
    """What a heading or key says beside the name of a seat or another part: another parameter of it, or None.

    ``side`` is the part that the row is of, where something else than its name says it.
    """
    own = within(words, side, name)
    found = None
    if own is not None and own.entry.level == "station":
        found = words.heading(f"{name} {label}") or (within(words, side, label) if side is not None else None)
    if found is None or own is None or found.parameter == own.parameter or found.entry.level != "station":
        return None
    if "_shoulder_" in own.parameter and "_seat_" in found.parameter:
        return None  # the roughness of a shoulder is none of its seat
    return found if found.parameter.split("_")[0] == own.parameter.split("_")[0] else None


_SHORTEST_NUMBER = 3  # of a bearing
_BRACKET = re.compile(r" ?[(（].*$")


def bearing_of_station(
    words: Words, label: str, heading: Heading | None, text: str, named_by: str = ""
) -> Heading | None:
    """What a name of stations says of one that is named already: no other one, but its bearing or how it is located.

    A row of the name ``named_by`` that named the station before may name the next one, ``free`` or ``fixed`` too.
    """
    named = heading is not None and heading.parameter == "station"
    if named and label != named_by and isinstance(read_choice("axial_role", _BRACKET.sub("", text)), str):
        return Heading("axial_role")  # Location: fixed
    return Heading("bearing_designation") if named and is_bearing_number(words, label, text) else heading


def is_bearing_number(words: Words, label: str, text: str) -> bool:
    """Whether a text beside a word for the bearing alone can only be the number of a bearing, and is no station."""
    number = len(text) >= _SHORTEST_NUMBER and any(map(str.isdigit, text))
    return number and is_bearing(label) and not words.station_said(text)


def of_named_station(words: Words, label: str, heading: Heading | None) -> Heading | None:
    """What a name says where something else names its station: a letter behind it is its symbol or its unit then.

    ``widthB`` is the width, ``temp_bearing_C`` a temperature in degrees Celsius.
    """
    if heading is not None and heading.station == parameter(heading.parameter).symbol != "":
        return evolve(heading, station="")
    return words.with_letter_of_unit(label) if heading is None else heading
