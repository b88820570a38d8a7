"""What a published speed is corrected by for the design at hand, and the maker's own speed with those corrections."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, View, Working
from linter.checks.shared.quantities import contact_angle, load_ratio
from linter.model.stations import Bools, Choice, Floats
from linter.model.wording import number_text

HYBRID = ("silicon nitride", "zirconia")
#: A bearing that states no type counts as this one.
USUAL_TYPE = "deep groove ball"


class Correction(NamedTuple):
    """One factor of a speed: key and symbol for the working, its cause in words, the factor by row."""

    key: str
    symbol: str
    words: str
    values: Floats

    def working(self) -> Working:
        """Its line of the working."""
        return Working(self.key, self.symbol, f"factor for {self.words}", self.values)


def arrangement_corrections(view: View, limits: Limits) -> list[Correction]:
    """Factors that no maker's table of speeds contains: load, axial share, rigid preload, rotating outer ring.

    The tables hold for light load (``load_ratios`` with ``load_factors`` over C/P) that is mainly radial
    (``axial_shares`` with ``axial_factors`` over F_a/F_r, deep groove bearings), with a spring or no preload, and with
    the inner ring turning.
    """
    s = view.stations
    ratio = load_ratio(view)
    by_load = np.interp(ratio, limits["load_ratios"], limits["load_factors"])
    radial, axial = s.number("radial_load"), s.number("axial_load")
    share = np.divide(axial, radial, out=np.full(view.count, np.nan), where=(radial > 0) & (axial > 0))
    by_share = np.interp(share, limits["axial_shares"], limits["axial_factors"])
    deep = s.choice("bearing_type").is_in(USUAL_TYPE)
    kinds = {name: float(limits[f"rigid_{name}"]) for name in ("light", "medium", "heavy")}
    rigid = s.choice("preload_method").is_in("rigid")
    unstated = float(limits.get("rigid_unstated", 1.0))
    by_preload = np.where(rigid, s.choice("rigid_preload_class").map(kinds, default=unstated), 1.0)
    outer = s.choice("rotating_ring").is_in("outer")
    return [
        Correction("by_load", "f_load", "the load ratio C/P", np.where(np.isnan(ratio), 1.0, by_load)),
        Correction("by_share", "f_a", "the axial share of the load", np.where(deep & ~np.isnan(share), by_share, 1.0)),
        Correction("by_preload", "f_pre", "the rigid preload", by_preload),
        Correction("by_ring", "f_ring", "the rotating outer ring", np.where(outer, limits["outer_ring_factor"], 1.0)),
    ]


def design_corrections(view: View, limits: Limits) -> list[Correction]:
    """Factors between the general figure of a kind of bearing and one design: balls, seal, contact angle, class."""
    s = view.stations
    kind = s.choice("bearing_type")
    angular = kind.is_in("angular contact ball")
    ball = angular | kind.is_in(USUAL_TYPE) | ~kind.known
    by_balls = s.choice("ball_material").map(dict.fromkeys(HYBRID, float(limits["hybrid_factor"])), default=1.0)
    sealed = s.choice("closure").is_in("contact seal")
    by_angle = _by_angle(view, limits)
    by_class = s.choice("tolerance_class").map(
        {"P5": float(limits["class_p5"]), "P2": float(limits["class_p2"])}, default=1.0
    )
    return [
        Correction("by_balls", "f_ball", "the ball material", np.where(ball, by_balls, 1.0)),
        Correction("by_seal", "f_seal", "the contact seal", np.where(sealed, limits["contact_seal_factor"], 1.0)),
        Correction("by_angle", "f_α", "the contact angle", np.where(angular & ~np.isnan(by_angle), by_angle, 1.0)),
        Correction("by_class", "f_class", "the tolerance class", np.where(angular, by_class, 1.0)),
    ]


def _by_angle(view: View, limits: Limits) -> Floats:
    """Factor for the contact angle: of spindle bearings, and of ordinary ones where the rulebook has them apart."""
    s = view.stations
    spindle = np.interp(contact_angle(view), limits["angles"], limits["angle_factors"])
    if limits.get("angles_ordinary") is None:
        return spindle
    angle = s.number("contact_angle")
    spindle = np.interp(angle, limits["angles"], limits["angle_factors"])
    ordinary = np.interp(angle, limits["angles_ordinary"], limits["angle_factors_ordinary"])
    return np.where(s.choice("tolerance_class").is_in("P5", "P4", "P2"), spindle, ordinary)


def product(corrections: Sequence[Correction]) -> Floats:
    """All factors together, shape (rows,)."""
    return np.asarray(np.prod([c.values for c in corrections], axis=0), dtype=np.float64)


def factors_told(corrections: Sequence[Correction]) -> Callable[[int], str]:
    """The factors that are not 1, in words by row: ``, times 0.7 for the contact seal``; empty where there is none."""

    def tell(row: int) -> str:
        told = [f"{number_text(float(c.values[row]))} for {c.words}" for c in corrections if c.values[row] != 1.0]
        return f", times {' and '.join(told)}" if told else ""

    return tell


def light_load_assumed(view: View, limits: Limits) -> Assumes:
    """The assumption behind the load factor where loads or rating are not stated."""
    return Assumes(
        "radial_load",
        np.full(view.count, limits["load_ratios"][-1]),
        "C/P",
        "loads or rating not stated; the limit for light load (this C/P and more) stands in",
        np.isnan(load_ratio(view)),
    )


def unstated_assumed(view: View, limits: Limits) -> list[Assumes]:
    """What the factors of :func:`arrangement_corrections` take for loads and a class of preload not stated."""
    s = view.stations
    rigid = s.choice("preload_method").is_in("rigid") & ~s.choice("rigid_preload_class").known
    by_class = Assumes(
        "rigid_preload_class", np.full(view.count, "light", dtype=object), "",
        "not stated; a light one stands in", rigid & (limits.get("rigid_unstated") is not None),
    )  # fmt: skip
    return [light_load_assumed(view, limits), by_class]


def maker_speed(view: View, limits: Limits) -> Floats:
    """Limiting speed that the maker states, corrected for what his table does not contain [r/min]; NaN without one."""
    return view.stations.number("limiting_speed") * product(arrangement_corrections(view, limits))


def _rows_of(cell: str, choice: Choice, usual: str = "") -> Bools:
    """Rows that a cell of words (joined by ``; ``) is about; an empty cell is about all."""
    words = [word for word in cell.split("; ") if word]
    if not words:
        return np.ones(choice.codes.shape, dtype=bool)
    rows = choice.is_in(*(word for word in words if word in choice.words))
    return rows | ~choice.known if usual in words else rows


def by_bore(table: Mapping[str, NDArray[Any]], keys: Mapping[str, Choice], bore: Floats) -> tuple[Floats, Floats]:
    """Columns ``low`` and ``high`` of a limit table, interpolated between its rows over the bore.

    Parameters
    ----------
    table : table
        Columns of the names in ``keys`` (words joined by ``; ``, empty for all), ``bore`` [mm] (empty: any), ``low``
        and ``high``. Rows with the same words are the points of one curve, ascending in the bore and flat beyond its
        ends; a later curve goes before an earlier one.
    keys : dict of str to Choice
        What the rows say for each of these columns.
    bore : float array, shape (rows,)
        mm.

    Returns
    -------
    low, high : float array, shape (rows,)
        NaN where no curve is about the row.
    """
    cells = list(zip(*(map(_text, table[name]) for name in keys), strict=True))
    low, high = np.full(bore.shape, np.nan), np.full(bore.shape, np.nan)
    for curve in dict.fromkeys(cells):
        rows = np.ones(bore.shape, dtype=bool)
        for name, cell in zip(keys, curve, strict=True):
            rows &= _rows_of(cell, keys[name], USUAL_TYPE)
        if rows.any():
            points = [index for index, cell in enumerate(cells) if cell == curve]
            at = np.nan_to_num(table["bore"][points].astype(float))
            low[rows] = np.interp(bore[rows], at, table["low"][points].astype(float))
            high[rows] = np.interp(bore[rows], at, table["high"][points].astype(float))
    return low, high


def _text(cell: Any) -> str:
    return "" if isinstance(cell, float) else str(cell)
