"""The result file: what other programs read."""

import json
import re
from collections.abc import Iterator
from typing import Any

from linter.model.findings import ReviewResult

_SURROGATE = re.compile("[\ud800-\udfff]")
#: Entries of a list that are handed on at once.
_AT_ONCE = 500


def result_text(result: ReviewResult) -> str:
    """The content of ``NAME.result.json``; see :func:`result_pieces`."""
    return b"".join(result_pieces(result)).decode()


def result_pieces(result: ReviewResult) -> Iterator[bytes]:
    """The content of ``NAME.result.json``, piece by piece, so that a large one never stands in memory as a whole.

    Parameters
    ----------
    result : ReviewResult
        As reviewed.

    Yields
    ------
    bytes
        JSON with sorted keys in UTF-8, one line for each entry of a list, with a line end; the same for the same
        result. Half a surrogate pair from the table is written as its JSON escape.

    Raises
    ------
    ValueError
        If a value is not a finite number, which JSON cannot hold.
    """
    content = result.as_dict()
    for number, key in enumerate(sorted(content)):
        value = content[key]
        yield f"{',' if number else '{'}\n {_text(key)}: ".encode()
        if not isinstance(value, list) or not value:
            yield _text(value).encode()
            continue
        for start in range(0, len(value), _AT_ONCE):
            lines = ",\n  ".join(_text(entry) for entry in value[start : start + _AT_ONCE])
            yield f"{',' if start else '['}\n  {lines}".encode()
        yield b"\n ]"
    yield b"\n}\n"


def _text(value: Any) -> str:
    text = json.dumps(value, sort_keys=True, ensure_ascii=False, allow_nan=False)
    return _SURROGATE.sub(lambda half: f"\\u{ord(half[0]):04x}", text)
