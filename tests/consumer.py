"""How a program of a firm uses the public door, with the types that it relies on; mypy reads it with the program."""

from pathlib import Path
from typing import assert_type

import pandas as pd

import linter


def gate_of(table: Path, reports: Path) -> tuple[str, list[str]]:
    """Review one table, keep its reports, and say what to change."""
    try:
        review = linter.review_table(table, rulebook="2026.3", keep=["speed_max"])
    except (linter.InputError, linter.RulebookError) as error:
        return "unread", [str(error)]
    assert_type(review, linter.Review)
    assert_type(review.verdict, str)
    frames: list[pd.DataFrame] = [review.findings, review.assessments, review.plan]
    written = review.write(reports, kinds=("json", "sarif"))
    assert_type(written, tuple[Path, ...])
    assert all(path.is_file() for path in written) and len(frames) == 3
    return review.verdict, [f"{line.cell}: {line.before} -> {line.after}" for line in review.plan.itertuples()]


def many(frame: pd.DataFrame) -> int:
    """Judge a frame of stations without reports."""
    stations = linter.Stations.from_frame(frame)
    assert_type(stations, linter.Stations)
    return len(linter.assess(stations, linter.load_rulebook("2026.3")).table()["clause"])
