"""Ways of Chinese and Japanese to write a name: without blanks, with its symbol or its unit right behind a word."""

import re

from linter.model.vocabulary import vocabulary
from linter.reading.words.limits import IS_LARGEST, IS_SMALLEST

_HAN = "\u3040-\u30ff\u3400-\u9fff"
#: Units that may stand right behind a word (``径向游隙um``); a letter of its own may be a symbol or a station.
_UNIT = re.compile(
    rf"(.*[{_HAN})])(mm|µm|um|rpm|r/min|1/min|min-1|min\^-1|min⁻¹|°C|%|N/mm|N/µm|N/um|N[.·]m|g[.·]mm|kg|kN|MPa|mm²/s|mm2/s|cSt|m/s)"
)
_FORCE_OR_TIME = re.compile(r"(.*(?:[力荷载重]|寿命|寿命时间|寿命時間|间隔|間隔|周期))([Nh])")
#: A symbol right behind a word, or right before it (``宽度B``, ``d1内圈挡边``).
_BEHIND = re.compile(rf"(?P<name>.*[{_HAN})]) ?(?P<symbol>[Ø]?[A-Za-zαν][A-Za-z0-9_]{{0,6}}(?: max| min)?|Ø)")
_BEFORE = re.compile(rf"(?P<symbol>Ø?[A-Za-zα][A-Za-z0-9_]{{0,6}})(?P<name>[{_HAN}].*)")
# Other symbols of the standards and of makers' lists (ISO 281, JIS B 1518, GB/T 4662; common practice).
_SYMBOLS = {
    "dynamic_rating": "C Cr Ca", "static_rating": "C0 C0r Cor C0a Co", "fatigue_load_limit": "Cu Pu",
    "preload_force": "F F0 Fp Fv Fa0", "spring_free_length": "L0 H0 Lf", "spring_installed_length": "L1 H1",
    "spring_solid_length": "Lc Hs Hb Lb", "spring_rate": "c k K", "spring_inside_diameter": "Di D1",
    "spring_outside_diameter": "De D2 Da", "ring_chamfer": "r rs rsmin rmin r1s",
    "ambient_temperature": "Ta Tamb Tu", "temperature_max": "Tmax", "temperature_min": "Tmin",
    "shaft_temperature": "Ts Tw", "housing_temperature": "Th TH Tg", "radial_load": "Fr",
    "axial_load": "Fa", "contact_angle": "α α0 a", "limiting_speed": "nlim ng nG",
    "reference_speed": "nref nr nθr", "speed_max": "nmax n", "speed_operating": "n", "rotor_mass": "m",
    "residual_unbalance": "U Uper Ures", "balance_grade": "G", "pitch_diameter": "Dpw dm PCD",
    "ball_diameter": "Dw", "ball_count": "Z z", "blade_count": "Z z", "shaft_seat_diameter": "d ds",
    "housing_seat_diameter": "D Dh DH", "shaft_shoulder_diameter": "da", "housing_shoulder_diameter": "Da",
    "shaft_fillet_radius": "ra R r rg", "housing_fillet_radius": "rb R r rg ra", "shaft_seat_roughness": "Ra",
    "housing_seat_roughness": "Ra", "seal_ring_cord": "d2", "seal_ring_inside_diameter": "d1",
    "shaft_groove_diameter": "d2 d1", "housing_groove_diameter": "d2 D2", "shaft_groove_width": "m",
    "housing_groove_width": "m", "required_life": "Lh L10h L10 L L10mh", "radial_clearance": "Gr",
    "bearing_span": "L l", "inner_groove_ratio": "fi", "outer_groove_ratio": "fe", "radial_stiffness": "kr Kr",
    "nut_torque": "T M", "shaft_undercut_width": "b b1 f", "housing_undercut_width": "b b1 f",
    "shaft_undercut_depth": "h h1 t", "housing_undercut_depth": "h h1 t", "operating_temperature": "T t",
    "first_critical_speed": "nc nk nc1 Nc n1", "inner_ring_shoulder_diameter": "d1 d2",
    "outer_ring_shoulder_diameter": "D1 D2", "base_oil_viscosity_40": "ν40", "base_oil_viscosity_100": "ν100",
    "cooling_factor": "Ws", "heat_capacity": "Cth", "shaft_seat_cylindricity": "t1 t",
    "housing_seat_cylindricity": "t1 t", "shaft_seat_runout": "t3 t", "housing_seat_runout": "t3 t",
    "shaft_shoulder_runout": "t4 t t2", "housing_shoulder_runout": "t4 t t2",
}  # fmt: skip


_KANA_BEHIND = re.compile("(?<=軸受|取付|締付|組付|組込)[けみ](?!替)")
_LONG_VOWEL = re.compile("(?<=[ァ-ヴ]{2})ー(?![ァ-ヴー])")


def shorter_kana(text: str) -> str:
    """A Japanese name without kana that some firms write (``軸受け``, ``モーター``); empty where it has none."""
    plain = _LONG_VOWEL.sub("", _KANA_BEHIND.sub("", text))
    return plain if plain != text else ""


def unit_right_behind(text: str) -> tuple[str, str]:
    """A name and the unit right behind its last Chinese or Japanese word; no unit where none is."""
    match = _UNIT.fullmatch(text) or _FORCE_OR_TIME.fullmatch(text)
    return (match[1], match[2]) if match else (text, "")


def names_and_symbols(text: str) -> list[tuple[str, str]]:
    """Ways to cut a symbol off a name that it stands right behind or before."""
    return [(m["name"], m["symbol"]) for m in (_BEHIND.fullmatch(text), _BEFORE.fullmatch(text)) if m]


def is_symbol(symbol: str, name: str) -> bool:
    """Whether a piece is a usual symbol of a parameter; a diameter sign before it says nothing more."""
    if name.endswith("_diameter"):
        symbol = symbol.removeprefix("Ø")
    if name.endswith(IS_LARGEST) or name in IS_SMALLEST:
        symbol = symbol.removesuffix(" max").removesuffix(" min")
    own = re.sub("[_ ]", "", vocabulary()[name].symbol)
    return symbol in ("", own, *_SYMBOLS.get(name, "").split()) or symbol.replace("_", "") == own


def is_small_symbol(symbol: str, name: str) -> bool:
    """Whether a piece in small letters is a usual symbol of a parameter, where capitals may be a station."""
    return symbol.islower() and is_symbol(symbol, name)


# Words for the places of bearings in a machine (common practice); each needs a word for end, side or bearing behind it.
_CHINESE_PLACES = (
    "非?驱动|非?传动|非?负[载荷]|非?轴伸|自由|固定|游动|浮动|定位|前|后|左|右|上|下|中间?|电机|马达|电动机|水?泵|叶轮|涡轮|压气机|压缩机"
    "|风[扇机]|联轴器|皮?带轮|齿轮|输入|输出|刀具|工作|主轴前|主轴后|N?DE|[A-H]|[甲乙丙]|[ⅠⅡⅢ]|[1-9]"
)
_JAPANESE_PLACES = (
    "反?駆動|反?負荷|反?軸端|反?継手|反?工具|反?モーター?|固定|自由|遊動|浮動|前|後|左|右|上|下|中間|羽根車|インペラー?|タービン"
    "|コンプレッサー?|圧縮機|ファン|ブロワー?|プーリー?|カップリング|入力|出力|ポンプ|フロント|リ[アヤ]|ロータ|ギ[アヤ]|歯車|N?DE|[A-H]"
)
_NUMBER = r"(?:[Nn][Oo]\.? ?)?(?:[A-H]|[1-9][0-9]?)(?:号|#)?|第[一二三四1-9]|[1-9]#"
_NO_SEAT = "(?![箱座室位孔档挡])"
_POSITION = re.compile(
    rf"(?:{_CHINESE_PLACES})(?:(?:端|侧)(?:轴承|支承|支点)?|(?:轴承|支承|支点){_NO_SEAT})"
    rf"|(?:{_JAPANESE_PLACES})(?:(?:側|端|部)(?:の?軸受)?|軸受{_NO_SEAT})"
    rf"|(?:轴承|軸受|ベアリング|支承|支点|位置|(?:轴承)?位)[- ]?(?:{_NUMBER})"
    rf"|(?:{_NUMBER})(?:轴承|軸受|支承|支点|位|侧|側|端){_NO_SEAT}"
)
#: The seat of a numbered bearing (``轴承位1直径``, ``ジャーナル2振れ``): the bearing has the number, the seat the name.
_NUMBERED_SEAT = re.compile(
    r"(?P<seat>(?:轴承)?(?:位|档|挡|室|座孔|孔|座)|轴颈|(?P<ja>(?:軸受)?(?:部|穴|座)|ジャーナル|軸部))"
    r"[ _-]?(?P<number>[1-9A-H])#?(?P<rest>[ _の的-]?[\u3040-\u30ff\u3400-\u9fffR].*)"
)
_NUMBERED_BEARING = re.compile(rf"(?:{_NUMBER})?(轴承|軸受|ベアリング)(?:[- ]?(?:{_NUMBER}))?")
#: A side right before a word for a part (``前轴颈直径``).
_SIDE_OF_PART = re.compile("[前后後左右][の的]?(?:[轴軸座壳箱]|ハウジング|シャフト|ベアリング)")
_LONGEST_POSITION = 12


def is_position(text: str) -> bool:
    """Whether a text is a place of a bearing and nothing else (``前轴承``, ``2#轴承``, ``DE側``, ``第1軸受``)."""
    return _POSITION.fullmatch(text) is not None


def positions_before(text: str) -> list[tuple[str, str]]:
    """Ways to cut a place of a bearing off the beginning of a name, the shortest place first."""
    ends = range(2, min(len(text) - 1, _LONGEST_POSITION) + 1)
    cut = [(text[:end], text[end:].lstrip("の的 -_:/")) for end in ends if is_position(text[:end])]
    cut += [(place, f"{numbered[1]}{rest}") for place, rest in cut if (numbered := _NUMBERED_BEARING.fullmatch(place))]
    if seat := _NUMBERED_SEAT.fullmatch(text):
        bearing = f"{'軸受' if seat['ja'] else '轴承'}{seat['number']}"
        rest = seat["rest"].lstrip(" _の的-")
        cut = [(bearing, seat["seat"] + rest), (bearing, rest), *cut]
    if _SIDE_OF_PART.match(text):
        cut.insert(0, (text[0], text[1:].lstrip("の的")))
    return [(place, rest) for place, rest in cut if rest and not rest.startswith(("間", "间"))]  # 2軸受間距離
