"""Cells of a designation that name more than one bearing: ``6305-2RS / 6304-2RS``."""

import re

from linter.reading.words.designations import read_designation

_BETWEEN = re.compile(r"\s+/\s+|\s*[;\n|]\s*|\s+(?:and|und|et|y|e|и|&|\+)\s+|/(?=\d{4})|\s*[／、]\s*")


def several_bearings(text: str) -> tuple[str, ...]:
    """The different designations in a cell that holds nothing else; none where it holds one only.

    Parameters
    ----------
    text : str
        The cell.

    Returns
    -------
    tuple of str
        Two of them or more, else empty.
    """
    pieces = [piece.strip() for piece in _BETWEEN.split(text)] if any(map(str.isdigit, text)) else []
    known = len(pieces) > 1 and all(piece and read_designation(piece).derived for piece in pieces)
    return tuple(pieces) if known and len({piece.casefold() for piece in pieces}) > 1 else ()
