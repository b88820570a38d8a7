"""Rows of a title block: labels of a machine and values in turn."""

from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid
from linter.reading.layouts.lone import SHARED
from linter.reading.layouts.title import label_and_value, names_value, pair_in_cell
from linter.reading.words.headings import Words


def is_title_row(grid: Grid, row: int, words: Words) -> bool:
    """Whether a row is of a title block: labels and values in turn, and all labels that are known are of the machine.

    A unit may stand behind a value, a label and its value in one cell, and lubrication and its like are mostly the same
    for all stations. Words that come again are headings below positions (``Shaft | Housing | Shaft | Housing``).
    """
    texts = [*grid.texts(row).values()]
    words_again = [text for text in {*texts} if texts.count(text) > 1 and text.replace(" ", "").isalpha()]
    known, at = 0, len(texts) if len(words_again) > 1 else int(_after_caption(texts, words))
    while at < len(texts):
        label, value = pair_in_cell(texts[at], words)
        inline = bool(value)
        if not inline and (at + 1 == len(texts) or _is_name(texts[at + 1], words)):
            return False
        heading = words.heading(label)
        at += 1 if inline else 2
        if heading is None:
            if inline:
                return False
            continue
        if heading.parameter == "station" or not (heading.entry.level == "machine" or heading.parameter in SHARED):
            return False
        known += heading.entry.level == "machine"
        if at < len(texts) and not inline and known_unit(texts[at].strip("[]() ")) is not None:
            at += 1
    return known > 0


def _after_caption(texts: list[str], words: Words) -> bool:
    """Whether a text that is no label stands before labels and values (``Seats of blower 7 | Drawing | B-12``)."""
    if len(texts) < 3 or words.heading(texts[0]) is not None or pair_in_cell(texts[0], words)[1]:
        return False
    named = words.heading(texts[1])
    of_machine = named is not None and named.entry.level == "machine" and not named.station
    return of_machine and any(map(str.isdigit, texts[2])) and not _is_name(texts[2], words)


def _is_name(text: str, words: Words) -> bool:
    return len(text) > 1 and names_value(words, text)


def label_said(grid: Grid, row: int, words: Words) -> str:
    """The parameter of a machine that a row of few cells states (``Machine | Reel 4``, ``Mass: 2 kg``), or empty."""
    texts = [*grid.texts(row).values()]
    label, value = label_and_value(texts[0]) if texts else ("", "")
    heading = words.heading(label) if label and (value or len(texts) > 1) else None
    return heading.parameter if heading is not None and heading.entry.level == "machine" else ""
