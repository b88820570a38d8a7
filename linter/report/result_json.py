"""The result file: what other programs read."""

import json
import re

from linter.model.findings import ReviewResult

_SURROGATE = re.compile("[\ud800-\udfff]")


def result_text(result: ReviewResult) -> str:
    """The content of ``NAME.result.json``.

    Parameters
    ----------
    result : ReviewResult
        As reviewed.

    Returns
    -------
    str
        JSON with sorted keys, one space of indent and a line end; the same text for the same result. It can be encoded
        as UTF-8 whatever stood in the table: half a surrogate pair is written as its JSON escape.

    Raises
    ------
    ValueError
        If a value is not a finite number, which JSON cannot hold.
    """
    text = json.dumps(result.as_dict(), sort_keys=True, ensure_ascii=False, indent=1, allow_nan=False)
    return _SURROGATE.sub(lambda half: f"\\u{ord(half[0]):04x}", text) + "\n"
