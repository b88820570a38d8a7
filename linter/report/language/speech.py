"""What a report says, in the language that it is written in: English as it stands, others from their catalogues."""

from collections.abc import Collection, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from pathlib import Path
from typing import Any

from linter.model.vocabulary import vocabulary
from linter.model.wording import words_of
from linter.report.language.catalogue import Catalogue, fill

#: Languages by the word of the option, with the tag that a page carries and the name in the language itself.
LANGUAGES = {
    "en": ("en", "English"),
    "de": ("de", "Deutsch"),
    "ja": ("ja", "日本語"),
    "zh": ("zh-Hans", "简体中文"),
}
DATA = Path(__file__).resolve().parent / "data"
#: What cells are called that no heading or label names.
_GIVEN = ("above the table", "cell note")

_language: ContextVar[str] = ContextVar("language", default="en")
_catalogue: ContextVar[Catalogue | None] = ContextVar("catalogue", default=None)


def entries_of(language: str) -> dict[str, str]:
    """The catalogue of a language with the names of the parameters as tables of that language have them."""
    from linter.report.language.parameters import parameter_words
    from linter.report.language.po import read_po

    entries = read_po(DATA / f"{language}.po")
    names = {words_of(name): word for name, word in parameter_words(language).items()}
    return {**{message: text for message, text in entries.items() if text}, **names}


@contextmanager
def speaking(
    language: str, own: Collection[str] = (), catalogue: Catalogue | None = None
) -> Iterator[Catalogue | None]:
    """Write in a language from here on; English needs nothing and reads nothing.

    Parameters
    ----------
    language : str
        A key of :data:`LANGUAGES`.
    own : collection of str
        Texts of the table at hand, which are not translated.
    catalogue : Catalogue, optional
        Another one than that of the language, for a test.

    Yields
    ------
    Catalogue or None
        What is spoken from; its ``lost`` are the texts without a translation. None for English.

    Raises
    ------
    ValueError
        For a language that there is no catalogue of.
    """
    if language not in LANGUAGES and catalogue is None:
        raise ValueError(f"no language {language!r}; known are {', '.join(LANGUAGES)}")
    if catalogue is None and language != "en":
        catalogue = Catalogue(entries_of(language), own)
    before = _language.set(language), _catalogue.set(catalogue)
    try:
        yield catalogue
    finally:
        _language.reset(before[0])
        _catalogue.reset(before[1])


def current() -> str:
    """The language that is spoken, a key of :data:`LANGUAGES`."""
    return _language.get()


def tag() -> str:
    """The tag of the language for ``lang`` attributes."""
    return LANGUAGES.get(current(), (current(),))[0]


def template(message: str) -> str:
    """A message of a report with its placeholders."""
    spoken = _catalogue.get()
    return message if spoken is None else spoken.message(message)


def say(message: str, **values: Any) -> str:
    """A message of a report with its placeholders filled; the values are not translated."""
    return fill(template(message), {name: str(value) for name, value in values.items()})


def told(text: str) -> str:
    """A text that checks, rulebook or reading made in English, in the language of the report."""
    spoken = _catalogue.get()
    return text if spoken is None or not text else spoken.sentence(text)


def counted(count: int, one: str, many: str, **values: Any) -> str:
    """One of two messages by a count, which is ``{count}`` in both."""
    from linter.model.wording import number_text

    return say(one if count == 1 else many, count=number_text(float(count)), **values)


def in_words(name: str) -> str:
    """A parameter in words: ``shaft_seat_diameter`` is "shaft seat diameter"."""
    words = words_of(name)
    return told(words) if name in vocabulary() else words


def name_of(name: str) -> str:
    """A name of a table as it stands there, or what the reading calls a cell that has none."""
    return say(name) if name in _GIVEN else name


def choice_of(text: str) -> str:
    """A word of a choice, or a text of the table where it is none."""
    spoken = _catalogue.get()
    return text if spoken is None else spoken.entries.get(text, text)
