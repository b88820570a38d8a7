"""Stage 3: what one rulebook says of an archive, and what changes under another; joins by DuckDB over Parquet."""

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import duckdb
import pyarrow as pa
from attrs import frozen

from linter.model.findings import SEVERITIES
from linter.review.archive.stages import GATES

_GATE = "CASE gate " + " ".join(f"WHEN {k} THEN '{word}'" for k, word in enumerate(GATES)) + " END"


@frozen
class Portfolio:
    """What an archive looks like under one rulebook, or under two.

    Attributes
    ----------
    machines : pyarrow.Table
        A row a machine of a drawing: ``name``, ``machine``, ``kind``, ``bore``, ``speed``, and for each rulebook
        ``gate_VERSION``, ``undecided_VERSION`` and the count of findings by severity.
    gates : pyarrow.Table
        How many machines have which gate, under the old and the new rulebook.
    clauses : pyarrow.Table
        By clause: findings at the gate, findings, not assessed; with two rulebooks how many appeared, cleared, are
        graver and milder, and how many gates changed by it.
    kinds : pyarrow.Table
        Gates by kind of bearing and size of its bore.
    unread : pyarrow.Table
        Files that could not be read, with the reason.
    """

    versions: tuple[str, ...]
    machines: pa.Table
    gates: pa.Table
    clauses: pa.Table
    kinds: pa.Table
    unread: pa.Table
    drawings: int
    stations: int


def portfolio(
    drawings: pa.Table, folders: Sequence[Path], versions: Sequence[str], gate: str, memory: str = "1GB"
) -> Portfolio:
    """Join the verdicts of an archive.

    Parameters
    ----------
    drawings : pyarrow.Table
        From :meth:`linter.review.archive.run.Archive.read`.
    folders : sequence of Path
        Verdicts of one rulebook, or of the old and the new one.
    versions : sequence of str
        What the rulebooks are called.
    gate : str
        Lowest severity that closes the gate.
    memory : str
        What DuckDB may take.

    Returns
    -------
    Portfolio
        Every table in a stable order.
    """
    with duckdb.connect(config={"memory_limit": memory, "threads": 2}) as db:
        db.register("drawings", drawings)
        db.execute("CREATE TABLE drawing AS SELECT * FROM drawings WHERE batch <> ''")
        batches = [row[0] for row in db.execute("SELECT DISTINCT batch FROM drawing ORDER BY batch").fetchall()]
        labels = ("a", "b")[: len(folders)]
        for label, folder in zip(labels, folders, strict=True):
            _take(db, label, folder, batches)
        machines = _arrow(db, _machines_sql(labels, versions))
        gates = _arrow(db, _gates_sql(labels))
        clauses = _clauses(db, labels, SEVERITIES.index(gate))
        kinds = _arrow(db, _kinds_sql(labels))
        unread = _arrow(db, "SELECT name, reason FROM drawings WHERE reason <> '' ORDER BY name")
    total = sum(drawings["stations"].to_pylist())
    return Portfolio(tuple(versions), machines, gates, clauses, kinds, unread, len(drawings), total)


def _arrow(db: Any, sql: str) -> pa.Table:
    return db.sql(sql).to_arrow_table()


def _take(db: Any, label: str, folder: Path, batches: Sequence[str]) -> None:
    """The verdicts of one rulebook as tables, with the name of each clause."""

    def files(suffix: str) -> str:
        return ", ".join(_quoted(str(folder / f"{batch}{suffix}")) for batch in batches)

    batch = "regexp_extract(filename, '([0-9a-f]+)(\\.machines)?\\.parquet$', 1) AS batch"
    db.execute(f"""
        CREATE TABLE machines_{label} AS
        SELECT {batch}, * EXCLUDE (filename), {_GATE} AS word
        FROM read_parquet([{files(".machines.parquet")}], filename = true)""")
    db.execute(f"""
        CREATE TABLE clause_{label} AS
        SELECT row_number() OVER () - 1 AS clause, clause AS id, title
        FROM read_parquet({_quoted(str(folder / "clauses.parquet"))})""")
    db.execute(f"""
        CREATE TABLE graded_{label} AS
        SELECT {batch}, v.file, v.machine, v.row, c.id, v.outcome, v.must,
               CASE WHEN v.outcome = 1 THEN {len(SEVERITIES)} - v.severity ELSE 0 END AS grade
        FROM read_parquet([{files(".parquet")}], filename = true) v JOIN clause_{label} c USING (clause)
        WHERE v.outcome IN (1, 2)""")


def _quoted(text: str) -> str:
    return "'" + text.replace("'", "''") + "'"


def _joined(labels: Sequence[str]) -> str:
    """Machines of every drawing, with two rulebooks the old and the new state side by side."""
    one = "drawing d JOIN machines_a a USING (batch, file)"
    if len(labels) == 1:
        return one
    return f"{one} JOIN machines_b b ON b.batch = a.batch AND b.file = a.file AND b.machine = a.machine"


def _machines_sql(labels: Sequence[str], versions: Sequence[str]) -> str:
    columns = []
    for label, version in zip(labels, versions, strict=True):
        for name in ("word", *SEVERITIES, "undecided"):
            shown = "gate" if name == "word" else name
            columns.append(f'{label}.{name} AS "{shown} {version}"')
    return f"""
        SELECT d.name AS drawing, a.name AS machine, a.kind, a.bore, a.speed, {", ".join(columns)}
        FROM {_joined(labels)} ORDER BY d.name, a.machine"""


def _gates_sql(labels: Sequence[str]) -> str:
    if len(labels) == 1:
        return f"""
            SELECT a.word AS gate, count(*) AS machines
            FROM {_joined(labels)} GROUP BY a.gate, a.word ORDER BY a.gate"""
    return f"""
        SELECT a.word AS old, b.word AS new, count(*) AS machines
        FROM {_joined(labels)} GROUP BY a.gate, b.gate, a.word, b.word ORDER BY a.gate, b.gate"""


def _kinds_sql(labels: Sequence[str]) -> str:
    if len(labels) == 1:
        counts = [f'sum((a.gate = {k})::INT) AS "{word}"' for k, word in enumerate(GATES)]
    else:
        counts = [
            f'sum(({label}.gate = {k})::INT) AS "{age} {word}"'
            for k, word in enumerate(GATES)
            for label, age in (("a", "old"), ("b", "new"))
        ]
        counts += ["sum((b.gate > a.gate)::INT) AS worse", "sum((b.gate < a.gate)::INT) AS better"]
    return f"""
        SELECT CASE WHEN a.kind = '' THEN 'not stated' ELSE a.kind END AS kind,
               CASE WHEN a.bore < 10 THEN 'below 10 mm' WHEN a.bore < 30 THEN '10 to 30 mm'
                    WHEN a.bore < 80 THEN '30 to 80 mm' WHEN a.bore >= 80 THEN '80 mm and more'
                    ELSE 'not stated' END AS bore,
               count(*) AS machines, {", ".join(counts)}
        FROM {_joined(labels)} GROUP BY 1, 2 ORDER BY machines DESC, 1, 2"""


def _clauses(db: Any, labels: Sequence[str], closes: int) -> pa.Table:
    """Counts by clause; a clause that one of two rulebooks lacks counts as not applicable there."""
    gate = len(SEVERITIES) - closes
    if len(labels) == 1:
        return _arrow(
            db,
            f"""
            SELECT c.id AS clause, c.title, count(*) FILTER (g.grade >= {gate}) AS at_the_gate,
                   count(*) FILTER (g.outcome = 1) AS findings, count(*) FILTER (g.outcome = 2) AS not_assessed,
                   count(*) FILTER (g.outcome = 2 AND g.must) AS undecided
            FROM clause_a c
            LEFT JOIN (SELECT * FROM graded_a JOIN drawing USING (batch, file)) g ON g.id = c.id
            GROUP BY c.clause, c.id, c.title ORDER BY at_the_gate DESC, findings DESC, c.clause""",
        )
    db.execute("""
        CREATE TABLE pair AS
        SELECT d.name AS drawing, p.* FROM (
            SELECT coalesce(a.batch, b.batch) AS batch, coalesce(a.file, b.file) AS file,
                   coalesce(a.machine, b.machine) AS machine, coalesce(a.id, b.id) AS id,
                   coalesce(a.grade, 0) AS old, coalesce(b.grade, 0) AS new,
                   coalesce(a.outcome, 3) = 2 AS was_open, coalesce(b.outcome, 3) = 2 AS is_open,
                   coalesce(a.outcome = 2 AND a.must, false) AS was_wanted,
                   coalesce(b.outcome = 2 AND b.must, false) AS is_wanted
            FROM graded_a a FULL JOIN graded_b b
                ON a.batch = b.batch AND a.file = b.file AND a.machine = b.machine AND a.row = b.row AND a.id = b.id
        ) p JOIN drawing d USING (batch, file)""")
    db.execute(f"""
        CREATE TABLE turned AS
        SELECT d.name AS drawing, a.machine, a.gate AS old_gate, b.gate AS new_gate
        FROM {_joined(labels)} WHERE a.gate <> b.gate""")
    worse = f"(p.new >= {gate} AND p.old < {gate}) OR (t.new_gate = 1 AND p.is_wanted AND NOT p.was_wanted)"
    better = f"(p.old >= {gate} AND p.new < {gate}) OR (t.old_gate = 1 AND p.was_wanted AND NOT p.is_wanted)"
    return _arrow(
        db,
        f"""
        SELECT p.id AS clause, max(coalesce(cb.title, ca.title)) AS title,
               count(*) FILTER (p.old >= {gate}) AS old_at_the_gate,
               count(*) FILTER (p.new >= {gate}) AS new_at_the_gate,
               count(*) FILTER (p.old = 0 AND p.new > 0) AS appeared,
               count(*) FILTER (p.old > 0 AND p.new = 0) AS cleared,
               count(*) FILTER (p.old > 0 AND p.new > p.old) AS graver,
               count(*) FILTER (p.new > 0 AND p.new < p.old) AS milder,
               count(*) FILTER (p.is_open AND NOT p.was_open) AS newly_not_assessed,
               count(DISTINCT (t.drawing, t.machine)) FILTER (t.new_gate > t.old_gate AND ({worse})) AS worse_gates,
               count(DISTINCT (t.drawing, t.machine)) FILTER (t.new_gate < t.old_gate AND ({better})) AS better_gates
        FROM pair p
        LEFT JOIN clause_a ca ON ca.id = p.id
        LEFT JOIN clause_b cb ON cb.id = p.id
        LEFT JOIN turned t ON t.drawing = p.drawing AND t.machine = p.machine
        GROUP BY p.id ORDER BY worse_gates DESC, better_gates DESC, appeared DESC, p.id""",
    )
