"""Roughness without a unit in a table that states the unit of its sizes."""

import re

from attrs import evolve

from linter.model.stations import Problem
from linter.model.vocabulary import parameter
from linter.reading.cells.fit_classes import ANY_CLASS
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.words.boundary import DIMENSIONS

#: A size with a class of ISO 286, which speaks of millimetres, or with its unit.
_IN_MM = re.compile(r"\s*[Ø⌀øφΦϕ∅Ф]?\s*\d[\d.,]*\s*(?:JS|js|[D-Hd-hJKMNPRjkmnpr])(?:[3-9]|1[0-2])(?!\d)|.*\d ?mm$")
_MOST_CLASSES = 2000
_BARE = re.compile(r"(?:Ra\s*)?\d*[.,]?\d+")
#: Ra of turned, ground and lapped faces in µm (common practice; ISO 21920-3 tabulates 0.025 to 50).
_LEAST, _MOST = 0.01, 25.0


def by_custom(found: Found, file: str) -> None:
    """Give µm to roughness without a unit, where drawings state it so by custom; that is told as an assumption.

    A title ``all dimensions in mm`` speaks of sizes, and so do units beside them: a roughness without one is in µm
    (ISO 21920-1, common practice). In a table in inches it may be in µin, which is asked for.
    """
    for block in found.blocks:
        unit = block.length_unit or _unit_of_sizes(block)
        block.strips[:] = [_in_microns(strip, unit, found, file) for strip in block.strips]


def _unit_of_sizes(block: Block) -> str:
    """The unit of every size of a seat in a block, where they all state the same or none and a class; else empty."""
    toleranced = [s for s in block.strips if _is_size(s)]
    sizes = [s for s in toleranced if s.aspect == "value"] or [s for s in toleranced if s.aspect in ("min", "max")]
    units = {strip.unit for strip in sizes or [s for s in block.strips if s.parameter in DIMENSIONS]}
    if units == {""} and any(map(_has_classes, toleranced)):
        return "mm"
    if (
        sizes
        and units == {""}
        and all(_IN_MM.match(cell_text(c)) for s in sizes for c in s.cells.tolist() if cell_text(c))
    ):
        return "mm"  # an ISO 286 class speaks of millimetres
    stated = units - {""}  # some sizes may carry none
    return stated.pop() if len(stated) == 1 else ""


def _is_size(strip: Strip) -> bool:
    """Whether a strip is of a length that carries a tolerance; a preload does so too and is none."""
    entry = parameter(strip.parameter)
    return entry.kind == "toleranced" and entry.unit == "mm"


def _has_classes(strip: Strip) -> bool:
    """Whether a column states nothing but ISO 286 classes."""
    texts = [text for cell in strip.cells[:_MOST_CLASSES].tolist() if (text := cell_text(cell))]
    return strip.aspect == "tolerance" and bool(texts) and all(map(ANY_CLASS.fullmatch, texts))


def _in_microns(strip: Strip, length_unit: str, found: Found, file: str) -> Strip:
    """The strip, in µm where it is a roughness without a unit and its numbers are usual ones."""
    stated = known_unit(length_unit)
    metric = stated is not None and stated.name in ("mm", "cm", "m")
    if not metric or strip.unit or strip.own_unit or not strip.parameter.endswith("_roughness") or not len(strip.cells):
        return strip
    texts = [text for cell in strip.cells.tolist() if (text := cell_text(cell))]
    bare = [float(text.lower().removeprefix("ra").strip().replace(",", ".")) for text in texts if _BARE.fullmatch(text)]
    if not texts or len(bare) < len(texts) or not all(_LEAST <= value <= _MOST for value in bare):
        return strip
    first = next(index for index, cell in enumerate(strip.cells.tolist()) if cell_text(cell))
    place, expected = strip.place(file, first), "a roughness with its unit"
    message = (
        f"{place}: {visible(strip.label, 60)} stands without a unit where sizes are in {visible(length_unit, 20)}; "
        f"µm is taken, as drawings have it by custom; expected {expected}."
    )
    found.problems.append(
        Problem("assumption", None, strip.parameter, place, visible(texts[0]), expected, message, "roughness-unit")
    )
    return evolve(strip, unit="µm")
