"""Result files read back: checked against their schema, those of earlier programs as one of today."""

import json
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any

from linter.model.findings import FORMAT_VERSION
from linter.model.packaged import data_folder
from linter.model.visible import visible

LARGEST_FILE = 500_000_000
#: What keys stand for that an assessment may leave out.
NOTHING: Mapping[str, Any] = {"missing": (), "assumed": (), "places": (), "concession": None}


class ComparisonError(ValueError):
    """A result file that cannot be compared; the text names the file, what was read and what is expected."""


@cache
def _validator() -> Any:
    from jsonschema import Draft202012Validator

    path = data_folder("schemas") / "result.schema.json"
    return Draft202012Validator(json.loads(path.read_text(encoding="utf-8")))


def _no_constant(text: str) -> float:
    raise ValueError(f"{text} is not a number")


def read_result(path: Path) -> dict[str, Any]:
    """The content of a result file.

    Raises
    ------
    ComparisonError
        If it cannot be read or is no result file.
    """
    try:
        if path.stat().st_size > LARGEST_FILE:
            raise ComparisonError(f"{path}: is larger than {LARGEST_FILE} bytes; expected a result file")
        content = json.loads(path.read_text(encoding="utf-8"), parse_constant=_no_constant)
    except OSError as error:
        raise ComparisonError(f"{path}: cannot be opened ({error.strerror})") from None
    except (ValueError, RecursionError) as error:
        if isinstance(error, ComparisonError):
            raise
        raise ComparisonError(f"{path}: cannot be read as JSON ({error}); expected a result file") from None
    wanted = "a result file (NAME.result.json) of ringseat review"
    if not isinstance(content, dict) or content.get("format") != "ringseat-result":
        raise ComparisonError(f"{path}: is JSON of another kind; expected {wanted}")
    if content.get("format_version") not in range(1, FORMAT_VERSION + 1):
        read = visible(str(content.get("format_version")))
        raise ComparisonError(f"{path}: format_version is {read}; this program compares 1 to {FORMAT_VERSION}")
    if content["format_version"] == 1:
        content = _from_1(content)
    if "clauses" not in content:
        content = _without_cells(content)
    fault = next(iter(_validator().iter_errors(content)), None)
    if fault is not None:
        where = "/".join(map(str, fault.absolute_path)) or "top level"
        raise ComparisonError(f"{path}: {where}: {visible(fault.message)}; expected {wanted}")
    return content


def _from_1(content: dict[str, Any]) -> dict[str, Any]:
    """A result of format version 1 as one of version 2; it knew no undecided gate and no cause of a finding."""
    added = {"complete": False, "undecided_passes": False, "undecided": [], "assumed": 0, "loosened": 0}
    summary = content.get("summary")
    whole = {**summary, **added} if isinstance(summary, dict) else summary
    entries = content.get("assessments")
    if isinstance(entries, list):
        entries = [{"follows": None, **entry} if isinstance(entry, dict) else entry for entry in entries]
    return {**content, "format_version": 2, "needed": [], "summary": whole, "assessments": entries}


def _without_cells(content: dict[str, Any]) -> dict[str, Any]:
    """A result without parameters of clauses and cells of machines and stations, with both as far as told."""
    entries: Any = content.get("assessments")
    machines: Any
    stations: Any
    machines, stations = content.get("machines"), content.get("stations")
    if not all(
        isinstance(part, list) and all(isinstance(e, dict) for e in part) for part in (entries, machines, stations)
    ):
        return content
    used: dict[str, set[str]] = {}
    for entry in entries:
        places = entry.get("places")
        names = {p.get("parameter") for p in places if isinstance(p, dict)} if isinstance(places, list) else set()
        used.setdefault(str(entry.get("clause")), set()).update(name for name in names if isinstance(name, str))
    clauses = [
        {"clause": name, "title": "", "sources": [], "parameters": sorted(names)}
        for name, names in sorted(used.items())
    ]
    return {
        **content,
        "clauses": clauses,
        "machines": [{**machine, "places": []} for machine in machines],
        "stations": [{**station, "places": []} for station in stations],
    }


def _records(part: Any) -> bool:
    return isinstance(part, list) and all(isinstance(entry, dict) for entry in part)
