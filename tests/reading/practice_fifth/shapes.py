"""Sixty tables of bearing seats by a fifth grammar of practice: layout x language x place of units x form of tolerance.

Forms and words follow what stands in public tables of this kind; none is copied.

- https://tpsbearing.com/catalog/Rollingbearings/files/basic-html/page166.html
  (heading rows, units in a row, deviations in um)
- https://germany-bearing.com/article/s70/housing-tolerances-and-resultant-fits.html (group headings over classes)
- http://gbbco.cn/en/page-33135.html (columns by class)
- http://www.hchbearing.com/Manuquality.aspx?cid=46&Seccid=229 (fits by position and use, class in the cell)
- https://nodeshk.com/skf/art/skf-bearing-fits.html (class, run-out and Ra side by side, decimal comma)
- https://b2b.centrocuscinettifoggia.it/articoli/skf-cuscinetto-rullo-conico/32213.html
  (name, value with unit; abutments)
- https://www.yumpu.com/en/document/view/36627153/deep-groove-ball-bearings-67686916060626364-ntn
  (merged headings, units row)
- https://designparams.com/parts/bearings/deep-groove/ (inch series R)
- http://llxiang.cn/changyongzirunhuaguanjiezhouchengdejiegouxingshihetedian_1852_28.html (zh: form tolerances in um)
- http://online.flipbuilder.com/etwv/ugsd/files/basic-html/page7.html (repair practice: seats of motor bearings)
- https://automotiveenginemechanics.tpub.com/TM-5-2815-241-34P/css/TM-5-2815-241-34P_413.htm (limits min to max, inch)
- https://support.ptc.com/help/creo/creo_optm/usascii/optm/options_modeler/fund_ten_sub/About_Family_Tables_1.html
  (family table: a row an instance, a column a dimension)
- https://help.autodesk.com/cloudhelp/2022/ENU/Inventor-API/files/iPartFactory.htm (table of members)
- https://de.scribd.com/document/275123686/Nx-Expressions (expressions as [unit]name=value)
- https://github.com/lukedempsey/ParameterIO_Python (parameter export: name, unit, expression, comment)
- https://github.com/Olegche1977/vinpidshypnik011023 src/constant_bearings.jsx (sizes as d*D*B in one field)
- https://github.com/oysteinkrog/kmax1 bearings.scad (sizes by position in a list)
- find_string "bearing_bore_dia": wheel-set check sheets as JSON (bearingSeatDiameter, axleBoxHousingBoreDia)
- find_string "轴承位": features with name, dimensions, tolerance, surface_finish; target and limits
- find_string "軸受内径": attribute paths with slashes (主軸/その他/軸受内径[mm])
- find_string "Upper Tol": label, nominal (mm), upper tol, lower tol
- http://cb-online.ru/spravochniky-online/ (ru: sizes in mm, symbols as headings, decimal comma, grouped numbers)
- https://fliphtml5.com/nbzvt/ibpo/ISB-Cuscinetti-e-componenti-Bearings-and-components-01.03.15/33 (it/en headings)
- https://www.blecher.de/info/174/allgemein/glossar/Lagernummer.html (A-Lager, B-Lager)
- http://dokipedia.ru/print/5348777 (ru: seats of shafts and housings)
"""

import random
import re
import unicodedata
from collections.abc import Callable
from typing import Any

from practice.grammar import Table

from . import trade, words
from .pen import Col, Doc, Ink, Num, Spot
from .trade import Machine, Open, Seat, Units, group_of

ORDER = ("bearing", "shaft", "housing", "operation")
CODES = {
    "shaft_seat_diameter": "shaft_seat_dia",
    "housing_seat_diameter": "housing_bore_dia",
    "shaft_seat_roughness": "shaft_seat_Ra",
    "housing_seat_roughness": "housing_bore_Ra",
    "shaft_seat_cylindricity": "shaft_seat_cyl_tol",
    "housing_seat_cylindricity": "housing_bore_cyl_tol",
    "shaft_seat_runout": "shaft_seat_total_runout",
    "housing_seat_runout": "housing_bore_total_runout",
    "shaft_shoulder_diameter": "shaft_shoulder_dia",
    "housing_shoulder_diameter": "housing_shoulder_dia",
    "shaft_shoulder_runout": "shaft_shoulder_face_runout",
    "housing_shoulder_runout": "housing_shoulder_face_runout",
    "shaft_fillet_radius": "shaft_fillet_max",
    "housing_fillet_radius": "housing_fillet_max",
    "bearing_designation": "bearing_no",
    "bore_diameter": "bearing_bore",
    "outside_diameter": "bearing_OD",
    "ring_width": "bearing_width",
    "ring_chamfer": "bearing_chamfer_min",
    "tolerance_class": "bearing_precision_class",
    "clearance_class": "internal_clearance",
    "cage": "cage_material",
    "closure": "bearing_seals",
    "ball_material": "ball_material",
    "dynamic_rating": "dynamic_load_rating_C",
    "static_rating": "static_load_rating_C0",
    "limiting_speed": "bearing_limiting_speed",
    "lubrication": "lubrication",
    "operating_temperature": "bearing_temp",
    "regreasing_interval": "relube_interval",
    "radial_load": "radial_load",
    "axial_load": "axial_load",
    "axial_role": "axial_function",
    "nut_torque": "locknut_torque",
    "speed_max": "max_speed",
    "speed_operating": "operating_speed",
    "required_life": "required_life_L10h",
    "rotor_mass": "rotor_mass",
    "bearing_span": "bearing_span",
    "shaft_material": "shaft_material",
    "housing_material": "housing_material",
    "temperature_max": "max_temperature",
    "temperature_min": "min_temperature",
    "ambient_temperature": "ambient_temp",
    "preload_method": "preload_method",
    "shaft_orientation": "shaft_orientation",
    "shaft_temperature": "shaft_temp",
    "housing_temperature": "housing_temp",
    "preload_force": "preload_force",
    "rotating_ring": "rotating_ring",
    "balance_grade": "balance_grade",
}
PART_CODES = {
    "value": "",
    "nominal": "",
    "upper": "_upper_dev",
    "lower": "_lower_dev",
    "class": "_fit_class",
    "max": "_max",
    "min": "_min",
    "pm": "_plus_minus",
}


# ---------------------------------------------------------------- columns and headings


def columns(doc: Doc, machine_level: bool, dims: bool = False, fit: bool = False) -> list[Col]:
    """Columns in the order of their sections."""
    stated = list(doc.machines[0].positions[0])
    found: list[Col] = []
    for parameter in stated:
        group = group_of(parameter)
        if dims and parameter in ("outside_diameter", "ring_width"):
            continue
        if dims and parameter == "bore_diameter":
            found.append(Col("dims", "value", "bearing"))
        elif fit and parameter.endswith("_seat_diameter"):
            if parameter.startswith("shaft"):
                found.append(Col("fit", "value", "bearing"))
        elif parameter.endswith("_seat_diameter"):
            found += [Col(parameter, aspect, group) for aspect in doc.ink.aspects()]
        else:
            found.append(Col(parameter, "value", group))
    own = [Col(p, "value", "operation") for p in doc.machines[0].own] if machine_level else []
    order = list(ORDER)
    return sorted(found, key=lambda c: order.index(c.group)) + own


def unit_of(ink: Ink, col: Col) -> str:
    """The unit of a column, empty for words."""
    if col.parameter == "dims":
        return ink.unit("bore_diameter")
    if col.parameter == "fit" or (col.parameter.endswith("_roughness") and ink.style == 7):
        return ""
    return ink.unit(col.parameter, col.aspect)


def title_of(ink: Ink, col: Col, short: bool = False, aspect: bool = True, unit: bool = True) -> str:
    """The heading of a column: name, part of the size, unit where units stand in headings."""
    if col.parameter in ("dims", "fit"):
        text = ink.part(col.parameter)
    else:
        text = ink.name(col.parameter, short)
    if aspect and col.aspect not in ("value", "nominal"):
        text = f"{text} {ink.part(col.aspect)}"
    told = unit_of(ink, col)
    if unit and told and ink.place not in ("row", "cell") and not ink.noted(col.parameter, col.aspect):
        return ink.bracket(text, told)
    if col.parameter == "dims" and unit and ink.place == "cell":
        return ink.bracket(text, told)
    return text


Place = Callable[[int, int], Spot]


def matrix(
    doc: Doc,
    place: Place,
    cols: list[Col],
    recs: list[tuple[int, int]],
    levels: tuple[str, ...],
    idents: tuple[str, ...],
    sparse: bool = False,
    ident_first: bool = True,
) -> int:
    """Columns and records with heading levels; returns the number of lines used.

    ``place(i, j)`` is the cell of line i, column j, so that a transposed table is the same with both swapped.
    """
    ink, base = doc.ink, len(idents)
    depth = len(levels) + (ink.place == "row" and "unit" not in levels)
    heads: dict[int, list[Spot]] = {}
    for j, ident in enumerate(idents):
        heads[j] = [doc.put(place(0, j), ink.label(ident))]
    previous = [""] * len(levels)
    for k, col in enumerate(cols):
        j = base + k
        heads[j] = []
        for i, level in enumerate(levels):
            short = "group" in levels and col.parameter not in ("dims", "fit")
            last = i == len(levels) - 1
            if level == "group":
                text, key = ink.group(col.group), col.group
            elif level == "name":
                text = title_of(ink, col, short, aspect="aspect" not in levels, unit=last)
                key = col.parameter if "aspect" in levels else f"{col.parameter} {col.aspect}"
            else:
                text, key = ink.part(col.aspect) if col.aspect != "value" else "", f"{col.parameter} {col.aspect}"
                told = unit_of(ink, col)
                if told and ink.place not in ("row", "cell") and not ink.noted(col.parameter, col.aspect):
                    text = ink.bracket(text, told) if text else f"[{told}]"
            full = f"{col.group} {key}" if level != "group" else key
            if previous[i] == full:
                start = heads[j - 1][i]
                heads[j].append(start)
            else:
                heads[j].append(doc.put(place(i, j), text))
                previous[i] = full
        if ink.place == "row":
            unit = unit_of(ink, col)
            heads[j].append(doc.put(place(depth - 1, j), unit or "-"))
    line, shown = depth, ""
    for m, s in recs:
        if "machine" in idents and not (sparse and shown == doc.machines[m].name):
            doc.word(
                place(line, idents.index("machine")),
                m,
                -1,
                "machine",
                doc.machines[m].name,
                heads[idents.index("machine")],
            )
            shown = doc.machines[m].name
            first = True
        else:
            first = not sparse or ("machine" not in idents and s == 0)
        if "station" in idents:
            k = idents.index("station")
            doc.word(place(line, k), m, s, "station", doc.stations[m][s], heads[k])
        for k, col in enumerate(cols):
            whole = col.parameter in doc.machines[m].own
            if whole and not first:
                continue
            doc.fact(place(line, base + k), m, -1 if whole else s, col, heads[base + k])
        line += 1
    return line


def every(doc: Doc) -> list[tuple[int, int]]:
    """All positions."""
    return [(m, s) for m, names in enumerate(doc.stations) for s in range(len(names))]


def straight(sheet: int, row: int, column: int = 0) -> Place:
    """Lines are rows."""
    return lambda i, j: (sheet, row + i, column + j)


def turned(sheet: int, row: int, column: int = 0) -> Place:
    """Lines are columns."""
    return lambda i, j: (sheet, row + j, column + i)


def title(doc: Doc, row: int = 0, sheet: int = 0, block: bool = True, machine: bool = True) -> int:
    """A title with, of a single machine, its block; returns the next free row."""
    ink, rng = doc.ink, doc.ink.rng
    doc.put((sheet, row, 0), ink.pick("title", words.TITLES[ink.language]))
    row += 1
    if block and len(doc.machines) == 1:
        if machine:
            spot = doc.put((sheet, row, 0), ink.label("machine"))
            doc.word((sheet, row, 1), 0, -1, "machine", doc.machines[0].name, [spot])
            row += 1
        if rng.random() < 0.7:
            row = drawing(doc, row, sheet)
    if ink.place == "title":
        doc.put((sheet, row, 0), ink.note())
        row += 1
    return row + (rng.random() < 0.6)


def drawing(doc: Doc, row: int, sheet: int = 0) -> int:
    """Drawing number and revision of a single machine."""
    ink, rng = doc.ink, doc.ink.rng
    number = f"{rng.choice(['BL', 'TK', '40', 'Z'])}-{rng.randint(1000, 9999)}{rng.choice(['', '.01', '-00'])}"
    spot = doc.put((sheet, row, 0), ink.label("drawing_number"))
    doc.word((sheet, row, 1), 0, -1, "drawing_number", number, [spot])
    across = rng.random() < 0.5
    other = (sheet, row, 2) if across else (sheet, row + 1, 0)
    spot = doc.put(other, ink.label("drawing_revision"))
    doc.word((other[0], other[1], other[2] + 1), 0, -1, "drawing_revision", rng.choice("ABCDE"), [spot])
    return row + 1 + (not across)


def own_block(doc: Doc, row: int, sheet: int = 0, m: int = 0, column: int = 0) -> int:
    """Values of the machine as pairs below one another."""
    for parameter in doc.machines[m].own:
        col = Col(parameter)
        spot = doc.put((sheet, row, column), pair_name(doc, col))
        doc.fact((sheet, row, column + 1), m, -1, col, [spot])
        pair_unit(doc, (sheet, row, column + 2), col, m, -1)
        row += 1
    return row


def pair_name(doc: Doc, col: Col, short: bool = False) -> str:
    """A name before a value; its unit is in it unless units stand in a cell of their own."""
    return title_of(doc.ink, col, short, unit=doc.ink.place != "row")


def pair_unit(doc: Doc, spot: Spot, col: Col, m: int, s: int) -> None:
    """The unit behind a value where units have a column."""
    if doc.ink.place == "row":
        source = doc.machines[m].own if s < 0 else doc.machines[m].positions[s]
        raw = source.get(col.parameter)
        doc.put(spot, "" if isinstance(raw, Open) and raw.no_unit else unit_of(doc.ink, col) or "-")


def foot(doc: Doc, row: int, sheet: int = 0) -> None:
    """The note on units below the table, and at times a remark."""
    if doc.ink.place == "foot":
        doc.put((sheet, row + doc.ink.rng.randint(0, 1), 0), doc.ink.note())


# ---------------------------------------------------------------- layouts


def rows_plain(doc: Doc) -> None:
    """One row a position, one heading row."""
    rng, single = doc.ink.rng, len(doc.machines) == 1
    row = title(doc) if single or doc.ink.place == "title" or rng.random() < 0.5 else 0
    sized = "bore_diameter" in doc.machines[0].positions[0] and "outside_diameter" in doc.machines[0].positions[0]
    dims = sized and "ring_width" in doc.machines[0].positions[0] and doc.ink.style % 3 == 0
    fit = doc.ink.form == "class column"
    idents = ("station",) if single and row else ("machine", "station")
    aside = single and rng.random() < 0.5
    if aside:
        row = own_block(doc, row) + 1
    lines = matrix(
        doc,
        straight(0, row),
        columns(doc, not aside, dims, fit),
        every(doc),
        ("name",),
        idents,
        sparse=doc.ink.style % 4 == 1,
    )
    foot(doc, row + lines + 1)


def rows_two(doc: Doc) -> None:
    """Two heading rows with merged groups."""
    row = title(doc, machine=False) if doc.ink.place == "title" or doc.ink.rng.random() < 0.6 else 0
    lines = matrix(doc, straight(0, row), columns(doc, True), every(doc), ("group", "name"), ("machine", "station"))
    spans(doc, row, 1)
    foot(doc, row + lines + 1)


def rows_three(doc: Doc) -> None:
    """Three heading rows: section, name, part of the size."""
    row = title(doc, machine=False) if doc.ink.place == "title" or doc.ink.rng.random() < 0.4 else 0
    lines = matrix(
        doc, straight(0, row), columns(doc, True), every(doc), ("group", "name", "aspect"), ("machine", "station")
    )
    spans(doc, row, 2)
    foot(doc, row + lines + 1)


def spans(doc: Doc, row: int, levels: int) -> None:
    """Merge the headings of sections over their columns, as workbooks do."""
    cells = doc.sheets[0][1]
    width = max(c for _, c in cells) + 1
    for level in range(levels):
        at = row + level
        starts = [c for c in range(width) if (at, c) in cells]
        for start, end in zip(starts, [*starts[1:], width], strict=True):
            covered = range(start + 1, end)
            above = [c for c in covered if level and (at - 1, c) in cells]
            last = (above[0] if above else end) - 1
            if last > start and cells.get((row + levels, start)):
                doc.merged.append((0, at, start, at, last))


def transposed(doc: Doc) -> None:
    """Parameters below one another, positions side by side."""
    row = title(doc) if len(doc.machines) == 1 else title(doc, block=False) if doc.ink.place == "title" else 0
    levels = doc.ink.rng.choice((("name",), ("group", "name"), ("name",)))
    idents = ("station",) if len(doc.machines) == 1 else ("machine", "station")
    cols = columns(doc, True)
    matrix(doc, turned(0, row), cols, every(doc), levels, idents, sparse=True)
    foot(doc, row + len(cols) + len(idents) + 1)


def sectioned(doc: Doc) -> None:
    """Position columns; sections as rows of their own."""
    ink = doc.ink
    row = title(doc)
    after = 2 if ink.place == "row" else 1
    doc.put((0, row, 0), ink.part("name"))
    if after == 2:
        doc.put((0, row, 1), ink.part("unit"))
    recs = every(doc)
    heads = []
    if len(doc.machines) > 1:
        for k, (m, s) in enumerate(recs):
            if s == 0:
                doc.word((0, row, after + k), m, -1, "machine", doc.machines[m].name, [])
        row += 1
    for k, (m, s) in enumerate(recs):
        heads.append((0, row, after + k))
        doc.word(heads[-1], m, s, "station", doc.stations[m][s], [])
    row += 1
    cols = columns(doc, True)
    for group in ORDER:
        section = [c for c in cols if c.group == group]
        if not section:
            continue
        top = doc.put((0, row, 0), ink.group(group))
        row += 1
        for col in section:
            whole = col.parameter in doc.machines[0].own
            name = doc.put((0, row, 0), pair_name(doc, col, short=True))
            if after == 2:
                pair_unit(doc, (0, row, 1), col, 0, -1 if whole else 0)
            for k, (m, s) in enumerate(recs):
                if whole and s:
                    continue
                doc.fact((0, row, after + k), m, -1 if whole else s, col, [top, name, heads[k]])
            row += 1
    foot(doc, row)


def long_rows(doc: Doc) -> None:
    """Machine, position, name, value and unit in columns, one value a row."""
    ink = doc.ink
    row = title(doc, block=False) if ink.rng.random() < 0.3 or ink.place == "title" else 0
    several = len(doc.machines) > 1 or ink.rng.random() < 0.5
    heads = ([ink.label("machine")] if several else []) + [ink.label("station"), ink.part("name"), ink.part("value")]
    heads += [ink.part("unit")] if ink.place == "row" else []
    for k, text in enumerate(heads):
        doc.put((0, row, k), text)
    head, row, at = row, row + 1, int(several)
    for m in range(len(doc.machines)):
        for s in (-1, *range(len(doc.stations[m]))):
            cols = [Col(p) for p in doc.machines[m].own] if s < 0 else columns(doc, False)
            for col in cols:
                if several:
                    doc.word((0, row, 0), m, -1, "machine", doc.machines[m].name, [(0, head, 0)])
                if s >= 0:
                    doc.word((0, row, at), m, s, "station", doc.stations[m][s], [(0, head, at)])
                name = doc.put((0, row, at + 1), pair_name(doc, col))
                doc.fact((0, row, at + 2), m, s, col, [name])
                pair_unit(doc, (0, row, at + 3), col, m, s)
                row += 1
    foot(doc, row)


def long_names(doc: Doc) -> None:
    """Name, value, unit; the name says the position."""
    ink = doc.ink
    row = title(doc)
    shape = ink.rng.choice(("{n} {p}", "{n} ({p})", "{p}: {n}", "{p} - {n}"))
    doc.put((0, row, 0), ink.part("name"))
    doc.put((0, row, 1), ink.part("value"))
    if ink.place == "row":
        doc.put((0, row, 2), ink.part("unit"))
    row += 1
    row = own_block(doc, row)
    for s, position in enumerate(doc.stations[0]):
        for col in columns(doc, False):
            text = shape.format(n=title_of(ink, col, unit=False), p=position)
            told = unit_of(ink, col)
            if told and ink.place not in ("row", "cell") and not ink.noted(col.parameter, col.aspect):
                text = ink.bracket(text, told)
            name = doc.put((0, row, 0), text)
            doc.fact((0, row, 1), 0, s, col, [name])
            pair_unit(doc, (0, row, 2), col, 0, s)
            row += 1
    foot(doc, row)


def stacked_positions(doc: Doc) -> None:
    """A block of pairs for each position, with its title line."""
    ink = doc.ink
    row = title(doc, block=False)
    for m, machine in enumerate(doc.machines):
        spot = doc.put((0, row, 0), ink.label("machine"))
        doc.word((0, row, 1), m, -1, "machine", machine.name, [spot])
        row = own_block(doc, row + 1, m=m) + 1
        for s, position in enumerate(doc.stations[m]):
            spot = doc.put((0, row, 0), ink.label("station"))
            doc.word((0, row, 1), m, s, "station", position, [spot])
            row += 1
            for col in columns(doc, False):
                name = doc.put((0, row, 0), pair_name(doc, col))
                doc.fact((0, row, 1), m, s, col, [name])
                pair_unit(doc, (0, row, 2), col, m, s)
                row += 1
            row += 1
    foot(doc, row)


def stacked_parts(doc: Doc) -> None:
    """A table for each part: bearing, shaft, housing, operation, positions in rows."""
    ink = doc.ink
    row = title(doc)
    cols = columns(doc, False)
    several = len(doc.machines) > 1
    for group in ORDER:
        section = [c for c in cols if c.group == group]
        if section:
            top = doc.put((0, row, 0), ink.group(group))
            before = {k: list(v) for k, v in doc.own.items()}
            row += 1 + part_table(doc, 0, row + 1, section, several)
            for key, own in doc.own.items():
                if own != before.get(key, []):
                    doc.heads[key].append(top)
            row += 1
    if several:
        whole = [Col(p, "value", "operation") for p in doc.machines[0].own]
        matrix(doc, straight(0, row), whole, [(m, 0) for m in range(len(doc.machines))], ("name",), ("machine",))
        row += len(doc.machines) + 2
    else:
        row = own_block(doc, row)
    foot(doc, row)


def part_table(doc: Doc, sheet: int, row: int, section: list[Col], several: bool) -> int:
    """A table of one part with short names."""
    ink = doc.ink
    idents = ("machine", "station") if several else ("station",)
    heads = {k: doc.put((sheet, row, k), ink.label(ident)) for k, ident in enumerate(idents)}
    depth = 1 + (ink.place == "row")
    spots = []
    for k, col in enumerate(section):
        own = [doc.put((sheet, row, len(idents) + k), title_of(ink, col, short=True))]
        if ink.place == "row":
            own.append(doc.put((sheet, row + 1, len(idents) + k), unit_of(ink, col) or "-"))
        spots.append(own)
    line = row + depth
    for m, s in every(doc):
        if several:
            doc.word((sheet, line, 0), m, -1, "machine", doc.machines[m].name, [heads[0]])
        doc.word((sheet, line, len(idents) - 1), m, s, "station", doc.stations[m][s], [heads[len(idents) - 1]])
        for k, col in enumerate(section):
            doc.fact((sheet, line, len(idents) + k), m, s, col, spots[k])
        line += 1
    return line - row


def side_by_side(doc: Doc) -> None:
    """The positions' blocks of pairs beside one another."""
    ink = doc.ink
    row = own_block(doc, title(doc)) + 1
    step = 4 if ink.place == "row" else 3
    for s, position in enumerate(doc.stations[0]):
        left = s * step
        if ink.style % 2:
            spot = doc.put((0, row, left), ink.label("station"))
            doc.word((0, row, left + 1), 0, s, "station", position, [spot])
        else:
            doc.word((0, row, left), 0, s, "station", position, [])
        for k, col in enumerate(columns(doc, False)):
            name = doc.put((0, row + 1 + k, left), pair_name(doc, col))
            doc.fact((0, row + 1 + k, left + 1), 0, s, col, [name])
            pair_unit(doc, (0, row + 1 + k, left + 2), col, 0, s)
    foot(doc, row + 2 + len(columns(doc, False)))


def row_per_seat(doc: Doc) -> None:
    """A row for each seat: machine, position, part, then size, roughness, form, shoulder, fillet; bearings apart."""
    ink = doc.ink
    row = title(doc, block=False) if ink.rng.random() < 0.5 or ink.place == "title" else 0
    heads = [ink.label("machine"), ink.label("station"), ink.part("part")]
    for k, text in enumerate(heads):
        doc.put((0, row, k), text)
    stated = doc.machines[0].positions[0]
    features = [
        f
        for f in (
            "seat_diameter",
            "seat_roughness",
            "seat_cylindricity",
            "seat_runout",
            "shoulder_diameter",
            "shoulder_runout",
            "fillet_radius",
        )
        if f"shaft_{f}" in stated or f"housing_{f}" in stated
    ]
    cells: list[tuple[str, str, list[Spot]]] = []
    for feature in features:
        for aspect in ink.aspects() if feature == "seat_diameter" else ("value",):
            col = Col(f"shaft_{feature}", aspect)
            own = [doc.put((0, row, 3 + len(cells)), title_of(ink, col, short=True))]
            if ink.place == "row":
                own.append(doc.put((0, row + 1, 3 + len(cells)), unit_of(ink, col) or "-"))
            cells.append((feature, aspect, own))
    row += 1 + (ink.place == "row")
    for m, s in every(doc):
        for side in ("shaft", "housing"):
            doc.word((0, row, 0), m, -1, "machine", doc.machines[m].name, [])
            doc.word((0, row, 1), m, s, "station", doc.stations[m][s], [])
            part = doc.put((0, row, 2), ink.group(side))
            for k, (feature, aspect, own) in enumerate(cells):
                doc.fact((0, row, 3 + k), m, s, Col(f"{side}_{feature}", aspect), [*own, part])
            row += 1
    row += 1
    rest = [c for c in columns(doc, True) if c.group in ("bearing", "operation") or c.parameter in doc.machines[0].own]
    rest += [c for c in columns(doc, False) if c.parameter in ("nut_torque",)]
    lines = matrix(doc, straight(0, row), rest, every(doc), ("name",), ("machine", "station"))
    foot(doc, row + lines + 1)


def sheet_per_part(doc: Doc) -> None:
    """A sheet for each part and one for the operation."""
    ink, cols, row = doc.ink, columns(doc, False), 0
    doc.sheets = []
    for group in ORDER:
        section = [c for c in cols if c.group == group]
        if section:
            doc.sheets.append((ink.group(group)[:31].replace("/", " "), {}))
            sheet = len(doc.sheets) - 1
            if ink.place in ("title", "foot"):
                doc.put((sheet, 0, 0), ink.note())
            row += 2
            row += part_table(doc, sheet, row, section, True)
    if not any(c.group == "operation" for c in cols):
        doc.sheets.append((ink.group("operation")[:31].replace("/", " "), {}))
    whole = [Col(p, "value", "operation") for p in doc.machines[0].own]
    matrix(
        doc,
        straight(len(doc.sheets) - 1, row + 2),
        whole,
        [(m, 0) for m in range(len(doc.machines))],
        ("name",),
        ("machine",),
    )


def sheet_per_position(doc: Doc) -> None:
    """A sheet for each position with pairs, and one for the machine."""
    ink = doc.ink
    doc.sheets = [(ink.label("machine")[:31], {})]
    own_block(doc, title(doc))
    for s, position in enumerate(doc.stations[0]):
        doc.sheets.append((position[:31].replace("/", " "), {}))
        spot = doc.put((s + 1, 0, 1), ink.label("station"))
        doc.word((s + 1, 0, 2), 0, s, "station", position, [spot])
        if ink.place in ("title", "foot"):
            doc.put((s + 1, 1, 1), ink.note())
        for k, col in enumerate(columns(doc, False)):
            doc.put((s + 1, 2 + k, 0), Num(k + 1))
            name = doc.put((s + 1, 2 + k, 1), pair_name(doc, col))
            doc.fact((s + 1, 2 + k, 2), 0, s, col, [name])
            pair_unit(doc, (s + 1, 2 + k, 3), col, 0, s)


def row_per_machine(doc: Doc) -> None:
    """One row a machine; the columns' names say the position."""
    ink = doc.ink
    shape = ink.rng.choice(("{p} {n}", "{n} {p}", "{n} ({p})", "{p} - {n}", "{p}: {n}"))
    row = title(doc, block=False) if ink.place == "title" or ink.rng.random() < 0.3 else 0
    depth = 1 + (ink.place == "row")
    head = doc.put((0, row, 0), ink.label("machine"))
    j = 1
    for m, machine in enumerate(doc.machines):
        doc.word((0, row + depth + m, 0), m, -1, "machine", machine.name, [head])
    for s in (-1, *range(len(doc.stations[0]))):
        for col in [Col(p) for p in doc.machines[0].own] if s < 0 else columns(doc, False):
            text = title_of(ink, col, unit=False)
            told = unit_of(ink, col)
            if s >= 0:
                text = shape.format(p=doc.stations[0][s], n=text)
            if told and ink.place not in ("row", "cell") and not ink.noted(col.parameter, col.aspect):
                text = ink.bracket(text, told)
            heads = [doc.put((0, row, j), text)]
            if ink.place == "row":
                heads.append(doc.put((0, row + 1, j), told or "-"))
            for m in range(len(doc.machines)):
                doc.fact((0, row + depth + m, j), m, s, col, heads)
            j += 1
    foot(doc, row + depth + len(doc.machines) + 1)


def design_table(doc: Doc) -> None:
    """A family table: an instance a row, names of parameters as code with position and unit."""
    ink = doc.ink
    codes = code_names(doc)
    sign = ink.rng.choice(("{c}@{p}", "{p}_{c}", "{c}_{p}"))
    doc.put((0, 0, 0), f"Design table for: {doc.stations[0][0]}-{doc.stations[0][1]} bearings")
    doc.put((0, 1, 0), "Machine")
    for m, machine in enumerate(doc.machines):
        doc.word((0, 2 + m, 0), m, -1, "machine", machine.name, [(0, 1, 0)])
    j = 1
    for s in (-1, *range(len(doc.stations[0]))):
        for col in [Col(p) for p in doc.machines[0].own] if s < 0 else columns(doc, False):
            code = codes[col.parameter] + PART_CODES[col.aspect]
            text = code if s < 0 else sign.format(c=code, p=doc.stations[0][s])
            told = unit_of(ink, col)
            head = doc.put((0, 1, j), f"{text} [{ascii_unit(told)}]" if told else text)
            for m in range(len(doc.machines)):
                doc.fact((0, 2 + m, j), m, s, col, [head])
            j += 1


def code_names(doc: Doc) -> dict[str, str]:
    """Names as code, all in one case."""
    shape = doc.ink.pick("case", ("snake", "upper", "snake"))
    return {k: v.upper() if shape == "upper" else v for k, v in CODES.items()}


def ascii_unit(unit: str) -> str:
    """A unit as program exports write it."""
    return unit.replace("µ", "u").replace("°C", "degC").replace("°F", "degF").replace("²", "2").replace("·", ".")


def inspection(doc: Doc) -> None:
    """An inspection list: balloon numbers, nominal, deviations, unit, an empty or filled column of measurements."""
    ink, rng = doc.ink, doc.ink.rng
    doc.put((0, 0, 0), words.INSPECTION[ink.language][0])
    spot = doc.put((0, 1, 0), ink.label("machine"))
    doc.word((0, 1, 1), 0, -1, "machine", doc.machines[0].name, [spot])
    row = drawing(doc, 2) + 1
    heads = [
        "no",
        "name",
        "nominal",
        "class" if ink.form == "class column" else "upper",
        "lower",
        "unit",
        "measured",
        "result",
    ]
    if ink.form == "class column":
        heads.remove("lower")
    limits = ink.form == "limit columns"
    if limits:
        heads[2:5] = ["min", "max"]
    for k, part in enumerate(heads):
        doc.put((0, row, k), ink.part(part))
    unit_at = heads.index("unit")
    row, number = row + 1, rng.choice((1, 1, 10, 101))
    filled = rng.random() < 0.5
    position_first = rng.random() < 0.5
    for s in (-1, *range(len(doc.stations[0]))):
        source = doc.machines[0].own if s < 0 else doc.machines[0].positions[s]
        for parameter, raw in source.items():
            col = Col(parameter)
            text = ink.name(parameter)
            if s >= 0:
                text = f"{doc.stations[0][s]}: {text}" if position_first else f"{text}, {doc.stations[0][s]}"
            doc.put((0, row, 0), Num(number))
            name = doc.put((0, row, 1), text)
            if isinstance(raw, Seat):
                want = (
                    ("min", "max")
                    if limits
                    else ("nominal", "class")
                    if unit_at == 4
                    else ("nominal", "upper", "lower")
                )
                for k, aspect in enumerate(want):
                    doc.fact((0, row, 2 + k), 0, s, Col(parameter, aspect), [name])
                if filled:
                    middle = raw.nominal + (raw.upper + raw.lower) / 2
                    doc.put((0, row, unit_at + 1), Num(round(middle, 4), 4))
                    doc.put((0, row, unit_at + 2), "OK")
            else:
                upward = limits and parameter.endswith(("_runout", "_roughness", "_cylindricity", "fillet_radius"))
                doc.fact((0, row, 3 if upward else 2), 0, s, col, [name])
            if not (isinstance(raw, Open) and raw.no_unit):
                doc.put((0, row, unit_at), ink.unit(parameter) or "-")
            row, number = row + 1, number + 1


def inspection_kinds(doc: Doc) -> None:
    """An inspection list by feature: the feature, the kind of characteristic and what the drawing asks for."""
    ink = doc.ink
    kinds = {"seat_diameter": "seat", "seat_cylindricity": "cyl", "seat_runout": "run", "seat_roughness": "rough"}
    doc.put((0, 0, 0), words.INSPECTION[ink.language][0])
    spot = doc.put((0, 1, 0), ink.label("machine"))
    doc.word((0, 1, 1), 0, -1, "machine", doc.machines[0].name, [spot])
    row = own_block(doc, drawing(doc, 2)) + 1
    for k, text in enumerate(
        (
            ink.part("no"),
            ink.label("station"),
            ink.part("feature"),
            ink.part("kind"),
            ink.part("value"),
            ink.part("unit"),
            ink.part("measured"),
        )
    ):
        doc.put((0, row, k), text)
    row, number = row + 1, 1
    diameter = {
        "en": "Diameter",
        "de": "Durchmesser",
        "fr": "Diamètre",
        "it": "Diametro",
        "es": "Diámetro",
        "ja": "直径",
        "zh": "直径",
        "ru": "Диаметр",
    }[ink.language]
    for s, position in enumerate(doc.stations[0]):
        for parameter, raw in doc.machines[0].positions[s].items():
            side, _, feature = parameter.partition("_")
            doc.put((0, row, 0), Num(number))
            doc.word((0, row, 1), 0, s, "station", position, [])
            if side in ("shaft", "housing") and feature in kinds:
                seat = ink.name(f"{side}_seat_diameter")
                name = doc.put((0, row, 2), seat)
                kind = diameter if feature == "seat_diameter" else words.SHORT[ink.language][kinds[feature]][0]
                heads = [name, doc.put((0, row, 3), kind)]
            else:
                heads = [doc.put((0, row, 2), ink.name(parameter)), doc.put((0, row, 3), "-")]
            doc.fact((0, row, 4), 0, s, Col(parameter), heads)
            if not (isinstance(raw, Open) and raw.no_unit):
                doc.put((0, row, 5), ink.unit(parameter) or "-")
            row, number = row + 1, number + 1


def service_sheet(doc: Doc) -> None:
    """A maintenance sheet: limits of every seat by position with what was found, pairs of values above it."""
    ink, rng = doc.ink, doc.ink.rng
    row = own_block(doc, title(doc)) + 1
    names = ["name", "min", "max", "measured", "remark"]
    doc.put((0, row, 0), ink.label("station"))
    for k, part in enumerate(names):
        text = ink.part(part)
        doc.put((0, row, 1 + k), ink.bracket(text, ink.unit("shaft_seat_diameter")) if part in ("min", "max") else text)
    row += 1
    for s, position in enumerate(doc.stations[0]):
        for side in ("shaft", "housing"):
            raw = doc.machines[0].positions[s][f"{side}_seat_diameter"]
            doc.word((0, row, 0), 0, s, "station", position, [])
            name = doc.put((0, row, 1), ink.name(f"{side}_seat_diameter"))
            for k, aspect in enumerate(("min", "max")):
                doc.fact((0, row, 2 + k), 0, s, Col(f"{side}_seat_diameter", aspect), [name, (0, row - 1, 2 + k)])
            if rng.random() < 0.6:
                doc.put((0, row, 4), Num(round(raw.nominal + raw.upper, 4), 4))
            row += 1
    row += 1
    rest = [c for c in columns(doc, False) if not c.parameter.endswith("_seat_diameter")]
    lines = matrix(doc, turned(0, row), rest, every(doc), ("name",), ("station",))
    foot(doc, row + len(rest) + lines)


def passport(doc: Doc) -> None:
    """A machine's passport: numbered lines in sections, one column for each position."""
    ink = doc.ink
    row = title(doc)
    after = 3 if ink.place == "row" else 2
    for k, part in enumerate(("no", "name", "unit")[: after if after == 3 else 2]):
        doc.put((0, row, k), "№" if ink.language == "ru" and part == "no" else ink.part(part))
    heads = []
    for s, position in enumerate(doc.stations[0]):
        heads.append((0, row, after + s))
        doc.word(heads[-1], 0, s, "station", position, [])
    row, cols, chapter = row + 1, columns(doc, True), 0
    for group in ("operation", "bearing", "shaft", "housing"):
        section = [c for c in cols if c.group == group]
        if not section:
            continue
        chapter += 1
        doc.put((0, row, 0), str(chapter))
        top = doc.put((0, row, 1), ink.group(group))
        row += 1
        for k, col in enumerate(section):
            whole = col.parameter in doc.machines[0].own
            doc.put((0, row, 0), f"{chapter}.{k + 1}")
            name = doc.put((0, row, 1), pair_name(doc, col, short=True))
            if after == 3:
                pair_unit(doc, (0, row, 2), col, 0, -1 if whole else 0)
            for s in range(1 if whole else len(doc.stations[0])):
                doc.fact((0, row, after + s), 0, -1 if whole else s, col, [top, name, *([] if whole else [heads[s]])])
            row += 1
    foot(doc, row)


def parameter_export(doc: Doc) -> None:
    """A parameter export of a CAD system: name, unit, expression, comment."""
    ink = doc.ink
    codes = code_names(doc)
    for k, text in enumerate(("Name", "Unit", "Value", "Comment")):
        doc.put((0, 0, k), text)
    row = 1
    for s in (-1, *range(len(doc.stations[0]))):
        for col in [Col(p) for p in doc.machines[0].own] if s < 0 else columns(doc, False):
            code = codes[col.parameter] + PART_CODES[col.aspect]
            position = "" if s < 0 else identifier(doc.stations[0][s])
            name = doc.put((0, row, 0), f"{position}_{code}" if position else code)
            doc.put((0, row, 1), ascii_unit(unit_of(ink, col)))
            doc.fact((0, row, 2), 0, s, col, [name])
            if row % 5 == 0:
                doc.put((0, row, 3), "from layout")
            row += 1


def identifier(text: str) -> str:
    """A position as part of a name in code."""
    return re.sub(r"\W+", "_", text).strip("_")


def expressions(doc: Doc) -> None:
    """A list of expressions: [unit]name=value, one a line."""
    ink = doc.ink
    codes = code_names(doc)
    doc.lines = ["// expressions exported, bearing arrangement"]
    for s in (-1, *range(len(doc.stations[0]))):
        for col in [Col(p) for p in doc.machines[0].own] if s < 0 else columns(doc, False):
            source = doc.machines[0].own if s < 0 else doc.machines[0].positions[s]
            code = codes[col.parameter] + PART_CODES[col.aspect]
            name = code if s < 0 else f"{identifier(doc.stations[0][s])}_{code}"
            raw = ink.cell(col.parameter, source[col.parameter], col.aspect)
            text = ink.text(raw.value, raw.places) if isinstance(raw, Num) else f'"{raw}"'
            unit = ascii_unit(unit_of(ink, col))
            doc.lines.append(f"[{unit}]{name}={text}" if unit else f"{name}={text}")
            doc.state(0, s, col.parameter, (0, len(doc.lines) - 1, 1), [(0, len(doc.lines) - 1, 0)])


# ---------------------------------------------------------------- JSON


def key_name(doc: Doc, col: Col, short: bool = False) -> str:
    """A key: a code in English, words of the language elsewhere."""
    ink = doc.ink
    told = unit_of(ink, col)
    if ink.language == "en":
        text = CODES[col.parameter] + PART_CODES[col.aspect]
        if ink.style % 2:
            text = re.sub(r"_(\w)", lambda found: found[1].upper(), text)
        if told and ink.place == "heading":
            told = re.sub(r"\W+", "_", ascii_unit(told).replace("-1", "")).strip("_")
            text += f"_{told}"
        return text
    text = title_of(ink, col, short, unit=False)
    if ink.language in ("de", "fr", "it", "es"):
        plain = text.replace("Ø", {"de": "Durchmesser ", "fr": "diametre "}.get(ink.language, "diametro "))
        for a, b in (("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("ß", "ss")):
            plain = plain.replace(a, b).replace(a.upper(), b.capitalize())
        plain = unicodedata.normalize("NFKD", plain).encode("ascii", "ignore").decode()
        text = re.sub(r"\W+", "_", plain.lower()).strip("_")
    if told and ink.place == "heading":
        return f"{text} [{told}]"
    return text


def json_value(doc: Doc, m: int, s: int, col: Col) -> Any:
    """A value in JSON: a number, or text; an object with its unit where units stand in the cells."""
    machine = doc.machines[m]
    source = machine.own if s < 0 else machine.positions[s]
    place, doc.ink.place = doc.ink.place, "row"
    raw = doc.ink.cell(col.parameter, source[col.parameter], col.aspect)
    doc.ink.place = place
    plain: Any = raw if not isinstance(raw, Num) else int(raw.value) if float(raw.value).is_integer() else raw.value
    unit = unit_of(doc.ink, col)
    if place == "cell" and unit and isinstance(raw, Num):
        return {"value": plain, "unit": unit}
    return plain


def fill(doc: Doc, target: dict[str, Any], at: str, m: int, s: int, cols: list[Col], short: bool = False) -> None:
    """Values into an object."""
    machine = doc.machines[m]
    for col in cols:
        if col.parameter not in (machine.own if s < 0 else machine.positions[s]):
            continue
        key = key_name(doc, col, short)
        assert key not in target, key
        target[key] = json_value(doc, m, s, col)
        pointer = f"{at}/{key.replace('~', '~0').replace('/', '~1')}"
        if isinstance(target[key], dict):
            pointer += "/value"
        doc.state(m, s, col.parameter, pointer, [])


def named(doc: Doc, target: dict[str, Any], at: str, m: int, s: int, key: str, parameter: str, text: str) -> None:
    """A name of a machine or position in JSON."""
    target[key] = text
    doc.texts[m, s, parameter] = text
    doc.state(m, s, parameter, f"{at}/{key.replace('/', '~1')}", [])


def ident_key(doc: Doc, name: str) -> str:
    """The key of machine and position."""
    return (
        {"machine": "machine", "station": "position"}[name] if doc.ink.language == "en" else doc.ink.label(name).lower()
    )


def json_records(doc: Doc) -> None:
    """A record a position."""
    doc.tree = []
    for m, s in every(doc):
        row: dict[str, Any] = {}
        at = f"/{len(doc.tree)}"
        named(doc, row, at, m, -1, ident_key(doc, "machine"), "machine", doc.machines[m].name)
        named(doc, row, at, m, s, ident_key(doc, "station"), "station", doc.stations[m][s])
        fill(doc, row, at, m, s, columns(doc, False))
        fill(doc, row, at, m, -1, [Col(p) for p in doc.machines[m].own])
        doc.tree.append(row)


def json_nested(doc: Doc) -> None:
    """Machines with positions, positions with sections."""
    many = {"en": ("machines", "positions")}.get(
        doc.ink.language,
        (
            doc.ink.label("machine").lower() + "s"
            if doc.ink.language in ("fr", "es")
            else doc.ink.label("machine").lower(),
            doc.ink.label("station").lower(),
        ),
    )
    doc.tree = {"exported": "2026-03-04", many[0]: []}
    for m, machine in enumerate(doc.machines):
        at = f"/{many[0]}/{m}"
        own: dict[str, Any] = {}
        named(
            doc,
            own,
            at,
            m,
            -1,
            "name" if doc.ink.language == "en" else ident_key(doc, "machine"),
            "machine",
            machine.name,
        )
        fill(doc, own, at, m, -1, [Col(p) for p in machine.own])
        own[many[1]] = []
        for s, position in enumerate(doc.stations[m]):
            place: dict[str, Any] = {}
            below = f"{at}/{many[1]}/{s}"
            named(
                doc,
                place,
                below,
                m,
                s,
                "id" if doc.ink.language == "en" else ident_key(doc, "station"),
                "station",
                position,
            )
            for group in ORDER:
                section = [c for c in columns(doc, False) if c.group == group]
                if section:
                    key = doc.ink.group(group).lower()
                    place[key] = {}
                    fill(doc, place[key], f"{below}/{key}", m, s, section, short=True)
            own[many[1]].append(place)
        doc.tree[many[0]].append(own)


def json_attributes(doc: Doc) -> None:
    """An item with an array of attributes: name, value, unit."""
    ink = doc.ink
    doc.tree = {"item": {}, "attributes": []}
    named(doc, doc.tree["item"], "/item", 0, -1, "name", "machine", doc.machines[0].name)
    shape = ink.rng.choice(("{n} {p}", "{p}: {n}", "{n} ({p})"))
    for s in (-1, *range(len(doc.stations[0]))):
        source = doc.machines[0].own if s < 0 else doc.machines[0].positions[s]
        for parameter, raw in source.items():
            text = ink.name(parameter)
            if s >= 0:
                text = shape.format(n=text, p=doc.stations[0][s])
            at = f"/attributes/{len(doc.tree['attributes'])}"
            entry: dict[str, Any] = {"name": text}
            if isinstance(raw, Seat) and ink.form == "deviation columns":
                for key, aspect in (("value", "nominal"), ("upperDeviation", "upper"), ("lowerDeviation", "lower")):
                    entry[key] = json_value(doc, 0, s, Col(parameter, aspect))
                    doc.state(0, s, parameter, f"{at}/{key}", [])
            elif isinstance(raw, Seat) and ink.form == "class column":
                for key, aspect in (("value", "nominal"), ("toleranceClass", "class")):
                    entry[key] = json_value(doc, 0, s, Col(parameter, aspect))
                    doc.state(0, s, parameter, f"{at}/{key}", [])
            else:
                entry["value"] = json_value(doc, 0, s, Col(parameter))
                doc.state(0, s, parameter, f"{at}/value", [])
            entry["unit"] = None if isinstance(raw, Open) and raw.no_unit else ink.unit(parameter) or None
            doc.tree["attributes"].append(entry)


def json_dotted(doc: Doc) -> None:
    """One flat object; keys of position, section and name with dots."""
    doc.tree = {}
    named(doc, doc.tree, "", 0, -1, ident_key(doc, "machine"), "machine", doc.machines[0].name)
    fill(doc, doc.tree, "", 0, -1, [Col(p) for p in doc.machines[0].own])
    for s, position in enumerate(doc.stations[0]):
        for col in columns(doc, False):
            key = f"{position}.{doc.ink.group(col.group).lower()}.{key_name(doc, col, short=True)}"
            doc.tree[key] = json_value(doc, 0, s, col)
            doc.state(
                0,
                s,
                col.parameter,
                "/" + key.replace("/", "~1") + ("/value" if isinstance(doc.tree[key], dict) else ""),
                [],
            )


def json_keyed(doc: Doc) -> None:
    """Machines by name, positions by name."""
    doc.tree = {}
    for m, machine in enumerate(doc.machines):
        own: dict[str, Any] = {}
        at = "/" + machine.name.replace("/", "~1")
        fill(doc, own, at, m, -1, [Col(p) for p in machine.own])
        for s, position in enumerate(doc.stations[m]):
            own[position] = {}
            fill(doc, own[position], f"{at}/{position.replace('/', '~1')}", m, s, columns(doc, False))
        doc.tree[machine.name] = own


# ---------------------------------------------------------------- the grammar

#: Layout, most machines, whether it is a workbook, text or JSON, forms and places of units that it can carry.
ALL_FORMS = (
    "class in cell",
    "class column",
    "deviations in cell",
    "deviation columns",
    "limit columns",
    "limits in cell",
    "plus-minus column",
    "plus-minus in cell",
    "class and deviations in cell",
    "class and deviation columns",
)
IN_CELL = tuple(f for f in ALL_FORMS if "cell" in f)
ANY = ("heading", "row", "title", "foot", "cell")
LAYOUTS: dict[str, tuple[Callable[[Doc], None], int, str, tuple[str, ...], tuple[str, ...]]] = {
    "row per position": (rows_plain, 3, "any", ALL_FORMS, ANY),
    "two heading rows": (rows_two, 3, "any", ALL_FORMS, ("heading", "row", "title", "foot")),
    "three heading rows": (rows_three, 2, "any", tuple(f for f in ALL_FORMS if "column" in f), ("heading", "row")),
    "transposed": (transposed, 2, "any", ALL_FORMS, ANY),
    "sections": (sectioned, 2, "any", ALL_FORMS, ANY),
    "long rows": (long_rows, 2, "any", ALL_FORMS, ("heading", "row", "row", "cell")),
    "long names": (long_names, 1, "any", ALL_FORMS, ANY),
    "stacked positions": (stacked_positions, 2, "any", ALL_FORMS, ANY),
    "stacked parts": (stacked_parts, 2, "any", ALL_FORMS, ANY),
    "side by side": (side_by_side, 1, "any", ALL_FORMS, ANY),
    "row per seat": (row_per_seat, 2, "any", ALL_FORMS, ("heading", "row", "title")),
    "sheet per part": (sheet_per_part, 1, "book", ALL_FORMS, ("heading", "row", "title", "cell")),
    "sheet per position": (sheet_per_position, 1, "book", ALL_FORMS, ANY),
    "row per machine": (row_per_machine, 3, "any", ALL_FORMS, ("heading", "row", "title", "foot")),
    "design table": (design_table, 3, "any", ("class column", "deviation columns", "limit columns"), ("heading",)),
    "inspection": (inspection, 1, "any", ("deviation columns", "class column", "limit columns"), ("row",)),
    "inspection kinds": (inspection_kinds, 1, "any", IN_CELL, ("row",)),
    "service sheet": (service_sheet, 1, "any", ("limit columns",), ("heading", "cell")),
    "passport": (passport, 1, "any", ALL_FORMS, ("heading", "row", "title")),
    "parameter export": (parameter_export, 1, "text", ("class column", "deviation columns", "limit columns"), ("row",)),
    "expressions": (expressions, 1, "list", ("class column", "deviation columns"), ("heading",)),
    "json records": (json_records, 3, "json", ALL_FORMS, ("heading", "cell")),
    "json nested": (json_nested, 2, "json", ALL_FORMS, ("heading", "cell")),
    "json attributes": (json_attributes, 1, "json", (*IN_CELL, "deviation columns", "class column"), ("row",)),
    "json dotted": (json_dotted, 1, "json", ALL_FORMS, ("heading", "cell")),
    "json keyed": (json_keyed, 3, "json", ALL_FORMS, ("heading", "cell")),
}
PLAN = (
    "row per position",
    "sections",
    "two heading rows",
    "long names",
    "transposed",
    "inspection",
    "row per machine",
    "stacked positions",
    "json nested",
    "three heading rows",
    "side by side",
    "long rows",
    "stacked parts",
    "json records",
    "row per seat",
    "sheet per part",
    "passport",
    "service sheet",
    "design table",
    "json attributes",
    "inspection kinds",
    "sheet per position",
    "parameter export",
    "json keyed",
    "sections",
    "row per position",
    "transposed",
    "expressions",
    "two heading rows",
    "json dotted",
)
LANGUAGES = ("en", "de", "ja", "zh", "ru", "fr", "it", "es")
ENCODINGS = {
    "en": ("utf-8", "cp1252", "utf-8-sig", "utf-16"),
    "de": ("cp1252", "utf-8-sig", "utf-8", "iso8859-15", "utf-16"),
    "fr": ("cp1252", "utf-8", "utf-16"),
    "it": ("cp1252", "utf-8"),
    "es": ("cp1252", "utf-8-sig", "utf-8"),
    "ja": ("shift_jis", "shift_jis", "euc_jp", "utf-8-sig"),
    "zh": ("gb18030", "gbk", "utf-8"),
    "ru": ("cp1251", "cp1251", "utf-8"),
}
MONTH = {
    "en": "01-Jun",
    "de": "01. Jun",
    "fr": "01-juin",
    "it": "01-giu",
    "es": "01-jun",
    "ja": "1月6日",
    "zh": "1月6日",
    "ru": "01.июн",
}
OR = {"en": "or", "de": "oder", "fr": "ou", "it": "o", "es": "o", "ja": "または", "zh": "或", "ru": "или"}


def open_value(ink: Ink, machines: list[Machine], unit_cells: bool) -> None:
    """Leave one value open, so that nobody who has only this table could say what is meant."""
    rng, language = ink.rng, ink.language
    machine = rng.choice(machines)
    s = rng.randrange(len(machine.positions))
    row = machine.positions[s]
    choices = words.CHOICES[language]
    two = {
        "lubrication": ("grease", "oil mist"),
        "cage": ("polyamide", "machined brass"),
        "ball_material": ("steel", "silicon nitride"),
        "tolerance_class": ("P6", "P5"),
        "clearance_class": ("CN", "C3"),
    }
    options: list[tuple[dict[str, Any], str, Open]] = []
    shape = rng.choice(("{a} / {b}", f"{{a}} {OR[language]} {{b}}"))
    if language in ("ja", "zh"):
        shape = shape.replace(" ", "")
    for name, (a, b) in two.items():
        if name in row:
            known = choices.get(name, {})
            options.append((row, name, Open(shape.format(a=known.get(a, a), b=known.get(b, b)))))
    for name in ("shaft_material", "housing_material"):
        if name in machine.own:
            a, b = choices[name]["steel"], choices[name]["stainless steel" if name == "shaft_material" else "cast iron"]
            options.append((machine.own, name, Open(shape.format(a=a, b=b))))
    if "speed_operating" in machine.own:
        top = machine.own["speed_max"]
        options.append((machine.own, "speed_operating", Open(f"{top // 2} / {round(top * 0.8, -1):.0f}")))
    for side in ("shaft", "housing"):
        if f"{side}_fillet_radius" in row and ink.units.length == "mm":
            a, b = ink.text(row[f"{side}_fillet_radius"]), ink.text(row[f"{side}_fillet_radius"] + 0.4)
            options.append((row, f"{side}_fillet_radius", Open(shape.format(a=a, b=b))))
    if "housing_seat_roughness" in row and ink.units.rough == "um" and rng.random() < 0.5:
        options.append((row, "housing_seat_roughness", Open(MONTH[language], meant=1.6)))
    for target, name, value in rng.sample(options, min(len(options), rng.choice((1, 2, 2)))):
        target[name] = value
    forces = ("axial_load", "dynamic_rating", "static_rating", "preload_force")
    if unit_cells and "radial_load" in row and not any(f in row or f in m.own for f in forces for m in machines):
        for m in machines:
            for place, load in zip(m.positions, (45.0, 60.0), strict=True):
                place["radial_load"] = Open(load, no_unit=True)


def make(number: int) -> Table:
    """The table of a number; the same number gives the same table.

    Parameters
    ----------
    number : int
        From 1 to 60.

    Returns
    -------
    Table
        The file and what it means.
    """
    rng = random.Random(f"fifth-{number}")
    layout = PLAN[(number - 1) % len(PLAN)]
    write, most, file, forms, places = LAYOUTS[layout]
    language = LANGUAGES[(number * 5 + number // 8) % 8]
    if layout in ("design table", "parameter export", "expressions"):
        language = "en"
    inch = language == "en" and rng.random() < 0.3
    form = rng.choice(forms)
    place = rng.choice(places)
    suffix = {"json": ".json", "list": ".txt", "book": ".xlsx", "text": ".csv"}.get(file) or rng.choice(
        (".xlsx", ".csv", ".csv")
    )
    metric_form = rng.choice(("mm", "mm", "um"))
    units = (
        Units("in", "in", "uin", "lbf", "lbf", "degF", "lb")
        if inch
        else Units("mm", metric_form, "um", "N", rng.choice(("N", "kN")), "degC", "kg")
    )
    comma = language in ("de", "fr", "it", "es", "ru") and file != "json" and rng.random() < 0.85
    if suffix == ".xlsx":
        comma = language in ("de", "fr", "it", "es", "ru")
    ink = Ink(
        rng,
        language,
        units,
        form,
        place,
        comma,
        fixed=rng.random() < 0.3,
        grouped=suffix == ".csv" and layout not in ("parameter export", "design table") and rng.random() < 0.2,
        dev_um=not inch
        and layout not in ("inspection", "json attributes", "expressions")
        and "deviation" in form
        and rng.random() < 0.4,
        style=rng.randrange(8),
        workbook=suffix == ".xlsx",
        signed=suffix == ".csv" and rng.random() < 0.5,
    )
    count = min(most, rng.choice((1, 1, 2, 2, 3)))
    positions = 2
    names = rng.sample(words.MACHINES[language], count)
    wanted = {1: rng.randint(11, 15), 2: rng.randint(7, 8), 3: 6}[count]
    machines = trade.case(rng, language, units, names, positions, "plus-minus" in form, wanted)
    if rng.random() < 0.85:
        open_value(
            ink,
            machines,
            place in ("row", "cell")
            and layout
            in (
                "long rows",
                "long names",
                "stacked positions",
                "side by side",
                "inspection",
                "inspection kinds",
                "sheet per position",
                "json attributes",
            ),
        )
    pair = list(rng.choice(words.POSITIONS[language]))
    if layout in ("design table", "parameter export", "expressions"):
        pair = list(rng.choice((("DE", "NDE"), ("A", "B"), ("Front", "Rear"))))
    if pair[0] == "Festlager":
        for machine in machines:
            for s, role in enumerate(("locating", "floating")):
                if "axial_role" in machine.positions[s]:
                    machine.positions[s]["axial_role"] = role
                machine.implied[s]["axial_role"] = role
    doc = Doc(ink, machines, [list(pair) for _ in machines])
    write(doc)
    delimiter = ";" if comma else rng.choice((",", ";", "\t"))
    kinds = {
        "layout": layout,
        "language": language,
        "tolerance": form,
        "units": place,
        "length unit": units.length,
        "bearing": "both"
        if "bearing_designation" in machines[0].positions[0] and "bore_diameter" in machines[0].positions[0]
        else "designation"
        if "bearing_designation" in machines[0].positions[0]
        else "sizes",
    }
    return doc.table(number, suffix, rng.choice(ENCODINGS[language]), delimiter, kinds)
