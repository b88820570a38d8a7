"""Cells or a tree on their way to a file, with the truth of what stands where."""

import csv
import io
import json
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size

from practice_nineteenth.office import Line, Office
from practice_nineteenth.trade import Rotor

Place = tuple[int, int]


@dataclass
class Told:
    """The cells that tell a value, their headings, and what the office writes into them."""

    own: list[str] = field(default_factory=list)
    heads: dict[str, str] = field(default_factory=dict)
    lines: list[Line] = field(default_factory=list)


class Truth:
    """What each cell tells, gathered while it is written."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        self.office = office
        self.rotors = rotors
        self.told: dict[tuple[int, int, str], Told] = {}

    def note(self, address: str, line: Line, m: int, s: int, heads: dict[str, str]) -> None:
        """A cell tells a value."""
        told = self.told.setdefault((m, s, line.parameter), Told())
        if address not in told.own:
            told.own.append(address)
        told.lines.append(line)
        told.heads.update(heads)

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find."""
        found = []
        for (m, s, name), told in self.told.items():
            rotor = self.rotors[m]
            value = rotor.positions[s] if name == "station" else self.office.stated(rotor, told.lines, s)
            form = "text" if isinstance(value, str) else "number"
            if isinstance(value, Size):
                form = " ".join(sorted({field for line in told.lines for field in line.fields}))
            found.append(
                Expected(
                    m, s, name.replace("+", "|"), value, told.lines[0].verdict, form,
                    (*told.own, *(a for a in told.heads if a not in told.own)),
                    tuple(dict.fromkeys(told.heads.values())), tuple(told.own),
                )
            )  # fmt: skip
        return tuple(found)


def at(r: int, c: int) -> str:
    """The address of a cell."""
    return f"{get_column_letter(c)}{r}"


class Sheet(Truth):
    """Cells by row and column, both from 1."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.grid: dict[Place, str] = {}
        self.merged: list[tuple[int, int, int, int]] = []
        self.row = 1
        self.count = 0

    def put(self, r: int, c: int, text: str) -> None:
        """A text that tells no value."""
        if text:
            if (r, c) in self.grid:
                raise ValueError(f"two texts in {at(r, c)}: {text}")
            self.grid[r, c] = text

    def tell(self, r: int, c: int, line: Line, m: int, s: int, heads: Iterable[Place]) -> None:
        """The cell of a line's value at a position (-1: of the machine)."""
        rotor, name = self.rotors[m], line.parameter
        if name == "-":
            texts = line.unit.split(";")
            self.put(r, c, texts[(s + m) % len(texts)].strip())
        elif name == "#":
            self.count += 1
            self.put(r, c, line.pattern.format(n=self.count))
        elif name == "station":
            self.put(r, c, line.pattern.format(n=rotor.positions[s]))
            self.known(r, c, line, m, s, heads)
        else:
            s = -1 if line.whole else s
            self.put(r, c, self.office.text(rotor, line, s))
            self.known(r, c, line, m, s, heads)

    def known(self, r: int, c: int, line: Line, m: int, s: int, heads: Iterable[Place] = ()) -> None:
        """A cell that stands there tells a value."""
        self.note(at(r, c), line, m, s, {at(*h): self.grid[h] for h in heads if h in self.grid})

    def merge(self, r: int, c: int, to_r: int, to_c: int) -> None:
        """Merge cells of a workbook."""
        if (r, c) != (to_r, to_c):
            self.merged.append((r, c, to_r, to_c))

    def texts(self, text: str, m: int = 0) -> None:
        """Lines of cells, with values of a machine in braces: ``Drawing no. | {drawing_number}``."""
        for row in text.strip("\n").splitlines():
            only = re.match(r"@(\d+) ", row)
            if only and str(self.office.edition) not in only[1]:
                continue
            for c, cell in enumerate(row[only.end() :].split("|") if only else row.split("|"), 1):
                self._text(c, cell.strip(), m)
            self.row += 1

    def _text(self, c: int, cell: str, m: int) -> None:
        """One cell of such a line."""
        told = []
        rng = self.office.rng

        def filled(found: re.Match[str]) -> str:
            name, unit = found[1], found[2] or ""
            if name == "day":
                return f"{rng.randint(10, 28)}"
            line = Line((), "", name.lstrip("?").replace(",", "+"), unit, verdict="ask" if name[0] == "?" else "read")
            told.append(line)
            return self.office.text(self.rotors[m], line, -1)

        text = re.sub(r"\{([\w?,]+)(?::([^}]*))?\}", filled, cell)
        self.put(self.row, c, text)
        for line in told:
            self.known(self.row, c, line, m, -1, [(self.row, c - 1)] if "{" in cell[:3] else [])

    def delimited(self, separator: str, encoding: str) -> bytes:
        """The bytes of a text file."""
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        width = max(c for _, c in self.grid)
        for r in range(1, max(r for r, _ in self.grid) + 1):
            writer.writerow([self.grid.get((r, c), "") for c in range(1, width + 1)])
        text = stream.getvalue()
        return (text.replace("µ", "μ") if encoding == "cp932" else text).encode(encoding)

    def workbook(self) -> bytes:
        """The bytes of a workbook; numbers are numbers, their decimals and signs shown by the format."""
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        sheet.title = self.office.more.get("sheet", "Sheet1")
        for (r, c), text in self.grid.items():
            cell = sheet.cell(r, c)
            plain = text.replace(",", ".") if self.office.comma else text
            if re.fullmatch(r"[+-]?\d+(\.\d+)?", plain) and not re.fullmatch(r"0\d+", plain):
                places = len(plain.partition(".")[2])
                form = "0." + "0" * places if places else "0"
                cell.value = float(plain) if places else int(plain)
                if plain[0] == "+":
                    cell.number_format = f"+{form};-{form};0"
                elif places:
                    cell.number_format = form
            else:
                cell.value = text
        for area in self.merged:
            sheet.merge_cells(start_row=area[0], start_column=area[1], end_row=area[2], end_column=area[3])
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


class Tree(Truth):
    """A JSON document with the truth of its leaves."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.document: dict[str, Any] = {}

    def value(self, line: Line, m: int, s: int) -> Any:
        """A number where the text is one, else the text."""
        if line.parameter == "-":
            return line.unit.split(";")[s % len(line.unit.split(";"))].strip()
        if line.parameter == "station":
            return line.pattern.format(n=self.rotors[m].positions[s])
        text = self.office.text(self.rotors[m], line, -1 if line.whole else s)
        if line.parameter in ("bearing_designation", "machine", "drawing_number", "drawing_revision"):
            return text
        if re.fullmatch(r"[+-]?\d+", text):
            return int(text)
        return float(text) if re.fullmatch(r"[+-]?\d+\.\d+", text) else text

    def leaf(self, path: Sequence[str | int], line: Line, m: int, s: int, word: str = "") -> None:
        """A leaf that stands at the path tells a value."""
        if line.parameter != "-":
            pointer = "".join("/" + str(p).replace("~", "~0").replace("/", "~1") for p in path)
            self.note(pointer, line, m, -1 if line.whole else s, {pointer: word or line.name})

    def bytes(self, encoding: str) -> bytes:
        """The bytes of the document."""
        return (json.dumps(self.document, ensure_ascii=False, indent=2) + "\n").encode(encoding)


def remark(line: Line, texts: str) -> str:
    """What a column that says nothing of seats holds beside a value: texts for a size, for a form, for a roughness.

    One text stands everywhere, of two the second beside all but sizes.
    """
    several = [text.strip() for text in texts.split(";")]
    if len(several) < 3:
        return several[0 if line.size else -1]
    if line.size:
        return several[0]
    named = [("cylindricity", 1), ("runout", 1), ("roughness", 2)]
    return next((several[k] for word, k in named if line.parameter.endswith(word)), "")


def of_side(line: Line, side: str) -> Line:
    """The line in a row of a shaft or a housing."""
    return replace(line, parameter=line.parameter.replace("*", side))
