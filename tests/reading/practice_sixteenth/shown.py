"""The text of a code's value, and what the text says."""

import re
from dataclasses import dataclass, replace

from practice.grammar import Size, Value

from practice_sixteenth.office import Code
from practice_sixteenth.trade import CODES, FACTORS, PLACES, UNITS, WHOLE, Machine

SIDES = {"s": "shaft", "h": "housing"}


@dataclass(frozen=True)
class Told:
    """One value that a cell tells; ``pieces`` are those of a seat that it shows."""

    machine: int
    station: int
    parameter: str
    value: Value
    verdict: str = "read"
    pieces: str = ""
    form: str = ""


@dataclass(frozen=True)
class Hand:
    """How an office writes figures."""

    comma: bool = False
    group: str = ""
    zero: str = "0"

    def plain(self, value: float, places: int, least: int = 0) -> str:
        text = f"{value:.{places}f}"
        whole, _, rest = text.partition(".")
        rest = rest.rstrip("0").ljust(least, "0")
        text = f"{whole}.{rest}" if rest else whole
        text = text.lstrip("-") if re.fullmatch(r"-0(\.0*)?", text) else text
        if self.group and abs(value) >= 1000 and "." not in text:
            return f"{int(text):,}".replace(",", self.group.replace("_", " "))
        return text.replace(".", ",") if self.comma else text

    def signed(self, value: float, unit: str) -> str:
        if abs(value) < 1e-9:
            return self.zero
        places, least = {"mm": (4, 3), "in": (4, 4)}.get(unit, (1, 0))
        text = self.plain(value / FACTORS[unit], places, least)
        return text if value < 0 else "+" + text


def parameter(name: str) -> tuple[str, str]:
    """Parameter and quantity of a code."""
    if name[1:2] == "." and "x" + name[1:] in CODES:
        text, quantity = CODES["x" + name[1:]]
        return text.format(SIDES[name[0]]), quantity
    return CODES[name]


def seat(hand: Hand, size: Size, code: Code, inch: bool) -> str:
    """A seat as its template says."""
    low, high = size.lower or 0.0, size.upper or 0.0
    fine = code.unit or ("in" if inch else "mm")
    factor, places = (25.4, 4) if inch else (1.0, 3)
    figures = {
        "n": hand.plain(size.nominal / factor, 4, max(code.places, 4 if inch else 0)), "c": size.tolerance_class,
        "u": hand.signed(high, fine), "l": hand.signed(low, fine), "t": hand.signed(high, fine).lstrip("+"),
        "x": hand.plain((size.nominal + high) / factor, 4, places),
        "m": hand.plain((size.nominal + low) / factor, 4, places),
    }  # fmt: skip
    return code.template.format(**figures) if code.template else figures["n"]


def stated(size: Size, pieces: str, inch: bool) -> Size:
    """What of a seat is said by the pieces that are shown."""
    if size.lower is None or size.upper is None:
        raise ValueError("no deviations")
    limits = "x" in pieces or "m" in pieces
    tolerance_class = size.tolerance_class if "c" in pieces else ""
    if limits and "n" not in pieces and not tolerance_class:
        low, high = size.nominal + size.lower, size.nominal + size.upper
        if inch:
            low, high = (round(v / 25.4, 4) * 25.4 for v in (low, high))
        return Size(low, 0.0, high - low, bare=True)
    if limits or "u" in pieces or "t" in pieces:
        return replace(size, tolerance_class=tolerance_class)
    return Size(size.nominal, None, None, tolerance_class)


def show(hand: Hand, machine: Machine, code: Code, s: int) -> tuple[str, list[Told]]:
    """The text of a cell and what it tells.

    Returns
    -------
    tuple
        Text (empty for none) and values.
    """
    m, own = machine.index, code.name
    station = -1 if own in WHOLE else code.at if code.at >= 0 else s
    at = station if own in WHOLE else max(station, 0)
    if code.hole >= 0 and code.hole == at:
        return "-", []
    chosen = code.values[min(max(at, 0), len(code.values) - 1)] if code.values else ""
    if own == "~":
        return chosen.strip("_"), []
    if own.startswith("?"):
        text = chosen.replace(".", ",") if hand.comma else chosen
        return text, [Told(m, station, own[1:], float(chosen) if re.fullmatch(r"[\d.]+", chosen) else chosen, "ask")]
    if own == "station":
        return machine.positions[at], [Told(m, at, "station", machine.positions[at])]
    if own == "size":
        parts = [hand.plain(float(str(machine.value(k, at))), 4) for k in ("d", "D", "B")]
        told = [Told(m, at, CODES[k][0], machine.value(k, at), form="d x D x B in one cell") for k in ("d", "D", "B")]
        return (code.template or "x").join(parts), told
    if own == "pair":
        sizes = [machine.value(side + ".seat", at) for side in "sh"]
        classes = [size.tolerance_class for size in sizes if isinstance(size, Size)]
        told = [Told(m, at, parameter(side + ".seat")[0], size, "read", "c", "fit pair column")
                for side, size in zip("sh", sizes, strict=True)]  # fmt: skip
        return (code.template or "{}/{}").format(*classes), told
    name, quantity = parameter(own)
    if chosen and "|" in chosen:
        values, _, word = chosen.partition("|")
        value, *more = values.split(", ")
        others = [Told(m, station, *one.split(" ", 1)) for one in more]
        return word, [Told(m, station, name, value), *others]
    if not quantity:
        text = chosen or str(machine.value(own, at))
        return (code.template or "{v}").replace("{v}", text), [Told(m, station, name, text)]
    drawn: Value = float(chosen) if chosen else machine.value(own, at)
    if isinstance(drawn, Size):
        pieces = "".join(re.findall(r"\{(\w)\}", code.template)) if code.template else "n"
        return seat(hand, drawn, code, machine.inch), [Told(m, station, name, drawn, "read", pieces)]
    text, value_told = figure(hand, float(drawn), code, quantity)
    grouped = hand.group in (".", ",") and value_told >= 1000
    template = code.template or ("G{v}" if own == "bal" else "{v}")
    return template.replace("{v}", text), [Told(m, station, name, value_told, "either" if grouped else "read")]


def figure(hand: Hand, value: float, code: Code, quantity: str) -> tuple[str, float]:
    """A number in the unit of its line, and what the figures say in canonical units."""
    unit = code.unit or UNITS.get(quantity, "")
    if quantity == "rough" and unit == "um":
        unit = "raum"
    if unit == "F":
        fahrenheit = round(value * 1.8 + 32)
        return hand.plain(fahrenheit, 0), (fahrenheit - 32) / 1.8
    places = PLACES.get(unit, 0)
    if quantity == "grade":
        places = 1
    shown = round(value / FACTORS[unit], places)
    return hand.plain(shown, places, max(code.places, 0)), shown * FACTORS[unit]
