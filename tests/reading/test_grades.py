"""Material grades: each stands for one material word by the rules of its standard, or leaves it open and says so."""

import csv
import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import linter.reading.cells.grades as grades
from linter.reading.cells.choices import _key, read_choice
from linter.reading.cells.signs import ReadError

_DATA = Path(grades.__file__).parent / "data" / "grades.csv"
_ROWS = list(csv.DictReader(_DATA.read_text(encoding="utf-8").splitlines()))

_SEATS = {
    "steel": """
        C45|C45E|Ck45|C 60|42CrMo4|42CrMo4+QT|42CrMo4 (1.7225)|34CrNiMo6|16MnCr5|20MnCr5|18CrNiMo7-6|30CrNiMo8|31CrMoV9
        11SMn30|11SMnPb30+C|9SMnPb28|S235JR|S355J2|S355J2+N|E295|St37-2|St 52-3
        1.0503|1.1191|1.2379|1.7131|1.8159|C45 vergütet
        Stahl C45|steel 4140|AISI 1045|SAE 8620|4340|12L14|S45C|SCM435|SCM 440H|SUM24L|SS400|45钢|45#|40Cr|20CrMnTi
        38CrMoAl
        Q235B|Сталь 45|40Х|40ХН|38Х2МЮА|100Cr6|SUJ2|GCr15|ШХ15|1.3505|16MnCr5, case hardened, 58-62 HRC|acier 42CrMo4
        """,
    "stainless steel": """
        1.4301|1.4305|1.4404|1.4571|X5CrNi18-10|X5CrNi18-10 (1.4301)|X8CrNiS18-9|X6CrNiMoTi17-12-2
        AISI 304|304L|SUS316L|316Ti
        A2|A4-70|12Х18Н10Т|06Cr19Ni10|Edelstahl 1.4021|stainless 303
        """,
    "cast iron": """
        EN-GJL-250|EN-GJS-400-15|GJL-250|EN-JL1040|GG25|GG-25|GGG40|GGG-40.3|FC250|FCD450|HT250|QT450-10|СЧ20|ВЧ50
        5.1301|0.6025|ASTM A48 class 30
        """,
    "aluminium": """
        AlSi10Mg|AlSi10Mg(Fe)|GD-AlSi9Cu3|AlSi9Cu3(Fe)|AlSi12(b)|AlSi7Mg0.3|AlMg4.5Mn0.7|AlMgSi1|AlZn5.5MgCu
        AlCu4Mg1|AlSi1MgMn T6
        EN AW-6082|EN AW-6082 T6|EN AC-46000|EN AC-46000 DF|AW 7075|6061-T6|7075-T651|6061|2024|AA6063|A380
        A356-T6|ADC12|AC4C
        ZL101A|АК12|Д16Т|АМг6|3.2581|3.4365|aluminium 6082|AlSi10Mg, die cast
        """,
    "magnesium": "AZ91D|AZ91|AM60B|MgAl9Zn1|EN-MC21120|AZ31B|ZK60A|WE43|3.5812",
    "zinc alloy": "ZAMAK 3|Zamak5|ZP0410|ZP5|ZnAl4Cu1|GD-ZnAl4|ZA-8|ZDC2",
    "titanium": "Ti-6Al-4V|TiAl6V4|3.7165|Titanium Grade 5|TC4|ВТ6|Ti 6Al-4V ELI",
    "plastic": "POM|POM-C|PA66|PA6-GF30|PA66 GF35|PBT|PPS-GF40|PEEK|PC|ABS|PA 6|PPA+GF50|LCP",
}  # fmt: skip
_OPEN = "1.4021|1.4057|1.4112|1.4542|X20Cr13|X17CrNi16-2|17-4PH|420|AISI 420|SUS420J2|440C"
_OPEN += "|SUS440C|20Х13|2Cr13|1.4462|1.4125"
_OPEN += "|сталь 20Х13|Stahl 1.4021|acero 1.4021|acciaio AISI 420|钢2Cr13|鋼 SUS420J2|steel (1.4021)"
_NONE = "Q|XYZ|Al2O3x|42|C|7|St|steel maybe|AlSi10Mg or so|see drawing|GK|1.9999|4711|7.5|EN|T6|58 HRC|n/a"


@pytest.mark.parametrize(
    ("word", "text"),
    [
        (word, t.strip())
        for word, texts in _SEATS.items()
        for ts in texts.split("\n")
        for t in ts.split("|")
        if t.strip()
    ],
)
def test_grade_of_a_seat_material(word, text):
    assert read_choice("housing_material", text) == word


@pytest.mark.parametrize("text", _OPEN.split("|"))
def test_stainless_grade_that_is_not_austenitic_leaves_its_word_open(text):
    error = read_choice("shaft_material", text)
    assert isinstance(error, ReadError)
    assert error.code == "ambiguous-choice" and error.expected.startswith("steel or stainless steel")


@pytest.mark.parametrize("text", ["steel / stainless steel", "сталь / нержавеющая сталь", "Edelstahl/Stahl"])
def test_either_of_two_words_for_a_steel_is_asked_for(text):
    error = read_choice("shaft_material", text)
    assert isinstance(error, ReadError)
    assert error.code == "ambiguous-choice"


@pytest.mark.parametrize("text", _NONE.split("|"))
def test_what_is_no_grade_stays_unread(text):
    assert isinstance(read_choice("housing_material", text), ReadError)


@pytest.mark.parametrize("text", ["steel / aluminium", "C45 (AlSi10Mg)", "EN-GJL-250, 1.4301"])
def test_materials_that_differ_settle_nothing(text):
    error = read_choice("housing_material", text)
    assert isinstance(error, ReadError) and error.code == "ambiguous-choice"


@pytest.mark.parametrize(
    ("parameter", "text", "word"),
    [
        ("ring_material", "100Cr6", "bearing steel"),
        ("ring_material", "AISI 52100", "bearing steel"),
        ("ring_material", "SUJ2", "bearing steel"),
        ("ring_material", "X65Cr13", "stainless bearing steel"),
        ("ring_material", "440C", "stainless bearing steel"),
        ("ring_material", "X30CrMoN15-1 (1.4108)", "high-nitrogen steel"),
        ("ball_material", "100Cr6", "steel"),
        ("ball_material", "SUS440C", "steel"),
        ("shaft_material", "TiAl6V4", "titanium"),
    ],
)
def test_grade_of_rings_balls_and_shafts(parameter, text, word):
    assert read_choice(parameter, text) == word


@pytest.mark.parametrize("text", ["42CrMo4", "AlSi10Mg", "1.4301"])
def test_a_grade_that_no_ring_is_made_of_is_no_ring_material(text):
    assert isinstance(read_choice("ring_material", text), ReadError)


def test_a_housing_material_is_none_of_a_shaft():
    error = read_choice("shaft_material", "EN-GJL-250")
    assert isinstance(error, ReadError) and "is cast iron" in error.sentence


@pytest.mark.parametrize("row", _ROWS, ids=lambda row: row["example"])
def test_every_row_has_a_source_and_an_example_that_it_matches(row):
    assert row["source"].startswith(("from memory of ", "common practice"))
    if row["seat"] != "-":
        assert re.fullmatch(row["pattern"], _key(row["example"]))


@settings(max_examples=300, deadline=None, derandomize=True)
@given(st.text(alphabet="ACGSTXalcrmnio0123456789 .-/(),+#", max_size=90))
def test_any_text_gives_a_word_or_an_error(text):
    word = read_choice("housing_material", text)
    assert isinstance(word, ReadError) or word in _SEATS
