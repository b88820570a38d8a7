"""Values to try for what is blank: preferred numbers, printed classes and heights, springs that fit the case.

Facts of the application (speed, load, temperature, span, mass, materials, lubrication) are not among them: they are
asked for. Which of the values serves is judged by the whole rulebook.
"""

import math
from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from attrs import frozen

from linter.checks.shared.base import View
from linter.checks.shared.preload_band import installed_length
from linter.checks.shared.seat_classes import recommended
from linter.mechanics.limits import it_value_or_nan
from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.review.room.domains import Cell, classes_of
from linter.rulebook.model import Limits, Rulebook

#: Rounded preferred numbers, series R''10 (from memory of ISO 497:1973).
ROUNDED = (1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0)
#: Preferred numbers, series R20 (from memory of ISO 3:1973).
R20 = (1.0, 1.12, 1.25, 1.4, 1.6, 1.8, 2.0, 2.24, 2.5, 2.8, 3.15, 3.55, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1, 8.0, 9.0)
#: Values of Ra, um (from memory of ISO 1302:2002).
ROUGHNESS = (3.2, 1.6, 0.8, 0.4, 0.2, 0.1, 0.05)
#: Fillets, mm (common practice: radii that inserts and wheels have).
FILLETS = (2.5, 2.0, 1.6, 1.5, 1.2, 1.0, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2, 0.15, 0.1, 0.08, 0.05, 0.03)
#: Axial floats, mm, the usual ones first (common practice).
FLOATS = (0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 0.15, 0.1, 1.0, 1.5, 2.0)
#: Spring preload of small motors, N per mm of bore (SKF, preloading with springs: 5 to 10).
FORCE_PER_BORE = 7.0
#: The finest grade that is proposed where no table prints a finer one (common practice: ground and finely bored seats).
FINEST_GRADE = 5
#: Tolerance of a spring's force and rate as a share (common practice; DIN 2095 class 2 lies about there, from memory).
SPRING_SHARE = 0.1
#: Tolerance of the stated preload as a share (common practice: rate and both lengths together).
FORCE_SHARE = 0.2

#: A value to try: as :func:`linter.review.plan.trials.put` takes it, and its text.
Offer = tuple[Any, str]
Offers = Callable[["Bench", Cell], Sequence[Offer]]


@frozen(eq=False)
class Bench:
    """One machine as far as it is known: what is stated, and what was proposed before."""

    stations: Stations
    rulebook: Rulebook

    def number(self, name: str, row: int) -> float:
        """A number, or the nominal of a size; NaN where it is not known."""
        if parameter(name).kind == "toleranced":
            return float(self.stations.size(name).nominal[row])
        return float(self.stations.number(name)[row])

    @property
    def installed(self) -> float:
        """Installed length of the spring, by the chain of dimensions where one is stated; NaN where it is not known."""
        found = installed_length(View(self.stations))
        return float(found.mean[0]) if bool(found.by_chain[0]) else self.number("spring_installed_length", 0)

    @property
    def by_chain(self) -> bool:
        """Whether a chain of dimensions says the installed length."""
        return bool(installed_length(View(self.stations)).by_chain[0])

    def word(self, name: str, row: int) -> str:
        """The word of a choice; empty where it is not known."""
        choice = self.stations.choice(name)
        return choice.words[int(choice.codes[row])] if choice.codes[row] >= 0 else ""


def words(name: str, order: Sequence[str]) -> Offers:
    """The words of a choice in an order."""
    choices = parameter(name).choices

    def offers(bench: Bench, cell: Cell) -> Sequence[Offer]:
        return [(choices.index(word), word) for word in order]

    return offers


def roles(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """The first position locates, the second carries the spring, or floats where there is none."""
    method = bench.word("preload_method", cell.row)
    others = [bench.word("axial_role", r) for r in range(len(bench.stations)) if r != cell.row]
    if method == "rigid":
        order = ["cross-located", "locating", "floating", "spring-loaded"]
    elif "locating" in others or (cell.row > 0 and not any(others)):
        order = ["floating", "spring-loaded"] if method == "none" else ["spring-loaded", "floating"]
        order += ["locating", "cross-located"]
    else:
        order = ["locating", "spring-loaded", "floating", "cross-located"]
    return words("axial_role", order)(bench, cell)


def printed_classes(bench: Bench, cell: Cell) -> list[str]:
    """Classes that published tables print for the case.

    The rulebook's first one, then by the number of sources; of equal ones that nearest to the first.
    """
    side = cell.name.partition("_")[0]
    clause = bench.rulebook.clauses.get(f"fit.{side}-class")
    known = classes_of(bench.stations, cell.name, cell.row)
    if clause is None or not known:
        return []
    advice = recommended(View(bench.stations), Limits(clause), side)
    votes = {word: count for word, count in advice.votes(cell.row).items() if word in known and count > 0}
    first = str(advice.first[cell.row])
    if first not in known:
        first = max(votes, key=lambda w: votes[w], default="")
    middle = sum(known[first][1:3]) if first else 0.0
    ordered = sorted(votes, key=lambda w: (-votes[w], round(abs(sum(known[w][1:3]) - middle), 7), w))
    return list(dict.fromkeys([first, *ordered])) if first else ordered


def classes(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Published classes for the case, then others by their distance from the first of them."""
    known = classes_of(bench.stations, cell.name, cell.row)
    first = printed_classes(bench, cell)
    low, high = known[first[0]][1:3] if first else (0.0, 0.0)
    usual = split_class(first[0])[1] if first else 6
    grades = (usual, usual + 1, max(usual - 1, FINEST_GRADE))
    rest = [word for word in known if word not in first and split_class(word)[1] in grades]
    rest.sort(key=lambda w: (round(abs(known[w][1] - low) + abs(known[w][2] - high), 7), w))
    return [(known[word], word) for word in [*first, *rest[:40]]]


def split_class(word: str) -> tuple[str, int]:
    """Letter and grade of a tolerance class."""
    letter = word.rstrip("0123456789")
    return letter, int(word[len(letter) :] or 0)


def _series(values: Sequence[float], decades: Sequence[int]) -> Sequence[float]:
    return sorted({float(f"{v * 10.0**d:.4g}") for d in decades for v in values})


def forms(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Tolerances of form and run-out from the coarsest on: IT7 of the outside diameter down to half a micrometre."""
    outside = float(np.nanmax([1.0, *bench.stations.number("outside_diameter")]))
    coarsest = float(it_value_or_nan(7, outside)) / 1000.0
    return [(v, f"{v:g}") for v in reversed(_series(ROUNDED, (-4, -3, -2))) if 0.0005 <= v <= coarsest]


def listed(values: Sequence[float]) -> Offers:
    """Numbers of a list, in its order."""

    def offers(bench: Bench, cell: Cell) -> Sequence[Offer]:
        return [(v, f"{v:g}") for v in values]

    return offers


def shoulders(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Diameters of the abutment, to a tenth of a millimetre (half a tenth below 10 mm): the printed height first.

    The height is that of the rulebook's table for the ring chamfer; without a chamfer 0.2 of the bearing's section.
    """
    d, outside = bench.number("bore_diameter", cell.row), bench.number("outside_diameter", cell.row)
    if not 0 < d < outside:
        return []
    step = 0.05 if d < 10 else 0.1 if outside - d < 40 else 0.5
    width = 0.05 if d < 10 else 0.1
    half = 0.5 * (outside - d)
    heights = step * np.arange(1, int(0.7 * half / step) + 1)
    if len(heights) > 120:
        heights = heights[:: math.ceil(len(heights) / 120)]
    shaft = cell.name.startswith("shaft")
    printed = printed_height(bench, cell)
    target = printed if printed > 0 else 0.2 * half
    # the tolerance takes half of itself from the height
    heights = heights[np.lexsort((heights, np.round(np.abs(heights - target - 0.5 * width), 6)))]
    sizes = [round(float(d + 2 * h if shaft else outside - 2 * h), 4) for h in heights]
    lower, upper = (-width, 0.0) if shaft else (0.0, width)
    return [
        ((v, lower, upper, ""), f"{v:g} {'0/' + format(lower, 'g') if shaft else format(upper, '+g') + '/0'}")
        for v in sizes
    ]


def printed_height(bench: Bench, cell: Cell) -> float:
    """The height of an abutment that tables print for the ring chamfer [mm]; NaN where they do not."""
    clause = bench.rulebook.clauses.get(f"shoulder.{cell.name.partition('_')[0]}-height")
    chamfer, kind = bench.number("ring_chamfer", cell.row), bench.word("bearing_type", cell.row) or "deep groove ball"
    for table in clause.tables.values() if clause is not None else ():
        if {"bearing_type", "rs_min", "strict"} <= set(table.columns):
            columns = table.arrays
            rows = (columns["bearing_type"] == kind) & (np.abs(columns["rs_min"] - chamfer) < 1e-6)
            if rows.any():
                return float(columns["strict"][rows][0])
    return math.nan


def _sized(values: Sequence[float], share: float, least: float, digits: int = 3) -> Sequence[Offer]:
    """Sizes with a tolerance that is a share of them, at least so much."""
    found = []
    for value in values:
        width = max(round(share * value, digits), least)
        found.append(((value, -width, width, ""), f"{value:g} \u00b1{width:g}"))
    return found


def floats(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Axial floats with a quarter of them as tolerance, 0.05 mm at least."""
    return _sized(FLOATS, 0.25, 0.05, 2)


def forces(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Forces of the spring: what spring and lengths give, else the usual force for the bore; both sides of it."""
    rate, free = bench.number("spring_rate", 0), bench.number("spring_free_length", 0)
    installed = bench.installed
    given = rate * (free - installed)
    bore = float(np.nanmax([0.0, *bench.stations.number("bore_diameter")]))
    target = given if given > 0 else FORCE_PER_BORE * bore
    if not target > 0:
        return []
    values = _series(R20, range(math.floor(math.log10(target)) - 2, math.floor(math.log10(target)) + 3))
    near = [v for v in values if 0.02 <= v / target <= 50]
    if given > 0:
        near.sort(key=lambda v: (abs(math.log(v / target)), v))
    return _sized(near, FORCE_SHARE, 0.01)


def rates(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Rates that give the force at the lengths; without lengths a soft spring, pressed by a share of the ring width."""
    force = bench.number("preload_force", 0)
    press = bench.number("spring_free_length", 0) - bench.installed
    if not press > 0:
        press = _press(bench)
    if not (force > 0 and press > 0):
        return []
    target = force / press
    values = _series(R20, range(math.floor(math.log10(target)) - 1, math.floor(math.log10(target)) + 2))
    near = sorted(
        (v for v in values if 0.1 <= v / target <= 10), key=lambda v: (round(abs(math.log(v / target)), 9), v)
    )
    return _sized(near, SPRING_SHARE, 0.001)


def _press(bench: Bench) -> float:
    """By how much the spring is pressed where nothing says it: 0.6 of the ring width, 1 mm at least.

    Common practice: well above what tolerances and growth take of it.
    """
    width = float(np.nanmax([0.0, *bench.stations.number("ring_width")]))
    return max(1.0, round(0.6 * width, 1)) if width > 0 else math.nan


def installed(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Installed lengths: what force, rate and free length give, else about the ring width."""
    if bench.by_chain:
        value = round(bench.installed, 4)
        return [((value, -0.1, 0.1, ""), f"{value:g} \u00b10.1")]
    free, width = bench.number("spring_free_length", 0), float(np.nanmax([0.0, *bench.stations.number("ring_width")]))
    press = bench.number("preload_force", 0) / bench.number("spring_rate", 0)
    given = free - press
    solid = bench.number("spring_solid_length", 0)
    usual = 1.25 * solid if solid > 0 else width  # a spring that is stated keeps a fifth of its length as travel
    target = given if given > max(solid, 0.0) or (given > 0 and math.isnan(solid)) else usual
    if not target > 0:
        return []
    first = round(target, 2) if target == given else round(target, 1)
    values = [first, *(round(first * share, 1) for share in (1.1, 0.9, 1.25, 1.5, 0.8, 2.0))]
    return [((v, -0.1, 0.1, ""), f"{v:g} \u00b10.1") for v in dict.fromkeys(values)]


def free(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Free lengths: the installed length and what the force presses the spring by."""
    installed, rate = bench.installed, bench.number("spring_rate", 0)
    press = bench.number("preload_force", 0) / rate if rate > 0 else math.nan
    if not (installed > 0 and press > 0):
        return []
    first = round(installed + press, 2)
    values = [first, *(round(first + k * 0.05 * press, 2) for k in (1, -1, 2, -2, 4, -4))]
    return [((v, -0.1, 0.1, ""), f"{v:g} \u00b10.1") for v in dict.fromkeys(values)]


def solid(bench: Bench, cell: Cell) -> Sequence[Offer]:
    """Lengths of the spring pressed solid, as shares of the installed length."""
    installed = bench.installed
    if not installed > 0:
        return []
    values = dict.fromkeys(round(installed * share, 1) for share in (0.6, 0.5, 0.4, 0.3, 0.7, 0.2))
    return [((v, -0.1, 0.1, ""), f"{v:g} \u00b10.1") for v in values]
