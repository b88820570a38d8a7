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


def uncommented(proposal: str, *starts: str) -> dict:
    """The mapping with the lines that begin so in force."""
    lines = [line[2:] if line.startswith(tuple(f"# {s}" for s in starts)) else line for line in proposal.splitlines()]
    return tomllib.loads("\n".join(lines))


def test_what_accepting_would_change_stands_with_the_values_now_and_then(tmp_path):
    path = table(tmp_path, "station,Shatf dia [mm],Bore,OD\nA,8 h5,8,22\n")
    text = proposal_text(path, NAMES, "t.csv")
    assert (
        "Accepted as it stands: 1 value more than are read now (shaft_seat_diameter at B2: not read -> 8 mm h5)" in text
    )
    assert "bore_diameter at C2: not read -> 203.2 mm" in text
    then = read_table(path, Names(parse_mapping(tomllib.loads(text), "t.toml"))).stations
    assert then.size("shaft_seat_diameter").nominal.tolist() == [8]


def test_deviations_under_a_heading_of_limits_are_proposed_with_their_aspect(tmp_path):
    path = table(tmp_path, "station,Shaft seat max [mm],Shaft seat min [mm],Shaft seat [mm]\nA,0.002,-0.003,8\n")
    text = proposal_text(path, NAMES, "t.csv")
    mapping = parse_mapping(uncommented(text, '"Shaft seat max', '"Shaft seat min'), "t.toml")
    assert mapping.names["Shaft seat max [mm]"].aspect == "upper"
    then = read_table(path, Names(mapping)).stations
    assert then.problems == ()
    assert then.size("shaft_seat_diameter").upper.tolist() == pytest.approx([0.002])
    assert "0.002 mm (max) -> 0.002 mm (upper)" in text


def test_limits_under_a_heading_of_deviations_need_no_proposal(tmp_path):
    path = table(tmp_path, "station,Shaft seat upper [mm],Shaft seat lower [mm],Shaft seat [mm]\nA,7.9985,7.9925,8\n")
    stations = read_table(path, NAMES).stations
    assert [problem.code for problem in stations.problems] == ["limits-of-size"]
    assert stations.size("shaft_seat_diameter").upper.tolist() == pytest.approx([-0.0015])


def test_a_file_whose_encoding_is_open_gets_the_encodings_it_may_have_with_what_each_reads(tmp_path):
    path = tmp_path / "t.csv"
    path.write_bytes(
        "Lagerstelle;Lagerbezeichnung;Wellensitz [mm]\nŠkoda;6203;17 k5\nČep;6202;15 k5\n".encode("cp1250")
    )
    text = proposal_text(path, NAMES, "t.csv")
    assert "The table is not read yet" in text
    assert "not read -> Èep" in text
    assert "not read -> Čep" in text
    mapping = parse_mapping(uncommented(text, 'encoding = "cp1250"'), "t.toml")
    assert read_table(path, Names(mapping)).stations.text("station").tolist() == ["Škoda", "Čep"]


def test_a_table_whose_positions_are_read_is_proposed_no_others(tmp_path):
    path = table(tmp_path, "Pos.,Bearing,Lager-,Bore [mm]\nA,6203,130,17\nB,6202,155,15\n")
    text = proposal_text(path, NAMES, "t.csv")
    assert tomllib.loads(text).get("names", {}) == {}


def test_a_name_that_the_table_itself_tells_is_not_proposed(tmp_path):
    """``Speed`` is read by its figures; a mapping of it would only take away what the table says."""
    path = table(tmp_path, "Position,Bearing,Speed\nDE,6205,3000\nNDE,6204,3000\n")
    assert '"Speed"' not in proposal_text(path, NAMES, "t.csv")
