"""Raw cells of one parameter to values: numbers, sizes, choices and texts, each distinct text read once.

A text that cannot be read leaves a gap and a :class:`~linter.reading.settling.values.Trouble`; the rest is still read.
"""

import numpy as np

from linter.model.vocabulary import Parameter
from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import ReadError, missing_state
from linter.reading.files.grids import Bad, cell_text
from linter.reading.layouts.strips import Strip
from linter.reading.settling.derive import DESIGNATION
from linter.reading.settling.quantities import Quantities
from linter.reading.settling.values import (
    MISSING,
    Terms,
    Trouble,
    Values,
    at,
    bad_cell,
    distinct_texts,
    spread,
    trouble_of,
)
from linter.reading.words.bearing_tables import without_marks, without_words
from linter.reading.words.bearings_in_cell import several_bearings
from linter.reading.words.coded_columns import YES, choice_of_heading


def read_values(strip: Strip, entry: Parameter, terms: Terms) -> Values:
    """Read the cells of a strip; ``entry`` is their parameter."""
    if entry.kind == "text":
        return _read_texts(strip)
    if entry.kind == "choice":
        return _read_choices(strip, entry, terms.mapping.choices.get(entry.name))
    return Quantities(strip, entry, terms).read()


def _says_nothing(text: str) -> bool:
    """Whether a text may say that there is none: signs alone, or an abbreviation that is no name (``None`` may be)."""
    return len(text) < 5 and (not any(map(str.isalnum, text)) or text.casefold() in ("n/a", "n.a.", "tbd", "tbc"))


def _read_texts(strip: Strip) -> Values:
    distinct, codes, others = distinct_texts(strip.cells)
    plain = [text.strip() for text in distinct]
    if strip.parameter == DESIGNATION:
        plain = [without_words(without_marks(text)) for text in plain]
    wrong: dict[int, Trouble] = {}
    for index, text in enumerate(plain if strip.parameter == DESIGNATION else ()):
        if several := several_bearings(text):
            said = f"{' and '.join(several)} stand in one cell, and nothing says which of them is meant"
            wrong[index] = Trouble(-1, "unreadable", "several-bearings", text, "the designation of one bearing", said)
            plain[index] = ""
    for index, text in enumerate(plain if strip.parameter not in ("machine", "station") else ()):
        if _says_nothing(text) and (state := missing_state(text)) and state != "empty":
            said = MISSING[state.replace(" ", "-")]
            wrong[index] = Trouble(-1, "missing", state.replace(" ", "-"), text, "a text", said)
            plain[index] = ""
    words = np.array([*plain, ""], dtype=object)[codes]
    result = Values(np.zeros(0), words=words)
    result.troubles.extend(spread(codes, wrong))
    for index, cell in others:
        if isinstance(cell, Bad):
            result.troubles.append(bad_cell(index, cell))
        else:
            words[index] = cell_text(cell)
    return result


def _read_choices(strip: Strip, entry: Parameter, more: dict[str, str] | None) -> Values:
    distinct, codes, others = distinct_texts(strip.cells)
    table = np.full(len(distinct), np.nan)
    wrong: dict[int, Trouble] = {}
    for index, text in enumerate(distinct):
        word = read_choice(entry.name, text, more)
        if isinstance(word, ReadError) and text.strip().casefold() in YES:
            word = choice_of_heading(entry.name, strip.label) or word
        if isinstance(word, ReadError):
            if word.code != "empty":
                wrong[index] = trouble_of(word)
        else:
            table[index] = entry.choices.index(word)
    result = Values(table[codes])
    result.troubles.extend(spread(codes, wrong))
    for index, cell in others:
        if isinstance(cell, Bad):
            result.troubles.append(bad_cell(index, cell))
            continue
        text = ("yes" if cell else "no") if isinstance(cell, bool) else cell_text(cell)
        word = read_choice(entry.name, text, more)
        if isinstance(word, ReadError):
            result.troubles.append(at(trouble_of(word), index))
        else:
            result.number[index] = entry.choices.index(word)
    return result
