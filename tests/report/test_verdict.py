from attrs import evolve

from linter.model.findings import Assumed, Needed
from linter.model.places import Place
from linter.model.reviewed import ConcessionNote
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
    assert "undecided passes, as asked" in summary_line(undecided(sample, undecided_passes=True))


def test_the_result_file_lists_what_must_be_judged_and_could_not_be(sample):
    result = undecided(sample)
    listed = result.as_dict()["summary"]["undecided"]
    wanted = [a for a in result.assessments if a.must and a.outcome == "not assessed"]
    assert wanted and [tuple(entry) for entry in listed] == [("clause", "machine", "station", "missing")] * len(wanted)
    assert [tuple(entry.values())[:3] for entry in listed] == [(a.clause, a.machine, a.station) for a in wanted]
    assert [entry["missing"] for entry in listed] == [list(a.missing) for a in wanted]


def test_an_assumed_value_counts_once_for_each_station_and_once_for_a_machine(sample):
    one = evolve(sample.assessments[0], must=True, outcome="met", severity=None, machine="fan")

    def carried(name: str, **changes) -> int:
        assumed = (Assumed(name, 1.0, "", "for a reason"),)
        both = [evolve(one, station=station, assumed=assumed, **changes) for station in ("A", "B", "B")]
        return evolve(sample, assessments=tuple(both)).carried

    assert carried("ball_material") == 2
    assert carried("speed_operating") == carried("speed_max") == 1
    assert carried("of_no_vocabulary") == 2
    assert carried("ball_material", must=False) == carried("ball_material", outcome="not assessed") == 0


def test_a_decided_gate_says_what_it_rests_on(sample):
    pieces = rests_on(sample)
    assert "1 limit loosened or switched off by a layer" in pieces and "not used: paint" in pieces
    assert not any("would decide" in piece for piece in pieces)
    assumed = sum(bool(a.assumed) for a in sample.assessments)
    held = evolve(
        sample, assessments=tuple(evolve(a, must=True, outcome="met") for a in sample.assessments if a.assumed)
    )
    assert assumed and held.carried > 0 and any(f"rests on {held.carried} assumed" in piece for piece in rests_on(held))


def test_concessions_that_do_not_count_and_clauses_left_out_are_told_on_the_line(sample):
    states = ("applied", "expired", "unused", "exceeded", "other revision")
    notes = tuple(ConcessionNote(f"C-{k}", state, f"why {k}") for k, state in enumerate(states))
    line = summary_line(evolve(sample, concessions=notes, left_out=("fit.grade", "fit.free-ring")))
    assert "concessions not applied: C-1 expired (why 1), C-2 unused (why 2), C-3 exceeded (why 3) and 1 more" in line
    assert "; 2 clauses left out as asked;" in line and "C-0" not in line
    one = summary_line(evolve(sample, concessions=notes[:2], left_out=("fit.grade",)))
    assert "C-1 expired (why 1);" in one and "; 1 clause left out as asked;" in one
