"""A size whose object states nominal or class under keys that are not known (``{"Fit dia.": 30, "ISO": "k5"}``)."""

import re
from collections.abc import Mapping
from typing import Any

from linter.reading.cells.fit_classes import CLASS_ONLY
from linter.reading.files.grids import cell_text
from linter.reading.layouts.json_keys import bare
from linter.reading.layouts.json_shapes import Shape
from linter.reading.words.headings import Heading
from linter.reading.words.nominal_columns import are_nominals
from linter.reading.words.part_evidence import FITS, PARTS
from linter.reading.words.parts import concepts_said

#: What a key of a class may say, and classes that grades of roughness and of bearings look like.
_OF_CLASS = frozenset(("tolerance", "class", "fit", "kind"))
_OTHER_GRADES = re.compile(r"[NP]\d+")


def beside_size(node: Mapping[str, Any], heading: Heading, shape: Shape) -> dict[str, str]:
    """What keys that are not known state of a size.

    Parameters
    ----------
    node : mapping of str to Any
        The object of a seat or another size.
    heading : Heading
        The size.
    shape : Shape
        What the keys of such objects state.

    Returns
    -------
    dict of str to str
        ``value`` for a number that is the nominal of two limits, rounded as nominals are (the middle of the limits
        would stand in for it); ``tolerance`` for the one class of the sort of the part beside a size.
    """
    cells = {key: cell_text(cell).strip() for key, cell in node.items() if not isinstance(cell, (dict, list, bool))}
    said = {key: shape.aspect_of(key)[0] for key in cells}
    if heading.entry.kind != "toleranced" or not any(said.values()):
        return {}
    found = _nominal(cells, said)
    part = heading.parameter.partition("_")[0]
    if part in PARTS and not any(aspect == "tolerance" and key not in found for key, aspect in said.items()):
        open_ = [key for key, text in cells.items() if not said[key] and FITS[part].fullmatch(text)]
        classes = [key for key in open_ if _is_class(key, cells[key])]
        found |= {classes[0]: "tolerance"} if len(classes) == 1 else {}
    return found


def _nominal(cells: Mapping[str, str], said: Mapping[str, str]) -> dict[str, str]:
    """The one number that is the nominal of two limits beside it, where no key says that; its key may say a fit."""
    limits = [[cells[key] for key in said if said[key] == want] for want in ("min", "max")]
    if [len(one) for one in limits] != [1, 1] or "value" in said.values():
        return {}
    may_be = [key for key in cells if said[key] in ("", "tolerance") and are_nominals([cells[key]], *limits)]
    return {may_be[0]: "value"} if len(may_be) == 1 else {}


def _is_class(key: str, text: str) -> bool:
    """Whether a cell is a class and its key says that or nothing: no grade of a surface or a bearing."""
    said = concepts_said(bare(key))
    sure = said & {"tolerance", "fit"} or not _OTHER_GRADES.match(text)
    return CLASS_ONLY.fullmatch(text) is not None and said <= _OF_CLASS and bool(sure)
