"""A picture of a table: its lines as an office writes them, with marks where a value stands.

A mark is ``{code}``, ``{code~unit}`` or ``{code~unit=pattern}``: the code is one of ``CODES`` (two letters, the first
``s`` or ``h`` for what shaft and housing both have), the unit the one that the office writes (of sizes with that of
deviations: ``mm/µm``; decimals shown at least: ``mm:2``). In the pattern of a size ``n`` is the nominal, ``c`` the
class, ``u`` and ``l`` upper and lower deviation, ``t`` the same to both sides, ``M`` and ``m`` the limits. ``?`` before
a code: it has to be asked about (and ``,`` between the parameters that it could be). ``{#}`` counts, ``{pick=a;b}``,
``{day}`` and ``{num=000}`` fill in what says nothing of seats.

Where ``left`` is set a value's name stands to its left, not above it.

``%each`` ... ``%end`` repeats lines for each position, ``%sides A=Welle B=Gehäuse`` for shaft and housing (``*`` in
codes, ``$$`` for the word), ``%machines`` for each machine; ``<<a | b>>`` repeats cells for each position, ``<<m:a>>``
for each machine. A line that begins with ``^`` holds headings (an empty cell goes on with the one to its left, ``.`` is
an empty one), one that begins with ``@`` and a digit is of that table of the office only.
"""

import csv
import io
import json
import random
import re
from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from practice.grammar import Expected, Size, Value
from practice.page import VOCABULARY

from practice_twentyfirst.machines import Machine
from practice_twentyfirst.marks import CODES, MARK, UNITS, Mark, Office, Told, factor_of, snap


class Picture:
    """A picture that is being filled: values to texts, texts to cells, with the truth of what stands where."""

    def __init__(self, office: Office, machines: Sequence[Machine], rng: random.Random, edition: int) -> None:
        self.office, self.machines, self.rng = office, machines, rng
        self.told: dict[tuple[int, int, str], Told] = {}
        self.shared: dict[str, set[str]] = {}
        self.count = 0
        rows = [re.sub(r"^\s*@\d ", "", row) for row in office.picture.strip("\n").split("\n")
                if not re.match(r"\s*@\d ", row) or row.strip()[1] == str(edition)]  # fmt: skip
        self.rows = [self._across(row) for row in self._loops(rows)]

    def _loops(self, rows: list[str]) -> list[str]:
        """The lines with each loop written out."""
        found: list[str] = []
        n = 0
        while n < len(rows):
            word, _, rest = rows[n].strip().partition(" ")
            if word not in ("%each", "%sides", "%machines"):
                found.append(rows[n])
                n += 1
                continue
            depth, end = 1, n
            while depth:
                end += 1
                depth += rows[end].strip().startswith(("%each", "%sides", "%machines")) - (rows[end].strip() == "%end")
            for change in self._changes(word, rest):
                found += self._loops([change(row) for row in rows[n + 1 : end]])
            n = end + 1
        return found

    def _changes(self, word: str, rest: str) -> list[Callable[[str], str]]:
        """What each round of a loop does to a line."""
        if word == "%sides":
            sides = [part.split("=") for part in rest.split()]
            return [
                lambda row, a=a, b=b: re.sub(r"(\{[?\d:.]*)\*", rf"\g<1>{a}", row.replace("$$", b.replace("_", " ")))
                for a, b in sides
            ]
        if word == "%machines":
            return [
                lambda row, m=m: re.sub(r"\{(\??)(?=[A-Za-z*])", rf"{{\g<1>{m}:", row)
                for m in range(len(self.machines))
            ]
        return [lambda row, s=s: self._placed(row, s) for s in range(len(self.machines[0].positions))]

    @staticmethod
    def _placed(row: str, s: int) -> str:
        """A line whose marks of no position are of this one."""
        return MARK.sub(lambda f: f[0] if f[3] else re.sub(r"^\{(\??(?:\d+:)?)", rf"{{\g<1>{s}.", f[0]), row)

    def _across(self, row: str) -> str:
        """The line with each loop across written out."""

        def by_machine(found: re.Match[str]) -> str:
            several = range(len(self.machines))
            return " | ".join(re.sub(r"\{(\??)(?=[A-Za-z]|\d+\.)", rf"{{\g<1>{m}:", found[1]) for m in several)

        def by_position(found: re.Match[str]) -> str:
            return " | ".join(self._placed(found[1], s) for s in range(len(self.machines[0].positions)))

        return re.sub(r"<<(.*?)>>", by_position, re.sub(r"<<m:(.*?)>>(?!>)", by_machine, row))

    def number(self, parameter: str, value: float, unit: str, least: int) -> str:
        """A number in the unit with the office's decimal sign."""
        shown = f"{snap(parameter, value, unit) / factor_of(parameter, unit):.{max(least, 5)}f}"
        while len(shown.partition(".")[2]) > least and shown.endswith("0"):
            shown = shown[:-1]
        shown = shown.rstrip(".")
        return shown.replace(".", ",") if self.office.comma else shown

    def text(self, mark: Mark) -> str:
        """The text of a value."""
        value = self.machines[mark.machine].values[mark.parameter, mark.station]
        own, _, deviations = (
            mark.unit.partition("/") if mark.parameter.endswith("seat_diameter") else (mark.unit, "", "")
        )
        unit, _, least = own.partition(":")
        if isinstance(value, str):
            return (
                mark.pattern.replace("n", self.word(mark.parameter, value))
                if mark.pattern
                else self.word(mark.parameter, value)
            )
        if not isinstance(value, Size):
            return self.number(mark.parameter, value, unit, int(least or 0))
        low, high, finer = value.lower or 0.0, value.upper or 0.0, 4 if unit == "in" else 3

        def signed(deviation: float) -> str:
            least = 0 if (deviations or unit) in UNITS else 3
            text = self.number(mark.parameter, abs(deviation), deviations or unit, least)
            return "0" if deviation == 0 else "+-"[deviation < 0] + text

        shown = {
            "n": self.number(mark.parameter, value.nominal, unit, int(least or 0)), "c": value.tolerance_class,
            "u": signed(high), "l": signed(low), "t": signed(high).lstrip("+"),
            "M": self.number(mark.parameter, value.nominal + high, unit, finer),
            "m": self.number(mark.parameter, value.nominal + low, unit, finer),
        }  # fmt: skip
        return re.sub("[ncultMm]", lambda f: shown[f[0]], mark.pattern or "n")

    def word(self, name: str, value: str) -> str:
        """The office's word of a choice; a text itself."""
        words = dict(part.strip().split("=") for part in self.office.choices.split(";") if part.strip())
        for key in (f"{name}.{value}", value):
            if key in words:
                return words[key]
        if VOCABULARY[name]["kind"] == "choice" and name not in ("clearance_class", "tolerance_class"):
            raise ValueError(f"no word of {name} {value}")
        return value

    def filled(self, text: str, address: str, heads: dict[str, str]) -> str:
        """A cell's text, its values noted."""

        def put(found: re.Match[str]) -> str:
            asked, m, s, code, unit, pattern = found.groups()
            if code == "#":
                self.count += 1
                return str(self.count).zfill(len(pattern or ""))
            if code == "pick":
                return self.rng.choice(pattern.split(";")).strip()
            if code == "day":
                return f"{self.rng.randint(10, 28)}"
            if code == "num":
                return re.sub("0", lambda _: str(self.rng.randint(1, 9)), pattern)
            names = [CODES[c] for c in code.split(",")]
            if names[0] == "station":
                for k in [int(m)] if m else range(len(self.machines)):
                    self.note(address, Mark(k, int(s), "station", "", "", "read"), "station", heads)
                return self.machines[int(m or 0)].positions[int(s)]
            known = self.machines[int(m or 0)].values
            whole = (names[0], 0) not in known or (VOCABULARY[names[0]]["level"] == "station" and not s)
            mark = Mark(
                int(m or 0), -1 if whole else int(s), names[0], unit or "", pattern or "", "ask" if asked else "read"
            )
            self.note(address, mark, "|".join(names), heads)
            return self.text(mark)

        return MARK.sub(put, text)

    def note(self, address: str, mark: Mark, name: str, heads: dict[str, str]) -> None:
        """A cell tells a value."""
        told = self.told.setdefault((mark.machine, mark.station, name), Told())
        if address not in told.own:
            told.own.append(address)
        told.marks.append(mark)
        told.heads.update(heads)
        self.shared.setdefault(address, set()).add(name)

    def stated(self, told: Told) -> Value:
        """What the table states, in canonical units."""
        first = told.marks[0]
        if first.parameter == "station":
            return self.machines[first.machine].positions[first.station]
        value = self.machines[first.machine].values[first.parameter, first.station]
        unit = re.split("[:/]", next((m.unit for m in told.marks if re.search("[nM]", m.pattern or "n")), ""))[0]
        if isinstance(value, str):
            return value
        if not isinstance(value, Size):
            return snap(first.parameter, value, first.unit.partition(":")[0] if first.unit != "r/min" else "")
        shown = {letter for mark in told.marks for letter in re.findall("[ncultMm]", mark.pattern or "n")}
        if shown & set("Mm") and "n" not in shown:
            low, high = (snap(first.parameter, value.nominal + (d or 0.0), unit) for d in (value.lower, value.upper))
            return Size(low, 0.0, high - low, bare=True)
        low, high = (value.lower, value.upper) if shown & set("utM") else (None, None)
        return Size(
            snap(first.parameter, value.nominal, unit), low, high, value.tolerance_class if "c" in shown else ""
        )

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find."""
        found = []
        for (m, s, name), told in self.told.items():
            value = self.stated(told)
            form = "text" if isinstance(value, str) else "number"
            if isinstance(value, Size):
                form = " ".join(sorted({mark.pattern or "n" for mark in told.marks}))
            together = {other for address in told.own for other in self.shared[address]}
            if name in ("bore_diameter", "outside_diameter", "ring_width") and len(together) > 1:
                form = "d x D x B in one cell"
            if together >= {"shaft_seat_diameter", "housing_seat_diameter"}:
                form = "fit pair column"
            cells = tuple(dict.fromkeys([*told.own, *told.heads]))
            words = tuple(dict.fromkeys(word for word in told.heads.values() if word))
            found.append(Expected(m, s, name, value, told.marks[0].verdict, form, cells, words, tuple(told.own)))
        return tuple(found)


class Grid(Picture):
    """A picture of rows and columns."""

    def fill(self) -> None:
        """Write every cell."""
        self.cells: dict[tuple[int, int], str] = {}
        self.merged: list[tuple[int, int, int]] = []
        block: list[tuple[int, list[str]]] = []
        before = False
        for r, row in enumerate(self.rows, 1):
            heading = row.startswith("^")
            parts = [part.strip() for part in row.removeprefix("^").split("|")]
            if heading:
                block = [*block, (r, parts)] if before else [(r, parts)]
            elif not row.strip():
                block = []
            before = heading
            for c, part in enumerate(parts, 1):
                if part and part != ".":
                    heads = {} if heading else self._heads(r, c, parts, block)
                    self.cells[r, c] = self.filled(part, at(r, c), heads)
            if heading and any(not part for part in parts):
                starts = [c for c, part in enumerate(parts, 1) if part] + [len(parts) + 1]
                self.merged += [(r, a, b - 1) for a, b in pairwise(starts) if b - a > 1]

    def _heads(self, r: int, c: int, parts: list[str], block: list[tuple[int, list[str]]]) -> dict[str, str]:
        """The headings of a cell: those above it, or the words to its left."""
        found: dict[str, str] = {}
        for row, texts in () if self.office.left else block:
            k = min(c, len(texts))
            while k > 1 and not texts[k - 1]:
                k -= 1
            if k and (row, k) in self.cells:
                found[at(row, k)] = self.cells[row, k]
        if block and not self.office.left:
            return found
        k = c - 1
        while k and (MARK.search(parts[k - 1]) or not parts[k - 1]):
            k -= 1
        while k and not MARK.search(parts[k - 1]):
            if parts[k - 1]:
                found[at(r, k)] = self.cells[r, k]
            k -= 1
        return found

    def content(self) -> bytes:
        """The bytes of the file."""
        kind, *rest = self.office.file.split(" ")
        if kind == "xlsx":
            return self._book()
        separator, encoding = {"tab": "\t"}.get(rest[0], rest[0]), rest[1]
        stream = io.StringIO(newline="")
        writer = csv.writer(stream, delimiter=separator, lineterminator="\r\n")
        width = max(c for _, c in self.cells)
        for r in range(1, len(self.rows) + 1):
            writer.writerow([self.cells.get((r, c), "") for c in range(1, width + 1)])
        text = stream.getvalue()
        return (text.replace("µ", "μ") if encoding == "cp932" else text).encode(encoding)

    def _book(self) -> bytes:
        """A workbook: numbers are numbers, decimals and signs shown by their format."""
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
            form = "0" + re.sub(r"\d", "0", plain[plain.find(".") :] if "." in plain else "")
            cell.value = float(plain) if "." in plain else int(plain)
            if plain[0] == "+":
                cell.number_format = f"+{form};-{form};0"
            elif "." in plain:
                cell.number_format = form
        for r, first, last in self.merged:
            sheet.merge_cells(start_row=r, start_column=first, end_row=r, end_column=last)
        stream = io.BytesIO()
        book.save(stream)
        return stream.getvalue()


class Tree(Picture):
    """A picture of a JSON document; a text that begins with ``=`` is a number."""

    def fill(self) -> None:
        """Write every leaf."""
        text = re.sub(r",(\s*[}\]])", r"\1", "\n".join(self.rows))
        self.document = self._filled(json.loads(text), "", {})

    def _filled(self, node: Any, path: str, heads: dict[str, str]) -> Any:
        """A part of the document with its marks filled in."""
        if isinstance(node, dict):
            found = {}
            said = [value for value in node.values() if isinstance(value, str) and not MARK.search(value)]
            for key, value in node.items():
                name = MARK.sub(lambda f: self.machines[int(f[2] or 0)].positions[int(f[3])], key)
                own = f"{path}/{name.replace('~', '~0').replace('/', '~1')}"
                if name != key:
                    self.filled(key, path, {})
                words = dict.fromkeys([name, *(said if "{" in str(value) else [])])
                found[name] = self._filled(value, own, dict(enumerate(words)))  # type: ignore[arg-type]
            return found
        if isinstance(node, list):
            return [self._filled(value, f"{path}/{n}", heads) for n, value in enumerate(node)]
        if not isinstance(node, str) or not MARK.search(node):
            return node
        text = self.filled(node.removeprefix("="), path, {})
        for told in self.told.values():
            if path in told.own:
                told.heads.setdefault(path, "")
                told.heads[path] = "\n".join(
                    dict.fromkeys([*filter(None, told.heads[path].split("\n")), *heads.values()])
                )
        if not node.startswith("="):
            return text
        return float(text) if "." in text else int(text)

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find; several words of a leaf are words of their own."""
        return tuple(
            Expected(
                e.machine, e.station, e.parameter, e.value, e.verdict, e.form, e.cells,
                tuple(dict.fromkeys(word for words in e.words for word in words.split("\n") if word)), e.own,
            )
            for e in super().expected()
        )  # fmt: skip

    def content(self) -> bytes:
        """The bytes of the document."""
        encoding = self.office.file.split(" ")[1] if " " in self.office.file else "utf-8"
        return (json.dumps(self.document, ensure_ascii=False, indent=2) + "\n").encode(encoding)


def at(r: int, c: int) -> str:
    """The address of a cell."""
    return f"{get_column_letter(c)}{r}"
