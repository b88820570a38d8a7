"""The layouts: where an office puts the cells of a value and the words over them."""

import re
import unicodedata

from practice_fourteenth.meaning import Entry, Machine, Piece, Style
from practice_fourteenth.sheet import Sheet


def full(style: Style, entry: Entry, piece: Piece, short: bool = False) -> str:
    """The words of a cell's heading; ``short`` under a heading that names the side."""
    if entry.code == "fit pair":
        words = style.way(".fit").format(f"{style.sides['shaft']} / {style.sides['housing']}")
    elif not entry.side:
        words = style.way(entry.code)
    else:
        code = ".fit" if piece.what == "class" and not short else entry.code
        side, pattern = style.sides[entry.side], style.way(code)
        if style.language in ("en", "fr", "it", "es", "ru") and not pattern.startswith("{}"):
            side = side[:1].lower() + side[1:]
        words = pattern.format("" if short else side).strip(" ,:") or "Ø"
        words = re.sub(r"\s+", " ", words)
        if short and piece.what == "class":
            words = style.way("class")
        words = words[:1].upper() + words[1:]
    if piece.what in ("upper", "lower", "min", "max"):
        gap = "" if style.language in ("zh", "ja") else " "
        words = words + gap + style.way(piece.what)
    return words


def unit_of(style: Style, piece: Piece) -> str:
    """The unit that stands over or beside a cell."""
    if style.unit_place == "title" and piece.unit in (
        style.units["length"], style.units["rough"], style.units["speed"], style.units["load"],
    ):  # fmt: skip
        return ""
    return piece.unit


def over(style: Style, entry: Entry, piece: Piece, short: bool = False) -> str:
    """Heading with its unit, where the office puts it there."""
    words, unit = full(style, entry, piece, short), unit_of(style, piece)
    return words + style.joint.format(unit) if unit and style.unit_place in ("heading", "title") else words


def shown(style: Style, piece: Piece) -> str:
    """The text of a cell."""
    if style.unit_place == "cell" and piece.unit and piece.number and piece.text:
        return f"{piece.text} {piece.unit}"
    return piece.text


def number(style: Style, piece: Piece) -> bool:
    return piece.number and style.unit_place != "cell"


def junk(style: Style, count: int) -> list[tuple[str, str]]:
    """Columns that mean nothing to a seat."""
    pairs = [tuple(way.split("=", 1)) for way in style.ways["!"]]
    return style.rng.sample(pairs, min(count, len(pairs)))  # type: ignore[arg-type]


def title(sheet: Sheet, style: Style, machines: list[Machine], how: str) -> list[Entry]:
    """The title block of one machine; the entries that stand in it."""
    if how == "none" or len(machines) > 1:
        return []
    if style.rng.random() < 0.35:
        sheet.line(style.way("caption"))
    inside = [e for e in machines[0].general if how == "all" or e.code in ("machine", "dwg", "rev")]
    for e in inside:
        if how == "joined":
            own = sheet.put(sheet.row, 0, f"{style.way(e.code)}: {e.pieces[0].text}")
            e.form = "title"
            sheet.state(0, e, [own], [])
        else:
            head = sheet.put(sheet.row, 0, over(style, e, e.pieces[0]))
            own = sheet.put(sheet.row, 1, shown(style, e.pieces[0]), number(style, e.pieces[0]))
            if style.unit_place in ("row", "column") and e.pieces[0].unit:
                sheet.put(sheet.row, 2, e.pieces[0].unit)
            sheet.state(0, e, [own], [head])
        sheet.row += 1
    if style.rng.random() < 0.4:
        day = "14.02.2026" if style.language in ("de", "ru", "it") else "2026-02-14"
        sheet.line(*((f"{style.way('date')}: {day}",) if how == "joined" else (style.way("date"), day)))
    if style.unit_place == "title":
        sheet.line(style.way("units"))
    sheet.row += 1
    return inside


def columns(entries: list[list[Entry]]) -> list[tuple[str, str]]:
    """Code and side of every column, in the order of the first that has it."""
    return list(dict.fromkeys((e.code, e.side) for row in entries for e in row))


def row_station(style: Style, machines: list[Machine], how: str, groups: bool = False, once: bool = False) -> Sheet:
    """A row for each position; what is true of the machine in the title block, in every row or ``once``."""
    sheet = Sheet()
    done = title(sheet, style, machines, how)
    rows = [
        ([*(e for e in m.general if e not in done), *m.positions[s]], k)
        for k, m in enumerate(machines)
        for s in range(len(m.stations))
    ]
    keys, at = columns([r for r, _ in rows]), sheet.row
    extra = junk(style, 2)
    lines = 1 + groups + (style.unit_place == "row")
    column, heads, place, last = 0, {}, {}, ""
    for key in keys:
        model = next(
            e for r, _ in rows for e in r if (e.code, e.side) == key and e.pieces[0].text not in ("", "-", "–")
        )
        for piece in model.pieces:
            over_it = style.sides.get(key[1]) or style.way("bearing" if model.station >= 0 else "general")
            group = ""
            if groups:
                if over_it != last:
                    sheet.put(at, column, over_it)
                    last, first = over_it, column
                group = f"{chr(65 + first)}{at + 1}"
            head = sheet.put(at + groups, column, over(style, model, piece, groups))
            if style.unit_place == "row" and piece.unit:
                sheet.put(at + groups + 1, column, piece.unit)
            heads[key, piece.what], place[key, piece.what] = [head, group], column
            column += 1
    for k, (name, _) in enumerate(extra):
        sheet.put(at + groups, column + k, name)
    for r, (row, m) in enumerate(rows):
        for e in row:
            if once and e.station < 0 and r and rows[r - 1][1] == m:
                continue
            key = (e.code, e.side)
            own = [sheet.put(at + lines + r, place[key, p.what], shown(style, p), number(style, p)) for p in e.pieces]
            sheet.state(m, e, own, [h for p in e.pieces for h in heads[key, p.what]])
        for k, (_, value) in enumerate(extra):
            sheet.put(at + lines + r, column + k, value)
    sheet.row = at + lines + len(rows)
    return sheet


def row_machine(style: Style, machines: list[Machine], how: str, groups: bool = True) -> Sheet:
    """A row for each machine, its positions side by side: their names over the columns or in the headings."""
    sheet = Sheet()
    column, places = 0, []
    first = machines[0]
    extra = junk(style, 2)
    for s in range(-1, len(first.stations)):
        lists = [m.general if s < 0 else m.positions[s] for m in machines]
        for key in columns(lists):
            model = next((e for es in lists for e in es if (e.code, e.side) == key and e.says), None)
            if model is None or (key[0] == "st" and not groups):
                continue
            if key[0] == "st":
                top = sheet.put(0, column, first.stations[s])
                for k in range(len(machines)):
                    sheet.state(k, model, [top], [])
                continue
            for piece in model.pieces:
                words = over(style, model, piece)
                if s >= 0 and not groups:
                    words = f"{first.stations[s]} {words}" if style.language != "zh" else f"{first.stations[s]}{words}"
                head = sheet.put(1 if groups else 0, column, words)
                places.append((s, key, piece.what, column, [head, top if s >= 0 and groups else ""]))
                if style.unit_place == "row" and piece.unit:
                    sheet.put(2 if groups else 1, column, piece.unit)
                column += 1
    at = 1 + groups + (style.unit_place == "row")
    for k, (name, value) in enumerate(extra):
        sheet.put(int(groups), column + k, name)
        for r in range(len(machines)):
            sheet.put(at + r, column + k, value)
    for r, m in enumerate(machines):
        for s in range(-1, len(m.stations)):
            for e in m.general if s < 0 else m.positions[s]:
                own, heads = [], []
                for p in e.pieces:
                    for ps, key, what, c, over_it in places:
                        if (ps, key, what) == (s, (e.code, e.side), p.what):
                            own.append(sheet.put(at + r, c, shown(style, p), number(style, p)))
                            heads += over_it
                if e.code != "st":
                    sheet.state(r, e, own, heads)
    return sheet


def transposed(style: Style, machines: list[Machine], how: str, groups: bool = False, twice: bool = False) -> Sheet:
    """Parameters down, positions across."""
    sheet, m = Sheet(), machines[0]
    done = title(sheet, style, machines, how)
    unit_column = style.unit_place in ("column", "row")
    first, at = 1 + unit_column, sheet.row
    sheet.put(at, 0, style.way("name"))
    if unit_column:
        sheet.put(at, 1, style.way("unit"))
    tops = []
    for s, es in enumerate(m.positions):
        tops.append(sheet.put(at, first + s, m.stations[s]))
        sheet.state(0, es[0], [tops[s]], [])
    at, last = at + 1, ""
    for key in columns([[e for e in m.general if e not in done], *m.positions]):
        if key[0] == "st":
            continue
        side = style.sides.get(key[1], style.way("bearing"))
        entries = [e for es in [m.general, *m.positions] for e in es if (e.code, e.side) == key]
        group = ""
        if groups and entries[0].station >= 0:
            if side != last:
                group_at = sheet.put(at, 0, side)
                at, last = at + 1, side
            group = group_at
        for piece in next((e for e in entries if e.says), entries[0]).pieces:
            head = sheet.put(at, 0, over(style, entries[0], piece, groups and entries[0].station >= 0))
            if unit_column:
                sheet.put(at, 1, piece.unit or "-")
            for e in entries:
                for p in e.pieces:
                    if p.what == piece.what:
                        p.said_at = (  # type: ignore[attr-defined]
                            sheet.put(at, first + max(e.station, 0), shown(style, p), number(style, p)), [head, group],
                        )  # fmt: skip
            at += 1
        if twice and entries[0].station < 0:
            for s in range(1, len(tops)):
                sheet.put(at - 1, first + s, shown(style, entries[0].pieces[0]), number(style, entries[0].pieces[0]))
        for e in entries:
            told = [p.said_at for p in e.pieces]  # type: ignore[attr-defined]
            tops_of = [tops[e.station]] if e.station >= 0 else []
            sheet.state(0, e, [a for a, _ in told], [h for _, hs in told for h in hs] + tops_of)
    for name, value in junk(style, 2):
        sheet.put(at, 0, name)
        sheet.put(at, first, value)
        at += 1
    return sheet


def ascii_only(text: str) -> str:
    for a, b in (("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("ß", "ss"), ("Ø", "dia"), ("⌀", "dia")):
        text = text.replace(a, b).replace(a.upper(), b.capitalize())
    return unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode()


def spelled(words: str, how: str, station: str) -> str:
    """A name in the spelling of the office, with the position in front or behind."""
    if how in ("plain", "behind", "brackets"):
        if not station:
            return words
        return {"plain": f"{station} {words}", "behind": f"{words} {station}", "brackets": f"{words} ({station})"}[how]
    station = f"Brg{station}" if len(station) == 1 else station
    parts = re.findall(r"[A-Za-z0-9]+", ascii_only(f"{station} {words}"))
    if how == "snake" or (how == "dotted" and not station):
        return "_".join(p.lower() for p in parts)
    if how == "dotted":
        return ascii_only(station).replace(" ", "") + "." + "_".join(re.findall(r"[A-Za-z0-9]+", ascii_only(words)))
    return "".join(p[:1].upper() + p[1:] for p in parts)


def long_list(style: Style, machines: list[Machine], how: str, names: str = "plain", wide: bool = False) -> Sheet:
    """Name, value, unit down the page; ``wide`` has columns for class and deviations."""
    sheet, m = Sheet(), machines[0]
    done = title(sheet, style, machines, how)
    keys = [
        "name",
        "value",
        *(("class", "upper", "lower") if wide else ()),
        *(("unit",) if style.unit_place == "column" else ()),
    ]
    fine = {key: f" [{style.fine}]" if key in ("upper", "lower") else "" for key in keys}
    heads = {key: sheet.put(sheet.row, k, style.way(key) + fine[key]) for k, key in enumerate(keys)}
    rows = [(e, "") for e in m.general if e not in done]
    rows += [(e, m.stations[s]) for s, es in enumerate(m.positions) for e in es if e.code != "st"]
    for k, (name, value) in enumerate(junk(style, 3)):
        rows.insert(3 + 5 * k, (Entry(-1, "", "", [Piece("junk", value), Piece("name", name)], [], ""), ""))
    for e, station in rows:
        groups = [e.pieces] if wide or not e.code else [[p] for p in e.pieces]
        own, over_it = [], []
        for pieces in groups:
            sheet.row += 1
            words = over(style, e, pieces[0]) if e.code else pieces[1].text
            over_it.append(sheet.put(sheet.row, 0, spelled(words, names, station) if e.code else words))
            for p in pieces if e.code else pieces[:1]:
                key = p.what if wide and p.what in keys else "value"
                own.append(sheet.put(sheet.row, keys.index(key), shown(style, p), number(style, p)))
                over_it.append(heads[key])
            if "unit" in keys:
                sheet.put(sheet.row, keys.index("unit"), pieces[0].unit if e.code else "")
        sheet.state(0, e, own, over_it)
    sheet.row += 1
    return sheet


def parts(style: Style, machines: list[Machine], how: str, melted: bool = False) -> Sheet:
    """Part, feature, value; or ``melted``: machine, position, parameter, value."""
    sheet = Sheet()
    done = [] if melted else title(sheet, style, machines, how)
    keys = ["machine", "st"] if melted else ["part"]
    keys += ["name" if melted else "feature", "value", *(("unit",) if style.unit_place == "column" else ()), "note"]
    heads = {key: sheet.put(sheet.row, k, style.way(key)) for k, key in enumerate(keys)}
    for k, m in enumerate(machines):
        for s, es in enumerate([m.general, *m.positions], start=-1):
            for e in es:
                if e in done or e.code in ("st", *(("machine",) if melted else ())):
                    continue
                own, over_it = [], []
                for p in e.pieces:
                    sheet.row += 1
                    name = m.stations[s] if s >= 0 else ""
                    part = style.sides.get(e.side, style.way("bearing" if s >= 0 else "general"))
                    texts = {"machine": m.name, "st": name, "part": f"{part} {name}".strip()}
                    for key in keys[: 2 if melted else 1]:
                        cell = sheet.put(sheet.row, keys.index(key), texts[key])
                        if key in ("machine", "st") and cell:
                            model = next(x for x in (m.general if key == "machine" else es) if x.code == key)
                            sheet.state(k, model, [cell], [heads[key]])
                        over_it.append(cell)
                    words = over(style, e, p, short=not melted)
                    over_it.append(sheet.put(sheet.row, len(keys[: 2 if melted else 1]), words))
                    own.append(sheet.put(sheet.row, keys.index("value"), shown(style, p), number(style, p)))
                    if "unit" in keys:
                        sheet.put(sheet.row, keys.index("unit"), p.unit)
                    if style.rng.random() < 0.06:
                        sheet.put(sheet.row, keys.index("note"), style.way("remark"))
                sheet.state(k, e, own, [*over_it, heads["value"]])
    sheet.row += 1
    return sheet


def blocks(style: Style, machines: list[Machine], how: str) -> Sheet:
    """A block of name and value for each position under its name."""
    sheet, m = Sheet(), machines[0]
    done = title(sheet, style, machines, how)
    for s, es in enumerate([[e for e in m.general if e not in done], *m.positions], start=-1):
        if not es:
            continue
        top = sheet.put(sheet.row, 0, m.stations[s] if s >= 0 else style.way("general"))
        if s >= 0:
            sheet.state(0, es[0], [top], [])
        sheet.row += 1
        for e in es:
            if e.code == "st":
                continue
            own, over_it = [], []
            for p in e.pieces:
                over_it.append(sheet.put(sheet.row, 0, over(style, e, p)))
                own.append(sheet.put(sheet.row, 1, shown(style, p), number(style, p)))
                if style.unit_place == "column":
                    sheet.put(sheet.row, 2, p.unit)
                sheet.row += 1
            sheet.state(0, e, own, [*over_it, top if s >= 0 else ""])
        sheet.row += 1
    return sheet


def stacked(style: Style, machines: list[Machine], how: str) -> Sheet:
    """A table of the bearings, one of the shaft seats, one of the housing seats, under one another."""
    sheet, m = Sheet(), machines[0]
    done = title(sheet, style, machines, how)
    rest = [e for e in m.general if e not in done]
    if rest:
        for e in rest:
            head = sheet.put(sheet.row, 0, over(style, e, e.pieces[0]))
            sheet.state(0, e, [sheet.put(sheet.row, 1, shown(style, e.pieces[0]), number(style, e.pieces[0]))], [head])
            sheet.row += 1
        sheet.row += 1
    for side in ("", "shaft", "housing"):
        lists = [[e for e in es if e.side == side or e.code == "st"] for es in m.positions]
        top = sheet.put(sheet.row, 0, style.sides.get(side, style.way("bearing")))
        sheet.row += 1
        column, at = 0, sheet.row
        for key in columns(lists):
            entries = [e for es in lists for e in es if (e.code, e.side) == key]
            told: list[tuple[list[str], list[str]]] = [([], []) for _ in entries]
            for piece in next((e for e in entries if e.says), entries[0]).pieces:
                head = sheet.put(at, column, over(style, entries[0], piece, short=bool(side)))
                for e, (own, heads) in zip(entries, told, strict=True):
                    for p in e.pieces:
                        if p.what == piece.what:
                            own.append(sheet.put(at + 1 + e.station, column, shown(style, p), number(style, p)))
                            heads.append(head)
                column += 1
            for e, (own, heads) in zip(entries, told, strict=True):
                sheet.state(0, e, own, [*heads, top if side else ""])
        sheet.row = at + 2 + len(lists)
    return sheet
