"""A firm: the fields that its table has, with their words, cells and meaning."""

import random
from dataclasses import dataclass, field

from practice.grammar import Size, Value

from . import trade
from .machines import Machines
from .style import Cell, Num, Owner


@dataclass
class Column:
    """One column (or row) of a field: heading by itself and under a group heading, unit and cells."""

    word: str
    short: str
    unit: str
    cells: dict[Owner, Cell]
    quantity: str = "text"

    def cell(self, machine: int, station: int) -> Cell:
        return self.cells.get((machine, station), self.cells.get((machine, -1), ""))


@dataclass
class Field:
    """A parameter of the table, or (``parameter`` empty) a column that is none of our business."""

    key: str
    parameter: str
    group: str
    columns: list[Column]
    values: dict[Owner, Value]
    form: str
    verdicts: dict[Owner, str] = field(default_factory=dict)
    tolerance: dict[Owner, str] = field(default_factory=dict)

    def of_station(self) -> bool:
        return any(s >= 0 for column in self.columns for _, s in column.cells)


class Firm(Machines):
    """Everything drawn once for a table, by its number."""

    def fields(self) -> list[Field]:
        """All fields in the order of the vocabulary's groups, those without business of ours last."""
        found = [self.plain(key) for key in self.drawn if trade.PARAMETERS[key][1] != "side"]
        for side in range(2):
            found += [
                self.size(side) if key == "dia" else self.feature(key, side)
                for key in self.drawn
                if trade.PARAMETERS[key][1] == "side"
            ]
        order = ("mach", "brg", "shaft", "housing", "op")
        return sorted(found, key=lambda f: order.index(f.group))

    def plain(self, key: str) -> Field:
        parameter, group, quantity, _ = trade.PARAMETERS[key]
        unit, factor = self.unit(quantity)
        values: dict[Owner, Value] = {}
        cells: dict[Owner, Cell] = {}
        graded = self.rng.choice(("G{}", "G {}", "{}"))
        spelt: dict[str, str] = {}
        for owner, value in self.drawn[key].items():
            if quantity == "text":
                values[owner] = cells[owner] = value
            elif quantity == "choice":
                values[owner] = value
                spelt.setdefault(value, self.spell(key, value))
                cells[owner] = spelt[value]
            elif quantity == "grade":
                values[owner], cells[owner] = float(value), graded.format(self.show(Num(value, "grade")))
            else:
                values[owner] = (value - 32) * 5 / 9 if unit == "°F" else value * factor
                cells[owner] = Num(value, quantity)
        word = self.word(key)
        verdicts = dict.fromkeys(values, "either") if key in self.doubts else {}
        if key == "pf" and self.rng.random() < 0.3 and not self.comma:
            for owner in values:
                nominal, half = self.drawn[key][owner], self.force(10)
                cells[owner] = f"{self.show(Num(nominal, 'force'))} ±{self.show(Num(half, 'force'))}"
                values[owner] = Size(nominal * factor, -half * factor, half * factor)
        return Field(key, parameter, group, [Column(word, word, unit, cells, quantity)], values, quantity, verdicts)

    def spell(self, key: str, value: str) -> str:
        if key in ("clr", "tol") and value != "Normal":
            if self.inch and key == "tol":
                return {"P6": "ABEC 3", "P5": "ABEC 5"}[value]
            return {"ja": {"P6": "6級", "P5": "5級"}, "ru": {"P6": "6", "P5": "5"}}.get(self.plan.language, {}).get(
                value, value
            )
        if value == "Normal" and self.inch:
            return "ABEC 1"
        return self.rng.choice([w for w in self.words[value] if self.fits(w)])

    def feature(self, key: str, side: int) -> Field:
        """Roughness, form, shoulder and fillet of one side."""
        parameter, _, quantity, _ = trade.PARAMETERS[key]
        unit, factor = self.unit(quantity)
        rng = self.rng
        cells: dict[Owner, Cell] = {}
        values: dict[Owner, Value] = {}
        as_text = key == "Ra" and rng.random() < 0.15 and not self.inch
        for owner in self.owners:
            d, outer, chamfer = (self.bearings[owner][k] for k in (3, 4, 6))
            if key == "Ra":
                value = rng.choice((16, 32) if self.inch else ((0.4, 0.8, 0.4) if side == 0 else (0.8, 1.6)))
            elif key == "sho":
                step = round(chamfer * 4.6 + (0.03 if self.inch else 1), 3 if self.inch else 1)
                value = round(d + step if side == 0 else outer - step, 3)
            elif key == "fil":
                value = round(chamfer * 0.8, 3 if self.inch else 1) or 0.2
            else:
                value = self.form(rng.choice({"cyl": (3, 4, 5), "run": (5, 6, 8, 10), "shr": (5, 8, 12)}[key]))
            values[owner] = value * factor
            cells[owner] = f"Ra {self.show(Num(value, quantity))}" if as_text else Num(value, quantity)
        name = ("shaft_", "housing_")[side] + parameter
        column = Column(self.word(key, side=side), self.word("x_" + key), unit, cells, quantity)
        return Field(key, name, ("shaft", "housing")[side], [column], values, quantity)

    def size(self, side: int) -> Field:
        """The diameter of a seat with its tolerance, in the firm's manner."""
        how = self.plan.tolerance
        unit, factor = self.unit("length")
        _, small = self.unit("deviation")
        owners = self.owners
        nominal = {o: self.bearings[o][3 + side] for o in owners}
        classes = [c for c in trade.CLASSES[side] if c.lower().startswith("js") == ("plus-minus" in how)]
        classes = [c for c in classes if c not in ("g6", "j5", "h5", "G7")] or classes
        chosen = {m: self.rng.choice(classes) for m, _ in owners}
        sizes: dict[Owner, tuple[float, float, str]] = {}
        tenths = self.rng.choice(((0, 3), (1, 4), (-1, 2)) if side == 0 else ((0, 5), (-2, 3), (1, 6)))
        for o in owners:
            if self.inch:
                low, high = (-2, 2) if "plus-minus" in how else tenths
                sizes[o] = (low / 10000, high / 10000, "")
            else:
                sizes[o] = (*trade.deviations(side, chosen[o[0]], nominal[o]), chosen[o[0]])
        values: dict[Owner, Value] = {}
        for o, (lower, upper, name) in sizes.items():
            stated = how in ("class in cell", "class column", "class only", "class and deviations")
            with_dev = how not in ("class in cell", "class column", "class only")
            values[o] = Size(
                nominal[o] * factor,
                lower * factor if with_dev else None,
                upper * factor if with_dev else None,
                name if stated else "",
                "limit" in how,
            )
        text = {o: self.show(Num(nominal[o], "length")) for o in owners}
        scale = 1 if small == factor else factor / small

        def dev(x: float) -> Num:
            return Num(round(x * scale, 6), "deviation")

        pair = {o: f"{self.show(dev(v[1]))}/{self.show(dev(v[0]))}" for o, v in sizes.items()}
        limit = {o: [Num(round(nominal[o] + sizes[o][k], 6), "length") for k in (1, 0)] for o in owners}
        sign = "Ø" if self.fits("Ø") else "φ" if self.fits("φ") else ""
        # the same style on both sides
        own = random.Random(f"size {self.number}")
        sign = own.choice(("", "", sign, sign)) if self.plan.layout != "json" else ""
        gap = own.choice((" ", " ", ""))
        dash = own.choice((" - ", "–" if self.fits("–") else "-", " / "))
        first: dict[Owner, Cell] = {o: Num(nominal[o], "length") for o in owners}
        tolerance = {o: v[2] or pair[o] for o, v in sizes.items()}
        columns: list[Column] = []

        def add(key: str, family: str, unit: str, cells: dict[Owner, Cell], quantity: str) -> None:
            word, short = self.word(key, family, side), self.word("x_" + key, "x_" + family)
            columns.append(Column(word, short, unit, cells, quantity))

        if how == "class in cell":
            first = {o: f"{sign}{text[o]}{gap}{sizes[o][2]}" for o in owners}
        elif how == "class and deviations":
            first = {o: f"{sign}{text[o]} {sizes[o][2]} ({pair[o]})" for o in owners}
        elif how == "deviations in cell":
            first = {o: f"{sign}{text[o]} {pair[o]}" for o in owners}
        elif how == "limits in cell":
            first = {o: self.show(limit[o][1]) + dash + self.show(limit[o][0]) for o in owners}
        if "class only" not in how and how != "limit columns":
            add("dia", "dia", unit, first, "length" if isinstance(first[owners[0]], Num) else "size")
        if how in ("class column", "class only"):
            add("cls", "cls", "", {o: sizes[o][2] for o in owners}, "text")
        elif how.startswith("deviation columns"):
            add("up", "dev", self.unit("deviation")[0], {o: dev(sizes[o][1]) for o in owners}, "deviation")
            add("lo", "dev", self.unit("deviation")[0], {o: dev(sizes[o][0]) for o in owners}, "deviation")
        elif how.startswith("plus-minus"):
            cells: dict[Owner, Cell] = {o: Num(dev(sizes[o][1]).value, "length") for o in owners}
            add("pm", "pm", self.unit("deviation")[0], cells, "deviation")
        elif how == "limit columns":
            add("max", "lim", unit, {o: limit[o][0] for o in owners}, "length")
            add("min", "lim", unit, {o: limit[o][1] for o in owners}, "length")
        parameter = ("shaft_seat_diameter", "housing_seat_diameter")[side]
        return Field("dia", parameter, ("shaft", "housing")[side], columns, values, how, {}, tolerance)

    def noise(self, count: int) -> list[Field]:
        """Columns that are none of our business."""
        found = []
        for text in self.rng.sample(self.words["noise"], count):
            word, _, listed = text.partition("= ")
            samples = listed.split(", ")
            cells: dict[Owner, Cell] = {}
            for m, s in self.owners:
                sample = samples[(m + s) % 2]
                cells[m, s] = sample.replace(".", ",") if self.comma and sample.replace(".", "").isdigit() else sample
            column = Column(word.upper() if self.upper else word, word, "", cells)
            found.append(Field("noise", "", "noise", [column], {}, "noise"))
        return found
