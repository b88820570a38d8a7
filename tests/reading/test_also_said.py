"""What a cell says beside the parameter of its name is read too, where the table states it nowhere else."""

import pytest

from linter.reading import read_table

SPRINGS = {
    "the kind alone": ("Preload by", "wave washer", "wave", None, None),
    "German": ("Lager fest/los", "los, Wellfeder", "wave", None, None),
    "force behind the kind": ("Preload", "disc springs 120 N", "disc", 120, None),
    "force at a length": ("Spring type", "wave, 60 N at 2.4 mm", "wave", 60, 2.4),
    "a thickness is no length": ("Vorspannung durch", "Tellerfeder, 2.5 mm, 140 N", "disc", 140, None),
    "Spanish": ("Función", "libre (resorte ondulado 45 N)", "wave", 45, None),
    "a force with its deviation": ("Spring type", "wave, 60 ± 5 N", "wave", 60, None),
    "a range is no force": ("Preload by", "wave spring, 50 - 70 N", "wave", None, None),
    "a preload that is a spring": ("Preload", "coil springs", "helical", None, None),
    "what gives the preload": ("Axiale Vorspannung mittels", "Tellerfederpaket", "disc", None, None),
    "a word between of the spring's name": ("Tipo di precarico", "molle a tazza", "disc", None, None),
    "two signs": ("预紧", "碟簧", "disc", None, None),
    "the spring alone": ("Пружина", "волнистая", "wave", None, None),
    "Japanese": ("予圧方式", "ウェーブワッシャ 2.4mm時 60N", "wave", 60, 2.4),
}


@pytest.mark.parametrize("kind", SPRINGS)
def test_what_a_cell_says_of_the_spring_is_read(tmp_path, kind):
    name, cell, spring, force, length = SPRINGS[kind]
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;A\nBearing;6204-2Z\nShaft seat;20 k5\nHousing seat;47 H6\n{name};{cell}\n", "utf-8")
    stations = read_table(path).stations
    kinds = stations.choice("spring_kind")
    assert [kinds.words[code] for code in kinds.codes] == [spring]
    for parameter, value in (("preload_force", force), ("spring_installed_length", length)):
        assert stations.size(parameter).nominal.tolist() == (
            [value] if value else pytest.approx([float("nan")], nan_ok=True)
        )


@pytest.mark.parametrize("text", ["oil bath ISO VG 32", "oil bath (VG 32)", "ISO VG32 oil bath"])
def test_the_class_of_viscosity_behind_a_lubrication_is_its_viscosity(tmp_path, text):
    path = tmp_path / "list.csv"
    path.write_text(f"Parameter;A\nBearing;6204\nShaft seat;20 k5\nLubrication;{text}\n", "utf-8")
    stations = read_table(path).stations
    assert stations.number("base_oil_viscosity_40").tolist() == [32]
    oils = stations.choice("lubrication")
    assert oils.words[oils.codes[0]] == "oil bath"
