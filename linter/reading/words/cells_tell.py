"""Headings that say too little, over cells that leave one meaning: ``Life``, *40 000 h*; ``Housing``, *AlSi10Mg*.

Every word of the heading is one of the trade, and every cell is a value of one kind that only one parameter has.
"""

import re
from collections.abc import Callable, Sequence

from attrs import frozen

from linter.reading.cells.choices import read_choice
from linter.reading.cells.springs import of_oil, of_spring
from linter.reading.words.parts import concepts_said, part_alone

_HOURS = re.compile(
    r"[>≥~]?\s*\d[\d.,'’ \u00a0\u202f]{2,}\s*"
    r"(?:h|hrs?\.?|hours?|Std\.?|Stunden|heures?|ore|horas?|ч\.?|час\w*|小时|時間)",
    re.IGNORECASE,
)
_GRADE = re.compile(r"(?:ISO\s*(?:1940|21940)\S*\s*)?G\s*\d{1,4}(?:[.,]\d)?(?!\d).*")
#: Words of a life that is worked out, reached or left, and not asked for.
_OTHER_LIFE = re.compile(
    r"(?i)calcul|computed|achiev|result|predict|remaining|warrant|berechn|rechner|erreich|vorhanden|verbleib|gew[äa]hrl"
    r"|garant|atteint|obten|restante|alcanz|calcol|ottenut|raggiunt|residu|достигн|остат|гарант|計算|算出|残り|残存|保証"
    r"|расч[её]тн\w* ресурс l10|计算结果|计算寿命|剩余|保修"
)
#: Figures of three digits; as degrees Celsius none of a bearing in use (common practice: 220 degC and more).
_KELVINS = re.compile(r"(?:2[2-9]|[34]\d)\d(?:[.,]\d{1,3})?")


def are_kelvins(label: str, cells: Sequence[str]) -> bool:
    """Whether the letter K behind a name is no station: its cells are temperatures in kelvins and in no other unit."""
    return label.endswith("K") and bool(cells) and all(_KELVINS.fullmatch(cell.strip()) for cell in cells)


def _is(name: str, cell: str) -> bool:
    return isinstance(read_choice(name, cell), str)


#: The name of a grease below the word for one: words, maybe with figures among them, and no amount or share.
_GREASE = re.compile(r"(?!(?:no|nein|non|нет|none|keine?|ohne|sans|sin|senza|oil|öl)\b)[^\W\d_]{2}[^%]*", re.IGNORECASE)
_OF_OIL = frozenset(("kind", "bearing", "designation", "name", "operating"))


@frozen
class _Told:
    parameter: str
    says: frozenset[str]
    may_say: frozenset[str]
    cell: Callable[[str], bool]


_TOLD = (
    _Told(
        "required_life",
        frozenset(("life",)),
        frozenset(("bearing", "required", "rating", "smallest", "operating", "basic", "time", "duty")),
        lambda cell: _HOURS.fullmatch(cell) is not None,
    ),
    _Told(
        "balance_grade",
        frozenset(("balance",)),
        frozenset(("rotor", "quality", "class", "dynamic")),
        lambda cell: _GRADE.fullmatch(cell) is not None,
    ),
    _Told(
        "shaft_orientation",
        frozenset(("axis", "orientation")),
        frozenset(("shaft", "rotor", "machine", "installed", "place", "axis", "orientation")),
        lambda cell: _is("shaft_orientation", cell),
    ),
    _Told(
        "spring_kind",
        frozenset(("spring",)),
        frozenset(("preload", "spring", "axial", "kind")),
        lambda cell: _is("spring_kind", cell) or "spring_kind" in of_spring("spring_kind", cell),
    ),
    _Told("lubrication", frozenset(("oil",)), _OF_OIL, lambda cell: "lubrication" in of_oil("lubrication", cell)),
    _Told("base_oil_viscosity_40", frozenset(("oil",)), _OF_OIL, lambda cell: bool(of_oil("lubrication", cell))),
    _Told("lubrication", frozenset(("grease",)), _OF_OIL, lambda cell: _GREASE.fullmatch(cell) is not None),
)


def parameter_told(label: str, cells: Sequence[str]) -> str:
    """The parameter that a heading and its cells together mean; empty where they leave it open."""
    said = concepts_said(label) if cells and len(label) <= 60 and not _OTHER_LIFE.search(label) else frozenset()
    for told in _TOLD:
        if said & told.says and said <= told.says | told.may_say and all(map(told.cell, cells)):
            return told.parameter
    part = part_alone(label) if cells else ""
    name = f"{part}_material"
    return name if part and all(_is(name, cell) and any(map(str.isalpha, cell)) for cell in cells) else ""
