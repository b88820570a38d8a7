"""Freezes the rulebook in the making: ``python -m linter.rulebook.release``, the last step of a release.

``ruleset/released/VERSION.json`` then holds it whole, ``VERSION.golden.csv`` what it says of the golden tables. From
then on it never changes again. Run it in a checkout.
"""

import csv
import json
import subprocess
import sys
from collections.abc import Iterable, Mapping
from typing import Any

from linter.model.packaged import data_folder
from linter.rulebook.differences import changed_clauses
from linter.rulebook.load import CURRENT, before, changes, from_content, load, released_versions, stated_cases
from linter.rulebook.model import Rulebook, RulebookError, content_of


def archive_text(book: Rulebook, cases: Iterable[Mapping[str, Any]]) -> str:
    """A rulebook and its worked cases as one JSON file, a line for each clause, source and case.

    The rulebook stands in its own order. Its hash is taken over the same content with sorted keys
    (:func:`linter.rulebook.model.canonical_json`); the cases are no part of it.
    """
    parts = []
    for key, value in content_of(book).items():
        if isinstance(value, dict):
            lines = ",\n".join(f"{_json(name)}: {_json(entry)}" for name, entry in value.items())
            parts.append(f"{_json(key)}: {{\n{lines}\n}}")
        else:
            parts.append(f"{_json(key)}: {_json(value)}")
    rows = ",\n".join(_json(case) for case in cases)
    whole = ",\n".join(parts)
    return f'{{"sha256": {_json(book.sha256)},\n"rulebook": {{\n{whole}\n}},\n"cases": [\n{rows}\n]}}\n'


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)


def unexplained(old: Rulebook | None, new: Rulebook, reasons: Mapping[str, str]) -> tuple[list[str], list[str]]:
    """Clauses that differ without a reason, and reasons for clauses that do not differ."""
    different = changed_clauses(old, new) if old else []
    return [name for name in different if name not in reasons], [name for name in reasons if name not in different]


def without_verdict(book: Rulebook) -> list[str]:
    """Clauses that the golden table of the rulebook in the making neither meets nor finds fault with."""
    path = data_folder("ruleset") / CURRENT / "golden.csv"
    if not path.is_file():
        return list(book.clauses)
    with path.open(encoding="utf-8", newline="") as stream:
        judged = {row["clause"] for row in csv.DictReader(stream) if row["outcome"] in ("met", "finding")}
    return [name for name in book.clauses if name not in judged]


def freeze() -> str:
    """Release the rulebook in the making under its version.

    Returns
    -------
    str
        Its hash.

    Raises
    ------
    RulebookError
        If it cannot be loaded, if its version is released with another content or is not the newest, if a difference to
        the release before has no reason (or a reason no difference), or if a clause has no verdict in its golden table.
    """
    book = load(CURRENT)
    versions = released_versions()
    if book.version in versions:
        if load(book.version).sha256 != book.sha256:
            raise RulebookError(
                "rulebook.toml", None, f"{book.version} is released with other content; give this one a new version"
            )
        return book.sha256
    last = before(book.version)
    if versions and (last is None or last.version != versions[-1]):
        raise RulebookError("rulebook.toml", None, f"{book.version} is not newer than {versions[-1]}")
    bare, stale = unexplained(last, book, changes())
    if bare:
        raise RulebookError("changes.toml", None, f"say why these clauses differ: {', '.join(bare)}")
    if stale:
        raise RulebookError("changes.toml", None, f"these clauses do not differ: {', '.join(stale)}")
    silent = without_verdict(book)
    if silent:
        raise RulebookError("golden.csv", None, f"no verdict in the golden tables (tests/golden): {', '.join(silent)}")
    text = archive_text(book, stated_cases(CURRENT))
    if from_content(json.loads(text)["rulebook"]).sha256 != book.sha256:
        raise RulebookError(f"{book.version}.json", None, "the file does not give back the rulebook")
    released = data_folder("ruleset") / "released"
    golden = (data_folder("ruleset") / CURRENT / "golden.csv").read_bytes()
    (released / f"{book.version}.golden.csv").write_bytes(golden)
    (released / f"{book.version}.json").write_text(text, encoding="utf-8", newline="\n")
    return book.sha256


if __name__ == "__main__":
    if subprocess.run([sys.executable, "-m", "linter.refresh", "--check"], check=False).returncode:
        sys.exit("run `python -m linter.refresh` first")
    try:
        print(f"released: {load(CURRENT).version} {freeze()}")
    except RulebookError as error:
        sys.exit(str(error))
