"""Parts below positions, names down a column, beside a table of the bearings above or below them."""

import pytest

from linter.reading import read_table

TABLES = {
    "below a list": "Machine;Rührwerk;;;;\nmax. Drehzahl in U/min;3000;;;;\n;;;;;\n"
    "Lagerstelle;Lagertyp;Radiallast in N;Axiallast in N;;\nA-Seite;6210;350;325;;\nB-Seite;6209;350;235;;\n;;;;;\n"
    ";;A-Seite;;B-Seite;\nMerkmal;Einheit;Wellensitz;Gehäusebohrung;Wellensitz;Gehäusebohrung\n"
    "Durchmesser;mm;50 k5;90 H6;45 k5;85 H6\nRauheit Ra;µm;0,8;1,6;0,4;0,8\nZylindrizität;mm;0,004;0,005;0,003;0,006\n",
    "above a list": ",Drive end,,Fan end,\nProperty,Spindle shaft,Sleeve bore,Spindle shaft,Sleeve bore\n"
    "Seat diameter,50 +0.013 +0.002 mm,90 +0.022 0.000 mm,45 +0.013 +0.002 mm,85 +0.022 0.000 mm\n"
    "Roughness Ra,0.8 µm,1.6 µm,0.4 µm,0.8 µm\n,,,,\n"
    "Support,Bearing,Radial load,Max. speed,\nDrive end,6210,350 N,3000 rpm,\nFan end,6209,350 N,3000 rpm,\n",
    "parts over positions": "支点,軸受形式番号,ラジアル荷重[N],最高回転速度[min-1],\n"
    "駆動側,6210,350,3000,\n反駆動側,6209,350,3000,\n"
    ",,,,\n,軸,,ハウジング,\n項目,駆動側,反駆動側,駆動側,反駆動側\n直径[mm],50 k5,45 k5,90 H6,85 H6\n"
    "表面粗さRa[µm],0.8,0.4,1.6,0.8\n円筒度[mm],0.004,0.003,0.005,0.006\n",
    "positions and parts in one head": "Posizione;Sigla cuscinetto;Carico radiale [N];Velocità max [giri/min];\n"
    "Lato comando;6210;350;3000;\nLato libero;6209;350;3000;\n;;;;\n"
    "Caratteristica;Albero lato comando;Alloggiamento lato comando;Albero lato libero;Alloggiamento lato libero\n"
    "Diametro sede [mm];50 k5;90 H6;45 k5;85 H6\nRugosità Ra [µm];0,8;1,6;0,4;0,8\n",
    "units right, two names of headings alone": "Posizione;Cuscinetto;Carico radiale;Velocità max;;\n"
    "Lato pompa;6210;350 N;3000 giri/min;;\nLato motore;6209;350 N;3000 giri/min;;\n;;;;;\n"
    ";Lato pompa;;Lato motore;;\nGrandezza;Albero;Sede;Albero;Sede;Unità\nDiametro;50 k5;90 H6;45 k5;85 H6;mm\n"
    "Ra;0,8;1,6;0,4;0,8;µm\nRaggio raccordo max;1;1;0,8;0,8;mm\n",
}


@pytest.mark.parametrize("kind", TABLES)
def test_each_value_belongs_to_its_seat(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(TABLES[kind], "utf-8")
    stations = read_table(path).stations
    shaft, housing = (stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    read = zip(
        stations.text("bearing_designation"),
        shaft.nominal.tolist(),
        shaft.lower.round(4).tolist(),
        housing.nominal.tolist(),
        housing.upper.round(4).tolist(),
        stations.number("shaft_seat_roughness").tolist(),
        stations.number("housing_seat_roughness").tolist(),
        stations.number("speed_max").tolist(),
        strict=True,
    )
    assert sorted(read) == [
        ("6209", 45.0, 0.002, 85.0, 0.022, 0.4, 0.8, 3000.0),
        ("6210", 50.0, 0.002, 90.0, 0.022, 0.8, 1.6, 3000.0),
    ]
