"""A list of the revisions of a drawing is no value of it, wherever it stands; the revision that a frame states is."""

import pytest

from linter.reading import read_table

#: Label of the revision in the frame, a table, labels of the list of revisions.
WORDS = [
    ("Rev.", "Name;DE;NDE|Bearing;6204;6203|Shaft seat (mm);20 k6;17 k6|Housing bore (mm);47 H7;40 H7",
     "Rev.;Date;Change|Rev;Date;By;Description|Revision;Description;Date"),
    ("Revision", "Merkmal;A;B|Lager;6204;6203|Wellensitz (mm);20 k6;17 k6|Gehäusebohrung (mm);47 H7;40 H7",
     "Rev.;Datum;Änderung|Index;Änderung;Datum;Name"),
    ("Indice", "Nom;avant;arrière|Roulement;6204;6203|Portée d'arbre (mm);20 k6;17 k6|Logement (mm);47 H7;40 H7",
     "Indice;Date;Modification|Rév.;Date;Objet"),
    ("Rev.", "Nombre;A;B|Rodamiento;6204;6203|Asiento del eje (mm);20 k6;17 k6|Alojamiento (mm);47 H7;40 H7",
     "Rev.;Fecha;Cambio|Revisión;Fecha;Descripción"),
    ("Rev.", "Nome;A;B|Cuscinetto;6204;6203|Sede albero (mm);20 k6;17 k6|Sede alloggiamento (mm);47 H7;40 H7",
     "Rev.;Data;Modifica"),
    ("版", "項目;負荷側;反負荷側|軸受;6204;6203|軸はめあい径 (mm);20 k6;17 k6|ハウジング穴径 (mm);47 H7;40 H7",
     "改訂;日付;内容|版;日付;変更内容"),
    ("版本", "名称;驱动端;非驱动端|轴承;6204;6203|轴颈直径 (mm);20 k6;17 k6|轴承座孔直径 (mm);47 H7;40 H7",
     "版本;日期;更改"),
]  # fmt: skip
CASES = [(label, table, log) for label, table, logs in WORDS for log in logs.split("|")]
DATES = {"Date": "11/05/2022", "Datum": "11.05.2022", "Fecha": "11/05/2022", "Data": "11 mag 2022"}


def rows_of(log, codes):
    labels = log.split(";")
    for code in codes:
        yield ";".join(
            [code, *(DATES.get(word, "2022-05-11" if word in ("日付", "日期") else "xy") for word in labels[1:])]
        )


@pytest.mark.parametrize("case", CASES)
@pytest.mark.parametrize("codes", [("A", "B"), ("01", "02", "03"), ("A",)])
@pytest.mark.parametrize("above", [False, True])
@pytest.mark.parametrize("wide", [False, True])
def test_revision_of_the_frame_counts(tmp_path, case, codes, above, wide):
    label, table, log = case
    rows = [row.split(";") for row in table.split("|")]
    rows = [list(row) for row in zip(*rows, strict=True)] if wide else rows
    listed = [log, *rows_of(log, codes)]
    lines = [f"{label};C", *(listed if above else ()), ";;", *map(";".join, rows), ";;", *(() if above else listed)]
    path = tmp_path / "t.csv"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    reading = read_table(path)
    assert reading.stations.text("drawing_revision").tolist() == ["C", "C"]
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [20, 17]
    assert sum(unused.name == "a list of revisions" for unused in reading.unused) == len(listed)


def test_a_frame_over_its_values_is_no_list(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Drawing;Rev.;Date\nAB-1;C;2022-05-11\n;;\nName;DE;NDE\nShaft seat (mm);20 k6;17 k6\n"
        "Housing bore (mm);47 H7;40 H7\n",
        encoding="utf-8",
    )
    assert not any(unused.name == "a list of revisions" for unused in read_table(path).unused)
