"""Code pages that a text without any sign of its encoding may be in.

The bytes alone rarely settle it: ``0xD8`` is Ø in one page of Western Europe and Ř in that of its neighbours. So the
likely pages are listed here, and what a table says under each decides, or a person.
"""

import re
from pathlib import Path

from linter.reading.files.intake import Source, load

#: Pages of the offices whose languages are read: Western and Central Europe, Cyrillic, Japanese, Chinese, Korean, and
#: those of older terminals (Python's names).
_PAGES = (
    "cp1252", "cp1250", "cp1251", "cp932", "gb18030", "euc_jp", "cp949", "big5", "iso8859_15", "cp850", "cp866",
    "koi8_r",
)  # fmt: skip
_MOST = 4
_SAMPLE = 2**20
#: A page whose text looks more disordered than the best by this share is none of the likely ones.
_WORSE = 0.12
#: A word of Latin and of Cyrillic letters, or of letters and half-wide signs of Japanese or lines of a frame: no office
#: writes one. (A capital of the other script after a word: ``RugositЮ`` is the ``Rugosità`` of another page.)
_MIXED = re.compile(
    r"[A-Za-zÀ-ÿ][а-яё]|[а-яё][a-zà-ÿ]|[a-zà-ÿ]{2}[А-ЯЁ]"
    r"|[A-Za-z][\uff61-\uff9f]|[\uff61-\uff9f][A-Za-z]|[\u2500-\u259f][A-Za-z]"
)


def is_open(source: Source) -> bool:
    """Whether a text is no UTF-8 and carries no byte order mark: its encoding is an open question."""
    data = source.data
    if source.kind not in ("text", "json") or data[:2] in (b"\xff\xfe", b"\xfe\xff") or data.isascii():
        return False
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return True
    return False


def likely_pages(source: Source) -> list[str]:
    """Code pages that a text may be in, the likeliest first; each gives another text."""
    from charset_normalizer import from_bytes  # only for a text whose encoding is an open question

    lines = source.data.splitlines(keepends=True)
    telling = b"".join(line for line in lines if not line.isascii())[:_SAMPLE]
    matches = from_bytes(telling, cp_isolation=list(_PAGES))
    best = min((match.chaos for match in matches), default=0.0)
    likely = [
        (match.chaos, _PAGES.index(page))
        for match in matches
        if match.chaos <= best + _WORSE
        for page in match.could_be_from_charset
        if page in _PAGES
    ]
    pages: dict[str, str] = {}
    for _, index in sorted(likely):
        try:
            text = source.data.decode(_PAGES[index])
        except UnicodeDecodeError:
            continue
        if not _MIXED.search(text):
            pages.setdefault(text, _PAGES[index])
    return list(pages.values())[:_MOST]


def likely_encodings(path: Path) -> list[str]:
    """Encodings that a file may be in, the likeliest first; none for a file that tells its own."""
    source = load(path, None)
    return likely_pages(source) if is_open(source) else []
