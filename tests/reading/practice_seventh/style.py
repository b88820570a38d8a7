"""How a firm writes: the plan of its table, its wordings and units, its numbers as text."""

import random
from dataclasses import dataclass
from typing import Any

from . import trade

Owner = tuple[int, int]  # machine, station (-1: all of the machine)


@dataclass(frozen=True)
class Plan:
    """What one table is: written down by hand in :mod:`shapes`."""

    language: str
    layout: str
    file: str  # suffix; of CSV the divider as well
    encoding: str
    tolerance: str
    place: str  # of the units: heading, row, title, cell, none
    machines: int
    notes: str  # further traits, divided by spaces


@dataclass(frozen=True)
class Num:
    """A number as written, in the unit of its column."""

    value: float
    quantity: str


Cell = Num | str


class Style:
    """The hand of a firm: words, units, how numbers look."""

    def __init__(self, number: int, plan: Plan) -> None:
        self.rng = random.Random(f"seventh set {number}")
        self.number, self.plan = number, plan
        self.words = trade.words(plan.language)
        self.inch = "inch" in plan.notes
        self.comma = plan.language in ("de", "fr", "it", "es", "ru") and "point" not in plan.notes
        self.thousands = {"en": ",", "de": ".", "fr": " ", "ru": " "}.get(plan.language, "")
        if "thousands" not in plan.notes:
            self.thousands = ""
        self.upper = "upper" in plan.notes
        self.bare_inch = self.rng.random() < 0.4
        self.unit_style = self.rng.choice(("{} [{}]", "{} [{}]", "{} ({})", "{} ({})", "{}, {}", "{} / {}", "{} {}"))
        self.index: dict[str, int] = {}
        self.taken: set[str] = set()
        self.doubts: set[str] = set()
        self.units: dict[str, tuple[str, float]] = {}
        self.density = self.rng.uniform(0.75, 1.15) * (0.8 if "few" in plan.notes else 1)
        self.names = self.rng.sample(self.choices("names"), plan.machines)
        pairs = [tuple(p.split(", ")) for p in self.choices("labels")]
        self.labels: tuple[str, ...] = self.rng.choice(pairs)
        self.drawn: dict[str, dict[Owner, Any]] = {}

    def fits(self, text: str) -> bool:
        try:
            text.encode(self.plan.encoding)
        except UnicodeEncodeError:
            return False
        return True

    def choices(self, key: str) -> list[str]:
        return [w for w in self.words[key] if self.fits(w)]

    def word(self, key: str, family: str = "", side: int = -1) -> str:
        """A wording of this firm; of one family the same place in the list is taken."""
        listed = self.words[key]
        if key == "clr" and "clearance" in self.doubts:
            listed = listed[1:]
        strict = self.upper or self.plan.layout == "json"
        usable = [
            k
            for k, w in enumerate(listed)
            if all(
                self.fits(t) and (t.upper() if self.upper else t) not in self.taken
                for t in trade.both_sides(w.rstrip("?"))
            )
            and not (w.endswith("?") and ("nop" in self.drawn or "json" in self.plan.layout))
            and not (strict and len(listed) > 3 and ("{da/Da}" in w or len(w) < 4 or w.startswith(("O.D.", "OD "))))
        ]
        usable = usable or list(range(len(listed)))
        family = family or key
        if family not in self.index or self.index[family] not in range(len(listed)):
            self.index[family] = self.rng.choice(usable)
        text = listed[self.index[family]]
        if text.endswith("?"):
            self.doubts.add(key)
        pair = trade.both_sides(text.rstrip("?"))
        text = pair[max(side, 0)]
        if not key.startswith(("x_", "g_", "c_", "t_")):
            self.taken.add(text.upper() if self.upper else text)
        return text.upper() if self.upper and not key.startswith("t_") and len(text) > 3 else text

    def unit(self, quantity: str) -> tuple[str, float]:
        """The unit as written and its value in canonical units."""
        if quantity in ("text", "choice"):
            return "", 1.0
        if quantity not in self.units:
            table = (trade.INCH_UNITS if self.inch else {}).get(quantity) or trade.UNITS[quantity]
            listed, factor = self.rng.choice(table)
            if quantity == "deviation":
                small = self.plan.tolerance.endswith(" um")
                listed, factor = table[1] if small else table[0]
            spelt = dict(part.split(":") for part in listed.split("; "))
            usable = [u for u in spelt.get(self.plan.language, spelt["*"]).split() if self.fits(u)]
            self.units[quantity] = (self.rng.choice(usable) if usable else "", factor)
        return self.units[quantity]

    def show(self, cell: Cell) -> str:
        """A cell as text: decimals, signed deviations, inches with four decimals, thousands as the firm has them."""
        if isinstance(cell, str):
            return cell
        value = cell.value
        if self.inch and cell.quantity in ("length", "deviation", "form") and self.unit(cell.quantity)[0] == "in":
            text = f"{value:.4f}"
            if self.bare_inch:
                text = text.replace("0.", ".", 1) if text.lstrip("-").startswith("0.") else text
        else:
            text = f"{value:.6f}".rstrip("0").rstrip(".")
        if cell.quantity in ("speed", "time") and self.thousands and value >= 10000:
            text = f"{value:,.0f}".replace(",", self.thousands)
        elif self.comma:
            text = text.replace(".", ",")
        if cell.quantity == "deviation":
            text = ("+" + text) if value > 0 else "0" if value == 0 else text
        return text
