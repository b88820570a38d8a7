"""Columns judged by their cells and by what stands beside them, where the heading alone would mislead.

A column of designations is the designation whatever its heading; a running number is no bore; a lone ``D`` is a symbol
only beside other columns of a bearing; a bore with a hole class is a housing seat; the width behind a seat is not the
ring's. Where it stays open the column is not read, and that is told.
"""

import re
from collections.abc import Callable, Sequence

from attrs import evolve

from linter.reading.cells.choices import read_choice
from linter.reading.cells.fit_classes import HOLE, SHAFT, SIZE_AND_CLASS
from linter.reading.cells.several import says_role
from linter.reading.cells.signs import LONGEST_TEXT, ReadError, fold
from linter.reading.cells.springs import method_by_cells
from linter.reading.cells.units import known_unit
from linter.reading.words.bearing_tables import without_marks
from linter.reading.words.cells_tell import are_kelvins, parameter_told
from linter.reading.words.coded_columns import choice_said, code_said
from linter.reading.words.column_stations import station_beside, without_station
from linter.reading.words.column_words import KEYS
from linter.reading.words.cuts import WITH_TOLERANCE, without_standard
from linter.reading.words.designations import designation_strength, read_designation
from linter.reading.words.dictionary import word_key
from linter.reading.words.headings import Heading, Told, Words
from linter.reading.words.nominal_columns import nominal_beside_limits
from linter.reading.words.other_cells import are_arrangements, are_roles, no_designation, no_station
from linter.reading.words.part_columns import are_limits, parts_of_columns, seat_by_cells
from linter.reading.words.place_columns import number_as_station, place_as_station
from linter.reading.words.places import says_side
from linter.reading.words.turning import are_speeds

Column = Heading | None

_LETTERS = {"d": "bore_diameter", "D": "outside_diameter", "B": "ring_width"}
_TOLERANCED = re.compile(r"[Ø⌀øφΦ]? ?[\d.,]+ ?(?:mm|\")? ?\(?(?:±|[+-]\s?\d).*|[Ø⌀øφΦ]? ?[\d.,]+ ?\(?0 ?/ ?[+-].*")
_LETTER = re.compile(r"\W*[dDB]\W*(?:[\[(].*)?")
_MOST_LOOKED_AT = 50
#: In the reason why a number is read as none of ours (``data/designation_refusals.csv``).
_OF_KIND = "bearing: not in the table of sizes"
#: A basic number and the signs behind it.
_SIGNED = re.compile(
    r"\d{4,5}(?:[ -]?(?:[A-Z]{1,5}\d{0,2}|2RS\d?|2Z|[12]LS|2CS\d?)|/(?:C[2345]|W\d\d|P[4-6]))"
    r"(?:[ /-]?[A-Z0-9.]{1,6}){0,4}"
)
_OTHER_SYSTEM = "another national system"


def key_of(label: str, words: Words) -> str:
    """A heading without its unit, for comparing."""
    match = words.names.find(label)
    unit = f"[{match.unit}]" if match and match.unit else ""
    plain = without_standard(WITH_TOLERANCE.sub("", fold(label)))
    plain = plain.removesuffix(unit).strip() if unit else re.sub(r"[ _]*[\[(][^\[\]()]*[\])]$", "", plain)
    return word_key(plain).strip(" :")


def _means_itself(heading: Column, cells: Sequence[str]) -> bool:
    """Whether a heading is a name of the vocabulary; designations stand under that of the type too."""
    if heading is None or not heading.own_unit:
        return False
    texts = [cell for cell in cells if cell.strip()][:_MOST_LOOKED_AT]
    designated = bool(texts) and all(designation_strength(cell.strip()) == "certain" for cell in texts)
    return not (designated and heading == Heading("bearing_type", own_unit=True))


def heading_of(label: str, heading: Column, cells: Sequence[str], words: Words) -> Column:
    """What one column (or row) is by its heading and its own cells.

    Parameters
    ----------
    label : str
        Its heading.
    heading : Heading or None
        What the heading means by itself.
    cells : sequence of str
        Some of its filled cells.
    words : Words
        The names that are understood.

    Returns
    -------
    Heading or None
        None where it is not to be read.
    """
    if words.names.mapping.find(fold(label)) is not None or _means_itself(heading, cells):
        return heading  # the name mapping has the last word, and the vocabulary's own names mean themselves
    cells = [fold(without_marks(cell.strip())) for cell in cells if cell.strip()][:_MOST_LOOKED_AT]
    if not cells or len(label) > LONGEST_TEXT:
        return heading
    if (told := words.told_of(label)) is not None and (heading is None or heading.station == told.station):
        return _of_position(told, heading, cells, words)
    key = key_of(label, words)
    if heading is None and _are_places(key, cells, words):
        return Heading("station")
    may_be = heading is None or heading.parameter in ("station", "bearing_type", "drawing_number")
    core, station = without_station(label, key, words) if may_be else (key, "")
    if may_be and (shown := _designation_or_role(core, heading, cells)):
        known = core in KEYS["designation"] | KEYS["bearing"] | KEYS["function"]
        return Heading(shown, station or ("" if known else station_beside(label, words)))
    if heading == Heading("machine"):
        return _machine_or_arrangement(key, cells)
    if heading is None or heading.parameter in ("radial_clearance", "tolerance_class", "preload_force"):
        heading = _coded(label, key, heading, cells, words) or heading
    return _by_cells(label, cells, words) if heading is None else _judged(heading, key, cells)


def _machine_or_arrangement(key: str, cells: Sequence[str]) -> Column:
    """The machine, or what an arrangement says of a bearing: how it is located, or how it is set beside another."""
    if are_arrangements(cells):
        return None  # arrangement: DB
    return Heading("axial_role" if _say_role(key, cells) else "machine")


def _of_position(told: Told, heading: Column, cells: Sequence[str], words: Words) -> Column:
    """What a column is by what is left of its heading without the position in it."""
    rest = words.heading(told.rest) if heading is None else evolve(heading, station="")
    found = heading_of(told.rest, rest, cells, words)
    if found is None and rest is not None:
        return None  # its cells say another thing
    if found is None or found.entry.level != "station" or found.station or found.parameter == "station":
        return heading
    return evolve(found, station=told.station)


def _judged(heading: Heading, key: str, cells: Sequence[str]) -> Column:
    """What a column is whose heading is known, where its cells say another thing."""
    if heading.aspect == "tolerance" and all(SIZE_AND_CLASS.fullmatch(cell) for cell in cells):
        return evolve(heading, aspect="value")  # Shaft fit: Ø17 k5
    if heading.aspect == "tolerance" and all(map(are_limits, cells)):
        return evolve(heading, aspect="value")  # Shaft fit limits (in): 2.1655-2.1660
    if heading.parameter == "station":
        return no_station(key in KEYS["bearing"], heading, cells) or heading
    if heading.parameter == "bearing_designation":
        return no_designation(heading, cells) or heading
    if heading.parameter in ("bore_diameter", "outside_diameter"):
        return _seat_or_ring(heading, key, cells)
    if heading.aspect == "value" and (name := method_by_cells(heading.parameter, cells)) != heading.parameter:
        return evolve(heading, parameter=name, unit="")  # Preload: wave spring
    if heading.parameter == "speed_operating" and all(isinstance(read_choice("duty", cell), str) for cell in cells):
        return evolve(heading, parameter="duty", unit="")  # Régimen de trabajo: intermitente
    return heading


def _are_places(key: str, cells: Sequence[str], words: Words) -> bool:
    """Whether cells below a word for places name stations; figures may number the rows."""
    return key.strip(" .") in KEYS["place"] and all(
        words.names.station(cell) and not cell.strip().isdigit() for cell in cells
    )


def _by_cells(label: str, cells: Sequence[str], words: Words) -> Column:
    """What a column is whose heading says too little by itself, by its cells."""
    if are_speeds(label, cells):
        return Heading("speed_max", unit=unit if known_unit(unit := label.strip("[]() ")) is not None else "")
    if are_roles(cells):
        return Heading("axial_role")
    if are_kelvins(label, cells) and (kelvins := words.with_letter_of_unit(label)) is not None:
        return kelvins
    if told := code_said(label, cells) or parameter_told(words.names.split_unit(label)[0], cells):
        return Heading(told)
    return seat_by_cells(label, cells, words)


def _coded(label: str, key: str, heading: Column, cells: Sequence[str], words: Words) -> Column:
    """A clearance or a precision, where every cell is a word of that choice and none can be the class of a fit."""
    station = heading.station if heading is not None else ""
    for meaning, name in (("clearance", "clearance_class"), ("precision", "tolerance_class")):
        if key in KEYS[meaning] and not any(isinstance(read_choice(name, cell), ReadError) for cell in cells):
            return Heading(name)
    if words.groups(label) or not (name := choice_said(label, cells)):
        return None
    return Heading(name, station or station_beside(label, words))


def _designation_or_role(key: str, heading: Column, cells: Sequence[str]) -> str:
    """A parameter that the cells show beyond doubt below a word that may say it; or empty."""
    if _are_designations(key, heading, cells):
        return "bearing_designation"
    if heading == Heading("station") and len(cells) == 1 and says_side(cells[0]):
        return ""  # Apoyo: Lado libre
    return "axial_role" if _say_role(key, cells) else ""


def _say_role(key: str, cells: Sequence[str]) -> bool:
    """Whether cells below a word for a function say how the bearing is located."""
    return key in KEYS["function"] and all(map(says_role, cells))


def _are_designations(key: str, heading: Column, cells: Sequence[str]) -> bool:
    """Whether every cell is a designation: beyond doubt, or a known number under a heading that may say so."""
    may_say_kinds = heading is None and key in KEYS["designation"]
    strengths = []
    for cell in cells:
        strengths.append(designation_strength(cell))
        if strengths[-1] == "no" and not may_say_kinds:
            break  # the others change nothing
    if "no" in strengths and may_say_kinds and _of_kinds(cells, strengths):
        return True
    if "no" in strengths:
        return key in KEYS["bearing"] and heading is None and all(map(_of_other_system, cells))
    of_type = heading is not None and heading.parameter == "bearing_type"  # no word for a type is a number
    if heading is not None and not of_type and heading.parameter != "station" and key not in KEYS["designation"]:
        return all(strength == "certain" for strength in strengths)
    return of_type or "certain" in strengths or key in KEYS["bearing"] or key in KEYS["designation"]


def _of_kinds(cells: Sequence[str], strengths: Sequence[str]) -> bool:
    """Whether cells are numbers of bearings, some of kinds without a table of sizes (``2208 K``, ``22210 E``).

    A number of such a kind without a sign behind it may be any number: there others show what it is.
    """
    others = [cell for cell, strength in zip(cells, strengths, strict=True) if strength == "no"]
    of_kinds = all(_OF_KIND in (read_designation(cell).refusal or "") for cell in others)
    signed = all(_SIGNED.fullmatch(cell.upper()) for cell in others)
    plain = all(_SIGNED.fullmatch(f"{cell.upper()} K") or _SIGNED.fullmatch(cell.upper()) for cell in others)
    return of_kinds and (signed or (plain and len(others) < len(cells)))


def _of_other_system(cell: str) -> bool:
    """Whether a cell is the number of a bearing in a system that is not read (``80306``, GOST 3189)."""
    return cell.isdigit() and _OTHER_SYSTEM in (read_designation(cell).refusal or "")


def _seat_or_ring(heading: Heading, key: str, cells: Sequence[str]) -> Column:
    """A diameter of the bearing whose cells carry the class or the deviations of a seat."""
    classed = [cell for cell in cells if HOLE.fullmatch(cell) or SHAFT.fullmatch(cell) or _TOLERANCED.fullmatch(cell)]
    if not classed or heading.aspect != "value":
        return heading
    of_holes = all(HOLE.fullmatch(cell) or _TOLERANCED.fullmatch(cell) for cell in classed)
    if heading.parameter == "bore_diameter" and key in KEYS["bore"] and of_holes:
        return evolve(heading, parameter="housing_seat_diameter", own_unit=False)
    return None if any(HOLE.fullmatch(cell) or SHAFT.fullmatch(cell) for cell in classed) else heading


def judge_columns(
    labels: Sequence[str], headings: Sequence[Column], cells: Callable[[int], Sequence[str]], words: Words
) -> list[Column]:
    """What the columns of a table are, each by its heading, its cells and the columns beside it.

    Parameters
    ----------
    labels : sequence of str
        Heading of each column.
    headings : sequence of Heading or None
        What each means by itself.
    cells : callable
        Some of the filled cells of a column, by its index.
    words : Words
        The names that are understood.

    Returns
    -------
    list of Heading or None
        None for a column that is not read.
    """
    measured = [
        h is None and label and words.of_design(label, "found") is not None
        for label, h in zip(labels, headings, strict=True)
    ]
    labels = ["" if left else label for label, left in zip(labels, measured, strict=True)]  # its cells tell nothing
    result = [
        heading_of(label, h, cells(c), words) if label else h
        for c, (label, h) in enumerate(zip(labels, headings, strict=True))
    ]
    if any(h is not None and h.parameter == "station" for h in result):
        result = [h or words.with_letter_of_unit(label) for label, h in zip(labels, result, strict=True)]
    mapped = [words.mapped(label) for label in labels]
    headings = headings if any(mapped) else number_as_station(headings, result, cells, words)
    _one_designation(labels, headings, result, words)
    _designation_of_no_position(headings, result)
    parts_of_columns(labels, [key_of(label, words) for label in labels], result, cells, mapped, words)
    _running_numbers(labels, result, cells, mapped)
    _lone_letters(labels, result, mapped)
    _width_behind_a_seat(labels, result, mapped, words)
    keys = [key_of(label, words).strip(" .") for label in labels]
    place_as_station(labels, keys, result, cells, words)
    nominal_beside_limits(labels, result, cells, words)
    return result


def _one_designation(labels: Sequence[str], before: Sequence[Column], result: list[Column], words: Words) -> None:
    """Of several columns of designations of one station the one that its heading names best is read."""
    for station in dict.fromkeys(h.station for h in result if h is not None):
        _one_of(station, labels, before, result, words)


def _designation_of_no_position(before: Sequence[Column], result: list[Column]) -> None:
    """Beside columns of positions one that only its cells explain, and that says no position, is of none."""
    if not any(h is not None and h.station and h.parameter != "bearing_designation" for h in result):
        return
    if any(h is not None and h.parameter == "station" for h in result):
        return
    for c, heading in enumerate(result):
        if before[c] is None and heading is not None and not heading.station:
            result[c] = None if heading.parameter in ("bearing_designation", "axial_role") else heading


def _one_of(station: str, labels: Sequence[str], before: Sequence[Column], result: list[Column], words: Words) -> None:
    found = [c for c, h in enumerate(result) if h is not None and h.parameter == "bearing_designation"]
    found = [c for c in found if (h := result[c]) is not None and h.station == station]
    found = [c for c in found if not (before[c] is not None and before[c].parameter == "bearing_designation")]  # type: ignore[union-attr]
    stated = [c for c, h in enumerate(before) if h is not None and h.parameter == "bearing_designation"]
    ranked = sorted(found, key=lambda c: (key_of(labels[c], words) not in KEYS["bearing"], c))
    for c in ranked if stated else ranked[1:]:
        result[c] = before[c]


def _running_numbers(
    labels: Sequence[str], result: list[Column], cells: Callable[[int], Sequence[str]], mapped: Sequence[bool]
) -> None:
    """``ID`` and its like is a bore only beside the outside diameter or with a unit, and never one that counts rows."""
    outside = any(h is not None and h.parameter == "outside_diameter" for h in result)
    for c, heading in enumerate(result):
        if heading is None or heading.parameter != "bore_diameter" or mapped[c]:
            continue
        plain = word_key(labels[c]).strip(" .")
        if plain not in ("id", "i d"):
            continue
        texts = list(cells(c))
        counts = texts == [str(k) for k in range(1, len(texts) + 1)] and len(texts) > 1
        if counts or (not heading.unit and (labels[c].strip() in ("id", "Id") or not outside)):
            result[c] = None


def _lone_letters(labels: Sequence[str], result: list[Column], mapped: Sequence[bool]) -> None:
    """A single letter is a symbol only beside another one of them or beside a column that names a bearing or seat."""
    letters = [
        c for c, h in enumerate(result)
        if h is not None and not mapped[c] and labels[c].strip()[:1] in _LETTERS
        and _LETTER.fullmatch(labels[c].strip()) and h.parameter == _LETTERS[labels[c].strip()[0]]
    ]  # fmt: skip
    others = [
        h for c, h in enumerate(result)
        if h is not None and c not in letters and h.entry.level == "station" and h.parameter != "station"
    ]  # fmt: skip
    if len(letters) == 1 and not others:
        result[letters[0]] = None


def _width_behind_a_seat(labels: Sequence[str], result: list[Column], mapped: Sequence[bool], words: Words) -> None:
    """A width without the word of a ring or bearing right behind a seat may be the seat's."""
    sizes = ("bore_diameter", "outside_diameter", "bearing_designation", "bearing_type")
    for c, heading in enumerate(result):
        if heading is None or heading.parameter != "ring_width" or mapped[c] or heading.parameter in labels[c]:
            continue
        if key_of(labels[c], words) not in KEYS["width"]:
            continue
        before = [h.parameter for h in result[:c] if h is not None]
        last = next((name for name in reversed(before) if name in sizes or "_seat_" in name), "")
        if "_seat_" in last:
            result[c] = None
