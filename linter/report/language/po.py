"""Catalogues of messages as PO files: read, and written in one order."""

import re
from collections.abc import Iterable, Mapping
from pathlib import Path

_LINE = re.compile(r'^(?:(msgid|msgstr)\s+)?"((?:[^"\\]|\\.)*)"\s*$')
_ESCAPES = {"n": "\n", "t": "\t", '"': '"', "\\": "\\"}


class CatalogueError(ValueError):
    """A catalogue that cannot be read; the text names file and line."""


def read_po(path: Path) -> dict[str, str]:
    """The messages of a PO file with their translations, empty where there is none.

    Parameters
    ----------
    path : Path
        A file of ``msgid`` and ``msgstr`` without plural forms and contexts; the header's empty ``msgid`` is left out.

    Returns
    -------
    dict of str to str
        In the order of the file.

    Raises
    ------
    CatalogueError
        For a line that is none of PO, or a message that stands twice.
    """
    found: dict[str, str] = {}
    pair = {"msgid": "", "msgstr": ""}
    at = ""
    for number, line in enumerate((*path.read_text(encoding="utf-8").splitlines(), ""), 1):
        if line.startswith("#"):
            continue
        match = _LINE.match(line)
        if match is None and line.strip():
            wanted = "msgid, msgstr, a quoted text or a comment"
            raise CatalogueError(f"{path.name}, line {number}: read {line!r}; expected {wanted}")
        if (match is None or match[1] == "msgid") and at == "msgstr":
            if pair["msgid"] in found:
                raise CatalogueError(f"{path.name}, line {number}: the message {pair['msgid']!r} stands twice")
            found[pair["msgid"]] = pair["msgstr"]
            pair, at = {"msgid": "", "msgstr": ""}, ""
        if match is not None:
            at = match[1] or at
            pair[at] += re.sub(r"\\(.)", lambda found: _ESCAPES.get(found[1], found[1]), match[2])
    found.pop("", None)
    return found


def po_text(language: str, messages: Mapping[str, Iterable[str]], translations: Mapping[str, str]) -> str:
    """The content of a PO file.

    Parameters
    ----------
    language : str
        Tag of the language, such as ``de``.
    messages : mapping of str to iterable of str
        Messages with the files that they come from, in the order to write.
    translations : mapping of str to str
        What there is of them.

    Returns
    -------
    str
    """
    lines = ['msgid ""', 'msgstr ""', *(f'"{key}: {value}\\n"' for key, value in _header(language))]
    for message, places in messages.items():
        lines += ["", *(f"#: {place}" for place in dict.fromkeys(places)), f"msgid {_quoted(message)}"]
        lines.append(f"msgstr {_quoted(translations.get(message, ''))}")
    return "\n".join(lines) + "\n"


def _header(language: str) -> Iterable[tuple[str, str]]:
    return (
        ("Project-Id-Version", "ringseat"), ("Language", language), ("MIME-Version", "1.0"),
        ("Content-Type", "text/plain; charset=UTF-8"), ("Content-Transfer-Encoding", "8bit"),
    )  # fmt: skip


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n").replace("\t", "\\t") + '"'
