"""The way of an archive: which files are new, which batches are left, which verdicts are wanted."""

import hashlib
from collections.abc import Callable, Sequence
from pathlib import Path

import pyarrow as pa
import pyarrow.parquet as pq
from attrs import frozen

from linter.review.archive.columns import program_version, reader_version
from linter.review.archive.stages import Drawing, NotWritten, hashed, judge_batch, read_batch, write_whole
from linter.review.archive.workers import Workers
from linter.rulebook.model import Rulebook

#: Files read by one piece of work: some seconds of it.
BATCH = 200
Tell = Callable[[str, int, int], None]


@frozen
class Archive:
    """Where the stages of one archive lie.

    Attributes
    ----------
    folder : Path
        Root of the drawings.
    out : Path
        Folder of everything that is written: ``stations/READER/``, ``verdicts/RULEBOOK-GATE-PROGRAM/``.
    workers : Workers
        Who does the work.
    tell : callable
        Told of a stage, how many pieces are finished, and how many there are.
    """

    folder: Path
    out: Path
    workers: Workers
    tell: Tell = lambda stage, done, of: None

    @property
    def stations(self) -> Path:
        """Folder of stage 1, of the reader that runs here."""
        return self.out / "stations" / reader_version()

    def verdicts(self, book: Rulebook, gate: str) -> Path:
        """Folder of stage 2, of one rulebook."""
        return self.out / "verdicts" / f"{book.sha256[:12]}-{gate}-{program_version()}"

    def read(self, paths: Sequence[Path]) -> pa.Table:
        """Stage 1 over files; those of known content are not read again.

        Parameters
        ----------
        paths : sequence of Path
            Files below the folder.

        Returns
        -------
        pyarrow.Table
            A row a file: ``name``, ``sha256``, ``batch``, ``file`` (its number in the batch), ``reason``, ``stations``.

        Raises
        ------
        NotWritten
            If there is no room for what was read.
        """
        self.stations.mkdir(parents=True, exist_ok=True)
        drawings, unread = [], []
        for path in paths:
            name = path.relative_to(self.folder).as_posix()
            try:
                drawings.append(Drawing(name, hashed(path)))
            except OSError as error:
                unread.append((name, str(error)))
        known = self._known()
        new = {d.sha256: d for d in drawings if d.sha256 not in known}
        fresh = sorted(new.values(), key=lambda d: d.name)
        lost: dict[str, str] = {}
        batches = [fresh[k : k + BATCH] for k in range(0, len(fresh), BATCH)]
        while batches:
            halved: list[list[Drawing]] = []
            pieces = [(str(self.folder), tuple(batch), str(self.stations)) for batch in batches]
            for count, done in enumerate(self.workers.run(read_batch, pieces), 1):
                self.tell("read", count, len(pieces))
                if isinstance(done.error, NotWritten):
                    raise done.error
                batch = batches[done.number]
                if done.reason and len(batch) > 1:
                    halved += [batch[: len(batch) // 2], batch[len(batch) // 2 :]]
                elif done.reason:
                    lost[batch[0].sha256] = f"{batch[0].name}: {done.reason}"
            batches = halved
        known = self._known()
        rows = []
        for drawing in drawings:
            state = known.get(drawing.sha256, ("", -1, lost.get(drawing.sha256, "not read"), 0))
            rows.append((drawing.name, drawing.sha256, *state))
        rows += [(name, "", "", -1, reason, 0) for name, reason in unread]
        names = ("name", "sha256", "batch", "file", "reason", "stations")
        types = (pa.string(), pa.string(), pa.string(), pa.int32(), pa.string(), pa.int32())
        columns = list(zip(*sorted(rows), strict=True)) if rows else [()] * len(names)
        return pa.table({n: pa.array(c, t) for n, c, t in zip(names, columns, types, strict=True)})

    def _known(self) -> dict[str, tuple[str, int, str, int]]:
        """By hash of the content: batch, number in it, reason, stations; of whole batches only."""
        found = {}
        for path in sorted(self.stations.glob("*.files.parquet")):
            batch = path.name.removesuffix(".files.parquet")
            try:
                states = pq.read_table(path, columns=["sha256", "reason", "stations"]).to_pydict()
            except pa.ArrowInvalid:  # damaged: its files are read again
                path.unlink()
                continue
            for number, digest in enumerate(states["sha256"]):
                found[digest] = (batch, number, states["reason"][number], states["stations"][number])
        return found

    def judge(self, drawings: pa.Table, book: Rulebook, name: str, gate: str) -> Path:
        """Stage 2 over the batches of some drawings; what is there is not done again.

        Parameters
        ----------
        drawings : pyarrow.Table
            From :meth:`read`.
        book : Rulebook
            The rulebook.
        name : str
            What the workers load it by: its version or its folder.
        gate : str
            Lowest severity that closes the gate.

        Returns
        -------
        Path
            Folder of its verdicts.

        Raises
        ------
        RuntimeError
            If a batch could not be judged, or the rulebook was changed meanwhile.
        NotWritten
            If there is no room for the verdicts.
        """
        folder = self.verdicts(book, gate)
        folder.mkdir(parents=True, exist_ok=True)
        clauses = folder / "clauses.parquet"
        if not clauses.exists():
            levels = [(c.id, c.title, c.chapter, c.level) for c in book.clauses.values()]
            columns = zip(("clause", "title", "chapter", "level"), zip(*levels, strict=True), strict=True)
            write_whole(clauses, pa.table({key: list(values) for key, values in columns}))
        batches = sorted(set(drawings["batch"].to_pylist()) - {""})
        wanted = [batch for batch in batches if not (folder / f"{batch}.parquet").exists()]
        at = [str(self.stations / f"{batch}.parquet") for batch in wanted]
        pieces = [(path, name, str(folder), gate, book.sha256) for path in at]
        for count, done in enumerate(self.workers.run(judge_batch, pieces), 1):
            self.tell(f"judge under {book.version}", count, len(pieces))
            if isinstance(done.error, NotWritten):
                raise done.error
            if done.reason:
                raise RuntimeError(f"{wanted[done.number]}: could not be judged under {book.version}: {done.reason}")
        return folder


def digest_of(folder: Path, batches: Sequence[str]) -> str:
    """SHA-256 over the verdicts of some batches, for comparing two runs."""
    digest = hashlib.sha256()
    for batch in sorted(batches):
        for suffix in (".parquet", ".machines.parquet"):
            table = pq.read_table(folder / f"{batch}{suffix}")
            for column in table.columns:
                for chunk in column.chunks:
                    for buffer in chunk.buffers():
                        digest.update(b"" if buffer is None else buffer)
    return digest.hexdigest()
