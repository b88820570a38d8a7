"""Sets of tables that are written by hand: text files in which each table begins with ``%%`` and its number."""

import re
from functools import cache
from pathlib import Path


@cache
def texts(folder: Path, before: int) -> dict[int, str]:
    """The written text of each table of a folder by its number in the set; ``before`` is the number before the first.

    Raises
    ------
    ValueError
        If a table is written twice.
    """
    found: dict[int, str] = {}
    for path in sorted(folder.glob("*.txt")):
        for text in re.split(r"^%% ", path.read_text(encoding="utf-8"), flags=re.MULTILINE)[1:]:
            number = int(text.split(" ", 1)[0]) - before
            if number in found:
                raise ValueError(f"{path.name}: table {number} is written twice")
            found[number] = text
    return found
