"""Columns of classes and choices whose heading is no name that is known: cells and one word of the trade tell them.

``Internal clearance`` over *C3*, ``Class of the bearing`` over *P5*, ``Mode of operation`` over *intermittent*: every
cell is a word of one choice, and the heading holds a word of what that choice is of. A number that a heading may also
mean (a clearance in micrometres) is none of them.
"""

import re
from collections.abc import Sequence

from attrs import frozen

from linter.reading.cells.choices import read_choice
from linter.reading.cells.several import of_undercut
from linter.reading.cells.signs import ReadError
from linter.reading.words.parts import concepts_said

_FORM = re.compile(r"(?:DIN ?509 ?[-–—]? ?)?(?:Form ?)?[EF]")
_GRADE = re.compile(r"(?:ISO ?\d+(?:-\d+)? ?[:,]? ?)?[GQ] ?\d{1,3}(?:[.,]\d+)?(?: ?mm/s)?")
_CAMEL = re.compile(r"(?<=[^\W\d_A-Z])(?=[A-Z])")


@frozen
class _Coded:
    parameter: str
    said: frozenset[str]
    cells: re.Pattern[str]


#: Concepts of which a heading says one, and cells that are no other parameter's (ISO 5753-1, ISO 492; ABEC of ABMA 20).
_CODED = (
    _Coded("clearance_class", frozenset({"clearance"}), re.compile(r"(?:C[0-6N]|CM)\b.*|normal|группа.*", re.I)),
    _Coded(
        "tolerance_class",
        frozenset({"class", "precision", "tolerance", "quality"}),
        re.compile(r"(?:P[02456]|P4A|ABEC[- ]?[1-9])(?:\W.*|级|級)?|(?:JIS ?)?[02456] ?[级級]", re.I),
    ),
    _Coded(
        "duty",
        frozenset({"operating", "load", "running", "duty", "kind"}),
        re.compile(r"[^\W\d]{4,}.*|[^\x00-\x7f]{2,}|S[1-9](?:\W.*)?", re.I),
    ),
    _Coded(
        "shaft_orientation",
        frozenset({"axis", "shaft", "orientation", "rotor", "mounting"}),
        re.compile(r"[^\W\d]{2,}.*"),
    ),
    _Coded("closure", frozenset({"closure"}), re.compile(r".*")),
    _Coded("ball_material", frozenset({"ball", "element"}), re.compile(r"[^\W\d_].*")),
    _Coded("spring_kind", frozenset({"spring"}), re.compile(r"[^\W\d_]{2,}.*")),
    _Coded("preload_method", frozenset({"preload"}), re.compile(r"[^\W\d_]{2,}.*")),
    _Coded("rigid_preload_class", frozenset({"preload"}), re.compile(r"[^\W\d_]+.*")),
    _Coded("lubrication", frozenset({"grease", "oil", "lubricant"}), re.compile(r"[^\W\d_].*")),
)


#: Concepts beside which a word of the choice is of another thing.
_OTHERS = {
    "shaft_orientation": frozenset({"load", "force", "radial", "axial", "runout", "seat", "direction", "closure"}),
    "tolerance_class": frozenset({"shaft", "housing", "seat"}),
    "ball_material": frozenset({"cage", "shaft", "housing", "seat", "closure", "oil", "lubricant"}),
    "lubrication": frozenset({"fill", "regreasing", "closure", "interval"}),
}


#: Answers below a heading that is a choice itself (``C3?``, ``hybrid``): that it is so, and that it is not.
YES = frozenset(("y", "yes", "ja", "j", "oui", "sí", "si", "sì", "да", "是", "有", "はい", "○", "x", "✓", "✔"))
_NO = frozenset(("n", "no", "nein", "non", "нет", "否", "无", "なし", "-", "–", "—"))
#: Choices whose words are those of no other thing, so that one alone may head a column.
_HEADING = ("clearance_class", "closure")


def choice_of_heading(parameter: str, label: str) -> str:
    """The choice that a heading itself is (``C3?``), which a yes below it states; or empty."""
    said = read_choice(parameter, label.strip(" ?？:"))
    return said if isinstance(said, str) else ""


def choice_said(label: str, cells: Sequence[str]) -> str:
    """The choice that a column states, by its cells and one word of its heading; or empty."""
    if cells and all(cell.strip().casefold() in YES | _NO for cell in cells):
        return next((name for name in _HEADING if choice_of_heading(name, label)), "")
    said: frozenset[str] | None = None
    for coded in _CODED:
        if not all(coded.cells.fullmatch(cell) and _is_choice(coded.parameter, cell) for cell in cells):
            continue
        said = concepts_said(_CAMEL.sub(" ", label)) if said is None else said
        if said & coded.said and not said & _OTHERS.get(coded.parameter, frozenset()):
            return coded.parameter
    return _undercut(concepts_said(label), cells)


def _is_choice(name: str, cell: str) -> bool:
    """Whether a cell is a word of a choice; balls of ceramic are said to be so though it is open of which."""
    read = read_choice(name, cell)
    return read.code == "ambiguous-choice" and name == "ball_material" if isinstance(read, ReadError) else True


def _undercut(said: frozenset[str], cells: Sequence[str]) -> str:
    """The form of an undercut, where a heading says whose it is and every cell is a form (``Freistich Welle``: *F*)."""
    parts = said & {"shaft", "housing"} if "undercut" in said and cells else frozenset()
    name = f"{next(iter(parts))}_undercut_form" if len(parts) == 1 else ""
    return name if name and all(isinstance(read_choice(name, cell), str) for cell in cells) else ""


def code_said(label: str, cells: Sequence[str]) -> str:
    """A balance grade (``G 2.5``, ISO 21940-11) or an undercut (``F0,6x0,3``, DIN 509) that all cells are; or empty."""
    said = concepts_said(label)
    if "balance" in said and all(map(_GRADE.fullmatch, cells)):
        return "balance_grade"
    of_part = bool(said & {"shaft", "housing", "bore"})
    if "undercut" in said and all(of_undercut(cell) or (of_part and _FORM.fullmatch(cell)) for cell in cells):
        return "housing_undercut_form" if said & {"housing", "bore"} else "shaft_undercut_form"
    return ""
