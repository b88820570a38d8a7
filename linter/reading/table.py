"""The way from a file to its stations."""

import os
from itertools import islice
from typing import TYPE_CHECKING, Any

from linter.reading import Reading
from linter.reading.blocks import Found
from linter.reading.headings import Words
from linter.reading.intake import InputError, Source, load, visible
from linter.reading.numbers import Decimal, vote_decimal
from linter.reading.resolve import Resolver
from linter.stations import apply_defaults
from linter.vocabulary import parameter

if TYPE_CHECKING:
    from linter.reading.names import Names

_EXPECTED = (
    "a table of seat parameters: a heading row such as machine, station, bore_diameter, shaft_seat_diameter, "
    "or one row per parameter with name, value and unit"
)
_VOTERS = 20_000


def read(path: str | os.PathLike[str], names: "Names | None", shown_as: str | None) -> Reading:
    """Read a table; see :func:`linter.reading.read_table`."""
    source = load(path, shown_as)
    found = find(source, Words(names))
    if not any(block.strips for block in found.blocks):
        seen = ", ".join(visible(word, 30) for word in dict.fromkeys(found.seen)) if found.seen else "no words"
        raise source.refuse("nothing-recognised", f"no known parameter name (seen: {seen[:200]})", _EXPECTED)
    decimal = choose_decimal(found)
    resolver = Resolver(source.file, found, decimal)
    try:
        stations = apply_defaults(resolver.resolve())
    except RecursionError:
        raise source.refuse("too-deep", "values nested too deeply", _EXPECTED) from None
    layout = ", ".join(dict.fromkeys(found.layouts))
    return Reading(
        source.file,
        source.sha256,
        layout,
        stations,
        tuple(resolver.unused),
        tuple(found.notes),
        lambda: resolver.understood(stations),
    )


def find(source: Source, words: Words) -> Found:
    """The cells of a file by parameter, row and place."""
    found = Found()
    if source.kind == "workbook":
        from linter.reading.layouts import lay_out_grid
        from linter.reading.xlsx import read_grids

        grids, notes = read_grids(source)
        found.notes.extend(notes)
        for grid in grids:
            lay_out_grid(grid, words, found)
    elif source.kind == "json":
        from linter.reading.json_layouts import lay_out_json
        from linter.reading.json_text import read_json

        document, notes = read_json(source)
        found.notes.extend(notes)
        lay_out_json(source, document, words, found)
    elif source.kind == "xml":
        raise source.refuse("unknown-xml", "an XML document that is not QIF", "QIF (ISO 23952), .xlsx, CSV or JSON")
    else:
        from linter.reading.csv_text import read_grid
        from linter.reading.layouts import lay_out_grid

        grid, notes = read_grid(source)
        found.notes.extend(notes)
        lay_out_grid(grid, words, found)
    return found


def choose_decimal(found: Found) -> Decimal | None:
    """Decimal mark that the file's own numbers prove, from distinct texts of its quantities."""
    texts: dict[str, None] = {}
    for block in found.blocks:
        for strip in block.strips:
            if parameter(strip.parameter).kind in ("number", "toleranced"):
                some = (cell for cell in strip.cells.tolist() if type(cell) is str and ("." in cell or "," in cell))
                texts.update(dict.fromkeys(islice(some, _VOTERS // 10)))
    decimal = vote_decimal(texts)
    if texts:
        words = {".": "point", ",": "comma", None: "not settled by the table"}[decimal]
        found.say(f"decimal sign: {words}")
    return decimal
