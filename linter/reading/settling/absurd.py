"""Load ratings that no bearing of the stated bore has and roughness that no seat has: their unit is asked for.

``C`` beside ``5.1`` without a unit is kN in most catalogues and N in our canonical units. Per millimetre of bore the
least printed ratings are about 80 N (dynamic) and 20 N (static), of 1 mm miniature bearings; a figure in kN read as N
stays below 5 N (common practice, from makers' dimension tables). A roughness above 1 mm is one in µin or µm that a
title in inches or mm has made one of them (ISO 21920-3 tabulates Ra to 50 µm, from memory).
"""

import numpy as np
from attrs import evolve

from linter.model.places import PlaceColumn
from linter.model.stations import Problem, Stations

#: Rating per bore [N/mm] below which no bearing lies.
LEAST = {"dynamic_rating": 12.0, "static_rating": 6.0}
#: Bore [mm] that counts where a station states none: below most bores, so that small bearings are not doubted.
_SMALL_BORE = 3.0
#: Roughness [µm] above which no face of a seat lies.
_ROUGHEST = 1000.0
_ROUGHNESS = ("shaft_seat_roughness", "housing_seat_roughness")


def doubted_figures(stations: Stations) -> tuple[Stations, list[Problem]]:
    """Stations without ratings and roughness that need another unit, and what has to be asked about them.

    Parameters
    ----------
    stations : Stations
        As the table states them.

    Returns
    -------
    tuple of Stations and list of Problem
        The same stations with such figures blank, and one problem for each.
    """
    stations, ratings = _without_ratings(stations)
    stations, rough = _without_roughness(stations)
    return stations, [*ratings, *rough]


def _without_ratings(stations: Stations) -> tuple[Stations, list[Problem]]:
    """Stations without ratings that are far too small for their bore."""
    bore = stations.number("bore_diameter")
    numbers = dict(stations.numbers)
    problems = []
    for name, least in LEAST.items():
        values = stations.number(name)
        # Not least * bore: a stated bore of 1e308 overflows.
        small = (values > 0) & (values / least < np.where(np.isnan(bore), _SMALL_BORE, bore))
        if not small.any():
            continue
        numbers[name] = np.where(small, np.nan, values)
        rows = np.flatnonzero(small)
        known = stations.places.get(name)
        places = known.every(rows) if isinstance(known, PlaceColumn) else [stations.place(name, int(r)) for r in rows]
        cells = zip(rows.tolist(), places, values[rows].tolist(), bore[rows].tolist(), strict=True)
        for row, place, value, of in cells:
            read = f"{value:g}"
            where = f"{place}: " if place is not None else ""
            of_bore = "" if of != of else f" with {of:g} mm bore"
            problems.append(
                Problem(
                    "unreadable", row, name, place, read, "a load rating with its unit, N or kN",
                    f"{where}{read} N is far below any load rating of a bearing{of_bore}, in kN it "
                    "would be a usual one; expected a load rating with its unit, N or kN; the value is not used.",
                    "rating-unit",
                )
            )  # fmt: skip
    return (evolve(stations, numbers=numbers), problems) if problems else (stations, problems)


def _without_roughness(stations: Stations) -> tuple[Stations, list[Problem]]:
    """Stations without roughness that no seat has."""
    numbers = dict(stations.numbers)
    problems = []
    for name in _ROUGHNESS:
        values = stations.number(name)
        rough = values > _ROUGHEST
        if not rough.any():
            continue
        numbers[name] = np.where(rough, np.nan, values)
        for row in np.flatnonzero(rough).tolist():
            place = stations.place(name, row)
            where = f"{place}: " if place is not None else ""
            problems.append(
                Problem(
                    "unreadable", row, name, place, f"{values[row]:g}", "a roughness with its unit",
                    f"{where}read as {values[row]:g} µm, which is the roughness of no seat; "
                    "expected a roughness with its unit, µm or µin; the value is not used.",
                    "roughness-unit",
                )
            )  # fmt: skip
    return (evolve(stations, numbers=numbers), problems) if problems else (stations, problems)
