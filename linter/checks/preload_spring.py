"""Chapter preload: force and travel of the preload spring over the chain of dimensions."""

from collections.abc import Callable
from typing import Any

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.clearance import delivered_clearance
from linter.checks.shared.contacts import clearance_losses, contact
from linter.checks.shared.preload_band import band, installed_length, spring
from linter.checks.shared.preload_criteria import ball_positions, spring_target
from linter.checks.shared.quantities import contact_angle, static_load_rating
from linter.checks.shared.spring_length import ends, share_outside, stated_or
from linter.checks.shared.two_sides import sinking
from linter.mechanics import ball_bearing
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text


def _by_spring(view: View) -> Bools:
    method = view.stations.choice("preload_method")
    return view.to_machines(method.is_in("spring") | ~method.known)


def _not_spring(view: View) -> NDArray[Any]:
    none = view.to_machines(view.stations.choice("preload_method").is_in("none"))
    return np.where(none, "the bearings are not preloaded", "a rigid pair has no spring").astype(object)


def force(view: View, limits: Limits) -> Result:
    """Spring force over length and maker's tolerance against what is stated, else against the preload window."""
    s = view.stations
    length, found = installed_length(view), spring(view)
    low, high, bare = spring_target(view, limits)
    marks_low = (
        np.maximum(found.nominal - found.smallest, 1e-9),
        np.maximum(found.nominal - found.likely_smallest, 0.0),
    )
    marks_high = (
        np.maximum(found.largest - found.nominal, 1e-9),
        np.maximum(found.likely_largest - found.nominal, 0.0),
    )
    zero = np.zeros(view.machine_count)
    near = 1e-9 * found.nominal
    by_low = sinking(found.nominal - low + near, *marks_low, zero)
    by_high = sinking(high - found.nominal + near, *marks_high, zero)
    gap = np.where(length.by_chain, np.abs(length.closing - length.stated), np.nan)
    by_chain = np.where(gap > limits["chain_agreement"], limits["chain_measure"], 0.0)
    by_force = np.fmax(by_low, by_high)
    stated = ~np.isnan(view.to_machines(s.size("preload_force").nominal))
    weighed = np.where(stated, by_force, np.minimum(by_force, limits["window_measure"]))
    measure = np.where(np.isnan(by_force), np.nan, np.maximum(weighed, by_chain))
    closed = ~stated & (low > high)
    measure = np.where(closed, limits.get("closed_measure", np.nan), measure)
    chain_leads = (by_chain > by_force) & (by_force <= 2.0) & ~closed
    too_low = by_low >= by_high
    ends = {
        "worst": np.where(too_low, found.smallest, found.largest),
        "likely": np.where(too_low, found.likely_smallest, found.likely_largest),
    }
    observed = np.select([by_force > 3.0, by_force > 2.0], [found.nominal, ends["likely"]], ends["worst"])
    observed = np.where(chain_leads, length.closing, observed)
    word = np.select(
        [closed, chain_leads, by_force > 3.0, by_force > 2.0], ["closed", "chain", "nominal", "likely"], ""
    )
    usual = low / (1.0 - limits["usual_tolerance"])  # a spring of usual tolerance then just reaches the lower end
    centre = np.where(stated, 0.5 * (low + high), np.minimum(usual, np.sqrt(low * high)))
    rate, free = (view.to_machines(s.size(n).nominal) for n in ("spring_rate", "spring_free_length"))
    share = share_outside(view, low, high, limits)
    absent = {name: np.isnan(view.to_machines(s.size(name).nominal)) for name in ("spring_rate", "spring_free_length")}
    tolerance_known = ~np.isnan(length.half)
    return Result(
        measure=measure,
        unit="N",
        observed=np.where(chain_leads, np.nan, observed),
        lower=np.where(chain_leads, np.nan, low),
        upper=np.where(chain_leads, np.nan, high),
        applies=_by_spring(view),
        reason=lambda: _not_spring(view),
        missing={
            "preload_method": ~view.to_machines(s.choice("preload_method").known),
            **absent,
            "spring_installed_length": np.isnan(length.nominal),
            "spacer_stack": ~tolerance_known & ~np.isnan(length.nominal) | (length.problem != ""),
            "spring_load_tolerance": np.isnan(found.tolerance) & ~np.logical_or.reduce(list(absent.values())),
            "preload_force": np.isnan(low) | np.isnan(high),
        },
        variant=lambda: word.astype(object),
        facts=lambda: {
            "not_assessed": length.problem,
            "target": np.where(stated, "the preload that is stated", "the window of the two bearings").astype(object),
            "share": (share, "%"),
            "setting": _setting(found.nominal, centre, free - centre / rate, limits),
            "by_length": (0.5 * rate * (length.longest - length.shortest), "N"),
            "by_maker": (found.tolerance * found.nominal, "N"),
            "closing": (length.closing, "mm"),
            "stated_length": (length.stated, "mm"),
        },
        assumed=lambda: [_usual(view, bare, limits)],
        working=lambda: [
            Working("rate", "c", "spring rate", rate, "N/mm"),
            Working("free_length", "L_0", "free length", free, "mm"),
            Working("length", "L_1", "installed length", length.nominal, "mm", "as stated, else the chain"),
            Working("closing", "", "nominal closing dimension of the chain", length.closing, "mm"),
            Working("shortest", "L_1 min", "shortest, worst case", length.shortest, "mm", "chain, worst case"),
            Working("longest", "L_1 max", "longest, worst case", length.longest, "mm", "chain, worst case"),
            Working("half", "", "half width by root sum square", length.half, "mm", "√Σ(T/2)²"),
            Working("chain_problem", "", "why the chain could not be read", length.problem),
            Working("tolerance", "", "tolerance of the spring force", 100.0 * found.tolerance, "%", "plus and minus"),
            Working("force_nominal", "F_p", "nominal force", found.nominal, "N", "c (L_0 - L_1)"),
            Working("force_smallest", "", "smallest force, worst case", found.smallest, "N"),
            Working("force_largest", "", "largest force, worst case", found.largest, "N"),
            Working("likely_smallest", "", "smallest force, root sum square", found.likely_smallest, "N"),
            Working("likely_largest", "", "largest force, root sum square", found.likely_largest, "N"),
            Working("min_target", "", "lower end of what is wanted", low, "N"),
            Working("max_target", "", "upper end of what is wanted", high, "N"),
            Working("share", "", "share of assemblies outside, simulated", share, "%", "Monte Carlo, fixed seed"),
        ],
    )  # fmt: skip


def _setting(force: Floats, centre: Floats, length: Floats, limits: Limits) -> Callable[[int], str]:
    """What to do about the installed length, in words by machine: nothing where the force is central already."""

    def make(row: int) -> str:
        if abs(force[row] - centre[row]) <= limits["central"] * centre[row]:
            return "Leave the nominal spring_installed_length and narrow the spread"
        wanted = quantity_text(float(centre[row]), "N")
        if length[row] <= 0.0:
            return f"Choose a stiffer spring (spring_rate), which gives {wanted}"
        at = quantity_text(float(length[row]), "mm")
        return f"Set spring_installed_length to {at}, where the spring gives {wanted}"

    return make


def _usual(view: View, bare: Bools, limits: Limits) -> Assumes:
    percent = np.full(view.machine_count, 100.0 * limits["usual_tolerance"])
    reason = "stated without tolerance; the usual load tolerance of springs stands in, plus or minus"
    return Assumes("preload_force", percent, "%", reason, bare)


def _growth_told(view: View) -> NDArray[Any]:
    missing = "thermal growth not included, span, materials or temperatures missing"
    return np.where(np.isnan(ends(view).shorter), missing, "thermal growth included").astype(object)


def travel(view: View, limits: Limits) -> Result:
    """Share of the spring's travel that is used, at the longest and the shortest installed length."""
    s = view.stations
    length, at = installed_length(view), ends(view)
    free, free_low, free_high, shortest, longest = at.free, at.free_low, at.free_high, at.shortest, at.longest
    solid_size = s.size("spring_solid_length")
    solid = within(view.to_machines(solid_size.nominal))
    solid_high = stated_or(view.to_machines(solid_size.largest), solid)
    stroke = np.where(free > solid, free - solid, np.nan)
    most = np.where(free_high > solid_high, (free_high - shortest) / (free_high - solid_high), np.nan)
    least = np.where(free_low > solid_high, (free_low - longest) / (free_low - solid_high), np.nan)
    by_solid = ladder(np.maximum(most, 0.0), limits["solid_near"], limits["solid_far"], 1.0)
    unused = np.maximum(1.0 - least, 0.0)
    by_free = ladder(unused, 1.0 - limits["free_near"], 1.0 - limits["free_far"], 1.0)
    toward_free = by_free > by_solid
    inside = free - 0.5 * stroke
    return Result(
        measure=np.maximum(by_solid, by_free),
        unit="%",
        observed=100.0 * np.where(toward_free, least, most),
        lower=np.where(toward_free, 100.0 * limits["free_near"], np.nan),
        upper=np.where(toward_free, np.nan, 100.0 * limits["solid_near"]),
        applies=_by_spring(view),
        reason=lambda: _not_spring(view),
        missing={
            "preload_method": ~view.to_machines(s.choice("preload_method").known),
            "spring_free_length": np.isnan(free),
            "spring_solid_length": np.isnan(solid),
            "spring_installed_length": np.isnan(length.nominal),
            "spacer_stack": (np.isnan(length.half) & ~np.isnan(length.nominal)) | (length.problem != ""),
        },
        variant=lambda: np.where(toward_free, "free", "").astype(object),
        facts=lambda: {
            "not_assessed": length.problem,
            "end_length": (np.where(toward_free, longest, shortest), "mm"),
            "growth_told": _growth_told(view),
            "middle_length": (inside, "mm"),
        },
        working=lambda: [
            Working("free_length", "L_0", "free length", free, "mm"),
            Working("solid_length", "L_c", "solid length", solid, "mm"),
            Working("length", "L_1", "installed length", length.nominal, "mm"),
            Working("chain_problem", "", "why the chain could not be read", length.problem),
            Working("shorter", "", "change of the length by growth, least", at.shorter, "mm", "housing - shaft"),
            Working("longer", "", "change of the length by growth, largest", at.longer, "mm", "housing - shaft"),
            Working("shortest", "L_1 min", "shortest installed length", shortest, "mm", "worst case + growth"),
            Working("longest", "L_1 max", "longest installed length", longest, "mm", "worst case + growth"),
            Working("least", "", "travel used at the longest", 100.0 * least, "%", "(L_0 - L_1)/(L_0 - L_c)"),
            Working("most", "", "travel used at the shortest", 100.0 * most, "%", "(L_0 - L_1)/(L_0 - L_c)"),
        ],
    )  # fmt: skip


def disc_range(view: View, limits: Limits) -> Result:
    """Share of their cone height that disc springs are pressed by, as :func:`travel` with limits of their own."""
    kind = view.stations.choice("spring_kind")
    disc, known = view.to_machines(kind.is_in("disc")), view.to_machines(kind.known)
    found = travel(view, limits)
    assert found.applies is not None
    return evolve(
        found,
        applies=found.applies & (disc | ~known),
        reason=np.where(found.applies, "the spring is not a stack of disc springs", found.reason).astype(object),
        missing={"spring_kind": ~known, **found.missing},
    )


def axial_play(view: View, limits: Limits) -> Result:
    """Axial play of the two bearings against the deflection of the spring that has to take it up."""
    s = view.stations
    length, at = installed_length(view), ends(view)
    kind = s.choice("bearing_type")
    deep, grooves = kind.is_in("deep groove ball"), contact(view).distance
    loss = clearance_losses(view).fits
    _, delivered = delivered_clearance(view)
    clearance = np.maximum(delivered / 1000.0 - np.nan_to_num(loss), 0.0)
    by_clearance = ball_bearing.free_contact_angle(np.where(clearance <= 2.0 * grooves, clearance, np.nan), grooves)
    angle = np.where(deep, by_clearance, contact_angle(view))
    play = ball_bearing.free_endplay(angle, grooves)
    first, last = view.pair(play)
    pair = first + last
    deflection = np.maximum(at.free_low - at.longest, 0.0)
    near = limits["share"] * deflection
    used = np.where(deflection > 0.0, 100.0 * pair / deflection, np.nan)
    force = spring(view).nominal
    wanted = pair / limits["share"]

    def softer(row: int) -> str:
        if np.isnan(force[row]) or not wanted[row] > 0.0:
            return "spring_rate"
        stretched = at.free[row] - length.nominal[row] + wanted[row] - deflection[row]
        return f"spring_rate near {quantity_text(float(force[row] / stretched), 'N/mm')} for the same force"

    def some(rows: Bools) -> Bools:
        return view.to_machines(rows, "any")

    by_spring = _by_spring(view)
    ball = view.to_machines(ball_positions(view), "all")
    no_spring = "preload of roller bearings has other rules"
    one = view.station_count == 1
    mounted = 1000.0 * view.to_machines(np.where(deep, clearance, 0.0), "max", known=True)
    return Result(
        measure=ladder(pair, near, deflection),
        unit="mm",
        observed=pair,
        upper=near,
        applies=by_spring & ball,
        reason=lambda: np.where(by_spring, no_spring, _not_spring(view)).astype(object),
        missing={
            "preload_method": ~view.to_machines(s.choice("preload_method").known),
            "spring_free_length": np.isnan(at.free),
            "spring_installed_length": np.isnan(length.nominal),
            "spacer_stack": (np.isnan(length.half) & ~np.isnan(length.nominal)) | (length.problem != ""),
            "bearing_type": some(~kind.known),
            "ball_diameter": some(~s.known("ball_diameter")),
            "clearance_class": some(deep & ~s.known("clearance_class") & ~s.known("radial_clearance")),
            "contact_angle": some(~deep & kind.known & ~s.known("contact_angle")),
        },
        variant=lambda: np.where(pair > deflection, "lost", "").astype(object),
        facts=lambda: {
            "not_assessed": length.problem,
            "growth_told": _growth_told(view),
            "softer": softer,
            "wanted": (wanted, "mm"),
            "left": (100.0 - used, "%"),
        },
        assumed=lambda: [
            Assumes(
                "radial_clearance", mounted, "um",
                "seats or tolerance class not stated; the clearance before mounting stands in for the one mounted",
                some(deep & np.isnan(loss) & ~np.isnan(clearance)),
            ),
            Assumes(
                "station", np.full(view.machine_count, "two equal bearings", dtype=object), "",
                "one position stated; an equal bearing stands in for the other", one,
            ),
        ],
        working=lambda: [
            Working("clearance", "G_r", "largest radial clearance, mounted", mounted, "um", "as delivered, less fits"),
            Working("first", "", "axial play, first bearing", first, "mm", "2 A sin α_0, cos α_0 = 1 - G_r/(2 A)"),
            Working("last", "", "axial play, last bearing", last, "mm", "2 A sin α_0, cos α_0 = 1 - G_r/(2 A)"),
            Working("pair", "", "axial play of both", pair, "mm", "sum"),
            Working("free_low", "L_0 min", "smallest free length", at.free_low, "mm"),
            Working("longest", "L_1 max", "longest installed length", at.longest, "mm", "worst case + growth"),
            Working("deflection", "", "least deflection of the spring", deflection, "mm", "L_0 min - L_1 max"),
            Working("used", "", "share of it that the play takes", used, "%"),
        ],
    )  # fmt: skip


def axial_demand(view: View, limits: Limits) -> Result:
    """A spring holds the preload but not the place of the rotor: what the machine asks of it axially."""
    s = view.stations
    demand = s.choice("axial_demand")
    asked = view.to_machines(
        demand.map(
            {"none": 0.0, "stiffness": limits["stiffness"], "reversing load": limits["reversing"],
             "shock": limits["shock"]}
        )
    )  # fmt: skip
    reversing = view.to_machines(demand.is_in("reversing load"))
    pull = view.to_machines(np.abs(s.number("axial_load")), "max", known=True)
    upper = band(view).smallest / limits["disturbance_factor"]
    held = reversing & (pull <= upper * (1.0 + 1e-9))
    words = view.to_machines(demand.texts())
    return Result(
        measure=np.where(held, limits["reversing_held"], asked),
        unit="N",
        observed=np.where(reversing, pull, np.nan),
        upper=np.where(reversing, upper, np.nan),
        applies=_by_spring(view),
        reason=lambda: _not_spring(view),
        missing={
            "preload_method": ~view.to_machines(s.choice("preload_method").known),
            "axial_demand": ~view.to_machines(demand.known),
        },
        variant=lambda: np.select(
            [held, reversing & (pull > upper), words == "stiffness", words == "shock"],
            ["held", "beyond", "stiffness", "shock"],
            "",
        ).astype(object),
        facts=lambda: {"preload_wanted": (limits["disturbance_factor"] * pull, "N")},
        assumed=lambda: [a for a in band(view).assumed if a.parameter == "preload_force"],
        working=lambda: [
            Working("demand", "", "what the machine asks axially", words),
            Working("axial", "F_a", "largest axial load", pull, "N"),
            Working("force_smallest", "F_p min", "smallest preload", band(view).smallest, "N"),
            Working("held_up_to", "", "axial load that the preload holds", upper, "N", "F_p min/factor"),
        ],
    )  # fmt: skip


def solid(view: View, limits: Limits) -> Result:
    """Force of the spring pressed solid, as it may be at assembly, against the static rating."""
    s = view.stations
    method = s.choice("preload_method")
    rate, free, shut = (
        within(s.size(name).nominal) for name in ("spring_rate", "spring_free_length", "spring_solid_length")
    )
    rating = static_load_rating(view).value
    force = rate * within(free - shut, closed=True)
    near, far = limits["near"] * rating, limits["far"] * rating
    return Result(
        measure=ladder(force, near, far),
        unit="N",
        observed=force,
        upper=near,
        applies=method.is_in("spring") | ~method.known,
        reason=lambda: np.where(
            method.is_in("none"), "the bearings are not preloaded", "a rigid pair has no spring"
        ).astype(object),
        missing={
            "preload_method": ~method.known,
            "spring_rate": np.isnan(rate),
            "spring_free_length": np.isnan(free),
            "spring_solid_length": np.isnan(shut),
            "static_rating": np.isnan(rating),
        },
        facts=lambda: {"share": (force / rating, "1")},
        working=lambda: [
            Working("rate", "c", "spring rate", rate, "N/mm"),
            Working("free_length", "L_0", "free length", free, "mm"),
            Working("solid_length", "L_c", "solid length", shut, "mm"),
            Working("force", "F_c", "force of the spring pressed solid", force, "N", "c (L_0 - L_c)"),
            Working("rating", "C_0", "static rating", rating, "N"),
            Working("limit_near", "", "share of C_0, near end", near, "N"),
            Working("limit_far", "", "share of C_0, far end", far, "N"),
        ],
    )  # fmt: skip
