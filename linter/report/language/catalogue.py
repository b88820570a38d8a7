"""A catalogue: English messages with placeholders, what they are in another language, and sentences found in it."""

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from functools import cached_property

from attrs import frozen

#: A placeholder of a message: what stands in braces is its name, whatever it is.
SLOT = re.compile(r"\{([^{}]*)\}")
#: What two texts are joined by, the weakest first; each is a message of the catalogue itself.
_JOINTS = (
    ("{1}; {2}", "; ", ""), ("{1}: {2}", ": ", ""), ("{1} ({2})", " (", ")"), ("{1}, or {2}", ", or ", ""),
    ("{1}, {2}", ", ", ""),
    ("{1} and {2}", " and ", ""), ("{1} or {2}", " or ", ""), ("{1} to {2}", " to ", ""), ("{1} at {2}", " at ", ""),
    ("{1} for {2}", " for ", ""),
)  # fmt: skip
JOINTS = (*(joint for joint, _, _ in _JOINTS), "{1}.")
_WORD = re.compile(r"[A-Za-z]{3,}")
#: Shorter words that say something in English only.
_SHORT = re.compile(r"\b(?:at|of|to|or|by|is|no|if|on|as|be|it)\b")
#: Letters of its own from which a message says more than a joint does.
_SAYS_MORE = 5
#: Ends of a plural, which a placeholder right behind a word may stand for.
_PLURALS = ("s", "es")
#: A parameter by its canonical name, which the report puts into words by itself.
_NAME = re.compile(r"\b[a-z]+(?:_[a-z0-9]+)+\b")
_NAME_FIRST = re.compile(r"([a-z]+(?:_[a-z0-9]+)+ )(.+)")
_STOP_FIRST = re.compile(r"([;:,] ?| (?=\())(.+)", re.DOTALL)
#: What may stand for a placeholder: brackets in it are closed in it. One right behind another, or behind a word, is a
#: stop and what follows it, or nothing.
_INSIDE = r"(?:[^()]|\((?:[^()]|\([^()]*\))*\))"
_IN_BRACKETS = re.compile(rf"\({_INSIDE}*\)", re.DOTALL)
#: Words of three and more letters that are the same in every language: units, functions, bodies of standards.
_COMMON = frozenset((
    "min", "max", "MPa", "GPa", "arcmin", "ISO", "DIN", "JIS", "ASTM", "ANSI", "ABMA", "VDI", "ABEC", "sin", "cos",
    "tan", "arctan", "log", "SHA", "CSV", "JSON", "QIF", "xlsx", "rpm", "PEEK", "NBR", "FKM", "PTFE", "HNBR", "ACM",
    "VMQ", "PUR", "POM", "GJL", "GJS", "AlSi", "MgCr", "CrMo", "CrNiMo", "ringseat",
))  # fmt: skip


@frozen
class _Pattern:
    """A message with placeholders as a pattern.

    ``named`` tells the slots that are a part of a parameter's canonical name, which stays; ``plain`` is how many
    letters the message has of its own.
    """

    message: str
    found: tuple[re.Pattern[str], ...]
    slots: tuple[str, ...]
    named: tuple[bool, ...]
    plain: int
    word: str


class Catalogue:
    """Messages of one language.

    Parameters
    ----------
    entries : mapping of str to str
        English message to its translation, both with the same placeholders in braces.
    own : collection of str
        Texts of the table at hand, such as the names of its machines: they stay as they are.
    """

    def __init__(self, entries: Mapping[str, str], own: Collection[str] = ()) -> None:
        self.entries = {message: text for message, text in entries.items() if text}
        self.own = frozenset(own)
        names = sorted((name for name in self.own if _WORD.search(name)), key=lambda name: (-len(name), name))
        self._names = re.compile(rf"(?<!\w)(?:{'|'.join(map(re.escape, names))})(?!\w)") if names else None
        self.lost: dict[str, None] = {}
        self._known: dict[str, tuple[str, bool]] = {}
        self._parts: dict[str, list[str]] = {}

    def message(self, message: str) -> str:
        """The translation of a message with its placeholders; without one the message, which is noted as lost."""
        text = self.entries.get(message)
        if text is None:
            if not self.common(SLOT.sub("", message)):
                self.lost[message] = None
            return message
        return text

    def sentence(self, text: str) -> str:
        """The translation of a text whose placeholders are filled; what is not found is left as it is and noted."""
        told, whole = self._told(text)
        if not whole:
            self.lost.update(dict.fromkeys(self._unknown(text)))
        return told

    def _unknown(self, text: str) -> Iterator[str]:
        """What of a text is not found: the text itself, or what stands for a placeholder of its message."""
        parts = self._parts.get(text)
        if not parts:
            yield text
        for part in parts or ():
            if part in self._known and not self._known[part][1]:
                yield from self._unknown(part)

    def common(self, text: str) -> bool:
        """Whether a text needs no translation: figures, symbols, units, classes, or a text of the table itself."""
        if text in self.own:
            return True
        rest = _NAME.sub("", text) if self._names is None else self._names.sub("", _NAME.sub("", text))
        return _SHORT.search(rest) is None and all(w in _COMMON or w.isupper() for w in _WORD.findall(rest))

    def _told(self, text: str) -> tuple[str, bool]:
        """The translation, and whether all of it was found."""
        if text not in self._known:
            self._known[text] = text, False  # a text inside itself ends here
            self._known[text] = self._looked_up(text)
        return self._known[text]

    def _looked_up(self, text: str) -> tuple[str, bool]:
        if text in self.own:
            return text, True
        for form in dict.fromkeys((text, f"{text[:1].lower()}{text[1:]}")):
            if form in self.entries:
                return _like(self.entries[form], text if form != text else ""), True
        if self.common(text):
            return text, True
        if _IN_BRACKETS.fullmatch(text) and (rest := self._told(text[1:-1]))[1]:
            return fill(self.entries.get("{1} ({2})", "{1} ({2})"), {"1": "", "2": rest[0]}).strip(), True
        for first in (_STOP_FIRST, _NAME_FIRST):
            if (found := first.fullmatch(text)) and (rest := self._told(found[2]))[1]:
                front = found[1].rstrip() if rest[0].startswith("（") else found[1]  # a wide bracket has its own blank
                return self.entries.get(found[1].strip() + "{1}", front + "{1}").replace("{1}", rest[0]), True
        best = text, False
        for patterns in self._patterns:
            for told, whole in self._matches(text, patterns):
                if whole:
                    return told, True
                if best[0] == text:
                    best = told, False
            if patterns is self._patterns[0] and (joined := next(self._joined(text), None)) is not None:
                return joined, True
        return best

    def _matches(self, text: str, patterns: Sequence[_Pattern]) -> Iterator[tuple[str, bool]]:
        """What the text is by each message that it may be made of, the one with most letters of its own first."""
        for pattern in patterns:
            if pattern.word not in text:
                continue
            matches = (match for found in pattern.found if (match := found.fullmatch(text)))
            for parts in dict.fromkeys(match.groups() for match in matches):
                slots = [
                    (found, True) if named else ("", True) if found in _PLURALS else self._told(found)
                    for found, named in zip(parts, pattern.named, strict=True)
                ]
                self._parts.setdefault(text, list(parts))
                values = dict(zip(pattern.slots, (told for told, _ in slots), strict=True))
                yield _like(fill(self.entries[pattern.message], values), text), all(whole for _, whole in slots)

    def _joined(self, text: str) -> Iterator[str]:
        """What the text is where it is two known ones, joined."""
        for joint, between, end in _JOINTS:
            body = text.removesuffix(end)
            if end and body == text:
                continue
            at = body.find(between)
            while at > 0:
                left, right = self._told(body[:at]), self._told(body[at + len(between) :])
                if left[1] and right[1]:
                    yield fill(self.entries.get(joint, joint), {"1": left[0], "2": right[0]})
                at = body.find(between, at + 1)
        if text.endswith(".") and len(text) > 1 and (whole := self._told(text[:-1]))[1]:
            yield fill(self.entries.get("{1}.", "{1}."), {"1": whole[0]})

    @cached_property
    def _patterns(self) -> tuple[tuple[_Pattern, ...], tuple[_Pattern, ...]]:
        """Messages that say more than a joint, and those that do not and come behind the joints."""
        made = [_pattern(message) for message in self.entries if SLOT.search(message) and message not in JOINTS]
        made = sorted((p for p in made if p.plain), key=lambda p: (-p.plain, p.message))
        return tuple(p for p in made if p.plain >= _SAYS_MORE), tuple(p for p in made if p.plain < _SAYS_MORE)


def _pattern(message: str) -> _Pattern:
    pieces = SLOT.split(message)
    plain = "".join(pieces[::2])
    seen: list[str] = []
    named: list[bool] = []
    text = ""
    for k, piece in enumerate(pieces):
        if k % 2:
            close = pieces[k - 1][-1:].isalnum() or (k > 1 and not pieces[k - 1])  # what may be added, or nothing
            slot = rf"(?:(?:[;:,] ?| ?(?=\()){_INSIDE}*?|(?<=[a-z])e?s(?![a-z])|)" if close else f"{_INSIDE}+?"
            text += f"(?P=s{seen.index(piece)})" if piece in seen else f"(?P<s{len(seen)}>{slot})"
            if piece not in seen:
                seen.append(piece)
                named.append(pieces[k + 1][:1] == "_")
        elif k == 0 and piece[:1].isalpha():
            text += f"[{piece[0].lower()}{piece[0].upper()}]{re.escape(piece[1:])}"
        else:
            text += re.escape(piece)
    words = _WORD.findall("".join(pieces[2::2]) if pieces[0] else plain) or _WORD.findall(plain[1:]) or [""]
    ways = tuple(re.compile(way, re.DOTALL) for way in dict.fromkeys((text, text.replace("+?)", "+)"))))
    return _Pattern(message, ways, tuple(seen), tuple(named), len(plain.replace(" ", "")), max(words, key=len))


def fill(message: str, values: Mapping[str, str]) -> str:
    """A message with its placeholders filled; one without a value stays."""
    return SLOT.sub(lambda found: values.get(found[1], found[0]), message)


def _like(told: str, text: str) -> str:
    """A translation that begins with a capital letter where the text does; the name of a parameter stays as it is."""
    return told[:1].upper() + told[1:] if text[:1].isupper() and not _NAME.match(told) else told
