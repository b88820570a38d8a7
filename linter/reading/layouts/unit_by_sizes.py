"""The unit of sizes that carry none, by the bearing that is designated beside them.

A designation has one bore and one outside diameter (ISO 15). A seat or ring beside it whose figure is that diameter in
mm is stated in mm, and one whose figure is it in inches is stated in inches; no other unit comes near. So do deviations
beside a class: those of ISO 286-1 in mm (``30 | +0.011 | +0.002 | k5``).
"""

import re
from collections import defaultdict
from collections.abc import Container, Iterator, Mapping, Sequence

import numpy as np
from attrs import evolve

from linter.mechanics.limits import classes_for, deviations_or_nan
from linter.model.stations import Problem
from linter.model.vocabulary import parameter
from linter.reading.cells.units import conversion, known_unit
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.words.designations import read_designation
from linter.reading.words.part_evidence import RING_OF_SEAT

#: The ring whose size a seat has, or the ring itself.
RINGS_LIKE = RING_OF_SEAT | {ring: ring for ring in RING_OF_SEAT.values()}
_FIGURE = re.compile(
    r"\s*[Ø⌀øφΦϕ∅Ф]?\s*(\d*[.,]?\d+)(?![\d.,])\s*"
    r"(?:(?:JS|js|[A-Za-z])\d.*|[+\-±(].*|(?:[~～〜–—…至/]|\.\.\.?|bis|to|до|a)\s*[Ø⌀øφΦϕ∅Ф]?\s*\d.*)?"
)
#: A seat is within this share of its ring (common practice: far more than any fit).
_SAME = 0.01
#: Seats and the kind of their classes, and how many of them prove a unit.
_SEATS, _ENOUGH_SEATS = {"shaft_seat_diameter": "shaft", "housing_seat_diameter": "hole"}, 3
#: Shoulders lie between the seats of shaft and housing.
_SHOULDERS = ("shaft_shoulder_diameter", "housing_shoulder_diameter")
_INCH = 25.4
_UNITS = (("mm", 1.0), ("in", _INCH))
_MOST_ROWS = 2000
_SIGNED = re.compile(r"[+\-−]?\d*[.,]?\d+")
_WITH_CLASS = re.compile(r"(?<![A-Za-z])(?:JS|js|[A-Za-z])\d{1,2}(?!\d)")
_CLASS = re.compile(r"(?:JS|js|[A-Za-z]{1,2})\d{1,2}")
#: A size with its deviations in one cell, with its class or without (``Ø25 k5 (+0.011/+0.002)``, ``52 +0.013/-0.006``).
_IN_CELL = re.compile(
    r"\s*[Ø⌀øφΦϕ∅Ф]?\s*(?P<size>\d*[.,]?\d+)\s*(?P<class>(?:JS|js|[A-Za-z])\d{1,2})?\s*[(\[]?\s*"
    r"(?P<one>0|[+\-−]\s?\d*[.,]?\d+)\s?[/|;\s]\s?(?P<other>0|[+\-−]\s?\d*[.,]?\d+)\s*[)\]]?\s*"
)
#: Deviations are written to whole or half micrometres.
_ROUNDED = 0.6
#: Sizes that lie between those of a seat and a ring: figures beyond are in another unit, or a form tolerance in µm.
_OF_SIZES = (
    "_diameter",
    "_width",
    "_radius",
    "_chamfer",
    "bearing_span",
    "_free_length",
    "_installed_length",
    "_solid_length",
)
#: Limits of form and run-out in mm (common practice).
_MOST_FORM = 0.2


#: Shaft and housing seat in mm by machine and station.
_Between = Mapping[tuple[str, str], tuple[float, float]]


def unit_by_sizes(found: Found, file: str) -> None:
    """Give the lengths of a table without a unit the one that the designations in it show; told as an assumption."""
    designated, between = _designated(found), _between(found)
    for block in found.blocks:
        if block.length_unit:
            continue
        if any(s.unit and known_unit(s.unit) for s in block.strips if _is_size(s)):
            _beside_others(block, designated, between, found, file)
            continue
        by_ring, by_class = set(_votes(block.strips, block, designated)), set(_votes_of_classes(block))
        by_class = by_class or set(_votes_of_limits(block))
        votes = by_ring | by_class
        unit = {"mm": "mm", "in": "in"}.get("".join(votes), "") if len(votes) == 1 else ""
        strips = [_with_unit(strip, unit) for strip in block.strips] if unit else []
        changed = [k for k, strip in enumerate(strips) if strip.unit != block.strips[k].unit and len(strip.cells)]
        if not changed:
            _shoulders_between_seats(block, between, found, file)
            continue
        _tell(found, file, strips[changed[0]], unit, by_ring=bool(by_ring))
        block.strips[:] = strips


def _beside_others(
    block: Block, designated: dict[tuple[str, str, str], float], between: _Between, found: Found, file: str
) -> None:
    """Seats and rings without a unit beside lengths that carry one: each by the diameter of its own bearing alone.

    A seat with a class is in mm as it stands (ISO 286-1).
    """
    classed = {strip.parameter for strip in block.strips if strip.aspect == "tolerance"}
    shoulders = any(strip.parameter in _SHOULDERS and not strip.unit for strip in block.strips)
    for k, strip in enumerate(block.strips):
        if unit := _unit_of_limits(strip, block):
            block.strips[k] = evolve(strip, unit=unit)  # a nominal that lies at its two limits is stated as they are
            continue
        in_cells = any(_WITH_CLASS.search(cell_text(cell)) for cell in strip.cells[:_MOST_ROWS].tolist())
        if strip.unit or not _is_length(strip) or strip.parameter in classed or in_cells:
            continue
        votes = set(_votes([strip], block, designated))
        unit = {"mm": "mm", "in": "in"}.get("".join(votes), "") if len(votes) == 1 else ""
        if unit:
            block.strips[k] = evolve(strip, unit=unit)
            _tell(found, file, block.strips[k], unit, by_ring=True)
            between = _between(found) if shoulders and strip.parameter in _SEATS else between
    _shoulders_between_seats(block, between, found, file)


def _shoulders_between_seats(block: Block, between: _Between, found: Found, file: str) -> None:
    """Shoulders without a unit are in mm where each lies between the seats of its position in mm."""
    for k, strip in enumerate(block.strips):
        if strip.parameter in _SHOULDERS and not strip.unit and _lie_between(strip, block, between):
            block.strips[k] = evolve(strip, unit="mm")
            _tell(found, file, block.strips[k], "mm", by_ring=True)


def _unit_of_limits(strip: Strip, block: Block) -> str:
    """The unit of the limits beside a nominal without one, where each figure lies at those of its row; or empty."""
    if strip.unit or strip.own_unit or strip.aspect != "value" or parameter(strip.parameter).kind != "toleranced":
        return ""
    limits: dict[tuple[int, str], tuple[str, float]] = {}
    for other in block.strips:
        if other.parameter == strip.parameter and other.aspect in ("min", "max") and known_unit(other.unit):
            for row, cell in zip(other.rows[:_MOST_ROWS].tolist(), other.cells[:_MOST_ROWS].tolist(), strict=True):
                if (figure := _FIGURE.fullmatch(cell_text(cell))) is not None:
                    limits[row, other.aspect] = other.unit, float(figure[1].replace(",", "."))
    units: set[str] = set()
    for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
        figure, both = _FIGURE.fullmatch(cell_text(cell)), [limits.get((row, aspect)) for aspect in ("min", "max")]
        if figure is None or None in both:
            return ""
        size = float(figure[1].replace(",", "."))
        near = [limit[0] for limit in both if limit is not None and abs(limit[1] - size) <= _SAME * size]
        units.update(near if len(near) == 2 else ("", "other"))
    return units.pop() if len(units) == 1 else ""


def _between(found: Found) -> _Between:
    """Shaft and housing seat of each position in mm, where both carry that unit or a class."""
    seats: dict[tuple[str, str], dict[str, float]] = defaultdict(dict)
    for block in found.blocks:
        classed = {strip.parameter for strip in block.strips if strip.aspect == "tolerance"}
        for strip in (s for s in block.strips if s.parameter in _SEATS and s.aspect in ("value", "max")):
            for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
                text = cell_text(cell)
                figure = _FIGURE.fullmatch(text)
                with_class = strip.parameter in classed or _WITH_CLASS.search(text) is not None
                of_mm = conversion(strip.unit, "mm") == 1.0 if strip.unit else with_class
                if figure is not None and of_mm:
                    place = block.machines[row], block.stations[row]
                    seats[place][strip.parameter] = float(figure[1].replace(",", "."))
    both = {at: (own.get("shaft_seat_diameter"), own.get("housing_seat_diameter")) for at, own in seats.items()}
    return {at: (inner, outer) for at, (inner, outer) in both.items() if inner and outer and inner < outer}


def _lie_between(strip: Strip, block: Block, between: _Between) -> bool:
    """Whether every shoulder of a column lies between the seats of its position, as figures in mm do."""
    rows, cells = strip.rows[:_MOST_ROWS].tolist(), map(cell_text, strip.cells[:_MOST_ROWS].tolist())
    places = ((block.machines[row], block.stations[row]) for row in rows)
    figures = [(at, _FIGURE.fullmatch(text)) for at, text in zip(places, cells, strict=True) if text.strip()]
    inside = [
        f is not None and at in between and between[at][0] < float(f[1].replace(",", ".")) < between[at][1]
        for at, f in figures
    ]
    return strip.aspect == "value" and not strip.own_unit and len(inside) > 0 and all(inside)


def _tell(found: Found, file: str, first: Strip, unit: str, *, by_ring: bool) -> None:
    """The assumption of a unit, at the first cell that it is taken for."""
    place, expected = first.place(file, 0), "a length with its unit"
    if by_ring:
        message = (
            f"{place}: lengths stand without a unit; {unit} is taken, as the seats and rings have the diameters of "
            f"the bearings in it; expected {expected}."
        )
    else:
        message = (
            f"{place}: lengths stand without a unit; {unit} is taken, as the deviations are those of their classes "
            f"in it; expected {expected}."
        )
    read = visible(cell_text(first.cells[0]))
    found.problems.append(Problem("assumption", None, first.parameter, place, read, expected, message, "length-unit"))


def _designated(found: Found) -> dict[tuple[str, str, str], float]:
    """Bore and outside diameter in mm of the bearings designated, by machine, station and parameter."""
    return {
        (block.machines[row], block.stations[row], ring): size
        for block in found.blocks
        for row, ring, size in designated(block)
    }


def designated(block: Block) -> Iterator[tuple[int, str, float]]:
    """Row, parameter and size in mm of the rings of the bearings that the rows of a block designate."""
    for strip in (s for s in block.strips if s.parameter == "bearing_designation" and s.aspect == "value"):
        for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
            derived = read_designation(cell_text(cell)).derived
            yield from ((row, ring, float(derived[ring].value)) for ring in RING_OF_SEAT.values() if ring in derived)


def _is_length(strip: Strip) -> bool:
    return parameter(strip.parameter).unit == "mm"


def _is_size(strip: Strip) -> bool:
    """Whether a strip holds sizes; a unit beside forms and run-outs alone says nothing of those."""
    return _is_length(strip) and (strip.parameter.endswith(_OF_SIZES) or strip.aspect != "value")


def _size_of(designated: Mapping[tuple[str, str, str], float], machine: str, station: str, ring: str) -> float | None:
    """The size of the ring at a position; also where one name of the position holds the other (``前``, ``前轴承``)."""
    if (exact := designated.get((machine, station, ring))) is not None or not station:
        return exact
    alike = [
        size
        for (of_machine, name, of_ring), size in designated.items()
        if of_machine == machine and of_ring == ring and name and (name in station or station in name)
    ]
    return alike[0] if len(alike) == 1 else None


def _votes(strips: Sequence[Strip], block: Block, designated: dict[tuple[str, str, str], float]) -> Iterator[str]:
    """The unit in which each seat and ring has the diameter of its bearing; ``other`` where it has it in neither."""
    for strip in strips:
        ring = RINGS_LIKE.get(strip.parameter)
        if ring is None or strip.aspect not in ("value", "min", "max") or strip.own_unit:
            continue
        for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
            size = _size_of(designated, block.machines[row], block.stations[row], ring)
            figure = _FIGURE.fullmatch(cell_text(cell))
            if size is None or figure is None:
                continue
            value = float(figure[1].replace(",", "."))
            near = {unit for unit, one in _UNITS if abs(value * one - size) <= _SAME * size}
            yield near.pop() if near else "other"


def _votes_of_classes(block: Block) -> Iterator[str]:
    """The unit in which the deviations of a size are those of its class (ISO 286-1); ``other`` where in neither."""
    stated: dict[tuple[str, int], dict[str, str]] = defaultdict(dict)
    units: dict[tuple[str, str], float] = {}
    for strip in block.strips:
        if parameter(strip.parameter).kind == "toleranced" and _is_length(strip) and not strip.own_unit:
            if strip.unit and (factor := conversion(strip.unit, "mm")) is not None:
                units[strip.parameter, strip.aspect] = factor
            for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
                stated[strip.parameter, row].setdefault(strip.aspect, cell_text(cell).strip())
    for tolerance, nominal, lower, upper in filter(None, map(_with_deviations, _cells_of_seats(block))):
        if tolerance:  # deviations of whole numbers are in micrometres: the size is in mm
            near = [u for u, one in _UNITS if _are_of_class(tolerance, nominal * one, lower * one, upper * one)]
            micro = _are_of_class(tolerance, nominal, 1e-3 * lower, 1e-3 * upper)
            yield from near[:1] or (["mm"] if micro else [])
    for (name, _), of_size in stated.items():
        if not {"value", "tolerance", "upper", "lower"} <= of_size.keys() or not _CLASS.fullmatch(of_size["tolerance"]):
            continue
        figures = [_signed(of_size[aspect]) for aspect in ("value", "lower", "upper")]
        if None in figures:
            continue
        nominal, lower, upper = (float(f or 0.0) for f in figures)
        near = [
            unit
            for unit, one in _UNITS
            if _are_of_class(
                of_size["tolerance"],
                nominal * one,
                lower * units.get((name, "lower"), one),
                upper * units.get((name, "upper"), one),
            )
        ]
        yield near[0] if near else "other"


def _votes_of_limits(block: Block) -> Iterator[str]:
    """Mm where the limits of every seat are those of a class at a size of whole millimetres, of three seats or more.

    The deviations beside each size in its cell may say the limits.
    """
    stated: dict[tuple[str, int], dict[str, str]] = defaultdict(dict)
    for strip in block.strips:
        if strip.parameter in _SEATS and strip.aspect in ("min", "max") and not strip.own_unit:
            for row, cell in zip(strip.rows[:_MOST_ROWS].tolist(), strip.cells[:_MOST_ROWS].tolist(), strict=True):
                stated[strip.parameter, row].setdefault(strip.aspect, cell_text(cell).strip())
    seats = []
    for (name, _), limits in stated.items():
        low, high = _signed(limits.get("min", "")), _signed(limits.get("max", ""))
        if low is None or high is None:
            return
        seats.append((_SEATS[name], low, high))
    if not seats:
        in_cells = [
            (_SEATS[strip.parameter], _with_deviations(cell_text(cell)))
            for strip in block.strips
            if _states_seats(strip, _SEATS)
            for cell in strip.cells[:_MOST_ROWS].tolist()
        ]
        said = [(kind, size + low, size + high) for kind, cell in in_cells if cell for _, size, low, high in [cell]]
        seats = said if len(said) == len(in_cells) else []
    if len(seats) >= _ENOUGH_SEATS and all(_are_limits_of_class(*seat) for seat in seats):
        yield "mm"


def _states_seats(strip: Strip, names: Container[str]) -> bool:
    return strip.parameter in names and strip.aspect == "value" and not (strip.own_unit or strip.unit)


def _cells_of_seats(block: Block, names: Container[str] = _SEATS) -> Iterator[str]:
    """The texts that state whole seats without a unit beside them."""
    for strip in block.strips:
        if _states_seats(strip, names):
            yield from map(cell_text, strip.cells[:_MOST_ROWS].tolist())


def _with_deviations(text: str) -> tuple[str, float, float, float] | None:
    """The class (or empty), the size and both deviations that one cell states; None where it does not."""
    found = _IN_CELL.fullmatch(text)
    if found is None:
        return None
    size, one, other = (_signed(found[name].replace(" ", "")) or 0.0 for name in ("size", "one", "other"))
    return found["class"] or "", size, min(one, other), max(one, other)


def _are_limits_of_class(kind: str, low: float, high: float) -> bool:
    """Whether two limits are those of a class in use at the whole number beside them."""
    nominal = float(round((low + high) / 2))
    return nominal > 0 and any(
        _are_of_class(name, nominal, low - nominal, high - nominal) for name in classes_for(kind)
    )


def _are_of_class(tolerance: str, nominal: float, lower: float, upper: float) -> bool:
    """Whether deviations in mm are those of a class at a size in mm."""
    return bool(np.allclose(deviations_or_nan(tolerance, nominal), (1e3 * lower, 1e3 * upper), rtol=0.0, atol=_ROUNDED))


def _signed(text: str) -> float | None:
    """A number that may carry a sign, or that of a diameter; None for any other text."""
    text = text.lstrip("Ø⌀øφΦϕ∅Ф ")
    return float(text.replace(",", ".").replace("−", "-")) if _SIGNED.fullmatch(text) else None


def _with_unit(strip: Strip, unit: str) -> Strip:
    """The strip in the unit, where it is a length that carries none and whose figures are usual ones in it."""
    if not _is_length(strip) or strip.unit or strip.own_unit or strip.aspect not in ("value", "min", "max"):
        return strip
    if strip.parameter.endswith(_OF_SIZES):
        return evolve(strip, unit=unit)
    figures = [_FIGURE.fullmatch(text) for cell in strip.cells.tolist() if (text := cell_text(cell))]
    most = _MOST_FORM / (_INCH if unit == "in" else 1.0)
    usual = figures and all(f is not None and float(f[1].replace(",", ".")) <= most for f in figures)
    return evolve(strip, unit=unit) if usual else strip
