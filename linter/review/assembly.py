"""How the bearings of a machine go in: which ring is pressed, its force and heat, and in which order."""

import numpy as np
from attrs import frozen

from linter.checks.shared.base import View, within
from linter.checks.shared.bodies import diameters, housing_body, ring_body, shaft_body, shaft_hole
from linter.checks.shared.preload_criteria import light_design
from linter.checks.shared.quantities import static_load_rating
from linter.checks.shared.seat_fits import Fit, housing_fit, shaft_fit
from linter.mechanics import attached_parts, fit_in_use, press_fit
from linter.model.stations import Floats, Stations
from linter.model.wording import quantity_text
from linter.rulebook.model import Limits, Rulebook

MOUNTING, CAP = "fit.mounting", "preload.maximum"
_ROOM = press_fit.REFERENCE_TEMPERATURE


@frozen
class RingAssembly:
    """One ring going onto its seat.

    Attributes
    ----------
    ring : str
        ``inner ring`` or ``outer ring``.
    smallest, largest : float
        Interference at both ends of the fit [um], negative for clearance; NaN where not known.
    least_force, most_force : float
        Force that presses it on at both ends [N]; 0 where it slips on.
    warm : float
        Temperature of the outer part at which it slips at the tightest fit [degC]; NaN where it slips cold, where the
        parts do not bear the heat, or where the fit is not known.
    """

    ring: str
    smallest: float
    largest: float
    least_force: float
    most_force: float
    warm: float

    @property
    def tight(self) -> bool:
        """Whether it has interference at the tightest fit."""
        return self.largest > 0.0

    def text(self) -> str:
        """The ring in one sentence."""
        if np.isnan(self.largest):
            return f"{self.ring}: the fit is not known"
        fit = " to ".join(quantity_text(end, "um") for end in (self.smallest, self.largest))
        if not self.tight:
            return f"{self.ring}: interference {fit}, slips on by hand"
        force = "force not known" if np.isnan(self.most_force) else (
            f"force {quantity_text(_three(self.least_force), 'N')} to {quantity_text(_three(self.most_force), 'N')}"
        )  # fmt: skip
        part = "ring" if self.ring == "inner ring" else "housing"
        heat = "" if np.isnan(self.warm) else f", or {part} warmed to {quantity_text(np.ceil(self.warm), 'degC')}"
        return f"{self.ring}: interference {fit}, {force}{heat}"


@frozen
class StationAssembly:
    """One position: its rings, and the axial force that its balls bear at rest [N], NaN where not known."""

    station: str
    inner: RingAssembly
    outer: RingAssembly
    through_balls: float


@frozen
class Assembly:
    """One machine: its positions and the steps in their order."""

    machine: str
    stations: tuple[StationAssembly, ...]
    steps: tuple[str, ...]


def assemblies(stations: Stations, rulebook: Rulebook) -> tuple[Assembly, ...]:
    """How each machine is put together.

    Parameters
    ----------
    stations : Stations
        As read.
    rulebook : Rulebook
        Its clauses ``fit.mounting`` (friction, gap) and ``preload.maximum`` (static cap) give the limits.

    Returns
    -------
    tuple of Assembly
        One for each machine, in their order. What the table leaves open is said, not assumed.
    """
    view = View(stations)
    mounting = Limits(rulebook.clauses[MOUNTING])
    with np.errstate(all="ignore"):
        inner, outer = _inner(view, mounting), _outer(view, mounting)
        cap = Limits(rulebook.clauses[CAP])
        share = np.where(light_design(view, cap), cap["cap_light"], cap["cap"])
        balls = share * within(static_load_rating(view).value)
    names = stations.text("station")
    found = []
    for machine, start in enumerate(view.starts.tolist()):
        rows = range(start, start + int(view.station_count[machine]))
        of = tuple(StationAssembly(str(names[r]), inner[r], outer[r], float(balls[r])) for r in rows)
        found.append(Assembly(stations.machines[machine], of, tuple(_steps(stations, of, rows))))
    return tuple(found)


def _ring(name: str, fit: Fit, pressures: list[Floats], diameter: Floats, width: Floats, warm: Floats,
          friction: float) -> list[RingAssembly]:  # fmt: skip
    forces = [
        np.where(end > 0.0, press_fit.pressing_force(pressure, within(diameter), width, friction), 0.0)
        for end, pressure in zip((fit.smallest, fit.largest), pressures, strict=True)
    ]
    return [
        RingAssembly(name, *(float(column[row]) for column in (fit.smallest, fit.largest, *forces, warm)))
        for row in range(len(diameter))
    ]


def _warm(fit: Fit, diameter: Floats, expansion: Floats, limits: Limits, most: str) -> Floats:
    """Temperature at which the outer part slips over [degC]; NaN where it needs none or does not bear so much."""
    gap = limits["gap"] + limits["gap_per_mm"] * diameter
    hot = fit_in_use.mounting_temperature(fit.largest / 1000.0, gap / 1000.0, diameter, expansion, _ROOM)
    return np.where((fit.largest > 0.0) & (hot <= limits[most]), hot, np.nan)


def _inner(view: View, limits: Limits) -> list[RingAssembly]:
    bore, outside = diameters(view)
    raceway, _ = fit_in_use.mean_raceway_diameters(bore, outside, "groove")
    fit, shaft, ring = shaft_fit(view), shaft_body(view), ring_body(view)
    pressures = [
        press_fit.contact_pressure(
            end / 1000.0, bore, shaft_hole(view), raceway, shaft.modulus, shaft.poisson, ring.modulus, ring.poisson
        )
        for end in (fit.smallest, fit.largest)
    ]
    width = within(view.stations.number("ring_width"))
    warm = _warm(fit, bore, ring.expansion, limits, "open_limit")
    return _ring("inner ring", fit, pressures, bore, width, warm, float(limits["friction"]))


def _outer(view: View, limits: Limits) -> list[RingAssembly]:
    bore, outside = diameters(view)
    _, raceway = fit_in_use.mean_raceway_diameters(bore, outside, "groove")
    fit, housing, ring = housing_fit(view), housing_body(view), ring_body(view)
    wall = view.stations.number("housing_outer_diameter")
    wall = np.where(wall > outside, wall, np.inf)
    pressures = [
        press_fit.contact_pressure(
            end / 1000.0, outside, raceway, wall, ring.modulus, ring.poisson, housing.modulus, housing.poisson
        )
        for end in (fit.smallest, fit.largest)
    ]
    width = within(view.stations.number("ring_width"))
    warm = _warm(fit, outside, housing.expansion, limits, "housing_limit")
    return _ring("outer ring", fit, pressures, outside, width, warm, float(limits["friction"]))


def _three(value: float) -> float:
    return float(f"{value:.3g}")


def _steps(stations: Stations, of: tuple[StationAssembly, ...], rows: range) -> list[str]:
    """The order of assembly of one machine in words."""
    first = rows[0]
    inner = any(station.inner.tight for station in of)
    outer = any(station.outer.tight for station in of)
    steps = ["Clean and demagnetise the seats; measure them; take the bearings out of their packing last."]
    balanced = stations.choice("balancing_method").texts()[first]
    if balanced in ("separately", "between centres"):
        steps.append("Balance the rotor before its bearings are put on.")
    names = {side: [s.station for s in of if getattr(s, side).tight] for side in ("inner", "outer")}
    if inner or not outer:
        how = "Press" if inner else "Put"
        at = f" ({', '.join(names['inner'])} with interference)" if inner else ""
        steps.append(f"{how} the bearings onto the shaft{at}: push on the inner ring only, until it stands on its "
                     "shoulder.")  # fmt: skip
        steps += _clamped(stations, of, rows)
        if balanced == "as assembled":
            steps.append("Balance the rotor in its own bearings; they stay on it from here on.")
        if outer:
            steps += [_second(s, "outer ring") for s in of if s.outer.tight]
        verb = "Press" if outer else "Put"
        steps.append(f"{verb} the rotor with its bearings into the housing, the located position first.")
    else:
        at = ", ".join(names["outer"])
        steps.append(f"Press the bearings into the housing ({at} with interference): push on the outer ring only.")
        steps.append("Push the shaft through the inner rings by hand; support each inner ring while it passes.")
        steps += _clamped(stations, of, rows)
    roles = stations.choice("axial_role").texts()
    for row, station in zip(rows, of, strict=True):
        if roles[row] == "spring-loaded":
            washer = stations.known("washer_inside_diameter")[row]
            between = "the washer and then the spring" if washer else "the spring"
            steps.append(
                f"At {station.station} lay in {between}, close the housing, and check that the ring moves under the "
                "spring by hand."
            )
    method = stations.choice("preload_method").texts()[first]
    if method == "rigid":
        steps.append(
            "Clamp the pair, turn the rotor while it is clamped, and check its preload by torque or deflection."
        )
    steps.append("Run in: at a third of the speed until the temperature is steady, then in steps to the highest speed.")
    return steps


def _second(station: StationAssembly, ring: str) -> str:
    """What to mind where a ring is pressed on a bearing whose other ring is already seated."""
    found = station.outer if ring == "outer ring" else station.inner
    text = f"At {station.station} the {ring} is pressed as the second one"
    if np.isnan(found.most_force) or np.isnan(station.through_balls):
        return f"{text}: push on both rings at once."
    force, most = (quantity_text(_three(v), "N") for v in (found.most_force, station.through_balls))
    if found.most_force > station.through_balls:
        return (
            f"{text}: push on both rings at once, never through the balls: up to {force} are needed, and the balls "
            f"bear {most} axially at rest."
        )
    return (
        f"{text}: push on both rings at once; should it go through the balls, {force} stay below the {most} they bear."
    )


def _clamped(stations: Stations, of: tuple[StationAssembly, ...], rows: range) -> list[str]:
    """Nuts, retaining rings and adhesive that follow when the inner rings stand."""
    steps = []
    torque, bore = stations.number("nut_torque"), stations.number("bore_diameter")
    retention = stations.choice("inner_ring_retention").texts()
    for row, station in zip(rows, of, strict=True):
        if torque[row] > 0.0 and bore[row] > 0.0:
            force = quantity_text(_three(float(attached_parts.nut_force(torque[row], bore[row]))), "N")
            final = quantity_text(float(torque[row]), "N.m")
            steps.append(
                f"At {station.station} tighten the nut to two to three times {final}, loosen it, and tighten it to "
                f"{final} (about {force}, dry threads)."
            )
        if stations.known("shaft_groove_diameter")[row]:
            steps.append(f"At {station.station} snap the retaining ring into its groove without overstretching it.")
        if retention[row] == "adhesive":
            steps.append(
                f"At {station.station} degrease the seat and bond the inner ring; let it cure before it turns."
            )
    return steps
