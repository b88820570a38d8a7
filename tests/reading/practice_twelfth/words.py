"""The words of the offices: each line holds a key and its synonyms.

Keys: a parameter of the vocabulary; ``part.`` and ``feature.`` for headings put together by a ``join``; ``aspect.`` for
what a column says of a size; ``col.`` for the heads of lists; ``=`` for a choice of the vocabulary. ``noise`` holds
columns that mean nothing to a review, with the values of two positions. A line that begins with ``|`` goes on the last.
"""

from random import Random

from . import words_en_de, words_fr_it_es, words_ru_zh_ja


def _parse(text: str) -> dict[str, list[str]]:
    lines = (line.split(": ", 1) for line in text.strip().replace("\n  | ", " | ").splitlines())
    return {key: [word.strip() for word in words.split(" | ")] for key, words in lines}


LANGUAGES = {
    "en": _parse(words_en_de.EN), "de": _parse(words_en_de.DE), "fr": _parse(words_fr_it_es.FR),
    "it": _parse(words_fr_it_es.IT), "es": _parse(words_fr_it_es.ES), "ru": _parse(words_ru_zh_ja.RU),
    "zh": _parse(words_ru_zh_ja.ZH), "ja": _parse(words_ru_zh_ja.JA),
}  # fmt: skip


class Words:
    """The words of one table: the same key gives the same word throughout a table."""

    def __init__(self, language: str, rng: Random) -> None:
        self.language, self.rng, self.drawn = language, rng, dict[str, str]()
        self.known = LANGUAGES[language]

    def __call__(self, key: str) -> str:
        if key not in self.drawn:
            self.drawn[key] = self.rng.choice(self.known[key])
        return self.drawn[key]

    def any(self, key: str) -> str:
        """A word for the key, another one each time."""
        return self.rng.choice(self.known[key])

    def name(self, parameter: str, joined: bool) -> str:
        """The heading of a parameter; ``joined``: put together from part and feature where it belongs to one."""
        part, _, feature = parameter.partition("_")
        if joined and f"feature.{feature}" in self.known and part in ("shaft", "housing"):
            return self("join").format(p=self(f"part.{part}"), f=self(f"feature.{feature}"))
        return self("col.position" if parameter == "station" else parameter)
