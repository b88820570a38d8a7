"""What a table states of the seats that a drawing has to say: one record for each characteristic, with its limits."""

import csv
import math
from collections.abc import Collection, Mapping
from functools import cache
from pathlib import Path

import numpy as np
from attrs import frozen

from linter.model.stations import Stations
from linter.model.vocabulary import parameter
from linter.model.wording import number_text, rounded, unit_text, words_of
from linter.report.sheet.symbols import DIAMETER, ENVELOPE, SIGNS

#: Parameters of a position that the drawing of its seats states, in the order of the sheet, with their kind.
SEATS: Mapping[str, str] = {
    "housing_outer_diameter": "outside size",
    "housing_seat_diameter": "inside size",
    "housing_seat_cylindricity": "cylindricity",
    "housing_seat_runout": "total run-out",
    "housing_seat_roughness": "roughness",
    "housing_shoulder_diameter": "inside size",
    "housing_shoulder_runout": "axial run-out",
    "housing_fillet_radius": "radius",
    "housing_undercut_width": "undercut",
    "housing_undercut_depth": "undercut",
    "housing_undercut_radius": "undercut",
    "shaft_seat_diameter": "outside size",
    "shaft_seat_cylindricity": "cylindricity",
    "shaft_seat_runout": "total run-out",
    "shaft_seat_roughness": "roughness",
    "shaft_shoulder_diameter": "outside size",
    "shaft_shoulder_runout": "axial run-out",
    "shaft_fillet_radius": "radius",
    "shaft_undercut_width": "undercut",
    "shaft_undercut_depth": "undercut",
    "shaft_undercut_radius": "undercut",
    "shaft_bore": "inside size",
}
#: Parameters of the whole machine that stand on the drawing of the rotor, the housing or the assembly.
WHOLE: Mapping[str, str] = {
    "coaxiality_of_shaft_seats": "coaxiality",
    "coaxiality_of_bores": "coaxiality",
    "bearing_span": "length",
    "axial_float": "length",
    "spring_installed_length": "length",
    "spring_free_length": "length",
    "spring_rate": "rate",
    "preload_force": "force",
}
#: Kinds whose one value is the largest that is allowed.
LARGEST = ("cylindricity", "total run-out", "axial run-out", "coaxiality", "roughness", "radius")
#: Letters of datums: I, O, Q and X are left out, as ISO 5459 advises (from memory of it).
LETTERS = "ABCDEFGHJKLMNPRSTUVWYZ"


@frozen
class Characteristic:
    """One characteristic of the drawing.

    Attributes
    ----------
    parameter, machine, station : str
        What it is; ``station`` is empty for one of the whole machine.
    row : int
        Row of the stations.
    kind : str
        As in :data:`SEATS`.
    nominal, lower, upper : float or None
        Nominal with its deviations, of a kind in :data:`LARGEST` all None.
    tolerance_class : str
        ISO 286 class, empty where none is stated.
    least, most : float or None
        Limits; one of them or both None where the table gives none.
    unit : str
        Canonical unit.
    drawn : str
        How it stands on the drawing.
    datums : str
        What it refers to, empty for nothing.
    means : str
        Suggested means of inspection; empty where no tolerance is stated.
    proposed : bool
        True for a start value that the table does not state.
    """

    parameter: str
    machine: str
    station: str
    row: int
    kind: str
    nominal: float | None
    lower: float | None
    upper: float | None
    tolerance_class: str
    least: float | None
    most: float | None
    unit: str
    drawn: str
    datums: str = ""
    means: str = ""
    proposed: bool = False

    @property
    def name(self) -> str:
        """The characteristic in words."""
        return words_of(self.parameter)

    @property
    def sign(self) -> str:
        """Its sign as a character (ISO 1101), ``⌀``, ``R``, ``Ra``, or empty."""
        if self.kind.endswith(" size"):
            return DIAMETER
        return SIGNS.get(self.kind, {"roughness": "Ra", "radius": "R"}.get(self.kind, ""))


def stated_rows(stations: Stations, name: str) -> np.ndarray:
    """Rows whose table states a parameter itself: neither assumed nor derived; shape (rows,), bool."""
    rows = stations.known(name).copy()
    if name in stations.assumed:
        rows &= ~stations.assumed[name].rows
    if name in stations.derived:
        rows &= ~stations.derived[name].rows
    return rows


def datum_letters(stations: Stations, row: int) -> tuple[str, str, str, str]:
    """Letters of the datums of a row: its shaft seat, all shaft seats together, its bore, all bores together."""
    rows = np.flatnonzero(stations.machine_row == stations.machine_row[row]).tolist()
    count, at = len(rows), rows.index(row)
    names = [_letter(k) for k in range(2 * count)]
    shaft, housing = names[:count], names[count:]
    return shaft[at], "-".join(shaft), housing[at], "-".join(housing)


def _letter(number: int) -> str:
    again, at = divmod(number, len(LETTERS))
    return LETTERS[at] * (again + 1)


def characteristics_of(
    stations: Stations,
    row: int,
    *,
    envelope: Collection[tuple[str, int]] | bool = False,
    proposed: Collection[tuple[str, int]] = (),
) -> list[Characteristic]:
    """The stated characteristics of one row, those of the whole machine last.

    Parameters
    ----------
    stations : Stations
        As read.
    row : int
        The row.
    envelope : bool or collection of (str, int)
        Whether the envelope requirement is written behind the seats; or the parameters, with their rows, behind which
        the table has it.
    proposed : collection of (str, int)
        Parameters, with their rows, that hold start values.

    Returns
    -------
    list of Characteristic
        Only what the table states (or what is proposed).
    """
    found = []
    _, shafts, _, housings = datum_letters(stations, row)
    for name, kind in {**SEATS, **WHOLE}.items():
        if not stated_rows(stations, name)[row] or (kind != "length" and _is_nothing(stations, name, row)):
            continue
        datums = ""
        if kind in ("total run-out", "axial run-out"):
            datums = shafts if name.startswith("shaft") else housings
        elif kind == "coaxiality":
            datums = (shafts if "shaft" in name else housings).partition("-")[0]
        enveloped = name.endswith("seat_diameter") and (
            envelope if isinstance(envelope, bool) else (name, row) in envelope
        )
        found.append(_characteristic(stations, name, kind, row, datums, enveloped, (name, row) in proposed))
    return found


def _is_nothing(stations: Stations, name: str, row: int) -> bool:
    """Whether a number says that the feature is not there: the bore of a solid shaft, the fillet of an undercut."""
    return parameter(name).kind == "number" and float(stations.number(name)[row]) == 0.0


def _characteristic(
    stations: Stations, name: str, kind: str, row: int, datums: str, envelope: bool, proposed: bool
) -> Characteristic:
    entry = parameter(name)
    nominal = lower = upper = least = most = None
    tolerance_class = ""
    if entry.kind == "toleranced":
        size = stations.size(name)
        nominal = rounded(float(size.nominal[row]))
        lower, upper = (None if math.isnan(v[row]) else rounded(float(v[row])) for v in (size.lower, size.upper))
        tolerance_class = str(size.tolerance_class[row])
        least = None if lower is None else rounded(nominal + lower)
        most = None if upper is None else rounded(nominal + upper)
    elif kind in LARGEST:
        most = rounded(float(stations.number(name)[row]))
    else:
        nominal = rounded(float(stations.number(name)[row]))
    drawn = drawn_text(kind, nominal, lower, upper, tolerance_class, most, entry.unit, datums)
    width = most if kind in LARGEST else None if least is None or most is None else most - least
    return Characteristic(
        name, stations.machines[int(stations.machine_row[row])],
        "" if entry.level == "machine" else str(stations.text("station")[row]), row, kind, nominal, lower, upper,
        tolerance_class, least, most, entry.unit, f"{drawn} {ENVELOPE}" if envelope else drawn, datums,
        "" if width is None else means_of(kind, width), proposed,
    )  # fmt: skip


def drawn_text(
    kind: str, nominal: float | None, lower: float | None, upper: float | None, tolerance_class: str,
    most: float | None, unit: str, datums: str,
) -> str:  # fmt: skip
    """A characteristic as the drawing writes it: ``⌀4 h5 (0/−0.005)``, ``⌰ 0.003 A-B``, ``Ra 0.4``, ``R max 0.15``."""
    if kind in LARGEST:
        value = number_text(most if most is not None else math.nan, "mm" if unit == "mm" else unit)
        lead = {"roughness": "Ra ", "radius": "R max ", "coaxiality": f"{SIGNS['coaxiality']} {DIAMETER}"}.get(kind)
        text = f"{lead}{value}" if lead is not None else f"{SIGNS[kind]} {value}"
        return f"{text} {datums}".rstrip()
    text = (DIAMETER if kind.endswith(" size") else "") + number_text(
        nominal if nominal is not None else math.nan, unit
    )
    if tolerance_class:
        text += f" {tolerance_class}"
    if lower is not None and upper is not None:
        if upper == -lower and upper:
            deviations = f"±{number_text(upper, unit)}"
        else:
            deviations = f"{_signed(upper, unit)}/{_signed(lower, unit)}"
        text += f" ({deviations})" if tolerance_class else f" {deviations}"
    return text if unit == "mm" else f"{text} {unit_text(unit)}"


def _signed(value: float, unit: str) -> str:
    return f"+{number_text(value, unit)}" if value > 0 else number_text(value, unit)


@cache
def _means() -> dict[str, list[tuple[float, str]]]:
    found: dict[str, list[tuple[float, str]]] = {}
    with (Path(__file__).parent / "data" / "means.csv").open(encoding="utf-8", newline="") as stream:
        for row in csv.DictReader(stream):
            found.setdefault(row["kind"], []).append((float(row["up_to"] or math.inf), row["means"]))
    return found


def means_of(kind: str, width: float) -> str:
    """Suggested means of inspection for a tolerance [mm; µm of a roughness], from ``data/means.csv``."""
    return next(means for up_to, means in _means()[kind] if width <= up_to * (1 + 1e-9))
