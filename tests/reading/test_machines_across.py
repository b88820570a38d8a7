"""Names down a column, machines side by side and below them positions, in a row that is not called so."""

import pytest

from linter.reading import Reading, read_table

_LABELS = [
    "", "Description", "Beschreibung", "Descripción", "Désignation", "Item", "Parameter", "Seat", "Lagersitz", "End",
    "Value", "说明", "Опора", "Bearing",
]  # fmt: skip


def read(tmp_path, text: str) -> Reading:
    path = tmp_path / "table.csv"
    path.write_text(text, encoding="utf-8")
    return read_table(path)


def table(row: str, between: str = "") -> str:
    return (
        f"Machine name,Blower TB-9,,Pump CP-80\n{between}{row}\nBearings\n"
        "Brg. no.,6306-2Z,6306-2Z,6006-2Z,6206-2Z\nFr [kN],1.48,1.04,0.48,0.71\nShaft seat\n"
        "Ø seat [mm],30 k6,30 k6,30 h6,30 h6\nHousing bore\nØ seat [mm],72 J7,72 J7,55 JS6,62 JS6\n"
        "Duty\nMax speed [rpm],18000,18000,3600,3600\n"
    )


def _is_right(stations, names=("A", "B")) -> None:
    assert list(stations.text("machine")) == ["Blower TB-9"] * 2 + ["Pump CP-80"] * 2
    assert list(stations.text("station")) == [*names, *names]
    assert list(stations.text("bearing_designation")) == ["6306-2Z", "6306-2Z", "6006-2Z", "6206-2Z"]
    assert list(stations.number("radial_load")) == [1480, 1040, 480, 710]
    assert list(stations.size("housing_seat_diameter").nominal) == [72, 72, 55, 62]
    assert list(stations.number("speed_max")) == [18000, 18000, 3600, 3600]


@pytest.mark.parametrize("label", _LABELS)
def test_positions_below_machines_whatever_their_row_is_called(tmp_path, label):
    _is_right(read(tmp_path, table(f"{label},A,B,A,B")).stations)


@pytest.mark.parametrize("names", [("DE", "NDE"), ("Festlager", "Loslager"), ("avant", "arrière")])
def test_words_for_positions_need_no_label_that_is_known(tmp_path, names):
    _is_right(read(tmp_path, table(",".join(["Ident text", *names, *names]))).stations, names)


def test_rows_between_machines_and_positions_are_read(tmp_path):
    between = "Drawing number,M-1234,,M-5678\nIssue,A,,C\n"
    stations = read(tmp_path, table("Description,A,B,A,B", between)).stations
    _is_right(stations)
    assert list(stations.text("drawing_number")) == ["M-1234"] * 2 + ["M-5678"] * 2
    assert list(stations.text("drawing_revision")) == ["A", "A", "C", "C"]


@pytest.mark.parametrize("label", ["Datum", "Material code"])
def test_letters_of_another_thing_are_no_positions(tmp_path, label):
    assert "B" not in list(read(tmp_path, table(f"{label},A,B,A,B")).stations.text("station"))
