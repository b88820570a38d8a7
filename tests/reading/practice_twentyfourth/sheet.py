"""From a template of cells to a sheet.

A line of a template is a row, ``|`` stands between its cells. Before a line: ``#`` makes it a row of headings, ``p>``,
``m>`` and ``mp>`` write it for each position, machine, or both; ``for p:`` and ``for m:`` do so with the lines up to
``end``; ``--`` ends what headings say; ``@0`` and ``@1`` keep a line or a cell for one table of the office. Cells from
``p<`` to ``>p`` come again beside each other for each position, ``m<`` and ``>m`` for each machine. ``<`` and ``^`` are
cells that belong to the one to the left or above.
"""

import csv
import io
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from openpyxl import Workbook
from openpyxl.utils import get_column_letter

from practice_twentyfourth.office import Mark, Office, Truth
from practice_twentyfourth.trade import Rotor

Place = tuple[int, int]


@dataclass
class Loop:
    """Lines that are written several times; ``over`` is ``p``, ``m`` or nothing."""

    over: str
    lines: list["Loop | str"] = field(default_factory=list)


def parsed(template: str, edition: int) -> Loop:
    """The lines of a template with their loops."""
    stack = [Loop("")]
    for line in template.strip("\n").splitlines():
        line, kept = line.strip(), True
        if only := re.match(r"@(\d) ", line):
            line, kept = line[3:].strip(), int(only[1]) == edition
        if not kept:
            continue
        if opened := re.fullmatch(r"for ([pm]):", line):
            stack.append(Loop(opened[1]))
            stack[-2].lines.append(stack[-1])
        elif line == "end":
            stack.pop()
        else:
            stack[-1].lines.append(line)
    return stack[0]


def address(place: Place) -> str:
    """The address of a cell."""
    return f"{get_column_letter(place[1])}{place[0]}"


class Sheet(Truth):
    """Cells by row and column, both from 1."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.grid: dict[Place, str] = {}
        self.joined: dict[Place, Place] = {}
        self.row = 1
        self.heads: list[int] = []
        self.below_heads = False
        self._write(parsed(office.template, office.edition), 0, 0)

    def _write(self, loop: Loop, m: int, s: int) -> None:
        """The lines of a loop, once."""
        for line in loop.lines:
            if isinstance(line, Loop):
                for k in range(len(self.rotors) if line.over == "m" else len(self.rotors[m].positions)):
                    self._write(line, *((k, s) if line.over == "m" else (m, k)))
            elif line == "--":
                self.heads = []
            elif line.startswith("#") and not line.startswith("#."):
                self._row(line[1:], m, s, True, False)
            elif once := re.match(r"(m?p?)> ", line):
                for k in range(len(self.rotors)) if "m" in once[1] else (m,):
                    for n in range(len(self.rotors[k].positions)) if "p" in once[1] else (s,):
                        self._row(line[once.end() :], k, n, False, False)
            else:
                self._row(line, m, s, False, True)

    def _cells(self, cells: list[str], m: int, s: int) -> Iterator[tuple[str, int, int]]:
        """The cells of a row, those of groups several times."""
        n = 0
        while n < len(cells):
            cell = cells[n]
            if opened := re.match(r"([pm])< ?", cell):
                over, end = opened[1], n
                while not cells[end].endswith(f">{over}"):
                    end += 1
                own = cells[n : end + 1]
                own[0] = own[0][opened.end() :]
                own[-1] = own[-1].removesuffix(f">{over}").strip()
                for k in range(len(self.rotors) if over == "m" else len(self.rotors[m].positions)):
                    yield from self._cells(own, *((k, s) if over == "m" else (m, k)))
                n = end + 1
                continue
            n += 1
            yield cell, m, s

    def _row(self, line: str, m: int, s: int, heading: bool, labels: bool) -> None:
        """One row, with what its cells tell."""
        cells = []
        for cell in line.split("|"):
            only = re.match(r"@(\d) ", cell.strip())
            if not only or int(only[1]) == self.office.edition:
                cells.append(cell.strip()[3:].strip() if only else cell.strip())
            elif (closed := re.search(r" >[pm]$", cell.strip())) and not re.search("[pm]< ", cell):
                cells[-1] += closed[0]
        if heading:
            self.heads = [self.row] if self.below_heads else [*self.heads, self.row]
            self.below_heads = False
        elif line.strip():
            self.below_heads = True
        r, label = self.row, 0
        for c, (cell, own_m, own_s) in enumerate(self._cells(cells, m, s), 1):
            if cell in ("<", "^"):
                self.joined[r, c] = self._root((r, c - 1) if cell == "<" else (r - 1, c))
                continue
            text, marks = self.fill(cell, own_m, own_s)
            if text:
                self.grid[r, c] = text
            for mark in marks:
                self.note(address((r, c)), mark, self._heads(r, c, mark, heading, label if labels else 0))
            named = all(mark.parameter == "station" for mark in marks) and len(text) > 2 and not cell.startswith("{")
            if named and re.search(r"[^\W\d_]{2}", text):
                label = c
        self.row += 1

    def _root(self, place: Place) -> Place:
        """The cell that a joined one belongs to."""
        return self.joined.get(place, place)

    def _heads(self, r: int, c: int, mark: Mark, heading: bool, label: int) -> dict[str, str]:
        """The cells that say what a cell is."""
        places = [(r, label)] if label else []
        if not heading:
            places += [self._root((above, c)) for above in reversed(self.heads)]
        return {address(place): self.grid[place] for place in places if place in self.grid}

    def content(self, kind: str, separator: str, encoding: str) -> bytes:
        """The bytes of the file."""
        if kind == "xlsx":
            return self._book()
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        width = max(c for _, c in self.grid)
        for r in range(1, max(r for r, _ in self.grid) + 1):
            row = [self.grid.get((r, c), "") for c in range(1, width + 1)]
            while self.office.ragged and row and not row[-1]:
                row.pop()
            writer.writerow(row)
        text = stream.getvalue()
        return (text.replace("µ", "μ") if encoding == "cp932" else text).encode(encoding)

    def _book(self) -> bytes:
        """A workbook; numbers are numbers, their decimals and signs shown by the format."""
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        sheet.title = self.office.sheet
        for (r, c), text in self.grid.items():
            cell = sheet.cell(r, c)
            plain = text.replace(",", ".") if self.office.comma else text
            if re.fullmatch(r"[+-]?(?:0|[1-9]\d*)(\.\d+)?", plain):
                places = len(plain.partition(".")[2])
                form = "0." + "0" * places if places else "0"
                cell.value = float(plain) if places else int(plain)
                cell.number_format = f"+{form};-{form};0" if plain[0] == "+" else form if places else "General"
            else:
                cell.value = text
        for root in set(self.joined.values()):
            own = [place for place, first in self.joined.items() if first == root]
            sheet.merge_cells(
                start_row=root[0], start_column=root[1],
                end_row=max(r for r, _ in own), end_column=max(c for _, c in own),
            )  # fmt: skip
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()
