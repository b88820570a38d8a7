"""Company rulebooks: what they may change, what every report then says, and what is refused."""

import json
import re
from pathlib import Path

import pytest

from linter.model.stations import stations_from_rows
from linter.reading import read_table
from linter.report.handbook_text import clause_text, difference_text
from linter.report.html import html_text
from linter.report.result_json import result_text
from linter.review.assess import assess
from linter.review.cases import run_cases
from linter.review.records import review_reading
from linter.rulebook.load import load
from linter.rulebook.model import RulebookError

EXAMPLE = Path(__file__).parents[2] / "docs" / "company-rulebook"
TABLE = Path(__file__).parents[1] / "golden" / "seats.csv"


def _severity(book, clause, **values):
    review = assess(stations_from_rows([values]), book).reviews[clause]
    assert review.failure is None
    return review.clause.severity_of(float(review.result.measure[0]))


@pytest.fixture
def book():
    return load(str(EXAMPLE))


def test_the_example_lists_what_it_loosens_and_nothing_else(book):
    assert [(e.clause, e.layer, e.what) for e in book.loosened] == [
        ("speed.seal", "works-standard", "lip_speed_low: 10\u00a0m/s -> 12\u00a0m/s"),
        ("speed.maker-limit", "works-standard", "switched off"),
    ]
    assert all(e.reason for e in book.loosened)
    assert [(layer.name, layer.version) for layer in book.layers] == [("works-standard", "3"), ("ringseat", "2026.1")]


def test_tightening_counts_and_is_not_listed(book):
    fast = {
        "bore_diameter": 8, "outside_diameter": 22, "speed_max": 45000, "lubrication": "grease",
        "ball_material": "steel", "duty": "short-time",
    }  # fmt: skip
    assert _severity(load("2026.1"), "speed.factor", **fast) == "remark"
    assert _severity(book, "speed.factor", **fast) == "major"
    warm = {"cage": "phenolic", "operating_temperature": 115}
    assert _severity(load("2026.1"), "speed.cage-temperature", **warm) is None
    assert _severity(book, "speed.cage-temperature", **warm) == "minor"
    assert not {e.clause for e in book.loosened} & {"speed.factor", "speed.cage-temperature"}


def test_loosening_counts(book):
    lip = {"closure": "contact seal", "speed_max": 20000, "seal_lip_diameter": 11}
    assert _severity(load("2026.1"), "speed.seal", **lip) == "minor"
    assert _severity(book, "speed.seal", **lip) is None


def test_a_clause_of_its_own_with_its_own_words(book):
    assert "works.quiet-cage" not in load("2026.1").clauses
    rows = [{"bore_diameter": 8, "outside_diameter": 22, "speed_max": 15000, "cage": "pressed steel"}]
    assert _severity(book, "works.quiet-cage", **rows[0]) == "remark"
    assert _severity(book, "speed.cage", **rows[0]) is None
    assert [c.key for c in book.chapters] == [*(c.key for c in load("2026.1").chapters), "works"]
    assert "works.quiet-cage" in clause_text(book, "works.quiet-cage")


def test_result_file_and_report_say_it(book):
    result = review_reading(read_table(TABLE, shown_as=TABLE.name), book)
    stored = json.loads(result_text(result))["rulebook"]
    assert [e["clause"] for e in stored["loosened"]] == ["speed.seal", "speed.maker-limit"]
    assert stored["layers"][0] == {"name": "works-standard", "version": "3"}
    assert "speed.maker-limit" not in {a.clause for a in result.assessments}
    page = html_text(result, book)
    whole = re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", page))
    first = re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", page[: page.index('id="h-index"')]))
    assert "loosened" in first
    for wanted in (
        "works-standard 3 , on ringseat 2026.1",
        "lip_speed_low: 10\u00a0m/s -&gt; 12\u00a0m/s",
        "Lips on shafts ground to Ra 0.2 ran 500 h at 12 m/s without wear.",
        "switched off",
        "Limiting speeds are agreed with the maker case by case",
    ):
        assert re.sub(r"\s+", " ", wanted).replace(" ,", ",") in whole.replace(" ,", ","), wanted


def test_worked_cases_show_the_verdict_under_the_layer(book):
    under = {c.title: c.record.severity for c in run_cases(book, "speed.seal")}
    assert under["608 size at 20 000 r/min, lip on the land"] == "minor"
    assert run_cases(book, "speed.maker-limit") == []


def test_comparing_a_layer_with_its_version(book):
    text = difference_text(load("2026.1"), book)
    for line in (
        "limit short_time_factor: 1.5 -> 1.2, tighter",
        "limit lip_speed_low: 10\u00a0m/s -> 12\u00a0m/s, looser",
        "is switched off: Limiting speeds are agreed",
        "table cage, phenolic: low 120 -> 110",
        "is new, up to minor: Does the cage stay below",
    ):
        assert line in text


# --- layers written for the test ------------------------------------------------------------------------------------


IN_HOUSE = '[IN-HOUSE]\ntitle = "In-house"\n'
FROM = 'source = "IN-HOUSE", provenance = "read"'


@pytest.fixture
def layer(tmp_path):
    def write(clauses: str, name: str = "one", extends: str = "2026.1", head: str = "", sources: str = IN_HOUSE):
        folder = tmp_path / name
        (folder / "clauses").mkdir(parents=True)
        text = f'name = "{name}"\nversion = "1"\ntitle = "Layer {name}"\nextends = "{extends}"\n{head}'
        (folder / "rulebook.toml").write_text(text, "utf-8")
        (folder / "clauses" / "all.toml").write_text(clauses, "utf-8")
        (folder / "sources.toml").write_text(sources, "utf-8")
        return folder

    return write


HYBRID = """
[[clauses]]
id = "speed.factor"
reason = "{reason}"
limits.hybrid_factor = {{ value = {value}, source = "common practice", provenance = "common practice" }}
"""
OFF = '[[clauses]]\nid = "speed.seal"\nreason = "No contact seals here."\noff = true\n'


def test_two_layers_on_top_of_each_other(layer):
    layer(HYBRID.format(reason="first", value=1.3), "under")
    top = load(str(layer(HYBRID.format(reason="second", value=1.2) + OFF, "top", extends="../under", sources="")))
    assert [entry.name for entry in top.layers] == ["top", "under", "ringseat"]
    assert top.clauses["speed.factor"].limits["hybrid_factor"].value == 1.2
    assert [(e.layer, e.what) for e in top.loosened] == [
        ("under", "hybrid_factor: 1.25 -> 1.3"),
        ("top", "switched off"),
    ]
    assert top.reasons["speed.factor"] == "second"


def test_a_layer_has_a_hash_of_its_own(layer):
    plain = load("2026.1").sha256
    one = load(str(layer(HYBRID.format(reason="a", value=1.2), "a"))).sha256
    other = load(str(layer(HYBRID.format(reason="a", value=1.21), "b"))).sha256
    reasoned = load(str(layer(HYBRID.format(reason="c", value=1.2), "c"))).sha256
    assert len({plain, one, other, reasoned}) == 4


LISTED = [
    ("a limit without direction",
     'id = "fit.load-rotation"\nlimits.fixed_up_to = { value = 0.4, FROM }',
     "fixed_up_to: 0.5 -> 0.4"),
    ("one of a list",
     'id = "speed.factor"\nlimits.load_factors = { value = [0.6, 0.85, 0.9], FROM }',
     "load_factors: 0.6, 0.8, 1 -> 0.6, 0.85, 0.9"),
    ("a value that ends in one",
     'id = "speed.factor"\nlimits.hybrid_factor = { value = 1.31, FROM }',
     "hybrid_factor: 1.25 -> 1.31"),
    ("a cell",
     'id = "speed.cage"\ntables.cage.rows = [{ where = { cage = "peek" }, set = { low = 700000, FROM } }]',
     "table cage, cage peek: low 650000 -> 700000"),
    ("a row added",
     'id = "speed.cage-temperature"\ntables.cage.add = [{ cage = "machined brass", low = 200, high = 220, FROM }]',
     "table cage, row added: cage machined brass, low 200, high 220"),
    ("milder steps",
     'id = "speed.seal"\nsteps = [{ above = 1.0, severity = "remark" }, { above = 2.0, severity = "major" }]',
     "severity steps made milder"),
    ("later steps",
     'id = "speed.cage-temperature"\n'
     'steps = [{ above = 1.2, severity = "minor" }, { above = 2.0, severity = "major" }]',
     "severity steps made milder"),
    ("not judged any more", 'id = "speed.seal"\ngate = "may"', "must be judged: yes -> no"),
    ("judged under conditions",
     'id = "speed.seal"\nmust_when = [{ closure = ["contact seal"], duty = "stated" }, { positions = 2 }]',
     "must be judged: yes -> closure contact seal and duty stated; or of a machine with 2 or more positions"),
    ("too mild to close the gate",
     'id = "fit.one-ring-free"\nsteps = [{ above = 0.1, severity = "minor" }]',
     "must be judged: yes -> no"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "what"), [c[1:] for c in LISTED], ids=[c[0] for c in LISTED])
def test_what_counts_as_loosening(layer, text, what):
    found = load(str(layer(f'[[clauses]]\nreason = "r"\n{text.replace("FROM", FROM)}\n'))).loosened
    assert what in [e.what for e in found]
    assert {e.what for e in found} <= {what, "severity steps made milder"}


NOT_LISTED = [
    'id = "speed.spin"\ngate = "must"',
    'id = "speed.spin"\nmust_when = [{ duty = "stated" }]',
    'id = "speed.seal"\ngate = "must"',
    'id = "table.read"\ngate = "must"',
    'id = "speed.factor"\nlimits.load_factors = { value = [0.5, 0.8, 0.9], source = "IN-HOUSE", provenance = "read" }',
    'id = "speed.seal"\nsteps = [{ above = 0.9, severity = "minor" }, { above = 1.5, severity = "critical" }]',
    'id = "speed.seal"\nmessages.met = "the lip is slow enough: {observed}"\ntitle = "Lip"\nremedy = "Ask {machine}."',
]


@pytest.mark.parametrize("text", NOT_LISTED)
def test_what_does_not_count_as_loosening(layer, text):
    assert load(str(layer(f'[[clauses]]\nreason = "r"\n{text}\n'))).loosened == ()


REFUSED = [
    ("no reason", 'id = "speed.seal"\noff = true', "'reason' is a required property"),
    ("blank reason", 'id = "speed.seal"\nreason = ""\noff = true', "reason: '' should be non-empty"),
    ("unknown limit",
     'id = "speed.seal"\nlimits.lip = { value = 1, FROM }',
     "it has no limit 'lip'; its limits are: lip_speed_low"),
    ("unknown table",
     'id = "speed.seal"\ntables.lip.rows = [{ where = { a = 1 }, set = { b = 1 } }]',
     "it has no table 'lip'; its tables are: none"),
    ("unknown clause", 'id = "speed.seel"\noff = true', "there is no such clause to change; is speed.seal meant?"),
    ("no such row",
     'id = "speed.cage"\ntables.cage.rows = [{ where = { cage = "paper" }, set = { note = "x" } }]',
     "table cage: 0 rows where cage paper; one is expected"),
    ("no such column",
     'id = "speed.cage"\ntables.cage.rows = [{ where = { cage = "peek" }, set = { lowest = 1, FROM } }]',
     "has no column 'lowest'"),
    ("a word for a number",
     'id = "speed.cage"\ntables.cage.rows = [{ where = { cage = "peek" }, set = { low = "fast", FROM } }]',
     "low 'fast' is not a number"),
    ("a cell without source",
     'id = "speed.cage"\ntables.cage.rows = [{ where = { cage = "peek" }, set = { low = 1 } }]',
     "a changed value states its source and provenance"),
    ("a limit without source",
     'id = "speed.seal"\nlimits.lip_speed_low = { value = 9 }',
     "'source' is a required property"),
    ("a source that is not there",
     'id = "speed.seal"\nlimits.lip_speed_low = { value = 9, source = "HEARSAY", provenance = "read" }',
     "limit lip_speed_low: source 'HEARSAY'"),
    ("another unit",
     'id = "speed.seal"\nlimits.lip_speed_low = { value = 9, unit = "m/min", FROM }',
     "limit lip_speed_low is in m/s, not in m/min"),
    ("another kind of value",
     'id = "speed.seal"\nlimits.lip_speed_low = { value = "slow", FROM }',
     "'slow' is not like 10"),
    ("other arithmetic", 'id = "speed.seal"\ncheck = "speed.cage"', "a layer does not change check"),
    ("fewer wants", 'id = "speed.seal"\nneeds = []', "a layer does not change needs"),
    ("a word nothing fills", 'id = "speed.seal"\nmessages.met = "at {pace}"', "met names {pace}"),
    ("the table itself switched off",
     'id = "table.agreement"\noff = true', "a clause about the table itself cannot be switched off"),
    ("the table itself not judged",
     'id = "table.agreement"\ngate = "may"', "a clause about the table itself must always be judged"),
    ("the table itself judged under conditions",
     'id = "table.agreement"\nmust_when = [{ positions = 2 }]', "a clause about the table itself must always be"),
    ("may and must", 'id = "speed.seal"\ngate = "may"\nmust_when = [{ positions = 2 }]', "contradict each other"),
    ("condition on nothing known",
     'id = "speed.seal"\nmust_when = [{ closing = "stated" }]', "'closing' is not a parameter of the vocabulary"),
    ("condition on no word of it",
     'id = "speed.seal"\nmust_when = [{ closure = ["lid"] }]', 'closure: "stated" or words out of open, shield'),
    ("condition on words of a number",
     'id = "speed.seal"\nmust_when = [{ speed_max = ["fast"] }]', 'speed_max: "stated" is expected'),
    ("condition on positions in words",
     'id = "speed.seal"\nmust_when = [{ positions = "stated" }]', "positions: a number of positions is expected"),
    ("another gate", 'id = "speed.seal"\ngate = "perhaps"', "'perhaps' is not one of ['must', 'may']"),
    ("a title that is taken",
     'id = "speed.seal"\ntitle = "Cage within its speed"',
     "its title is that of speed.cage"),
]  # fmt: skip


@pytest.mark.parametrize(("why", "text", "reason"), REFUSED, ids=[c[0] for c in REFUSED])
def test_refused(layer, why, text, reason):
    reasoned = text if "reason" in why else f'reason = "r"\n{text}'
    folder = layer(f"[[clauses]]\n{reasoned.replace('FROM', FROM)}\n")
    with pytest.raises(RulebookError) as caught:
        load(str(folder))
    assert reason in caught.value.reason
    assert (caught.value.file, caught.value.clause) == ("all.toml", re.search(r'id = "([^"]*)"', text)[1])


def test_a_layer_is_no_version_and_cannot_hide_what_it_loosens(layer):
    with pytest.raises(RulebookError, match="only what ships with the program is a version"):
        load(str(layer(OFF, head='kind = "version"\n')))
    assert load(str(layer(OFF, "silent"))).loosened[0].what == "switched off"


def test_a_layer_does_not_rename_a_source(layer):
    with pytest.raises(RulebookError, match="'DIN-3760' is already in the bibliography"):
        load(str(layer(OFF, sources='[DIN-3760]\ntitle = "Something else"\n')))


def test_a_layer_may_only_shorten_the_reach_of_concessions(layer):
    assert load("2026.1").concessions_up_to == load("current").concessions_up_to == 2.0
    near = load(str(layer(OFF, "near", head="concession_factor = 1.5\n")))
    assert near.concessions_up_to == 1.5 and near.sha256 != load(str(layer(OFF, "plain"))).sha256
    top = layer(OFF.replace("speed.seal", "speed.cage"), "top", extends="../near", sources="")
    assert load(str(top)).concessions_up_to == 1.5
    with pytest.raises(RulebookError, match=r"concession_factor is 3; a layer may lower the 2, not raise it"):
        load(str(layer(OFF, "far", head="concession_factor = 3\n")))
    with pytest.raises(RulebookError, match=r"concession_factor"):
        load(str(layer(OFF, "none", head="concession_factor = 0.5\n")))
