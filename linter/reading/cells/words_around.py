"""Words around a number that say about, at most or at least: ``approx. 300``, ``0.008 or better``, ``mindestens 95``.

Words of eight languages: common practice. A limit stands for the value where the parameter is one of that sort: most
are limits above, what is required of a bearing is one below.
"""

import re

from linter.reading.cells.signs import caseless, fold

_ABOUT = (
    "approx|approximately|about|around|roughly|ca|circa|zirka|etwa|rund|ungefähr|env|environ|aprox|aproximadamente|около"
    "|примерно|прибл|ок|約|约|大约|およそ|~|≈|∼"
)
_MOST_BEFORE = (
    "at most|not more than|no more than|not exceeding|up to|less than|höchstens|nicht mehr als|kleiner als|maximal"
    "|au plus|inférieur à|pas plus de|como máximo|no más de|menor de|menor que|al massimo|non oltre|inferiore a"
    "|не более|не больше|до|最大|不大于|不超过"
)
_MOST_BEHIND = (
    "or less|or better|or below|or smaller|oder besser|oder weniger|oder kleiner|ou moins|ou mieux|o menos|o mejor"
    "|o menor|o meno|o meglio|o inferiore|или менее|или лучше|и менее|не более|以下|以内|以下とする|及以下"
)
_LEAST_BEFORE = (
    "at least|not less than|no less than|min|minimum|mindestens|nicht unter|wenigstens|minimal|au moins|mini|al menos"
    "|mínimo|por lo menos|almeno|minimo|не менее|мин|最小|最低|不小于|不低于|≥|>|>="
)
_LEAST_BEHIND = "or more|min|minimum|oder mehr|ou plus|mini|o más|o più|или более|и более|以上|及以上"


def _before(words: str) -> re.Pattern[str]:
    return re.compile(rf"(?:{fold(caseless(words))})(?:\.|(?![^\W\d_]))[ :]*(?=[\d.,])")


def _behind(words: str) -> re.Pattern[str]:
    return re.compile(rf"(?<=[\w%²]) ?[,;(]? ?(?:{fold(caseless(words))})\.?\)?$")


_FIRST = {"about": _before(_ABOUT), "most": _before(_MOST_BEFORE), "least": _before(_LEAST_BEFORE)}
_LAST = {"most": _behind(_MOST_BEHIND), "least": _behind(_LEAST_BEHIND)}


def without_words(text: str) -> tuple[str, str]:
    """A text without the words before or behind its number, and what they say.

    Returns
    -------
    (str, str)
        The rest and ``about``, ``most`` or ``least``; both empty where no such words stand there.
    """
    plain, raw = caseless(text), text.strip()
    if len(plain) != len(raw):
        return "", ""
    for said, pattern in _FIRST.items():
        if (found := pattern.match(plain)) is not None:
            return raw[found.end() :].strip(), said
    for said, pattern in _LAST.items():
        if (found := pattern.search(plain)) is not None and any(map(str.isdigit, plain[: found.start()])):
            return raw[: found.start()].strip(), said
    return "", ""
