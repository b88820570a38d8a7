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


#: A size, its word for the design, its word for what was measured, the unit, the words of the other columns.
OF_SIZES = [
    ("shaft seat", "required", "actual", "mm", "Position;Bearing;housing bore mm"),
    ("Shaft seat", "per drawing", "as found", "mm", "Position;Bearing;Housing bore mm"),
    ("Shaft seat", "drawing", "measured", "mm", "Position;Bearing;Housing bore mm"),
    ("Wellensitz", "Soll", "Ist", "mm", "Lagerstelle;Lager;Gehäusebohrung mm"),
    ("Wellensitz", "Vorgabe", "gemessen", "mm", "Lagerstelle;Lager;Gehäusebohrung mm"),
    ("Portée d'arbre", "requis", "mesuré", "mm", "Position;Roulement;Alésage logement mm"),
    ("Portée d'arbre", "exigée", "relevée", "mm", "Position;Roulement;Alésage logement mm"),
    ("Asiento del eje", "requerido", "medido", "mm", "Posición;Rodamiento;Alojamiento mm"),
    ("Sede albero", "richiesta", "misurata", "mm", "Posizione;Cuscinetto;Sede alloggiamento mm"),
    ("Посадочный диаметр вала", "задано", "факт", "мм", "Опора;Подшипник;Диаметр отверстия корпуса мм"),
    ("軸はめあい径", "図面", "実測", "mm", "位置;軸受;ハウジング穴径 mm"),
    ("軸はめあい径", "要求", "実測値", "mm", "位置;軸受;ハウジング穴径 mm"),
    ("轴颈直径", "要求", "实测", "mm", "位置;轴承;轴承座孔直径 mm"),
    ("轴颈直径", "图纸", "实测值", "mm", "位置;轴承;轴承座孔直径 mm"),
]
FORMS = [
    "{size} {word} {unit}",
    "{word} {size} [{unit}]",
    "{size} ({word}) {unit}",
    "{size} {unit} {word}",
    "{size} / {word} ({unit})",
]


@pytest.mark.parametrize("size", OF_SIZES)
@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("turned", [False, True])
def test_measured_size_beside_the_required_one(tmp_path, size, form, turned):
    size, required, measured, unit, others = size
    place, bearing, bore = others.split(";")
    heads = [form.format(size=size, word=word, unit=unit) for word in (required, measured)]
    rows = [("DE", "6207-2Z", "35 k6", "35.009", "72 H7"), ("NDE", "6206-2Z", "30 k6", "30.011", "62 J7")]
    lines = [(place, bearing, *heads, bore), *rows]
    if turned:
        lines = [(a, b, d, c, e) for a, b, c, d, e in lines]
    assert sizes(tmp_path, "\n".join(map(";".join, lines)) + "\n") == WANTED


@pytest.mark.parametrize("size", OF_SIZES)
def test_measured_size_alone_is_none_of_the_design(tmp_path, size):
    size, _, measured, unit, others = size
    place, bearing, bore = others.split(";")
    path = tmp_path / "t.csv"
    path.write_text(
        f"{place};{bearing};{size} {measured} {unit};{bore}\nDE;6207-2Z;35.009;72 H7\nNDE;6206-2Z;30.011;62 J7\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert not any(n == n for n in reading.stations.size("shaft_seat_diameter").nominal.tolist())
    assert any(u.name.startswith(size) and "measured values" in u.reason for u in reading.unused)


@pytest.mark.parametrize("size", OF_SIZES)
def test_measured_size_among_names_of_a_list(tmp_path, size):
    size, required, measured, unit, _ = size
    if required in ("drawing", "図面", "图纸"):
        required = {"drawing": "required", "図面": "要求", "图纸": "要求"}[required]
    found = sizes(
        tmp_path,
        f"Name;DE;NDE\nBearing;6207-2Z;6206-2Z\n{size} {required} ({unit});35 k6;30 k6\n"
        f"{size} {measured} ({unit});35.009;30.011\nHousing bore (mm);72 H7;62 J7\n",
    )
    assert found == WANTED
