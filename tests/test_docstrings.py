"""Docstrings say what the code says: names of the signature, something returned, errors raised; their examples run."""

import ast
import doctest
import importlib
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import linter

ROOT = Path(linter.__file__).parent
MODULES = sorted(ROOT.rglob("*.py"))
EXAMPLES = [path for path in MODULES if ">>> " in path.read_text(encoding="utf-8")]
Function = ast.FunctionDef


def _public(path: Path) -> Iterator[tuple[str, ast.ClassDef | Function, bool]]:
    """Public classes and functions of a module, with their name and whether they are methods."""
    name = path.relative_to(ROOT.parent).as_posix()
    for node in ast.parse(path.read_text(encoding="utf-8")).body:
        if isinstance(node, Function) and not node.name.startswith("_"):
            yield f"{name} {node.name}", node, False
        elif isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
            yield f"{name} {node.name}", node, False
            for part in node.body:
                if isinstance(part, Function) and not part.name.startswith("_"):
                    yield f"{name} {node.name}.{part.name}", part, True


def _sections(text: str) -> dict[str, list[str]]:
    """Heading to lines of the sections that are underlined."""
    found: dict[str, list[str]] = {}
    lines = text.split("\n")
    lines_of: list[str] = []
    for number, line in enumerate(lines):
        under = lines[number + 1] if number + 1 < len(lines) else ""
        if line and not line.startswith(" ") and re.fullmatch("-{3,}", under):
            lines_of = found.setdefault(line, [])
        elif not re.fullmatch("-{3,}", line):
            lines_of.append(line)
    return found


def _named(lines: list[str]) -> set[str]:
    """Names that a section explains: ``a, b : float``, ``a`` or ``*rest``."""
    heads = [line.split(" : ")[0] for line in lines if line and not line.startswith(" ")]
    return {name.strip().lstrip("*") for head in heads for name in head.split(",")}


def _arguments(node: Function, method: bool) -> set[str]:
    a = node.args
    plain = [*a.posonlyargs, *a.args]
    bound = method and not any(isinstance(d, ast.Name) and d.id == "staticmethod" for d in node.decorator_list)
    return {x.arg for x in (*plain[bound:], *a.kwonlyargs, a.vararg, a.kwarg) if x is not None}


def _fields(node: ast.ClassDef) -> set[str]:
    """Fields of a record, arguments of ``__init__`` and properties."""
    found = {
        part.target.id for part in node.body if isinstance(part, ast.AnnAssign) and isinstance(part.target, ast.Name)
    }
    for part in node.body:
        if isinstance(part, Function):
            found |= _arguments(part, True) if part.name == "__init__" else {part.name}
    return found


def _own_raises(node: Function) -> bool:
    return any(isinstance(part, ast.Raise) and part.exc is not None for part in ast.walk(node))


def _faults(name: str, node: ast.ClassDef | Function, method: bool) -> Iterator[str]:
    text = ast.get_docstring(node)
    if not text:
        yield f"{name}: no docstring"
        return
    sections = _sections(text)
    if isinstance(node, ast.ClassDef):
        told = _named(sections.get("Attributes", [])) | _named(sections.get("Parameters", []))
        if not told <= _fields(node) and not any(isinstance(base, ast.Name) for base in node.bases):
            yield f"{name}: explains {sorted(told - _fields(node))}, which the class does not have"
        return
    arguments = _arguments(node, method)
    if "Parameters" in sections:
        told = _named(sections["Parameters"])
        if told != arguments:
            yield f"{name}: explains {sorted(told)}, takes {sorted(arguments)}"
        gives = not (isinstance(node.returns, ast.Constant) and node.returns.value is None)
        if gives and not {"Returns", "Yields"} & set(sections):
            yield f"{name}: does not say what it returns"
        if not gives and "Returns" in sections:
            yield f"{name}: says what it returns, returns nothing"
        if _own_raises(node) and "Raises" not in sections:
            yield f"{name}: does not say what it raises"


@pytest.mark.parametrize("path", MODULES, ids=lambda p: p.relative_to(ROOT).as_posix())
def test_docstrings_agree_with_signatures(path):
    assert [fault for name, node, method in _public(path) for fault in _faults(name, node, method)] == []


def test_a_docstring_that_disagrees_is_found():
    source = '''
def force(length, rate):
    """Force of a spring.

    Parameters
    ----------
    length : float
        mm.
    stiffness : float
        N/mm.
    """
    if rate < 0:
        raise ValueError("rate")
    return length * rate
'''
    (node,) = ast.parse(source).body
    assert isinstance(node, Function)
    assert [fault.partition(": ")[2] for fault in _faults("force", node, False)] == [
        "explains ['length', 'stiffness'], takes ['length', 'rate']",
        "does not say what it returns",
        "does not say what it raises",
    ]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_examples_run(path):
    name = ".".join(("linter", *path.relative_to(ROOT).with_suffix("").parts))
    found = doctest.testmod(importlib.import_module(name))
    assert found.attempted > 0
    assert found.failed == 0
