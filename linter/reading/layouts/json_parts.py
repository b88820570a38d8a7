"""Objects inside a position whose key does not say of which part they are: that of shaft or housing, as more shows."""

from collections.abc import Iterator, Sequence
from typing import Any

from linter.model.places import Place
from linter.model.stations import Problem
from linter.reading.cells.numbers import Number, read_number
from linter.reading.cells.units import known_unit
from linter.reading.files.grids import cell_text
from linter.reading.files.intake import visible
from linter.reading.layouts.json_keys import local
from linter.reading.layouts.json_records import DIAMETERS, aspect_of
from linter.reading.layouts.sides import Side, is_use, side_of, within
from linter.reading.words.column_words import KEYS
from linter.reading.words.columns import heading_of
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Words
from linter.reading.words.part_evidence import PARTS, RINGS, rings_of, same_size
from linter.reading.words.parts import concepts_said, is_bearing

#: Which diameter of a ring a name says.
RINGS_AT = {name: k for k, name in enumerate(RINGS.values())}


def parts_by_size(node: dict[str, Any], words: Words) -> dict[str, str]:
    """Keys of an object that hold the seat of shaft or housing, told by a diameter as large as that of its bearing.

    Only keys that nothing is known of count, over an object with one diameter that both parts may have.
    """
    unknown = [
        key for key, value in node.items()
        if isinstance(value, dict) and words.heading(key) is None and not side_of(key) and not is_use(key)
        and not is_bearing(key) and not words.groups(key)
    ]  # fmt: skip
    sizes = {size for key, value in node.items() for size in _bearings(key, value, words)} if unknown else set()
    if len(sizes) != 1:
        return {}
    found = {}
    for part, size in zip(PARTS, sizes.pop(), strict=True):
        keys = [key for key in unknown if any(same_size(d, size) for d in _diameters(node[key], part, words))]
        if len(keys) == 1:
            found[keys[0]] = part
    return found


def bores_of_housing(node: dict[str, Any], words: Words, trail: Sequence[str]) -> frozenset[str]:
    """Keys of an object that hold the bore of the housing: a bore as an object, beside the seat on the shaft.

    A bore inside the bearing, or whose key says ring or bearing, is the ring's. Without a seat of the shaft beside it
    its deviations tell: those of a ring never lie above its nominal (from memory of ISO 492).
    """
    keys = [key for key, value in node.items() if isinstance(value, dict) and _is_bore(key, words) and _is_seat(value)]
    sides = [side.side for word in trail if (side := side_of(word)) is not None]
    if len(keys) != 1:
        return frozenset()
    beside = [words.heading(key) for key in node]
    has_shaft = any(h is not None and h.parameter == "shaft_seat_diameter" for h in beside) or any(
        (side := side_of(key)) is not None and side.side == "shaft" for key in node
    )
    if not has_shaft and (sides[-1:] == ["bearing"] or any(map(is_bearing, trail))):
        return frozenset()
    has_housing = any((side := side_of(key)) is not None and side.side == "housing" for key in node)
    above = any(aspect == "upper" and number > 0 for aspect, number in _stated(node[keys[0]]))
    return frozenset(keys) if (has_shaft and not has_housing) or above else frozenset()


def rings_in(node: dict[str, Any], words: Words, trail: Sequence[str]) -> frozenset[str]:
    """Keys below a part that hold a size of the bearing there: the bore or outside diameter of the one it names.

    A spindle may have a bore of its own, which is smaller.
    """
    sides = [side.side for word in trail if (side := side_of(word)) is not None]
    if sides[-1:] not in (["shaft"], ["housing"]):
        return frozenset()
    names = ((key, heading.parameter) for key in node if (heading := words.heading(key)) is not None)
    keys = {key: RINGS_AT[name] for key, name in names if name in RINGS_AT}
    sizes = {size for key, value in node.items() for size in _bearings(key, value, words)} if keys else set()
    if len(sizes) != 1:
        return frozenset()
    size = sizes.pop()
    return frozenset(
        key
        for key, k in keys.items()
        if not _is_seat(node[key]) and any(same_size(n, size[k]) for n in _numbers(node[key]))
    )


def _is_bore(key: str, words: Words) -> bool:
    heading = words.heading(key)
    said = concepts_said(words.names.split_unit(key)[0])
    if heading is None:
        return word_key(key) in KEYS["bore"] and side_of(key) is None
    plain = heading.parameter == "bore_diameter" and heading.aspect == "value" and not heading.own_unit
    return plain and not said & {"bearing", "inner", "ring", "inner_ring"} and key.casefold() not in ("d", "id")


def _is_seat(value: Any) -> bool:
    """Whether an object holds a diameter of its own or a tolerance, and not only a value with its unit."""
    if not isinstance(value, dict):
        return False
    of_size = any(aspect_of(key)[0] not in ("", "value") for key in value)
    return of_size or any(local(key) in DIAMETERS or isinstance(inner, dict) for key, inner in value.items())


def _stated(value: Any) -> Iterator[tuple[str, float]]:
    """Parts of a value and their numbers, in objects inside it too."""
    for key, part in value.items() if isinstance(value, dict) else ():
        if isinstance(part, (int, float)) and not isinstance(part, bool):
            yield aspect_of(key)[0], float(part)
        elif isinstance(part, dict):
            yield from _stated(part)


def _bearings(key: str, value: Any, words: Words) -> Iterator[tuple[float, float]]:
    """Bore and outside diameter of each bearing that a member of an object names."""
    if isinstance(value, dict) and (is_bearing(key) or side_of(key) is not None):
        for inner, cell in value.items():
            yield from _bearings(key if is_bearing(key) else inner, cell, words)
    elif isinstance(value, str):
        heading = heading_of(key, words.heading(key), (value,), words)
        named = heading is not None and heading.parameter == "bearing_designation"
        rings = rings_of(value, named=True) if named or is_bearing(key) else None
        if rings is not None:
            yield rings


def _diameters(node: dict[str, Any], part: str, words: Words) -> Iterator[float]:
    """Diameters of an object that are of the seat, if it is of this part."""
    for key, value in node.items():
        heading = within(words, Side(part, part), key)
        if heading is not None and heading.parameter == f"{part}_seat_diameter" and heading.aspect == "value":
            yield from _numbers(value, behind=True)


def _numbers(value: Any, *, behind: bool = False) -> Iterator[float]:
    """Numbers that stand under a key, with their unit; with anything else ``behind`` them too."""
    for cell in value.values() if isinstance(value, dict) else [value]:
        text, _, rest = ("" if isinstance(cell, bool) else cell_text(cell)).partition(" ")
        number = read_number(text, ".")
        if isinstance(number, Number) and (behind or not rest or known_unit(rest) is not None):
            yield number.value


def assumed_part(place: Place, key: str, part: str) -> Problem:
    """The assumption that an object is of the shaft or the housing, since it is as large as the bearing there."""
    expected = "a key such as shaft or housing"
    ring = "bore" if part == "shaft" else "outside diameter"
    message = (
        f"{place}: {visible(key, 40)} is as large as the {ring} of the bearing; it is taken for the {part}; "
        f"expected {expected}."
    )
    return Problem("assumption", None, f"{part}_seat_diameter", place, key, expected, message, "part-by-size")
