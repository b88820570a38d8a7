"""The house: how many rooms, which way imports go, no circle, no module or function too large.

The rooms from the ground up are written here once; DEVELOPERS.md tells what each is for.
"""

import ast
from collections import defaultdict
from functools import cache
from pathlib import Path

import linter

ROOT = Path(linter.__file__).parent
#: From the ground up: a room imports from rooms before it only.
ROOMS = ("mechanics", "model", "reading", "checks", "rulebook", "review", "report", "command")
#: The storeys of the reading room, from the ground up; modules at its top are above all of them.
STOREYS = ("files", "cells", "words", "layouts", "settling")
MOST_ARROWS = 30
MOST_LINES = 400
#: Modules that are still to be divided; none may be added.
TO_DIVIDE: set[str] = set()
MOST_COMPLEX = 25
#: Functions that are still to be simplified; none may be added.
TO_SIMPLIFY: set[str] = set()


def _modules() -> dict[str, Path]:
    found = {}
    for path in sorted(ROOT.rglob("*.py")):
        parts = ("linter", *path.relative_to(ROOT).with_suffix("").parts)
        found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


@cache
def _imports() -> dict[str, frozenset[str]]:
    """Module to the modules of the program that it imports anywhere, inside functions too."""
    modules = _modules()
    found: dict[str, set[str]] = defaultdict(set)
    for name, path in modules.items():
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.module and node.module.split(".")[0] == "linter":
                for alias in node.names:
                    whole = f"{node.module}.{alias.name}"
                    found[name].add(whole if whole in modules else node.module)
            elif isinstance(node, ast.Import):
                found[name] |= {a.name for a in node.names if a.name.split(".")[0] == "linter"}
    return {name: frozenset(targets - {name}) for name, targets in found.items()}


def _room(module: str) -> str:
    """Its room; ``linter`` for the door and the tool of a checkout, which stand above all rooms."""
    parts = module.split(".")
    return parts[1] if len(parts) > 1 and (ROOT / parts[1]).is_dir() else "linter"


def test_rooms_at_the_top():
    here = {p.stem for p in ROOT.iterdir() if p.is_dir() and any(p.glob("*.py"))} - {"__pycache__"}
    modules = {p.stem for p in ROOT.glob("*.py")} - {"__init__"}
    assert here == set(ROOMS)
    assert len(here | modules) <= 9, modules


def test_imports_go_down_only():
    climbing = [
        f"{module} -> {target}"
        for module, targets in _imports().items()
        for target in targets
        if _room(module) != "linter"
        and (_room(target) == "linter" or ROOMS.index(_room(target)) > ROOMS.index(_room(module)))
    ]
    assert climbing == []


def test_storeys_of_reading():
    def storey(module: str) -> int:
        part = module.split(".")[2] if module.count(".") >= 2 else ""
        return STOREYS.index(part) if part in STOREYS else len(STOREYS)

    climbing = [
        f"{module} -> {target}"
        for module, targets in _imports().items()
        for target in targets
        if _room(module) == _room(target) == "reading" and storey(target) > storey(module)
    ]
    assert climbing == []


def test_shared_checks_know_no_chapter():
    climbing = [
        f"{module} -> {target}"
        for module, targets in _imports().items()
        for target in targets
        if module.startswith("linter.checks.shared.")
        and target.startswith("linter.checks.")
        and not target.startswith("linter.checks.shared")
    ]
    assert climbing == []


def test_few_arrows_between_rooms():
    arrows = {(_room(m), _room(t)) for m, targets in _imports().items() for t in targets if _room(m) != _room(t)}
    assert len(arrows) <= MOST_ARROWS, sorted(arrows)


def test_no_circle():
    done: set[str] = set()

    def visit(module: str, path: tuple[str, ...]) -> None:
        assert module not in path, " -> ".join((*path[path.index(module) :], module))
        if module in done:
            return
        for target in sorted(_imports().get(module, ())):
            visit(target, (*path, module))
        done.add(module)

    for module in _modules():
        visit(module, ())


def test_long_modules_say_why():
    long = []
    for module, path in _modules().items():
        text = path.read_text(encoding="utf-8")
        head = ast.get_docstring(ast.parse(text)) or ""
        if module not in TO_DIVIDE and text.count("\n") > MOST_LINES and "One module because" not in head:
            long.append(f"{module}: {text.count(chr(10))} lines")
    assert long == []


_BRANCHES = (ast.If, ast.IfExp, ast.For, ast.While, ast.ExceptHandler, ast.Assert, ast.comprehension, ast.match_case)


def _complexity(function: ast.AST) -> int:
    """Ways through a function and those inside it: one, and one for each branch, loop, condition and boolean word."""
    return 1 + sum(
        isinstance(node, _BRANCHES)
        + (len(node.values) - 1 if isinstance(node, ast.BoolOp) else 0)
        + (len(node.ifs) if isinstance(node, ast.comprehension) else 0)
        for node in ast.walk(function)
    )


def test_no_function_is_too_complex():
    found = {
        f"{module}.{node.name}"
        for module, path in _modules().items()
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.FunctionDef) and _complexity(node) > MOST_COMPLEX
    }
    assert sorted(found - TO_SIMPLIFY) == []
