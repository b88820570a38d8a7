"""What was measured on a part beside what is required of it makes no position and no value of the design."""

import pytest

from linter.reading import read_table

WORDS = [
    ("required", "measured"), ("specified", "as found"), ("target", "actual"), ("Soll", "Ist"), ("Vorgabe", "Messwert"),
    ("demandé", "mesuré"), ("exigé", "relevé"), ("requerido", "medido"), ("richiesto", "misurato"),
    ("требуется", "факт"), ("要求値", "実測値"), ("要求", "实测"),
]  # fmt: skip
LIMITS = ["", "wear limit", "Grenze", "limite d'usure", "límite de desgaste", "предел износа", "摩耗限界"]


def sizes(tmp_path, text, name="t.csv"):
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    seat, bore = stations.size("shaft_seat_diameter"), stations.size("housing_seat_diameter")
    return dict(
        zip(
            stations.text("station").tolist(),
            zip(seat.nominal.tolist(), bore.nominal.tolist(), strict=True),
            strict=True,
        )
    )


WANTED = {"DE": (35.0, 72.0), "NDE": (30.0, 62.0)}


@pytest.mark.parametrize(("required", "measured"), WORDS)
@pytest.mark.parametrize("limit", LIMITS)
@pytest.mark.parametrize("order", ["{place} {word}", "{word} {place}", "{place} ({word})"])
def test_measured_beside_required_positions(tmp_path, required, measured, limit, order):
    heads = [
        order.format(place=place, word=word)
        for place, word in (("DE", required), ("DE", measured), ("NDE", required), ("NDE", measured))
    ]
    found = sizes(
        tmp_path,
        f";{';'.join(heads)};{limit}\nBearing;6207-2Z;ok;6206-2Z;ok;\n"
        "Shaft seat (mm);35 k6;35.009;30 k6;30.011;35.000\n"
        "Housing seat (mm);72 H7;72.018;62 J7;62.004;72.05\n",
    )
    assert found == WANTED


@pytest.mark.parametrize(("required", "measured"), WORDS)
def test_measured_positions_beside_those_of_the_design(tmp_path, required, measured):
    found = sizes(
        tmp_path,
        f";DE;NDE;DE {measured};NDE {measured}\nBearing;6207-2Z;6206-2Z;ok;ok\n"
        "Shaft seat (mm);35 k6;30 k6;35.009;30.011\nHousing seat (mm);72 H7;62 J7;72.018;62.004\n",
    )
    assert found == WANTED
