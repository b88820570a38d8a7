"""Chapter parts: washers, spacers and springs beside the rings."""

from collections.abc import Callable

import numpy as np

from linter.checks.shared.base import Assumes, Limits, Result, View, Working, ladder, within
from linter.checks.shared.bodies import diameters
from linter.checks.shared.two_sides import chamfer, sinking
from linter.mechanics import abutment
from linter.mechanics import attached_parts as parts
from linter.mechanics import limits as tolerances
from linter.mechanics.tolerance_chain import parse_chain
from linter.model.stations import Bools, Floats
from linter.model.wording import quantity_text

UM = 1000.0
INNER, OUTER = "inner ring", "outer ring"


def _beside(view: View, of: str) -> tuple[Floats, Floats]:
    """Inside and outside diameter of the part that bears on a ring [mm]."""
    s = view.stations
    return within(s.number(f"{of}_inside_diameter")), within(s.number(f"{of}_outside_diameter"))


def _on_inner(view: View, of: str) -> Bools:
    s = view.stations
    if of == "washer":
        return s.choice("washer_side").is_in(INNER)
    return s.choice("free_ring").is_in("inner")


def _gaps(view: View, of: str) -> tuple[Floats, Floats, Floats]:
    """Radial gap to the other ring's land, to the own land, and to the seat that it has to pass [mm].

    Negative where the parts overlap: on the inner ring the outside diameter against the outer ring's land and the
    inside against the shaft; on the outer ring the inside diameter against the inner ring's land and the outside
    against the bore.
    """
    s = view.stations
    inside, outside = _beside(view, of)
    d_1, big_d_1 = s.number("inner_ring_shoulder_diameter"), s.number("outer_ring_shoulder_diameter")
    inner = _on_inner(view, of)
    other = np.where(inner, 0.5 * (big_d_1 - outside), 0.5 * (inside - d_1))
    own = np.where(inner, 0.5 * (d_1 - outside), 0.5 * (inside - big_d_1))
    seat = np.where(inner, 0.5 * (inside - s.number("bore_diameter")), 0.5 * (s.number("outside_diameter") - outside))
    return other, own, seat


def _clear(view: View, limits: Limits, of: str, applies: Bools, reason: str) -> Result:
    """A part beside a ring passes its seat, keeps clear of the other ring and does not cover cage or seal."""
    s = view.stations
    other, own, seat = _gaps(view, of)
    room = within(0.5 * (s.number("outer_ring_shoulder_diameter") - s.number("inner_ring_shoulder_diameter")))
    wanted, least = limits["gap_wanted"] * room, limits["gap_least"] * room
    by_other = sinking(other, wanted, least)
    covers = own < -limits["cover"] * room
    closed = s.choice("closure").is_in("shield", "non-contact seal", "contact seal")
    by_cover = np.where(covers & closed, limits["seal_measure"], np.where(covers, limits["cage_measure"], 0.0))
    by_seat = np.where(seat < -limits["seat_room"], limits["seat_measure"], 0.0)
    known = ~np.isnan(other + seat + room)
    measure = np.where(known, np.fmax(np.fmax(by_other, by_cover), by_seat), np.nan)
    measure = np.where(~np.isnan(by_seat) & (by_seat > 0.0), np.fmax(measure, by_seat), measure)
    inner = _on_inner(view, of)
    worst = np.nan_to_num(measure)
    variant = np.select(
        [worst <= 1.0, by_seat >= worst, np.nan_to_num(by_other) >= worst, closed], ["", "seat", "", "seal"], "cage"
    )
    inside, outside = _beside(view, of)
    return Result(
        measure=measure,
        unit="mm",
        observed=np.select([variant == "seat", variant == ""], [seat, other], -own),
        lower=np.select([variant == "seat", variant == ""], [np.zeros(view.count), wanted], np.nan),
        upper=np.where((variant == "seal") | (variant == "cage"), limits["cover"] * room, np.nan),
        applies=applies,
        reason=reason,
        missing={
            f"{of}_inside_diameter": np.isnan(inside),
            f"{of}_outside_diameter": np.isnan(outside),
            "washer_side" if of == "washer" else "free_ring": ~s.choice(
                "washer_side" if of == "washer" else "free_ring"
            ).known,
            "inner_ring_shoulder_diameter": np.isnan(s.number("inner_ring_shoulder_diameter")),
            "outer_ring_shoulder_diameter": np.isnan(s.number("outer_ring_shoulder_diameter")),
            "bore_diameter": inner & np.isnan(s.number("bore_diameter")),
            "outside_diameter": ~inner & np.isnan(s.number("outside_diameter")),
        },
        variant=lambda: variant.astype(object),
        facts=lambda: {
            "ring": np.where(inner, INNER, OUTER).astype(object),
            "other": np.where(inner, OUTER, INNER).astype(object),
            "through": np.where(inner, "shaft", "housing").astype(object),
            "ways": _sizes(view, of, wanted),
        },
        working=lambda: [
            Working("inside", "", "inside diameter of the part", inside, "mm"),
            Working("outside", "", "outside diameter of the part", outside, "mm"),
            Working("inner_land", "d_1", "land of the inner ring", s.number("inner_ring_shoulder_diameter"), "mm"),
            Working("outer_land", "D_1", "land of the outer ring", s.number("outer_ring_shoulder_diameter"), "mm"),
            Working("room", "", "radial room between the lands", room, "mm", "(D_1 - d_1)/2"),
            Working("other_gap", "", "radial gap to the other ring", other, "mm"),
            Working("own_gap", "", "radial gap beyond the own land, negative where it covers cage or seal", own, "mm"),
            Working("seat_gap", "", "radial room in the seat", seat, "mm"),
            Working("gap_wanted", "", "gap wanted to the other ring", wanted, "mm", "share of the room"),
        ],
    )  # fmt: skip


def _sizes(view: View, of: str, wanted: Floats) -> Callable[[int], str]:
    """The diameter that keeps the part clear, in words by row."""
    s = view.stations
    inner = _on_inner(view, of)
    d_1, big_d_1 = s.number("inner_ring_shoulder_diameter"), s.number("outer_ring_shoulder_diameter")

    def make(row: int) -> str:
        bore, outside = (quantity_text(float(s.number(n)[row]), "mm") for n in ("bore_diameter", "outside_diameter"))
        if inner[row]:
            most = quantity_text(float(min(d_1[row], big_d_1[row] - 2.0 * wanted[row])), "mm")
            return f"{of}_outside_diameter {most} or less and {of}_inside_diameter {bore} or more"
        least = quantity_text(float(max(big_d_1[row], d_1[row] + 2.0 * wanted[row])), "mm")
        return f"{of}_inside_diameter {least} or more and {of}_outside_diameter {outside} or less"

    return make


def _has_washer(view: View) -> Bools:
    s = view.stations
    return s.known("washer_inside_diameter") | s.known("washer_outside_diameter") | s.choice("washer_side").known


def washer_clear(view: View, limits: Limits) -> Result:
    """A washer bears on its own ring only, passes its seat, and rubs neither the other ring nor the seal."""
    return _clear(view, limits, "washer", _has_washer(view), "no washer is stated here")


def spring_clear(view: View, limits: Limits) -> Result:
    """The preload spring, where no washer lies between, presses its own ring only and passes its seat."""
    s = view.stations
    stated = s.known("spring_inside_diameter") | s.known("spring_outside_diameter")
    here = stated & s.choice("axial_role").is_in("spring-loaded") & ~_has_washer(view)
    return _clear(view, limits, "spring", here, "no spring bears on a ring here")


def spring_guide(view: View, limits: Limits) -> Result:
    """Clearance of disc springs in the bore, or on the shaft, that guides them against the published one."""
    s = view.stations
    inside, outside = _beside(view, "spring")
    inner = _on_inner(view, "spring")
    guided = np.where(inner, inside, outside)
    clearance = np.where(inner, inside - s.number("bore_diameter"), s.number("outside_diameter") - outside)
    table = limits.table("clearances")
    at = np.searchsorted(table["up_to"], guided - 1e-9)
    published = np.append(table["clearance"], np.nan)[np.minimum(at, len(table["up_to"]))]
    here = s.choice("spring_kind").is_in("disc") & s.choice("axial_role").is_in("spring-loaded")
    here &= s.known("spring_inside_diameter") | s.known("spring_outside_diameter")
    return Result(
        measure=ladder(np.maximum(clearance, 0.0), published, limits["far"] * published),
        unit="mm",
        observed=clearance,
        upper=published,
        applies=here & ~(np.isnan(published) & ~np.isnan(guided)),
        reason="no disc spring of a stated and printed size bears on a ring here",
        missing={
            "spring_inside_diameter": inner & np.isnan(inside),
            "spring_outside_diameter": ~inner & np.isnan(outside),
            "bore_diameter": inner & np.isnan(s.number("bore_diameter")),
            "outside_diameter": ~inner & np.isnan(s.number("outside_diameter")),
        },
        facts={"guide": np.where(inner, "shaft", "housing").astype(object)},
        working=[
            Working("guided", "", "diameter of the spring at its guide", guided, "mm", "D_e, on the shaft D_i"),
            Working("clearance", "", "clearance at the guide", clearance, "mm"),
            Working("published", "", "published clearance", published, "mm", "table by diameter"),
        ],
    )


def washer_face(view: View, limits: Limits) -> Result:
    """Share of the height of the ring's face that the washer presses on."""
    s = view.stations
    bore, outer = diameters(view)
    inside, outside = _beside(view, "washer")
    inner = _on_inner(view, "washer")
    corner = np.fmax(abutment.chamfer_max(chamfer(view).value, bore)[0], chamfer(view).value)
    d_1, big_d_1 = s.number("inner_ring_shoulder_diameter"), s.number("outer_ring_shoulder_diameter")
    low = np.where(inner, bore + 2.0 * corner, big_d_1)
    high = np.where(inner, d_1, outer - 2.0 * corner)
    face = within(0.5 * (high - low))
    touched = 0.5 * (np.minimum(outside, high) - np.maximum(inside, low))
    share = 100.0 * np.maximum(touched, 0.0) / face
    return Result(
        measure=sinking(
            share, *(np.full(view.count, float(mark)) for mark in (limits["share_wanted"], limits["share_least"], 0.0))
        ),
        unit="%",
        observed=share,
        lower=np.full(view.count, float(limits["share_wanted"])),
        applies=_has_washer(view),
        reason="no washer is stated here",
        missing={
            "washer_inside_diameter": np.isnan(inside),
            "washer_outside_diameter": np.isnan(outside),
            "washer_side": ~s.choice("washer_side").known,
            "inner_ring_shoulder_diameter": inner & np.isnan(d_1),
            "outer_ring_shoulder_diameter": ~inner & np.isnan(big_d_1),
            "ring_chamfer": np.isnan(chamfer(view).value),
            "bore_diameter": np.isnan(bore),
            "outside_diameter": np.isnan(outer),
        },
        facts=lambda: {
            "ring": np.where(inner, INNER, OUTER).astype(object),
            "from_diameter": (low, "mm"),
            "to_diameter": (high, "mm"),
        },
        assumed=lambda: [chamfer(view).assumed],
        working=lambda: [
            Working("low", "", "face of the ring begins at", low, "mm", "d + 2 r_s max, or D_1"),
            Working("high", "", "face of the ring ends at", high, "mm", "d_1, or D - 2 r_s max"),
            Working("face", "", "height of the face", face, "mm"),
            Working("touched", "", "height that the washer touches", touched, "mm"),
            Working("share", "", "share of the face", share, "%"),
        ],
    )


def washer_thickness(view: View, limits: Limits) -> Result:
    """Whether the chain of dimensions that the spring length closes has a member of the washer's thickness."""
    s = view.stations
    thickness = within(s.number("washer_thickness"))
    texts = s.text("spacer_stack")
    nearest = np.full(view.count, np.nan)
    wanted = s.known("washer_thickness") & s.choice("axial_role").is_in("spring-loaded") & (texts != "")
    for row in np.flatnonzero(wanted):
        try:
            members = parse_chain(str(texts[row])).nominal
        except ValueError:  # told by the clause about the spring
            continue
        nearest[row] = members[np.argmin(np.abs(members - thickness[row]))]
    lacks = np.abs(nearest - thickness) > limits["same"] + 1e-9
    return Result(
        measure=np.where(np.isnan(nearest), np.nan, np.where(lacks, 1.0, 0.0)),
        unit="mm",
        observed=thickness,
        applies=wanted,
        reason="no washer of a stated thickness lies at a spring whose chain of dimensions is stated",
        missing={"spacer_stack": wanted & np.isnan(nearest)},
        facts=lambda: {"nearest": (nearest, "mm")},
        working=lambda: [
            Working("thickness", "", "thickness of the washer", thickness, "mm"),
            Working("nearest", "", "member of the chain that is nearest to it", nearest, "mm"),
        ],
    )


def washer_form(view: View, limits: Limits) -> Result:
    """Parallelism and flatness of a washer against the standard grade for the tolerance class of the bearing."""
    s = view.stations
    table = limits.table("grades")
    bore, outer = diameters(view)
    diameter = np.where(_on_inner(view, "washer"), bore, outer)
    words = s.choice("tolerance_class")
    ends = []
    for column in ("grade", "far_grade"):
        grade = words.map(
            {str(word): float(value) for word, value in zip(table["tolerance_class"], table[column], strict=True)}
        )
        found = np.full(view.count, np.nan)
        for one in sorted({*grade[~np.isnan(grade)].tolist()}):
            rows = grade == one
            found[rows] = tolerances.it_value_or_nan(f"IT{int(one)}", diameter[rows])
        ends.append(found)
    near, far = ends
    lines = [UM * within(s.number(f"washer_{name}"), closed=True) for name in ("parallelism", "flatness")]
    worst = np.fmax(*lines)
    tilt = 60.0 * np.degrees(1e-3 * parts.face_tilt(within(worst, closed=True), within(diameter)))
    return Result(
        measure=ladder(worst, near, far),
        unit="um",
        observed=worst,
        upper=near,
        applies=s.known("washer_parallelism") | s.known("washer_flatness"),
        reason="neither parallelism nor flatness of a washer is stated",
        missing={
            "tolerance_class": ~words.known,
            "washer_side": ~s.choice("washer_side").known,
            "bore_diameter": np.isnan(bore),
            "outside_diameter": np.isnan(outer),
        },
        variant=lambda: np.where(
            np.nan_to_num(lines[1], nan=-1.0) > np.nan_to_num(lines[0], nan=-1.0), "flat", ""
        ).astype(object),
        facts=lambda: {"tilt": (tilt, "arcmin"), "class": words.texts().astype(object)},
        assumed=lambda: [
            Assumes(name, 1e-3 * other, "mm", reason, ~s.known(name) & ~np.isnan(other))
            for name, other, reason in (
                ("washer_parallelism", lines[1], "not stated; the flatness of the washer stands in"),
                ("washer_flatness", lines[0], "not stated; the parallelism of the washer stands in"),
            )
        ],
        working=lambda: [
            Working("parallelism", "", "parallelism", lines[0], "um"),
            Working("flatness", "", "flatness", lines[1], "um"),
            Working("diameter", "", "diameter of the ring's seat", diameter, "mm"),
            Working("near", "", "grade for the class", near, "um", "table by tolerance class"),
            Working("far", "", "two grades coarser", far, "um", "the same table"),
            Working("tilt", "", "tilt of a ring clamped against it", tilt, "arcmin", "p/D"),
        ],
    )
