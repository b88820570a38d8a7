"""What the described rotor puts on its bearings: weight, forces from outside, unbalance, and the slope of its shaft."""

from functools import lru_cache

import numpy as np
from attrs import frozen

from linter.checks.shared.base import View, shared, within
from linter.checks.shared.seat_fits import rotor_unbalance
from linter.checks.shared.shaft_line import shaft_line
from linter.mechanics import balance
from linter.mechanics.critical_speed import own_masses
from linter.mechanics.rotor_text import Forces, parse_forces
from linter.mechanics.shaft import Shaft, ShaftState, loaded_shaft
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text


@frozen(eq=False)
class LineLoads:
    """Loads of the positions of described rotors, shape (rows,), NaN where they do not follow.

    Attributes
    ----------
    weight, forces : float array
        Static reaction to the weight, and to the shaft_forces whatever their directions are [N].
    slope : float array
        Slope of the shaft at the position under both, whatever the directions are [rad].
    unbalance : float array
        Force that turns with the residual unbalance at the centre of mass, at the highest speed [N].
    stated : bool array
        Rows whose shaft_forces are stated.
    problem : object array of str
        Why shaft_forces cannot be read.
    """

    weight: Floats
    forces: Floats
    slope: Floats
    unbalance: Floats
    stated: Bools
    problem: np.ndarray


@lru_cache
def _forces(text: str) -> Forces | str:
    try:
        return parse_forces(text) if text.strip() else Forces(np.zeros(0), np.zeros(0))
    except ValueError as error:
        return f"shaft_forces cannot be read: {error}"


def _reaching(s: Shaft, row: int, places: Floats) -> tuple[Shaft, float]:
    """One shaft with its end sections drawn out to every place, and by how much its left end moved."""
    length = s.section_length[row].copy()
    used = np.flatnonzero(length > 0.0)
    left = max(0.0, -float(np.min(places, initial=0.0)))
    right = max(0.0, float(np.max(places, initial=0.0)) - float(length.sum()))
    length[used[0]] += left
    length[used[-1]] += right
    one = Shaft(length[np.newaxis], *(v[row : row + 1] for v in s[1:]))
    return one._replace(bearing_a=one.bearing_a + left, bearing_b=one.bearing_b + left), left


@shared
def line_loads(view: View) -> LineLoads:
    """Loads and slopes at the bearings of every rotor whose line is whole; rigid bearings, the shaft's own stiffness.

    The bearings carry what a beam on two supports gives them. The directions of the outside forces are not known, so
    the magnitudes of what each of them alone and the weight do are added: an upper bound. Where rotor_mass says more
    than sections and discs make up, the weight is raised to it in proportion.
    """
    s, line = view.stations, shaft_line(view)
    texts = view.to_machines(s.text("shaft_forces"))
    orientation = s.choice("shaft_orientation")
    hangs = view.to_machines(
        np.where(orientation.is_in("horizontal"), 1.0, np.where(orientation.is_in("vertical"), 0.0, np.nan))
    )
    turning = balance.unbalance_force(rotor_unbalance(view), within(s.number("speed_max"), closed=True))
    turning, total = view.to_machines(turning), within(view.to_machines(s.number("rotor_mass")))
    weight, forces, slope, unbalance = (np.full(view.count, np.nan) for _ in range(4))
    problem = np.full(view.machine_count, "", dtype=object)
    own_at, own_mass = own_masses(line.shaft, line.density[:, np.newaxis], 6) if line.rows.size else (weight, weight)
    done: dict[tuple[str, bytes], tuple[ShaftState, ShaftState, float]] = {}  # copies of one rotor are solved once
    for index, row in enumerate(line.rows.tolist()):
        outside = _forces(str(texts[row]))
        if isinstance(outside, str):
            problem[row] = outside
            continue
        place = np.concatenate([own_at[index], line.discs.position[index]])
        mass = np.concatenate([own_mass[index], line.discs.mass[index]])
        numbers: list[Floats] = [place, mass, np.array([hangs[row], total[row]])]
        numbers += [np.ravel(v[index]) for v in line.shaft]
        key = (str(texts[row]), np.concatenate(numbers).tobytes())
        if key not in done:
            one, moved = _reaching(line.shaft, index, np.concatenate([place[mass > 0.0], outside.position]))
            heavier = np.fmax(total[row] / mass.sum(), 1.0)
            pull = hangs[row] * balance.STANDARD_GRAVITY * mass * heavier
            place = np.where(mass > 0.0, place, 0.0) + moved
            centre = float((place * mass).sum() / mass.sum())
            done[key] = (
                loaded_shaft(one, place, np.nan_to_num(pull)),
                loaded_shaft(one, outside.position[:, np.newaxis] + moved, outside.force[:, np.newaxis]),
                (centre - float(one.bearing_a[0])) / float(one.bearing_b[0] - one.bearing_a[0]),
            )
        down, each, to_last = done[key]
        first = int(view.starts[row])
        for at, own, others, angle, angles, share in (
            (first, down.reaction_a, each.reaction_a, down.slope_a, each.slope_a, 1.0 - to_last),
            (first + 1, down.reaction_b, each.reaction_b, down.slope_b, each.slope_b, to_last),
        ):
            weight[at] = abs(float(own[0])) + 0.0 * hangs[row]
            forces[at] = float(np.abs(others).sum())
            slope[at] = abs(float(angle[0])) + float(np.abs(angles).sum()) + 0.0 * hangs[row]
            unbalance[at] = abs(share) * turning[row]
    stated = view.to_stations(np.array([bool(str(text).strip()) for text in texts], dtype=bool))
    return LineLoads(weight, forces, slope, unbalance, stated & ~np.isnan(forces), view.to_stations(problem))


def load_by_line(view: View) -> tuple[Floats, str]:
    """Fixed radial load [N] of the positions whose radial_load is not stated while shaft_forces are; and the reason."""
    found = line_loads(view)
    total = np.where(found.stated, found.weight + found.forces, np.nan)
    total = np.where(view.stations.known("radial_load"), np.nan, total)
    most = float(np.nanmax(total)) if not np.isnan(total).all() else 0.0
    return total, (
        "not stated; what weight and shaft_forces of the described rotor put on the bearing is taken (clause "
        f"rotor.bearing-loads), up to {quantity_text(most, 'N')}"
    )
