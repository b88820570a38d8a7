"""Units that sentences above or below a table state for a kind of value: roughness, deviations, loads and so on."""

from collections.abc import Iterable
from typing import Any

from attrs import evolve

from linter.model.places import Place
from linter.model.vocabulary import parameter
from linter.reading.files.grids import Grid, is_blank
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.layouts.unit_sentences import kind_units, unit_of_all

#: Rows at the top and at the foot of a grid that are looked at.
_TOP, _FOOT = 60, 20
#: Cells of a row that can hold a sentence beside others.
_MOST_IN_ROW = 4
_NAMES = {"form": "geometrical tolerances without a unit", "rough": "roughness without a unit",
          "deviation": "deviations without a unit", "load": "loads without a unit",
          "mass": "masses without a unit"}  # fmt: skip
#: What the parameters of a kind are stated in, where it is no length.
_OF_UNIT = {"N": "load", "kg": "mass"}
_FORM = ("_cylindricity", "_runout", "_flatness", "_parallelism", "coaxiality_of_bores", "coaxiality_of_shaft_seats")


def give_kind_units(grid: Grid, blocks: Iterable[Block], found: Found) -> None:
    """Give the strips of a sheet's tables that carry no unit the one that the sheet states for their kind."""
    rows = (
        range(grid.height) if grid.height <= _TOP + _FOOT else [*range(_TOP), *range(grid.height - _FOOT, grid.height)]
    )
    said: dict[str, dict[str, Place]] = {}
    for row in rows:
        filled = [(c, cell) for c, cell in enumerate(grid.row(row)) if not is_blank(cell)]
        in_parts = _in_parts([cell for _, cell in filled])
        for column, cell in filled[: None if len(filled) <= _MOST_IN_ROW else 1]:
            alone = len(filled) == 1 or in_parts
            for kind, unit in kind_units(cell, alone=alone).items() if type(cell) is str else ():
                said.setdefault(kind, {})[unit] = grid.place(row, column)
    units = {kind: next(iter(of_kind)) for kind, of_kind in said.items() if len(of_kind) == 1}
    for block in blocks if units else ():
        for index, strip in enumerate(block.strips):
            if strip.unit or strip.own_unit:
                continue
            kind = _kind(strip)
            if kind in units:
                found.say(f"{_NAMES[kind]} in {units[kind]}, as stated at {said[kind][units[kind]].short()}")
                block.strips[index] = evolve(strip, unit=units[kind])


def _kind(strip: Strip) -> str:
    """The kind of value of a strip that sentences state units for; empty where it is of none."""
    entry = parameter(strip.parameter)
    if strip.aspect in ("upper", "lower", "tolerance") and entry.kind == "toleranced":
        return "deviation"
    if strip.parameter.endswith(_FORM):
        return "form"
    return "rough" if strip.parameter.endswith("_roughness") else _OF_UNIT.get(entry.unit, "")


def _in_parts(cells: list[Any]) -> bool:
    """Whether the few cells of a row are one sentence (``Dimensions in mm | deviations in µm``)."""
    texts = [cell for cell in cells if isinstance(cell, str)] if 1 < len(cells) <= _MOST_IN_ROW else []
    kinds, of_all = [kind_units(text) for text in texts], [unit_of_all(text) for text in texts]
    said = [bool(kind or whole) for kind, whole in zip(kinds, of_all, strict=True)]
    return len(texts) == len(cells) > 1 and all(said) and (any(of_all) or any("size" in kind for kind in kinds))
