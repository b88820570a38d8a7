import hashlib
import json
from pathlib import Path
from urllib.parse import unquote

import pytest
from attrs import evolve
from jsonschema import Draft4Validator

from linter.model.findings import Failure, Used
from linter.model.places import Place
from linter.report.sarif import sarif_text

DATA = Path(__file__).parent / "data"


@pytest.fixture(scope="module")
def schema() -> Draft4Validator:
    text = (DATA / "sarif-schema-2.1.0.json").read_bytes()
    assert hashlib.sha256(text).hexdigest() in (DATA / "README.md").read_text(encoding="utf-8")
    content = json.loads(text)
    Draft4Validator.check_schema(content)
    return Draft4Validator(content)


def run_of(result, rulebook) -> dict:
    (run,) = json.loads(sarif_text(result, rulebook, passes=True))["runs"]
    return run


def one(run, clause, station="A", machine="blower") -> dict:
    (found,) = [
        r
        for r in run["results"]
        if r["ruleId"] == clause and (r["properties"]["machine"], r["properties"]["station"]) == (machine, station)
    ]
    return found


def test_follows_the_schema_of_the_standard(sample, hostile, rulebook, schema):
    for result in (
        sample,
        hostile,
        evolve(sample, assessments=(), machines=(), concessions=()),
        evolve(sample, failures=(Failure("fit.shaft-class", "fit.shaft-class could not be run (ValueError: no)"),)),
    ):
        schema.validate(json.loads(sarif_text(result, rulebook)))


def test_schema_can_fail(sample, rulebook, schema):
    log = json.loads(sarif_text(sample, rulebook))
    log["runs"][0]["results"][0]["level"] = "grave"
    assert not schema.is_valid(log)


def test_one_result_per_assessment_with_kind_and_level(sample, rulebook):
    run = run_of(sample, rulebook)
    assert len(run["results"]) == len(sample.assessments)
    kinds = {
        "met": "pass", "finding": "fail", "conceded": "fail", "not assessed": "open", "not applicable": "notApplicable"
    }  # fmt: skip
    levels = {"critical": "error", "major": "error", "minor": "warning", "remark": "note", None: "none"}
    for item, entry in zip(sample.assessments, run["results"], strict=True):
        assert entry["kind"] == kinds[item.outcome]
        assert entry["level"] == levels[item.severity]
        assert (entry["level"] == "none") == (entry["kind"] != "fail")
        assert entry["message"]["text"].startswith(item.message)
        assert run["tool"]["driver"]["rules"][entry["ruleIndex"]]["id"] == entry["ruleId"] == item.clause


def test_not_assessed_says_what_is_missing(sample, rulebook):
    entry = one(run_of(sample, rulebook), "life.rating", None)
    assert entry["properties"]["missing"] == ["required_life"]
    assert "State required_life." in entry["properties"]["remedy"]
    assert "State" not in entry["message"]["text"]


def test_rules_carry_their_help(sample, rulebook):
    run = run_of(sample, rulebook)
    rules = run["tool"]["driver"]["rules"]
    assert [r["id"] for r in rules] == list(rulebook.clauses)
    for rule in rules:
        clause = rulebook.clauses[rule["id"]]
        for text in (clause.consequence, clause.remedy, clause.arithmetic, "ISO code system for tolerances (2010)"):
            assert text in rule["help"]["text"] and text in rule["help"]["markdown"]
    off = evolve(rulebook.clauses["speed.seal"], off="not used")
    book = evolve(rulebook, clauses={**rulebook.clauses, "speed.seal": off})
    enabled = {r["id"]: r["defaultConfiguration"]["enabled"] for r in run_of(sample, book)["tool"]["driver"]["rules"]}
    assert [name for name, on in enabled.items() if not on] == ["speed.seal"]


def test_a_workbook_cell_is_a_logical_location_without_a_region(sample, rulebook):
    run = run_of(sample, rulebook)
    (location,) = one(run, "shoulder.fillet")["locations"]
    assert "region" not in location["physicalLocation"]
    assert unquote(location["physicalLocation"]["artifactLocation"]["uri"]) == sample.input.file
    named = {entry["kind"]: entry for entry in location["logicalLocations"]}
    assert named["cell"]["fullyQualifiedName"] == "Seats!D20"
    assert run["logicalLocations"][named["cell"]["parentIndex"]]["kind"] == "sheet"
    assert named["parameter"]["fullyQualifiedName"] == "blower/A/shaft_fillet_radius"
    station = run["logicalLocations"][named["parameter"]["parentIndex"]]
    assert (station["kind"], station["name"]) == ("station", "A")
    assert run["logicalLocations"][station["parentIndex"]]["kind"] == "machine"


def test_references_agree_with_what_they_refer_to(hostile, sample, rulebook):
    for result in (sample, hostile):
        run = run_of(result, rulebook)
        for entry in run["results"]:
            for location in (*entry["locations"], *entry.get("relatedLocations", ())):
                artifact = location["physicalLocation"]["artifactLocation"]
                assert run["artifacts"][artifact["index"]]["location"]["uri"] == artifact["uri"]
                for logical in location["logicalLocations"]:
                    kept = run["logicalLocations"][logical["index"]]
                    assert {**kept, "index": logical["index"]} == logical
        names = [(e["kind"], e["fullyQualifiedName"]) for e in run["logicalLocations"]]
        assert len(names) == len(set(names))


def test_a_text_table_has_lines_and_json_has_pointers(sample, rulebook):
    item = next(i for i in sample.assessments if i.clause == "shoulder.fillet")

    def location(place: Place) -> dict:
        changed = evolve(item, places=(Used("shaft_fillet_radius", place, "0.3 mm"),))
        (entry,) = run_of(evolve(sample, assessments=(changed,)), rulebook)["results"]
        return entry["locations"][0]

    text = location(Place("fan.csv", None, "AB17"))
    assert text["physicalLocation"]["region"] == {"startLine": 17}
    assert text["logicalLocations"][1]["name"] == "AB17"
    pointer = location(Place("fan.json", pointer="/machines/0/stations/1/shaft fillet~1radius"))
    assert "region" not in pointer["physicalLocation"]
    assert pointer["logicalLocations"][1]["kind"] == "property"
    assert pointer["logicalLocations"][1]["name"] == "shaft fillet/radius"
    assert pointer["logicalLocations"][1]["fullyQualifiedName"].startswith("/machines/0/")


def test_the_first_location_is_the_cell_to_change(sample, rulebook):
    item = next(i for i in sample.assessments if i.clause == "fit.shaft-class")
    file = sample.input.file
    more = (Used("speed_max", Place(file, "Seats", "D4"), "82 000 r/min"), *item.places)
    (entry,) = run_of(evolve(sample, assessments=(evolve(item, places=more),)), rulebook)["results"]
    assert entry["locations"][0]["logicalLocations"][0]["name"] == "shaft_seat_diameter"
    assert len(entry["relatedLocations"]) == 2
    text = entry["properties"]["remedy"]
    assert "In the plan: line 1, shaft seat diameter: h5 -> k5." in text


def test_identity_does_not_depend_on_the_place_or_the_value(sample, rulebook):
    before = {json.dumps(r["partialFingerprints"]) for r in run_of(sample, rulebook)["results"]}
    assert len(before) == len(sample.assessments)
    moved = tuple(
        evolve(
            i,
            message="another",
            severity="minor" if i.severity else None,
            places=tuple(evolve(u, place=Place("other.xlsx", "Other", "Z99")) for u in i.places),
        )
        for i in sample.assessments
    )
    assert before == {
        json.dumps(r["partialFingerprints"]) for r in run_of(evolve(sample, assessments=moved), rulebook)["results"]
    }


def test_concessions_are_suppressions_and_every_result_states_its_own(sample, rulebook):
    run = run_of(sample, rulebook)
    assert all("suppressions" in r for r in run["results"])
    conceded = [r for r in run["results"] if r["suppressions"]]
    assert {(r["ruleId"], r["properties"]["station"]) for r in conceded} == {("speed.factor", "B")}
    for entry in conceded:
        (suppression,) = entry["suppressions"]
        assert (suppression["kind"], suppression["status"]) == ("external", "accepted")
        assert "K-7" in suppression["justification"]
        assert entry["level"] == "note"
    texts = [n["message"]["text"] for n in run["invocations"][0]["toolConfigurationNotifications"]]
    assert any(t.startswith("expired: Concession K-3") for t in texts)


def test_failures_are_notifications(sample, rulebook):
    failed = evolve(sample, failures=(Failure("fit.shaft-class", "fit.shaft-class could not be run (ValueError: no)"),))
    (invocation,) = run_of(failed, rulebook)["invocations"]
    assert invocation["executionSuccessful"] is False
    first = invocation["toolExecutionNotifications"][0]
    assert first["level"] == "error" and first["associatedRule"]["id"] == "fit.shaft-class"
    assert run_of(sample, rulebook)["invocations"][0]["executionSuccessful"] is True


def test_the_input_is_named_by_its_hash_and_never_by_an_absolute_path(sample, rulebook):
    run = run_of(sample, rulebook)
    (artifact,) = run["artifacts"]
    assert artifact["hashes"] == {"sha-256": sample.input.sha256}
    assert "uri" not in run["originalUriBaseIds"][artifact["location"]["uriBaseId"]]
    assert run["properties"]["gate"] == sample.gate


def test_braces_and_links_in_a_table_stay_text(sample, rulebook):
    item = evolve(sample.assessments[0], message="a {0} b [x](javascript:alert) c", remedy="")
    (entry,) = run_of(evolve(sample, assessments=(item,)), rulebook)["results"]
    assert entry["message"]["text"] == "a {{0}} b [x] (javascript:alert) c."


def test_same_bytes_sorted_keys_and_any_text(sample, hostile, rulebook):
    for result in (sample, hostile):
        text = sarif_text(result, rulebook)
        assert text == sarif_text(result, rulebook)
        assert text.encode("utf-8")
        log = json.loads(text)
        for record in (log, log["runs"][0], *log["runs"][0]["results"]):
            assert list(record) == sorted(record)
        entries = [json.dumps(entry, sort_keys=True, ensure_ascii=False) for entry in log["runs"][0]["results"]]
        assert [line.strip().rstrip(",") for line in text.splitlines() if '"ruleId"' in line] == entries
        for hidden in ("\u202e", "\x00", "\u200b", "\x1b"):
            assert hidden not in text


def test_what_is_met_stands_there_on_request_only_and_is_always_counted(sample, rulebook, schema):
    log = json.loads(sarif_text(sample, rulebook))
    schema.validate(log)
    (run,) = log["runs"]
    told = [a for a in sample.assessments if a.outcome in ("finding", "conceded", "not assessed")]
    assert [r["ruleId"] for r in run["results"]] == [a.clause for a in told] and len(told) < len(sample.assessments)
    assert {r["kind"] for r in run["results"]} == {"fail", "open"}
    assert run["properties"]["outcomes"] == sample.outcomes
    met = tuple(a for a in sample.assessments if a.outcome == "met")
    assert json.loads(sarif_text(evolve(sample, assessments=met), rulebook))["runs"][0]["results"] == []
