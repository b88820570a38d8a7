"""A drawing office: its language, its machines and bearings, how it writes, and the forms that it fills."""

from dataclasses import dataclass
from typing import Any

from practice_twentieth.form import Style


@dataclass(frozen=True)
class Export:
    """One table of an office: its layout, its file, what its positions are called, its form, how many machines,
    and which parameters its words say besides."""

    layout: str
    file: str
    at: str
    form: Any
    count: int = 1
    also: str = ""


@dataclass(frozen=True)
class Office:
    """How an office writes; ``side`` is 0 where its tables have odd numbers."""

    language: str
    side: int
    machines: str
    bearings: str
    style: Style
    exports: tuple[Export, ...]
    units: str = ""


def style(words: str = "", *, comma: bool = False, group: str = "", zero: str = "0") -> Style:
    """A style; ``words`` are ``locating=Festlager; floating=Loslager``."""
    pairs = (part.split("=", 1) for part in words.split(";") if part.strip())
    return Style({key.strip(): word.strip() for key, word in pairs}, comma, group, zero)
