"""Cells that state several parameters in one text: a duty with its times, an undercut with its sizes.

``intermittent, 20 min on / 10 min off``; ``F0,6x0,3`` (form, radius and depth in mm: DIN 509, from memory); ``floating,
outer ring free``. Words of eight languages: common practice.
"""

import re
from functools import lru_cache

from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import LONGEST_TEXT, caseless
from linter.reading.cells.springs import Said, of_oil, of_spring
from linter.reading.cells.units import MOST_REMEMBERED, known_unit

_ON = (
    "on|run|runs|running|operation|operating|work|working|load|ein|an|betrieb|lauf|laufzeit|betriebszeit|last|marche|"
    "en marche|fonctionnement|service|travail|marcha|en marcha|funcionamiento|trabajo|encendido|marcia|in marcia|"
    "lavoro|funzionamento|acceso|работа|работы|вкл|включено|運転|稼働|オン|入|运行|运转|工作|开"
)
_OFF = (
    "off|pause|rest|idle|stop|stopped|standstill|cooling|break|aus|stillstand|ruhe|stand|arrêt|à l'arrêt|repos|paro|"
    "parada|reposo|descanso|pausa|fermo|sosta|riposo|spento|пауза|паузы|стоп|останов|перерыв|отдых|выкл|停止|休止|オフ|切|停|停机|停歇"
    "|休息"
)
_AND = "and|und|et|e|y|и"
_TIME = r"(?P<{0}>\d+(?:[.,]\d+)?) ?(?P<{0}_unit>(?!on|off)[^\W\d_]{{1,8}}|分钟?|秒|小?时)\.?"
_ON_OFF = [
    re.compile(pattern)
    for pattern in (
        rf"{_TIME.format('on')} (?:{_ON}) ?[,;/+、，&-]? ?(?:{_AND} )?{_TIME.format('off')} (?:{_OFF})",
        rf"(?:{_ON})[ :=]+{_TIME.format('on')} ?[,;/+、，&-]? ?(?:{_AND} )?(?:{_OFF})[ :=]+{_TIME.format('off')}",
        rf"(?:{_ON}) ?{_TIME.format('on')} ?[,;/+、，&-]? ?(?:{_OFF}) ?{_TIME.format('off')}",
        rf"{_TIME.format('on')} ?(?:{_ON}) ?[,;/+、，&-]? ?{_TIME.format('off')} ?(?:{_OFF})",
    )
]
_BLANKS = re.compile(r"[ \u3000]+")
#: Form, radius and depth of an undercut, maybe behind the number of its standard.
_UNDERCUT = re.compile(
    r"(?:(?:DIN|ISO)[ -]?\d+ ?[-–—: ]? ?)?(?:Form |form |forme |forma )?(?P<form>[EF]) ?"
    r"(?:R ?)?(?P<radius>\d+(?:[.,]\d+)?) ?[x×X*] ?(?P<depth>\d+(?:[.,]\d+)?)(?: ?mm)?(?: ?,? ?(?:DIN|ISO)[ -]?\d+)?"
)
#: A ring of a bearing that may move, behind what it does.
_FREE = caseless(
    "free|loose|slides|sliding|movable|moves|axially free|free to slide|free to move|verschiebbar|"
    "verschieblich|axial verschiebbar|axial frei|frei|gleitet|lose|libre|mobile|coulissante|coulisse|glissante|glisse|"
    "flottante|deslizante|desliza|desplazable|móvil|libera|libero|scorrevole|scorre|свободно|свободен|свободное|"
    "подвижное|подвижно|скользит|плавающее|自由|移動|移动|可移動|可移动|スライド|摺動|游动|滑动|可滑动|可游动|可滑動|能移动"
)
_RINGS = {
    "outer": "outer ring|outer race|od|außenring|aussenring|bague extérieure|aro exterior|anillo exterior|"
             "anello esterno|наружное кольцо|外輪|外圈",
    "inner": "inner ring|inner race|innenring|bague intérieure|aro interior|anillo interior|anello interno|"
             "внутреннее кольцо|内輪|内圈",
}  # fmt: skip
_FREE_RING = {
    ring: re.compile(
        rf"(?:(?:{caseless(words)})[ がはの]?(?:is |ist |est |es |è )?(?:{_FREE}|floats|floating)"
        rf"|(?:{_FREE}) (?:{caseless(words)}))"
    )
    for ring, words in _RINGS.items()
}
_SPRING = re.compile(caseless("spring|feder|ressort|muelle|resorte|molla|molle|пружин|ばね|バネ|弹簧|彈簧"))
_APART = re.compile(rf"[,;，；、:：/+()（）]| (?:{caseless('with|mit|avec|con|с|со|and|und|et|y|e|и')}) ")
_AROUND = " ,;:，；、：-–—/+()（）"
_ALONE_FREE = re.compile(rf"(?:{_FREE})")
_GREASES = ("grease", "grease for high speed")
_FILL = re.compile(r"(?P<number>\d{1,3}(?:[.,]\d+)?) ?%")
_FILL_WORDS = re.compile(
    caseless("fill|füllung|gefüllt|füllgrad|remplissage|rempli|relleno|llenado|riempimento|заполнен|充填|封入|填充")
)


@lru_cache(maxsize=MOST_REMEMBERED)
def of_duty(text: str) -> Said:
    """Duty and times of running and standing that a text states together; empty where it states no two times."""
    plain = _BLANKS.sub(" ", text.casefold()) if len(text) <= LONGEST_TEXT else ""
    for pattern in _ON_OFF:
        found = pattern.search(plain)
        if found is None:
            continue
        times = {name: (found[name], found[f"{name}_unit"]) for name in ("on", "off")}
        units = {name: known_unit(unit) for name, (_, unit) in times.items()}
        if any(unit is None or unit.dimension != "time" for unit in units.values()):
            continue
        rest = f"{plain[: found.start()]} {plain[found.end() :]}".strip(" ,;:，；：()（）-–—")
        duty = read_choice("duty", rest) if rest else "intermittent"
        if duty != "intermittent":
            return {}
        return {"duty": duty, **{f"{name}_time": f"{number} {unit}" for name, (number, unit) in times.items()}}
    return {}


@lru_cache(maxsize=MOST_REMEMBERED)
def of_undercut(text: str) -> dict[str, str]:
    """Form, radius and depth of an undercut that a text designates (DIN 509); empty for another text."""
    found = _UNDERCUT.fullmatch(text.strip())
    if found is None:
        return {}
    return {"form": found["form"], "radius": f"{found['radius']} mm", "depth": f"{found['depth']} mm"}


@lru_cache(maxsize=MOST_REMEMBERED)
def of_role(text: str) -> Said:
    """What a text says of an axial function, of the spring that does it and of the ring that may move."""
    if found := of_spring("axial_role", text):
        return found
    ring = free_ring_said(text)
    plain = _BLANKS.sub(" ", caseless(text)) if len(text) <= LONGEST_TEXT else ""
    rest = (_FREE_RING[ring].sub("", plain) if ring else plain).strip(_AROUND)
    pieces = [piece for part in _APART.split(rest) if (piece := part.strip(_AROUND))]
    springs = [piece for piece in pieces if _SPRING.search(piece) and not any(map(str.isdigit, piece))]
    others = [read_choice("axial_role", piece) for piece in pieces if piece not in springs]
    if not (ring or springs) or not set(others) <= {"floating", "spring-loaded"} or not pieces:
        return {}
    said = of_spring("axial_role", rest)
    role = "spring-loaded" if springs else str(others[0])
    return {**said, "axial_role": role} | ({"free_ring": ring} if ring else {})


_ROLE_BEHIND = re.compile(r"(?P<position>.*\S) ?[(（\[](?P<role>[^()（）\[\]]+)[)）\]]")


def without_role(text: str) -> str:
    """A position without the axial function in brackets behind it (``Lager A (Festlager)``)."""
    found = _ROLE_BEHIND.fullmatch(text.strip())
    return found["position"] if found is not None and says_role(found["role"]) else text


def says_role(text: str) -> bool:
    """Whether a text says how a bearing is located, maybe with the spring that does it and the ring that may move."""
    return isinstance(read_choice("axial_role", text), str) or "axial_role" in of_role(text)


#: Signs that set the pieces of a name apart, words in it, and words that deny the one behind them.
_PIECES = re.compile(r"[()\[\]{},;:/（）、，]|\s[–—-]\s")
_WORDS = re.compile(r"[^\W\d_]{4,}")
_DENIES = re.compile(r"(?i)\b(?:non|not|nicht|kein|pas|no|не|un)\b|非|不")


@lru_cache(maxsize=MOST_REMEMBERED)
def role_of_name(station: str) -> str:
    """The axial function that the name of a position says (``A (Festlager)``), empty for none or for two.

    A piece in brackets or behind a sign says it as a whole (``non-locating``); behind a word that denies none is said.
    """
    pieces = filter(None, (piece.strip() for piece in _PIECES.split(station)))
    whole = [piece for piece in pieces if _WORDS.search(piece) and isinstance(read_choice("axial_role", piece), str)]
    if not whole and _DENIES.search(station):
        return ""
    said = (read_choice("axial_role", word) for word in whole or _WORDS.findall(station))
    roles = {role for role in said if isinstance(role, str)}
    return roles.pop() if len(roles) == 1 and roles <= {"locating", "floating"} else ""


@lru_cache(maxsize=MOST_REMEMBERED)
def free_ring_said(text: str) -> str:
    """The ring that a text says may move (``outer ring free``), or empty."""
    plain = _BLANKS.sub(" ", caseless(text)) if len(text) <= LONGEST_TEXT else ""
    rings = [ring for ring, pattern in _FREE_RING.items() if pattern.search(plain)]
    return rings[0] if len(rings) == 1 else ""


def without_free_ring(text: str) -> str:
    """A text, folded, without the words that say which ring may move."""
    plain = _BLANKS.sub(" ", caseless(text)) if len(text) <= LONGEST_TEXT else ""
    for pattern in _FREE_RING.values():
        plain = pattern.sub(" ; ", plain)
    return plain


def is_free(text: str) -> bool:
    """Whether a text says that the ring whose seat it stands beside may move (``slides``, ``verschiebbar``)."""
    return _ALONE_FREE.fullmatch(_BLANKS.sub(" ", caseless(text)).strip(" .")) is not None


def of_lubrication(text: str) -> Said:
    """The class of viscosity and the fill of grease that a text about a lubrication states."""
    said = of_oil("lubrication", text)
    before, _, share = (piece.strip() for piece in text.rpartition(","))
    if (
        before
        and len(text) <= LONGEST_TEXT
        and _FILL.fullmatch(share)
        and read_choice("lubrication", before) in _GREASES
    ):
        return {"lubrication": before, "grease_fill": share}  # for life, 25 %
    fill = fill_said(text)
    return said | ({"grease_fill": fill} if fill else {})


def fill_said(text: str) -> str:
    """The share of the free volume that a text says is filled with grease (``grease, 30 % fill``), or empty."""
    found = _FILL.findall(text) if len(text) <= LONGEST_TEXT and _FILL_WORDS.search(caseless(text)) else []
    return f"{found[0]} %" if len(found) == 1 else ""
