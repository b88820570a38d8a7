"""The rulebook: clauses and limits as data, in versions and layers.

A rulebook is a folder with ``rulebook.toml`` (name, version, chapters, what it extends), ``sources.toml`` (the
bibliography), ``clauses/*.toml`` and ``tables/*.csv``. A version or a company layer states ``extends`` and only what
differs. The program holds no limit of its own.
"""

import hashlib
import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

from linter.model.packaged import data_folder
from linter.rulebook.model import Rulebook, RulebookError, shipped


def released_versions() -> list[str]:
    """Versions that ship with the program, oldest first."""
    folders = (p for p in data_folder("ruleset").iterdir() if (p / "rulebook.toml").is_file())
    names = (p.name for p in folders if re.fullmatch(r"\d+(\.\d+)*", p.name))
    return sorted(names, key=lambda v: tuple(int(part) for part in v.split(".")))


def load(name_or_path: str | None = None) -> Rulebook:
    """Load a rulebook with everything it extends.

    Parameters
    ----------
    name_or_path : str, optional
        A released version (``"2026.1"``), or the path of a rulebook folder or of its ``rulebook.toml``; the newest
        released version where absent.

    Raises
    ------
    RulebookError
        If it is not there or cannot be used; the text names file, clause and reason.
    """
    versions = released_versions()
    if name_or_path is None:
        return _released(versions[-1])
    if name_or_path in versions:
        return _released(name_or_path)
    path = Path(name_or_path)
    folder = path.parent if path.is_file() else path
    if not (folder / "rulebook.toml").is_file():
        raise RulebookError(
            name_or_path, None, f"neither a released version ({', '.join(versions)}) nor a folder with a rulebook.toml"
        )
    return _load_folder(folder.resolve(), seen=())


@cache
def _released(version: str) -> Rulebook:
    return _load_folder((data_folder("ruleset") / version).resolve(), seen=())


def folder_hash(folder: Path) -> str:
    """SHA-256 over the names and bytes of every file of a rulebook folder, line ends normalised."""
    digest = hashlib.sha256()
    for path in sorted(p for p in folder.rglob("*") if p.is_file()):
        digest.update(path.relative_to(folder).as_posix().encode() + b"\0")
        digest.update(path.read_bytes().replace(b"\r\n", b"\n") + b"\0")
    return digest.hexdigest()


def recorded_hashes() -> dict[str, str]:
    """The recorded hash of each frozen version (``ruleset/released.toml``)."""
    path = data_folder("ruleset") / "released.toml"
    return {k: str(v) for k, v in _toml(path).get("sha256", {}).items()} if path.is_file() else {}


def _toml(path: Path) -> dict[str, Any]:
    try:
        return tomllib.loads(path.read_text(encoding="utf-8-sig"))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise RulebookError(path.name, None, f"cannot be read as TOML: {error}") from None


def _load_folder(folder: Path, seen: tuple[Path, ...]) -> Rulebook:
    from linter.rulebook.layers import Builder

    if folder in seen:
        raise RulebookError("rulebook.toml", None, f"extends itself by way of {folder.name}")
    head = _toml(folder / "rulebook.toml")
    sources = _toml(folder / "sources.toml") if (folder / "sources.toml").is_file() else {}
    files = {path.name: _toml(path) for path in sorted((folder / "clauses").glob("*.toml"))}
    frozen_here = shipped(folder) and recorded_hashes().get(folder.name) == folder_hash(folder)
    if not frozen_here:
        from linter.rulebook.schema import validate

        validate("rulebook.toml", "rulebook", head)
        validate("sources.toml", "sources", sources)
    base = _base(str(head["extends"]), folder, (*seen, folder)) if "extends" in head else None
    if not frozen_here:
        from linter.rulebook.schema import validate_clauses

        for name, found in files.items():
            validate_clauses(name, found, base)
    builder = Builder(folder, head, base)
    book = builder.build(sources, files)
    if not shipped(folder):
        from linter.rulebook.trial import try_clauses

        try_clauses(book, builder.file_of)
    return book


def _base(name: str, folder: Path, seen: tuple[Path, ...]) -> Rulebook:
    if name in released_versions():
        return _released(name)
    target = (folder / name).resolve()
    if not (target / "rulebook.toml").is_file():
        raise RulebookError(
            "rulebook.toml",
            None,
            f"extends {name!r}, which is neither a released version ({', '.join(released_versions())}) "
            f"nor a folder with a rulebook.toml, as seen from this file",
        )
    return _load_folder(target, seen)
