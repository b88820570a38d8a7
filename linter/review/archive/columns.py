"""Stations to and from Arrow: everything that a verdict rests on, and nothing that only a report shows."""

import hashlib
import json
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
from attrs import evolve

from linter.model.columns import Assumption, Choice, Toleranced
from linter.model.places import Place
from linter.model.stations import Problem, Stations
from linter.model.version import __version__
from linter.model.vocabulary import vocabulary

#: Form of the stored stations; another one is read again.
FORM = 1
#: Columns beside those of parameters.
FILE, MACHINE, PROBLEMS = "file", "machine_index", "problems"
_PARTS = ("nominal", "lower", "upper")
_NO_REASON = "as when the table was read"


@cache
def schema() -> pa.Schema:
    """Every parameter of the vocabulary as columns: numbers, sizes with class, choices as codes, texts, assumptions."""
    fields = [pa.field(FILE, pa.int32()), pa.field(MACHINE, pa.int32()), pa.field(PROBLEMS, pa.string())]
    text = pa.dictionary(pa.int32(), pa.string())
    for entry in vocabulary().values():
        if entry.kind == "number":
            fields.append(pa.field(entry.name, pa.float64()))
        elif entry.kind == "toleranced":
            fields += [pa.field(f"{entry.name}.{part}", pa.float64()) for part in _PARTS]
            fields.append(pa.field(f"{entry.name}.class", text))
        elif entry.kind == "choice":
            fields.append(pa.field(entry.name, pa.int8()))
        else:
            fields.append(pa.field(entry.name, text))
        if entry.kind == "number":
            fields.append(pa.field(f"{entry.name}.assumed", pa.bool_()))
    return pa.schema(fields)


@cache
def reader_version() -> str:
    """What stored stations depend on besides their file: the code and the words of the reader. Twelve signs."""
    return _digest("mechanics", "model", "reading")


@cache
def program_version() -> str:
    """What stored verdicts depend on besides stations and rulebook: the code that judges. Twelve signs."""
    return _digest("mechanics", "model", "checks", "rulebook", "review")


def _digest(*rooms: str) -> str:
    digest = hashlib.sha256(f"{FORM} {__version__} {schema()}".encode())
    root = Path(__file__).parents[2]
    for room in rooms:
        for path in sorted((root / room).rglob("*")):
            if path.suffix in (".py", ".csv", ".toml"):
                digest.update(path.relative_to(root).as_posix().encode() + b"\0" + path.read_bytes())
    return digest.hexdigest()[:12]


def to_table(tables: Iterable[tuple[int, Stations]]) -> pa.Table:
    """Stations of several files as one Arrow table.

    Parameters
    ----------
    tables : iterable of (int, Stations)
        Number of the file, and its stations.

    Returns
    -------
    pyarrow.Table
        With :func:`schema`; rows of a machine stand together.
    """
    numbered = [(number, stations) for number, stations in tables if len(stations)]
    if not numbered:
        return schema().empty_table()
    whole = Stations.concat([stations for _, stations in numbered])
    files = np.repeat([number for number, _ in numbered], [len(stations) for _, stations in numbered])
    columns: dict[str, Any] = {FILE: pa.array(files, pa.int32()), MACHINE: pa.array(whole.machine_row, pa.int32())}
    columns[PROBLEMS] = pa.array(_problem_texts(whole), pa.string())
    for entry in vocabulary().values():
        name = entry.name
        if entry.kind == "number":
            columns[name] = pa.array(whole.number(name), pa.float64())
            rows = whole.assumed[name].rows if name in whole.assumed else np.zeros(len(whole), dtype=bool)
            columns[f"{name}.assumed"] = pa.array(rows, pa.bool_())
        elif entry.kind == "toleranced":
            size = whole.size(name)
            for part in _PARTS:
                columns[f"{name}.{part}"] = pa.array(getattr(size, part), pa.float64())
            columns[f"{name}.class"] = _texts(size.tolerance_class)
        elif entry.kind == "choice":
            columns[name] = pa.array(whole.choice(name).codes, pa.int8())
        elif name == "machine":
            columns[name] = _texts(np.array(whole.machines, dtype=object)[whole.machine_row])
        else:
            columns[name] = _texts(whole.text(name))
    return pa.table([columns[field.name] for field in schema()], schema=schema())


def _texts(values: np.ndarray) -> pa.DictionaryArray:
    clean = [str(v).encode("utf-8", "backslashreplace").decode() for v in values]
    return pa.array(clean, pa.string()).dictionary_encode()


def _problem_texts(stations: Stations) -> list[str]:
    found: dict[int, list[list[Any]]] = {}
    for problem in stations.problems:
        row = 0 if problem.row is None else problem.row
        place = "" if problem.place is None else str(problem.place)
        found.setdefault(row, []).append(
            [problem.kind, problem.parameter, place, problem.read, problem.expected, problem.message, problem.code]
        )
    return [json.dumps(found[row]) if row in found else "" for row in range(len(stations))]


def from_table(table: pa.Table) -> Stations:
    """Stations from an Arrow table of :func:`to_table`, or of some of its rows with whole machines.

    Parameters
    ----------
    table : pyarrow.Table
        Rows of a machine of a file stand together.

    Returns
    -------
    Stations
        Without places; what was assumed and could not be understood is there as before.
    """
    files, indices = table[FILE].to_numpy(), table[MACHINE].to_numpy()
    new = np.ones(len(files), dtype=bool)
    new[1:] = (np.diff(files) != 0) | (np.diff(indices) != 0)
    machine_row = (np.cumsum(new) - 1).astype(np.intp)
    numbers, sizes, choices, texts, assumed = {}, {}, {}, {}, {}
    for entry in vocabulary().values():
        name = entry.name
        if entry.kind == "number":
            values = table[name].to_numpy()
            if not np.isnan(values).all():
                numbers[name] = values
            rows = table[f"{name}.assumed"].to_numpy()
            if rows.any():
                assumed[name] = Assumption(rows, _NO_REASON)
        elif entry.kind == "toleranced":
            nominal, lower, upper = (table[f"{name}.{part}"].to_numpy() for part in _PARTS)
            if not np.isnan(nominal).all():
                sizes[name] = Toleranced(nominal, lower, upper, _objects(table[f"{name}.class"]))
        elif entry.kind == "choice":
            codes = table[name].to_numpy()
            if (codes >= 0).any():
                choices[name] = Choice(entry.choices, codes)
        else:
            texts[name] = _objects(table[name])
    machines = tuple(str(name) for name in texts["machine"][new])
    made = Stations(machines, machine_row, numbers, sizes, choices, texts, assumed=assumed)
    return evolve(made, problems=tuple(_problems(table[PROBLEMS].to_pylist())))


def _objects(column: pa.ChunkedArray) -> np.ndarray:
    return np.asarray(column.to_pandas().astype(object).to_numpy(), dtype=object)


def _problems(texts: list[str]) -> Iterable[Problem]:
    for row, text in enumerate(texts):
        for kind, name, place, read, expected, message, code in json.loads(text) if text else ():
            where = Place(place) if place else None
            yield Problem(kind, row, name, where, read, expected, message, code)
