"""Positions side by side, once as designed and once as found: ``As designed DE | As designed NDE | As found DE``."""

from linter.reading.cells.signs import caseless
from linter.reading.layouts.long_table import LongTable
from linter.reading.words.headings import Words
from linter.reading.words.measured_words import DESIGNED, FOUND, LIMITS, keys_of, without

_AROUND = " -–—_:()[]/"
_DESIGNED, _LIMITS = keys_of(DESIGNED), keys_of(LIMITS)
_FOUND = keys_of((*FOUND, *LIMITS))


def put_found_aside(table: LongTable, words: Words) -> None:
    """Make columns of what was found on a part those of results, where others state the same positions as designed."""
    heads = {c: table.grid.text(table.header, c) for c, role in table.roles.items() if role == "COLUMN"}
    alone = {c for c, text in heads.items() if caseless(text).strip(_AROUND) in _LIMITS}
    heads = {c: text for c, text in heads.items() if c not in alone}
    designed = {c: place for c, text in heads.items() if (place := without(text, _DESIGNED))}
    found = {c: place for c, text in heads.items() if c not in designed and (place := without(text, _FOUND))}
    places = set(designed.values())
    if not found or len(places) < len(designed) or not set(found.values()) <= places:
        plain = {c: text for c, text in heads.items() if c not in found}
        said = {words.station_said(text) or text for text in plain.values()}  # Lager A | Lager B | Ist A | Ist B
        if not found or designed or not {words.station_said(place) or place for place in found.values()} <= said:
            return
        designed = plain
    if len(designed) + len(found) == len(heads):
        table.roles |= dict.fromkeys((*found, *alone), "RESULT")
        table.heads = designed
