"""Headings over a block of rows or columns that say shaft, housing or bearing, and names below them."""

import re

from attrs import frozen

from linter.reading.cells.signs import caseless
from linter.reading.files.grids import Grid
from linter.reading.words.headings import Heading, Words

# Terms of the trade (ISO 286-1, ISO 5593 and their translations, from memory; common practice).
_WORDS = {
    "shaft": "shaft, journal, welle, arbre, eje, árbol, albero, вал, 軸, 轴",
    "housing": "housing, gehäuse, logement, carter, alojamiento, alloggiamento, sede, корпус, "
    "ハウジング, 外壳, 壳体, 座孔",
    "bearing": "bearing, lager, wälzlager, roulement, rodamiento, cuscinetto, подшипник, 軸受, 轴承",
}
_SIDES = {caseless(word): side for side, words in _WORDS.items() for word in words.split(", ")}
_BESIDE = re.compile(
    r"\s*\b(?:side|seat|seats|data|dimensions?|features?|parameters?|seite|daten|maße|sitz|de|del|della|du|dati|datos)\b\s*",
    re.IGNORECASE,
)
#: Sizes of the bearing itself: such a word below a heading of the shaft or housing may mean another size.
_OF_THE_RING = ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer")


@frozen
class Side:
    """A heading of a block: ``shaft``, ``housing`` or ``bearing``, and the word that says so."""

    side: str
    word: str


def side_of(text: str) -> Side | None:
    """The side that a heading of a block names, or None."""
    word = _BESIDE.sub(" ", text).strip(" :.-–—=*#()[]") if 0 < len(text) < 40 else ""
    side = _SIDES.get(caseless(word), "")
    return Side(side, word) if side else None


def within(words: Words, side: Side | None, label: str) -> Heading | None:
    """What a name means below a heading of a block: with the word of the heading before it, or else by itself."""
    alone = words.heading(label)
    if side is None or side.side == "bearing" or (alone is None and words.groups(label)):
        return alone  # a word for a part of a value (nominal, upper) does not say of which size
    for word in (side.word, side.side, f"{side.side} seat"):
        joined = words.heading(f"{word} {label}") if label else None
        if joined is not None and joined.parameter.startswith(side.side):
            return joined
    return None if alone is not None and (alone.parameter in _OF_THE_RING or _other(alone, side)) else alone


def _other(heading: Heading, side: Side) -> bool:
    """Whether a name is one of the other side, which does not belong below this heading."""
    return heading.parameter.startswith({"shaft": "housing_", "housing": "shaft_"}[side.side])


def why(words: Words, side: Side | None, label: str) -> str:
    """Why a name below a heading of a block is not understood, as half a sentence."""
    if side is not None and words.heading(label) is not None:
        return f"below a heading of the {side.side} it is not clear what it means"
    return words.why(label)


def side_above(grid: Grid, row: int) -> Side | None:
    """The side that a heading over a whole table names: one text alone in the row above, or above a blank one."""
    for above in range(row - 1, max(row - 3, -1), -1):
        texts = [text for column in range(grid.width) if (text := grid.text(above, column))]
        if texts:
            return side_of(texts[0]) if len(texts) == 1 else None
    return None
