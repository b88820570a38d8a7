"""Names in Chinese and Japanese by the rules of their order, characters and symbols."""

import pytest

from linter.reading.cells.choices import read_choice
from linter.reading.cells.signs import ReadError
from linter.reading.cells.units import known_unit
from linter.reading.layouts.sides import side_of
from linter.reading.words.columns import judge_columns
from linter.reading.words.headings import Words
from linter.reading.words.names import Names

WORDS = Words(Names.built_in())


def _named(text: str) -> tuple[str, str, str]:
    heading = WORDS.heading(text)
    return ("", "", "") if heading is None else (heading.parameter, heading.aspect, heading.station)


@pytest.mark.parametrize(
    ("size", "fit", "name"),
    [
        ("配合轴径", "轴径配合", "shaft_seat_diameter"),
        ("はめあい穴径", "ハウジング穴のはめあい", "housing_seat_diameter"),
        ("軸配合徑(mm)", "軸徑配合", "shaft_seat_diameter"),
    ],
)
def test_last_word_of_a_name_says_whether_it_is_a_fit(size: str, fit: str, name: str) -> None:
    assert _named(size) == (name, "value", "")
    assert _named(fit) == (name, "tolerance", "")


def test_fit_beside_a_deviation_is_the_seat() -> None:
    assert _named("轴配合上偏差") == ("shaft_seat_diameter", "upper", "")
    assert _named("内圈配合轴径下偏差(μm)") == ("shaft_seat_diameter", "lower", "")


def test_name_is_cut_another_way_where_its_longest_words_mean_nothing() -> None:
    assert _named("軸受の呼び内径")[0] == "bore_diameter"  # 軸受の呼び is a word of its own
    assert _named("孔径跳动")[0] == "housing_seat_runout"


@pytest.mark.parametrize("text", ["軸頸直徑(mm)", "軸頸圓柱度", "軸承座孔徑", "要求壽命(h)", "現場環境溫度"])
def test_traditional_characters_are_read(text: str) -> None:
    assert _named(text)[0]


def test_station_keeps_its_own_characters() -> None:
    assert _named("負荷側 D") == ("outside_diameter", "value", "負荷側")
    assert _named("前軸承座孔徑上偏差")[2] == "前軸承"


def test_sign_of_a_limit_behind_a_name_says_nothing() -> None:
    assert _named("轴颈圆柱度≤")[0] == _named("Shaft seat cylindricity ≤")[0] == "shaft_seat_cylindricity"


def test_number_before_the_word_for_a_span_is_no_position() -> None:
    assert _named("2軸受間距離")[2] == ""


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("固定端/自由端", "axial_role"), ("縦型・横型", "shaft_orientation"),
        ("horizontal / vertical", "shaft_orientation"),
        ("连续/间歇", "duty"), ("回転輪(内輪/外輪)", "rotating_ring"), ("P5/P6", ""), ("内圈/外圈", ""), ("是/否", ""),
        ("steel/brass", ""),
    ],
)  # fmt: skip
def test_choices_that_a_name_lists_name_their_parameter(text: str, name: str) -> None:
    assert _named(text)[0] == name


@pytest.mark.parametrize("text", ["图号/版本号", "Drawing no./Rev", "Zeichnungsnr./Index"])
def test_a_drawing_and_its_revision_under_one_name_are_the_drawing(text: str) -> None:
    """Their cells are parted where they hold both (``GB-7 / C``)."""
    assert _named(text)[0] == "drawing_number"


def test_small_letters_are_a_symbol_and_capitals_a_place() -> None:
    assert _named("軸径 ds") == ("shaft_seat_diameter", "value", "")
    assert _named("軸径 DS") == ("shaft_seat_diameter", "value", "DS")
    assert _named("軸肩過渡圓角ra max")[0] == "shaft_fillet_radius"
    assert _named("轴承d(mm)")[0] == "bore_diameter"


def test_machine_and_the_shaft_it_drives_are_places() -> None:
    for place in ("モータ側", "泵端", "输入轴侧", "出力軸側", "端盖侧"):
        assert WORDS.station_said(place) == place
    for part in ("回転軸側", "空心轴侧", "壳体侧"):
        assert WORDS.station_said(part) == ""


@pytest.mark.parametrize(
    ("labels", "hole"),
    [
        (["轴承型号", "轴径", "孔径"], "housing_seat_diameter"),
        (["軸受型番", "内径", "外径", "幅", "穴径"], "housing_seat_diameter"),
        (["轴承型号", "孔径", "外径", "宽度"], "bore_diameter"),
        (["轴承型号", "孔径"], ""),
    ],
)
def test_hole_is_the_housings_or_the_bearings_by_what_stands_beside_it(labels: list[str], hole: str) -> None:
    headings = [WORDS.heading(label) for label in labels]
    judged = judge_columns(labels, headings, lambda _: [], WORDS)
    at = next(c for c, label in enumerate(labels) if label in ("孔径", "穴径"))
    heading = judged[at]
    assert ("" if heading is None else heading.parameter) == hole


@pytest.mark.parametrize(
    ("name", "text", "choice"),
    [
        ("cage", "冲压钢板保持架", "pressed steel"), ("cage", "もみ抜き黄銅保持器", "machined brass"),
        ("axial_role", "固定端轴承", "locating"), ("rotating_ring", "内圈旋转,外圈静止", "inner"),
        ("shaft_material", "45#调质", "steel"), ("shaft_material", "S45C焼入れ焼戻し", "steel"),
        ("closure", "開式", "open"),
        ("cage", "非冲压", ""), ("axial_role", "两端固定", ""), ("closure", "橡胶密封", ""),
        ("rotating_ring", "内圈外圈", ""),
    ],
)  # fmt: skip
def test_cell_is_cut_into_choices_and_details_that_agree(name: str, text: str, choice: str) -> None:
    read = read_choice(name, text)
    assert isinstance(read, ReadError) if not choice else read == choice


def test_number_behind_a_seat_is_the_bearings() -> None:
    assert _named("轴承位1圆柱度") == ("shaft_seat_cylindricity", "value", "轴承1")
    assert _named("轴承座孔1直径(mm)") == ("housing_seat_diameter", "value", "轴承1")
    assert _named("轴承位2轴肩跳动") == ("shaft_shoulder_runout", "value", "轴承2")
    assert _named("軸受2型番") == ("bearing_designation", "value", "軸受2")


def test_words_of_three_dimensions_in_their_order() -> None:
    for text in ("内径×外径×宽度 (mm)", "内径×外径×幅", "Bore x OD x Width"):
        assert _named(text)[1] == "dimensions"
    assert _named("外径×内径×幅")[1] != "dimensions"


def test_ring_in_brackets_behind_a_part_is_its_heading() -> None:
    for text, side in (("軸(内輪側)", "shaft"), ("Gehäuse (Außenring)", "housing"), ("孔", "housing")):
        found = side_of(text)
        assert found is not None and found.side == side


def test_unit_beside_what_is_measured_in_it_is_read() -> None:
    units = {
        "um": ("μmRa", "µm Ra", "umRa"),
        "mm": ("mm TIR", "мм Ra"),
        "in": ("in FIM", "in dia.", "in (F.I.M.)"),
    }
    for name, texts in units.items():
        for text in texts:
            unit = known_unit(text)
            assert unit is not None and (unit.name, unit.dimension) == (name, "length")
    assert known_unit("µm Rz") is None  # another roughness
    assert known_unit("Ra (µm)") is None  # a heading


@pytest.mark.parametrize("text", ["图样要求", "図面指示値", "Drawing requirement", "Zeichnungsforderung"])
def test_what_the_drawing_asks_for_is_the_value(text: str) -> None:
    assert "VALUE" in WORDS.groups(text)
