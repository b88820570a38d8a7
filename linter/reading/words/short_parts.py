"""Short words for shaft and housing beside each other (``d_sh``, ``D_h``; ``DE_sh_Ra``, ``DE_hs_Ra``): common practice.

One alone says too little (a shoulder begins with these letters too): the names of a table say it together, where one
name has the one word and another the same rest with the other.
"""

import re
from collections.abc import Iterable

from linter.reading.words.headings import Told, Words

_WORD = re.compile(r"[^\W_]+")
_SHAFT = frozenset(("sh", "shf", "sft"))
_HOUSING = frozenset(("h", "hs", "hou", "hsng"))
_LONGEST = 40


def short_parts(names: Iterable[str], words: Words) -> dict[str, Told]:
    """What names mean that say their part by a short word; empty where the names do not say both parts so."""
    found: dict[str, tuple[str, str, str]] = {}
    for name in names:
        said = [match for match in _WORD.finditer(name) if match[0].casefold() in _SHAFT | _HOUSING]
        if len(said) == 1 and len(name) <= _LONGEST and said[0][0] != name:
            at, part = said[0], "shaft" if said[0][0].casefold() in _SHAFT else "housing"
            rest = f"{name[: at.start()]}*{name[at.end() :]}".casefold()
            found[name] = rest, part, f"{name[: at.start()]}{part}{name[at.end() :]}"
    rests = {part: {rest for rest, of, _ in found.values() if of == part} for part in ("shaft", "housing")}
    if not rests["shaft"] & rests["housing"]:
        return {}
    known = ((name, whole, words.heading(whole)) for name, (_, _, whole) in found.items())
    return {name: Told(whole, h.station, by_comment=True) for name, whole, h in known if h is not None}
