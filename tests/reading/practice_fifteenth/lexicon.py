"""The names and the words of choices, by language and office."""

from practice_fifteenth.words_east import JA, RU, ZH
from practice_fifteenth.words_en_de import DE, EN
from practice_fifteenth.words_fr_it_es import ES, FR, IT


def _table(text: str) -> dict[str, list[str]]:
    lines = (line.split(" = ", 1) for line in text.strip().replace("|\n  ", "|").splitlines())
    return {name: words.split("|") for name, words in lines}


NAMES = {
    language: _table(text)
    for language, text in (
        ("en", EN), ("de", DE), ("fr", FR), ("it", IT), ("es", ES), ("ru", RU), ("zh", ZH), ("ja", JA),
    )
}  # fmt: skip
#: Words of choices: value, then the words of one language; "=" alternatives are of different offices.
_CHOICES = """
lub/grease: en Grease=Grease lubrication; de Fett=Fettschmierung; fr Graisse; it Grasso; es Grasa;
  ru пластичная смазка; zh 脂润滑; ja グリース潤滑=グリース
lub/oil bath: en Oil bath; de Ölbad=Ölbadschmierung; fr Bain d'huile; it Bagno d'olio; es Baño de aceite;
  ru масляная ванна; zh 油浴润滑; ja 油浴潤滑
lub/oil-air: en Oil-air; de Öl-Luft; fr Air-huile; it Aria-olio; es Aire-aceite; ru масловоздушная; zh 油气润滑;
  ja オイルエア潤滑
role/locating: en Locating=Fixed; de Festlager; fr Fixe; it Fisso=Bloccato; es Fijo; ru фиксирующая; zh 固定端;
  ja 固定側
role/floating: en Floating=Non-locating; de Loslager; fr Libre; it Libero; es Libre; ru плавающая; zh 游动端;
  ja 自由側
preload/spring: en Spring=Wave spring; de Feder=Wellfeder; fr Ressort; it Molla; es Muelle; ru пружина; zh 弹簧预紧;
  ja ばね予圧=定圧予圧
preload/rigid: en Rigid=Rigid (ground spacers); de starr; fr Rigide; it Rigido; es Rígida; ru жёсткий;
  zh 刚性预紧=定位预紧; ja 定位置予圧
preload/none: en None; de keine; fr Aucune; it Nessuno; es Ninguna; ru нет; zh 无; ja なし
orient/horizontal: en Horizontal; de waagerecht=horizontal; fr Horizontal; it Orizzontale; es Horizontal;
  ru горизонтальное; zh 水平; ja 水平
orient/vertical: en Vertical; de senkrecht=vertikal; fr Vertical; it Verticale; es Vertical; ru вертикальное;
  zh 垂直; ja 垂直
smat/steel: en Steel=AISI 4140=C45; de Stahl=42CrMo4=C45E; fr Acier=42CrMo4; it Acciaio=C45; es Acero=F-125;
  ru Сталь 45=Сталь 40Х; zh 45钢=40Cr; ja S45C=SCM440
smat/stainless steel: en Stainless steel; de nichtrostender Stahl=Edelstahl; fr Acier inoxydable;
  it Acciaio inox; es Acero inoxidable; ru нержавеющая сталь; zh 不锈钢; ja ステンレス鋼
hmat/cast iron: en Cast iron=Grey cast iron=EN-GJL-250; de Grauguss=EN-GJL-250=GG-25; fr Fonte=Fonte EN-GJL-250;
  it Ghisa=Ghisa G25; es Fundición gris; ru СЧ20=чугун СЧ20; zh HT250=铸铁; ja FC250=鋳鉄
hmat/aluminium: en Aluminium=A356 aluminum; de Aluminium=AlSi10Mg; fr Aluminium=AlSi10Mg; it Alluminio;
  es Aluminio; ru алюминий; zh 铝合金=铸铝; ja アルミニウム=ADC12
hmat/steel: en Steel; de Stahl; fr Acier; it Acciaio; es Acero; ru сталь; zh 钢; ja 鋼
"""
CHOICES: dict[tuple[str, str, str], list[str]] = {}
for _line in _CHOICES.strip().replace(";\n  ", "; ").splitlines():
    _name, _words = _line.split(": ", 1)
    for _one in _words.split("; "):
        _language, _own = _one.split(" ", 1)
        CHOICES[(*_name.split("/"), _language)] = _own.split("=")  # type: ignore[index]
UNITS = {
    "rpm": {"": "rpm", "en": "rpm|r/min|RPM", "de": "1/min|min-1|U/min", "fr": "tr/min", "it": "giri/min|1/min",
            "es": "rpm|min-1", "ru": "об/мин|мин-1", "zh": "r/min|rpm", "ja": "min-1|rpm|r/min"},
    "krpm": {"": "krpm", "ja": "krpm", "zh": "kr/min|krpm"},
    "mm": {"": "mm", "ru": "мм"},
    "um": {"": "µm", "ru": "мкм", "zh": "μm|µm"},
    "in": {"": "in|inch"},
    "uin": {"": "µin"},
    "N": {"": "N", "ru": "Н"}, "kN": {"": "kN", "ru": "кН"}, "lbf": {"": "lbf"},
    "C": {"": "°C"}, "F": {"": "°F"}, "kg": {"": "kg", "ru": "кг"}, "g": {"": "g"}, "lb": {"": "lb"},
    "h": {"": "h", "ru": "ч", "zh": "h|小时", "ja": "h|時間"},
}  # fmt: skip
