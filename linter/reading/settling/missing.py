"""Cells that say themselves that there is no value: a dash, TBD, a ditto mark.

Such a cell states its parameter and gives nothing to judge by, which is another thing than an empty cell: somebody
thought of the parameter and left it open. Office practice writes a dash where a design has no such thing (no undercut,
no bore in the shaft, no spring at a rigid pair); there, and there only, it is as good as an empty cell.
"""

from collections.abc import Callable

import numpy as np
from attrs import frozen

from linter.model.stations import Stations, Unused
from linter.model.vocabulary import Parameter
from linter.reading.settling.one_value import Stated
from linter.reading.settling.values import Trouble

_SPRING = ("spring_rate", "spring_free_length", "spring_installed_length", "spring_solid_length")
_UNDERCUTS = {f: tuple(f"{f}_undercut_{part}" for part in ("width", "depth", "radius")) for f in ("shaft", "housing")}

#: Parameters of what a design or a maker's list may lack; a dash is an empty cell as long as none of those beside it is
#: stated (common practice).
MAY_LACK: dict[str, tuple[str, ...]] = {
    **{name: tuple(n for n in _SPRING if n != name) for name in (*_SPRING, "spring_kind", "spring_load_tolerance")},
    **{name: tuple(n for n in group if n != name) for group in _UNDERCUTS.values() for name in group},
    "shaft_undercut_form": (), "housing_undercut_form": (), "shaft_bore": (), "spacer_stack": (), "preload_force": (),
    "rigid_preload_class": (), "rigid_preload_offset": (), "fatigue_load_limit": (), "reference_speed": (),
    "limiting_speed": (), "first_critical_speed": (), "drawing_number": (), "drawing_revision": (),
    "bearing_designation": (), "shaft_sections": (), "rotor_discs": (), "shaft_forces": (),
    "first_bearing_position": (), "radial_stiffness": (), "blade_count": (),
}  # fmt: skip
#: Parameters of which one of two is enough.
_EITHER = {
    "radial_clearance": "clearance_class",
    "clearance_class": "radial_clearance",
    "balance_grade": "residual_unbalance",
    "residual_unbalance": "balance_grade",
}
#: Parameters that only some words of another one ask for.
_WANTED_BY = {
    "free_ring": ("axial_role", ("locating", "cross-located")),
    "contact_angle": ("bearing_type", ("deep groove ball", "cylindrical roller", "needle roller")),
    "seal_lip_diameter": ("closure", ("open", "shield", "non-contact seal")),
}


@frozen
class Missing:
    """One cell that says that there is no value, with the row of stations it speaks for (None: of none)."""

    entry: Parameter
    stated: Stated
    trouble: Trouble
    row: int | None


def may_lack(stations: Stations, name: str, row: int) -> bool:
    """Whether a design may lack a parameter at one station, so that a dash is as good as an empty cell."""
    if name in MAY_LACK:
        return not any(bool(stations.known(other)[row]) for other in MAY_LACK[name])
    if name in _EITHER:
        return bool(stations.known(_EITHER[name])[row])
    if name in _WANTED_BY:
        other, without = _WANTED_BY[name]
        return bool(stations.choice(other).is_in(*without)[row])
    return False


def tell_missing(
    cells: list[Missing],
    stations: Stations,
    leave: Callable[[Missing, str], None],
    tell: Callable[[Missing, str], None],
) -> None:
    """Say of each cell that it counts as empty (``leave``), or that it states its parameter without a value (``tell``).

    A cell counts as empty where the design may lack the parameter, where another cell states it, and where a dash
    stands for the tolerance of a size that has none.
    """
    known: dict[str, np.ndarray] = {}
    for cell in cells:
        name, is_value = cell.entry.name, cell.stated.strip.aspect == "value"
        if name not in known:
            known[name] = stations.known(name)
        is_dash = cell.trouble.code == "not-applicable"
        if (
            cell.row is None
            or (is_value and known[name][cell.row])
            or (is_dash and not is_value)
            or (is_dash and may_lack(stations, name, cell.row))
        ):
            leave(cell, cell.trouble.sentence)
        else:
            tell(cell, f"“{cell.trouble.read}” {cell.trouble.sentence}; {name} is stated and cannot be used")


def unused(cell: Missing, file: str, reason: str) -> Unused:
    """The entry of a cell that counts as empty."""
    strip = cell.stated.strip
    return Unused(strip.label or cell.entry.name, cell.trouble.read, strip.place(file, cell.trouble.index), reason)
