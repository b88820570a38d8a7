import json

import pytest
from attrs import evolve
from jsonschema import Draft202012Validator

from linter.model.findings import Quantity
from linter.model.packaged import data_folder
from linter.report.result_json import result_text


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
    assert content == json.loads(json.dumps(sample.as_dict()))


def test_any_text_can_be_encoded(hostile):
    content = json.loads(result_text(hostile).encode("utf-8"))
    assert [m["machine"] for m in content["machines"]] == [m.machine for m in hostile.machines]


def test_a_number_that_json_cannot_hold_is_refused(sample):
    bad = evolve(sample.assessments[1], observed=Quantity(float("nan"), "N"))
    with pytest.raises(ValueError, match="JSON"):
        result_text(evolve(sample, assessments=(bad,)))
