"""A language that nobody speaks: every message of a report four tenths longer, between brackets."""

from collections.abc import Collection

from linter.report.language.catalogue import SLOT, Catalogue


def longer(text: str) -> str:
    """A text with two fifths more letters, and a placeholder at its place."""
    own = len(SLOT.sub("", text))
    more = "äöüïé" * 40
    room, words = max(round(0.4 * own) - 2, 1), []
    while room > 0:
        words.append(more[: min(room, 6)])
        room -= 7
    return f"[{text} {' '.join(words)}]" if own > 3 else f"[{text}]"


class Pseudo(Catalogue):
    """The catalogue of that language: it has everything."""

    def __init__(self, own: Collection[str] = ()) -> None:
        super().__init__({}, own)

    def message(self, message: str) -> str:
        return longer(message)

    def sentence(self, text: str) -> str:
        return text if self.common(text) else longer(text)
