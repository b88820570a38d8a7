"""Writing down a table: cells with what they state, headings, units, forms of tolerance, files and encodings."""

import csv
import io
import json
import random
from dataclasses import dataclass, field
from typing import Any

import xlsxwriter
from practice.grammar import Expected, Size, Table, Value

from . import trade, words
from .trade import KIND, Machine, Open, Seat, Units

Spot = tuple[int, int, int]  # sheet, row, column, all from 0
SEPARATE = {
    "class column": ("nominal", "class"),
    "deviation columns": ("nominal", "upper", "lower"),
    "class and deviation columns": ("nominal", "class", "upper", "lower"),
    "limit columns": ("max", "min"),
    "plus-minus column": ("nominal", "pm"),
}


@dataclass(frozen=True)
class Num:
    """A number in a cell: its decimals where they are fixed, and a unit that its number format shows."""

    value: float
    places: int | None = None
    unit: str = ""
    grouped: bool = False


@dataclass(frozen=True)
class Col:
    """A column of values: a parameter and, of a seat in several cells, the part of it."""

    parameter: str
    aspect: str = "value"
    group: str = ""


def address(row: int, column: int) -> str:
    """``B3`` of row 2, column 1."""
    name, column = "", column + 1
    while column:
        column, rest = divmod(column - 1, 26)
        name = chr(65 + rest) + name
    return f"{name}{row + 1}"


@dataclass
class Ink:
    """How one office writes: words are chosen once for a table."""

    rng: random.Random
    language: str
    units: Units
    form: str
    place: str
    comma: bool
    fixed: bool = False
    grouped: bool = False
    dev_um: bool = False
    style: int = 0
    signed: bool = False
    workbook: bool = False
    chosen: dict[str, str] = field(default_factory=dict)

    def pick(self, key: str, options: tuple[str, ...]) -> str:
        """One of the options, the same all over the table."""
        if key not in self.chosen:
            self.chosen[key] = self.rng.choice(options)
        return self.chosen[key]

    def part(self, name: str) -> str:
        """The office's word for a part of a list or of a size."""
        options = words.PARTS[self.language][name]
        twin = {"lower": "upper", "min": "max"}.get(name)
        if twin:
            return options[words.PARTS[self.language][twin].index(self.part(twin))]
        return self.pick("part " + name, options)

    def label(self, name: str) -> str:
        """The office's word for machine, position, drawing and revision."""
        return self.pick("full " + name, words.FULL[self.language][name])

    def group(self, name: str) -> str:
        """The heading of a section."""
        return self.pick("group " + name, words.GROUPS[self.language][name])

    def name(self, parameter: str, short: bool = False) -> str:
        """The office's name of a parameter; short where a heading names shaft or housing already."""
        language = self.language
        side = "shaft" if parameter.startswith("shaft_") else "housing"
        if parameter.endswith("_seat_diameter"):
            if short:
                return self.pick("short seat", words.SHORT[language]["seat"])
            return self.pick("full " + parameter, words.SEAT[language][side])
        for ending, feature in (
            ("_seat_cylindricity", "cyl"),
            ("_seat_runout", "run"),
            ("_seat_roughness", "rough"),
            ("_shoulder_diameter", "sh"),
            ("_shoulder_runout", "shrun"),
            ("_fillet_radius", "fil"),
        ):
            if parameter.endswith(ending):
                if short:
                    return self.pick("short " + feature, words.SHORT[language][feature])
                options = words.FEATURE[language][feature]
                which = options.index(self.pick("feature " + feature, options))
                nominative, genitive = words.SIDES[language][side]
                return options[which].format(N=nominative, G=genitive)
        return self.label(parameter)

    def unit(self, parameter: str, aspect: str = "value") -> str:
        """The unit's text, empty where there is none."""
        kind = KIND.get(parameter, "")
        key = {
            "length": self.units.length,
            "seat": self.units.length,
            "form": self.units.form,
            "rough": self.units.rough,
            "load": self.units.load,
            "rating": self.units.rating,
            "speed": "rpm",
            "temp": self.units.temp,
            "hours": "h",
            "mass": self.units.mass,
            "rate": "N/mm",
            "torque": "N.m",
            "angle": "deg",
            "viscosity": "mm2/s",
        }.get(kind, "")
        if kind == "seat":
            if aspect in ("class", "fit"):
                return ""
            if aspect in ("upper", "lower", "pm") and self.dev_um:
                key = "um"
        if not key:
            return ""
        plain = {
            "um": "µm",
            "uin": "µin",
            "degC": "°C",
            "degF": "°F",
            "rpm": "rpm",
            "N.m": "N·m",
            "deg": "°",
            "mm2/s": "mm²/s",
        }.get(key, key)
        return self.pick("unit " + key, words.UNITS[self.language].get(key, (plain,)))

    def noted(self, parameter: str, aspect: str = "value") -> bool:
        """Whether a note on the sheet states this unit."""
        if self.place not in ("title", "foot"):
            return False
        return KIND.get(parameter) in ("length", "form", "rough", "seat") and not (
            aspect in ("upper", "lower", "pm") and self.dev_um
        )

    def bracket(self, text: str, unit: str) -> str:
        """A heading with its unit."""
        if not unit:
            return text
        shape = self.pick(
            "bracket", ("{} [{}]", "{} [{}]", "{} ({})", "{}, {}", "{} / {}" if "/" not in unit else "{} [{}]")
        )
        if "/" in unit and shape == "{} / {}":
            shape = "{} [{}]"
        if shape == "{}, {}" and text.endswith("."):
            shape = "{} ({})"
        return shape.format(text, unit)

    def note(self) -> str:
        """The sheet's note on units."""
        label = {"l": "shaft_shoulder_diameter", "f": "shaft_seat_runout", "r": "shaft_seat_roughness"}
        return self.pick("note", words.NOTES[self.language]).format(**{k: self.unit(p) for k, p in label.items()})

    def text(self, value: float, places: int | None = None) -> str:
        """A number as text."""
        shown = f"{value:.{places}f}" if places is not None else f"{value:.6f}".rstrip("0").rstrip(".")
        return shown.replace(".", ",") if self.comma else shown

    def _sign(self, value: float) -> str:
        if self.dev_um:
            value, places = round(value * 1000, 1), 0 if round(value * 1000, 1) % 1 == 0 else 1
        else:
            places = 3 if round(value * 1000, 1) % 1 == 0 and self.units.length == "mm" else 4
        if value == 0:
            return "0"
        return ("+" if value > 0 else "-") + self.text(abs(value), places)

    def seat(self, seat: Seat, aspect: str) -> str | Num:
        """The cell of a seat, or of a part of it."""
        inch = self.units.length == "in"
        fine = 4 if inch or round(seat.upper * 1000, 1) % 1 or round(seat.lower * 1000, 1) % 1 else 3
        if aspect == "nominal":
            return Num(seat.nominal, fine if self.fixed else None)
        if aspect == "class":
            return seat.cls
        if aspect in ("upper", "lower", "pm"):
            value = seat.lower if aspect == "lower" else seat.upper
            if not self.workbook and self.signed and aspect != "pm":
                return self._sign(value)
            return Num(round(value * 1000, 1), None) if self.dev_um else Num(value, fine)
        high, low = round(seat.nominal + seat.upper, 4), round(seat.nominal + seat.lower, 4)
        if aspect in ("max", "min"):
            return Num(high if aspect == "max" else low, fine)
        phi = "φ" if self.language in ("ja", "zh") else "Ø"
        if self.language == "ru":
            phi = ""
        n = self.text(seat.nominal)
        if self.form == "class in cell":
            return (f"{n} {seat.cls}", f"{phi}{n} {seat.cls}", f"{n}{seat.cls}", f"{phi}{n}{seat.cls}")[self.style % 4]
        if self.form == "limits in cell":
            a, b = self.text(low, fine), self.text(high, fine)
            dots = "～" if self.language == "ja" else "..."
            return (f"{a}{dots}{b}", f"{a} - {b}", f"{b} / {a}", f"{phi}{b}/{a}")[self.style % 4]
        if self.form == "plus-minus in cell":
            both = self.text(seat.upper, fine)
            return (f"{n} ±{both}", f"{phi}{n}±{both}")[self.style % 2]
        up, down = self._sign(seat.upper), self._sign(seat.lower)
        unit = " " + self.unit("shaft_seat_diameter", "upper") if self.dev_um else ""
        if self.form == "class and deviations in cell":
            return (f"{n} {seat.cls} ({up}/{down}{unit})", f"{phi}{n}{seat.cls} {up}/{down}{unit}")[self.style % 2]
        return (f"{n} {up}/{down}{unit}", f"{phi}{n} ({up}/{down}{unit})", f"{n} {up} {down}{unit}")[self.style % 3]

    def cell(self, parameter: str, raw: Any, aspect: str = "value") -> str | Num:
        """A cell as it is shown, with its unit where units stand in the cells."""
        if isinstance(raw, Open):
            return raw.text if not isinstance(raw.text, float) else Num(raw.text)
        if isinstance(raw, Seat):
            shown = self.seat(raw, aspect)
        elif isinstance(raw, str):
            return words.CHOICES[self.language].get(parameter, {}).get(raw, raw)
        else:
            shown = Num(raw, grouped=self.grouped and KIND.get(parameter) in ("speed", "hours"))
        unit = self.unit(parameter, aspect)
        if self.place == "cell" and unit and not (isinstance(shown, str) and self.dev_um and aspect == "value"):
            if isinstance(shown, Num):
                if self.workbook and self.style % 2:
                    return Num(shown.value, shown.places, unit)
                return f"{self.text(shown.value, shown.places)} {unit}"
            return f"{shown} {unit}" if self.form not in ("deviations in cell",) else shown
        return shown

    def aspects(self) -> tuple[str, ...]:
        """The parts of a seat that stand in cells of their own."""
        return SEPARATE.get(self.form, ("value",))


class Doc:
    """Sheets of cells, and what they state."""

    def __init__(self, ink: Ink, machines: list[Machine], stations: list[list[str]]) -> None:
        self.ink, self.machines, self.stations = ink, machines, stations
        self.sheets: list[tuple[str, dict[tuple[int, int], Any]]] = [("", {})]
        self.merged: list[tuple[int, int, int, int, int]] = []
        self.own: dict[tuple[int, int, str], list[Any]] = {}
        self.heads: dict[tuple[int, int, str], list[Any]] = {}
        self.texts: dict[tuple[int, int, str], str] = {}
        self.forms: dict[tuple[int, int, str], str] = {}
        self.tree: Any = None
        self.lines: list[str] | None = None

    def put(self, spot: Spot, value: Any) -> Spot:
        """Write a cell."""
        sheet, row, column = spot
        if value is not None and value != "":
            assert (row, column) not in self.sheets[sheet][1], (spot, value, self.sheets[sheet][1][row, column])
            self.sheets[sheet][1][row, column] = value
        return spot

    def state(self, m: int, s: int, parameter: str, own: Any, heads: list[Any], form: str = "") -> None:
        """A cell (or pointer) states (part of) a value."""
        key = (m, s, parameter)
        if own not in self.own.setdefault(key, []):
            self.own[key].append(own)
        self.heads.setdefault(key, []).extend(h for h in heads if h not in self.heads.get(key, []))
        if form:
            self.forms[key] = form

    def fact(self, spot: Spot, m: int, s: int, col: Col, heads: list[Spot]) -> None:
        """Write a value of the case into a cell and state it."""
        machine = self.machines[m]
        source = machine.own if s < 0 else machine.positions[s]
        parameter = col.parameter
        if parameter == "dims":
            mark = "×" if self.ink.language in ("ja", "zh") else self.ink.pick("times", ("x", " x ", "*"))
            parts = ("bore_diameter", "outside_diameter", "ring_width")
            self.put(spot, mark.join(self.ink.text(source[p]) for p in parts))
            for p in parts:
                self.state(m, s, p, spot, heads, "d x D x B in one cell")
        elif parameter == "fit":
            shaft, housing = source["shaft_seat_diameter"], source["housing_seat_diameter"]
            self.put(spot, self.ink.pick("pair", ("{} / {}", "{}/{}", "{} - {}")).format(shaft.cls, housing.cls))
            for p in ("shaft_seat_diameter", "housing_seat_diameter"):
                self.state(m, s, p, spot, heads, "fit pair column")
        elif parameter in source:
            self.put(spot, self.ink.cell(parameter, source[parameter], col.aspect))
            self.state(m, s, parameter, spot, heads)

    def word(self, spot: Spot, m: int, s: int, parameter: str, text: str, heads: list[Spot]) -> None:
        """A machine's or position's name, a drawing number or revision."""
        self.put(spot, text)
        self.texts[m, s, parameter] = text
        self.state(m, s, parameter, spot, heads)

    # ------------------------------------------------------------ the meaning

    def _value(self, key: tuple[int, int, str]) -> tuple[Value, str, str]:
        m, s, parameter = key
        if key in self.texts:
            return self.texts[key], "read", "text"
        source = self.machines[m].own if s < 0 else self.machines[m].positions[s]
        raw, units = source[parameter], self.ink.units
        if isinstance(raw, Open):
            return (str(raw.text), "ask", "open") if raw.meant is None else (raw.meant, "either", "date")
        if isinstance(raw, str):
            return raw, "read", "text" if parameter == "bearing_designation" else "choice"
        if isinstance(raw, Seat):
            form = self.forms.get(key, self.ink.form)
            f = trade.FACTOR[units.length]
            n, low, up = round(raw.nominal * f, 6), round(raw.lower * f, 7), round(raw.upper * f, 7)
            if form in ("class in cell", "class column", "fit pair column"):
                return Size(n, None, None, raw.cls), "read", form
            if form in ("class and deviations in cell", "class and deviation columns"):
                return Size(n, low, up, raw.cls), "read", form
            return Size(n, low, up, bare=form in ("limits in cell", "limit columns")), "read", form
        verdict = (
            "either"
            if KIND.get(parameter) == "rough" and self.ink.place == "heading" and self.ink.style == 7
            else "read"
        )
        return trade.truth(parameter, raw, units), verdict, self.forms.get(key, "number")

    def _where(self, spot: Any) -> str:
        return spot if isinstance(spot, str) else address(spot[1], spot[2])

    def _word(self, spot: Any) -> str:
        return "" if isinstance(spot, str) else str(self.sheets[spot[0]][1].get(spot[1:], ""))

    def table(self, number: int, suffix: str, encoding: str, delimiter: str, kinds: dict[str, str]) -> Table:
        """The file and its meaning."""
        expected = []
        for key, own in self.own.items():
            value, verdict, form = self._value(key)
            heads = [h for h in self.heads[key] if h not in own]
            cells = tuple(dict.fromkeys(self._where(c) for c in (*own, *heads)))
            expected.append(
                Expected(
                    *key,
                    value,
                    verdict,
                    form,
                    cells,
                    tuple(w for h in heads if (w := self._word(h))),
                    tuple(dict.fromkeys(self._where(c) for c in own)),
                )
            )
        implied = {
            (m, s, name): value
            for m, machine in enumerate(self.machines)
            for s, known in enumerate(machine.implied)
            for name, value in known.items()
            if (m, s, name) not in self.own
        }
        content, encoding = self._content(suffix, encoding, delimiter)
        return Table(
            number,
            suffix,
            content,
            tuple(machine.name for machine in self.machines),
            tuple(tuple(names) for names in self.stations),
            tuple(expected),
            implied,
            {**kinds, "encoding": encoding},
        )

    # ------------------------------------------------------------ the file

    def _content(self, suffix: str, encoding: str, delimiter: str) -> tuple[bytes, str]:
        if self.tree is not None:
            return json.dumps(self.tree, ensure_ascii=False, indent=2).encode(), "utf-8"
        if suffix == ".xlsx":
            return self._workbook(), "xlsx"
        if self.lines is not None:
            text = "\r\n".join(self.lines) + "\r\n"
        else:
            out = io.StringIO()
            writer = csv.writer(out, delimiter=delimiter, lineterminator="\r\n")
            cells = self.sheets[0][1]
            width = max(c for _, c in cells) + 1
            for row in range(max(r for r, _ in cells) + 1):
                writer.writerow([self._shown(cells.get((row, c))) for c in range(width)])
            text = out.getvalue()
        try:
            return text.encode(encoding), encoding
        except UnicodeEncodeError:
            return text.encode("utf-8-sig"), "utf-8-sig"

    def _shown(self, value: Any) -> str:
        if not isinstance(value, Num):
            return "" if value is None else str(value)
        if value.grouped and value.value >= 1000:
            sign = {"en": ",", "ja": ",", "zh": ",", "fr": " ", "ru": " "}.get(self.ink.language, ".")
            return f"{value.value:,.0f}".replace(",", sign if self.ink.comma or sign != "." else "")
        return self.ink.text(value.value, value.places)

    def _workbook(self) -> bytes:
        out = io.BytesIO()
        with xlsxwriter.Workbook(out, {"in_memory": True}) as book:
            bold = book.add_format({"bold": True})
            for index, (name, cells) in enumerate(self.sheets):
                sheet = book.add_worksheet(name or None)
                spans = {(m[1], m[2]): m for m in self.merged if m[0] == index}
                for (row, column), value in cells.items():
                    if isinstance(value, Num):
                        places = "0" * value.places if value.places else ""
                        shape = f"0.{places}" if places else "General"
                        if value.unit:
                            shape = (
                                f"0.{places}" if places else "0.####" if value.value % 1 else "0"
                            ) + f'" {value.unit}"'
                        sheet.write_number(row, column, value.value, book.add_format({"num_format": shape}))
                    elif (row, column) in spans:
                        _, top, left, bottom, right = spans[row, column]
                        sheet.merge_range(top, left, bottom, right, value, bold)
                    else:
                        sheet.write_string(row, column, str(value))
        return out.getvalue()
