"""Kinds of springs that the names of their values say: ``Wellfederkraft``, ``皿ばね荷重``."""

from collections.abc import Sequence
from functools import cache

from attrs import evolve

from linter.reading.cells.choices import choice_texts
from linter.reading.cells.signs import EASTERN, caseless
from linter.reading.files.grids import is_blank, object_column
from linter.reading.layouts.strips import Block

#: Parameters of the spring that preloads.
OF_SPRING = frozenset(
    ("preload_force", "preload_method", "spring_rate", "spring_free_length", "spring_installed_length")
)
_SHORTEST_SPRING = 8  # letters of a word for a kind of spring: coil, disc and wave may be of other things
_SPRING = "spring"


def take_springs_of_names(blocks: Sequence[Block]) -> None:
    """Read the kind of spring that the name of its force, rate or length says (``Wellfederkraft``, ``皿ばね荷重``)."""
    of_springs = [(b, s) for b in blocks for s in b.strips if s.parameter in OF_SPRING and s.aspect == "value"]
    kinds = {strip.label: kind for _, strip in of_springs if (kind := _kind_said(strip.label))}
    if not kinds:
        return
    stated = {name: {b.machines[r] for b in blocks for s in b.strips if s.parameter == name for r in s.rows}
              for name in ("spring_kind", "preload_method")}  # fmt: skip
    for block, strip in of_springs:
        machines = {block.machines[row] for row in strip.rows.tolist()}
        for name in stated if strip.label in kinds else ():
            text = kinds[strip.label] if name == "spring_kind" else _SPRING
            said = object_column([None if is_blank(cell) else text for cell in strip.cells.tolist()])
            if machines.isdisjoint(stated[name]):
                whole = dict.fromkeys(range(len(said)), strip.label)
                block.strips.append(evolve(strip, parameter=name, cells=said, unit="", own_unit=False, whole=whole))
                stated[name] |= machines


@cache
def _kind_said(label: str) -> str:
    """The kind of spring that a name holds; empty for none, and for two."""
    text = f" {caseless(label)}"
    said = {
        kinds[0] for word, kinds in choice_texts("spring_kind").items()
        if len(kinds) == 1 and (EASTERN.search(word) or f" {caseless(word)}" in text) and caseless(word) in text
        and len(word) >= (2 if EASTERN.search(word) else _SHORTEST_SPRING)
    }  # fmt: skip
    return said.pop() if len(said) == 1 else ""
