"""The guide tells the truth: its steps to a new clause with a new parameter, walked in a copy of the checkout.

The steps are read from DEVELOPERS.md; each adds what stands in its block to the end of the file it names.
"""

import os
import re
import shutil
import subprocess
import sys
import textwrap
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
STEP = re.compile(r"(?ms)^\d\. `([^`]+)`.*?^   ```\w+\n(.*?)^   ```$")
COPIED = ("linter", "ruleset", "schemas", "tests", "benchmarks", "docs", "sample_exports")
#: Tests that look at a clause or a parameter, and the words that choose from them those about the new one.
JUDGES = (
    "tests/rulebook",
    "tests/checks/test_cases.py",
    "tests/test_laws.py",
    "tests/test_no_limit_in_code.py",
    "tests/test_readme.py",
    "tests/report/test_blank_table.py",
    "tests/reading/test_names.py",
    "tests/reading/test_languages.py",
    "tests/test_house.py",
)
ABOUT = (
    "o-ring or seal_ring or fit_assembly or test_versions or test_golden or stale or has_a_word or language or house"
)


def steps() -> list[tuple[str, str]]:
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").split("### A clause with a new parameter")[1]
    return [(name, textwrap.dedent(block)) for name, block in STEP.findall(text.split("\n## ")[0])]


def copy_to(folder: Path) -> Path:
    for name in COPIED:
        shutil.copytree(ROOT / name, folder / name, ignore=shutil.ignore_patterns("__pycache__"))
    for path in (*ROOT.glob("*.md"), ROOT / "pyproject.toml"):
        shutil.copy(path, folder / path.name)
    return folder


def walk(folder: Path, without: str = "") -> None:
    """Add every step; leave out the lines that contain a text."""
    for name, block in steps():
        lines = [line for line in block.splitlines(keepends=True) if not without or without not in line]
        path = folder / name
        start = "\n" if path.suffix in (".toml", ".py") else ""
        start *= 2 if path.suffix == ".py" else 1
        path.write_text(path.read_text(encoding="utf-8") + start + "".join(lines), encoding="utf-8", newline="\n")


def run(folder: Path, *words: str) -> subprocess.CompletedProcess[str]:
    environment = {**os.environ, "PYTHONPATH": str(folder), "PYTHONDONTWRITEBYTECODE": "1"}
    return subprocess.run(
        [sys.executable, *words], cwd=folder, env=environment, capture_output=True, text=True, check=False
    )


def judged(folder: Path, *tests: str) -> subprocess.CompletedProcess[str]:
    return run(folder, "-m", "pytest", "-p", "no:cacheprovider", "-q", "-x", *tests)


def test_a_clause_with_a_new_parameter_touches_at_most_six_files():
    files = [name for name, _ in steps()]
    assert 4 <= len(files) == len(set(files)) <= 6
    assert all((ROOT / name).is_file() for name in files)


@pytest.mark.slow
def test_the_steps_lead_to_a_clause_that_is_judged_shown_and_released(tmp_path):
    folder = copy_to(tmp_path)
    walk(folder)
    stale = run(folder, "-m", "linter.refresh", "--check")
    assert stale.returncode == 1 and "stale: ruleset/current/golden.csv" in stale.stdout
    refused = run(folder, "-m", "linter.rulebook.release")
    assert refused.returncode == 1 and "linter.refresh" in refused.stderr
    refreshed = run(folder, "-m", "linter.refresh")
    assert refreshed.returncode == 0, refreshed.stderr
    found = judged(folder, *JUDGES, "-k", ABOUT)
    assert found.returncode == 0, found.stdout[-3000:]
    shown = run(
        folder, "-m", "linter.command.cli", "rulebook", "show", "fit.o-ring-squeeze", "--full", "--rulebook", "current"
    )
    assert "hardly pressed: finding (major)." in shown.stdout and "Must be judged: yes" in shown.stdout
    released = run(folder, "-m", "linter.rulebook.release")
    assert released.returncode == 0, released.stderr
    version = released.stdout.split()[1]
    compared = run(folder, "-m", "linter.command.cli", "rulebook", "compare", "2026.3", version)
    assert "fit.o-ring-squeeze\n  is new, up to major:" in compared.stdout
    assert "reason: O-rings against creep were accepted unseen" in compared.stdout


@pytest.mark.slow
@pytest.mark.parametrize(
    ("without", "tests", "told"),
    [
        (",ja", ["tests/reading/test_names.py", "tests/reading/test_languages.py"],
         ["seal_ring_squeeze,WORD,ja", "linter/reading/words/data/headings.csv"]),
        (",ja", ["tests/reading/test_languages.py"],
         ["seal_ring_squeeze has no word in ja: add a row to linter/reading/words/data/headings.csv"]),
        ('"fit.o-ring-squeeze" = "O-rings', ["tests/rulebook/test_versions.py"],
         ["ruleset/current/changes.toml", "fit.o-ring-squeeze"]),
        ("station,number,%", ["tests/rulebook"],
         ["fit_use.toml: clause fit.o-ring-squeeze: 'seal_ring_squeeze' is not a parameter of the vocabulary"]),
    ],
    ids=["a word, told by names", "a word, told by tables", "the reason", "the parameter"],
)  # fmt: skip
def test_a_step_left_out_is_told_with_the_file_that_wants_it(tmp_path, without, tests, told):
    folder = copy_to(tmp_path)
    walk(folder, without)
    found = judged(folder, *tests)
    assert found.returncode != 0
    for text in told:
        assert text in found.stdout, found.stdout[-3000:]


@pytest.mark.slow
def test_an_example_left_out_is_told(tmp_path):
    folder = copy_to(tmp_path)
    walk(folder)
    path = folder / "schemas" / "vocabulary.csv"
    path.write_text(path.read_text(encoding="utf-8").replace(",100,,15,how", ",100,,,how"), encoding="utf-8")
    found = judged(folder, "tests/report/test_blank_table.py", "-k", "every_example")
    assert "give seal_ring_squeeze an example in schemas/vocabulary.csv" in found.stdout


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("speed_max,machine,number,", "speed_max,machine,numbr,", "speed_max: kind: one of text, number"),
        ("speed_max,machine,", "speed_max,rotor,", "speed_max: level: one of machine, station"),
        ("speed_max,machine,number,r/min,", "speed_max,machine,number,,", "speed_max: unit: expected"),
        (
            "duty,machine,choice,,,continuous|intermittent|short-time,",
            "duty,machine,choice,,,,",
            "duty: choices: words",
        ),
        (
            "speed_max,machine,number,r/min,n,,,positive",
            "speed_max,machine,number,r/min,n,,,plus",
            "speed_max: sign: one of",
        ),
        ("speed_operating,machine", "speed_max,machine", "speed_max: the name stands twice"),
        ("speed_max,machine,number,r/min,n,", "speed_max,machine,number,r/min,n,,", "a cell for each column"),
    ],
)
def test_a_wrong_row_of_the_vocabulary_is_told(tmp_path, monkeypatch, old, new, told):
    from linter.model import vocabulary as module

    text = (ROOT / "schemas" / "vocabulary.csv").read_text(encoding="utf-8")
    assert old in text
    (tmp_path / "vocabulary.csv").write_text(text.replace(old, new, 1), encoding="utf-8")
    monkeypatch.setattr(module, "data_folder", lambda name: tmp_path)
    with pytest.raises(ValueError, match=r"^schemas/vocabulary\.csv: ") as caught:
        module.vocabulary.__wrapped__()
    assert told in str(caught.value)


def test_a_short_row_of_a_table_of_words_is_told_with_its_line(tmp_path):
    from linter.model.packaged import columns_of

    path = tmp_path / "headings.csv"
    path.write_text("target,word,language\nbore_diameter,bore,en\nring_width,width\n", encoding="utf-8")
    with pytest.raises(ValueError, match=r"headings\.csv, line 3: the row is too short"):
        columns_of(path, "target", "word", "language")
