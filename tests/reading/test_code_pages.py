"""Texts that are no UTF-8 and state no encoding: read where what they say settles it, else both readings are shown."""

import pytest

from linter.reading import InputError, read_names, read_table
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names

_GERMAN = "Maschine;Lagerstelle;Bohrung [mm];Außendurchmesser [mm];Wellensitz\nM;A;10;26;Ø10 k5\nM;B;12;28;Ø12 k5\n"
_SPANISH = "Máquina;Posición;Diámetro interior [mm];Diámetro exterior [mm]\nM;A;10;26\nM;B;12;28\n"
_JAPANESE = "機械;軸受位置;内径 [mm];外径 [mm]\nM;A;10;26\nM;B;12;28\n"
_CHINESE = "机器;轴承位置;内径 [mm];外径 [mm]\nM;A;10;26\nM;B;12;28\n"
_RUSSIAN = "Машина;Опора;Внутренний диаметр [мм];Наружный диаметр [мм]\nM;A;10;26\nM;B;12;28\n"


@pytest.fixture
def read(tmp_path):
    def reader(data: bytes, names: Names | None = None):
        path = tmp_path / "t.csv"
        path.write_bytes(data)
        return read_table(path, names)

    return reader


@pytest.mark.parametrize(
    ("text", "page"),
    [
        (_GERMAN, "cp1252"), (_GERMAN, "cp850"), (_SPANISH, "cp1252"), (_JAPANESE, "cp932"), (_JAPANESE, "euc_jp"),
        (_CHINESE, "gbk"), (_RUSSIAN, "cp1251"), (_RUSSIAN, "koi8_r"), (_RUSSIAN, "cp866"),
    ],
)  # fmt: skip
def test_the_words_of_the_table_tell_the_page(read, text, page):
    reading = read(text.encode(page))
    assert reading.stations.text("station").tolist() == ["A", "B"]
    assert reading.stations.number("outside_diameter").tolist() == [26, 28]
    (taken,) = [p for p in reading.stations.problems if p.code == "code-page"]
    assert taken.kind == "assumption"
    whole = read(text.encode("utf-8"))
    told = [(u.parameter, u.place.cell, u.value) for u in reading.understood]
    assert told == [(u.parameter, u.place.cell, u.value) for u in whole.understood]


def test_a_cell_that_two_pages_read_differently_is_shown_with_both(read):
    # 0xD8 is the diameter sign of the West and a letter of Central Europe: the name of the machine tells neither
    with pytest.raises(InputError) as caught:
        read("machine;station;bore_diameter\nØ7 Přístroj;A;10\n".encode("cp1250", "replace").replace(b"?", b"\xd8"))
    assert caught.value.code == "encoding"
    assert "cp1250" in str(caught.value) and "cp1252" in str(caught.value)
    assert "A2" in str(caught.value)


def test_a_stated_page_settles_it(read):
    data = "machine;station;bore_diameter\nPřístroj;A;10\n".encode("cp1250")
    assert read(data, Names(Mapping(encoding="cp1250"))).stations.machines == ("Přístroj",)


def test_words_of_a_text_in_an_open_page_are_listed(tmp_path):
    path = tmp_path / "t.csv"
    path.write_bytes("machine;station;bore_diameter;Sitzmaß\nM;A;10;7\n".encode("cp1252"))
    assert [word.text for word in read_names(path)] == ["Sitzmaß"]


def test_bytes_of_no_page_are_refused(read):
    with pytest.raises(InputError) as caught:
        read(b"machine;station;bore_diameter\nM;A;10 \x81\xff\xfe\x90\n" + bytes(range(128, 256)))
    assert caught.value.code in ("encoding", "nothing-recognised")
