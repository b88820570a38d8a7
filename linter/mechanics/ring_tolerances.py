"""Tolerances of bearing rings after ISO 492:2014, classes Normal, P6, P5, P4 and P2.

The table is ``data/ring_tolerances.csv``; it holds metric radial bearings except tapered roller bearings. Diameters are
nominal, in mm; tolerances are in um. Each function has a twin ``..._or_nan`` for bulk use.
"""

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from linter.mechanics import tables

TOLERANCE_CLASSES = ("Normal", "P6", "P5", "P4", "P2")
RUNNING_ACCURACIES = ("Kia", "Kea", "Sd", "SD", "SD before 2014", "Sia", "Sea")


@cache
def _ranges() -> dict[tuple[str, str], tuple[list[float], list[float], list[float], list[float]]]:
    """Bounds, lower and upper values by quantity and class. The first bound of ISO 492 (0.6, 2.5) is included."""
    found: dict[tuple[str, str], tuple[list[float], list[float], list[float], list[float]]] = {}
    for row in tables.rows("ring_tolerances"):
        over, incl, lower, upper = found.setdefault((row["quantity"], row["tolerance_class"]), ([], [], [], []))
        bound = float(row["over_mm"])
        over.append(bound if over else float(np.nextafter(bound, 0.0)))
        incl.append(float(row["incl_mm"]))
        lower.append(tables.number(row["lower_um"]))
        upper.append(tables.number(row["upper_um"]))
    return found


def _look_up(
    quantity: str, tolerance_class: ArrayLike | tables.Coded, diameter: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Lower and upper value of a quantity; NaN where the table has none."""
    text = tables.coded(tolerance_class)
    code, size = np.broadcast_arrays(text.code, np.asarray(diameter, dtype=np.float64))
    found = np.full((2, *size.shape), np.nan)
    for index, name in enumerate(text.known):
        ranges = _ranges().get((quantity, name))
        if ranges is not None and (chosen := code == index).any():
            over, incl, *ends = ranges
            found[:, chosen] = tables.in_ranges(over, incl, ends, size[chosen])
    return found[0], found[1]


def _refuse(values: NDArray[np.float64], quantity: str, tolerance_class: ArrayLike, diameter: ArrayLike) -> None:
    """Raise where nothing is missing and yet the table has no value."""
    given = (tables.words(tolerance_class) != "") & ~np.isnan(np.asarray(diameter, dtype=np.float64))
    spans = "; ".join(
        f"{name} {over[0]:g} to {incl[-1]:g} mm"
        for name in TOLERANCE_CLASSES
        for over, incl, *_ in [_ranges().get((quantity, name), ([], []))]
        if over
    )
    tables.refuse(
        np.isnan(values) & given, f"{quantity} is held for {spans}", tolerance_class=tolerance_class, diameter=diameter
    )


def bore_deviation_or_nan(
    tolerance_class: ArrayLike | tables.Coded, bore_diameter: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Deviation of the mean bore as in :func:`bore_deviation`, NaN outside the table."""
    return _look_up("Delta_dmp", tolerance_class, bore_diameter)


def bore_deviation(
    tolerance_class: ArrayLike, bore_diameter: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Deviation of the mean bore diameter, Delta_dmp.

    Parameters
    ----------
    tolerance_class : array_like of str
        ``"Normal"``, ``"P6"``, ``"P5"``, ``"P4"`` or ``"P2"``.
    bore_diameter : array_like
        Nominal bore d in mm, from 0.6 to 250 (Normal and P6 to 500, P5 to 400).

    Returns
    -------
    lower, upper : ndarray
        Deviations in um, broadcast over the arguments; NaN where one of them is missing.

    Raises
    ------
    ValueError
        If a class or a bore is outside the table.

    Notes
    -----
    ISO 492:2014, by way of the sources named in ``data/ring_tolerances.csv``.
    """
    lower, upper = bore_deviation_or_nan(tolerance_class, bore_diameter)
    _refuse(lower, "Delta_dmp", tolerance_class, bore_diameter)
    return lower, upper


def outside_deviation_or_nan(
    tolerance_class: ArrayLike | tables.Coded, outside_diameter: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Deviation of the mean outside diameter as in :func:`outside_deviation`, NaN outside the table."""
    return _look_up("Delta_Dmp", tolerance_class, outside_diameter)


def outside_deviation(
    tolerance_class: ArrayLike, outside_diameter: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Deviation of the mean outside diameter, Delta_Dmp [um], as :func:`bore_deviation`.

    Nominal outside diameter D in mm from 2.5 to 250 (Normal and P6 to 500, P5 to 400); ValueError outside the table.
    """
    lower, upper = outside_deviation_or_nan(tolerance_class, outside_diameter)
    _refuse(lower, "Delta_Dmp", tolerance_class, outside_diameter)
    return lower, upper


def width_deviation_or_nan(
    tolerance_class: ArrayLike, bore_diameter: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Deviation of the ring width as in :func:`width_deviation`, NaN outside the table."""
    return _look_up("Delta_Bs", tolerance_class, bore_diameter)


def width_deviation(
    tolerance_class: ArrayLike, bore_diameter: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Deviation of the width of a single ring, Delta_Bs [um], as :func:`bore_deviation`.

    Both rings take it by the bore, d in mm from 0.6 to 250 (P2 to 150); ValueError outside the table.
    From memory of ISO 492:2014.
    """
    lower, upper = width_deviation_or_nan(tolerance_class, bore_diameter)
    _refuse(lower, "Delta_Bs", tolerance_class, bore_diameter)
    return lower, upper


def running_accuracy_or_nan(quantity: str, tolerance_class: ArrayLike, diameter: ArrayLike) -> NDArray[np.float64]:
    """Running accuracy as in :func:`running_accuracy`, NaN where the class or the size has none."""
    if quantity not in RUNNING_ACCURACIES:
        raise ValueError(f"{quantity!r} is not a running accuracy: expected one of {', '.join(RUNNING_ACCURACIES)}")
    return _look_up(quantity, tolerance_class, diameter)[1]


def running_accuracy(quantity: str, tolerance_class: ArrayLike, diameter: ArrayLike) -> NDArray[np.float64]:
    """Largest permitted run-out or perpendicularity of a ring.

    Parameters
    ----------
    quantity : str
        ``"Kia"``, ``"Kea"``: radial run-out of the inner and outer ring of the assembled bearing. ``"Sd"``: face of the
        inner ring to the bore. ``"SD"``: outside surface of the outer ring to the face, as ISO 492:2014 defines it;
        ``"SD before 2014"``: the older definition, twice that value. ``"Sia"``, ``"Sea"``: axial run-out of the rings
        of the assembled bearing. All but Kia and Kea exist for P5, P4 and P2 only.
    tolerance_class : array_like of str
        ``"Normal"``, ``"P6"``, ``"P5"``, ``"P4"`` or ``"P2"``.
    diameter : array_like
        Nominal bore in mm for Kia, Sd and Sia; nominal outside diameter for Kea, SD and Sea.

    Returns
    -------
    ndarray
        Largest value in um, broadcast over the arguments; NaN where one of them is missing.

    Raises
    ------
    ValueError
        If the quantity is not one of these, or a class or a diameter is outside the table.

    Notes
    -----
    ISO 492:2014, by way of the sources named in ``data/ring_tolerances.csv``.
    """
    value = running_accuracy_or_nan(quantity, tolerance_class, diameter)
    _refuse(value, quantity, tolerance_class, diameter)
    return value
