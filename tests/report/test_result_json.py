import json
from pathlib import Path

import pytest
from attrs import evolve
from jsonschema import Draft202012Validator

import linter
from linter.model.findings import Quantity
from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.report.result_json import result_text
from linter.review.records import review_reading
from linter.rulebook.load import load


@pytest.fixture
def schema() -> Draft202012Validator:
    content = json.loads((data_folder("schemas") / "result.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(content)
    return Draft202012Validator(content)


def test_follows_its_schema(sample, hostile, schema):
    for result in (sample, hostile, evolve(sample, assessments=(), machines=())):
        schema.validate(json.loads(result_text(result)))


def test_schema_is_strict(sample, schema):
    content = json.loads(result_text(sample))
    for spoil in (
        lambda c: c.pop("summary"),
        lambda c: c.update(time="now"),
        lambda c: c["summary"].update(gate="ajar"),
        lambda c: c["assessments"][0].update(outcome="passed"),
        lambda c: c["assessments"][0].update(severity="critical", outcome="met"),
        lambda c: c["assessments"][1].update(severity=None),
        lambda c: c["assessments"][1]["observed"].pop("unit"),
        lambda c: c["input"].update(sha256="none"),
    ):
        spoiled = json.loads(json.dumps(content))
        spoil(spoiled)
        assert not schema.is_valid(spoiled)


def test_same_bytes_sorted_keys_and_nothing_lost(sample):
    text = result_text(sample)
    assert text == result_text(sample) and text.endswith("}\n")
    content = json.loads(text)
    assert list(content) == sorted(content)
    assert json.loads(json.dumps(sample.as_dict())).items() <= content.items()
    assert_whole(sample, content)


def assert_whole(result, content):
    """What is told once is found again for every assessment that it belongs to."""
    clauses = {clause["clause"]: clause for clause in content["clauses"]}
    cells = {
        (part["machine"], part.get("station")): {
            (name, group["file"], group.get("sheet"), cell)
            for group in part["places"]
            for name, found in (group.get("cells") or group["pointers"]).items()
            for cell in found
        }
        for part in (*content["machines"], *content["stations"])
    }
    assert len(content["assessments"]) == len(result.assessments)
    for entry, record in zip(content["assessments"], result.assessments, strict=True):
        clause = clauses[record.clause]
        keys = ("machine", "station", "outcome", "severity", "message")
        assert [entry[key] for key in keys] == [getattr(record, key) for key in keys]
        assert tuple(entry["missing"]) == record.missing
        assert (entry["concession"], entry.get("remedy", "")) == (record.concession, record.remedy)
        assert clause["title"] == record.title
        assert tuple(entry["sources"]) == record.sources
        assert entry["working"] == [
            {key: getattr(line, key) for key in ("symbol", "meaning", "value", "unit", "formula")}
            for line in record.working
        ]
        own = {
            (p["parameter"], p["file"], p.get("sheet"), p.get("cell") or p.get("pointer")) for p in entry["places"]
        }  # fmt: skip
        used = {(u.parameter, u.place.file, u.place.sheet, u.place.cell or u.place.pointer) for u in record.places}
        if record.outcome in ("finding", "conceded", "not assessed"):
            assert own == used
            continue
        here = set().union(*(v for k, v in cells.items() if k[0] == record.machine and record.station in (None, k[1])))
        here |= cells.get((record.machine, None), set())
        assert used <= own | {place for place in here if place[0] in clause["parameters"]}


@pytest.mark.parametrize(
    "table", sorted((Path(linter.__file__).parents[1] / "sample_exports").iterdir()), ids=lambda path: path.name
)
def test_nothing_of_a_review_is_lost(table, schema):
    result = review_reading(read_table(table), load("2026.3"), full=True)
    content = json.loads(result_text(result))
    schema.validate(content)
    assert_whole(result, content)
    assert len(result_text(review_reading(read_table(table, shown_as=table.name), load("2026.3")))) < 200_000


def test_any_text_can_be_encoded(hostile):
    content = json.loads(result_text(hostile).encode("utf-8"))
    assert [m["machine"] for m in content["machines"]] == [m.machine for m in hostile.machines]


def test_a_number_that_json_cannot_hold_is_refused(sample):
    bad = evolve(sample.assessments[1], observed=Quantity(float("nan"), "N"))
    with pytest.raises(ValueError, match="JSON"):
        result_text(evolve(sample, assessments=(bad,)))
