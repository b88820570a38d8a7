"""A proposed name mapping for one table: unknown words, what every other is taken for, and what the file leaves open.

Nothing of it is applied; it is a file to check, edit and pass on. What is not sure stands behind ``#``.
"""

from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path

from linter.model.stations import Problem
from linter.reading import InputError, read_names, read_table
from linter.reading.cells.signs import shown
from linter.reading.record import Reading
from linter.reading.words.names import Names
from linter.reading.words.propose import proposal_toml, propose

#: Problems that one statement about the whole file answers: its key, and what can be written there.
_ANSWERS = {
    "unit-missing": ("default_unit", ("mm", "inch"), "lengths stand without a unit"),
    "ambiguous-number": ("decimal", (".", ","), "numbers can have a decimal mark or grouped thousands"),
    "half-or-full-band": ("half_width", (True,), "tolerances can be half the band or the whole of it"),
}


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
    words = read_names(table, names, shown_as=shown_as)
    text = proposal_toml(propose((word.text for word in words), names), shown_as)
    try:
        reading = read_table(table, names, shown_as=shown_as)
    except InputError as error:
        return f"{text}\n{_commented([f'The table is not read yet: {error}'])}"
    return "\n".join(
        part for part in (text, _commented(_taken(reading, names)), _file_part(reading.stations.problems)) if part
    )


def _commented(lines: Sequence[str]) -> str:
    return "".join(f"# {shown(line, 300)}\n" for line in lines)


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


def _file_part(problems: Sequence[Problem]) -> str:
    """Statements about the whole file that would answer what it leaves open; none is in force."""
    lines = list(_answers(problems))
    return "[file]\n" + "\n".join(lines) + "\n" if lines else ""


def _answers(problems: Sequence[Problem]) -> Iterator[str]:
    count = Counter(problem.code for problem in problems)
    for code, (key, values, said) in _ANSWERS.items():
        if not count[code]:
            continue
        first = next(p for p in problems if p.code == code)
        at = f", first at {first.place.short()}" if first.place is not None else ""
        yield f"# {count[code]} {said}{at} ({shown(first.read, 40)}); one of:"
        for value in values:
            written = str(value).lower() if isinstance(value, bool) else f'"{value}"'
            yield f"# {key} = {written}"
