"""Opening a file safely: what it is by its content, how large it is, and whether it may be parsed at all.

Nothing here understands a table. A file that is refused raises :class:`InputError` with one line that says what was
read and what was expected.
"""

import hashlib
import os
import re
import stat
import zipfile
from io import BytesIO
from pathlib import Path
from typing import Literal

from attrs import field, frozen

FileKind = Literal["workbook", "json", "xml", "text"]

READABLE = "a workbook (.xlsx, .xlsm), delimited text (CSV) or JSON"

LARGEST_FILE = 64 * 2**20
LARGEST_MEMBER = 100 * 2**20
LARGEST_ARCHIVE = 160 * 2**20
MOST_MEMBERS = 1000
LARGEST_RATIO = 200
RATIO_APPLIES_ABOVE = 2**20
#: Tags of cells in one part, every other tag, and attributes beside those of cells and rows: each becomes an object of
#: several hundred bytes in a parser, while it takes four bytes of a file.
MOST_CELL_TAGS = 8_000_000
MOST_OTHER_TAGS = 250_000
MOST_ROWS_OF_TAGS = 50_000
MOST_ATTRIBUTES = 500_000
#: Longest tag, comment or text between tags, in bytes: a parser that is fed piece by piece begins a long one anew with
#: every piece. A cell of 32 767 characters takes less, however it is written.
LONGEST_TOKEN = 2**18
#: Parts that are never parsed, and may be long.
UNREAD_PARTS = ("xl/charts/", "xl/drawings/", "xl/pivotCache/", "xl/pivotTables/", "xl/externalLinks/", "customXml/")
_CELL_TAG = re.compile(rb"</?(?:[A-Za-z_][\w.-]{0,20}:)?(?:c|v|f|is|t|si|row)(?=[\s/>])")
#: Spellings that most tags of cells have; each is one of ``_CELL_TAG``.
_COMMON_TAGS = (b"<c ", b"</c>", b"<v>", b"</v>", b"<row ", b"</row>")
_LONG_TOKEN = re.compile(rb"<[^<]{%d}" % LONGEST_TOKEN)
_ROW_TAG = re.compile(rb"<(?:[A-Za-z_][\w.-]{0,20}:)?row(?=[\s/>])")
_KNOWN_COMPRESSION = (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED)

_CONTROL = re.compile("[\x00-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff\ud800-\udfff]")


def visible(text: str, limit: int = 120) -> str:
    """Text for a message: control and bidirectional characters spelt out, cut to a length.

    Parameters
    ----------
    text : str
        Text as it stood in the file.
    limit : int
        Longest text that is shown in full.

    Returns
    -------
    str
        On one line.
    """
    if len(text) > limit:
        text = text[:limit] + "…"
    return _CONTROL.sub(lambda match: f"\\u{ord(match.group()):04x}", text)


class InputError(Exception):
    """A file that cannot be reviewed at all.

    Attributes
    ----------
    code : str
        Short stable word for the reason.
    file : str
        File as the user named it.
    sheet, cell : str or None
        Where in the file, as far as that is known; ``cell`` may be a line (``line 12``) or a JSON Pointer.
    read, expected : str
        What was read and what was expected.
    """

    def __init__(
        self, code: str, file: str, read: str, expected: str, *, sheet: str | None = None, cell: str | None = None
    ) -> None:
        self.code, self.file, self.sheet, self.cell = code, file, sheet, cell
        self.read, self.expected = read, expected
        place = " ".join(visible(part) for part in (file, sheet, cell) if part)
        super().__init__(f"{place}: read {visible(read, 300)}; expected {visible(expected, 300)} [{code}]")


@frozen(eq=False)
class Source:
    """A file read into memory and recognised.

    Attributes
    ----------
    file : str
        File as the user named it.
    data : bytes
        Its bytes.
    sha256 : str
        SHA-256 of the bytes, hexadecimal.
    kind : {"workbook", "json", "xml", "text"}
        What it is, by its content.
    code_page : str
        Code page that the content of a text tells, empty where none was looked for.
    """

    file: str
    data: bytes = field(repr=False)
    sha256: str
    kind: FileKind
    code_page: str = ""

    def refuse(
        self, code: str, read: str, expected: str, *, sheet: str | None = None, cell: str | None = None
    ) -> InputError:
        """The error that refuses this file."""
        return InputError(code, self.file, read, expected, sheet=sheet, cell=cell)


def load(path: str | os.PathLike[str], shown_as: str | None = None) -> Source:
    """Read a file and recognise it by its first bytes, never by its name.

    Raises
    ------
    InputError
        If it is missing, not a plain file, empty, too large, or of a kind that is not read.
    """
    file = shown_as if shown_as is not None else os.fspath(path)
    try:
        _plain(file, os.stat(path))  # a pipe is not opened: that waits until somebody writes to it
        with Path(path).open("rb") as stream:
            state = os.fstat(stream.fileno())
            _plain(file, state)
            if state.st_size > LARGEST_FILE:
                size = f"a file of {state.st_size / 2**20:.0f} MiB"
                raise InputError("file-too-large", file, size, f"at most {LARGEST_FILE // 2**20} MiB")
            data = stream.read(LARGEST_FILE + 1)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise InputError("not-opened", file, f"nothing ({reason})", READABLE) from None
    if len(data) > LARGEST_FILE:
        raise InputError("file-too-large", file, "a file that grew while it was read", "a finished file")
    return Source(file, data, hashlib.sha256(data).hexdigest(), _recognise(file, data))


def _plain(file: str, state: os.stat_result) -> None:
    """Refuse what is not a plain file, and say what it is."""
    if not stat.S_ISREG(state.st_mode):
        kinds = ((stat.S_ISDIR, "a folder"), (stat.S_ISFIFO, "a pipe"), (stat.S_ISSOCK, "a socket"))
        what = next((what for is_kind, what in kinds if is_kind(state.st_mode)), "a device")
        raise InputError("not-a-file", file, f"{what}, which is not a plain file", READABLE)


def _recognise(file: str, data: bytes) -> FileKind:
    """Kind of a file from its bytes; raises for kinds that are not read."""
    if not data.strip(b"\x00 \t\r\n"):
        raise InputError("empty", file, "an empty file", READABLE)
    if data[:4] in (b"PK\x03\x04", b"PK\x05\x06", b"PK\x07\x08"):
        _check_archive(file, data)
        return "workbook"
    if data.startswith(b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"):
        if "EncryptedPackage".encode("utf-16-le") in data:
            raise InputError(
                "encrypted", file, "a password-protected workbook", "the same workbook saved without a password"
            )
        raise InputError(
            "old-workbook", file, "a binary workbook of the 97-2003 kind (.xls)", "the same table saved as .xlsx or CSV"
        )
    for magic, what in (
        (b"%PDF", "a PDF document"),
        (b"\x1f\x8b", "a gzip archive"),
        (b"7z\xbc\xaf", "a 7z archive"),
        (b"Rar!", "a RAR archive"),
        (b"\x89PNG", "a picture"),
        (b"\xff\xd8\xff", "a picture"),
    ):
        if data.startswith(magic):
            raise InputError("wrong-kind", file, what, READABLE)
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        start = data[: 4096 & ~1].decode("utf-16", "replace")
    elif b"\x00" in data:
        at = data.index(b"\x00")
        raise InputError(
            "binary", file, f"a NUL byte at offset {at}: not text, or UTF-16 without a byte order mark", READABLE
        )
    else:
        start = data[:4096].decode("utf-8", "replace")
    start = start.lstrip("\ufeff \t\r\n")
    if start.startswith("ISO-10303-21;"):
        raise InputError(
            "step",
            file,
            "a STEP exchange file (ISO 10303-21), whose tolerances (AP242) are not read",
            "a parameter table exported as .xlsx, CSV or JSON, or QIF",
        )
    if start[:1] == "<":
        if re.match(r"<(!doctype\s+html|html)\b", start, re.IGNORECASE):
            raise InputError("wrong-kind", file, "an HTML page", READABLE)
        return "xml"
    if start[:1] == "{" or (start[:1] == "[" and re.match(r"\[\s*(?:[\[{\]\"\d-]|true|false|null)", start)):
        return "json"
    return "text"


def _check_archive(file: str, data: bytes) -> None:
    """Refuse an archive that is not a plain workbook, before anything in it is parsed."""

    def refuse(code: str, read: str, expected: str, member: str | None = None) -> InputError:
        return InputError(code, file, read, expected, cell=member)

    try:
        archive = zipfile.ZipFile(BytesIO(data))
    except (zipfile.BadZipFile, ValueError, NotImplementedError, OSError, UnicodeDecodeError) as error:
        read = f"a workbook that is damaged or cut off ({error})"
        raise refuse("broken-archive", read, "a whole workbook: save or export it again") from None
    with archive:
        members = archive.infolist()
        if len(members) > MOST_MEMBERS:
            raise refuse("archive", f"an archive of {len(members)} members", f"at most {MOST_MEMBERS}")
        names = [member.filename for member in members]
        if len(set(names)) < len(names):
            twice = next(name for name in names if names.count(name) > 1)
            raise refuse("archive", "two members of the same name", "every name once", twice)
        for member in members:
            _check_member(file, member)
        total = sum(member.file_size for member in members)
        if total > LARGEST_ARCHIVE:
            size = f"an archive of {total / 2**20:.0f} MiB unpacked"
            raise refuse("archive", size, f"at most {LARGEST_ARCHIVE // 2**20} MiB")
        known = set(names)
        if "xl/workbook.bin" in known:
            raise refuse("binary-workbook", "a binary workbook (.xlsb)", "the same table saved as .xlsx or CSV")
        if "content.xml" in known and "mimetype" in known:
            raise refuse("open-document", "an OpenDocument file (.ods)", "the same table saved as .xlsx or CSV")
        if "word/document.xml" in known or "ppt/presentation.xml" in known:
            raise refuse("wrong-kind", "a text document or presentation", READABLE)
        if "xl/workbook.xml" not in known:
            raise refuse("wrong-kind", "an archive that holds no workbook", READABLE)
        for member in members:
            if member.filename.lower().endswith((".xml", ".rels", ".vml")):
                _check_part(file, archive, member)


def _check_member(file: str, member: zipfile.ZipInfo) -> None:
    """Refuse a member that leaves the archive, is encrypted, or is larger than any part of a workbook."""

    def refuse(code: str, read: str, expected: str) -> InputError:
        return InputError(code, file, read, expected, cell=member.filename)

    name = member.filename
    if name.startswith(("/", "\\")) or "\\" in name or ".." in name.split("/") or ":" in name or "\0" in name:
        raise refuse("archive", "a member whose name leaves the archive", "plain relative names")
    if member.flag_bits & 1:
        raise refuse("encrypted", "an encrypted member", "an archive without a password")
    if member.compress_type not in _KNOWN_COMPRESSION:
        raise refuse("archive", f"compression method {member.compress_type}", "stored or deflated")
    if member.file_size > LARGEST_MEMBER:
        size = f"a member of {member.file_size / 2**20:.0f} MiB unpacked"
        raise refuse("archive", size, f"at most {LARGEST_MEMBER // 2**20} MiB")
    if member.file_size > RATIO_APPLIES_ABOVE and member.file_size > LARGEST_RATIO * max(member.compress_size, 1):
        ratio = f"a member packed {member.file_size // max(member.compress_size, 1)}:1"
        raise refuse("archive", ratio, f"at most {LARGEST_RATIO}:1")


def _check_part(file: str, archive: zipfile.ZipFile, member: zipfile.ZipInfo) -> None:
    """Refuse a part that cannot be unpacked, that declares a document type or has very many tags."""
    try:
        part = archive.read(member)
    except MemoryError:
        raise
    except Exception as error:  # zlib, zipfile and struct errors alike: the part is damaged
        raise InputError(
            "broken-archive",
            file,
            f"a damaged workbook: this part does not unpack ({error})",
            "a whole workbook: save or export it again",
            cell=member.filename,
        ) from None
    if part[:2] in (b"\xff\xfe", b"\xfe\xff") or b"\x00" in part[:64]:
        raise InputError("archive", file, "a part that is not UTF-8", "UTF-8 parts", cell=member.filename)
    if b"<!DOCTYPE" in part or b"<!ENTITY" in part:
        raise InputError(
            "document-type",
            file,
            "a document type declaration (entities could be expanded from it)",
            "a workbook part without one",
            cell=member.filename,
        )
    if not member.filename.startswith(UNREAD_PARTS):
        _check_tags(file, member.filename, part)


def _check_tags(file: str, name: str, part: bytes) -> None:
    """Refuse a part of more tags or attributes, or of longer ones, than a parser should work on."""
    if len(part) > LONGEST_TOKEN and _holds_long_token(part):
        read = f"a part with a tag or text of more than {LONGEST_TOKEN // 1024} KiB"
        raise InputError("archive", file, read, "shorter tags and texts", cell=name)
    tags, attributes = part.count(b"<"), part.count(b"=")
    # counting exactly is slow, so that it is done only where a count of common spellings cannot rule a refusal out
    common = sum(part.count(tag) for tag in _COMMON_TAGS)
    few = tags <= MOST_CELL_TAGS and part.count(b"row") <= MOST_ROWS_OF_TAGS
    if few and tags - common <= MOST_OTHER_TAGS and attributes - 2 * common <= MOST_ATTRIBUTES:
        return
    of_cells, rows = (sum(1 for _ in pattern.finditer(part)) for pattern in (_CELL_TAG, _ROW_TAG))
    beside = attributes - 2 * of_cells - 6 * rows
    for count, most, what in (
        (of_cells, MOST_CELL_TAGS, "tags of cells"),
        (rows, MOST_ROWS_OF_TAGS, "rows"),
        (tags - of_cells, MOST_OTHER_TAGS, "tags other than cells"),
        (beside, MOST_ATTRIBUTES, "attributes beside those of cells"),
    ):
        if count > most:
            raise InputError("archive", file, f"a part with {count} {what}", f"at most {most}", cell=name)


def _holds_long_token(part: bytes) -> bool:
    """Whether a part holds a tag, text, comment or processing instruction beyond ``LONGEST_TOKEN``."""
    if _LONG_TOKEN.search(part):
        return True
    for start, end in ((b"<!--", b"-->"), (b"<?", b"?>")):
        at = part.find(start)
        while at >= 0:
            closed = part.find(end, at, at + LONGEST_TOKEN)
            if closed < 0:
                return True
            at = part.find(start, closed)
    return False


def to_utf8(source: Source, declared: str = "") -> tuple[bytes, str]:
    """Text of a file as UTF-8 bytes with plain line feeds.

    Parameters
    ----------
    source : Source
        The file.
    declared : str
        Code page that the name mapping declares, empty for none. A byte order mark outranks it.

    Returns
    -------
    bytes
        UTF-8 without a byte order mark; CR LF, CR and CR CR LF are one line end each.
    str
        Encoding in words.

    Raises
    ------
    InputError
        If the bytes are not valid in the encoding, naming the line.
    """
    data, expected = source.data, "UTF-8, UTF-16 with a byte order mark, or a code page declared in the name mapping"
    if data.startswith(b"\xef\xbb\xbf"):
        data, encoding, words = data[3:], "utf-8", "UTF-8 with byte order mark"
    elif data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        encoding, words = "utf-16", "UTF-16 with byte order mark"
    elif declared:
        encoding, words = declared, f"{declared} (declared)"
    elif source.code_page:
        encoding, words = source.code_page, f"{source.code_page} (not stated; told by what the table says)"
    else:
        encoding, words = "utf-8", "UTF-8"
    try:
        if encoding == "utf-8":
            if not data.isascii():
                data.decode("utf-8")
        else:
            data = data.decode(encoding).removeprefix("\ufeff").encode("utf-8")
    except UnicodeError as error:
        at = getattr(error, "start", 0)
        line = data.count(b"\n", 0, at) + 1
        byte = (
            f"byte {data[at]:#04x} at offset {at}, not valid {words}" if at < len(data) else f"bytes not valid {words}"
        )
        raise source.refuse("encoding", byte, expected, cell=f"line {line}") from None
    except LookupError:
        raise source.refuse("encoding", f"declared code page {declared!r}", "a code page that is known") from None
    if b"\x00" in data:
        raise source.refuse("binary", "a NUL character in the text", "text without NUL characters")
    if b"\r" in data:
        data = data.replace(b"\r\r\n", b"\n") if b"\r\r" in data else data
        data = data.replace(b"\r\n", b"\n")
        data = data.replace(b"\r", b"\n") if b"\r" in data else data
    return data, words
