"""What a table means: machines, positions and values that fit one another, before anything is written.

Sizes of bearings: ISO 15 and ISO 582 (from memory of makers' catalogues), inch series R likewise; load ratings about as
in catalogues. Deviations: ISO 286-1, from the first set's table and, for more classes, from memory of ISO 286-2.
"""

from dataclasses import dataclass, field
from random import Random

from practice.grammar import HOUSING_STEPS, SHAFT_STEPS, Key, Size, Value, deviations

Row = tuple[str, float, float, float, float, float, float, float]
#: Base designation, d, D, B, r_s min in mm, C, C0 in kN, contact angle, balls.
METRIC: tuple[Row, ...] = (
    ("625", 5, 16, 5, 0.3, 1.73, 0.67, 0), ("626", 6, 19, 6, 0.3, 2.34, 0.89, 0), ("607", 7, 19, 6, 0.3, 2.34, 0.89, 0),
    ("608", 8, 22, 7, 0.3, 3.3, 1.37, 0), ("609", 9, 24, 7, 0.3, 3.35, 1.4, 0), ("6000", 10, 26, 8, 0.3, 4.55, 1.96, 0),
    ("6001", 12, 28, 8, 0.3, 5.1, 2.39, 0), ("6002", 15, 32, 9, 0.3, 5.6, 2.83, 0),
    ("6003", 17, 35, 10, 0.3, 6.0, 3.25, 0), ("6004", 20, 42, 12, 0.6, 9.4, 5.05, 0),
    ("6005", 25, 47, 12, 0.6, 10.1, 5.85, 0), ("6006", 30, 55, 13, 1.0, 13.2, 8.3, 0),
    ("6200", 10, 30, 9, 0.6, 5.1, 2.39, 0), ("6201", 12, 32, 10, 0.6, 6.8, 3.05, 0),
    ("6202", 15, 35, 11, 0.6, 7.65, 3.75, 0), ("6203", 17, 40, 12, 0.6, 9.55, 4.8, 0),
    ("6204", 20, 47, 14, 1.0, 12.8, 6.6, 0), ("6205", 25, 52, 15, 1.0, 14.0, 7.85, 0),
    ("6206", 30, 62, 16, 1.0, 19.5, 11.3, 0), ("6303", 17, 47, 14, 1.0, 13.6, 6.65, 0),
    ("6304", 20, 52, 15, 1.1, 15.9, 7.9, 0), ("61904", 20, 37, 9, 0.3, 6.4, 3.7, 0),
    ("7001C", 12, 28, 8, 0.3, 5.4, 2.64, 15), ("7003C", 17, 35, 10, 0.3, 7.6, 4.15, 15),
    ("7004C", 20, 42, 12, 0.6, 11.1, 6.55, 15), ("7005C", 25, 47, 12, 0.6, 12.3, 8.0, 15),
    ("7204B", 20, 47, 14, 1.0, 13.3, 7.65, 40),
)  # fmt: skip
INCH: tuple[Row, ...] = (
    ("R4ZZ", 0.25, 0.625, 0.196, 0.012, 1.48, 0.6, 0), ("R6ZZ", 0.375, 0.875, 0.2812, 0.016, 3.33, 1.42, 0),
    ("R8ZZ", 0.5, 1.125, 0.3125, 0.016, 5.1, 2.39, 0), ("R10ZZ", 0.625, 1.375, 0.3438, 0.031, 6.0, 3.27, 0),
)  # fmt: skip
INCH_MM = 25.4
#: More classes in µm at the steps of the first set's tables.
MORE_SHAFT = {
    "js5": ((-2, 2), (-2.5, 2.5), (-3, 3), (-4, 4), (-4.5, 4.5)),
    "n6": ((4, 10), (8, 16), (10, 19), (12, 23), (15, 28)),
}
MORE_HOUSING = {
    "J7": ((-8, 10), (-9, 12), (-11, 14), (-12, 18)),
    "K7": ((-12, 6), (-15, 6), (-18, 7), (-21, 9)),
    "N7": ((-23, -5), (-28, -7), (-33, -8), (-39, -9)),
}
SHAFT_CLASSES = ("k5", "k6", "j6", "m5", "m6", "h5", "h6", "js5", "js6", "g6", "n6", "j5")
HOUSING_CLASSES = ("H7", "H6", "J7", "K7", "JS6", "K6", "N7", "M7", "G7", "J6")
SIDES = ("shaft", "housing")
SEATS = ("shaft_seat_diameter", "housing_seat_diameter")
FEATURES = (
    "seat_cylindricity",
    "seat_runout",
    "seat_roughness",
    "shoulder_diameter",
    "shoulder_runout",
    "fillet_radius",
)
#: Quantity of each parameter that has a unit.
QUANTITY = {
    "length": (
        "bore_diameter outside_diameter ring_width ring_chamfer bearing_span spring_free_length "
        "spring_installed_length shaft_seat_diameter housing_seat_diameter "
        "shaft_shoulder_diameter housing_shoulder_diameter "
        "shaft_fillet_radius housing_fillet_radius size_text"
    ),
    "form": (
        "shaft_seat_cylindricity housing_seat_cylindricity shaft_seat_runout housing_seat_runout "
        "shaft_shoulder_runout housing_shoulder_runout"
    ),
    "ra": "shaft_seat_roughness housing_seat_roughness",
    "speed": "speed_max speed_operating limiting_speed reference_speed",
    "temperature": (
        "operating_temperature temperature_min temperature_max shaft_temperature housing_temperature "
        "ambient_temperature"
    ),
    "load": "radial_load axial_load preload_force fatigue_load_limit",
    "rating": "dynamic_rating static_rating",
    "life": "required_life",
    "mass": "rotor_mass",
    "viscosity": "base_oil_viscosity_40 base_oil_viscosity_100",
    "rate": "spring_rate",
    "angle": "contact_angle",
    "percent": "grease_fill",
}
QUANTITIES = {name: quantity for quantity, names in QUANTITY.items() for name in names.split()}
STATION_EXTRAS = (
    "radial_load", "axial_load", "lubrication", "cage", "dynamic_rating", "static_rating", "limiting_speed",
    "operating_temperature", "axial_role", "clearance_class", "tolerance_class", "closure", "bearing_type",
    "ring_chamfer", "contact_angle", "ball_material", "base_oil_viscosity_40", "base_oil_viscosity_100", "grease_fill",
    "fatigue_load_limit", "reference_speed", "ball_count",
)  # fmt: skip
STATION_WEIGHTS = (9, 8, 7, 6, 8, 7, 5, 4, 8, 5, 5, 4, 4, 4, 2, 2, 2, 1, 2, 2, 2, 1)
MACHINE_EXTRAS = (
    "speed_max", "speed_operating", "required_life", "temperature_max", "temperature_min", "shaft_temperature",
    "housing_temperature", "ambient_temperature", "shaft_material", "housing_material", "bearing_span", "rotor_mass",
    "balance_grade", "preload_method", "preload_force", "spring_rate", "spring_free_length", "spring_installed_length",
    "shaft_orientation", "rotating_ring",
)  # fmt: skip
MACHINE_WEIGHTS = (12, 5, 6, 5, 5, 4, 4, 3, 7, 7, 6, 4, 4, 5, 4, 2, 2, 2, 3, 2)
BEARING_NAMES = (
    "bearing_designation size_text bore_diameter outside_diameter ring_width ring_chamfer bearing_type contact_angle "
    "closure clearance_class tolerance_class cage ball_material ball_count dynamic_rating static_rating "
    "fatigue_load_limit limiting_speed reference_speed"
)
SERVICE_NAMES = (
    "lubrication base_oil_viscosity_40 base_oil_viscosity_100 grease_fill radial_load axial_load operating_temperature "
    "axial_role"
)
GROUP = {"bearing": BEARING_NAMES.split(), "service": SERVICE_NAMES.split()}


def group_of(parameter: str) -> str:
    """Key of the group a parameter stands in: shaft, housing, bearing, service or machine."""
    for side in SIDES:
        if (parameter.startswith(f"{side}_s") and "seat" in parameter) or parameter in (
            f"{side}_shoulder_diameter", f"{side}_shoulder_runout", f"{side}_fillet_radius",
        ):  # fmt: skip
            return side
    return next((key for key, names in GROUP.items() if parameter in names), "machine")


def limits_of(tolerance_class: str, nominal: float) -> tuple[float, float]:
    """Lower and upper deviation in mm of a class at a size (ISO 286-1)."""
    more, steps = (MORE_SHAFT, SHAFT_STEPS) if tolerance_class[0].islower() else (MORE_HOUSING, HOUSING_STEPS)
    if tolerance_class in more:
        lower, upper = more[tolerance_class][next(k for k, step in enumerate(steps) if nominal <= step)]
        return lower / 1000, upper / 1000
    return deviations(tolerance_class, nominal)


@dataclass
class Meaning:
    """Values of each machine and position; ``columns`` the parameters of the positions, ``general`` of the machines."""

    inch: bool
    machines: tuple[str, ...]
    stations: tuple[tuple[str, ...], ...]
    columns: list[str]
    general: list[str]
    values: dict[Key, Value] = field(default_factory=dict)
    implied: dict[Key, Value] = field(default_factory=dict)


def _closure(rng: Random, base: str) -> tuple[str, str]:
    if base.startswith("7"):
        return "", "open"
    return rng.choice((("", "open"), ("-2Z", "shield"), ("ZZ", "shield"), ("-2RS", "contact seal"), ("", "open")))


def _bearing(
    rng: Random, m: Meaning, at: tuple[int, int], shown: set[str], beside: tuple[float, float, float] | None
) -> tuple[float, float, float]:
    """Choose the bearing of a position, one like that ``beside`` it; its bore, outside diameter and chamfer in mm."""
    offer = INCH if m.inch else METRIC
    if beside:
        angled = bool(m.values[at[0], 0, "contact_angle"])
        unit = INCH_MM if m.inch else 1.0
        like = [row for row in offer if bool(row[7]) == angled and 0.7 <= row[1] * unit / beside[0] <= 1.01]
        offer = tuple(like)
    base, d, big, b, r, c, c0, angle = rng.choice(offer)
    scale = INCH_MM if m.inch else 1.0
    suffix, closure = ("", "shield") if m.inch else _closure(rng, base)
    clearance = rng.choice(("CN", "CN", "C3")) if angle == 0 else "CN"
    text = base + suffix + (rng.choice(("/C3", " C3")) if clearance == "C3" else "")
    kind = "angular contact ball" if angle else "deep groove ball"
    facts: dict[str, Value] = {
        "bearing_designation": text,
        "bore_diameter": d * scale,
        "outside_diameter": big * scale,
        "ring_width": b * scale,
        "ring_chamfer": r * scale,
        "bearing_type": kind,
        "contact_angle": float(angle),
        "closure": closure,
        "clearance_class": clearance,
        "tolerance_class": "Normal",
    }
    if "bearing_designation" in shown:
        m.implied.update({(*at, name): value for name, value in facts.items()})
        if m.inch:  # catalogues print these two in rounded millimetres
            m.implied[*at, "ring_width"] = round(b * scale, 3)
            m.implied[*at, "ring_chamfer"] = round(r * scale, 1)
    m.values.update({(*at, name): value for name, value in facts.items()})
    n_lim = round(2e6 / (d * scale + big * scale), -3)
    more: dict[str, Value] = {
        "tolerance_class": rng.choice(("P6", "P5", "P4", "Normal")),
        "dynamic_rating": round(c * 1000, 3),
        "static_rating": round(c0 * 1000, 3),
        "fatigue_load_limit": round(c0 * 42, 1) if c0 < 2 else round(c0 * 45),
        "limiting_speed": n_lim,
        "reference_speed": round(n_lim * 1.15, -3),
        "ball_count": float(rng.choice((7, 8, 9))) if not angle else float(rng.choice((11, 12, 13))),
        "ball_material": rng.choice(("steel", "steel", "silicon nitride")),
        "cage": rng.choice(
            ("pressed steel", "polyamide", "machined brass") if not angle else ("phenolic", "polyamide")
        ),
        "radial_load": float(round(c * rng.uniform(20, 60), -1)) or 10.0,
        "axial_load": float(round(c * rng.uniform(4, 18), -1)) or 10.0,
    }
    m.values.update({(*at, name): value for name, value in more.items()})
    return d * scale, big * scale, r * scale


def _round(value: float, inch: bool) -> float:
    """A drawing size: a tenth of a millimetre, or a hundredth of an inch."""
    return round(round(value / INCH_MM, 2) * INCH_MM, 6) if inch else round(value * 5) / 5


def _seats(
    rng: Random, m: Meaning, at: tuple[int, int], ring: tuple[float, float, float], classes: tuple[str, str]
) -> None:
    d, big, r = ring
    for side, nominal, cls in zip(SIDES, (d, big), classes, strict=True):
        low, high = limits_of(cls, nominal)
        if m.inch:
            low, high = (round(round(x / INCH_MM, 4) * INCH_MM, 8) for x in (low, high))
            m.values[(*at, f"{side}_seat_diameter")] = Size(nominal, low, high)
        else:
            m.values[(*at, f"{side}_seat_diameter")] = Size(nominal, low, high, cls)
        height = {True: 2.6 * r + 0.25, False: 2.4 * r + 0.5}[r < 0.35]
        sign = 1 if side == "shaft" else -1
        fillet = {True: r, False: r * 0.8}[rng.random() < 0.5]
        facts: dict[str, Value] = {
            "shoulder_diameter": _round(nominal + sign * 2 * height, m.inch),
            "fillet_radius": round(round(fillet / INCH_MM, 3) * INCH_MM, 6) if m.inch else round(fillet, 1),
            "seat_roughness": rng.choice((0.2, 0.4, 0.8) if side == "shaft" else (0.8, 1.6)),
        }
        if m.inch:
            facts["seat_roughness"] = rng.choice((8, 16, 32)) * 0.0254
        for name, steps in (
            ("seat_cylindricity", (2, 3, 4, 5)), ("seat_runout", (3, 4, 5, 6, 8)), ("shoulder_runout", (4, 5, 6, 8)),
        ):  # fmt: skip
            step = rng.choice(steps) + (1 if side == "housing" else 0)
            facts[name] = round(rng.choice((1, 2, 3)) * 1e-4 * INCH_MM, 8) if m.inch else step / 1000
        m.values.update({(*at, f"{side}_{name}"): value for name, value in facts.items()})


def _machine(rng: Random, m: Meaning, k: int, bore: float) -> None:
    speed = round(min(60000.0, rng.uniform(120000, 420000) / bore), -2)
    hot = rng.choice((55, 60, 65, 70, 80))
    free = rng.choice((6.5, 8.0, 9.2, 11.5, 14.0))
    if m.inch:
        free = round(round(free / INCH_MM, 2) * INCH_MM, 6)
    span = _round(bore * rng.uniform(3.5, 7), m.inch)
    facts: dict[str, Value] = {
        "speed_max": speed,
        "speed_operating": round(speed * rng.choice((0.7, 0.8, 0.9)), -2),
        "required_life": float(rng.choice((5000, 8000, 10000, 20000, 30000))),
        "temperature_max": float(rng.choice((90, 100, 110, 120))),
        "temperature_min": float(rng.choice((-30, -20, -10, -25, 5))),
        "shaft_temperature": float(hot),
        "housing_temperature": float(hot - rng.choice((5, 10, 15))),
        "ambient_temperature": float(rng.choice((20, 25, 30, 40))),
        "shaft_material": rng.choice(("steel", "steel", "stainless steel")),
        "housing_material": rng.choice(("aluminium", "cast iron", "steel", "aluminium")),
        "bearing_span": span,
        "rotor_mass": round(bore**2 * rng.uniform(0.002, 0.006), 2 if bore > 15 else 3),
        "balance_grade": rng.choice((1.0, 2.5, 6.3)),
        "preload_method": rng.choice(("spring", "spring", "rigid", "none")),
        "preload_force": float(round(bore * rng.uniform(1.5, 6), -1 if bore > 12 else 0)),
        "spring_rate": float(rng.choice((4, 6.5, 12, 18, 25))),
        "spring_free_length": free,
        "spring_installed_length": round(round(free * 0.62 / INCH_MM, 2) * INCH_MM, 6)
        if m.inch
        else round(free * 0.62, 1),
        "shaft_orientation": rng.choice(("horizontal", "vertical")),
        "rotating_ring": "inner",
    }
    if facts["preload_method"] == "none" and "preload_force" in m.general:
        facts["preload_method"] = "spring"
    sprung = any(m.values.get((k, s, "axial_role")) == "spring-loaded" for s in range(len(m.stations[k])))
    if sprung or any(name.startswith("spring_") for name in m.general):
        facts["preload_method"] = "spring"
    m.values.update({(k, -1, name): value for name, value in facts.items() if name in m.general})


def mean(
    rng: Random, names: tuple[str, ...], places: tuple[str, ...], inch: bool, bearing: str, tolerance: str
) -> Meaning:
    """A meaning: machines with their positions and values.

    ``bearing`` is how the bearing is stated: designation, sizes, both or size text; ``tolerance`` the form of the
    seats' tolerances (plus-minus asks for symmetrical ones).
    """
    count = rng.choices((1, 2, 3), (60, 26, 14))[0]
    if count > 1 and bearing in ("sizes", "both") and rng.random() < 0.6:
        bearing = "designation"
    machines = tuple(rng.sample(names, count))
    single = count > 1 and rng.random() < 0.12
    stations = tuple(places[:1] if single else places for _ in machines)
    columns = {"designation": ["bearing_designation"], "size text": ["size_text"]}.get(bearing, [])
    if bearing in ("sizes", "both"):
        columns = [
            *(["bearing_designation"] if bearing == "both" else []),
            "bore_diameter",
            "outside_diameter",
            "ring_width",
        ]
    rows = sum(len(s) for s in stations)
    budget = max(
        3 if count < 3 else 1,
        round(rng.uniform(25, 37) / rows) - len(columns) - 2 - 2 // rows - (2 if count == 1 else 1),
    )
    chosen = rng.sample(FEATURES, min(len(FEATURES), max(2 if count == 1 else 1, round(budget * 0.6 / 2 + 0.4))))
    wanted = [f"{side}_{name}" for side in SIDES for name in FEATURES if name in chosen]
    if len(wanted) > budget + 1:
        wanted = rng.sample(wanted, budget)
    wanted += list(SEATS)
    extras: set[str] = set()
    while len(extras) < max(1 if count < 3 else 0, budget - len(wanted) + 2):
        extras.add(rng.choices(STATION_EXTRAS, STATION_WEIGHTS)[0])
    if "static_rating" in extras:
        extras.add("dynamic_rating")
    order = [*GROUP["bearing"], *_side_order("shaft"), *_side_order("housing"), *GROUP["service"]]
    columns = sorted({*columns, *wanted, *extras}, key=order.index)
    general: set[str] = {"speed_max"} if rng.random() < 0.85 else set()
    while len(general) < {1: rng.randint(4, 6), 2: rng.randint(1, 3), 3: 1}[count]:
        general.add(rng.choices(MACHINE_EXTRAS, MACHINE_WEIGHTS)[0])
    m = Meaning(inch, machines, stations, columns, [name for name in MACHINE_EXTRAS if name in general])
    same = rng.random() < 0.5
    classes = (rng.choice(SHAFT_CLASSES), rng.choice(HOUSING_CLASSES))
    if tolerance == "plus-minus":
        classes = (rng.choice(("js5", "js6")), "JS6")
    for k, positions in enumerate(stations):
        bore = 0.0
        ring: tuple[float, float, float] | None = None
        roles = rng.choice((("locating", "floating"), ("locating", "spring-loaded"), ("floating", "locating")))
        hot = rng.choice((50, 60, 65, 70, 75))
        oil = rng.choice(((100.0, 11.0), (68.0, 8.6), (25.0, 5.0), (150.0, 15.0)))
        way = rng.choice(("grease", "grease", "oil bath", "oil mist", "oil-air"))
        state = rng.getstate()
        for s in range(len(positions)):
            at = (k, s)
            if same and ring:
                rng.setstate(state)
            ring = _bearing(rng, m, at, set(columns), None if same else ring)
            _seats(rng, m, at, ring, classes)
            m.values[(*at, "axial_role")] = roles[s % 2]
            m.values[(*at, "operating_temperature")] = float(hot + 5 * s)
            m.values[(*at, "lubrication")] = "grease" if "grease_fill" in columns else way
            m.values[(*at, "base_oil_viscosity_40")], m.values[(*at, "base_oil_viscosity_100")] = oil
            m.values[(*at, "grease_fill")] = float(rng.choice((25, 30, 35)))
            bore = max(bore, ring[0])
        _machine(rng, m, k, bore)
        if "shaft_temperature" in general or "housing_temperature" in general:
            m.values = {
                key: value for key, value in m.values.items() if key[0] != k or key[2] != "operating_temperature"
            }
    if {"shaft_temperature", "housing_temperature"} & general and "operating_temperature" in columns:
        m.columns.remove("operating_temperature")
    return m


def _side_order(side: str) -> list[str]:
    return [f"{side}_seat_diameter", *(f"{side}_{name}" for name in FEATURES)]
