"""The file of a sheet or of a JSON document: cells with their addresses, merged headings, bytes."""

import csv
import io
import json
import random
import re
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter

from practice_twentyseventh.machines import Machine
from practice_twentyseventh.paper import Office, Writer, drawn_lines

Place = tuple[int, int]
_LETTERS = re.compile(r"[^\W\d_]")


class Grid(Writer):
    """A sheet of cells by row and column, both from 1."""

    def __init__(self, office: Office, machines: list[Machine], rng: random.Random, edition: int) -> None:
        super().__init__(office, machines, rng)
        self.cells: dict[Place, str] = {}
        self.merged: list[tuple[Place, Place]] = []
        heads: list[int] = []
        was_head = False
        for r, (row, m, s) in enumerate(drawn_lines(office.page, edition, machines), 1):
            head = row.startswith("# ")
            heads = [*heads, r] if head and was_head else [r] if head else heads
            was_head = head
            if not row.strip():
                heads = []
            self._row(r, row[2:] if head else row, m, s, heads, head)

    def _row(self, r: int, row: str, m: int, s: int, heads: list[int], head: bool) -> None:
        """One line of the page, ``head`` one of headings; ``heads`` are the rows of its headings."""
        label: dict[str, str] = {}
        after = False
        for c, cell in enumerate((part.strip() for part in row.split("|")), 1):
            if cell in ("<", "^"):
                self._joined(r, c, cell)
                continue
            text, told = self.fill(cell, m, s)
            if not text:
                continue
            self.cells[r, c] = text
            words = dict(label)
            for h in [] if head else heads:
                k = c
                while k > 1 and (h, k) not in self.cells and any(a[0] == h and k <= b[1] for a, b in self.merged):
                    k -= 1
                if (h, k) in self.cells:
                    words[_at(h, k)] = self.cells[h, k]
            for where, said in told:
                over = range(len(self.machines)) if said.names == ("station",) and head else [m]
                for k in over:
                    self.note(k, where, said, _at(r, c), words)
            plain = len(_LETTERS.findall(re.sub(r"\{.*?\}", "", cell)))
            if plain > 1 and (after or plain >= max((len(_LETTERS.findall(t)) for t in label.values()), default=0)):
                label = {_at(r, c): text}
            after = bool(told)

    def _joined(self, r: int, c: int, sign: str) -> None:
        """A cell that continues the one to its left or the one above it."""
        before = (r, c - 1) if sign == "<" else (r - 1, c)
        for k, (first, last) in enumerate(self.merged):
            if last == before:
                self.merged[k] = (first, (r, c))
                return
        self.merged.append((before, (r, c)))

    def delimited(self, separator: str, encoding: str) -> bytes:
        """The bytes of a text file."""
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        high, wide = max(r for r, _ in self.cells), max(c for _, c in self.cells)
        writer.writerows([self.cells.get((r, c), "") for c in range(1, wide + 1)] for r in range(1, high + 1))
        text = stream.getvalue()
        return (text.replace("µ", "μ") if encoding == "cp932" else text).encode(encoding)

    def workbook(self) -> bytes:
        """The bytes of a workbook: numbers are numbers, their decimals and signs shown by the format."""
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        sheet.title = self.office.sheet
        for (r, c), text in self.cells.items():
            cell = sheet.cell(r, c)
            plain = text.replace(",", ".") if self.office.comma else text
            if not re.fullmatch(r"[+-]?(0|[1-9]\d*)(\.\d+)?", plain):
                cell.value = text
                continue
            places = len(plain.partition(".")[2])
            cell.value = float(plain) if places else int(plain)
            form = "0." + "0" * places if places else "0"
            if plain[0] == "+" or places:
                cell.number_format = f"+{form};-{form};0" if plain[0] == "+" else form
        for first, last in self.merged:
            sheet.merge_cells(start_row=first[0], start_column=first[1], end_row=last[0], end_column=last[1])
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


def _at(r: int, c: int) -> str:
    """The address of a cell."""
    return f"{get_column_letter(c)}{r}"


class Document(Writer):
    """A JSON document. A list that begins with ``[positions]`` holds one item of each, so does an object's key."""

    def __init__(self, office: Office, machines: list[Machine], rng: random.Random, edition: int) -> None:
        super().__init__(office, machines, rng)
        self.edition = edition
        self.document = self._made(office.tree, "", 0, 0, "")

    def _made(self, tree: Any, path: str, m: int, s: int, word: str) -> Any:
        """What is written for a part of the tree."""
        if isinstance(tree, dict):
            return self._object(tree, path, m, s)
        if isinstance(tree, list):
            items, found = self._items(tree, m, s), []
            for item, a, b in items:
                if not isinstance(item, dict) or str(self.edition) in item.get("@", str(self.edition)):
                    found.append(self._made(item, f"{path}/{len(found)}", a, b, word))
            return found
        if not isinstance(tree, str):
            return tree
        text, told = self.fill(tree, m, s)
        for where, said in told:
            self.note(m, where, said, path, {path: word})
        numeric = told and not {n for _, said in told for n in said.names} & {"drawing_number", "bearing_designation"}
        if numeric and re.fullmatch(r"[+-]?\d+(\.\d+)?", text):
            return float(text) if "." in text else int(text)
        return text

    def _items(self, tree: list[Any], m: int, s: int) -> list[tuple[Any, int, int]]:
        """The items of a list with the machine and position that each is of."""
        if not tree or tree[0] not in ("[positions]", "[machines]"):
            return [(item, m, s) for item in tree]
        if tree[0] == "[machines]":
            return [(item, k, 0) for k in range(len(self.machines)) for item in tree[1:]]
        return [(item, m, k) for k in range(len(self.machines[m].positions)) for item in tree[1:]]

    def _object(self, tree: dict[str, Any], path: str, m: int, s: int) -> dict[str, Any]:
        """What is written for an object."""
        found: dict[str, Any] = {}
        label = str(tree.get(self.office.label, ""))
        for key, value in tree.items():
            only = re.match(r"@(\d+) ", key)
            if key == "@" or (only and str(self.edition) not in only[1]):
                continue
            keys = [(key[only.end() :] if only else key, s)]
            if key == "[positions]":
                keys = [(name, k) for k, name in enumerate(self.machines[m].positions)]
            for name, k in keys:
                here = f"{path}/{name.replace('~', '~0').replace('/', '~1')}"
                if key == "[positions]":
                    self.note(m, k, self.said_station(), path, {})
                found[name] = self._made(value, here, m, k, label or name)
        return found

    def said_station(self) -> Any:
        """What the key of a position says."""
        return self.fill("{st}", 0, 0)[1][0][1]

    def bytes(self, encoding: str) -> bytes:
        """The bytes of the document."""
        return (json.dumps(self.document, ensure_ascii=False, indent=1) + "\n").encode(encoding)
