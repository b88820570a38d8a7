"""The report in the language of its reader; DEVELOPERS.md tells how a text gets there."""

from linter.report.language.speech import (
    LANGUAGES,
    choice_of,
    counted,
    current,
    in_words,
    name_of,
    say,
    speaking,
    tag,
    template,
    told,
)

__all__ = [
    "LANGUAGES",
    "choice_of",
    "counted",
    "current",
    "in_words",
    "name_of",
    "say",
    "speaking",
    "tag",
    "template",
    "told",
]
