"""Layouts of inspection sheets, CAD exports and data sheets: sections, named parameters, crossed tables, chapters."""

from collections.abc import Sequence
from typing import Any

from practice_nineteenth.office import Line, Office, lines
from practice_nineteenth.rows import above, below
from practice_nineteenth.sheet import Place, Sheet, Tree, of_side, remark
from practice_nineteenth.trade import Rotor

STATION = Line((), "", "station")
MACHINE = Line((), "", "machine")


def unit_of(line: Line) -> str:
    """The unit of what a line shows: of deviations alone that of deviations, of a class none."""
    if line.size and line.fields == ["c"]:
        return ""
    return line.units[1] if line.size and set(line.fields) <= {"u", "l", "t"} else line.units[0]


def columns_of(office: Office) -> list[list[str]]:
    """The columns of a list: heading, role, texts."""
    return [[part.strip() for part in row.split("|")] for row in office.more["columns"].strip().splitlines()]


def parts_of_value(line: Line, more: Sequence[str]) -> Line | None:
    """The line as a column of values shows it; None where the column holds nothing of it.

    A column with a pattern shows that of sizes; one with ``size`` or ``other`` holds sizes alone or none.
    """
    if len(more) > 1 and line.size != (more[1] == "size"):
        return None
    shown = more[0] if more and line.size else line.pattern
    return Line(line.group, line.name, line.parameter, line.unit, shown, line.verdict)


def sections(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """A list with a row over the lines of each position; ``whole`` stands over those of the machine.

    Roles: ``no``, ``part``, ``name``, ``unit``, ``value``, ``-`` (texts), ``empty``. With ``again`` the headings come
    again below the name of each position; ``at`` is the column of that name.
    """
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    columns = columns_of(office)
    place = int(office.more.get("at", "1"))
    above(sheet)
    top = sheet.row
    again = "again" in office.more
    if not again:
        _headings(sheet, columns)
    number = 0
    for s in range(-1 if any(line.whole for line in found) else 0, len(rotors[0].positions)):
        over: list[Place] = [(sheet.row, place)]
        if s < 0:
            sheet.put(sheet.row, place, office.more.get("whole", ""))
        else:
            sheet.tell(sheet.row, place, STATION, 0, s, [])
        sheet.row += s >= 0 or "whole" in office.more
        if again:
            top = sheet.row
            _headings(sheet, columns)
        for line in found:
            if line.whole != (s < 0):
                continue
            number += 1
            _row(sheet, columns, line, s, number, top, over)
            sheet.row += 1
        sheet.row += "blank" in office.more
    below(sheet)
    return sheet


def _headings(sheet: Sheet, columns: list[list[str]]) -> None:
    for c, (head, *_) in enumerate(columns, 1):
        sheet.put(sheet.row, c, head)
    sheet.row += 1


def _row(
    sheet: Sheet, columns: list[list[str]], line: Line, s: int, number: int, top: int, over: Sequence[Place]
) -> None:
    """One row of a list in sections."""
    r = sheet.row
    for c, (_, role, *more) in enumerate(columns, 1):
        text = {
            "no": (more[0] if more and role == "no" else "{n}").format(n=number), "name": line.name,
            "unit": unit_of(line), "part": line.group[0] if line.group else "",
        }.get(role, "")  # fmt: skip
        sheet.put(r, c, remark(line, more[0]) if role == "-" else text)
    named = [(r, c) for c, column in enumerate(columns, 1) if column[1] in ("name", "part")]
    for c, (_, role, *more) in enumerate(columns, 1):
        own = parts_of_value(line, more) if role == "value" else None
        if own:
            sheet.tell(r, c, own, 0, s, [*named, (top, c), *over])


def exported(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """Parameters of a CAD model: a row for each, ``{p}`` in name or comment (the group) is the position.

    Roles: ``no``, ``name``, ``expression`` (a pattern of value ``{v}`` and unit ``{u}``), ``value``, ``unit``,
    ``comment``, ``-``. With ``by`` = ``line`` the same parameter of all positions stands together.
    """
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    columns = columns_of(office)
    rotor = rotors[0]
    above(sheet)
    top = sheet.row
    if "headless" not in office.more:
        _headings(sheet, columns)
    count = range(len(rotor.positions))
    order = [(line, -1) for line in found if line.whole]
    if office.more.get("by") == "line":
        order += [(line, s) for line in found if not line.whole for s in count]
    else:
        order += [(line, s) for s in count for line in found if not line.whole]
    for number, (line, s) in enumerate(order, 1):
        r = sheet.row
        p = rotor.positions[s] if s >= 0 else ""
        texts = {
            "no": str(number), "name": line.name.format(p=p), "unit": unit_of(line),
            "comment": line.group[0].format(p=p) if line.group else "",
        }  # fmt: skip
        said = [(r, c) for c, column in enumerate(columns, 1) if column[1] in ("name", "comment")]
        for c, (_, role, *more) in enumerate(columns, 1):
            sheet.put(r, c, remark(line, more[0]) if role == "-" else texts.get(role, ""))
            written = {"name": line.name, "comment": line.group[0] if line.group else ""}.get(role, "")
            if "{p}" in written:
                sheet.known(r, c, STATION, 0, s)
        for c, (_, role, *more) in enumerate(columns, 1):
            if role == "value":
                sheet.tell(r, c, line, 0, s, [*said, (top, c)])
            elif role == "expression":
                text = office.text(rotor, line, s)
                sheet.put(r, c, more[0].format(v=text, u=unit_of(line)).strip())
                sheet.known(r, c, line, 0, s, said)
        sheet.row += 1
    below(sheet)
    return sheet


def crossed(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """Characteristics down; positions across, below each a column of the shaft and one of the housing.

    ``head`` are the headings of name and unit, ``sides`` the words of shaft and housing. What is of the bearing stands
    over both columns.
    """
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    heads = office.more["head"].split("|")
    words = dict(zip(("shaft", "housing"), office.more["sides"].split("|"), strict=True))
    above(sheet)
    top, left = sheet.row, len(heads) + 1
    for c, head in enumerate(heads, 1):
        sheet.put(top + ("low" in office.more), c, head)
    for s in range(len(rotors[0].positions)):
        c = left + 2 * s
        sheet.tell(top, c, STATION, 0, s, [])
        sheet.merge(top, c, top, c + 1)
        for k, word in enumerate(words.values()):
            sheet.put(top + 1, c + k, word)
    sheet.row += 2
    for line in found:
        r = sheet.row
        sheet.put(r, 1, line.name)
        if len(heads) > 1:
            sheet.put(r, 2, unit_of(of_side(line, "shaft")))
        for s in range(len(rotors[0].positions)):
            c = left + 2 * s
            if "*" not in line.parameter:
                sheet.tell(r, c, line, 0, s, [(r, 1), (top, c)])
                sheet.merge(r, c, r, c + 1)
                continue
            for k, side in enumerate(words):
                sheet.tell(r, c + k, of_side(line, side), 0, s, [(r, 1), (top + 1, c + k), (top, c)])
        sheet.row += 1
    below(sheet)
    return sheet


def chapters(office: Office, rotors: Sequence[Rotor]) -> Sheet:
    """Tables below each other, one for each group of lines, below its title: a row for each position.

    ``station`` heads the positions; a group whose lines are of the machine is a list of names and values.
    """
    sheet = Sheet(office, rotors)
    found = lines(office.lines, office.edition)
    above(sheet)
    for group in dict.fromkeys(line.group for line in found):
        own = [line for line in found if line.group == group]
        over = (sheet.row, 1)
        sheet.put(*over, group[0])
        sheet.row += 1
        if own[0].whole:
            for line in own:
                sheet.put(sheet.row, 1, line.name)
                sheet.tell(sheet.row, 2, line, 0, -1, [(sheet.row, 1)])
                sheet.put(sheet.row, 3, unit_of(line))
                sheet.row += 1
        else:
            top = sheet.row
            sheet.put(top, 1, office.more["station"])
            for c, line in enumerate(own, 2):
                sheet.put(top, c, line.name)
            for s in range(len(rotors[0].positions)):
                sheet.row += 1
                sheet.tell(sheet.row, 1, STATION, 0, s, [(top, 1)])
                for c, line in enumerate(own, 2):
                    sheet.tell(sheet.row, c, line, 0, s, [(top, c), over])
            sheet.row += 1
        sheet.row += 1
    below(sheet)
    return sheet


def records(office: Office, rotors: Sequence[Rotor]) -> Tree:
    """A list of characteristics, each an object; ``columns`` are the keys and what they hold.

    Roles: ``no``, ``position``, ``part``, ``name``, ``unit``, ``value`` (as in a list), ``null``, ``-``. ``head`` are
    keys before the list, with values of the machine in braces; ``items`` names the list.
    """
    tree = Tree(office, rotors)
    columns = columns_of(office)
    rotor, items = rotors[0], office.more["items"]
    for row in office.more.get("head", "").strip().splitlines():
        key, _, value = (part.strip() for part in row.partition("="))
        if value.startswith("{"):
            line = Line((), key, *value.strip("{}").split(":"))
            tree.document[key] = tree.value(line, 0, -1)
            tree.leaf([key], line, 0, -1)
        else:
            tree.document[key] = value
    found = lines(office.lines, office.edition)
    order = [(line, -1) for line in found if line.whole]
    order += [(line, s) for s in range(len(rotor.positions)) for line in found if not line.whole]
    listed: list[dict[str, Any]] = []
    for n, (line, s) in enumerate(order):
        entry: dict[str, Any] = {}
        for key, role, *more in columns:
            if role == "value":
                own = parts_of_value(line, more)
                entry[key] = tree.value(own, 0, s) if own else None
                if own:
                    tree.leaf([items, n, key], own, 0, s, line.name)
            elif role == "position":
                entry[key] = rotor.positions[s] if s >= 0 else None
                if s >= 0:
                    tree.note(f"/{items}/{n}/{key}", STATION, 0, s, {})
            else:
                entry[key] = {
                    "no": n + 1, "name": line.name, "unit": unit_of(line), "null": None,
                    "part": line.group[0] if line.group else None, "-": more[0] if more else "",
                }[role]  # fmt: skip
        if "sparse" in office.more:
            entry = {key: value for key, value in entry.items() if value not in (None, "")}
        listed.append(entry)
    tree.document[items] = listed
    return tree
