"""A number of pieces below a word for the machine is no name of it."""

import pytest

from linter.reading import read_table


@pytest.mark.parametrize("label", ["Quantity", "Item", "Qty", "Menge", "Quantité", "Cantidad", "Quantità", "数量"])
@pytest.mark.parametrize("head", ["Rotor", "Machine"])
def test_number_of_pieces_names_no_machine(tmp_path, label, head):
    path = tmp_path / "t.csv"
    path.write_text(
        f"Equipment:;Milling spindle WS-34\n;\n{head};\nSpeed, max, rpm;13000\n{label};1\nRotor mass kg;2\n;\n"
        "Bearing A;\nBrg. no.;6206LLB\nJournal dia. mm;30 k6\nBearing B;\nBrg. no.;6206LLB\nJournal dia. mm;30 k6\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.text("machine").tolist() == ["Milling spindle WS-34"] * 2
    assert stations.number("speed_max").tolist() == [13000, 13000]
