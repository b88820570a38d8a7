"""The position in a heading that its cells say more of: a word for a designation or a function beside a station."""

from linter.reading.cells.signs import fold
from linter.reading.words.column_words import KEYS
from linter.reading.words.cuts import BRACKET, station_cuts
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Words


def without_station(label: str, key: str, words: Words) -> tuple[str, str]:
    """A word for a designation or a function and the station beside it (``designation_1``, ``Brg2.type``), or ''."""
    if (bracket := BRACKET.fullmatch(fold(label))) and (station := words.names.station(bracket[2])):
        return word_key(bracket[1]), station  # Bearing (DE)
    known = KEYS["designation"] | KEYS["bearing"] | KEYS["function"]
    for rest, piece, _ in () if key in known else station_cuts(fold(label)):
        core = word_key(rest)
        if core in known and (station := words.names.station(piece)):
            return core, station
    return key, ""


def station_beside(label: str, words: Words) -> str:
    """The station that a heading says beside words that are not known; no letter or number counts."""
    pieces = (piece for _, piece, _ in station_cuts(fold(label)))
    return next((own for piece in pieces if (own := words.names.station(piece)) and (len(own) > 1 or own > "z")), "")
