"""From an office's template to a file, with the truth of what stands where.

Of a sheet each line is a row, ``|`` parts its cells. ``%m`` and ``%p`` begin lines that come for each machine or
position, until ``%end``; ``*`` before a line does so for one line and each position, ``**`` for each position of each
machine. Within a line ``[p`` and ``p]`` as cells of their own enclose cells that come for each position, ``[m`` and
``m]`` for each machine. ``>`` begins a row of headings; ``<`` and ``^`` are merged with the cell to the left or above.

Of a JSON document the template is JSON; a key that begins with ``*p`` or ``*m``, and a list whose first item is one of
them, comes for each position or machine.
"""

import csv
import io
import json
import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size
from practice.page import VOCABULARY

from practice_twentythird.office import PLACE, Office, Place, place
from practice_twentythird.trade import Rotor

Cell = tuple[str, int, int]  # text, machine, position


@dataclass
class Told:
    """The cells that tell a value, the headings around them, what the office writes into them."""

    own: list[str] = field(default_factory=list)
    heads: dict[str, str] = field(default_factory=dict)
    places: list[Place] = field(default_factory=list)


class Truth:
    """What each cell tells, gathered while it is written."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        self.office = office
        self.rotors = rotors
        self.told: dict[tuple[int, int, str], Told] = {}
        self.count = 0
        self.day = office.rng.randint(10, 28)

    def fill(self, text: str, m: int, s: int, address: str) -> str:
        """The text of a cell of the template, and what it tells is noted."""

        def filled(found: re.Match[str]) -> str:
            if found[0] == "{#}":
                self.count += 1
                return str(self.count)
            if found[0] == "{day}":
                return str(self.day)
            if found[0].startswith("{~"):
                texts = found[0][2:-1].split(";")
                return texts[(m + s) % len(texts)]
            own = PLACE.fullmatch(found[0])
            if own is None:
                raise ValueError(found[0])
            at, where = place(own), int(own[2]) - 1 if own[2] else s
            if VOCABULARY[at.first]["level"] == "machine":
                where = -1
            told = self.told.setdefault((m, where, at.parameter), Told())
            if address not in told.own:
                told.own.append(address)
            told.places.append(at)
            return self.office.text(self.rotors[m], at, where)

        return re.sub(r"\{[^{}]*\}", filled, text)

    def around(self, address: str, heads: dict[str, str]) -> None:
        """The headings around a cell."""
        for told in self.told.values():
            if address in told.own:
                told.heads.update(heads)

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find."""
        found = []
        for (m, s, name), told in self.told.items():
            value = self.office.stated(self.rotors[m], told.places, s)
            form = "text" if isinstance(value, str) else "number"
            if isinstance(value, Size):
                form = " ".join(dict.fromkeys(at.part for at in told.places))
            found.append(
                Expected(
                    m, s, name.replace("+", "|"), value, told.places[0].verdict, form,
                    (*told.own, *(a for a in told.heads if a not in told.own)),
                    tuple(dict.fromkeys(told.heads.values())), tuple(told.own),
                )
            )  # fmt: skip
        return tuple(found)


class Sheet(Truth):
    """Cells by row and column, both from 1."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.grid: dict[tuple[int, int], str] = {}
        self.own: dict[tuple[int, int], bool] = {}
        self.merged: dict[tuple[int, int], tuple[int, int]] = {}
        self.row = 0
        self.head: list[int] = []
        self._lines(office.lines(), 0, -1)

    def _lines(self, lines: list[str], m: int, s: int) -> None:
        """Write lines, those of a loop as often as it comes."""
        k = 0
        while k < len(lines):
            line = lines[k]
            k += 1
            if line in ("%m", "%p"):
                depth, start = 1, k
                while depth:
                    depth += (lines[k] in ("%m", "%p")) - (lines[k] == "%end")
                    k += 1
                for one in self._several(line[1], m):
                    self._lines(lines[start : k - 1], *one)
            elif line.startswith("**"):
                for m_ in range(len(self.rotors)):
                    self._lines([f"*{line[2:]}"], m_, -1)
            elif line.startswith("*"):
                for one in self._several("p", m):
                    self._line(line[1:], *one)
            else:
                self._line(line, m, s)

    def _several(self, what: str, m: int) -> list[tuple[int, int]]:
        if what == "m":
            return [(k, -1) for k in range(len(self.rotors))]
        return [(m, s) for s in range(len(self.rotors[m].positions))]

    def _cells(self, cells: list[str], m: int, s: int) -> list[Cell]:
        """The cells of a line, those of a loop as often as it comes."""
        found: list[Cell] = []
        k = 0
        while k < len(cells):
            if loop := re.fullmatch(r"\[([mp])", cells[k]):
                end = cells.index(f"{loop[1]}]", k)
                for one in self._several(loop[1], m):
                    found += self._cells(cells[k + 1 : end], *one)
                k = end + 1
            else:
                found.append((cells[k], m, s))
                k += 1
        return found

    def _line(self, line: str, m: int, s: int) -> None:
        """Write one row."""
        self.row += 1
        heading = line.startswith(">")
        if heading:
            self.head = [*self.head, self.row] if self.head and self.head[-1] == self.row - 1 else [self.row]
        cells = self._cells([cell.strip() for cell in line.lstrip(">").split("|")], m, s)
        for c, (text, m_, s_) in enumerate(cells, 1):
            if text in ("<", "^"):
                before = (self.row, c - 1) if text == "<" else (self.row - 1, c)
                self.merged[self.row, c] = self.merged.get(before, before)
            elif text:
                address = f"{get_column_letter(c)}{self.row}"
                self.own[self.row, c] = "{" in text
                self.grid[self.row, c] = self.fill(text, m_, s_, address)
                self.around(address, self._heads(self.row, c, heading))

    def _heads(self, r: int, c: int, heading: bool) -> dict[str, str]:
        """The headings above a cell and the words before it in its row."""
        if heading:
            return {}
        before = [(r, k) for k in range(1, c) if (r, k) in self.grid and not self.own[r, k]]
        above = [self.merged.get((k, c), (k, c)) for k in self.head]
        return {f"{get_column_letter(k)}{q}": self.grid[q, k] for q, k in (*before, *above) if (q, k) in self.grid}

    def delimited(self, separator: str, encoding: str) -> bytes:
        """The bytes of a text file."""
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        width = max(c for _, c in self.grid)
        for r in range(1, self.row + 1):
            writer.writerow([self.grid.get((r, c), "") for c in range(1, width + 1)])
        text = stream.getvalue()
        return (text.replace("µ", "μ") if encoding == "cp932" else text).encode(encoding)

    def workbook(self) -> bytes:
        """The bytes of a workbook; numbers are numbers, their decimals and signs shown by the format."""
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        sheet.title = self.office.sheet
        for (r, c), text in self.grid.items():
            cell = sheet.cell(r, c)
            plain = text.replace(",", ".") if self.office.comma else text
            cell.value = text
            if not self.office.texts and re.fullmatch(r"[+-]?(?:(?:0|[1-9]\d*)(?:\.\d+)?|\.\d+)", plain):
                places = len(plain.partition(".")[2])
                form = "0." + "0" * places if places else "0"
                cell.value = float(plain) if places else int(plain)
                cell.number_format = f"+{form};-{form};0" if plain[0] == "+" else form if places else "General"
        for first in set(self.merged.values()):
            ends = [place for place, start in self.merged.items() if start == first]
            sheet.merge_cells(
                start_row=first[0], start_column=first[1], end_row=max(r for r, _ in ends),
                end_column=max(c for _, c in ends),
            )  # fmt: skip
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


class Tree(Truth):
    """A JSON document with the truth of its leaves."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.document = self._node(json.loads("\n".join(office.lines())), "", 0, -1, ())

    def _loops(self, mark: str, m: int, s: int) -> list[tuple[int, int]]:
        if mark == "*m":
            return [(k, -1) for k in range(len(self.rotors))]
        return [(m, k) for k in range(len(self.rotors[m].positions))] if mark == "*p" else [(m, s)]

    def _node(self, node: Any, path: str, m: int, s: int, words: tuple[str, ...]) -> Any:
        """A node of the template with its values."""
        if isinstance(node, list):
            mark = node[0] if node and node[0] in ("*p", "*m") else ""
            several = [(item, *one) for one in self._loops(mark, m, s) for item in node[bool(mark) :]]
            return [self._node(item, f"{path}/{k}", m_, s_, words) for k, (item, m_, s_) in enumerate(several)]
        if isinstance(node, dict):
            found: dict[str, Any] = {}
            named = tuple(str(node[key]) for key in self.office.named.split() if key in node)
            for key, value in node.items():
                mark, own = (key[:2], key[3:]) if key[:3] in ("*p ", "*m ") else ("", key)
                for m_, s_ in self._loops(mark, m, s):
                    bare = re.sub(r"\{[^{}]*\}", lambda f: self._plain(f, m_, s_), own)  # noqa: B023
                    below = f"{path}/{bare.replace('~', '~0').replace('/', '~1')}"
                    found[bare] = self._node(value, below, m_, s_, (bare, *named))
            return found
        if not isinstance(node, str):
            return node
        text = self.fill(node, m, s, path)
        self.around(path, {path: words[-1]} if words else {})
        at = PLACE.fullmatch(node)
        if at is None or self.office.texts:
            return text
        if VOCABULARY[place(at).first]["kind"] in ("text", "choice"):
            return text
        if re.fullmatch(r"[+-]?\d+", text):
            return int(text)
        return float(text) if re.fullmatch(r"[+-]?\d+\.\d+", text) else text

    def _plain(self, found: re.Match[str], m: int, s: int) -> str:
        own = PLACE.fullmatch(found[0])
        assert own is not None
        return self.office.text(self.rotors[m], place(own), s if own[3] == "p" else -1)

    def bytes(self, encoding: str) -> bytes:
        """The bytes of the document."""
        return (json.dumps(self.document, ensure_ascii=False, indent=2) + "\n").encode(encoding)
