from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.model.vocabulary import vocabulary
from linter.reading.words.dictionary import GROUPS, heading_words
from linter.reading.words.headings import Words
from linter.reading.words.mapping import MappingError, parse_mapping, pattern_trouble
from linter.reading.words.names import Match, Names

NAMES = Names.built_in()
LANGUAGES = ("en", "de", "fr", "es", "it", "ja", "zh", "ru")
PARAMETER_WORDS = [row for row in heading_words() if row[0] not in GROUPS and not row[0].startswith("@")]


def test_every_parameter_has_a_word_in_every_language() -> None:
    spoken = {(target, language) for target, _, language in PARAMETER_WORDS}
    lacking = [
        f"{name},WORD,{language}" for name in vocabulary() for language in LANGUAGES if (name, language) not in spoken
    ]
    assert lacking == [], "add rows such as these to linter/reading/words/data/headings.csv"
    unknown = {target for target, _, _ in PARAMETER_WORDS} - set(vocabulary())
    assert unknown == set(), "linter/reading/words/data/headings.csv names parameters that schemas/vocabulary.csv lacks"
    strange = [row for row in heading_words() if row[2] not in (*LANGUAGES, "symbol")]
    assert strange == [], "linter/reading/words/data/headings.csv: a language is one of LANGUAGES here, or symbol"


def test_every_group_has_a_word_in_every_language() -> None:
    spoken = {(target, language) for target, _, language in heading_words()}
    assert {(group, language) for group in GROUPS for language in LANGUAGES} <= spoken


@pytest.mark.parametrize(("target", "word"), [(target, word) for target, word, _ in PARAMETER_WORDS])
def test_every_built_in_word_is_understood(target: str, word: str) -> None:
    found = NAMES.find(word)
    told = f"{target},{word} in linter/reading/words/data/headings.csv: read as {found and found.parameter}"
    assert found == Match(target), f"{told}; {NAMES.why(word) or 'one word names one parameter'}"
    assert NAMES.find(f" {word}\u00a0") == Match(target)


@pytest.mark.parametrize("name", list(vocabulary()))
def test_every_canonical_name_is_understood_in_every_dress(name: str) -> None:
    entry = vocabulary()[name]
    assert NAMES.find(name) == Match(name)
    assert NAMES.find(name.replace("_", " ").title()) == Match(name)
    assert NAMES.find("".join(part.title() for part in name.split("_"))) == Match(name)
    for dressed in (f"{name} [A]", f"A.{name}", f"{name}_A", f"{name}@A", f"A_{name}", f"A:{name}", f"{name} (A)"):
        assert NAMES.find(dressed) == Match(name, station="A"), dressed
    if entry.unit and entry.unit != "1":
        for dressed in (
            f"{name} [{entry.unit}]",
            f"{name} ({entry.unit})",
            f"{name} / {entry.unit}",
            f"{name} in {entry.unit}",
        ):
            assert NAMES.find(dressed) == Match(name, unit=entry.unit), dressed
        assert NAMES.find(f"{name}_B [{entry.unit}]") == Match(name, station="B", unit=entry.unit)
    if entry.kind == "toleranced":
        for suffix, aspect in (
            ("_tol+", "upper"), ("_tol-", "lower"), (" tol+", "upper"), ("_max", "max"), ("_min", "min"),
            (" upper tol", "upper"),
            (" ES", "upper"), (" ei", "lower"), ("_fit", "class"), (" oberes Abmaß", "upper"), (" 下偏差", "lower"),
        ):  # fmt: skip
            assert NAMES.find(name + suffix) == Match(name, aspect=aspect), suffix  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("text", "parameter"),
    [
        ("d", "bore_diameter"), ("D", "outside_diameter"), ("d_a", "shaft_shoulder_diameter"),
        ("da", "shaft_shoulder_diameter"),
        ("D_a", "housing_shoulder_diameter"), ("Da", "housing_shoulder_diameter"),
        ("Inner Diameter (ID)", "bore_diameter"),
        ("Bore diameter (d)", "bore_diameter"), ("Kugeldurchmesser Dw", "ball_diameter"),
        ("contact angle α", "contact_angle"),
        ("Ring width B", "ring_width"), ("Shaft seat dia.", "shaft_seat_diameter"), ("Kugel-Ø", "ball_diameter"),
        ("Ball Ø", "ball_diameter"), ("Außen-Ø", "outside_diameter"), ("Ring chamfer min", "ring_chamfer"),
        ("max shaft seat runout", "shaft_seat_runout"),
        ("Housing fillet radius (max)", "housing_fillet_radius"), ("НАРУЖНЫЙ ДИАМЕТР", "outside_diameter"),
        ("内径", "bore_diameter"),
        ("shaftSeatDiameter", "shaft_seat_diameter"),
    ],
)  # fmt: skip
def test_case_of_a_symbol_is_its_meaning(text: str, parameter: str) -> None:
    assert NAMES.find(text) == Match(parameter)


@pytest.mark.parametrize(
    ("text", "match"),
    [
        ("shaft_seat_diameter@DE", Match("shaft_seat_diameter", station="DE")),
        ("shaft_seat_diameter@Sketch1", Match("shaft_seat_diameter", feature="Sketch1")),
        ("geometry:bore_diameter", Match("bore_diameter", feature="geometry")),
        ("Lager A Bohrung", Match("bore_diameter", station="A")),
        ("bearing A: bore diameter [mm]", Match("bore_diameter", station="A", unit="mm")),
        ("shaft_seat_diameter_upper_A [µm]", Match("shaft_seat_diameter", station="A", unit="µm", aspect="upper")),
        ("bore_diameter unit", Match("bore_diameter", aspect="unit")),
        ("Max speed [rpm]", Match("speed_max", unit="rpm")),
        ("[min-1]max_speed", Match("speed_max", unit="min-1")),
        ("[in]Front_shaft_seat_dia", Match("shaft_seat_diameter", station="Front", unit="in")),
        ("boreDiameterMm", Match("bore_diameter", unit="mm")),
        ("shaftSeatRoughnessUm", Match("shaft_seat_roughness", unit="um")),
        ("speed_max_r_min", Match("speed_max", unit="r/min")),
        ("temperature_max_C", Match("temperature_max", unit="degC")),
        ("Housing bore (mm) Max", Match("housing_seat_diameter", unit="mm", aspect="max")),
        ("Wellensitz Nennmaß [mm]", Match("shaft_seat_diameter", unit="mm")),
        ("Bore diameter (rear)", Match("bore_diameter", station="rear")),
        ("Наружный диаметр, мм", Match("outside_diameter", unit="mm")),
    ],
)
def test_what_stands_around_a_name(text: str, match: Match) -> None:
    assert NAMES.find(text) == match


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("Bohrung (N)", "measured in mm"), ("D1@Sketch1", "no parameter"),
        ("bore_diameter [kg]", "measured in mm"), ("[kg]bore_diameter", "measured in mm"),
        ("operating_temperature_C", "station or a unit"),
        ("ball_count_max", "tolerance"), ("Colour", "no parameter"),
        ("", "nothing"),
        ("speed", "no parameter"), ("x" * 300, "longer"),
        ("bor_diameter", "no parameter"),
    ],
)  # fmt: skip
def test_what_is_not_understood_has_a_reason(text: str, reason: str) -> None:
    assert NAMES.find(text) is None
    assert reason in NAMES.why(text)


@pytest.mark.parametrize(
    ("text", "group"),
    [
        ("Name", "NAME"), ("Parameter_Name", "NAME"), ("変数名", "NAME"), ("Value", "VALUE"), ("Wert", "VALUE"),
        ("Value [mm]", "VALUE"),
        ("Nominal_Value", "VALUE"), ("UNIT", "UNIT"), ("Ед. изм.", "UNIT"), ("单位", "UNIT"), ("Formel", "EXPR"),
        ("+Tol", "UPPER"),
        ("-Tol", "LOWER"), ("Upper Tol", "UPPER"), ("USL", "MAX"), ("Min_Limit", "MIN"), ("Max_Limit", "MAX"),
        ("unteres Abmaß", "LOWER"), ("Quota min / mm", "MIN"), ("最大寸法", "MAX"),
        ("Tolerance", "CLASS"), ("Passung", "CLASS"), ("Balloon", "CHAR-ID"), ("№ п/п", "CHAR-ID"),
        ("Bezug", "DATUM"),
        ("Comments", "NOTE"), ("備考", "NOTE"), ("Lagerstelle", "STATION"), ("Machine", "MACHINE"), ("Colour", None),
    ],
)  # fmt: skip
def test_layout_words(text: str, group: str | None) -> None:
    assert NAMES.group(text) == group


def test_plus_and_minus_columns_stay_apart() -> None:
    assert NAMES.groups("Tol +") == ("UPPER",)
    assert NAMES.groups("Tol -") == ("LOWER",)


@given(st.text(max_size=80) | st.text(alphabet="aAbd_ .@:/[]()mxinøµ²+-", max_size=40))
def test_any_text_is_understood_or_refused_with_a_reason(text: str) -> None:
    names = Names.built_in()
    assert (names.find(text) is None) == bool(names.why(text))
    names.groups(text)
    names.station(text)


MAPPING = r"""
[names]
"Wellenzapfen" = "shaft_seat_diameter"
"WZ" = {parameter = "shaft_seat_diameter", station = "DE", unit = "µm", aspect = "upper"}
"wz" = "shaft_seat_roughness"
"Farbe" = ""

[[patterns]]
match = 'LAGER(?P<stelle>[AB])_BOHR'
parameter = "bore_diameter"
station = "stelle"
unit = "mm"

[stations]
"A" = "drive end"
"vorn links" = "front left"

[units]
"mikro" = "um"

[choices.ball_material]
"Keramik" = "silicon nitride"

[file]
decimal = ","
encoding = "cp1252"
default_unit = "mm"
half_width = true
"""


def test_a_mapping_goes_on_top(tmp_path: Path) -> None:
    path = tmp_path / "names.toml"
    path.write_text(MAPPING, encoding="utf-8")
    names = Names.load(path)
    assert names.find("Wellenzapfen") == Match("shaft_seat_diameter", mapped=True)
    assert names.find("Wellenzapfen [mm]") == Match("shaft_seat_diameter", unit="mm", mapped=True)
    assert names.find("Wellenzapfen_tol+") == Match("shaft_seat_diameter", aspect="upper", mapped=True)
    assert names.find("Wellenzapfen B") == Match("shaft_seat_diameter", station="B", mapped=True)
    assert names.find("WZ") == Match("shaft_seat_diameter", "DE", "µm", "upper", mapped=True)
    assert names.find("wz") == Match("shaft_seat_roughness", mapped=True)
    assert names.find("Farbe") is None and "leave it out" in names.why("Farbe")
    assert names.find("LAGERA_BOHR") == Match("bore_diameter", "drive end", "mm", mapped=True)
    assert names.find("bore_diameter [A]") == Match("bore_diameter", station="drive end")
    assert names.find("bore_diameter (vorn links)") == Match("bore_diameter", station="front left")
    assert names.find("bore_diameter [mikro]") == Match("bore_diameter", unit="um")
    assert (names.mapping.decimal, names.mapping.encoding, names.mapping.default_unit) == (",", "cp1252", "mm")
    assert names.mapping.half_width and names.mapping.choices["ball_material"]["Keramik"] == "silicon nitride"


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("[names]\n'x' = 'bore_diametre'", "names.x"), ("[name]", "top level"), ("[names]\nx = 3", "names.x"),
        ("x = ", "not TOML"), ("[file]\ndecimal = ';'", "file.decimal"),
        ("[file]\nencoding = 'nonsense'", "file.encoding"),
        ("[file]\ndefault_unit = 'kg'", "file.default_unit"), ("[units]\nx = 'smoots'", "units.x"),
        ("[choices.cage]\nx = 'wood'", "choices.cage.x"),
        ("[choices.bore_diameter]\nx = 'y'", "choices.bore_diameter"),
        ("[[patterns]]\nmatch = '(a+)+b'\nparameter = 'bore_diameter'", "patterns.0.match"),
        ("[[patterns]]\nmatch = '('\nparameter = 'bore_diameter'", "patterns.0.match"),
        ("[[patterns]]\nmatch = 'a'\nparameter = 'bore_diameter'\nstation = 'x'", "patterns.0.station"),
        ("[[patterns]]\nmatch = 'a'", "patterns.0"), ("[names]\nx = {parameter = 'cage', unit = 'mm'}", "names.x"),
        ("[names]\nx = {parameter = 'bore_diameter', unit = 'kg'}", "names.x"),
        ("[names]\n'Ø d' = 'cage'\n'⌀ d' = 'duty'", "names"),
    ],
)  # fmt: skip
def test_a_wrong_mapping_names_file_and_key(tmp_path: Path, text: str, wanted: str) -> None:
    path = tmp_path / "names.toml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(MappingError) as error:
        Names.load(path)
    assert str(path) in str(error.value) and wanted in str(error.value)


def test_a_mapping_that_cannot_be_opened(tmp_path: Path) -> None:
    with pytest.raises(MappingError, match="cannot be opened"):
        Names.load(tmp_path / "absent.toml")
    (tmp_path / "latin.toml").write_bytes(b"[names]\n'\xe4' = 'cage'")
    with pytest.raises(MappingError, match="UTF-8"):
        Names.load(tmp_path / "latin.toml")


@pytest.mark.parametrize(
    "pattern", ["(a+)+", "(a|a)*b", r"(\w)\1", "a*b*c*d*", "(?P<x>a)(?P=x)", "(ab){20}", "x" * 201]
)
def test_patterns_that_may_run_away_are_refused(pattern: str) -> None:
    assert pattern_trouble(pattern)


@pytest.mark.parametrize("pattern", [r"LAGER([AB])_BOHR", r"d_(\w+)", r"[)*+]x", r"\)+", r"(?P<s>[A-Z]{1,2})_.*"])
def test_useful_patterns_are_allowed(pattern: str) -> None:
    assert not pattern_trouble(pattern)


def test_the_mapping_of_the_guide_is_read() -> None:
    import tomllib

    guide = (Path(__file__).resolve().parents[2] / "docs" / "name-mapping.md").read_text(encoding="utf-8")
    block = guide.split("```toml\n")[1].split("```")[0]
    assert parse_mapping(tomllib.loads(block), "guide").names


def test_the_letter_of_a_symbol_is_no_station() -> None:
    """A small ``d`` behind the word for a bearing and the ``G`` of a balance grade are symbols of the name."""
    for name, parameter in (
        ("diametro_exterior_rodamiento_d", "outside_diameter"),
        ("Класс_точности_балансировки_G", "balance_grade"),
    ):
        heading = Words(Names()).heading(name)
        assert heading is not None
        assert (heading.parameter, heading.station) == (parameter, "")
    heading = Words(Names()).heading("OD bearing B")
    assert heading is not None
    assert heading.station == "B"


@pytest.mark.parametrize(
    ("name", "parameter", "station"),
    [
        ("Eje resalte lado bomba diámetro", "shaft_shoulder_diameter", "lado bomba"),
        ("Spallamento albero lato pompa diametro", "shaft_shoulder_diameter", "lato pompa"),
        ("Épaulement arbre côté turbine Ø", "shaft_shoulder_diameter", "côté turbine"),
        ("Épaulement arbre, côté turbine", "shaft_shoulder_diameter", "côté turbine"),
        ("Wellenbund Pumpenseite Durchmesser", "shaft_shoulder_diameter", "Pumpenseite"),
    ],
)
def test_a_side_inside_a_name_is_its_position(name, parameter, station):
    match = Names.built_in().find(name)
    assert match is not None and (match.parameter, match.station) == (parameter, station)


@pytest.mark.parametrize("name", ["Portée de turbine", "Sitz Turbine", "Portée ventilateur", "Generator seat"])
def test_a_machine_in_a_compound_for_its_shaft_is_no_shaft(name):
    assert Names.built_in().find(name) is None
