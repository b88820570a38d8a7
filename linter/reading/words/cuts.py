"""Ways to cut a name of a table into a core and what stands around it: an aspect, a station, a feature."""

import re
from functools import cache, lru_cache

from linter.model.packaged import columns_of
from linter.model.vocabulary import parameter
from linter.reading.cells.signs import LONGEST_TEXT, caseless, fold
from linter.reading.cells.units import dimension_of, known_unit, split_heading_unit
from linter.reading.words.dictionary import (
    CAMEL,
    JOINT,
    MOST_REMEMBERED,
    Version,
    dictionary,
    group_key,
    heading_words,
    word_key,
)
from linter.reading.words.eastern import unit_right_behind
from linter.reading.words.mapping import Aspect
from linter.reading.words.parts import PARTS, is_bearing, names_place
from linter.reading.words.places import place_cuts

_ASPECTS: dict[str, Aspect] = {
    "VALUE": "value", "UNIT": "unit", "UPPER": "upper", "LOWER": "lower", "MAX": "max", "MIN": "min", "CLASS": "class",
}  # fmt: skip
BRACKET = re.compile(r"(.*\S)[ _]*[\[({]([^\[\](){}]+)[\])}]")
_UNIT_BEFORE = re.compile(r"[\[(]([^\[\](){}]+)[\])][ _]*([^\W\d].*[^\W_][^\[(]*)")
_FITS = f"fit|passung|ajustement|ajuste|accoppiamento|{fold('посадка')}"
#: Words that say a size stands with its tolerance, which its cells show anyway.
WITH_TOLERANCE = re.compile(
    r"[ _,]*[(\[]?(?:\bw/|\b(?:with|incl|including|mit|inkl|avec|con|and|und|et|y|e|и)\b\.?|&|\+(?=[ _])|(?<=[^ _])\+)"
    rf"[ _]?(?:its )?(?:tol(?:erance|eranz|érance|leranza|l|erancia)?s?|допуск|{_FITS})\b\.?[)\]]?$"
    r"|[(（]?(?:公差付き?|含公差|带公差)[)）]?$|[と与和及](?:はめあい|配合|公差)$", re.IGNORECASE,
)  # fmt: skip
# Units as the last word of a name in camel case (boreDiameterMm); a capital there begins a word and is no SI prefix.
_CAMEL_UNITS = {
    "Mm": "mm", "Um": "um", "Microns": "um", "Micron": "um", "Rpm": "rpm", "DegC": "degC", "Celsius": "degC",
    "DegF": "degF", "Deg": "deg", "Kg": "kg", "MPa": "MPa", "Mpa": "MPa", "GPa": "GPa", "Gpa": "GPa", "Gmm": "g.mm",
    "Percent": "%", "Pct": "%", "Hours": "h", "Hrs": "h", "Nm": "N.m", "KN": "kN", "Kn": "kN", "Newton": "N",
    "Newtons": "N", "Inch": "in", "Inches": "in", "In": "in", "Uin": "uin", "Lbf": "lbf", "Lb": "lb", "Lbs": "lb",
    "NPerMm": "N/mm", "MmPerS": "mm/s", "MmPerSec": "mm/s",
    "TrMin": "tr/min", "UMin": "U/min", "GiriMin": "giri/min",
}  # fmt: skip
_CAMEL_UNIT = re.compile(rf"(.*[a-z0-9])({'|'.join(sorted(_CAMEL_UNITS, key=len, reverse=True))})")
#: Units that may stand behind a name with a blank only (``Bore mm``); none that is a word or a letter of its own.
_UNIT_BEHIND = re.compile(
    r"(.*?[^ ,])(?: [-–—])? (mm|µm|um|inch|in|lbf?|psi|[mµu]in|°F|degF|rpm|r/min"
    r"|1/min|min-1|min\^-1|kg|°C|degC|deg|MPa|kN|h|hrs|cSt|g\.mm|g·mm|N·m|N\.m|%|мм|мкм|об/мин|кг|кН|ч|сСт|г·мм"
    r"|giri/min|tr/min|U/min)"
)
#: Units of one letter behind a comma, a newton of Cyrillic letters among them; one that does not fit may be a station.
_LETTER_UNIT = re.compile(r"(.*[^ ,]), ([Nhчgг])|(.*[\u0400-\u04ff].*[^ ,]|[CFP]_?\w{0,3}), (H)")
#: The same in small names that underscores join (``precarico_n``).
_LETTER_UNIT_JOINED = re.compile(r"([^A-Z ]*[^\W\d_]{3})_([NnHhч])")
#: Temperatures at which viscosities are stated (ISO 3448, from memory) at the end of a name.
_AT_TEMPERATURE = re.compile(r"(?<!\d)(?:40|100) ?(?:°C|degC)[)\]]?$")
LETTER_STATION = re.compile(r"[A-ZА-Я]|[1-9][0-9]?|00?[1-9]")
#: A mark of a footnote behind a name (``Diamètre 1) / mm``).
FOOTNOTE = re.compile(r"(?<=[^\W\d])(?: \d\)| ?[*†‡]{1,3})(?=$|,| ?[/\[(])")
#: The lesser and the greater of two limits at the end of a name, before its unit (``Welle Ø von [mm]``).
_BEFORE_UNIT = r"(?=$|,? ?[\[(][^\[\]()]{1,8}[\])]$|, [^ ,]{1,6}$)"
_FROM = re.compile(rf"(?<=\S)[ _](?:from|von|desde|{fold('от')}){_BEFORE_UNIT}", re.IGNORECASE)
_TO = re.compile(rf"(?<=\S)[ _](?:to|bis|hasta|{fold('до')}){_BEFORE_UNIT}", re.IGNORECASE)
#: When a load or a temperature holds, behind its name (``at rated flow``, ``bei Nennlast``).
_WHEN = re.compile(
    r" (?:(?:at|under) (?:the )?(?:(?:rated|nominal|full|max(?:imum|\.)?|continuous|normal|design|best efficiency) )+"
    r"(?:load|flow|speed|rating|power|duty|output|point|torque|operation)"
    r"|bei (?:Nenn|Voll|Dauer|Maximal|max\. )?(?:last|leistung|drehzahl|betrieb|förderstrom)"
    r"|(?:à|au|en) (?:pleine charge|charge nominale|débit nominal|régime nominal|vitesse nominale|régime continu)"
    r"|(?:a|con|en) (?:plena carga|carga nominal|caudal nominal|velocidad nominal|régimen continuo)"
    r"|(?:a|in) (?:pieno carico|carico nominale|portata nominale|velocità nominale|servizio continuo))$"
    r"|(?:定格|全|最大)(?:荷重|負荷|流量|回転|運転)時の?|(?:额定|满|最大)(?:负荷|负载|流量|转速|工况)(?:时的?|下的?)",
    re.IGNORECASE,
)
#: A number that ends what stands in brackets (``(Lager 1)``), and no footnote.
_NUMBER_IN_BRACKET = re.compile(r"\([^()]+ \d\)")
#: A capital behind an underscore, or between two words: the station in names of CAD parameters (``SHAFT_SEAT_DIA_A``).
_CAPITAL = re.compile(
    r"(?:[^\W\d]{2,}|[^\W\d]\d+)"
    r"(?:_[A-Z]$|[ _.\-](?:[AEOY]|N?DE)$|[ _.\-/][A-Z][ _.\-/](?=[^\W\d]{2})|[_.\-/]N?DE[ _.\-/])"
    r"|^N?DE[ _.\-/]|^[A-Z][./](?=[^\W\d]{2})|(?<=[a-z])N?DE(?=$|[ _.\-])"
    r"|(?:brg|bearing|pos|seat|lager|palier)_[a-h]_(?=[^\W\d]{2})"
)
#: A drive end with blanks around it, which is an article between words of other languages than English.
_DRIVE_END = re.compile(r"(?<=[^\W\d_]) N?DE (?=[^\W\d_])")
#: In capitals an article that begins what a feature is of.
_ARTICLE = re.compile(r"^(?:DU|DEL|DI)(?= )")
#: A standard in brackets behind a name (``(ISO 492)``, ``(nach DIN 620-2)``, ``(GB/T 307.1)``).
_STANDARD = re.compile(
    r" ?[(\[](?:[^\W\d]{1,12}\.? ){0,2}(?:(?:DIN|EN|ISO|JIS|GB|GB/T|ГOCT|OCT|ИCO|ANSI|ABMA|ASME|NF|UNE|UNI|VDI|BS|GOST)"
    r"[ -]?)+(?:[A-Z] ?)?\d[\d.:–-]*(?:, ?[^()\[\]]{1,20})?[)\]]$"
)
_STANDARD_BEHIND = re.compile(
    r" (?:(?:acc\. to|according to|as per|nach|per|gemäß|gem\.|to|by|selon|según|secondo|по) )?"
    r"(?P<standard>(?:DIN|EN|ISO|JIS|GB|GB/T|ГOCT|GOST|ANSI|ABMA|VDI|BS|NF|UNE|UNI)(?: (?:EN|ISO))*(?: ?[A-Z])?"
    r"[ -]?[1-9]\d{1,4}(?:-\d{1,4})?)$"
)
#: Standards of tolerances of rolling bearings: ISO 492 and its national ones (from memory).
_OF_BEARINGS = re.compile(r"(?:ISO|ИCO) ?492|DIN 620|JIS B ?1514|GB/T ?307|ГOCT ?520")
#: Deviations in their own unit behind a name, whose cells have a size and its class (``(écarts en µm)``).
_DEVIATIONS_IN = re.compile(r"[ _]?[(\[](?P<said>[^()\[\]]{3,40})[)\]](?=$|,? ?[^ ]{1,8}$| ?[(\[][^()]{1,8}[)\]]$)")
_DEVIATIONS = frozenset(
    caseless(word)
    for word in (
        "deviations", "deviation", "limit deviations", "dev.", "tol.", "tolerances", "tolerance", "Abmaße", "Abmasse",
        "Grenzabmaße", "Toleranzen", "Toleranz", "écarts", "tolérances", "tolérance", "scostamenti", "tolleranze",
        "tolleranza", "desviaciones", "tolerancias", "tolerancia", "許容差", "公差", "寸法許容差", "偏差", "极限偏差",
        "отклонения", "откл.", "допуски", "допуск", "предельные отклонения",
    )
)  # fmt: skip
_MICRONS = re.compile(r"(?:[ :]|\b(?:in|en|в)\b|単位|单位)*(?:µm|um|мкм|mkm)$")
#: A name in a script of its own and then in Latin letters.
TWO_SCRIPTS = re.compile(
    r"((?:[^A-Za-z]|[A-Za-z](?![a-z]))*[\u0400-\u9fff][^A-Za-z]*(?: [A-Za-z]{1,2})?)[ /]+([A-Za-z][A-Za-z].*)"
)
#: Small words joined by dashes, as keys of documents are.
_DASHED = re.compile(r"[^\W_]+(?:-[^\W_]+)*-[^\W\d_][^\W_]*")
#: The axis or face that a runout is measured to, at the end of a name (ISO 1101, from memory).
_DATUM = re.compile(
    r"[ _](?:to|rel\.? to|relative to|about|zu|zur|bezogen auf|gegen|par rapport [àa]|p/r|rispetto a|riferito a"
    r"|respecto a|resp\. a|относительно|к|отн\.)(?: (?:the|der|l'|la|el|al|common|общей|оси|баз[еы]?))*"
    r"(?: ?(?:axis|datum|Achse|Bezug|axe|référence|asse|eje|ось))? [A-ZА-Я](?:[-–/ ]?[A-ZА-Я])?$"
    r"|(?:对|相对于?|对于)(?:基准|轴线|公共轴线)?[A-Z](?:[-–][A-Z])?(?:基准|轴线)?$"
)
_WORD = re.compile(r"[^\W\d_]{3}|[\u3040-\u30ff\u3400-\u9fff]")
STATION_PREFIX = re.compile(
    r"(?:bearing|station|position|pos|seat|lagerstelle|lager|palier|roulement|rodamiento|apoyo|cuscinetto|supporto"
    rf"|{fold('опора')}|{fold('подшипник')})"
    r"[ _.-]+(?=\S{1,3}$)"
    r"|(?:bearing|brg|pos|lager|seat|lagerstelle|palier)(?=[1-9][0-9]?$)"
    r"|brg[ _.-]+(?=\S{1,2}$)",
    re.IGNORECASE,
)
_TEMPERATURE_BEFORE = re.compile(r"[Ttϑ](?:[ _.]+|(?=[Mm]ax|[Mm]in|[Aa]mb))(?P<rest>.*\w.*)")
#: Small words that are none of the abbreviations for stations with the same letters (``LA``, ``DE``, ``CA``).
ARTICLES = frozenset(("la", "le", "de", "da", "di", "as", "los", "las", "les", "des", "al", "am", "an", "im", "in"))
#: A value behind a colon, whose unit is not that of a name.
_VALUE_BEHIND = re.compile(r"[:：=]\s*[+\-−]?\d[\d.,]*$")
#: A piece between two others that may be a station: a capital, or a word looked up (``shaft/DE/seat``).
_INNER = re.compile(r"(?<=[^\W\d_])[ _.\-/]([^\W\d_]{1,12})(?=[ _.\-/][^\W\d_])")
#: Outside or inside diameter with a stop behind each letter (``Hsg. O.D.``), whose first letter is no station.
_STOPPED = re.compile(r"(?<![^\W_])([OI])\. ?D\b\.?(?! ?[×xX])")


def plain_name(folded: str) -> str:
    """A folded name without what tells nothing of it: colon, footnote, standard, a tolerance that its cells show."""
    folded = _STOPPED.sub(r"\1D", folded)
    folded = _FROM.sub(" min", _TO.sub(" max", folded))
    name = WITH_TOLERANCE.sub("", _WHEN.sub("", folded.rstrip(" :≤≥<>=")))
    name = _DATUM.sub("", name if _NUMBER_IN_BRACKET.search(name) else FOOTNOTE.sub("", name))
    if standard := _STANDARD_BEHIND.search(name):
        return name[: standard.start()] + _bearing_by(standard["standard"])
    if "(" not in name and "[" not in name:
        return name
    if said := _DEVIATIONS_IN.search(name):
        micron = _MICRONS.search(said["said"])
        if micron and caseless(said["said"][: micron.start()].strip()) in _DEVIATIONS:
            name = f"{name[: said.start()]}{name[said.end() :]}".strip()
    if (standard := _STANDARD.search(name)) is None:
        return name
    return name[: standard.start()] + _bearing_by(standard[0])


def without_standard(folded: str) -> str:
    """A folded name without the standard behind it (``Подшипник ГОСТ 8338``)."""
    found = _STANDARD_BEHIND.search(folded) or _STANDARD.search(folded)
    return folded[: found.start()] if found else folded


def _bearing_by(standard: str) -> str:
    """The word for a bearing where a standard is one of theirs: a tolerance class by it is the bearing's."""
    return " bearing" if _OF_BEARINGS.search(standard) else ""


def sign_behind(text: str) -> tuple[str, Aspect] | None:
    """A name and the deviation that a sign behind it says (``Shaft tol +``), or None."""
    match = _SIGN_SUFFIX.fullmatch(text)
    return (match[1], "upper" if "+" in match[2] else "lower") if match else None


def holds_a_capital(name: str) -> bool:
    """Whether a capital, or a drive end, stands in a name as stations do."""
    return bool(_CAPITAL.search(name) or (_DRIVE_END.search(name) and not is_article("DE", name)))


def is_own_letter(piece: str, name: str) -> bool:
    """Whether a piece beside a name is its symbol, or that behind the word for a bearing; few reach a station D."""
    letter = {"outside_diameter": "D", "balance_grade": "G"}.get(name)
    return letter == piece[-1:].upper() and (len(piece) == 1 or is_bearing(piece[:-2]))


def joint_cuts(text: str, most: int) -> list[tuple[int, int]]:
    """Places of the outer joints of a name: the first few and the last few."""
    joints = [(found.start(), found.end()) for found in JOINT.finditer(text)]
    joints += [(found.start(), found.start()) for found in CAMEL.finditer(text)]
    joints = sorted({joint for joint in joints if joint[0] > 0 and joint[1] < len(text)})
    return joints if len(joints) <= 2 * most else joints[:most] + joints[-most:]


_SIGN_SUFFIX = re.compile(
    r"(.*[^\s_+\-(\[])(?! - )[ _]*((?:tol(?:erance)?\.?[ _]*)?[(\[]?[+-](?:[ _]*tol(?:erance)?\.?)?[)\]]?)",
    re.IGNORECASE,
)


@lru_cache(maxsize=MOST_REMEMBERED)
def aspect_cuts(text: str) -> tuple[tuple[str, Aspect], ...]:
    """Ways to cut a name into a rest and a word for an aspect of it."""
    found: list[tuple[str, Aspect]] = []
    if signed := sign_behind(text):
        found.append(signed)
    if (bracket := BRACKET.fullmatch(text)) and (aspect := _aspect_of(bracket[2])):
        found.append((bracket[1], aspect))
    for start, end in joint_cuts(text, 3):
        for rest, word in ((text[:start], text[end:]), (text[end:], text[:start])):
            if len(word) <= 30 and (aspect := _aspect_of(word)):
                found.append((rest.strip(" ,:"), aspect))
    return tuple((without_article(rest, text), aspect) for rest, aspect in found if rest)


def _aspect_of(word: str) -> Aspect | None:
    headings = dictionary()
    cleaned = word.strip(" ,:_")
    if cleaned.casefold().replace("_", " ") in {"size", "item", "class no"}:
        return None
    groups = headings.groups.get(cleaned) or headings.group_words.get(group_key(cleaned), ())
    wanted = [_ASPECTS[group] for group in groups if group in _ASPECTS]
    return wanted[0] if len(wanted) == 1 else None


def version_cuts(text: str) -> list[tuple[str, Version]]:
    """Ways to cut a name into a rest and a word for one of several statements: ``(new)``, ``old``, ``proposed``."""
    versions = dictionary().versions
    found: list[tuple[str, Version]] = []
    if (bracket := BRACKET.fullmatch(text)) and (version := versions.get(word_key(bracket[2]))):
        found.append((bracket[1], version))
    for start, end in joint_cuts(text, 2):
        for rest, word in ((text[:start], text[end:]), (text[end:], text[:start])):
            if len(word) <= 30 and (version := versions.get(word_key(word.strip(" ,:")))):
                found.append((rest.strip(" ,:"), version))
    return [(rest, version) for rest, version in found if rest]


@lru_cache(maxsize=MOST_REMEMBERED)
def station_cuts(text: str) -> tuple[tuple[str, str, bool], ...]:
    """Ways to cut a name into a rest and a station or feature; strict where the sign between them is made for that."""
    found: list[tuple[str, str, bool]] = []
    for sign, name_first in (("@", True), ("::", False), (":", False), ("/", False), (".", False)):
        if sign in text:
            before, _, after = text.partition(sign) if name_first else text.rpartition(sign)
            # a sign with a blank beside it is one of a text, not of a path: ``Rundheit: Wellensitz``, ``Conc. albero``
            strict = name_first or not (before.endswith(" ") or after.startswith(" "))
            before, after = before.strip(), after.strip()
            if before and after:
                found.append((before, after, strict) if name_first else (after, before, strict))
                if not name_first:
                    found.append((before, after, False))
    for start, end in joint_cuts(text, 3):
        before, after = text[:start].strip(" ,"), text[end:].strip(" ,")
        if before and after:
            found.append((before, after, False))
            found.append((after, before, False))
    for inner in _INNER.finditer(text):  # Shaft seat A cylindricity
        capital = len(inner[1]) == 1 and inner[1].isupper()
        word = len(inner[1]) > 1 and inner[1] not in ARTICLES and not text.isupper()
        if capital or (word and word_key(inner[1]) in dictionary().stations):
            found.append((f"{text[: inner.start()]} {text[inner.end() + 1 :]}", inner[1], False))
            break
    return *found, *((rest, place, True) for rest, place in place_cuts(text))


_WORDS = re.compile(r"[^\W_]+")


@cache
def _romance_words() -> frozenset[str]:
    """Words of French, Italian and Spanish names that are none of English or German ones."""
    of: dict[bool, set[str]] = {True: set(), False: set()}
    for _, word, language in (*heading_words(), *columns_of(PARTS, "concepts", "word", "language")):
        romance = language in ("fr", "es", "it")
        of[romance].update(word_key(word).split() if romance or language in ("en", "de") else ())
    return frozenset(word for word in of[True] - of[False] if len(word) > 2)


def is_article(piece: str, text: str) -> bool:
    """Whether a piece of a name is no drive end but the word ``de`` between words of French or Spanish (``RA_DE_EJE``).

    So are ``I``, ``E``, ``O`` and ``Y`` between words of Italian and Spanish (``DISTANZA FRA I CUSCINETTI``).
    A ``T`` that begins a name is the symbol of a temperature.
    """
    if piece == "T" and text.startswith("T "):
        return True  # T servicio: a temperature
    words = _WORDS.findall(word_key(text))
    if not words or piece.casefold() in (words[0], words[-1]):
        return False
    if piece.casefold() in ("sotto", "sous", "bajo", "unter", "under"):
        return True  # Ø albero sotto anello int.
    if piece.casefold() not in ("de", "i", "e", "o", "y"):
        return False
    return not _romance_words().isdisjoint(words)


def without_article(rest: str, text: str) -> str:
    """The rest of a name without the article that linked it with what was cut off before it."""
    if is_article(rest[:2], text) and rest[2:3] in (" ", "_"):
        return rest[2:].lstrip(" _")
    return _ARTICLE.sub("", rest, count=1) if text.isupper() else rest


def station_at_end(feature: str) -> str:
    """The station at the end of a path of names (``assembly.bearings.front``, ``Welle.Lagersitz_A``), or empty."""
    pieces = [piece for piece in JOINT.split(feature) if piece]
    if len(pieces) < 2:
        return ""
    word = word_key(pieces[-1]) in dictionary().stations and len(pieces[-1]) > 2
    letter = LETTER_STATION.fullmatch(pieces[-1]) is not None and names_place(pieces[-2])
    return pieces[-1] if word or letter else ""


def spelled_out(key: str) -> tuple[str, ...]:
    """A word key, and what it says where it writes diameter or bearing in short (``shaft dia``, ``Brg Bore``)."""
    if key.startswith("brg "):
        key = "bearing " + key[4:]
    if (last := key.rpartition(" ")[2]) not in ("dia", "diam", "ø"):
        return (key,)
    rest = key[: -len(last)].rstrip()
    return key, f"{rest} diameter", f"{rest}durchmesser"


def unit_behind(text: str) -> tuple[str, str]:
    """A heading and the unit behind it, in brackets or in one of the other ways of writing; no unit where none is."""
    return (text, "") if len(text) > LONGEST_TEXT else _unit_behind(text)


@lru_cache(maxsize=MOST_REMEMBERED)
def _unit_behind(text: str) -> tuple[str, str]:
    if _AT_TEMPERATURE.search(text):
        return text, ""  # the temperature at which the value holds
    if camel := _CAMEL_UNIT.fullmatch(text):
        return camel[1], _CAMEL_UNITS[camel[2]]
    rest, unit = split_heading_unit(text)
    if not unit and (letter := _LETTER_UNIT.fullmatch(text)):
        return (letter[1], letter[2]) if letter[2] else (letter[3], letter[4])
    if not unit and (letter := _LETTER_UNIT_JOINED.fullmatch(text)):
        return letter[1], {"n": "N"}.get(letter[2], letter[2])
    if _VALUE_BEHIND.search(rest):
        return text, ""
    if not unit and (behind := _UNIT_BEHIND.fullmatch(text)) and not _VALUE_BEHIND.search(behind[1]):
        return behind[1], behind[2]
    return (rest, unit) if unit else unit_right_behind(text)


def unit_trouble(name: str, unit: str) -> str:
    """Why a unit does not fit a parameter, or nothing."""
    wanted = parameter(name).unit
    stated = known_unit(unit)
    if not wanted:
        return f"{name} has no unit, and the name carries {unit}"
    if stated and stated.dimension != dimension_of(wanted):
        angle_signs = dimension_of(wanted) == "angle" and unit in {"'", '"', "''"}
        if not angle_signs:
            return f"{name} is measured in {wanted}, and the name carries {unit}"
    return ""


def is_short(text: str) -> bool:
    """Whether a piece can be a symbol rather than a word (``OD``, or two Chinese or Japanese signs)."""
    return len(text) < 2 or (len(text) == 2 and word_key(text) not in dictionary().words)


def temperature_spelled_out(name: str, unit: str) -> str:
    """A name that carries a unit of temperature, with the word in place of its letter (``T albero``, ``Tmax``)."""
    stated = known_unit(unit) if unit else None
    letter = _TEMPERATURE_BEFORE.fullmatch(name) if stated and stated.dimension == "temperature" else None
    return f"temperature {letter['rest']}" if letter else name


#: What sort of value a name holds, written before it as programmers do (common practice).
_TYPE_BEFORE = re.compile(r"(?:dbl|flt|sng|dec|int|lng|num|str|txt|bln|bool|enm|enum|var|par|prm|param|val)_?(?=[A-Z])")


def with_blanks(text: str) -> str:
    """A name joined by underscores with blanks in their place, by dashes (``max-speed-rpm``) with underscores.

    Without the sort of its value before it (``dblShaftDia``). Empty for any other.
    """
    if found := _TYPE_BEFORE.match(text):
        return text[found.end() :]
    if _DASHED.fullmatch(text):
        return text.replace("-", "_")
    joined = "_" in text and " " not in text and _WORD.search(text) is not None
    return text.replace("_", " ").strip() if joined else ""


def unit_moved_behind(text: str) -> str:
    """A name before which its unit stands in brackets (``[in]Shaft_dia``), with the unit behind; or empty."""
    match = _UNIT_BEFORE.fullmatch(text)
    return f"{match[2]} [{match[1]}]" if match and known_unit(match[1].strip()) is not None else ""
