"""Loads a rulebook: a release by its version, the one in the making, or a company's folder.

``ruleset/released/`` holds one file a release, ``ruleset/current/`` the next release as plain files. A company's layer
is a folder that states ``extends`` and only what differs. The program holds no limit of its own.
"""

import json
import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any

from attrs import evolve

from linter.model.findings import Layer, Loosened
from linter.model.packaged import data_folder
from linter.rulebook.defaults import default_from
from linter.rulebook.model import Chapter, Clause, Limit, Rulebook, RulebookError, Source, Step, Table

#: Name of the rulebook in the making.
CURRENT = "current"


def released_versions() -> list[str]:
    """Versions that are released, oldest first."""
    names = (path.stem for path in (data_folder("ruleset") / "released").glob("*.json"))
    return sorted((name for name in names if re.fullmatch(r"\d+(\.\d+)*", name)), key=version_key)


def version_key(version: str) -> tuple[int, ...]:
    """What versions are put in order by."""
    return tuple(int(part) for part in version.split("."))


def load(name_or_path: str | None = None) -> Rulebook:
    """Load a rulebook with everything it extends.

    Parameters
    ----------
    name_or_path : str, optional
        A released version (``"2026.1"``), ``"current"`` for the next one as it stands, or the path of a rulebook folder
        or of its ``rulebook.toml``; the newest released version where absent.

    Returns
    -------
    Rulebook
        The same object for the same name.

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
    if name_or_path == CURRENT:
        return _current()
    path = Path(name_or_path)
    folder = path.parent if path.is_file() else path
    if not (folder / "rulebook.toml").is_file():
        near = [version for version in versions if name_or_path.startswith(version) or version.startswith(name_or_path)]
        meant = f"; did you mean {' or '.join(near)}?" if near and name_or_path else ""
        known = ", ".join(versions)
        raise RulebookError(
            name_or_path, None, f"neither a released version ({known}) nor a folder with a rulebook.toml{meant}"
        )
    return _load_folder(folder.resolve(), seen=())


# --- releases ---------------------------------------------------------------------------------------------------------


@cache
def archive(version: str) -> dict[str, Any]:
    """The file of a release as it is stored: its rulebook and the worked cases it was released with.

    Raises
    ------
    RulebookError
        If it cannot be read.
    """
    path = data_folder("ruleset") / "released" / f"{version}.json"
    try:
        found: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError, ValueError) as error:
        raise RulebookError(path.name, None, f"cannot be read as a released rulebook: {error}") from None
    return found


@cache
def _released(version: str) -> Rulebook:
    try:
        return from_content(archive(version)["rulebook"])
    except (KeyError, TypeError, AttributeError) as error:
        raise RulebookError(f"{version}.json", None, f"is no released rulebook: {error!r}") from None


def from_content(content: Mapping[str, Any]) -> Rulebook:
    """A rulebook from its plain data; undoes :func:`linter.rulebook.model.content_of`."""
    return Rulebook(
        name=content["name"],
        version=content["version"],
        title=content["title"],
        chapters=tuple(Chapter(**chapter) for chapter in content["chapters"]),
        clauses={name: _clause(raw) for name, raw in content["clauses"].items()},
        sources={key: Source(**{"edition": "", "note": "", **raw}) for key, raw in content.get("sources", {}).items()},
        layers=tuple(Layer(**layer) for layer in content["layers"]),
        loosened=tuple(Loosened(**entry) for entry in content.get("loosened", ())),
        reasons=content.get("reasons", {}),
        reason=content.get("reason", ""),
        concession_factor=content.get("concession_factor"),
        defaults=tuple(default_from(raw) for raw in content.get("defaults", ())),
        digits=content.get("digits"),
    )


def _clause(raw: Mapping[str, Any]) -> Clause:
    return Clause(
        **{
            "picture": "",
            **raw,
            "needs": tuple(raw.get("needs", ())),
            "uses": tuple(raw.get("uses", ())),
            "limits": {key: Limit(**{"note": "", **limit}) for key, limit in raw.get("limits", {}).items()},
            "tables": {key: _table(table) for key, table in raw.get("tables", {}).items()},
            "steps": tuple(Step(**step) for step in raw["steps"]),
            "sources": tuple(raw.get("sources", ())),
            "must_when": tuple(raw.get("must_when", ())),
            "follows": tuple(raw.get("follows", ())),
            "repairs": tuple(raw.get("repairs", ())),
        }
    )


def _table(raw: Mapping[str, Any]) -> Table:
    return Table(raw["file"], tuple(raw["columns"]), tuple(map(tuple, raw["rows"])), raw.get("looser", {}))


def stated_cases(name: str) -> tuple[dict[str, Any], ...]:
    """The worked cases of a release, or of the rulebook in the making (``"current"``), as they are written."""
    if name != CURRENT:
        return tuple(archive(name).get("cases", ()))
    files = sorted((data_folder("ruleset") / CURRENT / "cases").glob("*.toml"))
    return tuple(case for path in files for case in _toml(path)["cases"])


# --- folders ----------------------------------------------------------------------------------------------------------


def changes() -> dict[str, str]:
    """The reason for each difference between the rulebook in the making and the release before it, by clause."""
    found = _toml(data_folder("ruleset") / CURRENT / "changes.toml")
    for name, reason in found.items():
        if not isinstance(reason, str) or not reason.strip():
            raise RulebookError("changes.toml", name, f"a reason in words is expected; read was {reason!r}")
    return found


def before(version: str) -> Rulebook | None:
    """The newest release that is older than a version."""
    older = [name for name in released_versions() if version_key(name) < version_key(version)]
    return _released(older[-1]) if older else None


@cache
def _current() -> Rulebook:
    book = _load_folder((data_folder("ruleset") / CURRENT).resolve(), seen=())
    last = before(book.version)
    return evolve(book, reasons={**(last.reasons if last else {}), **changes()})


def _toml(path: Path) -> dict[str, Any]:
    import tomllib  # a release is JSON

    try:
        return tomllib.loads(path.read_text(encoding="utf-8-sig"))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise RulebookError(path.name, None, f"cannot be read as TOML: {error}") from None
    except RecursionError:
        raise RulebookError(path.name, None, "cannot be read as TOML: nested too deeply") from None


def _load_folder(folder: Path, seen: tuple[Path, ...]) -> Rulebook:
    # Only a folder needs what builds and checks one: a review under a release does not pay for it.
    from linter.rulebook.layers import Builder
    from linter.rulebook.schema import validate, validate_clauses
    from linter.rulebook.trial import try_clauses

    if folder in seen:
        raise RulebookError("rulebook.toml", None, f"extends itself by way of {folder.name}")
    head = _toml(folder / "rulebook.toml")
    sources = _toml(folder / "sources.toml") if (folder / "sources.toml").is_file() else {}
    files = {path.name: _toml(path) for path in sorted((folder / "clauses").glob("*.toml"))}
    validate("rulebook.toml", "rulebook", head)
    validate("sources.toml", "sources", sources)
    base = _base(str(head["extends"]), folder, (*seen, folder)) if "extends" in head else None
    for name, found in files.items():
        validate_clauses(name, found, base)
    builder = Builder(folder, head, base)
    book = builder.build(sources, files)
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
