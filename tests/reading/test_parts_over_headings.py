"""Words for parts over a heading row, each over its first column only, and limits whose names end in ``min``."""

import pytest

from linter.reading import read_table


def read(tmp_path, text: str):
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path).stations


OVER = {
    "English": (
        "Sizes in mm, deviations and Ra in µm;;;;;;;;;;;;;;;;\n"
        "Frame;End;End shield;;;;;Rotor shaft;;;;;;Bearing;;;Rotor\n"
        ";;Bore;Fit;ES;EI;Ra;Journal;Fit;es;ei;Ra;Shoulder dia.;Type;Fr [N];Lubrication;n max [rpm]\n"
        "M 160;DE;62;H6;+19;0;0.8;30;k5;+11;+2;0.4;36;6206/C3;1330;grease;4500\n"
        "M 160;NDE;52;H6;+19;0;1.6;25;k5;+11;+2;0.2;31;6205/C3;775;grease;4500\n"
    ),
    "Italian, without shoulder": (
        "Quote in mm, scostamenti e Ra in µm;;;;;;;;;;;;;;;\n"
        "Grandezza;Lato;Scudo;;;;;Albero rotore;;;;;Cuscinetto;;;Rotore\n"
        ";;Foro;Toll.;Sup.;Inf.;Ra;Sede;Toll.;Sup.;Inf.;Ra;Sigla;Fr [N];Lubrificazione;n max [1/min]\n"
        "M 160;LA;62;H6;+19;0;0,8;30;k5;+11;+2;0,4;6206/C3;1330;grasso;4500\n"
        "M 160;LOA;52;H6;+19;0;1,6;25;k5;+11;+2;0,2;6205/C3;775;grasso;4500\n"
    ),
    "Japanese": (
        "寸法 mm、許容差および粗さ µm;;;;;;;;;;;;;;;\n"
        "型式;側;ブラケット;;;;;シャフト;;;;;軸受;;;ロータ\n"
        ";;内径;公差;上;下;Ra;外径;公差;上;下;Ra;型番;Fr [N];潤滑;最高回転数 [min-1]\n"
        "M 160;負荷側;62;H6;+19;0;0.8;30;k5;+11;+2;0.4;6206/C3;1330;グリース;4500\n"
        "M 160;反負荷側;52;H6;+19;0;1.6;25;k5;+11;+2;0.2;6205/C3;775;グリース;4500\n"
    ),
}


@pytest.mark.parametrize("text", OVER.values(), ids=OVER)
def test_a_roughness_below_the_word_for_a_part_is_of_that_part(tmp_path, text):
    stations = read(tmp_path, text)
    assert stations.number("housing_seat_roughness").tolist() == [0.8, 1.6]
    assert stations.number("shaft_seat_roughness").tolist() == [0.4, 0.2]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
    assert stations.size("housing_seat_diameter").upper == pytest.approx([0.019, 0.019])
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("shaft_seat_diameter").lower == pytest.approx([0.002, 0.002])
    assert stations.number("speed_max").tolist() == [4500, 4500]


LIMITS = {
    "positions before the limit": (
        "Frame;Brg DE;Shaft DE max;Shaft DE min;Bore DE max;Bore DE min;"
        "Brg NDE;Shaft NDE max;Shaft NDE min;Bore NDE max;Bore NDE min\n"
        "M 1;6206;30.011;30.002;62.019;62.000;6205;25.011;25.002;52.015;51.985\n"
    ),
    "positions behind it, least first": (
        "Baugröße;Lager AS;Welle min AS;Welle max AS;Bohrung min AS;Bohrung max AS;"
        "Lager BS;Welle min BS;Welle max BS;Bohrung min BS;Bohrung max BS\n"
        "M 1;6206;30,002;30,011;62,000;62,019;6205;25,002;25,011;51,985;52,015\n"
    ),
    "a row a position": (
        "Taglia;Lato;Cuscinetto;Albero max;Albero min;Foro max;Foro min\n"
        "M 1;LA;6206;30,011;30,002;62,019;62,000\nM 1;LOA;6205;25,011;25,002;52,015;51,985\n"
    ),
}


@pytest.mark.parametrize("text", LIMITS.values(), ids=LIMITS)
def test_two_limits_of_a_bore_beside_those_of_the_shaft_are_the_housings(tmp_path, text):
    stations = read(tmp_path, text)
    housing = stations.size("housing_seat_diameter")
    assert housing.nominal + housing.upper == pytest.approx([62.019, 52.015])
    assert housing.nominal + housing.lower == pytest.approx([62, 51.985])


def test_two_limits_of_a_bore_without_those_of_a_shaft_are_asked(tmp_path):
    stations = read(tmp_path, "Pos;Brg;Bore max;Bore min\nDE;6206;30.000;29.990\nNDE;6205;25.000;24.990\n")
    assert not stations.known("housing_seat_diameter").any()
    assert not stations.known("shaft_seat_diameter").any()


@pytest.mark.parametrize(
    "name", ["Total runout bore", "Rundlauf Bohrung", "Battement total alésage", "Oscillazione foro"]
)
def test_the_run_out_of_a_bore_is_the_housings(tmp_path, name):
    stations = read(
        tmp_path, f"Side;Bearing no.;Shaft;Bore;{name} [µm]\nDE;6206;30 k5;62 H6;12\nNDE;6205;25 k5;52 H6;14\n"
    )
    assert stations.number("housing_seat_runout") * 1000 == pytest.approx([12, 14])
