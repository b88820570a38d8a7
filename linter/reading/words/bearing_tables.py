"""Tables behind the reading of designations: sizes, signs before and behind the number, numbers that are refused.

Every table is ``data/designation_*.csv``, each row with its source; the keys are in ``designation_sources.csv``.
"""

import csv
import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from types import MappingProxyType

from attrs import frozen

from linter.reading.cells.signs import caseless

_DATA = Path(__file__).resolve().parent / "data"
BALL, ANGULAR, ROLLER = "deep groove ball", "angular contact ball", "cylindrical roller"


@frozen
class Size:
    """One row of the table of sizes; lengths in mm."""

    basic: str
    type: str
    bore: float
    outside: float
    width: float
    closed_width: float | None
    chamfer: float | None
    basis: str


@frozen
class Sign:
    """One row of the signs behind the number.

    Attributes
    ----------
    sign, group : str
        The sign, and the group of signs that it belongs to.
    types, series : frozenset, tuple of str
        Bearing types and first digits of the numbers that it stands behind; empty for all.
    joins : frozenset of str
        Groups that it may be written behind without a joint (``any``: all); empty where only a joint may precede it.
    first : bool
        Whether it means this only as the first sign behind the number.
    reads : tuple of (str, str)
        Parameters and values that it states.
    says : str
        What is to be reported of it; empty where it is read in full.
    asks : bool
        Whether the designation cannot be used without asking.
    source : str
        Where it is printed.
    """

    sign: str
    group: str
    types: frozenset[str]
    series: tuple[str, ...]
    joins: frozenset[str]
    first: bool
    reads: tuple[tuple[str, str], ...]
    says: str
    asks: bool
    source: str


@frozen
class Prefix:
    """One row of the signs in front of the number; no types where it stands before every type."""

    sign: str
    types: frozenset[str]
    reads: tuple[tuple[str, str], ...]
    says: str
    source: str


def rows(table: str) -> list[dict[str, str]]:
    """Rows of ``data/designation_<table>.csv``, each a dictionary of texts."""
    with (_DATA / f"designation_{table}.csv").open(encoding="utf-8", newline="") as stream:
        heading, *cells = csv.reader(stream)
    return [dict(zip(heading, row, strict=True)) for row in cells]


@cache
def designation_sources() -> Mapping[str, str]:
    """Documents behind the keys of the ``source`` columns."""
    return MappingProxyType({row["key"]: row["document"] for row in rows("sources")})


def number(text: str) -> float | None:
    """Cell of a table as a number; None where it is empty."""
    return float(text) if text else None


@cache
def size_table() -> dict[str, Size]:
    """Sizes by basic number."""

    def size(row: dict[str, str]) -> Size:
        how = {"read": "printed", "derived": "printed under the other form of the number", "memory": "from memory"}
        return Size(
            row["basic"], row["type"], float(row["bore_mm"]), float(row["outside_diameter_mm"]), float(row["width_mm"]),
            number(row["closed_width_mm"]), number(row["rs_min_mm"]),
            f"sizes of {row['basic']}, {how[row['provenance']]}: {row['source']}",
        )  # fmt: skip

    sizes = {row["basic"]: size(row) for row in rows("sizes")}
    for basic, row in list(sizes.items()):
        # NF is printed less and less; the dimension series gives one size to every cylindrical roller bearing (ISO 15)
        if basic.startswith("N") and basic[1].isdigit():
            sizes["NF" + basic[1:]] = Size(
                "NF" + basic[1:], row.type, row.bore, row.outside, row.width, None, row.chamfer,
                f"one size per dimension series and bore (ISO 15), {row.basis}",
            )  # fmt: skip
    return sizes


@cache
def series() -> frozenset[str]:
    """Series of the numbers that end in a bore code of two digits."""
    return frozenset(basic[:-2] for basic in size_table() if basic.isdigit() and len(basic) > 3)


def _reads(text: str) -> tuple[tuple[str, str], ...]:
    """Parameters and values that a sign states, from ``closure=shield|...``."""
    return tuple((part.partition("=")[0], part.partition("=")[2]) for part in text.split("|") if part)


def _types(text: str) -> frozenset[str]:
    return frozenset(filter(None, text.split("|")))


@cache
def sign_table() -> dict[str, tuple[Sign, ...]]:
    """Signs behind the number by sign; one sign may mean something else on another type or in another place."""
    signs: dict[str, list[Sign]] = {}
    for row in rows("suffixes"):
        signs.setdefault(row["sign"], []).append(
            Sign(
                row["sign"], row["group"], _types(row["types"]), tuple(row["series"].split()),
                frozenset(row["joins"].split()), bool(row["first"]), _reads(row["reads"]), row["says"],
                bool(row["asks"]), row["source"],
            )
        )  # fmt: skip
    return {sign: tuple(rows) for sign, rows in signs.items()}


def balls_said(sign: str) -> Sign | None:
    """The row of a word that says of what the balls are, wherever it stands (``Hybrid 7006``); None for others."""
    return next((row for row in sign_table().get(sign, ()) if row.group == "material" and row.reads), None)


@cache
def prefix_table() -> dict[str, Prefix]:
    """Signs in front of the number by sign."""
    return {
        row["sign"]: Prefix(row["sign"], _types(row["types"]), _reads(row["reads"]), row["says"], row["source"])
        for row in rows("prefixes")
    }


@cache
def _refusals() -> list[tuple[re.Pattern[str], str]]:
    return [(re.compile(row["pattern"]), f"{row['why']} ({row['source']})") for row in rows("refusals")]


def refusal_of(number: str) -> str | None:
    """What a number is that gives no size here, with the source; None where no rule speaks of it."""
    return next((why for pattern, why in _refusals() if pattern.fullmatch(number)), None)


@cache
def _words() -> frozenset[str]:
    return frozenset(caseless(row["word"]) for row in rows("words"))


def is_word(chunk: str) -> bool:
    """Whether a part of the text is a word of parts lists that says nothing about the bearing."""
    return caseless(chunk) in _words()


#: Signs of a footnote, and how many are wanted, behind a designation; quotes around it.
_NOTE_BEHIND = re.compile(r"(?<=[\w)\]])(?: ?[*†‡]{1,3}\)?| ?[¹²³⁴⁵]{1,2}[)⁾]?| \([1-9]\)|(?<!\([A-Z]{4}) [1-9]\))$")
_COUNT_BEHIND = re.compile(
    r"[ ,]+(?:\(\s*(?:[1-9]\d? ?(?:off|pcs?\.?|pieces?|ea\.?|stk\.?|st\.|stück|pièces?"
    r"|pzas?\.?|pezzi|pz\.?|uds?\.?|шт\.?|個|个|件)"
    r"|[1-9]\d? ?[x×]|[x×] ?[1-9]\d?|qty\.?:? ?[1-9]\d?)\s*\)"
    r"|[1-9]\d? ?(?:off|pcs\.?|stk\.?|stück|шт\.?))$",
    re.IGNORECASE,
)
_QUOTED = re.compile(r"([\"'“„«])(.*[^\"'”“»])[\"'”“»]")
_MOST_AROUND = 3


def without_marks(text: str) -> str:
    """A designation without quotes around it and the sign of a footnote or a number of pieces behind it."""
    for _ in range(_MOST_AROUND):
        quoted = _QUOTED.fullmatch(text)
        plain = _COUNT_BEHIND.sub("", _NOTE_BEHIND.sub("", quoted[2] if quoted else text)).strip()
        if plain == text or not any(map(str.isdigit, plain)):
            break
        text = plain
    return text


def without_words(text: str) -> str:
    """A designation without the words for a bearing before it (``Deep groove ball bearing 6203-2Z``); else the text."""
    pieces = text.split()
    first = next((k for k, piece in enumerate(pieces) if any(map(str.isdigit, piece))), 0)
    words = [word for piece in pieces[:first] for word in re.split(r"[^\w]+", piece.casefold()) if word]
    return " ".join(pieces[first:]) if words and all(map(is_word, words)) else text
