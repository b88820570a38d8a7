"""Labels of a machine beside each other in one row of a title block, their values in the row below."""

from linter.reading.files.grids import Grid
from linter.reading.layouts.lone import machine_heading
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import can_name_machine

#: Labels of a row, and how many of three or more may be unknown.
_FEWEST, _MOST_UNKNOWN = 2, 1


def labels_over(grid: Grid, row: int, words: Words) -> dict[int, Heading]:
    """What the labels of a row state by the values below them, by columns; nothing where it is no such row.

    A value stands below every label and nowhere else, and none of them is a label itself.
    """
    if row + 1 >= grid.height or grid.filled[row] < _FEWEST:
        return {}
    labels, values = (grid.texts(r) for r in (row, row + 1))
    if len(labels) < _FEWEST or labels.keys() != values.keys() or any(map(_is_number, labels.values())):
        return {}
    if any(len(text) > 2 and words.heading(text) is not None for text in values.values()):
        return {}
    found = {c: _meant(label, values[c], words) for c, label in labels.items()}
    known = {c: heading for c, heading in found.items() if heading is not None}
    return known if len(known) >= max(_FEWEST, len(labels) - _MOST_UNKNOWN) else {}


def _meant(label: str, value: str, words: Words) -> Heading | None:
    """What a label says of the machine by the value below it: its name too, where the two can be that."""
    heading = machine_heading(label, value, "", words)
    named = heading is None and not words.groups(label) and can_name_machine(label, value, words)
    return Heading("machine") if named else heading


def _is_number(text: str) -> bool:
    return text.replace(" ", "").replace(",", "").replace(".", "").isdigit()
