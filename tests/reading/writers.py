"""An arrangement in the spelling of an office: words of a language, numbers, units, tolerances, encodings."""

import csv
from functools import cache
from pathlib import Path
from typing import Any

from attrs import field, frozen

import linter.reading
from linter.reading.cells.numbers import read_numbers
from linter.reading.words.dictionary import GROUPS, heading_words, word_key

#: Parameters of the written arrangements: level, and the units they may be written in with factor and offset.
NUMBERS: dict[str, tuple[str, dict[str, tuple[float, float]]]] = {
    "speed_max": ("machine", {"r/min": (1.0, 0.0), "1/s": (60.0, 0.0), "1/min": (1.0, 0.0)}),
    "rotor_mass": ("machine", {"kg": (1.0, 0.0), "g": (0.001, 0.0)}),
    "temperature_min": ("machine", {"°C": (1.0, 0.0), "K": (1.0, -273.15)}),
    "bore_diameter": ("station", {"mm": (1.0, 0.0), "cm": (10.0, 0.0), "in": (25.4, 0.0)}),
    "outside_diameter": ("station", {"mm": (1.0, 0.0), "cm": (10.0, 0.0), "in": (25.4, 0.0)}),
    "shaft_seat_roughness": ("station", {"um": (1.0, 0.0), "µm": (1.0, 0.0), "μm": (1.0, 0.0), "mm": (1000.0, 0.0)}),
    "radial_load": ("station", {"N": (1.0, 0.0), "kN": (1000.0, 0.0)}),
}
SIZES = ("shaft_seat_diameter", "housing_seat_diameter")
CHOICES = {"lubrication": ("grease", "oil bath", "oil jet"), "cage": ("polyamide", "phenolic", "peek")}
TEXTS = {"drawing_number": "machine", "bearing_designation": "station"}
LANGUAGES = ("en", "de", "fr", "es", "it", "ja", "zh", "ru")
CODE_PAGES = {
    "cp1252": ("en", "de", "fr", "es", "it"), "cp1250": ("de",), "cp1251": ("ru",), "cp932": ("ja",), "gbk": ("zh",),
}  # fmt: skip
_MEASURED = ("actual", "actual value", "istwert", "measured", "valeur mesurée", "valor medido", "実測値", "实测值")
_WRITTEN = (*NUMBERS, *SIZES, *CHOICES, *TEXTS, "machine", "station", "NAME", "VALUE", "UNIT", "UPPER", "LOWER",
            "CLASS", "CHAR-ID", "NOTE")  # fmt: skip


@frozen
class Size:
    """A nominal size in mm with its tolerance: deviations in mm, or a class."""

    nominal: float
    lower: float = 0.0
    upper: float = 0.0
    tolerance_class: str = ""


Values = dict[str, Any]


@frozen
class Arrangement:
    """Machines by name: values of the machine, and stations by name with theirs."""

    machines: dict[str, tuple[Values, dict[str, Values]]]

    def rows(self) -> list[tuple[str, str, Values, Values]]:
        """Machine, station, values of the machine and of the station, in order."""
        return [(m, s, values, own) for m, (values, stations) in self.machines.items() for s, own in stations.items()]

    def names(self, level: str) -> list[str]:
        """Names stated at a level, in order."""
        found: dict[str, None] = {}
        for _, _, values, own in self.rows():
            found.update(dict.fromkeys(values if level == "machine" else own))
        return list(found)

    def first(self) -> "Arrangement":
        """The first machine alone."""
        return Arrangement(dict(list(self.machines.items())[:1]))


@cache
def headings(language: str) -> dict[str, tuple[str, ...]]:
    """Words of a language by what they stand for; those that stand for one thing only."""
    meant: dict[str, set[str]] = {}
    for target, word, _ in heading_words():
        if not target.startswith("@"):
            # a station is a group and a parameter both, and so is a machine
            meant.setdefault(word_key(word), set()).add(target.lower() if target in ("STATION", "MACHINE") else target)
    found: dict[str, list[str]] = {}
    for target, word, spoken in heading_words():
        alone = meant.get(word_key(word)) == {target}
        if spoken == language and target in _WRITTEN and alone and len(word) > 1:
            found.setdefault(target, []).append(word)
    # a column of measured values is read only where no other value stands
    found["NOMINAL"] = [word for word in found["VALUE"] if word.casefold() not in _MEASURED]
    plain = {name: (name,) for name in _WRITTEN if name not in GROUPS}
    return plain | {target: tuple(words) for target, words in found.items()}


@cache
def choice_words(language: str) -> dict[tuple[str, str], tuple[str, ...]]:
    """Texts of a language for a choice, by parameter and word; those that stand for one word only."""
    path = Path(linter.reading.__file__).parent / "cells" / "data" / "choices.csv"
    with path.open(encoding="utf-8", newline="") as stream:
        lines = [line for line in csv.DictReader(stream) if line["parameter"] in CHOICES]
    found: dict[tuple[str, str], tuple[str, ...]] = {}
    meant: dict[tuple[str, str], set[str]] = {}
    for line in lines:
        meant.setdefault((line["parameter"], line["text"]), set()).add(line["word"])
    for line in lines:
        if line["language"] == language and len(meant[line["parameter"], line["text"]]) == 1:
            key = (line["parameter"], line["word"])
            found[key] = (*found.get(key, ()), line["text"])
    return found


@frozen
class Spelling:
    """How values are written.

    ``encoding`` is declared in a name mapping where ``declared`` is true. ``thousands`` groups the digits of speeds,
    masses and loads. ``draws`` picks a word among the synonyms of a language.
    """

    decimal: str = "."
    thousands: str = ""
    minus: str = "-"
    units: dict[str, str] = field(factory=dict)
    tolerance: str = "slash"
    encoding: str = "utf-8"
    declared: bool = False
    line_end: str = "\n"
    delimiter: str = ";"
    language: str = "en"
    draws: tuple[int, ...] = (0,)

    def writable(self, text: str) -> bool:
        """Whether the encoding has all signs of a text."""
        try:
            return text.encode(self.encoding).decode(self.encoding).removeprefix("\ufeff") == text
        except UnicodeError:
            return False

    def _draw(self, words: tuple[str, ...], key: str) -> str:
        words = tuple(word for word in words if self.writable(word)) or words
        return words[self.draws[sum(map(ord, key)) % len(self.draws)] % len(words)]

    def word(self, name: str) -> str:
        """Word for a parameter or for a column of a list (``NAME``, ``VALUE``, ...)."""
        found = headings(self.language).get(name, ())
        return self._draw(tuple(word for word in found if self.writable(word)) or (name,), name)

    def number(self, value: float, name: str = "") -> str:
        """A number in the file's spelling; ``name`` converts it to the unit the file uses for that parameter."""
        if name in NUMBERS:
            factor, offset = NUMBERS[name][1][self.unit(name)]
            value = (value - offset) / factor
        text = f"{value:.10g}"
        if "e" in text:
            text = f"{value:.12f}".rstrip("0").rstrip(".")
        sign, text = ("-", text[1:]) if text.startswith("-") else ("", text)
        whole, _, rest = text.partition(".")
        # a last zero keeps the mark from standing before exactly three digits, where no file could settle it
        rest = rest + "0" if len(rest) == 3 else rest
        if self.thousands and len(whole) > 3:
            rest = rest or "0" * (self.thousands in ".,")
            whole = f"{int(whole):,}".replace(",", self.thousands)
        return sign.replace("-", self.minus) + whole + (self.decimal + rest if rest else "")

    def signed(self, value: float) -> str:
        """A deviation with its sign."""
        return ("+" if value > 0 else "") + self.number(value)

    def unit(self, name: str) -> str:
        """Unit of a parameter in the file."""
        if name in SIZES:
            return "mm"
        if name not in NUMBERS:
            return ""
        return self.units.get(name, next(iter(NUMBERS[name][1])))

    def size(self, size: Size, unit: str = "") -> str:
        """A toleranced size in one text, with its unit behind the nominal size or the last limit."""
        nominal = self.number(size.nominal) + unit
        if size.tolerance_class:
            return f"{nominal} {size.tolerance_class}"
        low, high = self.signed(size.lower), self.signed(size.upper)
        smallest, largest = self.number(size.nominal + size.lower), self.number(size.nominal + size.upper)
        if self.tolerance == "limits":
            return f"max {largest} min {smallest}{unit}"
        if self.tolerance == "range" and size.lower < size.upper:
            return f"{smallest}{'…' if self.writable('…') else '...'}{largest}{unit}"
        if self.tolerance == "symmetric" and size.lower == -size.upper and size.upper:
            return f"{nominal} ±{self.number(size.upper)}"
        if self.tolerance == "bracket":
            return f"{nominal} ({high}; {low})"
        if self.tolerance == "spaced":
            return f"{nominal} {high} {low}"
        return f"{nominal} {high}/{low}"

    def cell(self, name: str, value: Any) -> str:
        """Any value as a text."""
        if value is None:
            return ""
        if isinstance(value, Size):
            return self.size(value)
        if name in CHOICES:
            return self._draw(choice_words(self.language).get((name, value), (value,)), name)
        return self.number(value, name) if isinstance(value, float) else str(value)

    def heading(self, name: str) -> str:
        """Word for a parameter with its unit in brackets."""
        unit = self.unit(name)
        return f"{self.word(name)} [{unit}]" if unit else self.word(name)

    def rounded(self, arrangement: Arrangement) -> Arrangement:
        """The arrangement with texts that the encoding can hold, so that no file loses a sign."""

        def text(value: Any) -> Any:
            if not isinstance(value, str):
                return value
            return "".join(sign if self.writable(sign) else "q" for sign in value)

        def plain(values: Values) -> Values:
            return {name: text(value) if name in TEXTS else value for name, value in values.items()}

        return Arrangement(
            {
                text(m): (plain(values), {s: plain(own) for s, own in stations.items()})
                for m, (values, stations) in arrangement.machines.items()
            }
        )


def number_cell(text: str, spelling: Spelling) -> float | str | None:
    """A cell of a workbook: plain numbers as numbers, all else as text, blank as None."""
    plain = text.replace(spelling.thousands, "") if spelling.thousands else text
    values, wrong = read_numbers([plain.replace(spelling.decimal, ".")], ".")
    if not text or wrong or text[0] in "+−-" or any(sign.isalpha() for sign in text):
        return text or None
    return float(values[0])
