"""What a workbook says of its sheets and of its cell styles.

Both stand in two small parts of XML, which are read here where they are spelt as the usual programs spell them: to open
a workbook by openpyxl takes longer than all the rest of reading one table. Whatever is out of the ordinary is left to
openpyxl, which reads it or says in its own words what is wrong.
"""

import re
import zipfile
from typing import Any

from attrs import frozen

_MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
_RELATION = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"
_SHEET = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet"
_NEEDED = ("[Content_Types].xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels")
_STYLES = "xl/styles.xml"
_STATES = ("visible", "hidden", "veryHidden")
_TRUTHS = {"1": True, "true": True, "0": False, "false": False}

#: Number formats that every workbook has without stating them, by number: ISO/IEC 29500-1:2016, 18.8.30 (from memory).
BUILT_IN_FORMATS = {
    0: "General", 1: "0", 2: "0.00", 3: "#,##0", 4: "#,##0.00",
    5: '"$"#,##0_);("$"#,##0)', 6: '"$"#,##0_);[Red]("$"#,##0)',
    7: '"$"#,##0.00_);("$"#,##0.00)', 8: '"$"#,##0.00_);[Red]("$"#,##0.00)',
    9: "0%", 10: "0.00%", 11: "0.00E+00", 12: "# ?/?", 13: "# ??/??",
    14: "mm-dd-yy", 15: "d-mmm-yy", 16: "d-mmm", 17: "mmm-yy", 18: "h:mm AM/PM", 19: "h:mm:ss AM/PM", 20: "h:mm",
    21: "h:mm:ss", 22: "m/d/yy h:mm",
    37: "#,##0_);(#,##0)", 38: "#,##0_);[Red](#,##0)", 39: "#,##0.00_);(#,##0.00)", 40: "#,##0.00_);[Red](#,##0.00)",
    41: r'_(* #,##0_);_(* \(#,##0\);_(* "-"_);_(@_)', 42: r'_("$"* #,##0_);_("$"* \(#,##0\);_("$"* "-"_);_(@_)',
    43: r'_(* #,##0.00_);_(* \(#,##0.00\);_(* "-"??_);_(@_)',
    44: r'_("$"* #,##0.00_)_("$"* \(#,##0.00\)_("$"* "-"??_)_(@_)',
    45: "mm:ss", 46: "[h]:mm:ss", 47: "mmss.0", 48: "##0.0E+0", 49: "@",
}  # fmt: skip
#: Formats from this number on are stated in the workbook.
FIRST_STATED = 164

#: What stands in a format as text or names a colour, a currency or a condition; hours, minutes and seconds that go
#: beyond a day stand in brackets as well and stay.
_NO_SHAPE = re.compile(r'".*?"|\[(?!hh?\]|mm?\]|ss?\])[^\]]*\]')
_DATE_LETTER = re.compile(r"(?<![_\\])[dmhysDMHYS]")


@frozen
class Sheet:
    """A sheet of a workbook: its title, its state (``visible``, ``hidden``, ``veryHidden``) and its part."""

    title: str
    state: str
    part: str


@frozen
class Look:
    """How one cell style shows a cell: its number format, struck out, on a colour."""

    shape: str = ""
    struck: bool = False
    filled: bool = False


class _Odd(Exception):
    """Something that is left to openpyxl."""


def is_date(shape: str) -> bool:
    """Whether a number format shows a date or a time."""
    return _DATE_LETTER.search(_NO_SHAPE.sub("", shape.split(";")[0])) is not None


def plain_book(archive: zipfile.ZipFile) -> tuple[list[Sheet], list[Look]] | None:
    """Sheets and cell styles of a workbook that is spelt as usual; None for any other."""
    try:
        names = set(archive.namelist())
        if not names.issuperset(_NEEDED):
            return None
        return _sheets(archive, names), _looks(archive) if _STYLES in names else []
    except (_Odd, ValueError, IndexError, KeyError, SyntaxError, zipfile.BadZipFile):
        return None


def looks_of(book: Any) -> list[Look]:
    """Cell styles of a workbook that openpyxl has opened."""
    found = []
    for traits in book._cell_styles:
        shape = BUILT_IN_FORMATS.get(traits.numFmtId, "")
        if traits.numFmtId >= FIRST_STATED:
            shape = book._number_formats[traits.numFmtId - FIRST_STATED]
        font, fill = book._fonts[traits.fontId], book._fills[traits.fillId]
        struck, filled = font is not None and font.strike, fill is not None and fill.fill_type == "solid"
        found.append(Look(shape or "", bool(struck), bool(filled)))
    return found


def _root(archive: zipfile.ZipFile, part: str) -> Any:
    from defusedxml.ElementTree import fromstring

    return fromstring(archive.read(part), forbid_dtd=True)


def _sheets(archive: zipfile.ZipFile, names: set[str]) -> list[Sheet]:
    relations = {}
    for node in _root(archive, "xl/_rels/workbook.xml.rels"):
        target = node.attrib["Target"]
        part = target[1:] if target.startswith("/") else f"xl/{target}"
        relations[node.attrib["Id"]] = (node.attrib["Type"], part)
    root = _root(archive, "xl/workbook.xml")
    if root.tag != f"{_MAIN}workbook":
        raise _Odd
    sheets = []
    for node in root.findall(f"{_MAIN}sheets/{_MAIN}sheet"):
        kind, part = relations[node.attrib[_RELATION]]
        sheet = Sheet(node.attrib["name"], node.get("state", "visible"), part)
        if kind != _SHEET or part not in names or sheet.state not in _STATES:
            raise _Odd
        sheets.append(sheet)
    if not sheets or len({sheet.title.casefold() for sheet in sheets}) < len(sheets):
        raise _Odd
    return sheets


def _looks(archive: zipfile.ZipFile) -> list[Look]:
    root = _root(archive, _STYLES)
    if root.tag != f"{_MAIN}styleSheet":
        raise _Odd
    stated = {
        int(node.attrib["numFmtId"]): node.attrib["formatCode"]
        for node in root.findall(f"{_MAIN}numFmts/{_MAIN}numFmt")
    }
    struck = [_is_struck(font) for font in root.findall(f"{_MAIN}fonts/{_MAIN}font")]
    filled = [_is_solid(fill) for fill in root.findall(f"{_MAIN}fills/{_MAIN}fill")]
    looks = []
    for node in root.findall(f"{_MAIN}cellXfs/{_MAIN}xf"):
        number, font, fill = (int(node.get(name, "0")) for name in ("numFmtId", "fontId", "fillId"))
        if (number >= FIRST_STATED and number not in stated) or min(number, font, fill) < 0:
            raise _Odd
        shape = stated.get(number, BUILT_IN_FORMATS.get(number, ""))
        looks.append(Look(shape, struck[font], filled[fill]))
    return looks


def _is_struck(font: Any) -> bool:
    strike = font.find(f"{_MAIN}strike")
    return strike is not None and _TRUTHS[strike.get("val", "1")]


def _is_solid(fill: Any) -> bool:
    pattern = fill.find(f"{_MAIN}patternFill")
    return pattern is not None and pattern.get("patternType") == "solid"
