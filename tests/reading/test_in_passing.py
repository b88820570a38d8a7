"""What remarks say in passing, of the position that they name or of that of their row; what may say it is listed."""

import pytest

from linter.reading import read_table
from linter.reading.layouts.in_passing import said_in_passing


def read(folder, text, name="t.csv"):
    (folder / name).write_text(text, encoding="utf-8")
    return read_table(folder / name)


def at(stations, name, parameter):
    """The choice of a parameter at a position, empty for none."""
    row = stations.text("station").tolist().index(name)
    return stations.choice(parameter).texts().tolist()[row]


SIDE_BY_SIDE = {
    "en": ("what;wheel end;pulley end;units;my notes", "bearings;6207;6206;;pulley end floats in the bore",
           "journal OD;35 k5;30 k5;mm;", "pulley end", "floating", ""),
    "fr": ("Caractéristique;Côté pompe;Côté moteur;Unité;Observations",
           "Roulement;6207;6206;;",
           "Alésage du logement;72 H7;62 H7;mm;bague extérieure coulissante côté moteur", "Côté moteur", "", "outer"),
    "ja": ("項目;負荷側;反負荷側;単位;備考", "軸受型番;6207;6206;;反負荷側は外輪移動", "軸径;35 k5;30 k5;mm;",
           "反負荷側", "", "outer"),
    "de": ("Merkmal;Antriebsseite;Lüfterseite;Einheit;Bemerkung",
           "Lager;6207;6206;;Lüfterseite als Loslager",
           "Lagersitz Welle;35 k5;30 k5;mm;", "Lüfterseite", "floating", ""),
    "zh": ("参数;叶轮端;电机端;单位;备注", "轴承型号;6207;6206;;", "轴承孔直径;72 H7;62 H7;mm;电机端外圈可滑动",
           "电机端", "", "outer"),
}  # fmt: skip


@pytest.mark.parametrize("language", SIDE_BY_SIDE)
def test_a_remark_names_its_position(tmp_path, language):
    *lines, position, role, ring = SIDE_BY_SIDE[language]
    s = read(tmp_path, "\n".join(lines) + "\n").stations
    other = next(name for name in s.text("station").tolist() if name != position)
    for parameter, said in (("axial_role", role), ("free_ring", ring)):
        assert at(s, position, parameter) == said
        assert at(s, other, parameter) == ""


@pytest.mark.parametrize(
    ("remark", "role", "ring"),
    [("Loslager, Außenring verschiebbar", "floating", "outer"), ("as floating bearing", "floating", ""),
     ("Festlager", "locating", "")],
)  # fmt: skip
def test_a_remark_beside_a_seat_is_of_its_position(tmp_path, remark, role, ring):
    lines = ("Parameter;Value;Unit;Notes", "Bearing A;6206;;", "Housing seat A;62;mm;H6",
             f"Housing seat B;52;mm;{remark}",
             "Bearing B;6205;;")  # fmt: skip
    s = read(tmp_path, "\n".join(lines) + "\n").stations
    assert (at(s, "B", "axial_role"), at(s, "B", "free_ring")) == (role, ring)
    assert (at(s, "A", "axial_role"), at(s, "A", "free_ring")) == ("", "")


@pytest.mark.parametrize(
    "remark",
    ["was floating until 2023", "not floating", "floating or locating?", "the other side is floating",
     "früher Loslager",
     "floating on the fan side", "spring washer groove"],
)  # fmt: skip
def test_a_remark_that_leaves_it_open_says_nothing(tmp_path, remark):
    lines = ("Parameter;Value;Unit;Notes", "Bearing A;6206;;ok", f"Housing seat A;62;mm;{remark}",
             "Bearing B;6205;;new",
             "Housing seat B;52;mm;bored", "Shaft seat A;30;mm;ground")  # fmt: skip
    reading = read(tmp_path, "\n".join(lines) + "\n")
    assert set(reading.stations.choice("axial_role").texts().tolist()) <= {""}
    if "groove" not in remark:
        assert any(remark in u.value and u.place.cell == "D3" for u in reading.unused)


def test_a_spring_acts_on_the_ring_at_a_position(tmp_path):
    lines = ("Parameter;Value;Unit;Comment", "Bearing NDE;608;;", "Bearing DE;607;;", "Shaft seat NDE;8 k5;mm;",
             "Preload force;14;N;wave spring acts on outer ring DE")  # fmt: skip
    s = read(tmp_path, "\n".join(lines) + "\n").stations
    assert at(s, "DE", "axial_role") == "spring-loaded"
    assert at(s, "NDE", "axial_role") == ""
    assert s.choice("spring_kind").texts().tolist() == ["wave", "wave"]


@pytest.mark.parametrize("word", ["hybrid", "Hybridlager", "ハイブリッド", "混合陶瓷轴承", "hybride"])
def test_a_hybrid_bearing_has_balls_of_silicon_nitride(tmp_path, word):
    s = read(tmp_path, f"Parameter;Value;Notes\nBearing A;608 P5;{word}\nShaft seat A [mm];8 k5;\n").stations
    assert s.choice("ball_material").texts().tolist() == ["silicon nitride"]


# --- rows that head a part, and rows below them


PARTS = {
    "es": ("Concepto;Valor;Ud.;Comentario", "EJE;;;acero 1.7225", "Asiento lado motor;17 k6;mm;",
           "Resalte lado motor;21,2;mm;",
           "CARCASA;;;fundición de aluminio", "Alojamiento lado motor;40 H7;mm;",
           "RODAMIENTOS;;;", "Lado motor;6203-2RS;;libre"),
    "de": ("Bauteil;Wert;Einheit;Bemerkung", "Welle;;;42CrMo4", "Lagersitz Motorseite;17 k6;mm;",
           "Bund Motorseite;21,2;mm;",
           "Gehäuse;;;Werkstoff: EN AC-46000", "Bohrung Motorseite;40 H7;mm;",
           "Lager;;;", "Motorseite;6203-2RS;;Loslager"),
    "zh": ("项目,数值,单位,备注", "轴,,,材料 40Cr", "电机端轴承位直径,17 k6,mm,", "电机端轴肩直径,21.2,mm,",
           "壳体,,,材料 ADC12",
           "电机端轴承孔直径,40 H7,mm,", "轴承,,,", "电机端,6203-2RS,,游动端"),
}  # fmt: skip


@pytest.mark.parametrize("language", PARTS)
def test_a_row_that_heads_a_part_says_its_material(tmp_path, language):
    reading = read(tmp_path, "\n".join(PARTS[language]) + "\n")
    s = reading.stations
    assert len(s) == 1
    assert s.choice("shaft_material").texts().tolist() == ["steel"]
    assert s.choice("housing_material").texts().tolist() == ["aluminium"]
    assert s.size("shaft_seat_diameter").nominal.tolist() == [17]
    assert s.size("housing_seat_diameter").nominal.tolist() == [40]
    assert s.size("shaft_shoulder_diameter").nominal.tolist() == [21.2]
    assert s.text("bearing_designation").tolist() == ["6203-2RS"]
    assert s.choice("axial_role").texts().tolist() == ["floating"]
    assert not any("1.7225" in u.value or "42CrMo4" in u.value or "40Cr" in u.value for u in reading.unused)


# --- the revision behind a drawing's number


@pytest.mark.parametrize(
    ("head", "line"),
    [("Parameter;Value;Unit;Notes", "Drawing no.;GB-12;;rev. 3"),
     ("Merkmal;Wert;Einheit;Bemerkung", "Zeichnungsnummer;GB-12;Index 3;"),
     ("Concepto;Valor;Ud.;Comentario", "Plano;GB-12;rev. 3;"),
     ("Показатель;Значение;Ед.;Примечание", "Чертёж;GB-12;;изм. 3"),
     ("项目;数值;单位;备注", "图号;GB-12;;版本 3")],
)  # fmt: skip
def test_the_revision_stands_beside_the_number(tmp_path, head, line):
    s = read(
        tmp_path, f"{head}\n{line}\nshaft_seat_diameter;20 k5;mm;\nbearing_designation;6204;;\nstation;A;;\n"
    ).stations
    assert s.text("drawing_number").tolist() == ["GB-12"]
    assert s.text("drawing_revision").tolist() == ["3"]


@pytest.mark.parametrize("text", ["定位置予圧", "定位置预紧", "予圧は定位置"])
def test_a_preload_by_position_locates_no_bearing(text):
    assert "axial_role" not in said_in_passing(text, of_spring=True)
    assert said_in_passing(f"固定側、{text}", of_spring=False) == {"axial_role": "locating"}
