"""What the tables are about: invented machines whose bearings, seats and abutments are true to the trade.

Deviations are those of ISO 286-2, from memory; sizes of bearings those of ISO 15, from memory; load ratings follow a
rule of thumb on the section of the bearing (about those that makers print); shoulders lie between the lands of the
rings.
"""

from random import Random

from practice.bearings import basic
from practice.grammar import Value

#: Upper ends of the steps of diameter in mm, and for each class lower and upper deviation in micrometres per step.
STEPS = (6, 10, 18, 30, 50, 80, 120, 180)
IT = {4: (4, 4, 5, 6, 7, 8, 10, 12), 5: (5, 6, 8, 9, 11, 13, 15, 18), 6: (8, 9, 11, 13, 16, 19, 22, 25),
      7: (12, 15, 18, 21, 25, 30, 35, 40), 8: (18, 22, 27, 33, 39, 46, 54, 63)}  # fmt: skip
#: Fundamental deviations: lower of k, m, n; upper of g.
LOWER = {"k": (1, 1, 1, 2, 2, 2, 3, 3), "m": (4, 6, 7, 8, 9, 11, 13, 15), "n": (8, 10, 12, 15, 17, 20, 23, 27)}
G = (4, 5, 6, 7, 9, 10, 12, 14)
#: Upper deviation of classes that follow no rule.
UPPER = {"j5": (3, 4, 5, 5, 6, 6, 6, 7), "j6": (6, 7, 8, 9, 11, 12, 13, 14), "J6": (5, 5, 6, 8, 10, 13, 16, 18),
         "J7": (6, 8, 10, 12, 14, 18, 22, 26), "K6": (2, 2, 2, 2, 3, 4, 4, 4), "K7": (3, 5, 6, 6, 7, 9, 10, 12),
         "M7": (0, 0, 0, 0, 0, 0, 0, 0), "N7": (-4, -4, -5, -7, -8, -9, -10, -12)}  # fmt: skip


def deviations(tolerance_class: str, size: float) -> tuple[float, float]:
    """Lower and upper deviation in micrometres."""
    step = next(i for i, end in enumerate(STEPS) if size <= end)
    letter, grade = tolerance_class.rstrip("0123456789"), int(tolerance_class.lstrip("ghjkmnpsGHJKMNPS"))
    width = IT[grade][step]
    if tolerance_class in UPPER:
        return UPPER[tolerance_class][step] - width, UPPER[tolerance_class][step]
    if letter.lower() == "js":
        return -width / 2, width / 2
    if letter in LOWER:
        return LOWER[letter][step], LOWER[letter][step] + width
    return {"h": (-width, 0), "H": (0, width), "g": (-G[step] - width, -G[step]), "G": (G[step], G[step] + width)}[
        letter
    ]


BALLS = [
    "608",
    "609",
    "6000",
    "6001",
    "6002",
    "6003",
    "6004",
    "6005",
    "6006",
    "6008",
    "6200",
    "6201",
    "6202",
    "6203",
    "6204",
    "6205",
    "6206",
    "6207",
    "6208",
    "6300",
    "6302",
    "6303",
    "6304",
    "6305",
    "6306",
    "6308",
    "6900",
    "6901",
    "6902",
    "6903",
    "6904",
    "6905",
]
BALL_ENDINGS = (
    "-2Z", "-2Z/C3", " ZZ", " ZZ C3", "ZZC3", "-2RS1", "-2RSR", " DDU", "LLB", "-2RZ", "-2RZ/C3", " VV", "/C3", " C3",
    "-2Z C3", ".2ZR.C3", "-2RS1/C3", " LLU", "", " P5", "-2Z/P6", "/P5", " ZZ P6",
)  # fmt: skip
ANGULAR = ["7002", "7003", "7004", "7005", "7006", "7008", "7204", "7205", "7206", "71904", "71905", "71906", "71908"]
ANGULAR_ENDINGS = (" CD/P4A", " ACD/P4A", " C/P4", "C TYN P4", " A5 TYN P4", "C P4", " C P5", " CD/P4A")
MACHINE = [
    "speed_operating",
    "required_life",
    "shaft_material",
    "housing_material",
    "shaft_temperature",
    "housing_temperature",
    "ambient_temperature",
    "temperature_max",
    "temperature_min",
    "bearing_span",
    "rotor_mass",
    "balance_grade",
    "coaxiality_of_bores",
    "coaxiality_of_shaft_seats",
    "shaft_orientation",
]
#: What a table states of a position, in groups that come and go together, with the share of tables that state them.
GROUPS = (
    ("bore_diameter outside_diameter ring_width", 0.35), ("ring_chamfer", 0.15), ("dynamic_rating static_rating", 0.25),
    ("limiting_speed", 0.15), ("radial_load axial_load", 0.55), ("axial_role", 0.5), ("lubrication", 0.6),
    ("base_oil_viscosity_40", 0.2), ("grease_fill", 0.15), ("seat_roughness", 0.6), ("seat_cylindricity", 0.55),
    ("seat_runout", 0.3), ("shoulder_diameter", 0.75), ("shoulder_runout", 0.35), ("fillet_radius", 0.55),
    ("undercut_form", 0.2),
)  # fmt: skip
OF_SEATS = ("seat_roughness", "seat_cylindricity", "seat_runout", "shoulder_diameter", "shoulder_runout",
            "fillet_radius", "undercut_form")  # fmt: skip

Values = dict[tuple[int, int, str], Value]


def _like(first: str) -> list[str]:
    """Ball bearings that could carry the other end of the same rotor: about the same bore."""
    bore = {b: known[2][0] for b in BALLS if (known := basic(b))}
    return [b for b in BALLS if 0.7 <= bore[b] / bore[first] <= 1.3 and b[:-1] == first[:-1]]


def _half(value: float) -> float:
    return round(value * 2) / 2


def _machine(rng: Random, m: int, names: list[str], number: int) -> Values:
    """The values of one machine with two positions; seats hold their tolerance class, sizes come from the bearing."""
    angular = rng.random() < 0.25
    values: Values = {}
    family = ANGULAR if angular else BALLS
    first = rng.choice(family)
    second = first if angular or rng.random() < 0.4 else rng.choice(_like(first))
    ending = rng.choice(ANGULAR_ENDINGS if angular else BALL_ENDINGS)
    spring = rng.random() < 0.6
    classes = {
        "shaft": rng.choice(
            ["h5", "js5", "k5", "j5", "k5"] if angular else ["k5", "j5", "k6", "j6", "h6", "m5", "js5", "g6"]
        ),
        "housing": rng.choice(["JS5", "H5", "H6"] if angular else ["H6", "H7", "J6", "J7", "JS6", "G7", "K6", "H7"]),
    }
    for s, bearing in enumerate((first, second)):
        known = basic(bearing)
        assert known is not None, bearing
        bore, outside, width, chamfer = known[2]
        section = outside - bore
        rating = float(round(3450 * (section / 14) ** 2.05, -1 if section < 20 else -2))
        force = float(max(1, round(rating * rng.choice([0.01, 0.02, 0.03]) / 5) * 5))
        here: dict[str, Value] = {
            "station": names[s], "bearing_designation": bearing + ending, "bore_diameter": float(bore),
            "outside_diameter": float(outside), "ring_width": float(width), "ring_chamfer": chamfer,
            "dynamic_rating": rating, "static_rating": float(round(rating * 0.52, -1)),
            "radial_load": force, "axial_load": float(max(1, round(force * rng.choice([0.2, 0.3, 0.5])))),
            "axial_role": ("locating", "spring-loaded" if spring else "floating")[s],
            "shaft_seat_class": classes["shaft"], "housing_seat_class": classes["housing"],
            "shaft_seat_roughness": rng.choice([0.2, 0.4, 0.8]), "housing_seat_roughness": rng.choice([0.4, 0.8, 1.6]),
            "shaft_seat_cylindricity": rng.choice([0.002, 0.003, 0.004]),
            "housing_seat_cylindricity": rng.choice([0.003, 0.004, 0.005]),
            "shaft_seat_runout": rng.choice([0.003, 0.005]), "housing_seat_runout": rng.choice([0.005, 0.008]),
            "shaft_shoulder_diameter": _half(bore + 0.22 * section),
            "housing_shoulder_diameter": _half(outside - 0.2 * section),
            "shaft_shoulder_runout": rng.choice([0.003, 0.004, 0.005]),
            "housing_shoulder_runout": rng.choice([0.005, 0.006, 0.008]),
            "shaft_fillet_radius": chamfer, "housing_fillet_radius": round(chamfer * rng.choice([1, 0.8]), 2),
            "shaft_undercut_form": "F", "housing_undercut_form": rng.choice("EF"),
        }  # fmt: skip
        values |= {(m, s, name): value for name, value in here.items()}
    mean = (basic(first)[2][0] + basic(first)[2][1]) / 2  # type: ignore[index]
    speed = float(round(rng.choice([250e3, 350e3, 450e3, 600e3]) / mean, -3))
    shaft = rng.randint(45, 75)
    limit = {(m, s, "limiting_speed"): float(round(speed * 1.25, -3)) for s in (0, 1)}
    oil = rng.choice(["oil mist", "oil-air", "oil bath"])
    lube = "grease" if rng.random() < 0.7 or any(c in ending for c in ("Z", "RS", "DD", "LL", "VV")) else oil
    both = {(m, s, name): v for s in (0, 1) for name, v in (
        ("lubrication", lube), ("base_oil_viscosity_40", rng.choice([22.0, 25.0, 70.0, 100.0])), ("grease_fill", 30.0)
    )}  # fmt: skip
    whole: dict[str, Value] = {
        "machine": f"{names[2]} {rng.choice('ABKLTW')}{rng.choice('RSVX')}-{rng.randint(12, 98)}",
        "drawing_number": f"{rng.choice(['RB', 'KT', 'SP', 'LG', 'MX'])}-{number:02}{rng.randint(10, 99)}{m or ''}",
        "drawing_revision": rng.choice("ABCD"), "speed_max": speed,
        "speed_operating": float(round(speed * rng.choice([0.8, 0.9]), -2)),
        "required_life": rng.choice([8000.0, 10000.0, 16000.0, 20000.0]),
        "shaft_material": rng.choice(["steel", "steel", "stainless steel"]),
        "housing_material": rng.choice(["aluminium", "cast iron", "steel", "aluminium"]),
        "shaft_temperature": float(shaft), "housing_temperature": float(shaft - rng.randint(4, 12)),
        "ambient_temperature": rng.choice([20.0, 25.0, 40.0]), "temperature_max": float(shaft + 20),
        "temperature_min": rng.choice([-20.0, -10.0, 5.0]),
        "bearing_span": float(round(mean * rng.uniform(2.5, 5))),
        "rotor_mass": round(mean**2 * rng.uniform(1, 2) / 800, 2),
        "balance_grade": rng.choice([1.0, 2.5, 6.3]), "coaxiality_of_bores": rng.choice([0.005, 0.008, 0.01]),
        "coaxiality_of_shaft_seats": rng.choice([0.003, 0.004, 0.005]),
        "shaft_orientation": rng.choice(["horizontal", "horizontal", "vertical"]),
    }  # fmt: skip
    if spring:
        rate, free = rng.choice([4.0, 8.5, 12.0, 20.0]), rng.choice([9.0, 12.0, 15.5])
        pressed = rng.choice([2.0, 2.5, 3.0])
        whole |= {"preload": rng.choice(["wave", "helical", "disc"]), "preload_force": rate * pressed,
                  "spring_rate": rate,
                  "spring_free_length": free, "spring_installed_length": free - pressed}  # fmt: skip
    elif angular:
        whole |= {"preload": "rigid", "preload_force": rng.choice([40.0, 60.0, 90.0, 120.0])}
    return values | both | limit | {(m, -1, name): value for name, value in whole.items()}


def machines(rng: Random, count: int, names: list[str], number: int, roles: bool = True) -> tuple[Values, list[str]]:
    """The values of ``count`` machines and the parameters that the table states, in an order of its own."""
    values: Values = {}
    for m in range(count):
        values |= _machine(rng, m, [*names[:2], names[2 + m]], number)
    drawn = {names_of: rng.random() < share for names_of, share in GROUPS}
    stated = [n for names_of, _ in GROUPS if drawn[names_of] for n in names_of.split()]
    if "undercut_form" in stated and "fillet_radius" in stated:
        stated.remove("undercut_form")
    if any(value != "grease" for (_, _, name), value in values.items() if name == "lubrication"):
        stated = [n for n in stated if n != "grease_fill"]
    features = ["seat", *[n for n in stated if n in OF_SEATS]]
    parts = rng.choice([["shaft", "housing"], ["shaft", "housing"], ["housing", "shaft"]])
    by_part = [f"{part}_{f}" for part in parts for f in features]
    by_feature = [f"{part}_{f}" for f in features for part in parts]
    seats = rng.choice([by_part, by_part, by_feature])
    bearing = [n for n in stated if n not in OF_SEATS and (roles or n != "axial_role")]
    tail = [n for n in bearing if n in ("lubrication", "radial_load", "axial_load") and rng.random() < 0.5]
    of_positions = ["bearing_designation", *[n for n in bearing if n not in tail], *seats, *tail]
    of_machine = ["speed_max", *rng.sample(MACHINE, rng.randint(3, 7))]
    if all((m, -1, "preload") in values for m in range(count)):
        how = rng.choice([["preload"], ["preload", "preload_force"], ["preload_force"], ["preload", "preload_force"]])
        sprung = all((m, -1, "spring_rate") in values for m in range(count))
        of_machine += how + (
            rng.choice([[], ["spring_rate", "spring_free_length", "spring_installed_length"]]) if sprung else []
        )
    return values, [*of_machine, "|", *of_positions]
