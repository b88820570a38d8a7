"""The rotor as the table describes it: shaft by sections, discs, bearings, and how stiff these stand.

Arrays by machine have the shape (machines,), those by position (rows,); lengths in mm, masses in kg, stiffnesses in
N/mm.
"""

from functools import lru_cache

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, View, shared, within
from linter.checks.shared.contacts import contact
from linter.checks.shared.preload_band import station_band
from linter.checks.shared.quantities import ball_count
from linter.checks.shared.seat_fits import of_material
from linter.mechanics import ball_bearing, load_distribution, materials
from linter.mechanics.rotor_beam import rotor_mass
from linter.mechanics.rotor_text import Discs, Sections, parse_discs, parse_sections
from linter.mechanics.shaft import Shaft, shaft
from linter.model.stations import Bools, Floats


@frozen(eq=False)
class ShaftLine:
    """Rotors that the table describes.

    Attributes
    ----------
    described : bool array, shape (machines,)
        Machines that state shaft_sections.
    rows : int array, shape (lines,)
        Machines whose line is whole: two positions, the inner rings turn, everything legible.
    problem : object array of str, shape (machines,)
        Why a described line cannot be used; empty where values are only missing.
    shaft : Shaft
        Of ``rows``, on rigid bearings.
    discs : Discs
        Of ``rows``, shape (lines, discs); mass 0 pads, moments of inertia 0 where they are not stated.
    density, mass : float array, shape (lines,)
        kg/m3; kg of shaft and discs.
    points : bool array, shape (machines,)
        Machines with a disc without moments of inertia.
    """

    described: Bools
    rows: NDArray[np.intp]
    problem: NDArray[np.object_]
    shaft: Shaft
    discs: Discs
    density: Floats
    mass: Floats
    points: Bools

    @property
    def faulty(self) -> dict[str, Bools]:
        """Machines whose line cannot be used, by the parameter that the reason is about."""
        discs = np.array([str(text).startswith("rotor_discs") for text in self.problem], dtype=bool)
        return {"shaft_sections": (self.problem != "") & ~discs, "rotor_discs": discs}

    def on(self, stiffness_a: Floats, stiffness_b: Floats) -> Shaft:
        """The shafts on bearings of these stiffnesses [N/mm], shape (lines,)."""
        return self.shaft._replace(stiffness_a=stiffness_a, stiffness_b=stiffness_b)


@lru_cache
def _sections(text: str) -> Sections | str:
    try:
        return parse_sections(text)
    except ValueError as error:
        return f"shaft_sections cannot be read: {error}"


@lru_cache
def _discs(text: str) -> Discs | str:
    try:
        return parse_discs(text) if text.strip() else Discs(*np.zeros((4, 0)))
    except ValueError as error:
        return f"rotor_discs cannot be read: {error}"


@shared
def shaft_line(view: View) -> ShaftLine:
    """Rotors of the machines that state shaft_sections; steel where the shaft's material is not stated."""
    s = view.stations
    texts, bodies = (view.to_machines(s.text(name)) for name in ("shaft_sections", "rotor_discs"))
    described = np.array([bool(str(text).strip()) for text in texts], dtype=bool)
    first = view.to_machines(s.number("first_bearing_position"))
    last = first + within(view.to_machines(s.size("bearing_span").nominal))
    outer = view.to_machines(s.choice("rotating_ring").is_in("outer"))
    problem = np.full(view.machine_count, "", dtype=object)
    rows: list[int] = []
    lines: list[tuple[Sections, Discs]] = []
    points = np.zeros(view.machine_count, dtype=bool)
    for row in np.flatnonzero(described).tolist():
        sections, discs = _sections(str(texts[row])), _discs(str(bodies[row]))
        if view.station_count[row] != 2 or outer[row]:
            problem[row] = (
                "the shaft stands still" if outer[row] else "only a rotor on two bearings is computed"
            )  # fmt: skip
        elif isinstance(sections, str) or isinstance(discs, str):
            problem[row] = sections if isinstance(sections, str) else discs
        elif first[row] < 0.0 or last[row] > sections.length.sum() * (1.0 + 1e-9):
            problem[row] = (
                f"the bearings at {first[row]:g} and {last[row]:g} mm do not both lie on the shaft of "
                f"{sections.length.sum():g} mm (shaft_sections, first_bearing_position, bearing_span)"
            )
        elif not np.isnan(last[row]):
            rows.append(row)
            lines.append((sections, discs))
            points[row] = bool(np.isnan(discs.polar).any())
    at = np.array(rows, dtype=np.intp)
    most = max((line.length.size for line, _ in lines), default=1)
    held = max((discs.mass.size for _, discs in lines), default=0)

    def padded(values: list[Floats], width: int, how: str) -> Floats:
        kept = [v if v.size == width else np.pad(v, (0, width - v.size), mode=how) for v in values]  # type: ignore[call-overload]
        return np.array(kept, dtype=np.float64).reshape(len(values), width)

    material = s.choice("shaft_material")
    modulus, nu, density = (
        view.to_machines(of_material(material, constant, unstated="steel"))[at]
        for constant in (materials.elastic_modulus, materials.poisson_ratio, materials.density)
    )
    one = shaft(
        padded([line.length for line, _ in lines], most, "constant"),
        padded([line.outside for line, _ in lines], most, "edge"),
        first[at], last[at], modulus,
        section_bore=padded([line.inside for line, _ in lines], most, "edge"),
        shear_modulus=modulus / (2.0 * (1.0 + nu)),
    )  # fmt: skip
    all_discs = Discs(*(padded([np.nan_to_num(d[k]) for _, d in lines], held, "constant") for k in range(4)))
    return ShaftLine(described, at, problem, one, all_discs, density, rotor_mass(one, density, all_discs), points)


@frozen(eq=False)
class Stiffness:
    """Radial stiffness of each position [N/mm] from its least to its largest, and whether it was computed."""

    least: Floats
    largest: Floats
    computed: Bools


@shared
def bearing_stiffness(view: View) -> Stiffness:
    """Radial stiffness of the positions of described rotors: as stated, else of the bearing alone under its preload.

    The tangent stiffness of balls loaded axially by the smallest and by the largest preload (Hertz, contact angle free
    to change, no radial load, standing still).
    """
    s = view.stations
    stated = within(s.number("radial_stiffness"))
    asked = view.to_stations(shaft_line(view).described) & np.isnan(stated)
    at, band = contact(view), station_band(view)
    ends = []
    for force in (band.smallest, band.largest):
        ready = asked & at.exact & (force > 0.0)
        found = np.where(asked, np.nan, stated)
        if ready.any():
            distance = at.distance[ready]
            free = ball_bearing.clearance_of_angle(at.free_angle[ready], distance)
            state = load_distribution.combined_load(
                0.0, force[ready], ball_count(view)[ready], distance, free, at.constant[ready]
            )
            found[ready] = state.radial_stiffness
        ends.append(found)
    return Stiffness(ends[0], ends[1], asked & ~np.isnan(ends[0] + ends[1]))


def line_assumed(view: View, asked: Bools) -> tuple[Assumes, ...]:
    """What stood in for unstated values of the described rotors of some machines."""
    found = shaft_line(view)
    there = np.zeros(view.machine_count, dtype=bool)
    there[found.rows] = True
    there &= asked
    words = np.full(view.machine_count, "", dtype=object)
    steel, point = words.copy(), words.copy()
    steel[:], point[:] = "steel", "a point"
    return (
        Assumes("shaft_material", steel, "", "not stated; steel stands in",
                there & ~view.to_machines(view.stations.choice("shaft_material").known)),
        Assumes("rotor_discs", point, "", "no moments of inertia stated; a disc without them counts as a point",
                there & found.points),
    )  # fmt: skip
