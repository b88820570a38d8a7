"""The README tells the truth: its clauses are those of the newest rulebook, its files and options exist."""

import re
from pathlib import Path

import pytest
from click.testing import CliRunner

from linter.command.cli import main
from linter.refresh import stale

ROOT = Path(__file__).parents[1]
PAGES = ["README.md", "DEVELOPERS.md", *(f"docs/{p.name}" for p in sorted((ROOT / "docs").glob("*.md")))]


def test_nothing_that_is_written_by_the_program_is_stale():
    assert list(stale()) == [], "run `python -m linter.refresh`"


@pytest.mark.parametrize("page", PAGES)
def test_every_file_linked_exists(page):
    text = (ROOT / page).read_text(encoding="utf-8")
    for target in re.findall(r"\]\(([^)#:]+)\)", text):
        assert ((ROOT / page).parent / target).exists(), target


@pytest.mark.parametrize("page", PAGES)
def test_every_option_and_command_named_exists(page):
    text = (ROOT / page).read_text(encoding="utf-8")
    commands = set(main.commands)
    ways = [[name] for name in commands] + [["rulebook", name] for name in main.commands["rulebook"].commands]
    helps = "".join(CliRunner().invoke(main, [*words, "--help"]).output for words in ways)
    for line in re.findall(r"(?:^|[ `/])ringseat ([a-z]+[^`\n]*)", text):
        if line.split()[0] in commands:
            for option in re.findall(r"(?<![-\w])--[a-z]+", line):
                assert option in helps, f"{page}: {option}"
    for option in re.findall(r"`(--[a-z]+)", text):
        known = helps + "--check --benchmark-only --tables"
        assert option in known, f"{page}: {option}"
