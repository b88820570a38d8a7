"""Words for seats of a shaft or a housing that are of a seal, a coupling, a wheel or a tool (common practice)."""

import re
from functools import lru_cache

from linter.reading.words.dictionary import MOST_REMEMBERED

_EN = (
    r"\b(?:seal(?:ing)?|coupling|gear(?:wheel)?|pinion|impeller|fan|pulley|sprocket|key|magnet|encoder|flange|propeller"
    r"|turbine wheel|cutter|tool|collet|nut)"
    r"[ _-](?:seat(?:ing)?|spigot|land|journal)\b|\bcover[ _-]spigot\b|\b(?:tool|collet)[ _-]bore\b"
    r"|\bshaft[ _-]end (?:dia\b|diameter|ø)"
)
_DE = (
    r"(?:dichtungs?|dichtring|wellendicht(?:ring)?|simmerring|kupplungs|zahnrad|ritzel|laufrad|l[üu]fter(?:rad)?"
    r"|riemenscheiben|scheiben|naben|magnet|geber|verdichterrad|turbinenrad|werkzeug)s?-?(?:sitz|aufnahme|zentrierung)"
    r"|\bdichtsitz|\bdichtfl[äa]che|(?:deckel|flansch)zentrierung|wellenende[nsr]?[ -]?(?:ø|durchmesser)"
)
_JOINT = r"(?: du | de la | de l'| de l’| de | d'| d’| del | della | dell'| dell’| di | para )"
_FR = (
    rf"\b(?:portée|siège|centrage){_JOINT}(?:joint|étanchéité|accouplement|pignon|roue\b|ventilateur|poulie|couvercle"
    r"|engrenage|hélice|clavette)|\balésage porte-outil|\bdiamètre (?:du )?bout d['’]arbre"
)
_ES = (
    rf"\b(?:asiento|alojamiento|centraje)(?:{_JOINT}| )(?:la |el )?(?:retén|junta|sello|acoplamiento|engranaje|piñón"
    r"|rodete|ventilador|polea|tapa|impulsor|chaveta)|\bportaherramienta|\bdiámetro (?:del? )?(?:punta|extremo) de eje"
)
_IT = (
    rf"\b(?:sede|centraggio){_JOINT}(?:tenuta|paraolio|giunto|ingranaggio|pignone|girante|ventola|puleggia|coperchio"
    r"|linguetta)|\bsede (?:tenuta|paraolio|giunto|ingranaggio|pignone|girante|ventola|puleggia|linguetta)"
    r"|\bcentraggio coperchio|\bforo portautensile|\bdiametro estremità albero"
)
_RU = (
    r"(?:посадк\w*|посадочн\w+ \w+|шейк\w*|диаметр\w*|центровк\w*)(?: под| для)? (?:уплотнен|манжет|сальник|муфт"
    r"|шестерн|зубчат\w+ колес|рабоч\w+ колес|крыльчатк|вентилятор|шкив|инструмент)|центровк\w+ крышк"
    r"|диаметр конца вала"
)
_JA = (
    r"(?:オイルシール|シール|カップリング|継手|歯車|ギヤ|ギア|ピニオン|羽根車|インペラー?|ファン|プーリー?)"
    r"(?:の)?(?:取付|はめあい|嵌合)?(?:部|座)(?!品)|カバー(?:の)?インロー|工具穴|軸端径"
)
_ZH = (
    r"(?:密封圈?|油封|联轴器|聯軸器|齿轮|齒輪|叶轮|葉輪|风扇|風扇|风轮|皮带轮|带轮|链轮)(?:配合)?(?:位|处|段|座|档|部位)"
    r"|端盖止口$|刀具孔|轴伸直径|軸伸直徑"
)
_OTHER = re.compile("|".join((_EN, _DE, _FR, _ES, _IT, _RU, _JA, _ZH)))
#: Words for a bearing or its position: what is named with one may be the bearing's seat (``Lagersitz Lüfterseite``).
_BEARING = re.compile(
    r"bearing|\bbrg|lager|roulement|palier|rodamiento|cojinete|cuscinett|подшипник|опор|軸受|轴承|軸承|ベアリング"
)
_LONGEST = 60


@lru_cache(maxsize=MOST_REMEMBERED)
def is_other_seat(text: str) -> bool:
    """Whether a text names a seat of a shaft or a housing that is no bearing's, and no bearing."""
    if not 3 <= len(text) <= _LONGEST:
        return False
    key = text.casefold()
    return _OTHER.search(key) is not None and _BEARING.search(key) is None
