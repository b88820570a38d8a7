"""The way from a file to its stations."""

import os
import re
from collections.abc import Callable, Iterator
from functools import partial
from itertools import islice
from typing import Any

from attrs import evolve

from linter.model.places import Place
from linter.model.stations import Bools, Problem, Understood, apply_defaults
from linter.model.vocabulary import parameter
from linter.reading.cells.numbers import Decimal, vote_decimal
from linter.reading.files.bounds import without_collecting
from linter.reading.files.code_pages import is_open, likely_pages
from linter.reading.files.formats import other_format
from linter.reading.files.grids import CELL_END, Grid, TextColumn, cell_text
from linter.reading.files.intake import READABLE, FileKind, InputError, Source, load, visible
from linter.reading.files.own_quotes import values_without_quotes, without_quotes
from linter.reading.layouts.also_said import read_also_said
from linter.reading.layouts.constant_columns import take_constant_columns, with_machine_of_column
from linter.reading.layouts.cover_material import leave_cover_material
from linter.reading.layouts.decimal_by_sizes import decimal_by_sizes
from linter.reading.layouts.frame_labels import with_frame_labels, with_values_labelled
from linter.reading.layouts.left_over import left_over, tell_unreviewed
from linter.reading.layouts.no_positions import leave_no_positions
from linter.reading.layouts.part_numbers import leave_part_numbers
from linter.reading.layouts.rated_speed import leave_rated_speed
from linter.reading.layouts.remark_columns import take_remarks_of_objects
from linter.reading.layouts.roughness import by_custom
from linter.reading.layouts.sentences import take_sentences, without_sentences
from linter.reading.layouts.sheet import lay_out_grid, tell_unheaded_rows
from linter.reading.layouts.sheet_names import OfSheet, name_by_sheets
from linter.reading.layouts.sheet_words import words_across
from linter.reading.layouts.springs_of_names import take_springs_of_names
from linter.reading.layouts.strips import Found, TableWord
from linter.reading.layouts.together import take_apart
from linter.reading.layouts.unit_by_sizes import unit_by_sizes
from linter.reading.record import Reading, Taken
from linter.reading.settling.bearing_list import BearingList, bearings_of, numbered
from linter.reading.settling.said_again import said_again
from linter.reading.settling.stations import Resolver
from linter.reading.settling.understood import At, places, understood_cells
from linter.reading.words.headings import Words
from linter.reading.words.inside import COMMON
from linter.reading.words.names import Names
from linter.reading.words.own_stations import with_stations

_EXPECTED = (
    "a table of seat parameters: a heading row such as machine, station, bore_diameter, shaft_seat_diameter, "
    "or one row per parameter with name, value and unit"
)
_MARKS: dict[Decimal | None, str] = {".": "point", ",": "comma", None: "not settled by the table"}
_VOTERS = 50
_KEYS = ("machine", "station", "drawing_number", "drawing_revision")
_FEW, _MANY, _SHARE = 2, 5, 0.25
_NO_NAMES = ("not a row of values", "no label of the table's head is known here")
_GROUPING = re.compile(r"^.*\d\.\d{3}[.,]\d.*$|^.*\d,\d{3}[.,]\d.*$", re.MULTILINE)
_ALL_BUT_MARKS = bytes(set(range(256)) - {*b".,", CELL_END})


@without_collecting()
def read(
    path: str | os.PathLike[str], names: Names | None, shown_as: str | None, bearings: BearingList | None = None
) -> Reading:
    """Read a table; see :func:`linter.reading.read_table`."""
    source = load(path, shown_as)
    names = names or Names.built_in()
    if names.mapping.encoding or not is_open(source):
        return _read(source, names, bearings)
    return _read_in_pages(source, names, bearings)


def _read_in_pages(source: Source, names: Names, bearings: BearingList | None) -> Reading:
    """Read a text whose encoding is not stated under each likely code page, and take one where they agree.

    A page under which less is understood is put aside. Where two pages give one cell two meanings, none is taken.
    """
    readings: list[tuple[str, Reading]] = []
    refused: list[InputError] = []
    for page in likely_pages(source):
        try:
            readings.append((page, _read(evolve(source, code_page=page), names, bearings)))
        except InputError as error:
            refused.append(error)
    if not readings and len(refused) == 1:
        raise refused[0]
    if not readings:
        return _read(source, names, bearings)  # which says that it is no UTF-8
    meant = [{(u.parameter, u.place, u.row): u for u in reading.understood} for _, reading in readings]
    most = max(map(len, meant))
    left = [(page, cells) for (page, _), cells in zip(readings, meant, strict=True) if len(cells) == most]
    page, cells = left[0]
    for other, others in left[1:]:
        for key in cells | others:
            one, two = cells.get(key), others.get(key)
            if one is None or two is None or one.value != two.value:
                texts = [f"{visible(c.read, 40)!r} in {p}" for c, p in ((one, page), (two, other)) if c is not None]
                place = key[1]
                expected = f"the encoding of the text, stated in the name mapping ([file] encoding = {page!r})"
                raise source.refuse("encoding", " or ".join(texts), expected, sheet=place.sheet, cell=place.cell)
    return next(reading for of_reading, reading in readings if of_reading == page)


def _page_taken(source: Source) -> Problem:
    """The assumption that a text is in the code page that its words tell."""
    page, expected = source.code_page, "UTF-8, or an encoding that the name mapping states"
    message = f"{source.file}: the text is no UTF-8 and states no encoding; {page} is taken; expected {expected}."
    return Problem("assumption", None, None, Place(source.file), page, expected, message, "code-page")


def _read(source: Source, names: Names, bearings: BearingList | None) -> Reading:
    """Read a table whose encoding is settled."""
    grids: list[Grid] = []
    found = find(source, words := Words(names), grids)
    if source.code_page:
        found.problems.append(_page_taken(source))
    if not any(block.strips for block in found.blocks):
        seen = ", ".join(visible(word, 30) for word in dict.fromkeys(found.seen)) if found.seen else "no words"
        raise source.refuse("nothing-recognised", f"no known parameter name (seen: {seen[:200]})", _EXPECTED)
    if other := other_table(found, names):
        expected = f"{_EXPECTED}; or a name mapping that says what the names mean"
        raise source.refuse("not-a-bearing-table", other, expected)
    decimal = choose_decimal(found, names.mapping.decimal, own="." if source.kind in ("json", "xml") else None)
    resolver = Resolver(source.file, found, decimal, names.mapping, bearings)
    try:
        stations = apply_defaults(resolver.resolve())
    except RecursionError:
        raise source.refuse("too-deep", "values nested too deeply", _EXPECTED) from None
    resolver.unused.extend(said_again(source.file, resolver.used, resolver.row_of, resolver.problems))
    told = evolve(found, unused=resolver.unused, problems=resolver.problems)
    used = ((sheet, cell) for _, _, sheet, cell, _ in places(resolver.cells()))
    resolver.unused.extend(left_over(source.file, grids, told, used, words))
    stations = evolve(stations, problems=(*tell_unreviewed(resolver.unused, words), *stations.problems))
    layout = ", ".join(dict.fromkeys(found.layouts))
    return Reading(
        source.file,
        source.sha256,
        layout,
        stations,
        tuple(resolver.unused),
        tuple(found.notes),
        partial(_understood, resolver),
        _taken(resolver),
        partial(_placed, resolver),
    )


def _understood(resolver: Resolver, rows: Bools | None = None) -> Iterator[Understood]:
    return understood_cells(resolver.file, resolver.cells(rows))


def _placed(resolver: Resolver) -> Iterator[At]:
    return places(resolver.cells())


def _taken(resolver: Resolver) -> tuple[Taken, ...]:
    """Words of the table that are used, in the order of the vocabulary."""
    found = (
        Taken(one.strip.label, entry.name, one.strip.aspect, one.strip.unit)
        for entry, stated in resolver.used
        for one in stated
        if one.strip.label and len(one.strip.cells)
    )
    return tuple(dict.fromkeys(found))


def bearings(path: str | os.PathLike[str], names: Names | None, shown_as: str | None) -> BearingList:
    """Read a list of bearings; see :func:`linter.reading.read_bearings`."""
    source = load(path, shown_as)
    names = names or Names.built_in()
    found = Found()
    if source.kind == "json":
        _find_in_json(source, Words(names), found, numbered)
    else:
        found = find(source, Words(names))
    decimal = choose_decimal(found, names.mapping.decimal, own="." if source.kind == "json" else None)
    resolver = Resolver(source.file, found, decimal, names.mapping, lists=True)
    return bearings_of(source.file, resolver.resolve())


def words_of(path: str | os.PathLike[str], names: Names | None, shown_as: str | None) -> list[TableWord]:
    """Words of a table that name nothing known; see :func:`linter.reading.read_names`."""
    words = Words(names or Names.built_in())
    grids: list[Grid] = []
    source = load(path, shown_as)
    if not words.names.mapping.encoding and is_open(source):
        source = evolve(source, code_page=next(iter(likely_pages(source)), ""))
    found = find(source, words, grids)
    result = {word.text: word for grid in grids for word in _scant_heading(grid, words)}
    result |= {word.text: word for word in found.words}
    for unused in found.unused:
        if unused.name and words.heading(unused.name) is None and unused.reason == words.why(unused.name):
            result.setdefault(unused.name, TableWord(unused.name, (unused.value,), unused.place, unused.reason))
    return list(result.values())


def _scant_heading(grid: Grid, words: Words) -> list[TableWord]:
    """Unknown words of the fullest row of texts, where too few of it are known to take it for a heading."""
    row = words_across(grid, words)
    unknown = [word for word in row if words.heading(word.text) is None and not words.groups(word.text)]
    return unknown if len(row) > 2 and 2 * len(unknown) > len(row) else []


def find(source: Source, words: Words, seen: list[Grid] | None = None) -> Found:
    """The cells of a file by parameter, row and place; the grids of a workbook or a text are added to ``seen``."""
    found = Found()
    if source.kind in ("text", "json") and (what := other_format(source.data)):
        raise source.refuse("wrong-kind", what, f"{READABLE}, or QIF")
    grids = _FIND[source.kind](source, words, found)
    take_sentences(grids, found, words)
    take_constant_columns(grids, found, words)
    take_apart(found, source.file)
    read_also_said(found, words)
    take_springs_of_names(found.blocks)
    unit_by_sizes(found, source.file)
    by_custom(found, source.file)
    leave_no_positions(found, source.file, words)
    leave_cover_material(found, source.file)
    leave_rated_speed(found, source.file)
    leave_part_numbers(found, source.file)
    tell_unheaded_rows(found)
    if seen is not None:
        seen.extend(grids)
    return found


def _find_in_workbook(source: Source, words: Words, found: Found) -> list[Grid]:
    from linter.reading.files.xlsx import read_grids

    grids, notes, remarks = read_grids(source)
    grids = [without_quotes(grid) for grid in grids]
    found.notes.extend(notes)
    found.unused.extend(remarks)
    sheets = []
    for grid in grids:
        before = len(found.blocks)
        lay_out_grid(*_of_frame(grid, words), found)
        sheets.append(OfSheet(grid, found.blocks[before:]))
    name_by_sheets(sheets, words, found)
    return grids


def _of_frame(grid: Grid, words: Words) -> tuple[Grid, Words]:
    """A sheet without its sentences, its frame's values behind their labels, and the words with those of its frame."""
    words = with_machine_of_column(grid, with_frame_labels(grid, words))
    return with_values_labelled(without_sentences(grid, words), words), words


def _find_in_text(source: Source, words: Words, found: Found) -> list[Grid]:
    from linter.reading.files.csv_text import read_grid
    from linter.reading.files.equations import is_equations, is_list, read_equations, read_list

    encoding = words.names.mapping.encoding or ""
    if is_equations(source, encoding):
        grid, notes = read_equations(source, encoding)
        grid = without_quotes(grid)
        found.layouts.append("equations")
    elif is_list(source, encoding):
        grid, notes = read_list(source, encoding)
        grid = without_quotes(grid)
        words = with_stations(map(cell_text, grid.columns[0].tolist()), words)
    else:
        grid, notes = read_grid(source, encoding)
        grid = without_quotes(grid)
    found.notes.extend(notes)
    lay_out_grid(*_of_frame(grid, words), found)
    return [grid]


def _find_in_json(
    source: Source, words: Words, found: Found, prepared: Callable[[Any], Any] = lambda document: document
) -> list[Grid]:
    from linter.reading.files.json_text import read_json
    from linter.reading.layouts.json_tree import lay_out_json
    from linter.reading.layouts.numbers_before import records_without_numbers

    document, notes = read_json(source, words.names.mapping.encoding or "")
    found.notes.extend(notes)
    document = values_without_quotes(document)
    lay_out_json(source.file, records_without_numbers(prepared(document), words), words, found)
    take_remarks_of_objects(found.blocks, words, found)
    return []


def _find_in_qif(source: Source, words: Words, found: Found) -> list[Grid]:
    from linter.reading.layouts.qif import lay_out_qif

    lay_out_qif(source, words, found)
    return []


_FIND: dict[FileKind, Callable[[Source, Words, Found], list[Grid]]] = {
    "workbook": _find_in_workbook,
    "text": _find_in_text,
    "json": _find_in_json,
    "xml": _find_in_qif,
}


def other_table(found: Found, names: Names) -> str:
    """What a table is that is none of bearing seats, in words: hardly a name of it is known; else empty."""
    known = {s.label: s.parameter for b in found.blocks for s in b.strips if s.parameter not in _KEYS and len(s.cells)}
    own = any(strip.own_unit for block in found.blocks for strip in block.strips if strip.parameter not in _KEYS)
    parameters = set(known.values())
    if own or names.mapping.names or names.mapping.patterns or len(parameters) > _FEW or parameters - COMMON:
        return ""
    words = dict.fromkeys(unused.name for unused in found.unused if unused.name and unused.reason not in _NO_NAMES)
    unknown = [word for word in words if names.find(word) is None and not names.groups(word)]
    if len(unknown) < _MANY or len(parameters) > _SHARE * (len(parameters) + len(unknown)):
        return ""
    shown = ", ".join(visible(word, 30) for word in unknown[:6])
    what = ", ".join(visible(label, 30) for label in known)
    many = "s" * (len(parameters) > 1)
    return f"{len(parameters)} known name{many} ({what}) among {len(unknown)} that are not: {shown}, …"


def choose_decimal(found: Found, declared: Decimal | None = None, own: Decimal | None = None) -> Decimal | None:
    """Decimal mark of a file.

    The one that the name mapping declares, or that the file's own numbers prove, or sizes that belong together, or
    ``own``, the mark of the format (JSON and QIF write a point), where no text has the other.
    """
    if declared:
        found.say(f"decimal sign: {_MARKS[declared]} (declared)")
        return declared
    texts: dict[str, None] = {}
    for block in found.blocks:
        for strip in block.strips:
            if parameter(strip.parameter).kind not in ("number", "toleranced"):
                continue
            cells = _voters(strip.cells) if isinstance(strip.cells, TextColumn) else strip.cells.tolist()
            texts.update(dict.fromkeys(cell for cell in cells if type(cell) is str and ("." in cell or "," in cell)))
    if not texts:
        return None
    decimal, why = vote_decimal(texts), ""
    if decimal is None and (decimal := decimal_by_sizes(found)):
        why = " (by sizes that belong together)"
    if decimal is None and own and not any(mark in text for text in texts for mark in ".,".replace(own, "")):
        decimal, why = own, " (as the format has it)"
    found.say(f"decimal sign: {_MARKS[decimal]}{why}")
    return decimal


def _voters(cells: TextColumn) -> list[str]:
    """Cells that stand for a long column: some with points, some with commas, and every one that groups thousands."""
    usual = "." if len(cells[:_VOTERS].holding(".", 1)) else ","
    marks = usual if cells.decimals(usual) is not None else ".,"
    texts = [cells[row] for mark in marks for row in cells.holding(mark, _VOTERS).tolist()]
    if marks == usual:
        return texts
    signs = cells.joined.tobytes().translate(None, _ALL_BUT_MARKS)
    if any(pair in signs for pair in (b"..", b".,", b",.", b",,")):
        texts += islice((cell for cell in dict.fromkeys(cells.tolist()) if _GROUPING.search(cell)), _VOTERS)
    return texts
