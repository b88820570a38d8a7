"""Numbers and units in words: one way to write them in every message and report."""

import math
from functools import lru_cache

from linter.model.stations import Stations, Toleranced
from linter.model.vocabulary import parameter

NARROW_SPACE = "\u00a0"
_SHOWN_UNITS = {
    "um": "µm",
    "degC": "°C",
    "deg": "°",
    "1": "",
    "mm2/s": "mm²/s",
    "mm2": "mm²",
    "mm.r/min": "mm·r/min",
    "g.mm": "g·mm",
    "N.mm": "N·mm",
    "N.m": "N·m",
    "kg/m3": "kg/m³",
    "1e-6/K": "10⁻⁶/K",
}


def unit_text(unit: str) -> str:
    """A canonical unit as it is shown (``um`` is µm, a pure number shows nothing)."""
    return _SHOWN_UNITS.get(unit, unit)


@lru_cache(maxsize=4096)
def number_text(value: float, unit: str = "1") -> str:
    """A number as it is shown: at most four significant digits past the point, thousands apart.

    Lengths in mm keep four decimals where they have them, below 0.01 mm five; whole numbers stay whole.
    """
    if value is None or math.isnan(value):
        return "not known"
    if math.isinf(value):
        return "unlimited" if value > 0 else "-unlimited"
    magnitude = abs(value)
    if unit == "mm":
        digits = 4 if magnitude >= 0.01 else 5
    elif magnitude >= 1000 or magnitude == 0:
        digits = 0
    else:
        digits = min(6, max(0, 3 - math.floor(math.log10(magnitude))))
        if magnitude >= 1:
            digits = min(digits, 2)
    text = f"{value:.{digits}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    if text in ("-0", ""):
        text = "0"
    sign, whole, point, rest = "", text, "", ""
    if whole.startswith("-"):
        sign, whole = "\u2212", whole[1:]
    if "." in whole:
        whole, rest = whole.split(".")
        point = "."
    if len(whole) > 4:
        groups = []
        while whole:
            groups.append(whole[-3:])
            whole = whole[:-3]
        whole = NARROW_SPACE.join(reversed(groups))
    return f"{sign}{whole}{point}{rest}"


@lru_cache(maxsize=4096)
def quantity_text(value: float, unit: str) -> str:
    """A number with its unit, for example ``561 000 mm·r/min``."""
    text, shown = number_text(value, unit), unit_text(unit)
    if not shown or math.isnan(value):
        return text
    return text + ("" if shown in ("°",) else NARROW_SPACE) + shown


def limit_text(value: float | str | list[float | str], unit: str) -> str:
    """A limit with its unit; a list with the unit once at its end."""
    if isinstance(value, list):
        words = ", ".join(v if isinstance(v, str) else number_text(v, unit) for v in value)
        return f"{words}{NARROW_SPACE}{unit_text(unit)}".strip()
    return value if isinstance(value, str) else quantity_text(float(value), unit)


def rounded(value: float) -> float:
    """A float for the result file: 10 significant digits, so that the last bits of a machine do not show."""
    number = float(value)
    short = float(f"{number:.10g}")
    return short if math.isfinite(short) else number


def words_of(name: str) -> str:
    """A parameter name in words: ``shaft_seat_diameter`` is "shaft seat diameter"."""
    return name.replace("_", " ")


def size_text(size: Toleranced, row: int, unit: str) -> str:
    """A toleranced size as it is written on a drawing: nominal, class, deviations, unit."""
    ends = float(size.lower[row]), float(size.upper[row])
    return _size_text(float(size.nominal[row]), *ends, str(size.tolerance_class[row]), unit)


def _size_text(nominal: float, lower: float, upper: float, name: str, unit: str) -> str:
    if math.isnan(nominal):
        return "not stated"
    text = number_text(nominal, unit)
    if name:
        text += f"{NARROW_SPACE}{name}"
    if not math.isnan(lower) and not math.isnan(upper):
        if upper == -lower and upper != 0:
            deviations = f"±{number_text(upper, unit)}"
        else:
            deviations = f"{_signed(upper, unit)}/{_signed(lower, unit)}"
        text += f" ({deviations})" if name else f"{NARROW_SPACE}{deviations}"
    return f"{text}{NARROW_SPACE}{unit_text(unit)}"


def _signed(value: float, unit: str) -> str:
    text = number_text(value, unit)
    return f"+{text}" if value > 0 else text


def value_texts(stations: Stations, name: str) -> list[str]:
    """The values of one parameter in all rows, as a report shows them."""
    entry = parameter(name)
    if entry.kind == "number":
        values = stations.number(name).tolist()
        return ["not stated" if math.isnan(value) else quantity_text(value, entry.unit) for value in values]
    if entry.kind == "toleranced":
        size = stations.size(name)
        ends = zip(size.lower.tolist(), size.upper.tolist(), strict=True)
        sizes = zip(size.nominal.tolist(), ends, size.tolerance_class.tolist(), strict=True)
        return [_size_text(nominal, *both, str(name), entry.unit) for nominal, both, name in sizes]
    if entry.kind == "choice":
        words = (*stations.choice(name).words, "not stated")  # the last one is that of code -1
        return [words[code] for code in stations.choice(name).codes.tolist()]
    return [str(text) or "not stated" for text in stations.text(name).tolist()]


def value_text(stations: Stations, name: str, row: int) -> str:
    """The value of one parameter in one row, as a report shows it."""
    entry = parameter(name)
    if entry.kind == "number":
        value = float(stations.number(name)[row])
        return "not stated" if math.isnan(value) else quantity_text(value, entry.unit)
    if entry.kind == "toleranced":
        return size_text(stations.size(name), row, entry.unit)
    if entry.kind == "choice":
        choice = stations.choice(name)
        code = int(choice.codes[row])
        return "not stated" if code < 0 else choice.words[code]
    return str(stations.text(name)[row]) or "not stated"
