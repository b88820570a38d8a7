"""The README tells the truth: its clauses are those of the newest rulebook, its files and options exist.

Run as a program it writes the table of clauses anew: ``python tests/test_readme.py``.
"""

import re
from pathlib import Path

import pytest
from click.testing import CliRunner

from linter.command.cli import main
from linter.rulebook.differences import gravest
from linter.rulebook.load import load

ROOT = Path(__file__).parents[1]
BEGIN, END = "<!-- clauses: written by tests/test_readme.py -->\n", "<!-- end of clauses -->"
PAGES = ["README.md", "DEVELOPERS.md", *(f"docs/{p.name}" for p in sorted((ROOT / "docs").glob("*.md")))]


def clause_table() -> str:
    book = load()
    lines = [
        f"Rulebook {book.version}: {len(book.clauses)} clauses. `ringseat rulebook handbook` has them in full.",
        "",
    ]
    lines += ["| chapter | clause | asks | up to |", "| --- | --- | --- | --- |"]
    for chapter, clauses in book.by_chapter():
        for clause in clauses:
            lines.append(f"| {chapter.title} | `{clause.id}` | {clause.question} | {gravest(clause)} |")
    return "\n".join(lines) + "\n"


def test_the_table_of_clauses_is_fresh():
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    assert text.split(BEGIN)[1].split(END)[0] == clause_table()


@pytest.mark.parametrize("page", PAGES)
def test_every_file_linked_exists(page):
    text = (ROOT / page).read_text(encoding="utf-8")
    for target in re.findall(r"\]\(([^)#:]+)\)", text):
        assert ((ROOT / page).parent / target).exists(), target


@pytest.mark.parametrize("page", PAGES)
def test_every_option_and_command_named_exists(page):
    text = (ROOT / page).read_text(encoding="utf-8")
    commands = {"review", "rulebook", "names", "template", "compare"}
    helps = "".join(
        CliRunner().invoke(main, [*words, "--help"]).output
        for words in (["review"], ["rulebook"], ["names"], ["template"], ["compare"], ["rulebook", "handbook"],
                      ["rulebook", "list"], ["rulebook", "show"], ["rulebook", "compare"])
    )  # fmt: skip
    for line in re.findall(r"(?:^|[ `/])ringseat ([a-z]+[^`\n]*)", text):
        if line.split()[0] in commands:
            for option in re.findall(r"(?<![-\w])--[a-z]+", line):
                assert option in helps, f"{page}: {option}"
    for option in re.findall(r"`(--[a-z]+)", text):
        known = helps + "--check --benchmark-only"
        assert option in known, f"{page}: {option}"


if __name__ == "__main__":
    page = ROOT / "README.md"
    before, rest = page.read_text(encoding="utf-8").split(BEGIN)
    page.write_text(before + BEGIN + clause_table() + END + rest.split(END)[1], encoding="utf-8")
