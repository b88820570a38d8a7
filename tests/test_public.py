"""What `import linter` promises, and what the command does not load."""

import doctest
import os
import re
import subprocess
import sys
from pathlib import Path

import pandas as pd
import pytest

import linter
import linter.review.door

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
    found = doctest.testmod(linter.review.door)
    assert found.attempted >= 5 and found.failed == 0


def test_a_file_and_its_frame_have_the_same_review():
    fan = linter.review_table(SAMPLE, "2026.3", changes=False)
    frame = pd.read_csv(SAMPLE, dtype=str)
    assert linter.review_table(frame, "2026.3", changes=False).assessments.equals(fan.assessments)
    assert len(fan.assessments) == len(fan.result.assessments)
    assert fan.verdict == fan.result.gate
    grades = fan.findings["severity"].map(["critical", "major", "minor", "remark"].index)
    assert grades.is_monotonic_increasing and len(grades) == fan.result.outcomes["finding"]


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


def test_the_page_on_the_library_runs(monkeypatch):
    text = (ROOT / "docs" / "library.md").read_text(encoding="utf-8")
    monkeypatch.chdir(ROOT)
    names: dict = {}
    for block in re.findall(r"^```python\n(.*?)^```$", text, re.DOTALL | re.MULTILINE):
        exec(block, names)
    assert names["fan"].verdict == "closed" and len(names["fan"].plan) > 0
    assert names["loose"]["station"].tolist() == ["B"]
    shown = names["fan"]._repr_html_()
    assert "Gate closed" in shown and shown.count("<table") == 2
    assert "<script>" not in names["seats"]._repr_html_()
