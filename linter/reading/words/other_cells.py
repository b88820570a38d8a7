"""Columns whose heading says a position or a designation, and whose cells all say another thing."""

import re
from collections.abc import Sequence

from linter.reading.cells.choices import read_choice
from linter.reading.words.designations import designation_strength
from linter.reading.words.headings import Heading

#: A number of an old national system of designations; no machine has a position of so high a number.
_LONG_NUMBER = re.compile(r"[1-9]\d{4,6}(?: ?[^\W\d]{1,2}\d?)?")
_SHORTEST_ROLE = 4
#: Bearings in pairs and sets (makers' catalogues, from memory), in letters and in the words of eight languages.
_ARRANGED = re.compile(
    r"(?:(?:D[BFT]|[TQ][BFT][TC]?|QUAD|[<>]{2,4}|[OX0])(?:[ -]?(?:arrangement|Anordnung|disposition|配列|配置))?"
    r"|back[ -]to[ -]back|face[ -]to[ -]face|tandem|single|double|paired|matched pair|set of [2-5]|[2-5] ?[x×] ?single"
    r"|(?:[OXT]|Tandem|Einzel)-?Anordnung|paarweise|einzeln|dos à dos|face à face|en (?:O|X|tandem)|espalda con espalda"
    r"|cara a cara|dorso a dorso|faccia a faccia|背面組合せ|正面組合せ|並列組合せ|背对背|面对面|串联"
    r"|(?:по )?схем[аеы] [ОХT]|тандем)",
    re.IGNORECASE,
)


def no_station(is_bearing: bool, heading: Heading, cells: Sequence[str]) -> Heading | None:
    """What a column is whose heading may name stations and whose cells all say another thing; else None."""
    if are_roles(cells):
        return Heading("axial_role")
    if is_bearing and _are_numbers(cells):
        return Heading("bearing_designation", heading.station)  # Bearing: 80206
    oriented = all(len(cell) > 1 and isinstance(read_choice("shaft_orientation", cell), str) for cell in cells)
    return Heading("shaft_orientation") if oriented else None  # Position: horizontal


def _are_numbers(cells: Sequence[str]) -> bool:
    """Whether cells are numbers of bearings, some of them in no table of sizes (``22216 E`` beside ``6214``)."""
    long = [cell for cell in cells if _LONG_NUMBER.fullmatch(cell)]
    return bool(long) and all(cell in long or designation_strength(cell) != "no" for cell in cells)


def no_designation(heading: Heading, cells: Sequence[str]) -> Heading | None:
    """What a column is whose heading may name designations and whose cells all say another thing; else None."""
    for name in ("bearing_type", "axial_role"):
        if all(len(cell) >= _SHORTEST_ROLE and isinstance(read_choice(name, cell), str) for cell in cells):
            return Heading(name, heading.station)  # Type de palier: fixe
    return None


def are_arrangements(cells: Sequence[str]) -> bool:
    """Whether cells all say how bearings are set beside each other (``DB``, ``TBT``, *tandem*), and name no machine."""
    return all(_ARRANGED.fullmatch(cell.strip()) for cell in cells)


def are_roles(cells: Sequence[str]) -> bool:
    """Whether cells, of which some differ, all say how the bearing is located (``Location``: ``floating``)."""
    if len(cells) < 2 or any(len(cell) < _SHORTEST_ROLE and cell.isascii() for cell in cells):
        return False
    roles = {read_choice("axial_role", cell) for cell in cells}
    return len(roles) > 1 and all(isinstance(role, str) for role in roles)


def is_role(text: str) -> bool:
    """Whether a text says how a bearing is located (``Festlager``), which names its position too."""
    return len(text) >= _SHORTEST_ROLE and isinstance(read_choice("axial_role", text), str)
