"""Words for the part that carries a ring which no list holds: the sizes beside them tell it.

``Shield bore diameter``, ``Carrier bore``, ``Axle dia``: a machine has its own word for its housing or its shaft. Where
a name would be that of a seat with *housing* in place of a word, and its sizes are the outside diameters of the
bearings designated in the same table, the word says the housing there, and so it does in the other names of the table.
A word for the shaft needs bearings of two bores: a pulley may be as large as one.
"""

import re
from collections.abc import Iterable, Mapping, Sequence

from linter.reading.words.headings import Told, Words
from linter.reading.words.part_evidence import INCH, PARTS, number_of, rings_of, same_size
from linter.reading.words.parts import concepts_said, is_bearing

_WORD = re.compile(r"[^\W\d_]{3,}")
_LEAST = {"shaft": 2, "housing": 1}
#: What a word says that may also be one for a housing: a shield is the end of a motor, or of a bearing; a spindle runs
#: in a sleeve.
_ALSO = frozenset(("closure", "rating", "sleeve"))
_SMALLEST = 3.0  # [mm]: smaller figures are deviations
_MOST = 200


def part_words(cells: Mapping[str, tuple[str, ...]], words: Words, told: Mapping[str, Told]) -> dict[str, Told]:
    """What names say with the word for a part in place of one that no list holds.

    Parameters
    ----------
    cells : mapping of str to tuple of str
        The names of a table, with what stands beside or below each.
    words : Words
        The names that are understood.
    told : mapping of str to Told
        What is left of names without the positions in them.

    Returns
    -------
    dict of str to Told
        Names whose word for a part the sizes tell.
    """
    open_ = {name: told.get(name) or Told(name, "") for name in [*cells][:_MOST]}
    unknown = (name for name, rest in open_.items() if not (words.heading(name) or words.heading(rest.rest)))
    open_ = {name: open_[name] for name in unknown}
    rings = _rings(cells, words, told) if open_ else {}
    if not rings:
        return {}
    known = _parts_said(cells, open_, rings, words)
    result = {}
    for name, rest in open_.items():
        for word in _WORD.findall(rest.rest):
            part = known.get(word.casefold(), "")
            text = _with(rest.rest, word, part) if part else ""
            heading = words.heading(text) if text else None
            if heading is not None and not heading.station and heading.parameter.startswith(part):
                result[name] = Told(text, rest.station, by_sizes=True)
    return result


def _parts_said(
    cells: Mapping[str, tuple[str, ...]], names: Mapping[str, Told], rings: Mapping[str, Sequence[float]], words: Words
) -> dict[str, str]:
    """The part that each word says in the names whose sizes tell it; none for a word that would say both."""
    sizes: dict[tuple[str, str], list[str]] = {}
    for name, rest in names.items():
        for word in _WORD.findall(rest.rest):
            for part in PARTS if concepts_said(word) <= _ALSO else ():
                if _is_seat(rest.rest, word, part, words):
                    sizes.setdefault((word.casefold(), part), []).extend(cells[name])
    parts: dict[str, set[str]] = {}
    for (word, part), texts in sizes.items():
        if _fits(texts, rings[part], 2 if concepts_said(word) else _LEAST[part]):
            parts.setdefault(word, set()).add(part)
    return {word: said.pop() for word, said in parts.items() if len(said) == 1}


def _with(name: str, word: str, part: str) -> str:
    """A name with the word for a part in place of another."""
    return re.sub(rf"(?<![^\W_]){re.escape(word)}(?![^\W_])", part, name, count=1)


def _is_seat(name: str, word: str, part: str, words: Words) -> bool:
    heading = words.heading(_with(name, word, part))
    return heading is not None and (heading.parameter, heading.station) == (f"{part}_seat_diameter", "")


def _rings(cells: Mapping[str, tuple[str, ...]], words: Words, told: Mapping[str, Told]) -> dict[str, list[float]]:
    """Bores and outside diameters of bearings: beside a name that says so, or designated beyond doubt."""
    found: dict[str, list[float]] = {part: [] for part in PARTS}
    for name, texts in cells.items():
        heading = words.heading(name)
        named = is_bearing(told[name].rest if name in told else name)
        named = named or (heading is not None and heading.parameter in ("bearing_designation", "bearing_type"))
        for sizes in filter(None, (rings_of(text, named) for text in texts)):
            for part, size in zip(PARTS, sizes, strict=True):
                found[part].append(size)
    return found if all(found.values()) else {}


def _fits(cells: Iterable[str], rings: Sequence[float], least: int) -> bool:
    """Whether the sizes beside a name are those of rings, as many different ones as it takes."""
    numbers = [number for cell in cells if (number := number_of(cell))]
    for unit in (1.0, INCH):
        sizes = [number * unit for number in numbers if number * unit >= _SMALLEST]
        same = [next((ring for ring in rings if same_size(size, ring)), 0.0) for size in sizes]
        if same and all(same) and len({*same}) >= least:
            return True
    return False
