"""The seat specification: only what is stated, signs by ISO 1101, one page for each position, and the way back."""

import random
import re
import shutil
import subprocess
import unicodedata
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pytest
from attrs import evolve
from click.testing import CliRunner

from linter.command.cli import main
from linter.model.stations import Stations
from linter.model.vocabulary import vocabulary
from linter.reading import read_table
from linter.reading.cells.requirements import Requirement, characteristic_of, read_requirement
from linter.report.sheet.characteristics import LARGEST, SEATS, WHOLE, characteristics_of, means_of
from linter.report.sheet.page import Specification, specification
from linter.report.sheet.symbols import DIAMETER, ENVELOPE, SIGNS, control_frame
from linter.review.defaults import with_defaults
from linter.review.records import review_reading
from linter.rulebook.load import load
from tests.designs.complete import complete_design
from tests.designs.rows import stations_from_rows
from tests.designs.spoil import LAYOUTS, table_text

#: Names of the characters in the Unicode standard; the signs are those of the list of symbols of ISO 1101.
NAMES = {
    "straightness": "STRAIGHTNESS",
    "flatness": "FLATNESS",
    "roundness": "WHITE CIRCLE",
    "cylindricity": "CYLINDRICITY",
    "perpendicularity": "PERPENDICULAR",
    "coaxiality": "BULLSEYE",
    "circular run-out": "NORTH EAST ARROW",
    "axial run-out": "NORTH EAST ARROW",
    "total run-out": "TOTAL RUNOUT",
}


def made_of(path: Path, **kwargs: Any) -> Specification:
    book = load()
    reading = read_table(path, shown_as=path.name)
    reading = evolve(reading, stations=with_defaults(reading.stations, book))
    return specification(reading.stations, review_reading(reading, book), "2026-03-01", **kwargs)


def table_of(folder: Path, seed: int) -> Path:
    suffix, content = table_text(complete_design(seed), LAYOUTS[seed % len(LAYOUTS)])
    path = folder / f"t{seed}{suffix}"
    path.write_bytes(content)
    return path


def differences(one: Stations, two: Stations) -> list[tuple[Any, ...]]:
    """Values that two tables state differently."""
    first, second = one.to_frame(), two.to_frame()
    found: list[tuple[Any, ...]] = [("column", name) for name in set(first.columns) ^ set(second.columns)]
    for name in first.columns.intersection(second.columns):
        for row, (a, b) in enumerate(zip(first[name], second[name], strict=True)):
            numbers = isinstance(a, float) and isinstance(b, float)
            same = np.isclose(a, b, rtol=1e-9, atol=1e-12, equal_nan=True) if numbers else a == b
            if not same:
                found.append((name, row, a, b))
    return found


def test_the_signs_are_those_that_unicode_and_the_reader_know():
    assert {kind: unicodedata.name(sign) for kind, sign in SIGNS.items()} == NAMES
    assert unicodedata.name(ENVELOPE) == "CIRCLED LATIN CAPITAL LETTER E"
    assert unicodedata.name(DIAMETER) == "DIAMETER SIGN"
    for kind, sign in SIGNS.items():
        assert characteristic_of(sign) == ("circular run-out" if kind == "axial run-out" else kind)


def test_every_frame_is_read_back_as_it_is_drawn():
    rows = [dict(row) for row in complete_design(3).rows]
    for item in characteristics_of(stations_from_rows(rows), 0):
        if item.kind in LARGEST and item.kind != "radius":
            read = read_requirement(item.drawn)
            assert isinstance(read, Requirement)
            assert float(read.number) == pytest.approx(item.most)
            assert read.datums == item.datums
            assert read.diametral == (item.kind == "coaxiality")


@pytest.mark.parametrize("kind", ["cylindricity", "total run-out", "axial run-out", "coaxiality"])
def test_a_frame_has_its_sign_as_strokes_and_closed_boxes(kind):
    parts, end = control_frame(kind, "0.005", "A-B", 100, 50)
    boxes = [part for part in parts if part.startswith("<rect")]
    assert len(boxes) == 3
    widths = [float(found) for part in boxes for found in re.findall(r'width="([\d.]+)"', part)]
    assert 100 + sum(widths) == pytest.approx(end, abs=0.2)
    assert sum("0.005" in part or "A-B" in part for part in parts) == 2
    assert len(parts) > 6  # boxes, two texts, and the strokes of the sign


@pytest.mark.parametrize("seed", range(30))
def test_the_inspection_list_reads_back_to_the_same_stations(tmp_path, seed):
    path = table_of(tmp_path, 1000 + seed)
    made = made_of(path)
    listed = tmp_path / "list.xlsx"
    listed.write_bytes(made.workbook())
    before, after = read_table(path), read_table(listed)
    assert differences(before.stations, after.stations) == []
    assert not after.stations.problems


def test_every_parameter_comes_back(tmp_path):
    """Each of the vocabulary's own examples in one machine of two positions."""
    rows = ["name,value,unit,station,machine"]
    for entry in vocabulary().values():
        if entry.name in ("machine", "station") or not entry.example:
            continue
        for station in ("A", "B") if entry.level == "station" else ("",):
            unit = "" if entry.unit == "1" else entry.unit
            rows.append(f'{entry.name},"{entry.example}",{unit},{station},blower')
    path = tmp_path / "all.csv"
    path.write_text("\n".join(rows), encoding="utf-8")
    listed = tmp_path / "list.xlsx"
    listed.write_bytes(made_of(path).workbook())
    before, after = read_table(path), read_table(listed)
    assert set(before.stations.to_frame().columns) > {"housing_undercut_depth", "spacer_stack", "rigid_preload_offset"}
    assert differences(before.stations, after.stations) == []


def test_measured_values_are_never_read(tmp_path):
    path = table_of(tmp_path, 1001)
    listed = tmp_path / "list.xlsx"
    listed.write_bytes(made_of(path).workbook())
    book = openpyxl.load_workbook(listed)
    sheet = book["Inspection"]
    column = next(cell.column for cell in sheet[1] if cell.value == "Measured")
    rng = random.Random(5)
    for row in range(2, sheet.max_row + 1):
        assert sheet.cell(row, column).value is None
        sheet.cell(row, column).value = round(rng.uniform(0.001, 60.0), 4)
    book.save(listed)
    assert differences(read_table(path).stations, read_table(listed).stations) == []


def test_only_stated_values_stand_on_it_and_what_is_wanting_is_named(tmp_path):
    path = tmp_path / "bare.csv"
    path.write_text(
        "machine,station,bearing_designation,shaft_seat_diameter,shaft_seat_roughness [um]\n"
        "fan,A,608,8 k5,0.4\nfan,B,608,8 k5,0.4\n",
        encoding="utf-8",
    )
    made = made_of(path)
    assert {c.parameter for c in made.listed} == {"shaft_seat_diameter", "shaft_seat_roughness"}
    (note,) = [note for note in made.pages[0].notes if note.startswith("Not stated")]
    assert "housing seat diameter" in note and "shaft fillet radius" in note and "shaft seat diameter" not in note
    assert "608" in made.pages[0].bearing and "8 × 22 × 7" in made.pages[0].bearing
    assert "undecided" in made.html() or "closed" in made.html()


def test_the_envelope_is_written_where_the_table_has_it(tmp_path):
    path = tmp_path / "fan.csv"
    path.write_text(
        "machine,station,bearing_designation,shaft_seat_diameter,housing_seat_diameter\n"
        "fan,A,608,8 k5 Ⓔ,22 H6\nfan,B,608,8 k5,22 H6\n",
        encoding="utf-8",
    )
    result = CliRunner().invoke(main, ["sheet", str(path), "--out", str(tmp_path / "out")])
    assert result.exit_code == 0, result.output
    text = (tmp_path / "out" / "fan.sheet.txt").read_text(encoding="utf-8")
    assert text.count(f"⌀8 k5 (+0.007/+0.001) {ENVELOPE}") == 1
    assert text.count("⌀8 k5 (+0.007/+0.001)") == 2
    assert f"22 H6 (+0.013/0) {ENVELOPE}" not in text
    CliRunner().invoke(main, ["sheet", str(path), "--size", "envelope", "--out", str(tmp_path / "out")])
    text = (tmp_path / "out" / "fan.sheet.txt").read_text(encoding="utf-8")
    assert text.count(f") {ENVELOPE}") == 4
    CliRunner().invoke(main, ["sheet", str(path), "--size", "independency", "--out", str(tmp_path / "out")])
    assert ENVELOPE not in (tmp_path / "out" / "fan.sheet.txt").read_text(encoding="utf-8")


def test_it_names_rulebook_gate_table_and_date(tmp_path):
    made = made_of(table_of(tmp_path, 1002))
    for text in (made.html(), made.text()):
        for wanted in (f"ringseat {load().version}", "2026-03-01", "t1002", made.about.gate):
            assert wanted in text, wanted
    assert made.about.sha256 in made.html()
    assert ("not to be released" in made.html()) == (made.about.gate != "open")


def test_the_same_inputs_give_the_same_bytes(tmp_path):
    path = table_of(tmp_path, 1003)
    one, two = made_of(path), made_of(path)
    assert one.html() == two.html() and one.text() == two.text() and one.workbook() == two.workbook()


def test_hostile_texts_stay_texts(tmp_path):
    path = tmp_path / "fan.csv"
    path.write_text(
        'machine,station,bearing_designation,shaft_seat_diameter\n"<script>x</script>{{7*7}}",=1+1,608,8 k5\n',
        encoding="utf-8",
    )
    made = made_of(path)
    assert "<script" not in made.html() and "{{7*7}}" in made.html()
    listed = tmp_path / "list.xlsx"
    listed.write_bytes(made.workbook())
    cells = [cell for row in openpyxl.load_workbook(listed)["Inspection"].iter_rows() for cell in row]
    assert all(cell.data_type != "f" for cell in cells)


def test_means_grow_finer_with_the_tolerance():
    for kind in {**SEATS, **WHOLE}.values():
        finest, coarsest = means_of(kind, 1e-6), means_of(kind, 1e6)
        assert finest and coarsest
    assert "air" in means_of("outside size", 0.002) and "micrometer" in means_of("outside size", 0.05)
    assert means_of("inside size", 0.004) != means_of("inside size", 0.0041)


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (None, "there is no such file"),
        (b"name;date\nx;y\n", "fan.csv"),
        (b"", "fan.csv"),
    ],
)
def test_bad_input_is_one_line_and_nothing_is_written(tmp_path, content, said):
    path = tmp_path / "fan.csv"
    if content is not None:
        path.write_bytes(content)
    result = CliRunner().invoke(main, ["sheet", str(path), "--out", str(tmp_path / "out")])
    assert result.exit_code == 2
    assert len(result.stderr.strip().splitlines()) == 1 and said in result.stderr
    assert not (tmp_path / "out").exists()


def test_an_input_is_never_overwritten(tmp_path):
    path = table_of(tmp_path, 1005)
    path = path.rename(tmp_path / "t.inspection.xlsx") if path.suffix == ".xlsx" else path
    before = path.read_bytes()
    (tmp_path / f"{path.stem}.inspection.xlsx").symlink_to(path)
    result = CliRunner().invoke(main, ["sheet", str(path), "--out", str(tmp_path)])
    assert result.exit_code == 2 and "is a link" in result.stderr
    assert path.read_bytes() == before


def _crowded(folder: Path) -> Path:
    """Three positions with every parameter stated, long names and long numbers."""
    names = [entry for entry in vocabulary().values() if entry.name not in ("machine", "station") and entry.example]
    given = {"shaft_seat_diameter": "104.2345 +0.01234/-0.00123", "housing_seat_diameter": "213.1234 H5"}
    given |= {"bore_diameter": "104", "outside_diameter": "213", "bearing_designation": "X" * 80}
    rows = ["name,value,unit,station,machine"]
    for entry in names:
        for station in ("drive end of the upper spindle", "middle", "free end") if entry.level == "station" else ("",):
            unit = "" if entry.unit == "1" else entry.unit
            rows.append(f'{entry.name},"{given.get(entry.name, entry.example)}",{unit},{station},{"blower " * 12}')
    path = folder / "crowded.csv"
    path.write_text("\n".join(rows), encoding="utf-8")
    return path


@pytest.mark.skipif(shutil.which("chromium") is None, reason="chromium is not installed")
def test_each_position_is_one_page_in_print(tmp_path):
    for path in (_crowded(tmp_path), table_of(tmp_path, 1007)):
        made = made_of(path, envelope=True, proposed={("shaft_seat_diameter", 0), ("shaft_fillet_radius", 1)})
        page, pdf = tmp_path / "page.html", tmp_path / "page.pdf"
        page.write_text(made.html(), encoding="utf-8")
        call = ["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer"]
        subprocess.run([*call, f"--print-to-pdf={pdf}", page.as_uri()], capture_output=True, check=True, timeout=120)
        content = pdf.read_bytes()
        assert len(re.findall(rb"/Type\s*/Page\b", content)) == len(made.pages)
        boxes = {tuple(map(float, found.split())) for found in re.findall(rb"/MediaBox\s*\[([^\]]+)\]", content)}
        assert all(abs(b[2] - 595) < 1.5 and abs(b[3] - 842) < 1.5 for b in boxes)
