"""Speeds named by what turns: ``Fan speed``, ``Trommeldrehzahl``, ``vitesse de la turbine``, ``叶轮转速``.

What turns on the shaft turns as the shaft does, so its speed is the machine's (common practice). A drive that may stand
beside the machine, with a belt or a gear between, is no such word.
"""

import re
from collections.abc import Sequence
from functools import cache, lru_cache

from linter.reading.cells.units import known_unit, split_quantity
from linter.reading.words.cuts import unit_behind
from linter.reading.words.dictionary import MOST_REMEMBERED, dictionary, word_key

_NOUNS = (
    "rotor shaft spindle fan blower impeller wheel drum bowl turbine pump disc disk cutter roll roller mandrel "
    "chuck propeller runner crank tool basket beater welle wellen läufer rotor spindel lüfter gebläse laufrad "
    "trommel turbinen turbine pumpen pumpe scheiben scheibe walzen walze fräser schleifscheiben schleifscheibe "
    "werkzeug verdichter zentrifugen zentrifuge rad ventilator arbre rotor broche ventilateur roue turbine "
    "tambour pompe disque rouleau bol panier hélice albero mandrino ventola girante rotore tamburo turbina "
    "pompa disco rullo soffiante elettromandrino eje árbol husillo ventilador rodete tambor turbina bomba "
    "disco rodillo soplante impulsor вала ротора шпинделя вентилятора колеса барабана турбины насоса диска "
    "ролика рабочего"
)
_SIGNED = (
    "主軸 回転軸 軸 ロータ ローター 羽根車 ファン ドラム タービン ポンプ 砥石 工具 スピンドル 主轴 轴 转子 "
    "叶轮 风机 风扇 转鼓 滚筒 涡轮 水泵 泵 砂轮 电主轴"
)
_JOINS = r"(?:(?:del|della|dello|de la|de el|du|de|di|of the|of|der|des|vom) |dell |de l |d )?"
_SPEEDS = (
    "speed", "rotational speed", "rpm", "drehzahl", "umdrehungen", "vitesse", "vitesse de rotation", "régime",
    "velocità", "velocità di rotazione", "numero di giri", "giri", "velocidad", "velocidad de giro",
    "velocidad de rotación",
    "revoluciones", "частота вращения", "обороты", "скорость вращения",
)  # fmt: skip
_SIGNED_SPEEDS = "(?:最大|最高|额定|定格|使用|常用|工作)?(?:回転数|回転速度|转速)"
_MOST = 60
#: Of few hundred to some hundred thousand r/min (common practice for small fast machines); no usual figure in m/s, 1/s.
_USUAL = re.compile(r"[1-9]\d{2,5}")


@cache
def _forms() -> tuple[re.Pattern[str], ...]:
    nouns = "|".join(sorted({word_key(noun) for noun in _NOUNS.split()}, key=len, reverse=True))
    speeds = "|".join(sorted(map(word_key, _SPEEDS), key=len, reverse=True))
    signed = "|".join(sorted(_SIGNED.split(), key=len, reverse=True))
    return (
        re.compile(rf"(?P<before>.*?)\b(?:{nouns}) ?(?P<speed>{speeds})\b(?P<behind>.*)"),
        re.compile(rf"(?P<before>.*?)\b(?P<speed>{speeds}) {_JOINS}(?:{nouns})\b(?P<behind>.*)"),
        re.compile(rf"(?P<before>.*?)(?:{signed})の?(?P<speed>{_SIGNED_SPEEDS})(?P<behind>.*)"),
    )


@lru_cache(maxsize=MOST_REMEMBERED)
def speed_of_what_turns(text: str) -> str:
    """The name of a speed without the word for what turns (``max. Trommeldrehzahl``: ``max drehzahl``); or empty."""
    if not 3 < len(text) <= _MOST:
        return ""
    core, unit = unit_behind(text)
    key = word_key(core.replace("'", " ").replace("’", " "))
    for form in _forms():
        if found := form.fullmatch(key):
            shorter = " ".join(f"{found['before']} {found['speed']} {found['behind']}".split()).strip(" ,:;")
            return f"{shorter} [{unit}]" if unit else shorter
    return ""


def are_speeds(label: str, cells: Sequence[str]) -> bool:
    """Whether cells below a table's only word for a speed state it by their unit, or by figures usual in r/min."""
    key = word_key(label)
    if (unit := known_unit(label.strip("[]() "))) is not None and unit.dimension == "rotational speed":
        return all(_USUAL.fullmatch(cell) for cell in cells)  # giri/min
    known = {key, speed_of_what_turns(label)} & dictionary().speeds
    return bool(known) and all(_is_speed(cell, key != "n") for cell in cells)


def _is_speed(cell: str, by_figure: bool) -> bool:
    figure, text = split_quantity(cell)
    if unit := known_unit(text):
        return unit.dimension == "rotational speed"
    return bool(by_figure and not text and _USUAL.fullmatch(figure))
