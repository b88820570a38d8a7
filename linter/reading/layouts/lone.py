"""Names beside one value alone: what they state of the machine, or of all its stations."""

import re
import unicodedata

from linter.reading.cells.signs import fold
from linter.reading.cells.units import known_unit, split_quantity
from linter.reading.files.grids import Grid
from linter.reading.words.columns import heading_of
from linter.reading.words.dictionary import dictionary, word_key
from linter.reading.words.headings import Heading, Words

#: Values of a station that are mostly the same for all stations of a machine.
SHARED = frozenset(
    ("lubrication", "base_oil_viscosity_40", "base_oil_viscosity_100", "operating_temperature", "cleanliness",
     "ep_additives", "regreasing_interval", "grease_fill", "clearance_class", "cage")
)  # fmt: skip
#: Speeds that are not the one of the bearings, or not known to be.
_OTHER_SPEED = re.compile(
    r"limit|crit|krit|крит|grenz|предел|refer|bezug|therm|output|input|abtrieb|antrieb|sortie|entre|salida|uscita"
    r"|ingresso|выход|входн|mot(?:or|eur)|двигат|привод|cage|kafig|ball|kugel|surface|peripher|umfang|linear|belt|riemen"
    r"|courroie|correa|cinghia|ремн|test|pruf|essai|ensayo|prova|испыт|разгон|trip|alarm|schleuder|over|uber|surv"
    r"|sobre|sovra|burst|idle|leerlauf|ralenti|vide|vacio|vuoto|холост|start|anlauf|demarr|arran|avvi|пуск|min|мин"
    r"|low|rated|nominal|nenn|номинал|reson|eigen|propre|propia|propria|собств|モータ|马达|馬達|电机|电动机|電動機|[临臨極极限界参参考出入額额定試试最]"
)
#: Words for what is around a machine (common practice).
_AROUND = frozenset(
    word_key(word)
    for word in (
        "ambient", "surroundings", "environment", "ambient air", "ambient range", "Umgebung", "Raum", "Umgebungsluft",
        "ambiance", "ambiante", "milieu ambiant", "air ambiant", "ambiente", "aria ambiente", "entorno",
        "aire ambiente", "окружающая среда", "окруж. среда", "среда", "周囲", "環境", "雰囲気", "环境", "周围环境",
    )
)  # fmt: skip
#: Name, number and unit in one text; a sign of equality or a word for about may stand before the number.
_ABOUTS = ("ca", "approx", "about", "etwa", "rund", "env", "environ", "circa", "aprox")
_NO_ABOUT, _ABOUT = "".join(rf"(?<!\s{word})" for word in _ABOUTS), rf"(?:{'|'.join(_ABOUTS)})\.?\s+"
_QUANTITY = re.compile(
    rf"(?P<name>.*[^\s=:~≈≤<\d.,]){_NO_ABOUT}\.?\s*(?:[=:~≈≤<]\s*|\s)"
    rf"(?P<value>(?:{_ABOUT})?\d[\d.,' \u00a0\u202f]*?\s*(?P<unit>(?:1/)?[^\d\s=.,'][^=,;]{{0,11}}))",
    re.IGNORECASE,
)
_MOST_WORDS, _LONGEST = 5, 60
_IN_WORDS = re.compile(r"[^\W\d_]+")


def machine_heading(label: str, value: str, unit: str, words: Words) -> Heading | None:
    """What a label beside one value states of a machine or of all its stations, by its value and unit too; or None."""
    heading = words.heading(label)
    unit = unit.strip("[]() ")
    if heading is None and unit and known_unit(unit) is not None:
        heading = words.heading(f"{label} [{unit}]")
    if heading is None and label and not words.groups(label):
        heading = heading_of(label, heading, (value,), words) or lone_speed(label, value, unit, words)
        heading = heading or _lone_ambient(label, value, unit, words)
    if heading is None or heading.station or heading.parameter == "station":
        return None
    shared = heading.parameter in SHARED and heading.aspect == "value"
    of_number = heading.entry.kind in ("number", "toleranced")
    fits = not of_number or any(map(str.isdigit, value))
    return heading if fits and (shared or heading.entry.level == "machine") else None


def name_and_quantity(text: str, words: Words) -> tuple[str, str]:
    """A name of the machine and its quantity out of one text (``n_max = 12000 rpm``); empty texts for another one."""
    found = _QUANTITY.fullmatch(text.strip()) if len(text) <= _LONGEST else None
    if found is None or len(found["name"].split()) > _MOST_WORDS:
        return "", ""
    unit, name = known_unit(found["unit"].strip()), found["name"].strip(" .,-")
    heading = None if unit is None else machine_heading(name, found["value"], "", words)
    own = None if heading is None else known_unit(heading.entry.unit)
    only_unit = known_unit(found["value"].replace(" ", "")) is not None  # 1/min
    if unit is None or own is None or own.dimension != unit.dimension or only_unit:
        return "", ""
    return name, found["value"]


def value_and_unit(grid: Grid, row: int, right: int | None, behind: int | None) -> tuple[int | None, int | None]:
    """Columns of the value and the unit right of a label; the unit may stand first (``Speed | 1/min | 3000``)."""
    if right is None or behind is None:
        return right, behind
    one, two = grid.text(row, right), grid.text(row, behind)
    number = two.isdigit() or (two[:1].isdigit() and known_unit(two) is None)  # 1 is a unit too
    unit_first = number and known_unit(one.strip("[]() ")) is not None
    return (behind, right) if unit_first else (right, behind)


def _lone_ambient(label: str, value: str, unit: str, words: Words) -> Heading | None:
    """The temperature around the machine by the word for what is around it, beside a unit of temperature; or None."""
    core, own = words.names.split_unit(fold(label))
    stated = [known_unit(text) for text in (own, unit, split_quantity(value)[1], value.split()[-1]) if text]
    of_heat = any(one is not None and one.dimension == "temperature" for one in stated)
    return Heading("ambient_temperature", unit=own) if of_heat and word_key(core).strip(" :.") in _AROUND else None


def lone_speed(label: str, value: str, unit: str, words: Words) -> Heading | None:
    """The speed of the machine by a word for a speed and another for what turns (``Bowl speed``, 4750 rpm); or None."""
    core, own = words.names.split_unit(fold(label))
    stated = [known_unit(text) for text in (own, unit, split_quantity(value)[1]) if text]
    if not stated or any(one is None or one.dimension != "rotational speed" for one in stated):
        return None
    pieces = _IN_WORDS.findall(core.casefold())
    long = [speed for speed in dictionary().speeds if len(speed) > 1]
    said = any(speed in pieces or any(piece.endswith(speed) for piece in pieces) for speed in long)
    if not said or len(pieces) > 3 or _OTHER_SPEED.search(_without_accents(core)):
        return None
    return Heading("speed_max", unit=own or (unit if known_unit(unit) is not None else ""))


def _without_accents(text: str) -> str:
    return "".join(sign for sign in unicodedata.normalize("NFD", text.casefold()) if not unicodedata.combining(sign))
