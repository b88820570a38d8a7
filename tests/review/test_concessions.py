import datetime
import json

import pytest
from attrs import evolve
from jsonschema import Draft202012Validator

from linter.model.findings import Assessment, InputRecord, Layer, MachineRecord, Quantity, ReviewResult, RulebookRecord
from linter.model.packaged import data_folder
from linter.review.concessions import ConcessionError, apply, load_concessions

TODAY = datetime.date(2026, 5, 20)
ENTRY = {
    "number": "K-7",
    "clause": "fit.shaft-class",
    "machine": "fan",
    "station": "B",
    "drawing_number": "DE-210",
    "drawing_revision": "C",
    "limit": {"value": -6, "unit": "um"},
    "severity": "major",
    "approver": "seat design office",
    "reason": "Tested for 2000 h.",
    "expires": "2027-03-31",
}


def item(station: str | None, outcome: str = "finding", clause: str = "fit.shaft-class", **more: object) -> Assessment:
    facts: dict = {
        "severity": "major" if outcome == "finding" else None,
        "observed": Quantity(-5.0, "um"),
        "lower": Quantity(0.0, "um"),
        "upper": None,
        **more,
    }
    return Assessment(
        clause=clause, title=clause, machine="fan", station=station, outcome=outcome, message=f"{clause}.", **facts
    )


def review(*items: Assessment) -> ReviewResult:
    return ReviewResult(
        tool="ringseat",
        tool_version="0.1.0",
        rulebook=RulebookRecord("ringseat", "2026.1", "ab" * 32, (Layer("ringseat", "2026.1"),), ()),
        input=InputRecord("fan.xlsx", "0f" * 32, "one row per station"),
        machines=(MachineRecord("fan", "DE-210", "C", ("A", "B")),),
        assessments=items or (item("A", "met"), item("B")),
        unrecognised=(),
        gate_severity="major",
    )


def write(tmp_path, *entries: dict, name: str = "accepted.json"):
    path = tmp_path / name
    path.write_text(json.dumps({"concessions": list(entries)}), encoding="utf-8")
    return path


def run(tmp_path, result: ReviewResult, *entries: dict, today: datetime.date = TODAY) -> ReviewResult:
    return apply(result, load_concessions(write(tmp_path, *entries)), today)


def states(result: ReviewResult) -> list[tuple[str, str]]:
    return [(note.number, note.state) for note in result.concessions]


def changed(**more: object) -> dict:
    entry = {**ENTRY, **more}
    return {key: value for key, value in entry.items() if value is not None}


@pytest.mark.parametrize(
    ("edges", "observed", "accepted", "state", "text"),
    [
        ({"upper": Quantity(10.0, "um"), "lower": None}, 12.0, 20.0, "applied", "accepted up to 20"),
        ({"upper": Quantity(10.0, "um"), "lower": None}, 12.0, 20.1, "exceeded", "beyond 2 times the limit 10"),
        ({"upper": Quantity(10.0, "um"), "lower": None}, 12.0, 1e12, "exceeded", "beyond 2 times the limit 10"),
        ({"upper": None, "lower": Quantity(10.0, "um")}, 8.0, 5.0, "applied", "accepted down to 5"),
        ({"upper": None, "lower": Quantity(10.0, "um")}, 8.0, 4.9, "exceeded", "beyond one part in 2 of the limit 10"),
        ({"upper": None, "lower": Quantity(10.0, "um")}, 8.0, -1e9, "exceeded", "beyond one part in 2 of the limit 10"),
        ({"upper": Quantity(10.0, "um"), "lower": Quantity(2.0, "um")}, 1.5, 0.9, "exceeded", "one part in 2 of"),
        ({"upper": Quantity(0.0, "um"), "lower": None}, 3.0, 50.0, "applied", "accepted up to 50"),
    ],
)
def test_a_concession_reaches_no_further_than_a_multiple_of_the_limit(tmp_path, edges, observed, accepted, state, text):
    one = review(item("B", observed=Quantity(observed, "um"), **edges))
    after = run(tmp_path, one, changed(limit={"value": accepted, "unit": "um"}))
    assert states(after) == [("K-7", state)]
    assert text in after.concessions[0].text.replace("\u00a0", " ")
    assert after.gate == ("open" if state == "applied" else "closed")


def test_the_rulebook_says_how_far_a_concession_reaches(tmp_path):
    one = review(item("B", observed=Quantity(12.0, "um"), lower=None, upper=Quantity(10.0, "um")))
    accepted = load_concessions(write(tmp_path, changed(limit={"value": 14, "unit": "um"})))
    assert [states(apply(one, accepted, TODAY, factor))[0][1] for factor in (1.5, 1.3)] == ["applied", "exceeded"]


def test_a_covered_finding_is_conceded_keeps_its_severity_and_opens_the_gate(tmp_path):
    before = review()
    after = run(tmp_path, before, ENTRY)
    assert before.gate == "closed" and after.gate == "open"
    met, conceded = after.assessments
    assert met == before.assessments[0]
    assert (conceded.outcome, conceded.severity, conceded.concession) == ("conceded", "major", "K-7")
    assert states(after) == [("K-7", "applied")]
    text = after.concessions[0].text
    for part in ("fit.shaft-class at fan B", "−5\u00a0µm", "−6\u00a0µm", "seat design office", "2027-03-31", "2000 h"):
        assert part in text
    assert after.outcomes["conceded"] == 1 and after.severities["major"] == 0


@pytest.mark.parametrize(
    ("entry", "state", "words"),
    [
        ({"expires": "2026-05-19"}, "expired", "Ended on 2026-05-19"),
        ({"drawing_revision": "D"}, "other revision", "revision D, the table states C"),
        ({"drawing_number": "DE-211"}, "other revision", "drawing DE-211, the table states DE-210"),
        ({"severity": "minor"}, "exceeded", "Accepts minor at most; fit.shaft-class at fan B is major"),
        ({"limit": {"value": -4.9, "unit": "um"}}, "exceeded", "worse than the accepted −4.9"),
        ({"limit": None}, "exceeded", "No limit is stated"),
        ({"limit": {"value": -6, "unit": "N"}}, "exceeded", "in N, which cannot be held against µm"),
    ],
)
def test_what_a_concession_does_not_cover_stays_a_finding(tmp_path, entry, state, words):
    result = review()
    after = run(tmp_path, result, changed(**entry))
    assert after.assessments == result.assessments and after.gate == "closed"
    assert states(after) == [("K-7", state)]
    assert words in after.concessions[0].text and "count" in after.concessions[0].text


@pytest.mark.parametrize(
    ("entry", "words"),
    [
        ({"machine": "mill"}, "no such machine"),
        ({"station": "C"}, "no such station; it has A, B"),
        ({"clause": "fit.none"}, "no such clause"),
        ({"station": "A"}, "the clause is met"),
    ],
)
def test_a_concession_that_nothing_needs_is_unused_and_says_why(tmp_path, entry, words):
    after = run(tmp_path, review(), changed(**entry))
    assert states(after) == [("K-7", "unused")] and words in after.concessions[0].text
    old = run(tmp_path, review(), changed(**entry, expires="2020-01-01"))
    assert states(old) == [("K-7", "expired")] and "no finding" in old.concessions[0].text


def test_it_holds_on_its_last_day(tmp_path):
    last = datetime.date(2027, 3, 31)
    assert states(run(tmp_path, review(), ENTRY, today=last)) == [("K-7", "applied")]
    after = run(tmp_path, review(), ENTRY, today=last + datetime.timedelta(days=1))
    assert states(after) == [("K-7", "expired")]


@pytest.mark.parametrize(
    ("observed", "lower", "upper", "limit", "covered"),
    [
        (12.0, None, 10.0, 12.0, True),  # upwards is worse
        (12.0, None, 10.0, 11.9, False),
        (12.0, None, 10.0, 20.0, True),
        (-12.0, -10.0, None, -12.0, True),  # downwards is worse
        (-12.0, -10.0, None, -11.0, False),
        (-12.0, -10.0, 10.0, -13.0, True),  # the limit that is broken tells
        (12.0, -10.0, 10.0, -13.0, False),
        (5.0, -10.0, 10.0, 5.0, True),  # between its limits: only the very value
        (5.0, -10.0, 10.0, 6.0, False),
        (5.0, None, None, 5.0, True),
        (5.0, None, None, 4.0, False),
        (9.0, None, 10.0, 9.5, True),
    ],
)
def test_worse_is_judged_in_the_direction_of_the_broken_limit(tmp_path, observed, lower, upper, limit, covered):
    finding = item(
        "B",
        observed=Quantity(observed, "N"),
        lower=None if lower is None else Quantity(lower, "N"),
        upper=None if upper is None else Quantity(upper, "N"),
    )
    after = run(tmp_path, review(finding), changed(limit={"value": limit, "unit": "N"}))
    assert states(after) == [("K-7", "applied" if covered else "exceeded")]


def test_limit_may_be_in_another_unit_of_the_same_kind(tmp_path):
    for value, unit, state in ((-0.006, "mm", "applied"), (-6, "µm", "applied"), (-0.0049, "mm", "exceeded")):
        after = run(tmp_path, review(), changed(limit={"value": value, "unit": unit}))
        assert states(after) == [("K-7", state)]


def test_a_finding_without_a_value_needs_no_limit(tmp_path):
    after = run(tmp_path, review(item("B", observed=None, lower=None)), changed(limit=None))
    assert states(after) == [("K-7", "applied")]


def test_without_a_station_it_covers_the_machine_and_tells_states_apart(tmp_path):
    result = review(item(None), item("A"), item("B", observed=Quantity(-9.0, "um")), item("B", clause="fit.other"))
    after = run(tmp_path, result, changed(station=None))
    assert [a.outcome for a in after.assessments] == ["conceded", "conceded", "finding", "finding"]
    assert states(after) == [("K-7", "applied"), ("K-7", "exceeded")]
    assert "fan A" in after.concessions[0].text and "fan B" in after.concessions[1].text


def test_two_for_one_finding_the_first_that_holds_covers_it(tmp_path):
    after = run(tmp_path, review(), changed(number="K-9"), changed(number="K-8"), changed(expires="2020-01-01"))
    assert after.assessments[1].concession == "K-8"
    assert states(after) == [("K-7", "expired"), ("K-8", "applied"), ("K-9", "unused")]
    assert "already covered by K-8" in after.concessions[2].text


def test_order_in_the_file_does_not_matter_and_today_is_the_systems_by_default(tmp_path):
    entries = [changed(number=f"K-{n}", expires="2999-12-31") for n in range(4)]
    first = apply(review(), load_concessions(write(tmp_path, *entries)))
    second = apply(review(), load_concessions(write(tmp_path, *reversed(entries))))
    assert first == second and states(first)[0] == ("K-0", "applied")


def test_toml_and_json_say_the_same(tmp_path):
    toml = tmp_path / "accepted.toml"
    lines = [f"{k} = {json.dumps(v)}" for k, v in ENTRY.items() if k not in ("limit", "expires")]
    text = "\n".join(["[[concessions]]", *lines, "limit = { value = -6, unit = 'um' }", "expires = 2027-03-31"])
    toml.write_text("\ufeff" + text, encoding="utf-8")
    assert load_concessions(toml) == load_concessions(write(tmp_path, ENTRY))
    toml.write_text(text.replace("2027-03-31", "'2027-03-31'"), encoding="utf-8")
    assert load_concessions(toml) == load_concessions(write(tmp_path, ENTRY))


@pytest.mark.parametrize(
    ("entry", "words"),
    [
        ({"drawing_revision": None}, "'drawing_revision' is a required property"),
        ({"approver": "  "}, "approver"),
        ({"severity": "grave"}, "severity"),
        ({"expires": "31.03.2027"}, "expires"),
        ({"expires": "2027-02-30"}, "expires: read '2027-02-30'; expected a day as YYYY-MM-DD"),
        ({"clause": "Shaft class"}, "clause"),
        ({"limit": {"value": "-6", "unit": "um"}}, "limit.value"),
        ({"limit": {"value": 10**400, "unit": "um"}}, "limit.value"),
        ({"limit": {"value": -6}}, "'unit' is a required property"),
        ({"approved_by": "x"}, "approved_by"),
    ],
)
def test_a_bad_entry_is_named_by_place_and_number(tmp_path, entry, words):
    path = write(tmp_path, changed(number="K-1"), changed(**entry))
    with pytest.raises(ConcessionError) as error:
        load_concessions(path)
    text = str(error.value)
    assert str(path) in text and "concession 2 (number 'K-7')" in text and words in text


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("{", "JSON"),
        ('{"concessions": [], "concessions": []}', "'concessions' stands twice"),
        ('{"concessions": [NaN]}', "NaN is not a number"),
        ('{"concessions": {}}', "top level"),
        ('{"concessions": [1]}', "concession 1"),
        ("concessions = ", "TOML"),
        ("[]", "TOML"),
        ("", "'concessions' is a required property"),
        ("{" + '"a":{' * 50_000, "JSON"),
    ],
)
def test_a_file_that_cannot_be_read_is_named(tmp_path, text, words):
    path = tmp_path / "accepted"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(ConcessionError) as error:
        load_concessions(path)
    assert str(path) in str(error.value) and words in str(error.value)


def test_a_json_file_without_the_key_says_what_is_expected(tmp_path):
    path = tmp_path / "accepted.json"
    path.write_text(json.dumps([ENTRY]), encoding="utf-8")
    with pytest.raises(ConcessionError, match="top level: read a JSON list; expected an object with the key"):
        load_concessions(path)


def test_a_file_that_cannot_be_opened_or_decoded_is_named(tmp_path):
    with pytest.raises(ConcessionError, match=r"none\.json: the concessions cannot be opened"):
        load_concessions(tmp_path / "none.json")
    path = tmp_path / "latin.toml"
    path.write_bytes("# gr\xf6\xdfer".encode("latin-1"))
    with pytest.raises(ConcessionError, match="byte 4 is not UTF-8"):
        load_concessions(path)


def test_numbers_are_unique(tmp_path):
    with pytest.raises(ConcessionError, match=r"concession 2 .*already taken"):
        load_concessions(write(tmp_path, ENTRY, ENTRY))


def test_the_schema_is_a_schema_and_notes_of_an_earlier_file_are_kept(tmp_path):
    Draft202012Validator.check_schema(
        json.loads((data_folder("schemas") / "concessions.schema.json").read_text(encoding="utf-8"))
    )
    first = run(tmp_path, review(), ENTRY)
    second = run(tmp_path, first, changed(number="L-1", station="A"))
    assert states(second) == [("K-7", "applied"), ("L-1", "unused")]
    assert evolve(second, concessions=first.concessions) == first
