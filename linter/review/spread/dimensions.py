"""What is drawn at random: every tolerance that a table states, and the rings and clearances that its classes give.

One-sided tolerances of form, position and run-out stay at their limit in every draw.
"""

from collections.abc import Sequence
from typing import Literal

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from linter.checks.shared.base import View
from linter.checks.shared.clearance import delivered_clearance
from linter.checks.shared.seat_fits import housing_fit, shaft_fit
from linter.mechanics.tolerance_chain import Chain, parse_chain
from linter.model.columns import Choice, Floats, Toleranced
from linter.model.stations import Stations
from linter.model.vocabulary import parameter, vocabulary

Shape = Literal["normal", "rectangular"]
#: Parts that a table gives by their class only, and what they are called.
RINGS = {"ring_bore": "bore of the inner ring", "ring_outside": "outside diameter of the outer ring"}
#: The maker's tolerance of the spring's force, and the chain of dimensions that its installed length closes.
_FORCE, _CHAIN = "spring_load_tolerance", "spacer_stack"
#: Sizes that these two stand in for.
_BY_FORCE, _BY_CHAIN = ("spring_rate", "spring_free_length"), ("spring_installed_length",)
_ALWAYS = ("radial_clearance", "spring_installed_length")
_SEATS = {"ring_bore": (shaft_fit, "bore_diameter"), "ring_outside": (housing_fit, "outside_diameter")}


@frozen
class Dimension:
    """One dimension of one machine with its tolerance.

    Attributes
    ----------
    name : str
        Parameter, or ``ring_bore``, ``ring_outside``; a member of the chain is ``spacer_stack.1`` and so on.
    row : int or None
        Row of the machine's stations, from 0; None for a dimension of the machine.
    station : str
        Name of that station, empty for a dimension of the machine.
    nominal, lower, upper : float
        Nominal value and limits of deviation, in ``unit``.
    unit : str
        Unit of all three.
    source : str
        ``stated``, ``class`` of the bearing.
    """

    name: str
    row: int | None
    station: str
    nominal: float
    lower: float
    upper: float
    unit: str
    source: str

    @property
    def words(self) -> str:
        """What it is called in a sentence."""
        words = RINGS.get(self.name, self.name.replace("_", " "))
        if self.name.startswith(_CHAIN):
            words = f"member {self.name.rpartition('.')[2]} ({self.nominal:g} mm) of the spring's chain of dimensions"
        elif self.name == _FORCE:
            words = "force of the spring"
        return f"{words} at {self.station}" if self.station else words

    @property
    def key(self) -> str:
        """What a list of measured values calls it: ``name`` or ``name@station``."""
        return f"{self.name}@{self.station}" if self.station else self.name


def dimensions(machine: Stations) -> list[Dimension]:
    """Every dimension of a machine that has a tolerance of more than nothing.

    Parameters
    ----------
    machine : Stations
        The rows of one machine.

    Returns
    -------
    list of Dimension
        In the order of the vocabulary, then rings. A size by class takes the class's deviations as the reading settled
        them; the radial clearance is that of its group where none is stated.
    """
    names = machine.text("station")
    chain, force = _chain(machine), float(machine.number(_FORCE)[0])
    by_force = force > 0 and bool(machine.known("spring_rate")[0] and machine.known("spring_free_length")[0])
    passed = (*(_BY_CHAIN if chain is not None else ()), *(_BY_FORCE if by_force else ()))
    found = []
    for entry in vocabulary().values():
        if entry.kind != "toleranced" or entry.name in passed:
            continue
        size = machine.size(entry.name)
        whole = entry.level == "machine"
        for row in range(1 if whole else len(machine)):
            low, high, nominal = (float(v[row]) for v in (size.lower, size.upper, size.nominal))
            if np.isfinite(nominal) and high > low:
                place, station = (None, "") if whole else (row, str(names[row]))
                found.append(Dimension(entry.name, place, station, nominal, low, high, entry.unit, "stated"))
    if chain is not None:
        for k, (nominal, low, high) in enumerate(zip(chain.nominal, chain.lower, chain.upper, strict=True), start=1):
            if high > low:
                name = f"{_CHAIN}.{k}"
                found.append(Dimension(name, None, "", float(nominal), float(low), float(high), "mm", "stated"))
    if by_force:
        found.append(Dimension(_FORCE, None, "", 100.0, -force, force, "%", "stated"))
    view = View(machine)
    low_clearance, high_clearance = delivered_clearance(view)
    stated = machine.known("radial_clearance")
    for at in np.flatnonzero((high_clearance > low_clearance) & ~stated):
        low, high = float(low_clearance[at]), float(high_clearance[at])
        found.append(
            Dimension("radial_clearance", int(row), str(names[at]), low, 0.0, high - low, "um", "class")
        )  # fmt: skip
    for name, (of_seat, diameter) in _SEATS.items():
        fit = of_seat(view)
        for row in np.flatnonzero(fit.ring_upper > fit.ring_lower).tolist():
            nominal = float(machine.number(diameter)[row])
            low, high = float(fit.ring_lower[row]), float(fit.ring_upper[row])
            found.append(Dimension(name, row, str(names[row]), nominal, low, high, "um", "class"))
    return found


def _chain(machine: Stations) -> Chain | None:
    """The chain of dimensions that closes on the spring's installed length; None without one that can be read."""
    text = str(machine.text(_CHAIN)[0])
    try:
        return parse_chain(text) if text else None
    except ValueError:
        return None


def draw(
    dims: Sequence[Dimension],
    count: int,
    rng: np.random.Generator,
    shape: Shape = "normal",
    cp: float = 4.0 / 3.0,
    samples: dict[str, Floats] | None = None,
) -> Floats:
    """Random deviations of every dimension.

    Parameters
    ----------
    dims : sequence of Dimension
        What to draw.
    count : int
        How many assemblies.
    rng : numpy.random.Generator
        Where the numbers come from.
    shape : {"normal", "rectangular"}
        Normal about the middle of the tolerance with a standard deviation of tolerance/(6 cp), or evenly within it.
    cp : float
        Process capability C_p = tolerance/(6 sigma) (ISO 22514-1, from memory).
    samples : dict of str to float array, optional
        Measured deviations by :attr:`Dimension.key`, drawn from with replacement in the place of the shape.

    Returns
    -------
    float array, shape (dimensions, count)
        Deviations from the nominal in the unit of each dimension.
    """
    out = np.empty((len(dims), count))
    for line, dim in zip(out, dims, strict=True):
        if samples and dim.key in samples:
            line[:] = rng.choice(samples[dim.key], size=count)
        elif shape == "normal":
            line[:] = rng.normal(0.5 * (dim.lower + dim.upper), (dim.upper - dim.lower) / (6.0 * cp), size=count)
        else:
            line[:] = rng.uniform(dim.lower, dim.upper, size=count)
    return out


def assemblies(machine: Stations, dims: Sequence[Dimension], deviations: Floats) -> Stations:
    """Copies of a machine, each dimension at its drawn value and without a tolerance.

    Parameters
    ----------
    machine : Stations
        The rows of one machine.
    dims : sequence of Dimension
        What is set; every other value stays.
    deviations : float array, shape (dimensions, count)
        Deviations from each nominal.

    Returns
    -------
    Stations
        ``count`` machines of as many rows as the one given.
    """
    rows, count = len(machine), deviations.shape[1]
    index = np.tile(np.arange(rows), count)
    numbers = {name: values[index] for name, values in machine.numbers.items()}
    texts = {name: values[index] for name, values in machine.texts.items()}
    sizes = {name: machine.size(name).take(index) for name in (*machine.toleranced, *_ALWAYS)}
    measured: dict[str, tuple[Floats, Floats]] = {}
    if (chain := _chain(machine)) is not None:
        _fix(sizes["spring_installed_length"], slice(None), np.full(len(index), float(chain.sign @ chain.nominal)))
        texts[_CHAIN] = np.full(len(index), "", dtype=object)
    for dim, values in zip(dims, deviations, strict=True):
        at: slice | NDArray[np.intp] = slice(None) if dim.row is None else np.arange(dim.row, len(index), rows)
        drawn = np.repeat(values, rows) if dim.row is None else values
        if dim.name in RINGS:
            band = measured.setdefault(dim.name, (np.full(len(index), np.nan), np.full(len(index), np.nan)))
            band[0][at] = band[1][at] = drawn
        elif dim.name == _FORCE:
            sizes["spring_rate"].nominal[at] *= 1.0 + drawn / 100.0
            numbers[_FORCE] = np.zeros(len(index))
        elif dim.name.startswith(_CHAIN):
            assert chain is not None
            sizes["spring_installed_length"].nominal[at] += chain.sign[int(dim.name.rpartition(".")[2]) - 1] * drawn
        elif parameter(dim.name).change == "class":  # of a seat the nominal is that of its bearing
            sizes[dim.name].lower[at] = sizes[dim.name].upper[at] = drawn
        else:
            _fix(sizes[dim.name], at, dim.nominal + drawn)
    return Stations(
        machines=tuple(map(str, range(count))),
        machine_row=np.repeat(np.arange(count, dtype=np.intp), rows),
        numbers=numbers,
        toleranced=sizes,
        choices={name: Choice(c.words, c.codes[index]) for name, c in machine.choices.items()},
        texts=texts,
        assumed={name: type(a)(a.rows[index], a.reason) for name, a in machine.assumed.items()},
        derived={name: column.take(index) for name, column in machine.derived.items()},
        measured=measured,
    )


def _fix(size: Toleranced, at: slice | NDArray[np.intp], values: Floats) -> None:
    """Set a size to values without a tolerance."""
    size.nominal[at] = values
    size.lower[at] = size.upper[at] = 0.0
