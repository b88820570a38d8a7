import base64
import hashlib
import json
import re
from html.parser import HTMLParser
from pathlib import Path

import pytest
from attrs import evolve
from jsonschema import Draft202012Validator

import linter
from linter.model.comparison import KINDS
from linter.model.findings import (
    Assessment,
    InputRecord,
    Layer,
    MachineRecord,
    Quantity,
    ReviewResult,
    RulebookRecord,
    StationRecord,
    Used,
)
from linter.model.packaged import data_folder
from linter.model.places import Place
from linter.report.comparison_writers import comparison_html, comparison_json, comparison_text
from linter.report.result_json import result_text
from linter.review.compare import compare_files
from linter.review.result_files import ComparisonError
from linter.rulebook.load import load

SHAFT = {"nominal": 4.0, "lower": -0.005, "upper": 0.0, "class": "h5"}
LOOSE = "The smallest fit is 5 µm of clearance."


def item(
    clause: str, station: str | None, outcome: str = "met", uses: tuple[str, ...] = (), **more: object
) -> Assessment:
    return Assessment(
        clause=clause,
        title=clause,
        machine="fan",
        station=station,
        outcome=outcome,
        **{
            "severity": None,
            "observed": None,
            "lower": None,
            "upper": None,
            "message": f"{clause} is {outcome}.",
            "places": tuple(Used(name, Place("fan.xlsx", "Seats", f"D{k}"), "x") for k, name in enumerate(uses, 4)),
            **more,
        },
    )


def loose(station: str = "A", severity: str = "major", value: float = -5.0, outcome: str = "finding", **more: object):
    return item(
        "fit.shaft-class", station, outcome, ("shaft_seat_diameter", "rotating_ring"), severity=severity,
        observed=Quantity(value, "um"), lower=Quantity(0.0, "um"), message=LOOSE, **more,
    )  # fmt: skip


def tight(station: str = "A", outcome: str = "met", **more: object) -> Assessment:
    return item("fit.shaft-class", station, outcome, ("shaft_seat_diameter", "rotating_ring"), **more)


def review(*items: Assessment, values: dict | None = None, book: RulebookRecord | None = None, **more) -> ReviewResult:
    record = load("2026.1").record()
    return ReviewResult(
        tool="ringseat",
        tool_version=more.pop("tool_version", "0.1.0"),
        rulebook=book or record,
        input=InputRecord("fan.xlsx", more.pop("sha256", "0f" * 32), "one row per station"),
        machines=(MachineRecord("fan", "DE-210", more.pop("revision", "C"), more.pop("stations", ("A", "B"))),),
        assessments=items,
        unrecognised=(),
        gate_severity=more.pop("gate", "major"),
        stations=tuple(
            StationRecord("fan", s, {"speed_max": 60000.0, "shaft_seat_diameter": SHAFT, **(values or {})})
            for s in ("A", "B")
        ),
    )


COMPANY = RulebookRecord("works layer", "4", "cd" * 32, (Layer("works layer", "4"),), ())


@pytest.fixture
def compared(tmp_path):
    def compare(old: ReviewResult, new: ReviewResult):
        paths = []
        for name, result in (("old", old), ("new", new)):
            paths.append(tmp_path / f"{name}.result.json")
            paths[-1].write_text(result_text(result), encoding="utf-8")
        return compare_files(*paths)

    return compare


@pytest.fixture(scope="module")
def schema():
    content = json.loads((data_folder("schemas") / "comparison.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(content)
    return Draft202012Validator(content)


def only(comparison):
    (found,) = comparison.differences
    return found


K5 = {"shaft_seat_diameter": {"nominal": 4.0, "lower": 0.001, "upper": 0.006, "class": "k5"}}


def test_the_same_review_twice_differs_in_nothing(compared):
    result = review(loose(), item("life.rating", None, "not assessed", missing=("required_life",)))
    comparison = compared(result, result)
    assert comparison.differences == () and comparison.values == () and comparison.unchanged == 1
    assert comparison.notes == ("Both results are of the very same table.",)
    assert "No difference in findings or in what is not assessed." in comparison_text(comparison)


@pytest.mark.parametrize(
    ("before", "after", "kind"),
    [
        (tight(), loose(), "appeared"),
        (tight(outcome="not assessed"), loose(), "appeared"),
        (tight(outcome="not applicable"), loose(), "appeared"),
        (None, loose(), "appeared"),
        (loose(), tight(), "cleared"),
        (loose(), tight(outcome="not applicable"), "cleared"),
        (loose(), tight(outcome="not assessed"), "newly not assessed"),
        (tight(), tight(outcome="not assessed"), "newly not assessed"),
        (None, tight(outcome="not assessed"), "newly not assessed"),
        (tight(outcome="not assessed"), tight(), "no longer not assessed"),
        (tight(outcome="not assessed"), tight(outcome="not applicable"), "no longer not assessed"),
        (loose(), None, "no longer reviewed"),
        (tight(outcome="not assessed"), None, "no longer reviewed"),
        (loose(), loose(severity="critical"), "changed"),
        (loose(), loose(value=-7.0), "changed"),
        (loose(), loose(outcome="conceded", concession="K-7"), "changed"),
        (loose(), loose(value=-5.000000001), None),
        (loose(), loose(), None),
        (tight(), tight(outcome="not applicable"), None),
        (tight(), None, None),
        (None, tight(), None),
        (tight(outcome="not assessed"), tight(outcome="not assessed"), None),
    ],
)
def test_kinds(compared, before, after, kind):
    other = item("speed.factor", "A")
    comparison = compared(
        review(*(i for i in (before, other) if i)), review(*(i for i in (after, other) if i), sha256="1e" * 32)
    )
    assert [d.kind for d in comparison.differences] == ([kind] if kind else [])
    assert comparison.counts == {k: int(k == kind) for k in KINDS}


def test_a_change_of_the_table_is_named_with_the_values_that_the_clause_uses(compared):
    found = only(compared(review(loose()), review(tight(), values={**K5, "speed_max": 70000.0}, sha256="1e" * 32)))
    assert (found.kind, found.cause) == ("cleared", "table")
    (change,) = found.values
    assert (change.parameter, change.station) == ("shaft_seat_diameter", "A")
    assert (change.old, change.new) == ("4 h5 (0/−0.005) mm", "4 k5 (+0.006/+0.001) mm")
    assert found.because == ("shaft_seat_diameter: 4 h5 (0/−0.005) mm -> 4 k5 (+0.006/+0.001) mm",)


def test_every_value_that_differs_is_listed_once(compared):
    comparison = compared(review(loose()), review(loose(), values={**K5, "speed_max": 70000.0}, sha256="1e" * 32))
    assert [(v.station, v.parameter) for v in comparison.values] == [
        ("", "speed_max"),
        ("A", "shaft_seat_diameter"),
        ("B", "shaft_seat_diameter"),
    ]
    assert (comparison.values[0].old, comparison.values[0].new) == ("60\u00a0000\u00a0r/min", "70\u00a0000\u00a0r/min")


def test_a_value_newly_stated_or_gone_counts(compared):
    missing = tight(outcome="not assessed", missing=("rotating_ring",))
    found = only(compared(review(missing), review(tight(), values={"rotating_ring": "inner"}, sha256="1e" * 32)))
    assert found.cause == "table" and found.because == ("rotating_ring: not stated -> inner",)


def test_a_change_of_the_rulebook_alone(compared):
    found = only(compared(review(tight()), review(loose(), book=COMPANY)))
    assert (found.kind, found.cause) == ("appeared", "rulebook")
    assert "do not show" in found.because[0]
    before, after = item("works.coating", "A"), item("works.coating", "A", "finding", severity="minor")
    comparison = compared(review(loose()), review(loose(), after, book=COMPANY))
    assert only(comparison).because == ("The clause is new in the rulebook.",)
    assert "The rulebooks differ: ringseat 2026.1, now works layer 4." in comparison.notes
    assert "Clauses only in the new result: works.coating." in comparison.notes
    assert "do not show" in only(compared(review(before), review(after, book=COMPANY))).because[0]


def test_a_change_of_both(compared):
    found = only(compared(review(loose()), review(tight(), values=K5, book=COMPANY, sha256="1e" * 32)))
    assert found.cause == "table and rulebook"
    assert found.because[0].startswith("shaft_seat_diameter: 4 h5") and "do not show" in found.because[1]


def test_released_rulebooks_tell_which_clause_changed(compared, monkeypatch):
    """With both rulebooks at hand, a clause that is the same in both is not blamed on the rulebook."""
    import linter.review.compare

    book = load("2026.1")
    name, other = list(book.clauses)[:2]
    clause = book.clauses[name]
    steps = tuple(evolve(step, above=step.above + 0.05) for step in clause.steps)
    changed = evolve(book, version="2026.9", clauses={**book.clauses, name: evolve(clause, steps=steps)})
    books = {book.sha256: book, changed.sha256: changed}
    monkeypatch.setattr(linter.review.compare, "_released", lambda record: books.get(record["sha256"]))

    def one(clause_id: str, outcome: str) -> Assessment:
        return item(
            clause_id, "A", outcome, ("shaft_seat_diameter",), severity="minor" if outcome == "finding" else None
        )

    comparison = compared(
        review(one(name, "met"), one(other, "met")),
        review(one(name, "finding"), one(other, "finding"), book=changed.record(), values=K5, sha256="1e" * 32),
    )
    causes = {d.clause: d for d in comparison.differences}
    assert causes[other].cause == "table"
    assert causes[name].cause == "table and rulebook"
    assert any(line.startswith("Rulebook: severity steps: above") for line in causes[name].because)
    assert causes[name].title == clause.title


def test_a_concession_and_a_program_are_causes_too(compared):
    conceded = loose(outcome="conceded", concession="K-7")
    found = only(compared(review(loose()), review(conceded)))
    assert (found.kind, found.cause, found.because) == ("changed", "concession", ("Concession K-7 covers it now.",))
    back = only(compared(review(conceded), review(loose())))
    assert back.because == ("Concession K-7 no longer covers it.",)
    found = only(compared(review(tight()), review(loose(), tool_version="0.2.0")))
    assert (found.cause, found.because) == ("program", ("ringseat 0.1.0 -> ringseat 0.2.0",))
    assert only(compared(review(tight()), review(loose()))).cause == "not told"


def test_stations_and_machines_that_come_and_go(compared):
    comparison = compared(
        review(loose("A"), loose("B")),
        review(loose("A"), stations=("A",), revision="D", gate="minor", sha256="1e" * 32),
    )
    found = only(comparison)
    assert (found.kind, found.cause) == ("no longer reviewed", "table")
    assert found.because == ("fan B is no longer there in the table.",)
    assert "Machine fan: no longer there: B." in comparison.notes
    assert "Machine fan: revision C -> D." in comparison.notes
    assert "The gate closed on major and above, now on minor." in comparison.notes


def test_gravest_first_within_a_kind(compared):
    new = review(loose("A", "minor"), loose("B", "critical"), item("speed.factor", "A", "finding", severity="major"))
    comparison = compared(review(tight("A"), tight("B"), item("speed.factor", "A")), new)
    assert [d.severity for d in comparison.differences] == ["critical", "major", "minor"]


def test_text_tells_values_and_severities(compared):
    text = comparison_text(compared(review(loose()), review(loose(severity="critical", value=-9.0), values=K5)))
    assert "fan A: fit.shaft-class: major -> critical [table]" in text
    assert "observed −5\u00a0µm -> −9\u00a0µm" in text and LOOSE in text
    assert "1 changed" in text and "0 findings unchanged" in text


def test_json_follows_its_schema_and_has_the_same_bytes(compared, schema):
    comparison = compared(
        review(loose(), tight("B")), review(tight(outcome="not assessed"), loose("B"), values=K5, book=COMPANY)
    )
    text = comparison_json(comparison)
    content = json.loads(text)
    schema.validate(content)
    assert text == comparison_json(comparison)
    assert text == json.dumps(content, sort_keys=True, ensure_ascii=False, indent=1) + "\n"
    for spoil in (lambda c: c.pop("values"), lambda c: c["differences"][0].update(cause="fate")):
        spoiled = json.loads(text)
        spoil(spoiled)
        assert not schema.is_valid(spoiled)


class _Page(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += attrs


def test_html_is_one_page_under_the_strict_policy(compared):
    bad = '"><script>alert(1)</script>\u202e'
    new = review(evolve(loose(), message=bad), values={"machine": bad, **K5}, book=COMPANY)
    comparison = compared(review(tight(), tight("B", outcome="not assessed")), new)
    html = comparison_html(comparison)
    assert html == comparison_html(comparison) and html.encode("utf-8")
    page = _Page()
    page.feed(html)
    assert "script" not in page.tags and "link" not in page.tags and page.tags.count("style") == 1
    assert not any(name == "style" or name.startswith("on") for name, _ in page.attributes)
    assert "\u202e" not in html and "[U+202E]" in html
    style = re.search("<style>(.*?)</style>", html, re.DOTALL)[1]
    digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
    policy = f"default-src 'none'; style-src 'sha256-{digest}'; base-uri 'none'; form-action 'none'"
    assert policy in html.replace("&#39;", "'")
    for part in ("The gate was open and is now closed", "The table and the rulebook", "4 h5 (0/−0.005) mm", "Appeared"):
        assert part in html


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("{", "cannot be read as JSON"),
        ('{"format": NaN}', "NaN is not a number"),
        ("[1]", "JSON of another kind"),
        ('{"format": "other"}', "JSON of another kind"),
        ('{"format": "ringseat-result", "format_version": 4}', "format_version is 4; this program compares 1 to 2"),
        ('{"format": "ringseat-result", "format_version": 1}', "required property"),
        ("[" * 200_000, "cannot be read as JSON"),
    ],
)
def test_a_file_that_is_no_result_is_named(tmp_path, text, words):
    good = tmp_path / "good.result.json"
    good.write_text(result_text(review(loose())), encoding="utf-8")
    bad = tmp_path / "bad.json"
    bad.write_text(text, encoding="utf-8")
    for pair in ((good, bad), (bad, good)):
        with pytest.raises(ComparisonError) as error:
            compare_files(*pair)
        assert str(bad) in str(error.value) and words in str(error.value)


def test_a_file_that_is_not_there_is_named(tmp_path):
    with pytest.raises(ComparisonError, match=r"none\.json: cannot be opened"):
        compare_files(tmp_path / "none.json", tmp_path / "none.json")


@pytest.mark.parametrize("version", [1, 2])
def test_a_result_of_an_earlier_format_version_is_compared(tmp_path, version):
    """A result of today as it was written then: every assessment with all that its clause shares."""
    from linter.reading import read_table
    from linter.review.records import review_reading

    sample = Path(linter.__file__).parents[1] / "sample_exports" / "coolant-pump.csv"
    result = review_reading(read_table(sample, shown_as=sample.name), load("2026.3"))
    new = tmp_path / "new.result.json"
    new.write_text(result_text(result), encoding="utf-8")
    content = json.loads(result_text(result))
    content["format_version"] = version
    del content["clauses"]
    for part in (*content["machines"], *content["stations"]):
        del part["places"]
    for entry, record in zip(content["assessments"], result.assessments, strict=True):
        rest = {"missing": [], "assumed": [], "clears_with": [], "concession": None, "remedy": "", "follows": None}
        entry.update({**rest, **entry})
        entry["sources"] = list(record.sources)
        keys = ("symbol", "meaning", "value", "unit", "formula")
        entry["working"] = [{key: getattr(line, key) for key in keys} for line in record.working]
        entry["places"] = [{"parameter": used.parameter, **used.place.as_dict()} for used in record.places]
    if version == 1:
        del content["needed"]
        for key in ("complete", "undecided_passes", "undecided", "assumed", "loosened"):
            del content["summary"][key]
        for entry in content["assessments"]:
            del entry["follows"]
    old = tmp_path / "old.result.json"
    old.write_text(json.dumps(content), encoding="utf-8")
    comparison = compare_files(old, new)
    assert comparison.differences == () and comparison.old.gate == comparison.new.gate == result.gate
    met = next(entry for entry in content["assessments"] if entry["outcome"] == "met")
    met.update(outcome="finding", severity="major")
    old.write_text(json.dumps(content), encoding="utf-8")
    assert [difference.kind for difference in compare_files(old, new).differences] == ["cleared"]
