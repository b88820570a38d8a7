"""Layouts in which a row is a position, a machine, a seat or an item of a parts list."""

from collections.abc import Sequence
from dataclasses import replace

from practice_nineteenth.office import Line, Office, lines
from practice_nineteenth.sheet import Place, Sheet, of_side
from practice_nineteenth.trade import Rotor

Columns = dict[int, list[Line]]
Heads = dict[int, list[Place]]


def headings(sheet: Sheet, found: Sequence[Line]) -> tuple[Columns, Heads]:
    """Write the headings, in two rows where some are grouped; lines of the same heading share a column."""
    office = sheet.office
    deep = any(line.group for line in found)
    top = sheet.row
    columns: Columns = {}
    heads: Heads = {}
    c, start, before = 0, 0, None
    for line in found:
        if before and (line.group, line.name) == (before.group, before.name):
            columns[c].append(line)
            continue
        c += 1
        columns[c] = [line]
        if line.group:
            if not before or before.group != line.group:
                start = c
                sheet.put(top, c, line.group[0])
            sheet.put(top + 1, c, line.name)
            heads[c] = [(top + 1, c), (top, start)]
        else:
            r = top + (deep and office.more.get("lone") == "bottom")
            sheet.put(r, c, line.name)
            heads[c] = [(r, c)]
            if deep and r == top:
                sheet.merge(r, c, r + 1, c)
        before = line
    for c, told in columns.items():
        if told[0].group and (c == 1 or columns[c - 1][0].group != told[0].group):
            sheet.merge(top, c, top, max(k for k, other in columns.items() if other[0].group == told[0].group))
    sheet.row += 1 + deep
    if office.more.get("units") == "row":
        for c, told in columns.items():
            if told[0].parameter not in ("-", "#"):
                sheet.put(sheet.row, c, told[0].units[0])
        sheet.row += 1
    return columns, heads


def above(sheet: Sheet, m: int = 0) -> None:
    """The title, and an empty line below it where the office leaves one."""
    if sheet.office.title:
        sheet.texts(sheet.office.title, m)
        sheet.row += sheet.office.more.get("gap", "1") == "1"


def below(sheet: Sheet, m: int = 0) -> None:
    """What stands at the foot."""
    if sheet.office.foot:
        sheet.row = max(r for r, _ in sheet.grid) + 2
        sheet.texts(sheet.office.foot, m)


def position_rows(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """One row for each position; with ``apart`` a table for each machine, with ``once`` its values in the first row."""
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    apart, once = "apart" in office.more, "once" in office.more
    columns: Columns = {}
    heads: Heads = {}
    for m, rotor in enumerate(rotors):
        if m == 0 or apart:
            sheet.row += m > 0
            above(sheet, m)
            columns, heads = headings(sheet, found)
        for s in range(len(rotor.positions)):
            for c, told in columns.items():
                if not (once and s and told[0].whole):
                    sheet.tell(sheet.row, c, told[0], m, s, heads[c])
                elif s == 1:
                    sheet.merge(sheet.row - 1, c, sheet.row + len(rotor.positions) - 2, c)
            sheet.row += 1
    below(sheet)
    return sheet


def machine_rows(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """One row for each machine; names with ``{p}`` come once for each position, with ``pairs`` beside each other."""
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    count = range(len(rotors[0].positions))
    own = [line for line in found if any("{p}" in name for name in (*line.group, line.name))]
    order = [(line, -1) for line in found if line not in own and line.parameter != "-"]
    order += [(line, s) for line in own for s in count] if "pairs" in office.more else [
        (line, s) for s in count for line in own
    ]  # fmt: skip
    order += [(line, -1) for line in found if line not in own and line.parameter == "-"]
    short = (office.more.get("short") or "|".join(rotors[0].positions)).split("|")

    def named(line: Line, s: int) -> Line:
        group, name = (tuple(n.format(p=short[s]) for n in part) for part in (line.group, (line.name,)))
        return replace(line, group=group, name=name[0])

    above(sheet)
    columns, heads = headings(sheet, [named(line, s) if s >= 0 else line for line, s in order])
    for c, (line, s) in enumerate(order, 1):
        if s >= 0:
            place = heads[c][-1] if "{p}" in "".join(line.group) else heads[c][0]
            for m in range(len(rotors)):
                sheet.known(*place, Line((), "", "station"), m, s)
    for m in range(len(rotors)):
        for c, (_, s) in enumerate(order, 1):
            sheet.tell(sheet.row, c, columns[c][0], m, s, heads[c])
        sheet.row += 1
    below(sheet)
    return sheet


def seat_rows(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """One row for each seat, or item of a parts list: ``parts`` are the words of shaft, housing and bearing.

    ``order`` holds the sides; ``by`` the side or the position first. Of a line without ``*`` a bearing's row alone
    holds the value where the list has such rows.
    """
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    words = dict(part.split("=") for part in office.more["parts"].split(";"))
    order = office.more["order"].split()
    above(sheet)
    columns, heads = headings(sheet, found)
    count = range(len(rotors[0].positions))
    rows = [(s, side) for s in count for side in order]
    if office.more.get("by") == "side":
        rows = [(s, side) for side in order for s in count]
    for m in range(len(rotors)):
        for s, side in rows:
            for c, told in columns.items():
                for line in told:
                    _seat_cell(sheet, c, line, m, s, side, words, heads[c], "bearing" in order)
            sheet.row += 1
    below(sheet)
    return sheet


def _seat_cell(
    sheet: Sheet, c: int, line: Line, m: int, s: int, side: str, words: dict[str, str], heads: list[Place], listed: bool
) -> None:
    """A cell of a row of a seat or a bearing; none where the line is not of the row."""
    if line.parameter == "-":
        texts = line.unit.split(";")
        n = [*words].index(side) if len(texts) == len(words) else s
        sheet.put(sheet.row, c, texts[n % len(texts)].strip())
        return
    if line.parameter == "part":
        sheet.put(sheet.row, c, words[side].format(p=sheet.rotors[m].positions[s]))
        if "{p}" in words[side]:
            sheet.known(sheet.row, c, Line((), "", "station"), m, s, heads)
        return
    free = line.parameter in ("station", "#") or line.whole
    if "*" in line.parameter:
        if side == "bearing":
            return
        line = of_side(line, side)
    elif listed and not free and side != "bearing":
        return
    sheet.tell(sheet.row, c, line, m, s, heads)
