"""Releases side by side, and the rulebook in the making: nothing released changes, and what changes has its reason."""

import json
import shutil
from itertools import pairwise

import pytest
from attrs import evolve

from linter.model.packaged import data_folder
from linter.report.handbook_text import difference_text
from linter.review.cases import worked_cases
from linter.rulebook import load as rulebook
from linter.rulebook import release
from linter.rulebook.differences import changed_clauses, differences
from linter.rulebook.load import archive, before, changes, from_content, load, released_versions, stated_cases
from linter.rulebook.model import RulebookError, content_of

VERSIONS = released_versions()
#: Identity of each release: SHA-256 of its canonical JSON. They never change again.
IDENTITY = {
    "2026.1": "05c62c4f916c8338cb04cd3dd4e1630c4e7250d73f6325d5f094d2cb7c337d97",
    "2026.2": "9f38f88513ae36ef5a2520e203998873be4eaf4db00f24e44704920969e061f0",
    "2026.3": "5f340b679d60406cc2c9619a7f4abb857a686bdf5679ba88347a94188d697399",
    "2026.4": "0e79e87db73099046545510deb2f17ca6e89be334b923ad41aa8b74c8abe8439",
    "2026.5": "a1e6991f1d1297e5d3e0a8cd2187760e0c6fde23f88c36a88f985a46168f1ee1",
    "2026.6": "ffeb878119c559793eca4d0b1a45cf367a1af6262e4e8cdef0c8a93af4dbe610",
    "2026.7": "9ec6a2215e31d34abdc5f6e4bfbb41ee7e2c82e7be742282c8fe9177a05c23b9",
}


@pytest.mark.parametrize("version", VERSIONS)
def test_a_release_is_what_was_released(version):
    book = load(version)
    assert book.version == version
    assert version in IDENTITY, f'a new release: add "{version}": "{book.sha256}" to IDENTITY here'
    assert book.sha256 == archive(version)["sha256"] == IDENTITY[version]


@pytest.mark.parametrize("name", [*VERSIONS, "current"])
def test_the_file_of_a_release_gives_back_an_equal_rulebook(name):
    book, cases = load(name), stated_cases(name)
    text = release.archive_text(book, cases)
    stored = json.loads(text)
    again = from_content(stored["rulebook"])
    assert again.sha256 == book.sha256
    assert content_of(again) == content_of(book)
    assert list(again.clauses) == list(book.clauses)
    for old, new in zip(book.clauses.values(), again.clauses.values(), strict=True):
        assert list(old.limits) == list(new.limits) and list(old.messages) == list(new.messages)
        assert old.steps == new.steps and old.needs == new.needs
        assert [t.rows for t in old.tables.values()] == [t.rows for t in new.tables.values()]
    assert tuple(stored["cases"]) == cases
    if name in VERSIONS:
        assert (data_folder("ruleset") / "released" / f"{name}.json").read_text(encoding="utf-8") == text


def test_newest_release_is_the_default():
    assert load().version == VERSIONS[-1]
    assert load() is load(VERSIONS[-1])


def test_a_newer_release_keeps_every_id():
    for old, new in pairwise([*VERSIONS, "current"]):
        assert set(load(old).clauses) <= set(load(new).clauses)


def test_an_old_release_keeps_its_worked_cases():
    for version, count in (("2026.1", 454), ("2026.2", 456), ("2026.3", 503)):
        book = load(version)
        assert sum(len(worked_cases(book, name)) for name in book.clauses) == len(stated_cases(version)) == count
    old, new = (worked_cases(load(version), "speed.factor") for version in ("2026.1", "2026.2"))
    assert old != new


# --- the rulebook in the making ---------------------------------------------------------------------------------------


def test_every_difference_to_the_last_release_has_its_reason_and_no_reason_is_stale():
    book = load("current")
    last = before(book.version)
    assert last is not None
    bare, stale = release.unexplained(last, book, changes())
    assert bare == [], "say in ruleset/current/changes.toml why these clauses differ from the release before"
    assert stale == [], "these reasons in ruleset/current/changes.toml have no difference"
    assert set(changes()) <= set(changed_clauses(last, book))


def test_what_changed_is_told_clause_by_clause():
    book = load("current")
    last = before(book.version)
    assert last is not None
    assert {name for name, _ in differences(last, book)} == set(changed_clauses(last, book))
    assert {name: book.reasons[name] for name in changes()} == changes()


def test_once_released_the_version_in_the_making_is_the_released_one():
    """Work on the next release begins with a new version in ``ruleset/current/rulebook.toml``."""
    book = load("current")
    if book.version in VERSIONS:
        assert book.sha256 == load(book.version).sha256
        assert stated_cases("current") == stated_cases(book.version)
    else:
        assert rulebook.version_key(book.version) > rulebook.version_key(VERSIONS[-1])


def test_every_source_of_the_rulebook_in_the_making_is_used():
    book = load("current")
    named = set()
    for clause in book.clauses.values():
        named |= {*clause.sources, *(key for limit in clause.limits.values() for key in limit.source.split("; "))}
        for table in clause.tables.values():
            column = table.columns.index("source")
            named |= {key for row in table.rows for key in row[column].split("; ")}
    assert set(book.sources) == named - {"common practice"}


# --- comparing --------------------------------------------------------------------------------------------------------


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


def test_the_third_release_adds_clauses_and_changes_none():
    old, new = load("2026.2"), load("2026.3")
    assert set(changed_clauses(old, new)) == set(new.clauses) - set(old.clauses)
    assert sorted(set(new.clauses) - set(old.clauses)) == [
        "preload.axial-demand", "preload.axial-play", "preload.disc-range", "rotor.seat-eccentricity",
        "shoulder.undercut",
    ]  # fmt: skip
    assert "preload.disc-range\n  is new, up to major:" in difference_text(old, new)


def test_compare_back_and_with_itself():
    back = difference_text(load("2026.2"), load("2026.1"))
    assert "limit hybrid_factor: 1.2 -> 1.25, looser" in back and "source IS-HYBRID is gone" in back
    assert "No clause, limit, step or text differs." in difference_text(load("2026.2"), load("2026.2"))


@pytest.mark.parametrize("part", ["title", "level", "check", "picture", "needs", "remedy"])
def test_no_part_of_a_clause_changes_in_silence(part):
    book = load("2026.3")
    clause = book.clauses["speed.factor"]
    value = ("duty",) if part == "needs" else "else"
    other = evolve(book, clauses={**book.clauses, clause.id: evolve(clause, **{part: value})})
    assert changed_clauses(book, other) == ["speed.factor"]
    assert [name for name, _ in differences(book, other)] == ["speed.factor"]


# --- releasing --------------------------------------------------------------------------------------------------------


@pytest.fixture
def rulesets(tmp_path, monkeypatch):
    """A copy of the ruleset folder that the program takes for its own."""
    copy = tmp_path / "ruleset"
    shutil.copytree(data_folder("ruleset"), copy)

    def folder(name):
        return copy if name == "ruleset" else data_folder(name)

    def forget():
        for cached in (rulebook.archive, rulebook._released, rulebook._current):
            cached.cache_clear()

    for module in (rulebook, release):
        monkeypatch.setattr(module, "data_folder", folder)
    forget()
    head = copy / "current" / "rulebook.toml"
    text = head.read_text(encoding="utf-8")
    head.write_text(text.replace(f'version = "{load("current").version}"', 'version = "2031.1"'), encoding="utf-8")
    (copy / "current" / "changes.toml").write_text("", encoding="utf-8")
    forget()
    yield copy, forget
    forget()


def _edit(folder, name, old, new):
    path = folder / "current" / name
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


def _explain(folder):
    """A reason for every difference that the copy has to the release before it."""
    book = load("current")
    names = changed_clauses(before(book.version), book)
    text = "".join(f'"{name}" = "because"\n' for name in names)
    (folder / "current" / "changes.toml").write_text(text, encoding="utf-8")


def test_releasing_freezes_the_whole_rulebook(rulesets):
    folder, forget = rulesets
    before_it = f"lip_speed_low = {{ value = {load('current').clauses['speed.seal'].limits['lip_speed_low'].value:g},"
    _edit(folder, "clauses/speed.toml", before_it, "lip_speed_low = { value = 9,")
    forget()
    _explain(folder)
    forget()
    digest = release.freeze()
    assert released_versions() == [*VERSIONS, "2031.1"]
    assert load().version == "2031.1" and load().sha256 == digest
    assert load().reasons["speed.seal"] == "because"
    assert load().clauses["speed.seal"].limits["lip_speed_low"].value == 9
    assert release.freeze() == digest
    golden = folder / "released" / "2031.1.golden.csv"
    assert golden.read_bytes() == (folder / "current" / "golden.csv").read_bytes()
    assert [layer.version for layer in load().layers] == ["2031.1"]
    text = difference_text(load(VERSIONS[-1]), load())
    lip = load(VERSIONS[-1]).clauses["speed.seal"].limits["lip_speed_low"].value
    assert f"lip_speed_low: {lip}\u00a0m/s -> 9\u00a0m/s, tighter" in text and "reason: because" in text


def test_a_difference_without_reason_is_not_released(rulesets):
    folder, forget = rulesets
    _explain(folder)
    _edit(folder, "clauses/speed.toml", "share_near = { value = 1.0", "share_near = { value = 0.9")
    reasons = folder / "current" / "changes.toml"
    lines = reasons.read_text(encoding="utf-8").splitlines(keepends=True)
    reasons.write_text("".join(line for line in lines if "speed.ball-inertia" not in line), encoding="utf-8")
    forget()
    with pytest.raises(RulebookError, match=r"changes\.toml: say why these clauses differ: .*speed\.ball-inertia"):
        release.freeze()
    assert released_versions() == VERSIONS


def test_a_reason_without_difference_is_not_released(rulesets):
    folder, forget = rulesets
    _explain(folder)
    with (folder / "current" / "changes.toml").open("a", encoding="utf-8") as stream:
        stream.write('"speed.seel" = "because"\n')
    forget()
    with pytest.raises(RulebookError, match=r"changes\.toml: these clauses do not differ: speed\.seel"):
        release.freeze()


@pytest.mark.parametrize("reason", ['""', "1", "[]"])
def test_a_reason_is_told_in_words(rulesets, reason):
    folder, forget = rulesets
    (folder / "current" / "changes.toml").write_text(f'"speed.seal" = {reason}\n', encoding="utf-8")
    forget()
    with pytest.raises(RulebookError, match=r"changes\.toml: clause speed\.seal: a reason in words is expected"):
        load("current")


def test_a_clause_without_golden_verdict_is_not_released(rulesets):
    folder, forget = rulesets
    _explain(folder)
    path = folder / "current" / "golden.csv"
    lines = path.read_text(encoding="utf-8").splitlines(keepends=True)
    path.write_text("".join(line for line in lines if not line.startswith("life.film,")), encoding="utf-8")
    forget()
    with pytest.raises(RulebookError, match=r"no verdict in the golden tables \(tests/golden\): life\.film"):
        release.freeze()
    path.unlink()
    with pytest.raises(RulebookError, match=r"no verdict in the golden tables .*table\.identity"):
        release.freeze()


def test_a_release_is_never_written_over_and_versions_only_rise(rulesets):
    folder, forget = rulesets
    _edit(folder, "rulebook.toml", '"2031.1"', '"2026.2"')
    forget()
    with pytest.raises(RulebookError, match=r"2026\.2 is released with other content; give this one a new version"):
        release.freeze()
    _edit(folder, "rulebook.toml", '"2026.2"', '"2026.1.5"')
    forget()
    with pytest.raises(RulebookError, match=r"2026\.1\.5 is not newer than"):
        release.freeze()


@pytest.mark.parametrize("text", ["", "{", "[]", "{}", '{"rulebook": {"name": "x"}}', '{"rulebook": []}'])
def test_a_release_that_cannot_be_read_is_refused(rulesets, text):
    folder, forget = rulesets
    (folder / "released" / "2026.1.json").write_text(text, encoding="utf-8")
    forget()
    with pytest.raises(RulebookError, match=r"^2026\.1\.json: "):
        load("2026.1")


def test_an_older_release_is_the_same_whether_or_not_a_newer_one_exists(rulesets):
    folder, forget = rulesets
    for newer in VERSIONS[1:]:
        (folder / "released" / f"{newer}.json").unlink()
    forget()
    assert released_versions() == ["2026.1"] and load().version == "2026.1"
    assert load().sha256 == IDENTITY["2026.1"]
