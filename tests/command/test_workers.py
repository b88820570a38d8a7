"""Several processes: the same reports and lines as by one, and a process that dies costs its one table."""

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

import linter
from linter.command import reviewing, workers
from linter.command.console import Progress
from linter.command.review_command import review_tables
from linter.command.reviewing import NOT_DONE, Done, Options, Reviewer
from linter.report.writing import WriteRefused, file_ids, write_file

ROOT = Path(linter.__file__).parents[1]
pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="processes are forked on Linux only")
TABLE = "machine,station,bore_diameter [mm],outside_diameter [mm],ring_width [mm],lubrication\n"


@pytest.fixture
def folder(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    tables = tmp_path / "tables"
    tables.mkdir()
    for number in range(6):
        (tables / f"t{number}.csv").write_text(f"{TABLE}fan {number},A,8,22,7,grease\nfan {number},B,8,22,7,oil\n")
    (tables / "t3.csv").write_text("")  # cannot be read
    return tables


def _written(out):
    return {path.name: path.read_bytes() for path in sorted(out.iterdir())}


def test_reports_and_lines_are_the_same_by_one_process_and_by_three(folder, capfd):
    told = []
    for count in (1, 3):
        status = review_tables([folder], Options(rulebook="2026.3", out=folder.parent / str(count), workers=count))
        lines = capfd.readouterr()
        told.append((status, lines.out.replace(f"{folder.parent / str(count)}", "OUT"), lines.err))
    assert told[0] == told[1] and told[0][0] == NOT_DONE and "t3.csv" in told[0][2]
    one, three = (_written(folder.parent / str(count)) for count in (1, 3))
    assert one == three and len(one) == 11


def _dies_at(monkeypatch, name, how):
    real = Reviewer.review

    def review(self, table, report):
        if table.name == name:
            how()
        return real(self, table, report)

    monkeypatch.setattr(Reviewer, "review", review)


@pytest.mark.parametrize(
    ("how", "told"),
    [
        (lambda: os.kill(os.getpid(), signal.SIGKILL), "ended by signal 9"),
        (lambda: os._exit(7), "ended with status 7"),
        (lambda: os._exit(0), "ended with status 0"),
    ],
)
@pytest.mark.parametrize("count", [2, 5])
def test_a_process_that_dies_costs_its_one_table(folder, capfd, monkeypatch, how, told, count):
    _dies_at(monkeypatch, "t1.csv", how)
    status = review_tables([folder], Options(rulebook="2026.3", out=folder.parent / "out", workers=count))
    lines = capfd.readouterr()
    assert status == NOT_DONE
    assert f"t1.csv: could not be reviewed: the process that worked on it {told}" in lines.err
    results = sorted(path.name for path in (folder.parent / "out").glob("*.json"))
    assert results == [f"t{number}.result.json" for number in (0, 2, 4, 5)]
    assert "t1.csv" in (folder.parent / "out" / "index.html").read_text(encoding="utf-8")


def test_every_process_may_die(folder, capfd, monkeypatch):
    monkeypatch.setattr(Reviewer, "review", lambda *_: os._exit(1))
    assert review_tables([folder], Options(rulebook="2026.3", out=folder.parent / "out", workers=2)) == NOT_DONE
    assert capfd.readouterr().err.count("ended with status 1") == 6


def test_what_is_kept_comes_in_the_order_of_the_tables(monkeypatch):
    def review(self, table, report):
        time.sleep(0.2 if table.name == "0" else 0.0)
        return Done(summary=table.name)

    monkeypatch.setattr(Reviewer, "review", review)
    reviewer = Reviewer(Options(), None, None, None, None, frozenset())
    jobs = [(Path(str(number)), str(number)) for number in range(9)]
    found = [done.summary for done in workers.reviewed(reviewer, jobs, 3, Progress(9))]
    assert found == [str(number) for number in range(9)]


def test_an_interrupt_ends_all_processes_and_leaves_whole_reports(folder):
    code = (
        "import signal, sys, time; from pathlib import Path\n"
        "from linter.command import reviewing, review_command as r\n"
        "signal.signal(signal.SIGINT, signal.default_int_handler)  # whoever started the tests may ignore it\n"
        "real = reviewing.Reviewer.review\n"
        "def slow(self, table, name):\n"
        "    if table.name != 't0.csv': print('busy', flush=True); time.sleep(60)\n"
        "    return real(self, table, name)\n"
        "reviewing.Reviewer.review = slow\n"
        "r.review_tables([Path(sys.argv[1])], r.Options(rulebook='2026.3', out=Path(sys.argv[2]), workers=2))\n"
    )
    call = [sys.executable, "-c", code, str(folder), str(folder.parent / "out")]
    process = subprocess.Popen(
        call, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, start_new_session=True
    )
    assert process.stdout is not None
    assert process.stdout.readline() == process.stdout.readline() == "busy\n"
    os.killpg(process.pid, signal.SIGINT)
    process.communicate(timeout=60)
    with pytest.raises(ProcessLookupError):
        os.killpg(process.pid, 0)
    names = sorted(path.name for path in (folder.parent / "out").iterdir())
    assert names == ["t0.html", "t0.result.json"]
    assert json.loads((folder.parent / "out" / "t0.result.json").read_text(encoding="utf-8"))["format_version"] == 2


def test_only_a_summary_is_kept():
    fields = {attribute.name for attribute in Done.__attrs_attrs__}
    assert fields == {"statuses", "complaints", "summary", "listed", "unread", "unnamed"}
    assert reviewing.Done().statuses == [0]


def test_an_input_is_told_by_its_number_whatever_it_is_called(tmp_path):
    table, other = tmp_path / "t.csv", tmp_path / "other.csv"
    table.write_text("a")
    os.link(table, other)
    with pytest.raises(WriteRefused, match="is an input"):
        write_file(other, b"b", inputs=file_ids([table, tmp_path / "none"]))
    write_file(tmp_path / "new", b"b", inputs=file_ids([table]))
    assert table.read_text() == "a"


def test_the_pace_and_the_time_left(monkeypatch):
    progress = Progress(11)
    progress.number = 6
    monkeypatch.setattr("linter.command.console.time.monotonic", lambda: progress.begun + 10.0)
    assert progress.pace() == "(0.5/s, 0:12 left) "
    progress.number = 1
    assert progress.pace() == ""
