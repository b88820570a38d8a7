"""Lands of the rings beside the raceways: how far the usual ones reach where a table states none."""

import numpy as np
from attrs import frozen

from linter.checks.shared.base import Assumes, Limits, View, within
from linter.checks.shared.quantities import BALL_TO_SECTION, ball_diameter, pitch_diameter
from linter.checks.shared.two_sides import CLOSE, Sides
from linter.model.stations import Floats

LAND = {"shaft": "inner_ring_shoulder_diameter", "housing": "outer_ring_shoulder_diameter"}


@frozen(eq=False)
class UsualLand:
    """Ends of the usual lands of one ring [mm], each of shape (rows,); NaN where none are known.

    Attributes
    ----------
    high : float array
        Land of a ring with high shoulders, nearest to the pitch circle.
    low : float array
        Land of a ring with low shoulders, nearest to the bottom of the raceway.
    """

    high: Floats
    low: Floats


def usual_land(view: View, limits: Limits, side: str) -> UsualLand:
    """The usual lands of the ring on the shaft or in the housing, D_pw ∓ share D_w of a deep groove ball bearing.

    Parameters
    ----------
    view : View
        The stations; D_w is the usual share of the section where it is not known.
    limits : Limits
        ``land_shares``: of high shoulders and of low ones. A rulebook without it knows no usual lands.
    side : str
        ``shaft`` or ``housing``.

    Returns
    -------
    UsualLand
    """
    shares = limits.get("land_shares")
    if shares is None:
        nothing = np.full(view.count, np.nan)
        return UsualLand(nothing, nothing)
    s = view.stations
    section = within(s.number("outside_diameter") - s.number("bore_diameter"))
    ball = np.where(np.isnan(ball_diameter(view)), BALL_TO_SECTION * section, ball_diameter(view))
    ball = np.where(s.choice("bearing_type").is_in("deep groove ball"), ball, np.nan)
    sign = -1.0 if side == "shaft" else 1.0
    high, low = (pitch_diameter(view) + sign * float(share) * ball for share in shares)
    return UsualLand(high, low)


#: Why a usual land stands in for one that is not stated: the end of them that is worse for the clause.
_LOWEST = "not stated; the lowest land that is usual for balls of this size stands in, the safe side here"
_HIGHEST = "not stated; the highest land that is usual for balls of this size stands in, the safe side here"


def land_above(view: View, limits: Limits, side: str, shoulder: Floats) -> tuple[Floats, Assumes]:
    """Land of the ring that bears on a shoulder [mm], which must not reach beyond it.

    The lowest usual land stands in only where the shoulder is clear of it, and so of the real one.

    Parameters
    ----------
    view : View
        The stations.
    limits : Limits
        ``land_shares``.
    side : str
        ``shaft`` or ``housing``.
    shoulder : float array, shape (rows,)
        End of the shoulder that is nearest to the raceway [mm].

    Returns
    -------
    float array, shape (rows,)
        The land; NaN where it is neither stated nor stood in for.
    Assumes
        What stands in.
    """
    stated, low = view.stations.number(LAND[side]), usual_land(view, limits, side).low
    beyond = (shoulder - low) * (1.0 if side == "shaft" else -1.0)
    taken = np.isnan(stated) & (beyond <= CLOSE)
    land = np.where(taken, low, stated)
    return land, Assumes(LAND[side], land, "mm", _LOWEST, taken)


@frozen(eq=False)
class Lands:
    """Lands of both rings [mm], shape (rows,): as stated, else the usual ones that are nearest to the shoulders.

    Attributes
    ----------
    inner, outer : float array
        Land of the inner and of the outer ring.
    room : float array
        Radial room between them, the largest where a land is assumed.
    assumed : tuple of Assumes
        What stands in for lands that are not stated.
    """

    inner: Floats
    outer: Floats
    room: Floats
    assumed: tuple[Assumes, ...]


def lands_between(view: View, limits: Limits, shaft: Floats, housing: Floats, wanted: Sides) -> Lands:
    """The lands that two shoulders must keep clear of.

    Usual lands stand in only where every shoulder is clear of the highest of them, and so of the real one.

    Parameters
    ----------
    view : View
        The stations.
    limits : Limits
        ``land_shares``, and ``gap_wanted`` as a share of the room.
    shaft, housing : float array, shape (rows,)
        Largest shaft and smallest housing shoulder [mm].
    wanted : dict of side to bool array
        Where there is a shoulder.

    Returns
    -------
    Lands
    """
    s = view.stations
    stated = [s.number(name) for name in LAND.values()]
    usual = [usual_land(view, limits, side) for side in LAND]
    high = [np.where(np.isnan(d), u.high, d) for d, u in zip(stated, usual, strict=True)]
    low = [np.where(np.isnan(d), u.low, d) for d, u in zip(stated, usual, strict=True)]
    gap = limits["gap_wanted"] * (low[1] - low[0])
    taken = np.isnan(stated[0]) | np.isnan(stated[1])
    taken &= (high[1] - shaft >= gap) | ~wanted["shaft"]
    taken &= (housing - high[0] >= gap) | ~wanted["housing"]
    inner, outer = (np.where(taken, h, d) for h, d in zip(high, stated, strict=True))
    ends = zip(LAND, (inner, outer), stated, strict=True)
    assumed = tuple(Assumes(LAND[side], land, "mm", _HIGHEST, taken & np.isnan(d)) for side, land, d in ends)
    return Lands(inner, outer, within(0.5 * np.where(taken, low[1] - low[0], outer - inner)), assumed)
