"""A rated speed beside no other: the one the machine runs at or its highest one, so that it is asked about."""

import re

from linter.model.stations import Unused
from linter.reading.files.grids import cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found, Strip

_RATED = re.compile(r"(?i)rated|nominal|nenn|номинальн|定格|额定|額定")
_REASON = "a rated speed may be the highest one, and none stands beside it that is"


def leave_rated_speed(found: Found, file: str) -> None:
    """List rated speeds as unused in a file that states no highest one."""
    strips = [strip for block in found.blocks for strip in block.strips]
    if not any(strip.parameter == "speed_operating" and _RATED.search(strip.label) for strip in strips):
        return
    if any(strip.parameter == "speed_max" and _states(strip) for strip in strips):
        return
    for block in found.blocks:
        for strip in [s for s in block.strips if s.parameter == "speed_operating" and _RATED.search(s.label)]:
            block.strips.remove(strip)
            for index, cell in enumerate(strip.cells.tolist()):
                if not is_blank(cell):
                    found.leave(Unused(strip.label, visible(cell_text(cell)), strip.place(file, index), _REASON))


def _states(strip: Strip) -> bool:
    return any(not is_blank(cell) for cell in strip.cells.tolist())
