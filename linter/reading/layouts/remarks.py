"""What a remark beside a value says more of it: the clearance of the bearing named there, the deviations of a size.

``6308-2Z | clearance C3``, ``60 | N | ±5``: a remark is read where it is nothing else than that, and where the value
beside it says nothing of it itself.
"""

import re
from collections.abc import Iterator, Sequence

from attrs import evolve

from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import fold
from linter.reading.files.grids import is_blank
from linter.reading.layouts.long_table import LongTable
from linter.reading.layouts.title import pair_in_cell
from linter.reading.words.bearing_tables import balls_said
from linter.reading.words.headings import Heading, Words
from linter.reading.words.parts import concepts_said

_LONGEST, _LONGEST_HEAD = 40, 30
_LETTERS, _MOST_NAMES = re.compile("[A-Z]{1,2}"), 200
#: Codes of ISO 5753-1 and ISO 492 (from memory), with what the words beside them speak of.
_CODES = {
    "clearance_class": (re.compile(r"(?<![A-Za-z0-9])(?:C[2-5N]|CM)(?![A-Za-z0-9])"), "clearance"),
    "tolerance_class": (re.compile(r"(?<![A-Za-z0-9])P(?:[2456]|4A)(?![A-Za-z0-9])"), "precision"),
}
_MAY_SAY = {"inside", "internal", "precision", "class", "bearing", "radial", "tolerance", "quality", "kind"}
#: Words that a remark is of both positions or of all of them (common practice).
_BOTH = frozenset(
    ("both", "each", "all", "beide", "beides", "beidseitig", "je", "jeweils", "alle", "tous", "toutes", "les", "deux",
     "chaque", "chacun", "ambos", "ambas", "los", "dos", "todos", "cada", "entrambi", "entrambe", "tutti", "ciascuno",
     "оба", "обе", "все", "каждый", "両方", "両方とも", "両側", "共に",
     "とも", "两个", "两端", "两者", "均", "均为", "全部", "都")
)  # fmt: skip
_SMALL = _BOTH | {"with", "mit", "avec", "con", "с", "de", "di", "der", "du", "in", "en"}
_WORD = re.compile(r"[^\W\d_]+")
#: Deviations alone: ``±5``, ``+0.1/-0.2``, ``0 / -0,03``.
_ONE = r"(?:[+\-−]\s*\d*[.,]?\d+|0)"
_DEVIATIONS = re.compile(rf"±\s*\d*[.,]?\d+|(?=.*[+\-−]){_ONE}\s*[/;…\s]\s*{_ONE}")
_PLAIN = re.compile(r"[Ø⌀φø]?\s*\d*[.,]?\d+")

#: A force with what stands before it (``Vorspannung ca. 45 N``), of no rate and no moment.
_FORCE = re.compile(
    r"(?P<word>[^\d,;/()（）、。]{2,40}?)[ :=≈~]*(?P<force>\d+(?:[.,]\d+)?\s*(?:[kк]?[NН]))"
    r"(?![\w/.·*]*\w|/| *m(?:ax|in))"
)
_LEFT_OUT = re.compile(
    r"(?:^| )(?:ca|about|approx|circa|env|etwa|of|de|von|di|mit|with|avec|con|à|a|около|прибл)\.?(?= |$)"
)


def preload_remarked(text: str, words: Words) -> str:
    """The preload force that a remark states with its word (``précharge 45 N``); empty for none, several or limits."""
    found: list[str] = []
    if "±" in text:
        return ""
    for said in _FORCE.finditer(text):
        word = _LEFT_OUT.sub("", said["word"].casefold()).strip(" .+-–")
        heading = words.heading(word) if word else None
        if (
            heading is not None
            and heading.parameter == "preload_force"
            and heading.aspect == "value"
            and not heading.version
        ):
            found.append(said["force"])
    return found[0] if len(found) == 1 else ""


def said_beside(
    table: LongTable, row: int, column: int, heading: Heading, words: Words
) -> Iterator[tuple[Heading, int, str]]:
    """What the remarks of a row say of the value in a column of it, each with its column and the part that says it."""
    filled = [c for c in range(table.grid.width) if _filled(table, row, c)]
    if heading == Heading("drawing_number"):
        yield from _revision(table, row, [c for c in filled if c > column], words)
        return
    of_bearing = heading.parameter == "bearing_designation"  # which has no unit
    if not {"UPPER", "LOWER", "CLASS"} & {table.roles.get(c) for c in filled}:
        for at in filled:
            remark = table.roles.get(at, "NOTE")
            if table.name < at != column and (remark == "NOTE" or (of_bearing and remark == "UNIT")):
                yield from _said(table.grid.text(row, at), table.grid.text(row, column), heading, at)


def _revision(table: LongTable, row: int, columns: Sequence[int], words: Words) -> Iterator[tuple[Heading, int, str]]:
    """The revision of a drawing that stands with its word behind the number (``rev. 3``), below a unit's word too.

    A letter alone right behind the number is it where no other row states one.
    """
    names = (table.grid.text(at, table.name) for at in range(min(table.grid.height, _MOST_NAMES)))
    if columns and _LETTERS.fullmatch(text := table.grid.text(row, columns[0])):
        if not any(words.heading(name) == Heading("drawing_revision") for name in names if name):
            yield Heading("drawing_revision"), columns[0], text
        return
    for column in columns:
        label, value = pair_in_cell(table.grid.text(row, column), words)
        remark = table.roles.get(column, "NOTE") in ("NOTE", "UNIT")
        if remark and value and words.heading(label) == Heading("drawing_revision"):
            yield Heading("drawing_revision"), column, value
            return


def _filled(table: LongTable, row: int, column: int) -> bool:
    return not is_blank(table.grid.columns[column][row])


def _said(text: str, value: str, heading: Heading, at: int) -> Iterator[tuple[Heading, int, str]]:
    """What one remark says of a value."""
    text = text.strip()
    if heading.aspect != "value" or len(text) > _LONGEST:
        return
    if heading.parameter == "bearing_designation":
        for name in _CODES:
            if code := class_remarked(name, text):
                yield Heading(name, heading.station), at, code
        balls = {said.reads for word in _WORD.findall(text) if (said := balls_said(word.upper()))}
        for name, material in balls.pop() if len(balls) == 1 and not re.search(r"\d", text) else ():
            yield Heading(name, heading.station), at, material
    elif heading.entry.kind == "toleranced" and _PLAIN.fullmatch(value.strip()) and _DEVIATIONS.fullmatch(text):
        yield evolve(heading, aspect="tolerance"), at, text


def speed_remarked(table: LongTable, row: int, label: str, heading: Heading | None, words: Words) -> Heading | None:
    """The highest speed where a remark in its row says that a speed is that (``n_design``, *max continuous speed*).

    Behind a name that says more of the speed than that it is one, the word for the highest alone does not.
    """
    if heading is None or (heading.parameter, heading.aspect) != ("speed_operating", "value") or heading.own_unit:
        return heading
    plain = concepts_said(label) <= {"speed", "count"}
    remarks = [c for c in range(table.name + 1, table.grid.width) if table.roles.get(c, "NOTE") == "NOTE"]
    texts = [text for c in remarks if (text := table.grid.text(row, c)) and not any(map(str.isdigit, text))]
    said = [named.parameter == "speed_max" for text in texts if (named := words.heading(text)) is not None]
    if all(said) and (said or (plain and any(words.groups(text) == ("MAX",) for text in texts))):
        return evolve(heading, parameter="speed_max")
    return heading


def class_remarked(name: str, text: str) -> str:
    """The code of a class that a remark is, alone or with words for what it is of (``jeu C3``); or empty."""
    pattern, concept = _CODES[name]
    codes = pattern.findall(fold(text))
    if len(codes) != 1 or not isinstance(read_choice(name, codes[0]), str):
        return ""
    words = _WORD.findall(pattern.sub(" ", fold(text)))
    said = [concepts_said(word) for word in words if word.casefold() not in _SMALL]
    known = all(concept in concepts or (concepts and concepts <= _MAY_SAY) for concepts in said)
    plain = not re.search(r"\d", pattern.sub(" ", fold(text)))
    return codes[0] if plain and known and (not said or any(concept in concepts for concepts in said)) else ""


def says_both(text: str) -> bool:
    """Whether a remark says that it is of both positions (``both C3``)."""
    return any(word.casefold() in _BOTH for word in _WORD.findall(fold(text)))


def heads_remarks(text: str, words: Words) -> bool:
    """Whether a text is a word for remarks, maybe with others that say nothing (``my notes``)."""
    if "NOTE" in words.groups(text):
        return True
    pieces = text.split() if len(text) <= _LONGEST_HEAD else []
    several = 1 < len(pieces) < 4 and not words.groups(text) and words.heading(text) is None
    return several and any("NOTE" in words.groups(piece) for piece in pieces) and not concepts_said(text)
