"""What a cell says beside the parameter of its name is read too, where the table states it nowhere else."""

import pytest

from linter.reading import read_table
from linter.reading.cells.several import role_of_name

SPRINGS = {
    "the kind alone": ("Preload by", "wave washer", "wave", None, None),
    "German": ("Lager fest/los", "los, Wellfeder", "wave", None, None),
    "force behind the kind": ("Preload", "disc springs 120 N", "disc", 120, None),
    "force at a length": ("Spring type", "wave, 60 N at 2.4 mm", "wave", 60, 2.4),
    "a thickness is no length": ("Vorspannung durch", "Tellerfeder, 2.5 mm, 140 N", "disc", 140, None),
    "Spanish": ("Función", "libre (resorte ondulado 45 N)", "wave", 45, None),
    "a force with its deviation": ("Spring type", "wave, 60 ± 5 N", "wave", 60, None),
    "a range is no force": ("Preload by", "wave spring, 50 - 70 N", "wave", None, None),
    "a preload that is a spring": ("Preload", "coil springs", "helical", None, None),
    "what gives the preload": ("Axiale Vorspannung mittels", "Tellerfederpaket", "disc", None, None),
    "a word between of the spring's name": ("Tipo di precarico", "molle a tazza", "disc", None, None),
    "two signs": ("预紧", "碟簧", "disc", None, None),
    "the spring alone": ("Пружина", "волнистая", "wave", None, None),
    "Japanese": ("予圧方式", "ウェーブワッシャ 2.4mm時 60N", "wave", 60, 2.4),
}


@pytest.mark.parametrize("kind", SPRINGS)
def test_what_a_cell_says_of_the_spring_is_read(tmp_path, kind):
    name, cell, spring, force, length = SPRINGS[kind]
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;A\nBearing;6204-2Z\nShaft seat;20 k5\nHousing seat;47 H6\n{name};{cell}\n", "utf-8")
    stations = read_table(path).stations
    kinds = stations.choice("spring_kind")
    assert [kinds.words[code] for code in kinds.codes] == [spring]
    for parameter, value in (("preload_force", force), ("spring_installed_length", length)):
        assert stations.size(parameter).nominal.tolist() == (
            [value] if value else pytest.approx([float("nan")], nan_ok=True)
        )


@pytest.mark.parametrize("text", ["oil bath ISO VG 32", "oil bath (VG 32)", "ISO VG32 oil bath"])
def test_the_class_of_viscosity_behind_a_lubrication_is_its_viscosity(tmp_path, text):
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;A\nBearing;6204\nShaft seat;20 k5\nLubrication;{text}\n", "utf-8")
    stations = read_table(path).stations
    assert stations.number("base_oil_viscosity_40").tolist() == [32]
    oils = stations.choice("lubrication")
    assert oils.words[oils.codes[0]] == "oil bath"


@pytest.mark.parametrize(
    ("text", "on", "off"),
    [
        ("intermittent, 20 min on / 10 min off", 1200, 600),
        ("Aussetzbetrieb, 10 min Betrieb, 5 min Pause", 600, 300),
        ("повторно-кратковременный, 10 мин работа, 5 мин пауза", 600, 300),
        ("間欠 (運転20分/停止10分)", 1200, 600),
    ],
)
def test_the_times_of_a_duty_are_read_with_it(tmp_path, text, on, off):
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;Value\nDuty;{text}\nBearing;6204\nShaft seat;20 k5\n", "utf-8")
    stations = read_table(path).stations
    assert stations.choice("duty").texts().tolist() == ["intermittent"]
    assert (stations.number("on_time").tolist(), stations.number("off_time").tolist()) == ([on], [off])


@pytest.mark.parametrize(
    ("cell", "form"), [("F0,6x0,3", "F"), ("DIN 509-E 0.6 × 0.3", "E"), ("Form F 0,6x0,3 mm", "F")]
)
def test_an_undercut_in_one_cell_states_form_radius_and_depth(tmp_path, cell, form):
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;A\nBearing;6204\nShaft seat;20 k5\nFreistich Welle;{cell}\n", "utf-8")
    stations = read_table(path).stations
    assert stations.choice("shaft_undercut_form").texts().tolist() == [form]
    assert stations.number("shaft_undercut_radius").tolist() == [0.6]
    assert stations.number("shaft_undercut_depth").tolist() == [0.3]


@pytest.mark.parametrize(
    ("text", "role"),
    [
        ("floating bearing with spring washer, outer ring free", "spring-loaded"),
        ("Loslager (Außenring verschiebbar)", "floating"),
        ("плавающая, наружное кольцо свободно", "floating"),
        ("ばね側、外輪移動", "spring-loaded"),
    ],
)
def test_the_ring_that_may_move_is_read_with_the_function(tmp_path, text, role):
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;A\nBearing;6204\nShaft seat;20 k5\nFunction;{text}\n", "utf-8")
    stations = read_table(path).stations
    assert stations.choice("axial_role").texts().tolist() == [role]
    assert stations.choice("free_ring").texts().tolist() == ["outer"]


@pytest.mark.parametrize(
    ("cell", "read"),
    [("lithium complex", True), ("LGX-2", True), ("KP2K-30", True), ("ウレア系", True), ("聚脲", True),
     ("without", False), ("dry", False),
     ("see note 3", False), ("none", False)],
)  # fmt: skip
def test_a_grease_below_its_word_is_named_by_its_make_or_its_designation(tmp_path, cell, read):
    path = tmp_path / "t.csv"
    rows = [
        "Position;Bearing;Shaft seat;Housing seat;Grease",
        f"DE;6204;20 k5;47 H6;{cell}",
        f"NDE;6203;17 k5;40 H6;{cell}",
    ]
    path.write_text("\n".join([*rows, ""]), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.choice("lubrication").texts().tolist() == (["grease"] * 2 if read else [""] * 2)


@pytest.mark.parametrize("cell", ["for life, 25 %", "grease, 30%", "Fett, 25 %", "graisse, 25 %", "グリース, 25 %"])
def test_a_share_behind_a_grease_is_its_fill(tmp_path, cell):
    path = tmp_path / "t.tsv"
    path.write_text(f"Position\tBearing\tLubrication\nA\t6205\t{cell}\nB\t6204\t{cell}", encoding="utf-8")
    stations = read_table(path).stations
    assert set(stations.choice("lubrication").texts()) == {"grease"}
    assert set(stations.number("grease_fill")) <= {25, 30}


def test_a_long_list_says_in_every_row_what_a_short_one_says(tmp_path):
    path = tmp_path / "list.csv"
    count = 1200
    rows = [f"M{i};A;Ø{20 + i % 7} k5 Ra 0.4;MX-{i:04}, Rev. B;oil bath ISO VG 32\n" for i in range(count)]
    path.write_text("machine;station;shaft seat;drawing number;lubrication\n" + "".join(rows), "utf-8")
    stations = read_table(path).stations
    assert stations.number("shaft_seat_roughness").tolist() == [0.4] * count
    assert stations.number("base_oil_viscosity_40").tolist() == [32.0] * count
    assert stations.text("drawing_revision").tolist() == ["B"] * count


@pytest.mark.parametrize(
    ("name", "role"),
    [
        ("Bearing A (non-locating)", "floating"),
        ("Bearing B (locating)", "locating"),
        ("A (Festlager)", "locating"),
        ("Loslager B", "floating"),
        ("Drive end - fixed", "locating"),
        ("Supporto non fisso", ""),
        ("not fixed end", ""),
        ("Drive end", ""),
    ],
)
def test_the_name_of_a_position_says_its_function_unless_it_denies_one(name, role):
    assert role_of_name(name) == role
