"""Load ratings that no bearing of the stated bore has and roughness that no seat has: their unit is asked for.

``C`` beside ``5.1`` without a unit is kN in most catalogues and N in our canonical units. Per millimetre of bore the
least printed ratings are about 80 N (dynamic) and 20 N (static), of 1 mm miniature bearings; a figure in kN read as N
stays below 5 N (common practice, from makers' dimension tables). A roughness above 1 mm is one in µin or µm that a
title in inches or mm has made one of them (ISO 21920-3 tabulates Ra to 50 µm, from memory).
"""

import numpy as np
from attrs import evolve

from linter.model.stations import Problem, Stations
from linter.reading.settling.keys import MOST_ALIKE, more_alike

#: Rating per bore [N/mm] below which no bearing lies.
LEAST = {"dynamic_rating": 12.0, "static_rating": 6.0}
#: Bore [mm] that counts where a station states none: below most bores, so that small bearings are not doubted.
_SMALL_BORE = 3.0
#: Roughness [µm] above which no face of a seat lies.
_ROUGHEST = 1000.0
_ROUGHNESS = ("shaft_seat_roughness", "housing_seat_roughness")


def doubted_figures(stations: Stations, file: str) -> tuple[Stations, list[Problem]]:
    """Stations without ratings and roughness that need another unit, and what has to be asked about them.

    Parameters
    ----------
    stations : Stations
        As the table states them.
    file : str
        The table, for what is told of more than a few cells.

    Returns
    -------
    tuple of Stations and list of Problem
        The same stations with such figures blank, and a problem for each; of very many of one parameter only a count.
    """
    numbers, problems = dict(stations.numbers), list[Problem]()
    bore = stations.number("bore_diameter")
    for name in (*LEAST, *_ROUGHNESS):
        values = stations.number(name)
        if name in LEAST:
            # Not least * bore: a stated bore of 1e308 overflows.
            absurd = (values > 0) & (values / LEAST[name] < np.where(np.isnan(bore), _SMALL_BORE, bore))
        else:
            absurd = values > _ROUGHEST
        rows = np.flatnonzero(absurd)
        if not len(rows):
            continue
        numbers[name] = np.where(absurd, np.nan, values)
        for row in rows[:MOST_ALIKE].tolist():
            place = stations.place(name, row)
            where = f"{place}: " if place is not None else ""
            said = _of_rating(where, values[row], bore[row]) if name in LEAST else _of_roughness(where, values[row])
            code, expected, message = said
            problems.append(Problem("unreadable", row, name, place, f"{values[row]:g}", expected, message, code))
        if (more := len(rows) - MOST_ALIKE) > 0:
            problems.append(more_alike(problems[-1], file, more))
    return (evolve(stations, numbers=numbers), problems) if problems else (stations, problems)


def _of_rating(where: str, value: float, bore: float) -> tuple[str, str, str]:
    """Code, what is expected and the message of a load rating that is too small."""
    of_bore = "" if np.isnan(bore) else f" with {bore:g} mm bore"
    message = (
        f"{where}{value:g} N is far below any load rating of a bearing{of_bore}, in kN it "
        "would be a usual one; expected a load rating with its unit, N or kN; the value is not used."
    )
    return "rating-unit", "a load rating with its unit, N or kN", message


def _of_roughness(where: str, value: float) -> tuple[str, str, str]:
    """Code, what is expected and the message of a roughness that is too large."""
    message = (
        f"{where}read as {value:g} µm, which is the roughness of no seat; "
        "expected a roughness with its unit, µm or µin; the value is not used."
    )
    return "roughness-unit", "a roughness with its unit", message
