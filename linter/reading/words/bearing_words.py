"""Whether words name a rolling bearing as a thing: the word alone, or a sort of it (``Rillenkugellager``)."""

from functools import lru_cache

from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import caseless
from linter.reading.words.designations import designation_strength
from linter.reading.words.dictionary import MOST_REMEMBERED
from linter.reading.words.parts import is_bearing

#: Sorts that leave the type open (terms of ISO 5593 and its translations, from memory; common practice).
_SORTS = (
    "rolling bearing, roller bearing, spindle bearing, radial ball bearing, rolling element bearing, rollenlager, "
    "radiallager, präzisionslager, roulement à billes, roulement à rouleaux, roulement de broche, cuscinetto a sfere, "
    "cuscinetto a rulli, cuscinetto volvente, rodamiento de bolas, rodamiento de rodillos, rodamiento de husillo, "
    "шарикоподшипник, роликоподшипник, подшипник шариковый, подшипник роликовый, подшипник качения, "
    "шариковый подшипник, роликовый подшипник, 玉軸受, ころ軸受, 転がり軸受, ベアリング, 玉ベアリング, 滚动轴承, "
    "滚子轴承, 滚珠轴承, 主轴轴承"
)
_KNOWN = frozenset(map(caseless, _SORTS.split(", ")))


@lru_cache(maxsize=MOST_REMEMBERED)
def names_bearing(text: str) -> bool:
    """Whether a text is the word for a bearing, or for a sort of bearings, and nothing else."""
    if is_bearing(text):
        return True
    if not 4 < len(text) <= 60 and text.isascii():
        return False
    kind = read_choice("bearing_type", text) if any(map(str.isalpha, text)) else ""
    return (isinstance(kind, str) and bool(kind)) or caseless(text) in _KNOWN


@lru_cache(maxsize=MOST_REMEMBERED)
def designation_behind(text: str) -> str:
    """The designation behind the word for a bearing (``Cuscinetto 6309``); empty where none stands there."""
    for blank in (k for k, sign in enumerate(text[:80]) if sign == " "):
        tail = text[blank + 1 :]
        if designation_strength(tail) != "no" and sum(map(str.isdigit, tail)) > 2 and names_bearing(text[:blank]):
            return tail
    return ""
