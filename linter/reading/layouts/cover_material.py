"""The material of an end cover (``端盖材料``): the housing's where no other housing holds the bearing."""

import re

from linter.model.stations import Unused
from linter.reading.files.grids import cell_text, is_blank
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found

_COVER, _HOUSING = re.compile("端[盖蓋]"), re.compile("[轴軸]承座|座孔|[壳殼]体|机座|機座|箱体")
_REASON = "it is of a cover, and the table names a housing of its own"


def leave_cover_material(found: Found, file: str) -> None:
    """List the material of a cover as unused where the table names a housing too."""
    covers = [
        (block, strip)
        for block in found.blocks
        for strip in block.strips
        if strip.parameter == "housing_material" and _COVER.search(strip.label)
    ]
    if not covers:
        return
    labels = {strip.label for block in found.blocks for strip in block.strips}
    if not any(_HOUSING.search(label) and not _COVER.search(label) for label in labels):
        return
    for block, strip in covers:
        block.strips.remove(strip)
        for index, cell in enumerate(strip.cells.tolist()):
            if not is_blank(cell):
                found.leave(Unused(strip.label, visible(cell_text(cell)), strip.place(file, index), _REASON))
