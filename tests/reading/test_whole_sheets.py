"""Ordinary sheets of a firm, whole: what stands where is told by the sheet, in any language."""

import pytest

from linter.reading import read_table

_TITLE = "Machine;SP 90;;;;\nMax. speed;3000 rpm;;;;\n;;;;;\n"
_ROWS = "Bearing designation;;6204;6203;;\nBearing bore d;mm;20;17;;\n"
_SEATS = (
    "Shaft seat diameter;mm;20;17;;\nShaft seat tolerance class;;k5;j5;;\nHousing seat diameter;mm;47;40;;\n"
    "Housing seat tolerance class;;H6;J7;;\n"
)
_GROUPS = (
    "Lager;;;;\nBezeichnung;;6204;6203;\nBohrung d;mm;20;17;\nWelle;;;;\nSitzdurchmesser;mm;20;17;\n"
    "Toleranzklasse;;k5;j5;\nGehäuse;;;;\nSitzdurchmesser;mm;47;40;\nToleranzklasse;;H6;J7;\n"
)
_GERMAN = "Maschine;SP 90;;;\nMax. Drehzahl;3000 1/min;;;\n;;;;\n"
_FRENCH = (
    "1;Roulement;Désignation;;6204;6203\n2;;Alésage d;mm;20;17\n3;Arbre;Diamètre de portée;mm;20;17\n"
    "4;;Classe de tolérance;;k5;j5\n5;Logement;Diamètre de portée;mm;47;40\n6;;Classe de tolérance;;H6;J7\n"
)
_CHINESE = (
    "1;轴承;型号;6204;6203;;\n2;;内径 d;20;17;mm;\n3;轴;直径;20;17;mm;\n4;;公差带;k5;j5;;\n5;轴承座;直径;47;40;mm;\n"
    "6;;公差带;H6;J7;;\n"
)


def _list(words, head, sparse):
    """A list with a row for each value, its position and part in columns of their own, above each group or in all."""
    rows = [head]
    for position, values in zip(words["positions"], (("6204", "20", "47"), ("6203", "17", "40")), strict=True):
        first = True
        for part, names in words["parts"].items():
            texts = {"type": values[0], "bore": values[1], "shaft": values[1], "housing": values[2]}
            texts |= {"class shaft": "k5" if values[0] == "6204" else "j5"}
            texts |= {"class housing": "H6" if values[0] == "6204" else "J7"}
            for at, (name, of) in enumerate(names.items()):
                said = position if not sparse or first else ""
                own = part if not sparse or not at else ""
                rows.append(f"{said};{own};{name};{texts[of]};{'' if of.startswith(('type', 'class')) else 'mm'}")
                first = False
    return "\n".join(rows) + "\n"


_ENGLISH_LIST = {
    "positions": ("Drive end", "Non-drive end"),
    "parts": {
        "Bearing": {"Designation": "type", "Bore d": "bore"},
        "Shaft": {"Seat diameter": "shaft", "Tolerance class": "class shaft"},
        "Housing": {"Seat diameter": "housing", "Tolerance class": "class housing"},
    },
}
_ITALIAN_LIST = {
    "positions": ("Lato comando", "Lato opposto"),
    "parts": {
        "Cuscinetto": {"Designazione": "type", "Foro d": "bore"},
        "Albero": {"Diametro sede": "shaft", "Classe di tolleranza": "class shaft"},
        "Alloggiamento": {"Diametro sede": "housing", "Classe di tolleranza": "class housing"},
    },
}
_ENGLISH_HEAD = (
    "Bearing position;Part;Characteristic;Value;Unit\n;;Machine;SP 90;\n;;Max. speed;3000;rpm\n;;Lubricant;grease;\n"
    ";;Rotor mass;0.85;kg"
)
_ITALIAN_HEAD = "Supporto;Particolare;Caratteristica;Valore;Unità\n;;Macchina;SP 90;\n;;Velocità massima;3000;giri/min"

TABLES = {
    "positions below one word for values": f"{_TITLE}Characteristic;Unit;Value;;;\n;;Drive end;Non-drive end;;\n"
    + _ROWS
    + _SEATS,
    "positions below values, groups of rows": f"{_GERMAN}Merkmal;Einheit;Wert;;Bemerkung\n;;Antriebsseite;"
    f"Abtriebsseite;\n{_GROUPS}",
    "positions below a word for a position, groups in a column": "Machine;SP 90;;;;\nVitesse max.;3000 tr/min;;;;\n"
    f";;;;;\nN°;Groupe;Caractéristique;Unité;Palier;\n;;;;Côté accouplement;Côté opposé\n{_FRENCH}",
    "positions a row higher": f"{_TITLE};;Drive end;Non-drive end;;\nParameter;Unit;Value;Value;;\n" + _ROWS + _SEATS,
    "positions a row higher behind their word": f"{_GERMAN};Lagerstelle;Antriebsseite;Abtriebsseite;\n"
    f"Merkmal;Einheit;Wert;Wert;Bemerkung\n{_GROUPS}",
    "positions a row lower, units behind": "机型;SP 90;;;;;\n最高转速;3000 r/min;;;;;\n;;;;;;\n"
    f"序号;分组;项目;数值;;单位;备注\n;;;驱动端;非驱动端;;\n{_CHINESE}",
    "a list of positions and parts": _list(_ENGLISH_LIST, _ENGLISH_HEAD, False),
    "a list of groups below the machine": _list(_ENGLISH_LIST, _ENGLISH_HEAD, True),
    "the same in Italian": _list(_ITALIAN_LIST, _ITALIAN_HEAD, False),
    "the same groups in Italian": _list(_ITALIAN_LIST, _ITALIAN_HEAD, True),
}


_BLOCKS = {
    "en": ("Designation", "Bore d", "Shaft", "Seat diameter", "Tolerance class", "Housing", "Seat diameter"),
    "de": ("Bezeichnung", "Bohrung d", "Welle", "Sitzdurchmesser", "Toleranzklasse", "Gehäuse", "Sitzdurchmesser"),
    "fr": (
        "Désignation", "Alésage d", "Arbre", "Diamètre de portée", "Classe de tolérance", "Logement",
        "Diamètre de portée",
    ),
    "ja": ("呼び番号", "内径 d", "軸", "直径", "公差クラス", "ハウジング", "直径"),
}  # fmt: skip
_TITLES = {
    "en": "Machine;SP 90\nMax. speed;3000 rpm\n\n",
    "de": "Maschine;SP 90\nMax. Drehzahl;3000 1/min\n\n",
    "fr": "Machine;SP 90\nVitesse max.;3000 tr/min\n\n",
    "ja": "機種;SP 90\n最高回転数;3000 min-1\n\n",
}


def _blocks(language, heads, *, designation=True, unit="behind", beside=""):
    """Blocks of two positions, one below the other or side by side; the unit behind the value or before it."""
    names = _BLOCKS[language]
    blocks = []
    for head, (number, d, classes, outer) in zip(
        heads, (("6204", "20", ("k5", "H6"), "47"), ("6203", "17", ("j5", "J7"), "40")), strict=True
    ):
        rows = [head.split(";")]
        rows += [[names[0], number, ""]] if designation else []
        rows += [[names[1], d, "mm"], [names[2]], [names[3], d, "mm"], [names[4], classes[0], ""], [names[5]]]
        rows += [[names[6], outer, "mm"], [names[4], classes[1], ""]]
        if unit == "before":
            rows = [[name, *reversed(cells)] if len(cells) == 2 else [name, *cells] for name, *cells in rows]
        blocks.append([row + [""] * (3 - len(row)) for row in rows])
    if beside:
        rows = [[*a, *([""] * (len(beside) - 1)), *b] for a, b in zip(*blocks, strict=True)]
    else:
        rows = [*blocks[0], ["", "", ""], *blocks[1]]
    return _TITLES[language] + "\n".join(";".join(row) for row in rows) + "\n"


TABLES |= {
    "heads with the words for value and unit": _blocks("en", ("Bearing A;Value;Unit", "Bearing B;Value;Unit")),
    "the same in Japanese": _blocks("ja", ("軸受負荷側;値;単位", "軸受反負荷側;値;単位")),
    "heads with the bearing": _blocks("de", ("Lager A;6204", "Lager B;6203"), designation=False),
    "the same side by side": _blocks("de", ("Lager A;6204", "Lager B;6203"), designation=False, beside=";;"),
    "the same with nothing between": _blocks("en", ("Bearing A;6204", "Bearing B;6203"), designation=False, beside=";"),
    "numbers before positions": _blocks("en", ("2;Drive end", "3;Non-drive end")),
    "numbers and points before positions": _blocks("fr", ("2.1;Côté accouplement", "2.2;Côté opposé")),
    "roles behind positions": _blocks("en", ("Drive end - fixed", "Non-drive end - floating")),
    "roles behind a comma": _blocks("de", ("Antriebsseite, Festlager", "Abtriebsseite, Loslager")),
    "roles beside positions": _blocks("fr", ("Côté accouplement;fixe", "Côté opposé;libre")),
    "positions over units": _blocks("fr", ("Palier;;Côté accouplement", "Palier;;Côté opposé"), unit="before"),
}

_COLUMNS = "Characteristic;Unit;DE;NDE\n" + (_ROWS + _SEATS).replace(";;\n", "\n")
TABLES |= {
    "the machine below, where the units stand": f"{_COLUMNS};;;\nMachine;SP 90;;\nDrawing no.;M-1;;\nMax. speed;"
    "3000 rpm;;\nLubricant;grease;;\n",
    "the machine below in pairs": f"{_COLUMNS};;;\nMachine;SP 90;Drawing no.;M-1\nRevision;C;Max. speed;3000 rpm\n",
    "the machine below with its units": f"{_COLUMNS};;;\nMachine;SP 90;;\nMax. speed;3000;rpm;\nRotor mass;2.5;kg;\n",
    "the machine below in German": "Merkmal;Einheit;Antriebsseite;Abtriebsseite\n"
    + _GROUPS.replace(";;;;\n", ";;;\n").replace("3;\n", "3\n").replace("7;\n", "7\n").replace("0;\n", "0\n")
    + ";;;\nMaschine;SP 90;Zeichnungsnummer;M-1\nRevision;C;Max. Drehzahl;3000 1/min\n",
}


@pytest.mark.parametrize("kind", TABLES)
def test_each_seat_keeps_its_size(tmp_path, kind):
    path = tmp_path / "table.csv"
    path.write_text(TABLES[kind], "utf-8")
    stations = read_table(path).stations
    shaft, housing = (stations.size(f"{part}_seat_diameter") for part in ("shaft", "housing"))
    assert set(stations.text("machine")) == {"SP 90"}
    read = zip(
        stations.text("bearing_designation"),
        stations.number("bore_diameter").tolist(),
        shaft.nominal.tolist(),
        (shaft.lower * 1000).round(1).tolist(),
        housing.nominal.tolist(),
        (housing.lower * 1000).round(1).tolist(),
        stations.number("speed_max").tolist(),
        strict=True,
    )
    assert sorted(read) == [
        ("6203", 17.0, 17.0, -3.0, 40.0, -11.0, 3000.0),
        ("6204", 20.0, 20.0, 2.0, 47.0, 0.0, 3000.0),
    ]


def test_value_and_unit_below_each_position_are_no_positions(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Characteristic;Unit;Value;;\n;;Nominal;Class;\nShaft seat diameter;mm;20;k5;\n"
        "Housing seat diameter;mm;47;H6;\nBearing designation;;6204;;\nRadial load;N;90;;\n",
        "utf-8",
    )
    reading = read_table(path)
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [20.0]


def test_the_role_behind_a_position_is_read(tmp_path):
    for number, table in enumerate(("roles behind positions", "roles behind a comma", "roles beside positions")):
        path = tmp_path / f"{number}.csv"
        path.write_text(TABLES[table], "utf-8")
        stations = read_table(path).stations
        assert stations.choice("axial_role").texts().tolist() == ["locating", "floating"]


def test_a_list_of_positions_and_bearings_has_no_heads(tmp_path):
    path = tmp_path / "table.csv"
    path.write_text(
        "Position;Bearing;Bore d [mm]\nDrive end;6204;20\nNon-drive end;6203;17\nFan end;6205;25\n", "utf-8"
    )
    stations = read_table(path).stations
    assert stations.text("bearing_designation").tolist() == ["6204", "6203", "6205"]
    assert stations.number("bore_diameter").tolist() == [20.0, 17.0, 25.0]


def test_pages_and_requirements_beside_positions_are_no_positions(tmp_path):
    path = tmp_path / "table.csv"
    for heads in ("Page;Source", "Requirement;Remark", "Seite;Quelle", "Страница;Источник"):
        cells = ["R-1;", "R-2;", "R-3;", "R-4;", "R-5;"] if heads[0] == "R" else ["3;", "3;", "4;", "4;", "5;"]
        names = ("Bearing designation;;6204;6203", "Bore d;mm;20;17", "Shaft seat diameter;mm;20 k5;17 j5")
        names += ("Housing seat diameter;mm;47 H6;40 J7", "Shaft shoulder diameter;mm;26;21")
        rows = [f"{name};{cell}" for name, cell in zip(names, cells, strict=True)]
        path.write_text("\n".join([f"Characteristic;Unit;DE;NDE;{heads}", *rows]) + "\n", "utf-8")
        stations = read_table(path).stations
        assert stations.text("bearing_designation").tolist() == ["6204", "6203"], heads
        assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [26.0, 21.0]


def test_parts_in_every_row_are_no_headings(tmp_path):
    path = tmp_path / "table.csv"
    seat = "{0};Seat diameter;mm;{1} {2};{3} {4}\n{0};Roughness Ra;µm;0.2;0.3\n{0};Cylindricity;mm;0.003;0.002\n"
    path.write_text(
        "Group;Characteristic;Unit;Drive end;Non-drive end\nBearing;Designation;;6204;6203\n"
        + seat.format("Shaft", 20, "k5", 17, "j5")
        + seat.format("Housing", 47, "H6", 40, "J7"),
        "utf-8",
    )
    stations = read_table(path).stations
    for part, sizes in (("shaft", [20.0, 17.0]), ("housing", [47.0, 40.0])):
        assert stations.size(f"{part}_seat_diameter").nominal.tolist() == sizes
        assert stations.number(f"{part}_seat_roughness").tolist() == [0.2, 0.3]
        assert stations.number(f"{part}_seat_cylindricity").tolist() == [0.003, 0.002]
