"""Layouts in which a row is one named value: lists, characteristics, blocks, positions across."""

from collections.abc import Sequence

from practice_nineteenth.office import Line, Office, lines
from practice_nineteenth.rows import above, below
from practice_nineteenth.sheet import Place, Sheet, remark
from practice_nineteenth.trade import Rotor


def listing(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """One row for each value; ``columns`` says what its columns hold.

    Roles of a column: ``no``, ``machine``, ``position``, ``part``, ``name``, ``value``, ``unit``, ``-``; a ``value``
    column with a pattern holds that of a size. ``{p}`` in a name is the position. ``whole`` is what stands for the
    position of a machine's value, ``first`` says that part and position stand in the first row of several only.
    """
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    columns = [[part.strip() for part in row.split("|")] for row in office.more["columns"].strip().splitlines()]
    above(sheet)
    top = sheet.row
    for c, (head, *_) in enumerate(columns, 1):
        sheet.put(top, c, head)
    sheet.row += 1
    number = 0
    for m, rotor in enumerate(rotors):
        own = [(line, -1) for line in found if line.whole]
        own += [(line, s) for s in range(len(rotor.positions)) for line in found if not line.whole]
        before: tuple[object, ...] = ()
        for line, s in own:
            number += 1
            again = (m, s, line.group) == before
            before = (m, s, line.group)
            _row(sheet, columns, top, line, m, s, str(number), again and "first" in office.more)
            sheet.row += 1
    below(sheet)
    return sheet


def _row(
    sheet: Sheet, columns: list[list[str]], top: int, line: Line, m: int, s: int, number: str, again: bool
) -> None:
    """One row of a list."""
    office, r = sheet.office, sheet.row
    names = [c for c, column in enumerate(columns, 1) if column[1] in ("name", "part")]
    for c, (_, role, *more) in enumerate(columns, 1):
        if role == "no":
            sheet.put(r, c, number)
        elif role == "machine" and not again:
            sheet.tell(r, c, Line((), "", "machine"), m, -1, [(top, c)])
        elif role == "position" and not again:
            if s >= 0:
                sheet.tell(r, c, Line((), "", "station"), m, s, [(top, c)])
            else:
                sheet.put(r, c, office.more.get("whole", ""))
        elif role == "part" and line.group and not again:
            sheet.put(r, c, line.group[0])
        elif role == "name":
            sheet.put(r, c, line.name.format(p=sheet.rotors[m].positions[s]))
            if "{p}" in line.name:
                sheet.known(r, c, Line((), "", "station"), m, s)
        elif role == "unit":
            sheet.put(r, c, line.units[0])
        elif role == "-":
            sheet.put(r, c, remark(line, more[0]))
    for c, (_, role, *more) in enumerate(columns, 1):
        if role == "value" and (line.size or len(more) < 2):
            shown = more[0] if more and line.size else line.pattern
            own = Line(line.group, line.name, line.parameter, line.unit, shown, line.verdict)
            sheet.tell(r, c, own, m, s, [(top, c), *((r, name) for name in names)])


def blocks(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """A block of names and values for each position below its name; with ``across`` beside each other."""
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    unit = office.more.get("unit", "")
    above(sheet)
    top, left = sheet.row, 1
    for s in range(len(rotors[0].positions)):
        if "across" in office.more:
            sheet.row = top
        sheet.tell(sheet.row, left, Line((), "", "station"), 0, s, [])
        over: list[Place] = [(sheet.row, left)]
        sheet.row += 1
        group: tuple[str, ...] = ()
        for line in found:
            if line.group and line.group != group:
                over = [over[0], (sheet.row, left)]
                sheet.put(sheet.row, left, line.group[0])
                sheet.row += 1
            group = line.group
            sheet.put(sheet.row, left, line.name)
            if unit == "last" or unit == "middle":
                sheet.put(sheet.row, left + (2 if unit == "last" else 1), line.units[0] or office.more.get("none", ""))
            sheet.tell(sheet.row, left + (2 if unit == "middle" else 1), line, 0, s, [(sheet.row, left), *over])
            sheet.row += 1
        sheet.row += 1
        if "across" in office.more:
            left += 4 if unit else 3
    below(sheet)
    return sheet


def transposed(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """Names down, positions across; ``columns`` says what stands before and behind the values.

    Roles: ``no``, ``part``, ``name``, ``unit``, ``values``, ``-``; without ``part`` the names of parts stand on rows of
    their own. Several machines stand beside each other, their names above.
    """
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    columns = [[part.strip() for part in row.split("|")] for row in office.more["columns"].strip().splitlines()]
    above(sheet)
    across = [(m, s) for m, rotor in enumerate(rotors) for s in range(len(rotor.positions))]
    top = sheet.row + (len(rotors) > 1)
    at: dict[str, int] = {}
    c = 1
    for head, role, *_ in columns:
        at[role] = c
        if role == "values":
            for k, (m, s) in enumerate(across):
                if len(rotors) > 1 and s == 0:
                    sheet.tell(top - 1, c + k, Line((), "", "machine"), m, -1, [])
                    sheet.merge(top - 1, c + k, top - 1, c + k + len(rotors[m].positions) - 1)
                sheet.tell(top, c + k, Line((), "", "station", "", head or "{n}"), m, s, [])
            c += len(across)
        else:
            sheet.put(top, c, head)
            c += 1
    sheet.row = top + 1
    group: tuple[str, ...] = ()
    over: list[Place] = []
    for number, line in enumerate(found, 1):
        if line.group != group:
            over = []
            if line.group:
                over = [(sheet.row, at.get("part", at["name"]))]
                sheet.put(*over[0], line.group[0])
                sheet.row += "part" not in at
        group = line.group
        r = sheet.row
        sheet.put(r, at["name"], line.name)
        for _, role, *more in columns:
            text = {"no": str(number), "unit": line.units[0] or sheet.office.more.get("none", "")}.get(role, "")
            if role == "-":
                text = remark(line, more[0])
            sheet.put(r, at[role] if text else 0, text)
        for k, (m, s) in enumerate(across):
            if not line.whole or s == 0:
                sheet.tell(
                    r,
                    at["values"] + k,
                    line,
                    m,
                    s,
                    [(r, at["name"]), *over, *(() if line.whole else [(top, at["values"] + k)])],
                )
            elif s == 1:
                sheet.merge(r, at["values"] + k - 1, r, at["values"] + k + len(rotors[m].positions) - 2)
        sheet.row += 1
    below(sheet)
    return sheet
