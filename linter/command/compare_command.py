"""One call of ``ringseat compare``: two results or tables, what differs, and whether something new closes a gate."""

import json
import tempfile
from pathlib import Path
from typing import Any

from linter.command.console import complain, say
from linter.command.one_table import one_table
from linter.command.review_command import CLOSED, NOT_DONE, OPEN, UNDECIDED, Options
from linter.model.comparison import Comparison
from linter.model.findings import at_least
from linter.report.comparison_writers import comparison_html, comparison_json, comparison_text
from linter.report.result_json import result_pieces
from linter.report.writing import write_file
from linter.review.compare import compare_files
from linter.review.result_files import ComparisonError

_HEAD = 4_000_000


def compare_two(old: Path, new: Path, out: Path | None, options: Options, gate_new: bool) -> int:
    """Compare two result files or tables, write the comparison, and say it.

    Parameters
    ----------
    old, new : Path
        Result files of ``ringseat review``, or tables, which are reviewed first.
    out : Path or None
        Folder for the comparison as HTML and JSON.
    options : Options
        How a table is read and reviewed.
    gate_new : bool
        Whether what is new may close a gate.

    Returns
    -------
    int
        0; where ``gate_new`` 1 if a finding at or above the gate of the new side is new or more severe than it was, 3
        if something that was assessed no longer is; 2 if one of the two cannot be compared.
    """
    with tempfile.TemporaryDirectory() as folder:
        try:
            sides = [_result(path, Path(folder) / word, options) for path, word in ((old, "old"), (new, "new"))]
            found = compare_files(*sides)
        except (ComparisonError, OSError) as error:
            complain(str(error))
            return NOT_DONE
    for line in comparison_text(found).splitlines():
        say(line)
    if out is not None:
        write_file(out / "comparison.html", comparison_html(found).encode(), inputs=(old, new))
        write_file(out / "comparison.json", comparison_json(found).encode(), inputs=(old, new))
        say(f"reports: {out}")
    return status_of(found) if gate_new else OPEN


def _result(path: Path, folder: Path, options: Options) -> Path:
    """The path itself where it is a result file; that of the result of a table, under its own name."""
    if _is_result(path):
        return path
    written = folder / f"{path.name}.result.json"
    write_file(written, result_pieces(one_table(path, options).result))
    return written


def _is_result(path: Path) -> bool:
    """Whether a file says that it is a result, or is nothing that can be read as JSON under that name."""
    if path.name.endswith(".result.json"):
        return True
    if path.suffix.lower() != ".json" or not path.is_file() or path.stat().st_size > _HEAD:
        return False
    try:
        content: Any = json.loads(path.read_text(encoding="utf-8-sig"))
    except (ValueError, RecursionError):
        return False
    return isinstance(content, dict) and content.get("format") == "ringseat-result"


def status_of(comparison: Comparison) -> int:
    """Exit status of what is new: closed, undecided or open."""
    status = OPEN
    for difference in comparison.differences:
        now, was = difference.new, difference.old
        if now is None:
            continue
        worse = was is None or was.outcome != "finding" or not at_least(was.severity, now.severity or "remark")
        if now.outcome == "finding" and at_least(now.severity, comparison.new.gate_severity) and worse:
            return CLOSED
        if difference.kind == "newly not assessed":
            status = UNDECIDED
    return status
