"""What stands at one place of a JSON document, and what of a value each of its keys states."""

import re
from functools import lru_cache
from typing import Any

from attrs import define, evolve, field

from linter.reading.cells.signs import caseless
from linter.reading.layouts.json_keys import INNER, bare, local
from linter.reading.layouts.json_units import says_unit
from linter.reading.words.cuts import unit_behind
from linter.reading.words.dictionary import MOST_REMEMBERED, Version, dictionary, group_key, word_key
from linter.reading.words.headings import Heading
from linter.reading.words.measured_words import MEASURED
from linter.reading.words.parts import concepts_said

#: Keys of a remark beside a value (common practice).
REMARKS = frozenset(
    ("comment", "comments", "note", "notes", "remark", "remarks", "bemerkung", "kommentar", "hinweis", "commentaire",
     "remarque", "nota", "commento", "osservazioni", "comentario", "observaciones", "примечание", "комментарий",
     "备注", "说明", "注释", "備考", "注記", "コメント")
)  # fmt: skip
CONTEXT = REMARKS | frozenset(
    ("machine", "station", "level", "place", "comment", "comments", "note", "notes", "description", "source", "type",
     "id", "no", "nr", "uid", "uuid", "guid", "index")
)  # fmt: skip
_ASPECTS = {
    "value": "value", "nominal": "value", "size": "value", "nominal_value": "value",
    "upper": "upper", "upper_deviation": "upper", "es": "upper", "plus": "upper", "upper_tol": "upper",
    "tol_plus": "upper", "tol_minus": "lower",
    "lower": "lower", "lower_deviation": "lower", "ei": "lower", "minus": "lower", "lower_tol": "lower",
    "up": "upper", "lo": "lower",
    "max": "max", "maximum": "max", "upper_limit": "max",
    "min": "min", "minimum": "min", "lower_limit": "min",
    "deviation_upper": "upper", "deviation_lower": "lower", "upper_tolerance": "upper", "lower_tolerance": "lower",
    "tolerance_upper": "upper", "tolerance_lower": "lower", "plus_tolerance": "upper", "minus_tolerance": "lower",
    "upper_dev": "upper", "lower_dev": "lower", "tol_upper": "upper", "tol_lower": "lower", "dev_upper": "upper",
    "dev_lower": "lower", "nominal_size": "value", "nominal_diameter": "value", "nom": "value", "max_limit": "max",
    "min_limit": "min", "max_size": "max", "min_size": "min", "iso_class": "tolerance", "iso_fit": "tolerance",
    "fit_class": "tolerance", "tol_class": "tolerance", "wert": "value", "nennmass": "value", "oberes_abmass": "upper",
    "unteres_abmass": "lower", "toleranzklasse": "tolerance", "passung": "tolerance", "toleranz": "tolerance",
    "val": "value", "valeur": "value", "valore": "value", "valor": "value", "値": "value", "数值": "value",
    "значение": "value",
    "class": "tolerance", "tolerance_class": "tolerance", "fit": "tolerance",
    "tolerance": "tolerance", "tol": "tolerance",
}  # fmt: skip


#: Keys of half the width of a tolerance (common practice).
_HALF = re.compile(r"±|\+/?-|\+-|plus[ _]?(?:/|or)?[ _]?minus|(?:tol[a-z]*[ _])?(?:sym[a-z]*|half[ _]width)")
#: Words for the nominal size (ISO 286-1 and its translations, from memory).
_NOMINAL = re.compile(r"nom|nenn|size|diam|基本|基準|公称|呼び|номин")
#: What the words of a layout for a part of a value say of it.
_OF_GROUPS = {"VALUE": "value", "UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "tolerance"}


def is_aspect(key: str) -> bool:
    """Whether a key states a part of a value."""
    return bool(aspect_of(key)[0])


def is_quantity(value: dict[str, Any]) -> bool:
    """Whether an object holds the parts of one value: one of them at least, and one thing more at most."""
    parts = sum(map(is_aspect, value))
    return parts > 0 and len(value) - parts - sum(map(says_unit, value)) < 2


@lru_cache(maxsize=MOST_REMEMBERED)
def aspect_of(key: str) -> tuple[str, str]:
    """What of a value a key states, and the unit that it carries (``nominal_mm``); empty where it states no part."""
    word = key.rpartition(INNER)[2].rpartition(":")[2].strip()
    if aspect := _ASPECTS.get(word.casefold(), "") or _ASPECTS.get(word_key(word).replace(" ", "_"), ""):
        return aspect, ""
    if version_of(key):
        return "value", ""
    if aspect := "half" if _HALF.fullmatch(word.casefold()) else _said(word):
        return aspect, ""
    rest, unit = unit_behind(word)
    return (_ASPECTS.get(word_key(rest).replace(" ", "_"), "") or _said(rest), unit) if unit else ("", "")


def limits_of(node: Any) -> tuple[float, ...]:
    """The two limits of a size that an object holds, which lie near each other; none for another."""
    stated = {aspect_of(key)[0]: value for key, value in node.items()} if isinstance(node, dict) else {}
    numbers = [stated[said] for said in ("min", "max") if isinstance(stated.get(said), (int, float))]
    near = len(numbers) == 2 and 0 < numbers[0] <= numbers[1] <= 1.01 * numbers[0]
    return tuple(numbers) if near else ()


#: Words for above and below as they stand beside a size over its two deviations; places elsewhere (common practice).
_ABOVE_BELOW = tuple(
    frozenset(words.split("|"))
    for words in (
        "up|upp|hi|high|oben|ob|o|haut|sup|supérieur|superior|superiore|arriba|alto|sopra|верх|вверх|в|上|上限|上側|上极限",
        "down|lo|low|unten|un|u|bas|inf|inférieur|inferior|inferiore|abajo|basso|sotto|низ|вниз|н|下|下限|下側|下极限",
    )
)
#: Deviations are as small as this share of the size (common practice: far more than IT 13 of any size).
_SMALL = 0.05


def deviations_in(node: dict[str, Any]) -> dict[str, str]:
    """Keys of an object that say above and below and hold the two deviations of the size before them, by what each is.

    Both are numbers, small beside that size, and the upper one is the larger.
    """
    numbers = {key: v for key, v in node.items() if isinstance(v, (int, float)) and not isinstance(v, bool)}
    found = [[key for key in numbers if local(key) in words] for words in _ABOVE_BELOW]
    if len(found[0]) != 1 or len(found[1]) != 1:
        return {}
    upper, lower = found[0][0], found[1][0]
    keys = [*node]
    before = [numbers[key] for key in keys[: min(keys.index(upper), keys.index(lower))] if key in numbers]
    small = bool(before) and max(abs(numbers[upper]), abs(numbers[lower])) <= _SMALL * before[-1]
    return {upper: "upper", lower: "lower"} if small and numbers[upper] >= numbers[lower] else {}


def is_nominal(key: str) -> bool:
    """Whether a key says the nominal size, and not only that a value stands there."""
    said = any(_NOMINAL.match(word) for word in (word_key(bare(key)), local(key)))
    return said and aspect_of(key)[0] == "value"


def has_tolerance(node: Any) -> bool:
    """Whether an object holds the two deviations, the two limits or the class of a size, and nothing else."""
    said = {
        key: aspect_of(key)[0]
        for key in (node if isinstance(node, dict) else ())
        if local(key) not in CONTEXT and not says_unit(key)
    }
    whole = [{"upper", "lower"}, {"max", "min"}, {"tolerance"}, {"tolerance", "upper", "lower"}, {"half"}]
    return 0 < len(said) < 4 and set(said.values()) in whole


@lru_cache(maxsize=MOST_REMEMBERED)
def _said(word: str) -> str:
    """What of a value a word of a layout in any of the languages states (``scostamento superiore``, ``公差``)."""
    if caseless(word) in MEASURED:
        return ""
    groups = dictionary().group_words.get(group_key(word), ()) or dictionary().group_words.get(word_key(word), ())
    said = {_OF_GROUPS[group] for group in groups if group in _OF_GROUPS} if "UNIT" not in groups else set()
    return said.pop() if len(said) == 1 and "RESULT" not in groups else ""


#: Keys that hold the size of a seat inside an object for it.
DIAMETERS = (
    "diameter", "dia", "diam", "d", "ø", "⌀", "φ", "durchmesser", "dmr", "diamètre", "diametre", "diámetro", "diametro",
    "диаметр", "диам", "直径", "直徑", "径", "轴径", "孔径", "軸径", "穴径",
)  # fmt: skip
#: Words for a size beside its tolerance, which are words for a name elsewhere.
_SIZES = ("maß", "mass", "dim", "dimension", "cote", "cota", "quota", "medida", "misura", "размер", "尺寸", "寸法")
_OF_SIZE = frozenset(("diameter", "seat", "bore", "bearing", "shaft", "housing", "inside", "outside"))


@define(eq=False)
class Pile:
    """Cells of one parameter, aspect and unit, as they are met."""

    heading: Heading
    label: str
    cells: list[Any] = field(factory=list)
    rows: list[int] = field(factory=list)
    pointers: list[str] = field(factory=list)


@define(frozen=True)
class Here:
    """What is known at a node: its machine and station, the keys of the objects around it, the unit they state."""

    machine: str = ""
    station: str = ""
    trail: tuple[str, ...] = ()
    unit: str = ""

    def at(self, machine: str, station: str) -> "Here":
        """Another machine or station at the same place of the document."""
        return evolve(self, machine=machine, station=station)

    def below(self, word: str) -> "Here":
        """The same below a key, or below one that says nothing."""
        return evolve(self, trail=(*self.trail, word)) if word else self


def says_size(word: str) -> bool:
    """Whether a key in the object of a seat holds its size: a word for a diameter, maybe with those for the seat."""
    if word in DIAMETERS or caseless(word) in map(caseless, _SIZES):
        return True
    said = concepts_said(word)
    return "diameter" in said and said <= _OF_SIZE


def version_of(key: str) -> Version:
    """Which of several statements a key of an object says its value is: an ``override`` beside the ``value``."""
    return dictionary().versions.get(word_key(key), "")
