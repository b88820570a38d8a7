"""Single values: below columns of limits, below a narrow table, beside a word alone, beside the bearing in a name."""

import numpy as np
import pytest

from linter.reading import Reading, read_table

_LIMITS = [
    "Bearing cat. no.|6204||6203|",
    "Shaft seat dia [in]|0.7878|0.7875|0.6697|0.6694",
    "Shaft shoulder dia [in]|1.010||0.870|",
]


def read(tmp_path, rows: list[str]) -> Reading:
    path = tmp_path / "table.tsv"
    path.write_text("\n".join(row.replace("|", "\t") for row in rows), encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize(
    "lone", ["Radial load [lbf]|96||58|", "Material, shaft|steel|||", "Lubrication|oil bath||oil bath|"]
)
@pytest.mark.parametrize("head", ["|Max|Min|Max|Min", "|max.|min.|max.|min."])
def test_single_values_in_the_first_column_of_limits_are_no_limits(tmp_path, head, lone):
    stations = read(tmp_path, ["|Drive side||Cover side|", head, *_LIMITS, lone]).stations
    shoulder = stations.size("shaft_shoulder_diameter")
    assert shoulder.nominal == pytest.approx([25.654, 22.098]) and np.isnan(shoulder.lower).all()
    assert list(stations.text("bearing_designation")) == ["6204", "6203"]


def test_a_single_limit_among_rows_that_say_nothing_stays_a_limit(tmp_path):
    rows = ["|Drive side||Cover side|", "|Max|Min|Max|Min", *_LIMITS[1:], "Housing shoulder dia [in]||1.62||1.37"]
    assert not read(tmp_path, rows).stations.known("shaft_shoulder_diameter").any()


def test_values_of_the_machine_below_a_narrow_table(tmp_path):
    rows = ["Position|Bearing|Shaft seat", "DE|6208|40 k5", "NDE|6206|30 k5", "|Max speed|2400 rpm", "|Ambient|40 °C"]
    stations = read(tmp_path, rows).stations
    assert stations.number("speed_max").tolist() == [2400, 2400]
    assert stations.number("ambient_temperature").tolist() == [40, 40]
    assert list(stations.text("bearing_designation")) == ["6208", "6206"]


@pytest.mark.parametrize("label", ["Ambient", "Umgebung", "Ambiente", "環境", "Окружающая среда"])
def test_what_is_around_a_machine_has_a_temperature(tmp_path, label):
    rows = [
        f"{label}|40 °C",
        "",
        "Position|Bearing|Shaft seat|Housing seat",
        "DE|6208|40 k5|80 H6",
        "NDE|6206|30 k5|62 H6",
    ]
    assert read(tmp_path, rows).stations.number("ambient_temperature").tolist() == [40, 40]
    rows[0] = f"{label}|dusty"
    assert not read(tmp_path, rows).stations.known("ambient_temperature").any()


@pytest.mark.parametrize("bearing", ["6311", "NU 310", "6309-2Z/C3"])
def test_a_name_with_the_bearing_there_behind_it(tmp_path, bearing):
    rows = [
        "Characteristic|Nominal|Upper tol|Lower tol|Unit",
        f"Inboard bearing journal dia ({bearing})|55|0.015|0.002|mm",
    ]
    rows += ["Outboard bearing journal dia (H7)|45|0.013|0.002|mm", "Outboard journal roughness Ra|0.8|||µm"]
    stations = read(tmp_path, rows).stations
    assert stations.known("shaft_seat_diameter").tolist() == [True, False]


_PAIRS = [
    "DE shaft dia|25.0020|25.0110",
    "DE housing bore|52.0000|52.0190",
    "NDE shaft dia|20.0020|20.0110",
    "NDE housing bore|47.0000|47.0160",
]


@pytest.mark.parametrize("head", ["Parameter|Low|High", "Feature|Smallest|Largest", "Merkmal|Kleinst|Größt"])
def test_low_and_high_head_limits_and_limits_of_classes_are_in_mm(tmp_path, head):
    reading = read(tmp_path, [head, *_PAIRS])
    assert list(reading.stations.text("station")) == ["DE", "NDE"]
    assert reading.stations.known("shaft_seat_diameter").all() and reading.stations.known("housing_seat_diameter").all()
    assert "length-unit" in {problem.code for problem in reading.stations.problems}


def test_limits_of_no_class_prove_no_unit(tmp_path):
    rows = ["Parameter|Low|High", *(pair.replace("020|", "030|") for pair in _PAIRS)]
    assert not read(tmp_path, rows).stations.known("shaft_seat_diameter").any()


@pytest.mark.parametrize("heads", ["|Low|High|Low|High", "|Min|Max|Min|Max"])
def test_low_and_high_below_positions_that_say_a_bearing(tmp_path, heads):
    rows = ["|Thrust brg (inboard)||Radial brg (outboard)|", heads, "Brg no.|6310||6212/C3|", "Max speed [rpm]|3560|||"]
    rows += ["Shaft dia [mm]|50.002|50.013|60.002|60.015", "Lubrication|oil bath|||"]
    stations = read(tmp_path, rows).stations
    assert list(stations.text("bearing_designation")) == ["6310", "6212/C3"]
    assert stations.known("shaft_seat_diameter").all() and stations.choice("lubrication").known.all()


@pytest.mark.parametrize("code", ["DB", "TBT", "tandem", "O-Anordnung", "back-to-back", "背对背"])
def test_how_bearings_are_set_beside_each_other_names_no_machine(tmp_path, code):
    rows = ["Spindle type|MS 7", "FRONT BEARING", "Designation|7014C", f"Arrangement|{code}", "Shaft seat [mm]|70 h4"]
    rows += ["REAR BEARING", "Designation|6012", "Shaft seat [mm]|60 h5"]
    stations = read(tmp_path, rows).stations
    assert set(stations.text("machine")) == {"MS 7"}
    assert list(stations.size("shaft_seat_diameter").nominal) == [70, 60]


@pytest.mark.parametrize(
    "heads",
    [
        "Feature|A min|A max|B min|B max", "Item|DE (low)|DE (high)|NDE (low)|NDE (high)",
        "Merkmal|Min vorn|Max vorn|Min hinten|Max hinten", "項目|前側 最小|前側 最大|後側 最小|後側 最大",
    ],
)  # fmt: skip
def test_heads_that_say_a_position_and_a_limit_together(tmp_path, heads):
    rows = ["Shaft seat dia (mm)|25.0020|25.0110|20.0020|20.0110", "Bearing|6205||6204|", "Radial load (N)|900||700|"]
    stations = read(tmp_path, [heads, *rows]).stations
    assert len(stations) == 2 and list(stations.text("bearing_designation")) == ["6205", "6204"]
    assert stations.known("shaft_seat_diameter").all() and stations.number("radial_load").tolist() == [900, 700]


def test_heads_of_positions_with_nominal_and_class(tmp_path):
    rows = [
        "Feature|DE nominal|DE tolerance|NDE nominal|NDE tolerance",
        "Shaft seat dia (mm)|25|k5|20|k5",
        "Bearing|6205||6204|",
    ]
    size = read(tmp_path, rows).stations.size("shaft_seat_diameter")
    assert list(size.nominal) == [25, 20]


@pytest.mark.parametrize("parts", [("Shaft", "Housing"), ("Arbre", "Logement"), ("Welle", "Gehäuse")])
def test_tables_of_a_shaft_and_a_housing_below_their_bearing_are_no_list(tmp_path, parts):
    rows = []
    for station, bearing, sizes in (("P1", "6205", (25, 52)), ("P2", "6204", (20, 47))):
        rows += [f"Position|{station}", f"Bearing no.|{bearing}", "Static rating (N)|885"]
        rows += ["Part|Diameter [mm]|Upper dev. [mm]|Lower dev. [mm]|Total run-out [mm]|Fillet radius [mm]"]
        rows += [f"{part}|{size}|0.005|-0.002|0.008|0.2" for part, size in zip(parts, sizes, strict=True)] + [""]
    stations = read(tmp_path, rows).stations
    assert list(stations.text("bearing_designation")) == ["6205", "6204"]
    assert list(stations.size("shaft_seat_diameter").nominal) == [25, 20]
    assert list(stations.size("housing_seat_diameter").nominal) == [52, 47]
