"""A form that an office fills: its lines, or its JSON, with places for values; filled, and with the truth of each cell.

A line is cells between ``|``. ``# `` begins a line of headings, ``%pos`` and ``%machine`` to ``%end`` lines that come
again for each position or machine, ``<p ... p>`` and ``<m ... m>`` cells that do; ``<<`` and ``^^`` are merged with the
cell to the left or above, ``_`` is an empty line within a table. ``{key}`` is a value in canonical units,
``{key:unit.3}`` in another with at least three decimals. Of a seat there are
N (nominal), C (class), U and L (upper and lower deviation), X and M (largest and smallest limit), P (plus and minus).
"""

import csv
import io
import json
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size, Value

from practice_twentieth.trade import WHOLE, Arrangement, parameter, quantity

PLACE = re.compile(r"\{(\??[A-Za-z][\w.?]*)(?::([^.}\d]*)(?:\.(\d))?)?\}")
#: One of a unit in canonical units; the decimals that are shown at most.
UNITS = {
    "": (1.0, 4), "um": (0.001, 2), "in": (25.4, 4), "kN": (1000.0, 3), "lbf": (4.4482216152605, 0), "g": (0.001, 0),
    "uin": (0.0254, 0), "lb": (0.45359237, 2), "F": (1.0, 0), "daN": (10.0, 1),
}  # fmt: skip


@dataclass(frozen=True)
class Style:
    """How an office writes numbers and words: choices by their words in the vocabulary."""

    words: Mapping[str, str]
    comma: bool = False
    group: str = ""
    zero: str = "0"


@dataclass
class Said:
    """What a table says of a seat or a value: its parts, its cells, the words over them."""

    pieces: dict[str, float | str] = field(default_factory=dict)
    own: list[str] = field(default_factory=list)
    heads: dict[str, str] = field(default_factory=dict)


Key = tuple[int, int, str]  # machine, position (-1: the whole), key


class Filled:
    """What has been said so far, and how a text with places is filled."""

    def __init__(self, style: Style, machines: Sequence[Arrangement]) -> None:
        self.style, self.machines = style, machines
        self.said: dict[Key, Said] = {}

    def fill(self, text: str, m: int, s: int, address: str, heads: Mapping[str, str]) -> tuple[str, float | None]:
        """A text with its places filled; of a cell that is one number that number too."""
        alone: list[float | None] = []

        def one(found: re.Match[str]) -> str:
            key, unit, least = found[1], found[2] or "", int(found[3] or 0)
            where = -1 if key in WHOLE else s
            shown, text = self._shown(m, where, key, unit, least)
            self._say((m, where, key[:2] + "seat" if _of_seat(key) else key), key[2:], shown, unit, address, heads)
            alone.append(shown if isinstance(shown, float) and found[0] == whole else None)
            return text

        whole = text
        filled = PLACE.sub(one, text)
        return filled, alone[0] if alone else None

    def _shown(self, m: int, s: int, key: str, unit: str, least: int) -> tuple[float | str, str]:
        one = self.machines[m]
        if key == "pos":
            return one.positions[s], one.positions[s]
        value = one.values[key[:2] + "seat" if _of_seat(key) else key, s]
        if isinstance(value, Size):
            low, high = value.lower or 0.0, value.upper or 0.0
            if key[2:] == "C":
                return value.tolerance_class, value.tolerance_class
            value = {"N": value.nominal, "U": high, "L": low, "P": high, "X": value.nominal + high,
                     "M": value.nominal + low}[key[2:]]  # fmt: skip
        if isinstance(value, str):
            return value, self.style.words.get(value, value)
        factor, most = UNITS[unit]
        shown = round(
            value * 1.8 + 32 if unit == "F" else value / factor, most + (unit == "" and key[2:] in "XMUL") * 2
        )
        if unit == "uin":
            shown = float(min((16, 32, 63), key=lambda n: abs(n - shown)))
        text = f"{shown:.6f}"
        while text.endswith("0") and len(text.partition(".")[2]) > least:
            text = text[:-1]
        text = text.rstrip(".")
        if self.style.comma:
            text = text.replace(".", ",")
        if quantity(key) == "count" and self.style.group and abs(shown) >= 1000:
            text = f"{int(shown):,}".replace(",", self.style.group)
        if _of_seat(key) and key[2:] in "UL":
            text = self.style.zero if not shown else text if shown < 0 else "+" + text
        return shown, text

    def _say(self, key: Key, piece: str, shown: float | str, unit: str, address: str, heads: Mapping[str, str]) -> None:
        said = self.said.setdefault(key, Said())
        if address not in said.own:
            said.own.append(address)
        said.heads |= heads
        if isinstance(shown, float):
            shown = (shown - 32) / 1.8 if unit == "F" else shown * UNITS[unit][0]
        said.pieces[piece if key[2].endswith(".seat") else ""] = shown

    def expected(self) -> tuple[Expected, ...]:
        """The truth of the table."""
        return tuple(self._one(key, said) for key, said in self.said.items())

    def _one(self, key: Key, said: Said) -> Expected:
        m, s, name = key
        value: Value
        if name.endswith(".seat"):
            value, form, name = self._size(key, said.pieces), "seat " + "".join(sorted(said.pieces)), name[:2] + "N"
        else:
            value = said.pieces[""]
            form = "text" if isinstance(value, str) else "number"
        cells = (*said.own, *(a for a in said.heads if a not in said.own))
        words = tuple(dict.fromkeys(w for w in said.heads.values() if w))
        verdict = "ask" if name.startswith("?") else "read"
        return Expected(m, s, parameter(name), value, verdict, form, cells, words, tuple(said.own))

    def _size(self, key: Key, pieces: Mapping[str, Any]) -> Size:
        kind = "".join(sorted(pieces))
        known = pieces.get("C", "")
        if kind == "MX":
            return Size(pieces["M"], 0.0, pieces["X"] - pieces["M"], bare=True)
        if kind == "C":
            size = self.machines[key[0]].values[key[2], key[1]]
            assert isinstance(size, Size)
            return Size(size.nominal, None, None, known)
        nominal = pieces["N"]
        if kind == "CN":
            return Size(nominal, None, None, known)
        if kind == "NP":
            return Size(nominal, -pieces["P"], pieces["P"])
        if kind in ("LNU", "CLNU"):
            return Size(nominal, pieces["L"], pieces["U"], known)
        if kind in ("MNX", "CMNX"):
            return Size(nominal, round(pieces["M"] - nominal, 6), round(pieces["X"] - nominal, 6), known)
        raise ValueError(f"a seat of {kind}")


def _of_seat(key: str) -> bool:
    return len(key) == 3 and key[1] == "."


class Grid(Filled):
    """A form of lines."""

    def __init__(self, style: Style, machines: Sequence[Arrangement], form: str) -> None:
        super().__init__(style, machines)
        self.cells: dict[tuple[int, int], tuple[str, float | None]] = {}
        self.merged: list[tuple[int, int, int, int]] = []
        heads: list[tuple[int, list[str]]] = []
        row, under = 0, False
        for line, m, s in expanded(form.strip("\n").split("\n"), machines):
            row += 1
            if not line.strip():
                heads = []
            if line.strip() in ("", "_"):
                under = False
                continue
            is_head = line.startswith("# ")
            parts = [cell.strip() for cell in _across(line[2:] if is_head else line, machines, m, s)]
            if is_head and not under:
                heads = []
            self._row(row, parts, m, s, heads, is_head)
            if is_head:
                heads = [*heads, (row, parts)]
            under = is_head

    def _row(
        self, row: int, parts: list[str], m: int, s: int, heads: list[tuple[int, list[str]]], is_head: bool
    ) -> None:
        for c, raw in enumerate(parts, 1):
            text, own_m, own_s = _marked(raw, m, s)
            if text in ("", "<<", "^^"):
                self._merge(row, c, text)
                continue
            over: dict[str, str] = {}
            for r, cells in heads:
                at = c
                while r != heads[-1][0] and at > 1 and (at > len(cells) or cells[at - 1] in ("", "<<")):
                    at -= 1
                if at <= len(cells) and (r, at) in self.cells:
                    over[place(r, at)] = self.cells[r, at][0]
            for k in _labels(parts, c) if PLACE.search(text) and not is_head else ():
                over[place(row, k)] = self.cells[row, k][0]
            self.cells[row, c] = self.fill(text, own_m, own_s, place(row, c), over)

    def _merge(self, row: int, c: int, mark: str) -> None:
        if not mark:
            return
        step = (0, -1) if mark == "<<" else (-1, 0)
        for k, (r, col, to_r, to_c) in enumerate(self.merged):
            if (to_r, to_c) == (row + step[0], c + step[1]) and ((r == row) if mark == "<<" else (col == c)):
                self.merged[k] = (r, col, row, c)
                return
        self.merged.append((row + step[0], c + step[1], row, c))

    def content(self, kind: str, separator: str, encoding: str) -> bytes:
        """The bytes of the file."""
        last = max(r for r, _ in self.cells)
        wide = max(c for _, c in self.cells)
        if kind == "xlsx":
            return self._book()
        stream = io.StringIO()
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        for r in range(1, last + 1):
            writer.writerow([self.cells.get((r, c), ("", None))[0] for c in range(1, wide + 1)])
        return stream.getvalue().encode(encoding)

    def _book(self) -> bytes:
        book = Workbook()
        sheet = book.active
        assert sheet is not None
        for (r, c), (text, number) in self.cells.items():
            sheet.cell(r, c, text if number is None else int(number) if number == int(number) else number)
        for r, c, to_r, to_c in self.merged:
            sheet.merge_cells(start_row=r, start_column=c, end_row=to_r, end_column=to_c)
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


def place(r: int, c: int) -> str:
    """``B7``."""
    return f"{get_column_letter(c)}{r}"


def _labels(parts: list[str], c: int) -> list[int]:
    """The columns of the words that stand together to the left of a cell, of its own position."""

    def plain(k: int) -> bool:
        text, label = _marked(parts[k - 1], 0, 0)[0], parts[k - 1]
        own = not label.startswith("§") or label.split("§")[1] == ([*parts[c - 1].split("§"), ""])[1]
        return (
            own
            and text not in ("<<", "^^")
            and len(text.replace("{pos}", "")) > 1
            and not PLACE.search(text.replace("{pos}", ""))
        )

    k = c - 1
    while k and not plain(k):
        k -= 1
    found = []
    while k and plain(k):
        found.append(k)
        k -= 1
    return found[::-1]


def expanded(
    lines: list[str], machines: Sequence[Arrangement], m: int = 0, s: int = 0
) -> Iterator[tuple[str, int, int]]:
    """Each line with the machine and the position that it is of."""
    k = 0
    while k < len(lines):
        mark = lines[k].strip()
        if mark not in ("%pos", "%machine"):
            yield lines[k], m, s
            k += 1
            continue
        end, deep = k + 1, 1
        while True:
            deep += {"%pos": 1, "%machine": 1, "%end": -1}.get(lines[end].strip(), 0)
            if not deep:
                break
            end += 1
        for n in range(len(machines) if mark == "%machine" else len(machines[m].positions)):
            yield from expanded(lines[k + 1 : end], machines, *((n, 0) if mark == "%machine" else (m, n)))
        k = end + 1


def _across(line: str, machines: Sequence[Arrangement], m: int, s: int) -> list[str]:
    """The cells of a line; each that comes again is marked with its machine and its position."""

    def again(text: str, m: int, s: int) -> str:
        def positions(found: re.Match[str]) -> str:
            return "|".join(_mark(found[1], m, k) for k in range(len(machines[m].positions)))

        return re.sub(r"<p(.*?)p>", positions, text)

    line = re.sub(r"<m(.*?)m>", lambda f: "|".join(_mark(again(f[1], k, s), k, s) for k in range(len(machines))), line)
    return again(line, m, s).split("|")


def _mark(text: str, m: int, s: int) -> str:
    return "|".join(part if part.startswith("§") else f"§{m} {s}§{part.strip()}" for part in text.split("|"))


def _marked(cell: str, m: int, s: int) -> tuple[str, int, int]:
    if found := re.fullmatch(r"§(\d+) (\d+)§(.*)", cell.strip(), re.DOTALL):
        return found[3].strip(), int(found[1]), int(found[2])
    return cell.strip(), m, s


class Tree(Filled):
    """A form of JSON: a list that begins with ``%pos`` or ``%machine`` holds its second entry for each of them."""

    def __init__(self, style: Style, machines: Sequence[Arrangement], form: Any) -> None:
        super().__init__(style, machines)
        self.document = self._node(form, 0, 0, (), ())

    def _node(self, node: Any, m: int, s: int, path: tuple[Any, ...], words: Iterable[str]) -> Any:
        if isinstance(node, dict):
            beside = [v for v in node.values() if isinstance(v, str) and not PLACE.search(v) and len(v) > 2]
            found: dict[str, Any] = {}
            for key, value in node.items():
                for k in range(len(self.machines[m].positions)) if "{pos}" in key else (s,):
                    name = key.replace("{pos}", self.machines[m].positions[k])
                    found[name] = self._node(value, m, k, (*path, name), (name, *beside))
            return found
        if isinstance(node, list) and node and node[0] in ("%pos", "%machine"):
            every = range(len(self.machines) if node[0] == "%machine" else len(self.machines[m].positions))
            several = [(k, part) for k in every for part in node[1:]]
            of = [(k, 0) if node[0] == "%machine" else (m, k) for k, _ in several]
            return [self._node(part, *of[n], (*path, n), words) for n, (_, part) in enumerate(several)]
        if isinstance(node, list):
            return [self._node(part, m, s, (*path, n), words) for n, part in enumerate(node)]
        if not isinstance(node, str):
            return node
        pointer = "".join("/" + str(p).replace("~", "~0").replace("/", "~1") for p in path)
        text, number = self.fill(node, m, s, pointer, {pointer: "", **{f"{pointer}#{w}": w for w in words}})
        return text if number is None else int(number) if number == int(number) else number

    def expected(self) -> tuple[Expected, ...]:
        """The truth of the tree: words stand in keys, not in cells of their own."""
        return tuple(
            Expected(e.machine, e.station, e.parameter, e.value, e.verdict, e.form,
                     tuple(c for c in e.cells if "#" not in c), e.words, e.own)
            for e in super().expected()
        )  # fmt: skip

    def content(self, kind: str, separator: str, encoding: str) -> bytes:
        """The bytes of the document."""
        return (json.dumps(self.document, ensure_ascii=False, indent=2) + "\n").encode(encoding)
