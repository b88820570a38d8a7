"""How one office writes: words, units, number marks and tolerances of one table, chosen once and kept to."""

import random
from dataclasses import dataclass, field

from . import words
from .machines import Machine, Seat

LENGTHS = (
    "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "ball_diameter", "shaft_shoulder_diameter",
    "housing_shoulder_diameter", "shaft_fillet_radius", "housing_fillet_radius", "bearing_span",
)  # fmt: skip
FORMS = (
    "shaft_seat_cylindricity", "shaft_seat_runout", "shaft_shoulder_runout", "housing_seat_cylindricity",
    "housing_seat_runout",
)  # fmt: skip
SEATS = ("shaft_seat_diameter", "housing_seat_diameter")
IN_CELL = ("class in cell", "deviations in cell", "limits in cell", "plus-minus in cell", "class and deviations")
IN_COLUMNS = (
    "class column", "deviation columns", "tolerance column", "limit columns", "nominal and limits",
    "plus-minus column", "class and deviation columns",
)  # fmt: skip
SYMBOLS = {
    "bore_diameter": "d", "outside_diameter": "D", "ring_width": "B", "ring_chamfer": "r min", "dynamic_rating": "C",
    "static_rating": "C0", "ball_diameter": "Dw", "ball_count": "Z", "radial_load": "Fr", "axial_load": "Fa",
}  # fmt: skip


@dataclass
class Cell:
    """A cell's text with what it means: ``(station, parameter, value)``; station -1 for the whole machine."""

    text: str
    meanings: list[tuple[int, str, str]] = field(default_factory=list)
    number: bool = False


@dataclass
class Column:
    """What one column states, a cell for each position (or one for the machine at -1)."""

    parameter: str
    head: str
    unit: str
    cells: dict[int, Cell]
    piece: str = ""

    @property
    def part(self) -> str:
        """Shaft, housing, bearing or general."""
        return part_of(self.parameter)


def part_of(parameter: str) -> str:
    """Shaft, housing, bearing or general: where a drawing lists the parameter."""
    if parameter in ("shaft_material", "housing_material", "shaft_temperature", "housing_temperature"):
        return "general"
    first = parameter.split("_")[0]
    return first if first in ("shaft", "housing") else "bearing"


def plain(value: float) -> str:
    """A number as a meaning has it."""
    return f"{value:.9f}".rstrip("0").rstrip(".")


class Pen:
    """The habits of one table."""

    def __init__(
        self, rng: random.Random, language: str, *, system: str, units: str, form: str, mark: str, office: bool
    ) -> None:
        self.rng, self.language, self.system, self.units, self.form, self.mark = (
            rng,
            language,
            system,
            units,
            form,
            mark,
        )
        self.office = office
        self.micro = system == "mm" and rng.random() < 0.4
        self.micro_deviations = system == "mm" and rng.random() < 0.45
        self.digits = rng.choice([0, 0, 2, 3])
        self.leading = system == "mm" or rng.random() < 0.5
        self.symbols = rng.random() < 0.25
        self.bilingual = language in ("ja", "zh", "ru") and rng.random() < 0.3
        self.kilo = rng.random() < 0.4
        self.grams = system == "mm" and rng.random() < 0.3
        self.diameter_sign = rng.random() < 0.3
        self.thousands = rng.choice(["", "", "", " ", ","])
        self.bracket = rng.choice(
            ["{h} [{u}]", "{h} ({u})", "{h}, {u}", "{h} / {u}" if language != "ja" else "{h}（{u}）"]
        )
        self.join = rng.choice(["{h} - {t}", "{h}, {t}", "{t} {h}", "{h} {t}"])
        self.cell_style = rng.randrange(4)
        self.short = self.frames = self.capitals = False
        self.minus = "-"
        self._chosen: dict[str, str] = {}

    # ------------------------------------------------------------ words

    def word(self, table: dict[str, str]) -> str:
        """A word in the language of the table."""
        return table[self.language]

    def pick(self, choices: dict[str, list[str]], key: str) -> str:
        """One of the words for it, the same again in this table."""
        if key not in self._chosen:
            k = self.rng.randrange(len(choices[self.language]))
            self._chosen[key] = choices[self.language][k]
            if self.bilingual and key in words.TERMS:
                self._chosen[key] += " " + choices["en"][min(k, len(choices["en"]) - 1)]
            if self.capitals:
                self._chosen[key] = self._chosen[key].upper()
        return self._chosen[key]

    def term(self, parameter: str) -> str:
        """The heading of a parameter: whole, or short where a group's heading says the part."""
        if self.short and part_of(parameter) in ("shaft", "housing"):
            feature = parameter.split("_", 1)[1]
            return self.pick(words.FEATURES[feature], feature)
        if self.symbols and parameter in SYMBOLS:
            return SYMBOLS[parameter]
        return self.pick(words.TERMS[parameter], parameter)

    def unit_word(self, unit: str) -> str:
        """The unit as this table spells it."""
        if not unit:
            return ""
        if unit not in words.UNITS:
            return unit
        spelled = words.UNITS[unit]
        options = spelled.get(self.language) or spelled["*"]
        if f"unit {unit}" not in self._chosen:
            self._chosen[f"unit {unit}"] = self.rng.choice(options)
        return self._chosen[f"unit {unit}"]

    def heading(self, column: Column) -> str:
        """A heading with its unit where units stand in headings."""
        return self.headed(column.head, column.unit)

    def headed(self, head: str, unit: str) -> str:
        """A heading with a unit where units stand in headings (or cannot stand in the title)."""
        if not unit or self.units in ("row", "cell"):
            return head
        if self.units == "title" and unit == self.unit_word(self.system):
            return head
        return self.bracket.format(h=head, u=unit)

    # ------------------------------------------------------------ numbers

    def number(self, value: float, digits: int, *, fixed: bool = False) -> tuple[str, float]:
        """The text of a number, and the number that it says."""
        text = f"{value:.{digits}f}"
        if not fixed and "." in text:
            text = text.rstrip("0").rstrip(".")
        said = float(text)
        if not self.leading and text.lstrip("-").startswith("0."):
            text = text.replace("0.", ".", 1)
        return text.replace(".", self.mark).replace("-", self.minus), said

    def length(self, value: float) -> tuple[str, str, float]:
        """A length in mm as text, its unit, and what it says in mm."""
        if self.system == "in":
            text, said = self.number(value / 25.4, 4, fixed=True)
            return text, self.unit_word("in"), said * 25.4
        digits = self.digits if round(value, self.digits) == value else 3
        text, said = self.number(value, max(digits, 0), fixed=digits == self.digits and digits > 0)
        return text, self.unit_word("mm"), said

    def quantity(self, parameter: str, value: float) -> tuple[str, str, float]:
        """Text, unit, and what it says in the unit of the vocabulary."""
        if parameter in LENGTHS:
            return self.length(value)
        unit, factor, digits, offset = "", 1.0, 3, 0.0
        inch = self.system == "in"
        if parameter in FORMS:
            unit, factor, digits = ("in", 1 / 25.4, 5) if inch else ("um", 1000, 1) if self.micro else ("mm", 1, 4)
        elif parameter.endswith("roughness"):
            unit, factor, digits = ("uin", 1 / 0.0254, 0) if inch else ("um", 1, 2)
        elif parameter in ("speed_max", "balancing speed"):
            unit, digits = "speed", 0
        elif parameter in ("dynamic_rating", "static_rating"):
            unit, factor = ("kN", 1e-3) if self.kilo else ("N", 1.0)
        elif parameter in ("radial_load", "axial_load", "preload_force"):
            unit, factor, digits = ("lbf", 1 / 4.4482216152605, 1) if inch else ("N", 1.0, 0)
        elif parameter == "rotor_mass":
            unit, factor = ("lb", 1 / 0.45359237) if inch else ("g", 1000.0) if self.grams else ("kg", 1.0)
        elif "temperature" in parameter:
            unit, factor, digits, offset = ("degF", 1.8, 0, 32.0) if inch else ("degC", 1.0, 0, 0.0)
        else:
            unit = {"required_life": "h", "balance_grade": "mm/s", "base_oil_viscosity_40": "mm2/s"}.get(parameter, "")
        text, said = self.number(value * factor + offset, digits)
        if unit == "speed" and self.thousands and not self.office and said >= 10000:
            mark = {" ": "\u00a0" if self.language in ("fr", "ru") else " "}.get(self.thousands)
            text = f"{int(said):,}".replace(",", mark or ("," if self.mark == "." else "."))
        return text, self.unit_word(unit), (said - offset) / factor

    # ------------------------------------------------------------ columns

    def column(self, parameter: str, machine: Machine) -> list[Column]:
        """The columns that state a parameter, or the one that states a value of the whole machine."""
        whole = parameter in machine.values
        values = (
            {-1: machine.values[parameter]} if whole else {s: p[parameter] for s, p in enumerate(machine.positions)}
        )
        if parameter in SEATS:
            return self._seat_columns(parameter, {s: v for s, v in values.items() if isinstance(v, Seat)})
        cells: dict[int, Cell] = {}
        unit = ""
        for s, value in values.items():
            if isinstance(value, float | int):
                text, unit, said = self.quantity(parameter, float(value))
                # a mark of thousands may be asked about
                doubt = "?" if parameter == "speed_max" and any(c in text for c in ".,") else ""
                # the custom that roughness is in micrometres may be asked about where no unit stands
                if parameter.endswith("roughness") and self.units == "title":
                    unit, doubt = "", "?"
                number = not any(c == " " for c in text)
                if self.frames and parameter.endswith(("seat_cylindricity", "seat_runout")):
                    text = f"⌭ {text}" if parameter.endswith("cylindricity") else f"⌰ {text} A-B"
                    number = False
                if self.units == "cell" and unit:
                    text, number = f"{text} {unit}", False
                cells[s] = Cell(text, [(s, parameter, doubt + plain(said))], number and not doubt)
            else:
                assert isinstance(value, str)
                cells[s] = Cell(self._choice(parameter, value), [(s, parameter, value)])
        return [Column(parameter, self.term(parameter), unit, cells)]

    def _choice(self, parameter: str, value: str) -> str:
        if parameter in words.CHOICES:
            return self.word(words.CHOICES[parameter][value])
        if parameter == "tolerance_class" and self.language == "ja":
            return {"Normal": "0級", "P6": "6級", "P5": "5級"}[value]
        if parameter == "clearance_class" and value == "CN":
            return {"en": "Normal", "de": "normal", "fr": "normal", "it": "normale", "es": "normal"}.get(
                self.language, "CN"
            )
        return value

    def deviation(self, micrometres: float, *, micro: bool) -> tuple[str, float]:
        """A deviation with its sign, and what it says in um."""
        if micro:
            text, said = self.number(micrometres, 1)
            factor = 1.0
        elif self.system == "in":
            text, said = self.number(micrometres / 25400, 5, fixed=True)
            factor = 25400.0
        else:
            text, said = self.number(micrometres / 1000, 4 if micrometres % 1 else 3, fixed=bool(micrometres))
            factor = 1000.0
        if said == 0:
            return "0", 0.0
        return ("+" if said > 0 else "") + text, said * factor

    def size_texts(self, seat: Seat) -> tuple[dict[str, str], str]:
        """The pieces that state a seat, by the column each stands in, and what they mean together."""
        nominal, _, said = self.length(seat.nominal)
        sign = "Ø" if self.diameter_sign and not self.office else ""
        unit = f" {self.unit_word(self.system)}" if self.units == "cell" else ""
        cls, form, style = seat.tolerance_class, self.form, self.cell_style
        micro = self.micro_deviations
        up, said_up = self.deviation(seat.upper, micro=micro)
        low, said_low = self.deviation(seat.lower, micro=micro)
        high, said_high = self._limit(seat.nominal + seat.upper / 1000)
        least, said_least = self._limit(seat.nominal + seat.lower / 1000)
        both = f"{plain(said)}/{plain(said_low)}/{plain(said_up)}/"
        limits = f"{plain(said)}/{plain((said_least - said) * 1000)}/{plain((said_high - said) * 1000)}/"
        size = sign + nominal + unit
        tail = f" {self.unit_word('um')}" if micro else unit
        if form == "class in cell":
            text = (f"{size} {cls}", f"{size}{'' if not unit else ' '}{cls}", f"{size} ({cls})", f"{size} {cls}")[style]
            return {"": text}, f"{plain(said)}///{cls}"
        if form == "deviations in cell":
            text = (f"{sign}{nominal} {up}/{low}{tail}", f"{sign}{nominal} ({up}/{low}){tail}",
                    f"{sign}{nominal} {up} {low}{tail}", f"{sign}{nominal} ({up}; {low}){tail}")[style]  # fmt: skip
            return {"": text}, both
        if form == "limits in cell":
            text = (f"{high}/{least}", f"{least} - {high}", f"{least}…{high}", f"{high} / {least}")[style]
            return {"": sign + text + unit}, limits + "limits"
        if form == "plus-minus in cell":
            return {"": f"{sign}{nominal}{('±', ' ± ', ' +/-', ' ±')[style]}{up.removeprefix('+')}{tail}"}, both
        if form == "class and deviations":
            text = (f"{sign}{nominal} {cls} ({up}/{low}{tail})", f"{sign}{nominal} {cls} {up}/{low}{tail}",
                    f"{sign}{nominal}{cls} ({up} / {low}{tail})",
                    f"{sign}{nominal} {cls} ({up}, {low}{tail})")[style]  # fmt: skip
            if style == 3 and self.mark == ",":
                text = f"{sign}{nominal} {cls} ({up} / {low}{tail})"
            return {"": text}, both + cls
        own = f" {self.unit_word('um')}" if micro and self.units == "cell" else unit
        if form == "class column":
            return {"": size, "class": cls}, f"{plain(said)}///{cls}"
        if form == "deviation columns":
            return {"": size, "upper": up + own, "lower": low + own}, both
        if form == "class and deviation columns":
            return {"": size, "class": cls, "upper": up + own, "lower": low + own}, both + cls
        if form == "tolerance column":
            return {"": size, "tolerance": f"{up}/{low}{own}"}, both
        if form == "plus-minus column":
            return {"": size, "tolerance": f"±{up.removeprefix('+')}{own}"}, both
        if form == "nominal and limits":
            return {"": size, "max": high + unit, "min": least + unit}, limits
        return {"max": high + unit, "min": least + unit}, limits + "limits"

    def _limit(self, value: float) -> tuple[str, float]:
        if self.system == "in":
            text, said = self.number(value / 25.4, 5, fixed=True)
            return text, said * 25.4
        return self.number(value, 4 if round(value * 1000) != round(value * 1000, 3) else 3, fixed=True)

    def _seat_columns(self, parameter: str, seats: dict[int, Seat]) -> list[Column]:
        columns: dict[str, Column] = {}
        for s, seat in seats.items():
            pieces, meaning = self.size_texts(seat)
            for piece, text in pieces.items():
                head, unit = self.term(parameter), self.unit_word(self.system)
                if piece:
                    word = self.word(words.TOLERANCE[piece])
                    head = word if self.short and "" in pieces else self.join.format(h=head, t=word)
                    unit = self.piece_unit(piece)
                cell = Cell(
                    text,
                    [(s, parameter, meaning)],
                    piece != "class" and text.lstrip("+-").replace(self.mark, "").isdigit(),
                )
                columns.setdefault(piece, Column(parameter, head, unit, {}, piece)).cells[s] = cell
        return list(columns.values())

    def piece_unit(self, piece: str) -> str:
        """The unit of a part of a tolerance that has a column of its own."""
        if piece == "class":
            return ""
        if piece in ("upper", "lower", "tolerance") and self.micro_deviations:
            return self.unit_word("um")
        return self.unit_word(self.system)
