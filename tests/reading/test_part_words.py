"""A word for the part that carries a ring, which no list holds: the sizes of the bearings tell it, and it is told."""

import pytest

from linter.reading import Reading, read_table

_SEATS = ["DE bearing|6205", "DE shaft seat dia [mm]|25 k6", "NDE bearing|6204", "NDE shaft seat dia [mm]|20 k6"]


def read(tmp_path, rows: list[str]) -> Reading:
    path = tmp_path / "table.tsv"
    path.write_text("\n".join(row.replace("|", "\t") for row in rows), encoding="utf-8")
    return read_table(path)


@pytest.mark.parametrize("word", ["Carrier", "Adapter", "Topf", "Shield", "Quirbel"])
def test_sizes_of_the_bearings_tell_a_word_for_the_housing(tmp_path, word):
    side_by_side = [
        "Parameter|DE|NDE|Unit", "Bearing type|6205|6204|", f"{word} bore diameter|52|47|mm",
        f"{word} bore tolerance|H6|H6|",
        f"{word} material|aluminium|aluminium|", "Pulley bore|28|28|mm",
    ]  # fmt: skip
    wide = [
        f"Position|Bearing No.|{word} bore [mm]|Fit|{word} shoulder dia [mm]",
        "DE|6205|52|H6|47",
        "NDE|6204|47|H6|42",
    ]
    names = [f"DE {word} bore [mm]|52 H6", f"NDE {word} bore [mm]|47 H6", f"DE {word} bore Ra [µm]|1.6"]
    for rows in (side_by_side, wide, ["Name|Value", *_SEATS, *names]):
        stations = read(tmp_path, rows).stations
        assert list(stations.size("housing_seat_diameter").nominal) == [52, 47]
        assert "part-told" in {problem.code for problem in stations.problems}
    assert read(tmp_path, side_by_side).stations.choice("housing_material").known.all()
    assert list(read(tmp_path, wide).stations.size("housing_shoulder_diameter").nominal) == [47, 42]


@pytest.mark.parametrize(
    "names",
    [
        ["DE Pulley seat dia [mm]|25", "DE Gear bore [mm]|25"],  # as large as one bore
        ["DE Carrier bore [mm]|50", "NDE Carrier bore [mm]|47"],  # not as large as the ring
        ["DE Rotor bore [mm]|52", "NDE Rotor bore [mm]|47"], ["Seal bore [mm]|52"],  # words of other parts
    ],
)  # fmt: skip
def test_sizes_that_are_no_proof_tell_nothing(tmp_path, names):
    stations = read(tmp_path, ["Name|Value", *_SEATS, *names]).stations
    assert not stations.known("housing_seat_diameter").any()
    assert list(stations.size("shaft_seat_diameter").nominal) == [25, 20]


@pytest.mark.parametrize(
    ("label", "parameter"), [("Rated speed", ""), ("Nenndrehzahl", ""), ("Operating speed", "speed_operating")]
)
@pytest.mark.parametrize("highest", [None, "Max speed [rpm]|3600"])
def test_a_rated_speed_beside_no_highest_one_is_asked_about(tmp_path, label, parameter, highest):
    rows = ["Name|Value", "DE bearing|6205", "NDE bearing|6204", f"{label} [rpm]|2980", *filter(None, [highest])]
    reading = read(tmp_path, rows)
    assert reading.stations.known("speed_operating").all() == bool(parameter or highest)
    assert any(label in unused.name for unused in reading.unused) == (not parameter and not highest)
