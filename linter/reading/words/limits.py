"""Words that head a column of limits of size: the least or the largest, with a word for a size or a limit."""

import re
from functools import cache

from linter.reading.cells.signs import fold
from linter.reading.words.dictionary import dictionary, group_key, word_key
from linter.reading.words.joined_names import designation_or_size, halves_of

#: Numbers that are a largest or a smallest value by their meaning: max or min beside the name adds nothing.
IS_LARGEST = (
    "_runout", "_cylindricity", "_roughness", "_fillet_radius", "coaxiality_of_bores", "coaxiality_of_shaft_seats",
)  # fmt: skip
IS_SMALLEST = ("ring_chamfer",)
# Terms of ISO 286-1 and their translations, from memory; common practice.
_LEAST = (
    "min minimum mini minimal minimale minimaler minimales minimo minima mínimo mínima mín smallest least kleinstes "
    "kleinste kleinster мин минимальный минимальное наименьший наименьшее наим "
    "lower low lo lwr inf inférieure inférieur inferior inferiore untere unteres unterer unt нижний нижняя нижн ниж"
)
_LARGEST = (
    "max maximum maxi maximal maximale maximaler maximales massimo massima máximo máxima máx largest greatest größtes "
    "größte größter макс максимальный максимальное наибольший наибольшее наиб "
    "upper high hi upr sup supérieure supérieur superior superiore obere oberes oberer ob верхний верхняя верхн верх"
)
_SIZES = (
    "size sizes limit limits dimension dimensions dim value of permissible allowable grenzmaß maß grenzwert wert "
    "zulässiges cote cotes limite dimensionnelle taille valeur admissible de la du quota quote dimensione misura "
    "valore ammissibile di medida cota tamaño límite valor admisible размер "
    "предельный предел предельное значение допустимый граница допуска lim lím spec specification specified "
    "spezifikationsgrenze toleranzgrenze grenze grenzw spécification especificación specifica"
)
#: Words for how far a value may go (common practice).
_LIMITS = "limit limits grenzwert requirement anforderung limite límite предел требование 限界 限度 要求 限值 极限"
_SIGNS_LEAST, _SIGNS_LARGEST = (
    re.compile(
        rf"(?:{word})(?:許容|容许|允许|极限|極限|限界)*(?:寸法|尺寸|值|値|サイズ)+"
        rf"|(?:許容|容许|允许|极限|極限|限界)(?:{word})(?:寸法|尺寸|值|値)|(?:尺寸|寸法)(?:{word})[值値]?|{side}[极極]限尺寸"
    )
    for word, side in (("最小|下限", "下"), ("最大|上限", "上"))
)
_TO = re.compile(rf"(?:to|bis|hasta|{word_key('до')})(?:,? ?[\[(]?(?:mm|in|inch|{word_key('мм')})[\])]?)?")


#: A least and a largest size as words, which a cell below them states both (``Ø min – max``, ``d (min/max)``).
_BOTH = re.compile(
    r"[ ,;:]*[(\[]?\b(?:min|mini|minimum|minimal|mín|mínimo|minimo|мин|наим)\b\.?"
    r"\s*(?:[-–—/~～|…]|\.{2,3}|to|bis|à|a|до)\s*"
    r"(?:max|maxi|maximum|maximal|máx|máximo|massimo|макс|наиб)\b\.?[)\]]?"
    r"|[ ,;:]*[(\[（]?(?:最小|下限)[-–—/~～・]?(?:最大|上限)[)\]）]?",
    re.IGNORECASE,
)


def without_limits(text: str) -> str:
    """A name without the words for a least and a largest size beside each other."""
    found = _BOTH.search(text)
    return f"{text[: found.start()]}{text[found.end() :]}".strip() if found and found.start() else text


@cache
def _keys(words: str) -> frozenset[str]:
    return frozenset(word_key(word) for word in words.split())


def says_greater(text: str) -> bool:
    """Whether a word heads the greater of two limits beside the lesser (``from | to``, ``von | bis``)."""
    return _TO.fullmatch(word_key(text)) is not None


def limit_of_size(text: str) -> str:
    """``MIN`` or ``MAX`` where words say a least or a largest size and nothing else (``Quota min``), or empty.

    ``VALUE`` where they say a designation or a size (``Designation / nominal``), or a value or its tolerance
    (``Nennmaß / Toleranz``: sizes, and how far form and run-out may be off).
    """
    if _SIGNS_LEAST.fullmatch(text) or _SIGNS_LARGEST.fullmatch(text):
        return "MIN" if _SIGNS_LEAST.fullmatch(text) else "MAX"
    if designation_or_size(text) or _value_or_tolerance(text):
        return "VALUE"
    words = {word for word in re.split(r"[\W_]+", word_key(text)) if word}
    least, largest, sizes = words & _keys(_LEAST), words & _keys(_LARGEST), words & _keys(_SIZES)
    if not sizes or words - least - largest - sizes or bool(least) == bool(largest):
        return ""
    return "MIN" if least else "MAX"


def _value_or_tolerance(text: str) -> bool:
    """Whether words say a value first, or a size, and then its tolerance or limit."""
    known = dictionary()
    halves = halves_of(text)
    groups = [known.groups.get(fold(half)) or known.group_words.get(group_key(half), ()) for half in halves]
    if len(halves) != 2:
        return False
    limit = "CLASS" in groups[1] or word_key(halves[1]) in _keys(_LIMITS)
    return limit and ("VALUE" in groups[0] or word_key(halves[0]) in _keys(_SIZES))
