"""Chapter speed: inertia of the balls, centrifugal and gyroscopic, against the load that presses them on the races."""

from collections.abc import Mapping
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, shared, within
from linter.checks.shared.contacts import contact, contact_modulus
from linter.checks.shared.quantities import (
    ball_count,
    ball_diameter,
    contact_angle,
    is_ball,
    pitch_diameter,
    preload_force,
    total_axial_load,
)
from linter.checks.shared.seat_fits import of_material, row_words
from linter.mechanics import ball_bearing, hertz, internal_clearance, kinematics, materials
from linter.model.stations import Bools, Floats


@frozen(eq=False)
class BallState:
    """Speeds, forces and angles of the balls, each a float array of shape (rows,), NaN where not known.

    Attributes
    ----------
    clearance : float array
        Radial clearance before mounting [mm], its largest value; NaN for angular contact bearings.
    angle : float array
        Contact angle under the axial load [deg].
    load : float array
        Load of one ball by the axial load [N].
    cage_speed, ball_spin : float array
        Speeds [r/min]; those of the cage and of the ball about its own axis.
    centrifugal : float array
        Centrifugal force of one ball [N].
    moment : float array
        Gyroscopic moment of one ball [N mm].
    density : float array
        Density of the balls [kg/m3].
    missing : dict of str to bool array
        What is wanted and not stated.
    """

    clearance: Floats
    angle: Floats
    load: Floats
    cage_speed: Floats
    ball_spin: Floats
    centrifugal: Floats
    moment: Floats
    density: Floats
    missing: Mapping[str, Bools]


def _largest_clearance(view: View) -> Floats:
    """Largest radial clearance before mounting of a deep groove bearing [mm]: as stated, else of its group."""
    s = view.stations
    size = s.size("radial_clearance")
    stated = np.where(np.isnan(size.upper), size.nominal, size.largest)
    group = internal_clearance.radial_clearance_or_nan(
        row_words(s.choice("clearance_class")), s.number("bore_diameter"), "deep groove ball"
    )[1]
    return within(np.where(np.isnan(stated), group, stated) / 1000.0, closed=True)


@shared
def ball_state(view: View) -> BallState:
    """The balls at the highest speed under external axial load and preload.

    The contact angle of a deep groove bearing follows from its clearance before mounting (the largest angle it can
    have, so the smallest ball load); the axial load opens it further (ball_bearing.axial_load).
    """
    s = view.stations
    d_w, d_pw, z = ball_diameter(view), pitch_diameter(view), ball_count(view)
    z = np.where(z == np.floor(z), within(z, 2.0, 200.0, closed=True), np.nan)
    deep = s.choice("bearing_type").is_in("deep groove ball")
    inner, outer = (within(s.number(f"{race}_groove_ratio"), 0.5) for race in ("inner", "outer"))
    clearance = np.where(deep, _largest_clearance(view), np.nan)
    axial = np.abs(total_axial_load(view))
    density = of_material(s.choice("ball_material"), materials.density, ball=True)

    angle, load = (np.full(view.count, np.nan) for _ in range(2))
    distance = ball_bearing.groove_distance(d_w, inner, outer)
    free = ball_bearing.free_contact_angle(np.where(clearance <= 2.0 * distance, clearance, np.nan), distance)
    free = np.where(deep, free, contact_angle(view))
    ready = ~np.isnan(d_w + d_pw + z + inner + outer + free + axial) & s.choice("ball_material").known & is_ball(view)
    ready &= contact(view).exact
    if ready.any():
        # the constant hardly depends on the angle: 0.1 % from 10 to 20 degrees (derived)
        constant = contact(view).constant[ready]
        bearing = ball_bearing.AxialBearing(z[ready], distance[ready], free[ready], constant)
        state = ball_bearing.axial_load(axial[ready], bearing)
        angle[ready], load[ready] = state.contact_angle, state.ball_load

    speed = within(s.number("speed_max"))
    outer_turns = s.choice("rotating_ring").is_in("outer")
    speeds = kinematics.speeds(
        np.where(outer_turns, 0.0, speed), z, d_w, d_pw, angle, np.where(outer_turns, speed, 0.0)
    )
    centrifugal = kinematics.centrifugal_force(d_w, d_pw, speeds.cage, density)
    moment = kinematics.gyroscopic_moment(d_w, speeds.ball_spin, speeds.cage, angle, density)
    return BallState(
        clearance=clearance,
        angle=angle,
        load=load,
        cage_speed=speeds.cage,
        ball_spin=speeds.ball_spin,
        centrifugal=centrifugal,
        moment=moment,
        density=density,
        missing={
            "axial_load": np.isnan(s.number("axial_load")),
            "preload_force": np.isnan(preload_force(view)),
            "clearance_class": deep & np.isnan(clearance),
            "contact_angle": is_ball(view) & ~deep & np.isnan(contact_angle(view)),
        },
    )


def _unloaded(view: View) -> Bools:
    """Rows without preload whose axial load is not stated."""
    return (preload_force(view) == 0.0) & ~view.stations.known("axial_load")


def _applies(view: View, limits: Limits) -> Bools:
    kind = view.stations.choice("bearing_type")
    unloaded = total_axial_load(view) == 0.0
    if limits.get("unstated_axial_load") is not None:
        unloaded |= _unloaded(view)
    return (is_ball(view) | ~kind.known) & ~unloaded


def _reasons(view: View) -> NDArray[Any]:
    kind = view.stations.choice("bearing_type")
    roller = kind.known & ~is_ball(view)
    told = np.where(
        _unloaded(view),
        "neither a preload nor an axial load is stated that would press the balls on both raceways",
        "no axial load or preload presses the balls on both raceways",
    )
    return np.where(roller, "the rolling elements are rollers", told).astype(object)


def _assumed(view: View, limits: Limits) -> list[Assumes]:
    s = view.stations
    word = np.full(view.count, "bearing steel", dtype=object)
    reason = "not stated; bearing steel stands in"
    found = [Assumes("ring_material", word, "", reason, ~s.choice("ring_material").known)]
    if (load := limits.get("unstated_axial_load")) is not None:
        none = np.full(view.count, float(load))
        found.append(Assumes("axial_load", none, "N", "not stated; none is taken", _unloaded(view) & is_ball(view)))
    return found


def _working(view: View, state: BallState) -> list[Working]:
    s = view.stations
    return [
        Working("speed", "n", "highest speed", s.number("speed_max"), "r/min"),
        Working("ball", "D_w", "ball diameter", ball_diameter(view), "mm"),
        Working("pitch", "D_pw", "pitch diameter", pitch_diameter(view), "mm"),
        Working("density", "ρ", "density of the balls", state.density, "kg/m3"),
        Working("axial", "F_a + F_p", "axial load and preload", np.abs(total_axial_load(view)), "N"),
        Working("clearance", "G_r", "largest radial clearance before mounting", state.clearance, "mm"),
        Working(
            "angle", "α", "contact angle under the axial load", state.angle, "deg", "from G_r or α_0, opened by load"
        ),
        Working("ball_load", "Q", "load of one ball", state.load, "N", "(F_a + F_p)/(Z sin α)"),
        Working("cage_speed", "n_c", "cage speed", state.cage_speed, "r/min", "n (1 - D_w cos α/D_pw)/2, inner ring"),
        Working("centrifugal", "F_c", "centrifugal force of a ball", state.centrifugal, "N", "ρ π/6 D_w³ D_pw/2 ω_c²"),
    ]


def ball_inertia(view: View, limits: Limits) -> Result:
    """Centrifugal force of a ball against its load, and the contact stress of the outer race with it."""
    s = view.stations
    state = ball_state(view)
    ratio = state.centrifugal / state.load
    alpha = np.deg2rad(state.angle)
    outer_load = np.hypot(state.load * np.sin(alpha), state.load * np.cos(alpha) + state.centrifugal)
    stress = np.full(view.count, np.nan)
    ready = ~np.isnan(outer_load)
    if ready.any():
        outer_angle = np.rad2deg(np.arcsin(np.clip((state.load * np.sin(alpha) / outer_load)[ready], 0.0, 1.0)))
        curvatures = hertz.race_curvatures(
            ball_diameter(view)[ready], pitch_diameter(view)[ready], outer_angle,
            s.number("outer_groove_ratio")[ready], "outer",
        )  # fmt: skip
        modulus = contact_modulus(view)[ready]
        stress[ready] = hertz.point_contact(outer_load[ready], *curvatures, modulus).peak_pressure
    by_force = ladder(ratio, limits["share_near"], limits["share_far"])
    by_stress = ladder(stress, limits["stress_near"], limits["stress_far"])
    stress_leads = (by_stress > 1.0) & (by_stress > by_force)
    return Result(
        measure=np.fmax(by_force, by_stress),
        unit="1",
        observed=np.where(stress_leads, np.nan, ratio),
        upper=np.where(stress_leads, np.nan, float(limits["share_near"])),
        applies=_applies(view, limits),
        reason=lambda: _reasons(view),
        missing=state.missing,
        variant=lambda: np.where(stress_leads, "stress", "").astype(object),
        facts=lambda: {
            "stress_limit": (np.full(view.count, float(limits["stress_near"])), "MPa"),
            "preload_wanted": (
                kinematics.preload_against_skidding(state.centrifugal, ball_count(view), state.angle),
                "N",
            ),
        },
        assumed=lambda: _assumed(view, limits),
        working=lambda: [
            *_working(view, state),
            Working("share", "F_c/Q", "centrifugal force over ball load", ratio, "1", "F_c/Q"),
            Working("outer_load", "Q_o", "load at the outer race", outer_load, "N", "Q and F_c added as vectors"),
            Working("outer_stress", "p_max", "peak contact stress, outer race", stress, "MPa", "Hertz"),
        ],
    )  # fmt: skip


def spin(view: View, limits: Limits) -> Result:
    """Gyroscopic moment of a ball against what friction at its contacts can hold."""
    state = ball_state(view)
    low, high = float(limits["friction_low"]), float(limits["friction_high"])
    hold_low, hold_high = (mu * state.load * ball_diameter(view) for mu in (low, high))
    observed = state.moment
    wanted = kinematics.preload_against_gyroscopic_slip(
        state.moment, ball_count(view), ball_diameter(view), state.angle, high
    )
    return Result(
        measure=ladder(observed, hold_low, hold_high),
        unit="N.mm",
        observed=observed,
        upper=hold_low,
        applies=_applies(view, limits),
        reason=lambda: _reasons(view),
        missing=state.missing,
        variant=lambda: np.where(observed <= hold_high, "remark", "").astype(object),
        facts=lambda: {
            "hold_high": (hold_high, "N.mm"),
            "preload_wanted": (wanted, "N"),
        },
        assumed=lambda: _assumed(view, limits),
        working=lambda: [
            *_working(view, state),
            Working("ball_spin", "n_b", "speed of the ball about its own axis", state.ball_spin, "r/min"),
            Working("moment", "M_g", "gyroscopic moment", observed, "N.mm", "ρ π/6 D_w³ · D_w²/10 · ω_b ω_c sin α"),
            Working("held_low", "", "moment held, low friction", hold_low, "N.mm", "μ Q D_w"),
            Working("held_high", "", "moment held, high friction", hold_high, "N.mm", "μ Q D_w"),
        ],
    )  # fmt: skip
