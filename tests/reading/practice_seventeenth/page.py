"""Cells or a tree on their way to a file, with the truth of what stands where."""

import csv
import io
import json
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size

from practice_seventeenth.firm import WORDS, Field, Firm, planned
from practice_seventeenth.trade import Machine, parameter

Ref = tuple[int, str, str, int]  # machine, scope, key, position (-1: the machine)
Places = Iterable[tuple[int, int]]


@dataclass
class Truth:
    """Which cells tell a value, and which words stand over them."""

    own: dict[Ref, list[str]] = field(default_factory=dict)
    heads: dict[Ref, dict[str, str]] = field(default_factory=dict)

    def note(self, ref: Ref, address: str, heads: dict[str, str]) -> None:
        """A cell tells a value."""
        if address not in self.own.setdefault(ref, []):
            self.own[ref].append(address)
        self.heads.setdefault(ref, {}).update(heads)

    def expected(self, firm: Firm, machines: Sequence[Machine]) -> tuple[Expected, ...]:
        """What a reader is expected to find."""
        found = []
        for (m, scope, key, s), own in self.own.items():
            heads = self.heads[m, scope, key, s]
            f = Field(scope, key)
            value = machines[m].positions[s] if key == "station" else firm.meant(machines[m], f, s)
            form = firm.form if isinstance(value, Size) else "text" if isinstance(value, str) else "number"
            found.append(
                Expected(
                    m, s, parameter(scope, key), value, "ask" if key.startswith("ask.") else "read", form,
                    (*own, *(a for a in heads if a not in own)), tuple(dict.fromkeys(heads.values())), tuple(own),
                )
            )  # fmt: skip
        return tuple(found)


class Sheet:
    """Cells by row and column, both from 1."""

    def __init__(self, firm: Firm, machines: Sequence[Machine]) -> None:
        self.firm = firm
        self.machines = machines
        self.grid: dict[tuple[int, int], str] = {}
        self.truth = Truth()
        self.merged: list[tuple[int, int, int, int]] = []
        self.row = 1

    def put(self, r: int, c: int, text: str) -> None:
        """A text that tells no value."""
        if text:
            if (r, c) in self.grid:
                raise ValueError(f"two texts in {r}, {c}: {text}")
            self.grid[r, c] = text

    def line(self, *texts: str, skip: int = 0) -> None:
        """A line of plain texts."""
        for c, text in enumerate(texts, 1 + skip):
            self.put(self.row, c, text)
        self.row += 1

    def tell(self, r: int, c: int, m: int, f: Field, s: int, heads: Places) -> None:
        """The cell of a value."""
        if hole := self.firm.hole(f, s):
            self.put(r, c, hole)
            return
        self.put(r, c, self.firm.text(self.machines[m], f, s))
        self.note(r, c, (m, f.scope, f.key, s), heads)

    def note(self, r: int, c: int, ref: Ref, heads: Places = ()) -> None:
        """A cell that stands there tells a value too."""
        self.truth.note(ref, at(r, c), {at(*h): self.grid[h] for h in heads if h in self.grid})

    def position(self, r: int, c: int, m: int, s: int, heads: Places = (), form: str = "{}") -> None:
        """The name of a position."""
        self.put(r, c, form.format(self.machines[m].positions[s]))
        self.note(r, c, (m, "", "station", s), heads)

    def machine(self, r: int, c: int, m: int, heads: Places = ()) -> None:
        """The name of a machine."""
        self.put(r, c, self.machines[m].name)
        self.note(r, c, (m, "m", "name", -1), heads)

    def merge(self, r: int, c: int, to_r: int, to_c: int) -> None:
        """Merge cells in a workbook."""
        if (r, c) != (to_r, to_c):
            self.merged.append((r, c, to_r, to_c))

    def whole(self, m: int = 0, column: int = 1, across: int = 1) -> None:
        """The machine's values as label and value, ``across`` of them on a line; a unit in its own column or not."""
        firm = self.firm
        c = column
        for f in planned(firm, "m"):
            own = firm.units in ("column", "row")
            self.put(self.row, c, firm.headed(firm.full(f), f, always=own))
            self.tell(self.row, c + 1, m, f, -1, [(self.row, c)])
            c += 3
            if c > column + 3 * (across - 1):
                c = column
                self.row += 1
        if c != column:
            self.row += 1

    def head(self, extra: Sequence[str]) -> None:
        """Title, who made it, units, an empty line."""
        firm = self.firm
        if "title" in extra:
            self.line(firm.word("title"))
        if "who" in extra:
            heads = [text.format(d=firm.rng.randint(10, 28)) for text in words(firm, "head")]
            self.line(*firm.rng.sample(heads, 2))
        if "units" in extra or firm.units == "title":
            self.line(firm.sentence())

    def gap(self, extra: Sequence[str] = ()) -> None:
        """An empty line below what stands above, unless the firm writes none."""
        if self.grid and "tight" not in extra:
            self.row += 1

    def foot(self, extra: Sequence[str]) -> None:
        """What stands below."""
        firm = self.firm
        self.row = max(r for r, _ in self.grid) + 2
        if firm.units == "foot":
            self.line(firm.sentence())
        if "foot" in extra:
            self.line(firm.rng.choice(words(firm, "foot")))

    def delimited(self, separator: str, encoding: str) -> bytes:
        """The bytes of a text file."""
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        width = max(c for _, c in self.grid)
        for r in range(1, max(r for r, _ in self.grid) + 1):
            writer.writerow([self.grid.get((r, c), "") for c in range(1, width + 1)])
        text = stream.getvalue()
        return (text.replace("µ", "μ") if encoding == "cp932" else text).encode(encoding)

    def workbook(self, merging: bool) -> bytes:
        """The bytes of a workbook; numbers are numbers with their decimals shown."""
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        for (r, c), text in self.grid.items():
            cell = sheet.cell(r, c)
            number = text.replace(",", ".") if self.firm.comma else text
            if re.fullmatch(r"\+\d+(\.\d+)?", number):
                own = "0." + "0" * len(number.partition(".")[2]) if "." in number else "0"
                cell.value, cell.number_format = float(number), f"+{own};-{own};{own}"
            elif re.fullmatch(r"-?\d+(\.\d+)?", number) and not re.fullmatch(r"0\d+", number):
                places = len(number.partition(".")[2])
                cell.value = float(number) if places else int(number)
                if places:
                    cell.number_format = "0." + "0" * places
            else:
                cell.value = text
        for area in self.merged if merging else ():
            sheet.merge_cells(start_row=area[0], start_column=area[1], end_row=area[2], end_column=area[3])
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


def words(firm: Firm, key: str) -> list[str]:
    """All of a language's words of a key."""
    return WORDS[firm.language][key]


def noise(firm: Firm, k: int) -> tuple[str, list[str]]:
    """A column that says nothing of seats: its heading and some texts."""
    form, rng = words(firm, "noise.values")[k], firm.rng
    return words(firm, "noise")[k], [form.format(n=rng.randint(100, 999), d=rng.randint(11, 28)) for _ in range(8)]


def at(r: int, c: int) -> str:
    """The address of a cell."""
    return f"{get_column_letter(c)}{r}"


class Tree:
    """A JSON document with the truth of its leaves."""

    def __init__(self, firm: Firm, machines: Sequence[Machine]) -> None:
        self.firm = firm
        self.machines = machines
        self.document: Any = None
        self.truth = Truth()

    def note(self, ref: Ref, path: Iterable[str | int], word: str) -> None:
        """A leaf tells a value."""
        pointer = "".join("/" + str(p).replace("~", "~0").replace("/", "~1") for p in path)
        self.truth.note(ref, pointer, {pointer: word})

    def value(self, m: int, f: Field, s: int) -> Any:
        """A number where the text is one, else the text."""
        text = self.firm.text(self.machines[m], f, s)
        if f.key in ("des", "name", "dwg", "rev"):
            return text
        if re.fullmatch(r"[+-]?\d+", text):
            return int(text)
        return float(text) if re.fullmatch(r"[+-]?\d+\.\d+", text) else text

    def bytes(self, encoding: str) -> bytes:
        """The bytes of the document."""
        return (json.dumps(self.document, ensure_ascii=False, indent=2) + "\n").encode(encoding)
