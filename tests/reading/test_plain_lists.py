"""Lists and blocks as offices keep them: parts with positions said once, symbols beside names, heads of blocks."""

import pytest

from linter.reading import read_table

_ROWS = (
    ("b", "designation", "6206;;", "6205;;"),
    ("s", "size", "30;k5;mm", "25;k5;mm"),
    ("s", "Ra", "0.8;;µm", "0.4;;µm"),
    ("s", "shoulder", "36;;mm", "31;;mm"),
    ("h", "size", "62;H7;mm", "52;H7;mm"),
    ("h", "Ra", "1.6;;µm", "1.6;;µm"),
    ("h", "shoulder", "56;;mm", "46;;mm"),
)
_SYMBOLS = {"size": ("d", "D"), "Ra": ("Ra", "Ra"), "shoulder": ("da", "Da"), "designation": ("", "")}
_EN = {"designation": "Designation", "size": "Seat diameter", "Ra": "Roughness Ra", "shoulder": "Shoulder diameter"}
_DE = {
    "designation": "Lagertyp", "size": "Durchmesser", "Ra": "Rauheit Ra", "shoulder": "Schulterdurchmesser",
}  # fmt: skip
_FR = {
    "designation": "Référence roulement", "size": "Diamètre", "Ra": "Rugosité Ra", "shoulder": "Diamètre d'épaulement",
}  # fmt: skip
_JA = {"designation": "軸受型番", "size": "直径", "Ra": "粗さ Ra", "shoulder": "肩径"}


def _groups(heads: str, names: dict[str, str], parts: dict[str, str], places: tuple[str, str]) -> str:
    """A list whose first column says part and position once, above the rows of each."""
    lines, before = [heads], ""
    for k, place in enumerate(places):
        for part, feature, *values in _ROWS:
            said = parts[part].format(p=place)
            lines.append(f"{said if said != before else ''};{names[feature]};{values[k]};plan")
            before = said
    return "\n".join(lines) + "\n"


def _blocks(heads: str, names: dict[str, str], parts: dict[str, str], places: tuple[str, str], symbols: bool) -> str:
    """Blocks below heads with their position, names left and values right, parts as lines of their own."""
    lines = []
    for k, place in enumerate(places):
        lines += heads.format(p=place).splitlines()
        before = ""
        for part, feature, *values in _ROWS:
            if part != before:
                lines.append(parts[part])
            sign = f"{_SYMBOLS[feature][part == 'h']};" if symbols else ""
            lines.append(f"{names[feature]};{sign}{values[k]}")
            before = part
        lines.append("")
    return "\n".join(lines) + "\n"


def _across(heads: str, names: dict[str, str], parts: dict[str, str], before: str, symbols: bool, wide: bool) -> str:
    """Names down with part and symbol beside them, positions across; ``wide`` has the class in a column of its own."""
    lines = heads.splitlines()
    for part, feature, *values in _ROWS:
        cells = []
        for value in values:
            size, sort, unit = value.split(";")
            cells.append(f"{size};{sort}" if wide else f"{size} {sort}".strip())
        sign = f"{_SYMBOLS[feature][part == 'h']};" if symbols else ""
        lines.append(f"{before.format(unit=unit)}{parts[part]};{names[feature]};{sign}{';'.join(cells)};{unit}")
    return "\n".join(lines) + "\n"


_PARTS_EN = {"b": "Bearing", "s": "Shaft", "h": "Housing"}
_PARTS_DE = {"b": "Lager", "s": "Welle", "h": "Gehäuse"}
TABLES = {
    "part and position once": _groups(
        "Component;Parameter;Nominal;Tolerance;Unit;Source", _EN,
        {"b": "Bearing {p}", "s": "Shaft seat {p}", "h": "Housing bore {p}"}, ("DE", "NDE"),
    ),
    "a word for the position alone among them": _groups(
        "Bauteil;Merkmal;Nennmaß;Toleranz;Einheit;Quelle", _DE,
        {"b": "Lagerstelle {p}", "s": "Welle {p}", "h": "Gehäuse {p}"}, ("A", "B"),
    ),
    "a word for sources that may head items": _groups(
        "Pièce;Désignation;Cote nominale;Tolérance;Unité;Référence", _FR,
        {"b": "Palier {p}", "s": "Portée d'arbre {p}", "h": "Logement {p}"}, ("1", "2"),
    ),
    "signs without blanks": _groups(
        "部位;項目;基準寸法;公差;単位;出典", _JA, {"b": "{p}軸受", "s": "軸 {p}", "h": "ハウジング {p}"},
        ("負荷側", "反負荷側"),
    ),
    "the position in a head with symbols": _blocks(
        "Bearing {p};Symbol;Nominal;Tolerance;Unit", _EN, _PARTS_EN, ("A", "B"), symbols=True
    ),
    "the position in a head with unknown words": _blocks(
        "Lager {p};Kürzel;Nennmaß;Passung/Toleranz;Einheit", _DE, _PARTS_DE, ("AS", "BS"), symbols=True
    ),
    "a label of the position above heads": _blocks(
        "Position;{p}\nFeature;Nominal;Tolerance;Unit", _EN, _PARTS_EN, ("A", "B"), symbols=False
    ),
    "a label of the position above other heads": _blocks(
        "Lagerstelle;{p}\nMerkmal;Nennmaß;Toleranz;Einheit", _DE, _PARTS_DE, ("AS", "BS"), symbols=False
    ),
    "symbols beside values": _across(
        "Part;Item;Symbol;A;B;Unit", _EN, _PARTS_EN, "", symbols=True, wide=False
    ),
    "numbers over bearings": _across(
        "Unit of value;Part;Characteristic;Sym.;1;2;Unit", _EN, _PARTS_EN, "{unit};", symbols=True, wide=False
    ),
    "parts beside positions over heads": _across(
        "Group;Parameter;A;;B;;Unit\n;;Nominal;Tolerance;Nominal;Tolerance;", _EN, _PARTS_EN, "", symbols=False,
        wide=True,
    ),
}  # fmt: skip


@pytest.mark.parametrize("kind", TABLES)
def test_each_value_is_of_its_seat_and_position(tmp_path, kind):
    path = tmp_path / "list.csv"
    path.write_text(TABLES[kind], encoding="utf-8")
    stations = read_table(path).stations
    names = ("shaft_seat_diameter", "housing_seat_diameter", "shaft_shoulder_diameter", "housing_shoulder_diameter")
    sizes = [stations.size(name) for name in names]
    rows = list(zip(*(size.nominal.tolist() for size in sizes), strict=True))
    assert stations.text("bearing_designation").tolist() == ["6206", "6205"]
    assert rows == [(30, 62, 36, 56), (25, 52, 31, 46)]
    assert [size.tolerance_class.tolist() for size in sizes[:2]] == [["k5", "k5"], ["H7", "H7"]]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.4]
    assert stations.number("housing_seat_roughness").tolist() == [1.6, 1.6]


def test_positions_that_are_taken_from_above_are_told(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text(TABLES["part and position once"], encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["DE", "NDE"]
    assert any(problem.code == "filled-down" for problem in stations.problems)


def test_a_blank_row_ends_what_a_cell_says_of_the_rows_below_it(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text(TABLES["part and position once"] + "\n;Roughness Ra;3.2;;µm;plan\n", encoding="utf-8")
    stations = read_table(path).stations
    assert 3.2 not in (*stations.number("housing_seat_roughness"), *stations.number("shaft_seat_roughness"))


def test_a_row_of_a_name_its_symbol_and_two_values_heads_no_table(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text(
        "Name,Symbol,A,B\nBearing type,,6206,6205\nShaft seat diameter,d,30 k5,25 k5\n"
        "Shaft shoulder diameter [mm],da,36,31\nHousing seat diameter,D,62 H7,52 H7\n"
        "Housing seat roughness Ra [µm],Ra,1.6,0.8\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
    assert stations.number("housing_seat_roughness").tolist() == [1.6, 0.8]


@pytest.mark.parametrize(
    ("heads", "load", "names", "parts"),
    [
        ("Feature group;Feature;Sym.;Position;Nominal;Tolerance;Unit", "Radial load", _EN, _PARTS_EN),
        ("Bauteil;Merkmal;Symbol;Lagerstelle;Nennmaß;Toleranz;Einheit", "Radiallast", _DE, _PARTS_DE),
        (
            "部品;項目;記号;軸受位置;基準寸法;公差;単位",
            "ラジアル荷重",
            _JA,
            {"b": "軸受", "s": "軸側", "h": "ハウジング側"},
        ),
    ],
)
def test_positions_in_turn_below_each_part_hold_for_the_rows_of_their_group(tmp_path, heads, load, names, parts):
    lines = [heads]
    for part in "bsh":
        for k, place in enumerate("AB"):
            said = [parts[part], place]
            for _, feature, *values in (row for row in _ROWS if row[0] == part):
                lines.append(f"{said[0]};{names[feature]};{_SYMBOLS[feature][part == 'h']};{said[1]};{values[k]}")
                said = ["", ""]
            lines += [f";{load};Fr;;{120 - k};;N"] if part == "b" else []
    path = tmp_path / "list.csv"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [36, 31]
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [56, 46]
    assert stations.number("shaft_seat_roughness").tolist() == [0.8, 0.4]
    assert stations.number("radial_load").tolist() == [120, 119]


def test_the_side_of_the_shaft_below_a_position_is_a_part(tmp_path):
    path = tmp_path / "list.csv"
    parts = {"b": "転がり軸受", "s": "軸側", "h": "ハウジング側"}
    text = _blocks("軸受{p};記号;基準寸法;公差;単位", _JA, parts, ("A", "B"), symbols=True)
    path.write_text(text, encoding="utf-8")
    stations = read_table(path).stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]
