"""What parameters are called in other languages: the first word that a table of the language may have for each."""

import csv
from functools import cache
from pathlib import Path

import linter.reading.words


@cache
def parameter_words(language: str) -> dict[str, str]:
    """Names of parameters to words, from the headings that tables are read by.

    Parameters
    ----------
    language : str
        ``de``, ``ja`` or ``zh``.

    Returns
    -------
    dict of str to str
        Of each parameter its first heading in the language.
    """
    path = Path(linter.reading.words.__file__).parent / "data" / "headings.csv"
    found: dict[str, str] = {}
    with path.open(encoding="utf-8", newline="") as stream:
        for row in csv.DictReader(stream):
            if row["language"] == language:
                found.setdefault(row["target"], row["word"])
    return found
