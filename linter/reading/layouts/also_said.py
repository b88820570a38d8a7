"""Cells that say more than the parameter of their name: ``los, Wellfeder``; ``wave, 60 N at 2.4 mm``; ``oil, VG 32``.

What a cell says of the spring behind the way of preloading, the axial function or the kind of spring (its kind, its
force, the length that it has then), and the class of viscosity behind a lubrication (ISO 3448: kinematic viscosity at
40 °C, from memory), is read as a value of its own where the table states it nowhere else. So are the times of a duty
(``intermittent, 20 min on / 10 min off``), the sizes of an undercut (``F0,6x0,3``) and the roughness of a seat behind
its size (``Ø20 k5 Ra 0.4``).
"""

import re
from collections.abc import Callable, Iterator

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from linter.reading.cells.choices import read_choice
from linter.reading.cells.several import fill_said, of_duty, of_lubrication, of_role, of_undercut
from linter.reading.cells.signs import caseless, missing_state
from linter.reading.cells.springs import Said, method_by_cells, of_oil, of_spring
from linter.reading.files.grids import TextColumn, cell_text, is_blank, object_column
from linter.reading.layouts.labels_in_cell import labelled_things
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.words.headings import Words
from linter.reading.words.joined_names import halves_of
from linter.reading.words.parts import concepts_said

_STROKE = re.compile(r"\s*[/／|]\s*")
#: A sign that stands between two things; a number without one says nothing else, and is not looked at further.
_SEVERAL = re.compile(r"[^\w.\-–]")
_CODE = re.compile(
    r"(.{3,}?)(?:\s*[/／|,;、，]\s*(?=[A-Za-z0-9]{1,3}$)|\s+(?=[A-Za-z]{1,2}$)|\s*\((?=\w+\)$))(\w{1,3})\)?"
)
#: Which of how many sheets of a drawing it is (common practice).
_SHEET = re.compile(
    r"[\s,;/(–]+(?:sheet|sht\.?|page|blatt|bl\.|seite|feuille|folio|hoja|pág\.?|página|foglio|fg\.|pagina|лист|л\.|シート)"
    r"\s*\d{1,3}\s*(?:/|of|von|sur|de|di|из)\s*\d{1,3}\)?(?=$|[\s,;])",
    re.IGNORECASE,
)


def _of_drawing(name: str, text: str, words: Words) -> Said:
    """A drawing's number and the revision behind it (``MX-4371, Rev. B``), without the number of its sheet."""
    if not _SEVERAL.search(text):
        return {}
    if (plain := _SHEET.sub("", text).strip(" ,;/")) != text and plain:
        return {name: plain, **_of_drawing(name, plain, words)}
    things = labelled_things(text, words, "drawing number")
    said = {h.parameter: thing.value for thing in things[1:] if (h := words.heading(thing.label)) is not None}
    revision = said.get("drawing_revision", "")
    halves = _STROKE.split(text) if not revision else []
    if len(halves) == 2 and all(halves):
        label, _, value = halves[1].rpartition(" ")
        if value and words.says_revision(label):
            return {name: halves[0], "drawing_revision": value}
    return {name: things[0].value, "drawing_revision": revision} if revision else {}


def _below_both(strip: Strip, words: Words) -> Strip:
    """A strip of drawings whose name says their revision too, its word set before a code alone (``GB-7 / C``)."""
    halves = halves_of(strip.label)
    word = halves[1] if halves and words.says_revision(halves[1]) else ""
    codes = {
        k: found for k, cell in enumerate(strip.cells.tolist()) if word and (found := _CODE.fullmatch(cell_text(cell)))
    }
    if not codes:
        return strip
    texts = [cell_text(cell) for cell in strip.cells.tolist()]
    cells = object_column([f"{c[1]} / {word} {c[2]}" if (c := codes.get(k)) else cell for k, cell in enumerate(texts)])
    return evolve(strip, cells=cells, whole={**strip.whole, **{k: texts[k] for k in codes}})


def _of_undercut(name: str, text: str, words: Words) -> Said:
    part = name.removesuffix("_form")
    return {f"{part}_{size}": said for size, said in of_undercut(text).items()}


#: A size and the roughness of its seat behind it; a bare number is in µm where seats have such a one (common practice).
_ROUGH = re.compile(
    r"(?P<size>.*\d.*?)\s*[,;/|(]?\s*Ra\s*[=:≤<]?\s*(?P<number>\d+(?:[.,]\d+)?)(?P<unit>\s*(?:[\u00b5\u03bcu]m|[\u00b5\u03bcu]in))?\s*\)?"
)
_LARGEST_RA = 6.3


def _of_seat(name: str, text: str, words: Words) -> Said:
    """A size and the roughness of the seat (``Ø20 k5 Ra 0.4``)."""
    found = _ROUGH.fullmatch(text.strip()) if "Ra" in text else None
    if found is None or not (found["unit"] or float(found["number"].replace(",", ".")) <= _LARGEST_RA):
        return {}
    return {name: found["size"], name.replace("_diameter", "_roughness"): f"{found['number']} {found['unit'] or 'µm'}"}


#: A force that is not zero.
_FORCE = re.compile("[1-9]")
#: What the cells of a parameter may say beside it.
_OTHERS: dict[str, Callable[[str, str, Words], Said]] = {
    **dict.fromkeys(("preload_method", "preload_force", "spring_kind"), lambda name, text, _: of_spring(name, text)),
    "axial_role": lambda name, text, words: of_role(text),
    "lubrication": lambda name, text, words: of_lubrication(text),
    "base_oil_viscosity_40": lambda name, text, words: of_oil(name, text),
    "duty": lambda name, text, words: of_duty(text),
    **dict.fromkeys(("shaft_undercut_form", "housing_undercut_form"), _of_undercut),
    "drawing_number": _of_drawing,
    **dict.fromkeys(("shaft_seat_diameter", "housing_seat_diameter"), _of_seat),
}


def read_also_said(found: Found, words: Words) -> None:
    """Add a strip for every second value that cells state, where no other strip of the block states it."""
    for block in found.blocks:
        block.strips[:] = [one for strip in block.strips for one in _with_others(strip, block, words)]


def _with_others(strip: Strip, block: Block, words: Words) -> Iterator[Strip]:
    """A strip, maybe with other texts for its cells, and what else its cells state."""
    strip = _by_its_name(strip, words)
    says = _OTHERS.get(strip.parameter)
    if strip.aspect != "value" or says is None:
        yield strip
        return
    texts, kinds = _distinct(strip)
    told = [says(strip.parameter, text, words) for text in texts]
    if strip.parameter == "preload_force" and "spring" in concepts_said(strip.label):
        told = [_by_spring(one, text) for one, text in zip(told, texts, strict=True)]
    if not any(told):
        yield strip
        return
    said = [told[kind] for kind in kinds.tolist()]
    own = [one.get(strip.parameter) for one in said]
    if any(own):
        whole = {k: strip.whole.get(k, texts[kind]) for k, kind in enumerate(kinds.tolist()) if own[k]}
        cells = object_column([own[k] or cell for k, cell in enumerate(strip.cells.tolist())])
        yield evolve(strip, cells=cells, whole={**strip.whole, **whole})
    else:
        yield strip
    stated = {one.parameter for one in block.strips}
    for name in dict.fromkeys(name for one in told for name in one if name not in stated):
        yield _of_cells(strip, name, [(k, one[name]) for k, one in enumerate(said) if name in one])


def _distinct(strip: Strip) -> tuple[list[str], NDArray[np.intp]]:
    """Distinct texts of the cells of a strip, and the index of each cell into them."""
    if isinstance(strip.cells, TextColumn):
        return strip.cells.distinct()
    texts = [cell_text(cell) for cell in strip.cells.tolist()]
    numbers = {text: index for index, text in enumerate(dict.fromkeys(texts))}
    return list(numbers), np.fromiter(map(numbers.__getitem__, texts), dtype=np.intp, count=len(texts))


def _by_its_name(strip: Strip, words: Words) -> Strip:
    """A strip as its name and its cells together say it."""
    if strip.aspect == "value" and strip.parameter == "preload_force":
        return _method_or_force(strip)
    if strip.parameter == "lubrication":
        return _lubricant(strip)
    return _below_both(strip, words) if strip.parameter == "drawing_number" else strip


def _lubricant(strip: Strip) -> Strip:
    """A strip of lubricants: below the word for a grease its name, below that for an oil maybe its viscosity alone."""
    if concepts_said(strip.label) & {"grease", "oil"} == {"grease"}:
        return _named_grease(strip)
    said = [set(of_oil("lubrication", text)) for text in _distinct(strip)[0] if not is_blank(text)]
    if said and all(one == {"base_oil_viscosity_40"} for one in said):
        return evolve(strip, parameter="base_oil_viscosity_40")  # Oil: ISO VG 46
    return strip


def _by_spring(said: Said, text: str) -> Said:
    """What a cell says, and that a spring preloads: its name is the force of one (``Federkraft``)."""
    return {**said, "preload_method": "spring"} if _FORCE.search(text) else said


def _method_or_force(strip: Strip) -> Strip:
    """A strip of preloads as that of the way of preloading where its cells say that instead of a force."""
    name = method_by_cells(strip.parameter, _distinct(strip)[0])
    return strip if name == strip.parameter else evolve(strip, parameter=name, unit="", own_unit=False)


#: What greases are thickened with (common practice).
_MAKE = re.compile(
    r"lithium|litio|лити|урет|мочевин|urea|urée|harnstoff|[ck]al[cz]i|кальци|nlgi|ptfe|bentonit|бентонит|polyur"
    r"|リチウム|ウレア|カルシウム|锂|脲|钙"
)
#: A name that holds a number (``LGX-2``), as the designation of a grease does and a remark (``see note 3``) does not.
_NAMED = re.compile(r"(?<![^\W_])[^\W\d_]{1,6}-?\d")


def _is_grease(text: str) -> bool:
    """Whether a text says a grease where one stands: what it is made of, or its designation."""
    return _MAKE.search(caseless(text)) is not None or _NAMED.search(text) is not None


def _named_grease(strip: Strip) -> Strip:
    """A strip below the word for a grease, whose cells may give the name of one (``Grease``: *lithium complex*)."""
    texts = [cell_text(cell) for cell in strip.cells.tolist()]
    named = [not isinstance(read_choice("lubrication", text), str) and not missing_state(text)
             and not fill_said(text) and _is_grease(text) for text in texts]  # fmt: skip
    if not any(named):
        return strip
    cells = object_column(["grease" if named[k] else cell for k, cell in enumerate(strip.cells.tolist())])
    whole = {k: strip.whole.get(k, text) for k, text in enumerate(texts) if named[k]}
    return evolve(strip, cells=cells, whole={**strip.whole, **whole})


def _of_cells(strip: Strip, name: str, texts: list[tuple[int, str]]) -> Strip:
    """The strip of another parameter that some cells of a strip state."""
    at = np.array([index for index, _ in texts], dtype=np.intp)
    return Strip(
        name,
        object_column([text for _, text in texts]),
        strip.rows[at],
        label=strip.label,
        sheet=strip.sheet,
        lines=None if strip.lines is None else strip.lines[at],
        columns=None if strip.columns is None else strip.columns[at],
        pointers=None if strip.pointers is None else [strip.pointers[index] for index in at.tolist()],
        whole={k: strip.whole.get(index, cell_text(strip.cells[index])) for k, (index, _) in enumerate(texts)},
    )
