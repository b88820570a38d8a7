from attrs import evolve

from linter.model.findings import Needed
from linter.model.places import Place
from linter.report.html import html_text
from linter.report.verdict import gate_reasons, rests_on, summary_line


def undecided(sample, **changes):
    """The sample without findings that close it; what is not assessed must be judged."""
    kept = [evolve(a, must=a.outcome == "not assessed") for a in sample.assessments if a.outcome != "finding"]
    wanted = [
        Needed("required_life", "fan", None, Place("t.csv", None, "F2"), "", ("life.rating",)),
        Needed("cage", "fan", "A", None, "row 3", ("speed.cage", "speed.cage-temperature")),
    ]
    wanted += [Needed("closure", "fan", station, None, "", ("speed.seal",)) for station in "AB"]
    return evolve(sample, assessments=tuple(kept), needed=tuple(wanted), **changes)


def test_an_undecided_gate_names_the_values_that_most_waits_for(sample, rulebook):
    result = undecided(sample)
    assert result.gate == "undecided"
    line = summary_line(result)
    assert (
        "4 values would decide it: cage of fan A (row 3), required_life of fan (F2), closure of fan A and 1 more"
        in line
    )
    page = html_text(result, rulebook)
    assert "must be judged could not be" in gate_reasons(result)[0] and gate_reasons(result)[0].split(",")[0] in page
    assert "undecided passes as asked" in summary_line(undecided(sample, undecided_passes=True))


def test_a_decided_gate_says_what_it_rests_on(sample):
    pieces = rests_on(sample)
    assert "1 limit loosened or switched off by a layer" in pieces and "not used: paint" in pieces
    assert not any("would decide" in piece for piece in pieces)
    assumed = sum(bool(a.assumed) for a in sample.assessments)
    held = evolve(
        sample, assessments=tuple(evolve(a, must=True, outcome="met") for a in sample.assessments if a.assumed)
    )
    assert assumed and held.carried > 0 and any(f"rests on {held.carried} assumed" in piece for piece in rests_on(held))
