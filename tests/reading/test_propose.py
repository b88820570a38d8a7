import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.reading.mapping import parse_mapping
from linter.reading.names import Match, Names
from linter.reading.propose import WRITTEN, Candidate, Proposal, proposal_toml, propose

NAMES = Names.built_in()


def best(word: str) -> Candidate:
    (proposal,) = propose([word], NAMES)
    return proposal.candidates[0]


@pytest.mark.parametrize(
    ("word", "parameter"),
    [
        ("Brng bore dia [mm]", "bore_diameter"), ("Housing bor", "housing_seat_diameter"),
        ("Shft seat diam", "shaft_seat_diameter"),
        ("Shaft shldr dia", "shaft_shoulder_diameter"), ("Wellensizt", "shaft_seat_diameter"),
        ("Pre-load force [N]", "preload_force"),
        ("内圈挡边", "inner_ring_shoulder_diameter"), ("Rundlauf der Welle", "shaft_seat_runout"),
        ("Hsg material", "housing_material"),
    ],
)  # fmt: skip
def test_the_nearest_parameter_comes_first(word: str, parameter: str) -> None:
    candidate = best(word)
    assert candidate.parameter == parameter
    assert candidate.reason and 0 < candidate.confidence <= 1


def test_what_is_understood_is_not_proposed() -> None:
    assert propose(["bore_diameter", "Bore [mm]", "Value", "Wert", "", "7.5", "Kommentar"], NAMES) == []


def test_a_doubtful_word_is_never_in_force() -> None:
    (proposal,) = propose(["Speed"], NAMES)
    assert len(proposal.candidates) > 1
    assert proposal.candidates[0].confidence < WRITTEN
    assert tomllib.loads(proposal_toml([proposal]))["names"] == {}


def test_a_unit_that_does_not_fit_counts_against_a_candidate() -> None:
    assert best("Shft seat diam [mm]").confidence > max(
        (c.confidence for p in propose(["Shft seat diam [kg]"], NAMES) for c in p.candidates), default=0.0
    )


def test_aspect_station_and_unit_are_carried_into_the_mapping() -> None:
    text = proposal_toml(propose(["Shft seat diam A upper [µm]"], NAMES), "table.csv")
    names = Names(parse_mapping(tomllib.loads(text), "proposal"))
    assert names.find("Shft seat diam A upper [µm]") == Match("shaft_seat_diameter", "A", "µm", "upper", mapped=True)


def test_every_candidate_stands_in_the_text() -> None:
    proposals = propose(["Rundlauf Welle", "zzqq", 'we"ird\n\\name'], NAMES)
    text = proposal_toml(proposals)
    for proposal in proposals:
        for candidate in proposal.candidates:
            assert candidate.parameter in text
    assert "nothing comes near" in text
    assert tomllib.loads(text) == {"names": {}}


@given(st.lists(st.text(max_size=30), max_size=5), st.floats(0, 1))
def test_the_text_is_always_a_mapping_that_reads_back(words: list[str], confidence: float) -> None:
    proposals = [
        Proposal(word, (Candidate("bore_diameter", 0.95, f"like {word}"),)) for word in dict.fromkeys(words) if word
    ]
    parse_mapping(tomllib.loads(proposal_toml(proposals, "".join(words), confidence)), "proposal")
    parse_mapping(tomllib.loads(proposal_toml(propose(words, NAMES), "table", confidence)), "proposal")
