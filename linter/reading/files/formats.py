"""Texts of drawing and model formats that are no tables, told by how they begin."""

import re

# First lines as the formats define them, from memory: IGES has an S in column 73 of its first records, DXF begins with
# the group code 0 and the word SECTION, STEP (ISO 10303-21) may have comments before its keyword.
_BEGINNINGS = (
    (re.compile(rb"(?:/\*.{0,500}?\*/\s*)+ISO-10303-21;", re.DOTALL), "a STEP exchange file (ISO 10303-21)"),
    (re.compile(rb"[^\r\n]{72}S[ \d]{6}\d\s"), "an IGES model"),
    (re.compile(rb"(?:\s*999\r?\n[^\r\n]*\r?\n)*\s*0\s*\r?\n\s*SECTION\s*\r?\n"), "a DXF drawing"),
    (re.compile(rb"solid[^\r\n]*\r?\n\s*facet\s+normal"), "an STL mesh"),
    (re.compile(rb"DMISMN\s*/"), "a DMIS measuring program (ISO 22093)"),
    (re.compile(rb"%!PS"), "a PostScript document"),
    (re.compile(rb"\{\\rtf"), "a formatted text document (RTF)"),
)


def other_format(data: bytes) -> str:
    """Name of the format that a text file begins like, empty for none that is known.

    Parameters
    ----------
    data : bytes
        The file; its first 2000 bytes are looked at.

    Returns
    -------
    str
        A name in words for a message.
    """
    start = data[:2000].removeprefix(b"\xef\xbb\xbf").lstrip(b"\r\n")
    return next((name for beginning, name in _BEGINNINGS if beginning.match(start)), "")
