"""The rulebook files: what holds for every clause that ships, and what is refused with file, clause and reason."""

import json
import shutil
import tomllib
from pathlib import Path

import numpy as np
import pytest
from jsonschema import Draft202012Validator

from linter.checks.lookup import check_function
from linter.checks.shared.base import Result, View
from linter.model.packaged import data_folder
from linter.model.stations import stations_from_rows
from linter.model.vocabulary import vocabulary
from linter.review.cases import case_stations, worked_cases
from linter.rulebook.load import load, released_versions
from linter.rulebook.model import PROVENANCES, Limits, RulebookError
from linter.rulebook.trial import try_clauses, unknown_words

BOOK = load("current")
FOLDER = data_folder("ruleset") / "current"
SCHEMA = json.loads((data_folder("schemas") / "rulebook.schema.json").read_text(encoding="utf-8"))


def _errors(kind: str, path: Path) -> list[str]:
    content = tomllib.loads(path.read_text(encoding="utf-8"))
    return [e.message for e in Draft202012Validator({**SCHEMA, "$ref": f"#/$defs/{kind}"}).iter_errors(content)]


def test_the_schema_is_a_schema():
    Draft202012Validator.check_schema(SCHEMA)


def test_every_file_follows_the_schema():
    assert not _errors("rulebook", FOLDER / "rulebook.toml")
    assert not _errors("sources", FOLDER / "sources.toml")
    assert not _errors("changes", FOLDER / "changes.toml")
    files = sorted((FOLDER / "clauses").glob("*.toml"))
    assert files
    assert [e for path in files for e in _errors("clauses", path)] == []


def test_ids_and_titles_are_unique_over_all_files():
    files = (FOLDER / "clauses").glob("*.toml")
    ids = [c["id"] for path in files for c in tomllib.loads(path.read_text("utf-8"))["clauses"]]
    assert len(ids) == len(set(ids))
    titles = [c.title for c in BOOK.clauses.values()]
    assert len(titles) == len(set(titles))


def test_every_table_file_belongs_to_a_clause():
    used = {table.file for clause in BOOK.clauses.values() for table in clause.tables.values()}
    assert {path.name for path in (FOLDER / "tables").glob("*")} == used


@pytest.mark.parametrize("version", released_versions())
def test_clauses_of_a_release_still_run(version):
    book = load(version)
    try_clauses(book, dict.fromkeys(book.clauses, f"{version}.json"))


@pytest.mark.parametrize("name", list(BOOK.clauses))
def test_clause(name):
    """Check, parameters, sources, provenance and texts of one clause."""
    clause = BOOK.clauses[name]
    view = View(stations_from_rows([{"station": "A"}, {"station": "B"}]))
    result = check_function(clause.check)(view, Limits(clause))
    assert isinstance(result, Result)
    assert unknown_words(clause, result) == []
    assert set(clause.needs) | set(clause.uses) <= set(vocabulary())
    assert not set(clause.needs) & set(clause.uses)
    named = [*clause.sources]
    for key, limit in clause.limits.items():
        assert limit.provenance in PROVENANCES, key
        assert (limit.source == "common practice") <= (limit.provenance in ("common practice", "derived")), key
        named += limit.source.split("; ")
    for table in clause.tables.values():
        for row in table.rows:
            cells = dict(zip(table.columns, row, strict=True))
            assert cells["provenance"] in PROVENANCES, (table.file, row)
            named += cells["source"].split("; ")
        assert set(table.looser) <= set(table.columns)
    assert set(named) - {"common practice"} <= set(BOOK.sources)


class _Noted(Limits):
    """Limits that note what a check reads."""

    def __init__(self, clause):
        super().__init__(clause)
        self.read = set()

    def __getitem__(self, name):
        self.read.add(name)
        return super().__getitem__(name)

    def get(self, name, default=None):
        self.read |= {name} & {*self._clause.limits}
        return super().get(name, default)

    def table(self, name):
        self.read.add(name)
        return super().table(name)


@pytest.mark.parametrize("name", list(BOOK.clauses))
def test_every_limit_and_table_is_read(name):
    clause = BOOK.clauses[name]
    noted = _Noted(clause)
    for case in worked_cases(BOOK, name):
        with np.errstate(all="ignore"):
            result = check_function(clause.check)(View(case_stations(case)), noted).told()
            for fact in result.facts.values():  # texts are composed for the rows shown only
                if callable(fact):
                    for row in range(len(result.measure)):
                        fact(row)
    assert {*clause.limits, *clause.tables} == noted.read


# --- what is refused -----------------------------------------------------------------------------------------------

HEAD = """
name = "trial"
version = "1"
title = "Trial rulebook"
[[chapters]]
key = "speed"
title = "Speed"
purpose = "The trial."
"""
SOURCES = """
[MAKER]
title = "A maker's table"
edition = "2020"
"""
CLAUSE = """
[[clauses]]
id = "speed.cage-temperature"
title = "Cage holds the temperature"
level = "station"
check = "speed.cage_temperature"
question = "Does it hold?"
arithmetic = "temperature against its limit"
measure = "1 at the near end, 2 at the far end"
needs = ["cage", "operating_temperature"]
uses = ["temperature_max"]
steps = [{ above = 1.0, severity = "minor" }, { above = 2.0, severity = "major" }]
consequence = "It breaks."
remedy = "Choose another cage."
sources = ["MAKER"]
[clauses.messages]
finding = "{cage} at {observed} is above {upper}"
met = "{cage} at {observed} is within {upper}"
[clauses.limits]
cold_measure = { value = 1.5, source = "common practice", provenance = "common practice", looser = "lower" }
[clauses.tables]
cage = { file = "cage.csv", looser = { low = "higher", high = "higher" } }
"""
TABLE = """cage,low,high,coldest,source,provenance,note
polyamide,120,120,-40,MAKER,read,table 1
phenolic,120,149,,MAKER,read,table 1
"""


@pytest.fixture
def folder(tmp_path):
    made = tmp_path / "trial"
    (made / "clauses").mkdir(parents=True)
    (made / "tables").mkdir()
    (made / "rulebook.toml").write_text(HEAD, "utf-8")
    (made / "sources.toml").write_text(SOURCES, "utf-8")
    (made / "clauses" / "speed.toml").write_text(CLAUSE, "utf-8")
    (made / "tables" / "cage.csv").write_text(TABLE, "utf-8")
    return made


def _edit(path: Path, old: str, new: str) -> None:
    text = path.read_text("utf-8")
    assert old in text
    path.write_text(text.replace(old, new), "utf-8")


def _refused(folder: Path) -> tuple[str, str | None, str]:
    with pytest.raises(RulebookError) as caught:
        load(str(folder))
    error = caught.value
    assert error.file in str(error) and error.reason in str(error) and (error.clause or "") in str(error)
    return error.file, error.clause, error.reason


def test_the_trial_rulebook_itself_is_good(folder):
    book = load(str(folder))
    assert list(book.clauses) == ["speed.cage-temperature"]
    assert load(str(folder / "rulebook.toml")).sha256 == book.sha256


BREAKAGES = [
    # kind of breakage, file, old text, new text, file named, part of the reason
    ("unknown parameter", "clauses/speed.toml", '"temperature_max"', '"temperature_maks"',
     "speed.toml", "temperature_max"),
    ("unknown source", "clauses/speed.toml", 'sources = ["MAKER"]', 'sources = ["MAKR"]', "speed.toml", "'MAKR'"),
    ("unknown source of a row", "tables/cage.csv", "149,,MAKER", "149,,MAKR", "cage.csv", "row 3: source 'MAKR'"),
    ("blank source of a row", "tables/cage.csv", "149,,MAKER", "149,,", "cage.csv", "row 3: source ''"),
    ("unknown source of a limit", "clauses/speed.toml", 'source = "common practice"', 'source = "hearsay"',
     "speed.toml", "limit cold_measure"),
    ("steps not rising", "clauses/speed.toml", "above = 2.0", "above = 0.5", "speed.toml", "steps must rise"),
    ("steps not graver", "clauses/speed.toml", '"major"', '"remark"', "speed.toml", "steps must rise"),
    ("steps not a number", "clauses/speed.toml", "above = 2.0", "above = nan", "speed.toml", "nan"),
    ("missing table", "clauses/speed.toml", "cage.csv", "cages.csv", "speed.toml", "'cages.csv'"),
    ("table outside the folder", "clauses/speed.toml", "cage.csv", "../cage.csv", "speed.toml", "../cage.csv"),
    ("wrong provenance", "clauses/speed.toml", 'provenance = "common practice"', 'provenance = "rumour"',
     "speed.toml", "'rumour'"),
    ("wrong provenance of a row", "tables/cage.csv", "149,,MAKER,read", "149,,MAKER,heard",
     "cage.csv", "row 3: provenance 'heard'"),
    ("no provenance", "clauses/speed.toml", ', provenance = "common practice"', "",
     "speed.toml", "'provenance' is a required property"),
    ("limit without a value", "clauses/speed.toml", "value = 1.5, ", "",
     "speed.toml", "'value' is a required property"),
    ("limit not a number", "clauses/speed.toml", "value = 1.5", "value = inf", "speed.toml", "inf is not a number"),
    ("limit that the check misses", "clauses/speed.toml", "cold_measure =", "warm_measure =",
     "speed.toml", "no limit 'cold_measure'"),
    ("table that the check misses", "clauses/speed.toml", "cage = {", "cages = {", "speed.toml", "no table 'cage'"),
    ("column that the check misses", "tables/cage.csv", "coldest", "cold", "speed.toml", "cannot run: coldest"),
    ("ragged table", "tables/cage.csv", "149,,MAKER", "149,MAKER", "cage.csv", "row 3 has 6 cells"),
    ("column twice", "tables/cage.csv", "low,high", "low,low", "cage.csv", "columns differ"),
    ("no source column", "tables/cage.csv", "source,", "origin,", "cage.csv", "include source and provenance"),
    ("looser names no column", "clauses/speed.toml", 'high = "higher"', 'top = "higher"', "speed.toml", "'top'"),
    ("unknown check", "clauses/speed.toml", "speed.cage_temperature", "speed.cage_weather",
     "speed.toml", "no check 'speed.cage_weather'"),
    ("not a check", "clauses/speed.toml", "speed.cage_temperature", "quantities.mean_diameter",
     "speed.toml", "cannot run"),
    ("wrong level", "clauses/speed.toml", '"station"', '"machine"', "speed.toml", "each machine"),
    ("unknown key", "clauses/speed.toml", "question =", "quest =", "speed.toml", "quest"),
    ("unknown severity", "clauses/speed.toml", '"minor"', '"grave"', "speed.toml", "'grave'"),
    ("unknown word in a message", "clauses/speed.toml", "{upper}", "{ceiling}", "speed.toml", "{ceiling}"),
    ("no such chapter", "rulebook.toml", 'key = "speed"', 'key = "pace"', "speed.toml", "chapter"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("name", "old", "new", "file", "reason"), [c[1:] for c in BREAKAGES], ids=[c[0] for c in BREAKAGES]
)
def test_broken_clause_is_refused(folder, name, old, new, file, reason):
    _edit(folder / name, old, new)
    found = _refused(folder)
    assert found[:2] == (file, "speed.cage-temperature")
    assert reason in found[2]


def test_duplicate_id_is_refused(folder):
    shutil.copy(folder / "clauses" / "speed.toml", folder / "clauses" / "zeal.toml")
    assert _refused(folder) == (
        "zeal.toml",
        "speed.cage-temperature",
        "the id stands already in speed.toml; ids are unique",
    )


def test_duplicate_title_is_refused(folder):
    second = CLAUSE.replace("speed.cage-temperature", "speed.cage-heat")
    (folder / "clauses" / "zeal.toml").write_text(second, "utf-8")
    file, clause, reason = _refused(folder)
    assert (file, clause) == (
        "zeal.toml",
        "speed.cage-heat",
    ) and "its title is that of speed.cage-temperature" in reason


@pytest.mark.parametrize(
    ("name", "text", "reason"),
    [
        ("clauses/speed.toml", "[[clauses]\n", "cannot be read as TOML"),
        ("rulebook.toml", "name = ", "cannot be read as TOML"),
        ("rulebook.toml", f"name = {'[' * 100_000}{']' * 100_000}", "nested too deeply"),
        ("clauses/speed.toml", f"clauses = {'[' * 100_000}{']' * 100_000}", "nested too deeply"),
        ("rulebook.toml", HEAD.replace('version = "1"', "version = 1"), "version: 1 is not of type 'string'"),
        ("rulebook.toml", HEAD.replace("title", "titel", 1), "titel"),
        ("sources.toml", "[MAKER]\nedition = '2020'\n", "MAKER: 'title' is a required property"),
        ("sources.toml", "[MAKER]\ntitle = 'x'\nisbn = '1'\n", "isbn"),
        ("sources.toml", "['A maker']\ntitle = 'x'\n", "'A maker' does not match"),
        ("clauses/speed.toml", "clause = 1\n", "expected [[clauses]]"),
    ],
)
def test_broken_file_is_refused(folder, name, text, reason):
    (folder / name).write_text(text, "utf-8")
    file, clause, said = _refused(folder)
    assert (file, clause) == (Path(name).name, None) and reason in said


def test_table_that_is_not_text_is_refused(folder):
    (folder / "tables" / "cage.csv").write_bytes(b"cage,low\n\xff\xfe,1\n")
    assert _refused(folder)[2].startswith("cannot be read as CSV")


def test_table_with_a_header_only_is_refused(folder):
    (folder / "tables" / "cage.csv").write_text(TABLE.splitlines()[0], "utf-8")
    assert _refused(folder) == ("cage.csv", "speed.cage-temperature", "the table needs a header and at least one row")


def test_table_behind_a_link_is_refused(folder):
    shutil.move(folder / "tables" / "cage.csv", folder / "cage.csv")
    (folder / "tables" / "cage.csv").symlink_to(folder / "cage.csv")
    assert "is not a file of the folder tables" in _refused(folder)[2]


def test_extends_loop_is_refused(folder, tmp_path):
    other = tmp_path / "other"
    shutil.copytree(folder, other)
    for here, there in ((folder, "../other"), (other, "../trial")):
        (here / "rulebook.toml").write_text(f'extends = "{there}"\n' + HEAD, "utf-8")
    assert "extends itself by way of trial" in _refused(folder)[2]


def test_extends_nothing_known_is_refused(folder):
    (folder / "rulebook.toml").write_text('extends = "2019.9"\n' + HEAD, "utf-8")
    assert "extends '2019.9', which is neither a released version (2026.1" in _refused(folder)[2]


def test_unknown_rulebook_is_refused():
    with pytest.raises(RulebookError, match="neither a released version"):
        load("2019.9")


def test_byte_order_mark_and_spaces_of_a_spreadsheet_are_no_fault(folder):
    (folder / "tables" / "cage.csv").write_text("\ufeff" + TABLE.replace(",120,", " , 120,"), "utf-8")
    assert load(str(folder)).clauses["speed.cage-temperature"].tables["cage"].rows[0][:2] == ("polyamide", "120")
