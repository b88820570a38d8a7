"""Stations for the benchmarks: complete rows of many sizes, with a seed."""

import numpy as np
import pytest

from linter.mechanics.limits import deviations
from linter.model.stations import Choice, Stations, Toleranced, apply_defaults
from linter.model.vocabulary import parameter, vocabulary

BORES = np.array([4, 5, 6, 8, 10, 12, 15, 17, 20, 25, 30], float)
OUTSIDES = np.array([13, 16, 19, 22, 26, 28, 32, 35, 42, 47, 55], float)
WIDTHS = np.array([5, 5, 6, 7, 8, 8, 9, 10, 12, 12, 13], float)
CHAMFERS = np.array([0.2, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.6, 0.6, 1.0])


def make_stations(count: int) -> Stations:
    """Machines of two stations each (one for an odd count), every parameter of the vocabulary stated."""
    rng = np.random.default_rng(20260101)
    machines = (count + 1) // 2
    machine_row = (np.arange(count) // 2).astype(np.intp)
    size = rng.integers(0, len(BORES), machines)[machine_row]
    bore, outside, width, chamfer = (v[size] for v in (BORES, OUTSIDES, WIDTHS, CHAMFERS))
    height = 0.5 * (outside - bore)

    def spread(low: float, high: float, machine: bool = False):
        return rng.uniform(low, high, machines)[machine_row] if machine else rng.uniform(low, high, count)

    numbers = {
        "bore_diameter": bore, "outside_diameter": outside, "ring_width": width, "ring_chamfer": chamfer,
        "speed_max": spread(2e5, 9e5, True) / (0.5 * (bore + outside)), "required_life": spread(1e3, 3e4, True),
        "required_reliability": np.full(count, 90.0), "shaft_temperature": spread(40, 90, True),
        "housing_temperature": spread(30, 80, True), "temperature_min": spread(-20, 15, True),
        "temperature_max": spread(70, 110, True), "rotor_mass": spread(0.05, 4, True),
        "balance_grade": rng.choice([0.4, 1, 2.5, 6.3], machines)[machine_row],
        "spring_load_tolerance": spread(5, 20, True), "coaxiality_of_bores": spread(0.002, 0.02, True),
        "coaxiality_of_shaft_seats": spread(0.002, 0.02, True), "first_critical_speed": spread(3e4, 2e5, True),
        "contact_angle": np.where(rng.random(count) < 0.5, 0.0, 15.0),
        "inner_ring_shoulder_diameter": bore + 0.62 * height, "outer_ring_shoulder_diameter": outside - 0.62 * height,
        "ball_count": rng.integers(7, 12, count).astype(float), "ball_diameter": 0.55 * height,
        "dynamic_rating": 60 * bore**1.6, "static_rating": 25 * bore**1.7, "limiting_speed": spread(1e4, 1e5),
        "seal_lip_diameter": bore + 0.7 * height, "base_oil_viscosity_40": spread(20, 120),
        "base_oil_viscosity_100": spread(4, 14), "radial_load": spread(1, 60) * bore / 4, "axial_load": spread(0, 20),
        "shaft_seat_cylindricity": spread(0.0005, 0.006), "shaft_seat_runout": spread(0.0005, 0.006),
        "shaft_seat_roughness": spread(0.1, 1.6), "shaft_bore": np.where(rng.random(count) < 0.3, 0.4 * bore, 0.0),
        "shaft_shoulder_runout": spread(0.001, 0.008), "shaft_fillet_radius": spread(0.05, 1.2) * chamfer,
        "housing_seat_cylindricity": spread(0.0005, 0.008), "housing_seat_runout": spread(0.0005, 0.008),
        "housing_seat_roughness": spread(0.1, 1.6), "housing_outer_diameter": 1.5 * outside,
        "housing_shoulder_runout": spread(0.001, 0.008), "housing_fillet_radius": spread(0.05, 1.2) * chamfer,
    }  # fmt: skip
    for side in ("shaft", "housing"):
        radius = spread(0.5, 3) * chamfer
        numbers |= {
            f"{side}_undercut_width": 2 * radius, f"{side}_undercut_depth": spread(0.1, 0.5) * radius,
            f"{side}_undercut_radius": radius,
        }  # fmt: skip

    def sized(nominal, half):
        half = np.broadcast_to(np.asarray(half, float), (count,))
        return Toleranced(nominal, -half, half.copy(), np.full(count, "", dtype=object))

    def seat(nominal, classes):
        chosen = np.array(classes, dtype=object)[rng.integers(0, len(classes), count)]
        lower, upper = deviations(chosen.astype(str), nominal)
        return Toleranced(nominal, lower / 1000, upper / 1000, chosen)

    free = spread(10, 20, True)
    toleranced = {
        "shaft_seat_diameter": seat(bore, ["h5", "js5", "j5", "k5", "m5", "g6"]),
        "housing_seat_diameter": seat(outside, ["H6", "H7", "J6", "JS6", "K6", "M7"]),
        "shaft_shoulder_diameter": sized(bore + 0.5 * height, 0.1),
        "housing_shoulder_diameter": sized(outside - 0.5 * height, 0.1),
        "bearing_span": sized(spread(20, 120, True), 0.05),
        "spring_rate": sized(spread(2, 30, True), 0.5),
        "spring_free_length": sized(free, 0.2),
        "spring_installed_length": sized(free - spread(1, 4, True), 0.15),
        "spring_solid_length": sized(0.5 * free, 0.05),
        "axial_float": sized(spread(0.1, 1.0, True), 0.05),
        "radial_clearance": sized(spread(5, 20), 3.0),
    }
    choices = {}
    for entry in vocabulary().values():
        if entry.kind == "choice":
            codes = rng.integers(0, len(entry.choices), machines if entry.level == "machine" else count)
            if entry.name == "bearing_type":
                codes = np.where(numbers["contact_angle"] > 0, 1, 0)
            codes = codes[machine_row] if entry.level == "machine" else codes
            choices[entry.name] = Choice(entry.choices, codes.astype(np.int8))
    names = tuple(f"M{k:06d}" for k in range(machines))
    texts = {
        "machine": np.array(names, dtype=object)[machine_row],
        "station": np.where(np.arange(count) % 2 == 0, "A", "B").astype(object),
        "drawing_number": np.full(count, "RB-1", dtype=object),
        "drawing_revision": np.full(count, "A", dtype=object),
    }
    assert all(parameter(name) for name in (*numbers, *toleranced))
    return apply_defaults(Stations(names, machine_row, numbers, toleranced, choices, texts))


@pytest.fixture(scope="session")
def sized(request):
    """How many rows of a size: one in fifty where benchmarks only run to see that they run."""
    few = request.config.getoption("benchmark_disable")
    return lambda count: max(count // 50, min(count, 20)) if few else count


@pytest.fixture(scope="session", params=[1, 1000, 100_000])
def stations(request, sized):
    return make_stations(sized(request.param))
