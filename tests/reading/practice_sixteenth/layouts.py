"""The layouts: columns of one code each, and lines of cells.

``rows``, ``machines`` and ``seats`` are written as columns, ``Heading over > Heading | unit := code``. In ``rows`` a
line is a position, in ``machines`` a rotor (a column that begins with ``*`` stands once for each position, ``{p}`` in
its heading), in ``seats`` a seat; ``x.`` is then of the shaft or the housing.

``lines`` is written as it stands, cells between ``|``. ``^`` begins a line of headings, ``*`` lines that come once for
each position (a run of them together, ``**`` each line on its own), ``.`` is an empty line, ``{i}`` the line's number.
A cell ``<<...>>`` stands once for each position; codes between ``;;`` have a column each. ``{{P}}`` is the names of the
positions, ``{{P;2}}`` with two columns each, ``{{a;;b}}`` these words under each.
"""

import re
from collections.abc import Iterable

from practice_sixteenth.office import Code, Office, code
from practice_sixteenth.sheet import Sheet, at
from practice_sixteenth.shown import Hand, Told, show
from practice_sixteenth.trade import WHOLE, Machine

Cells = list[tuple[int, int]]


class Layout:
    """A sheet, and what is needed to lay it out."""

    def __init__(self, office: Office, hand: Hand, machines: list[Machine]) -> None:
        self.office, self.hand, self.machines = office, hand, machines
        self.sheet = Sheet()
        self.count = 0
        self.heads: dict[int, tuple[int, int]] = {}
        self.group: Cells = []

    # ------------------------------------------------------------ lines

    def lines(self, lines: list[str]) -> None:
        """Lines as they stand."""
        run: list[str] = []
        for line in [*lines, ""]:
            if line.startswith("*") and not line.startswith("**"):
                run.append(line[1:])
                continue
            if run:
                self._run(run)
                run = []
            if line.startswith("**"):
                for s in range(len(self.machines[0].positions)):
                    self._line(line[2:], s)
            elif line.strip():
                self._line(line, -1)

    def _run(self, lines: list[str]) -> None:
        """Lines that come together for each position, below each other or ``beside``."""
        step = int(self.office.habit("beside", "0"))
        top, deepest = self.sheet.row, self.sheet.row
        for s in range(len(self.machines[0].positions)):
            if step:
                self.sheet.row = top
            for line in lines:
                self._line(line, s, 1 + s * step)
            deepest = max(deepest, self.sheet.row)
        self.sheet.row = deepest

    def _line(self, line: str, s: int, column: int = 1) -> None:
        r = self.sheet.row
        self.sheet.row += 1
        if line.strip() == ".":
            self.group = []
            return
        heading = line.startswith("^")
        if heading:
            self.heads, self.group = {}, []
        texts = [text.strip() for text in line.lstrip("^").split(" | ")]
        if "{i}" in line:
            self.count += 1
        c = column
        labels: Cells = []
        for text in texts:
            text = text.replace("{i}", str(self.count))
            for one, told, own in self._cells(text, s):
                above = [self.heads[c]] if c in self.heads and not heading else []
                around = [*labels, *self.group, *above]
                self.sheet.put(r, c, one, told, around if told else ())
                if one and not own and not re.fullmatch(r"[\d.]+", one):
                    labels.append((r, c))
                if heading and one:
                    self.heads[c] = (r, c)
                c += 1
        if len([t for t in texts if t]) == 1 and not heading and labels:
            self.group = labels[:1]

    def _cells(self, text: str, s: int) -> Iterable[tuple[str, list[Told], bool]]:
        """Text, what it tells, whether it is a value, of each cell that a written one stands for."""
        machine = self.machines[0]
        places = range(len(machine.positions))
        if found := re.fullmatch(r"<<(.+)>>", text):
            codes = [code(part) for part in found[1].split(";;")]
            for at in places:
                for one in codes:
                    yield *(show(self.hand, machine, one, at) if one.name else ("", [])), True
        elif found := re.fullmatch(r"\{\{P(?:;(\d))?\}\}", text):
            for at in places:
                yield machine.positions[at], [self._position(at)], False
                yield from [("", [], False)] * (int(found[1] or 1) - 1)
        elif found := re.fullmatch(r"\{\{(.+;;.+)\}\}", text):
            for at in places:
                yield from ((word.replace("{p}", machine.positions[at]), [], False) for word in found[1].split(";;"))
        elif text == "{p}":
            yield machine.positions[s], [self._position(s)], False
        elif found := re.fullmatch(r"([^<]*)<([^<>]+)>([^>]*)", text):
            shown, told = show(self.hand, machine, code(found[2]), s)
            before = found[1].replace("{p}", machine.positions[s])
            yield f"{before}{shown}{found[3]}", told, True
        else:
            yield text.replace("{p}", machine.positions[s]) if s >= 0 else text, [], False

    def _position(self, s: int) -> Told:
        return Told(0, s, "station", self.machines[0].positions[s])

    # ------------------------------------------------------------ columns

    def _headings(self, columns: list[tuple[str, str]]) -> list[Cells]:
        """One row of headings or more, and a row of units; the heading cells of each column."""
        sheet = self.sheet
        names = [name.partition(" | ")[0].split(" > ") for name, _ in columns]
        units = [name.partition(" | ")[2] for name, _ in columns]
        depth = max(map(len, names))
        found: list[Cells] = []
        for c, own in enumerate(names, 1):
            before = names[c - 2] if c > 1 else []
            cells: Cells = []
            for level, text in enumerate(own[:-1]):
                if own[: level + 1] == before[: level + 1] and len(before) > level + 1:
                    cells.append(found[-1][level])
                    continue
                sheet.put(sheet.row + level, c, text.replace("\\n", "\n"))
                cells.append((sheet.row + level, c))
            sheet.put(sheet.row + depth - 1, c, own[-1].replace("\\n", "\n"))
            found.append([*cells, (sheet.row + depth - 1, c)])
        if self.office.habit("merge"):
            for over in {tuple(cells[: k + 1]) for cells in found for k in range(len(cells) - 1)}:
                r, c = over[-1]
                last = max(i for i, own in enumerate(found, 1) if tuple(own[: len(over)]) == over)
                sheet.merge(r, c, r, last)
        sheet.row += depth
        if any(units):
            for c, unit in enumerate(units, 1):
                sheet.put(sheet.row, c, unit)
            sheet.row += 1
        return found

    def columns(self, lines: list[str]) -> None:
        """A row for each position, rotor or seat under headings."""
        layout = self.office.layout
        pairs = [tuple(part.strip() for part in line.split(" := ")) for line in lines if line.strip()]
        told: list[tuple[str, str, int]] = []
        run: list[tuple[str, str]] = []
        for name, text in [*((p[0], p[1]) for p in pairs), ("", "")]:
            if name.startswith("*"):
                run.append((name[1:], text))
                continue
            for s, position in enumerate(self.machines[0].positions):
                told += [(own.replace("{p}", position), what, s) for own, what in run]
            run = []
            if text:
                told.append((name, text, -1))
        heads = self._headings([(name, text) for name, text, _ in told])
        codes = [(code(text), s) for _, text, s in told]
        line = 0
        for machine in self.machines:
            once: set[int] = set()
            for s, side in self._rows_of(machine, layout):
                for c, (one, own) in enumerate(codes, 1):
                    text, what = self._shown(machine, one, own if own >= 0 else s, side, line)
                    if c in once or (one.name == "des" and side == "h" and self.office.habit("once")):
                        continue
                    self.sheet.put(self.sheet.row, c, text, what, heads[c - 1])
                    if one.name in WHOLE and self.office.habit("once"):
                        once.add(c)
                self.sheet.row += 1
                line += 1
            if self.office.habit("gap"):
                self.sheet.row += 1
        if layout == "machines":
            self._positions_in_heads(heads, told)

    def _rows_of(self, machine: Machine, layout: str) -> list[tuple[int, str]]:
        places = range(len(machine.positions))
        if layout == "machines":
            return [(-1, "")]
        if layout == "rows":
            return [(s, "") for s in places]
        if self.office.habit("by") == "part":
            return [(s, side) for side in "sh" for s in places]
        return [(s, side) for s in places for side in "sh"]

    def _shown(self, machine: Machine, one: Code, s: int, side: str, line: int) -> tuple[str, list[Told]]:
        if one.name == "~":
            return one.values[line % len(one.values)].strip("_"), []
        part = ""
        if side:
            words = self.office.habit("parts").split(";")
            part = words["sh".index(side)].strip()
        if one.name == "part":
            return part, []
        if one.name == "place":
            return one.template.format(p=machine.positions[s], part=part), []
        return show(self.hand, machine, one.of(side) if side else one, s)

    def _positions_in_heads(self, heads: list[Cells], told: list[tuple[str, str, int]]) -> None:
        """A heading that is a position's name alone tells it for every rotor."""
        for cells, (_, _, s) in zip(heads, told, strict=True):
            for r, c in cells[:-1]:
                for machine in self.machines:
                    if s >= 0 and self.sheet.grid.get((r, c)) == machine.positions[s]:
                        told_of = Told(machine.index, s, "station", machine.positions[s])
                        self.sheet.truth.note([told_of], at(r, c), {})
