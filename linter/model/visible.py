"""Text from a table, made safe to look at: what would hide, reorder or break the line is shown instead."""

import re

LONGEST = 1200
_HIDDEN = re.compile(
    "[\x00-\x1f\x7f-\x9f\u00ad\u061c\u115f\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\uffff\ud800-\udfff]"
    "|[\U000e0000-\U000e007f]"
)


def _shown(found: re.Match[str]) -> str:
    code = ord(found[0])
    if code < 0x20:
        return chr(0x2400 + code)
    if code == 0x7F:
        return "\u2421"
    return f"[U+{code:04X}]"


def visible(text: str) -> str:
    """The text with control, direction and zero-width characters made visible.

    Parameters
    ----------
    text : str
        Any text, half surrogate pairs included.

    Returns
    -------
    str
        Text that can be encoded as UTF-8. Control characters become their picture (``␀``), others their code
        (``[U+202E]``). A text longer than 1200 characters is cut and says so.
    """
    if text.isascii() and text.isprintable() and len(text) <= LONGEST:
        return text
    if len(text) > LONGEST:
        text = f"{text[:LONGEST]}… (cut here; {len(text)} characters)"
    return _HIDDEN.sub(_shown, text)
