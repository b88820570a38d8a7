"""From an office's template to the cells or the tree of one table, with the truth of what stands where.

A template is the table as the office writes it, cells parted by ``|``, with the values in braces:

- ``{Fr:N}`` the radial load in newton; ``{sc:mm,3}`` with three decimals at least; ``{sd.n:mm}``, ``{sd.c}``,
  ``{sd.u:µm}``, ``{sd.l}``, ``{sd.t}``, ``{sd.max:mm}``, ``{sd.min:mm}`` nominal, class, deviations, limits of a size;
  ``{?T:°C}`` has to be asked about; ``{Fr@2:N}`` is that of the second position; the names are those of ``NAMES``;
- ``{st}`` the position, ``{#}`` a running number, ``{day}`` a day, ``[a;b]`` (a whole cell) one of these texts;
- a line that begins with ``^`` is a row of headings, with ``@1`` of the second table only;
- ``%m`` to ``%end`` comes for each machine, ``%s`` to ``%end`` for each position; a cell that ends with ``!`` stands
  at the first position only;
- ``*cell`` and the cells from ``((`` to ``))`` come for each position, ``+cell`` for each machine over its positions.

In JSON ``["@s", ...]`` and a key ``{st}`` come for each position.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from practice.grammar import Expected
from practice_nineteenth.office import Line, Office
from practice_nineteenth.sheet import Sheet, Tree
from practice_nineteenth.trade import Rotor

NAMES = dict(
    part.split("=")
    for part in [
        "m=machine",
        "dn=drawing_number",
        "rev=drawing_revision",
        "nmax=speed_max",
        "nop=speed_operating",
        "life=required_life",
        "mass=rotor_mass",
        "span=bearing_span",
        "bal=balance_grade",
        "amb=ambient_temperature",
        "Th=housing_temperature",
        "Ts=shaft_temperature",
        "sm=shaft_material",
        "hm=housing_material",
        "ori=shaft_orientation",
        "Fv=preload_force",
        "cob=coaxiality_of_bores",
        "cos=coaxiality_of_shaft_seats",
        "duty=duty",
        "rr=rotating_ring",
        "ld=load_direction",
        "tmin=temperature_min",
        "tmax=temperature_max",
        "rel=required_reliability",
        "unb=residual_unbalance",
        "crit=first_critical_speed",
        "bd=bearing_designation",
        "bt=bearing_type",
        "d=bore_diameter",
        "D=outside_diameter",
        "B=ring_width",
        "r=ring_chamfer",
        "cl=clearance_class",
        "tc=tolerance_class",
        "C=dynamic_rating",
        "C0=static_rating",
        "Cu=fatigue_load_limit",
        "nl=limiting_speed",
        "nr=reference_speed",
        "lub=lubrication",
        "v40=base_oil_viscosity_40",
        "T=operating_temperature",
        "re=regreasing_interval",
        "fill=grease_fill",
        "Fr=radial_load",
        "Fa=axial_load",
        "role=axial_role",
        "nt=nut_torque",
        "cage=cage",
        "close=closure",
        "Z=ball_count",
        "ca=contact_angle",
        "ret=inner_ring_retention",
        "clean=cleanliness",
        "split=housing_split",
        "ep=ep_additives",
        "ho=housing_outer_diameter",
        "st=station",
        "sd=shaft_seat_diameter",
        "sc=shaft_seat_cylindricity",
        "sr=shaft_seat_runout",
        "sa=shaft_seat_roughness",
        "ss=shaft_shoulder_diameter",
        "sp=shaft_shoulder_runout",
        "sf=shaft_fillet_radius",
        "hd=housing_seat_diameter",
        "hc=housing_seat_cylindricity",
        "hr=housing_seat_runout",
        "ha=housing_seat_roughness",
        "hs=housing_shoulder_diameter",
        "hp=housing_shoulder_runout",
        "hf=housing_fillet_radius",
    ]
)
FIELD = re.compile(r"\{(\?)?([A-Za-z0-9,#]+?)(?:\.(\w+))?(?:@(\d))?(?::([^}]*))?\}")
LONG = ("speed_max", "speed_operating", "required_life", "limiting_speed", "reference_speed", "dynamic_rating")


def line_of(found: re.Match[str]) -> Line:
    """What a field tells."""
    parameter = "+".join(NAMES[name] for name in found[2].split(","))
    unit, _, least = (found[5] or "").partition(",")
    field = found[3] or "n"
    unit = unit or ("µm" if parameter.endswith("_roughness") else "")
    if parameter.endswith("_seat_diameter"):
        unit = f"mm/{unit or 'µm'}" if field in ("u", "l", "t") else f"{unit or 'mm'}:{least or 0}"
    else:
        unit = f"{unit}:{least}" if least else unit
    return Line((), "", parameter, unit, f"{{{field}}}", "ask" if found[1] else "read")


class Filler:
    """Fills the texts of a template; ``m`` and ``s`` are the machine and the position there, None outside of loops."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        self.office = office
        self.rotors = rotors
        self.count = 0

    def text(self, cell: str, m: int | None, s: int | None) -> tuple[str, list[tuple[Line, int, int]]]:
        """The text of a cell and what it tells."""
        rng = self.office.rng
        if cell.startswith("[") and cell.endswith("]") and ";" in cell:
            cell = rng.choice(cell[1:-1].split(";")).strip()
        told: list[tuple[Line, int, int]] = []

        def filled(found: re.Match[str]) -> str:
            if found[2] == "day":
                return str(rng.randint(10, 28))
            if found[2] == "#":
                self.count += 1
                return str(self.count)
            line = line_of(found)
            at = int(found[4]) - 1 if found[4] else s
            at = -1 if line.whole or at is None else at
            of = range(len(self.rotors)) if m is None else [m]
            told.extend((line, k, at) for k in of)
            if line.parameter == "station":
                return self.rotors[of[0]].positions[at]
            shown = self.office.text(self.rotors[of[0]], line, at)
            if "blank" in self.office.more and line.parameter in LONG and re.fullmatch(r"\d{5,}", shown):
                shown = f"{shown[:-3]} {shown[-3:]}"
            return shown

        return FIELD.sub(filled, cell), told


class Written(Sheet):
    """A sheet written from a template."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.filler = Filler(office, rotors)
        self.headings: list[int] = []
        self.fresh = True
        self.labels = [int(c) for c in office.more.get("labels", "").split()]
        rows = office.lines.strip("\n").splitlines()
        only = [re.match(r"@(\d+) ", row) for row in rows]
        self.run(
            [r[o.end() :] if o else r for r, o in zip(rows, only, strict=True) if not o or str(office.edition) in o[1]],
            None, None,
        )  # fmt: skip
        if "merged" in office.more:
            self.join()

    def run(self, rows: list[str], m: int | None, s: int | None) -> None:
        """Write the lines of a template."""
        n = 0
        while n < len(rows):
            if rows[n] in ("%m", "%s"):
                depth, end = 1, n + 1
                while depth:
                    depth += {"%m": 1, "%s": 1, "%end": -1}.get(rows[end], 0)
                    end += 1
                inner = rows[n + 1 : end - 1]
                count = len(self.rotors) if rows[n] == "%m" else len(self.rotors[m or 0].positions)
                for k in range(count):
                    self.run(inner, k if rows[n] == "%m" else m, k if rows[n] == "%s" else s)
                n = end
            else:
                self.line(rows[n], m, s)
                n += 1

    def join(self) -> None:
        """Merge each group's name over its columns, and a heading without a group over both rows."""
        top, low = self.headings
        for r, c in [place for place in self.grid if place[0] == top]:
            if (low, c) not in self.grid:
                self.merge(r, c, low, c)
                continue
            last = c
            while (low, last + 1) in self.grid and (top, last + 1) not in self.grid:
                last += 1
            self.merge(r, c, r, last)

    def cells(self, row: str, m: int | None, s: int | None) -> list[tuple[str, int | None, int | None]]:
        """The cells of a line with their machine and position."""
        across = "across" in self.office.more and m is None
        machines = range(len(self.rotors)) if across else [m]
        places = [(k, n) for k in machines for n in range(len(self.rotors[k or 0].positions))]
        found: list[tuple[str, int | None, int | None]] = []
        group: list[str] | None = None
        for cell in (cell.strip() for cell in row.split("|")):
            if cell == "((":
                group = []
            elif cell == "))":
                found += [(one, *place) for place in places for one in group or []]
                group = None
            elif group is not None:
                group.append(cell)
            elif cell.startswith("*"):
                found += [(cell[1:], *place) for place in places]
            elif cell.startswith("+") and across:
                wide = len(self.rotors[0].positions) - 1
                found += [one for k in machines for one in [(cell[1:], k, s), *[("", k, s)] * wide]]
            else:
                found.append((cell, m, s))
        return found

    def line(self, row: str, m: int | None, s: int | None) -> None:
        """Write one line."""
        if row.startswith("^"):
            self.headings = [self.row] if self.fresh else [*self.headings, self.row]
        self.fresh = not row.startswith("^")
        tells = []
        for c, (cell, k, n) in enumerate(self.cells(row.removeprefix("^"), m, s), 1):
            once = cell.endswith("!")
            if once and n:
                continue
            text, told = self.filler.text(cell.removesuffix("!"), k, n)
            self.put(self.row, c, text)
            tells += [(c, *one) for one in told]
        own = {c for c, *_ in tells}
        for c, line, k, n in tells:
            self.known(self.row, c, line, k, n, [] if not self.fresh else self.heads(c, own))
        self.row += 1

    def heads(self, c: int, own: set[int]) -> list[tuple[int, int]]:
        """The headings of a cell: above it, in its row, or the text to its left."""
        found = []
        if self.headings and (self.headings[-1], c) in self.grid:
            for r in self.headings:
                left = next((k for k in range(c, 0, -1) if (r, k) in self.grid), 0)
                if left:
                    found.append((r, left))
        found += [(self.row, k) for k in self.labels if (self.row, k) in self.grid and k not in own and k != c]
        if not found:
            found = [(self.row, k) for k in range(c - 1, 0, -1) if (self.row, k) in self.grid and k not in own][:1]
        return found


class Document(Tree):
    """A JSON document written from a template of dictionaries and lists."""

    def __init__(self, office: Office, rotors: Sequence[Rotor], template: Any) -> None:
        super().__init__(office, rotors)
        self.filler = Filler(office, rotors)
        self.document = self.filled(template, (), None, None, ())

    def filled(
        self, tree: Any, path: tuple[str | int, ...], m: int | None, s: int | None, words: tuple[str, ...]
    ) -> Any:
        """The tree with its values; ``words`` say what a leaf is."""
        if isinstance(tree, dict):
            return self.mapping(tree, path, m, s, words[-1:] if len(tree) < 3 else ())
        if isinstance(tree, list):
            return self.listed(tree, path, m, s, words)
        if not isinstance(tree, str):
            return tree
        text, told = self.filler.text(tree, m, s)
        pointer = "".join("/" + str(p).replace("~", "~0").replace("/", "~1") for p in path)
        for line, k, n in told:
            self.note(pointer, line, k, n, {f"{pointer} {word}": word for word in words})
        names = ("bearing_designation", "machine", "drawing_number", "drawing_revision", "station")
        plain = FIELD.fullmatch(tree) and told[0][0].parameter not in names and "strings" not in self.office.more
        if plain and re.fullmatch(r"[+-]?\d+", text):
            return int(text)
        return float(text) if plain and re.fullmatch(r"[+-]?\d+\.\d+", text) else text

    def mapping(
        self, tree: dict[str, Any], path: tuple[str | int, ...], m: int | None, s: int | None, over: tuple[str, ...]
    ) -> dict[str, Any]:
        """An object; one with the key ``{st}`` has a key for each position."""
        found: dict[str, Any] = {}
        said = tuple(v for v in tree.values() if isinstance(v, str) and not FIELD.search(v) and len(v) > 2)
        for key, value in tree.items():
            if key == "{st}":
                pointer = "".join(f"/{p}" for p in path)
                for n, name in enumerate(self.rotors[m or 0].positions):
                    self.note(pointer, Line((), "", "station"), m or 0, n, {})
                    found[name] = self.filled(value, (*path, name), m or 0, n, ())
            else:
                found[key] = self.filled(value, (*path, key), m, s, (*over, *said, key))
        return found

    def listed(
        self, tree: list[Any], path: tuple[str | int, ...], m: int | None, s: int | None, words: tuple[str, ...]
    ) -> list[Any]:
        """A list, with its items for each position where it says so; such a list within it is part of it."""
        found: list[Any] = []
        several = [tree] if _repeated(tree) else [one if _repeated(one) else [one] for one in tree]
        for part in several:
            for n in range(len(self.rotors[m or 0].positions)) if part[0] == "@s" else (s,):
                for item in part[1:] if part[0] == "@s" else part:
                    found.append(self.filled(item, (*path, len(found)), m, n, words))
        return found

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find; the cells of a value are its leaves alone."""
        return tuple(replace(e, cells=e.own) for e in super().expected())


def _repeated(item: Any) -> bool:
    """Whether it is a list that comes for each position."""
    return isinstance(item, list) and item[:1] == ["@s"]
