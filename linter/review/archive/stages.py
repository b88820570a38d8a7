"""The two pure stages of an archive: files to stations, stations to verdicts; each result is a file named by its key.

A stage is done where its file exists: a second run, another rulebook or another machine takes up what is there. A file
is written under another name beside its place and renamed when it is whole.
"""

import hashlib
import os
import tempfile
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq
from attrs import frozen

from linter.model.findings import SEVERITIES
from linter.reading import InputError, read_table
from linter.reading.files.bounds import within_bounds
from linter.review.archive.columns import FILE, MACHINE, from_table, to_table
from linter.review.assess import FIGURES, FINDING, NOT_ASSESSED, assess
from linter.review.defaults import with_defaults
from linter.rulebook.gates import must_rows
from linter.rulebook.load import load
from linter.rulebook.model import Rulebook

GATES = ("open", "undecided", "closed")


@frozen
class Drawing:
    """A file of the archive: its name below the folder, and the hash of its content."""

    name: str
    sha256: str


def hashed(path: Path) -> str:
    """SHA-256 of a file, hexadecimal."""
    with path.open("rb") as stream:
        return hashlib.file_digest(stream, "sha256").hexdigest()


class NotWritten(OSError):
    """A result that could not be written; what is finished stays."""


def write_whole(path: Path, table: pa.Table) -> None:
    """Write a Parquet file by way of a temporary one beside it; :class:`NotWritten` where there is no room for it."""
    name = ""
    try:
        handle, name = tempfile.mkstemp(dir=path.parent, prefix=".part-")
        os.close(handle)
        pq.write_table(table, name, compression="zstd", write_statistics=False, use_dictionary=True)
        Path(name).chmod(0o644)
        Path(name).replace(path)
    except BaseException as error:
        if name:
            Path(name).unlink(missing_ok=True)
        if isinstance(error, OSError):
            again = "what is finished stays, and the same call goes on from there"
            raise NotWritten(f"{path.parent}: a result could not be written: {error}; {again}") from None
        raise


def read_batch(folder: str, drawings: Sequence[Drawing], out: str, seconds: float = 60.0, memory: int = 2048) -> str:
    """Stage 1: some files to a Parquet file of their stations and one of their states.

    Parameters
    ----------
    folder : str
        Where the files are.
    drawings : sequence of Drawing
        Files of different content.
    out : str
        Folder of stations of this reader's version.
    seconds, memory : float, int
        Bounds for one file.

    Returns
    -------
    str
        Key of the batch: ``KEY.parquet`` has the stations, ``KEY.files.parquet`` a row a file with the reason where it
        could not be read.
    """
    key = hashlib.sha256("".join(d.sha256 for d in drawings).encode()).hexdigest()[:24]
    target = Path(out) / f"{key}.files.parquet"
    if target.exists():
        return key
    read, reasons, counts = [], [], []
    for number, drawing in enumerate(drawings):
        reason, count = "", 0
        try:
            with within_bounds(drawing.name, seconds, memory * 2**20):
                stations = read_table(Path(folder) / drawing.name, shown_as=drawing.name).stations
        except InputError as error:
            reason = str(error)
        except Exception as error:
            reason = f"{drawing.name}: a fault of the program ({type(error).__name__}: {error})"
        else:
            count = len(stations)
            read.append((number, stations))
        reasons.append(reason)
        counts.append(count)
    write_whole(Path(out) / f"{key}.parquet", to_table(read))
    states = pa.table(
        {
            "sha256": pa.array([d.sha256 for d in drawings], pa.string()),
            "first_name": pa.array([d.name for d in drawings], pa.string()),
            "reason": pa.array([_clean(r) for r in reasons], pa.string()),
            "stations": pa.array(counts, pa.int32()),
        }
    )
    write_whole(target, states)  # last: where it stands the batch is whole
    return key


def _clean(text: str) -> str:
    return text.encode("utf-8", "backslashreplace").decode()


def judge_batch(stations: str, book: str | Rulebook, out: str, gate: str = "major", sha256: str = "") -> str:
    """Stage 2: the stations of one Parquet file to their verdicts.

    Parameters
    ----------
    stations : str
        Path of a file of stage 1.
    book : str or Rulebook
        Name or folder of the rulebook, or the rulebook itself.
    out : str
        Folder of verdicts of this rulebook, gate and program.
    gate : str
        Lowest severity that closes the gate.
    sha256 : str
        What the rulebook has to be; empty for whatever it is.

    Returns
    -------
    str
        Path of the Parquet file of verdicts: a row for each clause and station or machine (``file``, ``machine``,
        ``row``, ``clause``, ``outcome``, ``severity``, ``must``, ``observed``, ``lower``, ``upper``). Beside it stands
        ``KEY.machines.parquet`` with the gate of each machine.

    Raises
    ------
    ValueError
        For a rulebook that is another one by now.
    """
    key = Path(stations).name.removesuffix(".parquet")
    target, machines = Path(out) / f"{key}.parquet", Path(out) / f"{key}.machines.parquet"
    if target.exists():
        return str(target)
    rulebook = load(book) if isinstance(book, str) else book
    if sha256 and rulebook.sha256 != sha256:
        read = f"read sha256 {rulebook.sha256[:12]}, expected {sha256[:12]} as at the beginning"
        raise ValueError(f"the rulebook {book} was changed meanwhile: {read}; run it again")
    table = pq.read_table(stations)
    if not len(table):
        write_whole(machines, _machines_schema().empty_table())
        write_whole(target, _verdicts_schema().empty_table())
        return str(target)
    verdicts, of_machines = judged(table, rulebook, gate)
    write_whole(machines, of_machines)
    write_whole(target, verdicts)  # last: where it stands both are whole
    return str(target)


def _verdicts_schema() -> pa.Schema:
    return pa.schema(
        [
            ("file", pa.int32()), ("machine", pa.int32()), ("row", pa.int32()), ("clause", pa.int16()),
            ("outcome", pa.int8()), ("severity", pa.int8()), ("must", pa.bool_()), ("observed", pa.float32()),
            ("lower", pa.float32()), ("upper", pa.float32()),
        ]
    )  # fmt: skip


def _machines_schema() -> pa.Schema:
    return pa.schema(
        [("file", pa.int32()), ("machine", pa.int32()), ("name", pa.string()), ("gate", pa.int8())]
        + [(severity, pa.int16()) for severity in SEVERITIES]
        + [("undecided", pa.int16()), ("kind", pa.string()), ("speed", pa.float64()), ("bore", pa.float64())]
    )


def judged(table: pa.Table, rulebook: Rulebook, gate: str = "major") -> tuple[pa.Table, pa.Table]:
    """Verdicts and gates of a table of stations.

    Parameters
    ----------
    table : pyarrow.Table
        As :func:`linter.review.archive.columns.to_table` makes it, at least one row.
    rulebook : Rulebook
        As loaded.
    gate : str
        Lowest severity that closes the gate.

    Returns
    -------
    verdicts, machines : pyarrow.Table
        As :func:`judge_batch` writes them. The clause is its index in ``rulebook.clauses``.
    """
    stations = with_defaults(from_table(table), rulebook)
    assessed = assess(stations, rulebook, keep="figures")
    files, rows_of_file = table[FILE].to_numpy(), table[MACHINE].to_numpy()
    first, whole = stations.first_rows, len(stations.machines)
    closes = SEVERITIES.index(gate)
    index_of = {name: index for index, name in enumerate(rulebook.clauses)}
    columns: dict[str, list[Any]] = {field.name: [] for field in _verdicts_schema()}
    counts = np.zeros((len(SEVERITIES), whole), dtype=np.int32)
    left = np.zeros(whole, dtype=np.int32)
    for name, review in assessed.reviews.items():
        of_machine = review.clause.level == "machine"
        at = first if of_machine else np.arange(len(stations))
        machine = np.arange(whole) if of_machine else stations.machine_row
        must = must_rows(review.clause, assessed.view, gate)
        found = review.outcome == FINDING
        for severity in range(len(SEVERITIES)):
            np.add.at(counts[severity], machine[found & (review.severity == severity)], 1)
        np.add.at(left, machine[must & (review.outcome == NOT_ASSESSED)], 1)
        columns["file"].append(files[at])
        columns["machine"].append(rows_of_file[at])
        columns["row"].append(np.full(len(at), -1, dtype=np.int32) if of_machine else at - first[machine])
        columns["clause"].append(np.full(len(at), index_of[name], dtype=np.int16))
        columns["outcome"].append(review.outcome)
        columns["severity"].append(review.severity)
        columns["must"].append(must)
        for figure in FIGURES:
            none = np.full(len(at), np.nan, dtype=np.float32)
            with np.errstate(over="ignore"):
                columns[figure].append(review.figures[figure].astype(np.float32) if figure in review.figures else none)
    closed = counts[: closes + 1].sum(axis=0) > 0
    state = np.where(closed, 2, np.where(left > 0, 1, 0)).astype(np.int8)
    machines = {
        "file": files[first], "machine": rows_of_file[first], "name": [_clean(name) for name in stations.machines],
        "gate": state, "undecided": left,
        "kind": stations.choice("bearing_type").texts()[first], "speed": stations.number("speed_max")[first],
        "bore": stations.number("bore_diameter")[first],
    } | {severity: counts[k] for k, severity in enumerate(SEVERITIES)}  # fmt: skip
    verdicts = {name: np.concatenate(parts) for name, parts in columns.items()}
    return (
        pa.table({f.name: pa.array(verdicts[f.name], f.type) for f in _verdicts_schema()}),
        pa.table({f.name: pa.array(machines[f.name], f.type) for f in _machines_schema()}),
    )
