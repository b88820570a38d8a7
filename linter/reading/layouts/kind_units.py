"""Units that a sentence above or below a table states for geometrical tolerances, roughness and deviations.

``Quote in mm; tolleranze geometriche in µm; rugosità in µm``: the first clause is the unit of sizes
(:func:`linter.reading.layouts.title.units_said`), the others are read here. The words are those of ISO 1101, ISO 286-1
and ISO 21920-1 in eight languages, from memory, and common practice.
"""

import re
from collections.abc import Iterable
from functools import cache

from attrs import evolve

from linter.model.places import Place
from linter.model.vocabulary import parameter
from linter.reading.cells.signs import caseless
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.strips import Block, Found

#: Rows at the top and at the foot of a grid that are looked at.
_TOP, _FOOT = 60, 20
#: Cells of a row that can hold a sentence beside others.
_MOST_IN_ROW = 4
_NAMES = {"form": "geometrical tolerances without a unit", "rough": "roughness without a unit",
          "deviation": "deviations without a unit"}  # fmt: skip
_CLAUSE = re.compile(r"[;；、|。()\[\]]|[.,，] |[.,]$")
_SAID = re.compile(
    r"(?P<words>[^\d:：=]*?[^\W\d])\s*(?:(?:all|alle|toutes|tutti|tutte|todas|todos|все)\s)?"
    r"(?:(?:are|is|sind|sont|sono|son|given|stated|angegeben|indiqués|indicate|indicadas|указаны)\s+)*"
    r"(?:[:：=]|\b(?:in|en|в)\b|の?単位は?|的?单位为?|は|\s)\s*[:：=]?\s*[\[(]?(?P<unit>[^\W\d]{1,12}|[^\W\d]*[µμ″\"]\w*)[\])]?"
)
_WORDS = {
    "form": (
        "geometrical tolerances|geometric tolerances|geometrical tolerance|form tolerances|"
        "form and position tolerances|tolerances of form|tolerances of form and position|"
        "form and run-out tolerances|form and runout|runouts|run-outs|run-out|runout|form|form and location|"
        "form and position|gd&t|gps|cylindricity and run-out|cylindricity and runout|run-out tolerances|"
        "runout tolerances|form errors|form deviations|form- und lagetoleranzen|formtoleranzen|"
        "lauftoleranzen|lagetoleranzen|form und lage|form und lauf|form- und lauftoleranzen|"
        "geometrische toleranzen|formabweichungen|rundlauf|lauf|planlauf|rundlaufabweichungen|"
        "tolérances géométriques|tolérances de forme|tolérances de forme et de position|battements|battement|"
        "défauts de forme|forme et position|tolleranze geometriche|tolleranze di forma|oscillazioni|"
        "errori di forma|tolleranze di forma e posizione|forma e posizione|tolerancias geométricas|"
        "tolerancias de forma|oscilaciones|alabeos|tolerancias de forma y posición|forma y posición|幾何公差|"
        "形状公差|振れ|振れ公差|形状・位置公差|几何公差|形位公差|形状公差|跳动|跳动公差|形状和位置公差|"
        "допуски формы|допуски формы и расположения|"
        "отклонения формы|биения|биение|геометрические допуски|допуски формы и биения|"
        "отклонения формы и расположения"
    ),
    "rough": (
        "roughness|surface roughness|ra|roughness ra|surface finish|rauheit|rauheiten|oberflächenrauheit|"
        "rauheit ra|oberflächen|rugosité|rugosités|rugosité ra|états de surface|état de surface|rugosità|"
        "rugosità ra|finitura superficiale|rugosidad|rugosidades|rugosidad ra|acabado superficial|粗さ|表面粗さ|"
        "面粗さ|面粗度|粗糙度|表面粗糙度|шероховатость|шероховатость ra|шероховатость поверхности|"
        "шероховатость поверхностей"
    ),
    "deviation": (
        "deviations|limit deviations|deviation|size deviations|abmaße|abmasse|grenzabmaße|abweichungen|"
        "écarts|écarts limites|scostamenti|scostamenti limite|desviaciones|許容差|寸法許容差|偏差|极限偏差|отклонения|"
        "предельные отклонения|отклонения размеров"
    ),
    "tolerance": (
        "tolerances|tolerance|toleranzen|toleranz|tolérances|tolérance|tolleranze|tolleranza|tolerancias|"
        "tolerancia|公差|允差|допуски|допуск"
    ),
}  # fmt: skip
_FORM = ("_cylindricity", "_runout", "_flatness", "_parallelism", "coaxiality_of_bores", "coaxiality_of_shaft_seats")


@cache
def _kinds() -> dict[str, str]:
    return {caseless(word): kind for kind, words in _WORDS.items() for word in words.split("|")}


def kind_units(text: str, *, alone: bool = True) -> dict[str, str]:
    """Unit of length by the kind of value that a sentence states it for: ``form``, ``rough``, ``deviation``.

    A word for tolerances alone speaks of deviations and of geometrical tolerances both. A text that is not ``alone`` in
    its row is a sentence only with several clauses: ``Rundlauf in µm`` is a heading.
    """
    found: dict[str, set[str]] = {}
    clauses = [clause.strip(" *:") for clause in _CLAUSE.split(text)] if 5 <= len(text) <= 200 else []
    for clause in clauses if alone or len([*filter(None, clauses)]) > 1 else ():
        said = _SAID.fullmatch(clause)
        kind = _kinds().get(caseless(said["words"])) if said else None
        unit = known_unit(said["unit"]) if said and kind else None
        if said and kind and unit is not None and unit.dimension == "length":
            for one in ("deviation", "form") if kind == "tolerance" else (kind,):
                found.setdefault(one, set()).add(said["unit"])
    return {kind: units.pop() for kind, units in found.items() if len(units) == 1}


def give_kind_units(grid: Grid, blocks: Iterable[Block], found: Found) -> None:
    """Give the strips of a sheet's tables that carry no unit the one that the sheet states for their kind."""
    rows = (
        range(grid.height) if grid.height <= _TOP + _FOOT else [*range(_TOP), *range(grid.height - _FOOT, grid.height)]
    )
    said: dict[str, dict[str, Place]] = {}
    for row in rows:
        filled = [(c, cell) for c, cell in enumerate(grid.row(row)) if not is_blank(cell)]
        for column, cell in filled if len(filled) <= _MOST_IN_ROW else ():
            for kind, unit in kind_units(cell, alone=len(filled) == 1).items() if type(cell) is str else ():
                said.setdefault(kind, {})[unit] = grid.place(row, column)
    units = {kind: next(iter(of_kind)) for kind, of_kind in said.items() if len(of_kind) == 1}
    for block in blocks if units else ():
        for index, strip in enumerate(block.strips):
            if strip.unit or strip.own_unit:
                continue
            if strip.aspect in ("upper", "lower", "tolerance") and parameter(strip.parameter).kind == "toleranced":
                kind = "deviation"
            else:
                kind = "form" if strip.parameter.endswith(_FORM) else "rough"
                if kind == "rough" and not strip.parameter.endswith("_roughness"):
                    continue
            if kind in units:
                found.say(f"{_NAMES[kind]} in {units[kind]}, as stated at {said[kind][units[kind]].short()}")
                block.strips[index] = evolve(strip, unit=units[kind])
