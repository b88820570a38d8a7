from io import StringIO
from xml.etree import ElementTree as ET

import pytest
from attrs import evolve
from junitparser import Error, JUnitXml, Skipped
from junitparser import Failure as Failed

from linter.model.findings import SEVERITIES, Failure, at_least
from linter.report.junit import junit_text


def read(result):
    """The report as an independent reader of the format sees it: by (suite, class name, clause)."""
    xml = JUnitXml.fromroot(ET.fromstring(junit_text(result, passes=True)))
    return xml, {(s.name, c.classname, c.name.split(":")[0]): c for s in xml for c in s}


def kinds(case) -> list:
    return [type(entry) for entry in case.result]


def test_one_suite_per_machine_and_one_case_per_assessment(sample):
    xml, cases = read(sample)
    assert [s.name for s in xml] == [m.machine for m in sample.machines]
    assert len(cases) == xml.tests == len(sample.assessments)
    for item in sample.assessments:
        where = item.machine if item.station is None else f"{item.machine}.{item.station}"
        assert (item.machine, where, item.clause) in cases


def test_counts_match_what_is_there(sample, hostile):
    for result in (sample, hostile, evolve(sample, complete_wanted=True)):
        xml, _ = read(result)
        told = (xml.tests, xml.failures, xml.errors, xml.skipped)
        for suite in xml:
            before = (suite.tests, suite.failures, suite.errors, suite.skipped)
            suite.update_statistics()
            assert before == (suite.tests, suite.failures, suite.errors, suite.skipped)
        assert told == tuple(sum(getattr(s, k) for s in xml) for k in ("tests", "failures", "errors", "skipped"))


@pytest.mark.parametrize("gate", SEVERITIES)
def test_findings_at_or_above_the_gate_fail_and_the_others_are_told(sample, gate):
    result = evolve(sample, gate_severity=gate)
    _, cases = read(result)
    for item in result.assessments:
        where = item.machine if item.station is None else f"{item.machine}.{item.station}"
        case = cases[item.machine, where, item.clause]
        if item.outcome == "finding" and at_least(item.severity, gate):
            assert kinds(case) == [Failed]
            assert case.result[0].type == item.severity and case.result[0].message == item.message
            assert case.system_out is None
        elif item.outcome in ("finding", "conceded"):
            assert case.result == [] and item.message in case.system_out and item.severity in case.system_out


def test_failure_says_cell_figures_and_change(sample):
    _, cases = read(sample)
    text = cases["blower", "blower.A", "fit.shaft-class"].result[0].text
    for part in (
        "Seats D14",
        "4 h5",
        "observed −5\u00a0µm",
        "at least 0\u00a0µm",
        "h5 -> k5",
        "Give the shaft seat k5",
    ):
        assert part in text


def test_not_assessed_is_skipped_or_an_error(sample):
    key = ("blower", "blower", "life.rating")
    _, cases = read(sample)
    assert kinds(cases[key]) == [Skipped]
    assert cases[key].result[0].message == "not assessed: the table does not state required life."
    _, cases = read(evolve(sample, complete_wanted=True))
    assert kinds(cases[key]) == [Error]
    _, cases = read(evolve(sample, failures=(Failure("life.rating", "life.rating could not be run (ValueError: no)"),)))
    assert kinds(cases[key]) == [Error]
    assert kinds(cases["blower", "blower.A", "speed.seal"]) == [Skipped]


def test_conceded_stays_visible(sample):
    _, cases = read(sample)
    case = cases["blower", "blower.B", "speed.factor"]
    assert case.result == [] and "conceded by K-7" in case.system_out
    for suite in ET.fromstring(junit_text(sample)):
        assert "concession K-3, expired" in suite.findtext("system-out")


def test_closed_gate_is_never_green_and_open_gate_never_red(sample):
    only_open = tuple(a for a in sample.assessments if a.severity not in ("critical", "major"))
    table_only = tuple(a for a in sample.assessments if a.clause.startswith("table."))
    unknown = tuple(a for a in sample.assessments if a.outcome in ("not assessed", "not applicable"))
    for result in (
        sample,
        evolve(sample, assessments=only_open),
        evolve(sample, assessments=only_open, complete_wanted=True),
        evolve(
            sample,
            assessments=only_open,
            failures=(Failure("speed.seal", "speed.seal could not be run (ValueError: no)"),),
        ),
        evolve(sample, assessments=unknown),
        evolve(sample, assessments=table_only),
        evolve(sample, assessments=(), machines=()),
        *(evolve(sample, gate_severity=s) for s in SEVERITIES),
    ):
        xml, _ = read(result)
        assert result.gate == "closed" or not result.nothing_assessed
        assert (result.gate == "closed") == (xml.failures + xml.errors > 0)


def test_characters_that_xml_forbids_are_shown(hostile):
    text = junit_text(hostile, passes=True)
    assert "a␀b␛[31mred␇" in text and "[U+D800]" in text and "[U+202E]" in text
    assert text.encode("utf-8")
    assert ET.parse(StringIO(text)).getroot().tag == "testsuites"
    xml, _ = read(hostile)
    assert sum(len(list(s)) for s in xml) == len(hostile.assessments) + len(hostile.failures)


def test_same_bytes_and_no_time(sample):
    assert junit_text(sample) == junit_text(sample)
    assert "timestamp" not in junit_text(sample) and " time=" not in junit_text(sample)


def test_what_is_met_is_one_case_of_each_machine_unless_asked_for(sample):
    xml = JUnitXml.fromroot(ET.fromstring(junit_text(sample)))
    told = [a for a in sample.assessments if a.outcome not in ("met", "not applicable")]
    assert xml.tests == len(told) + len(sample.machines)
    for suite in xml:
        names = [case.name for case in suite]
        assert names[-1] == "clauses: 1 met, 2 not applicable" and list(suite)[-1].result == []
    whole, _ = read(sample)
    assert (xml.failures, xml.errors) == (whole.failures, whole.errors)
    met = tuple(evolve(a, clause="speed.factor") for a in sample.assessments if a.outcome == "met")
    assert JUnitXml.fromroot(ET.fromstring(junit_text(evolve(sample, assessments=met)))).tests == len(sample.machines)
