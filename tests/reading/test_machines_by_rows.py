"""Machines that a column keeps apart whose heading does not say machine: its sort, its size, a number."""

import json

import pytest

from linter.reading import read_table

ENDS = (("6205-2Z", "25 k5", "52 H6"), ("6204-2Z", "20 k5", "47 J6"), ("6206-2Z", "30 k5", "62 H6"),
        ("6205-2Z", "25 k5", "52 J6"))  # fmt: skip
WORDS = {
    "de": ("Baureihe", "Lagerstelle", "Lager", "Wellensitz", "Gehäusesitz", "AS", "BS"),
    "en": ("Type", "Position", "Bearing", "Shaft seat", "Housing seat", "DE", "NDE"),
    "size": ("Frame size", "End", "Bearing no.", "Shaft seat", "Housing seat", "drive end", "fan end"),
    "fr": ("Modèle", "Palier", "Roulement", "Portée d'arbre", "Alésage logement", "avant", "arrière"),
    "it": ("Taglia", "Supporto", "Cuscinetto", "Sede albero", "Sede alloggiamento", "anteriore", "posteriore"),
    "ru": ("Типоразмер", "Опора", "Подшипник", "Посадка вала", "Посадка корпуса", "передняя", "задняя"),
    "zh": ("型号", "位置", "轴承", "轴颈", "座孔", "前端", "后端"),
}


def rows(language, names):
    *_, one, two = WORDS[language]
    return [[names[k // 2], (one, two)[k % 2], *end] for k, end in enumerate(ENDS)]


def judge(reading, names):
    stations = reading.stations
    assert stations.machines == tuple(names)
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20, 30, 25]
    assert [p.code for p in stations.problems].count("machine-by-rows") > 0


@pytest.mark.parametrize("language", WORDS)
@pytest.mark.parametrize("names", [("RB 200", "RB 250"), ("200", "250")])
@pytest.mark.parametrize("order", [(0, 1, 2, 3, 4), (1, 2, 3, 4, 0), (2, 1, 3, 0, 4)])
@pytest.mark.parametrize("counted", [False, True])
def test_a_column_of_sorts_or_sizes_names_the_machines(tmp_path, language, names, order, counted):
    lines = [WORDS[language][:5], *rows(language, names)]
    lines = [[line[k] for k in order] for line in lines]
    if counted:
        lines = [["Pos" if k == 0 else str(k), *line] for k, line in enumerate(lines)]
    path = tmp_path / "t.csv"
    path.write_text("\n".join(";".join(line) for line in lines) + "\n", encoding="utf-8")
    judge(read_table(path), names)


@pytest.mark.parametrize("language", [language for language in WORDS if language != "size"])
@pytest.mark.parametrize("names", [("RB 200", "RB 250"), (200, 250)])
def test_a_key_of_sorts_or_sizes_names_the_machines(tmp_path, language, names):
    document = [dict(zip(WORDS[language], row, strict=False)) for row in rows(language, names)]
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    judge(read_table(path), [str(name) for name in names])


def test_a_column_of_sorts_of_bearings_names_none(tmp_path):
    lines = [["Position", "Bearing", "Shaft seat", "Type"]]
    lines += [[end, *ENDS[k][:2], kind] for k, (end, kind) in enumerate(
        [("DE", "ball bearing"), ("NDE", "ball bearing"), ("DE", "roller bearing"), ("NDE", "roller bearing")]
    )]  # fmt: skip
    path = tmp_path / "t.csv"
    path.write_text("\n".join(";".join(line) for line in lines) + "\n", encoding="utf-8")
    assert len(read_table(path).stations.machines) == 1
