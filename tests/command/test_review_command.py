import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner, Result

import linter
from linter.command.cli import main
from linter.command.review_command import find_tables, report_names

HEAD = (
    "machine,station,drawing_number,drawing_revision,speed_max,bore_diameter,outside_diameter,ring_width,"
    "shaft_seat_diameter,housing_seat_diameter,lubrication,rotating_ring,load_direction\n"
)
FAN = HEAD + (
    "fan,A,FA-12,B,60000,4,13,5,4 k5,13 H6,grease,inner,stationary\n"
    "fan,B,FA-12,B,60000,4,13,5,4 h5,13 H6,grease,inner,rotating\n"
)
KINDS = "html,json,sarif,junit,xlsx"
SUFFIXES = (".html", ".result.json", ".sarif", ".junit.xml", ".findings.xlsx")


@pytest.fixture
def here(tmp_path, monkeypatch) -> Path:
    """An empty folder to work in, with one table in it."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "fan.csv").write_text(FAN, encoding="utf-8")
    return tmp_path


@pytest.fixture
def review(here) -> Callable[..., Result]:
    def call(*arguments: str, code: int | None = None) -> Result:
        result = CliRunner().invoke(main, ["review", "--write", "json", *arguments])
        assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
        if code is not None:
            assert result.exit_code == code, result.output
        return result

    return call


def content(path: str) -> dict:
    return json.loads(Path(path).read_text(encoding="utf-8"))


def test_open_closed_and_not_done(review):
    assert "gate open at critical" in review("fan.csv", "--gate", "critical", code=0).stdout
    assert "gate closed at remark" in review("fan.csv", "--gate", "remark", code=1).stdout
    assert "gate closed at critical" in review("fan.csv", "--gate", "critical", "--complete", code=1).stdout
    result = review("none.csv", code=2)
    assert result.stdout == "" and "none.csv: there is no such file or folder" in result.stderr


def test_reports_are_written_even_where_the_gate_is_closed(review, here):
    review("fan.csv", "--gate", "remark", "--write", KINDS, code=1)
    assert sorted(p.name for p in (here / "reports").iterdir()) == sorted(f"fan{suffix}" for suffix in SUFFIXES)
    assert content("reports/fan.result.json")["summary"]["gate"] == "closed"


@pytest.mark.parametrize(
    "arguments",
    [
        ("--write", "pdf"),
        ("--write", ""),
        ("--gate", "grave"),
        ("--today", "31.12.2026"),
        ("--rulebook", "1066.1"),
        ("--names", "none.toml"),
        ("--concessions", "none.toml"),
        ("--unknown",),
    ],
)
def test_a_call_that_cannot_be_carried_out_says_why(review, here, arguments):
    result = review("fan.csv", *arguments, code=2)
    assert result.stderr.strip() and result.stdout == ""
    assert not (here / "reports").exists()


def test_without_a_table_it_cannot_be_carried_out(review):
    assert "TABLES" in review(code=2).stderr


def test_every_readable_table_is_reviewed_before_2_is_returned(review, here):
    (here / "broken.csv").write_text("hello\nworld\n", encoding="utf-8")
    (here / "zz.csv").write_text(FAN, encoding="utf-8")
    result = review("zz.csv", "broken.csv", "gone.csv", "fan.csv", "--gate", "critical", "--write", "html,json", code=2)
    assert {p.name for p in (here / "reports").iterdir()} == {
        "fan.html", "fan.result.json", "zz.html", "zz.result.json", "index.html"
    }  # fmt: skip
    assert "gone.csv" in result.stderr and "broken.csv" in result.stderr
    assert [line.split(":")[0] for line in result.stdout.splitlines()] == ["fan.csv", "zz.csv", "reports"]
    index = (here / "reports/index.html").read_text(encoding="utf-8")
    assert "broken.csv" in index and 'href="./fan.html"' in index and 'href="./zz.html"' in index
    review("broken.csv", "fan.csv", "--gate", "remark", code=2)


def test_a_fault_of_the_program_in_one_table_does_not_stop_the_others(review, here, monkeypatch):
    import linter.review.records

    (here / "zz.csv").write_text(FAN, encoding="utf-8")
    sound = linter.review.records.review_reading

    def faulty(reading, *arguments, **options):
        if reading.file == "fan.csv":
            raise KeyError("inside")
        return sound(reading, *arguments, **options)

    monkeypatch.setattr(linter.review.records, "review_reading", faulty)
    result = review("fan.csv", "zz.csv", code=2)
    assert "fan.csv: could not be reviewed, a fault of the program (KeyError" in result.stderr
    assert (here / "reports/zz.result.json").exists() and not (here / "reports/fan.result.json").exists()


def test_a_fault_in_one_writer_is_told_and_the_other_reports_are_written(review, here, monkeypatch):
    import linter.report.junit

    def faulty(_result):
        raise KeyError("inside")

    monkeypatch.setattr(linter.report.junit, "junit_text", faulty)
    result = review("fan.csv", "--write", "junit,json", "--gate", "critical", code=2)
    assert "fan.csv: no junit report, a fault of the program (KeyError" in result.stderr
    assert (here / "reports/fan.result.json").exists()


def test_a_folder_is_searched_and_leaves_out_what_is_no_table(review, here):
    for name in ("in/b/fan2.csv", "in/fan1.csv"):
        (here / name).parent.mkdir(parents=True, exist_ok=True)
        (here / name).write_text(FAN, encoding="utf-8")
    for name in ("in/.hidden.csv", "in/~$fan1.xlsx", "in/read.me", "in/x.schema.json"):
        (here / name).write_text("no table", encoding="utf-8")
    result = review("in", "--out", "in", "--write", KINDS, "--gate", "critical", code=0)
    assert [line.split(":")[0] for line in result.stdout.splitlines()[:-1]] == ["in/b/fan2.csv", "in/fan1.csv"]
    again = review("in", "--out", "in", "--write", KINDS, "--gate", "critical", code=0)
    assert again.stdout == result.stdout
    (here / "void").mkdir()
    assert "the folder has no table" in review("void", code=2).stderr


def test_tables_are_found_once_in_one_order(here):
    (here / "a.csv").write_text(FAN, encoding="utf-8")
    wanted = [Path("a.csv"), Path("fan.csv")]
    for paths in (["a.csv", "fan.csv"], ["fan.csv", "a.csv", "a.csv"], ["."], [".", "a.csv"]):
        assert find_tables([Path(p) for p in paths]) == (wanted, [])


def test_a_table_that_states_nothing_about_a_seat_never_opens_the_gate(review, here):
    (here / "bare.csv").write_text("machine,station\nfan,A\nfan,B\n", encoding="utf-8")
    for gate in ("critical", "major", "minor", "remark"):
        review("bare.csv", "--gate", gate, code=1)
    (here / "head.csv").write_text(HEAD, encoding="utf-8")
    assert review("head.csv", "--gate", "critical").exit_code in (1, 2)


def test_progress_only_on_a_terminal(review, here, monkeypatch):
    (here / "zz.csv").write_text(FAN, encoding="utf-8")
    assert review("fan.csv", "zz.csv").stderr == ""

    from linter.command import review_command as session

    told: list[str] = []
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True, raising=False)
    monkeypatch.setattr(session.click, "echo", lambda text="", **options: told.append(text))
    session.review_tables(
        tables=[Path("fan.csv"), Path("zz.csv")], rulebook=None, names=None, concessions=None, out=Path("reports"),
        write=("json",), gate="critical", complete=False, date=None,
    )  # fmt: skip
    assert any("1/2 fan.csv" in text for text in told) and any("2/2 zz.csv" in text for text in told)


@pytest.mark.parametrize(
    ("tables", "names"),
    [
        (["fan.csv"], ["fan"]),
        (["a/fan.csv", "b/fan.csv"], ["a-fan.csv", "b-fan.csv"]),
        (["fan.csv", "fan.xlsx"], ["fan.csv", "fan.xlsx"]),
        (["x/FAN.csv", "x/fan.csv"], ["FAN.csv", "fan.csv-2"]),
        (["index.csv"], ["index.csv"]),
        (["a/b/t.csv", "a-b/t.csv"], ["a-b-t.csv", "a-b-t.csv-2"]),
        (["a/t.csv", "b/t.csv", "a-t.csv.csv"], ["a-t.csv", "b-t.csv", "a-t.csv-2"]),
        (["/one/in/t.csv", "/one/out/t.csv"], ["in-t.csv", "out-t.csv"]),
        (["../t.csv", "t.csv"], None),
    ],
)
def test_report_names_never_collide(tables, names):
    paths = [Path(t) for t in tables]
    found = report_names(paths)
    assert report_names(list(reversed(paths))) == found
    folded = [name.casefold() for name in found.values()]
    assert len(set(folded)) == len(tables) and "index" not in folded
    assert not any("/" in name or name.startswith(".") for name in found.values())
    if names is not None:
        assert [found[p] for p in paths] == names


def test_the_index_page_does_not_overwrite_a_report(review, here):
    (here / "index.csv").write_text(FAN, encoding="utf-8")
    review("index.csv", "fan.csv", "--write", "html", "--gate", "critical", code=0)
    assert {p.name for p in (here / "reports").iterdir()} == {"index.html", "index.csv.html", "fan.html"}


def test_a_table_is_never_overwritten(review, here):
    (here / "fan.html").write_text(FAN, encoding="utf-8")
    result = review("fan.html", "--out", ".", "--write", "html", "--gate", "critical", code=2)
    assert "is an input of this review" in result.stderr
    assert (here / "fan.html").read_text(encoding="utf-8") == FAN


def test_a_folder_that_cannot_be_written_to_is_named(review, here):
    (here / "taken").write_text("a file", encoding="utf-8")
    result = review("fan.csv", "--out", "taken", "--gate", "critical", code=2)
    assert "the report could not be written" in result.stderr


def test_concessions_open_the_gate_on_their_day_and_not_later(review, here):
    review("fan.csv", code=1)
    found = [
        a
        for a in content("reports/fan.result.json")["assessments"]
        if a["outcome"] == "finding" and a["severity"] in ("critical", "major")
    ]
    assert found
    entries = []
    for number, finding in enumerate(found):
        entry = {
            "number": f"K-{number}",
            "clause": finding["clause"],
            "machine": "fan",
            "drawing_revision": "B",
            "severity": finding["severity"],
            "approver": "seat design office",
            "reason": "Tested.",
            "expires": "2026-12-31",
        }
        if finding["station"] is not None:
            entry["station"] = finding["station"]
        if finding["observed"] is not None:
            entry["limit"] = finding["observed"]
        entries.append(entry)
    (here / "accepted.json").write_text(json.dumps({"concessions": entries}), encoding="utf-8")
    accepted = ("--concessions", "accepted.json", "--write", KINDS)
    review("fan.csv", *accepted, "--today", "2026-12-31", code=0)
    result = content("reports/fan.result.json")
    assert result["summary"]["outcomes"]["conceded"] == len(found)
    assert {note["state"] for note in result["concessions"]} == {"applied"}
    review("fan.csv", *accepted, "--today", "2027-01-01", code=1)
    result = content("reports/fan.result.json")
    assert result["summary"]["outcomes"]["conceded"] == 0
    assert {note["state"] for note in result["concessions"]} == {"expired"}
    (here / "accepted.json").write_text('{"concessions": [{}]}', encoding="utf-8")
    assert "accepted.json: concession 1" in review("fan.csv", *accepted, code=2).stderr


def test_names_are_proposed_for_words_that_are_not_understood(here):
    (here / "odd.csv").write_text(FAN.replace("bore_diameter", "bore_diametr"), encoding="utf-8")
    (here / "bad.toml").write_text("names = 1", encoding="utf-8")
    result = CliRunner().invoke(main, ["names", "odd.csv"])
    assert result.exit_code == 0 and "bore_diametr" in result.stdout and "bore_diameter" in result.stdout
    result = CliRunner().invoke(main, ["names", "odd.csv", "--out", "names.toml"])
    assert result.exit_code == 0 and "bore_diametr" in (here / "names.toml").read_text(encoding="utf-8")
    for arguments, word in ((["gone.csv"], "gone.csv"), (["odd.csv", "--names", "bad.toml"], "bad.toml")):
        result = CliRunner().invoke(main, ["names", *arguments])
        assert result.exit_code == 2 and word in result.stderr and result.stdout == ""


def test_two_results_are_compared(review, here):
    review("fan.csv", "--out", "old")
    (here / "fan.csv").write_text(FAN.replace("4 h5", "4 k5").replace(",B,60000", ",C,60000"), encoding="utf-8")
    review("fan.csv", "--out", "new")
    names = ["old/fan.result.json", "new/fan.result.json"]
    result = CliRunner().invoke(main, ["compare", *names, "--out", "difference"])
    assert result.exit_code == 0, result.output
    assert "revision B -> C" in result.stdout
    values = content("difference/comparison.json")["values"]
    assert [(v["parameter"], v["station"]) for v in values] == [("drawing_revision", ""), ("shaft_seat_diameter", "B")]
    assert (here / "difference/comparison.html").exists()
    result = CliRunner().invoke(main, ["compare", "fan.csv", names[1]])
    assert result.exit_code == 2 and "fan.csv" in result.stderr


def test_same_bytes_in_every_writer_on_any_machine_and_in_any_order(here):
    """Two runs in other time zones, locales and hash seeds, with the tables in another order and another folder."""
    (here / "second").mkdir()
    (here / "second" / "mill.csv").write_text(FAN.replace("fan,", "mill,"), encoding="utf-8")
    book = openpyxl.Workbook()
    for row in FAN.replace("fan,", "book,").splitlines():
        book.active.append(row.split(","))
    book.save(here / "second" / "book.xlsx")
    made = []
    for folder, tables, zone, language, seed in (
        ("one", ["fan.csv", "second/mill.csv", "second/book.xlsx"], "UTC", "C", "1"),
        ("two", ["second", "fan.csv", "fan.csv"], "Pacific/Auckland", "tr_TR.UTF-8", "4242"),
    ):
        environment = {
            **os.environ, "TZ": zone, "LC_ALL": language, "LANG": language, "PYTHONHASHSEED": seed,
            "PYTHONPATH": str(Path(linter.__file__).parents[1]),
        }  # fmt: skip
        call = [sys.executable, "-m", "linter.command.cli", "review", *tables, "--write", KINDS, "--out", folder]
        done = subprocess.run(call, cwd=here, env=environment, capture_output=True, text=True, encoding="utf-8")
        assert done.returncode == 1 and done.stderr == ""
        made.append({p.name: p.read_bytes() for p in sorted((here / folder).iterdir())})
    one, two = made
    assert set(one) == {f"{name}{suffix}" for name in ("fan", "mill", "book") for suffix in SUFFIXES} | {"index.html"}
    assert [name for name in one if one[name] != two[name]] == []
    for name, written in one.items():
        assert str(here).encode() not in written, name
