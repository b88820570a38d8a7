"""Roughness without a unit below a title that states the unit of sizes."""

import re

from attrs import evolve

from linter.model.stations import Problem
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found, Strip

_BARE = re.compile(r"(?:Ra\s*)?\d*[.,]?\d+")
#: Ra of turned, ground and lapped faces in µm (common practice; ISO 21920-3 tabulates 0.025 to 50).
_LEAST, _MOST = 0.01, 25.0


def by_custom(strip: Strip, length_unit: str, found: Found, file: str) -> Strip:
    """The strip with µm as its unit, where drawings state roughness so by custom; that is told as an assumption.

    A title ``all dimensions in mm`` speaks of sizes: a roughness beside it is in µm (ISO 21920-1, common practice).
    Below a title in inches it may be in µin, which is asked for.
    """
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
        f"{place}: {visible(strip.label, 60)} stands without a unit below a title in {visible(length_unit, 20)}; "
        f"µm is taken, as drawings have it by custom; expected {expected}."
    )
    found.problems.append(
        Problem("assumption", None, strip.parameter, place, visible(texts[0]), expected, message, "roughness-unit")
    )
    return evolve(strip, unit="µm")
