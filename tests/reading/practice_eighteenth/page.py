"""Cells, or a tree, on their way to a file, with the truth of what stands where."""

import json
import re
from collections.abc import Iterable, Sequence
from typing import Any

from practice.grammar import Expected, Size
from practice_seventeenth.firm import Firm
from practice_seventeenth.page import Sheet as Paper
from practice_seventeenth.page import at

from practice_eighteenth.office import Office
from practice_eighteenth.trade import Item, Rotor

Place = tuple[int, int]
Ref = tuple[int, str, str, int]  # rotor, scope, key, position (-1: the whole rotor)
NAME = Item("m", "name")


class Truth:
    """Which cells tell a value, and which words stand over them."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        self.office, self.rotors = office, rotors
        self.own: dict[Ref, list[str]] = {}
        self.heads: dict[Ref, dict[str, str]] = {}

    def say(self, ref: Ref, address: str, heads: dict[str, str]) -> None:
        """A cell tells a value."""
        if address not in self.own.setdefault(ref, []):
            self.own[ref].append(address)
        self.heads.setdefault(ref, {}).update(heads)

    def expected(self) -> tuple[Expected, ...]:
        """What a reader is expected to find."""
        found = []
        for (m, scope, key, s), own in self.own.items():
            heads, item, rotor = self.heads[m, scope, key, s], Item(scope, key), self.rotors[m]
            value = rotor.positions[s] if key == "station" else self.office.meant(rotor, item, s)
            form = self.office.form if isinstance(value, Size) else "text" if isinstance(value, str) else "number"
            verdict = "ask" if key.startswith("ask.") else "read"
            cells = (*own, *(a for a in heads if a not in own))
            words = tuple(dict.fromkeys(heads.values()))
            found.append(Expected(m, s, item.parameter, value, verdict, form, cells, words, tuple(own)))
        return tuple(found)


class Sheet(Truth):
    """Cells by row and column, both from 1; ``row`` is where the next line goes."""

    def __init__(self, office: Office, rotors: Sequence[Rotor]) -> None:
        super().__init__(office, rotors)
        self.grid: dict[Place, str] = {}
        self.merged: list[tuple[int, int, int, int]] = []
        self.row = 1
        self.extra = [text.split(":") for key, text in office.words.items() if re.fullmatch(r"x\d", key)]

    def put(self, r: int, c: int, text: str) -> None:
        """A text that tells no value."""
        if text:
            if (r, c) in self.grid:
                raise ValueError(f"two texts in {at(r, c)}: {self.grid[r, c]}, {text}")
            self.grid[r, c] = text

    def note(self, r: int, c: int, ref: Ref, heads: Iterable[Place] = ()) -> None:
        """A cell that stands there tells a value too."""
        self.say(ref, at(r, c), {at(*h): self.grid[h] for h in heads if h in self.grid})

    def tell(self, r: int, c: int, m: int, item: Item, s: int, heads: Iterable[Place] = ()) -> None:
        """The cell of a value."""
        self.put(r, c, self.office.text(self.rotors[m], item, s))
        self.note(r, c, (m, item.scope, item.key, s), heads)

    def station(self, r: int, c: int, m: int, s: int, heads: Iterable[Place] = (), form: str = "{}") -> None:
        """The name of a position."""
        self.put(r, c, form.format(self.rotors[m].positions[s]))
        self.note(r, c, (m, "b", "station", s), heads)

    def span(self, r: int, c: int, to_r: int, to_c: int) -> None:
        """Merge cells, where the file can."""
        if (r, c) != (to_r, to_c):
            self.merged.append((r, c, to_r, to_c))

    def lines(self, key: str) -> None:
        """Plain lines above or below: ``|`` between lines, ``~`` between cells of a line."""
        for line in filter(None, self.office.words.get(key, "").split("|")):
            for c, text in enumerate(line.split("~"), 1):
                self.put(self.row, c, text.strip())
            self.row += 1

    def head(self, block: bool = True, gap: bool = True) -> None:
        """Title lines, the sentence of units, the block of the machine, an empty line."""
        self.lines("title")
        if self.office.units == "title":
            self.put(self.row, 1, self.office.words["sentence"])
            self.row += 1
        if block:
            self.block(0)
        self.row += gap and bool(self.grid)

    def block(self, m: int) -> None:
        """The values of a machine: ``pairs`` in lines, two ``across``, in one cell by ``colon``, a ``frame``."""
        office, top = self.office, self.row
        for n, item in enumerate(office.items("m")):
            name = office.headed(office.full(item), item, always=office.units in ("column", "row"))
            if office.block == "colon":
                unit = office.unit_word(item)
                unit = " " + unit if unit and office.units != "cell" else ""
                self.put(self.row, 1, f"{office.full(item)}: {office.text(self.rotors[m], item, -1)}{unit}")
                self.note(self.row, 1, (m, "m", item.key, -1))
                self.row += 1
            elif office.block == "frame":
                c = n % 6 + 1
                r = top + 2 * (n // 6)
                self.put(r, c, name)
                self.tell(r + 1, c, m, item, -1, [(r, c)])
                self.row = r + 2
            else:
                wide = 2 if office.block == "across" else 1
                r, c = top + n // wide, 1 + 3 * (n % wide)
                self.put(r, c, name)
                self.tell(r, c + 1, m, item, -1, [(r, c)])
                self.row = r + 1

    def foot(self) -> None:
        """What stands below."""
        self.row = max(r for r, _ in self.grid) + 2
        if self.office.units == "foot":
            self.put(self.row, 1, self.office.words["sentence"])
            self.row += 1
        self.lines("foot")

    def extras(self, r: int, c: int, rows: Iterable[int]) -> None:
        """Columns that say nothing of seats, from a column on: headings in a row, texts in others."""
        rng = self.office.rng
        for k, (name, *texts) in enumerate(self.extra):
            self.put(r, c + k, name.strip())
            several = [t.strip() for t in "".join(texts).split("/")]
            for row in rows:
                self.put(row, c + k, rng.choice(several).replace("#", str(rng.randint(1, 9))))

    def bytes(self, kind: str, separator: str, encoding: str) -> bytes:
        """The bytes of a file."""
        paper = Paper(Firm(self.office.language, "", "", "", "", comma=self.office.comma), ())
        paper.grid, paper.merged = self.grid, self.merged
        return paper.workbook(bool(separator)) if kind == "xlsx" else paper.delimited(separator, encoding)


class Tree(Truth):
    """A JSON document with the truth of its leaves."""

    document: Any = None

    def leaf(self, ref: Ref, path: Iterable[str | int], word: str) -> None:
        """A leaf tells a value."""
        pointer = "".join("/" + str(p).replace("~", "~0").replace("/", "~1") for p in path)
        self.say(ref, pointer, {pointer: word})

    def value(self, m: int, item: Item, s: int) -> Any:
        """A number where the text is one, else the text."""
        text = self.office.text(self.rotors[m], item, s)
        if item.key in ("des", "name", "dwg", "rev") or not re.fullmatch(r"[+-]?\d+(\.\d+)?", text):
            return text
        return float(text) if "." in text else int(text)

    def bytes(self, kind: str, separator: str, encoding: str) -> bytes:
        """The bytes of the document."""
        return (json.dumps(self.document, ensure_ascii=False, indent=1) + "\n").encode(encoding)
