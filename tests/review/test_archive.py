"""The archive against the ordinary review, killed workers, second runs, and what is told of a broken file."""

import os
import shutil
import signal
import threading
import time
from pathlib import Path

import pytest
from click.testing import CliRunner

pytest.importorskip("pyarrow")
pytest.importorskip("duckdb")

import pyarrow.parquet as pq

from linter import load_rulebook, read_table
from linter.command.cli import main
from linter.report.door import review_table
from linter.review.archive.columns import from_table, to_table
from linter.review.archive.compare import portfolio
from linter.review.archive.run import Archive, digest_of
from linter.review.archive.stages import GATES, Drawing, NotWritten, hashed, judge_batch, judged, read_batch
from linter.review.archive.workers import Processes

ROOT = Path(__file__).parents[2]
TABLES = [*sorted((ROOT / "sample_exports").glob("*.*")), ROOT / "tests" / "golden" / "seats.csv"]
BOOK = load_rulebook("2026.4")


@pytest.fixture
def drawings(tmp_path):
    folder = tmp_path / "drawings"
    (folder / "pumps").mkdir(parents=True)
    for path in TABLES:
        shutil.copy(path, folder / path.name)
    shutil.copy(ROOT / "sample_exports" / "coolant-pump.csv", folder / "pumps" / "copy.csv")
    return folder


class Here:
    """Workers that are this process."""

    def run(self, function, pieces):
        from linter.review.archive.workers import Done

        for number, piece in enumerate(pieces):
            try:
                value = function(*piece)
            except Exception as error:
                yield Done.of(number, error, lambda: None)
            else:
                yield Done(number, value)


@pytest.mark.parametrize("version", ["2026.2", "2026.4"])
def test_a_gate_is_that_of_the_ordinary_review(version):
    book = load_rulebook(version)
    readings = [read_table(path).stations for path in TABLES]
    _, machines = judged(to_table(enumerate(readings)), book)
    found = {}
    for row in machines.to_pylist():
        found.setdefault(row["file"], []).append(row)
    for number, path in enumerate(TABLES):
        result = review_table(path, book, changes=False).result
        rows = found[number]
        worst = max(row["gate"] for row in rows)
        undecided = sum(row["undecided"] for row in rows)
        assert (GATES[worst] == "closed") == (result.gate == "closed"), path
        assert (worst == 0) == (result.gate == "open"), path
        assert (undecided > 0) == any(a.must and a.outcome == "not assessed" for a in result.assessments), path
        for severity, count in result.severities.items():
            assert sum(row[severity] for row in rows) == count, (path, severity)


def test_verdicts_are_those_of_the_ordinary_review():
    path = ROOT / "tests" / "golden" / "seats.csv"
    stations = read_table(path).stations
    verdicts, machines = judged(to_table([(0, stations)]), BOOK)
    names = list(BOOK.clauses)
    machine_of = {row["machine"]: row["name"] for row in machines.to_pylist()}
    words = ("met", "finding", "not assessed", "not applicable")
    mine = sorted(
        (names[row["clause"]], machine_of[row["machine"]], row["row"] >= 0, words[row["outcome"]])
        for row in verdicts.to_pylist()
    )
    result = review_table(path, BOOK, changes=False).result
    wanted = sorted((a.clause, a.machine, a.station is not None, a.outcome) for a in result.assessments)
    assert mine == wanted


def test_stations_come_back_as_they_were():
    stations = read_table(ROOT / "tests" / "golden" / "seats.csv").stations
    again = from_table(to_table([(0, stations)]))
    assert again.machines == stations.machines
    assert {p.code for p in again.problems} == {p.code for p in stations.problems}
    for name, values in stations.numbers.items():
        assert str(again.number(name)) == str(values)
    for name, size in stations.toleranced.items():
        assert list(again.size(name).tolerance_class) == list(size.tolerance_class)
    for name, assumed in stations.assumed.items():
        if assumed.rows.any():
            assert again.assumed[name].rows.tolist() == assumed.rows.tolist()


def test_the_whole_way_and_a_second_run(drawings, tmp_path):
    (drawings / "broken.csv").write_bytes(b"\x00\x01 no table")
    out = tmp_path / "out"
    archive = Archive(drawings, out, Here())
    paths = sorted(p for p in drawings.rglob("*") if p.is_file())
    read = archive.read(paths)
    reasons = {row["name"]: row["reason"] for row in read.to_pylist()}
    assert "broken.csv" in reasons["broken.csv"] and not reasons["coolant-pump.csv"]
    by_name = {row["name"]: (row["batch"], row["file"]) for row in read.to_pylist()}
    assert by_name["coolant-pump.csv"] == by_name["pumps/copy.csv"]  # one content is read once
    folders = [archive.judge(read, load_rulebook(version), version, "major") for version in ("2026.3", "2026.4")]
    found = portfolio(read, folders, ("2026.3", "2026.4"), "major")
    assert found.drawings == len(TABLES) + 2 and found.unread.num_rows == 1
    assert sum(found.gates["machines"].to_pylist()) == found.machines.num_rows
    names = found.machines["drawing"].to_pylist()
    assert names.count("coolant-pump.csv") == names.count("pumps/copy.csv") == 1
    before = {p: p.stat().st_mtime_ns for p in out.rglob("*.parquet")}
    (drawings / "new.csv").write_bytes((drawings / "grinding-spindle.csv").read_bytes() + b"\n")
    more = archive.read(sorted(p for p in drawings.rglob("*") if p.is_file()))
    archive.judge(more, BOOK, "2026.4", "major")
    assert {p: t for p in before if (t := p.stat().st_mtime_ns) != before[p]} == {}
    assert len(more) == len(read) + 1


def test_what_changes_is_counted_as_the_reviews_say(drawings, tmp_path):
    archive = Archive(drawings, tmp_path / "out", Here())
    read = archive.read([drawings / "seats.csv"])
    folders = [archive.judge(read, load_rulebook(v), v, "major") for v in ("2026.2", "2026.4")]
    found = portfolio(read, folders, ("2026.2", "2026.4"), "major")
    old, new = (review_table(drawings / "seats.csv", v, changes=False).result for v in ("2026.2", "2026.4"))

    def findings(result):
        return {(a.clause, a.machine, a.station) for a in result.assessments if a.outcome == "finding"}

    appeared, cleared = findings(new) - findings(old), findings(old) - findings(new)
    rows = {row["clause"]: row for row in found.clauses.to_pylist()}
    for clause, row in rows.items():
        assert row["appeared"] == sum(c == clause for c, *_ in appeared), clause
        assert row["cleared"] == sum(c == clause for c, *_ in cleared), clause
    assert {c for c, *_ in appeared | cleared} <= set(rows)


def test_one_and_four_processes_give_the_same_bytes(drawings, tmp_path):
    digests = []
    for count in (1, 4):
        archive = Archive(drawings, tmp_path / f"out{count}", Processes(count))
        read = archive.read(sorted(p for p in drawings.rglob("*.csv")))
        folder = archive.judge(read, BOOK, "2026.4", "major")
        digests.append((str(read.to_pydict()), digest_of(folder, sorted(set(read["batch"].to_pylist()) - {""}))))
    assert digests[0] == digests[1]


def slow_piece(number: int, folder: str) -> int:
    """Some work; the process of piece 3 is killed the first time, that of piece 5 each time."""
    mark = Path(folder) / str(number)
    first = not mark.exists()
    mark.touch()
    if (number == 3 and first) or number == 5:
        os.kill(os.getpid(), signal.SIGKILL)
    return number * number


def test_a_killed_process_costs_its_piece_only(tmp_path):
    done = {d.number: d for d in Processes(2).run(slow_piece, [(k, str(tmp_path)) for k in range(8)])}
    assert sorted(done) == list(range(8))
    assert [done[k].value for k in (0, 1, 2, 3, 4, 6, 7)] == [0, 1, 4, 9, 16, 36, 49]
    assert "ended 3 times" in done[5].reason


def failing(number: int) -> int:
    """A piece with a fault."""
    raise ValueError(f"piece {number}")


def test_a_fault_is_told_and_the_rest_goes_on():
    done = list(Processes(1).run(failing, [(1,), (2,)]))
    assert sorted(d.reason for d in done) == ["ValueError: piece 1", "ValueError: piece 2"]


@pytest.mark.slow
def test_a_cluster_with_killed_workers_gives_the_same_verdicts(drawings, tmp_path):
    distributed = pytest.importorskip("distributed")
    from linter.review.archive.workers import Cluster

    paths = sorted(p for p in drawings.rglob("*") if p.is_file())
    calm = Archive(drawings, tmp_path / "calm", Processes(1))
    read = calm.read(paths)
    wanted = digest_of(calm.judge(read, BOOK, "2026.4", "major"), sorted(set(read["batch"].to_pylist())))
    with distributed.LocalCluster(n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None) as cluster:
        crew = Cluster(cluster.scheduler_address)
        stop = threading.Event()

        def kill() -> None:
            while not stop.wait(2.0):
                for nanny in list(cluster.workers.values())[:1]:
                    if nanny.process is not None and nanny.process.pid:
                        os.kill(nanny.process.pid, signal.SIGKILL)
                        return

        killer = threading.Thread(target=kill)
        killer.start()
        try:
            archive = Archive(drawings, tmp_path / "shaken", crew)
            again = archive.read(paths)
            folder = archive.judge(again, BOOK, "2026.4", "major")
        finally:
            stop.set()
            killer.join()
            crew.close()
        assert again.to_pydict() == read.to_pydict()
        assert digest_of(folder, sorted(set(again["batch"].to_pylist()))) == wanted
    time.sleep(0.1)


def test_a_half_written_stage_is_done_again(drawings, tmp_path):
    path = drawings / "coolant-pump.csv"
    drawing = Drawing(path.name, hashed(path))
    key = read_batch(str(drawings), [drawing], str(tmp_path))
    stations = tmp_path / f"{key}.parquet"
    out = tmp_path / "verdicts"
    out.mkdir()
    (out / ".part-left").write_bytes(b"half")
    target = Path(judge_batch(str(stations), "2026.4", str(out)))
    assert pq.read_table(target).num_rows > 100
    assert sorted(p.name for p in out.iterdir()) == sorted([".part-left", f"{key}.machines.parquet", f"{key}.parquet"])


def test_no_room_is_told_and_what_is_finished_stays(drawings, tmp_path, monkeypatch):
    paths = [drawings / "coolant-pump.csv", drawings / "grinding-spindle.csv"]
    archive = Archive(drawings, tmp_path / "out", Here())
    archive.read(paths[:1])
    kept = {path: path.read_bytes() for path in archive.stations.iterdir()}

    def full(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patched:
        patched.setattr(pq, "write_table", full)
        with pytest.raises(NotWritten, match=r"could not be written.*No space left.*what is finished stays"):
            archive.read(paths)
    assert {path: path.read_bytes() for path in archive.stations.iterdir()} == kept
    assert archive.read(paths)["reason"].to_pylist() == ["", ""]


def test_a_damaged_state_is_read_again_and_a_changed_rulebook_told(drawings, tmp_path):
    archive = Archive(drawings, tmp_path / "out", Here())
    read = archive.read([drawings / "coolant-pump.csv"])
    (state,) = archive.stations.glob("*.files.parquet")
    state.write_bytes(b"no Parquet")
    assert archive.read([drawings / "coolant-pump.csv"]).equals(read)
    book = load_rulebook("2026.3")
    with pytest.raises(RuntimeError, match=r"the rulebook 2026\.4 was changed meanwhile: read sha256 \w+, expected"):
        archive.judge(read, book, "2026.4", "major")
    assert not list(archive.verdicts(book, "major").glob("*.machines.parquet"))


def test_an_assessment_takes_at_most_twenty_bytes(tmp_path):
    copies = [Drawing(f"{k}.csv", str(k)) for k in range(40)]
    for copy in copies:
        shutil.copy(ROOT / "sample_exports" / "grinding-spindle.csv", tmp_path / copy.name)
    key = read_batch(str(tmp_path), copies, str(tmp_path))
    out = tmp_path / "verdicts"
    out.mkdir()
    target = Path(judge_batch(str(tmp_path / f"{key}.parquet"), "2026.4", str(out)))
    assert target.stat().st_size <= 20 * pq.read_table(target).num_rows


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (("--rulebook", "1999.1"), "1999.1"),
        (("--rulebook", "2026.4", "--rulebook", "2026.4"), "the same rulebook"),
        (("--rulebook", "2026.4", "--rulebook", "2026.3", "--rulebook", "2026.2"), "read 3 rulebooks"),
        (("--rulebook", "2026.4", "--report", "absent.csv"), "no such drawing"),
    ],
)
def test_wrong_calls_are_told(drawings, tmp_path, arguments, told):
    done = CliRunner().invoke(main, ["archive", str(drawings), *arguments, "--out", str(tmp_path / "out")])
    assert done.exit_code == 2 and told in done.stderr
    assert not (tmp_path / "out").exists()


def test_a_folder_without_a_table_and_one_with_broken_files_only(tmp_path):
    (tmp_path / "empty").mkdir()
    done = CliRunner().invoke(main, ["archive", str(tmp_path / "empty"), "--rulebook", "2026.4"])
    assert done.exit_code == 2 and "has no table" in done.stderr
    (tmp_path / "broken").mkdir()
    (tmp_path / "broken" / "a.csv").write_text("nothing;here\n", encoding="utf-8")
    out = ["--out", str(tmp_path / "out"), "--workers", "1"]
    done = CliRunner().invoke(main, ["archive", str(tmp_path / "broken"), "--rulebook", "2026.4", *out])
    assert done.exit_code == 2 and "no drawing could be read" in done.stderr and "a.csv" in done.stderr


def test_the_command_writes_page_and_tables(drawings, tmp_path):
    out = tmp_path / "out"
    done = CliRunner().invoke(
        main,
        ["archive", str(drawings), "--rulebook", "2026.3", "--rulebook", "2026.4", "--out", str(out), "--workers", "1"],
    )
    assert done.exit_code == 0, done.output
    assert "gate open -> open" in done.output or "gate closed -> closed" in done.output
    page = (out / "archive.html").read_text(encoding="utf-8")
    assert "<script" not in page and "They release nothing" in page
    for name in ("machines", "gates", "clauses", "kinds", "unread"):
        assert (out / f"{name}.csv").stat().st_size and pq.read_table(out / f"{name}.parquet") is not None


def test_a_scheduler_that_does_not_answer(drawings, tmp_path, monkeypatch):
    pytest.importorskip("distributed")
    from linter.review.archive import workers

    crew = workers.Cluster("tcp://127.0.0.1:9", seconds=0.5)
    with pytest.raises(workers.NoScheduler, match=r"tcp://127\.0\.0\.1:9"):
        crew.client()
