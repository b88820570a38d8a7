"""Which tables one call reviews: those named, those in folders named, and what is passed over there."""

import json
import os
import re
import stat
import zipfile
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

from attrs import field, frozen

from linter.model.places import shown

TABLE_SUFFIXES = (".xlsx", ".xlsm", ".csv", ".tsv", ".txt", ".json", ".qif", ".xml")
#: Tables of kinds that are not read: one of them in a folder means that the folder was not reviewed as a whole.
UNREAD_SUFFIXES = (
    ".xls", ".xlsb", ".xlt", ".ods", ".fods", ".ots", ".numbers", ".wk1", ".wks", ".dbf", ".parquet",
    ".gz", ".zip", ".bz2", ".xz", ".zst", ".7z", ".rar", ".tar",
)  # fmt: skip
_LARGEST_LOOKED_AT = 64_000_000
_OWN_JSON = re.compile(rb'"format": ?"ringseat-[a-z]+"')
_RESULT = "a result of this program"
_OWN_TEXT = ((re.compile(rb"<\?xml[^>]*>\s*<testsuites name=\"ringseat: "), "a JUnit report of this program"),)
#: A document that begins so is a JSON schema or names the one that it follows.
_NAMES_SCHEMA = re.compile(rb'\{\s*"(?:\$schema|\$id)":')
_OF_SCHEMAS = frozenset(
    ("properties", "patternProperties", "additionalProperties", "$defs", "definitions", "allOf", "anyOf", "oneOf")
)


@frozen
class Passed:
    """An entry of a folder that is no table to review, and why."""

    path: Path
    reason: str


@frozen
class Tables:
    """Tables of one call, each once and in a stable order.

    Attributes
    ----------
    found : list of Path
        What is reviewed.
    complaints : list of str
        Why something asked for cannot be reviewed; any of them makes the exit status 2.
    passed : list of Passed
        What was seen in a folder and is no table.
    """

    found: list[Path] = field(factory=list)
    complaints: list[str] = field(factory=list)
    passed: list[Passed] = field(factory=list)


def find_tables(paths: Iterable[Path]) -> Tables:
    """Tables named, and those in folders named.

    Parameters
    ----------
    paths : iterable of Path
        Files and folders. Links to folders are not followed.

    Returns
    -------
    Tables
        A file of its own is taken as a table whatever it is called, but for a result of this program: what was assumed
        would count as stated. One in a folder is taken by the ending of its name, unless its content shows that this
        program wrote it.
    """
    tables = Tables()
    seen: dict[Path, None] = {}
    for path in paths:
        if path.is_dir():
            before = len(seen), len(tables.complaints)
            for entry in _entries(path):
                _sort_in(entry, seen, tables)
            if (len(seen), len(tables.complaints)) == before:
                tables.complaints.append(f"{shown(path)}: the folder has no table ({', '.join(TABLE_SUFFIXES)})")
        elif wrong := _wrong_kind(path) or _result(path):
            tables.complaints.append(f"{shown(path)}: {wrong}")
        else:
            seen[path] = None
    tables.found.extend(sorted(seen))
    return tables


def _entries(folder: Path) -> Iterator[Path]:
    """Everything below a folder in a stable order; hidden folders and links to folders stand for what is in them."""
    for entry in sorted(folder.iterdir()):
        if entry.is_dir() and not entry.is_symlink() and not entry.name.startswith("."):
            yield from _entries(entry)
        else:
            yield entry


def _sort_in(path: Path, seen: dict[Path, None], tables: Tables) -> None:
    suffix = path.suffix.lower()
    if path.is_dir():
        reason = "a link to a folder, which is not followed" if path.is_symlink() else "a hidden folder"
    elif path.name.startswith("."):
        reason = "a hidden file"
    elif path.name.startswith("~$"):
        reason = "a lock file of an open workbook"
    elif suffix in UNREAD_SUFFIXES:
        tables.complaints.append(f"{shown(path)}: a table of a kind that is not read; save it as xlsx or CSV")
        return
    elif suffix not in TABLE_SUFFIXES:
        reason = "not a kind of table that is read"
    elif wrong := _wrong_kind(path):
        tables.complaints.append(f"{shown(path)}: {wrong}")
        return
    else:
        reason = _own(path)
        if not reason:
            seen[path] = None
            return
    tables.passed.append(Passed(path, reason))


def _wrong_kind(path: Path) -> str:
    """Why a path cannot be opened as a file; nothing is opened to find out."""
    try:
        mode = path.stat().st_mode
    except OSError as error:
        if path.is_symlink():
            return "the link leads nowhere"
        missing = isinstance(error, FileNotFoundError)
        return "there is no such file or folder" if missing else f"cannot be looked at ({error.strerror})"
    if stat.S_ISREG(mode):
        return ""
    kinds = ((stat.S_ISFIFO, "a pipe"), (stat.S_ISSOCK, "a socket"), (stat.S_ISDIR, "a folder"))
    what = next((word for test, word in kinds if test(mode)), "a device")
    return f"is {what}, not a file"


def _result(path: Path) -> str:
    """Why a file that this program wrote is no table: it is a result; empty for a workbook that it marked up."""
    own = _own(path)
    return f"is {own}, not a table" if own == _RESULT else ""


def _own(path: Path) -> str:
    """What a file is that this program wrote, by its content; empty for any other."""
    try:
        if path.stat().st_size > _LARGEST_LOOKED_AT:
            return ""
        data = path.read_bytes()
    except OSError:
        return ""
    if data[:2] == b"PK":
        return "a marked workbook of this program" if _is_marked_workbook(path) else ""
    for beginning, what in _OWN_TEXT:
        if beginning.match(data.lstrip(b"\xef\xbb\xbf \r\n")):
            return what
    if _NAMES_SCHEMA.match(data.lstrip(b"\xef\xbb\xbf \r\n")) and _is_schema(data):
        return "a JSON schema"
    if path.suffix.lower() == ".json" and _OWN_JSON.search(data):
        try:
            content = json.loads(data)
        except (ValueError, RecursionError):
            return ""
        named = str(content.get("format", "")) if isinstance(content, dict) else ""
        return _RESULT if named.startswith("ringseat-") else ""
    return ""


def _is_schema(data: bytes) -> bool:
    """Whether JSON is a schema itself, by its keys, and no document that names the schema that it follows."""
    try:
        content = json.loads(data)
    except (ValueError, RecursionError):
        return False
    named = str(content.get("$schema", ""))
    holds = any(isinstance(value, (dict, list)) for value in content.values())
    return "json-schema.org" in named or not _OF_SCHEMAS.isdisjoint(content) or not holds


def _is_marked_workbook(path: Path) -> bool:
    try:
        with zipfile.ZipFile(path) as archive:
            member = archive.getinfo("docProps/core.xml")
            return member.file_size < 100_000 and b"<dc:title>ringseat findings</dc:title>" in archive.read(member)
    except (OSError, ValueError, KeyError, zipfile.BadZipFile, NotImplementedError, RuntimeError):
        return False


def passed_lines(passed: Sequence[Passed]) -> list[str]:
    """What was passed over in words: one line for each folder and reason."""
    groups: dict[tuple[Path, str], list[str]] = {}
    for entry in passed:
        groups.setdefault((entry.path.parent, entry.reason), []).append(entry.path.name)
    return [
        f"{shown(folder)}: skipped: {', '.join(names)}: {reason}" for (folder, reason), names in sorted(groups.items())
    ]


def report_names(tables: Sequence[Path]) -> dict[Path, str]:
    """Report name of each table, no two the same on any file system.

    It is the table's stem; where two tables share one, the path below the folder they share, in one word; and with a
    number behind it where even that is taken. ``index`` stays free for the page over all tables.
    """
    stems: dict[str, list[Path]] = {}
    for table in sorted(tables):
        stems.setdefault(table.stem.casefold(), []).append(table)
    wanted = {}
    for stem, group in stems.items():
        whole = {table: Path(os.path.abspath(table)) for table in group}
        shared = Path(os.path.commonpath([path.parent for path in whole.values()]))
        for table, path in whole.items():
            alone = len(group) == 1 and stem != "index"
            wanted[table] = table.stem if alone else "-".join(path.relative_to(shared).parts)
    names: dict[Path, str] = {}
    taken = {"index"}
    for table in sorted(wanted):
        name, number = wanted[table], 1
        while name.casefold() in taken:
            number += 1
            name = f"{wanted[table]}-{number}"
        taken.add(name.casefold())
        names[table] = name
    return names
