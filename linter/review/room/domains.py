"""Where a value can move: words of a choice, classes of a seat, whole numbers, samples of a number's range."""

import numpy as np
from attrs import frozen

from linter.mechanics.limits import classes_for, deviations_or_nan, it_value_or_nan
from linter.model.columns import Floats
from linter.model.stations import Stations
from linter.model.vocabulary import Parameter, parameter, vocabulary

#: Grades of the classes that a seat is tried with (ISO 286-1 has them for every size; seats of rolling bearings lie
#: within them, common practice).
GRADES = range(3, 10)
LETTERS = ("f", "g", "h", "js", "j", "k", "m", "n", "p", "r")
#: Samples of a number's range: near the present value, and from there to the ends of what the parameter can be.
NEAR, FAR, WITHIN = 96, 24, 30.0
#: Whole numbers are tried one by one up to here.
MOST_COUNTED = 60


@frozen(order=True)
class Cell:
    """One value of a machine: a parameter, and the row of the machine that it stands in (0 for one of the whole)."""

    name: str
    row: int

    @property
    def whole(self) -> bool:
        """Whether it stands in every row of the machine."""
        return parameter(self.name).level == "machine"


def kind_of(cell: Cell) -> str:
    """How a cell moves: ``choice``, ``class``, ``count`` or ``number`` (a size by its nominal); empty for a text."""
    entry = parameter(cell.name)
    if entry.kind == "text":
        return ""
    if entry.kind == "choice":
        return "choice"
    if entry.change == "class":
        return "class"
    return "count" if entry.name == "ball_count" else "number"


def cells_of(stations: Stations, block: np.ndarray, names: tuple[str, ...] = ()) -> list[Cell]:
    """The cells of one machine that the table states; of named parameters the blank ones too.

    Parameters
    ----------
    stations : Stations
        As read.
    block : int array
        Rows of the machine.
    names : tuple of str
        Parameters wanted; every one that is stated where there are none.

    Returns
    -------
    list of Cell
        In the order of the vocabulary; a value that follows from a designation has no room of its own.
    """
    found = []
    for entry in vocabulary().values():
        if entry.kind == "text" or (names and entry.name not in names):
            continue
        for row in (0,) if entry.level == "machine" else range(len(block)):
            cell = Cell(entry.name, row)
            if names or states(stations, entry.name, int(block[row])):
                found.append(cell)
    return found


def states(stations: Stations, name: str, row: int) -> bool:
    """Whether the table itself states a parameter in a row: neither assumed nor derived."""
    if not stations.known(name)[row]:
        return False
    columns = (stations.assumed.get(name), stations.derived.get(name))
    return not any(column is not None and column.rows[row] for column in columns)


def classes_of(stations: Stations, name: str, row: int) -> dict[str, tuple[float, float, float, str]]:
    """The classes that a seat is tried with, each with nominal and deviations [mm]; the present one among them."""
    size = stations.size(name)
    ring = "outside_diameter" if name.startswith("housing") else "bore_diameter"
    nominal = float(size.nominal[row])
    if np.isnan(nominal):
        nominal = float(stations.number(ring)[row])
    if not nominal > 0:
        return {}
    hole = name.startswith("housing")
    letters = [letter.upper() if hole else letter for letter in LETTERS]
    words = [f"{letter}{grade}" for grade in GRADES for letter in letters]
    words += [word for word in classes_for("hole" if hole else "shaft") if word not in words]
    if size.tolerance_class[row] and size.tolerance_class[row] not in words:
        words.append(str(size.tolerance_class[row]))
    low, high = deviations_or_nan(np.array(words), nominal)
    known = zip(words, low / 1000.0, high / 1000.0, strict=True)
    found = {word: (nominal, float(a), float(b), word) for word, a, b in known if not np.isnan(a)}
    return dict(sorted(found.items(), key=lambda item: (sum(item[1][1:3]), item[1][2] - item[1][1], item[0])))


def samples(entry: Parameter, present: float, others: Floats) -> Floats:
    """Samples of a number's range, ascending.

    Parameters
    ----------
    entry : Parameter
        A number, or a size whose nominal is meant.
    present : float
        Present value, NaN for none.
    others : float array
        Values that clauses may compare it with, such as the other sizes of the machine; those in its range are sampled
        with a neighbour on either side.

    Returns
    -------
    float array
        Within what the parameter can be; with the present value, the steps of nominal sizes of ISO 286-1 for lengths.
    """
    least, most = float(entry.least), float(np.nextafter(entry.most, 0.0))
    parts = []
    if entry.unit in ("degC", "%", "deg") or entry.name.endswith("groove_ratio"):
        low, high = max(least, -100.0), min(most, 300.0)
        parts += [np.linspace(low, high, NEAR + FAR), [least, most]]
        if entry.name.endswith("groove_ratio"):
            parts.append(np.linspace(0.5, 0.6, NEAR))
    else:
        floor = least if least > 0 else 10.0 ** (np.floor(np.log10(most)) - 12.0)
        around = abs(present) if np.isfinite(present) and present != 0 else np.sqrt(floor * most)
        around = min(max(around, floor), most)
        wide = WITHIN if np.isfinite(present) and present != 0 else 1e4
        low, high = max(floor, around / wide), min(most, around * wide)
        sizes = np.concatenate(
            [np.geomspace(low, high, NEAR), np.geomspace(floor, low, FAR // 2), np.geomspace(high, most, FAR // 2)]
        )
        parts.append(sizes)
        if least <= 0:
            parts.append([0.0])
        if least < 0:
            parts.append(-sizes[sizes <= -least])
    if entry.unit == "mm":
        parts.append(_steps())
    near = others[np.isfinite(others)]
    parts += [near, near * (1 - 1e-6), near * (1 + 1e-6), [present]]
    values = np.unique(np.concatenate([np.asarray(part, dtype=float) for part in parts]))
    return values[np.isfinite(values) & (values >= least) & (values <= most)]


def _steps() -> Floats:
    """Upper ends of the ranges of nominal sizes of ISO 286-1, found where its grades step, with what lies beyond."""
    tried = np.arange(1.0, 500.5, 0.5)
    widths = it_value_or_nan(np.full(len(tried), 7), tried)
    ends = tried[:-1][np.diff(widths) > 0]
    return np.concatenate([ends, ends * (1 + 1e-6)])


def between(low: float, high: float, share: Floats) -> Floats:
    """Values between two, by equal ratios where both have one sign, else by equal steps; shares from 0 to 1."""
    if low > 0 and high > 0:
        return np.asarray(low * (high / low) ** share)
    if low < 0 and high < 0:
        return np.asarray(low * (high / low) ** share)
    return np.asarray(low + (high - low) * share)
