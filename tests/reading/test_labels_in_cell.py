"""Title cells that hold several labelled things; see :mod:`linter.reading.layouts.labels_in_cell`."""

import pytest

from linter.reading import read_table

TABLE = "\n\nPosition\tBearing\tShaft seat\nA\t6205\t25 k5\nB\t6204\t20 k5\n"
TITLES = {
    "a comma": "Drawing: MX-4371, Issue: B",
    "a semicolon": "Zeichnungsnummer: MX-4371; Änderungsstand: B",
    "a bar": "N° de plan : MX-4371 | Indice : B",
    "a stroke": "Plano: MX-4371 / Rev.: B",
    "a dash": "Disegno: MX-4371 - Revisione: B",
    "wide signs": "图号：MX-4371，版次：B",
    "a blank": "図番：MX-4371 版数：B",
    "brackets": "Чертёж: MX-4371 (Изм. B)",
    "no colons": "Drawing no. MX-4371, Rev. B",
    "the revision first": "Rev: B; Drawing: MX-4371",
    "one sign for both": "Drawing / Rev.: MX-4371 / B",
    "three, one unknown": "Drawing: MX-4371, Date: 2024-05-01, Issue: B",
    "the value of a label": "Drawing number\tMX-4371, Rev. B",
    "the machine with them": "Machine: Pump K7, Drawing: MX-4371, Rev: B",
}


@pytest.mark.parametrize("kind", TITLES)
def test_each_labelled_thing_of_a_title_cell_is_read(tmp_path, kind):
    path = tmp_path / "table.tsv"
    path.write_text(TITLES[kind] + TABLE, "utf-8")
    stations = read_table(path).stations
    assert set(stations.text("drawing_number")) == {"MX-4371"}
    assert set(stations.text("drawing_revision")) == {"B"}


WHOLE = ("See report 5, Rev. B", "Drawing: MX-4371 replaces drawing: MX-12", "Drawing: MX,4371")


@pytest.mark.parametrize("title", WHOLE)
def test_a_text_with_one_thing_stays_whole(tmp_path, title):
    path = tmp_path / "table.tsv"
    path.write_text(title + TABLE, "utf-8")
    stations = read_table(path).stations
    assert "B" not in stations.text("drawing_revision")
    assert "MX-12" not in stations.text("drawing_number") and "MX" not in stations.text("drawing_number")
