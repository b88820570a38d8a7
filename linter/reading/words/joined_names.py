"""Names of a column that two names make: number and revision of a drawing, designation or nominal size.

``Zeichnung mit Index``; ``Kurzzeichen / Nennmaß``: rows of bearings hold a designation there, rows of seats a size.
Words in the trade's languages: common practice.
"""

import re

from linter.reading.words.dictionary import word_key

_JOINS = re.compile(
    r"\s*[/／|・、,&+及和与或]\s*|\s*(?:または|又は)\s*|\s*[（(]\s*"
    r"|\s+(?:and|with|or|und|mit|oder|bzw\.?|resp\.?|u\.|et|avec|ou|e|y|o|con|и|или|с)\s+",
    re.IGNORECASE,
)
_DESIGNATION = (
    "designation designations kurzzeichen bezeichnung lagerbezeichnung désignation sigla denominazione designazione "
    "designación denominación обозначение 型番 呼び番号 型号 代号 牌号 品番 bearing_designation bearing_no lager-nr. "
    "référence referencia riferimento"
)
_TYPE = "type typ lagertyp bearing_type tipo тип марка 型式 规格 規格 reference ref. réf. code codice código codigo код"
_NUMBER = (
    "p/n part_no. part_number code_article bestell-nr. bestellnummer artikel-nr. sachnummer catalogue_no. cat._no. "
    "артикул каталожный_номер 部品番号 部番 编码 图号 コード"
)
_NOMINAL = (
    "nominal nominal_size nominal_dimension nominal_diameter nom. nom nom._size nom._dia. nom._ø "
    "dimension diameter ø dia. nennmaß nenn-ø nenn-∅ maß nenndurchmesser durchmesser abmessung nenngröße "
    "cote cote_nominale ø_nominal diamètre ø_nom. ø_nom diamètre_nominal quota quota_nominale diametro "
    "diametro_nominale ø_nominale misura misura_nominale medida medida_nominal cota cota_nominal diámetro "
    "diámetro_nominal dimensión dimensione номинал номинальный_размер диаметр номинальный_диаметр "
    "公称尺寸 基本尺寸 公称直径 直径 呼び寸法 基準寸法 公称寸法 呼び径 径"
)
_SIZE = "size sizes größe taille tamaño dimensione размер 尺寸 寸法"


def _keys(words: str) -> frozenset[str]:
    return frozenset(word_key(word.replace("_", " ")) for word in words.split())


_DESIGNATIONS, _TYPES, _NOMINALS, _SIZES = map(_keys, (f"{_DESIGNATION} {_NUMBER}", _TYPE, _NOMINAL, _SIZE))


def halves_of(text: str) -> list[str]:
    """The two halves of a name that a sign or a word joins (``Zeichnung mit Index``); empty for another one."""
    halves = [half.strip(" )）") for half in _JOINS.split(text)] if _JOINS.search(text) else []
    return halves if len(halves) == 2 and all(halves) else []


def designation_or_size(text: str) -> bool:
    """Whether a name heads designations of bearings and sizes of seats both (``Designation / nominal``)."""
    first, second = map(word_key, halves_of(text) or ("", ""))
    return any(
        (one in _DESIGNATIONS | _TYPES and other in _NOMINALS) or (one in _DESIGNATIONS and other in _SIZES)
        for one, other in ((first, second), (second, first))
    )
