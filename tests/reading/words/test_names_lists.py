"""Names and cells as engineers write them down, in four languages: what is reached stays reached, and none is wrong.

``names_<language>.txt`` was written apart from the program's words. A line holds a parameter, maybe with its aspect
(``.class``, ``.upper``), and its names; one that begins with ``*`` holds names of both seats, ``[of the shaft|of the
housing]``; one with ``=`` holds cells of a choice.
"""

import re
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from linter.reading.cells.choices import read_choice
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

HERE = Path(__file__).resolve().parent
#: Names and cells that are taken right, in hundredths.
_FLOORS = {"fr": (92, 95), "it": (94, 93), "es": (96, 91), "ru": (95, 93)}
_PARTS = ("shaft_", "housing_")


def _of_part(text: str, place: int) -> str:
    return re.sub(r"\[([^\]|]*\|[^\]]*)\]", lambda match: match[1].split("|")[place], text).strip()


def _lines(language: str) -> Iterator[tuple[str, str]]:
    """What is meant, and the name or cell for it."""
    for line in (HERE / f"names_{language}.txt").read_text(encoding="utf-8").splitlines():
        meant, _, texts = line.partition(" = ")
        for place, part in enumerate(_PARTS if meant.startswith("*") else ("",)):
            for text in texts.split(";"):
                yield meant.replace("*", part), _of_part(text.strip(), place)


def _taken_for(words: Words, meant: str, text: str) -> str:
    """What a name or a cell is taken for, or empty."""
    if meant.startswith("="):
        name = meant[1:].partition(".")[0]
        word = read_choice(name, text)
        return f"={name}.{word}" if isinstance(word, str) else ""
    heading = words.heading(text)
    if heading is None:
        return ""
    aspect = {"value": "", "tolerance": "class"}.get(heading.aspect, heading.aspect)
    return ".".join(filter(None, (heading.parameter, aspect, heading.station)))


@pytest.mark.parametrize("language", sorted(_FLOORS))
def test_names_and_cells_are_understood_and_none_is_taken_for_another(language: str) -> None:
    words, counts, wrong = Words(Names.built_in()), (Counter[bool](), Counter[bool]()), []
    for meant, text in _lines(language):
        taken = _taken_for(words, meant, text)
        if taken and taken != meant and f"{taken}.class" != meant:
            wrong.append(f"{meant}: {text} taken for {taken}")
        counts[meant.startswith("=")][bool(taken)] += 1
    assert wrong == []
    for count, floor in zip(counts, _FLOORS[language], strict=True):
        assert 100 * count[True] >= floor * count.total(), count
