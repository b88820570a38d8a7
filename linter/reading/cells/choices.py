"""Choice texts to the words of the vocabulary: exact after folding, never by likeness.

Synonyms and translations are data (``data/choices.csv``): terms of the trade, common practice. A text that stands for
more than one word there (``ceramic``) is an error, not a choice. A material may also be stated by its grade (see
:mod:`linter.reading.cells.grades`).
"""

import re
from collections.abc import Mapping
from functools import cache, lru_cache
from pathlib import Path

from linter.model.packaged import columns_of
from linter.model.vocabulary import parameter
from linter.reading.cells.grades import material_of
from linter.reading.cells.han import simplified
from linter.reading.cells.phrases import phrase_of, plain_letters
from linter.reading.cells.signs import LONGEST_TEXT, ReadError, caseless, missing_state, shown

_DATA = Path(__file__).resolve().parent / "data" / "choices.csv"
_SHORT, _MOST_REMEMBERED = 100, 16_384
_WORDS = re.compile(r"[^\W\d_]+")
#: A duty type with its cyclic duration factor or its minutes (IEC 60034-1, from memory): ``S3 40 %``, ``S2-30 min``.
_DUTY_TYPE = re.compile(r"(s(?:[1-9]|10)),? *\(?\d{1,3} ?(?:%|min\.?)(?: ed)?\)?")
_JOINTS = re.compile(r"[\s_-]+")
#: Signs and words between the choices that a heading lists.
_ALTERNATIVES = re.compile(r"\s*[/／、・·|]\s*| (?:or|oder|ou|o|или) |或|または")


#: Heat treatment behind a grade of steel (common practice).
_TREATED = re.compile(
    r"(?P<steel>.*?\S)[\s,，、(（+]*(?:(?:整体|表面|高频|高周波)?(?:调质|調質|淬火|渗碳|滲碳|浸炭|回火|正火|氮化|窒化|焼入れ?|焼戻し|焼ならし|热处理|熱処理)"
    r"(?:处理|処理)?[\s+・]*)+[)）]?"
)


def _key(text: str) -> str:
    """A text for comparing: folded, case and joints put aside (no choice differs from another by case alone)."""
    return _JOINTS.sub(" ", caseless(text)).strip()


@cache
def _rows() -> dict[str, list[tuple[str, str]]]:
    """Word (or words, joined by ``|``) and text of the data file, by parameter."""
    rows: dict[str, list[tuple[str, str]]] = {}
    for name, word, text in columns_of(_DATA, "parameter", "word", "text"):
        rows.setdefault(name, []).append((word, text))
    return rows


@cache
def _known(name: str) -> dict[str, tuple[str, ...]]:
    """Key to the word or words it stands for. A word of the vocabulary itself wins over a synonym of another."""
    own = {_key(word): (word,) for word in parameter(name).choices}
    known: dict[str, tuple[str, ...]] = {}
    for words, text in _rows().get(name, ()):
        key = _key(text)
        if key not in own:
            known[key] = tuple(dict.fromkeys((*known.get(key, ()), *words.split("|"))))
    for key, several in list(known.items()):
        for plain in plain_letters(key):
            known.setdefault(plain, several)
    return known | own


def choice_texts(name: str) -> dict[str, tuple[str, ...]]:
    """Every text understood for a parameter, with the word or words it stands for; the spellings of the data file."""
    texts: dict[str, tuple[str, ...]] = {word: (word,) for word in parameter(name).choices}
    for _, text in _rows().get(name, ()):
        texts[text] = _known(name)[_key(text)]
    return texts


@cache
def _parameters_of() -> dict[str, frozenset[str]]:
    """Key of a choice to every parameter that has it."""
    found: dict[str, set[str]] = {}
    for name in _rows():
        for key, words in _known(name).items():
            if len(words) == 1:
                found.setdefault(key, set()).add(name)
    return {key: frozenset(names) for key, names in found.items()}


def choice_listed(text: str) -> str:
    """The one parameter of which a text lists two choices or more (``固定/自由``, ``horizontal / vertical``), or empty.

    A text with a figure is none: codes of choices stand in cells that way (``P5/P6``).
    """
    text = text.removesuffix("の別")
    pieces = _ALTERNATIVES.split(text) if len(text) <= LONGEST_TEXT and not any(map(str.isdigit, text)) else []
    if len(pieces) < 2:
        return ""
    keys = [_key(simplified(piece) or piece) for piece in pieces]
    common = frozenset.intersection(*(_parameters_of().get(key, frozenset()) for key in keys))
    name = next(iter(common)) if len(common) == 1 else ""
    if name == "cage" or name.endswith("material"):
        return ""  # what a part is made of stands in cells that way
    return name if name and len({_known(name)[key] for key in keys}) > 1 else ""


def lists_choices_of(name: str, text: str) -> bool:
    """Whether a text lists choices of a parameter, some of them in words that are known (``内圈/外圈``)."""
    pieces = _ALTERNATIVES.split(text) if len(text) <= LONGEST_TEXT else []
    known = _known(name) if len(pieces) > 1 and parameter(name).kind == "choice" else {}
    return any(_key(simplified(piece) or piece) in known for piece in pieces)


#: Codes of greases (DIN 51502, from memory: ``KP2K-30``).
_GREASE_CODE = re.compile(r"k(?:p|f|pf|e|hc|fk|si|x|l){0,2} ?[0-4](?:/[0-4])? ?(?:[c-u] ?\d{0,3})?")


def _names_a_grease(key: str) -> bool:
    """Whether a text is the name of a grease: the word for it, and nothing that names another lubrication."""
    if _GREASE_CODE.fullmatch(key):
        return True
    known = _known("lubrication")
    others = (text for text, words in known.items() if words != ("grease",))
    return any(known.get(word) == ("grease",) for word in _WORDS.findall(key)) and not any(o in key for o in others)


def _said_by_kind(name: str, text: str, key: str) -> str:
    """The choice that the name of a grease, or the kind of the spring that preloads, is of; empty for none."""
    if name == "lubrication":
        return "grease" if _names_a_grease(key) else ""
    return "spring" if name == "preload_method" and isinstance(read_choice("spring_kind", text), str) else ""


def _untreated(name: str, text: str) -> str:
    """A material without the heat treatment behind it (``45#调质``, ``S45C焼入れ焼戻し``); empty where none is."""
    found = _TREATED.fullmatch(text) if name.endswith("material") else None
    return found["steel"] if found else ""


def read_choice(name: str, text: str, more: Mapping[str, str] | None = None) -> str | ReadError:
    """The word of the vocabulary that a text stands for.

    Parameters
    ----------
    name : str
        A choice parameter.
    text : str
        Raw text.
    more : mapping of str to str, optional
        Further texts and their words, from a name mapping; they go first.

    Returns
    -------
    str or ReadError
        Codes ``unknown-choice``, ``ambiguous-choice``, ``too-long``, and ``empty``, ``not-applicable``, ``not-known``,
        ``see-above`` for a text that says the value is missing and is no choice of this parameter.
    """
    if more or len(text) > _SHORT:
        return _read_choice(name, text, more)
    return _choice_of(name, text)


@lru_cache(maxsize=_MOST_REMEMBERED)
def _choice_of(name: str, text: str) -> str | ReadError:
    return _read_choice(name, text, None)


def _read_choice(name: str, text: str, more: Mapping[str, str] | None) -> str | ReadError:
    words = parameter(name).choices
    expected = "one of: " + ", ".join(words)
    if len(text) > LONGEST_TEXT:
        return ReadError("too-long", text, expected, f"the text has {len(text)} signs, more than a choice can have")
    key = _key(text)
    if more:
        for their, ours in more.items():
            if _key(their) == key:
                return ours
    found = _known(name).get(key, ())
    if len(found) == 1:
        return found[0]
    if found:
        return ReadError("ambiguous-choice", text, expected, f"“{shown(text)}” can mean {' or '.join(found)}")
    if name == "duty" and (code := _DUTY_TYPE.fullmatch(key)):
        return read_choice(name, code[1], more)
    for other in filter(None, (simplified(text, sure=False), _untreated(name, text))):
        again = read_choice(name, other, more)
        if not isinstance(again, ReadError) or again.code == "ambiguous-choice":
            return again
    grade = material_of(name, key, lambda part: _known(name).get(part, ()))
    if grade is not None and len(grade) == 1:
        if grade[0] in words:
            return grade[0]
        return ReadError("unknown-choice", text, expected, f"“{shown(text)}” is {grade[0]}, no choice of {name}")
    if grade:
        return ReadError(
            "ambiguous-choice", text, " or ".join(grade) + ", by how far it expands with heat",
            f"“{shown(text)}” is a stainless grade that need not expand as the austenitic ones do",
        )  # fmt: skip
    if grade is not None:
        return ReadError("ambiguous-choice", text, expected, f"“{shown(text)}” names materials that differ")
    phrase = phrase_of(name, text, lambda part: _known(name).get(part, ())) if grade is None else ()
    if len(phrase) == 1:
        return phrase[0]
    if phrase:
        return ReadError("ambiguous-choice", text, expected, f"“{shown(text)}” can mean {' or '.join(phrase)}")
    if said := _said_by_kind(name, text, key):
        return said
    if state := missing_state(text):
        sentence = "nothing stands there" if state == "empty" else f"“{shown(text)}” says that the value is {state}"
        return ReadError(state.replace(" ", "-"), text, expected, sentence)
    return ReadError("unknown-choice", text, expected, f"“{shown(text)}” is not a choice of {name}")
