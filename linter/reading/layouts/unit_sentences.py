"""Sentences that state units for kinds of value: lengths of several kinds, loads and masses.

``Quote in mm; tolleranze geometriche in µm; rugosità in µm``. The words are those of ISO 1101, ISO 286-1 and
ISO 21920-1 in eight languages, from memory, and common practice.
"""

import re
from functools import cache

from linter.reading.cells.signs import caseless
from linter.reading.cells.units import known_unit

_CLAUSE = re.compile(r"[;；、|。，()\[\]]|[.,] |[.,]$")
#: A word that may be a unit of length: a clause ends behind it.
_UNIT = re.compile(r"[A-Za-zµμß-ÿ]+|[А-яё]+|毫米|微米|ミクロン|マイクロメートル|ミリメートル|ミリ")
#: What joins a clause to the one before it, and what says the table's units before kinds and units.
_JOINED = re.compile(r"^(?:[-–—,/&+*:：\s]|(?:and|with|but|und|mit|et|avec|y|con|e|и|а)\s+)+", re.IGNORECASE)
_UNITS_OF_ALL = re.compile(
    r"^(?:unless\s+otherwise\s+(?:stated|specified|noted|indicated)"
    r"|(?:falls|sofern|soweit|wenn)\s+nicht\s+anders\s+(?:angegeben|vermerkt|bezeichnet)|sauf\s+(?:indication|mention)\s+contraire"
    r"|salvo\s+(?:diversa\s+indicazione|indicazione\s+contraria|indicación\s+contraria)|si\s+no\s+se\s+indica\s+lo\s+contrario"
    r"|se\s+non\s+(?:diversamente|altrimenti)\s+(?:indicato|specificato)|если\s+не\s+(?:указано|оговорено)\s+(?:иное|иначе|другое)"
    r"|特に指定(?:の)?(?:ない|なき)(?:限り|場合は?)|指示なき場合は?|除(?:非)?另有(?:说明|注明|规定)外?|units?(?:\s+of\s+measure(?:ment)?)?|einheit(?:en)?"
    r"|unités?|unità(?:\s+di\s+misura)?|unidad(?:es)?(?:\s+de\s+medida)?|единицы(?:\s+измерения)?|计量单位|单位|単位"
    r"|notes?|hinweise?|anmerkung(?:en)?|remarques?|nota|notas|примечани[ея]|注記|注|备注)"
    r"\s*[:：]\s*",
    re.IGNORECASE,
)
_SAID = re.compile(
    r"(?P<words>[^\d:：=]*?[^\W\d])\s*(?:(?:all|alle|toutes|tutti|tutte|todas|todos|все)\s)?"
    r"(?:(?:are|is|sind|sont|sono|son|given|stated|angegeben|indiqués|indicate|indicadas|указаны)\s+)*"
    r"(?:[:：=]|\b(?:in|en|в)\b|の?単位は?|的?单位为?|は|\s|(?<=[\u3040-\u9fff])(?=[A-Za-zµμ]))\s*[:：=]?\s*[\[(]?(?P<unit>[^\W\d]{1,12}|[^\W\d]*[µμ″\"]\w*)[\])]?",
    re.IGNORECASE,
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
    "load": (
        "loads|load|forces|force|bearing loads|radial and axial loads|lasten|lagerlasten|belastungen|lagerbelastungen|"
        "kräfte|lagerkräfte|belastung|charges|efforts|forces sur paliers|charges sur roulements|carichi|forze|carico|"
        "carichi sui cuscinetti|cargas|fuerzas|cargas sobre rodamientos|нагрузки|нагрузка|силы|усилия|荷重|力|負荷|"
        "軸受荷重|载荷|负荷|力|轴承载荷"
    ),
    "mass": (
        "masses|mass|weights|weight|massen|gewichte|gewicht|poids|masse e pesi|pesi|peso|pesos|masas|масса|массы|вес|"
        "質量|重量|质量"
    ),
}  # fmt: skip


#: The measure of roughness behind its unit (``surface finish in microinches Ra``).
_OF_ROUGHNESS = re.compile(r"; +(?:Ra|AA|CLA|RMS)\b\.?", re.IGNORECASE)
#: What a unit of each kind measures, where it is no length.
_MEASURES = {"load": "force", "mass": "mass"}
#: What stands between subjects of one clause, and what says all of them.
_AND = re.compile(r"\s*(?:,|&|/|\+|[;、・·和与]|及び?|ならびに|および|\b(?:and|und|sowie|et|y|e|и)\b)\s*")
_ALL = re.compile(
    r"^(?:(?:all|alle|toutes\s+les|tutte\s+le|todas\s+las|все|(?:all\s+)?other|(?:the\s+)?remaining|übrige|sonstige"
    r"|(?:les\s+)?autres|(?:le\s+)?altre|(?:las\s+)?(?:demás|otras)|остальные|прочие)\s+|其余|其他|其它|その他の?)"
)


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
    """Unit by the kind of value that a sentence states it for.

    The kinds are ``size``, ``form``, ``rough``, ``deviation`` (lengths), ``load`` and ``mass``.

    A word for tolerances alone speaks of deviations and of geometrical tolerances both. A clause that names kinds and
    no unit is stated together with the next one (``Dimensions, roughness in mm``), and a unit alone behind a word for
    the table's units is that of sizes (``Units: mm, deviations µm``). A text that is not ``alone`` in its row is a
    sentence only where several clauses say kinds: ``Rundlauf in µm`` is a heading.
    """
    found: dict[str, set[str]] = {}
    waiting: list[str] = []
    saying, of_all = 0, set[str]()
    for clause in _clauses(text):
        general = _UNITS_OF_ALL.sub("", clause)
        said = _SAID.fullmatch(general)
        kinds = _subjects(said["words"]) if said else []
        measured = {_MEASURES.get(kind, "length") for kind in kinds or ("size",)}
        word = unit_spelt(said["unit"]) if said else ""
        unit = known_unit(word) if word else None
        if unit is None or measured != {unit.dimension}:
            waiting = [*waiting, *_subjects(general)] if _subjects(general) else []
            saying += bool(waiting)
            if general != clause and _is_length(general):
                of_all.add(general)
            continue
        saying += bool(kinds)
        waiting = [kind for kind in waiting if _MEASURES.get(kind, "length") in measured]
        for kind in [*waiting, *kinds] if kinds else ():
            for one in ("deviation", "form") if kind == "tolerance" else (kind,):
                found.setdefault(one, set()).add(word)
        waiting = []
    if len(of_all) == 1 and found:
        found.setdefault("size", of_all)
    return {kind: units.pop() for kind, units in found.items() if len(units) == 1} if alone or saying > 1 else {}


def unit_of_all(text: str) -> str:
    """The unit of length that a text states for all of a table that nothing else is said of; or empty."""
    ways = [(clause, _UNITS_OF_ALL.sub("", clause)) for clause in _clauses(text)]
    said = [general for clause, general in ways if general != clause and _is_length(general)]
    others = any(clause == general and _is_length(general) for clause, general in ways)  # Units: mm / inch
    return said[0] if len(said) == 1 and not others else ""


def _clauses(text: str) -> list[str]:
    """Clauses of a text: up to a mark that ends one, or a unit of length."""
    if not 5 <= len(text) <= 200 or not _UNIT.search(text):
        return []
    ended = _UNIT.sub(lambda word: f"{word[0]}; " if _is_length(word[0]) else word[0], text)
    ended = _OF_ROUGHNESS.sub("; ", ended)
    clauses = (_JOINED.sub("", clause.strip(" *:")).strip() for clause in _CLAUSE.split(ended))
    return [clause for clause in clauses if clause]


def _is_length(word: str) -> bool:
    unit = known_unit(unit_spelt(word)) if len(word) > 1 and word.lower() != "in" else None
    return unit is not None and unit.dimension == "length"


def unit_spelt(word: str) -> str:
    """A word as the table of units spells it: ``MICROINCHES`` in small letters, where it has no such unit."""
    return word.lower() if len(word) > 2 and known_unit(word) is None else word
