"""Sentences that state units of length for kinds of value.

``Quote in mm; tolleranze geometriche in µm; rugosità in µm``. The words are those of ISO 1101, ISO 286-1 and
ISO 21920-1 in eight languages, from memory, and common practice.
"""

import re
from functools import cache

from linter.reading.cells.signs import caseless
from linter.reading.cells.units import known_unit

_CLAUSE = re.compile(r"[;；、|。()\[\]]|[.,，] |[.,]$")
_SAID = re.compile(
    r"(?P<words>[^\d:：=]*?[^\W\d])\s*(?:(?:all|alle|toutes|tutti|tutte|todas|todos|все)\s)?"
    r"(?:(?:are|is|sind|sont|sono|son|given|stated|angegeben|indiqués|indicate|indicadas|указаны)\s+)*"
    r"(?:[:：=]|\b(?:in|en|в)\b|の?単位は?|的?单位为?|は|\s)\s*[:：=]?\s*[\[(]?(?P<unit>[^\W\d]{1,12}|[^\W\d]*[µμ″\"]\w*)[\])]?"
)
_WORDS = {
    "form": (
        "geometrical tolerances|geometric tolerances|geometrical tolerance|form tolerances|"
        "form and position tolerances|tolerances of form|tolerances of form and position|"
        "form and run-out tolerances|form and runout|runouts|run-outs|run-out|runout|form|form and location|"
        "form and position|gd&t|gps|cylindricity and run-out|cylindricity and runout|run-out tolerances|"
        "runout tolerances|form errors|form deviations|form- und lagetoleranzen|formtoleranzen|"
        "lauftoleranzen|lagetoleranzen|form und lage|form und lauf|form- und lauftoleranzen|"
        "geometrische toleranzen|formabweichungen|rundlauf|lauf|planlauf|rundlaufabweichungen|"
        "tolérances géométriques|tolérances de forme|tolérances de forme et de position|battements|battement|"
        "défauts de forme|forme et position|tolleranze geometriche|tolleranze di forma|oscillazioni|"
        "errori di forma|tolleranze di forma e posizione|forma e posizione|tolerancias geométricas|"
        "tolerancias de forma|oscilaciones|alabeos|tolerancias de forma y posición|forma y posición|幾何公差|"
        "形状公差|振れ|振れ公差|形状・位置公差|几何公差|形位公差|形状公差|跳动|跳动公差|形状和位置公差|"
        "допуски формы|допуски формы и расположения|"
        "отклонения формы|биения|биение|геометрические допуски|допуски формы и биения|"
        "отклонения формы и расположения"
    ),
    "rough": (
        "finish|finishes|surface finishes|finish ra|surface|surfaces|surface texture|texture|roughness values|"
        "oberfläche|oberflächengüte|oberflächengüten|rauhigkeit|rautiefe|rautiefen|mittenrauwert|rauheitswerte|finition|"
        "états de surfaces|fini de surface|finitura|finiture|rugosità superficiale|acabado|acabados|acabados "
        "superficiales|чистота поверхности|чистота|仕上げ|仕上げ面|表面性状|表面仕上げ|光洁度|表面光洁度|表面质量|"
        "roughness|surface roughness|ra|roughness ra|surface finish|rauheit|rauheiten|oberflächenrauheit|"
        "rauheit ra|oberflächen|rugosité|rugosités|rugosité ra|états de surface|état de surface|rugosità|"
        "rugosità ra|finitura superficiale|rugosidad|rugosidades|rugosidad ra|acabado superficial|粗さ|表面粗さ|"
        "面粗さ|面粗度|粗糙度|表面粗糙度|шероховатость|шероховатость ra|шероховатость поверхности|"
        "шероховатость поверхностей"
    ),
    "deviation": (
        "deviations|limit deviations|deviation|size deviations|abmaße|abmasse|grenzabmaße|abweichungen|"
        "écarts|écarts limites|scostamenti|scostamenti limite|desviaciones|許容差|寸法許容差|偏差|极限偏差|отклонения|"
        "предельные отклонения|отклонения размеров"
    ),
    "size": (
        "dimensions|dimension|dims|lengths|sizes|linear dimensions|nominal dimensions|measures|maße|masse|abmessungen|"
        "längen|längenmaße|nennmaße|größen|cotes|longueurs|cotes nominales|cotas|dimensiones|medidas|misure|dimensioni|"
        "quote|размеры|линейные размеры|寸法|寸法値|長さ|尺寸|长度|线性尺寸"
    ),
    "tolerance": (
        "tolerances|tolerance|toleranzen|toleranz|tolérances|tolérance|tolleranze|tolleranza|tolerancias|"
        "tolerancia|公差|允差|допуски|допуск"
    ),
}  # fmt: skip


#: What stands between subjects of one clause, and what says all of them.
_AND = re.compile(r"\s*(?:,|&|/|\+|[;、・·和与]|及び?|ならびに|および|\b(?:and|und|sowie|et|y|e|и)\b)\s*")
_ALL = re.compile(r"^(?:all|alle|toutes les|tutte le|todas las|все)\s+")


@cache
def _kinds() -> dict[str, str]:
    return {caseless(word): kind for kind, words in _WORDS.items() for word in words.split("|")}


def _subjects(text: str) -> list[str]:
    """Kinds of value that words speak of (``Dimensions and geometrical tolerances``); none where one is not known."""
    whole = _ALL.sub("", caseless(text).strip()).removesuffix(" ra")
    ends = [(m.start(), m.end()) for m in _AND.finditer(whole)] + [(len(whole), len(whole))]
    found, start = [], 0
    while start < len(whole):
        # the longest one first: "form and position" is one subject
        said = next(((kind, end) for stop, end in reversed(ends) if (kind := _kinds().get(whole[start:stop]))), None)
        if said is None:
            return []
        found.append(said[0])
        start = said[1]
    return found


def kind_units(text: str, *, alone: bool = True) -> dict[str, str]:
    """Unit of length by the kind of value that a sentence states it for: ``size``, ``form``, ``rough``, ``deviation``.

    A word for tolerances alone speaks of deviations and of geometrical tolerances both. A clause that names kinds and
    no unit is stated together with the next one (``Dimensions, roughness in mm``). A text that is not ``alone`` in its
    row is a sentence only with several clauses: ``Rundlauf in µm`` is a heading.
    """
    found: dict[str, set[str]] = {}
    clauses = [clause.strip(" *:") for clause in _CLAUSE.split(text)] if 5 <= len(text) <= 200 else []
    waiting: list[str] = []
    for clause in clauses if alone or len([*filter(None, clauses)]) > 1 else ():
        said = _SAID.fullmatch(clause)
        unit = known_unit(said["unit"]) if said else None
        if said is None or unit is None or unit.dimension != "length":
            waiting = [*waiting, *_subjects(clause)] if _subjects(clause) else []
            continue
        kinds = _subjects(said["words"])
        for kind in [*waiting, *kinds] if kinds else ():
            for one in ("deviation", "form") if kind == "tolerance" else (kind,):
                found.setdefault(one, set()).add(said["unit"])
        waiting = []
    return {kind: units.pop() for kind, units in found.items() if len(units) == 1}
