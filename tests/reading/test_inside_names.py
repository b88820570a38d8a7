"""Positions that stand inside the names of a table: told by what comes again with each of them, whatever they are."""

import pytest

from linter.reading import InputError, read_table
from linter.reading.words.headings import Words
from linter.reading.words.inside import positions_inside
from linter.reading.words.names import Names


def names(pattern: str, positions: str, features: str, *others: str) -> list[str]:
    """Every feature at every position, and other names."""
    said = [pattern.format(p=p, f=f.format(p=p)) for p in positions.split("|") for f in features.split("|")]
    return [*said, *others]


POSITIONS = {
    "camel": names("{p}{f}", "gear|fan", "BrgBore|BrgOD|JournalDia|JournalRa", "gearRatio", "fanBladeCount"),
    "snake": names("{p}_{f}", "fwd|aft", "brg_bore|brg_width|journal_dia|journal_ra", "rotor_weight"),
    "capitals": names("{p}_{f}", "P1|P2|P3", "BRG_NO|SHAFT_SEAT_DIA|HSG_BORE_DIA", "PAINT_COLOUR"),
    "inner": names("rod_{p}_{f}", "sup|inf", "modelo|ancho_mm|eje_diam_max_mm|carga_axial_N", "largo_total_mm"),
    "dash": names("Journal {p} - {f}", "A|B", "diameter|roughness Ra|cylindricity", "Overall length"),
    "comma": names("Шейка {p}, {f}", "А|Б", "диаметр, мм|цилиндричность, мм|шероховатость Ra, мкм", "Резьба М56"),
    "roman": names("Wellensitz {p} {f}", "I|II", "Durchmesser|Rundlauf|Zylinderform", "Nut Breite"),
    "signs": names("轴承位{p}{f}", "1|2", "直径|圆柱度|粗糙度", "键槽宽度"),
    "japanese": names("{p}軸受{f}", "巻取|繰出", "内径|外径|型番|幅", "機械名称"),
    "french": names("{f} {p}", "volute|moteur", "Diamètre portée arbre|Charge radiale|Alésage logement", "Teinte"),
    "italian": names("{p} {f}", "LM|LT", "albero Ø [mm]|cuscinetto|alloggiamento Ø [mm]|Fr [N]", "Peso [kg]"),
    "a shaft and whose it is": names("Rotor shaft - {p} {f}", "DE|NDE", "brg seat dia|shoulder dia|brg seat finish"),
    "a compound for a shaft": names("Ritzelwelle - {f}", "links|rechts", "Sitz {p}, Ø|Bund {p}, Ø|Sitz {p}, Ra"),
    "an owner behind": names("Вал ротора: {p} {f}", "передняя|задняя", "шейка, диаметр|шейка, Ra|шейка, биение"),
    "a thing with bores": names("Yoke {p} {f}", "nose|tail", "brg bore|brg bore Ra|bore cylindricity", "Yoke mass"),
    "a thing with journals": names("Armature {p} {f}", "front|rear", "journal|journal Ra|journal runout"),
    "limits as places": names("{f} {p}", "oben|unten", "Passung Welle|Radialkraft|Schmierung", "Zolltarif"),
    "spanish": names("{p}.{f}", "polea|turbina", "rodamiento.modelo|asiento eje diámetro|carga radial", "color"),
}  # fmt: skip


@pytest.mark.parametrize("kind", POSITIONS)
def test_positions_are_told_by_what_comes_again(kind):
    listed = POSITIONS[kind]
    words = Words(Names.built_in())
    told = positions_inside(listed, words)
    stations = {one.station for one in told.values()}
    assert len(stations) == (3 if kind == "capitals" else 2)
    placed = Words(Names.built_in(), told)
    of_station = [h for name in listed if (h := placed.heading(name)) is not None and h.entry.level == "station"]
    counts = [sum(h.station == station for h in of_station) for station in sorted(stations)]
    assert min(counts) == max(counts) >= 3
    assert {h.station for h in of_station} == stations


NOT_POSITIONS = {
    "sections of a shaft": names("Section {p} - {f}", "A|B|C|D|E|F", "diameter|length|roughness Ra"),
    "deviations": names("{f} {p}", "upper|lower", "Shaft seat|Housing seat|Shaft shoulder diameter"),
    "deviations in German": names("{f} {p}", "oben|unten", "Wellensitz|Gehäusebohrung", "Passung Welle"),
    "limits": names("{f}_{p}", "max|min", "shaft_seat_dia|housing_seat_dia|preload|speed"),
    "sides of a ring": names("{p} ring {f}", "inner|outer", "fit|width|groove ratio|shoulder diameter"),
    "critical speeds": names("{p} critical {f}", "1st|2nd", "speed|speed ratio|mode damping"),
    "states": names("{f} {p}", "cold|hot", "Shaft seat diameter|Housing seat diameter|Bearing no|Roughness Ra shaft"),
    "units": names("{f} {p}", "mm|in", "Shaft seat diameter|Housing seat diameter|Shaft fillet radius"),
    "parts": names("{p} {f}", "shaft|housing", "seat diameter|fillet radius|roughness Ra|material"),
    "links of an arm": names("{p}_{f}", "arm|base|wrist", "OD|bore|width|mass"),
    "gauges": names("{p} {f}", "go gauge|no go gauge", "diameter|tolerance|wear limit"),
}


@pytest.mark.parametrize("kind", NOT_POSITIONS)
def test_other_words_that_come_again_are_no_positions(kind):
    assert positions_inside(NOT_POSITIONS[kind], Words(Names.built_in())) == {}


def test_one_name_that_is_not_known_stays_one_question(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text(
        "Name;Value;Unit\nspool_brg_no;6205;\nspool_journal_dia;25 k5;mm\nspool_journal_ra;0.4;µm\nspool_glint;3;mm\n"
        "crank_brg_no;6204;\ncrank_journal_dia;20 k5;mm\ncrank_journal_ra;0.8;µm\ncrank_glint;4;mm\n",
        encoding="utf-8",
    )
    reading = read_table(path)
    assert reading.stations.text("station").tolist() == ["spool", "crank"]
    assert reading.stations.size("shaft_seat_diameter").nominal.tolist() == [25, 20]
    assert reading.stations.number("shaft_seat_roughness").tolist() == [0.4, 0.8]
    assert [u.name for u in reading.unused] == ["spool_glint", "crank_glint"]


def test_rows_below_headings_that_say_positions_are_machines(tmp_path):
    path = tmp_path / "sizes.csv"
    path.write_text(
        "Baugröße;KS Lager;KS Wellensitz [mm];KS Fr [N];GS Lager;GS Wellensitz [mm];GS Fr [N]\n"
        "Typ 20;6205;25 k5;120;6204;20 k5;80\nTyp 30;6206;30 k5;210;6205;25 k5;90\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.machines == ("Typ 20", "Typ 30")
    assert stations.text("station").tolist() == ["KS", "GS", "KS", "GS"]
    assert stations.text("bearing_designation").tolist() == ["6205", "6204", "6206", "6205"]
    assert stations.number("radial_load").tolist() == [120, 80, 210, 90]


def test_a_list_of_other_parts_stays_refused(tmp_path):
    path = tmp_path / "arm.csv"
    rows = "".join(
        f"{p}_{f},{k + 10},mm\n" for k, p in enumerate(("arm", "base", "wrist")) for f in ("OD", "len", "wall")
    )
    path.write_text(f"Name,Value,Unit\n{rows}", encoding="utf-8")
    with pytest.raises(InputError):
        read_table(path)


def seats(sizes: dict[str, tuple[float, float]], *others: str) -> str:
    """A list of the seats of a bearing that says no part: a diameter and a shoulder for each position."""
    rows = [
        f"Bearing seat {p} - {feature};{value};mm"
        for p, (seat, shoulder) in sizes.items()
        for feature, value in (("diameter", seat), ("shoulder diameter", shoulder), ("cylindricity", 0.004))
    ]
    return "\n".join(["Feature;Nominal;Unit", *rows, *others]) + "\n"


@pytest.mark.parametrize(
    "sizes, part",
    [({"A": (50, 57), "B": (45, 52)}, "shaft"), ({"A": (80, 72), "B": (72, 64)}, "housing")],
)
def test_a_shoulder_tells_whose_the_seat_is(tmp_path, sizes, part):
    path = tmp_path / "seats.csv"
    path.write_text(seats(sizes), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.size(f"{part}_seat_diameter").nominal.tolist() == [seat for seat, _ in sizes.values()]
    assert stations.size(f"{part}_shoulder_diameter").nominal.tolist() == [shoulder for _, shoulder in sizes.values()]
    assert stations.number(f"{part}_seat_cylindricity").tolist() == [0.004, 0.004]


def test_a_seat_that_nothing_tells_the_part_of_is_not_read(tmp_path):
    path = tmp_path / "seats.csv"
    path.write_text(seats({"A": (50, 57), "B": (52, 45)}), encoding="utf-8")  # of a shaft, of a housing
    with pytest.raises(InputError):
        read_table(path)


def test_sizes_of_the_bearing_tell_seat_and_bore_apart():
    cells = {
        "fwd_brg_bore": "25", "fwd_brg_od": "52", "fwd_seat_dia": "25.01", "fwd_bore_dia_max": "52.02",
        "fwd_shldr_dia": "31", "aft_brg_bore": "20", "aft_brg_od": "47", "aft_seat_dia": "20.01",
        "aft_bore_dia_max": "47.02", "aft_shldr_dia": "26",
    }  # fmt: skip
    words = Words(Names.built_in())
    placed = Words(words.names, positions_inside(cells, words, {name: (cell,) for name, cell in cells.items()}))
    said = {name: placed.heading(name) for name in cells}
    assert {said[name].parameter for name in ("fwd_seat_dia", "aft_seat_dia")} == {"shaft_seat_diameter"}
    assert said["aft_bore_dia_max"].parameter == "housing_seat_diameter"
    assert said["aft_bore_dia_max"].aspect == "max"
    assert said["fwd_shldr_dia"].parameter == "shaft_shoulder_diameter"


def test_a_part_before_a_position_is_not_left_out():
    """The outside diameter of the shaft's bearing seat is not the ring's, though the rest alone says so."""
    words = Words(Names.built_in())
    names = [f"主軸 {side}軸受部 {what}" for side in ("前側", "後側") for what in ("外径", "円筒度", "表面粗さ")]
    told = positions_inside(names, words)
    known = {heading.parameter for t in told.values() if (heading := words.heading(t.rest)) is not None}
    assert "outside_diameter" not in known
    assert {"shaft_seat_cylindricity", "shaft_seat_roughness"} <= known
    assert {t.station for t in told.values()} == {"前側", "後側"}


def test_what_one_part_states_already_is_of_the_other_part():
    """The roughness of a bearing seat beside that of the housing's bore at the same position is the shaft's."""
    words = Words(Names.built_in())
    names = [f"{seat} {side}-Seite {what}" for seat in ("Lagersitz", "Gehäusebohrung") for side in "AB"
             for what in ("Ra", "Zylinderform")]  # fmt: skip
    told = positions_inside(names, words)
    said = {(name.split()[0], words.heading(t.rest).parameter.split("_")[0]) for name, t in told.items()}
    assert said == {("Lagersitz", "shaft"), ("Gehäusebohrung", "housing")}
    assert {t.station for t in told.values()} <= {"A", "B", "A-Seite", "B-Seite"}


def test_shaft_and_housing_alone_show_positions_beside_the_bearing(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text(
        "Modelo;n (rpm);Rod. LB;Eje LB;Aloj. LB;Rod. LV;Eje LV;Aloj. LV\n"
        "BP-1;2850;6203;Ø17 k6;Ø40 H7;6202;Ø15 k6;Ø35 H7\nBP-2;2860;6204;Ø20 k6;Ø47 H7;6203;Ø17 k6;Ø40 H7\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["LB", "LV", "LB", "LV"]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [40, 35, 47, 40]


def test_the_only_part_that_a_table_speaks_of_is_not_guessed():
    """Run-out of a seat that says no part is asked about, though the table speaks of the housing alone."""
    words = Words(Names.built_in())
    names = [f"{what} {side}" for what in ("Housing bore diameter", "Housing bore Ra", "Bearing seat run-out")
             for side in "AB"]  # fmt: skip
    told = positions_inside(names, words)
    assert {t.station for t in told.values()} == {"A", "B"}
    assert all(words.heading(t.rest) is None for name, t in told.items() if name.startswith("Bearing seat"))


BRACKETS = {
    "designation": ("Lagersitz {p} Ø (Lager {b})", "Lagerbohrung Schild {p} Ø", ["6206-2Z", "6205-2Z"]),
    "before the feature": ("Seat {p} (for {b}) dia", "End shield {p} bore dia", ["6206-2Z", "6205-2Z"]),
    "Japanese": ("軸受部{p} ({b}) 外径", "ハウジング穴{p} 内径", ["6206-2Z", "6205-2Z"]),
    "size of the ring": ("{p} brg journal ({b} mm brg)", "End shield {p} bore", [30, 25]),
}


@pytest.mark.parametrize("kind", BRACKETS)
def test_the_bearing_in_brackets_of_a_name_is_that_of_its_position(tmp_path, kind):
    shaft, bore, bearings = BRACKETS[kind]
    path = tmp_path / "list.csv"
    rows = [f"{shaft.format(p=p, b=b)};{d};mm" for p, b, d in zip("AB", bearings, (30, 25), strict=True)]
    rows += [f"{shaft.split('(')[0].format(p=p).strip()} Ra;0.8;µm" for p in "AB"]
    rows += [f"{bore.format(p=p)};{d};mm" for p, d in zip("AB", (62, 52), strict=True)]
    path.write_text("Name;Value;Unit\n" + "\n".join(rows) + "\n", encoding="utf-8")
    stations = read_table(path).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.number("bore_diameter").tolist() == [30, 25]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [30, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [62, 52]


def test_a_shoulder_at_a_ring_with_deviations_is_that_of_the_part_beside(tmp_path):
    path = tmp_path / "list.csv"
    path.write_text(
        "Name;Value;Upper;Lower\nBearing A;6205;;\nBearing A seat (inner ring) dia;25;+0.011;+0.002\n"
        "Bearing A shoulder (inner ring) dia;31;0;-0.2\nBearing A shoulder (outer ring) dia;46;+0.2;0\n",
        encoding="utf-8",
    )
    stations = read_table(path).stations
    assert stations.size("shaft_shoulder_diameter").nominal.tolist() == [31]
    assert stations.size("housing_shoulder_diameter").nominal.tolist() == [46]


@pytest.mark.parametrize(
    ("one", "other", "parts"),
    [
        ("la", "lr", ("rodamiento", "eje_mm", "eje_tol", "aloj_mm", "aloj_tol", "resalte_eje_mm", "funcion")),
        ("la", "lb", ("cuscinetto", "albero_mm", "albero_toll", "sede_mm", "sede_toll", "spallamento_albero", "ruolo")),
        ("le", "lm", ("roulement", "arbre_mm", "arbre_tol", "alesage_mm", "alesage_tol", "epaulement_arbre", "rôle")),
    ],
)  # fmt: skip
def test_two_letters_that_begin_names_are_positions_though_one_is_an_article(tmp_path, one, other, parts):
    path = tmp_path / "table.csv"
    heads = ",".join(("modelo", *(f"{side}_{part}" for side in (one, other) for part in parts)))
    rows = (f"VC-{k},6305,25,k6,62,H7,32,,6306,30,k6,72,J7,37.5," for k in (315, 355))
    path.write_text("\n".join((heads, *rows)), encoding="utf-8")
    stations = read_table(path).stations
    assert list(stations.text("station")) == [one, other] * 2
    assert list(stations.text("bearing_designation")) == ["6305", "6306"] * 2
    assert list(stations.size("shaft_seat_diameter").nominal) == [25, 30] * 2
    assert list(stations.size("housing_seat_diameter").tolerance_class) == ["H7", "J7"] * 2
