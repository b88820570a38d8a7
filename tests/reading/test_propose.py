import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.reading import read_names, read_table
from linter.reading.words.mapping import parse_mapping
from linter.reading.words.names import Match, Names
from linter.reading.words.propose import WRITTEN, Candidate, Proposal, proposal_toml, propose

NAMES = Names.built_in()


def best(word: str) -> Candidate:
    (proposal,) = propose([word], NAMES)
    return proposal.candidates[0]


@pytest.mark.parametrize(
    ("word", "parameter"),
    [
        ("Baering bore dia [mm]", "bore_diameter"), ("Housing bor", "housing_seat_diameter"),
        ("Shatf seat diam", "shaft_seat_diameter"),
        ("Shaft sholdr dia", "shaft_shoulder_diameter"), ("Wellensizt", "shaft_seat_diameter"),
        ("Prelaod force [N]", "preload_force"),
        ("内圈挡边沿", "inner_ring_shoulder_diameter"),
    ],
)  # fmt: skip
def test_the_nearest_parameter_comes_first(word: str, parameter: str) -> None:
    candidate = best(word)
    assert candidate.parameter == parameter
    assert candidate.reason and 0 < candidate.confidence <= 1


def test_what_is_understood_is_not_proposed() -> None:
    assert propose(["bore_diameter", "Bore [mm]", "Value", "Wert", "", "7.5", "Kommentar"], NAMES) == []


def test_a_doubtful_word_is_never_in_force() -> None:
    (proposal,) = propose(["Temperature"], NAMES)
    assert len(proposal.candidates) > 1
    assert proposal.candidates[0].confidence < WRITTEN
    assert tomllib.loads(proposal_toml([proposal]))["names"] == {}


@pytest.mark.parametrize("word", ["Rotor shoulder Ø", "aft_seat_dia_max", "lager_B", "Rotor seat diameter"])
def test_a_name_with_a_word_of_its_own_is_never_in_force(word: str) -> None:
    """One word of two told otherwise is another part, however alike the whole looks."""
    assert all(candidate.confidence < WRITTEN for p in propose([word], NAMES) for candidate in p.candidates)


def test_a_unit_that_does_not_fit_counts_against_a_candidate() -> None:
    assert best("Shatf seat diam [mm]").confidence > max(
        (c.confidence for p in propose(["Shatf seat diam [kg]"], NAMES) for c in p.candidates), default=0.0
    )


def test_aspect_station_and_unit_are_carried_into_the_mapping() -> None:
    text = proposal_toml(propose(["Shatf seat diam A upper [µm]"], NAMES), "table.csv")
    names = Names(parse_mapping(tomllib.loads(text), "proposal"))
    assert names.find("Shatf seat diam A upper [µm]") == Match("shaft_seat_diameter", "A", "µm", "upper", mapped=True)


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


ODD = {
    "german.csv": (
        "Baugrp.;Lagerst.;Bohr.-Ø d1 [mm];Wellensitz-Ø;Geh.bohrg.;max Drehz. [1/min];rad. Last [N];Schmierg.;Gew.\n"
        "Pumpe;A;6;6 k5;19 H6;9000;25;Fett;1\nPumpe;B;6;6 k5;19 H6;9000;25;Fett;1\n",
        {"Baugrp.": "machine", "Lagerst.": "station", "Geh.bohrg.": "housing_seat_diameter",
         "Schmierg.": "lubrication"},
        {"Bohr.-Ø d1 [mm]": "bore_diameter"},
        ("A", "B"),
    ),
    "english.csv": (
        "Rotor,Brng,Shatf dia (in),Hsg bor dia (in),Brg OD (in),brg witdh (in),Spd RPM,Radal load lbf,Prelod N\n"
        "R1,DE,0.2362 k5,0.748 H6,0.748,.236,20000,5,12\nR1,NDE,0.2362 k5,0.748 H6,0.748,.236,20000,5,12\n",
        {"Brng": "station", "Shatf dia (in)": "shaft_seat_diameter", "Hsg bor dia (in)": "housing_seat_diameter",
         "brg witdh (in)": "ring_width", "Radal load lbf": "radial_load"},
        {"Prelod N": "preload_force"},
        ("DE", "NDE"),
    ),
    "french.csv": (
        "Nom du paramètre;Valeur;Unité;Observation\nDiam. portée roult. avant;8 k5;mm;\n"
        "Alés. logemt avant;22 H6;mm;\nVitese de rotation maxi;18000;tr/min;\nGraisse;haute vitesse;;\n",
        {"Alés. logemt avant": "housing_seat_diameter", "Vitese de rotation maxi": "speed_max"},
        {"Diam. portée roult. avant": "shaft_seat_diameter", "Graisse": "lubrication"},
        ("avant",),
    ),
    "japanese.csv": (
        "設備,軸受位置の名,軸のはめあい部直径(mm),ハウジングのはめあい部直径(mm),最高回転速度[min-1],予圧荷重量[N],潤滑法式\n"
        "主軸,前側,30 js5,55 H6,20000,150,グリース\n主軸,後側,30 js5,55 H6,20000,150,グリース\n",
        {"予圧荷重量[N]": "preload_force"},
        {},
        ("前側", "後側"),
    ),
    "case.json": (
        '{"machine": "M", "stations": [{"station": "A", "shatfSeat": "4 k5", "hsgSeat": "13 H6", "da": "6 mm",'
        ' "Da": "11 mm", "DA": 3, "lubr": "grease"}]}',
        {"shatfSeat": "shaft_seat_diameter"},
        {},
        ("A",),
    ),
}  # fmt: skip


@pytest.mark.parametrize("file", ODD)
def test_an_odd_table_gets_proposals_that_a_reader_accepts_and_nothing_is_applied_before(tmp_path, file):
    text, in_force, first, stations = ODD[file]
    path = tmp_path / file
    path.write_text(text, encoding="utf-8")
    words = [word.text for word in read_names(path, NAMES)]
    proposals = propose(words, NAMES)
    document = tomllib.loads(proposal_toml(proposals, file))
    written = {
        word: value["parameter"] if isinstance(value, dict) else value for word, value in document["names"].items()
    }
    assert written == in_force
    ranked = {proposal.word: proposal.candidates for proposal in proposals}
    for word, parameter in first.items():
        assert ranked[word][0].parameter == parameter
        assert ranked[word][0].confidence < WRITTEN
    for candidates in ranked.values():
        assert [each.confidence for each in candidates] == sorted((e.confidence for e in candidates), reverse=True)
        assert all(each.reason for each in candidates)
    assert all(NAMES.find(word) is None for word in in_force)
    mapping = tmp_path / "names.toml"
    mapping.write_text(proposal_toml(proposals, file), encoding="utf-8")
    reading = read_table(path, Names.load(mapping))
    assert tuple(reading.stations.text("station")) == stations
    for parameter in in_force.values():
        assert reading.stations.known(parameter).any(), parameter
    if file == "case.json":
        assert reading.stations.size("shaft_shoulder_diameter").nominal.tolist() == [6]
        assert reading.stations.size("housing_shoulder_diameter").nominal.tolist() == [11]
        assert ranked["DA"] == () and {u.name for u in reading.unused} == {"DA"}
