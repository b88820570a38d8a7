"""Tables in every language that is built in, in both orientations, read to the same canonical values."""

from pathlib import Path

import numpy as np
import pytest

from linter.model.stations import Stations
from linter.model.vocabulary import Parameter, vocabulary
from linter.reading import read_table
from linter.reading.cells.choices import choice_texts
from linter.reading.words.dictionary import heading_words
from linter.report.blank_table import example

LANGUAGES = ("en", "de", "fr", "es", "it", "ja", "zh", "ru")
ENTRIES = [entry for entry in vocabulary().values() if entry.name not in ("machine", "station")]


def words(target: str, language: str) -> list[str]:
    found = [word for name, word, spoken in heading_words() if (name, spoken) == (target, language)]
    assert found, f"{target} has no word in {language}: add a row to linter/reading/words/data/headings.csv"
    return found


def texts(entry: Parameter) -> list[str]:
    """Every way to write the example of a parameter: for a choice all its synonyms."""
    shown = str(example(entry))
    if entry.kind != "choice":
        return [shown]
    found = [text for text, meant in choice_texts(entry.name).items() if meant == (shown,)]
    assert found, f"{entry.name}: the example {shown!r} in schemas/vocabulary.csv is none of its choices"
    return found


def check(stations: Stations) -> None:
    assert [problem.message for problem in stations.problems] == []
    assert stations.machines == ("RB",) and list(stations.text("station")) == ["A", "B"]
    for entry in ENTRIES:
        assert stations.known(entry.name).all(), entry.name
        shown = example(entry)
        if entry.kind == "number":
            assert np.array_equal(stations.number(entry.name), [shown, shown]), entry.name
        elif entry.kind == "choice":
            assert list(stations.choice(entry.name).texts()) == [shown, shown]
        elif entry.kind == "text":
            assert list(stations.text(entry.name)) == [shown, shown]


@pytest.mark.parametrize("comma", [False, True])
@pytest.mark.parametrize("turn", [0, 1])
@pytest.mark.parametrize("language", LANGUAGES)
def test_one_row_per_parameter(tmp_path: Path, language: str, turn: int, comma: bool) -> None:
    head = [words(group, language)[0] for group in ("NAME", "VALUE", "UNIT", "STATION", "NOTE")]
    lines = [";".join(head), f"{words('machine', language)[0]};RB;;;"]
    for station in "AB":
        for entry in ENTRIES:
            if entry.level == "machine" and station == "B":
                continue
            spelled, shown = words(entry.name, language), texts(entry)
            text = shown[(turn + len(lines)) % len(shown)]
            if comma and entry.kind in ("number", "toleranced"):
                text = text.replace(".", ",")
            unit = "" if entry.unit == "1" else entry.unit
            at = station if entry.level == "station" else ""
            lines.append(";".join([spelled[turn % len(spelled)], text, unit, at, ""]))
    path = tmp_path / "long.csv"
    path.write_text("\n".join(lines), encoding="utf-8")
    check(read_table(path).stations)


@pytest.mark.parametrize("turn", [0, 1])
@pytest.mark.parametrize("language", LANGUAGES)
def test_one_row_per_station(tmp_path: Path, language: str, turn: int) -> None:
    head = [words("machine", language)[turn % 2], words("station", language)[0]]
    for entry in ENTRIES:
        spelled = words(entry.name, language)
        unit = f" [{entry.unit}]" if entry.unit not in ("", "1") else ""
        head.append(spelled[(turn + 1) % len(spelled)] + unit)
    rows = ["\t".join(head)]
    for number, station in enumerate("AB"):
        cells = [texts(entry)[(turn + number) % len(texts(entry))] for entry in ENTRIES]
        rows.append("\t".join(["RB", station, *cells]))
    path = tmp_path / "wide.csv"
    path.write_text("\r\n".join(rows), encoding="utf-8-sig")
    check(read_table(path).stations)
