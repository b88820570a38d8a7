"""What `import linter` promises, and what the command does not load."""

import doctest
import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pandas as pd
import pytest
from click.testing import CliRunner

import linter
import linter.report.door
from linter.command.cli import main
from tests.consumer import gate_of, many

ROOT = Path(linter.__file__).parents[1]
SAMPLE = ROOT / "sample_exports" / "coolant-pump.csv"


def test_only_documented_names_are_shown():
    assert dir(linter) == sorted(linter.__all__) == sorted({*linter._HOME, "__version__"})
    for name in linter.__all__:
        assert getattr(linter, name) is not None
        assert name == "__version__" or name in linter.__doc__
    with pytest.raises(AttributeError, match="no attribute 'plan'"):
        _ = linter.plan


def test_examples_of_the_door_run():
    found = doctest.testmod(linter.report.door)
    assert found.attempted >= 5 and found.failed == 0


def test_a_file_and_its_frame_have_the_same_review():
    fan = linter.review_table(SAMPLE, "2026.3", changes=False)
    frame = pd.read_csv(SAMPLE, dtype=str)
    assert linter.review_table(frame, "2026.3", changes=False).assessments.equals(fan.assessments)
    assert len(fan.assessments) == len(fan.result.assessments)
    assert fan.verdict == fan.result.gate
    grades = fan.findings["severity"].map(["critical", "major", "minor", "remark"].index)
    assert grades.is_monotonic_increasing and len(grades) == fan.result.outcomes["finding"]


def test_a_program_of_a_firm(tmp_path):
    frame = linter.read_table(SAMPLE).stations.to_frame()
    assert many(frame) == len(linter.review_table(SAMPLE, "2026.3", changes=False).assessments)
    assert gate_of(ROOT / "none.csv", tmp_path)[0] == "unread"
    table = ROOT / "sample_exports" / "conveyor-idler.json"
    verdict, lines = gate_of(table, tmp_path / "door")
    assert verdict == "closed" and lines and all(" -> " in line for line in lines)
    # the files are those of the command
    arguments = ["review", table, "--rulebook", "2026.3", "--keep", "speed_max", "--write", "json,sarif"]
    CliRunner().invoke(main, [*map(str, arguments), "--out", str(tmp_path / "command")])
    names = {path.name for path in (tmp_path / "door").iterdir()}
    assert names == {"conveyor-idler.result.json", "conveyor-idler.sarif"}
    assert all((tmp_path / "door" / n).read_bytes() == (tmp_path / "command" / n).read_bytes() for n in names)


def test_a_frame_has_reports_too(tmp_path):
    seats = linter.review_table(pd.read_csv(SAMPLE, dtype=str), "2026.3")
    names = [path.name for path in seats.write(tmp_path, ("xlsx", "sarif"))]
    assert names == ["DataFrame.findings.xlsx", "DataFrame.sarif"]
    with pytest.raises(ValueError, match="'pdf' is no kind of report; there are html"):
        seats.write(tmp_path, ["pdf"])
    with pytest.raises(OSError, match="is an input"):
        linter.review_table(shutil.copy(SAMPLE, tmp_path / "DataFrame.sarif")).write(tmp_path, "sarif")


def test_concessions_and_bearings_are_those_of_the_command(tmp_path):
    table = ROOT / "sample_exports" / "respirator-blower.xlsx"
    before = linter.review_table(table, "2026.3", changes=False)
    (first,) = before.findings.query("severity == 'minor'").head(1).itertuples()
    (machine,) = before.result.machines
    entry = {
        "number": "C-1", "clause": first.clause, "machine": first.machine, "severity": first.severity,
        "drawing_revision": machine.drawing_revision, "approver": "Q. Tester", "reason": "trial",
        "expires": "2999-01-01", "limit": {"value": 10, "unit": "N"},
    }  # fmt: skip
    path = tmp_path / "c.json"
    path.write_text(json.dumps({"concessions": [entry]}), encoding="utf-8")
    after = linter.review_table(table, "2026.3", changes=False, concessions=path)
    assert set(after.assessments.query("outcome == 'conceded'")["clause"]) == {first.clause}
    with pytest.raises(linter.InputError, match=r"none\.csv"):
        linter.review_table(table, "2026.3", changes=False, bearings=tmp_path / "none.csv")


def test_the_steps_by_themselves():
    stations = linter.read_table(SAMPLE).stations
    book = linter.load_rulebook("2026.3")
    again = linter.Stations.from_frame(stations.to_frame())
    table = linter.assess(again, book, keep="figures").table()
    assert len(table["clause"]) == len(linter.review_table(SAMPLE, book, changes=False).assessments)
    with pytest.raises(linter.RulebookError):
        linter.load_rulebook("1066.1")
    with pytest.raises(linter.InputError):
        linter.read_table(ROOT / "none.csv")


def test_the_command_never_loads_pandas(tmp_path):
    code = (
        "import sys\nfrom linter.command.cli import main\n"
        f"sys.argv = ['ringseat', 'review', {str(SAMPLE)!r}, '--out', {str(tmp_path)!r}, "
        "'--write', 'html,json,sarif,junit,xlsx']\n"
        "try:\n    main()\nexcept SystemExit as end:\n    assert end.code != 2\n"
        "print(sorted(name for name in sys.modules if name.split('.')[0] in ('pandas', 'pyarrow')))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )  # fmt: skip
    assert done.stdout.splitlines()[-1] == "[]"


def test_the_page_on_the_library_runs(monkeypatch, tmp_path):
    text = (ROOT / "docs" / "library.md").read_text(encoding="utf-8")
    for name in ("sample_exports", "ruleset", "schemas"):
        (tmp_path / name).symlink_to(ROOT / name)
    monkeypatch.chdir(tmp_path)
    names: dict = {}
    for block in re.findall(r"^```python\n(.*?)^```$", text, re.DOTALL | re.MULTILINE):
        exec(block, names)
    assert names["fan"].verdict == "closed" and len(names["fan"].plan) > 0
    assert names["loose"]["station"].tolist() == ["B"]
    shown = names["fan"]._repr_html_()
    assert "Gate closed" in shown and shown.count("<table") == 2
    assert "<script>" not in names["seats"]._repr_html_()
