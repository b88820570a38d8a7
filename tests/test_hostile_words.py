"""Every word that a table can bring along is hostile at once, and nothing that is written obeys one of them."""

import base64
import hashlib
import io
import json
import re
import tomllib
import zipfile
from html.parser import HTMLParser
from pathlib import Path
from xml.etree import ElementTree

import openpyxl
import pytest
from click.testing import CliRunner

from linter.command.cli import main

#: The reports take long to make and are made once: both tests in one process.
pytestmark = pytest.mark.xdist_group("hostile words")

PAYLOADS = {
    "image": "<img src=x onerror=alert(1)>",
    "attribute": "\"><svg/onload=alert(1)> ' onmouseover='alert(2)",
    "style": "</style><script>alert(1)</script>",
    "comment": "--> <!-- ]]> <![CDATA[ */",
    "address": "javascript:alert(1)",
    "entity": "&#x3C;script&#x3E;&lt;b&gt;",
    "braces": "{{7*7}}{%raw%}${7*7}",
    "direction": "a\u202egnp.exe\u2066b\u2029c\u061cd",
    "blanks": "w\u200bx\u2060y\ufeffz",
    "long": "x" * 33_000,  # longer than a cell of a workbook can be
    "formula": '=HYPERLINK("http://x.invalid","y")',
    "call": "@SUM(1+1)*cmd|' /C calc'!A0",
    "plus": "+cmd|'x'!A1",
    "control": "a\x1b[31mred\x07\x9b2Jb\x7f",
    "path": "..\\../../etc/passwd",
    "toml": 'a" = 1\n[names]\nb = "',
    "markup": "[x](javascript:alert(1)) {0} `rm`",
    "nothing": "a\x00b",
    "half": "a\ud800b",
}
HEAD = ["machine", "station", "bore_diameter", "shaft_seat_diameter", "lubrication", "drawing_number", "speed_max"]
HIDDEN = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff\ud800-\udfff]")
KINDS = {".html", ".json", ".sarif", ".xml", ".xlsx"}


def rows_of(words: list[str]) -> list[list[str]]:
    """A heading with unknown words, and for each word rows in which it is the name, the station or a value."""
    rows = [HEAD + words]
    for word in words:
        rows.append([word, word, "4", "4 k5", "grease", word, "60000", *words])
        rows.append(["M", word, word, word, word, word, word, *words])
    return rows


def write_csv(path: Path) -> None:
    words = [word for name, word in PAYLOADS.items() if name not in ("nothing", "half")]
    quoted = (",".join('"' + cell.replace('"', '""') + '"' for cell in row) for row in rows_of(words))
    path.write_text("\n".join([*quoted, "# " + words[0]]), encoding="utf-8")


def write_json(path: Path) -> None:
    words = list(PAYLOADS.values())
    stations = [dict(zip(HEAD, row, strict=False)) | dict.fromkeys(words, row[1]) for row in rows_of(words)[1:]]
    path.write_text(json.dumps({"note": words, "rows": stations}), encoding="ascii")


def write_workbook(path: Path) -> None:
    words = [openpyxl.cell.cell.ILLEGAL_CHARACTERS_RE.sub("", w)[:32_000] for w in PAYLOADS.values() if w != "a\ud800b"]
    book = openpyxl.Workbook()
    book.remove(book.active)
    book.properties.creator, book.properties.title = "Somebody Secret", words[0]
    for index, word in enumerate(words):
        sheet = book.create_sheet(f"S{index}")
        for row, cells in enumerate(rows_of([word]) if index else rows_of(words), 1):
            for column, cell in enumerate(cells, 1):
                at = sheet.cell(row, column)
                at.value, at.data_type = cell, "s"
        sheet["C2"].comment = openpyxl.comments.Comment(word[:500], word[:40])
        sheet["C3"].number_format = f'0.0 "{word[:20]}"'.replace('"', "'") if index % 2 else "General"
    stream = io.BytesIO()
    book.save(stream)
    with zipfile.ZipFile(stream) as old, zipfile.ZipFile(path, "w") as new:
        for name in old.namelist():
            part = old.read(name)
            if name == "xl/workbook.xml":
                for index, word in enumerate(words):
                    text = word[:60].replace("&", "&amp;").replace("<", "&lt;").replace('"', "&quot;")
                    part = part.replace(f'name="S{index}"'.encode(), f'name="{index}{text}"'.encode())
            new.writestr(name, part)


@pytest.fixture(scope="module")
def written(tmp_path_factory) -> tuple[Path, str]:
    """The folder of all reports over tables full of hostile words, and what the terminal was told."""
    folder = tmp_path_factory.mktemp("hostile")
    tables = folder / "tables"
    tables.mkdir()
    write_csv(tables / "words.csv")
    write_json(tables / "words.json")
    write_workbook(tables / "words.xlsx")
    for word in PAYLOADS.values():
        name = word.replace("/", "_").replace("\x00", "")[:100].encode("utf-8", "replace")
        (tables / (name.decode() + ".csv")).write_text(",".join(HEAD) + "\nM,A,4,4 h5,grease,D,60000\n")
    (tables / "unread\x1b[2J\u202e.csv").write_text("\x1b]0;x\x07,\u202e\n1,2\n", encoding="utf-8")
    word = PAYLOADS["style"]
    runner = CliRunner()
    out = folder / "out"
    call = ["review", str(tables), "--out", str(out), "--write", "html,json,sarif,junit,xlsx", "--date", word]
    result = runner.invoke(main, call)
    told = [result.stdout, result.stderr]
    assert result.exit_code == 2 and "a fault of the program" not in result.stderr, result.stderr[:2000]
    for name in ("words.csv", "words.json", "words.xlsx"):
        proposal = folder / "out" / f"{name}.toml"
        for where in ([], ["--out", str(proposal)]) if name == "words.csv" else (["--out", str(proposal)],):
            result = runner.invoke(main, ["names", str(tables / name), *where])
            assert result.exit_code == 0, result.output[:500]
            told += [result.stdout, result.stderr]
    one, other = sorted(out.glob("words*.result.json"))[:2]
    result = runner.invoke(main, ["compare", str(one), str(other), "--out", str(out / "compared")])
    assert result.exit_code == 0, result.output[:500]
    told += [result.stdout, result.stderr]
    return out, "".join(told)


def files(folder: Path, suffix: str) -> list[Path]:
    found = sorted(path for path in folder.rglob("*") if path.name.endswith(suffix))
    assert found
    return found


class Page(HTMLParser):
    """Refuses whatever could run, load or send something."""

    def __init__(self, text: str) -> None:
        super().__init__(convert_charrefs=True)
        self.styles: list[str] = []
        self.policy = ""
        self.words: list[str] = []
        self.tag = ""
        self.feed(text)
        self.close()

    def handle_starttag(self, tag, attributes):
        self.tag = tag
        assert tag not in {
            "script", "iframe", "object", "embed", "link", "base", "form", "img", "image", "foreignobject",
            "input", "button", "video", "audio", "animate", "set",
        }, tag  # fmt: skip
        for name, value in attributes:
            assert not name.startswith("on") and name not in ("style", "src", "srcset", "action", "ping"), name
            assert not HIDDEN.search(value or ""), (tag, name)
            if "href" in name:
                assert value.startswith(("#", "./")) and ".." not in value, value
        facts = dict(attributes)
        if tag == "meta" and "http-equiv" in facts:
            assert facts["http-equiv"].lower() == "content-security-policy"
            self.policy = facts["content"]

    def handle_data(self, data):
        if self.tag == "style":
            self.styles.append(data)
        self.words.append(data)

    def handle_endtag(self, tag):
        self.tag = ""

    def handle_comment(self, data):
        raise AssertionError(data)

    def unknown_decl(self, data):
        raise AssertionError(data)


@pytest.mark.slow
def test_pages_run_nothing_and_load_nothing(written):
    pages = files(written[0], ".html")
    assert len(pages) > len(PAYLOADS)
    for path in pages:
        text = path.read_bytes().decode("utf-8")
        page = Page(text)
        style = "".join(page.styles)
        digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
        assert f"style-src 'sha256-{digest}'" in page.policy and "default-src 'none'" in page.policy
        assert "script-src" not in page.policy and "unsafe" not in page.policy
        assert len(re.findall(r"<style[ >]", text)) == 1
        assert not HIDDEN.search("".join(page.words)), path.name
        assert "Somebody Secret" not in text and str(written[0].parent) not in text
    shown = "".join(Page(next(p for p in pages if "words" in p.name and "json" in p.name).read_text("utf-8")).words)
    assert PAYLOADS["image"] in shown and "[U+202E]" in shown


@pytest.mark.slow
def test_workbooks_hold_no_formula_and_no_link_to_the_outside(written):
    for path in files(written[0], ".findings.xlsx"):
        with zipfile.ZipFile(path) as archive:
            for name in archive.namelist():
                part = archive.read(name)
                assert not name.endswith(".rels") or b'TargetMode="External"' not in part
                assert b"Somebody Secret" not in part
                if "/worksheets/" in name and name.endswith(".xml"):
                    assert not re.search(rb"<f[ />]", part) and b"<dde" not in part
                    assert b"dataValidation " not in part
        book = openpyxl.load_workbook(path)
        for sheet in book:
            assert not HIDDEN.search(sheet.title)
            for row in sheet.iter_rows():
                for cell in row:
                    assert cell.data_type in ("s", "n", "b"), cell
                    assert not HIDDEN.search(str(cell.value)), cell
                    assert cell.hyperlink is None or (cell.hyperlink.location and not cell.hyperlink.target)
                    assert cell.comment is None or not HIDDEN.search(cell.comment.text)


def test_data_files_parse_and_hold_no_hidden_signs(written):
    for suffix in (".result.json", ".sarif", "comparison.json"):
        for path in files(written[0], suffix):
            text = path.read_bytes().decode("utf-8")
            json.loads(text)
            assert not re.search("[\x00-\x09\x0b-\x1f]", text)
            assert str(written[0].parent) not in text
    for path in files(written[0], ".junit.xml"):
        root = ElementTree.fromstring(path.read_bytes())
        for node in root.iter():
            assert node.tag in {
                "testsuites", "testsuite", "testcase", "failure", "error", "skipped", "properties", "property",
                "system-out", "system-err",
            }  # fmt: skip
            assert not HIDDEN.search("".join([node.text or "", *node.attrib.values()]))


def test_proposals_of_names_parse_back_to_names_only(written):
    from linter.reading.words.names import Names

    for path in files(written[0], ".toml"):
        text = path.read_bytes().decode("utf-8")
        assert set(tomllib.loads(text)) == {"names"}
        assert not HIDDEN.search(text)
        Names.load(path)


def test_the_terminal_is_told_printable_signs_only(written):
    assert all(sign.isprintable() or sign == "\n" for sign in written[1])


def test_reports_stand_in_their_folder_under_plain_kinds(written):
    folder = written[0]
    assert all(path.suffix in KINDS | {".toml"} for path in folder.rglob("*") if path.is_file())
    assert {path.name for path in folder.parent.iterdir()} == {"tables", "out"}
    assert {path.name for path in folder.iterdir() if path.is_dir()} == {"compared"}
