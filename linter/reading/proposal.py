"""A proposed name mapping for one table: unknown words, what every other is taken for, and what the file leaves open.

Nothing of it is applied; it is a file to check, edit and pass on. What is not sure stands behind ``#``. Whatever can be
accepted says what it would change: the values that are read now, and those that would be read then.
"""

import tomllib
from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from attrs import evolve

from linter.model.stations import Problem
from linter.reading import InputError, read_names, read_table
from linter.reading.cells.signs import fold, shown
from linter.reading.files.code_pages import likely_encodings
from linter.reading.record import Reading, Taken
from linter.reading.words.mapping import Aspect, Mapped, Mapping, MappingError, parse_mapping
from linter.reading.words.names import Names
from linter.reading.words.propose import open_positions, proposal_toml, propose, quoted

#: Problems that one statement about the whole file answers: its key, and what can be written there.
_ANSWERS: dict[str, tuple[str, tuple[str | bool, ...], str]] = {
    "unit-missing": ("default_unit", ("mm", "inch"), "lengths stand without a unit"),
    "ambiguous-number": ("decimal", (".", ","), "numbers can have a decimal mark or grouped thousands"),
    "half-or-full-band": ("half_width", (True,), "tolerances can be half the band or the whole of it"),
}


#: Problems of sizes that another aspect of their column may answer, and the aspects that are tried.
_ASPECT_ASKED = frozenset(
    ("unsigned-deviations", "unsigned-deviation", "unlikely-deviations", "reversed-limits", "reversed-deviations",
     "range-of-sizes", "no-nominal", "not-a-size", "stated-twice")
)  # fmt: skip
_ASPECTS: tuple[Aspect, ...] = ("value", "upper", "lower", "max", "min", "class")
#: Tables with more stations get no figures of what an answer would change: each takes a reading of its own.
_MOST_STATIONS = 5_000
_MOST_ASKED, _MOST_SHOWN = 6, 3


def proposal_text(table: Path, names: Names, shown_as: str) -> str:
    """The text of a proposed name mapping (TOML).

    Parameters
    ----------
    table : path
        The table.
    names : Names
        The names that are understood already.
    shown_as : str
        Name of the table in the text.

    Returns
    -------
    str
        A mapping that the reader accepts as it stands.

    Raises
    ------
    InputError
        If the file cannot be opened or parsed.
    """
    trial = _Trial(table, names, shown_as)
    # what the table tells of a name (its position, its cells) would be lost with a mapping of it
    read_already = {fold(taken.label) for taken in trial.now.taken} if trial.now is not None else set()
    try:
        words = read_names(table, names, shown_as=shown_as)
        open_words = (word.text for word in words if fold(word.text) not in read_already)
        proposals = propose(open_words, names)
        text = proposal_toml(proposals if trial.now is None else [*open_positions(proposals)], shown_as)
    except InputError as error:
        if error.code != "encoding":
            raise
        text = f"# Proposed names for {shown(shown_as)}: none before the encoding is known.\n"
    if trial.now is None:
        refused = _commented([f"The table is not read yet: {trial.refusal}"])
        options = trial.pages() if trial.code == "encoding" else []
        return "\n".join(part for part in (text, refused, trial.accepted(text), _file_part(options)) if part)
    problems = trial.now.stations.problems
    parts = (
        text,
        trial.accepted(text),
        "".join(f"{line}\n" for line in trial.aspects()),
        _commented(_taken(trial.now, names)),
        _file_part([*trial.answers(problems), *(trial.pages() if _took_page(problems) else [])]),
    )
    return "\n".join(part for part in parts if part)


class _Trial:
    """A table read as it is, and read again with one answer or another."""

    def __init__(self, table: Path, names: Names, shown_as: str) -> None:
        self.table, self.names, self.shown_as = table, names, shown_as
        self.refusal, self.code = "", ""
        self.now: Reading | None = None
        try:
            self.now = read_table(table, names, shown_as=shown_as)
        except InputError as error:
            self.refusal, self.code = str(error), error.code
        self.values = _values(self.now)
        self.tries = self.now is None or len(self.now.stations) <= _MOST_STATIONS

    def read(self, mapping: Mapping) -> Reading | None:
        """The table read with another mapping; None where it is refused then."""
        try:
            return read_table(self.table, Names(mapping), shown_as=self.shown_as)
        except InputError:
            return None

    def change(self, mapping: Mapping) -> str:
        """What a mapping would change, in words."""
        if not self.tries:
            return ""
        return _change(self.values, _values(self.read(mapping)))

    def accepted(self, text: str) -> str:
        """What the lines in force would change."""
        try:
            proposed = parse_mapping(tomllib.loads(text), self.shown_as)
        except MappingError:
            return ""
        if not proposed.names:
            return ""
        change = self.change(evolve(self.names.mapping, names={**self.names.mapping.names, **proposed.names}))
        return _commented([f"Accepted as it stands: {change}"]) if change else ""

    def answers(self, problems: Sequence[Problem]) -> Iterator[str]:
        """Statements about the whole file that would answer what it leaves open; none is in force."""
        count = Counter(problem.code for problem in problems)
        for code, (key, values, said) in _ANSWERS.items():
            if not count[code]:
                continue
            first = next(p for p in problems if p.code == code)
            at = f", first at {first.place.short()}" if first.place is not None else ""
            yield f"# {count[code]} {said}{at} ({shown(first.read, 40)}); one of:"
            for value in values:
                yield from self._option(key, value)

    def pages(self) -> list[str]:
        """The encodings that the text may be in, each with what would be read."""
        options = [line for page in likely_encodings(self.table) for line in self._option("encoding", page)]
        return ["# the text states no encoding; one of:", *options] if options else []

    def _option(self, key: str, value: str | bool) -> Iterator[str]:
        written = str(value).lower() if isinstance(value, bool) else f'"{value}"'
        yield f"# {key} = {written}"
        answer: dict[str, Any] = {key: value}
        change = self.change(evolve(self.names.mapping, **answer))
        if change:
            yield f"#   then: {shown(change, 400)}"

    def aspects(self) -> Iterator[str]:
        """Columns of sizes that are asked about and would be read with another aspect: what each would change."""
        if self.now is None or not self.tries:
            return
        asked = Counter(p.parameter for p in self.now.stations.problems if p.code in _ASPECT_ASKED and p.parameter)
        labels = [t for t in self.now.taken if asked[t.parameter] and not self.names.mapping.find(fold(t.label))]
        for names in _alternatives(labels[:_MOST_ASKED]):
            mapping = self.names.mapping
            then = self.read(evolve(mapping, names={**mapping.names, **{fold(k): v for k, v in names.items()}}))
            parameter = next(iter(names.values())).parameter
            if then is None or _asked(then, parameter) >= _asked(self.now, parameter):
                continue
            yield f"# {parameter} is asked about; if these state another part of the size:"
            for label, mapped in names.items():
                unit = f", unit = {quoted(mapped.unit)}" if mapped.unit else ""
                yield f'# {quoted(label)} = {{parameter = "{parameter}", aspect = "{mapped.aspect}"{unit}}}'
            yield f"#   then: {shown(_change(self.values, _values(then)), 400)}"


def _alternatives(labels: Sequence[Taken]) -> Iterator[dict[str, Mapped]]:
    """Other aspects of the columns of one parameter: deviations for limits, limits for deviations, then each alone."""
    for turned in ({"upper": "max", "lower": "min"}, {"max": "upper", "min": "lower"}):
        for name in dict.fromkeys(t.parameter for t in labels):
            pair = [t for t in labels if t.parameter == name and t.aspect in turned]
            if len(pair) > 1:
                yield {t.label: Mapped(name, None, t.unit or None, turned[t.aspect]) for t in pair}  # type: ignore[arg-type]
    for taken in labels:
        for aspect in _ASPECTS:
            if aspect != {"tolerance": "class"}.get(taken.aspect, taken.aspect):
                yield {taken.label: Mapped(taken.parameter, None, taken.unit or None, aspect)}


def _asked(reading: Reading, name: str) -> int:
    """How many problems of a parameter are left."""
    return sum(p.parameter == name and p.kind in ("unreadable", "disagreement") for p in reading.stations.problems)


def _took_page(problems: Sequence[Problem]) -> bool:
    return any(problem.code == "code-page" for problem in problems)


def _values(reading: Reading | None) -> dict[tuple[str, str], str]:
    """Every value that a reading understands, by parameter and place."""
    used = [] if reading is None else reading.understood
    return {(u.parameter, u.place.short()): u.value for u in used}


def _change(now: dict[tuple[str, str], str], then: dict[tuple[str, str], str]) -> str:
    """What changes between two readings: how many values, and the first of each sort."""
    new = [key for key in then if key not in now]
    gone = [key for key in now if key not in then]
    other = [key for key in then if key in now and now[key] != then[key]]
    parts = []
    for keys, said in ((new, "more than are read now"), (other, "read differently"), (gone, "not read any more")):
        if keys:
            first = "; ".join(_shown(key, now, then) for key in keys[:_MOST_SHOWN])
            more = f"; and {len(keys) - _MOST_SHOWN} more" if len(keys) > _MOST_SHOWN else ""
            parts.append(f"{len(keys)} value{'s' * (len(keys) > 1)} {said} ({first}{more})")
    return ", ".join(parts) or "no value changes"


def _shown(key: tuple[str, str], now: dict[tuple[str, str], str], then: dict[tuple[str, str], str]) -> str:
    name, place = key
    return f"{name} at {place}: {now.get(key, 'not read')} -> {then.get(key, 'not read')}"


def _commented(lines: Sequence[str]) -> str:
    return "".join(f"# {shown(line, 600)}\n" for line in lines)


def _taken(reading: Reading, names: Names) -> list[str]:
    """What every word that is used is taken for, and why."""
    lines = ["What every other word is taken for now:"]
    for taken in reading.taken:
        match = names.find(taken.label)
        by_name = match is not None and match.parameter == taken.parameter
        why = "the name mapping" if match is not None and match.mapped else "its name" if by_name else "its cells"
        aspect = "" if taken.aspect == "value" else f", {taken.aspect}"
        unit = f" in {taken.unit}" if taken.unit else ""
        lines.append(f"  {shown(taken.label)!r}: {taken.parameter}{aspect}{unit} (by {why})")
    lines += [f"  {shown(u.name)!r}: not used, {u.reason}" for u in reading.unused if u.name]
    return lines


def _file_part(lines: Sequence[str]) -> str:
    """What can be stated of the whole file."""
    return "[file]\n" + "\n".join(lines) + "\n" if lines else ""
