"""A sheet on its way: cells, which values stand where, the bytes of a file."""

import csv
import io
import json
import re
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size

from practice_fifteenth.meaning import Machine, stated
from practice_fifteenth.style import PARAMETERS, SIDES, Style

#: What stands where there is no value.
HOLES = ("-", "–", "n/a", "entf.", "/")
Ref = tuple[int, str, str, int]  # machine, scope, key, position (-1: the machine)


def parameter(scope: str, key: str) -> str:
    return scope + SIDES[key] if key in SIDES else PARAMETERS[key]


@dataclass
class Truth:
    """Which cells tell a value, which words stand over them."""

    own: dict[Ref, list[str]] = field(default_factory=dict)
    heads: dict[Ref, dict[str, str]] = field(default_factory=dict)
    joined: set[Ref] = field(default_factory=set)

    def note(self, refs: Iterable[Ref], address: str, heads: dict[str, str]) -> None:
        for ref in refs:
            if address not in self.own.setdefault(ref, []):
                self.own[ref].append(address)
            self.heads.setdefault(ref, {}).update(heads)

    def expected(self, style: Style, machines: list[Machine]) -> tuple[Expected, ...]:
        """What is expected of a reader."""
        found = []
        for ref, own in self.own.items():
            m, scope, key, s = ref
            if machines[m].words.get((scope, key, s)) in HOLES:
                continue
            value: Any
            if key == "station":
                value = machines[m].positions[s]
            else:
                value = machines[m].values[scope, key, s if s >= 0 or (scope, key, -1) in machines[m].values else 0]
            if isinstance(value, Size):
                value = stated(style.form, value, style.inch)
            heads = self.heads[ref]
            form = style.form if isinstance(value, Size) else "text" if isinstance(value, str) else "number"
            if ref in self.joined:
                form = "label in cell"
            at = [r for r, cells in self.own.items() if r[0] == m and cells == own]
            if len(at) > 1 and isinstance(value, Size):
                form = "fit pair column"
            elif len(at) > 1 and key in ("d", "D", "B"):
                form = "d x D x B in one cell"
            verdict = "ask" if key.startswith("ask.") else "read"
            if style.group in (".", ",") and isinstance(value, float | int) and value >= 1000 and verdict == "read":
                verdict = "either"
            found.append(
                Expected(
                    m, s, parameter(scope, key), value, verdict, form,
                    (*own, *(a for a in heads if a not in own)), tuple(dict.fromkeys(heads.values())), tuple(own),
                )
            )  # fmt: skip
        return tuple(found)


class Sheet:
    """Cells by row and column (from 1), with the truth of the values in them."""

    def __init__(self, style: Style) -> None:
        self.style = style
        self.grid: dict[tuple[int, int], str] = {}
        self.truth = Truth()
        self.merged: list[tuple[int, int, int, int]] = []
        self.row = 1
        self.second: list[list[str]] = []
        self.second_name = ""

    def put(self, r: int, c: int, text: str, refs: Iterable[Ref] = (), heads: Iterable[tuple[int, int]] = ()) -> None:
        if not text:
            return
        if (r, c) in self.grid:
            raise ValueError(f"two texts in {r}, {c}: {text}")
        self.grid[r, c] = text
        self.truth.note(refs, at(r, c), {at(*h): self.grid[h] for h in heads if h in self.grid})

    def line(self, *texts: str, skip: int = 0) -> None:
        """A line of plain text."""
        for c, text in enumerate(texts, 1 + skip):
            self.put(self.row, c, text)
        self.row += 1

    def merge(self, r: int, c: int, to_r: int, to_c: int) -> None:
        if (to_r, to_c) != (r, c):
            self.merged.append((r, c, to_r, to_c))

    def last(self) -> int:
        return max(c for _, c in self.grid)

    def delimited(self, separator: str, encoding: str, pad: bool) -> bytes:
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        width = self.last()
        for r in range(1, max(r for r, _ in self.grid) + 1):
            row = [self.grid.get((r, c), "") for c in range(1, width + 1)]
            while row and not row[-1] and not pad:
                row.pop()
            writer.writerow(row)
        text = stream.getvalue()
        return (text.replace("µ", "μ") if encoding == "cp932" else text).encode(encoding)

    def workbook(self, merging: bool) -> bytes:
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        sheet.title = {"de": "Lagersitze", "zh": "轴承位", "ja": "軸受部", "ru": "Посадки"}.get(
            self.style.language, "Seats"
        )
        for (r, c), text in self.grid.items():
            cell = sheet.cell(r, c)
            number = text.replace(",", ".") if self.style.comma else text
            if self.style.voice % 2 == 0 and re.fullmatch(r"\+\d+(\.\d+)?", number):
                places = len(number.partition(".")[2])
                own = "0." + "0" * places if places else "0"
                cell.value, cell.number_format = float(number), f"+{own};-{own};0"
            elif re.fullmatch(r"-?\d+(\.\d+)?", number) and not re.fullmatch(r"0\d+", number):
                cell.value = float(number) if "." in number else int(number)
                places = len(number.partition(".")[2])
                if places:
                    cell.number_format = "0." + "0" * places
            elif shown := re.fullmatch(r"(-?\d+(?:\.\d+)?) (mm|µm|N|h|kg|rpm|1/min|°C)", number):
                places = len(shown[1].partition(".")[2])
                cell.value = float(shown[1]) if places else int(shown[1])
                cell.number_format = ("0." + "0" * places if places else "0") + f' "{shown[2]}"'
            else:
                cell.value = text
        if merging:
            for r, c, to_r, to_c in self.merged:
                sheet.merge_cells(start_row=r, start_column=c, end_row=to_r, end_column=to_c)
        if self.second:
            other = book.create_sheet(self.second_name)
            for row in self.second:
                other.append(row)
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


def at(r: int, c: int) -> str:
    return f"{get_column_letter(c)}{r}"


class Tree:
    """A JSON document with the truth of its leaves, which are noted by their pointers."""

    def __init__(self) -> None:
        self.document: Any = None
        self.truth = Truth()

    def note(self, refs: Iterable[Ref], path: Iterable[str | int], word: str) -> None:
        pointer = "".join("/" + str(p).replace("~", "~0").replace("/", "~1") for p in path)
        self.truth.note(refs, pointer, {pointer: word})

    def bytes(self, encoding: str) -> bytes:
        return json.dumps(self.document, ensure_ascii=False, indent=2).encode(encoding)
