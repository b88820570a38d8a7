"""The preload force, and the ring that may move, where only a remark beside the bearing says them."""

import pytest

from linter.reading import read_table

HEADS = {
    "en": "Position,Bearing,Shaft seat,Housing seat,Remark", "de": "Lagerstelle,Lager,Wellensitz,Gehäusesitz,Bemerkung",
    "fr": "Palier,Roulement,Portée d'arbre,Alésage logement,Remarque",
    "it": "Supporto,Cuscinetto,Sede albero,Sede alloggiamento,Note",
    "es": "Apoyo,Rodamiento,Asiento del eje,Asiento del alojamiento,Observaciones",
    "ja": "位置,軸受,軸はめあい,ハウジングはめあい,備考", "zh": "位置,轴承,轴颈,座孔,备注",
    "ru": "Опора,Подшипник,Посадка вала,Посадка корпуса,Примечание",
}  # fmt: skip


def read(tmp_path, language, *remarks):
    ends = (("A", "6205-2Z", "25 k5", "52 H6"), ("B", "6204-2Z", "20 k5", "47 H6"))
    lines = [HEADS[language].replace(",", ";")]
    lines += [";".join((*end, remark)) for end, remark in zip(ends, remarks, strict=True)]
    path = tmp_path / "t.csv"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize(("language", "first", "second"), [
    ("en", "fixed bearing", "floating, outer ring floats, axial preload of 45 N"),
    ("de", "Festlager", "Loslager, Außenring verschiebbar, Vorspannung ca. 45 N"),
    ("fr", "palier fixe", "palier libre, bague extérieure libre, précharge 45 N"),
    ("it", "vincolato assialmente", "libero, anello esterno libero, precarico 45 N"),
    ("es", "apoyo fijo", "apoyo libre, aro exterior libre, precarga: 45 N"),
    ("ja", "固定側", "自由側、外輪移動可、予圧45N"),
    ("zh", "固定端", "游动端,外圈可移动,预紧力45N"),
    ("ru", "фиксирующая", "плавающая, наружное кольцо свободно, преднатяг 45 Н"),
])  # fmt: skip
def test_a_remark_states_preload_role_and_free_ring(tmp_path, language, first, second):
    stations = read(tmp_path, language, first, second).stations
    assert stations.size("preload_force").nominal.tolist() == [45, 45]
    assert stations.choice("axial_role").is_in("locating").tolist() == [True, False]
    assert stations.choice("free_ring").is_in("outer").tolist() == [False, True]


@pytest.mark.parametrize("remark", [
    "preload 45-50 N", "preload 45 N max", "max. preload 45 N", "preload 45 N/mm", "preload torque 45 Nm",
    "preload (45 ± 5) N", "old preload 45 N", "no preload 45 N", "load 45 N",
])  # fmt: skip
def test_no_preload_is_taken_from_limits_rates_moments_or_denials(tmp_path, remark):
    assert not read(tmp_path, "en", "fixed bearing", remark).stations.known("preload_force").any()


def test_remarks_that_contradict_each_other_state_no_preload(tmp_path):
    stations = read(tmp_path, "en", "preload 45 N", "preload 60 N").stations
    assert not stations.known("preload_force").any()


def test_floating_beside_a_housing_seat_is_a_role_and_frees_no_ring(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "name,value,remark\nB_shaft_seat [mm],20 k5,\nB_housing_seat [mm],47 H6,floating\nB_bearing,6204-2Z,\n"
        "A_shaft_seat [mm],25 k5,\nA_housing_seat [mm],52 H6,\nA_bearing,6205-2Z,\n",
        encoding="utf-8",
    )
    assert not read_table(path).stations.known("free_ring").any()
