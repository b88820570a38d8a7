"""The proposal for one table: a mapping that is accepted as it stands, with what every word is taken for."""

import tomllib
from pathlib import Path

import pytest

from linter.reading import read_table
from linter.reading.proposal import proposal_text
from linter.reading.words.mapping import parse_mapping
from linter.reading.words.names import Names

NAMES = Names.built_in()


def table(folder: Path, text: str) -> Path:
    path = folder / "t.csv"
    path.write_text(text, encoding="utf-8")
    return path


def test_every_word_is_shown_with_what_it_is_taken_for_and_why(tmp_path):
    path = table(tmp_path, "Pos.,Bearing,d [mm],Shaft fit,ID,Qty\nA,6203,17,k5,1,2\nB,6203,17,k5,2,2\n")
    text = proposal_text(path, NAMES, "t.csv")
    for line in (
        "'Pos.': station (by its cells)",
        "'Bearing': bearing_designation (by its cells)",
        "'d [mm]': bore_diameter in mm (by its name)",
        "'Shaft fit': shaft_seat_diameter, tolerance (by its name)",
        "'ID': not used, the name is not recognised",
        "'Qty': not used, no parameter has this name",
    ):
        assert f"# {line}" in text.replace("#   ", "# ")


@pytest.mark.parametrize(
    ("text", "key", "values"),
    [
        ("station,Bore,OD\nA,8,22\nB,8,22\n", "default_unit", {"mm", "inch"}),
        ('station,Bore [mm],OD [mm]\nA,"8,001","22,002"\nB,"8,001","22,002"\n', "decimal", {".", ","}),
    ],
)
def test_what_the_file_leaves_open_is_answered_by_hand_only(tmp_path, text, key, values):
    path = table(tmp_path, text)
    proposal = proposal_text(path, NAMES, "t.csv")
    assert key not in tomllib.loads(proposal).get("file", {})
    offered = [line for line in proposal.splitlines() if line.startswith(f"# {key} = ")]
    assert {line.split('"')[1] for line in offered} == values
    for line in offered:
        answered = tomllib.loads(proposal.replace(line, line[2:]))
        reading = read_table(path, Names(parse_mapping(answered, "t.toml")))
        told = any(problem.kind == "unreadable" for problem in reading.stations.problems)
        assert reading.stations.known("bore_diameter").all() or told


def test_proposal_accepted_blindly_changes_no_value_that_is_read(tmp_path):
    path = table(tmp_path, "Pos.,Bearing,Shft dia [mm],Shaft fit,ID\nA,6203,17,k5,1\nB,6202,15,k5,2\n")
    before = read_table(path).stations
    mapping = parse_mapping(tomllib.loads(proposal_text(path, NAMES, "t.csv")), "t.toml")
    after = read_table(path, Names(mapping)).stations
    for name, column in before.numbers.items():
        assert after.number(name).tolist() == pytest.approx(column.tolist(), nan_ok=True)
    assert after.text("bearing_designation").tolist() == ["6203", "6202"]


def test_table_that_is_not_read_yet_gets_a_proposal_that_says_so(tmp_path):
    path = table(tmp_path, "Foo,Bar\n1,2\n3,4\n")
    assert "The table is not read yet" in proposal_text(path, NAMES, "t.csv")
    tomllib.loads(proposal_text(path, NAMES, "t.csv"))
