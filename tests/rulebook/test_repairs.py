"""What repairs a clause: stated by the rulebook in the making, packaged for the releases, derived for any other."""

import tomllib

import pytest
from attrs import evolve

from linter.model.packaged import data_folder
from linter.model.vocabulary import parameter
from linter.rulebook.load import load, released_versions
from linter.rulebook.model import RulebookError
from linter.rulebook.repairs import Repair, repairs, repairs_of

PACKAGED = tomllib.loads((data_folder("ruleset") / "repairs.toml").read_text(encoding="utf-8"))


def test_the_packaged_lists_are_those_of_the_rulebook_in_the_making() -> None:
    stated = {clause.id: list(clause.repairs) for clause in load("current").clauses.values()}
    assert {name: stated.get(name) for name in PACKAGED} == PACKAGED


@pytest.mark.parametrize("version", [*released_versions(), "current"])
def test_every_repair_can_be_moved_and_moves_what_the_clause_looks_at(version: str) -> None:
    for clause in load(version).clauses.values():
        for repair in repairs(clause):
            assert parameter(repair.name).kind != "text", (clause.id, repair)
            if version == "current":
                assert repair.name in (*clause.needs, *clause.uses), (clause.id, repair)


def test_no_repair_is_a_decision_but_for_the_form_of_an_undercut() -> None:
    words = {
        repair.name
        for clause in load("current").clauses.values()
        for repair in repairs(clause)
        if parameter(repair.name).kind == "choice"
    }
    assert words == {"shaft_undercut_form", "housing_undercut_form"}


def test_a_clause_that_stands_nowhere_is_repaired_by_its_sizes_and_tolerances() -> None:
    clause = evolve(load("2026.4").clauses["fit.grade"], id="firm.own", repairs=())
    assert [r.name for r in repairs(clause)] == ["shaft_seat_diameter", "housing_seat_diameter"]


def test_a_way_is_read_off_its_seat() -> None:
    assert Repair("shaft_seat_diameter", "tighter") in repairs(load("2026.4").clauses["fit.inner-hold"])


@pytest.mark.parametrize(
    ("stated", "said"),
    [
        (["shaft_seat_diametre"], "is shaft_seat_diameter meant"),
        (["tighter axial_float"], "axial_float is none"),
        (["spacer_stack"], "is a text"),
        (["axial_float", "axial_float"], "stands twice"),
    ],
)
def test_a_wrong_repair_is_refused_by_name(stated: list[str], said: str) -> None:
    with pytest.raises(RulebookError, match=said):
        repairs_of("fit.toml", "fit.axial-float", stated)
