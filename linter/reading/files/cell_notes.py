"""Cell notes of a workbook: their texts, listed so that nothing a drawing office wrote there is lost.

A note is never read as a value. Names of authors are left in the file.
"""

import posixpath
import zipfile
from io import BytesIO
from typing import Any

from linter.model.places import Place
from linter.model.stations import Unused
from linter.reading.files.intake import Source, visible

LARGEST_PART = 4 * 2**20
MOST_NOTES = 2_000
LONGEST_NOTE = 1_000
_REASON = "a cell note is not read as a value; what holds must stand in a cell"


def read_cell_notes(source: Source, parts: dict[str, str]) -> tuple[list[Unused], list[str]]:
    """Texts of the notes of every sheet.

    Parameters
    ----------
    source : Source
        The workbook, which has passed the checks of its archive.
    parts : dict of str to str
        Archive member of each sheet by its name.

    Returns
    -------
    list of Unused
        One entry for each note, with its cell.
    list of str
        What was left out: notes beyond the number that is listed, and parts that are too large or damaged.
    """
    found: list[Unused] = []
    said: list[str] = []
    read: dict[str, list[tuple[str, str]]] = {}  # several sheets may point at one part
    with zipfile.ZipFile(BytesIO(source.data)) as archive:
        members = {member.filename: member for member in archive.infolist()}
        for sheet, member in parts.items():
            for part in _parts_of(archive, members, member):
                if members[part].file_size > LARGEST_PART:
                    said.append(f"the notes of sheet {visible(sheet)} are larger than 4 MiB; they are not listed")
                    continue
                try:
                    notes = read[part] if part in read else _texts(archive.read(part))
                    read[part] = notes
                except Exception:  # whatever a damaged part raises, the table itself can still be read
                    said.append(f"the notes of sheet {visible(sheet)} are damaged; they are not listed")
                    continue
                if not notes:
                    continue
                more = len(found) + len(notes) - MOST_NOTES
                if more > 0:
                    said.append(f"sheet {visible(sheet)}: {more} more cell notes are not listed")
                    notes = notes[: max(MOST_NOTES - len(found), 0)]
                for cell, text in notes:
                    place = Place(source.file, sheet, cell)
                    found.append(Unused("cell note", visible(text, LONGEST_NOTE), place, _REASON))
    return found, said


def _parts_of(archive: zipfile.ZipFile, members: dict[str, Any], sheet: str) -> list[str]:
    """Members that hold the notes of a sheet, by its relations."""
    from defusedxml.ElementTree import fromstring

    folder, name = posixpath.split(sheet)
    relations = f"{folder}/_rels/{name}.rels"
    if relations not in members or members[relations].file_size > LARGEST_PART:
        return []
    try:
        nodes = list(fromstring(archive.read(relations), forbid_dtd=True))
    except Exception:  # damaged relations: the sheet is read without them
        return []
    found = []
    for node in nodes:
        if node.get("Type", "").endswith("/comments"):
            target = node.get("Target", "")
            part = target.lstrip("/") if target.startswith("/") else posixpath.normpath(f"{folder}/{target}")
            if part in members:
                found.append(part)
    return found


def _texts(part: bytes) -> list[tuple[str, str]]:
    """Cell and text of each note of a part."""
    from defusedxml.ElementTree import fromstring

    notes = []
    for node in fromstring(part, forbid_dtd=True).iter():
        if node.tag.rpartition("}")[2] == "comment":
            pieces = [piece.text or "" for piece in node.iter() if piece.tag.rpartition("}")[2] == "t"]
            text = " ".join("".join(pieces).split())
            if text:
                notes.append((visible(node.get("ref", ""), 12), text))
    return notes
