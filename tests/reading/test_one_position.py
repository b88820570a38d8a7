"""One position under several names of a table; housings by other words; kinds of springs in names."""

import pytest

from linter.reading import read_table

LISTS = {
    "de": ("Lager vorn;6204", "Radialkraft vorderes Lager;120 N", "Lager hinten;6203", "Radialkraft hinten;80 N"),
    "zh": ("前轴承型号;6204", "前端径向力;120 N", "后轴承型号;6203", "后端径向力;80 N"),
    "ja": ("前側軸受型番;6204", "前部ラジアル荷重;120 N", "後側軸受型番;6203", "後部ラジアル荷重;80 N"),
    "it": ("Cuscinetto anteriore;6204", "Carico radiale lato anteriore;120 N",
           "Cuscinetto posteriore;6203", "Carico radiale lato posteriore;80 N"),
}  # fmt: skip


@pytest.mark.parametrize("language", LISTS)
def test_side_end_and_bearing_of_one_word_are_one_position(tmp_path, language):
    (tmp_path / "t.csv").write_text("\n".join(("Parameter;Value", *LISTS[language])), encoding="utf-8")
    stations = read_table(tmp_path / "t.csv").stations
    assert stations.number("radial_load").tolist() == [120, 80]
    assert stations.text("bearing_designation").tolist() == ["6204", "6203"]


def test_names_that_state_the_same_are_two_positions(tmp_path):
    rows = ("Pos;Bearing;Shaft dia (mm)", "Front end;6204;20 k5", "Front side;6203;17 k5", "Rear;6202;15 k5")
    (tmp_path / "t.csv").write_text("\n".join(rows), encoding="utf-8")
    assert len(read_table(tmp_path / "t.csv").stations) == 3


@pytest.mark.parametrize(
    "name", ["End plate bore", "Schildbohrung", "墙板孔径", "側板穴径", "Foro fiancata", "Расточка стенки"]
)
def test_a_bore_in_a_wall_is_the_housing(tmp_path, name):
    (tmp_path / "t.csv").write_text(f"Parameter;Value\nBearing A;6204\n{name} A;47 H6 mm\n", encoding="utf-8")
    assert read_table(tmp_path / "t.csv").stations.size("housing_seat_diameter").nominal.tolist() == [47]


@pytest.mark.parametrize("name", ["Flange hole diameter", "Deckelbohrung", "End plate thickness", "墙板厚度"])
def test_other_sizes_of_plates_are_none_of_a_seat(tmp_path, name):
    (tmp_path / "t.csv").write_text(
        f"Parameter;Value\nBearing A;6204\nShaft dia A;20 k5\n{name} A;9 mm\n", encoding="utf-8"
    )
    assert not read_table(tmp_path / "t.csv").stations.known("housing_seat_diameter").any()


@pytest.mark.parametrize(
    ("name", "kind"),
    [("Wellfederkraft", "wave"), ("皿ばね荷重", "disc"), ("Forza molla ondulata", "wave"), ("Spring force", "")],
)
def test_the_name_of_a_force_says_the_kind_of_spring(tmp_path, name, kind):
    (tmp_path / "t.csv").write_text(f"Parameter;Value\nBearing A;6204\n{name};90 N\n", encoding="utf-8")
    stations = read_table(tmp_path / "t.csv").stations
    assert stations.choice("spring_kind").texts().tolist() == [kind]
    assert stations.size("preload_force").nominal.tolist() == [90]
