"""How much of each catalogue is translated, and what of the demo reports is not.

``python -m tests.report.languages``; with ``--list`` the texts too.
"""

import re
import sys
from collections.abc import Iterator
from functools import cache
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

from attrs import evolve

from linter.command.reviewing import Options, Reviewer
from linter.model.findings import ReviewResult
from linter.report import html
from linter.report.catalogues import messages
from linter.report.language import LANGUAGES, speaking
from linter.report.language.catalogue import Catalogue
from linter.report.language.po import read_po
from linter.report.language.speech import DATA, entries_of
from linter.rulebook.load import load

ROOT = Path(__file__).resolve().parents[2]
OTHERS = tuple(language for language in LANGUAGES if language != "en")
#: Attributes that are read out or shown.
_READ = ("aria-label", "title", "alt")
_VOID = ("br", "meta", "link", "img", "input", "hr")


@cache
def demo(name: str) -> ReviewResult:
    """The result of a demo table."""
    reviewer = Reviewer(Options(), load(None), None, None, None, frozenset())
    return reviewer.assessed(ROOT / "sample_exports" / name)


def demos() -> tuple[ReviewResult, ...]:
    """The results of the demo tables."""
    return tuple(demo(path.name) for path in sorted((ROOT / "sample_exports").iterdir()))


def page(result: ReviewResult, language: str, catalogue: Catalogue | None = None) -> tuple[str, list[str]]:
    """A report in a language, and the texts that its catalogue has no translation of."""
    lost: list[str] = []
    before = html.speaking

    def spoken(name: str, own: Any) -> Any:
        made = catalogue or (Catalogue(entries_of(name), own) if name != "en" else None)
        if catalogue is not None:
            catalogue.own = frozenset(own)
        held.append(made)
        return speaking(name, own, made)

    held: list[Catalogue | None] = []
    html.speaking = spoken  # type: ignore[assignment]
    try:
        text = html.html_text(evolve(result, language=language), load(None))
    finally:
        html.speaking = before
    for made in held:
        lost += made.lost if made is not None else ()
    return text, lost


class _Texts(HTMLParser):
    """Every piece of text of a page that is seen or read out."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []
        self.open: list[bool] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in _VOID:
            return
        self.open.append(tag in ("style", "code", "sub") or ("class", "sym") in attrs)
        self.found += [value for name, value in attrs if name in _READ and value]

    def handle_endtag(self, tag: str) -> None:
        if self.open:
            self.open.pop()

    def handle_data(self, data: str) -> None:
        if not any(self.open) and data.strip():
            self.found.append(data.strip())


def texts(page: str) -> list[str]:
    """Every piece of text of a page that is seen or read out; clause ids and names in ``code`` apart."""
    parser = _Texts()
    parser.feed(page)
    return parser.found


def still_english(result: ReviewResult, language: str) -> list[str]:
    """Texts of a report that read as in English and hold a word that another language would have another one for."""
    english = set(texts(page(result, "en")[0]))
    own = Catalogue({}, html._own(result) | {source.title for source in load(None).sources.values()})
    known = entries_of(language)
    names = set(load(None).sources) | set(load(None).clauses)

    def plain(text: str) -> bool:
        bare = text.strip(" .,;:()·→")
        return (
            re.fullmatch(r"[0-9a-f]{64}|[-\d.]+ \w+|[\w/]*/\w+|(?:column|row|Seats).*|\S+_\S+", bare) is not None
            or own.common(bare)
            or known.get(bare) == bare
            or bare in names
            or any(text in title or title in text for title in own.own if len(title) > 3)
        )

    return [text for text in dict.fromkeys(texts(page(result, language)[0])) if text in english and not plain(text)]


def shares() -> Iterator[tuple[str, int, int]]:
    """Language, messages translated, messages in all."""
    wanted = messages()
    for language in OTHERS:
        done = read_po(DATA / f"{language}.po")
        yield language, sum(bool(done.get(message)) for message in wanted), len(wanted)


def main() -> None:
    """Print the shares, and what of the demo reports is not translated."""
    for language, done, of in shares():
        print(f"{language}: {done} of {of} messages translated ({100 * done / of:.1f} %)")
    for language in OTHERS:
        for result in demos():
            lost = page(result, language)[1]
            same = still_english(result, language)
            print(f"{language} {Path(result.input.file).name}: {len(lost)} not found, {len(same)} as in English")
            if "--list" in sys.argv:
                for text in (*lost, *(f"= {text}" for text in same)):
                    print(f"    {text!r}")


if __name__ == "__main__":
    main()
