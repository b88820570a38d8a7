"""What a JSON document holds of stations and is not read, or states twice: findings about it."""

import re
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from linter.model.places import Place
from linter.model.stations import Problem
from linter.model.vocabulary import parameter
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.layouts.json_keys import Path, stations_in
from linter.reading.layouts.lost import ENOUGH, is_value, not_read
from linter.reading.layouts.strips import Found
from linter.reading.words.headings import Words


def tell_bare(child: Any, place: Place, level: str, found: Found) -> None:
    """A station or machine as a list of values or as one text says nothing of what its values are."""
    pieces = re.split(r"[;,|\t\n]", child) if isinstance(child, str) else child if isinstance(child, list) else []
    count = sum(is_value(piece, parameter("bore_diameter")) for piece in pieces)
    if count >= ENOUGH:
        shown = ", ".join(cell_text(piece) for piece in pieces if not isinstance(piece, (dict, list)))
        found.problems.append(not_read(place, f"what stands for a {level}", shown, count))


def tell_again(
    again: Mapping[tuple[str, str], Sequence[Path]], place_of: Callable[[Path], Place], found: Found
) -> None:
    """Stations whose values are stated again, alike."""
    for key, paths in again.items():
        if len(paths) >= ENOUGH:
            name, place = visible(" ".join(filter(None, key)), 60), place_of(paths[0])
            expected = "every value of a station once"
            message = (
                f"{place}: {len(paths)} values of {name} are stated again, alike; expected {expected}; "
                "a station may carry the wrong name, or none."
            )
            found.problems.append(
                Problem("unreadable", None, "station", place, name, expected, message, "station-twice")
            )


def tell_results(
    results: Sequence[tuple[Any, Path]],
    known: set[str],
    place_of: Callable[[Path], Place],
    words: Words,
    found: Found,
) -> None:
    """Stations that stand among results alone."""
    for node, path in results:
        for station, names, at in stations_in(node, path, words):
            if station not in known and len(names) >= ENOUGH:
                read = f"{station}: {', '.join(names)}"
                found.problems.append(not_read(place_of(at), "a part of results", read, len(names)))
