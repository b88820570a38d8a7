import json
import os
import re
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner, Result

import linter
from linter.command.cli import main
from linter.command.tables import find_tables, report_names

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
    assert "gate undecided at critical" in review("fan.csv", "--gate", "critical", code=3).stdout
    passed = review("fan.csv", "--gate", "critical", "--undecided-passes", code=0).stdout
    assert "gate undecided at critical" in passed and "undecided passes, as asked" in passed
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

    def faulty(_result, **_options):
        raise KeyError("inside")

    monkeypatch.setattr(linter.report.junit, "junit_text", faulty)
    result = review("fan.csv", "--write", "junit,json", "--gate", "critical", code=2)
    assert "fan.csv: no junit report, a fault of the program (KeyError" in result.stderr
    assert (here / "reports/fan.result.json").exists()


def test_a_folder_is_searched_and_leaves_out_what_is_no_table(review, here):
    for name in ("in/b/fan2.csv", "in/fan1.csv"):
        (here / name).parent.mkdir(parents=True, exist_ok=True)
        (here / name).write_text(FAN, encoding="utf-8")
    for name in ("in/.hidden.csv", "in/~$fan1.xlsx", "in/read.me"):
        (here / name).write_text("no table", encoding="utf-8")
    (here / "in/x.json").write_text('{"$schema": "x", "title": "no table"}', encoding="utf-8")
    result = review("in", "--out", "in", "--write", KINDS, "--gate", "critical", code=3)
    assert [line.split(":")[0] for line in result.stdout.splitlines()[:-1]] == ["in/b/fan2.csv", "in/fan1.csv"]
    for name, reason in (
        (".hidden.csv", "a hidden file"), ("x.json", "a JSON schema"), ("~$fan1.xlsx", "a lock file"),
        ("read.me", "not a kind of table"),
    ):  # fmt: skip
        assert f"in: skipped: {name}: {reason}" in result.stderr
    again = review("in", "--out", "in", "--write", KINDS, "--gate", "critical", code=3)
    assert again.stdout == result.stdout
    index = (here / "in/index.html").read_text(encoding="utf-8")
    for name in ("fan1.result.json", "fan1.junit.xml", "fan1.findings.xlsx", "read.me"):
        assert name in again.stderr and f"in/{name}" in index
    own = review("in/fan1.result.json", code=2)
    assert "in/fan1.result.json: is a result of this program, not a table" in own.stderr
    (here / "void").mkdir()
    assert "the folder has no table" in review("void", code=2).stderr


@pytest.mark.parametrize("name", ["old.xls", "old.ods", "seats.csv.gz", "seats.zip"])
def test_a_kind_of_table_that_is_not_read_makes_2(review, here, name):
    (here / "in").mkdir()
    (here / "in/fan.csv").write_text(FAN, encoding="utf-8")
    (here / "in" / name).write_bytes(b"anything")
    result = review("in", "--gate", "critical", "--write", "html,json", code=2)
    assert f"in/{name}: a table of a kind that is not read" in result.stderr
    assert (here / "reports/fan.result.json").exists()


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="pipes are of POSIX systems")
def test_pipes_and_links_that_lead_nowhere_are_told_and_never_opened(review, here):
    (here / "in").mkdir()
    os.mkfifo(here / "in/pipe.csv")
    (here / "in/gone.csv").symlink_to("nowhere.csv")
    (here / "in/way").symlink_to(here)
    (here / "in/.git").mkdir()
    result = review("in", code=2)
    assert "in/pipe.csv: is a pipe, not a file" in result.stderr and "in/gone.csv: the link leads" in result.stderr
    assert "way: a link to a folder" in result.stderr and ".git: a hidden folder" in result.stderr
    assert "in/pipe.csv: is a pipe" in review("in/pipe.csv", code=2).stderr
    assert "is a device" in review("/dev/zero", code=2).stderr


def test_a_foreign_file_that_is_called_like_a_report_is_reviewed(review, here):
    (here / "in").mkdir()
    (here / "in/fan.result.json").write_text(json.dumps([{"machine": "fan", "station": "A", "bore_diameter": 4}]))
    assert "in/fan.result.json" in review("in").stdout


def test_tables_are_found_once_in_one_order(here):
    (here / "a.csv").write_text(FAN, encoding="utf-8")
    wanted = [Path("a.csv"), Path("fan.csv")]
    for paths in (["a.csv", "fan.csv"], ["fan.csv", "a.csv", "a.csv"], ["."], [".", "a.csv"]):
        tables = find_tables([Path(p) for p in paths])
        assert (tables.found, tables.complaints) == (wanted, [])


def test_a_table_that_states_nothing_about_a_seat_never_opens_the_gate(review, here):
    (here / "bare.csv").write_text("machine,station\nfan,A\nfan,B\n", encoding="utf-8")
    for gate in ("critical", "major", "minor", "remark"):
        review("bare.csv", "--gate", gate, code=1)
    (here / "head.csv").write_text(HEAD, encoding="utf-8")
    assert review("head.csv", "--gate", "critical").exit_code in (1, 2)


def test_progress_only_on_a_terminal(review, here, monkeypatch):
    (here / "zz.csv").write_text(FAN, encoding="utf-8")
    assert review("fan.csv", "zz.csv").stderr == ""

    from linter.command import console
    from linter.command import review_command as session

    told: list[str] = []
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True, raising=False)
    monkeypatch.setenv("TERM", "xterm")
    monkeypatch.setattr(console.click, "echo", lambda text="", **options: told.append(text))
    session.review_tables([Path("fan.csv"), Path("zz.csv")], session.Options(write=("json",), gate="critical"))
    for stage in ("1/2 fan.csv: reading", "1/2 fan.csv: judging fan", "2/2 zz.csv: writing json"):
        assert any(stage in text for text in told), stage


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
    review("index.csv", "fan.csv", "--write", "html", "--gate", "critical", code=3)
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
    review("fan.csv", *accepted, "--today", "2026-12-31", code=3)
    review("fan.csv", *accepted, "--today", "2026-12-31", "--undecided-passes", code=0)
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
    result = CliRunner().invoke(main, ["compare", "none.csv", names[1]])
    assert result.exit_code == 2 and "none.csv" in result.stderr


def test_two_tables_are_compared_and_what_is_new_closes_the_gate(review, here):
    (here / "old.csv").write_text(FAN, encoding="utf-8")
    (here / "new.csv").write_text(FAN.replace("13 H6,grease,inner,stationary", "13 N6,grease,inner,stationary"))

    def compare(*arguments: str) -> Result:
        return CliRunner().invoke(main, ["compare", *arguments])

    assert compare("old.csv", "new.csv").exit_code == 0
    closed = compare("old.csv", "new.csv", "--gate", "new")
    assert closed.exit_code == 1 and "housing_seat_diameter: 13 H6" in closed.stdout.replace("\u00a0", " ")
    assert compare("old.csv", "old.csv", "--gate", "new").exit_code == 0
    assert compare("new.csv", "old.csv", "--gate", "new").exit_code == 0
    review("new.csv", "--out", "made")
    assert compare("old.csv", "made/new.result.json", "--gate", "new").exit_code == 1
    (here / "less.csv").write_text(FAN.replace(",4 k5,", ",,"), encoding="utf-8")
    assert compare("old.csv", "less.csv", "--gate", "new").exit_code == 3


def test_part_of_the_rulebook_never_opens_the_gate(review):
    result = review("fan.csv", "--only", "speed,fit.grade", "--gate", "critical", code=3)
    assert "clauses left out as asked" in result.stdout
    clauses = {entry["clause"] for entry in content("reports/fan.result.json")["assessments"]}
    assert "fit.grade" in clauses and all(c == "fit.grade" or c.startswith("speed.") for c in clauses)
    wrong = review("fan.csv", "--only", "fit.greid", code=2)
    assert "did you mean fit.grade" in wrong.stderr and wrong.stdout == ""


def test_a_brief_report_ends_after_what_is_not_known(review, here):
    review("fan.csv", "--write", "html", "--out", "long")
    review("fan.csv", "--write", "html", "--out", "short", "--brief")
    long, short = ((here / name / "fan.html").read_text(encoding="utf-8") for name in ("long", "short"))
    assert len(short) < 0.6 * len(long)
    for text in ("The gate is", "What to change", "What is not known", "not an approval"):
        assert text in short
    assert 'class="finding' not in short and "Appendix" not in short
    targets = {link for link in re.findall(r'href="#([^"]+)"', short) if not link.startswith("i-")}
    assert targets <= set(re.findall(r'id="([^"]+)"', short))


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["revew", "fan.csv"], "no command 'revew'; did you mean review?"),
        (["rulebook", "shw"], "no command 'shw'; did you mean show?"),
        (
            ["review", "fan.csv", "--gate", "majr"],
            "'majr' is none of critical, major, minor, remark; did you mean major",
        ),
        (["review", "fan.csv", "--write", "htm"], "did you mean html?"),
        (["review", "fan.csv", "--rulebok", "2026.3"], "--rulebook"),
        (["rulebook", "show", "fit.greid"], "no clause 'fit.greid'; did you mean fit.grade"),
        (["rulebook", "show", "fit"], "'fit' is a chapter; its clauses are fit.load-rotation, "),
        (["review", "fan.csv", "--rulebook", "2026.33"], "did you mean 2026.3?"),
        (["review"], "TABLES"),
    ],
)
def test_errors_have_one_shape_and_tell_the_nearest_word(here, arguments, told):
    result = CliRunner().invoke(main, arguments)
    assert result.exit_code == 2 and result.stdout == ""
    assert told in result.stderr
    assert all(line.startswith("ringseat: ") for line in result.stderr.splitlines())


def test_colours_on_a_terminal_only_and_never_against_no_color(monkeypatch, capsys):
    from linter.command import console

    line = "fan.csv: gate closed at major: 2 critical, no findings"
    console.say(line)
    monkeypatch.setattr(sys.stdout, "isatty", lambda: True, raising=False)
    monkeypatch.setenv("TERM", "xterm")
    monkeypatch.setenv("NO_COLOR", "1")
    console.say(line)
    monkeypatch.delenv("NO_COLOR")
    console.say(line)
    plain, against, coloured = capsys.readouterr().out.splitlines()
    assert plain == against == line
    assert "\x1b[31m\x1b[1mgate closed\x1b[0m" in coloured and "\x1b[31m\x1b[1m2 critical\x1b[0m" in coloured


def test_a_clause_is_shown_in_a_few_lines_and_whole_on_demand():
    short = CliRunner().invoke(main, ["rulebook", "show", "fit.grade"]).stdout
    full = CliRunner().invoke(main, ["rulebook", "show", "fit.grade", "--full"]).stdout
    assert len(short.splitlines()) < 20 < 2 * len(short.splitlines()) < len(full.splitlines())
    assert "--full" in short and "Worked cases" in full


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


def test_of_several_tables_the_gravest_status_counts(review, here):
    clean = Path(linter.__file__).parents[1] / "sample_exports/coolant-pump.csv"
    (here / "clean.csv").write_bytes(clean.read_bytes())
    (here / "broken.csv").write_text("hello\nworld\n", encoding="utf-8")
    (here / "shut.csv").write_text(FAN.replace("4 k5", "4.5 k5"), encoding="utf-8")
    critical = ("--gate", "critical")
    review("clean.csv", *critical, code=0)
    review("clean.csv", "fan.csv", *critical, code=3)
    review("clean.csv", "fan.csv", "shut.csv", *critical, code=1)
    review("clean.csv", "fan.csv", "shut.csv", "broken.csv", *critical, code=2)
    review("clean.csv", "fan.csv", "broken.csv", *critical, code=2)


def test_an_undecided_table_says_what_would_decide_it(review, here):
    call = ("fan.csv", "--rulebook", "2026.3", "--gate", "critical", "--write", KINDS)
    line = review(*call, code=3).stdout.splitlines()[0]
    result = content("reports/fan.result.json")
    assert result["summary"]["gate"] == "undecided" and result["summary"]["undecided_passes"] is False
    wanted = result["needed"]
    assert (
        wanted
        and f"{len(wanted)} values would decide it: tolerance_class of fan A (row 2), tolerance_class of fan B" in line
    )
    missing = {(u["machine"], name) for u in result["summary"]["undecided"] for name in u["missing"]}
    assert {(entry["machine"], entry["parameter"]) for entry in wanted} == missing
    assert {(e["station"], e["near"]) for e in wanted if e["station"]} == {("A", "row 2"), ("B", "row 3")}
    page = (here / "reports/fan.html").read_text(encoding="utf-8")
    assert "The gate is undecided" in page and "must be judged could not be" in page
    assert all(f"<code>{entry['parameter']}</code>" in page for entry in wanted)
    assert 'errors="0"' not in (here / "reports/fan.junit.xml").read_text(encoding="utf-8").splitlines()[1]


def test_a_gate_that_passes_undecided_says_so_everywhere(review, here):
    arguments = ("fan.csv", "--gate", "critical", "--undecided-passes", "--write", KINDS)
    assert "undecided passes, as asked" in review(*arguments, code=0).stdout
    assert content("reports/fan.result.json")["summary"]["undecided_passes"] is True
    run = content("reports/fan.sarif")["runs"][0]
    assert run["properties"]["undecidedPasses"] is True and run["properties"]["gate"] == "undecided"
    assert "By option an undecided gate passes" in (here / "reports/fan.html").read_text(encoding="utf-8")
    junit = (here / "reports/fan.junit.xml").read_text(encoding="utf-8")
    assert 'name="undecided_passes" value="yes"' in junit and "<error" not in junit


def test_the_cell_to_fill_is_told_where_the_table_has_one(review, here):
    table = FAN.replace("rotating_ring,load_direction", "rotating_ring,load_direction,closure")
    table = table.replace("inner,stationary", "inner,stationary,contact seal").replace(
        "inner,rotating", "inner,rotating,"
    )
    (here / "fan.csv").write_text(table, encoding="utf-8")
    review("fan.csv", "--rulebook", "2026.3", "--gate", "critical", code=3)
    (entry,) = [e for e in content("reports/fan.result.json")["needed"] if e["parameter"] == "closure"]
    assert entry["place"] == {"file": "fan.csv", "sheet": None, "cell": "N3"} and entry["station"] == "B"


def test_how_many_stations_there_must_be(review, here):
    review("fan.csv", "--gate", "critical", "--stations", "2", code=3)
    result = review("fan.csv", "--gate", "major", "--stations", "3", code=1)
    assert "major" in result.stdout
    (read,) = [a for a in content("reports/fan.result.json")["assessments"] if a["clause"] == "table.read"]
    assert read["outcome"] == "finding" and "has 2 stations, the call says 3" in read["message"]


def test_the_terminal_line_names_columns_that_were_not_used_and_loosened_limits(review, here):
    head, *rows = FAN.splitlines()
    extra = [f"paint{k}" for k in range(7)]
    (here / "fan.csv").write_text("\n".join([",".join([head, *extra]), *(row + ",x" * 7 for row in rows)]) + "\n")
    line = review("fan.csv").stdout.splitlines()[0]
    assert "not used: paint0, paint1, paint2, paint3, paint4 and 2 more" in line
    assert "assumed value" in line


def test_a_table_that_does_not_fit_is_refused_before_it_is_reviewed(review, here, monkeypatch):
    import linter.review.records

    (here / "many.csv").write_text(HEAD + "".join(f"m{k},A{',' * 11}\n" for k in range(400)), encoding="utf-8")
    monkeypatch.setattr(linter.review.records, "review_reading", None)
    result = review("many.csv", "--memory", "64", code=2)
    assert "many.csv: read 400 stations under" in result.stderr and "--memory" in result.stderr


def test_the_bounds_hold_for_the_whole_of_a_table(review, here, monkeypatch):
    import linter.review.plan.planned

    def endless(*_arguments):
        while True:
            pass

    monkeypatch.setattr(linter.review.plan.planned, "with_plan", endless)
    # time enough to come to the plan: an alarm that falls into a collector's callback is lost until it comes again
    result = review("fan.csv", "--seconds", "4", code=2)
    assert "more than 4 s of processor time" in result.stderr


def run_alone(here: Path, *arguments: str, **environment: str) -> subprocess.CompletedProcess[bytes]:
    call = [sys.executable, "-m", "linter.command.cli", "review", *arguments]
    root = str(Path(linter.__file__).parents[1])
    return subprocess.run(
        call, cwd=here, env={**os.environ, "PYTHONPATH": root, **environment}, capture_output=True, check=False
    )


@pytest.mark.parametrize("console", ["cp1252", "cp932", "ascii"])
def test_any_console_can_show_any_file_name(here, console):
    (here / "\u2300 fan \u4e2d.csv").write_text(FAN, encoding="utf-8")
    done = run_alone(here, "\u2300 fan \u4e2d.csv", "none \u2300.csv", "--write", "json", PYTHONIOENCODING=console)
    assert done.returncode == 2 and b"Traceback" not in done.stderr
    assert b"gate closed" in done.stdout and b"there is no such file" in done.stderr


def test_an_interrupt_ends_with_130(here, monkeypatch):
    import linter.review.records

    def interrupted(*_arguments, **_options):
        raise KeyboardInterrupt

    monkeypatch.setattr(linter.review.records, "review_reading", interrupted)
    result = CliRunner().invoke(main, ["review", "fan.csv", "--write", "json"])
    assert result.exit_code == 130 and "interrupted" in result.stderr


def test_nothing_but_its_own_words_on_standard_error(here):
    """Figures without bounds and a workbook with a foreign extension make libraries warn; nobody sees it."""
    (here / "fan.csv").write_text(FAN.replace("60000", "1e308"), encoding="utf-8")
    book = openpyxl.Workbook()
    for row in FAN.splitlines():
        book.active.append(row.split(","))
    book.save(here / "book.xlsx")
    done = run_alone(here, "fan.csv", "book.xlsx", "--write", KINDS)
    assert done.returncode in (1, 3) and done.stderr == b""
    assert (here / "reports/fan.result.json").exists()
