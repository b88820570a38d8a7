"""One parameter as columns of a pandas frame, and back. pandas comes with the frame: nothing here imports it."""

from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from linter.mechanics.limits import deviations_or_nan
from linter.model.columns import Choice, Floats, Toleranced
from linter.model.vocabulary import Parameter, vocabulary

if TYPE_CHECKING:
    import pandas as pd

Column = Floats | Toleranced | Choice | NDArray[Any]


def by_machine(frame: "pd.DataFrame") -> tuple["pd.DataFrame", NDArray[np.intp], tuple[str, ...]]:
    """The rows of a frame with those of one machine together, the machine of each, and the machines' names.

    Raises
    ------
    ValueError
        For a column that is no parameter, no row or no column ``station``, and two rows of one station.
    """
    sized = [entry.name for entry in vocabulary().values() if entry.kind == "toleranced"]
    allowed = {*vocabulary(), *(f"{name}_{end}" for name in sized for end in ("lower", "upper", "class"))}
    if unknown := [str(name) for name in frame.columns if name not in allowed]:
        raise ValueError(f"columns that are no parameters: {', '.join(unknown)}; schemas/vocabulary.csv has them all")
    if "station" not in frame.columns or not len(frame):
        raise ValueError("expected at least one row and a column 'station'")
    if "machine" not in frame.columns:
        frame = frame.assign(machine="M")
    codes, machines = frame["machine"].astype(str).factorize()
    order = np.argsort(codes, kind="stable")
    frame, codes = frame.iloc[order], codes[order]
    if frame.assign(machine=codes).duplicated(["machine", "station"]).any():
        raise ValueError("two rows are the same station of the same machine")
    return frame, codes.astype(np.intp), tuple(map(str, machines))


def to_columns(name: str, column: Column) -> dict[str, NDArray[Any]]:
    """The columns of a frame that one parameter makes; words and classes that are absent are None."""
    if isinstance(column, Toleranced):
        return {
            name: column.nominal,
            f"{name}_lower": column.lower,
            f"{name}_upper": column.upper,
            f"{name}_class": _or_none(column.tolerance_class),
        }
    if isinstance(column, Choice):
        return {name: _or_none(column.texts())}
    return {name: _or_none(column) if column.dtype == object else column}


def _or_none(words: NDArray[Any]) -> NDArray[Any]:
    found = words.copy()
    found[words == ""] = None
    return found


def from_columns(entry: Parameter, frame: "pd.DataFrame") -> Column:
    """One parameter out of a frame.

    Raises
    ------
    ValueError
        For a value that is no number, or no word of a choice; the text names column and row.
    """
    if entry.kind == "number":
        return _numbers(frame, entry.name, entry.unit)
    if entry.kind == "text":
        return _words(frame, entry.name)
    if entry.kind == "choice":
        code = {word: k for k, word in enumerate(entry.choices)} | {"": -1}
        stated = _words(frame, entry.name)
        for row, word in enumerate(stated):
            if word not in code:
                where = f"column {entry.name}, row {frame.index[row]}"
                raise ValueError(f"{where}: read {word!r}; expected one of {', '.join(entry.choices)}")
        return Choice(entry.choices, np.array([code[word] for word in stated], dtype=np.int8))
    nominal, lower, upper = (_numbers(frame, f"{entry.name}{end}", entry.unit) for end in ("", "_lower", "_upper"))
    classes = _words(frame, f"{entry.name}_class")
    low, high = deviations_or_nan(classes.astype(str), nominal)
    absent = np.isnan(lower) & np.isnan(upper)
    lower, upper = np.where(absent, low / 1000.0, lower), np.where(absent, high / 1000.0, upper)
    return Toleranced(nominal, lower, upper, classes)


def _numbers(frame: "pd.DataFrame", name: str, unit: str) -> Floats:
    if name not in frame.columns:
        return np.full(len(frame), np.nan)
    try:
        return np.asarray(frame[name].astype(float), dtype=float)
    except (TypeError, ValueError) as error:
        raise ValueError(f"column {name}: {error}; expected numbers in {unit}") from None


def _words(frame: "pd.DataFrame", name: str) -> NDArray[Any]:
    if name not in frame.columns:
        return np.full(len(frame), "", dtype=object)
    absent = frame[name].isna()
    return np.array(["" if no else str(word) for word, no in zip(frame[name], absent, strict=True)], dtype=object)
