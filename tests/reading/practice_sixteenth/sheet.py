"""What is gathered while an export is laid out: its cells, which values stand where, the bytes of a file."""

import csv
import io
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size, Value

from practice_sixteenth.shown import Told, stated


@dataclass
class _Entry:
    """A value on its way: the cells that tell it, the words over them."""

    value: Value
    verdict: str
    form: str
    pieces: str = ""
    own: list[str] = field(default_factory=list)
    heads: dict[str, str] = field(default_factory=dict)


class Truth:
    """What the cells tell."""

    def __init__(self) -> None:
        self.entries: dict[tuple[int, int, str], _Entry] = {}

    def note(self, told: Iterable[Told], address: str, heads: dict[str, str]) -> None:
        for one in told:
            key = (one.machine, one.station, one.parameter)
            entry = self.entries.setdefault(key, _Entry(one.value, one.verdict, one.form))
            if entry.value != one.value:
                raise ValueError(f"{key} is told twice: {entry.value}, {one.value}")
            entry.pieces += one.pieces
            if address not in entry.own:
                entry.own.append(address)
            entry.heads.update(heads)

    def expected(self, inch: bool) -> tuple[Expected, ...]:
        """What a reader should find."""
        found = []
        for (m, s, parameter), entry in self.entries.items():
            value = entry.value
            if isinstance(value, Size):
                value = stated(value, entry.pieces, inch)
            form = entry.form or _form(value, len(entry.own))
            words = tuple(dict.fromkeys(entry.heads.values()))
            cells = (*entry.own, *(a for a in entry.heads if a not in entry.own))
            found.append(Expected(m, s, parameter, value, entry.verdict, form, cells, words, tuple(entry.own)))
        return tuple(found)


def _form(value: Value, cells: int) -> str:
    if not isinstance(value, Size):
        return "text" if isinstance(value, str) else "number"
    if value.bare:
        return "limits in cell" if cells == 1 else "limit columns"
    what = "class" if value.lower is None else "class and deviations" if value.tolerance_class else "deviations"
    return f"{what} {'in cell' if cells == 1 else 'in columns'}"


class Sheet:
    """Cells by row and column (from 1)."""

    def __init__(self) -> None:
        self.grid: dict[tuple[int, int], str] = {}
        self.truth = Truth()
        self.merged: list[tuple[int, int, int, int]] = []
        self.row = 1

    def put(self, r: int, c: int, text: str, told: Sequence[Told] = (), heads: Iterable[tuple[int, int]] = ()) -> None:
        if not text:
            return
        if (r, c) in self.grid:
            raise ValueError(f"two texts in {at(r, c)}: {text}")
        self.grid[r, c] = text
        self.truth.note(told, at(r, c), {at(*h): self.grid[h] for h in heads if h in self.grid})

    def merge(self, r: int, c: int, to_r: int, to_c: int) -> None:
        if (to_r, to_c) != (r, c):
            self.merged.append((r, c, to_r, to_c))

    def delimited(self, separator: str, encoding: str, pad: bool) -> bytes:
        """The bytes of a text file; ``pad``: all lines are as wide as the widest."""
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        width = max(c for _, c in self.grid)
        for r in range(1, max(r for r, _ in self.grid) + 1):
            row = [self.grid.get((r, c), "") for c in range(1, width + 1)]
            while row and not row[-1] and not pad:
                row.pop()
            writer.writerow(row)
        text = stream.getvalue()
        if encoding in ("cp932", "cp1251", "gb18030"):
            text = text.replace("µ", "мк" if encoding == "cp1251" else "μ")
        return text.encode(encoding)

    def workbook(self, name: str, comma: bool, texts: bool, others: Sequence[tuple[str, list[list[str]]]]) -> bytes:
        """The bytes of a workbook: figures as numbers, or all of it as text; further sheets as they are."""
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        sheet.title = name
        for (r, c), text in self.grid.items():
            cell = sheet.cell(r, c)
            number = text.replace(",", ".") if comma else text
            if texts or not re.fullmatch(r"[-+]?(0|[1-9]\d*)(\.\d+)?", number):
                cell.value = text
                continue
            decimals = len(number.partition(".")[2])
            cell.value = float(number) if decimals else int(number)
            own = "0." + "0" * decimals if decimals else "0"
            if number.startswith("+"):
                cell.number_format = f"+{own};-{own};0"
            elif decimals:
                cell.number_format = own
        for r, c, to_r, to_c in self.merged:
            sheet.merge_cells(start_row=r, start_column=c, end_row=to_r, end_column=to_c)
        for other, rows in others:
            beside = book.create_sheet(other)
            for row in rows:
                beside.append(row)
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


def at(r: int, c: int) -> str:
    return f"{get_column_letter(c)}{r}"
