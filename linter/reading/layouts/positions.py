"""Columns below a row of positions: one row per machine, the same headings again for each position."""

from collections.abc import Callable, Sequence

from attrs import evolve

from linter.reading.files.intake import visible
from linter.reading.layouts.strips import Found, part_taken
from linter.reading.layouts.wide_heading import WideTable
from linter.reading.words.columns import judge_columns
from linter.reading.words.headings import Heading, Words
from linter.reading.words.machine_words import names_machine


def judged_by_position(
    table: WideTable, headings: list[Heading | None], cells: Callable[[int], Sequence[str]], words: Words
) -> list[Heading | None]:
    """Columns below positions: those of one position are judged beside each other, and each is of its station.

    Rows that no column names are told apart by the first column of texts that all differ.
    """
    inside = {c for _, start, end in table.positions for c in range(start, end)}
    outside = [c for c in range(len(headings)) if c not in inside]
    result = [*headings]
    for station, start, end in table.positions:
        columns = [*outside, *range(start, end)]
        labels = [table.labels[c] for c in columns]
        judged = judge_columns(labels, [headings[c] for c in columns], lambda k, at=columns: cells(at[k]), words)  # type: ignore[misc]
        for column, heading in zip(columns, judged, strict=True):
            of_station = column in inside and heading is not None and heading.entry.level == "station"
            result[column] = evolve(heading, station=station) if of_station and heading is not None else heading
    if not any(h is not None and h.parameter == "machine" for h in result):
        named = sorted(outside, key=lambda c: not names_machine(table.labels[c]))  # numbers may be sizes of a series
        for column in named:
            texts = list(cells(column))
            if names_machine(table.labels[column]) and result[column] is None and len(texts) == len(set(texts)) > 0:
                result[column] = Heading("machine")
                break
            if result[column] is None and 0 < len(texts) == len(set(texts)) and not any(map(_is_number, texts)):
                result[column] = Heading("machine")
                break
    return result


def _is_number(text: str) -> bool:
    return text.replace(",", ".").replace(".", "", 1).isdecimal()


def tell_taken(table: WideTable, headings: Sequence[Heading | None], found: Found) -> None:
    """What the columns of a table tell and no heading says: the one of the machine, whose a seat or shoulder is."""
    machine = ""
    for column, (heading, said) in enumerate(zip(headings, table.headings, strict=True)):
        label = table.labels[column]
        if heading is None:
            continue
        if heading.assumed and heading.aspect in ("value", "max"):
            row = next((r for r in range(table.bottom, table.top, -1) if table.grid.text(r, column)), table.top)
            found.problems.append(part_taken(table.grid.place(row, column), label, heading.parameter))
        if heading.parameter == "machine" and (said is None or said.parameter != "machine") and not machine:
            machine = visible(label or "without a heading", 40)
            found.say(f"the column {machine} tells the rows apart and is taken for the machine")
