"""A label and its value in one cell, alone in its row among names and values: what it states of the machine."""

from linter.reading.layouts.lone import machine_heading
from linter.reading.layouts.title import label_and_value
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import can_name_machine


def pair_alone(text: str, words: Words, *, unnamed: bool) -> tuple[Heading, str, str] | None:
    """What a text states of the machine with a colon between label and value (``Orientation: vertical``), or None.

    A letter behind the label may look like the position of what it names (``Issue: D``). Where the machine has no name
    yet a word for its sort heads it (``Spindle: Yarn twister YT-60``).
    """
    label, value = label_and_value(text)
    if not label or not value:
        return None
    heading = words.heading(label) or machine_heading(label, value, "", words)
    if heading is None and unnamed and can_name_machine(label, value, words):
        heading = Heading("machine")
    if heading is None or heading.station or heading.aspect != "value" or heading.entry.level != "machine":
        return None
    whole = words.heading(text)
    return (heading, label, value) if whole is None or whole.parameter == heading.parameter else None
