"""The machines of a firm: which parameters are listed, and their values as written."""

import random
from collections.abc import Callable
from typing import Any

from practice.grammar import Value

from . import trade
from .style import Owner, Plan, Style


class Machines(Style):
    """A firm with its machines."""

    def __init__(self, number: int, plan: Plan) -> None:
        super().__init__(number, plan)
        self.draw()

    def listed(self, key: str) -> bool:
        return key in self.drawn

    def draw(self) -> None:
        """Draw which parameters are listed and their values, as written (choices in canonical words)."""
        rng, m_range = self.rng, range(self.plan.machines)
        self.owners = [(m, s) for m in m_range for s in range(2)]
        listed = {k for k, v in trade.PARAMETERS.items() if rng.random() < v[3] * self.density}
        listed |= {"dia", "nmax"} if "nop" not in listed or self.inch else {"dia"}
        if "des" not in listed or "class only" in self.plan.tolerance or self.inch:
            listed |= {"d", "D", "B"}
        if listed & {"d", "D", "B"}:
            listed |= {"d", "D"}
        if "top" in listed:
            listed -= {"ts", "th"}
        if self.inch:
            listed -= {"torq", "nu"}
        self.bearings: dict[Owner, tuple[Any, ...]] = {}
        for m in m_range:
            table = trade.INCH if self.inch else trade.METRIC
            first = rng.choice(table)
            self.bearings[m, 0] = first
            self.bearings[m, 1] = first if rng.random() < 0.55 else rng.choice(table)
        for key in (k for k in trade.PARAMETERS if k in listed):
            owners = self.owners if key in trade.OF_STATION else [(m, -1) for m in m_range]
            if key not in ("dia", "Ra", "cyl", "run", "sho", "shr", "fil"):
                values = {o: self.one(key, o) for o in owners}
                if key == "ang" and not any(values.values()):
                    continue
                self.drawn[key] = values
            else:
                self.drawn[key] = {}
        if "lub" in self.drawn and any(v != "grease" for v in self.drawn["lub"].values()):
            for key in ("relub", "fill", "nu"):
                self.drawn.pop(key, None)
        for key in ("cage", "tol", "clr", "lub"):
            for m, s in self.owners if key in self.drawn else ():
                if s and rng.random() < 0.75:
                    self.drawn[key][m, s] = self.drawn[key][m, 0]
        for m in m_range if "role" in self.drawn else ():
            sprung = self.drawn.get("pmeth", {}).get((m, -1)) == "spring" and rng.random() < 0.5
            held = rng.randrange(2)
            self.drawn["role"] |= {(m, held): "locating", (m, 1 - held): "spring-loaded" if sprung else "floating"}

    def one(self, key: str, owner: Owner) -> Any:
        """One value as written."""
        rng, inch = self.rng, self.inch
        m = owner[0]
        row = self.bearings.get(owner, self.bearings[m, 0])
        big = (row[3] * (25.4 if inch else 1)) > 22
        pick: dict[str, Callable[[], Any]] = {
            "dwg": lambda: f"{rng.choice(('K', 'LB', 'Z', '7', '31'))}-{rng.randrange(1000, 9999)}",
            "rev": lambda: rng.choice("ABCD"),
            "des": lambda: self.designation(row, owner),
            "type": lambda: row[1],
            "ang": lambda: row[2],
            "d": lambda: row[3], "D": lambda: row[4], "B": lambda: row[5], "r": lambda: row[6],
            "C": lambda: self.rating(row[7]), "C0": lambda: self.rating(row[8]),
            "nlim": lambda: round(500000 / (row[4] * (25.4 if inch else 1)), -3),
            "nmax": lambda: rng.choice((2950, 6000, 8500, 10500) if big else (9000, 12000, 15000, 18000)),
            "nop": lambda: round(self.drawn.get("nmax", {}).get(owner, 12000) * rng.choice((0.5, 0.6, 0.8)), -2),
            "life": lambda: rng.choice((8000, 10000, 20000, 25000, 40000)),
            "Fr": lambda: self.force(rng.choice((45, 60, 85, 120, 180, 240, 350)) * (3 if big else 1)),
            "Fa": lambda: self.force(rng.choice((10, 15, 25, 40, 60, 90)) * (3 if big else 1)),
            "pf": lambda: self.force(rng.choice((20, 35, 50, 80)) * (2 if big else 1)),
            "ts": lambda: rng.choice((140, 158, 167) if inch else (55, 60, 65, 70, 75)),
            "th": lambda: rng.choice((122, 131) if inch else (45, 50, 52, 58)),
            "top": lambda: rng.choice((140, 158, 176) if inch else (55, 60, 65, 70, 80)),
            "tmin": lambda: rng.choice((-4, 14, 32) if inch else (-20, -10, 0, 5)),
            "tmax": lambda: rng.choice((194, 212) if inch else (80, 90, 100)),
            "tamb": lambda: rng.choice((68, 77, 95) if inch else (20, 25, 35, 40)),
            "span": lambda: rng.choice((2.25, 3.5, 4.125, 6.0) if inch else (46, 62, 85, 118, 140, 212)),
            "mass": lambda: rng.choice((1.2, 2.6, 4.5)) if self.unit("mass")[0] not in ("g", "г")
            else rng.choice((240, 380, 850, 1250)),
            "bal": lambda: rng.choice((1, 2.5, 6.3)),
            "torq": lambda: rng.choice((12, 18, 25, 40)),
            "nu": lambda: rng.choice((25, 70, 100, 110)),
            "relub": lambda: rng.choice((2000, 4000, 8000)),
            "fill": lambda: rng.choice((20, 25, 30, 35)),
            "cob": lambda: self.form(rng.choice((10, 15, 20, 25))),
            "cos": lambda: self.form(rng.choice((5, 8, 10, 12))),
            "clo": lambda: {"Z": "shield", "S": "contact seal", "": "open"}[self.suffix(m)[0]],
            "clr": lambda: "C3" if self.suffix(m)[1] else rng.choice(trade.CHOICES["clr"]),
        }  # fmt: skip
        return pick[key]() if key in pick else rng.choice(trade.CHOICES[key]) if key in trade.CHOICES else ""

    def suffix(self, m: int) -> tuple[str, bool]:
        """Closure and clearance that the designations of a machine name."""
        own = random.Random(f"suffix {self.number} {m}")
        return own.choice(("", "Z", "Z", "S")), own.random() < 0.35

    def designation(self, row: tuple[Any, ...], owner: Owner) -> str:
        closure, wide = self.suffix(owner[0])
        if row[1] != "deep groove ball":
            return str(row[0])
        style = random.Random(f"style {self.number}").randrange(3)
        if self.plan.language == "ru" and style == 1 and not wide and len(row[0]) == 4:
            # GOST 3189: series 1, 2, 3 for 60, 62, 63; 80 with two shields, 180 with two seals
            return {"": "", "Z": "80", "S": "180"}[closure] + {"0": "1", "2": "2", "3": "3"}[row[0][1]] + row[0][2:]
        if self.plan.language == "ja":
            return row[0] + {"Z": "ZZ", "S": "-2RS", "": ""}[closure] + ("C3" if wide else "")
        return str(row[0] + {"Z": "ZZ" if self.inch else "-2Z", "S": "-2RS", "": ""}[closure]
                   + (("/C3", " C3", "/C3")[style] if wide else ""))  # fmt: skip

    def rating(self, kilo: float) -> float:
        return kilo if self.inch or self.unit("rating")[1] == 1000 else round(kilo * 1000, 3)

    def force(self, newton: float) -> float:
        if self.inch:
            return round(newton / 5)
        return newton if self.unit("force")[1] == 1 else round(newton / 1000, 6)

    def form(self, micron: float) -> float:
        unit = self.unit("form")[0]
        if self.inch:
            return max(1, round(micron / 2.54)) / (10000 if unit == "in" else 10)
        return micron if self.unit("form")[1] != 1 else micron / 1000

    def implied(self) -> dict[tuple[int, int, str], Value]:
        """What the designations say."""
        found: dict[tuple[int, int, str], Value] = {}
        scale = 25.4 if self.inch else 1
        for (m, s), row in self.bearings.items():
            closure, wide = self.suffix(m)
            if row[1] != "deep groove ball":
                closure, wide = "", False
            found |= {
                (m, s, "bearing_type"): row[1], (m, s, "contact_angle"): row[2],
                (m, s, "bore_diameter"): row[3] * scale,
                (m, s, "outside_diameter"): row[4] * scale, (m, s, "ring_width"): row[5] * scale,
                (m, s, "ring_chamfer"): {0.012: 0.3, 0.016: 0.4, 0.031: 0.8}.get(row[6], row[6]),
                (m, s, "clearance_class"): "C3" if wide else "CN",
                (m, s, "closure"): {"Z": "shield", "S": "contact seal", "": "open"}[closure],
            }  # fmt: skip
        return found
