"""What names of one position have in common: ``前轴承``, ``前端``; ``vorn``, ``vorderes Lager``; ``DE``, ``drive end``.

The word for a bearing, a side, an end or a place is put aside, and words for one place are brought to one: as cases
and genders change them, and as they are cut short (common practice of machine builders).
"""

import re
from functools import cache

from linter.reading.cells.signs import fold
from linter.reading.words.parts import is_bearing

_BETWEEN_WORDS = re.compile(r"[\s_\-./:：()（）]+")
_SIGNS = "[\u3040-\u30ff\u3400-\u9fff]"
#: A bearing, a side or an end behind a position in a script that does not part words.
_AT_END = re.compile(
    rf"(?P<stem>.*(?:{_SIGNS}|[A-Z0-9]))の?(?:軸受部?|轴承|支承|支点|(?:側|侧|端)の?(?:軸受部?|轴承|支承)?|部)$"
)
#: The end of a German adjective for a side (``antriebsseitig``).
_SIDEWARD = re.compile("seitig(?:e[rnms]?)?$")
#: A bearing before the letter, number or side of its position in such a script (``軸受A``, ``轴承1``, ``轴承驱动端``).
BEARING_BEFORE = re.compile("^(?:軸受|轴承|支承) ?(?=[A-Z0-9]{1,3}$|[前后後左右上下非反驱驅駆負负固游自])")
#: Words for a side, an end or a place, which name none by themselves.
_SIDES = (
    "side end position pos station place seite seitig ende stelle lagerstelle lagerseite lato estremità posizione lado "
    "extremo posición côté coté extrémité position palier supporto appoggio apoyo soporte сторона стороны конец место "
    "позиция опора"
)
_ALIKE = (
    "front fwd forward vorn vorne vorderes vordere vorderer vorderen vorder avant av delantero delantera anteriore "
    "anterior передний передняя переднее переднего передней передн спереди 前 前部 前方 フロント",
    "rear aft back hinten hinteres hintere hinterer hinteren hinter arrière ar arriere trasero trasera posteriore "
    "posterior задний задняя заднее заднего задней задн сзади 后 後 后部 後部 後方 リア リヤ",
    "upper top oben oberes obere oberer oberen ober haut supérieur supérieure superior superiore верхний верхняя "
    "верхнее верхнего верхней сверху 上 上部",
    "lower bottom unten unteres untere unterer unteren unter bas inférieur inférieure inferior inferiore нижний нижняя "
    "нижнее нижнего нижней снизу 下 下部",
    "left links linkes linke linker linken gauche izquierdo izquierda sinistro sinistra левый левая левое левого левой "
    "слева 左",
    "right rechts rechtes rechte rechter rechten droite droit derecho derecha destro destra правый правая правое "
    "правого правой справа 右",
    "de drive antriebsseite antrieb antriebs commande accionamiento comando привода приводная приводной 驱动 驅動 駆動",
    "nde nichtantriebsseite 非驱动 非驅動 反駆動",
)
_WORDS = {fold(word): group.split()[0] for group in _ALIKE for word in group.split()}
_OF_SIDES = frozenset(map(fold, _SIDES.split()))
_NOT = frozenset(("non", "opposite", "opp", "gegen", "nicht", "opposé", "opuesto", "opposto", "противоположная"))


@cache
def stem_of(name: str) -> str:
    """What a station's name says beside the words for a bearing and a side, one word for each place; or empty."""
    text = BEARING_BEFORE.sub("", fold(name))
    while (shorter := _AT_END.match(text)) is not None:
        text = shorter["stem"]
    words = [_SIDEWARD.sub("seite", word) for word in _BETWEEN_WORDS.split(text.casefold()) if word]
    words = [word for word in words if word not in _OF_SIDES and not is_bearing(word)]
    negated = any(word in _NOT for word in words)
    said = [_WORDS.get(word, word) for word in words if word not in _NOT]
    if negated and said == ["de"]:
        return "nde"
    return " ".join(words if negated else said)
