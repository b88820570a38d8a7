"""Templates compiled once: bytecode beside them, and nothing that changes what is written."""

import shutil
import sys
from pathlib import Path

import pytest
from jinja2 import Environment, TemplateNotFound

from linter.report import html
from linter.report.compiled import CompiledLoader

TEMPLATES = Path(html.__file__).parent / "templates"


@pytest.fixture
def folder(tmp_path, monkeypatch):
    monkeypatch.setattr(sys, "dont_write_bytecode", False)
    monkeypatch.setattr(sys, "pycache_prefix", None)
    (tmp_path / "a.txt.j2").write_text("{{ name }} is {{ 'here' }}")
    return tmp_path


def _rendered(folder, **options):
    return Environment(loader=CompiledLoader(folder), **options).get_template("a.txt.j2").render(name="A")


def _kept(folder):
    return sorted((folder / "__pycache__").glob("*"))


def test_the_second_program_does_not_compile(folder, monkeypatch):
    assert _rendered(folder) == "A is here"
    assert [path.suffix for path in _kept(folder)] == [".pyc"]
    monkeypatch.setattr(Environment, "compile", lambda *_: pytest.fail("compiled again"))
    assert _rendered(folder) == "A is here"


@pytest.mark.parametrize("cut", [0, 3, 16, 17, 40])
def test_damaged_bytecode_is_passed_over(folder, cut):
    _rendered(folder)
    kept = _kept(folder)[0]
    kept.write_bytes(kept.read_bytes()[:cut])
    assert _rendered(folder) == "A is here"
    kept.write_bytes(kept.read_bytes()[:16] + b"\xff" * 40)
    assert _rendered(folder) == "A is here"


def test_a_changed_template_is_compiled_again(folder):
    _rendered(folder)
    (folder / "a.txt.j2").write_text("{{ name }} has gone away")
    assert _rendered(folder) == "A has gone away"


def test_other_settings_are_compiled_again(folder):
    (folder / "a.txt.j2").write_text("{% if true %}\n{{ name }}\n{% endif %}\n")
    assert _rendered(folder, trim_blocks=False) == "\nA\n"
    assert _rendered(folder, trim_blocks=True) == "A\n"


def test_a_folder_that_takes_no_bytecode(folder):
    (folder / "__pycache__").write_text("a file stands where the folder would be")
    assert _rendered(folder) == "A is here"


def test_python_told_to_keep_no_bytecode(folder, monkeypatch):
    monkeypatch.setattr(sys, "dont_write_bytecode", True)
    assert _rendered(folder) == "A is here"
    assert not (folder / "__pycache__").exists()


def test_no_such_template(folder):
    with pytest.raises(TemplateNotFound, match=r"b\.txt"):
        Environment(loader=CompiledLoader(folder)).get_template("b.txt.j2")


def test_no_result_of_the_program_is_part_of_a_compiled_template(folder, monkeypatch):
    """What is written for a constant follows the program as it is now, not as it was when the template was compiled."""
    shutil.copytree(TEMPLATES, folder, dirs_exist_ok=True, ignore=shutil.ignore_patterns("__pycache__"))
    (folder / "constant.j2").write_text("{{ 'a word' }} {{ 'a_word' | words }}")
    environment = html.environment.__wrapped__()
    environment.loader = CompiledLoader(folder)
    assert environment.get_template("constant.j2").render() == "a word a word"
    again = html.environment.__wrapped__()
    again.loader = CompiledLoader(folder)
    again.filters["words"] = lambda text: f"<{text}>"
    assert again.get_template("constant.j2").render() == "a word &lt;a_word&gt;"
