"""The wheel is whole, and a review does not load what it does not use."""

import json
import os
import re
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
SAMPLES = ROOT / "sample_exports"


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory):
    """The project's wheel, built and unpacked far from the checkout."""
    folder = tmp_path_factory.mktemp("wheel")
    command = [sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--wheel-dir", str(folder), str(ROOT)]
    subprocess.run(command, check=True, capture_output=True)
    (wheel,) = folder.glob("ringseat-*.whl")
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(folder / "site")
    return folder / "site"


def run(site: Path, *words: str, folder: Path):
    environment = {**os.environ, "PYTHONPATH": str(site)}
    return subprocess.run(
        [sys.executable, *words], check=False, capture_output=True, text=True, cwd=folder, env=environment
    )


def files(folder: Path) -> set[Path]:
    return {p.relative_to(folder) for p in folder.rglob("*") if p.is_file()}


@pytest.mark.slow
def test_nothing_generic_lands_beside_the_package(unpacked):
    assert {p.name for p in unpacked.iterdir() if not p.name.endswith(".dist-info")} == {"linter"}


@pytest.mark.slow
def test_every_data_file_is_in_the_wheel(unpacked):
    for name in ("ruleset", "schemas"):
        here = {p.relative_to(ROOT / name) for p in (ROOT / name).rglob("*") if p.is_file()}
        there = {
            p.relative_to(unpacked / "linter" / name) for p in (unpacked / "linter" / name).rglob("*") if p.is_file()
        }
        assert here == there
    for pattern in (
        "mechanics/data/*.csv",
        "reading/*/data/*.csv",
        "report/templates/*.j2",
        "report/*.css",
        "py.typed",
    ):
        assert (
            {p.name for p in (ROOT / "linter").glob(pattern)}
            == {p.name for p in (unpacked / "linter").glob(pattern)}
            != set()
        )


@pytest.mark.slow
def test_the_wheel_reviews_a_table(unpacked, tmp_path):
    table, kinds = str(SAMPLES / "coolant-pump.csv"), "html,json,sarif,junit,xlsx"
    done = run(unpacked, "-m", "linter.command.cli", "review", table, "--write", kinds, folder=tmp_path)
    assert (done.returncode, done.stderr) == (0, "")
    result = json.loads((tmp_path / "reports" / "coolant-pump.result.json").read_text(encoding="utf-8"))
    assert result["summary"]["outcomes"]["met"] > 50
    where = run(unpacked, "-c", "import linter; print(linter.__file__)", folder=tmp_path).stdout
    assert Path(where.strip()).is_relative_to(unpacked)


def test_a_review_loads_only_what_it_uses(tmp_path):
    table = str(SAMPLES / "respirator-blower.xlsx")
    code = (
        "import sys; from click.testing import CliRunner; from linter.command.cli import main;"
        f"CliRunner().invoke(main, ['review', {table!r}, '--out', {str(tmp_path)!r}]);"
        "print(*sorted({'scipy', 'pandas', 'pint', 'rapidfuzz', 'jsonschema', 'xlsxwriter', 'openpyxl'}"
        " & set(sys.modules)))"
    )
    done = subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, text=True)
    assert done.stdout.strip() == ""
    assert (tmp_path / "respirator-blower.html").is_file()


def stated(project: dict) -> dict[str, str]:
    """Lowest stated version by name, of the program and of its tests."""
    lines = [*project["dependencies"], *project["optional-dependencies"]["test"]]
    return dict(re.split(">=", line.split(",")[0]) for line in lines)


def test_the_lowest_versions_are_those_that_are_stated():
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    lines = (ROOT / ".ci" / "lowest.txt").read_text(encoding="utf-8").splitlines()
    pinned = dict(line.split("==") for line in lines if not line.startswith("#"))
    assert pinned == stated(project), ".ci/lowest.txt pins what pyproject.toml states"


def test_the_source_archive_carries_what_its_tests_and_ci_need():
    include = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    named = set(include["tool"]["hatch"]["build"]["targets"]["sdist"]["include"])
    assert {"tests", "docs", "benchmarks", ".ci", "ruleset", "schemas", "sample_exports", "reports/example"} <= named
    assert all((ROOT / name).exists() for name in named)
