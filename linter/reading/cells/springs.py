"""What a text says of a spring or an oil beside its own choice: ``los, Wellfeder``, ``oil, VG 32``.

A class of viscosity is the kinematic viscosity at 40 °C in mm²/s (ISO 3448, from memory).
"""

import re
from collections.abc import Iterable
from functools import lru_cache

from linter.model.vocabulary import parameter
from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import LONGEST_TEXT, missing_state
from linter.reading.cells.units import MOST_REMEMBERED, known_unit

#: Signs and words between what a cell says of a spring.
_APART = re.compile(
    r"[;,，、；:：+/()（）@]|で|时|時"
    r"|(?<![^\W\d_])(?:at|by|bei|auf|à|sous|a|con|with|mit|durch|über|avec|par|mediante|при|с)(?![^\W\d_])"
)
_QUANTITY = re.compile(
    r"(?P<at>\b(?:at|bei|auf|à|a|при|L ?=) ?|@ ?)?(?:[FL] ?= ?)?(?<![\d.,±–…~-])(?<![±–…~-] )"
    r"(?P<number>\d+(?:[.,]\d+)?(?: ?(?:±|\+/-) ?\d+(?:[.,]\d+)?)?) ?"
    r"(?P<unit>N|daN|kN|lbf|kgf|Н|mm|мм|in)(?![A-Za-zА-я])(?P<then>で|时|時)?"
)
_VISCOSITY = re.compile(r"[\s,;:(/-]*\b(?:ISO[ -]?)?VG[ -]?(?P<class>\d{1,4})\)?(?!\d)")
_DIMENSIONS = {"force": "preload_force", "length": "spring_installed_length"}

#: Parameter and text that a cell says beside its own.
Said = dict[str, str]


def of_oil(name: str, text: str) -> Said:
    """The class of viscosity that a text states, and the text without it."""
    found = _VISCOSITY.search(text) if len(text) <= LONGEST_TEXT else None
    if found is None:
        return {}
    if name != "lubrication":
        return {name: f"{found['class']} mm²/s"}
    rest = f"{text[: found.start()]}{text[found.end() :]}".strip(" ,;:(/-")
    plain = _choice(name, rest)
    return {"base_oil_viscosity_40": f"{found['class']} mm²/s"} | ({name: rest} if plain else {})


@lru_cache(maxsize=MOST_REMEMBERED)
def of_spring(name: str, text: str) -> Said:
    """What a text states of a spring, and its own value where that stands among it; empty where a piece is unknown."""
    if not 1 < len(text) <= LONGEST_TEXT:
        return {}
    said: Said = {}
    for found in _QUANTITY.finditer(text):
        unit = known_unit(found["unit"])
        stated = _DIMENSIONS.get(unit.dimension if unit is not None else "", "")
        if stated and (stated == "preload_force" or found["at"] or found["then"]):
            said[stated] = "" if stated in said else f"{found['number']} {found['unit']}"  # two: neither is taken
    roles: set[str] = set()
    whole = bool(_choice("spring_kind", text))  # ``molle a tazza``: the word between is of the name
    for piece in [text] if whole else filter(None, map(str.strip, _APART.split(_QUANTITY.sub(" ; ", text)))):
        if _choice("spring_kind", piece):
            said["spring_kind"] = piece
        elif own := _choice(name, piece):
            roles.add(own)
    if "spring_kind" not in said or (name == "preload_force" and not said.get(name)):
        return {}
    return {stated: value for stated, value in said.items() if value} | _own(name, text, roles)


def _own(name: str, text: str, roles: set[str]) -> Said:
    """The value of the parameter itself in a text that names a spring."""
    if name == "spring_kind" or _choice(name, text):
        return {}
    if name in ("preload_method", "preload_force"):
        return {"preload_method": "spring"}
    return {name: "spring-loaded"} if roles <= {"floating", "spring-loaded"} else {}


def says_method(text: str) -> bool:
    """Whether a text without a figure says how bearings are preloaded: the way, or the kind of spring that does it."""
    if not text.strip() or any(map(str.isdigit, text)):
        return False
    return bool(_choice("preload_method", text) or "spring_kind" in of_spring("preload_method", text))


def method_by_cells(name: str, cells: Iterable[str]) -> str:
    """``preload_method`` for a preload whose cells say the way instead of the force (``Preload``: *wave spring*)."""
    texts = [cell for cell in cells if cell.strip() and (not missing_state(cell) or says_method(cell))]
    return "preload_method" if name == "preload_force" and texts and all(map(says_method, texts)) else name


def _choice(name: str, text: str) -> str:
    """The word of the vocabulary that a text stands for; empty for none, and for a parameter that is no choice."""
    if parameter(name).kind != "choice":
        return ""
    found = read_choice(name, text)
    return found if isinstance(found, str) and found in parameter(name).choices else ""
