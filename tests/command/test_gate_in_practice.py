"""The scripts and files of docs/gate.md and docs/concessions.md do what the text says."""

import json
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

import linter
from linter.model.findings import Quantity
from linter.review.concessions import load_concessions

ROOT = Path(linter.__file__).parents[1]
TABLE = (
    "machine,station,drawing_number,drawing_revision,speed_max,bore_diameter,outside_diameter,ring_width,"
    "shaft_seat_diameter,housing_seat_diameter,lubrication,rotating_ring,load_direction\n"
    "fan,A,FA-12,B,60000,4,13,5,4 k5,13 H6,grease,inner,stationary\n"
    "fan,B,FA-12,B,60000,4,13,5,4 h5,13 H6,grease,inner,rotating\n"
)


def blocks(page: str, language: str) -> list[str]:
    text = (ROOT / "docs" / page).read_text(encoding="utf-8")
    return re.findall(rf"^```{language}\n(.*?)^```$", text, re.DOTALL | re.MULTILINE)


@pytest.fixture
def call(tmp_path):
    """Run a command in a folder that holds the scripts of the page, the command itself and one table."""
    tools = tmp_path / "tools"
    tools.mkdir()
    command = tools / "ringseat"
    command.write_text(f'#!/bin/sh\nexec "{sys.executable}" -m linter.command.cli "$@"\n', encoding="utf-8")
    command.chmod(0o755)
    for text in (*blocks("gate.md", "sh"), *blocks("gate.md", "python")):
        named = re.search(r"^# (\w+\.(?:sh|py))\b", text, re.MULTILINE)
        if named:
            (tmp_path / named[1]).write_text(text, encoding="utf-8")
    (tmp_path / "fan.csv").write_text(TABLE, encoding="utf-8")
    environment = {**os.environ, "PATH": f"{tools}{os.pathsep}{os.environ['PATH']}", "PYTHONPATH": str(ROOT)}

    def run(*words: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            words, cwd=tmp_path, env=environment, capture_output=True, text=True, encoding="utf-8", check=False
        )

    return run


OPEN = "--gate critical --undecided-passes"


def open_gate(tmp_path: Path) -> None:
    """Make the scripts close on critical findings only, of which the table has none, and not ask for more values."""
    for script in (*tmp_path.glob("*.sh"), *tmp_path.glob("*.py")):
        text = script.read_text(encoding="utf-8")
        text = text.replace("--gate major", OPEN).replace(
            '"--gate", "major"', '"--gate", "critical", "--undecided-passes"'
        )
        script.write_text(text.replace("--write json", f"--write json {OPEN}"), encoding="utf-8")


def test_step_before_release_in_shell(call, tmp_path):
    done = call("sh", "pre_release.sh", "fan.csv", "kept")
    assert done.returncode == 1 and "The release is held. The report is in kept." in done.stdout
    assert {p.name for p in (tmp_path / "kept").iterdir()} == {"fan.html", "fan.result.json", "fan.findings.xlsx"}
    done = call("sh", "pre_release.sh", "gone.csv", "kept")
    assert done.returncode == 2 and "There was no review" in done.stderr
    open_gate(tmp_path)
    done = call("sh", "pre_release.sh", "fan.csv", "kept")
    assert done.returncode == 0 and "The release may go on." in done.stdout


def test_step_before_release_in_python(call, tmp_path):
    done = call(sys.executable, "pre_release.py", "fan.csv", "kept")
    result = json.loads((tmp_path / "kept/fan.result.json").read_text(encoding="utf-8"))
    assert done.returncode == 1
    lines = done.stdout.splitlines()
    assert lines[0] == "gate closed by rulebook 2026.4"
    grave = sum(result["summary"]["severities"][s] for s in ("critical", "major"))
    assert sum(line.startswith(("critical: ", "major: ")) for line in lines) == grave > 0
    assert sum(line.startswith("state ") for line in lines) == len(result["needed"])
    missing = result["summary"]["outcomes"]["not assessed"]
    assert sum(line.startswith("not assessed: ") for line in lines) == missing > 0
    assert call(sys.executable, "pre_release.py", "gone.csv", "kept").returncode == 2
    open_gate(tmp_path)
    assert call(sys.executable, "pre_release.py", "fan.csv", "kept").returncode == 0


def test_hand_off(call, tmp_path):
    call("ringseat", "review", "fan.csv", "--rulebook", "2026.4", "--write", "json", "--out", "sent")
    done = call("sh", "check_handoff.sh", "fan.csv", "sent/fan.result.json")
    assert done.returncode == 1 and done.stdout.endswith("The result is confirmed.\n")
    (tmp_path / "fan.csv").write_text(TABLE.replace("4 h5", "4 k5"), encoding="utf-8")
    done = call("sh", "check_handoff.sh", "fan.csv", "sent/fan.result.json")
    assert done.returncode == 1 and "is not what this table gives here" in done.stdout
    assert "old: fan.result.json" in done.stdout and done.stderr == ""
    assert call("sh", "check_handoff.sh", "gone.csv", "sent/fan.result.json").returncode == 2
    open_gate(tmp_path)
    call(
        "ringseat",
        "review",
        "fan.csv",
        "--rulebook",
        "2026.4",
        "--write",
        "json",
        "--out",
        "sent",
        *OPEN.split(),
    )
    done = call("sh", "check_handoff.sh", "fan.csv", "sent/fan.result.json")
    assert done.returncode == 0 and done.stdout.endswith("The result is confirmed.\n")


def test_job_of_a_build_server(call, tmp_path):
    (tmp_path / "tables").mkdir()
    for name in ("fan.csv", "mill.csv"):
        (tmp_path / "tables" / name).write_text(TABLE, encoding="utf-8")
    done = call("sh", "ci_review.sh")
    assert done.returncode == 1 and done.stderr == ""
    assert {p.name for p in (tmp_path / "reports").iterdir()} == {
        *(f"{name}{end}" for name in ("fan", "mill") for end in (".html", ".result.json", ".junit.xml", ".sarif")),
        "index.html",
    }


def test_the_example_of_a_concession_can_be_read(tmp_path):
    (text,) = blocks("concessions.md", "toml")
    path = tmp_path / "accepted.toml"
    path.write_text(text, encoding="utf-8")
    (concession,) = load_concessions(path)
    assert concession.limit == Quantity(720000.0, "mm.r/min")
    assert concession.expires.isoformat() == "2027-06-30"


def test_every_key_and_state_of_a_concession_is_explained():
    text = (ROOT / "docs/concessions.md").read_text(encoding="utf-8")
    schema = json.loads((ROOT / "schemas/concessions.schema.json").read_text(encoding="utf-8"))
    result = json.loads((ROOT / "schemas/result.schema.json").read_text(encoding="utf-8"))
    states = result["properties"]["concessions"]["items"]["properties"]["state"]["enum"]
    for word in (*schema["$defs"]["concession"]["properties"], *states):
        assert f"`{word}`" in text, word
