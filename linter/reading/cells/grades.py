"""Material grades to the material words of the vocabulary: ``42CrMo4`` is a steel, ``AlSi10Mg`` an aluminium.

A grade says its material by the rules of its own standard, which ``data/grades.csv`` holds as one pattern per row:
nothing is taken by likeness. A grade of stainless steel that does not expand as the austenitic ones do may be meant by
either of two words of the vocabulary, and both are given back.
"""

import re
from collections.abc import Callable
from functools import cache
from pathlib import Path

from linter.model.packaged import columns_of

_DATA = Path(__file__).resolve().parent / "data" / "grades.csv"
_COLUMN = {"shaft_material": "seat", "housing_material": "seat", "ring_material": "ring", "ball_material": "ball"}
_STATE = "-"
_STEEL, _STEELS = ("steel",), ("stainless steel",)
_JOINTS = re.compile(r"( *[()\[\]/,;] *|\+(?=\w)| )")
#: Where a word of Chinese or Japanese and a grade meet (``铝合金6061``).
_SCRIPTS = re.compile(r"(?<=[\u3040-\u30ff\u3400-\u9fff])(?=[a-z0-9])|(?<=[a-z0-9#])(?=[\u3040-\u30ff\u3400-\u9fff])")
_LONGEST, _MOST_PARTS = 80, 8


@cache
def _patterns(column: str) -> list[tuple[re.Pattern[str], tuple[str, ...] | None]]:
    """Pattern and words of each row: none for a state of treatment, None for a material that is none of these."""
    rows = columns_of(_DATA, "pattern", column)
    return [
        (re.compile(pattern), () if words == _STATE else tuple(words.split("|")) if words else None)
        for pattern, words in rows
    ]


def material_of(name: str, key: str, known: Callable[[str], tuple[str, ...]]) -> tuple[str, ...] | None:
    """Words that the grades in a text stand for.

    Parameters
    ----------
    name : str
        A material parameter; any other has no grades.
    key : str
        The text, folded, in small letters, joints as blanks.
    known : callable
        The words that a text stands for by itself, as ``steel`` does; empty for none.

    Returns
    -------
    tuple of str or None
        One word; several where the grade leaves it open; none (an empty tuple) where the parts of the text contradict
        each other; None where a part of the text is not understood or names no material.
    """
    if name not in _COLUMN or len(key) > _LONGEST:
        return None
    if any(pattern.fullmatch(key) for pattern, _ in _patterns(_COLUMN[name])):
        pieces = [key]
    else:
        pieces = _JOINTS.split(_SCRIPTS.sub(" ", key))
    parts, joints = pieces[::2], [*pieces[1::2], ""]
    if len(parts) > _MOST_PARTS:
        return None

    def meaning(text: str) -> tuple[str, ...] | None:
        if words := known(text):
            return words
        return next((words for pattern, words in _patterns(_COLUMN[name]) if pattern.fullmatch(text)), None)

    # the longest run of parts that means something first: "en aw 6082 t6" before "en"
    at, meant = 0, []
    by_words: set[tuple[str, ...]] = set()
    while at < len(parts):
        if not parts[at]:
            at += 1
            continue
        for end in range(len(parts), at, -1):
            run = "".join(part + joint for part, joint in zip(parts[at:end], joints[at:end], strict=True))
            if (words := meaning(run.strip(" ()[],;/+"))) is not None:
                meant.append(words)
                by_words.add(known(run.strip(" ()[],;/+")))
                at = end
                break
        else:
            return None
    if "/" in key and {_STEEL, _STEELS} <= by_words:
        return ()  # steel / stainless steel: either
    return _in_common([words for words in meant if words])


def _in_common(materials: list[tuple[str, ...]]) -> tuple[str, ...] | None:
    """The words that all parts of a text allow; None where no part names a material."""
    if not materials:
        return None
    # a steel that its grade tells to be a stainless one, maybe: ``сталь 12Х18Н10Т``, ``steel 1.4021``
    others = [words for words in materials if words != _STEEL] or materials
    materials = others if all(set(words) <= {*_STEEL, *_STEELS} for words in others) else materials
    return tuple(word for word in materials[0] if all(word in words for words in materials))
