from attrs import evolve

from linter.model.findings import Change, Used
from linter.model.places import Place
from linter.report.cells import cells_to_change, sentence, what_to_change


def used(name: str, cell: str) -> Used:
    return Used(name, Place("fan.csv", None, cell), "x")


def finding(sample, **more):
    item = next(i for i in sample.assessments if i.clause == "fit.shaft-class")
    places = (used("speed_max", "A2"), used("shaft_seat_diameter", "B2"), used("ball_diameter", "C2"))
    return evolve(item, **{"places": places, "clears_with": (), "remedy": "", **more})


def cells(item) -> list[str]:
    return [u.place.cell for u in cells_to_change(item)]


def test_a_change_that_clears_names_the_cell_before_the_remedy_does(sample):
    change = Change("shaft_seat_diameter", "k5", "", "h5 -> k5", True)
    assert cells(finding(sample, clears_with=(change,), remedy="Lower speed_max.")) == ["B2"]
    assert cells(finding(sample, remedy="Lower speed_max or enlarge ball_diameter.")) == ["A2", "C2"]
    assert cells(finding(sample, remedy="Lower the speed_max_wanted.")) == ["A2", "B2", "C2"]
    assert cells(finding(sample)) == ["A2", "B2", "C2"]


def test_what_is_not_stated_has_no_cell(sample):
    assert cells(finding(sample, remedy="State housing_seat_runout.")) == []


def test_changes_in_words(sample):
    changes = (
        Change("shaft_seat_diameter", "k5", "", "shaft seat diameter (A): h5 -> k5", True, 1),
        Change("balance_grade", 2.5, "mm/s", "6.3 -> 2.5", True, 3),
    )
    assert what_to_change(finding(sample, clears_with=changes, remedy="See the drawing")) == (
        "In the plan: line 1, shaft seat diameter (A): h5 -> k5; line 3, balance grade: 6.3 -> 2.5. See the drawing."
    )
    assert what_to_change(finding(sample)) == ""


def test_sentences_end_once():
    assert [sentence(t) for t in ("", "a", "a.", "a. ", "a?")] == ["", "a.", "a.", "a. ", "a?"]
