"""Versions side by side: frozen ones never change, the newest is the default, and what changed is said.

``python tests/rulebook/test_versions.py`` writes the golden results anew, as long as a version is not frozen.
"""

import json
import shutil
from pathlib import Path

import pytest
from attrs import evolve

from linter.model.packaged import data_folder
from linter.reading import read_table
from linter.report.handbook_text import difference_text
from linter.report.result_json import result_text
from linter.review.records import review_reading
from linter.rulebook import load as rulebook
from linter.rulebook import model as rulebook_model
from linter.rulebook import release as rulebook_release
from linter.rulebook.load import folder_hash, load, recorded_hashes, released_versions
from linter.rulebook.model import RulebookError

GOLDEN = Path(__file__).parents[1] / "golden"
TABLE = GOLDEN / "seats.csv"
VERSIONS = released_versions()


def _golden(version: str) -> Path:
    return GOLDEN / f"seats.{version}.result.json"


def _text(version: str, clauses: set[str] | None = None) -> str:
    """The result file of the golden table, without the version of the program."""
    book = load(version)
    if clauses is not None:
        book = evolve(book, clauses={name: clause for name, clause in book.clauses.items() if name in clauses})
    result = review_reading(read_table(TABLE, shown_as=TABLE.name), book)
    return result_text(evolve(result, tool_version="-"))


@pytest.mark.parametrize("version", VERSIONS)
def test_result_is_the_golden_one_byte_for_byte(version):
    """A frozen version: to the last byte. One still written: for the clauses it had, whatever its own hash."""
    wanted = _golden(version).read_text("utf-8")
    if version in recorded_hashes():
        assert _text(version) == wanted
    else:
        stored = json.loads(wanted)
        text = _text(version, {a["clause"] for a in stored["assessments"]})
        assert text.replace(load(version).sha256, stored["rulebook"]["sha256"]) == wanted


def test_frozen_versions_are_what_was_recorded():
    for version, digest in recorded_hashes().items():
        assert folder_hash(data_folder("ruleset") / version) == digest, version


def test_newest_version_is_the_default():
    assert load().version == VERSIONS[-1]
    assert load() is load(VERSIONS[-1])


@pytest.fixture
def rulesets(tmp_path, monkeypatch):
    """A copy of the ruleset folder that the program takes for its own."""
    copy = tmp_path / "ruleset"
    shutil.copytree(data_folder("ruleset"), copy)

    def folder(name):
        return copy if name == "ruleset" else data_folder(name)

    for module in (rulebook, rulebook_model, rulebook_release):
        monkeypatch.setattr(module, "data_folder", folder)
    rulebook._released.cache_clear()
    yield copy
    rulebook._released.cache_clear()


def test_an_older_version_gives_the_same_whether_or_not_a_newer_one_exists(rulesets):
    beside = _text("2026.1")
    for newer in VERSIONS[1:]:
        shutil.rmtree(rulesets / newer)
    rulebook._released.cache_clear()
    assert released_versions() == ["2026.1"] and load().version == "2026.1"
    assert _text("2026.1") == beside


def test_the_two_versions_disagree_where_they_should():
    old, new = (json.loads(_text(version, {"speed.factor"})) for version in ("2026.1", "2026.2"))
    assert [a["severity"] for a in old["assessments"]] == ["remark", "critical"]
    assert [a["severity"] for a in new["assessments"]] == ["minor", "critical"]
    assert old["rulebook"]["layers"] == [{"name": "ringseat", "version": "2026.1"}]
    assert [layer["version"] for layer in new["rulebook"]["layers"]] == ["2026.2", "2026.1"]
    assert new["rulebook"]["loosened"] == []


def test_compare_says_what_changed_in_words_and_numbers():
    assert (
        difference_text(load("2026.1"), load("2026.2"))
        == """\
from ringseat 2026.1 to ringseat 2026.2
reason: The speed gain of ceramic balls is held at the end that every source grants, whatever the
    kind of ball bearing.

speed.factor
  limit hybrid_factor: 1.25 -> 1.2, tighter
  limit hybrid_factor rests on: GMN-SPEED; BSA-HYBRID, read -> IS-HYBRID; GMN-SPEED; BSA-HYBRID,
      read
  limit hybrid_factor, note: ceramic balls; published 1.2 to 1.4 -> ceramic balls: 1.2 to 1.4
      (IS-HYBRID), 1.25 for spindle bearings (GMN-SPEED), 1.4 for large balls (BSA-HYBRID); the
      lower end is held
  source IS-HYBRID is new
  reason: The factor 1.25 was printed for spindle bearings; the clause judges ball bearings of every
      kind, and for these the published gain of ceramic balls begins at 20 %.
"""
    )


def test_the_third_version_adds_clauses_and_changes_none():
    old, new = load("2026.2").clauses, load("2026.3").clauses
    assert {name: new[name] for name in old} == dict(old)
    assert sorted(set(new) - set(old)) == [
        "preload.axial-demand", "preload.axial-play", "preload.disc-range", "rotor.seat-eccentricity",
        "shoulder.undercut",
    ]  # fmt: skip
    assert "preload.disc-range\n  is new, up to major:" in difference_text(load("2026.2"), load("2026.3"))


def test_compare_back_and_with_itself():
    back = difference_text(load("2026.2"), load("2026.1"))
    assert "limit hybrid_factor: 1.2 -> 1.25, looser" in back and "source IS-HYBRID is gone" in back
    assert "No clause, limit, step or text differs." in difference_text(load("2026.2"), load("2026.2"))


def test_freezing_records_the_hash_and_a_frozen_version_never_changes(rulesets):
    (rulesets / "released.toml").unlink(missing_ok=True)
    with pytest.raises(RulebookError, match=r"2026\.2 extends 2026\.1, which is not frozen yet"):
        rulebook_release.freeze("2026.2")
    digests = {version: rulebook_release.freeze(version) for version in VERSIONS}
    assert recorded_hashes() == digests
    before = load("2026.1").sha256
    rulebook._released.cache_clear()
    assert load("2026.1").sha256 == before
    assert rulebook_release.freeze("2026.1") == digests["2026.1"]
    changed = rulesets / "2026.1" / "tables" / "cage.csv"
    changed.write_bytes(changed.read_bytes() + b"\n")
    with pytest.raises(RulebookError, match="frozen with another hash; make a new version instead"):
        rulebook_release.freeze("2026.1")
    with pytest.raises(RulebookError, match=r"'2031\.1' is none of 2026\.1"):
        rulebook_release.freeze("2031.1")


def test_the_hash_ignores_line_ends_and_sees_everything_else(tmp_path):
    (tmp_path / "a.csv").write_bytes(b"x,y\n1,2\n")
    unix = folder_hash(tmp_path)
    (tmp_path / "a.csv").write_bytes(b"x,y\r\n1,2\r\n")
    assert folder_hash(tmp_path) == unix
    (tmp_path / "a.csv").write_bytes(b"x,y\n1,3\n")
    assert folder_hash(tmp_path) != unix
    (tmp_path / "a.csv").rename(tmp_path / "b.csv")
    assert folder_hash(tmp_path) != unix


if __name__ == "__main__":
    for name in VERSIONS:
        if name not in recorded_hashes():
            _golden(name).write_text(_text(name), "utf-8")
            print("written:", _golden(name).name)
