"""Faults that are planted in a complete arrangement, each with the clauses of which one has to find it.

A fault is far beyond what any maker prints: it is meant to be found as major or critical whatever the exact limit is.
``needed`` says to which designs it can be done; ``plant`` takes a design and a ``random.Random`` and gives the faulty
design. A fault of a station stands at one station, drawn; one of the machine stands in all its rows.
"""

import random
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from tests.designs.complete import Design, Row, figures

Plant = Callable[[Design, random.Random], Design]


@dataclass(frozen=True)
class Fault:
    """A planted fault: its name, the clauses of which one must find it, whom it fits and how it is planted."""

    name: str
    clauses: tuple[str, ...]
    why: str
    needed: Callable[[Design], bool]
    change: Callable[[list[Row], random.Random, int], None]

    def plant(self, design: Design, rng: random.Random) -> Design:
        """The design with this fault."""
        rows = [dict(row) for row in design.rows]
        self.change(rows, rng, rng.randrange(len(rows)))
        return design.with_rows(rows, self.name)


FAULTS: dict[str, Fault] = {}


def fault(name: str, clauses: str, why: str, needed: Callable[[Design], bool] = lambda design: True) -> Any:
    """Enter a function of (rows, rng, station) that spoils rows in place."""

    def enter(change: Callable[[list[Row], random.Random, int], None]) -> Any:
        FAULTS[name] = Fault(name, tuple(clauses.split()), why, needed, change)
        return change

    return enter


def faults_for(design: Design) -> list[Fault]:
    """Every fault that can be planted in a design."""
    return [entry for entry in FAULTS.values() if entry.needed(design)]


def faulty_design(seed: int) -> tuple[Design, Fault]:
    """A complete design with one fault, drawn from the seed."""
    from tests.designs.complete import complete_design

    rng = random.Random(f"fault {seed}")
    design = complete_design(seed)
    found = rng.choice(faults_for(design))
    return found.plant(design, rng), found


# ------------------------------------------------------------------------------------------------ which designs


def everywhere(rows: list[Row], **values: Any) -> None:
    """A value of the machine; None takes it away."""
    for row in rows:
        for name, value in values.items():
            if value is None:
                row.pop(name, None)
            else:
                row[name] = value


def inner_turns(design: Design) -> bool:
    return design.rows[0]["rotating_ring"] == "inner"


def outer_turns(design: Design) -> bool:
    return not inner_turns(design)


def sprung(design: Design) -> bool:
    return design.rows[0]["preload_method"] == "spring"


def rigid(design: Design) -> bool:
    return design.rows[0]["preload_method"] == "rigid"


def floats(design: Design) -> bool:
    return "free_ring" in design.rows[1]


def ball(design: Design) -> bool:
    return all("ball" in row["bearing_type"] for row in design.rows)


def deep_groove(design: Design) -> bool:
    return all(row["bearing_type"] == "deep groove ball" for row in design.rows)


def slides_outside(design: Design) -> bool:
    """The second position has a free outer ring that slides in its bore."""
    return design.rows[1].get("free_ring") == "outer" and "ball" in design.rows[1]["bearing_type"]


def speed_factor(row: Row) -> float:
    return row["speed_max"] * 0.5 * (row["bore_diameter"] + row["outside_diameter"])


def fast(design: Design) -> bool:
    return speed_factor(design.rows[0]) > 2.5e5


def greased(design: Design) -> bool:
    return design.rows[0]["lubrication"].startswith("grease")


def both(*wanted: Callable[[Design], bool]) -> Callable[[Design], bool]:
    return lambda design: all(one(design) for one in wanted)


def precise(design: Design) -> bool:
    """A class that asks for fine seats: what the drawing leaves open there is major, not minor."""
    return design.rows[0]["tolerance_class"] in ("P5", "P4")


def section(row: Row) -> float:
    return 0.5 * (row["outside_diameter"] - row["bore_diameter"])


# ------------------------------------------------------------------------------------------------ fits


@fault(
    "shaft seat loose under a rotating load",
    "fit.load-rotation fit.inner-hold fit.shaft-class",
    "NTN 2203 table 16.1: the ring creeps",
    inner_turns,
)
def _(rows, rng, k):
    rows[k]["shaft_seat_diameter"] = [rows[k]["bore_diameter"], rng.choice(("f6", "f7", "f8"))]


@fault(
    "housing bore loose under a rotating load",
    "fit.load-rotation fit.outer-hold fit.housing-class",
    "NTN 2203 table 16.1: the ring creeps",
    outer_turns,
)
def _(rows, rng, k):
    rows[k]["housing_seat_diameter"] = [rows[k]["outside_diameter"], rng.choice(("F7", "F8", "F9"))]


@fault(
    "shaft seat far too tight",
    "fit.inner-stress fit.shaft-class fit.running-clearance fit.one-ring-free fit.miniature-play fit.thin-ring "
    "preload.maximum",
    "beyond every printed class for ball bearings to 50 mm",
    ball,
)
def _(rows, rng, k):
    rows[k]["shaft_seat_diameter"] = [
        rows[k]["bore_diameter"],
        rng.choice(("s6", "r6", "t6") if rows[k]["bore_diameter"] > 24 else ("s6", "r6")),
    ]


@fault(
    "housing bore far too tight",
    "fit.housing-class fit.one-ring-free fit.running-clearance fit.outer-slides fit.miniature-play",
    "P and R classes are for thin-walled hubs with a rotating load",
    both(inner_turns, ball),
)
def _(rows, rng, k):
    rows[k]["housing_seat_diameter"] = [rows[k]["outside_diameter"], rng.choice(("R6", "R7", "S7"))]


@fault("shaft seat with the letter of a hole", "table.class-agrees", "ISO 286-1: capitals are for holes")
def _(rows, rng, k):
    rows[k]["shaft_seat_diameter"] = [rows[k]["bore_diameter"], rng.choice(("H6", "K6", "JS6"))]


@fault("deviations that are not of their class", "table.class-agrees", "two statements that contradict each other")
def _(rows, rng, k):
    nominal, word = rows[k]["shaft_seat_diameter"]
    rows[k]["shaft_seat_diameter"] = [nominal, 0.021, 0.034, word]


@fault("seat of another bearing", "table.nominals-agree", "a seat half a millimetre off is another bearing's")
def _(rows, rng, k):
    name, size = rng.choice((("shaft_seat_diameter", "bore_diameter"), ("housing_seat_diameter", "outside_diameter")))
    rows[k][name] = [rows[k][size] + rng.choice((-0.5, 0.5, 1.0)), rows[k][name][1]]


@fault(
    "seats of a coarse grade",
    "fit.grade fit.shaft-class alignment.form-within-size",
    "SKF 17000: IT5 to IT6 for shafts, IT9 is for sleeves",
)
def _(rows, rng, k):
    rows[k]["shaft_seat_diameter"] = [rows[k]["bore_diameter"], "js9"]


@fault("bore of a coarse grade", "fit.grade fit.housing-class", "IT10 is printed for no ball bearing")
def _(rows, rng, k):
    rows[k]["housing_seat_diameter"] = [rows[k]["outside_diameter"], "JS10"]


@fault("tight bore in a split housing", "fit.split-housing", "NBDS: K7 or tighter is not to be split")
def _(rows, rng, k):
    rows[k] |= {
        "housing_split": "yes",
        "housing_seat_diameter": [rows[k]["outside_diameter"], rng.choice(("M6", "N6", "N7"))],
    }


@fault("two locating positions", "fit.arrangement", "growth of the shaft loads the balls", both(floats, slides_outside))
def _(rows, rng, k):
    for row in rows:
        row["axial_role"] = "locating"
        row.pop("free_ring", None)
    everywhere(rows, preload_method="none")


@fault("no locating position", "fit.arrangement", "the rotor wanders", floats)
def _(rows, rng, k):
    rows[0] |= {"axial_role": "floating", "free_ring": rows[1].get("free_ring", "outer")}
    rows[1]["axial_role"] = "floating"


@fault(
    "the ring with the rotating load is the free one",
    "fit.free-ring fit.outer-slides",
    "SKF axial displacement: the ring with the stationary load is free",
    both(floats, ball, inner_turns),
)
def _(rows, rng, k):
    rows[1]["free_ring"] = "inner"


@fault(
    "the free ring is tight",
    "fit.outer-slides fit.one-ring-free fit.housing-class",
    "SKF, preloading with springs: the sprung ring must slide",
    slides_outside,
)
def _(rows, rng, k):
    rows[1]["housing_seat_diameter"] = [rows[1]["outside_diameter"], rng.choice(("M6", "N6", "P6"))]


@fault(
    "axial float smaller than the growth",
    "fit.axial-float",
    "growth strikes the shoulder",
    lambda d: d.rows[1]["axial_role"] == "floating" and ball(d),
)
def _(rows, rng, k):
    everywhere(rows, axial_float=[0.002, -0.001, 0.001], shaft_temperature=rows[0]["housing_temperature"] + 40.0)


@fault(
    "a light-alloy housing opens when warm",
    "fit.outer-looseness fit.outer-hold fit.running-clearance",
    "23 against 12.5e-6/K over 110 K",
    inner_turns,
)
def _(rows, rng, k):
    everywhere(
        rows, housing_material="aluminium", housing_temperature=115.0, shaft_temperature=125.0, temperature_max=140.0
    )
    for row in rows:
        row |= {
            "housing_seat_diameter": [row["outside_diameter"], "G7"],
            "operating_temperature": 120.0,
            "outer_ring_retention": "none",
        }


@fault(
    "a light-alloy hub lets go when warm",
    "fit.outer-hold fit.load-rotation fit.outer-looseness",
    "the outer ring turns with the hub and creeps",
    outer_turns,
)
def _(rows, rng, k):
    everywhere(
        rows, housing_material="aluminium", housing_temperature=110.0, shaft_temperature=112.0, temperature_max=125.0
    )
    for row in rows:
        row["operating_temperature"] = 111.0


@fault(
    "a light-alloy housing seizes the free ring when cold",
    "fit.outer-slides",
    "the bore shrinks on the ring",
    slides_outside,
)
def _(rows, rng, k):
    everywhere(rows, housing_material="aluminium", temperature_min=-55.0)
    rows[1]["housing_seat_diameter"] = [rows[1]["outside_diameter"], "K6"]


@fault(
    "the internal clearance is used up",
    "fit.running-clearance fit.miniature-play",
    "a hot tight inner ring in the small clearance group",
    both(deep_groove, inner_turns, lambda d: d.rows[0]["preload_method"] == "none"),
)
def _(rows, rng, k):
    everywhere(rows, shaft_temperature=rows[0]["housing_temperature"] + 60.0)
    rows[k].pop("radial_clearance", None)
    rows[k] |= {
        "clearance_class": "C2",
        "shaft_seat_diameter": [rows[k]["bore_diameter"], "n6"],
        "housing_seat_diameter": [rows[k]["outside_diameter"], "K6"],
    }


@fault(
    "a miniature bearing without play",
    "fit.miniature-play fit.running-clearance",
    "interference takes more than the play",
    both(deep_groove, lambda d: d.rows[0]["bore_diameter"] < 9),
)
def _(rows, rng, k):
    rows[k] |= {"radial_clearance": [3.0, -1.0, 1.0], "shaft_seat_diameter": [rows[k]["bore_diameter"], "m6"]}
    rows[k].pop("clearance_class", None)


@fault("a bonded ring on a press fit", "fit.adhesive-gap", "the adhesive is wiped off", inner_turns)
def _(rows, rng, k):
    rows[k] |= {"inner_ring_retention": "adhesive", "shaft_seat_diameter": [rows[k]["bore_diameter"], "n6"]}


# ------------------------------------------------------------------------------------------------ alignment


def _coarse(name: str, clause: str, parameter: str, value: float, why: str) -> None:
    @fault(name, clause, why)
    def _(rows, rng, k):
        rows[k][parameter] = value


_coarse(
    "shaft seat out of round",
    "alignment.cylindricity alignment.tilt",
    "shaft_seat_cylindricity",
    0.03,
    "five times IT5/2",
)
_coarse(
    "housing bore out of round",
    "alignment.cylindricity alignment.tilt",
    "housing_seat_cylindricity",
    0.05,
    "five times IT5/2",
)
_coarse("shaft seat runs out", "alignment.seat-runout alignment.tilt", "shaft_seat_runout", 0.05, "as a turned blank")
_coarse(
    "housing bore runs out", "alignment.seat-runout alignment.tilt", "housing_seat_runout", 0.08, "as a turned blank"
)


@fault(
    "shaft shoulder not square",
    "alignment.shoulder-runout alignment.tilt",
    "several times IT5; where the inner ring bears on it, since a ring that slides bears on no shoulder",
)
def _(rows, rng, k):
    bearing = [row for row in rows if row.get("free_ring") != "inner"]
    bearing[k % len(bearing)]["shaft_shoulder_runout"] = 0.08


@fault(
    "housing shoulder not square",
    "alignment.shoulder-runout alignment.tilt",
    "several times IT5; at both positions, since a ring that slides bears on no shoulder",
    lambda d: any(row.get("housing_shoulder_runout") and row.get("axial_role") == "locating" for row in d.rows),
)
def _(rows, rng, k):
    for row in rows:
        if row.get("housing_shoulder_runout"):
            row["housing_shoulder_runout"] = 0.1


_coarse(
    "shaft seat rough", "alignment.roughness", "shaft_seat_roughness", 6.3, "URB v14 table 4.5 ends at 0.8 to 80 mm"
)
_coarse(
    "housing bore rough",
    "alignment.roughness",
    "housing_seat_roughness",
    12.5,
    "URB v14 table 4.5 ends at 0.8 to 80 mm",
)


@fault("bores out of line", "alignment.coaxiality alignment.tilt", "a third of a millimetre between two settings")
def _(rows, rng, k):
    everywhere(rows, coaxiality_of_bores=0.3)


@fault("shaft seats out of line", "alignment.coaxiality alignment.tilt", "a bent shaft")
def _(rows, rng, k):
    everywhere(rows, coaxiality_of_shaft_seats=0.2)


@fault("form and run-out not stated at one station", "alignment.stated", "one station's values are missing", precise)
def _(rows, rng, k):
    for part in ("seat_cylindricity", "seat_runout", "seat_roughness", "shoulder_runout"):
        for side in ("shaft", "housing"):
            rows[k].pop(f"{side}_{part}")


# ------------------------------------------------------------------------------------------------ shoulders


@fault("fillet larger than the ring chamfer", "shoulder.fillet", "NSK E1102 p. A126: the ring does not seat and cracks")
def _(rows, rng, k):
    side = rng.choice(("shaft", "housing"))
    # a free ring may have no abutment at all: the fault stands at the other one
    side = {"inner": "housing", "outer": "shaft"}.get(rows[k].get("free_ring") or "", side)
    rows[k][f"{side}_fillet_radius"] = round(2.2 * rows[k]["ring_chamfer"], 2)
    for part in ("form", "width", "depth", "radius"):
        rows[k].pop(f"{side}_undercut_{part}", None)


@fault("shaft shoulder too low", "shoulder.shaft-height", "the ring stands on its chamfer")
def _(rows, rng, k):
    k = 0  # the free ring of the other position may slide and bear on no shoulder
    rows[k]["shaft_shoulder_diameter"] = [
        round(rows[k]["bore_diameter"] + 1.6 * rows[k]["ring_chamfer"], 2),
        -0.05,
        0.0,
    ]


@fault(
    "shaft shoulder reaches the outer ring", "shoulder.other-ring shoulder.shaft-height", "the turning shoulder rubs"
)
def _(rows, rng, k):
    rows[k]["shaft_shoulder_diameter"] = [
        round(rows[k]["outer_ring_shoulder_diameter"] + 0.2 * section(rows[k]), 2),
        -0.1,
        0.0,
    ]


@fault("housing shoulder too low", "shoulder.housing-height", "the ring stands on its chamfer")
def _(rows, rng, k):
    k = 0
    rows[k]["housing_shoulder_diameter"] = [
        round(rows[k]["outside_diameter"] - 1.6 * rows[k]["ring_chamfer"], 2),
        0.0,
        0.05,
    ]


@fault(
    "housing shoulder reaches the inner ring", "shoulder.other-ring shoulder.housing-height", "the turning ring rubs"
)
def _(rows, rng, k):
    rows[k]["housing_shoulder_diameter"] = [
        round(rows[k]["inner_ring_shoulder_diameter"] - 0.2 * section(rows[k]), 2),
        0.0,
        0.1,
    ]


@fault("abutments not stated at one station", "shoulder.stated", "nothing says what the rings stand on", fast)
def _(rows, rng, k):
    for name in (
        "shaft_shoulder_diameter",
        "housing_shoulder_diameter",
        "shaft_fillet_radius",
        "housing_fillet_radius",
    ):
        rows[0].pop(name)
    for part in ("form", "width", "depth", "radius"):
        rows[0].pop(f"shaft_undercut_{part}", None)


@fault(
    "ring stands on the corner of its undercut",
    "shoulder.undercut",
    "an undercut of form E with a corner three ring chamfers large",
)
def _(rows, rng, k):
    corner = round(3 * rows[k]["ring_chamfer"] + 0.3, 2)
    rows[k] |= {"shaft_fillet_radius": 0.0, "shaft_undercut_form": "E", "shaft_undercut_width": 2.0,
                "shaft_undercut_depth": 0.2, "shaft_undercut_radius": corner}  # fmt: skip


@fault(
    "ring chamfer of a larger bearing, fillets made for it",
    "shoulder.fillet table.boundary-dimensions table.plausible shoulder.shaft-height",
    "the chamfer contradicts the size",
)
def _(rows, rng, k):
    chamfer = round(3.0 * rows[k]["ring_chamfer"], 2)
    rows[k] |= {"ring_chamfer": chamfer, "shaft_fillet_radius": round(0.9 * chamfer, 2)}
    for part in ("form", "width", "depth", "radius"):
        rows[k].pop(f"shaft_undercut_{part}", None)


@fault(
    "abutments crushed by the axial load",
    "shoulder.pressure life.static life.rating",
    "ring face of some square millimetres in plastic",
)
def _(rows, rng, k):
    everywhere(rows, housing_material="plastic")
    rows[k]["axial_load"] = figures(1.5 * rows[k]["static_rating"])


# ------------------------------------------------------------------------------------------------ speed


@fault("far too fast", "speed.factor speed.maker-limit speed.cage", "four times what the maker prints")
def _(rows, rng, k):
    limit = max(row.get("limiting_speed", 0) for row in rows)
    everywhere(rows, speed_max=figures(max(4.0 * limit, 3.0 * rows[0]["speed_max"])), speed_operating=None)


@fault("beyond the maker's limiting speed", "speed.maker-limit", "1.8 times")
def _(rows, rng, k):
    rows[k]["limiting_speed"] = figures(rows[k]["speed_max"] / 1.8)
    everywhere(rows, reference_speed=None)


@fault(
    "stamped cage in a fast spindle",
    "speed.cage",
    "1.2 million mm r/min; printed speeds with a sheet steel cage end near 0.8",
    lambda d: d.kind == "spindle, spring",
)
def _(rows, rng, k):
    everywhere(rows, speed_max=figures(1.2e6 / (speed_factor(rows[0]) / rows[0]["speed_max"])), speed_operating=None)
    rows[k]["cage"] = "pressed steel"
    rows[k].pop("limiting_speed", None)


@fault("polymer cage in a hot bearing", "speed.cage-temperature", "polyamide ends at 120 degC")
def _(rows, rng, k):
    everywhere(rows, temperature_max=190.0)
    rows[k] |= {"cage": "polyamide", "operating_temperature": 175.0}


@fault(
    "rubbing seal at high speed",
    "speed.seal speed.factor",
    "30 m/s; a nitrile lip ends at 14 m/s",
    both(greased, lambda d: d.rows[0]["speed_max"] * d.rows[0]["inner_ring_shoulder_diameter"] > 1.6e5),
)
def _(rows, rng, k):
    everywhere(
        rows, speed_max=figures(30 / (3.1416e-3 / 60 * rows[k]["inner_ring_shoulder_diameter"])), speed_operating=None
    )
    rows[k] |= {"closure": "contact seal", "seal_lip_diameter": round(rows[k]["inner_ring_shoulder_diameter"], 1)}
    rows[k].pop("limiting_speed", None)  # that of the open bearing says nothing of the sealed one


@fault(
    "ordinary grease far above its speed",
    "speed.factor speed.maker-limit",
    "1.2 against 0.5 million mm r/min",
    lambda d: d.kind == "spindle, spring",
)
def _(rows, rng, k):
    everywhere(rows, speed_max=figures(1.2e6 / (speed_factor(rows[0]) / rows[0]["speed_max"])), speed_operating=None)
    rows[k] |= {"lubrication": "grease"}
    rows[k].pop("limiting_speed", None)


@fault("solid film in a fast bearing", "speed.factor", "dry films end near 100 000 mm r/min", fast)
def _(rows, rng, k):
    rows[k] |= {"lubrication": "solid film"}


@fault(
    "bearing class too coarse for the speed",
    "speed.precision speed.factor alignment.seat-runout rotor.balance-grade",
    "Normal at 1.4 million mm r/min",
    lambda d: d.kind == "spindle, spring",
)
def _(rows, rng, k):
    everywhere(rows, speed_max=figures(1.4e6 / (speed_factor(rows[0]) / rows[0]["speed_max"])), speed_operating=None)
    rows[k]["tolerance_class"] = "Normal"


# ------------------------------------------------------------------------------------------------ preload


@fault("a fast light rotor without preload", "preload.present", "balls skid", both(fast, sprung))
def _(rows, rng, k):
    gone = [name for name in rows[0] if name.startswith(("spring_", "preload_force", "spacer_"))]
    everywhere(rows, preload_method="none", **dict.fromkeys(gone))
    rows[1]["axial_role"] = "floating"
    everywhere(rows, speed_max=figures(0.85 * rows[0]["limiting_speed"]), speed_operating=None)
    for row in rows:
        row |= {"axial_load": 0.0, "radial_load": figures(0.001 * row["dynamic_rating"])}


@fault(
    "spring too weak",
    "preload.force preload.minimum preload.window preload.unload",
    "a two-hundredth of the rate, and no other figure of the force",
    sprung,
)
def _(rows, rng, k):
    c = rows[0]["spring_rate"][0]
    everywhere(rows, spring_rate=[figures(0.005 * c), -figures(2e-4 * c), figures(2e-4 * c)], preload_force=None)


@fault(
    "spring too strong",
    "preload.force preload.maximum preload.window life.rating life.static",
    "the force of a press",
    sprung,
)
def _(rows, rng, k):
    stroke = rows[0]["spring_free_length"][0] - rows[0]["spring_installed_length"][0]
    c = 1.2 * rows[0]["static_rating"] / stroke
    everywhere(rows, spring_rate=[figures(c), -figures(0.05 * c), figures(0.05 * c)], preload_force=None)


@fault("spring pressed solid", "preload.spring-travel", "the installed length is below the solid one", sprung)
def _(rows, rng, k):
    everywhere(rows, spring_solid_length=[round(rows[0]["spring_installed_length"][0] + 0.15, 3), -0.05, 0.05])


@fault(
    "spring does not reach", "preload.spring-travel preload.force preload.axial-play", "shorter than its place", sprung
)
def _(rows, rng, k):
    length = rows[0]["spring_installed_length"][0]
    everywhere(rows, spring_free_length=[round(length - 0.3, 3), -0.05, 0.05])


@fault(
    "spring pressed by less than the play",
    "preload.axial-play preload.spring-travel preload.force preload.window",
    "a stiff spring and a stroke of five hundredths",
    sprung,
)
def _(rows, rng, k):
    length, force = rows[0]["spring_installed_length"][0], rows[0]["preload_force"][0]
    everywhere(rows, spring_free_length=[round(length + 0.05, 3), -0.02, 0.02],
               spring_installed_length=[length, -0.03, 0.03], spacer_stack=None,
               spring_rate=[figures(20 * force), -figures(force), figures(force)])  # fmt: skip


@fault("stated preload is not that of the spring", "preload.force", "three times what the spring gives", sprung)
def _(rows, rng, k):
    force = 3.0 * rows[0]["preload_force"][0]
    everywhere(rows, preload_force=[figures(force), -figures(0.1 * force), figures(0.1 * force)])


@fault(
    "external load unloads the sprung bearing",
    "preload.unload",
    "four times the preload, either way",
    both(sprung, ball),
)
def _(rows, rng, k):
    for row in rows:
        row["axial_load"] = figures(4.0 * row["preload_force"][0])


@fault(
    "rigid pair at the speed of a sprung one",
    "preload.rigid-speed speed.factor speed.maker-limit preload.thermal",
    "a fixed position runs away",
    lambda d: d.kind == "spindle, spring" and speed_factor(d.rows[0]) > 5e5,
)
def _(rows, rng, k):
    gone = [name for name in rows[0] if name.startswith(("spring_", "spacer_"))]
    everywhere(rows, preload_method="rigid", rigid_preload_class="heavy", **dict.fromkeys(gone))
    everywhere(rows, speed_max=figures(1.6e6 / (speed_factor(rows[0]) / rows[0]["speed_max"])), speed_operating=None)
    for row in rows:
        row["axial_role"] = "cross-located"
        row.pop("free_ring", None)


@fault(
    "rigid preload runs away with temperature",
    "preload.thermal preload.maximum",
    "shaft 45 K above the housing on a long span",
    rigid,
)
def _(rows, rng, k):
    everywhere(rows, shaft_temperature=rows[0]["housing_temperature"] + 45.0, bearing_span=[300.0, -0.05, 0.05])


@fault("disc spring nearly flat", "preload.disc-range preload.spring-travel", "95 % of the cone height", sprung)
def _(rows, rng, k):
    free, length = rows[0]["spring_free_length"][0], rows[0]["spring_installed_length"][0]
    everywhere(rows, spring_kind="disc", spring_solid_length=[round(length - 0.05 * (free - length), 3), -0.01, 0.01])


# ------------------------------------------------------------------------------------------------ life


@fault("rating life a hundredth of what is required", "life.rating", "loads for years, a bearing for weeks")
def _(rows, rng, k):
    rows[k]["radial_load"] = figures(0.6 * rows[k]["dynamic_rating"])
    everywhere(rows, required_life=max(rows[0]["required_life"], 5000.0))


@fault("static overload", "life.static", "more than the static rating")
def _(rows, rng, k):
    rows[k]["radial_load"] = figures(1.5 * rows[k]["static_rating"])


@fault("oil far too thin", "life.film", "thinner than spindle oil at a hot bearing")
def _(rows, rng, k):
    rows[k] |= {"base_oil_viscosity_40": 2.2, "base_oil_viscosity_100": 0.9, "operating_temperature": 95.0}
    everywhere(rows, speed_operating=min(rows[0]["speed_max"], 3000.0))


@fault("viscosities exchanged", "table.plausible life.film", "no oil thickens with heat")
def _(rows, rng, k):
    warm, hot = rows[k]["base_oil_viscosity_40"], rows[k]["base_oil_viscosity_100"]
    rows[k] |= {"base_oil_viscosity_40": hot, "base_oil_viscosity_100": warm}


@fault(
    "grease for a tenth of the required life",
    "life.grease",
    "150 degC in ordinary grease",
    lambda d: d.rows[0]["lubrication"] == "grease",
)
def _(rows, rng, k):
    everywhere(rows, required_life=60_000.0, temperature_max=130.0)
    for row in rows:
        row["operating_temperature"] = 115.0


# ------------------------------------------------------------------------------------------------ rotor and bearing


@fault("runs at its bending critical speed", "rotor.critical-speed", "three percent away")
def _(rows, rng, k):
    everywhere(rows, first_critical_speed=round(rows[0]["speed_max"] * rng.choice((0.98, 1.03))))


@fault(
    "balanced as a farm machine",
    "rotor.balance-grade rotor.unbalance",
    "G 40 at the speed of a small fast machine",
    lambda d: d.rows[0]["speed_max"] > 3000 and inner_turns(d),
)
def _(rows, rng, k):
    everywhere(rows, balance_grade=100.0, residual_unbalance=None)


@fault(
    "unbalance outweighs the load on a loose outer ring",
    "fit.load-rotation fit.outer-hold rotor.unbalance rotor.balance-grade",
    "the load turns with the rotor",
    inner_turns,
)
def _(rows, rng, k):
    omega = rows[0]["speed_max"] * 3.1416 / 30
    unbalance = 10.0 * rows[0]["radial_load"] / omega**2 * 1e6  # g.mm
    everywhere(rows, load_direction="rotating", residual_unbalance=figures(unbalance))


@fault("balls that do not fit in the bearing", "table.plausible", "a ball larger than the section", ball)
def _(rows, rng, k):
    rows[k]["ball_diameter"] = figures(1.3 * section(rows[k]), 4)
