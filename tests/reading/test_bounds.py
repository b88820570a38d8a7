"""A file that costs too much ends in an input error; the other tables are reviewed, the limits put back."""

import resource
import signal
import sys
import threading
import weakref
from pathlib import Path

import pytest
from click.testing import CliRunner

import linter.reading
import linter.reading.proposal
from linter.command.cli import main
from linter.reading import InputError
from linter.reading.files import bounds
from linter.reading.files.bounds import within_bounds

HEAD = "machine,station,bore_diameter,shaft_seat_diameter\n"
sound = linter.reading.read_table


def busy(*_arguments, **_options):
    while True:
        try:
            sum(range(1000))
        except Exception:  # what a reader catches, an alarm is not
            continue


def greedy(*_arguments, **_options):
    held = []
    while True:
        held.append(bytearray(8 * 2**20))


@pytest.fixture(autouse=True)
def short(monkeypatch):
    """Bounds that a stub reaches at once."""
    monkeypatch.setattr(bounds, "PROCESSOR_SECONDS", 0.05)
    monkeypatch.setattr(bounds, "MEMORY", 512 * 2**20)


def state() -> tuple:
    return (
        signal.getsignal(signal.SIGPROF),
        signal.getitimer(signal.ITIMER_PROF),
        resource.getrlimit(resource.RLIMIT_AS),
    )


@pytest.mark.parametrize(("work", "code"), [(busy, "too-slow"), (greedy, "too-much-memory")])
def test_a_breach_is_an_input_error_and_nothing_stays_limited(monkeypatch, work, code):
    if work is greedy:
        monkeypatch.setattr(bounds, "PROCESSOR_SECONDS", 60.0)
    before = state()
    with pytest.raises(InputError) as caught, within_bounds("seats.csv"):
        work()
    assert caught.value.code == code
    assert str(caught.value).startswith("seats.csv: read a file that takes more than")
    assert state() == before


def test_what_the_reading_held_is_let_go(monkeypatch):
    monkeypatch.setattr(bounds, "PROCESSOR_SECONDS", 60.0)
    alive = weakref.WeakSet()

    class Held:
        def __init__(self):
            self.cells = bytearray(8 * 2**20)
            alive.add(self)

    def read():
        kept = []
        while True:
            kept.append(Held())

    with pytest.raises(InputError) as caught, within_bounds("seats.csv"):
        read()
    assert caught.value.code == "too-much-memory"
    assert not alive


def test_within_its_bounds_a_reading_is_as_it_would_be(monkeypatch):
    monkeypatch.setattr(bounds, "PROCESSOR_SECONDS", 60.0)
    before = state()
    with within_bounds("seats.csv"):
        during = state()
    assert during[0] is not before[0] and during[1][0] > 0
    if sys.platform == "linux":
        assert during[2] != before[2]
    assert state() == before
    with pytest.raises(KeyError), within_bounds("seats.csv"):
        raise KeyError
    assert state() == before


def test_a_handler_and_a_limit_of_the_caller_are_put_back(monkeypatch):
    monkeypatch.setattr(bounds, "PROCESSOR_SECONDS", 60.0)

    def own(_number, _frame):
        raise AssertionError

    first, hard = signal.signal(signal.SIGPROF, own), resource.getrlimit(resource.RLIMIT_AS)[1]
    limit = 2**40
    unlimited = resource.getrlimit(resource.RLIMIT_AS)
    resource.setrlimit(resource.RLIMIT_AS, (limit, hard))
    try:
        with within_bounds("seats.csv"):
            assert resource.getrlimit(resource.RLIMIT_AS)[0] <= limit
        assert signal.getsignal(signal.SIGPROF) is own
        assert resource.getrlimit(resource.RLIMIT_AS) == (limit, hard)
    finally:
        signal.signal(signal.SIGPROF, first)
        resource.setrlimit(resource.RLIMIT_AS, unlimited)


def test_a_lower_limit_of_the_caller_is_kept(monkeypatch):
    monkeypatch.setattr(bounds, "PROCESSOR_SECONDS", 60.0)
    monkeypatch.setattr(bounds, "MEMORY", 2**42)
    unlimited = resource.getrlimit(resource.RLIMIT_AS)
    resource.setrlimit(resource.RLIMIT_AS, (2**41, unlimited[1]))
    try:
        with within_bounds("seats.csv"):
            assert resource.getrlimit(resource.RLIMIT_AS)[0] == 2**41
    finally:
        resource.setrlimit(resource.RLIMIT_AS, unlimited)


def test_another_thread_and_a_platform_without_limits_do_without(monkeypatch):
    seen = []

    def work():
        before = state()
        with within_bounds("seats.csv"):
            seen.append(state() == before)

    thread = threading.Thread(target=work)
    thread.start()
    thread.join()
    assert seen == [True]
    monkeypatch.delattr(signal, "setitimer")
    monkeypatch.setitem(sys.modules, "resource", None)
    handler = signal.getsignal(signal.SIGPROF)
    with within_bounds("seats.csv"):
        assert signal.getsignal(signal.SIGPROF) is handler


@pytest.mark.parametrize(("work", "code"), [(busy, "too-slow"), (greedy, "too-much-memory")])
def test_the_other_tables_of_a_call_are_reviewed(tmp_path, monkeypatch, work, code):
    monkeypatch.chdir(tmp_path)
    for name in ("a.csv", "b.csv", "c.csv"):
        Path(name).write_text(HEAD + "M,A,4,4 k5\n")

    def read_table(path, *arguments, **options):
        # only the costly table has little time, so that no other is near its bound
        return (work if path.name == "b.csv" else sound)(path, *arguments, **options)

    limits = ["--seconds", "60" if work is greedy else "3", "--memory", "512"]
    monkeypatch.setattr(linter.reading, "read_table", read_table)
    before = state()
    result = CliRunner().invoke(main, ["review", "a.csv", "b.csv", "c.csv", "--write", "html,json", *limits])
    assert result.exit_code == 2
    assert f"[{code}]" in result.stderr and result.stderr.count("\n") == 1 and "b.csv" in result.stderr
    assert {p.name for p in Path("reports").iterdir()} == {
        "a.html", "a.result.json", "c.html", "c.result.json", "index.html"
    }  # fmt: skip
    assert f"[{code}]" in Path("reports/index.html").read_text()
    assert state() == before


@pytest.mark.parametrize(("work", "code"), [(busy, "too-slow"), (greedy, "too-much-memory")])
def test_names_are_proposed_within_bounds(tmp_path, monkeypatch, work, code):
    monkeypatch.chdir(tmp_path)
    Path("a.csv").write_text(HEAD)
    if work is greedy:
        monkeypatch.setattr(bounds, "PROCESSOR_SECONDS", 60.0)
    monkeypatch.setattr(linter.reading.proposal, "read_names", work)
    result = CliRunner().invoke(main, ["names", "a.csv"])
    assert result.exit_code == 2
    assert f"[{code}]" in result.stderr and result.stdout == ""
